//! Checks of the sources themselves.

mod first_words;
pub mod messages;
pub mod tidy;
mod unused;
