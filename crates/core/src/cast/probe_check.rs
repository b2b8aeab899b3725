//! The probe checked before the trip: in melting ice, and in water at room temperature beside a reference thermometer.
//!
//! Ice three quarters of the vessel, of clean water, stirred but not with the probe; side by side, not touching; at
//! least 2 min before the first of three readings at least 1 min apart ([`UsgsField`](crate::bibliography::UsgsField)).

use super::corrections::{Correction, probe_sensible};
use crate::slack::{at_least, at_most};
use crate::water::calibration::LEAST_APART_C;

/// A probe this near the truth is good, °C: a field sensor's accuracy in [`UsgsField`](crate::bibliography::UsgsField).
pub const GOOD_C: f64 = 0.2;
/// A probe this near is fit for a class, °C: the older rule of [`UsgsField`](crate::bibliography::UsgsField) for two
/// points, and the school protocol of [`Globe`](crate::bibliography::Globe) for melting ice.
pub const CLASS_C: f64 = 0.5;
/// Readings of one bath further apart than this had not settled, °C ([`UsgsField`](crate::bibliography::UsgsField)).
pub const SETTLED_C: f64 = 0.2;
/// Readings averaged in one bath ([`UsgsField`](crate::bibliography::UsgsField)).
pub const BATH_READINGS: usize = 3;
/// Time in the bath before the first reading, seconds ([`UsgsField`](crate::bibliography::UsgsField)).
pub const BATH_WAIT_S: f64 = 120.0;
/// Fewest baths of a check ([`UsgsField`](crate::bibliography::UsgsField)).
pub const BATHS: usize = 2;

/// What a check says of a probe.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum ProbeVerdict {
    /// Within ±0.2 °C at every point.
    Good,
    /// Within ±0.5 °C at every point: fit for a class.
    Class,
    /// Further off: correct it, or take another.
    NotFit,
}

/// A probe's check.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ProbeCheck {
    /// Mean reading in melting ice, °C, which is its error there; `None` when that was not done.
    pub ice_c: Option<f64>,
    /// Mean reading beside the reference thermometer, °C.
    pub room_c: Option<f64>,
    /// Its error there: mean reading less that of the reference thermometer, °C.
    pub room_error_c: Option<f64>,
    /// The larger of the errors, with its sign, °C.
    pub worst_c: f64,
    /// What it says of the probe as it is, uncorrected.
    pub verdict: ProbeVerdict,
    /// Whether both baths were read, three times or more each.
    pub complete: bool,
    /// Whether the readings of each bath agree within 0.2 °C.
    pub settled: bool,
    /// The correction it gives: two points if they lie at least 5 °C apart, else the offset in melting ice; `None`
    /// without a reading in ice or where the numbers make no sense as a correction.
    pub correction: Option<Correction>,
}

/// Judges a probe by its readings.
///
/// * `ice_c`: readings in stirred melting ice \[°C\]
/// * `room`: readings beside a reference thermometer, and what that one read \[°C\]
///
/// `None` when there is no reading, or one is no number.
///
/// ```
/// use layercast_core::cast::probe_check::{ProbeVerdict, probe_check};
/// let got = probe_check(&[0.3, 0.3, 0.3], Some((&[20.1, 20.1, 20.1], 20.0))).unwrap();
/// assert_eq!(got.verdict, ProbeVerdict::Class);
/// assert!(got.complete && got.settled && got.correction.is_some());
/// ```
pub fn probe_check(ice_c: &[f64], room: Option<(&[f64], f64)>) -> Option<ProbeCheck> {
    let (room_readings_c, true_c) = room.unwrap_or((&[], 0.0));
    let baths = [ice_c, room_readings_c];
    if !true_c.is_finite() || baths.iter().any(|bath| bath.iter().any(|t| !t.is_finite())) {
        return None;
    }
    let [ice_mean_c, room_c] = baths.map(mean_c);
    let room_error_c = room_c.map(|read_c| read_c - true_c);
    let worst_c =
        [ice_mean_c, room_error_c].into_iter().flatten().max_by(|a, b| a.abs().total_cmp(&b.abs()))?;
    let verdict = if at_most(worst_c.abs(), GOOD_C) {
        ProbeVerdict::Good
    } else if at_most(worst_c.abs(), CLASS_C) {
        ProbeVerdict::Class
    } else {
        ProbeVerdict::NotFit
    };
    let correction = ice_mean_c.map(|ice_c| match room_c {
        Some(read_c) if at_least((read_c - ice_c).abs(), LEAST_APART_C) => {
            Correction::ProbeTwoPoint { ice_c, read_c, true_c }
        }
        _ => Correction::ProbeOffset { ice_c },
    });
    Some(ProbeCheck {
        ice_c: ice_mean_c,
        room_c,
        room_error_c,
        worst_c,
        verdict,
        complete: baths.iter().all(|bath| bath.len() >= BATH_READINGS),
        settled: baths.iter().all(|bath| at_most(spread_c(bath), SETTLED_C)),
        correction: correction.filter(probe_sensible),
    })
}

