//! Kind 18: the same 1 °C, where does it make water harder to mix, and how many times? The gain in weight per degree cooler
//! at the own surface and at the own bottom; of stated waters where the own ones are too near to one another or to 4 °C.
//! The four weights stand in the question, so the times are a division.

use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question, only,
};
use crate::questions::say::{Numbers, line, minus, result, rounded};
use crate::questions::text::{Fields, field, short};
use crate::questions::water::{SLACK, Water};
use crate::questions::why::{Bare, bare_number, within};
use crate::view::SumLine;
use layercast_core::{Message, State};

const SAME: &str = "a_degree_is_a_degree";
const COLDER_HARDER: &str = "colder_is_harder";
const UPSIDE_DOWN: &str = "upside_down";

/// A number of times may be this many times too great or too small.
const TIMES: f64 = 1.5;
/// At or below this the colder water is no longer the heavier one for sure, °C.
const LEAST_C: f64 = 5.0;
/// The stated waters, °C: a lake in summer.
const STATED_C: (f64, f64) = (25.0, 6.0);
/// For the worked hint, °C: a lake in autumn.
const WORKED_C: (f64, f64) = (18.0, 10.0);

/// Kind 18.
pub(crate) struct SameDegree;

/// Warmer and colder water, °C, and their depths where they are of the cast.
#[derive(Clone, Copy)]
struct Two {
    upper_c: f64,
    lower_c: f64,
    depths_m: Option<(f64, f64)>,
}

fn two(water: &Water) -> Two {
    let own = || {
        let (first, last) = (water.levels().first()?, water.levels().last()?);
        let two = Two {
            upper_c: first.temp_c,
            lower_c: last.temp_c,
            depths_m: Some((first.depth_m, last.depth_m)),
        };
        // The wrong ideas, 1 time and the division upside down, must lie outside of what is right.
        let told = two.lower_c >= LEAST_C - SLACK && times(water, two) > TIMES * TIMES;
        told.then_some(two)
    };
    own().unwrap_or(Two { upper_c: STATED_C.0, lower_c: STATED_C.1, depths_m: None })
}

/// kg of a cubic metre, as printed.
fn weighs(water: &Water, temp_c: f64) -> f64 {
    rounded(water.analysis().method.density.kg_m3(temp_c), 3)
}

/// What one degree cooler adds, kg.
fn gain(water: &Water, temp_c: f64) -> f64 {
    rounded(weighs(water, temp_c - 1.0) - weighs(water, temp_c), 3)
}

fn times(water: &Water, two: Two) -> f64 {
    gain(water, two.upper_c) / gain(water, two.lower_c)
}

fn weights(water: &Water, id: &'static str, temp_c: f64) -> Message {
    Message::new(id)
        .c("warm", temp_c)
        .c("cool", temp_c - 1.0)
        .number("heavy", weighs(water, temp_c - 1.0), 3)
        .number("light", weighs(water, temp_c), 3)
}

fn gain_line(water: &Water, temp_c: f64, gloss: Message) -> SumLine {
    let left = minus(weighs(water, temp_c - 1.0), weighs(water, temp_c), 3);
    line(left, Message::new("ask-17-kg").number("kg", gain(water, temp_c), 3), gloss)
}

fn sum(water: &Water, two: Two) -> Vec<SumLine> {
    let (upper, lower) = (gain(water, two.upper_c), gain(water, two.lower_c));
    let gloss = |temp_c: f64| Message::new("ask-18-gloss").c("warm", temp_c).c("cool", temp_c - 1.0);
    vec![
        gain_line(water, two.upper_c, gloss(two.upper_c)),
        gain_line(water, two.lower_c, gloss(two.lower_c)),
        result(
            Message::new("ask-18-divided").number("a", upper, 3).number("b", lower, 3),
            Message::new("ask-18-times").number("times", rounded(times(water, two), 1), 1),
            Message::new("ask-18-times-gloss"),
        ),
    ]
}

