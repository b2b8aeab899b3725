//! The columns of the table of readings: their names, what they hold, what the published vocabularies call it.
//!
//! Names begin with a word that tells [`crate::read`] what the column is; one that only says something of the reading
//! begins with "note", and is passed over there.

/// What a column holds.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Holds {
    /// A count, from 1.
    Count,
    /// A number.
    Decimal,
    /// A number that is not below 0.
    Amount,
    /// A text.
    Text,
    /// One of these words.
    OneOf(&'static [&'static str]),
    /// Any of these words, with a semicolon between them.
    AnyOf(&'static [&'static str]),
    /// A flag.
    Flag,
    /// "true" or "false".
    Truth,
}

/// One column.
#[derive(Clone, Copy, Debug)]
pub(super) struct Column {
    pub name: &'static str,
    pub holds: Holds,
    /// Never empty.
    pub required: bool,
    /// Unit: its sign, and its code in UN/CEFACT Recommendation 20 (codes from memory).
    pub unit: Option<(&'static str, &'static str)>,
    /// Address of the CF standard name, where there is one for such water.
    pub property: Option<&'static str>,
    pub about: &'static str,
}

const METRE: Option<(&str, &str)> = Some(("m", "MTR"));
const CELSIUS: Option<(&str, &str)> = Some(("°C", "CEL"));
const MG_PER_L: Option<(&str, &str)> = Some(("mg/L", "M1"));

/// Ways of the probe.
pub(super) const WAYS: &[&str] = &["down", "up", "unknown"];
/// What is said of a reading.
pub(super) const NOTES: &[&str] = &[
    "invented",
    "missing",
    "left_out",
    "kept",
    "temperature_changed",
    "temperature_added",
    "depth_changed",
    "corrected",
    "above_water",
    "doubt_range",
    "doubt_spike",
    "doubt_pair",
    "doubt_inversion",
];

const fn column(name: &'static str, holds: Holds, about: &'static str) -> Column {
    Column { name, holds, required: false, unit: None, property: None, about }
}

/// All of them, in order.
///
/// CF names: read in the tables 60 and 80 of standard names; `depth` is the distance below the surface. For temperature
/// they have `sea_water_temperature` and no name for a lake, so none is claimed. WQX "Temperature, water" and the address of
/// the NERC vocabulary: from memory.
/// QARTOD flags: manual for temperature and salinity, version 2.0, 2016, doi 10.7289/V5V40SD4.
pub(super) const COLUMNS: &[Column] = &[
    Column {
        required: true,
        ..column("number", Holds::Count, "Number of the reading, in the order it was written down.")
    },
    column("lake", Holds::Text, "The water, as the group named it."),
    column("group", Holds::Text, "Letter or code of the group, never a person's name."),
    Column {
        required: true,
        ..column(
            "cast",
            Holds::Text,
            "Short name of the cast, made of its readings: the same readings have the same name.",
        )
    },
    Column {
        required: true,
        ..column("direction", Holds::OneOf(WAYS), "Way of the probe when it was read.")
    },
    Column {
        unit: METRE,
        property: Some("http://vocab.nerc.ac.uk/standard_name/depth/"),
        ..column(
            "depth_m",
            Holds::Decimal,
            "Depth below the surface, after the corrections in force. Empty where none could be read, and where a correction puts the mark above the water. CF standard name: depth.",
        )
    },
    Column {
        unit: CELSIUS,
        ..column(
            "water_temp_c",
            Holds::Decimal,
            "Water temperature, after the corrections in force. Empty where none was read. CF publishes sea_water_temperature for the sea and no name for a lake. WQX characteristic: Temperature, water.",
        )
    },
    Column {
        required: true,
        ..column(
            "flag",
            Holds::Flag,
            "QARTOD flag, the worst of gross range, spike (smaller step to the two neighbours; our form) and density inversion: 1 pass, 2 not evaluated, 3 suspect, 4 fail, 9 missing.",
        )
    },
    Column {
        required: true,
        ..column("used", Holds::Truth, "Whether the profile of the cast uses the reading.")
    },
    column("note", Holds::AnyOf(NOTES), "What was decided about the reading, and what is still doubted."),
    column(
        "note_temp_written",
        Holds::Text,
        "The temperature as first written, where a person put another in its place.",
    ),
    column(
        "note_depth_written",
        Holds::Text,
        "The depth as first written, where a person put another in its place.",
    ),
    Column {
        unit: METRE,
        ..column(
            "note_mark_m",
            Holds::Decimal,
            "Depth by the marks of the cable, where a correction made another depth of it, or none.",
        )
    },
    Column {
        unit: CELSIUS,
        ..column(
            "note_read_c",
            Holds::Decimal,
            "Temperature as the probe showed it, where a correction made another of it.",
        )
    },
    Column {
        unit: MG_PER_L,
        ..column("oxygen_mg_l", Holds::Amount, "Dissolved oxygen, where it was read too.")
    },
];
