//! Honest noisy casts, seeded: how often noise alone makes the analysis say something that is not there.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{Noise, depths, smooth_lake_c, two_legs};
use layercast_core::{Analysis, Method, State, analyse};

const CASTS: usize = 2_000;

/// Something that can be said of an analysis.
type Said = fn(&Analysis) -> bool;

/// Shares of seeded two-leg casts, 8 m at half-metre steps, of which each of `said` holds.
fn shares<const N: usize>(
    seed: u128,
    noise_c: f64,
    water_c: impl Fn(f64, f64) -> f64,
    said: [Said; N],
) -> [f64; N] {
    let mut noise = Noise::seeded(seed);
    let depths_m = depths(17, 0.5);
    let mut counts = [0_usize; N];
    for _ in 0..CASTS {
        let middle_m = 3.0 + 2.0 * noise.uniform();
        let mut leg = || -> Vec<f64> {
            depths_m.iter().map(|z| noise.tenths(water_c(*z, middle_m), noise_c)).collect()
        };
        let (down_c, up_c) = (leg(), leg());
        let analysis = analyse(&two_legs(&depths_m, &down_c, &up_c, 0.1), &Method::default());
        for (count, said) in counts.iter_mut().zip(said) {
            *count += usize::from(said(&analysis));
        }
    }
    counts.map(|count| count as f64 / CASTS as f64)
}

#[track_caller]
fn at_most(what: &str, share: f64, limit: f64) {
    println!("{what}: {:.2} %", 100.0 * share);
    assert!(share <= limit, "{what}: {:.2} % of casts", 100.0 * share);
}

fn unstable(a: &Analysis) -> bool {
    a.state == State::Unstable
}

fn has_a_layer(a: &Analysis) -> bool {
    a.metalimnion.is_some() || a.warm_layer_today.is_some()
}

#[test]
fn honest_summer_casts_are_hardly_ever_called_unstable() {
    for (i, noise_c) in [0.1, 0.2].into_iter().enumerate() {
        for (j, width_m) in [0.3, 0.5, 0.8, 1.2].into_iter().enumerate() {
            let seed = 100 + (4 * i + j) as u128;
            let [got] = shares(seed, noise_c, |z, middle_m| smooth_lake_c(z, middle_m, width_m), [unstable]);
            at_most(&format!("summer, width {width_m} m, noise {noise_c} °C, unstable"), got, 0.02);
        }
    }
}

#[test]
fn truly_mixed_casts_are_hardly_ever_given_a_layer_or_called_unstable() {
    for (i, noise_c) in [0.1, 0.2].into_iter().enumerate() {
        for (j, temp_c) in [6.0, 12.0, 15.0, 20.0, 25.0].into_iter().enumerate() {
            let seed = 200 + (5 * i + j) as u128;
            let [layer, overturn] = shares(seed, noise_c, |_, _| temp_c, [has_a_layer, unstable]);
            at_most(&format!("mixed, {temp_c} °C, noise {noise_c} °C, a layer"), layer, 0.02);
            at_most(&format!("mixed, {temp_c} °C, noise {noise_c} °C, unstable"), overturn, 0.02);
        }
    }
}

#[test]
fn one_broad_layer_is_hardly_ever_called_two() {
    let two: Said = |a| {
        a.metalimnion.is_some_and(|m| m.layers > 1)
            || (a.metalimnion.is_some() && a.warm_layer_today.is_some())
    };
    let [got] = shares(300, 0.1, |z, middle_m| smooth_lake_c(z, middle_m, 1.2), [two]);
    at_most("one layer of width 1.2 m, noise 0.1 °C, called two", got, 0.05);
}

#[test]
fn honest_readings_are_hardly_ever_left_out() {
    let left_out: Said = |a| a.checked.iter().any(|c| !c.used);
    let [got] = shares(400, 0.1, |z, middle_m| smooth_lake_c(z, middle_m, 0.5), [left_out]);
    at_most("summer, noise 0.1 °C, a reading left out", got, 0.02);
}
