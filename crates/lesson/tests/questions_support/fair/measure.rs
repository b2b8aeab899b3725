//! Everything counted over a list of waters.

use super::super::Dice;
use super::casts::{From, Water};
use super::desk::{Sat, Student, sit};
use super::guess::{FEWEST, guess, passes};
use super::ideas::{Outcome, outcomes};
use layercast_core::{Message, State};
use layercast_lesson::questions::Verdict;
use std::collections::{BTreeMap, BTreeSet};

/// Right, and all.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Share {
    pub right: usize,
    pub all: usize,
}

impl Share {
    pub fn add(&mut self, right: bool) {
        self.right += usize::from(right);
        self.all += 1;
    }

    /// In hundredths; of none: all.
    pub fn percent(self) -> f64 {
        if self.all == 0 { 100.0 } else { 100.0 * self.right as f64 / self.all as f64 }
    }

    pub fn sum<'a>(of: impl Iterator<Item = &'a Share>) -> Share {
        of.fold(Share::default(), |s, o| Share { right: s.right + o.right, all: s.all + o.all })
    }
}

/// An idea of a kind: kind, idea, part.
pub type IdeaKey = (u8, &'static str, usize);

/// What was counted.
#[derive(Default)]
pub struct Measured {
    pub waters: usize,
    pub by_state: BTreeMap<&'static str, usize>,
    /// Honest answers by kind, state and student.
    pub honest: BTreeMap<(u8, &'static str, &'static str), Share>,
    /// Honest answers that were not taken.
    pub misses: Vec<String>,
    /// Right by a published rule from the means, and refused.
    pub refused: Vec<String>,
    /// Another rule named for what one leg gives, and refused.
    pub refused_by_a_leg: Vec<String>,
    /// Questions whose parts are all kept and never judged.
    pub kept: BTreeSet<u8>,
    /// Guesses by kind: casts of enough marks, the layer can be told.
    pub guessed: BTreeMap<u8, Share>,
    /// Where nobody can tell, so that any place is as good.
    pub guessed_untellable: BTreeMap<u8, Share>,
    pub ideas: BTreeMap<IdeaKey, Share>,
    /// Wrong answers to which another idea leads as well.
    pub not_apart: BTreeMap<IdeaKey, usize>,
    /// Ideas named for what was another idea, or an honest answer.
    pub falsely: Vec<String>,
    /// Wrong answers that were taken as right.
    pub passed: Vec<String>,
    pub unnamed: Vec<String>,
    /// Questions left out, by reason, with the waters.
    pub dropped: BTreeMap<&'static str, BTreeSet<String>>,
    /// Ideas told apart by kind and check profile; a kind that is asked without any has an empty entry.
    pub table: BTreeMap<(u8, String), BTreeSet<&'static str>>,
}

/// A state in a word.
pub fn state(water: &Water) -> &'static str {
    let found = &water.pond.analysis;
    match found.state {
        State::Stratified if found.warm_layer_today.is_some_and(|w| w.only) => "near surface only",
        State::Stratified if found.metalimnion.is_some_and(|m| m.cut_off) => "cut off",
        State::Stratified | State::Weak if found.thermocline.is_some_and(|t| !t.tellable) => "cannot be told",
        State::Stratified => "layered",
        State::Weak => "weak",
        State::Mixed => "mixed",
        State::Inverse => "under ice",
        State::Unstable => "unstable",
        State::TooFew => "too few",
    }
}

/// Guesses at each question of a water.
const GUESSES: usize = 20;

impl Measured {
    /// Goes over all of them.
    pub fn of(waters: &[Water]) -> Self {
        let mut found = Self::default();
        let mut dice = Dice::new(7);
        for water in waters {
            found.waters += 1;
            *found.by_state.entry(state(water)).or_default() += 1;
            found.dropped(water);
            found.ideas(water);
            found.students(water);
            found.guesses(&mut dice, water);
        }
        found
    }

    fn dropped(&mut self, water: &Water) {
        for Message { id, .. } in water.pond.paper().about {
            if id.starts_with("ask-dropped") {
                self.dropped.entry(id).or_default().insert(water.name.clone());
            }
        }
    }

