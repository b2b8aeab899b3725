//! The whole way from a cast to its analysis.

use crate::analysis::{
    Analysis, Checked, Level, Method, MixedLayer, RangesFrom, Rule, RuleValue, State, Step, Thermocline,
    WarmLayerToday,
};
use crate::cast::station::{depth_of, temp_of};
use crate::cast::{Cast, Leg, checks, profile};
use crate::layers::mixed_layer::{DENSITY_RISE_KG_M3, SEASON_REFERENCE_M, density_rise_depth_m, mixed_layer};
use crate::layers::runs::{Layers, Run, layers, runs, surviving};
use crate::layers::{densest, doubts, edges, first_steep, span, state, steps};
use crate::slack::at_least;

/// Fewer depths than this are too few.
pub const FEWEST_DEPTHS: usize = 4;
/// Less water than this from the first depth to the last is too little, metres.
pub const LEAST_SPAN_M: f64 = 1.5;

/// Analyses a cast: checks, profile, state, layers, ranges.
///
/// Total: any input yields an [`Analysis`]; NaN or infinite depths and temperatures count as missing, and a method with
/// values that make no sense is read as the class rule for those (the method returned is the one used).
///
/// What each state gives (conventions of ours):
/// - *too few* (under 4 depths or under 1.5 m): checks, profile and steps, no layer;
/// - *unstable*: no layer, no mixed layer; the pair that makes it so is in the facts and doubted;
/// - *inverse*: the fastest warming and the fastest gain of density, no mixed layer;
/// - *mixed*: the mixed layer reaches at least to the last reading, nothing else;
/// - *weak*: thermocline with its span, mixed layer, no steep layer;
/// - *stratified*: all, but where the only steep layer is a day's warming near the surface: that and no thermocline.
///
/// ```
/// use layercast_core::{Cast, Leg, Method, Reading, State, Switch, analyse};
/// let temps_c = [22.0, 22.0, 21.9, 21.5, 19.0, 14.5, 11.0, 9.5, 9.0, 8.9];
/// let readings = temps_c.iter().enumerate().map(|(i, t)| Reading {
///     depth_m: 0.5 * i as f64, temp_c: Some(*t), leg: Leg::Unknown, switch: Switch::Auto,
/// });
/// let cast = Cast { readings: readings.collect(), digit_c: 0.1, bed_m: None };
/// let found = analyse(&cast, &Method::default());
/// assert_eq!(found.state, State::Stratified);
/// assert_eq!(found.thermocline.unwrap().value_m, 2.25);
/// assert_eq!(found.metalimnion.unwrap().bottom_m, 4.0);
/// ```
pub fn analyse(cast: &Cast, method: &Method) -> Analysis {
    let method = sensible(method);
    let mut checked = checks::checks_by(cast, method.density);
    let (levels, pairs) = profile::profile_by(cast, &checked, method.density);
    let mut steps = steps::steps(&levels);
    let found = surviving(runs(&levels, &steps, method.steep_c_per_m), pairs.s_used_c);
    let facts = state::facts(&levels, pairs.s_used_c, method.density);
    let state = match &facts {
        Some((facts, _)) if deep_enough(&levels) => state::state(facts, !found.is_empty()),
        _ => State::TooFew,
    };
    let overturn = facts.as_ref().and_then(|(_, overturn)| *overturn);
    doubts::doubts(cast, &mut checked, &levels, &steps, overturn);

    let layered = matches!(state, State::Stratified | State::Weak);
    let deepest_m = levels.last().map_or(0.0, |l| l.depth_m);
    let layers = if layered { layers(&found, deepest_m) } else { Layers::default() };
    let main_steps = layers.main.as_ref().map(|run| run.steps.clone());
    let day_only = layers.main.is_none() && layers.warm_today.is_some();

    let told = match state {
        State::Stratified | State::Weak if !day_only => {
            let sought = main_steps.clone().unwrap_or(0..steps.len());
            span::span(&steps, sought, &layers.others)
        }
        State::Inverse => span::warming_span(&steps),
        _ => None,
    };
    let warm_layer_today = layers.warm_today.as_ref().and_then(|run| warm_layer(&steps, run, day_only));
    let metalimnion = (layers.main.as_ref())
        .and_then(|run| edges::metalimnion(&steps, run, method.steep_c_per_m, layers.deep));
    let mixed = match state {
        State::Stratified | State::Weak => mixed_layer(&levels, method.reference_m, method.mixed_drop_c),
        State::Mixed => Some(MixedLayer::AtLeast { at_least_m: deepest_m }),
        _ => None,
    };
    let day_above_season = match (&layers.main, &layers.warm_today) {
        (Some(main), Some(warm)) => warm.steps.end <= main.steps.start,
        _ => false,
    };
    let mixed_layer_season =
        if day_above_season { mixed_layer(&levels, SEASON_REFERENCE_M, method.mixed_drop_c) } else { None };
    for (i, step) in steps.iter_mut().enumerate() {
        step.in_span = told.as_ref().is_some_and(|s| s.members.binary_search(&i).is_ok());
        step.in_main_layer = main_steps.as_ref().is_some_and(|r| r.contains(&i));
        step.in_warm_layer_today = layers.warm_today.as_ref().is_some_and(|run| run.steps.contains(&i));
    }
    let told = told.map(|s| s.thermocline);
    let (thermocline, fastest_warming) = if state == State::Inverse { (None, told) } else { (told, None) };
    let densest_m = |sought| densest::densest(&levels, sought).map(|d| d.value_m);
    let rules = if layered {
        let densest = if day_only { None } else { densest_m(main_steps.unwrap_or(0..steps.len())) };
        rules(&levels, &steps, &method, thermocline.as_ref(), densest, mixed.as_ref())
    } else {
        Vec::new()
    };
    let fastest_densing_m = if state == State::Inverse { densest_m(0..steps.len()) } else { None };
    let (warmest, coldest) = extremes(cast, &checked);
    Analysis {
        method,
        checked,
        profile: levels,
        pairs,
        steps,
        state,
        facts: facts.map(|(facts, _)| facts),
        thermocline,
        metalimnion,
        mixed_layer: mixed,
        mixed_layer_season,
        warm_layer_today,
        fastest_warming,
        fastest_densing_m,
        rules,
        warmest,
        coldest,
        ranges_from: RangesFrom::default(),
    }
}

