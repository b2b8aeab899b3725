//! The year book: a text for the page, as a class is.

use crate::view::large_view;
use js_sys::{Array, Uint8Array};
use layercast_lesson::years::{self, Added, YearBook, YearsAction, YearsView};
use serde::Serialize;
use tsify::{Ts, Tsify};
use wasm_bindgen::prelude::*;

/// What became of files.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct YearsTaken {
    /// The book with their casts.
    pub book: String,
    /// How many of what.
    pub added: Added,
}

/// Adds the casts of files (each a `Uint8Array`). `book`: empty for a new one.
#[wasm_bindgen]
pub fn years_add(book: &str, files: &Array) -> Result<Ts<YearsTaken>, JsError> {
    let bytes: Vec<Vec<u8>> = files.iter().map(|file| Uint8Array::new(&file).to_vec()).collect();
    let (book, added) = years::add(&read(book), &bytes);
    large_view(&YearsTaken { book: book.to_json(), added })
}

/// The book after one thing a teacher did.
///
/// # Errors
/// When the action is none of ours.
#[wasm_bindgen]
pub fn years_act(book: &str, action: Ts<YearsAction>) -> Result<String, JsError> {
    Ok(years::act(&read(book), &action.to_rust()?).to_json())
}

/// Everything the page shows of a book. `chosen`: content id of the cast in hand.
#[wasm_bindgen]
pub fn years_look(book: &str, chosen: &str) -> Result<Ts<YearsView>, JsError> {
    large_view(&years::look(&read(book), Some(chosen)))
}

/// The text that its picture is drawn from.
#[wasm_bindgen]
pub fn years_drawing(book: &str) -> String {
    crate::class_picture::drawing_of(years::shown(&read(book)))
}

/// What is no book is an empty one: what the page keeps was checked when it came in.
fn read(text: &str) -> YearBook {
    YearBook::from_json(text).unwrap_or_default()
}
