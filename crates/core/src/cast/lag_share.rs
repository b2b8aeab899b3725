//! How much of each step a slow probe still had to go when it was read: told from the way down and the way up.

use super::checks::checks;
use super::station::{SAME_DEPTH_M, stations, temp_of};
use super::{Cast, Leg};
use crate::slack::{at_least, more_than};

/// The estimate is never larger than this.
pub const MOST: f64 = 0.95;
/// Where the water changes by less than this from the stop above to the stop below, °C, the legs need not show a lag.
pub const CHANGES_C: f64 = 0.5;
/// Legs may differ the wrong way round by this much, °C, before the sign is against lag: a good pair (methods 3.2).
pub const AGAINST_C: f64 = 0.2;

/// What the legs of a cast say of the probe's lag.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct LagEstimate {
    /// Share of each step left over when the probe was read: exp(−wait/tau), 0 to 0.95.
    pub r: f64,
    /// Depths it was told from: those read both ways, with a stop before them on either way.
    pub depths: usize,
    /// Whether the legs differ the way a slow probe makes them: warmer on the way down wherever it cools with depth.
    pub sign_fits: bool,
    /// Root mean square of down − up at those depths as read, °C.
    pub apart_c: f64,
    /// The same once both legs are corrected with `r`, °C.
    pub apart_after_c: f64,
}

/// Tells the share left over from the legs: with the same wait at each stop a probe reads m_k = a_k + r (m_(k−1) − a_k),
/// k−1 the stop before it in time; `r` is the value from 0 to 0.95 for which the legs, each corrected by
/// a_k = (m_k − r m_(k−1))/(1 − r), agree best (least squares over the stops both see).
///
/// Exact without noise; noise makes it come out smaller. A moved boat or water that warmed between the legs separates
/// them too, and one that moved the right way cannot be told from lag. The sign fits when over all stops the legs
/// differ that way, and nowhere by more than 0.2 °C the other way where the water changes by at least 0.5 °C from the
/// stop above to the stop below (conventions of ours); in water that changes nowhere so much it does not fit.
///
/// Stops of a leg are taken in the order a cable passes them, whatever order they were written in. A stop whose reading
/// is left out by the checks or a person says nothing of the next one; an empty cell was no stop. The first stop of each
/// way has none before it. `None` when no depth was read both ways with a stop before it on either way.
///
/// Source: the idea of closing down- and up-cast curves, [`Morison1994`](crate::bibliography::Morison1994).
pub fn lag_share(cast: &Cast) -> Option<LagEstimate> {
    let used: Vec<bool> = checks(cast).iter().map(|c| c.used).collect();
    estimate(&stops(cast, Leg::Down, &used), &stops(cast, Leg::Up, &used))
}

/// Readings of one leg at one stop.
pub(crate) struct Stop {
    depth_m: f64,
    /// Median of the used readings, °C; `None` when what was read is left out.
    value_c: Option<f64>,
    /// Used readings.
    pub readings: Vec<usize>,
}

/// Stops of one leg in the order of time.
pub(crate) fn stops(cast: &Cast, leg: Leg, used: &[bool]) -> Vec<Stop> {
    let mut stops: Vec<Stop> = (stations(cast, leg, used).into_iter())
        .filter_map(|station| {
            let members = || station.members.iter().filter_map(|i| cast.readings.get(*i));
            members().find(|r| temp_of(r).is_some())?;
            let depth_m = members().next()?.depth_m;
            Some(Stop { depth_m, value_c: station.median_c, readings: station.standing })
        })
        .collect();
    if leg == Leg::Up {
        stops.reverse();
    }
    stops
}

/// Each stop with its value and that of the stop before it in time, °C; those without are left out.
pub(crate) fn with_before(stops: &[Stop]) -> impl DoubleEndedIterator<Item = (&Stop, f64, f64)> {
    (stops.iter().zip(stops.iter().skip(1)))
        .filter_map(|(before, stop)| Some((stop, stop.value_c?, before.value_c?)))
}

