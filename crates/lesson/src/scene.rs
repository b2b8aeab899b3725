//! What the picture of a screen may show: decided here once, drawn elsewhere.

use crate::by_hand;
use crate::document::{MarkDocs, Notebook, Screen};
use crate::prepared::Prepared;
use crate::questions::{self, Context, Paper, Told};
use layercast_core::Step;
use layercast_core::order::sort_by;

/// What may be revealed, per quantity. Every picture, table, alt text, export and spoken line asks this.
#[derive(Clone, Debug, Default, PartialEq, Eq)]
pub struct Shown {
    /// All bars of the strip (and °C per metre in tables).
    pub steps: bool,
    /// Bars open one by one (indices into `Analysis::steps`) while `steps` is false.
    pub some_steps: Vec<usize>,
    /// Thermocline, its span, the steepest bar.
    pub thermocline: bool,
    /// Mixed layer.
    pub mixed_layer: bool,
    /// Steep layer and top of the deep layer.
    pub deep_layer: bool,
}

/// What one screen's picture shows beside the readings.
#[derive(Clone, Debug, PartialEq)]
pub struct Scene {
    /// The student's marks; `None` on Log.
    pub marks: Option<MarkDocs>,
    /// What was guessed before the first reading, downward (depth in metres, °C): on Log while it may change, and in the
    /// report.
    pub guess: Vec<(f64, f64)>,
    /// The curve and its readings are not drawn: three of them are placed by hand first, which then stand in `guess`.
    pub by_hand: bool,
    /// Only the grips of fields (kinds 7, 8 and 11) instead of the three marks: (field id, depth in metres).
    pub grips: Option<Vec<(String, Option<f64>)>>,
    /// Their lines are short (after the check).
    pub marks_short: bool,
    /// From–to that two grips give (kinds 8 and 11), metres.
    pub from_to_m: Option<(f64, f64)>,
    /// Column between "yours" and the plot.
    pub middle: SceneMiddle,
    /// What may be revealed.
    pub shown: Shown,
    /// The strip is drawn at all.
    pub strip: bool,
    /// The cover says "until you have it" (Questions) instead of "until you check".
    pub until_you_have_it: bool,
    /// A step or a longer stretch in hand: its top and bottom, metres.
    pub step_m: Option<(f64, f64)>,
    /// Stretches lit with a letter each, from A: (top, bottom) in metres.
    pub lit_m: Vec<(f64, f64)>,
    /// The step is explained: triangle and its two legs.
    pub step_explained: bool,
}

/// Column between "yours" and the plot.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum SceneMiddle {
    /// None (Log).
    None,
    /// The rules' column, covered or found by `shown`.
    Rules,
    /// Means, for questions that need them: they stand in the readings' table of every screen.
    Means,
    /// Empty space (other questions).
    Empty,
}

/// What may be revealed of this cast to this sheet: what the lesson leaves open, what the first check and settled
/// questions uncover, and what was uncovered before.
pub fn shown(context: &Context, paper: &Paper) -> Shown {
    let open = &context.lesson.open;
    let before = &context.sheet.uncovered;
    let checked = context.sheet.first_marks.is_some();
    let mut shown = Shown {
        steps: open.steps || before.steps || checked,
        some_steps: Vec::new(),
        thermocline: open.thermocline || before.thermocline || checked,
        mixed_layer: open.mixed_layer || before.mixed_layer || checked,
        deep_layer: open.deep_layer || before.deep_layer || checked,
    };
    let mut bars = bars_at(context, &before.some_steps_m);
    if !checked {
        let mut if_free = false;
        for asked in &paper.asked {
            let standing = questions::standing(context, asked, context.sheet.answers.get(&asked.id));
            shown.steps |= standing.reveals_all_steps;
            if_free |= standing.reveals_steps_if_free;
            shown.thermocline |= standing.reveals_thermocline;
            shown.mixed_layer |= standing.reveals_mixed_layer;
            shown.deep_layer |= standing.reveals_deep_layer;
            bars.extend(standing.reveals_steps.into_iter().filter(|i| *i < context.analysis.steps.len()));
        }
        let waits = || questions::revealed_by_check(context, paper).iter().any(|(_, t)| *t == Told::Steps);
        shown.steps |= if_free && questions::marks_are_in(context) && !waits();
    }
    if !shown.steps {
        sort_by(&mut bars, usize::cmp);
        bars.dedup();
        shown.some_steps = bars;
    }
    shown
}

