//! Mixed layer by the first steep step.

use crate::analysis::Step;
use crate::slack::at_least;

/// Top and middle \[m\] of the first step that cools by at least `steep_c_per_m` \[°C/m\]; `None` without one.
///
/// Two official rules of one programme: the middle until 1990, the top since 2009. One noisy step near the surface is
/// enough to mislead both. Source: [`ElaSheet`](crate::bibliography::ElaSheet).
pub fn first_steep(steps: &[Step], steep_c_per_m: f64) -> Option<(f64, f64)> {
    let step = steps.iter().find(|s| at_least(s.cooling_c_per_m, steep_c_per_m))?;
    Some((step.top_m, (step.top_m + step.bottom_m) / 2.0))
}

#[cfg(test)]
mod tests {
    use super::super::steps::steps;
    use super::*;
    use crate::analysis::Level;

    #[track_caller]
    fn check(temps_c: &[f64], want: Option<(f64, f64)>) {
        let levels: Vec<Level> =
            temps_c.iter().enumerate().map(|(i, t)| Level::bare(i as f64 * 0.5, *t, 0.0)).collect();
        assert_eq!(first_steep(&steps(&levels), 1.0), want);
    }

    #[test]
    fn the_first_wins_though_a_later_one_is_steeper() {
        check(&[20.0, 20.0, 19.5, 15.0], Some((0.5, 0.75)));
    }

    #[test]
    fn gentle_water_has_none() {
        check(&[20.0, 19.6, 19.2], None);
        check(&[], None);
    }
}
