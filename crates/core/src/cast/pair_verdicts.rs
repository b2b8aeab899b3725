//! Each depth read twice: is the pair good, worth another look, or to be read again?

use super::pairs::{CABLE_WOBBLE_M, REPEAT_C};
use crate::analysis::{Level, Step};
use crate::slack::at_most;

/// A pair this close is good, °C, before the allowance for the slope.
pub const GOOD_C: f64 = 0.2;

/// What to do about a pair.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Repeat {
    /// Close enough.
    Good,
    /// Look at it again.
    LookAgain,
    /// Read it again.
    ReadAgain,
}

/// One depth read going down and coming up.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct PairVerdict {
    /// Depth, metres.
    pub depth_m: f64,
    /// Down − up, °C.
    pub d_c: f64,
    /// Up to this the pair is good, °C: 0.2 and what a cable that swings by 0.1 m explains.
    pub allowed_c: f64,
    /// What to do.
    pub verdict: Repeat,
}

/// Verdicts of every level read both ways, downward.
///
/// |d| ≤ 0.2 °C is good, ≤ 0.5 °C to be looked at, beyond to be read again; both limits grow by 0.1 m times the steeper
/// of the two neighbouring steps, in which a swinging cable alone makes a difference. A convention of ours on published
/// field limits, see [`UsgsField`](crate::bibliography::UsgsField).
///
/// * `steps`: the gradient table of the same levels
///
/// ```
/// use layercast_core::{Level, cast::pair_verdicts::{Repeat, pair_verdicts}};
/// let level = Level { down_c: Some(20.4), up_c: Some(20.0), ..Level::bare(1.0, 20.2, 0.1) };
/// assert_eq!(pair_verdicts(&[level], &[])[0].verdict, Repeat::LookAgain);
/// ```
pub fn pair_verdicts(levels: &[Level], steps: &[Step]) -> Vec<PairVerdict> {
    (levels.iter().enumerate())
        .filter_map(|(place, level)| {
            let d_c = level.down_c? - level.up_c?;
            let wobble_c = slope_c_per_m(steps, place) * CABLE_WOBBLE_M;
            let verdict = if at_most(d_c.abs(), GOOD_C + wobble_c) {
                Repeat::Good
            } else if at_most(d_c.abs(), REPEAT_C + wobble_c) {
                Repeat::LookAgain
            } else {
                Repeat::ReadAgain
            };
            Some(PairVerdict { depth_m: level.depth_m, d_c, allowed_c: GOOD_C + wobble_c, verdict })
        })
        .collect()
}

/// The steeper of the steps above and below a level, °C per metre, warming or cooling; 0 without any.
pub(crate) fn slope_c_per_m(steps: &[Step], place: usize) -> f64 {
    let near = |i: Option<usize>| i.and_then(|i| steps.get(i)).map_or(0.0, |s| s.cooling_c_per_m.abs());
    near(place.checked_sub(1)).max(near(Some(place)))
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::layers::steps::steps;

    /// Levels a metre apart as (down, up).
    #[track_caller]
    fn check(pairs: &[(f64, Option<f64>)], want: &[(f64, f64, Repeat)]) {
        let levels: Vec<Level> = (pairs.iter().enumerate())
            .map(|(i, (down, up))| Level {
                down_c: Some(*down),
                up_c: *up,
                ..Level::bare(i as f64, *down, 0.1)
            })
            .collect();
        let got = pair_verdicts(&levels, &steps(&levels));
        assert_eq!(got.len(), want.len());
        for (got, (depth_m, allowed_c, verdict)) in got.iter().zip(want) {
            assert!((got.allowed_c - allowed_c).abs() < 1e-9, "{got:?}");
            assert_eq!((got.depth_m, got.verdict), (*depth_m, *verdict), "{got:?}");
        }
    }

    #[test]
    fn limits_where_the_water_does_not_change() {
        let level = |down: f64, up: f64| {
            let level = Level { down_c: Some(down), up_c: Some(up), ..Level::bare(1.0, 20.0, 0.1) };
            let got = pair_verdicts(&[level], &[])[0];
            assert!((got.d_c - (down - up)).abs() < 1e-12 && got.allowed_c == 0.2);
            got.verdict
        };
        assert_eq!(level(20.2, 20.0), Repeat::Good);
        assert_eq!(level(20.0, 20.21), Repeat::LookAgain);
        assert_eq!(level(20.0, 20.5), Repeat::LookAgain);
        assert_eq!(level(20.51, 20.0), Repeat::ReadAgain);
    }

    #[test]
    fn a_steep_step_on_either_side_excuses_more() {
        check(
            &[(20.0, Some(20.0)), (20.0, Some(19.2)), (14.0, Some(15.11)), (14.0, None), (14.0, Some(14.3))],
            &[
                (0.0, 0.2, Repeat::Good),
                (1.0, 0.8, Repeat::Good),
                (2.0, 0.8, Repeat::ReadAgain),
                (4.0, 0.2, Repeat::LookAgain),
            ],
        );
    }

    #[test]
    fn nothing_read_twice_is_no_verdict() {
        check(&[(20.0, None), (19.0, None)], &[]);
        assert!(pair_verdicts(&[], &[]).is_empty());
    }
}
