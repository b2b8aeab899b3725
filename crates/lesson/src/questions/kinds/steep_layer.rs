//! Kind 11: where does the layer begin and end in which the water loses at least 1 °C per metre? Its outer marks
//! (methods 5.5, 5.6); each may be one interval off where that interval's rate cannot be told from the class's (5.10), and
//! those of the unbroken run by the mean, going down or coming up count too.
//!
//! Where no step reaches the rate, "none" is the answer; a run by one way of reading that is no more than chance is right
//! too. Where the layer touches the last reading, the answer is that it goes on below.
//! Of several layers the one with the steepest step is asked for; where a day's warming is all there is, that one.
//! An idea that leads to the same marks on this water changes nothing and is let be.

mod edges;

use self::edges::{Edges, drop_run, edges, is_edge, runs_by_chance, steep_c_per_m};
use super::steepest_step::{look, today_above_m};
use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, LAYERED, Line, Plan, Question,
    Uncovers,
};
use crate::questions::ranges::almost;
use crate::questions::say::{Numbers, bare, divided, in_c, line, result, stretch};
use crate::questions::text::{
    Fields, Measure, field, in_metres, joined, read, read_range, short, stretch_in_metres,
};
use crate::questions::water::Water;
use crate::view::SumLine;
use layercast_core::{Message, State};

const DROP_OF_ONE: &str = "one_degree_in_a_step";

/// It begins and ends in the cast.
const INSIDE: &str = "inside";
/// It goes on below the last reading.
const ON: &str = "on";
/// No step reaches the rate.
const NONE: &str = "none";

/// Kind 11.
pub(crate) struct SteepLayer;

/// The class's own answer as a stretch, metres; `None` where no step reaches the rate.
pub(crate) fn class_layer_m(water: &Water) -> Option<(f64, f64)> {
    edges(water).map(|e| (e.top_m, e.bottom_m))
}

/// The layer touches the last reading: the deep layer was not reached.
pub(crate) fn is_cut_off(water: &Water) -> bool {
    edges(water).is_some_and(|e| e.cut_off)
}

impl SteepLayer {
    fn told(q: &Question, id: &'static str) -> Message {
        Message::new(id).number("steep", steep_c_per_m(q.water), 1)
    }

    fn judge_none(q: &Question) -> Judged {
        if edges(q.water).is_none() {
            return Judged::yes(Self::told(q, "ask-11-yes-none"), Accepted::default());
        }
        // Half-metre steps hardly ever lose a whole degree.
        if drop_run(q.water).is_none() {
            return Judged::idea(DROP_OF_ONE, Self::told(q, "ask-11-no-drop"));
        }
        Judged::not_yet(Self::told(q, "ask-11-no-none"))
    }

    fn judge_on(q: &Question, fields: &Fields) -> Judged {
        let text = field(fields, "from");
        let Some(typed) = read(text, None, Measure::Length).filter(|t| !t.unit_is_wrong) else {
            return Judged::slip(Message::new("ask-slip-number").text("yours", short(text)));
        };
        let Some(top_m) = q.water.meant_mark(typed.value) else {
            return Judged::slip(Message::new("ask-slip-no-marks").text("yours", short(text)));
        };
        let told = |id: &'static str| Self::told(q, id).message("yours", in_metres(text));
        let Some(edges) = edges(q.water) else { return Judged::not_yet(told("ask-11-no-rate")) };
        if !is_edge(&edges.bottoms_m, q.water.last_m()) {
            return Judged::not_yet(told("ask-11-not-on"));
        }
        if is_edge(&edges.tops_m, top_m) {
            let accepted = Accepted { stretch_m: Some((top_m, q.water.last_m())), ..Accepted::default() };
            return Judged::yes(told("ask-11-yes-on"), accepted);
        }
        almost(told("ask-11-top"))
    }

