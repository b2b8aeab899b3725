//! The report: nothing covered is in it, its numbers carry range and rule, its checklist looks for presence alone.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::support;

use layercast_lesson::action::Action;
use layercast_lesson::document::{MarkName, Notebook, ReportPart, Screen};
use layercast_lesson::view::ReportView;
use layercast_lesson::{act, look};
use support::{NAMES, Words, checked, doing, notebook};

fn report(notebook: &Notebook) -> ReportView {
    let at = act(notebook, &Action::Go { screen: Screen::Report, question: None });
    look(&at).report.expect("the report is in hand")
}

/// The bank as it is read: what is on the button, what it puts in, its range and rule.
fn bank(notebook: &Notebook) -> Vec<String> {
    let words = Words::new("en");
    let told = |word: &layercast_lesson::view::ReportWord| {
        let about = word.about.as_ref().map_or(String::new(), |about| words.say(about));
        format!("{} | {} | {about}", words.say(&word.label), words.say(&word.put)).replace('\u{a0}', " ")
    };
    report(notebook).bank.iter().map(told).collect()
}

/// The lines of what was found: name, depth or words, range, rule, mark.
fn found(notebook: &Notebook) -> Vec<String> {
    let words = Words::new("en");
    let said =
        |said: &Option<layercast_lesson::view::Said>| said.as_ref().map_or("-".into(), |s| words.say(s));
    let line = |row: &layercast_lesson::view::ReportFound| {
        let value =
            row.value.map_or(String::new(), |num| format!("{:.*} ", usize::from(num.decimals), num.value));
        let (name, unit) = (words.say(&row.name), words.say(&row.unit));
        let line = format!(
            "{name}: {value}{unit} | {} | {} | {}",
            said(&row.range),
            said(&row.rule),
            said(&row.marked)
        );
        line.replace('\u{a0}', " ")
    };
    report(notebook).page.found.iter().map(line).collect()
}

#[test]
fn only_the_report_screen_carries_the_report() {
    let notebook = notebook("group_c");
    for screen in [Screen::Log, Screen::Profile, Screen::Questions] {
        assert!(look(&act(&notebook, &Action::Go { screen, question: None })).report.is_none());
    }
    assert!(report(&notebook).not_yet.is_none());
    assert!(report(&support::empty()).not_yet.is_some());
}

#[test]
fn before_anything_is_uncovered_the_bank_holds_only_what_needs_no_cover() {
    for water in NAMES {
        let view = report(&notebook(water));
        let ids: Vec<&str> = view.bank.iter().map(|word| word.label.id.as_str()).collect();
        let plain = ["report-word-warmest", "report-word-coldest", "report-word-apart"];
        assert!(ids.iter().all(|id| plain.contains(id)), "{water}: {ids:?}");
        assert!(view.covered.is_some(), "{water}");
        assert!(view.page.rows.iter().all(|row| row.per_metre.is_none()), "{water}");
        assert!(view.page.found_notes.is_empty(), "{water}");
        for row in &view.page.found {
            assert_eq!(row.unit.id, "report-covered", "{water}");
            assert!(row.value.is_none() && row.range.is_none() && row.rule.is_none(), "{water}");
        }
        // The names of the lines are those of the marks: they say nothing of the state of the water.
        let names: Vec<&str> = view.page.found.iter().map(|row| row.name.id.as_str()).collect();
        assert_eq!(names, ["profile-mark-thermocline", "profile-mark-mixed", "profile-mark-deep"], "{water}");
    }
}

#[test]
fn after_the_check_every_number_has_its_range_and_rule() {
    let notebook = checked(&notebook("group_c"), ["2.5", "4.0", "6.0"]);
    assert_eq!(
        bank(&notebook),
        [
            "thermocline 3.75 m | 3.75 m (3.5 to 4.0 m) | Could be 3.5 to 4.0 m. Middle of the steepest step",
            "mixed to 2.7 m | 2.7 m (2.6 to 2.8 m) | Could be 2.6 to 2.8 m. 1.0 °C colder than at 0.5 m",
            "deep from 6.5 m | 6.5 m (6.0 to 7.0 m) | Could be 6.0 to 7.0 m. Below steps of at least 1 °C per metre",
            "5.0 °C per metre | 5.0 °C per metre | The steepest step, 3.5 to 4.0 m",
            "warmest 23.5 °C | 23.5 °C at 0.0 m | ",
            "coldest 8.9 °C | 8.9 °C at 9.5 m | ",
            "down and up 0.3 °C apart | 0.3 °C | Down and up apart, at most 0.3 °C",
        ]
    );
    assert_eq!(
        found(&notebook),
        [
            "Thermocline: 3.75 m | 3.5 to 4.0 m | Middle of the steepest step | 4.0 m",
            "Mixed layer, down to: 2.7 m | 2.6 to 2.8 m | 1.0 °C colder than at 0.5 m | 2.5 m",
            "Deep layer, from: 6.5 m | 6.0 to 7.0 m | Below steps of at least 1 °C per metre | 6.0 m",
        ]
    );
    let view = report(&notebook);
    assert!(view.covered.is_none());
    assert!(view.page.rows.iter().rev().skip(1).all(|row| row.per_metre.is_some()));
}

