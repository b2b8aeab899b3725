//! Basins, Schmidt stability, potential energy anomaly, heat and wind numbers.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, close_option, levels, one_series, profiles, table};
use layercast_core::stability::anomaly::anomaly_j_m3;
use layercast_core::stability::basin::Basin;
use layercast_core::stability::stability;
use layercast_core::stability::whole::{HEAT_J_M3_K, Whole, whole};
use layercast_core::stability::wind::{
    LakeNumber, friction_velocity_m_s, reduced_gravity_m_s2, stress_pa, wedderburn, wind_numbers,
};
use layercast_core::water::density::{Density, density_kg_m3};
use layercast_core::{Method, analyse};

const CLASS_POND: [(f64, f64); 7] =
    [(0.0, 12000.0), (1.0, 10400.0), (2.0, 8300.0), (3.0, 5900.0), (4.0, 3400.0), (5.0, 1300.0), (6.0, 0.0)];

fn basin(contours: &[(f64, f64)]) -> Basin {
    Basin::from_contours(contours).unwrap()
}

/// Relative, with room for nothing at all.
#[track_caller]
fn near(what: &str, got: f64, want: f64, relative: f64) {
    close(what, got, want, relative * want.abs() + 1e-12);
}

#[test]
fn area_and_volume_between_contours() {
    let rows = table("check-values/hypsography.csv");
    assert_eq!(rows.len(), 14);
    for row in rows {
        let basin = match row.text("basin") {
            "cone_2_contours" => basin(&[(0.0, 40000.0), (12.0, 0.0)]),
            "class_pond" => basin(&CLASS_POND),
            other => panic!("no basin {other}"),
        };
        let depth_m = row.sure("depth_m");
        let (area, volume) = (basin.area_m2(depth_m), basin.volume_m3(0.0, depth_m));
        near("area", area, row.sure("area_m2"), 1e-9);
        near("volume", volume, row.sure("volume_above_m3"), 1e-9);
        if let Some(exact) = row.number("exact_area_m2") {
            near("the cone's area", area, exact, 1e-9);
            near("the cone's volume", volume, row.sure("exact_volume_above_m3"), 1e-9);
        }
    }
}

/// Two layers parted at `at_m`, the jump within 2 µm.
fn two_layers(at_m: f64, depth_m: f64, upper_c: f64, lower_c: f64) -> Vec<(f64, f64)> {
    vec![(0.0, upper_c), (at_m - 1e-6, upper_c), (at_m + 1e-6, lower_c), (depth_m, lower_c)]
}

/// The temperature above 4 °C at which water has a density.
fn temp_of_density(density: f64) -> f64 {
    let (mut cold, mut warm) = (4.0, 40.0);
    for _ in 0..80 {
        let middle = (cold + warm) / 2.0;
        if density_kg_m3(middle) > density { cold = middle } else { warm = middle }
    }
    cold
}

#[test]
fn stability_by_closed_form() {
    let rows = table("check-values/stability_analytic.csv");
    assert_eq!(rows.len(), 8);
    for row in rows {
        let (h1, upper_c, lower_c) =
            (row.sure("h1_or_depth_m"), row.sure("t_upper_c"), row.sure("t_lower_c"));
        let depth_m = h1 + row.number("h2_m").unwrap_or(0.0);
        let [upper, lower] = [upper_c, lower_c].map(density_kg_m3);
        close("difference", lower - upper, row.sure("density_difference_kg_m3"), 1e-9);
        let (cast, shape) = match row.text("case") {
            "two_layer_box" => (two_layers(h1, depth_m, upper_c, lower_c), [(0.0, 1.0), (depth_m, 1.0)]),
            "two_layer_cone_H12" => {
                (two_layers(h1, depth_m, upper_c, lower_c), [(0.0, 40000.0), (12.0, 0.0)])
            }
            "linear_density_box" => {
                let at = |i: u32| f64::from(i) * 0.01;
                let count = (depth_m * 100.0).round() as u32;
                let cast =
                    (0..=count).map(|i| (at(i), temp_of_density(upper + (lower - upper) * at(i) / depth_m)));
                (cast.collect(), [(0.0, 1.0), (depth_m, 1.0)])
            }
            other => panic!("no case {other}"),
        };
        let got = whole(&levels(&cast, 0.0), &basin(&shape), depth_m, Density::Tanaka).unwrap();
        near(row.text("case"), got.schmidt_j_m2, row.sure("S_J_m2"), 1e-4);
        if let Some(anomaly) = row.number("phi_J_m3") {
            near(row.text("case"), anomaly_j_m3(got.schmidt_j_m2, got.depth_m).unwrap(), anomaly, 1e-4);
        }
        let last = got.mixing.last().unwrap();
        assert_eq!((last.to_depth_m, last.work_j_m2), (depth_m, got.schmidt_j_m2));
    }
}

