//! Gross range: is this a temperature lake water can have at all?

use crate::analysis::Flag;
use crate::slack::more_than;

/// Limits of the gross range test, °C; a value on a limit passes it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Limits {
    /// Outside (lowest, highest): fail.
    pub fail_c: (f64, f64),
    /// Outside (lowest, highest): suspect.
    pub suspect_c: (f64, f64),
}

/// Limits for lakes: fail outside −0.5..40 °C, suspect outside 0..32 °C. A convention of ours.
pub const LAKE: Limits = Limits { fail_c: (-0.5, 40.0), suspect_c: (0.0, 32.0) };

/// Flag of one temperature; `None` and NaN are missing.
///
/// Source: [`Qartod2016`](crate::bibliography::Qartod2016).
///
/// ```
/// use layercast_core::{Flag, cast::gross_range::{LAKE, gross_range}};
/// assert_eq!(gross_range(Some(17.7), &LAKE), Flag::Pass);
/// assert_eq!(gross_range(Some(33.0), &LAKE), Flag::Suspect);
/// assert_eq!(gross_range(Some(177.0), &LAKE), Flag::Fail);
/// assert_eq!(gross_range(None, &LAKE), Flag::Missing);
/// ```
pub fn gross_range(temp_c: Option<f64>, limits: &Limits) -> Flag {
    let outside = |temp_c: f64, (low, high): (f64, f64)| more_than(low, temp_c) || more_than(temp_c, high);
    match temp_c {
        None => Flag::Missing,
        Some(t) if t.is_nan() => Flag::Missing,
        Some(t) if outside(t, limits.fail_c) => Flag::Fail,
        Some(t) if outside(t, limits.suspect_c) => Flag::Suspect,
        Some(_) => Flag::Pass,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(temp_c: f64, want: Flag) {
        assert_eq!(gross_range(Some(temp_c), &LAKE), want, "{temp_c} °C");
    }

    #[test]
    fn the_limits_themselves_pass() {
        check(0.0, Flag::Pass);
        check(32.0, Flag::Pass);
        check(-0.5, Flag::Suspect);
        check(40.0, Flag::Suspect);
        check(32.1, Flag::Suspect);
        check(40.1, Flag::Fail);
    }

    #[test]
    fn no_lake_is_that_warm() {
        check(177.0, Flag::Fail);
        check(68.4, Flag::Fail);
        check(f64::INFINITY, Flag::Fail);
    }

    #[test]
    fn a_probe_a_little_below_zero_is_only_suspect() {
        check(-0.3, Flag::Suspect);
        check(-1.8, Flag::Fail);
    }
}
