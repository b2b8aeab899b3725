//! Fairness: simulated students at the desk, a blind guesser, catalogued wrong ideas, and what comes of them over every
//! check profile and open cast. The tests hold a quick part of it to the aims, `examples/fairness.rs` measures all of it.
//!
//! What is worked out apart from the judging code: every number, mark, choice and rule of [`desk`], [`work`] and
//! [`choices`], from the readings by the published formula or from what the page says. What is not, because the rule is the
//! method: doubts and pair limits of single readings (kind 15), the pair of the state (105, 107), today's layer (108),
//! trials (26), and the practice pond. Which questions a water is asked, of which stretch, the page decides.
#![allow(dead_code, reason = "tests and example use their own parts")]

pub mod casts;
pub mod choices;
pub mod desk;
pub mod guess;
pub mod ideas;
pub mod measure;
pub mod told;
pub mod work;
