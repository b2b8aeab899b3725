//! Kind 108 (only a layer near the surface): will it be here tomorrow morning? Its heat beside what a night takes: water
//! loses some 50 W/m² in a mild, cloudy night and 250 W/m² in a clear and windy one (from memory),
//! which in twelve hours is 2 to 11 MJ/m².

use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question,
};
use crate::questions::say::{line, result};
use crate::questions::text::{Fields, field};
use crate::questions::water::Water;
use crate::questions::why::figures;
use crate::view::SumLine;
use layercast_core::column::to_mix::to_mix;
use layercast_core::{Message, State};

const LAYERS_STAY: &str = "layers_stay";

/// Hours of a night.
const HOURS: f64 = 12.0;
/// What water loses at night, W m⁻²: little, and much.
const WATTS: (f64, f64) = (50.0, 250.0);
/// Warmer than below by at least this, °C.
const LEAST_C: f64 = 0.5;

/// Kind 108.
pub(crate) struct Tomorrow;

/// MJ m⁻² that a night takes at so many W m⁻².
fn night_mj(watts: f64) -> f64 {
    watts * HOURS * 3600.0 / 1e6
}

/// Heat of today's warm layer over the water below it, MJ m⁻².
fn layer_mj(water: &Water) -> Option<f64> {
    let today = water.analysis().warm_layer_today.filter(|w| w.only)?;
    let levels = water.levels();
    let end = levels.partition_point(|l| l.depth_m <= today.bottom_m + 1e-6);
    let found = to_mix(levels.get(..end)?, LEAST_C, water.analysis().method.density)?;
    (!found.warms).then_some(found.heat_j_m2 / 1e6)
}

/// What is right: gone after any night, or it hangs on the night. A layer that outlasts even a strong one is not asked for.
fn right(water: &Water) -> Option<&'static [&'static str]> {
    match layer_mj(water)? {
        mj if mj <= night_mj(WATTS.0) => Some(&["gone"]),
        mj if mj <= night_mj(WATTS.1) => Some(&["depends", "gone"]),
        _ => None,
    }
}

fn words(value: &str) -> Message {
    Message::new(match value {
        "gone" => "ask-108-gone",
        "depends" => "ask-108-depends",
        _ => "ask-108-here",
    })
}

fn mj(value: f64) -> Message {
    let (value, decimals) = figures(value);
    Message::new("ask-19-mj").number("value", value, decimals)
}

fn night(watts: f64, gloss: &'static str) -> SumLine {
    let left = Message::new("ask-108-night").number("watts", watts, 0).number("hours", HOURS, 0);
    line(left, mj(night_mj(watts)), Message::new(gloss))
}

impl Kind for Tomorrow {
    fn routes(&self) -> &'static [State] {
        &[State::Stratified, State::Weak]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: LAYERS_STAY, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        match right(water) {
            Some(_) => Ok(Vec::new()),
            None => Err(Dropped::telling("ask-dropped-108")),
        }
    }

    fn plan(&self, _q: &Question) -> Plan {
        let options = ["here", "depends", "gone"].map(|value| (value.to_owned(), words(value))).to_vec();
        let field = Field {
            input: Input::Choice(options),
            ..Field::number("morning", Message::new("ask-108-name"), None)
        };
        Plan {
            ask: Message::new("ask-108"),
            lead: ["ask-108-lead", "ask-note-watt"].map(Message::new).to_vec(),
            parts: vec![vec![Line::new(Message::new("ask-108-label"), vec![field])]],
            notes: Vec::new(),
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let chosen = field(fields, "morning");
        if right(q.water).is_some_and(|right| right.contains(&chosen)) {
            return Judged::yes(Message::new("ask-108-yes"), Accepted::default());
        }
        match chosen {
            "here" => Judged::idea(LAYERS_STAY, Message::new("ask-108-stays")),
            _ => Judged::not_yet(Message::new("ask-108-no")),
        }
    }

    fn hint(&self, _q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 => Hint::Words(Message::new("ask-108-hint-1")),
            2 => Hint::Words(Message::new("ask-108-hint-2")),
            // Another layer: half a metre that is 2 °C warmer.
            _ => Hint::Worked(vec![
                result(Message::new("ask-108-worked-sum"), mj(4.18), Message::new("ask-made-up")),
                night(100.0, "ask-108-a-night"),
            ]),
        }
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let right = right(q.water).and_then(|r| r.first()).copied().unwrap_or_default();
        let layer = layer_mj(q.water).unwrap_or_default();
        Explained {
            shown: words(right),
            sum: vec![
                line(Message::new("ask-108-layer"), mj(layer), Message::new("ask-108-layer-gloss")),
                night(WATTS.0, "ask-108-mild"),
                night(WATTS.1, "ask-108-clear"),
            ],
            fits: None,
            notes: vec![Message::new("ask-108-why")],
            own_words: Message::new("ask-108-own-words"),
        }
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn is_hidden_before_marks(&self) -> bool {
        true
    }
}
