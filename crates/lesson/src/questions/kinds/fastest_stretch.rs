//! Kind 3: which of three lit stretches of the picture changes fastest? Stretches of one length, so that the one in which
//! the line goes furthest sideways is right; it is the fastest by the mean, going down and coming up alike.
//!
//! One of the others stands nearly upright: who takes that one reads the graph as a picture of the water, in which
//! straight down is fast. The steepest step, which kind 6 asks for, is kept out of the light where the water allows it.

use super::colder_by::difference;
use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question,
};
use crate::questions::say::{in_c, line, minus, stretch};
use crate::questions::text::{Fields, field};
use crate::questions::water::{ROUNDING_C, SLACK, Source, Water, overlaps};
use layercast_core::{Message, State};

const UPRIGHT: &str = "graph_as_picture";

/// Lengths that are tried, metres, the best first; then the cast's own first step.
const LENGTHS_M: [f64; 4] = [1.0, 0.5, 2.0, 5.0];
/// The upright one changes by no more than this share of the fastest.
const UPRIGHT_SHARE: f64 = 0.25;
/// The fastest changes by at least so many times what the middle one does, and by this much more, °C.
const CLEARLY: (f64, f64) = (1.5, 3.0 * ROUNDING_C);
/// Values of the three lines, from the top; the picture writes them in capitals.
const LETTERS: [&str; 3] = ["a", "b", "c"];

/// Kind 3.
pub(crate) struct FastestStretch;

/// A stretch with the least and the most it changes by, whatever it is read from, °C.
#[derive(Clone, Copy, Debug)]
struct Lit {
    ends_m: (f64, f64),
    least_c: f64,
    most_c: f64,
}

fn lit(water: &Water, ends_m: (f64, f64)) -> Option<Lit> {
    let change =
        |source: &Source| Some((water.temp(ends_m.0, *source)? - water.temp(ends_m.1, *source)?).abs());
    let all: Vec<f64> = water.sources(&[ends_m.0, ends_m.1]).iter().filter_map(change).collect();
    let least_c = all.iter().copied().fold(f64::INFINITY, f64::min);
    let most_c = all.iter().copied().fold(0.0, f64::max);
    least_c.is_finite().then_some(Lit { ends_m, least_c, most_c })
}

/// Three stretches of a length: the fastest, an upright one, one between them; none where the choice would not be clear.
fn three(water: &Water, length_m: f64, may_be_fastest: &dyn Fn((f64, f64)) -> bool) -> Option<[Lit; 3]> {
    let ends = |upper: f64| Some((upper, water.level(upper + length_m)?.depth_m));
    let all: Vec<Lit> = (water.levels().iter()).filter_map(|l| lit(water, ends(l.depth_m)?)).collect();
    let fastest = (all.iter().filter(|l| may_be_fastest(l.ends_m)))
        .max_by(|a, b| a.least_c.total_cmp(&b.least_c).then(b.ends_m.0.total_cmp(&a.ends_m.0)))?;
    let apart = |l: &&Lit, from: &Lit| !overlaps(l.ends_m, from.ends_m);
    let upright = (all.iter().filter(|l| apart(l, fastest) && may_be_fastest(l.ends_m)))
        .filter(|l| l.most_c <= UPRIGHT_SHARE * fastest.least_c + SLACK)
        .min_by(|a, b| a.most_c.total_cmp(&b.most_c).then(a.ends_m.0.total_cmp(&b.ends_m.0)))?;
    let clear = |l: &&Lit| {
        fastest.least_c >= CLEARLY.0 * l.most_c - SLACK && fastest.least_c >= l.most_c + CLEARLY.1 - SLACK
    };
    // Lights that do not touch are told apart more easily.
    let touches = |l: &&Lit| {
        [fastest, upright]
            .iter()
            .any(|o| (l.ends_m.0 - o.ends_m.1).abs() < 1e-6 || (l.ends_m.1 - o.ends_m.0).abs() < 1e-6)
    };
    let off = |l: &&Lit| (f64::midpoint(l.least_c, l.most_c) - fastest.least_c / 2.0).abs();
    let middle = (all.iter().filter(|l| apart(l, fastest) && apart(l, upright) && may_be_fastest(l.ends_m)))
        .filter(|l| clear(l) && l.most_c >= upright.most_c)
        .min_by(|a, b| touches(a).cmp(&touches(b)).then(off(a).total_cmp(&off(b))))?;
    clear(&upright).then_some([*fastest, *upright, *middle])
}

