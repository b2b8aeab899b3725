//! Second opinion on the thermocline: the steepest place of a smooth curve through every value.

use crate::analysis::Level;
use std::ops::Range;

/// Steepest place of a curve.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct SteepestPlace {
    /// Its depth, metres.
    pub depth_m: f64,
    /// Cooling downward there, °C per metre.
    pub cooling_c_per_m: f64,
}

/// Where the monotone cubic through the levels (PCHIP) cools fastest, sought in the steps `sought`; of equal places the
/// shallowest.
///
/// The curve never overshoots a value: within a step of secant s and end slopes d₀, d₁ its slope at u in 0..1 is
/// d₀ + (6s − 4d₀ − 2d₁)u + (3d₀ + 3d₁ − 6s)u²; inner end slopes are weighted harmonic means of the two secants (zero at
/// a turn), the outermost three-point ones that keep the shape.
///
/// * `sought`: places of steps; step i lies between levels i and i + 1
///
/// A second opinion, never to be told finer than 0.1 m: on a straight stretch any depth of it is as right. `None` with
/// fewer than three levels, and where nothing cools.
///
/// Source: [`FritschButland1984`](crate::bibliography::FritschButland1984).
///
/// ```
/// use layercast_core::{Level, layers::monotone_curve::steepest_place};
/// let levels = [20.0, 20.0, 16.0, 15.0].iter().enumerate();
/// let levels: Vec<Level> = levels.map(|(i, t)| Level::bare(i as f64, *t, 0.0)).collect();
/// let got = steepest_place(&levels, 0..3).unwrap();
/// assert!((got.depth_m - 1.541_667).abs() < 1e-6 && (got.cooling_c_per_m - 5.633_333).abs() < 1e-6);
/// ```
pub fn steepest_place(levels: &[Level], sought: Range<usize>) -> Option<SteepestPlace> {
    if levels.len() < 3 {
        return None;
    }
    let secants: Vec<Secant> = (levels.iter().zip(levels.iter().skip(1)))
        .map(|(a, b)| {
            let height_m = b.depth_m - a.depth_m;
            Secant { height_m, slope: (b.temp_c - a.temp_c) / height_m }
        })
        .collect();
    let mut best: Option<SteepestPlace> = None;
    for i in sought.start..sought.end.min(secants.len()) {
        let (Some(step), Some(top)) = (secants.get(i), levels.get(i)) else { continue };
        let (d0, d1) = (slope_at(&secants, i), slope_at(&secants, i + 1));
        let linear = 6.0 * step.slope - 4.0 * d0 - 2.0 * d1;
        let square = 3.0 * d0 + 3.0 * d1 - 6.0 * step.slope;
        let turn = if square.abs() > 1e-15 { -linear / (2.0 * square) } else { 0.0 };
        for u in [0.0, 1.0, if turn > 0.0 && turn < 1.0 { turn } else { 0.0 }] {
            let cooling_c_per_m = -(d0 + (linear + square * u) * u);
            let depth_m = top.depth_m + u * step.height_m;
            let steeper = cooling_c_per_m > best.map_or(0.0, |b| b.cooling_c_per_m) + crate::slack::SLACK;
            if steeper && cooling_c_per_m.is_finite() && depth_m.is_finite() {
                best = Some(SteepestPlace { depth_m, cooling_c_per_m });
            }
        }
    }
    best
}

/// Temperatures of the monotone cubic half-way between neighbouring levels, °C: one fewer than the levels. It never
/// overshoots a value; halfway between two levels a straight line has their mean, the curve ⅛·h·(d₀ − d₁) more.
///
/// Source: [`FritschButland1984`](crate::bibliography::FritschButland1984).
///
/// ```
/// use layercast_core::{Level, layers::monotone_curve::midpoints_c};
/// let levels = [20.0, 20.0, 16.0, 15.0].iter().enumerate();
/// let levels: Vec<Level> = levels.map(|(i, t)| Level::bare(i as f64, *t, 0.0)).collect();
/// let got = midpoints_c(&levels);
/// assert!((got[0] - 20.0).abs() < 1e-12 && (got[1] - 18.2).abs() < 1e-12); // slopes 0 and −1.6
/// ```
pub fn midpoints_c(levels: &[Level]) -> Vec<f64> {
    let secants: Vec<Secant> = (levels.iter().zip(levels.iter().skip(1)))
        .map(|(a, b)| {
            let height_m = b.depth_m - a.depth_m;
            Secant { height_m, slope: (b.temp_c - a.temp_c) / height_m }
        })
        .collect();
    (levels.iter().zip(levels.iter().skip(1)).zip(&secants).enumerate())
        .map(|(i, ((a, b), step))| {
            let (d0, d1) = (slope_at(&secants, i), slope_at(&secants, i + 1));
            (a.temp_c + b.temp_c) / 2.0 + step.height_m * (d0 - d1) / 8.0
        })
        .collect()
}

