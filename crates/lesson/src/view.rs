//! What the page shows: plain values, words as messages, buttons with their actions. Nothing covered is in here.
//!
//! Long because every view that crosses to the page stands here once.

mod doors;

use crate::action::Action;
use crate::document::{MarkName, Place, ReportPart};
use layercast_core::{Arg, Message};
use layercast_exchange::document::{CompanionField, CorrectionField, LegDoc, Role, Unit};
use serde::Serialize;
use std::collections::BTreeMap;

pub use doors::{
    DoorGroup, DoorRow, DoorView, DoorsView, OtherCable, OtherDigits, OtherMarks, OtherWait, OtherWays,
    Otherwise, OtherwiseView, RangesView,
};

/// A number with the decimals it is shown with; the page formats it for the reader's region.
#[derive(Clone, Copy, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct Num {
    /// The value.
    pub value: f64,
    /// Digits after the decimal sign.
    pub decimals: u8,
}

/// A message ready for the crossing.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null, hashmap_as_object))]
pub struct Said {
    /// Id in the message files.
    pub id: String,
    /// Arguments by name.
    pub args: BTreeMap<String, SaidArg>,
}

/// An argument of a [`Said`].
#[allow(missing_docs, reason = "each variant's line names its field")]
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum SaidArg {
    /// A measured number.
    Number { value: f64, decimals: u8 },
    /// A count.
    Count { count: u32 },
    /// A person's text.
    Text { text: String },
    /// A message inside.
    Message { said: Box<Said> },
}

impl From<Message> for Said {
    fn from(message: Message) -> Self {
        let args = message.args.into_iter().map(|(name, arg)| (name.to_owned(), arg.into())).collect();
        Self { id: message.id.to_owned(), args }
    }
}

impl Said {
    /// A message around two others, its arguments `first` and `second`.
    pub(crate) fn of_two(id: &'static str, first: Said, second: Said) -> Said {
        let mut said: Said = Message::new(id).into();
        for (name, inner) in [("first", first), ("second", second)] {
            said.args.insert(name.to_owned(), SaidArg::Message { said: Box::new(inner) });
        }
        said
    }
}

impl From<Arg> for SaidArg {
    fn from(arg: Arg) -> Self {
        match arg {
            Arg::Number { value, decimals } => Self::Number { value, decimals },
            Arg::Count(count) => Self::Count { count },
            Arg::Text(text) => Self::Text { text },
            Arg::Message(message) => Self::Message { said: Box::new((*message).into()) },
        }
    }
}

/// A button: its words and what pressing it does.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct Way {
    /// Its words.
    pub label: Said,
    /// What it does.
    pub action: Action,
    /// The main button of its place.
    pub main: bool,
    /// Waits: shown in the cover's colours, `aria-disabled`; the line says what opens it.
    pub waits: Option<Said>,
}

/// Everything the page shows of one notebook.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct Look {
    /// "C-4T7K".
    pub code: String,
    /// The water's name, may be empty.
    pub water: String,
    /// The group's letter, may be empty.
    pub group: String,
    /// Code of the class, may be empty.
    pub class: String,
    /// Code of the seat, may be empty.
    pub seat: String,
    /// Where the group is.
    pub place: Place,
    /// Nothing has been read or typed yet.
    pub empty: bool,
    /// Name of the file a save offers ("C-4T7K"), without ending.
    pub file_name: String,
    /// Log.
    pub log: LogView,
    /// Profile.
    pub profile: ProfileView,
    /// Questions.
    pub questions: QuestionsView,
    /// Report; `None` while another screen is in hand.
    pub report: Option<ReportView>,
    /// One sentence that tells the picture; nothing covered is in it.
    pub alt: Said,
    /// The used readings in the order the cursor walks them (by depth, then down before up), for picture and table.
    pub readings: Vec<ReadingView>,
    /// Trials behind the ranges.
    pub ranges: RangesView,
}

