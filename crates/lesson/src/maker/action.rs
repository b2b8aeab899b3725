//! Everything a teacher can do to a lesson, as data.

use crate::document::{Help, Quantity};
use serde::{Deserialize, Deserializer, Serialize, de};

/// One thing a teacher did to a lesson. `kind` is a number of `questions/kinds/mod.rs`, `own` an index into the lesson's own
/// questions; the fields' names say the rest.
#[allow(missing_docs, reason = "each variant's line names its fields")]
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(tag = "do", rename_all = "snake_case")]
pub enum LessonAction {
    /// Types the title or one of the notes.
    Write { what: LessonText, text: String },
    /// Takes a question into the lesson, at its end.
    Take { kind: u8 },
    /// Leaves one out.
    Leave { kind: u8 },
    /// Moves one up or down.
    Move { kind: u8, up: bool },
    /// Points of a question; empty is the usual number.
    SetPoints { kind: u8, text: String },
    /// Adds a question of one's own.
    AddOwn,
    /// Takes one of them away.
    RemoveOwn { own: usize },
    /// Types its question.
    AskOwn { own: usize, text: String },
    /// Types its hint.
    HintOwn { own: usize, text: String },
    /// What number it asks; none: words.
    SetOwnBy { own: usize, quantity: Option<Quantity> },
    /// Types one of its numbers.
    SetOwnNumber { own: usize, number: OwnNumber, text: String },
    /// Types a level of its rubric, best first.
    SetLevel { own: usize, level: usize, text: String },
    /// Leaves something open from the start, or covered.
    SetOpen { part: OpenPart, open: bool },
    /// Takes a group's cast out of what it saved or handed in, for the questions that compare with another.
    TakeOther { text: String },
    /// Takes it out again.
    RemoveOther,
    /// Types a rule of the class.
    SetRule { rule: RuleName, text: String },
    /// How much help stands open.
    SetHelp { help: Help },
    /// The language it opens in.
    SetLanguage { text: String },
}

/// A text of a lesson.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum LessonText {
    /// What the teacher calls it.
    Title,
    /// To the class.
    Note,
    /// To whoever runs it.
    RunNote,
}

/// A number of an own question.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum OwnNumber {
    /// Depth, or the upper of two, metres.
    At,
    /// The lower of two, metres.
    To,
    /// Temperature, °C.
    Temp,
}

/// What can be left open.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum OpenPart {
    /// The strip of °C per metre.
    Steps,
    /// The thermocline.
    Thermocline,
    /// The mixed layer.
    MixedLayer,
    /// The deep layer.
    DeepLayer,
    /// The curve itself, which else waits for three readings placed by hand.
    Curve,
}

/// A rule of the class.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum RuleName {
    /// Depth the mixed layer is measured from, metres.
    Reference,
    /// How much colder it ends, °C.
    MixedDrop,
    /// From which °C per metre on water is steep.
    Steep,
}

/// Every field that some action has.
#[derive(Default, Deserialize)]
#[serde(default)]
struct Fields {
    r#do: String,
    what: Option<LessonText>,
    text: Option<String>,
    kind: Option<u8>,
    up: Option<bool>,
    own: Option<usize>,
    quantity: Option<Quantity>,
    number: Option<OwnNumber>,
    level: Option<usize>,
    part: Option<OpenPart>,
    open: Option<bool>,
    rule: Option<RuleName>,
    help: Option<Help>,
}

impl<'de> Deserialize<'de> for LessonAction {
    /// Written out, as for the notebook's actions: what serde derives for a tagged enum is large.
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        Fields::deserialize(from)?.action().ok_or_else(|| de::Error::custom("not an action"))
    }
}

impl Fields {
    fn action(self) -> Option<LessonAction> {
        let Self { what, text, kind, up, own, quantity, number, level, part, open, rule, help, .. } = self;
        Some(match self.r#do.as_str() {
            "write" => LessonAction::Write { what: what?, text: text? },
            "take" => LessonAction::Take { kind: kind? },
            "leave" => LessonAction::Leave { kind: kind? },
            "move" => LessonAction::Move { kind: kind?, up: up? },
            "set_points" => LessonAction::SetPoints { kind: kind?, text: text? },
            "add_own" => LessonAction::AddOwn,
            "remove_own" => LessonAction::RemoveOwn { own: own? },
            "ask_own" => LessonAction::AskOwn { own: own?, text: text? },
            "hint_own" => LessonAction::HintOwn { own: own?, text: text? },
            "set_own_by" => LessonAction::SetOwnBy { own: own?, quantity },
            "set_own_number" => LessonAction::SetOwnNumber { own: own?, number: number?, text: text? },
            "set_level" => LessonAction::SetLevel { own: own?, level: level?, text: text? },
            "set_open" => LessonAction::SetOpen { part: part?, open: open? },
            "take_other" => LessonAction::TakeOther { text: text? },
            "remove_other" => LessonAction::RemoveOther,
            "set_rule" => LessonAction::SetRule { rule: rule?, text: text? },
            "set_help" => LessonAction::SetHelp { help: help? },
            "set_language" => LessonAction::SetLanguage { text: text? },
            _ => return None,
        })
    }
}
