//! The readings as a tidy table: one row a reading, in the order they were written down, none left away.

use super::Told;
use super::columns::COLUMNS;
use super::csv::{Cell, Csv};
use crate::document::{Cell as DocCell, Entry, LegDoc, Origin, SwitchDoc, content_id, oxygen_mg_l};
use layercast_core::{Checked, Doubt};

/// Two values that differ by less are one.
const SAME: f64 = 1e-9;

/// The table, with its heads.
pub fn readings(told: Told) -> String {
    let mut csv = Csv::new();
    csv.row(&COLUMNS.iter().map(|column| Cell::text(column.name)).collect::<Vec<_>>());
    let cast = content_id(told.doc).chars().take(8).collect::<String>();
    for (i, entry) in told.doc.entries.iter().enumerate() {
        csv.row(&row(told, &cast, i, entry));
    }
    csv.finish()
}

fn row(told: Told, cast: &str, i: usize, entry: &Entry) -> Vec<Cell> {
    let (raw, corrected) = (told.raw.readings.get(i), told.cast.readings.get(i));
    let checked = told.analysis.checked.get(i);
    let depth_m = corrected.map(|reading| reading.depth_m).filter(|depth_m| depth_m.is_finite());
    let temp_c = corrected.and_then(|reading| reading.temp_c);
    let moved = |before: Option<f64>, after: Option<f64>| match (before, after) {
        (Some(before), Some(after)) if (before - after).abs() > SAME => Some(before),
        _ => None,
    };
    let mark_m = raw.map(|raw| raw.depth_m).filter(|mark_m| mark_m.is_finite());
    // A mark that came to stand above the water has no depth any more; one that was never used is told as it was read.
    let above_water = mark_m.is_some() && depth_m.is_none();
    let told_m = if above_water { None } else { depth_m.or(entry.depth.current()) };
    let mark_m = if above_water { mark_m } else { moved(mark_m, depth_m) };
    let read_c = moved(raw.and_then(|raw| raw.temp_c), temp_c);
    let text = |text: &str| if text.is_empty() { Cell::Empty } else { Cell::text(text) };
    vec![
        Cell::Number(i as f64 + 1.0),
        text(&told.doc.water),
        text(&told.doc.group),
        Cell::text(cast),
        Cell::text(way(entry.leg)),
        Cell::maybe(told_m),
        Cell::maybe(temp_c),
        Cell::Number(checked.map_or(2.0, |checked| f64::from(checked.flag as u8))),
        Cell::text(if checked.is_some_and(|checked| checked.used) { "true" } else { "false" }),
        text(&notes(told, entry, checked, mark_m.or(read_c).is_some(), above_water)),
        changed(&entry.temp),
        changed(&entry.depth),
        Cell::maybe(mark_m),
        Cell::maybe(read_c),
        Cell::maybe(oxygen_mg_l(told.doc, i)),
    ]
}

fn way(leg: LegDoc) -> &'static str {
    match leg {
        LegDoc::Down => "down",
        LegDoc::Up => "up",
        LegDoc::Unknown => "unknown",
    }
}

/// What stood there before a person put something else.
fn changed(cell: &DocCell) -> Cell {
    match &cell.settled {
        Some(_) if !cell.written.is_empty() => Cell::text(cell.written.as_str()),
        _ => Cell::Empty,
    }
}

fn notes(told: Told, entry: &Entry, checked: Option<&Checked>, corrected: bool, above_water: bool) -> String {
    let origin = told.doc.source.as_ref().map(|source| source.origin);
    let temp = entry.temp.settled.as_ref().map(|_| match entry.temp.written.trim().is_empty() {
        true => "temperature_added",
        false => "temperature_changed",
    });
    let doubt = checked.and_then(|checked| checked.doubt).map(|doubt| match doubt {
        Doubt::Range { .. } => "doubt_range",
        Doubt::Spike { .. } => "doubt_spike",
        Doubt::Pair { .. } => "doubt_pair",
        Doubt::Inversion { .. } => "doubt_inversion",
    });
    let notes = [
        (origin == Some(Origin::Example)).then_some("invented"),
        entry.temp.current().is_none().then_some("missing"),
        (entry.switch == SwitchDoc::Off).then_some("left_out"),
        (entry.switch == SwitchDoc::Kept).then_some("kept"),
        temp,
        entry.depth.settled.as_ref().map(|_| "depth_changed"),
        corrected.then_some("corrected"),
        above_water.then_some("above_water"),
        doubt,
    ];
    notes.into_iter().flatten().collect::<Vec<_>>().join(";")
}