/// Mean, one reading after the other so that no sum overflows.
fn mean_c(bath: &[f64]) -> Option<f64> {
    let n = bath.len() as f64;
    (!bath.is_empty()).then(|| bath.iter().map(|t| t / n).sum()).filter(|mean: &f64| mean.is_finite())
}

fn spread_c(bath: &[f64]) -> f64 {
    let highest = bath.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    let lowest = bath.iter().copied().fold(f64::INFINITY, f64::min);
    if bath.is_empty() { 0.0 } else { highest - lowest }
}

#[cfg(test)]
mod tests {
    use super::*;
    use ProbeVerdict::{Class, Good, NotFit};

    #[track_caller]
    fn check(ice_c: &[f64], room: Option<(&[f64], f64)>, worst_c: f64, verdict: ProbeVerdict) -> ProbeCheck {
        let got = probe_check(ice_c, room).expect("a verdict");
        assert!((got.worst_c - worst_c).abs() < 1e-9 && got.verdict == verdict, "{got:?}");
        got
    }

    #[test]
    fn the_worse_of_two_points_decides() {
        check(&[0.2; 3], Some((&[20.0; 3], 20.0)), 0.2, Good);
        check(&[-0.2; 3], Some((&[20.5; 3], 20.0)), 0.5, Class);
        check(&[0.1; 3], Some((&[19.4; 3], 20.0)), -0.6, NotFit);
        check(&[-0.21], None, -0.21, Class);
        check(&[0.51], None, 0.51, NotFit);
        check(&[], Some((&[20.1, 20.3], 20.0)), 0.2, Good);
    }

    #[test]
    fn what_correction_it_gives() {
        let got = check(&[0.0, 0.3, 0.6], Some((&[21.0], 20.5)), 0.5, Class);
        let Some(Correction::ProbeTwoPoint { ice_c, read_c, true_c }) = got.correction else {
            panic!("{got:?}")
        };
        assert!((ice_c - 0.3).abs() < 1e-12 && read_c == 21.0 && true_c == 20.5);
        let offset = check(&[0.25], Some((&[5.2], 5.0)), 0.25, Class).correction;
        assert_eq!(offset, Some(Correction::ProbeOffset { ice_c: 0.25 }), "too close for two points");
        let two = check(&[0.25], Some((&[5.25], 5.0)), 0.25, Class).correction;
        assert!(matches!(two, Some(Correction::ProbeTwoPoint { .. })));
        assert_eq!(check(&[], Some((&[20.0], 20.0)), 0.0, Good).correction, None);
        assert_eq!(check(&[7.0], None, 7.0, NotFit).correction, None, "no offset, a broken probe");
    }

    #[test]
    fn how_well_it_was_done() {
        let got = check(&[0.1, 0.2, 0.3], Some((&[20.0, 20.1, 20.2], 20.0)), 0.2, Good);
        assert!(got.complete && got.settled);
        let got = check(&[0.1, 0.2, 0.4], Some((&[20.0; 2], 20.0)), 0.7 / 3.0, Class);
        assert!(!got.complete && !got.settled);
        assert!(!check(&[0.1; 3], None, 0.1, Good).complete);
    }

    #[test]
    fn nothing_to_judge() {
        assert_eq!(probe_check(&[], None), None);
        assert_eq!(probe_check(&[], Some((&[], 20.0))), None);
        assert_eq!(probe_check(&[0.1, f64::NAN], None), None);
        assert_eq!(probe_check(&[0.1], Some((&[20.0], f64::INFINITY))), None);
        assert_eq!(probe_check(&[0.1], Some((&[f64::INFINITY], 20.0))), None);
        assert_eq!(probe_check(&[1e308, 1e308, 1e308], None).map(|c| c.verdict), Some(NotFit));
    }
}
