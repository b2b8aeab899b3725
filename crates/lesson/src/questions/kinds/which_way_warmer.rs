//! Kind 14: is going down or coming up warmer, is it so everywhere or where the water is steep, and what does that suggest?
//!
//! The side goes by the mean of d = down − up, which must be more than twice its standard error (methods 3.1), or by the
//! signs: four in five of the marks on one side. The place compares the marks beside steep steps with the rest. What is
//! near a limit counts either way, and each part is judged on the student's own answer to the one before.

mod seen;

use self::seen::{
    CHANCE, DOWN, DRIFT, EVERYWHERE, MARKS, NO_PATTERN, SETTLING, SMALL, STEEP, Seen, UP, WRONG,
};
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question, Verdict,
};
use crate::questions::say::{in_c, line, rounded};
use crate::questions::text::{Fields, field};
use crate::questions::water::{SLACK, Water};
use layercast_core::{Message, State};

const ONE_IS_WRONG: &str = "one_leg_is_wrong";

/// Fewest marks read twice: with fewer nothing is called systematic (methods 3.1).
const FEWEST: usize = 4;

/// Kind 14.
pub(crate) struct WhichWayWarmer;

fn words(value: &str) -> Message {
    Message::new(match value {
        DOWN => "ask-14-down",
        UP => "ask-14-up",
        SMALL => "ask-14-small",
        EVERYWHERE => "ask-14-everywhere",
        STEEP => "ask-14-steep",
        NO_PATTERN => "ask-14-no-pattern",
        SETTLING => "ask-14-settling",
        MARKS => "ask-14-marks",
        DRIFT => "ask-14-drift",
        CHANCE => "ask-14-chance",
        WRONG => "ask-14-wrong",
        _ => "ask-14-choose",
    })
}

/// The values of the three lists.
const LISTS: [&[&str]; 3] =
    [&[DOWN, UP, SMALL], &[EVERYWHERE, STEEP, NO_PATTERN], &[SETTLING, MARKS, DRIFT, CHANCE, WRONG]];
/// Their fields.
const IDS: [&str; 3] = ["side", "place", "why"];

/// A choice among the accepted, kept as its place in its list.
fn kept(part: usize, value: &str) -> Accepted {
    let place = LISTS.get(part).and_then(|list| list.iter().position(|v| *v == value));
    Accepted { value: place.map(|p| p as f64), ..Accepted::default() }
}

/// What was accepted in a part, else the class's.
fn own(q: &Question, part: usize, seen: &Seen) -> &'static str {
    let of = |value: f64| {
        let list = LISTS.get(part)?;
        list.iter().enumerate().find(|(i, _)| (*i as f64 - value).abs() < SLACK).map(|(_, v)| *v)
    };
    q.part(part).and_then(|a| of(a.value?)).unwrap_or_else(|| class(q, part, seen))
}

/// The class's answer to a part, after the own answers to those before.
fn class(q: &Question, part: usize, seen: &Seen) -> &'static str {
    let right = right(q, part, seen);
    right.first().copied().unwrap_or(SMALL)
}

/// Everything that is right in a part, after the own answers to those before; the class's first.
fn right(q: &Question, part: usize, seen: &Seen) -> Vec<&'static str> {
    match part {
        0 => seen.sides.clone(),
        1 => seen.places(own(q, 0, seen)),
        _ => seen.reasons(own(q, 0, seen), own(q, 1, seen)),
    }
}

