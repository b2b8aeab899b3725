//! Laws of comparing: a cast and itself differ by chance, changed sides turn signs and nothing else, one offset on both
//! changes nothing, and no input, however wild, breaks anything.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use layercast_core::compare::{
    Cause, Comparison, Fit, Known, Options, Pair, Refusal, Side, Sun, Verdict, compare,
};
use layercast_core::{Density, Level};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

/// Depths of a cable and temperatures of lake water that mostly falls, every value with its own deviation and legs.
fn side() -> impl Strategy<Value = Side> {
    let rows = prop::collection::vec((1_u32..4, -5_i32..30, 5_u32..30, 1_u8..3), 6..20);
    (rows, 60_i32..280, prop::option::of(8.0..20.0_f64), known()).prop_map(|(rows, top, bed_m, known)| {
        let (mut quarters, mut tenths) = (0, f64::from(top));
        let levels = rows.into_iter().map(|(step, drop, sd, legs)| {
            let level = Level {
                legs,
                ..Level::bare(f64::from(quarters) * 0.25, tenths / 10.0, f64::from(sd) / 100.0)
            };
            quarters += step;
            tenths = (tenths - f64::from(drop)).max(2.0);
            level
        });
        Side { levels: levels.collect(), digit_c: 0.1, bed_m, known }
    })
}

fn known() -> impl Strategy<Value = Known> {
    let some = |range| prop::option::weighted(0.2, range);
    (some(-0.5..0.5_f64), some(-0.6..0.6_f64), some(0.9..1.1_f64))
        .prop_map(|(ice_c, deeper_m, stretch)| Known { ice_c, deeper_m, stretch })
}

/// Any number a damaged file may hold.
fn wild() -> impl Strategy<Value = f64> {
    prop_oneof![
        4 => -1.0..25.0_f64,
        1 => Just(f64::NAN),
        1 => prop_oneof![Just(f64::INFINITY), Just(f64::NEG_INFINITY), Just(1e308), Just(-1e308), Just(5e-324)],
        1 => any::<f64>(),
        1 => Just(2.0),
    ]
}

fn wild_side() -> impl Strategy<Value = Side> {
    let level = (wild(), wild(), wild(), any::<u8>()).prop_map(|(depth_m, temp_c, sd_c, legs)| Level {
        depth_m,
        temp_c,
        sd_c,
        density: f64::NAN,
        legs,
        down_c: Some(f64::NAN),
        up_c: None,
    });
    let known = (prop::option::of(wild()), prop::option::of(wild()), prop::option::of(wild()))
        .prop_map(|(ice_c, deeper_m, stretch)| Known { ice_c, deeper_m, stretch });
    (prop::collection::vec(level, 0..40), wild(), prop::option::of(wild()), known)
        .prop_map(|(levels, digit_c, bed_m, known)| Side { levels, digit_c, bed_m, known })
}

/// Every number that is promised.
fn numbers(found: &Comparison) -> Vec<f64> {
    let mut all = vec![found.rms_c, found.mean_c, found.chance_score];
    for at in &found.shared {
        all.extend([at.depth_m, at.a_c, at.b_c, at.difference_c, at.sd_c]);
    }
    for fit in found.explanations.iter().filter_map(|tried| tried.fit.as_ref().ok()) {
        all.extend([fit.value, fit.u, fit.rms_left_c, fit.explains, fit.score]);
        all.extend(fit.predicted_c.iter().chain(&fit.left_c));
        all.extend(fit.slant_deg.iter().chain(&fit.fade_m));
        all.extend(
            fit.heat.iter().flat_map(|heat| [heat.gained_j_m2, heat.u_j_m2, heat.power_w_m2, heat.u_w_m2]),
        );
    }
    all.extend(
        found.heat.iter().flat_map(|heat| [heat.gained_j_m2, heat.u_j_m2, heat.power_w_m2, heat.u_w_m2]),
    );
    all.extend(found.chance.iter().flat_map(|level| [level.gain, level.misfit, level.false_alarms]));
    all.extend(
        found.recorded.iter().flat_map(|r| [r.offset_c, r.deeper_m, r.stretch, r.rms_before_c]).flatten(),
    );
    all
}

