//! The words of tables: what a head says, how a missing cell, a total or the way of the probe is written.
//!
//! English and Spanish in full, the commonest German and French ones beside them.
//!
//! Long because it is a list of words in four languages.

use crate::document::LegDoc;
use crate::units::{UnitWord, unit_word};

/// What the words of a column's head say.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub(super) struct Head {
    /// A depth.
    pub depth: bool,
    /// A water temperature.
    pub temp: bool,
    /// Going down.
    pub down: bool,
    /// Coming up.
    pub up: bool,
    /// The column says the way, row by row.
    pub leg: bool,
    /// Dissolved oxygen.
    pub oxygen: bool,
    /// In per cent of saturation.
    pub percent: bool,
    /// In milligrams a litre, or in ppm.
    pub mg_l: bool,
    /// Salt, or the conductivity that tells of it.
    pub salt: bool,
    /// The Secchi disk.
    pub secchi: bool,
    /// Something that is not used, whatever else it says: time, air, light, notes …
    pub other: bool,
    /// A word that makes it something else unless it also names a depth, a temperature or a way: group, lake, number …
    pub aside: bool,
    /// The unit written in it.
    pub unit: Option<UnitWord>,
}

impl Head {
    /// Says what the column is, in one way or another.
    pub fn says_something(&self) -> bool {
        self.depth
            || self.temp
            || self.down
            || self.up
            || self.leg
            || self.oxygen
            || self.secchi
            || self.other
            || self.aside
            || self.unit.is_some()
    }

    /// The way it names, if it names exactly one.
    pub fn way(&self) -> Option<LegDoc> {
        match (self.down, self.up) {
            (true, false) => Some(LegDoc::Down),
            (false, true) => Some(LegDoc::Up),
            _ => None,
        }
    }
}

#[rustfmt::skip]
const DEPTH: &[&str] = &[
    "depth", "depths", "prof", "profundidad", "profundidades", "hondura", "profondeur", "tiefe", "tiefen",
    "wassertiefe", "z", "deep",
];
#[rustfmt::skip]
const TEMP: &[&str] = &[
    "temp", "temps", "tmp", "temperature", "temperatures", "temperatura", "temperaturas", "temperatur",
    "temperaturen", "t", "tw", "wtemp", "watertemp", "wassertemperatur", "wt",
];
#[rustfmt::skip]
const DOWN: &[&str] = &[
    "down", "downcast", "downward", "downwards", "descending", "descent", "lowering", "bajar", "bajada",
    "bajando", "baja", "descenso", "descendiendo", "abwarts", "runter", "herunter", "hinunter", "descente",
    "descendant",
];
#[rustfmt::skip]
const UP: &[&str] = &[
    "up", "upcast", "upward", "upwards", "rising", "raising", "ascending", "ascent", "subir", "subida",
    "subiendo", "sube", "ascenso", "ascendiendo", "aufwarts", "hoch", "herauf", "hinauf", "rauf", "montee",
    "remontee",
];
const LEG: &[&str] =
    &["leg", "way", "direction", "sentido", "direccion", "recorrido", "richtung", "sens", "updown", "downup"];
#[rustfmt::skip]
const OTHER: &[&str] = &[
    "time", "tiempo", "date", "datetime", "timestamp", "clock", "hour", "hora", "fecha", "dia", "day",
    "zeit", "uhrzeit", "datum", "heure", "note", "notes", "comment", "comments", "remark", "remarks",
    "nota", "notas", "comentario", "comentarios", "observaciones", "bemerkung", "bemerkungen", "ph",
    "us", "ml", "umol", "mmol", "µmol", "μmol", "light", "luz", "lux", "par", "air", "aire", "luft", "pressure",
    "presion", "flag", "station", "estacion", "turbidity", "turbidez", "ntu", "chlorophyll", "clorofila",
    "chl", "density", "densidad", "bottom", "fondo", "total", "diff",
    "difference", "diferencia", "apart", "sd", "stdev", "battery", "latitude", "longitude", "lat", "lon",
    "lng", "wind", "viento", "sky", "cielo", "angle", "angulo",
];
/// Salt: densities are those of fresh water, so it is not used, and that is said.
const SALT: &[&str] = &["conductivity", "conductividad", "cond", "salinity", "salinidad", "sal"];
/// Dissolved oxygen.
const OXYGEN: &[&str] = &["oxygen", "oxigeno", "oxygene", "sauerstoff", "o2", "do", "od", "odo", "oxy"];
/// Per cent of saturation.
const PERCENT: &[&str] =
    &["saturation", "saturacion", "sat", "sattigung", "percent", "pct", "porcentaje", "prozent"];