/// One reading under the cursor.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ReadingView {
    /// Spoken and written when the cursor stands on it: "At 5.0 m 13.6 °C going down, 13.4 °C coming up".
    pub said: Said,
    /// Row of the readings table it belongs to.
    pub row: usize,
}

/// Log.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct LogView {
    /// "Two cells to look at", "Find the layers of your lake" …
    pub title: Said,
    /// "An example: an invented pond …"; `None` for readings of one's own.
    pub example: Option<Said>,
    /// "Read 20 rows: …"; `None` for typed casts.
    pub understood: Option<Said>,
    /// Notices of the reader.
    pub notices: Vec<Said>,
    /// "Not right?" can open the table view.
    pub can_reopen: bool,
    /// The undo button, with what it undoes.
    pub undo: Option<Way>,
    /// One temperature column (way unknown or a single leg) instead of two.
    pub one_column: bool,
    /// The temperatures of the table stand in °F, and are typed in it.
    pub fahrenheit: bool,
    /// The rows of the table.
    pub rows: Vec<LogRow>,
    /// Doubts not settled yet, in the order of the rows.
    pub doubts: Vec<DoubtView>,
    /// Readings left out or kept by a person, each with a way back.
    pub settled: Vec<DoubtView>,
    /// The table that waits.
    pub pending: Option<PendingView>,
    /// Down / up / leave open, while the way of a single series is not known; and the sentence about it.
    pub leg_choice: Option<LegChoiceView>,
    /// Nothing can be drawn yet: why, and what to do.
    pub not_yet: Option<Said>,
    /// Depth of the bed as typed.
    pub bed_text: String,
    /// How many rows are not listed, in a very long cast.
    pub more_rows: Option<Said>,
    /// The row listed first, counted from 0.
    pub first_row: usize,
    /// How many rows there are, listed or not.
    pub row_count: usize,
    /// How many doubts are not listed yet.
    pub more_doubts: Option<Said>,
    /// How many decisions are not listed.
    pub more_settled: Option<Said>,
    /// The teacher's lesson that is on, while no reading is in.
    pub lesson: Option<Said>,
    /// The points of the guess, always five; `None` once it is sealed.
    pub guess: Option<Vec<GuessRow>>,
    /// Three readings to place by hand; `None` where the cast has too few.
    pub by_hand: Option<ByHandView>,
    /// Another group's cast: what is held, and whether it can be taken away.
    pub other: (Said, bool),
    /// The corrections.
    pub corrections: CorrectionsView,
    /// Oxygen, the Secchi disk, the height of the lake.
    pub companions: CompanionsView,
}

/// Three readings to place on the picture by hand.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ByHandView {
    /// One a reading, downward.
    pub rows: Vec<HandRow>,
    /// All are placed.
    pub can_check: bool,
    /// They were checked once.
    pub checked: bool,
    /// All lay right at the last check.
    pub all_right: bool,
    /// The rest has been drawn.
    pub drawn: bool,
    /// The curve waits for them: the lesson wants it so.
    pub waits: bool,
}

/// A reading to place by hand.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct HandRow {
    /// "21.9 °C at 3.0 m".
    pub name: Said,
    /// Where it lies now, for whoever does not see it.
    pub spoken: Said,
    /// It lies somewhere.
    pub is_placed: bool,
    /// What was found at the last check, while it lies where it lay then.
    pub said: Option<Said>,
    /// It was right.
    pub right: bool,
}

/// One point of the guess.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct GuessRow {
    /// Depth as typed.
    pub depth: String,
    /// Temperature as typed.
    pub temp: String,
    /// What is filled in cannot be read as a depth.
    pub depth_unread: bool,
    /// What is filled in cannot be read as a temperature.
    pub temp_unread: bool,
}

