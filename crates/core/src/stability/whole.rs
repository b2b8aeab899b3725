//! A whole body of water: Schmidt stability, heat, means, and the work to mix it down to each depth.

use super::basin::Basin;
use super::integral::{FROM_KG_M3, Integral, integrals};
use crate::analysis::Level;
use crate::layers::densest::GRAVITY;
use crate::water::density::Density;

/// Heat needed to warm a cubic metre of water by a degree, J m⁻³ K⁻¹: within 1 % from 0 to 30 °C.
///
/// Source: [`HeatCapacity`](crate::bibliography::HeatCapacity).
pub const HEAT_J_M3_K: f64 = 4.18e6;

/// Work to mix the water from the surface down to a depth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct MixingWork {
    /// Mixed down to here, metres.
    pub to_depth_m: f64,
    /// Work for each square metre of the surface, J m⁻²; negative where mixing would set energy free.
    pub work_j_m2: f64,
    /// The same work as a picture: the mass that it would lift by 1 m, kg for each square metre of the surface.
    pub lifted_kg_by_1_m: f64,
}

/// What a body of water holds.
#[derive(Clone, Debug, PartialEq)]
pub struct Whole {
    /// Depth to the bed, metres.
    pub depth_m: f64,
    /// Area of the surface, m².
    pub surface_area_m2: f64,
    /// Volume, m³.
    pub volume_m3: f64,
    /// Depth of the centre of volume, metres.
    pub centre_of_volume_m: f64,
    /// Density of the volume on average, kg m⁻³.
    pub mean_density_kg_m3: f64,
    /// Temperature of the volume on average, °C.
    pub mean_temp_c: f64,
    /// Heat above 0 °C for each square metre of the surface, J m⁻².
    pub heat_j_m2: f64,
    /// Schmidt stability: work to mix all of it to one density, for each square metre of the surface, J m⁻².
    pub schmidt_j_m2: f64,
    /// Standard deviation of that by the noise of the readings alone, J m⁻² (law of propagation,
    /// [`Gum`](crate::bibliography::Gum); noise of one reading independent of the others).
    pub schmidt_sd_j_m2: f64,
    /// Work to mix it down to each reading below the surface, and last down to the bed.
    pub mixing: Vec<MixingWork>,
}

/// What the water of a basin holds, down to `bed_m` \[m\] or the lowest contour, whichever is less deep.
///
/// Schmidt stability S = (g/A₀)∫(z − z_v)(ρ − ρ̄)A dz with z_v the centre of volume: the work to mix to one *density*
/// without exchange of heat. The work to mix only the water above a depth is the same integral over that water; over the
/// whole it equals S. It grows from nothing at the surface, and shows how much more a wind must do for each metre.
///
/// Temperature is linear between readings and holds above the first and below the last. In a column of two layers
/// S = g·Δρ·h₁h₂/2. A column without a map overstates a real basin several times over.
///
/// * `levels`: depths strictly increasing
/// * `density`: the formula of the method
///
/// `None` without a level or without depth (less than a micrometre is none).
///
/// Sources: [`Schmidt1928`](crate::bibliography::Schmidt1928), [`Idso1973`](crate::bibliography::Idso1973).
///
/// ```
/// use layercast_core::{Level, stability::{basin::Basin, whole::whole}, water::density::Density};
/// let levels = [(0.0, 22.0), (3.999, 22.0), (4.001, 8.0), (10.0, 8.0)];
/// let levels: Vec<Level> = levels.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect();
/// let got = whole(&levels, &Basin::unit_column(10.0).unwrap(), 10.0, Density::Tanaka).unwrap();
/// assert!((got.schmidt_j_m2 - 244.57).abs() < 0.03); // 9.80665 · 2.0783 · 4 · 6 / 2
/// ```
pub fn whole(levels: &[Level], basin: &Basin, bed_m: f64, density: Density) -> Option<Whole> {
    let all = integrals(levels, basin, bed_m, &[], density)?;
    let last = all.last()?;
    let surface_area_m2 = basin.surface_area_m2();
    let work_j_m2 = |water: &Integral| Some(GRAVITY / surface_area_m2 * water.lowered()?);
    let told =
        |to_m: f64| levels.binary_search_by(|l| l.depth_m.total_cmp(&to_m)).is_ok() || to_m == last.to_m;
    let mixing = (all.iter().filter(|water| told(water.to_m)))
        .filter_map(|water| {
            let work_j_m2 = work_j_m2(water)?;
            Some(MixingWork { to_depth_m: water.to_m, work_j_m2, lifted_kg_by_1_m: work_j_m2 / GRAVITY })
        })
        .collect();
    let mean_temp_c = last.heat / last.volume;
    let whole = Whole {
        depth_m: last.to_m,
        surface_area_m2,
        volume_m3: last.volume,
        centre_of_volume_m: last.centre_m()?,
        mean_density_kg_m3: FROM_KG_M3 + last.mass / last.volume,
        mean_temp_c,
        heat_j_m2: HEAT_J_M3_K * mean_temp_c * last.volume / surface_area_m2,
        schmidt_j_m2: work_j_m2(last)?,
        schmidt_sd_j_m2: GRAVITY / surface_area_m2
            * lowered_sd_kg_m(levels, basin, last.to_m, last.centre_m()?, density),
        mixing,
    };
    let numbers = [whole.heat_j_m2, whole.schmidt_j_m2, whole.schmidt_sd_j_m2];
    numbers.iter().all(|value| value.is_finite()).then_some(whole)
}

