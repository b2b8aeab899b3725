//! The name a cast carries by its readings: four laptops with the same cast compute the same.

use super::{CastDoc, LegDoc};
use crate::signs::base_32;
use layercast_core::order::sort_by;

/// The content id: 16 signs of base 32, the first 80 bits of SHA-256 over the readings.
///
/// One line `leg;depth in mm;temperature in 0.01 °C` a reading (`down`, `up`, `unknown`; whole numbers), sorted by leg,
/// depth and order, joined by line feeds. Raw values after doubted cells are settled, before corrections and switches;
/// entries without a depth or a temperature do not count, and nothing else does. No readings have an id too.
pub fn content_id(doc: &CastDoc) -> String {
    let mut readings: Vec<(LegDoc, &str, f64, f64)> = doc
        .entries
        .iter()
        .filter_map(|entry| {
            let depth_mm = whole(entry.depth.current()? * 1000.0)?;
            let temp = whole(entry.temp.current()? * 100.0)?;
            let leg = match entry.leg {
                LegDoc::Down => "down",
                LegDoc::Up => "up",
                LegDoc::Unknown => "unknown",
            };
            Some((entry.leg, leg, depth_mm, temp))
        })
        .collect();
    sort_by(&mut readings, |a, b| a.0.cmp(&b.0).then(a.2.total_cmp(&b.2)));
    let mut lines = String::new();
    for (_, leg, depth_mm, temp) in readings {
        if !lines.is_empty() {
            lines.push('\n');
        }
        lines.push_str(leg);
        lines.push(';');
        push_whole(&mut lines, depth_mm);
        lines.push(';');
        push_whole(&mut lines, temp);
    }
    hash_80(lines.as_bytes(), RFC_4648)
}

/// Name of any text: 16 signs of base 32 without look-alikes (`signs`), the first 80 bits of its SHA-256.
pub fn short_hash(text: &str) -> String {
    hash_80(text.as_bytes(), crate::signs::ALPHABET)
}

fn hash_80(bytes: &[u8], alphabet: &[u8; 32]) -> String {
    let hash = sha_256(bytes);
    base_32(hash.get(..10).unwrap_or(&hash), alphabet)
}

/// The alphabet of RFC 4648.
const RFC_4648: &[u8; 32] = b"ABCDEFGHIJKLMNOPQRSTUVWXYZ234567";

/// Writes a whole number.
fn push_whole(text: &mut String, value: f64) {
    // All digits of a number that no integer holds, as of any other.
    let written = if value.abs() < 1e15 { (value as i64).to_string() } else { format!("{value:.0}") };
    text.push_str(&written);
}

/// Rounded to a whole number, halves away from zero; never "−0".
fn whole(value: f64) -> Option<f64> {
    // 0.285 * 100 is 28.499999999999996: what a person wrote as a half must round as one.
    let nudged = value + value.signum() * value.abs() * 1e-12;
    let rounded = nudged.round();
    rounded.is_finite().then_some(if rounded == 0.0 { 0.0 } else { rounded })
}

/// SHA-256 as FIPS 180-4 defines it.
fn sha_256(message: &[u8]) -> [u8; 32] {
    let mut state: [u32; 8] = [
        0x6a09_e667,
        0xbb67_ae85,
        0x3c6e_f372,
        0xa54f_f53a,
        0x510e_527f,
        0x9b05_688c,
        0x1f83_d9ab,
        0x5be0_cd19,
    ];
    let mut padded = message.to_vec();
    padded.push(0x80);
    padded.resize((padded.len() + 8).div_ceil(64) * 64 - 8, 0);
    padded.extend((message.len() as u64 * 8).to_be_bytes());
    for block in padded.as_chunks::<64>().0 {
        compress(&mut state, block);
    }
    let mut hash = [0; 32];
    for (four, word) in hash.as_chunks_mut::<4>().0.iter_mut().zip(state) {
        *four = word.to_be_bytes();
    }
    hash
}

fn compress(state: &mut [u32; 8], block: &[u8; 64]) {
    let mut schedule = [0_u32; 64];
    for (word, four) in schedule.iter_mut().zip(block.as_chunks::<4>().0) {
        *word = u32::from_be_bytes(*four);
    }
    for at in 16..64 {
        let word = |back: usize| schedule.get(at - back).copied().unwrap_or(0);
        let small_0 = word(15).rotate_right(7) ^ word(15).rotate_right(18) ^ (word(15) >> 3);
        let small_1 = word(2).rotate_right(17) ^ word(2).rotate_right(19) ^ (word(2) >> 10);
        let next = word(16).wrapping_add(small_0).wrapping_add(word(7)).wrapping_add(small_1);
        if let Some(word) = schedule.get_mut(at) {
            *word = next;
        }
    }
    let [mut a, mut b, mut c, mut d, mut e, mut f, mut g, mut h] = *state;
    for (constant, word) in ROUND_CONSTANTS.iter().zip(&schedule) {
        let big_1 = e.rotate_right(6) ^ e.rotate_right(11) ^ e.rotate_right(25);
        let choice = (e & f) ^ (!e & g);
        let first = h.wrapping_add(big_1).wrapping_add(choice).wrapping_add(*constant).wrapping_add(*word);
        let big_0 = a.rotate_right(2) ^ a.rotate_right(13) ^ a.rotate_right(22);
        let majority = (a & b) ^ (a & c) ^ (b & c);
        let second = big_0.wrapping_add(majority);
        (h, g, f, e, d, c, b, a) = (g, f, e, d.wrapping_add(first), c, b, a, first.wrapping_add(second));
    }
    for (slot, word) in state.iter_mut().zip([a, b, c, d, e, f, g, h]) {
        *slot = slot.wrapping_add(word);
    }
}

