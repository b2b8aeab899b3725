//! Every state of the water has its own honest result: the words of Profile for the invented waters, stored and read as
//! prose; and what must hold of each.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::support;

use layercast_lesson::document::Screen;
use layercast_lesson::look;
use layercast_lesson::view::{FoundView, Sign};
use support::{Words, checked, found, notebook};

/// The marks of the drawings, water by water.
const MARKS: [(&str, [&str; 3]); 12] = [
    ("group_c", ["2.5", "4.0", "6.0"]),
    ("mixed", ["", "", ""]),
    ("weak", ["2.5", "4.0", "6.0"]),
    ("cannot", ["3.0", "", ""]),
    ("inverse", ["", "2.0", ""]),
    ("unstable", ["1.8", "", ""]),
    ("surface", ["", "1.0", ""]),
    ("two", ["3.5", "5.3", "7.0"]),
    ("group_f", ["2.7", "4.0", ""]),
    ("one", ["2.5", "4.0", "6.0"]),
    ("deep", ["5.0", "8.5", "12.0"]),
    ("shallow", ["0.9", "1.2", "1.4"]),
];

fn told(language: &str) -> String {
    let words = Words::new(language);
    let mut told = Vec::new();
    for (water, marks) in MARKS {
        let look = look(&checked(&notebook(water), marks));
        let found = look.profile.found.as_ref().unwrap();
        told.push(format!("==== {water} {marks:?}\n{}\n--\n{}", words.found(found), words.beside(&look)));
    }
    told.join("\n\n")
}

#[test]
fn the_words_of_every_water_in_english() {
    insta::assert_snapshot!(told("en"));
}

#[test]
fn the_words_of_every_water_in_spanish() {
    insta::assert_snapshot!(told("es"));
}

/// Other marks than those of the drawings: every kind of verdict.
#[test]
fn the_words_beside_other_marks() {
    let others: [(&str, [&str; 3]); 17] = [
        ("group_c", ["", "", ""]),
        ("group_c", ["9", "9", "9"]),
        ("group_c", ["0.3", "0.3", "0.3"]),
        ("mixed", ["3", "4", "6"]),
        ("mixed", ["9.5", "", ""]),
        ("mixed", ["", "4", ""]),
        ("mixed", ["9.2", "", "9.4"]),
        ("weak", ["", "", ""]),
        ("weak", ["2", "8", "9"]),
        ("cannot", ["3.0", "5.0", "9.5"]),
        ("cannot", ["1.0", "1.0", "2.0"]),
        ("inverse", ["1.0", "", "6.0"]),
        ("inverse", ["", "8", ""]),
        ("surface", ["0.9", "4.0", "6.0"]),
        ("two", ["0.9", "0.9", "9.0"]),
        ("group_f", ["", "", "6.8"]),
        ("group_f", ["", "", "3"]),
    ];
    let mut told = Vec::new();
    for language in ["en", "es"] {
        let words = Words::new(language);
        for (water, marks) in others {
            told.push(format!("==== {water} {marks:?}\n{}", words.found(&found(water, marks))));
        }
    }
    insta::assert_snapshot!(told.join("\n\n"));
}

fn value(found: &FoundView, item: usize) -> f64 {
    found.items[item].value.unwrap().value
}

fn sign(found: &FoundView, item: usize) -> Option<Sign> {
    found.items[item].verdict.as_ref().map(|verdict| verdict.sign)
}

#[test]
fn layered_water_has_its_three_depths() {
    let found = found("group_c", ["2.5", "4.0", "6.0"]);
    assert_eq!([0, 1, 2].map(|i| value(&found, i)), [3.75, 2.7, 6.5]);
    assert_eq!(
        [0, 1, 2].map(|i| sign(&found, i)),
        [Some(Sign::Inside), Some(Sign::Close), Some(Sign::Inside)]
    );
}

