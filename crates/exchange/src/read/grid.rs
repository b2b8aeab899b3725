//! Text to cells: RFC 4180 with any of the delimiters people meet, and lines counted as they stand in the file.
//!
//! Long because every way of parting a line into cells stands beside the others.

use super::secchi::is_about_the_disk;
use super::words::missing;
use crate::number::cell_number;
use crate::units::{UnitWord, unit_word};
use std::borrow::Cow;

/// Cells by row, trimmed, in one flat list so that a large table costs little.
#[derive(Clone, Debug, Default)]
pub(super) struct Grid<'a> {
    cells: Vec<Cow<'a, str>>,
    rows: Vec<Span>,
    /// Line where a quote mark opens that never closes.
    pub open_quote_line: Option<u32>,
}

#[derive(Clone, Copy, Debug)]
struct Span {
    line: u32,
    start: usize,
    len: usize,
}

impl<'a> Grid<'a> {
    /// Number of rows.
    pub fn len(&self) -> usize {
        self.rows.len()
    }

    /// The cells of a row, from 0; empty beyond the last.
    pub fn row(&self, row: usize) -> &[Cow<'a, str>] {
        self.rows.get(row).and_then(|span| self.cells.get(span.start..span.start + span.len)).unwrap_or(&[])
    }

    /// A cell; empty where there is none.
    pub fn cell(&self, row: usize, column: usize) -> &str {
        self.row(row).get(column).map_or("", |cell| cell)
    }

    /// The line a row begins on, counted from 1.
    pub fn line(&self, row: usize) -> u32 {
        self.rows.get(row).map_or(0, |span| span.line)
    }

    /// Cells of the longest row.
    pub fn width(&self) -> usize {
        self.rows.iter().map(|span| span.len).max().unwrap_or(0)
    }

    /// Adds a row of its own text.
    pub fn push_row(&mut self, line: u32, cells: impl IntoIterator<Item = Cow<'a, str>>) {
        let start = self.cells.len();
        self.cells.extend(cells);
        self.rows.push(Span { line, start, len: self.cells.len() - start });
    }
}

/// What stands between two cells.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Delimiter {
    /// One sign.
    Sign(char),
    /// A comma followed by a space; commas without one belong to the cell.
    CommaSpace,
    /// Two or more spaces.
    WideSpaces,
    /// Any run of spaces.
    Spaces,
}

/// In the order in which they win when nothing else decides.
const CANDIDATES: [Delimiter; 7] = [
    Delimiter::Sign('\t'),
    Delimiter::Sign(';'),
    Delimiter::Sign('|'),
    Delimiter::CommaSpace,
    Delimiter::Sign(','),
    Delimiter::WideSpaces,
    Delimiter::Spaces,
];

/// Lines that are looked at to find the delimiter.
const SAMPLE_LINES: usize = 400;

/// The delimiter that makes most cells into numbers, row by row: `18,4` split at its comma never does.
pub(super) fn delimiter(text: &str) -> Delimiter {
    let sample = head_of(text, SAMPLE_LINES);
    let mut best = (Delimiter::Sign(','), 0.0);
    for candidate in CANDIDATES {
        let grid = split(sample, candidate);
        if candidate == Delimiter::CommaSpace && !has_inner_commas(&grid) {
            continue;
        }
        let score = score(&grid);
        if score > best.1 + 1e-9 {
            best = (candidate, score);
        }
    }
    best.0
}

/// Whether most rows with numbers have a comma inside one: without that, a comma and a space are a plain comma.
fn has_inner_commas(grid: &Grid<'_>) -> bool {
    let rows =
        (0..grid.len()).map(|row| grid.row(row).iter().filter(|cell| cell_number(cell, None).is_some()));
    let (mut all, mut inner) = (0_usize, 0_usize);
    for mut numbers in rows {
        if let Some(first) = numbers.next() {
            all += 1;
            inner += usize::from(first.contains(',') || numbers.any(|cell| cell.contains(',')));
        }
    }
    2 * inner > all
}

