//! Why two casts differ, as one JSON object: two tables opened as the page opens them, analysed, compared.
//!
//! `compare FILE FILE [--minutes N]`: minutes from the first cast to the second, for the energy check. Exit 0 with a
//! comparison, 2 when a table asks a question first, 1 for an error or too little in common.

#[path = "../shared/opened.rs"]
mod opened;
#[path = "../shared/program.rs"]
mod program;
#[path = "../shared/render.rs"]
mod render;
mod report;

fn main() -> std::process::ExitCode {
    program::program(report::run)
}
