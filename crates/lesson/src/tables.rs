//! Tables as they are kept with a cast or wait to be used.

use crate::document::MOST_TABLE_ENTRIES;
use layercast_exchange::document::{CastDoc, Choices, Source};
use layercast_exchange::read::{Outcome, TableRead, read_text};

/// Reads a table's text with the choices made about it.
pub fn read(source: &Source) -> TableRead {
    read_text(&source.text, &source.choices)
}

/// It can be used as it is: no question, and no more readings than a cast may have.
pub fn is_clear(read: &TableRead) -> bool {
    matches!(read.outcome, Outcome::Understood | Outcome::Noticed) && !is_too_long(read)
}

/// More readings than a cast may have.
pub fn is_too_long(read: &TableRead) -> bool {
    read.entries.len() > MOST_TABLE_ENTRIES
}

/// The choices made about a cast's table; none for a typed cast.
pub fn choices(doc: &CastDoc) -> Choices {
    doc.source.as_ref().map(|source| source.choices.clone()).unwrap_or_default()
}