    fn judge_inside(q: &Question, fields: &Fields) -> Judged {
        let (from, to) = (field(fields, "from"), field(fields, "to"));
        let slip = |id: &'static str| Judged::slip(Message::new(id).text("yours", short(&joined(from, to))));
        let Some((a, b)) = read_range(from, to) else { return slip("ask-slip-two-depths") };
        let meant = q.water.meant_mark(a).zip(q.water.meant_mark(b)).filter(|(a, b)| b > a);
        let Some(given) = meant else { return slip("ask-slip-no-marks") };
        let told = |id: &'static str| Self::told(q, id).message("yours", stretch_in_metres(from, to));
        let found = edges(q.water);
        // Somebody who saw it in the own readings is not wrong: the explanation says that it is no more than chance.
        if found.is_none()
            && runs_by_chance(q.water).iter().any(|r| is_edge(&[r.0], given.0) && is_edge(&[r.1], given.1))
        {
            let accepted = Accepted { stretch_m: Some(given), ..Accepted::default() };
            return Judged::yes(told("ask-11-yes"), accepted);
        }
        let (top, bottom) = found
            .as_ref()
            .map_or((false, false), |e| (is_edge(&e.tops_m, given.0), is_edge(&e.bottoms_m, given.1)));
        let at_the_last = found.as_ref().is_some_and(|e| e.cut_off) && is_edge(&[q.water.last_m()], given.1);
        if top && bottom {
            if at_the_last {
                return almost(told("ask-11-cut-off"));
            }
            let accepted = Accepted { stretch_m: Some(given), ..Accepted::default() };
            return Judged::yes(told("ask-11-yes"), accepted);
        }
        let is_idea =
            drop_run(q.water).is_some_and(|run| is_edge(&[run.0], given.0) && is_edge(&[run.1], given.1));
        if is_idea {
            return Judged::idea(DROP_OF_ONE, told("ask-11-drop"));
        }
        if today_above_m(q.water).is_some_and(|below| given.1 <= below + 1e-6) {
            return Judged::not_yet(told("ask-11-today"));
        }
        match (top, bottom) {
            (true, false) => almost(told("ask-11-bottom")),
            (false, true) => almost(told("ask-11-top")),
            _ => Judged::not_yet(told("ask-11-no")),
        }
    }

    /// "1.2 ÷ 0.5 = 2.4, at least 1.0" for the steps at either side of the edges.
    fn sum(water: &Water, edges: &Edges) -> Vec<SumLine> {
        let steep = steep_c_per_m(water);
        let steps = water.steps();
        let beside = |s: &&layercast_core::Step| {
            let at = |z: f64| is_edge(&[z], s.top_m) || is_edge(&[z], s.bottom_m);
            at(edges.top_m) || at(edges.bottom_m)
        };
        (steps.iter().filter(beside))
            .map(|s| {
                let rate = water.rate(s);
                let place = stretch(Message::new("ask-11-sum-step"), "from", "to", (s.top_m, s.bottom_m), 1);
                let enough = if rate >= steep - 1e-9 { "ask-11-sum-enough" } else { "ask-11-sum-less" };
                let value = Message::new("ask-value-c-per-m").message("value", bare(rate));
                line(place, value, Message::new(enough).number("steep", steep, 1))
            })
            .collect()
    }
}

