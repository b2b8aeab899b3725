//! What the page shows of a notebook, screen by screen.

use crate::action::Action;
use crate::document::{Notebook, Screen};
use crate::prepared::{Prepared, prepare};
use crate::view::{LogView, Look, ProfileView, QuestionsView, Way};
use layercast_core::Message;

/// What the page shows.
pub fn look(notebook: &Notebook) -> Look {
    look_with(notebook, &prepare(notebook))
}

/// [`look`] with an analysis at hand.
pub fn look_with(notebook: &Notebook, _prepared: &Prepared) -> Look {
    let go = Way {
        label: Message::new("profile-check").into(),
        action: Action::Go { screen: Screen::Profile, question: None },
        main: true,
        waits: None,
    };
    Look {
        code: notebook.code.clone(),
        water: notebook.cast.water.clone(),
        group: notebook.cast.group.clone(),
        place: notebook.place,
        empty: notebook.cast.entries.is_empty(),
        file_name: notebook.code.clone(),
        log: LogView {
            title: Message::new("log-title-empty").into(),
            understood: None,
            notices: Vec::new(),
            can_reopen: false,
            undo: None,
            one_column: false,
            rows: Vec::new(),
            doubts: Vec::new(),
            settled: Vec::new(),
            pending: None,
            leg_choice: None,
            not_yet: None,
            bed_text: String::new(),
        },
        profile: ProfileView {
            not_yet: None,
            marking: true,
            checked: false,
            marks: Vec::new(),
            check: go.clone(),
            no_layers: go,
            early: None,
            found: None,
            facts: Vec::new(),
            legs_note: None,
            rules: Vec::new(),
            table: Vec::new(),
        },
        questions: QuestionsView { not_yet: None, rail: Vec::new(), about: Vec::new(), current: None },
        alt: Message::new("profile-alt-empty").into(),
        readings: Vec::new(),
    }
}
