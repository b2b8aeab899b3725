//! Everything a person can do to a notebook, as data; `act/` does it.

mod read;

use crate::document::{MarkName, ReportPart, Screen};
use layercast_exchange::document::{
    CompanionField, CorrectionField, CorrectionKind, LegChoice, LegDoc, Role, Unit,
};
use serde::{Deserialize, Serialize};

/// One thing a person did. Buttons in the views carry theirs.
///
/// `question` counts from 0; `entry` and `entries` are indices into the cast's entries; `column` counts from 0. The
/// fields' names say the rest.
#[allow(missing_docs, reason = "each variant's line names its fields")]
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(tag = "do", rename_all = "snake_case")]
pub enum Action {
    /// Goes to a screen (and question).
    Go { screen: Screen, question: Option<usize> },
    /// Pastes a table as text; what is clear is used at once, else it waits as `pending`.
    Paste { text: String },
    /// As `Paste`, of a file that was opened.
    TakeFile { text: String },
    /// Works by a teacher's lesson, given as the text of its file.
    TakeLesson { text: String },
    /// As `Paste`, of one of the examples.
    TakeExample { text: String },
    /// Opens the table view again ("Not right?").
    OpenTable,
    /// Sets what a column of the pending table is.
    SetRole { column: usize, role: Role },
    /// Sets the unit of a column of the pending table.
    SetUnit { column: usize, unit: Unit },
    /// Answers the question of the pending table by its n-th way.
    AnswerTable { way: usize },
    /// Says which way a single series was read, pending or used.
    SetLeg { leg: LegChoice },
    /// Uses the pending table.
    UseTable,
    /// Drops the pending table.
    DropTable,
    /// Types into a cell of the log's table. `entry`: the reading, if there is one already.
    SetCell { entry: Option<usize>, depth_m: f64, leg: LegDoc, text: String },
    /// Reads all temperatures that stand without a unit as °F or as °C.
    ReadTemps { unit: Unit },
    /// Types into a depth cell: moves all readings of that row.
    SetDepth { entries: Vec<usize>, text: String },
    /// Settles a doubted temperature with a value (button "Make it 17.7").
    MakeTemp { entry: usize, value_c: f64, text: String },
    /// Settles a doubted depth with a value.
    MakeDepth { entry: usize, value_m: f64, text: String },
    /// Leaves readings out.
    LeaveOut { entries: Vec<usize> },
    /// "It was like that": keeps readings although they are doubted.
    Keep { entries: Vec<usize> },
    /// Takes back a decision about readings.
    Reconsider { entries: Vec<usize> },
    /// Types into the oxygen of a reading, mg/L. `entry`: the reading, if there is one already.
    SetOxygen { entry: Option<usize>, depth_m: f64, text: String },
    /// Types what was measured once: the Secchi disk, the height of the lake.
    SetCompanion { companion: CompanionField, text: String },
    /// Adds a correction with empty fields.
    AddCorrection { kind: CorrectionKind },
    /// Adds the correction for a probe that was still settling, as the readings show it.
    TakeLag,
    /// Types into a field of the n-th correction.
    SetCorrection { correction: usize, input: CorrectionField, text: String },
    /// Takes the n-th correction away.
    RemoveCorrection { correction: usize },
    /// Undoes the last change to the cast.
    Undo,
    /// Names the water.
    SetWater { text: String },
    /// Sets the group letter.
    SetGroup { text: String },
    /// Sets the seat code of the sheet in use. A code, never a name.
    SetSeat { text: String },
    /// Sets the class code of the sheet in use.
    SetClass { text: String },
    /// Depth where the line went slack, as typed; empty takes it back.
    SetBed { text: String },
    /// One more mark at the foot of the empty table.
    AddMark,
    /// Types into a field of a point of the guess, counted from 0.
    SetGuess { point: usize, guess: GuessField, text: String },
    /// Places a point of the guess where the picture was touched.
    PlaceGuess { spot: Spot },
    /// Places one of the three readings, counted from 0, where the picture was touched.
    PlaceByHand { point: usize, spot: Spot },
    /// Moves one of them by key.
    KeyByHand { point: usize, hand: HandKey },
    /// Checks the three.
    CheckByHand,
    /// Draws the rest.
    DrawRest,
    /// Types the depth of a mark.
    TypeMark { mark: MarkName, text: String },
    /// Types a give or take.
    TypeGive { mark: MarkName, text: String },
    /// Drags a grip to a height of the picture; the numbers are those of the picture's placement.
    DragMark { mark: MarkName, y_px: f64, surface_y_px: f64, px_per_m: f64 },
    /// Moves a grip by key.
    KeyMark { mark: MarkName, key: MarkKey },
    /// "Not in my water", or takes it back.
    RefuseMark { mark: MarkName, refused: bool },
    /// "I see no layers": refuses all three.
    NoLayers,
    /// Covers the marks, for the partner to place theirs.
    HandOver,
    /// Uncovers them again, while the partner has none.
    HandBack,
    /// Checks the marks; `early`: although questions would be revealed.
    CheckMarks { early: bool },
    /// Shows the marks again after the check, or what was found.
    ShowMarks { again: bool },
    /// Types into a field of a question.
    SetField { question: usize, field: String, text: String },
    /// Drags or moves a grip that is a field of a question (kinds 7 and 8).
    DragField { question: usize, field: String, y_px: f64, surface_y_px: f64, px_per_m: f64 },
    /// Moves such a grip by key.
    KeyField { question: usize, field: String, key: MarkKey },
    /// "How I know."
    SetReason { question: usize, text: String },
    /// "In your own words."
    SetOwnWords { question: usize, text: String },
    /// Checks the fields of a question.
    Check { question: usize },
    /// "I can't tell."
    CannotTell { question: usize },
    /// Opens the next hint.
    Hint { question: usize },
    /// "Show me."
    ShowMe { question: usize },
    /// "Answer again."
    AnswerAgain { question: usize },
    /// Takes another group's cast out of what that group saved or handed in.
    TakeOther { text: String },
    /// Takes it away again.
    RemoveOther,
    /// Types into the report.
    SetReport { part: ReportPart, text: String },
}

/// A key on a grip.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum MarkKey {
    /// 0.1 m shallower.
    Up,
    /// 0.1 m deeper.
    Down,
    /// One mark of the cable shallower.
    MarkUp,
    /// One mark of the cable deeper.
    MarkDown,
    /// As shallow as its neighbour allows.
    Home,
    /// As deep as its neighbour allows.
    End,
}

/// A key on a reading that is placed by hand.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum HandKey {
    /// Half a metre shallower.
    Up,
    /// Half a metre deeper.
    Down,
    /// Half a degree colder.
    Colder,
    /// Half a degree warmer.
    Warmer,
}

/// A field of a point of the guess.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum GuessField {
    /// Its depth.
    Depth,
    /// Its temperature.
    Temp,
}

/// A place in the picture, with the numbers of the picture's placement.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct Spot {
    /// Across, from the picture's left.
    pub x_px: f64,
    /// Down, from its top.
    pub y_px: f64,
    /// x of 0 °C.
    pub zero_x_px: f64,
    /// Pixels per °C.
    pub px_per_c: f64,
    /// y of the surface.
    pub surface_y_px: f64,
    /// Pixels per metre.
    pub px_per_m: f64,
}

impl Spot {
    /// Depth in metres and °C; not finite where the numbers make none.
    pub(crate) fn at(&self) -> (f64, f64) {
        ((self.y_px - self.surface_y_px) / self.px_per_m, (self.x_px - self.zero_x_px) / self.px_per_c)
    }
}
