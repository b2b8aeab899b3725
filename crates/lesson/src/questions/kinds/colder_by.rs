//! Kind 4: how much colder is your water at 5 m than at 4 m? Right within 0.1 °C of what the mean, going down or coming
//! up gives (what rounding two readings to 0.1 can do).
//!
//! Preferably over one metre in the steep part, but not over the steepest step, which kind 6 asks for.

use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, EVERY_WATER, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, only,
};
use crate::questions::ranges::{
    Range, Stand, Wrong, accepted, almost, digits, fits_c, number, other_source, quoted, right_said, source,
    span, stand, tellable,
};
use crate::questions::say::{bare, colder, from_to, in_c, lost, minus, result, stretch};
use crate::questions::text::{Fields, Measure, field, short};
use crate::questions::water::{ROUNDING_C, Source, Water, whole};
use layercast_core::{Message, State};

const SUM: &str = "sum";
const ONE: &str = "one_temperature";

/// Kind 4.
pub(crate) struct ColderBy;

/// How much warmer the upper mark is, °C; with the sign of the mean turned positive.
pub(crate) fn changes(water: &Water, ends_m: (f64, f64)) -> Vec<(Source, f64)> {
    let sign = if warmer_below(water, ends_m) { -1.0 } else { 1.0 };
    let change = |source: Source| {
        let (a, b) = (water.temp(ends_m.0, source)?, water.temp(ends_m.1, source)?);
        Some((source, sign * (a - b)))
    };
    water.sources(&[ends_m.0, ends_m.1]).iter().copied().filter_map(change).collect()
}

/// The first of [`changes`]: that of the mean.
pub(crate) fn change(water: &Water, ends_m: (f64, f64)) -> f64 {
    let mean = |z| water.temp(z, Source::Mean);
    mean(ends_m.0).zip(mean(ends_m.1)).map_or(0.0, |(a, b)| f64::abs(a - b))
}

/// The water gets warmer over this stretch.
pub(crate) fn warmer_below(water: &Water, ends_m: (f64, f64)) -> bool {
    let mean = |z| water.temp(z, Source::Mean).unwrap_or_default();
    mean(ends_m.1) > mean(ends_m.0)
}

pub(crate) fn ranges(water: &Water, ends_m: (f64, f64)) -> Vec<Range> {
    changes(water, ends_m)
        .into_iter()
        .map(|(source, value)| Range { source, value, give: water.rounding_c() })
        .collect()
}

fn wrongs(water: &Water, ends_m: (f64, f64)) -> Vec<Wrong> {
    let mut wrongs = Vec::new();
    for source in water.sources(&[ends_m.0, ends_m.1]).iter().copied() {
        let (Some(a), Some(b)) = (water.temp(ends_m.0, source), water.temp(ends_m.1, source)) else {
            continue;
        };
        wrongs.push(Wrong { key: SUM, value: a + b, give: ROUNDING_C });
        wrongs.push(Wrong { key: ONE, value: a, give: ROUNDING_C / 2.0 });
        wrongs.push(Wrong { key: ONE, value: b, give: ROUNDING_C / 2.0 });
    }
    wrongs
}

/// "20.05 − 17.55 = | 2.5 °C | what the water lost"
pub(crate) fn difference(
    water: &Water,
    ends_m: (f64, f64),
    source: Source,
    gloss: Message,
    last: bool,
) -> Option<crate::view::SumLine> {
    let (a, b) = (water.temp(ends_m.0, source)?, water.temp(ends_m.1, source)?);
    let (a, b) = if warmer_below(water, ends_m) { (b, a) } else { (a, b) };
    let line = result(minus(a, b, 1), in_c(a - b), gloss);
    Some(crate::view::SumLine { result: last, ..line })
}

/// Steps over which a pair of neighbouring marks may reach.
const REACH: usize = 4;

/// Pairs of marks that may be asked about: a few steps apart, and one or two metres apart where the marks allow it.
fn candidates(water: &Water) -> Vec<(f64, f64)> {
    let levels = water.levels();
    let mut pairs = Vec::new();
    for (i, upper) in levels.iter().enumerate() {
        let near = levels.iter().skip(i + 1).take(REACH).map(|l| l.depth_m);
        let last_near = levels.get(i + REACH).map_or(f64::INFINITY, |l| l.depth_m);
        let metres = [1.0, 2.0].into_iter().filter_map(|m| water.level(upper.depth_m + m)).map(|l| l.depth_m);
        let far = metres.filter(|z| *z > last_near + 1e-6);
        pairs.extend(near.chain(far).map(|lower| (upper.depth_m, lower)));
    }
    pairs
}

