//! Another group's cast: taken from whatever that group saved or handed in, and taken away again.

use crate::document::Notebook;
use crate::hand_in::open;
use layercast_exchange::document::{CastDoc, content_id};

/// The first cast with readings of a text, if it is not the own: a hand-in, its lines, a notebook, a saved report.
pub(crate) fn cast_in(text: &str, own: Option<&CastDoc>) -> Option<Box<CastDoc>> {
    let own = own.map(content_id);
    let mut casts = open(text.as_bytes()).into_iter().flatten().map(|opened| opened.hand_in.cast);
    let other = casts.find(|cast| !cast.entries.is_empty() && Some(content_id(cast)) != own)?;
    Some(Box::new(CastDoc { source: None, ..other }))
}

/// Takes another group's cast out of a text; one without leaves all as it is.
pub fn take(notebook: &mut Notebook, text: &str) {
    if let (Some(other), Some(sheet)) = (cast_in(text, Some(&notebook.cast)), notebook.sheets.first_mut()) {
        sheet.other = Some(other);
    }
}

/// Takes it away: the lesson's own, if there is one, is back.
pub fn remove(notebook: &mut Notebook) {
    if let Some(sheet) = notebook.sheets.first_mut() {
        sheet.other = None;
    }
}
