//! Correction of lag: a_k = (m_k − r m_(k−1))/(1 − r), k−1 the stop before it in time.

use super::{Changes, Correction, Outcome, Refusal};
use crate::cast::checks::checks;
use crate::cast::lag_share::{estimate, stops, with_before};
use crate::cast::{Cast, Leg};
use crate::slack::more_than;

/// With a larger share left over than this, correcting swells the noise too much (methods 2.6).
pub const MOST_LAG: f64 = 0.5;

/// Whether a correction of lag makes sense; all others do here.
pub(super) fn sensible(correction: &Correction) -> bool {
    match correction {
        Correction::Lag { r } => (0.0..1.0).contains(r),
        _ => true,
    }
}

/// Corrects the used readings of both ways, where the legs say that it is lag. The first stop of each way stays as it is,
/// and one after a stop whose reading is left out.
pub(super) fn correct(cast: &mut Cast, r: f64) -> Outcome {
    if more_than(r, MOST_LAG) {
        return Outcome::Refused(Refusal::TooSlow);
    }
    let used: Vec<bool> = checks(cast).iter().map(|c| c.used).collect();
    let legs = [stops(cast, Leg::Down, &used), stops(cast, Leg::Up, &used)];
    let [down, up] = &legs;
    match estimate(down, up) {
        None => return Outcome::Refused(Refusal::NoPairs),
        Some(found) if !found.sign_fits => return Outcome::Refused(Refusal::WrongSign),
        Some(_) => {}
    }
    let mut changes = Changes::default();
    for (stop, _, before_c) in legs.iter().flat_map(|leg| with_before(leg)) {
        for reading in &stop.readings {
            let Some(temp_c) = cast.readings.get_mut(*reading).and_then(|r| r.temp_c.as_mut()) else {
                continue;
            };
            let settled_c = (*temp_c - r * before_c) / (1.0 - r);
            changes.note(*temp_c, settled_c);
            *temp_c = settled_c;
        }
    }
    changes.done()
}

#[cfg(test)]
mod tests {
    use super::super::correct;
    use super::*;
    use crate::cast::{Reading, Switch};

    const WATER_C: [f64; 6] = [20.0, 20.0, 16.0, 11.0, 9.0, 9.0];

    /// A reading every metre on both ways by a probe that leaves the share `r`, settled at the start.
    fn slow(r: f64) -> Cast {
        let mut probe_c = WATER_C[0];
        let stops = (0..6).map(|i| (i, Leg::Down)).chain((0..6).rev().map(|i| (i, Leg::Up)));
        let readings = stops
            .map(|(i, leg)| {
                probe_c = WATER_C[i] + r * (probe_c - WATER_C[i]);
                Reading { depth_m: i as f64, temp_c: Some(probe_c), leg, switch: Switch::Auto }
            })
            .collect();
        Cast { readings, digit_c: 0.1, bed_m: None }
    }

    #[track_caller]
    fn refused(cast: &Cast, r: f64, want: Refusal) {
        let got = correct(cast, &[Correction::Lag { r }]);
        assert_eq!(got.applied[0].outcome, Outcome::Refused(want));
        assert_eq!(got.cast, *cast);
    }

    #[test]
    fn the_water_comes_back() {
        for r in [0.1, 0.4, 0.5] {
            let got = correct(&slow(r), &[Correction::Lag { r }]);
            let Outcome::Done { changed, largest } = got.applied[0].outcome else {
                panic!("{:?}", got.applied)
            };
            // Two first stops and two stops in settled water need nothing.
            assert!((8..=10).contains(&changed) && largest < -1e-3, "{changed} by {largest}");
            for (place, reading) in got.cast.readings.iter().enumerate() {
                let water_c = WATER_C[reading.depth_m as usize];
                let first_up = place == 6;
                let temp_c = reading.temp_c.unwrap();
                assert!(first_up || (temp_c - water_c).abs() < 1e-9, "{temp_c} in {water_c}");
            }
        }
    }

    #[test]
    fn refused_where_it_is_no_lag_or_too_much_of_it() {
        refused(&slow(0.3), 0.51, Refusal::TooSlow);
        refused(&slow(0.0), 0.3, Refusal::WrongSign);
        let mut turned = slow(0.3);
        turned.readings.iter_mut().for_each(|r| r.leg = if r.leg == Leg::Up { Leg::Down } else { Leg::Up });
        refused(&turned, 0.3, Refusal::WrongSign);
        let mut one_way = slow(0.3);
        one_way.readings.truncate(6);
        refused(&one_way, 0.3, Refusal::NoPairs);
        refused(&Cast::default(), 0.3, Refusal::NoPairs);
    }

    #[test]
    fn a_reading_left_out_stays_as_it_was_taken_and_so_does_the_next() {
        let mut cast = slow(0.3);
        cast.readings[3].switch = Switch::Off;
        let got = correct(&cast, &[Correction::Lag { r: 0.3 }]).cast;
        assert_eq!(got.readings[3..5], cast.readings[3..5]);
        assert_ne!(got.readings[2], cast.readings[2]);
    }
}
