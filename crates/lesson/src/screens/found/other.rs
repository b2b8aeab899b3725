//! Water without the three layers: mixed, under ice, unstable, warm at the surface only, too few depths.

use super::layered::{step_rule, steps_of};
use super::mixed_layer::mixed_layer;
use super::{Sight, doubts, found, item, thickness, worded};
use crate::action::Action;
use crate::document::{MarkName, Screen};
use crate::numbers::{Range, WithNum, middle, rounded, temp_decimals};
use crate::screens::verdict::{beside_none, beside_range, placed_m, verdict};
use crate::screens::way;
use crate::view::{FoundItem, FoundView, Num, Sign};
use layercast_core::{Analysis, Message, MixedLayer, Step, Thermocline, WarmLayerToday};

/// Fewer depths than the rules need.
pub fn too_few(sight: &Sight) -> FoundView {
    let levels = &sight.context.analysis.profile;
    let span_m = levels.first().zip(levels.last()).map_or(0.0, |(first, last)| last.depth_m - first.depth_m);
    let lead = Message::new("profile-few-lead").count("count", levels.len()).depth("span", span_m).number(
        "least",
        layercast_core::LEAST_SPAN_M,
        1,
    );
    found(Message::new("profile-few-title"), vec![lead, Message::new("profile-few-more")], Vec::new())
}

/// Heavier water on top: no layers until that is clear.
pub fn unstable(sight: &Sight) -> FoundView {
    let mut lead = Vec::new();
    if let Some(heavier) = doubts::heavier(sight) {
        let bottom_m = heavier.levels.last().map_or(0.0, |level| level.depth_m);
        let id = match heavier.temp_c < heavier.under_c {
            true => Message::new("profile-unstable-colder"),
            false => Message::new("profile-unstable-warmer"),
        };
        lead.push(id.depth("bottom", bottom_m).number("above", rounded(heavier.temp_c, 1), 1).number(
            "below",
            rounded(heavier.under_c, 1),
            1,
        ));
    }
    let is_warming = doubts::heavier(sight).is_some_and(|heavier| heavier.temp_c > heavier.under_c);
    let blocks: Vec<_> = doubts::doubts(sight).into_iter().filter(doubts::Block::is_of_water).collect();
    lead.push(match blocks.is_empty() {
        true => Message::new("profile-unstable-kept"),
        false if is_warming => Message::new("profile-unstable-either-warming"),
        false => Message::new("profile-unstable-either"),
    });
    let mut view = found(Message::new("profile-unstable-title"), lead, Vec::new());
    view.doubts = blocks.into_iter().map(|block| block.view).collect();
    for doubt in &mut view.doubts {
        doubt.ways.push(way("log-look-at-the-table", Action::Go { screen: Screen::Log, question: None }));
        doubt.type_entry = None;
    }
    view
}

/// Colder on top: fastest warming and fastest gain of density, no mixed layer.
pub fn inverse(sight: &Sight) -> FoundView {
    let analysis = sight.context.analysis;
    let mut lead = Vec::new();
    if let (Some(first), Some(last)) = (analysis.profile.first(), analysis.profile.last()) {
        // Beyond 4 °C warmer water is lighter again.
        let lead_id = match last.temp_c > 4.5 {
            true => Message::new("profile-ice-lead-warm"),
            false => Message::new("profile-ice-lead"),
        };
        lead.push(lead_id.number("top", rounded(first.temp_c, 1), 1).number(
            "bottom",
            rounded(last.temp_c, 1),
            1,
        ));
    }
    let mut items = Vec::new();
    if let Some(told) = &analysis.fastest_warming {
        items.push(fastest_warming(sight, told));
        items.extend(analysis.fastest_densing_m.map(|densing_m| fastest_densing(sight, densing_m, told)));
    }
    let others =
        [MarkName::Mixed, MarkName::Deep].iter().filter(|mark| placed_m(sight, **mark).is_some()).count();
    let beside = (others > 0)
        .then(|| verdict(Sign::Bare, Message::new("profile-ice-other-marks").count("count", others)));
    items.push(worded(
        "profile-ice-other-layers",
        Message::new("profile-not-under-ice"),
        beside,
        vec![Message::new("profile-ice-note")],
    ));
    found(Message::new("profile-ice-title"), lead, items)
}

