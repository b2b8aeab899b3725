//! Corrections of a cast: a visible list, each applied to the readings as taken, none of them ever altering those.

mod depths;
mod lag;
mod probe;

use super::Cast;
use crate::slack::more_than;

pub use depths::vertical_m;
pub use lag::MOST_LAG;
pub(super) use probe::sensible as probe_sensible;

/// One correction, as a person entered it. Lists are applied in the order depth zero, gap, stretch, slant, lag, probe,
/// whatever order they stand in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Correction {
    /// The probe read `ice_c` in stirred melting ice: every temperature less that (methods 2.4).
    ProbeOffset {
        /// Reading in melting ice, °C.
        ice_c: f64,
    },
    /// The probe read `ice_c` in melting ice and `read_c` where a reference thermometer read `true_c` (methods 2.4).
    ProbeTwoPoint {
        /// Reading in melting ice, °C.
        ice_c: f64,
        /// Reading beside the reference thermometer, °C.
        read_c: f64,
        /// What the reference thermometer read, °C.
        true_c: f64,
    },
    /// Marks were read at a rail or at the top of the ice, `above_water_m` above the water: every depth less that.
    DepthZero {
        /// Height of the place where marks were read above the water, metres; negative below it.
        above_water_m: f64,
    },
    /// The sensor hangs `gap_m` below the zero of the marks: every depth more by that (methods 8.4).
    FirstMark {
        /// From the zero of the marks to the sensor, metres.
        gap_m: f64,
    },
    /// The cable is longer or shorter than its marks say: every depth times this (1.02: a marked metre is really 1.02 m).
    Stretch {
        /// True length over marked length.
        factor: f64,
    },
    /// The cable hung at an angle while the marks from `from_m` to `to_m` were read: depth times cos angle (methods 8.4).
    Slant {
        /// First mark it applies to, metres as marked.
        from_m: f64,
        /// Last mark it applies to, metres as marked.
        to_m: f64,
        /// Angle from the vertical, degrees.
        angle_deg: f64,
    },
    /// The probe had covered all but the share `r` of each step when it was read (methods 2.6).
    Lag {
        /// Share left over, 0 to 0.5.
        r: f64,
    },
}

/// What became of one correction.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Applied {
    /// The correction.
    pub correction: Correction,
    /// How it went.
    pub outcome: Outcome,
}

/// How a correction went.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Outcome {
    /// Applied.
    Done {
        /// Readings it changed.
        changed: usize,
        /// The most it changed one, in metres or °C (signed).
        largest: f64,
    },
    /// Not applied.
    Refused(Refusal),
}

/// Why a correction is not applied.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// A number that makes no sense (not finite, or beyond what a pond trip can have).
    Senseless,
    /// The two points of the probe check lie closer than 5 °C: the offset alone is applied in its place.
    PointsTooClose,
    /// Another correction of the same kind stands before it in the list.
    Twice,
    /// Lag: no depth was read both going down and coming up.
    NoPairs,
    /// Lag: the legs do not differ the way a slow probe makes them differ.
    WrongSign,
    /// Lag: so much was left over that correcting would only swell the noise (r over 0.5): wait longer next time.
    TooSlow,
}

/// A cast as corrected, and what became of each correction, in the order of the list.
#[derive(Clone, Debug, PartialEq)]
pub struct Corrected {
    /// The cast to analyse: one reading per reading of the cast given, in the same order.
    pub cast: Cast,
    /// One per correction.
    pub applied: Vec<Applied>,
}

