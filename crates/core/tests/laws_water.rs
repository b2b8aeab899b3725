//! Laws of water: salt makes it denser, warmth beyond the greatest density lighter; what is converted comes back; no
//! number, however wild, gives one that makes no sense.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common::any::wild_number;
use layercast_core::Density;
use layercast_core::water::calibration::{offset_c, two_point_c};
use layercast_core::water::density::SalinityProblem;
use layercast_core::water::oxygen::{per_cent, pressure_atm, saturation_mg_l};
use layercast_core::water::scales::{to_ipts_68_c, to_its_90_c};
use layercast_core::water::thermistor::{Beta, SteinhartHart};
use layercast_core::water::worth::{cooling_for_c, gain_kg_m3};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

/// Any number a damaged file may hold, many of them in the reach of the formulas.
fn wild() -> impl Strategy<Value = f64> {
    prop_oneof![8 => wild_number(), 1 => -60.0..60.0, 1 => 1.0..1e5]
}

fn formula(salinity: f64) -> impl Strategy<Value = Density> {
    prop_oneof![
        Just(Density::Tanaka),
        Just(Density::TanakaSalt { salinity }),
        Just(Density::Kell),
        Just(Density::Eos80 { salinity }),
        Just(Density::ChenMillero { salinity }),
    ]
}

