//! The practice pond: the same seed gives the same pond, the probe lags as the tables say, kinds are what they are called.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, depths, grouped, table};
use layercast_core::practice::{Kind, Probe, ProbeState, Water, whole_cast};
use layercast_core::water::density::density_kg_m3;
use layercast_core::{Leg, MixedLayer, State};

/// A probe without any fault.
const PERFECT: Probe = Probe {
    tau_s: 0.0,
    offset_c: 0.0,
    noise_c: 0.0,
    digit_c: 0.0,
    heave_m: 0.0,
    slant_deg: 0.0,
    drift_deg_per_min: 0.0,
};

#[test]
fn a_first_order_probe_settles_as_the_tables_say() {
    let rows = table("check-values/lag_down_up.csv");
    let mut groups = 0;
    for (_, rows) in grouped(&rows, "left_factor") {
        for (_, rows) in grouped(rows, "tau_s") {
            let probe = Probe { tau_s: rows[0].sure("tau_s"), ..PERFECT };
            let wait_s = rows[0].sure("wait_s");
            let mut body_c = rows[0].sure("env_c");
            for row in &rows {
                body_c = probe.settled_c(body_c, row.sure("env_c"), wait_s);
                close("down", body_c, row.sure("down_c"), 1e-8);
            }
            for row in rows.iter().rev() {
                body_c = probe.settled_c(body_c, row.sure("env_c"), wait_s);
                close("up", body_c, row.sure("up_c"), 1e-8);
            }
            groups += 1;
        }
    }
    assert!(groups >= 2);
}

#[test]
fn each_kind_is_what_it_is_called() {
    for seed in 0..200 {
        for kind in Kind::ALL {
            let pond = Water::seeded(kind, seed);
            let truth = pond.truth(0.0);
            let what = format!("{kind:?} {seed}: {:?}", truth.state);
            match kind {
                Kind::Layered | Kind::Broad | Kind::BrackishBottom => {
                    assert_eq!(truth.state, State::Stratified, "{what}");
                    let metalimnion = truth.metalimnion.unwrap();
                    assert!(!metalimnion.from_the_first, "{what}");
                    assert!(matches!(truth.mixed_layer, Some(MixedLayer::At { .. })), "{what}");
                    assert!(truth.warm_layer_today.is_none(), "{what}");
                }
                Kind::Diurnal => {
                    assert_eq!(truth.state, State::Stratified, "{what}");
                    assert!(truth.warm_layer_today.is_some() && truth.thermocline.is_some(), "{what}");
                }
                Kind::Mixed => assert_eq!((truth.state, truth.thermocline), (State::Mixed, None), "{what}"),
                Kind::UnderIce => assert_eq!(truth.state, State::Inverse, "{what}"),
            }
            assert!((6.0..=12.0).contains(&pond.bed_m()));
            assert!(pond.salinity(0.0, 0.0) < 1e-3, "{what}");
            assert_eq!(pond.salinity(pond.bed_m(), 0.0) > 2.0, kind == Kind::BrackishBottom, "{what}");
        }
    }
}

#[test]
fn fresh_water_in_summer_never_warms_on_the_way_down() {
    for seed in 0..50 {
        for kind in [Kind::Layered, Kind::Broad, Kind::Diurnal, Kind::Mixed] {
            let pond = Water::seeded(kind, seed);
            let warmth: Vec<f64> = (0..=600).map(|i| pond.temp_c(0.01 * f64::from(i), 30.0)).collect();
            assert!(warmth.windows(2).all(|two| two[1] <= two[0] + 1e-9), "{kind:?} {seed}");
        }
    }
}

#[test]
fn the_truth_is_near_the_middle_of_the_layer() {
    for seed in 0..50 {
        let pond = Water::seeded(Kind::Layered, seed);
        let truth = pond.truth(0.0).thermocline.unwrap();
        // Independent of the class rule: where the water falls fastest, by a fine search.
        let slope = |z: f64| (pond.temp_c(z - 1e-4, 0.0) - pond.temp_c(z + 1e-4, 0.0)) / 2e-4;
        let fastest = (1..1_000)
            .map(|i| pond.bed_m() * f64::from(i) / 1_000.0)
            .max_by(|a, b| slope(*a).total_cmp(&slope(*b)));
        close("thermocline", truth.value_m, fastest.unwrap(), 0.06);
        assert!(truth.tellable && truth.in_one_piece);
    }
}

