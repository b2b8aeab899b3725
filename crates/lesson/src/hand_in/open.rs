//! Whatever comes back, opened: nothing is trusted, nothing is taken in part without saying so.

use super::{Check, Form, HandIn, SCHEMA, VERSION, text};
use crate::class::{self, Class};
use crate::document::{self, Notebook};
use layercast_core::Message;
use layercast_exchange::document::{self as cast_document, CastDoc};
use layercast_exchange::lines::{self, Found};
use layercast_exchange::read::decode;
use serde::Deserialize;

/// Largest thing that is opened, bytes.
const MOST_BYTES: usize = 20_000_000;

/// A hand-in that was opened.
#[derive(Clone, Debug, PartialEq)]
pub struct Opened {
    /// It.
    pub hand_in: HandIn,
    /// How it came.
    pub form: Form,
    /// Whether it is as it was written.
    pub check: Check,
}

/// Why something is not opened.
#[derive(Clone, Debug, PartialEq)]
pub enum Refused {
    /// Nothing of ours: what it is.
    NotOurs(Message),
    /// Ours, and broken: where, and what to ask for.
    Broken(Message),
    /// Written by a newer Layercast.
    Newer {
        /// Version it names.
        version: u32,
        /// Its readings alone, if they can be read.
        cast: Option<Box<CastDoc>>,
    },
}

/// What every version has.
#[derive(Deserialize)]
struct Head {
    #[serde(default)]
    schema: String,
    #[serde(default)]
    version: u32,
}

/// What may be readable in a newer one.
#[derive(Deserialize)]
struct Readings {
    cast: CastDoc,
}

/// Opens the bytes of a file or a paste. Never empty: one result for each thing found in it, one that says why for nothing.
///
/// Total: any bytes. The name of a file is no part of it.
pub fn open(bytes: &[u8]) -> Vec<Result<Opened, Refused>> {
    if bytes.is_empty() {
        return vec![Err(Refused::NotOurs(Message::new("class-why-empty")))];
    }
    if bytes.len() > MOST_BYTES {
        return vec![Err(Refused::NotOurs(Message::new("class-why-too-large")))];
    }
    let decoded = decode(bytes);
    let text = decoded.trim_start_matches('\u{feff}').trim();
    if text.starts_with('{') {
        return of_json(text, Form::File);
    }
    if let Some(block) = text::block(text) {
        return of_json(block.trim(), Form::Page);
    }
    if lines::has_any(text) {
        return lines::read(text).into_iter().flat_map(of_lines).collect();
    }
    if let Some(at) = text.find(SCHEMA) {
        // A pasted file with words before it.
        let start = text.get(..at).and_then(|before| before.rfind('{'));
        let json = start.and_then(|start| text.get(start..)).unwrap_or_default();
        return of_json(json, Form::File);
    }
    vec![Err(Refused::NotOurs(Message::new(what_it_is(bytes, text))))]
}

fn of_lines(found: Found) -> Vec<Result<Opened, Refused>> {
    match found {
        Found::Whole { bytes, .. } => of_json(&decode(&bytes), Form::Lines),
        Found::Part { name, of, missing, wrong } => vec![Err(Refused::Broken(
            Message::new("class-why-lines")
                .text("name", name)
                .count("of", of)
                .count("missing", missing.len())
                .count("wrong", wrong.len())
                .text("numbers-missing", numbers(&missing))
                .text("numbers-wrong", numbers(&wrong)),
        ))],
        Found::Unreadable { name } => {
            vec![Err(Refused::Broken(Message::new("class-why-lines-unreadable").text("name", name)))]
        }
    }
}

/// "3, 7, 8, …": at most the first twelve.
fn numbers(all: &[usize]) -> String {
    let mut texts: Vec<String> = all.iter().take(12).map(usize::to_string).collect();
    if all.len() > texts.len() {
        texts.push("…".to_owned());
    }
    texts.join(", ")
}

fn of_json(json: &str, form: Form) -> Vec<Result<Opened, Refused>> {
    let Ok(head) = first::<Head>(json) else {
        for mended in text::mended(json) {
            if let Ok(head) = first::<Head>(&mended) {
                return by_schema(&head, &mended, form);
            }
        }
        return vec![Err(cut_off(json))];
    };
    by_schema(&head, json, form)
}

/// The first JSON value of a text; what stands behind it (a signature below a pasted file) does not count.
fn first<'a, T: Deserialize<'a>>(json: &'a str) -> Result<T, serde_json::Error> {
    T::deserialize(&mut serde_json::Deserializer::from_str(json))
}