/// The straight line from one level to the next.
#[derive(Clone, Copy)]
pub(crate) struct Secant {
    /// Metres from level to level.
    pub height_m: f64,
    /// °C per metre.
    pub slope: f64,
}

/// Slope of the curve at level `i`.
pub(crate) fn slope_at(secants: &[Secant], i: usize) -> f64 {
    let above = i.checked_sub(1).and_then(|k| secants.get(k));
    match (above, secants.get(i)) {
        (Some(a), Some(b)) => inner(a, b),
        (None, Some(a)) => secants.get(1).map_or(a.slope, |b| outermost(a, b)),
        (Some(b), None) => i.checked_sub(2).and_then(|k| secants.get(k)).map_or(b.slope, |a| outermost(b, a)),
        (None, None) => 0.0,
    }
}

fn inner(a: &Secant, b: &Secant) -> f64 {
    if a.slope * b.slope <= 0.0 {
        return 0.0; // a turn or a flat
    }
    let (wa, wb) = (2.0 * b.height_m + a.height_m, b.height_m + 2.0 * a.height_m);
    (wa + wb) / (wa / a.slope + wb / b.slope)
}

/// `end` is the outermost step, `next` the one beside it.
fn outermost(end: &Secant, next: &Secant) -> f64 {
    let sum_m = end.height_m + next.height_m;
    let slope = ((sum_m + end.height_m) * end.slope - end.height_m * next.slope) / sum_m;
    if slope * end.slope <= 0.0 {
        0.0
    } else if end.slope * next.slope <= 0.0 && slope.abs() > 3.0 * end.slope.abs() {
        3.0 * end.slope
    } else {
        slope
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(rows: &[(f64, f64)], sought: Range<usize>, want: Option<(f64, f64)>) {
        let levels: Vec<Level> = rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect();
        let round = |x: f64| (x * 1e6).round() / 1e6;
        let got = steepest_place(&levels, sought).map(|s| (round(s.depth_m), round(s.cooling_c_per_m)));
        assert_eq!(got, want);
    }

    #[test]
    fn a_lone_step_is_steepest_in_its_middle_by_half_as_much_again() {
        check(&[(0.0, 20.0), (1.0, 20.0), (2.0, 10.0), (3.0, 10.0)], 0..3, Some((1.5, 15.0)));
    }

    #[test]
    fn only_the_steps_asked_for_are_searched() {
        let rows = [(0.0, 20.0), (1.0, 20.0), (2.0, 10.0), (3.0, 10.0), (4.0, 9.0), (5.0, 9.0)];
        check(&rows, 2..5, Some((3.5, 1.5)));
        check(&rows, 2..500, Some((3.5, 1.5)));
        check(&rows, 5..5, None);
        check(&rows, 7..9, None);
    }

    #[test]
    fn a_straight_line_gives_its_first_depth() {
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 18.0), (3.0, 17.0)], 0..3, Some((0.0, 1.0)));
    }

    #[test]
    fn at_the_ends_the_shape_is_kept() {
        // Three-point slopes: top (3·4 − 2)/2 = 5; bottom (3·4 − 1)/2 = 5.5.
        check(&[(0.0, 20.0), (1.0, 16.0), (2.0, 14.0)], 0..2, Some((0.0, 5.0)));
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 15.0)], 0..2, Some((2.0, 5.5)));
        // A turn after the first step: (3·1 + 30)/2 is more than three times its secant.
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 49.0)], 0..1, Some((0.0, 3.0)));
        check(&[(0.0, 20.0), (1.0, 18.0), (2.0, 48.0)], 0..1, Some((0.0, 6.0)));
        // A much steeper second step would turn the end slope round: it is flat.
        check(&[(0.0, 20.0), (1.0, 19.9), (2.0, 10.0)], 0..1, Some((1.0, 0.198)));
    }

    #[test]
    fn unequal_steps_are_weighed() {
        // Inner slope at 1 m: weights 2·3 + 1 = 7 and 3 + 2 = 5, of 2 and 4: 12/(7/2 + 5/4) = 2.526316.
        check(&[(0.0, 20.0), (1.0, 18.0), (4.0, 6.0), (5.0, 6.0)], 0..1, Some((1.0, 2.526316)));
    }

    #[test]
    fn too_few_or_nothing_that_cools_has_none() {
        check(&[(0.0, 20.0), (1.0, 19.0)], 0..1, None);
        check(&[(0.0, 4.0), (1.0, 4.5), (2.0, 5.0)], 0..2, None);
        check(&[(0.0, 4.0), (1.0, 4.0), (2.0, 4.0)], 0..2, None);
        check(&[], 0..2, None);
    }
}
