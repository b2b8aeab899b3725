//! Mixed layer and steep layer at once: an even layer, a straight slope, another even layer, fitted together.

use super::sums::{Sums, left_over};
use crate::analysis::Level;

/// Corners are tried this far apart, metres.
pub const GRID_M: f64 = 0.05;
/// Never more places for a corner than this: in casts deeper than 20 m they are tried further apart.
const MOST_PLACES: f64 = 400.0;
/// Fewest readings three layers are fitted to.
pub const FEWEST_READINGS: usize = 6;

/// Three layers fitted to a cast.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ThreeLayers {
    /// Where the upper even layer ends, metres.
    pub top_m: f64,
    /// Where the lower even layer begins, metres.
    pub bottom_m: f64,
    /// Temperature of the upper layer, °C.
    pub upper_c: f64,
    /// Temperature of the lower layer, °C.
    pub lower_c: f64,
    /// How far the readings lie from the fit: root of the mean square, °C.
    pub rms_c: f64,
}

/// The two corners a < b of T = T₁ + (T₂−T₁)·clamp((z−a)/(b−a), 0, 1) that fit the whole cast best by least squares.
///
/// Corners 0.05 m apart are tried, further apart in casts deeper than 20 m (never more than 400 places): each pair
/// costs the same however many readings there are. Of equal fits the shallowest. Not unique where the temperature jumps
/// within one step: any corners inside it fit as well. A corner at the first level says that there is no even upper
/// layer. `None` with fewer than 6 levels or in water of one temperature.
///
/// A convention of ours.
///
/// ```
/// use layercast_core::{Level, layers::three_layer::three_layers};
/// let levels = [20.0, 20.0, 20.0, 18.0, 14.0, 10.0, 8.0, 8.0, 8.0].iter().enumerate();
/// let levels: Vec<Level> = levels.map(|(i, t)| Level::bare(i as f64, *t, 0.0)).collect();
/// let got = three_layers(&levels).unwrap();
/// assert!((got.top_m - 2.5).abs() < 1e-9 && (got.bottom_m - 5.5).abs() < 1e-9 && got.rms_c < 1e-6);
/// ```
pub fn three_layers(levels: &[Level]) -> Option<ThreeLayers> {
    if levels.len() < FEWEST_READINGS {
        return None;
    }
    let first = levels.first()?;
    let span_m = levels.last()?.depth_m - first.depth_m;
    let grid_m = GRID_M.max(span_m / MOST_PLACES);
    let places = ((span_m + 1e-9) / grid_m).clamp(0.0, MOST_PLACES) as usize;
    let running = Sums::running(levels);
    let all = running.last()?;
    if all.tt - all.t * all.t / all.n < 1e-9 {
        return None;
    }
    // For each place: sums over the levels at or above it.
    let mut at = Vec::with_capacity(places + 1);
    let mut above = 0;
    for i in 0..=places {
        let corner_m = i as f64 * grid_m;
        while levels.get(above).is_some_and(|l| l.depth_m - first.depth_m <= corner_m + 1e-9) {
            above += 1;
        }
        at.push((corner_m, running.get(above)?));
    }
    let mut best: Option<(f64, f64, f64)> = None;
    for (i, (a, upper)) in at.iter().enumerate() {
        for (b, to_lower) in at.iter().skip(i + 1) {
            let (slope, lower) = (to_lower.beyond(upper), all.beyond(to_lower));
            let per_m = 1.0 / (b - a);
            let w = (slope.z - a * slope.n) * per_m + lower.n;
            let ww = (slope.zz - 2.0 * a * slope.z + a * a * slope.n) * per_m * per_m + lower.n;
            let wt = (slope.zt - a * slope.t) * per_m + lower.t;
            let Some(left) = left_over(all, w, ww, wt) else { continue };
            if best.is_none_or(|(least, ..)| left < least - 1e-12 * all.tt) {
                best = Some((left, *a, *b));
            }
        }
    }
    let (_, a, b) = best?;
    told(levels, first.depth_m + a, first.depth_m + b)
}

