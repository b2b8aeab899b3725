//! Kind 29: three bars of the strip, filled by hand: how many °C does the water lose in each metre of three steps? Each is
//! judged as kind 5 is, and stands in the strip once it is found. The strip itself fills when the third is, unless a
//! question that it would answer is still open.
//!
//! Asked over single steps that are no metre, where no idea gives the right number and rounding leaves one; away from the steepest, which is looked
//! for elsewhere, and from the step of kind 5, where three are left.

use super::colder_by::warmer_below;
use super::per_metre::{
    PerMetre, RATE_IDEAS, explain_rate, fits, judge_rate, made_up_rate, ranges, rate_hint,
};
use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, Uncovers,
};
use crate::questions::ranges::accepted;
use crate::questions::say::{lose, stretch};
use crate::questions::text::{Fields, field};
use crate::questions::water::{Source, Water};
use layercast_core::{Message, State};

/// How many there are.
const BARS: usize = 3;
const FIELDS: [&str; BARS] = ["rate_a", "rate_b", "rate_c"];

/// Each idea of a rate may show in each part.
const IDEAS: [Idea; BARS * RATE_IDEAS.len()] = {
    let mut ideas = [Idea { key: "", part: 0 }; BARS * RATE_IDEAS.len()];
    let mut i = 0;
    while i < ideas.len() {
        ideas[i] = Idea { key: RATE_IDEAS[i % RATE_IDEAS.len()], part: i / RATE_IDEAS.len() };
        i += 1;
    }
    ideas
};

/// Kind 29.
pub(crate) struct ThreeBars;

type Ends = (f64, f64);

/// The stretch of a bar, metres.
fn ends(q: &Question, part: usize) -> Ends {
    (q.depth(2 * part), q.depth(2 * part + 1))
}

/// Of three or more, three: the fastest, the one in the middle of the order, the slowest; downward.
fn spread(mut steps: Vec<(f64, Ends)>) -> Option<Vec<f64>> {
    if steps.len() < BARS {
        return None;
    }
    steps.sort_by(|a, b| b.0.total_cmp(&a.0));
    let mut chosen: Vec<Ends> =
        [0, steps.len() / 2, steps.len() - 1].into_iter().filter_map(|i| Some(steps.get(i)?.1)).collect();
    chosen.sort_by(|a, b| a.0.total_cmp(&b.0));
    Some(chosen.into_iter().flat_map(|(top, bottom)| [top, bottom]).collect())
}

impl Kind for ThreeBars {
    fn routes(&self) -> &'static [State] {
        &[State::Weak, State::Stratified, State::Inverse]
    }

    fn ideas(&self) -> &'static [Idea] {
        &IDEAS
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let of_kind_5 = match water.context.lesson.kinds.contains(&5).then(|| PerMetre.choose(water)) {
            Some(Ok(depths_m)) => depths_m,
            _ => Vec::new(),
        };
        let is_of_kind_5 = |(top, bottom): Ends| of_kind_5 == [top, bottom];
        let rate = |step: Ends| ranges(water, step).first().map_or(0.0, |r| r.value);
        // Rounded at every step it must not come to nothing.
        let is_seen = |step: Ends| ranges(water, step).iter().all(|r| r.value > 2.0 * r.give);
        let steps = water.steps().iter().map(|s| (s.top_m, s.bottom_m));
        let steps = steps.filter(|step| fits(water, *step) && is_seen(*step));
        let all: Vec<(f64, Ends)> = steps.map(|step| (rate(step), step)).collect();
        let away = |step: Ends| !water.holds_member(step) && !water.holds_steepest(step);
        let among = |good: &dyn Fn(Ends) -> bool| {
            spread(all.iter().copied().filter(|(_, step)| good(*step)).collect())
        };
        among(&|step| away(step) && !is_of_kind_5(step))
            .or_else(|| among(&away))
            .ok_or(Dropped::plain("ask-dropped-29"))
    }

    fn plan(&self, q: &Question) -> Plan {
        let part = |part: usize, id: &'static str| {
            let step = ends(q, part);
            let name = stretch(Message::new("ask-29-name"), "from", "to", step, 1);
            let field = Field::number(id, name, Some(Message::new("ask-unit-c-per-m")));
            vec![Line::new(stretch(Message::new("ask-29-label"), "from", "to", step, 1), vec![field])]
        };
        Plan {
            ask: Message::new("ask-29").message("lose", lose(warmer_below(q.water, ends(q, 0)))),
            lead: vec![Message::new("ask-29-lead")],
            parts: FIELDS.iter().enumerate().map(|(i, id)| part(i, id)).collect(),
            notes: vec![Message::new("ask-29-note")],
        }
    }

    fn judge(&self, q: &Question, part: usize, fields: &Fields) -> Judged {
        let typed = FIELDS.get(part).map_or("", |id| field(fields, id)).to_owned();
        judge_rate(q.water, ends(q, part), &Fields::from([("rate".to_owned(), typed)]), None)
    }

    /// Worked on invented water: another step of the own one may be a bar that is asked for.
    fn hint(&self, q: &Question, part: usize, level: u8) -> Hint {
        match level {
            1 | 2 => rate_hint(q.water, ends(q, part), level),
            _ => Hint::Worked(made_up_rate(q.water, ends(q, part))),
        }
    }

    fn class_answer(&self, q: &Question, part: usize) -> Accepted {
        ranges(q.water, ends(q, part)).first().map(accepted).unwrap_or_default()
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let by = q.part(part).and_then(|a| a.source).unwrap_or(Source::Mean);
        explain_rate(q.water, ends(q, part), by, Message::new("ask-5-own-words"))
    }

    /// The bar in hand, then the next.
    fn step_m(&self, q: &Question, _fields: &Fields) -> Option<(f64, f64)> {
        (0..BARS).find(|part| q.part(*part).is_none()).map(|part| ends(q, part))
    }

    fn shows_means(&self) -> bool {
        true
    }

    fn uncovers_part(&self, q: &Question, part: usize) -> Vec<usize> {
        q.water.steps_in(ends(q, part))
    }

    fn uncovers(&self, _q: &Question) -> Uncovers {
        Uncovers { steps_if_free: true, ..Uncovers::default() }
    }

    fn told_by_check(&self, _q: &Question) -> Option<Told> {
        Some(Told::Steps)
    }
}
