//! Whether sun can have made the difference: heat gained between two casts, over the time between them.

use crate::slack::{at_most, more_than};
use crate::stability::whole::HEAT_J_M3_K;

/// Sun at its strongest on a level surface, about, W/m².
///
/// Source: [`StrongSun`](crate::bibliography::StrongSun) (from memory).
pub const SUN_AT_MOST_W_M2: f64 = 1_000.0;

/// Whether sun can have made it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Sun {
    /// Not more than strong sun brings.
    Could,
    /// More than sun can bring, even with the readings' uncertainty (two standard deviations) granted.
    Cannot,
    /// Too close to what sun can bring, for readings as uncertain as these.
    Unsure,
    /// The later cast holds less heat: that is no work of the sun.
    Cooled,
}

/// Heat that the later cast holds more than the earlier, per square metre of column, over the depths both share.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Heat {
    /// Heat gained from the earlier cast to the later, J/m².
    pub gained_j_m2: f64,
    /// Its standard uncertainty, J/m², from the readings.
    pub u_j_m2: f64,
    /// The same for each second between, W/m².
    pub power_w_m2: f64,
    /// Its standard uncertainty, W/m².
    pub u_w_m2: f64,
    /// Whether sun can have done it.
    pub sun: Sun,
}

/// Heat behind a temperature difference, ∫ρc ΔT dz \[J/m²\], straight between depths.
///
/// * `differences`: depth \[m\], increasing, and difference \[°C\] there
///
/// Fewer than two: 0. Nothing is guessed above the first depth or below the last.
///
/// ```
/// use layercast_core::compare::{extra_heat_j_m2, power_w_m2};
/// let heat_j_m2 = extra_heat_j_m2(&[(0.0, 0.3), (8.0, 0.3)]);
/// assert_eq!(power_w_m2(heat_j_m2, 60.0).map(f64::round), Some(2787.0));
/// ```
pub fn extra_heat_j_m2(differences: &[(f64, f64)]) -> f64 {
    let area = |pair: &[(f64, f64)]| match pair {
        [p, q] => (q.0 - p.0) * (p.1 + q.1) / 2.0,
        _ => 0.0,
    };
    HEAT_J_M3_K * differences.windows(2).map(area).sum::<f64>()
}

/// Heat \[J/m²\] over minutes as W/m²; `None` for less than a second, or what is no number.
pub fn power_w_m2(heat_j_m2: f64, minutes: f64) -> Option<f64> {
    (minutes.is_finite() && minutes >= 1.0 / 60.0).then(|| heat_j_m2 / (60.0 * minutes))
}

/// Heat of a warmed top \[J/m²\] between two depths: `warmer_c` \[°C\] at the surface, less by e every `fade_m` \[m\].
///
/// ```
/// use layercast_core::compare::{power_w_m2, warm_top_heat_j_m2};
/// let heat_j_m2 = warm_top_heat_j_m2(0.6, 0.8, 0.0, 8.0);
/// assert_eq!(power_w_m2(heat_j_m2, 120.0).map(f64::round), Some(279.0));
/// ```
pub fn warm_top_heat_j_m2(warmer_c: f64, fade_m: f64, from_m: f64, to_m: f64) -> f64 {
    let left = |depth_m: f64| libm::exp(-depth_m / fade_m);
    HEAT_J_M3_K * warmer_c * fade_m * (left(from_m) - left(to_m))
}

/// The energy check of a heat difference, b less a.
///
/// * `minutes_apart`: from a to b; negative when b was first
///
/// `None` without a time between.
pub(super) fn heat(more_in_b_j_m2: f64, u_j_m2: f64, minutes_apart: Option<f64>) -> Option<Heat> {
    let minutes = minutes_apart?;
    let gained_j_m2 = if minutes < 0.0 { -more_in_b_j_m2 } else { more_in_b_j_m2 };
    let power = power_w_m2(gained_j_m2, minutes.abs())?;
    let u = power_w_m2(u_j_m2, minutes.abs())?;
    let sun = if more_than(power - 2.0 * u, SUN_AT_MOST_W_M2) {
        Sun::Cannot
    } else if power < 0.0 && more_than(-power, 2.0 * u) {
        Sun::Cooled
    } else if at_most(power, SUN_AT_MOST_W_M2) {
        Sun::Could
    } else {
        Sun::Unsure
    };
    Some(Heat { gained_j_m2, u_j_m2, power_w_m2: power, u_w_m2: u, sun })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_sum_by_hand() {
        // (1 + 0.5)/2 · 2 m + (0.5 + 0)/2 · 1 m = 1.75 °C m.
        assert!((extra_heat_j_m2(&[(1.0, 1.0), (3.0, 0.5), (4.0, 0.0)]) - 1.75 * 4.18e6).abs() < 1e-6);
        assert_eq!(extra_heat_j_m2(&[(1.0, 1.0)]), 0.0);
        assert_eq!(power_w_m2(3_600.0, 1.0), Some(60.0));
        assert_eq!(power_w_m2(3.0, 1.0 / 60.0), Some(3.0));
        for minutes in [0.0, 0.016, -5.0, f64::NAN, f64::INFINITY, 5e-324] {
            assert_eq!(power_w_m2(1.0, minutes), None);
        }
    }

    #[test]
    fn a_warmed_top_has_the_heat_of_its_curve() {
        let by_steps: Vec<(f64, f64)> =
            (0..=8_000).map(|i| f64::from(i) * 0.001).map(|z| (z, 0.6 * libm::exp(-z / 0.8))).collect();
        let exact = warm_top_heat_j_m2(0.6, 0.8, 0.0, 8.0);
        assert!((extra_heat_j_m2(&by_steps) / exact - 1.0).abs() < 1e-6);
        assert!(warm_top_heat_j_m2(0.6, 0.8, 1.0, 8.0) < exact / 3.0);
    }

    #[track_caller]
    fn check(power_w_m2: f64, u_w_m2: f64, want: Sun) {
        let found = heat(power_w_m2 * 3_600.0, u_w_m2 * 3_600.0, Some(60.0)).unwrap();
        assert!((found.power_w_m2 - power_w_m2).abs() < 1e-9 && (found.u_w_m2 - u_w_m2).abs() < 1e-9);
        assert_eq!(found.sun, want);
    }

    #[test]
    fn what_sun_can_do() {
        check(279.0, 30.0, Sun::Could);
        check(1_000.0, 30.0, Sun::Could);
        check(1_050.0, 30.0, Sun::Unsure);
        check(1_060.0, 30.0, Sun::Unsure);
        check(1_061.0, 30.0, Sun::Cannot);
        check(2_787.0, 30.0, Sun::Cannot);
        check(-59.0, 30.0, Sun::Could);
        check(-61.0, 30.0, Sun::Cooled);
    }

    #[test]
    fn the_later_cast_is_the_one_that_was_warmed() {
        let (after, before) =
            (heat(7.2e6, 1.0, Some(60.0)).unwrap(), heat(-7.2e6, 1.0, Some(-60.0)).unwrap());
        assert_eq!(after, before);
        assert_eq!((after.gained_j_m2, after.power_w_m2), (7.2e6, 2_000.0));
        assert_eq!(heat(1.0, 1.0, None), None);
        assert_eq!(heat(1.0, 1.0, Some(0.0)), None);
    }
}
