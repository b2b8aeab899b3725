//! Integrals over a body of water: temperature linear between readings, square root of area linear between contours.

use super::basin::Basin;
use crate::analysis::Level;
use crate::cast::station::SAME_DEPTH_M;
use crate::order::sort_numbers;
use crate::water::density::Density;

/// Densities are counted from here, so that small differences keep their digits, kg m⁻³.
pub(super) const FROM_KG_M3: f64 = 1000.0;

/// Sums over the water from the surface down to a depth.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(super) struct Integral {
    /// Down to here, metres.
    pub to_m: f64,
    /// ∫A dz: volume, m³.
    pub volume: f64,
    /// ∫zA dz, m⁴.
    pub moment: f64,
    /// ∫TA dz, °C m³.
    pub heat: f64,
    /// ∫(ρ−1000)A dz, kg.
    pub mass: f64,
    /// ∫z(ρ−1000)A dz, kg m.
    pub mass_moment: f64,
}

impl Integral {
    /// Depth of the centre of volume, metres; `None` for no water.
    pub fn centre_m(&self) -> Option<f64> {
        (self.volume > 0.0).then_some(self.moment / self.volume)
    }

    /// ∫(z − z_v)(ρ − ρ̄)A dz \[kg m\]: how much lower the mass lies than it would lie mixed.
    pub fn lowered(&self) -> Option<f64> {
        self.centre_m().map(|centre_m| self.mass_moment - centre_m * self.mass)
    }

    /// The water between `above` and here.
    pub fn below(&self, above: &Self) -> Self {
        Self {
            to_m: self.to_m,
            volume: self.volume - above.volume,
            moment: self.moment - above.moment,
            heat: self.heat - above.heat,
            mass: self.mass - above.mass,
            mass_moment: self.mass_moment - above.mass_moment,
        }
    }
}

/// Integrals from the surface to every level, every contour, every depth of `also_m` and the bed, downward; the last one
/// is the whole.
///
/// Above the first level its temperature holds, below the last one the last. `None` without a level, or without water (less than
/// a micrometre of it is none). Five-point Gauss–Legendre on each stretch, exact far beyond the digits of a reading.
///
/// * `levels`: depths strictly increasing
/// * `density`: the formula of the method, between readings too
/// * `bed_m`: integrate to here, at most to the lowest contour \[m\]
pub(super) fn integrals(
    levels: &[Level],
    basin: &Basin,
    bed_m: f64,
    also_m: &[f64],
    density: Density,
) -> Option<Vec<Integral>> {
    let bed_m = bed_m.min(basin.deepest_m());
    let (first, last) = (levels.first()?, levels.last()?);
    if bed_m.is_nan() || bed_m < SAME_DEPTH_M {
        return None;
    }
    let inside = |z: &f64| *z > 0.0 && *z < bed_m;
    let mut knots: Vec<f64> = (levels.iter().map(|l| l.depth_m))
        .chain(basin.contours().iter().map(|c| c.0))
        .chain(also_m.iter().copied())
        .filter(inside)
        .collect();
    knots.push(bed_m);
    sort_numbers(&mut knots);
    knots.dedup();
    let mut upper = 0; // first level below the upper end of the stretch
    let temp_at =
        |z: f64, next: usize| match (next.checked_sub(1).and_then(|i| levels.get(i)), levels.get(next)) {
            (Some(a), Some(b)) => {
                a.temp_c + (z - a.depth_m) / (b.depth_m - a.depth_m) * (b.temp_c - a.temp_c)
            }
            (None, _) => first.temp_c,
            (_, None) => last.temp_c,
        };
    let mut sum = Integral::default();
    let mut all = Vec::with_capacity(knots.len());
    for to_m in knots {
        let from_m = sum.to_m;
        while levels.get(upper).is_some_and(|l| l.depth_m <= from_m) {
            upper += 1;
        }
        let (t1, t2) = (temp_at(from_m, upper), temp_at(to_m, upper));
        let (s1, s2) = (basin.area_m2(from_m).sqrt(), basin.area_m2(to_m).sqrt());
        let height_m = to_m - from_m;
        for (place, weight) in GAUSS {
            let area_weight = height_m * weight * (s1 + (s2 - s1) * place) * (s1 + (s2 - s1) * place);
            let (z, t) = (from_m + height_m * place, t1 + (t2 - t1) * place);
            let heavier = density.kg_m3(t) - FROM_KG_M3;
            sum.volume += area_weight;
            sum.moment += z * area_weight;
            sum.heat += t * area_weight;
            sum.mass += heavier * area_weight;
            sum.mass_moment += z * heavier * area_weight;
        }
        sum.to_m = to_m;
        all.push(sum);
    }
    Some(all)
}

