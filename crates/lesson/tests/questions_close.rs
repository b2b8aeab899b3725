//! Numbers beside the sum that is shown: right, rounded, close enough, right in another unit.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

use crate::questions_support;

use layercast_core::{Method, analyse};
use layercast_lesson::questions::Verdict;
use questions_support::pages::{number, said, verdict, view};
use questions_support::words::Words;
use questions_support::{all_ponds, answer, demo, fields};
use std::collections::BTreeSet;

#[test]
fn the_own_limit_is_followed_through() {
    let mut pond = demo("mixed");
    let believe = |x: &str| fields(&[("limit", x), ("unit", "c")]);
    let typical = |x: &str| fields(&[("apart", x), ("unit", "c"), ("way", "unsigned")]);
    pond.sheet.answers.insert("13".into(), answer(&[typical("0.09")]));
    let asked = pond.asked(102).unwrap();
    // 2.8 × 0.09, and 2.8 times what the water gives; the own typical value is the idea, not a limit.
    assert!(pond.right(&asked, &believe("0.25")) && pond.right(&asked, &believe("0.14")));
    let idea = pond.verdict(&asked, 0, &believe("0.09")).unwrap();
    assert_eq!(idea.idea, Some("the_typical_difference"));
    let page = view(&mut pond, &asked, &[believe("0.25")]);
    assert!((number(&page.parts[0].sum[0].left, "s") - 0.09).abs() < 1e-9);
    // The sum that is shown is the one that gives the number taken as right.
    let page = view(&mut pond, &asked, &[believe("0.14")]);
    assert!((number(&page.parts[0].sum[0].right, "value") - 0.14).abs() < 0.006);
    // 103 goes by the limit given in 102.
    let asked = pond.asked(103).unwrap();
    let page = view(&mut pond, &asked, &[fields(&[("line", "none")])]);
    let biggest = page.parts[0].notes.iter().find(|n| n.id == "ask-103-biggest").unwrap();
    assert!((number(biggest, "limit") - 0.14).abs() < 1e-9);
}

#[test]
fn what_fits_says_the_place_the_readings_are_good_to() {
    let fits = |digit_c: f64| {
        let mut pond = demo("group_c");
        pond.cast.digit_c = digit_c;
        pond.analysis = analyse(&pond.cast, &Method::default());
        let asked = pond.asked(4).unwrap();
        let page = view(
            &mut pond,
            &asked,
            &[
                fields(&[("drop", "99"), ("unit", "c")]),
                fields(&[("drop", "88"), ("unit", "c")]),
                fields(&[("drop", "77"), ("unit", "c")]),
            ],
        );
        let fits = page.parts[0].fits.clone().unwrap();
        let width = number(&fits, "high") - number(&fits, "low");
        (fits.id.clone(), number(&fits, "digit"), width, Words::new("en").say(&fits))
    };
    let (id, digit, tenth, text) = fits(0.1);
    assert!(id == "ask-fits-c" && (digit - 0.1).abs() < 1e-9, "{text}");
    let (id, digit, _, text) = fits(0.01);
    assert!(id == "ask-fits-c-rounded" && (digit - 0.01).abs() < 1e-9 && text.contains("0.01"), "{text}");
    let (id, _, _, text) = fits(5.0 / 90.0);
    assert!(id == "ask-fits-c-rounded" && text.contains("0.06"), "{text}");
    // Coarser readings allow more, and say so.
    let (id, digit, half, text) = fits(0.5);
    assert!(id == "ask-fits-c" && (digit - 0.5).abs() < 1e-9 && half > tenth + 0.7, "{text}");
    // Digits too many are counted by the same place.
    let mut pond = demo("group_c");
    pond.cast.digit_c = 0.01;
    let asked = pond.asked(4).unwrap();
    let page = view(&mut pond, &asked, &[fields(&[("drop", "4.050"), ("unit", "c"), ("source", "mean")])]);
    assert!(!said(&page).contains(&"ask-note-digits".to_owned()));
}

