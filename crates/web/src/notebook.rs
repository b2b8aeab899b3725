//! Notebooks: made, opened, changed, looked at.

use crate::view::{beside, large_view};
use layercast_exchange::read::{self as tables, Outcome};
use layercast_lesson::action::Action;
use layercast_lesson::class::Class;
use layercast_lesson::document::{Lesson, Notebook, Unopened};
use layercast_lesson::view::{Look, Said};
use layercast_lesson::{hand_in, maker};
use serde::Serialize;
use tsify::{Ts, Tsify};
use wasm_bindgen::prelude::*;

/// What a file turned out to be.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Opened {
    /// A saved notebook, as its text of today's version.
    Notebook {
        /// The notebook.
        notebook: String,
    },
    /// Saved by a newer Layercast.
    Newer {
        /// Its version.
        version: u32,
        /// A new notebook with its readings alone, when they could be read.
        readings: Option<String>,
    },
    /// A teacher's lesson.
    Lesson {
        /// Its text: give it back as the action `take_lesson`.
        lesson: String,
        /// "9 questions, 40 points, about 35 minutes."
        sum: Said,
        /// What the teacher calls it; may be empty.
        title: String,
        /// Language it opens in, or empty.
        language: String,
        /// What this page cannot do with it.
        said: Vec<Said>,
    },
    /// A class that a teacher saved, as its text of today's version.
    Class {
        /// The class.
        class: String,
    },
    /// A table, decoded to text: give it back as the action `take_file`, or `paste` where it was pasted.
    Table {
        /// The text.
        text: String,
    },
    /// Neither: what it is and what to do.
    No {
        /// Sentences, in order.
        said: Vec<Said>,
    },
}

/// A notebook after one thing a person did.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct Stepped {
    /// The notebook.
    pub notebook: String,
    /// Everything the page shows of it.
    pub look: Look,
}

/// A new, empty notebook with the class's own lesson.
#[wasm_bindgen]
pub fn new_notebook(code: &str) -> String {
    Notebook::new(code, Lesson::first()).to_json()
}

/// What the bytes of a file are. A file that is nothing of ours is [`Opened::No`].
///
/// # Errors
/// Never for what it is given; the crossing itself may fail.
#[wasm_bindgen]
pub fn open_bytes(bytes: &[u8]) -> Result<Ts<Opened>, JsError> {
    large_view(&opened(bytes))
}

/// Does one thing to a notebook and gives the new one.
///
/// # Errors
/// When the text is no notebook or the action is none of ours.
#[wasm_bindgen]
pub fn act(notebook: &str, action: Ts<Action>) -> Result<String, JsError> {
    let action: Action = action.to_rust()?;
    Ok(layercast_lesson::act(&read(notebook)?, &action).to_json())
}

/// Does one thing to a notebook: the new one and everything the page shows of it. The same as [`act`] and [`look`] one
/// after the other, in a good half of their time.
///
/// # Errors
/// When the text is no notebook or the action is none of ours.
#[wasm_bindgen]
pub fn step(notebook: &str, action: Ts<Action>, ranges: Option<String>) -> Result<Ts<Stepped>, JsError> {
    let action: Action = action.to_rust()?;
    let (next, look) = layercast_lesson::step_with(read(notebook)?, &action, ranges.as_deref());
    beside(&next.to_json(), "look", &look)
}

/// Everything the page shows of a notebook. `ranges`: what its trials came to, if they have been made.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn look(notebook: &str, ranges: Option<String>) -> Result<Ts<Look>, JsError> {
    large_view(&layercast_lesson::look_from(&read(notebook)?, 0, ranges.as_deref()))
}

/// The same, with the log's table from another row on: a very long cast is listed in parts.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn look_from(notebook: &str, first_row: usize, ranges: Option<String>) -> Result<Ts<Look>, JsError> {
    large_view(&layercast_lesson::look_from(&read(notebook)?, first_row, ranges.as_deref()))
}

/// The CSV text of an example cast: "layered-summer", "mixed-autumn" or "under-ice".
///
/// # Errors
/// When there is no example of that name.
#[wasm_bindgen]
pub fn example(name: &str) -> Result<String, JsError> {
    let text = match name {
        "layered-summer" => include_str!("../../../static-data/casts/layered-summer.csv"),
        "mixed-autumn" => include_str!("../../../static-data/casts/mixed-autumn.csv"),
        "under-ice" => include_str!("../../../static-data/casts/under-ice.csv"),
        _ => return Err(JsError::new("no example of that name")),
    };
    Ok(text.to_owned())
}

/// The notebook in a text of the page.
pub(crate) fn read(notebook: &str) -> Result<Notebook, JsError> {
    Notebook::from_json(notebook).map_err(|_| JsError::new("this text is no notebook"))
}

