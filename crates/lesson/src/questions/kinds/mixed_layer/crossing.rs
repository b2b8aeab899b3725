//! Where the rule's temperature is met, by every kind of reading; where each wrong idea and each other rule puts it.

use crate::questions::ranges::{Range, Wrong};
use crate::questions::rules::others;
use crate::questions::water::{ROUNDING_C, SLACK, Source, Water};
use layercast_core::{Rule, Sought};

use super::{LEAST_M, NEAREST, PREVIOUS, SURFACE, THERMOCLINE};

/// A crossing this near to a mark is shown as the mark, metres: half of the last place that is shown.
const AT_A_MARK_M: f64 = 0.005;

/// Half of the last place of a depth written to a tenth, metres.
const WRITTEN_M: f64 = 0.05;

/// Where a temperature is met on the way down: the two marks and their temperatures.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Crossing {
    /// The two marks, metres.
    pub marks_m: (f64, f64),
    /// Their temperatures, °C.
    pub temps_c: (f64, f64),
}

impl Crossing {
    /// Place in the step, 0 to 1.
    pub fn fraction(&self, target: f64) -> f64 {
        let drop = self.temps_c.0 - self.temps_c.1;
        if drop > SLACK { ((self.temps_c.0 - target) / drop).clamp(0.0, 1.0) } else { 0.0 }
    }

    /// Where a temperature is met in the step, metres.
    pub fn depth_m(&self, target: f64) -> f64 {
        self.marks_m.0 + (self.marks_m.1 - self.marks_m.0) * self.fraction(target)
    }
}

pub(super) fn drop_c(water: &Water) -> f64 {
    water.analysis().method.mixed_drop_c
}

/// Reference depth, metres: the rule's, or the first reading if that is deeper.
pub(super) fn reference_m(water: &Water) -> f64 {
    crate::numbers::reference_m(water.analysis())
}

/// The marks that the reference temperature is read from.
pub(super) fn reference_marks(water: &Water) -> Vec<f64> {
    let z = reference_m(water);
    let marks = water.marks_m();
    match marks.iter().find(|m| (*m - z).abs() < 1e-6) {
        Some(mark) => vec![*mark],
        None => {
            let above = marks.iter().rev().find(|m| **m < z);
            let below = marks.iter().find(|m| **m > z);
            above.into_iter().chain(below).copied().collect()
        }
    }
}

/// Temperatures looked for, by each kind of reading.
pub(super) fn targets(water: &Water) -> Vec<Range> {
    let marks = reference_marks(water);
    let z = reference_m(water);
    // Between two marks the reference is itself a guess, as wide as half their difference.
    let between = match marks[..] {
        [a, b] => water
            .temp(a, Source::Mean)
            .zip(water.temp(b, Source::Mean))
            .map_or(0.0, |(a, b)| (a - b).abs() / 2.0),
        _ => 0.0,
    };
    (water.sources(&marks).iter().copied())
        .filter_map(|source| {
            let value = water.between(z, source)? - drop_c(water);
            Some(Range { source, value, give: water.rounding_c() + between })
        })
        .collect()
}

/// The first two marks below the reference between which a temperature is met.
pub(super) fn crossing(water: &Water, source: Source, target: f64) -> Option<Crossing> {
    let z = reference_m(water);
    let series: Vec<(f64, f64)> =
        (water.levels().iter()).filter_map(|l| Some((l.depth_m, Water::of(l, source)?))).collect();
    series.windows(2).find_map(|w| match w {
        [(a, ta), (b, tb)] if *b > z + 1e-6 && *tb <= target + SLACK => {
            Some(Crossing { marks_m: (*a, *b), temps_c: (*ta, *tb) })
        }
        _ => None,
    })
}

/// Every right pair: by each kind of reading the student's own accepted temperature first, then its own.
pub(super) fn crossings(water: &Water, own_target: Option<f64>) -> Vec<(Source, f64, Crossing)> {
    let own = |source| own_target.map(|t| (source, t));
    (targets(water).into_iter())
        .flat_map(|r| [own(r.source), Some((r.source, r.value))])
        .flatten()
        .filter_map(|(source, target)| Some((source, target, crossing(water, source, target)?)))
        .collect()
}

pub(super) fn same(a: (f64, f64), b: (f64, f64)) -> bool {
    (a.0 - b.0).abs() < 1e-6 && (a.1 - b.1).abs() < 1e-6
}

/// Uncertainty of a crossing, metres (methods 8.2).
pub(super) fn u_m(water: &Water, source: Source, at: &Crossing, target: f64) -> f64 {
    let sigma = match source {
        Source::Mean => water.level(at.marks_m.1).map_or(0.1, |l| l.sd_c),
        _ => water.analysis().pairs.s_used_c,
    };
    let slope = (at.temps_c.0 - at.temps_c.1) / (at.marks_m.1 - at.marks_m.0);
    let f = at.fraction(target);
    if slope > SLACK { sigma / slope * (1.0 + (1.0 - f) * (1.0 - f) + f * f).sqrt() } else { 0.0 }
}

