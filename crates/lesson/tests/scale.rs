//! Temperatures of °F that were taken for °C: one doubt about all of them, read otherwise, and back.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::support;

use layercast_exchange::document::{LegDoc, Unit, cell_doubts};
use layercast_lesson::action::Action;
use layercast_lesson::document::Notebook;
use layercast_lesson::view::{DoubtView, LogRow};
use layercast_lesson::{act, hand_in, look};
use support::{Words, doing, empty, pasted};

/// As a student typed them, a metre apart.
const TYPED: [&str; 8] = ["74.3", "74.1", "73.6", "71.4", "63.9", "55.2", "50.4", "48.9"];

fn cell(entry: Option<usize>, depth_m: f64, text: &str) -> Action {
    Action::SetCell { entry, depth_m, leg: LegDoc::Down, text: text.to_owned() }
}

fn typed(texts: &[&str]) -> Notebook {
    let cells: Vec<Action> = texts.iter().zip(0..).map(|(text, m)| cell(None, f64::from(m), text)).collect();
    doing(&empty(), &cells)
}

fn temps(notebook: &Notebook) -> Vec<f64> {
    notebook.cast.entries.iter().map(|entry| entry.temp.current().unwrap()).collect()
}

fn written(notebook: &Notebook) -> Vec<String> {
    notebook.cast.entries.iter().map(|entry| entry.temp.written.clone()).collect()
}

/// The doubt about all temperatures, if Log has it: it is the first.
fn doubt(notebook: &Notebook) -> Option<DoubtView> {
    let log = look(notebook).log;
    let at = log.doubts.iter().position(|doubt| doubt.text.id == "log-doubt-fahrenheit")?;
    assert_eq!(at, 0, "above the single doubts");
    log.doubts.into_iter().next()
}

/// The rows of the table that hold a reading.
fn read_rows(notebook: &Notebook) -> Vec<LogRow> {
    let rows = look(notebook).log.rows.into_iter();
    rows.filter(|row| row.down.entry.is_some()).collect()
}

fn in_f() -> Action {
    Action::ReadTemps { unit: Unit::F }
}

fn in_c() -> Action {
    Action::ReadTemps { unit: Unit::C }
}

#[track_caller]
fn assert_near(temps: &[f64], expected: &[f64]) {
    let near = temps.iter().zip(expected).all(|(a, b)| (a - b).abs() < 1e-9);
    assert!(near && temps.len() == expected.len(), "{temps:?} {expected:?}");
}

#[test]
fn one_doubt_about_all_of_them_stands_above_the_single_ones() {
    let notebook = typed(&TYPED);
    let log = look(&notebook).log;
    assert_eq!(log.doubts.len(), 9);
    let first = doubt(&notebook).unwrap();
    let actions: Vec<Action> = first.ways.iter().map(|way| way.action.clone()).collect();
    assert_eq!(actions, [in_f(), in_c()]);
    for (language, place, text) in [
        (
            "en",
            "From 48.9 to 74.3",
            "Most of these look like °F. Lake water is never that hot; as °F they are 9.4 to 23.5 °C.",
        ),
        (
            "es",
            "De 48,9 a 74,3",
            "La mayoría parecen °F. El agua de un lago nunca está tan caliente; si son °F, van de 9,4 a 23,5 °C.",
        ),
    ] {
        let words = Words::new(language);
        assert_eq!((words.say(&first.place).as_str(), words.say(&first.text).as_str()), (place, text));
    }
    // The cells keep their own doubts, which stand one further down.
    let doubted: Vec<Option<usize>> = read_rows(&notebook).iter().map(|row| row.down.doubt).collect();
    assert_eq!(doubted, (1..9).map(Some).collect::<Vec<_>>());
}

#[test]
fn read_as_fahrenheit_every_text_stays_and_undo_brings_all_back() {
    let before = typed(&TYPED);
    let read = act(&before, &in_f());
    let expected: Vec<f64> = TYPED.iter().map(|text| (text.parse::<f64>().unwrap() - 32.0) / 1.8).collect();
    assert_near(&temps(&read), &expected);
    assert_eq!(written(&read), TYPED);
    assert!((read.cast.digit_c - 0.1 / 1.8).abs() < 1e-12);
    let log = look(&read).log;
    assert!(log.doubts.is_empty() && log.fahrenheit && log.not_yet.is_none());
    let shown: Vec<f64> = read_rows(&read).iter().map(|row| row.down.num.unwrap().value).collect();
    assert_near(&shown, &TYPED.map(|text| text.parse().unwrap()));
    assert_eq!(log.settled[0].text.id, "log-settled-fahrenheit");
    let undo = log.undo.unwrap();
    assert_eq!(
        (Words::new("en").say(&undo.label).as_str(), &undo.action),
        ("Undo reading as °F", &Action::Undo)
    );
    let back = act(&read, &Action::Undo);
    assert_eq!(back.cast, before.cast);
    assert!(doubt(&back).is_some());
    // Kept and opened again it is the same.
    let again = Notebook::from_json(&serde_json::to_string(&read).unwrap()).unwrap();
    assert_eq!(again.cast, read.cast);
    assert_eq!(act(&read, &in_f()), read, "said twice");
}

#[test]
fn what_is_typed_later_is_read_as_fahrenheit_too() {
    let read = act(&typed(&TYPED), &in_f());
    let more = doing(&read, &[cell(None, 8.0, "46.4"), cell(None, 9.0, "7 °C"), cell(Some(0), 0.0, "75.2")]);
    let got = temps(&more);
    assert_near(&[got[8], got[9], got[0]], &[8.0, 7.0, 24.0]);
    // Both in the unit of the head of the table.
    let rows = read_rows(&more);
    assert_near(&[rows[8].down.num.unwrap().value, rows[9].down.num.unwrap().value], &[46.4, 44.6]);
    // A letter for a digit is doubted, and mended in the unit of the others.
    let slip = act(&read, &cell(None, 8.0, "4l.4"));
    let [one] = &cell_doubts(&slip.cast)[..] else { panic!() };
    assert!((one.proposals[0].value - (41.4 - 32.0) / 1.8).abs() < 1e-9);
}

