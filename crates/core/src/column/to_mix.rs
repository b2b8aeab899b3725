//! How much heat stands between a profile and its overturn.

use super::HEAVIEST_C;
use crate::analysis::Level;
use crate::slack::more_than;
use crate::stability::whole::HEAT_J_M3_K;
use crate::water::density::Density;

/// What must happen before wind can mix to the bed.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ToMix {
    /// Temperature that the surface must come to, °C: that of the deepest reading, where both are of one density.
    pub target_c: f64,
    /// The surface must get warmer (water that is colder on top) and not colder.
    pub warms: bool,
    /// Heat to lose, or to gain where it warms, J m⁻², positive.
    pub heat_j_m2: f64,
}

/// Water is taken for heaviest at the deepest reading when none above is heavier by more than this, kg m⁻³: the least
/// amount that counts as heavier water on top (methods 7.1).
const HEAVIER_KG_M3: f64 = 0.03;
/// Water of the greatest density that must lie between two readings may be heavier by this much, kg m⁻³: less cannot be
/// told by temperatures to a tenth.
const HEAVIER_BETWEEN_KG_M3: f64 = 0.002;

impl ToMix {
    /// Days it takes at so many W m⁻² through the surface. `None` where that is not above zero.
    ///
    /// ```
    /// use layercast_core::column::to_mix::ToMix;
    /// let year = ToMix { target_c: 8.0, warms: false, heat_j_m2: 86.4e6 };
    /// assert!((year.days(100.0).unwrap() - 10.0).abs() < 1e-12);
    /// ```
    pub fn days(&self, watts_m2: f64) -> Option<f64> {
        let days = self.heat_j_m2 / (watts_m2 * SECONDS_A_DAY);
        (watts_m2 > 0.0 && days.is_finite()).then_some(days)
    }
}

/// Seconds of a day.
pub const SECONDS_A_DAY: f64 = 86_400.0;

/// The heat that the water above must lose (or gain) to have the density of its deepest reading throughout: c·∫(T − T_b) dz
/// over all water warmer than T_b, linear between readings, the first one up to the surface; in water that is colder on
/// top c·∫(T_b − T) dz over all that is colder.
///
/// Before it is lost, the surface cannot be as heavy as the water at the bed, and wind that mixes must lift the heavier
/// water; when it is lost, next to no work is left. Below the last reading the water is taken for as warm as that.
///
/// `None` without two levels, where the deepest reading is not the heaviest water (also when 4 °C must lie between the
/// readings) or the surface has its temperature already (within `least_c`), or where a number is not finite.
///
/// Source: [`HeatCapacity`](crate::bibliography::HeatCapacity); turnover at the density of the deep water is textbook
/// limnology (methods 10).
///
/// ```
/// use layercast_core::{Density, Level, column::to_mix::to_mix};
/// let levels = [Level::bare(0.0, 20.0, 0.1), Level::bare(2.0, 20.0, 0.1), Level::bare(4.0, 10.0, 0.1)];
/// let found = to_mix(&levels, 0.5, Density::Tanaka).unwrap();
/// assert_eq!((found.target_c, found.warms), (10.0, false));
/// assert!((found.heat_j_m2 - 4.18e6 * 30.0).abs() < 1.0); // 10 · 2 + 5 · 2
/// ```
pub fn to_mix(levels: &[Level], least_c: f64, density: Density) -> Option<ToMix> {
    let (first, last) = (levels.first()?, levels.last()?);
    let heaviest = levels.iter().map(|l| l.density).fold(f64::NEG_INFINITY, f64::max);
    let (low_c, high_c) = (first.temp_c.min(last.temp_c), first.temp_c.max(last.temp_c));
    let between = if low_c < HEAVIEST_C && HEAVIEST_C < high_c { density.kg_m3(HEAVIEST_C) } else { 0.0 };
    if more_than(heaviest, last.density + HEAVIER_KG_M3)
        || more_than(between, last.density + HEAVIER_BETWEEN_KG_M3)
        || (first.temp_c - last.temp_c).abs() <= least_c
    {
        return None;
    }
    let warms = first.temp_c < last.temp_c;
    let over = |temp_c: f64| if warms { last.temp_c - temp_c } else { temp_c - last.temp_c };
    let mut sum = first.depth_m.max(0.0) * over(first.temp_c).max(0.0);
    for (a, b) in levels.iter().zip(levels.iter().skip(1)) {
        sum += (b.depth_m - a.depth_m) * mean_above_zero(over(a.temp_c), over(b.temp_c));
    }
    let heat_j_m2 = HEAT_J_M3_K * sum;
    (heat_j_m2 > 0.0 && heat_j_m2.is_finite()).then_some(ToMix { target_c: last.temp_c, warms, heat_j_m2 })
}

