//! Notebooks: made, opened, changed, looked at.

use layercast_lesson::action::Action;
use layercast_lesson::view::{Look, Said};
use serde::Serialize;
use tsify::{Ts, Tsify};
use wasm_bindgen::prelude::*;

/// What a file turned out to be.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum Opened {
    /// A saved notebook, as its text of today's version.
    Notebook {
        /// The notebook.
        notebook: String,
    },
    /// Saved by a newer Layercast.
    Newer {
        /// Its version.
        version: u32,
        /// A new notebook with its readings alone, when they could be read.
        readings: Option<String>,
    },
    /// A table, decoded to text: give it to `act` as `paste`.
    Table {
        /// The text.
        text: String,
    },
    /// Neither: what it is and what to do.
    No {
        /// Sentences, in order.
        said: Vec<Said>,
    },
}

/// A new, empty notebook with the class's own lesson.
///
/// # Errors
/// Never for a code of the page.
#[wasm_bindgen]
pub fn new_notebook(code: &str) -> Result<String, JsError> {
    Err(JsError::new(code))
}

/// What the bytes of a file are.
///
/// # Errors
/// Never; a file that is nothing of ours is [`Opened::No`].
#[wasm_bindgen]
pub fn open_bytes(bytes: &[u8]) -> Result<Ts<Opened>, JsError> {
    let _ = bytes;
    Ok(Opened::No { said: Vec::new() }.into_ts()?)
}

/// Does one thing to a notebook and gives the new one.
///
/// # Errors
/// When the text is no notebook or the action is none of ours.
#[wasm_bindgen]
pub fn act(notebook: &str, action: Ts<Action>) -> Result<String, JsError> {
    let _: Action = action.to_rust()?;
    Err(JsError::new(notebook))
}

/// Everything the page shows of a notebook.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn look(notebook: &str) -> Result<Ts<Look>, JsError> {
    Err(JsError::new(notebook))
}

/// The CSV text of an example cast: "layered-summer", "mixed-autumn" or "under-ice".
///
/// # Errors
/// When there is no example of that name.
#[wasm_bindgen]
pub fn example(name: &str) -> Result<String, JsError> {
    Err(JsError::new(name))
}
