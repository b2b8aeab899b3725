//! The depths of one trial, by the rules of the analysis.
//!
//! *Between the marks* nobody read, and a straight line is only the simplest guess: on a smooth lake read every half metre
//! the 1.0 °C rule on straight lines lies up to 0.2 m above the water's own depth. So in each trial
//! - the mixed layer's end lies where a curve through the two readings has it whose slope grows at an even rate, up to
//!   1.44 times as fast as from the step above to this one (not at all: the straight line of the rule);
//! - an edge of the steep layer lies between the middles of the steps on either side, where the gradient passes the
//!   threshold, growing likewise;
//! - the thermocline lies anywhere in its step (the interval rule, methods 8.1).
//!
//! A convention of ours; `tests/coverage_thresholds.rs` holds it against smooth lakes of two shapes. Two things are *not* done
//! again in a trial: the checks, and the question whether the water is unstable.

use super::draw::Water;
use super::plan::{Depth, Plan};
use crate::analysis::Step;
use crate::cast::station::median;
use crate::layers::densest::densest;
use crate::layers::mixed_layer::{SEASON_REFERENCE_M, temperature_step};
use crate::layers::runs::{Layers, Run, layers, runs, surviving};
use crate::layers::state::{INVERSE_C, INVERSE_KG_M3, MIXED_KG_M3};
use crate::layers::steepest::steepest;
use crate::slack::{at_least, at_most, more_than};
use std::ops::Range;

/// No such depth.
pub(super) const NONE: f64 = f64::NAN;
/// Below the last reading.
pub(super) const BEYOND: f64 = f64::INFINITY;

/// What kind of water a trial drew. Whether it is unstable is not asked again: that test is made for the noise of a
/// reading, and a trial has that twice.
#[derive(Clone, Copy, PartialEq)]
enum Kind {
    Layered,
    Mixed,
    Inverse,
}

impl Water {
    /// Appends the depths sought, one number each.
    pub fn seek(&mut self, plan: &Plan, drawn: &mut Vec<f64>) {
        let kind = self.kind(plan);
        let layers = if kind == Kind::Layered { self.layers(plan) } else { Layers::default() };
        for depth in plan.depths() {
            let depth_m = self.depth_m(plan, depth, kind, &layers);
            if depth.is_a_middle() {
                drawn.extend(self.middle(plan, depth_m));
            } else {
                drawn.push(depth_m);
            }
        }
    }

    fn kind(&mut self, plan: &Plan) -> Kind {
        let top_c = self.end_c(0..plan.ends.0);
        let bottom_c = self.end_c(plan.ends.1..plan.values.len());
        let density = plan.method.density;
        let gain = density.kg_m3(bottom_c) - density.kg_m3(top_c);
        if at_most(top_c, bottom_c - INVERSE_C) && more_than(gain, INVERSE_KG_M3) {
            Kind::Inverse
        } else if at_least(gain, MIXED_KG_M3) {
            Kind::Layered
        } else {
            Kind::Mixed
        }
    }

    fn end_c(&mut self, places: Range<usize>) -> f64 {
        self.end_c.clear();
        self.end_c.extend(self.levels.get(places).unwrap_or_default().iter().map(|l| l.temp_c));
        median(&mut self.end_c).unwrap_or_default()
    }

    fn layers(&self, plan: &Plan) -> Layers {
        let found = surviving(runs(&self.levels, &self.steps, plan.method.steep_c_per_m), plan.s_c);
        layers(&found, self.levels.last().map_or(0.0, |l| l.depth_m))
    }