impl Kind for SteepLayer {
    fn routes(&self) -> &'static [State] {
        LAYERED
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: DROP_OF_ONE, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        if water.steps().is_empty() { Err(Dropped::plain("ask-dropped-103")) } else { Ok(Vec::new()) }
    }

    fn plan(&self, q: &Question) -> Plan {
        let number = |id, name, after, word| Field {
            grip: Some(Message::new(word)),
            ..Field::number(id, Message::new(name), Some(Message::new(after)))
        };
        let place = Line::new(
            Message::new("ask-label-from"),
            vec![
                number("from", "ask-name-from", "ask-after-m-to", "ask-11-grip-top").unless("layer", &[NONE]),
                number("to", "ask-name-to", "ask-after-m", "ask-11-grip-bottom").unless("layer", &[NONE, ON]),
            ],
        );
        let options = vec![
            (INSIDE, Message::new("ask-11-inside")),
            (ON, Message::new("ask-11-on")),
            (NONE, Self::told(q, "ask-11-none")),
        ];
        let layer = Field {
            input: Input::Preset(options),
            start: INSIDE.to_owned(),
            ..Field::number("layer", Message::new("ask-11-name-layer"), None)
        };
        let below = look(q.water);
        Plan {
            ask: Self::told(q, "ask-11"),
            lead: std::iter::once(Message::new("ask-11-lead")).chain(below).collect(),
            parts: vec![vec![place, Line::new(Message::new("ask-11-label-layer"), vec![layer])]],
            notes: vec![Message::new("ask-8-note"), Message::new("ask-11-note")],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        match field(fields, "layer") {
            NONE => Self::judge_none(q),
            ON => Self::judge_on(q, fields),
            _ => Self::judge_inside(q, fields),
        }
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 => Hint::Words(Self::told(q, "ask-11-hint-1")),
            2 => Hint::Words(Self::told(q, "ask-11-hint-2")),
            _ => Hint::Worked(worked(q.water)),
        }
    }

    fn class_answer(&self, q: &Question, _part: usize) -> Accepted {
        Accepted { stretch_m: class_layer_m(q.water), ..Accepted::default() }
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let own_words = Self::told(q, "ask-11-own-words");
        let Some(edges) = edges(q.water) else {
            let fastest = (q.water.steps().iter()).map(|s| q.water.rate(s)).fold(0.0, f64::max);
            // A run that is no more than chance is none.
            let reaches = fastest >= steep_c_per_m(q.water) - 1e-9;
            let id = if reaches { "ask-11-chance" } else { "ask-11-fastest" };
            let note = Self::told(q, id).message("value", bare(fastest));
            return Explained {
                shown: Self::told(q, "ask-11-value-none"),
                sum: Vec::new(),
                fits: None,
                notes: vec![note],
                own_words,
            };
        };
        let given = q.part(0).and_then(|a| a.stretch_m).unwrap_or((edges.top_m, edges.bottom_m));
        let id = if edges.cut_off { "ask-11-value-on" } else { "ask-value-from-to" };
        let fits = (edges.tops_m.len() > 1 || edges.bottoms_m.len() > 1).then(|| {
            let ends = |list: &[f64]| {
                let low = list.iter().copied().fold(f64::INFINITY, f64::min);
                (low, list.iter().copied().fold(f64::NEG_INFINITY, f64::max))
            };
            let (tops, bottoms) = (ends(&edges.tops_m), ends(&edges.bottoms_m));
            let said = stretch(Self::told(q, "ask-11-fits"), "top_from", "top_to", tops, 1);
            stretch(said, "bottom_from", "bottom_to", bottoms, 1)
        });
        Explained {
            shown: stretch(Message::new(id), "from", "to", given, 1),
            sum: Self::sum(q.water, &edges),
            fits,
            notes: edges
                .cut_off
                .then(|| Message::new("ask-11-why-on").m("last", q.water.last_m()))
                .into_iter()
                .collect(),
            own_words,
        }
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn shows_means(&self) -> bool {
        true
    }

    fn uncovers(&self, _q: &Question) -> Uncovers {
        Uncovers { deep_layer: true, ..Uncovers::default() }
    }

    fn told_by_check(&self, _q: &Question) -> Option<Told> {
        Some(Told::DeepLayer)
    }
}

/// One step of another water compared with the rate: here every step tells.
fn worked(water: &Water) -> Vec<SumLine> {
    let steep = steep_c_per_m(water);
    let less = 0.8 * steep;
    let (rate, id) = (less, "ask-11-sum-less");
    vec![
        line(
            stretch(Message::new("ask-11-sum-step"), "from", "to", (40.0, 40.5), 1),
            in_c(rate / 2.0),
            Message::new("ask-made-up"),
        ),
        result(divided(rate / 2.0, 0.5), bare(rate), Message::new(id).number("steep", steep, 1)),
    ]
}
