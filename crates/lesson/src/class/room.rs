//! Everything of a class computed again: each cast once, each sheet by the teacher's lesson.

use super::document::{Class, Grade, Member, Paper};
use super::wall::natural;
use crate::document::{Lesson, Sheet};
use crate::prepared::oxygen;
use crate::questions::{self, Context, Judgement, Memo, Record, Right, Verdict};
use layercast_core::order::sort_by;
use layercast_core::{Analysis, Cast, Message, analyse};
use layercast_exchange::document::{CastDoc, content_id, corrected};

/// A cast and its analysis.
#[derive(Clone, Debug)]
pub struct Work {
    /// The document it is of, as it is read here.
    pub doc: CastDoc,
    /// Corrected.
    pub cast: Cast,
    /// By the teacher's method.
    pub analysis: Analysis,
    /// Oxygen at each depth where it was read: metres, mg/L.
    pub oxygen_mg_l: Vec<(f64, f64)>,
    /// What questions have worked out of it so far.
    memo: Memo,
}

/// How a question stands on a sheet, as a class counts it.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum AnswerState {
    /// Right at the first try.
    RightFirst,
    /// Right after a miss.
    RightLater,
    /// Not right.
    NotYet,
    /// Never tried.
    Blank,
    /// "I can't tell", and nobody could.
    CannotTell,
    /// Words, which only a person can judge, and which nobody has marked yet.
    Written,
    /// Words that the teacher has marked.
    Marked,
}

/// One question on one sheet.
#[derive(Clone, Debug, PartialEq)]
pub struct Answered {
    /// The first answer.
    pub record: Record,
    /// As a class counts it.
    pub state: AnswerState,
    /// Hints opened.
    pub hints: u8,
    /// "How I know", or the text of an answer in words.
    pub reason: String,
}

impl Answered {
    /// Part of it, or all, is words that a level is given for.
    pub fn has_words(&self) -> bool {
        self.record.judgements.iter().any(|judged| judged.verdict == Verdict::Kept)
    }

    /// What was answered last, part by part.
    pub fn given(&self) -> Vec<Message> {
        let all = &self.record.judgements;
        let is_last =
            |at: &usize, judged: &Judgement| !all.iter().skip(at + 1).any(|later| later.part == judged.part);
        let last = all.iter().enumerate().filter(|(at, judged)| is_last(at, judged));
        last.flat_map(|(_, judged)| judged.given.iter().cloned()).collect()
    }

    /// Ideas that were named, each once, in order.
    pub fn ideas(&self) -> Vec<&'static str> {
        let mut ideas: Vec<&'static str> = Vec::new();
        for idea in self.record.judgements.iter().filter_map(|judged| judged.idea) {
            if !ideas.contains(&idea) {
                ideas.push(idea);
            }
        }
        ideas
    }

    /// The judgement that named an idea.
    pub fn with_idea(&self, idea: &str) -> Option<&Judgement> {
        self.record.judgements.iter().find(|judged| judged.idea == Some(idea))
    }
}

/// One sheet that counts, or is practice.
#[derive(Clone, Debug)]
pub struct Seat<'a> {
    /// What is decided of it.
    pub member: &'a Member,
    /// Its hand-in.
    pub paper: &'a Paper,
    /// Group code, repaired.
    pub group: String,
    /// Seat code, repaired; may be empty.
    pub seat: String,
    /// Content id of its readings as handed in.
    pub cast_id: String,
    /// Content id of the cast it is counted with.
    pub counted_as: String,
    /// Its cast as it was held: answers are judged on it. Index into [`Room::works`].
    pub held: usize,
    /// Its cast as repaired: the wall shows it. Index into [`Room::works`].
    pub drawn: usize,
    /// The questions asked of it, in order.
    pub answers: Vec<Answered>,
}

/// A class, computed.
#[derive(Clone, Debug)]
pub struct Room<'a> {
    /// The class.
    pub class: &'a Class,
    /// The lesson that counts.
    pub lesson: Lesson,
    /// Casts, each analysed once.
    pub works: Vec<Work>,
    /// Members that count, practice included, in the order they came.
    pub seats: Vec<Seat<'a>>,
}

impl<'a> Room<'a> {
    /// Computes everything.
    ///
    /// Answers are judged on the water as the seat held it, read in the units it was read in: whoever took feet for metres
    /// answered about those numbers. The wall, the spans and the comparison take the repaired casts.
    pub fn of(class: &'a Class) -> Self {
        let lesson = class.lesson.clone().unwrap_or_default();
        let mut room = Self { class, lesson, works: Vec::new(), seats: Vec::new() };
        for member in class.now.members.iter().filter(|member| member.aside.is_none()) {
            if let Some(paper) = class.paper(member) {
                let seat = room.seat(member, paper);
                room.seats.push(seat);
            }
        }
        room
    }

    /// Computes one member alone; no seat when it does not count or is not there.
    pub fn of_one(class: &'a Class, key: &str) -> Self {
        let lesson = class.lesson.clone().unwrap_or_default();
        let mut room = Self { class, lesson, works: Vec::new(), seats: Vec::new() };
        let member = class.member(key).filter(|member| member.aside.is_none());
        if let Some((member, paper)) = member.and_then(|member| Some((member, class.paper(member)?))) {
            let seat = room.seat(member, paper);
            room.seats.push(seat);
        }
        room
    }

