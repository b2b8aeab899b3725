//! Everything a student may read in the questions of every water, right, wrong and untouched, in both languages.
//!
//! `LAYERCAST_WRITE_PAPERS=folder` writes it to files, to be read as prose.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

use crate::questions_support;

use layercast_lesson::document::{Answer, Try};
use layercast_lesson::questions::{self, Asked};
use layercast_lesson::view::{QuestionView, Said};
use questions_support::answers::{rights, wrongs};
use questions_support::words::Words;
use questions_support::{Fields, Pond, all_ponds, fields, placed};
use std::collections::{BTreeMap, BTreeSet};

/// Widest gloss that fits the panel beside its sum, characters (measured on the narrowest panel).
const GLOSS: usize = 22;
/// Widest left side of a line of a sum, characters.
const LEFT: usize = 30;

fn tried(fields: &Fields) -> Try {
    Try { fields: fields.clone(), cast_id: "cast".into(), ..Try::default() }
}

/// Ways a question may stand: name, answer.
fn states(pond: &Pond, asked: &Asked) -> Vec<(String, Answer)> {
    let tries =
        |list: &[&Fields]| Answer { tries: list.iter().map(|f| tried(f)).collect(), ..Answer::default() };
    let mut all = vec![("untouched".to_owned(), Answer::default())];
    let far = fields(&[
        ("temp", "-7"),
        ("drop", "77"),
        ("rate", "77"),
        ("from", "0"),
        ("to", "0.5"),
        ("depth", "0.1"),
        ("apart", "77"),
        ("way", "unsigned"),
        ("limit", "77"),
        ("unit", "c"),
        ("source", "mean"),
        ("line", "by_turns"),
    ]);
    for hints in 1..=3 {
        all.push((format!("hint {hints}"), Answer { hints, ..tries(&[&far]) }));
    }
    all.push(("three misses".to_owned(), tries(&[&far, &far, &far])));
    all.push(("shown".to_owned(), Answer { shown: true, ..Answer::default() }));
    for right in rights(pond, asked) {
        all.push((format!("right {right:?}"), tries(&[&right])));
        all.push(("right after a miss".to_owned(), tries(&[&far, &right])));
        let mut other_unit = right.clone();
        if other_unit.insert("unit".into(), "m".into()).is_some() {
            all.push((format!("unit {other_unit:?}"), tries(&[&other_unit])));
        }
    }
    for wrong in wrongs(pond, asked) {
        all.push((format!("{} {:?}", wrong.idea, wrong.fields), tries(&[&wrong.fields])));
    }
    all.push((
        "cannot tell".to_owned(),
        Answer { tries: vec![Try { cannot_tell: true, ..Try::default() }], ..Answer::default() },
    ));
    all
}

/// Goes through every water; each state is given once per question and text.
fn walk(mut see: impl FnMut(&Pond, &Asked, &str, &QuestionView)) {
    for mut pond in all_ponds() {
        for marked in [false, true] {
            if marked {
                let steep = pond.analysis.thermocline.or(pond.analysis.fastest_warming);
                pond.sheet.marks.thermocline = placed(steep.map_or(1.0, |t| t.value_m + 1.3), Some(0.4));
                pond.sheet.marks.thermocline.depth_text += " m";
            }
            let paper = pond.paper();
            for (index, asked) in paper.asked.iter().enumerate() {
                if marked && !matches!(asked.kind, 7 | 8) {
                    continue;
                }
                for (name, answer) in states(&pond, asked) {
                    pond.sheet.answers = BTreeMap::from([(asked.id.clone(), answer)]);
                    let view = questions::view(&pond.context(), &paper, index).unwrap();
                    see(&pond, asked, &name, &view);
                }
                pond.sheet.answers.clear();
            }
        }
    }
}

/// One way over all of it: each view takes long to make.
#[test]
fn what_is_said_reads_as_language_and_every_line_of_a_sum_fits_its_panel() {
    let languages = ["en", "es"];
    let both = languages.map(Words::new);
    let mut widest = BTreeMap::new();
    let mut faults = Vec::new();
    let mut papers: BTreeMap<(&str, String), (String, BTreeSet<String>)> = BTreeMap::new();
    walk(|pond, asked, state, view| {
        let hints = view.parts.iter().flat_map(|p| p.hints.iter().flat_map(|h| &h.sum));
        for line in hints.chain(view.parts.iter().flat_map(|p| &p.sum)) {
            for language in &both {
                let measure = |said: &Said| language.say(said).chars().count();
                let (gloss, left) = (measure(&line.gloss), measure(&line.left));
                let at = format!("{} {}", pond.name, asked.id);
                assert!(gloss <= GLOSS, "{at}: {} has {gloss}", language.say(&line.gloss));
                assert!(left <= LEFT, "{at}: {} has {left}", language.say(&line.left));
                widest
                    .entry(line.gloss.id.clone())
                    .and_modify(|w: &mut usize| *w = gloss.max(*w))
                    .or_insert(gloss);
            }
        }
        for (language, words) in languages.iter().zip(&both) {
            let page = words.page(view);
            let at = format!("{} {} {state}: {page}", pond.name, asked.id);
            for odd in [
                " m m",
                "\u{a0}m m",
                "m\u{a0}m",
                ".. ",
                "°C °C",
                "$",
                "NaN",
                "inf ",
                "−0.0 ",
                "−0,0 ",
                "loses/",
                "?.",
            ] {
                if page.contains(odd) {
                    faults.push(format!("{odd:?} in {at}"));
                }
            }
            let glued = page.match_indices("°C").any(|(i, _)| {
                page[..i].ends_with(|c: char| {
                    c.is_ascii_digit() || c == ' ' && page[..i - 1].ends_with(|d: char| d.is_ascii_digit())
                })
            });
            if glued {
                faults.push(format!("a number and its unit may part in {at}"));
            }
            let (text, seen) = papers.entry((language, pond.name.clone())).or_default();
            // Of answers alike, one is enough to be read.
            let kind = state.split(['{', '[']).next().unwrap_or(state).trim();
            if !seen.insert(format!("{} {kind}", asked.id)) && kind.len() > 3 {
                continue;
            }
            let fresh: String = page
                .lines()
                .filter(|line| seen.insert(format!("{} {line}", asked.id)))
                .map(|l| format!("{l}\n"))
                .collect();
            if !fresh.is_empty() {
                *text += &format!("-- {} ({state})\n{fresh}\n", asked.id);
            }
        }
    });
    assert!(widest.len() >= 18, "{widest:?}");
    if let Some(folder) = std::env::var_os("LAYERCAST_WRITE_PAPERS") {
        for ((language, pond), (text, _)) in papers {
            let file = format!("{}-{language}.txt", pond.replace([' ', ','], "_"));
            std::fs::write(std::path::Path::new(&folder).join(file), text).unwrap();
        }
    }
    assert!(faults.is_empty(), "{} faults, the first: {}", faults.len(), faults.first().unwrap());
}
