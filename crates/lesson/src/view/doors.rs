//! What stands behind the doors of Profile, and how a cast can be read otherwise.

use super::Said;
use serde::{Deserialize, Serialize};

/// Trials behind the ranges.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct RangesView {
    /// What the trials would be of: what they came to counts only for the same key.
    pub key: String,
    /// There is something to range, and no trials of it are at hand.
    pub wanted: bool,
    /// How many are made.
    pub trials: u32,
    /// How many are made of a cast read otherwise.
    pub fewer_trials: u32,
}

/// The doors behind what was found.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct DoorsView {
    /// How sure; `None` while the trials are being made.
    pub sure: Option<DoorView>,
    /// How hard to mix.
    pub mixing: DoorView,
    /// What is said while the trials are being made.
    pub waiting: DoorView,
}

/// What stands behind one door.
#[derive(Clone, Debug, Default, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct DoorView {
    /// Sentences under the title.
    pub lead: Vec<Said>,
    /// Tables.
    pub groups: Vec<DoorGroup>,
    /// Notes in small print.
    pub notes: Vec<Said>,
}

/// A table behind a door.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct DoorGroup {
    /// Heads of its columns.
    pub heads: Vec<Said>,
    /// Its rows.
    pub rows: Vec<DoorRow>,
}

/// A row of such a table.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct DoorRow {
    /// One cell a column.
    pub cells: Vec<Said>,
    /// The row that matters most.
    pub own: bool,
    /// How much of the row is tinted, 0 to 100.
    pub per_cent: Option<u8>,
}

/// The same cast read otherwise: what a person chose, each from a list.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct Otherwise {
    /// Which marks were read.
    pub marks: OtherMarks,
    /// Which way.
    pub ways: OtherWays,
    /// How long the probe was waited for.
    pub wait: OtherWait,
    /// What the probe shows.
    pub digits: OtherDigits,
    /// How far the marks are off.
    pub cable: OtherCable,
}

/// Which marks were read.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum OtherMarks {
    /// As they were.
    #[default]
    AsRead,
    /// Every metre.
    EveryMetre,
    /// Every second metre.
    #[serde(rename = "every_2_metres")]
    Every2Metres,
}

/// Which way the probe was read.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum OtherWays {
    /// As it was.
    #[default]
    Both,
    /// Only going down.
    Down,
    /// Only coming up.
    Up,
}

/// How long the probe was waited for at each mark.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum OtherWait {
    /// As long as it was.
    #[default]
    AsRead,
    /// Half a minute.
    Short,
    /// Ten seconds.
    Hardly,
}

/// What the probe shows.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum OtherDigits {
    /// What it showed.
    #[default]
    AsRead,
    /// Half degrees.
    Halves,
    /// Whole degrees.
    Whole,
}

/// How far the marks of the cable are off.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum OtherCable {
    /// A few centimetres, as is taken of every cable.
    #[default]
    AsRead,
    /// About 10 cm.
    Rough,
    /// About 25 cm.
    Poor,
}

/// What a cast read otherwise would have told.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct OtherwiseView {
    /// What stands behind the door.
    pub door: DoorView,
}
