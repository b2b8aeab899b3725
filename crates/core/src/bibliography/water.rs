//! Water: density, temperature scales, thermistors, oxygen.

/// Tanaka, Girard, Davis, Peuto, Bignell 2001: "Recommended table for the density of water between 0 °C and 40 °C based
/// on recent experimental reports", Metrologia 38, 301–309.
///
/// Read: abstract and opening; the coefficients in several public codes that cite it, all identical.
pub enum Tanaka2001 {}

/// The international yard and pound agreement of 1959: 1 foot = 0.3048 m and 1 inch = 0.0254 m exactly.
///
/// From memory; the numbers agree with every general-purpose unit library.
pub enum Foot1959 {}
