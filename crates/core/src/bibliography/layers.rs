//! Layers: thermocline, steep layer, mixed layer.

/// Hutchinson 1957, A Treatise on Limnology I: thermocline as the plane of the greatest rate of decrease of temperature.
///
/// From memory; the wording was read in [`ElaSheet`].
pub enum Hutchinson1957 {}

/// Birge 1897 and 1904: the layer that cools by at least 1 °C per metre.
///
/// From memory, unverified.
pub enum Birge1897 {}

/// IISD Experimental Lakes Area (Canada), field-observation information sheet: thermocline half-way between the two
/// readings of the greatest decrease; bottom of the epilimnion by three successive rules.
///
/// Read, in a public data repository.
pub enum ElaSheet {}

/// de Boyer Montégut, Madec, Fischer, Lazar, Iudicone 2004, J. Geophys. Res. 109, C12003: a threshold difference from a
/// reference depth, interpolated, on single profiles.
///
/// Read: abstract.
pub enum Montegut2004 {}

/// Wilson and others 2020, Hydrol. Earth Syst. Sci. 24, 5559–5577: methods and thresholds disagree widely; 0.1 kg m⁻³ as
/// a possible generic rule for lakes.
///
/// Read: abstract, for the first part; the second from memory.
pub enum Wilson2020 {}

/// Levitus 1982, Climatological Atlas of the World Ocean: mixed layer by 0.5 °C and by 0.125 in density from the surface.
///
/// From memory.
pub enum Levitus1982 {}

/// Kara, Rochford, Hurlburt 2000, J. Geophys. Res. 105, 16803: mixed layer by 0.8 °C. (Their full rule first walks down to
/// the end of the even stretch.)
///
/// From memory.
pub enum Kara2000 {}

/// Lorbacher and others 2006: mixed layer by the curvature of the profile.
///
/// From memory.
pub enum Lorbacher2006 {}

/// Chu & Fan 2011: "Maximum angle method for determining mixed layer depth from seaglider data", J. Oceanogr. 67.
///
/// Read: abstract; the volume from memory.
pub enum ChuFan2011 {}

/// Thomson & Fine 2003: mixed layer by splitting and merging straight pieces.
///
/// From memory.
pub enum ThomsonFine2003 {}

/// Fritsch & Butland 1984, after Fritsch & Carlson 1980: piecewise cubic curves that keep the shape of the data.
///
/// From memory; checked against `PchipInterpolator` of scipy 1.17.1.
pub enum FritschButland1984 {}

/// Gray and others 2020, Water Res. 168, 115136: lake metrics depend highly on the definition chosen.
///
/// Read: abstract.
pub enum Gray2020 {}
