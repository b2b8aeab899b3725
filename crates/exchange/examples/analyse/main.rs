//! The whole analysis of a table as one JSON object: bytes → table → document → cast → analysis, as the page does it.
//!
//! `analyse FILE [--lang es] [--trials NUMBER] [--correct depth_zero:above_water=0.6] …`: NUMBER of trials behind the
//! ranges (10,000; 0 leaves them out); corrections by the names that the cast's document gives them. Exit 0 with an analysis, 2 when a question comes first, 1 for an error.

#[path = "../shared/opened.rs"]
mod opened;
mod render;
mod report;
mod science;

use std::io::Write;
use std::process::ExitCode;

fn main() -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let (out, err, code) = report::run(&arguments.iter().map(String::as_str).collect::<Vec<_>>());
    if !err.is_empty() {
        eprintln!("{err}");
    }
    if !out.is_empty() {
        // Whoever reads may stop early; that is no failure of ours.
        let _ = writeln!(std::io::stdout(), "{out}");
    }
    ExitCode::from(code)
}
