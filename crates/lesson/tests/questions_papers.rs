//! Which questions are asked of which water, and which are left out: a stored, reviewed list.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

mod questions_support;

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
