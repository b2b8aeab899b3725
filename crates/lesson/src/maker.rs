//! The teacher's lesson: which questions, in which order, for how many points, by which rules, with what left open; questions
//! of the teacher's own; one file for the class, one sheet for whoever runs it.
//!
//! A [`Lesson`] is the document; [`act`] does one thing to it, [`look`] says what the page shows, [`open`] reads a file of any
//! version, and [`file_text`] writes one. All are pure, as for a notebook.

mod action;
mod names;
mod open;
pub mod view;
mod views;

pub use action::{LessonAction, LessonText, OpenPart, OwnNumber, RuleName};
pub use names::name;
pub use open::{OpenedLesson, file_text, open};
pub use views::{look, question_name};

use crate::act::cast_in;
use crate::document::{FIRST_OF_A_TEACHER, Lesson, MOST_OWN, MOST_POINTS, OwnBy, OwnQuestion};
use crate::questions::all_kinds;
use layercast_exchange::document::short_hash;

/// Longest title, in signs.
const MOST_TITLE: usize = 120;
/// Longest question, hint or note, in signs.
const MOST_WORDS: usize = 1200;
/// Levels of a rubric.
const MOST_LEVELS: usize = 4;

/// The lesson after one thing a teacher did. What cannot be done leaves it as it is.
///
/// ```
/// use layercast_lesson::document::Lesson;
/// use layercast_lesson::maker::{LessonAction, act};
/// let without = act(Lesson::first(), &LessonAction::Leave { kind: 5 });
/// assert_eq!(without.kinds, [1, 4, 6, 9, 7, 8, 13]);
/// assert_ne!(without.id, Lesson::first().id);
/// ```
pub fn act(mut lesson: Lesson, action: &LessonAction) -> Lesson {
    let before = lesson.clone();
    match action {
        LessonAction::Write { what, text } => write(&mut lesson, *what, text),
        LessonAction::Take { kind } => take(&mut lesson, *kind),
        LessonAction::Leave { kind } => lesson.kinds.retain(|k| k != kind),
        LessonAction::Move { kind, up } => shift(&mut lesson.kinds, *kind, *up),
        LessonAction::SetPoints { kind, text } => set_points(&mut lesson, *kind, text),
        LessonAction::AddOwn => add_own(&mut lesson),
        LessonAction::RemoveOwn { own } => remove_own(&mut lesson, *own),
        LessonAction::AskOwn { own, text } => with_own(&mut lesson, *own, |q| q.ask = cut(text, MOST_WORDS)),
        LessonAction::HintOwn { own, text } => {
            with_own(&mut lesson, *own, |q| q.hint = cut(text, MOST_WORDS))
        }
        LessonAction::SetOwnBy { own, quantity } => {
            with_own(&mut lesson, *own, |q| q.by = OwnBy { quantity: *quantity, ..q.by.clone() });
        }
        LessonAction::SetOwnNumber { own, number, text } => {
            let value = layercast_exchange::number::quantity(text).map(|q| q.value).filter(|v| v.is_finite());
            with_own(&mut lesson, *own, |q| match number {
                OwnNumber::At => q.by.at_m = value.filter(|z| *z >= 0.0),
                OwnNumber::To => q.by.to_m = value.filter(|z| *z >= 0.0),
                OwnNumber::Temp => q.by.temp_c = value,
            });
        }
        LessonAction::SetLevel { own, level, text } => with_own(&mut lesson, *own, |q| {
            if *level < MOST_LEVELS {
                q.by.rubric.resize(MOST_LEVELS.max(q.by.rubric.len()), String::new());
                if let Some(words) = q.by.rubric.get_mut(*level) {
                    *words = cut(text, MOST_WORDS);
                }
            }
        }),
        LessonAction::SetOpen { part, open } => match part {
            OpenPart::Steps => lesson.open.steps = *open,
            OpenPart::Thermocline => lesson.open.thermocline = *open,
            OpenPart::MixedLayer => lesson.open.mixed_layer = *open,
            OpenPart::DeepLayer => lesson.open.deep_layer = *open,
            OpenPart::Curve => lesson.open.curve_waits = !*open,
        },
        LessonAction::TakeOther { text } => lesson.other = cast_in(text, None).or(lesson.other),
        LessonAction::RemoveOther => lesson.other = None,
        LessonAction::SetRule { rule, text } => set_rule(&mut lesson, *rule, text),
        LessonAction::SetHelp { help } => lesson.help = *help,
        LessonAction::SetLanguage { text } => {
            lesson.language = if matches!(text.as_str(), "en" | "es") { text.clone() } else { String::new() };
        }
    }
    if lesson != before {
        lesson.id = id(&lesson);
    }
    lesson
}

