//! Fairness of the questions, measured over every check profile and open cast: prints the figures, then, after a line of
//! its own, the part of the guide that is made of them. `cargo xtask fairness` runs it and puts that part into place.
#![allow(
    clippy::unwrap_used,
    clippy::expect_used,
    clippy::panic,
    reason = "a measurement stops at what should not be"
)]

#[path = "../tests/questions_support/mod.rs"]
mod questions_support;

use layercast_lesson::questions;
use questions_support::check_profiles;
use questions_support::fair::casts;
use questions_support::fair::desk::Student;
use questions_support::fair::guess::FEWEST;
use questions_support::fair::measure::{Measured, Share};
use std::collections::{BTreeMap, BTreeSet};

/// Classes that read each check profile, and each open cast.
const CLASSES: (usize, usize) = (8, 1);
/// The guide begins after this line.
const GUIDE: &str = "=== guide ===";
/// Percent of honest answers that should pass, and of ideas that should be named.
const HONEST: f64 = 95.0;
/// A question about marks that were left out: it has four to choose from, whatever the cast.
const THINNED: u8 = 25;

fn main() {
    let found = Measured::of(&casts::all(CLASSES.0, CLASSES.1));
    for (name, list) in [
        ("right by a published rule from the means, and refused", &found.refused),
        ("another rule named for what one leg gives, and refused", &found.refused_by_a_leg),
        ("named falsely", &found.falsely),
        ("a wrong idea taken as right", &found.passed),
        ("an idea that was not named", &found.unnamed),
        ("an honest answer not taken", &found.misses),
    ] {
        println!("{name}: {}", list.len());
        list.iter().for_each(|line| println!("  {line}"));
    }
    println!("{GUIDE}");
    println!("{}", guide(&found));
}

fn said(share: Share) -> String {
    format!("{:.1} % of {}", share.percent(), share.all)
}

/// "97.1 % of 340 (kind 8)", of the worst.
fn worst<'a>(of: impl Iterator<Item = (String, Share)> + 'a) -> String {
    let worst = of.min_by(|a, b| a.1.percent().total_cmp(&b.1.percent())).unwrap();
    format!("{} ({})", said(worst.1), worst.0)
}

/// The same of guesses, where more is worse.
fn worst_guess<'a>(of: impl Iterator<Item = (&'a u8, &'a Share)> + 'a) -> String {
    let (kind, share) = of.max_by(|a, b| a.1.percent().total_cmp(&b.1.percent())).unwrap();
    format!("{} (kind {kind})", said(*share))
}

fn guide(found: &Measured) -> String {
    let states: Vec<String> = found.by_state.iter().map(|(state, n)| format!("{n} {state}")).collect();
    let kinds: BTreeSet<u8> = found.honest.keys().map(|k| k.0).collect();
    let mut cells: BTreeMap<(u8, &str), Share> = BTreeMap::new();
    for ((kind, state, _), share) in &found.honest {
        let cell = cells.entry((*kind, state)).or_default();
        (cell.right, cell.all) = (cell.right + share.right, cell.all + share.all);
    }
    let low: Vec<String> = (cells.iter())
        .filter(|(_, s)| s.percent() < HONEST)
        .map(|((kind, state), s)| format!("kind {kind} on {state} water {}", said(*s)))
        .collect();
    let low = if low.is_empty() { "none".to_owned() } else { low.join(", ") };
    let of_depths = || found.guessed.iter().filter(|(kind, _)| **kind != THINNED);
    let none = Share::default();
    let lines = [
        format!("Measured over {} waters: {}.", found.waters, states.join(", ")),
        String::new(),
        "| figure | aim | measured |".to_owned(),
        "| --- | --- | --- |".to_owned(),
        format!("| honest answers taken at once | 95 % | {} |", said(found.honest_share())),
        format!(
            "| the worst kind | 95 % | {} |",
            worst(kinds.iter().map(|k| (format!("kind {k}"), found.of_kind(*k))))
        ),
        format!(
            "| the worst state of the water | 95 % | {} |",
            worst(found.by_state.keys().map(|s| ((*s).to_owned(), found.in_state(s))))
        ),
        format!(
            "| the worst student | 95 % | {} |",
            worst(Student::ALL.iter().map(|s| (s.0.to_owned(), found.of_student(s.0))))
        ),
        format!("| kinds on a state of water below the aim | none | {low} |"),
        format!("| right by a named published rule from the means, refused | 0 | {} |", found.refused.len()),
        format!("| another rule named for what one leg gives, refused | 0 | {} |", found.refused_by_a_leg.len()),
        format!(
            "| blind guesses taken, casts of {FEWEST} marks or more | 15 % | {} |",
            said(Share::sum(of_depths().map(|g| g.1)))
        ),
        format!(
            "| the worst kind | 15 % | {} |",
            worst_guess(of_depths())
        ),
        format!(
            "| blind, kind {THINNED}, which has only the marks of the thinned cast | | {} |",
            said(*found.guessed.get(&THINNED).unwrap_or(&none))
        ),
        format!(
            "| blind, where the readings cannot tell | | {} |",
            said(Share::sum(found.guessed_untellable.values()))
        ),
        format!("| catalogued ideas named | 95 % | {} |", said(Share::sum(found.ideas.values()))),
        format!(
            "| the worst idea | 95 % | {} |",
            worst(found.ideas.iter().map(|(k, s)| (format!("kind {}, {}", k.0, k.1), *s)))
        ),
        format!(
            "| left out of these: another idea, or a right answer rounded, leads to the same | | {} |",
            found.not_apart.values().sum::<usize>()
        ),
        format!("| ideas named falsely | 0 | {} |", found.falsely.len()),
        format!("| wrong ideas taken as right | 0 | {} |", found.passed.len()),
        String::new(),
        format!(
            "Kept and never judged: kinds {} (22 where no oxygen was read).",
            joined(found.kept.iter())
        ),
        String::new(),
        "Not asked (rule 5, or nothing there to ask about), with the reason and the waters:".to_owned(),
        String::new(),
        dropped(found),
        String::new(),
        "Which ideas can be told, by kind (rows of the legend) and check profile, read once or as two equal legs; `–` is not asked, `·` is asked and tells none:".to_owned(),
        String::new(),
        legend(),
        String::new(),
        table(found),
    ];
    lines.join("\n")
}

