//! Nothing but chance: pairs without a cause keep false alarms at one in twenty; trials do not depend on their pieces.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use crate::compare_support;
use common::Noise;
use compare_support::{CLASS, Lake, Reader, cast, pair};
use layercast_core::compare::{Options, Pair, TRIALS, Trial, Verdict};

/// Pairs without a cause, and how many of them were said to have one.
fn false_alarms(seed: u128, pairs: usize, mut pair: impl FnMut(&mut Noise, usize) -> Pair) -> f64 {
    let mut noise = Noise::seeded(seed);
    let alarm = |i: usize| {
        let pair = pair(&mut noise, i);
        pair.comparison(&pair.chance(0, 200)).verdict != Some(Verdict::Chance)
    };
    let share = (0..pairs).map(alarm).filter(|alarm| *alarm).count() as f64 / pairs as f64;
    println!("false alarms: {:.1} %", 100.0 * share);
    share
}

#[test]
fn layered_water_without_a_cause() {
    let share = false_alarms(1, 200, |noise, i| {
        let lake = Lake::seeded(noise, [0.3, 0.5, 0.8, 1.2][i % 4]);
        pair(noise, CLASS, lake, None, 0.0)
    });
    assert!(share <= 0.05, "{share}");
}

#[test]
fn noisy_probes_and_metre_steps_without_a_cause() {
    let share = false_alarms(2, 150, |noise, i| {
        let lake = Lake::seeded(noise, 0.8);
        let reader = [
            Reader { noise_c: 0.2, ..CLASS },
            Reader { step_m: 1.0, ..CLASS },
            Reader { noise_c: 0.03, marks_m: 0.05, ..CLASS },
        ][i % 3];
        pair(noise, reader, lake, None, 0.0)
    });
    assert!(share <= 0.05, "{share}");
}

#[test]
fn mixed_water_without_a_cause() {
    let share = false_alarms(3, 150, |noise, _| {
        let (a, b) = (cast(noise, CLASS, |_| 11.5), cast(noise, CLASS, |_| 11.5));
        Pair::new(&a, &b, &Options::default()).unwrap()
    });
    assert!(share <= 0.05, "{share}");
}

#[test]
fn marks_at_other_depths_without_a_cause() {
    let share = false_alarms(4, 150, |noise, i| {
        let lake = Lake::seeded(noise, [0.5, 0.8, 1.2][i % 3]);
        let a = cast(noise, CLASS, |z| lake.read_c(None, 0.0, z));
        // Every mark half a step lower, and written so.
        let mut b = cast(noise, CLASS, |z| lake.read_c(None, 0.0, z + 0.25));
        b.levels.iter_mut().for_each(|level| level.depth_m += 0.25);
        Pair::new(&a, &b, &Options::default()).unwrap()
    });
    assert!(share <= 0.05, "{share}");
}

#[test]
fn pieces_of_any_size_give_the_same_trials() {
    let lake = Lake { middle_m: 4.0, width_m: 0.5 };
    let pair = pair(&mut Noise::seeded(9), CLASS, lake, None, 0.0);
    let whole = pair.chance(0, 300);
    let pieces: Vec<Trial> = [(0, 1), (1, 99), (100, 200), (300, 0)]
        .into_iter()
        .flat_map(|(from, count)| pair.chance(from, count))
        .collect();
    assert_eq!(whole, pieces);
    assert!(whole.iter().all(|trial| trial.gain.is_finite() && trial.misfit > 0.0));
    let level = pair.comparison(&whole).chance.unwrap();
    assert_eq!((level.trials, level.false_alarms), (300, 0.03));
    // Differences of two honest casts are about as large as they are said to be.
    let mean = whole.iter().map(|trial| trial.misfit).sum::<f64>() / 300.0;
    assert!((0.9..1.35).contains(&mean), "{mean}");
    assert_eq!(pair.comparison(whole.get(..199).unwrap()).verdict, None);
}

#[test]
fn another_seed_draws_other_pairs() {
    let mut noise = Noise::seeded(10);
    let lake = Lake { middle_m: 4.0, width_m: 0.5 };
    let (a, b) = (
        cast(&mut noise, CLASS, |z| lake.read_c(None, 0.0, z)),
        cast(&mut noise, CLASS, |z| lake.read_c(None, 0.0, z)),
    );
    let trials = |seed| Pair::new(&a, &b, &Options { seed, ..Options::default() }).unwrap().chance(0, 5);
    assert_eq!(trials(1), trials(1));
    assert_ne!(trials(1), trials(2));
    assert_eq!(TRIALS, 2_000);
}
