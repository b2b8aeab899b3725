//! Where things are: every path the commands use.

use anyhow::{Context, Result};
use std::path::{Path, PathBuf};

/// The repository.
pub struct Tree {
    /// Its root.
    pub root: PathBuf,
    /// Where cargo builds: `CARGO_TARGET_DIR`, else `target`.
    pub target: PathBuf,
}

impl Tree {
    /// Finds the repository from this package's own place in it.
    pub fn find() -> Result<Self> {
        let root = Path::new(env!("CARGO_MANIFEST_DIR"))
            .ancestors()
            .nth(2)
            .context("crates/xtask is not where it should be")?
            .to_owned();
        let target = match std::env::var_os("CARGO_TARGET_DIR") {
            Some(dir) => root.join(dir),
            None => root.join("target"),
        };
        Ok(Self { root, target })
    }

    /// `web/`.
    pub fn web(&self) -> PathBuf {
        self.root.join("web")
    }

    /// `web/generated/`: types and glue made from the Rust structs; never stored.
    pub fn generated(&self) -> PathBuf {
        self.web().join("generated")
    }

    /// `static-data/`.
    pub fn data(&self) -> PathBuf {
        self.root.join("static-data")
    }

    /// `build/`: the page of the quick build, and shots of it.
    pub fn build(&self) -> PathBuf {
        self.root.join("build")
    }

    /// `dist/`: what is given away.
    pub fn dist(&self) -> PathBuf {
        self.root.join("dist")
    }

    /// A path as it reads from the root, for messages.
    pub fn short<'a>(&self, path: &'a Path) -> std::path::Display<'a> {
        path.strip_prefix(&self.root).unwrap_or(path).display()
    }
}

/// Every file below a folder, sorted, without what is generated or installed.
pub fn files_below(folder: &Path) -> Result<Vec<PathBuf>> {
    let mut found = Vec::new();
    let mut open = vec![folder.to_owned()];
    while let Some(dir) = open.pop() {
        let entries =
            std::fs::read_dir(&dir).with_context(|| format!("reading the folder {}", dir.display()))?;
        for entry in entries {
            let entry = entry?;
            let path = entry.path();
            let name = entry.file_name();
            if entry.file_type()?.is_dir() {
                if !["node_modules", "target", "generated", ".git"].iter().any(|skip| name == *skip) {
                    open.push(path);
                }
            } else {
                found.push(path);
            }
        }
    }
    found.sort();
    Ok(found)
}

/// Reads a text file, naming it when it cannot be read.
pub fn read(path: &Path) -> Result<String> {
    std::fs::read_to_string(path).with_context(|| format!("reading {}", path.display()))
}

/// Writes a file whole or not at all, and not at all when it holds just that already.
pub fn write(path: &Path, bytes: &[u8]) -> Result<()> {
    if std::fs::read(path).is_ok_and(|old| old == bytes) {
        return Ok(());
    }
    let folder = path.parent().context("a file needs a folder")?;
    std::fs::create_dir_all(folder)?;
    let name = path.file_name().and_then(|n| n.to_str()).unwrap_or("file");
    let draft = folder.join(format!(".{name}.{}", std::process::id()));
    std::fs::write(&draft, bytes).with_context(|| format!("writing {}", draft.display()))?;
    std::fs::rename(&draft, path).with_context(|| format!("writing {}", path.display()))
}
