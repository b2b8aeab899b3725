//! The guess made before the first reading: up to five points, sealed from then on. Nothing judges it.

use super::{Notebook, Sheet};
use layercast_core::order::sort_by;
use serde::{Deserialize, Serialize};

/// Points of a guess.
pub const GUESS_POINTS: usize = 5;

/// One point of how warm the group thought its water would be: the text in its fields and what it means.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct GuessPoint {
    /// Depth field as typed, or as placed on the picture.
    #[serde(default)]
    pub depth_text: String,
    /// Depth, metres, where it is one.
    #[serde(default)]
    pub depth_m: Option<f64>,
    /// Temperature field.
    #[serde(default)]
    pub temp_text: String,
    /// Temperature, °C, where it is one.
    #[serde(default)]
    pub temp_c: Option<f64>,
}

impl GuessPoint {
    /// Depth in metres and °C, where both are there.
    pub fn at(&self) -> Option<(f64, f64)> {
        self.depth_m.zip(self.temp_c)
    }
}

impl Sheet {
    /// The points of the guess that are whole, downward: depth in metres, °C.
    pub fn guessed(&self) -> Vec<(f64, f64)> {
        let mut guessed: Vec<(f64, f64)> = self.guess.iter().filter_map(GuessPoint::at).collect();
        sort_by(&mut guessed, |a, b| a.0.total_cmp(&b.0));
        guessed
    }
}

impl Notebook {
    /// A reading is there, in the cast or in a table that waits.
    pub fn has_readings(&self) -> bool {
        self.pending.is_some() || self.cast.entries.iter().any(|entry| !entry.temp.current_text().is_empty())
    }

    /// The guess may still change: no reading has ever been there.
    pub fn may_guess(&self) -> bool {
        !self.had_readings && !self.has_readings()
    }
}
