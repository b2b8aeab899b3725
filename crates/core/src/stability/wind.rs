//! Wind numbers: whether a wind can tilt the layers as far as the surface.

use super::basin::Basin;
use super::integral::{FROM_KG_M3, integrals};
use crate::analysis::Analysis;
use crate::layers::densest::GRAVITY;

/// Density of air, kg m⁻³.
pub const AIR_KG_M3: f64 = 1.2;
/// Drag of the wind on water, a pure number; sources give 1.0 to 1.5 thousandths.
pub const DRAG: f64 = 1.3e-3;
/// No wind numbers beyond this wind, m s⁻¹: stronger than any that was measured at 10 m.
pub const STRONGEST_M_S: f64 = 120.0;

/// Stress of the wind on the water \[Pa\]: ρ_air · 1.3·10⁻³ · U², U the wind 10 m above it \[m s⁻¹\]. From memory; the
/// drag holds for moderate winds.
///
/// ```
/// assert!((layercast_core::stability::wind::stress_pa(5.0) - 0.039).abs() < 1e-12);
/// ```
pub fn stress_pa(wind_m_s: f64) -> f64 {
    AIR_KG_M3 * DRAG * wind_m_s * wind_m_s
}

/// Friction velocity in the water \[m s⁻¹\]: √(stress/density). `None` where the density is not more than nothing or the
/// stress is less.
pub fn friction_velocity_m_s(stress_pa: f64, density_kg_m3: f64) -> Option<f64> {
    let square = stress_pa / density_kg_m3;
    (density_kg_m3 > 0.0 && square >= 0.0 && square.is_finite()).then(|| square.sqrt())
}

/// Reduced gravity \[m s⁻²\] between an upper and a lower layer of these densities \[kg m⁻³\]: g·Δρ/ρ_lower.
pub fn reduced_gravity_m_s2(upper: f64, lower: f64) -> f64 {
    GRAVITY * (lower - upper) / lower
}

/// Wedderburn number W = g′h₁²/(u*²L), a pure number. Far below 1 the wind can tilt the layer to the surface.
///
/// * `reduced_gravity_m_s2`: of the two layers \[m s⁻²\]
/// * `upper_m`: thickness of the upper layer \[m\]
/// * `friction_m_s`: friction velocity \[m s⁻¹\]
/// * `length_m`: length of the water along the wind \[m\]
///
/// `None` where it would not be a number: no wind, no length.
///
/// Source: [`ImbergerPatterson1990`](crate::bibliography::ImbergerPatterson1990).
pub fn wedderburn(reduced_gravity_m_s2: f64, upper_m: f64, friction_m_s: f64, length_m: f64) -> Option<f64> {
    let w = reduced_gravity_m_s2 * upper_m * upper_m / (friction_m_s * friction_m_s * length_m);
    (friction_m_s > 0.0 && length_m > 0.0 && w.is_finite()).then_some(w)
}

/// What a lake number is made of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LakeNumber {
    /// Schmidt stability for each square metre of the surface, J m⁻².
    pub schmidt_j_m2: f64,
    /// Area of the surface, m².
    pub area_m2: f64,
    /// Depth of the basin, metres.
    pub depth_m: f64,
    /// Depth of the middle of the steep layer, metres.
    pub steep_middle_m: f64,
    /// Depth of the centre of volume, metres.
    pub centre_of_volume_m: f64,
    /// Density of the lower layer, kg m⁻³.
    pub lower_kg_m3: f64,
    /// Friction velocity, m s⁻¹.
    pub friction_m_s: f64,
}

impl LakeNumber {
    /// L_N = S·A₀(1 − z_T/z_m)/(ρu*²A₀^1.5(1 − z_g/z_m)), a pure number, heights z counted from the bottom: z_T of the steep
    /// layer's middle, z_g of the centre of volume, z_m of the surface.
    ///
    /// In a box of two layers as long as √A₀ it is the Wedderburn number times h₂/(h₁+h₂). `None` where it would not be
    /// a number.
    ///
    /// Source: [`ImbergerPatterson1990`](crate::bibliography::ImbergerPatterson1990).
    pub fn value(&self) -> Option<f64> {
        // 1 − height/z_m is depth/z_m, and z_m cancels.
        let ratio = self.steep_middle_m / self.centre_of_volume_m;
        let stress = self.lower_kg_m3 * self.friction_m_s * self.friction_m_s;
        let number = self.schmidt_j_m2 * ratio / (stress * self.area_m2.sqrt());
        let sound = stress > 0.0 && self.area_m2 > 0.0 && self.centre_of_volume_m > 0.0 && self.depth_m > 0.0;
        (sound && number.is_finite()).then_some(number)
    }
}

/// Wind numbers of a cast in its basin.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WindNumbers {
    /// Stress of the wind, Pa.
    pub stress_pa: f64,
    /// Friction velocity in the water, m s⁻¹.
    pub friction_m_s: f64,
    /// Depth that parts the two layers: the thermocline, metres.
    pub parted_at_m: f64,
    /// Reduced gravity between their mean densities, m s⁻².
    pub reduced_gravity_m_s2: f64,
    /// Wedderburn number, with √A₀ for the length.
    pub wedderburn: f64,
    /// Lake number.
    pub lake_number: f64,
}