    fn depth_m(&mut self, plan: &Plan, depth: Depth, kind: Kind, layers: &Layers) -> f64 {
        let layered = kind == Kind::Layered;
        let main = layers.main.as_ref();
        match depth {
            Depth::MixedLayer | Depth::MixedLayerSeason => {
                let reference_m =
                    if depth == Depth::MixedLayer { plan.method.reference_m } else { SEASON_REFERENCE_M };
                if layered { self.crossing_m(plan, reference_m) } else { BEYOND }
            }
            Depth::MetalimnionTop => main.map_or(NONE, |run| self.top_m(plan, run)),
            Depth::MetalimnionBottom => main.map_or(NONE, |run| self.bottom_m(plan, run)),
            Depth::Thermocline => {
                let day_only = main.is_none() && layers.warm_today.is_some();
                if !layered || day_only {
                    return NONE;
                }
                let all = 0..self.steps.len();
                self.steepest_m(main.map_or(all, |run| run.steps.clone()), 1.0, &layers.others)
            }
            Depth::WarmLayerToday => {
                let warm = layers.warm_today.as_ref();
                warm.map_or(NONE, |run| self.steepest_m(run.steps.clone(), 1.0, &[]))
            }
            Depth::FastestWarming if kind == Kind::Inverse => self.steepest_m(0..self.steps.len(), -1.0, &[]),
            Depth::FastestDensing if kind == Kind::Inverse => {
                densest(&self.levels, 0..self.steps.len()).map_or(NONE, |d| d.value_m)
            }
            Depth::FastestWarming | Depth::FastestDensing => NONE,
        }
    }

    /// Where the water has moved by the threshold. Between the marks it may bow.
    fn crossing_m(&self, plan: &Plan, reference_m: f64) -> f64 {
        let Some((depth_m, upper)) = temperature_step(&self.levels, reference_m, plan.method.mixed_drop_c)
        else {
            return BEYOND;
        };
        if !plan.unsure.between_marks {
            return depth_m;
        }
        let steps =
            upper.checked_sub(1).and_then(|above| Some((self.steps.get(above)?, self.steps.get(upper)?)));
        let Some((above, step)) = steps.filter(|(_, step)| step.top_m >= reference_m) else { return depth_m };
        let height_m = step.bottom_m - step.top_m;
        let growth = growth(above.cooling_c_per_m, step.cooling_c_per_m);
        let part = (depth_m - step.top_m) / height_m;
        step.top_m + height_m * bowed(part, growth, MOST_BOW * self.between.bow)
    }

    /// Upper edge of a run: the mark, or where between the middles of the steps around it the gradient passes the
    /// threshold.
    fn top_m(&self, plan: &Plan, run: &Run) -> f64 {
        self.edge_m(plan, run.top_m, run.steps.start.checked_sub(1), Some(run.steps.start))
    }

    /// Lower edge of a run likewise; where it touches the last reading the deep layer was not reached.
    fn bottom_m(&self, plan: &Plan, run: &Run) -> f64 {
        if run.steps.end >= self.steps.len() {
            return BEYOND;
        }
        self.edge_m(plan, run.bottom_m, run.steps.end.checked_sub(1), Some(run.steps.end))
    }

    fn edge_m(&self, plan: &Plan, mark_m: f64, above: Option<usize>, below: Option<usize>) -> f64 {
        let step = |place: Option<usize>| place.and_then(|i| self.steps.get(i));
        let Some((a, b)) = step(above).zip(step(below)).filter(|_| plan.unsure.between_marks) else {
            return mark_m;
        };
        let steep = plan.method.steep_c_per_m;
        let middle_m = |s: &Step| (s.top_m + s.bottom_m) / 2.0;
        // From the gentle step to the steep one.
        let (gentle, steeper) = if a.cooling_c_per_m < b.cooling_c_per_m { (a, b) } else { (b, a) };
        let (from, to) = (gentle.cooling_c_per_m, steeper.cooling_c_per_m);
        let part = ((steep - from) / (to - from)).clamp(0.0, 1.0);
        let growth = growth(from, to);
        let most_bow = 1.0 + STEEP_BOW * libm::log(growth);
        let at = bowed(part, growth, most_bow * self.between.bow);
        middle_m(gentle) + at * (middle_m(steeper) - middle_m(gentle))
    }