fn fits(water: &Water, ends_m: (f64, f64)) -> bool {
    let warmer = warmer_below(water, ends_m);
    let way = match water.state() {
        State::Inverse => warmer,
        // Near 4 °C mixed water may warm downward; where water lies upside down, either way is asked.
        State::Unstable | State::Mixed => true,
        _ => !warmer,
    };
    let seen = changes(water, ends_m).iter().all(|(_, d)| *d > 0.0);
    way && seen && tellable(&ranges(water, ends_m), &wrongs(water, ends_m))
}

type Rank = ([bool; 7], f64, f64);
/// A pair of marks and its rank.
type Ranked = ((f64, f64), Rank);

/// What makes a pair of marks a good question, most important first: colder below in mixed water, a change that can be seen, away from the steepest
/// step, a metre from mark to mark, away from all that counts as steepest; then near a metre, then steep.
fn rank(water: &Water, ends_m: (f64, f64)) -> Rank {
    let height = ends_m.1 - ends_m.0;
    let change = change(water, ends_m);
    let metre = (height - 1.0).abs() < 1e-6;
    let wanted = [
        water.state() != State::Mixed || !warmer_below(water, ends_m),
        change >= 2.0 * ROUNDING_C,
        !water.holds_steepest(ends_m),
        metre && whole(ends_m.0),
        metre,
        whole(ends_m.0) && whole(ends_m.1),
        !water.holds_member(ends_m),
    ];
    (wanted, -(height - 1.0).abs(), change)
}

impl Kind for ColderBy {
    fn routes(&self) -> &'static [State] {
        EVERY_WATER
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: SUM, part: 0 }, Idea { key: ONE, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let order = |(a, x): &Ranked, (b, y): &Ranked| {
            (x.0.cmp(&y.0)).then(x.1.total_cmp(&y.1)).then(x.2.total_cmp(&y.2)).then(b.0.total_cmp(&a.0))
        };
        // Whether it fits takes longer to find out than its rank, and few are better than the best so far.
        let mut best: Option<Ranked> = None;
        for ends in candidates(water) {
            let ranked = (ends, rank(water, ends));
            if best.as_ref().is_none_or(|best| order(&ranked, best).is_ge()) && fits(water, ends) {
                best = Some(ranked);
            }
        }
        best.map(|((a, b), _)| vec![a, b]).ok_or_else(|| Dropped::plain("ask-dropped-4"))
    }

    fn plan(&self, q: &Question) -> Plan {
        let warmer = warmer_below(q.water, q.stretch());
        let mut lines = vec![Line::new(
            Message::new("ask-4-label").message("colder", colder(warmer)),
            vec![
                Field::number("drop", Message::new("ask-4-name").message("colder", colder(warmer)), None),
                Field::unit(),
            ],
        )];
        let both = q.water.sources(&[q.depth(0), q.depth(1)]).len() > 1;
        if both {
            lines.push(Line::new(Message::new("ask-label-source"), vec![Field::source()]));
        }
        let ask = Message::new("ask-4").message("colder", colder(warmer));
        Plan {
            ask: stretch(ask, "upper", "lower", q.stretch(), 0),
            lead: Vec::new(),
            parts: vec![lines],
            notes: vec![Message::new(if both { "ask-note-units-sources" } else { "ask-note-units" })],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let typed = match number(fields, "drop", Measure::Difference) {
            Ok(typed) => typed,
            Err(slip) => return *slip,
        };
        let text = field(fields, "drop");
        let yours = short(text);
        let ends = q.stretch();
        let warmer = warmer_below(q.water, ends);
        let (ranges, used) = (ranges(q.water, ends), source(fields));
        // "Colder by 2.5" and "−2.5" say the same.
        let size = typed.value.abs();
        match stand(text, &typed, size, &ranges, &wrongs(q.water, ends), used) {
            Stand::Right(range) => {
                let right = Message::new("ask-4-yes").text("yours", yours);
                let in_words = Message::new("ask-value-c").message("value", bare(range.value));
                let said = right_said(right, quoted(text), (size, &typed), range.value, in_words, 1);
                let sign = (typed.value < 0.0)
                    .then(|| Message::new("ask-note-sign").message("colder", colder(warmer)));
                let most = q.water.decimals_by(range.source);
                Judged::yes(said, accepted(&range))
                    .note(sign)
                    .note(other_source(&range, used))
                    .note(digits(q.water, &typed, most))
            }
            Stand::Slip(slip) => slip,
            Stand::Near => almost(Message::new("ask-4-almost").text("yours", yours)),
            Stand::Off(ideas) => match only(&ideas) {
                Some(SUM) => Judged::idea(SUM, Message::new("ask-4-sum").text("yours", yours)),
                Some(ONE) => Judged::idea(ONE, Message::new("ask-4-one").text("yours", yours)),
                _ => Judged::not_yet(Message::new("ask-4-no").text("yours", yours)),
            },
        }
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        let ends = q.stretch();
        match level {
            1 => Hint::Words(stretch(Message::new("ask-4-hint-1"), "upper", "lower", ends, 0)),
            2 => Hint::Words(Message::new("ask-4-hint-2")),
            _ => {
                let own = self.elsewhere_m(q).and_then(|other| worked(q.water, other, true));
                let right = ranges(q.water, ends);
                let (a, b) = made_up(|x| right.iter().any(|r| r.holds(x)));
                let other = || result(minus(a, b, 1), in_c(a - b), Message::new("ask-made-up"));
                Hint::Worked(vec![own.unwrap_or_else(other)])
            }
        }
    }

    fn class_answer(&self, q: &Question, _part: usize) -> Accepted {
        ranges(q.water, q.stretch()).first().map(accepted).unwrap_or_default()
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let ends = q.stretch();
        let source = q.part(part).and_then(|a| a.source).unwrap_or(Source::Mean);
        let warmer = warmer_below(q.water, ends);
        let value = changes(q.water, ends).iter().find(|c| c.0 == source).map_or(0.0, |c| c.1);
        let gloss = Message::new("ask-sum-change").message("lost", lost(warmer));
        Explained {
            shown: Message::new("ask-value-c").message("value", bare(value)),
            sum: difference(q.water, ends, source, gloss, true).into_iter().collect(),
            fits: span(&ranges(q.water, ends)).map(|(low, high)| fits_c(q.water, low.max(0.0), high)),
            notes: Vec::new(),
            own_words: Message::new("ask-4-own-words"),
        }
    }

    fn step_m(&self, q: &Question, _fields: &Fields) -> Option<(f64, f64)> {
        Some(q.stretch())
    }

    fn elsewhere_m(&self, q: &Question) -> Option<(f64, f64)> {
        let ends = q.stretch();
        let right = ranges(q.water, ends);
        elsewhere(q.water, ends, |value| right.iter().any(|r| r.holds(value)), |c, _| c)
    }

    fn shows_means(&self) -> bool {
        true
    }

    /// Its bar stands in the strip, where it is one step of a metre.
    fn told_by_check(&self, q: &Question) -> Option<Told> {
        let (a, b) = q.stretch();
        let one_metre = (b - a - 1.0).abs() < 1e-6 && q.water.steps_in((a, b)).len() == 1;
        one_metre.then_some(Told::Steps)
    }
}

