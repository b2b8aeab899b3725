//! Kind 24: what explains the difference from another group's cast best, which evidence, and could sun have done it? The
//! explanation by `core::compare`, the evidence in words, the power as a sum.

use super::really_disagree::group;
use crate::questions::kind::{
    Accepted, Dropped, EVERY_WATER, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question,
};
use crate::questions::other::{Other, causes};
use crate::questions::say::{Numbers, line, result, rounded};
use crate::questions::text::{Fields, field};
use crate::questions::water::Water;
use crate::questions::why::{bare_number, quoted_words, within};
use layercast_core::compare::{Cause, SUN_AT_MOST_W_M2, Verdict, extra_heat_j_m2, power_w_m2};
use layercast_core::{Message, State};

const NO_DEPTH: &str = "degrees_without_depth";
const NO_TIME: &str = "heat_without_time";

/// Minutes that are taken to lie between the casts: the question says so.
const MINUTES: f64 = 60.0;
/// A power within this factor is right (job rule: the readings know no better).
const FACTOR: f64 = 2.0;
/// An idea is named only when the number is its own within a tenth.
const SAME: f64 = 1.1;
/// Less than this between the casts is no heat to speak of, °C.
const LEAST_C: f64 = 0.05;

/// Kind 24.
pub(crate) struct BestExplanation;

fn value(cause: Cause) -> &'static str {
    match cause {
        Cause::Offset => "probe",
        Cause::Zero => "zero",
        Cause::Stretch => "cable",
        Cause::WarmTop => "sun",
        Cause::MovedWater => "moved",
    }
}

fn words(value: &str) -> Message {
    Message::new(match value {
        "probe" => "class-cause-offset",
        "zero" => "class-cause-zero",
        "cable" => "class-cause-stretch",
        "sun" => "class-cause-top",
        "moved" => "class-cause-moved",
        "chance" => "ask-24-chance",
        _ => "ask-24-none",
    })
}

/// What is right, the best first.
fn right(water: &Water) -> Vec<&'static str> {
    let other = Other::of(water);
    let Some(why) = other.as_ref().and_then(|other| other.why()) else { return Vec::new() };
    match why.verdict {
        Some(Verdict::Cause(_)) => causes(why).into_iter().map(value).collect(),
        Some(Verdict::NoneAlone) => vec!["several"],
        Some(Verdict::Chance) | None => vec!["chance"],
    }
}

/// The heat one cast holds more than the other.
#[derive(Clone, Copy)]
struct Heat {
    /// Mean difference over the shared depths, °C, as it is shown.
    mean_c: f64,
    /// From and to, metres.
    over_m: (f64, f64),
    /// W/m², if it came in [`MINUTES`].
    power: f64,
}

impl Heat {
    /// `None` where there is too little of it, or where a wrong idea would give a right number.
    fn of(water: &Water) -> Option<Self> {
        let other = Other::of(water)?;
        let shared = &other.apart.as_ref()?.shared;
        let (first, last) = (shared.first()?.depth_m, shared.last()?.depth_m);
        let differences: Vec<(f64, f64)> = shared.iter().map(|at| (at.depth_m, at.difference_c)).collect();
        let joules = extra_heat_j_m2(&differences).abs();
        let deep_m = last - first;
        let per_metre_degree = extra_heat_j_m2(&[(0.0, 1.0), (1.0, 1.0)]);
        let mean_c = rounded(joules / per_metre_degree / deep_m, 2);
        let power = power_w_m2(mean_c * deep_m * per_metre_degree, MINUTES)?;
        // Left out the depth, the power comes out smaller by that many metres.
        let tells = deep_m > FACTOR * SAME;
        (mean_c >= LEAST_C && tells).then_some(Self { mean_c, over_m: (first, last), power })
    }

    fn deep_m(self) -> f64 {
        self.over_m.1 - self.over_m.0
    }

    fn could(self) -> &'static str {
        if self.power <= SUN_AT_MOST_W_M2 { "could" } else { "could_not" }
    }
}

/// Whether the sun could have done it is asked only where it is clear: not within the factor of the strongest sun.
fn asks_sun(heat: Heat) -> bool {
    !within(heat.power, SUN_AT_MOST_W_M2, FACTOR)
}

