//! From scene and analysis to the chart's plain data. What the scene covers is not given to the chart at all.

use super::PictureRequest;
use super::words::Explained;
use layercast_chart::{
    Bar, BarLook, DoubtAt, Found, Mark, Marks, Middle, Picture, Point, RuleTick, StepInHand, StepWords,
    Strip, strip_scale,
};
use layercast_core::order::sort_by;
use layercast_core::{Analysis, State, Step, Switch};
use layercast_exchange::document::corrected_marks;
use layercast_lesson::document::{MarkDoc, Notebook, Screen};
use layercast_lesson::numbers::rounded;
use layercast_lesson::scene::{Scene, SceneMiddle, Shown};
use layercast_lesson::{Prepared, look_with};

/// While bars are covered their axis ends here, °C per metre, whatever the water.
const COVERED_SCALE_C_PER_M: f64 = 6.0;
/// Depths closer than this are one, metres.
const SAME_M: f64 = 1e-6;

/// Everything one picture shows.
pub(super) fn picture(
    notebook: &Notebook,
    prepared: &Prepared,
    scene: &Scene,
    request: &PictureRequest,
) -> Picture {
    let analysis = &prepared.analysis;
    let walk = prepared.walk();
    let points: Vec<Point> = walk.iter().filter_map(|i| point(prepared, *i)).collect();
    Picture {
        least_depth_m: least_depth_m(notebook, &points, scene, request.screen),
        points,
        profile: analysis.profile.iter().map(|level| (level.depth_m, level.temp_c)).collect(),
        otherwise: otherwise(prepared, scene, request),
        guess: scene.guess.clone(),
        axes_only: scene.by_hand,
        bed_m: prepared.cast.bed_m,
        marks: scene.marks.as_ref().map(|_| marks(scene)),
        marks_short: scene.marks_short,
        from_to_m: scene.from_to_m,
        middle: middle(analysis, scene, request),
        found: found(analysis, &scene.shown),
        strip: strip(analysis, scene),
        strip_gains: if gains(analysis) { all_steps(scene).then_some(true) } else { Some(false) },
        step: step(analysis, scene, request),
        lit_m: scene.lit_m.clone(),
        doubts: doubts(prepared, request),
        rules: rules(notebook, prepared, scene, request),
        cursor: request.cursor,
        heavier_above_m: analysis
            .facts
            .and_then(|facts| facts.inversion_pair_m)
            .filter(|_| analysis.state == State::Unstable && all(&scene.shown)),
        grips: false,
    }
}

/// Whether the whole result may be seen.
pub(super) fn all(shown: &Shown) -> bool {
    shown.thermocline && shown.mixed_layer && shown.deep_layer
}

/// Mixed although it is not of one temperature: near 4 °C the density hardly differs.
pub(crate) fn is_mixed_by_density(analysis: &Analysis) -> bool {
    let Some(facts) = analysis.facts else { return false };
    let steep = analysis.method.steep_c_per_m;
    let is_steep = |step: &Step| step.cooling_c_per_m.abs() >= steep - 1e-9;
    let apart_c = (facts.top_c - facts.bottom_c).abs();
    analysis.state == State::Mixed && apart_c > facts.believable_c && analysis.steps.iter().any(is_steep)
}

/// The step that is explained: what it loses (or gains) and how thick it is.
pub(super) fn explained(analysis: &Analysis, scene: &Scene) -> Option<Explained> {
    let (top_m, bottom_m) = scene.step_m.filter(|_| scene.step_explained)?;
    let (top_c, bottom_c) = (temp_at(analysis, top_m)?, temp_at(analysis, bottom_m)?);
    Some(Explained { drop_c: rounded((top_c - bottom_c).abs(), 2), thickness_m: bottom_m - top_m })
}

/// The same cast read otherwise, once all may be seen.
fn otherwise(prepared: &Prepared, scene: &Scene, request: &PictureRequest) -> Vec<(f64, f64)> {
    match &request.otherwise {
        Some(otherwise) if all(&scene.shown) => {
            layercast_lesson::ranges::profile_otherwise(prepared, otherwise)
        }
        _ => Vec::new(),
    }
}

fn point(prepared: &Prepared, i: usize) -> Option<Point> {
    let reading = prepared.cast.readings.get(i)?;
    // A reading in use has a temperature; one without still keeps its place in the walk.
    Some(Point { depth_m: reading.depth_m, temp_c: reading.temp_c.unwrap_or(f64::NAN), leg: reading.leg })
}

