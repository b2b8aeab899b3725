//! What every call needs of a notebook: its cast, the analysis by the lesson's method, the content id. Computed once per call.

use crate::document::{Notebook, Sheet};
use crate::questions::{Context, Memo};
use crate::ranges;
use crate::tables;
use layercast_core::cast::corrections::{MOST_LAG, Outcome};
use layercast_core::cast::lag_share::{LagEstimate, lag_share};
use layercast_core::certainty::{self, Certainty};
use layercast_core::order::sort_by;
use layercast_core::{Analysis, Cast, Leg, analyse};
use layercast_exchange::document::{CastDoc, CorrectedDoc, Source, content_id, corrected, oxygen_mg_l};
use layercast_exchange::read::TableRead;
use std::borrow::Cow;

/// Least share of a step left over that is worth correcting for: less cannot be told from noise in a class cast (ours).
const LEAST_LAG: f64 = 0.1;
/// Most readings of a cast that was read stop by stop.
const MOST_STOPS: usize = 5000;

/// A notebook's cast, analysed.
#[derive(Clone, Debug)]
pub struct Prepared {
    /// One reading per entry of the notebook's cast, in the same order, corrected.
    pub cast: Cast,
    /// The readings as taken, before corrections.
    pub raw: Cast,
    /// What became of each correction; `None` while it waits for a field.
    pub outcomes: Vec<Option<Outcome>>,
    /// How many readings stand above the water once corrected: they are left out.
    pub above_water: usize,
    /// Its analysis by the lesson's method; with the ranges of the trials, where those are at hand.
    pub analysis: Analysis,
    /// What trials of it would be of: what they came to counts only for the same key.
    pub ranges_key: String,
    /// What the trials came to, where they are at hand.
    pub certainty: Option<Certainty>,
    /// Content id of the readings.
    pub cast_id: String,
    /// Oxygen at each depth where it was read, downward: depth in metres, mean in mg/L.
    pub oxygen_mg_l: Vec<(f64, f64)>,
    /// What questions have worked out of it so far.
    memo: Memo,
    /// Stands in where a notebook has no sheet.
    blank: Sheet,
    /// A table that was read on the way here.
    table: Option<Table>,
}

/// A table and what was read of it.
#[derive(Clone, Debug)]
pub(crate) struct Table {
    /// The text and the choices it was read with.
    pub source: Source,
    /// What was read.
    pub read: TableRead,
}

/// What one call has found out of the notebook so far, so that doing a thing and looking at it analyse once.
#[derive(Debug, Default)]
pub(crate) struct Ready<'a> {
    prepared: Option<Prepared>,
    table: Option<Table>,
    /// What trials came to, as the page keeps it.
    ranges: Option<&'a str>,
}

impl<'a> Ready<'a> {
    /// With what trials came to.
    pub fn with(ranges: Option<&'a str>) -> Self {
        Self { ranges, ..Self::default() }
    }

    /// The notebook's cast, analysed now or before. The cast is the one of the last call, or [`Ready::cast_changed`] was
    /// called in between.
    pub fn of(&mut self, notebook: &Notebook) -> &Prepared {
        self.prepared.get_or_insert_with(|| prepare_with(notebook, self.ranges))
    }

    /// The analysis so far is of another cast.
    pub fn cast_changed(&mut self) {
        self.prepared = None;
    }

    /// A table was read that may be asked for again.
    pub fn keep(&mut self, source: Source, read: TableRead) {
        self.table = Some(Table { source, read });
    }

    /// All of it, to look at the notebook with.
    pub fn into_prepared(mut self, notebook: &Notebook) -> Prepared {
        let mut prepared = self.prepared.take().unwrap_or_else(|| prepare_with(notebook, self.ranges));
        prepared.table = self.table;
        prepared
    }
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
            oxygen_mg_l: &self.oxygen_mg_l,
            memo: &self.memo,
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
        sort_by(&mut walk, |a, b| a.0.total_cmp(&b.0).then(a.1.cmp(&b.1)).then(a.2.cmp(&b.2)));
        walk.into_iter().map(|(_, _, i)| i).collect()
    }

    /// What the two ways say of a probe that was still settling, if it may be corrected for: the ways differ as a slow
    /// probe makes them, and not so much was left over that correcting would only swell the noise (methods 2.6).
    pub fn lag(&self) -> Option<LagEstimate> {
        // A logger's cast of thousands of readings has no stops, and asking would take as long as all the rest.
        Some(&self.raw)
            .filter(|raw| raw.readings.len() <= MOST_STOPS)
            .and_then(lag_share)
            .filter(|lag| lag.sign_fits && lag.r >= LEAST_LAG - 1e-9 && lag.r <= MOST_LAG + 1e-9)
    }

    /// The share of [`Prepared::lag`].
    pub(crate) fn lag_share(&self) -> Option<f64> {
        self.lag().map(|lag| lag.r)
    }

    /// What a table says, read now or on the way here.
    pub(crate) fn read(&self, source: &Source) -> Cow<'_, TableRead> {
        match &self.table {
            Some(table) if table.source == *source => Cow::Borrowed(&table.read),
            _ => Cow::Owned(tables::read(source)),
        }
    }
}

/// Mean oxygen at each depth where it was read, downward.
pub(crate) fn oxygen(doc: &CastDoc, cast: &Cast) -> Vec<(f64, f64)> {
    if doc.entries.iter().all(|entry| entry.oxygen.is_none()) {
        return Vec::new();
    }
    let read = cast.readings.iter().enumerate().filter(|(_, reading)| reading.depth_m.is_finite());
    let mut read: Vec<(f64, f64)> =
        read.filter_map(|(i, reading)| Some((reading.depth_m, oxygen_mg_l(doc, i)?))).collect();
    sort_by(&mut read, |a, b| a.0.total_cmp(&b.0));
    let same = |a: &(f64, f64), b: &(f64, f64)| b.0 - a.0 < 1e-6;
    let mean = |at: &[(f64, f64)]| {
        let sum: f64 = at.iter().map(|r| r.1).sum();
        at.first().map(|first| (first.0, sum / at.len() as f64))
    };
    read.chunk_by(same).filter_map(mean).collect()
}

/// Analyses the cast of a notebook.
pub fn prepare(notebook: &Notebook) -> Prepared {
    prepare_with(notebook, None)
}

/// Analyses the cast of a notebook, with the ranges that trials came to (see [`crate::ranges`]). A text of other readings
/// is as good as none.
pub fn prepare_with(notebook: &Notebook, ranges: Option<&str>) -> Prepared {
    let CorrectedDoc { raw, cast, above_water, outcomes } = corrected(&notebook.cast);
    let mut analysis = analyse(&cast, &notebook.lesson.method.to_method());
    let ranges_key = ranges::key(&cast, &analysis.method);
    let certainty = ranges.and_then(|text| ranges::of(text, &ranges_key));
    if let Some(certainty) = &certainty {
        certainty::apply(&mut analysis, certainty);
    }
    let oxygen_mg_l = oxygen(&notebook.cast, &cast);
    let memo = Memo::default();
    Prepared {
        oxygen_mg_l,
        memo,
        cast,
        raw,
        outcomes,
        above_water,
        analysis,
        ranges_key,
        certainty,
        cast_id: content_id(&notebook.cast),
        blank: Sheet::default(),
        table: None,
    }
}
