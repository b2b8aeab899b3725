//! Every id of Log and Profile that the code names stands in both languages, with the same arguments, and no other does.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use std::collections::{BTreeMap, BTreeSet};
use std::path::Path;

fn root() -> &'static Path {
    Path::new(concat!(env!("CARGO_MANIFEST_DIR"), "/../.."))
}

/// Ids named in the source files below a folder.
fn named(folder: &Path, ids: &mut BTreeSet<String>) {
    for file in std::fs::read_dir(folder).unwrap() {
        let path = file.unwrap().path();
        if path.is_dir() {
            named(&path, ids);
        } else {
            let text = std::fs::read_to_string(&path).unwrap();
            let literals = text.split('"').skip(1).step_by(2);
            let is_id = |word: &&str| word.starts_with("log-") || word.starts_with("profile-");
            ids.extend(literals.filter(is_id).map(str::to_owned));
        }
    }
}

/// Ids of a message file with the arguments each one uses.
fn written(language: &str) -> BTreeMap<String, BTreeSet<String>> {
    let mut ids: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    for name in ["log", "profile"] {
        let path = root().join(format!("static-data/messages/{language}/{name}.ftl"));
        let mut last = String::new();
        for line in std::fs::read_to_string(path).unwrap().lines().filter(|line| !line.starts_with('#')) {
            if let Some((id, _)) =
                line.split_once(" =").filter(|_| line.starts_with(|c: char| c.is_ascii_lowercase()))
            {
                assert!(id.starts_with(name), "{id} stands in {name}.ftl");
                assert!(!ids.contains_key(id), "{id} stands twice");
                last = id.to_owned();
                ids.entry(last.clone()).or_default();
            }
            let args = line
                .split('$')
                .skip(1)
                .map(|rest| rest.split(|c: char| !c.is_ascii_lowercase()).next().unwrap());
            if let Some(known) = ids.get_mut(&last) {
                known.extend(args.map(str::to_owned));
            }
        }
    }
    ids
}

#[test]
fn both_languages_have_every_id_and_no_other() {
    let mut code = BTreeSet::new();
    named(&Path::new(env!("CARGO_MANIFEST_DIR")).join("src"), &mut code);
    for language in ["en", "es"] {
        let ids: BTreeSet<String> = written(language).into_keys().collect();
        let missing: Vec<_> = code.difference(&ids).collect();
        let unused: Vec<_> = ids.difference(&code).collect();
        assert!(
            missing.is_empty() && unused.is_empty(),
            "{language}: missing {missing:?}, unused {unused:?}"
        );
    }
}

#[test]
fn both_languages_use_the_same_arguments() {
    assert_eq!(written("en"), written("es"));
}

#[test]
fn inline_marks_are_the_three_that_there_are_and_closed() {
    for language in ["en", "es"] {
        for name in ["log", "profile"] {
            let path = root().join(format!("static-data/messages/{language}/{name}.ftl"));
            for line in std::fs::read_to_string(path).unwrap().lines().filter(|line| !line.starts_with('#')) {
                for mark in ["b", "mine", "cell"] {
                    let count = |tag: String| line.matches(tag.as_str()).count();
                    assert_eq!(count(format!("<{mark}>")), count(format!("</{mark}>")), "{line}");
                }
                let bare = ["b", "mine", "cell"].iter().fold(line.to_owned(), |line, mark| {
                    line.replace(&format!("<{mark}>"), "").replace(&format!("</{mark}>"), "")
                });
                assert!(!bare.contains('<'), "{line}");
            }
        }
    }
}