/// Values that make no sense give way to the class rule.
fn sensible(method: &Method) -> Method {
    let class = Method::default();
    let within = |value: f64, low: f64, high: f64, class: f64| {
        if (low..=high).contains(&value) { value } else { class }
    };
    Method {
        reference_m: within(method.reference_m, 0.0, 100.0, class.reference_m),
        mixed_drop_c: within(method.mixed_drop_c, 0.01, 20.0, class.mixed_drop_c),
        steep_c_per_m: within(method.steep_c_per_m, 0.01, 100.0, class.steep_c_per_m),
        density: match method.density.salinity_problem() {
            None => method.density,
            Some(_) => class.density,
        },
    }
}

fn deep_enough(levels: &[Level]) -> bool {
    let spans = |(a, b): (&Level, &Level)| at_least(b.depth_m - a.depth_m, LEAST_SPAN_M);
    levels.len() >= FEWEST_DEPTHS && levels.first().zip(levels.last()).is_some_and(spans)
}

/// Today's warm layer with its own span, within its own run.
fn warm_layer(steps: &[Step], run: &Run, only: bool) -> Option<WarmLayerToday> {
    let own = steps.get(run.steps.clone())?;
    let Thermocline { value_m, span_top_m, span_bottom_m, .. } =
        span::span(own, 0..own.len(), &[])?.thermocline;
    Some(WarmLayerToday {
        value_m,
        span_top_m,
        span_bottom_m,
        top_m: run.top_m,
        bottom_m: run.bottom_m,
        only,
    })
}

fn rules(
    levels: &[Level],
    steps: &[Step],
    method: &Method,
    thermocline: Option<&Thermocline>,
    densest_m: Option<f64>,
    mixed: Option<&MixedLayer>,
) -> Vec<RuleValue> {
    let first_steep = first_steep::first_steep(steps, method.steep_c_per_m);
    let mixed_m = match mixed {
        Some(MixedLayer::At { value_m, .. }) => Some(*value_m),
        _ => None,
    };
    let denser_m = density_rise_depth_m(levels, method.reference_m, DENSITY_RISE_KG_M3);
    [
        (Rule::SteepestMiddle, thermocline.map(|t| t.value_m)),
        (Rule::DensestStep, densest_m),
        (Rule::TempDrop, mixed_m),
        (Rule::DensityRise, denser_m),
        (Rule::FirstSteepTop, first_steep.map(|(top_m, _)| top_m)),
        (Rule::FirstSteepMiddle, first_steep.map(|(_, middle_m)| middle_m)),
    ]
    .map(|(rule, value_m)| RuleValue { rule, value_m })
    .to_vec()
}

/// A used reading: (°C, metres, leg).
type Extreme = Option<(f64, f64, Leg)>;

/// Warmest and coldest used reading; of equals the shallower, going down before coming up.
fn extremes(cast: &Cast, checked: &[Checked]) -> (Extreme, Extreme) {
    let used = || {
        (cast.readings.iter().zip(checked))
            .filter(|(_, c)| c.used)
            .filter_map(|(r, _)| Some((temp_of(r)?, depth_of(r)?, r.leg)))
    };
    let place = |a: &(f64, f64, Leg), b: &(f64, f64, Leg)| a.1.total_cmp(&b.1).then(a.2.cmp(&b.2));
    let warmest = used().min_by(|a, b| b.0.total_cmp(&a.0).then(place(a, b)));
    let coldest = used().min_by(|a, b| a.0.total_cmp(&b.0).then(place(a, b)));
    (warmest, coldest)
}