#[test]
fn stability_of_the_check_profiles() {
    let rows = table("check-values/stability_profiles.csv");
    assert_eq!(rows.len(), 14);
    for row in rows {
        let (name, shape) = (row.text("profile"), row.text("basin"));
        let profile = profiles().into_iter().find(|(n, _)| n == name).unwrap().1;
        let depth_m = row.sure("depth_m");
        let what = format!("{name}, {shape}");
        let contours: &[(f64, f64)] = match shape {
            "box" => &[(0.0, 10000.0), (depth_m, 10000.0)],
            "cone" => &[(0.0, 10000.0), (depth_m, 0.0)],
            _ => &CLASS_POND,
        };
        let check = |got: &Whole| {
            near(&what, got.centre_of_volume_m, row.sure("centre_of_volume_m"), 1e-9);
            near(&what, got.mean_density_kg_m3, row.sure("mean_density_kg_m3"), 1e-9);
            near(&what, got.mean_temp_c, row.sure("mean_t_c"), 1e-8);
            near(&what, got.schmidt_j_m2, row.sure("S_J_m2"), 1e-6);
            near(&what, got.heat_j_m2, row.sure("heat_J_m2"), 1e-6);
        };
        let got = whole(&levels(&profile, 0.0), &basin(contours), depth_m, Density::Tanaka).unwrap();
        check(&got);
        near(&what, got.volume_m3, row.sure("volume_m3"), 1e-9);
        // The same from the whole analysis, and of the column where the basin is a box.
        let found =
            stability(&analyse(&one_series(&profile, 0.1), &Method::default()), None, Some(&basin(contours)));
        check(&found.basin.unwrap());
        if shape == "box" {
            check(&found.column.unwrap());
            near(&what, found.anomaly_j_m3.unwrap(), row.sure("phi_J_m3"), 1e-6);
        } else {
            assert_eq!(row.number("phi_J_m3"), None);
        }
    }
}

#[test]
fn heat_capacity_is_within_a_hundredth() {
    let rows = table("check-values/heat_capacity.csv");
    assert_eq!(rows.len(), 5);
    for row in rows {
        near(row.text("t_c"), HEAT_J_M3_K, row.sure("rho_cp_j_m3_k"), 0.01);
    }
}

#[test]
fn wind_over_two_layers() {
    let rows = table("check-values/wind_numbers.csv");
    assert_eq!(rows.len(), 3);
    for row in rows {
        let [upper, lower] = ["t_upper_c", "t_lower_c"].map(|t| density_kg_m3(row.sure(t)));
        let [h1, h2, area, wind] = ["h1_m", "h2_m", "area_m2", "u10_m_s"].map(|c| row.sure(c));
        let stress = stress_pa(wind);
        near("stress", stress, row.sure("stress_pa"), 1e-9);
        let friction = friction_velocity_m_s(stress, lower).unwrap();
        near("friction velocity", friction, row.sure("ustar_m_s"), 1e-8); // printed to ten places
        let gravity = reduced_gravity_m_s2(upper, lower);
        near("reduced gravity", gravity, row.sure("reduced_gravity_m_s2"), 1e-7); // printed to ten places
        let w = wedderburn(gravity, h1, friction, area.sqrt()).unwrap();
        near("Wedderburn number", w, row.sure("wedderburn"), 1e-9);
        let lake = LakeNumber {
            schmidt_j_m2: 9.80665 * (lower - upper) * h1 * h2 / 2.0,
            area_m2: area,
            depth_m: h1 + h2,
            steep_middle_m: h1,
            centre_of_volume_m: (h1 + h2) / 2.0,
            lower_kg_m3: lower,
            friction_m_s: friction,
        };
        let l = lake.value().unwrap();
        near("lake number", l, row.sure("lake_number"), 1e-9);
        near("their ratio", l / w, row.sure("ratio_LN_over_W"), 1e-9);
        // The same from a cast: readings close to the jump, so that it is the steep layer.
        let t = ["t_upper_c", "t_lower_c"].map(|t| row.sure(t));
        let cast = [
            (0.0, t[0]),
            (h1 / 2.0, t[0]),
            (h1 - 0.001, t[0]),
            (h1 + 0.001, t[1]),
            (h1 + 1.0, t[1]),
            (h1 + h2, t[1]),
        ];
        let analysis = analyse(&one_series(&cast, 0.01), &Method::default());
        let got = wind_numbers(&analysis, &basin(&[(0.0, area), (h1 + h2, area)]), wind);
        if analysis.thermocline.is_some() {
            let got = got.unwrap();
            near("parted", got.parted_at_m, h1, 1e-9);
            near("Wedderburn number of a cast", got.wedderburn, row.sure("wedderburn"), 1e-3);
            near("lake number of a cast", got.lake_number, row.sure("lake_number"), 1e-3);
            near("its stress", got.stress_pa, stress, 1e-12);
            near("its friction", got.friction_m_s, friction, 1e-3);
            near("its gravity", got.reduced_gravity_m_s2, gravity, 1e-3);
        } else {
            assert_eq!(got, None);
        }
    }
}

