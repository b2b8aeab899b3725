//! What only the bench calls: a piece of the calculation without what the page needs around it.

use crate::notebook::read;
use layercast_core::analyse;
use layercast_lesson::prepared::prepare;
use std::hint::black_box;
use wasm_bindgen::prelude::*;

/// Analyses a notebook's cast so many times, and gives how many depths its profile has.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn analyses(notebook: &str, times: u32) -> Result<usize, JsError> {
    let prepared = prepare(&read(notebook)?);
    let one = || analyse(black_box(&prepared.cast), &prepared.analysis.method).profile.len();
    Ok((0..times).fold(0, |_, _| one()))
}
