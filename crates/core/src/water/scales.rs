//! Temperature scales: today's (ITS-90) and that of 1968 (IPTS-68), on which older formulas were made.

/// °C of 1968 in one °C of today, between the freezing of the sea and 40 °C.
const T68_PER_T90: f64 = 1.00024;

/// °C on the scale of 1968 from °C of today. The difference is 0.005 °C at 20 °C: below any class thermometer.
///
/// Source: [`Saunders1990`](crate::bibliography::Saunders1990).
///
/// ```
/// assert!((layercast_core::water::scales::to_ipts_68_c(20.0) - 20.0048).abs() < 1e-12);
/// ```
pub fn to_ipts_68_c(t90_c: f64) -> f64 {
    t90_c * T68_PER_T90
}

/// °C of today from °C on the scale of 1968.
///
/// Source: [`Saunders1990`](crate::bibliography::Saunders1990).
pub fn to_its_90_c(t68_c: f64) -> f64 {
    t68_c / T68_PER_T90
}