#[test]
fn without_wind_a_thermocline_or_depth_below_it_there_are_no_wind_numbers() {
    let cast = two_layers(4.0, 10.0, 22.0, 8.0);
    let layered = analyse(&one_series(&cast, 0.1), &Method::default());
    let even =
        analyse(&one_series(&[(0.0, 9.0), (1.0, 9.0), (2.0, 9.0), (3.0, 9.0)], 0.1), &Method::default());
    let lake = basin(&[(0.0, 90000.0), (10.0, 100.0)]);
    assert!(wind_numbers(&layered, &lake, 4.0).is_some());
    for wind in [0.0, -3.0, f64::NAN, f64::INFINITY, 121.0] {
        assert_eq!(wind_numbers(&layered, &lake, wind), None);
    }
    assert_eq!(wind_numbers(&even, &lake, 4.0), None);
    assert_eq!(wind_numbers(&layered, &basin(&[(0.0, 9.0), (4.0, 1.0)]), 4.0), None);
    close_option("still there", wind_numbers(&layered, &lake, 4.0).map(|w| w.parted_at_m), Some(4.0), 1e-6);
}

/// A sharp summer lake and one under ice in a pond of five contours, integrated piece by piece with scipy 1.17.1 (quad,
/// relative error 1e-11) from methods 7.4 and 7.5, the density written out anew.
#[test]
fn stability_of_a_pond_by_another_program() {
    let pond = basin(&[(0.0, 42_000.0), (2.0, 30_000.0), (5.0, 14_000.0), (9.0, 4_000.0), (13.0, 200.0)]);
    let sharp = [
        24.0, 23.95, 23.95, 24.05, 23.9, 23.9, 23.45, 22.0, 17.8, 11.95, 8.5, 7.35, 7.1, 6.9, 7.0, 6.95, 6.9,
        7.0, 7.05, 7.0, 7.0, 6.95, 7.0, 7.05, 7.05,
    ];
    let ice = [0.3, 1.4, 2.3, 2.9, 3.3, 3.6, 3.8, 3.9, 4.0, 4.0, 4.1];
    for (step_m, temps_c, schmidt_j_m2, mean_density) in [
        (0.5, sharp.as_slice(), 108.799_393_455_8, 998.167_857_394_3),
        (1.0, &ice, 2.717_645_125_4, 999.946_226_862_2),
    ] {
        let rows: Vec<(f64, f64)> =
            temps_c.iter().enumerate().map(|(i, t)| (step_m * i as f64, *t)).collect();
        let got = whole(&levels(&rows, 0.0), &pond, 99.0, Density::Tanaka).unwrap();
        near("Schmidt", got.schmidt_j_m2, schmidt_j_m2, 1e-8);
        near("mean density", got.mean_density_kg_m3, mean_density, 1e-12);
        near("volume", got.volume_m3, 176_928.543_283_7, 1e-9);
        near("centre of volume", got.centre_of_volume_m, 3.253_039_337_2, 1e-9);
    }
}
