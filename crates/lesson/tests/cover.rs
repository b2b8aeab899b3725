//! Before the reveal nothing the page is given holds the answer.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::support;

use layercast_lesson::action::Action;
use layercast_lesson::document::{Lesson, MarkName, Notebook, Open, Screen};
use layercast_lesson::{act, look, prepare, questions, scene};
use serde_json::Value;
use support::{NAMES, checked, doing, notebook};

/// Every number in a value, with the way to it; those that only repeat the readings and their marks are passed over.
fn numbers(value: &Value, path: &str, found: &mut Vec<(String, f64)>) {
    match value {
        Value::Number(number) => found.push((path.to_owned(), number.as_f64().unwrap())),
        Value::Array(items) => items.iter().for_each(|item| numbers(item, path, found)),
        Value::Object(fields) => {
            for (name, field) in fields {
                numbers(field, &format!("{path}/{name}"), found);
            }
        }
        // A text may hold a number too.
        Value::String(text) => {
            let words = text.split(|c: char| !c.is_ascii_digit() && c != '.' && c != ',');
            let parsed = words.filter_map(|word| word.replace(',', ".").parse::<f64>().ok());
            found.extend(parsed.map(|number| (path.to_owned(), number)));
        }
        _ => {}
    }
}

/// What is the same for every reader of the readings: depths and temperatures in tables and under the cursor, and the
/// depths a question names.
fn is_plain(path: &str) -> bool {
    let plain = [
        "/log/rows",
        "/log/companions/rows",
        // Readings at fixed places of the table.
        "/log/by_hand/rows/name",
        "/readings",
        "/profile/table/depth",
        "/profile/table/mark",
        "/profile/table/down",
        "/profile/table/up",
        "/profile/table/mean",
        "/profile/facts",
        "/profile/legs_note",
        "/profile/marks/most_m",
        "/profile/marks/least_m",
        "/profile/early",
        "/alt",
        "/log/title",
        "/log/doubts",
        // How many trials, and a sum over the readings.
        "/ranges",
        "/report/page/rows/depth",
        "/report/page/rows/mark",
        "/report/page/rows/down",
        "/report/page/rows/up",
        "/report/page/rows/mean",
        "/report/page/notes",
        // Warmest, coldest, apart: all that is in the bank before something is uncovered (tests/report.rs).
        "/report/bank",
        // How it is computed: the rules' own numbers.
        "/report/page/how",
        // How many readings, questions, texts.
        "/report/page/caption",
        "/report/stands",
    ];
    plain.iter().any(|start| path.starts_with(start))
}

/// Numbers that would tell: depths and gradients the rules found, as shown and in full.
fn answers(notebook: &Notebook) -> Vec<(&'static str, f64)> {
    let analysis = prepare(notebook).analysis;
    let mut answers = Vec::new();
    for told in [&analysis.thermocline, &analysis.fastest_warming].into_iter().flatten() {
        answers.push(("thermocline", told.value_m));
        answers.push(("gradient", told.gradient_c_per_m));
        answers.push(("span top", told.span_top_m));
        answers.push(("span bottom", told.span_bottom_m));
    }
    if let Some(layercast_core::MixedLayer::At { value_m, low_m, high_m, .. }) = analysis.mixed_layer {
        answers.extend([("mixed layer", value_m), ("mixed low", low_m), ("mixed high", high_m)]);
    }
    if let Some(found) = analysis.metalimnion {
        answers.extend([("steep top", found.top_m), ("steep bottom", found.bottom_m)]);
    }
    if let Some(found) = analysis.warm_layer_today {
        answers.extend([("warm today", found.value_m), ("warm bottom", found.bottom_m)]);
    }
    answers
}

/// Looks on every screen and at every question; gives every number that is not plainly a reading.
fn seen(notebook: &Notebook) -> Vec<(String, f64)> {
    let mut seen = Vec::new();
    for screen in [Screen::Log, Screen::Profile, Screen::Questions, Screen::Report] {
        for question in 0..if screen == Screen::Questions { 9 } else { 1 } {
            let at = act(notebook, &Action::Go { screen, question: Some(question) });
            let mut value = serde_json::to_value(look(&at)).unwrap();
            // The place is where the group is, the rail counts questions.
            value.as_object_mut().unwrap().remove("place");
            value["questions"]["rail"] = Value::Null;
            numbers(&value, "", &mut seen);
        }
    }
    seen.retain(|(path, _)| !is_plain(path));
    seen
}

