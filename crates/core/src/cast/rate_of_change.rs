//! Rate of change: does a series of one place jump faster than water can?
//!
//! For series in time (a probe left hanging, a bucket). Along a cast the depth changes from reading to reading, and a
//! thermocline is a jump for a good reason: the checks of a cast do not use it.

use crate::analysis::Flag;
use crate::slack::more_than;

/// Flags of one series in its order; `None` and NaN are missing.
///
/// * `samples`: time \[s\] and temperature \[°C\]
/// * `suspect_c_per_s`: faster than this is suspect \[°C per second\]; exactly this fast is not
/// * `fail_c_per_s`: faster than this fails, if given
///
/// |T_i − T_(i−1)|/dt flags the later sample. The first sample passes, and one after a missing one. Where time does not
/// go forward the sample is not evaluated.
///
/// Source: [`Qartod2016`](crate::bibliography::Qartod2016), as [`IoosQc`](crate::bibliography::IoosQc) codes it.
///
/// ```
/// use layercast_core::{Flag, cast::rate_of_change::rate_of_change_flags};
/// let series = [(0.0, Some(20.0)), (60.0, Some(20.1)), (120.0, Some(17.0))];
/// assert_eq!(rate_of_change_flags(&series, 0.01, Some(0.04)), [Flag::Pass, Flag::Pass, Flag::Fail]);
/// ```
pub fn rate_of_change_flags(
    samples: &[(f64, Option<f64>)],
    suspect_c_per_s: f64,
    fail_c_per_s: Option<f64>,
) -> Vec<Flag> {
    let mut before: Option<(f64, f64)> = None;
    (samples.iter())
        .map(|&(time_s, temp_c)| {
            let here = temp_c.filter(|t| !t.is_nan()).map(|t| (time_s, t));
            let flag = match (here, before) {
                (None, _) => Flag::Missing,
                (_, None) => Flag::Pass,
                (Some((now_s, now_c)), Some((then_s, then_c))) if now_s > then_s => {
                    let rate = (now_c - then_c).abs() / (now_s - then_s);
                    if fail_c_per_s.is_some_and(|limit| more_than(rate, limit)) {
                        Flag::Fail
                    } else if more_than(rate, suspect_c_per_s) {
                        Flag::Suspect
                    } else {
                        Flag::Pass
                    }
                }
                _ => Flag::NotEvaluated,
            };
            before = here;
            flag
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(samples: &[(f64, Option<f64>)], want: &str) {
        let got = rate_of_change_flags(samples, 0.01, Some(0.04));
        assert_eq!(got.iter().map(|f| char::from(b'0' + *f as u8)).collect::<String>(), want);
    }

    #[test]
    fn a_rate_of_just_the_limit_is_below_it() {
        check(&[(0.0, Some(20.0)), (10.0, Some(20.1)), (20.0, Some(19.7)), (30.0, Some(20.11))], "1134");
        check(&[(0.0, Some(20.0)), (10.0, Some(20.11))], "13");
        let no_fail = rate_of_change_flags(&[(0.0, Some(0.0)), (1.0, Some(9.0))], 0.01, None);
        assert_eq!(no_fail, [Flag::Pass, Flag::Suspect]);
    }

    #[test]
    fn after_a_gap_it_starts_anew() {
        check(&[(0.0, Some(20.0)), (10.0, None), (20.0, Some(10.0)), (30.0, Some(f64::NAN))], "1919");
    }

    #[test]
    fn time_that_does_not_go_forward_says_nothing() {
        check(&[(5.0, Some(20.0)), (5.0, Some(10.0)), (4.0, Some(9.0)), (f64::NAN, Some(9.0))], "1222");
        check(&[], "");
    }
}
