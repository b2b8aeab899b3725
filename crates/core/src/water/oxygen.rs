//! Oxygen: how much of it water in contact with moist air takes up, and per cent of that.
//!
//! Settle an oxygen probe to ±0.2 mg/L, at least 60 s ([`UsgsField`](crate::bibliography::UsgsField)).

use std::ops::RangeInclusive;

/// Temperatures the formula is stated for, °C.
pub const STATED_C: RangeInclusive<f64> = 0.0..=40.0;
/// Salinities it is stated for, practical salinity.
pub const STATED_SALINITY: RangeInclusive<f64> = 0.0..=40.0;
/// Pressures of the air above a lake, standard atmospheres.
pub const LAKE_ATM: RangeInclusive<f64> = 0.4..=1.2;
/// Altitudes of lakes, metres above the sea.
pub const LAKE_ALTITUDE_M: RangeInclusive<f64> = -500.0..=7000.0;
/// Water of −0.5..0 °C is water at zero read by a probe a little off.
const PROBE_OFF_C: RangeInclusive<f64> = super::density::LOWEST_C..=0.0;

/// Oxygen \[mg/L\] of water in balance with moist air, 100 %.
///
/// * `temp_c`: of the water \[°C\], 0–40 (−0.5..0 is taken as 0)
/// * `salinity`: practical salinity, 0–40
/// * `pressure_atm`: of the air at the lake, not reduced to sea level \[standard atmospheres\], 0.4–1.2; see
///   [`pressure_atm`]
///
/// `None` outside these. Always the pressure at the *surface*, at whatever depth the water is.
///
/// ln C = −139.34411 + 1.575701e5/K − 6.642308e7/K² + 1.243800e10/K³ − 8.621949e11/K⁴ − S (0.017674 − 10.754/K +
/// 2140.7/K²) at 1 atm; at p: C (p − u)(1 − θp)/((1 − u)(1 − θ)), u the [`vapour_pressure_atm`] and θ the
/// [`theta_per_atm`].
///
/// Source: [`BensonKrause1984`](crate::bibliography::BensonKrause1984).
///
/// ```
/// use layercast_core::water::oxygen::saturation_mg_l;
/// assert!((saturation_mg_l(8.0, 0.0, 1.0).unwrap() - 11.843).abs() < 0.0005);
/// assert_eq!(saturation_mg_l(68.0, 0.0, 1.0), None);
/// ```
pub fn saturation_mg_l(temp_c: f64, salinity: f64, pressure_atm: f64) -> Option<f64> {
    let temp_c = if PROBE_OFF_C.contains(&temp_c) { 0.0 } else { temp_c };
    if !STATED_C.contains(&temp_c)
        || !STATED_SALINITY.contains(&salinity)
        || !LAKE_ATM.contains(&pressure_atm)
    {
        return None;
    }
    let x = 1.0 / kelvin(temp_c);
    let fresh = -139.34411 + x * (1.575701e5 + x * (-6.642308e7 + x * (1.243800e10 - x * 8.621949e11)));
    let salt = salinity * (0.017674 + x * (-10.754 + x * 2140.7));
    let (u, theta) = (vapour_pressure_atm(temp_c), theta_per_atm(temp_c));
    let pressure = (pressure_atm - u) * (1.0 - theta * pressure_atm) / ((1.0 - u) * (1.0 - theta));
    Some(libm::exp(fresh - salt) * pressure)
}

/// Measured oxygen in per cent of [`saturation_mg_l`] at the water's temperature and salt and the pressure of the air.
/// Over 100 where plants make more than the water can hold.
///
/// `None` where there is no saturation, and for a measured value that is no number, below 0 or beyond 60 mg/L.
///
/// ```
/// use layercast_core::water::oxygen::per_cent;
/// assert!((per_cent(9.0, 15.0, 0.0, 1.0).unwrap() - 89.25).abs() < 0.01);
/// ```
pub fn per_cent(measured_mg_l: f64, temp_c: f64, salinity: f64, pressure_atm: f64) -> Option<f64> {
    let measured = Some(measured_mg_l).filter(|m| (0.0..=60.0).contains(m))?;
    Some(100.0 * measured / saturation_mg_l(temp_c, salinity, pressure_atm)?)
}

