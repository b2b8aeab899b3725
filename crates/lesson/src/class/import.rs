//! What was dropped or pasted, taken into the class: one row for each thing, and nothing else touched.

use super::document::{Aside, Class, MOST_PAPERS, MOST_UNDO, Member, Named, Paper, UndoWhat, Undone};
use super::join::{held_by, holds_all, is_same_work, owner};
use super::looks::Sights;
use super::repairs::Repair;
use super::room::Room;
use crate::document::Lesson;
use crate::hand_in::{self, HandIn, Opened, Refused};
use crate::view::Said;
use layercast_core::Message;
use layercast_exchange::zip::{self, Refusal};
use serde::Serialize;

/// Something dropped: a file, or a pasted text.
#[derive(Clone, Copy, Debug)]
pub struct Dropped<'a> {
    /// What to call it in its row. It decides nothing and is not stored: names of files can be names of people.
    pub name: &'a str,
    /// Its bytes.
    pub bytes: &'a [u8],
}

/// What became of a thing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum Outcome {
    /// New.
    New,
    /// Here already, or an older copy of what is here.
    SameAgain,
    /// A newer copy of what was here, which it replaces.
    NewerThan,
    /// Something about it must be looked at.
    NeedsALook,
    /// Not a hand-in, or of another class or lesson.
    NotOurs,
}

/// One thing that was dropped.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct TakenRow {
    /// Which of the dropped, from 0.
    pub dropped: usize,
    /// Its name, with the zips it was in.
    pub name: String,
    /// What became of it.
    pub outcome: Outcome,
    /// Why, most important first.
    pub why: Vec<Said>,
    /// Key of the member it is or belongs to.
    pub member: Option<String>,
}

/// How many of each; they add up to the number of rows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct Counts {
    /// [`Outcome::New`].
    pub new: usize,
    /// [`Outcome::SameAgain`].
    pub same_again: usize,
    /// [`Outcome::NewerThan`].
    pub newer_than: usize,
    /// [`Outcome::NeedsALook`].
    pub needs_a_look: usize,
    /// [`Outcome::NotOurs`].
    pub not_ours: usize,
}

impl Counts {
    /// Counts rows.
    pub fn of(rows: &[TakenRow]) -> Self {
        let count = |outcome: Outcome| rows.iter().filter(|row| row.outcome == outcome).count();
        Self {
            new: count(Outcome::New),
            same_again: count(Outcome::SameAgain),
            newer_than: count(Outcome::NewerThan),
            needs_a_look: count(Outcome::NeedsALook),
            not_ours: count(Outcome::NotOurs),
        }
    }

    /// All of them.
    pub fn all(self) -> usize {
        self.new + self.same_again + self.newer_than + self.needs_a_look + self.not_ours
    }
}

/// A thing found in what was dropped.
struct Thing {
    dropped: usize,
    name: String,
    found: Result<Opened, Refused>,
}

/// The class with what was dropped, and one row for each thing in it: a file is one, each file of a zip (and of zips in
/// it) is one, each hand-in of a paste is one.
///
/// A class without a code or a lesson takes those that most of the first hand-ins have. Undone in one step.
pub fn import(class: &Class, batch: &[Dropped]) -> (Class, Vec<TakenRow>) {
    import_seen(class, batch, &mut |_| {})
}

/// [`import`], and `see` is shown the class that came of it, computed: whoever looks at it next need not do so again.
pub fn import_seen(class: &Class, batch: &[Dropped], see: &mut dyn FnMut(&Room)) -> (Class, Vec<TakenRow>) {
    let things: Vec<Thing> = batch.iter().enumerate().flat_map(|(at, dropped)| things(at, dropped)).collect();
    let mut next = class.clone();
    adopt(&mut next, &things);
    let mut rows: Vec<TakenRow> = things.into_iter().map(|thing| take(&mut next, thing)).collect();
    next.remember(UndoWhat::Import, class);
    let room = Room::of(&next);
    look_again(&room, &mut rows);
    see(&room);
    (next, rows)
}

