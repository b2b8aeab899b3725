//! Mixed layer by the sharpest bend: where the curve turns most from upright to falling.

use crate::analysis::Level;
use crate::slack::SLACK;

/// Depth \[m\] of the level where the second difference of temperature is most negative:
/// 2((T₊−T)/h₂ − (T−T₋)/h₁)/(h₁+h₂).
///
/// Only a level between two others can bend; of equal bends the shallowest. Noise-prone: one warm reading is a bend.
/// `None` where nothing bends that way, or with fewer than three levels.
///
/// Source: [`Lorbacher2006`](crate::bibliography::Lorbacher2006) for the use of curvature; the form is a convention of
/// ours.
///
/// ```
/// use layercast_core::{Level, layers::curvature::sharpest_bend_m};
/// let levels = [20.0, 20.0, 19.0, 14.0, 10.0].iter().enumerate();
/// let levels: Vec<Level> = levels.map(|(i, t)| Level::bare(i as f64, *t, 0.0)).collect();
/// assert_eq!(sharpest_bend_m(&levels), Some(2.0)); // bends −1, −4, +1
/// ```
pub fn sharpest_bend_m(levels: &[Level]) -> Option<f64> {
    let mut best: Option<(f64, f64)> = None;
    for three in levels.windows(3) {
        let [a, b, c] = three else { continue };
        let (h1, h2) = (b.depth_m - a.depth_m, c.depth_m - b.depth_m);
        let bend = 2.0 * ((c.temp_c - b.temp_c) / h2 - (b.temp_c - a.temp_c) / h1) / (h1 + h2);
        if bend.is_finite() && bend < best.map_or(0.0, |(least, _)| least) - SLACK {
            best = Some((bend, b.depth_m));
        }
    }
    best.map(|(_, depth_m)| depth_m)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(rows: &[(f64, f64)], want_m: Option<f64>) {
        let levels: Vec<Level> = rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect();
        assert_eq!(sharpest_bend_m(&levels), want_m);
    }

    #[test]
    fn of_equal_bends_the_shallowest() {
        check(&[(0.0, 20.0), (1.0, 20.0), (2.0, 18.0), (3.0, 18.0), (4.0, 16.0)], Some(1.0));
    }

    #[test]
    fn a_bend_within_a_short_stretch_is_sharper() {
        // −1/1 over 1 m against −2/1 over 4 m.
        check(&[(0.0, 20.0), (1.0, 20.0), (2.0, 19.0), (6.0, 19.0), (7.0, 17.0), (8.0, 15.0)], Some(1.0));
        check(&[(0.0, 20.0), (1.0, 20.0), (2.0, 19.0), (3.0, 19.0), (4.0, 17.0), (5.0, 15.0)], Some(3.0));
        // Steps of 2 and 1 m: 2(−3 − 0)/3 against 2(−5.1 + 3)/2.
        check(&[(0.0, 20.0), (2.0, 20.0), (3.0, 17.0), (4.0, 11.9)], Some(3.0));
        check(&[(0.0, 20.0), (2.0, 20.0), (3.0, 17.0), (4.0, 12.1)], Some(2.0));
    }

    #[test]
    fn straight_hollow_or_short_water_has_none() {
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 18.0)], None);
        check(&[(0.0, 20.0), (1.0, 16.0), (2.0, 15.0)], None);
        check(&[(0.0, 20.0), (1.0, 16.0)], None);
        check(&[], None);
    }
}