/// Depths that a question is about, its own lists of marks, and counts are no answers; nor are buttons' own indices.
fn is_of_a_question(path: &str) -> bool {
    let own = ["/ask/", "/id", "/of", "/number", "/action/", "/count", "/options", "/most_m", "/least_m"];
    path.starts_with("/questions") && own.iter().any(|part| path.contains(part))
}

#[test]
fn before_the_reveal_nothing_in_look_holds_the_answer() {
    for water in NAMES {
        let notebook = notebook(water);
        let answers = answers(&notebook);
        let mut told: Vec<String> = Vec::new();
        for (path, number) in seen(&notebook) {
            if is_of_a_question(&path) || path.contains("/place/") {
                continue;
            }
            for (what, answer) in &answers {
                // Questions name marks of the cable; an edge that lies on a mark is no secret by itself.
                let is_mark = (answer * 4.0 - (answer * 4.0).round()).abs() < 1e-9;
                if path.starts_with("/questions") && is_mark && *what != "thermocline" && *what != "gradient"
                {
                    continue;
                }
                let same = (number - answer).abs() < 1e-6
                    || (number - (answer * 100.0).round() / 100.0).abs() < 1e-9;
                if same {
                    told.push(format!("{what} {answer} stands at {path}"));
                }
            }
        }
        told.sort();
        told.dedup();
        assert!(told.is_empty(), "{water}: {told:#?}");
    }
}

#[test]
fn the_search_finds_the_answer_once_it_is_shown() {
    // The same search after the check: a search that can find nothing would prove nothing.
    for water in ["group_c", "inverse", "two", "surface"] {
        let notebook = checked(&notebook(water), ["", "", ""]);
        let seen = seen(&notebook);
        for (what, answer) in answers(&notebook) {
            let close = |number: f64| {
                (number - answer).abs() < 1e-6
                    || (number - (answer * 10.0).round() / 10.0).abs() < 1e-9
                    || (number - (answer * 100.0).round() / 100.0).abs() < 1e-9
            };
            assert!(seen.iter().any(|(_, number)| close(*number)), "{water}: {what} {answer} is not told");
        }
    }
}

#[test]
fn before_the_reveal_no_column_of_gradients_no_rule_no_state() {
    for water in NAMES {
        let look = look(&act(&notebook(water), &Action::Go { screen: Screen::Profile, question: None }));
        assert!(look.profile.table.iter().all(|row| row.per_metre.is_none()), "{water}");
        assert!(look.profile.rules.is_empty() && look.profile.found.is_none(), "{water}");
        let json = serde_json::to_string(&look.alt).unwrap();
        for word in ["steepest", "warms", "no-thermocline", "unstable", "mixed", "deep", "cannot"] {
            assert!(!json.contains(word), "{water}: {json}");
        }
    }
}

/// Two waters whose first and last readings are the same sound the same before the check.
#[test]
fn the_sentence_of_the_picture_tells_only_the_ends() {
    let table = |temps: [f64; 8]| {
        let rows = temps.iter().enumerate().map(|(i, t)| format!("{:.1},{t:.1}\n", i as f64 / 2.0));
        support::pasted(&format!("depth m,temp °C\n{}", rows.collect::<String>()))
    };
    let upper = look(&table([20.0, 20.0, 15.0, 10.0, 9.0, 9.0, 9.0, 9.0])).alt;
    let lower = look(&table([20.0, 20.0, 20.0, 20.0, 19.0, 14.0, 9.0, 9.0])).alt;
    assert_eq!(upper, lower);
}

#[test]
fn scenes_show_nothing_covered() {
    for water in NAMES {
        let notebook = notebook(water);
        let prepared = prepare(&notebook);
        for screen in [Screen::Log, Screen::Profile, Screen::Questions, Screen::Report] {
            let shown = scene(&notebook, &prepared, screen).shown;
            assert!(!shown.steps && !shown.thermocline && !shown.mixed_layer && !shown.deep_layer, "{water}");
            assert!(shown.some_steps.is_empty(), "{water}");
        }
    }
}

#[test]
fn a_lesson_can_leave_things_open_from_the_start() {
    let lesson = Lesson { open: Open { steps: true, ..Open::default() }, ..Lesson::first() };
    let notebook = Notebook::new("C-KTZR", lesson);
    let notebook = act(&notebook, &Action::Paste { text: support::table("group_c") });
    let look = look(&notebook);
    assert!(look.profile.table[0].per_metre.is_some());
    assert!(look.profile.found.is_none());
    assert_eq!(notebook.sheets[0].uncovered, Default::default());
}