/// The list of corrections.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct CorrectionsView {
    /// What each one in force did, one sentence each: for the panel of Log, beside the door.
    pub in_force: Vec<Said>,
    /// Every one of the list.
    pub items: Vec<CorrectionView>,
    /// One for each kind that can be added.
    pub ways: Vec<Way>,
    /// "The probe was still settling …", with its way; only where the readings show it.
    pub lag: Option<LagView>,
}

/// One correction of the list.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct CorrectionView {
    /// "Probe check".
    pub title: Said,
    /// What to measure for it.
    pub about: Said,
    /// Its fields.
    pub fields: Vec<CorrectionFieldView>,
    /// What it did, or why it is not applied.
    pub said: Said,
    /// It is not applied, or needs a second look.
    pub doubted: bool,
    /// "Take it away".
    pub remove: Way,
}

/// A field of a correction.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct CorrectionFieldView {
    /// Which.
    pub input: CorrectionField,
    /// "In ice water the probe read, °C".
    pub label: Said,
    /// As typed.
    pub text: String,
    /// The text cannot be read.
    pub odd: bool,
}

/// The offer to correct for a probe that was still settling.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct LagView {
    /// What the readings show.
    pub text: Said,
    /// "Correct for it".
    pub way: Way,
}

/// What is measured beside the temperature.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct CompanionsView {
    /// Where the disk vanished, as typed or read.
    pub secchi_gone: String,
    /// Where it came back.
    pub secchi_back: String,
    /// Height of the lake above the sea.
    pub altitude: String,
    /// A field that cannot be read.
    pub odd: Option<CompanionField>,
    /// What the fields come to: the Secchi depth, the height that oxygen is worked out for, what cannot be read.
    pub said: Vec<Said>,
    /// Oxygen at each mark, at the first 200.
    pub rows: Vec<OxygenRow>,
    /// Some oxygen was read.
    pub any_oxygen: bool,
}

/// Oxygen at one mark.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct OxygenRow {
    /// The mark, metres.
    pub depth: Num,
    /// The cells to type into: one, or one a way.
    pub cells: Vec<OxygenCell>,
    /// Per cent of saturation, of the mean.
    pub per_cent: Option<Num>,
}

/// A cell of oxygen.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct OxygenCell {
    /// The reading, if there is one.
    pub entry: Option<usize>,
    /// As written or typed.
    pub text: String,
    /// It holds no number that oxygen can have.
    pub odd: bool,
}

/// The choice of a way.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct LegChoiceView {
    /// "Going down or coming up?"
    pub title: Said,
    /// Why it matters; "Read once: we assume ± 0.1 °C."
    pub text: Said,
    /// The ways.
    pub ways: Vec<Way>,
}

/// A row of the log's table.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct LogRow {
    /// Depth by the marks, metres, as written.
    pub depth: Num,
    /// The row stands at this depth, metres: that of the mark once corrected, the surface for one above it.
    pub at_m: f64,
    /// The corrected depth, where it is another one.
    pub corrected: Option<Num>,
    /// Depth as written, when it cannot be read.
    pub depth_text: Option<String>,
    /// A whole metre: set in bold.
    pub whole: bool,
    /// Every reading of the row.
    pub entries: Vec<usize>,
    /// Going down (or the one temperature).
    pub down: LogCell,
    /// Coming up; `None` in a one-column table.
    pub up: Option<LogCell>,
    /// Down minus up.
    pub apart: Option<Num>,
}

/// A temperature cell of the log.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct LogCell {
    /// The reading, if there is one.
    pub entry: Option<usize>,
    /// Way of the cell, for typing into it.
    pub leg: LegDoc,
    /// Its value, when it has one.
    pub num: Option<Num>,
    /// The text, as written or typed, when it has no value or when it is being typed.
    pub text: String,
    /// Index into `doubts`.
    pub doubt: Option<usize>,
    /// Left out of the profile.
    pub out: bool,
}

