//! The teacher's lesson, taken into a notebook.

use crate::document::{Notebook, Sheet};
use crate::maker;

/// Works by a lesson from now on. Answers and marks stay: those of questions that both lessons ask go on, and the sheet as it
/// was is kept behind the new one. A text that is no lesson changes nothing.
pub fn take(notebook: &mut Notebook, text: &str) {
    let Some(opened) = maker::open(text) else { return };
    let lesson_id = opened.lesson.id.clone();
    if let Some(at) = notebook.sheets.iter().position(|sheet| sheet.lesson_id == lesson_id) {
        let mut sheet = notebook.sheets.remove(at);
        // There is one guess a notebook, and one set of points: what was made since goes along.
        if let Some(now) = notebook.sheets.first() {
            sheet.guess.clone_from(&now.guess);
            sheet.by_hand = now.by_hand.clone();
        }
        notebook.sheets.insert(0, sheet);
    } else {
        let sheet = notebook.sheets.first().cloned().unwrap_or_default();
        let is_new = Sheet { lesson_id: String::new(), ..sheet.clone() } == Sheet::default();
        let next = Sheet { lesson_id, ..sheet };
        if is_new {
            notebook.sheets = vec![next];
        } else {
            notebook.sheets.insert(0, next);
        }
    }
    notebook.lesson = opened.lesson;
    notebook.place.question = 0;
}

#[cfg(test)]
mod tests {
    use crate::act;
    use crate::action::Action;
    use crate::document::{Lesson, Notebook};
    use crate::maker::{LessonAction, act as change, file_text};

    fn taken(notebook: &Notebook, lesson: &Lesson) -> Notebook {
        act(notebook, &Action::TakeLesson { text: file_text(lesson, "") })
    }

    #[test]
    fn a_lesson_is_worked_by_and_what_was_answered_stays() {
        let other = change(Lesson::first(), &LessonAction::Leave { kind: 5 });
        let fresh = taken(&Notebook::new("4T7K", Lesson::first()), &other);
        assert_eq!((fresh.sheets.len(), fresh.lesson.kinds.len()), (1, 7));
        assert_eq!(fresh.sheets.first().map(|s| s.lesson_id.as_str()), Some(other.id.as_str()));

        let mut used = Notebook::new("4T7K", Lesson::first());
        if let Some(sheet) = used.sheets.first_mut() {
            sheet.answers.entry("4-4.0-5.0".to_owned()).or_default().reason = "I looked".to_owned();
        }
        let went_on = taken(&used, &other);
        assert_eq!(went_on.sheets.len(), 2);
        let reason = |n: usize, book: &Notebook| {
            book.sheets.get(n).and_then(|s| s.answers.get("4-4.0-5.0")).map(|a| a.reason.clone())
        };
        assert_eq!(reason(0, &went_on).as_deref(), Some("I looked"));
        // Back to the first lesson: its own sheet comes to the front again.
        let back = taken(&went_on, &Lesson::first());
        assert_eq!((back.sheets.len(), back.lesson.kinds.len()), (2, 8));
        assert_eq!(back.sheets.first().map(|s| s.lesson_id.as_str()), Some("first-lesson"));
    }

    #[test]
    fn what_is_no_lesson_changes_nothing() {
        let notebook = Notebook::new("4T7K", Lesson::first());
        assert_eq!(act(&notebook, &Action::TakeLesson { text: "{}".to_owned() }), notebook);
    }
}
