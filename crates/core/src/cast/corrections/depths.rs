//! Corrections of depth: where zero is, where the sensor hangs, how long the cable is and how it hung.

use super::{Changes, Correction, Outcome};
use crate::cast::Cast;
use crate::cast::station::depth_of;
use crate::slack::{at_least, at_most};

/// No rail, bridge or ice is further from the water than this, metres.
const HIGHEST_M: f64 = 20.0;
/// No sensor hangs further from the zero of its marks than this, metres.
const WIDEST_GAP_M: f64 = 5.0;
/// Marks that are further out are another unit, not a stretched cable.
const STRETCHES: std::ops::RangeInclusive<f64> = 0.5..=2.0;
/// A cable further from the vertical hangs in a bow, and no cosine tells its depth, degrees.
const STEEPEST_DEG: f64 = 60.0;

/// Depth \[m\] reached by a straight cable of `length_m` \[m\] at `angle_deg` from the vertical: length·cos(angle). A number
/// that is none gives NaN.
///
/// ```
/// use layercast_core::cast::corrections::vertical_m;
/// assert!((vertical_m(5.0, 20.0) - 4.698).abs() < 1e-3);
/// ```
pub fn vertical_m(length_m: f64, angle_deg: f64) -> f64 {
    length_m * libm::cos(angle_deg.to_radians())
}

/// Whether a correction of depth makes sense; all others do here.
pub(super) fn sensible(correction: &Correction) -> bool {
    match *correction {
        Correction::DepthZero { above_water_m } => above_water_m.abs() <= HIGHEST_M,
        Correction::FirstMark { gap_m } => gap_m.abs() <= WIDEST_GAP_M,
        Correction::Stretch { factor } => STRETCHES.contains(&factor),
        Correction::Slant { from_m, to_m, angle_deg } => {
            from_m.is_finite()
                && to_m.is_finite()
                && from_m <= to_m
                && (0.0..=STEEPEST_DEG).contains(&angle_deg)
        }
        _ => true,
    }
}

/// Depths as marked: of the readings, then that of the bed. `None` where there is none.
pub(super) fn marks(cast: &Cast) -> Vec<Option<f64>> {
    let bed_m = cast.bed_m.filter(|m| m.is_finite());
    cast.readings.iter().map(depth_of).chain([bed_m]).collect()
}

/// Corrects every depth.
///
/// * `marks`: of the cast before any correction
/// * `slanted`: those a slant has been applied to
pub(super) fn correct(
    cast: &mut Cast,
    correction: &Correction,
    marks: &[Option<f64>],
    slanted: &mut [bool],
) -> Outcome {
    let mut changes = Changes::default();
    let depths = cast.readings.iter_mut().map(|r| (&mut r.depth_m, true));
    let depths = depths.chain(cast.bed_m.iter_mut().map(|bed_m| (bed_m, false)));
    for (((depth_m, counts), mark_m), slanted) in depths.zip(marks).zip(slanted) {
        let Some(mark_m) = *mark_m else { continue };
        let corrected_m = match *correction {
            Correction::DepthZero { above_water_m } => *depth_m - above_water_m,
            Correction::FirstMark { gap_m } => *depth_m + gap_m,
            Correction::Stretch { factor } => *depth_m * factor,
            Correction::Slant { from_m, to_m, angle_deg } => {
                if *slanted || !at_least(mark_m, from_m) || !at_most(mark_m, to_m) {
                    continue;
                }
                *slanted = true;
                vertical_m(*depth_m, angle_deg)
            }
            _ => continue,
        };
        if counts {
            changes.note(*depth_m, corrected_m);
        }
        *depth_m = corrected_m;
    }
    changes.done()
}

#[cfg(test)]
mod tests {
    use super::super::correct;
    use super::*;
    use crate::cast::{Leg, Reading, Switch};

    #[track_caller]
    fn check(marks_m: &[f64], one: Correction, depths_m: &[f64], bed_m: f64) -> Outcome {
        let reading =
            |depth_m: &f64| Reading { depth_m: *depth_m, temp_c: None, leg: Leg::Up, switch: Switch::Auto };
        let readings = marks_m.iter().map(reading).collect();
        let got = correct(&Cast { readings, digit_c: 0.0, bed_m: Some(8.0) }, &[one]);
        let got_m: Vec<f64> = got.cast.readings.iter().map(|r| (r.depth_m * 1e9).round() / 1e9).collect();
        assert_eq!(got_m, depths_m);
        assert!((got.cast.bed_m.unwrap() - bed_m).abs() < 1e-9);
        got.applied[0].outcome
    }

    #[test]
    fn marks_read_at_a_rail_are_too_deep_and_below_ice_too_shallow() {
        check(&[0.5, 2.0], Correction::DepthZero { above_water_m: 0.5 }, &[0.0, 1.5], 7.5);
        check(&[0.5, 2.0], Correction::DepthZero { above_water_m: -0.25 }, &[0.75, 2.25], 8.25);
        check(&[0.0, 2.0], Correction::DepthZero { above_water_m: 0.5 }, &[-0.5, 1.5], 7.5);
    }

    #[test]
    fn a_sensor_below_the_first_mark_and_a_cable_that_gave() {
        check(&[0.0, 2.0], Correction::FirstMark { gap_m: 0.25 }, &[0.25, 2.25], 8.25);
        let got = check(&[0.0, 2.0, 4.0], Correction::Stretch { factor: 1.25 }, &[0.0, 2.5, 5.0], 10.0);
        assert_eq!(got, Outcome::Done { changed: 2, largest: 1.0 });
    }

    #[test]
    fn a_slant_takes_the_marks_it_was_seen_at() {
        let slant = Correction::Slant { from_m: 2.0, to_m: 3.0, angle_deg: 60.0 };
        check(&[1.9, 2.0, 3.0, 3.1], slant, &[1.9, 1.0, 1.5, 3.1], 8.0);
        let all = Correction::Slant { from_m: 0.0, to_m: 9.0, angle_deg: 60.0 };
        check(&[1.0], all, &[0.5], 4.0);
    }

    #[test]
    fn the_marks_of_a_slant_are_as_marked_also_when_zero_moves() {
        let reading = Reading { depth_m: 3.0, temp_c: None, leg: Leg::Up, switch: Switch::Auto };
        let cast = Cast { readings: vec![reading], ..Cast::default() };
        let slant = Correction::Slant { from_m: 3.0, to_m: 3.0, angle_deg: 60.0 };
        let got = correct(&cast, &[slant, Correction::DepthZero { above_water_m: 1.0 }]);
        assert!((got.cast.readings[0].depth_m - 1.0).abs() < 1e-9);
    }

    #[test]
    fn a_depth_that_is_none_stays_none() {
        let reading = |depth_m| Reading { depth_m, temp_c: None, leg: Leg::Up, switch: Switch::Auto };
        let cast = Cast {
            readings: vec![reading(f64::INFINITY), reading(1e308)],
            digit_c: 0.1,
            bed_m: Some(f64::INFINITY),
        };
        let got = correct(&cast, &[Correction::Stretch { factor: 1.5 }]);
        assert_eq!(got.cast, cast);
        assert_eq!(got.applied[0].outcome, Outcome::Done { changed: 0, largest: 0.0 });
    }
}
