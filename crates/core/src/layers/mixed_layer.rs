//! Bottom of the mixed layer by a threshold: the first depth that differs from a reference depth.

use crate::analysis::{Level, MixedLayer};
use crate::slack::{SLACK, at_least, at_most};

/// Reference depth of the season's mixed layer, below a day's warming, metres.
pub const SEASON_REFERENCE_M: f64 = 2.0;
/// The density rule shown beside the temperature rule, kg m⁻³.
pub const DENSITY_RISE_KG_M3: f64 = 0.1;
/// A range is at least this wide either side, metres.
pub const LEAST_RANGE_M: f64 = 0.05;

/// First depth \[m\] below `reference_m` where the temperature differs from that at `reference_m` by at least `drop_c`
/// \[°C\], colder or warmer; linear between readings. `None` when that is never reached.
///
/// The reference is read off by linear interpolation; above the first level the first level is taken.
///
/// Sources: [`Montegut2004`](crate::bibliography::Montegut2004) for the form of the rule; 1.0 °C from 0.5 m is a
/// convention of ours, because it survives a class thermometer.
///
/// ```
/// use layercast_core::{Level, layers::mixed_layer::temperature_step_depth_m};
/// let levels: Vec<Level> = [(0.0, 22.0), (0.5, 22.0), (2.5, 21.5), (3.0, 19.5)]
///     .iter().map(|(z, t)| Level::bare(*z, *t, 0.1)).collect();
/// assert_eq!(temperature_step_depth_m(&levels, 0.5, 1.0), Some(2.625));
/// assert_eq!(temperature_step_depth_m(&levels, 0.5, 3.0), None);
/// ```
pub fn temperature_step_depth_m(levels: &[Level], reference_m: f64, drop_c: f64) -> Option<f64> {
    crossing(levels, reference_m, drop_c, |l| l.temp_c, f64::abs).map(|c| c.depth_m)
}

/// The same with the place of the level at or above it.
pub(crate) fn temperature_step(levels: &[Level], reference_m: f64, drop_c: f64) -> Option<(f64, usize)> {
    crossing(levels, reference_m, drop_c, |l| l.temp_c, f64::abs).map(|c| (c.depth_m, c.upper))
}

/// First depth \[m\] below `reference_m` where density is at least `rise_kg_m3` more than at `reference_m`. Density is
/// computed at the readings, then interpolated. In water below 8 °C it hardly changes and the rule may find nothing.
///
/// Source: [`Montegut2004`](crate::bibliography::Montegut2004) for the form; 0.1 kg m⁻³ is
/// [`Wilson2020`](crate::bibliography::Wilson2020)'s.
pub fn density_rise_depth_m(levels: &[Level], reference_m: f64, rise_kg_m3: f64) -> Option<f64> {
    crossing(levels, reference_m, rise_kg_m3, |l| l.density, |rise| rise).map(|c| c.depth_m)
}

/// The class rule with its range, or "at least this deep" when it is never reached; `None` without a level.
///
/// Range: ± 2u, u = (1/|slope|)·√(σ_ref² + (1−f)²σ_p² + f²σ_q²) with f the place in its interval and σ those of the two
/// readings and the reference (the larger of two, if it lies between readings); at least ± 0.05 m; clamped to the surface
/// and the last reading. Conventions of ours on the law of propagation, [`Gum`](crate::bibliography::Gum).
pub fn mixed_layer(levels: &[Level], reference_m: f64, drop_c: f64) -> Option<MixedLayer> {
    let (first, last) = (levels.first()?, levels.last()?);
    let Some(found) = crossing(levels, reference_m, drop_c, |l| l.temp_c, f64::abs) else {
        return Some(MixedLayer::AtLeast { at_least_m: last.depth_m });
    };
    let (p, q) = (levels.get(found.upper)?, levels.get(found.upper + 1)?);
    let height_m = q.depth_m - p.depth_m;
    let slope = (q.temp_c - p.temp_c).abs() / height_m;
    let f = (found.depth_m - p.depth_m) / height_m;
    let noise = (found.reference_sd_c * found.reference_sd_c
        + (1.0 - f) * (1.0 - f) * p.sd_c * p.sd_c
        + f * f * q.sd_c * q.sd_c)
        .sqrt();
    let half_m = if slope > 0.0 { (2.0 * noise / slope).max(LEAST_RANGE_M) } else { LEAST_RANGE_M };
    let surface_m = first.depth_m.min(0.0);
    Some(MixedLayer::At {
        value_m: found.depth_m,
        low_m: (found.depth_m - half_m).max(surface_m),
        high_m: (found.depth_m + half_m).min(last.depth_m),
        target_c: found.target,
        between_m: (p.depth_m, q.depth_m),
    })
}

