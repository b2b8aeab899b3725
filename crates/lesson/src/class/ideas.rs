//! What the class knows, question by question: who was right when, which wrong idea is commonest, two answers to put side
//! by side, what to ask the room next.

use super::room::{AnswerState, Answered, Room, Seat};
use layercast_core::Message;
use layercast_core::order::sort_by;
use serde::Serialize;
use std::collections::BTreeSet;

/// One question over the class, every group at its own depths.
#[derive(Clone, Debug, PartialEq)]
pub struct QuestionSum {
    /// Its kind.
    pub kind: u8,
    /// The question as most were asked it.
    pub ask: Message,
    /// Asked at other depths of other groups.
    pub varies: bool,
    /// How many stand where.
    pub seats: Standing,
    /// Wrong ideas by how many students had them, most first.
    pub ideas: Vec<IdeaSum>,
    /// A right answer and one with the commonest idea, of nobody in particular.
    pub pair: Option<(AnAnswer, AnAnswer)>,
}

/// How many seats stand where with a question.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct Standing {
    /// Seats it was asked of; the seven below add up to it.
    pub asked: usize,
    /// Right at the first try.
    pub right_first: usize,
    /// Right after a miss.
    pub right_later: usize,
    /// Not right.
    pub not_yet: usize,
    /// Not tried.
    pub blank: usize,
    /// "I can't tell", and nobody could.
    pub cannot_tell: usize,
    /// Words that are not marked yet.
    pub written: usize,
    /// Words that the teacher has marked.
    pub marked: usize,
}

/// A wrong idea over the class.
#[derive(Clone, Debug, PartialEq)]
pub struct IdeaSum {
    /// Its name in the catalogue.
    pub key: &'static str,
    /// Students whose answer showed it.
    pub students: usize,
    /// Groups they are in; those without a group code count as one.
    pub groups: usize,
    /// What one of them was told.
    pub said: Message,
}

/// An answer without a name.
#[derive(Clone, Debug, PartialEq)]
pub struct AnAnswer {
    /// What was answered.
    pub given: Vec<Message>,
    /// The student's reason; may be empty.
    pub reason: String,
}

/// Every question that was asked of somebody, in the order of the lesson; those of a water's own come after it. Practice
/// does not count.
pub fn questions(room: &Room) -> Vec<QuestionSum> {
    let mut kinds: Vec<u8> = Vec::new();
    for answered in room.counted().flat_map(|seat| &seat.answers) {
        if !kinds.contains(&answered.record.kind) {
            kinds.push(answered.record.kind);
        }
    }
    let place = |kind: &u8| room.lesson.kinds.iter().position(|one| one == kind).unwrap_or(usize::MAX);
    sort_by(&mut kinds, |a, b| place(a).cmp(&place(b)));
    kinds.into_iter().filter_map(|kind| sum(room, kind)).collect()
}

fn sum(room: &Room, kind: u8) -> Option<QuestionSum> {
    let all: Vec<(&Seat, &Answered)> = room
        .counted()
        .flat_map(|seat| seat.answers.iter().map(move |answered| (seat, answered)))
        .filter(|(_, answered)| answered.record.kind == kind)
        .collect();
    let count = |state: AnswerState| all.iter().filter(|(_, answered)| answered.state == state).count();
    let same = |id: &str| all.iter().filter(|(_, answered)| answered.record.id == id).count();
    let usual = all.iter().rev().max_by_key(|(_, answered)| same(&answered.record.id))?.1;
    let ideas = ideas(&all);
    Some(QuestionSum {
        kind,
        ask: usual.record.ask.clone(),
        varies: all.iter().any(|(_, answered)| answered.record.id != usual.record.id),
        seats: Standing {
            asked: all.len(),
            right_first: count(AnswerState::RightFirst),
            right_later: count(AnswerState::RightLater),
            not_yet: count(AnswerState::NotYet),
            blank: count(AnswerState::Blank),
            cannot_tell: count(AnswerState::CannotTell),
            written: count(AnswerState::Written),
            marked: count(AnswerState::Marked),
        },
        pair: ideas.first().and_then(|idea| pair(&all, idea.key)),
        ideas,
    })
}

