//! Kind 27: when or where would this answer mean nothing? Prompts from the own cast, own words, then a look at them. Never a
//! verdict.

use crate::questions::kind::{
    Accepted, Dropped, EVERY_WATER, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question,
};
use crate::questions::say::Numbers;
use crate::questions::text::Fields;
use crate::questions::water::{SLACK, Water};
use crate::questions::why::quoted_words;
use layercast_core::{Message, State};

/// So near to the bed a probe may stand in mud, metres (methods 3.4: stop 0.5 m above).
const NEAR_BED_M: f64 = 0.5;
/// What one may find in the own words.
const POINTS: [(&str, &str); 5] = [
    ("below", "ask-27-point-below"),
    ("time", "ask-27-point-time"),
    ("drift", "ask-27-point-drift"),
    ("mud", "ask-27-point-mud"),
    ("place", "ask-27-point-place"),
];

/// Kind 27.
pub(crate) struct MeansNothing;

/// What the cast itself says about where it ends.
fn prompts(water: &Water) -> Vec<Message> {
    let (pairs, last_m) = (&water.analysis().pairs, water.last_m());
    let mut list = Vec::new();
    list.push(match water.context.cast.bed_m {
        Some(bed_m) if bed_m - last_m <= NEAR_BED_M + SLACK => {
            Message::new("ask-27-near-bed").m("last", last_m).m("bed", bed_m)
        }
        Some(bed_m) => Message::new("ask-27-above-bed").m("last", last_m).m("bed", bed_m),
        None => Message::new("ask-27-no-bed").m("last", last_m),
    });
    list.push(if pairs.count == 0 {
        Message::new("ask-27-once")
    } else if pairs.systematic {
        Message::new("ask-27-legs-apart").c("mean", pairs.mean_c.unwrap_or_default().abs())
    } else {
        Message::new("ask-27-legs-alike").count("count", pairs.count)
    });
    let doubts = water.analysis().checked.iter().filter(|c| c.doubt.is_some()).count();
    if doubts > 0 {
        list.push(Message::new("ask-27-doubts").count("count", doubts));
    }
    list
}

impl Kind for MeansNothing {
    fn routes(&self) -> &'static [State] {
        EVERY_WATER
    }

    fn ideas(&self) -> &'static [Idea] {
        &[]
    }

    fn choose(&self, _water: &Water) -> Result<Vec<f64>, Dropped> {
        Ok(Vec::new())
    }

    fn plan(&self, q: &Question) -> Plan {
        let starters = ["ask-27-start-1", "ask-27-start-2", "ask-27-start-3"].map(Message::new).to_vec();
        let words = Field::prose("words", Message::new("ask-27-name"), starters);
        let points = POINTS.map(|(id, words)| {
            Line::new(Message::new("ask-why-label-check"), vec![Field::self_check(id, Message::new(words))])
        });
        Plan {
            ask: Message::new("ask-27"),
            lead: std::iter::once(Message::new("ask-27-lead")).chain(prompts(q.water)).collect(),
            parts: vec![vec![Line::new(Message::new("ask-27-label"), vec![words])], points.to_vec()],
            notes: vec![Message::new("ask-why-note-kept")],
        }
    }

    fn judge(&self, _q: &Question, part: usize, fields: &Fields) -> Judged {
        Judged::kept(match part {
            0 => quoted_words(fields, "words"),
            _ => Message::new("ask-why-checked"),
        })
    }

    fn is_judged(&self, _q: &Question, _part: usize) -> bool {
        false
    }

    fn follows(&self, _q: &Question, part: usize) -> bool {
        part > 0
    }

    fn hint(&self, _q: &Question, _part: usize, level: u8) -> Hint {
        Hint::Words(Message::new(match level {
            1 => "ask-27-hint-1",
            2 => "ask-27-hint-2",
            _ => "ask-27-hint-3",
        }))
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, _q: &Question, part: usize) -> Explained {
        Explained {
            shown: Message::new("ask-27-shown"),
            sum: Vec::new(),
            fits: None,
            notes: if part == 1 { vec![Message::new("ask-27-end")] } else { Vec::new() },
            own_words: Message::new("ask-27-own-words"),
        }
    }
}
