//! Spike: does a reading stick out from the ones above and below on the same leg?

use super::station::{Station, temp_of};
use super::{Cast, Reading};
use crate::analysis::Flag;
use crate::order::sort_by;
use crate::slack::more_than;

/// Thresholds of the spike test, °C; a spike of exactly this size does not reach the flag.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Thresholds {
    /// Beyond this: suspect.
    pub suspect_c: f64,
    /// Beyond this: fail.
    pub fail_c: f64,
}

/// For casts: suspect beyond 0.5 °C, fail beyond 1.0 °C. A convention of ours.
pub const LAKE: Thresholds = Thresholds { suspect_c: 0.5, fail_c: 1.0 };

/// How far `temp_c` sticks out from its two neighbours \[°C\]: the smaller of the two steps if they go opposite ways,
/// else 0. The shoulder of a sharp thermocline does not stick out.
///
/// Source: the spike test of [`Qartod2016`](crate::bibliography::Qartod2016), in our form for casts: the smaller step to the
/// two neighbours. [`IoosQc`](crate::bibliography::IoosQc) offers the same sum; the check table holds its flags.
pub fn spike_size_c(above_c: f64, temp_c: f64, below_c: f64) -> f64 {
    let (before, after) = (temp_c - above_c, below_c - temp_c);
    if before * after < 0.0 { before.abs().min(after.abs()) } else { 0.0 }
}

/// How far `temp_c` lies from the middle of its two neighbours \[°C\], the "average" form of the test.
///
/// Along a cast this blames both shoulders of a sharp thermocline and the good neighbours of a bad reading: the checks
/// of a cast use [`spike_size_c`]. It is here for series of one place.
///
/// Source: [`Qartod2016`](crate::bibliography::Qartod2016), as [`IoosQc`](crate::bibliography::IoosQc) codes it.
pub fn spike_from_middle_c(above_c: f64, temp_c: f64, below_c: f64) -> f64 {
    (temp_c - (above_c + below_c) / 2.0).abs()
}

/// Flags of one series in its order. The first and last value and those beside a missing one are not evaluated;
/// `None` and NaN are missing.
///
/// This is the published test as it stands. In it a good reading beside a bad one is flagged too wherever the water
/// itself changes by more than the threshold from reading to reading; the checks of a cast acquit those, see
/// [`checks`](crate::cast::checks::checks).
///
/// Source: [`Qartod2016`](crate::bibliography::Qartod2016).
///
/// ```
/// use layercast_core::{Flag, cast::spike::{LAKE, spike_flags}};
/// let flags = spike_flags(&[Some(20.0), Some(24.0), Some(19.9), Some(19.8)], &LAKE);
/// assert_eq!(flags, [Flag::NotEvaluated, Flag::Fail, Flag::Pass, Flag::NotEvaluated]);
/// ```
pub fn spike_flags(series: &[Option<f64>], thresholds: &Thresholds) -> Vec<Flag> {
    flags_by(spike_size_c, series, thresholds)
}

/// [`spike_flags`] by [`spike_from_middle_c`].
///
/// ```
/// use layercast_core::{Flag, cast::spike::{LAKE, spike_from_middle_flags}};
/// let shoulders = [20.0, 20.0, 18.0, 12.0, 8.0, 8.0].map(Some);
/// assert_eq!(spike_from_middle_flags(&shoulders, &LAKE)[4], Flag::Fail, "a good reading: not for casts");
/// ```
pub fn spike_from_middle_flags(series: &[Option<f64>], thresholds: &Thresholds) -> Vec<Flag> {
    flags_by(spike_from_middle_c, series, thresholds)
}

fn flags_by(size_c: fn(f64, f64, f64) -> f64, series: &[Option<f64>], thresholds: &Thresholds) -> Vec<Flag> {
    let value = |i: Option<usize>| i.and_then(|i| series.get(i).copied().flatten()).filter(|t| !t.is_nan());
    (0..series.len())
        .map(|i| match (value(i.checked_sub(1)), value(Some(i)), value(i.checked_add(1))) {
            (_, None, _) => Flag::Missing,
            (Some(above), Some(temp), Some(below)) => flag(size_c(above, temp, below), thresholds),
            _ => Flag::NotEvaluated,
        })
        .collect()
}