fn ideas(all: &[(&Seat, &Answered)]) -> Vec<IdeaSum> {
    let mut sums: Vec<(IdeaSum, BTreeSet<&str>)> = Vec::new();
    for (seat, answered) in all {
        for key in answered.ideas() {
            match sums.iter_mut().find(|(sum, _)| sum.key == key) {
                Some((sum, groups)) => {
                    sum.students += 1;
                    groups.insert(&seat.group);
                }
                None => {
                    let Some(judged) = answered.with_idea(key) else { continue };
                    let sum = IdeaSum { key, students: 1, groups: 0, said: judged.said.clone() };
                    sums.push((sum, BTreeSet::from([seat.group.as_str()])));
                }
            }
        }
    }
    let with_groups = |(sum, groups): (IdeaSum, BTreeSet<&str>)| IdeaSum { groups: groups.len(), ..sum };
    let mut ideas: Vec<IdeaSum> = sums.into_iter().map(with_groups).collect();
    sort_by(&mut ideas, |a, b| {
        b.students.cmp(&a.students).then(b.groups.cmp(&a.groups)).then(a.key.cmp(b.key))
    });
    ideas
}

/// A right answer beside one with an idea; of several those with a reason.
fn pair(all: &[(&Seat, &Answered)], idea: &str) -> Option<(AnAnswer, AnAnswer)> {
    let right = all.iter().filter_map(|(_, answered)| {
        let judged = answered.record.judgements.iter().rfind(|judged| judged.verdict.is_right())?;
        answered
            .record
            .right
            .then(|| AnAnswer { given: judged.given.clone(), reason: answered.reason.clone() })
    });
    let wrong = all.iter().filter_map(|(_, answered)| {
        let judged = answered.with_idea(idea)?;
        Some(AnAnswer { given: judged.given.clone(), reason: answered.reason.clone() })
    });
    Some((fullest(right.collect())?, fullest(wrong.collect())?))
}

fn fullest(answers: Vec<AnAnswer>) -> Option<AnAnswer> {
    let at = answers.iter().position(|answer| !answer.reason.is_empty()).unwrap_or(0);
    answers.into_iter().nth(at)
}

/// What to ask the room next: the commonest idea, else what most did not get, else why the groups differ. `None` without
/// answers.
pub fn next(sums: &[QuestionSum]) -> Option<(Option<usize>, Message)> {
    let students = |sum: &QuestionSum| sum.ideas.first().map_or(0, |idea| idea.students);
    let missed = |sum: &QuestionSum| sum.seats.not_yet + sum.seats.right_later;
    let first_most = |of: &dyn Fn(&QuestionSum) -> usize| {
        let most = sums.iter().map(of).max().filter(|most| *most > 0)?;
        sums.iter().position(|sum| of(sum) == most)
    };
    if sums.iter().all(|sum| sum.seats.blank == sum.seats.asked) {
        return None;
    }
    if let Some(at) = first_most(&students).filter(|at| sums.get(*at).is_some_and(|sum| students(sum) >= 2)) {
        let sum = sums.get(at)?;
        let idea = sum.ideas.first()?;
        let said = Message::new("class-next-idea")
            .message("ask", sum.ask.clone())
            .count("students", idea.students)
            .count("groups", idea.groups);
        return Some((Some(at), said));
    }
    if let Some(at) = first_most(&missed) {
        let sum = sums.get(at)?;
        let said =
            Message::new("class-next-not-yet").message("ask", sum.ask.clone()).count("students", missed(sum));
        return Some((Some(at), said));
    }
    Some((None, Message::new("class-next-why")))
}
