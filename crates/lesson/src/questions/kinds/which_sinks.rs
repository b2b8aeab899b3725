//! Kind 17: which of these two waters sinks? A pair across 4 °C, where the colder water is the lighter one: of the own cast
//! where it has one that is beyond doubt, else a stated one. Elsewhere "the colder one" would be right for a wrong reason.

use crate::questions::kind::{
    Accepted, Dropped, EVERY_WATER, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question,
};
use crate::questions::say::{Numbers, decimals, line, rounded};
use crate::questions::text::{Fields, field};
use crate::questions::water::{SLACK, Water};
use layercast_core::{Level, Message, State};

const COLDER_SINKS: &str = "colder_always_sinks";

/// Waters must differ by this much in weight, kg m⁻³.
const LEAST_KG_M3: f64 = 0.002;
/// And in temperature by so many typical differences of a reading.
const LEAST_IN_S: f64 = 2.0;
/// Most levels that pairs are sought among.
const MOST_LEVELS: usize = 64;
/// The stated pair, °C: the colder one is lighter by 0.07 kg m⁻³.
const STATED_C: (f64, f64) = (1.0, 4.0);
/// A pair for the worked hint, °C, likewise.
const WORKED_C: (f64, f64) = (2.0, 5.0);

/// Kind 17.
pub(crate) struct WhichSinks;

/// The colder and the warmer of two waters: the colder one is lighter.
#[derive(Clone, Copy)]
struct Pair {
    /// °C and, where it is of the cast, depth in metres.
    colder: (f64, Option<f64>),
    warmer: (f64, Option<f64>),
}

/// The clearest pair of the cast whose colder water is beyond doubt the lighter one.
fn own(water: &Water) -> Option<Pair> {
    let least_c = LEAST_IN_S * water.analysis().pairs.s_used_c;
    let stride = water.levels().len().div_ceil(MOST_LEVELS).max(1);
    let levels: Vec<&Level> = water.levels().iter().step_by(stride).collect();
    let mut best: Option<(f64, Pair)> = None;
    for a in &levels {
        for b in &levels {
            let heavier = b.density - a.density;
            let sure = heavier >= LEAST_KG_M3 - SLACK && b.temp_c - a.temp_c > least_c + SLACK;
            if sure && best.is_none_or(|(most, _)| heavier > most + SLACK) {
                let of = |l: &Level| (l.temp_c, Some(l.depth_m));
                best = Some((heavier, Pair { colder: of(a), warmer: of(b) }));
            }
        }
    }
    best.map(|(_, pair)| pair)
}

fn pair(q: &Question) -> Pair {
    let at = |z: f64| q.water.level(z).map(|l| (l.temp_c, Some(l.depth_m)));
    let of_cast = || match q.asked.depths_m[..] {
        [colder, warmer] => Some(Pair { colder: at(colder)?, warmer: at(warmer)? }),
        _ => None,
    };
    of_cast().unwrap_or(Pair { colder: (STATED_C.0, None), warmer: (STATED_C.1, None) })
}

fn named((temp_c, depth_m): (f64, Option<f64>)) -> Message {
    match depth_m {
        Some(depth_m) => Message::new("ask-17-own").c("temp", temp_c).m("depth", depth_m),
        None => Message::new("ask-17-stated").c("temp", temp_c),
    }
}

/// kg of a cubic metre.
fn weighs(water: &Water, temp_c: f64) -> f64 {
    rounded(water.analysis().method.density.kg_m3(temp_c), 3)
}

fn weight(water: &Water, temp_c: f64, gloss: Message) -> crate::view::SumLine {
    let kg = weighs(water, temp_c);
    let left = Message::new("ask-17-cubic").c("temp", temp_c);
    line(left, Message::new("ask-17-kg").number("kg", kg, decimals(kg, 2, 3)), gloss)
}

impl Kind for WhichSinks {
    fn routes(&self) -> &'static [State] {
        EVERY_WATER
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: COLDER_SINKS, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let depths = |pair: Pair| pair.colder.1.into_iter().chain(pair.warmer.1).collect();
        Ok(own(water).map_or_else(Vec::new, depths))
    }

    fn plan(&self, q: &Question) -> Plan {
        let pair = pair(q);
        let options = vec![
            ("colder".to_owned(), named(pair.colder)),
            ("warmer".to_owned(), named(pair.warmer)),
            ("neither".to_owned(), Message::new("ask-17-neither")),
        ];
        let field = Field {
            input: Input::Choice(options),
            ..Field::number("sinks", Message::new("ask-17-name"), None)
        };
        let is_own = pair.colder.1.is_some();
        Plan {
            ask: Message::new(if is_own { "ask-17" } else { "ask-17-two" }),
            lead: vec![Message::new(if is_own { "ask-17-lead" } else { "ask-17-lead-stated" })],
            parts: vec![vec![Line::new(Message::new("ask-17-label"), vec![field])]],
            notes: Vec::new(),
        }
    }

    fn judge(&self, _q: &Question, _part: usize, fields: &Fields) -> Judged {
        match field(fields, "sinks") {
            "warmer" => Judged::yes(Message::new("ask-17-yes"), Accepted::default()),
            "colder" => Judged::idea(COLDER_SINKS, Message::new("ask-17-colder")),
            _ => Judged::not_yet(Message::new("ask-17-same")),
        }
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 => Hint::Words(Message::new("ask-17-hint-1")),
            2 => Hint::Words(Message::new("ask-17-hint-2")),
            _ => Hint::Worked(vec![
                weight(q.water, WORKED_C.0, Message::new("ask-17-floats")),
                weight(q.water, WORKED_C.1, Message::new("ask-17-sinks")),
            ]),
        }
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let pair = pair(q);
        Explained {
            shown: named(pair.warmer),
            sum: vec![
                weight(q.water, pair.colder.0, Message::new("ask-17-floats")),
                weight(q.water, pair.warmer.0, Message::new("ask-17-sinks")),
            ],
            fits: None,
            notes: vec![Message::new("ask-17-why")],
            own_words: Message::new("ask-17-own-words"),
        }
    }
}
