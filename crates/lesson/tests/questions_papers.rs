//! Which questions are asked of which water, and which are left out: a stored, reviewed list.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

use crate::questions_support;

use layercast_core::State;
use questions_support::{all_ponds, demo};

#[test]
fn what_is_asked_and_left_out_of_every_water() {
    let mut list = String::new();
    for pond in all_ponds() {
        let paper = pond.paper();
        let ids: Vec<&str> = paper.asked.iter().map(|a| a.id.as_str()).collect();
        let about: Vec<&str> = paper.about.iter().map(|m| m.id).collect();
        list +=
            &format!("{} ({:?}): {} | {}\n", pond.name, pond.analysis.state, ids.join(" "), about.join(" "));
    }
    insta::assert_snapshot!(list);
}

#[test]
fn the_layered_demo_water_has_all_eight_in_the_lessons_order() {
    let kinds: Vec<u8> = demo("group_c").paper().asked.iter().map(|a| a.kind).collect();
    assert_eq!(kinds, [1, 4, 5, 6, 9, 7, 8, 13]);
}

#[test]
fn mixed_water_has_at_least_five() {
    for pond in all_ponds().iter().filter(|p| p.analysis.state == State::Mixed) {
        assert!(pond.paper().asked.len() >= 5, "{}: {:?}", pond.name, pond.paper());
    }
}

#[test]
fn a_cast_of_many_thousand_depths_gets_its_questions_too() {
    use layercast_core::Leg;
    use layercast_lesson::questions;
    use questions_support::Pond;
    for upside_down in [false, true] {
        let rows = (0..20_000)
            .map(|i| {
                let z = 0.002 * f64::from(i);
                let t = 15.0 - 7.0 * ((z - 12.0) / 3.0).clamp(-1.0, 1.0);
                let t = if upside_down { 30.0 - t } else { t };
                (z, (t * 100.0).round() / 100.0, Some((t * 100.0).round() / 100.0))
            })
            .collect();
        let pond = Pond::new("fine", rows, Leg::Down);
        let paper = pond.paper();
        assert!(paper.asked.len() >= 3, "{paper:?}");
        for (index, asked) in paper.asked.iter().enumerate() {
            assert!(questions::view(&pond.context(), &paper, index).is_some());
            let _ = questions::standing(&pond.context(), asked, None);
        }
    }
}

#[test]
fn no_answer_changes_what_is_asked() {
    use layercast_lesson::document::{Answer, Try};
    use questions_support::answers::{rights, wrongs};
    use questions_support::{Dice, Fields, answer, fields};
    let mut dice = Dice::new(7);
    for mut pond in all_ponds() {
        let before = pond.paper().asked;
        let unmoved = |pond: &questions_support::Pond, what: &dyn std::fmt::Debug| {
            assert_eq!(pond.paper().asked, before, "{} after {what:?}", pond.name);
        };
        let mut pool: Vec<(String, Vec<Fields>)> = Vec::new();
        for asked in &before {
            let mut list: Vec<Fields> = rights(&pond, asked);
            list.extend(wrongs(&pond, asked).into_iter().map(|w| w.fields));
            for _ in 0..12 {
                let number = format!("{:.2}", 10.0 * dice.even() * dice.even() * dice.even());
                let ids = ["temp", "drop", "rate", "apart", "limit", "from", "to", "depth"]
                    .map(|id| (id, number.as_str()));
                let rest = [("unit", "c"), ("way", "unsigned"), ("source", "mean"), ("line", "colder")];
                list.push(fields(&ids.into_iter().chain(rest).collect::<Vec<_>>()));
            }
            pool.push((asked.id.clone(), list));
        }
        // One question after the other, whatever is answered to each.
        for (id, list) in &pool {
            for tried in list {
                pond.sheet.answers.insert(id.clone(), answer(std::slice::from_ref(tried)));
                unmoved(&pond, tried);
            }
            for kept in [
                Answer { shown: true, ..Answer::default() },
                Answer {
                    tries: vec![Try { cannot_tell: true, ..Try::default() }],
                    again: true,
                    ..Answer::default()
                },
            ] {
                pond.sheet.answers.insert(id.clone(), kept.clone());
                unmoved(&pond, &kept);
            }
        }
        // All of them at once.
        for _ in 0..10 {
            for (id, list) in &pool {
                let picked = [dice.below(list.len()), dice.below(list.len())].map(|i| list[i].clone());
                pond.sheet.answers.insert(id.clone(), answer(&picked));
            }
            unmoved(&pond, &pond.sheet.answers);
        }
    }
}
