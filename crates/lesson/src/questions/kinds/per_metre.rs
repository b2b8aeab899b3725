//! Kind 5: how many °C does it lose in each metre? Change over length; right within what rounding the two readings to 0.1
//! can do, 0.1 °C over the length, of the mean, going down or coming up; over more than 2 m within what rounding the answer
//! itself to 0.1 can do. A rate that such rounding could make nothing is not asked for.
//!
//! Over a metre nobody can tell whether a student divided. So it is asked over a single step that is no metre, or over a
//! longer stretch, where no idea gives the right number. The same checker judges "how fast" of kind 6.

use super::colder_by::{change, changes, difference, elsewhere, made_up, warmer_below, worked};
use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, Uncovers, only,
};
use crate::questions::ranges::{
    Range, Stand, Wrong, accepted, almost, digits, fits_c, number, other_source, quoted, right_said, source,
    span, stand, tellable,
};
use crate::questions::say::{
    bare, divided, drop, in_c, in_m, line, lose, loses, lost, minus, result, stretch,
};
use crate::questions::text::{Fields, Measure, field, short};
use crate::questions::water::{ROUNDING_C, SLACK, Source, Water};
use crate::view::SumLine;
use layercast_core::{Message, State};

const NOT_DIVIDED: &str = "not_divided";
const MULTIPLIED: &str = "multiplied";
const UPSIDE_DOWN: &str = "metres_per_degree";
const BY_DEPTH: &str = "divided_by_depth";

/// The ideas of a rate.
pub(crate) const RATE_IDEAS: [&str; 4] = [NOT_DIVIDED, MULTIPLIED, UPSIDE_DOWN, BY_DEPTH];

/// Give of an answer that is written to one decimal, °C per metre.
const WRITTEN_C_PER_M: f64 = ROUNDING_C / 2.0;
/// Most steps a stretch is made of.
const LONGEST: usize = 3;

/// Kind 5.
pub(crate) struct PerMetre;

pub(crate) fn ranges(water: &Water, ends_m: (f64, f64)) -> Vec<Range> {
    let length = ends_m.1 - ends_m.0;
    let give = (water.rounding_c() / length).max(WRITTEN_C_PER_M);
    let range = |(source, change): (Source, f64)| Range { source, value: change / length, give };
    changes(water, ends_m).into_iter().map(range).collect()
}

pub(crate) fn wrongs(water: &Water, ends_m: (f64, f64)) -> Vec<Wrong> {
    let length = ends_m.1 - ends_m.0;
    let mut wrongs = Vec::new();
    for (_, change) in changes(water, ends_m) {
        wrongs.push(Wrong { key: NOT_DIVIDED, value: change, give: ROUNDING_C / 2.0 });
        wrongs.push(Wrong { key: MULTIPLIED, value: change * length, give: ROUNDING_C * length / 2.0 });
        if change > SLACK {
            wrongs.push(Wrong { key: UPSIDE_DOWN, value: length / change, give: 0.05 });
        }
        for depth_m in [ends_m.0, ends_m.1].into_iter().filter(|z| *z > SLACK) {
            wrongs.push(Wrong { key: BY_DEPTH, value: change / depth_m, give: 0.05 });
        }
    }
    wrongs
}

/// The rate of a stretch, in the words of the water: whether it could be judged without an idea passing for right.
pub(crate) fn can_be_judged(water: &Water, ends_m: (f64, f64)) -> bool {
    let ranges = ranges(water, ends_m);
    ranges.iter().all(|r| r.value > r.give + SLACK) && tellable(&ranges, &wrongs(water, ends_m))
}

