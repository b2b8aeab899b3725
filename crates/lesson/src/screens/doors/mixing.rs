//! How hard the water is to mix: the work in words, down to each depth, and which steps resist most.

use super::{group, row, said};
use crate::numbers::{Range, WithNum, mark, middle, rounded};
use crate::screens::Sight;
use crate::view::{DoorRow, DoorView, Num};
use layercast_core::order::sort_by;
use layercast_core::stability::whole::{MixingWork, Whole};
use layercast_core::stability::{Stability, StepStability, stability};
use layercast_core::{Message, State, Step};

/// Less than lifting a tenth of a kilogram by a metre is next to no work, kg.
const NEXT_TO_NOTHING_KG: f64 = 0.1;
/// Work, and a step, is told from none beyond so many standard deviations of it.
const SURE_SD: f64 = 2.0;
/// Most rows of a table.
const MOST_ROWS: usize = 6;
/// A swing longer than this is told in minutes, s.
const LONG_SWING_S: f64 = 120.0;

/// How hard the water is to mix.
pub fn view(sight: &Sight) -> DoorView {
    let analysis = sight.context.analysis;
    let found = stability(analysis, sight.prepared.cast.bed_m, None);
    let Some(column) = &found.column else { return DoorView::default() };
    let bed = mark(column.depth_m);
    // Water that is heavier on top for sure is not marked at all, so less than nothing is noise as well.
    if column.schmidt_j_m2 <= SURE_SD * column.schmidt_sd_j_m2 {
        let lead = Message::new("door-mixing-alike").num("bed", bed);
        return DoorView {
            lead: said(vec![lead]),
            notes: said(vec![Message::new("door-mixing-salt")]),
            ..DoorView::default()
        };
    }
    let all_kg = column.mixing.last().map_or(0.0, |all| all.lifted_kg_by_1_m);
    let lead = match all_kg {
        kg if kg < NEXT_TO_NOTHING_KG => Message::new("door-mixing-little"),
        kg => {
            let joules = match two_digits(column.schmidt_j_m2) {
                tenths if tenths.decimals > 0 => rounded(column.schmidt_j_m2, 0),
                whole => whole.value,
            };
            Message::new("door-mixing-lead").num("kg", two_digits(kg)).number("joules", joules, 0)
        }
    }
    .num("bed", bed);
    let down_heads = ["door-mixing-down", "door-mixing-work"].map(Message::new).to_vec();
    let step_heads = ["door-head-step", "door-mixing-resists"].map(Message::new).to_vec();
    // In mixed water single steps are noise.
    let told = analysis.state != State::Mixed;
    let steps = if told { strongest(&found, &analysis.steps) } else { Vec::new() };
    let mut notes = Vec::new();
    if !steps.is_empty() {
        notes.push(Message::new("door-mixing-unit"));
    }
    notes.extend(swing(&found).filter(|_| told));
    let sides = match found.bed_assumed {
        true => Message::new("door-mixing-box-read"),
        false => Message::new("door-mixing-box"),
    };
    notes.push(sides.num("bed", bed));
    notes.push(Message::new("door-mixing-salt"));
    DoorView {
        lead: said(vec![lead]),
        groups: [group(down_heads, downward(column)), group(step_heads, steps)]
            .into_iter()
            .flatten()
            .collect(),
        notes: said(notes),
    }
}

/// Two digits, and no more than one decimal: a box in the place of a pond tells no more.
fn two_digits(value: f64) -> Num {
    match value {
        v if v < 10.0 => Num { value: rounded(v, 1), decimals: 1 },
        v if v < 100.0 => Num { value: rounded(v, 0), decimals: 0 },
        v => {
            let units = [10.0, 100.0, 1e3, 1e4, 1e5];
            let unit = units.into_iter().find(|unit| v < 100.0 * unit).unwrap_or(1e6);
            Num { value: (v / unit).round() * unit, decimals: 0 }
        }
    }
}

/// The work down to some of the depths, and to the bed.
fn downward(column: &Whole) -> Vec<DoorRow> {
    let every = column.mixing.len().div_ceil(MOST_ROWS).max(1);
    let picked = column.mixing.iter().rev().step_by(every);
    let mut rows: Vec<DoorRow> = picked.map(work).collect();
    rows.reverse();
    rows
}

fn work(work: &MixingWork) -> DoorRow {
    let kg = work.lifted_kg_by_1_m;
    let lifted = match rounded(kg, 1) {
        kg if kg < 0.1 => Message::new("door-mixing-none"),
        _ => Message::new("door-mixing-kg").num("kg", two_digits(kg)),
    };
    row(vec![Message::new("door-depth").depth("depth", work.to_depth_m), lifted])
}

/// The steps that resist most, downward. Left out are steps that resist less than water of 4 °C under 5 °C does, and those
/// whose two temperatures the noise of the readings makes by itself.
fn strongest(found: &Stability, read: &[Step]) -> Vec<DoorRow> {
    let more_than_noise = |step: &StepStability| {
        let same = |read: &&Step| read.top_m == step.top_m && read.bottom_m == step.bottom_m;
        read.iter().find(same).is_some_and(|read| read.cooling_c_per_m.abs() > SURE_SD * read.u_c_per_m)
    };
    let resists = |step: &&StepStability| step.resistance >= 1.0 && more_than_noise(step);
    let mut steps: Vec<&StepStability> = found.steps.iter().filter(resists).collect();
    sort_by(&mut steps, |a, b| b.resistance.total_cmp(&a.resistance).then(a.top_m.total_cmp(&b.top_m)));
    steps.truncate(MOST_ROWS);
    let most = steps.first().map_or(0.0, |step| step.resistance);
    sort_by(&mut steps, |a, b| a.top_m.total_cmp(&b.top_m));
    let one = |step: &&StepStability| {
        let times = Message::new("door-mixing-times").number("times", rounded(step.resistance, 0), 0);
        DoorRow {
            own: step.resistance >= most,
            per_cent: Some((100.0 * step.resistance / most).round().clamp(0.0, 100.0) as u8),
            ..row(vec![Range::of_marks(step.top_m, step.bottom_m).said(), times])
        }
    };
    steps.iter().map(one).collect()
}

/// How fast water springs back where it does so fastest.
fn swing(found: &Stability) -> Option<Message> {
    let springs = found.steps.iter().filter_map(|step| Some((step, step.period_s?)));
    let (step, period_s) = springs.min_by(|a, b| a.1.total_cmp(&b.1))?;
    let depth = middle((step.top_m + step.bottom_m) / 2.0);
    Some(if period_s > LONG_SWING_S {
        Message::new("door-mixing-swing-minutes").num("depth", depth).number(
            "minutes",
            rounded(period_s / 60.0, 0),
            0,
        )
    } else {
        Message::new("door-mixing-swing").num("depth", depth).number("seconds", rounded(period_s, 0), 0)
    })
}
