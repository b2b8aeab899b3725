//! The page: one HTML file with everything inside.

mod core;
mod fonts;
mod html;
mod messages;
mod script;

use crate::tools;
use crate::tree::{self, Tree};
use anyhow::{Context, Result};
use std::fs::File;
use std::path::{Path, PathBuf};

pub use fonts::missing_characters;
pub use messages::{LANGUAGES, source_of};

/// How a page is built.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Kind {
    /// Quick to build, readable in the browser's tools.
    Quick,
    /// The same, which asks `serve` twice a second whether it is still the newest.
    Served,
    /// Small and fast: what is given away.
    Release,
}

/// Builds the types and the glue of the crossing into `web/generated`.
pub fn types(tree: &Tree, kind: Kind) -> Result<()> {
    let _lock = lock(tree)?;
    core::build(tree, kind).map(|_| ())
}

/// The module that the last build left.
pub fn module(tree: &Tree, kind: Kind) -> PathBuf {
    core::module(tree, kind)
}

/// Builds the module that the bench measures, and gives the folder of it and its glue.
pub fn measured(tree: &Tree) -> Result<PathBuf> {
    let _lock = lock(tree)?;
    core::measured(tree)
}

/// Builds the whole page and gives its text. `keep_core`: with the core of the last build.
pub fn page(tree: &Tree, kind: Kind, keep_core: bool) -> Result<String> {
    tools::need_node(tree)?;
    let _lock = lock(tree)?;
    let wasm = if keep_core { core::last(tree, kind)? } else { core::build(tree, kind)? };
    let script = script::bundle(tree, kind, "main")?;
    let worker = script::bundle(tree, kind, "worker")?;
    let styles = fonts::rules(tree)? + &script::styles(tree, kind)?;
    html::assemble(tree, kind, &html::Parts { wasm, script, worker, styles })
}

/// Builds the page into a file and says how large it is.
pub fn write(tree: &Tree, kind: Kind, keep_core: bool, out: &Path) -> Result<PathBuf> {
    let html = page(tree, kind, keep_core)?;
    tree::write(out, html.as_bytes())?;
    println!("{} {:.1} KB", tree.short(out), html.len() as f64 / 1000.0);
    Ok(out.to_owned())
}

/// One build at a time writes into `web/generated`.
fn lock(tree: &Tree) -> Result<File> {
    std::fs::create_dir_all(tree.build())?;
    let file = File::create(tree.build().join(".lock"))?;
    file.lock().context("waiting for another build")?;
    Ok(file)
}
