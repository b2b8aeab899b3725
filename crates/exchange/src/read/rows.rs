//! What each row is: readings, a title, heads, units, nothing, or a total.

use super::RowKind;
use super::grid::Grid;
use super::secchi::is_about_the_disk;
use super::words::{Head, head, is_total, missing, way};
use crate::document::LegDoc;
use crate::number::cell_number;
use crate::slip::slip;
use crate::units::{UnitWord, unit_word};

/// The rows of a table, told apart.
#[derive(Clone, Debug, Default)]
pub(super) struct Rows {
    /// One kind a row.
    pub kinds: Vec<RowKind>,
    /// Indices of the rows that hold readings.
    pub readings: Vec<usize>,
    /// Heads as written, one a column; two rows of heads are joined.
    pub heads: Vec<String>,
    /// Units of a row of units, one a column.
    pub units: Vec<Option<UnitWord>>,
    /// Rows of readings from which on a way is given by a line or head of its own ("Down", then "Up").
    pub blocks: Vec<(usize, LegDoc)>,
    /// Rows among the readings that repeat the heads.
    pub repeated: Vec<usize>,
    /// Rows of text among the readings.
    pub notes: Vec<usize>,
}

/// Rows that are searched for heads.
const HEAD_ROWS: usize = 60;

/// Tells the rows apart.
pub(super) fn rows(grid: &Grid<'_>, width: usize) -> Rows {
    let mut rows = Rows { units: vec![None; width], ..Rows::default() };
    let found = find_heads(grid);
    let (first_head, after_heads) = found.unwrap_or((0, 0));
    rows.heads = joined_heads(grid, first_head..after_heads, width);
    let mut way_of_heads = None;
    for row in 0..grid.len() {
        let kind = if found.is_some() && row < first_head {
            if grid.row(row).iter().all(|cell| cell.is_empty()) { RowKind::Blank } else { RowKind::Title }
        } else if row < after_heads {
            RowKind::Head
        } else {
            kind_of(grid.row(row), rows.readings.is_empty())
        };
        match kind {
            RowKind::Reading => rows.readings.push(row),
            RowKind::Units => {
                for (slot, cell) in rows.units.iter_mut().zip(grid.row(row)) {
                    *slot = slot.or_else(|| unit_word(cell));
                }
            }
            RowKind::Title => {
                if let Some(way) = lone_way(grid, row) {
                    rows.blocks.push((rows.readings.len(), way));
                } else if !rows.readings.is_empty() && !is_about_the_disk(grid.row(row)) {
                    rows.notes.push(row);
                }
            }
            RowKind::Head if row >= after_heads => {
                rows.repeated.push(row);
                if let Some(way) = way_in_heads(grid, row) {
                    rows.blocks.push((rows.readings.len(), way));
                }
            }
            RowKind::Head => way_of_heads = way_of_heads.or_else(|| way_in_heads(grid, row)),
            RowKind::Blank | RowKind::Total => {}
        }
        rows.kinds.push(kind);
    }
    // A first head that names a way counts only where a later one names the other: two tables, one under the other.
    if let Some(way) = way_of_heads
        && rows.blocks.iter().any(|(_, other)| *other != way)
        && rows.blocks.iter().all(|(at, _)| *at > 0)
    {
        rows.blocks.insert(0, (0, way));
    }
    if rows.heads.iter().all(String::is_empty) {
        rows.heads = heads_above_first_reading(grid, &mut rows.kinds, rows.readings.first().copied(), width);
    }
    rows
}

/// First row of the heads and the first row after them.
fn find_heads(grid: &Grid<'_>) -> Option<(usize, usize)> {
    let row = (0..grid.len().min(HEAD_ROWS)).find(|row| is_head(grid.row(*row)))?;
    let names_something = |row: usize| {
        let cells = grid.row(row);
        let told = |cell: &&std::borrow::Cow<'_, str>| {
            let head = head(cell);
            head.temp
                || head.down
                || head.up
                || matches!(unit_word(cell), Some(UnitWord::Known(unit)) if !unit.is_length())
        };
        cells.iter().skip(1).any(|cell| told(&cell))
            && cells.iter().all(|cell| cell_number(cell, None).is_none())
    };
    let first = match row.checked_sub(1) {
        Some(above) if names_something(above) => above,
        _ => row,
    };
    let mut after = row + 1;
    while after < grid.len() && is_second_head(grid.row(after)) {
        after += 1;
    }
    Some((first, after))
}