#[test]
fn they_are_celsius_leaves_the_single_doubts_and_can_be_taken_back() {
    let before = typed(&TYPED);
    let said = act(&before, &in_c());
    assert_eq!(temps(&said), temps(&before));
    assert!(doubt(&said).is_none());
    assert_eq!(look(&said).log.doubts.len(), 8);
    assert_eq!(look(&said).log.settled[0].ways[0].action, in_f());
    assert_eq!(act(&said, &Action::Undo).cast, before.cast);
    // From °F too, where more was done since.
    let long = doing(&before, &[in_f(), cell(None, 8.0, "48.2"), in_c()]);
    assert_eq!(written(&long).len(), 9);
    assert_near(&temps(&long)[..8], &temps(&before));
    assert_eq!((temps(&long)[8], long.cast.digit_c), (48.2, 0.1));
}

#[test]
fn real_celsius_is_not_suspected() {
    let none = |texts: &[&str]| assert!(doubt(&typed(texts)).is_none(), "{texts:?}");
    none(&["23.5", "23.4", "23.1", "21.9", "17.7", "12.9", "10.2", "9.4"]);
    none(&["32", "31.5", "31", "30.2", "0", "0.4", "4"]);
    none(&["35.5", "35.1", "34.2", "33.9", "33.8"]);
    // Points lost in one cast, twice; and one reading alone.
    none(&["235", "23.4", "231", "21.9", "177", "12.9"]);
    none(&["74.3"]);
    // The unit is written.
    none(&["74.3 °C", "74.1 °C", "73.6 °C", "71.4 °C"]);
    none(&["74.3 °F", "74.1 °F", "73.6 °F", "71.4 °F"]);
}

#[test]
fn a_mixture_is_suspected_by_most_and_what_says_its_unit_stays() {
    assert!(doubt(&typed(&["74.3", "74.1", "73.6", "17", "16", "15"])).is_none(), "half is not most");
    // A deep lake: half of it lies at 4 °C.
    assert!(doubt(&typed(&["74.3", "71.4", "63.9", "39.6", "39.4", "39.2", "39.2"])).is_some());
    let mixed = typed(&["74.3", "74.1", "73.6", "22 °C", "64.4 °F", "15"]);
    assert!(doubt(&mixed).is_some());
    let read = act(&mixed, &in_f());
    assert_near(&temps(&read)[3..], &[22.0, 18.0, (15.0 - 32.0) / 1.8]);
    let odd = look(&read).log.doubts;
    assert!(!odd.is_empty() && doubt(&read).is_none(), "the one that is ice as °F is doubted by itself");
    assert_near(&temps(&act(&read, &in_c())), &temps(&mixed));
}

#[test]
fn a_hand_in_opened_as_a_notebook_is_read_so_too() {
    let file = concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/browser/hand_ins/F.json");
    let opened = hand_in::open(&std::fs::read(file).unwrap());
    let notebook = opened[0].as_ref().unwrap().hand_in.to_notebook();
    assert!(doubt(&notebook).is_some());
    let read = act(&notebook, &in_f());
    assert_eq!(written(&read), written(&notebook));
    assert!(temps(&read).iter().all(|temp_c| (0.0..32.0).contains(temp_c)));
    assert!(look(&read).log.not_yet.is_none() && doubt(&read).is_none());
    // A table's cell shows its number as it was written.
    assert!((look(&read).log.rows[0].down.num.unwrap().value - 74.3).abs() < 1e-9);
    assert_eq!(act(&read, &Action::Undo).cast, notebook.cast);
    // Handed in once more, nothing is lost and nobody finds it edited.
    let again = hand_in::open(hand_in::file_text(&read).as_bytes());
    let again = again[0].as_ref().unwrap();
    assert_eq!((again.check, again.hand_in.cast.entries == read.cast.entries), (hand_in::Check::Same, true));
}

#[test]
fn a_pasted_table_that_was_asked_about_is_not_asked_again() {
    let waiting = pasted("Depth,Down,Up\n0,74.1,74.3\n1,74.1,73.9\n2,73.6,73.6\n3,71.4,71.1\n4,63.9,63.3\n");
    let mut asked = waiting;
    while let Some(question) = look(&asked).log.pending.and_then(|pending| pending.question) {
        let celsius = question.ways.iter().find(|way| way.label.id == "read-way-c");
        asked = act(&asked, &celsius.unwrap_or(&question.ways[0]).action);
    }
    let used = act(&asked, &Action::UseTable);
    assert_eq!((used.cast.entries.len(), temps(&used)[0]), (10, 74.1));
    assert!(doubt(&used).is_none());
}

#[test]
fn what_a_teacher_reads_as_fahrenheit_is_turned_once() {
    let repair = layercast_lesson::class::Repair { fahrenheit: true, ..Default::default() };
    let typed = typed(&TYPED);
    let read = doing(&typed, &[in_f()]);
    let turned = |notebook: &Notebook| {
        repair
            .cast(&notebook.cast)
            .entries
            .iter()
            .map(|entry| entry.temp.current().unwrap())
            .collect::<Vec<_>>()
    };
    assert_near(&turned(&typed), &temps(&read));
    assert_near(&turned(&read), &temps(&read));
}
