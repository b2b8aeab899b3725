//! The profile for the ear and the fingers.

use crate::notebook::read;
use layercast_lesson::prepare;
use layercast_lesson::sound::tones;
use wasm_bindgen::prelude::*;

/// The profile of a notebook as tones, from the top down: for each its second, its pitch in hertz, and its row in the table of
/// readings. Between two tones the pitch glides exponentially.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn hear(notebook: &str) -> Result<Vec<f64>, JsError> {
    let heard = tones(&profile(notebook)?);
    Ok(heard.iter().flat_map(|tone| [tone.at_s, tone.hz, tone.row as f64]).collect())
}

/// The profile of a notebook as an SVG page to be raised: thick lines, large figures, braille numbers.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn touch(notebook: &str, head: &str, depth: &str, temperature: &str) -> Result<String, JsError> {
    Ok(layercast_chart::touch(&profile(notebook)?, head, depth, temperature))
}

fn profile(notebook: &str) -> Result<Vec<(f64, f64)>, JsError> {
    let prepared = prepare(&read(notebook)?);
    Ok(prepared.analysis.profile.iter().map(|level| (level.depth_m, level.temp_c)).collect())
}
