//! The depths of one trial, by the rules of the analysis.

use super::draw::Water;
use super::plan::{Depth, Plan};
use crate::cast::station::median;
use crate::layers::densest::densest;
use crate::layers::mixed_layer::{SEASON_REFERENCE_M, temperature_step_depth_m};
use crate::layers::runs::{Layers, Run, layers, runs, surviving};
use crate::layers::state::{INVERSE_C, INVERSE_KG_M3, MIXED_KG_M3};
use crate::layers::steepest::steepest;
use crate::slack::{at_least, at_most, more_than};
use crate::water::density::density_kg_m3;
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
        for (depth, _) in &plan.sought {
            drawn.push(self.depth_m(plan, *depth, kind, &layers));
        }
    }

    fn kind(&mut self, plan: &Plan) -> Kind {
        let top_c = self.end_c(0..plan.ends.0);
        let bottom_c = self.end_c(plan.ends.1..plan.values.len());
        let gain = density_kg_m3(bottom_c) - density_kg_m3(top_c);
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
                let found_m =
                    || temperature_step_depth_m(&self.levels, reference_m, plan.method.mixed_drop_c);
                Some(()).filter(|()| layered).and_then(|()| found_m()).unwrap_or(BEYOND)
            }
            Depth::MetalimnionTop => main.map_or(NONE, |run| run.top_m),
            Depth::MetalimnionBottom => main.map_or(NONE, |run| self.bottom_m(run)),
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

    /// Lower edge of a run; where it touches the last reading the deep layer was not reached.
    fn bottom_m(&self, run: &Run) -> f64 {
        if run.steps.end >= self.steps.len() { BEYOND } else { run.bottom_m }
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
