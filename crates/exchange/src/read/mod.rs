//! From bytes to a cast: encodings, delimiters, columns, units, doubts. Never a silent guess where a guess can be wrong.

use crate::document::{Choices, Entry, Role, Unit};
use layercast_core::Message;

/// How a table was understood.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Outcome {
    /// Understood, nothing to say.
    Understood,
    /// Understood, with notices that name lines or what was taken for granted.
    Noticed,
    /// A question is needed first.
    Question,
    /// No table here; the messages say what it is and what to do.
    Error,
}

/// What was made of a table.
#[derive(Clone, Debug, PartialEq)]
pub struct TableRead {
    /// How it went.
    pub outcome: Outcome,
    /// The columns, in order.
    pub columns: Vec<Column>,
    /// The rows as they came (at most 200 for the view; `row_count` says how many there are).
    pub rows: Vec<Row>,
    /// All rows, also titles and blanks.
    pub row_count: usize,
    /// The readings; empty on question or error.
    pub entries: Vec<Entry>,
    /// Last decimal place of the temperatures as written, °C.
    pub digit_c: f64,
    /// "Read 20 rows: depth in metres, going down and coming up in °C."
    pub understood: Option<Message>,
    /// Notices (outcome Noticed), or what is wrong (Error); each says where, what was written, what to do.
    pub messages: Vec<Message>,
    /// The question that comes first.
    pub question: Option<Question>,
    /// "This gives 20 marks from 0.0 to 9.5 m, 40 readings."
    pub gives: Option<Message>,
    /// The way of the one series is not written and no one has chosen it: it can be asked about, but need not be.
    pub leg_open: bool,
}

/// One column.
#[derive(Clone, Debug, PartialEq)]
pub struct Column {
    /// Its head as written, if any.
    pub head: String,
    /// What it is taken for.
    pub role: Role,
    /// Its unit; `None` for roles without one, or when it is not known yet.
    pub unit: Option<Unit>,
    /// The role waits for an answer.
    pub role_open: bool,
    /// The unit waits for an answer.
    pub unit_open: bool,
}

/// One row as it came.
#[derive(Clone, Debug, PartialEq)]
pub struct Row {
    /// Line, counted from 1.
    pub line: usize,
    /// Cells as written.
    pub cells: Vec<String>,
    /// What it is.
    pub kind: RowKind,
}

/// What a row is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum RowKind {
    /// Readings.
    Reading,
    /// A title or note.
    Title,
    /// Heads of the columns (also repeated ones).
    Head,
    /// A row of units.
    Units,
    /// Nothing in it.
    Blank,
    /// A total or mean of the rows above.
    Total,
}

/// A question that is needed before the table can be used.
#[derive(Clone, Debug, PartialEq)]
pub struct Question {
    /// "Are these °F?"
    pub title: Message,
    /// "They run from 48.0 to 74.3 …"
    pub text: Message,
    /// The answers: label, and the choices that answer it.
    pub ways: Vec<(Message, Choices)>,
    /// The column it is about, from 0.
    pub column: Option<usize>,
}