/// Depths in a step, by each kind of reading and temperature that puts the crossing there.
pub(super) fn depths(water: &Water, marks_m: (f64, f64), own_target: Option<f64>) -> Vec<Range> {
    (crossings(water, own_target).into_iter())
        .filter(|(_, _, at)| same(at.marks_m, marks_m))
        .map(|(source, target, at)| Range {
            source,
            value: at.depth_m(target),
            give: u_m(water, source, &at, target).max(LEAST_M),
        })
        .collect()
}

/// The first step that alone cools by the rule's drop.
pub(super) fn previous_mark_step(water: &Water) -> Option<Crossing> {
    water.levels().windows(2).find_map(|w| match w {
        [a, b] if a.temp_c - b.temp_c >= drop_c(water) - SLACK => {
            Some(Crossing { marks_m: (a.depth_m, b.depth_m), temps_c: (a.temp_c, b.temp_c) })
        }
        _ => None,
    })
}

pub(super) fn wrong_targets(water: &Water) -> Vec<Wrong> {
    let surface = (water.levels().first())
        .filter(|l| l.depth_m < reference_m(water) - SLACK)
        .map(|l| Wrong { key: SURFACE, value: l.temp_c - drop_c(water), give: ROUNDING_C / 2.0 });
    let previous = previous_mark_step(water).map(|at| Wrong {
        key: PREVIOUS,
        value: at.temps_c.0 - drop_c(water),
        give: ROUNDING_C / 2.0,
    });
    surface.into_iter().chain(previous).collect()
}

pub(super) fn wrong_pairs(water: &Water) -> Vec<(&'static str, (f64, f64))> {
    let surface = (water.levels().first())
        .and_then(|l| crossing(water, Source::Mean, l.temp_c - drop_c(water)))
        .map(|at| (SURFACE, at.marks_m));
    let previous = previous_mark_step(water).map(|at| (PREVIOUS, at.marks_m));
    let thermocline = water.steep().map(|s| (THERMOCLINE, s.step_m));
    [surface, previous, thermocline].into_iter().flatten().collect()
}

/// The mark of a step nearest to a depth in it; none where the depth itself, to a tenth, may be written as the mark.
pub(super) fn nearest_mark(ranges: &[Range], marks_m: (f64, f64)) -> Vec<Wrong> {
    let nearest = |z: f64| if z - marks_m.0 <= marks_m.1 - z { marks_m.0 } else { marks_m.1 };
    let may_be_written =
        |mark: f64| ranges.iter().any(|r| (r.value - mark).abs() <= r.give + WRITTEN_M + SLACK);
    (ranges.iter().map(|r| nearest(r.value)))
        .filter(|mark| !may_be_written(*mark))
        .map(|value| Wrong { key: NEAREST, value, give: 0.02 })
        .collect()
}

/// The class's own pair.
pub(super) fn class_crossing(water: &Water) -> Option<(f64, Crossing)> {
    let target = targets(water).first()?.value;
    Some((target, crossing(water, Source::Mean, target)?))
}

/// The depth in the step is asked: the nearest mark would not pass for right.
pub(super) fn asks_depth(water: &Water) -> bool {
    let Some((_, at)) = class_crossing(water) else { return false };
    let ranges = depths(water, at.marks_m, None);
    let is_right = |mark: f64| ranges.iter().any(|r| r.holds(mark));
    !ranges.is_empty() && ![at.marks_m.0, at.marks_m.1].into_iter().any(is_right)
}

/// The rule's temperature is met at a mark, as near as a depth is said.
pub(super) fn ends_at_a_mark(water: &Water) -> bool {
    let Some((target, at)) = class_crossing(water) else { return false };
    let z = at.depth_m(target);
    (z - at.marks_m.0).min(at.marks_m.1 - z) <= AT_A_MARK_M + SLACK
}

/// A step that another rule puts the end into, and its depth.
pub(super) fn other_rules(water: &Water) -> Vec<(Rule, (f64, f64), f64)> {
    let holds = |s: &&layercast_core::Step, rule: Rule, z: f64| match rule {
        Rule::FirstSteepTop => (s.top_m - z).abs() < 1e-6,
        _ => s.top_m - SLACK <= z && z <= s.bottom_m + SLACK,
    };
    (others(water, Sought::MixedLayerEnd).into_iter())
        .filter_map(|(rule, z)| {
            let step = water.steps().iter().find(|s| holds(s, rule, z))?;
            Some((rule, (step.top_m, step.bottom_m), z))
        })
        .collect()
}
