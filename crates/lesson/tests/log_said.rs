//! What Log says fits the way the readings came, and shows them as they were written.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::support;

use layercast_exchange::document::Origin;
use layercast_lesson::action::Action;
use layercast_lesson::document::{Notebook, Screen};
use layercast_lesson::view::Num;
use layercast_lesson::{act, look};
use support::{Words, doing, empty, pasted, table};

const EXAMPLES: [&str; 3] = [
    include_str!("../../../static-data/casts/layered-summer.csv"),
    include_str!("../../../static-data/casts/mixed-autumn.csv"),
    include_str!("../../../static-data/casts/under-ice.csv"),
];

fn undo(notebook: &Notebook) -> String {
    Words::new("en").say(&look(notebook).log.undo.unwrap().label)
}

#[test]
fn an_example_is_said_to_be_invented_and_never_pasted() {
    for text in EXAMPLES {
        let notebook = act(&empty(), &Action::TakeExample { text: text.to_owned() });
        assert_eq!(notebook.cast.source.as_ref().unwrap().origin, Origin::Example);
        for (language, invented, paste) in [("en", "invented", "paste"), ("es", "inventado", "pega")] {
            let words = Words::new(language);
            let seen = look(&notebook);
            let note = words.say(seen.log.example.as_ref().unwrap());
            assert!(note.contains(invented), "{note}");
            let facts: Vec<String> = seen.profile.facts.iter().map(|said| words.say(said)).collect();
            assert!(facts.iter().any(|fact| fact.contains(invented)), "{facts:?}");
            let all = words.log(&seen) + &words.say(&seen.log.undo.unwrap().label);
            assert!(!all.contains(paste), "{all}");
        }
        assert_eq!(undo(&notebook), "Put the example away");
        // It stays an example when a cell of it is changed and when it is opened from a file.
        let changed = act(&notebook, &Action::LeaveOut { entries: vec![3] });
        let opened = Notebook::from_json(&changed.to_json()).unwrap();
        assert!(look(&opened).log.example.is_some());
        // One's own readings in place of it are no example.
        let own = act(&opened, &Action::Paste { text: table("mixed") });
        assert!(look(&own).log.example.is_none() && look(&own).profile.facts[0].id != "profile-example");
    }
}

#[test]
fn undoing_is_called_by_what_was_done() {
    assert_eq!(undo(&pasted(&table("group_c"))), "Undo the paste");
    assert_eq!(undo(&act(&empty(), &Action::TakeFile { text: table("group_c") })), "Undo opening the file");
}

/// Waits for an answer: no unit is written.
const ASKS: &str =
    "Quillet Pond, group C\nDepth,Down,Up\n0,74.1,74.3\n1,74.1,73.9\n2,73.6,73.6\n3,71.4,71.1\n4,63.9,63.3\n";

#[test]
fn leaving_a_table_that_waits_is_called_by_how_it_came() {
    let words = Words::new("en");
    let label = |notebook: &Notebook| words.say(&look(notebook).log.pending.unwrap().drop.label);
    let text = || ASKS.to_owned();
    assert_eq!(label(&act(&empty(), &Action::Paste { text: text() })), "Undo the paste");
    assert_eq!(label(&act(&empty(), &Action::TakeFile { text: text() })), "Undo opening the file");
    let over = doing(&pasted(&table("group_c")), &[Action::TakeFile { text: text() }]);
    assert_eq!(label(&over), "Leave it as it was");
    assert_eq!(act(&over, &look(&over).log.pending.unwrap().drop.action), pasted(&table("group_c")));
    // The way it came is not lost while it waits.
    let used = doing(
        &act(&empty(), &Action::TakeFile { text: text() }),
        &[Action::AnswerTable { way: 0 }, Action::UseTable],
    );
    assert_eq!(undo(&used), "Undo opening the file");
}

