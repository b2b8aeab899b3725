//! Water that moves: what cooling, warming and wind make of a profile, in a column of one square metre.
//!
//! [`Column::of`] cuts a profile into cells of equal thickness; [`Column::lose`] takes heat through the surface,
//! [`Column::stir`] lets the wind work, and water that is heavier than the water below it sinks at once. Heat is kept to the
//! last bits of the numbers. [`to_mix::to_mix`] says how much heat stands between a profile and its overturn, [`season`]
//! makes the weather of a few weeks. Sunlight below the surface, inflows, shores and ice are left out: a picture of what
//! follows from the stated physics, not a forecast. Conventions of ours throughout.

pub mod season;
pub mod to_mix;

use crate::analysis::Level;
use crate::layers::densest::GRAVITY;
use crate::stability::basin::DEEPEST_M;
use crate::stability::whole::HEAT_J_M3_K;
use crate::water::density::Density;

/// Cells of a column: fine enough for a picture.
pub const CELLS: usize = 60;
/// Water does not get colder than this by losing heat: what is lost beyond makes ice, °C.
pub const FREEZING_C: f64 = 0.0;
/// Heat goes through the surface in portions that change the uppermost cell by no more than this, °C.
const PORTION_C: f64 = 0.5;
/// Near 4 °C in finer ones, or a portion would leap over the heaviest water to water that floats, °C.
const FINE_PORTION_C: f64 = 0.05;
/// So near is near, °C.
const NEAR_C: f64 = 1.0;
/// A cell sinks when it is heavier than the one below by more than this, kg m⁻³.
const SINKS_KG_M3: f64 = 1e-9;
/// Most portions in one call: a year of the strongest weather in the thinnest cells is fewer.
const MOST_PORTIONS: u32 = 100_000;
/// Fresh water is heaviest near this, °C (methods 1).
const HEAVIEST_C: f64 = 3.98;

/// Water of one square metre, in cells of equal thickness from the surface down.
#[derive(Clone, Debug, PartialEq)]
pub struct Column {
    cell_m: f64,
    temps_c: Vec<f64>,
    density: Density,
}

impl Column {
    /// The column of a profile, down to the bed \[m\] or the last reading, whichever is deeper.
    ///
    /// Temperature is linear between readings and holds above the first and below the last; a cell has the mean of its
    /// stretch, so the column has the heat of the profile. `None` without a level, without depth, or where a number is
    /// not finite.
    ///
    /// ```
    /// use layercast_core::{Density, Level, column::Column};
    /// let levels = [Level::bare(0.0, 20.0, 0.1), Level::bare(4.0, 10.0, 0.1)];
    /// let column = Column::of(&levels, Some(6.0), Density::Tanaka).unwrap();
    /// assert!((column.heat_c_m() - 80.0).abs() < 1e-9); // 15 · 4 + 10 · 2
    /// ```
    pub fn of(levels: &[Level], bed_m: Option<f64>, density: Density) -> Option<Self> {
        let last_m = levels.last()?.depth_m;
        let to_m = bed_m.filter(|z| *z > 0.0 && *z <= DEEPEST_M).unwrap_or(last_m).max(last_m);
        let sound = levels.iter().all(|l| l.depth_m.is_finite() && l.temp_c.abs() <= 100.0);
        let cell_m = to_m / CELLS as f64;
        if !(sound && cell_m > 1e-6 && to_m <= DEEPEST_M) {
            return None;
        }
        let heat = |z: f64| heat_above(levels, z);
        let edges = (0..CELLS).map(|i| (i as f64 * cell_m, (i + 1) as f64 * cell_m));
        let temps_c = edges.map(|(from, to)| (heat(to) - heat(from)) / (to - from)).collect();
        Some(Self { cell_m, temps_c, density })
    }

    /// Depth to the bed, metres.
    pub fn depth_m(&self) -> f64 {
        self.cell_m * self.temps_c.len() as f64
    }

    /// Thickness of a cell, metres.
    pub fn cell_m(&self) -> f64 {
        self.cell_m
    }

