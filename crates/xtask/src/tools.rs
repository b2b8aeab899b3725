//! The tools that are not ours: each is looked for by running it, got where that is allowed, and otherwise named with the
//! command that gets it.

use crate::tree::Tree;
use anyhow::{Context, Result, bail};
use std::io::{BufRead, BufReader, Write};
use std::path::PathBuf;
use std::process::{Command, Stdio};

/// Runs a command to its end; its output goes where ours goes.
pub fn run(command: &mut Command) -> Result<()> {
    let said = describe(command);
    let status = command.status().with_context(|| format!("`{said}` could not be started"))?;
    if !status.success() {
        bail!("`{said}` failed ({status})");
    }
    Ok(())
}

/// Runs a command and gives what it printed.
pub fn output(command: &mut Command) -> Result<String> {
    let said = describe(command);
    let out = command
        .stderr(Stdio::inherit())
        .output()
        .with_context(|| format!("`{said}` could not be started"))?;
    if !out.status.success() {
        bail!("`{said}` failed ({})\n{}", out.status, String::from_utf8_lossy(&out.stdout));
    }
    Ok(String::from_utf8_lossy(&out.stdout).into_owned())
}

fn describe(command: &Command) -> String {
    let mut said = command.get_program().to_string_lossy().into_owned();
    for arg in command.get_args().take(8) {
        said.push(' ');
        said.push_str(&arg.to_string_lossy());
    }
    said
}

/// `cargo`, the one that runs us, in the repository.
pub fn cargo(tree: &Tree) -> Command {
    let mut command = Command::new(std::env::var_os("CARGO").unwrap_or_else(|| "cargo".into()));
    command.current_dir(&tree.root);
    command
}

/// `node`, in `web/`.
pub fn node(tree: &Tree) -> Command {
    let mut command = Command::new("node");
    command.current_dir(tree.web());
    command
}

/// A program of `web/node_modules/.bin`, in `web/`.
pub fn npm_program(tree: &Tree, name: &str) -> Command {
    let mut command = Command::new(tree.web().join("node_modules").join(".bin").join(name));
    command.current_dir(tree.web());
    command
}

/// Adds the wasm target where it is missing.
pub fn need_wasm_target(tree: &Tree) -> Result<()> {
    const TARGET: &str = "wasm32-unknown-unknown";
    let how = "wasm32-unknown-unknown is missing: run `rustup target add wasm32-unknown-unknown`";
    let listed =
        Command::new("rustup").args(["target", "list", "--installed"]).current_dir(&tree.root).output();
    let Ok(listed) = listed else {
        // No rustup: the toolchain may still have the target.
        let sysroot = output(Command::new("rustc").args(["--print", "sysroot"]).current_dir(&tree.root))?;
        let there = PathBuf::from(sysroot.trim()).join("lib/rustlib").join(TARGET).is_dir();
        if there {
            return Ok(());
        }
        bail!(how);
    };
    if String::from_utf8_lossy(&listed.stdout).lines().any(|line| line.trim() == TARGET) {
        return Ok(());
    }
    run(Command::new("rustup").args(["target", "add", TARGET]).current_dir(&tree.root)).context(how)
}

/// Node 20 or newer, and the packages of `web/package-lock.json`.
pub fn need_node(tree: &Tree) -> Result<()> {
    let how = "Node 20 or newer with npm is missing: get it from your system's packages (`apt-get install nodejs npm`)";
    let version = Command::new("node").arg("--version").output().context(how)?;
    let version = String::from_utf8_lossy(&version.stdout).trim().to_owned();
    let major =
        version.trim_start_matches('v').split('.').next().and_then(|n| n.parse::<u32>().ok()).unwrap_or(0);
    if major < 20 {
        bail!("{how}; found {version}");
    }
    let lock = tree.web().join("package-lock.json");
    let done = tree.web().join("node_modules/.package-lock.json");
    let time = |path: &PathBuf| std::fs::metadata(path).and_then(|m| m.modified()).ok();
    if time(&done).is_some_and(|done| time(&lock).is_some_and(|lock| done >= lock)) {
        return Ok(());
    }
    eprintln!("Getting the page's packages (npm ci) …");
    run(Command::new("npm")
        .args(["ci", "--ignore-scripts", "--no-audit", "--no-fund", "--loglevel=error"])
        .current_dir(tree.web()))
}

