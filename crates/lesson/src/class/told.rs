//! What a teacher marks by: beside each answer of one sheet what is right there, every try, and the idea it shows.

use super::document::Class;
use super::room::{Answered, Room};
use crate::questions::{Judgement, Right, Verdict, idea_name};
use crate::view::Said;
use layercast_core::Message;
use serde::Serialize;

/// What stands beside one answer.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct AnswerTold {
    /// Id of the question.
    pub question: String,
    /// Part by part.
    pub parts: Vec<PartTold>,
}

/// One part of a question.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct PartTold {
    /// The class's own answer on the water of this sheet; `None` for words.
    pub right: Option<Said>,
    /// What else counts.
    pub fits: Option<Said>,
    /// The tries of the first answer, in order.
    pub tries: Vec<TryTold>,
}

/// One try.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct TryTold {
    /// As it was written or chosen; empty where "I can't tell" was pressed.
    pub given: Vec<Said>,
    /// How it was taken.
    pub taken: Said,
    /// The idea it shows, in a few words.
    pub idea: Option<Said>,
}

/// What stands beside the answers of a member, in their order; empty for one that does not count.
pub fn told(class: &Class, key: &str) -> Vec<AnswerTold> {
    let room = Room::of_one(class, key);
    let Some(seat) = room.seats.first() else { return Vec::new() };
    let rights = room.rights(seat);
    let one = |answered: &Answered| {
        let of = rights.iter().find(|(id, _)| *id == answered.record.id);
        let parts = of.map(|(_, parts)| parts.as_slice()).unwrap_or_default();
        let part = |(at, right): (usize, &Option<Right>)| PartTold {
            right: right.as_ref().map(|right| right.said.clone().into()),
            fits: right.as_ref().and_then(|right| right.fits.clone()).map(Into::into),
            tries: answered.record.judgements.iter().filter(|one| one.part == at).map(a_try).collect(),
        };
        AnswerTold {
            question: answered.record.id.clone(),
            parts: parts.iter().enumerate().map(part).collect(),
        }
    };
    seat.answers.iter().map(one).collect()
}

fn a_try(judged: &Judgement) -> TryTold {
    TryTold {
        given: judged.given.iter().cloned().map(Into::into).collect(),
        taken: Message::new(match judged.verdict {
            Verdict::Yes => "class-try-right",
            Verdict::YesByAnotherRule => "class-try-other-rule",
            Verdict::CannotTell => "class-cannot-tell",
            Verdict::Almost => "class-try-close",
            Verdict::NotYet => "class-not-yet",
            Verdict::Slip | Verdict::WhichRule | Verdict::Waits => "class-try-free",
            Verdict::Kept => "class-try-words",
        })
        .into(),
        idea: judged.idea.and_then(idea_name).map(Into::into),
    }
}
