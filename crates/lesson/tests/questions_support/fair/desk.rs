//! A student at the desk: works through a paper in order, each question with what the ones before came to.

use super::super::{By, Fields, Pond, answer, fields, which_rule};
use super::work::Hand;
use layercast_lesson::document::{Answer, Sheet, Try};
use layercast_lesson::questions::{self, Asked, PartVerdict};

/// By which published rules a student finds depths.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Rule {
    /// The class's: the middle of the steepest step; 1.0 °C colder than at 0.5 m.
    Class,
    /// Where density changes fastest; 0.1 kg per m³ heavier than at 0.5 m.
    Density,
    /// Top of the first step of at least 1 °C per metre.
    FirstSteepTop,
    /// Its middle.
    FirstSteepMiddle,
    /// The class's, but "I can't tell" where the own span is over half of the cast or one reading has no second.
    Cautious,
}

/// How a student works.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub struct Student {
    /// From which readings.
    pub by: By,
    /// By which rules.
    pub rule: Rule,
    /// Every number rounded to one decimal before it is used, and by the sums that shorten: 0.3 m in a foot, 4.2 MJ.
    pub rounds: bool,
}

impl Student {
    pub const fn new(by: By, rule: Rule) -> Self {
        Self { by, rule, rounds: false }
    }

    /// Those of the measurement, with their names.
    pub const ALL: [(&'static str, Student); 14] = [
        ("mean", Self::new(By::Mean, Rule::Class)),
        ("down leg", Self::new(By::Down, Rule::Class)),
        ("up leg", Self::new(By::Up, Rule::Class)),
        ("rounds each step", Student { rounds: true, ..Self::new(By::Mean, Rule::Class) }),
        ("says when it cannot be told", Self::new(By::Mean, Rule::Cautious)),
        ("density, mean", Self::new(By::Mean, Rule::Density)),
        ("density, down leg", Self::new(By::Down, Rule::Density)),
        ("density, up leg", Self::new(By::Up, Rule::Density)),
        ("first steep, top, mean", Self::new(By::Mean, Rule::FirstSteepTop)),
        ("first steep, top, down leg", Self::new(By::Down, Rule::FirstSteepTop)),
        ("first steep, top, up leg", Self::new(By::Up, Rule::FirstSteepTop)),
        ("first steep, middle, mean", Self::new(By::Mean, Rule::FirstSteepMiddle)),
        ("first steep, middle, down leg", Self::new(By::Down, Rule::FirstSteepMiddle)),
        ("first steep, middle, up leg", Self::new(By::Up, Rule::FirstSteepMiddle)),
    ];

    /// Another rule than the class's is named.
    pub fn names_a_rule(self) -> bool {
        !matches!(self.rule, Rule::Class | Rule::Cautious)
    }
}

/// One question answered.
pub struct Sat {
    pub asked: Asked,
    pub tries: Vec<Try>,
    /// Right on the first try; naming the rule where it is asked for is no second one.
    pub right: bool,
    /// A rule other than the class's was named for it.
    pub by_rule: bool,
    pub verdicts: Vec<PartVerdict>,
}

/// The paper of a water, worked through by a student.
pub fn sit(pond: &Pond, student: Student) -> Vec<Sat> {
    let mut own = pond.again();
    // What was worked out of this cast once is the same for all who look at it.
    own.memo = pond.memo.clone();
    own.oxygen_mg_l = pond.oxygen_mg_l.clone();
    let hand = Hand::new(pond, student);
    let mut sat = Vec::new();
    for asked in pond.paper().asked {
        let mut answered = hand.answer(&own.sheet, &asked);
        let verdicts = questions::verdicts(&own.context(), &asked, &answered);
        let asks_rule = verdicts.iter().any(|v| which_rule(Some(*v)));
        if asks_rule {
            let mut named = answered.tries[0].clone();
            named.fields.insert("rule".into(), hand.rule_named(asked.kind).into());
            answered.tries.push(named);
        }
        let verdicts = questions::verdicts(&own.context(), &asked, &answered);
        let right = questions::standing(&own.context(), &asked, Some(&answered)).right;
        own.sheet.answers.insert(asked.id.clone(), answered.clone());
        let by_rule = asks_rule && student.names_a_rule();
        sat.push(Sat { asked, tries: answered.tries, right, by_rule, verdicts });
    }
    sat
}

/// "I can't tell."
pub fn cannot_tell() -> Answer {
    let given = Try { cannot_tell: true, cast_id: "cast".into(), ..Try::default() };
    Answer { tries: vec![given], ..Answer::default() }
}

/// The same fields pressed as often as there are parts that open one after another.
pub fn pressed(fields: &Fields, times: usize) -> Answer {
    answer(&vec![fields.clone(); times])
}

/// What a student wrote in a field of an earlier question.
pub fn wrote(sheet: &Sheet, id: &str, field: &str) -> Option<f64> {
    sheet.answers.get(id)?.tries.first()?.fields.get(field)?.parse().ok()
}

/// Nothing but a choice.
pub fn chosen(id: &str, value: &str) -> Fields {
    fields(&[(id, value)])
}
