//! Thermometers: calibration in melting ice and beside a reference, thermistor curves.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

mod common;
use common::{close_option, reading, table};
use layercast_core::cast::corrections::{Correction, correct};
use layercast_core::water::calibration::{offset_c, two_point_c};
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
