//! Points: what was computed, what the teacher gave instead, and what it adds up to.

use super::act::MOST_LEVEL;
use super::document::Mark;
use super::room::{AnswerState, Answered, Room, Seat};
use crate::document::{Lesson, USUAL_POINTS};

/// Stands for the report among the questions.
pub const REPORT: &str = "report";

/// Points of one question on one sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct Points {
    /// Id of the question, or [`REPORT`].
    pub question: String,
    /// Most there are.
    pub max: f64,
    /// What was computed, or comes from the rubric; `None` while prose waits for its level.
    pub computed: Option<f64>,
    /// What the teacher gave instead.
    pub instead: Option<f64>,
}

impl Points {
    /// What is known; `None` while prose waits.
    pub fn known(&self) -> Option<f64> {
        self.instead.or(self.computed)
    }

    /// What counts; nothing while prose waits.
    pub fn counts(&self) -> f64 {
        self.known().unwrap_or(0.0)
    }
}

/// Points of every question of a seat in order, and of its report where it wrote one.
pub fn points(lesson: &Lesson, seat: &Seat) -> Vec<Points> {
    let mark = |question: &str| seat.member.marks.get(question);
    let of = |answered: &Answered| {
        let given = mark(&answered.record.id);
        let max = f64::from(lesson.points_of(answered.record.kind));
        let by_level = given.and_then(|mark| of_level(mark, max));
        Points {
            question: answered.record.id.clone(),
            max,
            computed: by_level.or(match answered.state {
                AnswerState::Written => None,
                _ => Some(answered.record.credit * max),
            }),
            instead: given.and_then(|mark| mark.points),
        }
    };
    let of_report = f64::from(USUAL_POINTS);
    let report = has_report(seat).then(|| Points {
        question: REPORT.to_owned(),
        max: of_report,
        computed: mark(REPORT).and_then(|mark| of_level(mark, of_report)),
        instead: mark(REPORT).and_then(|mark| mark.points),
    });
    seat.answers.iter().map(of).chain(report).collect()
}

fn of_level(mark: &Mark, max: f64) -> Option<f64> {
    mark.level.map(|level| max * f64::from(level.min(MOST_LEVEL)) / f64::from(MOST_LEVEL))
}

/// Something stands in the report, or the teacher marked that nothing does.
pub fn has_report(seat: &Seat) -> bool {
    seat.paper.hand_in.sheet.report != crate::document::ReportText::default()
        || seat.member.marks.contains_key(REPORT)
}

/// Sum and most of a list.
pub fn total(points: &[Points]) -> (f64, f64) {
    (points.iter().map(Points::counts).sum(), points.iter().map(|p| p.max).sum())
}

/// Any seat of the room wrote a report.
pub fn any_report(room: &Room) -> bool {
    room.seats.iter().any(has_report)
}
