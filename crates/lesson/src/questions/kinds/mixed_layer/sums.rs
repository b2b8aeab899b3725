//! The sums of the three parts.

use super::crossing::Crossing;
use crate::questions::say::{Numbers, divided, in_c, line, minus, result, rounded};
use crate::view::SumLine;
use layercast_core::Message;

/// The sum of a split step.
pub(super) fn split(at: &Crossing, target: f64) -> Vec<SumLine> {
    let (ta, tb) = at.temps_c;
    let f = rounded(at.fraction(target), 2);
    let height = at.marks_m.1 - at.marks_m.0;
    let to_lose = Message::new("ask-9-sum-to-lose");
    let last = (Message::new("ask-9-sum-place").m("top", at.marks_m.0)).number("f", f, 2).m("height", height);
    vec![
        line(minus(ta, target, 1), in_c(ta - target), to_lose),
        line(minus(ta, tb, 1), in_c(ta - tb), Message::new("ask-9-sum-whole")),
        line(
            divided(ta - target, ta - tb),
            Message::new("ask-sum-number").number("value", f, 2),
            Message::new("ask-9-sum-fraction"),
        ),
        result(
            last,
            Message::new("ask-sum-m").number("value", rounded(at.depth_m(target), 2), 2),
            Message::new("ask-9-sum-end"),
        ),
    ]
}

/// "At 2.5 m | 22.75 °C | warmer than 22.4", "At 3.0 m | 21.8 °C | 22.4 or colder"; the temperature looked for is named
/// where it may be.
pub(super) fn pair_lines(at: &Crossing, target: Option<f64>) -> Vec<SumLine> {
    let place = |z: f64| Message::new("ask-9-sum-at").m("depth", z);
    let (warmer, colder) = match target {
        Some(target) => (
            Message::new("ask-9-sum-warmer").c("target", target),
            Message::new("ask-9-sum-colder").c("target", target),
        ),
        None => (Message::new("ask-9-sum-still"), Message::new("ask-9-sum-enough")),
    };
    vec![
        line(place(at.marks_m.0), in_c(at.temps_c.0), warmer),
        line(place(at.marks_m.1), in_c(at.temps_c.1), colder),
    ]
}
