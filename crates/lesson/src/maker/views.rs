//! The views of a lesson that is being made.

use super::view::{LessonView, OpenView, OtherView, OwnView, PlanRow, RuleField, TakenView};
use super::{LessonAction, MOST_LEVELS, OpenPart, RuleName, name};
use crate::document::{FIRST_OF_A_TEACHER, FIRST_OF_A_WATER, Lack, Lesson, MOST_OWN, OwnQuestion};
use crate::questions::{all_kinds, needs_marks};
use crate::screens::another_said;
use crate::view::{Num, Said};
use layercast_core::Message;

/// Minutes that a question takes a group, with its reading and writing (common practice, no source).
const MINUTES_A_QUESTION: usize = 4;
/// Minutes for pages and notebooks, for the marks, for the report and what is handed in, for the wall (common practice, no
/// source).
const MINUTES_BEFORE: usize = 5;
const MINUTES_MARKS: usize = 6;
const MINUTES_REPORT: usize = 12;
const MINUTES_WALL: usize = 10;

/// Everything the page shows of a lesson.
pub fn look(lesson: &Lesson) -> LessonView {
    let points: usize = lesson.kinds.iter().map(|k| usize::from(lesson.points_of(*k))).sum();
    let count = lesson.kinds.len();
    let is_listed = |k: u8| k < FIRST_OF_A_WATER && !lesson.kinds.contains(&k);
    let others = all_kinds()
        .filter(|k| is_listed(*k))
        .filter_map(|kind| Some(OtherView { name: name(kind)?.into(), take: LessonAction::Take { kind } }));
    let plan = plan(lesson);
    LessonView {
        plan_sum: Message::new("lesson-plan-sum")
            .count("minutes", plan.iter().map(|row| row.minutes).sum())
            .into(),
        plan,
        title: lesson.title.clone(),
        note: lesson.note.clone(),
        run_note: lesson.run_note.clone(),
        sum: (Message::new("lesson-sum").count("count", count).count("points", points))
            .count("minutes", count * MINUTES_A_QUESTION)
            .into(),
        taken: (0..count).filter_map(|at| taken(lesson, at)).collect(),
        others: others.collect(),
        add_own: (lesson.own.len() < MOST_OWN).then_some(LessonAction::AddOwn),
        open: open(lesson),
        other: (another_said(lesson.other.as_deref()), lesson.other.is_some()),
        rules: rules(lesson),
        help: lesson.help,
        language: lesson.language.clone(),
        file_name: file_name(lesson),
    }
}

