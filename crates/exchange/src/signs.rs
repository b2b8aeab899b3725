//! Base 32: bytes as letters and digits.

/// Digits and capital letters without I, L, O and U, so that none is taken for another.
pub(crate) const ALPHABET: &[u8; 32] = b"0123456789ABCDEFGHJKMNPQRSTVWXYZ";

/// Base 32 as RFC 4648 lays out the bits, without padding, in any alphabet.
pub(crate) fn base_32(bytes: &[u8], alphabet: &[u8; 32]) -> String {
    let mut text = String::new();
    let (mut held, mut bits) = (0_u32, 0_u32);
    let mut sign =
        |five: u32| text.push(alphabet.get(five as usize & 31).map_or('A', |sign| char::from(*sign)));
    for byte in bytes {
        held = (held << 8) | u32::from(*byte);
        bits += 8;
        while bits >= 5 {
            bits -= 5;
            sign(held >> bits);
        }
        held &= (1 << bits) - 1;
    }
    if bits > 0 {
        sign(held << (5 - bits));
    }
    text
}

/// The sign a character stands for: small letters count as capitals, O as 0, I and L as 1. `None` for any other.
pub(crate) fn sign(written: char) -> Option<u8> {
    let upper = written.to_ascii_uppercase();
    let meant = match upper {
        'O' => '0',
        'I' | 'L' => '1',
        other => other,
    };
    ALPHABET.iter().position(|sign| char::from(*sign) == meant).and_then(|at| u8::try_from(at).ok())
}

/// The bytes of signs of our alphabet; what is none of them is passed over. Bits left over at the end are dropped.
pub(crate) fn bytes(signs: &str) -> Vec<u8> {
    let mut bytes = Vec::new();
    let (mut held, mut bits) = (0_u32, 0_u32);
    for five in signs.chars().filter_map(sign) {
        held = (held << 5) | u32::from(five);
        bits += 5;
        if bits >= 8 {
            bits -= 8;
            bytes.push((held >> bits).to_le_bytes()[0]);
        }
        held &= (1 << bits) - 1;
    }
    bytes
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn there_and_back() {
        for length in 0..40_u8 {
            let given: Vec<u8> = (0..length).map(|i| i.wrapping_mul(37) ^ 0xa5).collect();
            assert_eq!(bytes(&base_32(&given, ALPHABET)), given);
        }
    }

    #[test]
    fn look_alikes_count() {
        assert_eq!(bytes("OiL0abz"), bytes("0110ABZ"));
        assert_eq!((sign('U'), sign('-'), sign('z'), sign('0')), (None, None, Some(31), Some(0)));
    }
}
