//! What deserves a second look: where, what was written, why it is odd, two or three exact ways out. And what a person
//! decided, with the way back.
//!
//! Long because every kind of doubt has its own sentence and ways out.

use super::{Sight, way};
use crate::action::Action;
use crate::numbers::{WithNum, reading_decimals, rounded, temp_decimals};
use crate::view::{DoubtView, Way};
use layercast_core::order::{sort_by, sort_numbers};
use layercast_core::{Doubt, Flag, Leg, Level, Message, State, Switch};
use layercast_exchange::document::{CellDoubt, DoubtedCell, Entry, LegDoc, SwitchDoc, Why, cell_doubts};
use layercast_exchange::number::quantity;
use std::collections::{BTreeMap, BTreeSet};

/// A doubt and the readings it is about.
pub struct Block {
    /// The readings whose cells carry the sign.
    pub entries: Vec<usize>,
    /// What is said.
    pub view: DoubtView,
    /// Shallowest depth it is about, for the order of the blocks; deepest last where there is none.
    depth_m: f64,
    of_water: bool,
}

/// Readings by depth in millionths of a metre: depths that close are one.
type ByDepth = BTreeMap<i64, Vec<usize>>;

fn depth_key(depth_m: f64) -> i64 {
    (depth_m * 1e6).round() as i64
}

fn by_depth(sight: &Sight) -> ByDepth {
    let mut by_depth = ByDepth::new();
    for i in 0..sight.prepared.cast.readings.len() {
        if let Some(depth_m) = depth_of(sight, i) {
            by_depth.entry(depth_key(depth_m)).or_default().push(i);
        }
    }
    by_depth
}

fn at_depth(by_depth: &ByDepth, depth_m: f64) -> &[usize] {
    by_depth.get(&depth_key(depth_m)).map_or(&[], Vec::as_slice)
}

impl Block {
    /// About all temperatures: no single cell carries its sign.
    pub fn of_all(view: DoubtView) -> Self {
        Self { entries: Vec::new(), view, depth_m: 0.0, of_water: false }
    }

    /// About the water (heavier on top), not about a cell or a pair.
    pub fn is_of_water(&self) -> bool {
        self.of_water
    }
}

/// All doubts not settled yet, in the order of the rows.
pub fn doubts(sight: &Sight) -> Vec<Block> {
    let mut blocks: Vec<Block> =
        cell_doubts(&sight.notebook.cast).into_iter().filter_map(|doubt| cell_block(sight, &doubt)).collect();
    let mut done: BTreeSet<usize> = BTreeSet::new();
    let by_depth = by_depth(sight);
    blocks.extend(heavier_block(sight).inspect(|block| done.extend(&block.entries)));
    for (i, checked) in sight.context.analysis.checked.iter().enumerate() {
        let Some(doubt) = checked.doubt.filter(|_| !done.contains(&i)) else { continue };
        let block = match doubt {
            Doubt::Range { point_lost_c } => range_block(sight, i, point_lost_c, checked.gross_range),
            Doubt::Spike { neighbours_c, meant_c } => spike_block(sight, i, neighbours_c, meant_c),
            Doubt::Pair { .. } => {
                let here = depth_of(sight, i).map_or(&[][..], |depth_m| at_depth(&by_depth, depth_m));
                let block = pair_block(sight, i, here);
                done.extend(here.iter().filter(|_| block.is_none()));
                block
            }
            Doubt::Inversion { other_depth_m } => inversion_block(sight, i, other_depth_m, &by_depth),
        };
        if let Some(block) = block {
            done.extend(&block.entries);
            blocks.push(block);
        }
    }
    sort_by(&mut blocks, |a, b| a.depth_m.total_cmp(&b.depth_m));
    blocks
}

/// Which doubt each reading's cell carries, of the first `shown` blocks.
pub fn doubt_of(blocks: &[Block], shown: usize) -> BTreeMap<usize, usize> {
    let mut of = BTreeMap::new();
    for (i, block) in blocks.iter().take(shown).enumerate() {
        for entry in &block.entries {
            of.entry(*entry).or_insert(i);
        }
    }
    of
}

