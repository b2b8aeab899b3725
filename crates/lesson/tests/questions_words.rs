//! Every message of the questions renders in both languages without a gap; one water's questions, to be read by a person.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

use crate::questions_support;

use layercast_lesson::document::{Answer, Try};
use layercast_lesson::questions;
use questions_support::words::Words;
use questions_support::{Pond, demo, fields};
use std::collections::BTreeMap;

/// Every question of a water: new, after a miss, with the worked hint, shown.
fn walk(pond: &mut Pond, words: &Words) -> String {
    let paper = pond.paper();
    let mut text = String::new();
    for (index, asked) in paper.asked.iter().enumerate() {
        let miss = Try {
            fields: fields(&[
                ("temp", "9"),
                ("unit", "c"),
                ("source", "mean"),
                ("drop", "1.2"),
                ("rate", "9"),
                ("from", "6"),
                ("to", "6.5"),
                ("depth", "6"),
                ("apart", "9"),
                ("way", "unsigned"),
                ("limit", "9"),
            ]),
            ..Try::default()
        };
        let states = [
            Answer::default(),
            Answer { tries: vec![miss.clone()], hints: 2, ..Answer::default() },
            Answer { tries: vec![miss.clone()], hints: 3, ..Answer::default() },
            Answer { tries: vec![miss], shown: true, ..Answer::default() },
        ];
        for answer in states {
            pond.sheet.answers = BTreeMap::from([(asked.id.clone(), answer)]);
            text += &words.page(&questions::view(&pond.context(), &paper, index).unwrap());
            text += "\n";
        }
    }
    text
}

#[test]
fn the_questions_of_a_layered_water_read_well() {
    insta::assert_snapshot!("layered_en", walk(&mut demo("group_c"), &Words::new("en")));
    insta::assert_snapshot!("layered_es", walk(&mut demo("group_c"), &Words::new("es")));
}

#[test]
fn the_questions_of_a_mixed_water_read_well() {
    insta::assert_snapshot!("mixed_en", walk(&mut demo("mixed"), &Words::new("en")));
    insta::assert_snapshot!("mixed_es", walk(&mut demo("mixed"), &Words::new("es")));
}

#[test]
fn the_questions_of_every_other_water_render() {
    for name in
        ["inverse", "unstable", "surface", "two", "cannot", "weak", "one", "deep", "shallow", "group_d"]
    {
        for language in ["en", "es"] {
            let text = walk(&mut demo(name), &Words::new(language));
            assert!(text.len() > 1000 && !text.contains('$'), "{name} {language}");
        }
    }
}
