//! A smooth line through the values of a profile that never swings beyond them.

use crate::cast::station::SAME_DEPTH_M;
use crate::layers::monotone_curve::{Secant, slope_at};

/// Beyond its ends the line goes on straight for this far, metres, and is level from there.
const REACH_M: f64 = 0.5;

/// Piecewise cubic through points of strictly increasing depth, monotone between two points.
///
/// Source: [`FritschButland1984`](crate::bibliography::FritschButland1984).
#[derive(Clone, Debug)]
pub(super) struct Curve {
    nodes: Vec<Node>,
}

#[derive(Clone, Copy, Debug)]
struct Node {
    depth_m: f64,
    temp_c: f64,
    slope_c_per_m: f64,
}

impl Curve {
    /// Through (metres, °C); depths must increase.
    pub(super) fn through(points: &[(f64, f64)]) -> Self {
        let secants: Vec<Secant> = (points.iter().zip(points.iter().skip(1)))
            .map(|(p, q)| Secant { height_m: q.0 - p.0, slope: (q.1 - p.1) / (q.0 - p.0) })
            .collect();
        let nodes = (points.iter().enumerate())
            .map(|(i, p)| Node { depth_m: p.0, temp_c: p.1, slope_c_per_m: slope_at(&secants, i) })
            .collect();
        Self { nodes }
    }

    /// Value \[°C\] and slope \[°C/m\] at a depth; zeros for a curve without points.
    pub(super) fn at(&self, depth_m: f64) -> (f64, f64) {
        match self.around(depth_m) {
            (Some(p), Some(q)) => between(p, q, depth_m),
            (None, Some(end)) => beyond(end, depth_m),
            (Some(end), None) => beyond(end, depth_m),
            (None, None) => (0.0, 0.0),
        }
    }

    /// Value on the straight line between the neighbours \[°C\]; the nearest end beyond the ends.
    pub(super) fn straight_c(&self, depth_m: f64) -> f64 {
        match self.around(depth_m) {
            (Some(p), Some(q)) => {
                let f = (depth_m - p.depth_m) / (q.depth_m - p.depth_m);
                p.temp_c + f * (q.temp_c - p.temp_c)
            }
            (Some(end), None) | (None, Some(end)) => end.temp_c,
            (None, None) => 0.0,
        }
    }

    /// The points above (or at) and below a depth.
    fn around(&self, depth_m: f64) -> (Option<&Node>, Option<&Node>) {
        let below = self.nodes.partition_point(|node| node.depth_m <= depth_m);
        (below.checked_sub(1).and_then(|i| self.nodes.get(i)), self.nodes.get(below))
    }
}

/// Cubic Hermite value and slope.
fn between(p: &Node, q: &Node, depth_m: f64) -> (f64, f64) {
    let h = q.depth_m - p.depth_m;
    if h < SAME_DEPTH_M {
        return (p.temp_c, p.slope_c_per_m);
    }
    let t = (depth_m - p.depth_m) / h;
    let rise = (q.temp_c - p.temp_c) / h;
    let c = 3.0 * rise - 2.0 * p.slope_c_per_m - q.slope_c_per_m;
    let d = p.slope_c_per_m + q.slope_c_per_m - 2.0 * rise;
    let value = p.temp_c + h * t * (p.slope_c_per_m + t * (c + t * d));
    (value, p.slope_c_per_m + t * (2.0 * c + 3.0 * t * d))
}

fn beyond(end: &Node, depth_m: f64) -> (f64, f64) {
    let out_m = depth_m - end.depth_m;
    if out_m.abs() <= REACH_M {
        (end.temp_c + end.slope_c_per_m * out_m, end.slope_c_per_m)
    } else {
        (end.temp_c + end.slope_c_per_m * REACH_M.copysign(out_m), 0.0)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn agrees_with_a_library() {
        // scipy 1.17.1, scipy.interpolate.PchipInterpolator([0, 1, 1.5, 3], [20, 19, 12, 10]), value and derivative.
        let curve = Curve::through(&[(0.0, 20.0), (1.0, 19.0), (1.5, 12.0), (3.0, 10.0)]);
        for (depth_m, value, slope) in ORACLE {
            let got = curve.at(depth_m);
            assert!((got.0 - value).abs() < 1e-9 && (got.1 - slope).abs() < 1e-9, "{depth_m}: {got:?}");
        }
    }

    const ORACLE: [(f64, f64, f64); 7] = [
        (0.0, 20.0, 0.0),
        (0.3, 19.914131147540985, -0.5783606557377049),
        (1.0, 19.0, -2.0655737704918034),
        (1.2, 16.522808100289296, -19.008601735776274),
        (1.5, 12.0, -2.8235294117647056),
        (2.0, 10.854030501089325, -1.7777777777777777),
        (3.0, 10.0, 0.0),
    ];

    #[test]
    fn a_straight_line_stays_straight_and_ends_level() {
        let curve = Curve::through(&[(1.0, 10.0), (2.0, 8.0), (4.0, 4.0)]);
        for (depth_m, want) in [(1.0, 10.0), (1.25, 9.5), (3.0, 6.0), (4.0, 4.0), (4.25, 3.5), (0.5, 11.0)] {
            assert!((curve.at(depth_m).0 - want).abs() < 1e-12, "{depth_m}: {}", curve.at(depth_m).0);
        }
        assert!((curve.at(9.0).0 - 3.0).abs() < 1e-12 && (curve.at(-9.0).0 - 11.0).abs() < 1e-12);
        assert_eq!((curve.at(9.0).1, curve.at(-9.0).1), (0.0, 0.0));
        assert_eq!((curve.straight_c(1.5), curve.straight_c(0.0), curve.straight_c(9.0)), (9.0, 10.0, 4.0));
    }

    #[test]
    fn few_points_are_no_fault() {
        assert_eq!(Curve::through(&[]).at(1.0), (0.0, 0.0));
        assert_eq!(Curve::through(&[(1.0, 5.0)]).at(1.2), (5.0, 0.0));
        assert_eq!(Curve::through(&[(1.0, 5.0), (2.0, 7.0)]).at(1.5), (6.0, 2.0));
    }

    #[test]
    fn never_beyond_its_points() {
        let curve = Curve::through(&[(0.0, 20.0), (0.5, 20.0), (1.0, 8.0), (1.5, 8.0), (2.0, 9.0)]);
        for i in 0..=200 {
            let value = curve.at(f64::from(i) * 0.01).0;
            assert!((8.0..=20.0).contains(&value), "{value}");
        }
        assert_eq!(curve.at(0.25).0, 20.0);
    }
}
