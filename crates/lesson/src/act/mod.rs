//! One thing a person did, and the notebook after it.

use crate::action::Action;
use crate::document::Notebook;

/// The notebook after an action. Total: an action that makes no sense changes nothing.
pub fn act(notebook: &Notebook, action: &Action) -> Notebook {
    let mut next = notebook.clone();
    if let Action::Go { screen, question } = action {
        next.place.screen = *screen;
        if let Some(question) = question {
            next.place.question = *question;
        }
    }
    next
}
