//! Kind 22: where is oxygen low, and why? With oxygen read at the marks: the two marks between which it falls below 5 mg/L
//! and below 2 mg/L (or, where it does not, the mark with the least). Without: a prediction that is kept, and a look at the
//! own words.
//!
//! 5 and 2 mg/L are rough limits for fish and for most other animals, from memory.

use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Part, Plan, Question,
};
use crate::questions::ranges::number;
use crate::questions::say::{Numbers, in_m, line, result, rounded, stretch};
use crate::questions::text::{Fields, Measure, field, read_range, short, stretch_in_metres};
use crate::questions::water::{SLACK, Water};
use crate::questions::why::quoted_words;
use layercast_core::{Message, State};

const COLD_HOLDS_MORE: &str = "cold_holds_more";

/// Limits, mg/L.
const LIMITS_MG_L: [f64; 2] = [5.0, 2.0];
/// Fewest depths with oxygen that make a column.
const FEWEST: usize = 3;
/// The least may be so much above the least that was read, mg/L (methods 9: values settle to 0.2).
const GIVE_MG_L: f64 = 0.2;
/// Two depths closer than this are one, metres.
const SAME_M: f64 = 0.05;
/// Ids of the two depths of each limit.
const PAIRS: [(&str, &str); 2] = [("from", "to"), ("from2", "to2")];
/// What one may find in the own words.
const POINTS: [(&str, &str); 4] = [
    ("brings", "ask-22-point-brings"),
    ("uses", "ask-22-point-uses"),
    ("stirs", "ask-22-point-stirs"),
    ("holds", "ask-22-point-holds"),
];

/// Kind 22.
pub(crate) struct OxygenLow;

/// What is asked before the why.
enum Mode {
    /// Limits that the column falls below, each with its two marks.
    Falls(Vec<(f64, (f64, f64))>),
    /// It falls below none: where is the least?
    Least(f64),
    /// No oxygen was read.
    Guess,
}

fn mode(water: &Water) -> Mode {
    let read = water.context.oxygen_mg_l;
    if read.len() < FEWEST {
        return Mode::Guess;
    }
    let falls = |limit: f64| {
        let pairs = read.iter().zip(read.iter().skip(1));
        let mut below = pairs.filter(|(a, b)| a.1 >= limit - SLACK && b.1 < limit - SLACK);
        below.next().map(|(a, b)| (limit, (a.0, b.0)))
    };
    let falls: Vec<_> = LIMITS_MG_L.into_iter().filter_map(falls).collect();
    if falls.is_empty() {
        Mode::Least(read.iter().map(|r| r.1).fold(f64::INFINITY, f64::min))
    } else {
        Mode::Falls(falls)
    }
}

/// Parts before the two of words.
fn judged_parts(water: &Water) -> usize {
    match mode(water) {
        Mode::Falls(falls) => falls.len(),
        Mode::Least(_) | Mode::Guess => 1,
    }
}

fn at(water: &Water, depth_m: f64) -> f64 {
    let read = water.context.oxygen_mg_l.iter();
    read.min_by(|a, b| (a.0 - depth_m).abs().total_cmp(&(b.0 - depth_m).abs())).map_or(0.0, |r| r.1)
}

fn from_to(pair: (&'static str, &'static str)) -> Vec<Field> {
    let after = |id: &'static str| Some(Message::new(id));
    vec![
        Field::number(pair.0, Message::new("ask-name-from"), after("ask-after-m-and")),
        Field::number(pair.1, Message::new("ask-name-to"), after("ask-after-m")),
    ]
}

