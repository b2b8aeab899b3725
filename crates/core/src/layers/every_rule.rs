//! What every published rule says of one cast, and how far they lie apart.

use super::angle::greatest_angle_m;
use super::broken_stick::broken_stick_m;
use super::centroid::centroid_m;
use super::curvature::sharpest_bend_m;
use super::dense_step::{DENSE_KG_M3_PER_M, first_dense_m};
use super::first_steep::first_steep;
use super::mixed_layer::{density_rise_depth_m, temperature_step_depth_m};
use super::monotone_curve::steepest_place;
use super::parabola::parabola_m;
use super::three_layer::three_layers;
use crate::analysis::{Analysis, Level, Method, Rule, RuleValue, Sought, Step};
use crate::cast::station::median;
use crate::slack::SLACK;
use std::ops::Range;

/// Depths of several rules for one boundary.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Spread {
    /// How many rules found a depth.
    pub rules: usize,
    /// The shallowest of them, metres.
    pub shallowest_m: f64,
    /// The deepest of them, metres.
    pub deepest_m: f64,
    /// Their median, metres.
    pub median_m: f64,
}

/// What every rule says.
#[derive(Clone, Debug, PartialEq)]
pub struct EveryRule {
    /// Every rule of [`Rule::ALL`], in that order; one that only repeats the class's own step is left out.
    pub values: Vec<RuleValue>,
    /// How far the thermocline rules lie apart; `None` where none finds one.
    pub thermocline_spread: Option<Spread>,
    /// How far the mixed-layer rules lie apart; `None` where none finds one.
    pub mixed_layer_spread: Option<Spread>,
    /// The same for the thresholds from a reference depth alone.
    pub thresholds_spread: Option<Spread>,
}

/// What every published rule says of a cast, on the method of its analysis.
///
/// The quick six are those of [`Analysis::rules`]; the refinements stand on the thermocline's own step and are sought in
/// its own layer. Mixed-layer rules look at the whole cast from the reference depth (thresholds) or the first level
/// (steps and fits). Where the analysis tells no rule (mixed, inverse, unstable, too few) every value is `None`: a fit
/// would still return numbers, but they would mean nothing. Where the class has no thermocline no rule has.
///
/// That rules disagree widely is what [`Wilson2020`](crate::bibliography::Wilson2020) and
/// [`Gray2020`](crate::bibliography::Gray2020) found; on a sharp summer cast they lie 2 m apart.
///
/// ```
/// use layercast_core::{Cast, Leg, Method, Reading, Switch, analyse, layers::every_rule::every_rule};
/// let temps_c = [22.0, 22.0, 21.9, 21.5, 19.0, 14.5, 11.0, 9.5, 9.0, 8.9];
/// let readings = temps_c.iter().enumerate().map(|(i, t)| Reading {
///     depth_m: 0.5 * i as f64, temp_c: Some(*t), leg: Leg::Unknown, switch: Switch::Auto,
/// });
/// let cast = Cast { readings: readings.collect(), digit_c: 0.1, bed_m: None };
/// let all = every_rule(&analyse(&cast, &Method::default()));
/// let spread = all.mixed_layer_spread.unwrap();
/// assert_eq!((spread.rules, spread.shallowest_m, spread.deepest_m), (14, 1.0, 1.75));
/// ```
pub fn every_rule(analysis: &Analysis) -> EveryRule {
    let method = &analysis.method;
    let mut values = Vec::new();
    if analysis.rules.is_empty() {
        values.extend(told_rules(method).map(|rule| RuleValue { rule, value_m: None }));
        return told(values);
    }
    let quick = |rule: Rule| analysis.rules.iter().find(|r| r.rule == rule).and_then(|r| r.value_m);
    let steepest = steepest_step(analysis);
    for rule in told_rules(method).filter(|rule| rule.seeks() == Sought::Thermocline) {
        let value_m = match rule {
            Rule::SteepestMiddle | Rule::DensestStep => quick(rule),
            Rule::Centroid => steepest.clone().and_then(|at| centroid_m(&analysis.steps, at)),
            Rule::Parabola => steepest.clone().and_then(|at| parabola_m(&analysis.steps, at)),
            Rule::MonotoneCurve => steepest
                .as_ref()
                .and_then(|_| steepest_place(&analysis.profile, own_layer(&analysis.steps)))
                .map(|place| place.depth_m),
            Rule::TempDrop
            | Rule::TempDrop02
            | Rule::TempDrop05
            | Rule::TempDrop08
            | Rule::TempDrop10
            | Rule::DensityRise003
            | Rule::DensityRise
            | Rule::DensityRise0125
            | Rule::FirstSteepTop
            | Rule::FirstSteepMiddle
            | Rule::FirstDenseTop
            | Rule::SharpestBend
            | Rule::GreatestAngle
            | Rule::BrokenStick
            | Rule::ThreeLayers => None, // below, among the mixed layer's
        };
        values.push(RuleValue { rule, value_m });
    }
    values.extend(mixed_layer_rules(&analysis.profile, &analysis.steps, method));
    told(values)
}

