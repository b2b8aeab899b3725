//! What comes in and goes out as bytes.

pub mod document;
pub mod lines;
pub mod number;
pub mod pack;
pub mod read;
mod signs;
mod slip;
mod units;
pub mod write;
pub mod zip;
