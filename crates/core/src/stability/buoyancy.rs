//! Buoyancy frequency: how hard layered water springs back when it is moved up or down.

use crate::layers::densest::GRAVITY;
use crate::slack::SLACK;

/// Buoyancy frequency squared \[s⁻²\] between two waters of `upper` and `lower` density \[kg m⁻³\] that lie `height_m`
/// \[m\] apart: N² = (g/ρ̄)(ρ_lower − ρ_upper)/height. Negative where the heavier lies above.
///
/// `None` where the height or a density is not more than nothing.
///
/// Source: [`BruntVaisala`](crate::bibliography::BruntVaisala).
///
/// ```
/// use layercast_core::{stability::buoyancy::n2_per_s2, water::density::density_kg_m3};
/// let n2 = n2_per_s2(density_kg_m3(20.0), density_kg_m3(19.0), 0.5).unwrap();
/// assert!((n2 - 3.953e-3).abs() < 1e-6);
/// ```
pub fn n2_per_s2(upper: f64, lower: f64, height_m: f64) -> Option<f64> {
    let n2 = GRAVITY / ((upper + lower) / 2.0) * (lower - upper) / height_m;
    (height_m > 0.0 && upper > 0.0 && lower > 0.0 && n2.is_finite()).then_some(n2)
}

/// Period \[s\] of one swing, 2π/N; `None` where N² is not above 10⁻⁹ s⁻²: water that does not spring back, or takes days
/// to.
///
/// ```
/// use layercast_core::stability::buoyancy::period_s;
/// assert!((period_s(3.952709e-3).unwrap() - 99.938).abs() < 0.001);
/// assert_eq!(period_s(-1e-3), None);
/// ```
pub fn period_s(n2_per_s2: f64) -> Option<f64> {
    (n2_per_s2 > SLACK).then(|| 2.0 * std::f64::consts::PI / n2_per_s2.sqrt())
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn heavier_water_above_is_negative_and_has_no_period() {
        let n2 = n2_per_s2(999.0, 998.0, 1.0).unwrap();
        assert!((n2 + 9.80665 / 998.5).abs() < 1e-12);
        assert_eq!((period_s(n2), period_s(0.0), period_s(f64::NAN)), (None, None, None));
        assert!((n2_per_s2(998.0, 999.0, 0.5).unwrap() - 2.0 * 9.80665 / 998.5).abs() < 1e-12);
    }

    #[test]
    fn ten_and_a_half_radians_a_second() {
        assert!((period_s(100.0).unwrap() - 0.628_318_531).abs() < 1e-9);
        assert!((period_s(0.25).unwrap() - 12.566_370_614).abs() < 1e-9);
    }

    #[test]
    fn no_height_or_no_density_has_none() {
        assert_eq!(n2_per_s2(998.0, 999.0, 0.0), None);
        assert_eq!(n2_per_s2(998.0, 999.0, -1.0), None);
        assert_eq!(n2_per_s2(0.0, 999.0, 1.0), None);
        assert_eq!(n2_per_s2(998.0, 0.0, 1.0), None);
        assert_eq!(n2_per_s2(f64::NAN, 999.0, 1.0), None);
        assert_eq!(n2_per_s2(998.0, 999.0, f64::NAN), None);
        assert_eq!(n2_per_s2(998.0, 999.0, 5e-324), None);
    }
}