/// What a changed lesson is called: two that ask the same are the same lesson.
fn id(lesson: &Lesson) -> String {
    let text = serde_json::to_string(&Lesson { id: String::new(), ..lesson.clone() }).unwrap_or_default();
    format!("lesson-{}", short_hash(&text))
}

fn cut(text: &str, most: usize) -> String {
    text.chars().filter(|c| !c.is_control() || *c == '\n').take(most).collect()
}

fn write(lesson: &mut Lesson, what: LessonText, text: &str) {
    match what {
        LessonText::Title => lesson.title = cut(text, MOST_TITLE),
        LessonText::Note => lesson.note = cut(text, MOST_WORDS),
        LessonText::RunNote => lesson.run_note = cut(text, MOST_WORDS),
    }
}

fn take(lesson: &mut Lesson, kind: u8) {
    let is_known = all_kinds().any(|k| k == kind) || lesson.own_question(kind).is_some();
    if is_known && !lesson.kinds.contains(&kind) {
        lesson.kinds.push(kind);
    }
}

fn shift(kinds: &mut [u8], kind: u8, up: bool) {
    let Some(at) = kinds.iter().position(|k| *k == kind) else { return };
    let to = if up { at.checked_sub(1) } else { Some(at + 1).filter(|to| *to < kinds.len()) };
    if let Some(to) = to {
        kinds.swap(at, to);
    }
}

fn set_points(lesson: &mut Lesson, kind: u8, text: &str) {
    match text.trim().parse::<u8>() {
        Ok(points) if points <= MOST_POINTS => {
            lesson.points.insert(kind, points);
        }
        _ if text.trim().is_empty() => {
            lesson.points.remove(&kind);
        }
        _ => {}
    }
}

fn add_own(lesson: &mut Lesson) {
    if lesson.own.len() < MOST_OWN
        && let Ok(n) = u8::try_from(lesson.own.len())
    {
        lesson.own.push(OwnQuestion::default());
        lesson.kinds.push(FIRST_OF_A_TEACHER + n);
    }
}

/// Takes an own question away; those after it move up by a number.
fn remove_own(lesson: &mut Lesson, own: usize) {
    if own >= lesson.own.len() {
        return;
    }
    lesson.own.remove(own);
    let gone = u8::try_from(own).map_or(u8::MAX, |n| FIRST_OF_A_TEACHER.saturating_add(n));
    lesson.kinds.retain(|k| *k != gone);
    lesson.kinds.iter_mut().filter(|k| **k > gone).for_each(|k| *k -= 1);
    lesson.points = (lesson.points.iter())
        .filter(|(k, _)| **k != gone)
        .map(|(k, points)| (if *k > gone { *k - 1 } else { *k }, *points))
        .collect();
}

fn with_own(lesson: &mut Lesson, own: usize, change: impl FnOnce(&mut OwnQuestion)) {
    if let Some(question) = lesson.own.get_mut(own) {
        change(question);
    }
}

