//! Laws every rule keeps: what must not change when the depths are shifted, an offset is added, readings are shuffled or
//! repeated, the scale is changed or a reading is put in on the line; and no input, however wild, may break anything.
//!
//! Long because each rule has its own laws.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::any::{water, wild_cast, wild_number};
use common::{close, close_option, reading};
use layercast_core::layers::densest::densest;
use layercast_core::layers::first_steep::first_steep;
use layercast_core::layers::mixed_layer::{density_rise_depth_m, mixed_layer, temperature_step_depth_m};
use layercast_core::layers::overturn::overturn;
use layercast_core::layers::runs::runs;
use layercast_core::layers::span::span;
use layercast_core::layers::state::{facts, state};
use layercast_core::layers::steps::steps;
use layercast_core::water::density::density_kg_m3;
use layercast_core::{
    Analysis, Cast, Density, Leg, Level, Method, MixedLayer, Reading, State, Switch, analyse,
};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

/// A plausible cast: depths of a cable, temperatures of lake water, two legs or one.
fn lake() -> impl Strategy<Value = Cast> {
    let reading = (0_u32..40, 20_u32..300, prop_oneof![Just(Leg::Down), Just(Leg::Up)]);
    let falling = (4_usize..24, 60_i32..280, prop::collection::vec(-3_i32..30, 24), 0_u8..3).prop_map(
        |(n, top, drops, legs)| {
            let mut tenths = f64::from(top);
            let mut readings = Vec::new();
            for (i, drop) in drops.into_iter().enumerate().take(n) {
                let depth_m = i as f64 * 0.5;
                for leg in [Leg::Down, Leg::Up, Leg::Unknown] {
                    let wobble = f64::from(drop.rem_euclid(3) - 1);
                    let read = match (leg, legs) {
                        (Leg::Unknown, 0) | (Leg::Down, 1 | 2) => Some(tenths),
                        (Leg::Up, 2) => Some(tenths + wobble),
                        _ => None,
                    };
                    readings.extend(read.map(|t| common::reading(depth_m, t / 10.0, leg)));
                }
                tenths = (tenths - f64::from(drop)).max(40.0);
            }
            Cast { readings, digit_c: 0.1, bed_m: None }
        },
    );
    let scattered = prop::collection::vec(reading, 0..60).prop_map(|rows| Cast {
        readings: (rows.into_iter())
            .map(|(z, t, leg)| common::reading(f64::from(z) * 0.25, f64::from(t) / 10.0, leg))
            .collect(),
        digit_c: 0.1,
        bed_m: None,
    });
    prop_oneof![4 => falling, 1 => scattered]
}

/// The same with temperatures that never rise downward and stay above 4 °C: density never falls.
fn stable_water() -> impl Strategy<Value = Vec<Level>> {
    water().prop_map(|mut levels| {
        let mut temps: Vec<f64> = levels.iter().map(|l| l.temp_c.max(4.0)).collect();
        temps.sort_by(|a, b| b.total_cmp(a));
        for (level, t) in levels.iter_mut().zip(temps) {
            *level = Level::bare(level.depth_m, t, level.sd_c);
        }
        levels
    })
}

fn class() -> Method {
    Method::default()
}

/// Everything of an analysis that is a depth below the surface, in a fixed order.
fn depths_of(a: &Analysis) -> Vec<Option<f64>> {
    let mixed = |m: Option<MixedLayer>| match m {
        Some(MixedLayer::At { value_m, .. }) => Some(value_m),
        Some(MixedLayer::AtLeast { at_least_m }) => Some(at_least_m),
        None => None,
    };
    let (t, m, w) = (a.thermocline, a.metalimnion, a.warm_layer_today);
    vec![
        t.map(|t| t.value_m),
        t.map(|t| t.span_top_m),
        t.map(|t| t.span_bottom_m),
        m.map(|m| m.top_m),
        m.map(|m| m.top_high_m),
        m.map(|m| m.bottom_m),
        m.map(|m| m.bottom_low_m),
        m.and_then(|m| m.bottom_high_m),
        mixed(a.mixed_layer),
        mixed(a.mixed_layer_season),
        w.map(|w| w.value_m),
        w.map(|w| w.span_top_m),
        w.map(|w| w.bottom_m),
        a.fastest_warming.map(|f| f.value_m),
        a.fastest_densing_m,
    ]
}

