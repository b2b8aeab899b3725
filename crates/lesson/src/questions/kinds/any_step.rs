//! Kind 103 (even water): is any step bigger than what you believe? Three lines to choose from, judged on the means of
//! neighbouring marks against the student's own limit of kind 102.

use super::believable::{believable_c, is_asked};
use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question, Uncovers,
};
use crate::questions::say::{from_to, in_c, line, minus, stretch};
use crate::questions::text::{Fields, field};
use crate::questions::water::{SLACK, Water};
use layercast_core::{Level, Message, State};

const EVERY: &str = "every_difference_is_a_step";
const NO_STEP: &str = "no_difference_counts";

/// A limit this near decides nothing, °C: half the last digit.
const ON_THE_LINE_C: f64 = 0.05;

const NONE: &str = "none";
const BY_TURNS: &str = "by_turns";
const COLDER: &str = "colder";

/// Kind 103.
pub(crate) struct AnyStep;

/// Changes from mark to mark, °C, positive where it is colder below.
fn drops(water: &Water) -> Vec<(f64, f64, f64)> {
    let drop = |w: &[Level]| match w {
        [a, b] => Some((a.depth_m, b.depth_m, a.temp_c - b.temp_c)),
        _ => None,
    };
    water.levels().windows(2).filter_map(drop).collect()
}

/// Lines that are true of this water, by the limit first; two where a step lies on the line.
fn right(water: &Water) -> Vec<&'static str> {
    let truth = |limit: f64| {
        let bigger: Vec<f64> = drops(water).iter().map(|d| d.2).filter(|d| d.abs() > limit + SLACK).collect();
        match (bigger.is_empty(), bigger.iter().any(|d| *d < 0.0)) {
            (true, _) => NONE,
            (false, true) => BY_TURNS,
            (false, false) => COLDER,
        }
    };
    let limit = believable_c(water);
    let mut lines = vec![truth(limit)];
    for near in [limit - ON_THE_LINE_C, limit + ON_THE_LINE_C] {
        let line = truth(near.max(0.0));
        if !lines.contains(&line) {
            lines.push(line);
        }
    }
    lines
}

fn words(line: &str) -> Message {
    Message::new(match line {
        NONE => "ask-103-none",
        BY_TURNS => "ask-103-by-turns",
        _ => "ask-103-colder",
    })
}

impl Kind for AnyStep {
    fn routes(&self) -> &'static [State] {
        &[State::Mixed]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: EVERY, part: 0 }, Idea { key: NO_STEP, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        if drops(water).is_empty() { Err(Dropped::plain("ask-dropped-103")) } else { Ok(Vec::new()) }
    }

    fn plan(&self, q: &Question) -> Plan {
        let options = [NONE, BY_TURNS, COLDER].map(|line| (line.to_owned(), words(line))).to_vec();
        let field = Field {
            input: Input::Choice(options),
            ..Field::number("line", Message::new("ask-103-name"), None)
        };
        Plan {
            ask: Message::new("ask-103"),
            lead: vec![Message::new("ask-103-lead")],
            parts: vec![vec![Line::new(Message::new("ask-103-label"), vec![field])]],
            // The limit has a question of its own, unless it could not be asked of this water.
            notes: vec![if is_asked(q.water) {
                Message::new("ask-103-note")
            } else {
                Message::new("ask-103-note-given").number("limit", believable_c(q.water), 2)
            }],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let right = right(q.water);
        let chosen = field(fields, "line");
        if right.contains(&chosen) {
            return Judged::yes(Message::new("ask-103-yes"), Accepted::default());
        }
        match chosen {
            BY_TURNS | COLDER if right.contains(&NONE) => Judged::idea(EVERY, Message::new("ask-103-every")),
            NONE => Judged::idea(NO_STEP, Message::new("ask-103-no-step")),
            _ => Judged::not_yet(Message::new("ask-103-no")),
        }
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 => Hint::Words(Message::new("ask-103-hint-1")),
            2 => Hint::Words(Message::new("ask-103-hint-2")),
            _ => {
                // The first step, which decides nothing.
                let first = drops(q.water).first().copied();
                let sum = first.and_then(|(a, b, _)| {
                    let (ta, tb) = (q.water.level(a)?.temp_c, q.water.level(b)?.temp_c);
                    Some(line(minus(ta.max(tb), ta.min(tb), 1), in_c((ta - tb).abs()), from_to((a, b))))
                });
                Hint::Worked(sum.into_iter().collect())
            }
        }
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let biggest = drops(q.water).into_iter().max_by(|a, b| a.2.abs().total_cmp(&b.2.abs()));
        let notes = biggest.map(|(a, b, d)| {
            stretch(Message::new("ask-103-biggest"), "from", "to", (a, b), 1)
                .number("drop", d.abs(), 2)
                .number("limit", believable_c(q.water), 2)
        });
        let several = right(q.water).len() > 1;
        let notes = notes.into_iter().chain(several.then(|| Message::new("ask-103-on-the-line")));
        Explained {
            shown: right(q.water)
                .first()
                .map(|line| words(line))
                .unwrap_or_else(|| Message::new("ask-sum-nothing")),
            sum: Vec::new(),
            fits: None,
            notes: notes.collect(),
            own_words: Message::new("ask-103-own-words"),
        }
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn is_hidden_before_marks(&self) -> bool {
        true
    }

    fn shows_means(&self) -> bool {
        true
    }

    fn uncovers(&self, _q: &Question) -> Uncovers {
        Uncovers { all_steps: true, ..Uncovers::default() }
    }

    fn told_by_check(&self, _q: &Question) -> Option<Told> {
        Some(Told::Verdicts)
    }
}
