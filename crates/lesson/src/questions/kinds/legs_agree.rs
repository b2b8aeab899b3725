//! Kind 13: how well do going down and coming up agree? The typical difference of a reading, s = √(Σd²/2n) or
//! 0.886 times the mean difference without signs (methods 3.1): right within 0.05 °C or 20 % of either.
//!
//! Where the legs differ one way only, the mean with signs is as large as without: the number alone cannot show whether the
//! signs were dropped. So the answer says which mean was taken, and that idea is known by it, whatever the number.

use crate::questions::kind::{
    Accepted, Dropped, EVERY_WATER, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question,
};
use crate::questions::ranges::{
    Range, Stand, accepted, almost, digits, number, quoted, right_said, span, stand,
};
use crate::questions::say::{Numbers, fitting, in_c, line, minus, result, rounded, spread_decimals};
use crate::questions::text::{Fields, Measure, field, short};
use crate::questions::water::{Source, Water};
use layercast_core::{Message, State};

/// Mean difference without signs to standard deviation of one reading (methods 3.1).
pub(crate) const MEAN_TO_S: f64 = 0.886;
/// Give, °C.
const GIVE_C: f64 = 0.05;
/// Give, as a share.
const GIVE_SHARE: f64 = 0.2;
/// Smallest mean difference that a worked hint shows, °C: below it 0.886 of it looks like all of it.
const LEAST_SHOWN_C: f64 = 0.1;
/// Fewest marks read twice.
const FEWEST: usize = 2;

const SIGNED: &str = "mean_with_signs";

/// Kind 13.
pub(crate) struct LegsAgree;

fn ranges(water: &Water) -> Vec<Range> {
    let pairs = &water.analysis().pairs;
    let values = [pairs.s_c, by_mean_c(water)];
    (values.into_iter().flatten())
        .map(|value| Range { source: Source::Mean, value, give: (GIVE_SHARE * value).max(GIVE_C) })
        .collect()
}

/// How far off one reading typically is by the mean difference without signs, °C.
fn by_mean_c(water: &Water) -> Option<f64> {
    water.analysis().pairs.mean_abs_c.map(|m| MEAN_TO_S * m)
}

/// Depths read twice, with both readings.
fn read_twice(water: &Water) -> Vec<(f64, f64, f64)> {
    water.levels().iter().filter_map(|l| Some((l.depth_m, l.down_c?, l.up_c?))).collect()
}

impl Kind for LegsAgree {
    fn routes(&self) -> &'static [State] {
        EVERY_WATER
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: SIGNED, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        match water.analysis().pairs.count {
            0 => Err(Dropped::plain("ask-dropped-13")),
            n if n < FEWEST => Err(Dropped::plain("ask-dropped-13-one")),
            _ => Ok(Vec::new()),
        }
    }

    fn plan(&self, _q: &Question) -> Plan {
        let ways = vec![
            ("", Message::new("ask-13-way-choose")),
            ("unsigned", Message::new("ask-13-way-unsigned")),
            ("signed", Message::new("ask-13-way-signed")),
            ("squares", Message::new("ask-13-way-squares")),
        ];
        let way =
            Field { input: Input::List(ways), ..Field::number("way", Message::new("ask-13-name-way"), None) };
        let number = Field::number("apart", Message::new("ask-13-name"), None);
        Plan {
            ask: Message::new("ask-13"),
            lead: ["ask-13-lead", "ask-13-lead-one"].map(Message::new).to_vec(),
            parts: vec![vec![
                Line::new(Message::new("ask-13-label"), vec![number, Field::unit()]),
                Line::new(Message::new("ask-13-label-way"), vec![way]),
            ]],
            notes: ["ask-note-units", "ask-13-note-squares"].map(Message::new).to_vec(),
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let typed = match number(fields, "apart", Measure::Difference) {
            Ok(typed) => typed,
            Err(slip) => return *slip,
        };
        let text = field(fields, "apart");
        let told = |id: &'static str| Message::new(id).text("yours", short(text));
        if field(fields, "way") == "signed" {
            return Judged::idea(SIGNED, told("ask-13-signed"));
        }
        match stand(text, &typed, typed.value, &ranges(q.water), &[], None) {
            Stand::Right(range) => {
                // By the way that was taken: squares, else the mean, which is what the sum shows.
                let by_squares = field(fields, "way") == "squares";
                let worked = if by_squares { q.water.analysis().pairs.s_c } else { by_mean_c(q.water) };
                let worked = rounded(worked.unwrap_or(range.value), 2);
                let in_words = Message::new("ask-value-c")
                    .message("value", Message::new("ask-sum-number").number("value", worked, 2));
                let right = told("ask-13-yes");
                let said = right_said(right, quoted(text), (typed.value, &typed), worked, in_words, 2);
                let most = q.water.decimals_by(Source::Mean);
                Judged::yes(said, accepted(&range)).note(digits(q.water, &typed, most))
            }
            Stand::Slip(slip) => slip,
            Stand::Near => almost(told("ask-13-almost")),
            Stand::Off(_) => Judged::not_yet(told("ask-13-no")),
        }
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 => Hint::Words(Message::new("ask-13-hint-1")),
            2 => Hint::Words(Message::new("ask-13-hint-2")),
            _ => Hint::Worked(worked(&read_twice(q.water), &ranges(q.water))),
        }
    }

    fn class_answer(&self, q: &Question, _part: usize) -> Accepted {
        ranges(q.water).last().map(accepted).unwrap_or_default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let pairs = &q.water.analysis().pairs;
        let mean = pairs.mean_abs_c.unwrap_or_default();
        let s = pairs.s_c.unwrap_or_default();
        let two = |value: f64| Message::new("ask-sum-c").number("value", value, 2);
        let places = times_places(mean);
        let times = Message::new("ask-13-sum-times").number("mean", rounded(mean, places), places);
        let notes =
            vec![Message::new("ask-13-why"), Message::new("ask-13-squares").number("s", rounded(s, 2), 2)];
        let sum = vec![
            line(
                Message::new("ask-13-sum-mean").count("n", pairs.count),
                Message::new("ask-sum-c").number("value", rounded(mean, places), places),
                Message::new("ask-13-sum-mean-gloss"),
            ),
            result(times, two(rounded(MEAN_TO_S * mean, 2)), Message::new("ask-13-sum-times-gloss")),
        ];
        let fits = span(&ranges(q.water)).map(|(low, high)| {
            Message::new("ask-13-fits").number("low", low.max(0.0), 2).number("high", high, 2)
        });
        Explained {
            shown: Message::new("ask-value-c").message(
                "value",
                Message::new("ask-sum-number").number("value", rounded(MEAN_TO_S * mean, 2), 2),
            ),
            sum,
            fits,
            notes,
            own_words: Message::new("ask-13-own-words"),
        }
    }
}

