//! The three marks: typed, dragged, moved by key, refused, checked.

use super::kept;
use crate::action::MarkKey;
use crate::document::{MOST_CELL_CHARS, MarkDocs, MarkName, Notebook, Sheet};
use crate::marks::{self, Reach, bounds_m, depth_text, dragged_m, reach, typed_give_m};
use crate::numbers::rounded;
use crate::prepared::{Prepared, Ready};
use crate::questions;
use crate::scene::{early, shown};

/// Types the depth of a mark; typing takes "not in my water" back.
pub fn type_depth(notebook: &mut Notebook, mark: MarkName, text: &str, ready: &mut Ready) {
    let last_m = reach(&ready.of(notebook).analysis).map(|reach| reach.last_m);
    let Some(sheet) = notebook.sheets.first_mut() else { return };
    let doc = sheet.marks.get_mut(mark);
    doc.depth_text = kept(text, MOST_CELL_CHARS);
    doc.refused = doc.refused && text.trim().is_empty();
    doc.depth_m = None;
    marks::settle(&mut sheet.marks, Some(mark), last_m);
}

/// Types a give or take.
pub fn type_give(notebook: &mut Notebook, mark: MarkName, text: &str) {
    let Some(sheet) = notebook.sheets.first_mut() else { return };
    let doc = sheet.marks.get_mut(mark);
    doc.give_text = kept(text, MOST_CELL_CHARS);
    doc.give_m = typed_give_m(text);
}

/// Drags a grip.
pub fn drag(
    notebook: &mut Notebook,
    mark: MarkName,
    y_px: f64,
    surface_y_px: f64,
    px_per_m: f64,
    ready: &mut Ready,
) {
    let Some(reach) = reach(&ready.of(notebook).analysis) else { return };
    let Some(sheet) = notebook.sheets.first_mut() else { return };
    let bounds = bounds_m(&sheet.marks, mark, reach.last_m);
    if let Some(depth_m) = dragged_m(y_px, surface_y_px, px_per_m, reach.last_m, bounds) {
        place(sheet, mark, depth_m, reach);
    }
}

/// Moves a grip by key.
pub fn key(notebook: &mut Notebook, mark: MarkName, key: MarkKey, ready: &mut Ready) {
    let Some(reach) = reach(&ready.of(notebook).analysis) else { return };
    let Some(sheet) = notebook.sheets.first_mut() else { return };
    let bounds = bounds_m(&sheet.marks, mark, reach.last_m);
    let depth_m = keyed_m(sheet.marks.get(mark).depth_m, key, reach, bounds);
    place(sheet, mark, depth_m, reach);
}

/// Where a key brings a grip: the first ↓ to the first reading, the first ↑ to the last, never past a neighbour.
pub fn keyed_m(depth_m: Option<f64>, key: MarkKey, reach: Reach, (least_m, most_m): (f64, f64)) -> f64 {
    let moved = match (depth_m, key) {
        (_, MarkKey::Home) => least_m,
        (_, MarkKey::End) => most_m,
        (None, MarkKey::Down | MarkKey::MarkDown) => reach.first_m,
        (None, MarkKey::Up | MarkKey::MarkUp) => reach.last_m,
        (Some(depth_m), MarkKey::Up) => depth_m - 0.1,
        (Some(depth_m), MarkKey::Down) => depth_m + 0.1,
        (Some(depth_m), MarkKey::MarkUp) => depth_m - reach.step_m,
        (Some(depth_m), MarkKey::MarkDown) => depth_m + reach.step_m,
    };
    rounded(moved, 2).max(least_m).min(most_m)
}

fn place(sheet: &mut Sheet, mark: MarkName, depth_m: f64, reach: Reach) {
    let doc = sheet.marks.get_mut(mark);
    doc.depth_text = depth_text(depth_m);
    doc.refused = false;
    doc.depth_m = Some(depth_m);
    marks::settle(&mut sheet.marks, None, Some(reach.last_m));
}

/// "Not in my water", or takes it back.
pub fn refuse(notebook: &mut Notebook, mark: MarkName, refused: bool, ready: &mut Ready) {
    let last_m = reach(&ready.of(notebook).analysis).map(|reach| reach.last_m);
    let Some(sheet) = notebook.sheets.first_mut() else { return };
    let doc = sheet.marks.get_mut(mark);
    doc.refused = refused;
    doc.depth_m = None;
    marks::settle(&mut sheet.marks, Some(mark), last_m);
}