/// Sum over the rows with two numbers or more (with one, little) of the share of cells that are numbers or say "no reading".
/// A line about the Secchi disk holds numbers in any case.
fn score(grid: &Grid<'_>) -> f64 {
    (0..grid.len())
        .filter(|row| !is_about_the_disk(grid.row(*row)))
        .map(|row| {
            let cells = grid.row(row);
            let filled = cells.iter().filter(|cell| !cell.is_empty()).count();
            let numbers = cells.iter().filter(|cell| cell_number(cell, None).is_some()).count();
            let absent = cells.iter().filter(|cell| !cell.is_empty() && missing(cell).is_some()).count();
            // One number beside a cell that says "no reading" is a row too; beside text it is a hint at best.
            match (numbers, absent) {
                (2.., _) | (1, 1..) => (numbers + absent) as f64 / filled as f64,
                (1, 0) if filled > 1 => 0.1 / filled as f64,
                _ => 0.0,
            }
        })
        .sum()
}

/// The first lines of a text, at most 64 kilobytes of them.
fn head_of(text: &str, lines: usize) -> &str {
    let mut end = text.len().min(1 << 16);
    while !text.is_char_boundary(end) {
        end -= 1;
    }
    let head = text.get(..end).unwrap_or(text);
    let nth = head.bytes().enumerate().filter(|(_, byte)| *byte == b'\n').nth(lines);
    nth.and_then(|(at, _)| head.get(..at)).unwrap_or(head)
}

/// Splits a text into trimmed cells. Quotes as in RFC 4180; a quote that never closes is an ordinary sign, and so is
/// every quote after it, so that the work stays linear.
pub(super) fn split(text: &str, delimiter: Delimiter) -> Grid<'_> {
    match delimiter {
        Delimiter::Spaces | Delimiter::WideSpaces => split_at_spaces(text, delimiter),
        Delimiter::Sign(sign) => split_at_sign(text, sign, false),
        Delimiter::CommaSpace => split_at_sign(text, ',', true),
    }
}

/// A quoted cell with more lines than this was never meant as one.
const QUOTED_LINES: usize = 20;

fn split_at_sign(text: &str, sign: char, space_after: bool) -> Grid<'_> {
    let bytes = text.as_bytes();
    let sign = sign as u8; // all candidates are ASCII
    let mut grid = Grid::default();
    let mut quotes = true;
    let (mut at, mut line) = (0_usize, 1_u32);
    let (mut row_line, mut row_start) = (1_u32, 0_usize);
    loop {
        // One cell from `at`.
        let begin = at + bytes.iter().skip(at).take_while(|b| **b == b' ').count();
        let quoted = if quotes && bytes.get(begin) == Some(&b'"') {
            match closing_quote(bytes, begin + 1, sign) {
                Some(close) => Some(close),
                None => {
                    quotes = false;
                    grid.open_quote_line = Some(line);
                    None
                }
            }
        } else {
            None
        };
        let from = quoted.map_or(at, |close| close + 1);
        let mut end = from;
        while let Some(byte) = bytes.get(end) {
            let ends_row = matches!(byte, b'\n' | b'\r');
            let ends_cell = *byte == sign
                && (!space_after || matches!(bytes.get(end + 1), Some(b' ' | b'\n' | b'\r') | None));
            if ends_row || ends_cell {
                break;
            }
            end += 1;
        }
        let cell = match quoted {
            // Signs after the closing quote belong to the cell: nothing is dropped.
            Some(close) => {
                let inside = text.get(begin + 1..close).unwrap_or("");
                let after = text.get(from..end).unwrap_or("").trim();
                line += u32::try_from(inside.bytes().filter(|b| *b == b'\n').count()).unwrap_or(0);
                if inside.contains("\"\"") || !after.is_empty() {
                    Cow::Owned(format!("{}{after}", inside.replace("\"\"", "\"")).trim().to_owned())
                } else {
                    Cow::Borrowed(inside.trim())
                }
            }
            None => Cow::Borrowed(text.get(at..end).unwrap_or("").trim()),
        };
        let last = bytes.get(end).is_none();
        if !(last && cell.is_empty() && grid.cells.len() == row_start) {
            grid.cells.push(cell);
        }
        match bytes.get(end) {
            Some(byte) if *byte == sign && !matches!(byte, b'\n' | b'\r') => at = end + 1,
            other => {
                let len = grid.cells.len() - row_start;
                if other.is_some() || len > 0 {
                    grid.rows.push(Span { line: row_line, start: row_start, len });
                }
                let Some(byte) = other else { return grid };
                at = end + if *byte == b'\r' && bytes.get(end + 1) == Some(&b'\n') { 2 } else { 1 };
                line += 1;
                row_line = line;
                row_start = grid.cells.len();
            }
        }
    }
}

