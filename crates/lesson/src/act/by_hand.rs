//! Three readings placed on the picture by hand: by touch, by arrow key; checked; then the rest draws.

use super::Ready;
use crate::action::{HandKey, Spot};
use crate::by_hand::targets;
use crate::document::{ByHand, HAND_POINTS, Notebook};
use crate::numbers::rounded;

/// A key moves a point so far.
const KEY_M: f64 = 0.5;
/// See [`KEY_M`].
const KEY_C: f64 = 0.5;
/// What may be placed, °C.
const TEMPS_C: std::ops::RangeInclusive<f64> = -5.0..=60.0;

fn by_hand(notebook: &mut Notebook) -> Option<&mut ByHand> {
    notebook.sheets.first_mut().map(|sheet| &mut sheet.by_hand)
}

fn put(notebook: &mut Notebook, point: usize, (depth_m, temp_c): (f64, f64), ready: &mut Ready) {
    let prepared = ready.of(notebook);
    let Some(last) = prepared.analysis.profile.last() else { return };
    if targets(&prepared.analysis).is_none() || !depth_m.is_finite() || !temp_c.is_finite() {
        return;
    }
    let depth_m = rounded(depth_m.clamp(0.0, 1.5 * last.depth_m), 2);
    let temp_c = rounded(temp_c.clamp(*TEMPS_C.start(), *TEMPS_C.end()), 1);
    if let Some(at) = by_hand(notebook).and_then(|by_hand| by_hand.points.get_mut(point)) {
        *at = Some((depth_m, temp_c));
    }
}

/// Places a point where the picture was touched.
pub fn place(notebook: &mut Notebook, point: usize, spot: &Spot, ready: &mut Ready) {
    put(notebook, point, spot.at(), ready);
}

/// Moves a point by an arrow key; one that is not there yet begins in the middle of the water.
pub fn key(notebook: &mut Notebook, point: usize, key: HandKey, ready: &mut Ready) {
    let profile = &ready.of(notebook).analysis.profile;
    let (Some(first), Some(last)) = (profile.first(), profile.last()) else { return };
    let half = |value: f64| (value * 2.0).round() / 2.0;
    let middle = (half(last.depth_m / 2.0), half(f64::midpoint(first.temp_c, last.temp_c)));
    let now = by_hand(notebook).and_then(|by_hand| by_hand.points.get(point).copied()).flatten();
    let (depth_m, temp_c) = now.unwrap_or(middle);
    let to = match key {
        HandKey::Up => (depth_m - KEY_M, temp_c),
        HandKey::Down => (depth_m + KEY_M, temp_c),
        HandKey::Colder => (depth_m, temp_c - KEY_C),
        HandKey::Warmer => (depth_m, temp_c + KEY_C),
    };
    put(notebook, point, to, ready);
}

/// Checks the points, once all are placed.
pub fn check(notebook: &mut Notebook) {
    if let Some(by_hand) =
        by_hand(notebook).filter(|by_hand| by_hand.points.iter().flatten().count() == HAND_POINTS)
    {
        by_hand.checked = Some(by_hand.points);
    }
}

/// Draws the rest, once the points were checked.
pub fn draw(notebook: &mut Notebook) {
    if let Some(by_hand) = by_hand(notebook) {
        by_hand.drawn |= by_hand.checked.is_some();
    }
}
