//! When each sentence of Profile is said, and when not: waters made for one sentence each. Long because every sentence of the
//! rarer waters has a water that says it and one that does not.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::support;

use layercast_lesson::document::{Lesson, MethodDoc, Notebook, Screen};
use layercast_lesson::view::{FoundView, Look, Said, SaidArg};
use layercast_lesson::{action::Action, look};
use support::{Words, checked, doing, notebook, pasted};

/// A cast read going down and coming up alike, every half metre from the surface.
fn cast(temps: &[f64]) -> Notebook {
    pasted(&both_ways(temps))
}

fn both_ways(temps: &[f64]) -> String {
    let rows = temps.iter().enumerate().map(|(i, t)| format!("{:.1},{t:.1},{t:.1}\n", i as f64 / 2.0));
    format!("depth m,down °C,up °C\n{}", rows.collect::<String>())
}

/// The same by a class rule with another drop, °C.
fn cast_by(temps: &[f64], mixed_drop_c: f64) -> Notebook {
    let method = MethodDoc { mixed_drop_c, ..MethodDoc::default() };
    let empty = Notebook::new("C-KTZR", Lesson { method, ..Lesson::first() });
    doing(&empty, &[Action::Paste { text: both_ways(temps) }])
}

fn seen(notebook: &Notebook, marks: [&str; 3]) -> Look {
    look(&checked(notebook, marks))
}

fn found(notebook: &Notebook) -> FoundView {
    seen(notebook, ["", "", ""]).profile.found.unwrap()
}

/// The ids of a sentence and of those inside it.
fn ids(said: &Said, into: &mut Vec<String>) {
    into.push(said.id.clone());
    for arg in said.args.values() {
        if let SaidArg::Message { said } = arg {
            ids(said, into);
        }
    }
}

/// The ids of everything that was found.
fn all_ids(found: &FoundView) -> Vec<String> {
    let mut all = Vec::new();
    ids(&found.title, &mut all);
    found.lead.iter().for_each(|said| ids(said, &mut all));
    for item in &found.items {
        ids(&item.name, &mut all);
        ids(&item.unit, &mut all);
        item.verdict.iter().for_each(|verdict| ids(&verdict.said, &mut all));
        item.notes.iter().for_each(|said| ids(said, &mut all));
    }
    all
}

#[track_caller]
fn says(found: &FoundView, said: &[&str], not: &[&str]) {
    let all = all_ids(found);
    let words = Words::new("en").found(found);
    for id in said {
        assert!(all.iter().any(|one| one == id), "{id} is not said:\n{words}");
    }
    for id in not {
        assert!(!all.iter().any(|one| one == id), "{id} is said:\n{words}");
    }
}

const MIXED_WHY: [&str; 7] = [
    "profile-mixed-no-step",
    "profile-mixed-below",
    "profile-mixed-chance",
    "profile-mixed-by-density",
    "profile-mixed-by-little",
    "profile-mixed-last-reading",
    "profile-mixed-few-readings",
];

/// Mixed water says one reason and no other.
#[track_caller]
fn mixed_because(found: &FoundView, why: &str) {
    let others: Vec<&str> = MIXED_WHY.into_iter().filter(|other| *other != why).collect();
    says(found, &[why], &others);
    let few = ["profile-mixed-last-reading", "profile-mixed-few-readings"].contains(&why);
    assert_eq!(found.title.id, if few { "profile-mixed-title-few" } else { "profile-mixed-title" });
}

/// Even water of 20 °C but for a last reading.
const EVEN: [f64; 9] = [20.0, 20.1, 20.0, 20.0, 20.1, 20.0, 20.0, 20.1, 20.0];

fn with_last(last_c: f64) -> Notebook {
    cast(&[&EVEN[..], &[last_c]].concat())
}

#[test]
fn a_steep_last_reading_alone_is_no_layer_and_is_said_to_be_the_last() {
    let steep = found(&with_last(13.1));
    mixed_because(&steep, "profile-mixed-last-reading");
    says(
        &steep,
        &["profile-rule-mixed-outvoted"],
        &["profile-rule-mixed-at-least", "profile-rule-mixed-density"],
    );
    assert!(Words::new("en").found(&steep).contains("One step reaches 13.8"));
}

