//! What every call needs of a notebook: its cast, the analysis by the lesson's method, the content id. Computed once per call.

use crate::document::{Notebook, Sheet};
use crate::questions::Context;
use layercast_core::{Analysis, Cast, Leg, analyse};
use layercast_exchange::document::{content_id, to_cast};

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

    /// The used readings (indices into the cast) in the order the cursor walks them: by depth, going down before coming
    /// up. [`crate::view::Look::readings`] and the points of the picture stand in this order.
    pub fn walk(&self) -> Vec<usize> {
        let used =
            self.analysis.checked.iter().enumerate().filter(|(_, checked)| checked.used).map(|(i, _)| i);
        let mut walk: Vec<(f64, Leg, usize)> = used
            .filter_map(|i| self.cast.readings.get(i).map(|reading| (reading.depth_m, reading.leg, i)))
            .collect();
        walk.sort_by(|a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)).then(a.2.cmp(&b.2)));
        walk.into_iter().map(|(_, _, i)| i).collect()
    }
}

/// Analyses the cast of a notebook.
pub fn prepare(notebook: &Notebook) -> Prepared {
    let cast = to_cast(&notebook.cast);
    let analysis = analyse(&cast, &notebook.lesson.method.to_method());
    Prepared { cast, analysis, cast_id: content_id(&notebook.cast), blank: Sheet::default() }
}
