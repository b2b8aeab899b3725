//! The science of a temperature-depth cast.
//!
//! Plain values in, plain values out: no clock, no file, no locale, no global state, no panic. "No such layer" is an
//! answer with its reason, not an error. Depths are metres, positive downward, 0 at the surface; temperatures are °C
//! (ITS-90); densities are kg m⁻³ at surface pressure.
//!
//! [`analyse()`] goes the whole way. On that way, each usable alone: [`water`] (density, units), [`cast`] (checks, pairs,
//! profile) and [`layers`] (state, thermocline and span, steep layer, mixed layer). Beyond it: what
//! [every rule](layers::every_rule) says, [`stability`](mod@stability), ranges by trials ([`certainty`]), the same cast
//! read otherwise ([`whatif`]), why two casts differ ([`mod@compare`]), water that cools and is stirred ([`mod@column`]), and
//! invented water ([`practice`]). Sources are in [`bibliography`].
//! Where a comment says "methods 5.8" it means that section of `tests/reference/methods.md`.

mod analyse;
pub mod analysis;
pub mod bibliography;
pub mod cast;
pub mod certainty;
pub mod column;
pub mod compare;
pub mod layers;
pub mod message;
pub mod order;
pub mod practice;
pub mod random;
mod slack;
pub mod stability;
pub mod water;
pub mod whatif;

pub use analyse::{FEWEST_DEPTHS, LEAST_SPAN_M, analyse};
pub use analysis::*;
pub use cast::{Cast, Leg, Reading, Switch};
pub use message::{Arg, Message};
pub use water::density::Density;