fn entry<'a>(sight: &Sight<'a>, i: usize) -> Option<&'a Entry> {
    sight.notebook.cast.entries.get(i)
}

/// The depth of a reading as it is analysed, corrected; of one that is not, as written.
fn depth_of(sight: &Sight, i: usize) -> Option<f64> {
    let corrected_m = sight.prepared.cast.readings.get(i).map(|reading| reading.depth_m);
    corrected_m.filter(|depth_m| depth_m.is_finite()).or_else(|| mark_of(sight, i))
}

/// The mark of a reading as it stands in the table, before corrections.
fn mark_of(sight: &Sight, i: usize) -> Option<f64> {
    entry(sight, i).and_then(|entry| entry.depth.current()).filter(|depth_m| depth_m.is_finite())
}

/// The mark in the table for a depth that is analysed.
fn mark_at(sight: &Sight, depth_m: f64) -> f64 {
    if sight.notebook.cast.corrections.is_empty() {
        return depth_m;
    }
    let mut readings = sight.prepared.cast.readings.iter();
    let at = readings.position(|reading| (reading.depth_m - depth_m).abs() <= 1e-6);
    at.and_then(|i| mark_of(sight, i)).unwrap_or(depth_m)
}

/// How much corrections took from a temperature, °C: what is said of the reading is said as it stands in the table.
fn taken_off(sight: &Sight, i: usize) -> f64 {
    let temp_c = |cast: &layercast_core::Cast| cast.readings.get(i).and_then(|reading| reading.temp_c);
    temp_c(&sight.prepared.raw)
        .zip(temp_c(&sight.prepared.cast))
        .map_or(0.0, |(raw_c, temp_c)| raw_c - temp_c)
}

/// "4.0 m, going down"; without a depth "Line 4, going down".
fn place(entry: &Entry) -> Message {
    let Some(depth_m) = entry.depth.current() else {
        let id = match (entry.line.is_some(), entry.leg) {
            (true, LegDoc::Down) => Message::new("log-place-line-down"),
            (true, LegDoc::Up) => Message::new("log-place-line-up"),
            (true, LegDoc::Unknown) => Message::new("log-place-line-one"),
            (false, _) => return Message::new("log-place-no-depth"),
        };
        return id.count("line", entry.line.unwrap_or_default() as usize);
    };
    let id = match entry.leg {
        LegDoc::Down => Message::new("log-place-down"),
        LegDoc::Up => Message::new("log-place-up"),
        LegDoc::Unknown => Message::new("log-place-one"),
    };
    id.depth("depth", depth_m)
}

fn leave_out(entries: Vec<usize>) -> Way {
    way("log-leave-it-out", Action::LeaveOut { entries })
}

fn keep(entries: Vec<usize>) -> Way {
    way("log-it-was-like-that", Action::Keep { entries })
}

/// "Make it 17.7"; `None` for what lake water can hardly be either.
fn make_temp(sight: &Sight, entry: usize, value_c: f64) -> Option<Way> {
    if !(0.0..=32.0).contains(&value_c) {
        return None;
    }
    let digit_c = sight.notebook.cast.digit_c;
    let read_to = reading_decimals(digit_c);
    // A value that has more decimals than the readings is shown with them, unless it comes from °F.
    let exact =
        [read_to, 2, 3].into_iter().find(|decimals| (rounded(value_c, *decimals) - value_c).abs() < 1e-9);
    let decimals = exact.unwrap_or(read_to);
    let places = usize::from(decimals);
    let shown = rounded(value_c, decimals);
    Some(Way {
        label: Message::new("log-make-it").number("value", shown, decimals).into(),
        action: Action::MakeTemp { entry, value_c, text: format!("{shown:.places$}") },
        main: false,
        waits: None,
    })
}

fn block(sight: &Sight, entries: Vec<usize>, place: Message, text: Message, ways: Vec<Way>) -> Block {
    let depth_m = entries.first().and_then(|i| depth_of(sight, *i));
    let view = DoubtView {
        place: place.into(),
        text: text.into(),
        ways,
        type_entry: entries.first().copied(),
        type_depth: false,
        depth_m,
    };
    Block { entries, view, depth_m: depth_m.unwrap_or(f64::MAX), of_water: false }
}