#[test]
fn what_was_uncovered_stays_so_when_readings_change() {
    let checked = checked(&notebook("group_c"), ["2.5", "4.0", "6.0"]);
    let changed =
        doing(&checked, &[Action::LeaveOut { entries: vec![0, 1, 2, 3] }, Action::ShowMarks { again: true }]);
    assert!(look(&changed).profile.table[0].per_metre.is_some());
    let pasted = act(&changed, &Action::Paste { text: support::table("mixed") });
    let profile = look(&pasted).profile;
    assert!(profile.checked && profile.table[0].per_metre.is_some());
}

#[test]
fn an_early_check_names_its_questions_first_and_takes_their_credit() {
    let notebook = notebook("group_c");
    let marked = doing(
        &notebook,
        &[
            Action::TypeMark { mark: MarkName::Mixed, text: "2.5".into() },
            Action::TypeMark { mark: MarkName::Thermocline, text: "4".into() },
            Action::TypeMark { mark: MarkName::Deep, text: "6".into() },
        ],
    );
    let early = look(&marked).profile.early.expect("an early check would show something");
    let words = support::Words::new("en");
    // Kind 5 is the third question; here it asks a single step, whose bar the strip would show. The mark answers the
    // sixth, but has no give or take that would answer the seventh.
    assert_eq!(words.say(&early.said), "Checking now shows the answers to questions 3, 4, 5 and 7.");
    assert_eq!(words.say(&early.ways[0].label), "Answer 3, 4, 5 and 7 first");
    assert_eq!(early.ways[0].action, Action::Go { screen: Screen::Questions, question: Some(2) });
    let waited = act(&marked, &Action::CheckMarks { early: false });
    assert!(waited.sheets[0].first_marks.is_none(), "the page asks first");
    let checked = act(&marked, &Action::CheckMarks { early: true });
    assert_eq!(checked.sheets[0].revealed_early.len(), 4);
    assert!(look(&checked).profile.early.is_none());
}

#[test]
fn a_thermocline_that_was_missed_is_named_before_the_check_and_says_afterwards_why_it_earns_nothing() {
    let mut marked = notebook("group_c");
    marked.lesson.kinds = vec![7];
    let mark = |mark, text: &str| Action::TypeMark { mark, text: text.into() };
    let marked = doing(
        &marked,
        &[mark(MarkName::Mixed, "2.5"), mark(MarkName::Thermocline, "4"), mark(MarkName::Deep, "6")],
    );
    let words = support::Words::new("en");
    // Untried, the mark itself is what the check takes for the answer.
    assert!(look(&marked).profile.early.is_none());
    let tried = |notebook: &Notebook, depth: &str| {
        let set = Action::SetField { question: 0, field: "depth".into(), text: depth.into() };
        doing(notebook, &[set, Action::Check { question: 0 }])
    };
    let missed = tried(&marked, "8");
    let early = look(&missed).profile.early.expect("the check would show it");
    assert_eq!(words.say(&early.said), "Checking now shows the answer to question 1.");
    assert_eq!(act(&missed, &Action::CheckMarks { early: false }), missed, "the page asks first");
    let notes = |notebook: &Notebook| {
        let at = act(notebook, &Action::Go { screen: Screen::Questions, question: Some(0) });
        let question = look(&at).questions.current.expect("a question");
        question.notes.iter().map(|note| note.id.clone()).collect::<Vec<_>>()
    };
    let is_told = |notebook: &Notebook| notes(notebook).contains(&"ask-note-revealed".to_owned());
    assert!(!is_told(&missed));
    let checked = act(&missed, &Action::CheckMarks { early: true });
    assert!(is_told(&checked), "{:?}", notes(&checked));
    let right = tried(&checked, "3.8");
    assert!(is_told(&right), "{:?}", notes(&right));
    let credit = |notebook: &Notebook| {
        let prepared = prepare(notebook);
        let context = prepared.context(notebook);
        let asked = questions::paper(&context).asked.remove(0);
        let got = questions::standing(&context, &asked, context.sheet.answers.get(&asked.id));
        (got.right, got.credit)
    };
    assert_eq!(credit(&right), (true, 0.0));
    // Of sheets that a page checked without a word the reason is told too.
    let mut unwarned = checked;
    unwarned.sheets[0].revealed_early.clear();
    assert!(is_told(&unwarned) && is_told(&tried(&unwarned, "3.8")));
    // Before the check the same answer earns points, and nothing is said.
    let before = tried(&missed, "3.8");
    assert_eq!(credit(&before), (true, 1.0));
    assert!(look(&before).profile.early.is_none() && !is_told(&before));
}
