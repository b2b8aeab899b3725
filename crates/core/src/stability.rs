//! Stability: how hard it is to mix the water, step by step and as a whole.
//!
//! [`stability`] gives everything that follows from a cast, [`wind::wind_numbers`] what a wind can do to it. Each part is
//! usable alone.

pub mod anomaly;
pub mod basin;
pub mod buoyancy;
mod integral;
pub mod resistance;
pub mod whole;
pub mod wind;

use crate::analysis::{Analysis, Level};
use basin::{Basin, DEEPEST_M};
use whole::Whole;

/// How hard it is to mix the water of one step.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StepStability {
    /// Upper depth, metres.
    pub top_m: f64,
    /// Lower depth, metres. Resistance belongs to this step: twice the step is twice the resistance.
    pub bottom_m: f64,
    /// Buoyancy frequency squared, s⁻²; negative where the heavier water lies above.
    pub n2_per_s2: f64,
    /// Period of one swing, s; `None` where the water does not spring back.
    pub period_s: Option<f64>,
    /// Relative thermal resistance to mixing, a pure number.
    pub resistance: f64,
}

/// How hard it is to mix the water of a cast.
#[derive(Clone, Debug, PartialEq)]
pub struct Stability {
    /// Step by step, downward.
    pub steps: Vec<StepStability>,
    /// A column of one square metre from the surface to the bed; `None` without a reading below the surface.
    pub column: Option<Whole>,
    /// The bed was not told: the last reading stands for it.
    pub bed_assumed: bool,
    /// Potential energy anomaly of that column, J m⁻³.
    pub anomaly_j_m3: Option<f64>,
    /// The basin, if its contours are known: the last reading holds down to the lowest contour.
    pub basin: Option<Whole>,
}

/// How hard it is to mix the water of a cast, in any state.
///
/// The column reaches to `bed_m` \[m\], but at least to the last reading; a bed that is no depth of water counts as not
/// told. Without contours nothing is known of a basin, and everything is "for each square metre of a column".
///
/// ```
/// use layercast_core::{Cast, Leg, Method, Reading, Switch, analyse, stability::stability};
/// let temps_c = [22.0, 22.0, 21.9, 21.5, 19.0, 14.5, 11.0, 9.5, 9.0, 8.9];
/// let readings = temps_c.iter().enumerate().map(|(i, t)| Reading {
///     depth_m: 0.5 * i as f64, temp_c: Some(*t), leg: Leg::Unknown, switch: Switch::Auto,
/// });
/// let cast = Cast { readings: readings.collect(), digit_c: 0.1, bed_m: None };
/// let found = stability(&analyse(&cast, &Method::default()), Some(5.0), None);
/// let column = found.column.unwrap();
/// assert!((column.schmidt_j_m2 - 58.005).abs() < 0.001);
/// assert_eq!(column.mixing.last().unwrap().work_j_m2, column.schmidt_j_m2);
/// ```
pub fn stability(analysis: &Analysis, bed_m: Option<f64>, basin: Option<&Basin>) -> Stability {
    let (levels, density) = (&analysis.profile, analysis.method.density);
    let bed_m = bed_m.filter(|z| *z > 0.0 && *z <= DEEPEST_M);
    let last_m = levels.last().map_or(0.0, |l| l.depth_m);
    let to_m = bed_m.unwrap_or(last_m).max(last_m);
    let column =
        Basin::unit_column(to_m).ok().and_then(|column| whole::whole(levels, &column, to_m, density));
    Stability {
        steps: steps(levels),
        anomaly_j_m3: column.as_ref().and_then(|c| anomaly::anomaly_j_m3(c.schmidt_j_m2, c.depth_m)),
        column,
        bed_assumed: bed_m.is_none(),
        basin: basin.and_then(|basin| whole::whole(levels, basin, basin.deepest_m(), density)),
    }
}

/// Step by step; a step that does not go down is left out.
pub fn steps(levels: &[Level]) -> Vec<StepStability> {
    (levels.iter().zip(levels.iter().skip(1)))
        .filter_map(|(a, b)| {
            let n2_per_s2 = buoyancy::n2_per_s2(a.density, b.density, b.depth_m - a.depth_m)?;
            Some(StepStability {
                top_m: a.depth_m,
                bottom_m: b.depth_m,
                n2_per_s2,
                period_s: buoyancy::period_s(n2_per_s2),
                resistance: resistance::resistance(a.density, b.density),
            })
        })
        .collect()
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::{Cast, Leg, Method, Reading, Switch, analyse};

    fn seen(temps_c: &[f64]) -> Analysis {
        let reading = |(i, t): (usize, &f64)| Reading {
            depth_m: i as f64,
            temp_c: Some(*t),
            leg: Leg::Unknown,
            switch: Switch::Auto,
        };
        let cast =
            Cast { readings: temps_c.iter().enumerate().map(reading).collect(), digit_c: 0.1, bed_m: None };
        analyse(&cast, &Method::default())
    }

    const SUMMER: [f64; 8] = [20.0, 20.0, 20.0, 15.0, 10.0, 8.0, 8.0, 8.0];

    #[test]
    fn the_bed_is_told_or_the_last_reading_or_no_bed_at_all() {
        let depth = |bed_m| {
            let found = stability(&seen(&SUMMER), bed_m, None);
            (found.column.map(|c| c.depth_m), found.bed_assumed)
        };
        assert_eq!(depth(None), (Some(7.0), true));
        assert_eq!(depth(Some(9.5)), (Some(9.5), false));
        assert_eq!(depth(Some(5.0)), (Some(7.0), false), "a reading was taken at 7 m");
        for none in [f64::NAN, f64::INFINITY, -3.0, 0.0, 1e308] {
            assert_eq!(depth(Some(none)), (Some(7.0), true));
        }
    }

    #[test]
    fn every_step_has_its_numbers() {
        let found = stability(&seen(&SUMMER), None, None);
        assert_eq!(found.steps.len(), 7);
        assert_eq!((found.steps[2].top_m, found.steps[2].bottom_m), (2.0, 3.0));
        assert!((found.steps[2].resistance - 111.98).abs() < 0.01, "{}", found.steps[2].resistance);
        assert_eq!((found.steps[0].period_s, found.steps[0].n2_per_s2), (None, 0.0));
        let period = found.steps[2].period_s.unwrap();
        assert!((period - 66.99).abs() < 0.01, "{period}");
    }

    #[test]
    fn a_basin_needs_far_less_work_than_a_column() {
        let cone = Basin::from_contours(&[(0.0, 10_000.0), (7.0, 0.0)]).unwrap();
        let found = stability(&seen(&SUMMER), None, Some(&cone));
        let (column, basin) = (found.column.unwrap(), found.basin.unwrap());
        assert!(basin.schmidt_j_m2 > 0.0 && basin.schmidt_j_m2 < column.schmidt_j_m2 / 4.0);
        assert!((found.anomaly_j_m3.unwrap() - column.schmidt_j_m2 / 7.0).abs() < 1e-12);
    }

    #[test]
    fn no_reading_is_no_water_and_one_is_even() {
        let found = stability(&seen(&[]), Some(4.0), None);
        assert_eq!((found.column, found.anomaly_j_m3, found.steps.len()), (None, None, 0));
        assert_eq!(stability(&seen(&[12.0]), None, None).column, None, "a reading at the surface alone");
        let found = stability(&seen(&[12.0]), Some(4.0), None);
        let column = found.column.unwrap();
        assert!(column.schmidt_j_m2.abs() < 1e-9 && (column.mean_temp_c - 12.0).abs() < 1e-12);
        assert_eq!(column.mixing.len(), 1);
    }
}
