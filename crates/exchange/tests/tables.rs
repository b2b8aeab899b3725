//! Every ugly table of `tests/tables` against the words stored beside it.
//!
//! Each file has one fault and is named for it. `NAME.txt` holds what a person is told, reviewed as prose. After a
//! wanted change: `LAYERCAST_REWRITE=1 cargo test -p layercast-exchange --test tables`, then read what changed.

#![allow(clippy::unwrap_used)]

#[path = "../examples/shared/render.rs"]
mod render;

use layercast_exchange::document::{CastDoc, from_json, to_json};
use layercast_exchange::document::{Choices, Entry, LegDoc, Role, Unit, cell_doubts, to_cast};
use layercast_exchange::read::{Outcome, TableRead, decode, read};
use render::Words;
use std::fmt::Write;
use std::path::PathBuf;

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../tests/tables")
}

/// The tables, sorted by name.
fn tables() -> Vec<(PathBuf, Vec<u8>)> {
    let files = std::fs::read_dir(folder()).unwrap().map(|file| file.unwrap().path());
    let mut files: Vec<PathBuf> =
        files.filter(|path| path.extension().is_some_and(|ext| ext != "txt")).collect();
    files.sort();
    files.into_iter().map(|path| (path.clone(), std::fs::read(path).unwrap())).collect()
}

fn role(role: Role) -> &'static str {
    match role {
        Role::Depth => "depth",
        Role::Down => "going down",
        Role::Up => "coming up",
        Role::One => "one temperature",
        Role::Leg => "the way",
        Role::Oxygen => "oxygen",
        Role::Secchi => "Secchi disk",
        Role::NotUsed => "not used",
    }
}

fn unit(unit: Option<Unit>) -> &'static str {
    match unit {
        Some(Unit::M) => ", m",
        Some(Unit::Cm) => ", cm",
        Some(Unit::Ft) => ", ft",
        Some(Unit::C) => ", °C",
        Some(Unit::F) => ", °F",
        None => "",
    }
}

fn reading(entry: &Entry) -> String {
    let value = |value: Option<f64>| match value {
        Some(value) if value.abs() < 1e6 => format!("{value:.3}"),
        Some(value) => format!("{value:e}"),
        None => "nothing".to_owned(),
    };
    let leg = match entry.leg {
        LegDoc::Down => "down",
        LegDoc::Up => "up",
        LegDoc::Unknown => "way open",
    };
    let line = entry.line.unwrap_or(0);
    let oxygen = entry.oxygen.as_ref().map_or(String::new(), |cell| format!(", {} mg/L", value(cell.value)));
    format!("line {line}, {leg}: {} m, {} °C{oxygen}", value(entry.depth.value), value(entry.temp.value))
}

/// What a person would be told, as text.
fn told(read: &TableRead, words: &Words) -> String {
    let mut text = format!("{:?}\n", read.outcome).to_lowercase();
    for (at, column) in read.columns.iter().enumerate() {
        let open = if column.role_open || column.unit_open { " ?" } else { "" };
        let head = column.head.replace('\n', " ");
        writeln!(text, "column {}: {}{}{open} “{head}”", at + 1, role(column.role), unit(column.unit))
            .unwrap();
    }
    if read.outcome == Outcome::Understood || read.outcome == Outcome::Noticed {
        writeln!(text, "readings: {}", read.entries.len()).unwrap();
        for (name, entry) in [("first", read.entries.first()), ("last", read.entries.last())] {
            writeln!(text, "{name}: {}", entry.map_or("none".to_owned(), reading)).unwrap();
        }
        writeln!(text, "last place: {:.3} °C", read.digit_c).unwrap();
    }
    text.push('\n');
    for message in read.understood.iter().chain(&read.messages) {
        writeln!(text, "{}", words.render(message)).unwrap();
    }
    if let Some(question) = &read.question {
        writeln!(text, "{}\n{}", words.render(&question.title), words.render(&question.text)).unwrap();
        for (label, _) in &question.ways {
            writeln!(text, "- {}", words.render(label)).unwrap();
        }
    }
    if let Some(message) = &read.gives {
        writeln!(text, "{}", words.render(message)).unwrap();
    }
    text
}

#[test]
fn every_table_is_told_as_stored() {
    let rewrite = std::env::var_os("LAYERCAST_REWRITE").is_some();
    let words = Words::load("en");
    let mut wrong = Vec::new();
    for (path, bytes) in tables() {
        let got = told(&read(&bytes, &Choices::default()), &words);
        let stored = path.with_extension("txt");
        if rewrite {
            std::fs::write(&stored, &got).unwrap();
        }
        let want = std::fs::read_to_string(&stored).unwrap_or_default();
        if got != want {
            wrong.push(format!("{}\n--- stored\n{want}--- now\n{got}", path.display()));
        }
    }
    assert!(wrong.is_empty(), "{} tables are told otherwise:\n{}", wrong.len(), wrong.join("\n"));
}

#[test]
fn there_are_enough_tables_and_every_stored_text_has_one() {
    let tables = tables();
    assert!(tables.len() >= 45, "{}", tables.len());
    for stored in std::fs::read_dir(folder()).unwrap().map(|file| file.unwrap().path()) {
        let has_table = tables.iter().any(|(path, _)| path.with_extension("txt") == stored);
        assert!(has_table || stored.extension().is_some_and(|ext| ext != "txt"), "{}", stored.display());
    }
}

#[test]
fn no_word_is_missing_in_either_language() {
    for lang in ["en", "es"] {
        let words = Words::load(lang);
        for (path, bytes) in tables() {
            let told = told(&read(&bytes, &Choices::default()), &words);
            assert!(
                !told.contains("[read-") && !told.contains("[doubt-") && !told.contains("{$"),
                "{lang} {}:\n{told}",
                path.display()
            );
        }
    }
}

#[test]
fn every_answer_of_every_question_leads_on() {
    for (path, bytes) in tables() {
        let mut open = vec![(Choices::default(), 0)];
        while let Some((choices, asked)) = open.pop() {
            let read = read(&bytes, &choices);
            let Some(question) = read.question else { continue };
            assert!(asked < 5, "{} asks again and again", path.display());
            assert!((2..=5).contains(&question.ways.len()), "{}", path.display());
            open.extend(question.ways.into_iter().map(|(_, choices)| (choices, asked + 1)));
        }
    }
}

#[test]
fn no_reading_is_lost_on_the_way_to_the_cast() {
    for (path, bytes) in tables() {
        let choices = Choices::default();
        let read = read(&bytes, &choices);
        let doc = CastDoc::from_read(&read, &decode(&bytes), &choices);
        let cast = to_cast(&doc);
        assert_eq!(cast.readings.len(), read.entries.len(), "{}", path.display());
        for (entry, reading) in doc.entries.iter().zip(&cast.readings) {
            assert_eq!(entry.temp.value, reading.temp_c);
            assert!(reading.depth_m.is_nan() || Some(reading.depth_m) == entry.depth.value);
        }
        for doubt in cell_doubts(&doc) {
            assert!(!doubt.entries.is_empty() && doubt.entries.iter().all(|at| *at < doc.entries.len()));
        }
        assert!(from_json(&to_json(&doc)).as_ref() == Ok(&doc), "{}", path.display());
    }
}
