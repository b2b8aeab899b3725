//! A probe that follows the water slowly: dT_p/dt = (T_w − T_p)/tau (first-order lag).
//!
//! tau is the time in which the probe covers 63.2 % of a step: stir it in a bucket straight from another bucket and read
//! every second. Field manuals give no tau, only at least 60 s at each new place (common practice, see
//! [`UsgsField`](crate::bibliography::UsgsField)). Textbook physics.

/// Hold at least this long at each new place, seconds ([`UsgsField`](crate::bibliography::UsgsField)).
pub const LEAST_WAIT_S: f64 = 60.0;

/// Share of a step still to go after `time_constants` (time over tau): exp(−k), 1 at the start. Nothing has been covered
/// before the start or after a time that is no number: 1.
///
/// ```
/// use layercast_core::cast::lag::share_left;
/// assert!((share_left(1.0) - 0.367_879).abs() < 1e-6 && share_left(5.0) < 0.007);
/// ```
pub fn share_left(time_constants: f64) -> f64 {
    if time_constants > 0.0 { libm::exp(-time_constants) } else { 1.0 }
}

/// How long to wait \[s\] until a probe of time constant `tau_s` \[s\] is within `tolerance_c` \[°C\] of the water after a
/// step of `step_c` \[°C\]: tau·ln(|step|/tolerance), 0 where the step is no larger than the tolerance.
///
/// `None` for numbers that make no sense: a tolerance that is not above 0, a tau below 0, anything not finite.
///
/// ```
/// use layercast_core::cast::lag::settle_s;
/// assert!((settle_s(5.0, 0.1, 15.0).unwrap() - 58.7).abs() < 0.1);
/// assert_eq!(settle_s(0.05, 0.1, 15.0), Some(0.0));
/// ```
pub fn settle_s(step_c: f64, tolerance_c: f64, tau_s: f64) -> Option<f64> {
    if !(step_c.is_finite()
        && tolerance_c.is_finite()
        && tau_s.is_finite()
        && tolerance_c > 0.0
        && tau_s >= 0.0)
    {
        return None;
    }
    if step_c.abs() <= tolerance_c {
        return Some(0.0);
    }
    Some(tau_s * (libm::log(step_c.abs()) - libm::log(tolerance_c))).filter(|wait_s| wait_s.is_finite())
}

/// The time constant \[s\] of a probe that leaves the share `r` of a step after `wait_s` \[s\]: wait/ln(1/r).
///
/// `None` unless 0 < r < 1 and the wait is a number above 0, nor where it is too short for a number.
///
/// ```
/// use layercast_core::cast::lag::time_constant_s;
/// assert!((time_constant_s(30.0, 0.223_130_16).unwrap() - 20.0).abs() < 1e-6);
/// ```
pub fn time_constant_s(wait_s: f64, r: f64) -> Option<f64> {
    let sensible = r > 0.0 && r < 1.0 && wait_s > 0.0;
    sensible.then(|| wait_s / -libm::log(r)).filter(|tau_s| *tau_s > 0.0 && tau_s.is_finite())
}

/// How far \[m\] from its reading the place lies where the water had it, when the probe moves through a steady slope
/// without stopping: speed·tau, higher up on the way down, deeper on the way up.
///
/// A number that is none gives NaN.
///
/// * `speed_m_s`: of the probe \[m/s\]
/// * `tau_s`: time constant \[s\]
pub fn moving_shift_m(speed_m_s: f64, tau_s: f64) -> f64 {
    speed_m_s * tau_s
}

/// How much correcting a lag of share `r` swells the noise of a reading: √(1+r²)/(1−r), 2.2 at r = 0.5. `None` unless
/// 0 ≤ r < 1.
///
/// ```
/// use layercast_core::cast::lag::noise_swells;
/// assert!((noise_swells(0.5).unwrap() - 2.236).abs() < 1e-3);
/// ```
pub fn noise_swells(r: f64) -> Option<f64> {
    (0.0..1.0).contains(&r).then(|| libm::hypot(1.0, r) / (1.0 - r))
}