/// "I see no layers": refuses all three.
pub fn no_layers(notebook: &mut Notebook, ready: &mut Ready) {
    for mark in marks::ALL {
        refuse(notebook, mark, true, ready);
    }
}

/// Covers the marks, for the partner to place theirs: once, before anything was checked or uncovered.
pub fn hand_over(notebook: &mut Notebook) {
    let Some(sheet) = notebook.sheets.first_mut() else { return };
    if sheet.can_hand_over() {
        sheet.partner = Some(std::mem::take(&mut sheet.marks));
    }
}

/// Uncovers them again, while the partner has typed nothing.
pub fn hand_back(notebook: &mut Notebook) {
    let Some(sheet) = notebook.sheets.first_mut() else { return };
    if sheet.first_marks.is_none() && sheet.marks == MarkDocs::default() {
        sheet.marks = sheet.partner.take().unwrap_or_default();
    }
}

/// Checks the marks. Waits until each is placed or refused, and until an early check is wanted as one.
pub fn check(notebook: &mut Notebook, early_too: bool, ready: &mut Ready) {
    let prepared = ready.of(notebook);
    let context = prepared.context(notebook);
    if prepared.analysis.profile.len() < 2 || !context.sheet.marks.all_settled() {
        return;
    }
    let paper = questions::paper(&context);
    let would_show = early(&context, &paper);
    if !would_show.is_empty() && !early_too {
        return;
    }
    let ids: Vec<String> = would_show.into_iter().map(|(_, id)| id).collect();
    let Some(sheet) = notebook.sheets.first_mut() else { return };
    for id in ids {
        if !sheet.revealed_early.contains(&id) {
            sheet.revealed_early.push(id);
        }
    }
    if sheet.first_marks.is_none() {
        sheet.first_marks = Some(sheet.marks_when_revealed.clone().unwrap_or_else(|| sheet.marks.clone()));
    }
    sheet.marking_again = false;
    note_uncovered(notebook, prepared);
}

/// Shows the marks again after the check, or what was found.
pub fn show(notebook: &mut Notebook, again: bool) {
    if let Some(sheet) = notebook.sheets.first_mut().filter(|sheet| sheet.first_marks.is_some()) {
        sheet.marking_again = again;
    }
}

/// Readings changed: marks wait while they lie below the last reading, and come back.
pub fn settle_again(notebook: &mut Notebook, ready: &mut Ready) {
    let any_text =
        |sheet: &Sheet| marks::ALL.iter().any(|mark| !sheet.marks.get(*mark).depth_text.is_empty());
    if !notebook.sheets.first().is_some_and(any_text) {
        return;
    }
    let last_m = reach(&ready.of(notebook).analysis).map(|reach| reach.last_m);
    if let Some(sheet) = notebook.sheets.first_mut() {
        marks::settle(&mut sheet.marks, None, last_m);
    }
}

/// Writes down what is uncovered now, so that it stays so; and the marks as they stood when a question first did it.
pub fn note_uncovered(notebook: &mut Notebook, prepared: &Prepared) {
    let context = prepared.context(notebook);
    let now = shown(&context, &questions::paper(&context));
    let open = notebook.lesson.open;
    let bars: Vec<(f64, f64)> = (now.some_steps.iter())
        .filter_map(|i| prepared.analysis.steps.get(*i))
        .map(|step| (step.top_m, step.bottom_m))
        .collect();
    let Some(sheet) = notebook.sheets.first_mut() else { return };
    let uncovered = &mut sheet.uncovered;
    uncovered.steps |= now.steps && !open.steps;
    uncovered.thermocline |= now.thermocline && !open.thermocline;
    uncovered.mixed_layer |= now.mixed_layer && !open.mixed_layer;
    uncovered.deep_layer |= now.deep_layer && !open.deep_layer;
    for bar in bars {
        if !uncovered.some_steps_m.contains(&bar) && uncovered.some_steps_m.len() < 1000 {
            uncovered.some_steps_m.push(bar);
        }
    }
    let whole = uncovered.steps || uncovered.thermocline || uncovered.mixed_layer || uncovered.deep_layer;
    if whole && sheet.marks_when_revealed.is_none() && sheet.first_marks.is_none() {
        sheet.marks_when_revealed = Some(sheet.marks.clone());
    }
}
