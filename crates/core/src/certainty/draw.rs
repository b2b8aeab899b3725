//! One trial's water: the profile as it might as well have been.

use super::plan::Plan;
use crate::analysis::{Level, Step};
use crate::random::Random;

/// The profile of a trial, with room for what is computed from it. Written over by every draw.
pub(super) struct Water {
    pub levels: Vec<Level>,
    pub steps: Vec<Step>,
    /// How fast each step changes in the sense sought.
    pub changes: Vec<f64>,
    /// Temperatures of one end of the cast.
    pub end_c: Vec<f64>,
    /// Where between marks the water does what it does.
    pub between: Between,
}

/// What happens between marks in one trial.
#[derive(Clone, Copy, Default)]
pub(super) struct Between {
    /// Where in the step that changes fastest it changes fastest; even between 0 and 1.
    pub middle: f64,
    /// How much the water bows from one mark to the next: not at all (0), as much as fits the steps around (1), or a
    /// little more; even between 0 and [`MOST_DRAWN_BOW`].
    pub bow: f64,
}

/// Most that is drawn for [`Between::bow`]. `seek.rs` says what is made of it.
pub(super) const MOST_DRAWN_BOW: f64 = 1.2;

impl Water {
    /// Room for the trials of a plan.
    pub fn of(plan: &Plan) -> Self {
        Self {
            levels: plan.values.iter().map(|v| v.level).collect(),
            steps: Vec::with_capacity(plan.values.len()),
            changes: Vec::with_capacity(plan.values.len()),
            end_c: Vec::new(),
            between: Between::default(),
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
        self.between = Between { middle: random.uniform(), bow: MOST_DRAWN_BOW * random.uniform() };
        let swell = swell(plan.pairs, random.normal());
        let scale = stretch * libm::cos(angle_deg.to_radians());
        self.steps.clear();
        let mut above: Option<(f64, f64)> = None;
        for (level, value) in self.levels.iter_mut().zip(&plan.values) {
            let noise_c = swell * value.noise_sd_c * random.normal() + random.within(value.rounding_half_c);
            let depth_m = value.level.depth_m * scale + value.mark_sd_m * random.normal();
            let above_m = above.map_or(0.0, |(above_m, _)| above_m);
            level.temp_c = value.level.temp_c + offset_c + noise_c;
            level.depth_m = depth_m.max(above_m + value.least_m);
            level.density = plan.method.density.kg_m3(level.temp_c);
            if let Some((above_m, above_c)) = above {
                let height_m = level.depth_m - above_m;
                self.steps.push(Step {
                    top_m: above_m,
                    bottom_m: level.depth_m,
                    cooling_c_per_m: (above_c - level.temp_c) / height_m,
                    u_c_per_m: value.pair_sd_c / height_m,
                    densing_kg_m3_per_m: 0.0, // nothing sought asks for it
                    in_span: false,
                    in_main_layer: false,
                    in_warm_layer_today: false,
                });
            }
            above = Some((level.depth_m, level.temp_c));
        }
    }
}

/// By how much more or less noise there may be than s says, which was found from `pairs` pairs: √(n/χ²), with χ² of n
/// degrees of freedom made of a normal number by the cube-root rule. So that over all trials each reading has the t
/// distribution that JCGM 101 6.4.9 asks for. 1 where s is a convention.
///
/// Source: [`WilsonHilferty1931`](crate::bibliography::WilsonHilferty1931).
fn swell(pairs: f64, normal: f64) -> f64 {
    if pairs <= 0.0 {
        return 1.0;
    }
    let part = 2.0 / (9.0 * pairs);
    let root = (1.0 - part + normal * part.sqrt()).max(0.3);
    1.0 / (root * root * root).sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::random::normal_quantile;

    #[test]
    fn few_pairs_leave_s_unsure() {
        // √(n/χ²) by scipy 1.17.1, chi2.ppf: n, probability of χ², value.
        for (n, p, want, tolerance) in [
            (5.0, 0.5, 1.071_933, 0.003),
            (17.0, 0.5, 1.020_053, 0.001),
            (17.0, 0.025, 1.499_144, 0.005),
            (17.0, 0.975, 0.750_388, 0.003),
            (34.0, 0.025, 1.310_202, 0.003),
        ] {
            let got = swell(n, normal_quantile(p));
            assert!((got - want).abs() < tolerance, "{n} {p}: {got}");
        }
        assert_eq!(swell(0.0, 2.0), 1.0, "a convention is not unsure");
        assert!(swell(5.0, -6.4) < 7.0);
    }
}
