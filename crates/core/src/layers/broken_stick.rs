//! Mixed layer by a broken stick: an even layer, then a straight slope, fitted together.

use super::steepest::steepest;
use super::sums::{Sums, left_over};
use crate::analysis::{Level, Step};

/// Corners are tried this far apart, metres.
pub const GRID_M: f64 = 0.01;
/// Never more corners than this: in casts deeper than 40 m they are tried further apart.
const MOST_CORNERS: f64 = 4000.0;
/// Fewest readings a stick is fitted to.
pub const FEWEST_READINGS: usize = 4;

/// Depth \[m\] of the corner of the stick that fits best by least squares: one temperature down to the corner, below it a
/// straight line that starts there.
///
/// Fitted to the levels from the first one to the bottom of the cast's steepest step (or run of equal ones), at least 4.
/// Corners 0.01 m apart are tried, further apart in casts deeper than 40 m; of equal fits the shallowest corner. The
/// answer may be the first level: then there is no even layer. `None` with fewer readings, or where nothing cools.
///
/// * `steps`: the gradient table of `levels`
///
/// A convention of ours; fits of this kind go back to [`ThomsonFine2003`](crate::bibliography::ThomsonFine2003).
///
/// ```
/// use layercast_core::{Level, layers::{broken_stick::broken_stick_m, steps::steps}};
/// let levels = [20.0, 20.0, 20.0, 19.0, 17.0, 15.0].iter().enumerate();
/// let levels: Vec<Level> = levels.map(|(i, t)| Level::bare(i as f64, *t, 0.0)).collect();
/// let got = broken_stick_m(&levels, &steps(&levels)).unwrap();
/// assert!((got - 2.5).abs() < 1e-9);
/// ```
pub fn broken_stick_m(levels: &[Level], steps: &[Step]) -> Option<f64> {
    let cooling: Vec<f64> = steps.iter().map(|s| s.cooling_c_per_m).collect();
    let k = steepest(&cooling, |_| true)?;
    if *cooling.get(k.first)? <= 0.0 {
        return None;
    }
    let fitted = levels.get(..k.last + 2).filter(|fitted| fitted.len() >= FEWEST_READINGS)?;
    let first_m = fitted.first()?.depth_m;
    let span_m = fitted.last()?.depth_m - first_m;
    let grid_m = GRID_M.max(span_m / MOST_CORNERS);
    let running = Sums::running(fitted);
    let all = running.last()?;
    let corners = ((span_m - 1e-9) / grid_m).ceil().clamp(0.0, MOST_CORNERS) as usize;
    let mut best: Option<(f64, f64)> = None;
    let mut above = 0; // levels at or above the corner
    for i in 0..corners {
        let corner_m = i as f64 * grid_m;
        while fitted.get(above).is_some_and(|l| l.depth_m - first_m <= corner_m) {
            above += 1;
        }
        let below = all.beyond(running.get(above)?);
        let w = below.z - below.n * corner_m;
        let ww = below.zz - 2.0 * corner_m * below.z + below.n * corner_m * corner_m;
        let wt = below.zt - corner_m * below.t;
        let Some(left) = left_over(all, w, ww, wt) else { continue };
        if best.is_none_or(|(least, _)| left < least - 1e-12 * all.tt) {
            best = Some((left, corner_m));
        }
    }
    best.map(|(_, corner_m)| first_m + corner_m)
}

#[cfg(test)]
mod tests {
    use super::super::steps::steps;
    use super::*;

    #[track_caller]
    fn check(rows: &[(f64, f64)], want_m: Option<f64>) {
        let levels: Vec<Level> = rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect();
        let got = broken_stick_m(&levels, &steps(&levels));
        assert_eq!(got.map(|m| (m * 1e6).round() / 1e6), want_m);
    }

    #[test]
    fn a_stick_with_its_corner_between_two_readings_is_found() {
        check(&[(0.0, 20.0), (1.0, 20.0), (2.0, 20.0), (3.0, 19.25), (4.0, 18.25), (5.0, 17.25)], Some(2.25));
        check(&[(0.5, 20.0), (1.5, 20.0), (2.5, 19.7), (3.5, 18.7), (4.5, 17.7)], Some(2.2));
    }

    #[test]
    fn what_lies_below_the_steepest_step_does_not_count() {
        let to_steepest = [(0.0, 20.0), (1.0, 20.0), (2.0, 20.0), (3.0, 18.0), (4.0, 16.0)];
        check(&to_steepest, Some(2.0));
        check(&[&to_steepest[..], &[(5.0, 15.9), (6.0, 15.8), (9.0, 12.0)]].concat(), Some(2.0));
    }

    #[test]
    fn a_straight_slope_has_its_corner_at_the_first_reading() {
        check(&[(1.0, 20.0), (2.0, 19.0), (3.0, 18.0), (4.0, 17.0)], Some(1.0));
    }

    #[test]
    fn readings_that_scatter_about_the_stick_are_balanced() {
        // scipy-free check by hand: T = 20 ± 0.1 down to 2 m, then −2 °C per m with the same scatter.
        check(&[(0.0, 20.1), (1.0, 19.9), (2.0, 20.0), (3.0, 18.0), (4.0, 16.0)], Some(2.0));
    }

    #[test]
    fn too_few_readings_or_nothing_that_cools_has_none() {
        check(&[(0.0, 20.0), (1.0, 20.0), (2.0, 18.0)], None);
        check(&[(0.0, 20.0), (1.0, 20.0), (2.0, 18.0), (3.0, 17.0)], None);
        check(&[(0.0, 4.0), (1.0, 4.0), (2.0, 4.0), (3.0, 5.0)], None);
        check(&[], None);
    }

    #[test]
    fn a_deep_cast_is_fitted_on_a_coarser_grid() {
        let rows: Vec<(f64, f64)> =
            (0..=20).map(|i| f64::from(i) * 40.0).map(|z| (z, 20.0 - (z - 100.0).max(0.0) / 50.0)).collect();
        let levels: Vec<Level> = rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect();
        let got = broken_stick_m(&levels, &steps(&levels)).unwrap();
        assert!((got - 100.0).abs() <= 0.2, "{got}");
    }
}
