//! Thermocline, span, steep layer, main layer and state of the check profiles, by the bare rules; then by the whole analysis.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{Row, close, close_option, grouped, levels, one_series, profiles, table};
use layercast_core::layers::densest::densest;
use layercast_core::layers::runs::{layers, runs, surviving};
use layercast_core::layers::span::span;
use layercast_core::layers::state::{facts, state};
use layercast_core::layers::steepest::steepest;
use layercast_core::layers::steps::steps;
use layercast_core::{Method, MixedLayer, State, analyse};

fn row<'a>(rows: &'a [Row], profile: &str) -> &'a Row {
    rows.iter().find(|r| r.text("profile") == profile).unwrap()
}

#[test]
fn thermocline_of_every_profile() {
    let rows = table("check-values/thermocline.csv");
    assert_eq!(profiles().len(), rows.len());
    for (name, profile) in profiles() {
        let want = row(&rows, &name);
        let levels = levels(&profile, 0.0);
        let steps = steps(&levels);
        let found = span(&steps, 0..steps.len(), &[]).map(|s| s.thermocline);
        close_option(&name, found.map(|t| t.step_top_m), want.number("interval_top_m"), 0.0);
        close_option(&name, found.map(|t| t.step_bottom_m), want.number("interval_bottom_m"), 0.0);
        close_option(&name, found.map(|t| t.value_m), want.number("midpoint_m"), 1e-9);
        if let Some(found) = found {
            close(&name, found.gradient_c_per_m, want.sure("max_gradient_c_per_m"), 1e-6);
            assert_eq!(found.ambiguous.to_string(), want.text("ambiguous"), "{name}");
        }
        let by_density = densest(&levels, 0..steps.len());
        close_option(&name, by_density.map(|d| d.value_m), want.number("density_midpoint_m"), 1e-9);
        if let Some(by_density) = by_density {
            close(&name, by_density.n2_per_s2, want.sure("max_n2_s2"), 1e-9);
        }
    }
}

#[test]
fn span_of_every_profile_at_four_noises() {
    let rows = table("check-values/span.csv");
    assert_eq!(rows.len(), 4 * profiles().len());
    for (name, profile) in profiles() {
        let exact = levels(&profile, 0.0);
        let found = runs(&exact, &steps(&exact), 1.0);
        let main = found.iter().map(|r| r.density_gain).fold(0.0, f64::max);
        let others: Vec<_> =
            found.iter().filter(|r| r.density_gain < main).map(|r| r.steps.clone()).collect();
        for want in rows.iter().filter(|r| r.text("profile") == name) {
            let steps = steps(&levels(&profile, want.sure("sigma_c")));
            let got = span(&steps, 0..steps.len(), &others).map(|s| s.thermocline);
            close_option(&name, got.map(|t| t.value_m), want.number("value_m"), 1e-9);
            close_option(&name, got.map(|t| t.span_top_m), want.number("span_top_m"), 0.0);
            close_option(&name, got.map(|t| t.span_bottom_m), want.number("span_bottom_m"), 0.0);
            if let Some(got) = got {
                assert_eq!(got.in_one_piece.to_string(), want.text("one_piece"), "{name}");
                assert_eq!((!got.tellable).to_string(), want.text("more_than_half_the_cast"), "{name}");
            }
        }
    }
}

#[test]
fn steep_layer_of_every_profile_at_three_thresholds() {
    let rows = table("check-values/metalimnion.csv");
    assert_eq!(rows.len(), 3 * profiles().len());
    for (name, profile) in profiles() {
        let levels = levels(&profile, 0.0);
        let steps = steps(&levels);
        let cooling: Vec<f64> = steps.iter().map(|s| s.cooling_c_per_m).collect();
        let at = steepest(&cooling, |_| true).unwrap().first;
        for want in rows.iter().filter(|r| r.text("profile") == name) {
            let runs = runs(&levels, &steps, want.sure("threshold_c_per_m"));
            let got = runs.iter().find(|r| r.steps.contains(&at));
            close_option(&name, got.map(|r| r.top_m), want.number("top_m"), 0.0);
            close_option(&name, got.map(|r| r.bottom_m), want.number("bottom_m"), 0.0);
        }
    }
}