/// The period, part by part: as long as this lesson's own choice makes it.
fn plan(lesson: &Lesson) -> Vec<PlanRow> {
    let marks = lesson.kinds.iter().any(|kind| needs_marks(*kind));
    let rows = [
        ("lesson-plan-before", MINUTES_BEFORE),
        ("lesson-plan-marks", if marks { MINUTES_MARKS } else { 0 }),
        ("lesson-plan-questions", lesson.kinds.len() * MINUTES_A_QUESTION),
        ("lesson-plan-report", MINUTES_REPORT),
        ("lesson-plan-wall", MINUTES_WALL),
    ];
    let row = |(name, minutes): (&'static str, usize)| PlanRow { name: Message::new(name).into(), minutes };
    rows.into_iter().filter(|(_, minutes)| *minutes > 0).map(row).collect()
}

fn taken(lesson: &Lesson, at: usize) -> Option<TakenView> {
    let kind = *lesson.kinds.get(at)?;
    let own = kind.checked_sub(FIRST_OF_A_TEACHER).map(usize::from);
    let question = lesson.own_question(kind);
    let leave = match own.filter(|_| question.is_some()) {
        Some(own) => LessonAction::RemoveOwn { own },
        None => LessonAction::Leave { kind },
    };
    Some(TakenView {
        kind,
        name: question_name(lesson, kind).into(),
        points: lesson.points_of(kind).to_string(),
        up: (at > 0).then_some(LessonAction::Move { kind, up: true }),
        down: (at + 1 < lesson.kinds.len()).then_some(LessonAction::Move { kind, up: false }),
        leave,
        own: own.zip(question).map(|(own, question)| own_view(own, question)),
    })
}

/// What a question of a lesson is called in lists for teachers: its kind, or the teacher's own words.
pub fn question_name(lesson: &Lesson, kind: u8) -> Message {
    match (lesson.own_question(kind), name(kind)) {
        (Some(own), _) if !own.ask.trim().is_empty() => {
            Message::new("lesson-own").text("ask", own.ask.trim())
        }
        (Some(_), _) => Message::new("lesson-own-new"),
        (None, Some(name)) => name,
        (None, None) => Message::new("lesson-kind-unknown").count("kind", usize::from(kind)),
    }
}

fn own_view(own: usize, question: &OwnQuestion) -> OwnView {
    let by = &question.by;
    let text = |value: Option<f64>| value.map(|v| v.to_string()).unwrap_or_default();
    let depths = by.quantity.map_or(0, |quantity| quantity.depths());
    let lacks = question.lacks().map(|lack| {
        Message::new(match lack {
            Lack::Ask => "lesson-own-lacks-ask",
            Lack::Depth => "lesson-own-lacks-depth",
            Lack::TwoDepths => "lesson-own-lacks-depths",
            Lack::Temp => "lesson-own-lacks-temp",
        })
    });
    OwnView {
        own,
        ask: question.ask.clone(),
        hint: question.hint.clone(),
        quantity: by.quantity,
        depths: [by.at_m, by.to_m].into_iter().take(depths).map(text).collect(),
        temp: by.quantity.filter(|quantity| quantity.needs_temp()).map(|_| text(by.temp_c)),
        rubric: if by.quantity.is_some() {
            Vec::new()
        } else {
            (0..MOST_LEVELS).map(|level| by.rubric.get(level).cloned().unwrap_or_default()).collect()
        },
        lacks: lacks.map(Said::from),
    }
}

fn open(lesson: &Lesson) -> Vec<OpenView> {
    let open = &lesson.open;
    let switch = |part: OpenPart, name: &'static str, open: bool| OpenView {
        name: Message::new(name).into(),
        open,
        turn: LessonAction::SetOpen { part, open: !open },
    };
    vec![
        switch(OpenPart::Steps, "lesson-open-steps", open.steps),
        switch(OpenPart::Thermocline, "lesson-open-thermocline", open.thermocline),
        switch(OpenPart::MixedLayer, "lesson-open-mixed", open.mixed_layer),
        switch(OpenPart::DeepLayer, "lesson-open-deep", open.deep_layer),
        switch(OpenPart::Curve, "lesson-open-curve", !open.curve_waits),
    ]
}

fn rules(lesson: &Lesson) -> Vec<RuleField> {
    let method = &lesson.method;
    let field = |rule: RuleName, name: &'static str, value: f64, unit: &'static str| RuleField {
        rule,
        name: Message::new(name).into(),
        value: Num { value, decimals: if (value * 10.0).fract().abs() < 1e-9 { 1 } else { 2 } },
        unit: Message::new(unit).into(),
    };
    vec![
        field(RuleName::Reference, "lesson-rule-reference", method.reference_m, "lesson-unit-m"),
        field(RuleName::MixedDrop, "lesson-rule-drop", method.mixed_drop_c, "lesson-unit-c"),
        field(RuleName::Steep, "lesson-rule-steep", method.steep_c_per_m, "lesson-unit-c-per-m"),
    ]
}

/// From the title, in letters and digits alone.
fn file_name(lesson: &Lesson) -> String {
    let plain = |c: char| if c.is_alphanumeric() { c.to_ascii_lowercase() } else { '-' };
    let title: String = lesson.title.chars().map(plain).collect();
    let parts: Vec<&str> = title.split('-').filter(|part| !part.is_empty()).collect();
    if parts.is_empty() { "layercast-lesson".to_owned() } else { format!("lesson-{}", parts.join("-")) }
}
