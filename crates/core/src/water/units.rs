//! Units other than metres and °C, converted exactly.

/// Metres in one foot, exactly ([`Foot1959`](crate::bibliography::Foot1959)).
pub const METRES_PER_FOOT: f64 = 0.3048;
/// Metres in one inch, exactly ([`Foot1959`](crate::bibliography::Foot1959)).
pub const METRES_PER_INCH: f64 = 0.0254;

/// °C from °F: (F − 32)/1.8. Source: [`UsgsField`](crate::bibliography::UsgsField).
///
/// ```
/// assert_eq!(layercast_core::water::units::celsius_from_fahrenheit(68.0), 20.0);
/// ```
pub fn celsius_from_fahrenheit(temp_f: f64) -> f64 {
    (temp_f - 32.0) * 5.0 / 9.0
}

/// °F from °C: 1.8 C + 32. Source: [`UsgsField`](crate::bibliography::UsgsField).
pub fn fahrenheit_from_celsius(temp_c: f64) -> f64 {
    temp_c * 9.0 / 5.0 + 32.0
}

/// A *difference* in °C from a difference in °F: no 32 in it.
///
/// ```
/// assert_eq!(layercast_core::water::units::celsius_difference_from_fahrenheit(9.0), 5.0);
/// ```
pub fn celsius_difference_from_fahrenheit(difference_f: f64) -> f64 {
    difference_f * 5.0 / 9.0
}

/// Metres from feet. Source: [`Foot1959`](crate::bibliography::Foot1959).
///
/// ```
/// assert_eq!(layercast_core::water::units::metres_from_feet(10.0), 3.048);
/// ```
pub fn metres_from_feet(depth_ft: f64) -> f64 {
    depth_ft * METRES_PER_FOOT
}

/// Metres from inches. Source: [`Foot1959`](crate::bibliography::Foot1959).
pub fn metres_from_inches(depth_in: f64) -> f64 {
    depth_in * METRES_PER_INCH
}

/// Metres from centimetres (divided, so that 150 cm is exactly 1.5 m).
pub fn metres_from_centimetres(depth_cm: f64) -> f64 {
    depth_cm / 100.0
}

/// °C per metre from °F per foot.
pub fn celsius_per_metre_from_fahrenheit_per_foot(gradient_f_per_ft: f64) -> f64 {
    celsius_difference_from_fahrenheit(gradient_f_per_ft) / METRES_PER_FOOT
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn there_and_back_is_the_same_temperature() {
        for tenth in -400..1200 {
            let temp_c = f64::from(tenth) / 10.0;
            let back_c = celsius_from_fahrenheit(fahrenheit_from_celsius(temp_c));
            assert!((back_c - temp_c).abs() < 1e-12, "{temp_c} came back as {back_c}");
        }
    }

    #[test]
    fn whole_centimetres_are_the_metres_a_person_would_write() {
        assert_eq!(metres_from_centimetres(150.0), 1.5);
        assert_eq!(metres_from_centimetres(35.0), 0.35);
        assert_eq!(metres_from_inches(4.0), 0.1016);
    }
}
