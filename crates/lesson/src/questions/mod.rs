//! The question kinds, one file each, and what happens around them: which are asked of this cast, how a try is judged,
//! what help is given, what is earned, what it reveals.

use crate::document::{Answer, Lesson, Sheet};
use crate::view::QuestionView;
use layercast_core::{Analysis, Cast, Message};

/// Everything a question may look at. Built once per call by the caller.
#[derive(Clone, Copy, Debug)]
pub struct Context<'a> {
    /// The cast.
    pub cast: &'a Cast,
    /// Its analysis by the lesson's method.
    pub analysis: &'a Analysis,
    /// The lesson.
    pub lesson: &'a Lesson,
    /// The sheet: marks and earlier answers (follow-through).
    pub sheet: &'a Sheet,
    /// Content id of the readings as they are now.
    pub cast_id: &'a str,
}

/// One question as asked of this cast.
#[derive(Clone, Debug, PartialEq)]
pub struct Asked {
    /// Id, stable for this cast and lesson: the kind and its depths ("4-4.0-5.0"). Key of the answer in the sheet.
    pub id: String,
    /// Kind in the question bank (9 stands for 9+10); route questions of other water use 101 and up.
    pub kind: u8,
    /// Depths the question is about, metres; meaning by kind (1: one depth; 4, 5: from, to).
    pub depths_m: Vec<f64>,
}

/// The questions of this cast, in order, and why others were left out.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Paper {
    /// Asked, in order.
    pub asked: Vec<Asked>,
    /// Why this route, and what was left out with its reason.
    pub about: Vec<Message>,
}

/// How a question stands: recomputed from its tries, never stored.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Standing {
    /// All parts settled (right, shown, or third miss explained).
    pub settled: bool,
    /// All parts answered right.
    pub right: bool,
    /// Credit from 0 to 1.
    pub credit: f64,
    /// Strip bars this question has uncovered (indices into `Analysis::steps`).
    pub reveals_steps: Vec<usize>,
    /// The whole strip is uncovered (kind 6 settled).
    pub reveals_all_steps: bool,
    /// Thermocline uncovered (kinds 7, 8 settled after a shown answer or a right one).
    pub reveals_thermocline: bool,
    /// Mixed layer uncovered (kind 9 settled).
    pub reveals_mixed_layer: bool,
    /// Deep layer uncovered.
    pub reveals_deep_layer: bool,
    /// Step in hand for the picture: (top, bottom) in metres.
    pub step_m: Option<(f64, f64)>,
    /// It may be explained with the triangle.
    pub step_explained: bool,
}

/// Which questions are asked of this cast.
pub fn paper(_context: &Context) -> Paper {
    Paper::default()
}

/// How one question stands.
pub fn standing(_context: &Context, _asked: &Asked, _answer: Option<&Answer>) -> Standing {
    Standing::default()
}

/// The question as the page shows it.
pub fn view(_context: &Context, _paper: &Paper, _index: usize) -> Option<QuestionView> {
    None
}
