//! Kind 16: how much is 1.0 °C per metre in °F per foot, and a difference of 2 °C in °F? 0.549 and 3.6 (methods 2.2: a
//! degree is 1.8 °F, a foot 0.3048 m), within 2 in 100. A difference has no 32 in it.

use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, only,
};
use crate::questions::ranges::{Range, Stand, Wrong, accepted, almost, number, quoted, right_said, stand};
use crate::questions::say::line;
use crate::questions::text::{Fields, Measure, field, short};
use crate::questions::water::{Source, Water};
use crate::view::SumLine;
use layercast_core::{Message, State};

const THIRTY_TWO: &str = "thirty_two_in_a_difference";
const STILL_METRES: &str = "still_per_metre";
const UPSIDE_DOWN: &str = "feet_upside_down";

/// °F in a degree Celsius.
const F_PER_C: f64 = 1.8;
/// Metres in a foot.
const M_PER_FT: f64 = 0.3048;
/// The rate that is asked for, °C per metre.
const RATE_C_PER_M: f64 = 1.0;
/// The difference that is asked for, °C.
const APART_C: f64 = 2.0;
/// Give, as a share.
const GIVE: f64 = 0.02;
/// Where °F begin.
const ZERO_F: f64 = 32.0;

/// Kind 16.
pub(crate) struct OtherUnits;

fn in_f(c: f64) -> f64 {
    c * F_PER_C
}

fn range(part: usize) -> Range {
    let value = if part == 0 { in_f(RATE_C_PER_M) * M_PER_FT } else { in_f(APART_C) };
    Range { source: Source::Mean, value, give: GIVE * value }
}

fn wrongs(part: usize) -> Vec<Wrong> {
    let wrong = |key, value: f64| Wrong { key, value, give: GIVE * value };
    if part > 0 {
        return vec![wrong(THIRTY_TWO, in_f(APART_C) + ZERO_F)];
    }
    let with_32 = in_f(RATE_C_PER_M) + ZERO_F;
    vec![
        wrong(STILL_METRES, in_f(RATE_C_PER_M)),
        wrong(UPSIDE_DOWN, in_f(RATE_C_PER_M) / M_PER_FT),
        wrong(THIRTY_TWO, with_32),
        wrong(THIRTY_TWO, with_32 * M_PER_FT),
    ]
}

/// "1.0 × 1.8 = | 1.8 | °F per metre"
fn times(a: (f64, u8), b: (f64, u8), value: (f64, u8), gloss: &'static str) -> SumLine {
    let left = Message::new("ask-16-sum-times").number("a", a.0, a.1).number("b", b.0, b.1);
    line(left, Message::new("ask-sum-number").number("value", value.0, value.1), Message::new(gloss))
}

/// The sum for a part, of this rate or difference.
fn sum(part: usize, of: f64) -> Vec<SumLine> {
    let f = in_f(of);
    if part > 0 {
        let last = times((of, 0), (F_PER_C, 1), (f, 1), "ask-16-gloss-f");
        return vec![SumLine { result: true, ..last }];
    }
    vec![
        times((of, 1), (F_PER_C, 1), (f, 1), "ask-16-gloss-per-metre"),
        SumLine { result: true, ..times((f, 1), (M_PER_FT, 4), (f * M_PER_FT, 3), "ask-16-gloss-per-foot") },
    ]
}

const IDS: [&str; 2] = ["rate", "apart"];

impl Kind for OtherUnits {
    fn routes(&self) -> &'static [State] {
        &[State::Mixed, State::Weak, State::Stratified, State::Inverse, State::Unstable]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[
            Idea { key: STILL_METRES, part: 0 },
            Idea { key: UPSIDE_DOWN, part: 0 },
            Idea { key: THIRTY_TWO, part: 0 },
            Idea { key: THIRTY_TWO, part: 1 },
        ]
    }

    fn choose(&self, _water: &Water) -> Result<Vec<f64>, Dropped> {
        Ok(Vec::new())
    }

    fn plan(&self, _q: &Question) -> Plan {
        let line = |id, label, name, after| {
            Line::new(
                Message::new(label),
                vec![Field::number(id, Message::new(name), Some(Message::new(after)))],
            )
        };
        Plan {
            ask: Message::new("ask-16"),
            lead: Vec::new(),
            parts: vec![
                vec![line("rate", "ask-16-label-rate", "ask-16-name-rate", "ask-16-after-rate")],
                vec![line("apart", "ask-16-label-apart", "ask-16-name-apart", "ask-16-after-apart")],
            ],
            notes: vec![Message::new("ask-16-note")],
        }
    }

    fn judge(&self, _q: &Question, part: usize, fields: &Fields) -> Judged {
        let id = IDS.get(part).copied().unwrap_or_default();
        let measure = if part == 0 { Measure::FahrenheitPerFoot } else { Measure::FahrenheitApart };
        let typed = match number(fields, id, measure) {
            Ok(typed) => typed,
            Err(slip) => return *slip,
        };
        let text = field(fields, id);
        let told = |id: &'static str| Message::new(id).text("yours", short(text));
        let x = typed.value.abs();
        match stand(text, &typed, x, &[range(part)], &wrongs(part), None) {
            Stand::Right(range) => {
                let (places, unit) =
                    if part == 0 { (3, "ask-16-value-rate") } else { (1, "ask-16-value-apart") };
                let value = Message::new("ask-sum-number").number("value", range.value, places);
                let in_words = Message::new(unit).message("value", value);
                let said =
                    right_said(told("ask-16-yes"), quoted(text), (x, &typed), range.value, in_words, 1);
                Judged::yes(said, accepted(&range))
            }
            Stand::Slip(slip) => slip,
            Stand::Near => almost(told("ask-16-almost")),
            Stand::Off(ideas) => match only(&ideas) {
                Some(THIRTY_TWO) => Judged::idea(THIRTY_TWO, told("ask-16-thirty-two")),
                Some(STILL_METRES) => Judged::idea(STILL_METRES, told("ask-16-still-metres")),
                Some(UPSIDE_DOWN) => Judged::idea(UPSIDE_DOWN, told("ask-16-upside-down")),
                _ => Judged::not_yet(told(if part == 0 { "ask-16-no-rate" } else { "ask-16-no-apart" })),
            },
        }
    }

    fn hint(&self, _q: &Question, part: usize, level: u8) -> Hint {
        match (part, level) {
            (0, 1) => Hint::Words(Message::new("ask-16-hint-rate-1")),
            (0, 2) => Hint::Words(Message::new("ask-16-hint-rate-2")),
            (_, 1) => Hint::Words(Message::new("ask-16-hint-apart-1")),
            (_, 2) => Hint::Words(Message::new("ask-16-hint-apart-2")),
            _ => Hint::Worked(sum(part, 5.0)),
        }
    }

    fn class_answer(&self, _q: &Question, part: usize) -> Accepted {
        accepted(&range(part))
    }

    fn explain(&self, _q: &Question, part: usize) -> Explained {
        let (places, unit, of) = if part == 0 {
            (3, "ask-16-value-rate", RATE_C_PER_M)
        } else {
            (1, "ask-16-value-apart", APART_C)
        };
        let value = Message::new("ask-sum-number").number("value", range(part).value, places);
        Explained {
            shown: Message::new(unit).message("value", value),
            sum: sum(part, of),
            fits: None,
            notes: if part > 0 { vec![Message::new("ask-16-why")] } else { Vec::new() },
            own_words: Message::new("ask-16-own-words"),
        }
    }
}
