//! Three readings placed on the picture by hand, before the rest draws.

use serde::{Deserialize, Serialize};

/// How many there are.
pub const HAND_POINTS: usize = 3;

/// Three points placed by hand. Which readings they stand for is decided from the cast ([`crate::by_hand`]).
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct ByHand {
    /// Where each was placed: depth in metres, °C.
    #[serde(default)]
    pub points: [Option<(f64, f64)>; HAND_POINTS],
    /// The points as they stood at the last check; `None` before it.
    #[serde(default)]
    pub checked: Option<[Option<(f64, f64)>; HAND_POINTS]>,
    /// The rest has been drawn.
    #[serde(default)]
    pub drawn: bool,
}

impl ByHand {
    /// Nothing was placed yet.
    pub fn is_untouched(&self) -> bool {
        *self == Self::default()
    }
}