const ASIDE: &[&str] = &[
    "site", "location", "place", "sitio", "lugar", "ort", "group", "grupo", "gruppe", "team", "equipo", "id",
    "no", "nr", "num", "number", "numero", "row", "fila", "sample", "muestra", "cast", "lake", "lago",
];

/// Reads a head: "Temp. going down (°C)", "profundidad_m", "T↑".
pub(super) fn head(text: &str) -> Head {
    let mut found = Head { unit: unit_in(text), ..Head::default() };
    let tokens = tokens(text);
    for token in &tokens {
        let is = |words: &[&str]| words.contains(&token.as_str());
        found.depth |= is(DEPTH);
        found.temp |= is(TEMP);
        found.down |= is(DOWN);
        found.up |= is(UP);
        found.leg |= is(LEG);
        found.oxygen |= is(OXYGEN);
        found.percent |= is(PERCENT);
        found.mg_l |= is(&["mg", "ppm"]);
        found.secchi |= is(&["secchi"]);
        found.salt |= is(SALT);
        found.other |= is(OTHER) || is(SALT);
        found.aside |= is(ASIDE);
    }
    found.percent |= text.contains('%');
    // "mg/L" alone, or "% sat", is oxygen; beside other words it is something else that is dissolved.
    let alone = tokens.iter().all(|token| [&["mg", "l"], PERCENT].concat().contains(&token.as_str()));
    found.oxygen |= alone && (tokens.first().is_some_and(|token| token == "mg") || found.percent);
    found.other |= (found.mg_l || found.percent) && !found.oxygen;
    // The depth, the temperature or the time of the oxygen probe is neither.
    found.other |=
        found.oxygen && (found.temp || found.depth) || found.secchi && (found.temp || found.oxygen);
    if found.down && found.up {
        // "down/up" names neither: it is the head of a column that says the way.
        (found.down, found.up, found.leg) = (false, false, true);
    }
    found
}

/// Small letters without accents, split wherever letters, digits and other signs meet. Arrows become words.
pub(super) fn tokens(text: &str) -> Vec<String> {
    let mut tokens: Vec<String> = Vec::new();
    let mut last = ' ';
    for c in text.chars().take(300).flat_map(char::to_lowercase) {
        let c = unaccented(c);
        match c {
            '↓' | '▽' | '▼' => tokens.push("down".to_owned()),
            '↑' | '△' | '▲' => tokens.push("up".to_owned()),
            _ if c.is_alphanumeric() => {
                let starts = !last.is_alphanumeric() || last.is_ascii_digit() != c.is_ascii_digit();
                // "O2" stays one token: the digit belongs to the letter before it.
                let joins = c == '2' && tokens.last().is_some_and(|token| token == "o");
                match tokens.last_mut() {
                    Some(token) if !starts || (joins && last.is_alphanumeric()) => token.push(c),
                    _ => tokens.push(c.to_string()),
                }
            }
            _ => {}
        }
        last = c;
    }
    tokens
}

fn unaccented(c: char) -> char {
    match c {
        'á' | 'à' | 'â' | 'ä' => 'a',
        'é' | 'è' | 'ê' | 'ë' => 'e',
        'í' | 'ì' | 'î' | 'ï' => 'i',
        'ó' | 'ò' | 'ô' | 'ö' => 'o',
        'ú' | 'ù' | 'û' | 'ü' => 'u',
        'ñ' => 'n',
        _ => c,
    }
}

/// The unit in a head: in brackets, or its last word or two.
fn unit_in(text: &str) -> Option<UnitWord> {
    if let Some(word) = unit_word(text) {
        return Some(word);
    }
    for (open, close) in [('(', ')'), ('[', ']'), ('{', '}')] {
        let inside = text.rsplit_once(open).map(|(_, after)| after.split(close).next().unwrap_or(""));
        if let Some(word) = inside.and_then(unit_word) {
            return Some(word);
        }
    }
    let words: Vec<&str> = text
        .split([' ', '_', ',', '/', ':', ';', '-', '\u{a0}', '(', '[', '\n'])
        .filter(|w| !w.is_empty())
        .collect();
    let (last, before) = words.split_last()?;
    let two = before.last().map(|word| format!("{word}{last}"));
    match two.as_deref().and_then(unit_word) {
        Some(word) => Some(word),
        None if before.is_empty() => None,
        None => unit_word(last),
    }
}

