//! Any contours with any cast in them: refused with a reason, or volumes add up and every number is one.

#![no_main]

mod given;

use given::Given;
use layercast_core::stability::basin::Basin;
use layercast_core::stability::stability;
use layercast_core::stability::whole::Whole;
use layercast_core::stability::wind::wind_numbers;
use layercast_core::{Method, analyse};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let mut given = Given(bytes);
    let bed_m = given.some();
    let wind_m_s = given.number();
    let count = given.byte() % 16;
    // Areas of ponds: hundredths of a number are too small.
    let contours: Vec<(f64, f64)> = (0..count).map(|_| (given.number(), given.number() * 1e4)).collect();
    let basin = Basin::from_contours(&contours).ok();
    let analysis = analyse(&given.cast(100), &Method::default());
    if let Some(basin) = &basin {
        let (deep_m, middle_m) = (basin.deepest_m(), basin.deepest_m() / 2.0);
        let all = basin.volume_m3(0.0, deep_m);
        let parts = basin.volume_m3(0.0, middle_m) + basin.volume_m3(middle_m, deep_m);
        assert!(
            all.is_finite() && all >= 0.0 && (parts - all).abs() <= 1e-9 * all.max(1e-300),
            "{all} {parts}"
        );
        assert!(basin.area_m2(middle_m) <= basin.surface_area_m2() * (1.0 + 1e-12));
        let at = given.number();
        assert!(basin.area_m2(at).is_finite() && basin.volume_m3(at, given.number()).is_finite());
        if let Some(wind) = wind_numbers(&analysis, basin, wind_m_s) {
            let numbers = [wind.stress_pa, wind.friction_m_s, wind.wedderburn, wind.lake_number];
            assert!(numbers.into_iter().all(f64::is_finite), "{wind:?}");
        }
    }
    let found = stability(&analysis, bed_m, basin.as_ref());
    for step in &found.steps {
        assert!(
            step.n2_per_s2.is_finite()
                && step.resistance.is_finite()
                && step.period_s.is_none_or(f64::is_finite)
        );
    }
    assert!(found.anomaly_j_m3.is_none_or(f64::is_finite));
    found.column.iter().chain(&found.basin).for_each(check);
});

fn check(whole: &Whole) {
    let numbers = [
        whole.depth_m,
        whole.surface_area_m2,
        whole.volume_m3,
        whole.centre_of_volume_m,
        whole.mean_density_kg_m3,
        whole.mean_temp_c,
        whole.heat_j_m2,
        whole.schmidt_j_m2,
    ];
    assert!(numbers.into_iter().all(f64::is_finite), "{whole:?}");
    assert!(whole.mixing.iter().all(|work| work.work_j_m2.is_finite() && work.lifted_kg_by_1_m.is_finite()));
}
