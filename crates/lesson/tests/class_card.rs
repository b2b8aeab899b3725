//! What a teacher drops on the class: eight hand-ins with the troubles of a real week, stored for the browser tests as files.
//! `LAYERCAST_REWRITE=1 cargo test -p layercast-lesson --test all class_card` writes them anew. The groups are invented.

#![allow(clippy::unwrap_used, reason = "a test stops at what should not be")]

use crate::class_support::{answers, dropped, eight_seats, retyped, upside_down, zipped};
use layercast_lesson::class::Class;
use layercast_lesson::class::import::{Counts, Outcome};
use layercast_lesson::document::Notebook;
use layercast_lesson::hand_in::file_text;
use std::path::PathBuf;

fn file(notebook: &Notebook) -> Vec<u8> {
    file_text(notebook).into_bytes()
}

/// The files, by the name they are stored under.
fn card() -> Vec<(&'static str, Vec<u8>)> {
    let seats = eight_seats();
    let [a, b, c, d, e, f, g, h] = seats.as_slice() else { unreachable!() };
    let a_first = a.clone();
    let a = answers(a, &[None]);
    let b = answers(b, &[Some(&upside_down(b)), None]);
    let c = answers(c, &[Some(&upside_down(c))]);
    let e = answers(e, &[None]);
    // Read in feet and °F, and nobody said so.
    let f = retyped(f, |z, t| {
        *z /= 0.3048;
        *t = *t * 1.8 + 32.0;
    });
    let mut g = g.clone();
    g.sheets[0].seat = String::new();
    let mut other = h.clone();
    other.sheets[0].class = "9c".to_owned();
    let broken = {
        let mut bytes = file(d);
        bytes.truncate(bytes.len() / 2);
        bytes
    };
    let in_zip = zipped(&[("Group B (2).json", &file(&b)), ("group c final.json", &file(&c))]);
    vec![
        ("hand-in.json", file(&a)),
        ("hand-in (1).json", file(&a_first)),
        ("from the platform.zip", in_zip),
        ("D.json", file(d)),
        ("e renamed.json", file(&e)),
        ("copy of e.json", file(&e)),
        ("F.json", file(&f)),
        ("G.json", file(&g)),
        ("H of 9c.json", file(&other)),
        ("cut off.json", broken),
    ]
}

#[test]
fn what_the_browser_tests_drop_is_as_stored_and_adds_up() {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../tests/browser/hand_ins");
    if std::env::var_os("LAYERCAST_REWRITE").is_some() {
        std::fs::create_dir_all(&folder).unwrap();
        for (name, bytes) in card() {
            std::fs::write(folder.join(name), bytes).unwrap();
        }
    }
    let stored: Vec<Vec<u8>> =
        card().iter().map(|(name, _)| std::fs::read(folder.join(name)).unwrap()).collect();
    let written: Vec<Vec<u8>> = card().into_iter().map(|(_, bytes)| bytes).collect();
    // A zip carries the hour of its making; what is in it is the same.
    for ((name, _), (a, b)) in card().iter().zip(stored.iter().zip(&written)) {
        assert!(name.ends_with(".zip") || a == b, "{name} is not as stored");
    }
    // Counted by hand: ten things dropped, one of them a zip of two: eleven.
    let (class, rows) = dropped(&Class::new("9b", None), &stored);
    let counts = Counts::of(&rows);
    assert_eq!((rows.len(), counts.all()), (11, 11), "{rows:?}");
    // New: A, B, C, E. Same again: the older copy of A, the copy of E. To look at: D (2 m deep), F (feet, °F), G (no seat),
    // and the one that is cut off. Not ours: H of another class.
    assert_eq!(
        (counts.new, counts.same_again, counts.newer_than, counts.needs_a_look, counts.not_ours),
        (4, 2, 0, 4, 1),
        "{rows:?}"
    );
    assert!(rows.iter().all(|row| row.outcome != Outcome::NewerThan));
    assert_eq!(class.now.members.iter().filter(|member| member.aside.is_none()).count(), 7);
}
