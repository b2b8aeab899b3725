//! Tables that go out: the readings, what their columns mean, the record of quality.

use crate::notebook::read;
use layercast_exchange::write::{self, Told};
use layercast_lesson::prepare_with;
use wasm_bindgen::prelude::*;

/// The readings as a tidy table, comma-separated: one row a reading, none left away.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn readings_table(notebook: &str, ranges: Option<String>) -> Result<String, JsError> {
    written(notebook, ranges.as_deref(), write::readings)
}

/// A record of the cast's quality, comma-separated.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn quality_record(notebook: &str, ranges: Option<String>) -> Result<String, JsError> {
    written(notebook, ranges.as_deref(), write::quality)
}

/// What the columns of [`readings_table`] mean, for the table kept under a name.
#[wasm_bindgen]
pub fn readings_sidecar(file_name: &str) -> String {
    write::sidecar(file_name)
}

fn written(notebook: &str, ranges: Option<&str>, what: fn(Told) -> String) -> Result<String, JsError> {
    let notebook = read(notebook)?;
    let prepared = prepare_with(&notebook, ranges);
    Ok(what(Told {
        doc: &notebook.cast,
        raw: &prepared.raw,
        cast: &prepared.cast,
        outcomes: &prepared.outcomes,
        analysis: &prepared.analysis,
    }))
}
