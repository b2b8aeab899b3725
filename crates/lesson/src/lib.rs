//! The notebook of one group: what a person can do to it, how its screens look (Log, Profile, Questions, Report), the
//! questions with their verdicts, hints and credit, and what may be shown. And what a teacher has beside it: the class
//! ([`class`]), a lesson in the making ([`maker`]), casts over the years ([`years`]).
//!
//! A [`document::Notebook`] is all that is known of one group. [`act::act`] returns the notebook after one thing a person
//! did ([`act::step`] with how it looks then); [`screens::look`] says what the page shows of it; [`scene::scene`] what its
//! picture shows. All are pure and total: no clock, no randomness, no state between calls.

pub mod act;
pub mod action;
pub mod by_hand;
pub mod class;
pub mod document;
pub mod hand_in;
pub mod maker;
pub mod marks;
pub mod numbers;
pub mod prepared;
pub mod questions;
pub mod ranges;
mod scale;
pub mod scene;
pub mod screens;
pub mod sound;
mod tables;
pub mod view;
pub mod years;

pub use act::{act, step, step_with};
pub use prepared::{Prepared, prepare, prepare_with};
pub use scene::{scene, shown};
pub use screens::{look, look_from, look_with};