/// A cell that cannot be right as it is written.
fn cell_block(sight: &Sight, doubt: &CellDoubt) -> Option<Block> {
    let first = *doubt.entries.first()?;
    let is_depth = doubt.cell == DoubtedCell::Depth;
    let mut ways = Vec::new();
    for proposal in doubt.proposals.iter().take(2) {
        // A button shows what would be written, in the table's own unit.
        let shown = quantity(&proposal.text).map_or(proposal.value, |quantity| quantity.value);
        let text = proposal.text.clone();
        ways.push(Way {
            label: Message::new("log-make-it").number("value", shown, proposal.decimals).into(),
            action: if is_depth {
                Action::MakeDepth { entry: first, value_m: proposal.value, text }
            } else {
                Action::MakeTemp { entry: first, value_c: proposal.value, text }
            },
            main: false,
            waits: None,
        });
    }
    ways.push(leave_out(doubt.entries.clone()));
    if matches!(doubt.why, Why::OutOfOrder { .. }) {
        ways.push(keep(doubt.entries.clone()));
    }
    let at = match doubt.line {
        Some(line) if is_depth => Message::new("log-place-line-depth").count("line", line as usize),
        _ => place(entry(sight, first)?),
    };
    let mut block = block(sight, doubt.entries.clone(), at, doubt.message(), ways);
    block.view.type_depth = is_depth;
    if is_depth {
        block.view.depth_m = None;
    }
    Some(block)
}

/// Outside what lake water can be.
fn range_block(sight: &Sight, i: usize, point_lost_c: Option<f64>, flag: Flag) -> Option<Block> {
    let entry = entry(sight, i)?;
    let temp_c = entry.temp.current()?;
    let written = entry.temp.current_text();
    let message = match (flag, temp_c < 0.0, is_as_written(entry)) {
        (Flag::Fail, false, true) => Message::new("log-doubt-too-warm"),
        (Flag::Fail, false, false) => Message::new("log-doubt-too-warm-converted"),
        (Flag::Fail, true, true) => Message::new("log-doubt-too-cold"),
        (Flag::Fail, true, false) => Message::new("log-doubt-too-cold-converted"),
        (_, false, _) => Message::new("log-doubt-very-warm"),
        (_, true, _) => Message::new("log-doubt-very-cold"),
    };
    // The point was lost from what was written, not from what corrections made of it.
    let is_corrected = taken_off(sight, i).abs() > 1e-9;
    let meant_c = point_lost_c.map(|meant_c| if is_corrected { temp_c / 10.0 } else { meant_c });
    let meant = meant_c.and_then(|meant_c| make_temp(sight, i, meant_c));
    let ask = if meant.is_some() {
        Message::new("log-ask-point-lost")
    } else {
        Message::new("log-ask-what-was-it")
    };
    let whole = temp_c.fract().abs() < 1e-9;
    let decimals = if whole { 0 } else { temp_decimals(temp_c) };
    let text = message.text("written", written).number("temp", rounded(temp_c, decimals), decimals);
    let mut ways: Vec<Way> = meant.into_iter().collect();
    ways.push(leave_out(vec![i]));
    // What no lake water can be is never used, whatever is decided.
    if flag != Flag::Fail {
        ways.push(keep(vec![i]));
    }
    Some(block(sight, vec![i], place(entry), text.message("ask", ask), ways))
}

/// Sticks out from the readings above and below.
fn spike_block(sight: &Sight, i: usize, neighbours_c: (f64, f64), meant_c: Option<f64>) -> Option<Block> {
    let entry = entry(sight, i)?;
    let decimals = reading_decimals(sight.notebook.cast.digit_c);
    let off_c = taken_off(sight, i);
    let neighbours_c = (neighbours_c.0 + off_c, neighbours_c.1 + off_c);
    let meant_c =
        meant_c.map(|meant_c| if off_c.abs() > 1e-9 { rounded(meant_c + off_c, decimals) } else { meant_c });
    let text = match (is_as_written(entry), entry.temp.current()) {
        (false, Some(temp_c)) => {
            Message::new("log-doubt-spike-converted").number("temp", rounded(temp_c, decimals), decimals)
        }
        _ => Message::new("log-doubt-spike"),
    };
    let text = text
        .text("written", entry.temp.current_text())
        .number("above", neighbours_c.0, decimals)
        .number("below", neighbours_c.1, decimals);
    let mut ways: Vec<Way> = meant_c.and_then(|meant_c| make_temp(sight, i, meant_c)).into_iter().collect();
    ways.push(leave_out(vec![i]));
    ways.push(keep(vec![i]));
    Some(block(sight, vec![i], place(entry), text, ways))
}

