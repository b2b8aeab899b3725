//! Kind 19: to what must the surface cool before wind can mix to the bottom; how much heat is that, and how many days at
//! 100 W/m²? In water that is colder on top the surface must get warmer. The deep reading within 0.5 °C, heat and days within
//! a factor of 1.5; the days go by the heat as given.

use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, only,
};
use crate::questions::ranges::{
    Range, Stand, Wrong, accepted, almost, digits, fits_c, number, quoted, right_said, span, stand, tellable,
};
use crate::questions::say::{Numbers, bare, fitting, in_c, line, result, rounded};
use crate::questions::text::{Fields, Measure, field, short};
use crate::questions::water::{SLACK, Source, Water};
use crate::questions::why::{Bare, bare_number, figures, within};
use crate::view::SumLine;
use layercast_core::column::to_mix::{ToMix, to_mix};
use layercast_core::stability::whole::HEAT_J_M3_K;
use layercast_core::{Message, State};

const ZERO_OR_FOUR: &str = "zero_or_four";
const NOT_TIMES_HEAT: &str = "degrees_without_heat";
const HOURS: &str = "hours";
const WATTS_ALONE: &str = "watts_alone";

/// Give of the temperature, °C.
const GIVE_C: f64 = 0.5;
/// Heat and days may be this many times too great or too small.
const TIMES: f64 = 1.5;
/// What the surface loses, W m⁻².
const WATTS: f64 = 100.0;
/// What that is in a day, MJ m⁻².
const MJ_A_DAY: f64 = 8.64;
/// Heat of a cubic metre and a degree, MJ.
const MJ: f64 = HEAT_J_M3_K / 1e6;
/// A factor that two numbers may be apart and still be one and the same sum.
const SAME_SUM: f64 = 1.1;
/// Top and bottom must differ by this much, °C.
const LEAST_C: f64 = 2.0;

/// Kind 19.
pub(crate) struct HeatToMix;

fn found(water: &Water) -> Option<ToMix> {
    to_mix(water.levels(), LEAST_C, water.analysis().method.density)
}

/// The deepest reading by each way of reading.
fn ranges(water: &Water) -> Vec<Range> {
    let Some(last) = water.levels().last() else { return Vec::new() };
    [Source::Mean, Source::Down, Source::Up]
        .into_iter()
        .filter_map(|source| Some(Range { source, value: Water::of(last, source)?, give: GIVE_C }))
        .collect()
}

/// 0 °C; 4 °C too, but for water that must get warmer and comes near to it.
fn wrongs(warms: bool) -> Vec<Wrong> {
    let values: &[f64] = if warms { &[0.0] } else { &[0.0, 4.0] };
    values.iter().map(|value| Wrong { key: ZERO_OR_FOUR, value: *value, give: 0.05 }).collect()
}

/// MJ for each square metre.
fn heat_mj(found: &ToMix) -> f64 {
    found.heat_j_m2 / 1e6
}

/// The heat that the days go by: as given, else the water's own.
fn base_mj(q: &Question, found: &ToMix) -> f64 {
    q.part(1).and_then(|a| a.value).filter(|v| *v > SLACK).unwrap_or(heat_mj(found))
}

fn number_of(id: &'static str, value: f64) -> Message {
    let (value, decimals) = figures(value);
    Message::new(id).number("value", value, decimals)
}

/// "48 °C·m × 4.18 = 200 MJ"
fn heat_line(degree_metres: f64, gloss: &'static str) -> SumLine {
    let least = figures(degree_metres).1;
    let decimals = fitting(least, figures(degree_metres * MJ), &|d| rounded(degree_metres, d) * MJ);
    let shown = rounded(degree_metres, decimals);
    result(
        Message::new("ask-19-heat-sum").number("degrees", shown, decimals).number("heat", MJ, 2),
        number_of("ask-19-mj", degree_metres * MJ),
        Message::new(gloss),
    )
}

fn days_line(heat_mj: f64, gloss: &'static str) -> SumLine {
    let least = figures(heat_mj).1;
    let decimals = fitting(least, figures(heat_mj / MJ_A_DAY), &|d| rounded(heat_mj, d) / MJ_A_DAY);
    let shown = rounded(heat_mj, decimals);
    result(
        Message::new("ask-19-days-sum").number("heat", shown, decimals).number("day", MJ_A_DAY, 2),
        number_of("ask-19-days", heat_mj / MJ_A_DAY),
        Message::new(gloss),
    )
}

