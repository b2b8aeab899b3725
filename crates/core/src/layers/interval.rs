//! How sure the middle of an interval is.

/// Half of an interval \[m\]: the depth lies within this of its middle. NaN gives NaN.
///
/// ```
/// assert_eq!(layercast_core::layers::interval::half_width_m(0.5), 0.25);
/// ```
pub fn half_width_m(interval_m: f64) -> f64 {
    interval_m / 2.0
}

/// Standard uncertainty \[m\] of a depth known only to lie in an interval: its width / √12 (rectangular).
///
/// Source: [`Gum`](crate::bibliography::Gum).
///
/// ```
/// let u_m = layercast_core::layers::interval::standard_uncertainty_m(0.5);
/// assert!((u_m - 0.1443).abs() < 1e-4);
/// ```
pub fn standard_uncertainty_m(interval_m: f64) -> f64 {
    interval_m / 12.0_f64.sqrt()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn of_one_metre() {
        assert_eq!(half_width_m(1.0), 0.5);
        assert!((standard_uncertainty_m(1.0) - 0.288_675_134_594_812_9).abs() < 1e-15);
    }
}
