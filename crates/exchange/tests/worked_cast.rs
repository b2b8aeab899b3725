//! The cast worked by hand on the page for teachers: every number printed there, in each language, is computed here from the
//! example's own file and must be the same to the last digit shown.

#![allow(clippy::unwrap_used, clippy::panic)] // a test may fail
#![allow(clippy::disallowed_methods)] // worked out a second time, with the functions of std

#[path = "../examples/shared/render.rs"]
#[allow(dead_code, reason = "only the words are needed")]
mod render;

use layercast_core::cast::probe_check::{self, ProbeVerdict, probe_check};
use layercast_core::cast::{gross_range, inversion, pair_verdicts, pairs, spike};
use layercast_core::certainty::{self, Depth, Plan, Unsure, certainty};
use layercast_core::compare;
use layercast_core::layers::dense_step::DENSE_KG_M3_PER_M;
use layercast_core::layers::every_rule::every_rule;
use layercast_core::layers::{mixed_layer, runs, state};
use layercast_core::stability::{basin::Basin, whole::whole, wind};
use layercast_core::water::calibration::{LEAST_APART_C, two_point_c};
use layercast_core::water::density::{Density, density_kg_m3};
use layercast_core::water::oxygen;
use layercast_core::whatif;
use layercast_core::{Analysis, Cast, Message, Method, MixedLayer, Rule, State, analyse};
use layercast_exchange::document::{CastDoc, Choices, to_cast};
use layercast_exchange::read::{decode, read};
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

fn data() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../static-data")
}

fn worked() -> (Cast, Analysis) {
    let bytes = std::fs::read(data().join("casts/layered-summer.csv")).unwrap();
    let choices = Choices::default();
    let cast = to_cast(&CastDoc::from_read(&read(&bytes, &choices), &decode(&bytes), &choices));
    let analysis = analyse(&cast, &Method::default());
    (cast, analysis)
}

/// Numbers as they should stand in a text, in order.
#[derive(Default)]
struct Numbers(Vec<String>);

impl Numbers {
    /// One more, with so many decimals.
    fn then(mut self, value: f64, decimals: usize) -> Self {
        // Half a unit of the last digit is never decided by the last bit.
        self.0.push(format!("{:.decimals$}", value + value.signum() * 1e-9));
        self
    }

    fn all(self, values: &[f64], decimals: usize) -> Self {
        values.iter().fold(self, |so_far, value| so_far.then(*value, decimals))
    }
}

/// Every run of digits of a text, with its decimals; signs and powers such as ² are no part of it. A no-break space may
/// stand between thousands.
fn numbers(text: &str) -> Vec<String> {
    let joined = text.replace("0\u{a0}000", "0000");
    joined
        .split(|c: char| !c.is_ascii_digit() && c != '.')
        .map(|run| run.trim_matches('.').to_owned())
        .filter(|run| !run.is_empty())
        .collect()
}

