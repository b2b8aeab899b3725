//! Two casts side by side: their differences at shared depths, how well each is known, and the water between them.

use super::curve::Curve;
use super::mode::rocking;
use super::pair::Refusal;
use super::side::Point;
use crate::analyse::{FEWEST_DEPTHS, LEAST_SPAN_M};
use crate::cast::station::SAME_DEPTH_M;
use crate::order::sort_numbers;
use crate::slack::{at_least, at_most};
use crate::water::density::Density;

/// Water with less than this between its warmest and its coldest tells nothing of depths, °C.
pub(super) const EVEN_WATER_C: f64 = 1.0;
/// Where nobody noted the bed it is taken to lie this far below the last reading, metres (methods 3.4).
const ABOVE_BED_M: f64 = 0.5;

/// Two casts side by side, in the order given.
pub(super) struct Field {
    pub shared: Vec<At>,
    /// The mean of both casts, which stands for the water.
    pub mean: Curve,
    /// How far the water at each shared depth goes along when the layer rocks.
    pub rocking: Option<Vec<f64>>,
    /// The water tells nothing of depths.
    pub even: bool,
}

/// One shared depth.
#[derive(Clone, Copy)]
pub(super) struct At {
    pub depth_m: f64,
    pub first_c: f64,
    pub second_c: f64,
    /// Second less first.
    pub difference_c: f64,
    /// By chance alone.
    pub variance: f64,
}

impl Field {
    /// Both profiles at the depths of the one that was read at fewer (of the first, when both were at as many).
    ///
    /// * `bed_m`: deepest bed noted
    /// * `marks_m`: standard deviation of a mark's place
    /// * `density`: the formula that tells how a layer rocks
    pub(super) fn of(
        first: &[Point],
        second: &[Point],
        bed_m: Option<f64>,
        marks_m: f64,
        density: Density,
    ) -> Result<Self, Refusal> {
        let (Some((first_top, first_end)), Some((second_top, second_end))) = (ends(first), ends(second))
        else {
            return Err(Refusal::TooFewDepths);
        };
        let (top_m, bottom_m) = (first_top.max(second_top), first_end.min(second_end));
        let inside = |p: &&Point| at_least(p.depth_m, top_m) && at_most(p.depth_m, bottom_m);
        let (of_first, of_second) =
            (first.iter().filter(inside).count(), second.iter().filter(inside).count());
        let (lines, other_lines) = (Line::through(first), Line::through(second));
        let coarser = if of_second < of_first { second } else { first };
        let mut shared: Vec<At> = (coarser.iter().filter(inside))
            .map(|p| {
                let (a, b) = (lines.at(p.depth_m), other_lines.at(p.depth_m));
                At {
                    depth_m: p.depth_m,
                    first_c: a.0,
                    second_c: b.0,
                    difference_c: b.0 - a.0,
                    variance: a.1 + b.1,
                }
            })
            .collect();
        if shared.len() < FEWEST_DEPTHS {
            return Err(Refusal::TooFewDepths);
        }
        if !at_least(bottom_m - top_m, LEAST_SPAN_M) {
            return Err(Refusal::TooLittleWater);
        }
        let mut depths_m: Vec<f64> = first.iter().chain(second).filter(inside).map(|p| p.depth_m).collect();
        sort_numbers(&mut depths_m);
        depths_m.dedup_by(|later, kept| *later - *kept < SAME_DEPTH_M);
        let mean_c = |z: f64| (lines.curve.at(z).0 + other_lines.curve.at(z).0) / 2.0;
        let mean: Vec<(f64, f64)> = depths_m.iter().map(|z| (*z, mean_c(*z))).collect();
        let mean = Curve::through(&mean);
        let water: Vec<(f64, f64)> = shared.iter().map(|at| (at.depth_m, mean_c(at.depth_m))).collect();
        for (at, slope) in shared.iter_mut().zip(slopes(&water)) {
            at.variance += 2.0 * slope * slope * marks_m * marks_m;
        }
        let (coldest, warmest) = (water.iter())
            .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), p| (low.min(p.1), high.max(p.1)));
        let deepest_m = first_end.max(second_end);
        let bed_m = bed_m.filter(|bed_m| *bed_m >= deepest_m).unwrap_or(deepest_m + ABOVE_BED_M);
        Ok(Self {
            shared,
            mean,
            rocking: rocking(&water, bed_m, density),
            even: !at_least(warmest - coldest, EVEN_WATER_C),
        })
    }

    /// Sum of squares of what a prediction leaves, each weighed by how well it is known.
    pub(super) fn misfit(&self, predicted_c: impl Iterator<Item = f64>) -> f64 {
        let square = |(at, predicted): (&At, f64)| {
            let left = at.difference_c - predicted;
            left * left / at.variance
        };
        self.shared.iter().zip(predicted_c).map(square).sum()
    }

    /// The same of the differences as they are.
    pub(super) fn chance_score(&self) -> f64 {
        self.misfit(std::iter::repeat(0.0))
    }
}

