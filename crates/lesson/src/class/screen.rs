//! The Class screen laid out: table, list beside the wall, questions.

use super::action::ClassAction as A;
use super::answers::{answer_row, unasked};
use super::document::{Aside, Class, Member, UndoWhat};
use super::ideas::{self, AnAnswer, QuestionSum};
use super::looks::{LookAt, Sights, differences};
use super::points::{points, total};
use super::room::{AnswerState, Answered, Room, Seat};
use super::view::{
    AnswerCard, AsideRow, CastRow, ClassView, ClassWay, DifferRow, IdeaRow, LookRow, MiddleRow, QuestionRow,
    SheetRow,
};
use super::wall::{ClassLevel, Core, cores, middle, spans};
use crate::document::Lesson;
use crate::maker::question_name;
use crate::numbers::{WithNum, mark, rounded};
use crate::questions::idea_name;
use crate::view::{Num, Said};
use layercast_core::{Message, State};

/// How the class looks. `against`: content id of a cast that is set against the middle of the rest.
pub fn look(class: &Class, against: Option<&str>) -> ClassView {
    look_at(&Room::of(class), against)
}

/// "8 casts, 12 sheets".
fn title(casts: usize, sheets: usize) -> Message {
    if casts + sheets == 0 {
        return Message::new("class-title-empty");
    }
    Message::new("class-title").count("casts", casts).count("sheets", sheets)
}

/// [`look`] at a class that is computed.
pub fn look_at(room: &Room, against: Option<&str>) -> ClassView {
    let class = room.class;
    let cores = cores(room);
    let spans = spans(&cores);
    let sights = Sights::of(room);
    let sums = ideas::questions(room);
    let next = ideas::next(&sums);
    let counted = room.counted().count();
    let aside = class.now.members.iter().filter(|member| member.aside.is_some());
    ClassView {
        code: class.code.clone(),
        title: title(cores.len(), counted).into(),
        sentence: spans.said.into(),
        shared_m: spans.shared_m,
        talk: talk(room, &cores),
        casts: cores.iter().map(|core| cast_row(room, &sights, core)).collect(),
        middle: middle(room, &cores, against).iter().map(middle_row).collect(),
        sheets: room.in_order().into_iter().map(|seat| sheet_row(room, &sights, seat)).collect(),
        aside: aside.map(|member| aside_row(class, member)).collect(),
        next_question: next.as_ref().and_then(|next| next.0),
        next: next.map(|next| next.1.into()),
        questions: sums.into_iter().map(|sum| question_row(&room.lesson, sum)).collect(),
        guessed: room.seats.iter().any(|seat| seat.paper.hand_in.sheet.guessed().len() > 1),
        marked: room.seats.iter().any(|seat| seat.paper.hand_in.sheet.marks.thermocline.depth_m.is_some()),
        hidden: class.now.hidden,
        shuffled: class.now.shuffled.is_some(),
        ready_comments: READY_COMMENTS.map(|id| Message::new(id).into()).to_vec(),
        comments: class.now.comments.clone(),
        undo: class.undo.last().map(|undone| way(undo_label(undone.what), A::Undo)),
    }
}

/// Comments that come with the page.
const READY_COMMENTS: [&str; 6] = [
    "class-comment-unit",
    "class-comment-depths",
    "class-comment-range",
    "class-comment-why",
    "class-comment-rule",
    "class-comment-fits",
];

fn way(label: &'static str, action: A) -> ClassWay {
    ClassWay { label: Message::new(label).into(), action }
}

/// What undoing takes back.
fn undo_label(what: UndoWhat) -> &'static str {
    match what {
        UndoWhat::Import => "class-undo-import",
        UndoWhat::Repair => "class-undo-repair",
        UndoWhat::Mark => "class-undo-mark",
        UndoWhat::TakenOut => "class-undo-taken-out",
        UndoWhat::Code => "class-undo-code",
        UndoWhat::Order => "class-undo-order",
        UndoWhat::Other => "class-undo",
    }
}

pub(super) fn num(value: f64, decimals: u8) -> Num {
    Num { value: rounded(value, decimals), decimals }
}

/// Points: whole where they are, else to a hundredth.
pub(super) fn points_num(points: f64) -> Num {
    let is_whole = (points - points.round()).abs() < 0.005;
    num(points, if is_whole { 0 } else { 2 })
}

fn cast_row(room: &Room, sights: &Sights, core: &Core) -> CastRow {
    let state = core.of(room).map(|work| &work.analysis);
    let too_few = state.is_some_and(|analysis| analysis.state == State::TooFew);
    let fahrenheit = too_few && sights.seems_fahrenheit(room, core);
    let said = match (core.range, state) {
        (Some(range), _) => range.said(),
        (None, Some(analysis)) => Message::new(match analysis.state {
            State::Mixed => "class-cast-mixed",
            State::Unstable => "class-cast-unstable",
            State::TooFew if fahrenheit => "class-cast-fahrenheit",
            State::TooFew => "class-cast-too-few",
            _ if analysis.warm_layer_today.is_some() => "class-cast-today",
            _ => "class-cast-none",
        }),
        (None, None) => Message::new("class-cast-none"),
    };
    CastRow {
        name: core.name.clone(),
        cast_id: core.cast_id.clone(),
        sheets: core.members.len(),
        value: core.number,
        said: said.into(),
        other_station: core.other_station,
        fahrenheit,
        too_few,
        repaired: core.repaired,
    }
}

