//! Slow probes: waits, casts of stops, the share left over, and what lag does to the answers.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

mod common;
use common::{Row, close, close_option, grouped, table, two_legs};
use layercast_core::cast::corrections::{Correction, Outcome, Refusal, correct, vertical_m};
use layercast_core::cast::lag::{moving_shift_m, settle_s, share_left, time_constant_s};
use layercast_core::cast::lag_share::lag_share;
use layercast_core::{Cast, Leg};

#[test]
fn share_of_a_step_left_over() {
    for row in table("check-values/lag_fraction.csv") {
        let k = row.sure("time_constants");
        let want = row.sure("fraction_left");
        close("left", share_left(k), want, 1e-6 * want + 5e-11); // ten decimals are printed
        close("done", 1.0 - share_left(k), row.sure("fraction_done"), 1e-6);
    }
}

#[test]
fn how_long_to_wait() {
    for row in table("check-values/lag_settling.csv") {
        let want = row.sure("wait_s");
        let got = settle_s(row.sure("step_c"), row.sure("tol_c"), row.sure("tau_s"));
        close_option("wait", got, Some(want), 1e-6 * want);
    }
}

#[test]
fn a_probe_that_never_stops() {
    for row in table("check-values/lag_moving.csv") {
        let want = row.sure("depth_shift_m");
        close("shift", moving_shift_m(row.sure("speed_m_s"), row.sure("tau_s")), want, 1e-6 * want);
    }
}

#[test]
fn straight_cables_at_an_angle() {
    for row in table("check-values/cable_angle.csv") {
        let (length_m, angle_deg) = (row.sure("length_m"), row.sure("angle_deg"));
        let depth_m = vertical_m(length_m, angle_deg);
        close("depth", depth_m, row.sure("depth_m"), 1e-9);
        close("too deep by", length_m - depth_m, row.sure("too_deep_by_m"), 1e-9);
        let slant = Correction::Slant { from_m: 0.0, to_m: 99.0, angle_deg };
        let cast = Cast { readings: vec![common::reading(length_m, 20.0, Leg::Down)], ..Cast::default() };
        close("corrected", correct(&cast, &[slant]).cast.readings[0].depth_m, row.sure("depth_m"), 1e-9);
    }
}

fn column(rows: &[&Row], name: &str) -> Vec<f64> {
    rows.iter().map(|r| r.sure(name)).collect()
}

#[test]
fn down_and_up_give_the_share_and_the_water_back() {
    let rows = table("check-values/lag_down_up.csv");
    let sets = grouped(&rows, "left_factor");
    assert_eq!(sets.len(), 3);
    for (left, rows) in sets {
        let r = rows[0].sure("left_factor");
        let depths_m = column(&rows, "depth_m");
        let cast = two_legs(&depths_m, &column(&rows, "down_c"), &column(&rows, "up_c"), 0.0);
        let got = lag_share(&cast).unwrap();
        close(left, got.r, rows[0].sure("recovered_factor"), 1e-4);
        close(left, got.r, r, 1e-4);
        assert!(got.sign_fits && got.depths == depths_m.len() - 2 && got.apart_after_c < 1e-6, "{got:?}");
        close(left, time_constant_s(rows[0].sure("wait_s"), r).unwrap(), rows[0].sure("tau_s"), 1e-6);

        let corrected = correct(&cast, &[Correction::Lag { r }]);
        if r > 0.5 {
            assert_eq!(corrected.applied[0].outcome, Outcome::Refused(Refusal::TooSlow));
            assert_eq!(corrected.cast, cast);
            continue;
        }
        let n = rows.len();
        for (place, row) in rows.iter().enumerate() {
            let (down, up) = (&corrected.cast.readings[place], &corrected.cast.readings[2 * n - 1 - place]);
            assert_eq!((down.depth_m, up.depth_m), (row.sure("depth_m"), row.sure("depth_m")));
            for (reading, what) in [(down, "corrected_down_c"), (up, "corrected_up_c")] {
                match row.number(what) {
                    // Ten decimals are printed; correcting swells their rounding by 1.4.
                    Some(want) => close(what, reading.temp_c.unwrap(), want, 1e-8),
                    None => assert!(place == 0 || place == n - 1),
                }
            }
            close("mean", 0.5 * (row.sure("down_c") + row.sure("up_c")), row.sure("mean_c"), 1e-9);
        }
        // The first stop of each way has none before it and stays as it was read.
        assert_eq!(corrected.cast.readings[0], cast.readings[0]);
        assert_eq!(corrected.cast.readings[n], cast.readings[n]);
    }
}
