//! Three depths printed as worked examples in a field programme's information sheet.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, levels, one_series, table};
use layercast_core::layers::first_steep::first_steep;
use layercast_core::layers::span::span;
use layercast_core::layers::steps::steps;
use layercast_core::{Method, Rule, analyse};

#[test]
fn the_published_depths() {
    let cast: Vec<(f64, f64)> = (table("check-values/field_rule_example.csv").iter())
        .map(|r| (r.sure("depth_m"), r.sure("t_c")))
        .collect();
    let steps = steps(&levels(&cast, 0.0));
    let (top_m, middle_m) = first_steep(&steps, 1.0).unwrap();
    let thermocline_m = span(&steps, 0..steps.len(), &[]).unwrap().thermocline.value_m;
    let analysis = analyse(&one_series(&cast, 0.1), &Method::default());
    let by_rule =
        |rule: Rule| analysis.rules.iter().find(|r| r.rule == rule).and_then(|r| r.value_m).unwrap();
    let rows = table("check-values/field_rule_expected.csv");
    assert_eq!(rows.len(), 3);
    for row in rows {
        let (bare_m, rule) = match row.text("rule") {
            "epilimnion_until_1990_midpoint_of_first_1C_per_m_interval" => (middle_m, Rule::FirstSteepMiddle),
            "epilimnion_since_2009_last_reading_before_1C_per_m" => (top_m, Rule::FirstSteepTop),
            "thermocline_midpoint_of_steepest_interval" => (thermocline_m, Rule::SteepestMiddle),
            other => panic!("no rule {other}"),
        };
        for got in [bare_m, by_rule(rule)] {
            close(row.text("rule"), got, row.sure("depth_m"), 1e-9);
            close(row.text("rule"), got, row.sure("published_depth_m"), 1e-9);
        }
    }
}