#[test]
fn marks_beside_a_steep_last_reading_are_not_told_that_the_density_hardly_changes() {
    let few = ["profile-mixed-thermocline-few", "profile-mixed-deep-few"];
    let even = ["profile-mixed-thermocline", "profile-mixed-deep"];
    let marked = |notebook: &Notebook| seen(notebook, ["", "4.2", "4.4"]).profile.found.unwrap();
    says(&marked(&with_last(13.1)), &few, &even);
    says(&marked(&with_last(19.9)), &even, &few);
}

#[test]
fn a_weak_last_reading_is_mixed_water_like_any_other() {
    let near = found(&with_last(19.6));
    mixed_because(&near, "profile-mixed-below");
    says(&near, &["profile-rule-mixed-at-least"], &["profile-rule-mixed-outvoted"]);
    mixed_because(&found(&with_last(19.9)), "profile-mixed-no-step");
}

#[test]
fn steep_readings_elsewhere_are_few_but_not_the_last() {
    let top = found(&cast(&[27.0, 20.0, 20.1, 20.0, 20.0, 20.1, 20.0, 20.0, 20.1, 20.0]));
    mixed_because(&top, "profile-mixed-few-readings");
    let before_last = found(&cast(&[20.0, 20.1, 20.0, 20.0, 20.1, 20.0, 20.0, 20.1, 14.0, 14.0]));
    says(&before_last, &[], &["profile-mixed-last-reading"]);
}

#[test]
fn a_step_by_chance_is_said_where_top_and_bottom_are_alike() {
    // A reading every 0.1 m: 0.1 °C is 1 °C per metre.
    let temps = [
        15.0, 15.1, 15.0, 15.1, 15.0, 15.0, 15.1, 15.0, 15.1, 15.0, 15.0, 15.1, 15.0, 15.0, 15.1, 15.0, 15.0,
        15.0,
    ];
    let rows = temps.iter().enumerate().map(|(i, t)| format!("{:.1},{t:.1},{t:.1}\n", i as f64 / 10.0));
    let chance = found(&pasted(&format!("depth m,down °C,up °C\n{}", rows.collect::<String>())));
    mixed_because(&chance, "profile-mixed-chance");
    says(&chance, &["profile-steepest-chance"], &["profile-steepest-real"]);
}

#[test]
fn cold_water_hardly_differs_in_density_and_warm_water_does() {
    let cold = found(&cast(&[6.1, 6.1, 6.0, 5.2, 4.4, 3.6, 2.9, 2.5, 2.4, 2.4]));
    mixed_because(&cold, "profile-mixed-by-density");
    says(&cold, &["profile-rule-mixed-density", "profile-steepest-real"], &["profile-rule-mixed-outvoted"]);
    // The same shape 15 °C warmer is layered.
    let warm = found(&cast(&[21.1, 21.1, 21.0, 20.2, 19.4, 18.6, 17.9, 17.5, 17.4, 17.4]));
    says(&warm, &["profile-found-title"], &MIXED_WHY);
    // And a steep last reading in warm water is never said to be near 4 °C.
    says(&found(&with_last(13.1)), &[], &["profile-rule-mixed-density", "profile-mixed-by-density"]);
}

#[test]
fn salt_is_named_while_nobody_has_said_how_it_was() {
    let unstable = checked(&notebook("unstable"), ["", "", ""]);
    let open = look(&unstable).profile.found.unwrap();
    says(&open, &["profile-unstable-either"], &["profile-unstable-kept"]);
    for (language, salt) in [("en", "salt"), ("es", "sal")] {
        assert!(Words::new(language).found(&open).contains(salt));
    }
    let kept = look(&doing(&unstable, &[open.doubts[0].ways[0].action.clone()])).profile.found.unwrap();
    says(&kept, &["profile-unstable-kept"], &["profile-unstable-either"]);
}

#[test]
fn ice_is_not_claimed() {
    let words = Words::new("en").found(&found(&notebook("inverse")));
    assert!(words.contains("as under ice") && !words.contains("under the ice"), "{words}");
}

