//! A lesson as a file: written, and opened whatever version of the page wrote it.

use crate::document::{FIRST_OF_A_TEACHER, LESSON_SCHEMA, LESSON_VERSION, Lesson, MOST_OWN, is_fit};
use crate::questions::all_kinds;
use layercast_core::Message;
use serde_json::Value;

/// Largest file that is read as a lesson, bytes.
const MOST_BYTES: usize = 4 << 20;
/// Most questions of a lesson.
const MOST_KINDS: usize = 1000;

/// A lesson that was opened.
#[derive(Clone, Debug, PartialEq)]
pub struct OpenedLesson {
    /// The lesson; kinds this page does not know stay in it, and are not asked.
    pub lesson: Lesson,
    /// What this page cannot do with it, in order.
    pub said: Vec<Message>,
    /// What stood in the file and is not this page's: [`file_text`] writes it again, so that nothing is lost.
    pub rest: String,
}

/// Reads a lesson's file; `None` when it is none.
pub fn open(text: &str) -> Option<OpenedLesson> {
    if text.len() > MOST_BYTES {
        return None;
    }
    let value: Value = serde_json::from_str(text.trim_start_matches('\u{feff}')).ok()?;
    let whole = value.as_object()?;
    if whole.get("schema")?.as_str()? != LESSON_SCHEMA {
        return None;
    }
    let version = whole.get("version").and_then(Value::as_u64).unwrap_or(1);
    let mut said = Vec::new();
    // A kind beyond a byte is none of ours: it is named, and kept for the pages that know it.
    let numbers: Vec<u64> =
        whole.get("kinds")?.as_array()?.iter().filter_map(Value::as_u64).take(MOST_KINDS).collect();
    let mut fitting = whole.clone();
    fitting.insert("kinds".to_owned(), numbers.iter().filter(|k| **k <= 255).copied().collect());
    fitting.insert("version".to_owned(), LESSON_VERSION.into());
    fitting.entry("id").or_insert_with(|| Value::String(String::new()));
    fitting
        .entry("method")
        .or_insert_with(|| serde_json::to_value(Lesson::default().method).unwrap_or_default());
    let mut lesson = match serde_json::from_value::<Lesson>(Value::Object(fitting.clone())) {
        Ok(lesson) => lesson,
        // A part that is written otherwise is left out, and the rest is read.
        Err(_) => {
            said.push(Message::new("lesson-open-part"));
            simple(&fitting)?
        }
    };
    lesson.own.truncate(MOST_OWN);
    if !is_fit(&lesson) {
        return None;
    }
    if version > u64::from(LESSON_VERSION) {
        let version = usize::try_from(version).unwrap_or(usize::MAX);
        said.insert(0, Message::new("lesson-open-newer").count("version", version));
    }
    let is_known = |k: &u64| {
        let known = |k: u8| all_kinds().any(|known| known == k) || lesson.own_question(k).is_some();
        u8::try_from(*k).is_ok_and(known)
    };
    let unknown = numbers.iter().filter(|k| !is_known(k)).count();
    if unknown > 0 {
        said.push(Message::new("lesson-open-unknown").count("count", unknown));
    }
    let ours = serde_json::to_value(&lesson).ok()?;
    let ours = ours.as_object()?;
    let beyond = numbers.iter().any(|k| *k > 255 || (*k >= u64::from(FIRST_OF_A_TEACHER) && !is_known(k)));
    let is_rest = |key: &String| !ours.contains_key(key) || (key == "kinds" && beyond);
    let rest: serde_json::Map<String, Value> = (whole.iter())
        .filter(|(key, value)| is_rest(key) && Some(*value) != Lesson::empty_value(key).as_ref())
        .map(|(key, value)| (key.clone(), value.clone()))
        .collect();
    let rest = if rest.is_empty() { String::new() } else { Value::Object(rest).to_string() };
    Some(OpenedLesson { lesson, said, rest })
}

/// Only what every version has had: id, kinds, rules.
fn simple(whole: &serde_json::Map<String, Value>) -> Option<Lesson> {
    let id = whole.get("id")?.as_str().unwrap_or_default().to_owned();
    let kinds = serde_json::from_value(whole.get("kinds")?.clone()).ok()?;
    let mut lesson = Lesson { id, kinds, ..Lesson::default() };
    if let Some(method) = whole.get("method").and_then(|m| serde_json::from_value(m.clone()).ok()) {
        lesson.method = method;
    }
    Some(lesson)
}

