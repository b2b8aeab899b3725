//! No reference table without a test, no source without a method that it is the source of.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;

fn files(folder: &std::path::Path, ending: &str) -> Vec<String> {
    let mut names: Vec<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .filter(|name| name.ends_with(ending))
        .collect();
    names.sort();
    names
}

#[test]
fn every_table_is_read_by_a_test() {
    let tests = std::path::Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/tests"));
    let sources: Vec<String> = files(tests, ".rs")
        .iter()
        .filter(|name| *name != "reference_complete.rs")
        .map(|name| std::fs::read_to_string(tests.join(name)).unwrap())
        .chain([std::fs::read_to_string(tests.join("common/mod.rs")).unwrap()])
        .collect();
    let mut seen = 0;
    for folder in ["check-values", "open-data"] {
        for name in files(&common::reference().join(folder), ".csv") {
            let quoted = format!("\"{folder}/{name}\"");
            assert!(sources.iter().any(|s| s.contains(&quoted)), "no test reads {folder}/{name}");
            seen += 1;
        }
    }
    assert!(seen >= 28, "only {seen} tables found");
}

#[test]
fn every_table_says_where_its_numbers_come_from() {
    for folder in ["check-values", "open-data"] {
        for name in files(&common::reference().join(folder), ".csv") {
            let text = std::fs::read_to_string(common::reference().join(folder).join(&name)).unwrap();
            assert!(text.starts_with("# "), "{folder}/{name} has no source line");
        }
    }
}

/// Every file of Rust below a folder, as text.
fn sources_below(folder: &std::path::Path, into: &mut Vec<String>) {
    for entry in std::fs::read_dir(folder).unwrap() {
        let path = entry.unwrap().path();
        if path.is_dir() {
            sources_below(&path, into);
        } else if path.extension().is_some_and(|ending| ending == "rs") {
            into.push(std::fs::read_to_string(&path).unwrap());
        }
    }
}

#[test]
fn every_source_of_the_bibliography_is_cited() {
    let mut all = Vec::new();
    sources_below(std::path::Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/src")), &mut all);
    let named = |line: &str| Some(line.strip_prefix("pub enum ")?.strip_suffix(" {}")?.to_owned());
    let items: Vec<String> = all.iter().flat_map(|text| text.lines()).filter_map(named).collect();
    assert!(items.len() >= 40, "only {} sources found", items.len());
    for item in items {
        let cited = |text: &String| {
            text.contains(&format!("crate::bibliography::{item})"))
                || text.contains(&format!("see [`{item}`]"))
        };
        assert!(all.iter().any(cited), "no comment cites {item}");
    }
}
