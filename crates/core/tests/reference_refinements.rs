//! Second opinions on the thermocline, and what the spacing of readings does to them.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, close_option, levels, profiles, smooth_lake_c, table};
use layercast_core::Level;
use layercast_core::layers::centroid::centroid_m;
use layercast_core::layers::first_steep::first_steep;
use layercast_core::layers::interval::{half_width_m, standard_uncertainty_m};
use layercast_core::layers::mixed_layer::{density_rise_depth_m, temperature_step_depth_m};
use layercast_core::layers::monotone_curve::steepest_place;
use layercast_core::layers::parabola::parabola_m;
use layercast_core::layers::span::span;
use layercast_core::layers::steepest::steepest;
use layercast_core::layers::steps::steps;
use std::ops::Range;

/// Places of the steepest step or run of the whole cast.
fn steepest_of(levels: &[Level]) -> Range<usize> {
    let cooling: Vec<f64> = steps(levels).iter().map(|s| s.cooling_c_per_m).collect();
    let k = steepest(&cooling, |_| true).unwrap();
    k.first..k.last + 1
}

#[test]
fn refinements_of_every_profile() {
    let rows = table("check-values/thermocline.csv");
    for (name, profile) in profiles() {
        let want = rows.iter().find(|r| r.text("profile") == name).unwrap();
        let levels = levels(&profile, 0.0);
        let steps = steps(&levels);
        let cools = want.number("midpoint_m").is_some(); // where nothing cools the table refines nothing
        let at = steepest_of(&levels);
        let centroid = centroid_m(&steps, at.clone()).filter(|_| cools);
        close_option(&name, centroid, want.number("centroid_m"), 1e-6);
        let parabola = parabola_m(&steps, at).filter(|_| cools);
        close_option(&name, parabola, want.number("parabola_m"), 1e-6);
        let curve = steepest_place(&levels, 0..steps.len());
        close_option(&name, curve.map(|c| c.cooling_c_per_m), want.number("pchip_gradient_c_per_m"), 1e-6);
        if name != "linear" {
            close_option(&name, curve.map(|c| c.depth_m), want.number("pchip_m"), 1e-6); // any depth of a line is right
        }
    }
}

#[test]
fn the_same_lake_read_at_five_spacings() {
    let rows = table("check-values/resolution.csv");
    assert_eq!(rows.len(), 5);
    for row in rows {
        let spacing_m = row.sure("spacing_m");
        let what = format!("every {spacing_m} m");
        let count = (10.0 / spacing_m).round() as usize + 1;
        let cast: Vec<(f64, f64)> = (0..count)
            .map(|i| (i as f64 * spacing_m * 1e6).round() / 1e6)
            .map(|z| (z, smooth_lake_c(z, 4.6, 0.5)))
            .collect();
        let levels = levels(&cast, 0.0);
        let steps = steps(&levels);
        let told = span(&steps, 0..steps.len(), &[]).unwrap().thermocline;
        close(&what, told.value_m, row.sure("midpoint_m"), 1e-6);
        close(&what, told.gradient_c_per_m, row.sure("max_gradient_c_per_m"), 1e-6);
        if spacing_m > 0.1 {
            // At 0.1 m two steps tie, and their last bits decide.
            close_option(&what, parabola_m(&steps, steepest_of(&levels)), row.number("parabola_m"), 1e-6);
            let curve = steepest_place(&levels, 0..steps.len()).map(|c| c.depth_m);
            close_option(&what, curve, row.number("pchip_m"), 1e-6);
        }
        close_option(&what, temperature_step_depth_m(&levels, 0.5, 1.0), row.number("mld_t1p0_m"), 1e-6);
        close_option(&what, density_rise_depth_m(&levels, 0.5, 0.1), row.number("mld_r0p1_m"), 1e-6);
        close_option(&what, first_steep(&steps, 1.0).map(|f| f.0), row.number("mld_g1_top_m"), 1e-6);
    }
}

#[test]
fn how_sure_the_middle_of_an_interval_is() {
    for row in table("check-values/interval_rule.csv") {
        let interval_m = row.sure("interval_m");
        close("half", half_width_m(interval_m), row.sure("half_width_m"), 1e-9);
        close("u", standard_uncertainty_m(interval_m), row.sure("standard_uncertainty_m"), 1e-9);
    }
}
