//! What the reader says: where, what was written, what was taken for granted, what to do. Words live in `read.ftl`.

use super::build::Seen;
use super::columns::Roles;
use super::depths::{Shape, usual_step};
use super::interpret::{DepthColumn, Table};
use super::scale::{Scale, looks_like_metres};
use super::{MAX_BYTES, MAX_COLUMNS, RowKind};
use crate::document::{CellDoubt, DoubtedCell, Entry, LegChoice, LegDoc, Role, Unit};
use layercast_core::Message;
use layercast_core::order::sort_numbers;
use std::collections::BTreeSet;

pub(super) use super::ask::{
    commas, second_series, which_decimal, which_depth, which_depth_unit, which_temp_unit, which_temps,
};

/// Lines that are named one by one; more are counted.
pub(super) const LISTED_LINES: usize = 6;
/// Longest cell that is shown or kept, signs.
const LONGEST_CELL: usize = 300;

/// A cell as it is shown and kept: at most 300 signs.
pub(super) fn clip(text: &str) -> String {
    match text.char_indices().nth(LONGEST_CELL) {
        Some((end, _)) => format!("{}…", text.get(..end).unwrap_or(text)),
        None => text.to_owned(),
    }
}

/// A piece of text short enough for a sentence.
pub(super) fn snip(text: &str) -> String {
    let text = text.split_whitespace().collect::<Vec<_>>().join(" ");
    match text.char_indices().nth(60) {
        Some((end, _)) => format!("{}…", text.get(..end).unwrap_or(&text)),
        None => text,
    }
}

pub(super) fn too_large(bytes: usize) -> Message {
    Message::new("read-error-too-large")
        .count("size", bytes.div_ceil(1_000_000))
        .count("limit", MAX_BYTES / 1_000_000)
}

pub(super) fn too_many_columns(columns: usize) -> Message {
    Message::new("read-error-too-many-columns").count("columns", columns).count("limit", MAX_COLUMNS)
}

pub(super) fn no_table(line: u32, written: &str) -> Message {
    Message::new("read-error-no-table").text("line", line.to_string()).text("written", snip(written))
}

pub(super) fn tangled_commas(line: u32, written: &str) -> Message {
    Message::new("read-error-commas").text("line", line.to_string()).text("written", snip(written))
}

pub(super) fn foreign_unit(column: usize, head: &str) -> Message {
    Message::new("read-error-unit").count("column", column + 1).text("written", snip(head))
}

/// "in metres", "in °C", "in a unit that is not written".
pub(super) fn in_unit(unit: Option<Unit>) -> Message {
    match unit {
        Some(Unit::M) => Message::new("read-in-m"),
        Some(Unit::Cm) => Message::new("read-in-cm"),
        Some(Unit::Ft) => Message::new("read-in-ft"),
        Some(Unit::C) => Message::new("read-in-c"),
        Some(Unit::F) => Message::new("read-in-f"),
        None => Message::new("read-in-open"),
    }
}

/// "Read 20 rows: depth in metres, going down and coming up in °C."
pub(super) fn understood(
    table: &Table<'_>,
    found: &Roles,
    turns: bool,
    depth: Scale,
    temp: Scale,
) -> Message {
    let has = |role: Role| found.roles.contains(&role);
    let temps = match (has(Role::Down), has(Role::Up), has(Role::One)) {
        (true, true, _) => Message::new("read-part-both"),
        (true, false, false) => Message::new("read-part-down"),
        (false, true, false) => Message::new("read-part-up"),
        _ if has(Role::Leg) => Message::new("read-part-way-column"),
        _ if !table.rows.blocks.is_empty() => Message::new("read-part-blocks"),
        _ if turns => Message::new("read-part-turn"),
        _ => Message::new("read-part-one"),
    };
    let written = |scale: Scale| match scale {
        Scale::Doubtful(unit) => Some(unit),
        other => other.unit(),
    };
    Message::new("read-understood")
        .count("rows", table.rows.readings.len())
        .message("depth", in_unit(written(depth)))
        .message("temps", temps.message("in", in_unit(written(temp))))
}