#[test]
fn a_right_number_in_fahrenheit_is_known_as_one() {
    let mut pond = demo("group_c");
    let temp = |text: &str, unit: &str| fields(&[("temp", text), ("unit", unit)]);
    let asked = pond.asked(1).unwrap();
    // 21.8 °C is 71.2 °F.
    for (text, unit) in [("71.2", "m"), ("71.2", "c"), ("71,2 m", ""), ("71.2", "c_per_m")] {
        let page = view(&mut pond, &asked, &[temp(text, unit)]);
        let said = verdict(&page, 0);
        assert_eq!(said.id, "ask-slip-fahrenheit", "{text} {unit}");
        assert!(Words::new("es").say(said).contains("«71,2\u{a0}°F»"), "{}", Words::new("es").say(said));
        assert_eq!(pond.verdict(&asked, 0, &temp(text, unit)).unwrap().verdict, Verdict::Slip);
    }
    assert!(pond.right(&asked, &temp("71.2 °F", "")));
    assert_ne!(pond.verdict(&asked, 0, &temp("71.2 °C", "")).unwrap().verdict, Verdict::Slip);
    // A box without a list of units.
    let asked = pond.asked(9).unwrap();
    let page = view(&mut pond, &asked, &[fields(&[("temp", "72.3")])]);
    assert_eq!(verdict(&page, 0).id, "ask-slip-fahrenheit");
    // A difference, 4.05 °C: with °C chosen it is simply not right.
    let asked = pond.asked(4).unwrap();
    let drop = |unit: &str| fields(&[("drop", "7.3"), ("unit", unit), ("source", "mean")]);
    assert_eq!(verdict(&view(&mut pond, &asked, &[drop("m")]), 0).id, "ask-slip-fahrenheit");
    assert_eq!(verdict(&view(&mut pond, &asked, &[drop("c")]), 0).id, "ask-4-no");
}

#[test]
fn an_answer_beside_another_sum_is_close_enough_not_right() {
    let say = |water: &str, kind: u8, tried: &[(&str, &str)]| {
        let mut pond = demo(water);
        let asked = pond.asked(kind).unwrap();
        let page = view(&mut pond, &asked, &[fields(tried)]);
        assert!(page.parts[0].settled, "{water} {kind} {tried:?}");
        Words::new("en").say(verdict(&page, 0))
    };
    let drop = |x: &'static str| [("drop", x), ("unit", "c"), ("source", "mean")];
    assert_eq!(say("group_c", 4, &drop("4.05")), "<mine>4.05</mine> is right.");
    assert_eq!(say("group_c", 4, &drop("4.1")), "<mine>4.1</mine> is right: it is 4.05\u{a0}°C, rounded.");
    assert_eq!(
        say("group_c", 4, &drop("4.13")),
        "<mine>4.13</mine> is close enough: your readings give 4.05\u{a0}°C."
    );
    let rate = |x: &'static str| [("rate", x), ("unit", "c_per_m"), ("source", "mean")];
    assert_eq!(say("group_c", 5, &rate("4.5")), "<mine>4.5</mine> is right.");
    assert_eq!(
        say("group_c", 5, &rate("4.3")),
        "<mine>4.3</mine> is close enough: your readings give 4.5\u{a0}°C per metre."
    );
    let temp = |x: &'static str| [("temp", x), ("unit", "c")];
    assert_eq!(say("group_c", 1, &temp("21.7")), "<mine>21.7</mine> is what your water has at 3\u{a0}m.");
    assert_eq!(
        say("group_c", 1, &temp("21.3")),
        "<mine>21.3</mine> is close enough: your readings give 21.8\u{a0}°C."
    );
    let apart = |x: &'static str| [("apart", x), ("unit", "c")];
    assert_eq!(say("mixed", 101, &apart("0.5")), "<mine>0.5</mine> is all that your whole cast differs by.");
    assert_eq!(
        say("mixed", 101, &apart("0.6")),
        "<mine>0.6</mine> is close enough: your readings give 0.5\u{a0}°C."
    );
    // 0.04 by the readings: 0.08 is taken, and not called typical.
    let typical = |x: &'static str| [("apart", x), ("unit", "c"), ("way", "unsigned")];
    assert_eq!(
        say("mixed", 13, &typical("0.08")),
        "<mine>0.08</mine> is close enough: your readings give 0.04\u{a0}°C."
    );
    assert!(say("mixed", 13, &typical("0.04")).contains("how far off one of your readings typically is"));
    // The number of another unit is right, or close enough, by the same measure.
    let mut pond = demo("group_c");
    let asked = pond.asked(4).unwrap();
    let unit = |x: &str| fields(&[("drop", x), ("unit", "m"), ("source", "mean")]);
    assert_eq!(verdict(&view(&mut pond, &asked, &[unit("4.1")]), 0).id, "ask-slip-unit");
    assert_eq!(verdict(&view(&mut pond, &asked, &[unit("4.13")]), 0).id, "ask-slip-unit-close");
}

