//! The cast worked by hand on the page for teachers: every number printed there, in each language, is computed here from the
//! example's own file and must be the same to the last digit shown.

#![allow(clippy::unwrap_used, clippy::panic)]

#[path = "../examples/analyse/render.rs"]
#[allow(dead_code, reason = "only the words are needed")]
mod render;

use layercast_core::water::density::density_kg_m3;
use layercast_core::{Analysis, Message, Method, MixedLayer, State, analyse};
use layercast_exchange::document::{CastDoc, Choices, to_cast};
use layercast_exchange::read::{decode, read};
use std::collections::BTreeSet;
use std::path::{Path, PathBuf};

fn data() -> PathBuf {
    Path::new(env!("CARGO_MANIFEST_DIR")).join("../../static-data")
}

fn worked() -> Analysis {
    let bytes = std::fs::read(data().join("casts/layered-summer.csv")).unwrap();
    let choices = Choices::default();
    let cast = to_cast(&CastDoc::from_read(&read(&bytes, &choices), &decode(&bytes), &choices));
    analyse(&cast, &Method::default())
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

/// Every run of digits of a text, with its decimals; signs and powers such as ² are no part of it.
fn numbers(text: &str) -> Vec<String> {
    text.split(|c: char| !c.is_ascii_digit() && c != '.')
        .map(|run| run.trim_matches('.').to_owned())
        .filter(|run| !run.is_empty())
        .collect()
}

/// What stands in each message, in the order it stands there.
fn expected(a: &Analysis) -> Vec<(&'static str, Numbers)> {
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
                .then(schmidt, 0),
        ),
        (
            "how-worked-n2-text",
            (new().all(&[warm_c, cold_c], 2).all(&[over, under], 3).then(9.80665, 5))
                .all(&[(over + under) / 2.0, under - over], 3)
                .then(step_m, 1)
                .then(n2, 4)
                .then(2.0 * std::f64::consts::PI / n2.sqrt(), 0),
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

#[test]
fn numbers_are_found_in_a_sentence() {
    assert_eq!(numbers("2.5 – 3.0 | N² = 9.80665 ÷ 2: 64 s."), ["2.5", "3.0", "9.80665", "2", "64"]);
}
