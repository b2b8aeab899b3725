//! Why two casts differ, as one JSON object: two tables opened as the page opens them, analysed, compared.
//!
//! `compare FILE FILE [--minutes N]`: minutes from the first cast to the second, for the energy check. Exit 0 with a
//! comparison, 2 when a table asks a question first, 1 for an error or too little in common.

#[path = "../shared/opened.rs"]
mod opened;
#[path = "../analyse/render.rs"]
mod render;
mod report;

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
