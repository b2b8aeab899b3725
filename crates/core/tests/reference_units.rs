//! Conversions of units, exact.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, table};
use layercast_core::water::units;

#[test]
fn every_conversion() {
    for row in table("check-values/units.csv") {
        let (name, input, output) = (row.text("conversion"), row.sure("input"), row.sure("output"));
        let got = match name {
            "degC_to_degF" => {
                close("back to °C", units::celsius_from_fahrenheit(output), input, 1e-9);
                units::fahrenheit_from_celsius(input)
            }
            "degF_difference_to_degC_difference" => units::celsius_difference_from_fahrenheit(input),
            "degF_per_ft_to_degC_per_m" => units::celsius_per_metre_from_fahrenheit_per_foot(input),
            "ft_to_m" => units::metres_from_feet(input),
            "in_to_m" => units::metres_from_inches(input),
            other => panic!("no conversion for {other}"),
        };
        close(&format!("{name} of {input}"), got, output, 1e-9);
    }
}