/// A doubt, or a decision that can be taken back.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct DoubtView {
    /// "4.0 m, going down".
    pub place: Said,
    /// Why it is odd, with what was written.
    pub text: Said,
    /// Two or three ways out.
    pub ways: Vec<Way>,
    /// The reading whose cell "Type it" focuses; `None` where typing makes no sense.
    pub type_entry: Option<usize>,
    /// "Type it" focuses the depth cell of that reading instead of its temperature.
    pub type_depth: bool,
    /// Its depth, metres, for the diamond in the picture.
    pub depth_m: Option<f64>,
}

/// The table view: rows as they came, heads that can be set.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct PendingView {
    /// "20 rows. The heads are ours …"
    pub head: Said,
    /// What was understood so far.
    pub understood: Option<Said>,
    /// Columns.
    pub columns: Vec<PendingColumn>,
    /// The first rows.
    pub rows: Vec<PendingRow>,
    /// "11 more rows like these, to line 22".
    pub more: Option<Said>,
    /// The question, if one waits.
    pub question: Option<PendingQuestion>,
    /// What was taken for granted, or what is wrong.
    pub notices: Vec<Said>,
    /// "This gives …"
    pub gives: Option<Said>,
    /// "Use this table": waits until the question is answered.
    pub use_table: Way,
    /// "Undo the paste", or what fits the way the table came.
    pub drop: Way,
    /// Nothing here is a table: the panel says so instead of asking.
    pub is_error: bool,
}

/// A column of the table view.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct PendingColumn {
    /// Role.
    pub role: Role,
    /// Role waits for an answer.
    pub role_open: bool,
    /// Unit.
    pub unit: Option<Unit>,
    /// Unit waits for an answer.
    pub unit_open: bool,
}

/// A row of the table view.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct PendingRow {
    /// Line.
    pub line: usize,
    /// Cells.
    pub cells: Vec<String>,
    /// A reading, or skipped with its reason ("a title, not a reading").
    pub skipped: Option<Said>,
}

/// The question of the table view.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct PendingQuestion {
    /// Title.
    pub title: Said,
    /// Text.
    pub text: Said,
    /// Ways.
    pub ways: Vec<Way>,
}

/// Profile.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ProfileView {
    /// Too little to draw: why, and what to do.
    pub not_yet: Option<Said>,
    /// The panel shows the marks (true) or what was found (false).
    pub marking: bool,
    /// Checked at least once: what was uncovered stays so.
    pub checked: bool,
    /// The marks, top to bottom.
    pub marks: Vec<MarkView>,
    /// What the words at the marks mean: thermocline and steepest, give or take.
    pub mark_words: Vec<Said>,
    /// "Check my marks"; waits until each is placed or refused.
    pub check: Way,
    /// "I see no layers".
    pub no_layers: Way,
    /// Two partners who mark in turn: both their marks once all are in, and the way to hand over or back.
    pub partner: (Vec<Said>, Option<Way>),
    /// What an early check would reveal; `None` when it would reveal nothing.
    pub early: Option<EarlyView>,
    /// What the rules found; `None` until checked.
    pub found: Option<FoundView>,
    /// Warmest, coldest, apart: never covered.
    pub facts: Vec<Said>,
    /// "Going down read 0.1 °C warmer on average …"; never covered.
    pub legs_note: Option<Said>,
    /// Other rules; empty until checked.
    pub rules: Vec<RuleGroup>,
    /// How sure, read otherwise, how hard to mix; `None` until checked, and where there is nothing to say.
    pub doors: Option<DoorsView>,
    /// Readings as a table.
    pub table: Vec<ReadingRow>,
    /// What is said under it: corrections, oxygen, the Secchi disk.
    pub table_notes: Vec<Said>,
    /// How many rows are not listed, in a very long cast.
    pub more_rows: Option<Said>,
}

