//! Points: what was computed, what the teacher gave instead, and what it adds up to.

use super::act::MOST_LEVEL;
use super::document::Grade;
use super::room::{AnswerState, Answered, Room, Seat};
use crate::document::{ReportPart, USUAL_POINTS};

/// Stands for the report among the questions.
pub const REPORT: &str = "report";

/// The texts of a report that get a level each, and what stands for them among the questions.
pub const REPORT_PARTS: [(&str, ReportPart); 3] = [
    ("report.claim", ReportPart::Claim),
    ("report.evidence", ReportPart::Evidence),
    ("report.reasoning", ReportPart::Reasoning),
];

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

/// Points of every question of a seat in order, and of its report where anybody of the class wrote one: all have the same
/// most then.
pub fn points(room: &Room, seat: &Seat) -> Vec<Points> {
    let lesson = &room.lesson;
    let mark = |question: &str| seat.member.marks.get(question);
    let of = |answered: &Answered| {
        let given = mark(&answered.record.id);
        let max = f64::from(lesson.points_of(answered.record.kind));
        let by_level = given.and_then(|mark| of_level(mark, max)).filter(|_| answered.has_words());
        let by_credit = answered.record.credit * max;
        Points {
            question: answered.record.id.clone(),
            max,
            computed: match answered.state {
                AnswerState::Written | AnswerState::Marked => by_level,
                // One half was judged here, the other by the teacher.
                _ => Some(by_level.map_or(by_credit, |points| f64::midpoint(points, by_credit))),
            },
            instead: given.and_then(|mark| mark.points),
        }
    };
    let of_report = f64::from(USUAL_POINTS);
    let by_words = || {
        mark(REPORT).and_then(|mark| of_level(mark, of_report)).or_else(|| {
            let parts = REPORT_PARTS.map(|(id, _)| mark(id).and_then(|mark| of_level(mark, of_report)));
            // Known once each of the three has its level.
            let sum = parts.into_iter().try_fold(0.0, |sum, points| Some(sum + points?));
            sum.map(|sum| sum / REPORT_PARTS.len() as f64)
        })
    };
    let report = (any_report(room) || has_report(seat)).then(|| Points {
        question: REPORT.to_owned(),
        max: of_report,
        // Where nothing was written nothing waits to be read.
        computed: by_words().or_else(|| (!wrote_report(seat)).then_some(0.0)),
        instead: mark(REPORT).and_then(|mark| mark.points),
    });
    seat.answers.iter().map(of).chain(report).collect()
}

fn of_level(mark: &Grade, max: f64) -> Option<f64> {
    mark.level.map(|level| max * f64::from(level.min(MOST_LEVEL)) / f64::from(MOST_LEVEL))
}

/// Something stands in the report.
pub fn wrote_report(seat: &Seat) -> bool {
    seat.paper.hand_in.sheet.report != crate::document::ReportText::default()
}

/// Something stands in the report, or the teacher marked that nothing does.
pub fn has_report(seat: &Seat) -> bool {
    wrote_report(seat) || seat.member.marks.keys().any(|question| question.starts_with(REPORT))
}

/// Sum and most of a list.
pub fn total(points: &[Points]) -> (f64, f64) {
    // The sum of nothing is -0 otherwise.
    let sum = |of: fn(&Points) -> f64| points.iter().map(of).fold(0.0, |sum, one| sum + one);
    (sum(Points::counts), sum(|p| p.max))
}

/// Any seat that counts wrote a report.
pub fn any_report(room: &Room) -> bool {
    room.counted().any(has_report)
}
