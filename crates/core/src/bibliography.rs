//! Sources, one item each. *Read*: the passage used was seen in the source or in the page named. *From memory*: recalled,
//! not verified here.
#![allow(non_camel_case_types)]

/// Tanaka, Girard, Davis, Peuto, Bignell 2001: "Recommended table for the density of water between 0 °C and 40 °C based
/// on recent experimental reports", Metrologia 38, 301–309.
///
/// Read: abstract and opening; the coefficients in several public codes that cite it, all identical.
pub enum Tanaka2001 {}

/// The international yard and pound agreement of 1959: 1 foot = 0.3048 m and 1 inch = 0.0254 m exactly.
///
/// From memory; the numbers agree with every general-purpose unit library.
pub enum Foot1959 {}

/// US Geological Survey, National Field Manual, chapters A6.1 (temperature, 2024) and A6.8: °F = 1.8 °C + 32, sensors
/// within ±0.2 °C; memorandum 79.16 (1979): field thermometers within ±0.5 °C.
///
/// Read as verbatim quotations held in a public repository.
pub enum UsgsField {}

/// U.S. Integrated Ocean Observing System: "Manual for Real-Time Quality Control of In-situ Temperature and Salinity
/// Data", version 2.0, January 2016, doi 10.7289/V5V40SD4 (QARTOD).
///
/// Read: title pages; the tests themselves as a public library codes them, see [`IoosQc`].
pub enum Qartod2016 {}

/// ioos-qc 3.0.0, a general-purpose open library of the QARTOD tests (Apache-2.0).
///
/// Read: its source; the check tables hold flags it computed.
pub enum IoosQc {}

/// Argo quality control: density inversion beyond 0.03 kg m⁻³.
///
/// From memory; restated in public code.
pub enum Argo {}

/// Precision from duplicates, s = √(Σd²/2n): Youden & Steiner 1975; APHA Standard Methods part 1000; Dahlberg 1940.
///
/// From memory; the algebra was checked against numpy's pooled variance.
pub enum Duplicates {}

/// JCGM 100, Guide to the expression of uncertainty in measurement: rectangular distributions (width/√12) and the law of
/// propagation.
///
/// From memory.
pub enum Gum {}

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

/// Brunt–Väisälä (buoyancy) frequency, N² = (g/ρ)·dρ/dz: textbook physics.
///
/// From memory; checked against the exact Gibbs densities of gsw 3.6.23.
pub enum BruntVaisala {}

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