#[test]
fn with_several_layers_the_rule_says_which() {
    let two = cast(&[
        22.0, 22.0, 21.9, 21.9, 21.8, 20.0, 18.2, 17.2, 17.1, 17.1, 17.0, 17.0, 15.5, 14.0, 12.5, 11.0, 10.0,
        9.9, 9.9, 9.8,
    ]);
    let two = found(&two);
    says(&two, &["profile-more-layers", "profile-rule-deep-main"], &["profile-rule-deep"]);
    let one = found(&notebook("group_c"));
    says(&one, &["profile-rule-deep"], &["profile-rule-deep-main", "profile-more-layers"]);
}

#[test]
fn a_range_that_reaches_the_end_of_a_cut_off_cast_is_open_below() {
    // Steeper and steeper to the last reading.
    let end = found(&cast(&[20.0, 20.0, 19.9, 19.8, 19.4, 18.4, 16.4, 13.4, 10.4]));
    says(&end, &["profile-cut-off-title", "profile-note-cut-off"], &[]);
    // The steepest step lies well above the end.
    let above = found(&notebook("group_f"));
    says(&above, &["profile-cut-off-title"], &["profile-note-cut-off"]);
    says(&found(&notebook("group_c")), &[], &["profile-cut-off-title", "profile-note-cut-off"]);
}

/// A warm bump under the reference depth, then a steep layer. With a drop of 0.3 °C the bump ends the mixed layer.
const BUMP: [f64; 12] = [20.0, 20.0, 20.3, 20.3, 20.2, 19.0, 16.0, 13.0, 12.0, 11.8, 11.7, 11.7];

const COLDER: [&str; 5] = [
    "profile-rule-mixed",
    "profile-rule-mixed-today",
    "profile-rule-mixed-at-least",
    "profile-rule-temp-drop",
    "profile-look-mixed",
];

#[test]
fn what_is_warmer_is_not_called_colder() {
    let notebook = cast_by(&BUMP, 0.3);
    let refused = found(&notebook);
    says(&refused, &["profile-rule-mixed-warmer", "profile-look-mixed-warmer"], &COLDER);
    let far = seen(&notebook, ["4.5", "", ""]);
    says(far.profile.found.as_ref().unwrap(), &["profile-look-mixed-warmer"], &COLDER);
    let names = |own: bool| -> Vec<&str> {
        let rows = far.profile.rules.iter().flat_map(|group| &group.rows);
        rows.filter(|row| row.own == own).map(|row| row.name.id.as_str()).collect()
    };
    assert_eq!(names(true), ["profile-rule-steepest-middle", "profile-rule-temp-rise"]);
    // Larger steps than the class's own are met where the water has become colder, a smaller one where it is warmer.
    let others: Vec<&str> = names(false).into_iter().filter(|id| id.contains("-temp-")).collect();
    let (rise, drop) = ("profile-rule-temp-rise", "profile-rule-temp-drop");
    assert_eq!(others, [rise, drop, drop, drop]);
    // By the class rule the same water ends its mixed layer where it has become colder.
    let colder = seen(&cast(&BUMP), ["", "", ""]);
    says(
        colder.profile.found.as_ref().unwrap(),
        &["profile-rule-mixed", "profile-look-mixed"],
        &["profile-rule-mixed-warmer", "profile-look-mixed-warmer"],
    );
    assert!(
        colder
            .profile
            .rules
            .iter()
            .flat_map(|group| &group.rows)
            .any(|row| row.name.id == "profile-rule-temp-drop")
    );
}

#[test]
fn todays_warm_layer_may_hold_warmer_water() {
    let day =
        [25.0, 23.0, 23.3, 22.0, 20.5, 20.5, 20.4, 20.4, 20.3, 18.0, 15.0, 12.0, 11.0, 10.9, 10.8, 10.8];
    let warmer = found(&cast_by(&day, 0.3));
    says(&warmer, &["profile-two-title", "profile-rule-mixed-today-warmer"], &COLDER);
    let day =
        [25.0, 23.0, 22.3, 21.0, 20.5, 20.5, 20.4, 20.4, 20.3, 18.0, 15.0, 12.0, 11.0, 10.9, 10.8, 10.8];
    let colder = found(&cast_by(&day, 0.3));
    says(&colder, &["profile-rule-mixed-today"], &["profile-rule-mixed-today-warmer"]);
}

