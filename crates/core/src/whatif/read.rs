//! Reading the water of a cast again: at other marks, with other legs, waits, digits and marks.

use super::{Legs, Otherwise};
use crate::analysis::{Analysis, Level};
use crate::cast::station::SAME_DEPTH_M;
use crate::cast::{Cast, Leg, Reading, Switch};
use crate::certainty::Unsure;
use crate::random::Random;
use crate::slack::SLACK;

/// Marks on a cable at most.
const MOST_MARKS: f64 = 10_000.0;

/// A cast as it would have been read.
pub(super) struct Read {
    pub cast: Cast,
    pub kept: usize,
    pub drawn: usize,
}

/// Reads the water of `own`, the analysis of `cast`, again; `None` with fewer than two depths in use.
pub(super) fn read(cast: &Cast, own: &Analysis, otherwise: &Otherwise, seed: u64) -> Option<Read> {
    let levels = &own.profile;
    let (first, last) = (levels.first()?, levels.last()?);
    if levels.len() < 2 {
        return None;
    }
    let depths_m = match otherwise.step_m {
        Some(step_m) => marks(first.depth_m, last.depth_m, step_m),
        None => levels.iter().map(|l| l.depth_m).collect(),
    };
    let digit_c = otherwise.digit_c.unwrap_or(cast.digit_c);
    let left_over = otherwise.wait.map_or(0.0, |wait| wait.left_over());
    let usual_m = Unsure::default().mark_sd_m;
    let worse_m = otherwise.mark_sd_m.map_or(0.0, |sd| (sd * sd - usual_m * usual_m).max(0.0).sqrt());
    let mut got = Read { cast: Cast { readings: Vec::new(), digit_c, bed_m: cast.bed_m }, kept: 0, drawn: 0 };
    for leg in legs(levels, otherwise.legs) {
        let mut before_c: Option<f64> = None;
        let mut stop = |depth_m: f64| {
            let mut chance = Random::seeded(seed ^ leg_number(leg), depth_m.to_bits());
            let noise_c = own.pairs.s_used_c * chance.normal();
            let found = at(levels, depth_m);
            let as_read_c = found.level.and_then(|level| of_leg(level, leg));
            got.kept += usize::from(as_read_c.is_some());
            got.drawn += usize::from(as_read_c.is_none());
            // The mark is that of both legs: its place is drawn from the depth alone.
            let astray_m = worse_m * Random::seeded(seed, depth_m.to_bits()).normal();
            let there_c = at(levels, depth_m + astray_m).temp_c - found.temp_c;
            let water_c = as_read_c.unwrap_or(found.temp_c + noise_c) + there_c;
            let temp_c = water_c + left_over * (before_c.unwrap_or(water_c) - water_c);
            before_c = Some(temp_c);
            // A reading taken over as it is keeps what was written, rounded in whatever unit.
            let as_it_is = otherwise.digit_c.is_none() && as_read_c == Some(temp_c);
            let temp_c = if as_it_is { temp_c } else { rounded(temp_c, digit_c) };
            got.cast.readings.push(Reading { depth_m, temp_c: Some(temp_c), leg, switch: Switch::Auto });
        };
        match leg {
            Leg::Up => depths_m.iter().rev().for_each(|z| stop(*z)),
            Leg::Down | Leg::Unknown => depths_m.iter().for_each(|z| stop(*z)),
        }
    }
    Some(got)
}

/// The nearest multiple of a digit; the number itself where there is no digit.
fn rounded(temp_c: f64, digit_c: f64) -> f64 {
    if !(digit_c > 0.0 && digit_c.is_finite()) {
        return temp_c;
    }
    let (digits, a_degree) = ((temp_c / digit_c).round(), (1.0 / digit_c).round());
    // 217 tenths are 21.7 and not 21.700000000000003.
    let whole = (a_degree * digit_c - 1.0).abs() < 1e-9;
    let rounded = if whole { digits / a_degree } else { digits * digit_c };
    if rounded.is_finite() { rounded } else { temp_c }
}

/// Whole multiples of the step from the first depth read to the last.
fn marks(first_m: f64, last_m: f64, step_m: f64) -> Vec<f64> {
    let step_m = step_m.max((last_m - first_m) / MOST_MARKS);
    let (from, to) = (((first_m - SLACK) / step_m).ceil(), ((last_m + SLACK) / step_m).floor());
    let count = (to - from).clamp(-1.0, MOST_MARKS) as i32;
    (0..=count).map(|i| (from + f64::from(i)) * step_m).collect()
}

