//! The core as WebAssembly, with its glue and its types.

use super::Kind;
use crate::tools;
use crate::tree::{self, Tree};
use anyhow::{Context, Result};
use std::path::{Path, PathBuf};

/// Builds `crates/web`, makes the glue, and gives the module's bytes.
pub fn build(tree: &Tree, kind: Kind) -> Result<Vec<u8>> {
    built(tree, kind, "", &glue(tree, kind))?;
    last(tree, kind)
}

/// The module of the page that is given away with what only the bench calls, and its glue, into a folder of their own.
pub fn measured(tree: &Tree) -> Result<PathBuf> {
    let out = tree.target.join("page/measured");
    built(tree, Kind::Release, "measured", &out)?;
    Ok(out)
}

fn built(tree: &Tree, kind: Kind, features: &str, out: &Path) -> Result<()> {
    tools::need_wasm_target(tree)?;
    tools::run(tools::cargo(tree).env("CARGO_ENCODED_RUSTFLAGS", without_paths(tree)?).args([
        "build",
        "--quiet",
        "--package=layercast-web",
        "--features",
        features,
        "--target=wasm32-unknown-unknown",
        "--profile",
        profile(kind),
    ]))?;
    let wasm = tree.target.join("wasm32-unknown-unknown").join(profile(kind)).join("layercast_web.wasm");
    let mut bindgen = wasm_bindgen_cli_support::Bindgen::new();
    bindgen.input_path(&wasm).out_name("core").typescript(true);
    bindgen.remove_name_section(true).remove_producers_section(true);
    bindgen.web(true)?;
    // Without `import.meta` the glue can go into a classic script, the only kind that runs from a folder.
    bindgen.omit_default_module_path(true);
    // A fresh instance after a panic: `__wbg_reset_state()`.
    bindgen.reset_state_function(true);
    bindgen.generate(out).context("making the glue of the crossing")
}

/// Flags that keep the folders of this machine out of the module: the messages of a panic name their source files.
fn without_paths(tree: &Tree) -> Result<String> {
    let home = std::env::var_os("HOME").or_else(|| std::env::var_os("USERPROFILE")).map(PathBuf::from);
    let cargo = std::env::var_os("CARGO_HOME").map(PathBuf::from).or(home.map(|home| home.join(".cargo")));
    let mut flags = vec![format!("--remap-path-prefix={}=.", tree.root.display())];
    let registry = cargo.map(|cargo| cargo.join("registry/src"));
    let indexes = registry.and_then(|registry| std::fs::read_dir(registry).ok());
    for index in indexes.into_iter().flatten() {
        flags.push(format!("--remap-path-prefix={}=", index?.path().display()));
    }
    Ok(flags.join("\u{1f}"))
}

/// What the last build left, also when the Rust rooms do not compile at the moment.
pub fn last(tree: &Tree, kind: Kind) -> Result<Vec<u8>> {
    let from = glue(tree, kind);
    for name in ["core.js", "core.d.ts"] {
        let bytes = std::fs::read(from.join(name)).context("there is no earlier build of the core")?;
        tree::write(&tree.generated().join(name), &bytes)?;
    }
    std::fs::read(module(tree, kind)).context("there is no earlier build of the core")
}

/// Where the module is.
pub fn module(tree: &Tree, kind: Kind) -> PathBuf {
    glue(tree, kind).join("core_bg.wasm")
}

fn glue(tree: &Tree, kind: Kind) -> PathBuf {
    tree.target.join("page").join(profile(kind))
}

fn profile(kind: Kind) -> &'static str {
    match kind {
        Kind::Quick | Kind::Served => "page",
        Kind::Release => "release",
    }
}
