//! Why two casts differ: probe, marks, cable, sun, moved water, or nothing but chance.
//!
//! [`Pair`] holds two casts ready to be compared; its [`chance`](Pair::chance) draws seeded pairs without any cause, in
//! pieces of any size, and [`comparison`](Pair::comparison) says what the readings say beside them. [`compare`] does all
//! of it in one go.
//!
//! Five causes are tried, each a fit of one number (two for a warmed top) to the differences b − a at shared depths:
//! an [`Offset`](Cause::Offset), the [`Zero`](Cause::Zero) of the marks, a [`Stretch`](Cause::Stretch) of the cable, a
//! [`WarmTop`](Cause::WarmTop) and [`MovedWater`](Cause::MovedWater). They are scored by how well they fit, by how much
//! they were free to fit and by how usual their size is ([`Jeffreys1961`](crate::bibliography::Jeffreys1961)); the usual
//! sizes are conventions of ours and stand in [`Cause::usual`].
//!
//! What no cast can tell is said: shift, stretch and moved water differ only in how the shift grows with depth, so one
//! thin layer tells them apart by their size more than by their shape.

mod causes;
mod chance;
mod curve;
mod field;
mod heat;
mod mode;
mod pair;
mod result;
mod side;

pub use crate::stability::whole::HEAT_J_M3_K as WATER_HEAT_J_M3_K;
pub use chance::{ChanceLevel, Trial};
pub use heat::{Heat, SUN_AT_MOST_W_M2, Sun, extra_heat_j_m2, power_w_m2, warm_top_heat_j_m2};
pub use pair::{Pair, Refusal};
pub use result::{Cause, Comparison, Explanation, Fit, LEAST_EXPLAINED, NotTried, Recorded, Shared, Verdict};
pub use side::{Known, Options, Side};

/// Seeded pairs without a cause that set the threshold.
pub const TRIALS: usize = 2_000;
/// Fewer seeded pairs than this set no threshold.
pub const FEWEST_TRIALS: usize = 200;
/// Explanations whose scores differ by less than this cannot be told apart: odds of less than ten to one.
pub const MARGIN: f64 = 4.6;

/// Says why two casts differ, with a threshold from [`TRIALS`] seeded pairs.
///
/// Values are those of b less those of a: an offset of +0.3 means that b's probe reads 0.3 °C more. Changing a and b
/// turns every sign and nothing else. Total: wild levels are left out, long profiles averaged down to 64 levels.
///
/// # Errors
/// [`Refusal`] where too few depths or too little water are shared.
///
/// ```
/// use layercast_core::compare::{Cause, Options, Side, Verdict, compare};
/// use layercast_core::Level;
/// let water = |read_c: f64| -> Vec<Level> {
///     let temps_c = [22.0, 22.0, 21.9, 21.5, 19.0, 14.5, 11.0, 9.5, 9.0, 8.9];
///     (temps_c.iter().enumerate()).map(|(i, t)| Level::bare(0.5 * i as f64, t + read_c, 0.1)).collect()
/// };
/// let (a, b) = (Side::bare(water(0.0)), Side::bare(water(0.4)));
/// let found = compare(&a, &b, &Options::default()).unwrap();
/// assert_eq!(found.verdict, Some(Verdict::Cause(Cause::Offset)));
/// assert_eq!(compare(&a, &a, &Options::default()).unwrap().verdict, Some(Verdict::Chance));
/// ```
pub fn compare(a: &Side, b: &Side, options: &Options) -> Result<Comparison, Refusal> {
    let pair = Pair::new(a, b, options)?;
    let trials = pair.chance(0, TRIALS);
    Ok(pair.comparison(&trials))
}
