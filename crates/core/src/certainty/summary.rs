//! Ranges from trials.

use super::plan::{Depth, Plan};
use crate::order::sort_numbers;
use crate::slack::more_than;

/// More than this share of trials without such a depth: there is none to speak of.
pub const MOSTLY: f64 = 0.5;

/// How sure the depths of one cast are.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Certainty {
    /// Number of trials.
    pub count: u32,
    /// One for every depth sought.
    pub depths: Vec<Ranged>,
    /// For every depth that is the middle of a step: the share of trials in each step of the profile, downward.
    pub shares: Vec<(Depth, Vec<Share>)>,
}

impl Certainty {
    /// What the trials say of one depth; `None` when it was not sought.
    pub fn of(&self, depth: Depth) -> Option<&Ranged> {
        self.depths.iter().find(|r| r.depth == depth)
    }

    /// The share of trials in each step, for a depth that is the middle of one.
    pub fn shares(&self, depth: Depth) -> Option<&[Share]> {
        self.shares.iter().find(|(d, _)| *d == depth).map(|(_, shares)| shares.as_slice())
    }
}

/// One depth with its range: median and the ends of the middle 95 % of the trials that have such a depth. A trial that
/// does not reach the depth counts as deeper than every other.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Ranged {
    /// The depth.
    pub depth: Depth,
    /// The value of the analysis, metres; `None` for "at least as deep as the last reading".
    pub value_m: Option<f64>,
    /// Shallower end of the range, metres; `None` below the last reading, or without trials.
    pub low_m: Option<f64>,
    /// Median, metres; `None` below the last reading, or without trials.
    pub median_m: Option<f64>,
    /// Deeper end of the range, metres; `None` below the last reading, or without trials.
    pub high_m: Option<f64>,
    /// Share of all trials that do not reach it: it lies below the last reading.
    pub beyond_share: f64,
    /// Share of all trials with no such depth.
    pub none_share: f64,
    /// Why no depth should be told, if so.
    pub refused: Option<Refused>,
}

/// Why a depth should not be told as a number (conventions of ours on methods 5.8 and 8.3).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refused {
    /// In more than half of the trials there is no such depth.
    MostlyNone,
    /// The range is longer than half of the cast: these readings cannot tell.
    TooWide,
}

/// Share of the trials in one step of the profile. All shares of a depth and its `none_share` add up to 1.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Share {
    /// Upper depth of the step, metres.
    pub top_m: f64,
    /// Lower depth of the step, metres.
    pub bottom_m: f64,
    /// Share of all trials.
    pub share: f64,
}

/// Ranges from any number of whole trials in any order; what is left over of a trial is cut.
///
/// Percentiles lie on the straight line between neighbours in order, at place p·(n−1) from 0, as general-purpose
/// libraries have it by default.
///
/// * `drawn`: from [`trials`](super::trials) of the same plan
pub fn summary(plan: &Plan, drawn: &[f64]) -> Certainty {
    let width = plan.width();
    let Some(rows) = drawn.len().checked_div(width) else { return Certainty::default() };
    let count = u32::try_from(rows).unwrap_or(u32::MAX);
    let mut certainty = Certainty { count, ..Certainty::default() };
    let mut column = 0;
    for (depth, value_m) in &plan.sought {
        let numbers = || drawn.iter().skip(column).step_by(width).take(rows);
        let mut found_m: Vec<f64> = numbers().copied().filter(|z| z.is_finite()).collect();
        sort_numbers(&mut found_m);
        let beyond = numbers().filter(|z| **z == f64::INFINITY).count();
        let none = rows - beyond - found_m.len();
        let at = |p| percentile(&found_m, found_m.len() + beyond, p);
        let share = |n: usize| if rows > 0 { n as f64 / rows as f64 } else { 0.0 };
        let mut ranged = Ranged {
            depth: *depth,
            value_m: *value_m,
            low_m: at(0.025),
            median_m: at(0.5),
            high_m: at(0.975),
            beyond_share: share(beyond),
            none_share: share(none),
            refused: None,
        };
        ranged.refused = refused(plan, &ranged);
        certainty.depths.push(ranged);
        if depth.is_a_middle() {
            let places = drawn.iter().skip(column + 1).step_by(width).take(rows);
            certainty.shares.push((*depth, shares(plan, places, rows)));
            column += 1;
        }
        column += 1;
    }
    certainty
}

/// Percentile of an ascending list that stands for the first of `count` numbers, the rest being beyond; `None` where it
/// falls among those.
fn percentile(ascending: &[f64], count: usize, p: f64) -> Option<f64> {
    let place = p * count.checked_sub(1)? as f64;
    let (below, part) = (place.floor(), place.fract());
    let a = *ascending.get(below as usize)?;
    if part == 0.0 {
        return Some(a);
    }
    let b = *ascending.get(below as usize + 1)?;
    Some(a + part * (b - a))
}

fn refused(plan: &Plan, ranged: &Ranged) -> Option<Refused> {
    let (first, last) = (plan.values.first()?, plan.values.last()?);
    if more_than(ranged.none_share, MOSTLY) {
        return Some(Refused::MostlyNone);
    }
    let low_m = ranged.low_m?;
    let high_m = ranged.high_m.unwrap_or(last.level.depth_m);
    let whole_m = last.level.depth_m - first.level.depth_m;
    more_than(high_m - low_m, whole_m / 2.0).then_some(Refused::TooWide)
}