    fn seat(&mut self, member: &'a Member, paper: &'a Paper) -> Seat<'a> {
        let hand_in = &paper.hand_in;
        let cast_id = content_id(&hand_in.cast);
        let held = self.work(&hand_in.cast);
        let drawn = if member.repair.changes_readings() {
            self.work(&member.repair.cast(&hand_in.cast))
        } else {
            held
        };
        let counted_as = self.class.now.same_cast.get(&cast_id).unwrap_or(&cast_id).clone();
        let answers = self.answers(held, member, paper, &cast_id);
        Seat {
            member,
            paper,
            group: member.repair.group(hand_in).to_owned(),
            seat: member.repair.seat(hand_in).to_owned(),
            cast_id,
            counted_as,
            held,
            drawn,
            answers,
        }
    }

    /// The cast of a document, analysed now or before.
    fn work(&mut self, doc: &CastDoc) -> usize {
        // What tells two documents apart for the science: readings, switches, corrections, the bed.
        let same = |work: &Work| {
            work.doc.entries == doc.entries
                && work.doc.corrections == doc.corrections
                && work.doc.bed_m == doc.bed_m
                && work.doc.digit_c.to_bits() == doc.digit_c.to_bits()
        };
        if let Some(at) = self.works.iter().position(same) {
            return at;
        }
        let cast = corrected(doc).cast;
        let analysis = analyse(&cast, &self.lesson.method.to_method());
        let oxygen_mg_l = oxygen(doc, &cast);
        self.works.push(Work { doc: doc.clone(), cast, analysis, oxygen_mg_l, memo: Memo::default() });
        self.works.len() - 1
    }

    fn answers(&self, held: usize, member: &Member, paper: &Paper, cast_id: &str) -> Vec<Answered> {
        let sheet = &paper.hand_in.sheet;
        let Some(context) = self.context(held, sheet, cast_id) else { return Vec::new() };
        let asked = asked(&context);
        let answered = |record: Record| {
            let answer = sheet.answers.get(&record.id);
            Answered {
                state: state(&record, member.marks.get(&record.id)),
                hints: answer.map_or(0, |answer| answer.hints.min(3)),
                reason: answer.map_or_else(String::new, |answer| answer.reason.trim().to_owned()),
                record,
            }
        };
        questions::records(&context, &asked).into_iter().map(answered).collect()
    }

    fn context<'r>(&'r self, held: usize, sheet: &'r Sheet, cast_id: &'r str) -> Option<Context<'r>> {
        let work = self.works.get(held)?;
        Some(Context {
            cast: &work.cast,
            analysis: &work.analysis,
            lesson: &self.lesson,
            sheet,
            cast_id,
            oxygen_mg_l: &work.oxygen_mg_l,
            memo: &work.memo,
        })
    }

    /// What is right in each question of a seat, part by part ([`questions::rights`]).
    pub fn rights(&self, seat: &Seat) -> Vec<(String, Vec<Option<Right>>)> {
        let context = self.context(seat.held, &seat.paper.hand_in.sheet, &seat.cast_id);
        context.map(|context| questions::rights(&context, &asked(&context))).unwrap_or_default()
    }

    /// The repaired cast of a seat.
    pub fn drawn(&self, seat: &Seat) -> Option<&Work> {
        self.works.get(seat.drawn)
    }

    /// Seats as a mark book has them: by group, then by seat, in the order people count.
    pub fn in_order(&self) -> Vec<&Seat<'a>> {
        let mut seats: Vec<(usize, &Seat)> = self.seats.iter().enumerate().collect();
        let place = |seat: &Seat| (natural(&seat.group), natural(&seat.seat));
        sort_by(&mut seats, |a, b| place(a.1).cmp(&place(b.1)).then(a.0.cmp(&b.0)));
        seats.into_iter().map(|(_, seat)| seat).collect()
    }

    /// Seats that are no practice.
    pub fn counted(&self) -> impl Iterator<Item = &Seat<'a>> {
        self.seats.iter().filter(|seat| !seat.member.practice)
    }

    /// A seat by the key of its member.
    pub fn seat_of(&self, key: &str) -> Option<&Seat<'a>> {
        self.seats.iter().find(|seat| seat.member.key == key)
    }
}

/// What is asked of a sheet. A lesson may name a kind twice; a sheet holds one answer to it.
fn asked(context: &Context) -> questions::Paper {
    let mut paper = questions::paper(context);
    let mut ids = std::collections::BTreeSet::new();
    paper.asked.retain(|asked| ids.insert(asked.id.clone()));
    paper
}

fn state(record: &Record, mark: Option<&Grade>) -> AnswerState {
    let is_words = |judged: &Judgement| judged.verdict == Verdict::Kept;
    let is_judged = |judged: &Judgement| judged.verdict.is_right() || judged.verdict.is_miss();
    if record.judgements.iter().any(is_words) && !record.judgements.iter().any(is_judged) {
        let is_marked = mark.is_some_and(|mark| mark.level.is_some() || mark.points.is_some());
        return if is_marked { AnswerState::Marked } else { AnswerState::Written };
    }
    let missed = record.judgements.iter().any(|judged| judged.verdict.is_miss());
    if record.right {
        let untold = record.judgements.iter().any(|judged| judged.verdict == Verdict::CannotTell);
        match (untold, missed) {
            (true, _) => AnswerState::CannotTell,
            (_, false) => AnswerState::RightFirst,
            (_, true) => AnswerState::RightLater,
        }
    } else if record.tries == 0 && !record.shown {
        AnswerState::Blank
    } else {
        AnswerState::NotYet
    }
}