    /// Temperatures of the cells from the surface down, °C.
    pub fn temps_c(&self) -> &[f64] {
        &self.temps_c
    }

    /// Temperature of the cell at a depth, °C: of the uppermost above the surface, of the last below the bed.
    pub fn temp_c(&self, depth_m: f64) -> f64 {
        let at = (depth_m / self.cell_m).floor().clamp(0.0, self.temps_c.len().saturating_sub(1) as f64);
        self.temps_c.get(at as usize).copied().unwrap_or_default()
    }

    /// Heat above 0 °C: ∫T dz, °C m. Times [`HEAT_J_M3_K`] it is J m⁻².
    pub fn heat_c_m(&self) -> f64 {
        self.temps_c.iter().sum::<f64>() * self.cell_m
    }

    /// The column as a curve: depths in the middle of the cells, with the surface and the bed.
    pub fn curve(&self) -> Vec<(f64, f64)> {
        let ends =
            (self.temps_c.first().map(|t| (0.0, *t)), self.temps_c.last().map(|t| (self.depth_m(), *t)));
        let middles = self.temps_c.iter().enumerate().map(|(i, t)| ((i as f64 + 0.5) * self.cell_m, *t));
        ends.0.into_iter().chain(middles).chain(ends.1).collect()
    }

    /// The same column with other temperatures, cell by cell (depth of its middle in metres, temperature in °C).
    #[must_use]
    pub fn map(&self, change: impl Fn(f64, f64) -> f64) -> Self {
        let temps_c = (self.temps_c.iter().enumerate())
            .map(|(i, t)| change((i as f64 + 0.5) * self.cell_m, *t))
            .collect();
        Self { temps_c, ..*self }
    }

    /// Heavier water sinks and mixes on its way until no cell is heavier than the one below. Heat is kept.
    ///
    /// Source: textbook convection; the two-pass "pool the violators" way of doing it is a convention of ours.
    pub fn sink(&mut self) {
        let mut blocks: Vec<(f64, f64)> = Vec::with_capacity(self.temps_c.len()); // sum of temperatures, cells
        let weight = |(sum, cells): (f64, f64)| self.density.kg_m3(sum / cells);
        for temp_c in &self.temps_c {
            let mut block = (*temp_c, 1.0);
            while let Some(above) = blocks.last().copied()
                && weight(above) > weight(block) + SINKS_KG_M3
            {
                block = (above.0 + block.0, above.1 + block.1);
                blocks.pop();
            }
            blocks.push(block);
        }
        let mut cells = self.temps_c.iter_mut();
        for (sum, count) in blocks {
            cells.by_ref().take(count as usize).for_each(|cell| *cell = sum / count);
        }
    }

    /// Loses heat through the surface \[J m⁻²\] (gains it where the number is below zero), in portions, what is heavier
    /// sinking after each. Gives the heat that was lost in truth, J m⁻²: water does not get colder than freezing.
    pub fn lose(&mut self, heat_j_m2: f64) -> f64 {
        let whole_c = heat_j_m2 / (HEAT_J_M3_K * self.cell_m);
        if !whole_c.is_finite() || self.temps_c.is_empty() {
            return 0.0;
        }
        let (mut left_c, mut lost_c) = (whole_c, 0.0);
        for _ in 0..MOST_PORTIONS {
            let Some(top) = self.temps_c.first_mut() else { break };
            let most_c = if (*top - HEAVIEST_C).abs() < NEAR_C { FINE_PORTION_C } else { PORTION_C };
            let portion_c = left_c.clamp(-most_c, most_c);
            let colder = (*top - portion_c).max(FREEZING_C.min(*top));
            lost_c += *top - colder;
            left_c -= portion_c;
            let changed = colder != *top;
            *top = colder;
            if !changed {
                break;
            }
            self.sink();
        }
        lost_c * HEAT_J_M3_K * self.cell_m
    }

