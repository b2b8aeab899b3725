//! Bytes made small and large again (DEFLATE, RFC 1951).

use miniz_oxide::{deflate, inflate};

/// Bytes, deflated.
pub fn pack(bytes: &[u8]) -> Vec<u8> {
    deflate::compress_to_vec(bytes, 9)
}

/// Deflated bytes, made large again; `None` when they are broken or come to more than `most` bytes.
pub fn unpack(packed: &[u8], most: usize) -> Option<Vec<u8>> {
    inflate::decompress_to_vec_with_limit(packed, most).ok()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn there_and_back_within_the_limit() {
        let text = b"depth depth depth 18.4 18.4 18.4".repeat(20);
        let packed = pack(&text);
        assert!(packed.len() * 8 < text.len());
        assert_eq!(unpack(&packed, text.len()), Some(text.clone()));
        assert_eq!(unpack(&packed, text.len() - 1), None);
        assert_eq!(unpack(&[0xff, 0xff], 100), None);
        assert_eq!(unpack(&packed[..packed.len() / 2], 10_000), None);
    }
}
