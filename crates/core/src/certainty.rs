//! How sure each depth is: its rule again and again on readings as they might as well have been.
//!
//! [`Plan::new`] says what is unsure and which depths are sought; [`trials()`] draws any stretch of trials (trial i depends
//! on the seed and on i alone, so parts may be drawn anywhere and in any order); [`summary()`] makes ranges of what was
//! drawn; [`apply()`] puts them into the analysis. [`certainty()`] does all at once.
//!
//! The method is the propagation of distributions of [`GumSupplement1`](crate::bibliography::GumSupplement1)
//! (methods 8.3). Conventions of ours, each where it is used: what is drawn ([`Unsure`], `draw.rs`), what counts as "no
//! such depth" in a trial (`seek.rs`), when a range is refused ([`Refused`]).

mod apply;
mod draw;
mod plan;
mod seek;
mod summary;

pub use apply::apply;
pub use plan::{Depth, Plan, Unsure};
pub use summary::{Certainty, Ranged, Refused, Share, summary};

use crate::analysis::Level;
use draw::Water;

/// Trials behind every range that is shown.
pub const TRIALS: u32 = 10_000;
/// The seed behind every range that is shown: the same cast has the same ranges on every machine.
pub const SEED: u64 = 2026;
/// Trials drawn in one call at most.
pub const MOST_AT_ONCE: u32 = 1_000_000;

/// Draws the trials `from..from + count`: [`Plan::width`] numbers each, one after another.
///
/// A number is a depth \[m\] (or the place of its step), infinite where the depth lies below the last reading (not
/// reached), NaN where there is no such depth; only [`summary()`] should read it. At most [`MOST_AT_ONCE`] trials a call:
/// ask again for more. With a plan of no depths the list is empty.
///
/// ```
/// use layercast_core::certainty::{Plan, Unsure, trials};
/// use layercast_core::{Cast, Method, analyse};
/// let cast = Cast::default();
/// let plan = Plan::new(&cast, &analyse(&cast, &Method::default()), &Unsure::default());
/// assert!(trials(&plan, 1, 0, 100).is_empty());
/// ```
pub fn trials(plan: &Plan, seed: u64, from: u32, count: u32) -> Vec<f64> {
    if plan.width() == 0 {
        return Vec::new();
    }
    let count = count.min(MOST_AT_ONCE);
    let mut drawn = Vec::with_capacity(count as usize * plan.width());
    let mut water = Water::of(plan);
    for trial in u64::from(from)..u64::from(from) + u64::from(count) {
        water.draw(plan, seed, trial);
        water.seek(plan, &mut drawn);
    }
    drawn
}

/// The water of one trial: the profile as it might as well have been, for rules that are not among the depths sought.
///
/// Standard deviations are those of the profile as read.
pub fn water(plan: &Plan, seed: u64, trial: u32) -> Vec<Level> {
    let mut water = Water::of(plan);
    water.draw(plan, seed, u64::from(trial));
    water.levels
}

/// All at once: `count` trials and their summary. Fewer than 1,000 trials make ragged ends.
///
/// ```
/// use layercast_core::certainty::{Depth, Plan, SEED, Unsure, certainty};
/// use layercast_core::{Cast, Leg, Method, Reading, Switch, analyse};
/// let temps_c = [22.0, 22.0, 21.9, 21.5, 19.0, 14.5, 11.0, 9.5, 9.0, 8.9];
/// let readings = temps_c.iter().enumerate().map(|(i, t)| Reading {
///     depth_m: 0.5 * i as f64, temp_c: Some(*t), leg: Leg::Unknown, switch: Switch::Auto,
/// });
/// let cast = Cast { readings: readings.collect(), digit_c: 0.1, bed_m: None };
/// let plan = Plan::new(&cast, &analyse(&cast, &Method::default()), &Unsure::default());
/// let thermocline = *certainty(&plan, SEED, 1000).of(Depth::Thermocline).unwrap();
/// let (low_m, high_m) = (thermocline.low_m.unwrap(), thermocline.high_m.unwrap());
/// assert!(low_m < 2.25 && 2.25 < high_m && high_m - low_m < 1.0, "{low_m} {high_m}");
/// ```
pub fn certainty(plan: &Plan, seed: u64, count: u32) -> Certainty {
    summary(plan, &trials(plan, seed, 0, count))
}
