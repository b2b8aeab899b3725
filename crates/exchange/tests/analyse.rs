//! The example program from outside: every key is there, every number in its place, the exit code right.

#![allow(clippy::unwrap_used)]

#[path = "../examples/shared/opened.rs"]
mod opened;
#[path = "../examples/shared/render.rs"]
mod render;
#[path = "../examples/analyse/report.rs"]
mod report;
#[path = "../examples/analyse/science.rs"]
mod science;

use serde_json::Value;
use std::path::{Path, PathBuf};

const KEYS: [&str; 18] = [
    "outcome",
    "readings",
    "profile",
    "pair_sd_c",
    "state",
    "thermocline",
    "metalimnion",
    "mixed_layer",
    "mixed_layer_season",
    "warm_layer_today",
    "fastest_warming_m",
    "certainty",
    "rules",
    "spreads",
    "stability",
    "pairs",
    "corrections",
    "messages",
];

fn root() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../..")
}

/// Exit code and what was printed.
fn analyse(file: &str, arguments: &[&str]) -> (u8, Value) {
    let path = root().join(file);
    let arguments = [&[path.to_str().unwrap()], arguments].concat();
    let (out, err, code) = report::run(&arguments);
    assert_eq!(err, "");
    let report: Value = serde_json::from_str(&out).unwrap();
    for key in KEYS {
        assert!(report.get(key).is_some(), "{file}: no {key}");
    }
    assert_eq!(report.as_object().unwrap().len(), KEYS.len(), "{file}");
    for message in report["messages"].as_array().unwrap() {
        let text = message["text"].as_str().unwrap();
        assert!(
            message["id"].is_string() && message["args"].is_object() && !text.starts_with('['),
            "{message}"
        );
    }
    (code, report)
}

#[test]
fn a_layered_cast_has_its_layers() {
    let (code, report) = analyse("static-data/casts/layered-summer.csv", &[]);
    assert_eq!(
        (code, report["outcome"].as_str(), report["state"].as_str()),
        (0, Some("understood"), Some("stratified"))
    );
    // Computed by hand from the table: the means of 3.5 and 4.0 m are 20.05 and 17.55, the largest drop.
    assert_eq!(report["thermocline"]["value_m"], 3.75);
    assert_eq!(report["thermocline"]["tellable"], true);
    assert_eq!(report["readings"].as_array().unwrap().len(), 40);
    let first = &report["readings"][0];
    assert_eq!(
        (first["depth_m"].as_f64(), first["temp_c"].as_f64(), first["line"].as_u64()),
        (Some(0.0), Some(23.4), Some(3))
    );
    assert_eq!(
        (first["leg"].as_str(), first["flag"].as_u64(), first["used"].as_bool()),
        (Some("down"), Some(1), Some(true))
    );
    let level = &report["profile"][7];
    assert_eq!((level["depth_m"].as_f64(), level["legs"].as_u64()), (Some(3.5), Some(2)));
    assert!((level["temp_c"].as_f64().unwrap() - 20.05).abs() < 1e-9 && level["sd_c"].is_f64());
    for key in ["top_m", "top_low_m", "top_high_m", "bottom_m", "bottom_low_m", "bottom_high_m"] {
        assert!(report["metalimnion"][key].is_f64(), "{key}");
    }
    assert_eq!(report["metalimnion"]["cut_off"], false);
    for key in ["value_m", "low_m", "high_m"] {
        assert!(report["mixed_layer"][key].is_f64(), "{key}");
    }
    assert!(report["pair_sd_c"].is_f64());
}

#[test]
fn how_sure_by_every_rule_and_how_hard_to_mix() {
    let (_, report) = analyse("static-data/casts/layered-summer.csv", &["--trials", "400"]);
    let number = |value: &Value| value.as_f64().unwrap();
    let sure = &report["certainty"];
    assert_eq!((sure["trials"].as_u64(), sure["depths"].as_array().unwrap().len()), (Some(400), 4));
    for depth in sure["depths"].as_array().unwrap() {
        let (low_m, high_m) = (number(&depth["low_m"]), number(&depth["high_m"]));
        assert!(low_m <= number(&depth["median_m"]) && number(&depth["median_m"]) <= high_m, "{depth}");
        assert!(depth["refused"].is_null(), "{depth}");
    }
    // The steepest step is told from its neighbour by little: 5.0 and 4.5 °C per metre.
    let shares = sure["depths"][0]["shares"].as_array().unwrap();
    assert!(shares.iter().any(|s| s["top_m"] == 3.5 && number(&s["share"]) > 0.5), "{shares:?}");
    assert!((shares.iter().map(|s| number(&s["share"])).sum::<f64>() - 1.0).abs() < 1e-9);
    let value = |id: &str| {
        let rule = report["rules"].as_array().unwrap().iter().find(|rule| rule["id"] == id).unwrap();
        rule["value_m"].as_f64()
    };
    assert_eq!((value("steepest_middle"), value("first_steep_top")), (Some(3.75), Some(2.5)));
    assert_eq!(value("temp_drop"), report["mixed_layer"]["value_m"].as_f64());
    assert!(report["spreads"]["mixed_layer"]["rules"].as_u64() > Some(10));
    // By hand from the table: d of the 20 pairs, s = √(Σd²/40).
    assert_eq!(report["pairs"]["s_c"], report["pair_sd_c"]);
    let each = report["pairs"]["each"].as_array().unwrap();
    let squares: f64 = each.iter().map(|pair| number(&pair["difference_c"]).powi(2)).sum();
    assert!((number(&report["pairs"]["s_c"]) - (squares / 40.0).sqrt()).abs() < 1e-9 && each.len() == 20);
    let column = &report["stability"]["column"];
    let all = column["mixing"].as_array().unwrap().last().unwrap();
    assert_eq!(all["work_j_m2"], column["schmidt_j_m2"]);
    assert!((0.1..5.0).contains(&number(&column["schmidt_sd_j_m2"])), "{column}");
    assert!(number(&column["schmidt_j_m2"]) > 100.0 && number(&column["schmidt_j_m2"]) < 400.0, "{column}");
    assert_eq!(report["corrections"], serde_json::json!([]));
    let arguments =
        ["--trials", "0", "--correct", "depth_zero:above_water=0.5", "--correct", "tape:marked=5"];
    let (_, corrected) = analyse("static-data/casts/layered-summer.csv", &arguments);
    assert!(corrected["certainty"].is_null());
    // Every mark 0.5 m less; the one at 0 comes to stand above the water. The tape waits for a field.
    assert_eq!(corrected["thermocline"]["value_m"], 3.25);
    assert_eq!(
        corrected["corrections"],
        serde_json::json!([
            { "id": "depth_zero", "changed": 40, "largest": -0.5, "refused": null },
            { "id": "tape", "changed": null, "largest": null, "refused": null },
        ])
    );
}