/// Text in every filled cell, naming a depth, temperature or way beside something else.
fn is_head(cells: &[std::borrow::Cow<'_, str>]) -> bool {
    let mut score = 0;
    let mut filled = 0;
    let mut reading = false;
    for cell in cells.iter().filter(|cell| !cell.is_empty()) {
        if cell_number(cell, None).is_some() {
            return false;
        }
        filled += 1;
        let head = head(cell);
        let names = head.depth || head.temp || head.down || head.up || head.leg;
        reading |= names;
        score += if names { 2 } else { i32::from(head.says_something()) };
    }
    filled >= 2 && score >= 3 && reading && !only_units(cells)
}

/// A second line of heads under the first ("", "down", "up"): text only, some of it a head, none a unit row.
fn is_second_head(cells: &[std::borrow::Cow<'_, str>]) -> bool {
    let mut names = 0;
    for cell in cells.iter().filter(|cell| !cell.is_empty()) {
        if cell_number(cell, None).is_some() {
            return false;
        }
        let head = head(cell);
        names += usize::from(head.depth || head.temp || head.down || head.up);
    }
    names >= 2 && !only_units(cells)
}

fn only_units(cells: &[std::borrow::Cow<'_, str>]) -> bool {
    let mut filled = cells.iter().filter(|cell| !cell.is_empty()).peekable();
    filled.peek().is_some()
        && filled.all(|cell| unit_word(cell).is_some() || missing(cell).is_some())
        && cells.iter().any(|cell| unit_word(cell).is_some())
}

fn kind_of(cells: &[std::borrow::Cow<'_, str>], before_readings: bool) -> RowKind {
    let mut filled = cells.iter().filter(|cell| !cell.is_empty());
    let Some(first) = filled.next() else { return RowKind::Blank };
    let count = 1 + filled.count();
    if count == 1 && cell_number(first, None).is_none() {
        // Text alone in its row: a title, a note, a line that names the way; a unit or a dash at most.
        return match (unit_word(first).is_some(), missing(first).is_some()) {
            (true, _) if before_readings => RowKind::Units,
            (_, true) => RowKind::Blank,
            _ => RowKind::Title,
        };
    }
    if is_about_the_disk(cells) && !is_head(cells) {
        return RowKind::Title;
    }
    let numbers = cells.iter().filter(|cell| cell_number(cell, None).is_some()).count();
    if cell_number(first, None).is_none()
        && count > 1
        && is_total(first)
        && !(before_readings && is_head(cells))
    {
        return RowKind::Total;
    }
    if numbers > 0 {
        return RowKind::Reading;
    }
    if only_units(cells) {
        return if before_readings { RowKind::Units } else { RowKind::Head };
    }
    if cells.iter().all(|cell| missing(cell).is_some()) {
        return RowKind::Blank;
    }
    if is_head(cells) {
        return RowKind::Head;
    }
    let slips = cells.iter().filter(|cell| !cell.is_empty() && slip(cell).1.is_some()).count();
    if slips >= 2 || (slips == 1 && !before_readings && count > 1) {
        RowKind::Reading
    } else {
        RowKind::Title
    }
}

/// A line that says nothing but the way: "Going down".
fn lone_way(grid: &Grid<'_>, row: usize) -> Option<LegDoc> {
    let mut filled = grid.row(row).iter().filter(|cell| !cell.is_empty());
    let only = filled.next()?;
    if filled.next().is_some() { None } else { way(only) }
}

/// The one way that a row of heads names.
fn way_in_heads(grid: &Grid<'_>, row: usize) -> Option<LegDoc> {
    let mut ways = grid.row(row).iter().filter_map(|cell| head(cell).way());
    let first = ways.next()?;
    ways.all(|way| way == first).then_some(first)
}

/// Heads of one or two rows. In the upper of two rows a head reaches over the empty cells to its right.
fn joined_heads(grid: &Grid<'_>, rows: std::ops::Range<usize>, width: usize) -> Vec<String> {
    let mut heads = vec![String::new(); width];
    let last = rows.end.saturating_sub(1);
    for row in rows {
        let mut reaching = "";
        for (column, slot) in heads.iter_mut().enumerate() {
            let cell = grid.cell(row, column);
            if !cell.is_empty() {
                reaching = cell;
            }
            let cell = if row < last { reaching } else { cell };
            if !cell.is_empty() && slot != cell {
                if !slot.is_empty() {
                    slot.push(' ');
                }
                slot.push_str(cell);
            }
        }
    }
    heads
}

/// Heads without a word we know: the row of text just above the first reading, as wide as it.
fn heads_above_first_reading(
    grid: &Grid<'_>,
    kinds: &mut [RowKind],
    first: Option<usize>,
    width: usize,
) -> Vec<String> {
    let mut above = (0..first.unwrap_or(0)).rev().skip_while(|row| kinds.get(*row) == Some(&RowKind::Units));
    let Some(row) = above.next().filter(|row| kinds.get(*row) == Some(&RowKind::Title)) else {
        return vec![String::new(); width];
    };
    let filled = |row: usize| grid.row(row).iter().filter(|cell| !cell.is_empty()).count();
    if filled(row) < 2 || first.is_none_or(|first| filled(row) < filled(first)) {
        return vec![String::new(); width];
    }
    if let Some(kind) = kinds.get_mut(row) {
        *kind = RowKind::Head;
    }
    joined_heads(grid, row..row + 1, width)
}

/// The heads read as words. In "A, B, C" the letter C is no unit.
pub(super) fn read_heads(rows: &Rows) -> Vec<Head> {
    let letter = |text: &str| text.len() == 1 && text.bytes().all(|byte| byte.is_ascii_alphabetic());
    let lettered = rows.heads.iter().any(|text| letter(text) && !head(text).says_something());
    rows.heads
        .iter()
        .zip(&rows.units)
        .map(|(text, unit)| {
            let read = if lettered && letter(text) { Head::default() } else { head(text) };
            Head { unit: read.unit.or(*unit), ..read }
        })
        .collect()
}
