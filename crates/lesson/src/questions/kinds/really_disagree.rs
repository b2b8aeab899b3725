//! Kind 23: do you and the other group really disagree? Two ranges by the same rule: where they share a depth, nobody can
//! say so.

use crate::numbers::Range;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question,
};
use crate::questions::other::{Other, steepest};
use crate::questions::text::{Fields, field};
use crate::questions::water::{SLACK, Water};
use layercast_core::{Message, State, Thermocline};

const ONE_IS_WRONG: &str = "one_is_wrong";

/// Kind 23.
pub(crate) struct ReallyDisagree;

/// The own range and the other's, metres.
fn spans(water: &Water) -> Option<[(f64, f64); 2]> {
    let other = Other::of(water)?;
    let span = |found: &Thermocline| (found.span_top_m, found.span_bottom_m);
    Some([steepest(water.analysis()).map(span)?, steepest(&other.analysis).map(span)?])
}

/// Ranges that only touch share that depth.
fn overlap([a, b]: [(f64, f64); 2]) -> bool {
    a.0 <= b.1 + SLACK && b.0 <= a.1 + SLACK
}

/// A sentence with both ranges and the group's name.
fn with_spans(id: &'static str, water: &Water) -> Message {
    let [own, other] = spans(water).unwrap_or_default();
    Message::new(id)
        .message("own", Range::of_marks(own.0, own.1).said())
        .message("other", Range::of_marks(other.0, other.1).said())
        .message("group", group(water))
}

/// "group B", or "the other group".
pub(super) fn group(water: &Water) -> Message {
    match Other::of(water).filter(|other| !other.group.is_empty()) {
        Some(other) => Message::new("ask-group").text("group", other.group.as_str()),
        None => Message::new("ask-group-other"),
    }
}

impl Kind for ReallyDisagree {
    fn routes(&self) -> &'static [State] {
        &[State::Stratified, State::Weak, State::Inverse]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: ONE_IS_WRONG, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        Other::wanted(water, "ask-dropped-23")?;
        match spans(water) {
            Some(_) => Ok(Vec::new()),
            None => Err(Dropped::telling("ask-dropped-23-none")),
        }
    }

    fn plan(&self, q: &Question) -> Plan {
        let options = [("share", "ask-23-share"), ("apart", "ask-23-apart"), ("wrong", "ask-23-wrong")];
        let options = options.map(|(value, words)| (value.to_owned(), Message::new(words))).to_vec();
        let field = Field {
            input: Input::Choice(options),
            ..Field::number("say", Message::new("ask-23-name"), None)
        };
        Plan {
            ask: Message::new("ask-23").message("group", group(q.water)),
            lead: vec![with_spans("ask-23-lead", q.water)],
            parts: vec![vec![Line::new(Message::new("ask-23-label"), vec![field])]],
            notes: Vec::new(),
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let Some(share) = spans(q.water).map(overlap) else {
            return Judged::not_yet(Message::new("ask-23-no"));
        };
        match (field(fields, "say"), share) {
            ("share", true) => Judged::yes(with_spans("ask-23-yes-share", q.water), Accepted::default()),
            ("apart", false) => Judged::yes(with_spans("ask-23-yes-apart", q.water), Accepted::default()),
            ("wrong", _) => Judged::idea(ONE_IS_WRONG, Message::new("ask-23-one-is-wrong")),
            _ => Judged::not_yet(Message::new("ask-23-no")),
        }
    }

    fn hint(&self, _q: &Question, _part: usize, level: u8) -> Hint {
        Hint::Words(Message::new(match level {
            1 => "ask-23-hint-1",
            2 => "ask-23-hint-2",
            _ => "ask-23-hint-3",
        }))
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let share = spans(q.water).is_some_and(overlap);
        Explained {
            shown: Message::new(if share { "ask-23-share" } else { "ask-23-apart" }),
            sum: Vec::new(),
            fits: None,
            notes: vec![with_spans("ask-23-lead", q.water)],
            own_words: Message::new("ask-23-own-words"),
        }
    }

    fn needs_check(&self) -> bool {
        true
    }
}
