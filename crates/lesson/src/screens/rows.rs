//! The log's table, each row at its depth; and the readings as the cursor walks them.

use super::{MOST_ROWS, Sight};
use crate::numbers::{WithNum, is_whole, mark, reading_decimals, rounded};
use crate::view::{LogCell, LogRow, Num, ReadingView};
use layercast_core::{Leg, Level, Message};
use layercast_exchange::document::{CastDoc, Entry, LegDoc, SwitchDoc, Unit, corrected_marks};
use layercast_exchange::number::quantity;
use std::collections::BTreeMap;

/// Depths closer than this are one depth: the unit of [`Key::At`], per metre.
const KEYS_PER_M: f64 = 1e6;

/// Where a row stands: at a depth, or behind the row of the reading before it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
struct Key {
    /// Depth in millionths of a metre.
    at: i64,
    /// 0 for rows at a depth; for rows without one, their line or place in the document.
    without: u64,
}

/// Readings of one row's depth, by way.
#[derive(Default)]
struct AtDepth {
    depth_m: f64,
    depth_text: Option<String>,
    down: Vec<usize>,
    up: Vec<usize>,
}

/// The rows of the table.
pub struct Rows {
    /// The rows, at most [`MOST_ROWS`].
    pub rows: Vec<LogRow>,
    /// The first of them, counted from 0 over all rows.
    pub first: usize,
    /// How many there are before and behind them.
    pub more: usize,
    /// One temperature column.
    pub one_column: bool,
}

/// One temperature column: the table has one series, whichever way.
pub fn is_one_column(cast: &CastDoc) -> bool {
    let mut legs = cast.entries.iter().map(|entry| entry.leg);
    let from_table = cast.entries.iter().any(|entry| entry.line.is_some());
    from_table && legs.next().is_some_and(|first| legs.all(|leg| leg == first))
}

/// The log's table. `doubt_of`: which doubt a reading's cell carries.
pub fn table(sight: &Sight, doubt_of: &BTreeMap<usize, usize>) -> Rows {
    let cast = &sight.notebook.cast;
    let one_column = is_one_column(cast);
    let at_depths = gather(sight);
    let corrected_m = corrected_marks_m(sight, &at_depths);
    let decimals = reading_decimals(cast.digit_c);
    let mut rows = Vec::new();
    let mut more = 0;
    let all: usize = at_depths.values().map(|at| at.down.len().max(at.up.len()).max(1)).sum();
    // Where a row too far is asked for, the last ones are listed.
    let first = sight.first_row.min(all.saturating_sub(MOST_ROWS));
    for at in at_depths.values() {
        for i in 0..at.down.len().max(at.up.len()).max(1) {
            if more < first || rows.len() >= MOST_ROWS {
                more += 1;
                continue;
            }
            let (down, up) = (at.down.get(i).copied(), at.up.get(i).copied());
            let cell = |entry: Option<usize>, leg: LegDoc| cell(cast, doubt_of, entry, leg, decimals);
            let only = if one_column { cast.entries.first().map(|entry| entry.leg) } else { None };
            let apart = match (used(sight, down), used(sight, up)) {
                (Some(down), Some(up)) => Some(Num { value: rounded(down - up, decimals), decimals }),
                _ => None,
            };
            let corrected_m = corrected_m.get(&key_at(at.depth_m)).copied().unwrap_or(at.depth_m);
            let is_other = at.depth_text.is_none() && (corrected_m - at.depth_m).abs() > 1e-9;
            rows.push(LogRow {
                depth: mark(at.depth_m),
                at_m: corrected_m.max(0.0),
                corrected: is_other.then(|| mark(rounded(corrected_m, 2))),
                depth_text: at.depth_text.clone(),
                whole: at.depth_text.is_none() && is_whole(at.depth_m),
                entries: down.into_iter().chain(up).collect(),
                down: cell(down, only.unwrap_or(LegDoc::Down)),
                up: (!one_column).then(|| cell(up, LegDoc::Up)),
                apart: apart.filter(|_| !one_column),
            });
        }
    }
    Rows { rows, first, more, one_column }
}

/// Readings by depth, and the marks of a typed table.
fn gather(sight: &Sight) -> BTreeMap<Key, AtDepth> {
    let cast = &sight.notebook.cast;
    let one_column = is_one_column(cast);
    let mut at_depths: BTreeMap<Key, AtDepth> = BTreeMap::new();
    if cast.entries.iter().all(|entry| entry.line.is_none()) {
        for i in 0..sight.notebook.mark_count {
            let depth_m = f64::from(i) * sight.notebook.mark_step_m;
            at_depths.entry(key_at(depth_m)).or_default().depth_m = depth_m;
        }
    }
    let mut before_m = 0.0;
    for (i, entry) in cast.entries.iter().enumerate() {
        let depth_m = entry.depth.current().filter(|depth_m| depth_m.is_finite());
        let key = match depth_m {
            Some(depth_m) => key_at(depth_m),
            None => Key { at: key_at(before_m).at, without: 1 + entry.line.map_or(i as u64, u64::from) },
        };
        let at = at_depths.entry(key).or_default();
        at.depth_m = depth_m.unwrap_or(before_m);
        at.depth_text = depth_m.is_none().then(|| entry.depth.current_text().to_owned());
        if entry.leg == LegDoc::Up && !one_column {
            at.up.push(i)
        } else {
            at.down.push(i)
        }
        before_m = at.depth_m;
    }
    at_depths
}