    fn ideas(&mut self, water: &Water) {
        for asked in water.pond.paper().asked {
            let cell = (water.from == From::Check).then(|| (asked.kind, water.name.clone()));
            if let Some(cell) = &cell {
                self.table.entry(cell.clone()).or_default();
            }
            for (wrong, outcome) in outcomes(&water.pond, &asked) {
                let key = (asked.kind, wrong.idea, wrong.part);
                let what = || format!("{}: {} {} {:?}", water.pond.name, asked.id, wrong.idea, wrong.fields);
                match outcome {
                    Outcome::NoWrong => continue,
                    Outcome::NotApart => *self.not_apart.entry(key).or_default() += 1,
                    Outcome::Named => {
                        self.ideas.entry(key).or_default().add(true);
                        if let Some(cell) = &cell {
                            self.table.entry(cell.clone()).or_default().insert(wrong.idea);
                        }
                    }
                    Outcome::Unnamed => {
                        self.ideas.entry(key).or_default().add(false);
                        self.unnamed.push(what());
                    }
                    Outcome::Falsely(idea) => {
                        self.ideas.entry(key).or_default().add(false);
                        self.falsely.push(format!("{} named {idea}", what()));
                    }
                    Outcome::Passed => self.passed.push(what()),
                }
            }
        }
    }

    fn students(&mut self, water: &Water) {
        let two_legs = water.pond.rows.iter().any(|r| r.2.is_some());
        for (name, student) in Student::ALL {
            if !two_legs && student.by != super::super::By::Mean {
                continue;
            }
            for sat in sit(&water.pond, student) {
                self.one(water, name, student, &sat);
            }
        }
    }

    fn one(&mut self, water: &Water, name: &'static str, student: Student, sat: &Sat) {
        if sat.verdicts.iter().all(|v| v.verdict == Verdict::Kept) {
            self.kept.insert(sat.asked.kind);
            return;
        }
        self.honest.entry((sat.asked.kind, state(water), name)).or_default().add(sat.right);
        if sat.right {
            return;
        }
        let verdicts: Vec<_> = sat.verdicts.iter().map(|v| (v.part, v.verdict, v.idea)).collect();
        let tried = sat.tries.last().map(|t| &t.fields);
        let what =
            format!("{} [{}] {name}: {} {tried:?} {verdicts:?}", water.pond.name, state(water), sat.asked.id);
        if sat.verdicts.iter().any(|v| v.idea.is_some()) {
            self.falsely.push(format!("honest: {what}"));
        }
        // A published rule puts these places, and these follow from it.
        let by_rule = matches!(sat.asked.kind, 6 | 7 | 8 | 9 | 11 | 12) && !student.rounds;
        if by_rule && student.by == super::super::By::Mean {
            self.refused.push(what.clone());
        } else if sat.by_rule {
            self.refused_by_a_leg.push(what.clone());
        }
        self.misses.push(what);
    }

    fn guesses(&mut self, dice: &mut Dice, water: &Water) {
        if water.pond.rows.len() < FEWEST {
            return;
        }
        let untellable = state(water) == "cannot be told";
        for asked in water.pond.paper().asked {
            for _ in 0..GUESSES {
                let Some((fields, part)) = guess(dice, &water.pond, &asked) else { break };
                let right = passes(dice, &water.pond, &asked, &fields, part);
                let shares = if untellable { &mut self.guessed_untellable } else { &mut self.guessed };
                shares.entry(asked.kind).or_default().add(right);
            }
        }
    }

    /// Honest answers of one kind.
    pub fn of_kind(&self, kind: u8) -> Share {
        Share::sum(self.honest.iter().filter(|(k, _)| k.0 == kind).map(|(_, s)| s))
    }

    /// Honest answers in one state.
    pub fn in_state(&self, state: &str) -> Share {
        Share::sum(self.honest.iter().filter(|(k, _)| k.1 == state).map(|(_, s)| s))
    }

    /// Honest answers of one student.
    pub fn of_student(&self, name: &str) -> Share {
        Share::sum(self.honest.iter().filter(|(k, _)| k.2 == name).map(|(_, s)| s))
    }

    /// All honest answers.
    pub fn honest_share(&self) -> Share {
        Share::sum(self.honest.values())
    }
}
