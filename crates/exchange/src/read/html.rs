//! A table inside a web page or a pasted piece of one. Only text is taken; nothing is run, loaded or kept as markup.

use super::grid::Grid;
use crate::number::cell_number;
use std::borrow::Cow;

/// Whether a text is (a piece of) a web page.
pub(super) fn is_html(text: &str) -> bool {
    let start = text.trim_start();
    if !start.starts_with('<') {
        return false;
    }
    let opening: String = start.chars().take(2000).collect::<String>().to_ascii_lowercase();
    const TAGS: [&str; 15] = [
        "<!doctype html",
        "<html",
        "<table",
        "<meta",
        "<body",
        "<head",
        "<div",
        "<tr",
        "<!--startfragment",
        "<span",
        "<style",
        "<google",
        "<col",
        "<p>",
        "<p ",
    ];
    TAGS.iter().any(|tag| opening.contains(tag))
}

/// The table with most numbers in it; `None` when there is no table at all. Rows are counted from 1 as lines.
pub(super) fn table(text: &str) -> Option<Grid<'static>> {
    let mut best: Option<(usize, Vec<Vec<String>>)> = None;
    for rows in tables(text) {
        let numbers = rows.iter().flatten().filter(|cell| cell_number(cell, None).is_some()).count();
        if best.as_ref().is_none_or(|(most, _)| numbers > *most) {
            best = Some((numbers, rows));
        }
    }
    let (_, rows) = best?;
    let mut grid = Grid::default();
    for (line, row) in (1..).zip(rows) {
        grid.push_row(line, row.into_iter().map(Cow::Owned));
    }
    Some(grid)
}

/// A table while it is being read.
#[derive(Default)]
struct Open {
    rows: Vec<Vec<String>>,
    /// Text of the cell that is open.
    cell: Option<String>,
    /// Columns and rows the open cell covers.
    span: (usize, usize),
    /// Cells that reach down from rows above: (column, rows left, text).
    hanging: Vec<(usize, usize, String)>,
}

/// Widest and deepest span that is believed.
const MAX_SPAN: usize = 50;

impl Open {
    fn close_cell(&mut self) {
        let Some(text) = self.cell.take() else { return };
        let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
        if self.rows.is_empty() {
            self.rows.push(Vec::new());
        }
        self.fill_from_above();
        let (columns, rows) = self.span;
        let Some(row) = self.rows.last_mut() else { return };
        if rows > 1 && self.hanging.len() < MAX_SPAN {
            self.hanging.push((row.len(), rows - 1, text.clone()));
        }
        row.push(text);
        row.extend((1..columns).map(|_| String::new()));
    }

    /// A cell that covers several rows stands in each of them.
    fn fill_from_above(&mut self) {
        let Some(row) = self.rows.last_mut() else { return };
        let begun_here = self.hanging.len();
        for _ in 0..begun_here {
            let at = row.len();
            let Some(hanging) = self.hanging.iter_mut().find(|(column, left, _)| *column == at && *left > 0)
            else {
                break;
            };
            // A cell hung up in this very row is not yet due: it begins in the next.
            hanging.1 -= 1;
            row.push(hanging.2.clone());
        }
    }

    fn next_row(&mut self) {
        self.close_cell();
        if self.rows.last().is_some() {
            self.fill_from_above();
        }
        self.hanging.retain(|(_, left, _)| *left > 0);
        self.rows.push(Vec::new());
    }
}

