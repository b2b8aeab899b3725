//! What stands behind the doors of Profile: how sure, read otherwise, how hard to mix; stored and read as prose
//! (`INSTA_UPDATE=always` writes them anew), and what must hold of the ranges that trials make.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::support;

use layercast_core::{MixedLayer, RangesFrom};
use layercast_lesson::document::Notebook;
use layercast_lesson::ranges::{drawn, drawn_otherwise, otherwise, ranges};
use layercast_lesson::view::{
    DoorView, Look, OtherCable, OtherDigits, OtherMarks, OtherWait, OtherWays, Otherwise,
};
use layercast_lesson::{look, look_from, prepare, prepare_with, step_with};
use support::{NAMES, Words, checked, notebook};

/// Enough for words; the page makes ten thousand.
const TRIALS: u32 = 1_000;

fn tried(notebook: &Notebook) -> String {
    ranges(notebook, &drawn(notebook, 0, TRIALS))
}

fn marked(water: &str) -> Notebook {
    checked(&notebook(water), ["", "", ""])
}

fn looked(notebook: &Notebook) -> Look {
    look_from(notebook, 0, Some(&tried(notebook)))
}

fn prose(words: &Words, door: &DoorView) -> String {
    let mut lines: Vec<String> = door.lead.iter().map(|said| words.say(said)).collect();
    for group in &door.groups {
        let row = |cells: &[layercast_lesson::view::Said]| {
            cells.iter().map(|said| words.say(said)).collect::<Vec<_>>().join(" | ")
        };
        lines.push(format!("## {}", row(&group.heads)));
        for one in &group.rows {
            let share = one.per_cent.map_or(String::new(), |share| format!(" [{share} %]"));
            lines.push(format!("{} {}{share}", if one.own { "*" } else { "-" }, row(&one.cells)));
        }
    }
    lines.extend(door.notes.iter().map(|said| format!("({})", words.say(said))));
    lines.join("\n")
}

fn told(language: &str) -> String {
    let words = Words::new(language);
    let one = |water: &str| {
        let look = looked(&marked(water));
        let Some(doors) = look.profile.doors else { return format!("==== {water}\nno doors") };
        let sure = doors.sure.map_or(prose(&words, &doors.waiting), |sure| prose(&words, &sure));
        format!("==== {water}\n{sure}\n--\n{}", prose(&words, &doors.mixing))
    };
    NAMES.map(one).join("\n\n")
}

#[test]
fn how_sure_and_how_hard_to_mix_in_english() {
    insta::assert_snapshot!(told("en"));
}

#[test]
fn how_sure_and_how_hard_to_mix_in_spanish() {
    insta::assert_snapshot!(told("es"));
}

#[test]
fn the_same_cast_read_otherwise() {
    let changes = [
        Otherwise::default(),
        Otherwise { marks: OtherMarks::EveryMetre, ..Otherwise::default() },
        Otherwise { marks: OtherMarks::Every2Metres, ..Otherwise::default() },
        Otherwise { ways: OtherWays::Down, ..Otherwise::default() },
        Otherwise { ways: OtherWays::Up, wait: OtherWait::Short, ..Otherwise::default() },
        Otherwise { wait: OtherWait::Hardly, ..Otherwise::default() },
        Otherwise { digits: OtherDigits::Halves, ..Otherwise::default() },
        Otherwise { digits: OtherDigits::Whole, cable: OtherCable::Rough, ..Otherwise::default() },
        Otherwise { cable: OtherCable::Poor, ..Otherwise::default() },
    ];
    let words = Words::new("en");
    let mut told = Vec::new();
    for water in ["group_c", "mixed", "inverse"] {
        let notebook = marked(water);
        let own = tried(&notebook);
        for change in &changes {
            let view = otherwise(&notebook, change, &drawn_otherwise(&notebook, change, 0, 500), Some(&own));
            told.push(format!("==== {water} {change:?}\n{}", prose(&words, &view.door)));
        }
    }
    insta::assert_snapshot!(told.join("\n\n"));
}

#[test]
fn trials_come_out_alike_in_whatever_parts() {
    let notebook = notebook("group_c");
    let parts: Vec<f64> = [(0, 1), (1, 7), (8, 92)]
        .into_iter()
        .flat_map(|(from, count)| drawn(&notebook, from, count))
        .collect();
    assert_eq!(ranges(&notebook, &parts), ranges(&notebook, &drawn(&notebook, 0, 100)));
}

#[test]
fn ranges_come_from_the_trials_of_these_readings_only() {
    let notebook = marked("group_c");
    let (text, other) = (tried(&notebook), tried(&marked("two")));
    let analysis = prepare_with(&notebook, Some(&text)).analysis;
    assert_eq!(analysis.ranges_from, RangesFrom::Trials { count: TRIALS });
    for senseless in [other.as_str(), "", "{}", "null", "[1, 2]"] {
        assert_eq!(
            prepare_with(&notebook, Some(senseless)).analysis,
            prepare(&notebook).analysis,
            "{senseless}"
        );
    }
    // The value stays the rule's own, the thermocline keeps its span.
    let before = prepare(&notebook).analysis;
    assert_eq!(analysis.thermocline, before.thermocline);
    let value = |mixed: &Option<MixedLayer>| match mixed {
        Some(MixedLayer::At { value_m, .. }) => Some(*value_m),
        _ => None,
    };
    assert_eq!(value(&analysis.mixed_layer), value(&before.mixed_layer));
    assert_ne!(analysis.mixed_layer, before.mixed_layer);
}

#[test]
fn trials_are_asked_for_once_and_only_where_there_is_something_to_try() {
    for water in NAMES {
        let notebook = marked(water);
        let wanted = look(&notebook).ranges.wanted;
        assert_eq!(wanted, !drawn(&notebook, 0, 1).is_empty(), "{water}");
        assert!(!looked(&notebook).ranges.wanted || !wanted, "{water}");
    }
    assert!(!look(&support::empty()).ranges.wanted);
    // A switch or another depth makes another key, a mark does not.
    let notebook = notebook("group_c");
    let key = look(&notebook).ranges.key;
    let leave = layercast_lesson::action::Action::LeaveOut { entries: vec![3] };
    let (_, left_out) = step_with(notebook.clone(), &leave, None);
    assert_ne!(left_out.ranges.key, key);
    assert_eq!(look(&checked(&notebook, ["2.5", "4", "6"])).ranges.key, key);
}

#[test]
fn before_the_check_no_door_is_open() {
    let notebook = notebook("group_c");
    assert!(looked(&notebook).profile.doors.is_none());
}
