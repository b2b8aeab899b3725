//! Which questions are asked of which water: the lesson's kinds where there are layers, the water's own where not.

use super::kind::Dropped;
use super::say::decimals;
use super::water::Water;
use super::{Asked, Paper, kinds};
use crate::document::FIRST_OF_A_WATER;
use layercast_core::{Message, State};

/// Questions of a state's own, asked whatever the lesson lists; of those with a number below [`FIRST_OF_A_WATER`] only what it lists.
fn of_state(state: State) -> &'static [u8] {
    match state {
        State::Mixed => &[101, 13, 102, 103, 104, 106],
        State::Unstable => &[13, 105, 107],
        _ => &[],
    }
}

/// Questions that come before all others, whatever the lesson lists: where heavier water lies on top, which reading would
/// be taken again.
fn first(state: State) -> &'static [u8] {
    if state == State::Unstable { &[15] } else { &[] }
}

/// "Will it be here tomorrow morning?"
const TOMORROW: u8 = 108;
/// Kinds that read the picture: a state's own questions come after them.
const READING: [u8; 2] = [1, 4];

/// The questions of this cast.
pub(crate) fn paper(water: &Water) -> Paper {
    let mut paper = Paper::default();
    if water.levels().is_empty() {
        return paper;
    }
    let note = water.context.lesson.note.trim();
    if !note.is_empty() {
        paper.about.push(Message::new("ask-lesson-note").text("note", note));
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

/// Kinds of this water's route, in order: the lesson's that make sense on it; the state's own after those that read the
/// picture.
fn kinds_of(water: &Water) -> Vec<u8> {
    let lesson = &water.context.lesson.kinds;
    let (first, own) = (first(water.state()), of_state(water.state()));
    let on_route = |k: u8| kinds::kind(k).is_some_and(|kind| kind.routes().contains(&water.state()));
    let kept: Vec<u8> =
        lesson.iter().copied().filter(|k| on_route(*k) && !own.contains(k) && !first.contains(k)).collect();
    let own = own.iter().copied().filter(|k| *k >= FIRST_OF_A_WATER || lesson.contains(k));
    let after = kept.iter().rposition(|k| READING.contains(k)).map_or(0, |at| at + 1);
    let (reading, rest) = kept.split_at_checked(after).unwrap_or((&kept, &[]));
    // A layer of today alone: what becomes of it is asked last.
    let tomorrow = water.steep().is_some_and(|s| s.today).then_some(TOMORROW);
    first.iter().chain(reading).copied().chain(own).chain(rest.iter().copied()).chain(tomorrow).collect()
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