/// Where a quantity has moved by a threshold.
struct Crossing {
    depth_m: f64,
    /// Place of the level at or above the crossing.
    upper: usize,
    target: f64,
    reference_sd_c: f64,
}

fn crossing(
    levels: &[Level],
    reference_m: f64,
    step: f64,
    quantity: impl Fn(&Level) -> f64,
    size: impl Fn(f64) -> f64,
) -> Option<Crossing> {
    let reference_m = reference_m.max(levels.first()?.depth_m);
    let start = levels.partition_point(|l| at_most(l.depth_m, reference_m)); // first level below the reference
    let above = levels.get(start.checked_sub(1)?)?;
    let below = levels.get(start)?;
    let on_level = at_least(above.depth_m, reference_m);
    let (reference, reference_sd_c) = if on_level {
        (quantity(above), above.sd_c)
    } else {
        let f = (reference_m - above.depth_m) / (below.depth_m - above.depth_m);
        (quantity(above) + f * (quantity(below) - quantity(above)), above.sd_c.max(below.sd_c))
    };
    let (mut z_p, mut moved_p) = (reference_m, 0.0);
    for (i, level) in levels.iter().enumerate().skip(start) {
        let moved = quantity(level) - reference;
        if at_least(size(moved), step) {
            let target = step.copysign(moved);
            let f =
                if (moved - moved_p).abs() > SLACK { (target - moved_p) / (moved - moved_p) } else { 1.0 };
            let depth_m = z_p + (level.depth_m - z_p) * f.clamp(0.0, 1.0);
            return Some(Crossing {
                depth_m,
                upper: i.saturating_sub(1),
                target: reference + target,
                reference_sd_c,
            });
        }
        (z_p, moved_p) = (level.depth_m, moved);
    }
    None
}

#[cfg(test)]
mod tests {
    use super::*;

    fn levels(rows: &[(f64, f64)], sd_c: f64) -> Vec<Level> {
        rows.iter().map(|(z, t)| Level::bare(*z, *t, sd_c)).collect()
    }

    #[track_caller]
    fn check(rows: &[(f64, f64)], sd_c: f64, want: Option<(f64, f64, f64)>) {
        let got = match mixed_layer(&levels(rows, sd_c), 0.5, 1.0) {
            Some(MixedLayer::At { value_m, low_m, high_m, .. }) => Some((value_m, low_m, high_m)),
            _ => None,
        };
        let round = |(a, b, c): (f64, f64, f64)| [a, b, c].map(|x| (x * 1e6).round() / 1e6);
        assert_eq!(got.map(round), want.map(round));
    }

    #[test]
    fn exactly_one_degree_is_reached_at_the_reading() {
        check(&[(0.0, 16.2), (0.5, 16.2), (1.0, 15.2), (1.5, 15.2)], 0.0, Some((1.0, 0.95, 1.05)));
    }

    #[test]
    fn one_hot_reading_at_the_surface_does_not_count() {
        check(&[(0.0, 26.0), (0.5, 20.0), (1.0, 20.0), (2.0, 18.0)], 0.0, Some((1.5, 1.45, 1.55)));
    }

