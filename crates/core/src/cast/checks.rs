//! All checks of a cast: flags, what is left out, and what deserves a second look. Nothing is ever altered or dropped.

use super::station::{Station, depth_of, stations, temp_of};
use super::{Cast, Leg, Switch, gross_range, inversion, roll_up, spike, written};
use crate::analysis::{Checked, Doubt, Flag};
use crate::water::density::Density;

/// Flags every reading and says which the profile uses; same order and length as the readings.
///
/// Along each leg, downward; readings repeated at one depth stand together. Readings that fail the gross range or are
/// switched off stand as missing beside the others. A reading that sticks out only beside a worse one is acquitted
/// (its spike flag is the milder of the two verdicts, with and without the worse one).
///
/// Left out: missing (9), gross range 4, neighbour spike 4, switched off. [`Switch::Kept`] brings a spike back, not
/// a gross-range failure. A density inversion flag leaves nothing out. Doubts about pairs and inversions of the profile
/// come later, once there is one: see [`doubts`](crate::layers::doubts).
///
/// Of the tests of the manual three are used here. Not used, because along a cast they would blame good readings or have
/// nothing to go by: the "average" spike ([`spike_from_middle_flags`](super::spike::spike_from_middle_flags): shoulders
/// of a sharp thermocline), the rate of change ([`rate_of_change`](super::rate_of_change): readings carry no time, and
/// a thermocline is a jump) and the flat line ([`flat_line`](super::flat_line): a mixed layer is flat). Those are for
/// series in time at one place.
///
/// A missing depth, or one no cast can reach (beyond 20 km), makes the reading missing.
///
/// ```
/// use layercast_core::{Cast, Doubt, Flag, Leg, Reading, Switch, cast::checks::checks};
/// let readings = [21.3, 19.4, 177.0, 14.6].iter().enumerate().map(|(i, t)| Reading {
///     depth_m: 3.0 + 0.5 * i as f64, temp_c: Some(*t), leg: Leg::Down, switch: Switch::Auto,
/// });
/// let checked = checks(&Cast { readings: readings.collect(), digit_c: 0.1, bed_m: None });
/// assert_eq!(checked[2].flag, Flag::Fail);
/// assert_eq!(checked[2].doubt, Some(Doubt::Range { point_lost_c: Some(17.7) }));
/// assert!(!checked[2].used && checked[1].used);
/// ```
pub fn checks(cast: &Cast) -> Vec<Checked> {
    checks_by(cast, Density::default())
}

/// [`checks`] with the densities of a formula.
pub fn checks_by(cast: &Cast, density: Density) -> Vec<Checked> {
    let mut checked: Vec<Checked> = (cast.readings.iter())
        .map(|reading| {
            let gross = if depth_of(reading).is_some() {
                gross_range::gross_range(reading.temp_c.filter(|t| !t.is_nan()), &gross_range::LAKE)
            } else {
                Flag::Missing
            };
            let other = if gross == Flag::Missing { Flag::Missing } else { Flag::NotEvaluated };
            Checked {
                flag: gross,
                gross_range: gross,
                spike: other,
                inversion: other,
                used: false,
                doubt: None,
            }
        })
        .collect();
    let stands: Vec<bool> = (cast.readings.iter().zip(&checked))
        .map(|(r, c)| temp_of(r).is_some() && c.gross_range != Flag::Fail && r.switch != Switch::Off)
        .collect();
    let beyond: Vec<bool> = checked.iter().map(|c| c.gross_range == Flag::Fail).collect();
    for leg in [Leg::Down, Leg::Up, Leg::Unknown] {
        let stations = stations(cast, leg, &stands);
        for found in spike::spikes(cast, &stations, &spike::LAKE) {
            if let Some(c) = checked.get_mut(found.reading) {
                c.spike = found.flag;
                c.doubt = found.neighbours_c.filter(|_| found.flag >= Flag::Suspect).map(|around| {
                    let temp_c = cast.readings.get(found.reading).and_then(temp_of).unwrap_or_default();
                    spike_doubt(temp_c, around, cast.digit_c)
                });
            }
        }
        for (reading, flag) in inversion::inversions(cast, &stations, &beyond, density) {
            if let Some(c) = checked.get_mut(reading) {
                c.inversion = flag;
            }
        }
        doubt_ranges(cast, &stations, &mut checked);
    }
    for (reading, c) in cast.readings.iter().zip(&mut checked) {
        c.flag = roll_up::roll_up(&[c.gross_range, c.spike, c.inversion]);
        let impossible = matches!(c.gross_range, Flag::Fail | Flag::Missing) || temp_of(reading).is_none();
        c.used = !impossible
            && match reading.switch {
                Switch::Off => false,
                Switch::Kept => true,
                Switch::Auto => c.spike != Flag::Fail,
            };
        // A person has looked at what is switched; only the impossible stays doubted however often it is kept.
        if reading.switch == Switch::Off || (reading.switch == Switch::Kept && !impossible) {
            c.doubt = None;
        }
    }
    checked
}

