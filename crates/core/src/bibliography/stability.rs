//! Stability: buoyancy, work, wind.

/// Brunt–Väisälä (buoyancy) frequency, N² = (g/ρ)·dρ/dz: textbook physics.
///
/// From memory; checked against the exact (Gibbs) densities of an open library, named in the check table.
pub enum BruntVaisala {}

/// Vallentyne 1957, and Wetzel's textbook: relative thermal resistance to mixing, in units of the density difference
/// between 4 and 5 °C water.
///
/// From memory; the formula with 8·10⁻⁶ g cm⁻³ was read in an encyclopedia entry.
pub enum Vallentyne1957 {}

/// Volume between two contours as a frustum, h/3 (A₁ + A₂ + √(A₁A₂)): limnology manuals.
///
/// From memory; exact on a cone (checked).
pub enum Frustum {}

/// Schmidt 1928, Geogr. Annaler 10, 145–177: the work to mix a lake to one density.
///
/// Read: title; the formula from memory, checked on closed forms.
pub enum Schmidt1928 {}

/// Idso 1973, Limnol. Oceanogr. 18, 681–683: stability for each unit of surface area.
///
/// Read: title; the formula from memory, checked on closed forms.
pub enum Idso1973 {}

/// Simpson: potential energy anomaly of a water column.
///
/// From memory; the algebra was checked (for a box it is Schmidt stability over depth).
pub enum Simpson {}

/// Heat capacity of water at one atmosphere: IAPWS-95 through iapws 1.5.5 and CoolProp 8.0.0, 4.219·10⁶ J m⁻³ K⁻¹ at 0 °C to
/// 4.162·10⁶ at 30 °C.
///
/// Computed by those libraries.
pub enum HeatCapacity {}

/// Imberger & Patterson 1990, Adv. Appl. Mech. 27, 303–475: Wedderburn number and lake number.
///
/// Read: table of contents; the formulas from memory, checked on a closed form.
pub enum ImbergerPatterson1990 {}
