//! Kind 6: between which two marks does your water change fastest, and how fast is that?
//!
//! Any step that cannot be told from the steepest (methods 5.8) is right. "How fast" is judged by kind 5's checker on the
//! step the student gave. Where a layer of today lies above the main one, the question says to look below it.

use super::per_metre::{
    can_be_judged, explain_rate, judge_rate, ranges as rates, rate_elsewhere, rate_hint, worked_rate,
};
use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, Uncovers, Verdict,
    only,
};
use crate::questions::ranges::{accepted, almost};
use crate::questions::say::{Numbers, loses, stretch, strip};
use crate::questions::text::{Fields, field, joined, read_range, short, stretch_in_metres};
use crate::questions::water::{SLACK, Source, Water};
use layercast_core::{Message, State, Step};

const LONGER_STEP: &str = "biggest_drop_over_a_longer_step";
const COLDEST: &str = "coldest_place";
const BOTTOM: &str = "bottom";
const FIRST_STEEP: &str = "first_steep_step";

/// Kind 6.
pub(crate) struct SteepestStep;

fn ends(step: &Step) -> (f64, f64) {
    (step.top_m, step.bottom_m)
}

fn same(a: (f64, f64), b: (f64, f64)) -> bool {
    (a.0 - b.0).abs() < 1e-6 && (a.1 - b.1).abs() < 1e-6
}

/// The marks a student's two depths mean.
fn meant(water: &Water, fields: &Fields) -> Option<(f64, f64)> {
    let (a, b) = read_range(field(fields, "from"), field(fields, "to"))?;
    let meant = (water.meant_mark(a)?, water.meant_mark(b)?);
    (meant.1 > meant.0).then_some(meant)
}

/// Where each wrong idea puts the steepest step, metres.
fn wrongs(water: &Water) -> Vec<(&'static str, (f64, f64))> {
    let steps = water.steps();
    let change = |s: &Step| water.rate(s) * (s.bottom_m - s.top_m);
    let mut wrongs = Vec::new();
    if let Some(step) = steps.iter().max_by(|a, b| change(a).total_cmp(&change(b))) {
        let longer = steps.iter().any(|s| s.bottom_m - s.top_m < step.bottom_m - step.top_m - SLACK);
        if longer {
            wrongs.push((LONGER_STEP, ends(step)));
        }
    }
    let coldest = water.levels().iter().enumerate().min_by(|a, b| a.1.temp_c.total_cmp(&b.1.temp_c));
    if let Some(step) = coldest.and_then(|(i, _)| steps.get(i.saturating_sub(1))) {
        wrongs.push((COLDEST, ends(step)));
    }
    if let Some(step) = steps.last() {
        wrongs.push((BOTTOM, ends(step)));
    }
    let steep = water.analysis().method.steep_c_per_m;
    if let Some(step) = steps.iter().find(|s| water.rate(s) >= steep - SLACK) {
        wrongs.push((FIRST_STEEP, ends(step)));
    }
    let members = water.members();
    wrongs.retain(|(_, place)| !members.iter().any(|m| same(ends(m), *place)));
    wrongs
}

/// A layer of today above the main one, which the question leaves aside: its lower edge, metres.
pub(crate) fn today_above_m(water: &Water) -> Option<f64> {
    let today = water.analysis().warm_layer_today?;
    let steep = water.steep()?;
    (!steep.today && today.bottom_m <= steep.step_m.0 + SLACK).then_some(today.bottom_m)
}

/// Where to look in water with several steep layers, metres: away from steps of another layer that change faster than the
/// main one does. The main layer is the one that parts the most (methods 5.6).
fn look_m(water: &Water) -> Option<(f64, f64)> {
    let steep = water.steep().filter(|s| !s.today)?;
    let most = |of: &dyn Fn(&Step) -> f64, steps: &mut dyn Iterator<Item = &Step>| {
        steps.map(of).fold(f64::NEG_INFINITY, f64::max)
    };
    let best = most(&|s| water.rate(s), &mut water.members().iter().copied());
    // By density too, which another rule goes by.
    let densing = |s: &Step| s.densing_kg_m3_per_m;
    let has_main = water.steps().iter().any(|s| s.in_main_layer);
    let densest = most(&densing, &mut water.steps().iter().filter(|s| s.in_main_layer));
    let below = today_above_m(water).unwrap_or(f64::NEG_INFINITY);
    let faster = || {
        let denser = move |s: &Step| has_main && !s.in_main_layer && densing(s) > densest + SLACK;
        let of_another =
            move |s: &&Step| (water.rate(s) > best + SLACK || denser(s)) && s.top_m >= below - SLACK;
        water.steps().iter().filter(of_another)
    };
    let from = faster().filter(|s| s.bottom_m <= steep.step_m.0 + SLACK).map(|s| s.bottom_m).reduce(f64::max);
    let to = faster().filter(|s| s.top_m >= steep.step_m.1 - SLACK).map(|s| s.top_m).reduce(f64::min);
    let first = water.first_m().max(below);
    (from.is_some() || to.is_some()).then(|| (from.unwrap_or(first), to.unwrap_or(water.last_m())))
}

