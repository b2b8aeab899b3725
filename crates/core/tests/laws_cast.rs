//! Laws of corrections, lag and pairs: what is undone is as it was, order does not matter, nothing is lost, and no cast or
//! list, however wild, breaks anything.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::any::{wild_cast, wild_number};
use layercast_core::cast::corrections::{Correction, Outcome, Refusal, correct};
use layercast_core::cast::flat_line::flat_line_flags;
use layercast_core::cast::lag::{follow_c, noise_swells, settle_s, share_left, time_constant_s};
use layercast_core::cast::lag_share::lag_share;
use layercast_core::cast::pair_verdicts::{Repeat, pair_verdicts};
use layercast_core::cast::pairs::read_again;
use layercast_core::cast::probe_check::probe_check;
use layercast_core::cast::rate_of_change::rate_of_change_flags;
use layercast_core::certainty::{Depth, Plan, SEED, Unsure, certainty};
use layercast_core::{Cast, Density, Leg, Method, State, analyse};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

/// Any correction; half of them make sense.
fn correction(number: BoxedStrategy<f64>) -> impl Strategy<Value = Correction> {
    let n = number;
    prop_oneof![
        n.clone().prop_map(|ice_c| Correction::ProbeOffset { ice_c }),
        (n.clone(), n.clone(), n.clone()).prop_map(|(ice_c, read_c, true_c)| Correction::ProbeTwoPoint {
            ice_c,
            read_c,
            true_c
        }),
        n.clone().prop_map(|above_water_m| Correction::DepthZero { above_water_m }),
        n.clone().prop_map(|gap_m| Correction::FirstMark { gap_m }),
        n.clone().prop_map(|factor| Correction::Stretch { factor }),
        (n.clone(), n.clone(), n.clone()).prop_map(|(from_m, to_m, angle_deg)| Correction::Slant {
            from_m,
            to_m,
            angle_deg
        }),
        n.prop_map(|r| Correction::Lag { r }),
    ]
}

/// A lake read both ways every half metre by a probe that leaves the share `r` of each step, to the last digit.
fn slow_cast(tops_c: f64, drops_c: &[f64], r: f64) -> Cast {
    let water: Vec<f64> = (drops_c.iter())
        .scan(tops_c, |t, drop| {
            *t -= drop;
            Some(*t)
        })
        .collect();
    let (down, up) = common::lagging(&water, r);
    common::two_legs(&common::depths(water.len(), 0.5), &down, &up, 0.0)
}

/// Drops that leave the water warm enough and stand out nowhere.
fn drops() -> impl Strategy<Value = Vec<f64>> {
    prop::collection::vec(0.0..1.2_f64, 5..16)
}

/// Corrections that make sense with every cast here, one of a kind.
fn good_list() -> Vec<Correction> {
    vec![
        Correction::DepthZero { above_water_m: 0.25 },
        Correction::FirstMark { gap_m: 0.1 },
        Correction::Stretch { factor: 1.02 },
        Correction::Slant { from_m: 1.0, to_m: 3.0, angle_deg: 15.0 },
        Correction::Lag { r: 0.2 },
        Correction::ProbeTwoPoint { ice_c: 0.2, read_c: 20.1, true_c: 20.0 },
    ]
}

fn bits(cast: &Cast) -> String {
    format!("{cast:?}") // as text, so that a number that is none equals itself
}

