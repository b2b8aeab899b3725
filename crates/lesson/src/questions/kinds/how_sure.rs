//! Kind 8: how sure is the depth of your thermocline? A from–to that holds the thermocline's value and is as wide as a
//! step at least and one and a half spans at most, or as the span of one leg.
//!
//! It starts at the give or take of Profile (empty if there is none): once checked there, that is the first answer.

use super::super::replay::{first_round, replay};
use crate::document::{MarkDoc, MarkDocs};
use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, LAYERED, Line, Plan, Question, Uncovers,
};
use crate::questions::ranges::almost;
use crate::questions::rules::{leg, main_steps, others};
use crate::questions::say::{Numbers, in_m, line, minus, stretch};
use crate::questions::text::{Fields, field, in_metres, joined, read_range, short, stretch_in_metres};
use crate::questions::water::{FINEST_M, SLACK, Source, Steep, Water};
use layercast_core::layers::{span::span, steps::steps};
use layercast_core::{Message, Rule, Sought, State};

const TOO_NARROW: &str = "as_sure_as_the_digits";
const WHOLE_LAKE: &str = "the_whole_lake";

/// Widest range that is right, in spans (job's convention).
const WIDEST: f64 = 1.5;
/// From this share of the cast on a range says nothing.
const WHOLE: f64 = 0.6;
/// Up to this many spans a range is one step off.
const NEAR: f64 = 3.0;

/// Kind 8.
pub(crate) struct HowSure;

/// The thermocline's mark of Profile as texts for fields.
pub(crate) struct MarkTexts {
    /// Depth.
    pub depth: String,
    /// Depth less and plus the give or take, where one was given.
    pub range: Option<(String, String)>,
}

/// The marks that are the first answers: those on record, else as they stand.
fn first_marks<'a>(water: &Water<'a>) -> &'a MarkDocs {
    let sheet = water.context.sheet;
    sheet.first_answer_marks().unwrap_or(&sheet.marks)
}

/// Texts of the thermocline's mark as it stands; `None` when it was refused or not placed.
pub(crate) fn mark_texts(water: &Water) -> Option<MarkTexts> {
    texts_of(water, &water.context.sheet.marks.thermocline)
}

/// Texts of the thermocline's mark that is the first answer.
pub(crate) fn first_mark_texts(water: &Water) -> Option<MarkTexts> {
    texts_of(water, &first_marks(water).thermocline)
}

fn texts_of(water: &Water, mark: &MarkDoc) -> Option<MarkTexts> {
    let MarkDoc { depth_text, depth_m, give_text, give_m, refused } = mark;
    let depth_m = depth_m.filter(|_| !refused)?;
    let comma = depth_text.contains(',') || give_text.contains(',');
    let write = |z: f64| {
        let z = z.clamp(0.0, water.last_m());
        let text = format!("{z:.*}", usize::from(crate::questions::say::decimals(z, 1, 2)));
        if comma { text.replace('.', ",") } else { text }
    };
    let depth = if depth_text.trim().is_empty() { write(depth_m) } else { depth_text.trim().to_owned() };
    let range = give_m.map(|give| (write(depth_m - give), write(depth_m + give)));
    Some(MarkTexts { depth, range })
}

/// Something was answered: a mark that is checked now is no first answer any more.
pub(crate) fn was_tried(q: &Question) -> bool {
    q.water.context.sheet.answers.get(&q.asked.id).is_some_and(|answer| !answer.tries.is_empty())
}

/// Whether the other of kinds 7 and 8 is settled, or not asked: only then may the thermocline's line with its span show.
pub(crate) fn other_is_settled(water: &Water, kind: u8) -> bool {
    let (other, place): (u8, &dyn Kind) =
        if kind == 7 { (8, &HowSure) } else { (7, &super::thermocline_depth::ThermoclineDepth) };
    if !water.context.lesson.kinds.contains(&other) || water.warms() || place.choose(water).is_err() {
        return true;
    }
    let asked = super::super::Asked { id: other.to_string(), kind: other, depths_m: Vec::new() };
    let Some(answer) = water.context.sheet.answers.get(&asked.id) else { return false };
    if answer.tries.is_empty() {
        return answer.shown;
    }
    first_round(water, &asked, Some(answer)).is_some_and(|round| round.settled())
}