fn flag(size_c: f64, thresholds: &Thresholds) -> Flag {
    if more_than(size_c, thresholds.fail_c) {
        Flag::Fail
    } else if more_than(size_c, thresholds.suspect_c) {
        Flag::Suspect
    } else {
        Flag::Pass
    }
}

/// The spike test's word on one reading of a cast.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Spike {
    /// Index into the cast's readings.
    pub reading: usize,
    /// Flag, after those acquitted that only stand beside a worse one.
    pub flag: Flag,
    /// Neighbours it was judged against, °C.
    pub neighbours_c: Option<(f64, f64)>,
}

/// Spikes along one leg. The published test first; then, worst first, every flagged reading is judged once more with
/// the worse ones taken out, and the milder verdict holds. Equal ones are judged side by side: both stay flagged.
pub(crate) fn spikes(cast: &Cast, stations: &[Station], thresholds: &Thresholds) -> Vec<Spike> {
    let mut ring = Neighbours::new(stations);
    let mut all = Vec::new();
    let mut flagged: Vec<(f64, usize, usize)> = Vec::new(); // size, station, place in `all`
    for (at, station) in stations.iter().enumerate() {
        for &reading in &station.members {
            let Some(temp_c) = cast.readings.get(reading).and_then(|r: &Reading| temp_of(r)) else {
                continue;
            };
            let neighbours_c = ring.around(at);
            let size_c = neighbours_c.map(|(above, below)| spike_size_c(above, temp_c, below));
            let verdict = size_c.map_or(Flag::NotEvaluated, |size| flag(size, thresholds));
            if let Some(size) = size_c.filter(|_| verdict >= Flag::Suspect) {
                flagged.push((size, at, all.len()));
            }
            all.push(Spike { reading, flag: verdict, neighbours_c });
        }
    }
    sort_by(&mut flagged, |a, b| b.0.total_cmp(&a.0).then(a.2.cmp(&b.2)));
    // Equal sizes are judged together: where two neighbours stick out alike, nothing says which of them is wrong.
    for alike in flagged.chunk_by(|a, b| !more_than(a.0, b.0)) {
        let mut out: Vec<(usize, usize)> = Vec::new();
        for &(size_c, at, place) in alike {
            let Some(spike) = all.get_mut(place) else { continue };
            let Some(temp_c) = cast.readings.get(spike.reading).and_then(temp_of) else { continue };
            spike.neighbours_c = ring.around(at);
            spike.flag = match spike.neighbours_c {
                None => Flag::NotEvaluated,
                Some((above, below)) => flag(size_c.min(spike_size_c(above, temp_c, below)), thresholds),
            };
            if spike.flag >= Flag::Suspect {
                out.push((at, spike.reading));
            }
        }
        out.into_iter().for_each(|(at, reading)| ring.sticks_out(at, reading));
    }
    all
}

/// Medians of the stations above and below, as stations are taken out one by one.
struct Neighbours<'a> {
    stations: &'a [Station],
    above: Vec<Option<usize>>,
    below: Vec<Option<usize>>,
    /// How many members of each station still stand.
    standing: Vec<usize>,
}

impl<'a> Neighbours<'a> {
    fn new(stations: &'a [Station]) -> Self {
        let n = stations.len();
        Self {
            stations,
            above: (0..n).map(|i| i.checked_sub(1)).collect(),
            below: (0..n).map(|i| Some(i + 1).filter(|j| *j < n)).collect(),
            standing: stations.iter().map(|s| s.standing.len()).collect(),
        }
    }

    fn around(&self, at: usize) -> Option<(f64, f64)> {
        let median = |links: &[Option<usize>]| {
            self.stations.get(links.get(at).copied().flatten()?).and_then(|s| s.median_c)
        };
        Some((median(&self.above)?, median(&self.below)?))
    }