/// A rule that makes no sense leaves the one before.
fn set_rule(lesson: &mut Lesson, rule: RuleName, text: &str) {
    let Some(value) = layercast_exchange::number::quantity(text).map(|q| q.value) else { return };
    match rule {
        RuleName::Reference if (0.0..=10.0).contains(&value) => lesson.method.reference_m = value,
        RuleName::MixedDrop if (0.05..=5.0).contains(&value) => lesson.method.mixed_drop_c = value,
        RuleName::Steep if (0.1..=10.0).contains(&value) => lesson.method.steep_c_per_m = value,
        _ => {}
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::document::Quantity;

    fn after(actions: &[LessonAction]) -> Lesson {
        actions.iter().fold(Lesson::first(), act)
    }

    #[test]
    fn questions_are_taken_left_and_moved() {
        let lesson = after(&[
            LessonAction::Leave { kind: 4 },
            LessonAction::Leave { kind: 8 },
            LessonAction::Move { kind: 13, up: true },
            LessonAction::Move { kind: 1, up: true },
            LessonAction::Take { kind: 4 },
            LessonAction::Take { kind: 4 },
            LessonAction::Take { kind: 77 },
        ]);
        assert_eq!(lesson.kinds, [1, 5, 6, 9, 13, 7, 4]);
    }

    #[test]
    fn the_same_questions_are_the_same_lesson_and_others_are_not() {
        let out_and_in = [LessonAction::Leave { kind: 13 }, LessonAction::Take { kind: 13 }];
        let one = after(&out_and_in);
        assert_eq!(one.id, after(&out_and_in).id);
        assert_ne!(one.id, after(&out_and_in[..1]).id);
        assert_eq!(after(&[LessonAction::Move { kind: 1, up: true }]).id, Lesson::first().id);
    }

    #[test]
    fn an_own_question_goes_and_those_after_it_move_up() {
        let ask = |own, text: &str| LessonAction::AskOwn { own, text: text.to_owned() };
        let lesson = after(&[
            LessonAction::AddOwn,
            LessonAction::AddOwn,
            LessonAction::AddOwn,
            ask(0, "a"),
            ask(1, "b"),
            ask(2, "c"),
            LessonAction::SetPoints { kind: 202, text: "7".to_owned() },
            LessonAction::RemoveOwn { own: 1 },
        ]);
        assert_eq!(lesson.kinds, [1, 4, 5, 6, 9, 7, 8, 13, 200, 201]);
        assert_eq!(lesson.own.iter().map(|own| own.ask.as_str()).collect::<Vec<_>>(), ["a", "c"]);
        assert_eq!((lesson.points_of(201), lesson.points_of(200)), (7, 4));
    }

    #[test]
    fn numbers_come_as_people_write_them_and_nonsense_changes_nothing() {
        let lesson = after(&[
            LessonAction::AddOwn,
            LessonAction::SetOwnBy { own: 0, quantity: Some(Quantity::TempAt) },
            LessonAction::SetOwnNumber { own: 0, number: OwnNumber::At, text: "3,5 m".to_owned() },
            LessonAction::SetRule { rule: RuleName::MixedDrop, text: "0,5".to_owned() },
            LessonAction::SetRule { rule: RuleName::Steep, text: "much".to_owned() },
            LessonAction::SetPoints { kind: 1, text: "900".to_owned() },
        ]);
        assert_eq!(lesson.own.first().and_then(|own| own.by.at_m), Some(3.5));
        assert_eq!((lesson.method.mixed_drop_c, lesson.method.steep_c_per_m), (0.5, 1.0));
        assert_eq!(lesson.points_of(1), 4);
    }

    #[test]
    fn there_is_an_end_to_own_questions() {
        let lesson = (0..80).fold(Lesson::first(), |lesson, _| act(lesson, &LessonAction::AddOwn));
        assert_eq!(lesson.own.len(), MOST_OWN);
        assert_eq!(look(&lesson).add_own, None);
        assert_eq!(lesson.kinds.iter().filter(|k| **k >= FIRST_OF_A_TEACHER).count(), MOST_OWN);
    }

    #[test]
    fn the_plan_of_the_period_goes_by_what_was_chosen() {
        let minutes = |lesson: &Lesson| look(lesson).plan.iter().map(|row| row.minutes).collect::<Vec<_>>();
        // Nothing to mark: that part is not there. Two questions take twice as long as one.
        let lesson = Lesson { kinds: vec![1], ..Lesson::first() };
        assert_eq!(minutes(&lesson), [5, 4, 12, 10]);
        assert_eq!(minutes(&Lesson { kinds: vec![1, 7], ..lesson.clone() }), [5, 6, 8, 12, 10]);
        // The shares of the layers wait for the marks as well, and so does what tells the other group's range.
        for kind in [12, 23] {
            assert_eq!(minutes(&Lesson { kinds: vec![1, kind], ..lesson.clone() }), [5, 6, 8, 12, 10]);
        }
    }

    #[test]
    fn every_kind_has_a_name() {
        for kind in all_kinds() {
            assert!(name(kind).is_some(), "kind {kind}");
        }
    }

    #[test]
    fn the_view_lists_each_question_once() {
        let view = look(&after(&[LessonAction::Leave { kind: 5 }, LessonAction::AddOwn]));
        assert_eq!(view.taken.len(), 8);
        assert!(view.others.iter().any(|other| other.take == LessonAction::Take { kind: 5 }));
        assert!(view.taken.iter().all(|one| one.kind != 5));
        let own = view.taken.last().and_then(|one| one.own.as_ref()).unwrap();
        assert_eq!(own.lacks.as_ref().map(|said| said.id.as_str()), Some("lesson-own-lacks-ask"));
    }
}
