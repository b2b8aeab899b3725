//! What comes in and goes out as bytes.

pub mod document;
pub mod read;