/// Bars of the strip that stand where bars were uncovered before.
fn bars_at(context: &Context, uncovered_m: &[(f64, f64)]) -> Vec<usize> {
    let same = |a: f64, b: f64| (a - b).abs() < 1e-6;
    let uncovered = |step: &Step| {
        uncovered_m.iter().any(|(top_m, bottom_m)| same(step.top_m, *top_m) && same(step.bottom_m, *bottom_m))
    };
    let steps = context.analysis.steps.iter().enumerate();
    if uncovered_m.is_empty() {
        Vec::new()
    } else {
        steps.filter(|(_, s)| uncovered(s)).map(|(i, _)| i).collect()
    }
}

/// Questions that an early check would show and that would then earn no credit: (number from 1, id).
pub fn early(context: &Context, paper: &Paper) -> Vec<(usize, String)> {
    if context.sheet.first_marks.is_some() {
        return Vec::new();
    }
    let now = shown(context, paper);
    let still_covered = |told: Told| match told {
        Told::Steps => !now.steps,
        Told::MixedLayer => !now.mixed_layer,
        Told::DeepLayer => !now.deep_layer,
        // Even where the thermocline is open: what is answered after the check earns nothing.
        Told::Verdicts | Told::Thermocline => true,
    };
    let told = questions::revealed_by_check(context, paper).into_iter();
    let covered = told.filter(|(_, told)| still_covered(*told)).map(|(i, _)| i);
    covered.filter_map(|i| Some((i + 1, paper.asked.get(i)?.id.clone()))).collect()
}

/// What the picture of a screen shows.
pub fn scene(notebook: &Notebook, prepared: &Prepared, screen: Screen) -> Scene {
    let context = prepared.context(notebook);
    let paper = questions::paper(&context);
    let shown = shown(&context, &paper);
    let checked = context.sheet.first_marks.is_some();
    let waits = by_hand::waits(notebook, context.analysis);
    let on_questions = screen == Screen::Questions;
    let asked = paper.asked.get(place_in(&paper, notebook.place.question)).filter(|_| on_questions);
    let kind = asked.map(|asked| asked.kind);
    let standing =
        asked.map(|asked| questions::standing(&context, asked, context.sheet.answers.get(&asked.id)));
    let grips =
        if on_questions && !waits { field_grips(&context, &paper, notebook.place.question) } else { None };
    let from_to_m = match grips.as_deref() {
        Some([(_, Some(from_m)), (_, Some(to_m))]) => Some((from_m.min(*to_m), to_m.max(*from_m))),
        _ => None,
    };
    Scene {
        marks: match screen {
            Screen::Log | Screen::Class => None,
            _ if waits => None,
            // The report shows where the group marked it first of all, if it did.
            Screen::Report => {
                Some(context.sheet.first_answer_marks().unwrap_or(&context.sheet.marks).clone())
                    .filter(|marks| *marks != MarkDocs::default())
            }
            Screen::Profile | Screen::Questions => Some(context.sheet.marks.clone()),
        },
        by_hand: waits,
        guess: match screen {
            _ if waits => by_hand::shown(&context.sheet.by_hand),
            Screen::Log if !notebook.may_guess() => Vec::new(),
            Screen::Log | Screen::Report => context.sheet.guessed(),
            _ => Vec::new(),
        },
        grips,
        marks_short: checked && !(context.sheet.marking_again && screen != Screen::Report),
        from_to_m,
        middle: match (screen, kind) {
            (Screen::Log, _) => SceneMiddle::None,
            (_, Some(kind)) if questions::shows_means(kind) => SceneMiddle::Means,
            (_, Some(_)) => SceneMiddle::Empty,
            (_, None) => SceneMiddle::Rules,
        },
        shown,
        strip: screen != Screen::Log,
        until_you_have_it: on_questions,
        step_m: standing.as_ref().and_then(|standing| standing.step_m),
        lit_m: standing.as_ref().map(|standing| standing.lit_m.clone()).unwrap_or_default(),
        step_explained: standing.is_some_and(|standing| standing.step_explained),
    }
}

/// The question in hand: its index, or the last one where the paper is shorter now.
pub fn place_in(paper: &Paper, question: usize) -> usize {
    question.min(paper.asked.len().saturating_sub(1))
}

/// Grips that are fields of the question in hand.
fn field_grips(context: &Context, paper: &Paper, question: usize) -> Option<Vec<(String, Option<f64>)>> {
    let view = questions::view(context, paper, place_in(paper, question))?;
    let fields = view.parts.into_iter().flat_map(|part| part.lines).flat_map(|line| line.fields);
    let grips: Vec<_> = fields.filter_map(|field| field.grip.map(|grip| (field.id, grip.depth_m))).collect();
    (!grips.is_empty()).then_some(grips)
}