/// Standard deviation of ∫(z − z_v)(ρ − ρ̄)A dz \[kg m\] by the noise of the levels. Each level stands for the water
/// half-way to its neighbours, the first up to the surface, the last down to the bed: with the slope of density ρ′ there,
/// √Σ((z − z_v) ρ′ σ A h)².
fn lowered_sd_kg_m(levels: &[Level], basin: &Basin, bed_m: f64, centre_m: f64, density: Density) -> f64 {
    let depth_m = |i: usize| levels.get(i).map(|l| l.depth_m);
    let squares = levels.iter().enumerate().map(|(i, level)| {
        let above_m = i.checked_sub(1).and_then(depth_m).map_or(0.0, |m| (m + level.depth_m) / 2.0);
        let below_m = depth_m(i + 1).map_or(bed_m, |m| (level.depth_m + m) / 2.0);
        let (from_m, to_m) = (above_m.clamp(0.0, bed_m), below_m.clamp(0.0, bed_m));
        let middle_m = (from_m + to_m) / 2.0;
        let (warm, cold) = (level.temp_c + SLOPE_OVER_C, level.temp_c - SLOPE_OVER_C);
        let slope = (density.kg_m3(warm) - density.kg_m3(cold)) / (2.0 * SLOPE_OVER_C);
        let part = (middle_m - centre_m) * slope * level.sd_c * basin.volume_m3(from_m, to_m);
        part * part
    });
    squares.sum::<f64>().sqrt()
}

/// The slope of density is taken over this much to either side, °C.
const SLOPE_OVER_C: f64 = 0.05;

#[cfg(test)]
mod tests {
    use super::*;
    use crate::water::density::density_kg_m3;

    /// 4 m at 22 °C over 6 m at 8 °C, the jump within 2 µm.
    fn two_layers() -> Vec<Level> {
        let rows = [(0.0, 22.0), (2.0, 22.0), (3.999_999, 22.0), (4.000_001, 8.0), (7.0, 8.0), (10.0, 8.0)];
        rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect()
    }

    #[test]
    fn mixing_to_a_depth_is_the_box_formula_of_the_water_above_it() {
        let got = whole(&two_layers(), &Basin::unit_column(10.0).unwrap(), 10.0, Density::Tanaka).unwrap();
        let gain = density_kg_m3(8.0) - density_kg_m3(22.0);
        assert_eq!(got.mixing.len(), 5);
        for work in &got.mixing {
            let below_m = (work.to_depth_m - 4.0).max(0.0);
            let want = 9.80665 * gain * 4.0 * below_m / 2.0;
            assert!((work.work_j_m2 - want).abs() < 1e-4, "{work:?}, want {want}");
            assert!((work.lifted_kg_by_1_m - gain * 2.0 * below_m).abs() < 1e-5);
        }
        let last = got.mixing.last().unwrap();
        assert_eq!((last.to_depth_m, last.work_j_m2), (10.0, got.schmidt_j_m2));
    }

    #[test]
    fn means_and_heat_of_two_layers() {
        let got = whole(&two_layers(), &Basin::unit_column(10.0).unwrap(), 10.0, Density::Tanaka).unwrap();
        assert!((got.mean_temp_c - 13.6).abs() < 1e-6 && (got.centre_of_volume_m - 5.0).abs() < 1e-12);
        assert!((got.heat_j_m2 - 4.18e6 * 136.0).abs() < 100.0);
        let mean = 0.4 * density_kg_m3(22.0) + 0.6 * density_kg_m3(8.0);
        assert!((got.mean_density_kg_m3 - mean).abs() < 1e-6);
        assert!((got.volume_m3 - 10.0).abs() < 1e-12 && got.surface_area_m2 == 1.0 && got.depth_m == 10.0);
    }

    #[test]
    fn a_wider_column_holds_as_much_for_each_square_metre() {
        let wide = Basin::from_contours(&[(0.0, 5000.0), (10.0, 5000.0)]).unwrap();
        let one = whole(&two_layers(), &Basin::unit_column(10.0).unwrap(), 10.0, Density::Tanaka).unwrap();
        let got = whole(&two_layers(), &wide, 10.0, Density::Tanaka).unwrap();
        assert!((got.schmidt_j_m2 - one.schmidt_j_m2).abs() < 1e-9);
        assert!((got.heat_j_m2 - one.heat_j_m2).abs() < 1e-3);
        assert!((got.volume_m3 - 50_000.0).abs() < 1e-7);
    }