/// Which of several steep layers is meant.
pub(crate) fn look_between(water: &Water) -> Option<Message> {
    look_m(water).map(|between| stretch(Message::new("ask-6-look-between"), "from", "to", between, 1))
}

/// What the question says about where to look.
pub(crate) fn look(water: &Water) -> Option<Message> {
    let below = || today_above_m(water).map(|below| Message::new("ask-6-look-below").m("depth", below));
    look_between(water).or_else(below)
}

/// The step taken when the answer is shown.
fn steepest(water: &Water) -> (f64, f64) {
    let members = water.members();
    let best = members
        .iter()
        .max_by(|a, b| water.rate(a).total_cmp(&water.rate(b)).then(b.top_m.total_cmp(&a.top_m)));
    best.map_or((0.0, 0.0), |s| ends(s))
}

/// "How fast" is asked too: on no step that counts as steepest would an idea pass for right. Over a whole metre it would:
/// the drop and the drop per metre are one number.
fn asks_speed(water: &Water) -> bool {
    water.members().iter().all(|s| can_be_judged(water, ends(s)))
}

impl SteepestStep {
    fn judge_place(q: &Question, fields: &Fields) -> Judged {
        let (from, to) = (field(fields, "from"), field(fields, "to"));
        let yours = short(&joined(from, to));
        if read_range(from, to).is_none() {
            return Judged::slip(Message::new("ask-slip-two-depths").text("yours", yours));
        }
        let Some(given) = meant(q.water, fields) else {
            return Judged::slip(Message::new("ask-slip-no-marks").text("yours", yours));
        };
        let told = |id: &'static str| Message::new(id).message("yours", stretch_in_metres(from, to));
        let members = q.water.members();
        // A run of equal steps counts as one, where its speed can be judged as one.
        let run = q.water.steep().map_or((0.0, 0.0), |s| s.step_m);
        let is_run = same(run, given) && (!asks_speed(q.water) || can_be_judged(q.water, run));
        if members.iter().any(|m| same(ends(m), given)) || is_run {
            let accepted = Accepted { stretch_m: Some(given), ..Accepted::default() };
            return Judged::yes(told("ask-6-yes"), accepted);
        }
        // Several steps at once, the steepest among them.
        if q.water.holds_steepest(given) {
            return almost(told("ask-6-too-long"));
        }
        if today_above_m(q.water).is_some_and(|below| given.1 <= below + SLACK) {
            return Judged::not_yet(told("ask-6-today"));
        }
        if look_m(q.water).is_some_and(|(from, to)| given.0 < from - SLACK || given.1 > to + SLACK) {
            return Judged::not_yet(told("ask-6-no"));
        }
        let matching: Vec<&'static str> = wrongs(q.water)
            .into_iter()
            .filter(|(_, place)| same(*place, given))
            .map(|(key, _)| key)
            .collect();
        match only(&matching) {
            Some(LONGER_STEP) => Judged::idea(LONGER_STEP, told("ask-6-longer-step")),
            Some(COLDEST) => Judged::idea(COLDEST, told("ask-6-coldest")),
            Some(BOTTOM) => Judged::idea(BOTTOM, told("ask-6-bottom")),
            Some(FIRST_STEEP) => Judged::idea(FIRST_STEEP, told("ask-6-first-steep")),
            _ => Judged::not_yet(told("ask-6-no")),
        }
    }

    fn judge_speed(q: &Question, fields: &Fields) -> Judged {
        match q.part(0).and_then(|a| a.stretch_m) {
            Some(ends) => {
                let judged = judge_rate(q.water, ends, fields, None);
                let accepted = Accepted { stretch_m: Some(ends), ..judged.accepted };
                Judged { accepted, ..judged }
            }
            None => Judged::new(
                Verdict::Waits,
                Message::new("ask-6-waits").text("yours", short(field(fields, "rate"))),
            ),
        }
    }

    /// "The next bar is 0.5 shorter …", or which steps count.
    fn why(water: &Water) -> Option<Message> {
        let members = water.members();
        let k = members.iter().max_by(|a, b| water.rate(a).total_cmp(&water.rate(b)))?;
        if members.len() > 1 {
            let first = members.first()?;
            let last = members.last()?;
            return Some(stretch(
                Message::new("ask-6-several"),
                "from",
                "to",
                (first.top_m, last.bottom_m),
                1,
            ));
        }
        let outside = water.steps().iter().filter(|s| !members.iter().any(|m| same(ends(m), ends(s))));
        let outside = outside.filter(|s| today_above_m(water).is_none_or(|below| s.top_m + SLACK >= below));
        let next = outside.max_by(|a, b| water.rate(a).total_cmp(&water.rate(b)))?;
        let shorter = water.rate(k) - water.rate(next);
        (shorter > 0.0).then(|| {
            Message::new("ask-6-next-bar").number("shorter", shorter, 1).number(
                "apart",
                water.apart(k, next),
                1,
            )
        })
    }
}

