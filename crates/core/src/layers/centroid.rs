//! Second opinion on the thermocline: the balance point of the steepest step and its two neighbours.

use crate::analysis::Step;
use std::ops::Range;

/// Depth \[m\] where the cooling of the steepest step (or run of equal ones) and of its neighbours balances: Σ g m Δz /
/// Σ g Δz with m the middle of a step; steps that warm downward weigh nothing. Kept inside the step or run.
///
/// A second opinion, never to be told finer than 0.1 m. A convention of ours.
///
/// * `steps`: the gradient table, downward
/// * `steepest`: places of the steepest step or run
///
/// `None` where nothing cools, or the places are none.
///
/// ```
/// use layercast_core::{Level, layers::{centroid::centroid_m, steps::steps}};
/// let levels = [20.0, 19.0, 16.0, 14.0].iter().enumerate();
/// let levels: Vec<Level> = levels.map(|(i, t)| Level::bare(i as f64, *t, 0.0)).collect();
/// let got = centroid_m(&steps(&levels), 1..2).unwrap();
/// assert!((got - 10.0 / 6.0).abs() < 1e-12); // (1·0.5 + 3·1.5 + 2·2.5) / 6
/// ```
pub fn centroid_m(steps: &[Step], steepest: Range<usize>) -> Option<f64> {
    let own = steps.get(steepest.clone())?;
    let (first, last) = (own.first()?, own.last()?);
    let around = steps.get(steepest.start.saturating_sub(1)..(steepest.end + 1).min(steps.len()))?;
    let (moment, weight) = around.iter().fold((0.0, 0.0), |(moment, weight), s| {
        let cooling_c = s.cooling_c_per_m.max(0.0) * (s.bottom_m - s.top_m);
        (moment + cooling_c * ((s.top_m + s.bottom_m) / 2.0 - first.top_m), weight + cooling_c)
    });
    let depth_m = first.top_m + moment / weight;
    (weight > 0.0 && depth_m.is_finite()).then(|| depth_m.max(first.top_m).min(last.bottom_m))
}

#[cfg(test)]
mod tests {
    use super::super::steps::steps;
    use super::*;
    use crate::analysis::Level;

    #[track_caller]
    fn check(rows: &[(f64, f64)], steepest: Range<usize>, want: Option<f64>) {
        let levels: Vec<Level> = rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect();
        let got = centroid_m(&steps(&levels), steepest);
        assert_eq!(got.map(|m| (m * 1e9).round() / 1e9), want);
    }

    #[test]
    fn equal_neighbours_leave_it_in_the_middle() {
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 15.0), (3.0, 14.0)], 1..2, Some(1.5));
    }

    #[test]
    fn a_thick_neighbour_weighs_by_the_degrees_it_loses() {
        // 1 °C about 0.5 m, 4 °C about 1.5 m, 2 °C about 4 m.
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 15.0), (6.0, 13.0)], 1..2, Some(2.0));
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 15.0), (3.0, 13.0)], 1..2, Some(1.642857143));
    }

    #[test]
    fn warming_weighs_nothing() {
        check(&[(0.0, 18.0), (1.0, 19.0), (2.0, 15.0), (3.0, 16.0)], 1..2, Some(1.5));
    }

    #[test]
    fn at_an_end_one_neighbour_will_do_and_it_stays_in_the_step() {
        check(&[(0.0, 20.0), (1.0, 16.0), (2.0, 15.0)], 0..1, Some(0.7));
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 15.0)], 1..2, Some(1.3));
        check(&[(0.0, 20.0), (1.0, 19.0)], 0..1, Some(0.5));
        check(&[(0.0, 20.0), (0.1, 19.0), (3.1, 13.0)], 0..1, Some(0.1));
        check(&[(0.0, 20.0), (3.0, 14.0), (3.1, 13.0)], 1..2, Some(3.0));
    }

    #[test]
    fn of_a_run_the_neighbours_of_the_run_count() {
        let rows = [(0.0, 20.0), (1.0, 19.0), (2.0, 16.0), (3.0, 13.0), (4.0, 10.5)];
        check(&rows, 1..3, Some(2.236842105)); // (0.5 + 4.5 + 7.5 + 8.75) / 9.5
    }

    #[test]
    fn nothing_that_cools_has_none() {
        check(&[(0.0, 4.0), (1.0, 4.0), (2.0, 5.0)], 0..1, None);
        check(&[], 0..1, None);
        check(&[(0.0, 20.0), (1.0, 19.0)], 1..1, None);
        check(&[(0.0, 20.0), (1.0, 19.0)], 1..2, None);
    }
}