#[rustfmt::skip]
const ROUND_CONSTANTS: [u32; 64] = [
    0x428a2f98, 0x71374491, 0xb5c0fbcf, 0xe9b5dba5, 0x3956c25b, 0x59f111f1, 0x923f82a4, 0xab1c5ed5,
    0xd807aa98, 0x12835b01, 0x243185be, 0x550c7dc3, 0x72be5d74, 0x80deb1fe, 0x9bdc06a7, 0xc19bf174,
    0xe49b69c1, 0xefbe4786, 0x0fc19dc6, 0x240ca1cc, 0x2de92c6f, 0x4a7484aa, 0x5cb0a9dc, 0x76f988da,
    0x983e5152, 0xa831c66d, 0xb00327c8, 0xbf597fc7, 0xc6e00bf3, 0xd5a79147, 0x06ca6351, 0x14292967,
    0x27b70a85, 0x2e1b2138, 0x4d2c6dfc, 0x53380d13, 0x650a7354, 0x766a0abb, 0x81c2c92e, 0x92722c85,
    0xa2bfe8a1, 0xa81a664b, 0xc24b8b70, 0xc76c51a3, 0xd192e819, 0xd6990624, 0xf40e3585, 0x106aa070,
    0x19a4c116, 0x1e376c08, 0x2748774c, 0x34b0bcb5, 0x391c0cb3, 0x4ed8aa4a, 0x5b9cca4f, 0x682e6ff3,
    0x748f82ee, 0x78a5636f, 0x84c87814, 0x8cc70208, 0x90befffa, 0xa4506ceb, 0xbef9a3f7, 0xc67178f2,
];

#[cfg(test)]
mod tests {
    use super::super::{Cell, Entry, SettledCell, SwitchDoc, new_doc};
    use super::*;

    fn hex(bytes: &[u8]) -> String {
        bytes.iter().map(|byte| format!("{byte:02x}")).collect()
    }

    #[test]
    fn sha_256_of_the_published_examples() {
        // NIST, "Cryptographic Standards and Guidelines: Example Values", SHA-256 one-block and two-block messages.
        assert_eq!(hex(&sha_256(b"abc")), "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad");
        let two = b"abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq";
        assert_eq!(hex(&sha_256(two)), "248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1");
        assert_eq!(hex(&sha_256(b"")), "e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855");
    }

    #[test]
    fn base_32_of_the_published_examples() {
        // RFC 4648 section 10, without the padding.
        for (bytes, text) in [
            ("", ""),
            ("f", "MY"),
            ("fo", "MZXQ"),
            ("foo", "MZXW6"),
            ("foob", "MZXW6YQ"),
            ("foobar", "MZXW6YTBOI"),
        ] {
            assert_eq!(base_32(bytes.as_bytes(), RFC_4648), text);
        }
    }

    fn doc(readings: &[(f64, f64, LegDoc)]) -> CastDoc {
        let mut doc = new_doc("", "");
        for (depth, temp, leg) in readings {
            doc.entries.push(Entry {
                depth: Cell { written: depth.to_string(), value: Some(*depth), settled: None },
                temp: Cell { written: temp.to_string(), value: Some(*temp), settled: None },
                oxygen: None,
                leg: *leg,
                line: None,
                switch: SwitchDoc::Auto,
            });
        }
        doc
    }

    const CAST: [(f64, f64, LegDoc); 3] =
        [(0.0, 18.4, LegDoc::Down), (0.5, 18.35, LegDoc::Down), (0.5, 18.3, LegDoc::Up)];

    #[test]
    fn it_is_the_hash_of_the_sorted_lines() {
        let want = base_32(&sha_256(b"down;0;1840\ndown;500;1835\nup;500;1830")[..10], RFC_4648);
        assert_eq!(content_id(&doc(&CAST)), want);
        assert_eq!(want.len(), 16);
        let mut turned = CAST;
        turned.reverse();
        assert_eq!(content_id(&doc(&turned)), want);
    }

    #[test]
    fn only_readings_count() {
        let plain = content_id(&doc(&CAST));
        let mut other = doc(&CAST);
        other.water = "Quillet Pond".into();
        other.bed_m = Some(9.6);
        other.entries[0].switch = SwitchDoc::Off;
        other.entries[1].line = Some(7);
        other.entries[1].temp.written = "18,35 °C".into();
        let mut blank = other.entries[0].clone();
        blank.temp = Cell::default();
        other.entries.push(blank);
        assert_eq!(content_id(&other), plain);
        other.entries[0].temp.settled = Some(SettledCell { text: "18.5".into(), value: Some(18.5) });
        assert_ne!(content_id(&other), plain);
    }

    #[test]
    fn order_at_one_depth_counts() {
        let a = doc(&[(0.5, 18.4, LegDoc::Down), (0.5, 18.3, LegDoc::Down)]);
        let b = doc(&[(0.5, 18.3, LegDoc::Down), (0.5, 18.4, LegDoc::Down)]);
        assert_ne!(content_id(&a), content_id(&b));
    }
}