proptest! {
    #![proptest_config(ProptestConfig { rng_seed: RngSeed::Fixed(20_261_126), ..ProptestConfig::default() })]

    #[test]
    fn whatever_goes_in_density_is_that_of_water(
        (density, s) in wild().prop_flat_map(|s| (formula(s), Just(s))),
        t in wild(),
    ) {
        let got = density.kg_m3(t);
        prop_assert_eq!(got.is_nan(), t.is_nan());
        prop_assert!(t.is_nan() || (985.0..1040.0).contains(&got), "{} at {}", got, t);
        if let Some(t) = density.greatest_c() {
            prop_assert!((-0.5..4.1).contains(&t), "{}", t);
        }
        match density.salinity_problem() {
            None => prop_assert!(density.salinity().is_none() || (0.0..=42.0).contains(&s)),
            Some(SalinityProblem::NotANumber) => prop_assert!(!s.is_finite()),
            Some(SalinityProblem::Negative) => prop_assert!(s < 0.0),
            Some(SalinityProblem::TooSalty { most }) => prop_assert!(s > most),
        }
        let _ = (cooling_for_c(density, t, s), gain_kg_m3(density, t, s));
    }

    #[test]
    fn salt_makes_water_denser_and_its_greatest_density_colder(
        t in 0.0..35.0_f64,
        s in 0.0..0.5_f64,
        more in 0.01..0.1_f64,
    ) {
        for (a, b) in [
            (Density::TanakaSalt { salinity: s }, Density::TanakaSalt { salinity: s + more }),
            (Density::Eos80 { salinity: s }, Density::Eos80 { salinity: s + more }),
            (Density::ChenMillero { salinity: s }, Density::ChenMillero { salinity: s + more }),
        ] {
            let gain = b.kg_m3(t) - a.kg_m3(t);
            prop_assert!((0.7..0.9).contains(&(gain / more)), "{:?}: {} for {}", a, gain, more);
            prop_assert!(b.greatest_c() < a.greatest_c());
        }
    }

    #[test]
    fn either_side_of_the_greatest_density_water_gets_lighter(
        density in (0.0..20.0_f64).prop_flat_map(formula),
        a in -0.5..40.0_f64,
        b in -0.5..40.0_f64,
    ) {
        let greatest_c = density.greatest_c().unwrap();
        let (cold, warm) = (a.min(b), a.max(b));
        if cold >= greatest_c {
            prop_assert!(density.kg_m3(cold) >= density.kg_m3(warm));
        } else if warm <= greatest_c {
            prop_assert!(density.kg_m3(cold) <= density.kg_m3(warm));
        }
    }

    #[test]
    fn cooling_by_what_a_step_is_worth_gains_that_step(
        density in (0.0..0.6_f64).prop_flat_map(formula),
        from in 5.0..40.0_f64,
        rise in 0.001..2.0_f64,
    ) {
        match cooling_for_c(density, from, rise) {
            Some(cooling) => {
                prop_assert!((gain_kg_m3(density, from, cooling) - rise).abs() < 1e-9);
                prop_assert!(cooling > 0.0 && from - cooling >= density.greatest_c().unwrap() - 1e-9);
            }
            None => prop_assert!(gain_kg_m3(density, from, from - density.greatest_c().unwrap()) < rise),
        }
    }

    #[test]
    fn scales_and_thermistors_come_back(t in -40.0..140.0_f64, beta_k in 2500.0..5000.0_f64, ohm in 100.0..1e5_f64) {
        prop_assert!((to_its_90_c(to_ipts_68_c(t)) - t).abs() < 1e-12);
        let beta = Beta { reference_c: 25.0, reference_ohm: ohm, beta_k };
        let back = beta.temp_c(beta.resistance_ohm(t).unwrap()).unwrap();
        prop_assert!((back - t).abs() < 1e-9);
        // Three terms through three points of a beta curve are that curve, with no third term.
        let at = |t: f64| (t, beta.resistance_ohm(t).unwrap());
        let three = SteinhartHart::through([at(0.0), at(25.0), at(60.0)]).unwrap();
        prop_assert!(three.c.abs() < 1e-12 && (three.b * beta_k - 1.0).abs() < 1e-6, "{:?}", three);
        prop_assert!((three.temp_c(beta.resistance_ohm(t).unwrap()).unwrap() - t).abs() < 1e-6);
    }

    #[test]
    fn no_thermistor_gives_nonsense(x in prop::collection::vec(wild(), 8)) {
        let (temps, ohms) = (-50.0..=150.0, |ohm: f64| ohm > 0.0 && ohm.is_finite());
        let three = SteinhartHart { a: x[0], b: x[1], c: x[2] };
        let beta = Beta { reference_c: x[0], reference_ohm: x[1], beta_k: x[2] };
        let fits = [
            SteinhartHart::through([(x[0], x[1]), (x[2], x[3]), (x[4], x[5])]),
            Some(three),
        ];
        for curve in fits.into_iter().flatten() {
            prop_assert!(curve.temp_c(x[6]).is_none_or(|t| temps.contains(&t)));
            prop_assert!(curve.resistance_ohm(x[7]).is_none_or(ohms));
        }
        for curve in [Beta::through((x[0], x[1]), [(x[2], x[3]), (x[4], x[5])]), Some(beta)].into_iter().flatten() {
            prop_assert!(curve.temp_c(x[6]).is_none_or(|t| temps.contains(&t)));
            prop_assert!(curve.resistance_ohm(x[7]).is_none_or(ohms));
        }
        prop_assert!(two_point_c(x[0], x[1], x[2], x[3]).is_none_or(f64::is_finite));
    }

    #[test]
    fn a_probe_calibrated_reads_the_truth_at_both_points(ice in -1.0..1.0_f64, read in 10.0..30.0_f64, truth in 10.0..30.0_f64) {
        prop_assert!(two_point_c(ice, ice, read, truth).unwrap().abs() < 1e-12);
        prop_assert!((two_point_c(read, ice, read, truth).unwrap() - truth).abs() < 1e-12);
        prop_assert!(offset_c(ice, ice) == 0.0);
    }

    #[test]
    fn oxygen_is_none_or_believable(t in wild(), s in wild(), p in wild(), measured in wild()) {
        prop_assert!(saturation_mg_l(t, s, p).is_none_or(|o| (1.0..20.0).contains(&o)));
        prop_assert!(per_cent(measured, t, s, p).is_none_or(|o| (0.0..6000.0).contains(&o)));
        prop_assert!(pressure_atm(p).is_none_or(|atm| (0.4..1.1).contains(&atm)));
    }

    #[test]
    fn warm_salt_and_high_water_holds_less_oxygen(t in 0.0..39.0_f64, s in 0.0..39.0_f64, h in 0.0..6000.0_f64) {
        let at = |t, s, h| saturation_mg_l(t, s, pressure_atm(h).unwrap()).unwrap();
        prop_assert!(at(t + 0.5, s, h) < at(t, s, h));
        prop_assert!(at(t, s + 0.5, h) < at(t, s, h));
        prop_assert!(at(t, s, h + 100.0) < at(t, s, h));
    }
}
