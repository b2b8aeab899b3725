//! How deep the Secchi disk was seen, as tables carry it: a column with one or two values, or a line "Secchi: 3.2 m".

use super::RowKind;
use super::columns::Roles;
use super::interpret::Table;
use super::say::{clip, decimals_of, snip};
use super::words::{head, missing, tokens};
use crate::document::{Cell, Choices, Companions, Decimal, MOST_SECCHI_M, Role, Unit};
use crate::number::cell_number;
use crate::units::{UnitWord, unit_word};
use layercast_core::Message;

/// A depth of the disk: as written, and in metres.
#[derive(Clone, Debug, PartialEq)]
struct Seen {
    written: String,
    depth_m: f64,
}

/// What the table says of the Secchi disk, and the sentence about it.
pub(super) fn secchi(
    table: &Table<'_>,
    found: &Roles,
    decimal: Option<Decimal>,
    choices: &Choices,
) -> (Companions, Option<Message>) {
    let columns = found.roles.iter().enumerate().filter(|(_, role)| **role == Role::Secchi);
    let mut written = String::new();
    let mut seen = Vec::new();
    for (at, _) in columns {
        seen.extend(of_column(table, at, decimal, choices, &mut written));
    }
    if written.is_empty() {
        for row in (0..table.grid.len()).filter(|row| table.rows.kinds.get(*row) == Some(&RowKind::Title)) {
            let cells = table.grid.row(row);
            if let Some(line) = line_about_the_disk(cells) {
                written.clone_from(&line);
                seen = in_line(&line);
                break;
            }
        }
    }
    if written.is_empty() {
        return (Companions::default(), None);
    }
    let unclear = || Some(Message::new("read-notice-secchi-unclear").text("written", snip(&written)));
    let cell = |seen: &Seen| Cell { written: clip(&seen.written), value: Some(seen.depth_m), settled: None };
    let decimals = |depths: &[f64]| decimals_of(depths).max(1);
    match seen.as_slice() {
        [one] if believable(one.depth_m) => {
            let message =
                Message::new("read-notice-secchi-one").number("depth", one.depth_m, decimals(&[one.depth_m]));
            (Companions { secchi_gone: cell(one), ..Companions::default() }, Some(message))
        }
        [gone, back] if believable(gone.depth_m) && believable(back.depth_m) && are_a_pair(gone, back) => {
            let mean_m = (gone.depth_m + back.depth_m) / 2.0;
            let message = Message::new("read-notice-secchi-two")
                .number("gone", gone.depth_m, decimals(&[gone.depth_m]))
                .number("back", back.depth_m, decimals(&[back.depth_m]))
                .number("mean", mean_m, decimals(&[mean_m]));
            let both =
                Companions { secchi_gone: cell(gone), secchi_back: cell(back), ..Companions::default() };
            (both, Some(message))
        }
        _ => (Companions::default(), unclear()),
    }
}

fn believable(depth_m: f64) -> bool {
    depth_m > 0.0 && depth_m <= MOST_SECCHI_M
}

/// Where the disk vanishes and comes back is nearly one depth; other two numbers are something else (a date, say).
fn are_a_pair(gone: &Seen, back: &Seen) -> bool {
    (gone.depth_m - back.depth_m).abs() <= 0.5 * gone.depth_m.max(back.depth_m)
}

/// The different values of a column, in order. What is written in its first cells goes into `written`.
fn of_column(
    table: &Table<'_>,
    at: usize,
    decimal: Option<Decimal>,
    choices: &Choices,
    written: &mut String,
) -> Vec<Seen> {
    let of_head = table.columns.get(at).and_then(|column| column.unit(true));
    let unit = choices.units.get(&at).copied().filter(|unit| unit.is_length()).or(of_head);
    let mut seen: Vec<Seen> = Vec::new();
    let mut foreign = table.columns.get(at).is_some_and(|column| unit.is_none() && column.is_foreign());
    for row in &table.rows.readings {
        let text = table.grid.cell(*row, at);
        if missing(text).is_some() {
            continue;
        }
        if written.len() < 60 {
            written.push_str(if written.is_empty() { "" } else { " · " });
            written.push_str(text);
        }
        let number = cell_number(text, decimal);
        let own = number.and_then(|number| number.unit);
        let unit = match own {
            Some(UnitWord::Known(own)) if own.is_length() => Some(own),
            None => Some(unit.unwrap_or(Unit::M)),
            Some(_) => None,
        };
        let (Some(number), Some(unit)) = (number, unit) else {
            foreign = true;
            continue;
        };
        let one = Seen { written: text.to_owned(), depth_m: unit.to_m_or_c(number.value) };
        if seen.len() < 4 && !seen.iter().any(|other| (other.depth_m - one.depth_m).abs() < 1e-9) {
            seen.push(one);
        }
    }
    if foreign { Vec::new() } else { seen }
}