#[test]
fn mixed_water_that_warms_downward_never_gets_warmer_enough() {
    let warming = found(&cast(&[3.5, 3.6, 3.7, 3.8, 3.9, 4.0, 4.1, 4.2, 4.2, 4.2]));
    says(&warming, &["profile-mixed-title", "profile-rule-mixed-at-least-warmer"], &COLDER);
    // Even water, warmer below by no more than its noise.
    let even = found(&cast(&EVEN));
    says(&even, &["profile-rule-mixed-at-least"], &["profile-rule-mixed-at-least-warmer"]);
}

#[test]
fn what_is_assumed_of_readings_taken_once_stands_beside_the_ranges() {
    let facts = |notebook: &Notebook| -> Vec<String> {
        let seen = seen(notebook, ["", "", ""]);
        assert!(seen.profile.found.is_some());
        seen.profile.facts.iter().map(|said| Words::new("en").say(said)).collect()
    };
    let once = facts(&notebook("one"));
    assert!(once.iter().any(|fact| fact.starts_with("Read once: ±\u{a0}0.1\u{a0}°C is assumed")), "{once:?}");
    let twice = facts(&notebook("group_c"));
    assert!(!twice.iter().any(|fact| fact.contains("assumed")), "{twice:?}");
    // Whole degrees: a step of 1 °C divided by √12 is more than 0.1 (methods 4).
    let whole = pasted("depth m,temp °C\n0,21\n1,21\n2,20\n3,16\n4,12\n5,11\n6,11\n");
    let whole = facts(&whole);
    assert!(whole.iter().any(|fact| fact.contains("±\u{a0}0.3\u{a0}°C")), "{whole:?}");
}

#[test]
fn a_difference_is_the_one_between_the_numbers_shown() {
    // Down to 1.5 m 12.2 °C, below it 13.2 °C: one degree, not the 0.9 of the unrounded medians.
    let words = Words::new("en").found(&found(&notebook("unstable")));
    assert!(
        words.contains("12.2\u{a0}°C, below it 13.2\u{a0}°C") && words.contains("colder by 1.0\u{a0}°C"),
        "{words}"
    );
}

#[test]
fn the_words_at_the_marks_are_explained() {
    let seen = look(&notebook("group_c"));
    let words: Vec<String> = seen.profile.mark_words.iter().map(|said| Words::new("en").say(said)).collect();
    assert!(words.iter().any(|said| said.contains("Thermocline") && said.contains("steepest")), "{words:?}");
    assert!(words.iter().any(|said| said.contains("Give or take")), "{words:?}");
    let apart = |look: &Look| look.log.notices.iter().any(|said| said.id == "log-word-apart");
    assert!(apart(&seen), "the column of differences is explained where it first stands");
    assert!(!apart(&look(&notebook("one"))), "without that column there is nothing to explain");
}

#[test]
fn equally_steep_warming_steps_are_counted_and_nothing_lies_higher_than_what_cannot_be_told() {
    let even = found(&cast(&[2.6, 2.6, 2.7, 2.8, 2.9, 3.0, 3.1, 3.2, 3.3, 3.3]));
    says(
        &even,
        &["profile-cannot-tell", "profile-rule-equal-warming-steps", "profile-densing-step"],
        &["profile-rule-warming-step", "profile-densing-higher"],
    );
    says(
        &found(&notebook("inverse")),
        &["profile-rule-warming-step", "profile-densing-higher"],
        &["profile-rule-equal-warming-steps", "profile-densing-step"],
    );
}

#[test]
fn warmer_heavier_water_on_top_is_a_lake_that_warms() {
    let warming = found(&cast(&[3.9, 3.9, 3.9, 3.8, 1.0, 0.8, 0.8, 0.8, 0.7, 0.7]));
    says(
        &warming,
        &["profile-unstable-warmer", "profile-unstable-either-warming"],
        &["profile-unstable-either"],
    );
    says(&found(&notebook("unstable")), &["profile-unstable-either"], &["profile-unstable-either-warming"]);
}