impl Lesson {
    /// What a field that is not written means, where a file writes it all the same.
    fn empty_value(key: &str) -> Option<Value> {
        match key {
            "title" | "note" | "run_note" | "language" => Some(Value::String(String::new())),
            "points" => Some(Value::Object(serde_json::Map::new())),
            "own" => Some(Value::Array(Vec::new())),
            "help" => Some(Value::String("usual".to_owned())),
            _ => None,
        }
    }
}

/// The lesson as a file. `rest`: what stood beside it when it was opened.
pub fn file_text(lesson: &Lesson, rest: &str) -> String {
    let mut value = serde_json::to_value(lesson).unwrap_or_default();
    if let (Some(whole), Ok(Value::Object(rest))) = (value.as_object_mut(), serde_json::from_str(rest)) {
        for (key, kept) in rest {
            if key != "kinds" {
                whole.entry(key).or_insert(kept);
            }
        }
    }
    serde_json::to_string_pretty(&value).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::maker::{LessonAction, act};

    #[test]
    fn every_lesson_comes_back_as_it_was() {
        let mut lesson = Lesson::first();
        for action in [
            LessonAction::Take { kind: 13 },
            LessonAction::AddOwn,
            LessonAction::AskOwn { own: 0, text: "How warm is the <b>top</b>?".to_owned() },
            LessonAction::SetPoints { kind: 6, text: "8".to_owned() },
        ] {
            lesson = act(lesson, &action);
        }
        for lesson in [Lesson::first(), lesson] {
            let opened = open(&file_text(&lesson, "")).unwrap();
            assert_eq!((opened.lesson, opened.said.len(), opened.rest.as_str()), (lesson, 0, ""));
        }
    }

    #[test]
    fn a_newer_one_says_what_cannot_be_asked_and_loses_nothing() {
        let text = r#"{ "schema": "layercast-lesson", "version": 3, "id": "far", "kinds": [1, 77, 300, 5],
            "method": { "reference_m": 0.5, "mixed_drop_c": 1.0, "steep_c_per_m": 1.0 },
            "sounds": { "on": true }, "open": { "steps": true } }"#;
        let opened = open(text).unwrap();
        assert_eq!(opened.lesson.kinds, [1, 77, 5]);
        assert!(opened.lesson.open.steps);
        assert_eq!(
            opened.said.iter().map(|m| m.id).collect::<Vec<_>>(),
            ["lesson-open-newer", "lesson-open-unknown"]
        );
        let again: Value = serde_json::from_str(&file_text(&opened.lesson, &opened.rest)).unwrap();
        assert_eq!(again["sounds"]["on"], Value::Bool(true));
    }

    #[test]
    fn an_older_one_without_rules_or_id_opens() {
        let opened = open(r#"{ "schema": "layercast-lesson", "kinds": [1, 4] }"#).unwrap();
        assert_eq!((opened.lesson.kinds.as_slice(), opened.said.len()), ([1, 4].as_slice(), 0));
        assert_eq!(opened.lesson.method, Lesson::default().method);
    }

    #[test]
    fn a_part_that_is_broken_costs_only_itself() {
        let text = r#"{ "schema": "layercast-lesson", "version": 1, "id": "x", "kinds": [1, 4], "own": 7,
            "method": { "reference_m": 1.0, "mixed_drop_c": 1.0, "steep_c_per_m": 1.0 } }"#;
        let opened = open(text).unwrap();
        assert_eq!(opened.lesson.kinds, [1, 4]);
        assert_eq!(opened.lesson.method.reference_m, 1.0);
        assert_eq!(opened.said.iter().map(|m| m.id).collect::<Vec<_>>(), ["lesson-open-part"]);
    }

    #[test]
    fn what_is_no_lesson_is_none() {
        for text in [
            "",
            "{}",
            "[]",
            "{\"schema\":\"layercast-notebook\",\"kinds\":[]}",
            "{\"schema\":\"layercast-lesson\"}",
        ] {
            assert_eq!(open(text), None, "{text}");
        }
    }
}
