//! `fuzz`: each fuzz target for some minutes.

use crate::tools;
use crate::tree::Tree;
use anyhow::{Context, Result, bail};
use std::process::Command;

/// Runs every target, or one, for `minutes` each.
pub fn fuzz(tree: &Tree, minutes: f64, only: Option<&str>) -> Result<()> {
    let folder = tree.root.join("tests/fuzz");
    let fuzz = |what: &str| {
        let mut command = Command::new("cargo");
        // Another toolchain than ours: ours would be inherited.
        command.env_remove("RUSTUP_TOOLCHAIN").env_remove("CARGO").current_dir(&folder).args([
            "+nightly",
            "fuzz",
            what,
            "--fuzz-dir",
            ".",
        ]);
        command
    };
    let listed = tools::output(&mut fuzz("list")).context(
        "cargo-fuzz is missing: run `cargo install cargo-fuzz` and `rustup toolchain install nightly`",
    )?;
    let targets: Vec<&str> =
        listed.split_whitespace().filter(|name| only.is_none_or(|only| *name == only)).collect();
    if targets.is_empty() {
        bail!("no such target; there are: {}", listed.split_whitespace().collect::<Vec<_>>().join(", "));
    }
    for target in targets {
        println!("── {target}, {minutes} min");
        let seconds = format!("-max_total_time={:.0}", minutes * 60.0);
        let seeds = folder.join("seeds").join(target);
        let corpus = folder.join("corpus").join(target);
        std::fs::create_dir_all(&corpus)?;
        let mut command = fuzz("run");
        command.arg(target).arg(&corpus);
        if seeds.is_dir() {
            command.arg(&seeds);
        }
        tools::run(command.args(["--", &seconds, "-print_final_stats=1"]))?;
    }
    Ok(())
}
