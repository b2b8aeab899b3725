//! The guess before the first reading: five points, typed or placed on the picture; the first reading seals it.

use super::kept;
use crate::action::{GuessField, Spot};
use crate::document::{GUESS_POINTS, GuessPoint, MOST_CELL_CHARS, Notebook};
use crate::marks::{depth_text, typed_depth_m};
use crate::numbers::rounded;
use layercast_exchange::number::quantity;

/// Warmest and coldest that is taken for a guess, °C.
const TEMPS_C: std::ops::RangeInclusive<f64> = -5.0..=60.0;
/// A placed temperature goes to the nearest of these, °C.
const PLACED_C: f64 = 0.5;

/// The point of that number, made if it is not there; `None` once the guess is sealed.
fn point(notebook: &mut Notebook, at: usize) -> Option<&mut GuessPoint> {
    if at >= GUESS_POINTS || !notebook.may_guess() {
        return None;
    }
    let points = &mut notebook.sheets.first_mut()?.guess;
    while points.len() <= at {
        points.push(GuessPoint::default());
    }
    points.get_mut(at)
}

/// Types into a field of a point.
pub fn set(notebook: &mut Notebook, at: usize, field: GuessField, text: &str) {
    let text = kept(text, MOST_CELL_CHARS);
    let Some(point) = point(notebook, at) else { return };
    match field {
        GuessField::Depth => {
            point.depth_m = typed_depth_m(&text).filter(|depth_m| *depth_m >= 0.0);
            point.depth_text = text;
        }
        GuessField::Temp => {
            let typed = quantity(&text).filter(|q| q.to.is_none() && q.per.is_none());
            point.temp_c = typed.and_then(|q| q.in_c()).filter(|temp_c| TEMPS_C.contains(temp_c));
            point.temp_text = text;
        }
    }
}

/// Places a point where the picture was touched: the first that is not whole, else the nearest in depth.
pub fn place(notebook: &mut Notebook, spot: &Spot) {
    let (depth_m, temp_c) = spot.at();
    let deepest_m = f64::from(notebook.mark_count.max(1)) * notebook.mark_step_m;
    if !depth_m.is_finite() || !TEMPS_C.contains(&temp_c) {
        return;
    }
    let depth_m = rounded(depth_m.clamp(0.0, deepest_m), 1);
    let temp_c = (temp_c / PLACED_C).round() * PLACED_C;
    let at = {
        let points = notebook.sheets.first().map(|sheet| sheet.guess.as_slice()).unwrap_or_default();
        let far = |at: &usize| {
            let other = points.get(*at).and_then(GuessPoint::at);
            other.map_or(f64::NEG_INFINITY, |(other_m, _)| (other_m - depth_m).abs())
        };
        (0..GUESS_POINTS).min_by(|a, b| far(a).total_cmp(&far(b))).unwrap_or_default()
    };
    if let Some(point) = point(notebook, at) {
        *point = GuessPoint {
            depth_text: depth_text(depth_m),
            depth_m: Some(depth_m),
            temp_text: format!("{temp_c:.1}"),
            temp_c: Some(temp_c),
        };
    }
}

/// Seals the guess for good once a reading is there.
pub fn seal(notebook: &mut Notebook) {
    notebook.had_readings |= notebook.has_readings();
}