fn fastest_warming(sight: &Sight, told: &Thermocline) -> FoundItem {
    let range = Range::of_marks(told.span_top_m, told.span_bottom_m);
    let refused = (Sign::Close, Message::new("profile-refused-warming").message("range", range.said()));
    let look = Message::new("profile-look-flattest");
    let beside = beside_range(sight, MarkName::Thermocline, &range, look, refused);
    let thick_m = told.step_bottom_m - told.step_top_m;
    let gain_c = told.gradient_c_per_m * thick_m;
    let decimals = temp_decimals(gain_c);
    let rule = match steps_of(sight, told) {
        equal if equal > 1 => Message::new("profile-rule-equal-warming-steps").count("count", equal),
        _ => Message::new("profile-rule-warming-step")
            .message("range", Range::of_marks(told.step_top_m, told.step_bottom_m).said())
            .number("gain", rounded(gain_c, decimals), decimals)
            .message("thickness", thickness(thick_m)),
    };
    let rule = rule.number("gradient", rounded(told.gradient_c_per_m, 1), 1);
    if told.tellable {
        return item("profile-warms-fastest", middle(told.value_m), beside, vec![rule]);
    }
    let anywhere = Message::new("profile-anywhere").message("range", range.said());
    worded("profile-warms-fastest", Message::new("profile-cannot-tell"), beside, vec![anywhere, rule])
}

fn fastest_densing(sight: &Sight, densing_m: f64, told: &Thermocline) -> FoundItem {
    let is_step = |step: &&Step| step.top_m < densing_m && densing_m < step.bottom_m;
    let step = sight.context.analysis.steps.iter().find(is_step);
    let range = step.map_or_else(
        || Range::of_marks(densing_m, densing_m),
        |step| Range::of_marks(step.top_m, step.bottom_m),
    );
    let note = if told.tellable && densing_m < told.value_m - 1e-9 {
        Message::new("profile-densing-higher")
    } else {
        Message::new("profile-densing-step")
    };
    item("profile-densing", middle(densing_m), None, vec![note.message("range", range.said())])
}

/// The same water from top to bottom.
pub fn mixed(sight: &Sight) -> FoundView {
    let analysis = sight.context.analysis;
    let levels = &analysis.profile;
    let (low, high) = levels
        .iter()
        .fold((f64::MAX, f64::MIN), |(low, high), level| (low.min(level.temp_c), high.max(level.temp_c)));
    let differs_c = rounded(high - low, 1);
    let first_m = levels.first().map_or(0.0, |level| level.depth_m);
    let last_m = levels.last().map_or(0.0, |level| level.depth_m);
    let steepest = steepest(&analysis.steps);
    // Two values that are written to a place differ by as much through rounding alone.
    let believable_c = analysis.facts.as_ref().map_or(0.3, |facts| facts.believable_c);
    let believable_c = believable_c.max(sight.notebook.cast.digit_c);
    let ends_differ_c = match (levels.first(), levels.last()) {
        (Some(first), Some(last)) => (first.temp_c - last.temp_c).abs(),
        _ => 0.0,
    };
    let method_steep = analysis.method.steep_c_per_m;
    let gradient = steepest.map_or(0.0, |step| step.cooling_c_per_m.abs());
    let cold = steepest.is_some_and(|step| cold_and_alike(sight, step));
    let alike =
        ends_differ_c <= believable_c && steepest.is_some_and(|step| is_by_chance(step, believable_c));
    let is_odd = gradient >= method_steep - 1e-9 && !cold && !alike;
    // A steep step that the medians outvote: then the density of the water beside the mark is not known to be even.
    let is_outvoted = is_odd && steepest.is_some_and(|step| !is_of_both_ends(analysis, step));
    let why = if gradient >= method_steep - 1e-9 && cold && !alike {
        Message::new("profile-mixed-by-density").number("gradient", rounded(gradient, 1), 1)
    } else if gradient >= method_steep - 1e-9 && alike {
        Message::new("profile-mixed-chance").number("gradient", rounded(gradient, 1), 1)
    } else if is_odd && !is_outvoted {
        Message::new("profile-mixed-by-little")
            .number("gradient", rounded(gradient, 1), 1)
            .number("gain", 0.1, 1)
    } else if is_outvoted {
        let is_last = steepest.is_some_and(|step| step.bottom_m >= last_m - 1e-9);
        let message = match is_last {
            true => Message::new("profile-mixed-last-reading"),
            false => Message::new("profile-mixed-few-readings"),
        };
        message.number("gradient", rounded(gradient, 1), 1)
    } else if gradient >= 0.7 * method_steep {
        Message::new("profile-mixed-below").steep("steep", method_steep)
    } else {
        Message::new("profile-mixed-no-step").steep("steep", method_steep)
    };
    let top = match first_m.abs() < 1e-9 {
        true => Message::new("profile-from-surface"),
        false => Message::new("profile-from-depth").depth("depth", first_m),
    };
    let lead = Message::new("profile-mixed-lead")
        .message("top", top)
        .depth("last", last_m)
        .number("differs", differs_c, 1)
        .message("why", why);
    let mut items: Vec<FoundItem> = Vec::new();
    if !sight.context.sheet.marks.all_refused() {
        let reason = match is_outvoted {
            true => Message::new("profile-mixed-thermocline-few"),
            false => Message::new("profile-mixed-thermocline"),
        };
        let reason = reason.number("gradient", rounded(gradient, 1), 1);
        let beside = beside_none(sight, MarkName::Thermocline, Sign::Outside, reason);
        items.push(worded("profile-thermocline", Message::new("profile-none"), beside, Vec::new()));
    }
    items.extend(mixed_layer(sight));
    items.extend(steepest.map(|step| steepest_step(step, believable_c)));
    if placed_m(sight, MarkName::Deep).is_some() {
        let reason = match is_outvoted {
            true => Message::new("profile-mixed-deep-few"),
            false => Message::new("profile-mixed-deep"),
        };
        let beside = beside_none(sight, MarkName::Deep, Sign::Outside, reason);
        items.push(worded("profile-deep-layer", Message::new("profile-none"), beside, Vec::new()));
    }
    let title = match is_outvoted {
        true => Message::new("profile-mixed-title-few"),
        false => Message::new("profile-mixed-title"),
    };
    found(title, vec![lead, Message::new("profile-an-answer")], items)
}

