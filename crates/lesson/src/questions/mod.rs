//! The question kinds, one file each, and what happens around them: which are asked of this cast, how a try is judged,
//! what help is given, what is earned, what it reveals.
//!
//! Acceptance, ideas, hints and credit follow published lines a student can open: values computed from the own water, a
//! reading from the picture right within half a degree of the two legs, arithmetic within what rounding to 0.1 can do, the
//! steepest step any that cannot be told from it. Nothing here is stored: a sheet's tries are gone through again.

mod ideas;
mod kind;
mod kinds;
mod locked;
mod other;
mod pictures;
mod ranges;
mod record;
mod replay;
mod route;
mod rules;
mod say;
mod show;
mod standing;
mod text;
mod water;
mod why;

pub use ideas::idea_name;
pub use kind::{Idea, Verdict};
pub use record::{Judgement, Record, Right, records, rights};
pub use water::Source;
pub use why::Memo;

use crate::document::{Answer, Lesson, Sheet};
use crate::view::QuestionView;
use layercast_core::{Analysis, Cast, Message};
use std::collections::BTreeMap;

/// Everything a question may look at. Built once per call by the caller.
#[derive(Clone, Copy, Debug)]
pub struct Context<'a> {
    /// The cast.
    pub cast: &'a Cast,
    /// Its analysis by the lesson's method.
    pub analysis: &'a Analysis,
    /// The lesson.
    pub lesson: &'a Lesson,
    /// The sheet: marks and earlier answers (follow-through).
    pub sheet: &'a Sheet,
    /// Content id of the readings as they are now.
    pub cast_id: &'a str,
    /// Dissolved oxygen where it was read, downward: depth in metres, mean in mg/L.
    pub oxygen_mg_l: &'a [(f64, f64)],
    /// What questions have worked out of this cast so far.
    pub memo: &'a Memo,
}

/// One question as asked of this cast.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// Id, stable for this cast and lesson: the kind and its depths ("4-4.0-5.0"). Key of the answer in the sheet.
    pub id: String,
    /// The kind's number in `kinds/mod.rs`. Notebooks keep it, so it never changes.
    pub kind: u8,
    /// Depths the question is about, metres; meaning by kind (1: one depth; 4, 5: from, to).
    pub depths_m: Vec<f64>,
}

/// The questions of this cast, in order, and why others were left out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Paper {
    /// Asked, in order.
    pub asked: Vec<Asked>,
    /// Why this route, and what was left out with its reason. What would tell a covered answer comes only after the marks
    /// are placed or refused.
    pub about: Vec<Message>,
}

/// How a question stands: recomputed from its tries, never stored.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Standing {
    /// All parts settled (right, shown, or third miss explained). Stays true while it is answered again.
    pub settled: bool,
    /// All that counts is answered. Looking for points in one's own words may be left: until then its fields stay open.
    pub done: bool,
    /// Its fields are open: it was not settled yet, or is being answered again.
    pub open: bool,
    /// Tries since it was opened, the first time or again.
    pub tries: usize,
    /// All parts answered right.
    pub right: bool,
    /// Credit from 0 to 1, of the parts that can be judged.
    pub credit: f64,
    /// It has words that only a person can judge.
    pub has_words: bool,
    /// It has nothing else: its credit is a person's to give.
    pub only_words: bool,
    /// Strip bars this question has uncovered (indices into `Analysis::steps`).
    pub reveals_steps: Vec<usize>,
    /// The whole strip is uncovered (kind 6 settled).
    pub reveals_all_steps: bool,
    /// The whole strip, where no open question asks what it tells.
    pub reveals_steps_if_free: bool,
    /// Thermocline uncovered (kinds 7, 8 settled after a shown answer or a right one).
    pub reveals_thermocline: bool,
    /// Mixed layer uncovered (kind 9 settled).
    pub reveals_mixed_layer: bool,
    /// Deep layer uncovered.
    pub reveals_deep_layer: bool,
    /// Step in hand for the picture: (top, bottom) in metres.
    pub step_m: Option<(f64, f64)>,
    /// Stretches lit on the picture, each with a letter from A: (top, bottom) in metres.
    pub lit_m: Vec<(f64, f64)>,
    /// It may be explained with the triangle.
    pub step_explained: bool,
}

/// One verdict of one part, for whoever sums up answers: tests, a report, a class.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct PartVerdict {
    /// Part, from 0.
    pub part: usize,
    /// The verdict.
    pub verdict: Verdict,
    /// The idea that was named, if any.
    pub idea: Option<&'static str>,
}

/// Which questions are asked of this cast.
pub fn paper(context: &Context) -> Paper {
    route::paper(&water::Water::new(context))
}

/// How one question stands.
pub fn standing(context: &Context, asked: &Asked, answer: Option<&Answer>) -> Standing {
    standing::standing(&water::Water::new(context), asked, answer)
}

/// The question as the page shows it.
pub fn view(context: &Context, paper: &Paper, index: usize) -> Option<QuestionView> {
    show::view(&water::Water::new(context), paper, index)
}

