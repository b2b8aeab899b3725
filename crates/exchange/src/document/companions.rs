//! What is measured beside the temperature: dissolved oxygen at the marks, how deep the Secchi disk is seen, and the
//! height of the lake, which oxygen in per cent needs.

use super::{CastDoc, Cell, SettledCell, typed_depth};
use crate::number::quantity;
use serde::{Deserialize, Serialize};

/// Most oxygen that is believed, mg/L: cold water in full light has held over 20, none we know of 30 (a value from
/// memory; anything above is kept as written and left out).
pub const MOST_OXYGEN_MG_L: f64 = 30.0;
/// Deepest a Secchi disk is believed to be seen, metres: the clearest sea gives about 80 (a value from memory).
pub const MOST_SECCHI_M: f64 = 80.0;

/// What is measured once a cast, beside the readings.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Companions {
    /// Depth at which the Secchi disk vanished going down; the only one, where one was read.
    #[serde(default)]
    pub secchi_gone: Cell,
    /// Depth at which it came back into sight.
    #[serde(default)]
    pub secchi_back: Cell,
    /// Height of the lake above the sea; metres unless a unit is written.
    #[serde(default)]
    pub altitude: Cell,
}

/// One of the fields of [`Companions`].
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum CompanionField {
    /// [`Companions::secchi_gone`].
    SecchiGone,
    /// [`Companions::secchi_back`].
    SecchiBack,
    /// [`Companions::altitude`].
    Altitude,
}

impl Companions {
    /// Nothing was measured.
    pub fn is_empty(&self) -> bool {
        *self == Self::default()
    }

    /// The cell of a field.
    pub fn cell(&self, field: CompanionField) -> &Cell {
        match field {
            CompanionField::SecchiGone => &self.secchi_gone,
            CompanionField::SecchiBack => &self.secchi_back,
            CompanionField::Altitude => &self.altitude,
        }
    }

    /// Types into a field; what a table said stays beside it.
    pub fn type_into(&mut self, field: CompanionField, text: &str) {
        let cell = match field {
            CompanionField::SecchiGone => &mut self.secchi_gone,
            CompanionField::SecchiBack => &mut self.secchi_back,
            CompanionField::Altitude => &mut self.altitude,
        };
        let typed = typed_depth(text);
        if cell.written.is_empty() && typed.text.is_empty() {
            *cell = Cell::default();
        } else if typed.text == cell.written {
            cell.settled = None;
        } else {
            cell.settled = Some(typed);
        }
    }

    /// A Secchi depth that can be one, metres.
    fn secchi(cell: &Cell) -> Option<f64> {
        cell.current().filter(|depth_m| *depth_m > 0.0 && *depth_m <= MOST_SECCHI_M)
    }

    /// The Secchi depth: the mean of vanishing and coming back, or the one that was read (standard practice; methods name
    /// no other). `None` when neither can be read.
    pub fn secchi_m(&self) -> Option<f64> {
        match (Self::secchi(&self.secchi_gone), Self::secchi(&self.secchi_back)) {
            (Some(gone_m), Some(back_m)) => Some((gone_m + back_m) / 2.0),
            (Some(one_m), None) | (None, Some(one_m)) => Some(one_m),
            (None, None) => None,
        }
    }

    /// Height of the lake above the sea, metres; `None` when nobody gave one that can be.
    pub fn altitude_m(&self) -> Option<f64> {
        self.altitude.current().filter(|altitude_m| (-500.0..=6000.0).contains(altitude_m))
    }

    /// The first field with text that gives no value.
    pub fn unreadable(&self) -> Option<CompanionField> {
        let odd = |field: &CompanionField| {
            let value = match field {
                CompanionField::Altitude => self.altitude_m(),
                field => Self::secchi(self.cell(*field)),
            };
            !self.cell(*field).current_text().trim().is_empty() && value.is_none()
        };
        [CompanionField::SecchiGone, CompanionField::SecchiBack, CompanionField::Altitude]
            .into_iter()
            .find(odd)
    }
}