/// The same answer, up to the last bits of a mean.
fn same(a: &Analysis, b: &Analysis) {
    assert_eq!(a.state, b.state);
    assert_eq!(a.profile.len(), b.profile.len());
    for (x, y) in a.profile.iter().zip(&b.profile) {
        close("level", x.temp_c, y.temp_c, 1e-12);
        close("its deviation", x.sd_c, y.sd_c, 1e-12);
    }
    for (i, (x, y)) in depths_of(a).into_iter().zip(depths_of(b)).enumerate() {
        close_option(&format!("depth {i}"), x, y, 1e-9);
    }
}

/// The same cases in every run; `PROPTEST_CASES` asks for more of them.
fn config() -> ProptestConfig {
    ProptestConfig {
        rng_seed: RngSeed::Fixed(20_260_101),
        failure_persistence: None,
        max_global_rejects: 100_000,
        ..ProptestConfig::default()
    }
}

fn finite(what: &str, value: f64) {
    assert!(value.is_finite(), "{what} is {value}");
}

proptest! {
    #![proptest_config(config())]

    // ---- the whole analysis

    #[test]
    fn whatever_comes_in_what_goes_out_is_whole(cast in wild_cast(), r in wild_number(), d in wild_number(), s in wild_number()) {
        let a = analyse(&cast, &Method { reference_m: r, mixed_drop_c: d, steep_c_per_m: s, density: Density::Tanaka });
        prop_assert_eq!(a.checked.len(), cast.readings.len());
        prop_assert_eq!(a.steps.len(), a.profile.len().saturating_sub(1));
        for (l, m) in a.profile.iter().zip(a.profile.iter().skip(1)) {
            prop_assert!(m.depth_m > l.depth_m);
        }
        for l in &a.profile {
            for x in [l.depth_m, l.temp_c, l.sd_c, l.density] { finite("a level", x); }
        }
        for s in &a.steps {
            for x in [s.cooling_c_per_m, s.u_c_per_m, s.densing_kg_m3_per_m] { finite("a step", x); }
        }
        for x in depths_of(&a).into_iter().flatten() { finite("a depth", x); }
        finite("s", a.pairs.s_used_c);
        for x in [a.pairs.s_c, a.pairs.mean_c, a.pairs.mean_abs_c, a.pairs.max_abs_c].into_iter().flatten() { finite("a pair", x); }
        if let Some(f) = a.facts {
            for x in [f.top_c, f.bottom_c, f.density_gain, f.inversion, f.believable_c] { finite("a fact", x); }
        }
        for x in a.rules.iter().filter_map(|r| r.value_m) { finite("a rule", x); }
        let last_m = a.profile.last().map_or(0.0, |l| l.depth_m);
        if let Some(t) = a.thermocline {
            prop_assert!(t.span_top_m <= t.value_m && t.value_m <= t.span_bottom_m && t.span_bottom_m <= last_m);
        }
        if let Some(m) = a.metalimnion {
            prop_assert!(m.top_low_m <= m.top_m && m.top_m <= m.top_high_m && m.top_m < m.bottom_m);
            prop_assert!(m.bottom_low_m <= m.bottom_m && m.bottom_high_m.is_none_or(|h| m.bottom_m <= h && h <= last_m));
            prop_assert_eq!(m.cut_off, m.bottom_high_m.is_none());
        }
        for m in [a.mixed_layer, a.mixed_layer_season].into_iter().flatten() {
            if let MixedLayer::At { value_m, low_m, high_m, target_c, between_m } = m {
                for x in [value_m, low_m, high_m, target_c] { finite("the mixed layer", x); }
                prop_assert!(low_m <= value_m && value_m <= high_m && high_m <= last_m);
                prop_assert!(between_m.0 <= value_m && value_m <= between_m.1);
            }
        }
        let layered = matches!(a.state, State::Stratified | State::Weak);
        prop_assert!(layered || (a.thermocline.is_none() && a.metalimnion.is_none() && a.warm_layer_today.is_none()));
        prop_assert_eq!(a.fastest_warming.is_some(), a.state == State::Inverse);
        prop_assert_eq!(&a, &analyse(&cast, &a.method), "the method returned is the one used");
    }

    #[test]
    fn the_order_of_writing_does_not_matter(cast in lake(), seed in any::<u64>()) {
        let mut shuffled = cast.clone();
        let mut key = seed;
        shuffled.readings.sort_by_cached_key(|_| { key = key.wrapping_mul(6364136223846793005).wrapping_add(1442695040888963407); key >> 33 });
        same(&analyse(&cast, &class()), &analyse(&shuffled, &class()));
    }

    #[test]
    fn a_reading_written_twice_counts_once(cast in lake()) {
        // A reading the checks leave out alone would be kept as one of two alike: only casts without such.
        prop_assume!(analyse(&cast, &class()).checked.iter().all(|c| c.used));
        let mut twice = cast.clone();
        twice.readings.extend(cast.readings.iter().copied());
        same(&analyse(&cast, &class()), &analyse(&twice, &class()));
    }

    #[test]
    fn switching_a_reading_off_is_as_if_it_had_not_been_taken(cast in lake(), at in any::<prop::sample::Index>()) {
        prop_assume!(!cast.readings.is_empty());
        let at = at.index(cast.readings.len());
        let mut without = cast.clone();
        without.readings.remove(at);
        let mut off = cast;
        off.readings[at].switch = Switch::Off;
        let (a, b) = (analyse(&without, &class()), analyse(&off, &class()));
        // Beside a gap the spike test is not made; beside nothing it is made with the next reading, and may leave one
        // out. Only where both use the same readings.
        let used: Vec<bool> = b.checked.iter().enumerate().filter(|(i, _)| *i != at).map(|(_, c)| c.used).collect();
        prop_assume!(a.checked.iter().map(|c| c.used).eq(used));
        same(&a, &b);
    }

    #[test]
    fn deeper_by_half_a_metre_moves_every_boundary_by_half_a_metre(cast in lake()) {
        let mut deeper = cast.clone();
        deeper.readings.iter_mut().for_each(|r| r.depth_m += 0.5);
        // The reference depth moves along; what counts as near the surface does not, nor does the surface itself.
        let method = Method { reference_m: 1.0, ..class() };
        let (a, b) = (analyse(&cast, &class()), analyse(&deeper, &method));
        prop_assume!(a.warm_layer_today.is_none() && b.warm_layer_today.is_none());
        prop_assert_eq!(a.state, b.state);
        for (i, (x, y)) in depths_of(&a).into_iter().zip(depths_of(&b)).enumerate() {
            close_option(&format!("depth {i}"), y, x.map(|x| x + 0.5), 1e-9);
        }
    }

    #[test]
    fn down_and_up_exchanged_give_the_same_water(cast in lake()) {
        let mut other = cast.clone();
        for r in &mut other.readings {
            r.leg = match r.leg { Leg::Down => Leg::Up, Leg::Up => Leg::Down, Leg::Unknown => Leg::Unknown };
        }
        let (a, b) = (analyse(&cast, &class()), analyse(&other, &class()));
        same(&a, &b);
        close_option("mean difference", b.pairs.mean_c, a.pairs.mean_c.map(|m| -m), 1e-12);
        close_option("s", b.pairs.s_c, a.pairs.s_c, 1e-12);
    }

    #[test]
    fn no_reading_is_altered_or_dropped(cast in lake()) {
        let a = analyse(&cast, &class());
        for (r, c) in cast.readings.iter().zip(&a.checked) {
            prop_assert!(r.temp_c.is_some() && (c.used || c.doubt.is_some()), "left out without a word");
        }
    }

    // ---- one by one

    #[test]
    fn an_offset_moves_no_gradient_and_no_span(levels in water(), offset in -3_i32..4) {
        let shifted: Vec<Level> = levels.iter().map(|l| Level::bare(l.depth_m, l.temp_c + f64::from(offset), l.sd_c)).collect();
        let (a, b) = (steps(&levels), steps(&shifted));
        for (x, y) in a.iter().zip(&b) { close("gradient", x.cooling_c_per_m, y.cooling_c_per_m, 1e-9); }
        let told = |s: &[layercast_core::Step]| span(s, 0..s.len(), &[]).map(|s| (s.thermocline.span_top_m, s.thermocline.span_bottom_m));
        prop_assert_eq!(told(&a), told(&b));
        prop_assert_eq!(first_steep(&a, 1.0), first_steep(&b, 1.0));
        close_option("mixed layer", temperature_step_depth_m(&levels, 0.5, 1.0), temperature_step_depth_m(&shifted, 0.5, 1.0), 1e-9);
    }

    #[test]
    fn a_change_of_scale_moves_no_depth(levels in water()) {
        // Temperatures in °F, threshold, step and deviation with them.
        let by_f: Vec<Level> = levels.iter().map(|l| Level { temp_c: l.temp_c * 1.8 + 32.0, sd_c: l.sd_c * 1.8, ..*l }).collect();
        let (a, b) = (steps(&levels), steps(&by_f));
        let told = |s: &[layercast_core::Step]| span(s, 0..s.len(), &[]).map(|s| (s.thermocline.value_m, s.thermocline.span_top_m, s.thermocline.span_bottom_m));
        prop_assert_eq!(told(&a), told(&b));
        prop_assert_eq!(first_steep(&a, 1.0), first_steep(&b, 1.8));
        close_option("mixed layer", temperature_step_depth_m(&levels, 0.5, 1.0), temperature_step_depth_m(&by_f, 0.5, 1.8), 1e-9);
        let edges = |l: &[Level], t: f64| runs(l, &steps(l), t).iter().map(|r| (r.top_m, r.bottom_m)).collect::<Vec<_>>();
        prop_assert_eq!(edges(&levels, 1.0), edges(&by_f, 1.8));
    }

    #[test]
    fn depths_in_feet_move_every_depth_alike(levels in water()) {
        let feet: Vec<Level> = levels.iter().map(|l| Level { depth_m: l.depth_m / 0.3048, ..*l }).collect();
        let middle = |l: &[Level]| { let s = steps(l); span(&s, 0..s.len(), &[]).map(|s| s.thermocline.value_m) };
        close_option("thermocline", middle(&feet).map(|z| z * 0.3048), middle(&levels), 1e-9);
        let n2 = |l: &[Level]| densest(l, 0..l.len()).map(|d| d.value_m);
        close_option("densest", n2(&feet).map(|z| z * 0.3048), n2(&levels), 1e-9);
        close_option("mixed layer", temperature_step_depth_m(&feet, 0.5 / 0.3048, 1.0).map(|z| z * 0.3048), temperature_step_depth_m(&levels, 0.5, 1.0), 1e-9);
    }

    #[test]
    fn a_reading_put_in_on_the_line_moves_no_depth(levels in water(), at in any::<prop::sample::Index>()) {
        let exact: Vec<Level> = levels.iter().map(|l| Level { sd_c: 0.0, ..*l }).collect();
        let at = at.index(exact.len() - 1);
        let (p, q) = (exact[at], exact[at + 1]);
        let mut more = exact.clone();
        more.insert(at + 1, Level::bare((p.depth_m + q.depth_m) / 2.0, (p.temp_c + q.temp_c) / 2.0, 0.0));
        let middle = |l: &[Level]| { let s = steps(l); span(&s, 0..s.len(), &[]).map(|s| (s.thermocline.value_m, s.thermocline.span_top_m, s.thermocline.span_bottom_m)) };
        let (a, b) = (middle(&exact), middle(&more));
        close_option("thermocline", b.map(|t| t.0), a.map(|t| t.0), 1e-9);
        close_option("span top", b.map(|t| t.1), a.map(|t| t.1), 1e-9);
        close_option("mixed layer", temperature_step_depth_m(&more, 0.5, 1.0), temperature_step_depth_m(&exact, 0.5, 1.0), 1e-9);
        let edges = |l: &[Level]| runs(l, &steps(l), 1.0).iter().map(|r| (r.top_m, r.bottom_m)).collect::<Vec<_>>();
        prop_assert_eq!(edges(&more), edges(&exact));
        close_option("first steep", first_steep(&steps(&more), 1.0).map(|f| f.0), first_steep(&steps(&exact), 1.0).map(|f| f.0), 1e-9);
    }

    #[test]
    fn noisier_readings_never_narrow_a_span_or_a_range(levels in water()) {
        let noisier: Vec<Level> = levels.iter().map(|l| Level { sd_c: 0.3, ..*l }).collect();
        let told = |l: &[Level]| { let s = steps(l); span(&s, 0..s.len(), &[]).map(|s| s.thermocline) };
        if let (Some(a), Some(b)) = (told(&levels), told(&noisier)) {
            prop_assert!(b.span_top_m <= a.span_top_m && b.span_bottom_m >= a.span_bottom_m);
            prop_assert_eq!(a.value_m, b.value_m);
        }
        if let (Some(MixedLayer::At { low_m: a, high_m: b, .. }), Some(MixedLayer::At { low_m: c, high_m: d, .. })) =
            (mixed_layer(&levels, 0.5, 1.0), mixed_layer(&noisier, 0.5, 1.0)) {
            prop_assert!(c <= a && d >= b);
        }
        prop_assert!(runs(&noisier, &steps(&noisier), 1.0).len() <= runs(&levels, &steps(&levels), 1.0).len());
    }

    #[test]
    fn a_larger_step_is_never_reached_sooner(levels in water(), a in 1_u32..30, b in 1_u32..30) {
        let (small, large) = (f64::from(a.min(b)) / 10.0, f64::from(a.max(b)) / 10.0);
        if let Some(far) = temperature_step_depth_m(&levels, 0.5, large) {
            prop_assert!(temperature_step_depth_m(&levels, 0.5, small).is_some_and(|near| near <= far + 1e-9));
        }
        if let Some(far) = density_rise_depth_m(&levels, 0.5, large) {
            prop_assert!(density_rise_depth_m(&levels, 0.5, small).is_some_and(|near| near <= far + 1e-9));
        }
    }

    #[test]
    fn at_the_crossing_the_water_has_moved_by_the_step(levels in water()) {
        let at = |z: f64| {
            let below = levels.iter().position(|l| l.depth_m >= z).unwrap_or(levels.len() - 1).max(1);
            let (p, q) = (&levels[below - 1], &levels[below]);
            p.temp_c + (z - p.depth_m) / (q.depth_m - p.depth_m) * (q.temp_c - p.temp_c)
        };
        if let Some(z) = temperature_step_depth_m(&levels, 0.5, 1.0) {
            let reference_c = at(levels[0].depth_m.max(0.5));
            close("moved", (at(z) - reference_c).abs(), 1.0, 1e-6);
        }
    }

    #[test]
    fn water_that_cools_downward_above_4_degrees_is_neither_unstable_nor_inverse(levels in stable_water()) {
        prop_assert!(steps(&levels).iter().all(|s| s.densing_kg_m3_per_m >= -1e-12));
        prop_assert_eq!(overturn(&levels), None);
        let (found, _) = facts(&levels, 0.1, Density::Tanaka).unwrap();
        prop_assert!(!matches!(state(&found, false), State::Unstable | State::Inverse));
    }

    #[test]
    fn the_densest_step_lies_at_or_above_the_steepest(levels in stable_water()) {
        // Warm water swells more per degree, and here the warmer water is always above.
        let steps = steps(&levels);
        let steepest = span(&steps, 0..steps.len(), &[]).map(|s| s.thermocline.value_m);
        if let (Some(steepest), Some(by_density)) = (steepest, densest(&levels, 0..steps.len())) {
            prop_assert!(by_density.value_m <= steepest + 1e-9);
        }
    }

    #[test]
    fn turned_upside_down_stable_water_is_never_layered(levels in stable_water()) {
        let depths: Vec<f64> = levels.iter().map(|l| l.depth_m).collect();
        let over: Vec<Level> = depths.iter().zip(levels.iter().rev()).map(|(z, l)| Level::bare(*z, l.temp_c, 0.0)).collect();
        let (found, _) = facts(&over, 0.0, Density::Tanaka).unwrap();
        prop_assert!(matches!(state(&found, false), State::Unstable | State::Mixed));
        prop_assert!(found.density_gain <= 1e-12);
    }

    #[test]
    fn density_falls_on_either_side_of_its_greatest(a in 4.0..40.0_f64, b in 4.0..40.0_f64, c in -0.5..3.98_f64, d in -0.5..3.98_f64) {
        prop_assert!((a - b) * (density_kg_m3(a) - density_kg_m3(b)) <= 0.0);
        prop_assert!((c - d) * (density_kg_m3(c) - density_kg_m3(d)) >= 0.0);
    }
}