/// Down and up too far apart: both are listed. Where the other one is doubted for a reason of its own, that comes first.
fn pair_block(sight: &Sight, i: usize, here: &[usize]) -> Option<Block> {
    let depth_m = depth_of(sight, i)?;
    let checked = &sight.context.analysis.checked;
    let other_reason = |j: &usize| {
        checked.get(*j).and_then(|c| c.doubt).is_some_and(|doubt| !matches!(doubt, Doubt::Pair { .. }))
    };
    if here.iter().any(other_reason) {
        return None;
    }
    let is_pair = |j: &usize| matches!(checked.get(*j).and_then(|c| c.doubt), Some(Doubt::Pair { .. }));
    let entries: Vec<usize> = here.iter().copied().filter(is_pair).collect();
    let level = level_at(sight, depth_m)?;
    let (down_c, up_c) = level.down_c.zip(level.up_c)?;
    let of = |leg: Leg| -> Vec<usize> {
        let is = |j: &usize| sight.prepared.cast.readings.get(*j).is_some_and(|reading| reading.leg == leg);
        entries.iter().copied().filter(is).collect()
    };
    let (down, up) = (of(Leg::Down), of(Leg::Up));
    let decimals = reading_decimals(sight.notebook.cast.digit_c);
    let text = Message::new("log-doubt-pair");
    let text = with_written(sight, text, "down", &down, (down_c, decimals));
    let text = with_written(sight, text, "up", &up, (up_c, decimals)).number(
        "apart",
        rounded((down_c - up_c).abs(), decimals),
        decimals,
    );
    let mut ways = Vec::new();
    if !down.is_empty() {
        ways.push(way("log-leave-out-down", Action::LeaveOut { entries: down }));
    }
    if !up.is_empty() {
        ways.push(way("log-leave-out-up", Action::LeaveOut { entries: up }));
    }
    ways.push(keep(entries.clone()));
    let at = Message::new("log-place-both").depth("depth", mark_at(sight, depth_m));
    Some(block(sight, entries, at, text, ways))
}

/// Adds the text of the one reading; where there are several, or it is in another unit, the value in °C.
fn with_written(
    sight: &Sight,
    message: Message,
    name: &'static str,
    of: &[usize],
    (mean_c, decimals): (f64, u8),
) -> Message {
    match of {
        [one] if entry(sight, *one).is_some_and(is_as_written) => {
            message.text(name, entry(sight, *one).map_or("", |entry| entry.temp.current_text()))
        }
        _ => message.number(name, mean_c, decimals),
    }
}

/// The temperature is the number that is written, not one converted from another unit.
fn is_as_written(entry: &Entry) -> bool {
    let written = quantity(entry.temp.current_text());
    written.zip(entry.temp.current()).is_some_and(|(written, temp_c)| (written.value - temp_c).abs() < 0.005)
}

fn level_at<'a>(sight: &Sight<'a>, depth_m: f64) -> Option<&'a Level> {
    let levels = &sight.context.analysis.profile;
    let below = levels.partition_point(|level| level.depth_m <= depth_m + 1e-6);
    levels.get(below.checked_sub(1)?).filter(|level| (level.depth_m - depth_m).abs() <= 1e-6)
}

