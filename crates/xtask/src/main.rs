//! `cargo xtask …`: the project's commands.

mod bench;
mod check;
mod dist;
mod fairness;
mod fuzz;
mod page;
mod screenshots;
mod serve;
mod test;
mod tools;
mod tree;

use anyhow::{Context, Result, bail};
use page::Kind;
use std::process::ExitCode;
use tree::Tree;

const USAGE: &str = "usage: cargo xtask COMMAND

  serve                   builds the page, serves it on this computer, builds again on each change
  test [STEP]             every check there is, or the steps whose name holds STEP
  dist                    dist/layercast.html, and a zip with guide, licences, checksums
  bench [--keep-page]     size and speed beside things measured in the same run; no check
                          (--keep-page: of dist/layercast.html as it is)
  fairness                simulated students, a blind guesser and wrong ideas over every check profile and
                          open cast; prints the figures and writes them into DEVELOPERS.md
  fuzz [MINUTES [TARGET]] each fuzz target for so long (3)
  screenshots [all] [--keep-page]
                          the README's pictures into web/screenshots, or every state into build/shots
                          (--keep-page: of build/layercast.html as it is)
  types                   the crossing's glue and types, into web/generated
  page [--keep-core] [--out FILE]
                          a quick build of the page, build/layercast.html
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
        Some("serve") => serve::serve(&tree),
        Some("test") => test::test(&tree, args.get(1).map(String::as_str)),
        Some("dist") => dist::dist(&tree),
        Some("bench") => bench::bench(&tree, args.iter().any(|arg| arg == "--keep-page")),
        Some("fairness") => fairness::fairness(&tree),
        Some("fuzz") => {
            let minutes = args.get(1).map_or(Ok(3.0), |minutes| minutes.parse());
            fuzz::fuzz(&tree, minutes.context("MINUTES is a number")?, args.get(2).map(String::as_str))
        }
        Some("screenshots") => {
            let has = |word: &str| args.iter().any(|arg| arg == word);
            screenshots::screenshots(&tree, has("all"), has("--keep-page"))
        }
        Some("types") => page::types(&tree, Kind::Quick),
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
