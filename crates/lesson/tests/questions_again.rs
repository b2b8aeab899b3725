//! "Answer again", as often as wanted: every round is judged, the first stays on record with its credit, and what was
//! shown earns nothing.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

use crate::support;

use layercast_lesson::action::Action;
use layercast_lesson::document::{Notebook, Screen};
use layercast_lesson::questions::{Standing, standing};
use layercast_lesson::view::{QuestionView, Sign};
use layercast_lesson::{act, look, prepare};
use support::{doing, notebook};

/// Question 2 of group C: 4.05 °C colder at 5 m than at 4 m.
const Q: usize = 1;

fn at_question() -> Notebook {
    act(&notebook("group_c"), &Action::Go { screen: Screen::Questions, question: Some(Q) })
}

fn check(notebook: &Notebook, drop: &str) -> Notebook {
    let set =
        |field: &str, text: &str| Action::SetField { question: Q, field: field.into(), text: text.into() };
    doing(notebook, &[set("drop", drop), set("unit", "c"), Action::Check { question: Q }])
}

fn again(notebook: &Notebook) -> Notebook {
    let labels: Vec<String> = view(notebook).buttons.iter().map(|b| b.label.id.clone()).collect();
    assert!(labels.contains(&"ask-again".to_owned()), "{labels:?}");
    act(notebook, &Action::AnswerAgain { question: Q })
}

fn view(notebook: &Notebook) -> QuestionView {
    look(notebook).questions.current.unwrap()
}

fn stands(notebook: &Notebook) -> Standing {
    let prepared = prepare(notebook);
    let context = prepared.context(notebook);
    let asked = layercast_lesson::questions::paper(&context).asked.remove(Q);
    standing(&context, &asked, context.sheet.answers.get(&asked.id))
}

fn is_open(notebook: &Notebook) -> bool {
    !view(notebook).parts[0].settled
}

#[test]
fn a_question_is_answered_again_as_often_as_wanted() {
    let mut at = check(&check(&at_question(), "28.8"), "4.1");
    assert!(!is_open(&at));
    for round in 0..6 {
        at = again(&at);
        assert!(is_open(&at), "round {round}");
        assert!(view(&at).parts[0].lines[0].fields[0].text.is_empty());
        assert_eq!(view(&at).parts[0].lines[0].before.as_ref().unwrap().id, "ask-first-answer");
        // A round may go wrong and be put right; the same number twice is one try.
        if round % 2 == 0 {
            at = check(&check(&at, "17.6"), "17.6");
            assert_eq!(stands(&at).tries, 1);
            assert!(is_open(&at));
            assert_eq!(view(&at).parts[0].verdict.as_ref().unwrap().sign, Sign::Outside);
        }
        at = check(&at, "4.0");
        assert!(!is_open(&at), "round {round}");
        assert_eq!(view(&at).parts[0].verdict.as_ref().unwrap().sign, Sign::Inside);
    }
    let stands = stands(&at);
    assert!(stands.settled && stands.right && !stands.open);
    assert!((stands.credit - 1.0).abs() < 1e-12);
    // The same answer opens and closes a round too.
    at = check(&again(&at), "4.0");
    assert!(!is_open(&at));
    // Nothing is taken while nothing is open.
    assert_eq!(check(&at, "9").sheets[0].answers["4-4.0-5.0"].tries, at.sheets[0].answers["4-4.0-5.0"].tries);
}

#[test]
fn later_answers_earn_nothing_and_cost_nothing() {
    let lost = check(&check(&check(&at_question(), "28.8"), "17.6"), "9");
    assert!(stands(&lost).settled && !stands(&lost).right);
    let later = check(&again(&check(&again(&lost), "4.1")), "4.1");
    assert!(!stands(&later).right && stands(&later).credit.abs() < 1e-12);
    let won = check(&at_question(), "4.1");
    let worse = check(&check(&check(&again(&won), "28.8"), "17.6"), "9");
    assert!(!is_open(&worse));
    assert!(stands(&worse).right && (stands(&worse).credit - 1.0).abs() < 1e-12);
    assert!(view(&worse).parts[0].notes.iter().any(|n| n.id == "ask-third"));
}

#[test]
fn after_show_me_it_may_be_answered_too_and_be_shown_again() {
    let show = |notebook: &Notebook| act(notebook, &Action::ShowMe { question: Q });
    let shown = show(&check(&at_question(), "28.8"));
    assert_eq!(view(&shown).parts[0].verdict.as_ref().unwrap().said.id, "ask-shown-yours");
    let open = again(&shown);
    assert!(is_open(&open));
    let missed = check(&open, "17.6");
    assert!(is_open(&missed), "what was shown before does not end this round");
    let right = check(&missed, "4.1");
    assert_eq!(view(&right).parts[0].verdict.as_ref().unwrap().sign, Sign::Inside);
    assert!(!stands(&right).right && stands(&right).credit.abs() < 1e-12);
    // Shown in a round without a try, and in one with a miss.
    let twice = show(&again(&right));
    assert_eq!(view(&twice).parts[0].verdict.as_ref().unwrap().said.id, "ask-shown");
    let thrice = show(&check(&again(&twice), "17.6"));
    assert_eq!(view(&thrice).parts[0].verdict.as_ref().unwrap().said.id, "ask-shown-yours");
    assert_eq!(show(&thrice), thrice, "nothing is open to be shown");
    assert!(is_open(&again(&thrice)));
    // It reads the same when it is opened from its file.
    assert_eq!(Notebook::from_json(&thrice.to_json()).as_ref(), Ok(&thrice));
}

#[test]
fn a_sheet_that_does_not_say_when_it_was_shown_stands_as_it_did() {
    let mut old = check(&act(&check(&at_question(), "28.8"), &Action::ShowMe { question: Q }), "9");
    let answer = old.sheets[0].answers.get_mut("4-4.0-5.0").unwrap();
    answer.shown_at.clear();
    assert!(answer.shown);
    assert_eq!(view(&old).parts[0].verdict.as_ref().unwrap().said.id, "ask-shown-yours");
    // Shown again later, the first time is kept.
    let later = act(&check(&again(&old), "17.6"), &Action::ShowMe { question: Q });
    assert_eq!(later.sheets[0].answers["4-4.0-5.0"].shown_at, [1, 2]);
    assert!(!stands(&later).right && stands(&later).credit.abs() < 1e-12);
}

#[test]
fn when_every_question_is_settled_the_page_says_so() {
    let mut at = support::checked(&notebook("group_c"), ["2.5", "4", "6.5"]);
    let count = look(&at).questions.rail.len();
    assert_eq!(count, 8);
    for question in 0..count {
        assert_eq!(look(&at).questions.all_done, None, "before question {}", question + 1);
        let here = Action::Go { screen: Screen::Questions, question: Some(question) };
        let hint = || Action::Hint { question };
        at = doing(&at, &[here, hint(), hint(), hint(), Action::ShowMe { question }]);
    }
    for question in [count - 1, 0] {
        at = act(&at, &Action::Go { screen: Screen::Questions, question: Some(question) });
        assert_eq!(look(&at).questions.all_done.unwrap().id, "ask-all-done");
    }
    // While one is answered again, there is something to do.
    at = act(&at, &Action::AnswerAgain { question: 0 });
    assert_eq!(look(&at).questions.all_done, None);
}
