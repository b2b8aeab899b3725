//! Bytes as short lines of text that can be pasted anywhere: `LC A7KQ 3-27 …`, each numbered and checked.
//!
//! A line holds a name of four signs that all lines of one thing share, its number and how many there are, up to 48 signs
//! of base 32 and four signs of check, and ends with a semicolon. What stands between the signs counts for nothing: new
//! line breaks, the marks of a quoted mail, dashes, quotes, blanks, small letters. So does what stands around the lines.

use crate::pack::{pack, unpack};
use crate::signs::{ALPHABET, base_32, bytes, sign};

/// Signs of a line.
const WIDTH: usize = 48;
/// Signs of its check.
const CHECK: usize = 4;
/// First packed byte: how the rest is packed. Another one is of a newer program.
const PACKED_AS: u8 = 1;
/// Most lines of one thing, and most lines looked at in one text.
const MOST_LINES: usize = 9_999;
const MOST_FOUND: usize = 40_000;
/// Most bytes in what they hold.
const MOST_BYTES: usize = 8_000_000;
/// Furthest that the parts of a line's head may stand apart, characters.
const FURTHEST: usize = 60;

/// Something that was found as lines.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum Found {
    /// All of it.
    Whole {
        /// The four signs its lines share.
        name: String,
        /// What they hold.
        bytes: Vec<u8>,
    },
    /// Not all of it.
    Part {
        /// The four signs its lines share.
        name: String,
        /// How many lines there are of it.
        of: usize,
        /// Numbers of the lines that are not there, from 1.
        missing: Vec<usize>,
        /// Numbers of the lines that do not agree with their check, from 1.
        wrong: Vec<usize>,
    },
    /// All lines are there, and what they hold is no longer what was written, or was written by a newer program.
    Unreadable {
        /// The four signs its lines share.
        name: String,
    },
}

/// Bytes as lines. `name`: its first four signs stand in each line.
///
/// The same bytes give the same lines everywhere. More than 9,999 lines are not written: `None`.
pub fn write(name: &str, content: &[u8]) -> Option<Vec<String>> {
    let mut packed = vec![PACKED_AS];
    packed.extend(pack(content));
    let signs = base_32(&packed, ALPHABET);
    let name: String = name.chars().chain("0000".chars()).take(4).collect();
    let of = signs.len().div_ceil(WIDTH);
    let line = |(at, chunk): (usize, &[u8])| {
        let body = String::from_utf8_lossy(chunk);
        let number = at + 1;
        format!("LC {name} {number}-{of} {body} {};", check(&name, number, of, &body))
    };
    (of <= MOST_LINES).then(|| signs.as_bytes().chunks(WIDTH).enumerate().map(line).collect())
}

/// Whether a text seems to hold lines.
pub fn has_any(text: &str) -> bool {
    !heads(text).is_empty()
}

/// What the lines in a text come to, in the order of their first lines. Lines may stand in any order, twice, and between
/// those of other things.
pub fn read(text: &str) -> Vec<Found> {
    let lines = heads(text);
    let mut piles: Vec<Pile> = Vec::new();
    for line in lines.iter().filter(|line| line.holds) {
        let pile = match piles.iter_mut().find(|pile| pile.name == line.name && pile.of == line.of) {
            Some(pile) => pile,
            None => {
                piles.push(Pile { name: line.name.clone(), of: line.of, bodies: vec![None; line.of] });
                let Some(pile) = piles.last_mut() else { continue };
                pile
            }
        };
        if let Some(body) = pile.bodies.get_mut(line.number - 1) {
            *body = Some(line.body.clone());
        }
    }
    if let (true, Some(first)) = (piles.is_empty(), lines.first()) {
        let wrong = lines.iter().map(|line| line.number).collect();
        return vec![Found::Part { name: first.name.clone(), of: first.of, missing: Vec::new(), wrong }];
    }
    piles.into_iter().map(|pile| pile.found(&lines)).collect()
}

/// The lines of one thing.
struct Pile {
    name: String,
    of: usize,
    bodies: Vec<Option<String>>,
}

