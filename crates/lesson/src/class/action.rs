//! Everything a teacher can do to a class but add to it, as data.

use super::looks::LookAt;
use serde::{Deserialize, Deserializer, Serialize, de};

/// One thing a teacher did. Buttons in the views carry theirs. `member` is a key; `question` the id of a question.
#[allow(missing_docs, reason = "each variant's line names its fields")]
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(tag = "do", rename_all = "snake_case")]
pub enum ClassAction {
    /// Names the class.
    SetCode { text: String },
    /// Takes a member in that stands aside, or takes one out.
    TakeIn { member: String, on: bool },
    /// Of two sheets of one seat: this one counts, the other becomes its older copy.
    KeepThis { member: String },
    /// Both count: they are two seats with one code.
    KeepBoth { member: String },
    /// Sets the right group code; empty takes it back.
    SetGroup { member: String, text: String },
    /// Sets the right seat code; empty takes it back.
    SetSeat { member: String, text: String },
    /// Depths are feet.
    ReadFeet { member: String, on: bool },
    /// Temperatures are °F.
    ReadFahrenheit { member: String, on: bool },
    /// Height of the rail above the water, as typed; empty takes it back.
    SetAboveWater { member: String, text: String },
    /// Measured at another station.
    OtherStation { member: String, on: bool },
    /// "It is all right so."
    Seen { member: String, at: LookAt, on: bool },
    /// Handed in late.
    Late { member: String, on: bool },
    /// Practice.
    Practice { member: String, on: bool },
    /// Counts a cast as another one (content ids); without `other` takes it back.
    SameCast { cast: String, other: Option<String> },
    /// Two nearly equal casts are two.
    BothCasts { cast: String, other: String },
    /// Level of the prose, 0 to 3; `None` takes it back.
    SetLevel { member: String, question: String, level: Option<u8> },
    /// Points in place of what was computed, as typed; empty takes them back.
    SetPoints { member: String, question: String, text: String },
    /// Why.
    SetWhy { member: String, question: String, text: String },
    /// A comment for the student.
    SetComment { member: String, question: String, text: String },
    /// Keeps a comment to use again.
    KeepComment { text: String },
    /// Keeps it no longer; where it was used it stays.
    DropComment { text: String },
    /// Hides the names of the groups.
    HideNames { on: bool },
    /// Shuffles the groups by a seed; `None`: by name.
    Shuffle { seed: Option<u32> },
    /// Undoes the last decision or import.
    Undo,
}

/// Every field that some action has.
#[derive(Default, Deserialize)]
#[serde(default)]
struct Fields {
    r#do: String,
    member: Option<String>,
    question: Option<String>,
    text: Option<String>,
    on: Option<bool>,
    at: Option<LookAt>,
    cast: Option<String>,
    other: Option<String>,
    level: Option<u8>,
    seed: Option<u32>,
}

impl<'de> Deserialize<'de> for ClassAction {
    // Written out, since what serde derives for a tagged enum first gathers every field untyped.
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        Fields::deserialize(from)?.action().ok_or_else(|| de::Error::custom("not an action"))
    }
}

impl Fields {
    fn action(self) -> Option<ClassAction> {
        use ClassAction as A;
        let Self { member, question, text, on, at, cast, other, level, seed, .. } = self;
        Some(match self.r#do.as_str() {
            "set_code" => A::SetCode { text: text? },
            "take_in" => A::TakeIn { member: member?, on: on? },
            "keep_this" => A::KeepThis { member: member? },
            "keep_both" => A::KeepBoth { member: member? },
            "set_group" => A::SetGroup { member: member?, text: text? },
            "set_seat" => A::SetSeat { member: member?, text: text? },
            "read_feet" => A::ReadFeet { member: member?, on: on? },
            "read_fahrenheit" => A::ReadFahrenheit { member: member?, on: on? },
            "set_above_water" => A::SetAboveWater { member: member?, text: text? },
            "other_station" => A::OtherStation { member: member?, on: on? },
            "seen" => A::Seen { member: member?, at: at?, on: on? },
            "late" => A::Late { member: member?, on: on? },
            "practice" => A::Practice { member: member?, on: on? },
            "same_cast" => A::SameCast { cast: cast?, other },
            "both_casts" => A::BothCasts { cast: cast?, other: other? },
            "set_level" => A::SetLevel { member: member?, question: question?, level },
            "set_points" => A::SetPoints { member: member?, question: question?, text: text? },
            "set_why" => A::SetWhy { member: member?, question: question?, text: text? },
            "set_comment" => A::SetComment { member: member?, question: question?, text: text? },
            "keep_comment" => A::KeepComment { text: text? },
            "drop_comment" => A::DropComment { text: text? },
            "hide_names" => A::HideNames { on: on? },
            "shuffle" => A::Shuffle { seed },
            "undo" => A::Undo,
            _ => return None,
        })
    }
}