#[test]
fn layers_of_every_profile() {
    let rows = table("check-values/layers.csv");
    for (name, profile) in profiles() {
        let levels = levels(&profile, 0.0);
        let steps = steps(&levels);
        let found = surviving(runs(&levels, &steps, 1.0), 0.0);
        let wanted: Vec<&Row> = rows.iter().filter(|r| r.text("profile") == name).collect();
        assert_eq!(found.len(), usize::from(wanted.first().unwrap().whole("n_layers")), "{name}");
        let chosen = layers(&found, levels.last().unwrap().depth_m);
        for (run, want) in found.iter().zip(wanted) {
            close(&name, run.top_m, want.sure("top_m"), 0.0);
            close(&name, run.bottom_m, want.sure("bottom_m"), 0.0);
            close(&name, run.drop_c, want.sure("dT_c"), 1e-6);
            close(&name, run.density_gain, want.sure("drho_kg_m3"), 1e-6);
            let own = steps.get(run.steps.clone()).unwrap();
            let steepest = span(own, 0..own.len(), &[]).unwrap().thermocline;
            close(&name, steepest.value_m, want.sure("steepest_midpoint_m"), 1e-9);
            close(&name, steepest.gradient_c_per_m, want.sure("max_gradient_c_per_m"), 1e-6);
            assert_eq!((chosen.main.as_ref() == Some(run)).to_string(), want.text("main"), "{name}");
            assert_eq!(
                (chosen.warm_today.as_ref() == Some(run)).to_string(),
                want.text("near_surface"),
                "{name}"
            );
        }
    }
}

fn state_named(name: &str) -> State {
    match name {
        "stratified" => State::Stratified,
        "weak" => State::Weak,
        "mixed" => State::Mixed,
        "inverse" => State::Inverse,
        "unstable" => State::Unstable,
        other => panic!("{other}"),
    }
}

#[test]
fn state_of_every_profile() {
    let rows = table("check-values/stratification_state.csv");
    assert_eq!(profiles().len(), rows.len());
    for (name, profile) in profiles() {
        let want = row(&rows, &name);
        let levels = levels(&profile, 0.0);
        let steps = steps(&levels);
        let (got, _) = facts(&levels, 0.0, layercast_core::Density::Tanaka).unwrap();
        close(&name, got.top_c, want.sure("top_c"), 1e-6);
        close(&name, got.bottom_c, want.sure("bottom_c"), 1e-6);
        close(&name, got.density_gain, want.sure("density_difference_kg_m3"), 1e-6);
        close(&name, got.inversion, want.sure("inversion_kg_m3"), 1e-6);
        let steep_run = !surviving(runs(&levels, &steps, 1.0), 0.0).is_empty();
        assert_eq!(state(&got, steep_run), state_named(want.text("state")), "{name}");
    }
}

#[test]
fn the_whole_analysis_of_every_profile() {
    let states = table("check-values/stratification_state.csv");
    let middles = table("check-values/thermocline.csv");
    let spans = table("check-values/span.csv");
    let mixed_layers = table("check-values/mixed_layer.csv");
    for (name, profile) in profiles() {
        let got = analyse(&one_series(&profile, 0.1), &Method::default());
        let want = match name.as_str() {
            "two_points" | "three_points" => State::TooFew,
            _ => state_named(row(&states, &name).text("state")),
        };
        assert_eq!(got.state, want, "{name}");
        let value_m = match (name.as_str(), want) {
            ("strong_diurnal", _) => Some(7.25), // the main layer's, not the afternoon's
            ("tie_apart", _) => Some(2.75),
            (_, State::Stratified | State::Weak) => row(&middles, &name).number("midpoint_m"),
            _ => None,
        };
        close_option(&name, got.thermocline.map(|t| t.value_m), value_m, 1e-9);
        // Read once: σ is 0.1 °C.
        let span = spans.iter().find(|r| r.text("profile") == name && r.sure("sigma_c") == 0.1).unwrap();
        if let Some(found) = got.thermocline {
            close(&name, found.span_top_m, span.sure("span_top_m"), 0.0);
            close(&name, found.span_bottom_m, span.sure("span_bottom_m"), 0.0);
        }
        let class_rule = grouped(&mixed_layers, "method").into_iter().find(|(m, _)| *m == "t1p0").unwrap().1;
        let class_rule = class_rule
            .into_iter()
            .find(|r| r.text("profile") == name && r.sure("reference_depth_m") == 0.5)
            .unwrap();
        match got.mixed_layer {
            Some(MixedLayer::At { value_m, low_m, high_m, .. }) => {
                close(&name, value_m, class_rule.sure("value_m"), 1e-6);
                assert!(low_m < value_m && value_m < high_m, "{name}");
                assert_ne!(want, State::Mixed, "{name}");
            }
            Some(MixedLayer::AtLeast { at_least_m }) => {
                let reached = class_rule.number("value_m").filter(|_| want != State::Mixed);
                assert_eq!(reached, None, "{name}");
                close(&name, at_least_m, profile.last().unwrap().0, 0.0);
            }
            None => assert!(matches!(want, State::Inverse | State::Unstable | State::TooFew), "{name}"),
        }
        assert_eq!(got.fastest_warming.is_some(), want == State::Inverse, "{name}");
    }
}
