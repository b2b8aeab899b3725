//! Laws of stability: mixing layered water costs work, deeper costs more, a map that says the same says the same, and no
//! input breaks anything.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::any::{config, wild_kept_cast, wild_number as any_number};
use common::{close, one_series};
use layercast_core::stability::basin::{Basin, BasinFault};
use layercast_core::stability::whole::{HEAT_J_M3_K, whole};
use layercast_core::stability::wind::{LakeNumber, wedderburn, wind_numbers};
use layercast_core::stability::{Stability, stability, steps};
use layercast_core::water::density::Density;
use layercast_core::{Level, Method, analyse};
use proptest::prelude::*;

/// Levels of a profile from the surface: strictly deeper, lake water, any spacing.
fn water() -> impl Strategy<Value = Vec<Level>> {
    prop::collection::vec((1_u32..8, 0_u32..300), 2..30).prop_map(|rows| {
        let mut quarters = 0;
        let mut depth = |step| {
            let now = quarters;
            quarters += step;
            f64::from(now) * 0.25
        };
        rows.into_iter().map(|(step, t)| Level::bare(depth(step), f64::from(t) / 10.0, 0.1)).collect()
    })
}

/// The same with temperatures that never rise downward and stay above 4 °C: density never falls.
fn stable_water() -> impl Strategy<Value = Vec<Level>> {
    water().prop_map(|levels| {
        let mut temps: Vec<f64> = levels.iter().map(|l| l.temp_c.max(4.0)).collect();
        temps.sort_by(|a, b| b.total_cmp(a));
        levels.iter().zip(temps).map(|(l, t)| Level::bare(l.depth_m, t, l.sd_c)).collect()
    })
}

/// A basin by its contours: deeper and never wider downward.
fn lake() -> impl Strategy<Value = Vec<(f64, f64)>> {
    prop::collection::vec((0.25..5.0_f64, 0.0..1.0_f64), 1..8).prop_map(|rows| {
        let (mut depth_m, mut area_m2) = (0.0, 50_000.0);
        let mut contours = vec![(depth_m, area_m2)];
        for (step_m, share) in rows {
            depth_m += step_m;
            area_m2 *= share;
            contours.push((depth_m, area_m2));
        }
        contours
    })
}

/// Any number a damaged file may hold, and more near the limits of a basin.
fn wild_number() -> impl Strategy<Value = f64> {
    prop_oneof![10 => any_number(), 1 => Just(19_999.0), 1 => Just(5e14)]
}

fn wild_contours() -> impl Strategy<Value = Vec<(f64, f64)>> {
    prop_oneof![
        prop::collection::vec((wild_number(), wild_number()), 0..6),
        lake(),
        (lake(), any::<prop::sample::Index>(), wild_number(), wild_number()).prop_map(
            |(mut contours, at, z, a)| {
                let at = at.index(contours.len());
                contours[at] = (z, a);
                contours
            }
        ),
    ]
}

#[track_caller]
fn near(what: &str, got: f64, want: f64) {
    close(what, got, want, 1e-7 * (1.0 + want.abs()));
}

fn whole_and_finite(found: &Stability) {
    for s in &found.steps {
        assert!(s.n2_per_s2.is_finite() && s.resistance.is_finite() && s.period_s.is_none_or(f64::is_finite));
        assert!(s.bottom_m > s.top_m);
    }
    assert_eq!(found.anomaly_j_m3.is_some(), found.column.is_some());
    for w in [&found.column, &found.basin].into_iter().flatten() {
        let numbers = [
            w.depth_m,
            w.surface_area_m2,
            w.volume_m3,
            w.centre_of_volume_m,
            w.mean_density_kg_m3,
            w.mean_temp_c,
            w.heat_j_m2,
            w.schmidt_j_m2,
        ];
        assert!(numbers.iter().all(|x| x.is_finite()), "{numbers:?}");
        assert!(w.volume_m3 > 0.0, "no volume: {w:?}");
        assert!(
            w.centre_of_volume_m > 0.0 && w.centre_of_volume_m < w.depth_m,
            "centre out of the water: {w:?}"
        );
        assert!(w.mixing.iter().all(|m| m.work_j_m2.is_finite() && m.lifted_kg_by_1_m.is_finite()));
        assert_eq!(w.mixing.last().map(|m| (m.to_depth_m, m.work_j_m2)), Some((w.depth_m, w.schmidt_j_m2)));
    }
}

