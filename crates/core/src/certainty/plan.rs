//! What is unsure about a cast, and which of its depths are sought in every trial.

use crate::analysis::{Analysis, Level, Method, MixedLayer, State};
use crate::cast::Cast;
use crate::cast::pairs::ENOUGH_PAIRS;
use crate::layers::state::END_M;
use crate::slack::{at_least, at_most, more_than};

/// What is unsure besides the noise of the readings, which comes from the pairs of the cast itself.
///
/// The defaults are conventions of ours, on the numbers of methods 8.3, 8.4 and 3.3. A value that makes no sense
/// (negative, or not a number) counts as 0, one beyond all sense as the most that has some.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Unsure {
    /// Half width of the probe's offset, the same for all readings of a cast, °C (0.2; a rectangle).
    pub offset_half_c: f64,
    /// Standard deviation of each mark on the cable, metres (0.03). Of marks close together at most a sixth of their
    /// distance: nobody ties them in the wrong order.
    pub mark_sd_m: f64,
    /// Standard deviation of the cable's length, as a share of it (0.01).
    pub stretch_sd: f64,
    /// The cable hung at some angle between 0 and this, degrees (5): from 10 on somebody notes it.
    pub angle_half_deg: f64,
    /// Between two marks nobody read: the water may do there what fits the readings around (true). When false, a depth
    /// is exactly what its rule makes of the readings of a trial.
    pub between_marks: bool,
}

impl Default for Unsure {
    fn default() -> Self {
        Self {
            offset_half_c: 0.2,
            mark_sd_m: 0.03,
            stretch_sd: 0.01,
            angle_half_deg: 5.0,
            between_marks: true,
        }
    }
}

impl Unsure {
    /// Nothing is unsure but the readings themselves.
    pub const READINGS_ONLY: Self = Self {
        offset_half_c: 0.0,
        mark_sd_m: 0.0,
        stretch_sd: 0.0,
        angle_half_deg: 0.0,
        between_marks: false,
    };

    fn sensible(&self) -> Self {
        let up_to = |value: f64, most: f64| if value > 0.0 { value.min(most) } else { 0.0 };
        Self {
            offset_half_c: up_to(self.offset_half_c, 5.0),
            mark_sd_m: up_to(self.mark_sd_m, 1.0),
            stretch_sd: up_to(self.stretch_sd, 0.1),
            angle_half_deg: up_to(self.angle_half_deg, 60.0),
            between_marks: self.between_marks,
        }
    }
}

/// A depth of the analysis that has a range.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Depth {
    /// Middle of the step that cools fastest, in the main layer.
    Thermocline,
    /// End of the mixed layer by the class rule.
    MixedLayer,
    /// End of the season's mixed layer, below today's warm layer.
    MixedLayerSeason,
    /// Upper edge of the steep layer.
    MetalimnionTop,
    /// Lower edge of the steep layer.
    MetalimnionBottom,
    /// Middle of the step of today's warm layer that cools fastest.
    WarmLayerToday,
    /// Inverse casts: middle of the step that warms fastest.
    FastestWarming,
    /// Inverse casts: middle of the step where density gains most.
    FastestDensing,
}

impl Depth {
    /// Every depth, in an order that stays.
    pub const ALL: [Self; 8] = [
        Self::Thermocline,
        Self::MixedLayer,
        Self::MixedLayerSeason,
        Self::MetalimnionTop,
        Self::MetalimnionBottom,
        Self::WarmLayerToday,
        Self::FastestWarming,
        Self::FastestDensing,
    ];

    /// Whether the depth is the middle of a step, so that the share of trials in each step says more than a range.
    pub fn is_a_middle(self) -> bool {
        match self {
            Self::Thermocline | Self::WarmLayerToday | Self::FastestWarming | Self::FastestDensing => true,
            Self::MixedLayer | Self::MixedLayerSeason | Self::MetalimnionTop | Self::MetalimnionBottom => {
                false
            }
        }
    }

    /// Numbers of a trial that belong to it.
    fn numbers(self) -> usize {
        1 + usize::from(self.is_a_middle())
    }
}

/// One value of the profile and what is drawn for it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Unsettled {
    pub level: Level,
    /// Standard deviation of the normal part, °C.
    pub noise_sd_c: f64,
    /// Half width of the rectangle of rounding, °C.
    pub rounding_half_c: f64,
    pub mark_sd_m: f64,
    /// Closest its mark may come to the one above, metres; for the first, its least depth.
    pub least_m: f64,
    /// Standard deviation of its difference from the value above, °C.
    pub pair_sd_c: f64,
}

