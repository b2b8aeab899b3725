//! What came in, when it is no table: told by its first signs, said in words with what to do.

use layercast_core::Message;

/// What bytes or text are, when they are no table.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Kind {
    /// A picture; the name of its format.
    Picture(&'static str),
    /// A spreadsheet file (zipped, or of the older make).
    Spreadsheet,
    /// A text document or slides.
    Document,
    /// A portable document.
    Pdf,
    /// A packed folder.
    Archive,
    /// Sound or film.
    Media,
    /// A notebook saved by this program.
    Notebook,
    /// Other structured data (JSON, XML).
    Data,
    /// Not text at all.
    Binary,
}

impl Kind {
    /// What it is, and what to do.
    pub fn messages(self) -> Vec<Message> {
        let what = match self {
            Self::Picture(signs) => Message::new("read-error-picture").text("signs", signs),
            Self::Spreadsheet => Message::new("read-error-spreadsheet"),
            Self::Document => Message::new("read-error-document"),
            Self::Pdf => Message::new("read-error-pdf"),
            Self::Archive => Message::new("read-error-archive"),
            Self::Media => Message::new("read-error-media"),
            Self::Notebook => {
                return vec![Message::new("read-error-notebook"), Message::new("read-do-open-notebook")];
            }
            Self::Data => Message::new("read-error-data"),
            Self::Binary => Message::new("read-error-binary"),
        };
        let what_to_do = match self {
            Self::Picture(_) | Self::Media => Message::new("read-do-type"),
            Self::Archive => Message::new("read-do-unpack"),
            _ => Message::new("read-do-copy"),
        };
        vec![what, what_to_do]
    }
}

/// Tells files that are not text by their first bytes. Signatures as their formats define them.
pub(super) fn of_bytes(bytes: &[u8]) -> Option<Kind> {
    let starts = |signature: &[u8]| bytes.starts_with(signature);
    let at =
        |offset: usize, signature: &[u8]| bytes.get(offset..).is_some_and(|rest| rest.starts_with(signature));
    Some(match () {
        () if starts(b"\x89PNG") => Kind::Picture("PNG"),
        () if starts(b"\xff\xd8\xff") => Kind::Picture("JPEG"),
        () if starts(b"GIF8") => Kind::Picture("GIF"),
        () if starts(b"II*\0") || starts(b"MM\0*") => Kind::Picture("TIFF"),
        () if starts(b"RIFF") && at(8, b"WEBP") => Kind::Picture("WEBP"),
        () if starts(b"BM") && at(6, b"\0\0\0\0") => Kind::Picture("BM"),
        () if at(4, b"ftyphei") || at(4, b"ftypmif1") || at(4, b"ftypavif") => Kind::Picture("HEIC"),
        () if at(4, b"ftyp") || starts(b"RIFF") || starts(b"ID3") || starts(b"OggS") => Kind::Media,
        () if starts(b"%PDF") => Kind::Pdf,
        () if starts(b"PK\x03\x04") || starts(b"PK\x05\x06") => zipped(bytes),
        () if starts(b"\xd0\xcf\x11\xe0\xa1\xb1\x1a\xe1") => Kind::Spreadsheet,
        () if starts(b"\x1f\x8b") || starts(b"7z\xbc\xaf\x27\x1c") || starts(b"Rar!\x1a\x07") => {
            Kind::Archive
        }
        () if starts(b"SQLite format 3\0") || starts(b"\0asm") || starts(b"\x7fELF") => Kind::Binary,
        () => return None,
    })
}

/// What a zipped file holds, by the names of its members.
fn zipped(bytes: &[u8]) -> Kind {
    // Member names stand in the local headers and again in the directory at the end.
    let head = bytes.get(..8192).unwrap_or(bytes);
    let tail = bytes.get(bytes.len().saturating_sub(8192)..).unwrap_or(bytes);
    let holds =
        |name: &[u8]| [head, tail].iter().any(|part| part.windows(name.len()).any(|window| window == name));
    if holds(b"xl/") || holds(b"opendocument.spreadsheet") || holds(b"Index/Tables") {
        Kind::Spreadsheet
    } else if holds(b"word/") || holds(b"ppt/") || holds(b"opendocument.text") {
        Kind::Document
    } else {
        Kind::Archive
    }
}

/// Tells text that is no table; web pages are told elsewhere, for a table may stand in them.
pub(super) fn of_text(text: &str) -> Option<Kind> {
    let start = text.trim_start();
    if start.starts_with("{\\rtf") {
        return Some(Kind::Document);
    }
    if start.starts_with('{') || start.starts_with('[') {
        let whole = serde_json::from_str::<serde::de::IgnoredAny>(start).is_ok();
        let broken = start.starts_with('{') && start.contains("\":");
        if whole || broken {
            let is_ours = start.get(..2000).unwrap_or(start).contains("\"layercast-");
            return Some(if is_ours { Kind::Notebook } else { Kind::Data });
        }
    }
    let opening: String = start.chars().take(400).collect::<String>().to_ascii_lowercase();
    if opening.starts_with("<svg") || (opening.starts_with("<?xml") && opening.contains("<svg")) {
        return Some(Kind::Picture("SVG"));
    }
    if opening.starts_with("<?xml") && !opening.contains("<html") {
        return Some(Kind::Data);
    }
    let (mut all, mut odd) = (0_usize, 0_usize);
    for c in start.chars().take(20_000) {
        all += 1;
        let is_odd = c == char::REPLACEMENT_CHARACTER
            || (c.is_control() && !matches!(c, '\n' | '\r' | '\t' | '\u{b}' | '\u{c}'));
        odd += usize::from(is_odd);
        if c == '\0' {
            return Some(Kind::Binary);
        }
    }
    // A few garbled signs are a wrong encoding; one in twenty is no text.
    (odd * 20 > all && odd > 4).then_some(Kind::Binary)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn files_are_told_by_their_first_bytes() {
        assert_eq!(of_bytes(b"\x89PNG\r\n\x1a\n"), Some(Kind::Picture("PNG")));
        assert_eq!(of_bytes(b"PK\x03\x04....xl/workbook.xml"), Some(Kind::Spreadsheet));
        assert_eq!(of_bytes(b"PK\x03\x04....word/document.xml"), Some(Kind::Document));
        assert_eq!(of_bytes(b"PK\x03\x04....pond.csv"), Some(Kind::Archive));
        assert_eq!(of_bytes(b"%PDF-1.7"), Some(Kind::Pdf));
        assert_eq!(of_bytes(b"Depth,Temp\n0,18"), None);
        assert_eq!(of_bytes(b"BM pond depth 0 m"), None);
        assert_eq!(of_bytes(b""), None);
    }

    #[test]
    fn text_that_is_no_table() {
        assert_eq!(of_text("{\"schema\":\"layercast-notebook\",\"version\":1}"), Some(Kind::Notebook));
        assert_eq!(of_text("[1,2,3]"), Some(Kind::Data));
        assert_eq!(of_text("[m],[C]\n0,18"), None);
        assert_eq!(of_text("<?xml version=\"1.0\"?><kml/>"), Some(Kind::Data));
        assert_eq!(of_text("a\0b"), Some(Kind::Binary));
        assert_eq!(of_text("Depth;Temp \u{fffd}C\n0;18"), None);
    }
}
