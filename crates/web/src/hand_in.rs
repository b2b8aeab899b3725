//! What a group hands in and takes along: the file, the lines, the receipt.

use crate::notebook::read;
use layercast_lesson::hand_in;
use wasm_bindgen::prelude::*;

/// The file a student hands in: one cast, one answer sheet, the lesson.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn hand_in_file(notebook: &str) -> Result<String, JsError> {
    Ok(hand_in::file_text(&read(notebook)?))
}

/// The same as lines to be pasted, with a line break between them; empty where it would take too many.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn hand_in_lines(notebook: &str) -> Result<String, JsError> {
    Ok(hand_in::lines(&read(notebook)?).join("\n"))
}

/// The short code a student keeps.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn receipt(notebook: &str) -> Result<String, JsError> {
    Ok(hand_in::receipt(&read(notebook)?))
}