    #[test]
    fn the_last_reading_holds_down_to_the_bed() {
        let levels: Vec<Level> = two_layers().into_iter().take(5).collect(); // to 7 m
        let got = whole(&levels, &Basin::unit_column(99.0).unwrap(), 10.0, Density::Tanaka).unwrap();
        let gain = density_kg_m3(8.0) - density_kg_m3(22.0);
        assert!((got.schmidt_j_m2 - 9.80665 * gain * 12.0).abs() < 1e-4);
        assert_eq!(
            got.mixing.iter().map(|w| w.to_depth_m).collect::<Vec<_>>(),
            [2.0, 3.999_999, 4.000_001, 7.0, 10.0]
        );
    }

    /// Standard deviations of 20,000 drawn casts (numpy 2.4.6, normal noise of 0.1 °C, 4,000 slices): even water of
    /// 14.2 °C in 25 readings, a summer lake at uneven steps in a column, the same in a cone.
    #[test]
    fn noise_alone_makes_some_work() {
        let even: Vec<(f64, f64)> = (0..25).map(|i| (0.5 * f64::from(i), 14.2)).collect();
        let summer =
            [(0.0, 22.0), (1.0, 22.0), (2.0, 21.0), (3.0, 15.0), (4.0, 10.0), (6.0, 8.0), (9.0, 7.5)];
        let column = |deepest_m| Basin::unit_column(deepest_m).unwrap();
        let cone = Basin::from_contours(&[(0.0, 1e4), (10.0, 0.0)]).unwrap();
        for (rows, basin, want_j_m2, want_sd_j_m2) in [
            (even.as_slice(), column(12.0), 0.0, 1.139),
            (&summer, column(10.0), 201.14, 1.341),
            (&summer, cone, 49.92, 0.381),
        ] {
            let levels: Vec<Level> = rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.1)).collect();
            let got = whole(&levels, &basin, basin.deepest_m(), Density::Tanaka).unwrap();
            assert!((got.schmidt_j_m2 - want_j_m2).abs() < 0.01, "{}", got.schmidt_j_m2);
            assert!((got.schmidt_sd_j_m2 / want_sd_j_m2 - 1.0).abs() < 0.05, "{}", got.schmidt_sd_j_m2);
        }
        let exact = whole(&two_layers(), &column(10.0), 10.0, Density::Tanaka).unwrap();
        assert_eq!(exact.schmidt_sd_j_m2, 0.0);
    }

    #[test]
    fn heavier_water_above_sets_energy_free() {
        let rows = [(0.0, 8.0), (1.0, 8.0), (2.0, 20.0), (3.0, 20.0)];
        let levels: Vec<Level> = rows.iter().map(|(z, t)| Level::bare(*z, *t, 0.0)).collect();
        assert!(
            whole(&levels, &Basin::unit_column(3.0).unwrap(), 3.0, Density::Tanaka).unwrap().schmidt_j_m2
                < -1.0
        );
    }

    #[test]
    fn contours_between_readings_are_not_told() {
        let pond = Basin::from_contours(&[(0.0, 9.0), (1.3, 4.0), (3.0, 0.0)]).unwrap();
        let levels = [Level::bare(0.0, 20.0, 0.0), Level::bare(2.0, 10.0, 0.0)];
        let got = whole(&levels, &pond, 9.0, Density::Tanaka).unwrap();
        assert_eq!(got.mixing.iter().map(|w| w.to_depth_m).collect::<Vec<_>>(), [2.0, 3.0]);
    }

    #[test]
    fn no_water_has_none() {
        assert_eq!(whole(&[], &Basin::unit_column(10.0).unwrap(), 10.0, Density::Tanaka), None);
        assert_eq!(
            whole(&two_layers(), &Basin::unit_column(10.0).unwrap(), f64::NAN, Density::Tanaka)
                .map(|w| w.depth_m),
            Some(10.0)
        );
        assert_eq!(whole(&two_layers(), &Basin::unit_column(10.0).unwrap(), -1.0, Density::Tanaka), None);
    }

    #[test]
    fn salt_makes_it_heavier_and_hardly_harder_to_mix() {
        let column = Basin::unit_column(10.0).unwrap();
        let fresh = whole(&two_layers(), &column, 10.0, Density::Tanaka).unwrap();
        let salty = whole(&two_layers(), &column, 10.0, Density::TanakaSalt { salinity: 5.0 }).unwrap();
        let heavier = salty.mean_density_kg_m3 - fresh.mean_density_kg_m3;
        assert!((3.5..4.2).contains(&heavier), "{heavier}");
        assert!((salty.schmidt_j_m2 / fresh.schmidt_j_m2 - 1.0).abs() < 0.1);
    }
}
