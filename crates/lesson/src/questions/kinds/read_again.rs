//! Kind 15: which reading would you take again? Any that a check or the limits of a pair point to (methods 3.2, 4), or
//! "none" where nothing does. Another one does no harm where nothing points anywhere; else the question goes on.
//!
//! The shoulder of the steep layer stands among the lines: it looks odd in the picture, and both ways agree on it.

use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question,
};
use crate::questions::ranges::almost;
use crate::questions::say::Numbers;
use crate::questions::text::{Fields, field};
use crate::questions::water::{SLACK, Water};
use layercast_core::cast::pair_verdicts::{Repeat, pair_verdicts};
use layercast_core::order::sort_by;
use layercast_core::{Doubt, Leg, Message, State, Switch};

const SHOULDER: &str = "shoulder_of_the_layer";

/// No reading.
const NONE: &str = "none";
/// Readings that are pointed to and stand among the lines; ordinary ones beside them.
const MOST: (usize, usize) = (3, 2);
/// From this change of slope on a mark is a shoulder, °C per metre.
const BENDS: f64 = 1.0;
/// Fewest readings in use.
const FEWEST: usize = 4;
/// Two depths closer than this are the same mark, metres.
const SAME_M: f64 = 1e-6;

/// Kind 15.
pub(crate) struct ReadAgain;

/// Why a reading is pointed to.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Points {
    /// It cannot be lake water.
    Range,
    /// It sticks out from its neighbours.
    Spike,
    /// Going down and coming up are too far apart.
    Pair,
    /// It is heavier than the water below.
    Heavier,
}

/// What a line is.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Is {
    Pointed(Points),
    Shoulder,
    Ordinary,
}

/// A line: the reading's index in the cast.
#[derive(Clone, Copy, Debug, PartialEq)]
struct Candidate {
    at: usize,
    is: Is,
}

fn is_at(depth_m: f64, other_m: f64) -> bool {
    (depth_m - other_m).abs() < SAME_M
}

/// Every reading that something points to, the plainest reason first.
fn pointed(water: &Water) -> Vec<(usize, Points)> {
    let found = water.analysis();
    let apart: Vec<f64> = pair_verdicts(&found.profile, &found.steps)
        .into_iter()
        .filter(|p| p.verdict != Repeat::Good)
        .map(|p| p.depth_m)
        .collect();
    let upside_down = found.facts.and_then(|f| f.inversion_pair_m);
    let why = |i: usize, depth_m: f64| {
        let checked = found.checked.get(i)?;
        match checked.doubt {
            Some(Doubt::Range { .. }) => Some(Points::Range),
            Some(Doubt::Spike { .. }) => Some(Points::Spike),
            Some(Doubt::Pair { .. }) => Some(Points::Pair),
            Some(Doubt::Inversion { .. }) => Some(Points::Heavier),
            None if checked.used && apart.iter().any(|z| is_at(*z, depth_m)) => Some(Points::Pair),
            None if upside_down.is_some_and(|(a, b)| is_at(a, depth_m) || is_at(b, depth_m)) => {
                Some(Points::Heavier)
            }
            None => None,
        }
    };
    let readings = water.context.cast.readings.iter().enumerate();
    let all = readings.filter(|(_, r)| r.temp_c.is_some());
    let left_out = |switch: Switch| switch == Switch::Off;
    let mut list: Vec<(usize, Points)> = all
        .filter_map(|(i, r)| Some((i, why(i, r.depth_m).or(left_out(r.switch).then_some(Points::Spike))?)))
        .collect();
    let order = |p: Points| match p {
        Points::Range => 0_u8,
        Points::Spike => 1,
        Points::Pair => 2,
        Points::Heavier => 3,
    };
    sort_by(&mut list, |a, b| order(a.1).cmp(&order(b.1)).then(a.0.cmp(&b.0)));
    list
}

/// The mark at which the slope changes most, where both ways agree and nothing points to it, metres.
fn shoulder_m(water: &Water, pointed: &[f64]) -> Option<f64> {
    let bends = water.steps().windows(2).filter_map(|w| match w {
        [a, b] => Some((a.bottom_m, (a.cooling_c_per_m - b.cooling_c_per_m).abs())),
        _ => None,
    });
    bends
        .filter(|(z, bend)| *bend >= BENDS - SLACK && !pointed.iter().any(|p| is_at(*p, *z)))
        .max_by(|a, b| a.1.total_cmp(&b.1))
        .map(|(z, _)| z)
}