impl Kind for SteepestStep {
    fn routes(&self) -> &'static [State] {
        &[State::Weak, State::Stratified, State::Inverse]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[
            Idea { key: LONGER_STEP, part: 0 },
            Idea { key: COLDEST, part: 0 },
            Idea { key: BOTTOM, part: 0 },
            Idea { key: FIRST_STEEP, part: 0 },
            Idea { key: "not_divided", part: 1 },
            Idea { key: "multiplied", part: 1 },
            Idea { key: "metres_per_degree", part: 1 },
            Idea { key: "divided_by_depth", part: 1 },
        ]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        if water.steep().is_none() || water.members().is_empty() {
            return Err(Dropped::telling("ask-dropped-6"));
        }
        Ok(Vec::new())
    }

    fn plan(&self, q: &Question) -> Plan {
        let metres = || Some(Message::new("ask-after-m"));
        let place = Line::new(
            Message::new("ask-label-from"),
            vec![
                Field::number("from", Message::new("ask-name-from"), Some(Message::new("ask-after-m-to"))),
                Field::number("to", Message::new("ask-name-to"), metres()),
            ],
        );
        let warmer = q.water.warms();
        let speed = Line::new(
            Message::new("ask-6-label").message("loses", loses(warmer)),
            vec![Field::number(
                "rate",
                Message::new("ask-6-name"),
                Some(Message::new("ask-after-each-metre")),
            )],
        );
        let speed_too = asks_speed(q.water);
        let lead = look(q.water);
        Plan {
            ask: Message::new(match (warmer, speed_too) {
                (false, true) => "ask-6",
                (false, false) => "ask-6-place",
                (true, true) => "ask-6-warmer",
                (true, false) => "ask-6-warmer-place",
            }),
            lead: lead.into_iter().collect(),
            parts: if speed_too { vec![vec![place], vec![speed]] } else { vec![vec![place]] },
            notes: vec![if speed_too {
                Message::new("ask-6-note").message("strip", strip(warmer))
            } else if q.water.members().iter().all(|s| (s.bottom_m - s.top_m - 1.0).abs() < 1e-6) {
                Message::new("ask-6-note-no-speed")
            } else {
                Message::new("ask-6-note-speed-not-tellable")
            }],
        }
    }

    fn judge(&self, q: &Question, part: usize, fields: &Fields) -> Judged {
        if part == 0 { Self::judge_place(q, fields) } else { Self::judge_speed(q, fields) }
    }

    fn hint(&self, q: &Question, part: usize, level: u8) -> Hint {
        if part == 1 {
            return rate_hint(
                q.water,
                q.part(0).and_then(|a| a.stretch_m).unwrap_or_else(|| steepest(q.water)),
                level,
            );
        }
        match level {
            1 => Hint::Words(Message::new("ask-6-hint-1")),
            2 => Hint::Words(Message::new("ask-6-hint-2")),
            _ => Hint::Worked(worked_rate(q.water, steepest(q.water))),
        }
    }

    fn class_answer(&self, q: &Question, part: usize) -> Accepted {
        let given = q.part(0).and_then(|a| a.stretch_m).unwrap_or_else(|| steepest(q.water));
        let rate = rates(q.water, given).first().map(accepted).filter(|_| part == 1);
        Accepted { stretch_m: Some(given), ..rate.unwrap_or_default() }
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let given = q.part(0).and_then(|a| a.stretch_m).unwrap_or_else(|| steepest(q.water));
        if part == 1 {
            let by = q.part(1).and_then(|a| a.source).unwrap_or(Source::Mean);
            return explain_rate(q.water, given, by, Message::new("ask-5-own-words"));
        }
        Explained {
            shown: stretch(Message::new("ask-value-from-to"), "from", "to", given, 1),
            sum: Vec::new(),
            fits: None,
            notes: Self::why(q.water).into_iter().collect(),
            own_words: Message::new("ask-6-own-words"),
        }
    }

    fn cannot_be_told(&self, q: &Question) -> bool {
        q.water.is_untellable()
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn step_m(&self, q: &Question, fields: &Fields) -> Option<(f64, f64)> {
        let settled = q.part(0).and_then(|a| a.stretch_m);
        settled.or_else(|| meant(q.water, fields).filter(|m| q.water.steps_in(*m).len() == 1))
    }

    fn elsewhere_m(&self, q: &Question) -> Option<(f64, f64)> {
        rate_elsewhere(q.water, q.part(0).and_then(|a| a.stretch_m).unwrap_or_else(|| steepest(q.water)))
    }

    fn shows_means(&self) -> bool {
        true
    }

    fn uncovers(&self, _q: &Question) -> Uncovers {
        Uncovers { all_steps: true, ..Uncovers::default() }
    }

    fn told_by_check(&self, _q: &Question) -> Option<Told> {
        Some(Told::Steps)
    }
}
