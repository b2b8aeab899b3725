//! What chance does: seeded pairs without any cause, read as these two casts were.

use super::causes::{Checked, fitted};
use super::field::Field;
use super::result::Cause;
use super::side::Point;
use super::{FEWEST_TRIALS, pair::Pair};
use crate::cast::pairs::pairs;
use crate::order::sort_numbers;
use crate::random::Random;

/// Share of pairs without a cause that the threshold lets pass. Above 19 in 20, so that thresholds from few trials and
/// from the readings' own noise still keep false alarms at one in twenty.
const GAIN_SHARE: f64 = 0.97;
/// The same for what a cause may leave.
const LEFT_SHARE: f64 = 0.95;

/// One seeded pair without a cause.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Trial {
    /// By how much the best cause seemed to beat chance (score).
    pub gain: f64,
    /// Weighed sum of squares of the differences, for each shared depth.
    pub misfit: f64,
}

/// Thresholds from seeded pairs without a cause.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ChanceLevel {
    /// Pairs drawn.
    pub trials: usize,
    /// A cause must beat chance by more than this (score); never below 0.
    pub gain: f64,
    /// Share of the pairs drawn in which some cause does so.
    pub false_alarms: f64,
    /// A cause that explains all leaves at most this in 19 of 20 pairs: weighed sum of squares for each shared depth.
    pub misfit: f64,
}

impl ChanceLevel {
    /// `None` for fewer than [`FEWEST_TRIALS`].
    pub(super) fn of(trials: &[Trial]) -> Option<Self> {
        if trials.len() < FEWEST_TRIALS {
            return None;
        }
        let gain = quantile(trials.iter().map(|trial| trial.gain).collect(), GAIN_SHARE).max(0.0);
        let alarms = trials.iter().filter(|trial| trial.gain > gain).count();
        Some(Self {
            trials: trials.len(),
            gain,
            false_alarms: alarms as f64 / trials.len() as f64,
            misfit: quantile(trials.iter().map(|trial| trial.misfit).collect(), LEFT_SHARE),
        })
    }
}

/// The value that a share of the list does not exceed.
fn quantile(mut values: Vec<f64>, share: f64) -> f64 {
    sort_numbers(&mut values);
    let place = (share * values.len() as f64).ceil() as usize;
    values.get(place.saturating_sub(1)).copied().unwrap_or(0.0)
}

/// How far the best cause beats chance; minus infinity where none was tried.
pub(super) fn gain(field: &Field, checked: Checked) -> f64 {
    let scores = Cause::ALL.into_iter().filter_map(|cause| fitted(field, cause, checked).ok());
    field.chance_score() - scores.map(|fit| fit.score).fold(f64::INFINITY, f64::min)
}

impl Pair {
    /// Seeded pairs without a cause, numbers `from` to `from + count`: the same water (the mean of both casts), the same
    /// depths, legs, noise and digits, each mark placed anew. A trial depends on its number only, so pieces of any size
    /// give the same list.
    pub fn chance(&self, from: usize, count: usize) -> Vec<Trial> {
        (from..from.saturating_add(count)).map(|number| self.trial(number)).collect()
    }

    fn trial(&self, number: usize) -> Trial {
        let mut random = Random::seeded(self.seed, number as u64);
        let first = self.read_again(&self.first, self.digits_c.0, &mut random);
        let second = self.read_again(&self.second, self.digits_c.1, &mut random);
        match Field::of(&first, &second, self.bed_m, self.marks_m, self.density) {
            Ok(field) => Trial {
                gain: gain(&field, self.checked),
                misfit: field.chance_score() / field.shared.len() as f64,
            },
            Err(_) => Trial { gain: 0.0, misfit: 0.0 },
        }
    }

    /// One cast of the water between both, read at the depths of `points`.
    fn read_again(&self, points: &[Point], digit_c: f64, random: &mut Random) -> Vec<Point> {
        let mut differences_c = Vec::new();
        let mut again: Vec<Point> = (points.iter())
            .map(|p| {
                let water_c = self.field.mean.at(p.depth_m + self.marks_m * random.normal()).0;
                let reading_sd_c = p.sd_c * f64::from(p.legs).sqrt();
                let mut read = || rounded(water_c + reading_sd_c * random.normal(), digit_c);
                let down_c = read();
                let temp_c = if p.legs > 1 {
                    let up_c = read();
                    differences_c.push(down_c - up_c);
                    (down_c + up_c) / 2.0
                } else {
                    down_c
                };
                Point { temp_c, ..*p }
            })
            .collect();
        // Two legs tell how noisy they are, and so do these.
        if !differences_c.is_empty() {
            let s_c = pairs(&differences_c, digit_c).s_used_c.max(super::side::LEAST_SD_C);
            again.iter_mut().for_each(|p| p.sd_c = s_c / f64::from(p.legs).sqrt());
        }
        again
    }
}

fn rounded(value_c: f64, digit_c: f64) -> f64 {
    if digit_c > 0.0 { (value_c / digit_c).round() * digit_c } else { value_c }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn quantiles_are_values_of_the_list() {
        let list: Vec<f64> = (1..=100).rev().map(f64::from).collect();
        assert_eq!(quantile(list.clone(), 0.97), 97.0);
        assert_eq!(quantile(list.clone(), 1.0), 100.0);
        assert_eq!(quantile(list, 0.001), 1.0);
        assert_eq!(quantile(Vec::new(), 0.5), 0.0);
    }

    #[test]
    fn few_trials_set_no_threshold() {
        let trials: Vec<Trial> =
            (0..200).map(|i| Trial { gain: f64::from(i) - 100.0, misfit: f64::from(i) }).collect();
        assert_eq!(ChanceLevel::of(trials.get(1..).unwrap()), None);
        let level = ChanceLevel::of(&trials).unwrap();
        assert_eq!((level.trials, level.gain, level.misfit, level.false_alarms), (200, 93.0, 189.0, 0.03));
        let hopeless: Vec<Trial> = trials.iter().map(|t| Trial { gain: t.gain - 200.0, ..*t }).collect();
        let level = ChanceLevel::of(&hopeless).unwrap();
        assert_eq!((level.gain, level.false_alarms), (0.0, 0.0));
    }

    #[test]
    fn readings_are_rounded_to_their_digit() {
        assert_eq!((rounded(15.26, 0.5), rounded(15.26, 0.0)), (15.5, 15.26));
    }
}
