//! The mixed layer by the class rule: colder than near the surface, or warmer where the water warms downward.

use super::other::{cold_and_alike, is_of_both_ends, steepest};
use super::{Sight, item};
use crate::document::MarkName;
use crate::numbers::{Range, WithNum, mark, mark_decimals, reference_m, rounded};
use crate::screens::verdict::{
    beside_at_least, beside_range, local_step_m, placed_m, refused_though_found, verdict,
};
use crate::view::{FoundItem, Sign, VerdictView};
use layercast_core::layers::mixed_layer::mixed_layer as mixed_layer_by;
use layercast_core::{Analysis, Message, MixedLayer};

/// Mixed layer by the class rule, and the season's where today's warm layer lies above the main one.
pub fn mixed_layer(sight: &Sight) -> Option<FoundItem> {
    let analysis = sight.context.analysis;
    let (drop_c, reference_m) = (analysis.method.mixed_drop_c, reference_m(analysis));
    let warmer = is_warmer(analysis);
    let rule = |colder: &'static str, warm: &'static str| {
        Message::new(if warmer { warm } else { colder }).temp("drop", drop_c).depth("reference", reference_m)
    };
    match (analysis.mixed_layer.as_ref()?, analysis.mixed_layer_season.as_ref()) {
        (MixedLayer::AtLeast { at_least_m }, _) => Some(item(
            "profile-mixed-layer-at-least",
            mark(*at_least_m),
            beside_at_least(sight, *at_least_m),
            vec![match furthest_c(analysis).is_some_and(|far_c| far_c.abs() >= drop_c - 1e-9) {
                false if analysis.thermocline.is_some() => {
                    rule("profile-rule-mixed-at-least-small", "profile-rule-mixed-at-least-warmer")
                }
                false => rule("profile-rule-mixed-at-least", "profile-rule-mixed-at-least-warmer"),
                true if steepest(&analysis.steps).is_some_and(|step| cold_and_alike(sight, step)) => {
                    Message::new("profile-rule-mixed-density").temp("drop", drop_c).number("gain", 0.1, 1)
                }
                true if steepest(&analysis.steps).is_some_and(|step| is_of_both_ends(analysis, step)) => {
                    Message::new("profile-rule-mixed-little").temp("drop", drop_c).number("gain", 0.1, 1)
                }
                true => Message::new("profile-rule-mixed-outvoted").temp("drop", drop_c),
            }],
        )),
        (MixedLayer::At { value_m, low_m, high_m, .. }, None) => {
            let range = Range::of_computed(*low_m, *high_m);
            Some(item(
                "profile-mixed-layer-to",
                range.value(*value_m),
                beside_mixed(sight, &range),
                vec![rule("profile-rule-mixed", "profile-rule-mixed-warmer")],
            ))
        }
        (MixedLayer::At { value_m, low_m, high_m, .. }, Some(season)) => {
            let range = Range::of_computed(*low_m, *high_m);
            let (season_range, season_note) = match season {
                MixedLayer::At { value_m, low_m, high_m, .. } => {
                    let range = Range::of_computed(*low_m, *high_m);
                    let note = Message::new("profile-season-note").num("value", range.value(*value_m));
                    (Some(range), note.message("range", range.said()))
                }
                MixedLayer::AtLeast { at_least_m } => {
                    (None, Message::new("profile-season-at-least").depth("least", *at_least_m))
                }
            };
            let beside = season_range
                .and_then(|season| beside_season(sight, &range, &season))
                .or_else(|| beside_mixed(sight, &range));
            Some(item(
                "profile-mixed-layer-to",
                range.value(*value_m),
                beside,
                vec![rule("profile-rule-mixed-today", "profile-rule-mixed-today-warmer"), season_note],
            ))
        }
    }
}

/// What ends the mixed layer is warmer than the water at the reference depth; where nothing ends it, the water that
/// differs most from it is warmer, at least half way to the drop.
pub fn is_warmer(analysis: &Analysis) -> bool {
    let reference_c = reference_c(analysis);
    match &analysis.mixed_layer {
        Some(MixedLayer::At { target_c, .. }) => {
            reference_c.is_some_and(|reference_c| *target_c > reference_c + 1e-9)
        }
        _ => furthest_c(analysis).is_some_and(|far_c| far_c >= analysis.method.mixed_drop_c / 2.0 - 1e-9),
    }
}

/// What ends the mixed layer by another step \[°C\] is warmer; where nothing ends it, as for the class's own step.
pub fn is_warmer_by(analysis: &Analysis, step_c: f64) -> bool {
    let found = mixed_layer_by(&analysis.profile, analysis.method.reference_m, step_c);
    match (found, reference_c(analysis)) {
        (Some(MixedLayer::At { target_c, .. }), Some(reference_c)) => target_c > reference_c + 1e-9,
        _ => is_warmer(analysis),
    }
}

/// Temperature at the reference depth, °C: linear between readings, the first reading's above it.
fn reference_c(analysis: &Analysis) -> Option<f64> {
    let (levels, reference_m) = (&analysis.profile, analysis.method.reference_m);
    let below = levels.partition_point(|level| level.depth_m < reference_m - 1e-9);
    let next = levels.get(below)?;
    Some(match below.checked_sub(1).and_then(|above| levels.get(above)) {
        Some(above) if next.depth_m > above.depth_m => {
            let part = (reference_m - above.depth_m) / (next.depth_m - above.depth_m);
            above.temp_c + part * (next.temp_c - above.temp_c)
        }
        _ => next.temp_c,
    })
}

/// How far the water below the reference depth gets away from the temperature there, °C; above 0 where it is warmer.
fn furthest_c(analysis: &Analysis) -> Option<f64> {
    let (reference_c, reference_m) = (reference_c(analysis)?, analysis.method.reference_m);
    let below = analysis.profile.iter().filter(|level| level.depth_m >= reference_m - 1e-9);
    below.map(|level| level.temp_c - reference_c).max_by(|a, b| a.abs().total_cmp(&b.abs()))
}

fn beside_mixed(sight: &Sight, range: &Range) -> Option<VerdictView> {
    let analysis = sight.context.analysis;
    let look = match is_warmer(analysis) {
        true => Message::new("profile-look-mixed-warmer"),
        false => Message::new("profile-look-mixed"),
    };
    let look = look.temp("drop", analysis.method.mixed_drop_c);
    let refused = refused_though_found(range, look.clone());
    beside_range(sight, MarkName::Mixed, range, look, refused)
}

/// A mark nearer to the season's mixed layer than to today's is judged by that one, and the sentence says so.
fn beside_season(sight: &Sight, today: &Range, season: &Range) -> Option<VerdictView> {
    let depth_m = placed_m(sight, MarkName::Mixed)?;
    let (from_today_m, from_season_m) = (today.outside_m(depth_m), season.outside_m(depth_m));
    if from_season_m.abs() >= from_today_m.abs() {
        return None;
    }
    let step_m = local_step_m(sight, depth_m);
    let message = match from_season_m {
        0.0 => Message::new("profile-season-inside"),
        far_m if far_m < 0.0 => Message::new("profile-season-above"),
        _ => Message::new("profile-season-below"),
    };
    let decimals = mark_decimals(from_season_m);
    let message = message
        .depth("mine", depth_m)
        .number("far", rounded(from_season_m.abs(), decimals), decimals)
        .message("range", season.said());
    let sign = match from_season_m.abs() {
        0.0 => Sign::Inside,
        far_m if far_m <= step_m + 1e-9 => Sign::Close,
        _ => Sign::Outside,
    };
    Some(verdict(sign, message))
}
