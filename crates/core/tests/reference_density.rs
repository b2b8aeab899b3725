//! Density of water by every formula against published values, IAPWS-95 and the Gibbs function, with and without salt.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{Row, close, close_option, table};
use layercast_core::water::density::{
    Density, SALTIEST_G_KG, chen_millero_kg_m3, density_kg_m3, eos80_kg_m3, kell_kg_m3,
};
use layercast_core::water::scales::{to_ipts_68_c, to_its_90_c};
use layercast_core::water::worth::{cooling_for_c, gain_kg_m3};

/// A formula by the name the tables give it: the temperature as the formula takes it.
fn by_name(formula: &str, temp_c: f64, salinity: f64) -> Option<f64> {
    Some(match formula {
        "tanaka2001" => density_kg_m3(temp_c),
        "kell1975" => kell_kg_m3(temp_c),
        "kell1975_t68" => kell_kg_m3(to_ipts_68_c(temp_c)),
        "eos80" | "eos80_pure_water" => eos80_kg_m3(temp_c, salinity),
        "eos80_t68" => eos80_kg_m3(to_ipts_68_c(temp_c), salinity),
        "chen_millero1986" => chen_millero_kg_m3(temp_c, salinity),
        _ => return None,
    })
}

#[test]
fn values_published_for_each_formula() {
    let rows = table("check-values/density_published.csv");
    // The others are recalled from memory.
    let rows: Vec<_> = rows.iter().filter(|r| r.text("status") == "read").collect();
    assert_eq!(rows.len(), 11);
    for row in rows {
        let (t_c, salinity) = (row.sure("t_c"), row.sure("salinity"));
        assert_eq!(row.sure("gauge_pressure_dbar"), 0.0);
        let got = by_name(row.text("formula"), t_c, salinity).unwrap();
        let what = format!("{} at {t_c} °C, {salinity}", row.text("formula"));
        close(&what, got, row.sure("density_kg_m3"), row.sure("tolerance_kg_m3"));
        close(&what, got, row.sure("computed_kg_m3"), 1e-9);
    }
}

#[test]
fn the_points_of_the_international_equation_of_state() {
    let rows = table("open-data/unesco_points.csv");
    // Those under pressure are of densities that are never compared here (methods 1.9).
    let rows: Vec<_> = rows.iter().filter(|r| r.sure("pressure_dbar") == 0.0).collect();
    assert_eq!(rows.len(), 8);
    for row in rows {
        let (t68_c, salinity) = (row.sure("t68_c"), row.sure("practical_salinity"));
        let want = row.sure("density_kg_m3");
        close("the formula", eos80_kg_m3(t68_c, salinity), want, 1e-8);
        close("the choice", Density::Eos80 { salinity }.kg_m3(to_its_90_c(t68_c)), want, 1e-8);
    }
}

#[test]
fn the_whole_range_against_iapws_95_by_three_libraries() {
    for row in table("check-values/density_by_formula.csv") {
        let t_c = row.sure("t_c");
        for formula in ["tanaka2001", "kell1975", "kell1975_t68", "eos80", "eos80_t68", "chen_millero1986"] {
            let got = by_name(formula, t_c, 0.0).unwrap();
            close(&format!("{formula} at {t_c} °C"), got, row.sure(formula), 1e-6);
        }
        for (choice, column) in [
            (Density::Tanaka, "tanaka2001"),
            (Density::TanakaSalt { salinity: 0.0 }, "tanaka2001"),
            (Density::Kell, "kell1975_t68"),
            (Density::Eos80 { salinity: 0.0 }, "eos80_t68"),
            (Density::ChenMillero { salinity: 0.0 }, "chen_millero1986"),
        ] {
            close(&format!("{choice:?} at {t_c} °C"), choice.kg_m3(t_c), row.sure(column), 1e-6);
        }
        let got = density_kg_m3(t_c);
        let tolerance = if t_c <= 35.0 { 0.0008 } else { 0.0012 };
        for library in ["iapws95", "coolprop", "gsw_exact"] {
            let Some(want) = row.number(library) else { continue };
            close(&format!("{library} at {t_c} °C"), got, want, tolerance);
        }
    }
}

/// Largest, where, mean, and largest once the mean is taken off, of the differences on the table's own grid.
fn differences(a: &str, b: &str) -> Option<(f64, f64, f64)> {
    let grid = || (0..=140).map(|i| f64::from(i) * 0.25);
    let all: Vec<f64> =
        grid().map(|t| Some(by_name(a, t, 0.0)? - by_name(b, t, 0.0)?)).collect::<Option<_>>()?;
    let mean = all.iter().sum::<f64>() / all.len() as f64;
    let most = |from: f64| all.iter().map(|d| (d - from).abs()).fold(0.0, f64::max);
    Some((most(0.0), mean, most(mean)))
}