/// All that trials need of a cast: made once, used by every chunk.
///
/// What is sought is what the analysis found (its depths that are `Some`), and only that; an unstable cast and one of too
/// few depths have none.
#[derive(Clone, Debug, PartialEq)]
pub struct Plan {
    pub(super) method: Method,
    pub(super) s_c: f64,
    /// Pairs behind s; 0 where it is a convention.
    pub(super) pairs: f64,
    pub(super) values: Vec<Unsettled>,
    /// Levels from the first, and from this place on, whose medians are top and bottom.
    pub(super) ends: (usize, usize),
    /// Depths sought, with the value of the analysis; `None` for "at least".
    pub(super) sought: Vec<(Depth, Option<f64>)>,
    pub(super) unsure: Unsure,
}

impl Plan {
    /// The plan for a cast and its analysis.
    ///
    /// * `cast`: for the last decimal place written
    /// * `analysis`: of that cast
    pub fn new(cast: &Cast, analysis: &Analysis, unsure: &Unsure) -> Self {
        let unsure = unsure.sensible();
        let s_c = analysis.pairs.s_used_c;
        let rounding = Rounding::new(cast.digit_c, s_c);
        let levels = &analysis.profile;
        let values = (levels.iter().enumerate())
            .map(|(i, level)| {
                let above = i.checked_sub(1).and_then(|i| levels.get(i));
                let above_m = above.map(|above| level.depth_m - above.depth_m);
                let below_m = levels.get(i + 1).map(|below| below.depth_m - level.depth_m);
                let room_m = above_m.into_iter().chain(below_m).fold(f64::INFINITY, f64::min);
                let (noise_sd_c, rounding_half_c) = rounding.parts(level);
                Unsettled {
                    level: *level,
                    noise_sd_c,
                    rounding_half_c,
                    mark_sd_m: unsure.mark_sd_m.min(room_m / 6.0),
                    least_m: above_m.map_or(level.depth_m.min(0.0), |height_m| height_m / 4.0),
                    pair_sd_c: above.map_or(0.0, |above| libm::hypot(above.sd_c, level.sd_c)),
                }
            })
            .collect();
        Self {
            method: analysis.method,
            s_c,
            pairs: if analysis.pairs.count >= ENOUGH_PAIRS { analysis.pairs.count as f64 } else { 0.0 },
            values,
            ends: ends(levels),
            sought: sought(analysis),
            unsure,
        }
    }

    /// Numbers drawn a trial: one for each depth sought, and one more, the place of its step, where it is the middle of
    /// one. 0 where there is nothing to seek.
    pub fn width(&self) -> usize {
        self.depths().map(Depth::numbers).sum()
    }

    /// The depths sought, in the order of their numbers in a trial.
    pub fn depths(&self) -> impl Iterator<Item = Depth> {
        self.sought.iter().map(|(depth, _)| *depth)
    }
}

/// Noise and rounding of one reading.
///
/// The s of the pairs already holds the rounding of the readings it was found from: it is split, not added to. What is
/// left after digit²/12 is normal noise and shrinks with every leg averaged. Rounding shrinks so only while noise shakes
/// the readings over the edge of a digit: two readings of quiet water are rounded alike. The part rounded alike is
/// e^−(2π·noise/digit)², the first term of the Fourier series of the error of rounding.
struct Rounding {
    variance: f64,
    alike: f64,
}

impl Rounding {
    fn new(digit_c: f64, s_c: f64) -> Self {
        let digit_c = if digit_c.is_finite() { digit_c.max(0.0) } else { 0.0 };
        let variance = (digit_c * digit_c / 12.0).min(s_c * s_c);
        let noise = (s_c * s_c - variance).max(0.0);
        let alike = if digit_c > 0.0 {
            let turns = 2.0 * std::f64::consts::PI / digit_c;
            libm::exp(-turns * turns * noise)
        } else {
            0.0
        };
        Self { variance, alike }
    }

    /// Standard deviation of the noise and half width of the rounding of a mean of one or two legs, °C.
    fn parts(&self, level: &Level) -> (f64, f64) {
        let legs = f64::from(level.legs.max(1));
        let noise = (level.sd_c * level.sd_c - self.variance / legs).max(0.0);
        let rounding = self.variance * (self.alike + (1.0 - self.alike) / legs);
        (noise.sqrt(), (3.0 * rounding).sqrt())
    }
}

