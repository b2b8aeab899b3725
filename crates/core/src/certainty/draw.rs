//! One trial's water: the profile as it might as well have been.

use super::plan::Plan;
use crate::analysis::{Level, Step};
use crate::layers::steps::steps_into;
use crate::random::Random;
use crate::water::density::density_kg_m3;

/// The profile of a trial, with room for what is computed from it. Written over by every draw.
pub(super) struct Water {
    pub levels: Vec<Level>,
    pub steps: Vec<Step>,
    /// How fast each step changes in the sense sought.
    pub changes: Vec<f64>,
    /// Temperatures of one end of the cast.
    pub end_c: Vec<f64>,
}

impl Water {
    /// Room for the trials of a plan.
    pub fn of(plan: &Plan) -> Self {
        Self {
            levels: plan.values.iter().map(|v| v.level).collect(),
            steps: Vec::with_capacity(plan.values.len()),
            changes: Vec::with_capacity(plan.values.len()),
            end_c: Vec::new(),
        }
    }

    /// Draws the water of a trial: first what all readings share (offset, stretch, angle), then for each value noise,
    /// rounding and mark. As many numbers are drawn whatever is unsure, so that two plans of the same marks meet the same
    /// chances.
    ///
    /// Marks stay in order: none comes closer to the one above than a quarter of their distance, and none rises above
    /// the water.
    pub fn draw(&mut self, plan: &Plan, seed: u64, trial: u64) {
        let mut random = Random::seeded(seed, trial);
        let offset_c = random.within(plan.unsure.offset_half_c);
        let stretch = 1.0 + plan.unsure.stretch_sd * random.normal();
        let angle_deg = plan.unsure.angle_half_deg * random.uniform();
        let scale = stretch * libm::cos(angle_deg.to_radians());
        let mut above_m = 0.0;
        for (level, value) in self.levels.iter_mut().zip(&plan.values) {
            let noise_c = value.noise_sd_c * random.normal() + random.within(value.rounding_half_c);
            let depth_m = value.level.depth_m * scale + value.mark_sd_m * random.normal();
            level.temp_c = value.level.temp_c + offset_c + noise_c;
            level.depth_m = depth_m.max(above_m + value.least_m);
            level.density = density_kg_m3(level.temp_c);
            above_m = level.depth_m;
        }
        steps_into(&self.levels, &mut self.steps);
    }
}
