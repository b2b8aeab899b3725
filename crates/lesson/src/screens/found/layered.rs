//! Layered water: thermocline, mixed layer, deep layer; also weak, two layers, cut off, and what cannot be told.

use super::mixed_layer::mixed_layer;
use super::{Sight, found, item, thickness, worded};
use crate::document::MarkName;
use crate::numbers::{Range, WithNum, mark, middle, rounded, temp_decimals};
use crate::screens::verdict::{beside_none, beside_range, doc, placed_m, refused_though_found, verdict};
use crate::view::{FoundItem, FoundView, Sign};
use layercast_core::certainty::{Depth, Refused};
use layercast_core::{Message, Metalimnion, RangesFrom, State, Thermocline, WarmLayerToday};

/// Stratified or weakly stratified water.
pub fn layered(sight: &Sight) -> FoundView {
    let analysis = sight.context.analysis;
    let weak = analysis.state == State::Weak;
    let told = analysis.thermocline.as_ref();
    let cannot_tell = told.is_some_and(|told| !told.tellable);
    let metalimnion = analysis.metalimnion.as_ref();
    let warm = analysis.warm_layer_today.as_ref();
    let cut_off = metalimnion.filter(|found| found.cut_off);

    let title = match (cannot_tell, weak, warm.is_some() && metalimnion.is_some(), cut_off.is_some()) {
        (true, ..) => Message::new("profile-cannot-tell-title"),
        (_, true, ..) => Message::new("profile-weak-title"),
        (_, _, true, _) => Message::new("profile-two-title"),
        (_, _, _, true) => Message::new("profile-cut-off-title"),
        _ => Message::new("profile-found-title"),
    };
    let mut lead = Vec::new();
    if let Some(told) = told.filter(|_| cannot_tell) {
        lead.push(
            Message::new("profile-cannot-tell-lead")
                .message("range", Range::of_marks(told.span_top_m, told.span_bottom_m).said()),
        );
        lead.push(Message::new("profile-an-answer"));
    }
    match metalimnion {
        None => lead.push(no_steep_layer(sight)),
        Some(found) => {
            if warm.is_some() {
                lead.push(
                    Message::new("profile-two-lead")
                        .message("range", Range::of_marks(found.top_m, found.bottom_m).said()),
                );
            }
            if found.layers > 1 {
                lead.push(Message::new("profile-more-layers").count("count", found.layers));
            }
        }
    }
    if let (Some(found), Some(last)) = (cut_off, analysis.steps.last()) {
        lead.push(Message::new("profile-cut-off-lead").depth("last", found.bottom_m).number(
            "gradient",
            rounded(last.cooling_c_per_m, 1),
            1,
        ));
    }

    let mut items = Vec::new();
    if let Some(told) = told {
        items.push(if cannot_tell {
            untellable(sight, told)
        } else {
            thermocline(sight, told, warm.is_some())
        });
    }
    items.extend(warm.map(warm_today));
    items.extend(mixed_layer(sight));
    items.push(match metalimnion {
        Some(found) => deep_layer(sight, found),
        None => no_deep_layer(sight),
    });
    found(title, lead, items)
}

/// "… no step reaches 1 °C per metre: no metalimnion by that rule."
fn no_steep_layer(sight: &Sight) -> Message {
    let analysis = sight.context.analysis;
    let steep = analysis.method.steep_c_per_m;
    let by_chance = analysis.steps.iter().any(|step| step.cooling_c_per_m >= steep - 1e-9);
    match by_chance {
        true => Message::new("profile-no-steep-layer-chance").steep("steep", steep),
        false => Message::new("profile-no-steep-layer").steep("steep", steep),
    }
}

