//! What a student works out on paper: gradients, steepest steps, spans, crossings, layers, and the answers made of them.

use super::super::answers::{at, between, crossing_of, place, run_of, steps};
use super::super::why::degree_metres;
use super::super::{Fields, Pond, answer, fields, one, two};
use super::desk::{Rule, Student, cannot_tell, pressed, wrote};
use super::{choices, told};
use layercast_core::State;
use layercast_core::water::density::density_kg_m3;
use layercast_lesson::document::{Answer, Sheet};
use layercast_lesson::questions::Asked;

/// Mean difference without signs to standard deviation of one reading (methods 3.1).
const MEAN_TO_S: f64 = 0.886;

/// A student with the readings of a water.
pub struct Hand<'a> {
    pub pond: &'a Pond,
    pub student: Student,
    pub series: Vec<(f64, f64)>,
    /// Where to look, as question 6 says, metres.
    look_m: (f64, f64),
    /// Colder on top: the questions speak of warming.
    warms: bool,
}

/// A step: top, bottom, °C (or kg per m³) per metre.
type Step = (f64, f64, f64);

impl<'a> Hand<'a> {
    pub fn new(pond: &'a Pond, student: Student) -> Self {
        let mut series = pond.series(student.by);
        if student.rounds {
            series.iter_mut().for_each(|p| p.1 = (p.1 * 10.0).round() / 10.0);
        }
        let said = |sentence: &str, name: &str| told::number(pond, 6, sentence, name);
        let from = said("ask-6-look-below", "depth").or_else(|| said("ask-6-look-between", "from"));
        let to = said("ask-6-look-between", "to");
        let look_m = (from.unwrap_or(f64::NEG_INFINITY), to.unwrap_or(f64::INFINITY));
        Self { pond, student, series, look_m, warms: pond.analysis.state == State::Inverse }
    }

    /// A number as it is written.
    fn write(&self, x: f64) -> String {
        if self.student.rounds { one(x) } else { format!("{x:.3}") }
    }

    fn depth(&self, x: f64) -> String {
        if self.student.rounds { one(x) } else { two(x) }
    }

    fn at(&self, z: f64) -> f64 {
        at(&self.series, z).unwrap_or_else(|| at(&self.pond.means(), z).unwrap())
    }

