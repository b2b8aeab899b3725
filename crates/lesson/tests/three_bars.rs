//! Kind 29: a bar stands in the strip once it is found, and the strip fills after the third, unless that would answer a
//! question that is still open. What each bar is, is worked out from the rows.

use crate::questions_support::answers::BARS;
use crate::questions_support::{Pond, answer, demo, fields};
use layercast_lesson::document::Sheet;
use layercast_lesson::questions;
use layercast_lesson::scene::shown;

/// °C per metre of the bars that are asked for, from the means.
fn rates(pond: &Pond) -> Vec<f64> {
    let asked = pond.asked(29).unwrap();
    let means = pond.means();
    let at = |z: f64| means.iter().find(|p| (p.0 - z).abs() < 1e-9).unwrap().1;
    asked.depths_m.chunks(2).map(|z| (at(z[0]) - at(z[1])) / (z[1] - z[0])).collect()
}

/// The sheet with this many bars found, one a press.
fn with_bars(pond: &mut Pond, found: usize) {
    let all: Vec<String> = rates(pond).iter().map(|rate| format!("{rate:.1}")).collect();
    let typed: Vec<(&str, &str)> = BARS.into_iter().zip(all.iter().map(String::as_str)).take(found).collect();
    let asked = pond.asked(29).unwrap();
    pond.sheet.answers.insert(asked.id, answer(&[fields(&typed)]));
}

fn strip(pond: &Pond) -> (bool, usize) {
    let shown = shown(&pond.context(), &pond.paper());
    (shown.steps, shown.some_steps.len())
}

fn pond_with(kinds: &[u8]) -> Pond {
    let mut pond = demo("group_c");
    pond.lesson.kinds = kinds.to_vec();
    pond
}

#[test]
fn each_bar_stands_once_it_is_found_and_the_third_fills_the_strip() {
    let mut pond = pond_with(&[4, 29]);
    assert_eq!(strip(&pond), (false, 0), "empty until then");
    for found in 1..=2 {
        with_bars(&mut pond, found);
        assert_eq!(strip(&pond), (false, found));
    }
    with_bars(&mut pond, 3);
    let asked = pond.asked(29).unwrap();
    assert!(questions::standing(&pond.context(), &asked, pond.sheet.answers.get(&asked.id)).right);
    assert_eq!(strip(&pond), (true, 0));
}

#[test]
fn the_strip_waits_for_the_marks_and_for_questions_that_it_answers() {
    for kinds in [&[29, 6][..], &[5, 29], &[29]] {
        let mut pond = pond_with(kinds);
        with_bars(&mut pond, 3);
        if kinds == [29] {
            assert_eq!(strip(&pond), (true, 0));
            pond.sheet = Sheet { answers: pond.sheet.answers, ..Sheet::default() };
        }
        assert_eq!(strip(&pond), (false, 3), "{kinds:?}");
    }
}

#[test]
fn the_bars_are_no_answer_to_the_questions_around_them() {
    let pond = pond_with(&[5, 29, 6]);
    let asked = pond.asked(29).unwrap();
    let of_5 = pond.asked(5).unwrap().depths_m;
    let steepest = pond.analysis.thermocline.unwrap();
    for step in asked.depths_m.chunks(2) {
        assert_ne!(step, of_5);
        assert!(step[1] <= steepest.span_top_m + 1e-9 || step[0] >= steepest.span_bottom_m - 1e-9);
    }
}
