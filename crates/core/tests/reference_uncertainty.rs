//! Ranges against the tables of methods 8, made with numpy's generator.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, close_option, depths, levels, one_series, profiles, table};
use layercast_core::certainty::{Depth, Plan, SEED, Unsure, certainty, trials, water};
use layercast_core::layers::first_steep::first_steep;
use layercast_core::layers::mixed_layer::{density_rise_depth_m, mixed_layer, temperature_step_depth_m};
use layercast_core::layers::parabola::parabola_m;
use layercast_core::layers::span::span;
use layercast_core::layers::steepest::steepest;
use layercast_core::layers::steps::steps;
use layercast_core::{Level, Method, MixedLayer, analyse};

/// A plan for readings whose noise is known, as the tables have it.
fn plan(rows: &[(f64, f64)], noise_c: f64, unsure: &Unsure) -> Plan {
    let cast = one_series(rows, 0.0);
    let mut analysis = analyse(&cast, &Method::default());
    analysis.pairs.s_used_c = noise_c;
    analysis.profile.iter_mut().for_each(|l| l.sd_c = noise_c);
    Plan::new(&cast, &analysis, unsure)
}

/// 2.5, 50 and 97.5 % of a list, and the share that is missing of `count`.
fn percentiles(mut found: Vec<f64>, count: u32) -> ([Option<f64>; 3], f64) {
    found.sort_by(f64::total_cmp);
    let at = |p: f64| {
        let place = p * found.len().checked_sub(1)? as f64;
        let below = place as usize;
        let above = (below + 1).min(found.len() - 1);
        Some(found[below] + place.fract() * (found[above] - found[below]))
    };
    ([at(0.025), at(0.5), at(0.975)], 1.0 - found.len() as f64 / f64::from(count))
}

#[test]
fn a_threshold_crossing_by_the_law_and_by_trials() {
    for row in table("check-values/uncertainty_threshold.csv") {
        let (noise_c, slope) = (row.sure("sigma_c"), row.sure("slope_c_per_m"));
        let rows: Vec<(f64, f64)> =
            depths(17, 0.5).into_iter().map(|z| (z, 20.0 - slope * (z - 3.0_f64).max(0.0))).collect();
        let what = format!("noise {noise_c} °C on {slope} °C/m");

        let got = mixed_layer(&levels(&rows, noise_c), 0.5, 1.0);
        let Some(MixedLayer::At { value_m, low_m, high_m, .. }) = got else { panic!("{what}: none") };
        close(&what, value_m, row.sure("depth_m"), 1e-9);
        close(&what, (high_m - low_m) / 4.0, row.sure("u_law_m"), 1e-9);

        let plan = plan(&rows, noise_c, &Unsure::READINGS_ONLY);
        let (count, width) = (60_000, plan.width());
        let before = plan.depths().take_while(|d| *d != Depth::MixedLayer);
        let column: usize = before.map(|d| if d.is_a_middle() { 2 } else { 1 }).sum();
        let drawn = trials(&plan, SEED, 0, count);
        let found: Vec<f64> = drawn.iter().skip(column).step_by(width).copied().collect();
        let mean = found.iter().sum::<f64>() / f64::from(count);
        let sd = (found.iter().map(|z| (z - mean) * (z - mean)).sum::<f64>() / f64::from(count - 1)).sqrt();
        close(&format!("{what}, mean"), mean, row.sure("mc_mean_m"), 0.003);
        if noise_c < 0.2 {
            close(&format!("{what}, sd"), sd, row.sure("mc_sd_m"), 0.03 * row.sure("mc_sd_m"));
        }
        let ranged = *certainty(&plan, SEED, count).of(Depth::MixedLayer).unwrap();
        close_option(&what, ranged.low_m, row.number("mc_p2p5_m"), 0.02);
        close_option(&what, ranged.median_m, row.number("mc_p50_m"), 0.02);
        close_option(&what, ranged.high_m, row.number("mc_p97p5_m"), 0.02);
    }
}

/// Middle of the steepest step, whatever the layers.
fn middle_m(levels: &[Level]) -> Option<f64> {
    let steps = steps(levels);
    span(&steps, 0..steps.len(), &[]).map(|s| s.thermocline.value_m)
}