/// Depth of the step that the value lies in, metres.
fn step_m(steep: &Steep, water: &Water) -> f64 {
    step_around_m(water, steep.value_m)
}

/// Widest range that is right, metres: one and a half spans, or the whole span of one leg where that is wider.
fn most_m(steep: &Steep, water: &Water) -> f64 {
    let by_leg = |source: Source| {
        let leg = leg(water, source);
        let whole = leg.len() == water.levels().len() && !steep.today;
        let found = span(&steps(&leg), main_steps(water), &[]).filter(|_| whole)?.thermocline;
        // A second place that one leg has far away is no wider a range.
        found.in_one_piece.then_some(found.span_bottom_m - found.span_top_m)
    };
    let legs: &[Source] = if water.analysis().pairs.count > 0 { &[Source::Down, Source::Up] } else { &[] };
    let own = legs.iter().copied().filter_map(by_leg).fold(step_m(steep, water), f64::max);
    (WIDEST * (steep.span_m.1 - steep.span_m.0)).max(own)
}

/// Thickness of the step around a depth, metres.
fn step_around_m(water: &Water, depth_m: f64) -> f64 {
    water.step_around(depth_m - SLACK).map_or(0.5, |s| s.bottom_m - s.top_m)
}

/// Depths a range may hold: the class's value; by follow-through the depth accepted in kind 7, and that of another rule
/// named there.
fn held(water: &Water, steep: &Steep) -> Vec<f64> {
    let asked = super::super::Asked { id: "7".to_owned(), kind: 7, depths_m: Vec::new() };
    let answer = water.context.sheet.answers.get("7").filter(|a| !a.tries.is_empty());
    let own = answer
        .and_then(|a| replay(water, &asked, Some(a)))
        .and_then(|r| r.now().parts.first().and_then(|p| p.accepted));
    let own_rule: Option<Rule> = own.and_then(|a| a.rule);
    let by_rule = others(water, Sought::Thermocline)
        .into_iter()
        .filter(|(rule, _)| Some(*rule) == own_rule)
        .map(|(_, z)| z);
    std::iter::once(steep.value_m).chain(own.and_then(|a| a.value)).chain(by_rule).collect()
}

