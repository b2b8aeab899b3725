//! The class: hand-ins joined into casts and sheets, on one picture, with what they know, and marks.
//!
//! A [`Class`] is the document: hand-ins as they came and what the teacher decided. [`import`](import::import) adds what was
//! dropped, [`act`] does one thing a teacher did, [`look`] says what the screen shows, [`Room`] is everything computed again
//! from readings and tries by the teacher's rule. Verdicts inside a hand-in are never read: there are none.

mod act;
mod action;
mod answers;
mod document;
pub mod export;
mod ideas;
pub mod import;
mod join;
mod looks;
mod points;
mod repairs;
mod room;
mod screen;
mod told;
pub mod view;
mod wall;
pub mod why;

pub use act::act;
pub use action::ClassAction;
pub use document::{Aside, Class, Decided, Grade, Member, Named, Paper, SCHEMA, UndoWhat, Undone, VERSION};
pub use looks::LookAt;
pub use repairs::Repair;
pub use room::{AnswerState, Answered, Room, Seat, Work};
pub use screen::{look, look_at};
pub use told::{AnswerTold, PartTold, TryTold, told};
pub use wall::{ClassLevel, Core, Spans, cores, middle, spans};
