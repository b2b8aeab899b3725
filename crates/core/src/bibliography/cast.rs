//! Readings: checks, duplicates, field limits, lag, cables.

/// US Geological Survey, National Field Manual, chapters A6.1 (temperature, 2024) and A6.8: °F = 1.8 °C + 32, sensors
/// within ±0.2 °C; memorandum 79.16 (1979): field thermometers within ±0.5 °C.
///
/// Read as verbatim quotations held in a public repository.
pub enum UsgsField {}

/// U.S. Integrated Ocean Observing System: "Manual for Real-Time Quality Control of In-situ Temperature and Salinity
/// Data", version 2.0, January 2016, doi 10.7289/V5V40SD4 (QARTOD).
///
/// Read: title pages; the tests themselves as a public library codes them, see [`IoosQc`]. Which form of the spike test a cast
/// takes (the smaller step to the two neighbours) and its limits are our choice.
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

/// Morison, Andersen, Larson, D'Asaro, Boyd 1994, J. Atmos. Oceanic Technol. 11, 1151–1164: choosing lag constants so that
/// down- and up-cast curves close. Likewise Lueck & Picklo 1990, and Horne & Toole 1980, J. Phys. Oceanogr. 10, 1122–1130.
///
/// Read: abstract of the first, titles of the others.
pub enum Morison1994 {}

/// GLOBE Program: a thermometer in stirred ice water must read −0.5..0.5 °C; three separate measurements.
///
/// Read: protocol training slides and questions.
pub enum Globe {}

/// ISO 5725-6: repeatability limit 1.96·√2·s, within which 95 % of pairs lie.
///
/// From memory.
pub enum Iso5725 {}

/// Snedecor & Cochran 1967: standard deviation from the mean range of two, 0.886 R.
///
/// Read: in a statistics appendix that quotes it.
pub enum Snedecor1967 {}
