//! Waters to ask about, and ways to answer: invented waters of the demo, the check profiles, simulated ponds.
#![allow(dead_code, reason = "each test file uses its own part")]

pub mod answers;
pub mod fair;
pub mod pages;
pub mod why;
pub mod words;

use layercast_core::{Analysis, Cast, Leg, Method, Reading, Switch, analyse};
use layercast_lesson::document::{Answer, Lesson, MarkDoc, MarkDocs, Sheet, Try};
use layercast_lesson::questions::{self, Asked, Context, Memo, Paper, PartVerdict, Verdict};
use rand_pcg::Pcg64;
use rand_pcg::rand_core::{Rng, SeedableRng};
use std::cell::OnceCell;
use std::collections::BTreeMap;

/// Depth, going down, coming up. A single series has no second.
pub type Row = (f64, f64, Option<f64>);

/// A water with everything that is computed of it.
pub struct Pond {
    pub name: String,
    pub rows: Vec<Row>,
    pub cast: Cast,
    pub analysis: Analysis,
    pub lesson: Lesson,
    pub sheet: Sheet,
    /// What makes the other group's cast of the lesson another one, where it has one: the value of kind 24.
    pub planted: &'static str,
    /// Depth and mg/L.
    pub oxygen_mg_l: Vec<(f64, f64)>,
    pub memo: Memo,
    /// What is right in kind 26, worked out once.
    pub changes: OnceCell<Vec<&'static str>>,
}

impl Pond {
    /// Two legs where both are there, else one series of `leg`.
    pub fn new(name: &str, rows: Vec<Row>, leg: Leg) -> Self {
        let reading =
            |z: f64, t: f64, leg| Reading { depth_m: z, temp_c: Some(t), leg, switch: Switch::Auto };
        let two = rows.iter().any(|r| r.2.is_some());
        let first = rows.iter().map(|r| reading(r.0, r.1, if two { Leg::Down } else { leg }));
        let second = rows.iter().rev().filter_map(|r| Some(reading(r.0, r.2?, Leg::Up)));
        let cast = Cast { readings: first.chain(second).collect(), digit_c: 0.1, bed_m: None };
        let analysis = analyse(&cast, &Method::default());
        let lesson: Lesson =
            serde_json::from_str(include_str!("../../../../static-data/lessons/first-lesson.json")).unwrap();
        let sheet = Sheet { marks: refused(), ..Sheet::default() };
        Self {
            name: name.to_owned(),
            rows,
            cast,
            analysis,
            lesson,
            sheet,
            planted: "",
            oxygen_mg_l: Vec::new(),
            memo: Memo::default(),
            changes: OnceCell::new(),
        }
    }

    /// The same water with an empty sheet.
    pub fn again(&self) -> Self {
        let sheet = Sheet { marks: refused(), ..Sheet::default() };
        Self {
            name: self.name.clone(),
            rows: self.rows.clone(),
            cast: self.cast.clone(),
            analysis: self.analysis.clone(),
            lesson: self.lesson.clone(),
            sheet,
            planted: self.planted,
            oxygen_mg_l: self.oxygen_mg_l.clone(),
            memo: Memo::default(),
            changes: OnceCell::new(),
        }
    }

