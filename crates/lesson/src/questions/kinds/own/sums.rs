//! How a number of the teacher's own is worked: here on the group's water, or on another place.

use super::number::two;
use crate::document::{OwnBy, Quantity};
use crate::questions::kinds::{colder_by, per_metre};
use crate::questions::say::{Numbers, from_to, in_c, line, minus, result, rounded};
use crate::questions::water::{Source, Water};
use crate::view::SumLine;
use layercast_core::{Level, Message};

/// What to do, in words.
pub(crate) fn what_to_do(quantity: Quantity) -> &'static str {
    match quantity {
        Quantity::TempAt => "ask-own-do-temp-at",
        Quantity::Apart => "ask-own-do-apart",
        Quantity::PerMetre => "ask-own-do-per-metre",
        Quantity::DepthOf => "ask-own-do-depth-of",
        Quantity::Warmest => "ask-own-do-warmest",
        Quantity::Coldest => "ask-own-do-coldest",
        Quantity::WarmestColdest => "ask-own-do-warmest-coldest",
    }
}

/// The sum on one's own water; empty where there is nothing to work out.
pub(crate) fn sum(water: &Water, by: &OwnBy, source: Source) -> Vec<SumLine> {
    let ends = two(&[by.at_m, by.to_m].into_iter().flatten().collect::<Vec<_>>());
    match by.quantity {
        Some(Quantity::Apart) => {
            colder_by::difference(water, ends, source, from_to(ends), true).into_iter().collect()
        }
        Some(Quantity::PerMetre) => per_metre::sum(water, ends, source, false),
        Some(Quantity::WarmestColdest) => {
            let (low, high) = ends_c(water, source);
            vec![result(minus(high, low, 1), in_c(high - low), Message::new("ask-own-whole"))]
        }
        _ => Vec::new(),
    }
}

/// The same worked on another place, or on another water.
pub(crate) fn worked(water: &Water, by: &OwnBy) -> Vec<SumLine> {
    let ends = two(&[by.at_m, by.to_m].into_iter().flatten().collect::<Vec<_>>());
    match by.quantity {
        Some(Quantity::PerMetre) => per_metre::worked_rate(water, ends),
        Some(Quantity::TempAt) => {
            let far = |l: &&Level| (l.depth_m - by.at_m.unwrap_or_default()).abs();
            let other = water.levels().iter().max_by(|a, b| far(a).total_cmp(&far(b)));
            let at = |l: &Level| Message::new("ask-1-worked").m("depth", l.depth_m);
            (other.iter())
                .map(|l| line(at(l), in_c(rounded(l.temp_c, 1)), Message::new("ask-1-worked-gloss")))
                .collect()
        }
        Some(Quantity::Apart | Quantity::WarmestColdest) => {
            let right = colder_by::ranges(water, ends);
            let (a, b) = colder_by::made_up(|x| right.iter().any(|r| r.holds(x)));
            vec![result(minus(a, b, 1), in_c(a - b), Message::new("ask-made-up"))]
        }
        _ => Vec::new(),
    }
}

fn ends_c(water: &Water, source: Source) -> (f64, f64) {
    let temps = || water.levels().iter().filter_map(|l| Water::of(l, source));
    (temps().fold(f64::INFINITY, f64::min), temps().fold(f64::NEG_INFINITY, f64::max))
}