/// The step that cools fastest; where none cools, the one that changes fastest.
pub fn steepest(steps: &[Step]) -> Option<&Step> {
    let fastest = |of: fn(&Step) -> f64| steps.iter().max_by(|a, b| of(a).total_cmp(&of(b)));
    let cooling = fastest(|step| step.cooling_c_per_m);
    cooling.filter(|step| step.cooling_c_per_m > 0.0).or_else(|| fastest(|step| step.cooling_c_per_m.abs()))
}

/// Near 4 °C, where a step hardly changes the density: under 0.1 kg/m³ between 0 and 8 °C.
pub fn cold_and_alike(sight: &Sight, step: &Step) -> bool {
    let levels = &sight.context.analysis.profile;
    let within = levels
        .iter()
        .filter(|level| level.depth_m >= step.top_m - 1e-9 && level.depth_m <= step.bottom_m + 1e-9);
    let gain_kg_m3 = (step.densing_kg_m3_per_m * (step.bottom_m - step.top_m)).abs();
    gain_kg_m3 < 0.1 && within.map(|level| level.temp_c).fold(f64::MIN, f64::max) <= 8.0
}

/// The readings near the surface and those near the bottom differ by half of the step or more, the same way: then many
/// readings show it, and the water counts as mixed for its small gain of density alone.
pub fn is_of_both_ends(analysis: &Analysis, step: &Step) -> bool {
    let change_c = step.cooling_c_per_m * (step.bottom_m - step.top_m);
    analysis.facts.as_ref().is_some_and(|facts| {
        (facts.top_c - facts.bottom_c) * change_c.signum() >= 0.5 * change_c.abs() - 1e-9
    })
}

/// From here on, °C per metre, two values a step apart can be told apart; upward to the next tenth, as it is shown.
fn told_apart_from(step: &Step, believable_c: f64) -> f64 {
    (believable_c / (step.bottom_m - step.top_m) * 10.0 - 1e-6).ceil() / 10.0
}

fn is_by_chance(step: &Step, believable_c: f64) -> bool {
    rounded(step.cooling_c_per_m, 1).abs() <= told_apart_from(step, believable_c) + 1e-9
}

/// How steep the steepest step of mixed water is, and whether that is more than chance.
fn steepest_step(step: &Step, believable_c: f64) -> FoundItem {
    let gradient = rounded(step.cooling_c_per_m, 1);
    let from = told_apart_from(step, believable_c);
    let note = match is_by_chance(step, believable_c) {
        true => Message::new("profile-steepest-chance"),
        false => Message::new("profile-steepest-real"),
    };
    let note =
        note.message("range", Range::of_marks(step.top_m, step.bottom_m).said()).number("from", from, 1);
    FoundItem {
        name: Message::new("profile-steepest-step").into(),
        value: Some(Num { value: gradient, decimals: 1 }),
        unit: Message::new("profile-unit-c-per-m").into(),
        verdict: None,
        notes: super::said(vec![note]),
    }
}

