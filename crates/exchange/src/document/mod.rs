//! The cast's own document: every cell as it was written, what was made of it, and what a person decided.

mod cast;
mod companions;
mod content_id;
mod corrections;
mod doubts;
mod open;

use serde::{Deserialize, Serialize};

pub use cast::{new_doc, to_cast, typed_depth, typed_temp, typed_temp_in};
pub(crate) use companions::without_oxygen_unit;
pub use companions::{
    CompanionField, Companions, MOST_OXYGEN_MG_L, MOST_SECCHI_M, oxygen_mg_l, typed_oxygen,
};
pub use content_id::{content_id, short_hash};
pub use corrections::{
    CorrectedDoc, CorrectionDoc, CorrectionField, CorrectionKind, corrected, corrected_marks,
};
pub(crate) use doubts::cell_doubts_in;
pub use doubts::{CellDoubt, DoubtedCell, Proposal, Slip, Why, cell_doubts};
pub use open::{OpenError, from_json, to_json};

/// Name of the schema in [`CastDoc::schema`].
pub const SCHEMA: &str = "layercast-cast";
/// Version written today. Readers of older versions stay for ever.
pub const VERSION: u32 = 1;

/// A cast as it is kept: nothing dropped, nothing altered.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct CastDoc {
    /// Always [`SCHEMA`].
    pub schema: String,
    /// Schema version.
    pub version: u32,
    /// Name of the water, as the group wrote it; may be empty.
    #[serde(default)]
    pub water: String,
    /// Group letter or code; never a person's name. May be empty.
    #[serde(default)]
    pub group: String,
    /// The readings, in the order they were written.
    pub entries: Vec<Entry>,
    /// Last decimal place of the temperatures as written, in °C; 0 if unknown.
    #[serde(default)]
    pub digit_c: f64,
    /// What temperatures without a unit are read as, where a person said so: °F or °C. The texts stay as they were
    /// written, the values are °C in any case.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temps_in: Option<Unit>,
    /// Depth at which the line went slack, metres.
    #[serde(default)]
    pub bed_m: Option<f64>,
    /// Corrections, in the order they were added. None of them alters a reading: [`corrected`] applies them.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub corrections: Vec<CorrectionDoc>,
    /// Secchi depth and the height of the lake.
    #[serde(default, skip_serializing_if = "Companions::is_empty")]
    pub companions: Companions,
    /// The table this came from and how it was read, so that "Not right?" can open it again; absent for typed casts
    /// and for tables larger than 200,000 characters.
    #[serde(default)]
    pub source: Option<Source>,
}

/// A pasted or opened table as text, with the choices made about it.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Source {
    /// The text as it came.
    pub text: String,
    /// The choices made.
    pub choices: Choices,
    /// How the table came.
    #[serde(default)]
    pub origin: Origin,
}

/// How a table came into the notebook. What is said of it fits that.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Origin {
    /// Pasted; also of notebooks older than this field.
    #[default]
    Paste,
    /// Opened as a file.
    File,
    /// One of the examples: invented readings, measured by nobody.
    Example,
}

/// One reading of the document: its cells and the way of the probe.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct Entry {
    /// Depth cell.
    pub depth: Cell,
    /// Temperature cell.
    pub temp: Cell,
    /// Dissolved oxygen, mg/L, where it was read too.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub oxygen: Option<Cell>,
    /// Way of the probe.
    pub leg: LegDoc,
    /// Line of the table it came from, counted from 1; `None` when typed.
    #[serde(default)]
    pub line: Option<u32>,
    /// What a person decided about the reading.
    #[serde(default)]
    pub switch: SwitchDoc,
}

/// One cell: what was written, what it was read as, and what a person made of it.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Cell {
    /// The text as written (in the table's own unit).
    pub written: String,
    /// What it was read as, in m or °C; `None` when empty or unreadable.
    pub value: Option<f64>,
    /// A person's own value, in m or °C, with the text it was given as. Stands in place of `value`.
    #[serde(default)]
    pub settled: Option<SettledCell>,
}

/// A value that a person put in place of what was written.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct SettledCell {
    /// As typed, or the text of the button.
    pub text: String,
    /// In m or °C; `None` when the typed text cannot be read (the text is kept and doubted again).
    pub value: Option<f64>,
}

impl Cell {
    /// The value that counts: the person's own, else what was read.
    pub fn current(&self) -> Option<f64> {
        match &self.settled {
            Some(settled) => settled.value,
            None => self.value,
        }
    }

    /// The text that counts.
    pub fn current_text(&self) -> &str {
        self.settled.as_ref().map_or(&self.written, |settled| &settled.text)
    }
}

/// Way of the probe, as stored.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum LegDoc {
    /// Going down.
    Down,
    /// Coming up.
    Up,
    /// Not known.
    Unknown,
}

/// A person's decision about a reading, as stored.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum SwitchDoc {
    /// Nothing decided.
    #[default]
    Auto,
    /// Left out.
    Off,
    /// "It was like that."
    Kept,
}

/// Choices a person made about a table; all empty means "read it by yourself".
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct Choices {
    /// Role per column index (from 0), where chosen.
    #[serde(default)]
    pub roles: std::collections::BTreeMap<usize, Role>,
    /// Unit per column index, where chosen.
    #[serde(default)]
    pub units: std::collections::BTreeMap<usize, Unit>,
    /// Way of a single series, where chosen.
    #[serde(default)]
    pub leg: Option<LegChoice>,
    /// Decimal sign, where chosen (only asked when the table allows both).
    #[serde(default)]
    pub decimal: Option<Decimal>,
}

/// What a column is.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum Role {
    /// Depth.
    Depth,
    /// Temperature going down.
    Down,
    /// Temperature coming up.
    Up,
    /// One temperature; the way comes from the order of depths.
    One,
    /// A column that says the way ("down"/"up") row by row.
    Leg,
    /// Dissolved oxygen, mg/L, of the same row.
    Oxygen,
    /// Depth of the Secchi disk: one value, or two where it vanished and came back.
    Secchi,
    /// Not used.
    NotUsed,
}

/// Unit of a column.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum Unit {
    /// Metres.
    M,
    /// Centimetres.
    Cm,
    /// Feet.
    Ft,
    /// Degrees Celsius.
    C,
    /// Degrees Fahrenheit.
    F,
}

/// Way of a single series.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum LegChoice {
    /// All going down.
    Down,
    /// All coming up.
    Up,
    /// Left open.
    Open,
    /// Two series, one under the other: the first going down, the second coming up.
    DownThenUp,
}

/// Decimal sign of a table.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[serde(rename_all = "snake_case")]
pub enum Decimal {
    /// 18.5
    Point,
    /// 18,5
    Comma,
}