proptest! {
    #![proptest_config(ProptestConfig { rng_seed: RngSeed::Fixed(20_261_127), ..ProptestConfig::default() })]

    #[test]
    fn nothing_is_lost_whatever_is_corrected(
        cast in wild_cast(),
        list in prop::collection::vec(correction(wild_number().boxed()), 0..8),
    ) {
        let got = correct(&cast, &list);
        prop_assert_eq!(got.applied.len(), list.len());
        prop_assert_eq!(got.cast.readings.len(), cast.readings.len());
        for (after, before) in got.cast.readings.iter().zip(&cast.readings) {
            prop_assert_eq!((after.leg, after.switch), (before.leg, before.switch));
            prop_assert_eq!(after.depth_m.is_finite(), before.depth_m.is_finite());
            prop_assert_eq!(after.temp_c.map(f64::is_finite), before.temp_c.map(f64::is_finite));
        }
        for one in &got.applied {
            if let Outcome::Done { changed, largest } = one.outcome {
                prop_assert!(changed <= cast.readings.len() && largest.is_finite());
                prop_assert_eq!(changed == 0, largest == 0.0);
            }
        }
        analyse(&got.cast, &Method::default());
    }

    #[test]
    fn what_is_refused_might_as_well_not_stand_there(
        cast in wild_cast(),
        list in prop::collection::vec(correction((0.0..25.0_f64).boxed()), 0..8),
    ) {
        let got = correct(&cast, &list);
        let kept: Vec<Correction> = (got.applied.iter())
            .filter(|a| match a.outcome {
                Outcome::Done { .. } | Outcome::Refused(Refusal::PointsTooClose) => true,
                Outcome::Refused(_) => false,
            })
            .map(|a| a.correction)
            .collect();
        prop_assert_eq!(bits(&correct(&cast, &kept).cast), bits(&got.cast));
        prop_assert_eq!(bits(&correct(&cast, &[]).cast), bits(&cast));
    }

    #[test]
    fn a_list_in_any_order_corrects_alike(drops in drops(), order in Just((0..6).collect::<Vec<usize>>()).prop_shuffle()) {
        let cast = slow_cast(24.0, &drops, 0.2);
        let list = good_list();
        let shuffled: Vec<Correction> = order.iter().map(|i| list[*i]).collect();
        let (a, b) = (correct(&cast, &list), correct(&cast, &shuffled));
        prop_assert_eq!(bits(&a.cast), bits(&b.cast));
        for (place, from) in order.iter().enumerate() {
            prop_assert_eq!(a.applied[*from], b.applied[place]);
        }
    }

    #[test]
    fn lag_put_in_is_found_and_taken_out(drops in drops(), r in 0.02..0.5_f64) {
        let cast = slow_cast(24.0, &drops, r);
        let found = lag_share(&cast).unwrap();
        let changes = drops[1..].iter().any(|d| *d > 0.3);
        if changes {
            prop_assert!((found.r - r).abs() < 1e-6, "{:?}", found);
        }
        let got = correct(&cast, &[Correction::Lag { r }]);
        if !found.sign_fits {
            prop_assert_eq!(got.applied[0].outcome, Outcome::Refused(Refusal::WrongSign));
            return Ok(());
        }
        let n = drops.len();
        let mut water_c = 24.0;
        for (i, drop) in drops.iter().enumerate() {
            water_c -= drop;
            let (down, up) = (&got.cast.readings[i], &got.cast.readings[2 * n - 1 - i]);
            prop_assert!(i == 0 || (down.temp_c.unwrap() - water_c).abs() < 1e-9);
            prop_assert!(i == n - 1 || (up.temp_c.unwrap() - water_c).abs() < 1e-9);
        }
    }

    #[test]
    fn lag_does_not_ask_how_a_cast_was_written_down(drops in drops(), r in 0.0..0.9_f64, seed in 0_usize..1000) {
        let cast = slow_cast(24.0, &drops, r);
        let mut other = cast.clone();
        let n = other.readings.len();
        (0..n).for_each(|i| other.readings.swap(i, (i * 7 + seed) % n));
        prop_assert_eq!(lag_share(&cast), lag_share(&other));
        // Nor where zero is, nor how much the probe is off.
        let moved = [Correction::DepthZero { above_water_m: 0.25 }, Correction::ProbeOffset { ice_c: 0.5 }];
        let (a, b) = (lag_share(&cast).unwrap(), lag_share(&correct(&cast, &moved).cast).unwrap());
        prop_assert!((a.r - b.r).abs() < 1e-6 && a.depths == b.depths);
    }

    #[test]
    fn lag_of_any_cast_is_a_share(cast in wild_cast()) {
        if let Some(found) = lag_share(&cast) {
            prop_assert!((0.0..=0.95).contains(&found.r) && found.depths >= 1, "{:?}", found);
            prop_assert!(found.apart_c.is_finite() && found.apart_after_c <= found.apart_c + 1e-9, "{:?}", found);
        }
    }

    #[test]
    fn an_offset_moves_no_step_and_a_stretch_every_depth(drops in drops(), ice_c in -3.0..3.0_f64, factor in 0.9..1.1_f64) {
        let cast = slow_cast(26.0, &drops, 0.0);
        let as_taken = analyse(&cast, &Method::default());
        let offset = analyse(&correct(&cast, &[Correction::ProbeOffset { ice_c }]).cast, &Method::default());
        for (a, b) in as_taken.steps.iter().zip(&offset.steps) {
            prop_assert!((a.cooling_c_per_m - b.cooling_c_per_m).abs() < 1e-9);
        }
        let stretched = analyse(&correct(&cast, &[Correction::Stretch { factor }]).cast, &Method::default());
        prop_assert_eq!(stretched.profile.len(), as_taken.profile.len());
        for (a, b) in as_taken.profile.iter().zip(&stretched.profile) {
            prop_assert!((a.depth_m * factor - b.depth_m).abs() < 1e-9 && a.temp_c == b.temp_c);
        }
    }

    #[test]
    fn every_pair_has_its_verdict(cast in wild_cast()) {
        let found = analyse(&cast, &Method::default());
        let verdicts = pair_verdicts(&found.profile, &found.steps);
        prop_assert_eq!(verdicts.len(), found.pairs.count);
        for v in verdicts {
            prop_assert!(v.allowed_c >= 0.2 && v.d_c.is_finite());
            prop_assert_eq!(v.verdict == Repeat::ReadAgain, read_again(v.d_c, (v.allowed_c - 0.2) * 10.0));
        }
        let (s, sd, limit) = (found.pairs.s_c, found.pairs.sd_c, found.pairs.repeatability_c);
        prop_assert_eq!((s.is_some(), sd.is_some()), (found.pairs.count > 0, found.pairs.count > 1));
        prop_assert!([s, sd, limit].into_iter().flatten().all(f64::is_finite));
    }

    #[test]
    fn the_method_decides_the_densities(
        drops in drops(),
        salinity in prop_oneof![0.0..20.0_f64, Just(f64::NAN), Just(-1.0), Just(1e308)],
    ) {
        let cast = slow_cast(24.0, &drops, 0.0);
        for density in [Density::TanakaSalt { salinity }, Density::Eos80 { salinity }, Density::Kell] {
            let found = analyse(&cast, &Method { density, ..Method::default() });
            let used = if density.salinity_problem().is_none() { density } else { Density::Tanaka };
            prop_assert_eq!(found.method.density, used);
            prop_assert!(found.profile.iter().all(|l| l.density == used.kg_m3(l.temp_c)));
            let facts = found.facts.unwrap();
            let gain = used.kg_m3(facts.bottom_c) - used.kg_m3(facts.top_c);
            prop_assert_eq!(facts.density_gain, gain);
        }
    }

    #[test]
    fn a_slow_probe_never_leaves_the_water_it_was_in(
        water in prop::collection::vec((0.0..30.0_f64, 0.0..30.0_f64), 1..30),
        tau_s in 0.0..100.0_f64,
    ) {
        let samples: Vec<(f64, f64)> = (water.iter())
            .scan(0.0, |now, (wait, t)| {
                *now += wait;
                Some((*now, *t))
            })
            .collect();
        let got = follow_c(&samples, tau_s);
        prop_assert_eq!(got.len(), samples.len());
        let (mut low, mut high) = (f64::INFINITY, f64::NEG_INFINITY);
        for ((_, water_c), probe_c) in samples.iter().zip(got) {
            (low, high) = (low.min(*water_c), high.max(*water_c));
            prop_assert!(probe_c >= low - 1e-9 && probe_c <= high + 1e-9);
        }
    }

    #[test]
    fn series_in_time_take_anything(samples in prop::collection::vec((wild_number(), prop::option::of(wild_number())), 0..30), a in wild_number(), b in wild_number()) {
        prop_assert_eq!(rate_of_change_flags(&samples, a, Some(b)).len(), samples.len());
        prop_assert_eq!(flat_line_flags(&samples, a, b, 0.1).len(), samples.len());
        let water: Vec<(f64, f64)> = samples.iter().map(|(s, t)| (*s, t.unwrap_or(f64::NAN))).collect();
        prop_assert!(follow_c(&water, a).iter().all(|t| t.is_finite()));
        prop_assert!(settle_s(a, b, 20.0).is_none_or(|s| s >= 0.0 && s.is_finite()));
        prop_assert!(time_constant_s(a, b).is_none_or(|s| s > 0.0 && s.is_finite()));
        prop_assert!((0.0..=1.0).contains(&share_left(a)) && noise_swells(a).is_none_or(|n| n >= 1.0));
    }

    #[test]
    fn a_probe_check_takes_anything(
        ice in prop::collection::vec(wild_number(), 0..5),
        room in prop::option::of((prop::collection::vec(wild_number(), 0..5), wild_number())),
    ) {
        let room = room.as_ref().map(|(readings, true_c)| (readings.as_slice(), *true_c));
        if let Some(got) = probe_check(&ice, room) {
            prop_assert!(!got.worst_c.is_nan());
            if let Some(one) = got.correction {
                let cast = Cast { readings: vec![common::reading(1.0, 20.0, Leg::Down)], ..Cast::default() };
                let outcome = correct(&cast, &[one]).applied[0].outcome;
                prop_assert!(matches!(outcome, Outcome::Done { .. }), "{:?}: {:?}", one, outcome);
            }
        }
    }
}

