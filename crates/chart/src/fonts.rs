//! Names of the fonts. Backends ask for a family, never for a weight, so each weight is a family of its own: the page
//! declares the same names.

/// Words and numbers, weight 400.
pub const PLEX_SANS: &str = "Plex Sans";
/// Weight 500: words in sunlight and on the projector.
pub const PLEX_SANS_500: &str = "Plex Sans 500";
/// Weight 600: heads and names.
pub const PLEX_SANS_600: &str = "Plex Sans 600";
/// Weight 700: heads and names in sunlight and on the projector.
pub const PLEX_SANS_700: &str = "Plex Sans 700";
/// The student's voice, asked for in italic.
pub const SOURCE_SERIF: &str = "Source Serif";

/// Weight 600: the letters over the cores of a class.
pub const SOURCE_SERIF_600: &str = "Source Serif 600";

/// One of the six faces the pictures use.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Face {
    Sans400,
    Sans500,
    Sans600,
    Sans700,
    SerifItalic,
    Serif600,
}

pub(crate) use Face::{Sans400 as SANS, Sans500 as SANS_500, Sans600 as SANS_600, Sans700 as SANS_700};

impl Face {
    /// The families to ask for, best first, as style sheets write them. A name with a number in it needs its quotes.
    pub(crate) fn families(self) -> &'static str {
        match self {
            Face::Sans400 => "'Plex Sans', system-ui, sans-serif",
            Face::Sans500 => "'Plex Sans 500', 'Plex Sans', system-ui, sans-serif",
            Face::Sans600 => "'Plex Sans 600', 'Plex Sans', system-ui, sans-serif",
            Face::Sans700 => "'Plex Sans 700', 'Plex Sans', system-ui, sans-serif",
            Face::SerifItalic => "'Source Serif', Georgia, serif",
            Face::Serif600 => "'Source Serif 600', 'Source Serif', Georgia, serif",
        }
    }

    pub(crate) fn is_italic(self) -> bool {
        self == Face::SerifItalic
    }

    /// From the top of the em box, where a canvas hangs a text by its top, down to the baseline, in em: ascent over ascent
    /// plus descent of the font files (1025 and 275; 1036 and 335).
    pub(crate) fn canvas_baseline_em(self) -> f64 {
        match self {
            Face::SerifItalic | Face::Serif600 => 1036.0 / 1371.0,
            _ => 1025.0 / 1300.0,
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_face_asks_for_a_declared_name_first() {
        let asked = [
            (Face::Sans400, PLEX_SANS),
            (Face::Sans500, PLEX_SANS_500),
            (Face::Sans600, PLEX_SANS_600),
            (Face::Sans700, PLEX_SANS_700),
            (Face::SerifItalic, SOURCE_SERIF),
            (Face::Serif600, SOURCE_SERIF_600),
        ];
        for (face, name) in asked {
            assert!(face.families().starts_with(&format!("'{name}'")), "{face:?}");
        }
    }
}
