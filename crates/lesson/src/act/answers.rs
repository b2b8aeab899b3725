//! Questions: fields, reasons, tries, help.

use super::kept;
use super::marks::{keyed_m, note_uncovered};
use crate::action::MarkKey;
use crate::document::{Answer, MOST_CELL_CHARS, MOST_PROSE_CHARS, Notebook, Try};
use crate::marks::{Reach, depth_text, dragged_m, reach};
use crate::prepared::{Prepared, Ready};
use crate::questions::{self, Asked, Paper, Standing};
use crate::view::{FieldKind, GripView, QuestionView};

/// Most fields a question keeps.
const MOST_FIELDS: usize = 100;
/// Most tries a question keeps.
const MOST_TRIES: usize = 1000;

/// A question of the notebook with what was prepared for it.
struct InHand<'r> {
    prepared: &'r Prepared,
    paper: Paper,
    index: usize,
}

impl<'r> InHand<'r> {
    fn new(notebook: &Notebook, index: usize, ready: &'r mut Ready) -> Option<Self> {
        let prepared = ready.of(notebook);
        let paper = questions::paper(&prepared.context(notebook));
        paper.asked.get(index)?;
        Some(Self { prepared, paper, index })
    }

    fn asked(&self) -> Option<&Asked> {
        self.paper.asked.get(self.index)
    }

    fn view(&self, notebook: &Notebook) -> Option<QuestionView> {
        questions::view(&self.prepared.context(notebook), &self.paper, self.index)
    }

    fn standing(&self, notebook: &Notebook) -> Standing {
        let context = self.prepared.context(notebook);
        self.asked().map_or_else(Standing::default, |asked| {
            questions::standing(&context, asked, context.sheet.answers.get(&asked.id))
        })
    }

    fn answer_mut<'a>(&self, notebook: &'a mut Notebook) -> Option<&'a mut Answer> {
        let id = self.asked()?.id.clone();
        Some(notebook.sheets.first_mut()?.answers.entry(id).or_default())
    }

    /// A field for words of one's own.
    fn is_prose(&self, notebook: &Notebook, field: &str) -> bool {
        let view = self.view(notebook);
        let mut fields =
            view.iter().flat_map(|v| &v.parts).flat_map(|part| &part.lines).flat_map(|l| &l.fields);
        fields.any(|other| other.id == field && matches!(other.kind, FieldKind::Prose { .. }))
    }

    /// The grip behind a field, and how far the cast reaches.
    fn grip(&self, notebook: &Notebook, field: &str) -> Option<(GripView, Reach)> {
        let view = self.view(notebook)?;
        let fields = view.parts.into_iter().flat_map(|part| part.lines).flat_map(|line| line.fields);
        let grip = fields.into_iter().find(|other| other.id == field)?.grip?;
        Some((grip, reach(&self.prepared.analysis)?))
    }
}

/// Types into a field.
pub fn set_field(notebook: &mut Notebook, question: usize, field: &str, text: &str, ready: &mut Ready) {
    if let Some(hand) = InHand::new(notebook, question, ready) {
        put(notebook, &hand, field, text);
    }
}

fn put(notebook: &mut Notebook, hand: &InHand, field: &str, text: &str) {
    let most = if text.len() > MOST_CELL_CHARS && hand.is_prose(notebook, field) {
        MOST_PROSE_CHARS
    } else {
        MOST_CELL_CHARS
    };
    let Some(answer) = hand.answer_mut(notebook) else { return };
    if answer.draft.len() < MOST_FIELDS || answer.draft.contains_key(field) {
        answer.draft.insert(kept(field, MOST_CELL_CHARS), kept(text, most));
    }
}

/// Drags the grip of a field.
pub fn drag_field(
    notebook: &mut Notebook,
    question: usize,
    field: &str,
    y_px: f64,
    surface_y_px: f64,
    px_per_m: f64,
    ready: &mut Ready,
) {
    let Some(hand) = InHand::new(notebook, question, ready) else { return };
    let Some((grip, reach)) = hand.grip(notebook, field) else { return };
    let bounds = (grip.least_m, grip.most_m);
    if let Some(depth_m) = dragged_m(y_px, surface_y_px, px_per_m, reach.last_m, bounds) {
        put(notebook, &hand, field, &depth_text(depth_m));
    }
}

/// Moves the grip of a field by key.
pub fn key_field(notebook: &mut Notebook, question: usize, field: &str, key: MarkKey, ready: &mut Ready) {
    let Some(hand) = InHand::new(notebook, question, ready) else { return };
    let Some((grip, reach)) = hand.grip(notebook, field) else { return };
    let depth_m = keyed_m(grip.depth_m, key, reach, (grip.least_m, grip.most_m));
    put(notebook, &hand, field, &depth_text(depth_m));
}