    /// A depth in the step whose middle is given, and the place of that step; of a run of equal steps the middle one, the
    /// upper of two.
    fn middle(&self, plan: &Plan, middle_m: f64) -> [f64; 2] {
        let place = self.steps.partition_point(|s| s.bottom_m < middle_m);
        let Some(step) = self.steps.get(place).filter(|_| middle_m.is_finite()) else { return [NONE; 2] };
        let anywhere_m = (self.between.middle - 0.5) * (step.bottom_m - step.top_m);
        [if plan.unsure.between_marks { middle_m + anywhere_m } else { middle_m }, place as f64]
    }

    /// Middle of the step that changes fastest: cools with `sense` 1, warms with −1.
    fn steepest_m(&mut self, among: Range<usize>, sense: f64, excluded: &[Range<usize>]) -> f64 {
        self.changes.clear();
        self.changes.extend(self.steps.iter().map(|s| sense * s.cooling_c_per_m));
        let free = |i: usize| among.contains(&i) && !excluded.iter().any(|range| range.contains(&i));
        let Some(found) = steepest(&self.changes, free) else { return NONE };
        let fastest = self.changes.get(found.first).copied().unwrap_or_default();
        match (self.steps.get(found.first), self.steps.get(found.last)) {
            (Some(first), Some(last)) if fastest > 0.0 => (first.top_m + last.bottom_m) / 2.0,
            _ => NONE,
        }
    }
}

/// Most that the change may grow from one step to the next.
const MOST_GROWTH: f64 = 50.0;
/// What the mixed layer's end makes of the bow that was drawn. With the most that is drawn, 1.2, the water between two
/// marks bows by up to 1.44 of the growth that the steps show.
const MOST_BOW: f64 = 1.2;
/// By how much more a gradient may bow for each e-fold it grows: the mean over the steeper step, in which the steepest
/// place may lie, understates the growth.
const STEEP_BOW: f64 = 0.35;

/// How many times faster a step changes than the one above it; 1 where it does not change faster, or in another sense.
fn growth(above_c_per_m: f64, step_c_per_m: f64) -> f64 {
    let (above, step) = (above_c_per_m * step_c_per_m.signum(), step_c_per_m.abs());
    if above <= step / MOST_GROWTH { MOST_GROWTH } else { (step / above).max(1.0) }
}

/// Where in a step (0 to 1) the share `part` of its change is reached, if the change grows `growth` times from the top of
/// the step to its bottom at an even rate; `bow` tells how much of that growth there is (0: a straight line).
fn bowed(part: f64, growth: f64, bow: f64) -> f64 {
    let rate = bow * libm::log(growth);
    if rate < 1e-6 { part } else { libm::log1p(part * libm::expm1(rate)) / rate }
}

#[cfg(test)]
mod tests {
    use super::super::draw::MOST_DRAWN_BOW;
    use super::*;

    #[test]
    fn growth_from_step_to_step() {
        assert_eq!(growth(1.0, 3.0), 3.0);
        assert_eq!(growth(-1.0, -3.0), 3.0, "warming likewise");
        assert_eq!(growth(3.0, 1.0), 1.0, "slowing is no growth");
        assert_eq!([growth(0.0, 1.0), growth(-1.0, 1.0), growth(0.02, 1.0)], [50.0; 3]);
        assert!(growth(0.0, 0.0).is_finite());
    }

    #[test]
    fn the_mixed_layer_bows_by_up_to_1_44_of_the_growth_as_told() {
        assert!((MOST_BOW * MOST_DRAWN_BOW - 1.44).abs() < 1e-12);
    }

    #[test]
    fn a_curve_that_grows_evenly_is_late() {
        assert_eq!(bowed(0.3, 4.0, 0.0), 0.3);
        assert_eq!([bowed(0.0, 4.0, 1.0), bowed(0.7, 1.0, 1.0)], [0.0, 0.7]);
        assert!((bowed(1.0, 4.0, 1.0) - 1.0).abs() < 1e-12);
        // e^x, x from 0 to ln 4: half-way in value, 2.5, is at ln 2.5 of ln 4.
        let want = libm::log(2.5) / libm::log(4.0);
        assert!((bowed(0.5, 4.0, 1.0) - want).abs() < 1e-12);
        assert!((bowed(0.5, 2.0, 2.0) - want).abs() < 1e-12);
    }
}