/// Whether a row of cells is about the disk and no head or reading: it begins with the word.
pub(super) fn is_about_the_disk(cells: &[std::borrow::Cow<'_, str>]) -> bool {
    cells.iter().find(|cell| !cell.is_empty()).is_some_and(|first| names_the_disk(first))
}

fn names_the_disk(text: &str) -> bool {
    text.len() <= 200 && tokens(text).iter().any(|token| token == "secchi")
}

/// The text of a line from the word on, its cells joined. `None` when no cell names the disk.
fn line_about_the_disk(cells: &[std::borrow::Cow<'_, str>]) -> Option<String> {
    let from = cells.iter().position(|cell| names_the_disk(cell))?;
    let mut line = String::new();
    let mut cut_at_comma = false;
    for cell in cells.iter().skip(from).filter(|cell| !cell.is_empty()) {
        let begins = cell.starts_with(|c: char| c.is_ascii_digit());
        // "Secchi: 3,2 m" in a table whose cells end at commas came in two cells.
        line.push_str(match (line.is_empty(), cut_at_comma && begins) {
            (true, _) => "",
            (_, true) => ",",
            _ => " ",
        });
        line.push_str(cell);
        cut_at_comma = names_the_disk(cell) && cell.ends_with(|c: char| c.is_ascii_digit());
    }
    Some(line.chars().take(200).collect())
}

/// The depths in such a line: those with a unit of length, or all where none has one. Words other than those of the disk
/// end the search after the first number.
fn in_line(line: &str) -> Vec<Seen> {
    #[rustfmt::skip]
    const BESIDE: &[&str] = &[
        "secchi", "disk", "disc", "disco", "depth", "profundidad", "de", "a", "at", "and", "y", "down", "up", "gone",
        "back", "vanished", "vanishes", "vanishing", "disappeared", "disappears", "reappeared", "reappears",
        "reappearing", "desaparece", "desaparicion", "reaparece", "reaparicion", "baja", "sube", "bajar", "subir",
    ];
    let unit_of_head = match head(line).unit {
        Some(UnitWord::Known(unit)) if unit.is_length() => Some(unit),
        _ => None,
    };
    let (mut with_unit, mut without) = (Vec::new(), Vec::new());
    // Numbers without a unit since the last colon: in "3.4 / 3.0 m" the unit is that of both.
    let mut run: Vec<(f64, String)> = Vec::new();
    let from = line.to_lowercase().find("secchi").unwrap_or(0);
    let mut rest = line.get(from..).unwrap_or(line);
    let mut before = ' ';
    while let Some(c) = rest.chars().next() {
        if c.is_ascii_digit() {
            let end = number_end(rest);
            let (number, after) = rest.split_at(end);
            let is_clock = before == ':' || after.starts_with(':');
            let word = after.trim_start().split(|c: char| !c.is_alphabetic()).next().unwrap_or("");
            let value = number.replace(',', ".").parse::<f64>().ok().filter(|_| !is_clock);
            let unit = match unit_word(word) {
                Some(UnitWord::Known(unit)) if unit.is_length() => Some(unit),
                _ => None,
            };
            match (value, unit) {
                (Some(value), Some(unit)) => {
                    if let [(value, written)] = run.as_slice() {
                        let written = format!("{written} {word}");
                        with_unit.push(Seen { written, depth_m: unit.to_m_or_c(*value) });
                    }
                    run.clear();
                    let written = format!("{number} {word}");
                    with_unit.push(Seen { written, depth_m: unit.to_m_or_c(value) });
                }
                (Some(value), None) => {
                    run.push((value, number.to_owned()));
                    let depth_m = unit_of_head.unwrap_or(Unit::M).to_m_or_c(value);
                    without.push(Seen { written: number.to_owned(), depth_m });
                }
                (None, _) => {}
            }
            before = '0';
            rest = after;
        } else if c.is_alphabetic() {
            let end = rest.find(|c: char| !c.is_alphabetic()).unwrap_or(rest.len());
            let (word, after) = rest.split_at(end);
            let is_beside = unit_word(word).is_some()
                || tokens(word).iter().all(|token| BESIDE.contains(&token.as_str()));
            let found_any = !with_unit.is_empty() || !without.is_empty();
            if found_any && !is_beside {
                break;
            }
            before = 'a';
            rest = after;
        } else {
            if c == ':' {
                run.clear();
            }
            if !c.is_whitespace() || before != ':' {
                before = if before.is_ascii_digit() || c != ':' { c } else { ' ' };
            }
            rest = rest.get(c.len_utf8()..).unwrap_or("");
            if before == ':' && !rest.starts_with(|c: char| c.is_ascii_digit()) {
                before = ' ';
            }
        }
    }
    if with_unit.is_empty() { without } else { with_unit }
}

/// Where the number at the beginning of a text ends: digits, and one sign with digits after it.
fn number_end(text: &str) -> usize {
    let digits = |from: usize| {
        let rest = text.get(from..).unwrap_or("");
        from + rest.find(|c: char| !c.is_ascii_digit()).unwrap_or(rest.len())
    };
    let whole = digits(0);
    match text.get(whole..).and_then(|rest| rest.strip_prefix(['.', ','])) {
        Some(rest) if rest.starts_with(|c: char| c.is_ascii_digit()) => digits(whole + 1),
        _ => whole,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn reads(line: &str, want: &[f64]) {
        let got: Vec<f64> = in_line(line).iter().map(|seen| seen.depth_m).collect();
        assert_eq!(got.len(), want.len(), "{line}: {got:?}");
        assert!(got.iter().zip(want).all(|(got, want)| (got - want).abs() < 1e-9), "{line}: {got:?}");
    }

    #[test]
    fn lines_about_the_disk() {
        reads("Secchi: 3.2 m", &[3.2]);
        reads("Secchi depth 3,2 m", &[3.2]);
        reads("Secchi disk (m) 3.4 3.0", &[3.4, 3.0]);
        reads("Secchi (cm): 320", &[3.2]);
        reads("Disco de Secchi: desaparece a 3,4 m, reaparece a 3,0 m", &[3.4, 3.0]);
        reads("Secchi 3.4 / 3.0 m", &[3.4, 3.0]);
        reads("Secchi 3/7: 3.2 m", &[3.2]);
        reads("Secchi 3/7/24 3.2 m", &[3.2]);
        reads("Secchi at 10:30: 3.2", &[3.2]);
        reads("Secchi, shady side: 3.2 m, wind 4", &[3.2]);
        reads("Secchi 3.4 3.0 mean 3.2", &[3.4, 3.0]);
        reads("Secchi 2.5 Max depth 9", &[2.5]);
        reads("Secchi: not seen", &[]);
        reads("Secchi 10 ft", &[3.048]);
    }

    #[test]
    fn cells_of_a_line_are_joined() {
        let line = |cells: &[&str]| {
            let cells: Vec<std::borrow::Cow<'_, str>> = cells.iter().map(|cell| (*cell).into()).collect();
            line_about_the_disk(&cells)
        };
        assert_eq!(line(&["Secchi: 3", "2 m"]).as_deref(), Some("Secchi: 3,2 m"));
        assert_eq!(line(&["Secchi", "3.4", "3.0", ""]).as_deref(), Some("Secchi 3.4 3.0"));
        assert_eq!(line(&["Quillet Pond", "Secchi 2", ""]).as_deref(), Some("Secchi 2"));
        assert_eq!(line(&["Quillet Pond"]), None);
    }

    #[test]
    fn two_numbers_far_apart_are_no_pair() {
        let seen = |depth_m| Seen { written: String::new(), depth_m };
        assert!(are_a_pair(&seen(3.4), &seen(3.0)));
        assert!(are_a_pair(&seen(2.0), &seen(4.0)));
        assert!(!are_a_pair(&seen(3.0), &seen(7.0)));
        assert!(believable(80.0) && !believable(80.1) && !believable(0.0));
    }
}
