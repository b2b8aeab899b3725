//! Every picture as a pure function of data, what may be shown, a theme and a size.

pub mod picture;

pub use picture::*;
