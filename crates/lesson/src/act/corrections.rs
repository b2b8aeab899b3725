//! The list of corrections: added, typed into, taken away. Readings stay as they were taken.

use super::kept;
use super::undo::{remember, remember_going_on};
use crate::document::{MOST_CELL_CHARS, MOST_CORRECTIONS, Notebook, UndoWhat};
use crate::prepared::Ready;
use layercast_exchange::document::{CastDoc, CorrectionDoc, CorrectionField, CorrectionKind, SettledCell};

/// Adds a correction with empty fields: it waits until they are filled in.
pub fn add(notebook: &mut Notebook, kind: CorrectionKind) {
    push(notebook, CorrectionDoc::new(kind));
}

/// Adds the correction for a probe that was still settling, by the share that the readings show; nothing where they show
/// none that may be corrected, or where there is one already.
pub fn take_lag(notebook: &mut Notebook, ready: &mut Ready) {
    if notebook.cast.corrections.iter().any(|one| one.kind == CorrectionKind::Lag) {
        return;
    }
    let Some(share) = ready.of(notebook).lag_share() else { return };
    let mut correction = CorrectionDoc::new(CorrectionKind::Lag);
    let cell = SettledCell { text: format!("{share:.2}"), value: Some(share) };
    correction.fields.insert(CorrectionField::Share, cell);
    push(notebook, correction);
}

fn push(notebook: &mut Notebook, correction: CorrectionDoc) {
    if notebook.cast.corrections.len() >= MOST_CORRECTIONS {
        return;
    }
    let before = notebook.cast.clone();
    notebook.cast.corrections.push(correction);
    remember(notebook, before, UndoWhat::Correction);
}

/// Takes a correction away.
pub fn remove(notebook: &mut Notebook, correction: usize) {
    let before = notebook.cast.clone();
    if correction < notebook.cast.corrections.len() {
        notebook.cast.corrections.remove(correction);
    }
    remember(notebook, before, UndoWhat::Correction);
}

/// Types into a field of a correction; a field that it does not have is passed over.
pub fn set(notebook: &mut Notebook, correction: usize, field: CorrectionField, text: &str) {
    let before = notebook.cast.clone();
    let Some(doc) = notebook.cast.corrections.get_mut(correction) else { return };
    if !doc.kind.fields().contains(&field) {
        return;
    }
    let typed = field.typed(&kept(text, MOST_CELL_CHARS));
    if typed.text.is_empty() {
        doc.fields.remove(&field);
    } else {
        doc.fields.insert(field, typed);
    }
    let is_same_field =
        |earlier: &CastDoc, later: &CastDoc| only_this_differs(earlier, later, correction, field);
    remember_going_on(notebook, before, UndoWhat::Correction, is_same_field);
}

/// The later cast is the earlier one with other text in this field only.
fn only_this_differs(earlier: &CastDoc, later: &CastDoc, correction: usize, field: CorrectionField) -> bool {
    let same_otherwise = |(i, (a, b)): (usize, (&CorrectionDoc, &CorrectionDoc))| {
        let fields = |doc: &CorrectionDoc| {
            let mut fields = doc.fields.clone();
            if i == correction {
                fields.remove(&field);
            }
            fields
        };
        a.kind == b.kind && fields(a) == fields(b)
    };
    earlier.corrections != later.corrections
        && earlier.corrections.len() == later.corrections.len()
        && earlier.corrections.iter().zip(&later.corrections).enumerate().all(same_otherwise)
        && earlier.entries == later.entries
        && earlier.companions == later.companions
        && earlier.source == later.source
}
