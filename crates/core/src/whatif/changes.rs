//! Which one change of the work would narrow the range of the thermocline most.

use crate::analyse::analyse;
use crate::analysis::{Analysis, Method};
use crate::cast::{Cast, Leg, Reading, Switch};
use crate::certainty::{Depth, Plan, Unsure, summary, trials};
use crate::layers::monotone_curve::midpoints_c;
use crate::random::Random;

/// One thing done better. All numbers are conventions of ours.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Change {
    /// A mark half-way between each two.
    HalfTheStep,
    /// Each reading taken four times and averaged: half the noise.
    FourRepeats,
    /// A probe with half the noise, within 0.05 °C of the truth, that shows hundredths.
    BetterProbe,
    /// A cable that hangs straight (within 1°), does not stretch (0.3 %) and whose marks are right to 1 cm.
    StraighterCable,
    /// The same probe with one more decimal shown: its noise stays.
    MoreDecimals,
}

impl Change {
    /// Every change.
    pub const ALL: [Self; 5] =
        [Self::HalfTheStep, Self::FourRepeats, Self::BetterProbe, Self::StraighterCable, Self::MoreDecimals];
}

/// Waters that new marks are drawn of: their noise is chance, so it is averaged over.
const DRAWS: u64 = 4;

/// Width \[m\] of the middle 95 % of `count` trials of the thermocline (of the fastest warming where the water is colder
/// on top), with one change or with none.
///
/// The chances are the same for each change, so that what differs is the change. 400 trials tell widths to about a tenth.
/// `None` where there is no such depth, or the trials reach below the last reading.
///
/// ```
/// use layercast_core::whatif::{Change, width_m};
/// use layercast_core::{Cast, Leg, Method, Reading, Switch};
/// let temps_c = [22.0, 22.0, 21.9, 21.5, 19.0, 14.5, 11.0, 9.5, 9.0, 8.9];
/// let readings = temps_c.iter().enumerate().map(|(i, t)| Reading {
///     depth_m: 0.5 * i as f64, temp_c: Some(*t), leg: Leg::Unknown, switch: Switch::Auto,
/// });
/// let cast = Cast { readings: readings.collect(), digit_c: 0.1, bed_m: None };
/// let width = |change| width_m(&cast, &Method::default(), change, 400).unwrap();
/// assert!(width(Some(Change::FourRepeats)) < width(None));
/// ```
pub fn width_m(cast: &Cast, method: &Method, change: Option<Change>, count: u32) -> Option<f64> {
    let mut analysis = analyse(cast, method);
    if change == Some(Change::HalfTheStep) {
        let few = count / DRAWS as u32;
        let widths = (1..=DRAWS).map(|seed| {
            let finer = half_the_step(cast, &analysis, seed);
            of_plan(&Plan::new(&finer, &analyse(&finer, method), &Unsure::default()), few)
        });
        let widths: Vec<f64> = widths.collect::<Option<_>>()?;
        return Some(widths.iter().sum::<f64>() / widths.len() as f64);
    }
    let mut unsure = Unsure::default();
    let mut digit_c = cast.digit_c;
    match change {
        Some(Change::FourRepeats) => {
            quieter(&mut analysis);
            digit_c /= 2.0;
        }
        Some(Change::BetterProbe) => {
            quieter(&mut analysis);
            unsure.offset_half_c = 0.05;
            digit_c = digit_c.min(0.01);
        }
        Some(Change::StraighterCable) => {
            unsure.mark_sd_m = 0.01;
            unsure.stretch_sd = 0.003;
            unsure.angle_half_deg = 1.0;
        }
        Some(Change::MoreDecimals) => digit_c /= 10.0,
        Some(Change::HalfTheStep) | None => {}
    }
    let cast = Cast { readings: Vec::new(), digit_c, bed_m: cast.bed_m };
    of_plan(&Plan::new(&cast, &analysis, &unsure), count)
}

/// Half the noise.
fn quieter(analysis: &mut Analysis) {
    analysis.pairs.s_used_c /= 2.0;
    analysis.profile.iter_mut().for_each(|level| level.sd_c /= 2.0);
}

