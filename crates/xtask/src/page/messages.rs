//! The message files as the page carries them: one text per language, without comments.

use crate::tree::{self, Tree};
use anyhow::{Result, bail};

/// The languages, complete from the start.
pub const LANGUAGES: [&str; 2] = ["en", "es"];

/// All messages of a language as one Fluent text.
pub fn source_of(tree: &Tree, language: &str) -> Result<String> {
    let folder = tree.data().join("messages").join(language);
    let mut all = String::new();
    for file in tree::files_below(&folder)? {
        if file.extension().is_none_or(|ending| ending != "ftl") {
            bail!("{} is not a message file", tree.short(&file));
        }
        for line in tree::read(&file)?.lines().filter(|line| !line.starts_with('#')) {
            if !(line.is_empty() && all.ends_with("\n\n")) {
                all.push_str(line);
                all.push('\n');
            }
        }
        all.push('\n');
    }
    Ok(all)
}
