//! The answer on record to each question of a paper, for whoever sums up sheets: a class, a slip that goes back.

use super::kind::{Field, Input, Plan, Question};
use super::replay::{PartState, replay};
use super::text::{Fields, field};
use super::water::Water;
use super::{Context, Paper, Verdict, kinds};
use layercast_core::Message;

/// The first answer to one question, from its first try until it was settled.
#[derive(Clone, Debug, PartialEq)]
pub struct Record {
    /// Id of the question.
    pub id: String,
    /// Its kind.
    pub kind: u8,
    /// The question in words.
    pub ask: Message,
    /// Tries in it; a mark on Profile that counts as the first answer is none.
    pub tries: usize,
    /// All parts settled.
    pub settled: bool,
    /// All parts answered right.
    pub right: bool,
    /// "Show me" ended it.
    pub shown: bool,
    /// Credit, 0 to 1.
    pub credit: f64,
    /// What is right in it came only after the check of the marks had shown it: it earned nothing.
    pub after_shown: bool,
    /// Its verdicts, part by part, each in the order of the tries.
    pub judgements: Vec<Judgement>,
}

/// One verdict.
#[derive(Clone, Debug, PartialEq)]
pub struct Judgement {
    /// Part, from 0.
    pub part: usize,
    /// The verdict.
    pub verdict: Verdict,
    /// The idea that was named, if any.
    pub idea: Option<&'static str>,
    /// What was said.
    pub said: Message,
    /// What was answered, as it was written or chosen.
    pub given: Vec<Message>,
}

/// The answers on record, one for each question of the paper, in its order.
pub fn records(context: &Context, paper: &Paper) -> Vec<Record> {
    let water = Water::new(context);
    let record = |asked: &super::Asked| {
        let replay = replay(&water, asked, context.sheet.answers.get(&asked.id))?;
        let first = &replay.first;
        let of_part = |(part, state): (usize, &PartState)| {
            let one = |(judged, fields): &(super::kind::Judged, Fields)| Judgement {
                part,
                verdict: judged.verdict,
                idea: judged.idea,
                said: judged.said.clone(),
                given: given(&replay.plan, part, fields),
            };
            state.verdicts.iter().map(one).collect::<Vec<_>>()
        };
        Some(Record {
            id: asked.id.clone(),
            kind: asked.kind,
            ask: replay.plan.ask.clone(),
            tries: first.tries,
            settled: first.settled(),
            right: first.right(),
            shown: first.shown,
            credit: replay.credit(),
            after_shown: replay.right_after_shown(),
            judgements: first.parts.iter().enumerate().flat_map(of_part).collect(),
        })
    };
    paper.asked.iter().filter_map(record).collect()
}

/// What is right in one part of a question.
#[derive(Clone, Debug, PartialEq)]
pub struct Right {
    /// The class's own answer.
    pub said: Message,
    /// What else counts, if anything does.
    pub fits: Option<Message>,
}

/// What is right in each question of the paper, part by part, for whoever marks a sheet: worked on from what was accepted in
/// the part before, as the verdicts are. `None` for words, which nothing here judges.
pub fn rights(context: &Context, paper: &Paper) -> Vec<(String, Vec<Option<Right>>)> {
    let water = Water::new(context);
    let of = |asked: &super::Asked| {
        let kind = kinds::kind(asked.kind)?;
        let replay = replay(&water, asked, context.sheet.answers.get(&asked.id))?;
        let accepted = replay.first.accepted();
        let q = Question { water: &water, asked, accepted: &accepted };
        let part = |part: usize| {
            kind.is_judged(&q, part).then(|| {
                let explained = kind.explain(&q, part);
                Right { said: explained.shown, fits: explained.fits }
            })
        };
        Some((asked.id.clone(), (0..replay.first.parts.len()).map(part).collect()))
    };
    paper.asked.iter().filter_map(of).collect()
}

/// The fields of a part as a person would read them aloud.
fn given(plan: &Plan, part: usize, fields: &Fields) -> Vec<Message> {
    let planned = plan.parts.get(part).into_iter().flatten().flat_map(|line| &line.fields);
    planned.filter_map(|planned| one(planned, field(fields, planned.id))).collect()
}

fn one(planned: &Field, text: &str) -> Option<Message> {
    if text.is_empty() {
        return None;
    }
    match &planned.input {
        Input::Preset(_) => None,
        Input::List(list) => list.iter().find(|(value, _)| *value == text).map(|(_, label)| label.clone()),
        Input::Choice(list) => list.iter().find(|(value, _)| value == text).map(|(_, label)| label.clone()),
        Input::Fact(fact, _) => (text == "1").then(|| fact.clone()),
        _ => Some(Message::new("class-given").text("text", text)),
    }
}