/// The quote that closes a cell opened before `from`; `None` if there is none within a sane number of lines, or if a
/// cell of several lines closes in the middle of other text.
fn closing_quote(bytes: &[u8], from: usize, sign: u8) -> Option<usize> {
    let mut lines = 0;
    let mut at = from;
    loop {
        match bytes.get(at)? {
            b'"' if bytes.get(at + 1) == Some(&b'"') => at += 2,
            b'"' => {
                let next = bytes.iter().skip(at + 1).find(|byte| **byte != b' ');
                let ends = next.is_none_or(|byte| *byte == sign || matches!(byte, b'\n' | b'\r'));
                return (ends || lines == 0).then_some(at);
            }
            b'\n' if lines == QUOTED_LINES => return None,
            b'\n' => {
                lines += 1;
                at += 1;
            }
            _ => at += 1,
        }
    }
}

fn split_at_spaces(text: &str, delimiter: Delimiter) -> Grid<'_> {
    let text = text.strip_suffix('\n').unwrap_or(text);
    let rows: Vec<(&str, Vec<&str>)> = lines(text)
        .map(|row| {
            let row = row.trim();
            (row, if delimiter == Delimiter::WideSpaces { wide_cells(row) } else { joined_words(row) })
        })
        .collect();
    let numbers = |cells: &[&str]| cells.iter().filter(|cell| cell_number(cell, None).is_some()).count();
    let width = rows.iter().find(|(_, cells)| numbers(cells) >= 2).map_or(0, |(_, cells)| cells.len());
    let mut grid = Grid::default();
    for (line, (row, cells)) in (1..).zip(rows) {
        let cells = if cells.len() > width && width > 0 && numbers(&cells) == 0 {
            heads_of_words(row, &cells, width)
        } else {
            cells
        };
        grid.push_row(line, cells.into_iter().filter(|cell| !cell.is_empty()).map(Cow::Borrowed));
    }
    grid
}

fn wide_cells(row: &str) -> Vec<&str> {
    let mut cells = Vec::new();
    let mut rest = row;
    while let Some(at) = rest.find("  ") {
        cells.push(rest.get(..at).unwrap_or("").trim());
        rest = rest.get(at..).unwrap_or("").trim_start();
    }
    cells.push(rest);
    cells
}