impl Kind for BestExplanation {
    fn routes(&self) -> &'static [State] {
        EVERY_WATER
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: NO_DEPTH, part: 2 }, Idea { key: NO_TIME, part: 2 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        match Other::wanted(water, "ask-dropped-24")?.apart {
            Some(_) => Ok(Vec::new()),
            None => Err(Dropped::plain("ask-dropped-24-little")),
        }
    }

    fn plan(&self, q: &Question) -> Plan {
        let values = Cause::ALL.map(value).into_iter().chain(["chance", "several"]);
        let options = values.map(|value| (value.to_owned(), words(value))).collect();
        let choice = Field {
            input: Input::Choice(options),
            ..Field::number("cause", Message::new("ask-24-name"), None)
        };
        let starters = ["ask-24-start-1", "ask-24-start-2"].map(Message::new).to_vec();
        let evidence = Field::prose("evidence", Message::new("ask-24-name-evidence"), starters);
        let mut parts = vec![
            vec![Line::new(Message::new("ask-24-label"), vec![choice])],
            vec![Line::new(Message::new("ask-24-label-evidence"), vec![evidence])],
        ];
        let other = Other::of(q.water);
        let apart_c = other.as_ref().and_then(|other| other.apart.as_ref()).map_or(0.0, |apart| apart.rms_c);
        let mut lead = vec![
            Message::new("ask-24-lead").message("group", group(q.water)).c("apart", rounded(apart_c, 2)),
        ];
        if let Some(heat) = Heat::of(q.water) {
            let power =
                Field::number("power", Message::new("ask-24-name-power"), Some(Message::new("ask-24-watts")));
            let mut part = vec![Line::new(Message::new("ask-24-label-power"), vec![power])];
            if asks_sun(heat) {
                let list = vec![
                    ("", Message::new("ask-24-choose")),
                    ("could", Message::new("ask-24-could")),
                    ("could_not", Message::new("ask-24-could-not")),
                ];
                let sun = Field {
                    input: Input::List(list),
                    ..Field::number("sun", Message::new("ask-24-name-sun"), None)
                };
                part.push(Line::new(Message::new("ask-24-label-sun"), vec![sun]));
            }
            parts.push(part);
            let (from, to) = heat.over_m;
            lead.push(Message::new("ask-24-lead-heat").c("mean", heat.mean_c).m("from", from).m("to", to));
            lead.push(Message::new("ask-note-watt"));
        }
        Plan {
            ask: Message::new("ask-24").message("group", group(q.water)),
            lead,
            parts,
            notes: vec![Message::new("ask-why-note-kept")],
        }
    }

    fn judge(&self, q: &Question, part: usize, fields: &Fields) -> Judged {
        match part {
            0 => {
                let chosen = field(fields, "cause");
                if right(q.water).contains(&chosen) {
                    Judged::yes(
                        Message::new("ask-24-yes").message("cause", words(chosen)),
                        Accepted::default(),
                    )
                } else {
                    Judged::not_yet(Message::new("ask-24-no").message("cause", words(chosen)))
                }
            }
            1 => Judged::kept(quoted_words(fields, "evidence")),
            _ => judge_power(q, fields),
        }
    }

    fn is_judged(&self, _q: &Question, part: usize) -> bool {
        part != 1
    }

    fn cannot_be_told(&self, q: &Question) -> bool {
        right(q.water).len() > 1
    }

    fn hint(&self, _q: &Question, part: usize, level: u8) -> Hint {
        Hint::Words(Message::new(match (part, level) {
            (0, 1) => "ask-24-hint-1",
            (0, 2) => "ask-24-hint-2",
            (0, _) => "ask-24-hint-3",
            (1, _) => "ask-24-evidence-hint",
            (_, 1) => "ask-24-power-hint-1",
            (_, 2) => "ask-24-power-hint-2",
            _ => "ask-24-power-hint-3",
        }))
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let explained = |shown| Explained {
            shown,
            sum: Vec::new(),
            fits: None,
            notes: Vec::new(),
            own_words: Message::new("ask-24-own-words"),
        };
        let right = right(q.water);
        match (part, Heat::of(q.water)) {
            (0, _) => {
                let tied = |value: &&'static str| Message::new("ask-24-tied").message("cause", words(value));
                let notes = right.iter().skip(1).map(tied).collect();
                Explained { notes, ..explained(words(right.first().copied().unwrap_or("chance"))) }
            }
            (2, Some(heat)) => {
                let watts = |value: f64| Message::new("ask-24-power").number("power", value.round(), 0);
                let heat_mj = heat.power * 60.0 * MINUTES / 1e6;
                let joules = Message::new("ask-24-heat").number("heat", rounded(heat_mj, 2), 2);
                let times = Message::new("ask-24-times").c("mean", heat.mean_c).m("deep", heat.deep_m());
                let over = Message::new("ask-24-over").number("heat", rounded(heat_mj, 2), 2);
                let sum = vec![
                    line(times, joules, Message::new("ask-24-gloss-heat")),
                    result(over, watts(heat.power), Message::new("ask-24-gloss-power")),
                ];
                let id = if asks_sun(heat) {
                    if heat.could() == "could" { "ask-24-sun-could" } else { "ask-24-sun-could-not" }
                } else {
                    "ask-24-sun-unsure"
                };
                Explained { sum, notes: vec![Message::new(id)], ..explained(watts(heat.power)) }
            }
            _ => explained(Message::new("ask-24-evidence-shown")),
        }
    }
}

fn judge_power(q: &Question, fields: &Fields) -> Judged {
    let Some(heat) = Heat::of(q.water) else { return Judged::not_yet(Message::new("ask-24-power-no")) };
    let typed = match bare_number(fields, "power") {
        Ok(typed) => typed.value.abs(),
        Err(slip) => return *slip,
    };
    let ideas = [(heat.power / heat.deep_m(), NO_DEPTH), (heat.power * 60.0 * MINUTES, NO_TIME)];
    if !within(typed, heat.power, FACTOR) {
        return match ideas.iter().find(|(number, _)| within(typed, *number, SAME)) {
            Some((_, NO_DEPTH)) => Judged::idea(NO_DEPTH, Message::new("ask-24-no-depth")),
            Some(_) => Judged::idea(NO_TIME, Message::new("ask-24-no-time")),
            None => Judged::not_yet(Message::new("ask-24-power-no")),
        };
    }
    if asks_sun(heat) && field(fields, "sun") != heat.could() {
        return Judged::new(crate::questions::kind::Verdict::Almost, Message::new("ask-24-sun-no"));
    }
    let power = Message::new("ask-24-power-yes").number("power", heat.power.round(), 0);
    Judged::yes(power, Accepted::default())
}