/// Thermocline with its range, rule and the step behind it.
fn thermocline(sight: &Sight, told: &Thermocline, is_main: bool) -> FoundItem {
    let weak = sight.context.analysis.state == State::Weak;
    let is_gentle = sight.context.analysis.metalimnion.is_none();
    let range = Range::of_marks(told.span_top_m, told.span_bottom_m);
    let look = Message::new("profile-look-flattest");
    let refused = match weak {
        true => (Sign::Close, Message::new("profile-refused-weak").message("range", range.said())),
        false => refused_though_found(&range, look.clone()),
    };
    let mut notes = vec![step_rule(sight, told, is_gentle, is_main)];
    if told.ambiguous {
        notes.push(Message::new("profile-note-ambiguous"));
    }
    if !told.in_one_piece {
        notes.push(Message::new("profile-note-two-places"));
    }
    if scatters(sight) {
        notes.push(Message::new("profile-note-tries-scatter"));
    }
    let last_m = sight.context.analysis.profile.last().map_or(f64::MAX, |level| level.depth_m);
    let cut_off = sight.context.analysis.metalimnion.as_ref().is_some_and(|found| found.cut_off);
    if cut_off && told.span_bottom_m >= last_m - 1e-9 {
        notes.push(Message::new("profile-note-cut-off").depth("last", last_m));
    }
    let name = if weak { "profile-weak-thermocline" } else { "profile-thermocline" };
    item(name, middle(told.value_m), beside_range(sight, MarkName::Thermocline, &range, look, refused), notes)
}

/// Whether the trials put the thermocline all over the cast though its span is narrow.
fn scatters(sight: &Sight) -> bool {
    let ranged = sight.prepared.certainty.as_ref().and_then(|c| c.of(Depth::Thermocline));
    ranged.is_some_and(|ranged| ranged.refused == Some(Refused::TooWide))
}

/// "Rule: the middle of the steepest step. From 3.5 to 4.0 m the water lost 2.5 °C in half a metre: 5.0 °C per metre."
pub fn step_rule(sight: &Sight, told: &Thermocline, is_gentle: bool, is_main: bool) -> Message {
    let equal = steps_of(sight, told);
    let thick_m = told.step_bottom_m - told.step_top_m;
    let gradient = rounded(told.gradient_c_per_m, 1);
    let message = if equal > 1 {
        return Message::new("profile-rule-equal-steps")
            .count("count", equal)
            .number("gradient", gradient, 1);
    } else if is_main {
        Message::new("profile-rule-main-step")
    } else if is_gentle && told.span_bottom_m - told.span_top_m > 2.0 * thick_m + 1e-9 {
        Message::new("profile-rule-gentle-step")
    } else {
        let drop_c = told.gradient_c_per_m * thick_m;
        let decimals = temp_decimals(drop_c);
        Message::new("profile-rule-step")
            .message("range", Range::of_marks(told.step_top_m, told.step_bottom_m).said())
            .number("drop", rounded(drop_c, decimals), decimals)
            .message("thickness", thickness(thick_m))
    };
    message.number("gradient", gradient, 1)
}

/// How many steps, equally steep, are the steepest.
pub fn steps_of(sight: &Sight, told: &Thermocline) -> usize {
    let within =
        |top_m: f64, bottom_m: f64| top_m >= told.step_top_m - 1e-9 && bottom_m <= told.step_bottom_m + 1e-9;
    sight.context.analysis.steps.iter().filter(|step| within(step.top_m, step.bottom_m)).count()
}

/// "These readings can't tell" is the answer.
fn untellable(sight: &Sight, told: &Thermocline) -> FoundItem {
    let range = Range::of_marks(told.span_top_m, told.span_bottom_m);
    let refused = (Sign::Inside, Message::new("profile-cannot-tell-refused"));
    let beside = match placed_m(sight, MarkName::Thermocline) {
        Some(depth_m) if range.outside_m(depth_m) == 0.0 => {
            let message = Message::new("profile-cannot-tell-inside").depth("mine", depth_m);
            Some(verdict(Sign::Inside, message.message("range", range.said())))
        }
        _ => {
            beside_range(sight, MarkName::Thermocline, &range, Message::new("profile-look-flattest"), refused)
        }
    };
    let value = middle(told.value_m);
    let would_be = match told.in_one_piece {
        true => Message::new("profile-would-be"),
        false => Message::new("profile-would-be-two-places"),
    };
    let would_be = would_be
        .num("value", value)
        .number("gradient", rounded(told.gradient_c_per_m, 1), 1)
        .message("range", range.said());
    let notes = vec![would_be, Message::new("profile-would-settle")];
    worded("profile-thermocline", Message::new("profile-cannot-tell"), beside, notes)
}