#[test]
fn how_far_the_formulas_differ() {
    let rows = table("check-values/density_differences.csv");
    let sampled = table("check-values/density_by_formula.csv");
    let (mut recomputed, mut held) = (0, 0);
    for row in &rows {
        let (a, b) = (row.text("formula_a"), row.text("formula_b"));
        let (most, after_offset) = (row.sure("max_abs_diff_kg_m3"), row.sure("max_after_offset_kg_m3"));
        let what = format!("{a} against {b}");
        if let Some((got, mean, got_after)) = differences(a, b) {
            close(&what, got, most, 1e-9);
            close(&what, mean, row.sure("mean_diff_kg_m3"), 1e-9);
            close(&what, got_after, after_offset, 1e-9);
            recomputed += 1;
        } else if ["iapws95", "gsw_exact"].contains(&b) {
            // The stated maximum holds at every temperature at which the library's own value is at hand.
            for at in sampled.iter().filter(|r| r.sure("t_c") <= 35.0) {
                let Some(ours) = by_name(a, at.sure("t_c"), 0.0) else { continue };
                let apart = ours - at.sure(b);
                assert!(apart.abs() <= most + 1e-9, "{what} at {} °C: {apart}", at.sure("t_c"));
                held += 1;
            }
        }
    }
    assert_eq!(recomputed, 15, "pairs of our formulas");
    assert!(held >= 200, "{held}");
    // What the text says of them (methods 1.7): largest, and once the constant part is taken off.
    for (formula, most, after_offset) in [
        ("tanaka2001", 0.0007, 0.0005),
        ("eos80_t68", 0.0019, 0.0010),
        ("eos80", 0.0026, 0.0025),
        ("kell1975_t68", 0.0044, 0.0009),
        ("kell1975", 0.0036, 0.0013),
        ("chen_millero1986", 0.0036, 0.0012),
    ] {
        let row = rows.iter().find(|r| r.text("formula_a") == formula && r.text("formula_b") == "iapws95");
        let row = row.unwrap();
        close(formula, row.sure("max_abs_diff_kg_m3"), most, 0.000_051);
        close(formula, row.sure("max_after_offset_kg_m3"), after_offset, 0.000_051);
    }
}

#[test]
fn brackish_water() {
    let rows = table("check-values/density_brackish.csv");
    let mut limnological = 0;
    for row in &rows {
        let (salinity, t_c) = (row.sure("salinity"), row.sure("t_c"));
        let what = format!("{t_c} °C, {salinity}");
        let (eos80, exact) = (row.sure("eos80"), row.sure("gsw_exact"));
        close(&what, Density::Eos80 { salinity }.kg_m3(t_c), eos80, 1e-6);
        close(&what, eos80, exact, 0.004);
        let fresh = rows.iter().find(|r| r.sure("salinity") == 0.0 && r.sure("t_c") == t_c).unwrap();
        let with_salt = Density::TanakaSalt { salinity }.kg_m3(t_c);
        close(&what, with_salt, density_kg_m3(t_c) + eos80 - fresh.sure("eos80"), 1e-6);
        close(&what, with_salt, exact, 0.004);
        if let Some(want) = row.number("chen_millero1986") {
            assert!(salinity <= SALTIEST_G_KG);
            close(&what, Density::ChenMillero { salinity }.kg_m3(t_c), want, 1e-6);
            limnological += 1;
        }
    }
    assert!(limnological >= 28, "{limnological}");
}

#[test]
fn temperature_of_greatest_density() {
    let mut compared = 0;
    for row in table("check-values/density_maximum.csv") {
        let salinity = row.sure("salinity");
        let (choice, own_scale): (Density, fn(f64) -> f64) = match row.text("formula") {
            "tanaka2001" => (Density::Tanaka, |t| t),
            "kell1975" => (Density::Kell, to_ipts_68_c),
            "eos80" => (Density::Eos80 { salinity }, to_ipts_68_c),
            "chen_millero1986" => (Density::ChenMillero { salinity }, |t| t),
            // What salt does to the class's own formula, against the Gibbs function.
            "gsw_exact" => {
                let got = Density::TanakaSalt { salinity }.greatest_c();
                close_option("with salt", got, row.number("t_max_c"), 0.035);
                continue;
            }
            _ => continue, // other libraries, and water under pressure
        };
        let at_c = choice.greatest_c();
        close_option(row.text("formula"), at_c.map(own_scale), row.number("t_max_c"), 1e-4);
        close_option(row.text("formula"), at_c.map(|t| choice.kg_m3(t)), row.number("density_kg_m3"), 1e-7);
        compared += 1;
    }
    assert_eq!(compared, 9);
}

