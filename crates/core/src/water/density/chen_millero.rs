//! Density by Chen and Millero: natural waters of lakes.

/// The saltiest water it is stated for, g of salt per kg.
pub const SALTIEST_G_KG: f64 = 0.6;

/// Density \[kg m⁻³\] at `temp_c` \[°C\], `salinity_g_kg` \[g/kg\] and one atmosphere.
///
/// Stated for about 0–30 °C and salinity 0–0.6 g/kg; with no salt within 0.0036 kg m⁻³ of IAPWS-95 up to 35 °C, most of
/// it constant (its maximum is 999.972). Its authors' scale is not known here: the temperature goes in as it is, on
/// ITS-90; the difference is a hundredth of a degree at most.
///
/// Outside −0.5..40 °C and 0–0.6 g/kg the nearer end is used; a salinity that is no number counts as none. A
/// temperature that is no number gives NaN.
///
/// Source: [`ChenMillero1986`](crate::bibliography::ChenMillero1986).
///
/// ```
/// assert!((layercast_core::water::density::chen_millero_kg_m3(0.0, 0.1) - 999.921_31).abs() < 1e-6);
/// ```
pub fn chen_millero_kg_m3(temp_c: f64, salinity_g_kg: f64) -> f64 {
    let t = temp_c.clamp(super::LOWEST_C, super::HIGHEST_C);
    let s = super::salt_within(salinity_g_kg, SALTIEST_G_KG);
    let fresh = 0.9998395
        + t * (6.7914e-5
            + t * (-9.0894e-6 + t * (1.0171e-7 + t * (-1.2846e-9 + t * (1.1592e-11 - t * 5.0125e-14)))));
    1000.0 * (fresh + s * (8.181e-4 + t * (-3.85e-6 + t * 4.96e-8)))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn ends_of_the_ranges() {
        assert_eq!(chen_millero_kg_m3(10.0, 9.0), chen_millero_kg_m3(10.0, 0.6));
        assert_eq!(chen_millero_kg_m3(10.0, -9.0), chen_millero_kg_m3(10.0, 0.0));
        assert_eq!(chen_millero_kg_m3(-9.0, 0.0), chen_millero_kg_m3(-0.5, 0.0));
        assert_eq!(chen_millero_kg_m3(90.0, 0.0), chen_millero_kg_m3(40.0, 0.0));
        assert!(chen_millero_kg_m3(f64::NAN, 0.0).is_nan());
    }
}