/// First and last depth.
fn ends(points: &[Point]) -> Option<(f64, f64)> {
    Some((points.first()?.depth_m, points.last()?.depth_m))
}

/// One cast between its depths.
struct Line<'a> {
    points: &'a [Point],
    curve: Curve,
}

impl<'a> Line<'a> {
    fn through(points: &'a [Point]) -> Self {
        let nodes: Vec<(f64, f64)> = points.iter().map(|p| (p.depth_m, p.temp_c)).collect();
        Self { points, curve: Curve::through(&nodes) }
    }

    /// Value \[°C\] and its variance. Between two depths the smooth line and the straight one bound what is not known.
    fn at(&self, depth_m: f64) -> (f64, f64) {
        let below = self.points.partition_point(|p| p.depth_m < depth_m - SAME_DEPTH_M);
        let here = self.points.get(below);
        if let Some(p) = here.filter(|p| (p.depth_m - depth_m).abs() <= SAME_DEPTH_M) {
            return (p.temp_c, p.sd_c * p.sd_c);
        }
        let value_c = self.curve.at(depth_m).0;
        let unsure_c = value_c - self.curve.straight_c(depth_m);
        let above = below.checked_sub(1).and_then(|i| self.points.get(i));
        let sd_c = match (above, here) {
            (Some(p), Some(q)) => {
                let f = (depth_m - p.depth_m) / (q.depth_m - p.depth_m);
                ((1.0 - f) * p.sd_c).hypot(f * q.sd_c)
            }
            (Some(end), None) | (None, Some(end)) => end.sd_c,
            (None, None) => 0.0,
        };
        (value_c, sd_c * sd_c + unsure_c * unsure_c)
    }
}

