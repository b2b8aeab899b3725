//! Kind 1: how warm is your water at 3 m? Read from the picture: right within the two legs' range widened by 0.5 °C.
//!
//! Asked at a depth in the sloping part where neither of the two ideas could pass for right: depth read as height from
//! the bottom (the temperature at the mirrored depth) and axes swapped (the depth itself given as temperature). In even
//! water the mirrored depth is as warm as the right one: then it is not asked.

use crate::questions::kind::{
    Accepted, Dropped, EVERY_WATER, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question, only,
};
use crate::questions::ranges::{
    Range, Stand, Wrong, almost, digits, number, quoted, right_said, span, stand, tellable,
};
use crate::questions::say::{Numbers, bare, in_c, line, rounded};
use crate::questions::text::{Fields, Measure, field, short};
use crate::questions::water::{SLACK, Source, Water, whole};
use layercast_core::{Message, State};

/// How well a temperature can be read from the picture, °C (convention of ours).
const PICTURE_C: f64 = 0.5;
/// A depth counts as sloping from this share of the steepest step on.
const SLOPING: f64 = 0.25;

const HEIGHT: &str = "depth_as_height";
const SWAPPED: &str = "axes_swapped";

/// Kind 1.
pub(crate) struct TemperatureAt;

fn ranges(water: &Water, depth_m: f64) -> Vec<Range> {
    let middle = |(low, high): (f64, f64)| Range {
        source: Source::Mean,
        value: f64::midpoint(low, high),
        give: (high - low) / 2.0 + PICTURE_C,
    };
    water.legs_range_c(depth_m).map(middle).into_iter().collect()
}

fn wrongs(water: &Water, depth_m: f64) -> Vec<Wrong> {
    // Height counted from the last reading, or from the bed if it is known.
    let foots = [Some(water.last_m()), water.context.cast.bed_m];
    let mirrored = foots.into_iter().flatten().filter_map(|foot_m| {
        let value = water.between(foot_m - depth_m, Source::Mean)?;
        Some(Wrong { key: HEIGHT, value, give: PICTURE_C })
    });
    let swapped = Wrong { key: SWAPPED, value: depth_m, give: 0.05 };
    mirrored.chain([swapped]).collect()
}

/// Distance of the nearest idea from what is right; negative where one falls inside.
fn margin(water: &Water, depth_m: f64) -> f64 {
    let (ranges, wrongs) = (ranges(water, depth_m), wrongs(water, depth_m));
    if !tellable(&ranges, &wrongs) {
        return -1.0;
    }
    let away =
        |w: &Wrong| ranges.iter().map(|r| (w.value - r.value).abs() - r.give).fold(f64::INFINITY, f64::min);
    wrongs.iter().map(away).fold(f64::INFINITY, f64::min)
}

/// Mean slope of the steps that meet at a depth, without its sign, °C per metre.
fn slope(water: &Water, depth_m: f64) -> f64 {
    let steps = water.steps();
    let below = steps.partition_point(|s| s.top_m < depth_m - 1e-6);
    let met = [below.checked_sub(1).and_then(|above| steps.get(above)), steps.get(below)];
    let (sum, n) =
        met.into_iter().flatten().fold((0.0, 0.0), |(sum, n), s| (sum + s.cooling_c_per_m, n + 1.0));
    if n > 0.0 { f64::abs(sum / n) } else { 0.0 }
}

