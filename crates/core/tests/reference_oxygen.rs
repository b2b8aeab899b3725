//! Oxygen saturation against published tables, with salt, pressure and altitude.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, table};
use layercast_core::water::oxygen::{
    per_cent, pressure_atm, saturation_mg_l, theta_per_atm, vapour_pressure_atm,
};

#[test]
fn published_tables() {
    let rows = table("check-values/oxygen_published.csv");
    assert!(rows.len() >= 36);
    for row in rows {
        let t_c = row.sure("t_c");
        let got = saturation_mg_l(t_c, 0.0, 1.0).unwrap();
        let what = format!("oxygen, mg/L, at {t_c} °C, {}", row.text("source"));
        close(&what, got, row.sure("computed_mg_l"), 1e-6);
        close(&what, got, row.sure("published_mg_l"), row.sure("tolerance_mg_l"));
        close(&what, got - row.sure("published_mg_l"), row.sure("difference_mg_l"), 1e-6);
    }
}

#[test]
fn salt_and_pressure() {
    for row in table("check-values/oxygen_saturation.csv") {
        let (t_c, salinity, atm) = (row.sure("t_c"), row.sure("salinity"), row.sure("pressure_atm"));
        let want = row.sure("saturation_mg_l");
        let what = format!("oxygen, mg/L, at {t_c} °C, salinity {salinity}, {atm} atm");
        close(&what, saturation_mg_l(t_c, salinity, atm).unwrap(), want, 1e-6);
        close(&what, per_cent(want, t_c, salinity, atm).unwrap(), 100.0, 1e-5);
    }
}

#[test]
fn altitude() {
    for row in table("check-values/pressure_altitude.csv") {
        let altitude_m = row.sure("altitude_m");
        let atm = pressure_atm(altitude_m).unwrap();
        let at = |what: &str| format!("{what} at {altitude_m} m above the sea");
        close(&at("pressure, atm,"), atm, row.sure("pressure_atm"), 1e-9);
        close(&at("pressure, mm of mercury,"), atm * 760.0, row.sure("pressure_mmhg"), 1e-6);
        let (got, want) = (saturation_mg_l(15.0, 0.0, atm).unwrap(), row.sure("saturation_15c_mg_l"));
        close(&at("oxygen of 15 °C water, mg/L,"), got, want, 1e-6);
    }
}

#[test]
fn the_two_terms_of_pressure_are_the_right_size() {
    for row in table("check-values/oxygen_terms.csv") {
        let t_c = row.sure("t_c");
        close(&format!("theta at {t_c} °C"), theta_per_atm(t_c), row.sure("theta_formula"), 1e-9);
        let virial = row.sure("theta_from_virial");
        close("theta against the virial coefficient", theta_per_atm(t_c), virial, 0.02 * virial);
        close(
            &format!("vapour pressure, atm, at {t_c} °C"),
            vapour_pressure_atm(t_c),
            row.sure("u_formula_atm"),
            1e-9,
        );
        let steam = row.sure("psat_coolprop_atm");
        close("vapour against another library", vapour_pressure_atm(t_c), steam, 0.002 * steam);
    }
}