/// Roles that were not written at the columns.
pub(super) fn how_columns_were_told(table: &Table<'_>, found: &Roles) -> Vec<Message> {
    let mut messages = Vec::new();
    let names: Vec<usize> = found.guessed.clone();
    let depth = found.roles.iter().position(|role| *role == Role::Depth);
    if let Some(depth) = depth.filter(|depth| names.contains(depth)) {
        messages.push(Message::new("read-notice-depth-column").count("column", depth + 1));
    }
    if let Some((down, up)) = found.by_order {
        messages.push(Message::new("read-notice-by-order").count("down", down + 1).count("up", up + 1));
    } else if let Some(temp) = names.iter().find(|at| found.roles.get(**at) == Some(&Role::One)) {
        messages.push(Message::new("read-notice-temp-column").count("column", temp + 1));
    }
    if let Some((dropped, kept)) = found.twin {
        messages.push(Message::new("read-notice-twin").count("dropped", dropped + 1).count("kept", kept + 1));
    }
    if let Some(line) = table.grid.open_quote_line {
        messages.push(Message::new("read-notice-quote").text("line", line.to_string()));
    }
    messages
}

/// Columns of oxygen: those that go along with the readings, and those in per cent, which do not.
pub(super) fn oxygen_columns(table: &Table<'_>, found: &Roles) -> Vec<Message> {
    let of_role = |at: &usize| found.roles.get(*at) == Some(&Role::Oxygen);
    let used: Vec<usize> = (0..found.roles.len()).filter(of_role).collect();
    let mut messages = match used.as_slice() {
        [] => Vec::new(),
        [one] => vec![Message::new("read-notice-oxygen").count("column", one + 1)],
        [first, second, ..] => {
            vec![Message::new("read-notice-oxygen-two").count("first", first + 1).count("second", second + 1)]
        }
    };
    for (at, column) in table.columns.iter().enumerate() {
        let is_not_used = found.roles.get(at) == Some(&Role::NotUsed) && !column.head.other;
        if is_not_used && column.numbers > 0 && column.is_percent() {
            messages.push(Message::new("read-notice-oxygen-percent").count("column", at + 1));
        }
    }
    messages
}

/// Columns of salt, which no density takes in.
pub(super) fn salt_columns(table: &Table<'_>, found: &Roles) -> Vec<Message> {
    let columns = table.columns.iter().enumerate();
    columns
        .filter(|(at, column)| {
            column.head.salt && column.numbers > 0 && found.roles.get(*at) == Some(&Role::NotUsed)
        })
        .map(|(at, _)| Message::new("read-notice-salt").count("column", at + 1))
        .collect()
}

/// Lowest and highest of the finite numbers.
pub(super) fn range(values: impl IntoIterator<Item = f64>) -> Option<(f64, f64)> {
    values.into_iter().filter(|value| value.is_finite()).fold(None, |range, value| match range {
        None => Some((value, value)),
        Some((low, high)) => Some((low.min(value), high.max(value))),
    })
}

/// Decimals that show a number as it was most likely written: none, one or two.
pub(super) fn decimals_of(values: &[f64]) -> u8 {
    let needs = |decimals: i32| {
        let power = if decimals == 0 { 1.0 } else { 10.0 };
        values
            .iter()
            .filter(|v| v.is_finite())
            .any(|value| (value * power - (value * power).round()).abs() > 1e-6)
    };
    if !needs(0) {
        0
    } else if !needs(1) {
        1
    } else {
        2
    }
}