/// Wind numbers of a cast in its basin, for a wind \[m s⁻¹\] 10 m above the water.
///
/// The water is parted at the thermocline, each part with its mean density by volume; the steep layer's middle is that of
/// the metalimnion, or the thermocline where there is none (conventions of ours). `None` without a thermocline, without
/// wind, or where the basin ends above the thermocline.
///
/// Source: [`ImbergerPatterson1990`](crate::bibliography::ImbergerPatterson1990).
pub fn wind_numbers(analysis: &Analysis, basin: &Basin, wind_m_s: f64) -> Option<WindNumbers> {
    let parted_at_m = analysis.thermocline?.value_m;
    let steep_middle_m = analysis.metalimnion.map_or(parted_at_m, |m| (m.top_m + m.bottom_m) / 2.0);
    if !(wind_m_s > 0.0 && wind_m_s <= STRONGEST_M_S) || parted_at_m >= basin.deepest_m() {
        return None;
    }
    let all =
        integrals(&analysis.profile, basin, basin.deepest_m(), &[parted_at_m], analysis.method.density)?;
    let (last, upper) = (all.last()?, all.iter().find(|water| water.to_m >= parted_at_m)?);
    let lower = last.below(upper);
    let density = |mass: f64, volume: f64| (volume > 0.0).then_some(FROM_KG_M3 + mass / volume);
    let (upper_kg_m3, lower_kg_m3) = (density(upper.mass, upper.volume)?, density(lower.mass, lower.volume)?);
    let stress_pa = stress_pa(wind_m_s);
    let friction_m_s = friction_velocity_m_s(stress_pa, lower_kg_m3)?;
    let reduced_gravity_m_s2 = reduced_gravity_m_s2(upper_kg_m3, lower_kg_m3);
    let area_m2 = basin.surface_area_m2();
    let lake = LakeNumber {
        schmidt_j_m2: GRAVITY / area_m2 * last.lowered()?,
        area_m2,
        depth_m: last.to_m,
        steep_middle_m,
        centre_of_volume_m: last.centre_m()?,
        lower_kg_m3,
        friction_m_s,
    };
    Some(WindNumbers {
        stress_pa,
        friction_m_s,
        parted_at_m,
        reduced_gravity_m_s2,
        wedderburn: wedderburn(reduced_gravity_m_s2, parted_at_m, friction_m_s, area_m2.sqrt())?,
        lake_number: lake.value()?,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn by_hand() {
        assert!((stress_pa(10.0) - 0.156).abs() < 1e-12);
        assert_eq!(friction_velocity_m_s(4.0, 1000.0).map(|u| (u * 1e9).round()), Some(63_245_553.0));
        assert!((reduced_gravity_m_s2(998.0, 1000.0) - 0.019_613_3).abs() < 1e-12);
        assert_eq!(wedderburn(0.02, 3.0, 0.01, 100.0).map(|w| (w * 1e9).round() / 1e9), Some(18.0));
        let lake = LakeNumber {
            schmidt_j_m2: 50.0,
            area_m2: 10_000.0,
            depth_m: 8.0,
            steep_middle_m: 3.0,
            centre_of_volume_m: 2.0,
            lower_kg_m3: 1000.0,
            friction_m_s: 0.01,
        };
        assert_eq!(lake.value().map(|l| (l * 1e9).round() / 1e9), Some(7.5));
    }

    #[test]
    fn what_cannot_be_is_none() {
        assert_eq!(friction_velocity_m_s(1.0, 0.0), None);
        assert_eq!(friction_velocity_m_s(-1.0, 1000.0), None);
        assert_eq!(friction_velocity_m_s(f64::NAN, 1000.0), None);
        assert_eq!(friction_velocity_m_s(0.0, 1000.0), Some(0.0));
        assert_eq!(wedderburn(0.02, 3.0, 0.0, 100.0), None);
        assert_eq!(wedderburn(0.02, 3.0, 0.01, 0.0), None);
        assert_eq!(wedderburn(0.02, f64::INFINITY, 0.01, 1.0), None);
        let lake = LakeNumber {
            schmidt_j_m2: 50.0,
            area_m2: 1.0,
            depth_m: 8.0,
            steep_middle_m: 3.0,
            centre_of_volume_m: 2.0,
            lower_kg_m3: 1000.0,
            friction_m_s: 0.01,
        };
        assert!(lake.value().is_some());
        assert_eq!(LakeNumber { friction_m_s: 0.0, ..lake }.value(), None);
        assert_eq!(LakeNumber { area_m2: 0.0, ..lake }.value(), None);
        assert_eq!(LakeNumber { centre_of_volume_m: 0.0, ..lake }.value(), None);
        assert_eq!(LakeNumber { depth_m: 0.0, ..lake }.value(), None);
        assert_eq!(LakeNumber { schmidt_j_m2: f64::NAN, ..lake }.value(), None);
    }
}