fn first_parts(water: &Water) -> Vec<Part> {
    match mode(water) {
        Mode::Falls(falls) => {
            let mut parts = Vec::new();
            for ((limit, _), pair) in falls.iter().zip(PAIRS) {
                let label = Message::new("ask-22-label-falls").number("limit", *limit, 0);
                parts.push(vec![Line::new(label, from_to(pair))]);
            }
            parts
        }
        Mode::Least(_) => {
            let depth =
                Field::number("depth", Message::new("ask-name-depth"), Some(Message::new("ask-after-m")));
            vec![vec![Line::new(Message::new("ask-22-label-least"), vec![depth])]]
        }
        Mode::Guess => {
            let options = [
                ("bottom", "ask-22-bottom"),
                ("top", "ask-22-top"),
                ("middle", "ask-22-middle"),
                ("same", "ask-22-same"),
            ];
            let options = options.map(|(value, words)| (value.to_owned(), Message::new(words))).to_vec();
            let guess = Field {
                input: Input::Choice(options),
                ..Field::number("where", Message::new("ask-22-name-where"), None)
            };
            vec![vec![Line::new(Message::new("ask-22-label-guess"), vec![guess])]]
        }
    }
}

impl Kind for OxygenLow {
    fn routes(&self) -> &'static [State] {
        &[State::Stratified, State::Weak, State::Inverse]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: COLD_HOLDS_MORE, part: 0 }]
    }

    fn choose(&self, _water: &Water) -> Result<Vec<f64>, Dropped> {
        Ok(Vec::new())
    }

    fn plan(&self, q: &Question) -> Plan {
        let mut parts = first_parts(q.water);
        let starters = ["ask-22-start-1", "ask-22-start-2"].map(Message::new).to_vec();
        let why = Field::prose("why", Message::new("ask-22-name-why"), starters);
        parts.push(vec![Line::new(Message::new("ask-22-label-why"), vec![why])]);
        let points = POINTS.map(|(id, words)| {
            Line::new(Message::new("ask-why-label-check"), vec![Field::self_check(id, Message::new(words))])
        });
        parts.push(points.to_vec());
        let guess = matches!(mode(q.water), Mode::Guess);
        Plan {
            ask: Message::new(if guess { "ask-22-guess" } else { "ask-22" }),
            lead: vec![Message::new(if guess { "ask-22-lead-guess" } else { "ask-22-lead" })],
            parts,
            notes: vec![Message::new("ask-why-note-kept")],
        }
    }

    fn judge(&self, q: &Question, part: usize, fields: &Fields) -> Judged {
        match part.checked_sub(judged_parts(q.water)) {
            Some(0) => return Judged::kept(quoted_words(fields, "why")),
            Some(_) => return Judged::kept(Message::new("ask-why-checked")),
            None => {}
        }
        match mode(q.water) {
            Mode::Falls(falls) => match falls.get(part).zip(PAIRS.get(part)) {
                Some(((limit, pair), ids)) => judge_pair(q.water, *limit, *pair, *ids, fields),
                None => Judged::not_yet(Message::new("ask-22-gone")),
            },
            Mode::Least(least) => judge_least(q.water, least, fields),
            Mode::Guess => match field(fields, "where") {
                "top" => {
                    Judged { idea: Some(COLD_HOLDS_MORE), ..Judged::kept(Message::new("ask-22-half-right")) }
                }
                _ => Judged::kept(Message::new("ask-22-guess-kept")),
            },
        }
    }

    fn is_judged(&self, q: &Question, part: usize) -> bool {
        part < judged_parts(q.water) && !matches!(mode(q.water), Mode::Guess)
    }

    fn follows(&self, q: &Question, part: usize) -> bool {
        part >= judged_parts(q.water)
    }

    fn hint(&self, q: &Question, part: usize, level: u8) -> Hint {
        let words = |id: &'static str| Hint::Words(Message::new(id));
        match (part < judged_parts(q.water), mode(q.water), level) {
            (true, Mode::Falls(_), 1) => words("ask-22-falls-hint-1"),
            (true, Mode::Falls(_), 2) => words("ask-22-falls-hint-2"),
            // Another water, another limit.
            (true, Mode::Falls(_), _) => Hint::Worked(vec![
                line(
                    Message::new("ask-22-worked-at").m("depth", 3.0),
                    mg_l(8.4),
                    Message::new("ask-made-up"),
                ),
                line(
                    Message::new("ask-22-worked-at").m("depth", 4.0),
                    mg_l(6.1),
                    Message::new("ask-made-up"),
                ),
                result(
                    Message::new("ask-22-worked-below").number("limit", 7.0, 0),
                    in_m(4.0),
                    Message::new("ask-22-worked-gloss"),
                ),
            ]),
            (true, Mode::Least(_), 1) => words("ask-22-least-hint-1"),
            (true, Mode::Least(_), 2) => words("ask-22-least-hint-2"),
            (true, Mode::Least(_), _) => words("ask-22-least-hint-3"),
            (_, _, 1) => words("ask-22-why-hint-1"),
            (_, _, 2) => words("ask-22-why-hint-2"),
            _ => words("ask-22-why-hint-3"),
        }
    }

    fn class_answer(&self, q: &Question, part: usize) -> Accepted {
        match mode(q.water) {
            Mode::Falls(falls) => Accepted { stretch_m: falls.get(part).map(|f| f.1), ..Accepted::default() },
            _ => Accepted::default(),
        }
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let blank = Explained {
            shown: Message::new("ask-22-because"),
            sum: Vec::new(),
            fits: None,
            notes: Vec::new(),
            own_words: Message::new("ask-22-own-words"),
        };
        if part >= judged_parts(q.water) {
            return blank;
        }
        match mode(q.water) {
            Mode::Falls(falls) => {
                let Some((limit, (a, b))) = falls.get(part).copied() else { return blank };
                let row = |z: f64| {
                    line(
                        Message::new("ask-22-worked-at").m("depth", z),
                        mg_l(at(q.water, z)),
                        Message::new("ask-sum-nothing"),
                    )
                };
                Explained {
                    shown: stretch(Message::new("ask-value-from-to"), "from", "to", (a, b), 1),
                    sum: vec![row(a), row(b)],
                    notes: vec![Message::new("ask-22-limit").number("limit", limit, 0)],
                    ..blank
                }
            }
            Mode::Least(least) => Explained { shown: mg_l(least), ..blank },
            Mode::Guess => blank,
        }
    }
}

