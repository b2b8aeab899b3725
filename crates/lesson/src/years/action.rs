//! Everything a teacher can do to a book but add to it, as data.

use serde::{Deserialize, Deserializer, Serialize, de};

/// One thing a teacher did to a year book. `cast` is a content id.
#[allow(missing_docs, reason = "each variant's line names its fields")]
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(tag = "do", rename_all = "snake_case")]
pub enum YearsAction {
    /// Types the day of a cast.
    SetDay { cast: String, text: String },
    /// Types its place.
    SetPlace { cast: String, text: String },
    /// Takes it out of the book.
    TakeOut { cast: String },
}

/// Every field that some action has.
#[derive(Default, Deserialize)]
#[serde(default)]
struct Fields {
    r#do: String,
    cast: Option<String>,
    text: Option<String>,
}

impl<'de> Deserialize<'de> for YearsAction {
    /// Written out, as for the notebook's actions: what serde derives for a tagged enum is large.
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        Fields::deserialize(from)?.action().ok_or_else(|| de::Error::custom("not an action"))
    }
}

impl Fields {
    fn action(self) -> Option<YearsAction> {
        let Self { cast, text, .. } = self;
        Some(match self.r#do.as_str() {
            "set_day" => YearsAction::SetDay { cast: cast?, text: text? },
            "set_place" => YearsAction::SetPlace { cast: cast?, text: text? },
            "take_out" => YearsAction::TakeOut { cast: cast? },
            _ => return None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn every_action_is_read_back_as_it_was_written() {
        let (cast, text) = ("a1".to_owned(), "2025-10-12".to_owned());
        for action in [
            YearsAction::SetDay { cast: cast.clone(), text: text.clone() },
            YearsAction::SetPlace { cast: cast.clone(), text },
            YearsAction::TakeOut { cast },
        ] {
            let json = serde_json::to_string(&action).unwrap();
            assert_eq!(serde_json::from_str::<YearsAction>(&json).unwrap(), action);
        }
    }

    #[test]
    fn another_word_and_a_missing_field_are_no_action() {
        for text in [
            r#"{"do":"place","cast":"a1","text":"the dock"}"#,
            r#"{"do":"set_place","cast":"a1"}"#,
            r#"{"do":"set_day","text":"2025-10-12"}"#,
            r#"{"cast":"a1"}"#,
        ] {
            assert!(serde_json::from_str::<YearsAction>(text).is_err(), "{text}");
        }
    }
}
