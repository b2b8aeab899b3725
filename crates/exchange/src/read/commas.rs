//! Decimal commas in a table whose separator is the comma too: `0,5,18,4` may be four numbers or two.

use super::grid::Grid;
use super::words::missing;
use crate::document::Decimal;
use std::borrow::Cow;

/// What the commas of a table are.
pub(super) enum Commas<'a> {
    /// Separators only.
    Separators,
    /// Every other one is a decimal sign: the table put together again.
    Both(Grid<'a>),
    /// Both readings are possible: a person must say. The first row is given as one would read it with decimal commas.
    Ask { line: u32, written: String, joined: String },
    /// The commas of this line cannot be told apart.
    Tangled { line: u32, written: String },
}

/// Looks at a table split at its commas. `chosen`: what a person said, if asked before.
pub(super) fn commas<'a>(grid: &Grid<'a>, chosen: Option<Decimal>) -> Commas<'a> {
    if chosen == Some(Decimal::Point) {
        return Commas::Separators;
    }
    let body: Vec<usize> = (0..grid.len()).filter(|row| is_body(grid, *row)).collect();
    let Some(first) = body.first().copied() else { return Commas::Separators };
    if body.iter().any(|row| grid.row(*row).iter().any(|cell| cell.contains(['.', ',']))) {
        return Commas::Separators;
    }
    let heads = (0..first).rev().map(|row| filled(grid, row)).find(|filled| *filled >= 2);
    let longer = |columns: usize| body.iter().filter(|row| grid.row(**row).len() > columns).count();
    match heads {
        Some(columns) if 2 * longer(columns) <= body.len() => Commas::Separators,
        Some(columns) => join(grid, &body, Some(columns)),
        None => {
            let Commas::Both(joined) = join(grid, &body, None) else { return Commas::Separators };
            if chosen == Some(Decimal::Comma) {
                return Commas::Both(joined);
            }
            if !looks_like_depths(&joined, &body) {
                return Commas::Separators;
            }
            let written = grid.row(first).join(",");
            Commas::Ask { line: grid.line(first), written, joined: joined.row(first).join("  ") }
        }
    }
}

/// A row of whole numbers and missing cells, at least two numbers.
fn is_body(grid: &Grid<'_>, row: usize) -> bool {
    let cells = grid.row(row);
    let number = |cell: &str| {
        cell.bytes().any(|b| b.is_ascii_digit())
            && cell.bytes().all(|b| b.is_ascii_digit() || b"+-.,".contains(&b))
    };
    cells.iter().filter(|cell| number(cell)).count() >= 2
        && cells.iter().all(|cell| number(cell) || missing(cell).is_some() || cell.starts_with('−'))
}

fn filled(grid: &Grid<'_>, row: usize) -> usize {
    grid.row(row).iter().filter(|cell| !cell.is_empty()).count()
}

/// Joins every pair of fields of the body rows. With `columns` known a row may also be whole numbers throughout.
fn join<'a>(grid: &Grid<'a>, body: &[usize], columns: Option<usize>) -> Commas<'a> {
    let mut joined = Grid::default();
    joined.open_quote_line = grid.open_quote_line;
    let mut next = body.iter().copied().peekable();
    let mut width = columns;
    for row in 0..grid.len() {
        let cells = grid.row(row);
        if next.peek() != Some(&row) {
            joined.push_row(grid.line(row), cells.iter().cloned());
            continue;
        }
        next.next();
        let tangled = || Commas::Tangled { line: grid.line(row), written: cells.join(",") };
        let whole = columns == Some(cells.len());
        let pairs = if whole { Some(cells.to_vec()) } else { pairs(cells) };
        match pairs {
            Some(pairs) if width.is_none_or(|width| width == pairs.len()) => {
                width = Some(pairs.len());
                joined.push_row(grid.line(row), pairs);
            }
            _ => return tangled(),
        }
    }
    if width.is_some_and(|width| width < 2) {
        return Commas::Separators;
    }
    Commas::Both(joined)
}

/// "0","5","","23","4" → "0,5","","23,4". `None` if a run between missing cells is odd or a second field cannot be
/// the digits after a decimal comma.
fn pairs<'a>(cells: &[Cow<'a, str>]) -> Option<Vec<Cow<'a, str>>> {
    let mut joined = Vec::new();
    let mut fields = cells.iter();
    while let Some(field) = fields.next() {
        if missing(field).is_some() {
            joined.push(field.clone());
            continue;
        }
        let digits = fields.next()?;
        if !(1..=2).contains(&digits.len()) || !digits.bytes().all(|b| b.is_ascii_digit()) {
            return None;
        }
        joined.push(Cow::Owned(format!("{field},{digits}")));
    }
    Some(joined)
}

/// Whether the first joined column grows (or shrinks) by one usual step of a marked cable.
fn looks_like_depths(grid: &Grid<'_>, body: &[usize]) -> bool {
    let depths: Vec<f64> = body
        .iter()
        .filter_map(|row| crate::number::cell_number(grid.cell(*row, 0), None))
        .map(|n| n.value.abs())
        .collect();
    super::depths::usual_step(&depths)
        .is_some_and(|step| [0.1, 0.2, 0.25, 0.5, 1.0, 2.0].iter().any(|usual| (step - usual).abs() < 1e-9))
}

#[cfg(test)]
mod tests {
    use super::super::grid::{Delimiter, split};
    use super::*;

    fn read(text: &str, chosen: Option<Decimal>) -> String {
        let grid = split(text, Delimiter::Sign(','));
        let show = |grid: &Grid<'_>| {
            (0..grid.len()).map(|row| grid.row(row).join("|")).collect::<Vec<_>>().join(" / ")
        };
        match commas(&grid, chosen) {
            Commas::Separators => "separators".to_owned(),
            Commas::Both(grid) => show(&grid),
            Commas::Ask { line, joined, .. } => format!("ask about line {line}: {joined}"),
            Commas::Tangled { line, .. } => format!("tangled in line {line}"),
        }
    }

    #[test]
    fn heads_tell_how_many_numbers_there_are() {
        assert_eq!(read("D,T\n0,0,18,4\n0,5,18,3", None), "D|T / 0,0|18,4 / 0,5|18,3");
        assert_eq!(read("D,T\n0,18\n1,17", None), "separators");
        assert_eq!(read("D,A,B\n0,0,18,4,,\n0,5,,18,3", None), "tangled in line 2");
        assert_eq!(read("D,A,B\n0,0,18,4,-\n0,5,,18,3", None), "D|A|B / 0,0|18,4|- / 0,5||18,3");
        assert_eq!(read("D,A,B\n0,23,4,23,5\n0,5,23,4,23,4", None), "tangled in line 2");
    }

    #[test]
    fn without_heads_a_person_must_say() {
        let text = "0,0,18,4\n0,5,18,3\n1,0,18,3";
        assert_eq!(read(text, None), "ask about line 1: 0,0  18,4");
        assert_eq!(read(text, Some(Decimal::Point)), "separators");
        assert_eq!(read(text, Some(Decimal::Comma)), "0,0|18,4 / 0,5|18,3 / 1,0|18,3");
    }

    #[test]
    fn counters_beside_whole_numbers_are_no_decimals() {
        assert_eq!(read("1,0,23,24\n2,1,23,23\n3,2,22,23", None), "separators");
        assert_eq!(read("0.5,18.4\n1.0,18.3", None), "separators");
    }
}
