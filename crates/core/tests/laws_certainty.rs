//! What must hold of ranges by trials, whatever the cast.
//!
//! Long because each law is held over casts of every kind.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::any::{wild_cast, wild_number};
use common::{Noise, close, close_option, depths, reading, smooth_lake_c, two_legs};
use layercast_core::certainty::{
    Certainty, Depth, Plan, Refused, SEED, TRIALS, Unsure, apply, certainty, summary, trials, water,
};
use layercast_core::water::density::Density;
use layercast_core::{Analysis, Cast, Leg, Level, Method, MixedLayer, RangesFrom, Reading, State, analyse};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

fn config() -> ProptestConfig {
    ProptestConfig { rng_seed: RngSeed::Fixed(20_260_104), failure_persistence: None, ..Default::default() }
}

fn leg() -> impl Strategy<Value = Leg> {
    prop_oneof![Just(Leg::Down), Just(Leg::Up), Just(Leg::Unknown)]
}

/// Scattered readings of lake water, mostly layered or inverse somewhere.
fn lake() -> impl Strategy<Value = Cast> {
    let falling = (20_u32..280, prop::collection::vec(-3_i32..30, 4..24), leg());
    falling.prop_map(|(top, drops, leg)| {
        let mut tenths = f64::from(top);
        let readings = drops.into_iter().enumerate().map(|(i, drop)| {
            tenths = (tenths - f64::from(drop)).max(3.0);
            reading(i as f64 * 0.5, tenths / 10.0, leg)
        });
        Cast { readings: readings.collect(), digit_c: 0.1, bed_m: None }
    })
}

fn wild_unsure() -> impl Strategy<Value = Unsure> {
    (wild_number(), wild_number(), wild_number(), wild_number()).prop_map(
        |(offset_half_c, mark_sd_m, stretch_sd, angle_half_deg)| Unsure {
            offset_half_c,
            mark_sd_m,
            stretch_sd,
            angle_half_deg,
            between_marks: true,
        },
    )
}

fn planned(cast: &Cast, unsure: &Unsure) -> (Analysis, Plan) {
    let analysis = analyse(cast, &Method::default());
    let plan = Plan::new(cast, &analysis, unsure);
    (analysis, plan)
}