/// What stands in each message, in the order it stands there.
fn expected((cast, a): &(Cast, Analysis)) -> Vec<(&'static str, Numbers)> {
    let new = Numbers::default;
    let at = |depth_m: f64| a.profile.iter().find(|level| level.depth_m == depth_m).unwrap().temp_c;
    let apart: Vec<f64> = a.profile.iter().map(|level| level.down_c.unwrap() - level.up_c.unwrap()).collect();
    let (count, n) = (apart.len(), apart.len() as f64);
    let squares: f64 = apart.iter().map(|d| d * d).sum();
    let mean = a.pairs.mean_c.unwrap();
    let sd = (apart.iter().map(|d| (d - mean) * (d - mean)).sum::<f64>() / (n - 1.0)).sqrt();
    let s = a.pairs.s_used_c;
    let thermocline = a.thermocline.unwrap();
    let steepest = a.steps.iter().position(|step| step.top_m == thermocline.step_top_m).unwrap();
    let (e, u) = (a.profile[steepest].sd_c, a.steps[steepest].u_c_per_m);
    let mut cooling: Vec<f64> = a.steps.iter().map(|step| step.cooling_c_per_m).collect();
    cooling.sort_by(|a, b| b.total_cmp(a));
    let facts = a.facts.unwrap();
    let last_m = a.profile[count - 1].depth_m;

    let steps = a.steps[steepest - 2..=steepest + 2].iter().fold(new(), |all, step| {
        let (above, below) = (at(step.top_m), at(step.bottom_m));
        let all = all.all(&[step.top_m, step.bottom_m], 1).all(&[above, below, above - below], 2);
        all.then(step.cooling_c_per_m, 1)
    });

    let Some(MixedLayer::At { value_m, target_c, between_m: (top_m, bottom_m), .. }) = a.mixed_layer else {
        panic!("{:?}", a.mixed_layer)
    };
    let reference_m = a.method.reference_m;
    assert_eq!(target_c, at(reference_m) - a.method.mixed_drop_c);

    let steep = a.metalimnion.unwrap();
    let run: Vec<f64> =
        a.steps.iter().filter(|step| step.in_main_layer).map(|step| step.cooling_c_per_m).collect();
    let beside = |is: &dyn Fn(f64, f64) -> bool| {
        a.steps.iter().find(|step| is(step.top_m, step.bottom_m)).unwrap().cooling_c_per_m
    };
    let (above, below) =
        (beside(&|_, bottom| bottom == steep.top_m), beside(&|top, _| top == steep.bottom_m));
    let lost = at(steep.top_m) - at(steep.bottom_m);
    assert_eq!((a.state, steep.cut_off), (State::Stratified, false));
    assert!(lost > 2.8 * s);

    let (light, heavy) = (density_kg_m3(facts.top_c), density_kg_m3(facts.bottom_c));
    let (upper_m, lower_m) = (thermocline.value_m, last_m - thermocline.value_m);
    let schmidt = 9.80665 * facts.density_gain * upper_m * lower_m / 2.0;

    let (warm_c, cold_c) = (at(thermocline.step_top_m), at(thermocline.step_bottom_m));
    let (over, under) = (density_kg_m3(warm_c), density_kg_m3(cold_c));
    let step_m = thermocline.step_bottom_m - thermocline.step_top_m;
    let n2 = 9.80665 / ((over + under) / 2.0) * (under - over) / step_m;

    let whole = whole(&a.profile, &Basin::unit_column(last_m).unwrap(), last_m, Density::Tanaka).unwrap();
    let lifted_kg = whole.mixing.last().unwrap().lifted_kg_by_1_m;

    let every = every_rule(a);
    let rules = every.values.iter().fold(new(), |mut all, told| {
        let target = told.rule.temp_step_c(&a.method).or_else(|| told.rule.density_rise_kg_m3());
        // As it is written: 0.125, 1.0.
        all.0.extend(target.map(|target| format!("{target:?}")));
        let refined = matches!(told.rule, Rule::Centroid | Rule::Parabola | Rule::MonotoneCurve);
        all.then(told.value_m.unwrap(), if refined { 1 } else { 2 })
    });

    let sure = certainty(&Plan::new(cast, a, &Unsure::default()), certainty::SEED, certainty::TRIALS);
    let shares = sure.shares(Depth::Thermocline).unwrap();
    let in_100 = |step: usize| 100.0 * shares[step].share;
    let ends = sure.of(Depth::MixedLayer).unwrap();

    let (warmest_c, height_m, measured) = (23.4, 300.0, 7.0);
    let pressure = oxygen::pressure_atm(height_m).unwrap();
    let holds = |pressure: f64| oxygen::saturation_mg_l(warmest_c, 0.0, pressure).unwrap();

    let (ice_c, read_c, true_c, raw_c) = (0.3, 20.1, 20.0, 17.7);
    let probe = probe_check(&[ice_c; 3], Some((&[read_c; 3], true_c))).unwrap();
    assert!(probe.complete && probe.verdict == ProbeVerdict::Class);

    vec![
        ("how-worked-text", new().then(n, 0).then(0.0, 0).then(last_m, 1)),
        (
            "how-worked-pairs-text",
            (new().then(n, 0).then(a.pairs.max_abs_c.unwrap(), 1).then(squares, 2))
                .then(squares, 2)
                .then(2.0 * n, 0)
                .then(a.pairs.s_c.unwrap(), 2)
                .then(mean, 3)
                .then(2.0, 0)
                .then(sd, 3)
                .then(n, 0)
                .then(2.0 * sd / n.sqrt(), 3)
                .then(2.0, 0)
                .then(s, 2)
                .then(2.0, 0)
                .then(e, 3)
                .then(step_m, 1)
                .all(&[e, e], 3)
                .then(step_m, 1)
                .then(u, 2),
        ),
        ("how-worked-steps-text", new()),
        ("how-worked-steps-table", steps),
        (
            "how-worked-thermocline-text",
            (new().then(thermocline.gradient_c_per_m, 1))
                .all(&[thermocline.step_top_m, thermocline.step_bottom_m], 1)
                .then(2.0, 0)
                .then(thermocline.value_m, 2)
                .then(cooling[0], 1)
                .then(2.0, 0)
                .all(&[u, u], 2)
                .then(2.0, 0)
                .then(cooling[0] - 2.0 * u, 1)
                .then(cooling[1], 1)
                .all(&[thermocline.span_top_m, thermocline.span_bottom_m], 1),
        ),
        (
            "how-worked-mixed-text",
            (new().then(reference_m, 1).then(at(reference_m), 2).then(target_c, 2))
                .then(at(top_m), 2)
                .then(top_m, 1)
                .then(at(bottom_m), 2)
                .then(bottom_m, 1)
                .then(top_m, 1)
                .then(bottom_m - top_m, 1)
                .all(&[target_c, at(top_m), at(bottom_m), at(top_m), value_m], 2),
        ),
        (
            "how-worked-metalimnion-text",
            (new().all(&[steep.top_m, steep.bottom_m], 1).all(&run, 1).then(run.len() as f64, 0))
                .all(&[above, below], 1)
                .all(&[at(steep.top_m), at(steep.bottom_m), lost], 2)
                .then(2.8, 1)
                .all(&[s, 2.8 * s], 2),
        ),
        (
            "how-worked-state-text",
            (new().then(facts.top_c, 2).then(light, 3).then(facts.bottom_c, 2).then(heavy, 3))
                .then(facts.density_gain, 3)
                .then(0.1, 1),
        ),
        (
            "how-worked-schmidt-text",
            (new().then(upper_m, 2).then(facts.top_c, 2).then(lower_m, 2).then(facts.bottom_c, 2))
                .then(9.80665, 5)
                .then(facts.density_gain, 3)
                .all(&[upper_m, lower_m], 2)
                .then(2.0, 0)
                .then(schmidt, 0)
                .then(whole.schmidt_j_m2, 0)
                .then(lifted_kg, 0)
                .then(1.0, 0),
        ),
        (
            "how-worked-n2-text",
            (new().all(&[warm_c, cold_c], 2).all(&[over, under], 3).then(9.80665, 5))
                .all(&[(over + under) / 2.0, under - over], 3)
                .then(step_m, 1)
                .then(n2, 4)
                .then(2.0 * std::f64::consts::PI / n2.sqrt(), 0),
        ),
        ("how-worked-rules-text", new()),
        ("how-worked-rules-table", rules),
        (
            "how-worked-chance-text",
            (new().then(f64::from(certainty::TRIALS), 0).then(in_100(steepest), 0))
                .all(&[thermocline.step_top_m, thermocline.step_bottom_m], 1)
                .then(in_100(steepest + 1), 0)
                .all(&[ends.low_m.unwrap(), ends.high_m.unwrap()], 2)
                .then(95.0, 0),
        ),
        (
            "how-worked-oxygen-text",
            (new().then(warmest_c, 1).then(holds(1.0), 2).then(height_m, 0).then(pressure, 3))
                .then(holds(pressure), 2)
                .then(measured, 1)
                .then(oxygen::per_cent(measured, warmest_c, 0.0, pressure).unwrap(), 0),
        ),
        (
            "how-worked-probe-text",
            (new().all(&[ice_c, read_c, true_c, probe.worst_c], 1))
                .all(&[probe_check::GOOD_C, probe_check::CLASS_C], 1)
                .all(&[raw_c, raw_c, ice_c, true_c, read_c, ice_c], 1)
                .then(two_point_c(raw_c, ice_c, read_c, true_c).unwrap(), 2),
        ),
    ]
}