/// What every mixed-layer rule says of bare levels, the class's own first, whatever the state of the water.
///
/// * `steps`: the gradient table of `levels`
pub fn mixed_layer_rules(levels: &[Level], steps: &[Step], method: &Method) -> Vec<RuleValue> {
    let steep = first_steep(steps, method.steep_c_per_m);
    let value_m = |rule: Rule| match rule {
        Rule::FirstSteepTop => steep.map(|(top_m, _)| top_m),
        Rule::FirstSteepMiddle => steep.map(|(_, middle_m)| middle_m),
        Rule::FirstDenseTop => first_dense_m(steps, DENSE_KG_M3_PER_M),
        Rule::SharpestBend => sharpest_bend_m(levels),
        Rule::GreatestAngle => greatest_angle_m(levels),
        Rule::BrokenStick => broken_stick_m(levels, steps),
        Rule::ThreeLayers => three_layers(levels).map(|fit| fit.top_m),
        Rule::TempDrop | Rule::TempDrop02 | Rule::TempDrop05 | Rule::TempDrop08 | Rule::TempDrop10 => {
            temperature_step_depth_m(levels, method.reference_m, rule.temp_step_c(method)?)
        }
        Rule::DensityRise003 | Rule::DensityRise | Rule::DensityRise0125 => {
            density_rise_depth_m(levels, method.reference_m, rule.density_rise_kg_m3()?)
        }
        Rule::SteepestMiddle | Rule::DensestStep | Rule::Centroid | Rule::Parabola | Rule::MonotoneCurve => {
            None
        } // the thermocline's
    };
    told_rules(method)
        .filter(|rule| rule.seeks() == Sought::MixedLayerEnd)
        .map(|rule| RuleValue { rule, value_m: value_m(rule) })
        .collect()
}

/// How far depths of rules lie apart; `None` where no rule found one.
pub fn spread(values: &[RuleValue], counts: impl Fn(Rule) -> bool) -> Option<Spread> {
    let mut found: Vec<f64> = values.iter().filter(|v| counts(v.rule)).filter_map(|v| v.value_m).collect();
    let median_m = median(&mut found)?; // sorts
    Some(Spread { rules: found.len(), shallowest_m: *found.first()?, deepest_m: *found.last()?, median_m })
}

/// Whether a rule is a threshold from a reference depth.
pub fn is_threshold(rule: Rule) -> bool {
    rule.temp_step_c(&Method::default()).is_some() || rule.density_rise_kg_m3().is_some()
}

fn told(values: Vec<RuleValue>) -> EveryRule {
    EveryRule {
        thermocline_spread: spread(&values, |rule| rule.seeks() == Sought::Thermocline),
        mixed_layer_spread: spread(&values, |rule| rule.seeks() == Sought::MixedLayerEnd),
        thresholds_spread: spread(&values, is_threshold),
        values,
    }
}

/// Every rule but those that only repeat the class's own step.
fn told_rules(method: &Method) -> impl Iterator<Item = Rule> {
    let class_c = method.mixed_drop_c;
    let repeats = move |rule: Rule| {
        let same = |step_c: f64| (step_c - class_c).abs() <= SLACK;
        rule != Rule::TempDrop && rule.temp_step_c(&Method::default()).is_some_and(same)
    };
    Rule::ALL.into_iter().filter(move |rule| !repeats(*rule))
}

/// Places of the thermocline's step or run of equal ones.
fn steepest_step(analysis: &Analysis) -> Option<Range<usize>> {
    let told = analysis.thermocline?;
    let first = analysis.steps.iter().position(|s| s.top_m >= told.step_top_m)?;
    let last = analysis.steps.iter().position(|s| s.bottom_m >= told.step_bottom_m)?;
    (first <= last).then_some(first..last + 1)
}

