//! All temperatures of a cast read as °F or as °C. What is written stays; only what it is read as changes.

use super::cells::note_digit;
use super::undo::remember;
use crate::class::Repair;
use crate::document::{Notebook, UndoWhat};
use crate::scale::{is_in, stands_alone};
use layercast_exchange::document::{CastDoc, Cell, Unit, typed_temp};

/// Reads all temperatures that stand without a unit in this one.
pub fn read_temps(notebook: &mut Notebook, unit: Unit) {
    let before = notebook.cast.clone();
    match (unit, before.temps_in) {
        (Unit::F, None | Some(Unit::C)) => notebook.cast = in_fahrenheit(&before),
        (Unit::C, Some(Unit::F)) => notebook.cast = in_celsius(&before),
        (Unit::C, None) => {}
        _ => return,
    }
    notebook.cast.temps_in = Some(unit);
    note_digit(&mut notebook.cast);
    remember(notebook, before, UndoWhat::Settle);
}

/// As a teacher has it read in Class; but a cell with a unit of its own, or of a column that was read as °F already, stays.
fn in_fahrenheit(cast: &CastDoc) -> CastDoc {
    let mut read = Repair { fahrenheit: true, ..Repair::default() }.cast(cast);
    for (entry, was) in read.entries.iter_mut().zip(&cast.entries) {
        if !turns(&was.temp.written, was.temp.value) {
            entry.temp.value = was.temp.value;
        }
        if let (Some(settled), Some(was)) = (&mut entry.temp.settled, &was.temp.settled)
            && !turns(&was.text, was.value)
        {
            settled.value = was.value;
        }
    }
    read
}

fn turns(text: &str, value: Option<f64>) -> bool {
    stands_alone(text) && !is_in(Unit::F, text, value)
}

/// Back to the numbers as they are written.
fn in_celsius(cast: &CastDoc) -> CastDoc {
    let mut read = cast.clone();
    let back = |text: &str, value: &mut Option<f64>| {
        if stands_alone(text) && is_in(Unit::F, text, *value) {
            *value = typed_temp(text).value;
        }
    };
    for entry in &mut read.entries {
        let Cell { written, value, settled } = &mut entry.temp;
        back(written, value);
        if let Some(settled) = settled {
            back(&settled.text, &mut settled.value);
        }
    }
    read.digit_c *= 1.8;
    read
}
