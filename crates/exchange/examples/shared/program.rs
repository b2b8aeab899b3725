//! How every example runs and ends.

use std::io::Write;
use std::process::ExitCode;

/// Gives the program's arguments to `run` and prints what comes back: what goes to standard output, what goes to standard
/// error, and the exit code.
pub fn program(run: fn(&[&str]) -> (String, String, u8)) -> ExitCode {
    let arguments: Vec<String> = std::env::args().skip(1).collect();
    let (out, err, code) = run(&arguments.iter().map(String::as_str).collect::<Vec<_>>());
    if !err.is_empty() {
        eprintln!("{err}");
    }
    if !out.is_empty() {
        // Whoever reads may stop early; that is no failure of ours.
        let _ = writeln!(std::io::stdout(), "{out}");
    }
    ExitCode::from(code)
}