/// A cast read once, every `step_m` metres from `first_m` on.
fn once(first_m: f64, step_m: f64, temps: &[f64]) -> Notebook {
    let rows = temps.iter().enumerate().map(|(i, t)| format!("{:.1},{t:.1}\n", first_m + step_m * i as f64));
    pasted(&format!("depth m,temp °C\n{}", rows.collect::<String>()))
}

#[test]
fn a_small_step_that_every_reading_shows_is_mixed_for_its_density_not_for_few_readings() {
    // By Tanaka's formula (tests/reference/methods.md 1) 10.0 and 8.8 °C differ by 0.10 kg/m³ at most.
    let small =
        found(&once(0.0, 0.5, &[10.0, 10.0, 9.9, 10.0, 10.0, 10.0, 8.9, 8.8, 8.8, 8.8, 8.8, 8.8, 8.8]));
    mixed_because(&small, "profile-mixed-by-little");
    says(
        &small,
        &["profile-rule-mixed-little"],
        &["profile-rule-mixed-outvoted", "profile-rule-mixed-density"],
    );
    let marked = seen(
        &once(0.0, 0.5, &[10.0, 10.0, 9.9, 10.0, 10.0, 10.0, 8.9, 8.8, 8.8, 8.8, 8.8, 8.8, 8.8]),
        ["2", "2.7", "3"],
    );
    says(
        &marked.profile.found.unwrap(),
        &["profile-mixed-thermocline", "profile-mixed-deep"],
        &["profile-mixed-thermocline-few", "profile-mixed-deep-few"],
    );
}

#[test]
fn water_that_goes_on_cooling_under_todays_layer_is_not_called_even() {
    let slow = once(0.0, 1.0, &[22.0, 20.8, 20.0, 19.1, 18.2, 17.3, 16.4, 15.6, 15.1, 14.6, 14.2]);
    let even_words = ["profile-even-water", "profile-today-under", "profile-today-deep"];
    let slow_words = ["profile-slow-water", "profile-today-under-slow", "profile-today-deep-slow"];
    let marked = |notebook: &Notebook| seen(notebook, ["", "", "8"]).profile.found.unwrap();
    says(&marked(&slow), &slow_words, &even_words);
    let even = once(0.0, 1.0, &[22.0, 20.8, 20.3, 20.3, 20.3, 20.2, 20.2, 20.2, 20.2, 20.2, 20.2]);
    says(&marked(&even), &even_words, &slow_words);
}

#[test]
fn a_run_with_a_step_under_the_threshold_says_that_readings_cannot_tell() {
    let joined =
        found(&once(0.0, 0.5, &[22.0, 22.0, 22.0, 20.5, 19.0, 18.7, 17.1, 15.6, 15.5, 15.5, 15.5, 15.5]));
    says(&joined, &["profile-rule-deep-joined"], &["profile-rule-deep"]);
    says(&found(&notebook("one")), &[], &["profile-rule-deep-joined"]);
}

#[test]
fn the_mixed_layer_is_measured_from_the_first_reading_where_that_lies_deeper() {
    let deep = found(&once(1.0, 0.5, &[20.1, 20.0, 19.8, 18.9, 16.0, 13.1, 11.0, 10.2, 9.9, 9.8, 9.7]));
    let words = Words::new("en").found(&deep).replace('\u{a0}', " ");
    assert!(words.contains("1.0 °C colder than at 1.0 m"), "{words}");
    assert!(!words.contains("than at 0.5 m"), "{words}");
}

