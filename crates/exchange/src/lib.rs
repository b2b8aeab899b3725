//! What comes in and goes out as bytes.

pub mod document;
pub mod number;
pub mod read;
mod slip;
mod units;
