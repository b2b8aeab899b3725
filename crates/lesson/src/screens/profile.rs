//! Profile: the student's marks, the check, and what the rules found.

use super::{MOST_ROWS, Sight, companions, corrections, doors, facts, found, rules, way};
use crate::action::Action;
use crate::by_hand::waits;
use crate::document::{MarkDoc, MarkDocs, MarkName, Screen};
use crate::marks::{self, Problem, bounds_m, judge, reach};
use crate::numbers::{WithNum, is_whole, mark, reading_decimals, rounded};
use crate::scene::early;
use crate::view::{EarlyView, MarkView, Num, ProfileView, ReadingRow, Said, Way};
use layercast_core::{Message, State};
use std::collections::BTreeMap;

/// Profile.
pub fn view(sight: &Sight) -> ProfileView {
    let sheet = sight.context.sheet;
    let checked = sheet.first_marks.is_some();
    let can_mark = sight.context.analysis.profile.len() >= 2;
    let mut check = way("profile-check", Action::CheckMarks { early: false });
    check.main = true;
    if !can_mark || !sheet.marks.all_settled() {
        check.waits = Some(Message::new("profile-check-waits").into());
    }
    ProfileView {
        not_yet: not_yet(sight),
        marking: !checked || sheet.marking_again,
        checked,
        marks: marks::ALL.iter().map(|mark| mark_view(sight, *mark)).collect(),
        mark_words: [Message::new("profile-word-thermocline"), Message::new("profile-word-give")]
            .map(Into::into)
            .to_vec(),
        check,
        no_layers: way("profile-no-layers", Action::NoLayers),
        partner: partner(sight),
        early: early_view(sight),
        found: if checked { found::view(sight) } else { None },
        facts: facts::facts(sight),
        legs_note: facts::legs_note(sight),
        rules: if checked { rules::groups(sight) } else { Vec::new() },
        doors: if checked { doors::doors(sight) } else { None },
        table: table(sight),
        table_notes: table_notes(sight),
        more_rows: more_rows(sight),
    }
}

/// How many rows are not listed.
pub fn more_rows(sight: &Sight) -> Option<Said> {
    let more = sight.context.analysis.profile.len().saturating_sub(MOST_ROWS);
    (more > 0).then(|| Message::new("log-rows-not-listed").count("count", more).into())
}

pub fn not_yet(sight: &Sight) -> Option<Said> {
    match sight.context.analysis.profile.len() {
        0 => Some(Message::new("profile-not-yet").into()),
        1 => Some(Message::new("profile-not-yet-one").into()),
        _ if waits(sight.notebook, sight.context.analysis) => Some(Message::new("log-by-hand-first").into()),
        _ => None,
    }
}

/// What partners who mark in turn see of each other's marks: nothing before both have placed theirs.
fn partner(sight: &Sight) -> (Vec<Said>, Option<Way>) {
    let sheet = sight.context.sheet;
    let Some(first) = &sheet.partner else {
        return (Vec::new(), sheet.can_hand_over().then(|| way("profile-hand-over", Action::HandOver)));
    };
    if sheet.first_marks.is_none() && !sheet.marks.all_settled() {
        let untouched = sheet.marks == MarkDocs::default();
        let back = untouched.then(|| way("profile-hand-back", Action::HandBack));
        return (vec![Message::new("profile-partner-covered").into()], back);
    }
    let both = |mark: &MarkName| {
        Message::new("profile-partner-mark")
            .message("mark", mark_name(*mark))
            .message("first", stands(first.get(*mark)))
            .message("second", stands(sheet.marks.get(*mark)))
            .into()
    };
    (marks::ALL.iter().map(both).collect(), None)
}

/// "2.5 m", or "nowhere".
pub fn stands(doc: &MarkDoc) -> Message {
    match doc.depth_m {
        Some(depth_m) if !doc.refused => Message::new("profile-partner-at").num("depth", mark(depth_m)),
        _ => Message::new("profile-partner-none"),
    }
}

/// A mark's own name.
pub fn mark_name(mark: MarkName) -> Message {
    match mark {
        MarkName::Mixed => Message::new("profile-mark-mixed"),
        MarkName::Thermocline => Message::new("profile-mark-thermocline"),
        MarkName::Deep => Message::new("profile-mark-deep"),
    }
}

fn mark_view(sight: &Sight, mark: MarkName) -> MarkView {
    let docs = &sight.context.sheet.marks;
    let doc = docs.get(mark);
    let last_m = reach(sight.context.analysis).map(|reach| reach.last_m);
    let (least_m, most_m) = bounds_m(docs, mark, last_m.unwrap_or(0.0));
    let judged =
        last_m.filter(|_| doc.depth_m.is_none() && !doc.refused && !doc.depth_text.trim().is_empty());
    let depth_problem = judged.and_then(|last_m| judge(docs, mark, last_m).err()).map(problem);
    let give_problem = (doc.give_m.is_none() && !doc.refused && !doc.give_text.trim().is_empty())
        .then(|| Message::new("profile-problem-give").number("example", 0.5, 1));
    let spoken = match doc.depth_m {
        Some(depth_m) => Message::new("profile-metres-deep").depth("depth", depth_m),
        None => Message::new("profile-not-placed"),
    };
    MarkView {
        mark,
        name: mark_name(mark).into(),
        depth_text: doc.depth_text.clone(),
        give_text: doc.give_text.clone(),
        depth_m: doc.depth_m,
        least_m,
        most_m,
        spoken: spoken.into(),
        refused: doc.refused,
        problem: depth_problem.or(give_problem).map(Into::into),
    }
}