/// The axis reaches as deep as the rows of the table; a depth far below all used ones is a slip, not water.
fn least_depth_m(notebook: &Notebook, points: &[Point], scene: &Scene, screen: Screen) -> f64 {
    let deepest_m = points.iter().map(|point| point.depth_m).fold(0.0, f64::max);
    if screen != Screen::Log {
        // A guess that went a little deeper than the readings has its place; one far below has none.
        let guessed = scene.guess.iter().map(|(depth_m, _)| *depth_m);
        return guessed.filter(|depth_m| *depth_m <= 1.5 * deepest_m).fold(deepest_m, f64::max);
    }
    let cast = &notebook.cast;
    let mut marks_m: Vec<f64> = cast.entries.iter().filter_map(|entry| entry.depth.current()).collect();
    let most_m = if points.is_empty() { 200.0 } else { 1.2 * deepest_m + 1.0 };
    // A typed table has rows for its empty marks too.
    let is_typed = cast.entries.iter().all(|entry| entry.line.is_none());
    let last_m = f64::from(notebook.mark_count.saturating_sub(1)) * notebook.mark_step_m;
    marks_m.retain(|depth_m| *depth_m <= most_m);
    marks_m.extend(is_typed.then_some(last_m));
    corrected_marks(cast, &marks_m).into_iter().fold(deepest_m, f64::max)
}

fn mark(doc: &MarkDoc) -> Mark {
    match doc.depth_m {
        _ if doc.refused => Mark::Refused,
        Some(depth_m) => Mark::At { depth_m, give_m: doc.give_m },
        None => Mark::Unset,
    }
}

/// The three marks; or the grips of the question's fields in their place: one stands for the thermocline, two for the ends.
fn marks(scene: &Scene) -> Marks {
    let grip = |depth_m: &Option<f64>| match depth_m {
        Some(depth_m) => Mark::At { depth_m: *depth_m, give_m: None },
        None => Mark::Unset,
    };
    match (scene.grips.as_deref(), &scene.marks) {
        (Some([(_, one)]), _) => Marks { mixed: Mark::Refused, thermocline: grip(one), deep: Mark::Refused },
        (Some([(_, Some(_)), (_, Some(_))]), _) => Marks::default(),
        (Some([(_, from), (_, to)]), _) => {
            Marks { mixed: grip(from), thermocline: Mark::Refused, deep: grip(to) }
        }
        (_, Some(docs)) => {
            Marks { mixed: mark(&docs.mixed), thermocline: mark(&docs.thermocline), deep: mark(&docs.deep) }
        }
        (_, None) => Marks::default(),
    }
}

fn middle(analysis: &Analysis, scene: &Scene, request: &PictureRequest) -> Middle {
    match scene.middle {
        SceneMiddle::None | SceneMiddle::Empty => Middle::None,
        SceneMiddle::Rules if all(&scene.shown) => Middle::Rules,
        SceneMiddle::Rules => Middle::RulesCovered,
        SceneMiddle::Means => {
            let decimals = if analysis.profile.iter().any(|level| level.legs > 1) { 2 } else { 1 };
            let text = |temp_c: f64| number(temp_c, decimals, request);
            Middle::Means(analysis.profile.iter().map(|level| (level.depth_m, text(level.temp_c))).collect())
        }
    }
}

/// A number as the reader writes it.
fn number(value: f64, decimals: u8, request: &PictureRequest) -> String {
    let text = format!("{:.*}", usize::from(decimals), rounded(value, decimals));
    text.replace('-', "\u{2212}").replace('.', &request.words.decimal)
}

/// What may be seen of what was found.
pub(crate) fn found(analysis: &Analysis, shown: &Shown) -> Option<Found> {
    if !(shown.thermocline || shown.mixed_layer || shown.deep_layer) {
        return None;
    }
    let line = shown.thermocline;
    Some(Found {
        state: analysis.state,
        thermocline: analysis.thermocline.filter(|_| line),
        metalimnion: analysis.metalimnion.filter(|_| shown.deep_layer),
        mixed_layer: analysis.mixed_layer.filter(|_| shown.mixed_layer),
        warm_layer_today: analysis.warm_layer_today.filter(|_| line),
        fastest_warming: analysis.fastest_warming.filter(|_| line),
        mixed_by_density: is_mixed_by_density(analysis),
    })
}

/// Under ice the strip counts what the water gains.
fn gains(analysis: &Analysis) -> bool {
    analysis.state == State::Inverse
}

fn all_steps(scene: &Scene) -> bool {
    scene.shown.steps
}

fn strip(analysis: &Analysis, scene: &Scene) -> Strip {
    if !scene.strip {
        return Strip::None;
    }
    let bar = |step: &Step| bar(analysis, &scene.shown, step);
    let longest = |bars: &[Bar]| bars.iter().map(|bar| bar.c_per_m).fold(0.0, f64::max);
    if all_steps(scene) {
        let bars: Vec<Bar> = analysis.steps.iter().map(bar).collect();
        return Strip::Open { scale_c_per_m: strip_scale(longest(&bars)), bars };
    }
    let open: Vec<Bar> =
        scene.shown.some_steps.iter().filter_map(|i| analysis.steps.get(*i)).map(bar).collect();
    let scale_c_per_m = strip_scale(longest(&open)).max(COVERED_SCALE_C_PER_M);
    Strip::Covered { scale_c_per_m, open }
}

