//! Numbers as people write them: either decimal sign, any minus, spaces, units, a range.
//!
//! Long because its table of spellings stands beside the parser.

use crate::document::{Decimal, Unit};
use crate::units::{UnitWord, unit_word};

/// A number as a person wrote it, in the unit as written (never converted).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Quantity {
    /// The number, or the first of a range as written. Always finite.
    pub value: f64,
    /// The second number of a range ("4–5", "from 4 to 5"), as written: it may be the smaller one.
    pub to: Option<f64>,
    /// The unit, if one of ours is written ("°" alone counts as none).
    pub unit: Option<Unit>,
    /// The unit after "per" or "/": metres in "5 °C/m".
    pub per: Option<Unit>,
    /// Digits after the decimal sign as written; of a range the greater count.
    pub decimals: u8,
}

impl Quantity {
    /// The value in metres or °C; `None` when another kind of unit is written.
    pub fn in_m(&self) -> Option<f64> {
        match self.unit {
            None => Some(self.value),
            Some(unit) if unit.is_length() && self.per.is_none() => Some(unit.to_m_or_c(self.value)),
            Some(_) => None,
        }
    }

    /// The value in °C, a temperature (not a difference); `None` when another kind of unit is written.
    pub fn in_c(&self) -> Option<f64> {
        match self.unit {
            None => Some(self.value),
            Some(unit) if !unit.is_length() && self.per.is_none() => Some(unit.to_m_or_c(self.value)),
            Some(_) => None,
        }
    }
}

/// Reads a number, or a range of two, with or without a unit: `4,5` · `4.5m` · `450 cm` · `15 ft` · `4–5` · `−1,5` ·
/// `18.4°C` · `from 3.5 to 4 m` · `5 °C/m`.
///
/// Both decimal signs are understood; one sign before exactly three digits is a decimal sign too (nobody answers in
/// thousands here). "About" and "~" are passed over. `None` when anything else stands in the text, or nothing.
///
/// ```
/// use layercast_exchange::number::quantity;
/// let q = quantity("−1,5 °C").unwrap();
/// assert_eq!((q.value, q.decimals), (-1.5, 1));
/// assert_eq!(quantity("4–5 m").unwrap().to, Some(5.0));
/// assert_eq!(quantity("deep"), None);
/// ```
pub fn quantity(text: &str) -> Option<Quantity> {
    if text.len() > MAX_TEXT {
        return None;
    }
    let text = plain(text);
    let text = without_opening(text.trim());
    let (first, rest) = scan(text, None)?;
    let rest = rest.trim();
    if let Some((unit, per)) = unit_or_nothing(rest) {
        return Some(Quantity { value: first.value, to: None, unit, per, decimals: first.decimals });
    }
    let (middle, second) = split_range(rest)?;
    let (unit_1, per_1) = unit_or_nothing(middle)?;
    let (second, rest) = scan(second.trim(), None)?;
    let (unit_2, per_2) = unit_or_nothing(rest.trim())?;
    if unit_1.is_some() && (unit_1, per_1) != (unit_2, per_2) && unit_2.is_some() {
        return None;
    }
    Some(Quantity {
        value: first.value,
        to: Some(second.value),
        unit: unit_1.or(unit_2),
        per: per_1.or(per_2),
        decimals: first.decimals.max(second.decimals),
    })
}

/// A number in a table's cell.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Number {
    /// As written; finite.
    pub value: f64,
    /// Digits after the decimal sign.
    pub decimals: u8,
    /// Unit written in the cell.
    pub unit: Option<UnitWord>,
    /// The one point or comma in it, if there is exactly one kind that could be a decimal sign.
    pub sign: Option<Decimal>,
    /// One sign with exactly three digits after it and 1 to 3 (not a lone 0) before: could be thousands.
    pub could_be_thousands: bool,
}

/// Longest text that is looked at as a number; nobody writes longer ones by hand.
const MAX_TEXT: usize = 200;

/// Reads the number in a table's cell. `decimal`: the table's decimal sign, where it is known.
///
/// `None` when the text holds anything but one number and at most one unit.
pub(crate) fn cell_number(text: &str, decimal: Option<Decimal>) -> Option<Number> {
    if text.len() > MAX_TEXT {
        return None;
    }
    if let Some(number) = simple(text) {
        return Some(number);
    }
    if !text.chars().any(is_digit) {
        return None;
    }
    let text = plain(text);
    let (scanned, rest) = scan(text.trim(), decimal)?;
    let rest = rest.trim();
    let unit = if rest.is_empty() { None } else { Some(unit_word(rest)?) };
    Some(Number { unit, ..scanned })
}