/// Places of the main layer's steps; all of them where no layer is steep.
fn own_layer(steps: &[Step]) -> Range<usize> {
    let first = steps.iter().position(|s| s.in_main_layer);
    let last = steps.iter().rposition(|s| s.in_main_layer);
    first.zip(last).map_or(0..steps.len(), |(first, last)| first..last + 1)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Cast, Leg, Reading, State, Switch, analyse};

    fn seen(temps_c: &[f64], method: &Method) -> (Analysis, EveryRule) {
        let reading = |(i, t): (usize, &f64)| Reading {
            depth_m: 0.5 * i as f64,
            temp_c: Some(*t),
            leg: Leg::Unknown,
            switch: Switch::Auto,
        };
        let cast =
            Cast { readings: temps_c.iter().enumerate().map(reading).collect(), digit_c: 0.1, bed_m: None };
        let analysis = analyse(&cast, method);
        let every = every_rule(&analysis);
        (analysis, every)
    }

    const SUMMER: [f64; 12] = [22.0, 22.0, 21.9, 21.5, 19.0, 14.5, 11.0, 9.5, 9.0, 8.9, 8.8, 8.8];

    /// How many rules seek a depth.
    fn seeking(sought: Sought) -> usize {
        Rule::ALL.iter().filter(|rule| rule.seeks() == sought).count()
    }

    fn value(every: &EveryRule, rule: Rule) -> Option<f64> {
        every.values.iter().find(|v| v.rule == rule).and_then(|v| v.value_m)
    }

    #[test]
    fn the_quick_rules_are_the_analysis_own() {
        let (analysis, every) = seen(&SUMMER, &Method::default());
        assert_eq!(analysis.rules.iter().map(|r| r.rule).collect::<Vec<_>>(), Rule::QUICK);
        for quick in &analysis.rules {
            assert_eq!(value(&every, quick.rule), quick.value_m);
        }
        assert!(every.values.iter().all(|v| v.value_m.is_some()), "{:?}", every.values);
    }

    #[test]
    fn a_class_step_of_its_own_stands_beside_the_published_ones() {
        let rules = |drop_c: f64| {
            let (_, every) = seen(&SUMMER, &Method { mixed_drop_c: drop_c, ..Method::default() });
            let seeking = every.values.iter().filter(|v| v.rule.seeks() == Sought::MixedLayerEnd);
            let told = |rule| every.values.iter().any(|v| v.rule == rule);
            (seeking.count(), told(Rule::TempDrop05), told(Rule::TempDrop10))
        };
        let all = seeking(Sought::MixedLayerEnd);
        assert_eq!(rules(1.0), (all - 1, true, false));
        assert_eq!(rules(0.5), (all - 1, false, true));
        assert_eq!(rules(0.7), (all, true, true));
    }

    #[test]
    fn an_afternoon_layer_does_not_draw_the_thermocline() {
        let temps_c =
            [27.0, 24.5, 22.0, 22.0, 22.0, 21.9, 21.8, 20.0, 17.0, 12.5, 10.0, 9.0, 8.5, 8.3, 8.2, 8.2];
        let (analysis, every) = seen(&temps_c, &Method::default());
        assert!(analysis.warm_layer_today.is_some());
        assert_eq!(analysis.thermocline.map(|t| t.value_m), Some(4.25));
        for rule in [Rule::Centroid, Rule::Parabola, Rule::MonotoneCurve] {
            let m = value(&every, rule).unwrap();
            assert!((4.0..=4.5).contains(&m), "{rule:?}: {m}");
        }
        // Thresholds end in today's warm water, the fit to the whole cast does not: that is the disagreement.
        assert!(value(&every, Rule::TempDrop).unwrap() < 1.0);
    }

    #[test]
    fn where_the_analysis_tells_no_rule_no_rule_is_told() {
        let waters: [(&[f64], State); 4] = [
            (&[15.0, 15.1, 15.0, 15.0, 14.9, 15.0], State::Mixed),
            (&[0.2, 0.9, 1.7, 2.4, 2.9, 3.3, 3.5, 3.7], State::Inverse),
            (&[8.0, 8.0, 8.0, 12.0, 14.0, 14.0, 14.0, 14.0], State::Unstable),
            (&[20.0, 18.0, 10.0], State::TooFew),
        ];
        for (temps_c, state) in waters {
            let (analysis, every) = seen(temps_c, &Method::default());
            assert_eq!(analysis.state, state);
            assert_eq!(every.values.len(), Rule::ALL.len() - 1); // one repeats the class's own step
            assert!(every.values.iter().all(|v| v.value_m.is_none()), "{state:?}");
            assert_eq!((every.thermocline_spread, every.mixed_layer_spread), (None, None));
            assert_eq!(every.thresholds_spread, None);
        }
    }

    #[test]
    fn a_days_warming_alone_has_no_thermocline_by_any_rule() {
        let temps_c =
            [24.0, 23.9, 22.8, 21.7, 21.6, 21.5, 21.5, 21.4, 21.4, 21.3, 21.3, 21.2, 21.2, 21.1, 21.1];
        let (analysis, every) = seen(&temps_c, &Method::default());
        assert!(analysis.warm_layer_today.is_some_and(|w| w.only));
        assert_eq!(every.thermocline_spread, None);
        assert!(every.mixed_layer_spread.is_some_and(|s| s.rules > 10));
    }

    #[test]
    fn the_spread_counts_only_rules_that_found_a_depth() {
        let value = |rule, value_m| RuleValue { rule, value_m };
        let values = [
            value(Rule::TempDrop, Some(3.0)),
            value(Rule::DensityRise, Some(1.0)),
            value(Rule::BrokenStick, None),
            value(Rule::ThreeLayers, Some(4.0)),
            value(Rule::SteepestMiddle, Some(9.0)),
        ];
        let got = spread(&values, |rule| rule.seeks() == Sought::MixedLayerEnd);
        assert_eq!(got, Some(Spread { rules: 3, shallowest_m: 1.0, deepest_m: 4.0, median_m: 3.0 }));
        let got = spread(&values, is_threshold);
        assert_eq!(got, Some(Spread { rules: 2, shallowest_m: 1.0, deepest_m: 3.0, median_m: 2.0 }));
        assert_eq!(spread(&values[2..3], |_| true), None);
    }
}