/// Pressure of the standard atmosphere \[standard atmospheres\] at `altitude_m` \[m above the sea\]:
/// (1 − 2.25577e-5 h)^5.25588. `None` outside −500..7000 m.
///
/// Source: [`StandardAtmosphere`](crate::bibliography::StandardAtmosphere).
///
/// ```
/// assert!((layercast_core::water::oxygen::pressure_atm(500.0).unwrap() - 0.942_125).abs() < 1e-6);
/// ```
pub fn pressure_atm(altitude_m: f64) -> Option<f64> {
    let altitude_m = Some(altitude_m).filter(|h| LAKE_ALTITUDE_M.contains(h))?;
    Some(libm::pow(1.0 - 2.25577e-5 * altitude_m, 5.25588))
}

/// Standard atmospheres from hectopascals (millibars), 1013.25 to one.
pub fn atm_from_hpa(pressure_hpa: f64) -> f64 {
    pressure_hpa / 1013.25
}

/// Pressure of water vapour over water \[standard atmospheres\]: exp(11.8571 − 3840.70/K − 216961/K²).
///
/// Source: [`BensonKrause1984`](crate::bibliography::BensonKrause1984).
pub fn vapour_pressure_atm(temp_c: f64) -> f64 {
    let x = 1.0 / kelvin(temp_c);
    libm::exp(11.8571 + x * (-3840.70 - x * 216_961.0))
}

/// What keeps oxygen from being an ideal gas \[per standard atmosphere\]: 0.000975 − 1.426e-5 t + 6.436e-8 t², t in °C.
///
/// Miscoded in public as 9.75e-5 and 0.00975, and fed kelvin; this one agrees with the second virial coefficient of
/// oxygen. Source: [`BensonKrause1984`](crate::bibliography::BensonKrause1984).
pub fn theta_per_atm(temp_c: f64) -> f64 {
    0.000975 + temp_c * (-1.426e-5 + temp_c * 6.436e-8)
}

fn kelvin(temp_c: f64) -> f64 {
    temp_c + 273.15
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn no_value_outside_what_is_stated() {
        for (t, s, p) in [
            (-0.51, 0.0, 1.0),
            (40.1, 0.0, 1.0),
            (f64::NAN, 0.0, 1.0),
            (20.0, -0.1, 1.0),
            (20.0, 40.1, 1.0),
            (20.0, f64::NAN, 1.0),
            (20.0, 0.0, 0.39),
            (20.0, 0.0, 1.21),
            (20.0, 0.0, f64::INFINITY),
        ] {
            assert_eq!(saturation_mg_l(t, s, p), None, "{t} {s} {p}");
            assert_eq!(per_cent(5.0, t, s, p), None, "{t} {s} {p}");
        }
        for measured in [-0.1, 60.1, f64::NAN, f64::INFINITY] {
            assert_eq!(per_cent(measured, 20.0, 0.0, 1.0), None, "{measured}");
        }
        assert_eq!((pressure_atm(-501.0), pressure_atm(7001.0), pressure_atm(f64::NAN)), (None, None, None));
    }

    #[test]
    fn every_lake_has_a_pressure_the_formula_takes() {
        for altitude_m in [-500.0, 0.0, 7000.0] {
            assert!(LAKE_ATM.contains(&pressure_atm(altitude_m).unwrap()), "{altitude_m} m");
        }
    }

    #[test]
    fn a_probe_a_little_below_zero_reads_water_at_zero() {
        assert_eq!(saturation_mg_l(-0.3, 0.0, 1.0), saturation_mg_l(0.0, 0.0, 1.0));
        assert!(saturation_mg_l(0.1, 0.0, 1.0) < saturation_mg_l(0.0, 0.0, 1.0));
    }

    #[test]
    fn full_half_and_none() {
        let full = saturation_mg_l(12.0, 0.0, 0.95).unwrap();
        assert_eq!(per_cent(full, 12.0, 0.0, 0.95), Some(100.0));
        assert_eq!(per_cent(full / 2.0, 12.0, 0.0, 0.95), Some(50.0));
        assert_eq!(per_cent(0.0, 12.0, 0.0, 0.95), Some(0.0));
        assert_eq!(atm_from_hpa(1013.25), 1.0);
    }
}