/// Dissolved oxygen as a person types it: mg/L, or ppm, which is the same number in fresh water. Text that is none is kept.
pub fn typed_oxygen(text: &str) -> SettledCell {
    let value = quantity(without_oxygen_unit(text))
        .filter(|oxygen| oxygen.to.is_none() && oxygen.unit.is_none() && oxygen.per.is_none())
        .map(|oxygen| oxygen.value);
    SettledCell { text: text.to_owned(), value }
}

/// The text before "mg/L" or "ppm", if it ends so.
pub(crate) fn without_oxygen_unit(text: &str) -> &str {
    let text = text.trim();
    for unit in ["mg/l", "mg l-1", "mg/lt", "mgl", "ppm"] {
        if let Some(at) = text.len().checked_sub(unit.len())
            && text.get(at..).is_some_and(|end| end.eq_ignore_ascii_case(unit))
        {
            return text.get(..at).unwrap_or(text).trim_end();
        }
    }
    text
}

/// The oxygen of a reading that can be one, mg/L.
pub fn oxygen_mg_l(doc: &CastDoc, entry: usize) -> Option<f64> {
    let cell = doc.entries.get(entry)?.oxygen.as_ref()?;
    cell.current().filter(|oxygen| (0.0..=MOST_OXYGEN_MG_L).contains(oxygen))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn secchi_is_the_mean_of_gone_and_back() {
        let mut one = Companions::default();
        assert!(one.is_empty() && one.secchi_m().is_none());
        one.type_into(CompanionField::SecchiGone, "3,4");
        assert_eq!(one.secchi_m(), Some(3.4));
        one.type_into(CompanionField::SecchiBack, "300 cm");
        assert!((one.secchi_m().unwrap() - 3.2).abs() < 1e-12);
        one.type_into(CompanionField::SecchiBack, "not seen");
        assert_eq!((one.secchi_m(), one.unreadable()), (Some(3.4), Some(CompanionField::SecchiBack)));
        one.type_into(CompanionField::SecchiBack, "");
        one.type_into(CompanionField::SecchiGone, "");
        assert!(one.is_empty());
        for text in ["0", "-1", "81", "3 °C"] {
            one.type_into(CompanionField::SecchiGone, text);
            assert_eq!(
                (one.secchi_m(), one.unreadable()),
                (None, Some(CompanionField::SecchiGone)),
                "{text}"
            );
        }
        one.type_into(CompanionField::SecchiGone, "80");
        assert_eq!(one.secchi_m(), Some(80.0));
    }

    #[test]
    fn what_a_table_said_stays() {
        let written = Cell { written: "3.1".into(), value: Some(3.1), settled: None };
        let mut one = Companions { secchi_gone: written.clone(), ..Companions::default() };
        one.type_into(CompanionField::SecchiGone, "3.3");
        assert_eq!((one.secchi_gone.written.as_str(), one.secchi_m()), ("3.1", Some(3.3)));
        one.type_into(CompanionField::SecchiGone, "3.1");
        assert_eq!(one.secchi_gone, written);
    }

    #[test]
    fn altitude_is_a_length() {
        let mut one = Companions::default();
        one.type_into(CompanionField::Altitude, "1000 ft");
        assert!((one.altitude_m().unwrap() - 304.8).abs() < 1e-9);
        one.type_into(CompanionField::Altitude, "9000");
        assert_eq!((one.altitude_m(), one.unreadable()), (None, Some(CompanionField::Altitude)));
    }

    #[test]
    fn oxygen_is_typed_with_its_unit_or_without() {
        for text in ["8.4", "8,4", "8.4 mg/L", "8.4mg/l", "8.4 ppm", " 8.4 "] {
            assert_eq!(typed_oxygen(text).value, Some(8.4), "{text}");
        }
        for text in ["8.4 m", "84 %", "low", "", "mg/L"] {
            assert_eq!(typed_oxygen(text).value, None, "{text}");
        }
    }
}