/// JSON that does not end, or was never any.
fn cut_off(json: &str) -> Refused {
    if json.contains(SCHEMA) || json.contains(document::SCHEMA) {
        Refused::Broken(Message::new("class-why-cut-off"))
    } else {
        Refused::NotOurs(Message::new("class-why-unknown"))
    }
}

fn by_schema(head: &Head, json: &str, form: Form) -> Vec<Result<Opened, Refused>> {
    match head.schema.as_str() {
        SCHEMA => vec![of_hand_in(head.version, json, form)],
        document::SCHEMA => of_notebook(json),
        document::LESSON_SCHEMA => vec![Err(Refused::NotOurs(Message::new("class-why-lesson")))],
        cast_document::SCHEMA => vec![Err(Refused::NotOurs(Message::new("class-why-cast")))],
        class::SCHEMA => {
            let class = Class::from_json(json);
            vec![Err(Refused::NotOurs(class.err().unwrap_or_else(|| Message::new("class-why-class"))))]
        }
        _ => vec![Err(Refused::NotOurs(Message::new("class-why-unknown")))],
    }
}

fn of_hand_in(version: u32, json: &str, form: Form) -> Result<Opened, Refused> {
    let damaged = || Refused::Broken(Message::new("class-why-damaged"));
    if version == 0 {
        return Err(damaged());
    }
    if version > VERSION {
        let cast = first::<Readings>(json).ok().map(|readings| Box::new(readings.cast));
        return Err(Refused::Newer { version, cast: cast.filter(|cast| document::is_sound_cast(cast)) });
    }
    let mut hand_in: HandIn = first(json).map_err(|_| damaged())?;
    hand_in.cast.source = None;
    let codes = [&hand_in.notebook, &hand_in.check];
    if !document::is_sound(&hand_in.cast, &hand_in.sheet, &hand_in.lesson)
        || !codes.into_iter().all(|code| document::is_short(code))
    {
        return Err(Refused::Broken(Message::new("class-why-absurd")));
    }
    // What stands behind the value is no part of it.
    let mut values = serde_json::Deserializer::from_str(json).into_iter::<serde::de::IgnoredAny>();
    let end = match values.next() {
        Some(Ok(_)) => values.byte_offset(),
        _ => json.len(),
    };
    let is_same = text::check(json.get(..end).unwrap_or(json)) == hand_in.check;
    Ok(Opened { hand_in, form, check: if is_same { Check::Same } else { Check::Edited } })
}

fn of_notebook(json: &str) -> Vec<Result<Opened, Refused>> {
    match Notebook::from_json(json) {
        Ok(notebook) => {
            let opened = |sheet| {
                let hand_in = HandIn::of_sheet(&notebook, sheet);
                Ok(Opened { hand_in, form: Form::Notebook, check: Check::Unknown })
            };
            notebook.sheets.iter().map(opened).collect()
        }
        Err(document::Unopened::Newer { version, cast }) => vec![Err(Refused::Newer { version, cast })],
        Err(document::Unopened::Absurd(why)) => vec![Err(Refused::Broken(why))],
        Err(document::Unopened::NotANotebook) => {
            vec![Err(Refused::Broken(Message::new("class-why-damaged")))]
        }
    }
}

/// What bytes that are none of ours seem to be.
fn what_it_is(bytes: &[u8], text: &str) -> &'static str {
    const PICTURES: [&[u8]; 4] = [b"\x89PNG", b"\xff\xd8\xff", b"GIF8", b"RIFF"];
    if bytes.starts_with(b"%PDF") {
        "class-why-pdf"
    } else if PICTURES.iter().any(|start| bytes.starts_with(start)) || bytes.get(4..8) == Some(b"ftyp") {
        "class-why-picture"
    } else if text.starts_with('<') {
        "class-why-page"
    } else {
        "class-why-unknown"
    }
}

/// Entry for fuzzing: any bytes opened; what opens is written, opened again, and is the same.
///
/// # Panics
/// When a hand-in that opens is not the same after writing and opening.
#[doc(hidden)]
pub fn fuzz_hand_in(data: &[u8]) {
    for opened in open(data).into_iter().flatten() {
        let again = open(text::written(&opened.hand_in).as_bytes());
        let same = |again: &Result<Opened, Refused>| {
            again.as_ref().is_ok_and(|again| again.hand_in == opened.hand_in)
        };
        assert!(again.len() == 1 && again.iter().all(same), "writing and opening a hand-in changed it");
    }
}