fn shares<'a>(plan: &Plan, places: impl Iterator<Item = &'a f64>, rows: usize) -> Vec<Share> {
    let steps = plan.values.iter().zip(plan.values.iter().skip(1));
    let mut counts: Vec<u32> = vec![0; plan.values.len().saturating_sub(1)];
    for place in places.filter(|place| place.is_finite()) {
        if let Some(count) = counts.get_mut(*place as usize) {
            *count = count.saturating_add(1);
        }
    }
    steps
        .zip(counts)
        .map(|((above, below), count)| Share {
            top_m: above.level.depth_m,
            bottom_m: below.level.depth_m,
            share: if rows > 0 { f64::from(count) / rows as f64 } else { 0.0 },
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::super::Unsure;
    use super::super::plan::Unsettled;
    use super::*;
    use crate::analysis::{Level, Method};

    #[test]
    fn percentiles_lie_between_neighbours_and_stop_where_the_rest_is_beyond() {
        let found = [1.0, 2.0, 4.0];
        assert_eq!(percentile(&found, 3, 0.5), Some(2.0));
        assert_eq!(percentile(&found, 3, 0.75), Some(3.0));
        assert_eq!(percentile(&found, 3, 1.0), Some(4.0));
        // Two more are beyond: 1, 2, 4, ∞, ∞.
        assert_eq!(percentile(&found, 5, 0.5), Some(4.0));
        assert_eq!(percentile(&found, 5, 0.6), None);
        assert_eq!(percentile(&[], 5, 0.0), None);
        assert_eq!(percentile(&[], 0, 0.5), None);
    }

    /// What numbers say of a thermocline and a mixed layer on marks at 0, 1, 2 and 3 m.
    fn told(drawn: &[f64]) -> Certainty {
        let value = |z: f64| Unsettled {
            level: Level::bare(z, 10.0, 0.1),
            noise_sd_c: 0.1,
            rounding_half_c: 0.0,
            mark_sd_m: 0.0,
            least_m: 0.25,
            pair_sd_c: 0.14,
        };
        let plan = Plan {
            method: Method::default(),
            s_c: 0.1,
            pairs: 0.0,
            values: [0.0, 1.0, 2.0, 3.0].map(value).to_vec(),
            ends: (1, 3),
            sought: vec![(Depth::Thermocline, Some(1.5)), (Depth::MixedLayer, None)],
            unsure: Unsure::default(),
        };
        summary(&plan, drawn)
    }

    #[test]
    fn a_range_is_the_middle_95_in_100() {
        let rows: Vec<f64> = (0..=1000).flat_map(|i| [1.5, 1.0, f64::from(i) / 1000.0]).collect();
        let mixed = *told(&rows).of(Depth::MixedLayer).unwrap();
        let got = [mixed.low_m, mixed.median_m, mixed.high_m].map(Option::unwrap);
        let near = got.iter().zip([0.025, 0.5, 0.975]).all(|(got, want)| (got - want).abs() < 1e-9);
        assert!(near, "2.5th, 50th and 97.5th percentile of 0 to 1 m: {got:?}");
    }

    #[test]
    fn shares_of_the_steps_and_of_those_without() {
        let (none, beyond) = (f64::NAN, f64::INFINITY);
        let got = told(&[1.5, 1.0, 2.0, 0.9, 0.0, beyond, none, none, 2.5, 3.2, 2.0, beyond]);
        assert_eq!(got.count, 4);
        let shares: Vec<f64> = got.shares(Depth::Thermocline).unwrap().iter().map(|s| s.share).collect();
        assert_eq!(shares, [0.25, 0.25, 0.25]);
        assert_eq!(got.shares(Depth::MixedLayer), None);
        let mixed = got.of(Depth::MixedLayer).unwrap();
        assert_eq!((mixed.beyond_share, mixed.none_share), (0.5, 0.0));
        assert_eq!((mixed.median_m, mixed.high_m), (None, None));
        assert_eq!(got.of(Depth::Thermocline).unwrap().none_share, 0.25);
    }

    #[test]
    fn refusals_and_their_limits() {
        let none = f64::NAN;
        let thermocline = |drawn: &[f64]| {
            let rows: Vec<f64> = drawn.iter().flat_map(|z| [*z, 1.0, 2.0]).collect();
            told(&rows).of(Depth::Thermocline).unwrap().refused
        };
        assert_eq!(thermocline(&[1.5, 1.5, none, none]), None, "half is not more than half");
        assert_eq!(thermocline(&[1.5, none, none]), Some(Refused::MostlyNone));
        assert_eq!(thermocline(&[none; 3]), Some(Refused::MostlyNone));
        assert_eq!(thermocline(&[1.0; 5]), None);
        assert_eq!(thermocline(&[0.0, 0.0, 1.5, 1.5]), None, "1.5 m is half of the cast");
        assert_eq!(thermocline(&[0.0, 0.0, 1.7, 1.7]), Some(Refused::TooWide));
    }
}
