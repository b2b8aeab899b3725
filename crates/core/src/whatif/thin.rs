//! The same readings at fewer marks: nothing is drawn, only left out.

use crate::analysis::Level;
use crate::slack::{SLACK, at_most};

/// Two depths closer than this are the same mark, metres.
const SAME_MARK_M: f64 = 1e-6;
/// Most marks.
const MOST_MARKS: f64 = 10_000.0;

/// The levels at whole multiples of a step \[m\] from the first depth read to the last.
///
/// `None` where one of them was not read, where there are fewer than two, or where the step is not above zero.
///
/// ```
/// use layercast_core::{Level, whatif::thinned};
/// let levels: Vec<Level> = (0..9).map(|i| Level::bare(f64::from(i) * 0.5, 20.0 - f64::from(i), 0.1)).collect();
/// let every_2_m: Vec<f64> = thinned(&levels, 2.0).unwrap().iter().map(|l| l.depth_m).collect();
/// assert_eq!(every_2_m, [0.0, 2.0, 4.0]);
/// assert_eq!(thinned(&levels, 0.75), None);
/// ```
pub fn thinned(levels: &[Level], step_m: f64) -> Option<Vec<Level>> {
    let (first_m, last_m) = (levels.first()?.depth_m, levels.last()?.depth_m);
    let (from, to) = (((first_m - SLACK) / step_m).ceil(), ((last_m + SLACK) / step_m).floor());
    if !(step_m > 0.0 && at_most(to - from, MOST_MARKS) && to > from) {
        return None;
    }
    let mut kept = Vec::new();
    let mut next = from;
    for level in levels {
        if (level.depth_m - next * step_m).abs() < SAME_MARK_M {
            kept.push(*level);
            next += 1.0;
        }
    }
    (kept.len() as f64 >= to - from + 1.0).then_some(kept)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn at(depths_m: &[f64]) -> Vec<Level> {
        depths_m.iter().map(|z| Level::bare(*z, 20.0 - z, 0.1)).collect()
    }

    #[track_caller]
    fn check(depths_m: &[f64], step_m: f64, want: Option<&[f64]>) {
        let got = thinned(&at(depths_m), step_m).map(|l| l.iter().map(|l| l.depth_m).collect::<Vec<_>>());
        assert_eq!(got.as_deref(), want);
    }

    #[test]
    fn only_what_was_read_is_kept() {
        check(&[0.0, 1.0, 2.0, 3.0, 4.0, 5.0], 2.0, Some(&[0.0, 2.0, 4.0]));
        check(&[0.5, 1.0, 2.0, 3.0, 4.0], 2.0, Some(&[2.0, 4.0]));
        check(&[0.0, 1.0, 3.0, 4.0], 2.0, None);
        check(&[0.0, 0.3, 0.6], 0.3, Some(&[0.0, 0.3, 0.6]));
        check(&[0.0, 1.0], 2.0, None);
        check(&[0.0, 2.0], 2.0, Some(&[0.0, 2.0]));
        check(&[], 2.0, None);
        for wild in [0.0, -2.0, f64::NAN, f64::INFINITY, 1e-308] {
            check(&[0.0, 2.0, 4.0], wild, None);
        }
        check(&[0.0, 1e308], 2.0, None);
    }

    #[test]
    fn levels_keep_their_temperature() {
        let levels = at(&[0.0, 1.0, 2.0]);
        assert_eq!(thinned(&levels, 2.0).unwrap(), [levels[0], levels[2]]);
    }
}
