//! Cells that cannot be right as they are written, why, and what was probably meant. A person decides; nothing is changed.

use super::{CastDoc, Cell, Entry, LegDoc, SwitchDoc, Unit};
use crate::number::{Number, cell_number};
use crate::read::depths::{out_of_order, usual_step};
use crate::read::words::missing;
pub use crate::slip::Slip;
use crate::slip::slip;
use crate::units::UnitWord;
use layercast_core::Message;
use layercast_core::order::sort_by;
use std::collections::BTreeMap;

/// A doubted cell.
#[derive(Clone, Debug, PartialEq)]
pub struct CellDoubt {
    /// The readings it belongs to: one for a temperature, all of the row for a depth. Never empty.
    pub entries: Vec<usize>,
    /// Which cell.
    pub cell: DoubtedCell,
    /// What is written there (a person's own text, if there is one).
    pub written: String,
    /// Why it is doubted.
    pub why: Why,
    /// What was probably meant, likeliest first; often none.
    pub proposals: Vec<Proposal>,
    /// Line of the table, from 1; `None` when typed.
    pub line: Option<u32>,
}

/// Which cell of a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum DoubtedCell {
    /// The depth.
    Depth,
    /// The temperature.
    Temp,
}

/// Why a cell is doubted.
#[derive(Clone, Debug, PartialEq)]
pub enum Why {
    /// It cannot be read as a number.
    Unreadable(Slip),
    /// A temperature stands here, but no depth.
    NoDepth,
    /// A depth with a minus among depths without.
    AboveSurface,
    /// Deeper than any lake.
    TooDeep,
    /// The depths around it run evenly and this one does not fit in, metres (`None` at an end of the series).
    OutOfOrder {
        /// Depth before it.
        before_m: Option<f64>,
        /// Depth after it.
        after_m: Option<f64>,
    },
}

/// A value that was probably meant.
#[derive(Clone, Debug, PartialEq)]
pub struct Proposal {
    /// As it would be written in the table's own unit: the text to settle the cell with.
    pub text: String,
    /// In m or °C.
    pub value: f64,
    /// Digits after the decimal sign, for showing it.
    pub decimals: u8,
}

/// Deeper than any lake: the deepest has some 1640 m (general knowledge, no source).
const DEEPEST_M: f64 = 2000.0;

/// Every doubted cell of a cast that no person has decided about, in the order of the entries.
///
/// Temperatures that can be read are not judged here: that is the analysis's work.
pub fn cell_doubts(doc: &CastDoc) -> Vec<CellDoubt> {
    cell_doubts_in(&doc.entries)
}

/// As [`cell_doubts`], for the readings alone.
pub(crate) fn cell_doubts_in(entries: &[Entry]) -> Vec<CellDoubt> {
    let unit = written_units(entries);
    let mut found = Found::default();
    for (at, entry) in entries.iter().enumerate() {
        if entry.switch != SwitchDoc::Auto {
            continue;
        }
        if let Some((why, proposals)) = doubted_depth(entry, &unit) {
            found.add_depth(entries, at, why, proposals);
        }
        if entry.temp.current().is_none() && missing(entry.temp.current_text()).is_none() {
            let (slip, text) = slip(entry.temp.current_text());
            let proposal = text.and_then(|text| proposal(text, &unit, DoubtedCell::Temp));
            found.doubts.push(CellDoubt {
                entries: vec![at],
                cell: DoubtedCell::Temp,
                written: entry.temp.current_text().to_owned(),
                why: Why::Unreadable(slip),
                proposals: proposal.into_iter().collect(),
                line: entry.line,
            });
        }
    }
    for leg in [LegDoc::Down, LegDoc::Up, LegDoc::Unknown] {
        add_out_of_order(&mut found, entries, leg, &unit);
    }
    let mut doubts = found.doubts;
    let key = |doubt: &CellDoubt| (doubt.entries.first().copied(), doubt.cell == DoubtedCell::Temp);
    sort_by(&mut doubts, |a, b| key(a).cmp(&key(b)));
    doubts
}

/// A depth that is doubted for itself alone. Without a temperature beside it nothing hangs on it.
fn doubted_depth(entry: &Entry, unit: &WrittenUnits) -> Option<(Why, Vec<Proposal>)> {
    if !has_temp(entry) {
        return None;
    }
    match entry.depth.current() {
        None if missing(entry.depth.current_text()).is_some() => Some((Why::NoDepth, Vec::new())),
        None => {
            let (slip, text) = slip(entry.depth.current_text());
            let proposal = text.and_then(|text| proposal(text, unit, DoubtedCell::Depth));
            Some((Why::Unreadable(slip), proposal.into_iter().collect()))
        }
        Some(depth_m) if depth_m < 0.0 => {
            Some((Why::AboveSurface, proposal_m(-depth_m, unit).into_iter().collect()))
        }
        Some(depth_m) if depth_m > DEEPEST_M => Some((Why::TooDeep, Vec::new())),
        Some(_) => None,
    }
}

fn has_temp(entry: &Entry) -> bool {
    entry.temp.current().is_some() || missing(entry.temp.current_text()).is_none()
}

