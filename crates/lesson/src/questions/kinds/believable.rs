//! Kind 102 (even water): how big must a difference be before you believe it? 2.8 times the typical difference of one
//! reading (methods 3.1: 95 % of pairs lie closer together than 2.77 s), s of kind 13 as the student has it. Whether it is
//! asked hangs on the water alone.

use super::legs_agree::MEAN_TO_S;
use crate::questions::Asked;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, only,
};
use crate::questions::ranges::{
    Range, Stand, Wrong, accepted, almost, digits, number, quoted, right_said, span, stand, tellable,
};
use crate::questions::replay::first_round;
use crate::questions::say::{result, rounded, spread_decimals};
use crate::questions::text::{Fields, Measure, field, short};
use crate::questions::water::{SLACK, Source, Water};
use layercast_core::{Message, State};

/// Limit of belief in typical differences (methods 3.1).
pub(crate) const LIMIT: f64 = 2.8;
/// Give, as a share.
const GIVE_SHARE: f64 = 0.2;
/// Give of a number rounded to 0.1, °C; never so wide that the typical difference itself would pass.
const GIVE_C: f64 = 0.05;

const TYPICAL: &str = "the_typical_difference";
const ANY: &str = "any_difference";

/// Kind 102.
pub(crate) struct Believable;

/// How far off one reading typically is, as questions go by: never less than the last digit allows, 0.1 °C where nothing
/// was read twice.
fn typical_c(water: &Water) -> f64 {
    water.analysis().pairs.s_used_c
}

/// The number a student gave to a question of one part, once it was taken as right.
fn given_c(water: &Water, kind: u8, field: &str) -> Option<f64> {
    let asked = Asked { id: kind.to_string(), kind, depths_m: Vec::new() };
    let answer = water.context.sheet.answers.get(&asked.id)?;
    let round = first_round(water, &asked, Some(answer))?;
    let part = round.parts.first()?;
    let typed = part.verdicts.iter().rev().find(|(j, _)| j.verdict.is_right())?;
    let value = number(&typed.1, field, Measure::Difference).ok()?.value;
    (value > SLACK).then_some(value)
}

/// Own typical value, as accepted in kind 13.
fn own_c(water: &Water) -> Option<f64> {
    given_c(water, 13, "apart")
}

/// Kind 13 is asked of this water, so that there is an own value to go by; not where both ways agree to the last digit, for
/// then it is 0 and no limit.
fn typical_is_asked(water: &Water) -> bool {
    let differs = water.analysis().pairs.s_c.is_some_and(|s| s > SLACK);
    differs && water.context.lesson.kinds.contains(&13) && super::legs_agree::LegsAgree.choose(water).is_ok()
}

/// What the water itself gives to go by: nothing a student answered, for the list of questions hangs on it.
fn bases(water: &Water) -> Vec<f64> {
    let pairs = &water.analysis().pairs;
    let others = [pairs.s_c, pairs.mean_abs_c.map(|m| MEAN_TO_S * m)];
    std::iter::once(typical_c(water)).chain(others.into_iter().flatten().filter(|s| *s > SLACK)).collect()
}

fn range_by(s: f64) -> Range {
    let value = LIMIT * s;
    let give = (GIVE_SHARE * value).max(GIVE_C.min(0.8 * s));
    Range { source: Source::Mean, value, give }
}

fn typical(value: f64) -> Wrong {
    Wrong { key: TYPICAL, value, give: 0.1 * value }
}

const NO_DIFFERENCE: Wrong = Wrong { key: ANY, value: 0.0, give: SLACK };

/// What is right and what is wrong by the water alone.
fn by_the_water(water: &Water) -> (Vec<Range>, [Wrong; 2]) {
    (bases(water).into_iter().map(range_by).collect(), [typical(typical_c(water)), NO_DIFFERENCE])
}

/// What is right and what is wrong for this student: by the own value of kind 13 first, and by the water. A number that is
/// the own typical value rather than a limit by the water is the idea.
fn by_the_student(water: &Water, x: f64) -> (Vec<Range>, Vec<Wrong>) {
    let (of_water, wrongs) = by_the_water(water);
    let Some(own) = own_c(water) else { return (of_water, wrongs.to_vec()) };
    let is_own = |r: &Range| typical(own).holds(x) && (x - own).abs() < (x - r.value).abs();
    let rest = of_water.into_iter().filter(|r| !is_own(r));
    (std::iter::once(range_by(own)).chain(rest).collect(), vec![typical(own), NO_DIFFERENCE])
}

/// The limit that a settled answer is explained by, as 2.8 times this value.
fn base_of(q: &Question) -> f64 {
    let accepted = q.part(0).and_then(|a| a.value).map(|limit| limit / LIMIT);
    accepted.or_else(|| own_c(q.water)).unwrap_or_else(|| typical_c(q.water))
}