#[test]
fn two_seeds_two_ponds_and_the_same_seed_the_same_pond_on_every_machine() {
    for kind in Kind::ALL {
        assert_eq!(Water::seeded(kind, 5), Water::seeded(kind, 5));
        assert_ne!(Water::seeded(kind, 5), Water::seeded(kind, 6));
    }
    let pond = Water::seeded(Kind::Layered, 1);
    // As first drawn, to the last bit: a seat's pond must be the same for ever.
    let got = [pond.bed_m(), pond.temp_c(0.0, 0.0), pond.temp_c(4.0, 10.0), pond.temp_c(pond.bed_m(), 60.0)];
    assert_eq!(got, [11.4, 21.604614556184266, 21.297114788500743, 7.865283819291996]);
    let cast = whole_cast(&pond, &Probe::seeded(1), &[0.0, 4.0, 5.0, 6.0, 8.0], 30.0, 1);
    let got: Vec<f64> = cast.readings.iter().filter_map(|r| r.temp_c).collect();
    assert_eq!(got, [21.6, 21.4, 18.9, 11.8, 8.9, 8.1, 9.0, 15.6, 19.8, 21.1]);
}

#[test]
fn the_pond_rocks_but_neither_its_surface_nor_its_bed() {
    let pond = Water::seeded(Kind::Layered, 3);
    let at = |z: f64| -> Vec<f64> { (0..200).map(|minute| pond.temp_c(z, f64::from(minute))).collect() };
    let spread = |values: &[f64]| {
        let (low, high) = values.iter().fold((f64::MAX, f64::MIN), |(l, h), t| (l.min(*t), h.max(*t)));
        high - low
    };
    let layer_m = pond.truth(0.0).thermocline.unwrap().value_m;
    assert!(spread(&at(layer_m)) > 1.0, "{}", spread(&at(layer_m)));
    assert!(spread(&at(0.0)) < 1e-9 && spread(&at(pond.bed_m())) < 1e-9);
    assert_eq!(
        Water::seeded(Kind::UnderIce, 3).temp_c(1.0, 0.0),
        Water::seeded(Kind::UnderIce, 3).temp_c(1.0, 50.0)
    );
}

#[test]
fn an_impatient_reading_is_warmer_going_down_than_coming_up() {
    for seed in 0..20 {
        let pond = Water::seeded(Kind::Layered, seed);
        let marks = depths((pond.bed_m() / 0.5) as usize, 0.5);
        // Against a probe that does not lag, at the same minutes: the pond rocks between the legs too.
        let by_lag_c = |wait_s: f64| {
            let mean_c = |tau_s: f64| {
                let probe = Probe { tau_s, ..Probe::default() };
                let cast = whole_cast(&pond, &probe, &marks, wait_s, seed);
                let (down, up) = cast.readings.split_at(marks.len());
                let each =
                    down.iter().zip(up.iter().rev()).map(|(d, u)| d.temp_c.unwrap() - u.temp_c.unwrap());
                each.sum::<f64>() / marks.len() as f64
            };
            mean_c(20.0) - mean_c(0.0)
        };
        let (hasty_c, patient_c) = (by_lag_c(15.0), by_lag_c(150.0));
        assert!(hasty_c > 0.3 && patient_c.abs() < 0.03, "{seed}: {hasty_c} {patient_c}");
    }
}

#[test]
fn a_patient_perfect_probe_reads_the_water() {
    let pond = Water::seeded(Kind::Diurnal, 4);
    let marks = depths(9, 0.5);
    let cast = whole_cast(&pond, &PERFECT, &marks, 0.0, 9);
    for reading in &cast.readings {
        assert_eq!(reading.temp_c, Some(pond.temp_c(reading.depth_m, 0.0)));
    }
    let legs: Vec<Leg> = cast.readings.iter().map(|r| r.leg).collect();
    assert_eq!(
        (legs.len(), legs[0], legs[8], legs[9], legs[17]),
        (18, Leg::Down, Leg::Down, Leg::Up, Leg::Up)
    );
    assert_eq!((cast.readings[9].depth_m, cast.readings[17].depth_m), (4.0, 0.0));
    assert_eq!((cast.bed_m, cast.digit_c), (None, 0.0));
}

#[test]
fn a_slanting_cable_hangs_less_deep_and_a_drifting_boat_slants_it() {
    let pond = Water::seeded(Kind::Layered, 2);
    let start = PERFECT.at_surface(&pond, 0.0);
    let slanted = Probe { slant_deg: 30.0, ..PERFECT };
    // Methods 8.4: 30° is 13 % less.
    close("slant", slanted.read(&pond, &start, 4.0, 0.0, 1).0.hung_m, 4.0 * 0.866_025_403_784, 1e-9);
    let drifting = Probe { drift_deg_per_min: 1.5, ..PERFECT };
    close("drift", drifting.read(&pond, &start, 4.0, 600.0, 1).0.hung_m, 4.0 * 0.965_925_826_289, 1e-9);
    let adrift = drifting.read(&pond, &start, 4.0, 86_400.0, 1).0.hung_m;
    close("never beyond 60°", adrift, 2.0, 1e-9);
}