/// A right or a wrong number within a factor.
fn judged(
    fields: &Fields,
    id: &str,
    right: f64,
    wrongs: &[(&'static str, f64)],
) -> Result<f64, Result<&'static str, Box<Judged>>> {
    let given = match bare_number(fields, id) {
        Ok(Bare { value, .. }) => value.abs(),
        Err(slip) => return Err(Err(slip)),
    };
    if within(given, right, TIMES) {
        return Ok(given);
    }
    let ideas: Vec<&'static str> =
        wrongs.iter().filter(|w| within(given, w.1, SAME_SUM)).map(|w| w.0).collect();
    Err(Ok(only(&ideas).unwrap_or_default()))
}

impl Kind for HeatToMix {
    fn routes(&self) -> &'static [State] {
        &[State::Stratified, State::Weak, State::Inverse]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[
            Idea { key: ZERO_OR_FOUR, part: 0 },
            Idea { key: NOT_TIMES_HEAT, part: 1 },
            Idea { key: HOURS, part: 2 },
            Idea { key: WATTS_ALONE, part: 2 },
        ]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        match found(water) {
            None => Err(Dropped::telling("ask-dropped-19")),
            Some(found) if !tellable(&ranges(water), &wrongs(found.warms)) => {
                Err(Dropped::telling("ask-dropped-19-four"))
            }
            Some(_) => Ok(Vec::new()),
        }
    }

    fn plan(&self, q: &Question) -> Plan {
        let warms = found(q.water).is_some_and(|f| f.warms);
        let after = |id: &'static str| Some(Message::new(id));
        Plan {
            ask: Message::new(if warms { "ask-19-warms" } else { "ask-19" }),
            lead: vec![
                Message::new(if warms { "ask-19-lead-warms" } else { "ask-19-lead" }),
                Message::new("ask-note-watt"),
            ],
            parts: vec![
                vec![Line::new(
                    Message::new(if warms { "ask-19-label-temp-warms" } else { "ask-19-label-temp" }),
                    vec![Field::number("temp", Message::new("ask-name-temp"), after("ask-after-c"))],
                )],
                vec![Line::new(
                    Message::new(if warms { "ask-19-label-heat-warms" } else { "ask-19-label-heat" }),
                    vec![Field::number("heat", Message::new("ask-19-name-heat"), after("ask-19-after-heat"))],
                )],
                vec![Line::new(
                    Message::new("ask-19-label-days"),
                    vec![Field::number("days", Message::new("ask-19-name-days"), after("ask-19-after-days"))],
                )],
            ],
            notes: vec![Message::new("ask-19-note")],
        }
    }

    fn judge(&self, q: &Question, part: usize, fields: &Fields) -> Judged {
        let Some(found) = found(q.water) else { return Judged::not_yet(Message::new("ask-19-temp-no")) };
        let told = |id: &'static str, name: &str| Message::new(id).text("yours", short(field(fields, name)));
        match part {
            0 => judge_temp(q, &found, fields),
            1 => {
                let right = heat_mj(&found);
                match judged(fields, "heat", right, &[(NOT_TIMES_HEAT, right / MJ)]) {
                    Ok(value) => Judged::yes(
                        told("ask-19-heat-yes", "heat"),
                        Accepted { value: Some(value), ..Accepted::default() },
                    ),
                    Err(Err(slip)) => *slip,
                    Err(Ok(NOT_TIMES_HEAT)) => {
                        Judged::idea(NOT_TIMES_HEAT, told("ask-19-heat-degrees", "heat"))
                    }
                    Err(Ok(_)) => Judged::not_yet(told("ask-19-heat-no", "heat")),
                }
            }
            _ => {
                if q.part(1).is_none() {
                    return Judged::new(crate::questions::kind::Verdict::Waits, told("ask-19-waits", "days"));
                }
                let right = base_mj(q, &found) / MJ_A_DAY;
                let wrongs = [(HOURS, right * 24.0), (WATTS_ALONE, right * MJ_A_DAY / WATTS)];
                match judged(fields, "days", right, &wrongs) {
                    Ok(value) => Judged::yes(
                        told("ask-19-days-yes", "days"),
                        Accepted { value: Some(value), ..Accepted::default() },
                    ),
                    Err(Err(slip)) => *slip,
                    Err(Ok(HOURS)) => Judged::idea(HOURS, told("ask-19-days-hours", "days")),
                    Err(Ok(WATTS_ALONE)) => Judged::idea(WATTS_ALONE, told("ask-19-days-watts", "days")),
                    Err(Ok(_)) => Judged::not_yet(told("ask-19-days-no", "days")),
                }
            }
        }
    }

    fn hint(&self, q: &Question, part: usize, level: u8) -> Hint {
        let warms = found(q.water).is_some_and(|f| f.warms);
        let words = |id: &'static str| Hint::Words(Message::new(id));
        match (part, level) {
            (0, 1) => words("ask-19-temp-hint-1"),
            (0, 2) => words(if warms { "ask-19-temp-hint-2-warms" } else { "ask-19-temp-hint-2" }),
            (0, _) => words("ask-19-temp-hint-3"),
            (1, 1) => words("ask-19-heat-hint-1"),
            (1, 2) => words("ask-19-heat-hint-2"),
            // 2 m that are 5 °C over the target.
            (1, _) => Hint::Worked(vec![
                line(
                    Message::new("ask-19-area-sum").c("over", 5.0).m("depth", 2.0),
                    Message::new("ask-19-area").c("value", 10.0),
                    Message::new("ask-made-up"),
                ),
                heat_line(10.0, "ask-19-heat-gloss"),
            ]),
            (_, 1) => words("ask-19-days-hint-1"),
            (_, 2) => words("ask-19-days-hint-2"),
            _ => Hint::Worked(vec![days_line(43.2, "ask-made-up")]),
        }
    }

    fn class_answer(&self, q: &Question, part: usize) -> Accepted {
        let Some(found) = found(q.water) else { return Accepted::default() };
        match part {
            0 => ranges(q.water).first().map(accepted).unwrap_or_default(),
            1 => Accepted { value: Some(heat_mj(&found)), ..Accepted::default() },
            _ => Accepted { value: Some(base_mj(q, &found) / MJ_A_DAY), ..Accepted::default() },
        }
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let found = found(q.water).unwrap_or(ToMix { target_c: 0.0, warms: false, heat_j_m2: 0.0 });
        let own_words = Message::new(if found.warms { "ask-19-own-words-warms" } else { "ask-19-own-words" });
        let around = |right: f64, id: &'static str| {
            let ((low, a), (high, b)) = (figures(right / TIMES), figures(right * TIMES));
            Message::new(id).number("low", low, a).number("high", high, b)
        };
        let blank = Explained {
            shown: Message::new("ask-sum-nothing"),
            sum: Vec::new(),
            fits: None,
            notes: Vec::new(),
            own_words,
        };
        match part {
            0 => {
                let source = q.part(0).and_then(|a| a.source).unwrap_or(Source::Mean);
                let value =
                    q.water.levels().last().and_then(|l| Water::of(l, source)).unwrap_or(found.target_c);
                Explained {
                    shown: Message::new("ask-value-c").message("value", bare(value)),
                    sum: vec![line(
                        Message::new("ask-19-deepest").m("depth", q.water.last_m()),
                        in_c(value),
                        Message::new("ask-19-deepest-gloss"),
                    )],
                    fits: span(&ranges(q.water)).map(|(low, high)| fits_c(q.water, low, high)),
                    notes: vec![Message::new(if found.warms { "ask-19-why-warms" } else { "ask-19-why" })],
                    ..blank
                }
            }
            1 => Explained {
                shown: number_of("ask-19-mj", heat_mj(&found)),
                sum: vec![heat_line(heat_mj(&found) / MJ, "ask-19-heat-gloss")],
                fits: Some(around(heat_mj(&found), "ask-19-fits-heat")),
                ..blank
            },
            _ => {
                let base = base_mj(q, &found);
                Explained {
                    shown: number_of("ask-19-days", base / MJ_A_DAY),
                    sum: vec![days_line(base, "ask-19-days-gloss")],
                    fits: Some(around(base / MJ_A_DAY, "ask-19-fits-days")),
                    notes: vec![Message::new("ask-19-what")],
                    ..blank
                }
            }
        }
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn is_hidden_before_marks(&self) -> bool {
        true
    }

    fn shows_means(&self) -> bool {
        true
    }
}

