//! Real, openly licensed casts: the temperature rules on measured water.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{Row, close, close_option, grouped, levels, one_series, table};
use layercast_core::layers::densest::densest;
use layercast_core::layers::mixed_layer::{density_rise_depth_m, temperature_step_depth_m};
use layercast_core::layers::runs::runs;
use layercast_core::layers::span::span;
use layercast_core::layers::steps::steps;
use layercast_core::water::density::density_kg_m3;
use layercast_core::{Method, MixedLayer, State, analyse};

/// Depths and temperatures of one cast, downward.
fn downward(rows: &[&Row]) -> Vec<(f64, f64)> {
    let mut cast: Vec<(f64, f64)> =
        rows.iter().map(|r| (r.sure("depth_m"), r.sure("temperature_c"))).collect();
    cast.sort_by(|a, b| a.0.total_cmp(&b.0));
    cast
}

/// Readings against expected depths; how many were compared.
fn check_depths(readings: &[Row], expected: &[Row], named_by: &str) -> usize {
    let mut compared = 0;
    for (name, rows) in grouped(readings, named_by) {
        let cast = downward(&rows);
        let levels = levels(&cast, 0.0);
        let steps = steps(&levels);
        let steepest = span(&steps, 0..steps.len(), &[]).unwrap().thermocline;
        let in_steepest = |r: &&layercast_core::layers::runs::Run| {
            r.top_m <= steepest.step_top_m && steepest.step_bottom_m <= r.bottom_m
        };
        let run = runs(&levels, &steps, 1.0).iter().find(in_steepest).cloned();
        let by_density = densest(&levels, 0..steps.len());
        for want in expected.iter().filter(|r| r.text("cast") == name) {
            let drop = |reference_m, drop_c| temperature_step_depth_m(&levels, reference_m, drop_c);
            let (got, tolerance) = match want.text("quantity") {
                "readings" => (Some(cast.len() as f64), 0.0),
                "shallowest" => (levels.first().map(|l| l.depth_m), 0.0),
                "deepest" => (levels.last().map(|l| l.depth_m), 0.0),
                "mld_t0p2_from_10m" => (drop(10.0, 0.2), 1e-6),
                "mld_t0p2_from_0p5m" => (drop(0.5, 0.2), 1e-6),
                "mld_t0p5_from_0p5m" => (drop(0.5, 0.5), 1e-6),
                "mld_t1p0_from_0p5m" => (drop(0.5, 1.0), 1e-6),
                "mld_fresh_r0p1_from_0p5m" => (density_rise_depth_m(&levels, 0.5, 0.1), 0.05),
                "steepest_top" => (Some(steepest.step_top_m), 0.0),
                "steepest_bottom" => (Some(steepest.step_bottom_m), 0.0),
                "steepest_middle" => (Some(steepest.value_m), 1e-6),
                "steepest_gradient" => (Some(steepest.gradient_c_per_m), 1e-6),
                "run_1degC_per_m_top" => (run.as_ref().map(|r| r.top_m), 0.0),
                "run_1degC_per_m_bottom" => (run.as_ref().map(|r| r.bottom_m), 0.0),
                "fresh_density_steepest_middle" => (by_density.map(|d| d.value_m), 1e-6),
                "fresh_density_gradient" => {
                    (steps.iter().map(|s| s.densing_kg_m3_per_m).reduce(f64::max), 1e-4)
                }
                _ => continue, // needs salt or a second thermometer
            };
            close_option(&format!("{name}, {}", want.text("quantity")), got, want.number("value"), tolerance);
            compared += 1;
        }
    }
    compared
}

#[test]
fn ten_pairs_of_a_warm_layer_over_a_cold_one() {
    assert_eq!(
        check_depths(
            &table("open-data/baltic_pairs.csv"),
            &table("open-data/baltic_pairs.expected.csv"),
            "cast"
        ),
        20 * 16
    );
}

#[test]
fn a_year_of_monthly_means() {
    let got = check_depths(
        &table("open-data/monthly_means.csv"),
        &table("open-data/monthly_means.expected.csv"),
        "month",
    );
    assert_eq!(got, 12 * 16);
}

#[test]
fn three_check_casts() {
    let got = check_depths(
        &table("open-data/teos10_check_casts.csv"),
        &table("open-data/teos10_check_casts.expected.csv"),
        "cast",
    );
    assert_eq!(got, 3 * 16);
}

#[test]
fn two_demonstration_casts() {
    let got = check_depths(
        &table("open-data/teos10_demo_casts.csv"),
        &table("open-data/teos10_demo_casts.expected.csv"),
        "cast",
    );
    assert_eq!(got, 2 * 16);
}

#[test]
fn density_of_their_temperatures_as_if_fresh() {
    for rows in [
        table("open-data/baltic_pairs.levels.csv"),
        table("open-data/teos10_check_casts.levels.csv"),
        table("open-data/teos10_demo_casts.levels.csv"),
    ] {
        for row in rows {
            let temp_c = row.sure("temperature_c");
            close(&format!("{temp_c} °C"), density_kg_m3(temp_c), row.sure("fresh_rho_kg_m3"), 0.0007);
        }
    }
}

#[test]
fn the_whole_analysis_of_the_pairs_by_the_class_rule() {
    let readings = table("open-data/baltic_pairs.csv");
    let expected = table("open-data/baltic_pairs.expected.csv");
    let mut layered = 0;
    for (name, rows) in grouped(&readings, "cast") {
        let analysis = analyse(&one_series(&downward(&rows), 0.0001), &Method::default());
        let want = |quantity: &str| {
            let row = expected.iter().find(|r| r.text("cast") == name && r.text("quantity") == quantity);
            row.unwrap().number("value")
        };
        assert!(matches!(analysis.state, State::Stratified), "{name}: {:?}", analysis.state);
        // Only where nothing was left out and no second layer asks which is the main one: else the analysis rightly
        // parts from the bare rule. (The deep water is held down by salt; read as fresh, some of it sticks out.)
        let plain = analysis.checked.iter().all(|c| c.used)
            && analysis.warm_layer_today.is_none()
            && analysis.metalimnion.is_none_or(|m| m.layers == 1);
        let Some(MixedLayer::At { value_m, .. }) = analysis.mixed_layer else {
            panic!("{name}: no mixed layer")
        };
        close_option(name, Some(value_m), want("mld_t1p0_from_0p5m"), 1e-6);
        if plain {
            let thermocline = analysis.thermocline.unwrap();
            assert_eq!(Some(thermocline.step_top_m), want("steepest_top"), "{name}");
            layered += 1;
        }
    }
    assert!(layered >= 7, "only {layered} casts went the whole way");
}
