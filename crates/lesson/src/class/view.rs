//! What the Class screen shows: plain values, words as messages, switches with their actions.

use super::action::ClassAction;
use super::ideas::Standing;
use super::looks::LookAt;
use crate::view::{Num, Said};
use serde::Serialize;

/// The whole screen.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ClassView {
    /// Code of the class; may be empty.
    pub code: String,
    /// "8 groups, 28 sheets".
    pub title: Said,
    /// The one sentence about the ranges.
    pub sentence: Said,
    /// The depths the ranges share, metres; equal where they only touch.
    pub shared_m: Option<(f64, f64)>,
    /// One row a cast, in the order of the wall.
    pub casts: Vec<CastRow>,
    /// What to talk about: a shallower place, the widest range, the deepest.
    pub talk: Vec<Said>,
    /// Middle and range of the class at each depth.
    pub middle: Vec<MiddleRow>,
    /// One row a sheet that counts or is practice.
    pub sheets: Vec<SheetRow>,
    /// Those that stand aside.
    pub aside: Vec<AsideRow>,
    /// Question by question.
    pub questions: Vec<QuestionRow>,
    /// What to ask the room next.
    pub next: Option<Said>,
    /// Its question in `questions`.
    pub next_question: Option<usize>,
    /// Somebody guessed before anything was read: the wall can begin with that.
    pub guessed: bool,
    /// Somebody marked the thermocline: the wall can show where.
    pub marked: bool,
    /// Names are hidden.
    pub hidden: bool,
    /// The groups are shuffled.
    pub shuffled: bool,
    /// Comments to use again that come with the page.
    pub ready_comments: Vec<Said>,
    /// Those the teacher kept.
    pub comments: Vec<String>,
    /// Undoes the last step.
    pub undo: Option<ClassWay>,
}

/// A switch or button.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ClassWay {
    /// Its words.
    pub label: Said,
    /// What it does.
    pub action: ClassAction,
}

/// One cast of the list beside the wall.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct CastRow {
    /// What stands over its core.
    pub name: String,
    /// Content id.
    pub cast_id: String,
    /// Sheets that hold it.
    pub sheets: usize,
    /// Thermocline, metres; `None`: none, see `said`.
    pub value: Option<Num>,
    /// "3.5 to 4.0 m", or "none", "mixed to the bottom", "can’t tell".
    pub said: Said,
    /// Measured at another station.
    pub other_station: bool,
    /// Its temperatures look like °F, so that no layers were looked for.
    pub fahrenheit: bool,
    /// Too few readings to look for layers, or °F: no value then does not mean that there is none.
    pub too_few: bool,
    /// Repaired here.
    pub repaired: bool,
}

/// The class at one depth.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct MiddleRow {
    /// Depth, metres.
    pub depth: Num,
    /// Coldest, °C.
    pub low: Num,
    /// Middle, °C.
    pub middle: Num,
    /// Warmest, °C.
    pub high: Num,
    /// Casts that reach it.
    pub casts: usize,
}

/// One sheet.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct SheetRow {
    /// Key of the member.
    pub key: String,
    /// Group code.
    pub group: String,
    /// Seat code; may be empty.
    pub seat: String,
    /// Receipt code.
    pub receipt: String,
    /// Content id of its cast.
    pub cast_id: String,
    /// Things to look at, each with its ways.
    pub looks: Vec<LookRow>,
    /// Repairs in force, each with its way back.
    pub repairs: Vec<ClassWay>,
    /// Repairs that can be made.
    pub can: Vec<ClassWay>,
    /// Late.
    pub late: bool,
    /// Practice.
    pub practice: bool,
    /// Points.
    pub points: Num,
    /// Most points.
    pub max: Num,
    /// Questions right, of those asked.
    pub right: usize,
    /// Questions asked.
    pub asked: usize,
    /// Texts that wait for the teacher's level.
    pub to_read: usize,
    /// Older copies that do not count.
    pub older: usize,
    /// Why it has no question at all, if it has none.
    pub unasked: Option<Said>,
    /// Its answers in order.
    pub answers: Vec<AnswerRow>,
}

/// One answer of a sheet.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct AnswerRow {
    /// Id of the question.
    pub question: String,
    /// The question.
    pub ask: Said,
    /// How it stands, in words.
    pub state: Said,
    /// What was answered last.
    pub given: Vec<Said>,
    /// What was said to it.
    pub said: Option<Said>,
    /// The student's reason.
    pub reason: String,
    /// Points that count.
    pub points: Num,
    /// Most points.
    pub max: Num,
    /// Why a right answer has no points, if it was given only after it was shown.
    pub after_shown: Option<Said>,
    /// Computed points were replaced.
    pub by_hand: bool,
    /// Levels, one for each text that gets one; empty where all was judged here.
    pub levels: Vec<LevelRow>,
    /// Why the teacher gave other points.
    pub why: String,
    /// Comment for the student.
    pub comment: String,
}

/// The level of a text.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct LevelRow {
    /// What the action calls it.
    pub question: String,
    /// Which text of a report; `None` for the words of an answer.
    pub name: Option<Said>,
    /// What the teacher's own rubric says of the levels, 0 first; empty without one.
    pub words: Vec<String>,
    /// Its level, 0 to 3; `None` while it waits.
    pub level: Option<u8>,
}

/// Something to look at.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct LookRow {
    /// What.
    pub at: LookAt,
    /// In words.
    pub said: Said,
    /// Ways out.
    pub ways: Vec<ClassWay>,
    /// Of nearly equal casts: reading by reading, where they differ.
    pub differ: Vec<DifferRow>,
}

/// A reading that is not the same in two casts.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct DifferRow {
    /// Depth, metres.
    pub depth: Num,
    /// Way of the probe.
    pub leg: layercast_exchange::document::LegDoc,
    /// Here, °C; empty where there is none.
    pub here: String,
    /// There.
    pub there: String,
}

/// A member that does not count.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct AsideRow {
    /// Key.
    pub key: String,
    /// Group code.
    pub group: String,
    /// Seat code.
    pub seat: String,
    /// Receipt code.
    pub receipt: String,
    /// Why it stands aside.
    pub said: Said,
    /// Ways.
    pub ways: Vec<ClassWay>,
}

/// One question over the class.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct QuestionRow {
    /// Its kind.
    pub kind: u8,
    /// What the kind is called, or the teacher's own words.
    pub name: Said,
    /// The question as most were asked it.
    pub ask: Said,
    /// Every group at its own depths.
    pub varies: bool,
    /// How many stand where.
    pub seats: Standing,
    /// The commonest idea.
    pub idea: Option<IdeaRow>,
    /// Two answers without names: what was answered, and the reason. The first is right.
    pub pair: Option<(AnswerCard, AnswerCard)>,
}

/// A wrong idea over the class.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct IdeaRow {
    /// "4 students in 3 groups".
    pub count: Said,
    /// The idea in a few words.
    pub name: Said,
    /// What one of them was told.
    pub said: Said,
}

/// An answer without a name.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct AnswerCard {
    /// What was answered.
    pub given: Vec<Said>,
    /// The reason; may be empty.
    pub reason: String,
}