/// Everything in one dropped thing.
fn things(at: usize, dropped: &Dropped) -> Vec<Thing> {
    let opened = |name: &str, bytes: &[u8]| {
        let thing = |found| Thing { dropped: at, name: name.to_owned(), found };
        hand_in::open(bytes).into_iter().map(thing).collect::<Vec<_>>()
    };
    if !zip::is_zip(dropped.bytes) {
        return opened(dropped.name, dropped.bytes);
    }
    let part = |part: zip::Part| {
        let name = match part.name.as_str() {
            "" => dropped.name.to_owned(),
            inner => format!("{}/{inner}", dropped.name),
        };
        match part.bytes {
            Ok(bytes) => opened(&name, &bytes),
            Err(refusal) => vec![Thing { dropped: at, name, found: Err(refused(refusal)) }],
        }
    };
    zip::parts(dropped.bytes).into_iter().flat_map(part).collect()
}

fn refused(refusal: Refusal) -> Refused {
    let not_ours = |id| Refused::NotOurs(Message::new(id));
    match refusal {
        Refusal::Broken => Refused::Broken(Message::new("class-why-zip-broken")),
        Refusal::Empty => not_ours("class-why-zip-empty"),
        Refusal::Locked => Refused::Broken(Message::new("class-why-zip-locked")),
        Refusal::OtherMethod => Refused::Broken(Message::new("class-why-zip-method")),
        Refusal::TooMuch => not_ours("class-why-zip-too-much"),
        Refusal::TooDeep => not_ours("class-why-zip-too-deep"),
        Refusal::Document => not_ours("class-why-zip-document"),
    }
}

/// The value most of a list have; of several the one that comes first.
fn most_common<T: PartialEq>(list: Vec<T>) -> Option<T> {
    let count = |one: &T| list.iter().filter(|other| *other == one).count();
    let best = list.iter().map(count).max()?;
    let at = list.iter().position(|one| count(one) == best)?;
    list.into_iter().nth(at)
}

/// Code and lesson of the first hand-ins, where the teacher gave none.
fn adopt(class: &mut Class, things: &[Thing]) {
    let hand_ins =
        || things.iter().filter_map(|thing| thing.found.as_ref().ok()).map(|opened| &opened.hand_in);
    if class.code.is_empty() {
        let codes = hand_ins().map(|hand_in| hand_in.sheet.class.trim()).filter(|code| !code.is_empty());
        class.code = most_common(codes.collect()).unwrap_or_default().to_owned();
    }
    if class.lesson.is_none() {
        let ours = hand_ins().filter(|hand_in| is_class(class, hand_in));
        let lessons: Vec<&Lesson> = ours.map(|hand_in| &hand_in.lesson).collect();
        class.lesson = most_common(lessons).cloned();
    }
}

/// What a lesson is called: by its teacher, else by its id.
fn named(lesson: &Lesson) -> String {
    let title = lesson.title.trim();
    if title.is_empty() { lesson.id.clone() } else { format!("“{title}”") }
}

/// It says this class, or none.
fn is_class(class: &Class, hand_in: &HandIn) -> bool {
    let code = hand_in.sheet.class.trim();
    code.is_empty() || class.code.is_empty() || code.to_lowercase() == class.code.trim().to_lowercase()
}

