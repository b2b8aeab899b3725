//! Density of water against published values, IAPWS-95 and the Gibbs function.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

mod common;
use common::{close, table};
use layercast_core::water::density::density_kg_m3;

#[test]
fn values_published_for_this_formula() {
    let rows = table("check-values/density_published.csv");
    // The other rows are of formulas the product does not use, or recalled from memory.
    let rows: Vec<_> =
        rows.iter().filter(|r| r.text("formula") == "tanaka2001" && r.text("status") == "read").collect();
    assert_eq!(rows.len(), 5);
    for row in rows {
        let t_c = row.sure("t_c");
        close(
            &format!("{t_c} °C"),
            density_kg_m3(t_c),
            row.sure("density_kg_m3"),
            row.sure("tolerance_kg_m3"),
        );
    }
}

#[test]
fn the_whole_range_against_iapws_95_by_three_libraries() {
    for row in table("check-values/density_by_formula.csv") {
        let t_c = row.sure("t_c");
        let got = density_kg_m3(t_c);
        close(&format!("own column at {t_c} °C"), got, row.sure("tanaka2001"), 1e-6);
        let tolerance = if t_c <= 35.0 { 0.0008 } else { 0.0012 };
        for library in ["iapws95", "coolprop", "gsw_exact"] {
            let Some(want) = row.number(library) else { continue };
            close(&format!("{library} at {t_c} °C"), got, want, tolerance);
        }
    }
}