fn opened(bytes: &[u8]) -> Opened {
    let no = |messages: Vec<layercast_core::Message>| Opened::No {
        said: messages.into_iter().map(Said::from).collect(),
    };
    // A notebook may be larger than any table that is read.
    if let Ok(text) = std::str::from_utf8(bytes) {
        match Notebook::from_json(text.trim_start_matches('\u{feff}')) {
            Ok(notebook) => return Opened::Notebook { notebook: notebook.to_json() },
            Err(Unopened::Newer { version, cast }) => {
                let readings = cast.map(|cast| Notebook::with_cast("", Lesson::first(), *cast).to_json());
                return Opened::Newer { version, readings };
            }
            Err(Unopened::Absurd(message)) => return no(vec![message]),
            Err(Unopened::NotANotebook) => {}
        }
    }
    if let Some(opened) = std::str::from_utf8(bytes).ok().and_then(maker::open) {
        let look = maker::look(&opened.lesson);
        return Opened::Lesson {
            lesson: maker::file_text(&opened.lesson, &opened.rest),
            sum: look.sum,
            title: look.title,
            language: look.language,
            said: opened.said.into_iter().map(Said::from).collect(),
        };
    }
    let text = std::str::from_utf8(bytes).unwrap_or_default().trim_start_matches('\u{feff}');
    if text.trim_start().starts_with('{') {
        match Class::from_json(text) {
            Ok(class) => return Opened::Class { class: class.to_json() },
            Err(why) if why.id != "class-file-none" => return no(vec![why]),
            Err(_) => {}
        }
    }
    // A hand-in, in whatever form, is gone on with; several at once are a teacher's.
    if let [Ok(one)] = hand_in::open(bytes).as_slice() {
        return Opened::Notebook { notebook: one.hand_in.to_notebook().to_json() };
    }
    let table = tables::read(bytes, &Default::default());
    match table.outcome {
        Outcome::Error => no(table.messages),
        Outcome::Understood | Outcome::Noticed | Outcome::Question => {
            Opened::Table { text: tables::decode(bytes) }
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_saved_notebook_opens_as_itself() {
        let saved = new_notebook("C-4T7K");
        assert_eq!(opened(saved.as_bytes()), Opened::Notebook { notebook: saved });
    }

    #[test]
    fn a_saved_class_opens_and_a_newer_one_says_so() {
        let class = Class::new("9B", None).to_json();
        assert_eq!(opened(class.as_bytes()), Opened::Class { class: class.clone() });
        let newer = class.replacen("\"version\":", "\"version\":9", 1);
        assert_ne!(newer, class);
        let Opened::No { said } = opened(newer.as_bytes()) else { panic!("a newer class is not opened") };
        assert_eq!(said.first().map(|said| said.id.as_str()), Some("class-file-newer"));
    }

    #[test]
    fn a_hand_in_is_gone_on_with_in_every_form() {
        let pasted = Action::Paste {
            text: "Depth m;Down;Up\n0;18,5;18,4\n1;18,1;18,0\n2;14,0;14,1\n3;11,2;11,2\n".into(),
        };
        let mut notebook = Notebook::from_json(&new_notebook("4T7K")).expect("ours");
        for action in [pasted, Action::SetSeat { text: "07".into() }] {
            notebook = layercast_lesson::act(&notebook, &action);
        }
        let file = hand_in::file_text(&notebook);
        let lines = hand_in::lines(&notebook).join("\n");
        let page = format!(
            "<html><script type=\"application/json\" id=\"layercast-hand-in\">{file}</script></html>"
        );
        for form in [file, lines, page] {
            let Opened::Notebook { notebook: again } = opened(form.as_bytes()) else {
                panic!("not opened: {form}")
            };
            let again = Notebook::from_json(&again).expect("a notebook");
            assert_eq!(again.cast.entries, notebook.cast.entries);
            assert_eq!(again.sheets, notebook.sheets);
            assert_eq!(again.lesson, notebook.lesson);
            assert!(!again.may_guess());
        }
    }

    #[test]
    fn a_table_comes_as_text() {
        let table = "Depth m;Temp C\n0;18,5\n1;18,1\n2;14,0\n3;11,2\n";
        assert_eq!(opened(table.as_bytes()), Opened::Table { text: table.to_owned() });
    }

    #[test]
    fn a_picture_is_refused_in_words() {
        assert!(matches!(opened(b"\x89PNG\r\n\x1a\n"), Opened::No { said } if !said.is_empty()));
    }

    #[test]
    fn a_lesson_is_a_lesson() {
        let lesson = crate::lesson::lesson_of_ours(true);
        assert!(matches!(opened(lesson.as_bytes()), Opened::Lesson { said, .. } if said.is_empty()));
    }

    #[test]
    fn a_newer_notebook_gives_its_version_and_readings() {
        let newer = new_notebook("C-4T7K").replacen("\"version\":1", "\"version\":7", 1);
        match opened(newer.as_bytes()) {
            Opened::Newer { version: 7, readings: Some(readings) } => assert!(read(&readings).is_ok()),
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn every_example_is_a_table() {
        for name in ["layered-summer", "mixed-autumn", "under-ice"] {
            let text = example(name).unwrap_or_default();
            assert!(matches!(opened(text.as_bytes()), Opened::Table { .. }), "{name}");
        }
    }
}
