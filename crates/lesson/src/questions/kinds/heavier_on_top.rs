//! Kind 105 (unstable water): which readings show heavier water on top? Four pairs of this cast, all true; in one the upper
//! water is the heavier one.

use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question,
};
use crate::questions::say::Numbers;
use crate::questions::text::{Fields, field};
use crate::questions::water::Water;
use layercast_core::order::sort_by;
use layercast_core::{Level, Message, State};

const WARM_ON_TOP: &str = "warm_on_top_is_heavier";

/// Most levels that pairs are sought among.
const MOST_LEVELS: usize = 64;
/// Pairs to choose from.
const PAIRS: usize = 4;
/// Lighter on top by this much is beyond doubt, kg m⁻³.
const CLEARLY: f64 = 0.0;

/// Kind 105.
pub(crate) struct HeavierOnTop;

type Pair<'a> = (&'a Level, &'a Level);

/// The pair behind the state, and others whose upper water is the lighter one, as they stand in the list.
fn pairs<'a>(water: &Water<'a>) -> Option<(Pair<'a>, Vec<Pair<'a>>)> {
    let (upper, lower) = water.analysis().facts?.inversion_pair_m?;
    let right = (water.level(upper)?, water.level(lower)?);
    // Every level of a class's cast; of a very fine one as many, evenly.
    let stride = water.levels().len().div_ceil(MOST_LEVELS).max(1);
    let levels: Vec<&Level> = water.levels().iter().step_by(stride).collect();
    let mut others: Vec<Pair> = (0..levels.len())
        .flat_map(|i| (i + 1..levels.len()).map(move |j| (i, j)))
        .filter_map(|(i, j)| Some((*levels.get(i)?, *levels.get(j)?)))
        .filter(|(a, b)| b.density - a.density > CLEARLY && a.temp_c > b.temp_c)
        .collect();
    // The clearest first, no mark twice at the top.
    sort_by(&mut others, |a, b| (b.1.density - b.0.density).total_cmp(&(a.1.density - a.0.density)));
    let mut chosen: Vec<Pair> = Vec::new();
    for pair in others {
        let fresh = chosen.iter().all(|c| (c.0.depth_m - pair.0.depth_m).abs() > 1e-6);
        if fresh && chosen.len() < PAIRS - 1 {
            chosen.push(pair);
        }
    }
    if chosen.is_empty() {
        return None;
    }
    chosen.push(right);
    sort_by(&mut chosen, |a, b| {
        a.0.depth_m.total_cmp(&b.0.depth_m).then(a.1.depth_m.total_cmp(&b.1.depth_m))
    });
    Some((right, chosen))
}

fn value(pair: &Pair) -> String {
    format!("{:.2}-{:.2}", pair.0.depth_m, pair.1.depth_m)
}

fn words(pair: &Pair) -> Message {
    Message::new("ask-105-pair")
        .c("upper", pair.0.temp_c)
        .m("top", pair.0.depth_m)
        .c("lower", pair.1.temp_c)
        .m("bottom", pair.1.depth_m)
}

impl Kind for HeavierOnTop {
    fn routes(&self) -> &'static [State] {
        &[State::Unstable]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: WARM_ON_TOP, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        if pairs(water).is_some() { Ok(Vec::new()) } else { Err(Dropped::telling("ask-dropped-105")) }
    }

    fn plan(&self, q: &Question) -> Plan {
        let options = pairs(q.water).map(|(_, list)| list).unwrap_or_default();
        let options = options.iter().map(|p| (value(p), words(p))).collect();
        let field = Field {
            input: Input::Choice(options),
            ..Field::number("pair", Message::new("ask-105-name"), None)
        };
        Plan {
            ask: Message::new("ask-105"),
            lead: vec![Message::new("ask-105-lead")],
            parts: vec![vec![Line::new(Message::new("ask-105-label"), vec![field])]],
            notes: vec![Message::new("ask-105-note")],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let Some((right, _)) = pairs(q.water) else { return Judged::not_yet(Message::new("ask-105-warm")) };
        if field(fields, "pair") == value(&right) {
            Judged::yes(Message::new("ask-105-yes"), Accepted::default())
        } else {
            Judged::idea(WARM_ON_TOP, Message::new("ask-105-warm"))
        }
    }

    fn hint(&self, _q: &Question, _part: usize, level: u8) -> Hint {
        Hint::Words(Message::new(match level {
            1 => "ask-105-hint-1",
            2 => "ask-105-hint-2",
            _ => "ask-105-hint-3",
        }))
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let right = pairs(q.water).map(|(right, _)| right);
        let shown = right.as_ref().map_or_else(|| Message::new("ask-sum-nothing"), words);
        let notes = right.map(|(a, b)| {
            Message::new("ask-105-weights").number("upper", a.density, 2).number("lower", b.density, 2)
        });
        Explained {
            shown,
            sum: Vec::new(),
            fits: None,
            notes: notes.into_iter().chain([Message::new("ask-105-what-now")]).collect(),
            own_words: Message::new("ask-105-own-words"),
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

    fn told_by_check(&self, _q: &Question) -> Option<Told> {
        Some(Told::Verdicts)
    }
}
