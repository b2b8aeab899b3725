//! Slow probes: waits, casts of stops, the share left over, and what lag does to the answers.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{Row, close, close_option, grouped, table, two_legs};
use layercast_core::cast::corrections::{Correction, Outcome, Refusal, correct, vertical_m};
use layercast_core::cast::lag::{follow_c, moving_shift_m, settle_s, share_left, time_constant_s};
use layercast_core::cast::lag_share::lag_share;
use layercast_core::layers::mixed_layer::temperature_step_depth_m;
use layercast_core::layers::parabola::parabola_m;
use layercast_core::layers::steps::steps;
use layercast_core::{Cast, Leg, Level, Method, analyse};

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

/// Depth of the steepest slope by the parabola (methods 5.3).
fn by_parabola_m(levels: &[Level]) -> Option<f64> {
    let steps = steps(levels);
    let cooling = |i: &usize| steps[*i].cooling_c_per_m;
    let k = (0..steps.len()).max_by(|a, b| cooling(a).total_cmp(&cooling(b))).unwrap();
    parabola_m(&steps, k..k + 1)
}

#[test]
fn what_lag_does_to_the_answers() {
    let depths_m = common::depths(17, 0.5);
    let water: Vec<f64> = depths_m.iter().map(|z| 7.0 + 14.0 / (1.0 + libm::exp((z - 4.2) / 0.55))).collect();
    for row in table("check-values/lag_effect.csv") {
        let r = share_left(row.sure("wait_s") / row.sure("tau_s"));
        close("share left", r, row.sure("left_factor"), 1e-9);
        let (down, up) = common::lagging(&water, r);
        let mean: Vec<f64> = down.iter().zip(&up).map(|(a, b)| 0.5 * (a + b)).collect();
        for (series, name) in [(&water, "true"), (&down, "down"), (&up, "up"), (&mean, "mean")] {
            let rows: Vec<(f64, f64)> = depths_m.iter().copied().zip(series.iter().copied()).collect();
            let levels = common::levels(&rows, 0.0);
            close_option(name, by_parabola_m(&levels), row.number(&format!("tc_{name}")), 1e-4);
            let mixed_m = temperature_step_depth_m(&levels, 0.5, 1.0);
            close_option(name, mixed_m, row.number(&format!("mld_{name}")), 1e-4);
        }
        let most = |a: &[f64], b: &[f64]| a.iter().zip(b).map(|(a, b)| (a - b).abs()).fold(0.0, f64::max);
        close("error going down", most(&down, &water), row.sure("max_error_down_c"), 1e-9);
        close("down − up", most(&down, &up), row.sure("max_down_minus_up_c"), 1e-9);
        // The whole way: the pairs, and the share the legs tell.
        let cast = two_legs(&depths_m, &down, &up, 0.0);
        let analysis = analyse(&cast, &Method::default());
        if row.sure("max_down_minus_up_c") < 4.0 {
            // Beyond that the check of spikes leaves readings out.
            close_option("s", analysis.pairs.s_c, row.number("s_dup_c"), 1e-9);
        }
        close("share told", lag_share(&cast).unwrap().r, r, 1e-4);
        if r <= 0.5 {
            let corrected = analyse(&correct(&cast, &[Correction::Lag { r }]).cast, &Method::default());
            let mixed_m = temperature_step_depth_m(&corrected.profile, 0.5, 1.0);
            close_option("mixed layer once corrected", mixed_m, row.number("mld_true"), 0.001);
        }
    }
}

fn rms(of: &[f64]) -> f64 {
    (of.iter().map(|x| x * x).sum::<f64>() / of.len() as f64).sqrt()
}

