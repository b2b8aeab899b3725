//! Runs of steep steps: the layers of a cast, which of them can be believed, and which is the main one.

use crate::analysis::{Level, Step};
use crate::slack::{at_least, at_most, more_than};
use std::ops::Range;

/// A near-surface layer ends at most this deep, metres.
pub const NEAR_SURFACE_M: f64 = 2.0;
/// A near-surface layer that is the only one cools by less than this, °C.
pub const DAY_WARMING_C: f64 = 5.0;
/// A difference of two readings is believed beyond this many s: the repeatability limit, 1.96·√2 rounded.
pub const BELIEVABLE: f64 = 2.8;

/// An unbroken run of steep steps.
#[derive(Clone, Debug, PartialEq)]
pub struct Run {
    /// Places of its steps; the levels are `steps.start..=steps.end`.
    pub steps: Range<usize>,
    /// Upper edge, metres.
    pub top_m: f64,
    /// Lower edge, metres.
    pub bottom_m: f64,
    /// Temperature lost from the upper edge to the lower, °C.
    pub drop_c: f64,
    /// Density gained from the upper edge to the lower, kg m⁻³.
    pub density_gain: f64,
}

/// Every run of steps that cool by at least `steep_c_per_m` \[°C/m\], downward.
///
/// Runs parted only by steps with g ≥ threshold − 2u are one layer: noise must not cut a broad layer in two. With
/// σ = 0 nothing is joined.
///
/// * `steps`: the gradient table of `levels`
///
/// Source: 1 °C per metre is [`Birge1897`](crate::bibliography::Birge1897)'s; joining is a convention of ours.
///
/// ```
/// use layercast_core::{Level, layers::{runs::runs, steps::steps}};
/// let levels = [20.0, 20.0, 17.0, 16.6, 14.0, 14.0].iter().enumerate();
/// let exact: Vec<Level> = levels.clone().map(|(i, t)| Level::bare(i as f64 * 0.5, *t, 0.0)).collect();
/// assert_eq!(runs(&exact, &steps(&exact), 1.0).len(), 2);
/// let noisy: Vec<Level> = levels.map(|(i, t)| Level::bare(i as f64 * 0.5, *t, 0.1)).collect();
/// assert_eq!(runs(&noisy, &steps(&noisy), 1.0).len(), 1);
/// ```
pub fn runs(levels: &[Level], steps: &[Step], steep_c_per_m: f64) -> Vec<Run> {
    let mut ranges: Vec<Range<usize>> = Vec::new();
    let mut unbroken = false; // since the last steep step, nothing but steps that may be steep
    for (i, step) in steps.iter().enumerate() {
        if at_least(step.cooling_c_per_m, steep_c_per_m) {
            match ranges.last_mut() {
                Some(range) if unbroken => range.end = i + 1,
                _ => ranges.push(i..i + 1),
            }
            unbroken = true;
        } else if !at_least(step.cooling_c_per_m, steep_c_per_m - 2.0 * step.u_c_per_m) {
            unbroken = false;
        }
    }
    ranges
        .into_iter()
        .filter_map(|range| {
            let (top, bottom) = (levels.get(range.start)?, levels.get(range.end)?);
            Some(Run {
                top_m: top.depth_m,
                bottom_m: bottom.depth_m,
                drop_c: top.temp_c - bottom.temp_c,
                density_gain: bottom.density - top.density,
                steps: range,
            })
        })
        .collect()
}

/// Those runs whose drop goes beyond 2.8 s: read once with 0.2 °C noise, half of all truly mixed casts hold some
/// "1 °C per metre" step.
///
/// * `s_c`: standard deviation of one reading \[°C\], as used for ranges
pub fn surviving(mut runs: Vec<Run>, s_c: f64) -> Vec<Run> {
    runs.retain(|run| more_than(run.drop_c, BELIEVABLE * s_c));
    runs
}

/// The layers of a cast.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Layers {
    /// The run with the largest density difference; of equals the shallower. `None` when there is no run, or only a
    /// near-surface one.
    pub main: Option<Run>,
    /// A near-surface run beside the main one, or the only one: likely a day's warming. Of several the one with the
    /// largest density difference.
    pub warm_today: Option<Run>,
    /// Places of all runs but the main one.
    pub others: Vec<Range<usize>>,
    /// Number of runs that are not near the surface.
    pub deep: usize,
}

