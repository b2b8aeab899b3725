//! A question's page, and what stands on it.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]
#![allow(dead_code, reason = "each test file uses its own part")]

use super::{Fields, Pond, answer};
use layercast_lesson::questions::{self, Asked};
use layercast_lesson::view::{QuestionView, Said, SaidArg};

/// A question with these tries, as it is shown.
pub fn view(pond: &mut Pond, asked: &Asked, tries: &[Fields]) -> QuestionView {
    pond.sheet.answers.insert(asked.id.clone(), answer(tries));
    let paper = pond.paper();
    let index = paper.asked.iter().position(|a| a.id == asked.id).unwrap();
    questions::view(&pond.context(), &paper, index).unwrap()
}

/// Ids of everything said at the top of a question and under its parts.
pub fn said(view: &QuestionView) -> Vec<String> {
    let parts = || view.parts.iter();
    let verdicts = parts().filter_map(|p| Some(&p.verdict.as_ref()?.said));
    let under = parts().flat_map(|p| p.notes.iter().chain(&p.fits));
    let hints = parts().flat_map(|p| p.hints.iter().filter_map(|h| h.said.as_ref()));
    let before = parts().flat_map(|p| p.lines.iter().filter_map(|l| l.before.as_ref()));
    let all = view.lead.iter().chain(&view.notes).chain(verdicts).chain(under).chain(hints).chain(before);
    all.map(|s| s.id.clone()).collect()
}

/// The sentence of a part.
pub fn verdict(view: &QuestionView, part: usize) -> &Said {
    &view.parts[part].verdict.as_ref().unwrap().said
}

/// A number in a message, or in the message that is its argument.
pub fn number(said: &Said, name: &str) -> f64 {
    match said.args.get(name) {
        Some(SaidArg::Number { value, .. }) => *value,
        Some(SaidArg::Message { said }) => number(said, "value"),
        other => panic!("{name}: {other:?}"),
    }
}
