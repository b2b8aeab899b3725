//! Years: casts of one place over days and years, computed again by one rule, and what can be said of two of them.
//!
//! A [`YearBook`] is the document: casts as they came, each with the day and place a teacher gave it. [`add`] takes files in, a
//! [`YearsAction`] is one thing a teacher did, [`look`] says what the screen shows. No slope is ever offered: a few years show no trend.

mod action;
mod day;
mod document;
mod look;
mod pair;

pub use action::YearsAction;
pub use day::{Day, days_apart_in_season};
pub use document::{Added, SCHEMA, VERSION, YearBook, YearCast, act, add};
pub use look::{PairRow, YearRow, YearsView, look, shown};
