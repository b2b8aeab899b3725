//! What a student typed, read: numbers, units, ranges.

use layercast_core::Message;
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
    /// A difference of temperatures, °F.
    FahrenheitApart,
    /// °F per foot.
    FahrenheitPerFoot,
    /// A time, hours.
    Time,
}

/// Values of the unit list.
pub(crate) const UNIT_C: &str = "c";
/// See [`UNIT_C`].
pub(crate) const UNIT_C_PER_M: &str = "c_per_m";
/// See [`UNIT_C`].
pub(crate) const UNIT_M: &str = "m";
/// See [`UNIT_C`].
pub(crate) const UNIT_S: &str = "s";
/// See [`UNIT_C`].
pub(crate) const UNIT_MIN: &str = "min";
/// See [`UNIT_C`].
pub(crate) const UNIT_H: &str = "h";
/// See [`UNIT_C`].
pub(crate) const UNIT_D: &str = "d";

/// Units of time with their hours, and the words for them; those that end in another's come before it.
const TIMES: [(&str, f64, &[&str]); 4] = [
    (UNIT_MIN, 1.0 / 60.0, &["minutes", "minute", "minutos", "minuto", "min"]),
    (UNIT_H, 1.0, &["hours", "hour", "horas", "hora", "hrs", "hr", "h"]),
    (UNIT_D, 24.0, &["days", "day", "días", "dias", "día", "dia", "d"]),
    (UNIT_S, 1.0 / 3600.0, &["seconds", "second", "segundos", "segundo", "sec", "seg", "s"]),
];

