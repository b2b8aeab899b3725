//! Catalogued wrong ideas: which of them can be told on a water, and what the judge makes of each.

use super::super::answers::{Wrong, between, rights, wrongs};
use super::super::{By, Pond, is_right, which_rule};
use super::told;
use layercast_core::MixedLayer;
use layercast_lesson::questions::{self, Asked, Verdict};

/// What was made of a wrong answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// Its idea was named.
    Named,
    /// No idea was named.
    Unnamed,
    /// Another idea was named.
    Falsely(&'static str),
    /// It was taken as right.
    Passed,
    /// On this water it leads where another idea leads, too.
    NotApart,
    /// On this water it leads to a right answer, or its part is not asked.
    NoWrong,
}

/// Every catalogued wrong answer to a question, with what is made of it.
pub fn outcomes(pond: &Pond, asked: &Asked) -> Vec<(Wrong, Outcome)> {
    let list = wrongs(pond, asked);
    let apart = |w: &Wrong| {
        !list.iter().any(|o| o.part == w.part && o.idea != w.idea && are_alike(pond, asked, o, w))
            && !is_beside(pond, asked, w)
            && !is_written_as_the_mark(pond, asked, w)
    };
    let apart: Vec<bool> = list.iter().map(apart).collect();
    list.into_iter()
        .zip(apart)
        .map(|(w, apart)| (outcome(pond, asked, &w, apart), w))
        .map(|(o, w)| (w, o))
        .collect()
}

fn outcome(pond: &Pond, asked: &Asked, wrong: &Wrong, apart: bool) -> Outcome {
    if is_a_right_place(pond, asked, wrong) {
        return Outcome::NoWrong;
    }
    let mut verdict = pond.verdict(asked, wrong.part, &wrong.fields);
    // The part is not asked of this water, or not of this step.
    if verdict.is_none_or(|v| v.verdict == Verdict::Waits) || is_put_aside(pond, asked, wrong) {
        return Outcome::NoWrong;
    }
    if which_rule(verdict) {
        let mut none = wrong.fields.clone();
        none.insert("rule".into(), "none".into());
        let tries = [wrong.fields.clone(), none];
        verdict = pond.judge(asked, &tries).into_iter().rfind(|v| v.part == wrong.part);
    }
    match verdict.and_then(|v| v.idea) {
        _ if is_right(verdict) => Outcome::Passed,
        Some(idea) if idea != wrong.idea => Outcome::Falsely(idea),
        Some(_) => Outcome::Named,
        None if !apart => Outcome::NotApart,
        None => Outcome::Unnamed,
    }
}

/// The question itself tells to leave this place aside, and a sentence of its own says so again.
fn is_put_aside(pond: &Pond, asked: &Asked, wrong: &Wrong) -> bool {
    let said = |sentence: &str, name: &str| told::number(pond, 6, sentence, name);
    let from = said("ask-6-look-below", "depth").or_else(|| said("ask-6-look-between", "from"));
    let to = said("ask-6-look-between", "to");
    let num = |id: &str| wrong.fields.get(id).and_then(|t| t.parse::<f64>().ok());
    asked.kind == 6
        && wrong.part == 0
        && (num("from").zip(from).is_some_and(|(a, from)| a < from - WRITTEN_M)
            || num("to").zip(to).is_some_and(|(b, to)| b > to + WRITTEN_M))
}

/// How near two numbers lie so that they could be one, rounded: 0.1; a temperature read off the picture 0.55; a depth read
/// off the picture half a step.
fn near(pond: &Pond, asked: &Asked, depth: Option<f64>) -> f64 {
    match (asked.kind, depth) {
        (1, _) => 0.55,
        (7, Some(z)) => {
            let step = pond.rows.windows(2).find(|w| w[1].0 >= z - 1e-9).map_or(0.5, |w| w[1].0 - w[0].0);
            step / 2.0
        }
        _ => 0.1,
    }
}

/// The right depth, written to a tenth, may be the mark.
fn is_written_as_the_mark(pond: &Pond, asked: &Asked, wrong: &Wrong) -> bool {
    let Some(MixedLayer::At { value_m, .. }) = pond.analysis.mixed_layer else { return false };
    let depth = wrong.fields.get("depth").and_then(|t| t.parse::<f64>().ok());
    // A tenth of a degree at either reading moves it by so much.
    let step = pond.analysis.steps.iter().find(|s| value_m > s.top_m && value_m <= s.bottom_m);
    let moved = step.map_or(0.0, |s| 0.1 / s.cooling_c_per_m.abs().max(0.1));
    asked.kind == 9 && wrong.part == 2 && depth.is_some_and(|z| (z - value_m).abs() <= moved + 0.1)
}

/// The mirror image of the right depth is a neighbour of it: near mid-depth nobody can tell which was meant.
fn is_beside(pond: &Pond, asked: &Asked, wrong: &Wrong) -> bool {
    let found = pond.analysis.thermocline.or(pond.analysis.fastest_warming);
    let depth = wrong.fields.get("depth").and_then(|t| t.parse::<f64>().ok());
    asked.kind == 7
        && wrong.idea == "depth_as_height"
        && found
            .zip(depth)
            .is_some_and(|(t, z)| (z - t.value_m).abs() <= 1.5 * (t.step_bottom_m - t.step_top_m) + WRITTEN_M)
}