fn joined<T: ToString>(of: impl Iterator<Item = T>) -> String {
    of.map(|x| x.to_string()).collect::<Vec<_>>().join(", ")
}

/// A reason in English, by its id.
fn reason(messages: &str, id: &str) -> String {
    let line = messages.lines().find_map(|l| l.strip_prefix(id)?.strip_prefix(" = "));
    line.unwrap_or(id).to_owned()
}

fn dropped(found: &Measured) -> String {
    let messages = questions_support::words::messages("en");
    let check: BTreeSet<String> = check_profiles().into_iter().map(|p| p.0).collect();
    let one = |(id, waters): (&&str, &BTreeSet<String>)| {
        let named: Vec<&str> = waters.iter().filter(|w| check.contains(*w)).map(String::as_str).collect();
        let others = waters.len() - named.len();
        let named = if named.is_empty() { "no check profile".to_owned() } else { named.join(", ") };
        format!("- {} ({named}; {others} other)", reason(&messages, id))
    };
    found.dropped.iter().map(one).collect::<Vec<_>>().join("\n")
}

/// Ideas of a kind, each once, in their order.
fn ideas(kind: u8) -> Vec<&'static str> {
    let mut keys: Vec<&'static str> = Vec::new();
    for idea in questions::ideas(kind) {
        if !keys.contains(&idea.key) {
            keys.push(idea.key);
        }
    }
    keys
}

fn letter(at: usize) -> char {
    char::from(b'a' + u8::try_from(at).unwrap())
}

fn legend() -> String {
    let of = |kind: u8| {
        let list = ideas(kind).into_iter().enumerate().map(|(i, key)| format!("{} {key}", letter(i)));
        format!("- {kind}: {}", list.collect::<Vec<_>>().join(", "))
    };
    let kinds = questions::all_kinds().filter(|k| !ideas(*k).is_empty());
    kinds.map(of).collect::<Vec<_>>().join("\n")
}

fn table(found: &Measured) -> String {
    let kinds: Vec<u8> = questions::all_kinds().filter(|k| !ideas(*k).is_empty()).collect();
    let mut lines = vec![
        format!("| | {} |", kinds.iter().map(u8::to_string).collect::<Vec<_>>().join(" | ")),
        format!("| --- |{}", " --- |".repeat(kinds.len())),
    ];
    for (name, _) in check_profiles() {
        let cell = |kind: &u8| match found.table.get(&(*kind, name.clone())) {
            None => "–".to_owned(),
            Some(told) => {
                let letters: String = (ideas(*kind).iter().enumerate())
                    .filter(|(_, key)| told.contains(*key))
                    .map(|(i, _)| letter(i))
                    .collect();
                if letters.is_empty() { "·".to_owned() } else { letters }
            }
        };
        lines.push(format!("| {name} | {} |", kinds.iter().map(cell).collect::<Vec<_>>().join(" | ")));
    }
    lines.join("\n")
}
