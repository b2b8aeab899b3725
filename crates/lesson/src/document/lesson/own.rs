//! A question of the teacher's own.

use serde::{Deserialize, Serialize};

/// A question in the teacher's words. Its answer is a number that each group's own readings give, or words.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct OwnQuestion {
    /// The question, as it is shown.
    pub ask: String,
    /// The teacher's own hint; may be empty.
    #[serde(default, skip_serializing_if = "String::is_empty")]
    pub hint: String,
    /// How it is answered.
    pub by: OwnBy,
}

/// How a question of the teacher's own is answered.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Deserialize)]
pub struct OwnBy {
    /// The number that is asked; `None`: words, which only a person judges.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub quantity: Option<Quantity>,
    /// Depth, or the upper of two, metres.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub at_m: Option<f64>,
    /// The lower of two depths, metres.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub to_m: Option<f64>,
    /// A temperature, °C.
    #[serde(default, skip_serializing_if = "Option::is_none")]
    pub temp_c: Option<f64>,
    /// What is looked for in words, best first: four levels, as the rubric of a report has.
    #[serde(default, skip_serializing_if = "Vec::is_empty")]
    pub rubric: Vec<String>,
}

/// What can be asked of any cast: a small choice, each worked out by the page from the group's own readings.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum Quantity {
    /// The temperature at a depth, °C.
    TempAt,
    /// How many degrees two depths are apart, °C.
    Apart,
    /// °C per metre between two depths.
    PerMetre,
    /// The depth at which the water is so warm, metres.
    DepthOf,
    /// The warmest reading, °C.
    Warmest,
    /// The coldest reading, °C.
    Coldest,
    /// Warmest minus coldest, °C.
    WarmestColdest,
}

impl Quantity {
    /// Every one, in the order they are offered.
    pub const ALL: [Self; 7] = [
        Self::TempAt,
        Self::Apart,
        Self::PerMetre,
        Self::DepthOf,
        Self::Warmest,
        Self::Coldest,
        Self::WarmestColdest,
    ];

    /// Depths it needs: none, one, or two.
    pub fn depths(self) -> usize {
        match self {
            Self::TempAt => 1,
            Self::Apart | Self::PerMetre => 2,
            Self::DepthOf | Self::Warmest | Self::Coldest | Self::WarmestColdest => 0,
        }
    }

    /// It needs a temperature.
    pub fn needs_temp(self) -> bool {
        self == Self::DepthOf
    }
}

impl OwnQuestion {
    /// What it still lacks before it can be asked.
    pub fn lacks(&self) -> Option<Lack> {
        if self.ask.trim().is_empty() {
            return Some(Lack::Ask);
        }
        let by = &self.by;
        // Words need nothing but the question.
        let quantity = by.quantity?;
        let depth = |depth_m: Option<f64>| depth_m.filter(|z| *z >= 0.0 && z.is_finite());
        match quantity.depths() {
            1 if depth(by.at_m).is_none() => Some(Lack::Depth),
            2 if depth(by.at_m).zip(depth(by.to_m)).is_none_or(|(a, b)| (a - b).abs() < 1e-6) => {
                Some(Lack::TwoDepths)
            }
            _ if quantity.needs_temp() && by.temp_c.is_none_or(|t| !t.is_finite()) => Some(Lack::Temp),
            _ => None,
        }
    }
}

/// What a question of the teacher's own still lacks.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Lack {
    /// Its words.
    Ask,
    /// Its depth.
    Depth,
    /// Two different depths.
    TwoDepths,
    /// Its temperature.
    Temp,
}
