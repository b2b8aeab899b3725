//! Planted causes are named: alone, or among those that cannot be told apart, and which those are.
//!
//! Sums are printed as a confusion matrix: `cargo test -p layercast-core --test all compare_causes -- --nocapture`.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use crate::compare_support;
use common::Noise;
use compare_support::{CLASS, Lake, PLANTED, Reader, pair};
use layercast_core::compare::{Cause, Verdict};

/// What became of pairs with one planted cause, in shares of the pairs.
#[derive(Default)]
struct Told {
    /// The cause with the best score, in the order of [`Cause::ALL`].
    best: [f64; 5],
    /// The planted cause is the best or cannot be told from it.
    named: f64,
    /// Mean of fitted over planted size.
    ratio: f64,
    /// Root mean square error over stated uncertainty.
    error_in_u: f64,
}

fn told(reader: Reader, width_m: f64, cause: Cause, size: f64) -> Told {
    const PAIRS: usize = 300;
    let mut noise = Noise::seeded(40 + cause as u128);
    let mut told = Told::default();
    for i in 0..PAIRS {
        let lake = Lake::seeded(&mut noise, width_m);
        let size = if i % 2 == 0 { size } else { -size };
        let found = pair(&mut noise, reader, lake, Some(cause), size).comparison(&[]);
        let best = found.best.unwrap();
        told.best[best as usize] += 1.0 / PAIRS as f64;
        let named = best == cause || found.cannot_be_told_from.contains(&cause);
        told.named += f64::from(u8::from(named)) / PAIRS as f64;
        let fit = found.fit(cause).unwrap();
        told.ratio += fit.value / size / PAIRS as f64;
        told.error_in_u += ((fit.value - size) / fit.u).powi(2) / PAIRS as f64;
    }
    told.error_in_u = told.error_in_u.sqrt();
    println!(
        "{cause:?}, scale {width_m} m, marks {} m: best {:?} named {:.1} % size {:.3} error {:.2} u",
        reader.marks_m,
        told.best.map(|share| (1_000.0 * share).round() / 10.0),
        100.0 * told.named,
        told.ratio,
        told.error_in_u,
    );
    told
}

/// Share that must be best of all, cause by cause.
#[track_caller]
fn check(reader: Reader, width_m: f64, best_at_least: [f64; 5]) {
    for ((cause, size), at_least) in PLANTED.into_iter().zip(best_at_least) {
        let told = told(reader, width_m, cause, size);
        assert!(told.named >= 0.9, "{cause:?} named in {:.3}", told.named);
        let best = told.best[cause as usize];
        assert!(
            best >= at_least,
            "{cause:?} planted, best in {best:.2}, not in {at_least}; all: {:.2?}",
            told.best
        );
        let larger = if width_m < 0.4 { 0.12 } else { 0.05 };
        assert!((told.ratio - 1.0).abs() <= larger, "{cause:?} of {} times its size", told.ratio);
        if reader.marks_m > 0.0 {
            assert!((0.75..=1.4).contains(&told.error_in_u), "{cause:?}: {} u", told.error_in_u);
        }
    }
}

#[test]
fn a_broad_layer_tells_most() {
    check(CLASS, 0.8, [0.99, 0.8, 0.8, 0.99, 0.85]);
}

#[test]
fn the_usual_layer() {
    check(CLASS, 0.5, [0.99, 0.7, 0.7, 0.99, 0.85]);
}

#[test]
fn a_thin_layer_tells_zero_from_stretch_by_one_or_two_readings_only() {
    check(CLASS, 0.3, [0.99, 0.6, 0.55, 0.99, 0.9]);
}

#[test]
fn marks_in_their_places_tell_more() {
    let exact = Reader { marks_m: 0.0, ..CLASS };
    check(exact, 0.5, [0.99, 0.8, 0.85, 0.99, 0.9]);
    check(exact, 0.8, [0.99, 0.86, 0.93, 0.99, 0.9]);
}

#[test]
fn the_verdict_names_what_was_planted() {
    let mut noise = Noise::seeded(5);
    for (cause, size) in PLANTED {
        let (mut said, mut clean) = (0, 0);
        for width_m in [0.5, 0.8] {
            for _ in 0..15 {
                let lake = Lake::seeded(&mut noise, width_m);
                let pair = pair(&mut noise, CLASS, lake, Some(cause), size);
                let found = pair.comparison(&pair.chance(0, 200));
                let Some(Verdict::Cause(best)) = found.verdict else { continue };
                said += usize::from(best == cause || found.cannot_be_told_from.contains(&cause));
                clean += usize::from(found.fit(cause).unwrap().leaves_more_than_chance == Some(false));
            }
        }
        println!("{cause:?}: said in {said}, leaving chance in {clean} of 30");
        assert!(said >= 27 && clean >= 20, "{cause:?}: said in {said}, leaving chance in {clean} of 30");
    }
}

#[test]
fn a_whole_layer_deeper_by_half_a_metre_is_moved_water_or_a_zero() {
    // The same curve half a metre deeper: by shape a zero, by size more likely moved water. Neither may be left out.
    let mut noise = Noise::seeded(6);
    let (mut both, mut zero) = (0, 0);
    for _ in 0..100 {
        let lake = Lake::seeded(&mut noise, 0.5);
        let found = pair(&mut noise, CLASS, lake, Some(Cause::Zero), -0.5).comparison(&[]);
        let said = |cause| found.best == Some(cause) || found.cannot_be_told_from.contains(&cause);
        both += usize::from(said(Cause::Zero) && said(Cause::MovedWater));
        zero += usize::from(found.best == Some(Cause::Zero));
        assert!(said(Cause::Zero) || said(Cause::MovedWater) || said(Cause::Stretch), "{:?}", found.best);
    }
    println!("both named in {both} of 100, best the zero in {zero}");
    assert!(both >= 40, "both named in {both} of 100, not in 40");
}
