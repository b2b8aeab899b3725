//! What a group hands in: one cast, one answer sheet, the lesson they belong to, and the codes of class, seat and group.
//!
//! [`file_text`] and [`lines`] write it, [`receipt`] is the short code a student keeps, [`open`] reads whatever comes back:
//! the file, a notebook, pasted lines, a saved report page. Verdicts are in none of them: whoever opens one computes them
//! again from the readings and the tries. `text` squeezes and checks the writing, [`open`] tells the forms apart.

mod open;
mod text;

pub use open::{Opened, Refused, fuzz_hand_in, open};

use crate::document::{Lesson, Notebook, Sheet};
use layercast_exchange::document::{CastDoc, Origin, content_id, short_hash};
use layercast_exchange::lines as pasted;
use serde::{Deserialize, Serialize};

/// Name of the schema in [`HandIn::schema`]; also the id of the block that carries it in a saved report page.
pub const SCHEMA: &str = "layercast-hand-in";
/// Version written today. Readers of older versions stay for ever.
pub const VERSION: u32 = 1;

/// One cast and one answer sheet.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct HandIn {
    /// Always [`SCHEMA`].
    pub schema: String,
    /// Schema version.
    pub version: u32,
    /// Sum over all the rest as it was written: tells whether a file was edited by hand. No protection.
    #[serde(default)]
    pub check: String,
    /// Code of the notebook it came from.
    #[serde(default)]
    pub notebook: String,
    /// Class, seat (both in the sheet) and group (in the cast) are codes, never a person's name.
    pub sheet: Sheet,
    /// The cast, without the table it was read from.
    pub cast: CastDoc,
    /// How its readings came: an example is nobody's measurement.
    #[serde(default)]
    pub origin: Origin,
    /// The lesson, so that everything can be computed again.
    pub lesson: Lesson,
}

/// How a hand-in came.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Form {
    /// The file of a hand-in, or its text.
    File,
    /// A notebook's file.
    Notebook,
    /// Checked lines.
    Lines,
    /// A saved report page.
    Page,
}

/// Whether it is as it was written.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Check {
    /// It agrees with its sum.
    Same,
    /// It does not: somebody edited it, or something on the way did.
    Edited,
    /// It carries no sum: a notebook.
    Unknown,
}

impl HandIn {
    /// The hand-in of a notebook: its cast and the sheet in use.
    pub fn of(notebook: &Notebook) -> Self {
        let blank = Sheet { lesson_id: notebook.lesson.id.clone(), ..Sheet::default() };
        Self::of_sheet(notebook, notebook.sheets.first().unwrap_or(&blank))
    }

    fn of_sheet(notebook: &Notebook, sheet: &Sheet) -> Self {
        let origin = notebook.cast.source.as_ref().map(|source| source.origin).unwrap_or_default();
        let mut hand_in = Self {
            schema: SCHEMA.to_owned(),
            version: VERSION,
            check: String::new(),
            notebook: notebook.code.clone(),
            sheet: sheet.clone(),
            cast: CastDoc { source: None, ..notebook.cast.clone() },
            origin,
            lesson: notebook.lesson.clone(),
        };
        hand_in.check = text::check(&text::written(&hand_in));
        hand_in
    }

    /// The notebook to go on with: its cast, its sheet, its lesson. What a hand-in does not hold (the table as it was pasted,
    /// earlier casts to go back to) is not in it.
    pub fn to_notebook(&self) -> Notebook {
        let mut notebook = Notebook::with_cast(self.notebook.clone(), self.lesson.clone(), self.cast.clone());
        notebook.had_readings = !self.cast.entries.is_empty();
        notebook.sheets = vec![self.sheet.clone()];
        notebook
    }

    /// The name it has by all that is in it but its sum: the same in every form it came in.
    pub fn id(&self) -> String {
        short_hash(&text::written(&Self { check: String::new(), ..self.clone() }))
    }

    /// Content id of its readings.
    pub fn cast_id(&self) -> String {
        content_id(&self.cast)
    }

    /// The short code that stands on its slip: "A7KQ-2M9X".
    pub fn receipt(&self) -> String {
        let id = self.id();
        let part = |from: usize| id.get(from..from + 4).unwrap_or_default();
        format!("{}-{}", part(0), part(4))
    }
}

/// The file a student hands in. The same notebook gives the same bytes everywhere.
///
/// It is JSON, and stands unaltered in the block `<script type="application/json" id="layercast-hand-in">` of a page:
/// `<`, `>` and `&` are written as escapes.
pub fn file_text(notebook: &Notebook) -> String {
    text::written(&HandIn::of(notebook))
}

/// The same as lines of text to be pasted anywhere ([`layercast_exchange::lines`]); none where it would take more than
/// 9,999 of them.
pub fn lines(notebook: &Notebook) -> Vec<String> {
    let hand_in = HandIn::of(notebook);
    pasted::write(&hand_in.id(), text::written(&hand_in).as_bytes()).unwrap_or_default()
}

/// The short code a student keeps. It changes when anything that is handed in changes.
pub fn receipt(notebook: &Notebook) -> String {
    HandIn::of(notebook).receipt()
}
