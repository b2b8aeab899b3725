//! Thermometers: calibration in melting ice and beside a reference, thermistor curves.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, close_option, reading, table};
use layercast_core::cast::corrections::{Correction, correct};
use layercast_core::water::calibration::{offset_c, two_point_c};
use layercast_core::water::thermistor::{Beta, SteinhartHart};
use layercast_core::{Cast, Leg};

#[test]
fn melting_ice_and_a_second_point() {
    for row in table("check-values/calibration.csv") {
        let (raw_c, ice_c) = (row.sure("raw_reading"), row.sure("reading_in_ice_bath"));
        let cast = Cast { readings: vec![reading(1.0, raw_c, Leg::Down)], ..Cast::default() };
        let corrected = |one| correct(&cast, &[one]).cast.readings[0].temp_c;
        let want = row.number("offset_corrected_c");
        close_option("offset", Some(offset_c(raw_c, ice_c)), want, 1e-6);
        close_option("offset", corrected(Correction::ProbeOffset { ice_c }), want, 1e-6);
        let Some(read_c) = row.number("reading_at_reference") else { continue };
        let true_c = row.sure("reference_true_c");
        let want = row.number("two_point_corrected_c");
        close_option("two points", two_point_c(raw_c, ice_c, read_c, true_c), want, 1e-6);
        close_option(
            "two points",
            corrected(Correction::ProbeTwoPoint { ice_c, read_c, true_c }),
            want,
            1e-6,
        );
    }
}

#[test]
fn a_printed_table_of_a_thermistor() {
    let rows = table("check-values/thermistor_table.csv");
    let at = |t_c: f64| {
        let row = rows.iter().find(|r| r.sure("t_c") == t_c).unwrap();
        (t_c, row.sure("resistance_ohm"))
    };
    let three_terms = SteinhartHart::through([at(0.0), at(20.0), at(50.0)]).unwrap();
    // As the header of the table gives them.
    close("A", three_terms.a, 1.104504900076e-03, 1e-14);
    close("B", three_terms.b, 2.388609573169e-04, 1e-15);
    close("C", three_terms.c, 6.953605504612e-08, 1e-18);
    let beta = Beta::through(at(25.0), [at(0.0), at(50.0)]).unwrap();
    close("beta", beta.beta_k, 3892.701665, 1e-6);
    for row in &rows {
        let (t_c, ohm) = (row.sure("t_c"), row.sure("resistance_ohm"));
        let got_c = three_terms.temp_c(ohm).unwrap();
        close("three terms", got_c, row.sure("t_steinhart_hart_c"), 1e-6);
        close("three terms against the table", got_c, t_c, 0.002);
        close("its error", got_c - t_c, row.sure("sh_error_c"), 1e-6);
        close("beta form", beta.temp_c(ohm).unwrap(), row.sure("t_beta_c"), 1e-6);
        close("its error", beta.temp_c(ohm).unwrap() - t_c, row.sure("beta_error_c"), 1e-6);
        close("and back", three_terms.resistance_ohm(got_c).unwrap(), ohm, 1e-3);
        close("and back", beta.resistance_ohm(beta.temp_c(ohm).unwrap()).unwrap(), ohm, 1e-6);
    }
}

#[test]
fn both_formulas() {
    let mut seen = [0, 0];
    for row in table("check-values/thermistor_formulas.csv") {
        let (ohm, want_c) = (row.sure("resistance_ohm"), row.sure("t_c"));
        let got_c = match row.text("equation") {
            "steinhart_hart" => {
                seen[0] += 1;
                let printed = SteinhartHart { a: row.sure("A"), b: row.sure("B"), c: row.sure("C") };
                // The second row's coefficients are printed to ten decimals; the script that made the table has
                // them in full.
                let full =
                    SteinhartHart { a: 1.15679797363983e-3, b: 2.27813584600384e-4, c: 1.26349943638314e-7 };
                close("as printed", printed.temp_c(ohm).unwrap(), want_c, 2e-5);
                if (printed.a - full.a).abs() < 1e-9 { full.temp_c(ohm) } else { printed.temp_c(ohm) }
            }
            "beta(T0=25C,R0=10000,beta=3950)" => {
                seen[1] += 1;
                Beta { reference_c: 25.0, reference_ohm: 1e4, beta_k: 3950.0 }.temp_c(ohm)
            }
            other => panic!("no formula {other}"),
        };
        close_option(row.text("equation"), got_c, Some(want_c), 1e-6);
    }
    assert!(seen[0] == 2 && seen[1] >= 5, "{seen:?}");
}