impl Kind for SameDegree {
    fn routes(&self) -> &'static [State] {
        &[State::Mixed, State::Weak, State::Stratified, State::Inverse]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[
            Idea { key: SAME, part: 0 },
            Idea { key: COLDER_HARDER, part: 0 },
            Idea { key: SAME, part: 1 },
            Idea { key: UPSIDE_DOWN, part: 1 },
        ]
    }

    fn choose(&self, _water: &Water) -> Result<Vec<f64>, Dropped> {
        Ok(Vec::new())
    }

    fn plan(&self, q: &Question) -> Plan {
        let two = two(q.water);
        let (ask, lead) = match two.depths_m {
            Some((top, bottom)) => {
                (Message::new("ask-18"), Message::new("ask-18-lead").m("top", top).m("bottom", bottom))
            }
            None => (Message::new("ask-18-two"), Message::new("ask-18-lead-stated")),
        };
        let options = ["upper", "lower", "same"].map(|value| {
            (
                value.to_owned(),
                Message::new(match (value, two.depths_m.is_some()) {
                    ("upper", true) => "ask-18-top",
                    ("upper", false) => "ask-18-warm",
                    ("lower", true) => "ask-18-bottom",
                    ("lower", false) => "ask-18-cold",
                    _ => "ask-18-same",
                }),
            )
        });
        let side = Field {
            input: Input::Choice(options.to_vec()),
            ..Field::number("side", Message::new("ask-18-name-side"), None)
        };
        let times =
            Field::number("times", Message::new("ask-18-name-times"), Some(Message::new("ask-18-after")));
        Plan {
            ask,
            lead: vec![
                lead,
                weights(q.water, "ask-18-weights", two.upper_c),
                weights(q.water, "ask-18-weights", two.lower_c),
            ],
            parts: vec![
                vec![Line::new(Message::new("ask-18-label-side"), vec![side])],
                vec![Line::new(Message::new("ask-18-label-times"), vec![times])],
            ],
            notes: vec![Message::new("ask-18-note")],
        }
    }

    fn judge(&self, q: &Question, part: usize, fields: &Fields) -> Judged {
        if part == 0 {
            return match field(fields, "side") {
                "upper" => Judged::yes(Message::new("ask-18-side-yes"), Accepted::default()),
                "lower" => Judged::idea(COLDER_HARDER, Message::new("ask-18-side-colder")),
                _ => Judged::idea(SAME, Message::new("ask-18-side-same")),
            };
        }
        let given = match bare_number(fields, "times") {
            Ok(Bare { value, .. }) => value.abs(),
            Err(slip) => return *slip,
        };
        let told = |id: &'static str| Message::new(id).text("yours", short(field(fields, "times")));
        let right = times(q.water, two(q.water));
        if within(given, right, TIMES) {
            let accepted = Accepted { value: Some(given), ..Accepted::default() };
            return Judged::yes(told("ask-18-times-yes"), accepted);
        }
        let mut ideas = Vec::new();
        if (given - 1.0).abs() <= 0.051 {
            ideas.push(SAME);
        }
        if within(given, 1.0 / right, 1.05) {
            ideas.push(UPSIDE_DOWN);
        }
        match only(&ideas) {
            Some(SAME) => Judged::idea(SAME, told("ask-18-times-same")),
            Some(UPSIDE_DOWN) => Judged::idea(UPSIDE_DOWN, told("ask-18-times-upside-down")),
            _ => Judged::not_yet(told("ask-18-times-no")),
        }
    }

    fn hint(&self, q: &Question, part: usize, level: u8) -> Hint {
        match (part, level) {
            (0, 1) => Hint::Words(Message::new("ask-18-side-hint-1")),
            (0, 2) => Hint::Words(Message::new("ask-18-side-hint-2")),
            (_, 1) => Hint::Words(Message::new("ask-18-times-hint-1")),
            (_, 2) => Hint::Words(Message::new("ask-18-times-hint-2")),
            _ => Hint::Worked(sum(q.water, Two { upper_c: WORKED_C.0, lower_c: WORKED_C.1, depths_m: None })),
        }
    }

    fn class_answer(&self, q: &Question, part: usize) -> Accepted {
        let value = (part == 1).then(|| times(q.water, two(q.water)));
        Accepted { value, ..Accepted::default() }
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let two = two(q.water);
        if part == 0 {
            return Explained {
                shown: Message::new(if two.depths_m.is_some() { "ask-18-top" } else { "ask-18-warm" }),
                sum: Vec::new(),
                fits: None,
                notes: vec![Message::new("ask-18-why")],
                own_words: Message::new("ask-18-own-words"),
            };
        }
        let right = times(q.water, two);
        let fits = Message::new("ask-18-fits").number("low", rounded(right / TIMES, 1), 1).number(
            "high",
            rounded(right * TIMES, 1),
            1,
        );
        Explained {
            shown: Message::new("ask-18-times").number("times", rounded(right, 1), 1),
            sum: sum(q.water, two),
            fits: Some(fits),
            notes: Vec::new(),
            own_words: Message::new("ask-18-own-words"),
        }
    }
}
