//! The gradient table: how fast the water cools from one depth to the next.

use crate::analysis::{Level, Step};

/// Intervals between neighbouring levels, downward: one fewer than the levels.
///
/// Cooling is g = −(T₂−T₁)/(z₂−z₁) \[°C/m\], positive where it cools downward; its standard uncertainty is
/// √(σ₁²+σ₂²)/(z₂−z₁). Which layer a step belongs to is not filled in yet.
///
/// * `levels`: depths strictly increasing; a step that does not go down is left out
///
/// ```
/// use layercast_core::{Level, layers::steps::steps};
/// let steps = steps(&[Level::bare(3.0, 22.0, 0.0), Level::bare(3.5, 19.5, 0.0)]);
/// assert_eq!(steps[0].cooling_c_per_m, 5.0);
/// ```
pub fn steps(levels: &[Level]) -> Vec<Step> {
    (levels.iter().zip(levels.iter().skip(1)))
        .filter(|(a, b)| b.depth_m > a.depth_m)
        .map(|(a, b)| {
            let height_m = b.depth_m - a.depth_m;
            Step {
                top_m: a.depth_m,
                bottom_m: b.depth_m,
                cooling_c_per_m: (a.temp_c - b.temp_c) / height_m,
                u_c_per_m: libm::hypot(a.sd_c, b.sd_c) / height_m,
                densing_kg_m3_per_m: (b.density - a.density) / height_m,
                in_span: false,
                in_main_layer: false,
                in_warm_layer_today: false,
            }
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_step_carries_the_noise_of_both_its_ends() {
        let got = steps(&[Level::bare(0.0, 20.0, 0.3), Level::bare(2.0, 18.0, 0.4)]);
        assert_eq!(got.len(), 1);
        assert!((got[0].cooling_c_per_m - 1.0).abs() < 1e-12 && (got[0].u_c_per_m - 0.25).abs() < 1e-12);
        assert!(got[0].densing_kg_m3_per_m > 0.0);
    }

    #[test]
    fn warming_downward_is_negative_and_one_level_has_no_step() {
        assert!(steps(&[Level::bare(0.0, 1.0, 0.0), Level::bare(1.0, 4.0, 0.0)])[0].cooling_c_per_m < 0.0);
        assert!(steps(&[Level::bare(0.0, 1.0, 0.0)]).is_empty());
        assert!(steps(&[]).is_empty());
    }
}
