//! A question as the page shows it.

mod press;

use super::kind::{Explained, Field, Hint, Input, Kind, Line, Plan, Question, Verdict};
use super::locked::{is_locked, locked};
use super::replay::{PartState, Replay, Round, open_parts, replay};
use super::say::said;
use super::standing::HINTS;
use super::text::{Fields, Measure, field, read};
use super::water::Water;
use super::{Asked, Paper, kinds};
use crate::document::{Answer, Help};
use crate::view::{
    FieldKind, FieldLine, FieldView, GripView, HintView, OptionView, PartView, QuestionView, Sign,
    SmallPictures, VerdictView,
};
use layercast_core::Message;

/// The question at a place of the paper.
pub(crate) fn view(water: &Water, paper: &Paper, index: usize) -> Option<QuestionView> {
    let asked = paper.asked.get(index)?;
    let kind = kinds::kind(asked.kind)?;
    let blank = Answer::default();
    let answer = water.context.sheet.answers.get(&asked.id);
    let replay = replay(water, asked, answer)?;
    let answer = answer.unwrap_or(&blank);
    let base = QuestionView {
        number: index + 1,
        of: paper.asked.len(),
        id: asked.id.clone(),
        ask: said(replay.plan.ask.clone()),
        lead: replay.plan.lead.iter().cloned().map(said).collect(),
        locked: None,
        parts: Vec::new(),
        reason: None,
        own_words: None,
        buttons: Vec::new(),
        notes: Vec::new(),
    };
    if is_locked(water, kind, &replay) {
        return Some(locked(water, base, kind, paper));
    }
    let desk = Desk { water, kind, asked, answer, replay: &replay, index };
    let open = replay.open();
    Some(QuestionView {
        parts: desk.parts(),
        reason: desk.asks_why().then(|| answer.reason.clone()),
        own_words: desk.own_words(),
        buttons: if open { desk.open_buttons(paper) } else { desk.settled_buttons(paper) },
        notes: desk.notes(),
        ..base
    })
}

/// Everything at hand while one question is laid out.
struct Desk<'a> {
    water: &'a Water<'a>,
    kind: &'static dyn Kind,
    asked: &'a Asked,
    answer: &'a Answer,
    replay: &'a Replay,
    index: usize,
}