fn problem(problem: Problem) -> Message {
    match problem {
        Problem::Unreadable => Message::new("profile-problem-unreadable").number("example", 4.5, 1),
        Problem::AboveSurface => Message::new("profile-problem-above-surface"),
        Problem::TooDeep(last_m) => Message::new("profile-problem-too-deep").depth("last", last_m),
        Problem::AboveNeighbour(mark, depth_m) => Message::new("profile-problem-above-neighbour")
            .message("mark", mark_name(mark))
            .depth("depth", depth_m),
        Problem::BelowNeighbour(mark, depth_m) => Message::new("profile-problem-below-neighbour")
            .message("mark", mark_name(mark))
            .depth("depth", depth_m),
    }
}

/// What an early check would show; `None` when it would show nothing that a question asks.
fn early_view(sight: &Sight) -> Option<EarlyView> {
    let shown = early(&sight.context, sight.paper);
    let first = shown.first()?.0;
    let numbers = number_list(&shown.iter().map(|(number, _)| *number).collect::<Vec<_>>())?;
    let label = Message::new("profile-early-answer-first").message("numbers", numbers.clone());
    let answer_first = Way {
        label: label.into(),
        action: Action::Go { screen: Screen::Questions, question: Some(first - 1) },
        main: false,
        waits: None,
    };
    Some(EarlyView {
        said: Message::new("profile-early").count("count", shown.len()).message("numbers", numbers).into(),
        more: Message::new("profile-early-more").count("count", shown.len()).into(),
        ways: vec![answer_first, way("profile-early-check", Action::CheckMarks { early: true })],
    })
}

/// "4", "4 and 5", "3, 4 and 5".
fn number_list(numbers: &[usize]) -> Option<Message> {
    let (first, rest) = numbers.split_first()?;
    Some(match rest {
        [] => Message::new("profile-list-one").count("first", *first),
        [last] => Message::new("profile-list-last").count("first", *first).count("last", *last),
        rest => Message::new("profile-list-more").count("first", *first).message("rest", number_list(rest)?),
    })
}

/// Readings as a table; °C per metre only where it is uncovered.
pub fn table(sight: &Sight) -> Vec<ReadingRow> {
    let analysis = sight.context.analysis;
    let decimals = reading_decimals(sight.notebook.cast.digit_c);
    let gains = analysis.state == State::Inverse;
    let levels = analysis.profile.iter().take(MOST_ROWS).enumerate();
    let marks_m = marks_as_read(sight);
    let oxygen = companions::by_depth(sight);
    let oxygen_decimals = companions::decimals(sight);
    let row = |(i, level): (usize, &layercast_core::Level)| {
        let oxygen = oxygen.get(&companions::key(level.depth_m));
        let open = sight.shown.steps || sight.shown.some_steps.binary_search(&i).is_ok();
        let step = analysis.steps.get(i).filter(|_| open);
        let per_metre = step.map(|step| if gains { -step.cooling_c_per_m } else { step.cooling_c_per_m });
        ReadingRow {
            depth: mark(rounded(level.depth_m, 2)),
            mark: marks_m.get(&companions::key(level.depth_m)).map(|mark_m| mark(*mark_m)),
            whole: is_whole(level.depth_m),
            down: level.down_c.map(|value| Num { value, decimals }),
            up: level.up_c.map(|value| Num { value, decimals }),
            mean: Some(Num { value: level.temp_c, decimals: 2 }),
            per_metre: per_metre.map(|value| Num { value: rounded(value, 1), decimals: 1 }),
            oxygen: oxygen.map(|oxygen| Num {
                value: rounded(oxygen.mg_l, oxygen_decimals),
                decimals: oxygen_decimals,
            }),
            per_cent: oxygen
                .and_then(|oxygen| oxygen.per_cent)
                .map(|value| Num { value: rounded(value, 0), decimals: 0 }),
        }
    };
    levels.map(row).collect()
}

/// The marks as read, by corrected depth in millionths of a metre; only those that became another depth.
fn marks_as_read(sight: &Sight) -> BTreeMap<i64, f64> {
    if sight.notebook.cast.corrections.is_empty() {
        return BTreeMap::new();
    }
    let readings = sight.prepared.raw.readings.iter().zip(&sight.prepared.cast.readings);
    let moved = readings.filter(|(raw, corrected)| (raw.depth_m - corrected.depth_m).abs() > 1e-9);
    moved.map(|(raw, corrected)| (companions::key(corrected.depth_m), raw.depth_m)).collect()
}

/// Corrections in force, the Secchi depth, what per cent of oxygen are worked out for.
pub fn table_notes(sight: &Sight) -> Vec<Said> {
    let companions = companions::secchi(sight).into_iter().chain(companions::oxygen_at(sight));
    corrections::in_force(sight).into_iter().chain(companions.map(Into::into)).collect()
}
