//! What a degree is worth in density, and a density step in degrees.

use super::density::{Density, HIGHEST_C, LOWEST_C};

/// Density gained \[kg m⁻³\] when water of `from_c` \[°C\] cools by `cooling_c` \[°C\]; negative when it gets lighter, as
/// below 4 °C.
///
/// ```
/// use layercast_core::water::{density::Density, worth::gain_kg_m3};
/// assert!((gain_kg_m3(Density::Tanaka, 25.0, 1.0) - 0.2518).abs() < 1e-4);
/// assert!((gain_kg_m3(Density::Tanaka, 5.0, 1.0) - 0.0082).abs() < 1e-4);
/// ```
pub fn gain_kg_m3(density: Density, from_c: f64, cooling_c: f64) -> f64 {
    density.kg_m3(from_c - cooling_c) - density.kg_m3(from_c)
}

/// How much water of `from_c` \[°C\] must cool \[°C\] to be denser by `rise_kg_m3`.
///
/// `None` where cooling cannot reach that before the temperature of greatest density (in water of 6 °C a rise of
/// 0.1 kg m⁻³ is out of reach), outside −0.5..40 °C, and for a rise that is no number above zero.
///
/// ```
/// use layercast_core::water::{density::Density, worth::cooling_for_c};
/// assert!((cooling_for_c(Density::Tanaka, 20.0, 0.1).unwrap() - 0.4904).abs() < 1e-4);
/// assert_eq!(cooling_for_c(Density::Tanaka, 6.0, 0.1), None);
/// ```
pub fn cooling_for_c(density: Density, from_c: f64, rise_kg_m3: f64) -> Option<f64> {
    let coldest_c = density.greatest_c().unwrap_or(LOWEST_C);
    let sensible = from_c > coldest_c && from_c <= HIGHEST_C && rise_kg_m3 > 0.0;
    let (mut low, mut high) = (0.0, from_c - coldest_c);
    if !sensible || gain_kg_m3(density, from_c, high) < rise_kg_m3 {
        return None;
    }
    for _ in 0..60 {
        let middle = 0.5 * (low + high);
        if gain_kg_m3(density, from_c, middle) < rise_kg_m3 {
            low = middle;
        } else {
            high = middle;
        }
    }
    Some(0.5 * (low + high))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn out_of_reach_is_no_answer() {
        let fresh = |from_c, rise| cooling_for_c(Density::Tanaka, from_c, rise);
        assert_eq!(fresh(3.9, 0.001), None);
        assert_eq!(fresh(40.1, 0.1), None);
        assert!(fresh(40.0, 0.1).is_some());
        for senseless in [f64::NAN, 0.0, -1.0, f64::INFINITY] {
            assert_eq!(fresh(20.0, senseless), None, "{senseless}");
        }
        assert_eq!(fresh(f64::NAN, 0.1), None);
    }

    #[test]
    fn the_sea_gets_denser_all_the_way_down() {
        let sea = Density::Eos80 { salinity: 35.0 };
        let got = cooling_for_c(sea, 1.0, 0.05).unwrap();
        assert!((gain_kg_m3(sea, 1.0, got) - 0.05).abs() < 1e-9 && got < 1.5);
    }
}