/// Ordered, finite, and all shares add up.
fn whole(certainty: &Certainty) {
    for ranged in &certainty.depths {
        let ends = [ranged.low_m, ranged.median_m, ranged.high_m];
        let told: Vec<f64> = ends.iter().flatten().copied().collect();
        assert!(told.iter().all(|z| z.is_finite()), "{ranged:?}");
        assert!(told.iter().zip(told.iter().skip(1)).all(|(a, b)| a <= b), "{ranged:?}");
        // Whatever is told is told from the top: the deeper ends are the first to lie beyond.
        assert!(ends.iter().skip_while(|e| e.is_some()).all(|e| e.is_none()), "{ranged:?}");
        assert!((0.0..=1.0).contains(&ranged.none_share) && (0.0..=1.0).contains(&ranged.beyond_share));
        if let Some(shares) = certainty.shares(ranged.depth) {
            let sum: f64 = shares.iter().map(|s| s.share).sum();
            close("shares", sum + ranged.none_share, 1.0, 1e-9);
        }
    }
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn whatever_comes_in_the_ranges_are_whole(
        cast in prop_oneof![wild_cast(), lake()], unsure in wild_unsure(), seed: u64
    ) {
        let (mut analysis, plan) = planned(&cast, &unsure);
        let drawn = trials(&plan, seed, u32::MAX - 20, 30);
        prop_assert_eq!(drawn.len(), 30 * plan.width());
        prop_assert!(drawn.iter().all(|z| *z != f64::NEG_INFINITY));
        let got = summary(&plan, &drawn);
        prop_assert_eq!(got.depths.len(), plan.depths().count());
        prop_assert_eq!(got.count, if plan.width() > 0 { 30 } else { 0 });
        whole(&got);
        apply(&mut analysis, &got);
        if let Some(MixedLayer::At { value_m, low_m, high_m, .. }) = analysis.mixed_layer {
            prop_assert!(low_m <= value_m && value_m <= high_m);
            prop_assert!(high_m <= analysis.profile.last().unwrap().depth_m);
        }
        if let Some(m) = analysis.metalimnion {
            prop_assert!(m.top_low_m <= m.top_m && m.top_m <= m.top_high_m);
            prop_assert!(m.bottom_low_m <= m.bottom_m && m.bottom_high_m.is_none_or(|z| m.bottom_m <= z));
            prop_assert_eq!(m.cut_off, m.bottom_high_m.is_none());
        }
    }

    #[test]
    fn chunks_of_any_size_give_the_same_bits(cast in lake(), seed: u64, size in 1_u32..40) {
        let (_, plan) = planned(&cast, &Unsure::default());
        let at_once = trials(&plan, seed, 0, 120);
        let mut pieces = Vec::new();
        for from in (0..120).step_by(size as usize) {
            pieces.extend(trials(&plan, seed, from, size.min(120 - from)));
        }
        let bits = |drawn: &[f64]| drawn.iter().map(|z| z.to_bits()).collect::<Vec<_>>();
        prop_assert_eq!(bits(&at_once), bits(&pieces));
        // Trials in any order make the same ranges.
        let backwards: Vec<f64> =
            at_once.chunks(plan.width().max(1)).rev().flatten().copied().collect();
        prop_assert_eq!(summary(&plan, &at_once), summary(&plan, &backwards));
    }

    #[test]
    fn deeper_marks_make_deeper_ranges(cast in lake(), quarters in 1_u32..20) {
        let at = |shift_m: f64| {
            let mut shifted = cast.clone();
            shifted.readings.iter_mut().for_each(|r| r.depth_m += shift_m);
            let (_, plan) = planned(&shifted, &Unsure::READINGS_ONLY);
            certainty(&plan, 7, 60)
        };
        // From 2 m on nothing is near the surface.
        let shift_m = f64::from(quarters) * 0.25;
        let (high, low) = (at(2.0), at(2.0 + shift_m));
        prop_assert_eq!(high.depths.len(), low.depths.len());
        for (a, b) in high.depths.iter().zip(&low.depths) {
            let deeper = |z: Option<f64>| z.map(|z| z + shift_m);
            close_option("low", b.low_m, deeper(a.low_m), 1e-9);
            close_option("median", b.median_m, deeper(a.median_m), 1e-9);
            close_option("high", b.high_m, deeper(a.high_m), 1e-9);
            prop_assert_eq!((b.none_share, b.beyond_share), (a.none_share, a.beyond_share));
        }
    }

    #[test]
    fn with_nothing_unsure_every_trial_is_the_analysis(
        cast in lake(),
        density in prop_oneof![Just(Density::default()), Just(Density::Eos80 { salinity: 5.0 })],
    ) {
        // Both legs alike and no last decimal: s is 0.
        let mut twice = cast.clone();
        twice.digit_c = 0.0;
        twice.readings = [Leg::Down, Leg::Up]
            .iter()
            .flat_map(|leg| cast.readings.iter().map(|r| Reading { leg: *leg, ..*r }))
            .collect();
        let analysis = analyse(&twice, &Method { density, ..Method::default() });
        let plan = Plan::new(&twice, &analysis, &Unsure::READINGS_ONLY);
        prop_assume!(analysis.pairs.s_used_c == 0.0);
        let got = certainty(&plan, SEED, 20);
        for ranged in &got.depths {
            match ranged.value_m {
                Some(value_m) => {
                    for end_m in [ranged.low_m, ranged.median_m, ranged.high_m] {
                        close("end", end_m.unwrap(), value_m, 1e-9);
                    }
                    prop_assert_eq!(ranged.none_share + ranged.beyond_share, 0.0);
                }
                None => prop_assert_eq!(ranged.beyond_share, 1.0),
            }
        }
    }
}

/// A summer lake read down and up.
fn summer(width_m: f64, offset_c: f64) -> Cast {
    let mut noise = Noise::seeded(5);
    let depths_m = depths(17, 0.5);
    let mut leg = || -> Vec<f64> {
        depths_m.iter().map(|z| noise.tenths(smooth_lake_c(*z, 4.1, width_m), 0.1) + offset_c).collect()
    };
    let (down_c, up_c) = (leg(), leg());
    two_legs(&depths_m, &down_c, &up_c, 0.1)
}

#[test]
fn an_offset_of_the_probe_moves_no_range() {
    let ranges = |offset_c: f64| {
        let (_, plan) = planned(&summer(0.5, offset_c), &Unsure::default());
        certainty(&plan, SEED, 500)
    };
    let (plain, warm) = (ranges(0.0), ranges(2.0));
    assert_eq!(plain.depths.len(), 4);
    for (a, b) in plain.depths.iter().zip(&warm.depths) {
        close_option("low", a.low_m, b.low_m, 1e-9);
        close_option("high", a.high_m, b.high_m, 1e-9);
    }
    let (_, plan) = planned(&summer(0.5, 0.0), &Unsure { offset_half_c: 5.0, ..Unsure::default() });
    for (a, b) in plain.depths.iter().zip(&certainty(&plan, SEED, 500).depths) {
        close_option("low", a.low_m, b.low_m, 1e-9);
        close_option("high", a.high_m, b.high_m, 1e-9);
    }
}