/// The common case without detours: a sign, up to 15 digits, at most one point with one, two or four digits after it.
fn simple(text: &str) -> Option<Number> {
    let (negative, digits) = match text.strip_prefix('-') {
        Some(rest) => (true, rest),
        None => (false, text),
    };
    let (whole, fraction) = match digits.split_once('.') {
        Some((whole, fraction)) => (whole, Some(fraction)),
        None => (digits, None),
    };
    let only_digits = |text: &str| !text.is_empty() && text.bytes().all(|byte| byte.is_ascii_digit());
    let sane = digits.len() <= 15 && only_digits(whole) && fraction.is_none_or(only_digits);
    if !sane || fraction.is_some_and(|fraction| fraction.len() == 3) {
        return None;
    }
    let value: f64 = digits.parse().ok()?;
    Some(Number {
        value: if negative { -value } else { value },
        decimals: fraction.map_or(0, |fraction| u8::try_from(fraction.len()).unwrap_or(12).min(12)),
        unit: None,
        sign: fraction.map(|_| Decimal::Point),
        could_be_thousands: false,
    })
}

/// Text with every digit, sign and space that looks like one of ours made into ours, and invisible signs removed.
pub(crate) fn plain(text: &str) -> std::borrow::Cow<'_, str> {
    if text.is_ascii() {
        return text.into();
    }
    text.chars().filter(|c| !is_invisible(*c)).map(plain_char).collect::<String>().into()
}

/// Signs that are not seen: joiners, direction marks, byte order mark, soft hyphen.
fn is_invisible(c: char) -> bool {
    matches!(c, '\u{200b}'..='\u{200f}' | '\u{202a}'..='\u{202e}' | '\u{2060}'..='\u{2069}' | '\u{feff}' | '\u{ad}')
}

/// Whether the sign is a digit in any of the scripts that are read.
fn is_digit(c: char) -> bool {
    plain_char(c).is_ascii_digit()
}

fn plain_char(c: char) -> char {
    let digit = |zero: u32| char::from_digit(c as u32 - zero, 10).unwrap_or(c);
    match c {
        '\u{ff10}'..='\u{ff19}' => digit(0xff10),
        '\u{660}'..='\u{669}' => digit(0x660),
        '\u{6f0}'..='\u{6f9}' => digit(0x6f0),
        '\u{ff0e}' => '.',
        '\u{ff0c}' | '\u{66b}' => ',',
        '\u{ff0b}' => '+',
        '\u{2212}' | '\u{2010}'..='\u{2015}' | '\u{fe63}' | '\u{ff0d}' => '-',
        c if c.is_whitespace() => ' ',
        c => c,
    }
}

/// Passes over "about", "from" and their like.
fn without_opening(text: &str) -> &str {
    const OPENINGS: [&str; 17] = [
        "~", "≈", "=", "about ", "around ", "approx. ", "approx ", "ca. ", "ca ", "from ", "between ",
        "aprox. ", "unos ", "de ", "desde ", "entre ", "von ",
    ];
    let mut text = text;
    for opening in OPENINGS {
        if text.get(..opening.len()).is_some_and(|head| head.eq_ignore_ascii_case(opening)) {
            text = text.get(opening.len()..).unwrap_or("").trim_start();
        }
    }
    text
}

/// A unit, "unit per unit", or nothing (also a full stop); `None` for other text.
fn unit_or_nothing(text: &str) -> Option<(Option<Unit>, Option<Unit>)> {
    let known = |text: &str| match unit_word(text)? {
        UnitWord::Known(unit) => Some(Some(unit)),
        UnitWord::Degrees => Some(None),
        UnitWord::Foreign => None,
    };
    let text = text.trim();
    if text.is_empty() || text == "." {
        return Some((None, None));
    }
    for per in ["/", " per ", " por ", " pro "] {
        if let Some((unit, of)) = text.split_once(per) {
            return Some((known(unit.trim())?, Some(known(of.trim())??)));
        }
    }
    Some((known(text)?, None))
}