/// Heavier water above lighter in a cast that is layered all the same: the readings of both depths.
fn inversion_block(sight: &Sight, i: usize, other_depth_m: f64, by_depth: &ByDepth) -> Option<Block> {
    let this_m = depth_of(sight, i)?;
    let (upper_m, lower_m) = (this_m.min(other_depth_m), this_m.max(other_depth_m));
    let (upper, lower) = (level_at(sight, upper_m)?, level_at(sight, lower_m)?);
    let checked = &sight.context.analysis.checked;
    let is = |j: &usize| matches!(checked.get(*j).and_then(|c| c.doubt), Some(Doubt::Inversion { .. }));
    let at =
        |depth_m: f64| -> Vec<usize> { at_depth(by_depth, depth_m).iter().copied().filter(is).collect() };
    let (above, below) = (at(upper_m), at(lower_m));
    let entries: Vec<usize> = above.iter().chain(&below).copied().collect();
    let (upper_mark_m, lower_mark_m) = (mark_at(sight, upper_m), mark_at(sight, lower_m));
    let text = Message::new("log-doubt-inversion")
        .depth("upper", upper_mark_m)
        .temp("above", upper.temp_c)
        .depth("lower", lower_mark_m)
        .temp("below", lower.temp_c);
    let mut ways = Vec::new();
    if !above.is_empty() {
        ways.push(way("log-leave-out-upper", Action::LeaveOut { entries: above }));
    }
    if !below.is_empty() {
        ways.push(way("log-leave-out-lower", Action::LeaveOut { entries: below }));
    }
    ways.push(keep(entries.clone()));
    let place =
        Message::new("log-place-two-depths").depth("upper", upper_mark_m).depth("lower", lower_mark_m);
    Some(block(sight, entries, place, text, ways))
}

/// Water that is heavier than the lighter water under it, in an unstable cast.
pub struct Heavier<'a> {
    /// The heavier levels.
    pub levels: &'a [Level],
    /// Median temperature of them, °C.
    pub temp_c: f64,
    /// Median temperature of the levels under them, down to the lightest, °C.
    pub under_c: f64,
}

/// The heavier water on top, if the cast is unstable.
pub fn heavier<'a>(sight: &Sight<'a>) -> Option<Heavier<'a>> {
    let analysis = sight.context.analysis;
    let (upper_m, lower_m) = analysis.facts.as_ref()?.inversion_pair_m?;
    if analysis.state != State::Unstable {
        return None;
    }
    let levels = &analysis.profile;
    let find = |depth_m: f64| levels.iter().position(|level| (level.depth_m - depth_m).abs() < 1e-6);
    let (upper, lower) = (find(upper_m)?, find(lower_m)?);
    let (heaviest, lightest) = (levels.get(upper)?.density, levels.get(lower)?.density);
    let is_heavy = |level: &&Level| level.density > (heaviest + lightest) / 2.0;
    let from = upper - levels.get(..upper)?.iter().rev().take_while(is_heavy).count();
    let to = upper + levels.get(upper..lower)?.iter().take_while(is_heavy).count();
    let temp_c = median(levels.get(from..to)?)?;
    let under_c = median(levels.get(to..=lower)?)?;
    Some(Heavier { levels: levels.get(from..to)?, temp_c, under_c })
}

fn median(levels: &[Level]) -> Option<f64> {
    let mut temps: Vec<f64> = levels.iter().map(|level| level.temp_c).collect();
    sort_numbers(&mut temps);
    let upper = temps.get(temps.len() / 2)?;
    let lower = temps.get((temps.len() - 1) / 2)?;
    Some((upper + lower) / 2.0)
}