#[test]
fn few_pairs_say_what_is_assumed() {
    let facts = |text: &str| -> Vec<String> {
        look(&pasted(text)).profile.facts.into_iter().map(|said| said.id).collect()
    };
    let few = facts(
        "depth m,down °C,up °C\n0,21.0,21.0\n1,20.9,20.9\n2,19.0,\n3,15.0,\n4,12.0,\n5,10.0,\n6,9.5,9.5\n",
    );
    assert!(few.contains(&"profile-assumed-few".to_owned()), "{few:?}");
    let enough = facts(&both_ways(&[21.0, 20.9, 19.0, 15.0, 12.0, 10.0]));
    assert!(!enough.iter().any(|id| id.starts_with("profile-assumed")), "{enough:?}");
    let none = facts("depth m,temp °C\n0,21.0\n1,20.9\n2,19.0\n3,15.0\n");
    assert!(none.contains(&"profile-assumed".to_owned()), "{none:?}");
}

#[test]
fn water_warmer_than_its_densest_does_not_lie_below_by_itself() {
    let warm = ["profile-ice-lead-warm"];
    says(&found(&once(0.0, 0.5, &[1.0, 1.0, 1.2, 2.5, 4.0, 5.0, 5.0, 5.0])), &warm, &["profile-ice-lead"]);
    says(&found(&notebook("inverse")), &["profile-ice-lead"], &warm);
}

#[test]
fn a_rule_that_cannot_see_the_layer_says_so() {
    let small = [16.1, 16.1, 16.0, 16.1, 16.0, 16.0, 15.4, 15.4, 15.4, 15.4, 15.4, 15.4];
    says(&found(&cast(&small)), &["profile-rule-mixed-at-least-small"], &["profile-rule-mixed-at-least"]);
    says(&found(&cast(&EVEN)), &["profile-rule-mixed-at-least"], &["profile-rule-mixed-at-least-small"]);
}

#[test]
fn the_end_of_a_mixed_layer_that_warms_is_not_asked_for_as_colder_water() {
    let bulge = [20.0, 20.0, 20.0, 20.6, 21.2, 21.3, 21.0, 18.2, 14.1, 11.2, 10.1, 9.5, 9.3, 9.2];
    let told = |notebook: &Notebook| {
        serde_json::to_string(&seen(notebook, ["", "", ""])).unwrap().contains("ask-dropped-9-warmer")
    };
    let bulge =
        doing(&once(0.0, 0.5, &bulge), &[Action::Go { screen: Screen::Questions, question: Some(0) }]);
    assert!(told(&bulge));
    assert!(!told(&doing(&notebook("one"), &[Action::Go { screen: Screen::Questions, question: Some(0) }])));
}

/// Rarer waters, stored and read as prose.
#[test]
fn the_words_of_rarer_waters() {
    let waters: [(&str, Vec<f64>); 7] = [
        ("steep before the last reading", vec![20.0, 20.1, 20.0, 20.0, 20.1, 20.0, 20.0, 20.1, 14.0, 14.0]),
        ("steep at the first reading", vec![27.0, 20.0, 20.1, 20.0, 20.0, 20.1, 20.0, 20.0, 20.1, 20.0]),
        ("steep at the last reading", [&EVEN[..], &[13.1]].concat()),
        ("warming to 3.3 °C", vec![2.6, 2.6, 2.7, 2.8, 2.9, 3.0, 3.1, 3.2, 3.3, 3.3]),
        ("warmer and heavier on top", vec![3.9, 3.9, 3.9, 3.8, 1.0, 0.8, 0.8, 0.8, 0.7, 0.7]),
        ("cut off in the steepest step", vec![20.0, 20.0, 19.9, 19.8, 19.4, 18.4, 16.4, 13.4, 10.4]),
        ("even steps", vec![20.0, 19.6, 19.2, 18.8, 18.4, 18.0, 17.6, 17.2, 16.8, 16.4, 16.0, 15.6]),
    ];
    let mut told = Vec::new();
    for language in ["en", "es"] {
        let words = Words::new(language);
        for (name, temps) in &waters {
            for marks in [["", "", ""], ["1", "2", "3"]] {
                let look = seen(&cast(temps), marks);
                let found = look.profile.found.as_ref().unwrap();
                told.push(format!(
                    "==== {name} {marks:?}\n{}\n--\n{}",
                    words.found(found),
                    words.beside(&look)
                ));
            }
        }
    }
    insta::assert_snapshot!(told.join("\n\n"));
}
