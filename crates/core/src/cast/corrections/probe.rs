//! Correction of the probe by its check in melting ice and beside a reference thermometer.

use super::{Changes, Correction, Outcome, Refusal};
use crate::cast::Cast;
use crate::slack::at_least;
use crate::water::calibration::{LEAST_APART_C, offset_c, two_point_c};

/// A probe further off in melting ice is broken, or not in melting ice, °C.
const FURTHEST_OFF_C: f64 = 5.0;
/// Degrees shown for a true degree: a probe further out is broken.
const SCALES: std::ops::RangeInclusive<f64> = 0.8..=1.25;

/// Whether a correction of the probe makes sense; all others do here.
pub(in crate::cast) fn sensible(correction: &Correction) -> bool {
    match *correction {
        Correction::ProbeOffset { ice_c } => ice_c.abs() <= FURTHEST_OFF_C,
        Correction::ProbeTwoPoint { ice_c, read_c, true_c } => {
            ice_c.abs() <= FURTHEST_OFF_C
                && read_c.is_finite()
                && true_c.is_finite()
                && (!apart(ice_c, read_c) || SCALES.contains(&((read_c - ice_c) / true_c)))
        }
        _ => true,
    }
}

/// Corrects every temperature that is a number.
pub(super) fn correct(cast: &mut Cast, correction: &Correction) -> Outcome {
    let (too_close, corrected_c): (bool, &dyn Fn(f64) -> Option<f64>) = match correction {
        Correction::ProbeOffset { ice_c } => (false, &|t| Some(offset_c(t, *ice_c))),
        Correction::ProbeTwoPoint { ice_c, read_c, true_c } if apart(*ice_c, *read_c) => {
            (false, &|t| two_point_c(t, *ice_c, *read_c, *true_c))
        }
        Correction::ProbeTwoPoint { ice_c, .. } => (true, &|t| Some(offset_c(t, *ice_c))),
        _ => (false, &|_| None),
    };
    let mut changes = Changes::default();
    let temps = cast.readings.iter_mut().filter_map(|r| r.temp_c.as_mut());
    for temp_c in temps.filter(|t| t.is_finite()) {
        let Some(to_c) = corrected_c(*temp_c).filter(|t| t.is_finite()) else { continue };
        changes.note(*temp_c, to_c);
        *temp_c = to_c;
    }
    if too_close { Outcome::Refused(Refusal::PointsTooClose) } else { changes.done() }
}

fn apart(ice_c: f64, read_c: f64) -> bool {
    at_least((read_c - ice_c).abs(), LEAST_APART_C)
}

#[cfg(test)]
mod tests {
    use super::super::correct;
    use super::*;
    use crate::cast::{Leg, Reading, Switch};

    #[track_caller]
    fn check(temps_c: &[Option<f64>], one: Correction, want_c: &[Option<f64>]) -> Outcome {
        let reading = |temp_c: &Option<f64>| Reading {
            depth_m: 1.0,
            temp_c: *temp_c,
            leg: Leg::Unknown,
            switch: Switch::Auto,
        };
        let readings = temps_c.iter().map(reading).collect();
        let got = correct(&Cast { readings, ..Cast::default() }, &[one]);
        let got_c: Vec<Option<f64>> = got.cast.readings.iter().map(|r| r.temp_c).collect();
        assert_eq!(got_c, want_c);
        got.applied[0].outcome
    }

    #[test]
    fn an_offset_moves_every_temperature_also_the_impossible_and_no_empty_cell() {
        let got = check(
            &[Some(20.0), None, Some(177.0), Some(f64::INFINITY)],
            Correction::ProbeOffset { ice_c: -0.5 },
            &[Some(20.5), None, Some(177.5), Some(f64::INFINITY)],
        );
        assert_eq!(got, Outcome::Done { changed: 2, largest: 0.5 });
    }

    #[test]
    fn two_points_scale() {
        let two = Correction::ProbeTwoPoint { ice_c: 1.0, read_c: 21.0, true_c: 25.0 };
        let got = check(&[Some(21.0), Some(1.0), Some(11.0)], two, &[Some(25.0), Some(0.0), Some(12.5)]);
        assert_eq!(got, Outcome::Done { changed: 3, largest: 4.0 });
    }

    #[test]
    fn points_too_close_leave_the_offset() {
        let near = Correction::ProbeTwoPoint { ice_c: 0.5, read_c: 5.25, true_c: 25.0 };
        let got = check(&[Some(20.0)], near, &[Some(19.5)]);
        assert_eq!(got, Outcome::Refused(Refusal::PointsTooClose));
        let far = Correction::ProbeTwoPoint { ice_c: 0.5, read_c: 5.5, true_c: 5.0 };
        assert!(matches!(check(&[Some(20.0)], far, &[Some(19.5)]), Outcome::Done { changed: 1, .. }));
    }
}