fn bar(analysis: &Analysis, shown: &Shown, step: &Step) -> Bar {
    let c_per_m = if gains(analysis) { -step.cooling_c_per_m } else { step.cooling_c_per_m };
    let within =
        |top_m: f64, bottom_m: f64| step.top_m >= top_m - SAME_M && step.bottom_m <= bottom_m + SAME_M;
    let line = analysis.thermocline.or(analysis.fastest_warming).filter(|line| line.tellable);
    let steepest = line.map(|line| (line.step_top_m, line.step_bottom_m));
    // Where today's warm layer is all there is, its own steepest stands for the thermocline's.
    let today = analysis.warm_layer_today.filter(|today| today.only);
    let steepest = steepest.or(today.map(|today| (today.span_top_m, today.span_bottom_m)));
    let look = if shown.thermocline && steepest.is_some_and(|(top_m, bottom_m)| within(top_m, bottom_m)) {
        BarLook::Steepest
    } else if shown.deep_layer && step.in_main_layer {
        BarLook::Steep
    } else if shown.thermocline && step.in_warm_layer_today {
        BarLook::WarmToday
    } else {
        BarLook::Plain
    };
    Bar { top_m: step.top_m, bottom_m: step.bottom_m, c_per_m, look }
}

/// Mean temperature at a depth of the profile, or on the straight line between its neighbours.
fn temp_at(analysis: &Analysis, depth_m: f64) -> Option<f64> {
    let profile = &analysis.profile;
    if let Some(level) = profile.iter().find(|level| (level.depth_m - depth_m).abs() < SAME_M) {
        return Some(level.temp_c);
    }
    let pair = profile.windows(2).find_map(|pair| match pair {
        [above, below] if above.depth_m < depth_m && depth_m < below.depth_m => Some((above, below)),
        _ => None,
    });
    let (above, below) = pair?;
    let part = (depth_m - above.depth_m) / (below.depth_m - above.depth_m);
    Some(above.temp_c + (below.temp_c - above.temp_c) * part)
}

fn step(analysis: &Analysis, scene: &Scene, request: &PictureRequest) -> Option<StepInHand> {
    let (top_m, bottom_m) = scene.step_m?;
    let words = match request.words.step.as_slice() {
        [drop, thickness] if scene.step_explained => Some(StepWords {
            drop: drop.clone(),
            thickness: thickness.clone(),
            top_c: temp_at(analysis, top_m)?,
            bottom_c: temp_at(analysis, bottom_m)?,
        }),
        _ => None,
    };
    Some(StepInHand { top_m, bottom_m, explained: words })
}

/// One diamond a depth: readings that wait for a decision.
fn doubts(prepared: &Prepared, request: &PictureRequest) -> Vec<DoubtAt> {
    let readings = prepared.cast.readings.iter().zip(&prepared.analysis.checked);
    let open = readings.filter(|(reading, checked)| {
        checked.doubt.is_some() && reading.switch == Switch::Auto && reading.depth_m.is_finite()
    });
    let mut at: Vec<(f64, usize)> = Vec::new();
    for (reading, checked) in open {
        let out = usize::from(!checked.used);
        match at.iter_mut().find(|(depth_m, _)| (depth_m - reading.depth_m).abs() < SAME_M) {
            Some((_, count)) => *count += out,
            None => at.push((reading.depth_m, out)),
        }
    }
    sort_by(&mut at, |a, b| a.0.total_cmp(&b.0));
    let words = |out: usize| match out {
        0 => String::new(),
        1 => request.words.one_left_out.clone(),
        _ => request.words.several_left_out.clone(),
    };
    at.into_iter().map(|(depth_m, out)| DoubtAt { depth_m, words: words(out) }).collect()
}

/// Ticks of the other rules, while one of them is in hand.
fn rules(notebook: &Notebook, prepared: &Prepared, scene: &Scene, request: &PictureRequest) -> Vec<RuleTick> {
    let Some(in_hand) = request.rule.filter(|_| all(&scene.shown) && request.screen == Screen::Profile)
    else {
        return Vec::new();
    };
    let look = look_with(notebook, prepared);
    let rows = look.profile.rules.iter().flat_map(|group| &group.rows).enumerate();
    rows.filter_map(|(i, row)| {
        let text = || request.words.rule_lines.get(i).cloned().filter(|text| !text.is_empty());
        Some(RuleTick { depth_m: row.depth?.value, in_hand: if i == in_hand { text() } else { None } })
    })
    .collect()
}
