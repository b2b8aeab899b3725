//! Three readings to place on the picture by hand.

use super::Sight;
use crate::by_hand::{Placed, placed, targets, waits};
use crate::document::HAND_POINTS;
use crate::numbers::{WithNum, mark, reading_decimals, rounded};
use crate::view::{ByHandView, HandRow};
use layercast_core::Message;

/// The readings, where each was placed, and what was found at the last check; `None` where there are not three to place.
pub fn view(sight: &Sight) -> Option<ByHandView> {
    let targets = targets(sight.context.analysis)?;
    let by_hand = &sight.context.sheet.by_hand;
    let checked = by_hand.checked.unwrap_or_default();
    let rows = targets.iter().zip(by_hand.points).zip(checked);
    let rows = rows.map(|((target, at), checked)| row(sight, *target, at, checked)).collect();
    let is_right = |(target, at): (&(f64, f64), Option<(f64, f64)>)| {
        at.is_some_and(|at| placed(sight.context.analysis, *target, at) == Placed::Right)
    };
    Some(ByHandView {
        rows,
        can_check: by_hand.points.iter().flatten().count() == HAND_POINTS,
        checked: by_hand.checked.is_some(),
        all_right: by_hand.checked.is_some() && targets.iter().zip(checked).all(is_right),
        drawn: by_hand.drawn,
        waits: waits(sight.notebook, sight.context.analysis),
    })
}

fn row(sight: &Sight, target: (f64, f64), at: Option<(f64, f64)>, checked: Option<(f64, f64)>) -> HandRow {
    let decimals = reading_decimals(sight.notebook.cast.digit_c);
    let with = |id: &'static str, (depth_m, temp_c): (f64, f64)| {
        Message::new(id).num("depth", mark(depth_m)).number("temp", rounded(temp_c, decimals), decimals)
    };
    // What was said of a point goes once it is moved.
    let found = checked.filter(|_| checked == at).map(|at| placed(sight.context.analysis, target, at));
    let said = found.map(|found| match found {
        Placed::Right => "log-by-hand-right",
        Placed::DepthFromBelow => "log-by-hand-depth-from-below",
        Placed::WarmLeft => "log-by-hand-warm-left",
        Placed::OtherDepth => "log-by-hand-other-depth",
        Placed::OtherTemp => "log-by-hand-other-temp",
        Placed::Elsewhere => "log-by-hand-elsewhere",
    });
    HandRow {
        name: with("log-by-hand-reading", target).into(),
        spoken: at
            .map_or_else(|| Message::new("log-by-hand-unplaced"), |at| with("log-by-hand-placed", at))
            .into(),
        is_placed: at.is_some(),
        said: said.map(|id| with(id, target).into()),
        right: found == Some(Placed::Right),
    }
}
