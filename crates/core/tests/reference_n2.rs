//! Buoyancy frequency, its period, and resistance to mixing.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, close_option, levels, profiles, table};
use layercast_core::stability::buoyancy::{n2_per_s2, period_s};
use layercast_core::stability::resistance::resistance;
use layercast_core::stability::steps;
use layercast_core::water::density::density_kg_m3;

#[test]
fn buoyancy_of_every_step_of_six_profiles() {
    let rows = table("check-values/n2.csv");
    let mut tested = 0;
    for (name, profile) in profiles() {
        let wanted: Vec<_> = rows.iter().filter(|r| r.text("profile") == name).collect();
        let steps = steps(&levels(&profile, 0.0));
        assert!(wanted.is_empty() || wanted.len() == steps.len(), "{name}");
        for (step, want) in steps.iter().zip(wanted) {
            let what = format!("{name} at {} m", want.text("mid_depth_m"));
            close(&what, (step.top_m + step.bottom_m) / 2.0, want.sure("mid_depth_m"), 1e-9);
            close(&what, step.n2_per_s2, want.sure("n2_reference_s2"), 1e-9);
            // Against exact Gibbs densities, which the formula of density parts from by its own error.
            let gibbs = want.sure("n2_gibbs_s2");
            close(&what, step.n2_per_s2, gibbs, if gibbs > 1e-3 { 1e-3 * gibbs } else { 2e-5 });
            tested += 1;
        }
    }
    assert_eq!(tested, rows.len());
}

#[test]
fn eight_pairs_by_closed_form() {
    let rows = table("check-values/n2_pairs.csv");
    assert_eq!(rows.len(), 8);
    for row in rows {
        let [upper, lower] = ["t_upper_c", "t_lower_c"].map(|t| density_kg_m3(row.sure(t)));
        close("upper", upper, row.sure("rho_upper"), 1e-9);
        close("lower", lower, row.sure("rho_lower"), 1e-9);
        let n2 = n2_per_s2(upper, lower, row.sure("dz_m")).unwrap();
        close("N²", n2, row.sure("n2_s2"), 1e-9);
        close_option("period", period_s(n2), row.number("period_s"), 1e-6);
    }
}

#[test]
fn resistance_to_mixing_of_eleven_pairs() {
    let rows = table("check-values/rtrm.csv");
    assert_eq!(rows.len(), 11);
    for row in rows {
        let [upper, lower] = ["t_upper_c", "t_lower_c"].map(|t| density_kg_m3(row.sure(t)));
        close("difference", lower - upper, row.sure("density_difference_kg_m3"), 1e-9);
        close("resistance", resistance(upper, lower), row.sure("rtrm_8"), 1e-6);
        let unit = density_kg_m3(4.0) - density_kg_m3(5.0);
        close("in exact units", (lower - upper) / unit, row.sure("rtrm_exact"), 1e-6);
    }
}