/// Today's warm layer as a second result.
fn warm_today(warm: &WarmLayerToday) -> FoundItem {
    let range = Range::of_marks(warm.span_top_m, warm.span_bottom_m);
    let note = Message::new("profile-warm-today-note").message("range", range.said());
    item("profile-warm-today", middle(warm.value_m), None, vec![note])
}

/// Top of the deep layer; "deeper than" where the cast ends in the steep part.
fn deep_layer(sight: &Sight, found: &Metalimnion) -> FoundItem {
    let steep = sight.context.analysis.method.steep_c_per_m;
    if let (false, Some(high_m)) = (found.cut_off, found.bottom_high_m) {
        let range = match sight.context.analysis.ranges_from {
            RangesFrom::Propagated => Range::of_marks(found.bottom_low_m, high_m),
            RangesFrom::Trials { .. } => Range::of_computed(found.bottom_low_m, high_m),
        };
        let look = Message::new("profile-look-steep-ends");
        let refused = refused_though_found(&range, look.clone());
        return item(
            "profile-deep-layer-from",
            mark(found.bottom_m),
            beside_range(sight, MarkName::Deep, &range, look, refused),
            vec![match found.layers > 1 {
                true => Message::new("profile-rule-deep-main"),
                false if is_joined(sight, steep) => {
                    Message::new("profile-rule-deep-joined").steep("steep", steep)
                }
                false => Message::new("profile-rule-deep").steep("steep", steep),
            }],
        );
    }
    let beside = match (doc(sight, MarkName::Deep).refused, placed_m(sight, MarkName::Deep)) {
        (true, _) => Some(verdict(Sign::Inside, Message::new("profile-cut-off-refused"))),
        (_, Some(depth_m)) => {
            let step_m = crate::screens::verdict::local_step_m(sight, depth_m);
            let sign = if found.bottom_m - depth_m <= step_m + 1e-9 { Sign::Close } else { Sign::Outside };
            let message = Message::new("profile-cut-off-placed").depth("mine", depth_m);
            Some(verdict(sign, message.depth("last", found.bottom_m)))
        }
        _ => None,
    };
    item(
        "profile-deep-layer-deeper",
        mark(found.bottom_m),
        beside,
        vec![Message::new("profile-cut-off-note").depth("last", found.bottom_m)],
    )
}

/// A step of the main layer stays under the threshold, by no more than the readings can tell.
fn is_joined(sight: &Sight, steep_c_per_m: f64) -> bool {
    let steps = &sight.context.analysis.steps;
    steps.iter().any(|step| step.in_main_layer && step.cooling_c_per_m < steep_c_per_m - 1e-9)
}

/// No deep layer where there is no steep one above it.
fn no_deep_layer(sight: &Sight) -> FoundItem {
    let (sign, reason) = match placed_m(sight, MarkName::Deep) {
        Some(depth_m) if hardly_changes_below(sight, depth_m) => {
            (Sign::Close, Message::new("profile-no-deep-even-below"))
        }
        _ => (Sign::Outside, Message::new("profile-no-deep")),
    };
    let beside = beside_none(sight, MarkName::Deep, sign, reason);
    worded("profile-deep-layer", Message::new("profile-none"), beside, Vec::new())
}

/// From a depth downward, over three depths or more, the water differs by no more than half a degree.
fn hardly_changes_below(sight: &Sight, depth_m: f64) -> bool {
    let below = sight.context.analysis.profile.iter().filter(|level| level.depth_m >= depth_m - 1e-9);
    let (low, high) = below
        .fold((f64::MAX, f64::MIN), |(low, high), level| (low.min(level.temp_c), high.max(level.temp_c)));
    high - low <= 0.5 + 1e-9
}
