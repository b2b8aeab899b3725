//! Flat line: has a sensor stuck?
//!
//! For series in time. Along a cast a mixed layer is flat for a good reason: the checks of a cast do not use it.

use super::station::median;
use crate::analysis::Flag;
use crate::slack::more_than;
use std::collections::VecDeque;

/// Flags of one series in its order; `None` and NaN are missing.
///
/// * `samples`: time \[s\] and temperature \[°C\]
/// * `suspect_s`, `fail_s`: flat for this long is suspect, fails \[s\]
/// * `tolerance_c`: flat is a range *below* this \[°C\]: a tolerance of 0 never flags, even a stuck sensor
///
/// Over the int(duration/median time step) + 1 samples that end at the sample: flagged when the largest less the smallest
/// stays below the tolerance. A sample with fewer before it, or a missing one among them, passes. Without a median time
/// step above 0 nothing is evaluated.
///
/// Source: [`Qartod2016`](crate::bibliography::Qartod2016), as [`IoosQc`](crate::bibliography::IoosQc) codes it.
///
/// ```
/// use layercast_core::{Flag, cast::flat_line::flat_line_flags};
/// let stuck = [0.0, 60.0, 120.0, 180.0].map(|time_s| (time_s, Some(20.0)));
/// let flags = flat_line_flags(&stuck, 60.0, 180.0, 0.01);
/// assert_eq!(flags, [Flag::Pass, Flag::Suspect, Flag::Suspect, Flag::Fail]);
/// ```
pub fn flat_line_flags(
    samples: &[(f64, Option<f64>)],
    suspect_s: f64,
    fail_s: f64,
    tolerance_c: f64,
) -> Vec<Flag> {
    let value = |sample: &(f64, Option<f64>)| sample.1.filter(|t| !t.is_nan());
    let mut waits: Vec<f64> = samples.iter().zip(samples.iter().skip(1)).map(|(a, b)| b.0 - a.0).collect();
    let Some(step_s) = median(&mut waits).filter(|s| *s > 0.0 && s.is_finite()) else {
        let unless_missing = |s| if value(s).is_some() { Flag::NotEvaluated } else { Flag::Missing };
        return samples.iter().map(unless_missing).collect();
    };
    let series: Vec<Option<f64>> = samples.iter().map(value).collect();
    // A float becomes a whole number by dropping what is behind the point; too large or no number, by the nearest or 0.
    let length = |duration_s: f64| ((duration_s / step_s) as usize).saturating_add(1);
    let flat = |duration_s| {
        ranges_c(&series, length(duration_s)).into_iter().map(|range_c| more_than(tolerance_c, range_c))
    };
    (series.iter().zip(flat(suspect_s).zip(flat(fail_s))))
        .map(|(value, flat)| match (value, flat) {
            (None, _) => Flag::Missing,
            (_, (_, true)) => Flag::Fail,
            (_, (true, false)) => Flag::Suspect,
            _ => Flag::Pass,
        })
        .collect()
}

/// Largest less smallest of the `length` values that end at each, infinite where they are not all there.
fn ranges_c(series: &[Option<f64>], length: usize) -> Vec<f64> {
    // Values that may yet be the largest (smallest) of a window, with their places, falling (rising).
    let (mut highs, mut lows) = (VecDeque::new(), VecDeque::new());
    let mut unbroken = 0_usize;
    (series.iter().enumerate())
        .map(|(place, value)| {
            let Some(value) = *value else {
                unbroken = 0;
                highs.clear();
                lows.clear();
                return f64::INFINITY;
            };
            unbroken += 1;
            let high = slide(&mut highs, place, value, length, |kept, new| kept > new);
            let low = slide(&mut lows, place, value, length, |kept, new| kept < new);
            if unbroken >= length { high - low } else { f64::INFINITY }
        })
        .collect()
}

/// Puts a value into the window that ends at its place and returns the window's extreme.
fn slide(
    window: &mut VecDeque<(usize, f64)>,
    place: usize,
    value: f64,
    length: usize,
    stands: fn(f64, f64) -> bool,
) -> f64 {
    while window.back().is_some_and(|(_, kept)| !stands(*kept, value)) {
        window.pop_back();
    }
    window.push_back((place, value));
    while window.front().is_some_and(|(first, _)| first.saturating_add(length) <= place) {
        window.pop_front();
    }
    window.front().map_or(value, |(_, extreme)| *extreme)
}

#[cfg(test)]
mod tests {
    use super::*;

    /// A value a minute; suspect after 2, fails after 4.
    #[track_caller]
    fn check(temps_c: &[Option<f64>], tolerance_c: f64, want: &str) {
        let samples: Vec<(f64, Option<f64>)> =
            temps_c.iter().enumerate().map(|(i, t)| (60.0 * i as f64, *t)).collect();
        let got = flat_line_flags(&samples, 120.0, 240.0, tolerance_c);
        assert_eq!(got.iter().map(|f| char::from(b'0' + *f as u8)).collect::<String>(), want);
    }

    #[test]
    fn a_range_of_just_the_tolerance_is_not_flat() {
        check(&[20.0, 20.01, 20.0, 20.0, 20.0, 20.0].map(Some), 0.01, "111133");
        check(&[20.0, 20.01, 20.0, 20.0, 20.0, 20.0].map(Some), 0.011, "113344");
        check(&[20.0; 6].map(Some), 0.0, "111111");
    }

    #[test]
    fn a_slow_rise_is_seen_over_the_whole_window() {
        check(&[20.0, 20.1, 20.2, 20.3, 20.4, 20.5].map(Some), 0.25, "113333");
        check(&[20.5, 20.4, 20.3, 20.2, 20.1, 20.0].map(Some), 0.25, "113333");
    }

    #[test]
    fn a_missing_value_breaks_the_window() {
        let t = Some(20.0);
        check(&[t, t, t, None, t, t, t], 0.01, "1139113");
        check(&[t, t, t, Some(f64::NAN), t, t, t], 0.01, "1139113");
    }

    #[test]
    fn without_time_nothing_is_said() {
        let flags = |times: [f64; 3]| flat_line_flags(&times.map(|s| (s, Some(20.0))), 1.0, 2.0, 0.1);
        assert_eq!(flags([0.0, 0.0, 0.0]), [Flag::NotEvaluated; 3]);
        assert_eq!(flags([2.0, 1.0, 0.0]), [Flag::NotEvaluated; 3]);
        assert_eq!(flags([f64::NAN, 1.0, 2.0]).len(), 3);
        assert_eq!(flat_line_flags(&[(0.0, None)], 1.0, 2.0, 0.1), [Flag::Missing]);
        assert!(flat_line_flags(&[], 1.0, 2.0, 0.1).is_empty());
        let wild = flat_line_flags(&[(0.0, Some(1.0)), (1.0, Some(1.0))], f64::NAN, f64::INFINITY, 0.1);
        assert_eq!(wild, [Flag::Suspect, Flag::Suspect], "no duration is one sample long");
    }

    #[test]
    fn a_million_samples_over_a_long_window_are_quick() {
        let samples: Vec<(f64, Option<f64>)> =
            (0..1_000_000).map(|i| (f64::from(i), Some(20.0 + f64::from(i % 7)))).collect();
        let got = flat_line_flags(&samples, 300_000.0, 500_000.0, 6.5);
        assert_eq!((got[299_999], got[300_000], got[500_000]), (Flag::Pass, Flag::Suspect, Flag::Fail));
    }
}