/// The parabola through the steepest step and its neighbours; its middle where there is none.
fn parabola_or_middle_m(levels: &[Level]) -> Option<f64> {
    let steps = steps(levels);
    let cooling: Vec<f64> = steps.iter().map(|s| s.cooling_c_per_m).collect();
    let found = steepest(&cooling, |_| true)?;
    parabola_m(&steps, found.first..found.last + 1).or_else(|| middle_m(levels))
}

#[test]
fn bare_rules_on_drawn_water() {
    let profiles = profiles();
    for row in table("check-values/uncertainty_profiles.csv") {
        let (name, noise_c) = (row.text("profile"), row.sure("sigma_c"));
        let rows = &profiles.iter().find(|(n, _)| n == name).unwrap().1;
        let unsure = Unsure { mark_sd_m: row.sure("sigma_z_m"), ..Unsure::READINGS_ONLY };
        let plan = plan(rows, noise_c, &unsure);
        let count = 10_000;
        let drawn: Vec<Vec<Level>> = (0..count).map(|trial| water(&plan, SEED, trial)).collect();
        let what = format!("{name}, noise {noise_c} °C, marks {} m", unsure.mark_sd_m);
        let compare = |rule: &str, rule_m: &dyn Fn(&[Level]) -> Option<f64>, tolerance_m: f64| {
            let (got, missing) = percentiles(drawn.iter().filter_map(|l| rule_m(l)).collect(), count);
            for (end, got) in ["lo", "med", "hi"].into_iter().zip(got) {
                if name == "linear" && rule != "mld" && end == "med" {
                    continue; // equal slopes: chance alone
                }
                let want = row.number(&format!("{rule}_{end}"));
                close_option(&format!("{what}, {rule} {end}"), got, want, tolerance_m);
            }
            missing
        };
        compare("mid", &middle_m, 0.5);
        compare("par", &parabola_or_middle_m, 0.1);
        let missing = compare("mld", &|l| temperature_step_depth_m(l, 0.5, 1.0), 0.05);
        close(&what, missing, row.sure("mld_not_reached_fraction"), 0.001);
    }
}

#[test]
fn the_depths_sought_are_the_bare_ones_where_there_is_one_layer() {
    let profiles = profiles();
    for row in table("check-values/uncertainty_profiles.csv") {
        let (name, noise_c) = (row.text("profile"), row.sure("sigma_c"));
        let one_layer = ["summer_rounded", "summer_broad", "weak"].contains(&name);
        if !one_layer {
            continue; // the analysis seeks in the main layer: methods 5.6
        }
        let rows = &profiles.iter().find(|(n, _)| n == name).unwrap().1;
        let unsure = Unsure { mark_sd_m: row.sure("sigma_z_m"), ..Unsure::READINGS_ONLY };
        let got = certainty(&plan(rows, noise_c, &unsure), SEED, 10_000);
        let what = format!("{name}, noise {noise_c} °C, marks {} m", unsure.mark_sd_m);
        let mixed = got.of(Depth::MixedLayer).unwrap();
        close_option(&what, mixed.low_m, row.number("mld_lo"), 0.05);
        close_option(&what, mixed.median_m, row.number("mld_med"), 0.05);
        close_option(&what, mixed.high_m, row.number("mld_hi"), 0.05);
        let middle = got.of(Depth::Thermocline).unwrap();
        close_option(&what, middle.low_m, row.number("mid_lo"), 0.5);
        close_option(&what, middle.median_m, row.number("mid_med"), 0.5);
        close_option(&what, middle.high_m, row.number("mid_hi"), 0.5);
        // Methods 8.3: on a weak cast the honest answer is "none".
        assert_eq!(middle.refused.is_some(), name == "weak", "{what}: {middle:?}");
    }
}