#[test]
fn more_than_a_million_trials_a_call_are_not_drawn() {
    let (_, plan) = planned(&Cast::default(), &Unsure::default());
    assert_eq!((plan.width(), trials(&plan, 1, 0, u32::MAX).len()), (0, 0));
    assert_eq!(certainty(&plan, 1, 10), Certainty::default());
    assert_eq!(TRIALS, 10_000);
}

#[test]
fn what_is_left_over_of_a_trial_is_cut() {
    let (_, plan) = planned(&summer(0.5, 0.0), &Unsure::default());
    let mut drawn = trials(&plan, 3, 0, 10);
    let want = summary(&plan, &drawn);
    drawn.extend([0.0; 3]);
    assert_eq!(plan.width(), 5);
    assert_eq!(summary(&plan, &drawn), want);
    assert_eq!(summary(&plan, &[0.0; 3]).count, 0);
    assert_eq!(summary(&plan, &[]).of(Depth::Thermocline).unwrap().median_m, None);
}

#[test]
fn ranges_take_the_place_of_propagated_ones_and_say_so() {
    let (mut analysis, plan) = planned(&summer(0.8, 0.0), &Unsure::default());
    let before = analysis.clone();
    apply(&mut analysis, &summary(&plan, &[]));
    assert_eq!(analysis, before, "no trial, no change");
    let got = certainty(&plan, SEED, 2000);
    apply(&mut analysis, &got);
    assert_eq!(analysis.ranges_from, RangesFrom::Trials { count: 2000 });
    assert_eq!(analysis.thermocline, before.thermocline, "the thermocline keeps its span");
    let Some(MixedLayer::At { low_m, high_m, .. }) = analysis.mixed_layer else { panic!("found") };
    let ranged = got.of(Depth::MixedLayer).unwrap();
    assert_eq!((Some(low_m), Some(high_m)), (ranged.low_m, ranged.high_m));
    let m = analysis.metalimnion.unwrap();
    let (top, bottom) = (got.of(Depth::MetalimnionTop).unwrap(), got.of(Depth::MetalimnionBottom).unwrap());
    assert_eq!((Some(m.top_low_m), Some(m.top_high_m)), (top.low_m, top.high_m));
    assert_eq!((Some(m.bottom_low_m), m.bottom_high_m), (bottom.low_m, bottom.high_m));
}

#[test]
fn mixed_water_reaches_the_rule_in_no_trial() {
    let cast = two_legs(&depths(17, 0.5), &[15.0; 17], &[15.1; 17], 0.1);
    let (analysis, plan) = planned(&cast, &Unsure::default());
    assert_eq!(analysis.state, State::Mixed);
    assert_eq!(plan.depths().collect::<Vec<_>>(), [Depth::MixedLayer]);
    let got = certainty(&plan, SEED, 500);
    let mixed = got.of(Depth::MixedLayer).unwrap();
    assert_eq!((mixed.beyond_share, mixed.value_m, mixed.median_m), (1.0, None, None));
    assert_eq!(mixed.refused, None, "at least this deep is an answer");
}

#[test]
fn a_mixed_layer_that_nearly_ends_at_the_last_reading_is_open_below() {
    let depths_m = depths(13, 0.5);
    let rows: Vec<(f64, f64)> = depths_m.into_iter().map(|z| (z, 20.0 - 0.16 * z)).collect();
    let (analysis, plan) = planned(&common::one_series(&rows, 0.1), &Unsure::READINGS_ONLY);
    assert!(matches!(analysis.mixed_layer, Some(MixedLayer::AtLeast { .. })));
    let got = *certainty(&plan, SEED, 2000).of(Depth::MixedLayer).unwrap();
    assert!((0.2..0.8).contains(&got.beyond_share), "{got:?}");
    assert!(got.low_m.is_some() && got.high_m.is_none(), "{got:?}");
}

