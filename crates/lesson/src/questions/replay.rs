//! How a question stands: its tries gone through again from the first. Verdicts are never stored.
//!
//! A part is settled by a right answer, by the third miss, or by "Show me". Slips, units and "which rule?" are free.
//! Credit of a part: full on the first two tries, three quarters on the third or with the second hint open, half with the
//! worked hint open, nothing when shown or revealed before. A question's credit is the mean of its parts'. After all parts
//! are settled, further tries are another answer, as often as wanted: the first stays on record with its credit.

use super::kind::{Accepted, Input, Judged, Kind, Plan, Question, Ticks, Verdict};
use super::text::{Fields, field};
use super::water::Water;
use super::{Asked, kinds};
use crate::document::{Answer, Try};
use layercast_core::Message;

/// Misses that settle a part.
const LAST_MISS: usize = 3;

/// A part, gone through.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct PartState {
    /// Settled.
    pub settled: bool,
    /// By a right answer (else shown).
    pub right: bool,
    /// Misses so far.
    pub misses: usize,
    /// Verdicts in order, each with the fields it was given on.
    pub verdicts: Vec<(Judged, Fields)>,
    /// What later parts go by.
    pub accepted: Option<Accepted>,
    /// Words that only a person can judge: they count neither way.
    pub kept: bool,
    /// Earned, 0 to 1.
    pub credit: f64,
    /// The mark, checked on Profile before, counts as the first answer.
    pub first_mark: Option<Fields>,
    /// The first try was that mark, left as it was.
    pub began_with_mark: bool,
}

/// One answer from the first try to the last settled part.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Round {
    /// Its parts.
    pub parts: Vec<PartState>,
    /// Tries in it.
    pub tries: usize,
    /// "Show me" ended it.
    pub shown: bool,
}

impl Round {
    /// All parts settled.
    pub fn settled(&self) -> bool {
        !self.parts.is_empty() && self.parts.iter().all(|p| p.settled)
    }

    /// All parts settled but those that one need not answer: what is left is to look at one's own words.
    pub fn done(&self, plan: &Plan) -> bool {
        let free = |part: usize| {
            let lines = plan.parts.get(part).into_iter().flatten();
            Ticks::of(lines.flat_map(|line| &line.fields)).is_some_and(Ticks::is_free)
        };
        !self.parts.is_empty() && self.parts.iter().enumerate().all(|(part, p)| p.settled || free(part))
    }

    /// All parts answered right.
    pub fn right(&self) -> bool {
        self.settled() && self.parts.iter().all(|p| p.right)
    }

    /// What was accepted, part by part.
    pub fn accepted(&self) -> Vec<Option<Accepted>> {
        self.parts.iter().map(|p| p.accepted).collect()
    }
}

/// All rounds of a question.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Replay {
    /// The first answer: on record, earns the credit.
    pub first: Round,
    /// The round in hand or last finished; `None` when it is the first.
    pub latest: Option<Round>,
    /// The question as asked, before any part was accepted.
    pub plan: Plan,
}

impl Replay {
    /// The round that is shown.
    pub fn now(&self) -> &Round {
        self.latest.as_ref().unwrap_or(&self.first)
    }

    /// Fields are open.
    pub fn open(&self) -> bool {
        !self.now().settled()
    }

    /// Credit of the first answer, 0 to 1: the mean of its parts that can be judged.
    pub fn credit(&self) -> f64 {
        let judged = || self.first.parts.iter().filter(|p| !p.kept);
        let parts = judged().count();
        if parts == 0 { 0.0 } else { judged().map(|p| p.credit).sum::<f64>() / parts as f64 }
    }

    /// What is right in the first answer was given only after it was shown: it earns nothing.
    pub fn right_after_shown(&self) -> bool {
        self.credit() <= 0.0 && self.first.parts.iter().any(|p| p.right && !p.kept)
    }
}

/// Goes through an answer again.
pub(crate) fn replay(water: &Water, asked: &Asked, answer: Option<&Answer>) -> Option<Replay> {
    go_through(water, asked, answer, usize::MAX)
}

/// The answer that is on record: the first round alone.
pub(crate) fn first_round(water: &Water, asked: &Asked, answer: Option<&Answer>) -> Option<Round> {
    go_through(water, asked, answer, 1).map(|replay| replay.first)
}