/// The evidence for the class rule: which rules survive noise. No gate; each figure to the size that matters.
#[test]
fn the_one_degree_rule_survives_noise_and_finer_ones_do_not() {
    let profiles = profiles();
    let mut seen = 0;
    for row in table("check-values/method_noise.csv") {
        let rule_m: &dyn Fn(&[Level]) -> Option<f64> = match row.text("method") {
            "t0p2" => &|l| temperature_step_depth_m(l, 0.5, 0.2),
            "t0p5" => &|l| temperature_step_depth_m(l, 0.5, 0.5),
            "t1p0" => &|l| temperature_step_depth_m(l, 0.5, 1.0),
            "r0p1" => &|l| density_rise_depth_m(l, 0.5, 0.1),
            "g1_top" => &|l| first_steep(&steps(l), 1.0).map(|(top_m, _)| top_m),
            _ => continue, // fits of whole curves, held to their own table
        };
        let (name, noise_c) = (row.text("profile"), row.sure("sigma_c"));
        let rows = &profiles.iter().find(|(n, _)| n == name).unwrap().1;
        let plan = plan(rows, noise_c, &Unsure::READINGS_ONLY);
        let count = 2_000;
        let found = (0..count).filter_map(|trial| rule_m(&water(&plan, SEED, trial))).collect();
        let (got, missing) = percentiles(found, count);
        let what = format!("{name}, {}, noise {noise_c} °C", row.text("method"));
        close(&what, missing, row.sure("fraction_not_reached"), 0.04);
        for (end, got) in ["p2p5_m", "p50_m", "p97p5_m"].into_iter().zip(got) {
            let tolerance_m = if row.text("method") == "g1_top" { 0.5 } else { 0.15 };
            close_option(&format!("{what}, {end}"), got, row.number(end), tolerance_m);
        }
        seen += 1;
    }
    assert_eq!(seen, 75);
}

/// The whole of a trial once more, written from methods 8.3 and the words of this crate in numpy 2.4.6 (10,000 trials of its
/// own generator): ranges of the mixed layer of three casts read once to 0.1 °C, steep below a gap, in uneven steps, and
/// in equal ones. The gap is where the bow between marks tells most: with a bow of 1.2 in place of 1.44 its deeper end
/// is 3.49 m.
#[test]
fn ranges_of_the_mixed_layer_as_another_program_has_them() {
    let even = |steps: i32, step_m: f64, temps_c: &[f64]| -> Vec<(f64, f64)> {
        (0..steps).map(|i| step_m * f64::from(i)).zip(temps_c.iter().copied()).collect()
    };
    let gap = [0.0, 1.0, 2.0, 3.0, 5.0, 6.0, 7.0, 8.0, 9.0, 10.0];
    let gap: Vec<(f64, f64)> =
        gap.into_iter().zip([22.0, 22.0, 22.0, 21.5, 8.5, 8.0, 8.0, 8.0, 8.0, 8.0]).collect();
    let uneven_m = [0.0, 0.3, 1.0, 2.0, 3.0, 4.0, 4.25, 4.5, 4.75, 5.0, 5.5, 6.0, 8.0, 10.0, 14.0];
    let uneven_c = [22.0, 22.0, 22.0, 22.0, 21.7, 20.3, 19.4, 18.2, 16.7, 15.0, 11.8, 9.7, 8.0, 8.0, 8.0];
    let ties = [
        21.0, 21.0, 20.9, 20.9, 20.8, 20.3, 19.3, 18.3, 17.3, 16.3, 15.6, 15.2, 14.9, 14.7, 14.6, 14.5, 14.5,
    ];
    let casts = [
        ("a gap", gap, [3.02, 3.20, 3.61]),
        ("uneven steps", uneven_m.into_iter().zip(uneven_c).collect(), [3.40, 3.63, 3.86]),
        ("equal steps", even(17, 0.5, &ties), [2.50, 2.67, 2.84]),
    ];
    for (what, rows, want_m) in casts {
        let cast = one_series(&rows, 0.1);
        let plan = Plan::new(&cast, &analyse(&cast, &Method::default()), &Unsure::default());
        let got = *certainty(&plan, SEED, 10_000).of(Depth::MixedLayer).unwrap();
        let got_m = [got.low_m, got.median_m, got.high_m].map(Option::unwrap);
        for (got_m, want_m) in got_m.into_iter().zip(want_m) {
            close(what, got_m, want_m, 0.03);
        }
    }
}