fn tables(text: &str) -> Vec<Vec<Vec<String>>> {
    let mut done = Vec::new();
    let mut open: Vec<Open> = Vec::new();
    let mut rest = text;
    while let Some(at) = rest.find('<') {
        let (before, from) = rest.split_at_checked(at).unwrap_or((rest, ""));
        add_text(&mut open, before);
        if let Some(comment) = from.strip_prefix("<!--") {
            rest = comment.find("-->").and_then(|end| comment.get(end + 3..)).unwrap_or("");
            continue;
        }
        let name_end = from
            .char_indices()
            .skip(1)
            .find(|(at, c)| !(c.is_ascii_alphanumeric() || (*at == 1 && *c == '/')));
        let name = from.get(1..name_end.map_or(from.len(), |(at, _)| at)).unwrap_or("").to_ascii_lowercase();
        if name.is_empty() {
            add_text(&mut open, "<");
            rest = from.get(1..).unwrap_or("");
            continue;
        }
        let end = end_of_tag(from);
        let tag = from.get(..end).unwrap_or(from);
        rest = from.get(end..).unwrap_or("");
        match name.as_str() {
            "script" | "style" | "title" | "template" | "noscript" => rest = after_closing(rest, &name),
            "table" => open.push(Open::default()),
            "/table" => {
                if let Some(mut table) = open.pop() {
                    table.close_cell();
                    table.fill_from_above();
                    done.push(table.rows);
                }
            }
            "tr" => {
                if open.is_empty() {
                    open.push(Open::default()); // a piece of a table, pasted without its opening
                }
                if let Some(table) = open.last_mut() {
                    table.next_row();
                }
            }
            "td" | "th" => {
                if let Some(table) = open.last_mut() {
                    table.close_cell();
                    table.cell = Some(String::new());
                    table.span = (span(tag, "colspan"), span(tag, "rowspan"));
                }
            }
            "/td" | "/th" | "/tr" | "/tbody" | "/thead" => {
                if let Some(table) = open.last_mut() {
                    table.close_cell();
                }
            }
            "br" | "p" | "div" | "/p" | "/div" | "li" => add_text(&mut open, " "),
            _ => {}
        }
    }
    add_text(&mut open, rest);
    for mut table in open {
        table.close_cell();
        done.push(table.rows);
    }
    for rows in &mut done {
        rows.retain(|row| !row.is_empty());
    }
    done
}

fn add_text(open: &mut [Open], text: &str) {
    if let Some(cell) = open.last_mut().and_then(|table| table.cell.as_mut()) {
        decode_entities(text, cell);
    }
}

/// Longest tag that is believed.
const MAX_TAG: usize = 10_000;

/// The end of a tag, behind its `>`; quotes in attributes may hold one. Without an end within reason all that was
/// looked at counts as tag, so that the work stays linear.
fn end_of_tag(from: &str) -> usize {
    let mut quote = None;
    let mut first = None;
    for (at, byte) in from.bytes().enumerate().take(MAX_TAG) {
        if byte == b'>' {
            first.get_or_insert(at + 1);
        }
        match (quote, byte) {
            (None, b'>') => return at + 1,
            (None, b'"' | b'\'') => quote = Some(byte),
            (Some(open), _) if open == byte => quote = None,
            _ => {}
        }
    }
    first.unwrap_or_else(|| {
        let mut end = from.len().min(MAX_TAG);
        while !from.is_char_boundary(end) {
            end -= 1;
        }
        end.max(1)
    })
}

/// What follows the closing tag of an element whose content is not text.
fn after_closing<'a>(rest: &'a str, name: &str) -> &'a str {
    let mut from = rest;
    while let Some(at) = from.find("</") {
        let tail = from.get(at + 2..).unwrap_or("");
        if tail.get(..name.len()).is_some_and(|tag| tag.eq_ignore_ascii_case(name)) {
            return tail.find('>').and_then(|end| tail.get(end + 1..)).unwrap_or("");
        }
        from = tail;
    }
    ""
}

fn span(tag: &str, attribute: &str) -> usize {
    let lower = tag.to_ascii_lowercase();
    let value = lower.split(attribute).nth(1).map(|rest| rest.trim_start_matches(['=', ' ', '"', '\'']));
    let digits: String = value.unwrap_or("").chars().take_while(char::is_ascii_digit).take(3).collect();
    digits.parse().unwrap_or(1).clamp(1, MAX_SPAN)
}