/// Where the marks of the rows stand once corrected, metres; empty without corrections.
fn corrected_marks_m(sight: &Sight, at_depths: &BTreeMap<Key, AtDepth>) -> BTreeMap<Key, f64> {
    if sight.notebook.cast.corrections.is_empty() {
        return BTreeMap::new();
    }
    let marks_m: Vec<f64> = at_depths.values().map(|at| at.depth_m).collect();
    let corrected_m = corrected_marks(&sight.notebook.cast, &marks_m);
    marks_m.iter().map(|depth_m| key_at(*depth_m)).zip(corrected_m).collect()
}

fn key_at(depth_m: f64) -> Key {
    // A cast from float to integer keeps within the integer's range.
    Key { at: (depth_m * KEYS_PER_M).round() as i64, without: 0 }
}

/// The temperature of a reading that the profile uses.
fn used(sight: &Sight, entry: Option<usize>) -> Option<f64> {
    let entry = entry?;
    sight.context.analysis.checked.get(entry).filter(|checked| checked.used)?;
    sight.prepared.cast.readings.get(entry)?.temp_c
}

fn cell(
    cast: &CastDoc,
    doubt_of: &BTreeMap<usize, usize>,
    index: Option<usize>,
    leg: LegDoc,
    decimals: u8,
) -> LogCell {
    let entry = index.and_then(|index| cast.entries.get(index));
    let num = entry.and_then(|entry| {
        let value = entry.temp.current()?;
        if cast.temps_in == Some(Unit::F) {
            // In the unit of the head of the table: what is typed is read so too.
            let temp_f = Unit::F.from_m_or_c(value);
            let decimals = written_decimals(entry.temp.current_text(), temp_f).unwrap_or(decimals);
            return Some(Num { value: rounded(temp_f, decimals), decimals });
        }
        Some(Num { value, decimals: written_decimals(entry.temp.current_text(), value).unwrap_or(decimals) })
    });
    LogCell {
        entry: index,
        leg: entry.map_or(leg, |entry| entry.leg),
        num,
        text: entry.map(cell_text).unwrap_or_default(),
        doubt: index.and_then(|index| doubt_of.get(&index).copied()),
        out: entry.is_some_and(|entry| entry.switch == SwitchDoc::Off),
    }
}

/// Decimals of a number that stands there as it was written, not converted from another unit: "177" is not 177.0.
fn written_decimals(text: &str, value: f64) -> Option<u8> {
    let written = quantity(text).filter(|written| written.to.is_none())?;
    let is_same = (written.value - value).abs() < 1e-9 * (1.0 + value.abs());
    is_same.then_some(written.decimals.min(6))
}

/// The text of a cell: as typed; of a table's cell only where it has no value, since it stands in the table's own unit.
fn cell_text(entry: &Entry) -> String {
    let as_read = entry.line.is_some() && entry.temp.settled.is_none() && entry.temp.value.is_some();
    if as_read { String::new() } else { entry.temp.current_text().to_owned() }
}

/// The used readings as the cursor walks them, at most [`MOST_ROWS`].
pub fn cursor(sight: &Sight) -> Vec<ReadingView> {
    let levels = &sight.context.analysis.profile;
    let decimals = reading_decimals(sight.notebook.cast.digit_c);
    let view = |i: usize| {
        let reading = sight.prepared.cast.readings.get(i)?;
        // The level at this depth: depths within a millionth of a metre are one.
        let below = levels.partition_point(|level| level.depth_m <= reading.depth_m + 1.0 / KEYS_PER_M);
        let row = below.saturating_sub(1);
        let said = spoken(levels.get(row)?, reading.leg, reading.temp_c?, decimals);
        Some(ReadingView { said: said.into(), row })
    };
    sight.prepared.walk().into_iter().take(MOST_ROWS).filter_map(view).collect()
}

/// "At 5.0 m 13.6 °C going down, 13.4 °C coming up".
fn spoken(level: &Level, leg: Leg, temp_c: f64, decimals: u8) -> Message {
    match (level.down_c, level.up_c, leg) {
        (Some(down_c), Some(up_c), _) => Message::new("profile-reading-both")
            .depth("depth", level.depth_m)
            .number("down", down_c, decimals)
            .number("up", up_c, decimals),
        (_, _, Leg::Down) => one(Message::new("profile-reading-down"), level, temp_c, decimals),
        (_, _, Leg::Up) => one(Message::new("profile-reading-up"), level, temp_c, decimals),
        (_, _, Leg::Unknown) => one(Message::new("profile-reading-one"), level, temp_c, decimals),
    }
}

fn one(message: Message, level: &Level, temp_c: f64, decimals: u8) -> Message {
    message.depth("depth", level.depth_m).number("temp", temp_c, decimals)
}
