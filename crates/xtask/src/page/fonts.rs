//! The fonts of the look, cut down to the characters the page can need.

use super::messages;
use crate::tools;
use crate::tree::{self, Tree};
use anyhow::{Context, Result};
use base64::prelude::{BASE64_STANDARD, Engine};
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;

/// One font file: its name in the page and its place in `web/node_modules`.
pub struct Face {
    /// Id of its data block is "font-" and this.
    pub name: &'static str,
    /// File of the package.
    pub file: &'static str,
}

/// The three files; each keeps its weights.
pub const FACES: [Face; 3] = [
    Face {
        name: "sans",
        file: "@fontsource-variable/ibm-plex-sans/files/ibm-plex-sans-latin-wght-normal.woff2",
    },
    Face {
        name: "serif",
        file: "@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2",
    },
    Face {
        name: "serif-italic",
        file: "@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-italic.woff2",
    },
];

/// The cut fonts as base64, in the order of [`FACES`].
pub fn subset(tree: &Tree) -> Result<Vec<String>> {
    let characters = characters(tree)?;
    let mut digest = Sha256::new();
    digest.update(&characters);
    digest.update(tree::read(&tree.web().join("package-lock.json"))?);
    digest.update(tree::read(&tree.web().join("fonts/subset.js"))?);
    let folder = tree.target.join("page/fonts").join(format!("{:x}", digest.finalize()));
    if !FACES.iter().all(|face| folder.join(face.name).is_file()) {
        for face in &FACES {
            let font = tree.web().join("node_modules").join(face.file);
            let cut = tools::pipe(tools::node(tree).arg("fonts/subset.js").arg(&font), characters.as_bytes())
                .with_context(|| format!("cutting {}", face.file))?;
            tree::write(&folder.join(face.name), &cut)?;
        }
    }
    FACES.iter().map(|face| Ok(BASE64_STANDARD.encode(std::fs::read(folder.join(face.name))?))).collect()
}

/// Characters of the messages that a font of the look lacks: they would be drawn in another font.
pub fn missing_characters(tree: &Tree) -> Result<String> {
    let characters = characters(tree)?;
    let mut missing = String::new();
    for face in &FACES {
        let font = tree.web().join("node_modules").join(face.file);
        let lacks = tools::pipe(
            tools::node(tree).args(["fonts/subset.js", "--lacks"]).arg(&font),
            characters.as_bytes(),
        )?;
        let lacks = String::from_utf8_lossy(&lacks).trim().to_owned();
        if !lacks.is_empty() {
            missing.push_str(&format!("{}: {lacks}\n", face.name));
        }
    }
    Ok(missing)
}

/// Every character of every message, and printable Latin-1 for what people write.
fn characters(tree: &Tree) -> Result<String> {
    let mut all: BTreeSet<char> = (' '..='~').chain('\u{a0}'..='\u{ff}').collect();
    all.insert('\u{2212}');
    for language in messages::LANGUAGES {
        all.extend(messages::source_of(tree, language)?.chars().filter(|c| !c.is_control()));
    }
    Ok(all.into_iter().collect())
}