proptest! {
    #![proptest_config(config())]

    #[test]
    fn whatever_comes_in_what_goes_out_is_whole(cast in wild_kept_cast(), bed in prop::option::of(wild_number()), contours in wild_contours(), wind in wild_number()) {
        let a = analyse(&cast, &Method::default());
        let basin = Basin::from_contours(&contours);
        whole_and_finite(&stability(&a, bed, basin.as_ref().ok()));
        if let Ok(basin) = &basin
            && let Some(w) = wind_numbers(&a, basin, wind) {
            let numbers = [w.stress_pa, w.friction_m_s, w.parted_at_m, w.reduced_gravity_m_s2, w.wedderburn, w.lake_number];
            prop_assert!(numbers.iter().all(|x| x.is_finite()), "{:?}", w);
        }
    }

    #[test]
    fn contours_are_a_basin_or_say_why_not(contours in wild_contours(), z in wild_number(), y in wild_number()) {
        match Basin::from_contours(&contours) {
            Ok(basin) => {
                let (area, volume) = (basin.area_m2(z), basin.volume_m3(z, y));
                prop_assert!((0.0..=basin.surface_area_m2()).contains(&area));
                prop_assert!(volume.is_finite() && volume >= 0.0 && volume <= basin.volume_m3(0.0, basin.deepest_m()) * (1.0 + 1e-9));
                prop_assert_eq!(basin.contours(), &contours[..]);
            }
            Err(BasinFault::TooFew) => prop_assert!(contours.len() < 2),
            Err(BasinFault::NoSurface) => prop_assert!(contours[0].1 <= 0.0),
            Err(BasinFault::NotANumber { at } | BasinFault::DepthOutOfRange { at } | BasinFault::AreaOutOfRange { at }) => prop_assert!(at < contours.len()),
            Err(BasinFault::NotDeeper { at }) => prop_assert!(contours[at].0 <= contours[at - 1].0),
            Err(BasinFault::Growing { at }) => prop_assert!(contours[at].1 > contours[at - 1].1),
        }
    }

    #[test]
    fn mixing_layered_water_costs_work_and_deeper_costs_more(levels in stable_water(), contours in lake()) {
        for basin in [Basin::from_contours(&contours).unwrap(), Basin::unit_column(20.0).unwrap()] {
            let got = whole(&levels, &basin, 20.0, Density::Tanaka).unwrap();
            let mut before = 0.0;
            for work in &got.mixing {
                prop_assert!(work.work_j_m2 >= before - 1e-7, "{:?}", got.mixing);
                before = work.work_j_m2;
            }
            let (cold, warm) = (levels.last().unwrap().temp_c, levels[0].temp_c);
            prop_assert!(got.mean_temp_c >= cold - 1e-9 && got.mean_temp_c <= warm + 1e-9);
            near("heat", got.heat_j_m2, HEAT_J_M3_K * got.mean_temp_c * got.volume_m3 / got.surface_area_m2);
            near("volume", got.volume_m3, basin.volume_m3(0.0, got.depth_m));
        }
    }

    #[test]
    fn turned_upside_down_it_would_set_energy_free(levels in stable_water()) {
        let over: Vec<Level> = levels.iter().zip(levels.iter().rev()).map(|(l, t)| Level::bare(l.depth_m, t.temp_c, 0.0)).collect();
        let column = Basin::unit_column(20.0).unwrap();
        let depth_m = levels.last().unwrap().depth_m;
        let (a, b) = (whole(&levels, &column, depth_m, Density::Tanaka).unwrap(), whole(&over, &column, depth_m, Density::Tanaka).unwrap());
        prop_assert!(a.schmidt_j_m2 >= -1e-8 && b.schmidt_j_m2 <= 1e-8);
    }

    #[test]
    fn a_reading_or_a_contour_put_in_on_the_line_changes_nothing(levels in water(), contours in lake(), at in any::<prop::sample::Index>()) {
        let basin = Basin::from_contours(&contours).unwrap();
        let want = whole(&levels, &basin, 99.0, Density::Tanaka).unwrap();
        let i = at.index(levels.len() - 1);
        let (p, q) = (levels[i], levels[i + 1]);
        let mut more = levels.clone();
        more.insert(i + 1, Level::bare((p.depth_m + q.depth_m) / 2.0, (p.temp_c + q.temp_c) / 2.0, 0.1));
        let k = at.index(contours.len() - 1);
        let middle_m = (contours[k].0 + contours[k + 1].0) / 2.0;
        let mut finer = contours.clone();
        finer.insert(k + 1, (middle_m, basin.area_m2(middle_m)));
        for got in [whole(&more, &basin, 99.0, Density::Tanaka).unwrap(), whole(&levels, &Basin::from_contours(&finer).unwrap(), 99.0, Density::Tanaka).unwrap()] {
            near("stability", got.schmidt_j_m2, want.schmidt_j_m2);
            near("mean temperature", got.mean_temp_c, want.mean_temp_c);
            near("mean density", got.mean_density_kg_m3, want.mean_density_kg_m3);
            near("volume", got.volume_m3, want.volume_m3);
            near("centre", got.centre_of_volume_m, want.centre_of_volume_m);
        }
    }

    #[test]
    fn a_lake_twice_as_wide_is_as_stable_for_each_square_metre(levels in water(), contours in lake()) {
        let wider: Vec<(f64, f64)> = contours.iter().map(|(z, a)| (*z, a * 2.0)).collect();
        let (a, b) = (Basin::from_contours(&contours).unwrap(), Basin::from_contours(&wider).unwrap());
        let (x, y) = (whole(&levels, &a, 99.0, Density::Tanaka).unwrap(), whole(&levels, &b, 99.0, Density::Tanaka).unwrap());
        near("stability", y.schmidt_j_m2, x.schmidt_j_m2);
        near("heat", y.heat_j_m2, x.heat_j_m2);
        near("volume", y.volume_m3, 2.0 * x.volume_m3);
    }

    #[test]
    fn twice_the_wind_is_a_quarter_of_the_numbers(levels in stable_water(), contours in lake(), wind in 0.5..50.0_f64) {
        let cast: Vec<(f64, f64)> = levels.iter().map(|l| (l.depth_m, l.temp_c)).collect();
        let a = analyse(&one_series(&cast, 0.1), &Method::default());
        let basin = Basin::from_contours(&contours).unwrap();
        let (x, y) = (wind_numbers(&a, &basin, wind), wind_numbers(&a, &basin, 2.0 * wind));
        prop_assert_eq!(x.is_some(), y.is_some());
        if let (Some(x), Some(y)) = (x, y) {
            near("Wedderburn number", 4.0 * y.wedderburn, x.wedderburn);
            near("lake number", 4.0 * y.lake_number, x.lake_number);
            near("stress", y.stress_pa, 4.0 * x.stress_pa);
        }
    }

    #[test]
    fn bare_numbers_are_numbers_or_none(a in wild_number(), b in wild_number(), c in wild_number(), d in wild_number()) {
        prop_assert!(wedderburn(a, b, c, d).is_none_or(f64::is_finite));
        let lake = LakeNumber { schmidt_j_m2: a, area_m2: b, depth_m: c, steep_middle_m: d, centre_of_volume_m: a, lower_kg_m3: b, friction_m_s: c };
        prop_assert!(lake.value().is_none_or(f64::is_finite));
        let levels = [Level::bare(a, b, 0.1), Level::bare(c, d, 0.1)];
        for s in steps(&levels) { prop_assert!(s.n2_per_s2.is_finite() && s.resistance.is_finite()); }
        if let Some(w) = whole(&levels, &Basin::unit_column(9.0).unwrap(), a, Density::Tanaka) {
            prop_assert!(w.schmidt_j_m2.is_finite() && w.heat_j_m2.is_finite());
        }
    }
}

#[test]
fn a_hundred_thousand_readings_take_a_moment() {
    let cast: Vec<(f64, f64)> = (0..100_000)
        .map(|i| f64::from(i) * 0.0005)
        .map(|z| (z, 8.0 + 14.0 / (1.0 + libm::exp((z - 20.0) / 3.0))))
        .collect();
    let found = stability(&analyse(&one_series(&cast, 0.0001), &Method::default()), None, None);
    whole_and_finite(&found);
    assert_eq!(found.steps.len(), 99_999);
}
