//! A table as every example opens it, by the page's own path: bytes → table → document.

use crate::render::Words;
use layercast_core::{Arg, Message};
use layercast_exchange::document::{CastDoc, Choices};
use layercast_exchange::read::{Outcome, TableRead, decode, read};
use serde_json::{Value, json};

/// A table that was opened.
pub struct Opened {
    /// What was made of it.
    pub read: TableRead,
    /// Its document, where it was read.
    pub doc: Option<CastDoc>,
}

impl Opened {
    /// Opens a file; an error names it.
    pub fn file(file: &str) -> Result<Self, String> {
        let bytes = std::fs::read(file).map_err(|error| format!("{file}: {error}"))?;
        let choices = Choices::default();
        let read = read(&bytes, &choices);
        let is_read = matches!(read.outcome, Outcome::Understood | Outcome::Noticed);
        let doc = is_read.then(|| CastDoc::from_read(&read, &decode(&bytes), &choices));
        Ok(Self { read, doc })
    }

    /// Exit code: 0 when read, 2 when a question comes first, 1 for an error.
    pub fn code(&self) -> u8 {
        match self.read.outcome {
            Outcome::Understood | Outcome::Noticed => 0,
            Outcome::Question => 2,
            Outcome::Error => 1,
        }
    }

    /// How it went, in a word.
    pub fn outcome(&self) -> &'static str {
        match self.read.outcome {
            Outcome::Understood => "understood",
            Outcome::Noticed => "noticed",
            Outcome::Question => "question",
            Outcome::Error => "error",
        }
    }

    /// What was understood, the notices or what is wrong, the question with its answers, and what the table gives.
    pub fn messages(&self, words: &Words) -> Value {
        let question = self.read.question.iter().flat_map(|question| {
            [&question.title, &question.text].into_iter().chain(question.ways.iter().map(|(label, _)| label))
        });
        let all =
            self.read.understood.iter().chain(&self.read.messages).chain(question).chain(&self.read.gives);
        all.map(|message| {
            json!({ "id": message.id, "args": args(message, words), "text": words.render(message) })
        })
        .collect()
    }
}

/// A number, if it is one.
pub fn finite(value: f64) -> Option<f64> {
    value.is_finite().then_some(value)
}

fn args(message: &Message, words: &Words) -> Value {
    let args = message.args.iter().map(|(name, arg)| {
        let value = match arg {
            Arg::Number { value, .. } => json!(finite(*value)),
            Arg::Count(count) => json!(count),
            Arg::Text(text) => json!(text),
            Arg::Message(inner) => {
                json!({ "id": inner.id, "args": args(inner, words), "text": words.render(inner) })
            }
        };
        ((*name).to_owned(), value)
    });
    Value::Object(args.collect())
}
