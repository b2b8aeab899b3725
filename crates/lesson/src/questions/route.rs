//! Which questions are asked of which water: the lesson's kinds where there are layers, the water's own where not.

use super::kind::Dropped;
use super::say::decimals;
use super::water::Water;
use super::{Asked, Paper, kinds};
use layercast_core::{Message, State};

/// Warmest minus coldest.
const WARMEST_COLDEST: u8 = 101;
/// How big a difference must be.
const BELIEVABLE: u8 = 102;
/// Is any step bigger?
const ANY_STEP: u8 = 103;
/// Three facts.
const THREE_FACTS: u8 = 104;
/// Heavier water on top.
const HEAVIER_ON_TOP: u8 = 105;

/// The questions of this cast.
pub(crate) fn paper(water: &Water) -> Paper {
    let mut paper = Paper::default();
    if water.levels().is_empty() {
        return paper;
    }
    let marks_in = water.marks_are_in();
    if let Some((why, tells)) = why(water)
        && (!tells || marks_in)
    {
        paper.about.push(Message::new(why));
    }
    for number in kinds_of(water) {
        let Some(kind) = kinds::kind(number) else { continue };
        match kind.choose(water) {
            Ok(depths_m) => paper.asked.push(Asked { id: id(number, &depths_m), kind: number, depths_m }),
            Err(Dropped { why, tells }) => {
                if !tells || marks_in {
                    paper.about.push(why);
                }
            }
        }
    }
    paper
}

/// "4-4.0-5.0"
fn id(kind: u8, depths_m: &[f64]) -> String {
    let part = |z: &f64| format!("-{z:.*}", usize::from(decimals(*z, 1, 3)));
    std::iter::once(kind.to_string()).chain(depths_m.iter().map(part)).collect()
}

/// Kinds of this water's route, in order.
fn kinds_of(water: &Water) -> Vec<u8> {
    let lesson = &water.context.lesson.kinds;
    let keep = |kept: &[u8]| lesson.iter().copied().filter(|k| kept.contains(k)).collect::<Vec<u8>>();
    match water.state() {
        State::Stratified | State::Weak => keep(&[1, 4, 5, 6, 7, 8, 9, 13]),
        State::TooFew => keep(&[1, 4, 5, 13]),
        State::Inverse => keep(&[1, 4, 5, 6, 7, 13]),
        State::Unstable => keep(&[1, 4, 13]).into_iter().chain([HEAVIER_ON_TOP]).collect(),
        State::Mixed => {
            let own = [WARMEST_COLDEST, 13, BELIEVABLE, ANY_STEP, THREE_FACTS];
            let own = own.into_iter().filter(|k| *k != 13 || lesson.contains(k));
            keep(&[1, 4]).into_iter().chain(own).collect()
        }
    }
}

/// Why these questions, and whether saying so tells what is covered.
fn why(water: &Water) -> Option<(&'static str, bool)> {
    let steep = water.steep();
    match water.state() {
        State::Stratified if steep.is_some_and(|s| s.today) => Some(("ask-about-today", true)),
        State::Stratified | State::Weak if steep.is_some_and(|s| !s.tellable) => {
            Some(("ask-about-cannot-tell", true))
        }
        State::Stratified => None,
        State::Weak => Some(("ask-about-weak", true)),
        State::Mixed => Some(("ask-about-mixed", true)),
        State::Inverse => Some(("ask-about-inverse", true)),
        State::Unstable => Some(("ask-about-unstable", true)),
        State::TooFew => Some(("ask-about-too-few", false)),
    }
}