/// Judges a rate over a stretch (kind 5, and the second part of kind 6).
pub(crate) fn judge_rate(water: &Water, ends_m: (f64, f64), fields: &Fields, used: Option<Source>) -> Judged {
    let typed = match number(fields, "rate", Measure::PerMetre) {
        Ok(typed) => typed,
        Err(slip) => return *slip,
    };
    let text = field(fields, "rate");
    let yours = short(text);
    let warmer = warmer_below(water, ends_m);
    let length = ends_m.1 - ends_m.0;
    let ranges = ranges(water, ends_m);
    let told = |id: &'static str| {
        Message::new(id)
            .text("yours", yours.clone())
            .message("drop", drop(warmer))
            .message("length", step_words(length))
    };
    match stand(text, &typed, typed.value.abs(), &ranges, &wrongs(water, ends_m), used) {
        Stand::Right(range) => {
            let sign = (typed.value < 0.0)
                .then(|| Message::new("ask-note-sign-rate").message("loses", loses(warmer)));
            let right = Message::new("ask-5-yes").text("yours", yours);
            let in_words = Message::new("ask-value-c-per-m").message("value", bare(range.value));
            let size = (typed.value.abs(), &typed);
            let said = right_said(right, quoted(text), size, range.value, in_words, 1);
            Judged::yes(said, accepted(&range)).note(sign).note(other_source(&range, used)).note(digits(
                water,
                &typed,
                water.decimals_by(range.source),
            ))
        }
        Stand::Slip(slip) => slip,
        Stand::Near => almost(told("ask-5-almost")),
        Stand::Off(ideas) => match only(&ideas) {
            Some(NOT_DIVIDED) => Judged::idea(NOT_DIVIDED, told("ask-5-not-divided")),
            Some(MULTIPLIED) => Judged::idea(MULTIPLIED, told("ask-5-multiplied")),
            Some(UPSIDE_DOWN) => Judged::idea(UPSIDE_DOWN, told("ask-5-upside-down")),
            Some(BY_DEPTH) => Judged::idea(BY_DEPTH, told("ask-5-by-depth")),
            _ => Judged::not_yet(told("ask-5-no")),
        },
    }
}

/// "half a metre", "a quarter of a metre", "2.0 m".
fn step_words(length_m: f64) -> Message {
    if (length_m - 0.5).abs() < 1e-6 {
        Message::new("ask-word-half-metre")
    } else if (length_m - 0.25).abs() < 1e-6 {
        Message::new("ask-word-quarter-metre")
    } else if (length_m - 1.0).abs() < 1e-6 {
        Message::new("ask-word-one-metre")
    } else {
        in_m(length_m)
    }
}

/// The three lines of the sum; `elsewhere`: the first says where.
pub(crate) fn sum(water: &Water, ends_m: (f64, f64), by: Source, is_elsewhere: bool) -> Vec<SumLine> {
    let length = ends_m.1 - ends_m.0;
    let change = changes(water, ends_m).iter().find(|c| c.0 == by).map_or(0.0, |c| c.1);
    let warmer = warmer_below(water, ends_m);
    let first = if is_elsewhere {
        worked(water, ends_m, false)
    } else {
        difference(water, ends_m, by, Message::new("ask-sum-change").message("lost", lost(warmer)), false)
    };
    let second = line(minus(ends_m.1, ends_m.0, 1), in_m(length), Message::new("ask-sum-over"));
    let third = result(divided(change, length), bare(change / length), Message::new("ask-sum-per-metre"));
    first.into_iter().chain([second, third]).collect()
}

/// What is said when a rate is settled.
pub(crate) fn explain_rate(water: &Water, ends_m: (f64, f64), by: Source, first_wrong: Message) -> Explained {
    let value = ranges(water, ends_m).iter().find(|r| r.source == by).map_or(0.0, |r| r.value);
    let fits = span(&ranges(water, ends_m)).map(|(low, high)| fits_c(water, low.max(0.0), high));
    Explained {
        shown: Message::new("ask-value-c-per-m").message("value", bare(value)),
        sum: sum(water, ends_m, by, false),
        fits,
        notes: Vec::new(),
        own_words: first_wrong,
    }
}

/// Hints of a rate.
pub(crate) fn rate_hint(water: &Water, ends_m: (f64, f64), level: u8) -> Hint {
    match level {
        1 => Hint::Words(Message::new("ask-5-hint-1")),
        2 => Hint::Words(Message::new("ask-5-hint-2").message("drop", drop(warmer_below(water, ends_m)))),
        _ => Hint::Worked(worked_rate(water, ends_m)),
    }
}

/// A rate worked elsewhere, else on another water.
pub(crate) fn worked_rate(water: &Water, ends_m: (f64, f64)) -> Vec<SumLine> {
    if let Some(other) = rate_elsewhere(water, ends_m) {
        return sum(water, other, Source::Mean, true);
    }
    made_up_rate(water, ends_m)
}

/// A rate worked on another water.
pub(crate) fn made_up_rate(water: &Water, ends_m: (f64, f64)) -> Vec<SumLine> {
    let length = 0.5;
    let right = ranges(water, ends_m);
    let (a, b) = made_up(|x| right.iter().any(|r| r.holds(x / length)));
    vec![
        line(minus(a, b, 1), in_c(a - b), Message::new("ask-made-up")),
        line(minus(12.5, 12.0, 1), in_m(length), Message::new("ask-sum-over")),
        result(divided(a - b, length), bare((a - b) / length), Message::new("ask-sum-per-metre")),
    ]
}