/// The only steep part is a day's warming near the surface.
pub fn near_surface_only(sight: &Sight, warm: &WarmLayerToday) -> FoundView {
    let analysis = sight.context.analysis;
    let lead = Message::new("profile-today-lead")
        .message("range", Range::of_marks(warm.top_m, warm.bottom_m).said());
    let range = Range::of_marks(warm.span_top_m, warm.span_bottom_m);
    // No thermocline of the season is there, so "not in my water" is right.
    let refused = (Sign::Inside, Message::new("profile-refused-today"));
    let look = Message::new("profile-look-flattest");
    let beside = beside_range(sight, MarkName::Thermocline, &range, look, refused);
    let mut items = vec![item(
        "profile-today-steepest",
        middle(warm.value_m),
        beside,
        steepest_of(sight, warm).into_iter().collect(),
    )];
    items.extend(mixed_layer(sight).map(|mut item| {
        item.name = Message::new("profile-mixed-layer-today").into();
        item.verdict = item.verdict.filter(|_| !sight.context.sheet.marks.mixed.refused);
        if let (None, Some(MixedLayer::At { low_m, high_m, .. })) = (&item.verdict, &analysis.mixed_layer) {
            let range = Range::of_computed(*low_m, *high_m);
            item.notes.insert(0, Message::new("profile-could-be").message("range", range.said()).into());
        }
        item
    }));
    items.extend(under_it(sight, warm));
    found(Message::new("profile-today-title"), vec![lead], items)
}

/// The rule of today's warm layer, told by its steepest step or steps.
fn steepest_of(sight: &Sight, warm: &WarmLayerToday) -> Option<Message> {
    let steps: Vec<&Step> =
        sight.context.analysis.steps.iter().filter(|step| step.in_warm_layer_today).collect();
    let steepest = steps.iter().map(|step| step.cooling_c_per_m).fold(f64::MIN, f64::max);
    let equal: Vec<&&Step> = steps
        .iter()
        .filter(|step| (step.cooling_c_per_m - steepest).abs() <= 1e-9 * steepest.abs().max(1.0))
        .collect();
    let (first, last) = (equal.first()?, equal.last()?);
    let told = Thermocline {
        value_m: warm.value_m,
        step_top_m: first.top_m,
        step_bottom_m: last.bottom_m,
        gradient_c_per_m: steepest,
        span_top_m: warm.span_top_m,
        span_bottom_m: warm.span_bottom_m,
        in_one_piece: true,
        ambiguous: false,
        tellable: true,
    };
    Some(step_rule(sight, &told, false, false))
}

/// From here on the water under today's layer is not called even, °C (a convention of ours: the class's mixed-layer drop).
const UNEVEN_C: f64 = 1.0;

/// The water under today's warm layer.
fn under_it(sight: &Sight, warm: &WarmLayerToday) -> Option<FoundItem> {
    let levels = &sight.context.analysis.profile;
    let below: Vec<f64> = levels
        .iter()
        .filter(|level| level.depth_m >= warm.bottom_m - 1e-9)
        .map(|level| level.temp_c)
        .collect();
    let last_m = levels.last()?.depth_m;
    let high = below.iter().copied().fold(f64::MIN, f64::max);
    let low = below.iter().copied().fold(f64::MAX, f64::min);
    let differs_c = high - low;
    let is_even = differs_c < UNEVEN_C;
    let beside = placed_m(sight, MarkName::Deep).map(|depth_m| {
        let reason = match is_even {
            true => Message::new("profile-today-deep"),
            false => Message::new("profile-today-deep-slow"),
        };
        verdict(Sign::Outside, reason.depth("mine", depth_m))
    });
    let note = match is_even {
        true => Message::new("profile-today-under"),
        false => Message::new("profile-today-under-slow"),
    };
    let note = note.message("range", Range::of_marks(warm.bottom_m, last_m).said()).number(
        "differs",
        rounded(differs_c, 1),
        1,
    );
    let words = match is_even {
        true => Message::new("profile-even-water").number("temp", rounded((high + low) / 2.0, 0), 0),
        false => Message::new("profile-slow-water"),
    };
    Some(worded("profile-under-it", words, beside, vec![note]))
}
