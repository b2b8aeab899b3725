//! The cast's document as text, and back: every version ever written is read, newer ones are refused in words.

use super::{CastDoc, SCHEMA, VERSION};

/// Why a document could not be opened.
#[derive(Clone, Debug, PartialEq, Eq)]
pub enum OpenError {
    /// It was written by a newer program: the version it names.
    Newer {
        /// Version found.
        version: u32,
    },
    /// It is some other document.
    OtherSchema {
        /// Schema found; empty when there is none.
        schema: String,
    },
    /// It is no document of ours at all, or damaged: what the reader said, for whoever looks into it.
    Damaged {
        /// Technical reason.
        reason: String,
    },
}

/// Reads a cast's document.
///
/// # Errors
/// [`OpenError`]; nothing is ever read in part.
pub fn from_json(text: &str) -> Result<CastDoc, OpenError> {
    #[derive(serde::Deserialize)]
    struct Label {
        #[serde(default)]
        schema: String,
        #[serde(default)]
        version: u32,
    }
    let damaged = |error: serde_json::Error| OpenError::Damaged { reason: error.to_string() };
    let label: Label = serde_json::from_str(text).map_err(damaged)?;
    if label.schema != SCHEMA {
        return Err(OpenError::OtherSchema { schema: label.schema });
    }
    if label.version > VERSION {
        return Err(OpenError::Newer { version: label.version });
    }
    serde_json::from_str(text).map_err(damaged)
}

/// Writes a cast's document. The same document gives the same text everywhere.
pub fn to_json(doc: &CastDoc) -> String {
    // Maps have keys that are numbers or text, so that writing cannot fail.
    serde_json::to_string(doc).unwrap_or_default()
}

#[cfg(test)]
mod tests {
    use super::super::{Cell, Choices, Entry, LegDoc, Role, Source, SwitchDoc, Unit, new_doc};
    use super::*;

    fn doc() -> CastDoc {
        let mut doc = new_doc("Quillet Pond", "C");
        doc.entries.push(Entry {
            depth: Cell { written: "0,5".into(), value: Some(0.5), settled: None },
            temp: Cell { written: "1O.5".into(), value: None, settled: None },
            oxygen: None,
            leg: LegDoc::Down,
            line: Some(3),
            switch: SwitchDoc::Off,
        });
        let mut choices = Choices::default();
        choices.roles.insert(0, Role::Depth);
        choices.units.insert(1, Unit::F);
        doc.source = Some(Source { text: "0,5;1O.5".into(), choices, ..Source::default() });
        doc
    }

    #[test]
    fn there_and_back() {
        assert_eq!(from_json(&to_json(&doc())), Ok(doc()));
    }

    #[test]
    fn a_document_of_version_1_opens_for_ever() {
        // As written by version 1 with the fewest fields; never to be changed.
        let text = r#"{"schema":"layercast-cast","version":1,"entries":[{"depth":{"written":"0.5","value":0.5},
            "temp":{"written":"18.4","value":18.4},"leg":"unknown"}]}"#;
        let doc = from_json(text).unwrap();
        assert_eq!(doc.entries.len(), 1);
        assert_eq!((doc.water.as_str(), doc.bed_m, doc.source), ("", None, None));
    }

    #[test]
    fn newer_other_and_damaged_documents_are_told_apart() {
        let newer = to_json(&doc()).replace("\"version\":1", "\"version\":7");
        assert_eq!(from_json(&newer), Err(OpenError::Newer { version: 7 }));
        let other = r#"{"schema":"something","version":1}"#;
        assert_eq!(from_json(other), Err(OpenError::OtherSchema { schema: "something".into() }));
        assert!(matches!(from_json("{\"schema\""), Err(OpenError::Damaged { .. })));
        assert!(matches!(from_json("3"), Err(OpenError::Damaged { .. })));
    }
}