impl Pile {
    fn found(self, lines: &[Line]) -> Found {
        let gaps = self.bodies.iter().enumerate().filter(|(_, body)| body.is_none()).map(|(at, _)| at + 1);
        let is_there = |number: &usize| {
            lines.iter().any(|line| line.number == *number && line.of == self.of && !line.holds)
        };
        let (wrong, missing): (Vec<usize>, Vec<usize>) = gaps.partition(is_there);
        if !wrong.is_empty() || !missing.is_empty() {
            return Found::Part { name: self.name, of: self.of, missing, wrong };
        }
        let signs: String = self.bodies.into_iter().flatten().collect();
        let content = match bytes(&signs).as_slice() {
            [PACKED_AS, packed @ ..] => unpack(packed, MOST_BYTES),
            _ => None,
        };
        match content {
            Some(bytes) => Found::Whole { name: self.name, bytes },
            None => Found::Unreadable { name: self.name },
        }
    }
}

/// A line as it was found.
#[derive(Clone, Debug, PartialEq)]
struct Line {
    name: String,
    number: usize,
    of: usize,
    body: String,
    /// It agrees with its check.
    holds: bool,
}

/// Every line of a text.
fn heads(text: &str) -> Vec<Line> {
    let chars: Vec<char> = text.chars().collect();
    let mut lines = Vec::new();
    let mut at = 0;
    while at < chars.len() && lines.len() < MOST_FOUND {
        match line(&chars, at) {
            Some((line, end)) => {
                lines.push(line);
                at = end;
            }
            None => at += 1,
        }
    }
    lines
}

/// "LC" at a place, as a word of its own.
fn is_head(chars: &[char], at: usize) -> bool {
    let is = |at: usize, sign: char| chars.get(at).is_some_and(|c| c.eq_ignore_ascii_case(&sign));
    let letter = |at: Option<usize>| at.and_then(|at| chars.get(at)).is_some_and(char::is_ascii_alphanumeric);
    is(at, 'L') && is(at + 1, 'C') && !letter(at.checked_sub(1)) && !letter(Some(at + 2))
}

/// The next run of letters and digits from a place, and where it ends.
fn word(chars: &[char], from: usize, most: usize) -> Option<(String, usize)> {
    let near = chars.iter().skip(from).take(FURTHEST);
    let start = from + near.take_while(|c| !c.is_ascii_alphanumeric()).count();
    let word: String =
        chars.iter().skip(start).take_while(|c| c.is_ascii_alphanumeric()).take(most + 1).collect();
    let length = word.len();
    (1..=most).contains(&length).then_some((word, start + length))
}

/// The line that begins at a place, and where it ends.
fn line(chars: &[char], at: usize) -> Option<(Line, usize)> {
    if !is_head(chars, at) {
        return None;
    }
    let (name, end) = word(chars, at + 2, 4)?;
    let name: String = name
        .chars()
        .map(|c| sign(c).and_then(|s| ALPHABET.get(usize::from(s))).map(|s| char::from(*s)))
        .collect::<Option<_>>()?;
    let (number, end) = word(chars, end, 4)?;
    let (of, end) = word(chars, end, 4)?;
    let (number, of) = (count(&number)?, count(&of)?);
    if name.len() != 4 || number == 0 || number > of {
        return None;
    }
    let mut body = String::new();
    let mut end = end;
    let mut closed = false;
    while let Some(c) = chars.get(end) {
        if *c == ';' {
            closed = true;
            end += 1;
            break;
        }
        if body.len() >= WIDTH + CHECK || is_head(chars, end) {
            break;
        }
        if c.is_ascii_alphanumeric() {
            let meant = sign(*c).and_then(|s| ALPHABET.get(usize::from(s)));
            body.push(meant.map_or('U', |s| char::from(*s)));
        }
        end += 1;
    }
    // Without its semicolon a line may have run on into what stands behind it.
    let shortest = if closed { body.len() } else { CHECK + 1 };
    let held = (shortest..=body.len()).rev().find_map(|length| {
        let (signs, given) = body.split_at_checked(length.checked_sub(CHECK)?)?;
        let holds = given.get(..CHECK) == Some(check(&name, number, of, signs).as_str());
        holds.then(|| signs.to_owned())
    });
    let holds = held.is_some();
    Some((Line { name, number, of, body: held.unwrap_or_default(), holds }, end))
}

/// A count, with letters that look like digits.
fn count(word: &str) -> Option<usize> {
    let digit = |c: char| sign(c).filter(|s| *s < 10).map(usize::from);
    word.chars().try_fold(0, |sum: usize, c| Some(10 * sum + digit(c)?))
}