/// The lines, from the top down, and whether anything is pointed to.
fn candidates(water: &Water) -> (Vec<Candidate>, bool) {
    let readings = &water.context.cast.readings;
    let depth = |at: usize| readings.get(at).map_or(0.0, |r| r.depth_m);
    let pointed = pointed(water);
    let pointed_m: Vec<f64> = pointed.iter().map(|(at, _)| depth(*at)).collect();
    let used: Vec<usize> = (water.analysis().checked.iter().enumerate())
        .filter(|(_, c)| c.used)
        .map(|(at, _)| at)
        .filter(|at| !pointed.iter().any(|(p, _)| p == at))
        .collect();
    let mut list: Vec<Candidate> =
        pointed.iter().take(MOST.0).map(|(at, why)| Candidate { at: *at, is: Is::Pointed(*why) }).collect();
    let shoulder = shoulder_m(water, &pointed_m);
    let at_shoulder = shoulder.and_then(|z| used.iter().copied().find(|at| is_at(depth(*at), z)));
    list.extend(at_shoulder.map(|at| Candidate { at, is: Is::Shoulder }));
    // A third and two thirds of the way through what is left.
    let plain: Vec<usize> = (used.iter().copied())
        .filter(|at| shoulder.is_none_or(|z| !is_at(depth(*at), z)))
        .filter(|at| !pointed_m.iter().any(|z| is_at(*z, depth(*at))))
        .collect();
    let thirds = [plain.len() / 3, 2 * plain.len() / 3];
    for place in thirds.into_iter().take(MOST.1) {
        let at = plain.get(place).copied().filter(|at| !list.iter().any(|c| c.at == *at));
        list.extend(at.map(|at| Candidate { at, is: Is::Ordinary }));
    }
    sort_by(&mut list, |a, b| depth(a.at).total_cmp(&depth(b.at)).then(a.at.cmp(&b.at)));
    (list, !pointed.is_empty())
}

fn value(at: usize) -> String {
    format!("r{at}")
}

/// "3.5 m going down: 20.1 °C"
fn words(water: &Water, at: usize) -> Message {
    let reading = water.context.cast.readings.get(at);
    let (depth_m, temp_c) = reading.map_or((0.0, 0.0), |r| (r.depth_m, r.temp_c.unwrap_or_default()));
    let id = match reading.map(|r| r.leg) {
        Some(Leg::Down) => "ask-15-down",
        Some(Leg::Up) => "ask-15-up",
        _ => "ask-15-one",
    };
    let places = crate::questions::say::decimals(temp_c, 1, 3);
    Message::new(id).m("depth", depth_m).number("temp", temp_c, places)
}

fn why(points: Points) -> Message {
    Message::new(match points {
        Points::Range => "ask-15-why-range",
        Points::Spike => "ask-15-why-spike",
        Points::Pair => "ask-15-why-pair",
        Points::Heavier => "ask-15-why-heavier",
    })
}

impl Kind for ReadAgain {
    fn routes(&self) -> &'static [State] {
        &[State::Mixed, State::Weak, State::Stratified, State::Inverse, State::Unstable]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: SHOULDER, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let used = water.analysis().checked.iter().filter(|c| c.used).count();
        let (list, _) = candidates(water);
        if used < FEWEST || list.len() < 2 { Err(Dropped::plain("ask-dropped-15")) } else { Ok(Vec::new()) }
    }

    fn plan(&self, q: &Question) -> Plan {
        let lines = candidates(q.water).0.into_iter().map(|c| (value(c.at), words(q.water, c.at)));
        let none = (NONE.to_owned(), Message::new("ask-15-none"));
        let field = Field {
            input: Input::Choice(lines.chain([none]).collect()),
            ..Field::number("reading", Message::new("ask-15-name"), None)
        };
        Plan {
            ask: Message::new("ask-15"),
            lead: vec![Message::new("ask-15-lead")],
            parts: vec![vec![Line::new(Message::new("ask-15-label"), vec![field])]],
            notes: vec![Message::new("ask-15-note")],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let (list, any) = candidates(q.water);
        let chosen = field(fields, "reading");
        if chosen == NONE {
            return if any {
                Judged::not_yet(Message::new("ask-15-not-none"))
            } else {
                Judged::yes(Message::new("ask-15-yes-none"), Accepted::default())
            };
        }
        let Some(line) = list.into_iter().find(|c| value(c.at) == chosen) else {
            return Judged::not_yet(Message::new("ask-15-no"));
        };
        match line.is {
            Is::Pointed(points) => {
                Judged::yes(Message::new("ask-15-yes"), Accepted::default()).note(Some(why(points)))
            }
            Is::Shoulder => {
                let twice = q.water.analysis().pairs.count > 0;
                let id = if twice { "ask-15-shoulder" } else { "ask-15-shoulder-once" };
                Judged::idea(SHOULDER, Message::new(id))
            }
            Is::Ordinary if any => almost(Message::new("ask-15-no")),
            Is::Ordinary => Judged::yes(Message::new("ask-15-yes-fine"), Accepted::default()),
        }
    }

    fn hint(&self, _q: &Question, _part: usize, level: u8) -> Hint {
        Hint::Words(Message::new(match level {
            1 => "ask-15-hint-1",
            2 => "ask-15-hint-2",
            _ => "ask-15-hint-3",
        }))
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let (list, any) = candidates(q.water);
        let pointed: Vec<(usize, Points)> = (list.iter())
            .filter_map(|c| match c.is {
                Is::Pointed(points) => Some((c.at, points)),
                _ => None,
            })
            .collect();
        let shown =
            pointed.first().map_or_else(|| Message::new("ask-15-none"), |(at, _)| words(q.water, *at));
        let mut notes: Vec<Message> = Vec::new();
        if q.part(0).is_none() || !any {
            notes.extend(pointed.first().map(|(_, points)| why(*points)));
        }
        notes.push(Message::new(if any { "ask-15-all-count" } else { "ask-15-why-none" }));
        Explained { shown, sum: Vec::new(), fits: None, notes, own_words: Message::new("ask-15-own-words") }
    }
}
