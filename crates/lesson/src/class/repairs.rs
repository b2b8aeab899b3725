//! Repairs of a member: switches that change how its hand-in is read here, and never the hand-in.

use crate::hand_in::HandIn;
use layercast_exchange::document::{
    CastDoc, Cell, CorrectionDoc, CorrectionField, CorrectionKind, Unit, typed_depth,
};
use serde::{Deserialize, Serialize};

/// Metres of a foot (international foot, 1959: exact).
const FOOT_M: f64 = 0.3048;

/// What a teacher set right. All empty: nothing.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Repair {
    /// The right group code.
    #[serde(default)]
    pub group: Option<String>,
    /// The right seat code.
    #[serde(default)]
    pub seat: Option<String>,
    /// Depths are feet.
    #[serde(default)]
    pub feet: bool,
    /// Temperatures are °F.
    #[serde(default)]
    pub fahrenheit: bool,
    /// Height of the place where marks were read above the water, as typed in metres; empty: none.
    #[serde(default)]
    pub above_water: String,
    /// Measured at another station: kept out of what the class shares.
    #[serde(default)]
    pub other_station: bool,
}

impl Repair {
    /// Something is repaired.
    pub fn is_some(&self) -> bool {
        *self != Self::default()
    }

    /// The readings are read otherwise.
    pub fn changes_readings(&self) -> bool {
        self.feet || self.fahrenheit || typed_depth(&self.above_water).value.is_some()
    }

    /// The group code that counts.
    pub fn group<'a>(&'a self, hand_in: &'a HandIn) -> &'a str {
        self.group.as_deref().unwrap_or(&hand_in.cast.group).trim()
    }

    /// The seat code that counts.
    pub fn seat<'a>(&'a self, hand_in: &'a HandIn) -> &'a str {
        self.seat.as_deref().unwrap_or(&hand_in.sheet.seat).trim()
    }

    /// The cast as it is to be read.
    pub fn cast(&self, cast: &CastDoc) -> CastDoc {
        // A group that has had its own cast read as °F since needs no second turn.
        let fahrenheit = self.fahrenheit && cast.temps_in != Some(Unit::F);
        let mut cast = cast.clone();
        for entry in &mut cast.entries {
            if self.feet {
                turn(&mut entry.depth, |feet| feet * FOOT_M);
            }
            if fahrenheit {
                turn(&mut entry.temp, |f| (f - 32.0) / 1.8);
            }
        }
        if self.feet {
            cast.bed_m = cast.bed_m.map(|feet| feet * FOOT_M);
        }
        if fahrenheit {
            cast.digit_c /= 1.8;
        }
        if typed_depth(&self.above_water).value.is_some() {
            // It stands in place of one that the group made.
            cast.corrections.retain(|correction| correction.kind != CorrectionKind::DepthZero);
            let mut zero = CorrectionDoc::new(CorrectionKind::DepthZero);
            zero.fields.insert(CorrectionField::AboveWater, typed_depth(&self.above_water));
            cast.corrections.push(zero);
        }
        cast
    }
}

/// Reads a cell in another unit; its text stays.
fn turn(cell: &mut Cell, turned: impl Fn(f64) -> f64) {
    cell.value = cell.value.map(&turned);
    if let Some(settled) = &mut cell.settled {
        settled.value = settled.value.map(&turned);
    }
}