/// How a cell without a reading is written.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Missing {
    /// Nothing in it.
    Empty,
    /// A dash, "n/a", "s/d" and their like.
    Said,
    /// What a spreadsheet writes when it cannot compute ("#VALUE!", "####").
    SheetError,
    /// A number that stands for "no reading" (−999, −9999).
    Code,
}

/// Whether a (trimmed) cell says that there is no reading.
pub(crate) fn missing(text: &str) -> Option<Missing> {
    #[rustfmt::skip]
    const SAID: &[&str] = &[
        "na", "nd", "null", "none", "nil", "nan", "x", "xx", "xxx", "blank", "missing", "nodata",
        "noreading", "notread", "notmeasured", "sd", "sindato", "sindatos", "sinlectura", "nohay", "falta",
        "faltan", "vacio", "ninguno", "ka", "fehlt", "keine", "leer", "nv", "void", "empty", "nm",
        "unknown", "skipped", "error", "err", "nohaydatos",
    ];
    let trimmed = text.trim();
    if trimmed.is_empty() {
        return Some(Missing::Empty);
    }
    let mut bytes = trimmed.bytes();
    if bytes.next().is_some_and(|byte| byte.is_ascii_digit()) {
        return None; // the common case, decided at once
    }
    if trimmed.len() > 40 {
        return None;
    }
    if matches!(
        trimmed,
        "-999" | "-9999" | "-99999" | "-999.0" | "-9999.0" | "-999.9" | "-99.99" | "−999" | "−9999"
    ) {
        return Some(Missing::Code);
    }
    if trimmed.starts_with('#') && trimmed.chars().all(|c| !c.is_ascii_digit() || c == '0') {
        let word: String = trimmed.chars().filter(|c| c.is_alphabetic()).collect::<String>().to_lowercase();
        let said = matches!(word.as_str(), "na" | "nv" | "nd");
        return Some(if said { Missing::Said } else { Missing::SheetError });
    }
    let mut word = String::new();
    for c in trimmed.chars().flat_map(char::to_lowercase) {
        if c.is_alphanumeric() {
            word.push(unaccented(c));
        } else if !(c.is_whitespace() || "-–—−_./\\?*()[]<>!…·:~'\"".contains(c)) {
            return None;
        }
    }
    (word.is_empty() || SAID.contains(&word.as_str())).then_some(Missing::Said)
}

/// Whether a cell begins a row of totals or means.
pub(super) fn is_total(text: &str) -> bool {
    #[rustfmt::skip]
    const TOTAL: &[&str] = &[
        "mean", "means", "average", "averages", "avg", "total", "totals", "sum", "min", "minimum", "max",
        "maximum", "median", "sd", "stdev", "std", "range", "count", "media", "medias", "promedio", "suma",
        "totales", "minimo", "maximo", "mediana", "mittel", "mittelwert", "summe", "moyenne", "somme",
        "desviacion", "recuento",
    ];
    let tokens = tokens(text);
    tokens.len() <= 3 && tokens.first().is_some_and(|token| TOTAL.contains(&token.as_str()))
}

/// The way a cell or a line of its own names: "Down", "coming up", "Bajada", "↑".
pub(super) fn way(text: &str) -> Option<LegDoc> {
    if text.len() > 80 {
        return None;
    }
    let tokens = tokens(text);
    if tokens.len() > 4 {
        return None;
    }
    #[rustfmt::skip]
    const BESIDE: &[&str] = &[
        "going", "coming", "went", "came", "the", "way", "cast", "leg", "reading", "readings", "series",
        "probe", "on", "temp", "temperature", "temperatures", "al", "de", "la", "lecturas", "serie",
        "temperatura", "temperaturas", "m", "c", "f",
    ];
    // A note may hold such a word too ("wind picks up"): then it does not stand alone.
    let known = |token: &String| [DOWN, UP, BESIDE].iter().any(|words| words.contains(&token.as_str()));
    if tokens.len() > 1 && !tokens.iter().all(known) {
        return None;
    }
    let names = |words: &[&str], short: &[&str]| {
        tokens.iter().any(|token| words.contains(&token.as_str()))
            || (tokens.len() == 1 && tokens.first().is_some_and(|token| short.contains(&token.as_str())))
    };
    match (names(DOWN, &["d", "dn", "b", "ab", "ida"]), names(UP, &["u", "s", "auf", "vuelta"])) {
        (true, false) => Some(LegDoc::Down),
        (false, true) => Some(LegDoc::Up),
        _ => None,
    }
}

