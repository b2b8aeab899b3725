//! How often the stated range of the thermocline holds the true depth: 20,000 seeded casts for every row of the table.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{Noise, close, depths, smooth_lake_c, table};
use layercast_core::Level;
use layercast_core::cast::pairs::pairs;
use layercast_core::layers::span::span;
use layercast_core::layers::steps::steps;

const CASTS: usize = 20_000;

#[test]
fn the_span_holds_the_truth_as_often_as_stated() {
    let rows = table("check-values/span_coverage.csv");
    assert_eq!(rows.len(), 24);
    for (i, row) in rows.iter().enumerate() {
        let (width_m, step_m, noise_c) = (row.sure("width_m"), row.sure("step_m"), row.sure("noise_c"));
        let depths_m = depths((8.0 / step_m) as usize + 1, step_m);
        let mut noise = Noise::seeded(20_260_101 + i as u128);
        let (mut by_half_interval, mut by_span) = (0_usize, 0_usize);
        for _ in 0..CASTS {
            let middle_m = 3.0 + 2.0 * noise.uniform();
            let legs: Vec<(f64, f64)> = (depths_m.iter())
                .map(|z| smooth_lake_c(*z, middle_m, width_m))
                .map(|t| (noise.tenths(t, noise_c), noise.tenths(t, noise_c)))
                .collect();
            let differences: Vec<f64> = legs.iter().map(|(down, up)| down - up).collect();
            let sd_c = pairs(&differences, 0.1).s_used_c / std::f64::consts::SQRT_2;
            let levels: Vec<Level> = (depths_m.iter().zip(&legs))
                .map(|(z, (down, up))| Level::bare(*z, (down + up) / 2.0, sd_c))
                .collect();
            let steps = steps(&levels);
            let found = span(&steps, 0..steps.len(), &[]).unwrap().thermocline;
            // The table's half interval is the first of equal steps, not the run of them.
            let first_bottom_m = found.step_top_m + step_m;
            by_half_interval += usize::from((found.step_top_m..=first_bottom_m).contains(&middle_m));
            by_span += usize::from((found.span_top_m..=found.span_bottom_m).contains(&middle_m));
        }
        let share = |n: usize| n as f64 / CASTS as f64;
        let what = format!("width {width_m} m, step {step_m} m, noise {noise_c} °C");
        close(&format!("span, {what}"), share(by_span), row.sure("share_span"), 0.02);
        close(
            &format!("half interval, {what}"),
            share(by_half_interval),
            row.sure("share_half_interval"),
            0.03,
        );
    }
}
