//! Laws of the rules beside the class's own: shifted depths, an offset, another scale, shuffled or repeated readings change
//! nothing where nothing may; and no input, however wild, breaks one.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::any::{config, water, wild_kept_cast, wild_number};
use common::{close_option, reading};
use layercast_core::layers::angle::greatest_angle_m;
use layercast_core::layers::broken_stick::broken_stick_m;
use layercast_core::layers::centroid::centroid_m;
use layercast_core::layers::curvature::sharpest_bend_m;
use layercast_core::layers::dense_step::first_dense_m;
use layercast_core::layers::every_rule::{EveryRule, every_rule, mixed_layer_rules};
use layercast_core::layers::monotone_curve::steepest_place;
use layercast_core::layers::parabola::parabola_m;
use layercast_core::layers::steepest::steepest;
use layercast_core::layers::steps::steps;
use layercast_core::layers::three_layer::three_layers;
use layercast_core::{Cast, Leg, Level, Method, Rule, Sought, State, Step, analyse};
use proptest::prelude::*;

/// A summer cast of two legs: it cools downward by tenths.
fn summer() -> impl Strategy<Value = Cast> {
    (8_usize..24, prop::collection::vec((0_i32..25, -1_i32..2), 24)).prop_map(|(n, drops)| {
        let mut tenths = 260_i32;
        let mut readings = Vec::new();
        for (i, (drop, wobble)) in drops.into_iter().enumerate().take(n) {
            let depth_m = i as f64 * 0.5;
            readings.push(reading(depth_m, f64::from(tenths) / 10.0, Leg::Down));
            readings.push(reading(depth_m, f64::from(tenths + wobble) / 10.0, Leg::Up));
            tenths = (tenths - drop).max(50);
        }
        Cast { readings, digit_c: 0.1, bed_m: None }
    })
}

fn wild_levels() -> impl Strategy<Value = Vec<Level>> {
    prop::collection::vec((wild_number(), wild_number()), 0..14)
        .prop_map(|rows| rows.into_iter().map(|(z, t)| Level::bare(z, t, 0.1)).collect())
}

/// Every depth found by the rules that need no threshold, in a fixed order.
fn by_shape(levels: &[Level]) -> Vec<Option<f64>> {
    let steps = steps(levels);
    let cooling: Vec<f64> = steps.iter().map(|s| s.cooling_c_per_m).collect();
    let refined = |rule: fn(&[Step], std::ops::Range<usize>) -> Option<f64>| {
        steepest(&cooling, |_| true).and_then(|k| rule(&steps, k.first..k.last + 1))
    };
    vec![
        refined(centroid_m),
        refined(parabola_m),
        steepest_place(levels, 0..steps.len()).map(|p| p.depth_m),
        sharpest_bend_m(levels),
        greatest_angle_m(levels),
        broken_stick_m(levels, &steps),
        three_layers(levels).map(|f| f.top_m),
        three_layers(levels).map(|f| f.bottom_m),
    ]
}

#[track_caller]
fn alike(a: &[Option<f64>], b: &[Option<f64>], moved: impl Fn(f64) -> f64) {
    assert_eq!(a.len(), b.len());
    for (i, (x, y)) in a.iter().zip(b).enumerate() {
        close_option(&format!("rule {i}"), *y, x.map(&moved), 1e-7);
    }
}