/// Units that are not written but taken for granted, with the reason.
pub(super) fn units_taken(depth: Scale, depths: &[DepthColumn], temp: Scale, temps: &[f64]) -> Vec<Message> {
    let mut messages = Vec::new();
    if let (Scale::Taken(_), Some(column)) = (depth, depths.first()) {
        let wild = super::depths::wild(&column.values);
        let tame: Vec<f64> =
            column.values.iter().zip(wild).filter(|(_, wild)| !wild).map(|(value, _)| *value).collect();
        if let (Some((_, deepest)), Some(step)) = (range(tame.iter().copied()), usual_step(&tame)) {
            messages.push(
                Message::new("read-notice-metres")
                    .number("deepest", deepest, decimals_of(&[deepest]))
                    .number("step", step, decimals_of(&[step])),
            );
        }
    }
    if let Scale::Taken(_) = temp {
        let fits = |value: &f64| (-0.5..=32.0).contains(value);
        let outside = temps.iter().filter(|value| value.is_finite() && !fits(value)).count();
        if let Some((low, high)) = range(temps.iter().copied().filter(fits)) {
            let decimals = decimals_of(temps).min(1);
            let message = if outside == 0 {
                Message::new("read-notice-celsius")
            } else {
                Message::new("read-notice-celsius-most")
            };
            messages.push(message.number("low", low, decimals).number("high", high, decimals));
        }
    }
    messages
}

/// What the order of the depths says about the way, when no word does.
pub(super) fn way_of_series(table: &Table<'_>, shape: Shape, chosen: Option<LegChoice>) -> Option<Message> {
    let line = |ordinal: usize| table.line_of_reading(ordinal).to_string();
    match (chosen, shape) {
        (Some(LegChoice::Down | LegChoice::Up | LegChoice::DownThenUp), _) => None,
        (_, Shape::OneWay) => Some(Message::new("read-notice-one-way")),
        (Some(LegChoice::Open), _) => Some(Message::new("read-notice-way-open")),
        (None, Shape::ThereAndBack(at)) => Some(Message::new("read-notice-turn").text("line", line(at))),
        (None, Shape::BackAndThere(at)) => Some(Message::new("read-notice-up-first").text("line", line(at))),
        (None, Shape::Tangled | Shape::Twice(_)) => Some(Message::new("read-notice-tangled")),
    }
}

/// "This gives 20 marks from 0.0 to 9.5 m, 40 readings."
pub(super) fn gives(entries: &[Entry], doubts: &[CellDoubt]) -> Option<Message> {
    let doubted: BTreeSet<usize> = doubts
        .iter()
        .filter(|doubt| doubt.cell == DoubtedCell::Depth)
        .flat_map(|doubt| doubt.entries.iter().copied())
        .collect();
    let clear = entries.iter().enumerate().filter(|(at, _)| !doubted.contains(at)).map(|(_, entry)| entry);
    let with_temp = clear.filter(|entry| entry.temp.value.is_some());
    let mut depths: Vec<f64> = with_temp.clone().filter_map(|entry| entry.depth.value).collect();
    sort_numbers(&mut depths);
    depths.dedup_by(|a, b| (*a - *b).abs() < 1e-6);
    let (from, to) = (*depths.first()?, *depths.last()?);
    let decimals = decimals_of(&[from, to]).max(1);
    Some(
        Message::new("read-gives")
            .count("marks", depths.len())
            .count("readings", with_temp.count())
            .number("from", from, decimals)
            .number("to", to, decimals),
    )
}

/// What the first answer of a question would give.
pub(super) fn gives_if(answer: &Message, gives: &Message) -> Message {
    let mut message = Message::new("read-gives-if").message("answer", answer.clone());
    message.args.extend(gives.args.iter().filter(|(name, _)| *name != "answer").cloned());
    message
}

/// A notice of lines, where there are any.
pub(super) fn seen(message: Message, seen: &Seen) -> Option<Message> {
    if seen.count == 0 {
        return None;
    }
    let listed: Vec<String> = seen.lines.iter().take(LISTED_LINES).map(u32::to_string).collect();
    let more = if seen.lines.len() > LISTED_LINES { " …" } else { "" };
    Some(
        message
            .count("count", seen.count)
            .count("listed", seen.lines.len())
            .text("lines", format!("{}{more}", listed.join(", ")))
            .text("written", snip(&seen.written)),
    )
}