/// Steepness around each point: root mean square of the slopes to its neighbours \[°C/m\].
fn slopes(points: &[(f64, f64)]) -> Vec<f64> {
    let between = |p: Option<&(f64, f64)>, q: Option<&(f64, f64)>| {
        let (p, q) = (p?, q?);
        Some((q.1 - p.1) / (q.0 - p.0).max(SAME_DEPTH_M))
    };
    (0..points.len())
        .map(|i| {
            let above = between(i.checked_sub(1).and_then(|i| points.get(i)), points.get(i));
            let below = between(points.get(i), points.get(i + 1));
            match (above, below) {
                (Some(p), Some(q)) => ((p * p + q * q) / 2.0).sqrt(),
                (one, other) => one.or(other).unwrap_or(0.0),
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::Density::Tanaka;
    use super::*;

    fn points(rows: &[(f64, f64)]) -> Vec<Point> {
        rows.iter().map(|(z, t)| Point { depth_m: *z, temp_c: *t, sd_c: 0.1, legs: 1 }).collect()
    }

    /// Five readings a metre apart, straight from 20 °C at `warmer` more.
    fn line(top_m: f64, step_m: f64, count: usize, warmer_c: f64) -> Vec<Point> {
        let rows: Vec<(f64, f64)> =
            (0..count).map(|i| top_m + step_m * i as f64).map(|z| (z, 20.0 - 2.0 * z + warmer_c)).collect();
        points(&rows)
    }

    fn depths(field: &Field) -> Vec<f64> {
        field.shared.iter().map(|at| at.depth_m).collect()
    }

    #[test]
    fn equal_depths_are_taken_as_they_are() {
        let field =
            Field::of(&line(0.0, 1.0, 5, 0.0), &line(0.0, 1.0, 5, 0.5), None, 0.05, Tanaka).ok().unwrap();
        assert_eq!(depths(&field), [0.0, 1.0, 2.0, 3.0, 4.0]);
        let at = field.shared[2];
        assert_eq!((at.first_c, at.second_c, at.difference_c), (16.0, 16.5, 0.5));
        // Two readings with 0.1 °C each; 2 °C/m with marks off by 0.05 m in both casts.
        assert!((at.variance - (0.02 + 2.0 * 0.01)).abs() < 1e-12, "{}", at.variance);
        assert!((field.chance_score() - 5.0 * 0.25 / 0.04).abs() < 1e-9);
        assert!((field.misfit([0.5; 5].into_iter())).abs() < 1e-12);
        assert!(!field.even && field.rocking.is_some());
    }

    #[test]
    fn the_cast_read_at_fewer_depths_says_where() {
        let (coarse, fine) = (line(0.5, 1.0, 5, 0.0), line(0.0, 0.5, 9, 0.0));
        let field = Field::of(&fine, &coarse, None, 0.0, Tanaka).ok().unwrap();
        assert_eq!(depths(&field), [0.5, 1.5, 2.5, 3.5]);
        let (one, other) = (line(0.0, 1.0, 5, 0.0), line(0.25, 1.0, 5, 0.0));
        assert_eq!(depths(&Field::of(&one, &other, None, 0.0, Tanaka).ok().unwrap()), [1.0, 2.0, 3.0, 4.0]);
        // Between two readings half of each: the variance of their mean is half.
        let between =
            Field::of(&line(0.0, 1.0, 5, 0.0), &line(-0.5, 1.0, 6, 0.0), None, 0.0, Tanaka).ok().unwrap();
        assert!(between.shared.iter().all(|at| (at.variance - 0.015).abs() < 1e-12));
    }

    #[test]
    fn too_little_shared_is_refused() {
        let refused = |first: &[Point], second: &[Point]| Field::of(first, second, None, 0.0, Tanaka).err();
        let five = line(0.0, 1.0, 5, 0.0);
        assert_eq!(refused(&five, &[]), Some(Refusal::TooFewDepths));
        assert_eq!(refused(&five, &line(0.0, 1.0, 3, 0.0)), Some(Refusal::TooFewDepths));
        assert_eq!(refused(&five, &line(1.0, 1.0, 4, 0.0)), None);
        assert_eq!(refused(&five, &line(5.0, 1.0, 5, 0.0)), Some(Refusal::TooFewDepths));
        assert_eq!(refused(&line(0.0, 0.25, 5, 0.0), &five), Some(Refusal::TooFewDepths));
        assert_eq!(
            refused(&line(0.0, 0.25, 6, 0.0), &line(0.0, 0.25, 6, 0.0)),
            Some(Refusal::TooLittleWater)
        );
        assert_eq!(refused(&line(0.0, 0.25, 7, 0.0), &line(0.0, 0.25, 7, 0.0)), None);
    }

    #[test]
    fn even_water_is_known_as_such() {
        let even = |drop_c: f64| {
            let rows: Vec<(f64, f64)> = (0..5).map(f64::from).map(|z| (z, 10.0 - drop_c * z / 4.0)).collect();
            Field::of(&points(&rows), &points(&rows), None, 0.0, Tanaka).ok().unwrap().even
        };
        assert!(even(0.9) && !even(1.0));
    }

    #[test]
    fn a_bed_above_the_readings_is_no_bed() {
        let lowest = |bed_m| {
            let five = line(0.0, 1.0, 5, 0.0);
            Field::of(&five, &five, bed_m, 0.0, Tanaka).ok().unwrap().rocking.unwrap()[4]
        };
        assert_eq!(lowest(Some(3.0)), lowest(None));
        assert_eq!(lowest(Some(4.5)), lowest(None));
        assert!(lowest(Some(4.0)) < 1e-5 && lowest(Some(8.0)) > lowest(None));
    }
}
