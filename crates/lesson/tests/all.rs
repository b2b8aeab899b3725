//! Every test of the lesson in one program. A file that is not named here is a fault that `cargo xtask test tidy`
//! finds.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

mod actions;
mod alike;
mod class_card;
mod class_import;
mod class_marks;
mod class_repairs;
mod class_support;
mod class_wall;
mod corrections;
mod cover;
mod doors;
mod found;
mod found_sentences;
mod guess;
mod hand_in;
mod log;
mod log_said;
mod questions_again;
mod questions_close;
mod questions_credit;
mod questions_groups;
mod questions_ideas;
mod questions_own;
mod questions_papers;
mod questions_read;
mod questions_students;
mod questions_support;
mod questions_views;
mod questions_wording;
mod questions_words;
mod report;
mod support;
mod wild;
mod words;