impl Kind for TemperatureAt {
    fn routes(&self) -> &'static [State] {
        EVERY_WATER
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: HEIGHT, part: 0 }, Idea { key: SWAPPED, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let steepest = water.steps().iter().map(|s| s.cooling_c_per_m.abs()).fold(0.0, f64::max);
        let first = water.first_m();
        let mut best: Option<((bool, bool), f64, f64)> = None;
        for z in water.marks_m().into_iter().filter(|z| *z > first) {
            let wanted = (slope(water, z) >= SLOPING * steepest, whole(z));
            // Its margin takes longer to find out.
            if best.is_some_and(|best| wanted < best.0) {
                continue;
            }
            let margin = margin(water, z);
            let order = |best: ((bool, bool), f64, f64)| {
                wanted.cmp(&best.0).then(margin.total_cmp(&best.1)).then(best.2.total_cmp(&z))
            };
            if margin > 0.0 && best.is_none_or(|best| order(best).is_ge()) {
                best = Some((wanted, margin, z));
            }
        }
        best.map(|(_, _, z)| vec![z]).ok_or_else(|| Dropped::plain("ask-dropped-1"))
    }

    fn plan(&self, q: &Question) -> Plan {
        Plan {
            ask: Message::new("ask-1").mark("depth", q.depth(0)),
            lead: Vec::new(),
            parts: vec![vec![Line::new(
                Message::new("ask-1-label"),
                vec![Field::number("temp", Message::new("ask-1-name"), None), Field::unit()],
            )]],
            notes: vec![Message::new("ask-1-note")],
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let typed = match number(fields, "temp", Measure::Temperature) {
            Ok(typed) => typed,
            Err(slip) => return *slip,
        };
        let text = field(fields, "temp");
        let yours = short(text);
        let depth = q.depth(0);
        match stand(text, &typed, typed.value, &ranges(q.water, depth), &wrongs(q.water, depth), None) {
            Stand::Right(_) => {
                let right = Message::new("ask-1-yes").text("yours", yours).mark("depth", depth);
                let accepted = Accepted { value: Some(typed.value), ..Accepted::default() };
                // Between the two legs it is what the water has; further off it is near enough for a picture.
                let (low, high) = q.water.legs_range_c(depth).unwrap_or_default();
                let worked = if typed.value >= low - SLACK && typed.value <= high + SLACK {
                    typed.value
                } else {
                    q.water.temp(depth, Source::Mean).unwrap_or_default()
                };
                let in_words = Message::new("ask-value-c").message("value", bare(worked));
                let said = right_said(right, quoted(text), (typed.value, &typed), worked, in_words, 1);
                Judged::yes(said, accepted).note(digits(q.water, &typed, q.water.reading_decimals().max(1)))
            }
            Stand::Slip(slip) => slip,
            Stand::Near => almost(Message::new("ask-1-almost").text("yours", yours)),
            Stand::Off(ideas) => match only(&ideas) {
                Some(HEIGHT) => Judged::idea(HEIGHT, Message::new("ask-1-height").mark("depth", depth)),
                Some(SWAPPED) => Judged::idea(SWAPPED, Message::new("ask-1-swapped").text("yours", yours)),
                _ => Judged::not_yet(Message::new("ask-1-no").text("yours", yours).mark("depth", depth)),
            },
        }
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 => Hint::Words(Message::new("ask-1-hint-1").mark("depth", q.depth(0))),
            2 => Hint::Words(Message::new("ask-1-hint-2").mark("depth", q.depth(0))),
            _ => {
                // Another mark, as far from the answer as can be.
                let right = q.water.temp(q.depth(0), Source::Mean).unwrap_or_default();
                let far = |l: &&layercast_core::Level| {
                    (l.temp_c - right).abs() + f64::from(u8::from(whole(l.depth_m)))
                };
                let other = q.water.levels().iter().max_by(|a, b| far(a).total_cmp(&far(b)));
                let sum = other.map(|l| {
                    let place = Message::new("ask-1-worked").m("depth", l.depth_m);
                    line(place, in_c(rounded(l.temp_c, 1)), Message::new("ask-1-worked-gloss"))
                });
                Hint::Worked(sum.into_iter().collect())
            }
        }
    }

    fn class_answer(&self, q: &Question, _part: usize) -> Accepted {
        Accepted { value: q.water.temp(q.depth(0), Source::Mean), ..Accepted::default() }
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let depth = q.depth(0);
        let level = q.water.level(depth);
        let mean = level.map_or(0.0, |l| l.temp_c);
        let gloss = |id: &'static str| Message::new(id).m("depth", depth);
        let mut sum = Vec::new();
        if let Some((down, up)) = level.and_then(|l| Some((l.down_c?, l.up_c?))) {
            sum.push(line(gloss("ask-1-sum-down"), in_c(down), Message::new("ask-sum-nothing")));
            sum.push(line(gloss("ask-1-sum-up"), in_c(up), Message::new("ask-sum-nothing")));
        } else {
            sum.push(line(gloss("ask-1-sum-one"), in_c(mean), Message::new("ask-sum-nothing")));
        }
        let fits = span(&ranges(q.water, depth))
            .map(|(low, high)| Message::new("ask-1-fits").number("low", low, 1).number("high", high, 1));
        Explained {
            shown: Message::new("ask-value-c").message("value", bare(mean)),
            sum,
            fits,
            notes: Vec::new(),
            own_words: Message::new("ask-1-own-words").mark("depth", depth),
        }
    }
}
