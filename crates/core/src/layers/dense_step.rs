//! Mixed layer by the first step that gains density fast.

use crate::analysis::Step;
use crate::slack::at_least;

/// Density gained per metre that ends the mixed layer, kg m⁻³ per metre: the density form of the rule of
/// [`first_steep`](super::first_steep).
pub const DENSE_KG_M3_PER_M: f64 = 0.1;

/// Top \[m\] of the first step that gains at least `dense_kg_m3_per_m` \[kg m⁻³ per m\]; `None` without one.
///
/// In warm water a third of a degree per metre is enough, near 4 °C no step is. A convention of ours, after
/// [`ElaSheet`](crate::bibliography::ElaSheet).
///
/// ```
/// use layercast_core::{Level, layers::{dense_step::{DENSE_KG_M3_PER_M, first_dense_m}, steps::steps}};
/// let levels = [22.0, 21.9, 21.5, 20.0].iter().enumerate();
/// let levels: Vec<Level> = levels.map(|(i, t)| Level::bare(i as f64, *t, 0.0)).collect();
/// assert_eq!(first_dense_m(&steps(&levels), DENSE_KG_M3_PER_M), Some(2.0)); // 0.09, then 0.32 kg m⁻³ per m
/// ```
pub fn first_dense_m(steps: &[Step], dense_kg_m3_per_m: f64) -> Option<f64> {
    let dense = |s: &&Step| at_least(s.densing_kg_m3_per_m, dense_kg_m3_per_m);
    steps.iter().find(dense).map(|s| s.top_m)
}

#[cfg(test)]
mod tests {
    use super::super::steps::steps;
    use super::*;
    use crate::analysis::Level;

    #[track_caller]
    fn check(temps_c: &[f64], limit: f64, want_m: Option<f64>) {
        let levels: Vec<Level> =
            temps_c.iter().enumerate().map(|(i, t)| Level::bare(i as f64 * 0.5, *t, 0.0)).collect();
        assert_eq!(first_dense_m(&steps(&levels), limit), want_m);
    }

    #[test]
    fn the_first_wins_though_a_later_one_is_denser() {
        check(&[25.0, 25.0, 24.7, 15.0], 0.1, Some(0.5));
    }

    #[test]
    fn a_degree_per_metre_is_too_little_in_cold_water() {
        check(&[6.0, 5.5, 5.0, 4.5], 0.1, None);
        check(&[6.0, 5.5, 5.0, 4.5], 0.02, Some(0.0));
        check(&[], 0.1, None);
    }

    #[test]
    fn exactly_the_limit_is_enough() {
        let step = steps(&[Level::bare(0.0, 20.0, 0.0), Level::bare(1.0, 19.0, 0.0)]);
        let limit = step[0].densing_kg_m3_per_m;
        assert_eq!(first_dense_m(&step, limit), Some(0.0));
        assert_eq!(first_dense_m(&step, limit + 1e-6), None);
    }
}
