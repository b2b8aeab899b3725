//! Density inversion along a leg: does heavier water lie on lighter?

use super::Cast;
use super::station::{Station, temp_of};
use crate::analysis::Flag;
use crate::slack::more_than;
use crate::water::density::Density;

/// Fall of density from a reading to the next deeper one beyond which both are suspect, kg m⁻³.
pub const SUSPECT_KG_M3: f64 = 0.01;
/// Fall of density beyond which both fail, kg m⁻³ (the figure of [`Argo`](crate::bibliography::Argo)).
pub const FAIL_KG_M3: f64 = 0.03;

/// Flags of one series in its order, upward or downward. Both readings of a pair carry its flag; a reading with no
/// neighbour to compare is not evaluated; without density or depth it is missing.
///
/// * `depths_m`: \[m\], positive downward
/// * `densities`: at surface pressure \[kg m⁻³\]; `None` and NaN are missing
///
/// Source: [`Qartod2016`](crate::bibliography::Qartod2016).
///
/// ```
/// use layercast_core::{Flag, cast::inversion::inversion_flags, water::density::density_kg_m3};
/// let densities = [10.0, 10.6, 9.0].map(|t| Some(density_kg_m3(t)));
/// assert_eq!(inversion_flags(&[0.0, 1.0, 2.0], &densities), [Flag::Fail, Flag::Fail, Flag::Pass]);
/// ```
pub fn inversion_flags(depths_m: &[f64], densities: &[Option<f64>]) -> Vec<Flag> {
    let at = |i: Option<usize>| {
        let i = i?;
        let density = densities.get(i).copied().flatten().filter(|rho| rho.is_finite())?;
        depths_m.get(i).copied().filter(|z| z.is_finite()).map(|z| (z, density))
    };
    let fall = |(z, rho): (f64, f64), other: Option<(f64, f64)>| {
        other.map(|(other_z, other_rho)| {
            if other_z > z {
                rho - other_rho
            } else if other_z < z {
                other_rho - rho
            } else {
                0.0
            }
        })
    };
    (0..densities.len())
        .map(|i| match at(Some(i)) {
            None => Flag::Missing,
            Some(here) => flag(fall(here, at(i.checked_sub(1))), fall(here, at(i.checked_add(1)))),
        })
        .collect()
}

/// Flags along one leg: each reading against the stations above and below. `doubtful` readings are not evaluated.
pub(crate) fn inversions(
    cast: &Cast,
    stations: &[Station],
    doubtful: &[bool],
    density: Density,
) -> Vec<(usize, Flag)> {
    let density_at = |at: Option<usize>| stations.get(at?).and_then(|s| s.median_c).map(|t| density.kg_m3(t));
    let mut flags = Vec::new();
    for (at, station) in stations.iter().enumerate() {
        let above = density_at(at.checked_sub(1));
        let below = density_at(at.checked_add(1));
        for &reading in &station.members {
            let Some(temp_c) = cast.readings.get(reading).and_then(temp_of) else { continue };
            let rho = density.kg_m3(temp_c);
            let verdict = if doubtful.get(reading).copied().unwrap_or(true) {
                Flag::NotEvaluated
            } else {
                flag(above.map(|a| a - rho), below.map(|b| rho - b))
            };
            flags.push((reading, verdict));
        }
    }
    flags
}

fn flag(fall_above: Option<f64>, fall_below: Option<f64>) -> Flag {
    let worst = match (fall_above, fall_below) {
        (None, None) => return Flag::NotEvaluated,
        (Some(a), Some(b)) => a.max(b),
        (Some(one), None) | (None, Some(one)) => one,
    };
    if more_than(worst, FAIL_KG_M3) {
        Flag::Fail
    } else if more_than(worst, SUSPECT_KG_M3) {
        Flag::Suspect
    } else {
        Flag::Pass
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::water::density::density_kg_m3;

    #[track_caller]
    fn check(depths_m: &[f64], temps_c: &[Option<f64>], want: &str) {
        let densities: Vec<Option<f64>> = temps_c.iter().map(|t| t.map(density_kg_m3)).collect();
        let got = inversion_flags(depths_m, &densities);
        let digits: String = got.iter().map(|f| char::from(b'0' + *f as u8)).collect();
        assert_eq!(digits, want);
    }

    #[test]
    fn both_readings_of_a_pair_carry_the_flag() {
        check(&[0.0, 1.0, 2.0], &[Some(10.0), Some(10.6), Some(9.0)], "441");
        check(&[2.0, 1.0, 0.0], &[Some(9.0), Some(10.6), Some(10.0)], "144");
    }

    #[test]
    fn colder_on_top_is_no_inversion_below_4_degrees() {
        check(&[0.0, 1.0, 2.0], &[Some(0.5), Some(2.0), Some(4.0)], "111");
    }

    #[test]
    fn without_a_neighbour_nothing_is_said() {
        check(&[0.0], &[Some(10.0)], "2");
        check(&[0.0, 1.0, 2.0], &[Some(10.0), None, Some(9.0)], "292");
        check(&[], &[], "");
    }

    #[test]
    fn two_readings_at_one_depth_are_not_compared() {
        check(&[1.0, 1.0], &[Some(10.0), Some(12.0)], "11");
    }
}