impl Desk<'_> {
    /// "How I know" stands under it: until the first Check or hint, and not where the answer is written in words anyway.
    fn asks_why(&self) -> bool {
        let written = |f: &Field| matches!(f.input, Input::Prose(_));
        let fresh = self.replay.open() && self.round().tries == 0 && self.answer.hints == 0;
        fresh && !self.open_parts().into_iter().any(|part| self.fields(part).any(written))
    }

    fn round(&self) -> &Round {
        self.replay.now()
    }

    fn plan(&self) -> &Plan {
        &self.replay.plan
    }

    fn hints(&self) -> u8 {
        self.answer.hints.max(self.help().given()).min(self.help().most())
    }

    /// How much of it the lesson gives.
    fn help(&self) -> Help {
        self.water.context.lesson.help
    }

    fn explain(&self, part: usize) -> Explained {
        let accepted = self.round().accepted();
        self.kind.explain(&Question { water: self.water, asked: self.asked, accepted: &accepted }, part)
    }

    fn parts(&self) -> Vec<PartView> {
        let in_hand = self.in_hand();
        let open = self.open_parts();
        (self.plan().parts.iter().zip(&self.round().parts).enumerate())
            // A part that waits for the one before it would tell what is looked for.
            .filter(|(i, (_, state))| state.settled || open.contains(i))
            .map(|(i, (lines, state))| {
                if state.settled {
                    self.settled(i, state)
                } else {
                    self.open(i, lines, state, in_hand == Some(i))
                }
            })
            .collect()
    }

    fn question(&self) -> Question<'_> {
        Question { water: self.water, asked: self.asked, accepted: &[] }
    }

    /// Parts that can be answered now.
    fn open_parts(&self) -> Vec<usize> {
        open_parts(self.kind, &self.question(), self.round())
    }

    /// The first part that is open.
    fn in_hand(&self) -> Option<usize> {
        self.round().parts.iter().position(|p| !p.settled)
    }

    /// The fields of a part.
    fn fields(&self, part: usize) -> impl Iterator<Item = &Field> {
        self.plan().parts.get(part).into_iter().flatten().flat_map(|line| &line.fields)
    }

    fn settled(&self, part: usize, state: &PartState) -> PartView {
        let explained = self.explain(part);
        let last = state.verdicts.last().map(|(judged, _)| judged);
        let mut notes = Vec::new();
        let verdict = match last {
            Some(judged) if state.right => {
                notes.extend(judged.notes.iter().cloned());
                notes.extend(self.first_was(part, state));
                VerdictView { sign: sign(judged.verdict), said: said(judged.said.clone()) }
            }
            // The third miss: its idea, then the answer.
            Some(judged) if judged.verdict.is_miss() && !self.shown() => {
                notes.push(Message::new("ask-third").message("answer", explained.shown.clone()));
                VerdictView { sign: Sign::Outside, said: said(judged.said.clone()) }
            }
            _ => VerdictView { sign: Sign::Outside, said: said(self.shown_words(part, state, &explained)) },
        };
        notes.extend(explained.notes);
        PartView {
            settled: true,
            verdict: Some(verdict),
            notes: notes.into_iter().map(said).collect(),
            sum: explained.sum,
            fits: explained.fits.map(said),
            hints: Vec::new(),
            picture: self.right_picture(part),
            lines: Vec::new(),
            look_at: None,
        }
    }

    /// The right one of the pictures of a part, where it has some.
    fn right_picture(&self, part: usize) -> Option<SmallPictures> {
        let right = self.kind.right_picture()?;
        let mut all = self.fields(part).find_map(|field| match &field.input {
            Input::Pictures(pictures) => Some(super::pictures::small(pictures)),
            _ => None,
        })?;
        all.options.retain(|option| option.value == right);
        Some(all)
    }

    /// "Your first answer was …", or where the mark on Profile stood, which is the first answer on record.
    fn first_was(&self, part: usize, state: &PartState) -> Option<Message> {
        if let Some(mark) = self.missed_mark(part, state) {
            return Some(Message::new("ask-first-on-profile").message("mark", mark));
        }
        let (_, fields) = state.verdicts.iter().find(|(j, _)| j.verdict.is_miss())?;
        Some(Message::new("ask-first-was").message("yours", self.written(part, fields)?))
    }

    /// The round in hand ended by "Show me".
    fn shown(&self) -> bool {
        self.round().shown
    }

    fn shown_words(&self, part: usize, state: &PartState, explained: &Explained) -> Message {
        let answer = explained.shown.clone();
        match self.misses(part, state) {
            Some(yours) => Message::new("ask-shown-yours").message("answer", answer).message("yours", yours),
            None => Message::new("ask-shown").message("answer", answer),
        }
    }

    /// The numbers that were missed so far, in order, without a mark on Profile.
    fn misses(&self, part: usize, state: &PartState) -> Option<Message> {
        let own = state.verdicts.iter().skip(usize::from(state.began_with_mark));
        let tried = own.filter(|(j, _)| j.verdict.is_miss()).map(|(_, fields)| fields);
        tried
            .filter_map(|fields| self.written(part, fields))
            .reduce(|all, next| Message::new("ask-written-then").message("yours", all).message("next", next))
    }

    /// Where the mark on Profile stood, if it was a miss.
    fn missed_mark(&self, part: usize, state: &PartState) -> Option<Message> {
        let left = state.verdicts.first().filter(|(j, _)| state.began_with_mark && j.verdict.is_miss());
        self.written(part, state.first_mark.as_ref().or(left.map(|(_, fields)| fields))?)
    }

    /// The numbers of a part as they were written: "2.5", "3.5–4.0"; of three layers with the name of each.
    fn written(&self, part: usize, fields: &Fields) -> Option<Message> {
        let planned = self.plan().parts.get(part)?.iter().flat_map(|line| &line.fields);
        let texts: Vec<&str> = planned
            .filter(|f| f.is_number())
            .map(|f| field(fields, f.id))
            .filter(|t| !t.is_empty())
            .collect();
        let written = || Message::new("ask-written").text("yours", super::text::short(&texts.join("–")));
        (!texts.is_empty()).then(|| self.kind.written(part, fields).unwrap_or_else(written))
    }

    fn open(&self, part: usize, lines: &[Line], state: &PartState, in_hand: bool) -> PartView {
        let last = state.verdicts.last().map(|(judged, _)| judged);
        let mut before = self.before(part, state);
        let mut shown: Vec<FieldLine> = lines
            .iter()
            .map(|line| {
                let number = line.fields.iter().any(Field::is_number);
                self.line(line, if number { before.take() } else { None })
            })
            .collect();
        if last.is_some_and(|j| j.verdict == Verdict::WhichRule)
            && let Some(sought) = self.kind.seeks()
        {
            shown.push(self.line(&super::rules::line(sought), None));
        }
        PartView {
            settled: false,
            verdict: last.map(|j| VerdictView { sign: sign(j.verdict), said: said(j.said.clone()) }),
            notes: last.map(|j| j.notes.iter().cloned().map(said).collect()).unwrap_or_default(),
            sum: Vec::new(),
            fits: None,
            hints: if in_hand { self.hint_views(part) } else { Vec::new() },
            picture: None,
            lines: shown,
            look_at: last.and_then(|judged| judged.look_at(lines)).map(str::to_owned),
        }
    }

    /// "first answer: 2.5", or all earlier ones, "on Profile: 4.5" where the mark is the first; in a later round the first
    /// answer of the first.
    fn before(&self, part: usize, state: &PartState) -> Option<Message> {
        match (self.missed_mark(part, state), self.misses(part, state)) {
            (Some(mark), Some(yours)) => {
                return Some(
                    Message::new("ask-before-profile").message("mark", mark).message("yours", yours),
                );
            }
            (Some(mark), None) => return Some(Message::new("ask-on-profile").message("mark", mark)),
            (None, Some(yours)) => {
                let id = if state.misses > 1 { "ask-before" } else { "ask-first-answer" };
                return Some(Message::new(id).message("yours", yours));
            }
            (None, None) => {}
        }
        self.replay.latest.as_ref()?;
        let first = self.replay.first.parts.get(part)?;
        if let Some(mark) = first.first_mark.as_ref() {
            return Some(Message::new("ask-on-profile").message("mark", self.written(part, mark)?));
        }
        let (_, fields) = first.verdicts.first()?;
        let yours = self.written(part, fields)?;
        Some(if first.began_with_mark {
            Message::new("ask-on-profile").message("mark", yours)
        } else {
            Message::new("ask-first-answer").message("yours", yours)
        })
    }

    fn line(&self, line: &Line, before: Option<Message>) -> FieldLine {
        FieldLine {
            label: said(line.label.clone()),
            fields: line.fields.iter().map(|f| self.field(f)).collect(),
            before: before.map(said),
        }
    }

    fn field(&self, planned: &Field) -> FieldView {
        let text = self.answer.draft.get(planned.id).unwrap_or(&planned.start).clone();
        let options = |list: &[(&'static str, Message)]| {
            list.iter()
                .map(|(value, label)| OptionView { value: (*value).to_owned(), label: said(label.clone()) })
                .collect()
        };
        let kind = match &planned.input {
            Input::Number => FieldKind::Number,
            Input::List(list) | Input::Preset(list) => FieldKind::List { options: options(list) },
            Input::Choice(list) => FieldKind::Choice {
                options: (list.iter())
                    .map(|(value, label)| OptionView { value: value.clone(), label: said(label.clone()) })
                    .collect(),
            },
            Input::Fact(fact, _) => FieldKind::Fact { fact: said(fact.clone()) },
            Input::Pictures(pictures) => super::pictures::view(pictures),
            Input::Prose(starters) => {
                FieldKind::Prose { starters: starters.iter().cloned().map(said).collect() }
            }
        };
        let depth_m = read(&text, None, Measure::Length).filter(|t| !t.unit_is_wrong).map(|t| t.value);
        let grip = planned.grip.as_ref().map(|word| GripView {
            depth_m,
            least_m: 0.0,
            most_m: self.water.last_m(),
            spoken: said(match depth_m {
                Some(depth_m) => super::say::Numbers::m(Message::new("ask-spoken-depth"), "depth", depth_m),
                None => Message::new("ask-spoken-unset"),
            }),
            word: said(word.clone()),
        });
        FieldView {
            id: planned.id.to_owned(),
            name: said(planned.name.clone()),
            kind,
            text,
            after: planned.after.clone().map(said),
            grip,
        }
    }

    fn hint_views(&self, part: usize) -> Vec<HintView> {
        let accepted = self.round().accepted();
        let q = Question { water: self.water, asked: self.asked, accepted: &accepted };
        let open = self.hints();
        // The worked one stands alone, with its step on the picture.
        let from = if open >= HINTS { HINTS } else { 1 };
        (from..=open)
            .map(|n| {
                let (text, sum) = match self.kind.hint(&q, part, n) {
                    Hint::Words(words) => (Some(said(words)), Vec::new()),
                    Hint::Worked(sum) => (None, sum),
                };
                let head = if sum.is_empty() { "ask-hint-head" } else { "ask-hint-worked" };
                HintView { head: said(Message::new(head).count("n", usize::from(n))), said: text, sum }
            })
            .collect()
    }

    fn own_words(&self) -> Option<(crate::view::Said, String)> {
        let part = self.round().parts.iter().position(|p| p.settled && !p.right)?;
        if self.replay.open() {
            return None;
        }
        Some((said(self.explain(part).own_words), self.answer.own_words.clone()))
    }

    /// The check told the answer before it was given: what is right now earns nothing.
    fn was_revealed(&self) -> bool {
        let sheet = self.water.context.sheet;
        let by_the_mark = || {
            let judged = || self.replay.first.parts.iter().any(|p| !p.verdicts.is_empty());
            let open = self.replay.latest.is_none() && !self.replay.first.settled();
            let missed = judged() || self.kind.first_answer(&self.question()).is_none();
            sheet.first_marks.is_some() && self.kind.is_answered_by_a_mark() && open && missed
        };
        sheet.revealed_early.contains(&self.asked.id) || self.replay.right_after_shown() || by_the_mark()
    }

    fn notes(&self) -> Vec<crate::view::Said> {
        let mut notes = Vec::new();
        if self.was_revealed() {
            notes.push(Message::new("ask-note-revealed"));
        }
        if !self.replay.open() {
            notes.push(Message::new("ask-note-first-stays"));
        } else if self.hints() >= self.help().most() {
            notes.push(Message::new("ask-note-show-me"));
        } else if self.round().parts.iter().any(|p| p.misses > 0) {
            notes.push(Message::new("ask-note-first-stays"));
        } else {
            notes.extend(self.plan().notes.iter().cloned());
        }
        notes.into_iter().map(said).collect()
    }
}

fn sign(verdict: Verdict) -> Sign {
    match verdict {
        Verdict::Yes | Verdict::YesByAnotherRule | Verdict::CannotTell => Sign::Inside,
        Verdict::Almost => Sign::Close,
        Verdict::NotYet => Sign::Outside,
        Verdict::Slip | Verdict::WhichRule | Verdict::Waits | Verdict::Kept => Sign::Bare,
    }
}