    pub fn context(&self) -> Context<'_> {
        Context {
            cast: &self.cast,
            analysis: &self.analysis,
            lesson: &self.lesson,
            sheet: &self.sheet,
            cast_id: "cast",
            oxygen_mg_l: &self.oxygen_mg_l,
            memo: &self.memo,
        }
    }

    pub fn paper(&self) -> Paper {
        questions::paper(&self.context())
    }

    /// The question of a kind, if it is asked.
    pub fn asked(&self, kind: u8) -> Option<Asked> {
        self.paper().asked.into_iter().find(|a| a.kind == kind)
    }

    /// Verdicts of a chain of tries, each a list of fields.
    pub fn judge(&self, asked: &Asked, tries: &[Fields]) -> Vec<PartVerdict> {
        questions::verdicts(&self.context(), asked, &answer(tries))
    }

    /// The last verdict of a part after one try.
    pub fn verdict(&self, asked: &Asked, part: usize, fields: &Fields) -> Option<PartVerdict> {
        self.judge(asked, std::slice::from_ref(fields)).into_iter().rfind(|v| v.part == part)
    }

    /// A whole question right on the first try.
    pub fn right(&self, asked: &Asked, fields: &Fields) -> bool {
        // Parts that open one after another take one press each.
        let presses = if matches!(asked.kind, 22 | 27) { 3 } else { 1 };
        let answer = answer(&vec![fields.clone(); presses]);
        questions::standing(&self.context(), asked, Some(&answer)).right
    }

    // What follows is worked out from the rows alone, not by the code under test.

    /// Mean of the legs at each depth.
    pub fn means(&self) -> Vec<(f64, f64)> {
        self.rows.iter().map(|(z, a, b)| (*z, b.map_or(*a, |b| (a + b) / 2.0))).collect()
    }

    /// One leg, or the mean.
    pub fn series(&self, by: By) -> Vec<(f64, f64)> {
        match by {
            By::Mean => self.means(),
            By::Down => self.rows.iter().map(|r| (r.0, r.1)).collect(),
            By::Up => self.rows.iter().map(|r| (r.0, r.2.unwrap_or(r.1))).collect(),
        }
    }

    pub fn last_m(&self) -> f64 {
        self.rows.last().unwrap().0
    }
}

/// From which readings an answer is taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum By {
    Mean,
    Down,
    Up,
}

impl By {
    pub const ALL: [By; 3] = [By::Mean, By::Down, By::Up];

    pub fn word(self) -> &'static str {
        match self {
            By::Mean => "mean",
            By::Down => "down",
            By::Up => "up",
        }
    }
}

pub type Fields = BTreeMap<String, String>;

pub fn fields(list: &[(&str, &str)]) -> Fields {
    list.iter().map(|(id, text)| ((*id).to_owned(), (*text).to_owned())).collect()
}

/// Marks that are in, all refused: questions that wait for them are open, and 7 and 8 start empty.
pub fn refused() -> MarkDocs {
    let mark = || MarkDoc { refused: true, ..MarkDoc::default() };
    MarkDocs { mixed: mark(), thermocline: mark(), deep: mark() }
}

pub fn placed(depth_m: f64, give_m: Option<f64>) -> MarkDoc {
    MarkDoc {
        depth_text: format!("{depth_m:.1}"),
        depth_m: Some(depth_m),
        give_text: give_m.map(|g| format!("{g:.1}")).unwrap_or_default(),
        give_m,
        refused: false,
    }
}

/// An answer of these tries, without help.
pub fn answer(tries: &[Fields]) -> Answer {
    let tries =
        tries.iter().map(|fields| Try { fields: fields.clone(), cast_id: "cast".into(), ..Try::default() });
    Answer { tries: tries.collect(), ..Answer::default() }
}

pub fn is_right(verdict: Option<PartVerdict>) -> bool {
    verdict.is_some_and(|v| v.verdict.is_right())
}

/// The lesson with every kind.
pub fn whole_lesson() -> Lesson {
    serde_json::from_str(include_str!("../../../../static-data/lessons/whole-lesson.json")).unwrap()
}

/// The check profiles, as one series and as two equal legs, and the invented waters of the demo; each is asked every kind.
pub fn all_ponds() -> Vec<Pond> {
    let mut ponds = Vec::new();
    for (name, rows) in check_profiles() {
        ponds.push(Pond::new(&format!("{name}, read once"), rows.clone(), Leg::Unknown));
        let both = rows.iter().map(|r| (r.0, r.1, Some(r.1))).collect();
        ponds.push(Pond::new(&format!("{name}, two equal legs"), both, Leg::Down));
    }
    ponds.extend(demo_ponds());
    ponds.into_iter().map(|pond| Pond { lesson: whole_lesson(), ..pond }).collect()
}