fn values(every: &EveryRule) -> Vec<Option<f64>> {
    every.values.iter().map(|v| v.value_m).collect()
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn whatever_the_levels_no_rule_breaks(levels in wild_levels(), from in 0_usize..20, to in 0_usize..20) {
        let steps = steps(&levels);
        for found in by_shape(&levels).into_iter().flatten() { prop_assert!(found.is_finite()); }
        let places = [centroid_m(&steps, from..to), parabola_m(&steps, from..to), first_dense_m(&steps, 0.1)];
        for found in places.into_iter().flatten() { prop_assert!(found.is_finite()); }
        if let Some(place) = steepest_place(&levels, from..to) {
            prop_assert!(place.depth_m.is_finite() && place.cooling_c_per_m.is_finite());
        }
        if let Some(fit) = three_layers(&levels) {
            for x in [fit.upper_c, fit.lower_c, fit.rms_c] { prop_assert!(x.is_finite()); }
        }
        let mixed = Rule::ALL.iter().filter(|rule| rule.seeks() == Sought::MixedLayerEnd).count();
        prop_assert_eq!(mixed_layer_rules(&levels, &steps, &Method::default()).len(), mixed - 1); // one repeats the class's
    }

    #[test]
    fn whatever_comes_in_every_rule_stays_in_the_water(cast in wild_kept_cast(), r in wild_number(), d in wild_number(), s in wild_number()) {
        let a = analyse(&cast, &Method { reference_m: r, mixed_drop_c: d, steep_c_per_m: s, ..Method::default() });
        let every = every_rule(&a);
        let (first_m, last_m) = (a.profile.first().map_or(0.0, |l| l.depth_m), a.profile.last().map_or(0.0, |l| l.depth_m));
        for m in values(&every).into_iter().flatten() {
            prop_assert!(m.is_finite() && m >= first_m.min(0.0) - 1e-9 && m <= last_m + 1e-9, "{} m", m);
        }
        for spread in [every.thermocline_spread, every.mixed_layer_spread, every.thresholds_spread].into_iter().flatten() {
            prop_assert!(spread.shallowest_m <= spread.median_m && spread.median_m <= spread.deepest_m && spread.rules > 0);
        }
        let layered = matches!(a.state, State::Stratified | State::Weak);
        prop_assert!(layered || values(&every).iter().all(Option::is_none));
        prop_assert!(every.values.len() == Rule::ALL.len() - 1 || every.values.len() == Rule::ALL.len());
        prop_assert_eq!(every.values.first().map(|v| v.rule), Some(Rule::SteepestMiddle));
    }

    #[test]
    fn deeper_by_half_a_metre_moves_every_rule_by_half_a_metre(levels in water()) {
        let deeper: Vec<Level> = levels.iter().map(|l| Level { depth_m: l.depth_m + 0.5, ..*l }).collect();
        alike(&by_shape(&levels), &by_shape(&deeper), |m| m + 0.5);
        let told = |l: &[Level], reference_m: f64| -> Vec<Option<f64>> {
            let method = Method { reference_m, ..Method::default() };
            mixed_layer_rules(l, &steps(l), &method).iter().map(|v| v.value_m).collect()
        };
        alike(&told(&levels, 0.5), &told(&deeper, 1.0), |m| m + 0.5);
    }

    #[test]
    fn an_offset_moves_no_shape(levels in water(), offset in -3_i32..4) {
        let shifted: Vec<Level> = levels.iter().map(|l| Level::bare(l.depth_m, l.temp_c + f64::from(offset), l.sd_c)).collect();
        alike(&by_shape(&levels), &by_shape(&shifted), |m| m);
        let steps_of = |l: &[Level], rule: Rule| {
            let told = mixed_layer_rules(l, &steps(l), &Method::default());
            told.iter().find(|v| v.rule == rule).and_then(|v| v.value_m)
        };
        for rule in [Rule::TempDrop02, Rule::TempDrop05, Rule::TempDrop08, Rule::FirstSteepTop, Rule::FirstSteepMiddle] {
            close_option(&format!("{rule:?}"), steps_of(&shifted, rule), steps_of(&levels, rule), 1e-7);
        }
    }

    #[test]
    fn in_degrees_fahrenheit_every_shape_is_the_same(levels in water()) {
        let by_f: Vec<Level> = levels.iter().map(|l| Level { temp_c: l.temp_c * 1.8 + 32.0, ..*l }).collect();
        alike(&by_shape(&levels), &by_shape(&by_f), |m| m);
    }

    #[test]
    fn in_feet_every_shape_without_a_grid_is_the_same(levels in water()) {
        let feet: Vec<Level> = levels.iter().map(|l| Level { depth_m: l.depth_m / 0.3048, ..*l }).collect();
        alike(&by_shape(&levels)[..5], &by_shape(&feet)[..5], |m| m / 0.3048);
    }

    #[test]
    fn the_order_of_writing_and_repeats_change_no_rule(cast in summer(), seed in any::<u64>()) {
        let a = analyse(&cast, &Method::default());
        let want = values(&every_rule(&a));
        let mut shuffled = cast.clone();
        let mut key = seed;
        shuffled.readings.sort_by_cached_key(|_| { key = key.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407); key >> 33 });
        alike(&want, &values(&every_rule(&analyse(&shuffled, &Method::default()))), |m| m);
        prop_assume!(a.checked.iter().all(|c| c.used));
        let mut twice = cast.clone();
        twice.readings.extend(cast.readings.iter().copied());
        alike(&want, &values(&every_rule(&analyse(&twice, &Method::default()))), |m| m);
    }

    #[test]
    fn a_reading_put_in_on_the_line_moves_no_threshold(levels in water(), at in any::<prop::sample::Index>()) {
        let at = at.index(levels.len() - 1);
        let (p, q) = (levels[at], levels[at + 1]);
        let mut more = levels.clone();
        more.insert(at + 1, Level::bare((p.depth_m + q.depth_m) / 2.0, (p.temp_c + q.temp_c) / 2.0, 0.1));
        let told = |l: &[Level]| mixed_layer_rules(l, &steps(l), &Method::default());
        for (a, b) in told(&levels).iter().zip(told(&more)) {
            // (Density is no straight line between readings, a fit counts readings, a bend needs its neighbours.)
            if a.rule.temp_step_c(&Method::default()).is_some() || a.rule == Rule::FirstSteepTop {
                close_option(&format!("{:?}", a.rule), b.value_m, a.value_m, 1e-9);
            }
        }
    }

    #[test]
    fn refinements_stay_in_the_steepest_step(levels in water()) {
        let steps = steps(&levels);
        let cooling: Vec<f64> = steps.iter().map(|s| s.cooling_c_per_m).collect();
        let k = steepest(&cooling, |_| true).unwrap();
        let (top_m, bottom_m) = (steps[k.first].top_m, steps[k.last].bottom_m);
        for found in [centroid_m(&steps, k.first..k.last + 1), parabola_m(&steps, k.first..k.last + 1)].into_iter().flatten() {
            prop_assert!((top_m..=bottom_m).contains(&found));
        }
        if let Some(place) = steepest_place(&levels, 0..steps.len()) {
            // A curve through every value is somewhere at least as steep as the steepest step.
            prop_assert!(place.cooling_c_per_m >= cooling[k.first] - 1e-6);
        }
    }

    #[test]
    fn no_other_stick_or_layers_fit_better(levels in water(), a in any::<prop::sample::Index>(), b in any::<prop::sample::Index>()) {
        if let Some(fit) = three_layers(&levels) {
            let count = ((levels.last().unwrap().depth_m - levels[0].depth_m) / 0.05 + 1e-9) as usize;
            prop_assume!(count <= 400);
            let (i, j) = (a.index(count), b.index(count) + 1);
            prop_assume!(i < j);
            let at = |k: usize| levels[0].depth_m + k as f64 * 0.05;
            let share = |l: &Level| ((l.depth_m - at(i)) / (at(j) - at(i))).clamp(0.0, 1.0);
            let other = left_over(&levels, share);
            prop_assert!(fit.rms_c * fit.rms_c * levels.len() as f64 <= other + 1e-6 * (1.0 + other), "{:?} {}", fit, other);
        }
        let steps = steps(&levels);
        if let Some(corner_m) = broken_stick_m(&levels, &steps) {
            let cooling: Vec<f64> = steps.iter().map(|s| s.cooling_c_per_m).collect();
            let fitted = &levels[..steepest(&cooling, |_| true).unwrap().last + 2];
            let span_m = fitted.last().unwrap().depth_m - fitted[0].depth_m;
            prop_assume!(span_m < 40.0);
            let other_m = fitted[0].depth_m + a.index((span_m * 100.0) as usize) as f64 * 0.01;
            let left = |corner: f64| left_over(fitted, |l: &Level| (l.depth_m - corner).max(0.0));
            let other = left(other_m);
            prop_assert!(left(corner_m) <= other + 1e-6 * (1.0 + other));
        }
    }
}