impl Kind for WhichWayWarmer {
    fn routes(&self) -> &'static [State] {
        &[State::Mixed, State::Weak, State::Stratified, State::Inverse, State::Unstable]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: ONE_IS_WRONG, part: 2 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let pairs = &water.analysis().pairs;
        if pairs.count < FEWEST {
            return Err(Dropped::plain("ask-dropped-14"));
        }
        if pairs.max_abs_c.is_none_or(|most| most <= SLACK) {
            return Err(Dropped::plain("ask-dropped-14-same"));
        }
        Ok(Vec::new())
    }

    fn plan(&self, _q: &Question) -> Plan {
        let labels = ["ask-14-label-side", "ask-14-label-place", "ask-14-label-why"];
        let names = ["ask-14-name-side", "ask-14-name-place", "ask-14-name-why"];
        let part = |i: usize| -> Option<Vec<Line>> {
            let choose = ("", Message::new("ask-14-choose"));
            let options = LISTS.get(i)?.iter().map(|value| (*value, words(value)));
            let field = Field {
                input: Input::List(std::iter::once(choose).chain(options).collect()),
                ..Field::number(IDS.get(i)?, Message::new(names.get(i)?), None)
            };
            Some(vec![Line::new(Message::new(labels.get(i)?), vec![field])])
        };
        Plan {
            ask: Message::new("ask-14"),
            lead: vec![Message::new("ask-14-lead")],
            parts: (0..IDS.len()).filter_map(part).collect(),
            notes: vec![Message::new("ask-14-note")],
        }
    }

    fn judge(&self, q: &Question, part: usize, fields: &Fields) -> Judged {
        let seen = Seen::of(q.water);
        let chosen = IDS.get(part).map_or("", |id| field(fields, id));
        if part > 0 && q.part(part - 1).is_none() {
            return Judged::new(Verdict::Waits, Message::new("ask-14-waits"));
        }
        if right(q, part, &seen).contains(&chosen) {
            let said = match (part, chosen) {
                (0, SMALL) => "ask-14-yes-small",
                (0, _) => "ask-14-yes-side",
                (1, STEEP) => "ask-14-yes-steep",
                (1, EVERYWHERE) => "ask-14-yes-everywhere",
                (1, _) => "ask-14-yes-no-pattern",
                (_, CHANCE) => "ask-14-yes-chance",
                _ => "ask-14-yes-why",
            };
            return Judged::yes(Message::new(said), kept(part, chosen));
        }
        match (part, chosen) {
            (2, WRONG) => Judged::idea(ONE_IS_WRONG, Message::new("ask-14-one-is-wrong")),
            (0, SMALL) => Judged::not_yet(Message::new("ask-14-not-small")),
            (0, _) => Judged::not_yet(Message::new("ask-14-no-side")),
            (1, _) => Judged::not_yet(Message::new("ask-14-no-place")),
            _ => Judged::not_yet(Message::new("ask-14-no-why")),
        }
    }

    fn hint(&self, _q: &Question, part: usize, level: u8) -> Hint {
        Hint::Words(Message::new(match (part, level) {
            (0, 1) => "ask-14-hint-side-1",
            (0, 2) => "ask-14-hint-side-2",
            (0, _) => "ask-14-hint-side-3",
            (1, 1) => "ask-14-hint-place-1",
            (1, 2) => "ask-14-hint-place-2",
            (1, _) => "ask-14-hint-place-3",
            (_, 1) => "ask-14-hint-why-1",
            (_, 2) => "ask-14-hint-why-2",
            _ => "ask-14-hint-why-3",
        }))
    }

    fn class_answer(&self, q: &Question, part: usize) -> Accepted {
        kept(part, class(q, part, &Seen::of(q.water)))
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let seen = Seen::of(q.water);
        let shown = words(own(q, part, &seen));
        let two = |c: f64| in_c(rounded(c, 2));
        let nothing = || Message::new("ask-sum-nothing");
        let mut notes = Vec::new();
        let mut sum = Vec::new();
        match part {
            0 => {
                notes.push(
                    Message::new("ask-14-count")
                        .count("down", seen.down)
                        .count("up", seen.up)
                        .count("n", seen.count),
                );
                let mean = Message::new("ask-14-sum-mean");
                sum.push(line(mean, two(seen.mean_c), nothing()));
            }
            1 => {
                if let Some((steep_c, rest_c)) = seen.by_place_c {
                    sum.push(line(Message::new("ask-14-sum-steep"), two(steep_c), nothing()));
                    sum.push(line(Message::new("ask-14-sum-rest"), two(rest_c), nothing()));
                }
            }
            _ => {
                let also = right(q, 2, &seen);
                if also.len() > 1 {
                    notes.push(Message::new("ask-14-also"));
                }
                notes.push(Message::new("ask-14-why-not-wrong"));
            }
        }
        Explained { shown, sum, fits: None, notes, own_words: Message::new("ask-14-own-words") }
    }
}
