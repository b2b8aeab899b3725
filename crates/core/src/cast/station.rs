//! Readings of one leg gathered depth by depth: what stands above and below a reading.

use super::{Cast, Leg, Reading};
use crate::order::{sort_by, sort_numbers};

/// Depths closer than this are one depth, metres: unit conversions may differ in their last bits, cables do not.
pub(crate) const SAME_DEPTH_M: f64 = 1e-6;
/// No cast is deeper or starts higher than this, metres; such depths count as missing.
const UNREACHABLE_M: f64 = 20_000.0;

/// The reading's depth if it can be one.
pub(crate) fn depth_of(reading: &Reading) -> Option<f64> {
    (reading.depth_m.is_finite() && reading.depth_m.abs() <= UNREACHABLE_M).then_some(reading.depth_m)
}

/// The reading's temperature if it is a number and has a depth.
pub(crate) fn temp_of(reading: &Reading) -> Option<f64> {
    depth_of(reading).and(reading.temp_c).filter(|t| t.is_finite())
}

/// Readings of one leg at one depth.
pub(crate) struct Station {
    /// Indices into the cast's readings.
    pub members: Vec<usize>,
    /// Median of the members that may stand as a neighbour, °C; `None` where there is none.
    pub median_c: Option<f64>,
    /// The members that may stand as a neighbour, ascending.
    pub standing: Vec<usize>,
}

/// Stations of one leg, downward. `stands` says which readings may stand as a neighbour of others.
pub(crate) fn stations(cast: &Cast, leg: Leg, stands: &[bool]) -> Vec<Station> {
    let mut order: Vec<(f64, usize)> = (cast.readings.iter().enumerate())
        .filter(|(_, r)| r.leg == leg)
        .filter_map(|(i, r)| depth_of(r).map(|z| (z, i)))
        .collect();
    sort_by(&mut order, |a, b| a.0.total_cmp(&b.0));
    let same = |a: &(f64, usize), b: &(f64, usize)| b.0 - a.0 < SAME_DEPTH_M;
    order
        .chunk_by(same)
        .map(|group| {
            let members: Vec<usize> = group.iter().map(|(_, i)| *i).collect();
            let mut standing: Vec<usize> =
                members.iter().copied().filter(|i| stands.get(*i).copied().unwrap_or(false)).collect();
            sort_by(&mut standing, usize::cmp);
            let mut temps: Vec<f64> =
                standing.iter().filter_map(|i| cast.readings.get(*i).and_then(temp_of)).collect();
            Station { members, median_c: median(&mut temps), standing }
        })
        .collect()
}

/// Median; of an even number the mean of the two in the middle. Sorts its argument. `None` when empty.
pub(crate) fn median(values: &mut [f64]) -> Option<f64> {
    sort_numbers(values);
    let upper = *values.get(values.len() / 2)?;
    if values.len() % 2 == 1 {
        return Some(upper);
    }
    values.get(values.len() / 2 - 1).map(|lower| (lower + upper) / 2.0)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn median_of_even_and_odd() {
        assert_eq!(median(&mut []), None);
        assert_eq!(median(&mut [3.0]), Some(3.0));
        assert_eq!(median(&mut [3.0, 1.0]), Some(2.0));
        assert_eq!(median(&mut [9.0, 1.0, 2.0]), Some(2.0));
    }

    #[test]
    fn stations_are_per_leg_downward_and_merge_one_depth() {
        let reading = |depth_m, temp_c, leg| Reading { depth_m, temp_c, leg, switch: Default::default() };
        let cast = Cast {
            readings: vec![
                reading(1.0, Some(20.0), Leg::Down),
                reading(0.1 + 0.2, Some(21.0), Leg::Down),
                reading(0.3, Some(22.0), Leg::Down),
                reading(1.0, Some(5.0), Leg::Up),
                reading(f64::NAN, Some(5.0), Leg::Down),
                reading(2.0, None, Leg::Down),
            ],
            ..Cast::default()
        };
        let got = stations(&cast, Leg::Down, &[true; 6]);
        let medians: Vec<_> = got.iter().map(|s| s.median_c).collect();
        assert_eq!(medians, [Some(21.5), Some(20.0), None]);
    }
}
