//! Mixed layer by the greatest angle between a line through the readings above and one through those below.

use crate::analysis::Level;

/// Readings on either side of a depth that its two lines are fitted to, itself not counted.
pub const SIDE_READINGS: usize = 3;
/// Fewest of them on either side.
pub const FEWEST_SIDE_READINGS: usize = 2;

/// Depth \[m\] of the level where a line through up to 3 readings above (and itself) and one through up to 3 below make
/// the greatest angle: atan(slope above) − atan(slope below), temperature against depth.
///
/// Both axes are first brought to 0..1 by the cast's depth span and temperature range, for an angle has no meaning
/// otherwise: so the answer depends on how deep the cast goes. Of equal angles the shallowest. `None` with fewer than five
/// levels, in water of one temperature and where no line below falls more steeply than the one above.
///
/// Source: [`ChuFan2011`](crate::bibliography::ChuFan2011) for the idea; numbers of readings and scaling are conventions
/// of ours.
///
/// ```
/// use layercast_core::{Level, layers::angle::greatest_angle_m};
/// let levels = [20.0, 20.0, 20.0, 20.0, 15.0, 10.0, 5.0].iter().enumerate();
/// let levels: Vec<Level> = levels.map(|(i, t)| Level::bare(i as f64, *t, 0.0)).collect();
/// assert_eq!(greatest_angle_m(&levels), Some(3.0));
/// ```
pub fn greatest_angle_m(levels: &[Level]) -> Option<f64> {
    let (first, last) = (levels.first()?, levels.last()?);
    let (least_c, most_c) = (levels.iter())
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(a, b), l| (a.min(l.temp_c), b.max(l.temp_c)));
    let (span_m, range_c) = (last.depth_m - first.depth_m, most_c - least_c);
    if range_c < crate::slack::SLACK {
        return None;
    }
    let scaled: Vec<(f64, f64)> = levels
        .iter()
        .map(|l| ((l.depth_m - first.depth_m) / span_m, (l.temp_c - least_c) / range_c))
        .collect();
    let mut best: Option<(f64, f64)> = None;
    let inner = FEWEST_SIDE_READINGS..levels.len().saturating_sub(FEWEST_SIDE_READINGS);
    for i in inner {
        let above = scaled.get(i.saturating_sub(SIDE_READINGS)..i + 1).and_then(slope);
        let below = scaled.get(i..(i + SIDE_READINGS + 1).min(levels.len())).and_then(slope);
        let (Some(above), Some(below), Some(level)) = (above, below, levels.get(i)) else { continue };
        let angle = libm::atan(above) - libm::atan(below);
        if angle.is_finite() && angle > best.map_or(0.0, |(most, _)| most) + 1e-12 {
            best = Some((angle, level.depth_m));
        }
    }
    best.map(|(_, depth_m)| depth_m)
}

/// Slope of the least-squares line through points (x, y).
fn slope(points: &[(f64, f64)]) -> Option<f64> {
    let n = points.len() as f64;
    let (sum_x, sum_y) = points.iter().fold((0.0, 0.0), |(a, b), p| (a + p.0, b + p.1));
    let (mean_x, mean_y) = (sum_x / n, sum_y / n);
    let (xy, xx) = points.iter().fold((0.0, 0.0), |(xy, xx), p| {
        let x = p.0 - mean_x;
        (xy + x * (p.1 - mean_y), xx + x * x)
    });
    (xx > 0.0).then_some(xy / xx)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(rows: &[(f64, f64)], want_m: Option<f64>) {
        let levels: Vec<Level> = rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect();
        assert_eq!(greatest_angle_m(&levels), want_m);
    }

    fn metres(temps_c: &[f64]) -> Vec<(f64, f64)> {
        temps_c.iter().enumerate().map(|(i, t)| (i as f64, *t)).collect()
    }

    #[test]
    fn the_corner_of_two_straight_stretches() {
        check(&metres(&[20.0, 20.0, 20.0, 17.0, 14.0, 11.0]), Some(2.0));
        check(&metres(&[20.0, 19.9, 19.8, 19.7, 17.0, 14.0, 11.0]), Some(3.0));
    }

    #[test]
    fn two_readings_are_needed_above_and_below() {
        check(&metres(&[20.0, 20.0, 15.0, 10.0, 5.0]), Some(2.0));
        check(&metres(&[20.0, 20.0, 15.0, 10.0]), None);
        check(&metres(&[]), None);
    }

    #[test]
    fn a_line_fitted_to_three_readings_outweighs_one_odd_one() {
        // Least squares by hand, on depths over 7 m and degrees over 10: the angle at 3 m is the greatest.
        check(&metres(&[20.0, 20.2, 19.8, 20.0, 16.0, 13.0, 10.2, 10.2]), Some(3.0));
    }

    #[test]
    fn even_straight_or_hollow_water_has_none() {
        check(&metres(&[9.0, 9.0, 9.0, 9.0, 9.0]), None);
        check(&metres(&[20.0, 18.0, 16.0, 14.0, 12.0]), None);
        check(&metres(&[20.0, 15.0, 10.0, 9.5, 9.0]), None);
    }

    #[test]
    fn a_line_takes_no_more_than_three_readings_beside_the_depth() {
        let points: Vec<(f64, f64)> = vec![(0.0, 1.0), (1.0, 3.0), (2.0, 2.0), (5.0, 6.0)];
        let got = slope(&points).unwrap();
        assert!((got - 13.0 / 14.0).abs() < 1e-12, "{got}"); // Σxy 13, Σxx 14 about the means
        assert_eq!(slope(&[(2.0, 1.0)]), None);
        // With a fourth reading above, the warm top would tilt the line at 5 m.
        check(&metres(&[29.0, 20.0, 20.0, 20.0, 20.0, 16.0, 12.0, 8.0]), Some(4.0));
    }
}
