//! The tree is as DEVELOPERS.md says: each folder is in its map, no file is long without a reason, nothing names the
//! machine it was written on, and the page has nothing that nobody asks for.

use super::unused;
use crate::tree::{self, Tree};
use anyhow::{Result, bail};
use std::collections::BTreeSet;
use std::path::Path;

/// A longer file says why in its first lines, after [`REASON`].
const MOST_LINES: usize = 400;
const REASON: &str = "Long because";

const FOLDERS: [&str; 6] = ["crates", "web", "static-data", "tests", ".ci", ".cargo"];

/// Fails with every fault found.
pub fn check(tree: &Tree) -> Result<()> {
    let mut faults = Vec::new();
    let map = tree::read(&tree.root.join("DEVELOPERS.md"))?;
    let mut folders = BTreeSet::new();
    for folder in FOLDERS {
        for file in tree::files_below(&tree.root.join(folder))? {
            let short = tree.short(&file).to_string();
            if let Some(parent) = Path::new(&short).parent() {
                folders.insert(parent.to_string_lossy().into_owned());
            }
            faults.extend(faults_of(&short, &std::fs::read(&file)?));
        }
    }
    faults.extend(unnamed(&map, &folders));
    faults.extend(not_run(tree)?);
    faults.extend(repeated_ids(&tree::read(&tree.web().join("index.html"))?));
    faults.extend(unused::faults(tree)?);
    if !faults.is_empty() {
        bail!("{}", faults.join("\n"));
    }
    Ok(())
}

/// Folders that the map does not name; a folder is named when it or one above it is, written as `crates/core/`.
fn unnamed(map: &str, folders: &BTreeSet<String>) -> Vec<String> {
    let is_named = |folder: &&String| {
        Path::new(folder)
            .ancestors()
            .filter(|path| path.components().count() > 1 || path == &Path::new(folder))
            .any(|path| {
                let name = path.to_string_lossy();
                map.contains(&format!("`{name}/`"))
            })
    };
    folders
        .iter()
        .filter(|folder| !is_named(folder))
        .map(|folder| format!("{folder}/ is not in the map of DEVELOPERS.md"))
        .collect()
}

/// Files of tests that the one program of their room does not name: they would never run.
fn not_run(tree: &Tree) -> Result<Vec<String>> {
    let mut faults = Vec::new();
    for file in tree::files_below(&tree.root.join("crates"))? {
        let Some(folder) = file.parent().filter(|_| file.ends_with("tests/all.rs")) else { continue };
        let all = tree::read(&file)?;
        for test in std::fs::read_dir(folder)? {
            let test = test?.path();
            let Some(name) = test.file_stem().and_then(|name| name.to_str()) else { continue };
            let is_test = test.extension().is_some_and(|ending| ending == "rs") && name != "all";
            if is_test && !is_named_in(&all, name) {
                faults.push(format!(
                    "{} is not named in {}: it never runs",
                    tree.short(&test),
                    tree.short(&file)
                ));
            }
        }
    }
    Ok(faults)
}

fn is_named_in(all: &str, name: &str) -> bool {
    all.lines().any(|line| line.trim() == format!("mod {name};"))
}

fn faults_of(name: &str, bytes: &[u8]) -> Vec<String> {
    let Ok(text) = std::str::from_utf8(bytes) else {
        return Vec::new();
    };
    let mut faults = Vec::new();
    let is_code = [".rs", ".ts", ".js", ".css", ".html"].iter().any(|ending| name.ends_with(ending));
    let count = text.lines().count();
    if is_code && count > MOST_LINES && !text.lines().take(20).any(|line| line.contains(REASON)) {
        faults.push(format!("{name} has {count} lines: divide it, or say at its top \"{REASON} …\""));
    }
    // Written apart so that this file does not name them itself.
    let places =
        [concat!("/ro", "ot/"), concat!("/wo", "rk/"), concat!("/ho", "me/"), concat!("C:", "\\Users")];
    for (number, line) in text.lines().enumerate() {
        if places.iter().any(|place| line.contains(place)) {
            faults.push(format!("{name}, line {}: names a path of one machine", number + 1));
        }
    }
    faults
}

/// Ids that stand in a page twice: only the first would ever be found.
fn repeated_ids(html: &str) -> Vec<String> {
    let mut seen = BTreeSet::new();
    let ids = html.split(" id=\"").skip(1).filter_map(|rest| rest.split_once('"')).map(|(id, _)| id);
    ids.filter(|id| !seen.insert(*id)).map(|id| format!("web/index.html has the id \"{id}\" twice")).collect()
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_test_that_is_not_named_is_found() {
        assert!(is_named_in("mod common;\nmod laws;\n", "laws"));
        assert!(!is_named_in("mod common;\n// mod laws;\n", "laws"));
        assert!(!is_named_in("mod laws_layers;\n", "laws"));
    }

    #[test]
    fn a_long_file_needs_a_reason() {
        let long = "x\n".repeat(401);
        assert_eq!(faults_of("a.rs", long.as_bytes()).len(), 1);
        assert!(faults_of("a.rs", format!("//! Long because it is a table.\n{long}").as_bytes()).is_empty());
        assert!(faults_of("a.csv", long.as_bytes()).is_empty());
    }

    #[test]
    fn a_folder_without_a_line_in_the_map_is_named() {
        let folders = ["crates/core/src/layers", "crates/new/src"].map(str::to_owned).into();
        assert_eq!(
            unnamed("`crates/core/`", &folders),
            ["crates/new/src/ is not in the map of DEVELOPERS.md"]
        );
    }

    #[test]
    fn an_id_that_stands_twice_is_named() {
        let html = r#"<p id="a"></p><p id="b"></p><p id="a"></p>"#;
        assert_eq!(repeated_ids(html), ["web/index.html has the id \"a\" twice"]);
    }

    #[test]
    fn a_path_of_a_machine_is_found() {
        assert_eq!(faults_of("a.md", concat!("see /ho", "me/ann/x").as_bytes()).len(), 1);
    }
}