#[test]
fn the_bed_stops_the_probe() {
    let pond = Water::seeded(Kind::Layered, 2);
    let start = PERFECT.at_surface(&pond, 0.0);
    let (read, _) = PERFECT.read(&pond, &start, pond.bed_m() + 1.0, 0.0, 1);
    assert!(read.touched_bed && read.hung_m == pond.bed_m());
    assert!(!PERFECT.read(&pond, &start, pond.bed_m() - 0.1, 0.0, 1).0.touched_bed);
    let marks = [1.0, pond.bed_m() + 0.5, pond.bed_m() + 1.0];
    assert_eq!(whole_cast(&pond, &PERFECT, &marks, 0.0, 1).bed_m, Some(pond.bed_m() + 0.5));
}

#[test]
fn a_probe_shows_its_digits_its_offset_and_its_noise() {
    let pond = Water::seeded(Kind::Mixed, 2);
    let state = PERFECT.at_surface(&pond, 0.0);
    let shown = |probe: Probe| probe.read(&pond, &state, 2.0, 0.0, 1).0.shown_c;
    let water_c = pond.temp_c(2.0, 0.0);
    close("offset", shown(Probe { offset_c: 0.3, ..PERFECT }), water_c + 0.3, 1e-12);
    let tenths = shown(Probe { digit_c: 0.1, ..PERFECT });
    assert_eq!(tenths.to_string(), format!("{:.1}", water_c));
    close("steps of 5/9", shown(Probe { digit_c: 5.0 / 9.0, ..PERFECT }) * 1.8 % 1.0, 0.0, 1e-9);
    let noisy = Probe { noise_c: 0.1, ..PERFECT };
    let (mut state, mut sum, mut squares) = (state, 0.0, 0.0);
    for _ in 0..2_000 {
        let (read, next) = noisy.read(&pond, &state, 2.0, 0.0, 1);
        (sum, squares) = (sum + read.shown_c - water_c, squares + (read.shown_c - water_c).powi(2));
        state = next;
    }
    close("mean of the noise", sum / 2_000.0, 0.0, 0.01);
    close("size of the noise", (squares / 2_000.0_f64).sqrt(), 0.1, 0.01);
    assert_eq!(state.taken, 2_000);
}

#[test]
fn salt_holds_the_warmer_water_down() {
    for seed in 0..50 {
        let pond = Water::seeded(Kind::BrackishBottom, seed);
        // About 0.8 kg/m³ for each g/kg of salt (EOS-80: 999.975 to 1027.677 for 35 at 5 °C).
        let density = |z: f64| density_kg_m3(pond.temp_c(z, 0.0)) + 0.79 * pond.salinity(z, 0.0);
        for i in 0..100 {
            let (z, below) = (pond.bed_m() * f64::from(i) / 100.0, pond.bed_m() * f64::from(i + 1) / 100.0);
            assert!(density(below) >= density(z) - 1e-3, "{seed}: {z} m");
        }
    }
}

#[test]
fn wild_arguments_give_numbers() {
    let wild = [f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 1e308, -1e308, -1.0, 5e-324];
    for kind in Kind::ALL {
        let pond = Water::seeded(kind, u64::MAX);
        for a in wild {
            for b in wild {
                assert!(
                    (-1.0..40.0).contains(&pond.temp_c(a, b)) && (0.0..20.0).contains(&pond.salinity(a, b))
                );
                let state = ProbeState { taken: u64::MAX, ..Probe::default().at_surface(&pond, a) };
                let (read, next) = Probe::seeded(0).read(&pond, &state, a, b, 0);
                let fine = Probe { digit_c: b, ..PERFECT }.read(&pond, &state, a, b, 0).0;
                assert!(fine.shown_c.is_finite());
                assert!(read.shown_c.is_finite() && next.body_c.is_finite() && next.minute.is_finite());
                assert_eq!(next.taken, 0);
            }
            assert_eq!(pond.truth(a).state, pond.truth(0.0).state);
        }
    }
    let pond = Water::seeded(Kind::Layered, 1);
    for x in wild {
        let probe = Probe {
            tau_s: x,
            offset_c: x,
            noise_c: x,
            digit_c: x,
            heave_m: x,
            slant_deg: x,
            drift_deg_per_min: x,
        };
        let state = ProbeState { body_c: x, minute: x, taken: 0 };
        let (read, next) = probe.read(&pond, &state, 3.0, 30.0, 1);
        let all = [read.shown_c, read.hung_m, read.water_c, next.body_c, next.minute];
        assert!(all.iter().all(|x| x.is_finite()), "{x}: {read:?} {next:?}");
    }
    assert_eq!(whole_cast(&Water::seeded(Kind::Mixed, 1), &PERFECT, &[], 1.0, 1).readings, []);
}