/// The fit with these corners, from the readings themselves.
fn told(levels: &[Level], top_m: f64, bottom_m: f64) -> Option<ThreeLayers> {
    let share = |l: &Level| ((l.depth_m - top_m) / (bottom_m - top_m)).clamp(0.0, 1.0);
    let n = levels.len() as f64;
    let mean_w = levels.iter().map(share).sum::<f64>() / n;
    let mean_c = levels.iter().map(|l| l.temp_c).sum::<f64>() / n;
    let (ww, wt) = levels.iter().fold((0.0, 0.0), |(ww, wt), l| {
        let w = share(l) - mean_w;
        (ww + w * w, wt + w * (l.temp_c - mean_c))
    });
    let gain_c = wt / ww;
    let upper_c = mean_c - gain_c * mean_w;
    let left = |l: &Level| l.temp_c - upper_c - gain_c * share(l);
    let rms_c = (levels.iter().map(|l| left(l) * left(l)).sum::<f64>() / n).sqrt();
    (rms_c.is_finite()).then_some(ThreeLayers { top_m, bottom_m, upper_c, lower_c: upper_c + gain_c, rms_c })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(rows: &[(f64, f64)], want: Option<[f64; 5]>) {
        let levels: Vec<Level> = rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect();
        let got = three_layers(&levels);
        let round = |x: f64| (x * 1e5).round() / 1e5;
        assert_eq!(got.map(|f| [f.top_m, f.bottom_m, f.upper_c, f.lower_c, f.rms_c].map(round)), want);
    }

    #[test]
    fn corners_between_readings_are_found() {
        let of = |z: f64| (z, 20.0 - 12.0 * ((z - 2.3) / 2.9).clamp(0.0, 1.0));
        let rows: Vec<(f64, f64)> = (0..=16).map(|i| of(f64::from(i) * 0.5)).collect();
        check(&rows, Some([2.3, 5.2, 20.0, 8.0, 0.0]));
        let deeper: Vec<(f64, f64)> = rows.iter().map(|(z, t)| (z + 1.5, t - 3.0)).collect();
        check(&deeper, Some([3.8, 6.7, 17.0, 5.0, 0.0]));
    }

    #[test]
    fn uneven_marks_are_no_hindrance() {
        let of = |z: f64| (z, 20.0 - 12.0 * ((z - 2.3) / 2.9).clamp(0.0, 1.0));
        let rows: Vec<(f64, f64)> = [0.0, 0.5, 2.0, 2.5, 3.0, 4.0, 5.0, 6.0, 9.0].map(of).to_vec();
        check(&rows, Some([2.3, 5.2, 20.0, 8.0, 0.0]));
    }

    #[test]
    fn under_ice_it_warms_downward() {
        let rows = [(0.0, 0.0), (1.0, 0.0), (2.0, 1.0), (3.0, 3.0), (4.0, 4.0), (5.0, 4.0), (6.0, 4.0)];
        check(&rows, Some([1.5, 3.5, 0.0, 4.0, 0.0]));
    }

    #[test]
    fn a_straight_slope_has_no_even_layer() {
        let rows: Vec<(f64, f64)> = (0..=6).map(|i| (f64::from(i), 20.0 - f64::from(i))).collect();
        check(&rows, Some([0.0, 6.0, 20.0, 14.0, 0.0]));
    }

    #[test]
    fn what_does_not_fit_is_told() {
        // Two layers of 3 readings, each 0.1 °C about its mean: 0.1·√(2/3) left.
        let rows = [(0.0, 20.1), (1.0, 19.9), (2.0, 20.0), (3.0, 10.0), (4.0, 10.1), (5.0, 9.9)];
        let levels: Vec<Level> = rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect();
        let got = three_layers(&levels).unwrap();
        assert!(
            (got.rms_c - 0.1 * (2.0_f64 / 3.0).sqrt()).abs() < 1e-3
                && got.rms_c <= 0.1 * (2.0_f64 / 3.0).sqrt() + 1e-12
        );
        assert!(got.top_m >= 1.0 && got.bottom_m <= 4.0 && got.top_m < got.bottom_m);
    }

    #[test]
    fn five_readings_or_even_water_have_none() {
        check(&[(0.0, 20.0), (1.0, 20.0), (2.0, 15.0), (3.0, 10.0), (4.0, 10.0)], None);
        check(&[(0.0, 7.0), (1.0, 7.0), (2.0, 7.0), (3.0, 7.0), (4.0, 7.0), (5.0, 7.0)], None);
        check(&[], None);
    }

    #[test]
    fn a_deep_cast_is_fitted_on_a_coarser_grid() {
        let of = |z: f64| (z, 20.0 - 12.0 * ((z - 60.0) / 120.0).clamp(0.0, 1.0));
        let rows: Vec<(f64, f64)> = (0..=40).map(|i| of(f64::from(i) * 10.0)).collect();
        check(&rows, Some([60.0, 180.0, 20.0, 8.0, 0.0])); // 400 m: corners a metre apart
    }
}
