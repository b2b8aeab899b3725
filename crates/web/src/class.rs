//! The class: a text for the page, as a notebook is.

use crate::class_picture::drawing;
use crate::view::large_view;
use js_sys::{Array, Uint8Array};
use layercast_exchange::write::zip;
use layercast_lesson::class::export::{self, Options, Slip};
use layercast_lesson::class::import::{Counts, Dropped, TakenRow, import_seen};
use layercast_lesson::class::view::ClassView;
use layercast_lesson::class::why::{Against, WhyView, why};
use layercast_lesson::class::{self, AnswerTold, Class, ClassAction, Room};
use layercast_lesson::maker;
use serde::Serialize;
use tsify::{Ts, Tsify};
use wasm_bindgen::prelude::*;

/// How a class looks, and what its pictures are drawn from.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct ClassShown {
    /// The screen.
    pub view: ClassView,
    /// For `class_draw`.
    pub drawing: String,
}

impl ClassShown {
    fn of(room: &Room, against: Option<&str>) -> Self {
        let view = class::look_at(room, against);
        Self { drawing: drawing(room, &view, against), view }
    }
}

/// A class after one step.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct ClassStepped {
    /// Its text.
    pub book: String,
    /// How it looks.
    pub shown: ClassShown,
}

/// What became of everything that was dropped.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct Taken {
    /// The class with it.
    pub class: String,
    /// How it looks.
    pub shown: ClassShown,
    /// One row for each thing.
    pub rows: Vec<TakenRow>,
    /// How many of each outcome.
    pub counts: Counts,
}

/// An empty class.
#[wasm_bindgen]
pub fn new_class() -> String {
    Class::new("", None).to_json()
}

/// Whether a text is a class's file, as its text of today's version.
#[wasm_bindgen]
pub fn open_class(text: &str) -> Option<String> {
    Class::from_json(text).ok().map(|class| class.to_json())
}

/// Takes in what was dropped: `names` and `files` (each a `Uint8Array`) side by side.
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_take(
    class: &str,
    names: Vec<String>,
    files: &Array,
    against: Option<String>,
) -> Result<Ts<Taken>, JsError> {
    let bytes: Vec<Vec<u8>> = files.iter().map(|file| Uint8Array::new(&file).to_vec()).collect();
    let batch: Vec<Dropped> = names.iter().zip(&bytes).map(|(name, bytes)| Dropped { name, bytes }).collect();
    let mut shown = None;
    let see = &mut |room: &Room| shown = Some(ClassShown::of(room, against.as_deref()));
    let (class, rows) = import_seen(&read(class)?, &batch, see);
    let shown = shown.ok_or_else(|| JsError::new("the class was not looked at"))?;
    large_view(&Taken { class: class.to_json(), shown, counts: Counts::of(&rows), rows })
}

/// Does one thing to a class and gives the new one.
///
/// # Errors
/// When the text is no class or the action is none of ours.
#[wasm_bindgen]
pub fn class_act(
    class: &str,
    action: Ts<ClassAction>,
    against: Option<String>,
) -> Result<Ts<ClassStepped>, JsError> {
    let class = class::act(&read(class)?, &action.to_rust()?);
    let shown = ClassShown::of(&Room::of(&class), against.as_deref());
    large_view(&ClassStepped { book: class.to_json(), shown })
}

/// Gives a class the teacher's own lesson; another text changes nothing.
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_lesson(class: &str, lesson: &str) -> Result<String, JsError> {
    let class = read(class)?;
    Ok(match maker::open(lesson) {
        Some(opened) => class.with_lesson(opened.lesson).to_json(),
        None => class.to_json(),
    })
}

/// Everything the page shows of a class. `against`: content id of a cast that is set against the middle of the rest.
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_look(class: &str, against: Option<String>) -> Result<Ts<ClassShown>, JsError> {
    large_view(&ClassShown::of(&Room::of(&read(class)?), against.as_deref()))
}

/// Why two casts differ, or one and the rest (`other` is not given). `minutes`: as it was typed how long after the other one
/// was read, or before it where `later` is false.
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_why(
    class: &str,
    one: &str,
    other: Option<String>,
    minutes: &str,
    later: bool,
) -> Result<Ts<WhyTold>, JsError> {
    let against = Against { one, other: other.as_deref(), minutes, later };
    large_view(&WhyTold { why: why(&read(class)?, against) })
}

/// Why two casts differ.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct WhyTold {
    /// `None` for casts that are not there.
    pub why: Option<WhyView>,
}

/// Marks as CSV: one line a question, or one a seat (`wide`). `students`: seats and who sits there, used here and kept nowhere.
/// `kinds` and `names` side by side: what a kind of question is called.
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_csv(
    class: &str,
    wide: bool,
    comma: bool,
    students: String,
    kinds: &[u8],
    names: Vec<String>,
) -> Result<String, JsError> {
    let names = kinds.iter().copied().zip(names).collect();
    let (class, options) = (read(class)?, Options { comma, students, names });
    Ok(if wide { export::wide(&class, &options) } else { export::long(&class, &options) })
}

/// What goes back, one slip a seat.
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_slips(class: &str) -> Result<Ts<Slips>, JsError> {
    large_view(&Slips { slips: export::slips(&read(class)?) })
}

/// What goes back.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct Slips {
    /// One a seat.
    pub slips: Vec<Slip>,
}

/// What a teacher marks a sheet by; `key`: that of its member.
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_told(class: &str, key: &str) -> Result<Ts<ClassTold>, JsError> {
    large_view(&ClassTold { answers: class::told(&read(class)?, key) })
}

/// What a teacher marks by.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct ClassTold {
    /// One an answer, in their order.
    pub answers: Vec<AnswerTold>,
}

/// A zip of files: `names` and `files` (each a `Uint8Array`) side by side.
#[wasm_bindgen]
pub fn zip_of(names: Vec<String>, files: &Array) -> Vec<u8> {
    let bytes = files.iter().map(|file| Uint8Array::new(&file).to_vec());
    zip::stored(&names.into_iter().zip(bytes).collect::<Vec<_>>())
}

fn read(class: &str) -> Result<Class, JsError> {
    Class::from_json(class).map_err(|_| JsError::new("this text is no class"))
}
