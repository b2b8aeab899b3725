//! The screen around the question in hand: the rail, why these questions, or why none yet.

use super::Sight;
use crate::by_hand::waits;
use crate::questions as bank;
use crate::scene::place_in;
use crate::view::{QuestionsView, RailItem};
use layercast_core::Message;

/// Questions.
pub fn view(sight: &Sight) -> QuestionsView {
    let asked = &sight.paper.asked;
    if sight.context.analysis.profile.len() < 2 || asked.is_empty() {
        let about = sight.paper.about.iter().cloned().map(Into::into).collect();
        let not_yet = Some(Message::new("log-no-questions-yet").into());
        return QuestionsView { not_yet, rail: Vec::new(), about, current: None, all_done: None };
    }
    if waits(sight.notebook, sight.context.analysis) {
        let not_yet = Some(Message::new("log-by-hand-first").into());
        return QuestionsView { not_yet, rail: Vec::new(), about: Vec::new(), current: None, all_done: None };
    }
    let index = place_in(sight.paper, sight.notebook.place.question);
    let answers = &sight.context.sheet.answers;
    let standings: Vec<bank::Standing> =
        asked.iter().map(|asked| bank::standing(&sight.context, asked, answers.get(&asked.id))).collect();
    let rail = standings.iter().enumerate().map(|(i, standing)| RailItem {
        number: i + 1,
        done: standing.done,
        current: i == index,
    });
    let all_done = standings.iter().all(|s| s.done) && standings.get(index).is_some_and(|s| !s.open);
    QuestionsView {
        not_yet: None,
        rail: rail.collect(),
        about: sight.paper.about.iter().cloned().map(Into::into).collect(),
        current: bank::view(&sight.context, sight.paper, index),
        all_done: all_done.then(|| Message::new("ask-all-done").count("count", asked.len()).into()),
    }
}
