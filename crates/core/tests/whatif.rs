//! The same cast read otherwise: what changes, what stays, what may be asked.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{Noise, close, depths, one_series, reading, smooth_lake_c, two_legs};
use layercast_core::certainty::{Depth, SEED, Unsure};
use layercast_core::whatif::{FINEST_STEP_M, Legs, Otherwise, TRIALS, Wait, Whatif, whatif};
use layercast_core::{Cast, Leg, Method, Reading, Switch};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

fn summer() -> Cast {
    let mut noise = Noise::seeded(8);
    let depths_m = depths(17, 0.5);
    let mut leg =
        || -> Vec<f64> { depths_m.iter().map(|z| noise.tenths(smooth_lake_c(*z, 4.1, 0.5), 0.1)).collect() };
    let (down_c, up_c) = (leg(), leg());
    two_legs(&depths_m, &down_c, &up_c, 0.1)
}

fn read(cast: &Cast, otherwise: Otherwise) -> Whatif {
    whatif(cast, &Method::default(), &otherwise, 4)
}

fn rows(cast: &Cast, leg: Leg) -> Vec<(f64, f64)> {
    let of_leg = cast.readings.iter().filter(|r| r.leg == leg);
    of_leg.map(|r| (r.depth_m, r.temp_c.unwrap())).collect()
}

/// Middle 95 % of the thermocline's trials, metres wide.
fn width_m(got: &Whatif) -> f64 {
    let ranged = *got.certainty(SEED, TRIALS).of(Depth::Thermocline).unwrap();
    ranged.high_m.unwrap() - ranged.low_m.unwrap()
}

#[test]
fn nothing_changed_is_the_cast_itself() {
    let cast = summer();
    let got = read(&cast, Otherwise::default());
    assert_eq!(
        (rows(&got.cast, Leg::Down), rows(&got.cast, Leg::Up)),
        (rows(&cast, Leg::Down), rows(&cast, Leg::Up))
    );
    assert_eq!((got.kept, got.drawn, got.cast.digit_c), (34, 0, 0.1));
    assert_eq!(got.plan.depths().count(), 4);
}

#[test]
fn every_2_m_takes_over_every_fourth_reading() {
    let cast = summer();
    let got = read(&cast, Otherwise { step_m: Some(2.0), ..Otherwise::default() });
    let fourth: Vec<(f64, f64)> = rows(&cast, Leg::Down).into_iter().step_by(4).collect();
    assert_eq!(rows(&got.cast, Leg::Down), fourth);
    assert_eq!((got.kept, got.drawn), (10, 0));
    // Within two marks nothing is known: the interval rule.
    let t = got.analysis.thermocline.unwrap();
    assert_eq!(t.step_bottom_m - t.step_top_m, 2.0);
    assert!(width_m(&got) > 1.8 && width_m(&read(&cast, Otherwise::default())) < 1.2);
}

#[test]
fn finer_marks_lie_on_the_line_with_noise_and_repeat() {
    let cast = summer();
    let finer = Otherwise { step_m: Some(0.25), ..Otherwise::default() };
    let got = read(&cast, finer);
    assert_eq!((got.kept, got.drawn), (34, 32));
    let profile = layercast_core::analyse(&cast, &Method::default()).profile;
    let (mut sum, mut n) = (0.0, 0);
    for r in got.cast.readings.iter().filter(|r| (r.depth_m * 2.0).fract() != 0.0) {
        let above = &profile[(r.depth_m * 2.0) as usize];
        let below = &profile[(r.depth_m * 2.0) as usize + 1];
        let off = r.temp_c.unwrap() - (above.temp_c + below.temp_c) / 2.0;
        assert!(off.abs() < 0.5, "{r:?}");
        sum += off * off;
        n += 1;
    }
    let sd_c = (sum / f64::from(n)).sqrt();
    assert!((0.06..0.16).contains(&sd_c), "the noise of the cast's own pairs, {sd_c}");
    assert_eq!(read(&cast, finer), read(&cast, finer));
    assert_ne!(whatif(&cast, &Method::default(), &finer, 5).cast, got.cast);
    // The chance at a depth does not depend on the step.
    let finest = read(&cast, Otherwise { step_m: Some(0.125), ..Otherwise::default() });
    let at = |w: &Whatif| rows(&w.cast, Leg::Up).into_iter().find(|(z, _)| *z == 3.75);
    assert_eq!(at(&finest), at(&got));
}