/// The heavier water of an unstable cast as one block; `None` when a person has said that it was like that.
pub fn heavier_block(sight: &Sight) -> Option<Block> {
    let analysis = sight.context.analysis;
    let open = |checked: &layercast_core::Checked| matches!(checked.doubt, Some(Doubt::Inversion { .. }));
    if !analysis.checked.iter().any(open) {
        return None;
    }
    let heavier = heavier(sight)?;
    let (top_m, bottom_m) = (heavier.levels.first()?.depth_m, heavier.levels.last()?.depth_m);
    let within = |i: &usize| depth_of(sight, *i).is_some_and(|d| d > top_m - 1e-6 && d < bottom_m + 1e-6);
    let is_open = |i: &usize| {
        let used = analysis.checked.get(*i).is_some_and(|checked| checked.used);
        used && sight.prepared.cast.readings.get(*i).is_some_and(|reading| reading.switch == Switch::Auto)
    };
    // The lighter side of the pair is doubted too; one decision is about both.
    let doubted = |i: &usize| analysis.checked.get(*i).is_some_and(open);
    let all: Vec<usize> = (0..analysis.checked.len()).filter(is_open).collect();
    let upper: Vec<usize> = all.iter().copied().filter(within).collect();
    let every: Vec<usize> = all.into_iter().filter(|i| within(i) || doubted(i)).collect();
    let both_ways = heavier.levels.iter().all(|level| level.legs > 1);
    let agree = heavier.levels.iter().all(|level| {
        level.down_c.zip(level.up_c).is_some_and(|(down_c, up_c)| (down_c - up_c).abs() <= 0.5 + 1e-9)
    });
    // The difference of the numbers as Profile shows them.
    let difference_c = rounded((rounded(heavier.under_c, 1) - rounded(heavier.temp_c, 1)).abs(), 1);
    let text = match heavier.temp_c < heavier.under_c {
        true => Message::new("log-doubt-colder-on-top"),
        false => Message::new("log-doubt-warmer-on-top"),
    };
    let more = match (agree, both_ways) {
        (true, _) => Message::new("log-both-ways-agree"),
        (false, true) => Message::new("log-both-ways-differ"),
        (false, false) => Message::new("log-one-way-only"),
    };
    let text =
        text.count("marks", heavier.levels.len()).number("difference", difference_c, 1).message("more", more);
    let (from_m, to_m) = (mark_at(sight, top_m), mark_at(sight, bottom_m));
    let place = match (both_ways, heavier.levels.len()) {
        (true, 1) => Message::new("log-place-both").depth("depth", from_m),
        (false, 1) => Message::new("log-place-one").depth("depth", from_m),
        (true, _) => Message::new("log-place-stretch-both").depth("from", from_m).depth("to", to_m),
        (false, _) => Message::new("log-place-stretch").depth("from", from_m).depth("to", to_m),
    };
    let ways =
        vec![keep(every.clone()), way("log-leave-them-out", Action::LeaveOut { entries: upper.clone() })];
    let mut block = block(sight, every, place, text, ways);
    block.depth_m = top_m;
    block.of_water = true;
    block.view.depth_m = Some(top_m);
    block.view.type_entry = None;
    Some(block)
}

/// What a person decided about readings, each with its way back.
pub fn settled(sight: &Sight) -> Vec<DoubtView> {
    let entries = sight.notebook.cast.entries.iter().enumerate();
    let mut settled: Vec<(f64, DoubtView)> = entries.filter_map(|(i, entry)| decision(i, entry)).collect();
    sort_by(&mut settled, |a, b| a.0.total_cmp(&b.0));
    settled.into_iter().map(|(_, view)| view).collect()
}

fn decision(i: usize, entry: &Entry) -> Option<(f64, DoubtView)> {
    let made = |cell: &layercast_exchange::document::Cell, message: Message| {
        let settled = cell.settled.as_ref().filter(|settled| settled.value.is_some())?;
        let was = if cell.written.trim().is_empty() { None } else { Some(cell.written.as_str()) };
        Some(match was {
            Some(was) => message.text("was", was).text("is", settled.text.as_str()),
            None => Message::new("log-settled-added").text("is", settled.text.as_str()),
        })
    };
    let text = match entry.switch {
        SwitchDoc::Off => Message::new("log-settled-out").text("was", entry.temp.current_text()),
        SwitchDoc::Kept => Message::new("log-settled-kept").text("was", entry.temp.current_text()),
        SwitchDoc::Auto => made(&entry.temp, Message::new("log-settled-temp"))
            .or_else(|| made(&entry.depth, Message::new("log-settled-depth")))?,
    };
    let depth_m = entry.depth.current().filter(|depth_m| depth_m.is_finite());
    let back = way("log-take-back", Action::Reconsider { entries: vec![i] });
    let view = DoubtView {
        place: place(entry).into(),
        text: text.into(),
        ways: vec![back],
        type_entry: None,
        type_depth: false,
        depth_m,
    };
    Some((depth_m.unwrap_or(f64::MAX), view))
}
