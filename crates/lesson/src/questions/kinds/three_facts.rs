//! Kind 104 (even water): no layer in this water; which three facts show it? Six lines, all true of this cast; three of
//! them would not be true of a layered one.

use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question, Ticks,
    Uncovers,
};
use crate::questions::ranges::almost;
use crate::questions::say::Numbers;
use crate::questions::text::{Fields, field};
use crate::questions::water::{SLACK, Water};
use layercast_core::{Message, State};

/// Lines that show it, and lines to choose.
const WANTED: usize = 3;

/// Water within this range of 4 °C hardly changes its weight with a degree (methods 4: within about 1.9 °C).
const NEAR_DENSEST_C: (f64, f64) = (2.1, 5.9);
/// Warmest and coldest closer than this show even water, °C.
const EVEN_C: f64 = 1.0;

const ALSO_LAYERED: &str = "true_of_layered_water_too";

/// Kind 104.
pub(crate) struct ThreeFacts;

/// A line: its field, its words, whether it shows that there is no layer.
#[derive(Clone, Debug, PartialEq)]
struct Fact {
    id: &'static str,
    words: Message,
    shows: bool,
}

/// The six lines, in the order they are asked.
fn facts(water: &Water) -> Option<Vec<Fact>> {
    let (first, last) = (water.levels().first()?, water.levels().last()?);
    let found = water.analysis();
    let steep = found.method.steep_c_per_m;
    let steepest = water.steps().iter().map(|s| s.cooling_c_per_m).fold(f64::NEG_INFINITY, f64::max);
    let steepest_size = water.steps().iter().map(|s| s.cooling_c_per_m.abs()).fold(0.0, f64::max);
    let temps = || water.levels().iter().map(|l| l.temp_c);
    let (high, low) = (temps().fold(f64::NEG_INFINITY, f64::max), temps().fold(f64::INFINITY, f64::min));
    let gain = found.facts.map_or(0.0, |f| f.density_gain);
    let drop = found.method.mixed_drop_c;
    let reference =
        water.between(crate::numbers::reference_m(found), crate::questions::water::Source::Mean)?;
    let never = temps().all(|t| t > reference - drop + SLACK);
    let no_step = steepest_size < steep - SLACK;
    let cold = low >= NEAR_DENSEST_C.0 && high <= NEAR_DENSEST_C.1;

    let mut shows: Vec<(&'static str, Message)> = Vec::new();
    if high - low <= EVEN_C + SLACK {
        let words = Message::new("ask-104-range").m("last", last.depth_m).number("apart", high - low, 1);
        shows.push(("range", words));
    }
    if no_step {
        let words = Message::new("ask-104-no-step").number("steep", steep, 0).number(
            "steepest",
            steepest.max(0.0),
            1,
        );
        shows.push(("steps", words));
    }
    shows.push(("weight", Message::new("ask-104-weight").number("gain", gain.abs(), 2)));
    if cold {
        shows.push(("densest", Message::new("ask-104-densest")));
    }
    if never {
        shows.push((
            "never",
            Message::new("ask-104-never")
                .number("drop", drop, 1)
                .m("depth", crate::numbers::reference_m(found)),
        ));
    }

    let mut also: Vec<(&'static str, Message)> =
        vec![("surface", Message::new("ask-104-surface").m("depth", first.depth_m).c("temp", first.temp_c))];
    if let Some(apart) = found.pairs.max_abs_c {
        also.push(("legs", Message::new("ask-104-legs").number("apart", apart, 1)));
    }
    also.push(("deepest", Message::new("ask-104-deepest").m("last", last.depth_m)));
    also.push(("count", Message::new("ask-104-count").count("n", water.levels().len())));

    if shows.len() < WANTED || also.len() < WANTED {
        return None;
    }
    let shows = shows.into_iter().take(WANTED).map(|(id, words)| Fact { id, words, shows: true });
    let also = also.into_iter().take(WANTED).map(|(id, words)| Fact { id, words, shows: false });
    let mut lines: Vec<Fact> = shows.zip(also).flat_map(|(a, b)| [a, b]).collect();
    // Another order in every water, always the same in this one.
    let turn = temps().map(|t| (t * 100.0).round() as i64).sum::<i64>().rem_euclid(6);
    lines.rotate_left(usize::try_from(turn).unwrap_or(0));
    Some(lines)
}

impl Kind for ThreeFacts {
    fn routes(&self) -> &'static [State] {
        &[State::Mixed]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: ALSO_LAYERED, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        if facts(water).is_some() { Ok(Vec::new()) } else { Err(Dropped::telling("ask-dropped-104")) }
    }

    fn plan(&self, q: &Question) -> Plan {
        let lines = facts(q.water).unwrap_or_default();
        let line = |fact: Fact| {
            let field = Field {
                input: Input::Fact(fact.words, Ticks::exactly(WANTED)),
                ..Field::number(fact.id, Message::new("ask-104-name"), None)
            };
            Line::new(Message::new("ask-sum-nothing"), vec![field])
        };
        Plan {
            ask: Message::new("ask-104"),
            lead: vec![Message::new("ask-104-lead")],
            parts: vec![lines.into_iter().map(line).collect()],
            notes: vec![Message::new("ask-104-note")],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let lines = facts(q.water).unwrap_or_default();
        let hits = lines.iter().filter(|f| f.shows && field(fields, f.id) == "1").count();
        match hits {
            WANTED => Judged::yes(Message::new("ask-104-yes"), Accepted::default()),
            2 => Judged { idea: Some(ALSO_LAYERED), ..almost(Message::new("ask-104-almost")) },
            n => Judged::idea(ALSO_LAYERED, Message::new("ask-104-no").count("hits", n)),
        }
    }

    fn hint(&self, _q: &Question, _part: usize, level: u8) -> Hint {
        Hint::Words(Message::new(match level {
            1 => "ask-104-hint-1",
            2 => "ask-104-hint-2",
            _ => "ask-104-hint-3",
        }))
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let lines = facts(q.water).unwrap_or_default();
        Explained {
            shown: Message::new("ask-104-shown"),
            sum: Vec::new(),
            fits: None,
            notes: lines.into_iter().filter(|f| f.shows).map(|f| f.words).collect(),
            own_words: Message::new("ask-104-own-words"),
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

    fn uncovers(&self, _q: &Question) -> Uncovers {
        Uncovers { all_steps: true, ..Uncovers::default() }
    }

    fn told_by_check(&self, _q: &Question) -> Option<Told> {
        Some(Told::Verdicts)
    }
}
