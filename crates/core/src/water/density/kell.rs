//! Density by Kell: one quotient of polynomials up to boiling.

/// Density of fresh water \[kg m⁻³\] at `t68_c` \[°C, IPTS-68\] and one atmosphere.
///
/// Stated for 0–150 °C; within 0.0044 kg m⁻³ of IAPWS-95 up to 35 °C, most of it constant (its maximum is 999.972).
/// The denominator is 16.879850e-3; a reprint has two digits of it transposed, which is 0.39 kg m⁻³ off at 35 °C.
///
/// Outside −0.5..150 °C the nearer end is used. NaN gives NaN.
///
/// Source: [`Kell1975`](crate::bibliography::Kell1975).
///
/// ```
/// assert!((layercast_core::water::density::kell_kg_m3(25.0) - 997.044_895).abs() < 1e-6);
/// ```
pub fn kell_kg_m3(t68_c: f64) -> f64 {
    let t = t68_c.clamp(super::LOWEST_C, 150.0);
    let above = 999.83952
        + t * (16.945176
            + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 - t * 280.54253e-12))));
    above / (1.0 + 16.879850e-3 * t)
}

#[cfg(test)]
mod tests {
    use super::kell_kg_m3;

    #[test]
    fn ends_of_the_range() {
        assert_eq!(kell_kg_m3(-40.0), kell_kg_m3(-0.5));
        assert_eq!(kell_kg_m3(f64::INFINITY), kell_kg_m3(150.0));
        assert!(kell_kg_m3(150.0) < kell_kg_m3(149.0) && kell_kg_m3(-0.5) < kell_kg_m3(0.0));
        assert!(kell_kg_m3(f64::NAN).is_nan());
    }
}
