//! Every mixed-layer rule on the check profiles, and how far they lie apart.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, close_option, levels, profiles, table};
use layercast_core::layers::every_rule::{is_threshold, mixed_layer_rules, spread};
use layercast_core::layers::steps::steps;
use layercast_core::layers::three_layer::three_layers;
use layercast_core::{Method, Rule};

/// The rule behind a name of the table.
fn rule(method: &str) -> Option<Rule> {
    Some(match method {
        "t0p2" => Rule::TempDrop02,
        "t0p5" => Rule::TempDrop05,
        "t0p8" => Rule::TempDrop08,
        "t1p0" => Rule::TempDrop,
        "r0p03" => Rule::DensityRise003,
        "r0p1" => Rule::DensityRise,
        "r0p125" => Rule::DensityRise0125,
        "g1_top" => Rule::FirstSteepTop,
        "g1_mid" => Rule::FirstSteepMiddle,
        "rg0p1_top" => Rule::FirstDenseTop,
        "max_curvature" => Rule::SharpestBend,
        "max_angle" => Rule::GreatestAngle,
        "broken_stick" => Rule::BrokenStick,
        "three_layer_top" => Rule::ThreeLayers,
        _ => return None,
    })
}

/// A fit has one answer only where the water has layers: not on a jump inside one step, a straight line or even water.
fn fits_are_unique(profile: &str) -> bool {
    !matches!(profile, "step" | "linear" | "mixed" | "unstable")
}

#[test]
fn every_rule_of_every_profile() {
    let rows = table("check-values/mixed_layer.csv");
    let (mut tested, mut passed_over) = (0, 0);
    for (name, profile) in profiles() {
        let levels = levels(&profile, 0.0);
        let steps = steps(&levels);
        let fit = three_layers(&levels);
        for row in rows.iter().filter(|r| r.text("profile") == name) {
            let (reference_m, method) = (row.sure("reference_depth_m"), row.text("method"));
            let told = mixed_layer_rules(&levels, &steps, &Method { reference_m, ..Method::default() });
            let by_rule = |rule: Rule| told.iter().find(|v| v.rule == rule).and_then(|v| v.value_m);
            let (got, tolerance) = match method {
                "three_layer_bottom" => (fit.map(|f| f.bottom_m), 0.1),
                "three_layer_rms_c" => (fit.map(|f| f.rms_c), 1e-3),
                "three_layer_top" => (by_rule(Rule::ThreeLayers), 0.1),
                "broken_stick" => (by_rule(Rule::BrokenStick), 0.02),
                "max_curvature" | "max_angle" | "g1_top" | "g1_mid" | "rg0p1_top" => {
                    (by_rule(rule(method).unwrap()), 1e-9)
                }
                threshold => (by_rule(rule(threshold).unwrap()), 1e-6),
            };
            let what = format!("{name}, {method} from {reference_m} m");
            assert_eq!(got.is_none().to_string(), row.text("not_reached"), "{what}");
            let place_of_a_fit = matches!(method, "three_layer_bottom" | "three_layer_top" | "broken_stick");
            if place_of_a_fit && !fits_are_unique(&name) {
                passed_over += 1;
                continue;
            }
            close_option(&what, got, row.number("value_m"), tolerance + 1e-9);
            tested += 1;
        }
    }
    assert_eq!((tested, passed_over), (20 * 16 + 3 * 4 * 7 - 12, 12), "every row of the table");
}

#[test]
fn how_far_the_rules_lie_apart_on_every_profile() {
    let rows = table("check-values/mixed_layer_spread.csv");
    assert_eq!(rows.len(), profiles().len());
    for (name, profile) in profiles() {
        let want = rows.iter().find(|r| r.text("profile") == name).unwrap();
        let levels = levels(&profile, 0.0);
        let told = mixed_layer_rules(&levels, &steps(&levels), &Method::default());
        let all = spread(&told, |_| true).unwrap();
        assert_eq!(all.rules, want.sure("n_methods_reached") as usize, "{name}");
        // To 0.1 m where a fit may set an end, else to 1e-6; a fit without one answer only bounds nothing.
        let fits = [Rule::BrokenStick, Rule::ThreeLayers];
        let without = spread(&told, |rule| !fits.contains(&rule)).unwrap();
        if fits_are_unique(&name) {
            let tolerance = |end: f64, other: f64| if end == other { 1e-6 } else { 0.1 };
            let (top, bottom) = (all.shallowest_m, all.deepest_m);
            close(&name, top, want.sure("min_m"), tolerance(top, without.shallowest_m));
            close(&name, bottom, want.sure("max_m"), tolerance(bottom, without.deepest_m));
            close(&name, bottom - top, want.sure("spread_m"), 0.1);
            close(&name, all.median_m, want.sure("median_m"), 0.1);
        }
        let thresholds = spread(&told, is_threshold);
        let apart = thresholds.map(|s| s.deepest_m - s.shallowest_m);
        close_option(&name, apart, want.number("threshold_methods_spread_m"), 1e-6);
        let by_rule = |rule: Rule| told.iter().find(|v| v.rule == rule).and_then(|v| v.value_m);
        close_option(&name, by_rule(Rule::DensityRise), want.number("density_0p1_m"), 1e-6);
        close_option(&name, by_rule(Rule::TempDrop), want.number("temperature_1p0_m"), 1e-6);
    }
}
