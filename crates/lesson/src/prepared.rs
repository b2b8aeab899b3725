//! What every call needs of a notebook: its cast, the analysis by the lesson's method, the content id. Computed once per call.

use crate::document::{Notebook, Sheet};
use crate::questions::Context;
use layercast_core::{Analysis, Cast, analyse};

/// A notebook's cast, analysed.
#[derive(Clone, Debug)]
pub struct Prepared {
    /// One reading per entry of the notebook's cast, in the same order.
    pub cast: Cast,
    /// Its analysis by the lesson's method.
    pub analysis: Analysis,
    /// Content id of the readings.
    pub cast_id: String,
    /// Stands in where a notebook has no sheet.
    blank: Sheet,
}

impl Prepared {
    /// What the questions look at.
    pub fn context<'a>(&'a self, notebook: &'a Notebook) -> Context<'a> {
        Context {
            cast: &self.cast,
            analysis: &self.analysis,
            lesson: &notebook.lesson,
            sheet: notebook.sheets.first().unwrap_or(&self.blank),
            cast_id: &self.cast_id,
        }
    }
}

/// Analyses the cast of a notebook.
pub fn prepare(notebook: &Notebook) -> Prepared {
    let cast = Cast::default();
    let analysis = analyse(&cast, &notebook.lesson.method.to_method());
    Prepared { cast, analysis, cast_id: String::new(), blank: Sheet::default() }
}
