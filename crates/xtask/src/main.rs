//! `cargo xtask …`: the project's commands.

mod page;
mod tools;
mod tree;

use anyhow::{Result, bail};
use page::Kind;
use std::process::ExitCode;
use tree::Tree;

const USAGE: &str = "usage: cargo xtask COMMAND

  types                   the crossing's glue and types, into web/generated
  page [--keep-core] [--out FILE]
                          a quick build of the one-file page, build/layercast.html
                          (--keep-core: with the core of the last build)";

fn main() -> ExitCode {
    match run() {
        Ok(()) => ExitCode::SUCCESS,
        Err(error) => {
            eprintln!("{error:#}");
            ExitCode::FAILURE
        }
    }
}

fn run() -> Result<()> {
    let tree = Tree::find()?;
    let args: Vec<String> = std::env::args().skip(1).collect();
    match args.first().map(String::as_str) {
        Some("types") => page::types(&tree),
        Some("page") => {
            let out = match option(&args, "--out") {
                Some(file) => std::path::absolute(file)?,
                None => tree.build().join("layercast.html"),
            };
            page::write(&tree, Kind::Quick, args.iter().any(|arg| arg == "--keep-core"), &out)?;
            Ok(())
        }
        _ => bail!(USAGE),
    }
}

/// The word after an option.
fn option<'a>(args: &'a [String], name: &str) -> Option<&'a str> {
    args.iter().position(|arg| arg == name).and_then(|at| args.get(at + 1)).map(String::as_str)
}
