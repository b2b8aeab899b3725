//! The profile: one value per depth from the readings that are used.

use super::pairs::pairs;
use super::station::{SAME_DEPTH_M, depth_of, temp_of};
use super::{Cast, Leg};
use crate::analysis::{Checked, Level, Pairs};
use crate::order::sort_by;
use crate::water::density::{Density, density_kg_m3};

impl Level {
    /// A level known only by its depth \[m\], temperature \[°C\] and the standard deviation of that \[°C\]: for a bare
    /// rule on a bare table. Read once; its density is that of fresh water by the class's own formula, whatever the
    /// method, for a table says nothing of salt. In salty water:
    ///
    /// ```
    /// use layercast_core::{Density, Level};
    /// let brackish = Density::TanakaSalt { salinity: 5.0 };
    /// let level = Level { density: brackish.kg_m3(12.0), ..Level::bare(1.0, 12.0, 0.1) };
    /// assert!(level.density - Level::bare(1.0, 12.0, 0.1).density > 3.0);
    /// ```
    pub fn bare(depth_m: f64, temp_c: f64, sd_c: f64) -> Self {
        Self { depth_m, temp_c, sd_c, density: density_kg_m3(temp_c), legs: 1, down_c: None, up_c: None }
    }
}

/// Means of the used readings, depths strictly increasing, with the agreement of the legs.
///
/// Readings of one depth are averaged leg by leg, then the legs: a leg read three times weighs no more than the other.
/// The standard deviation of a value is s/√(legs), repeats on one leg not counted, s from [`pairs`] with its floors
/// (a convention of ours). Depths closer than 1 µm are one.
///
/// * `checked`: the checks of the same cast; readings it does not use are left out
///
/// Densities by the class's own formula; [`profile_by`] takes another.
pub fn profile(cast: &Cast, checked: &[Checked]) -> (Vec<Level>, Pairs) {
    profile_by(cast, checked, Density::default())
}

/// [`profile`] with the densities of a formula.
pub fn profile_by(cast: &Cast, checked: &[Checked], density: Density) -> (Vec<Level>, Pairs) {
    let mut used: Vec<(f64, f64, Leg)> = (cast.readings.iter().zip(checked))
        .filter(|(_, c)| c.used)
        .filter_map(|(r, _)| Some((depth_of(r)?, temp_of(r)?, r.leg)))
        .collect();
    // By value too, so that the order in which readings were written cannot move the last bit of a mean.
    sort_by(&mut used, |a, b| a.0.total_cmp(&b.0).then(a.2.cmp(&b.2)).then(a.1.total_cmp(&b.1)));
    let same = |a: &(f64, f64, Leg), b: &(f64, f64, Leg)| b.0 - a.0 < SAME_DEPTH_M;
    let mut levels: Vec<Level> = used.chunk_by(same).filter_map(|group| level(group, density)).collect();
    let differences: Vec<f64> = levels.iter().filter_map(|l| Some(l.down_c? - l.up_c?)).collect();
    let agreement = pairs(&differences, cast.digit_c);
    for level in &mut levels {
        level.sd_c = agreement.s_used_c / f64::from(level.legs.max(1)).sqrt();
    }
    (levels, agreement)
}

fn level(group: &[(f64, f64, Leg)], density: Density) -> Option<Level> {
    let mean = |leg: Leg| {
        let (sum, n) = (group.iter().filter(|g| g.2 == leg)).fold((0.0, 0.0), |(s, n), g| (s + g.1, n + 1.0));
        (n > 0.0).then(|| sum / n)
    };
    let (down_c, up_c) = (mean(Leg::Down), mean(Leg::Up));
    let legs: Vec<f64> = [down_c, up_c, mean(Leg::Unknown)].into_iter().flatten().collect();
    let temp_c = legs.iter().sum::<f64>() / legs.len() as f64;
    let depth_m = group.first()?.0;
    let legs = u8::try_from(legs.len().min(2)).unwrap_or(2);
    Some(Level { depth_m, temp_c, sd_c: 0.0, density: density.kg_m3(temp_c), legs, down_c, up_c })
}

#[cfg(test)]
mod tests {
    use super::super::checks::checks;
    use super::*;
    use crate::cast::{Reading, Switch};

    #[track_caller]
    fn check(rows: &[(f64, f64, Leg)], want: &[(f64, f64, u8)]) -> Pairs {
        let readings = rows
            .iter()
            .map(|(depth_m, t, leg)| Reading {
                depth_m: *depth_m,
                temp_c: Some(*t),
                leg: *leg,
                switch: Switch::Auto,
            })
            .collect();
        let cast = Cast { readings, digit_c: 0.1, bed_m: None };
        let (levels, pairs) = profile(&cast, &checks(&cast));
        let got: Vec<(f64, f64, u8)> = levels.iter().map(|l| (l.depth_m, l.temp_c, l.legs)).collect();
        assert_eq!(got, want);
        pairs
    }

    use Leg::{Down, Unknown, Up};

    #[test]
    fn two_legs_are_averaged_and_told_apart() {
        let pairs = check(
            &[(0.0, 20.0, Down), (1.0, 19.0, Down), (1.0, 18.5, Up)],
            &[(0.0, 20.0, 1), (1.0, 18.75, 2)],
        );
        assert_eq!((pairs.count, pairs.mean_c), (1, Some(0.5)));
    }

    #[test]
    fn a_leg_read_three_times_weighs_no_more() {
        check(
            &[(1.0, 20.0, Down), (1.0, 20.25, Down), (1.0, 19.75, Down), (1.0, 19.0, Up)],
            &[(1.0, 19.5, 2)],
        );
    }

    #[test]
    fn order_of_writing_does_not_matter() {
        check(
            &[(2.0, 9.0, Unknown), (0.0, 20.0, Unknown), (1.0, 15.0, Unknown)],
            &[(0.0, 20.0, 1), (1.0, 15.0, 1), (2.0, 9.0, 1)],
        );
    }

    #[test]
    fn depths_that_differ_in_the_last_bit_are_one() {
        check(&[(0.3, 20.0, Down), (0.1 + 0.2, 19.0, Up)], &[(0.3, 19.5, 2)]);
    }

    #[test]
    fn nothing_used_gives_nothing() {
        check(&[], &[]);
        check(&[(1.0, 99.0, Down)], &[]);
    }
}
