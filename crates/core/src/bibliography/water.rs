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

/// Kell 1975: "Density, thermal expansivity, and compressibility of liquid water from 0° to 150 °C: correlations and
/// tables in atmospheric pressure and saturation reviewed and expressed on 1968 temperature scale", J. Chem. Eng. Data
/// 20, 97–105.
///
/// Read: as reprinted in Jones & Harris 1992, J. Res. NIST 97, 335–340, whose web text transposes two digits of the
/// denominator; at least four public codings have the one used here.
pub enum Kell1975 {}

/// Fofonoff & Millard 1983: "Algorithms for computation of fundamental properties of seawater", UNESCO Technical Papers
/// in Marine Science 44 (EOS-80).
///
/// Read: coefficients and the check values of p. 19 in several public codes that quote them.
pub enum Unesco1983 {}

/// Chen & Millero 1986: "Precise thermodynamic properties for natural waters covering only the limnological range",
/// Limnol. Oceanogr. 31, 657–662.
///
/// From memory for title and range; coefficients read in several public model codes: nine of ten terms agree everywhere,
/// the last does not matter up to 0.6 g/kg.
pub enum ChenMillero1986 {}

/// Saunders 1990: t68 = 1.00024 t90.
///
/// From memory; the relation was read in many public oceanography codes.
pub enum Saunders1990 {}

/// Steinhart & Hart 1968: "Calibration curves for thermistors", Deep-Sea Res. 15, 497–503.
///
/// From memory; the formula was read on several pages.
pub enum SteinhartHart1968 {}

/// Benson & Krause 1984, Limnol. Oceanogr. 29, 620–632; APHA Standard Methods 4500-O; US Geological Survey memorandum
/// 2011.03: oxygen saturation with salt and pressure.
///
/// Read: the reference, and the coefficients in ten public codes that cite them; its values agree with the table of
/// EN 25814 to that table's rounding.
pub enum BensonKrause1984 {}

/// The standard atmosphere: pressure falls with altitude as (1 − 2.25577e-5 h)^5.25588.
///
/// From memory; textbook physics.
pub enum StandardAtmosphere {}
