//! Density by the International Equation of State of Seawater, EOS-80, at the surface.

/// The saltiest water it is stated for, practical salinity.
pub const SALTIEST: f64 = 42.0;

/// Density \[kg m⁻³\] at `t68_c` \[°C, IPTS-68\], `salinity` \[practical salinity\] and one atmosphere.
///
/// Stated for −2..40 °C and salinity 0..42; with no salt within 0.0019 kg m⁻³ of IAPWS-95 up to 35 °C, with salt up to
/// 10 within 0.0035 kg m⁻³ of the Gibbs function at reference salinity. Inland salts are not sea salt: with a salinity
/// from conductivity the result is approximate.
///
/// Outside these ranges the nearer end is used; a salinity that is no number counts as none. A temperature that is no
/// number gives NaN.
///
/// Source: [`Unesco1983`](crate::bibliography::Unesco1983).
///
/// ```
/// assert!((layercast_core::water::density::eos80_kg_m3(25.0, 35.0) - 1023.343_06).abs() < 1e-5);
/// ```
pub fn eos80_kg_m3(t68_c: f64, salinity: f64) -> f64 {
    let t = t68_c.clamp(-2.0, 40.01);
    let s = super::salt_within(salinity, SALTIEST);
    let fresh = 999.842594
        + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4 + t * (-1.120083e-6 + t * 6.536332e-9))));
    let a = 8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
    let b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
    fresh + s * (a + b * s.sqrt() + 4.8314e-4 * s)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ends_of_the_ranges() {
        assert_eq!(eos80_kg_m3(-9.0, 1.0), eos80_kg_m3(-2.0, 1.0));
        assert_eq!(eos80_kg_m3(1e308, 1.0), eos80_kg_m3(40.01, 1.0));
        assert_eq!(eos80_kg_m3(10.0, -3.0), eos80_kg_m3(10.0, 0.0));
        assert_eq!(eos80_kg_m3(10.0, f64::NAN), eos80_kg_m3(10.0, 0.0));
        assert_eq!(eos80_kg_m3(10.0, 1e308), eos80_kg_m3(10.0, 42.0));
        assert!(eos80_kg_m3(f64::NAN, 0.0).is_nan());
        // 40 °C of 1990 is 40.0096 of 1968: the end of the other formulas is still inside.
        assert!(eos80_kg_m3(40.0096, 0.0) < eos80_kg_m3(40.0, 0.0));
    }
}