/// Rows among the readings that hold none.
pub(super) fn rows_left_out(table: &Table<'_>) -> Vec<Message> {
    let rows_of = |rows: &mut dyn Iterator<Item = usize>| {
        let mut found = Seen::default();
        for row in rows {
            let written = table
                .grid
                .row(row)
                .iter()
                .filter(|cell| !cell.is_empty())
                .map(|c| c.as_ref())
                .collect::<Vec<_>>();
            if found.count == 0 {
                found.written = clip(&written.join(" "));
            }
            found.count += 1;
            if found.lines.len() <= LISTED_LINES {
                found.lines.push(table.grid.line(row));
            }
        }
        found
    };
    let totals =
        table.rows.kinds.iter().enumerate().filter(|(_, kind)| **kind == RowKind::Total).map(|(row, _)| row);
    let totals = rows_of(&mut totals.into_iter());
    // Where heads tell the way of what follows, they are not passed over.
    let repeated = if table.rows.blocks.is_empty() { table.rows.repeated.as_slice() } else { &[] };
    let repeated = rows_of(&mut repeated.iter().copied());
    let notes = rows_of(&mut table.rows.notes.iter().copied());
    [
        seen(Message::new("read-notice-totals"), &totals),
        seen(Message::new("read-notice-heads-again"), &repeated),
        seen(Message::new("read-notice-text-rows"), &notes),
    ]
    .into_iter()
    .flatten()
    .collect()
}

/// Too few readings for a profile: said, not refused.
pub(super) fn too_little(entries: &[Entry]) -> Option<Message> {
    let with_temp = || entries.iter().filter(|entry| entry.temp.value.is_some());
    let readings = with_temp().count();
    let depths = || with_temp().filter_map(|entry| entry.depth.value);
    let (low, high) = match range(depths()) {
        Some(range) if readings > 0 => range,
        _ => return Some(Message::new("read-notice-no-readings")),
    };
    if readings == 1 {
        return Some(Message::new("read-notice-one-reading"));
    }
    let one_depth = high - low <= 1e-9;
    one_depth.then(|| {
        Message::new("read-notice-one-depth").count("readings", readings).number(
            "depth",
            low,
            decimals_of(&[low]).max(1),
        )
    })
}

/// One depth stands twice where the depth after it is missing: most likely a slip, but both readings are used.
pub(super) fn depth_twice(entries: &[Entry]) -> Option<Message> {
    let series = |leg: LegDoc| {
        let of_leg = entries.iter().filter(move |entry| entry.leg == leg);
        of_leg.filter_map(|entry| Some((entry.depth.value?, entry.line?)))
    };
    [LegDoc::Down, LegDoc::Unknown, LegDoc::Up].into_iter().find_map(|leg| {
        let rows: Vec<(f64, u32)> = series(leg).collect();
        let depths: Vec<f64> = rows.iter().map(|row| row.0).collect();
        let step = usual_step(&depths)?;
        let next = rows.iter().zip(rows.iter().skip(1));
        let mut twice = next.enumerate().filter(|(_, (a, b))| (a.0 - b.0).abs() < 1e-9);
        let (at, (first, second)) = twice.next()?;
        // Repeats elsewhere too: they are meant.
        if twice.next().is_some() {
            return None;
        }
        let gap = |other: Option<&f64>| {
            other.is_some_and(|other| ((other - first.0).abs() - 2.0 * step).abs() < 1e-6)
        };
        let before = at.checked_sub(1).and_then(|before| depths.get(before));
        (gap(depths.get(at + 2)) || gap(before)).then(|| {
            Message::new("read-notice-depth-twice")
                .number("depth", first.0, decimals_of(&[first.0]).max(1))
                .text("first", first.1.to_string())
                .text("second", second.1.to_string())
        })
    })
}

/// The likeliest unit of a depth column that nobody has named; `None` when it must be asked.
pub(super) fn likely_depth_unit(values: &[f64]) -> Option<Unit> {
    if looks_like_metres(values) {
        return Some(Unit::M);
    }
    let hundredths: Vec<f64> = values.iter().map(|value| value / 100.0).collect();
    looks_like_metres(&hundredths).then_some(Unit::Cm)
}
