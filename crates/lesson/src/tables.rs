//! Tables as they are kept with a cast or wait to be used.

use layercast_exchange::document::{CastDoc, Choices, Source};
use layercast_exchange::read::{TableRead, read_text};

/// Reads a table's text with the choices made about it.
pub fn read(source: &Source) -> TableRead {
    read_text(&source.text, &source.choices)
}

/// The choices made about a cast's table; none for a typed cast.
pub fn choices(doc: &CastDoc) -> Choices {
    doc.source.as_ref().map(|source| source.choices.clone()).unwrap_or_default()
}
