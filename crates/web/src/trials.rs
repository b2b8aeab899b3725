//! Trials: drawn in parts, so that the page can say how far they are and stop them.

use crate::notebook::read;
use crate::view::large_view;
use layercast_lesson::ranges as trials_of;
use layercast_lesson::view::{Otherwise, OtherwiseView};
use tsify::Ts;
use wasm_bindgen::prelude::*;

/// One part of the trials of a notebook's cast, or of the same cast read otherwise: `count` of them from `from` on. Each
/// trial is the same whatever the parts.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn trials(
    notebook: &str,
    otherwise: Option<Ts<Otherwise>>,
    from: u32,
    count: u32,
) -> Result<Vec<f64>, JsError> {
    let notebook = read(notebook)?;
    Ok(match otherwise {
        Some(otherwise) => trials_of::drawn_otherwise(&notebook, &otherwise.to_rust()?, from, count),
        None => trials_of::drawn(&notebook, from, count),
    })
}

/// What the trials came to, as a text that goes with every look. `drawn`: the parts, one after the other.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn ranges(notebook: &str, drawn: &[f64]) -> Result<String, JsError> {
    Ok(trials_of::ranges(&read(notebook)?, drawn))
}

/// What the cast, read otherwise, would have told, with its trials.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn otherwise(
    notebook: &str,
    otherwise: Ts<Otherwise>,
    drawn: &[f64],
    ranges: Option<String>,
) -> Result<Ts<OtherwiseView>, JsError> {
    let view = trials_of::otherwise(&read(notebook)?, &otherwise.to_rust()?, drawn, ranges.as_deref());
    large_view(&view)
}
