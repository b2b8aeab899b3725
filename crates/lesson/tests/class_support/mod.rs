//! Hand-ins of an invented class of eight groups.
#![allow(dead_code, reason = "each test file uses its own part")]

use crate::support::{doing, notebook};
use layercast_lesson::action::Action;
use layercast_lesson::class::import::{Dropped, Outcome, TakenRow, import};
use layercast_lesson::class::{Class, ClassAction, act};
use layercast_lesson::document::Notebook;
use layercast_lesson::hand_in::file_text;
use layercast_lesson::{prepare, questions};
use std::io::{Cursor, Write};
use zip::ZipWriter;
use zip::write::SimpleFileOptions;

/// A sheet of a seat on a water of `waters.csv`, nothing answered.
pub fn seat(water: &str, group: &str, seat: &str) -> Notebook {
    let text = |text: &str| text.to_owned();
    let mut notebook = doing(
        &notebook(water),
        &[
            Action::SetGroup { text: text(group) },
            Action::SetSeat { text: text(seat) },
            Action::SetClass { text: text("9b") },
            Action::NoLayers,
        ],
    );
    // Each seat works on a device of its own.
    notebook.code = format!("{group}-{seat}QQ");
    notebook
}

/// Where a kind stands in the paper of a notebook.
pub fn place(notebook: &Notebook, kind: u8) -> usize {
    let prepared = prepare(notebook);
    let paper = questions::paper(&prepared.context(notebook));
    paper.asked.iter().position(|asked| asked.kind == kind).unwrap()
}

/// The question "How warm at …?" answered with these temperatures, one after another. `None`: the right one, as read
/// going down.
pub fn answers(notebook: &Notebook, temps: &[Option<&str>]) -> Notebook {
    let question = place(notebook, 1);
    let prepared = prepare(notebook);
    let asked = questions::paper(&prepared.context(notebook)).asked.remove(question);
    let down = |entry: &&layercast_exchange::document::Entry| {
        (entry.depth.current().unwrap() - asked.depths_m[0]).abs() < 1e-6
    };
    let right = notebook.cast.entries.iter().find(down).unwrap().temp.written.clone();
    let mut notebook = notebook.clone();
    for temp in temps {
        let text = temp.map_or(right.clone(), str::to_owned);
        let set = |field: &str, text: String| Action::SetField { question, field: field.into(), text };
        notebook =
            doing(&notebook, &[set("temp", text), set("unit", "c".into()), Action::Check { question }]);
    }
    notebook
}

/// What whoever takes depth for height answers to "How warm at …?", as read going down.
pub fn upside_down(notebook: &Notebook) -> String {
    let prepared = prepare(notebook);
    let asked = questions::paper(&prepared.context(notebook)).asked.remove(place(notebook, 1));
    let last_m = prepared.analysis.profile.last().unwrap().depth_m;
    let down = |entry: &&layercast_exchange::document::Entry| {
        (entry.depth.current().unwrap() - (last_m - asked.depths_m[0])).abs() < 1e-6
    };
    notebook.cast.entries.iter().find(down).unwrap().temp.written.clone()
}

/// Every reading changed: depth and temperature.
pub fn retyped(notebook: &Notebook, change: impl Fn(&mut f64, &mut f64)) -> Notebook {
    let mut notebook = notebook.clone();
    for entry in &mut notebook.cast.entries {
        let (mut depth, mut temp) = (entry.depth.value.unwrap(), entry.temp.value.unwrap_or(0.0));
        change(&mut depth, &mut temp);
        let temp_value = entry.temp.value.map(|_| temp);
        entry.depth.value = Some(depth);
        entry.depth.written = format!("{depth:.2}");
        entry.temp.value = temp_value;
        entry.temp.written = temp_value.map(|t| format!("{t:.2}")).unwrap_or_default();
    }
    notebook
}

/// Hand-ins dropped into a class, each as a file with a name that says nothing.
pub fn taken(class: &Class, hand_ins: &[Notebook]) -> (Class, Vec<TakenRow>) {
    let files: Vec<Vec<u8>> = hand_ins.iter().map(|notebook| file_text(notebook).into_bytes()).collect();
    dropped(class, &files)
}

/// Bytes dropped into a class.
pub fn dropped(class: &Class, files: &[Vec<u8>]) -> (Class, Vec<TakenRow>) {
    let batch: Vec<Dropped> = files.iter().map(|bytes| Dropped { name: "file", bytes }).collect();
    import(class, &batch)
}

/// The class of the eight groups A to H, one seat each: "01" to "08".
pub fn eight() -> (Class, Vec<TakenRow>) {
    let all: Vec<Notebook> = eight_seats();
    taken(&Class::new("", None), &all)
}

/// What became of each.
pub fn outcomes(rows: &[TakenRow]) -> Vec<Outcome> {
    rows.iter().map(|row| row.outcome).collect()
}

/// One row of this outcome, for this reason.
#[track_caller]
pub fn one(rows: &[TakenRow], outcome: Outcome, id: &str) {
    assert_eq!(rows.len(), 1, "{rows:?}");
    assert_eq!(rows[0].outcome, outcome, "{rows:?}");
    assert_eq!(rows[0].why.first().map_or("", |why| why.id.as_str()), id);
}

/// A class with one seat of group C.
pub fn with_one() -> (Class, Notebook) {
    let notebook = answers(&seat("group_c", "C", "07"), &[None]);
    (taken(&Class::new("", None), std::slice::from_ref(&notebook)).0, notebook)
}

/// Their notebooks.
pub fn eight_seats() -> Vec<Notebook> {
    let groups = ["a", "b", "c", "d", "e", "f", "g", "h"];
    let one = |(at, group): (usize, &&str)| {
        seat(&format!("group_{group}"), &group.to_uppercase(), &format!("0{}", at + 1))
    };
    groups.iter().enumerate().map(one).collect()
}

/// The key of the member in a seat.
#[track_caller]
pub fn key(class: &Class, seat: &str) -> String {
    let is = |member: &&layercast_lesson::class::Member| {
        member.repair.seat(&class.paper(member).unwrap().hand_in) == seat
    };
    class.now.members.iter().find(is).unwrap().key.clone()
}

/// The class after several actions.
pub fn acted(class: &Class, actions: &[ClassAction]) -> Class {
    actions.iter().fold(class.clone(), |class, action| act(&class, action))
}

/// A zip by another program.
pub fn zipped(files: &[(&str, &[u8])]) -> Vec<u8> {
    let mut writer = ZipWriter::new(Cursor::new(Vec::new()));
    for (name, bytes) in files {
        writer.start_file(*name, SimpleFileOptions::default()).unwrap();
        writer.write_all(bytes).unwrap();
    }
    writer.finish().unwrap().into_inner()
}
