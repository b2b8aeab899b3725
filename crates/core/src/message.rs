//! What the rooms say to a person: an id and its arguments. The words live in the message files.

/// One sentence to be rendered by the page (or the example program) in the reader's language.
#[derive(Clone, Debug, PartialEq)]
pub struct Message {
    /// Id in the message files; always written as a literal where the message is made.
    pub id: &'static str,
    /// Arguments by name, in the order they were given.
    pub args: Vec<(&'static str, Arg)>,
}

/// An argument of a [`Message`].
#[derive(Clone, Debug, PartialEq)]
pub enum Arg {
    /// A measured number, shown with exactly this many decimals in the reader's number format.
    Number {
        /// The value, in the unit the message names.
        value: f64,
        /// Digits after the decimal sign.
        decimals: u8,
    },
    /// A whole count; chooses plural forms.
    Count(u32),
    /// Text as it was written by a person: shown, never interpreted.
    Text(String),
    /// A message inside a message (the name of a column, a list of lines).
    Message(Box<Message>),
}

impl Message {
    /// A message without arguments.
    pub fn new(id: &'static str) -> Self {
        Self { id, args: Vec::new() }
    }

    /// Adds a measured number.
    #[must_use]
    pub fn number(mut self, name: &'static str, value: f64, decimals: u8) -> Self {
        self.args.push((name, Arg::Number { value, decimals }));
        self
    }

    /// Adds a count.
    #[must_use]
    pub fn count(mut self, name: &'static str, count: usize) -> Self {
        self.args.push((name, Arg::Count(u32::try_from(count).unwrap_or(u32::MAX))));
        self
    }

    /// Adds text as a person wrote it.
    #[must_use]
    pub fn text(mut self, name: &'static str, text: impl Into<String>) -> Self {
        self.args.push((name, Arg::Text(text.into())));
        self
    }

    /// Adds another message as an argument.
    #[must_use]
    pub fn message(mut self, name: &'static str, message: Message) -> Self {
        self.args.push((name, Arg::Message(Box::new(message))));
        self
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn arguments_keep_their_names_and_order() {
        let inner = Message::new("inner");
        let message = Message::new("example")
            .number("depth", 3.75, 2)
            .count("rows", 20)
            .text("written", "1O.5")
            .message("column", inner.clone());
        let want = [
            ("depth", Arg::Number { value: 3.75, decimals: 2 }),
            ("rows", Arg::Count(20)),
            ("written", Arg::Text("1O.5".to_owned())),
            ("column", Arg::Message(Box::new(inner))),
        ];
        assert_eq!((message.id, message.args.as_slice()), ("example", want.as_slice()));
    }

    #[test]
    fn a_count_too_large_to_write_is_the_largest() {
        let message = Message::new("example").count("rows", usize::MAX);
        assert_eq!(message.args, [("rows", Arg::Count(u32::MAX))]);
    }
}
