//! Comparing two casts.

/// Jeffreys 1961, Theory of Probability, third edition: explanations weighed by the odds they give the readings, so that
/// one with more freedom must fit so much better; odds of ten to one are strong.
///
/// From memory.
pub enum Jeffreys1961 {}

/// Gill 1982, Atmosphere–Ocean Dynamics: vertical modes of internal waves, φ″ + (N²/c²) φ = 0.
///
/// From memory; the solver is checked on even stratification (a sine) and on two layers (a tent).
pub enum Gill1982 {}

/// Strong sun on a level surface at noon, about 1,000 W/m².
///
/// From memory.
pub enum StrongSun {}
