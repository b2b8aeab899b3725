//! Kind 102 (even water): how big must a difference be before you believe it? 2.8 times the typical difference of one
//! reading (methods 3.1: 95 % of pairs lie closer together than 2.77 s), s of kind 13 as the student has it.

use super::legs_agree::MEAN_TO_S;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, only,
};
use crate::questions::ranges::{
    Range, Stand, Wrong, accepted, almost, digits, number, span, stand, tellable,
};
use crate::questions::replay::replay;
use crate::questions::text::{Fields, Measure, field, short};
use crate::questions::water::{SLACK, Source, Water};
use crate::questions::{Asked, say::result};
use layercast_core::Message;

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

/// The typical difference that questions go by: never less than the last digit allows, 0.1 °C where nothing was read twice.
fn typical_c(water: &Water) -> f64 {
    water.analysis().pairs.s_used_c
}

/// Own typical difference, as accepted in kind 13.
fn own_c(water: &Water) -> Option<f64> {
    let asked = Asked { id: "13".to_owned(), kind: 13, depths_m: Vec::new() };
    let answer = water.context.sheet.answers.get("13")?;
    let round = replay(water, &asked, Some(answer))?;
    let part = round.first.parts.first()?;
    let typed = part.verdicts.iter().rev().find(|(j, _)| j.verdict.is_right())?;
    let value = number(&typed.1, "apart", Measure::Difference).ok()?.value;
    (value > SLACK).then_some(value)
}

/// Typical differences that may be gone by.
fn bases(water: &Water) -> Vec<f64> {
    let pairs = &water.analysis().pairs;
    let others = [pairs.s_c, pairs.mean_abs_c.map(|m| MEAN_TO_S * m), own_c(water)];
    std::iter::once(typical_c(water)).chain(others.into_iter().flatten().filter(|s| *s > SLACK)).collect()
}

fn ranges(water: &Water) -> Vec<Range> {
    (bases(water).into_iter())
        .map(|s| {
            let value = LIMIT * s;
            let give = (GIVE_SHARE * value).max(GIVE_C.min(0.8 * s));
            Range { source: Source::Mean, value, give }
        })
        .collect()
}

fn wrongs(water: &Water) -> Vec<Wrong> {
    let typical = [Some(typical_c(water)), own_c(water)].into_iter().flatten();
    let typical = typical.map(|value| Wrong { key: TYPICAL, value, give: 0.1 * value });
    typical.chain([Wrong { key: ANY, value: 0.0, give: SLACK }]).collect()
}

/// A difference that may be believed, °C: by the student's own typical difference, else the water's.
pub(crate) fn believable_c(water: &Water) -> f64 {
    LIMIT * own_c(water).unwrap_or_else(|| typical_c(water))
}

impl Kind for Believable {
    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: TYPICAL, part: 0 }, Idea { key: ANY, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let exact = |w: &Wrong| !ranges(water).iter().any(|r| r.holds(w.value));
        // Rounded to 0.1 a small number means nothing here: the ideas are compared as they are.
        let apart = wrongs(water).iter().all(exact) && tellable(&ranges(water), &[]);
        if apart { Ok(Vec::new()) } else { Err(Dropped::plain("ask-dropped-102")) }
    }

    fn plan(&self, q: &Question) -> Plan {
        let once = q.water.analysis().pairs.count == 0;
        Plan {
            ask: Message::new("ask-102"),
            lead: vec![if once {
                Message::new("ask-102-lead-once").number("s", typical_c(q.water), 1)
            } else {
                Message::new("ask-102-lead")
            }],
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
        match stand(text, &typed, typed.value, &ranges(q.water), &wrongs(q.water), None) {
            Stand::Right(range) => Judged::yes(told("ask-102-yes"), accepted(&range)).note(digits(&typed, 2)),
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
            1 => Hint::Words(Message::new("ask-102-hint-1")),
            2 => Hint::Words(Message::new("ask-102-hint-2")),
            _ => {
                // Another probe: ten times better or worse than this one.
                let s = if typical_c(q.water) < 0.3 { 0.5 } else { 0.05 };
                Hint::Worked(vec![times(s, "ask-102-worked")])
            }
        }
    }

    fn class_answer(&self, q: &Question, _part: usize) -> Accepted {
        ranges(q.water).first().map(accepted).unwrap_or_default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let s = own_c(q.water).unwrap_or_else(|| typical_c(q.water));
        let fits = span(&ranges(q.water))
            .map(|(low, high)| Message::new("ask-13-fits").number("low", low, 2).number("high", high, 2));
        Explained {
            shown: Message::new("ask-value-c")
                .message("value", Message::new("ask-sum-number").number("value", LIMIT * s, 2)),
            sum: vec![times(s, "ask-102-gloss")],
            fits,
            notes: vec![Message::new("ask-102-why")],
            own_words: Message::new("ask-102-own-words"),
        }
    }
}

/// "2.8 × 0.10 = | 0.28 °C"
fn times(s: f64, gloss: &'static str) -> crate::view::SumLine {
    result(
        Message::new("ask-102-sum").number("limit", LIMIT, 1).number("s", s, 2),
        Message::new("ask-sum-c").number("value", LIMIT * s, 2),
        Message::new(gloss),
    )
}
