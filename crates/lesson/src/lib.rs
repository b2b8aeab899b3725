//! Questions, verdicts, hints, credit, and what may be shown.

pub mod action;
pub mod document;
pub mod questions;
pub mod scene;
pub mod view;
