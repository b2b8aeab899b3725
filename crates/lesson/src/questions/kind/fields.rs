//! Fields of a question: numbers, lists, lines to choose and to tick.

use crate::questions::text::{self, Fields, field};
use layercast_core::Message;

/// How a field is answered.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Input {
    /// A number as text.
    Number,
    /// A list that must be chosen from (value, words).
    List(Vec<(&'static str, Message)>),
    /// A list that has a value from the start: the first.
    Preset(Vec<(&'static str, Message)>),
    /// A few lines, one of which is chosen.
    Choice(Vec<(String, Message)>),
    /// A line to tick, and how many of its part are to be.
    Fact(Message, Ticks),
    /// Small pictures, one of which is chosen.
    Pictures(Box<Pictures>),
    /// Words that are kept and never judged; each message starts a sentence that a student may go on with.
    Prose(Vec<Message>),
}

/// Small pictures on the same axes.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Pictures {
    /// Value that is stored, and the curve: (depth in metres, °C), downward.
    pub options: Vec<(&'static str, Curve)>,
    /// The curve faint behind each, which the others were made from.
    pub own: Curve,
}

/// A profile as it is drawn: (depth in metres, °C), downward.
pub(crate) type Curve = Vec<(f64, f64)>;

/// How many lines of a part are to be ticked before it can be checked.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) struct Ticks {
    /// At least.
    pub least: usize,
    /// At most.
    pub most: usize,
}

impl Ticks {
    /// So many, no more and no fewer.
    pub fn exactly(n: usize) -> Self {
        Self { least: n, most: n }
    }

    /// So many are enough and not too many.
    pub fn holds(self, ticked: usize) -> bool {
        (self.least..=self.most).contains(&ticked)
    }

    /// Nothing need be ticked.
    pub fn is_free(self) -> bool {
        self.least == 0
    }

    /// What a part of these fields wants, where it is one of lines to tick.
    pub fn of<'a>(fields: impl IntoIterator<Item = &'a Field>) -> Option<Self> {
        fields.into_iter().find_map(|field| match field.input {
            Input::Fact(_, ticks) => Some(ticks),
            _ => None,
        })
    }
}

/// A field as planned.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Field {
    /// Id.
    pub id: &'static str,
    /// Spoken name.
    pub name: Message,
    /// How it is answered.
    pub input: Input,
    /// Words behind it.
    pub after: Option<Message>,
    /// Text it starts with.
    pub start: String,
    /// Word on its grip, where it has one.
    pub grip: Option<Message>,
    /// It may stay empty where another field has one of these values: (the other's id, values).
    pub unless: Option<(&'static str, &'static [&'static str])>,
}

impl Field {
    /// A number field.
    pub fn number(id: &'static str, name: Message, after: Option<Message>) -> Self {
        Self { id, name, input: Input::Number, after, start: String::new(), grip: None, unless: None }
    }

    /// The unit list.
    pub fn unit() -> Self {
        Self::unit_of(vec![
            (text::UNIT_C, Message::new("ask-unit-c")),
            (text::UNIT_C_PER_M, Message::new("ask-unit-c-per-m")),
            (text::UNIT_M, Message::new("ask-unit-m")),
        ])
    }

    /// A list of these units.
    pub fn unit_of(units: Vec<(&'static str, Message)>) -> Self {
        let choose = ("", Message::new("ask-unit-choose"));
        let units = std::iter::once(choose).chain(units).collect();
        Self { input: Input::List(units), ..Self::number("unit", Message::new("ask-name-unit"), None) }
    }

    /// "I read from".
    pub fn source() -> Self {
        let sources = vec![
            ("mean", Message::new("ask-source-mean")),
            ("down", Message::new("ask-source-down")),
            ("up", Message::new("ask-source-up")),
        ];
        Self {
            input: Input::Preset(sources),
            start: "mean".to_owned(),
            ..Self::number("source", Message::new("ask-name-source"), None)
        }
    }

    /// It may stay empty where the field `id` has one of these values.
    #[must_use]
    pub fn unless(self, id: &'static str, values: &'static [&'static str]) -> Self {
        Self { unless: Some((id, values)), ..self }
    }

    /// It is wanted, as the other fields stand.
    pub fn is_wanted(&self, fields: &Fields) -> bool {
        self.unless.is_none_or(|(id, values)| !values.contains(&field(fields, id)))
    }

    /// A text of the student's own.
    pub fn prose(id: &'static str, name: Message, starters: Vec<Message>) -> Self {
        Self { input: Input::Prose(starters), ..Self::number(id, name, None) }
    }

    /// Lines to tick for oneself, any number of them: what a student finds in the own words.
    pub fn self_check(id: &'static str, fact: Message) -> Self {
        let any = Ticks { least: 0, most: usize::MAX };
        Self { input: Input::Fact(fact, any), ..Self::number(id, Message::new("ask-why-name-check"), None) }
    }

    /// Number fields are emptied after a miss, lists and ticks stay.
    pub fn is_number(&self) -> bool {
        self.input == Input::Number
    }
}

/// A line of fields.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Line {
    /// Label.
    pub label: Message,
    /// Fields.
    pub fields: Vec<Field>,
}

impl Line {
    /// A line.
    pub fn new(label: Message, fields: Vec<Field>) -> Self {
        Self { label, fields }
    }
}
