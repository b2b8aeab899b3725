//! Another group's cast: taken from whatever that group saved or handed in, and taken away again.

use crate::document::Notebook;
use crate::hand_in::open;
use layercast_exchange::document::{CastDoc, content_id};

/// Takes the first cast of a text that is not the own: a hand-in, its lines, a notebook, a saved report.
pub fn take(notebook: &mut Notebook, text: &str) {
    let own = content_id(&notebook.cast);
    let casts = open(text.as_bytes()).into_iter().flatten().map(|opened| opened.hand_in.cast);
    let other = casts.into_iter().find(|cast| !cast.entries.is_empty() && content_id(cast) != own);
    if let (Some(other), Some(sheet)) = (other, notebook.sheets.first_mut()) {
        sheet.other = Some(Box::new(CastDoc { source: None, ..other }));
    }
}

/// Takes it away: the lesson's own, if there is one, is back.
pub fn remove(notebook: &mut Notebook) {
    if let Some(sheet) = notebook.sheets.first_mut() {
        sheet.other = None;
    }
}
