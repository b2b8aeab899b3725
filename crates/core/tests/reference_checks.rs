//! Quality checks against flags computed by a general-purpose QARTOD library.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{Row, grouped, table};
use layercast_core::Flag;
use layercast_core::cast::flat_line::flat_line_flags;
use layercast_core::cast::gross_range::{Limits, gross_range};
use layercast_core::cast::inversion::inversion_flags;
use layercast_core::cast::rate_of_change::rate_of_change_flags;
use layercast_core::cast::roll_up::roll_up;
use layercast_core::cast::spike::{Thresholds, spike_flags, spike_from_middle_flags};
use layercast_core::water::density::density_kg_m3;

fn digits(flags: &[Flag]) -> Vec<u8> {
    flags.iter().map(|f| *f as u8).collect()
}

fn wanted(rows: &[&Row]) -> Vec<u8> {
    rows.iter().map(|r| r.whole("flag")).collect()
}

#[test]
fn gross_range_flags() {
    let limits = Limits { fail_c: (-5.0, 40.0), suspect_c: (0.0, 30.0) };
    for row in table("check-values/qc_gross_range.csv") {
        let value = row.number("value_c");
        assert_eq!(gross_range(value, &limits) as u8, row.whole("flag"), "{value:?}");
    }
}

#[test]
fn spike_flags_of_both_methods() {
    let rows = table("check-values/qc_spike.csv");
    let thresholds = Thresholds { suspect_c: 1.0, fail_c: 2.0 };
    for (method, flags) in [
        ("differential", spike_flags as fn(&[Option<f64>], &Thresholds) -> Vec<Flag>),
        ("average", spike_from_middle_flags),
    ] {
        let groups = grouped(rows.iter().filter(|r| r.text("method") == method), "series");
        assert_eq!(groups.len(), 6);
        for (name, rows) in groups {
            let series: Vec<Option<f64>> = rows.iter().map(|r| r.number("value_c")).collect();
            assert_eq!(digits(&flags(&series, &thresholds)), wanted(&rows), "{method}, {name}");
        }
    }
}

fn in_time(rows: &[&Row]) -> Vec<(f64, Option<f64>)> {
    rows.iter().map(|r| (r.sure("time_s"), r.number("value_c"))).collect()
}

#[test]
fn rate_of_change_flags_of_a_series() {
    let rows = table("check-values/qc_rate_of_change.csv");
    let groups = grouped(&rows, "series");
    assert_eq!(groups.len(), 1);
    for (name, rows) in groups {
        let got = rate_of_change_flags(&in_time(&rows), 0.01, Some(0.04));
        assert_eq!(digits(&got), wanted(&rows), "{name}");
    }
}

#[test]
fn flat_line_flags_of_each_series() {
    let rows = table("check-values/qc_flat_line.csv");
    let groups = grouped(&rows, "series");
    assert_eq!(groups.len(), 4);
    for (name, rows) in groups {
        let got = flat_line_flags(&in_time(&rows), 180.0, 300.0, rows[0].sure("tolerance_c"));
        assert_eq!(digits(&got), wanted(&rows), "{name}");
    }
}

#[test]
fn density_inversion_flags() {
    let rows = table("check-values/qc_density_inversion.csv");
    let groups = grouped(&rows, "case");
    assert_eq!(groups.len(), 6);
    for (name, rows) in groups {
        let depths: Vec<f64> = rows.iter().map(|r| r.sure("depth_m")).collect();
        let densities: Vec<Option<f64>> = rows.iter().map(|r| r.number("t_c").map(density_kg_m3)).collect();
        assert_eq!(digits(&inversion_flags(&depths, &densities)), wanted(&rows), "{name}");
    }
}

#[test]
fn flags_rolled_up() {
    let flag = |digit: u8| match digit {
        1 => Flag::Pass,
        2 => Flag::NotEvaluated,
        3 => Flag::Suspect,
        4 => Flag::Fail,
        _ => Flag::Missing,
    };
    for row in table("check-values/qc_aggregate.csv") {
        let flags = ["flag_a", "flag_b", "flag_c"].map(|c| flag(row.whole(c)));
        assert_eq!(roll_up(&flags) as u8, row.whole("combined"), "{flags:?}");
    }
}