fn spike_doubt(temp_c: f64, neighbours_c: (f64, f64), digit_c: f64) -> Doubt {
    let around = (Some(neighbours_c.0), Some(neighbours_c.1));
    let meant_c = written::point_moved_c(temp_c, digit_c, around)
        .or_else(|| written::digits_swapped_c(temp_c, digit_c, around));
    Doubt::Spike { neighbours_c, meant_c }
}

/// Doubts of the gross range, each with the point put back if that fits the next good readings of the leg.
fn doubt_ranges(cast: &Cast, stations: &[Station], checked: &mut [Checked]) {
    let good = |s: &Station, checked: &[Checked]| {
        let spiky = |i: &usize| checked.get(*i).is_none_or(|c| c.spike == Flag::Fail);
        s.median_c.filter(|_| !s.members.iter().all(spiky))
    };
    let mut below = vec![None; stations.len()];
    let mut next = None;
    for (at, station) in stations.iter().enumerate().rev() {
        if let Some(slot) = below.get_mut(at) {
            *slot = next;
        }
        next = good(station, checked).or(next);
    }
    let mut above = None;
    for (station, below) in stations.iter().zip(below) {
        let here = good(station, checked);
        for &i in &station.members {
            let Some(c) = checked.get_mut(i) else { continue };
            if !matches!(c.gross_range, Flag::Fail | Flag::Suspect) {
                continue;
            }
            let point_lost_c = (cast.readings.get(i).and_then(temp_of))
                .and_then(|t| written::point_moved_c(t, cast.digit_c, (above, below)));
            c.doubt = Some(Doubt::Range { point_lost_c });
        }
        above = here.or(above);
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cast::Reading;

    fn leg(temps_c: &[Option<f64>], leg: Leg) -> Vec<Reading> {
        (temps_c.iter().enumerate())
            .map(|(i, t)| Reading { depth_m: i as f64 * 0.5, temp_c: *t, leg, switch: Switch::Auto })
            .collect()
    }

    /// Roll-up flags as digits, and the places left out.
    #[track_caller]
    fn check(readings: Vec<Reading>, flags: &str, left_out: &[usize]) -> Vec<Checked> {
        let checked = checks(&Cast { readings, digit_c: 0.1, bed_m: None });
        let digits: String = checked.iter().map(|c| char::from(b'0' + c.flag as u8)).collect();
        assert_eq!(digits, flags);
        let out: Vec<usize> = checked.iter().enumerate().filter(|(_, c)| !c.used).map(|(i, _)| i).collect();
        assert_eq!(out, left_out);
        checked
    }

    fn some(temps_c: &[f64]) -> Vec<Option<f64>> {
        temps_c.iter().map(|t| Some(*t)).collect()
    }

    #[test]
    fn a_clean_leg_passes() {
        let got = check(leg(&some(&[23.4, 23.4, 22.0, 17.7, 15.4, 13.6]), Leg::Down), "111111", &[]);
        assert!(got.iter().all(|c| c.doubt.is_none()));
    }

    #[test]
    fn a_lost_point_is_one_doubt_and_its_neighbours_are_not_blamed() {
        let got = check(leg(&some(&[23.4, 22.8, 20.2, 177.0, 15.4, 13.6]), Leg::Down), "111411", &[3]);
        assert_eq!(got[3].doubt, Some(Doubt::Range { point_lost_c: Some(17.7) }));
        assert_eq!(got.iter().filter(|c| c.doubt.is_some()).count(), 1);
    }

    #[test]
    fn a_point_lost_at_the_surface_is_found_from_below() {
        let got = check(leg(&some(&[234.0, 23.2, 23.0]), Leg::Down), "411", &[0]);
        assert_eq!(got[0].doubt, Some(Doubt::Range { point_lost_c: Some(23.4) }));
    }

    #[test]
    fn two_swapped_digits_are_a_spike_with_a_likely_value() {
        let got = check(leg(&some(&[21.3, 20.9, 2.06, 20.4, 20.1]), Leg::Up), "11441", &[2]);
        assert_eq!(got[2].doubt, Some(Doubt::Spike { neighbours_c: (20.9, 20.4), meant_c: Some(20.6) }));
        let got = check(leg(&some(&[13.4, 13.2, 31.1, 13.0, 12.8]), Leg::Up), "14411", &[2]);
        assert_eq!(got[2].doubt, Some(Doubt::Spike { neighbours_c: (13.2, 13.0), meant_c: Some(13.1) }));
    }

    #[test]
    fn legs_are_judged_apart() {
        let mut readings = leg(&some(&[20.0, 20.0, 20.0]), Leg::Down);
        readings.extend(leg(&some(&[15.0, 15.0, 15.0]), Leg::Up));
        check(readings, "111111", &[]);
    }

    #[test]
    fn missing_stays_missing_and_is_no_doubt_of_ours() {
        let got = check(leg(&[Some(20.0), None, Some(f64::NAN), Some(20.0)], Leg::Down), "1991", &[1, 2]);
        assert!(got.iter().all(|c| c.doubt.is_none()));
    }

    #[test]
    fn a_depth_that_is_no_number_makes_the_reading_missing() {
        let mut readings = leg(&some(&[20.0, 20.0, 20.0, 20.0]), Leg::Down);
        readings[1].depth_m = f64::NAN;
        readings[2].depth_m = 1e308;
        check(readings, "1991", &[1, 2]);
    }

    #[test]
    fn a_person_may_keep_a_spike_and_leave_out_a_good_reading() {
        let mut readings = leg(&some(&[20.0, 20.0, 23.0, 20.0, 20.0]), Leg::Down);
        readings[2].switch = Switch::Kept;
        readings[4].switch = Switch::Off;
        let got = check(readings, "14411", &[4]);
        assert_eq!(got[2].doubt, None);
    }

    #[test]
    fn the_impossible_stays_out_however_often_it_is_kept() {
        let mut readings = leg(&some(&[20.0, 20.0, 200.0, 20.0, 20.0]), Leg::Down);
        readings[2].switch = Switch::Kept;
        let got = check(readings, "11411", &[2]);
        assert_eq!(got[2].doubt, Some(Doubt::Range { point_lost_c: Some(20.0) }));
    }

    #[test]
    fn a_reading_switched_off_is_nobodys_neighbour() {
        let mut readings = leg(&some(&[21.3, 19.4, 28.0, 14.6, 13.1]), Leg::Down);
        readings[2].switch = Switch::Off;
        let got = checks(&Cast { readings, digit_c: 0.1, bed_m: None });
        assert_eq!(got[1].spike, Flag::NotEvaluated);
        assert!(got[1].used && !got[2].used);
    }

    #[test]
    fn a_spike_next_door_does_not_make_a_guess_fit() {
        // 35 could be 3.5, and 3.5 lies between 6.0 and 0.1; but 0.1 is itself a spike in water of 6 degrees.
        let got = checks(&Cast {
            readings: leg(&some(&[6.0, 6.0, 35.0, 0.1, 6.0, 6.0]), Leg::Down),
            digit_c: 0.1,
            bed_m: None,
        });
        assert_eq!(got[3].spike, Flag::Fail);
        assert_eq!(got[2].doubt, Some(Doubt::Range { point_lost_c: None }));
    }

    #[test]
    fn ten_thousand_readings_at_one_depth_are_checked_at_once() {
        let readings: Vec<Reading> = (0..10_000)
            .map(|i| Reading {
                depth_m: 2.0,
                temp_c: Some(15.0 + f64::from(i % 7)),
                leg: Leg::Unknown,
                switch: Switch::Auto,
            })
            .collect();
        assert!(checks(&Cast { readings, ..Cast::default() }).iter().all(|c| c.used && c.flag == Flag::Pass));
    }
}
