//! Readings typed, settled, left out, kept. What was written stays beside what a person makes of it.

use super::kept;
use super::undo::{remember, remember_typing};
use crate::document::{MOST_CELL_CHARS, MOST_ENTRIES, Notebook, UndoWhat};
use crate::marks::depth_text;
use layercast_exchange::document::{
    CastDoc, Cell, Entry, LegDoc, SettledCell, SwitchDoc, Unit, typed_depth, typed_temp_in,
};
use layercast_exchange::number::quantity;

/// Types into a temperature cell: of a reading, or of a new one at a depth.
pub fn set_cell(notebook: &mut Notebook, entry: Option<usize>, depth_m: f64, leg: LegDoc, text: &str) {
    let before = notebook.cast.clone();
    let typed = typed_temp_in(&kept(text, MOST_CELL_CHARS), before.temps_in);
    let index = match entry {
        Some(index) => {
            let Some(entry) = notebook.cast.entries.get_mut(index) else { return };
            let is_typed = entry.line.is_none();
            type_into(&mut entry.temp, is_typed, typed);
            index
        }
        None if typed.text.is_empty() || notebook.cast.entries.len() >= MOST_ENTRIES => return,
        None => {
            notebook.cast.entries.push(Entry { temp: Cell::typed(&typed), ..entry_at(depth_m, leg) });
            notebook.cast.entries.len() - 1
        }
    };
    note_digit(&mut notebook.cast);
    remember_typing(notebook, before, &[index]);
}

/// A reading of a person's own at a depth \[m\], nothing read yet; without a depth where that is no number.
pub(super) fn entry_at(depth_m: f64, leg: LegDoc) -> Entry {
    let depth_m = Some(depth_m).filter(|depth_m| depth_m.is_finite());
    Entry {
        depth: Cell { written: depth_m.map(depth_text).unwrap_or_default(), value: depth_m, settled: None },
        temp: Cell::default(),
        oxygen: None,
        leg,
        line: None,
        switch: SwitchDoc::Auto,
    }
}

/// Types into a depth cell: moves all readings of its row.
pub fn set_depth(notebook: &mut Notebook, entries: &[usize], text: &str) {
    let before = notebook.cast.clone();
    let typed = typed_depth(&kept(text, MOST_CELL_CHARS));
    for index in entries {
        if let Some(entry) = notebook.cast.entries.get_mut(*index) {
            let is_typed = entry.line.is_none();
            type_into(&mut entry.depth, is_typed, typed.clone());
        }
    }
    remember_typing(notebook, before, entries);
}

/// A typed reading is what was typed last; of a table's reading the table's own text stays.
fn type_into(cell: &mut Cell, is_typed: bool, typed: SettledCell) {
    if is_typed {
        *cell = Cell::typed(&typed);
    } else if typed.text == cell.written && cell.value.is_none() {
        cell.settled = None;
    } else {
        cell.settled = Some(typed);
    }
}

/// The last decimal place of typed temperatures; that of a table stays as it was read.
pub(super) fn note_digit(cast: &mut CastDoc) {
    if cast.entries.iter().any(|entry| entry.line.is_some()) {
        return;
    }
    let decimals = cast.entries.iter().filter_map(|entry| {
        let quantity = quantity(entry.temp.current_text())?;
        quantity.in_c().map(|_| quantity.decimals)
    });
    cast.digit_c = match decimals.max() {
        None => 0.0,
        Some(0) => 1.0,
        Some(1) => 0.1,
        Some(2) => 0.01,
        Some(_) => 0.001,
    };
    if cast.temps_in == Some(Unit::F) {
        cast.digit_c /= 1.8;
    }
}

/// Puts a temperature in place of a doubted one.
pub fn make_temp(notebook: &mut Notebook, entry: usize, value_c: f64, text: &str) {
    let before = notebook.cast.clone();
    if let Some(entry) = notebook.cast.entries.get_mut(entry).filter(|_| value_c.is_finite()) {
        entry.temp.settled = Some(SettledCell { text: kept(text, MOST_CELL_CHARS), value: Some(value_c) });
    }
    remember(notebook, before, UndoWhat::Settle);
}

/// Puts a depth in place of a doubted one, for every reading of the table's row.
pub fn make_depth(notebook: &mut Notebook, entry: usize, value_m: f64, text: &str) {
    let before = notebook.cast.clone();
    let Some(named) = before.entries.get(entry).filter(|_| value_m.is_finite()) else { return };
    let settled = SettledCell { text: kept(text, MOST_CELL_CHARS), value: Some(value_m) };
    for (i, other) in notebook.cast.entries.iter_mut().enumerate() {
        let same_row = other.line.is_some() && other.line == named.line && other.depth == named.depth;
        if i == entry || same_row {
            other.depth.settled = Some(settled.clone());
        }
    }
    remember(notebook, before, UndoWhat::Settle);
}

/// Leaves readings out.
pub fn leave_out(notebook: &mut Notebook, entries: &[usize]) {
    switch(notebook, entries, SwitchDoc::Off);
}

/// "It was like that."
pub fn keep(notebook: &mut Notebook, entries: &[usize]) {
    switch(notebook, entries, SwitchDoc::Kept);
}

fn switch(notebook: &mut Notebook, entries: &[usize], to: SwitchDoc) {
    let before = notebook.cast.clone();
    for index in entries {
        if let Some(entry) = notebook.cast.entries.get_mut(*index) {
            entry.switch = to;
        }
    }
    remember(notebook, before, UndoWhat::Settle);
}

/// Takes back what was decided about readings: they are as they were written.
pub fn reconsider(notebook: &mut Notebook, entries: &[usize]) {
    let before = notebook.cast.clone();
    for index in entries {
        if let Some(entry) = notebook.cast.entries.get_mut(*index) {
            entry.switch = SwitchDoc::Auto;
            entry.depth.settled = None;
            entry.temp.settled = None;
        }
    }
    remember(notebook, before, UndoWhat::Change);
}