/// The legs to read: as they were, unless said otherwise. A series that does not say its leg stays one.
fn legs(levels: &[Level], wanted: Option<Legs>) -> Vec<Leg> {
    let down = levels.iter().any(|l| l.down_c.is_some());
    let up = levels.iter().any(|l| l.up_c.is_some());
    match (wanted, down, up) {
        (Some(Legs::Both), ..) | (None, true, true) => vec![Leg::Down, Leg::Up],
        (_, false, false) => vec![Leg::Unknown],
        (Some(Legs::Up), ..) | (None, false, true) => vec![Leg::Up],
        (Some(Legs::Down), ..) | (None, true, false) => vec![Leg::Down],
    }
}

/// What was read there on that leg, °C. A series that does not say its leg stands for the one down.
fn of_leg(level: &Level, leg: Leg) -> Option<f64> {
    let untold = level.down_c.is_none() && level.up_c.is_none();
    match leg {
        Leg::Down | Leg::Unknown if untold => Some(level.temp_c),
        Leg::Down => level.down_c,
        Leg::Up => level.up_c,
        Leg::Unknown => None,
    }
}

fn leg_number(leg: Leg) -> u64 {
    match leg {
        Leg::Down => 1,
        Leg::Up => 2,
        Leg::Unknown => 3,
    }
}

/// The water at a depth.
struct Found<'a> {
    /// The level that was read just there.
    level: Option<&'a Level>,
    /// On the straight line between two levels; above the first and below the last as there.
    temp_c: f64,
}

fn at(levels: &[Level], depth_m: f64) -> Found<'_> {
    let below = levels.partition_point(|l| l.depth_m < depth_m - SAME_DEPTH_M);
    let (upper, lower) = (below.checked_sub(1).and_then(|i| levels.get(i)), levels.get(below));
    let level = lower.filter(|l| (l.depth_m - depth_m).abs() <= SAME_DEPTH_M);
    let temp_c = match (level, upper, lower) {
        (Some(level), ..) => level.temp_c,
        (None, Some(a), Some(b)) => {
            a.temp_c + (depth_m - a.depth_m) / (b.depth_m - a.depth_m) * (b.temp_c - a.temp_c)
        }
        (None, Some(end), None) | (None, None, Some(end)) => end.temp_c,
        (None, None, None) => f64::NAN,
    };
    Found { level, temp_c }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn rounding_in_every_unit() {
        assert_eq!(rounded(21.74, 0.1), 21.7);
        assert_eq!(rounded(21.74, 0.5), 21.5);
        assert_eq!(rounded(21.74, 2.0), 22.0);
        assert!((rounded(20.02, 5.0 / 90.0) - 20.0).abs() < 1e-12);
        assert_eq!([rounded(21.74, 0.0), rounded(21.74, f64::NAN), rounded(21.74, 5e-324)], [21.74; 3]);
    }

    #[test]
    fn water_between_above_and_below_what_was_read() {
        let levels = [Level::bare(1.0, 20.0, 0.1), Level::bare(2.0, 18.0, 0.1), Level::bare(4.0, 10.0, 0.1)];
        let temps_c = [0.0, 1.0, 1.25, 2.0, 3.0, 9.0].map(|z| at(&levels, z).temp_c);
        assert_eq!(temps_c, [20.0, 20.0, 19.5, 18.0, 14.0, 10.0]);
        let read = [1.0, 2.0 + 5e-7, 2.0 - 5e-7, 2.1, 4.0].map(|z| at(&levels, z).level.map(|l| l.depth_m));
        assert_eq!(read, [Some(1.0), Some(2.0), Some(2.0), None, Some(4.0)]);
    }

    #[test]
    fn marks_from_the_first_depth_to_the_last() {
        assert_eq!(marks(0.0, 2.0, 0.5), [0.0, 0.5, 1.0, 1.5, 2.0]);
        assert_eq!(marks(0.3, 2.4, 0.7), [0.7, 1.4, 2.0999999999999996]);
        assert!(marks(0.3, 0.9, 1.0).is_empty());
        assert_eq!(marks(-20_000.0, 20_000.0, 0.05).len(), 10_001);
    }
}