#[test]
fn water_without_a_layer_says_so_in_its_place() {
    let none = |water: &str| found(&checked(&notebook(water), ["", "", ""]));
    assert!(none("mixed")[0].starts_with("Thermocline: none | - | - | none"), "{:?}", none("mixed"));
    assert!(none("mixed")[2].starts_with("Deep layer: none"), "{:?}", none("mixed"));
    assert!(none("inverse")[0].starts_with("Warms fastest at: "), "{:?}", none("inverse"));
    assert!(none("inverse")[1].contains("not for such water"), "{:?}", none("inverse"));
}

#[test]
fn the_marks_of_the_page_are_the_first_ones() {
    let notebook = checked(&notebook("group_c"), ["2.5", "4.0", "6.0"]);
    let moved = doing(
        &notebook,
        &[
            Action::ShowMarks { again: true },
            Action::TypeMark { mark: MarkName::Thermocline, text: "3.7".into() },
        ],
    );
    assert!(found(&moved)[0].ends_with("| 4.0 m"), "{:?}", found(&moved));
}

#[test]
fn the_checklist_looks_for_presence_in_all_texts_but_the_title() {
    let there = |texts: &[(ReportPart, &str)]| {
        let actions: Vec<Action> = texts
            .iter()
            .map(|(part, text)| Action::SetReport { part: *part, text: (*text).to_owned() })
            .collect();
        let view = report(&doing(&notebook("group_c"), &actions));
        view.checks.iter().map(|check| check.there).collect::<Vec<bool>>()
    };
    assert_eq!(there(&[]), [false; 4]);
    assert_eq!(there(&[(ReportPart::Title, "From 3.5 to 4.0 m")]), [false; 4]);
    assert_eq!(there(&[(ReportPart::Claim, "It has 3 layers")]), [true, false, false, false]);
    // Wrong numbers count as well: presence is all it looks at.
    let wrong = [(ReportPart::Evidence, "Between 90 and 95 m it is hot.")];
    assert_eq!(there(&wrong), [true, true, true, true]);
    let apart = [(ReportPart::Claim, "At 3 m"), (ReportPart::Change, "4,5 °C, give or take")];
    assert_eq!(there(&apart), [true, true, false, true]);
}

#[test]
fn the_page_names_what_was_corrected_and_left_out() {
    let notebook = doing(
        &notebook("group_c"),
        &[
            Action::LeaveOut { entries: vec![3] },
            Action::MakeTemp { entry: 5, value_c: 22.9, text: "22.9".into() },
        ],
    );
    let words = Words::new("en");
    let notes: Vec<String> = report(&notebook).page.notes.iter().map(|note| words.say(note)).collect();
    assert!(notes.iter().any(|note| note.contains("left out")), "{notes:?}");
    assert!(notes.iter().any(|note| note.contains("made") && note.contains("22.9")), "{notes:?}");
}

#[test]
fn marks_that_are_placed_and_not_checked_are_said_to_be_that() {
    let marks = |notebook: &Notebook| report(notebook).stands[2].value.id.clone();
    let place = |mark, text: &str| Action::TypeMark { mark, text: text.to_owned() };
    let some = doing(&notebook("group_c"), &[place(MarkName::Mixed, "2.7")]);
    assert_eq!(marks(&some), "report-marks-not-yet");
    let all = doing(&some, &[place(MarkName::Thermocline, "3.8"), place(MarkName::Deep, "6.5")]);
    assert_eq!(marks(&all), "report-marks-not-checked");
    assert_eq!(marks(&checked(&all, ["2.7", "3.8", "6.5"])), "report-marks-yes");
}

#[test]
fn the_page_says_whose_it_is_as_far_as_that_is_given() {
    let who = |class: &str, seat: &str| {
        let notebook = doing(
            &notebook("group_c"),
            &[
                Action::SetGroup { text: "C".into() },
                Action::SetClass { text: class.into() },
                Action::SetSeat { text: seat.into() },
            ],
        );
        ["en", "es"].map(|language| {
            let words = Words::new(language);
            let who = report(&notebook).page.who;
            // The last two are the code of the work and the day.
            let named = who[..who.len() - 2].iter().map(|said| words.say(said));
            named.collect::<Vec<_>>().join(" · ")
        })
    };
    assert_eq!(who("9b", "11"), ["group C · 9b · 11", "grupo C · 9b · 11"]);
    assert_eq!(who("9b", "")[0], "group C · 9b");
    assert_eq!(who("", " 11 ")[0], "group C · 11");
    assert_eq!(who("", "")[0], "group C");
}
