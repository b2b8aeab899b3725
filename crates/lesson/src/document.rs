//! The documents a group keeps: notebook, answer sheet, lesson. Verdicts are never stored: they are computed again.

mod by_hand;
mod guess;
mod lesson;
mod open;
mod other;
mod report;

pub use by_hand::{ByHand, HAND_POINTS};
pub use guess::{GUESS_POINTS, GuessPoint};
pub use lesson::{
    FIRST_OF_A_TEACHER, FIRST_OF_A_WATER, Help, Lack, Lesson, MOST_OWN, MOST_POINTS, MethodDoc, Open, OwnBy,
    OwnQuestion, Quantity, USUAL_POINTS,
};
pub(crate) use open::{
    MOST_CELL_CHARS, MOST_CORRECTIONS, MOST_ENTRIES, MOST_MARKS, MOST_PROSE_CHARS, MOST_TABLE_ENTRIES,
    is_fit, is_short, is_sound, is_sound_cast,
};
pub use open::{Unopened, fuzz_notebook_json};
pub(crate) use other::another_cast;
pub use report::{ReportPart, ReportText};

use layercast_exchange::document::{CastDoc, Source, new_doc};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Name of the schema in [`Notebook::schema`].
pub const SCHEMA: &str = "layercast-notebook";
/// Version written today. Readers of older versions stay for ever.
pub const VERSION: u32 = 1;
/// Name of the schema in [`Lesson::schema`].
pub const LESSON_SCHEMA: &str = "layercast-lesson";
/// Version of lessons written today.
pub const LESSON_VERSION: u32 = 1;

/// The file a student saves: one cast, its answer sheets, the lesson.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Notebook {
    /// Always [`SCHEMA`].
    pub schema: String,
    /// Schema version.
    pub version: u32,
    /// Four signs made by the page, behind the group's letter once it is named: "4T7K", "C-4T7K".
    pub code: String,
    /// The cast.
    pub cast: CastDoc,
    /// A pasted table that waits for an answer or is being corrected ("Not right?").
    #[serde(default)]
    pub pending: Option<Source>,
    /// Step of the empty table's marks, metres.
    pub mark_step_m: f64,
    /// Number of marks the empty table shows.
    pub mark_count: u32,
    /// Answer sheets; the first is the one in use.
    pub sheets: Vec<Sheet>,
    /// The lesson.
    pub lesson: Lesson,
    /// Where the group is: screen and question, so that it goes on at the same place elsewhere.
    pub place: Place,
    /// Earlier casts, newest last, for undo (at most 20, fewer for long casts).
    #[serde(default)]
    pub undo: Vec<Undo>,
    /// Depth where the line went slack, as typed; what it means stands in the cast.
    #[serde(default)]
    pub bed_text: String,
    /// A reading has been here, even if it was taken back: the guess stays as it is ([`Notebook::may_guess`]).
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub had_readings: bool,
}

/// An earlier cast and what was done to it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Undo {
    /// What undoing is called.
    pub what: UndoWhat,
    /// The cast before it.
    pub cast: CastDoc,
}

/// What can be undone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum UndoWhat {
    /// A pasted table.
    Paste,
    /// A table from a file.
    File,
    /// An example.
    Example,
    /// A typed cell.
    Cell,
    /// A settled doubt.
    Settle,
    /// A correction that was added, typed into or taken away.
    Correction,
    /// Any other change.
    Change,
}

/// Where the group is.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct Place {
    /// Screen.
    pub screen: Screen,
    /// Question, from 0.
    pub question: usize,
}

/// A screen of the page.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum Screen {
    /// Readings and doubts.
    #[default]
    Log,
    /// Marks and what the rules found.
    Profile,
    /// Questions.
    Questions,
    /// The report: what is written, and the page as it will print.
    Report,
    /// The teacher's class; nothing of it is in a notebook.
    Class,
}

/// One seat's answers to one lesson.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Sheet {
    /// Seat code ("07"), never a person's name; may be empty.
    #[serde(default)]
    pub seat: String,
    /// Class code ("9b"); may be empty.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub class: String,
    /// The lesson's id.
    pub lesson_id: String,
    /// What was guessed before the first reading: at most [`GUESS_POINTS`], in the order of their fields.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub guess: Vec<GuessPoint>,
    /// Three readings placed on the picture by hand.
    #[serde(default, skip_serializing_if = "ByHand::is_untouched")]
    pub by_hand: ByHand,
    /// Marks as they stand.
    pub marks: MarkDocs,
    /// The marks of the partner who placed first, covered until the other's are in too; `None` where nobody handed over.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub partner: Option<MarkDocs>,
    /// The marks at the first check, kept on record; `None` before it.
    #[serde(default)]
    pub first_marks: Option<MarkDocs>,
    /// Questions (their ids) whose answers an early check revealed: they earn no credit.
    #[serde(default)]
    pub revealed_early: Vec<String>,
    /// Whether Profile shows the marks again after the check ("Back to my marks").
    #[serde(default)]
    pub marking_again: bool,
    /// The marks as they stood when a question first uncovered something: a mark moved later is a second answer. They
    /// become [`Sheet::first_marks`] at the check.
    #[serde(default)]
    pub marks_when_revealed: Option<MarkDocs>,
    /// What has been uncovered on this sheet; it is never covered again, whatever becomes of the readings.
    #[serde(default)]
    pub uncovered: Uncovered,
    /// Answers by question id.
    #[serde(default)]
    pub answers: BTreeMap<String, Answer>,
    /// The report's texts.
    #[serde(default)]
    pub report: ReportText,
    /// Another group's cast that was brought to be compared with the own, without the table it was read from.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other: Option<Box<CastDoc>>,
}

