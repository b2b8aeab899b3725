//! One of two casts to be compared, and what is known beside its readings.

use crate::analysis::{Analysis, Level};
use crate::cast::Cast;
use crate::cast::station::SAME_DEPTH_M;
use crate::order::sort_by;
use crate::water::density::Density;

/// A profile longer than this is averaged down to it.
const MOST_LEVELS: usize = 64;
/// Deeper, higher or warmer than any water, metres and °C: such levels are left out.
const UNREACHABLE: f64 = 20_000.0;
const NO_WATER_C: f64 = 1_000.0;
/// A finer digit rounds nothing, °C.
const FINEST_DIGIT_C: f64 = 1e-6;
/// No value is better known than this, °C.
pub(super) const LEAST_SD_C: f64 = 0.01;
/// Taken where a standard deviation is no number, °C.
const UNKNOWN_SD_C: f64 = 0.1;

/// One cast as [`compare`](super::compare) takes it.
#[derive(Clone, Debug, PartialEq)]
pub struct Side {
    /// Its profile.
    pub levels: Vec<Level>,
    /// Last decimal place written, °C; 0 if unknown.
    pub digit_c: f64,
    /// Depth of the bed, metres; `None` if nobody noted it.
    pub bed_m: Option<f64>,
    /// What its records say.
    pub known: Known,
}

/// What records say of a cast, not yet taken off its readings. Zero (or a factor of 1) says: checked, and right, or taken
/// off already. `None` says: not checked.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Known {
    /// What the probe read in stirred melting ice, °C.
    pub ice_c: Option<f64>,
    /// True depth less marked depth, alike for every mark, metres.
    pub deeper_m: Option<f64>,
    /// True length of the cable over its marked length.
    pub stretch: Option<f64>,
}

/// How two casts are compared.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Options {
    /// How exactly each mark was placed and held, standard deviation in metres (methods 8.3: 0.02 to 0.05).
    pub mark_sd_m: f64,
    /// Minutes from cast a to cast b; negative when b was first. `None`: no clock was read.
    pub minutes_apart: Option<f64>,
    /// Density formula of the water, with its salt where it takes any: it says how a layer rocks. Heat is
    /// always that of fresh water.
    pub density: Density,
    /// Seed of the pairs without a cause.
    pub seed: u64,
}

impl Default for Options {
    fn default() -> Self {
        Self { mark_sd_m: 0.03, minutes_apart: None, density: Density::default(), seed: 1 }
    }
}

impl Options {
    /// The mark placement used: what makes no sense gives way to the usual.
    pub(super) fn marks_m(&self) -> f64 {
        if (0.0..=1.0).contains(&self.mark_sd_m) { self.mark_sd_m } else { Self::default().mark_sd_m }
    }
}

impl Side {
    /// A bare profile, readings to 0.1 °C, nothing known beside.
    pub fn bare(levels: Vec<Level>) -> Self {
        Self { levels, digit_c: 0.1, bed_m: None, known: Known::default() }
    }

    /// A cast with its analysis, nothing known beside.
    pub fn of(cast: &Cast, analysis: &Analysis) -> Self {
        Self {
            levels: analysis.profile.clone(),
            digit_c: cast.digit_c,
            bed_m: cast.bed_m,
            known: Known::default(),
        }
    }

    /// The same without its records.
    pub(super) fn unrecorded(&self) -> Self {
        Self { known: Known::default(), ..self.clone() }
    }

    /// Usable levels, strictly deeper, records taken off, averaged down where there are too many. The flag says whether
    /// they were.
    pub(super) fn points(&self) -> (Vec<Point>, bool) {
        let known = self.known.sensible();
        let (ice_c, deeper_m) = (known.ice_c.unwrap_or(0.0), known.deeper_m.unwrap_or(0.0));
        let stretch = known.stretch.unwrap_or(1.0);
        let mut points: Vec<Point> = (self.levels.iter())
            .filter(|level| level.depth_m.abs() <= UNREACHABLE && level.temp_c.abs() <= NO_WATER_C)
            .map(|level| Point {
                depth_m: level.depth_m * stretch + deeper_m,
                temp_c: level.temp_c - ice_c,
                sd_c: if level.sd_c.is_finite() {
                    level.sd_c.clamp(LEAST_SD_C, NO_WATER_C)
                } else {
                    UNKNOWN_SD_C
                },
                legs: level.legs.clamp(1, 2),
            })
            .collect();
        sort_by(&mut points, |p, q| p.depth_m.total_cmp(&q.depth_m).then(p.temp_c.total_cmp(&q.temp_c)));
        points.dedup_by(|later, kept| later.depth_m - kept.depth_m < SAME_DEPTH_M);
        let group = points.len().div_ceil(MOST_LEVELS);
        if group > 1 {
            points = points.chunks(group).map(mean).collect();
        }
        (points, group > 1)
    }

    /// The bed where it is known and can be one.
    pub(super) fn bed(&self) -> Option<f64> {
        self.bed_m.filter(|bed_m| (0.0..=UNREACHABLE).contains(bed_m))
    }