/// Heads of several words over fewer columns: a head ends with its unit ("Water depth (m) Water temp (C)"). Where that
/// does not give as many heads as columns, nobody can tell which word belongs to which: the row stays one text.
fn heads_of_words<'a>(row: &'a str, words: &[&'a str], width: usize) -> Vec<&'a str> {
    let mut heads: Vec<&str> = Vec::new();
    let mut begin = 0;
    let mut at = 0;
    for word in words {
        let Some(found) = row.get(at..).and_then(|rest| rest.find(word)) else { return vec![row] };
        at += found + word.len();
        let ends = word.rsplit(' ').next().is_some_and(|last| last != *word && unit_word(last).is_some());
        if ends || at == row.len() {
            heads.extend(row.get(begin..at).map(str::trim));
            begin = at;
        }
    }
    if heads.len() == width { heads } else { vec![row] }
}

/// Words between single spaces, but a unit stays with the number or head before it: "0.5 m" is one cell.
fn joined_words(row: &str) -> Vec<&str> {
    let mut cells: Vec<std::ops::Range<usize>> = Vec::new();
    let mut begin = None;
    let ends = row.char_indices().chain([(row.len(), ' ')]);
    for (at, c) in ends {
        match (begin, c.is_whitespace()) {
            (None, false) => begin = Some(at),
            (Some(start), true) => {
                begin = None;
                let is_unit = unit_word(row.get(start..at).unwrap_or("")).is_some();
                match cells.last_mut() {
                    Some(last) if is_unit && takes_a_unit(row.get(last.clone()).unwrap_or("")) => {
                        last.end = at
                    }
                    _ => cells.push(start..at),
                }
            }
            _ => {}
        }
    }
    cells.into_iter().filter_map(|range| row.get(range)).collect()
}

/// Whether a unit that follows this cell belongs to it: a number without one, a word, or the "deg" of "deg C".
fn takes_a_unit(cell: &str) -> bool {
    match unit_word(cell) {
        Some(word) => word == UnitWord::Degrees,
        None => {
            cell_number(cell, None).is_none_or(|number| matches!(number.unit, None | Some(UnitWord::Degrees)))
        }
    }
}

/// Lines ended by LF, CR LF or CR.
fn lines(text: &str) -> impl Iterator<Item = &str> {
    text.split('\n').flat_map(|line| line.strip_suffix('\r').unwrap_or(line).split('\r'))
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rows(text: &str) -> Vec<Vec<String>> {
        let grid = split(text, delimiter(text));
        (0..grid.len()).map(|row| grid.row(row).iter().map(|cell| cell.to_string()).collect()).collect()
    }

    #[track_caller]
    fn check(text: &str, want: &[&[&str]]) {
        assert_eq!(rows(text), want, "{text}");
    }

    #[test]
    fn a_decimal_comma_is_never_a_separator() {
        check("0,5;18,4;18,5\n1,0;18,3;18,4", &[&["0,5", "18,4", "18,5"], &["1,0", "18,3", "18,4"]]);
        check("0,5\t18,4", &[&["0,5", "18,4"]]);
        check("0,5 18,4", &[&["0,5", "18,4"]]);
        check("\"0,5\",\"18,4\"", &[&["0,5", "18,4"]]);
        check("0,5, 18,4", &[&["0,5", "18,4"]]);
        check("0,5|18,4", &[&["0,5", "18,4"]]);
    }

    #[test]
    fn every_delimiter() {
        check("0.5,18.4", &[&["0.5", "18.4"]]);
        check("0.5, 18.4, a, b", &[&["0.5", "18.4", "a", "b"]]);
        check("0.5   18.4", &[&["0.5", "18.4"]]);
        check("0.5 m 18.4 °C", &[&["0.5 m", "18.4 °C"]]);
        check("0,18\n1,17", &[&["0", "18"], &["1", "17"]]);
        check("0.5,-\n1.0,18", &[&["0.5", "-"], &["1.0", "18"]]);
    }

    #[test]
    fn heads_of_several_words_stand_over_their_columns_or_nowhere() {
        check(
            "Water depth (m) Water temp (°C)\n0 20\n1 19",
            &[&["Water depth (m)", "Water temp (°C)"], &["0", "20"], &["1", "19"]],
        );
        check(
            "depth of probe water temperature\n0 20\n1 19",
            &[&["depth of probe water temperature"], &["0", "20"], &["1", "19"]],
        );
        check(
            "Depth Down Up\n0 20 21\n1 19 20",
            &[&["Depth", "Down", "Up"], &["0", "20", "21"], &["1", "19", "20"]],
        );
    }

    #[test]
    fn quotes_and_line_ends_as_rfc_4180_has_them() {
        check("1,2,\"a \"\"b\"\", c\"\r\n3,4,d\r\n", &[&["1", "2", "a \"b\", c"], &["3", "4", "d"]]);
        check("1,2\r3,4", &[&["1", "2"], &["3", "4"]]);
        check("1,2,\"two\nlines\"\n3,4", &[&["1", "2", "two\nlines"], &["3", "4"]]);
        check("1,2,5\" pipe\n3,4", &[&["1", "2", "5\" pipe"], &["3", "4"]]);
        check("1,2,\n\n,,\n", &[&["1", "2", ""], &[""], &["", "", ""]]);
    }

    #[test]
    fn lines_are_counted_as_they_stand() {
        let grid = split("a,\"b\nc\"\n\n1,2\n", Delimiter::Sign(','));
        assert_eq!((0..grid.len()).map(|row| grid.line(row)).collect::<Vec<_>>(), [1, 3, 4]);
    }

    #[test]
    fn a_quote_that_never_closes_is_an_ordinary_sign() {
        let grid = split("1,\"2\n3,4\n5,\"6\n", Delimiter::Sign(','));
        assert_eq!((grid.len(), grid.open_quote_line, grid.cell(0, 1)), (3, Some(1), "\"2"));
        let text = format!("1,\"2\n{}", "3,4\n".repeat(30));
        let grid = split(&text, Delimiter::Sign(','));
        assert_eq!((grid.len(), grid.open_quote_line, grid.cell(0, 1)), (31, Some(1), "\"2"));
    }
}