/// Goes through so many rounds.
fn go_through(water: &Water, asked: &Asked, answer: Option<&Answer>, most: usize) -> Option<Replay> {
    let kind = kinds::kind(asked.kind)?;
    let plan = kind.plan(&Question { water, asked, accepted: &[] });
    let blank = Answer::default();
    let answer = answer.unwrap_or(&blank);
    let mut rounds = vec![new_round(&plan)];
    let show_last = |rounds: &mut Vec<Round>| {
        // Pressed in a round without a try: that round was opened only to be shown.
        if rounds.last().is_some_and(Round::settled) {
            rounds.push(new_round(&plan));
        }
        if let Some(round) = rounds.last_mut() {
            show(kind, water, asked, round);
        }
    };
    for (at, given) in answer.tries.iter().enumerate() {
        for _ in shown_at(answer, at) {
            show_last(&mut rounds);
        }
        if rounds.len() > most {
            break;
        }
        if rounds.last().is_some_and(Round::settled) {
            if rounds.len() >= most {
                break;
            }
            rounds.push(new_round(&plan));
        }
        let first = rounds.len() == 1;
        if let Some(round) = rounds.last_mut() {
            take(kind, water, asked, &plan, round, given, first);
        }
    }
    if rounds.len() < most || rounds.last().is_some_and(|round| !round.settled()) {
        for _ in shown_at(answer, answer.tries.len()) {
            show_last(&mut rounds);
        }
    }
    if answer.again && rounds.len() < most && rounds.last().is_some_and(Round::settled) {
        rounds.push(new_round(&plan));
    }
    let latest = if rounds.len() > 1 && most > 1 { rounds.pop() } else { None };
    let mut first = rounds.into_iter().next().unwrap_or_default();
    if water.context.sheet.revealed_early.contains(&asked.id) {
        first.parts.iter_mut().for_each(|p| p.credit = 0.0);
    }
    Some(Replay { first, latest, plan })
}

/// Presses of "Show me" when so many tries were on record. Sheets that do not say when: once, before the first try that
/// came after it, else at the end.
fn shown_at(answer: &Answer, tries: usize) -> impl Iterator<Item = usize> {
    let unsaid = answer.shown && answer.shown_at.is_empty();
    let at = || answer.tries.iter().position(|t| t.after_shown).unwrap_or(answer.tries.len());
    let old = unsaid.then(at).filter(|at| *at == tries);
    let said = answer
        .shown_at
        .iter()
        .copied()
        .filter(move |at| *at == tries || (*at > tries && at_end(answer, tries)));
    old.into_iter().chain(said)
}

/// No try comes after so many.
fn at_end(answer: &Answer, tries: usize) -> bool {
    tries == answer.tries.len()
}

fn new_round(plan: &Plan) -> Round {
    Round { parts: plan.parts.iter().map(|_| PartState::default()).collect(), ..Round::default() }
}

fn take(
    kind: &dyn Kind,
    water: &Water,
    asked: &Asked,
    plan: &Plan,
    round: &mut Round,
    given: &Try,
    first: bool,
) {
    round.tries += 1;
    let open = open_parts(kind, &Question { water, asked, accepted: &[] }, round);
    for part in open {
        let accepted = round.accepted();
        let q = Question { water, asked, accepted: &accepted };
        let fields = with_starts(plan, part, &given.fields);
        let Some(state) = round.parts.get_mut(part).filter(|p| !p.settled) else { continue };
        let mark = if first { kind.first_answer(&q) } else { None };
        let judged = if given.cannot_tell {
            if !kind.is_judged(&q, part) {
                continue;
            }
            cannot_tell(kind, &q, part)
        } else if complete(plan, part, &fields) {
            kind.judge(&q, part, &fields)
        } else {
            continue;
        };
        let is_mark = mark.as_ref().is_some_and(|m| same_numbers(m, &fields));
        // Of a mark that was not checked before nothing was said: it is no try.
        if state.verdicts.is_empty() && mark.is_some() && !is_mark && given.after_shown {
            state.misses = 1;
            state.first_mark = mark;
        }
        state.began_with_mark |= state.verdicts.is_empty() && is_mark;
        let verdict = judged.verdict;
        state.accepted = verdict.is_right().then_some(judged.accepted);
        state.verdicts.push((judged, fields));
        if verdict == Verdict::Kept {
            (state.settled, state.right, state.kept) = (true, true, true);
        } else if verdict.is_right() {
            state.settled = true;
            state.right = true;
            state.credit =
                if given.after_shown && !is_mark { 0.0 } else { earned(state.misses, given.hints) };
        } else if verdict.is_miss() {
            state.misses += 1;
            if state.misses >= LAST_MISS {
                state.settled = true;
                let accepted = round.accepted();
                let shown = kind.class_answer(&Question { water, asked, accepted: &accepted }, part);
                if let Some(state) = round.parts.get_mut(part) {
                    state.accepted = Some(shown);
                }
            }
        }
    }
}