    /// The digit where it makes sense.
    pub(super) fn digit(&self) -> f64 {
        if (FINEST_DIGIT_C..=10.0).contains(&self.digit_c) { self.digit_c } else { 0.0 }
    }
}

impl Known {
    /// Records that cannot be are none.
    pub(super) fn sensible(&self) -> Self {
        Self {
            ice_c: self.ice_c.filter(|ice_c| ice_c.abs() <= 10.0),
            deeper_m: self.deeper_m.filter(|deeper_m| deeper_m.abs() <= 10.0),
            stretch: self.stretch.filter(|stretch| (0.5..=2.0).contains(stretch)),
        }
    }
}

/// One value of a profile as it is compared.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Point {
    pub depth_m: f64,
    pub temp_c: f64,
    pub sd_c: f64,
    pub legs: u8,
}

/// The mean of neighbours. Its standard deviation is theirs, not less: neighbours of a logger share their noise.
fn mean(group: &[Point]) -> Point {
    let n = group.len().max(1) as f64;
    let mean = |f: fn(&Point) -> f64| group.iter().map(f).sum::<f64>() / n;
    Point {
        depth_m: mean(|p| p.depth_m),
        temp_c: mean(|p| p.temp_c),
        sd_c: mean(|p| p.sd_c * p.sd_c).sqrt(),
        legs: group.iter().map(|p| p.legs).min().unwrap_or(1),
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn side(rows: &[(f64, f64)]) -> Side {
        Side::bare(rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.1)).collect())
    }

    fn depths(side: &Side) -> Vec<f64> {
        side.points().0.iter().map(|p| p.depth_m).collect()
    }

    #[test]
    fn wild_levels_are_left_out_and_the_rest_put_in_order() {
        let wild = [
            (2.0, 9.0),
            (f64::NAN, 9.0),
            (1.0, f64::INFINITY),
            (0.0, 20.0),
            (1e308, 4.0),
            (1.0, 1e308),
            (1.0, 15.0),
            (1.0, 16.0),
            (-20_001.0, 3.0),
        ];
        assert_eq!(depths(&side(&wild)), [0.0, 1.0, 2.0]);
        assert_eq!(side(&wild).points().0[1].temp_c, 15.0);
    }

    #[test]
    fn records_are_taken_off() {
        let known = Known { ice_c: Some(0.3), deeper_m: Some(-0.6), stretch: Some(1.1) };
        let recorded = Side { known, ..side(&[(1.0, 15.0), (2.0, 14.0)]) };
        let (points, thinned) = recorded.points();
        assert!(
            !thinned && (points[0].depth_m - 0.5).abs() < 1e-12 && (points[1].depth_m - 1.6).abs() < 1e-12
        );
        assert!((points[0].temp_c - 14.7).abs() < 1e-12);
        assert_eq!(depths(&recorded.unrecorded()), [1.0, 2.0]);
        let wild = Known { ice_c: Some(f64::NAN), deeper_m: Some(11.0), stretch: Some(0.0) };
        assert_eq!(wild.sensible(), Known::default());
        let edge = Known { ice_c: Some(-10.0), deeper_m: Some(10.0), stretch: Some(2.0) };
        assert_eq!(edge.sensible(), edge);
    }

    #[test]
    fn long_profiles_are_averaged_down() {
        let long: Vec<(f64, f64)> =
            (0..130).map(|i| (f64::from(i) * 0.1, 20.0 - f64::from(i) * 0.1)).collect();
        let (points, thinned) = side(&long).points();
        assert_eq!((points.len(), thinned), (44, true));
        assert!((points[0].depth_m - 0.1).abs() < 1e-12 && (points[0].temp_c - 19.9).abs() < 1e-12);
        assert!((points[0].sd_c - 0.1).abs() < 1e-12);
        assert!(!side(long.get(..64).unwrap()).points().1 && side(long.get(..65).unwrap()).points().1);
    }

    #[test]
    fn numbers_that_make_no_sense_give_way() {
        let level = |sd_c: f64| Side::bare(vec![Level::bare(1.0, 15.0, sd_c)]).points().0[0].sd_c;
        assert_eq!((level(0.0), level(f64::NAN), level(-1.0), level(0.25)), (0.01, 0.1, 0.01, 0.25));
        let marks = |mark_sd_m| Options { mark_sd_m, ..Options::default() }.marks_m();
        assert_eq!(
            (marks(0.0), marks(-0.1), marks(f64::NAN), marks(1.0), marks(1.1)),
            (0.0, 0.03, 0.03, 1.0, 0.03)
        );
        let side = |digit_c, bed_m| Side { digit_c, bed_m: Some(bed_m), ..Side::bare(Vec::new()) };
        assert_eq!((side(0.5, 8.0).digit(), side(0.5, 8.0).bed()), (0.5, Some(8.0)));
        assert_eq!((side(-0.5, -8.0).digit(), side(f64::NAN, f64::NAN).bed()), (0.0, None));
        assert_eq!((side(1e-6, 0.0).digit(), side(5e-324, 0.0).digit()), (1e-6, 0.0));
        assert_eq!((side(10.5, -8.0).digit(), side(0.1, -8.0).bed()), (0.0, None));
    }
}
