//! What the lesson asks of the rooms that read: a table's text, a cast's readings, their content id, doubted cells.

use layercast_core::{Cast, Leg, Reading, Switch};
use layercast_exchange::document::{CastDoc, Choices, LegDoc, Source, SwitchDoc};
use layercast_exchange::read::{Outcome, TableRead};

/// Reads a table's text with the choices made about it.
pub fn read(_source: &Source) -> TableRead {
    TableRead {
        outcome: Outcome::Error,
        columns: Vec::new(),
        rows: Vec::new(),
        row_count: 0,
        entries: Vec::new(),
        digit_c: 0.0,
        understood: None,
        messages: Vec::new(),
        question: None,
        gives: None,
        leg_open: false,
    }
}

/// The cast of a table that was read.
pub fn cast_doc(read: &TableRead, source: Source) -> CastDoc {
    CastDoc {
        schema: layercast_exchange::document::SCHEMA.to_owned(),
        version: layercast_exchange::document::VERSION,
        water: String::new(),
        group: String::new(),
        entries: read.entries.clone(),
        digit_c: read.digit_c,
        bed_m: None,
        source: Some(source),
    }
}

/// The readings as the science takes them: one per entry, in the same order.
pub fn cast(doc: &CastDoc) -> Cast {
    let readings = doc.entries.iter().map(|entry| Reading {
        depth_m: entry.depth.current().unwrap_or(f64::NAN),
        temp_c: entry.temp.current(),
        leg: match entry.leg {
            LegDoc::Down => Leg::Down,
            LegDoc::Up => Leg::Up,
            LegDoc::Unknown => Leg::Unknown,
        },
        switch: match entry.switch {
            SwitchDoc::Auto => Switch::Auto,
            SwitchDoc::Off => Switch::Off,
            SwitchDoc::Kept => Switch::Kept,
        },
    });
    Cast { readings: readings.collect(), digit_c: doc.digit_c, bed_m: doc.bed_m }
}

/// Content id of the readings.
pub fn content_id(_doc: &CastDoc) -> String {
    String::new()
}

/// The choices of a source, if it has one.
pub fn choices(doc: &CastDoc) -> Choices {
    doc.source.as_ref().map(|source| source.choices.clone()).unwrap_or_default()
}