#[test]
fn no_thermocline_is_invented() {
    for (water, marks) in
        [("mixed", ["", "4", ""]), ("unstable", ["1", "2", "3"]), ("inverse", ["1", "2", "3"])]
    {
        let found = found(water, marks);
        let is_thermocline =
            |item: &&layercast_lesson::view::FoundItem| item.name.id == "profile-thermocline";
        assert!(found.items.iter().filter(is_thermocline).all(|item| item.value.is_none()), "{water}");
    }
}

#[test]
fn a_moved_mark_is_judged_anew_and_the_first_stays_on_record() {
    use layercast_lesson::action::Action;
    use layercast_lesson::document::MarkName;
    let first = checked(&notebook("group_c"), ["2.5", "4.0", "6.0"]);
    let again = support::doing(
        &first,
        &[
            Action::ShowMarks { again: true },
            Action::TypeMark { mark: MarkName::Mixed, text: "2.7".into() },
            Action::CheckMarks { early: false },
        ],
    );
    let found = look(&again).profile.found.unwrap();
    assert_eq!(sign(&found, 1), Some(Sign::Inside));
    assert_eq!(again.sheets[0].first_marks.as_ref().unwrap().mixed.depth_m, Some(2.5));
}

#[test]
fn heavier_water_on_top_can_be_kept_or_left_out() {
    let notebook = checked(&notebook("unstable"), ["1.8", "", ""]);
    let doubt = &look(&notebook).profile.found.unwrap().doubts[0];
    assert_eq!(doubt.ways.len(), 3);
    let kept = layercast_lesson::act(&notebook, &doubt.ways[0].action);
    let found = look(&kept).profile.found.unwrap();
    assert!(found.doubts.is_empty(), "{:?}", found.doubts);
    assert_eq!(found.title.id, "profile-unstable-title");
    let out = layercast_lesson::act(&notebook, &doubt.ways[1].action);
    let found = look(&out).profile.found.unwrap();
    assert_ne!(found.title.id, "profile-unstable-title");
    assert_eq!(look(&notebook).place.screen, Screen::Profile);
}

#[test]
fn too_few_depths_say_so() {
    let few = support::pasted("depth m;temp °C\n0;20.1\n0.5;20.0\n1;19.9\n");
    let found = look(&checked(&few, ["", "", ""])).profile.found.unwrap();
    assert_eq!((found.title.id.as_str(), found.items.len()), ("profile-few-title", 0));
    let words = Words::new("en");
    assert!(words.found(&found).contains("3 depths over 1.0"), "{}", words.found(&found));
}

/// The weak water a little weaker: less than half a kilogram per cubic metre from top to bottom.
fn weaker() -> layercast_lesson::document::Notebook {
    support::pasted(
        &support::table("weak").replace("17.5\t17.6", "17.4\t17.4").replace("17.4\t17.6", "17.3\t17.4"),
    )
}

#[test]
fn weak_water_has_a_thermocline_and_no_metalimnion() {
    let found = look(&checked(&weaker(), ["2.5", "4.0", "6.0"])).profile.found.unwrap();
    insta::assert_snapshot!(Words::new("en").found(&found));
    let refused = look(&checked(&weaker(), ["", "", ""])).profile.found.unwrap();
    assert_eq!(
        [0, 1, 2].map(|i| sign(&refused, i)),
        [Some(Sign::Close), Some(Sign::Outside), Some(Sign::Inside)]
    );
}

#[test]
fn cold_water_is_mixed_by_density_although_a_step_is_steep() {
    // From 6.1 °C to 2.4 °C: steep steps, but either side of 4 °C the density is nearly the same.
    let temps = [6.1, 6.1, 6.0, 5.2, 4.4, 3.6, 2.9, 2.5, 2.4, 2.4];
    let rows = temps.iter().enumerate().map(|(i, t)| format!("{:.1},{t:.1},{t:.1}\n", i as f64 / 2.0));
    let table = format!("depth m,down °C,up °C\n{}", rows.collect::<String>());
    let found = look(&checked(&support::pasted(&table), ["", "", ""])).profile.found.unwrap();
    insta::assert_snapshot!(Words::new("en").found(&found));
}
