//! Relative thermal resistance to mixing: one step compared with the step from 5 to 4 °C.

/// The unit, kg m⁻³: 8·10⁻⁶ g cm⁻³, the difference between water at 4 and at 5 °C in the textbooks (by Tanaka's formula it
/// is 0.0081648, so the rounded unit reads 2 % high).
pub const UNIT_KG_M3: f64 = 0.008;

/// Relative thermal resistance to mixing of a pair of depths, a pure number: their difference in density \[kg m⁻³\] over
/// 0.008. Negative where the heavier lies above; NaN for NaN.
///
/// A value belongs to its step: twice the step is twice the resistance. Always say the step with it.
///
/// Source: [`Vallentyne1957`](crate::bibliography::Vallentyne1957).
///
/// ```
/// use layercast_core::{stability::resistance::resistance, water::density::density_kg_m3};
/// let got = resistance(density_kg_m3(20.0), density_kg_m3(19.0));
/// assert!((got - 25.149).abs() < 0.001);
/// ```
pub fn resistance(upper: f64, lower: f64) -> f64 {
    (lower - upper) / UNIT_KG_M3
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn it_counts_eightfold_thousandths_and_its_sign_is_the_order() {
        assert!((resistance(998.0, 998.016) - 2.0).abs() < 1e-9);
        assert!((resistance(998.016, 998.0) + 2.0).abs() < 1e-9);
        assert_eq!(resistance(999.0, 999.0), 0.0);
    }
}