#[test]
fn a_layer_cut_off_by_the_last_reading_stays_open_below() {
    let temps_c = [22.0, 22.0, 21.8, 21.5, 19.0, 14.5, 10.0];
    let cast = two_legs(&depths(7, 0.5), &temps_c, &temps_c, 0.1);
    let (mut analysis, plan) = planned(&cast, &Unsure::default());
    assert!(analysis.metalimnion.unwrap().cut_off);
    let got = certainty(&plan, SEED, 500);
    let bottom = got.of(Depth::MetalimnionBottom).unwrap();
    assert_eq!((bottom.value_m, bottom.beyond_share, bottom.high_m), (None, 1.0, None));
    let before = analysis.metalimnion.unwrap();
    apply(&mut analysis, &got);
    let after = analysis.metalimnion.unwrap();
    assert_eq!((after.bottom_low_m, after.bottom_high_m), (before.bottom_low_m, None));
}

#[test]
fn a_weak_cast_is_refused_because_its_range_is_half_the_cast() {
    let rows: Vec<(f64, f64)> = depths(13, 0.5).into_iter().map(|z| (z, 18.0 - 0.35 * z)).collect();
    let (analysis, plan) = planned(&common::one_series(&rows, 0.1), &Unsure::default());
    assert_eq!(analysis.state, State::Weak);
    let got = certainty(&plan, SEED, 1000);
    assert_eq!(got.of(Depth::Thermocline).unwrap().refused, Some(Refused::TooWide));
}

#[test]
fn a_cable_at_an_angle_is_never_longer() {
    let unsure = |angle_half_deg| Unsure { angle_half_deg, ..Unsure::READINGS_ONLY };
    let at = |angle| {
        let (_, plan) = planned(&summer(0.3, 0.0), &unsure(angle));
        *certainty(&plan, SEED, 1000).of(Depth::MixedLayer).unwrap()
    };
    let (straight, slant) = (at(0.0), at(20.0));
    // Between 0 and 20 degrees: up to 6 % shallower, 2 % in the mean, as cosines are.
    let shallower = 1.0 - slant.median_m.unwrap() / straight.median_m.unwrap();
    assert!((0.005..0.025).contains(&shallower), "{shallower}");
    assert!(slant.low_m.unwrap() < straight.low_m.unwrap() * 0.97);
}

/// Mean and standard deviation of something about many trials' water.
fn moments(plan: &Plan, of: impl Fn(&[Level]) -> f64) -> (f64, f64) {
    let n = 4000;
    let drawn: Vec<f64> = (0..n).map(|trial| of(&water(plan, 11, trial))).collect();
    let mean = drawn.iter().sum::<f64>() / f64::from(n);
    let sd = (drawn.iter().map(|x| (x - mean) * (x - mean)).sum::<f64>() / f64::from(n)).sqrt();
    (mean, sd)
}

#[test]
fn each_cause_is_drawn_as_large_as_it_is_said_to_be() {
    // Both legs alike and no digit: the readings themselves are sure.
    let depths_m = depths(17, 0.5);
    let temps_c: Vec<f64> = depths_m.iter().map(|z| smooth_lake_c(*z, 4.0, 0.5)).collect();
    let sure = two_legs(&depths_m, &temps_c, &temps_c, 0.0);
    let none = Unsure::READINGS_ONLY;
    let last_m = |l: &[Level]| l[16].depth_m;
    let plan_of = |unsure: Unsure| planned(&sure, &unsure).1;

    let (mean, sd) = moments(&plan_of(Unsure { stretch_sd: 0.02, ..none }), last_m);
    close("stretch, mean", mean, 8.0, 0.01);
    close("stretch, sd", sd, 0.16, 0.006);

    let marks = plan_of(Unsure { mark_sd_m: 0.05, ..none });
    let (mean, sd) = moments(&marks, last_m);
    close("marks, mean", mean, 8.0, 0.004);
    close("marks, sd", sd, 0.05, 0.002);
    let (_, apart) = moments(&marks, |l| l[16].depth_m - l[8].depth_m);
    close("marks are independent", apart, 0.05 * 2_f64.sqrt(), 0.003);
    let (_, capped) = moments(&plan_of(Unsure { mark_sd_m: 1.0, ..none }), last_m);
    close("a sixth of the distance at most", capped, 0.5 / 6.0, 0.004);

    // The mean cosine of angles between 0 and a is sin a / a.
    let (mean, _) = moments(&plan_of(Unsure { angle_half_deg: 30.0, ..none }), last_m);
    close("angle", mean, 8.0 * 0.5 / (std::f64::consts::PI / 6.0), 0.02);

    let offset = plan_of(Unsure { offset_half_c: 0.3, ..none });
    let (mean, sd) = moments(&offset, |l| l[3].temp_c);
    close("offset, mean", mean, temps_c[3], 0.01);
    close("offset, sd: a rectangle", sd, 0.3 / 3_f64.sqrt(), 0.005);
    let (_, apart) = moments(&offset, |l| l[3].temp_c - l[12].temp_c);
    close("one offset for all", apart, 0.0, 1e-9);

    let one_leg: Vec<(f64, f64)> = depths_m.iter().copied().zip(temps_c.iter().copied()).collect();
    let (_, noisy) = planned(&common::one_series(&one_leg, 0.2), &none);
    let (mean, sd) = moments(&noisy, |l| l[3].temp_c);
    close("noise, mean", mean, temps_c[3], 0.005);
    close("noise and rounding together are s", sd, 0.1, 0.004);
}