#[test]
fn a_table_that_waits_shows_its_title_and_heads_as_skipped() {
    let pending = look(&pasted(ASKS)).log.pending.unwrap();
    let words = Words::new("en");
    let rows: Vec<(usize, &str, Option<String>)> = pending
        .rows
        .iter()
        .take(3)
        .map(|row| (row.line, row.cells[0].as_str(), row.skipped.as_ref().map(|said| words.say(said))))
        .collect();
    let skipped = |text: &str| Some(text.to_owned());
    assert_eq!(rows[0], (1, "Quillet Pond, group C", skipped("a title, not a reading")));
    assert_eq!(rows[1], (2, "Depth", skipped("headings of the columns")));
    assert_eq!(rows[2], (3, "0", None));
    assert_eq!(words.say(&pending.head).split('.').next(), Some("5 rows"));
}

#[test]
fn what_was_written_is_shown_as_it_was_written() {
    let written =
        "Depth (m),Down (°C),Up (°C)\n0,20.1,20.2\n1,198,19.9\n2,15,15.25\n3,12.0,12.1\n4,11.0,11.2\n";
    let rows = look(&pasted(written)).log.rows;
    let num = |value: f64, decimals: u8| Some(Num { value, decimals });
    assert_eq!(rows[1].down.num, num(198.0, 0));
    assert_eq!(rows[2].down.num, num(15.0, 0));
    assert_eq!(rows[2].up.as_ref().unwrap().num, num(15.25, 2));
    assert_eq!(rows[3].down.num, num(12.0, 1));
    // From °F it is computed and has the readings' decimals.
    let fahrenheit = "Depth (m),Temp (°F)\n0,68.2\n1,67\n2,60\n3,55.1\n4,52\n";
    assert_eq!(look(&pasted(fahrenheit)).log.rows[0].down.num.unwrap().decimals, 1);
}

#[test]
fn a_doubted_cell_is_quoted_as_a_cell() {
    let text =
        "Depth (m),Down (°C),Up (°C)\n0,20.1,20.2\n1,19.8,19.9\n2,15.0,1S.1\n20,12.0,12.1\n4,11..0,11.2\n";
    for language in ["en", "es"] {
        let words = Words::new(language);
        let seen = look(&pasted(text));
        let said: Vec<String> = seen.log.doubts.iter().map(|doubt| words.say(&doubt.text)).collect();
        for written in ["1S.1", "20", "11..0"] {
            let cell = format!("<cell>{written}</cell>");
            assert!(said.iter().any(|said| said.contains(&cell)), "{written}: {said:?}");
        }
        assert_eq!(seen.log.doubts.len(), 3);
    }
}

#[test]
fn a_doubt_is_at_a_depth_and_a_column_and_typing_goes_to_its_cell() {
    let text =
        "Depth (m),Down (°C),Up (°C)\n0,20.1,20.2\nx,19.8,1S.9\n2,15.0,15.1\n3,12.0,1Z.1\n4,11.0,11.2\n";
    let words = Words::new("en");
    let seen = look(&pasted(text));
    let places: Vec<(String, bool)> =
        seen.log.doubts.iter().map(|doubt| (words.say(&doubt.place), doubt.type_depth)).collect();
    let at = |place: &str, depth: bool| (place.to_owned(), depth);
    for wanted in
        [at("Line 3, depth", true), at("Line 3, coming up", false), at("3.0\u{a0}m, coming up", false)]
    {
        assert!(places.contains(&wanted), "{places:?}");
    }
}

#[test]
fn a_spike_from_another_unit_says_its_degrees() {
    let text =
        "Depth (m),Down (°F),Up (°F)\n0,68.2,68.4\n1,67.6,67.8\n2,55.2,66.0\n3,64.4,64.6\n4,62.6,63.0\n";
    let words = Words::new("en");
    let seen = look(&act(&pasted(text), &Action::Go { screen: Screen::Log, question: None }));
    let spike = seen.log.doubts.iter().find(|doubt| doubt.text.id == "log-doubt-spike-converted").unwrap();
    let said = words.say(&spike.text);
    assert!(said.contains("<cell>55.2</cell>, which is 12.9\u{a0}°C"), "{said}");
}