/// One mark.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct MarkView {
    /// Which.
    pub mark: MarkName,
    /// "Bottom of the mixed layer".
    pub name: Said,
    /// Depth field as typed.
    pub depth_text: String,
    /// Give-or-take field as typed.
    pub give_text: String,
    /// Depth, metres, when placed.
    pub depth_m: Option<f64>,
    /// Shallowest and deepest it may stand.
    pub least_m: f64,
    /// See `least_m`.
    pub most_m: f64,
    /// "4.0 metres deep", for the slider.
    pub spoken: Said,
    /// "Not in my water".
    pub refused: bool,
    /// What is wrong with the typed text, and what to do.
    pub problem: Option<Said>,
}

/// What an early check would show.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct EarlyView {
    /// "Checking now shows the answers to questions 4 and 5."
    pub said: Said,
    /// "They then earn no credit. Your marks stay as they are, either way."
    pub more: Said,
    /// "Answer 4 and 5 first", then "Check now".
    pub ways: Vec<Way>,
}

/// What the rules found.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct FoundView {
    /// Title.
    pub title: Said,
    /// Sentences under it.
    pub lead: Vec<Said>,
    /// The layers, each with its value, verdict, range, rule.
    pub items: Vec<FoundItem>,
    /// Doubt blocks (unstable water): "Look at the table", "Leave them out", "It was like that".
    pub doubts: Vec<DoubtView>,
}

/// One layer found.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct FoundItem {
    /// "Thermocline".
    pub name: Said,
    /// The large number.
    pub value: Option<Num>,
    /// Unit behind the number ("m", "°C per metre"), or the words in place of it ("none", "can't tell").
    pub unit: Said,
    /// The student's mark beside it.
    pub verdict: Option<VerdictView>,
    /// "Rule: …", and notes in small print.
    pub notes: Vec<Said>,
}

/// Sign, word and reason.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct VerdictView {
    /// Ring and dot.
    pub sign: Sign,
    /// The sentence.
    pub said: Said,
}

/// The ring is the range, the dot is the student's.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum Sign {
    /// Dot inside.
    Inside,
    /// Dot on the ring.
    Close,
    /// Dot outside.
    Outside,
    /// Ring alone: nothing to compare with.
    Bare,
}

/// A list of rules for one depth.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct RuleGroup {
    /// "Thermocline".
    pub name: Said,
    /// Rules; the class's own first.
    pub rows: Vec<RuleRow>,
    /// How far they lie apart: "All 14 rules put the end of the mixed layer between 2.2 and 4.0 m."
    pub spread: Option<Said>,
}

/// One rule.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct RuleRow {
    /// Its name.
    pub name: Said,
    /// Its depth; `None`: it finds none.
    pub depth: Option<Num>,
    /// The class's own.
    pub own: bool,
}

/// A row of the readings table.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ReadingRow {
    /// Depth.
    pub depth: Num,
    /// The mark as read, where corrections made another depth of it.
    pub mark: Option<Num>,
    /// A whole metre.
    pub whole: bool,
    /// Going down.
    pub down: Option<Num>,
    /// Coming up.
    pub up: Option<Num>,
    /// Mean.
    pub mean: Option<Num>,
    /// °C per metre to the next row; only where it is uncovered.
    pub per_metre: Option<Num>,
    /// Dissolved oxygen, mg/L: the mean where it was read twice.
    pub oxygen: Option<Num>,
    /// Its share of what the water holds at this temperature, per cent.
    pub per_cent: Option<Num>,
}

/// Questions.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct QuestionsView {
    /// No questions yet: why, and what to do.
    pub not_yet: Option<Said>,
    /// One mark of the rail each.
    pub rail: Vec<RailItem>,
    /// Why these questions (mixed, weak, under ice …) and which were left out with their reasons.
    pub about: Vec<Said>,
    /// The question in hand.
    pub current: Option<QuestionView>,
    /// Every question is settled and the one in hand is closed: says so.
    pub all_done: Option<Said>,
}