/// Two ideas lead to the same answer.
fn are_alike(pond: &Pond, asked: &Asked, a: &Wrong, b: &Wrong) -> bool {
    let number =
        |w: &Wrong, id: &str| w.fields.get(id).and_then(|t| t.trim_end_matches(" °C").parse::<f64>().ok());
    let same = |id: &String| match (number(a, id), number(b, id)) {
        (Some(x), Some(y)) => (x - y).abs() <= near(pond, asked, (id == "depth").then_some(x)) + 1e-9,
        _ => matches!(id.as_str(), "source" | "unit") || a.fields.get(id) == b.fields.get(id),
    };
    a.fields.keys().chain(b.fields.keys()).all(same)
}

/// Depths are written to a hundredth.
const WRITTEN_M: f64 = 0.006;

/// An idea that points to a right place on this water is no wrong answer there. Numbers are never excused: where an idea
/// gives a right number the question must not have been asked. (The temperature and marks of kind 9 are places: an idea
/// that finds the same ones has found them.)
pub fn is_a_right_place(pond: &Pond, asked: &Asked, wrong: &Wrong) -> bool {
    let num = |id: &str| wrong.fields.get(id).and_then(|t| t.parse::<f64>().ok());
    match asked.kind {
        6 if wrong.part == 0 => {
            let (Some(a), Some(b)) = (num("from"), num("to")) else { return false };
            pond.analysis.steps.iter().any(|s| {
                (s.in_span || (s.in_warm_layer_today && pond.analysis.thermocline.is_none()))
                    && (s.top_m - a).abs() < WRITTEN_M
                    && (s.bottom_m - b).abs() < WRITTEN_M
            })
        }
        7 => {
            let found = pond.analysis.thermocline.or(pond.analysis.fastest_warming);
            let span = found.map(|t| (t.span_top_m, t.span_bottom_m));
            let span =
                span.or(pond.analysis.warm_layer_today.map(|w| (w.span_top_m, w.span_bottom_m))).unwrap();
            num("depth").is_some_and(|z| z >= span.0 - 1e-9 && z <= span.1 + 1e-9)
        }
        // Where the readings cannot tell, the whole lake is what they know.
        8 => wrong.idea == "the_whole_lake" && pond.analysis.thermocline.is_some_and(|t| !t.tellable),
        // Where the steps that lose a degree are those that lose it per metre, or where none loses either.
        11 => rights(pond, asked).contains(&wrong.fields) || is_an_edge(pond, asked, wrong),
        9 if wrong.part < 2 => {
            let Some(MixedLayer::At { target_c, between_m, .. }) = pond.analysis.mixed_layer else {
                return false;
            };
            let legs = [By::Mean, By::Down, By::Up].map(|by| {
                let series = pond.series(by);
                let target = between(&series, 0.5_f64.max(series[0].0)).unwrap() - 1.0;
                let w = series.windows(2).find(|w| w[1].0 > 0.5 && w[1].1 <= target + 1e-9);
                (target, w.map(|w| (w[0].0, w[1].0)))
            });
            if wrong.part == 0 {
                let x = num("temp").unwrap();
                return (x - target_c).abs() <= 0.1 + 1e-9
                    || legs.iter().any(|l| (x - l.0).abs() <= 0.1 + 1e-9)
                    || pond.rows.iter().all(|r| (r.0 - 0.5).abs() > 1e-6);
            }
            let (a, b) = (num("from").unwrap(), num("to").unwrap());
            let same = |p: (f64, f64)| (p.0 - a).abs() < WRITTEN_M && (p.1 - b).abs() < WRITTEN_M;
            same(between_m) || legs.iter().filter_map(|l| l.1).any(same)
        }
        _ => false,
    }
}

/// Both marks count for kind 11 by what its explanation says.
fn is_an_edge(pond: &Pond, asked: &Asked, wrong: &Wrong) -> bool {
    use layercast_lesson::document::Answer;
    use layercast_lesson::view::SaidArg;
    let mut shown = pond.again();
    shown.sheet.answers.insert(asked.id.clone(), Answer { shown: true, ..Answer::default() });
    let paper = shown.paper();
    let index = paper.asked.iter().position(|a| a.id == asked.id).unwrap();
    let view = questions::view(&shown.context(), &paper, index).unwrap();
    let Some(fits) = &view.parts[0].fits else { return false };
    let number = |name: &str| match fits.args.get(name) {
        Some(SaidArg::Number { value, .. }) => *value,
        other => panic!("{other:?}"),
    };
    let typed = |id: &str| wrong.fields.get(id).and_then(|t| t.parse::<f64>().ok());
    let (Some(from), Some(to)) = (typed("from"), typed("to")) else { return false };
    let within = |x: f64, low: &str, high: &str| x >= number(low) - 1e-6 && x <= number(high) + 1e-6;
    within(from, "top_from", "top_to") && within(to, "bottom_from", "bottom_to")
}
