//! What the picture of a screen may show: decided here once, drawn elsewhere.

use crate::document::{MarkDocs, Notebook, Screen};
use crate::prepared::Prepared;
use crate::questions::{self, Context, Paper};

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
    /// Only the grips of fields (kinds 7 and 8) instead of the three marks: (field id, depth in metres).
    pub grips: Option<Vec<(String, Option<f64>)>>,
    /// Their lines are short (after the check).
    pub marks_short: bool,
    /// From–to of kind 8, metres.
    pub from_to_m: Option<(f64, f64)>,
    /// Column between "yours" and the plot.
    pub middle: SceneMiddle,
    /// What may be revealed.
    pub shown: Shown,
    /// The strip is drawn at all.
    pub strip: bool,
    /// The cover says "until you have it" (Questions) instead of "until you check".
    pub until_you_have_it: bool,
    /// A step in hand: index into `Analysis::steps`, or a longer stretch by its depths.
    pub step_m: Option<(f64, f64)>,
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
    /// Means (kinds 4, 5, 6, 9+10).
    Means,
    /// Empty space (kinds 1, 7, 8, 13).
    Empty,
}

/// What may be revealed of this cast to this sheet.
pub fn shown(context: &Context, _paper: &Paper) -> Shown {
    let open = &context.lesson.open;
    let checked = context.sheet.first_marks.is_some();
    Shown {
        steps: open.steps || checked,
        some_steps: Vec::new(),
        thermocline: open.thermocline || checked,
        mixed_layer: open.mixed_layer || checked,
        deep_layer: open.deep_layer || checked,
    }
}

/// What the picture of a screen shows.
pub fn scene(notebook: &Notebook, prepared: &Prepared, screen: Screen) -> Scene {
    let context = prepared.context(notebook);
    let paper = questions::paper(&context);
    Scene {
        marks: (screen != Screen::Log).then(|| context.sheet.marks.clone()),
        grips: None,
        marks_short: context.sheet.first_marks.is_some(),
        from_to_m: None,
        middle: if screen == Screen::Log { SceneMiddle::None } else { SceneMiddle::Rules },
        shown: shown(&context, &paper),
        strip: screen != Screen::Log,
        until_you_have_it: screen == Screen::Questions,
        step_m: None,
        step_explained: false,
    }
}
