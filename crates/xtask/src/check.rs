//! Checks of the sources themselves.

pub mod messages;
pub mod tidy;