fn judge_temp(q: &Question, found: &ToMix, fields: &Fields) -> Judged {
    let typed = match number(fields, "temp", Measure::Temperature) {
        Ok(typed) => typed,
        Err(slip) => return *slip,
    };
    let text = field(fields, "temp");
    let told = |id: &'static str| Message::new(id).text("yours", short(text));
    match stand(text, &typed, typed.value, &ranges(q.water), &wrongs(found.warms), None) {
        Stand::Right(range) => {
            let in_words = Message::new("ask-value-c").message("value", bare(range.value));
            let right = right_said(
                told("ask-19-temp-yes"),
                quoted(text),
                (typed.value, &typed),
                rounded(range.value, 2),
                in_words,
                1,
            );
            Judged::yes(right, accepted(&range)).note(digits(
                q.water,
                &typed,
                q.water.decimals_by(Source::Mean),
            ))
        }
        Stand::Slip(slip) => slip,
        Stand::Near => almost(told("ask-19-temp-almost")),
        Stand::Off(ideas) => match only(&ideas) {
            Some(_) => Judged::idea(
                ZERO_OR_FOUR,
                told(if found.warms { "ask-19-temp-zero" } else { "ask-19-temp-four" }),
            ),
            None => Judged::not_yet(told("ask-19-temp-no")),
        },
    }
}