/// The check of a line: 20 bits of the CRC-32 (IEEE 802.3) of its head and signs.
fn check(name: &str, number: usize, of: usize, signs: &str) -> String {
    let sum = crc_32(format!("{name} {number}-{of} {signs}").as_bytes());
    base_32(&sum.to_be_bytes(), ALPHABET).chars().take(CHECK).collect()
}

/// CRC-32 as zip files and Ethernet use it.
pub(crate) fn crc_32(bytes: &[u8]) -> u32 {
    let mut sum = u32::MAX;
    for byte in bytes {
        sum ^= u32::from(*byte);
        for _ in 0..8 {
            sum = if sum & 1 == 1 { (sum >> 1) ^ 0xedb8_8320 } else { sum >> 1 };
        }
    }
    !sum
}

#[cfg(test)]
mod tests {
    use super::*;

    fn content() -> Vec<u8> {
        (0..400_u32).flat_map(|i| (i.wrapping_mul(2_654_435_761)).to_le_bytes()).collect()
    }

    fn lines() -> Vec<String> {
        write("A7KQ2M9X", &content()).unwrap()
    }

    fn whole() -> Vec<Found> {
        vec![Found::Whole { name: "A7KQ".into(), bytes: content() }]
    }

    #[test]
    fn the_check_value_of_crc_32() {
        // The check value of CRC-32/ISO-HDLC in the catalogue of parametrised CRC algorithms (from memory).
        assert_eq!(crc_32(b"123456789"), 0xcbf4_3926);
    }

    #[test]
    fn there_and_back() {
        assert!(lines().len() > 50 && lines().iter().all(|line| line.len() <= 72), "{:?}", lines().last());
        assert_eq!(read(&lines().join("\n")), whole());
        let empty = write("", b"").unwrap();
        assert_eq!(read(&empty.concat()), [Found::Whole { name: "0000".into(), bytes: Vec::new() }]);
    }

    #[test]
    fn mail_does_no_harm() {
        let text = lines().join("\n");
        let quoted = text.replace(' ', "\r\n> > ");
        assert_eq!(read(&quoted), whole());
        // A break inside the signs, as narrow windows make it.
        let broken: Vec<String> =
            lines().iter().map(|line| format!("{}=\n> {}", &line[..40], &line[40..])).collect();
        assert_eq!(read(&broken.join("\n")), whole());
        assert_eq!(read(&text.to_lowercase()), whole());
        assert_eq!(read(&text.replace('\n', " ")), whole());
        assert_eq!(read(&text.replace('-', "–").replace(' ', "\u{a0}")), whole());
        assert_eq!(read(&text.replace(';', "")), whole());
        assert_eq!(read(&text.replace('0', "o").replace('1', "l")), whole());
        let around = format!("Hi, here is my work:\n«{}»\n-- \nSent from the LC 7 bus, calc 3-4", text);
        assert_eq!(read(&around), whole());
        let mut turned = lines();
        turned.reverse();
        turned.extend(lines());
        assert_eq!(read(&turned.join("\n")), whole());
    }

    #[test]
    fn wrong_and_missing_lines_are_named() {
        let mut some = lines();
        some.remove(6);
        let of = some.len() + 1;
        let swapped: String = some[2]
            .chars()
            .enumerate()
            .map(|(i, c)| if i == 20 { if c == '7' { '8' } else { '7' } } else { c })
            .collect();
        some[2] = swapped;
        let part = Found::Part { name: "A7KQ".into(), of, missing: vec![7], wrong: vec![3] };
        assert_eq!(read(&some.join("\n")), [part]);
        assert_eq!(read("nothing of ours"), []);
    }

    #[test]
    fn two_things_in_one_paste_are_told_apart() {
        let other = write("B000", b"another").unwrap();
        let mixed: Vec<String> = other.iter().cloned().chain(lines()).collect();
        let found = read(&mixed.join("\n"));
        assert_eq!(found.len(), 2);
        assert_eq!(found[0], Found::Whole { name: "B000".into(), bytes: b"another".to_vec() });
    }

    #[test]
    fn every_changed_sign_is_found() {
        let line = &write("B000", b"some words").unwrap()[0];
        let payload = line.rfind(' ').unwrap();
        for at in 12..payload {
            let mut changed: Vec<char> = line.chars().collect();
            changed[at] = if changed[at] == '7' { '8' } else { '7' };
            let text: String = changed.into_iter().collect();
            assert!(matches!(read(&text).as_slice(), [Found::Part { .. }]), "{text}");
        }
    }
}
