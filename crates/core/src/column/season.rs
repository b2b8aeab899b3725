//! A few weeks of weather over a column: seeded, and what it is made of is told.

use super::Column;
use super::to_mix::SECONDS_A_DAY;
use crate::random::Random;
use crate::stability::wind::stress_pa;

/// One day's weather.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Day {
    /// Heat lost through the surface on average, W m⁻²; below zero where it is gained.
    pub loss_w_m2: f64,
    /// Wind 10 m above the water, m s⁻¹.
    pub wind_m_s: f64,
}

/// Days differ by so much of the mean loss (standard deviation; a convention of ours).
const UNLIKE: f64 = 0.6;
/// Winds of a sheltered pond, m s⁻¹: even between these (a convention of ours).
const WIND_M_S: (f64, f64) = (0.5, 2.5);
/// Share of the work of the wind on the surface that is left to mix with; from memory, 0.001 to 0.003.
pub const LEFT_TO_MIX: f64 = 0.002;
/// Longest season, days.
const LONGEST: u32 = 400;

/// The weather of a seed: days unlike one another whose losses have this mean \[W m⁻²\] exactly, and light winds.
///
/// ```
/// use layercast_core::column::season::weather;
/// let days = weather(7, 30, 50.0);
/// assert!((days.iter().map(|d| d.loss_w_m2).sum::<f64>() / 30.0 - 50.0).abs() < 1e-9);
/// assert_eq!(days, weather(7, 30, 50.0));
/// ```
pub fn weather(seed: u64, days: u32, mean_loss_w_m2: f64) -> Vec<Day> {
    let mut random = Random::seeded(seed, 3_000);
    let mut list: Vec<Day> = (0..days.min(LONGEST))
        .map(|_| Day {
            loss_w_m2: mean_loss_w_m2 * (1.0 + UNLIKE * random.normal()),
            wind_m_s: WIND_M_S.0 + (WIND_M_S.1 - WIND_M_S.0) * random.uniform(),
        })
        .collect();
    let off = mean_loss_w_m2 - list.iter().map(|d| d.loss_w_m2).sum::<f64>() / list.len().max(1) as f64;
    list.iter_mut().for_each(|day| day.loss_w_m2 += off);
    list
}

/// The column after this weather: day by day heat goes through the surface, heavier water sinks, the wind stirs. Gives the
/// heat lost in truth, J m⁻²; nothing freezes.
pub fn pass(column: &mut Column, days: &[Day]) -> f64 {
    let mut lost_j_m2 = 0.0;
    for day in days {
        lost_j_m2 += column.lose(day.loss_w_m2 * SECONDS_A_DAY);
        column.stir(LEFT_TO_MIX * stress_pa(day.wind_m_s) * day.wind_m_s * SECONDS_A_DAY);
    }
    lost_j_m2
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::analysis::Level;
    use crate::stability::whole::HEAT_J_M3_K;
    use crate::water::density::Density;

    #[test]
    fn a_month_keeps_its_heat_to_the_last_bits() {
        let rows = [(0.0, 22.0), (3.0, 21.8), (3.5, 20.0), (4.0, 15.0), (5.0, 9.0), (9.0, 8.0)];
        let levels: Vec<Level> = rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.1)).collect();
        let before = Column::of(&levels, None, Density::Tanaka).unwrap();
        let mut after = before.clone();
        let lost = pass(&mut after, &weather(11, 30, 40.0));
        assert!((lost - 40.0 * 30.0 * 86_400.0).abs() < 1.0, "{lost}");
        let missing = (before.heat_c_m() - after.heat_c_m()) * HEAT_J_M3_K;
        assert!((missing / lost - 1.0).abs() < 1e-9, "{missing} of {lost}");
        assert!(
            after.temp_c(0.0) < before.temp_c(0.0) - 3.0 && after.temp_c(8.9) < before.temp_c(8.9) + 0.01
        );
        let depth_m =
            |c: &Column| (0..90).map(|i| f64::from(i) / 10.0).find(|z| c.temp_c(*z) < c.temp_c(0.0) - 1.0);
        assert!(depth_m(&after) > depth_m(&before), "the mixed layer reaches deeper");
    }

    #[test]
    fn days_are_unlike_and_seeds_too() {
        let days = weather(1, 30, 50.0);
        assert!(days.iter().any(|d| d.loss_w_m2 < 35.0) && days.iter().any(|d| d.loss_w_m2 > 65.0));
        assert!(days.iter().all(|d| (0.5..=2.5).contains(&d.wind_m_s)));
        assert_ne!(days, weather(2, 30, 50.0));
        assert_eq!((weather(1, 0, 50.0).len(), weather(1, 9_999, 50.0).len()), (0, 400));
        let gained = weather(1, 10, -20.0);
        assert!((gained.iter().map(|d| d.loss_w_m2).sum::<f64>() + 200.0).abs() < 1e-9);
    }
}