fn turned(fit: &Fit) -> Fit {
    let minus = |list: &[f64]| list.iter().map(|x| -x).collect();
    Fit { value: -fit.value, predicted_c: minus(&fit.predicted_c), left_c: minus(&fit.left_c), ..fit.clone() }
}

proptest! {
    #![proptest_config(ProptestConfig { rng_seed: RngSeed::Fixed(20_261_126), cases: 96, ..ProptestConfig::default() })]

    #[test]
    fn a_cast_and_itself_differ_by_chance(a in side(), minutes in 1.0..500.0_f64) {
        let options = Options { minutes_apart: Some(minutes), ..Options::default() };
        match Pair::new(&a, &a, &options) {
            Ok(pair) => {
                let found = pair.comparison(&pair.chance(0, 200));
                prop_assert_eq!(found.verdict, Some(Verdict::Chance));
                prop_assert!(found.rms_c == 0.0 && found.chance_score == 0.0);
                for cause in Cause::ALL {
                    if let Some(fit) = found.fit(cause) {
                        prop_assert!(fit.value == 0.0 && fit.explains == 0.0 && fit.score > 0.0, "{:?}", fit);
                        prop_assert_eq!(fit.leaves_more_than_chance, Some(false));
                    }
                }
                prop_assert_eq!(found.heat.map(|heat| (heat.power_w_m2, heat.sun)), Some((0.0, Sun::Could)));
            }
            Err(refused) => prop_assert_eq!(refused, Refusal::TooLittleWater),
        }
    }

    #[test]
    fn changed_sides_turn_every_sign_and_nothing_else(a in side(), b in side(), minutes in 1.0..500.0_f64) {
        let forth = Options { minutes_apart: Some(minutes), ..Options::default() };
        let back = Options { minutes_apart: Some(-minutes), ..forth };
        let (one, other) = match (Pair::new(&a, &b, &forth), Pair::new(&b, &a, &back)) {
            (Ok(one), Ok(other)) => (one, other),
            (one, other) => {
                prop_assert_eq!(one.err(), other.err());
                return Ok(());
            }
        };
        let trials = one.chance(0, 200);
        prop_assert_eq!(trials.get(..5).map(<[_]>::to_vec), Some(other.chance(0, 5)));
        let (one, other) = (one.comparison(&trials), other.comparison(&trials));
        prop_assert_eq!((one.best, one.verdict, one.chance), (other.best, other.verdict, other.chance));
        prop_assert_eq!(&one.cannot_be_told_from, &other.cannot_be_told_from);
        prop_assert_eq!((one.rms_c, one.mean_c, one.chance_score), (other.rms_c, -other.mean_c, other.chance_score));
        prop_assert_eq!(one.heat, other.heat);
        for (p, q) in one.shared.iter().zip(&other.shared) {
            prop_assert_eq!((p.a_c, p.b_c, p.difference_c, p.sd_c), (q.b_c, q.a_c, -q.difference_c, q.sd_c));
        }
        for cause in Cause::ALL {
            prop_assert_eq!(one.fit(cause).cloned(), other.fit(cause).map(turned));
        }
        if let (Some(p), Some(q)) = (one.recorded, other.recorded) {
            prop_assert_eq!((p.offset_c, p.deeper_m), (q.offset_c.map(|c| -c), q.deeper_m.map(|m| -m)));
            prop_assert_eq!((p.rms_before_c, p.rms_after_c), (q.rms_before_c, q.rms_after_c));
            let ratio = p.stretch.zip(q.stretch).map_or(1.0, |(p, q)| (1.0 + p) * (1.0 + q));
            prop_assert!((ratio - 1.0).abs() < 1e-12);
        }
        prop_assert_eq!(one.recorded.is_some(), other.recorded.is_some());
    }

    #[test]
    fn one_offset_on_both_changes_nothing(a in side(), b in side(), warmer_tenths in 1_i32..80) {
        // But for moved water: how a layer rocks hangs on densities, and those on the temperatures themselves.
        let warmer = |side: &Side| {
            let level = |l: &Level| Level { temp_c: l.temp_c + f64::from(warmer_tenths) / 10.0, ..*l };
            Side { levels: side.levels.iter().map(level).collect(), ..side.clone() }
        };
        let found = |a: &Side, b: &Side| Pair::new(a, b, &Options::default()).map(|pair| pair.comparison(&[]));
        match (found(&a, &b), found(&warmer(&a), &warmer(&b))) {
            (Ok(one), Ok(other)) => {
                for (p, q) in one.shared.iter().zip(&other.shared) {
                    prop_assert!((p.difference_c - q.difference_c).abs() < 1e-9 && (p.sd_c - q.sd_c).abs() < 1e-9);
                }
                prop_assert!((one.chance_score - other.chance_score).abs() <= 1e-6 * one.chance_score);
                for cause in [Cause::Offset, Cause::WarmTop] {
                    if let (Some(p), Some(q)) = (one.fit(cause), other.fit(cause)) {
                        prop_assert!((p.value - q.value).abs() < 1e-6 * p.u.max(1.0), "{:?} {:?}", p, q);
                    }
                }
                // A search may end at the other of two equal dips; one that fits as well does.
                for cause in [Cause::Zero, Cause::Stretch] {
                    if let (Some(p), Some(q)) = (one.fit(cause), other.fit(cause)) {
                        prop_assert!((p.explains - q.explains).abs() < 0.02, "{:?} {:?}", p, q);
                    }
                }
            }
            (one, other) => prop_assert_eq!(one.err(), other.err()),
        }
    }

    #[test]
    fn the_order_of_levels_does_not_matter(a in side(), b in side()) {
        let reversed = Side { levels: a.levels.iter().rev().copied().collect(), ..a.clone() };
        let found = |a: &Side| Pair::new(a, &b, &Options::default()).map(|pair| pair.comparison(&[]));
        prop_assert_eq!(found(&a), found(&reversed));
    }

    #[test]
    fn no_input_breaks_anything(
        a in wild_side(),
        b in prop_oneof![wild_side(), side()],
        minutes in prop::option::of(wild()),
        mark_sd_m in wild(),
        salinity in wild(),
        seed: u64,
    ) {
        let density = Density::TanakaSalt { salinity };
        let options = Options { mark_sd_m, minutes_apart: minutes, density, seed };
        if let Ok(pair) = Pair::new(&a, &b, &options) {
            let trials = pair.chance(usize::MAX - 1, 5).into_iter().chain(pair.chance(0, 200)).collect::<Vec<_>>();
            prop_assert!(trials.iter().all(|trial| trial.gain.is_finite() && trial.misfit.is_finite()));
            let found = pair.comparison(&trials);
            let numbers = numbers(&found);
            prop_assert!(numbers.iter().all(|x| x.is_finite()), "{:?}", found);
            prop_assert!(found.verdict.is_some() && found.best.is_some());
        }
    }
}

#[test]
fn a_million_levels_are_averaged_down() {
    let levels: Vec<Level> = (0..1_000_000)
        .map(|i| f64::from(i) * 1e-5)
        .map(|z| Level::bare(z, 8.0 + 14.0 / (1.0 + libm::exp((z - 5.0) / 0.5)), 0.1))
        .collect();
    let a = Side::bare(levels.clone());
    let b = Side::bare(levels.into_iter().map(|l| Level { temp_c: l.temp_c + 0.4, ..l }).collect());
    let found = compare(&a, &b, &Options::default()).unwrap();
    assert!(found.thinned && found.shared.len() == 64);
    assert_eq!(found.verdict, Some(Verdict::Cause(Cause::Offset)));
    assert!((found.fit(Cause::Offset).unwrap().value - 0.4).abs() < 1e-9);
}

#[test]
fn equal_depths_are_one_depth() {
    let same = Side::bare(vec![Level::bare(2.0, 15.0, 0.1); 1_000]);
    assert_eq!(compare(&same, &same, &Options::default()).err(), Some(Refusal::TooFewDepths));
    let empty = Side::bare(Vec::new());
    assert_eq!(compare(&empty, &same, &Options::default()).err(), Some(Refusal::TooFewDepths));
}
