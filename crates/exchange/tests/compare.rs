//! The example program that compares two tables, from outside.

#![allow(clippy::unwrap_used)]

#[path = "../examples/shared/opened.rs"]
mod opened;
#[path = "../examples/shared/render.rs"]
mod render;
#[path = "../examples/compare/report.rs"]
mod report;

use serde_json::Value;
use std::path::{Path, PathBuf};

const KEYS: [&str; 12] = [
    "a",
    "b",
    "refused",
    "verdict",
    "best",
    "cannot_be_told_from",
    "rms_c",
    "mean_c",
    "chance",
    "explanations",
    "heat",
    "shared",
];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// Exit code and what was printed.
fn compare(a: &str, b: &str, more: &[&str]) -> (u8, Value) {
    let (a, b) = (root().join(a), root().join(b));
    let (out, err, code) = report::run(&[&[a.to_str().unwrap(), b.to_str().unwrap()], more].concat());
    assert_eq!(err, "");
    let report: Value = serde_json::from_str(&out).unwrap();
    for key in KEYS {
        assert!(report.get(key).is_some(), "no {key}");
    }
    assert_eq!(report.as_object().unwrap().len(), KEYS.len());
    (code, report)
}

/// The summer cast with every temperature 0.3 °C higher, as a file of its own.
fn warmer() -> PathBuf {
    let text = std::fs::read_to_string(root().join(SUMMER)).unwrap();
    let lines = text.lines().enumerate().map(|(i, line)| {
        if i < 2 {
            return line.to_owned();
        }
        let cells: Vec<f64> = line.split(',').map(|cell| cell.parse().unwrap()).collect();
        format!("{},{:.1},{:.1}", cells[0], cells[1] + 0.3, cells[2] + 0.3)
    });
    let file = std::env::temp_dir().join(format!("layercast-warmer-{}.csv", std::process::id()));
    std::fs::write(&file, lines.collect::<Vec<_>>().join("\n")).unwrap();
    file
}

const SUMMER: &str = "static-data/casts/layered-summer.csv";

#[test]
fn a_table_and_itself_differ_by_chance() {
    let (code, report) = compare(SUMMER, SUMMER, &[]);
    assert_eq!((code, report["verdict"].as_str()), (0, Some("chance")));
    assert_eq!(report["rms_c"], 0.0);
    assert_eq!(report["chance"]["trials"], 2_000);
    assert!(report["chance"]["false_alarms"].as_f64().unwrap() <= 0.05);
    assert!(report["heat"].is_null() && report["refused"].is_null());
}

#[test]
fn a_probe_that_reads_more_is_named_and_the_sun_is_not_to_blame() {
    let file = warmer();
    let (code, report) = compare(SUMMER, file.to_str().unwrap(), &["--minutes", "60"]);
    std::fs::remove_file(&file).unwrap();
    assert_eq!((code, report["verdict"].as_str()), (0, Some("offset")));
    assert_eq!(report["cannot_be_told_from"], serde_json::json!([]));
    let offset = &report["explanations"][0];
    assert_eq!((offset["cause"].as_str(), offset["unit"].as_str()), (Some("offset"), Some("degC")));
    assert!((offset["value"].as_f64().unwrap() - 0.3).abs() < 1e-9);
    assert!(offset["explains"].as_f64().unwrap() > 0.999 && offset["leaves_more_than_chance"] == false);
    assert_eq!(offset["left_c"].as_array().unwrap().len(), report["shared"].as_array().unwrap().len());
    assert_eq!(report["explanations"].as_array().unwrap().len(), 5);
    // 0.3 °C through the 9.5 m of the table in an hour: 4.18e6 · 0.3 · 9.5 / 3600.
    let deepest_m = report["shared"].as_array().unwrap().last().unwrap()["depth_m"].as_f64().unwrap();
    let power = report["heat"]["power_w_m2"].as_f64().unwrap();
    assert!((power - 4.18e6 * 0.3 * deepest_m / 3_600.0).abs() < 0.1, "{power}");
    assert_eq!(report["heat"]["sun"], "cannot");
}

#[test]
fn water_of_other_seasons_is_more_than_chance() {
    let (code, report) = compare(SUMMER, "static-data/casts/mixed-autumn.csv", &[]);
    assert_eq!(code, 0);
    // A colder top says nine tenths of it; it is not all that makes autumn of summer.
    assert_eq!(report["verdict"], "warm_top");
    let best = report["best"].as_str().unwrap();
    let explanations = report["explanations"].as_array().unwrap();
    let fit = explanations.iter().find(|tried| tried["cause"] == best).unwrap();
    assert_eq!(fit["leaves_more_than_chance"], true);
}

#[test]
fn even_water_says_why_depths_were_not_tried() {
    let mixed = "static-data/casts/mixed-autumn.csv";
    let (_, report) = compare(mixed, mixed, &[]);
    assert_eq!(report["verdict"], "chance");
    for at in [1, 2, 4] {
        assert_eq!(report["explanations"][at]["not_tried"], "even_water");
    }
}

#[test]
fn a_table_that_cannot_be_read_or_shares_nothing_is_said() {
    let question = "tests/tables/fahrenheit_not_written.csv";
    let (code, report) = compare(SUMMER, question, &[]);
    assert_eq!((code, report["b"]["outcome"].as_str()), (2, Some("question")));
    assert!(report["verdict"].is_null() && !report["b"]["messages"].as_array().unwrap().is_empty());
    let (code, report) = compare("tests/tables/empty.csv", question, &[]);
    assert_eq!((code, report["a"]["outcome"].as_str()), (1, Some("error")));
    let (code, report) = compare(SUMMER, "tests/tables/one_reading.csv", &[]);
    assert_eq!((code, report["refused"].as_str()), (1, Some("too_few_depths")));
}

#[test]
fn wrong_arguments_say_how() {
    for arguments in [&[][..], &["one.csv"], &["a.csv", "b.csv", "c.csv"], &["a", "b", "--minutes"]] {
        assert_eq!(report::run(arguments), (String::new(), "compare FILE FILE [--minutes N]".to_owned(), 1));
    }
    for minutes in ["soon", "inf", "NaN"] {
        assert_eq!(report::run(&["a", "b", "--minutes", minutes]).1, "--minutes takes a number");
    }
    let (out, err, code) = report::run(&["no-such-file.csv", "no-such-file.csv"]);
    assert!(out.is_empty() && err.starts_with("no-such-file.csv: ") && code == 1);
}
