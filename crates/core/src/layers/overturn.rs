//! The worst overturn of a profile: heavier water above lighter, beyond what noise can make.

use crate::analysis::Level;
use crate::order::sort_numbers;
use crate::slack::SLACK;

/// Temperatures of a pair must differ by more than this many standard deviations of their difference.
pub const BEYOND_NOISE: f64 = 4.5;

/// Heavier water above lighter.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Overturn {
    /// By how much the upper value is denser, kg m⁻³, positive.
    pub by_kg_m3: f64,
    /// Place of the upper level.
    pub upper: usize,
    /// Place of the lower level.
    pub lower: usize,
}

/// The largest amount by which a level is denser than any level below it, counting only pairs whose temperatures differ
/// by more than 4.5·√(σ_i² + σ_j²). `None` when there is no such pair.
///
/// Of equal amounts the pair whose lower level is shallowest, and then whose upper level is. Exact for any number of
/// levels, in n·log n time while few different σ occur (in a cast: two).
///
/// A convention of ours; with a plain density rule a quarter of honest summer casts would be called unstable.
///
/// ```
/// use layercast_core::{Level, layers::overturn::overturn};
/// let levels = [12.0, 12.0, 13.5].iter().enumerate().map(|(i, t)| Level::bare(i as f64, *t, 0.1));
/// let found = overturn(&levels.collect::<Vec<_>>()).unwrap();
/// assert_eq!((found.upper, found.lower), (0, 2));
/// ```
pub fn overturn(levels: &[Level]) -> Option<Overturn> {
    let mut classes: Vec<Class> = Vec::new();
    let mut class_of: Vec<usize> = Vec::with_capacity(levels.len());
    for level in levels {
        let at = classes.iter().position(|c| c.sd_c == level.sd_c).unwrap_or_else(|| {
            classes.push(Class::new(level.sd_c));
            classes.len() - 1
        });
        class_of.push(at);
        if let Some(class) = classes.get_mut(at) {
            class.temps_c.push(level.temp_c);
        }
    }
    classes.iter_mut().for_each(Class::ready);
    let mut worst: Option<Overturn> = None;
    let mut densest = f64::NEG_INFINITY; // of all levels above, noise or not: a cheap bound on what can be found
    for (lower, (level, at)) in levels.iter().zip(class_of).enumerate() {
        let promising = densest - level.density > worst.map_or(0.0, |w| w.by_kg_m3);
        densest = densest.max(level.density);
        for class in classes.iter().filter(|_| promising) {
            let apart_c = BEYOND_NOISE * libm::hypot(class.sd_c, level.sd_c) + SLACK;
            if let Some((density, upper)) = class.densest_apart(level.temp_c, apart_c) {
                let by_kg_m3 = density - level.density;
                if by_kg_m3 > worst.map_or(0.0, |w| w.by_kg_m3) {
                    worst = Some(Overturn { by_kg_m3, upper, lower });
                }
            }
        }
        if let Some(class) = classes.get_mut(at) {
            class.add(level, lower);
        }
    }
    worst
}

/// A density and the place of its level.
type Densest = Option<(f64, usize)>;

/// Levels above with one standard deviation, searchable by temperature: the densest colder than a limit, and the
/// densest warmer than one, each in a tree of running maxima.
struct Class {
    sd_c: f64,
    temps_c: Vec<f64>,
    colder: Vec<Densest>,
    warmer: Vec<Densest>,
}

impl Class {
    fn new(sd_c: f64) -> Self {
        Self { sd_c, temps_c: Vec::new(), colder: Vec::new(), warmer: Vec::new() }
    }

    fn ready(&mut self) {
        sort_numbers(&mut self.temps_c);
        self.temps_c.dedup();
        self.colder = vec![None; self.temps_c.len() + 1];
        self.warmer = vec![None; self.temps_c.len() + 1];
    }

    fn add(&mut self, level: &Level, place: usize) {
        let n = self.temps_c.len();
        let rank = self.temps_c.partition_point(|t| *t < level.temp_c);
        let entry = Some((level.density, place));
        raise(&mut self.colder, rank + 1, entry);
        raise(&mut self.warmer, n.saturating_sub(rank), entry);
    }