pub fn check_profiles() -> Vec<(String, Vec<Row>)> {
    let text = include_str!("../../../../tests/reference/check-values/profiles.csv");
    let mut profiles: Vec<(String, Vec<Row>)> = Vec::new();
    for line in text.lines().filter(|l| !l.starts_with('#') && !l.starts_with("profile,")) {
        let cells: Vec<&str> = line.split(',').collect();
        let row = (cells[2].parse().unwrap(), cells[3].parse().unwrap(), None);
        match profiles.last_mut().filter(|p| p.0 == cells[0]) {
            Some((_, rows)) => rows.push(row),
            None => profiles.push((cells[0].to_owned(), vec![row])),
        }
    }
    assert_eq!(profiles.len(), 20);
    profiles
}

pub fn demo_ponds() -> Vec<Pond> {
    let mut waters: Vec<(String, Vec<Row>)> = Vec::new();
    for line in include_str!("waters.csv").lines().filter(|l| !l.starts_with('#') && !l.starts_with("water,"))
    {
        let cells: Vec<&str> = line.split(',').collect();
        let row = (cells[1].parse().unwrap(), cells[2].parse().unwrap(), cells[3].parse().ok());
        match waters.last_mut().filter(|w| w.0 == cells[0]) {
            Some((_, rows)) => rows.push(row),
            None => waters.push((cells[0].to_owned(), vec![row])),
        }
    }
    assert_eq!(waters.len(), 18);
    waters.into_iter().map(|(name, rows)| Pond::new(&name, rows, Leg::Down)).collect()
}

pub fn demo(name: &str) -> Pond {
    demo_ponds().into_iter().find(|p| p.name == name).unwrap()
}

/// Seeded numbers of the simulations.
pub struct Dice(Pcg64);

impl Dice {
    pub fn new(seed: u64) -> Self {
        Self(Pcg64::seed_from_u64(seed))
    }

    /// Uniform in 0..1.
    pub fn even(&mut self) -> f64 {
        (self.0.next_u64() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// Near enough normal: twelve uniform numbers.
    pub fn normal(&mut self) -> f64 {
        (0..12).map(|_| self.even()).sum::<f64>() - 6.0
    }

    pub fn below(&mut self, n: usize) -> usize {
        ((self.even() * n as f64) as usize).min(n - 1)
    }
}

/// A smooth summer lake of 8 m, 22 to 8 °C, two legs every half metre, read to 0.1 °C.
pub fn summer(dice: &mut Dice, width_m: f64, noise_c: f64) -> Pond {
    let middle = 3.0 + 2.0 * dice.even();
    let truth = |z: f64| 8.0 + 14.0 / (1.0 + ((z - middle) / width_m).exp2_like());
    let rows = (0..=16)
        .map(|i| {
            let z = 0.5 * f64::from(i);
            let mut read = || ((truth(z) + noise_c * dice.normal()) * 10.0).round() / 10.0;
            (z, read(), Some(read()))
        })
        .collect();
    Pond::new("summer", rows, Leg::Down)
}

trait Exp2Like {
    fn exp2_like(self) -> f64;
}

impl Exp2Like for f64 {
    /// e to the power, by a series: the lint keeps std's off library and tests alike.
    fn exp2_like(self) -> f64 {
        let x = self.clamp(-60.0, 60.0) / 64.0;
        let mut term = 1.0;
        let mut sum = 1.0;
        for n in 1..30 {
            term *= x / f64::from(n);
            sum += term;
        }
        (0..6).fold(sum, |s, _| s * s)
    }
}

/// One decimal, as people write.
pub fn one(x: f64) -> String {
    format!("{:.1}", (x * 10.0).round() / 10.0)
}

/// Two decimals.
pub fn two(x: f64) -> String {
    format!("{x:.2}")
}

/// A verdict in a word, for messages of failed tests.
pub fn word(verdict: Option<PartVerdict>) -> String {
    verdict.map_or("none".to_owned(), |v| format!("{:?} {:?}", v.verdict, v.idea))
}

pub fn which_rule(verdict: Option<PartVerdict>) -> bool {
    verdict.is_some_and(|v| v.verdict == Verdict::WhichRule)
}
