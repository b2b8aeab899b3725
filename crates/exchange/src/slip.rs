//! Slips of the pen: why a cell is no number, and the number that was probably meant.
//!
//! Nothing here is ever used by itself: a proposal is shown to a person, who decides.

use crate::number::{cell_number, plain};

/// Why a cell cannot be read as a number.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Slip {
    /// A letter stands where a digit looks the same.
    Letter {
        /// The letter as written.
        letter: char,
        /// Which sign of the cell it is, counted from 1.
        place: usize,
        /// The digit it looks like.
        digit: char,
    },
    /// More than one decimal sign, or one at the end.
    Points,
    /// A space inside the number.
    Space,
    /// Another sign instead of the point (`18:4`, `18-4`).
    Sign(char),
    /// A sign beside the number that makes it unsure (`18.4?`, `~18.4`, `<18.4`).
    Unsure(char),
    /// A spreadsheet made a date of it (`18-May` for 18.5).
    Date,
    /// A range, where one number is needed.
    Range,
    /// "Surface" in words.
    Surface,
    /// Begins like a formula; it is kept as text and never run.
    Formula,
    /// None of these.
    Text,
}

/// What a cell that is no number may have meant.
///
/// Returns why, and the proposed text (always one that reads as a number) if there is a likely one. Call it only for
/// text that does not read as a number and does not say "no reading".
pub(crate) fn slip(text: &str) -> (Slip, Option<String>) {
    if text.len() > 60 {
        return (Slip::Text, None);
    }
    let text = plain(text);
    let text = text.trim();
    if text.starts_with(['=', '@']) {
        return (Slip::Formula, None);
    }
    let none = (Slip::Text, None);
    for find in [unsure, letters, points, date, other_sign, space] {
        if let Some((slip, proposal)) = find(text)
            && cell_number(&proposal, None).is_some()
        {
            return (slip, Some(proposal));
        }
    }
    if crate::read::is_surface(text) {
        return (Slip::Surface, Some("0".to_owned()));
    }
    if crate::number::quantity(text).is_some_and(|quantity| quantity.to.is_some()) {
        return (Slip::Range, None);
    }
    none
}

fn letters(text: &str) -> Option<(Slip, String)> {
    if !text.chars().any(|c| c.is_ascii_digit()) {
        return None;
    }
    let mut first = None;
    let mut proposal = String::with_capacity(text.len());
    for (at, c) in text.chars().enumerate() {
        let digit = match c {
            'O' | 'o' | 'Q' => Some('0'),
            'l' | 'I' | 'i' | '|' | '!' => Some('1'),
            'Z' | 'z' => Some('2'),
            'S' | 's' => Some('5'),
            'B' => Some('8'),
            _ => None,
        };
        if let Some(digit) = digit {
            first.get_or_insert(Slip::Letter { letter: c, place: at + 1, digit });
        }
        proposal.push(digit.unwrap_or(c));
    }
    first.map(|slip| (slip, proposal))
}

fn points(text: &str) -> Option<(Slip, String)> {
    let is_point = |c: char| matches!(c, '.' | ',');
    if !text.contains(is_point) {
        return None;
    }
    let mut proposal = String::with_capacity(text.len());
    let mut last = ' ';
    for c in text.chars() {
        if !(is_point(c) && is_point(last)) {
            proposal.push(c);
        }
        last = c;
    }
    let proposal = proposal.trim_end_matches(is_point).to_owned();
    (proposal != text).then_some((Slip::Points, proposal))
}

fn unsure(text: &str) -> Option<(Slip, String)> {
    const SIGNS: &[char] = &['?', '~', '*', '<', '>', '≈', '(', ')', '[', ']', '!', '"', '\'', '^', '`', '´'];
    let sign = text.chars().find(|c| SIGNS.contains(c))?;
    let outside = text.starts_with(SIGNS) || text.ends_with(SIGNS);
    outside.then(|| (Slip::Unsure(sign), text.trim_matches(SIGNS).trim().to_owned()))
}