    #[test]
    fn a_cast_that_starts_deeper_takes_its_first_reading() {
        check(&[(1.0, 20.0), (2.0, 20.0), (3.0, 18.0)], 0.0, Some((2.5, 2.45, 2.55)));
    }

    #[test]
    fn between_metre_marks_the_reference_is_read_off_the_line() {
        check(&[(0.0, 20.0), (1.0, 19.0), (2.0, 18.0)], 0.0, Some((1.5, 1.45, 1.55)));
        // u = 0.1/2·√(1 + 0.5² + 0.5²) = 0.0612 m: the reference is as unsure as a reading.
        check(&[(0.0, 20.0), (1.0, 20.0), (2.0, 18.0)], 0.1, Some((1.5, 1.377526, 1.622474)));
    }

    #[test]
    fn a_reference_between_readings_is_as_unsure_as_the_less_sure_of_them() {
        let mut levels = levels(&[(0.0, 20.0), (1.0, 20.0), (2.0, 18.0)], 0.1);
        (levels[0].sd_c, levels[1].sd_c) = (0.05, 0.2);
        // Slope 2 °C/m, f = 0.5: u = 1/2·√(0.2² + 0.5²·0.2² + 0.5²·0.1²) = 1/2·√0.0525 = 0.114564 m, 2u = 0.229129 m.
        let Some(MixedLayer::At { value_m, low_m, high_m, .. }) = mixed_layer(&levels, 0.5, 1.0) else {
            panic!("found")
        };
        assert_eq!([value_m, low_m, high_m].map(|x| (x * 1e6).round() / 1e6), [1.5, 1.270871, 1.729129]);
        // The same with the surer reading below: 1/2·√(0.2² + 0.5²·0.05² + 0.5²·0.1²) = 0.103834 m, 2u = 0.207666 m.
        (levels[0].sd_c, levels[1].sd_c) = (0.2, 0.05);
        let Some(MixedLayer::At { low_m, high_m, .. }) = mixed_layer(&levels, 0.5, 1.0) else {
            panic!("found")
        };
        assert_eq!([low_m, high_m].map(|x| (x * 1e6).round() / 1e6), [1.292334, 1.707666]);
    }

    #[test]
    fn warmer_by_a_degree_ends_it_too() {
        check(&[(0.0, 2.0), (0.5, 2.0), (1.0, 3.0)], 0.0, Some((1.0, 0.95, 1.0)));
    }

    #[test]
    fn noise_over_a_gentle_slope_is_a_wide_range_that_stays_in_the_water() {
        check(&[(0.0, 20.0), (0.5, 20.0), (4.5, 18.0)], 0.1, Some((2.5, 2.010102, 2.989898)));
        check(&[(0.0, 20.0), (0.5, 20.0), (4.5, 18.9)], 1.0, Some((4.136364, 0.0, 4.5)));
    }

    #[test]
    fn never_reached_is_at_least_the_last_reading() {
        let got = mixed_layer(&levels(&[(0.0, 15.2), (3.0, 15.0)], 0.1), 0.5, 1.0);
        assert_eq!(got, Some(MixedLayer::AtLeast { at_least_m: 3.0 }));
        let got = mixed_layer(&levels(&[(0.0, 15.2), (3.0, 10.0)], 0.1), 7.0, 1.0);
        assert_eq!(got, Some(MixedLayer::AtLeast { at_least_m: 3.0 }));
        assert_eq!(mixed_layer(&[], 0.5, 1.0), None);
    }

    #[test]
    fn what_was_looked_for_and_where() {
        let got = mixed_layer(&levels(&[(0.0, 22.0), (0.5, 22.0), (2.5, 21.5), (3.0, 19.5)], 0.1), 0.5, 1.0);
        let Some(MixedLayer::At { target_c, between_m, .. }) = got else { panic!("found") };
        assert_eq!((target_c, between_m), (21.0, (2.5, 3.0)));
    }
}