/// What of the check of the marks would tell an answer.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Told {
    /// The bars of the strip.
    Steps,
    /// The end of the mixed layer.
    MixedLayer,
    /// The steep layer and the top of the deep layer.
    DeepLayer,
    /// What is said about the water.
    Verdicts,
    /// The thermocline, which its mark no longer answers.
    Thermocline,
}

/// Questions (indices into the paper) whose answers an early check of the marks would show, and by what: not settled yet,
/// and told by the strip or by what the rules found. Kinds whose first answer is a mark are among them once they were
/// tried, or where no mark stands for an answer: else the check takes the mark for it.
pub fn revealed_by_check(context: &Context, paper: &Paper) -> Vec<(usize, Told)> {
    let water = water::Water::new(context);
    let told = |asked: &Asked| {
        let q = kind::Question { water: &water, asked, accepted: &[] };
        kinds::kind(asked.kind)?.told_by_check(&q)
    };
    let settled = |asked: &Asked| standing(context, asked, context.sheet.answers.get(&asked.id)).settled;
    let asked = paper.asked.iter().enumerate();
    asked.filter_map(|(i, a)| Some((i, told(a).filter(|_| !settled(a))?))).collect()
}

/// Questions of a kind open only when the marks are placed, or checked.
pub fn needs_marks(kind: u8) -> bool {
    kinds::kind(kind).is_some_and(|kind| kind.needs_marks() || kind.needs_check())
}

/// All three marks are placed or refused.
pub fn marks_are_in(context: &Context) -> bool {
    water::Water::new(context).marks_are_in()
}

/// The column of means stands beside the picture of a question of this kind.
pub fn shows_means(kind: u8) -> bool {
    kinds::kind(kind).is_some_and(|kind| kind.shows_means())
}

/// The answer to this question is already in sight, so that a try now earns nothing ([`crate::document::Try::after_shown`]).
pub fn already_shown(context: &Context, asked: &Asked) -> bool {
    let answer = context.sheet.answers.get(&asked.id);
    context.sheet.revealed_early.contains(&asked.id)
        || answer.is_some_and(|a| a.shown)
        || standing(context, asked, answer).settled
        || (context.sheet.first_marks.is_some()
            && kinds::kind(asked.kind).is_some_and(|kind| kind.is_answered_by_a_mark()))
}

/// The fields as they stand: what was typed, else what they start with (the mark of Profile in kinds 7 and 8). A press of
/// Check records these in [`crate::document::Try::fields`], not the bare draft.
pub fn texts(context: &Context, asked: &Asked, answer: Option<&Answer>) -> BTreeMap<String, String> {
    standing::texts(&water::Water::new(context), asked, answer)
}

/// Fields whose drafts a Check empties, asked after the try was added: the numbers of parts that were missed, which stand
/// beside the field from then on. A slip keeps its text.
pub fn emptied(context: &Context, asked: &Asked, answer: &Answer) -> Vec<String> {
    standing::emptied(&water::Water::new(context), asked, answer)
}

/// A part has opened since the last try that no try was given to yet: the same fields again are a try of their own.
pub fn opened_anew(context: &Context, asked: &Asked, answer: Option<&Answer>) -> bool {
    let water = water::Water::new(context);
    let (Some(kind), Some(replay)) = (kinds::kind(asked.kind), replay::replay(&water, asked, answer)) else {
        return false;
    };
    let round = replay.now();
    let fresh = |part: usize| round.parts.get(part).is_some_and(|p| p.verdicts.is_empty());
    let q = kind::Question { water: &water, asked, accepted: &[] };
    replay::open_parts(kind, &q, round).into_iter().any(|part| kind.follows(&q, part) && fresh(part))
}

/// Verdicts of every try, in order.
pub fn verdicts(context: &Context, asked: &Asked, answer: &Answer) -> Vec<PartVerdict> {
    let water = water::Water::new(context);
    let Some(replay) = replay::replay(&water, asked, Some(answer)) else { return Vec::new() };
    let of = |(part, state): (usize, &replay::PartState)| {
        let one = move |(judged, _): &(kind::Judged, text::Fields)| PartVerdict {
            part,
            verdict: judged.verdict,
            idea: judged.idea,
        };
        state.verdicts.iter().map(one).collect::<Vec<_>>()
    };
    let rounds = [Some(&replay.first), replay.latest.as_ref()];
    rounds.into_iter().flatten().flat_map(|r| r.parts.iter().enumerate().flat_map(of)).collect()
}

/// Wrong ideas that a kind knows; empty for a kind that is not there.
pub fn ideas(kind: u8) -> &'static [Idea] {
    kinds::kind(kind).map_or(&[], |k| k.ideas())
}

/// Every kind there is, in the order of their numbers.
pub fn all_kinds() -> impl Iterator<Item = u8> {
    kinds::KINDS.iter().map(|(number, _)| *number)
}