/// One mark of the rail.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct RailItem {
    /// Number, from 1.
    pub number: usize,
    /// Settled.
    pub done: bool,
    /// In hand.
    pub current: bool,
}

/// One question as it stands.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct QuestionView {
    /// Number, from 1.
    pub number: usize,
    /// Of how many.
    pub of: usize,
    /// Question id.
    pub id: String,
    /// The question.
    pub ask: Said,
    /// Sentences under it.
    pub lead: Vec<Said>,
    /// It opens only when all marks are placed or refused: says so, with a way to Profile.
    pub locked: Option<Way>,
    /// The parts.
    pub parts: Vec<PartView>,
    /// "How I know" is asked.
    pub reason: Option<String>,
    /// "In your own words": the prompt and the text so far.
    pub own_words: Option<(Said, String)>,
    /// Buttons, main first.
    pub buttons: Vec<Way>,
    /// Small print at the foot.
    pub notes: Vec<Said>,
}

/// One part of a question.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct PartView {
    /// Settled: its fields are closed.
    pub settled: bool,
    /// Latest verdict, if any.
    pub verdict: Option<VerdictView>,
    /// Sentences under the verdict.
    pub notes: Vec<Said>,
    /// The sum on one's own water, when it may be shown.
    pub sum: Vec<SumLine>,
    /// "Anything from 4.8 to 5.2 fits your readings …"
    pub fits: Option<Said>,
    /// Hints so far.
    pub hints: Vec<HintView>,
    /// The picture that was right, once it is settled.
    pub picture: Option<SmallPictures>,
    /// Lines of fields, while open.
    pub lines: Vec<FieldLine>,
    /// Id of the field that the verdict is about, where it is not the first one: the focus goes there.
    pub look_at: Option<String>,
}

/// One line of fields: label, then fields with words between.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct FieldLine {
    /// "It loses".
    pub label: Said,
    /// Fields.
    pub fields: Vec<FieldView>,
    /// "first answer: 2.5".
    pub before: Option<Said>,
}

/// One field.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct FieldView {
    /// Id, unique in the question.
    pub id: String,
    /// What it is for, spoken: "from, metres".
    pub name: Said,
    /// How it is answered.
    pub kind: FieldKind,
    /// The text so far.
    pub text: String,
    /// Words behind it: "m to", "°C in each metre".
    pub after: Option<Said>,
    /// A depth field that is also a grip of the picture.
    pub grip: Option<GripView>,
}

/// A depth field that is also a grip.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct GripView {
    /// Depth, metres, when set.
    pub depth_m: Option<f64>,
    /// Shallowest and deepest it may stand.
    pub least_m: f64,
    /// See `least_m`.
    pub most_m: f64,
    /// "4.0 metres deep".
    pub spoken: Said,
    /// Word on the grip: "from", "to", "steepest".
    pub word: Said,
}

/// How a field is answered.
#[allow(missing_docs, reason = "each variant's line names its field")]
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(tag = "kind", rename_all = "snake_case")]
pub enum FieldKind {
    /// A number (or a depth, or a range) typed as text.
    Number,
    /// One of a list; the first option's value is "" and asks for a choice.
    List { options: Vec<OptionView> },
    /// One of a few lines (radio).
    Choice { options: Vec<OptionView> },
    /// Facts to tick ("1" or ""): each its own line.
    Fact { fact: Said },
    /// One of a few small pictures on the same axes.
    Pictures { pictures: SmallPictures },
    /// A text of the student's own, and sentences it may begin with.
    Prose { starters: Vec<Said> },
}

/// Small pictures on the same axes, one of which is chosen.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct SmallPictures {
    /// The pictures, in the order they are shown.
    pub options: Vec<PictureOption>,
    /// The curve faint behind each: (depth in metres, °C), downward.
    pub own: Vec<(f64, f64)>,
    /// Deepest depth of the axis, metres.
    pub depth_m: f64,
    /// Ends of the axis of temperature, °C.
    pub low_c: f64,
    /// See `low_c`.
    pub high_c: f64,
}