/// Applies a list of corrections to a copy of the cast, in the order depth zero, first mark, stretch, slant, lag, probe,
/// and says what became of each. The cast given stays as it was; take one off the list and apply the rest to undo it.
///
/// - Depths of readings, and of the bed, are corrected; a reading that comes to stand above the water keeps its negative
///   depth. What the checks and a person said of a reading moves with it.
/// - Of each kind the first in the list is applied, the two probe corrections being one kind; slants may follow one
///   another as long as the marks they apply to do not overlap (a mark they share belongs to the first).
/// - Lag is corrected only where the legs say that it is lag, see [`lag_share`](super::lag_share::lag_share), and only
///   to a share of 0.5: beyond that the noise swells more than twofold and a longer wait is the cure.
/// - Of a two-point check whose points lie closer than 5 °C the offset alone is applied; it is told as refused.
///
/// Numbers that make no sense are refused: heights beyond 20 m, gaps beyond 5 m, stretch outside 0.5–2, angles outside
/// 0–60°, lag outside 0–1, ice readings beyond 5 °C, probes that scale by more than a quarter (conventions of ours).
///
/// Sources: methods 2.4, 2.6 and 8.4; the cosine is geometry.
///
/// ```
/// use layercast_core::cast::corrections::{Correction, Outcome, correct};
/// use layercast_core::{Cast, Leg, Reading, Switch};
/// let taken = Reading { depth_m: 4.0, temp_c: Some(12.5), leg: Leg::Down, switch: Switch::Auto };
/// let cast = Cast { readings: vec![taken], digit_c: 0.1, bed_m: None };
/// let zero = Correction::DepthZero { above_water_m: 0.5 };
/// let got = correct(&cast, &[Correction::ProbeOffset { ice_c: 0.5 }, zero]);
/// assert_eq!(got.cast.readings[0].depth_m, 3.5);
/// assert_eq!(got.cast.readings[0].temp_c, Some(12.0));
/// assert_eq!(got.applied[0].outcome, Outcome::Done { changed: 1, largest: -0.5 });
/// ```
pub fn correct(cast: &Cast, corrections: &[Correction]) -> Corrected {
    let mut cast = cast.clone();
    let mut applied: Vec<Applied> = (corrections.iter().enumerate())
        .map(|(place, &correction)| {
            let before = corrections.get(..place).unwrap_or_default();
            let outcome = if !sensible(&correction) {
                Outcome::Refused(Refusal::Senseless)
            } else if before.iter().any(|other| excludes(other, &correction)) {
                Outcome::Refused(Refusal::Twice)
            } else {
                Changes::default().done()
            };
            Applied { correction, outcome }
        })
        .collect();
    let marks = depths::marks(&cast);
    let mut slanted = vec![false; marks.len()];
    for kind in 0..KINDS {
        for one in applied.iter_mut().filter(|a| kind_of(&a.correction) == kind) {
            if matches!(one.outcome, Outcome::Done { .. }) {
                one.outcome = match one.correction {
                    Correction::Lag { r } => lag::correct(&mut cast, r),
                    Correction::ProbeOffset { .. } | Correction::ProbeTwoPoint { .. } => {
                        probe::correct(&mut cast, &one.correction)
                    }
                    _ => depths::correct(&mut cast, &one.correction, &marks, &mut slanted),
                };
            }
        }
    }
    Corrected { cast, applied }
}

fn sensible(correction: &Correction) -> bool {
    depths::sensible(correction) && lag::sensible(correction) && probe::sensible(correction)
}

/// Kinds, in the order they are applied.
const KINDS: u8 = 6;

fn kind_of(correction: &Correction) -> u8 {
    match correction {
        Correction::DepthZero { .. } => 0,
        Correction::FirstMark { .. } => 1,
        Correction::Stretch { .. } => 2,
        Correction::Slant { .. } => 3,
        Correction::Lag { .. } => 4,
        Correction::ProbeOffset { .. } | Correction::ProbeTwoPoint { .. } => 5,
    }
}

/// Whether a correction shuts out a later one of the list.
fn excludes(earlier: &Correction, later: &Correction) -> bool {
    match (earlier, later) {
        (
            Correction::Slant { from_m, to_m, .. },
            Correction::Slant { from_m: later_from_m, to_m: later_to_m, .. },
        ) => {
            let (top_m, bottom_m) = (from_m.max(*later_from_m), to_m.min(*later_to_m));
            more_than(bottom_m, top_m) || (from_m == later_from_m && to_m == later_to_m)
        }
        _ => kind_of(earlier) == kind_of(later),
    }
}