fn mg_l(value: f64) -> Message {
    Message::new("ask-22-mg-l").number("value", rounded(value, 1), 1)
}

fn judge_pair(
    water: &Water,
    limit: f64,
    pair: (f64, f64),
    ids: (&'static str, &'static str),
    fields: &Fields,
) -> Judged {
    let (from, to) = (field(fields, ids.0), field(fields, ids.1));
    let Some((a, b)) = read_range(from, to) else {
        let text = crate::questions::text::joined(from, to);
        return Judged::slip(Message::new("ask-slip-two-depths").text("yours", short(&text)));
    };
    let told = |id: &'static str| {
        Message::new(id).message("yours", stretch_in_metres(from, to)).number("limit", limit, 0)
    };
    let is = |x: f64, z: f64| (x - z).abs() <= SAME_M + SLACK;
    if is(a, pair.0) && is(b, pair.1) {
        let accepted = Accepted { stretch_m: Some(pair), ..Accepted::default() };
        return Judged::yes(told("ask-22-pair-yes"), accepted);
    }
    let holds = a <= pair.0 + SLACK && b >= pair.1 - SLACK;
    let marks = [a, b].iter().all(|x| water.context.oxygen_mg_l.iter().any(|r| is(*x, r.0)));
    Judged::not_yet(told(match (holds, marks) {
        (true, _) => "ask-22-pair-long",
        (false, true) => "ask-22-pair-no",
        (false, false) => "ask-22-pair-no-mark",
    }))
}

fn judge_least(water: &Water, least: f64, fields: &Fields) -> Judged {
    let typed = match number(fields, "depth", Measure::Length) {
        Ok(typed) => typed,
        Err(slip) => return *slip,
    };
    let told = |id: &'static str| Message::new(id).text("yours", short(field(fields, "depth")));
    let near = |r: &&(f64, f64)| (r.0 - typed.value).abs() <= SAME_M + SLACK;
    match water.context.oxygen_mg_l.iter().find(near) {
        Some(read) if read.1 <= least + GIVE_MG_L + SLACK => {
            Judged::yes(told("ask-22-least-yes"), Accepted { value: Some(read.0), ..Accepted::default() })
        }
        Some(_) => Judged::not_yet(told("ask-22-least-no")),
        None => Judged::not_yet(told("ask-22-least-no-mark")),
    }
}
