//! What a group writes in its report: five texts, kept as typed and never judged.

use super::open::{MOST_CELL_CHARS, MOST_PROSE_CHARS};
use serde::{Deserialize, Serialize};

/// The texts of a report.
#[derive(Clone, Debug, Default, PartialEq, Eq, Serialize, Deserialize)]
#[serde(default)]
pub struct ReportText {
    /// One line over the picture.
    pub title: String,
    /// What the group says of its water.
    pub claim: String,
    /// The readings that show it.
    pub evidence: String,
    /// Why those readings show it, and how sure that is.
    pub reasoning: String,
    /// What would make the group change its mind.
    pub change: String,
}

/// One of the texts.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum ReportPart {
    /// See [`ReportText::title`].
    Title,
    /// See [`ReportText::claim`].
    Claim,
    /// See [`ReportText::evidence`].
    Evidence,
    /// See [`ReportText::reasoning`].
    Reasoning,
    /// See [`ReportText::change`].
    Change,
}

impl ReportPart {
    /// All of them, in the order of writing.
    pub const ALL: [Self; 5] = [Self::Title, Self::Claim, Self::Evidence, Self::Reasoning, Self::Change];

    /// Longest text that is kept, characters.
    pub(crate) fn most_chars(self) -> usize {
        if self == Self::Title { MOST_CELL_CHARS } else { MOST_PROSE_CHARS }
    }
}

impl ReportText {
    /// One of the texts.
    pub fn get(&self, part: ReportPart) -> &str {
        match part {
            ReportPart::Title => &self.title,
            ReportPart::Claim => &self.claim,
            ReportPart::Evidence => &self.evidence,
            ReportPart::Reasoning => &self.reasoning,
            ReportPart::Change => &self.change,
        }
    }

    /// One of the texts, to be written.
    pub fn get_mut(&mut self, part: ReportPart) -> &mut String {
        match part {
            ReportPart::Title => &mut self.title,
            ReportPart::Claim => &mut self.claim,
            ReportPart::Evidence => &mut self.evidence,
            ReportPart::Reasoning => &mut self.reasoning,
            ReportPart::Change => &mut self.change,
        }
    }
}
