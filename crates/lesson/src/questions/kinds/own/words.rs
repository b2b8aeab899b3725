//! A question of the teacher's own that is answered in words: kept as written, never judged here; what is looked for in it
//! is told once it is kept.

use crate::document::OwnQuestion;
use crate::questions::kind::{Explained, Field, Line, Plan};
use layercast_core::Message;

/// The question with its field.
pub(crate) fn plan(own: &OwnQuestion) -> Plan {
    let words = Field::prose("words", Message::new("ask-own-name"), Vec::new());
    Plan {
        ask: Message::new("ask-own").text("ask", own.ask.clone()),
        lead: Vec::new(),
        parts: vec![vec![Line::new(Message::new("ask-own-words-label"), vec![words])]],
        notes: vec![Message::new("ask-why-note-kept")],
    }
}

/// What to do, hint by hint, where the teacher wrote none.
pub(crate) fn hint(level: u8) -> &'static str {
    match level {
        1 => "ask-own-words-hint-1",
        2 => "ask-own-words-hint-2",
        _ => "ask-own-words-hint-3",
    }
}

/// What earns points, best first. What earns none stays with the teacher: it says what not to write, or how somebody failed.
pub(crate) fn explain(own: &OwnQuestion) -> Explained {
    let levels =
        [("ask-own-words-looks", "best"), ("ask-own-words-most", "level"), ("ask-own-words-some", "level")];
    let told = levels.into_iter().zip(&own.by.rubric).filter(|(_, words)| !words.trim().is_empty());
    let looks_for = told.map(|((id, name), words)| Message::new(id).text(name, words.trim())).collect();
    Explained {
        shown: Message::new("ask-own-words-shown"),
        sum: Vec::new(),
        fits: None,
        notes: looks_for,
        own_words: Message::new("ask-own-own-words"),
    }
}
