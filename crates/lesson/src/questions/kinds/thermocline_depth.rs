//! Kind 7: how deep is the thermocline in your water? Any depth inside the span of the steepest step (methods 5.8) is
//! right by the class's rule; the depth where density changes fastest is right by its own rule, if that rule is named.
//!
//! It starts at the mark of Profile: once it is checked there, that is the first answer. Under the ice it asks where the
//! water warms fastest, and where a day's warming is the only layer, how deep that lies.

use super::how_sure::{first_mark_texts, mark_texts, other_is_settled, was_tried};
use super::steepest_step::look_between;
use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, Uncovers, Verdict,
    only,
};
use crate::questions::ranges::almost;
use crate::questions::rules::{Named, is_fastest_of_a_leg, name, named, others};
use crate::questions::say::{Numbers, line, stretch};
use crate::questions::text::{Fields, Measure, field, in_metres, read, short};
use crate::questions::water::{FINEST_M, SLACK, Source, Steep, Water};
use layercast_core::{Message, Rule, Sought, State};

const TEMPERATURE: &str = "a_temperature";
const NEAR_SURFACE: &str = "near_surface_layer";
const BOTTOM: &str = "bottom";
const MIRROR: &str = "depth_as_height";

/// A range typed for a depth may be this many spans wide.
const WIDEST: f64 = 1.5;

/// A step of another, deeper water, where this one has none to show it on, metres.
pub(crate) const ANOTHER_WATER_M: (f64, f64) = (40.0, 41.0);

/// Kind 7.
pub(crate) struct ThermoclineDepth;

/// Ideas a depth shows.
fn ideas_of(water: &Water, steep: &Steep, x: f64, unit_is_wrong: bool) -> Vec<&'static str> {
    let last = water.last_m();
    let half_step = water.step_around(steep.value_m).map_or(0.25, |s| (s.bottom_m - s.top_m) / 2.0);
    let mut ideas = Vec::new();
    let temps = || water.levels().iter().map(|l| l.temp_c);
    let (cold, warm) = (temps().fold(f64::INFINITY, f64::min), temps().fold(f64::NEG_INFINITY, f64::max));
    let of_step = |z: f64| water.between(z, Source::Mean).unwrap_or(f64::NAN);
    let (a, b) = (of_step(steep.step_m.0), of_step(steep.step_m.1));
    let in_step = x >= a.min(b) - 0.05 && x <= a.max(b) + 0.05;
    if unit_is_wrong || (x > last + half_step && x >= cold - 0.5 && x <= warm + 0.5) || (in_step && x > last)
    {
        ideas.push(TEMPERATURE);
    }
    if unit_is_wrong {
        return ideas;
    }
    if !steep.today
        && let Some(today) = water.analysis().warm_layer_today
        && x >= today.top_m - SLACK
        && x <= today.bottom_m + SLACK
    {
        ideas.push(NEAR_SURFACE);
    }
    let last_half = water.steps().last().map_or(0.25, |s| (s.bottom_m - s.top_m) / 2.0);
    let bed = water.context.cast.bed_m.unwrap_or(last).max(last);
    if x >= last - last_half - SLACK && x <= bed + last_half + SLACK {
        ideas.push(BOTTOM);
    }
    // Near mid-depth a neighbour of the right step and its mirror cannot be told apart.
    let is_beside = (x - steep.value_m).abs() <= 3.0 * half_step + SLACK;
    if !is_beside && (x - (last - steep.value_m)).abs() <= half_step + SLACK {
        ideas.push(MIRROR);
    }
    ideas
}

/// Another published rule that gives this depth: inside that rule's own step.
fn other_rule(water: &Water, x: f64) -> Option<Rule> {
    let inside = |z: f64| {
        water
            .steps()
            .iter()
            .any(|s| s.top_m < z && z < s.bottom_m && x >= s.top_m - SLACK && x <= s.bottom_m + SLACK)
    };
    others(water, Sought::Thermocline).into_iter().find(|(_, z)| inside(*z)).map(|(rule, _)| rule)
}

