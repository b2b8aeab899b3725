//! Three readings that a student places on the picture by hand, before the rest draws: which ones they are, and what a point
//! that lies elsewhere tells. Common practice, no source: a graph is read best by whoever has drawn some of it.

use crate::document::{ByHand, HAND_POINTS, Notebook};
use layercast_core::Analysis;

/// A point is right this near, °C (our choice); or within [`OF_RANGE`] of how far the temperatures go, where that is more.
const NEAR_C: f64 = 0.5;
/// A point is right this near, metres; or half a mark, where that is more (our choice).
const NEAR_M: f64 = 0.25;
/// Share of the axis that a hand cannot place better on a small screen.
const OF_RANGE: f64 = 0.03;
/// Least difference of the outermost temperatures, °C: in even water a mirrored point lies where the right one does.
const LEAST_RANGE_C: f64 = 2.0;

/// How a placed point lies to its reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Placed {
    /// On it.
    Right,
    /// As high above the bottom as it should be deep: 0 was taken to be at the bottom.
    DepthFromBelow,
    /// As far from the warm end as it should be from the cold one.
    WarmLeft,
    /// At the right temperature, at another depth.
    OtherDepth,
    /// At the right depth, at another temperature.
    OtherTemp,
    /// Both are other ones.
    Elsewhere,
}

/// The readings to place, downward: (depth in metres, mean °C), at about a sixth, a half and five sixths of the marks.
/// `None` for a cast of fewer than five depths.
pub fn targets(analysis: &Analysis) -> Option<[(f64, f64); HAND_POINTS]> {
    let profile = &analysis.profile;
    let count = profile.len();
    let level = |at: usize| profile.get(at).map(|level| (level.depth_m, level.temp_c));
    let sixth = |n: usize| level(n * (count - 1) / 6);
    if count < 5 { None } else { Some([sixth(1)?, sixth(3)?, sixth(5)?]) }
}

/// How a point lies to its reading.
pub fn placed(analysis: &Analysis, target: (f64, f64), at: (f64, f64)) -> Placed {
    let profile = &analysis.profile;
    let deepest_m = profile.last().map_or(0.0, |level| level.depth_m);
    let temps = || profile.iter().map(|level| level.temp_c);
    let (low_c, high_c) = (temps().fold(f64::INFINITY, f64::min), temps().fold(f64::NEG_INFINITY, f64::max));
    let mark_m = deepest_m / (profile.len().saturating_sub(1).max(1)) as f64;
    let near_m = |depth_m: f64, give: f64| {
        (at.0 - depth_m).abs() <= give * NEAR_M.max(mark_m / 2.0).max(OF_RANGE * deepest_m) + 1e-9
    };
    let near_c = |temp_c: f64, give: f64| {
        (at.1 - temp_c).abs() <= give * NEAR_C.max(OF_RANGE * (high_c - low_c)) + 1e-9
    };
    // The axes end a little beyond the readings: a mirrored point is known with twice the give.
    let mirrored_m = deepest_m - target.0;
    let mirrored_c = low_c + high_c - target.1;
    match (near_m(target.0, 1.0), near_c(target.1, 1.0)) {
        (true, true) => Placed::Right,
        (false, true) if near_m(mirrored_m, 2.0) && !near_m(target.0, 2.0) => Placed::DepthFromBelow,
        (true, false)
            if high_c - low_c >= LEAST_RANGE_C && near_c(mirrored_c, 2.0) && !near_c(target.1, 2.0) =>
        {
            Placed::WarmLeft
        }
        (false, true) => Placed::OtherDepth,
        (true, false) => Placed::OtherTemp,
        (false, false) => Placed::Elsewhere,
    }
}

/// Whether the curve waits for the points: the lesson asks for them, this cast has three to place, and the rest has not
/// been drawn.
pub fn waits(notebook: &Notebook, analysis: &Analysis) -> bool {
    let drawn = notebook.sheets.first().is_some_and(|sheet| sheet.by_hand.drawn);
    notebook.lesson.open.curve_waits && !drawn && targets(analysis).is_some()
}

/// The points that lie on the picture, downward.
pub fn shown(by_hand: &ByHand) -> Vec<(f64, f64)> {
    let mut points: Vec<(f64, f64)> = by_hand.points.iter().flatten().copied().collect();
    points.sort_by(|a, b| a.0.total_cmp(&b.0));
    points
}

#[cfg(test)]
mod tests {
    use super::*;
    use layercast_core::{Cast, Leg, Method, Reading, Switch, analyse};

    /// 22 °C at the top, 8 °C at 10 m: half way between at 5 m.
    fn analysis() -> Analysis {
        let reading = |i: usize| Reading {
            depth_m: i as f64,
            temp_c: Some([22.0, 21.8, 21.5, 20.0, 17.0, 14.0, 12.0, 10.5, 9.5, 8.5, 8.0][i]),
            leg: Leg::Down,
            switch: Switch::Auto,
        };
        analyse(
            &Cast { readings: (0..11).map(reading).collect(), digit_c: 0.1, bed_m: None },
            &Method::default(),
        )
    }

    #[test]
    fn the_readings_lie_apart() {
        assert_eq!(targets(&analysis()), Some([(1.0, 21.8), (5.0, 14.0), (8.0, 9.5)]));
    }

    #[test]
    fn what_a_point_elsewhere_tells() {
        let analysis = analysis();
        let at = |target, at| placed(&analysis, target, at);
        assert_eq!(at((1.0, 21.8), (1.2, 21.5)), Placed::Right);
        assert_eq!(at((1.0, 21.8), (9.0, 21.8)), Placed::DepthFromBelow);
        // 8 + 22 − 21.8
        assert_eq!(at((1.0, 21.8), (1.0, 8.2)), Placed::WarmLeft);
        assert_eq!(at((1.0, 21.8), (4.0, 21.8)), Placed::OtherDepth);
        assert_eq!(at((1.0, 21.8), (1.0, 17.0)), Placed::OtherTemp);
        assert_eq!(at((1.0, 21.8), (9.0, 8.2)), Placed::Elsewhere);
        // In the middle a mirrored depth is the depth.
        assert_eq!(at((5.0, 14.0), (5.0, 14.0)), Placed::Right);
        assert_eq!(at((5.0, 14.0), (5.0, 18.0)), Placed::OtherTemp);
        assert_eq!(at((1.0, 21.8), (f64::NAN, 21.8)), Placed::OtherDepth);
    }
}
