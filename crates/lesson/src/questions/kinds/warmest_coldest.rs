//! Kind 101 (even water): how much warmer is your warmest reading than your coldest? Within 0.1 °C, by single readings,
//! the mean, going down or coming up.

use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, only,
};
use crate::questions::ranges::{
    Range, Stand, Wrong, accepted, almost, digits, fits_c, number, quoted, right_said, span, stand, tellable,
};
use crate::questions::say::{bare, from_to, in_c, minus, result};
use crate::questions::text::{Fields, Measure, field, short};
use crate::questions::water::{ROUNDING_C, SLACK, Source, Water};
use layercast_core::{Message, State};

const SUM: &str = "sum";
const ONE: &str = "one_temperature";

/// Kind 101.
pub(crate) struct WarmestColdest;

/// Warmest and coldest by each way of reading; single readings first.
fn extremes(water: &Water) -> Vec<(Source, f64, f64)> {
    let found = water.analysis();
    let single = found.warmest.zip(found.coldest).map(|(w, c)| (Source::Mean, w.0, c.0));
    let of = |source: Source| {
        let temps: Vec<f64> = water.levels().iter().filter_map(|l| Water::of(l, source)).collect();
        let high = temps.iter().copied().fold(f64::NEG_INFINITY, f64::max);
        let low = temps.iter().copied().fold(f64::INFINITY, f64::min);
        (high >= low).then_some((source, high, low))
    };
    single.into_iter().chain([Source::Mean, Source::Down, Source::Up].into_iter().filter_map(of)).collect()
}

fn ranges(water: &Water) -> Vec<Range> {
    extremes(water)
        .into_iter()
        .map(|(source, high, low)| Range { source, value: high - low, give: water.rounding_c() })
        .collect()
}

fn wrongs(water: &Water) -> Vec<Wrong> {
    (extremes(water).into_iter())
        .flat_map(|(_, high, low)| {
            [
                Wrong { key: SUM, value: high + low, give: ROUNDING_C },
                Wrong { key: ONE, value: high, give: ROUNDING_C / 2.0 },
                Wrong { key: ONE, value: low, give: ROUNDING_C / 2.0 },
            ]
        })
        .collect()
}

impl Kind for WarmestColdest {
    fn routes(&self) -> &'static [State] {
        &[State::Mixed]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: SUM, part: 0 }, Idea { key: ONE, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        if tellable(&ranges(water), &wrongs(water)) {
            Ok(Vec::new())
        } else {
            Err(Dropped::plain("ask-dropped-101"))
        }
    }

    fn plan(&self, _q: &Question) -> Plan {
        Plan {
            ask: Message::new("ask-101"),
            lead: Vec::new(),
            parts: vec![vec![Line::new(
                Message::new("ask-101-label"),
                vec![Field::number("apart", Message::new("ask-101-name"), None), Field::unit()],
            )]],
            notes: vec![Message::new("ask-note-units")],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let typed = match number(fields, "apart", Measure::Difference) {
            Ok(typed) => typed,
            Err(slip) => return *slip,
        };
        let text = field(fields, "apart");
        let told = |id: &'static str| Message::new(id).text("yours", short(text));
        match stand(text, &typed, typed.value.abs(), &ranges(q.water), &wrongs(q.water), None) {
            Stand::Right(range) => {
                let in_words = Message::new("ask-value-c").message("value", bare(range.value));
                let (right, size) = (told("ask-101-yes"), (typed.value.abs(), &typed));
                let said = right_said(right, quoted(text), size, range.value, in_words, 1);
                Judged::yes(said, accepted(&range)).note(digits(
                    q.water,
                    &typed,
                    q.water.decimals_by(Source::Mean),
                ))
            }
            Stand::Slip(slip) => slip,
            Stand::Near => almost(told("ask-101-almost")),
            Stand::Off(ideas) => match only(&ideas) {
                Some(SUM) => Judged::idea(SUM, told("ask-4-sum")),
                Some(ONE) => Judged::idea(ONE, told("ask-4-one")),
                _ => Judged::not_yet(told("ask-101-no")),
            },
        }
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 => Hint::Words(Message::new("ask-101-hint-1")),
            2 => Hint::Words(Message::new("ask-4-hint-2")),
            _ => {
                // A pair of marks whose difference is not right here.
                let right = ranges(q.water);
                let levels = q.water.levels();
                let pair = levels.first().and_then(|top| {
                    let apart = |l: &layercast_core::Level| (top.temp_c - l.temp_c).abs();
                    let shows = |l: &&layercast_core::Level| {
                        apart(l) >= ROUNDING_C - SLACK && !right.iter().any(|r| r.holds(apart(l)))
                    };
                    Some((top, levels.iter().skip(1).find(shows)?))
                });
                let sum = pair.map(|(a, b)| {
                    let (high, low) = (a.temp_c.max(b.temp_c), a.temp_c.min(b.temp_c));
                    result(minus(high, low, 1), in_c(high - low), from_to((a.depth_m, b.depth_m)))
                });
                Hint::Worked(sum.map_or_else(made_up, |line| vec![line]))
            }
        }
    }

    fn class_answer(&self, q: &Question, _part: usize) -> Accepted {
        ranges(q.water).first().map(accepted).unwrap_or_default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let all = extremes(q.water);
        // The way of reading that gives the accepted number: the sum is its own.
        let own = q
            .part(0)
            .and_then(|a| a.value)
            .and_then(|value| all.iter().position(|e| (e.1 - e.2 - value).abs() < SLACK));
        let at = own.unwrap_or(0);
        let (source, high, low) = all.get(at).copied().unwrap_or((Source::Mean, 0.0, 0.0));
        let several = all.iter().any(|e| (e.1 - e.2 - (high - low)).abs() > SLACK);
        let by = (at > 0 && several).then(|| {
            Message::new(match source {
                Source::Mean => "ask-note-by-mean",
                Source::Down => "ask-note-by-down",
                Source::Up => "ask-note-by-up",
            })
        });
        Explained {
            shown: Message::new("ask-value-c").message("value", bare(high - low)),
            sum: vec![result(minus(high, low, 1), in_c(high - low), Message::new("ask-101-gloss"))],
            fits: span(&ranges(q.water)).map(|(low, high)| fits_c(q.water, low.max(0.0), high)),
            notes: by.into_iter().collect(),
            own_words: Message::new("ask-101-own-words"),
        }
    }

    fn shows_means(&self) -> bool {
        true
    }
}

/// Where every difference in this water is right, another water shows the way.
fn made_up() -> Vec<crate::view::SumLine> {
    vec![result(minus(21.3, 14.8, 1), in_c(6.5), Message::new("ask-made-up"))]
}