impl ThermoclineDepth {
    fn ask(water: &Water, today: bool) -> &'static str {
        match (water.warms(), today) {
            (true, _) => "ask-7-warming",
            (false, true) => "ask-7-today",
            (false, false) => "ask-7",
        }
    }

    fn rule(water: &Water) -> Message {
        Message::new(if water.warms() { "ask-7-rule-warming" } else { "ask-7-rule" })
    }
}

impl Kind for ThermoclineDepth {
    fn routes(&self) -> &'static [State] {
        &[State::Weak, State::Stratified, State::Inverse]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[
            Idea { key: TEMPERATURE, part: 0 },
            Idea { key: NEAR_SURFACE, part: 0 },
            Idea { key: BOTTOM, part: 0 },
            Idea { key: MIRROR, part: 0 },
        ]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        if water.steep().is_some() { Ok(Vec::new()) } else { Err(Dropped::telling("ask-dropped-7")) }
    }

    fn plan(&self, q: &Question) -> Plan {
        let today = q.water.steep().is_some_and(|s| s.today);
        let mark = &q.water.context.sheet.marks.thermocline;
        let lead = if mark.refused {
            Some(Message::new("ask-7-refused"))
        } else if mark.depth_m.is_some() {
            Some(Message::new("ask-7-marked").message("yours", in_metres(&mark.depth_text)))
        } else {
            None
        };
        let field = Field {
            start: mark_texts(q.water).map(|m| m.depth).unwrap_or_default(),
            grip: Some(Message::new("ask-grip-steepest")),
            ..Field::number("depth", Message::new("ask-name-depth"), Some(Message::new("ask-after-m")))
        };
        Plan {
            ask: Message::new(Self::ask(q.water, today)),
            lead: lead.into_iter().chain(look_between(q.water)).collect(),
            parts: vec![vec![Line::new(Message::new("ask-7-label"), vec![field])]],
            notes: vec![Message::new("ask-7-note")],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let text = field(fields, "depth");
        let Some(typed) = read(text, None, Measure::Length) else {
            return Judged::slip(Message::new("ask-slip-number").text("yours", short(text)));
        };
        let told = |id: &'static str| Message::new(id).message("yours", in_metres(text));
        let Some(steep) = q.water.steep() else { return Judged::not_yet(told("ask-7-no")) };
        let x = typed.to.map_or(typed.value, |to| f64::midpoint(typed.value, to));
        let width = typed.to.map_or(0.0, |to| (to - typed.value).abs());
        let span = steep.span_m;
        let inside = x >= span.0 - FINEST_M && x <= span.1 + FINEST_M;
        if !typed.unit_is_wrong && inside {
            if width > WIDEST * (span.1 - span.0) + SLACK {
                return almost(told("ask-7-wide"));
            }
            let accepted = Accepted { value: Some(x), ..Accepted::default() };
            return Judged::yes(told("ask-7-yes"), accepted).note(Some(Self::rule(q.water)));
        }
        if !typed.unit_is_wrong
            && let Some(rule) = other_rule(q.water, x)
        {
            match named(field(fields, "rule"), Sought::Thermocline) {
                Named::Rule(given) if given == rule => {
                    let accepted = Accepted { value: Some(x), rule: Some(rule), ..Accepted::default() };
                    let said = told("ask-yes-other-rule").message("rule", name(rule));
                    return Judged { accepted, ..Judged::new(Verdict::YesByAnotherRule, said) }
                        .note(Some(Self::rule(q.water)));
                }
                // The class's rule, by readings of one leg that the span of the means does not hold.
                Named::Rule(Rule::SteepestMiddle) if is_fastest_of_a_leg(q.water, x) => {
                    let accepted = Accepted { value: Some(x), ..Accepted::default() };
                    return Judged::yes(told("ask-7-yes-one-way"), accepted).note(Some(Self::rule(q.water)));
                }
                Named::Nothing => {
                    let said = told("ask-which-rule")
                        .message("rule", name(rule))
                        .message("class", name(Rule::SteepestMiddle));
                    return Judged::new(Verdict::WhichRule, said);
                }
                Named::Rule(_) => return Judged::not_yet(told("ask-not-that-rule")),
                Named::None => return Judged::not_yet(told("ask-read-off")),
            }
        }
        match only(&ideas_of(q.water, &steep, x, typed.unit_is_wrong)) {
            Some(TEMPERATURE) => {
                return Judged::idea(
                    TEMPERATURE,
                    Message::new("ask-7-temperature").text("yours", short(text)),
                );
            }
            Some(NEAR_SURFACE) => return Judged::idea(NEAR_SURFACE, told("ask-7-near-surface")),
            Some(BOTTOM) => return Judged::idea(BOTTOM, told("ask-7-bottom")),
            Some(MIRROR) => return Judged::idea(MIRROR, told("ask-7-mirror")),
            _ => {}
        }
        let step = q.water.step_around(x).map_or(0.5, |s| s.bottom_m - s.top_m);
        let off = if x < span.0 { span.0 - x } else { x - span.1 };
        if off <= step + SLACK { almost(told("ask-7-almost")) } else { Judged::not_yet(told("ask-7-no")) }
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 => Hint::Words(Message::new("ask-7-hint-1")),
            2 => Hint::Words(Message::new("ask-7-hint-2")),
            _ => {
                let own = self.elsewhere_m(q);
                let at = own.unwrap_or(ANOTHER_WATER_M);
                let gloss = if own.is_some() { "ask-7-worked-gloss" } else { "ask-made-up" };
                let left = stretch(Message::new("ask-7-worked"), "from", "to", at, 1);
                let middle = Message::new("ask-sum-m").m("value", f64::midpoint(at.0, at.1));
                Hint::Worked(vec![line(left, middle, Message::new(gloss))])
            }
        }
    }

    fn class_answer(&self, q: &Question, _part: usize) -> Accepted {
        Accepted { value: q.water.steep().map(|s| s.value_m), ..Accepted::default() }
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let steep = q.water.steep();
        let value = steep.map_or(0.0, |s| s.value_m);
        // The range is the answer to kind 8: it comes with that question.
        let covered = q.water.context.sheet.first_marks.is_none() && !other_is_settled(q.water, 7);
        let fits = steep
            .filter(|_| !covered)
            .map(|s| stretch(Message::new("ask-7-fits"), "from", "to", s.span_m, 1));
        let mut notes = Vec::new();
        if covered {
            notes.push(Message::new("ask-7-range-later"));
        }
        if steep.is_some_and(|s| !s.tellable) {
            notes.push(Message::new("ask-7-not-tellable"));
        }
        let sum = steep.map(|s| {
            let left = stretch(Message::new("ask-7-sum"), "from", "to", s.step_m, 1);
            line(left, Message::new("ask-sum-m").m("value", value), Message::new("ask-7-sum-gloss"))
        });
        Explained {
            shown: Message::new("ask-value-m").m("value", value),
            sum: sum.into_iter().collect(),
            fits,
            notes,
            own_words: Message::new("ask-7-own-words"),
        }
    }

    fn cannot_be_told(&self, q: &Question) -> bool {
        q.water.is_untellable()
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn elsewhere_m(&self, q: &Question) -> Option<(f64, f64)> {
        q.water.fastest_elsewhere_m()
    }

    fn first_answer(&self, q: &Question) -> Option<Fields> {
        let mark = first_mark_texts(q.water)?;
        Some([("depth".to_owned(), mark.depth)].into_iter().collect())
    }

    /// The thermocline's line shows its span too, which is the answer to the other of kinds 7 and 8.
    fn uncovers(&self, q: &Question) -> Uncovers {
        Uncovers { thermocline: other_is_settled(q.water, 7), ..Uncovers::default() }
    }

    fn is_answered_by_a_mark(&self) -> bool {
        true
    }

    fn told_by_check(&self, q: &Question) -> Option<Told> {
        (was_tried(q) || self.first_answer(q).is_none()).then_some(Told::Thermocline)
    }

    fn seeks(&self) -> Option<Sought> {
        Some(Sought::Thermocline)
    }
}