#[test]
fn one_leg_has_no_pairs() {
    let cast = summer();
    for (legs, leg) in [(Legs::Down, Leg::Down), (Legs::Up, Leg::Up)] {
        let got = read(&cast, Otherwise { legs: Some(legs), ..Otherwise::default() });
        assert_eq!((got.kept, got.drawn, got.analysis.pairs.count), (17, 0, 0));
        assert_eq!(rows(&got.cast, leg), rows(&cast, leg));
        let (one_m, both_m) = (width_m(&got), width_m(&read(&cast, Otherwise::default())));
        assert!(one_m >= both_m, "{leg:?} alone is surer than both legs: {one_m} m wide, not {both_m} m");
    }
}

#[test]
fn a_second_leg_is_drawn_where_there_was_one() {
    let down: Vec<(f64, f64)> = rows(&summer(), Leg::Down);
    let got = read(&one_series(&down, 0.1), Otherwise { legs: Some(Legs::Both), ..Otherwise::default() });
    assert_eq!((got.kept, got.drawn, got.analysis.pairs.count), (17, 17, 17));
    assert_eq!(rows(&got.cast, Leg::Down), down);
    let s_c = got.analysis.pairs.s_c.unwrap();
    assert!((0.04..0.13).contains(&s_c), "one of each pair is noisier by 0.1 °C: {s_c}");
    let alone = read(&one_series(&down, 0.1), Otherwise { legs: Some(Legs::Up), ..Otherwise::default() });
    assert_eq!(rows(&alone.cast, Leg::Unknown), down, "a series that does not say its leg stays one");
}

/// Methods 2.6 by hand: each reading keeps r of the difference from the one before it in time.
#[test]
fn a_short_wait_leaves_over_a_share_of_each_step() {
    let water = [20.0, 20.0, 16.0, 10.0, 10.0];
    let cast = two_legs(&depths(5, 0.5), &water, &water, 0.0);
    let wait = Wait { tau_s: 20.0, wait_s: 20.0 * std::f64::consts::LN_2 }; // half is left over
    let got = read(&cast, Otherwise { wait: Some(wait), ..Otherwise::default() });
    let want_down = [20.0, 20.0, 18.0, 14.0, 12.0];
    let want_up = [10.0, 10.0, 13.0, 16.5, 18.25];
    for ((_, t), want) in rows(&got.cast, Leg::Down).into_iter().zip(want_down) {
        close("down", t, want, 1e-9);
    }
    for ((_, t), want) in rows(&got.cast, Leg::Up).into_iter().zip(want_up) {
        close("up", t, want, 1e-9);
    }
    assert!(got.analysis.pairs.mean_c.unwrap() > 0.0, "down is warmer than up");
}

#[test]
fn what_is_left_over() {
    let left = |tau_s, wait_s| Wait { tau_s, wait_s }.left_over();
    close("one tau", left(20.0, 20.0), 0.367_879_441, 1e-9);
    close("five tau", left(12.0, 60.0), 0.006_737_947, 1e-9);
    assert_eq!([left(0.0, 5.0), left(-1.0, 5.0), left(f64::NAN, 5.0), left(f64::INFINITY, 5.0)], [0.0; 4]);
    assert_eq!([left(20.0, 0.0), left(20.0, -3.0), left(20.0, f64::NAN)], [0.95; 3]);
    assert_eq!(left(20.0, f64::INFINITY), 0.0);
}

#[test]
fn coarser_digits_round_and_finer_ones_invent_nothing() {
    let cast = summer();
    let got = read(&cast, Otherwise { digit_c: Some(0.5), ..Otherwise::default() });
    assert_eq!(got.cast.digit_c, 0.5);
    for (before, after) in cast.readings.iter().zip(&got.cast.readings) {
        let (before_c, after_c) = (before.temp_c.unwrap(), after.temp_c.unwrap());
        assert!((after_c * 2.0).fract() == 0.0 && (after_c - before_c).abs() <= 0.25 + 1e-9);
    }
    let finer = read(&cast, Otherwise { digit_c: Some(0.01), ..Otherwise::default() });
    assert_eq!((finer.cast.digit_c, finer.cast), (0.1, read(&cast, Otherwise::default()).cast));
}

#[test]
fn worse_marks_move_both_legs_alike_and_widen_the_ranges() {
    let cast = summer();
    let got = read(&cast, Otherwise { mark_sd_m: Some(0.2), ..Otherwise::default() });
    assert_ne!(rows(&got.cast, Leg::Down), rows(&cast, Leg::Down));
    let before = layercast_core::analyse(&cast, &Method::default()).pairs.s_c.unwrap();
    let after = got.analysis.pairs.s_c.unwrap();
    close("pairs see nothing of it", after, before, 0.03);
    let mixed = |w: &Whatif| {
        let ranged = *w.certainty(SEED, TRIALS).of(Depth::MixedLayer).unwrap();
        ranged.high_m.unwrap() - ranged.low_m.unwrap()
    };
    assert!(mixed(&got) > mixed(&read(&cast, Otherwise::default())) + 0.05);
    // A usual mark is what the cast has; a better one is a range, not another reading.
    for sd in [Unsure::default().mark_sd_m, 0.0, f64::NAN, -1.0] {
        let same = read(&cast, Otherwise { mark_sd_m: Some(sd), ..Otherwise::default() });
        assert_eq!(same.cast, read(&cast, Otherwise::default()).cast, "{sd}");
    }
}

