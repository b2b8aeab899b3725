//! The readings themselves, one for each cell that could hold one, and the notices that name lines.

use super::columns::Roles;
use super::interpret::{Series, Table};
use super::words::{Missing, missing, way};
use super::{TableRead, cells, say};
use crate::document::{
    Cell, Decimal, DoubtedCell, Entry, LegDoc, MOST_OXYGEN_MG_L, Role, SwitchDoc, Unit, cell_doubts_in,
    without_oxygen_unit,
};
use crate::number::{Number, cell_number};
use crate::units::UnitWord;
use layercast_core::Flag;
use layercast_core::cast::gross_range::{LAKE, gross_range};

/// Lines or cells where something was seen, in order, and what was written at the first of them.
#[derive(Clone, Debug, Default)]
pub(super) struct Seen {
    pub lines: Vec<u32>,
    /// The cells: place of the reading among the entries, and which of its two cells.
    pub cells: Vec<(usize, DoubtedCell)>,
    pub count: usize,
    pub written: String,
}

impl Seen {
    fn note(&mut self, line: u32, written: &str) {
        if self.count == 0 {
            self.written = say::clip(written);
        }
        self.count += 1;
        if self.lines.last() != Some(&line) && self.lines.len() <= say::LISTED_LINES {
            self.lines.push(line);
        }
    }

    /// The cell of a reading; `at`: the reading's place among the entries.
    fn note_cell(&mut self, at: usize, cell: DoubtedCell, written: &str) {
        if self.count == 0 {
            self.written = say::clip(written);
        }
        self.count += 1;
        if self.cells.len() <= cells::LISTED_CELLS {
            self.cells.push((at, cell));
        }
    }
}

/// What was seen on the way through the cells.
#[derive(Clone, Debug, Default)]
pub(super) struct Notes {
    pub empty: Seen,
    pub said: Seen,
    pub sheet_error: Seen,
    pub code: Seen,
    /// Cells with the other decimal sign than the table has.
    pub other_sign: Seen,
    /// Cells with a unit of their own.
    pub own_unit: Seen,
    /// Temperatures outside of what lake water has.
    pub outside: Seen,
    /// Cells of the column of ways that name none.
    pub no_way: Seen,
    /// Cells of oxygen that hold no number from 0 to the most there is.
    pub no_oxygen: Seen,
}

