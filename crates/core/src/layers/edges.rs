//! The steep layer with the ranges of its edges.

use super::runs::Run;
use crate::analysis::{Metalimnion, Step};
use crate::slack::{at_least, at_most};

/// Edges of a run and how sure they are (conventions of ours).
///
/// An edge may lie one step further out where the step outside has g ≥ threshold − 2u, and one step further in where
/// the outermost step has g ≤ threshold + 2u; if neither holds, half of the step on either side is its range. An edge at
/// the first reading has no step outside. An edge at the last reading is cut off: the deep layer was not reached, and
/// its range has no lower end.
///
/// * `steps`: the whole gradient table
/// * `steep_c_per_m`: the threshold the run was found with \[°C/m\]
/// * `layers`: number of runs that are not near the surface
///
/// `None` when the run is not one of these steps.
pub fn metalimnion(steps: &[Step], run: &Run, steep_c_per_m: f64, layers: usize) -> Option<Metalimnion> {
    let (first, last) = (steps.get(run.steps.start)?, steps.get(run.steps.end.checked_sub(1)?)?);
    let above = run.steps.start.checked_sub(1).and_then(|i| steps.get(i));
    let below = steps.get(run.steps.end);
    let top = reach(above, first, steep_c_per_m);
    let bottom = reach(below, last, steep_c_per_m);
    let cut_off = below.is_none();
    Some(Metalimnion {
        top_m: run.top_m,
        top_low_m: (run.top_m - top.outward).max(run.top_m.min(0.0)),
        top_high_m: run.top_m + top.inward,
        bottom_m: run.bottom_m,
        bottom_low_m: run.bottom_m - bottom.inward,
        bottom_high_m: (!cut_off).then_some(run.bottom_m + bottom.outward),
        cut_off,
        from_the_first: above.is_none(),
        layers,
    })
}

/// How far an edge may lie outward and inward, metres.
struct Reach {
    outward: f64,
    inward: f64,
}

fn reach(outside: Option<&Step>, inside: &Step, steep_c_per_m: f64) -> Reach {
    let height = |step: &Step| step.bottom_m - step.top_m;
    let out = outside.filter(|s| at_least(s.cooling_c_per_m, steep_c_per_m - 2.0 * s.u_c_per_m)).map(height);
    let may_be_gentle = at_most(inside.cooling_c_per_m, steep_c_per_m + 2.0 * inside.u_c_per_m);
    let inw = may_be_gentle.then(|| height(inside));
    if out.is_none() && inw.is_none() {
        return Reach { outward: outside.map_or(0.0, height) / 2.0, inward: height(inside) / 2.0 };
    }
    Reach { outward: out.unwrap_or(0.0), inward: inw.unwrap_or(0.0) }
}

#[cfg(test)]
mod tests {
    use super::super::{runs::runs, steps::steps};
    use super::*;
    use crate::analysis::Level;

    /// Half-metre steps, σ of each value `sd_c`: ranges of the upper and the lower edge of the first run.
    #[track_caller]
    fn check(temps_c: &[f64], sd_c: f64, top: (f64, f64), bottom: (f64, Option<f64>)) {
        let levels: Vec<Level> =
            temps_c.iter().enumerate().map(|(i, t)| Level::bare(i as f64 * 0.5, *t, sd_c)).collect();
        let steps = steps(&levels);
        let run = runs(&levels, &steps, 1.0).into_iter().next().unwrap();
        let got = metalimnion(&steps, &run, 1.0, 1).unwrap();
        assert_eq!((got.top_low_m, got.top_high_m), top, "upper edge");
        assert_eq!((got.bottom_low_m, got.bottom_high_m), bottom, "lower edge");
    }

    #[test]
    fn a_clear_edge_is_known_to_half_a_step_either_side() {
        check(&[20.0, 20.0, 17.0, 14.0, 14.0], 0.05, (0.25, 0.75), (1.25, Some(1.75)));
    }

    #[test]
    fn a_nearly_steep_step_outside_moves_the_edge_out() {
        check(&[20.0, 19.6, 17.0, 14.0, 13.6], 0.05, (0.0, 0.5), (1.5, Some(2.0)));
    }

    #[test]
    fn a_barely_steep_step_inside_moves_the_edge_in() {
        check(&[20.0, 20.0, 19.4, 14.0, 13.4, 13.4], 0.05, (0.5, 1.0), (1.5, Some(2.0)));
    }

    #[test]
    fn an_edge_at_the_last_reading_has_no_lower_end() {
        check(&[20.0, 20.0, 17.0, 14.0], 0.05, (0.25, 0.75), (1.25, None));
    }

    #[test]
    fn an_edge_at_the_first_reading_does_not_leave_the_water() {
        check(&[20.0, 17.0, 14.0, 14.0], 0.05, (0.0, 0.25), (0.75, Some(1.25)));
    }
}