#[test]
fn the_other_examples_are_what_they_say() {
    let (_, mixed) = analyse("static-data/casts/mixed-autumn.csv", &[]);
    assert_eq!(mixed["state"], "mixed");
    assert_eq!(mixed["mixed_layer"], serde_json::json!({ "at_least_m": 7.0 }));
    assert!(mixed["thermocline"].is_null() && mixed["metalimnion"].is_null());
    let (_, ice) = analyse("static-data/casts/under-ice.csv", &[]);
    assert_eq!(ice["state"], "inverse");
    assert!(
        ice["fastest_warming_m"].is_f64() && ice["mixed_layer"].is_null() && ice["thermocline"].is_null()
    );
    for file in ["layered-summer", "mixed-autumn", "under-ice"] {
        let (code, report) = analyse(&format!("static-data/casts/{file}.csv"), &[]);
        assert_eq!((code, report["outcome"].as_str()), (0, Some("understood")), "{file}");
        // Noise in mixed water may look like heavier water on top by a hair (flag 3); every reading is used all the same.
        let readings = report["readings"].as_array().unwrap();
        assert!(readings.iter().all(|reading| reading["used"] == true && reading["flag"] != 4), "{file}");
    }
}

#[test]
fn a_question_gives_2_and_an_error_1_and_nothing_computed() {
    for (file, want, outcome) in [
        ("tests/tables/fahrenheit_not_written.csv", 2, "question"),
        ("tests/tables/picture_named_csv.csv", 1, "error"),
        ("tests/tables/empty.csv", 1, "error"),
        ("tests/tables/one_reading.csv", 0, "noticed"),
        ("tests/tables/all_depths_equal.csv", 0, "noticed"),
        ("tests/tables/number_beyond_all_measure.csv", 0, "noticed"),
    ] {
        let (code, report) = analyse(file, &[]);
        assert_eq!((code, report["outcome"].as_str()), (want, Some(outcome)), "{file}");
        if want > 0 {
            assert_eq!(report["readings"], serde_json::json!([]));
            for key in KEYS.iter().filter(|key| !matches!(**key, "outcome" | "readings" | "messages")) {
                assert!(report[*key].is_null(), "{file}: {key}");
            }
            assert!(!report["messages"].as_array().unwrap().is_empty(), "{file}");
        }
    }
}

#[test]
fn few_readings_are_too_few() {
    let (_, report) = analyse("tests/tables/one_reading.csv", &[]);
    assert_eq!(report["state"], "too_few");
    assert!(report["thermocline"].is_null() && report["pair_sd_c"].is_null());
}

#[test]
fn it_speaks_spanish_too() {
    let (_, report) = analyse("static-data/casts/layered-summer.csv", &["--lang", "es"]);
    let text = report["messages"][0]["text"].as_str().unwrap();
    assert_eq!(text, "Leídas 20 filas: profundidad en metros, al bajar y al subir en °C.");
}

#[test]
fn what_is_missing_or_doubted_is_kept_and_not_used() {
    let (_, report) = analyse("tests/tables/point_lost_in_a_depth.csv", &[]);
    let doubted = &report["readings"][14];
    assert_eq!((doubted["line"].as_u64(), doubted["used"].as_bool()), (Some(9), Some(false)));
    assert!(doubted["depth_m"].is_null());
    let (_, report) = analyse("tests/tables/empty_cells.csv", &[]);
    let missing = &report["readings"][7];
    assert_eq!((missing["flag"].as_u64(), missing["used"].as_bool()), (Some(9), Some(false)));
    assert!(missing["temp_c"].is_null());
}

#[test]
fn wrong_arguments_and_missing_files_are_said_and_give_1() {
    for arguments in [
        &[][..],
        &["a", "b"],
        &["no such file"],
        &["a", "--lang", "xx"],
        &["a", "--trials", "some"],
        &["a", "--correct", "x:y=1"],
    ] {
        let (out, err, code) = report::run(arguments);
        assert!(out.is_empty() && !err.is_empty() && code == 1, "{arguments:?}");
    }
}