#[test]
fn changes_go_together() {
    let all = Otherwise {
        step_m: Some(1.0),
        legs: Some(Legs::Down),
        wait: Some(Wait { tau_s: 20.0, wait_s: 30.0 }),
        digit_c: Some(0.5),
        mark_sd_m: Some(0.1),
    };
    let got = read(&summer(), all);
    assert_eq!((got.kept, got.drawn, got.cast.readings.len(), got.cast.digit_c), (9, 0, 9, 0.5));
}

#[test]
fn marks_stand_where_the_cable_has_them() {
    let water: Vec<(f64, f64)> = (0..8).map(|i| (0.3 + 0.5 * f64::from(i), 20.0 - f64::from(i))).collect();
    let got = read(&one_series(&water, 0.1), Otherwise { step_m: Some(1.0), ..Otherwise::default() });
    assert_eq!(rows(&got.cast, Leg::Unknown).iter().map(|r| r.0).collect::<Vec<_>>(), [1.0, 2.0, 3.0]);
    assert_eq!((got.kept, got.drawn), (0, 3));
    let far = read(&one_series(&water, 0.1), Otherwise { step_m: Some(9.0), ..Otherwise::default() });
    assert!(far.cast.readings.is_empty());
    let fine = read(&one_series(&water, 0.1), Otherwise { step_m: Some(1e-9), ..Otherwise::default() });
    assert_eq!(fine.cast.readings.len(), (3.5 / FINEST_STEP_M) as usize + 1);
}

#[test]
fn a_cast_without_two_depths_comes_back() {
    let one = Cast { readings: vec![reading(1.0, 20.0, Leg::Down)], digit_c: 0.1, bed_m: None };
    for cast in [Cast::default(), one] {
        let got =
            read(&cast, Otherwise { step_m: Some(1.0), legs: Some(Legs::Both), ..Otherwise::default() });
        assert_eq!(got.cast, cast);
        assert_eq!((got.drawn, got.plan.width()), (0, 0));
    }
}

fn wild_number() -> impl Strategy<Value = f64> {
    prop_oneof![
        Just(f64::NAN),
        Just(f64::INFINITY),
        Just(1e308),
        Just(-1e308),
        Just(5e-324),
        -3.0..45.0,
        0.1..3.0,
        any::<f64>()
    ]
}

proptest! {
    #![proptest_config(ProptestConfig {
        rng_seed: RngSeed::Fixed(20_260_105), failure_persistence: None, cases: 128, ..Default::default()
    })]

    #[test]
    fn whatever_is_asked_of_whatever_cast(
        rows in prop::collection::vec((wild_number(), wild_number(), 0_u8..3), 0..30),
        numbers in prop::collection::vec(prop::option::of(wild_number()), 6),
        legs in prop::option::of(prop_oneof![Just(Legs::Down), Just(Legs::Up), Just(Legs::Both)]),
        digit_c in wild_number(), seed: u64,
    ) {
        let leg = |n: u8| [Leg::Down, Leg::Up, Leg::Unknown][usize::from(n)];
        let readings = rows.iter().map(|(depth_m, t, l)| {
            Reading { depth_m: *depth_m, temp_c: Some(*t), leg: leg(*l), switch: Switch::Auto }
        });
        let cast = Cast { readings: readings.collect(), digit_c, bed_m: None };
        let wait = numbers[1].zip(numbers[2]).map(|(tau_s, wait_s)| Wait { tau_s, wait_s });
        let otherwise =
            Otherwise { step_m: numbers[0], legs, wait, digit_c: numbers[3], mark_sd_m: numbers[4] };
        let got = whatif(&cast, &Method::default(), &otherwise, seed);
        prop_assert!(got.cast.readings.len() <= 20_002 || got.cast.readings.len() == rows.len());
        if layercast_core::analyse(&cast, &Method::default()).profile.len() > 1 {
            prop_assert_eq!(got.kept + got.drawn, got.cast.readings.len());
            prop_assert!(got.cast.readings.iter().all(|r| r.depth_m.is_finite() && r.temp_c.unwrap().is_finite()));
        }
        got.certainty(seed, 3);
    }
}