    /// Work to mix the water from the surface down through so many cells to one density, J m⁻²; negative where mixing
    /// would set energy free.
    ///
    /// Sources: [`Schmidt1928`](crate::bibliography::Schmidt1928), [`Idso1973`](crate::bibliography::Idso1973).
    pub fn work_j_m2(&self, cells: usize) -> f64 {
        let upper = self.temps_c.get(..cells.min(self.temps_c.len())).unwrap_or_default();
        let middle_m = upper.len() as f64 * self.cell_m / 2.0;
        let lowered = |(i, t): (usize, &f64)| {
            ((i as f64 + 0.5) * self.cell_m - middle_m) * (self.density.kg_m3(*t) - FROM_KG_M3)
        };
        GRAVITY * self.cell_m * upper.iter().enumerate().map(lowered).sum::<f64>()
    }

    /// The wind mixes from the surface down as far as its work \[J m⁻²\] reaches, to one temperature. Heat is kept. Gives
    /// the depth that was mixed, metres; at least the uppermost cell.
    ///
    /// Only work that arrives in the water counts: a small part of what the wind does to its surface (some thousandths,
    /// from memory).
    ///
    /// ```
    /// use layercast_core::{Density, Level, column::Column};
    /// let levels = [(0.0, 22.0), (3.999, 22.0), (4.001, 8.0), (10.0, 8.0)];
    /// let levels: Vec<Level> = levels.iter().map(|(z, t)| Level::bare(*z, *t, 0.1)).collect();
    /// let mut column = Column::of(&levels, None, Density::Tanaka).unwrap();
    /// // 2 m of the deep layer: 9.80665 · 2.0783 · 4 · 2 / 2 J for each square metre.
    /// assert!((column.stir(81.6) - 6.0).abs() < 0.01);
    /// assert!((column.temp_c(0.0) - 17.33).abs() < 0.01 && (column.temp_c(6.5) - 8.0).abs() < 1e-9);
    /// ```
    pub fn stir(&mut self, work_j_m2: f64) -> f64 {
        let reached = |cells: &usize| self.work_j_m2(*cells) <= work_j_m2;
        let cells = (1..=self.temps_c.len()).take_while(reached).last().unwrap_or(1);
        let upper = self.temps_c.get_mut(..cells).unwrap_or_default();
        let mean_c = upper.iter().sum::<f64>() / cells as f64;
        upper.iter_mut().for_each(|cell| *cell = mean_c);
        cells as f64 * self.cell_m
    }
}

/// Densities are counted from here, so that small differences keep their digits, kg m⁻³.
const FROM_KG_M3: f64 = 1000.0;

/// ∫T dz from the surface to a depth, °C m.
fn heat_above(levels: &[Level], to_m: f64) -> f64 {
    let mut sum = 0.0;
    let (mut from_m, mut from_c) = (0.0, levels.first().map_or(0.0, |l| l.temp_c));
    for level in levels.iter().filter(|l| l.depth_m > 0.0) {
        if level.depth_m >= to_m {
            let share = if level.depth_m > from_m { (to_m - from_m) / (level.depth_m - from_m) } else { 0.0 };
            let there_c = from_c + share * (level.temp_c - from_c);
            return sum + (to_m - from_m) * (from_c + there_c) / 2.0;
        }
        sum += (level.depth_m - from_m) * (from_c + level.temp_c) / 2.0;
        (from_m, from_c) = (level.depth_m, level.temp_c);
    }
    sum + (to_m - from_m) * from_c
}

#[cfg(test)]
mod tests {
    use super::*;

