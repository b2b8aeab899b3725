//! What can be pressed under a question, and what opens it.

use super::Desk;
use crate::action::Action;
use crate::document::Screen;
use crate::questions::Paper;
use crate::questions::kind::{Field, Input, Ticks};
use crate::questions::replay::complete;
use crate::questions::say::said;
use crate::questions::standing::texts;
use crate::questions::text::field;
use crate::scene::early;
use crate::view::Way;
use layercast_core::Message;

impl Desk<'_> {
    fn way(&self, label: &'static str, action: Action, main: bool) -> Way {
        Way { label: said(Message::new(label)), action, main, waits: None }
    }

    pub(super) fn open_buttons(&self, paper: &Paper) -> Vec<Way> {
        let question = self.index;
        let help = match self.hints() {
            open if open >= self.help().most() => self.way("ask-show-me", Action::ShowMe { question }, false),
            0 => self.way("ask-hint", Action::Hint { question }, false),
            1 => self.way("ask-hint-another", Action::Hint { question }, false),
            _ => self.way("ask-hint-elsewhere", Action::Hint { question }, false),
        };
        let judged = self.open_parts().into_iter().any(|part| self.kind.is_judged(&self.question(), part));
        let label = if judged { "ask-check" } else { "ask-why-keep" };
        let mut check = self.way(label, Action::Check { question }, true);
        check.waits = self.waits();
        // What one finds in one's own words is nobody's to hint at.
        let own =
            self.in_hand().is_some_and(|part| self.fields(part).all(|f| matches!(f.input, Input::Fact(..))));
        let help = (judged || !own).then_some(help);
        let cannot_tell = judged.then(|| self.way("ask-cannot-tell", Action::CannotTell { question }, false));
        let ways = std::iter::once(check).chain(help).chain(cannot_tell);
        if self.round().done(self.plan()) {
            ways.chain([self.on(paper, false)]).collect()
        } else {
            ways.collect()
        }
    }

    /// What opens Check; `None` when it is open.
    fn waits(&self) -> Option<crate::view::Said> {
        let fields = texts(self.water, self.asked, Some(self.answer));
        let open = self.open_parts();
        if open.iter().any(|part| complete(self.plan(), *part, &fields)) {
            return None;
        }
        let planned: Vec<&Field> = open.iter().flat_map(|part| self.fields(*part)).collect();
        if let Some(ticks) = Ticks::of(planned.iter().copied()) {
            let chosen = planned.iter().filter(|f| field(&fields, f.id) == "1").count();
            let waits = if chosen > ticks.most {
                Message::new("ask-waits-facts-many").count("chosen", chosen).count("most", ticks.most)
            } else if ticks.least == ticks.most {
                Message::new("ask-waits-facts").count("chosen", chosen).count("wanted", ticks.least)
            } else {
                Message::new("ask-waits-choice")
            };
            return Some(said(waits));
        }
        let numbers_given = (planned.iter().filter(|f| f.is_number() && f.is_wanted(&fields)))
            .all(|f| !field(&fields, f.id).is_empty());
        let has =
            |of: fn(&Input) -> bool| planned.iter().any(|f| of(&f.input) && field(&fields, f.id).is_empty());
        let is_judged = open.iter().any(|part| self.kind.is_judged(&self.question(), *part));
        let id = if !is_judged && !has(|input| matches!(input, Input::Prose(_))) {
            "ask-why-waits-keep"
        } else if has(|input| matches!(input, Input::Choice(_))) {
            "ask-waits-choice"
        } else if has(|input| matches!(input, Input::Pictures(_))) {
            "ask-why-waits-picture"
        } else if has(|input| matches!(input, Input::Prose(_))) {
            "ask-why-waits-words"
        } else if numbers_given {
            "ask-waits-list"
        } else {
            "ask-waits-number"
        };
        Some(said(Message::new(id)))
    }

    pub(super) fn settled_buttons(&self, paper: &Paper) -> Vec<Way> {
        let again = self.way("ask-again", Action::AnswerAgain { question: self.index }, false);
        let to_profile = Action::Go { screen: Screen::Profile, question: None };
        let check = self.check_is_free(paper).then(|| self.way("ask-to-check", to_profile, false));
        [self.on(paper, true), again].into_iter().chain(check).collect()
    }

    /// To the next question, from the last one to the profile.
    fn on(&self, paper: &Paper, main: bool) -> Way {
        let next = self.index + 1;
        if next < paper.asked.len() {
            self.way("ask-next", Action::Go { screen: Screen::Questions, question: Some(next) }, main)
        } else {
            self.way("ask-to-profile", Action::Go { screen: Screen::Profile, question: None }, main)
        }
    }

    /// The marks are placed and wait for their check, which would give no answer away any more.
    fn check_is_free(&self, paper: &Paper) -> bool {
        let context = &self.water.context;
        let waits = context.sheet.first_marks.is_none() && context.sheet.marks.all_settled();
        waits && self.index + 1 < paper.asked.len() && early(context, paper).is_empty()
    }
}
