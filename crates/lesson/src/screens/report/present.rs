//! What a text holds, by presence alone: a number, a unit, a pair of depths, a range. Whether it is right is not looked at.

/// What stands in a text.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Present {
    /// A number.
    pub number: bool,
    /// A number with a unit.
    pub unit: bool,
    /// Two different depths.
    pub two_depths: bool,
    /// From–to, or give or take.
    pub range: bool,
}

/// A word, a number or a sign of a text.
#[derive(Clone, Copy, Debug, PartialEq)]
enum Token<'a> {
    Number(f64),
    Word(&'a str),
    Sign(char),
}

/// Words and signs of lengths and of temperatures, in both languages, in small letters.
const LENGTHS: [&str; 12] =
    ["m", "metre", "metres", "meter", "meters", "metro", "metros", "cm", "ft", "feet", "foot", "pies"];
const TEMPERATURES: [&str; 8] = ["°c", "°f", "°", "degree", "degrees", "grado", "grados", "c"];
/// Words that join the two ends of a range or of a pair.
const JOINS: [&str; 6] = ["to", "and", "a", "y", "hasta", "until"];

/// What stands in the texts together.
pub fn present(texts: &[&str]) -> Present {
    texts.iter().map(|text| of_one(text)).fold(Present::default(), |all, one| Present {
        number: all.number || one.number,
        unit: all.unit || one.unit,
        two_depths: all.two_depths || one.two_depths,
        range: all.range || one.range,
    })
}

fn of_one(text: &str) -> Present {
    let text = text.to_lowercase();
    let tokens = tokens(&text);
    let mut depths: Vec<f64> = Vec::new();
    let mut found = Present::default();
    for (i, token) in tokens.iter().enumerate() {
        let after = tokens.get(i + 1..).unwrap_or_default();
        match token {
            Token::Number(value) => {
                found.number = true;
                let other = joined(after);
                let with_unit = is_unit(after.first(), &LENGTHS) || is_unit(after.first(), &TEMPERATURES);
                found.unit |= with_unit;
                found.range |= other.is_some();
                let is_depth = is_unit(after.first(), &LENGTHS) || other.is_some_and(|other| other.is_depth);
                if is_depth {
                    depths.push(*value);
                    depths.extend(other.filter(|other| other.is_depth).map(|other| other.value));
                }
            }
            Token::Sign('±') => found.range |= matches!(after.first(), Some(Token::Number(_))),
            Token::Word("give") => {
                found.range |= starts_with(after, &["or", "take"]);
            }
            Token::Word("más") => found.range |= starts_with(after, &["o", "menos"]),
            Token::Word("plus") => found.range |= starts_with(after, &["or", "minus"]),
            _ => {}
        }
    }
    found.two_depths = depths.iter().any(|depth| depths.iter().any(|other| (depth - other).abs() > 1e-9));
    found
}

/// The other end of a range that begins with a number.
#[derive(Clone, Copy)]
struct Other {
    value: f64,
    is_depth: bool,
}

/// "… to 4.0 m", "… m and 4.0 m", "–4 m" behind a number.
fn joined(after: &[Token]) -> Option<Other> {
    let unit =
        after.first().filter(|token| is_unit(Some(token), &LENGTHS) || is_unit(Some(token), &TEMPERATURES));
    // In Spanish "a" joins, and no unit is written like it.
    let rest = if unit.is_some() { after.get(1..)? } else { after };
    let joins = match rest.first()? {
        Token::Word(word) => JOINS.contains(word),
        Token::Sign(sign) => matches!(sign, '-' | '–' | '—' | '−'),
        Token::Number(_) => false,
    };
    let Some(Token::Number(value)) = rest.get(1).filter(|_| joins) else { return None };
    let own = rest.get(2);
    Some(Other { value: *value, is_depth: is_unit(own, &LENGTHS) })
}

fn is_unit(token: Option<&Token>, units: &[&str]) -> bool {
    matches!(token, Some(Token::Word(word)) if units.contains(word))
}

