//! The script and the styles, each bundled into one text.

use super::Kind;
use crate::tools;
use crate::tree::{self, Tree};
use anyhow::Result;

/// The order of the style sheets; one that is not named here comes after these.
const STYLES: [&str; 8] = ["tokens", "base", "bar", "log", "picture", "profile", "questions", "report"];

/// An entrance of `web/scripts` ("main", or "worker" for what runs beside the page) and all it imports, as one classic
/// script.
pub fn bundle(tree: &Tree, kind: Kind, entrance: &str) -> Result<String> {
    let mut esbuild = tools::npm_program(tree, "esbuild");
    esbuild.arg(format!("scripts/{entrance}.ts")).args([
        "--bundle",
        "--format=iife",
        "--target=es2022",
        "--charset=utf8",
        "--legal-comments=none",
        "--log-level=warning",
    ]);
    if kind == Kind::Release {
        esbuild.arg("--minify");
    }
    tools::output(&mut esbuild)
}

/// Every sheet of `web/styles`, in order.
pub fn styles(tree: &Tree, kind: Kind) -> Result<String> {
    let mut files = tree::files_below(&tree.web().join("styles"))?;
    let place = |path: &std::path::PathBuf| {
        let name = path.file_stem().and_then(|n| n.to_str()).unwrap_or_default();
        STYLES.iter().position(|style| *style == name).unwrap_or(STYLES.len())
    };
    files.sort_by_key(place);
    let mut all = String::new();
    for file in files {
        all.push_str(&tree::read(&file)?);
    }
    let mut esbuild = tools::npm_program(tree, "esbuild");
    esbuild.args(["--loader=css", "--target=chrome120,firefox121", "--charset=utf8", "--log-level=warning"]);
    if kind == Kind::Release {
        esbuild.arg("--minify");
    }
    tools::pipe(&mut esbuild, all.as_bytes()).map(|bytes| String::from_utf8_lossy(&bytes).into_owned())
}