/// Fills in the readings, the last decimal place, what the table gives, and the notices.
pub(super) fn entries(
    table: &Table<'_>,
    found: &Roles,
    series: &[Series],
    decimal: Option<Decimal>,
    leg_of: impl Fn(usize) -> Option<LegDoc>,
    read: &mut TableRead,
) {
    let leg_column = found.roles.iter().position(|role| *role == Role::Leg);
    let oxygen_columns = oxygen_columns(table, found);
    let mut notes = Notes::default();
    let mut digits = [0_usize; 13];
    let mut block = None;
    let mut blocks = table.rows.blocks.iter().peekable();
    for (ordinal, row) in table.rows.readings.iter().enumerate() {
        while let Some((_, way)) = blocks.next_if(|(from, _)| *from <= ordinal) {
            block = Some(*way);
        }
        let line = table.grid.line(*row);
        let written_way = leg_column.map(|column| table.grid.cell(*row, column));
        let row_leg = match written_way {
            Some(text) => {
                let way = way(text);
                if way.is_none() {
                    notes.no_way.note(line, text);
                }
                way
            }
            None => block.or_else(|| leg_of(ordinal)),
        };
        for (nth, series) in series.iter().enumerate() {
            let depth_text = table.grid.cell(*row, series.depth);
            let temp_text = table.grid.cell(*row, series.temp);
            let depth_absent = missing(depth_text);
            let temp_absent = missing(temp_text);
            if depth_absent.is_some() && temp_absent.is_some() {
                continue;
            }
            let at = read.entries.len();
            if let Some(absent) = temp_absent {
                let seen = match absent {
                    Missing::Empty => &mut notes.empty,
                    Missing::Said => &mut notes.said,
                    Missing::SheetError => &mut notes.sheet_error,
                    Missing::Code => &mut notes.code,
                };
                seen.note_cell(at, DoubtedCell::Temp, temp_text);
            }
            let mut number = |text: &str, absent: Option<Missing>, cell: DoubtedCell| {
                let number = cell_number(text, decimal).filter(|_| absent.is_none())?;
                if number.sign.is_some() && decimal.is_some() && number.sign != decimal {
                    notes.other_sign.note_cell(at, cell, text);
                }
                Some(number)
            };
            let depth = number(depth_text, depth_absent, DoubtedCell::Depth);
            let temp = number(temp_text, temp_absent, DoubtedCell::Temp);
            if let Some(slot) = temp.and_then(|temp| digits.get_mut(usize::from(temp.decimals))) {
                *slot += 1;
            }
            let mut in_unit = |number: Option<Number>, text: &str, unit: Unit, cell: DoubtedCell| {
                let number = number?;
                match number.unit {
                    Some(UnitWord::Known(own)) if own.is_length() == unit.is_length() => {
                        if own != unit {
                            notes.own_unit.note_cell(at, cell, text);
                        }
                        Some(own.to_m_or_c(number.value))
                    }
                    // Another kind of unit in the cell: it is not the number we look for.
                    Some(UnitWord::Known(_) | UnitWord::Foreign) => None,
                    Some(UnitWord::Degrees) | None => Some(unit.to_m_or_c(number.value)),
                }
            };
            let depth_m = in_unit(depth, depth_text, series.depth_unit, DoubtedCell::Depth);
            let depth_m = if series.minus { depth_m.map(|depth| 0.0 - depth) } else { depth_m };
            let temp_c = in_unit(temp, temp_text, series.temp_unit, DoubtedCell::Temp);
            if matches!(gross_range(temp_c, &LAKE), Flag::Fail | Flag::Suspect) {
                notes.outside.note_cell(at, DoubtedCell::Temp, temp_text);
            }
            let leg = match series.role {
                Role::Down => LegDoc::Down,
                Role::Up => LegDoc::Up,
                _ => row_leg.unwrap_or(LegDoc::Unknown),
            };
            read.entries.push(Entry {
                depth: Cell { written: say::clip(depth_text), value: finite(depth_m), settled: None },
                temp: Cell { written: say::clip(temp_text), value: finite(temp_c), settled: None },
                oxygen: oxygen_column(&oxygen_columns, nth, leg)
                    .and_then(|column| oxygen(table.grid.cell(*row, column), decimal, line, &mut notes)),
                leg,
                line: Some(line),
                switch: SwitchDoc::Auto,
            });
        }
    }
    let unit = series.first().map_or(Unit::C, |series| series.temp_unit);
    read.digit_c = last_place(&digits) * unit.step_in_m_or_c();
    let doubts = cell_doubts_in(&read.entries);
    read.gives = say::gives(&read.entries, &doubts);
    read.messages.extend(say::rows_left_out(table));
    read.messages.extend(cells::notes(&notes, &read.entries));
    read.messages.extend(cells::doubts(&doubts, &read.entries));
    read.messages.extend(say::depth_twice(&read.entries));
    read.messages.extend(say::too_little(&read.entries));
}

/// The columns of oxygen, each with the way its head names.
fn oxygen_columns(table: &Table<'_>, found: &Roles) -> Vec<(usize, Option<LegDoc>)> {
    let columns = found.roles.iter().enumerate().filter(|(_, role)| **role == Role::Oxygen);
    columns.map(|(at, _)| (at, table.columns.get(at).and_then(|column| column.head.way()))).collect()
}

/// The column of oxygen that belongs to the n-th temperature of a row: that of its way, else the n-th that names none.
fn oxygen_column(columns: &[(usize, Option<LegDoc>)], nth: usize, leg: LegDoc) -> Option<usize> {
    let of_way = columns.iter().find(|(_, way)| *way == Some(leg));
    let open = || columns.iter().filter(|(_, way)| way.is_none()).nth(nth);
    of_way.or_else(open).map(|(at, _)| *at)
}

/// A cell of oxygen; `None` where nothing was read.
fn oxygen(text: &str, decimal: Option<Decimal>, line: u32, notes: &mut Notes) -> Option<Cell> {
    if missing(text).is_some() {
        return None;
    }
    let number = cell_number(without_oxygen_unit(text), decimal).filter(|number| number.unit.is_none());
    let value = finite(number.map(|number| number.value));
    if !value.is_some_and(|value| (0.0..=MOST_OXYGEN_MG_L).contains(&value)) {
        notes.no_oxygen.note(line, text);
    }
    Some(Cell { written: say::clip(text), value, settled: None })
}

fn finite(value: Option<f64>) -> Option<f64> {
    value.filter(|value| value.is_finite())
}

/// The last place that at least a fifth of the numbers reach: a spreadsheet drops final zeros, and one number with
/// more digits does not make the others finer.
fn last_place(digits: &[usize]) -> f64 {
    let all: usize = digits.iter().sum();
    if all == 0 {
        return 0.0;
    }
    let mut reaching = 0;
    let mut decimals = 0;
    for (at, count) in digits.iter().enumerate().rev() {
        reaching += count;
        if 5 * reaching >= all {
            decimals = at;
            break;
        }
    }
    1.0 / (0..decimals).fold(1.0, |power, _| power * 10.0)
}