#[test]
fn trials_know_the_salt_of_the_method() {
    // Between 6 and 4 °C fresh water hardly changes: mixed. With salt its greatest density lies below zero: a weak layer.
    let cast = common::two_legs(
        &common::depths(7, 1.0),
        &[6.0, 6.0, 5.6, 5.0, 4.4, 4.0, 4.0],
        &[6.0, 6.0, 5.6, 5.0, 4.4, 4.0, 4.0],
        0.1,
    );
    let at = |density| {
        let found = analyse(&cast, &Method { density, ..Method::default() });
        let plan = Plan::new(&cast, &found, &Unsure::default());
        (found.state, certainty(&plan, SEED, 200).of(Depth::Thermocline).map(|t| t.none_share))
    };
    assert_eq!(at(Density::Tanaka), (State::Mixed, None));
    let (state, none_share) = at(Density::TanakaSalt { salinity: 20.0 });
    assert_eq!(state, State::Weak);
    assert!(none_share.unwrap() < 0.05, "{none_share:?}");
}

#[test]
fn a_million_readings_are_corrected_at_once() {
    let readings = (0..1_000_000)
        .map(|i| {
            let leg = if i < 500_000 { Leg::Down } else { Leg::Up };
            let depth_m = f64::from(if i < 500_000 { i } else { 999_999 - i }) * 1e-4;
            common::reading(depth_m, 20.0 - 0.3 * depth_m, leg)
        })
        .collect();
    let cast = Cast { readings, digit_c: 0.1, bed_m: None };
    let got = correct(&cast, &good_list());
    assert!(got.applied.iter().take(4).all(|a| matches!(a.outcome, Outcome::Done { .. })));
    assert!(lag_share(&cast).is_some_and(|found| found.depths == 499_998));
}