#[test]
fn marks_stay_in_order_and_under_water() {
    let rows: Vec<(f64, f64)> =
        (0..60).map(|i| (f64::from(i * i) * 0.002, 20.0 - 0.1 * f64::from(i))).collect();
    let unsure = Unsure { mark_sd_m: 1.0, stretch_sd: 0.1, angle_half_deg: 60.0, ..Unsure::default() };
    let (analysis, plan) = planned(&common::one_series(&rows, 0.1), &unsure);
    for trial in 0..500 {
        let drawn = water(&plan, 2, trial);
        assert!(drawn[0].depth_m >= 0.0);
        for ((a, b), (x, y)) in
            drawn.iter().zip(&drawn[1..]).zip(analysis.profile.iter().zip(&analysis.profile[1..]))
        {
            assert!(b.depth_m - a.depth_m >= (y.depth_m - x.depth_m) / 4.0 - 1e-12);
        }
    }
}

#[test]
fn under_ice_the_fastest_warming_and_densing_have_ranges() {
    let temps_c = [0.3, 0.5, 0.8, 1.4, 2.9, 3.4, 3.6, 3.7, 3.8];
    let cast = two_legs(&depths(9, 0.5), &temps_c, &temps_c, 0.1);
    let (analysis, plan) = planned(&cast, &Unsure::default());
    assert_eq!(analysis.state, State::Inverse);
    assert_eq!(plan.depths().collect::<Vec<_>>(), [Depth::FastestWarming, Depth::FastestDensing]);
    let got = certainty(&plan, SEED, 1000);
    let warming = got.of(Depth::FastestWarming).unwrap();
    assert_eq!(warming.value_m, Some(1.75));
    assert!(warming.low_m.unwrap() > 1.4 && warming.high_m.unwrap() < 2.1, "{warming:?}");
    assert!(got.shares(Depth::FastestWarming).unwrap()[3].share > 0.95);
    let densing = got.of(Depth::FastestDensing).unwrap();
    assert_eq!((densing.value_m, densing.refused), (analysis.fastest_densing_m, None));
    assert!((1.0..2.3).contains(&densing.median_m.unwrap()), "{densing:?}");
}

#[test]
fn a_days_warming_has_its_own_range_above_the_seasons() {
    let temps_c = [27.0, 26.5, 25.0, 25.0, 24.9, 24.9, 24.8, 22.0, 17.0, 13.0, 12.5, 12.4, 12.4];
    let cast = two_legs(&depths(13, 0.5), &temps_c, &temps_c, 0.1);
    let (mut analysis, plan) = planned(&cast, &Unsure::default());
    let sought: Vec<Depth> = plan.depths().collect();
    let want = [
        Depth::Thermocline,
        Depth::MixedLayer,
        Depth::MixedLayerSeason,
        Depth::MetalimnionTop,
        Depth::MetalimnionBottom,
        Depth::WarmLayerToday,
    ];
    assert_eq!(sought, want);
    let got = certainty(&plan, SEED, 1000);
    let at = |depth| *got.of(depth).unwrap();
    assert!(at(Depth::WarmLayerToday).high_m.unwrap() < 1.2 && at(Depth::Thermocline).low_m.unwrap() > 3.0);
    assert!(at(Depth::MixedLayer).high_m.unwrap() < 1.2, "{:?}", at(Depth::MixedLayer));
    assert!(at(Depth::MixedLayerSeason).low_m.unwrap() > 2.5, "{:?}", at(Depth::MixedLayerSeason));
    apply(&mut analysis, &got);
    let Some(MixedLayer::At { low_m, high_m, .. }) = analysis.mixed_layer_season else { panic!("found") };
    assert_eq!(
        (Some(low_m), Some(high_m)),
        (at(Depth::MixedLayerSeason).low_m, at(Depth::MixedLayerSeason).high_m)
    );
}
