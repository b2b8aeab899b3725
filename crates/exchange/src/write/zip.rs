//! A zip of several files, each as it is: nothing is packed, any program opens it (APPNOTE.TXT 6.3, stored entries).

use crate::lines::crc_32;

/// Bit 11 of an entry's flags: names are UTF-8.
const UTF_8: u16 = 1 << 11;
/// Version 2.0 is enough to read it.
const VERSION: u16 = 20;
/// 1 January 1980, the first date that a zip can say: when it was made is nobody's business.
const DATE: u16 = (1 << 5) | 1;

/// A zip of files, by name and bytes, in this order. Those beyond the 65,535 that a zip counts, and those from 4 GB on, are
/// left out.
///
/// ```
/// let zip = layercast_exchange::write::zip::stored(&[("a.txt".to_owned(), b"water".to_vec())]);
/// assert_eq!(layercast_exchange::zip::parts(&zip)[0].bytes.as_deref(), Ok(b"water".as_slice()));
/// ```
pub fn stored(files: &[(String, Vec<u8>)]) -> Vec<u8> {
    let (mut zip, mut list, mut count) = (Vec::new(), Vec::new(), 0u16);
    for (name, bytes) in files.iter().take(usize::from(u16::MAX)) {
        let (Ok(at), Ok(size), Ok(name_size)) =
            (u32::try_from(zip.len()), u32::try_from(bytes.len()), u16::try_from(name.len()))
        else {
            continue;
        };
        let mut entry = Vec::new();
        words(&mut entry, &[VERSION, UTF_8, 0, 0, DATE]);
        doubles(&mut entry, &[crc_32(bytes), size, size]);
        words(&mut entry, &[name_size, 0]);
        zip.extend(b"PK\x03\x04");
        zip.extend(&entry);
        zip.extend(name.as_bytes());
        zip.extend(bytes);
        list.extend(b"PK\x01\x02");
        words(&mut list, &[VERSION]);
        list.extend(&entry);
        words(&mut list, &[0, 0, 0]);
        doubles(&mut list, &[0, at]);
        list.extend(name.as_bytes());
        count += 1;
    }
    let (Ok(at), Ok(size)) = (u32::try_from(zip.len()), u32::try_from(list.len())) else { return Vec::new() };
    zip.extend(list);
    zip.extend(b"PK\x05\x06");
    words(&mut zip, &[0, 0, count, count]);
    doubles(&mut zip, &[size, at]);
    words(&mut zip, &[0]);
    zip
}

fn words(out: &mut Vec<u8>, values: &[u16]) {
    out.extend(values.iter().flat_map(|value| value.to_le_bytes()));
}

fn doubles(out: &mut Vec<u8>, values: &[u32]) {
    out.extend(values.iter().flat_map(|value| value.to_le_bytes()));
}