/// "How I know."
pub fn set_reason(notebook: &mut Notebook, question: usize, text: &str, ready: &mut Ready) {
    if let Some(answer) = InHand::new(notebook, question, ready).and_then(|hand| hand.answer_mut(notebook)) {
        answer.reason = kept(text, MOST_PROSE_CHARS);
    }
}

/// "In your own words."
pub fn set_own_words(notebook: &mut Notebook, question: usize, text: &str, ready: &mut Ready) {
    if let Some(answer) = InHand::new(notebook, question, ready).and_then(|hand| hand.answer_mut(notebook)) {
        answer.own_words = kept(text, MOST_PROSE_CHARS);
    }
}

/// Checks the fields as they stand. Empty fields, and the same fields as at the last try, are no new try.
pub fn check(notebook: &mut Notebook, question: usize, ready: &mut Ready) {
    let Some(hand) = InHand::new(notebook, question, ready) else { return };
    let context = hand.prepared.context(notebook);
    let Some(asked) = hand.asked() else { return };
    let fields = questions::texts(&context, asked, context.sheet.answers.get(&asked.id));
    if fields.values().any(|text| !text.trim().is_empty()) {
        give(notebook, &hand, Try { fields, ..Try::default() });
    }
}

/// "I can't tell."
pub fn cannot_tell(notebook: &mut Notebook, question: usize, ready: &mut Ready) {
    let Some(hand) = InHand::new(notebook, question, ready) else { return };
    give(notebook, &hand, Try { cannot_tell: true, ..Try::default() });
}

/// Puts a try on record, unless the question is locked or settled. Numbers of missed parts leave their fields.
fn give(notebook: &mut Notebook, hand: &InHand, tried: Try) {
    let Some(asked) = hand.asked() else { return };
    let after_shown = questions::already_shown(&hand.prepared.context(notebook), asked);
    let locked = hand.view(notebook).is_none_or(|view| view.locked.is_some());
    let standing = hand.standing(notebook);
    let opened = {
        let context = hand.prepared.context(notebook);
        questions::opened_anew(&context, asked, context.sheet.answers.get(&asked.id))
    };
    let Some(answer) = hand.answer_mut(notebook) else { return };
    let tried = Try { hints: answer.hints, after_shown, cast_id: hand.prepared.cast_id.clone(), ..tried };
    let same_again = standing.tries > 0
        && !opened
        && answer.tries.last().is_some_and(|last| {
            last.fields == tried.fields
                && last.cannot_tell == tried.cannot_tell
                && last.cast_id == tried.cast_id
        });
    if locked || !standing.open || same_again || answer.tries.len() >= MOST_TRIES {
        return;
    }
    answer.tries.push(tried);
    // The round that "Answer again" opened has a try: from here on it stands by its tries.
    answer.again = false;
    let answer = answer.clone();
    let emptied = questions::emptied(&hand.prepared.context(notebook), asked, &answer);
    if let Some(answer) = hand.answer_mut(notebook) {
        for field in emptied {
            answer.draft.remove(&field);
        }
    }
    note_uncovered(notebook, hand.prepared);
}

/// Opens the next hint.
pub fn hint(notebook: &mut Notebook, question: usize, ready: &mut Ready) {
    let help = notebook.lesson.help;
    if let Some(answer) = InHand::new(notebook, question, ready).and_then(|hand| hand.answer_mut(notebook)) {
        answer.hints = answer.hints.max(help.given()).saturating_add(1).min(help.most());
    }
}

/// "Show me": ends the round in hand, at the tries that are on record.
pub fn show_me(notebook: &mut Notebook, question: usize, ready: &mut Ready) {
    let Some(hand) = InHand::new(notebook, question, ready) else { return };
    if hand.view(notebook).is_none_or(|view| view.locked.is_some()) || !hand.standing(notebook).open {
        return;
    }
    if let Some(answer) = hand.answer_mut(notebook).filter(|answer| answer.shown_at.len() < MOST_TRIES) {
        // A press of which the sheet does not say when came before the first try after it.
        if answer.shown && answer.shown_at.is_empty() {
            answer.shown_at.extend(answer.tries.iter().position(|tried| tried.after_shown));
        }
        answer.shown = true;
        answer.shown_at.push(answer.tries.len());
        answer.again = false;
    }
    note_uncovered(notebook, hand.prepared);
}

/// "Answer again", as often as wanted: the fields open once more, empty.
pub fn answer_again(notebook: &mut Notebook, question: usize, ready: &mut Ready) {
    let Some(hand) = InHand::new(notebook, question, ready) else { return };
    if hand.standing(notebook).open {
        return;
    }
    if let Some(answer) = hand.answer_mut(notebook) {
        answer.again = true;
        answer.draft.clear();
    }
}
