//! No reference table without a test, no source without a method that it is the source of.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

fn files(folder: &Path, ending: &str) -> Vec<String> {
    let mut names: Vec<String> = std::fs::read_dir(folder)
        .unwrap()
        .map(|entry| entry.unwrap().file_name().into_string().unwrap())
        .filter(|name| name.ends_with(ending))
        .collect();
    names.sort();
    names
}

/// A text without its comments and white space; `//` inside a text is kept.
fn code(source: &str) -> String {
    let mut kept = String::new();
    for line in source.lines() {
        let mut in_text = false;
        let mut before = ' ';
        let end = line.char_indices().find(|(at, c)| {
            let begins = !in_text && line.get(*at..).is_some_and(|rest| rest.starts_with("//"));
            in_text ^= *c == '"' && before != '\\';
            before = *c;
            begins
        });
        kept.extend(line[..end.map_or(line.len(), |(at, _)| at)].split_whitespace());
    }
    kept
}

/// Tables with the test files that read them, each by a call of `table` with its name.
fn read_tables() -> BTreeMap<String, BTreeSet<String>> {
    let tests = Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/tests"));
    let names = files(tests, ".rs").into_iter().filter(|name| name != "reference_complete.rs");
    let mut read: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for file in names.chain(["common/mod.rs".to_owned()]) {
        let source = code(&std::fs::read_to_string(tests.join(&file)).unwrap());
        for call in source.split("table(\"").skip(1) {
            let name = call.split_once(".csv\")").expect("table takes a name").0;
            read.entry(name.to_owned()).or_default().insert(file.clone());
        }
    }
    read
}

/// What stands between backticks.
fn names_in(cell: &str) -> impl Iterator<Item = &str> {
    cell.split('`').skip(1).step_by(2)
}

/// Rows of the README: the tables of one, by path without their ending, and the test files it says read them.
fn told_tables() -> Vec<(BTreeSet<String>, BTreeSet<String>)> {
    let readme = std::fs::read_to_string(common::reference().join("README.md")).unwrap();
    let lines = readme.lines().skip_while(|line| !line.starts_with("| table | tests |"));
    lines
        .skip(2)
        .take_while(|line| line.starts_with('|'))
        .map(|line| {
            let cells: Vec<&str> = line.trim_matches('|').split('|').collect();
            assert_eq!(cells.len(), 5, "{line}");
            let path = |name: &str| match name.contains('/') {
                true => name.to_owned(),
                false => format!("check-values/{name}"),
            };
            (names_in(cells[0]).map(path).collect(), names_in(cells[4]).map(str::to_owned).collect())
        })
        .collect()
}

#[test]
fn every_table_is_read_by_a_test_and_told_in_the_readme() {
    let there: BTreeSet<String> = ["check-values", "open-data"]
        .into_iter()
        .flat_map(|folder| {
            files(&common::reference().join(folder), ".csv").into_iter().map(move |n| (folder, n))
        })
        .map(|(folder, name)| format!("{folder}/{}", name.trim_end_matches(".csv")))
        .collect();
    let read = read_tables();
    assert_eq!(read.keys().cloned().collect::<BTreeSet<_>>(), there, "tables that are read, and those there");
    let rows = told_tables();
    let told: BTreeSet<String> = rows.iter().flat_map(|(tables, _)| tables).cloned().collect();
    assert_eq!(told, there, "tables in the README, and those there");
    for (tables, files) in rows {
        let readers: BTreeSet<String> = tables.iter().flat_map(|table| &read[table]).cloned().collect();
        assert_eq!(files, readers, "where {tables:?} is read");
    }
}

#[test]
fn a_table_named_in_a_comment_is_not_read() {
    assert_eq!(code("let a = // table(\"x.csv\")\n  table( \"y // z.csv\" );"), "leta=table(\"y//z.csv\");");
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
fn sources_below(folder: &Path, into: &mut Vec<String>) {
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
    sources_below(Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/src")), &mut all);
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
