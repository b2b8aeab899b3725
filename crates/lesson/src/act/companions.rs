//! What is measured beside the temperature: oxygen at the marks, the Secchi disk, the height of the lake.

use super::cells::entry_at;
use super::kept;
use super::undo::{remember_going_on, remember_typing};
use crate::document::{MOST_CELL_CHARS, MOST_ENTRIES, Notebook, UndoWhat};
use layercast_exchange::document::{CastDoc, Cell, CompanionField, Entry, LegDoc, SettledCell, typed_oxygen};

/// Types into a field of what is measured once a cast.
pub fn set(notebook: &mut Notebook, companion: CompanionField, text: &str) {
    let before = notebook.cast.clone();
    notebook.cast.companions.type_into(companion, &kept(text, MOST_CELL_CHARS));
    let is_same_field = |earlier: &CastDoc, later: &CastDoc| {
        let others = [CompanionField::SecchiGone, CompanionField::SecchiBack, CompanionField::Altitude];
        let mut others = others.into_iter().filter(|other| *other != companion);
        earlier.companions != later.companions
            && others.all(|other| earlier.companions.cell(other) == later.companions.cell(other))
            && earlier.entries == later.entries
            && earlier.corrections == later.corrections
            && earlier.source == later.source
    };
    remember_going_on(notebook, before, UndoWhat::Cell, is_same_field);
}

/// Types into the oxygen of a reading, or of a new one without a temperature at a depth.
pub fn set_oxygen(notebook: &mut Notebook, entry: Option<usize>, depth_m: f64, text: &str) {
    let before = notebook.cast.clone();
    let typed = typed_oxygen(&kept(text, MOST_CELL_CHARS));
    let index = match entry {
        Some(index) => {
            let Some(entry) = notebook.cast.entries.get_mut(index) else { return };
            type_into(&mut entry.oxygen, typed);
            index
        }
        None if typed.text.is_empty() || notebook.cast.entries.len() >= MOST_ENTRIES => return,
        None => {
            let oxygen = Some(Cell::typed(&typed));
            notebook.cast.entries.push(Entry { oxygen, ..entry_at(depth_m, LegDoc::Down) });
            notebook.cast.entries.len() - 1
        }
    };
    remember_typing(notebook, before, &[index]);
}

/// What a table said stays; a typed cell is what was typed last, and none when that is nothing.
fn type_into(oxygen: &mut Option<Cell>, typed: SettledCell) {
    match oxygen {
        Some(cell) if !cell.written.is_empty() => {
            cell.settled = (cell.written != typed.text).then_some(typed);
        }
        _ if typed.text.is_empty() => *oxygen = None,
        // Nothing was written there: what is typed is a person's own, so that a table's empty cell stays empty.
        _ => *oxygen = Some(Cell { settled: Some(typed), ..Cell::default() }),
    }
}
