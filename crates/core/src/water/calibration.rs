//! Calibration of a thermometer: one point in melting ice, a second beside a reference thermometer.

use crate::slack::at_least;

/// Two points closer than this, °C, say nothing of the scale: a convention of ours.
pub const LEAST_APART_C: f64 = 5.0;

/// Temperature \[°C\] of a probe that reads `ice_c` \[°C\] in stirred melting ice of clean water, which is 0.00 °C.
///
/// Source for the practice: [`UsgsField`](crate::bibliography::UsgsField).
///
/// ```
/// assert_eq!(layercast_core::water::calibration::offset_c(20.5, 0.5), 20.0);
/// ```
pub fn offset_c(raw_c: f64, ice_c: f64) -> f64 {
    raw_c - ice_c
}

/// Temperature \[°C\] of a probe that reads `ice_c` in melting ice and `read_c` where a reference thermometer reads
/// `true_c`: (raw − ice)·true/(read − ice).
///
/// `None` when the two points lie closer than 5 °C (take the [`offset_c`]) or a number is not finite.
///
/// ```
/// use layercast_core::water::calibration::two_point_c;
/// assert_eq!(two_point_c(12.5, 0.0, 20.0, 20.0), Some(12.5));
/// assert_eq!(two_point_c(12.5, 0.0, 4.0, 4.0), None);
/// ```
pub fn two_point_c(raw_c: f64, ice_c: f64, read_c: f64, true_c: f64) -> Option<f64> {
    let apart_c = read_c - ice_c;
    let corrected_c = (raw_c - ice_c) * true_c / apart_c;
    (at_least(apart_c.abs(), LEAST_APART_C) && apart_c.is_finite() && corrected_c.is_finite())
        .then_some(corrected_c)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn five_degrees_are_far_enough() {
        assert_eq!(two_point_c(3.0, 1.0, 6.0, 5.0), Some(2.0));
        assert_eq!(two_point_c(3.0, 1.0, 5.9, 5.0), None);
        assert_eq!(two_point_c(3.0, 1.0, -4.0, -5.0), Some(2.0));
    }

    #[test]
    fn no_number_in_no_number_out() {
        assert_eq!(two_point_c(f64::NAN, 0.0, 20.0, 20.0), None);
        assert_eq!(two_point_c(20.0, 0.0, f64::INFINITY, 20.0), None);
        assert_eq!(two_point_c(1e308, 0.0, 20.0, 1e308), None);
    }
}
