//! What is in a zip file, in zips in it too, within limits. A part that cannot be had says why; none is passed over.
//!
//! Read after the published description of the format (PKWARE APPNOTE 6.3): the directory at the end, stored and deflated
//! parts. Parts that are encrypted, of other methods, of more than 4 GB or in several volumes are refused in words.

use crate::lines::crc_32;
use crate::pack::unpack;

/// How deep zips may stand in zips.
const DEEPEST: usize = 4;
/// Most parts in all.
const MOST_PARTS: usize = 5_000;
/// Most bytes of all parts together, and of one.
const MOST_BYTES: usize = 200_000_000;
const MOST_OF_ONE: usize = 20_000_000;
/// Deflated parts that grow more than this many times are refused, when they are large at all.
const MOST_RATIO: usize = 200;
const SMALL: usize = 1_000_000;

/// One part of a zip, or why it is not to be had.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct Part {
    /// Its name, with the names of the zips it stands in, as written there.
    pub name: String,
    /// Its bytes, or what is in the way.
    pub bytes: Result<Vec<u8>, Refusal>,
}

/// Why a part cannot be had.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// The zip is broken or cut off.
    Broken,
    /// Nothing is in it.
    Empty,
    /// It has a password.
    Locked,
    /// Packed in a way that is not read here.
    OtherMethod,
    /// Too large, too many parts, or it grows beyond all measure.
    TooMuch,
    /// Zips in zips in zips …
    TooDeep,
    /// Not a zip of files but a document that is stored as one.
    Document,
}

/// Whether bytes begin as a zip does.
pub fn is_zip(bytes: &[u8]) -> bool {
    bytes.starts_with(b"PK\x03\x04") || bytes.starts_with(b"PK\x05\x06")
}

/// Every part of a zip and of the zips in it; folders are none. Never empty: what cannot be read is one part that says so.
pub fn parts(bytes: &[u8]) -> Vec<Part> {
    let mut budget = Budget { parts: MOST_PARTS, bytes: MOST_BYTES };
    let mut parts = Vec::new();
    collect(bytes, "", 1, &mut budget, &mut parts);
    parts
}

/// What may still be taken.
struct Budget {
    parts: usize,
    bytes: usize,
}

fn collect(zip: &[u8], place: &str, depth: usize, budget: &mut Budget, parts: &mut Vec<Part>) {
    let mut refuse = |why: Refusal| parts.push(Part { name: place.to_owned(), bytes: Err(why) });
    let Some(entries) = directory(zip) else { return refuse(Refusal::Broken) };
    if entries.iter().any(|entry| entry.name == "[Content_Types].xml" || entry.name == "mimetype") {
        return refuse(Refusal::Document);
    }
    let files: Vec<Entry> = entries.into_iter().filter(|entry| !entry.name.ends_with('/')).collect();
    if files.is_empty() {
        return refuse(Refusal::Empty);
    }
    if files.len() > budget.parts {
        return refuse(Refusal::TooMuch);
    }
    budget.parts -= files.len();
    for entry in files {
        let name = if place.is_empty() { entry.name.clone() } else { format!("{place}/{}", entry.name) };
        match content(zip, &entry, budget.bytes) {
            Ok(inner) => {
                budget.bytes = budget.bytes.saturating_sub(inner.len());
                if !is_zip(&inner) {
                    parts.push(Part { name, bytes: Ok(inner) });
                } else if depth < DEEPEST {
                    collect(&inner, &name, depth + 1, budget, parts);
                } else {
                    parts.push(Part { name, bytes: Err(Refusal::TooDeep) });
                }
            }
            Err(why) => parts.push(Part { name, bytes: Err(why) }),
        }
    }
}

/// A line of the directory.
struct Entry {
    name: String,
    flags: usize,
    method: usize,
    crc: usize,
    packed: usize,
    size: usize,
    at: usize,
}

/// A number of two or four bytes, little end first.
fn number(bytes: &[u8], at: usize, length: usize) -> Option<usize> {
    let field = bytes.get(at..at.checked_add(length)?)?;
    Some(field.iter().rev().fold(0, |sum, byte| (sum << 8) | usize::from(*byte)))
}

/// The directory; `None` when there is none.
fn directory(zip: &[u8]) -> Option<Vec<Entry>> {
    // The end record stands last, before a comment of at most 65,535 bytes.
    let from = zip.len().saturating_sub(22 + 65_535);
    let tail = zip.get(from..)?;
    let end = from
        + (0..tail.len()).rev().find(|at| tail.get(*at..).is_some_and(|t| t.starts_with(b"PK\x05\x06")))?;
    let (count, mut at) = (number(zip, end + 10, 2)?, number(zip, end + 16, 4)?);
    let mut entries = Vec::new();
    for _ in 0..count {
        if !zip.get(at..)?.starts_with(b"PK\x01\x02") {
            return None;
        }
        let (name_length, extra, comment) =
            (number(zip, at + 28, 2)?, number(zip, at + 30, 2)?, number(zip, at + 32, 2)?);
        let name = zip.get(at + 46..at + 46 + name_length)?;
        entries.push(Entry {
            name: String::from_utf8_lossy(name).into_owned(),
            flags: number(zip, at + 8, 2)?,
            method: number(zip, at + 10, 2)?,
            crc: number(zip, at + 16, 4)?,
            packed: number(zip, at + 20, 4)?,
            size: number(zip, at + 24, 4)?,
            at: number(zip, at + 42, 4)?,
        });
        at += 46 + name_length + extra + comment;
    }
    Some(entries)
}