/// What T = c₁ + c₂ w leaves of the squares, written out plainly.
fn left_over(levels: &[Level], w: impl Fn(&Level) -> f64) -> f64 {
    let n = levels.len() as f64;
    let mean_w = levels.iter().map(&w).sum::<f64>() / n;
    let mean_t = levels.iter().map(|l| l.temp_c).sum::<f64>() / n;
    let ww: f64 = levels.iter().map(|l| (w(l) - mean_w) * (w(l) - mean_w)).sum();
    let wt: f64 = levels.iter().map(|l| (w(l) - mean_w) * (l.temp_c - mean_t)).sum();
    let slope = if ww > 1e-9 { wt / ww } else { 0.0 };
    levels
        .iter()
        .map(|l| {
            let e = l.temp_c - mean_t - slope * (w(l) - mean_w);
            e * e
        })
        .sum()
}

#[test]
fn a_hundred_thousand_levels_take_a_moment() {
    let levels: Vec<Level> = (0..100_000)
        .map(|i| f64::from(i) * 0.0005)
        .map(|z| Level::bare(z, 8.0 + 14.0 / (1.0 + libm::exp((z - 20.0) / 3.0)), 0.1))
        .collect();
    let steps = steps(&levels);
    let told = mixed_layer_rules(&levels, &steps, &Method::default());
    assert!(told.iter().filter(|v| v.value_m.is_some()).count() >= 12, "{told:?}");
    let fit = three_layers(&levels).unwrap();
    assert!((fit.top_m + fit.bottom_m - 40.0).abs() < 1.0, "{fit:?}");
}
