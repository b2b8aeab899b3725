//! One thing a teacher did, and the class after it.

use super::action::ClassAction;
use super::document::{Aside, Class, Grade, Member, UndoWhat};
use super::import::rename;
use layercast_exchange::number::quantity;

/// Longest code, comment and reason that is kept, characters.
const MOST_CODE: usize = 12;
const MOST_WORDS: usize = 4_000;
/// Most comments kept to use again.
const MOST_COMMENTS: usize = 100;
/// Levels of the rubric: 0 to 3.
pub(super) const MOST_LEVEL: u8 = 3;
/// Most points a teacher may give a question.
const MOST_POINTS: f64 = 1_000.0;

/// The class after an action.
///
/// Total: an action that makes no sense changes nothing. The hand-ins stay as they came. All but undoing itself can
/// be undone, the last twenty steps.
pub fn act(class: &Class, action: &ClassAction) -> Class {
    let mut next = class.clone();
    if *action == ClassAction::Undo {
        if let Some(undone) = next.undo.pop() {
            next.now = undone.was;
            if let Some(named) = undone.named {
                (next.code, next.lesson) = (named.code, named.lesson);
            }
        }
        return next;
    }
    let what = change(&mut next, action);
    next.remember(what, class);
    next
}

fn change(class: &mut Class, action: &ClassAction) -> UndoWhat {
    use ClassAction as A;
    match action {
        A::SetCode { text } => {
            rename(class, kept(text, MOST_CODE));
            return UndoWhat::Code;
        }
        A::TakeIn { member, on } => {
            with(class, member, |member| {
                member.aside = if *on { None } else { Some(Aside::TakenOut) };
            });
            return if *on { UndoWhat::Other } else { UndoWhat::TakenOut };
        }
        A::KeepThis { member } => keep_this(class, member),
        A::KeepBoth { member } => with(class, member, |member| {
            if matches!(member.aside, Some(Aside::Beside(_))) {
                member.aside = None;
            }
        }),
        A::SetGroup { member, text } => return repair(class, member, |r| r.group = filled(text)),
        A::SetSeat { member, text } => return repair(class, member, |r| r.seat = filled(text)),
        A::ReadFeet { member, on } => return repair(class, member, |r| r.feet = *on),
        A::ReadFahrenheit { member, on } => return repair(class, member, |r| r.fahrenheit = *on),
        A::SetAboveWater { member, text } => {
            return repair(class, member, |r| r.above_water = kept(text, MOST_CODE));
        }
        A::OtherStation { member, on } => return repair(class, member, |r| r.other_station = *on),
        A::Seen { member, at, on } => with(class, member, |member| {
            member.seen.retain(|seen| seen != at);
            if *on {
                member.seen.push(*at);
                member.seen.sort_unstable();
            }
        }),
        A::Late { member, on } => with(class, member, |member| member.late = *on),
        A::Practice { member, on } => with(class, member, |member| member.practice = *on),
        A::SameCast { cast, other } => same_cast(class, cast, other.as_deref()),
        A::BothCasts { cast, other } => {
            let pair = (cast.clone(), other.clone());
            if cast != other && !class.now.both_casts.contains(&pair) && class.now.both_casts.len() < 1_000 {
                class.now.both_casts.push(pair);
            }
        }
        A::SetLevel { member, question, level } => {
            return mark(class, member, question, |mark| mark.level = level.map(|l| l.min(MOST_LEVEL)));
        }
        A::SetPoints { member, question, text } => {
            let points = quantity(text).filter(|q| q.to.is_none() && q.unit.is_none()).map(|q| q.value);
            let points = points.filter(|points| (0.0..=MOST_POINTS).contains(points));
            if points.is_some() || text.trim().is_empty() {
                return mark(class, member, question, |mark| mark.points = points);
            }
        }
        A::SetWhy { member, question, text } => {
            return mark(class, member, question, |mark| mark.reason = kept(text, MOST_WORDS));
        }
        A::SetComment { member, question, text } => {
            return mark(class, member, question, |mark| mark.comment = kept(text, MOST_WORDS));
        }
        A::KeepComment { text } => {
            let text = kept(text.trim(), MOST_WORDS);
            let comments = &mut class.now.comments;
            if !text.is_empty() && !comments.contains(&text) && comments.len() < MOST_COMMENTS {
                comments.push(text);
            }
        }
        A::DropComment { text } => class.now.comments.retain(|kept| kept != text),
        A::HideNames { on } => {
            class.now.hidden = *on;
            return UndoWhat::Order;
        }
        A::Shuffle { seed } => {
            class.now.shuffled = *seed;
            return UndoWhat::Order;
        }
        A::Undo => {}
    }
    UndoWhat::Other
}

fn with(class: &mut Class, key: &str, change: impl FnOnce(&mut Member)) {
    if let Some(member) = class.now.members.iter_mut().find(|member| member.key == key) {
        change(member);
    }
}

fn repair(class: &mut Class, key: &str, change: impl FnOnce(&mut super::repairs::Repair)) -> UndoWhat {
    with(class, key, |member| change(&mut member.repair));
    UndoWhat::Repair
}

fn mark(class: &mut Class, key: &str, question: &str, change: impl FnOnce(&mut Grade)) -> UndoWhat {
    with(class, key, |member| {
        if member.marks.len() < 2_000 || member.marks.contains_key(question) {
            let mark = member.marks.entry(question.to_owned()).or_default();
            change(mark);
            if *mark == Grade::default() {
                member.marks.remove(question);
            }
        }
    });
    UndoWhat::Mark
}

/// The sheet that stands beside another one takes its place.
fn keep_this(class: &mut Class, key: &str) {
    let Some(Aside::Beside(other)) = class.member(key).and_then(|member| member.aside.clone()) else {
        return;
    };
    let Some(paper) = class.member(key).map(|member| member.paper.clone()) else { return };
    let mut moved = false;
    with(class, &other, |member| {
        let old = std::mem::replace(&mut member.paper, paper);
        member.older.push(old);
        member.seen.clear();
        moved = true;
    });
    if moved {
        class.now.members.retain(|member| member.key != key);
    }
}

fn same_cast(class: &mut Class, cast: &str, other: Option<&str>) {
    class.now.same_cast.remove(cast);
    // One step only: a cast that others count as is counted as none, so that there is no circle.
    let is_free = |other: &str| {
        other != cast
            && !class.now.same_cast.contains_key(other)
            && !class.now.same_cast.values().any(|target| target == cast)
    };
    if let Some(other) = other.filter(|other| is_free(other)) {
        class.now.same_cast.insert(cast.to_owned(), other.to_owned());
    }
}

fn filled(text: &str) -> Option<String> {
    let text = kept(text, MOST_CODE);
    (!text.is_empty()).then_some(text)
}

fn kept(text: &str, most: usize) -> String {
    text.chars().take(most).collect()
}
