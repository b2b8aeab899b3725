//! Units as people write them: the words for metres, centimetres, feet, °C and °F in the languages of a classroom.

use crate::document::Unit;
use layercast_core::water::units;

impl Unit {
    /// Whether it measures a length (else a temperature).
    pub fn is_length(self) -> bool {
        matches!(self, Self::M | Self::Cm | Self::Ft)
    }

    /// `value`, written in this unit, in metres or °C.
    ///
    /// NaN and infinities stay what they are.
    pub fn to_m_or_c(self, value: f64) -> f64 {
        match self {
            Self::M | Self::C => value,
            Self::Cm => units::metres_from_centimetres(value),
            Self::Ft => units::metres_from_feet(value),
            Self::F => units::celsius_from_fahrenheit(value),
        }
    }

    /// A value in metres or °C, written in this unit: the inverse of [`Unit::to_m_or_c`].
    pub fn from_m_or_c(self, value: f64) -> f64 {
        match self {
            Self::M | Self::C => value,
            Self::Cm => value * 100.0,
            Self::Ft => value / units::METRES_PER_FOOT,
            Self::F => units::fahrenheit_from_celsius(value),
        }
    }

    /// The size of one step of this unit in metres or °C (5/9 for °F).
    pub fn step_in_m_or_c(self) -> f64 {
        match self {
            Self::M | Self::C => 1.0,
            Self::Cm => 0.01,
            Self::Ft => units::METRES_PER_FOOT,
            Self::F => units::celsius_difference_from_fahrenheit(1.0),
        }
    }
}

/// What a unit word says.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum UnitWord {
    /// One of ours.
    Known(Unit),
    /// "degrees" or a bare degree sign: a temperature, but which scale is not said.
    Degrees,
    /// A length or temperature unit that is not read (mm, inches, kelvin …).
    Foreign,
}

/// Reads a unit written alone, with or without brackets: "m", "(°C)", "deg F", "metros".
///
/// A degree sign garbled by a wrong encoding is still understood. `None` when the text is no unit.
pub(crate) fn unit_word(text: &str) -> Option<UnitWord> {
    use UnitWord::{Degrees, Foreign, Known};
    if text.len() > 40 {
        return None;
    }
    let mut word = String::with_capacity(text.len());
    for c in text.chars().flat_map(char::to_lowercase) {
        match c {
            '(' | ')' | '[' | ']' | '{' | '}' | '.' | ' ' | '\u{a0}' | '\u{202f}' => {}
            // All that stands for a degree sign: ordinal and ring signs, and what a wrong encoding makes of it.
            'º' | '˚' | '\u{fffd}' | '∘' => word.push('°'),
            '℃' => word.push_str("°c"),
            '℉' => word.push_str("°f"),
            'â' => {} // first half of a degree sign read as Windows-1252
            'é' | 'è' => word.push('e'),
            'ß' => word.push_str("ss"),
            _ => word.push(c),
        }
    }
    Some(match word.as_str() {
        "m" | "mt" | "mts" | "mtr" | "mtrs" | "meter" | "meters" | "metre" | "metres" | "metro"
        | "metros" => Known(Unit::M),
        "cm" | "cms" | "centimeter" | "centimeters" | "centimetre" | "centimetres" | "centimetro"
        | "centimetros" | "centímetro" | "centímetros" | "zentimeter" => Known(Unit::Cm),
        "ft" | "feet" | "foot" | "'" | "’" | "′" | "pie" | "pies" | "pied" | "pieds" | "fuss" => {
            Known(Unit::Ft)
        }
        "c" | "°c" | "degc" | "degreec" | "degreesc" | "celsius" | "degreescelsius" | "degreecelsius"
        | "degcelsius" | "gradc" | "gradcelsius" | "gradosc" | "gradoscelsius" | "°celsius"
        | "centigrade" | "centigrados" | "centígrados" | "gradoscentígrados" | "gradoscentigrados" => {
            Known(Unit::C)
        }
        "f" | "°f" | "degf" | "degreef" | "degreesf" | "fahrenheit" | "degreesfahrenheit"
        | "degreefahrenheit" | "degfahrenheit" | "gradf" | "gradfahrenheit" | "gradosf"
        | "gradosfahrenheit" | "°fahrenheit" => Known(Unit::F),
        "°" | "deg" | "degs" | "degree" | "degrees" | "grad" | "grado" | "grados" => Degrees,
        "mm" | "dm" | "km" | "in" | "inch" | "inches" | "\"" | "″" | "yd" | "yard" | "yards" | "fathom"
        | "fathoms" | "k" | "kelvin" | "°k" | "millimeter" | "millimeters" | "millimetre" | "millimetres"
        | "pulgada" | "pulgadas" | "milímetro" | "milímetros" | "brazas" => Foreign,
        _ => return None,
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_degree_sign_survives_every_wrong_encoding() {
        for text in ["°C", "ºC", "˚C", "℃", "Â°C", "\u{fffd}C", "deg C", "(°C)", "[C]", "° C", "grados C"]
        {
            assert_eq!(unit_word(text), Some(UnitWord::Known(Unit::C)), "{text}");
        }
    }

    #[test]
    fn other_scales_are_not_taken_for_ours() {
        assert_eq!(unit_word("mm"), Some(UnitWord::Foreign));
        assert_eq!(unit_word("K"), Some(UnitWord::Foreign));
        assert_eq!(unit_word("°"), Some(UnitWord::Degrees));
        assert_eq!(unit_word("mg/L"), None);
        assert_eq!(unit_word(""), None);
    }

    #[test]
    fn units_convert_there_and_back() {
        for unit in [Unit::M, Unit::Cm, Unit::Ft, Unit::C, Unit::F] {
            let back = unit.to_m_or_c(unit.from_m_or_c(17.7));
            assert!((back - 17.7).abs() < 1e-12, "{unit:?}: {back}");
        }
        assert_eq!(Unit::F.to_m_or_c(212.0), 100.0);
        assert_eq!(Unit::F.to_m_or_c(32.0), 0.0);
        assert_eq!(Unit::Ft.to_m_or_c(10.0), 3.048);
    }
}