/// Doubts as they are found. Both legs of one row share its depth cell: one doubt for all of them.
#[derive(Default)]
struct Found {
    doubts: Vec<CellDoubt>,
    /// Depth doubts by line and text.
    depths: BTreeMap<(u32, String), usize>,
}

impl Found {
    fn add_depth(&mut self, entries: &[Entry], at: usize, why: Why, proposals: Vec<Proposal>) {
        let Some(entry) = entries.get(at) else { return };
        let written = entry.depth.current_text().to_owned();
        if let Some(line) = entry.line {
            let next = self.doubts.len();
            let shared = *self.depths.entry((line, written.clone())).or_insert(next);
            if let Some(doubt) = self.doubts.get_mut(shared) {
                if !doubt.entries.contains(&at) {
                    doubt.entries.push(at);
                }
                if doubt.proposals.is_empty() {
                    doubt.proposals = proposals;
                }
                return;
            }
        }
        let cell = DoubtedCell::Depth;
        self.doubts.push(CellDoubt { entries: vec![at], cell, written, why, proposals, line: entry.line });
    }
}

/// Depths of one leg that do not fit into its order. Typed readings may come in any order.
fn add_out_of_order(found: &mut Found, entries: &[Entry], leg: LegDoc, unit: &WrittenUnits) {
    let series: Vec<(usize, f64)> = entries
        .iter()
        .enumerate()
        .filter(|(_, entry)| entry.leg == leg && entry.line.is_some())
        .filter_map(|(at, entry)| Some((at, entry.depth.current()?)))
        .filter(|(_, depth)| *depth >= 0.0 && *depth <= f64::MAX)
        .collect();
    let depths: Vec<f64> = series.iter().map(|(_, depth)| *depth).collect();
    let odd = out_of_order(&depths);
    let is_odd = |row: &usize| odd.binary_search(row).is_ok();
    let step = usual_step(&depths).unwrap_or(0.0);
    for row in &odd {
        let Some((at, depth_m)) = series.get(*row).copied() else { continue };
        let undecided =
            entries.get(at).is_some_and(|entry| entry.switch == SwitchDoc::Auto && has_temp(entry));
        if !undecided {
            continue;
        }
        let before_m =
            (0..*row).rev().find(|other| !is_odd(other)).and_then(|other| depths.get(other)).copied();
        let after_m =
            (row + 1..depths.len()).find(|other| !is_odd(other)).and_then(|other| depths.get(other)).copied();
        let likely = likely_depths(depth_m, before_m, after_m, step);
        let proposals: Vec<Proposal> =
            likely.into_iter().filter_map(|depth_m| proposal_m(depth_m, unit)).collect();
        found.add_depth(entries, at, Why::OutOfOrder { before_m, after_m }, proposals);
    }
}

/// What a depth that does not fit was probably meant as: the point moved, two digits changed about, or the one mark
/// that is missing between its neighbours.
fn likely_depths(depth_m: f64, before_m: Option<f64>, after_m: Option<f64>, step: f64) -> Vec<f64> {
    let (low, high) = match (before_m, after_m) {
        (Some(a), Some(b)) => (a.min(b), a.max(b)),
        (Some(one), None) | (None, Some(one)) => ((one - 1.5 * step).max(0.0), one + 1.5 * step),
        (None, None) => return Vec::new(),
    };
    let fits = |depth: &f64| *depth > low + 1e-9 && *depth < high - 1e-9;
    let moved = [10.0, 100.0].iter().flat_map(|by| [depth_m / by, depth_m * by]);
    let mut likely: Vec<f64> = moved.filter(fits).collect();
    likely.extend(swapped(depth_m).into_iter().filter(fits));
    if before_m.is_some() && after_m.is_some() && (high - low - 2.0 * step).abs() <= 1e-6 {
        likely.push(low + step);
    }
    let mut distinct: Vec<f64> = Vec::new();
    for depth in likely {
        if distinct.iter().all(|other| (depth - other).abs() > 1e-6) && distinct.len() < 2 {
            distinct.push(depth);
        }
    }
    distinct
}

/// The depth with two neighbouring digits changed about, every way there is.
fn swapped(depth_m: f64) -> Vec<f64> {
    if depth_m > DEEPEST_M {
        return Vec::new();
    }
    let digits: Vec<char> = format!("{:.1}", depth_m).chars().collect();
    let numbers: Vec<usize> =
        (0..digits.len()).filter(|at| digits.get(*at).is_some_and(char::is_ascii_digit)).collect();
    let pairs = numbers.iter().zip(numbers.iter().skip(1));
    let swap = |(a, b): (&usize, &usize)| {
        let mut swapped = digits.clone();
        swapped.swap(*a, *b);
        swapped.into_iter().collect::<String>().parse().ok()
    };
    pairs.filter_map(swap).collect()
}

/// The units the cells are written in, told by comparing text and value of those that were read.
struct WrittenUnits {
    depth: Unit,
    temp: Unit,
    /// Depths are written with a minus.
    minus: bool,
}