/// Mean of the part above zero of a straight line from `a` to `b`.
fn mean_above_zero(a: f64, b: f64) -> f64 {
    match (a > 0.0, b > 0.0) {
        (true, true) => (a + b) / 2.0,
        (true, false) => a * a / (a - b) / 2.0,
        (false, true) => b * b / (b - a) / 2.0,
        (false, false) => 0.0,
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::column::Column;

    fn levels(rows: &[(f64, f64)]) -> Vec<Level> {
        rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.1)).collect()
    }

    #[test]
    fn only_water_over_the_target_counts() {
        assert!((mean_above_zero(2.0, 4.0) - 3.0).abs() < 1e-12);
        assert!((mean_above_zero(3.0, -1.0) - 1.125).abs() < 1e-12); // 3 · ¾ / 2
        assert!((mean_above_zero(-1.0, 3.0) - 1.125).abs() < 1e-12);
        assert_eq!(
            (mean_above_zero(-1.0, -2.0), mean_above_zero(0.0, 0.0), mean_above_zero(0.0, -1.0)),
            (0.0, 0.0, 0.0)
        );
        // A dip below the bottom's temperature, within the noise: 10 · 1 + 10 · ⅚ / 2 over half a metre …
        let dip = to_mix(&levels(&[(0.0, 16.0), (1.0, 16.0), (2.0, 5.9), (3.0, 6.0)]), 0.5, Density::Tanaka)
            .unwrap();
        let want = 4.18e6 * (10.0 + 10.0 * (10.0 / 10.1) / 2.0);
        assert!((dip.heat_j_m2 - want).abs() < 1.0, "{}", dip.heat_j_m2);
        // The first reading holds up to the surface.
        let late = to_mix(&levels(&[(1.0, 16.0), (2.0, 6.0)]), 0.5, Density::Tanaka).unwrap();
        assert!((late.heat_j_m2 - 4.18e6 * 15.0).abs() < 1e-3);
    }

    #[test]
    fn when_that_heat_is_lost_the_column_is_of_one_density_and_not_before() {
        let summer = levels(&[(0.0, 22.0), (3.0, 21.8), (3.5, 20.0), (4.0, 15.0), (5.0, 9.0), (9.0, 8.0)]);
        let found = to_mix(&summer, 0.5, Density::Tanaka).unwrap();
        let mut column = Column::of(&summer, None, Density::Tanaka).unwrap();
        column.lose(0.97 * found.heat_j_m2);
        assert!(column.temp_c(0.0) - column.temp_c(9.0) > 0.05);
        column.lose(0.03 * found.heat_j_m2);
        assert!((column.temp_c(0.0) - 8.0).abs() < 0.02, "{}", column.temp_c(0.0));
        assert!(column.work_j_m2(crate::column::CELLS) < 0.01, "next to no work is left");
    }

    #[test]
    fn under_ice_it_must_warm_up() {
        let ice = levels(&[(0.5, 0.6), (2.0, 2.6), (4.0, 3.6), (6.0, 3.8)]);
        let found = to_mix(&ice, 0.5, Density::Tanaka).unwrap();
        assert!(found.warms && found.target_c == 3.8);
        // 3.2·0.5 + 2.2·1.5 + 0.7·2 + 0.1·2
        assert!((found.heat_j_m2 - 4.18e6 * 6.5).abs() < 1.0, "{}", found.heat_j_m2 / 4.18e6);
        let mut column = Column::of(&ice, None, Density::Tanaka).unwrap();
        column.lose(-found.heat_j_m2);
        assert!(
            (column.temp_c(0.0) - 3.8).abs() < 0.05 && (column.temp_c(5.9) - 3.8).abs() < 0.05,
            "{column:?}"
        );
    }

    #[test]
    fn where_nothing_stands_between_there_is_nothing_to_lose() {
        assert_eq!(to_mix(&levels(&[(0.0, 12.2), (5.0, 12.0)]), 0.5, Density::Tanaka), None);
        assert_eq!(
            to_mix(&levels(&[(0.0, 8.0), (3.0, 6.0), (5.0, 2.0)]), 0.5, Density::Tanaka),
            None,
            "4 °C lies between"
        );
        assert_eq!(to_mix(&levels(&[(0.0, 8.0), (5.0, 12.0)]), 0.5, Density::Tanaka), None, "heavier on top");
        assert_eq!(to_mix(&levels(&[(0.0, 8.0)]), 0.5, Density::Tanaka), None);
        assert_eq!(to_mix(&[], 0.5, Density::Tanaka), None);
        assert_eq!(to_mix(&levels(&[(0.0, f64::INFINITY), (5.0, 12.0)]), 0.5, Density::Tanaka), None);
        let some = ToMix { target_c: 8.0, warms: false, heat_j_m2: 1e6 };
        assert_eq!((some.days(0.0), some.days(f64::NAN), some.days(-5.0)), (None, None, None));
    }
}
