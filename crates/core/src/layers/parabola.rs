//! Second opinion on the thermocline: the top of a parabola through the steepest step and its two neighbours.

use crate::analysis::Step;
use std::ops::Range;

/// Depth \[m\] of the top of the parabola through the cooling of the steepest step and of the steps above and below it,
/// each at its middle; kept inside the steepest step.
///
/// On a smooth test lake read every half metre it lies ten times nearer to the truth than the middle of the step, but it
/// is undone by noise: a second opinion, never to be told finer than 0.1 m. A convention of ours.
///
/// * `steps`: the gradient table, downward
/// * `steepest`: places of the steepest step
///
/// `None` where a run of equal steps is the steepest, at the first or the last step, and where the three do not make a
/// peak.
///
/// ```
/// use layercast_core::{Level, layers::{parabola::parabola_m, steps::steps}};
/// let levels = [20.0, 19.0, 16.0, 14.0].iter().enumerate();
/// let levels: Vec<Level> = levels.map(|(i, t)| Level::bare(i as f64, *t, 0.0)).collect();
/// let got = parabola_m(&steps(&levels), 1..2).unwrap();
/// assert!((got - 5.0 / 3.0).abs() < 1e-12);
/// ```
pub fn parabola_m(steps: &[Step], steepest: Range<usize>) -> Option<f64> {
    let (k, above) = (steepest.start, steepest.start.checked_sub(1)?);
    if steepest.end != k + 1 {
        return None;
    }
    let [a, b, c] = [steps.get(above)?, steps.get(k)?, steps.get(k + 1)?];
    let [x1, x2, x3] = [a, b, c].map(|s| (s.top_m + s.bottom_m) / 2.0);
    let d1 = (b.cooling_c_per_m - a.cooling_c_per_m) / (x2 - x1);
    let d2 = (c.cooling_c_per_m - b.cooling_c_per_m) / (x3 - x2);
    let bend = (d2 - d1) / (x3 - x1);
    let top_m = (x1 + x2) / 2.0 - d1 / (2.0 * bend);
    (bend < 0.0 && top_m.is_finite()).then(|| top_m.max(b.top_m).min(b.bottom_m))
}

#[cfg(test)]
mod tests {
    use super::super::steps::steps;
    use super::*;
    use crate::analysis::Level;

    #[track_caller]
    fn check(rows: &[(f64, f64)], steepest: Range<usize>, want: Option<f64>) {
        let levels: Vec<Level> = rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect();
        let got = parabola_m(&steps(&levels), steepest);
        assert_eq!(got.map(|m| (m * 1e9).round() / 1e9), want);
    }

    #[test]
    fn equal_neighbours_leave_it_in_the_middle() {
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 15.0), (3.0, 14.0)], 1..2, Some(1.5));
    }

    #[test]
    fn the_steeper_neighbour_draws_it_but_never_out_of_the_step() {
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 15.0), (3.0, 12.0)], 1..2, Some(1.75));
        check(&[(0.0, 20.0), (1.0, 17.0), (2.0, 13.0), (3.0, 12.0)], 1..2, Some(1.25));
        check(&[(0.0, 20.0), (1.0, 16.1), (2.0, 12.1), (10.0, 12.0)], 1..2, Some(1.278873239));
        // A thick neighbour nearly as steep would draw the top out of the step.
        check(&[(0.0, 20.0), (1.0, 20.0), (2.0, 19.0), (10.0, 11.08)], 1..2, Some(2.0));
        check(&[(0.0, 20.0), (8.0, 12.08), (9.0, 11.08), (10.0, 11.08)], 1..2, Some(8.0));
    }

    #[test]
    fn unequal_steps_are_weighed_by_their_middles() {
        // Cooling 1, 4, 2 at 0.5, 1.5 and 3 m: divided differences 3 and −4/3, bend −26/15; 1 + 3·15/52.
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 15.0), (4.0, 11.0)], 1..2, Some(1.865384615));
    }

    #[test]
    fn no_peak_no_neighbour_or_a_run_has_none() {
        check(&[(0.0, 20.0), (1.0, 15.0), (2.0, 14.0)], 0..1, None);
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 14.0)], 1..2, None);
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 16.0), (3.0, 13.0), (4.0, 12.5)], 1..3, None);
        check(&[(0.0, 20.0), (1.0, 17.0), (2.0, 15.0), (3.0, 12.0)], 1..2, None);
        check(&[(0.0, 20.0), (1.0, 18.0), (2.0, 16.0), (3.0, 14.0)], 1..2, None);
        check(&[], 0..1, None);
        check(&[(0.0, 20.0), (1.0, 18.0)], 7..8, None);
    }
}