fn written_units(entries: &[Entry]) -> WrittenUnits {
    let written = |cell: &Cell| -> Option<(Number, f64)> {
        let number = cell_number(&cell.written, None).filter(|number| number.unit.is_none())?;
        let value = cell.value.filter(|value| value.abs() > 1e-9)?;
        (number.value.abs() > 1e-9).then_some((number, value))
    };
    let fits = |unit: Unit, number: f64, value: f64| {
        (unit.to_m_or_c(number) - value).abs() <= 1e-9 * (1.0 + value.abs())
    };
    let depth = entries.iter().take(1000).find_map(|entry| {
        let (number, value) = written(&entry.depth)?;
        let unit = [Unit::M, Unit::Cm, Unit::Ft]
            .into_iter()
            .find(|unit| fits(*unit, number.value.abs(), value.abs()))?;
        Some((unit, number.value < 0.0 && value > 0.0))
    });
    let temp = entries.iter().take(1000).find_map(|entry| {
        let (number, value) = written(&entry.temp)?;
        [Unit::C, Unit::F].into_iter().find(|unit| fits(*unit, number.value, value))
    });
    let (depth, minus) = depth.unwrap_or((Unit::M, false));
    WrittenUnits { depth, temp: temp.unwrap_or(Unit::C), minus }
}

/// A proposal from text in the table's own unit.
fn proposal(text: String, unit: &WrittenUnits, cell: DoubtedCell) -> Option<Proposal> {
    let number = cell_number(&text, None)?;
    let (own, length) = match cell {
        DoubtedCell::Depth => (unit.depth, true),
        DoubtedCell::Temp => (unit.temp, false),
    };
    let own = match number.unit {
        Some(UnitWord::Known(written)) if written.is_length() == length => written,
        Some(UnitWord::Known(_) | UnitWord::Foreign) => return None,
        Some(UnitWord::Degrees) | None => own,
    };
    let value = own.to_m_or_c(number.value);
    let value = if cell == DoubtedCell::Depth && unit.minus { 0.0 - value } else { value };
    Some(Proposal { text, value, decimals: number.decimals })
}

/// A proposal from a depth in metres.
fn proposal_m(depth_m: f64, unit: &WrittenUnits) -> Option<Proposal> {
    let written = unit.depth.from_m_or_c(depth_m);
    let written = if unit.minus { 0.0 - written } else { written };
    let decimals = (0..4_u8).find(|decimals| {
        let power = (0..*decimals).fold(1.0, |power, _| power * 10.0);
        (written * power - (written * power).round()).abs() < 1e-6
    })?;
    // Depths in metres and feet are written to a tenth at least, as on the cable.
    let decimals = if unit.depth == Unit::Cm { decimals } else { decimals.max(1) };
    Some(Proposal { text: format!("{written:.*}", usize::from(decimals)), value: depth_m, decimals })
}

impl CellDoubt {
    /// What is odd about the cell, as one says it to a person: "You have 1O.5. The second sign is the letter O …".
    pub fn message(&self) -> Message {
        let with = |message: Message| message.text("written", &self.written);
        match &self.why {
            Why::Unreadable(slip) => with(slip_message(slip)),
            Why::NoDepth => Message::new("doubt-no-depth"),
            Why::AboveSurface => with(Message::new("doubt-above-surface")),
            Why::TooDeep => with(Message::new("doubt-too-deep")),
            Why::OutOfOrder { before_m, after_m } => {
                let decimals =
                    |depth: f64| if (depth * 10.0 - (depth * 10.0).round()).abs() < 1e-6 { 1 } else { 2 };
                match (before_m, after_m) {
                    (Some(before), Some(after)) => with(Message::new("doubt-out-of-order"))
                        .number("before", *before, decimals(*before))
                        .number("after", *after, decimals(*after)),
                    (Some(before), None) => with(Message::new("doubt-out-of-order-last")).number(
                        "before",
                        *before,
                        decimals(*before),
                    ),
                    (None, Some(after)) => with(Message::new("doubt-out-of-order-first")).number(
                        "after",
                        *after,
                        decimals(*after),
                    ),
                    (None, None) => with(Message::new("doubt-text")),
                }
            }
        }
    }
}

fn slip_message(slip: &Slip) -> Message {
    match slip {
        Slip::Letter { letter, place, digit } => {
            let message = match digit {
                '0' => Message::new("doubt-letter-zero"),
                '1' => Message::new("doubt-letter-one"),
                _ => Message::new("doubt-letter").text("digit", digit.to_string()),
            };
            message.text("letter", letter.to_string()).count("place", *place)
        }
        Slip::Points => Message::new("doubt-points"),
        Slip::Space => Message::new("doubt-space"),
        Slip::Sign(sign) | Slip::Unsure(sign) => Message::new("doubt-sign").text("sign", sign.to_string()),
        Slip::Date => Message::new("doubt-date"),
        Slip::Range => Message::new("doubt-range"),
        Slip::Surface => Message::new("doubt-surface"),
        Slip::Formula => Message::new("doubt-formula"),
        Slip::Text => Message::new("doubt-text"),
    }
}
