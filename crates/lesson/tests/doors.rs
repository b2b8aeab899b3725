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

/// The cells of a door's row that begins with a name, in words.
fn told_of(words: &Words, door: &DoorView, name: &str) -> Option<String> {
    let cells = door.groups.iter().flat_map(|group| &group.rows).map(|row| &row.cells);
    let said = cells.map(|cells| cells.iter().map(|said| words.say(said)).collect::<Vec<_>>());
    said.filter(|cells| cells[0] == name).map(|cells| cells[1..].join(" | ")).next()
}

/// A table with one reading a mark.
fn read_once(rows: &[(f64, f64)]) -> Notebook {
    let rows: String = rows.iter().map(|(z, t)| format!("{z}\t{t:.1}\n")).collect();
    checked(&support::pasted(&format!("Depth (m)\tTemp (°C)\n{rows}")), ["", "", ""])
}

/// A tanh lake of 22 over 8 °C in uneven steps: by its rule the steep layer ends at 6 m, the trials have it deeper.
#[test]
fn one_depth_has_one_range_on_every_screen() {
    let lake = [22.0, 22.0, 22.0, 22.0, 21.7, 20.3, 19.4, 18.2, 16.7, 15.0, 11.8, 9.7, 8.0, 8.0, 8.0];
    let marks_m = [0.0, 0.3, 1.0, 2.0, 3.0, 4.0, 4.25, 4.5, 4.75, 5.0, 5.5, 6.0, 8.0, 10.0, 14.0];
    let notebook = read_once(&marks_m.into_iter().zip(lake).collect::<Vec<_>>());
    let (words, own) = (Words::new("en"), tried(&notebook));
    let look = look_from(&notebook, 0, Some(&own));
    let found = words.found(&look.profile.found.unwrap());
    let sure = look.profile.doors.unwrap().sure.unwrap();
    for name in ["Mixed layer, down to", "Deep layer, from"] {
        let range = told_of(&words, &sure, name).unwrap();
        let range = range.split(" | ").next().unwrap();
        assert!(found.contains(range), "{name}: {range}, not in {found}");
        let same = otherwise(&notebook, &Otherwise::default(), &[], Some(&own));
        let rows = prose(&words, &same.door);
        assert!(rows.contains(&format!("could be | {range} | {range}")), "{range}: {rows}");
    }
    assert!(found.contains("6.0 to 7"), "{found}");
}

/// Even water of 14.2 °C with 0.1 °C of noise, drawn once by numpy: its sum of work is −2 J per m².
#[test]
fn noise_is_no_heavy_water_on_top_and_no_work() {
    let down = [
        141, 141, 142, 141, 144, 141, 143, 142, 140, 142, 141, 141, 141, 143, 142, 142, 143, 142, 143, 142,
        141, 143, 143, 143, 142,
    ];
    let up = [
        142, 142, 142, 141, 141, 142, 141, 141, 143, 142, 142, 142, 141, 141, 142, 141, 142, 142, 143, 141,
        143, 142, 143, 143, 144,
    ];
    let rows: String = (0..25)
        .map(|i| format!("{}\t{}\t{}\n", 0.5 * i as f64, f64::from(down[i]) / 10.0, f64::from(up[i]) / 10.0))
        .collect();
    let notebook = support::pasted(&format!("Depth (m)\tDown (°C)\tUp (°C)\n{rows}"));
    let look = look(&checked(&notebook, ["", "", ""]));
    let words = Words::new("en");
    let mixing = prose(&words, &look.profile.doors.unwrap().mixing);
    assert!(mixing.starts_with("As far as these readings can tell, your water weighs the same"), "{mixing}");
    assert!(!mixing.contains("kg") && !mixing.contains("nothing to lift"), "{mixing}");
}