/// Parts that can be answered now: not settled, nor waiting for the one before.
pub(crate) fn open_parts(kind: &dyn Kind, q: &Question, round: &Round) -> Vec<usize> {
    let settled = |part: usize| round.parts.get(part).is_some_and(|p| p.settled);
    let waits =
        |part: usize| kind.follows(q, part) && part.checked_sub(1).is_some_and(|above| !settled(above));
    (0..round.parts.len()).filter(|part| !settled(*part) && !waits(*part)).collect()
}

fn show(kind: &dyn Kind, water: &Water, asked: &Asked, round: &mut Round) {
    round.shown = true;
    for part in 0..round.parts.len() {
        let accepted = round.accepted();
        let q = Question { water, asked, accepted: &accepted };
        let (shown, kept) = (kind.class_answer(&q, part), !kind.is_judged(&q, part));
        if let Some(state) = round.parts.get_mut(part).filter(|p| !p.settled) {
            state.settled = true;
            state.accepted = Some(shown);
            state.kept = kept;
        }
    }
}

fn cannot_tell(kind: &dyn Kind, q: &Question, part: usize) -> Judged {
    if kind.cannot_be_told(q) {
        let accepted = kind.class_answer(q, part);
        Judged { accepted, ..Judged::new(Verdict::CannotTell, Message::new("ask-cannot-tell-yes")) }
    } else {
        Judged::not_yet(Message::new("ask-cannot-tell-no"))
    }
}

fn earned(misses: usize, hints: u8) -> f64 {
    let tries: f64 = if misses < 2 { 1.0 } else { 0.75 };
    let help = match hints {
        0 | 1 => 1.0,
        2 => 0.75,
        _ => 0.5,
    };
    tries.min(help)
}

/// Fields of a part, with what they start with where nothing was stored.
pub(crate) fn with_starts(plan: &Plan, part: usize, given: &Fields) -> Fields {
    let mut fields: Fields = given.clone();
    for planned in plan.parts.get(part).into_iter().flatten().flat_map(|line| &line.fields) {
        if !planned.start.is_empty() {
            fields.entry(planned.id.to_owned()).or_insert_with(|| planned.start.clone());
        }
    }
    fields
}

/// Everything the part needs is given. Of a from–to, one field with a whole range is enough; a unit may be typed.
pub(crate) fn complete(plan: &Plan, part: usize, fields: &Fields) -> bool {
    let planned: Vec<_> = plan.parts.get(part).into_iter().flatten().flat_map(|line| &line.fields).collect();
    if let Some(ticks) = Ticks::of(planned.iter().copied()) {
        return ticks.holds(planned.iter().filter(|f| field(fields, f.id) == "1").count());
    }
    let typed_unit = planned.iter().any(|f| f.is_number() && super::text::has_unit(field(fields, f.id)));
    let range = super::text::read_range(field(fields, "from"), field(fields, "to")).is_some();
    planned.iter().filter(|f| f.is_wanted(fields)).all(|f| match f.input {
        Input::Number if matches!(f.id, "from" | "to") && range => true,
        Input::List(_) if f.id == "unit" && typed_unit => true,
        _ => !field(fields, f.id).is_empty(),
    })
}

/// The same numbers in the same fields, however they are written.
fn same_numbers(mark: &Fields, fields: &Fields) -> bool {
    use super::text::{Measure, read};
    mark.iter().all(|(id, text)| {
        let (a, b) = (read(text, None, Measure::Length), read(field(fields, id), None, Measure::Length));
        match (a, b) {
            (Some(a), Some(b)) => (a.value - b.value).abs() < 1e-6,
            _ => false,
        }
    })
}
