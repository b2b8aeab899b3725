//! No reference table without a test.
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
