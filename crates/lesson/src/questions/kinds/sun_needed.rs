//! Kind 106 (even water): how long must the sun shine to warm the top metre by 3 °C? 4.18 million J per cubic metre and
//! degree, 500 W on each square metre: 4.18e6 · 3 ÷ 500 = 25 080 s, 7.0 h; within 3 in 100, in any unit of time.

use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, only,
};
use crate::questions::ranges::{Range, Stand, Wrong, accepted, almost, number, quoted, right_said, stand};
use crate::questions::say::{line, result};
use crate::questions::text::{Fields, Measure, UNIT_C, UNIT_D, UNIT_H, UNIT_MIN, UNIT_S, field, short};
use crate::questions::water::{Source, Water};
use crate::view::SumLine;
use layercast_core::{Message, State};

const ONE_DEGREE: &str = "one_degree_only";
const SECONDS: &str = "seconds_taken_for_hours";

/// Heat that warms a cubic metre of water by a degree, millions of joules (methods 7.6: 4.18e6 J per m³ and °C).
const HEAT_MJ: f64 = 4.18;
/// Warming asked for, °C.
const WARMER_C: f64 = 3.0;
/// Sun on a square metre, W: an average of good daylight hours (common practice, no source).
const SUN_W: f64 = 500.0;
/// Seconds in an hour.
const HOUR_S: f64 = 3600.0;
/// Give, as a share: the heat of water rounded to 4.2, or an answer to a tenth of an hour.
const GIVE: f64 = 0.03;

/// Kind 106.
pub(crate) struct SunNeeded;

fn seconds(warmer_c: f64, sun_w: f64) -> f64 {
    HEAT_MJ * 1e6 * warmer_c / sun_w
}

fn range() -> Range {
    let value = seconds(WARMER_C, SUN_W) / HOUR_S;
    Range { source: Source::Mean, value, give: GIVE * value }
}

fn wrongs() -> [Wrong; 2] {
    let wrong = |key, value: f64| Wrong { key, value, give: GIVE * value };
    [wrong(ONE_DEGREE, seconds(1.0, SUN_W) / HOUR_S), wrong(SECONDS, seconds(WARMER_C, SUN_W))]
}

/// Three lines: the heat, the seconds, the hours.
fn sum(warmer_c: f64, sun_w: f64) -> Vec<SumLine> {
    let number = |value: f64, places: u8| Message::new("ask-sum-number").number("value", value, places);
    let heat = HEAT_MJ * warmer_c;
    let s = seconds(warmer_c, sun_w);
    vec![
        line(
            Message::new("ask-16-sum-times").number("a", HEAT_MJ, 2).number("b", warmer_c, 0),
            number(heat, 2),
            Message::new("ask-106-gloss-heat"),
        ),
        line(
            Message::new("ask-106-sum-seconds").number("a", heat, 2).number("b", sun_w, 0),
            number(s, 0),
            Message::new("ask-106-gloss-seconds"),
        ),
        result(
            Message::new("ask-106-sum-hours").number("a", s, 0),
            number(s / HOUR_S, 1),
            Message::new("ask-106-gloss-hours"),
        ),
    ]
}

impl Kind for SunNeeded {
    fn routes(&self) -> &'static [State] {
        &[State::Mixed]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: ONE_DEGREE, part: 0 }, Idea { key: SECONDS, part: 0 }]
    }

    fn choose(&self, _water: &Water) -> Result<Vec<f64>, Dropped> {
        Ok(Vec::new())
    }

    fn plan(&self, _q: &Question) -> Plan {
        let units = vec![
            (UNIT_S, Message::new("ask-unit-s")),
            (UNIT_MIN, Message::new("ask-unit-min")),
            (UNIT_H, Message::new("ask-unit-h")),
            (UNIT_D, Message::new("ask-unit-d")),
            (UNIT_C, Message::new("ask-unit-c")),
        ];
        let time = Field::number("time", Message::new("ask-106-name"), None);
        Plan {
            ask: Message::new("ask-106").number("warmer", WARMER_C, 0),
            lead: vec![Message::new("ask-106-lead").number("heat", HEAT_MJ, 2).number("sun", SUN_W, 0)],
            parts: vec![vec![Line::new(Message::new("ask-106-label"), vec![time, Field::unit_of(units)])]],
            notes: vec![Message::new("ask-106-note")],
        }
    }

    fn judge(&self, _q: &Question, _part: usize, fields: &Fields) -> Judged {
        let typed = match number(fields, "time", Measure::Time) {
            Ok(typed) => typed,
            Err(slip) => return *slip,
        };
        let text = field(fields, "time");
        let told = |id: &'static str| Message::new(id).text("yours", short(text));
        match stand(text, &typed, typed.value, &[range()], &wrongs(), None) {
            Stand::Right(range) => {
                let value = Message::new("ask-sum-number").number("value", range.value, 1);
                let in_words = Message::new("ask-106-value").message("value", value);
                let said = right_said(
                    told("ask-106-yes"),
                    quoted(text),
                    (typed.value, &typed),
                    range.value,
                    in_words,
                    1,
                );
                Judged::yes(said, accepted(&range))
            }
            Stand::Slip(slip) => slip,
            Stand::Near => almost(told("ask-106-almost")),
            Stand::Off(ideas) => match only(&ideas) {
                Some(ONE_DEGREE) => {
                    Judged::idea(ONE_DEGREE, told("ask-106-one-degree").number("warmer", WARMER_C, 0))
                }
                Some(SECONDS) => Judged::idea(SECONDS, told("ask-106-seconds")),
                _ => Judged::not_yet(told("ask-106-no")),
            },
        }
    }

    fn hint(&self, _q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 => Hint::Words(Message::new("ask-106-hint-1")),
            2 => Hint::Words(Message::new("ask-106-hint-2")),
            _ => Hint::Worked(sum(1.0, 250.0)),
        }
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        accepted(&range())
    }

    fn explain(&self, _q: &Question, _part: usize) -> Explained {
        let value = Message::new("ask-sum-number").number("value", range().value, 1);
        Explained {
            shown: Message::new("ask-106-value").message("value", value),
            sum: sum(WARMER_C, SUN_W),
            fits: None,
            notes: vec![Message::new("ask-106-why")],
            own_words: Message::new("ask-106-own-words"),
        }
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn is_hidden_before_marks(&self) -> bool {
        true
    }
}
