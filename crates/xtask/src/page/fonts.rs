//! The fonts of the look, cut down to the characters the page can need.

use super::messages;
use crate::tools;
use crate::tree::{self, Tree};
use anyhow::{Context, Result};
use base64::prelude::{BASE64_STANDARD, Engine};
use sha2::{Digest, Sha256};
use std::collections::BTreeSet;

/// One font file: what the style sheet calls it and its place in `web/node_modules`.
struct Face {
    family: &'static str,
    style: &'static str,
    /// The weights the look uses; the file keeps all between them.
    weights: (u32, u32),
    file: &'static str,
}

const FACES: [Face; 3] = [
    Face {
        family: "Plex Sans",
        style: "normal",
        weights: (400, 700),
        file: "@fontsource-variable/ibm-plex-sans/files/ibm-plex-sans-latin-wght-normal.woff2",
    },
    Face {
        family: "Source Serif",
        style: "normal",
        weights: (400, 600),
        file: "@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-normal.woff2",
    },
    Face {
        family: "Source Serif",
        style: "italic",
        weights: (400, 400),
        file: "@fontsource-variable/source-serif-4/files/source-serif-4-latin-wght-italic.woff2",
    },
];

/// The cut fonts as `@font-face` rules.
pub fn rules(tree: &Tree) -> Result<String> {
    let characters = characters(tree)?;
    let mut rules = String::new();
    for face in &FACES {
        let font = cut(tree, face, &characters).with_context(|| format!("cutting {}", face.file))?;
        let Face { family, style, weights: (least, most), .. } = face;
        rules.push_str(&format!(
            "@font-face{{font-family:\"{family}\";font-style:{style};font-weight:{least} {most};src:url(data:font/woff2;base64,{}) format(\"woff2\")}}\n",
            BASE64_STANDARD.encode(font)
        ));
    }
    Ok(rules)
}

/// One font with these characters only; kept from build to build for as long as nothing it is made of changes.
fn cut(tree: &Tree, face: &Face, characters: &str) -> Result<Vec<u8>> {
    let font = tree.web().join("node_modules").join(face.file);
    let (least, most) = (face.weights.0.to_string(), face.weights.1.to_string());
    let mut digest = Sha256::new();
    for part in [characters, face.file, &least, &most] {
        digest.update(part);
        digest.update([0]);
    }
    digest.update(tree::read(&tree.web().join("package-lock.json"))?);
    digest.update(tree::read(&tree.web().join("fonts/subset.js"))?);
    let kept = tree.target.join("page/fonts").join(format!("{:x}", digest.finalize()));
    if let Ok(font) = std::fs::read(&kept) {
        return Ok(font);
    }
    let font = tools::pipe(
        tools::node(tree).arg("fonts/subset.js").arg(&font).args([least, most]),
        characters.as_bytes(),
    )?;
    tree::write(&kept, &font)?;
    Ok(font)
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
            missing.push_str(&format!("{} {}: {lacks}\n", face.family, face.style));
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
