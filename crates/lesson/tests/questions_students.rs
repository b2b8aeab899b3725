//! Simulated students on simulated summer lakes: honest ones pass, blind guessers do not. Seeded; the shares are printed.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

use crate::questions_support;

use layercast_core::water::density::density_kg_m3;
use layercast_lesson::questions::Asked;
use questions_support::answers::{crossing_of, run_of};
use questions_support::{By, Dice, Fields, Pond, fields, one, summer, two, which_rule};
use std::collections::BTreeMap;

/// How a student works.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
enum Student {
    /// By the mean, in full.
    Mean,
    /// Only going down.
    Down,
    /// Only coming up.
    Up,
    /// By the mean, every number rounded to one decimal before it is used.
    Rounding,
    /// Kind 7 where density changes fastest, named; kind 9 by 0.1 kg per m³, named.
    Density,
    /// Kind 9 by the first step of at least 1 °C per metre, named.
    FirstSteep,
}

const STUDENTS: [Student; 6] =
    [Student::Mean, Student::Down, Student::Up, Student::Rounding, Student::Density, Student::FirstSteep];

struct Desk<'a> {
    pond: &'a Pond,
    student: Student,
    series: Vec<(f64, f64)>,
}

impl<'a> Desk<'a> {
    fn new(pond: &'a Pond, student: Student) -> Self {
        let by = match student {
            Student::Down => By::Down,
            Student::Up => By::Up,
            _ => By::Mean,
        };
        let mut series = pond.series(by);
        if student == Student::Rounding {
            series.iter_mut().for_each(|p| p.1 = (p.1 * 10.0).round() / 10.0);
        }
        Self { pond, student, series }
    }

    fn source(&self) -> &'static str {
        match self.student {
            Student::Down => "down",
            Student::Up => "up",
            _ => "mean",
        }
    }

    fn write(&self, x: f64) -> String {
        if self.student == Student::Rounding { one(x) } else { two(x) }
    }

    fn at(&self, z: f64) -> f64 {
        self.series.iter().find(|p| (p.0 - z).abs() < 1e-9).unwrap().1
    }

    /// Steps with what they lose per metre; by density for the student who goes by it.
    fn steps(&self, density: bool) -> Vec<(f64, f64, f64)> {
        let value = |t: f64| if density { -density_kg_m3(t) } else { t };
        self.series
            .windows(2)
            .map(|w| (w[0].0, w[1].0, (value(w[0].1) - value(w[1].1)) / (w[1].0 - w[0].0)))
            .collect()
    }

    /// The steepest step by the student's own numbers.
    fn steepest(&self, density: bool) -> (f64, f64, f64) {
        let steps = self.steps(density);
        let best = steps.iter().map(|s| s.2).fold(f64::NEG_INFINITY, f64::max);
        *steps.iter().find(|s| s.2 >= best - 1e-9).unwrap()
    }

    /// Where 1.0 °C below the mixed-layer reference is met, by the student's own numbers or by another rule.
    fn mixed_layer(&self) -> (f64, (f64, f64), f64) {
        let reference = self.at(0.5);
        let target = reference - 1.0;
        let crossing = |value: &dyn Fn(f64) -> f64, limit: f64| {
            let w = self.series.windows(2).find(|w| w[1].0 > 0.5 && value(w[1].1) >= limit - 1e-9).unwrap();
            let f = (limit - value(w[0].1)) / (value(w[1].1) - value(w[0].1));
            ((w[0].0, w[1].0), w[0].0 + f * (w[1].0 - w[0].0))
        };
        match self.student {
            Student::Density => {
                let (marks, depth) = crossing(&density_kg_m3, density_kg_m3(reference) + 0.1);
                (target, marks, depth)
            }
            Student::FirstSteep => {
                let s = *self.steps(false).iter().find(|s| s.2 >= 1.0 - 1e-9).unwrap();
                (target, (s.0, s.1), s.0)
            }
            _ => {
                let (marks, depth) = crossing(&|t| -t, -target);
                (target, marks, depth)
            }
        }
    }

    /// The rule this student names where one is asked for.
    fn rule(&self, kind: u8) -> &'static str {
        match (self.student, kind) {
            (Student::Density, 7) => "densest_step",
            (Student::Density, _) => "density_rise",
            (Student::FirstSteep, 9) => "first_steep_top",
            (_, 7) => "steepest_middle",
            _ => "temp_drop",
        }
    }

    fn answer(&self, asked: &Asked) -> Fields {
        let z = &asked.depths_m;
        match asked.kind {
            1 => fields(&[("temp", &one(self.at(z[0]))), ("unit", "c")]),
            2 => {
                let (upper, lower) = crossing_of(&self.series, z[0]);
                let depth = upper.0 + (lower.0 - upper.0) * (upper.1 - z[0]) / (upper.1 - lower.1);
                fields(&[("depth", &self.write(depth))])
            }
            3 => {
                let change = |i: usize| (self.at(z[2 * i]) - self.at(z[2 * i + 1])).abs();
                let most = (0..3).reduce(|a, b| if change(b) > change(a) { b } else { a }).unwrap();
                fields(&[("stretch", ["a", "b", "c"][most])])
            }
            11 => {
                let (a, b, _) = self.steepest(false);
                match run_of(&self.steps(false), (a, b)) {
                    Some((top, bottom)) if bottom >= self.pond.last_m() - 1e-9 => {
                        fields(&[("from", &one(top)), ("layer", "on")])
                    }
                    Some((top, bottom)) => fields(&[("from", &one(top)), ("to", &one(bottom))]),
                    None => fields(&[("layer", "none")]),
                }
            }
            4 => {
                let change = self.at(z[0]) - self.at(z[1]);
                fields(&[("drop", &self.write(change)), ("unit", "c"), ("source", self.source())])
            }
            5 => {
                let rate = (self.at(z[0]) - self.at(z[1])) / (z[1] - z[0]);
                fields(&[("rate", &self.write(rate)), ("unit", "c_per_m"), ("source", self.source())])
            }
            6 => {
                let (a, b, rate) = self.steepest(false);
                fields(&[("from", &one(a)), ("to", &one(b)), ("rate", &self.write(rate))])
            }
            7 => {
                let (a, b, _) = self.steepest(self.student == Student::Density);
                fields(&[("depth", &two(f64::midpoint(a, b)))])
            }
            8 => {
                // Every step whose bar is within 2s/h of the longest, s by the pairs (the student has it from kind 13).
                let s = self.pond.analysis.pairs.s_used_c;
                let (_, _, best) = self.steepest(false);
                let near: Vec<_> =
                    self.steps(false).into_iter().filter(|t| t.2 >= best - 2.0 * s / 0.5 - 1e-9).collect();
                fields(&[("from", &two(near.first().unwrap().0)), ("to", &two(near.last().unwrap().1))])
            }
            9 => {
                let (target, marks, depth) = self.mixed_layer();
                fields(&[
                    ("temp", &self.write(target)),
                    ("from", &one(marks.0)),
                    ("to", &one(marks.1)),
                    ("depth", &two(depth)),
                ])
            }
            13 => {
                let d: Vec<f64> = self.pond.rows.iter().filter_map(|r| Some((r.1 - r.2?).abs())).collect();
                let mean = d.iter().sum::<f64>() / d.len() as f64;
                fields(&[("apart", &self.write(0.886 * mean)), ("unit", "c"), ("way", "unsigned")])
            }
            kind => panic!("kind {kind}"),
        }
    }

    /// Right on the first try, naming the rule if one is asked for.
    fn passes(&self, asked: &Asked) -> bool {
        let first = self.answer(asked);
        let verdicts = self.pond.judge(asked, std::slice::from_ref(&first));
        if verdicts.iter().any(|v| which_rule(Some(*v))) {
            let mut named = first.clone();
            named.insert("rule".into(), self.rule(asked.kind).into());
            let answer = questions_support::answer(&[first, named]);
            return layercast_lesson::questions::standing(&self.pond.context(), asked, Some(&answer)).right;
        }
        self.pond.right(asked, &first)
    }
}