/// Splits what follows the first number of a range at its connector: "m – 5 m" into "m" and "5 m".
fn split_range(rest: &str) -> Option<(&str, &str)> {
    for words in [
        " to ", " a ", " hasta ", " bis ", " and ", " y ", " und ", "to ", "a ", "hasta ", "bis ", "and ",
        "y ",
    ] {
        let at = if words.starts_with(' ') {
            rest.to_ascii_lowercase().find(words)
        } else {
            rest.get(..words.len()).filter(|head| head.eq_ignore_ascii_case(words)).map(|_| 0)
        };
        if let Some(at) = at {
            return Some((rest.get(..at)?, rest.get(at + words.len()..)?));
        }
    }
    for sign in ["...", "…", "-"] {
        if let Some(split) = rest.split_once(sign) {
            return Some(split);
        }
    }
    None
}

/// Reads the longest number at the beginning of `text` (already plain); returns it and what follows.
fn scan(text: &str, decimal: Option<Decimal>) -> Option<(Number, &str)> {
    let bytes = text.as_bytes();
    let at = |i: usize| bytes.get(i).copied().unwrap_or(0);
    let digits_from = |i: usize| bytes.iter().skip(i).take_while(|b| b.is_ascii_digit()).count();
    let mut i = 0;
    let negative = at(0) == b'-';
    if negative || at(0) == b'+' {
        i += 1;
        i += usize::from(at(i) == b' ');
    }
    // Runs of digits and the signs between them. The first run may be empty (".5").
    let first = digits_from(i);
    let mut parts: Vec<(u8, &str)> = vec![(0, text.get(i..i + first)?)];
    i += first;
    while parts.len() < 8 {
        let sign = at(i);
        let run = digits_from(i + 1);
        let joins = match sign {
            b'.' | b',' => run > 0,
            b' ' | b'\'' => {
                run == 3
                    && matches!(parts.last(), Some((s, d)) if (1..=3).contains(&d.len()) && matches!(s, 0 | b' ' | b'\''))
            }
            _ => false,
        };
        if !joins {
            break;
        }
        parts.push((sign, text.get(i + 1..i + 1 + run)?));
        i += 1 + run;
    }
    let (whole, fraction, sign, could_be_thousands) = interpret(&parts, decimal)?;
    let exponent = exponent(text.get(i..)?);
    if let Some((_, length)) = exponent {
        i += length;
    }
    let power = exponent.map_or(0, |(power, _)| power);
    let written = format!("{whole}.{fraction}e{power}");
    let value: f64 = written.parse().ok()?;
    if !value.is_finite() {
        return None;
    }
    let decimals = u8::try_from((fraction.len() as i64 - i64::from(power)).clamp(0, 12)).unwrap_or(0);
    let value = if negative { -value } else { value };
    Some((Number { value, decimals, unit: None, sign, could_be_thousands }, text.get(i..)?))
}

/// Whole digits and fraction digits of the runs; `None` when the signs make no sense ("18.4.2").
fn interpret(
    parts: &[(u8, &str)],
    decimal: Option<Decimal>,
) -> Option<(String, String, Option<Decimal>, bool)> {
    let which = |sign: u8| match sign {
        b'.' => Some(Decimal::Point),
        b',' => Some(Decimal::Comma),
        _ => None,
    };
    let whole_of = |parts: &[(u8, &str)]| parts.iter().map(|(_, digits)| *digits).collect::<String>();
    let grouped = |parts: &[(u8, &str)]| {
        let mut runs = parts.iter();
        let first = runs.next().is_some_and(|(_, digits)| (1..=3).contains(&digits.len()));
        let sign = parts.get(1).map_or(0, |part| part.0);
        first && runs.all(|(s, digits)| *s == sign && digits.len() == 3)
    };
    match parts {
        [] => None,
        [(_, whole)] => (!whole.is_empty()).then(|| ((*whole).to_owned(), String::new(), None, false)),
        [(_, whole), (sign, fraction)] => {
            let Some(sign) = which(*sign) else {
                return Some((whole_of(parts), String::new(), None, false));
            };
            let open = fraction.len() == 3 && (1..=3).contains(&whole.len()) && !whole.starts_with('0');
            if open && decimal.is_some_and(|decimal| decimal != sign) {
                return Some((whole_of(parts), String::new(), None, false));
            }
            Some(((*whole).to_owned(), (*fraction).to_owned(), Some(sign), open))
        }
        [head @ .., (last_sign, last)] => {
            let sign = which(*last_sign);
            let other = head.get(1).is_some_and(|(s, _)| s != last_sign);
            if other && sign.is_some() && grouped(head) {
                Some((whole_of(head), (*last).to_owned(), sign, false))
            } else if grouped(parts) {
                Some((whole_of(parts), String::new(), None, false))
            } else {
                None
            }
        }
    }
}