/// Appends text with its character references decoded.
fn decode_entities(text: &str, to: &mut String) {
    let mut rest = text;
    while let Some(at) = rest.find('&') {
        let (before, from) = rest.split_at_checked(at).unwrap_or((rest, ""));
        to.push_str(before);
        let end = from.bytes().take(12).position(|byte| byte == b';');
        match end.and_then(|end| Some((entity(from.get(1..end)?)?, end))) {
            Some((c, end)) => {
                to.push(c);
                rest = from.get(end + 1..).unwrap_or("");
            }
            None => {
                to.push('&');
                rest = from.get(1..).unwrap_or("");
            }
        }
    }
    to.push_str(rest);
}

/// The character references a table of readings may hold (names as in the HTML standard).
fn entity(name: &str) -> Option<char> {
    if let Some(number) = name.strip_prefix('#') {
        let code = match number.strip_prefix(['x', 'X']) {
            Some(hex) => u32::from_str_radix(hex, 16).ok()?,
            None => number.parse().ok()?,
        };
        return char::from_u32(code).filter(|c| *c != '\0');
    }
    Some(match name {
        "amp" => '&',
        "lt" => '<',
        "gt" => '>',
        "quot" => '"',
        "apos" => '\'',
        "nbsp" => '\u{a0}',
        "deg" => '°',
        "ordm" => 'º',
        "minus" => '−',
        "ndash" => '–',
        "mdash" => '—',
        "thinsp" => '\u{2009}',
        "middot" => '·',
        "darr" => '↓',
        "uarr" => '↑',
        "aacute" => 'á',
        "eacute" => 'é',
        "iacute" => 'í',
        "oacute" => 'ó',
        "uacute" => 'ú',
        "ntilde" => 'ñ',
        "uuml" => 'ü',
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn rows(text: &str) -> Vec<Vec<String>> {
        let grid = table(text).unwrap();
        (0..grid.len()).map(|row| grid.row(row).iter().map(|cell| cell.to_string()).collect()).collect()
    }

    #[test]
    fn a_pasted_table_gives_its_cells_as_text() {
        let text = "<meta charset=utf-8><table><tr><th>Depth (m)<th>Temp (&deg;C)</tr>\
                    <tr><td style='a>b'>0,5</td><td><b>18,4</b>&nbsp;</td></tr></table>";
        assert_eq!(rows(text), [["Depth (m)", "Temp (°C)"], ["0,5", "18,4"]]);
    }

    #[test]
    fn nothing_is_run_and_scripts_are_passed_over() {
        let text = "<html><script>if (a<b) document.write('<td>9</td>')</script><table><tr><td>0<td>&lt;script&gt;1</table>";
        assert_eq!(rows(text), [["0", "<script>1"]]);
    }

    #[test]
    fn merged_cells_stand_in_every_row_they_cover() {
        let text = "<table><tr><td rowspan=2>0.5<td>18.4<tr><td>18.5<tr><td>1.0<td>18.3</table>";
        assert_eq!(rows(text), [["0.5", "18.4"], ["0.5", "18.5"], ["1.0", "18.3"]]);
        let text = "<table><tr><td>Depth<td colspan=2>Temperature<tr><td><td>Down<td>Up</table>";
        assert_eq!(rows(text), [vec!["Depth", "Temperature", ""], vec!["", "Down", "Up"]]);
    }

    #[test]
    fn the_table_with_the_numbers_is_taken() {
        let text = "<table><tr><td>Menu<td>Home</table><table><tr><td>0<td>18</table>";
        assert_eq!(rows(text), [["0", "18"]]);
        assert!(table("<html><p>No table here</html>").is_none());
        assert!(is_html("<html><p>No table here</html>"));
        assert!(!is_html("<b>,18.4"));
    }
}