/// The levels whose medians are the top and the bottom of methods 7.1: how many from the first, and from which on.
fn ends(levels: &[Level]) -> (usize, usize) {
    let (Some(first), Some(last)) = (levels.first(), levels.last()) else { return (0, 0) };
    if !more_than(last.depth_m - first.depth_m, 2.0 * END_M) {
        return (1, levels.len().saturating_sub(1));
    }
    (
        levels.partition_point(|l| at_most(l.depth_m, first.depth_m + END_M)),
        levels.partition_point(|l| !at_least(l.depth_m, last.depth_m - END_M)),
    )
}

/// What the analysis found.
fn sought(analysis: &Analysis) -> Vec<(Depth, Option<f64>)> {
    if matches!(analysis.state, State::Unstable | State::TooFew) {
        return Vec::new();
    }
    let mixed_m = |mixed: &Option<MixedLayer>| {
        mixed.map(|mixed| match mixed {
            MixedLayer::At { value_m, .. } => Some(value_m),
            MixedLayer::AtLeast { .. } => None,
        })
    };
    let metalimnion = analysis.metalimnion.as_ref();
    [
        (Depth::Thermocline, analysis.thermocline.map(|t| Some(t.value_m))),
        (Depth::MixedLayer, mixed_m(&analysis.mixed_layer)),
        (Depth::MixedLayerSeason, mixed_m(&analysis.mixed_layer_season)),
        (Depth::MetalimnionTop, metalimnion.map(|m| Some(m.top_m))),
        (Depth::MetalimnionBottom, metalimnion.map(|m| (!m.cut_off).then_some(m.bottom_m))),
        (Depth::WarmLayerToday, analysis.warm_layer_today.map(|w| Some(w.value_m))),
        (Depth::FastestWarming, analysis.fastest_warming.map(|t| Some(t.value_m))),
        (Depth::FastestDensing, analysis.fastest_densing_m.map(Some)),
    ]
    .into_iter()
    .filter_map(|(depth, value_m)| Some((depth, value_m?)))
    .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    /// Variances of noise and rounding, °C².
    #[track_caller]
    fn check(digit_c: f64, s_c: f64, legs: u8, want: (f64, f64)) {
        let level = Level { legs, ..Level::bare(1.0, 20.0, s_c / f64::from(legs).sqrt()) };
        let (noise_sd_c, half_c) = Rounding::new(digit_c, s_c).parts(&level);
        let got = (noise_sd_c * noise_sd_c, half_c * half_c / 3.0);
        assert!((got.0 - want.0).abs() < 1e-9 && (got.1 - want.1).abs() < 1e-9, "{got:?}");
    }

    #[test]
    fn rounding_is_part_of_s_and_not_added_to_it() {
        check(0.0, 0.1, 1, (0.01, 0.0));
        check(0.1, 0.1, 1, (0.01 - 0.01 / 12.0, 0.01 / 12.0));
        check(0.1, 0.1, 2, (0.005 - 0.005 / 12.0, 0.005 / 12.0));
        check(f64::NAN, 0.1, 1, (0.01, 0.0));
        check(-1.0, 0.1, 1, (0.01, 0.0));
    }

    #[test]
    fn without_noise_both_legs_are_rounded_alike() {
        let floor_c = 0.1 / 12_f64.sqrt();
        check(0.1, floor_c, 1, (0.0, 0.01 / 12.0));
        check(0.1, floor_c, 2, (0.0, 0.01 / 12.0));
        // Noise of a fifth of a digit: e^−(2π/5)² = 0.206 of the rounding alike, the rest halved.
        let s_c = (0.0004_f64 + 0.01 / 12.0).sqrt();
        check(0.1, s_c, 2, (0.0002, 0.01 / 12.0 * 0.603_076_5));
    }

    #[test]
    fn what_makes_no_sense_is_nothing_and_too_much_is_the_most() {
        let wild = Unsure {
            offset_half_c: f64::NAN,
            mark_sd_m: -1.0,
            stretch_sd: 3.0,
            angle_half_deg: f64::INFINITY,
            between_marks: true,
        };
        let want = Unsure {
            offset_half_c: 0.0,
            mark_sd_m: 0.0,
            stretch_sd: 0.1,
            angle_half_deg: 60.0,
            between_marks: true,
        };
        assert_eq!(wild.sensible(), want);
        assert_eq!(Unsure::default().sensible(), Unsure::default());
    }

    #[test]
    fn ends_of_long_and_short_casts() {
        let levels = |n: u32| (0..n).map(|i| Level::bare(f64::from(i) * 0.5, 10.0, 0.1)).collect::<Vec<_>>();
        assert_eq!(ends(&levels(9)), (3, 6));
        assert_eq!(ends(&levels(5)), (1, 4));
        assert_eq!(ends(&[]), (0, 0));
    }
}
