//! Colours and line weights of the pictures, by role. The page's style sheet has the same roles under the same names; no
//! colour is written anywhere else in this crate.

use crate::fonts::{self, Face};

/// The four themes.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Theme {
    /// Indoors, light.
    #[default]
    Day,
    /// Dark.
    Night,
    /// At the water: black on white, heavier lines, tints almost gone.
    Sunlight,
    /// For the last row of a classroom.
    Projector,
}

impl Theme {
    /// Every theme.
    pub const ALL: [Theme; 4] = [Theme::Day, Theme::Night, Theme::Sunlight, Theme::Projector];

    pub(crate) fn roles(self) -> &'static Roles {
        match self {
            Theme::Day => &DAY,
            Theme::Night => &NIGHT,
            Theme::Sunlight => &SUNLIGHT,
            Theme::Projector => &PROJECTOR,
        }
    }
}

/// Red, green, blue.
pub(crate) type Colour = (u8, u8, u8);

/// One theme. Lengths are in u: px at a root of 16.
#[derive(Debug)]
pub(crate) struct Roles {
    /// Paper of the picture.
    pub sheet: Colour,
    /// Text, curve, what was found.
    pub ink: Colour,
    /// Second voice.
    pub ink_2: Colour,
    /// Grid.
    pub line: Colour,
    /// The student's own.
    pub you: Colour,
    /// Text on `you`.
    pub you_on: Colour,
    /// Ground of the student's column.
    pub you_tint: Colour,
    /// Words of a doubt.
    pub doubt: Colour,
    /// Ground of its sign.
    pub doubt_tint: Colour,
    /// Its lines.
    pub doubt_line: Colour,
    /// Tint of the warm, mixed layer.
    pub warm: Colour,
    /// Its pattern and words.
    pub warm_ink: Colour,
    /// Tint of the steep layer.
    pub steep: Colour,
    /// Its pattern and words.
    pub steep_ink: Colour,
    /// Tint of the deep layer.
    pub deep: Colour,
    /// Its pattern and words.
    pub deep_ink: Colour,
    /// Readings going down.
    pub down: Colour,
    /// Readings coming up.
    pub up: Colour,
    /// The flap.
    pub cover: Colour,
    /// Its edge.
    pub cover_line: Colour,
    /// Bars of °C per metre.
    pub bar: Colour,
    /// Soft edges of a range.
    pub fuzz: Colour,
    /// Grid, ticks, bed.
    pub hair_u: f64,
    /// Frames, axes, brackets.
    pub rule_u: f64,
    /// The profile.
    pub profile_u: f64,
    /// Found depths.
    pub mark_u: f64,
    /// Patterns of the layers.
    pub pattern_u: f64,
    /// Outline of △.
    pub point_u: f64,
    /// Half width of a reading.
    pub point_half_u: f64,
    /// Smallest text.
    pub fine_u: f64,
    /// Text one reads.
    pub text_u: f64,
    /// Words and numbers.
    pub regular: Face,
    /// Heads, names of layers, the steepest number.
    pub strong: Face,
}

const fn rgb(hex: u32) -> Colour {
    ((hex >> 16) as u8, (hex >> 8) as u8, hex as u8)
}

static DAY: Roles = Roles {
    sheet: rgb(0xfcfdfb),
    ink: rgb(0x12232c),
    ink_2: rgb(0x465860),
    line: rgb(0xc9d2d0),
    you: rgb(0x6a2c9c),
    you_on: rgb(0xffffff),
    you_tint: rgb(0xf1e9f8),
    doubt: rgb(0x804f00),
    doubt_tint: rgb(0xfff0cc),
    doubt_line: rgb(0xb06c00),
    warm: rgb(0xfcefd4),
    warm_ink: rgb(0x8a5606),
    steep: rgb(0xdcead6),
    steep_ink: rgb(0x39693f),
    deep: rgb(0xcbdfee),
    deep_ink: rgb(0x1c5a8a),
    down: rgb(0x0b5b92),
    up: rgb(0xb0430a),
    cover: rgb(0xe2e8e6),
    cover_line: rgb(0xa9b7b7),
    bar: rgb(0x5b7783),
    fuzz: rgb(0x12232c),
    hair_u: 1.0,
    rule_u: 1.5,
    profile_u: 2.5,
    mark_u: 2.25,
    pattern_u: 1.1,
    point_u: 1.4,
    point_half_u: 4.6,
    fine_u: 13.0,
    text_u: 15.0,
    regular: fonts::SANS,
    strong: fonts::SANS_600,
};

static NIGHT: Roles = Roles {
    sheet: rgb(0x111d23),
    ink: rgb(0xe6edea),
    ink_2: rgb(0xa9b9bd),
    line: rgb(0x2a3a42),
    you: rgb(0xcda8f4),
    you_on: rgb(0x1f0d30),
    you_tint: rgb(0x2a1f3a),
    doubt: rgb(0xf2c261),
    doubt_tint: rgb(0x33290f),
    doubt_line: rgb(0xd39a2b),
    warm: rgb(0x322a19),
    warm_ink: rgb(0xe5b568),
    steep: rgb(0x1c3225),
    steep_ink: rgb(0x8fcb98),
    deep: rgb(0x153049),
    deep_ink: rgb(0x84bdec),
    down: rgb(0x74bdf2),
    up: rgb(0xf5a067),
    cover: rgb(0x1b2a31),
    cover_line: rgb(0x475b64),
    bar: rgb(0x8aa5b0),
    fuzz: rgb(0xe6edea),
    hair_u: 1.0,
    rule_u: 1.5,
    profile_u: 2.5,
    mark_u: 2.25,
    pattern_u: 1.1,
    point_u: 1.4,
    point_half_u: 4.6,
    fine_u: 13.0,
    text_u: 15.0,
    regular: fonts::SANS,
    strong: fonts::SANS_600,
};