#[test]
fn honest_students_pass() {
    let mut dice = Dice::new(20_260_101);
    let mut by_student: BTreeMap<Student, (f64, f64)> = BTreeMap::new();
    let mut by_kind: BTreeMap<(Student, u8), (f64, f64)> = BTreeMap::new();
    for width_m in [0.3, 0.5, 0.8, 1.2] {
        for noise_c in [0.05, 0.1] {
            for _ in 0..40 {
                let mut pond = summer(&mut dice, width_m, noise_c);
                pond.lesson.kinds.extend([2, 3, 11]);
                let paper = pond.paper();
                for student in STUDENTS {
                    let desk = Desk::new(&pond, student);
                    for asked in &paper.asked {
                        let pass = f64::from(u8::from(desk.passes(asked)));
                        for count in [
                            by_student.entry(student).or_default(),
                            by_kind.entry((student, asked.kind)).or_default(),
                        ] {
                            count.0 += pass;
                            count.1 += 1.0;
                        }
                    }
                }
            }
        }
    }
    for ((student, kind), (pass, all)) in &by_kind {
        println!("{student:?} kind {kind}: {:.1} % of {all}", 100.0 * pass / all);
    }
    for (student, (pass, all)) in &by_student {
        println!("{student:?}: {:.1} % of {all}", 100.0 * pass / all);
        assert!(pass / all >= 0.95, "{student:?} {}", pass / all);
    }
}

#[test]
fn a_blind_guesser_does_not() {
    let mut dice = Dice::new(7);
    let mut shares: BTreeMap<u8, (f64, f64)> = BTreeMap::new();
    for width_m in [0.3, 0.5, 0.8, 1.2] {
        for _ in 0..60 {
            let pond = summer(&mut dice, width_m, 0.1);
            for asked in pond.paper().asked {
                for _ in 0..5 {
                    let k = dice.below(16);
                    let step = (0.5 * k as f64, 0.5 * (k + 1) as f64);
                    let guess = match asked.kind {
                        6 | 9 => fields(&[("from", &one(step.0)), ("to", &one(step.1))]),
                        7 => fields(&[("depth", &one(8.0 * dice.even()))]),
                        8 => {
                            let (a, b) = (8.0 * dice.even(), 8.0 * dice.even());
                            fields(&[("from", &one(a.min(b))), ("to", &one(a.max(b)))])
                        }
                        _ => continue,
                    };
                    // The place alone: part 0 of kind 6, part 1 of kind 9.
                    let part = usize::from(asked.kind == 9);
                    let right = questions_support::is_right(pond.verdict(&asked, part, &guess));
                    let count = shares.entry(asked.kind).or_default();
                    count.0 += f64::from(u8::from(right));
                    count.1 += 1.0;
                }
            }
        }
    }
    for (kind, (right, all)) in &shares {
        println!("blind, kind {kind}: {:.1} % of {all}", 100.0 * right / all);
        assert!(right / all <= 0.15, "kind {kind}: {}", right / all);
    }
    assert_eq!(shares.len(), 4);
}