#[test]
fn every_number_worked_by_hand_is_the_one_computed() {
    let expected = expected(&worked());
    for lang in ["en", "es"] {
        let words = render::Words::load(lang);
        for (id, want) in &expected {
            let text = words.render(&Message::new(id));
            assert_eq!(numbers(&text), want.0, "{lang}, {id}: {text}");
        }
    }
}

#[test]
fn no_worked_message_goes_unlooked_at() {
    let source = std::fs::read_to_string(data().join("messages/en/how.ftl")).unwrap();
    let ids: BTreeSet<&str> =
        source.lines().filter_map(|line| line.split_once(" =")).map(|(id, _)| id).collect();
    let worked: BTreeSet<&str> =
        ids.into_iter().filter(|id| id.starts_with("how-worked-") && *id != "how-worked-title").collect();
    let looked_at: BTreeSet<&str> = expected(&self::worked()).into_iter().map(|(id, _)| id).collect();
    assert_eq!(worked, looked_at);
}

/// Limits that stand in the rules' own words, each as the calculation has it.
fn limits() -> Vec<(&'static str, Numbers)> {
    let new = Numbers::default;
    let (range, spikes) = (gross_range::LAKE, spike::LAKE);
    let (method, unsure) = (Method::default(), Unsure::default());
    let temp_drops_c =
        [Rule::TempDrop02, Rule::TempDrop05, Rule::TempDrop08].map(|rule| rule.temp_step_c(&method).unwrap());
    let rises = [Rule::DensityRise003, Rule::DensityRise0125].map(|rule| rule.density_rise_kg_m3().unwrap());
    vec![
        (
            "how-checks-formula",
            (new().then(-range.fail_c.0, 1).all(&[range.fail_c.1, range.suspect_c.0, range.suspect_c.1], 0))
                .all(&[spikes.suspect_c, spikes.fail_c], 1)
                .all(&[inversion::SUSPECT_KG_M3, inversion::FAIL_KG_M3], 2),
        ),
        ("how-corrections-formula", new().then(LEAST_APART_C, 0)),
        ("how-corrections-text", new().all(&[probe_check::GOOD_C, probe_check::CLASS_C], 1)),
        (
            "how-pairs-formula",
            (new().all(&[pair_verdicts::GOOD_C, pairs::CABLE_WOBBLE_M, pairs::REPEAT_C], 1)),
        ),
        ("how-pairs-text", new().then(pairs::UNTESTED_C, 1).then(pairs::ENOUGH_PAIRS as f64, 0)),
        ("how-state-text", new().then(state::END_M, 0)),
        (
            "how-state-formula",
            (new().then(state::OVERTURN_KG_M3, 2).then(state::INVERSE_C, 1))
                .all(&[state::MIXED_KG_M3, state::STRATIFIED_KG_M3], 1),
        ),
        ("how-metalimnion-formula", new().then(method.steep_c_per_m, 0).then(runs::BELIEVABLE, 1)),
        ("how-warm-text", new().then(runs::NEAR_SURFACE_M, 0).then(runs::DAY_WARMING_C, 0)),
        (
            "how-mixed-formula",
            (new().then(method.reference_m, 1).then(method.mixed_drop_c, 1))
                .then(mixed_layer::LEAST_RANGE_M, 2),
        ),
        (
            "how-others-text",
            (new().all(&temp_drops_c, 1).then(rises[0], 2).then(mixed_layer::DENSITY_RISE_KG_M3, 1))
                .then(rises[1], 3)
                .then(method.steep_c_per_m, 0)
                .then(DENSE_KG_M3_PER_M, 1),
        ),
        ("how-chance-text", new().then(f64::from(certainty::TRIALS), 0)),
        (
            "how-chance-formula",
            (new().then(unsure.offset_half_c, 1).then(100.0 * unsure.stretch_sd, 0))
                .then(unsure.angle_half_deg, 0)
                .then(unsure.mark_sd_m, 2),
        ),
        ("how-stability-formula", new().then(9.80665, 5).then(wind::AIR_KG_M3, 1).then(wind::DRAG, 4)),
        ("how-compare-text", new().then(compare::SUN_AT_MOST_W_M2, 0).then(compare::TRIALS as f64, 0)),
        ("how-whatif-text", new().then(f64::from(whatif::TRIALS), 0)),
        ("how-compare-formula", new().then(compare::WATER_HEAT_J_M3_K, 0)),
    ]
}