/// A step of another place, worked: "11.25 − 10.55 = | 0.7 °C | from 6.0 to 6.5 m".
pub(crate) fn worked(water: &Water, ends_m: (f64, f64), last: bool) -> Option<crate::view::SumLine> {
    difference(water, ends_m, Source::Mean, from_to(ends_m), last)
}

/// A stretch elsewhere whose worked answer gives nothing away: it changes the same way, does not touch the asked one nor
/// the steepest, and its result is not right here. The one of the same length with the largest change is taken.
pub(crate) fn elsewhere(
    water: &Water,
    asked_m: (f64, f64),
    is_right: impl Fn(f64) -> bool,
    result: impl Fn(f64, f64) -> f64,
) -> Option<(f64, f64)> {
    let length = asked_m.1 - asked_m.0;
    let change = |ends: &(f64, f64)| changes(water, *ends).first().map_or(0.0, |c| c.1);
    let warmer = warmer_below(water, asked_m);
    let good = |ends: &(f64, f64)| {
        let c = change(ends);
        warmer_below(water, *ends) == warmer
            && c >= 2.0 * ROUNDING_C - 1e-9
            && !crate::questions::water::overlaps(*ends, asked_m)
            && !is_right(result(c, ends.1 - ends.0))
    };
    let rank = |ends: &(f64, f64)| {
        (
            !water.holds_member(*ends),
            ((ends.1 - ends.0) - length).abs() < 1e-6,
            -((ends.1 - ends.0) - length).abs(),
        )
    };
    candidates(water).into_iter().filter(good).max_by(|a, b| {
        let (x, y) = (rank(a), rank(b));
        (x.0, x.1).cmp(&(y.0, y.1)).then(x.2.total_cmp(&y.2)).then(change(a).total_cmp(&change(b)))
    })
}

/// Two temperatures of another water, where this one has no second place to show a sum on: (warmer, colder) whose worked
/// answer is not right here.
pub(crate) fn made_up(is_right: impl Fn(f64) -> bool) -> (f64, f64) {
    if is_right(6.5) { (19.6, 16.5) } else { (21.3, 14.8) }
}