#[test]
fn a_hundred_thousand_readings_take_a_moment() {
    let readings: Vec<Reading> = (0..100_000)
        .map(|i| {
            let depth_m = f64::from(i) * 0.0005;
            reading(depth_m, 8.0 + 14.0 / (1.0 + libm::exp((depth_m - 20.0) / 3.0)), Leg::Down)
        })
        .collect();
    let a = analyse(&Cast { readings, digit_c: 0.0001, bed_m: None }, &class());
    assert_eq!((a.state, a.profile.len()), (State::Stratified, 100_000));
}

#[test]
fn a_hundred_thousand_steps_up_and_down_take_a_moment() {
    let readings: Vec<Reading> = (0..100_000_u32)
        .map(|i| Reading {
            switch: Switch::Kept,
            ..reading(f64::from(i) * 0.01, [20.0, 12.0][i as usize % 2], Leg::Down)
        })
        .collect();
    let a = analyse(&Cast { readings, digit_c: 0.1, bed_m: None }, &class());
    assert_eq!((a.state, a.profile.len()), (State::Unstable, 100_000));
    let steps = steps(&a.profile);
    let others: Vec<_> = (2..steps.len()).step_by(2).map(|i| i..i + 1).collect();
    let found = span(&steps, 0..steps.len(), &others).map(|s| s.thermocline.value_m);
    assert_eq!(found, Some(0.005), "every layer but the first is another one");
}

#[test]
fn ten_thousand_readings_at_one_depth_are_one_level() {
    let readings: Vec<Reading> =
        (0..10_000).map(|i| reading(2.0, 15.0 + f64::from(i % 5), Leg::Down)).collect();
    let a = analyse(&Cast { readings, digit_c: 0.1, bed_m: None }, &class());
    assert_eq!((a.state, a.profile.len()), (State::TooFew, 1));
    close("their mean", a.profile[0].temp_c, 17.0, 1e-9);
}