#[test]
fn the_limits_in_the_rules_are_those_in_use() {
    for lang in ["en", "es"] {
        let words = render::Words::load(lang);
        for (id, want) in limits() {
            let text = words.render(&Message::new(id));
            let mut found = numbers(&text).into_iter();
            for limit in want.0 {
                assert!(found.any(|number| number == limit), "{lang}, {id}: no {limit} in its place: {text}");
            }
        }
    }
}

#[test]
fn the_printed_coefficients_give_the_densities_and_saturations_in_use() {
    for lang in ["en", "es"] {
        let words = render::Words::load(lang);
        let printed = |id: &'static str, line: usize| -> Vec<f64> {
            let text = words.render(&Message::new(id));
            numbers(text.lines().nth(line).unwrap()).iter().map(|number| number.parse().unwrap()).collect()
        };
        let [greatest, one, coldest, a2, a3, a4, ..] = printed("how-density-formula", 0)[..] else {
            panic!()
        };
        let [freezing] = printed("how-oxygen-formula", 0)[..] else { panic!() };
        let [c0, c1, c2, _, c3, _, c4, _] = printed("how-oxygen-formula", 1)[..] else { panic!() };
        let [s0, s1, s2, _] = printed("how-oxygen-formula", 2)[..] else { panic!() };
        let [p0, p1, p2] = printed("how-oxygen-formula", 3)[..] else { panic!() };
        let [e, v0, v1, v2, _, q0, q1, q2] = printed("how-oxygen-formula", 5)[..] else { panic!() };
        for t in [0.0, 4.0, 12.5, 23.4, 40.0_f64] {
            let density = greatest * (one - (t - coldest).powi(2) * (t + a2) / (a3 * (t + a4)));
            assert!((density - density_kg_m3(t)).abs() < 1e-9, "{lang}, {t} °C: {density}");
            let k = t + freezing;
            let fresh = -c0 + c1 / k - c2 / k.powi(2) + c3 / k.powi(3) - c4 / k.powi(4);
            let (v, q) = (e.powf(v0 - v1 / k - v2 / k.powi(2)), q0 - q1 * t + q2 * t * t);
            for (salt, height_m) in [(0.0, 0.0), (5.0, 0.0), (0.0, 300.0), (2.0, 1500.0)] {
                let p = (p0 - p1 * height_m).powf(p2);
                assert!((p - oxygen::pressure_atm(height_m).unwrap()).abs() < 1e-12);
                let holds = (fresh - salt * (s0 - s1 / k + s2 / k.powi(2))).exp() * (p - v) * (1.0 - q * p)
                    / ((1.0 - v) * (1.0 - q));
                let used = oxygen::saturation_mg_l(t, salt, p).unwrap();
                assert!((holds - used).abs() < 1e-5, "{lang}, {t} °C, salt {salt}, {height_m} m: {holds}");
            }
        }
    }
}

#[test]
fn numbers_are_found_in_a_sentence() {
    assert_eq!(numbers("2.5 – 3.0 | N² = 9.80665 ÷ 2: 64 s."), ["2.5", "3.0", "9.80665", "2", "64"]);
    assert_eq!(numbers("10\u{a0}000 times in 0.5\u{a0}m"), ["10000", "0.5"]);
}