#[test]
fn no_water_calls_a_number_right_beside_another_sum() {
    use questions_support::answers::rights;
    let words = Words::new("en");
    let mut seen = BTreeSet::new();
    for mut pond in all_ponds() {
        for asked in pond.paper().asked {
            let Some(id) = (match asked.kind {
                4 => Some("drop"),
                5 => Some("rate"),
                13 | 101 => Some("apart"),
                102 => Some("limit"),
                _ => None,
            }) else {
                continue;
            };
            for right in rights(&pond, &asked) {
                for off in [-0.1, -0.04, 0.0, 0.03, 0.1] {
                    let mut tried = right.clone();
                    let Ok(x) = right[id].replace(',', ".").parse::<f64>() else { continue };
                    tried.insert(id.into(), format!("{:.2}", x.abs() + off));
                    let page = view(&mut pond, &asked, &[tried.clone()]);
                    let Some(result) = page.parts[0].sum.last().filter(|_| page.parts[0].settled) else {
                        continue;
                    };
                    let said = verdict(&page, 0);
                    let (x, worked) = (tried[id].parse::<f64>().unwrap(), number(&result.right, "value"));
                    let squares = tried.get("way").is_some_and(|w| w == "squares");
                    if said.id.ends_with("-yes") && !squares {
                        assert!(
                            (x - worked).abs() < 0.0101,
                            "{} {}: {} beside {worked}",
                            pond.name,
                            asked.id,
                            words.say(said)
                        );
                    }
                    if said.id == "ask-yes-close" && !squares {
                        assert!(
                            (number(said, "value") - worked).abs() < 1e-9,
                            "{} {}: {} beside {worked}",
                            pond.name,
                            asked.id,
                            words.say(said)
                        );
                    }
                    seen.insert(said.id.clone());
                }
            }
        }
    }
    assert!(
        seen.contains("ask-yes-close") && seen.contains("ask-4-yes") && seen.contains("ask-102-yes"),
        "{seen:?}"
    );
}

#[test]
fn a_neighbour_of_the_right_step_is_no_mirror_of_it() {
    // Steepest from 5.0 to 5.5 m, last reading at 9.5 m: measured from the bottom, 5.25 m is 4.25 m.
    let pond = demo("two");
    let asked = pond.asked(7).unwrap();
    let depth = |x: &str| pond.verdict(&asked, 0, &fields(&[("depth", x)])).unwrap();
    for mirrored in ["4.25", "4.1", "4.4"] {
        assert_eq!(depth(mirrored).idea, Some("depth_as_height"), "{mirrored}");
    }
    for beside in ["4.5", "4.75", "4.9"] {
        assert_eq!((depth(beside).verdict, depth(beside).idea), (Verdict::Almost, None), "{beside}");
    }
}

#[test]
fn a_depth_that_fits_the_means_is_judged_by_the_means() {
    // 22.4 °C is met at 2.684 m by the means, at 2.722 m going down: 2.72 fits both, and lies nearer to the second.
    let mut pond = demo("group_c");
    let asked = pond.asked(9).unwrap();
    let all = |depth: &str| fields(&[("temp", "22.4"), ("from", "2.5"), ("to", "3"), ("depth", depth)]);
    let page = view(&mut pond, &asked, &[all("2.72")]);
    let said = verdict(&page, 2);
    assert_eq!(said.id, "ask-yes-close");
    assert!((number(said, "value") - 2.68).abs() < 0.006, "{said:?}");
    let page = view(&mut pond, &asked, &[all("2.68")]);
    assert_eq!(verdict(&page, 2).id, "ask-9-depth-yes");
}

#[test]
fn a_depth_outside_the_own_step_is_called_that() {
    let mut pond = demo("group_c");
    let asked = pond.asked(9).unwrap();
    let all = |depth: &str| fields(&[("temp", "22.4"), ("from", "2.5"), ("to", "3"), ("depth", depth)]);
    for outside in ["3.1", "2.4", "6"] {
        let page = view(&mut pond, &asked, &[all(outside)]);
        let said = verdict(&page, 2);
        assert_eq!(said.id, "ask-9-depth-outside", "{outside}");
        assert!((number(said, "from") - 2.5).abs() < 1e-9 && (number(said, "to") - 3.0).abs() < 1e-9);
    }
    // Inside, and at its marks, it is judged as before.
    for (inside, id) in [("2.5", "ask-which-rule"), ("3", "ask-9-depth-no"), ("2.9", "ask-9-depth-almost")] {
        let page = view(&mut pond, &asked, &[all(inside)]);
        assert_eq!(verdict(&page, 2).id, id, "{inside}");
    }
}

#[test]
fn after_a_wrong_unit_the_unit_is_looked_at() {
    let mut pond = demo("group_c");
    let asked = pond.asked(4).unwrap();
    let drop = |text: &str, unit: &str| fields(&[("drop", text), ("unit", unit), ("source", "mean")]);
    // 4.05 °C by the means.
    for (text, unit, id, at) in [
        ("4.05", "m", "ask-slip-unit", Some("unit")),
        ("4.1", "c_per_m", "ask-slip-unit", Some("unit")),
        ("4.15", "m", "ask-slip-unit-close", Some("unit")),
        ("9", "c", "ask-4-no", None),
    ] {
        let page = view(&mut pond, &asked, &[drop(text, unit)]);
        assert_eq!(
            (verdict(&page, 0).id.as_str(), page.parts[0].look_at.as_deref()),
            (id, at),
            "{text} {unit}"
        );
    }
}