impl Sheet {
    /// All three marks stand, nobody handed over, and nothing was checked or uncovered yet.
    pub(crate) fn can_hand_over(&self) -> bool {
        let is_open = self.first_marks.is_none() && self.marks_when_revealed.is_none();
        is_open && self.partner.is_none() && self.marks.all_settled()
    }

    /// The marks that count as the first answers of question kinds 7 and 8: those of the first check, or those that
    /// stood when a question first uncovered something; `None` while neither has happened.
    pub fn first_answer_marks(&self) -> Option<&MarkDocs> {
        self.first_marks.as_ref().or(self.marks_when_revealed.as_ref())
    }
}

/// What has been uncovered.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Uncovered {
    /// The whole strip of °C per metre.
    #[serde(default)]
    pub steps: bool,
    /// Single bars of it: (top, bottom) in metres.
    #[serde(default)]
    pub some_steps_m: Vec<(f64, f64)>,
    /// The thermocline.
    #[serde(default)]
    pub thermocline: bool,
    /// The mixed layer.
    #[serde(default)]
    pub mixed_layer: bool,
    /// The deep layer.
    #[serde(default)]
    pub deep_layer: bool,
}

/// The three marks.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct MarkDocs {
    /// Bottom of the mixed layer.
    pub mixed: MarkDoc,
    /// Thermocline.
    pub thermocline: MarkDoc,
    /// Top of the deep layer.
    pub deep: MarkDoc,
}

/// Which mark.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum MarkName {
    /// Bottom of the mixed layer.
    Mixed,
    /// Thermocline.
    Thermocline,
    /// Top of the deep layer.
    Deep,
}

/// One mark: the text in its fields and what it means.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct MarkDoc {
    /// Depth field as typed (set by grip and arrow keys too).
    #[serde(default)]
    pub depth_text: String,
    /// Depth, metres, when placed.
    #[serde(default)]
    pub depth_m: Option<f64>,
    /// Give-or-take field as typed; may stay empty.
    #[serde(default)]
    pub give_text: String,
    /// Give or take, metres.
    #[serde(default)]
    pub give_m: Option<f64>,
    /// "Not in my water."
    #[serde(default)]
    pub refused: bool,
}

impl MarkDoc {
    /// Placed or refused.
    pub fn is_settled(&self) -> bool {
        self.refused || self.depth_m.is_some()
    }
}

/// One question's answer: drafts, tries, help taken.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Answer {
    /// Fields as typed so far, by field id.
    #[serde(default)]
    pub draft: BTreeMap<String, String>,
    /// Tries, oldest first.
    #[serde(default)]
    pub tries: Vec<Try>,
    /// Hints opened (0 to 3).
    #[serde(default)]
    pub hints: u8,
    /// "Show me" was pressed.
    #[serde(default)]
    pub shown: bool,
    /// "How I know": kept, never judged.
    #[serde(default)]
    pub reason: String,
    /// "In your own words", after the answer was shown.
    #[serde(default)]
    pub own_words: String,
    /// Tries on record at each press of "Show me", in order. Empty in sheets that did not keep it.
    #[serde(default)]
    pub shown_at: Vec<usize>,
    /// "Answer again" was pressed, and no try was made since.
    #[serde(default)]
    pub again: bool,
}

/// One press of Check (or of "I can't tell").
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Try {
    /// The fields as they stood, by field id; a chosen rule stands in field "rule".
    pub fields: BTreeMap<String, String>,
    /// "I can't tell" was pressed.
    #[serde(default)]
    pub cannot_tell: bool,
    /// Hints open at that moment.
    #[serde(default)]
    pub hints: u8,
    /// Whether the answer had been shown before.
    #[serde(default)]
    pub after_shown: bool,
    /// Content id of the readings it was given on.
    pub cast_id: String,
}

impl Notebook {
    /// An empty notebook.
    pub fn new(code: impl Into<String>, lesson: Lesson) -> Self {
        Self::with_cast(code, lesson, new_doc("", ""))
    }

    /// A new notebook with readings that are at hand already (those of a newer file, say).
    pub fn with_cast(code: impl Into<String>, lesson: Lesson, cast: CastDoc) -> Self {
        let sheet = Sheet { lesson_id: lesson.id.clone(), ..Sheet::default() };
        Self {
            schema: SCHEMA.to_owned(),
            version: VERSION,
            code: code.into(),
            cast,
            pending: None,
            mark_step_m: 0.5,
            mark_count: 20,
            sheets: vec![sheet],
            lesson,
            place: Place::default(),
            undo: Vec::new(),
            bed_text: String::new(),
            had_readings: false,
        }
    }
}