impl Measure {
    /// Its value in the unit list.
    pub fn unit(self) -> &'static str {
        match self {
            Self::Temperature | Self::Difference => UNIT_C,
            Self::PerMetre => UNIT_C_PER_M,
            Self::Length => UNIT_M,
            Self::FahrenheitApart | Self::FahrenheitPerFoot => "",
            Self::Time => UNIT_H,
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
    /// What was asked.
    pub measure: Measure,
    /// °F or °C stands behind the number itself.
    pub degrees_typed: bool,
    /// A unit was typed or chosen.
    pub unit_given: bool,
}

/// Reads a field. `chosen`: the unit list's value, where there is one. `None` when the text is no number.
///
/// A unit typed behind the number counts more than the list.
pub(crate) fn read(text: &str, chosen: Option<&str>, measure: Measure) -> Option<Typed> {
    if measure == Measure::Time {
        return read_time(text, chosen);
    }
    let q = quantity(text)?;
    let number = |value: f64, to: Option<f64>, unit_is_wrong: bool| Typed {
        value,
        to,
        decimals: q.decimals,
        unit_is_wrong,
        measure,
        degrees_typed: q.unit.is_some_and(|unit| !unit.is_length()),
        unit_given: q.unit.is_some() || chosen.is_some_and(|unit| !unit.is_empty()),
    };
    let scale = |f: &dyn Fn(f64) -> f64| number(f(q.value), q.to.map(f), false);
    Some(match (measure, q.unit, q.per) {
        (_, None, _) => {
            number(q.value, q.to, chosen.is_some_and(|unit| !unit.is_empty() && unit != measure.unit()))
        }
        (Measure::FahrenheitApart, Some(Unit::F), None)
        | (Measure::FahrenheitPerFoot, Some(Unit::F), Some(Unit::Ft)) => number(q.value, q.to, false),
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

/// A time in any unit, as hours: the unit typed behind it, else the chosen one.
fn read_time(text: &str, chosen: Option<&str>) -> Option<Typed> {
    let typed = time_unit(text);
    let q = quantity(typed.map_or(text, |(rest, _)| rest))?;
    let listed = TIMES.iter().find(|(unit, ..)| Some(*unit) == chosen).map(|(_, hours, _)| *hours);
    let scale = typed.map(|(_, hours)| hours).or(listed);
    let unit_given = scale.is_some() || q.unit.is_some() || chosen.is_some_and(|unit| !unit.is_empty());
    let hours = scale.unwrap_or(1.0);
    Some(Typed {
        value: q.value * hours,
        to: q.to.map(|to| to * hours),
        decimals: q.decimals,
        unit_is_wrong: q.unit.is_some() || (unit_given && scale.is_none()),
        measure: Measure::Time,
        degrees_typed: false,
        unit_given,
    })
}

/// What stands before a unit of time, and the hours of that unit.
fn time_unit(text: &str) -> Option<(&str, f64)> {
    let text = text.trim();
    let words = TIMES.iter().flat_map(|(_, hours, words)| words.iter().map(move |word| (*word, *hours)));
    let ends = |word: &str| {
        let at = text.len().checked_sub(word.len())?;
        let (rest, end) = (text.get(..at)?, text.get(at..)?);
        let before = rest.chars().next_back()?;
        (end.to_lowercase() == word && !before.is_alphabetic()).then_some(rest)
    };
    words.into_iter().find_map(|(word, hours)| Some((ends(word)?, hours)))
}

/// A field holds a unit of its own, so that the list need not be chosen.
pub(crate) fn has_unit(text: &str) -> bool {
    quantity(text).is_some_and(|Quantity { unit, .. }| unit.is_some())
        || time_unit(text).is_some_and(|(rest, _)| quantity(rest).is_some_and(|q| q.unit.is_none()))
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

/// A student's own text as it is quoted: at most 40 signs, a unit kept beside its number.
pub(crate) fn short(text: &str) -> String {
    let text = if has_unit(text) { spaced(text.trim()) } else { text.trim().to_owned() };
    if text.chars().count() <= QUOTED { text } else { text.chars().take(QUOTED - 1).chain(['…']).collect() }
}

/// A no-break space between each number and what follows it: "9.25 °C" of "9.25°C".
fn spaced(text: &str) -> String {
    let mut out = String::new();
    for c in text.chars() {
        if (c.is_alphabetic() || c == '°') && out.trim_end().ends_with(|last: char| last.is_ascii_digit()) {
            out.truncate(out.trim_end().len());
            out.push('\u{a0}');
        }
        out.push(c);
    }
    out
}

/// A depth as it is quoted, with its unit once: "4.5 m", "450 cm".
pub(crate) fn in_metres(text: &str) -> Message {
    let value = |id: &'static str| Message::new(id).text("value", short(text));
    if has_unit(text) { value("ask-sum-number") } else { value("ask-value-m") }
}

/// Two depths of a from–to as they were typed: "3.5–4", or the one field that holds both.
pub(crate) fn joined(from: &str, to: &str) -> String {
    if from.is_empty() || to.is_empty() { format!("{from}{to}") } else { format!("{from}–{to}") }
}

/// Two depths as they are quoted, with their unit once.
pub(crate) fn stretch_in_metres(from: &str, to: &str) -> Message {
    let text = joined(from, to);
    let quoted = if has_unit(from) || has_unit(to) { spaced(&text) } else { text };
    let value = |id: &'static str| Message::new(id).text("value", short(&quoted));
    if has_unit(from) || has_unit(to) { value("ask-sum-number") } else { value("ask-value-m") }
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
    fn times_and_units_of_elsewhere() {
        let hours = |text, chosen| read(text, chosen, Measure::Time).map(|t| (t.value, t.unit_is_wrong));
        assert_eq!(hours("7 h", None), Some((7.0, false)));
        assert_eq!(hours("7,5", Some("h")), Some((7.5, false)));
        assert_eq!(hours("420 minutos", Some("h")), Some((7.0, false)));
        assert_eq!(hours("25200", Some("s")), Some((7.0, false)));
        assert_eq!(hours("0.5d", None), Some((12.0, false)));
        assert_eq!(hours("7", Some("c")), Some((7.0, true)));
        assert_eq!(hours("7 m", Some("h")), Some((7.0, true)));
        assert_eq!(hours("soon", Some("h")), None);
        assert!(has_unit("7 h") && !has_unit("7") && has_unit("7 m") && !has_unit("h"));
        let f = |text, measure| read(text, None, measure).map(|t| (t.value, t.unit_is_wrong));
        assert_eq!(f("0,549", Measure::FahrenheitPerFoot), Some((0.549, false)));
        assert_eq!(f("0.549 °F/ft", Measure::FahrenheitPerFoot), Some((0.549, false)));
        assert_eq!(f("3.6 °F", Measure::FahrenheitApart), Some((3.6, false)));
        assert_eq!(f("2 °C", Measure::FahrenheitApart), Some((2.0, true)));
    }

    #[test]
    fn a_unit_is_quoted_once_and_beside_its_number() {
        assert_eq!(short(" 9.25°C "), "9.25\u{a0}°C");
        assert_eq!(short("4,5  m"), "4,5\u{a0}m");
        assert_eq!(short("5 °C/m"), "5\u{a0}°C/m");
        assert_eq!(short("about five"), "about five");
        let plain = |said: Message| (said.id, said.args);
        assert_eq!(plain(in_metres("4.5")), plain(Message::new("ask-value-m").text("value", "4.5")));
        assert_eq!(
            plain(in_metres("4.5m")),
            plain(Message::new("ask-sum-number").text("value", "4.5\u{a0}m"))
        );
        let both = Message::new("ask-sum-number").text("value", "3.5\u{a0}m–4\u{a0}m");
        assert_eq!(plain(stretch_in_metres("3.5 m", "4 m")), plain(both));
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