fn middle_row(level: &ClassLevel) -> MiddleRow {
    MiddleRow {
        depth: mark(rounded(level.depth_m, 2)),
        low: num(level.low_c, 1),
        middle: num(level.middle_c, 1),
        high: num(level.high_c, 1),
        casts: level.count,
    }
}

/// What to talk about, at most three lines.
fn talk(room: &Room, cores: &[Core]) -> Vec<Said> {
    let mut lines = Vec::new();
    for core in cores.iter().filter(|core| core.other_station).take(1) {
        let last_m =
            core.of(room).and_then(|work| work.analysis.profile.last()).map_or(0.0, |level| level.depth_m);
        lines.push(
            Message::new("class-talk-station")
                .text("group", core.name.clone())
                .depth("depth", rounded(last_m, 1)),
        );
    }
    let here: Vec<&Core> =
        cores.iter().filter(|core| !core.other_station && core.found_m.is_some()).collect();
    let width = |core: &&&Core| core.found_m.map_or(0.0, |(_, top, bottom)| bottom - top);
    let most = |value: &dyn Fn(&&&Core) -> f64| here.iter().max_by(|a, b| value(a).total_cmp(&value(b)));
    let alone = |value: &dyn Fn(&&&Core) -> f64, core: &&Core| {
        here.iter().all(|other| other.cast_id == core.cast_id || value(&other) < value(&core) - 0.05)
    };
    if here.len() < 2 {
        return lines.into_iter().map(Into::into).collect();
    }
    if let Some(core) = most(&width).filter(|core| alone(&width, core)) {
        let s_c = |core: &Core| core.of(room).and_then(|work| work.analysis.pairs.s_c).unwrap_or(0.0);
        let noisy = here.iter().all(|other| other.cast_id == core.cast_id || s_c(other) < s_c(core));
        let id = if noisy { "class-talk-widest-apart" } else { "class-talk-widest" };
        lines.push(Message::new(id).text("group", core.name.clone()));
    }
    let value = |core: &&&Core| core.found_m.map_or(0.0, |found| found.0);
    if let Some(core) = most(&value).filter(|core| alone(&value, core)) {
        lines.push(Message::new("class-talk-deepest").text("group", core.name.clone()));
    }
    lines.into_iter().map(Into::into).collect()
}

fn sheet_row(room: &Room, sights: &Sights, seat: &Seat) -> SheetRow {
    let all = points(room, seat);
    let (sum, max) = total(&all);
    use AnswerState as S;
    let right =
        |answered: &&Answered| matches!(answered.state, S::RightFirst | S::RightLater | S::CannotTell);
    SheetRow {
        key: seat.member.key.clone(),
        group: seat.group.clone(),
        seat: seat.seat.clone(),
        receipt: seat.paper.hand_in.receipt(),
        cast_id: seat.cast_id.clone(),
        looks: looks(room, sights, seat),
        repairs: repairs(seat.member),
        can: can(seat.member),
        late: seat.member.late,
        practice: seat.member.practice,
        points: points_num(sum),
        max: num(max, 0),
        right: seat.answers.iter().filter(right).count(),
        asked: seat.answers.len(),
        to_read: all.iter().filter(|points| points.known().is_none()).count(),
        older: seat.member.older.len(),
        unasked: unasked(&room.lesson, seat).map(Into::into),
        answers: all.iter().map(|points| answer_row(&room.lesson, seat, points)).collect(),
    }
}

fn looks(room: &Room, sights: &Sights, seat: &Seat) -> Vec<LookRow> {
    let member = || seat.member.key.clone();
    let row = |look: super::looks::Look| {
        let seen = way("class-way-seen", A::Seen { member: member(), at: look.at, on: true });
        let (ways, differ) = match look.at {
            LookAt::NoSeat | LookAt::Edited | LookAt::OtherVersion | LookAt::GroupTwice => {
                (vec![seen], Vec::new())
            }
            LookAt::Feet => {
                (vec![way("class-way-feet", A::ReadFeet { member: member(), on: true }), seen], Vec::new())
            }
            LookAt::Fahrenheit => (
                vec![way("class-way-fahrenheit", A::ReadFahrenheit { member: member(), on: true }), seen],
                Vec::new(),
            ),
            LookAt::OtherStation => (
                vec![way("class-way-station", A::OtherStation { member: member(), on: true }), seen],
                Vec::new(),
            ),
            LookAt::Example => (
                vec![way("class-way-practice", A::Practice { member: member(), on: true }), seen],
                Vec::new(),
            ),
            LookAt::NearCast => near(room, sights, seat),
        };
        LookRow { at: look.at, said: look.said.into(), ways, differ }
    };
    sights.looks(room, seat).into_iter().map(row).collect()
}

