//! Bytes to text: UTF-8, UTF-16 and Windows-1252, with or without a byte order mark. Never fails, never drops a byte.

/// The text of a file.
///
/// A byte order mark decides; without one, UTF-16 is told by its zero bytes, then UTF-8 if it is valid, else
/// Windows-1252 (every byte has a meaning there). What cannot be decoded becomes U+FFFD.
pub fn decode(bytes: &[u8]) -> String {
    match bytes {
        [0xef, 0xbb, 0xbf, rest @ ..] => utf_8_or_windows_1252(rest),
        [0xff, 0xfe, rest @ ..] => utf_16(rest, u16::from_le_bytes),
        [0xfe, 0xff, rest @ ..] => utf_16(rest, u16::from_be_bytes),
        _ => match zero_bytes(bytes) {
            Zeros::Odd => utf_16(bytes, u16::from_le_bytes),
            Zeros::Even => utf_16(bytes, u16::from_be_bytes),
            Zeros::Neither => utf_8_or_windows_1252(bytes),
        },
    }
}

/// Where the zero bytes of the first kilobytes stand.
enum Zeros {
    Even,
    Odd,
    Neither,
}

/// Plain letters and digits in UTF-16 have a zero in every other byte, and text has none elsewhere.
fn zero_bytes(bytes: &[u8]) -> Zeros {
    let sample = bytes.get(..4096).unwrap_or(bytes);
    let zeros = |parity: usize| sample.iter().skip(parity).step_by(2).filter(|byte| **byte == 0).count();
    let (even, odd) = (zeros(0), zeros(1));
    let many = sample.len() / 5; // two fifths of the pairs
    if odd > many && even == 0 {
        Zeros::Odd
    } else if even > many && odd == 0 {
        Zeros::Even
    } else {
        Zeros::Neither
    }
}

fn utf_8_or_windows_1252(bytes: &[u8]) -> String {
    match std::str::from_utf8(bytes) {
        Ok(text) => text.to_owned(),
        Err(_) => bytes.iter().map(|byte| windows_1252(*byte)).collect(),
    }
}

fn utf_16(bytes: &[u8], unit: fn([u8; 2]) -> u16) -> String {
    let (pairs, odd_byte) = bytes.as_chunks::<2>();
    let mut text: String = char::decode_utf16(pairs.iter().map(|pair| unit(*pair)))
        .map(|decoded| decoded.unwrap_or(char::REPLACEMENT_CHARACTER))
        .collect();
    if !odd_byte.is_empty() {
        text.push(char::REPLACEMENT_CHARACTER);
    }
    text
}

/// Windows-1252 as the WHATWG Encoding Standard lists it: Latin-1 but for 0x80 to 0x9F.
fn windows_1252(byte: u8) -> char {
    const HIGH: [char; 32] = [
        '€', '\u{81}', '‚', 'ƒ', '„', '…', '†', '‡', 'ˆ', '‰', 'Š', '‹', 'Œ', '\u{8d}', 'Ž',
        '\u{8f}', //
        '\u{90}', '‘', '’', '“', '”', '•', '–', '—', '˜', '™', 'š', '›', 'œ', '\u{9d}', 'ž', 'Ÿ',
    ];
    match byte {
        0x80..=0x9f => HIGH.get(usize::from(byte - 0x80)).copied().unwrap_or(char::REPLACEMENT_CHARACTER),
        _ => char::from(byte),
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use encoding_rs::{UTF_8, UTF_16BE, UTF_16LE, WINDOWS_1252};
    use proptest::prelude::*;

    #[test]
    fn every_byte_of_windows_1252_as_encoding_rs_has_it() {
        for byte in 0..=255_u8 {
            let (want, _, _) = WINDOWS_1252.decode(std::slice::from_ref(&byte));
            assert_eq!(windows_1252(byte).to_string(), want, "{byte:#x}");
        }
    }

    #[test]
    fn every_unit_of_utf_16_as_encoding_rs_has_it() {
        for unit in 0..=u16::MAX {
            // A digit before and after, so that a lone surrogate is lone. U+FEFF is no mark here.
            let units = [0x31, unit, 0x32];
            let le: Vec<u8> = units.iter().flat_map(|u| u.to_le_bytes()).collect();
            let be: Vec<u8> = units.iter().flat_map(|u| u.to_be_bytes()).collect();
            let want = UTF_16LE.decode_without_bom_handling(&le).0;
            assert_eq!(utf_16(&le, u16::from_le_bytes), want, "{unit:#x}");
            assert_eq!(
                utf_16(&be, u16::from_be_bytes),
                UTF_16BE.decode_without_bom_handling(&be).0,
                "{unit:#x}"
            );
        }
    }

    #[test]
    fn the_same_table_in_every_encoding() {
        let text = "Tiefe;Wärme °C\r\n0,5;18,4 − gut\r\n";
        let le: Vec<u8> = text.encode_utf16().flat_map(u16::to_le_bytes).collect();
        let be: Vec<u8> = text.encode_utf16().flat_map(u16::to_be_bytes).collect();
        assert_eq!(decode(text.as_bytes()), text);
        assert_eq!(decode(&[b"\xef\xbb\xbf", text.as_bytes()].concat()), text);
        assert_eq!(decode(&le), text);
        assert_eq!(decode(&be), text);
        assert_eq!(decode(&[b"\xff\xfe".as_slice(), &le].concat()), text);
        assert_eq!(decode(&[b"\xfe\xff".as_slice(), &be].concat()), text);
        assert_eq!(decode(b"18,4 \xb0C"), "18,4 °C");
    }

    proptest! {
        #[test]
        fn utf_8_with_or_without_mark_as_encoding_rs_has_it(text in "\\PC*") {
            prop_assume!(!text.starts_with('\u{feff}'));
            prop_assert_eq!(decode(text.as_bytes()), UTF_8.decode(text.as_bytes()).0);
            let marked = [b"\xef\xbb\xbf", text.as_bytes()].concat();
            prop_assert_eq!(decode(&marked), text);
        }

        #[test]
        fn any_bytes_give_some_text(bytes in proptest::collection::vec(any::<u8>(), 0..200)) {
            let text = decode(&bytes);
            prop_assert!(bytes.len() < 4 || !text.is_empty());
        }
    }
}