    fn levels(rows: &[(f64, f64)]) -> Vec<Level> {
        rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.1)).collect()
    }

    fn column(rows: &[(f64, f64)]) -> Column {
        Column::of(&levels(rows), None, Density::Tanaka).unwrap()
    }

    const SUMMER: [(f64, f64); 6] =
        [(0.0, 22.0), (3.0, 21.8), (3.5, 20.0), (4.0, 15.0), (5.0, 9.0), (9.0, 8.0)];

    #[test]
    fn a_column_has_the_heat_of_its_profile() {
        // By trapezia: 65.7 + 10.45 + 8.75 + 12 + 34.
        let summer = column(&SUMMER);
        assert!((summer.heat_c_m() - 130.9).abs() < 1e-9, "{}", summer.heat_c_m());
        assert!((summer.depth_m() - 9.0).abs() < 1e-12 && summer.temps_c().len() == CELLS);
        let deeper = Column::of(&levels(&SUMMER), Some(11.0), Density::Tanaka).unwrap();
        assert!((deeper.heat_c_m() - 146.9).abs() < 1e-9);
        let shallower = Column::of(&levels(&SUMMER), Some(2.0), Density::Tanaka).unwrap();
        assert!((shallower.depth_m() - 9.0).abs() < 1e-12, "a reading was taken at 9 m");
        // The first reading holds up to the surface.
        let late = column(&[(1.0, 10.0), (3.0, 4.0)]);
        assert!((late.heat_c_m() - 24.0).abs() < 1e-9);
        assert_eq!((late.temp_c(-1.0), late.temp_c(0.0)), (10.0, 10.0));
        assert!((late.temp_c(99.0) - 4.075).abs() < 1e-9, "mean of the last 5 cm: {}", late.temp_c(99.0));
    }

    #[test]
    fn no_water_is_no_column() {
        for rows in
            [&[][..], &[(0.0, 5.0)], &[(0.0, 5.0), (f64::NAN, 5.0)], &[(0.0, 5.0), (1.0, f64::INFINITY)]]
        {
            assert_eq!(Column::of(&levels(rows), None, Density::Tanaka), None);
        }
        assert!(Column::of(&levels(&[(0.0, 5.0)]), Some(3.0), Density::Tanaka).is_some());
        assert_eq!(Column::of(&levels(&[(0.0, 5.0), (1e308, 4.0)]), None, Density::Tanaka), None);
    }

    #[test]
    fn heavier_water_sinks_and_keeps_its_heat() {
        let mut water =
            column(&[(0.0, 10.0), (2.0, 10.0), (2.001, 16.0), (4.0, 16.0), (4.001, 6.0), (6.0, 6.0)]);
        let before = water.heat_c_m();
        water.sink();
        assert!((water.heat_c_m() - before).abs() < 1e-9);
        assert!((water.temp_c(0.1) - 13.0).abs() < 0.01, "{water:?}");
        assert!((water.temp_c(5.5) - 6.0).abs() < 1e-9, "{}", water.temp_c(5.5));
        let (first, last) = (water.temp_c(0.0), water.temp_c(3.9));
        assert!((first - last).abs() < 1e-12, "one block");
        let still = water.clone();
        water.sink();
        assert_eq!(water, still);
        // Below 4 °C the colder water is the lighter one.
        let mut ice = column(&[(0.0, 0.5), (2.0, 3.9)]);
        let as_it_was = ice.clone();
        ice.sink();
        assert_eq!(ice, as_it_was);
        let mut turned = column(&[(0.0, 3.9), (2.0, 0.5)]);
        turned.sink();
        assert!((turned.temp_c(0.0) - 2.2).abs() < 1e-9 && (turned.temp_c(2.0) - 2.2).abs() < 1e-9);
    }

    #[test]
    fn what_is_lost_is_what_is_missing() {
        for heat_j_m2 in [0.0, 1e5, 3.3e6, 4e7, 2e8, -2e7] {
            let mut water = column(&SUMMER);
            let before = water.heat_c_m();
            let lost = water.lose(heat_j_m2);
            assert!((lost - heat_j_m2).abs() < 1e-9 * heat_j_m2.abs().max(1.0), "{lost} of {heat_j_m2}");
            let missing = (before - water.heat_c_m()) * HEAT_J_M3_K;
            assert!((missing - heat_j_m2).abs() < 1e-9 * 5e8, "{missing} of {heat_j_m2}");
        }
    }

    #[test]
    fn cooling_wears_the_layer_away_from_above_and_leaves_the_deep_water() {
        let mut water = column(&SUMMER);
        water.lose(4e7);
        assert!(water.temp_c(0.0) < 20.0 && water.temp_c(8.9) > 7.9 && water.temp_c(8.9) < 8.1);
        assert!((water.temp_c(0.0) - water.temp_c(3.0)).abs() < 1e-9, "one mixed layer");
        assert!(water.temps_c().windows(2).all(|w| w[0] >= w[1] - 1e-9));
        // Gained heat stays on top.
        let mut warmed = column(&SUMMER);
        warmed.lose(-1e6);
        assert!(warmed.temp_c(0.0) > 22.0 && warmed.temp_c(1.0) == column(&SUMMER).temp_c(1.0));
    }

    #[test]
    fn no_water_is_colder_than_ice() {
        let mut water = column(&[(0.0, 3.0), (1.0, 3.0)]);
        let lost = water.lose(1e9);
        assert!(water.temps_c().iter().all(|t| *t >= 0.0) && lost < 3.0 * HEAT_J_M3_K + 1.0);
        assert_eq!(water.temp_c(0.0), 0.0);
        assert_eq!(column(&SUMMER).lose(f64::NAN), 0.0);
        assert_eq!(column(&SUMMER).lose(f64::INFINITY), 0.0);
        // A reading a little below zero stays what it is.
        assert_eq!(column(&[(0.0, -0.1), (1.0, -0.1)]).lose(1e6), 0.0);
    }

    #[test]
    fn work_is_the_box_formula() {
        let boxes = column(&[(0.0, 22.0), (3.999_999, 22.0), (4.000_001, 8.0), (10.0, 8.0)]);
        let gain = Density::Tanaka.kg_m3(8.0) - Density::Tanaka.kg_m3(22.0);
        for (cells, below_m) in [(24, 0.0), (36, 2.0), (60, 6.0), (99, 6.0)] {
            let want = 9.80665 * gain * 4.0 * below_m / 2.0;
            assert!((boxes.work_j_m2(cells) - want).abs() < 1e-3, "{cells}: {}", boxes.work_j_m2(cells));
        }
        assert_eq!(boxes.work_j_m2(0), 0.0);
        let turned = column(&[(0.0, 8.0), (4.0, 22.0)]);
        assert!(turned.work_j_m2(60) < 0.0);
    }

    #[test]
    fn wind_keeps_the_heat_and_does_not_reach_the_rest() {
        for work in [0.0, 5.0, 20.0, 60.0, 1e6, -1.0, f64::NAN] {
            let mut water = column(&SUMMER);
            let before = water.clone();
            let depth_m = water.stir(work);
            assert!((water.heat_c_m() - before.heat_c_m()).abs() < 1e-9);
            let cells = (depth_m / water.cell_m()).round() as usize;
            assert_eq!(water.temps_c().get(cells..), before.temps_c().get(cells..));
            let upper = &water.temps_c()[..cells];
            assert!(upper.iter().all(|t| (t - upper[0]).abs() < 1e-12));
            assert!(cells == 1 || before.work_j_m2(cells) <= work);
            assert!(cells == CELLS || work.is_nan() || before.work_j_m2(cells + 1) > work);
        }
    }

    #[test]
    fn a_curve_has_both_ends_and_a_map_its_depths() {
        let water = column(&SUMMER);
        let curve = water.curve();
        assert_eq!(curve.len(), CELLS + 2);
        assert_eq!((curve[0].0, curve[1].0), (0.0, 0.075));
        assert!((curve[CELLS + 1].0 - 9.0).abs() < 1e-12);
        assert_eq!((curve[0].1, curve[CELLS + 1].1), (curve[1].1, curve[CELLS].1));
        let depths = water.map(|z, _| z);
        assert!((depths.temp_c(0.0) - 0.075).abs() < 1e-12 && (depths.temp_c(8.99) - 8.925).abs() < 1e-12);
    }
}