/// Nearly equal casts: this one for both, the other one for both, both; and where they differ.
fn near(room: &Room, sights: &Sights, seat: &Seat) -> (Vec<ClassWay>, Vec<DifferRow>) {
    let Some(other) = sights.near_cast(room, seat) else { return (Vec::new(), Vec::new()) };
    let (cast, there) = (seat.cast_id.clone(), other.cast_id.clone());
    let ways = vec![
        way("class-way-this-cast", A::SameCast { cast: there.clone(), other: Some(cast.clone()) }),
        way("class-way-that-cast", A::SameCast { cast: cast.clone(), other: Some(there.clone()) }),
        way("class-way-both-casts", A::BothCasts { cast, other: there }),
    ];
    let row = |differ: super::looks::Difference| DifferRow {
        depth: mark(differ.depth_m),
        leg: differ.leg,
        here: differ.one,
        there: differ.other,
    };
    let differ =
        differences(&seat.paper.hand_in.cast, &other.paper.hand_in.cast).into_iter().map(row).collect();
    (ways, differ)
}

/// Repairs in force; pressing one takes it back.
fn repairs(member: &Member) -> Vec<ClassWay> {
    let (key, repair) = (|| member.key.clone(), &member.repair);
    let mut ways = Vec::new();
    let mut add = |label: Message, action: A| ways.push(ClassWay { label: label.into(), action });
    if let Some(group) = &repair.group {
        let label = Message::new("class-repaired-group").text("group", group.clone());
        add(label, A::SetGroup { member: key(), text: String::new() });
    }
    if let Some(seat) = &repair.seat {
        let label = Message::new("class-repaired-seat").text("seat", seat.clone());
        add(label, A::SetSeat { member: key(), text: String::new() });
    }
    if repair.feet {
        add(Message::new("class-repaired-feet"), A::ReadFeet { member: key(), on: false });
    }
    if repair.fahrenheit {
        add(Message::new("class-repaired-fahrenheit"), A::ReadFahrenheit { member: key(), on: false });
    }
    if !repair.above_water.is_empty() {
        let label = Message::new("class-repaired-zero").text("height", repair.above_water.clone());
        add(label, A::SetAboveWater { member: key(), text: String::new() });
    }
    if repair.other_station {
        add(Message::new("class-repaired-station"), A::OtherStation { member: key(), on: false });
    }
    ways
}

/// Switches that are off.
fn can(member: &Member) -> Vec<ClassWay> {
    let (key, repair) = (|| member.key.clone(), &member.repair);
    let switches = [
        (!repair.feet, "class-way-feet", A::ReadFeet { member: key(), on: true }),
        (!repair.fahrenheit, "class-way-fahrenheit", A::ReadFahrenheit { member: key(), on: true }),
        (!repair.other_station, "class-way-station", A::OtherStation { member: key(), on: true }),
        (true, "class-way-take-out", A::TakeIn { member: key(), on: false }),
    ];
    switches.into_iter().filter(|(off, ..)| *off).map(|(_, label, action)| way(label, action)).collect()
}

fn aside_row(class: &Class, member: &Member) -> AsideRow {
    let key = || member.key.clone();
    let (group, seat, receipt) = class.paper(member).map_or_else(Default::default, |paper| {
        let hand_in = &paper.hand_in;
        (member.repair.group(hand_in).to_owned(), member.repair.seat(hand_in).to_owned(), hand_in.receipt())
    });
    let take_in = || way("class-way-take-in", A::TakeIn { member: key(), on: true });
    let (id, ways) = match &member.aside {
        Some(Aside::OtherClass) => ("class-aside-class", vec![take_in()]),
        Some(Aside::OtherLesson) => ("class-aside-lesson", vec![take_in()]),
        Some(Aside::Beside(_)) => (
            "class-aside-beside",
            vec![
                way("class-way-keep-this", A::KeepThis { member: key() }),
                way("class-way-keep-both", A::KeepBoth { member: key() }),
                way("class-way-take-out", A::TakeIn { member: key(), on: false }),
            ],
        ),
        Some(Aside::TakenOut) | None => ("class-aside-out", vec![take_in()]),
    };
    AsideRow { key: key(), group, seat, receipt, said: Message::new(id).into(), ways }
}

fn question_row(lesson: &Lesson, sum: QuestionSum) -> QuestionRow {
    let card = |answer: AnAnswer| AnswerCard {
        given: answer.given.into_iter().map(Into::into).collect(),
        reason: answer.reason,
    };
    let idea = sum.ideas.into_iter().next().map(|idea| {
        let count =
            Message::new("class-idea-count").count("students", idea.students).count("groups", idea.groups);
        let name = idea_name(idea.key).unwrap_or_else(|| idea.said.clone());
        IdeaRow { count: count.into(), name: name.into(), said: idea.said.into() }
    });
    QuestionRow {
        kind: sum.kind,
        name: question_name(lesson, sum.kind).into(),
        ask: sum.ask.into(),
        varies: sum.varies,
        seats: sum.seats,
        idea,
        pair: sum.pair.map(|(right, wrong)| (card(right), card(wrong))),
    }
}
