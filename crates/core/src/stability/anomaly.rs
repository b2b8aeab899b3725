//! Potential energy anomaly: work to mix a column, for each cubic metre of it.

/// Potential energy anomaly \[J m⁻³\] of a column of one square metre: φ = (g/H)∫(ρ − ρ̄)(z − H/2) dz, its Schmidt
/// stability over its depth.
///
/// * `schmidt_j_m2`: Schmidt stability of the *column*, not of a basin \[J m⁻²\]
/// * `depth_m`: depth of the column \[m\]
///
/// `None` where the depth is not more than nothing.
///
/// Source: [`Simpson`](crate::bibliography::Simpson).
///
/// ```
/// assert_eq!(layercast_core::stability::anomaly::anomaly_j_m3(244.0, 10.0), Some(24.4));
/// ```
pub fn anomaly_j_m3(schmidt_j_m2: f64, depth_m: f64) -> Option<f64> {
    let anomaly = schmidt_j_m2 / depth_m;
    (depth_m > 0.0 && anomaly.is_finite()).then_some(anomaly)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn without_depth_there_is_none() {
        assert_eq!(anomaly_j_m3(1.0, 0.0), None);
        assert_eq!(anomaly_j_m3(1.0, -2.0), None);
        assert_eq!(anomaly_j_m3(f64::NAN, 2.0), None);
        assert_eq!(anomaly_j_m3(-6.0, 3.0), Some(-2.0));
    }
}