/// What a slow probe reads \[°C\] in water that changes linearly from sample to sample; it starts settled.
///
/// * `samples`: time \[s\], never backward, and temperature of the water around the probe \[°C\]
/// * `tau_s`: time constant \[s\]; of 0 (or no number above it) the probe is the water
///
/// One value a sample. Exact for such water. Where time stands still the probe does, and while the water has no
/// temperature (no number, or one beyond a million).
pub fn follow_c(samples: &[(f64, f64)], tau_s: f64) -> Vec<f64> {
    let sensible = |&(time_s, water_c): &(f64, f64)| time_s.is_finite() && water_c.abs() < 1e6;
    let mut before = samples.iter().copied().find(sensible);
    let mut probe_c = before.map_or(0.0, |(_, water_c)| water_c);
    (samples.iter())
        .map(|&(time_s, water_c)| {
            if !sensible(&(time_s, water_c)) {
                return probe_c;
            }
            if tau_s > 0.0 {
                let went = before.map(|(before_s, before_c)| ((time_s - before_s) / tau_s, before_c));
                if let Some((taus, before_c)) = went.filter(|(taus, _)| *taus > 0.0) {
                    let covered = -libm::expm1(-taus);
                    probe_c += (before_c - probe_c) * covered + (water_c - before_c) * (1.0 - covered / taus);
                }
                before = Some((time_s, water_c));
            } else {
                probe_c = water_c;
            }
            probe_c
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn waits_that_make_no_sense() {
        assert_eq!(settle_s(5.0, 0.0, 15.0), None);
        assert_eq!(settle_s(0.0, 0.0, 15.0), None);
        assert_eq!(time_constant_s(5e-324, 5e-324), None);
        assert_eq!(settle_s(5.0, 0.1, -1.0), None);
        assert_eq!(settle_s(f64::NAN, 0.1, 1.0), None);
        assert_eq!(settle_s(5.0, f64::INFINITY, 1.0), None);
        assert_eq!(settle_s(5.0, 0.1, 0.0), Some(0.0));
        assert_eq!(settle_s(-5.0, 0.1, 15.0), settle_s(5.0, 0.1, 15.0));
        assert_eq!(settle_s(0.1, 0.1, 15.0), Some(0.0));
        assert_eq!(settle_s(1e308, 5e-324, 1e308), None);
        assert_eq!((time_constant_s(30.0, 0.0), time_constant_s(30.0, 1.0)), (None, None));
        assert_eq!((time_constant_s(0.0, 0.5), time_constant_s(f64::INFINITY, 0.5)), (None, None));
        assert_eq!((share_left(-1.0), share_left(f64::NAN), share_left(0.0)), (1.0, 1.0, 1.0));
        assert_eq!((noise_swells(1.0), noise_swells(-0.1), noise_swells(0.0)), (None, None, Some(1.0)));
    }

    #[test]
    fn a_probe_in_a_bucket_covers_two_thirds_in_one_tau() {
        // A step from 20 to 10 °C within a thousandth of a second.
        let got = follow_c(&[(0.0, 20.0), (0.001, 10.0), (20.001, 10.0)], 20.0);
        assert!((got[2] - (10.0 + 10.0 * libm::exp(-1.0))).abs() < 1e-3, "{got:?}");
        assert_eq!(got[0], 20.0);
    }

    #[test]
    fn on_a_steady_slope_it_stays_tau_behind() {
        let water: Vec<(f64, f64)> = (0..400).map(|s| (f64::from(s), 20.0 - 0.05 * f64::from(s))).collect();
        let got = follow_c(&water, 10.0);
        assert!((got[399] - (water[399].1 + 0.05 * 10.0)).abs() < 1e-9);
        let never = follow_c(&water, f64::INFINITY);
        assert_eq!(never[399], 20.0);
        assert_eq!(moving_shift_m(0.25, 10.0), 2.5);
    }

    #[test]
    fn a_sample_that_is_none_is_passed_over() {
        let got = follow_c(&[(f64::NAN, 5.0), (0.0, 20.0), (1.0, f64::NAN), (2.0, 1e308), (2.0, 20.0)], 5.0);
        assert_eq!(got, [20.0; 5]);
        assert_eq!(follow_c(&[(0.0, f64::INFINITY)], 5.0), [0.0]);
    }

    #[test]
    fn a_quick_probe_is_the_water_and_time_standing_still_moves_nothing() {
        assert_eq!(follow_c(&[(0.0, 20.0), (1.0, 10.0)], 0.0), [20.0, 10.0]);
        assert_eq!(follow_c(&[(0.0, 20.0), (0.0, 10.0)], 5.0), [20.0, 20.0]);
        assert!(follow_c(&[], 5.0).is_empty());
    }
}