    /// The densest level whose temperature differs from `temp_c` by more than `apart_c`.
    fn densest_apart(&self, temp_c: f64, apart_c: f64) -> Densest {
        let colder = self.temps_c.partition_point(|t| temp_c - *t > apart_c);
        let warmer = self.temps_c.len() - self.temps_c.partition_point(|t| *t - temp_c <= apart_c);
        denser(highest(&self.colder, colder), highest(&self.warmer, warmer))
    }
}

/// The denser of two, the shallower of equals.
fn denser(a: Densest, b: Densest) -> Densest {
    match (a, b) {
        (Some(x), Some(y)) if y.0 > x.0 || (y.0 == x.0 && y.1 < x.1) => b,
        (None, _) => b,
        _ => a,
    }
}

/// Enters a value into a tree of running maxima (places from 1).
fn raise(tree: &mut [Densest], mut place: usize, entry: Densest) {
    while let Some(slot) = tree.get_mut(place).filter(|_| place > 0) {
        *slot = denser(*slot, entry);
        place += place & place.wrapping_neg();
    }
}

/// Maximum of the first `count` places.
fn highest(tree: &[Densest], mut count: usize) -> Densest {
    let mut best = None;
    while count > 0 {
        best = denser(best, tree.get(count).copied().flatten());
        count -= count & count.wrapping_neg();
    }
    best
}

#[cfg(test)]
mod tests {
    use super::*;

    fn levels(temps_c: &[f64], sd_c: f64) -> Vec<Level> {
        temps_c.iter().enumerate().map(|(i, t)| Level::bare(i as f64, *t, sd_c)).collect()
    }

    #[track_caller]
    fn check(temps_c: &[f64], sd_c: f64, want: Option<(usize, usize)>) {
        assert_eq!(overturn(&levels(temps_c, sd_c)).map(|o| (o.upper, o.lower)), want);
    }

    #[test]
    fn stable_water_has_none() {
        check(&[22.0, 20.0, 8.0, 7.0], 0.0, None);
        check(&[0.2, 2.0, 3.9, 4.0], 0.0, None);
        check(&[], 0.1, None);
    }

    #[test]
    fn noise_counts_for_nothing_and_a_real_overturn_does() {
        check(&[20.0, 20.5, 19.0], 0.1, None);
        check(&[20.0, 20.7, 19.0], 0.1, Some((0, 1)));
    }

    #[test]
    fn exactly_four_and_a_half_deviations_are_still_noise() {
        check(&[20.0, 20.45, 19.0], 0.1 / std::f64::consts::SQRT_2, None);
    }

    #[test]
    fn on_the_far_side_of_4_degrees_the_colder_is_the_lighter() {
        check(&[4.0, 4.0, 1.0], 0.0, Some((0, 2)));
    }

    #[test]
    fn two_hundred_thousand_levels_are_searched_at_once() {
        let temps_c: Vec<f64> = (0..200_000).map(|i| 10.0 + f64::from(i % 1000) / 1000.0).collect();
        assert!(overturn(&levels(&temps_c, 0.01)).is_some());
    }

    /// The definition, pair by pair.
    fn by_pairs(levels: &[Level]) -> f64 {
        let mut worst: f64 = 0.0;
        for (j, b) in levels.iter().enumerate() {
            for a in levels.iter().take(j) {
                let apart = (a.temp_c - b.temp_c).abs();
                if apart > BEYOND_NOISE * libm::hypot(a.sd_c, b.sd_c) + SLACK {
                    worst = worst.max(a.density - b.density);
                }
            }
        }
        worst
    }

    proptest::proptest! {
        #[test]
        fn the_quick_search_finds_what_the_definition_finds(
            rows in proptest::collection::vec((0_u32..150, 0_usize..3), 0..60)
        ) {
            let sds = [0.0, 0.07, 0.1];
            let levels: Vec<Level> = rows.iter().enumerate()
                .map(|(i, (t, c))| Level::bare(i as f64, f64::from(*t) / 10.0, sds[*c]))
                .collect();
            let got = overturn(&levels);
            let by = got.map_or(0.0, |o| o.by_kg_m3);
            proptest::prop_assert!((by - by_pairs(&levels)).abs() < 1e-12);
            if let Some(o) = got {
                proptest::prop_assert!(o.upper < o.lower);
                proptest::prop_assert!((levels[o.upper].density - levels[o.lower].density - by).abs() < 1e-12);
            }
        }
    }
}