fn content(zip: &[u8], entry: &Entry, budget: usize) -> Result<Vec<u8>, Refusal> {
    if entry.flags & 1 == 1 {
        return Err(Refusal::Locked);
    }
    let grows = entry.size > SMALL && entry.size / MOST_RATIO > entry.packed;
    if entry.size > MOST_OF_ONE.min(budget) || grows {
        return Err(Refusal::TooMuch);
    }
    let body = || {
        let local = zip.get(entry.at..).filter(|rest| rest.starts_with(b"PK\x03\x04"))?;
        let start = 30 + number(local, 26, 2)? + number(local, 28, 2)?;
        local.get(start..start.checked_add(entry.packed)?)
    };
    let body = body().ok_or(Refusal::Broken)?;
    let content = match entry.method {
        0 => body.to_vec(),
        8 => unpack(body, entry.size).ok_or(Refusal::Broken)?,
        _ => return Err(Refusal::OtherMethod),
    };
    let is_whole = content.len() == entry.size && crc_32(&content) as usize == entry.crc;
    if is_whole { Ok(content) } else { Err(Refusal::Broken) }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::{Cursor, Write};
    use zip::write::SimpleFileOptions;
    use zip::{CompressionMethod, ZipWriter};

    fn zip(files: &[(&str, &[u8])], method: CompressionMethod) -> Vec<u8> {
        let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
        writer.add_directory("folder/", SimpleFileOptions::default()).unwrap();
        for (name, bytes) in files {
            writer.start_file(*name, SimpleFileOptions::default().compression_method(method)).unwrap();
            writer.write_all(bytes).unwrap();
        }
        writer.finish().unwrap().into_inner()
    }

    fn deflated(files: &[(&str, &[u8])]) -> Vec<u8> {
        zip(files, CompressionMethod::Deflated)
    }

    fn part(name: &str, bytes: Result<&[u8], Refusal>) -> Part {
        Part { name: name.into(), bytes: bytes.map(<[u8]>::to_vec) }
    }

    #[test]
    fn parts_of_another_program_are_read() {
        let long = b"18.4 18.3 ".repeat(1000);
        let want = [part("a.txt", Ok(b"one")), part("folder/b.txt", Ok(&long)), part("c", Ok(b""))];
        let files: [(&str, &[u8]); 3] = [("a.txt", b"one"), ("folder/b.txt", &long), ("c", b"")];
        assert_eq!(parts(&deflated(&files)), want);
        assert_eq!(parts(&zip(&files, CompressionMethod::Stored)), want);
    }

    #[test]
    fn zips_in_zips_are_opened_and_not_for_ever() {
        let mut nested = deflated(&[("a", b"one")]);
        for _ in 0..DEEPEST - 1 {
            nested = deflated(&[("in.zip", &nested), ("b", b"two")]);
        }
        let found = parts(&nested);
        assert_eq!(found.len(), DEEPEST);
        assert_eq!(found[0], part("in.zip/in.zip/in.zip/a", Ok(b"one")));
        let deeper = deflated(&[("in.zip", &nested)]);
        assert!(parts(&deeper).iter().any(|part| part.bytes == Err(Refusal::TooDeep)));
    }

    #[test]
    fn what_cannot_be_had_says_why() {
        let why = |bytes: &[u8]| parts(bytes).remove(0).bytes.err();
        let whole = deflated(&[("a", &b"18.4 ".repeat(100))]);
        assert_eq!(why(&whole[..whole.len() - 30]), Some(Refusal::Broken));
        assert_eq!(why(b"PK\x03\x04"), Some(Refusal::Broken));
        assert_eq!(why(&deflated(&[])), Some(Refusal::Empty));
        assert_eq!(why(&deflated(&[("[Content_Types].xml", b"<x/>"), ("a", b"b")])), Some(Refusal::Document));
        let bomb = deflated(&[("a", &vec![0; 5_000_000])]);
        assert_eq!(why(&bomb), Some(Refusal::TooMuch));
        let mut spoilt = whole.clone();
        spoilt[40] ^= 0xff;
        assert_eq!(why(&spoilt), Some(Refusal::Broken));
        let mut locked = whole.clone();
        let at = locked.windows(4).rposition(|w| w == b"PK\x01\x02").unwrap();
        locked[at + 8] |= 1;
        assert_eq!(why(&locked), Some(Refusal::Locked));
        let mut other = whole;
        other[at + 10] = 12;
        assert_eq!(why(&other), Some(Refusal::OtherMethod));
    }
}