    /// A member sticks out; when the last one does, the station is no neighbour any more.
    fn sticks_out(&mut self, at: usize, reading: usize) {
        if self.stations.get(at).is_none_or(|s| s.standing.binary_search(&reading).is_err()) {
            return;
        }
        if let Some(left) = self.standing.get_mut(at) {
            *left = left.saturating_sub(1);
            if *left == 0 {
                self.take_out(at);
            }
        }
    }

    fn take_out(&mut self, at: usize) {
        let up = self.above.get(at).copied().flatten();
        let down = self.below.get(at).copied().flatten();
        if let Some(link) = up.and_then(|i| self.below.get_mut(i)) {
            *link = down;
        }
        if let Some(link) = down.and_then(|i| self.above.get_mut(i)) {
            *link = up;
        }
    }
}

#[cfg(test)]
mod tests {
    use super::super::station::stations;
    use super::*;
    use crate::cast::Leg;

    /// Flags along one leg, a reading every 0.1 m, as digits.
    #[track_caller]
    fn check(temps_c: &[f64], want: &str) {
        let cast = Cast {
            readings: (temps_c.iter().enumerate())
                .map(|(i, t)| Reading {
                    depth_m: i as f64 * 0.1,
                    temp_c: Some(*t),
                    leg: Leg::Down,
                    switch: Default::default(),
                })
                .collect(),
            ..Cast::default()
        };
        let stands = vec![true; temps_c.len()];
        let got = spikes(&cast, &stations(&cast, Leg::Down, &stands), &LAKE);
        let digits: String = got.iter().map(|s| char::from(b'0' + s.flag as u8)).collect();
        assert_eq!(digits, want);
    }

    #[test]
    fn a_lone_spike_is_flagged_by_its_size() {
        check(&[20.0, 20.0, 20.6, 20.0, 20.0], "21312");
        check(&[20.0, 20.0, 21.2, 20.0, 20.0], "21412");
        check(&[20.0, 20.0, 20.5, 20.0, 20.0], "21112");
    }

    #[test]
    fn a_good_reading_on_a_steep_stretch_is_not_blamed_for_the_spike_beside_it() {
        check(&[21.3, 19.4, 28.0, 14.6, 13.1], "21412");
        let alone = spike_flags(&[Some(21.3), Some(19.4), Some(28.0), Some(14.6), Some(13.1)], &LAKE);
        assert_eq!(alone.get(1), Some(&Flag::Fail), "the published test alone blames 19.4");
    }

    #[test]
    fn of_two_that_stick_out_alike_neither_is_acquitted() {
        check(&[21.9, 21.7, 17.9, 20.0, 9.0, 8.5], "214412");
    }

    #[test]
    fn two_spikes_side_by_side_are_both_found() {
        check(&[20.0, 20.0, 25.0, 15.5, 20.0, 20.0], "214412");
    }

    #[test]
    fn a_depth_read_again_stays_a_neighbour_while_one_of_its_readings_stands() {
        let rows =
            [(0.0, 20.0), (1.0, 22.5), (2.0, 20.0), (2.0, 20.2), (2.0, 39.0), (3.0, 25.0), (4.0, 25.0)];
        let readings = rows.map(|(depth_m, t)| Reading {
            depth_m,
            temp_c: Some(t),
            leg: Leg::Down,
            switch: Default::default(),
        });
        let cast = Cast { readings: readings.to_vec(), ..Cast::default() };
        let got = spikes(&cast, &stations(&cast, Leg::Down, &[true; 7]), &LAKE);
        assert_eq!(got.get(1).map(|s| s.flag), Some(Flag::Fail), "22.5 over 20.2, whatever 39.0 says");
    }

    #[test]
    fn shoulders_of_a_sharp_thermocline_are_no_spikes() {
        check(&[20.0, 20.0, 19.8, 16.0, 11.0, 9.0, 8.5], "2111112");
    }

    #[test]
    fn a_zigzag_of_a_hundred_thousand_readings_is_quick() {
        let temps_c: Vec<f64> = (0..100_000).map(|i| if i % 2 == 0 { 10.0 } else { 20.0 }).collect();
        let want = |i: usize| if i == 0 || i == 99_999 { '2' } else { '4' };
        check(&temps_c, &(0..100_000).map(want).collect::<String>());
    }
}
