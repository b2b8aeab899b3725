//! Which sheets are the same seat's, and which of two copies is the newer one. No clock is asked: the newer holds all that
//! the older holds.

use super::document::{Class, Member};
use crate::document::{Answer, Sheet};
use crate::hand_in::HandIn;

/// Whose sheet a hand-in is: seat (or, without one, its notebook), and lesson. The class is checked before.
pub(super) fn owner(hand_in: &HandIn, seat: &str) -> (String, String) {
    let seat = seat.trim().to_lowercase();
    let who = if seat.is_empty() { format!("~{}", hand_in.notebook) } else { seat };
    (who, hand_in.lesson.id.clone())
}

/// The member that holds an owner's sheet and counts.
pub(super) fn held_by<'a>(class: &'a Class, who: &(String, String)) -> Option<&'a Member> {
    class.now.members.iter().find(|member| {
        let paper = class.paper(member).filter(|_| member.aside.is_none());
        paper.is_some_and(|paper| owner(&paper.hand_in, member.repair.seat(&paper.hand_in)) == *who)
    })
}

/// Whether a sheet holds all that another holds.
pub(super) fn holds_all(newer: &Sheet, older: &Sheet) -> bool {
    let marks = older.first_marks.is_none() || newer.first_marks == older.first_marks;
    let answers = older.answers.iter().all(|(id, old)| {
        let new = newer.answers.get(id);
        is_untouched(old) || new.is_some_and(|new| goes_on(new, old))
    });
    marks && answers
}

/// Nothing of weight is in it.
fn is_untouched(answer: &Answer) -> bool {
    answer.tries.is_empty() && answer.hints == 0 && !answer.shown
}

/// The tries of one are the beginning of the other's.
fn goes_on(new: &Answer, old: &Answer) -> bool {
    new.tries.starts_with(&old.tries) && new.hints >= old.hints && (new.shown || !old.shown)
}

/// Same marks, tries, hints and texts.
pub(super) fn is_same_work(a: &Sheet, b: &Sheet) -> bool {
    let texts = |sheet: &Sheet| {
        let one = |answer: &Answer| (answer.reason.clone(), answer.own_words.clone());
        let all: Vec<(String, String)> =
            sheet.answers.values().map(one).filter(|(a, b)| !a.is_empty() || !b.is_empty()).collect();
        (all, sheet.report.clone())
    };
    holds_all(a, b) && holds_all(b, a) && texts(a) == texts(b)
}
