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