fn starts_with(tokens: &[Token], words: &[&str]) -> bool {
    words.iter().enumerate().all(|(i, word)| tokens.get(i) == Some(&Token::Word(word)))
}

fn tokens(text: &str) -> Vec<Token<'_>> {
    let mut tokens = Vec::new();
    let mut rest = text.trim_start();
    while let Some(first) = rest.chars().next() {
        let is_word = |c: char| c.is_alphabetic() || c == '°';
        let end = |is: fn(char) -> bool| rest.find(|c| !is(c)).unwrap_or(rest.len());
        let length = if first.is_ascii_digit() {
            number_length(rest)
        } else if is_word(first) {
            end(|c| c.is_alphabetic() || c == '°')
        } else {
            first.len_utf8()
        };
        let (token, left) = rest.split_at(length);
        tokens.push(if first.is_ascii_digit() {
            Token::Number(token.replace(',', ".").parse().unwrap_or(0.0))
        } else if is_word(first) {
            Token::Word(token)
        } else {
            Token::Sign(first)
        });
        rest = left.trim_start();
    }
    tokens
}

/// Digits, and one decimal sign with digits behind it.
fn number_length(text: &str) -> usize {
    let digits = |text: &str| text.find(|c: char| !c.is_ascii_digit()).unwrap_or(text.len());
    let whole = digits(text);
    let rest = text.get(whole..).unwrap_or_default();
    match rest.strip_prefix(['.', ',']).map(digits) {
        Some(decimals) if decimals > 0 => whole + 1 + decimals,
        _ => whole,
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn holds(text: &str) -> String {
        let Present { number, unit, two_depths, range } = present(&[text]);
        let signs = [(number, 'n'), (unit, 'u'), (two_depths, 'd'), (range, 'r')];
        signs.into_iter().filter(|(is, _)| *is).map(|(_, sign)| sign).collect()
    }

    #[test]
    fn nothing_is_found_in_words_alone() {
        for text in ["", "The pond is warm on top.", "m °C to and ±", "a most warm metre", "…"] {
            assert_eq!(holds(text), "", "{text}");
        }
    }

    #[test]
    fn a_number_is_no_unit_yet() {
        assert_eq!(holds("There are 3 layers."), "n");
        assert_eq!(holds("It falls by 2.5 °C."), "nu");
        assert_eq!(holds("It ends at 4,5m"), "nu");
        assert_eq!(holds("Baja 2,5 grados"), "nu");
        assert_eq!(holds("5 degrees"), "nu");
    }

    #[test]
    fn two_depths_may_be_joined_or_apart() {
        assert_eq!(holds("Between 3.5 and 4.0 m it gets colder."), "nudr");
        assert_eq!(holds("From 3.5 m to 4.0 m"), "nudr");
        assert_eq!(holds("3.5–4 m"), "nudr");
        assert_eq!(holds("Entre 3,5 y 4,0 m"), "nudr");
        assert_eq!(holds("De 3,5 m a 4 m"), "nudr");
        assert_eq!(holds("At 2 m it is warm. At 6 m it is cold."), "nud");
        assert_eq!(holds("At 4 m, and again at 4.0 m"), "nu");
        assert_eq!(holds("at 2 m it is 23.4 °C"), "nu");
    }

    #[test]
    fn a_range_needs_no_depth() {
        assert_eq!(holds("between 8.9 and 9.2 °C"), "nur");
        assert_eq!(holds("4.0 m, give or take 0.5 m"), "nudr");
        assert_eq!(holds("3.75 ± 0.25 m"), "nur");
        assert_eq!(holds("más o menos"), "r");
        assert_eq!(holds("3.75\u{a0}m (3.5 to 4.0\u{a0}m)"), "nudr");
    }

    #[test]
    fn long_and_odd_texts_are_read_to_the_end() {
        assert_eq!(holds(&"9".repeat(5000)), "n");
        assert_eq!(holds("1.2.3,4.,"), "n");
        assert_eq!(holds("٣ m"), "");
    }
}