/// The cast with a mark half-way between each two: read of the smooth curve through its levels, with the noise of a
/// reading. Between its marks nobody knows the water; a straight line would say that nothing can be found there.
fn half_the_step(cast: &Cast, own: &Analysis, seed: u64) -> Cast {
    let levels = &own.profile;
    let mut finer = Cast { readings: Vec::new(), ..cast.clone() };
    let mut random = Random::seeded(seed, 4_000);
    let both = levels.iter().any(|l| l.down_c.is_some() && l.up_c.is_some());
    let legs: &[Leg] = if both { &[Leg::Down, Leg::Up] } else { &[Leg::Unknown] };
    let between = levels.iter().zip(levels.iter().skip(1)).zip(midpoints_c(levels));
    for ((a, b), middle_c) in between {
        for leg in legs {
            let temp_c = Some(middle_c + own.pairs.s_used_c * random.normal());
            let depth_m = (a.depth_m + b.depth_m) / 2.0;
            finer.readings.push(Reading { depth_m, temp_c, leg: *leg, switch: Switch::Kept });
        }
    }
    for level in levels {
        let of_leg = |leg: Leg| match leg {
            Leg::Down => level.down_c,
            Leg::Up => level.up_c,
            Leg::Unknown => None,
        };
        for leg in legs {
            let temp_c = Some(of_leg(*leg).unwrap_or(level.temp_c));
            let depth_m = level.depth_m;
            finer.readings.push(Reading { depth_m, temp_c, leg: *leg, switch: Switch::Kept });
        }
    }
    finer
}

fn of_plan(plan: &Plan, count: u32) -> Option<f64> {
    let found = summary(plan, &trials(plan, crate::certainty::SEED, 0, count));
    let depth = found.of(Depth::Thermocline).or(found.of(Depth::FastestWarming))?;
    Some(depth.high_m? - depth.low_m?)
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cast::{Leg, Reading, Switch};

    fn cast(temps_c: &[f64], step_m: f64, noisy: bool) -> Cast {
        let mut readings = Vec::new();
        for (i, t) in temps_c.iter().enumerate() {
            let off = if noisy && i % 2 == 0 { 0.3 } else { 0.0 };
            for (leg, temp_c) in [(Leg::Down, t + off), (Leg::Up, t - off)] {
                let temp_c = Some((temp_c * 10.0).round() / 10.0);
                readings.push(Reading { depth_m: step_m * i as f64, temp_c, leg, switch: Switch::Auto });
            }
        }
        Cast { readings, digit_c: 0.1, bed_m: None }
    }

    fn widths(cast: &Cast) -> Vec<f64> {
        let of = |change| width_m(cast, &Method::default(), change, 1000).unwrap();
        std::iter::once(of(None)).chain(Change::ALL.map(|c| of(Some(c)))).collect()
    }

    #[test]
    fn a_sharp_layer_between_far_marks_wants_nearer_marks() {
        let found = widths(&cast(&[22.0, 22.0, 21.8, 12.0, 8.2, 8.0, 8.0, 8.0], 1.0, false));
        let best = found.iter().copied().fold(f64::INFINITY, f64::min);
        assert_eq!(best, found[1], "{found:?}");
        assert!(found[1] < 0.8 * found[0], "{found:?}");
        assert!((found[5] / found[0] - 1.0).abs() < 0.05, "a decimal more tells nothing: {found:?}");
    }

    #[test]
    fn a_noisy_probe_on_a_broad_slope_wants_quiet() {
        let broad: Vec<f64> =
            (0..17).map(|i| 22.0 - 0.8 * f64::from(i) - if i == 8 { 0.8 } else { 0.0 }).collect();
        let found = widths(&cast(&broad, 0.5, true));
        assert!(found[2] < 0.85 * found[0] && found[2] < found[1], "{found:?}");
        assert!(found[3] < 0.9 * found[0], "{found:?}");
    }

    #[test]
    fn no_thermocline_no_width() {
        assert_eq!(width_m(&cast(&[12.0; 9], 0.5, false), &Method::default(), None, 100), None);
        assert_eq!(width_m(&Cast::default(), &Method::default(), Some(Change::HalfTheStep), 100), None);
    }

    #[test]
    fn half_the_noise_and_half_the_step() {
        let mut analysis = analyse(&cast(&[22.0, 21.0, 15.0, 9.0, 8.0], 0.5, false), &Method::default());
        let (s, sd) = (analysis.pairs.s_used_c, analysis.profile[0].sd_c);
        quieter(&mut analysis);
        assert!(
            (analysis.pairs.s_used_c - s / 2.0).abs() < 1e-12
                && (analysis.profile[0].sd_c - sd / 2.0).abs() < 1e-12
        );
    }
}
