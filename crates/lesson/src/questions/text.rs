//! What a student typed, read: numbers, units, ranges.

use layercast_exchange::document::Unit;
use layercast_exchange::number::{Quantity, quantity};
use std::collections::BTreeMap;

/// Fields as they stood, by id.
pub(crate) type Fields = BTreeMap<String, String>;

/// The text of a field, trimmed; empty if there is none.
pub(crate) fn field<'a>(fields: &'a Fields, id: &str) -> &'a str {
    fields.get(id).map_or("", |text| text.trim())
}

/// What a number measures.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Measure {
    /// A temperature, °C.
    Temperature,
    /// A difference of temperatures, °C (no 32 in a difference of °F).
    Difference,
    /// °C per metre.
    PerMetre,
    /// A depth or a length, metres.
    Length,
}

/// Values of the unit list.
pub(crate) const UNIT_C: &str = "c";
/// See [`UNIT_C`].
pub(crate) const UNIT_C_PER_M: &str = "c_per_m";
/// See [`UNIT_C`].
pub(crate) const UNIT_M: &str = "m";

impl Measure {
    /// Its value in the unit list.
    pub fn unit(self) -> &'static str {
        match self {
            Self::Temperature | Self::Difference => UNIT_C,
            Self::PerMetre => UNIT_C_PER_M,
            Self::Length => UNIT_M,
        }
    }
}

/// A number as read.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Typed {
    /// In °C, °C per metre or metres.
    pub value: f64,
    /// The other end, if a range was typed.
    pub to: Option<f64>,
    /// Digits after the decimal sign.
    pub decimals: u8,
    /// The unit given (typed, else chosen) does not measure what was asked.
    pub unit_is_wrong: bool,
}

/// Reads a field. `chosen`: the unit list's value, where there is one. `None` when the text is no number.
///
/// A unit typed behind the number counts more than the list.
pub(crate) fn read(text: &str, chosen: Option<&str>, measure: Measure) -> Option<Typed> {
    let q = quantity(text)?;
    let number = |value: f64, to: Option<f64>, unit_is_wrong: bool| Typed {
        value,
        to,
        decimals: q.decimals,
        unit_is_wrong,
    };
    let scale = |f: &dyn Fn(f64) -> f64| number(f(q.value), q.to.map(f), false);
    Some(match (measure, q.unit, q.per) {
        (_, None, _) => {
            number(q.value, q.to, chosen.is_some_and(|unit| !unit.is_empty() && unit != measure.unit()))
        }
        (Measure::Length, Some(unit), None) if unit.is_length() => scale(&|x| unit.to_m_or_c(x)),
        (Measure::Temperature, Some(unit), None) if !unit.is_length() => scale(&|x| unit.to_m_or_c(x)),
        (Measure::Difference, Some(unit), None) if !unit.is_length() => scale(&|x| x * unit.step_in_m_or_c()),
        (Measure::PerMetre, Some(unit), Some(per)) if !unit.is_length() && per.is_length() => {
            scale(&|x| x * unit.step_in_m_or_c() / per.step_in_m_or_c())
        }
        // Degrees typed where the list says "per metre" (or nothing is said): the list explains the number.
        (Measure::PerMetre, Some(Unit::C), None) if chosen == Some(UNIT_C_PER_M) => {
            number(q.value, q.to, false)
        }
        _ => number(q.value, q.to, true),
    })
}

/// A field holds a unit of its own, so that the list need not be chosen.
pub(crate) fn has_unit(text: &str) -> bool {
    quantity(text).is_some_and(|Quantity { unit, .. }| unit.is_some())
}

/// Two depth fields of a from–to, either of which may hold a whole range; shallower first. `None`: not both are numbers.
pub(crate) fn read_range(from: &str, to: &str) -> Option<(f64, f64)> {
    let a = read(from, None, Measure::Length);
    let b = read(to, None, Measure::Length);
    if a.is_some_and(|a| a.unit_is_wrong) || b.is_some_and(|b| b.unit_is_wrong) {
        return None;
    }
    let (low, high) = match (a, b) {
        (Some(a), Some(b)) if a.to.is_none() && b.to.is_none() => (a.value, b.value),
        (Some(a), None) if to.is_empty() => (a.value, a.to?),
        (None, Some(b)) if from.is_empty() => (b.value, b.to?),
        _ => return None,
    };
    Some((low.min(high), low.max(high)))
}

/// A student's own text as it is quoted: at most 40 signs.
pub(crate) fn short(text: &str) -> String {
    let text = text.trim();
    if text.chars().count() <= QUOTED {
        text.to_owned()
    } else {
        text.chars().take(QUOTED - 1).chain(['…']).collect()
    }
}

/// Longest quotation, in signs.
const QUOTED: usize = 40;

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn units_typed_or_chosen() {
        let value = |text, chosen, measure| read(text, chosen, measure).map(|t| (t.value, t.unit_is_wrong));
        assert_eq!(value("4,5", None, Measure::Length), Some((4.5, false)));
        assert_eq!(value("450 cm", None, Measure::Length), Some((4.5, false)));
        assert_eq!(value("4.5 °C", None, Measure::Length), Some((4.5, true)));
        assert_eq!(value("2,5", Some("m"), Measure::Difference), Some((2.5, true)));
        assert_eq!(value("2.5 °C", Some("m"), Measure::Difference), Some((2.5, false)));
        assert_eq!(value("5 °C/m", Some(""), Measure::PerMetre), Some((5.0, false)));
        assert_eq!(value("50 °F", None, Measure::Temperature), Some((10.0, false)));
        assert!((read("9 °F", None, Measure::Difference).unwrap().value - 5.0).abs() < 1e-12);
        assert_eq!(value("deep", None, Measure::Length), None);
    }

    #[test]
    fn a_range_in_two_fields_or_in_one() {
        assert_eq!(read_range("3,5", "4"), Some((3.5, 4.0)));
        assert_eq!(read_range("4 m", "350 cm"), Some((3.5, 4.0)));
        assert_eq!(read_range("3.5–4.0", ""), Some((3.5, 4.0)));
        assert_eq!(read_range("", "de 3,5 a 4"), Some((3.5, 4.0)));
        assert_eq!(read_range("3.5", ""), None);
        assert_eq!(read_range("3.5", "20 °C"), None);
    }
}