/// Kind 102 is asked of this water.
pub(crate) fn is_asked(water: &Water) -> bool {
    Believable.choose(water).is_ok()
}

/// A difference that may be believed, °C: the student's own answer to kind 102, else by the own typical value, else by the
/// water's.
pub(crate) fn believable_c(water: &Water) -> f64 {
    let own = if is_asked(water) { given_c(water, 102, "limit") } else { None };
    own.unwrap_or_else(|| LIMIT * own_c(water).unwrap_or_else(|| typical_c(water)))
}

impl Kind for Believable {
    fn routes(&self) -> &'static [State] {
        &[State::Mixed]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: TYPICAL, part: 0 }, Idea { key: ANY, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let (ranges, wrongs) = by_the_water(water);
        let exact = |w: &Wrong| !ranges.iter().any(|r| r.holds(w.value));
        // Rounded to 0.1 a small number means nothing here: the ideas are compared as they are.
        let apart = wrongs.iter().all(exact) && tellable(&ranges, &[]);
        if apart { Ok(Vec::new()) } else { Err(Dropped::plain("ask-dropped-102")) }
    }

    fn plan(&self, q: &Question) -> Plan {
        let s = typical_c(q.water);
        let lead = if typical_is_asked(q.water) {
            Message::new("ask-102-lead")
        } else if q.water.analysis().pairs.count == 0 {
            Message::new("ask-102-lead-once").number("s", s, 1)
        } else {
            Message::new("ask-102-lead-given").number("s", s, spread_decimals(s))
        };
        Plan {
            ask: Message::new("ask-102"),
            lead: vec![lead],
            parts: vec![vec![Line::new(
                Message::new("ask-102-label"),
                vec![Field::number("limit", Message::new("ask-102-name"), None), Field::unit()],
            )]],
            notes: vec![Message::new("ask-note-units")],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let typed = match number(fields, "limit", Measure::Difference) {
            Ok(typed) => typed,
            Err(slip) => return *slip,
        };
        let text = field(fields, "limit");
        let told = |id: &'static str| Message::new(id).text("yours", short(text));
        let (ranges, wrongs) = by_the_student(q.water, typed.value);
        match stand(text, &typed, typed.value, &ranges, &wrongs, None) {
            Stand::Right(range) => {
                let worked = rounded(range.value, 2);
                let in_words = Message::new("ask-value-c")
                    .message("value", Message::new("ask-sum-number").number("value", worked, 2));
                let right = told("ask-102-yes");
                let said = right_said(right, quoted(text), (typed.value, &typed), worked, in_words, 2);
                let most = q.water.decimals_by(Source::Mean);
                Judged::yes(said, accepted(&range)).note(digits(q.water, &typed, most))
            }
            Stand::Slip(slip) => slip,
            Stand::Near => almost(told("ask-102-almost")),
            Stand::Off(ideas) => match only(&ideas) {
                Some(TYPICAL) => Judged::idea(TYPICAL, told("ask-102-typical")),
                Some(ANY) => Judged::idea(ANY, told("ask-102-any")),
                _ => Judged::not_yet(told("ask-102-no")),
            },
        }
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 if typical_is_asked(q.water) => Hint::Words(Message::new("ask-102-hint-1")),
            1 => Hint::Words(Message::new("ask-102-hint-1-given")),
            2 => Hint::Words(Message::new("ask-102-hint-2")),
            _ => {
                // Another probe: ten times better or worse than this one.
                let s = if typical_c(q.water) < 0.3 { 0.5 } else { 0.05 };
                Hint::Worked(vec![times(s, "ask-102-worked")])
            }
        }
    }

    fn class_answer(&self, q: &Question, _part: usize) -> Accepted {
        accepted(&range_by(own_c(q.water).unwrap_or_else(|| typical_c(q.water))))
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let s = base_of(q);
        let fits = span(&by_the_student(q.water, LIMIT * s).0)
            .map(|(low, high)| Message::new("ask-13-fits").number("low", low, 2).number("high", high, 2));
        Explained {
            shown: Message::new("ask-value-c")
                .message("value", Message::new("ask-sum-number").number("value", rounded(LIMIT * s, 2), 2)),
            sum: vec![times(s, "ask-102-gloss")],
            fits,
            notes: vec![Message::new("ask-102-why")],
            own_words: Message::new("ask-102-own-words"),
        }
    }
}

/// "2.8 × 0.10 = | 0.28 °C"
fn times(s: f64, gloss: &'static str) -> crate::view::SumLine {
    let places = spread_decimals(s);
    result(
        Message::new("ask-102-sum").number("limit", LIMIT, 1).number("s", s, places),
        Message::new("ask-sum-c").number("value", rounded(LIMIT * s, 2), 2),
        Message::new(gloss),
    )
}
