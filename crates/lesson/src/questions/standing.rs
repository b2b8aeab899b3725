//! How a question stands, what it reveals, and its fields as they stand.

use super::kind::{Field, Part, Question, Uncovers};
use super::locked::is_locked;
use super::replay::{PartState, replay, with_starts};
use super::text::Fields;
use super::water::Water;
use super::{Asked, Standing, kinds};
use crate::document::Answer;

/// Hints there are.
pub(crate) const HINTS: u8 = 3;

/// How a question stands.
pub(crate) fn standing(water: &Water, asked: &Asked, answer: Option<&Answer>) -> Standing {
    let (Some(kind), Some(replay)) = (kinds::kind(asked.kind), replay(water, asked, answer)) else {
        return Standing::default();
    };
    let settled = replay.first.settled();
    let plain = Question { water, asked, accepted: &[] };
    let parts = || 0..replay.plan.parts.len();
    let mut standing = Standing {
        settled,
        done: replay.first.done(&replay.plan),
        open: replay.open(),
        tries: replay.now().tries,
        right: replay.first.right(),
        credit: replay.credit(),
        has_words: parts().any(|part| !kind.is_judged(&plain, part)),
        only_words: parts().all(|part| !kind.is_judged(&plain, part)),
        ..Standing::default()
    };
    let accepted = replay.now().accepted();
    let q = Question { water, asked, accepted: &accepted };
    let settled_parts = replay.first.parts.iter().enumerate().filter(|(_, state)| state.settled);
    standing.reveals_steps = settled_parts.flat_map(|(part, _)| kind.uncovers_part(&q, part)).collect();
    if settled {
        let Uncovers { steps, all_steps, steps_if_free, thermocline, mixed_layer, deep_layer } =
            kind.uncovers(&q);
        standing.reveals_steps.extend(steps);
        standing.reveals_all_steps = all_steps;
        standing.reveals_steps_if_free = steps_if_free;
        standing.reveals_thermocline = thermocline;
        standing.reveals_mixed_layer = mixed_layer;
        standing.reveals_deep_layer = deep_layer;
    }
    if is_locked(water, kind, &replay) {
        return standing;
    }
    standing.lit_m = kind.lit_m(&q);
    let worked = !settled && answer.is_some_and(|a| a.hints >= HINTS);
    let elsewhere = if worked { kind.elsewhere_m(&q) } else { None };
    standing.step_m = elsewhere.or_else(|| kind.step_m(&q, &texts(water, asked, answer)));
    standing.step_explained = standing.step_m.is_some() && (settled || elsewhere.is_some());
    standing
}

/// Fields as they stand.
pub(crate) fn texts(water: &Water, asked: &Asked, answer: Option<&Answer>) -> Fields {
    let mut fields = answer.map(|a| a.draft.clone()).unwrap_or_default();
    if let Some(replay) = replay(water, asked, answer) {
        for part in 0..replay.plan.parts.len() {
            fields = with_starts(&replay.plan, part, &fields);
        }
    }
    fields
}

/// Fields that a Check empties.
pub(crate) fn emptied(water: &Water, asked: &Asked, answer: &Answer) -> Vec<String> {
    let Some(replay) = replay(water, asked, Some(answer)) else { return Vec::new() };
    let again = replay.latest.is_some();
    let missed = |state: &PartState| {
        !state.settled && state.verdicts.last().is_some_and(|(judged, _)| judged.verdict.is_miss())
    };
    let parts = replay.plan.parts.iter().zip(&replay.now().parts);
    let open = parts.filter(|(_, state)| missed(state) || (again && state.verdicts.is_empty()));
    let of_part = |(part, state): (&Part, &PartState)| -> Vec<String> {
        let fine = state.verdicts.last().map_or(&[][..], |(judged, _)| &judged.fine);
        let emptied = |f: &&Field| f.is_number() && f.grip.is_none() && !fine.contains(&f.id);
        part.iter().flat_map(|line| &line.fields).filter(emptied).map(|f| f.id.to_owned()).collect()
    };
    open.flat_map(of_part).collect()
}