#[test]
fn what_a_density_step_is_worth_in_degrees() {
    for row in table("check-values/threshold_equivalents.csv") {
        let from_c = row.sure("t_ref_c");
        for (column, rise) in [("dT_for_0p03_c", 0.03), ("dT_for_0p1_c", 0.1), ("dT_for_0p125_c", 0.125)] {
            let got = cooling_for_c(Density::Tanaka, from_c, rise);
            close_option(&format!("{column} from {from_c} °C"), got, row.number(column), 1e-6);
        }
        for (column, cooling) in [("drho_for_1c_kg_m3", 1.0), ("drho_for_0p2c_kg_m3", 0.2)] {
            let got = gain_kg_m3(Density::Tanaka, from_c, cooling);
            close(&format!("{column} from {from_c} °C"), got, row.sure(column), 1e-9);
        }
    }
}

#[test]
fn the_scale_of_1968() {
    for row in table("check-values/temperature_scales.csv") {
        let (t90_c, t68_c) = (row.sure("t90_c"), row.sure("t68_c"));
        close("1968", to_ipts_68_c(t90_c), t68_c, 1e-9);
        close("difference", to_ipts_68_c(t90_c) - t90_c, row.sure("difference_c"), 1e-9);
        close("back", to_its_90_c(t68_c), row.sure("back_t90_c"), 1e-9);
    }
}

/// Salt as the tables hold it, with the level's temperature and the exact density at the surface.
fn salty_levels(casts: &[Row], levels: &[Row], salinity: &str) -> Vec<(String, f64, f64, f64)> {
    let same = |a: &Row, b: &Row| ["cast", "depth_m", "temperature_c"].iter().all(|c| a.text(c) == b.text(c));
    let salt = |level: &Row| casts.iter().find(|r| same(r, level)).map(|r| r.sure(salinity));
    (levels.iter())
        // Deeper, the water itself is warmed by the weight above it, which these densities know of and ours do not.
        .filter(|level| level.sure("depth_m") <= 120.0)
        .map(|level| {
            let (t, want) = (level.sure("temperature_c"), level.sure("pot_rho_kg_m3"));
            (level.text("cast").to_owned(), t, salt(level).unwrap(), want)
        })
        .collect()
}

#[test]
fn measured_salt_water_against_the_gibbs_function() {
    let mut seen = 0;
    let casts = table("open-data/teos10_check_casts.csv");
    let levels = table("open-data/teos10_check_casts.levels.csv");
    for (cast, temp_c, salt_g_kg, want) in salty_levels(&casts, &levels, "absolute_salinity_g_kg") {
        // Salinity of sea water as salt as this.
        let salinity = salt_g_kg * 35.0 / 35.16504;
        let tolerance = if cast == "check3" { 0.004 } else { 0.012 }; // 6 to 11, and 34 to 35 of salinity
        for choice in [Density::Eos80 { salinity }, Density::TanakaSalt { salinity }] {
            close(&format!("{cast}, {temp_c} °C, {salinity}"), choice.kg_m3(temp_c), want, tolerance);
        }
        seen += 1;
    }
    assert!(seen >= 24, "{seen}");
}

#[test]
fn salt_of_another_kind_is_approximate_but_its_differences_hold() {
    // The salinity of the Baltic is told from conductivity; its salt is heavier than the sea's.
    let casts = table("open-data/baltic_pairs.csv");
    let mut levels = salty_levels(&casts, &table("open-data/baltic_pairs.levels.csv"), "practical_salinity");
    levels.sort_by(|a, b| a.0.cmp(&b.0));
    assert!(levels.len() >= 320);
    for cast in levels.chunk_by(|a, b| a.0 == b.0) {
        let ours = |l: &(String, f64, f64, f64)| Density::TanakaSalt { salinity: l.2 }.kg_m3(l.1);
        let first = &cast[0];
        for level in cast {
            close(&level.0, ours(level), level.3, 0.06);
            close(&level.0, ours(level) - ours(first), level.3 - first.3, 0.025);
        }
    }
}
