//! The whole analysis of a table as one JSON object: bytes → table → document → cast → analysis, as the page does it.
//!
//! `analyse FILE [--lang es] [--trials NUMBER] [--correct depth_zero:above_water=0.6] …`: NUMBER of trials behind the
//! ranges (10,000; 0 leaves them out); corrections by the names that the cast's document gives them. Exit 0 with an
//! analysis, 2 when a question comes first, 1 for an error.

#[path = "../shared/opened.rs"]
mod opened;
#[path = "../shared/program.rs"]
mod program;
#[path = "../shared/render.rs"]
mod render;
mod report;
mod science;

fn main() -> std::process::ExitCode {
    program::program(report::run)
}