#[test]
fn a_slow_thermometer_beside_a_fast_one() {
    let rows = table("open-data/lag_pair.csv");
    let expected = table("open-data/lag_pair.expected.csv");
    for (way, rows) in grouped(&rows, "direction") {
        let want = |quantity: &str| {
            let row = expected.iter().find(|r| r.text("cast") == way && r.text("quantity") == quantity);
            row.unwrap().sure("value")
        };
        assert_eq!(rows.len() as f64, want("readings"));
        let slow = column(&rows, "slow_c");
        let fast: Vec<(f64, f64)> = rows.iter().map(|r| (r.sure("time_s"), r.sure("fast_c"))).collect();
        let apart: Vec<f64> = slow.iter().zip(&fast).map(|(slow, (_, fast))| slow - fast).collect();
        let mean_where = |within: &dyn Fn(f64) -> bool| {
            let there: Vec<f64> =
                rows.iter().zip(&apart).filter(|(r, _)| within(r.sure("depth_m"))).map(|(_, d)| *d).collect();
            there.iter().sum::<f64>() / there.len() as f64
        };
        close(way, mean_where(&|z| (18.0..=40.0).contains(&z)), want("slow_minus_fast_mean_18_to_40m"), 1e-6);
        close(way, mean_where(&|z| z > 60.0), want("slow_minus_fast_mean_below_60m"), 1e-6);
        let after = |tau_s: f64, offset_c: f64| {
            let left: Vec<f64> =
                follow_c(&fast, tau_s).iter().zip(&slow).skip(60).map(|(a, b)| a + offset_c - b).collect();
            rms(&left)
        };
        let settled = &apart[60..];
        let offset = settled.iter().sum::<f64>() / settled.len() as f64;
        let before = rms(&settled.iter().map(|d| d - offset).collect::<Vec<f64>>());
        close(way, before, want("rms_difference_before"), 1e-6);
        let (tau_s, offset_c) = (want("fit_tau"), want("fit_offset"));
        let at_fit = after(tau_s, offset_c);
        close(way, at_fit, want("rms_difference_after"), 1e-6);
        for (other_s, other_c) in [(tau_s * 0.9, 0.0), (tau_s * 1.1, 0.0), (tau_s, 0.01), (tau_s, -0.01)] {
            assert!(after(other_s, offset_c + other_c) > at_fit, "{way}: {tau_s} s is the best fit");
        }
    }
}

#[test]
fn a_slow_thermometer_reads_too_warm_going_down_and_too_cold_coming_up() {
    let rows = table("open-data/baltic_pairs.csv");
    let expected = table("open-data/baltic_pairs.expected.csv");
    let seconds = |row: &Row| {
        let number = |from: usize| row.text("time_utc")[from..from + 2].parse::<f64>().unwrap();
        number(8) * 86400.0 + number(11) * 3600.0 + number(14) * 60.0 + number(17)
    };
    let mut means = [Vec::new(), Vec::new()];
    for (name, rows) in grouped(&rows, "cast") {
        let samples: Vec<(f64, f64)> = rows.iter().map(|r| (seconds(r), r.sure("temperature_c"))).collect();
        let modelled = follow_c(&samples, 5.0);
        // From the whole rows: the slow thermometer as it was, and one of 5 s as it is modelled.
        let (mut slow, mut model) = (Vec::new(), Vec::new());
        for ((row, (_, fast_c)), modelled_c) in rows.iter().zip(&samples).zip(modelled) {
            if let (true, Some(slow_c)) =
                ((15.0..=30.0).contains(&row.sure("depth_m")), row.number("slow_temperature_c"))
            {
                slow.push(slow_c - fast_c);
                model.push(modelled_c - fast_c);
            }
        }
        let mean = |of: &[f64]| of.iter().sum::<f64>() / of.len() as f64;
        let want = expected
            .iter()
            .find(|r| r.text("cast") == name && r.text("quantity") == "slow_minus_fast_15_to_30m")
            .unwrap();
        if let Some(want) = want.number("value") {
            close(name, mean(&slow), want, 1e-6);
            means[usize::from(name.ends_with("up"))].push((mean(&slow), mean(&model)));
        }
    }
    let all = |way: &[(f64, f64)], which: fn(&(f64, f64)) -> f64| {
        way.iter().map(which).sum::<f64>() / way.len() as f64
    };
    let [down, up] = &means;
    let want = |quantity: &str| {
        let row = expected.iter().find(|r| r.text("cast") == "all" && r.text("quantity") == quantity);
        row.unwrap().sure("value")
    };
    close("down", all(down, |m| m.0), want("mean_slow_minus_fast_15_to_30m_down"), 1e-6);
    close("up", all(up, |m| m.0), want("mean_slow_minus_fast_15_to_30m_up"), 1e-6);
    assert!(all(down, |m| m.0) > 0.0 && all(up, |m| m.0) < 0.0, "measured");
    assert!(all(down, |m| m.1) > 0.0 && all(up, |m| m.1) < 0.0, "modelled");
}