static SUNLIGHT: Roles = Roles {
    sheet: rgb(0xffffff),
    ink: rgb(0x000000),
    ink_2: rgb(0x1d2529),
    line: rgb(0xb3bcbf),
    you: rgb(0x4f1285),
    you_on: rgb(0xffffff),
    you_tint: rgb(0xefe4fa),
    doubt: rgb(0x5c3600),
    doubt_tint: rgb(0xffe7a8),
    doubt_line: rgb(0x6b4200),
    warm: rgb(0xfff6e2),
    warm_ink: rgb(0x5d3800),
    steep: rgb(0xe6f2e2),
    steep_ink: rgb(0x174a20),
    deep: rgb(0xd6e8f7),
    deep_ink: rgb(0x063d6b),
    down: rgb(0x003f73),
    up: rgb(0x8a2b00),
    cover: rgb(0xe4e8e9),
    cover_line: rgb(0x2c363b),
    bar: rgb(0x2f4650),
    fuzz: rgb(0x000000),
    hair_u: 1.25,
    rule_u: 2.25,
    profile_u: 3.75,
    mark_u: 3.0,
    pattern_u: 1.6,
    point_u: 2.0,
    point_half_u: 5.0,
    fine_u: 14.0,
    text_u: 16.0,
    regular: fonts::SANS_500,
    strong: fonts::SANS_700,
};

static PROJECTOR: Roles = Roles {
    sheet: rgb(0xffffff),
    ink: rgb(0x07141b),
    ink_2: rgb(0x2c3b42),
    line: rgb(0xb4c0c0),
    you: rgb(0x5b1f94),
    you_on: rgb(0xffffff),
    you_tint: rgb(0xeadcf8),
    doubt: rgb(0x6a4000),
    doubt_tint: rgb(0xffe6a6),
    doubt_line: rgb(0x8f5800),
    warm: rgb(0xffe9ba),
    warm_ink: rgb(0x744400),
    steep: rgb(0xcfe6c4),
    steep_ink: rgb(0x22562b),
    deep: rgb(0xaed0ec),
    deep_ink: rgb(0x0c4674),
    down: rgb(0x004c86),
    up: rgb(0x9c3600),
    cover: rgb(0xdfe6e5),
    cover_line: rgb(0x7d8d90),
    bar: rgb(0x3e5965),
    fuzz: rgb(0x07141b),
    hair_u: 1.2,
    rule_u: 2.55,
    profile_u: 4.0,
    mark_u: 3.2,
    pattern_u: 2.3,
    point_u: 2.55,
    point_half_u: 5.2,
    fine_u: 14.0,
    text_u: 15.0,
    regular: fonts::SANS_500,
    strong: fonts::SANS_700,
};

#[cfg(test)]
mod tests {
    use super::*;

    /// Relative luminance and contrast ratio, WCAG 2.2 (w3.org/TR/WCAG22, definitions).
    fn luminance(colour: Colour) -> f64 {
        let part = |v: u8| {
            let v = f64::from(v) / 255.0;
            if v <= 0.04045 { v / 12.92 } else { libm::pow((v + 0.055) / 1.055, 2.4) }
        };
        0.2126 * part(colour.0) + 0.7152 * part(colour.1) + 0.0722 * part(colour.2)
    }

    fn contrast(a: Colour, b: Colour) -> f64 {
        let (a, b) = (luminance(a), luminance(b));
        (a.max(b) + 0.05) / (a.min(b) + 0.05)
    }

    #[test]
    fn the_formula_gives_21_for_black_on_white() {
        assert!((contrast((0, 0, 0), (255, 255, 255)) - 21.0).abs() < 1e-9);
    }

    #[test]
    fn words_and_needed_strokes_can_be_told_from_their_ground() {
        for theme in Theme::ALL {
            let r = theme.roles();
            // WCAG 2.2, success criteria 1.4.3 (text, 4.5) and 1.4.11 (graphics, 3).
            let pairs = [
                ("ink on sheet", r.ink, r.sheet, 4.5),
                ("ink on deep", r.ink, r.deep, 4.5),
                ("ink on steep", r.ink, r.steep, 4.5),
                ("second ink on sheet", r.ink_2, r.sheet, 4.5),
                ("second ink on cover", r.ink_2, r.cover, 4.5),
                ("you on its tint", r.you, r.you_tint, 4.5),
                ("text on you", r.you_on, r.you, 4.5),
                ("doubt on its tint", r.doubt, r.doubt_tint, 4.5),
                ("doubt on sheet", r.doubt, r.sheet, 4.5),
                ("warm words", r.warm_ink, r.warm, 4.5),
                ("steep words", r.steep_ink, r.steep, 4.5),
                ("deep words", r.deep_ink, r.deep, 4.5),
                ("you on deep", r.you, r.deep, 3.0),
                ("doubt line on sheet", r.doubt_line, r.sheet, 3.0),
                ("down on deep", r.down, r.deep, 3.0),
                ("up on deep", r.up, r.deep, 3.0),
                ("bar on sheet", r.bar, r.sheet, 3.0),
                ("bar on deep", r.bar, r.deep, 3.0),
            ];
            for (name, front, back, least) in pairs {
                let ratio = contrast(front, back);
                assert!(ratio >= least, "{theme:?}: {name} has {ratio:.2}, needs {least}");
            }
        }
    }
}
