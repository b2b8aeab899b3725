//! The science of a temperature-depth cast.
//!
//! Plain values in, plain values out: no clock, no file, no locale, no global state, no panic. "No such layer" is an
//! answer with its reason, not an error. Depths are metres, positive downward, 0 at the surface; temperatures are °C
//! (ITS-90); densities are kg m⁻³ at surface pressure.

pub mod analysis;
pub mod cast;
pub mod message;

pub use analysis::*;
pub use cast::{Cast, Leg, Reading, Switch};
pub use message::{Arg, Message};

/// Analyses a cast: checks, profile, state, layers, ranges.
///
/// Total: any input yields an [`Analysis`]; NaN or infinite depths and temperatures count as missing.
pub fn analyse(_cast: &Cast, method: &Method) -> Analysis {
    // Skeleton while the rooms are being built.
    Analysis {
        method: *method,
        checked: Vec::new(),
        profile: Vec::new(),
        pairs: Pairs::default(),
        steps: Vec::new(),
        state: State::TooFew,
        facts: None,
        thermocline: None,
        metalimnion: None,
        mixed_layer: None,
        mixed_layer_season: None,
        warm_layer_today: None,
        fastest_warming: None,
        fastest_densing_m: None,
        rules: Vec::new(),
        warmest: None,
        coldest: None,
    }
}