/// A cast that ends in the steep part says down to where the work is reckoned, and a noted bed takes its place.
#[test]
fn the_work_is_told_with_the_depth_it_reaches_to() {
    let lake = [22.0, 22.0, 22.0, 22.0, 22.0, 21.9, 21.9, 21.5, 20.1, 16.6, 12.0];
    let rows: Vec<(f64, f64)> = lake.iter().enumerate().map(|(i, t)| (0.5 * i as f64, *t)).collect();
    let notebook = read_once(&rows);
    let words = Words::new("en");
    let mixing = |notebook: &Notebook| prose(&words, &look(notebook).profile.doors.unwrap().mixing);
    let told = mixing(&notebook);
    assert!(told.starts_with("To mix your water down to 5.0\u{a0}m takes about"), "{told}");
    assert!(
        told.contains("to your last reading, at 5.0\u{a0}m") && told.contains("is not counted"),
        "{told}"
    );
    // Read once, 0.1 °C is noise; 0.4 °C in half a metre is more.
    assert!(told.contains("3.0 to 3.5\u{a0}m | ") && !told.contains("2.0 to 2.5\u{a0}m"), "{told}");
    let noted = layercast_lesson::action::Action::SetBed { text: "9".to_owned() };
    let told = mixing(&support::doing(&notebook, &[noted]));
    assert!(told.starts_with("To mix your water down to 9.0\u{a0}m takes about"), "{told}");
    assert!(!told.contains("last reading"), "{told}");
}

/// 5.48 J per m² (scipy 1.17.1, quad on these readings) are 5 joules.
#[test]
fn joules_are_rounded_once_and_to_two_digits() {
    let words = Words::new("en");
    let lead = |rows: &[(f64, f64)]| words.say(&look(&read_once(rows)).profile.doors.unwrap().mixing.lead[0]);
    let ice = [0.3, 1.4, 2.3, 2.9, 3.3, 3.6, 3.8, 3.9, 4.0, 4.0, 4.1];
    let rows: Vec<(f64, f64)> = ice.iter().enumerate().map(|(i, t)| (i as f64, *t)).collect();
    assert!(lead(&rows).ends_with("lifting 0.6\u{a0}kg by one metre (5\u{a0}joules)."), "{}", lead(&rows));
    // Four metres at 22 °C over six at 8 °C: 244.57 J by hand, a little less with a slope between 3.9 and 4.1 m.
    let two = [(0.0, 22.0), (2.0, 22.0), (3.9, 22.0), (4.1, 8.0), (7.0, 8.0), (10.0, 8.0)];
    assert!(lead(&two).ends_with("lifting 25\u{a0}kg by one metre (240\u{a0}joules)."), "{}", lead(&two));
}

/// Water that cools by 0.35 °C per metre all the way, read twice with 0.08 °C of noise (numpy): the span is 2 m, the
/// trials go over more than half of the cast, and both screens say so.
#[test]
fn where_trials_scatter_the_thermocline_says_so_itself() {
    let rows = "0 15.9 16.1; 0.5 15.9 15.9; 1 15.8 15.8; 1.5 15.4 15.3; 2 15.4 15.2; 2.5 15.1 15.2; \
        3 14.8 14.8; 3.5 14.8 14.8; 4 14.6 14.6; 4.5 14.4 14.3; 5 14.2 14.2; 5.5 13.9 14.1; \
        6 13.9 13.9; 6.5 13.6 13.7; 7 13.5 13.5; 7.5 13.4 13.3; 8 13.2 13.2";
    let rows = rows.replace(' ', "\t").replace(";\t", "\n");
    let notebook =
        checked(&support::pasted(&format!("Depth (m)\tDown (°C)\tUp (°C)\n{rows}\n")), ["", "", ""]);
    let own = ranges(&notebook, &drawn(&notebook, 0, 2_000));
    let words = Words::new("en");
    let (with, without) = (look_from(&notebook, 0, Some(&own)), look(&notebook));
    let found = |look: Look| words.found(&look.profile.found.unwrap());
    let sure = prose(&words, &with.profile.doors.clone().unwrap().sure.unwrap());
    assert!(sure.contains("is an honest answer"), "{sure}");
    assert!(found(with).contains("the steepest step falls almost anywhere"));
    assert!(!found(without).contains("almost anywhere"));
    let sharp = looked(&marked("group_c"));
    assert!(!words.found(&sharp.profile.found.unwrap()).contains("almost anywhere"));
}

/// Under ice there is no thermocline, and no door names one.
#[test]
fn under_ice_the_door_names_what_was_found() {
    let notebook = marked("inverse");
    let change = Otherwise { marks: OtherMarks::EveryMetre, ..Otherwise::default() };
    let view = otherwise(&notebook, &change, &[], Some(&tried(&notebook)));
    let words = Words::new("en");
    assert_eq!(told_of(&words, &view.door, "Thermocline"), None);
    assert!(told_of(&words, &view.door, "Warms fastest at").is_some());
}
