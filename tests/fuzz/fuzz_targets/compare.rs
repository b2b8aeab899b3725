//! Any two casts compared, with any records: refused with a reason, or every number is one and changed sides turn signs.

#![no_main]

mod given;

use given::Given;
use layercast_core::compare::{Cause, Known, Options, Pair, Side, Trial};
use layercast_core::{Method, analyse};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let mut given = Given(bytes);
    let mut options = Options {
        mark_sd_m: given.number(),
        minutes_apart: given.some(),
        seed: given.byte().into(),
        ..Options::default()
    };
    let (a, b) = (side(&mut given), side(&mut given));
    let forth = Pair::new(&a, &b, &options);
    options.minutes_apart = options.minutes_apart.map(|minutes| -minutes);
    let (forth, back) = match (forth, Pair::new(&b, &a, &options)) {
        (Ok(forth), Ok(back)) => (forth, back),
        (forth, back) => {
            assert_eq!(forth.err(), back.err());
            return;
        }
    };
    let few = forth.chance(0, 2);
    assert!(few.iter().all(|trial| trial.gain.is_finite() && trial.misfit.is_finite()));
    let trials: Vec<Trial> = few.iter().copied().cycle().take(200).collect();
    let (one, other) = (forth.comparison(&trials), back.comparison(&trials));
    assert_eq!((one.best, one.verdict, one.heat), (other.best, other.verdict, other.heat));
    assert!([one.rms_c, one.mean_c, one.chance_score].into_iter().all(f64::is_finite));
    for cause in Cause::ALL {
        let (Some(fit), Some(turned)) = (one.fit(cause), other.fit(cause)) else { continue };
        assert_eq!(fit.value, -turned.value);
        assert!([fit.value, fit.u, fit.score, fit.rms_left_c].into_iter().all(f64::is_finite));
        assert!((0.0..=1.0).contains(&fit.explains) && fit.u > 0.0);
        assert!(fit.predicted_c.iter().chain(&fit.left_c).all(|c| c.is_finite()));
        assert_eq!(fit.left_c.len(), one.shared.len());
    }
    for heat in one.heat.iter().chain(Cause::ALL.iter().filter_map(|c| one.fit(*c)?.heat.as_ref())) {
        assert!(
            [heat.gained_j_m2, heat.u_j_m2, heat.power_w_m2, heat.u_w_m2].into_iter().all(f64::is_finite)
        );
    }
});

/// A cast with its records, analysed first or taken as it stands.
fn side(given: &mut Given) -> Side {
    let known = Known { ice_c: given.some(), deeper_m: given.some(), stretch: given.some() };
    let bare = given.byte() % 2 == 1;
    let cast = given.cast(100);
    let mut side = Side { known, ..Side::of(&cast, &analyse(&cast, &Method::default())) };
    if bare {
        let level =
            |(depth_m, temp_c): (f64, f64)| layercast_core::Level::bare(depth_m, temp_c, given.number());
        let rows = cast.readings.iter().filter_map(|r| Some((r.depth_m, r.temp_c?)));
        side.levels = rows.map(level).collect();
    }
    side
}
