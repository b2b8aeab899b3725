//! `cargo run -q --release -p layercast-core --example speed`: what the analysis and its trials take, natively, each beside
//! something measured in turns with it. Prints; asserts nothing. A part of `cargo xtask bench`.
#![allow(clippy::unwrap_used, clippy::disallowed_methods, reason = "figures to read; not a part of the core")]

use layercast_core::certainty::{Plan, SEED, TRIALS, Unsure, summary, trials};
use layercast_core::water::density::Density;
use layercast_core::{Cast, Leg, Method, Reading, Switch, analyse};
use std::hint::black_box;
use std::time::Instant;

/// Readings of the cast of a class, and of those it is grown to.
const CLASS: usize = 40;
const SIZES: [usize; 5] = [100, 1_000, 10_000, 100_000, 1_000_000];
const ROUNDS: usize = 15;

fn main() {
    class();
    growth();
}

/// The cast of a class: its analysis beside one density for each reading, its trials beside as many whole analyses.
fn class() {
    let (cast, method) = (lake(CLASS, true), Method::default());
    let plan = Plan::new(&cast, &analyse(&cast, &method), &Unsure::default());
    let densities =
        || cast.readings.iter().filter_map(|r| r.temp_c).map(|t| Density::Tanaka.kg_m3(t)).sum::<f64>();
    let (mut analysis, mut density, mut drawn, mut whole) = (Vec::new(), Vec::new(), Vec::new(), Vec::new());
    for _ in 0..ROUNDS {
        analysis.push(us_each(1_000, || analyse(&cast, &method)));
        density.push(us_each(10_000, densities));
        drawn.push(us_each(1, || summary(&plan, &trials(&plan, SEED, 0, TRIALS))));
        whole.push(us_each(TRIALS as usize, || analyse(&cast, &method)) * f64::from(TRIALS));
    }
    let (analysis, density, drawn, whole) = (middle(analysis), middle(density), middle(drawn), middle(whole));
    println!(
        "   analysis of {CLASS} readings {analysis:.1} µs (aim: under 50); ratio to a density for each reading {:.1}",
        analysis / density
    );
    println!(
        "   {TRIALS} trials and their summary {:.1} ms; ratio to {TRIALS} whole analyses {:.2}",
        drawn / 1e3,
        drawn / whole
    );
}

/// The analysis of ever more readings.
fn growth() {
    for (name, own_depths) in [("each reading at a depth of its own", true), ("20 depths", false)] {
        let casts = SIZES.map(|readings| lake(readings, own_depths));
        let mut fastest = [f64::INFINITY; SIZES.len()];
        for _ in 0..5 {
            for ((cast, size), fastest) in casts.iter().zip(SIZES).zip(&mut fastest) {
                let times = (100_000 / size).max(1);
                *fastest = fastest.min(us_each(times, || analyse(cast, &Method::default())));
            }
        }
        println!("   {name}");
        for ((size, us), before) in SIZES.iter().zip(fastest).zip([None].into_iter().chain(fastest.map(Some)))
        {
            let since = before.map_or(String::new(), |before| {
                format!("  exponent since the last {:.2}", (us / before).log10())
            });
            println!(
                "   {size:>9} readings {:>10.3} ms  {:>6.3} µs each{since}",
                us / 1e3,
                us / *size as f64
            );
        }
        let over = (fastest[SIZES.len() - 1] / fastest[0]).log10() / (SIZES.len() - 1) as f64;
        println!("   exponent from the first to the last {over:.2} (aim: at most 1.05)");
    }
}

/// Microseconds of one call, over so many of them.
fn us_each<T>(times: usize, job: impl Fn() -> T) -> f64 {
    let start = Instant::now();
    for _ in 0..times {
        black_box(job());
    }
    start.elapsed().as_secs_f64() * 1e6 / times as f64
}

fn middle(mut values: Vec<f64>) -> f64 {
    values.sort_by(f64::total_cmp);
    values[values.len() / 2]
}

/// A summer lake, 10 m deep, read on the way down and up.
fn lake(readings: usize, own_depths: bool) -> Cast {
    let rows = readings / 2;
    let reading = |i: usize| {
        let (row, leg) = if i < rows { (i, Leg::Down) } else { (readings - 1 - i, Leg::Up) };
        let place = if own_depths { row as f64 / (rows - 1) as f64 } else { (row * 20 / rows) as f64 / 19.0 };
        let depth_m = 9.5 * place;
        let below = depth_m - 4.0;
        let uneven = ((i * 3) % 7) as f64 * 0.02 - 0.06;
        let temp_c = 15.0 - 7.0 * below / (1.0 + below * below).sqrt() + uneven;
        Reading { depth_m, temp_c: Some((temp_c * 10.0).round() / 10.0), leg, switch: Switch::Auto }
    };
    Cast { readings: (0..readings).map(reading).collect(), digit_c: 0.1, bed_m: None }
}