/// Decimals of a mean with which 0.886 times it comes to what is shown.
fn times_places(mean: f64) -> u8 {
    fitting(spread_decimals(mean), (rounded(MEAN_TO_S * mean, 2), 2), &|d| MEAN_TO_S * rounded(mean, d))
}

/// The first three marks whose own mean gives nothing away, worked.
fn worked(twice: &[(f64, f64, f64)], right: &[Range]) -> Vec<crate::view::SumLine> {
    let mean = |w: &[(f64, f64, f64)]| w.iter().map(|(_, a, b)| (a - b).abs()).sum::<f64>() / w.len() as f64;
    // Large enough to see what the factor does, and not right here.
    let quiet = |w: &&[(f64, f64, f64)]| {
        mean(w) >= LEAST_SHOWN_C && !right.iter().any(|r| r.holds(MEAN_TO_S * mean(w)))
    };
    let Some(three) = twice.windows(3.min(twice.len().max(1))).find(quiet) else {
        // Nowhere without giving it away: invented differences show the way.
        return made_up(right);
    };
    let mut lines: Vec<_> = (three.iter())
        .map(|(z, down, up)| {
            let (high, low) = (down.max(*up), down.min(*up));
            line(minus(high, low, 1), in_c(high - low), Message::new("ask-13-worked-at").m("depth", *z))
        })
        .collect();
    let m = mean(three);
    let places = times_places(m);
    let times = Message::new("ask-13-sum-times").number("mean", rounded(m, places), places);
    lines.push(result(times, in_c(rounded(MEAN_TO_S * m, 2)), Message::new("ask-13-sum-times-gloss")));
    lines
}

/// Three differences of another water, large enough to give nothing away.
fn made_up(right: &[Range]) -> Vec<crate::view::SumLine> {
    let near = right.iter().any(|r| r.holds(MEAN_TO_S * 0.9));
    let apart = if near { [3.6, 1.8, 2.7] } else { [1.2, 0.6, 0.9] };
    let mean = apart.iter().sum::<f64>() / 3.0;
    let place = apart
        .iter()
        .zip(["a", "b", "c"])
        .fold(Message::new("ask-13-made-up"), |m, (d, id)| m.number(id, *d, 1));
    let times = Message::new("ask-13-sum-times").number("mean", mean, 2);
    let value = Message::new("ask-sum-c").number("value", MEAN_TO_S * mean, 2);
    vec![
        line(place, in_c(mean), Message::new("ask-made-up")),
        result(times, value, Message::new("ask-13-sum-times-gloss")),
    ]
}
