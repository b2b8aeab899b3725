//! Ranges of trials in the place of propagated ones.

use super::plan::Depth;
use super::summary::{Certainty, Ranged};
use crate::analysis::{Analysis, Level, MixedLayer, RangesFrom};

/// Puts the ranges of trials into the analysis they were made for: of the mixed layer, the season's mixed layer and the
/// edges of the steep layer (methods 5.10). The thermocline keeps its span.
///
/// A range always holds its own value and ends at the surface and the last reading at the latest. An edge cut off by the
/// last reading keeps its open end, "at least" stays "at least". A depth no trial found keeps its propagated range, and
/// without any trial nothing changes.
pub fn apply(analysis: &mut Analysis, certainty: &Certainty) {
    if certainty.count == 0 {
        return;
    }
    let Some((first_m, last_m)) = ends(&analysis.profile) else { return };
    let within = |value_m: f64, ranged: &Ranged| {
        let low_m = ranged.low_m.unwrap_or(last_m).max(first_m.min(0.0));
        let high_m = ranged.high_m.unwrap_or(last_m).min(last_m);
        (low_m.min(value_m), high_m.max(value_m))
    };
    let found = |depth| certainty.of(depth).filter(|r| r.none_share + r.beyond_share < 1.0);
    for (mixed, depth) in [
        (&mut analysis.mixed_layer, Depth::MixedLayer),
        (&mut analysis.mixed_layer_season, Depth::MixedLayerSeason),
    ] {
        if let (Some(MixedLayer::At { value_m, low_m, high_m, .. }), Some(ranged)) = (mixed, found(depth)) {
            (*low_m, *high_m) = within(*value_m, ranged);
        }
    }
    if let Some(m) = &mut analysis.metalimnion {
        if let Some(ranged) = found(Depth::MetalimnionTop) {
            (m.top_low_m, m.top_high_m) = within(m.top_m, ranged);
        }
        if let Some(ranged) = found(Depth::MetalimnionBottom) {
            let (low_m, high_m) = within(m.bottom_m, ranged);
            m.bottom_low_m = low_m;
            m.bottom_high_m = (!m.cut_off).then_some(high_m);
        }
    }
    analysis.ranges_from = RangesFrom::Trials { count: certainty.count };
}

fn ends(levels: &[Level]) -> Option<(f64, f64)> {
    Some((levels.first()?.depth_m, levels.last()?.depth_m))
}
