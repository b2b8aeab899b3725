//! What goes out as tables: the readings with what their columns mean, and a record of their quality.
//!
//! [`readings`] is a tidy table, one row a reading, none left away; [`sidecar`] describes its columns for machines;
//! [`quality`] tells how the cast was checked. Numbers have a decimal point in every language; the codes in them are words
//! of the files, the same in every language. [`zip`] puts several files into one.

mod columns;
mod csv;
mod quality;
mod readings;
mod sidecar;
pub mod zip;

pub use quality::quality;
pub use readings::readings;
pub use sidecar::sidecar;

use crate::document::CastDoc;
use layercast_core::cast::corrections::Outcome;
use layercast_core::{Analysis, Cast};

/// A cast with what was found out about it.
#[derive(Clone, Copy, Debug)]
pub struct Told<'a> {
    /// The document.
    pub doc: &'a CastDoc,
    /// Its readings as taken, in the same order.
    pub raw: &'a Cast,
    /// Its readings after corrections, in the same order: what was analysed.
    pub cast: &'a Cast,
    /// What became of each correction; `None` while it waits for a field.
    pub outcomes: &'a [Option<Outcome>],
    /// The analysis of `cast`.
    pub analysis: &'a Analysis,
}