/// The depth a word stands for: 0 for "surface".
pub(crate) fn is_surface(text: &str) -> bool {
    matches!(
        text.trim().to_lowercase().as_str(),
        "surface" | "surf" | "top" | "sup" | "superficie" | "oberfläche" | "surf."
    )
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::document::Unit;

    fn role(text: &str) -> &'static str {
        match head(text) {
            Head { other: true, .. } => "other",
            Head { secchi: true, .. } => "secchi",
            Head { oxygen: true, percent: true, .. } => "oxygen %",
            Head { oxygen: true, .. } => "oxygen",
            Head { leg: true, .. } => "leg",
            Head { depth: true, .. } => "depth",
            Head { down: true, .. } => "down",
            Head { up: true, .. } => "up",
            Head { temp: true, .. } => "temp",
            _ => "?",
        }
    }

    #[test]
    fn heads_in_four_languages() {
        for (text, want) in [
            ("Depth (m)", "depth"),
            ("depth_m", "depth"),
            ("Prof. (m)", "depth"),
            ("Profundidad, m", "depth"),
            ("Tiefe [m]", "depth"),
            ("Temp going down (°C)", "down"),
            ("T↑", "up"),
            ("Al bajar", "down"),
            ("Subida °C", "up"),
            ("Temperatura (ºC)", "temp"),
            ("Air temp", "other"),
            ("Secchi depth", "secchi"),
            ("Disco de Secchi (m)", "secchi"),
            ("Secchi temp", "other"),
            ("O2 mg/L", "oxygen"),
            ("DO", "oxygen"),
            ("DO (ppm)", "oxygen"),
            ("Oxígeno disuelto (mg/L)", "oxygen"),
            ("OD_mg_L", "oxygen"),
            ("Dissolved oxygen going down", "oxygen"),
            ("mg/L", "oxygen"),
            ("DO %", "oxygen %"),
            ("% sat", "oxygen %"),
            ("Saturación de oxígeno (%)", "oxygen %"),
            ("Nitrate mg/L", "other"),
            ("Humidity %", "other"),
            ("O2 (ml/L)", "other"),
            ("DO temp", "other"),
            ("DO time", "other"),
            ("Way", "leg"),
            ("down/up", "leg"),
            ("Bottom depth", "other"),
            ("Quillet Pond", "?"),
        ] {
            assert_eq!(role(text), want, "{text}");
        }
    }

    #[test]
    fn units_in_heads() {
        let known = |unit| Some(UnitWord::Known(unit));
        for (text, want) in [
            ("Depth (m)", known(Unit::M)),
            ("depth_cm", known(Unit::Cm)),
            ("Depth in feet", known(Unit::Ft)),
            ("Temp deg F", known(Unit::F)),
            ("Water temp [°C], down", known(Unit::C)),
            ("Depth", None),
            ("°C", known(Unit::C)),
            ("Depth (mm)", Some(UnitWord::Foreign)),
            ("Group", None),
        ] {
            assert_eq!(head(text).unit, want, "{text}");
        }
    }

    #[test]
    fn missing_cells_of_every_spelling() {
        for text in [
            "", "-", "–", "—", "n/a", "NA", "N.A.", "null", "None", "x", ".", "?", "--", "#N/A", "#VALUE!",
            "####", "nan", "missing", "s/d", "sin dato", "n/d", "k. A.", "-9999", "(blank)", "#DIV/0!",
            "no data", "…", "*",
        ] {
            assert!(missing(text).is_some(), "{text}");
        }
        for text in ["18.4", "0", "1O.5", "deep", "#1", "-9", "NaN4", "lO"] {
            assert!(missing(text).is_none(), "{text}");
        }
    }
}