impl Kind for HowSure {
    fn routes(&self) -> &'static [State] {
        LAYERED
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: TOO_NARROW, part: 0 }, Idea { key: WHOLE_LAKE, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        if water.steep().is_some() { Ok(Vec::new()) } else { Err(Dropped::telling("ask-dropped-8")) }
    }

    fn plan(&self, q: &Question) -> Plan {
        let start = mark_texts(q.water).and_then(|m| m.range);
        let number = |id, name, after, start: Option<String>, word| Field {
            start: start.unwrap_or_default(),
            grip: Some(Message::new(word)),
            ..Field::number(id, Message::new(name), Some(Message::new(after)))
        };
        let (from, to) = start.unzip();
        let fields = vec![
            number("from", "ask-name-from", "ask-after-m-and", from, "ask-grip-from"),
            number("to", "ask-name-to", "ask-after-m", to, "ask-grip-to"),
        ];
        let mark = &first_marks(q.water).thermocline;
        let mut notes = vec![Message::new("ask-8-note")];
        if mark.depth_m.is_some() && !mark.refused {
            notes.push(if mark.give_m.is_some() {
                Message::new("ask-8-note-mark")
                    .message("depth", in_metres(&mark.depth_text))
                    .message("give", in_metres(&mark.give_text))
            } else {
                Message::new("ask-8-note-depth").message("depth", in_metres(&mark.depth_text))
            });
        }
        let today = q.water.steep().is_some_and(|s| s.today);
        Plan {
            ask: Message::new(if today { "ask-8-today" } else { "ask-8" }),
            lead: vec![Message::new("ask-8-lead")],
            parts: vec![vec![Line::new(Message::new("ask-8-label"), fields)]],
            notes,
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let (from, to) = (field(fields, "from"), field(fields, "to"));
        let Some((low, high)) = read_range(from, to) else {
            let yours = short(&joined(from, to));
            return Judged::slip(Message::new("ask-slip-two-depths").text("yours", yours));
        };
        let told = |id: &'static str| Message::new(id).message("yours", stretch_in_metres(from, to));
        let Some(steep) = q.water.steep() else { return Judged::not_yet(told("ask-8-no")) };
        let width = high - low;
        let cast = q.water.last_m() - q.water.first_m();
        let held = held(q.water, &steep);
        let inside: Vec<f64> =
            held.iter().copied().filter(|z| *z >= low - FINEST_M && *z <= high + FINEST_M).collect();
        let holds = !inside.is_empty();
        // One step, of the depth that is held.
        let of_held = || inside.iter().map(|z| step_around_m(q.water, *z));
        let least = of_held().reduce(f64::min).unwrap_or(step_m(&steep, q.water));
        if width < least - FINEST_M {
            return Judged::idea(TOO_NARROW, told("ask-8-narrow"));
        }
        let most = of_held().fold(most_m(&steep, q.water), f64::max);
        if holds && width <= most + FINEST_M {
            let accepted = Accepted { stretch_m: Some((low, high)), ..Accepted::default() };
            return Judged::yes(told("ask-8-yes"), accepted);
        }
        if width >= WHOLE * cast - SLACK {
            return Judged::idea(WHOLE_LAKE, told("ask-8-whole"));
        }
        if !holds {
            let near = held.iter().any(|z| {
                let off = if *z < low { low - z } else { z - high };
                off <= step_m(&steep, q.water) + SLACK
            });
            return if near && width <= most + SLACK {
                almost(told("ask-8-beside"))
            } else {
                Judged::not_yet(told("ask-8-no"))
            };
        }
        if width <= NEAR * most { almost(told("ask-8-wide")) } else { Judged::not_yet(told("ask-8-wide")) }
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 => Hint::Words(Message::new("ask-8-hint-1")),
            2 => Hint::Words(Message::new("ask-8-hint-2")),
            _ => {
                let own = self.elsewhere_m(q);
                let at = own.unwrap_or(super::thermocline_depth::ANOTHER_WATER_M);
                let gloss = Message::new(if own.is_some() { "ask-8-worked" } else { "ask-made-up" });
                Hint::Worked(vec![line(minus(at.1, at.0, 1), in_m(at.1 - at.0), gloss)])
            }
        }
    }

    fn class_answer(&self, q: &Question, _part: usize) -> Accepted {
        Accepted { stretch_m: q.water.steep().map(|s| s.span_m), ..Accepted::default() }
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let steep = q.water.steep();
        let span = steep.map_or((0.0, 0.0), |s| s.span_m);
        let mut notes = Vec::new();
        if let Some(s) = steep {
            notes.push(stretch(Message::new("ask-8-span"), "from", "to", span, 1));
            if !s.tellable {
                notes.push(Message::new("ask-7-not-tellable"));
            }
        }
        let fits = steep.map(|s| {
            Message::new("ask-8-fits")
                .m("value", s.value_m)
                .m("least", step_m(&s, q.water))
                .m("most", most_m(&s, q.water))
        });
        Explained {
            shown: stretch(Message::new("ask-value-from-to"), "from", "to", span, 1),
            sum: Vec::new(),
            fits,
            notes,
            own_words: Message::new("ask-8-own-words"),
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
        let (from, to) = first_mark_texts(q.water)?.range?;
        Some([("from".to_owned(), from), ("to".to_owned(), to)].into_iter().collect())
    }

    /// The thermocline's line shows its span too, which is the answer to the other of kinds 7 and 8.
    fn uncovers(&self, q: &Question) -> Uncovers {
        Uncovers { thermocline: other_is_settled(q.water, 8), ..Uncovers::default() }
    }

    fn is_answered_by_a_mark(&self) -> bool {
        true
    }

    fn told_by_check(&self, q: &Question) -> Option<Told> {
        (was_tried(q) || self.first_answer(q).is_none()).then_some(Told::Thermocline)
    }
}