/// Places in 0..1 and weights of the five-point rule.
const GAUSS: [(f64, f64); 5] = [
    (0.046_910_077_030_668, 0.118_463_442_528_094_54),
    (0.230_765_344_947_158_45, 0.239_314_335_249_683_23),
    (0.5, 0.284_444_444_444_444_44),
    (0.769_234_655_052_841_5, 0.239_314_335_249_683_23),
    (0.953_089_922_969_332, 0.118_463_442_528_094_54),
];

#[cfg(test)]
mod tests {
    use super::*;

    fn levels(rows: &[(f64, f64)]) -> Vec<Level> {
        rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect()
    }

    #[test]
    fn a_cone_of_even_water_by_hand() {
        let cone = Basin::from_contours(&[(0.0, 9.0), (3.0, 0.0)]).unwrap();
        let all = integrals(&levels(&[(0.0, 10.0), (3.0, 10.0)]), &cone, 3.0, &[], Density::Tanaka).unwrap();
        let whole = all.last().unwrap();
        assert!((whole.volume - 9.0).abs() < 1e-12, "volume of a cone: {} m³, not 9", whole.volume);
        assert!((whole.moment - 9.0 * 0.75).abs() < 1e-12, "moment of a cone: {} m⁴, not 6.75", whole.moment);
        assert!((whole.heat - 90.0).abs() < 1e-11, "heat: {} °C m³, not 90", whole.heat);
        assert!(whole.lowered().unwrap().abs() < 1e-12, "even water is lowered: {whole:?}");
        assert!(
            (whole.centre_m().unwrap() - 0.75).abs() < 1e-12,
            "centre: {:?}, not 0.75 m",
            whole.centre_m()
        );
    }

    #[test]
    fn the_ends_hold_their_temperature_and_the_bed_ends_it() {
        let column = Basin::unit_column(10.0).unwrap();
        let all =
            integrals(&levels(&[(1.0, 20.0), (3.0, 10.0)]), &column, 5.0, &[2.0], Density::Tanaka).unwrap();
        let depths: Vec<f64> = all.iter().map(|i| i.to_m).collect();
        assert_eq!(depths, [1.0, 2.0, 3.0, 5.0]);
        let heat: Vec<f64> = all.iter().map(|i| (i.heat * 1e9).round() / 1e9).collect();
        assert_eq!(heat, [20.0, 37.5, 50.0, 70.0]);
        let lower = all[3].below(&all[0]);
        assert!((lower.heat - 50.0).abs() < 1e-9 && (lower.volume - 4.0).abs() < 1e-12);
        assert!((lower.moment - 12.0).abs() < 1e-12 && lower.to_m == 5.0);
        assert!(lower.mass < 0.0 && lower.mass_moment < 0.0);
    }

    #[test]
    fn no_level_or_no_depth_is_no_water() {
        let column = Basin::unit_column(10.0).unwrap();
        assert_eq!(integrals(&[], &column, 5.0, &[], Density::Tanaka), None);
        assert_eq!(integrals(&levels(&[(0.0, 5.0)]), &column, 0.0, &[], Density::Tanaka), None);
        assert_eq!(integrals(&levels(&[(0.0, 5.0)]), &column, 5e-309, &[], Density::Tanaka), None);
        assert_eq!(Integral::default().centre_m(), None);
        assert_eq!(Integral::default().lowered(), None);
    }

    #[test]
    fn a_basin_shallower_than_the_cast_ends_at_its_lowest_contour() {
        let column = Basin::unit_column(2.0).unwrap();
        let all =
            integrals(&levels(&[(0.0, 20.0), (3.0, 10.0)]), &column, 5.0, &[], Density::Tanaka).unwrap();
        assert_eq!(all.iter().map(|i| i.to_m).collect::<Vec<_>>(), [2.0]);
    }
}