fn other_sign(text: &str) -> Option<(Slip, String)> {
    let (before, after) = text.split_once([':', ';', '-', '_', '/', '\'', '"', '*', '·', '´', '`'])?;
    let sign = text.get(before.len()..)?.chars().next()?;
    let digits = |text: &str| !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
    // "18-4" may be a slip; "4-5" is a range and "18/05" a date: only a lone digit after two reads as tenths.
    (digits(before) && digits(after) && before.len() == 2 && after.len() == 1)
        .then(|| (Slip::Sign(sign), format!("{before}.{after}")))
}

fn space(text: &str) -> Option<(Slip, String)> {
    let mut parts = text.split_whitespace();
    let (first, second) = (parts.next()?, parts.next()?);
    if parts.next().is_some() {
        return None;
    }
    let digits = |text: &str| !text.is_empty() && text.bytes().all(|b| b.is_ascii_digit());
    if digits(first) && digits(second) && second.len() == 1 {
        return Some((Slip::Space, format!("{first}.{second}")));
    }
    let together = format!("{first}{second}");
    let joins = first.ends_with(['.', ','])
        || second.starts_with(['.', ','])
        || (digits(first) && second.contains(['.', ',']));
    joins.then_some((Slip::Space, together))
}

fn date(text: &str) -> Option<(Slip, String)> {
    const MONTHS: [&[&str]; 12] = [
        &["jan", "ene"],
        &["feb"],
        &["mar", "mrz", "mär"],
        &["apr", "abr"],
        &["may", "mai"],
        &["jun"],
        &["jul"],
        &["aug", "ago"],
        &["sep", "set"],
        &["oct", "okt"],
        &["nov"],
        &["dec", "dic", "dez"],
    ];
    let lower = text.to_lowercase();
    let mut parts = lower.split(|c: char| !c.is_alphanumeric()).filter(|part| !part.is_empty());
    let (first, second) = (parts.next()?, parts.next()?);
    if parts.next().is_some() {
        return None;
    }
    let month = |text: &str| {
        let short: String = text.chars().take(3).collect();
        let letters = text.chars().all(char::is_alphabetic);
        letters
            .then(|| MONTHS.iter().position(|names| names.contains(&short.as_str())))
            .flatten()
            .map(|at| at + 1)
    };
    let day = |text: &str| text.parse::<u8>().ok().filter(|day| *day <= 31);
    if let (Some(day), Some(month)) = (day(first), month(second)) {
        return Some((Slip::Date, format!("{day}.{month}")));
    }
    let (month, day) = (month(first)?, day(second)?);
    Some((Slip::Date, format!("{day}.{month}")))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(text: &str, want: Slip, proposal: Option<&str>) {
        assert_eq!(cell_number(text, None), None, "{text} is a number");
        assert_eq!(slip(text), (want, proposal.map(str::to_owned)), "{text}");
    }

    #[test]
    fn letters_that_look_like_digits() {
        check("1O.5", Slip::Letter { letter: 'O', place: 2, digit: '0' }, Some("10.5"));
        check("l8.4", Slip::Letter { letter: 'l', place: 1, digit: '1' }, Some("18.4"));
        check("2I,4", Slip::Letter { letter: 'I', place: 2, digit: '1' }, Some("21,4"));
        check("1B.S", Slip::Letter { letter: 'B', place: 2, digit: '8' }, Some("18.5"));
    }

    #[test]
    fn points_spaces_and_other_signs() {
        check("18..4", Slip::Points, Some("18.4"));
        check("18.,4", Slip::Points, Some("18.4"));
        check("18.", Slip::Points, Some("18"));
        check("18.4.2", Slip::Text, None);
        check("18 4", Slip::Space, Some("18.4"));
        check("1 8.4", Slip::Space, Some("18.4"));
        check("18 .4", Slip::Space, Some("18.4"));
        check("18:4", Slip::Sign(':'), Some("18.4"));
        check("18.4?", Slip::Unsure('?'), Some("18.4"));
        check("~18,4", Slip::Unsure('~'), Some("18,4"));
        check("18-May", Slip::Date, Some("18.5"));
        check("May-18", Slip::Date, Some("18.5"));
        check("4-5", Slip::Range, None);
        check("surface", Slip::Surface, Some("0"));
        check("=1+2", Slip::Formula, None);
        check("<b>18.4</b>", Slip::Text, None);
        check("deep", Slip::Text, None);
        check("1e999", Slip::Text, None);
    }
}
