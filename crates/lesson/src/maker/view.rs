//! What the page shows of a lesson that is being made.

use super::LessonAction;
use crate::document::{Help, Quantity};
use crate::view::Said;
use serde::Serialize;

/// A lesson that is being made.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct LessonView {
    /// Title as typed.
    pub title: String,
    /// Note to the class.
    pub note: String,
    /// Note to whoever runs it.
    pub run_note: String,
    /// "9 questions, 40 points, about 35 minutes."
    pub sum: Said,
    /// How long its parts take, in order.
    pub plan: Vec<PlanRow>,
    /// "Together about 60 minutes."
    pub plan_sum: Said,
    /// Questions of the lesson, in order.
    pub taken: Vec<TakenView>,
    /// Questions that are not in it.
    pub others: Vec<OtherView>,
    /// Adds one of one's own; `None` when there is no room for more.
    pub add_own: Option<LessonAction>,
    /// What is left open from the start.
    pub open: Vec<OpenView>,
    /// The other cast that goes along, and whether there is one.
    pub other: (Said, bool),
    /// Rules of the class.
    pub rules: Vec<RuleField>,
    /// How much help stands open.
    pub help: Help,
    /// "en", "es" or empty.
    pub language: String,
    /// Name of its file, without an ending.
    pub file_name: String,
}

/// A part of the period.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct PlanRow {
    /// What is done.
    pub name: Said,
    /// Minutes.
    pub minutes: usize,
}

/// A question of the lesson.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct TakenView {
    /// Kind.
    pub kind: u8,
    /// Its name, or the teacher's own words.
    pub name: Said,
    /// Points as written.
    pub points: String,
    /// Moves it up; `None` at the top.
    pub up: Option<LessonAction>,
    /// Moves it down; `None` at the foot.
    pub down: Option<LessonAction>,
    /// Leaves it out, or takes an own one away.
    pub leave: LessonAction,
    /// The teacher's own question.
    pub own: Option<OwnView>,
}

/// A question that is not in the lesson.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct OtherView {
    /// Its name.
    pub name: Said,
    /// Takes it.
    pub take: LessonAction,
}

/// A question of the teacher's own.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct OwnView {
    /// Index into the lesson's own.
    pub own: usize,
    /// Its words.
    pub ask: String,
    /// Its hint.
    pub hint: String,
    /// The number it asks; `None`: words.
    pub quantity: Option<Quantity>,
    /// Depth fields that it needs, as text: none, one, or two.
    pub depths: Vec<String>,
    /// Its temperature as text, where it needs one.
    pub temp: Option<String>,
    /// Levels of its rubric, best first, where it asks words.
    pub rubric: Vec<String>,
    /// What is still missing.
    pub lacks: Option<Said>,
}

/// A switch: left open from the start.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct OpenView {
    /// What.
    pub name: Said,
    /// It is open.
    pub open: bool,
    /// Turns it round.
    pub turn: LessonAction,
}

/// A rule of the class.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct RuleField {
    /// Which: the `rule` of its action.
    pub rule: super::RuleName,
    /// Its words.
    pub name: Said,
    /// Its value.
    pub value: crate::view::Num,
    /// Unit behind it.
    pub unit: Said,
}
