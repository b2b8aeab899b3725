//! Comma-separated text (RFC 4180): UTF-8 with a mark at its start, CRLF, quotes where they are needed. A text that a
//! spreadsheet would take for a formula is made harmless by an apostrophe before it.

/// The mark that tells a spreadsheet the file is UTF-8.
const BYTE_ORDER_MARK: char = '\u{feff}';

/// A table as it grows.
pub(super) struct Csv {
    text: String,
    at_start: bool,
}

impl Csv {
    pub fn new() -> Self {
        Self { text: BYTE_ORDER_MARK.to_string(), at_start: true }
    }

    /// One row of texts and numbers.
    pub fn row(&mut self, cells: &[Cell]) {
        for cell in cells {
            self.cell(cell);
        }
        self.text.push_str("\r\n");
        self.at_start = true;
    }

    fn cell(&mut self, cell: &Cell) {
        if !self.at_start {
            self.text.push(',');
        }
        self.at_start = false;
        let text = match cell {
            Cell::Empty => return,
            Cell::Number(value) => number(*value),
            Cell::Text(text) => harmless(text),
        };
        if text.contains(['"', ',', '\r', '\n']) || text.trim() != text {
            self.text.push('"');
            self.text.push_str(&text.replace('"', "\"\""));
            self.text.push('"');
        } else {
            self.text.push_str(&text);
        }
    }

    pub fn finish(self) -> String {
        self.text
    }
}

/// A cell.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Cell {
    Empty,
    Number(f64),
    Text(String),
}

impl Cell {
    pub fn text(text: impl Into<String>) -> Self {
        Self::Text(text.into())
    }

    pub fn maybe(value: Option<f64>) -> Self {
        value.filter(|value| value.is_finite()).map_or(Self::Empty, Self::Number)
    }
}

/// A number with at most six decimals, and none that say nothing.
pub(super) fn number(value: f64) -> String {
    let written = format!("{value:.6}");
    let short = written.trim_end_matches('0').trim_end_matches('.');
    if short == "-0" { "0".to_owned() } else { short.to_owned() }
}

/// A text that no spreadsheet takes for a formula: one that begins with =, +, -, @ or a control sign, in wide signs or
/// behind blanks too, gets an apostrophe. A plain number stays as it is.
fn harmless(text: &str) -> String {
    let is_plain_number = text.parse::<f64>().is_ok_and(f64::is_finite);
    let first = text.trim_start_matches([' ', '\u{a0}']).chars().next();
    let starts_odd = first.is_some_and(|first| {
        matches!(first, '=' | '+' | '-' | '−' | '@' | '|' | '%' | '＝' | '＋' | '－' | '＠')
            || first.is_control()
    });
    if starts_odd && !is_plain_number { format!("'{text}") } else { text.to_owned() }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn line(cells: &[Cell]) -> String {
        let mut csv = Csv::new();
        csv.row(cells);
        csv.finish().trim_start_matches(BYTE_ORDER_MARK).to_owned()
    }

    #[test]
    fn cells_are_quoted_where_they_must_be() {
        let cells = ["plain", "a,b", "say \"it\"", "two\nlines", " edge", ""].map(Cell::text);
        assert_eq!(line(&cells), "plain,\"a,b\",\"say \"\"it\"\"\",\"two\nlines\",\" edge\",\r\n");
        assert_eq!(line(&[Cell::Empty, Cell::Number(0.5), Cell::Empty]), ",0.5,\r\n");
    }

    #[test]
    fn formulas_are_made_harmless() {
        for text in
            ["=1+1", "+A1", "-A1", "−2+3", "@SUM(A1)", "\t=1", "\r=1", "\n=1", " =1", "＝1", "|calc", "%0A"]
        {
            let line = line(&[Cell::text(text)]);
            let cell = line.trim_start_matches('"');
            assert!(cell.starts_with('\''), "{text:?} became {cell:?}");
        }
        for text in ["-0.5", "+3", "177", "C", "a=b", "4-5", ""] {
            assert_eq!(line(&[Cell::text(text)]), format!("{text}\r\n"));
        }
    }

    #[test]
    fn numbers_are_short_and_exact_to_a_millionth() {
        let cases =
            [(0.5, "0.5"), (2.400_000_000_000_000_4, "2.4"), (-0.0, "0"), (100.0, "100"), (1e-9, "0")];
        for (value, written) in cases {
            assert_eq!(number(value), written);
        }
        assert_eq!(number(-0.25), "-0.25");
        assert_eq!(number(17.777_777_777), "17.777778");
        assert_eq!(Cell::maybe(Some(f64::NAN)), Cell::Empty);
        assert_eq!(Cell::maybe(Some(f64::INFINITY)), Cell::Empty);
    }
}