/// Which run is the main layer and which is today's warm layer (conventions of ours).
///
/// *Near-surface*: ends within 2 m of the surface with another run below it. The main layer is never called that,
/// unless it is *near-surface only*: the only run, its bottom at most 2 m deep, its drop under 5 °C and the last reading
/// at least 2 m below it. Then there is no main layer.
///
/// * `runs`: the surviving runs, downward
/// * `deepest_m`: depth of the last level \[m\]
pub fn layers(runs: &[Run], deepest_m: f64) -> Layers {
    let Some(main) = largest(runs.iter()) else { return Layers::default() };
    let shallow = |run: &Run| at_most(run.bottom_m, NEAR_SURFACE_M);
    let only = runs.len() == 1
        && shallow(main)
        && main.drop_c < DAY_WARMING_C - crate::slack::SLACK
        && at_least(deepest_m - main.bottom_m, NEAR_SURFACE_M);
    if only {
        return Layers { warm_today: Some(main.clone()), ..Layers::default() };
    }
    let lowest = runs.last().map_or(0, |run| run.steps.start);
    let near_surface = |run: &&Run| shallow(run) && run.steps.start < lowest && run.steps != main.steps;
    Layers {
        main: Some(main.clone()),
        warm_today: largest(runs.iter().filter(near_surface)).cloned(),
        others: runs.iter().filter(|run| run.steps != main.steps).map(|run| run.steps.clone()).collect(),
        deep: runs.iter().filter(|run| !near_surface(run)).count(),
    }
}

/// The run with the largest density difference, the first of equals.
fn largest<'a>(runs: impl Iterator<Item = &'a Run>) -> Option<&'a Run> {
    runs.reduce(|best, run| if run.density_gain > best.density_gain { run } else { best })
}

#[cfg(test)]
mod tests {
    use super::super::steps::steps;
    use super::*;

    fn runs_of(temps_c: &[f64], sd_c: f64) -> (Vec<Run>, f64) {
        let levels: Vec<Level> =
            temps_c.iter().enumerate().map(|(i, t)| Level::bare(i as f64 * 0.5, *t, sd_c)).collect();
        let found = surviving(runs(&levels, &steps(&levels), 1.0), sd_c);
        (found, levels.last().map_or(0.0, |l| l.depth_m))
    }

    /// Main layer and today's warm layer, as (top, bottom).
    #[track_caller]
    fn check(temps_c: &[f64], sd_c: f64, main: Option<(f64, f64)>, warm: Option<(f64, f64)>) {
        let (found, deepest_m) = runs_of(temps_c, sd_c);
        let got = layers(&found, deepest_m);
        let edges = |run: Option<Run>| run.map(|r| (r.top_m, r.bottom_m));
        assert_eq!((edges(got.main), edges(got.warm_today)), (main, warm));
    }

    #[test]
    fn exactly_one_degree_per_metre_is_steep() {
        check(&[20.0, 20.0, 19.5, 19.0, 19.0], 0.0, Some((0.5, 1.5)), None);
    }

    #[test]
    fn a_drop_that_noise_can_make_is_no_layer() {
        check(&[20.0, 20.0, 19.5, 19.5, 19.5], 0.2, None, None);
        check(&[20.0, 20.0, 19.3, 19.3, 19.3], 0.2, Some((0.5, 1.0)), None);
    }

    #[test]
    fn a_days_warming_above_the_season_is_told_apart() {
        let temps_c = [27.0, 25.0, 25.0, 25.0, 25.0, 25.0, 22.0, 17.0, 13.0, 12.9];
        check(&temps_c, 0.0, Some((2.5, 4.0)), Some((0.0, 0.5)));
    }

    #[test]
    fn a_days_warming_alone_is_no_main_layer() {
        let temps_c = [24.2, 24.0, 22.8, 21.6, 21.5, 21.5, 21.5, 21.5, 21.5];
        check(&temps_c, 0.0, None, Some((0.5, 1.5)));
    }

    #[test]
    fn a_strong_or_bottom_near_shallow_layer_is_a_layer() {
        let strong = [24.0, 24.0, 21.0, 18.0, 18.0, 18.0, 18.0, 18.0, 18.0];
        check(&strong, 0.0, Some((0.5, 1.5)), None);
        let pond = [24.2, 24.0, 22.8, 21.6, 21.5, 21.5];
        check(&pond, 0.0, Some((0.5, 1.5)), None);
    }

    #[test]
    fn the_heaviest_step_is_the_main_layer_even_near_the_surface() {
        let temps_c = [30.0, 30.0, 24.0, 24.0, 24.0, 24.0, 24.0, 23.0, 23.0];
        check(&temps_c, 0.0, Some((0.5, 1.0)), None);
        let (found, deepest_m) = runs_of(&temps_c, 0.0);
        assert_eq!(layers(&found, deepest_m).deep, 2);
        // The lower of two near the surface has no other below it: a day's warming lies above the season's.
        check(&[30.0, 30.0, 24.0, 24.0, 23.0, 23.0, 23.0, 23.0, 23.0], 0.0, Some((0.5, 1.0)), None);
    }

    #[test]
    fn the_main_layer_gains_most_density_not_loses_most_degrees() {
        // 30 → 25 °C gains 1.40 kg/m³, 25 → 19 °C only 1.36.
        let temps_c = [30.0, 30.0, 30.0, 30.0, 30.0, 30.0, 25.0, 25.0, 25.0, 19.0, 19.0];
        check(&temps_c, 0.0, Some((2.5, 3.0)), None);
    }

    #[test]
    fn no_run_no_layer() {
        check(&[20.0, 19.9, 19.8], 0.0, None, None);
        check(&[], 0.0, None, None);
    }
}