/// Names the class, and sorts its sheets again by that code: those that were in because they said the code before are another
/// class's now, those that say the new one are in. A lesson that came with sheets which are out goes with them, when none is
/// left. What the teacher took in or out by hand stays.
pub(super) fn rename(class: &mut Class, code: String) {
    let says = |class: &Class, member: &Member, code: &str| {
        let said = class.paper(member).map(|paper| paper.hand_in.sheet.class.trim().to_lowercase());
        said.is_some_and(|said| !said.is_empty() && said == code.trim().to_lowercase())
    };
    let before = std::mem::replace(&mut class.code, code);
    let keys: Vec<String> = class.now.members.iter().map(|member| member.key.clone()).collect();
    let mut back = Vec::new();
    for key in keys {
        let Some(member) = class.member(&key) else { continue };
        let is_ours = class.paper(member).is_some_and(|paper| is_class(class, &paper.hand_in));
        match member.aside {
            None if !is_ours && says(class, member, &before) => put(class, &key, Some(Aside::OtherClass)),
            Some(Aside::OtherClass) if is_ours => back.push(key),
            _ => {}
        }
    }
    let lessons = |keys: &[String]| -> Vec<Lesson> {
        let papers = keys.iter().filter_map(|key| class.paper(class.member(key)?));
        papers.map(|paper| paper.hand_in.lesson.clone()).collect()
    };
    let out = class.now.members.iter().filter(|member| member.aside == Some(Aside::OtherClass));
    let out: Vec<String> = out.map(|member| member.key.clone()).filter(|key| !back.contains(key)).collect();
    let is_theirs = class.lesson.as_ref().is_none_or(|lesson| lessons(&out).contains(lesson));
    if is_theirs
        && class.now.members.iter().all(|member| member.aside.is_some())
        && let Some(lesson) = most_common(lessons(&back))
    {
        class.lesson = Some(lesson);
    }
    for key in back {
        let aside = class.member(&key).and_then(|member| class.paper(member)).and_then(|paper| {
            let hand_in = &paper.hand_in;
            if Some(&hand_in.lesson.id) != class.lesson.as_ref().map(|lesson| &lesson.id) {
                return Some(Aside::OtherLesson);
            }
            let who = owner(hand_in, &hand_in.sheet.seat);
            held_by(class, &who).map(|other| Aside::Beside(other.key.clone()))
        });
        put(class, &key, aside);
    }
}

fn put(class: &mut Class, key: &str, aside: Option<Aside>) {
    if let Some(member) = class.now.members.iter_mut().find(|member| member.key == key) {
        member.aside = aside;
    }
}

fn take(class: &mut Class, thing: Thing) -> TakenRow {
    let row = |outcome, why: Option<Message>, member| {
        let why = why.into_iter().map(Into::into).collect();
        TakenRow { dropped: thing.dropped, name: thing.name.clone(), outcome, why, member }
    };
    let opened = match thing.found {
        Ok(opened) => opened,
        Err(Refused::NotOurs(why)) => return row(Outcome::NotOurs, Some(why), None),
        Err(Refused::Broken(why)) => return row(Outcome::NeedsALook, Some(why), None),
        Err(Refused::Newer { version, .. }) => {
            let version = usize::try_from(version).unwrap_or(usize::MAX);
            let why = Message::new("class-why-newer").count("version", version);
            return row(Outcome::NeedsALook, Some(why), None);
        }
    };
    let hand_in = &opened.hand_in;
    let id = hand_in.id();
    if let Some(member) = class.now.members.iter().find(|m| m.paper == id || m.older.contains(&id)) {
        let why = if member.paper == id { "class-row-same" } else { "class-row-older" };
        let key = Some(member.key.clone());
        return row(Outcome::SameAgain, Some(Message::new(why)), key);
    }
    if class.papers.len() >= MOST_PAPERS {
        return row(Outcome::NotOurs, Some(Message::new("class-why-too-many")), None);
    }
    let paper = Paper { hand_in: hand_in.clone(), form: opened.form, check: opened.check };
    let lesson_id = class.lesson.as_ref().map(|lesson| lesson.id.clone()).unwrap_or_default();
    if !is_class(class, hand_in) {
        let why = Message::new("class-row-other-class").text("code", hand_in.sheet.class.trim());
        return row(Outcome::NotOurs, Some(why), Some(add(class, id, paper, Some(Aside::OtherClass))));
    }
    if hand_in.lesson.id != lesson_id {
        let why = Message::new("class-row-other-lesson").text("lesson", named(&hand_in.lesson));
        return row(Outcome::NotOurs, Some(why), Some(add(class, id, paper, Some(Aside::OtherLesson))));
    }
    let who = owner(hand_in, &hand_in.sheet.seat);
    let held =
        held_by(class, &who).and_then(|member| Some((member.key.clone(), class.paper(member)?.clone())));
    let Some((key, old)) = held else {
        let key = add(class, id, paper, None);
        return row(Outcome::New, None, Some(key));
    };
    let (new_sheet, old_sheet) = (&hand_in.sheet, &old.hand_in.sheet);
    let same_cast = hand_in.cast_id() == old.hand_in.cast_id();
    if same_cast && is_same_work(new_sheet, old_sheet) {
        set_aside_copy(class, &key, id, paper);
        return row(Outcome::SameAgain, Some(Message::new("class-row-same-work")), Some(key));
    }
    match (holds_all(new_sheet, old_sheet), holds_all(old_sheet, new_sheet)) {
        (true, false) => {
            replace(class, &key, id, paper);
            row(Outcome::NewerThan, Some(Message::new("class-row-newer")), Some(key))
        }
        (false, true) => {
            set_aside_copy(class, &key, id, paper);
            row(Outcome::SameAgain, Some(Message::new("class-row-older")), Some(key))
        }
        _ => {
            let beside = add(class, id, paper, Some(Aside::Beside(key)));
            row(Outcome::NeedsALook, Some(Message::new("class-row-beside")), Some(beside))
        }
    }
}

