//! What a number of the teacher's own is on this water, and how near to it is right.

use crate::document::{OwnBy, Quantity};
use crate::questions::kind::Dropped;
use crate::questions::kinds::{colder_by, per_metre};
use crate::questions::ranges::Range;
use crate::questions::say::Numbers;
use crate::questions::text::Measure;
use crate::questions::water::{SLACK, Source, Water};
use layercast_core::Message;

/// How well a temperature between two marks is known, °C: as one read from the picture (convention of ours).
const BETWEEN_C: f64 = 0.5;

/// What is asked, worked out.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Asking {
    /// Depths in the question's id, metres.
    pub depths_m: Vec<f64>,
    /// What is right, by each way of reading; the mean first.
    pub ranges: Vec<Range>,
    /// What it measures.
    pub measure: Measure,
    /// Its sign counts.
    pub has_sign: bool,
}

/// What is asked of this water, or why it cannot be.
pub(crate) fn asking(water: &Water, by: &OwnBy) -> Result<Asking, Dropped> {
    let quantity = by.quantity.ok_or_else(|| Dropped::plain("ask-own-dropped-unfinished"))?;
    let depths_m: Vec<f64> = [by.at_m, by.to_m].into_iter().flatten().take(quantity.depths()).collect();
    if let Some(out) = depths_m.iter().find(|z| **z > water.last_m() + SLACK || **z < water.first_m() - SLACK)
    {
        let why = Message::new("ask-own-dropped-depth").m("depth", *out).m("last", water.last_m());
        return Err(Dropped { why, tells: false });
    }
    let (ranges, measure) = match quantity {
        Quantity::TempAt => {
            (temps_at(water, depths_m.first().copied().unwrap_or_default()), Measure::Temperature)
        }
        Quantity::Apart | Quantity::PerMetre => {
            let ends = two(&depths_m);
            if water.level(ends.0).is_none() || water.level(ends.1).is_none() {
                let why = Message::new("ask-own-dropped-marks").m("top", ends.0).m("bottom", ends.1);
                return Err(Dropped { why, tells: false });
            }
            match quantity {
                Quantity::Apart => (colder_by::ranges(water, ends), Measure::Difference),
                _ => (per_metre::ranges(water, ends), Measure::PerMetre),
            }
        }
        Quantity::DepthOf => (depths_of(water, by.temp_c.unwrap_or_default())?, Measure::Length),
        Quantity::Warmest => (extremes(water, |(_, high)| high), Measure::Temperature),
        Quantity::Coldest => (extremes(water, |(low, _)| low), Measure::Temperature),
        Quantity::WarmestColdest => (extremes(water, |(low, high)| high - low), Measure::Difference),
    };
    let has_sign = measure == Measure::Temperature;
    Ok(Asking { depths_m, ranges, measure, has_sign })
}

/// The two depths, upper first.
pub(crate) fn two(depths_m: &[f64]) -> (f64, f64) {
    match *depths_m {
        [a, b] => (a.min(b), a.max(b)),
        _ => (0.0, 0.0),
    }
}

fn temps_at(water: &Water, depth_m: f64) -> Vec<Range> {
    let give = if water.level(depth_m).is_some() { water.rounding_c() } else { BETWEEN_C };
    let of = |source: &Source| Some(Range { source: *source, value: water.between(depth_m, *source)?, give });
    sources(water).iter().filter_map(of).collect()
}

/// The depth where the water is so warm, by each way of reading; right within half of the interval it lies in.
fn depths_of(water: &Water, temp_c: f64) -> Result<Vec<Range>, Dropped> {
    let reason =
        |why: &'static str| Dropped { why: Message::new(why).number("temp", temp_c, 1), tells: false };
    let mut ranges = Vec::new();
    for source in sources(water) {
        let at: Vec<(f64, f64)> =
            water.levels().iter().filter_map(|l| Some((l.depth_m, Water::of(l, *source)?))).collect();
        let crosses = |w: &&[(f64, f64)]| match w {
            [(_, a), (_, b)] => (a - temp_c) * (b - temp_c) < 0.0 || (*b - temp_c).abs() <= SLACK,
            _ => false,
        };
        let found: Vec<&[(f64, f64)]> = at.windows(2).filter(crosses).collect();
        let &[&[(za, a), (zb, b)]] = found.as_slice() else {
            return Err(reason(if found.is_empty() {
                "ask-own-dropped-never"
            } else {
                "ask-own-dropped-often"
            }));
        };
        let value = za + (zb - za) * (a - temp_c) / (a - b);
        ranges.push(Range { source: *source, value, give: (zb - za) / 2.0 });
    }
    Ok(ranges)
}

/// A number made of the coldest and the warmest reading, by each way.
fn extremes(water: &Water, of: impl Fn((f64, f64)) -> f64) -> Vec<Range> {
    let ends = |source: &Source| {
        let temps = || water.levels().iter().filter_map(|l| Water::of(l, *source));
        let (low, high) = (temps().fold(f64::INFINITY, f64::min), temps().fold(f64::NEG_INFINITY, f64::max));
        let range = Range { source: *source, value: of((low, high)), give: water.rounding_c() };
        (low <= high).then_some(range)
    };
    sources(water).iter().filter_map(ends).collect()
}

/// By which readings a number of the whole cast can be had; the mean first.
fn sources(water: &Water) -> &'static [Source] {
    let both = water.analysis().pairs.count > 0;
    if both { &[Source::Mean, Source::Down, Source::Up] } else { &[Source::Mean] }
}
