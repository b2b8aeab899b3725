//! Marks that count as the edges of the steep layer, and those that the idea "1 °C in a step" leads to.

use crate::questions::water::{SLACK, Source, Water};
use layercast_core::{Level, Step};

/// Two depths closer than this are the same mark, metres.
const SAME_M: f64 = 1e-6;
/// Two rates closer than this are the same, °C per metre.
const TIE_C_PER_M: f64 = 1e-6;

/// The layer with every mark that counts as an edge of it.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Edges {
    /// Upper edge by the class's rule, metres.
    pub top_m: f64,
    /// Lower edge by the class's rule, metres.
    pub bottom_m: f64,
    /// It touches the last reading.
    pub cut_off: bool,
    /// Upper edges that count, metres.
    pub tops_m: Vec<f64>,
    /// Lower edges that count, metres.
    pub bottoms_m: Vec<f64>,
}

/// The rate that makes a layer steep, °C per metre.
pub(super) fn steep_c_per_m(water: &Water) -> f64 {
    water.analysis().method.steep_c_per_m
}

/// A depth is one of these edges.
pub(super) fn is_edge(edges_m: &[f64], depth_m: f64) -> bool {
    edges_m.iter().any(|z| (z - depth_m).abs() < SAME_M)
}

/// The layer that is asked for; `None` where no step reaches the rate beyond chance.
pub(super) fn edges(water: &Water) -> Option<Edges> {
    let found = water.analysis();
    let main = found.metalimnion.map(|m| (m.top_m, m.bottom_m, m.cut_off));
    let today = found.warm_layer_today.filter(|w| w.only).map(|w| (w.top_m, w.bottom_m, false));
    let (top_m, bottom_m, cut_off) = main.or(today)?;
    let steep = steep_c_per_m(water);
    let steps = water.steps();
    let mut tops_m = vec![top_m];
    let mut bottoms_m = vec![bottom_m];
    let same = |a: f64, b: f64| (a - b).abs() < SAME_M;
    // One interval further out where that one may reach the rate, one further in where the outermost may not.
    let may_reach = |s: &Step| s.cooling_c_per_m >= steep - 2.0 * s.u_c_per_m - SLACK;
    let may_not = |s: &Step| s.cooling_c_per_m <= steep + 2.0 * s.u_c_per_m + SLACK;
    for step in steps {
        if same(step.bottom_m, top_m) && may_reach(step) {
            tops_m.push(step.top_m);
        }
        if same(step.top_m, top_m) && may_not(step) && !same(step.bottom_m, bottom_m) {
            tops_m.push(step.bottom_m);
        }
        if same(step.top_m, bottom_m) && may_reach(step) {
            bottoms_m.push(step.bottom_m);
        }
        if same(step.bottom_m, bottom_m) && may_not(step) && !same(step.top_m, top_m) {
            bottoms_m.push(step.top_m);
        }
    }
    // The unbroken run around the steepest step, by each way of reading.
    let both = found.pairs.count > 0;
    let sources: &[Source] = if both { &[Source::Mean, Source::Down, Source::Up] } else { &[Source::Mean] };
    for source in sources {
        let by: Vec<(f64, f64, f64)> =
            drops(water, *source).into_iter().map(|(a, b, drop)| (a, b, drop / (b - a))).collect();
        // Of equal steepest steps apart from one another each has its run.
        let inside = |s: &(f64, f64, f64)| s.0 < bottom_m - SAME_M && s.1 > top_m + SAME_M;
        let most = by.iter().filter(|s| inside(s)).map(|s| s.2).fold(f64::NEG_INFINITY, f64::max);
        for step in by.iter().filter(|s| inside(s) && s.2 >= most - TIE_C_PER_M) {
            if let Some((top, bottom)) = run(&by, steep, (step.0, step.1)) {
                tops_m.push(top);
                bottoms_m.push(bottom);
            }
        }
    }
    for list in [&mut tops_m, &mut bottoms_m] {
        layercast_core::order::sort_by(list, f64::total_cmp);
        list.dedup_by(|a, b| same(*a, *b));
    }
    Some(Edges { top_m, bottom_m, cut_off, tops_m, bottoms_m })
}

/// Where "at least 1 °C", not divided by the step, puts the layer, metres; `None` where no step changes that much.
pub(super) fn drop_run(water: &Water) -> Option<(f64, f64)> {
    let drops = drops(water, Source::Mean);
    let steep = steep_c_per_m(water);
    let about = edges(water).map(|e| (e.top_m, e.bottom_m)).or_else(|| {
        let most = drops.iter().max_by(|a, b| a.2.total_cmp(&b.2))?;
        Some((most.0, most.1))
    })?;
    run(&drops, steep, about)
}

/// Where a step reaches the rate by some way of reading, though no layer is beyond chance: the run around its steepest step.
pub(super) fn runs_by_chance(water: &Water) -> Vec<(f64, f64)> {
    let run_by = |source: Source| {
        let by: Vec<(f64, f64, f64)> =
            drops(water, source).into_iter().map(|(a, b, drop)| (a, b, drop / (b - a))).collect();
        run(&by, steep_c_per_m(water), (f64::NEG_INFINITY, f64::INFINITY))
    };
    [Source::Mean, Source::Down, Source::Up].into_iter().filter_map(run_by).collect()
}

/// What the water loses over each step, by some readings: (top, bottom, °C).
fn drops(water: &Water, source: Source) -> Vec<(f64, f64, f64)> {
    let at = |l: &Level| Some((l.depth_m, Water::of(l, source)?));
    let levels: Vec<(f64, f64)> = water.levels().iter().filter_map(at).collect();
    let step = |w: &[(f64, f64)]| match w {
        [a, b] => Some((a.0, b.0, a.1 - b.1)),
        _ => None,
    };
    levels.windows(2).filter_map(step).collect()
}

/// The unbroken run of at least `least` around the largest value within `about`, metres.
fn run(steps: &[(f64, f64, f64)], least: f64, about: (f64, f64)) -> Option<(f64, f64)> {
    let enough = |s: &(f64, f64, f64)| s.2 >= least - SLACK;
    let inside = |s: &(f64, f64, f64)| s.0 < about.1 - SAME_M && s.1 > about.0 + SAME_M;
    let (start, _) = (steps.iter().enumerate())
        .filter(|(_, s)| enough(s) && inside(s))
        .max_by(|a, b| a.1.2.total_cmp(&b.1.2).then(b.0.cmp(&a.0)))?;
    let above = steps.iter().take(start).rev().take_while(|s| enough(s)).last();
    let below = steps.iter().skip(start).take_while(|s| enough(s)).last()?;
    let top = above.or(steps.get(start))?.0;
    Some((top, below.1))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_run_is_unbroken_and_holds_the_largest() {
        let steps = [(0.0, 1.0, 0.2), (1.0, 2.0, 1.0), (2.0, 3.0, 3.0), (3.0, 4.0, 0.9), (4.0, 5.0, 2.0)];
        assert_eq!(run(&steps, 1.0, (0.0, 5.0)), Some((1.0, 3.0)));
        assert_eq!(run(&steps, 1.0, (3.0, 5.0)), Some((4.0, 5.0)));
        assert_eq!(run(&steps, 4.0, (0.0, 5.0)), None);
        assert_eq!(run(&[], 1.0, (0.0, 5.0)), None);
    }
}
