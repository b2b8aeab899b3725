//! The teacher's lesson: a text for the page, as a notebook is.

use crate::view::large_view;
use layercast_lesson::maker::view::LessonView;
use layercast_lesson::maker::{self, LessonAction, OpenedLesson};
use tsify::Ts;
use wasm_bindgen::prelude::*;

/// The lesson that new notebooks have, or the one with every question.
#[wasm_bindgen]
pub fn lesson_of_ours(whole: bool) -> String {
    let text = if whole {
        include_str!("../../../static-data/lessons/whole-lesson.json")
    } else {
        include_str!("../../../static-data/lessons/first-lesson.json")
    };
    text.to_owned()
}

/// Does one thing to a lesson and gives the new one.
///
/// # Errors
/// When the text is no lesson or the action is none of ours.
#[wasm_bindgen]
pub fn lesson_act(lesson: &str, action: Ts<LessonAction>) -> Result<String, JsError> {
    let OpenedLesson { lesson, rest, .. } = read(lesson)?;
    Ok(maker::file_text(&maker::act(lesson, &action.to_rust()?), &rest))
}

/// Everything the page shows of a lesson.
///
/// # Errors
/// When the text is no lesson.
#[wasm_bindgen]
pub fn lesson_look(lesson: &str) -> Result<Ts<LessonView>, JsError> {
    large_view(&maker::look(&read(lesson)?.lesson))
}

fn read(lesson: &str) -> Result<OpenedLesson, JsError> {
    maker::open(lesson).ok_or_else(|| JsError::new("this text is no lesson"))
}
