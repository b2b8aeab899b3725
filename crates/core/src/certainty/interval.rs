//! The interval rule: how sure a depth is that is known only to lie in an interval.

/// Half width \[m\] and standard uncertainty \[m\] of the middle of an interval of `height_m` \[m\]: h/2 and h/√12, the
/// rectangular distribution (methods 8.1).
///
/// NaN gives NaN. Source: [`Gum`](crate::bibliography::Gum).
///
/// ```
/// let (half_m, u_m) = layercast_core::certainty::interval::interval_rule_m(0.5);
/// assert!(half_m == 0.25 && (u_m - 0.1443).abs() < 1e-4);
/// ```
pub fn interval_rule_m(height_m: f64) -> (f64, f64) {
    (height_m / 2.0, height_m / 12_f64.sqrt())
}