/// Adds a member; gives its key.
fn add(class: &mut Class, id: String, paper: Paper, aside: Option<Aside>) -> String {
    let is_taken = |key: &str| class.now.members.iter().any(|member| member.key == key);
    let short = id.get(..6).unwrap_or(&id).to_owned();
    let key = if is_taken(&short) { id.clone() } else { short };
    class.papers.insert(id.clone(), paper);
    class.now.members.push(Member {
        key: key.clone(),
        paper: id,
        older: Vec::new(),
        aside,
        repair: Repair::default(),
        seen: Vec::new(),
        late: false,
        practice: false,
        marks: std::collections::BTreeMap::new(),
    });
    key
}

/// Keeps a copy that does not count.
fn set_aside_copy(class: &mut Class, key: &str, id: String, paper: Paper) {
    class.papers.insert(id.clone(), paper);
    if let Some(member) = class.now.members.iter_mut().find(|member| member.key == key) {
        member.older.push(id);
    }
}

/// Puts a newer copy in place of the one that counts.
fn replace(class: &mut Class, key: &str, id: String, paper: Paper) {
    class.papers.insert(id.clone(), paper);
    if let Some(member) = class.now.members.iter_mut().find(|member| member.key == key) {
        let old = std::mem::replace(&mut member.paper, id);
        member.older.push(old);
        member.seen.clear();
    }
}

/// Rows of new members that need a look, seen beside the whole class.
fn look_again(room: &Room, rows: &mut [TakenRow]) {
    let sights = Sights::of(room);
    for row in rows.iter_mut().filter(|row| matches!(row.outcome, Outcome::New | Outcome::NewerThan)) {
        let seat = row.member.as_deref().and_then(|key| room.seat_of(key));
        let looks = seat.map(|seat| sights.looks(room, seat)).unwrap_or_default();
        if !looks.is_empty() {
            row.outcome = Outcome::NeedsALook;
            let more = std::mem::take(&mut row.why);
            row.why = looks.into_iter().map(|look| look.said.into()).chain(more).collect();
        }
    }
}

impl Class {
    /// Keeps an earlier state for undo, if this one is another.
    pub(super) fn remember(&mut self, what: UndoWhat, before: &Self) {
        let is_named = self.code == before.code && self.lesson == before.lesson;
        if is_named && self.now == before.now {
            return;
        }
        let named = || Named { code: before.code.clone(), lesson: before.lesson.clone() };
        let was = before.now.clone();
        self.undo.push(Undone { what, was, named: (!is_named).then(named) });
        if self.undo.len() > MOST_UNDO {
            self.undo.remove(0);
        }
    }
}
