//! What the reader says of single cells: each by its depth and column, what was written there, and why it is doubted.

use super::build::{Notes, Seen};
use super::say::{decimals_of, seen, snip};
use crate::document::{CellDoubt, DoubtedCell, Entry, LegDoc, MOST_OXYGEN_MG_L};
use layercast_core::Message;
use layercast_core::cast::gross_range::LAKE;

/// Cells that are named one by one; more are counted.
pub(super) const LISTED_CELLS: usize = 4;
/// Doubted cells that are told one by one; more are counted.
pub(super) const LISTED_DOUBTS: usize = 8;

/// A cell by its depth and column; a depth cell, and one without a depth, by its line, in the words of `by_line`.
fn place(entry: &Entry, cell: DoubtedCell, by_line: &ByLine) -> Message {
    let line = entry.line.unwrap_or(0).to_string();
    let message = match (cell, entry.depth.value, entry.leg) {
        (DoubtedCell::Temp, Some(depth_m), leg) => {
            let message = match leg {
                LegDoc::Down => Message::new("read-place-down"),
                LegDoc::Up => Message::new("read-place-up"),
                LegDoc::Unknown => Message::new("read-place-one"),
            };
            message.number("depth", depth_m, decimals_of(&[depth_m]).max(1))
        }
        (DoubtedCell::Depth, ..) => Message::new(by_line.depth),
        (_, None, LegDoc::Down) => Message::new(by_line.down),
        (_, None, LegDoc::Up) => Message::new(by_line.up),
        (_, None, LegDoc::Unknown) => Message::new(by_line.one),
    };
    message.text("line", line)
}

/// Words for a cell without a depth.
struct ByLine {
    depth: &'static str,
    down: &'static str,
    up: &'static str,
    one: &'static str,
}

/// "the depth in line 4", inside a sentence.
const WITHIN: ByLine = ByLine {
    depth: "read-place-line-depth",
    down: "read-place-line-down",
    up: "read-place-line-up",
    one: "read-place-line-one",
};

/// "Line 4, depth", at the beginning of one.
const AT_START: ByLine = ByLine {
    depth: "read-at-line-depth",
    down: "read-at-line-down",
    up: "read-at-line-up",
    one: "read-at-line-one",
};

/// "3.5 m, coming up (line 8); 4.0 m, coming up (line 9)".
fn places(cells: &[(usize, DoubtedCell)], entries: &[Entry]) -> Option<Message> {
    let named: Vec<Message> = cells
        .iter()
        .take(LISTED_CELLS)
        .filter_map(|(at, cell)| entries.get(*at).map(|entry| place(entry, *cell, &WITHIN)))
        .collect();
    let (last, before) = named.split_last()?;
    let last = match cells.len() > LISTED_CELLS {
        true => Message::new("read-places-cut").message("first", last.clone()),
        false => last.clone(),
    };
    let join = |rest: Message, first: &Message| {
        Message::new("read-places-more").message("first", first.clone()).message("rest", rest)
    };
    Some(before.iter().rev().fold(last, join))
}

/// Notices about cells.
pub(super) fn notes(notes: &Notes, entries: &[Entry]) -> Vec<Message> {
    let cells = |message: Message, seen: &Seen| {
        let places = places(&seen.cells, entries)?;
        Some(
            message.count("count", seen.count).message("places", places).text("written", snip(&seen.written)),
        )
    };
    [
        cells(Message::new("read-notice-empty"), &notes.empty),
        cells(Message::new("read-notice-missing"), &notes.said),
        cells(Message::new("read-notice-sheet-error"), &notes.sheet_error),
        cells(Message::new("read-notice-code"), &notes.code),
        cells(Message::new("read-notice-other-sign"), &notes.other_sign),
        cells(Message::new("read-notice-own-unit"), &notes.own_unit),
        cells(Message::new("read-notice-outside"), &notes.outside)
            .map(|message| message.number("low", LAKE.suspect_c.0, 0).number("high", LAKE.suspect_c.1, 0)),
        seen(Message::new("read-notice-no-way"), &notes.no_way),
        seen(Message::new("read-notice-no-oxygen"), &notes.no_oxygen)
            .map(|message| message.number("most", MOST_OXYGEN_MG_L, 0)),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// Doubted cells with their places, and how many more there are.
pub(super) fn doubts(doubts: &[CellDoubt], entries: &[Entry]) -> Vec<Message> {
    let mut messages: Vec<Message> =
        doubts.iter().take(LISTED_DOUBTS).filter_map(|doubt| doubt_at(doubt, entries)).collect();
    let more = doubts.len().saturating_sub(LISTED_DOUBTS);
    if more > 0 {
        messages.push(Message::new("read-notice-more-doubts").count("count", more));
    }
    messages
}

fn doubt_at(doubt: &CellDoubt, entries: &[Entry]) -> Option<Message> {
    let entry = entries.get(*doubt.entries.first()?)?;
    let message = match doubt.proposals.first() {
        Some(proposal) => {
            let message = Message::new("read-doubt-meant");
            match proposal.text.parse() {
                Ok(written) => message.number("meant", written, decimals_of_text(&proposal.text)),
                Err(_) => message.text("meant", &proposal.text),
            }
        }
        None => Message::new("read-doubt"),
    };
    Some(message.message("place", place(entry, doubt.cell, &AT_START)).message("why", doubt.message()))
}

/// Digits after the decimal point of a number as Rust writes it.
fn decimals_of_text(number: &str) -> u8 {
    number.split_once('.').map_or(0, |(_, digits)| u8::try_from(digits.len()).unwrap_or(u8::MAX))
}