/// The two browsers of the tests.
pub struct Browsers {
    /// Chromium.
    pub chromium: PathBuf,
    /// Firefox.
    pub firefox: PathBuf,
}

/// Finds both browsers, or says which command gets the missing ones.
pub fn need_browsers() -> Result<Browsers> {
    let chromium = first_that_runs("CHROMIUM", &["chromium", "chromium-browser", "google-chrome"]);
    let firefox = first_that_runs("FIREFOX", &["firefox-esr", "firefox"]);
    match (chromium, firefox) {
        (Some(chromium), Some(firefox)) => Ok(Browsers { chromium, firefox }),
        (chromium, firefox) => {
            let mut missing = Vec::new();
            if chromium.is_none() {
                missing.push(
                    "Chromium (`apt-get install -y --no-install-recommends chromium`, or set CHROMIUM)",
                );
            }
            if firefox.is_none() {
                missing.push(
                    "Firefox (`apt-get install -y --no-install-recommends firefox-esr`, or set FIREFOX)",
                );
            }
            bail!("missing for the browser tests: {}", missing.join(" and "));
        }
    }
}

fn first_that_runs(variable: &str, names: &[&str]) -> Option<PathBuf> {
    let set = std::env::var_os(variable).map(PathBuf::from);
    let candidates = set.into_iter().chain(names.iter().map(PathBuf::from));
    for candidate in candidates {
        let ran =
            Command::new(&candidate).arg("--version").stdout(Stdio::null()).stderr(Stdio::null()).status();
        if ran.is_ok_and(|status| status.success()) {
            return Some(on_path(&candidate));
        }
    }
    None
}

/// The whole path of a program, as drivers of browsers want it.
fn on_path(program: &PathBuf) -> PathBuf {
    if program.components().count() > 1 {
        return program.clone();
    }
    std::env::var_os("PATH")
        .and_then(|paths| {
            std::env::split_paths(&paths).map(|dir| dir.join(program)).find(|path| path.is_file())
        })
        .unwrap_or_else(|| program.clone())
}

/// Runs a command on some bytes and gives what it printed.
pub fn pipe(command: &mut Command, input: &[u8]) -> Result<Vec<u8>> {
    let said = describe(command);
    let mut child = command
        .stdin(Stdio::piped())
        .stdout(Stdio::piped())
        .stderr(Stdio::inherit())
        .spawn()
        .with_context(|| format!("`{said}` could not be started"))?;
    let mut stdin = child.stdin.take().context("a pipe has two ends")?;
    let input = input.to_vec();
    let writer = std::thread::spawn(move || stdin.write_all(&input));
    let out = child.wait_with_output()?;
    // A program that stops early closes the pipe; its status says why.
    let _ = writer.join();
    if !out.status.success() {
        bail!("`{said}` failed ({})", out.status);
    }
    Ok(out.stdout)
}

/// What a command printed, and whether it ended well.
pub struct Output {
    /// It ended well.
    pub success: bool,
    /// Its lines, also printed as they came.
    pub lines: Vec<String>,
}

/// Runs a command, prints its lines as they come, and gives them.
pub fn tee(command: &mut Command) -> Result<Output> {
    let said = describe(command);
    let mut child = command
        .stdout(Stdio::piped())
        .stderr(Stdio::inherit())
        .spawn()
        .with_context(|| format!("`{said}` could not be started"))?;
    let stdout = child.stdout.take().context("a pipe has two ends")?;
    let mut lines = Vec::new();
    for line in BufReader::new(stdout).lines() {
        let line = line?;
        println!("{line}");
        lines.push(line);
    }
    Ok(Output { success: child.wait()?.success(), lines })
}