pub(crate) fn estimate(down: &[Stop], up: &[Stop]) -> Option<LagEstimate> {
    // At each depth seen both ways: down − up, and the same of the stops before.
    let mut apart: Vec<(f64, f64)> = Vec::new();
    let mut ups = with_before(up).rev().peekable();
    for (stop, down_c, down_before_c) in with_before(down) {
        while ups.next_if(|(other, ..)| other.depth_m <= stop.depth_m - SAME_DEPTH_M).is_some() {}
        if let Some((_, up_c, up_before_c)) =
            ups.next_if(|(other, ..)| other.depth_m < stop.depth_m + SAME_DEPTH_M)
        {
            apart.push((down_c - up_c, down_before_c - up_before_c));
        }
    }
    if apart.is_empty() {
        return None;
    }
    // Corrected they differ by (d − r p)/(1 − r) = p + (d − p)/(1 − r): least squares of a straight line in 1/(1 − r).
    let sum = |f: &dyn Fn(f64, f64) -> f64| apart.iter().map(|(d, p)| f(*d, *p)).sum::<f64>();
    let (down_hill, across) = (sum(&|d, p| (d - p) * (d - p)), -sum(&|d, p| p * (d - p)));
    let swell = if down_hill > 0.0 { (across / down_hill).clamp(1.0, 1.0 / (1.0 - MOST)) } else { 1.0 };
    let changes = |p: f64| at_least(p.abs(), CHANGES_C);
    let against = |d: f64, p: f64| changes(p) && more_than(-d * p.signum(), AGAINST_C);
    let mean_square = |f: &dyn Fn(f64, f64) -> f64| (sum(f) / apart.len() as f64).sqrt();
    Some(LagEstimate {
        r: 1.0 - 1.0 / swell,
        depths: apart.len(),
        sign_fits: apart.iter().any(|(_, p)| changes(*p))
            && sum(&|d, p| d * p) > 0.0
            && !apart.iter().any(|(d, p)| against(*d, *p)),
        apart_c: mean_square(&|d, _| d * d),
        apart_after_c: mean_square(&|d, p| (p + (d - p) * swell) * (p + (d - p) * swell)),
    })
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::cast::{Reading, Switch};

    const WATER_C: [f64; 7] = [21.0, 20.9, 19.8, 15.0, 11.0, 9.5, 9.0];

    /// What a probe with `r` left at each stop writes down on both ways, a stop every metre.
    fn slow(water_c: &[f64], r: f64) -> Cast {
        let mut probe_c = water_c.first().copied().unwrap_or_default();
        let order: Vec<usize> = (0..water_c.len()).chain((0..water_c.len()).rev()).collect();
        let readings = (order.into_iter().enumerate())
            .map(|(n, i)| {
                probe_c = water_c[i] + r * (probe_c - water_c[i]);
                let leg = if n < water_c.len() { Leg::Down } else { Leg::Up };
                Reading { depth_m: i as f64, temp_c: Some(probe_c), leg, switch: Switch::Auto }
            })
            .collect();
        Cast { readings, digit_c: 0.0, bed_m: None }
    }

    #[track_caller]
    fn check(cast: &Cast, r: f64, depths: usize, sign_fits: bool) {
        let got = lag_share(cast).expect("an estimate");
        assert!((got.r - r).abs() < 1e-9, "{got:?}");
        assert_eq!((got.depths, got.sign_fits), (depths, sign_fits), "{got:?}");
    }

    #[test]
    fn the_share_that_was_put_in_comes_out() {
        for r in [0.05, 0.3, 0.5, 0.8] {
            check(&slow(&WATER_C, r), r, 5, true);
            assert!(lag_share(&slow(&WATER_C, r)).unwrap().apart_after_c < 1e-9);
        }
        check(&slow(&[1.0, 1.2, 2.5, 3.6, 4.0], 0.3), 0.3, 3, true);
    }

    #[test]
    fn the_order_of_writing_does_not_matter() {
        let mut cast = slow(&WATER_C, 0.3);
        cast.readings.sort_by(|a, b| a.depth_m.total_cmp(&b.depth_m));
        check(&cast, 0.3, 5, true);
    }

    #[test]
    fn no_lag_is_zero_and_fits_nothing() {
        check(&slow(&WATER_C, 0.0), 0.0, 5, false);
    }

    #[test]
    fn legs_that_differ_by_one_offset_are_no_lag() {
        let mut cast = slow(&WATER_C, 0.0);
        cast.readings.iter_mut().filter(|r| r.leg == Leg::Up).for_each(|r| {
            r.temp_c = r.temp_c.map(|t| t - 0.3);
        });
        let got = lag_share(&cast).unwrap();
        assert!(got.r < 0.1, "{got:?}");
        assert!((got.apart_c - 0.3).abs() < 1e-9);
    }

    #[test]
    fn colder_on_the_way_down_is_the_wrong_sign() {
        let mut cast = slow(&WATER_C, 0.3);
        cast.readings.iter_mut().for_each(|r| r.leg = if r.leg == Leg::Up { Leg::Down } else { Leg::Up });
        let got = lag_share(&cast).unwrap();
        assert!(!got.sign_fits && got.r == 0.0, "{got:?}");
    }

    #[test]
    fn one_steep_stop_against_lag_is_enough() {
        let mut cast = slow(&WATER_C, 0.1);
        let down_at_3 = cast.readings.iter_mut().find(|r| r.leg == Leg::Down && r.depth_m == 3.0).unwrap();
        down_at_3.temp_c = Some(14.0);
        assert!(!lag_share(&cast).unwrap().sign_fits);
    }

    #[test]
    fn a_reading_left_out_says_nothing_of_the_next_and_an_empty_cell_was_no_stop() {
        let mut cast = slow(&WATER_C, 0.3);
        cast.readings[2].switch = Switch::Off; // down at 2 m: 2 m has no pair, 3 m no stop before it
        check(&cast, 0.3, 3, true);
        let mut cast = slow(&WATER_C, 0.3);
        cast.readings[0].temp_c = None; // the first stop is then that at 1 m
        check(&cast, 0.3, 4, true);
    }

    #[test]
    fn nothing_to_tell_it_from() {
        assert_eq!(lag_share(&Cast::default()), None);
        assert_eq!(lag_share(&slow(&[20.0, 10.0], 0.3)), None);
        let mut cast = slow(&WATER_C, 0.3);
        cast.readings.iter_mut().for_each(|r| r.leg = Leg::Unknown);
        assert_eq!(lag_share(&cast), None);
    }
}