fn chosen(water: &Water) -> Option<[Lit; 3]> {
    let step = water.steps().first().map(|s| s.bottom_m - s.top_m);
    let lengths = || LENGTHS_M.into_iter().chain(step);
    let away = |ends: (f64, f64)| !water.holds_member(ends) && !water.holds_steepest(ends);
    let any = |_: (f64, f64)| true;
    lengths().find_map(|l| three(water, l, &away)).or_else(|| lengths().find_map(|l| three(water, l, &any)))
}

/// The three stretches of a question, from the top.
fn stretches(q: &Question) -> Vec<(f64, f64)> {
    (0..LETTERS.len()).map(|i| (q.depth(2 * i), q.depth(2 * i + 1))).collect()
}

/// The three with their letters and how much each changes, by the mean, °C.
fn lines(q: &Question) -> Vec<(&'static str, (f64, f64), f64)> {
    let change = |ends: (f64, f64)| lit(q.water, ends).map_or(0.0, |l| f64::midpoint(l.least_c, l.most_c));
    LETTERS.into_iter().zip(stretches(q)).map(|(letter, ends)| (letter, ends, change(ends))).collect()
}

/// The letter that is right, and that of the upright stretch.
fn right_and_upright(q: &Question) -> (&'static str, &'static str) {
    let lines = lines(q);
    let right = lines.iter().max_by(|a, b| a.2.total_cmp(&b.2)).map_or("", |l| l.0);
    let upright = lines.iter().min_by(|a, b| a.2.total_cmp(&b.2)).map_or("", |l| l.0);
    (right, upright)
}

fn words(letter: &str, ends: (f64, f64)) -> Message {
    let id = match letter {
        "a" => "ask-3-a",
        "b" => "ask-3-b",
        _ => "ask-3-c",
    };
    stretch(Message::new(id), "from", "to", ends, 1)
}

impl Kind for FastestStretch {
    fn routes(&self) -> &'static [State] {
        &[State::TooFew, State::Weak, State::Stratified, State::Inverse]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: UPRIGHT, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let mut three = chosen(water).ok_or_else(|| Dropped::plain("ask-dropped-3"))?.map(|l| l.ends_m);
        layercast_core::order::sort_by(&mut three, |a, b| a.0.total_cmp(&b.0));
        Ok(three.into_iter().flat_map(|(top, bottom)| [top, bottom]).collect())
    }

    fn plan(&self, q: &Question) -> Plan {
        let options = lines(q).into_iter().map(|(letter, ends, _)| (letter.to_owned(), words(letter, ends)));
        let field = Field {
            input: Input::Choice(options.collect()),
            ..Field::number("stretch", Message::new("ask-3-name"), None)
        };
        Plan {
            ask: Message::new("ask-3"),
            lead: vec![Message::new("ask-3-lead")],
            parts: vec![vec![Line::new(Message::new("ask-3-label"), vec![field])]],
            notes: vec![Message::new("ask-3-note")],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let (right, upright) = right_and_upright(q);
        match field(fields, "stretch") {
            chosen if chosen == right => Judged::yes(Message::new("ask-3-yes"), Accepted::default()),
            chosen if chosen == upright => Judged::idea(UPRIGHT, Message::new("ask-3-upright")),
            _ => Judged::not_yet(Message::new("ask-3-no")),
        }
    }

    fn hint(&self, _q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 => Hint::Words(Message::new("ask-3-hint-1")),
            2 => Hint::Words(Message::new("ask-3-hint-2")),
            _ => Hint::Worked(vec![
                line(minus(19.8, 19.6, 1), in_c(0.2), Message::new("ask-3-worked-upright")),
                line(minus(17.4, 14.1, 1), in_c(3.3), Message::new("ask-3-worked-sideways")),
            ]),
        }
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let lines = lines(q);
        let sum = (lines.iter())
            .filter_map(|(letter, ends, _)| {
                difference(q.water, *ends, Source::Mean, words(letter, *ends), false)
            })
            .collect();
        let right = right_and_upright(q).0;
        let shown = lines.iter().find(|l| l.0 == right).map(|l| words(l.0, l.1));
        Explained {
            shown: shown.unwrap_or_else(|| Message::new("ask-sum-nothing")),
            sum,
            fits: None,
            notes: vec![Message::new("ask-3-why")],
            own_words: Message::new("ask-3-own-words"),
        }
    }

    /// The bars say it.
    fn told_by_check(&self, _q: &Question) -> Option<Told> {
        Some(Told::Steps)
    }

    fn lit_m(&self, q: &Question) -> Vec<(f64, f64)> {
        stretches(q)
    }
}
