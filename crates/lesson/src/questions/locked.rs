//! What a question waits for, and how it says so.

use super::kind::Kind;
use super::replay::{Replay, first_round};
use super::say::said;
use super::water::Water;
use super::{Asked, Paper};
use crate::action::Action;
use crate::document::Screen;
use crate::view::{QuestionView, Way};
use layercast_core::Message;

/// It waits for the marks on Profile, or for a question it builds on.
pub(crate) fn is_locked(water: &Water, kind: &dyn Kind, replay: &Replay) -> bool {
    let checked = water.context.sheet.first_marks.is_some();
    let waits = (kind.needs_check() && !checked)
        || (kind.needs_marks() && !water.marks_are_in())
        || waits_for(water, kind).is_some();
    waits && replay.first.tries == 0 && !replay.first.settled()
}

/// The first question it builds on that is not settled yet: its id.
fn waits_for(water: &Water, kind: &dyn Kind) -> Option<&'static str> {
    let is_open = |id: &&&str| {
        let Ok(number) = id.parse::<u8>() else { return false };
        let asked = Asked { id: (**id).to_owned(), kind: number, depths_m: Vec::new() };
        let answer = water.context.sheet.answers.get(&asked.id);
        !first_round(water, &asked, answer).is_some_and(|round| round.settled())
    };
    kind.builds_on().iter().find(is_open).copied()
}

/// The question while it waits: without its fields.
pub(crate) fn locked(water: &Water, base: QuestionView, kind: &dyn Kind, paper: &Paper) -> QuestionView {
    let first = waits_for(water, kind).and_then(|id| paper.asked.iter().position(|a| a.id == id));
    if let Some(first) = first.filter(|_| !kind.needs_marks() || water.marks_are_in()) {
        let go = Way {
            label: said(Message::new("ask-locked-go-first").count("number", first + 1)),
            action: Action::Go { screen: Screen::Questions, question: Some(first) },
            main: true,
            waits: None,
        };
        let lead = vec![said(Message::new("ask-locked-first").count("number", first + 1))];
        return QuestionView { lead, locked: Some(go), ..base };
    }
    let id = if kind.needs_check() { "ask-locked-check" } else { "ask-locked" };
    let ask = if kind.is_hidden_before_marks() { said(Message::new("ask-locked-ask")) } else { base.ask };
    let go = Way {
        label: said(Message::new("ask-locked-go")),
        action: Action::Go { screen: Screen::Profile, question: None },
        main: true,
        waits: None,
    };
    QuestionView { ask, lead: vec![said(Message::new(id))], locked: Some(go), ..base }
}