    fn source(&self) -> &'static str {
        self.student.by.word()
    }

    fn turn(&self) -> f64 {
        if self.warms { -1.0 } else { 1.0 }
    }

    fn last_m(&self) -> f64 {
        self.pond.last_m()
    }

    /// °C lost per metre (gained under ice) from mark to mark.
    fn rates(&self) -> Vec<Step> {
        steps(&self.series).into_iter().map(|s| (s.0, s.1, self.turn() * s.2)).collect()
    }

    fn densing(&self) -> Vec<Step> {
        let rho: Vec<(f64, f64)> = self.series.iter().map(|p| (p.0, -density_kg_m3(p.1))).collect();
        steps(&rho)
    }

    /// A step where the page says to look; depths are said to a hundredth.
    fn looks_at(&self, step: &Step) -> bool {
        step.0 >= self.look_m.0 - 0.006 && step.1 <= self.look_m.1 + 0.006
    }

    fn most(&self, of: &[Step]) -> Step {
        let looked_at = || of.iter().filter(|s| self.looks_at(s));
        let best = looked_at().map(|s| s.2).fold(f64::NEG_INFINITY, f64::max);
        *looked_at().find(|s| s.2 >= best - 1e-9).unwrap_or(&of[0])
    }

    /// The steepest step by the own numbers.
    fn steepest(&self) -> Step {
        self.most(&self.rates())
    }

    /// The thermocline by the own rule, metres.
    fn thermocline(&self) -> f64 {
        let step = if self.student.rule == Rule::Density && !self.warms {
            self.most(&self.densing())
        } else {
            self.steepest()
        };
        f64::midpoint(step.0, step.1)
    }

    /// Standard deviation of one reading as the span goes by (methods 5.8), by the pairs.
    fn s(&self) -> f64 {
        let d: Vec<f64> = self.pond.rows.iter().filter_map(|r| Some(r.1 - r.2?)).collect();
        let n = d.len() as f64;
        let s = (d.iter().map(|d| d * d).sum::<f64>() / (2.0 * n)).sqrt();
        let least = self.pond.cast.digit_c / 12.0_f64.sqrt();
        if d.is_empty() { 0.1 } else { s.max(least).max(if d.len() < 5 { 0.1 } else { 0.0 }) }
    }

    /// Every step that cannot be told from one (methods 5.8): from the top of the first to the bottom of the last.
    fn span(&self, about: Step, of: &[Step]) -> (f64, f64) {
        let legs = if self.pond.rows.iter().any(|r| r.2.is_some()) { 2.0 } else { 1.0 };
        let sd = self.s() / f64::sqrt(legs);
        let u = |s: &Step| 2.0_f64.sqrt() * sd / (s.1 - s.0);
        let apart = |s: &Step| 2.0 * ((u(&about).powi(2) + u(s).powi(2)) / 2.0).sqrt();
        let near: Vec<&Step> = (of.iter())
            .filter(|s| self.looks_at(s) && s.2 > 0.0 && s.2 >= about.2 - apart(s) - 1e-9)
            .collect();
        (near.first().map_or(about.0, |s| s.0), near.last().map_or(about.1, |s| s.1))
    }

    /// Depths between which the thermocline surely lies: the span; by another rule that puts it elsewhere its own step.
    fn sure(&self) -> (f64, f64) {
        let (top, bottom) = self.span(self.steepest(), &self.rates());
        let z = self.thermocline();
        let own = || steps(&self.series).into_iter().find(|s| s.0 < z && z < s.1);
        if z < top || z > bottom { own().map_or((top, bottom), |s| (s.0, s.1)) } else { (top, bottom) }
    }

    /// Nobody could tell: the span is over half of the cast.
    fn cannot_tell(&self) -> bool {
        let (top, bottom) = self.span(self.steepest(), &self.rates());
        self.student.rule == Rule::Cautious && bottom - top > (self.last_m() - self.series[0].0) / 2.0 + 1e-9
    }

    /// Temperature looked for, pair of marks and depth of the mixed layer's end, by the own rule.
    fn mixed_end(&self) -> (f64, (f64, f64), f64) {
        let reference_m = 0.5_f64.max(self.series[0].0);
        let reference = between(&self.series, reference_m).unwrap();
        let target = reference - 1.0;
        let by_class = || self.crossing(reference_m, &|t| -t, -target);
        let first_steep = || steps(&self.series).into_iter().find(|s| s.2 >= 1.0 - 1e-9);
        let found = match self.student.rule {
            Rule::Density => self.crossing(reference_m, &density_kg_m3, density_kg_m3(reference) + 0.1),
            Rule::FirstSteepTop => first_steep().map(|s| ((s.0, s.1), s.0)),
            Rule::FirstSteepMiddle => first_steep().map(|s| ((s.0, s.1), f64::midpoint(s.0, s.1))),
            Rule::Class | Rule::Cautious => None,
        };
        let (marks, depth) = found.or_else(by_class).unwrap_or(((0.0, self.last_m()), self.last_m()));
        (target, marks, depth)
    }

    /// The first two marks below the reference between which a value is reached, and where on the straight way.
    fn crossing(
        &self,
        reference_m: f64,
        value: &dyn Fn(f64) -> f64,
        limit: f64,
    ) -> Option<((f64, f64), f64)> {
        let reached = |w: &&[(f64, f64)]| w[1].0 > reference_m + 1e-9 && value(w[1].1) >= limit - 1e-9;
        let w = self.series.windows(2).find(reached)?;
        let (a, b) = (value(w[0].1), value(w[1].1));
        let f = if b > a { ((limit - a) / (b - a)).clamp(0.0, 1.0) } else { 0.0 };
        Some(((w[0].0, w[1].0), w[0].0 + f * (w[1].0 - w[0].0)))
    }

    /// The run of at least 1 °C per metre with the own steepest step in it.
    fn steep_run(&self) -> Option<(f64, f64)> {
        let (a, b, rate) = self.steepest();
        if rate < 1.0 - 1e-9 { None } else { run_of(&self.rates(), (a, b)) }
    }

    /// From the differences between the legs: how far off one reading typically is.
    fn typical(&self) -> f64 {
        let d: Vec<f64> = self.pond.rows.iter().filter_map(|r| Some(r.1 - r.2?)).collect();
        let n = d.len() as f64;
        if self.student.rule == Rule::Density {
            return (d.iter().map(|d| d * d).sum::<f64>() / (2.0 * n)).sqrt();
        }
        MEAN_TO_S * d.iter().map(|d| d.abs()).sum::<f64>() / n
    }

    /// The rule named where one is asked for.
    pub fn rule_named(&self, kind: u8) -> &'static str {
        match (self.student.rule, kind) {
            (Rule::Density, 7) => "densest_step",
            (_, 7) => "steepest_middle",
            (Rule::Density, _) => "density_rise",
            (Rule::FirstSteepTop, _) => "first_steep_top",
            (Rule::FirstSteepMiddle, _) => "first_steep_middle",
            _ => "temp_drop",
        }
    }

    /// The answer to a question, with what was answered before.
    pub fn answer(&self, sheet: &Sheet, asked: &Asked) -> Answer {
        if matches!(asked.kind, 6..=8) && self.cannot_tell() {
            return cannot_tell();
        }
        // Parts that open one after another take a press each.
        match asked.kind {
            22 | 27 => pressed(&self.fields(sheet, asked), 4),
            _ => answer(&[self.fields(sheet, asked)]),
        }
    }

    fn fields(&self, sheet: &Sheet, asked: &Asked) -> Fields {
        let z = &asked.depths_m;
        match asked.kind {
            1 => fields(&[("temp", &one(self.at(z[0]))), ("unit", "c")]),
            2 => {
                let (upper, lower) = crossing_of(&self.series, z[0]);
                let depth = upper.0 + (lower.0 - upper.0) * (upper.1 - z[0]) / (upper.1 - lower.1);
                fields(&[("depth", &self.depth(depth))])
            }
            3 => {
                let change = |i: usize| (self.at(z[2 * i]) - self.at(z[2 * i + 1])).abs();
                let most = (0..3).reduce(|a, b| if change(b) > change(a) { b } else { a }).unwrap();
                fields(&[("stretch", ["a", "b", "c"][most])])
            }
            4 => {
                let change = self.at(z[0]) - self.at(z[1]);
                fields(&[("drop", &self.write(change)), ("unit", "c"), ("source", self.source())])
            }
            5 => {
                let rate = (self.at(z[0]) - self.at(z[1])) / (z[1] - z[0]);
                fields(&[("rate", &self.write(rate)), ("unit", "c_per_m"), ("source", self.source())])
            }
            29 => {
                let rate = |i: usize| (self.at(z[2 * i]) - self.at(z[2 * i + 1])) / (z[2 * i + 1] - z[2 * i]);
                fields(&[
                    ("rate_a", &self.write(rate(0))),
                    ("rate_b", &self.write(rate(1))),
                    ("rate_c", &self.write(rate(2))),
                ])
            }
            6 => {
                let (a, b, rate) = self.steepest();
                let mut all = place(a, b);
                all.insert("rate".into(), self.write(rate));
                all
            }
            7 => fields(&[("depth", &two(self.thermocline()))]),
            8 => {
                let (from, to) = self.sure();
                place(from, to)
            }
            9 => {
                let (target, marks, depth) = self.mixed_end();
                let mut all = place(marks.0, marks.1);
                all.insert("temp".into(), self.write(target));
                all.insert("depth".into(), self.depth(depth));
                all
            }
            11 => match self.steep_run() {
                Some((top, bottom)) if bottom >= self.last_m() - 1e-9 => {
                    fields(&[("from", &two(top)), ("layer", "on")])
                }
                Some((top, bottom)) => place(top, bottom),
                None => fields(&[("layer", "none")]),
            },
            12 => self.layers(),
            13 => {
                let way = if self.student.rule == Rule::Density { "squares" } else { "unsigned" };
                fields(&[("apart", &two(self.typical())), ("unit", "c"), ("way", way)])
            }
            16 if self.student.rounds => fields(&[("rate", &two(1.8 * 0.3)), ("apart", "3.6")]),
            16 => fields(&[("rate", &format!("{:.3}", 1.8 * 0.3048)), ("apart", "3.6")]),
            19 => {
                let mj = if self.student.rounds { 4.2 } else { 4.18 };
                let degrees = degree_metres(&self.series);
                let heat = if self.student.rounds { degrees.round() * mj } else { degrees * mj };
                let temp = self.series.last().unwrap().1;
                fields(&[("temp", &self.write(temp)), ("heat", &one(heat)), ("days", &one(heat / 8.64))])
            }
            25 => self.every(z[0]),
            101 => {
                let of = |t: &[f64]| t.iter().copied().fold(f64::NEG_INFINITY, f64::max);
                let temps: Vec<f64> = self.series.iter().map(|p| p.1).collect();
                let cold: Vec<f64> = temps.iter().map(|t| -t).collect();
                fields(&[("apart", &self.write(of(&temps) + of(&cold))), ("unit", "c")])
            }
            102 => fields(&[("limit", &two(2.8 * self.one_reading(sheet))), ("unit", "c")]),
            103 => {
                let told = told::number(self.pond, 103, "ask-103-note-given", "limit");
                let limit = told.or_else(|| wrote(sheet, "102", "limit")).unwrap();
                fields(&[("line", choices::any_step(&self.pond.means(), limit))])
            }
            106 => fields(&[("time", if self.student.rounds { "7" } else { "6.97" }), ("unit", "h")]),
            _ => choices::choice(self, asked),
        }
    }

    /// How far off a reading typically is: the own answer to 13, else what the page says.
    fn one_reading(&self, sheet: &Sheet) -> f64 {
        let said = |sentence: &str| told::number(self.pond, 102, sentence, "s");
        (wrote(sheet, "13", "apart").filter(|s| *s > 0.0))
            .or_else(|| said("ask-102-lead-once"))
            .or_else(|| said("ask-102-lead-given"))
            .unwrap_or_else(|| self.typical())
    }

    /// Thicknesses and shares by the own ends.
    fn layers(&self) -> Fields {
        let (_, _, end) = self.mixed_end();
        let tenth = |x: f64| if self.student.rounds { (10.0 * x).round() / 10.0 } else { x };
        let end = tenth(end);
        let (_, bottom) = self.steep_run().unwrap_or((end, self.last_m()));
        let steep = tenth(bottom - end);
        if bottom >= self.last_m() - 1e-9 {
            return fields(&[("mixed", &two(end)), ("steep", &two(steep)), ("way", "at_least")]);
        }
        let deep = tenth(self.last_m() - bottom);
        let share = |x: f64| format!("{:.0}", 100.0 * x / self.last_m());
        fields(&[
            ("mixed", &two(end)),
            ("steep", &two(steep)),
            ("deep", &two(deep)),
            ("share_mixed", &share(end)),
            ("share_steep", &share(steep)),
            ("share_deep", &share(deep)),
        ])
    }

    /// The steepest of the marks that are left, and half of the step.
    fn every(&self, step_m: f64) -> Fields {
        let kept: Vec<(f64, f64)> = if self.pond.analysis.state == State::Mixed {
            told::marks(self.pond, 25)
        } else {
            let on = |z: f64| (z / step_m - (z / step_m).round()).abs() < 1e-6;
            self.series.iter().copied().filter(|p| on(p.0)).collect()
        };
        let turn = if self.pond.analysis.fastest_warming.is_some() { -1.0 } else { 1.0 };
        let rate = |w: &&[(f64, f64)]| turn * (w[0].1 - w[1].1) / (w[1].0 - w[0].0);
        let best = kept.windows(2).max_by(|a, b| rate(a).total_cmp(&rate(b))).unwrap();
        let mut both = place(best[0].0, best[1].0);
        both.insert("give".into(), two(step_m / 2.0));
        both
    }
}