/// One small picture.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct PictureOption {
    /// Value stored.
    pub value: String,
    /// "A".
    pub label: Said,
    /// The picture in words.
    pub alt: Said,
    /// Its curve: (depth in metres, °C), downward.
    pub curve: Vec<(f64, f64)>,
}

/// One option.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct OptionView {
    /// Value stored.
    pub value: String,
    /// Words.
    pub label: Said,
}

/// A hint.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct HintView {
    /// "Hint 1 of 3".
    pub head: Said,
    /// The hint.
    pub said: Option<Said>,
    /// Hint 3: the same step worked on another interval.
    pub sum: Vec<SumLine>,
}

/// One line of arithmetic.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct SumLine {
    /// "20.05 − 17.55 =".
    pub left: Said,
    /// "2.5 °C".
    pub right: Said,
    /// "what the water lost".
    pub gloss: Said,
    /// The last line, ruled off.
    pub result: bool,
}

/// The report. Nothing covered is in it.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ReportView {
    /// Too little has been read: why, and what to do.
    pub not_yet: Option<Said>,
    /// The texts, in the order of writing.
    pub parts: Vec<ReportPartView>,
    /// The group's own numbers, to put into a text.
    pub bank: Vec<ReportWord>,
    /// Some numbers are still covered: says what uncovers them.
    pub covered: Option<Said>,
    /// What the texts hold, by presence alone.
    pub checks: Vec<ReportCheck>,
    /// How the work stands: name and value.
    pub stands: Vec<ReportStand>,
    /// The page.
    pub page: ReportPage,
}

/// One text.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ReportPartView {
    /// Which.
    pub part: ReportPart,
    /// "What did you find?"
    pub name: Said,
    /// Beginnings of sentences, to put into the text.
    pub starters: Vec<Said>,
    /// The text so far.
    pub text: String,
}

/// A number of the group's own water.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ReportWord {
    /// On the button: "thermocline 3.75 m".
    pub label: Said,
    /// What it puts into the text: "3.75 m (3.5 to 4.0 m)".
    pub put: Said,
    /// Its range and rule.
    pub about: Option<Said>,
}

/// One line of the checklist.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ReportCheck {
    /// "a unit".
    pub name: Said,
    /// It stands in the texts.
    pub there: bool,
}

/// One line of how the work stands.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ReportStand {
    /// "Questions settled".
    pub name: Said,
    /// "8 of 8".
    pub value: Said,
}

/// The page as it will print.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ReportPage {
    /// The water's name, may be empty.
    pub water: String,
    /// "9.8 m deep", what it is read from; may be none.
    pub place: Vec<Said>,
    /// "group C", the notebook's code.
    pub who: Vec<Said>,
    /// What the picture shows.
    pub caption: Said,
    /// "Dashed: where we marked it first."
    pub caption_marks: Option<Said>,
    /// What was found, what it could be, what was marked.
    pub found: Vec<ReportFound>,
    /// Sentences under it, of water without layers above all.
    pub found_notes: Vec<Said>,
    /// All readings.
    pub rows: Vec<ReadingRow>,
    /// How many rows are not printed.
    pub more_rows: Option<Said>,
    /// How well the two ways agree; what was corrected and left out.
    pub notes: Vec<Said>,
    /// How it was computed.
    pub how: Vec<Said>,
}

/// One line of what was found.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct ReportFound {
    /// "Thermocline".
    pub name: Said,
    /// The depth.
    pub value: Option<Num>,
    /// Unit behind it, or the words in its place.
    pub unit: Said,
    /// "3.5 to 4.0 m".
    pub range: Option<Said>,
    /// The rule's name.
    pub rule: Option<Said>,
    /// Where the group marked it.
    pub marked: Option<Said>,
}
