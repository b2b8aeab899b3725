//! Density by Tanaka and others: the class's own formula.

use super::{HIGHEST_C, LOWEST_C};

/// Temperature of greatest density by this formula, °C: the formula's own constant.
pub const GREATEST_C: f64 = 3.983035;

/// Density of fresh water \[kg m⁻³\] at `temp_c` \[°C, ITS-90\] and one atmosphere.
///
/// `rho = a5 (1 − (t + a1)² (t + a2) / (a3 (t + a4)))`, stated for 0–40 °C; within 0.0007 kg m⁻³ of IAPWS-95 up to
/// 35 °C. Greatest at 3.983035 °C, 999.974950 kg m⁻³. Salt, dissolved air and the weight of the water above are left
/// out: they hardly change a *difference* between two depths of one pond.
///
/// Outside −0.5..40 °C the nearer end is used (the formula has a pole at −69 °C). NaN gives NaN.
///
/// Source: [`Tanaka2001`](crate::bibliography::Tanaka2001).
///
/// ```
/// use layercast_core::water::density::density_kg_m3;
/// assert!((density_kg_m3(20.0) - 998.2067).abs() < 1e-4);
/// assert!(density_kg_m3(4.0) > density_kg_m3(5.0) && density_kg_m3(4.0) > density_kg_m3(3.0));
/// ```
pub fn density_kg_m3(temp_c: f64) -> f64 {
    const A2: f64 = 301.797;
    const A3: f64 = 522_528.9;
    const A4: f64 = 69.348_81;
    const A5: f64 = 999.974_950;
    let t = temp_c.clamp(LOWEST_C, HIGHEST_C);
    A5 * (1.0 - (t - GREATEST_C) * (t - GREATEST_C) * (t + A2) / (A3 * (t + A4)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(temp_c: f64, want: f64) {
        assert!((density_kg_m3(temp_c) - want).abs() < 1e-9, "{} at {temp_c} °C", density_kg_m3(temp_c));
    }

    #[test]
    fn greatest_where_the_authors_put_it() {
        check(3.983035, 999.974950);
        assert!(density_kg_m3(3.98) < 999.974950 && density_kg_m3(3.99) < 999.974950);
    }

    #[test]
    fn beyond_lake_water_the_end_of_the_range_is_used() {
        check(177.0, density_kg_m3(40.0));
        check(-69.34881, density_kg_m3(-0.5));
        check(f64::INFINITY, density_kg_m3(40.0));
        assert!(density_kg_m3(f64::NAN).is_nan());
    }

    #[test]
    fn a_degree_weighs_more_when_warm() {
        let warm = density_kg_m3(24.0) - density_kg_m3(25.0);
        let cold = density_kg_m3(4.0) - density_kg_m3(5.0);
        assert!((warm - 0.252).abs() < 0.001 && (cold - 0.008).abs() < 0.001, "{warm} {cold}");
    }
}
