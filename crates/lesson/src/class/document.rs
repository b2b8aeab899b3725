//! The document of a class: what came in, untouched, and what the teacher decided about it.

use super::repairs::Repair;
use crate::document::{Lesson, is_short, is_sound};
use crate::hand_in::{Check, Form, HandIn};
use layercast_core::Message;
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Name of the schema in [`Class::schema`].
pub const SCHEMA: &str = "layercast-class";
/// Version written today. Readers of older versions stay for ever.
pub const VERSION: u32 = 1;
/// Most hand-ins of a class, older copies included.
pub(super) const MOST_PAPERS: usize = 2_000;
/// Most steps that can be undone.
pub(super) const MOST_UNDO: usize = 20;
/// Longest class file that is read, bytes.
const MOST_BYTES: usize = 256 << 20;

/// A class: hand-ins as they came, and the decisions. No person's name is in it; nothing computed is in it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Class {
    /// Always [`SCHEMA`].
    pub schema: String,
    /// Schema version.
    pub version: u32,
    /// Code of the class; the first hand-ins give it where the teacher did not.
    #[serde(default)]
    pub code: String,
    /// The teacher's lesson: its questions and its method count for everybody. The first hand-ins give it where the
    /// teacher did not.
    #[serde(default)]
    pub lesson: Option<Lesson>,
    /// Hand-ins by their ids, as they came. Nothing is ever taken from here.
    #[serde(default)]
    pub papers: BTreeMap<String, Paper>,
    /// What is decided now.
    #[serde(default)]
    pub now: Decided,
    /// What was decided before, newest last, for undo (at most 20).
    #[serde(default)]
    pub undo: Vec<Undone>,
}

/// A hand-in as it came.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Paper {
    /// It.
    pub hand_in: HandIn,
    /// How it came.
    pub form: Form,
    /// Whether it is as it was written.
    pub check: Check,
}

/// What is decided about a class.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Decided {
    /// Members in the order they came.
    #[serde(default)]
    pub members: Vec<Member>,
    /// Group names are hidden on the wall.
    #[serde(default)]
    pub hidden: bool,
    /// Seed of the order of the groups on the wall; `None`: by name.
    #[serde(default)]
    pub shuffled: Option<u32>,
    /// Casts that are counted as another one: both by content id.
    #[serde(default)]
    pub same_cast: BTreeMap<String, String>,
    /// Pairs of nearly equal casts that were looked at and are two.
    #[serde(default)]
    pub both_casts: Vec<(String, String)>,
    /// Comments the teacher keeps to use again, oldest first.
    #[serde(default)]
    pub comments: Vec<String>,
}

/// One sheet of the class.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Member {
    /// Its name in this class; stays when a newer copy comes.
    pub key: String,
    /// Id of the hand-in that counts.
    pub paper: String,
    /// Ids of older copies.
    #[serde(default)]
    pub older: Vec<String>,
    /// Why it does not count; `None` when it does.
    #[serde(default)]
    pub aside: Option<Aside>,
    /// Repairs.
    #[serde(default)]
    pub repair: Repair,
    /// Things to look at that the teacher looked at.
    #[serde(default)]
    pub seen: Vec<super::looks::LookAt>,
    /// Handed in late.
    #[serde(default)]
    pub late: bool,
    /// Practice: counted apart.
    #[serde(default)]
    pub practice: bool,
    /// The teacher's marks by question id.
    #[serde(default)]
    pub marks: BTreeMap<String, Grade>,
}

/// Why a member does not count.
#[derive(Clone, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Aside {
    /// It is of another class.
    OtherClass,
    /// It is of another lesson.
    OtherLesson,
    /// The seat has another sheet already, and neither holds all of the other: key of that member.
    Beside(String),
    /// Taken out by the teacher.
    TakenOut,
}

/// What a teacher gave a question by hand.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Grade {
    /// Level of the prose, 0 to 3.
    #[serde(default)]
    pub level: Option<u8>,
    /// Points in place of what was computed.
    #[serde(default)]
    pub points: Option<f64>,
    /// Why.
    #[serde(default)]
    pub reason: String,
    /// A comment for the student.
    #[serde(default)]
    pub comment: String,
}

/// An earlier state and what was done to it.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Undone {
    /// What undoing is called.
    pub what: UndoWhat,
    /// What was decided before it.
    pub was: Decided,
    /// What the class was before it, where it changed that.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub named: Option<Named>,
}

/// Whose class it is.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Named {
    /// Code of the class.
    pub code: String,
    /// Its lesson.
    pub lesson: Option<Lesson>,
}

/// What can be undone.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum UndoWhat {
    /// Hand-ins that were added.
    Import,
    /// A repair.
    Repair,
    /// A mark.
    Mark,
    /// A sheet that was taken out.
    TakenOut,
    /// The code of the class.
    Code,
    /// How the groups stand on the wall.
    Order,
    /// Any other decision.
    Other,
}

impl Class {
    /// A class without hand-ins. `lesson`: the teacher's; `None` takes that of the first hand-ins.
    pub fn new(code: impl Into<String>, lesson: Option<Lesson>) -> Self {
        Self {
            schema: SCHEMA.to_owned(),
            version: VERSION,
            code: code.into(),
            lesson,
            papers: BTreeMap::new(),
            now: Decided::default(),
            undo: Vec::new(),
        }
    }

    /// The class as JSON of today's version.
    pub fn to_json(&self) -> String {
        // Every key of the document is a text or a number, so that writing it cannot fail.
        serde_json::to_string(self).unwrap_or_default()
    }

    /// Reads a class of any version.
    ///
    /// # Errors
    /// Why it is not opened, in words.
    pub fn from_json(text: &str) -> Result<Self, Message> {
        #[derive(Deserialize)]
        struct Head {
            schema: String,
            version: u32,
        }
        if text.len() > MOST_BYTES {
            return Err(Message::new("class-why-too-large"));
        }
        let head: Head = serde_json::from_str(text).map_err(|_| Message::new("class-file-none"))?;
        if head.schema != SCHEMA || head.version == 0 {
            return Err(Message::new("class-file-none"));
        }
        if head.version > VERSION {
            let version = usize::try_from(head.version).unwrap_or(usize::MAX);
            return Err(Message::new("class-file-newer").count("version", version));
        }
        let class: Self = serde_json::from_str(text).map_err(|_| Message::new("class-file-broken"))?;
        if class.is_sound() { Ok(class) } else { Err(Message::new("class-file-broken")) }
    }

    fn is_sound(&self) -> bool {
        let is_paper = |paper: &Paper| {
            let HandIn { cast, sheet, lesson, .. } = &paper.hand_in;
            is_sound(cast, sheet, lesson)
        };
        let members = self.undo.iter().map(|undone| &undone.was).chain([&self.now]).flat_map(|d| &d.members);
        let is_member = |member: &Member| self.papers.contains_key(&member.paper) && is_short(&member.key);
        self.papers.len() <= MOST_PAPERS && self.undo.len() <= 100 && self.papers.values().all(is_paper) && {
            members
        }
        .all(is_member)
    }

    /// The class with the teacher's own lesson: everything is then computed by it.
    #[must_use]
    pub fn with_lesson(self, lesson: Lesson) -> Self {
        Self { lesson: Some(lesson), ..self }
    }

    /// A member.
    pub fn member(&self, key: &str) -> Option<&Member> {
        self.now.members.iter().find(|member| member.key == key)
    }

    /// The hand-in of a member.
    pub fn paper(&self, member: &Member) -> Option<&Paper> {
        self.papers.get(&member.paper)
    }
}