/// What a correction changed: how many values, and by how much at most.
#[derive(Default)]
struct Changes {
    changed: usize,
    largest: f64,
}

impl Changes {
    fn note(&mut self, before: f64, after: f64) {
        let by = after - before;
        if by != 0.0 {
            self.changed += 1;
        }
        if by.abs() > self.largest.abs() {
            self.largest = by;
        }
    }

    fn done(self) -> Outcome {
        Outcome::Done { changed: self.changed, largest: self.largest }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cast::{Leg, Reading, Switch};

    fn cast() -> Cast {
        let readings = [1.0, 2.0, 4.0].map(|depth_m| Reading {
            depth_m,
            temp_c: Some(20.0 - depth_m),
            leg: Leg::Down,
            switch: Switch::Kept,
        });
        Cast { readings: readings.to_vec(), digit_c: 0.1, bed_m: Some(5.0) }
    }

    /// Depths and temperatures that come out, to the millionth.
    #[track_caller]
    fn check(list: &[Correction], depths_m: [f64; 3], temps_c: [f64; 3]) -> Vec<Outcome> {
        let got = correct(&cast(), list);
        let near = |a: f64, b: f64| (a - b).abs() < 1e-6;
        for (reading, (z, t)) in got.cast.readings.iter().zip(depths_m.iter().zip(temps_c)) {
            assert!(
                near(reading.depth_m, *z) && near(reading.temp_c.unwrap(), t),
                "{reading:?}, not {z} m {t} °C"
            );
            assert_eq!((reading.leg, reading.switch), (Leg::Down, Switch::Kept));
        }
        assert_eq!(got.applied.len(), list.len());
        for (applied, asked) in got.applied.iter().zip(list) {
            // As text: a number that is none equals nothing.
            assert_eq!(format!("{:?}", applied.correction), format!("{asked:?}"));
        }
        got.applied.iter().map(|a| a.outcome).collect()
    }

    const AS_TAKEN_C: [f64; 3] = [19.0, 18.0, 16.0];

    #[test]
    fn an_empty_list_changes_nothing() {
        assert_eq!(correct(&cast(), &[]), Corrected { cast: cast(), applied: vec![] });
    }

    #[test]
    fn the_order_is_ours_and_the_answers_are_in_the_order_of_the_list() {
        let list = [
            Correction::ProbeOffset { ice_c: 0.5 },
            Correction::Slant { from_m: 2.0, to_m: 4.0, angle_deg: 60.0 },
            Correction::Stretch { factor: 1.5 },
            Correction::FirstMark { gap_m: 0.2 },
            Correction::DepthZero { above_water_m: 0.4 },
        ];
        let got = check(&list, [1.2, 1.35, 2.85], [18.5, 17.5, 15.5]);
        let largest: Vec<(usize, f64)> = got
            .iter()
            .map(|o| match o {
                Outcome::Done { changed, largest } => (*changed, (largest * 1e6).round() / 1e6),
                Outcome::Refused(why) => panic!("{why:?}"),
            })
            .collect();
        assert_eq!(largest, [(3, -0.5), (2, -2.85), (3, 1.9), (3, 0.2), (3, -0.4)]);
    }

    #[test]
    fn of_a_kind_the_first_counts_and_both_probe_checks_are_one_kind() {
        use Correction::{DepthZero, ProbeOffset, ProbeTwoPoint};
        let two_points = ProbeTwoPoint { ice_c: 0.0, read_c: 20.0, true_c: 20.0 };
        let zero = DepthZero { above_water_m: 1.0 };
        let got =
            check(&[zero, ProbeOffset { ice_c: 1.0 }, two_points, zero], [0.0, 1.0, 3.0], [18.0, 17.0, 15.0]);
        assert_eq!(got[2..], [Outcome::Refused(Refusal::Twice); 2]);
    }

    #[test]
    fn slants_follow_one_another_and_do_not_overlap() {
        let slant = |from_m, to_m, angle_deg| Correction::Slant { from_m, to_m, angle_deg };
        let got = check(&[slant(0.0, 2.0, 60.0), slant(2.0, 4.0, 0.0)], [0.5, 1.0, 4.0], AS_TAKEN_C);
        assert!(matches!(got[1], Outcome::Done { changed: 0, largest: 0.0 }), "2 m belongs to the first");
        let got = check(&[slant(0.0, 2.1, 60.0), slant(2.0, 4.0, 60.0)], [0.5, 1.0, 4.0], AS_TAKEN_C);
        assert_eq!(got[1], Outcome::Refused(Refusal::Twice));
        let got = check(&[slant(2.0, 2.0, 60.0), slant(2.0, 2.0, 60.0)], [1.0, 1.0, 4.0], AS_TAKEN_C);
        assert_eq!(got[1], Outcome::Refused(Refusal::Twice));
    }

    #[test]
    fn numbers_that_make_no_sense() {
        use Correction::{DepthZero, FirstMark, Lag, ProbeOffset, ProbeTwoPoint, Slant, Stretch};
        let bad = [
            DepthZero { above_water_m: f64::NAN },
            DepthZero { above_water_m: -20.1 },
            FirstMark { gap_m: f64::INFINITY },
            FirstMark { gap_m: 5.1 },
            Stretch { factor: 0.49 },
            Stretch { factor: 2.1 },
            Stretch { factor: f64::NAN },
            Slant { from_m: 2.0, to_m: 1.0, angle_deg: 10.0 },
            Slant { from_m: 0.0, to_m: f64::INFINITY, angle_deg: 10.0 },
            Slant { from_m: 0.0, to_m: 9.0, angle_deg: 61.0 },
            Slant { from_m: 0.0, to_m: 9.0, angle_deg: -1.0 },
            Lag { r: 1.0 },
            Lag { r: -0.1 },
            Lag { r: f64::NAN },
            ProbeOffset { ice_c: 5.1 },
            ProbeOffset { ice_c: f64::NAN },
            ProbeTwoPoint { ice_c: 5.1, read_c: 20.0, true_c: 20.0 },
            ProbeTwoPoint { ice_c: 0.0, read_c: f64::NAN, true_c: 20.0 },
            ProbeTwoPoint { ice_c: 0.0, read_c: 20.0, true_c: f64::NAN },
            ProbeTwoPoint { ice_c: 0.0, read_c: 20.0, true_c: 0.0 },
            ProbeTwoPoint { ice_c: 0.0, read_c: 20.0, true_c: 15.9 },
            ProbeTwoPoint { ice_c: 0.0, read_c: 20.0, true_c: 25.1 },
        ];
        for one in bad {
            assert_eq!(
                check(&[one], [1.0, 2.0, 4.0], AS_TAKEN_C),
                [Outcome::Refused(Refusal::Senseless)],
                "{one:?}"
            );
        }
        let good = [
            DepthZero { above_water_m: -20.0 },
            FirstMark { gap_m: -5.0 },
            Stretch { factor: 0.5 },
            Stretch { factor: 2.0 },
            Slant { from_m: 0.0, to_m: 9.0, angle_deg: 60.0 },
            ProbeOffset { ice_c: -5.0 },
            ProbeTwoPoint { ice_c: 0.0, read_c: 20.0, true_c: 16.0 },
            ProbeTwoPoint { ice_c: 0.0, read_c: 20.0, true_c: 25.0 },
        ];
        for one in good {
            let got = correct(&cast(), &[one]).applied;
            assert!(matches!(got[0].outcome, Outcome::Done { changed: 3, .. }), "{one:?}: {got:?}");
        }
    }

    #[test]
    fn a_later_one_of_a_kind_is_shut_out_even_by_one_that_makes_no_sense() {
        let list = [Correction::Stretch { factor: 9.0 }, Correction::Stretch { factor: 1.1 }];
        let got = check(&list, [1.0, 2.0, 4.0], AS_TAKEN_C);
        assert_eq!(got, [Outcome::Refused(Refusal::Senseless), Outcome::Refused(Refusal::Twice)]);
    }
}
