//! A lesson: which questions, in which order, by which rules.

mod own;

use super::{LESSON_SCHEMA, LESSON_VERSION};
use layercast_core::Method;
use layercast_exchange::document::CastDoc;
pub use own::{Lack, OwnBy, OwnQuestion, Quantity};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// The lesson of a new notebook.
const FIRST_LESSON: &str = include_str!("../../../../static-data/lessons/first-lesson.json");

/// A lesson: which questions, in which order, by which rules.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Lesson {
    /// "layercast-lesson".
    pub schema: String,
    /// Schema version.
    pub version: u32,
    /// Id of the lesson.
    pub id: String,
    /// What the teacher calls it; may be empty.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub title: String,
    /// A few words to the class, above the first question.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub note: String,
    /// Words to whoever runs it, on the run sheet only.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub run_note: String,
    /// Kinds in order, by the numbers of `questions/kinds/mod.rs`: 1, 4, 5, 6, 9, 7, 8, 13; from [`FIRST_OF_A_TEACHER`] on the
    /// teacher's own.
    pub kinds: Vec<u8>,
    /// Points by kind; a kind that is not here has [`USUAL_POINTS`].
    #[serde(default, skip_serializing_if = "BTreeMap::is_empty")]
    pub points: BTreeMap<u8, u8>,
    /// The teacher's own questions; the n-th is kind [`FIRST_OF_A_TEACHER`] + n.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub own: Vec<OwnQuestion>,
    /// How much help stands open from the start.
    #[serde(default, skip_serializing_if = "Help::is_usual")]
    pub help: Help,
    /// Language it opens in ("en", "es"); empty leaves the reader's.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub language: String,
    /// Left open by the teacher from the start.
    #[serde(default)]
    pub open: Open,
    /// Another group's cast, for the questions that compare with one; a cast the group brings itself comes before it.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub other: Option<Box<CastDoc>>,
    /// Rules of the class.
    pub method: MethodDoc,
}

/// The first number of the kinds that a water brings itself (even, unstable, warm today): no lesson lists them.
pub const FIRST_OF_A_WATER: u8 = 101;
/// The number of the first of a teacher's own questions.
pub const FIRST_OF_A_TEACHER: u8 = 200;
/// Most of them: their numbers end at 255.
pub const MOST_OWN: usize = 56;
/// Points of a kind that a lesson says nothing about.
pub const USUAL_POINTS: u8 = 4;
/// Most points of a question.
pub const MOST_POINTS: u8 = 100;

/// How much help stands open from the start. No screen a student sees names it.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum Help {
    /// The first hint stands under each question from the start; it costs nothing.
    More,
    /// Hints are asked for.
    #[default]
    Usual,
    /// The third hint, the step worked elsewhere, is not there.
    Less,
}

impl Help {
    /// Hints that stand open from the start.
    pub fn given(self) -> u8 {
        u8::from(self == Self::More)
    }

    /// Hints there are.
    pub fn most(self) -> u8 {
        if self == Self::Less { 2 } else { 3 }
    }

    /// Whether nothing needs to be written.
    pub fn is_usual(&self) -> bool {
        *self == Self::Usual
    }
}

/// What a lesson leaves open from the start.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
pub struct Open {
    /// The strip of °C per metre.
    #[serde(default)]
    pub steps: bool,
    /// The thermocline.
    #[serde(default)]
    pub thermocline: bool,
    /// The mixed layer.
    #[serde(default)]
    pub mixed_layer: bool,
    /// The deep layer.
    #[serde(default)]
    pub deep_layer: bool,
    /// The other way round: the curve itself waits until three readings were placed by hand.
    #[serde(default, skip_serializing_if = "std::ops::Not::not")]
    pub curve_waits: bool,
}

/// [`layercast_core::Method`] as stored.
#[derive(Clone, Copy, Debug, PartialEq, Serialize, Deserialize)]
pub struct MethodDoc {
    /// Metres.
    pub reference_m: f64,
    /// °C.
    pub mixed_drop_c: f64,
    /// °C per metre.
    pub steep_c_per_m: f64,
}

impl MethodDoc {
    /// As the science takes it.
    pub fn to_method(self) -> Method {
        Method {
            reference_m: self.reference_m,
            mixed_drop_c: self.mixed_drop_c,
            steep_c_per_m: self.steep_c_per_m,
            ..Method::default()
        }
    }
}

impl Default for MethodDoc {
    /// The class rules.
    fn default() -> Self {
        let Method { reference_m, mixed_drop_c, steep_c_per_m, .. } = Method::default();
        Self { reference_m, mixed_drop_c, steep_c_per_m }
    }
}

impl Lesson {
    /// The lesson every new notebook starts with (`static-data/lessons/first-lesson.json`).
    pub fn first() -> Self {
        serde_json::from_str(FIRST_LESSON).unwrap_or_default()
    }

    /// Points of a kind.
    pub fn points_of(&self, kind: u8) -> u8 {
        self.points.get(&kind).copied().unwrap_or(USUAL_POINTS)
    }

    /// The teacher's own question of that number.
    pub fn own_question(&self, kind: u8) -> Option<&OwnQuestion> {
        self.own.get(usize::from(kind.checked_sub(FIRST_OF_A_TEACHER)?))
    }
}

impl Default for Lesson {
    /// All kinds of the first lesson, nothing left open, the class rules.
    fn default() -> Self {
        Self {
            schema: LESSON_SCHEMA.to_owned(),
            version: LESSON_VERSION,
            id: "first-lesson".to_owned(),
            title: String::new(),
            note: String::new(),
            run_note: String::new(),
            points: BTreeMap::new(),
            own: Vec::new(),
            help: Help::default(),
            language: String::new(),
            kinds: vec![1, 4, 5, 6, 9, 7, 8, 13],
            open: Open::default(),
            other: None,
            method: MethodDoc::default(),
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_lesson_file_opens() {
        let folder = std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../static-data/lessons");
        let files: Vec<_> = std::fs::read_dir(folder).unwrap().map(|file| file.unwrap().path()).collect();
        assert!(files.len() >= 2);
        for file in files {
            let lesson: Lesson = serde_json::from_str(&std::fs::read_to_string(&file).unwrap()).unwrap();
            assert_eq!((lesson.schema.as_str(), lesson.version), (LESSON_SCHEMA, LESSON_VERSION), "{file:?}");
            assert_eq!(file.file_stem().unwrap().to_str(), Some(lesson.id.as_str()));
            let mut kinds = lesson.kinds.clone();
            kinds.sort_unstable();
            kinds.dedup();
            assert_eq!(kinds.len(), lesson.kinds.len(), "{file:?}");
        }
    }

    #[test]
    fn the_first_lesson_is_the_one_in_the_file() {
        let written: Lesson = serde_json::from_str(FIRST_LESSON).unwrap();
        assert_eq!(written, Lesson::default());
        assert_eq!(written, Lesson::first());
    }
}
