//! From bytes to a cast: encodings, delimiters, columns, units, doubts. Never a silent guess where a guess can be wrong.

mod ask;
mod build;
mod cells;
mod columns;
mod commas;
mod decode;
pub(crate) mod depths;
mod grid;
mod html;
mod interpret;
mod kind;
mod rows;
mod say;
mod scale;
mod secchi;
mod side;
pub(crate) mod words;

use crate::document::{Choices, Companions, Entry, Role, Unit};
use layercast_core::Message;

pub use decode::decode;
pub(crate) use words::is_surface;

/// Largest input that is read, bytes.
pub const MAX_BYTES: usize = 20_000_000;

/// Most columns a table may have.
pub const MAX_COLUMNS: usize = 200;

/// Rows that [`TableRead::rows`] shows at most.
pub const SHOWN_ROWS: usize = 200;

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
    /// What the table says of the Secchi disk.
    pub companions: Companions,
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

/// Reads a table from the bytes of a file: any encoding, any delimiter, a web page too.
///
/// Total: every input gives a [`TableRead`]; what cannot be read is an [`Outcome::Error`] that says what it is and what
/// to do. The work grows with the input as sorting does.
pub fn read(bytes: &[u8], choices: &Choices) -> TableRead {
    if bytes.len() > MAX_BYTES {
        return TableRead::error(vec![say::too_large(bytes.len())]);
    }
    match kind::of_bytes(bytes) {
        Some(kind) => TableRead::error(kind.messages()),
        None => read_text(&decode(bytes), choices),
    }
}

/// Reads a pasted table, or the text of a file. As [`read`], after decoding.
pub fn read_text(text: &str, choices: &Choices) -> TableRead {
    if text.len() > MAX_BYTES {
        return TableRead::error(vec![say::too_large(text.len())]);
    }
    let text = text.trim_start_matches('\u{feff}');
    if text.trim().is_empty() {
        return TableRead::error(vec![Message::new("read-error-empty"), Message::new("read-do-copy")]);
    }
    if html::is_html(text) {
        let read = html::table(text).map(|grid| interpret::interpret(&grid, choices));
        return match read {
            Some(read) if read.outcome != Outcome::Error => read,
            _ => TableRead::error(vec![Message::new("read-error-web-page"), Message::new("read-do-copy")]),
        };
    }
    if let Some(kind) = kind::of_text(text) {
        return TableRead::error(kind.messages());
    }
    let delimiter = grid::delimiter(text);
    let grid = grid::split(text, delimiter);
    if delimiter != grid::Delimiter::Sign(',') {
        return interpret::interpret(&grid, choices);
    }
    match commas::commas(&grid, choices.decimal) {
        commas::Commas::Separators => interpret::interpret(&grid, choices),
        commas::Commas::Both(joined) => {
            let mut read = interpret::interpret(&joined, choices);
            read.notice(Message::new("read-notice-commas"));
            read
        }
        commas::Commas::Ask { line, written, joined } => {
            interpret::ask_about_commas(&grid, choices, say::commas(choices, line, &written, &joined))
        }
        commas::Commas::Tangled { line, written } => {
            TableRead::error(vec![say::tangled_commas(line, &written), Message::new("read-do-semicolons")])
        }
    }
}

impl TableRead {
    /// Nothing was read; the messages say why.
    fn error(messages: Vec<Message>) -> Self {
        Self {
            outcome: Outcome::Error,
            columns: Vec::new(),
            rows: Vec::new(),
            row_count: 0,
            entries: Vec::new(),
            digit_c: 0.0,
            companions: Companions::default(),
            understood: None,
            messages,
            question: None,
            gives: None,
            leg_open: false,
        }
    }

    /// Adds a notice at the top; what is no table needs none.
    fn notice(&mut self, message: Message) {
        if self.outcome == Outcome::Error {
            return;
        }
        self.messages.insert(0, message);
        if self.outcome == Outcome::Understood {
            self.outcome = Outcome::Noticed;
        }
    }
}
