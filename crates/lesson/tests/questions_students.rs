//! Simulated students on check profiles, invented waters and simulated summer lakes: honest ones pass, blind guessers do
//! not, wrong ideas are named and none is named falsely. Seeded; the whole measurement is `cargo xtask fairness`.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

use crate::questions_support;

use questions_support::fair::casts::{From, Water, quick};
use questions_support::fair::desk::Student;
use questions_support::fair::measure::{Measured, Share};
use questions_support::{Dice, summer, whole_lesson};
use std::collections::BTreeSet;

/// Percent of honest answers that pass.
const HONEST: f64 = 95.0;
/// Percent of blind guesses that pass.
const BLIND: f64 = 15.0;
/// Fewer answers than this say nothing about a share.
const ENOUGH: usize = 20;

#[track_caller]
fn at_least(what: &str, share: Share) {
    println!("{what}: {:.1} % of {}", share.percent(), share.all);
    assert!(
        share.all < ENOUGH || share.percent() >= HONEST,
        "{what}: {:.1} % of {}",
        share.percent(),
        share.all
    );
}

fn honest(found: &Measured) {
    at_least("all", found.honest_share());
    for (name, _) in Student::ALL {
        at_least(name, found.of_student(name));
    }
    let kinds: BTreeSet<u8> = found.honest.keys().map(|k| k.0).collect();
    for kind in kinds {
        at_least(&format!("kind {kind}"), found.of_kind(kind));
    }
    let states: BTreeSet<&str> = found.honest.keys().map(|k| k.1).collect();
    for state in states {
        at_least(state, found.in_state(state));
    }
}

fn blind(found: &Measured) {
    let counted = || found.guessed.iter().filter(|(kind, _)| **kind != 25);
    assert!(counted().count() >= 5);
    for (kind, share) in counted() {
        println!("blind, kind {kind}: {:.1} % of {}", share.percent(), share.all);
    }
    let all = Share::sum(counted().map(|(_, share)| share));
    assert!(all.percent() <= BLIND, "{:.1} % of {}", all.percent(), all.all);
}

#[test]
fn on_check_profiles_and_invented_waters_all_is_fair() {
    let found = Measured::of(&quick());
    honest(&found);
    blind(&found);
    assert_eq!(found.refused, Vec::<String>::new(), "right by a published rule");
    assert_eq!(found.falsely, Vec::<String>::new(), "named falsely");
    assert_eq!(found.passed, Vec::<String>::new(), "a wrong idea taken as right");
    assert!(found.ideas.len() > 60, "{}", found.ideas.len());
    for ((kind, idea, part), share) in &found.ideas {
        at_least(&format!("kind {kind}, part {part}, {idea}"), *share);
    }
    // Every state there is was met.
    for state in [
        "layered",
        "mixed",
        "cannot be told",
        "under ice",
        "unstable",
        "too few",
        "near surface only",
        "cut off",
    ] {
        assert!(found.by_state.contains_key(state), "{state}");
    }
}

#[test]
fn on_simulated_summer_lakes_all_is_fair() {
    let mut dice = Dice::new(20_260_101);
    let mut waters = Vec::new();
    for width_m in [0.3, 0.5, 0.8, 1.2] {
        for noise_c in [0.05, 0.1] {
            for _ in 0..3 {
                let mut pond = summer(&mut dice, width_m, noise_c);
                pond.lesson = whole_lesson();
                // Trials take long, and the other test has them.
                pond.lesson.kinds.retain(|kind| *kind != 26);
                waters.push(Water { name: "summer".to_owned(), from: From::CheckRead, pond });
            }
        }
    }
    let found = Measured::of(&waters);
    honest(&found);
    blind(&found);
    assert_eq!(found.refused, Vec::<String>::new(), "right by a published rule");
    assert_eq!(found.passed, Vec::<String>::new(), "a wrong idea taken as right");
}
