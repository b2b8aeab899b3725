//! Mixed-layer rules on the check profiles.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

mod common;
use common::{close_option, levels, profiles, table};
use layercast_core::layers::first_steep::first_steep;
use layercast_core::layers::mixed_layer::{density_rise_depth_m, temperature_step_depth_m};
use layercast_core::layers::steps::steps;

#[test]
fn thresholds_and_first_steep_step_of_every_profile() {
    let rows = table("check-values/mixed_layer.csv");
    let mut tested = 0;
    for (name, profile) in profiles() {
        let levels = levels(&profile, 0.0);
        let steps = steps(&levels);
        for row in rows.iter().filter(|r| r.text("profile") == name) {
            let (reference_m, method) = (row.sure("reference_depth_m"), row.text("method"));
            let (got, tolerance) = match method {
                "g1_top" => (first_steep(&steps, 1.0).map(|(top_m, _)| top_m), 0.0),
                "g1_mid" => (first_steep(&steps, 1.0).map(|(_, middle_m)| middle_m), 1e-9),
                _ => match (method.get(..1), method.get(1..).map(|n| n.replace('p', ".").parse::<f64>())) {
                    (Some("t"), Some(Ok(step))) => {
                        (temperature_step_depth_m(&levels, reference_m, step), 1e-6)
                    }
                    (Some("r"), Some(Ok(step))) => (density_rise_depth_m(&levels, reference_m, step), 1e-6),
                    _ => continue, // rules that are not in the product yet
                },
            };
            let what = format!("{name}, {method} from {reference_m} m");
            close_option(&what, got, row.number("value_m"), tolerance);
            assert_eq!(got.is_none().to_string(), row.text("not_reached"), "{what}");
            tested += 1;
        }
    }
    assert_eq!(tested, 20 * 9 + 3 * 4 * 7, "every t*, r* and g1* row");
}
