//! The answers of a sheet as the Class screen lays them out: how each stands, what was given, its points and levels.

use super::act::MOST_LEVEL;
use super::points::{Points, REPORT_PARTS, wrote_report};
use super::room::{AnswerState, Answered, Seat};
use super::screen::{num, points_num};
use super::view::{AnswerRow, LevelRow};
use crate::document::{Lesson, OwnQuestion, ReportPart};
use crate::screens::report_name;
use crate::view::Said;
use layercast_core::Message;

/// One answer.
pub(super) fn answer_row(lesson: &Lesson, seat: &Seat, points: &Points) -> AnswerRow {
    let answered = seat.answers.iter().find(|answered| answered.record.id == points.question);
    let given = seat.member.marks.get(&points.question).cloned().unwrap_or_default();
    AnswerRow {
        question: points.question.clone(),
        ask: answered.map_or(Message::new("class-report"), |answered| answered.record.ask.clone()).into(),
        state: state_said(answered.map_or(report_state(seat, points), |answered| answered.state)).into(),
        given: given_said(seat, answered),
        said: answered.and_then(|a| a.record.judgements.last()).map(|judged| judged.said.clone().into()),
        reason: answered.map(|answered| answered.reason.clone()).unwrap_or_default(),
        points: points_num(points.counts()),
        max: num(points.max, 0),
        after_shown: after_shown(points, answered),
        by_hand: points.instead.is_some(),
        levels: levels(lesson, seat, answered),
        why: given.reason,
        comment: given.comment,
    }
}

/// Why a right answer has no points, where it was given only after it was shown.
pub(super) fn after_shown(points: &Points, answered: Option<&Answered>) -> Option<Said> {
    let is = answered.is_some_and(|answered| answered.record.after_shown) && points.counts() <= 0.0;
    (is && points.instead.is_none()).then(|| Message::new("class-after-shown").into())
}

/// Said of a sheet whose water, as the seat held it, had nothing to ask.
pub(super) fn unasked(lesson: &Lesson, seat: &Seat) -> Option<Message> {
    (seat.answers.is_empty() && !lesson.kinds.is_empty()).then(|| Message::new("class-unasked"))
}

/// A report is words: marked, or not yet; or nothing was written.
pub(super) fn report_state(seat: &Seat, points: &Points) -> AnswerState {
    if !wrote_report(seat) && points.instead.is_none() && points.counts() <= 0.0 {
        AnswerState::Blank
    } else if points.known().is_some() {
        AnswerState::Marked
    } else {
        AnswerState::Written
    }
}

/// What was answered last; without an answer the texts of the report, each under its name.
pub(super) fn given_said(seat: &Seat, answered: Option<&Answered>) -> Vec<Said> {
    let report = &seat.paper.hand_in.sheet.report;
    let one = |part: &ReportPart| {
        let text = report.get(*part).trim();
        let said = Message::new("class-report-text").message("name", report_name(*part)).text("text", text);
        (!text.is_empty()).then_some(said.into())
    };
    match answered {
        Some(answered) => answered.given().into_iter().map(Into::into).collect(),
        None => ReportPart::ALL.iter().filter_map(one).collect(),
    }
}

pub(super) fn levels(lesson: &Lesson, seat: &Seat, answered: Option<&Answered>) -> Vec<LevelRow> {
    let level = |question: &str| seat.member.marks.get(question).and_then(|mark| mark.level);
    let of_part = |(id, part): &(&str, ReportPart)| LevelRow {
        question: (*id).to_owned(),
        name: Some(report_name(*part).into()),
        words: Vec::new(),
        level: level(id),
    };
    match answered {
        None => REPORT_PARTS.iter().map(of_part).collect(),
        Some(answered) if answered.has_words() => {
            let question = answered.record.id.clone();
            // Written best first.
            let word =
                |at: u8, own: &OwnQuestion| own.by.rubric.get(usize::from(at)).cloned().unwrap_or_default();
            let own = lesson.own_question(answered.record.kind);
            let words =
                own.map(|own| (0..=MOST_LEVEL).rev().map(|at| word(at, own)).collect()).unwrap_or_default();
            vec![LevelRow { name: None, words, level: level(&question), question }]
        }
        Some(_) => Vec::new(),
    }
}

/// "right first", "right later" …
pub(super) fn state_said(state: AnswerState) -> Message {
    Message::new(match state {
        AnswerState::RightFirst => "class-right-first",
        AnswerState::RightLater => "class-right-later",
        AnswerState::NotYet => "class-not-yet",
        AnswerState::Blank => "class-blank",
        AnswerState::CannotTell => "class-cannot-tell",
        AnswerState::Written => "class-written",
        AnswerState::Marked => "class-marked",
    })
}
