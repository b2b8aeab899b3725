//! A blind guesser: anywhere in the water column, on marks and between them.

use super::super::answers::place;
use super::super::{Dice, Fields, Pond, fields, is_right, two, which_rule};
use super::told;
use layercast_core::State;
use layercast_lesson::questions::Asked;

/// Fewest marks of casts the aim speaks of.
pub const FEWEST: usize = 16;

/// Rules a guesser may name when asked for one: those the page lists.
const RULES: [(u8, &[&str]); 2] = [
    (7, &["steepest_middle", "densest_step", "none"]),
    (9, &["temp_drop", "density_rise", "first_steep_top", "first_steep_middle", "none"]),
];

/// The marks a guesser chooses from.
fn marks(pond: &Pond, asked: &Asked) -> Vec<f64> {
    match asked.kind {
        25 if pond.analysis.state == State::Mixed => told::marks(pond, 25).into_iter().map(|m| m.0).collect(),
        25 => {
            let step_m = asked.depths_m[0];
            let on = |z: &f64| (z / step_m - (z / step_m).round()).abs() < 1e-6;
            pond.rows.iter().map(|r| r.0).filter(on).collect()
        }
        _ => pond.rows.iter().map(|r| r.0).collect(),
    }
}

/// A guess at a question that asks for depths, and the part that is about the place; `None` for other questions.
pub fn guess(dice: &mut Dice, pond: &Pond, asked: &Asked) -> Option<(Fields, usize)> {
    let marks = marks(pond, asked);
    let (first, last) = (marks[0], marks[marks.len() - 1]);
    let mut anywhere = || {
        let on_a_mark = dice.even() < 0.5;
        if on_a_mark { marks[dice.below(marks.len())] } else { first + (last - first) * dice.even() }
    };
    let depth = |z: f64| fields(&[("depth", &two(z))]);
    match asked.kind {
        2 | 7 => Some((depth(anywhere()), 0)),
        8 | 11 => {
            let (a, b) = if asked.kind == 8 {
                (anywhere(), anywhere())
            } else {
                (marks[dice.below(marks.len())], marks[dice.below(marks.len())])
            };
            Some((place(a.min(b), a.max(b)), 0))
        }
        6 | 9 | 25 => {
            let at = dice.below(marks.len() - 1);
            Some((place(marks[at], marks[at + 1]), usize::from(asked.kind == 9)))
        }
        _ => None,
    }
}

/// A guess passes, with any rule named where one is asked for.
pub fn passes(dice: &mut Dice, pond: &Pond, asked: &Asked, guess: &Fields, part: usize) -> bool {
    let verdict = pond.verdict(asked, part, guess);
    if !which_rule(verdict) {
        return is_right(verdict);
    }
    let Some((_, rules)) = RULES.iter().find(|r| r.0 == asked.kind) else { return false };
    let mut named = guess.clone();
    named.insert("rule".into(), rules[dice.below(rules.len())].into());
    let last = pond.judge(asked, &[guess.clone(), named]).into_iter().rfind(|v| v.part == part);
    is_right(last)
}