/// "e5", "E-03": the power and the length of its text.
fn exponent(text: &str) -> Option<(i32, usize)> {
    let rest = text.strip_prefix(['e', 'E'])?;
    let signed = usize::from(rest.starts_with(['+', '-']));
    let digits = rest.get(signed..)?.bytes().take_while(u8::is_ascii_digit).count();
    if digits == 0 || digits > 6 {
        return None;
    }
    Some((rest.get(..signed + digits)?.parse().ok()?, 1 + signed + digits))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(text: &str, value: f64, to: Option<f64>, unit: Option<Unit>, decimals: u8) {
        let want = Quantity { value, to, unit, per: None, decimals };
        assert_eq!(quantity(text), Some(want), "{text}");
    }

    #[test]
    fn either_decimal_sign_any_minus_any_space() {
        check("4,5", 4.5, None, None, 1);
        check("4.5m", 4.5, None, Some(Unit::M), 1);
        check("450 cm", 450.0, None, Some(Unit::Cm), 0);
        check("15 ft", 15.0, None, Some(Unit::Ft), 0);
        check("−1,5", -1.5, None, None, 1);
        check("18.4°C", 18.4, None, Some(Unit::C), 1);
        check("64\u{a0}°F", 64.0, None, Some(Unit::F), 0);
        check(" +3.75 ", 3.75, None, None, 2);
        check("4.5 °", 4.5, None, None, 1);
        check(".5", 0.5, None, None, 1);
        check("１８.４", 18.4, None, None, 1);
        check("1.234,5", 1234.5, None, None, 1);
        check("1 234,5", 1234.5, None, None, 1);
        check("1,234", 1.234, None, None, 3);
        check("4.5.", 4.5, None, None, 1);
        check("about 4 m", 4.0, None, Some(Unit::M), 0);
        check("1.5e1", 15.0, None, None, 0);
    }

    #[test]
    fn a_range_keeps_both_ends() {
        check("4–5", 4.0, Some(5.0), None, 0);
        check("4-5 m", 4.0, Some(5.0), Some(Unit::M), 0);
        check("3.5 m – 4 m", 3.5, Some(4.0), Some(Unit::M), 1);
        check("3,5 a 4,0", 3.5, Some(4.0), None, 1);
        check("from 3.5 to 4 m", 3.5, Some(4.0), Some(Unit::M), 1);
        check("entre 3 y 4", 3.0, Some(4.0), None, 0);
        check("5 to 4", 5.0, Some(4.0), None, 0);
    }

    #[test]
    fn a_gradient_carries_its_per() {
        let q = quantity("5 °C/m").unwrap();
        assert_eq!((q.unit, q.per), (Some(Unit::C), Some(Unit::M)));
        let q = quantity("5 °C per metre").unwrap();
        assert_eq!((q.unit, q.per), (Some(Unit::C), Some(Unit::M)));
        assert_eq!(q.in_c(), None);
    }

    #[test]
    fn what_is_no_number_stays_text() {
        for text in [
            "", " ", "deep", "4 5", "1O.5", "18..4", "18.4.2", "m", "-", "1e999", "=1+1", "4 mm", "4 kg",
            "2 m 3 ft",
        ] {
            assert_eq!(quantity(text), None, "{text}");
        }
        assert_eq!(quantity(&"9".repeat(500)), None);
    }

    #[test]
    fn the_common_case_is_the_general_one() {
        for text in [
            "0",
            "-0.5",
            "18.4",
            "007",
            "-12",
            "18.45",
            "1.2345",
            "123456789012345",
            "1.5e3",
            "",
            "-",
            "1.",
            ".5",
        ] {
            let general = scan(text, None).filter(|(_, rest)| rest.is_empty()).map(|(number, _)| number);
            assert!(simple(text).is_none_or(|number| Some(number) == general), "{text}");
            assert_eq!(cell_number(text, None), general, "{text}");
        }
    }

    #[test]
    fn a_table_that_writes_points_may_group_by_commas() {
        let n = |text, decimal| cell_number(text, decimal).map(|n| (n.value, n.could_be_thousands));
        assert_eq!(n("1,000", Some(Decimal::Point)), Some((1000.0, false)));
        assert_eq!(n("1,000", None), Some((1.0, true)));
        assert_eq!(n("0,500", Some(Decimal::Point)), Some((0.5, false)));
        assert_eq!(n("18,42", Some(Decimal::Point)), Some((18.42, false)));
        assert_eq!(n("4-5", None), None);
    }
}
