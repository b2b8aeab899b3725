//! Thermocline by density: the step of the strongest layering.

use super::steepest::{Steepest, steepest};
use crate::analysis::Level;
use std::ops::Range;

/// Standard gravity, m s⁻².
pub const GRAVITY: f64 = 9.80665;

/// The densest step and its buoyancy frequency squared.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Densest {
    /// Middle of the step, or of a run of equal ones, metres.
    pub value_m: f64,
    /// N² there, s⁻².
    pub n2_per_s2: f64,
}

/// The step where density gains most: largest N² = (g/ρ̄)·dρ/dz, sought among the places of `sought`.
///
/// At or above the thermocline by temperature, because warm water swells more per degree; the only one that works under
/// ice. `None` when density gains nowhere.
///
/// Source: [`BruntVaisala`](crate::bibliography::BruntVaisala).
pub fn densest(levels: &[Level], sought: Range<usize>) -> Option<Densest> {
    let n2: Vec<f64> = (levels.iter().zip(levels.iter().skip(1)))
        .map(|(a, b)| {
            let mean = (a.density + b.density) / 2.0;
            GRAVITY / mean * (b.density - a.density) / (b.depth_m - a.depth_m)
        })
        .collect();
    let Steepest { first, last, .. } = steepest(&n2, |i| sought.contains(&i))?;
    let n2_per_s2 = *n2.get(first)?;
    let value_m = (levels.get(first)?.depth_m + levels.get(last + 1)?.depth_m) / 2.0;
    (n2_per_s2 > 1e-12).then_some(Densest { value_m, n2_per_s2 })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(temps_c: &[f64], want_m: Option<f64>) {
        let levels: Vec<Level> =
            temps_c.iter().enumerate().map(|(i, t)| Level::bare(i as f64 * 0.5, *t, 0.0)).collect();
        assert_eq!(densest(&levels, 0..levels.len()).map(|d| d.value_m), want_m);
    }

    #[test]
    fn of_two_equal_drops_the_warmer_is_denser() {
        check(&[24.0, 22.0, 22.0, 10.0 + 2.0, 10.0], Some(1.25));
        check(&[24.0, 22.0, 22.0, 20.0], Some(0.25));
    }

    #[test]
    fn under_ice_water_gets_denser_as_it_warms() {
        check(&[0.2, 0.9, 1.7, 2.4], Some(0.25));
    }

    #[test]
    fn even_or_overturned_water_has_none() {
        check(&[10.0, 10.0], None);
        check(&[5.0, 8.0], None);
        check(&[10.0], None);
    }

    #[test]
    fn one_degree_in_half_a_metre_of_warm_water() {
        let levels = [Level::bare(0.0, 20.0, 0.0), Level::bare(0.5, 19.0, 0.0)];
        let n2 = densest(&levels, 0..1).unwrap().n2_per_s2;
        assert!((n2 - 3.953e-3).abs() < 1e-6, "{n2}");
    }
}