/// Where a rate is worked instead.
pub(crate) fn rate_elsewhere(water: &Water, ends_m: (f64, f64)) -> Option<(f64, f64)> {
    let right = ranges(water, ends_m);
    elsewhere(water, ends_m, |value| right.iter().any(|r| r.holds(value)), |change, length| change / length)
}

/// Whether the rate of a stretch is asked for: it can be judged, and the water changes the way it does with depth.
pub(crate) fn fits(water: &Water, ends_m: (f64, f64)) -> bool {
    let warmer = warmer_below(water, ends_m);
    let way = if water.state() == State::Inverse { warmer } else { !warmer };
    way && can_be_judged(water, ends_m)
}

impl Kind for PerMetre {
    fn routes(&self) -> &'static [State] {
        &[State::TooFew, State::Weak, State::Stratified, State::Inverse]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[
            Idea { key: NOT_DIVIDED, part: 0 },
            Idea { key: MULTIPLIED, part: 0 },
            Idea { key: UPSIDE_DOWN, part: 0 },
            Idea { key: BY_DEPTH, part: 0 },
        ]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let marks = water.marks_m();
        let stretches = |n: usize| marks.windows(n + 1).filter_map(|w| Some((*w.first()?, *w.last()?)));
        let slope = |ends: (f64, f64)| change(water, ends) / (ends.1 - ends.0);
        let apart_from_steepest = |ends: (f64, f64)| !water.holds_member(ends) && !water.holds_steepest(ends);
        let not_steepest = |ends: (f64, f64)| !water.holds_steepest(ends);
        let any = |_: (f64, f64)| true;
        // Away from the steepest first; there a single step, else the shortest stretch that can be told.
        let away: [&dyn Fn((f64, f64)) -> bool; 3] = [&apart_from_steepest, &not_steepest, &any];
        for good in away {
            for n in 1..=LONGEST {
                // Whether it fits takes longer to find out than its slope, and few are steeper than the best so far.
                let mut best: Option<(f64, (f64, f64))> = None;
                for ends in stretches(n).filter(|ends| good(*ends)) {
                    let slope = slope(ends);
                    let order =
                        |best: &(f64, (f64, f64))| slope.total_cmp(&best.0).then(best.1.0.total_cmp(&ends.0));
                    if best.as_ref().is_none_or(|best| order(best).is_ge()) && fits(water, ends) {
                        best = Some((slope, ends));
                    }
                }
                if let Some((_, ends)) = best {
                    return Ok(vec![ends.0, ends.1]);
                }
            }
        }
        Err(Dropped::plain("ask-dropped-5"))
    }

    fn plan(&self, q: &Question) -> Plan {
        let warmer = warmer_below(q.water, q.stretch());
        let mut lines = vec![Line::new(
            Message::new("ask-5-label").message("loses", loses(warmer)),
            vec![
                Field::number("rate", Message::new("ask-5-name").message("loses", loses(warmer)), None),
                Field::unit(),
            ],
        )];
        let both = q.water.sources(&[q.depth(0), q.depth(1)]).len() > 1;
        if both {
            lines.push(Line::new(Message::new("ask-label-source"), vec![Field::source()]));
        }
        Plan {
            ask: Message::new("ask-5").message("lose", lose(warmer)),
            lead: vec![stretch(Message::new("ask-5-lead"), "from", "to", q.stretch(), 1)],
            parts: vec![lines],
            notes: vec![Message::new(if both { "ask-note-units-sources" } else { "ask-note-units" })],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        judge_rate(q.water, q.stretch(), fields, source(fields))
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        rate_hint(q.water, q.stretch(), level)
    }

    fn class_answer(&self, q: &Question, _part: usize) -> Accepted {
        ranges(q.water, q.stretch()).first().map(accepted).unwrap_or_default()
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let by = q.part(part).and_then(|a| a.source).unwrap_or(Source::Mean);
        explain_rate(q.water, q.stretch(), by, Message::new("ask-5-own-words"))
    }

    fn step_m(&self, q: &Question, _fields: &Fields) -> Option<(f64, f64)> {
        Some(q.stretch())
    }

    fn elsewhere_m(&self, q: &Question) -> Option<(f64, f64)> {
        rate_elsewhere(q.water, q.stretch())
    }

    fn shows_means(&self) -> bool {
        true
    }

    fn uncovers(&self, q: &Question) -> Uncovers {
        Uncovers { steps: q.water.steps_in(q.stretch()), ..Uncovers::default() }
    }

    /// Its bar stands in the strip, where it is one step.
    fn told_by_check(&self, q: &Question) -> Option<Told> {
        (q.water.steps_in(q.stretch()).len() == 1).then_some(Told::Steps)
    }
}
