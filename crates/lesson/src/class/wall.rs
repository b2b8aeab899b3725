//! The wall: one core a cast on a common axis, what their ranges share, the middle of the class at each depth.

use super::room::{Room, Work};
use crate::numbers::{Range, WithNum, middle as middle_num};
use crate::view::Num;
use layercast_core::order::{sort_by, sort_numbers};
use layercast_core::random::Random;
use layercast_core::{Level, Message, State, Thermocline};

/// Slack of comparisons between depths, metres.
const SLACK_M: f64 = 1e-9;
/// Most depths at which the class is summed up.
const MOST_DEPTHS: usize = 120;

/// One cast of the class.
#[derive(Clone, Debug, PartialEq)]
pub struct Core {
    /// What stands over it: the group, a number where names are hidden, "?" where there is none.
    pub name: String,
    /// Content id of the cast.
    pub cast_id: String,
    /// Its analysis: index into [`Room::works`].
    pub work: usize,
    /// Keys of the members that hold it.
    pub members: Vec<String>,
    /// Some of it was repaired here.
    pub repaired: bool,
    /// Measured at another station: not counted in what the class shares.
    pub other_station: bool,
    /// Too few readings to look for layers: it says neither that there is a thermocline nor that there is none.
    pub too_few: bool,
    /// Thermocline (under ice the fastest warming): value and range, metres.
    pub found_m: Option<(f64, f64, f64)>,
    /// Its value as it is shown.
    pub number: Option<Num>,
    /// Its range as it is shown.
    pub range: Option<Range>,
}

impl Core {
    /// Its cast.
    pub fn of<'r>(&self, room: &'r Room) -> Option<&'r Work> {
        room.works.get(self.work)
    }
}

/// The casts of a class, in the order of the wall. Practice is none of them.
pub fn cores(room: &Room) -> Vec<Core> {
    let mut cores: Vec<Core> = Vec::new();
    for seat in room.counted() {
        let repaired = seat.member.repair.is_some();
        match cores.iter_mut().find(|core| core.cast_id == seat.counted_as) {
            Some(core) => {
                core.members.push(seat.member.key.clone());
                core.other_station |= seat.member.repair.other_station;
                core.repaired |= repaired;
                if core.name.is_empty() {
                    core.name.clone_from(&seat.group);
                }
                // The cast that others are counted as stands for all; so does one whose readings were set right.
                if seat.cast_id == core.cast_id && (seat.drawn != seat.held || room.works.len() <= core.work)
                {
                    core.work = seat.drawn;
                }
            }
            None => cores.push(Core {
                name: seat.group.clone(),
                cast_id: seat.counted_as.clone(),
                work: seat.drawn,
                members: vec![seat.member.key.clone()],
                repaired,
                other_station: seat.member.repair.other_station,
                too_few: false,
                found_m: None,
                number: None,
                range: None,
            }),
        }
    }
    for core in &mut cores {
        let own = room.counted().find(|seat| seat.cast_id == core.cast_id && seat.drawn != seat.held);
        let own = own.or_else(|| room.counted().find(|seat| seat.cast_id == core.cast_id));
        if let Some(seat) = own {
            core.work = seat.drawn;
        }
        let analysis = core.of(room).map(|work| &work.analysis);
        let found: Option<&Thermocline> =
            analysis.and_then(|a| a.thermocline.as_ref().or(a.fastest_warming.as_ref()));
        core.too_few = analysis.is_some_and(|analysis| analysis.state == State::TooFew);
        core.found_m = found.map(|found| (found.value_m, found.span_top_m, found.span_bottom_m));
        core.number = core.found_m.map(|found| middle_num(found.0));
        core.range = core.found_m.map(|found| Range::of_marks(found.1, found.2));
    }
    named(room, cores)
}

/// Casts in order, each with a name of its own.
fn named(room: &Room, mut cores: Vec<Core>) -> Vec<Core> {
    sort_by(&mut cores, |a, b| natural(&a.name).cmp(&natural(&b.name)).then(a.cast_id.cmp(&b.cast_id)));
    if let Some(seed) = room.class.now.shuffled {
        let mut random = Random::seeded(u64::from(seed), 0);
        for at in (1..cores.len()).rev() {
            let other = random.below(u32::try_from(at + 1).unwrap_or(1)) as usize;
            cores.swap(at, other);
        }
    }
    if room.class.now.hidden {
        for (at, core) in cores.iter_mut().enumerate() {
            core.name = (at + 1).to_string();
        }
        return cores;
    }
    for core in &mut cores {
        if core.name.is_empty() {
            "?".clone_into(&mut core.name);
        }
    }
    let names: Vec<String> = cores.iter().map(|core| core.name.clone()).collect();
    for (at, core) in cores.iter_mut().enumerate() {
        let before = names.iter().take(at).filter(|name| **name == core.name).count();
        if before > 0 {
            core.name = format!("{} {}", core.name, before + 1);
        }
    }
    cores
}

/// Groups in the order people count: without a name last, shorter numbers first.
pub(super) fn natural(name: &str) -> (bool, usize, String) {
    let is_number = !name.is_empty() && name.chars().all(|c| c.is_ascii_digit());
    (name.is_empty(), if is_number { name.len() } else { 0 }, name.to_lowercase())
}

/// What the ranges of a class share.
#[derive(Clone, Debug, PartialEq)]
pub struct Spans {
    /// Casts with a thermocline.
    pub found: usize,
    /// Casts at the class's station.
    pub of: usize,
    /// Most of them that share a depth.
    pub most: usize,
    /// The depths those share, metres; equal where they only touch.
    pub shared_m: Option<(f64, f64)>,
    /// The sentence.
    pub said: Message,
}

/// What the ranges share, with its sentence. Ranges that only touch overlap, and the sentence names that depth.
pub fn spans(cores: &[Core]) -> Spans {
    let here: Vec<&Core> = cores.iter().filter(|core| !core.other_station).collect();
    let ranges: Vec<(f64, f64)> =
        here.iter().filter_map(|core| core.found_m.map(|(_, top, bottom)| (top, bottom))).collect();
    let (found, of) = (ranges.len(), here.len());
    let over = |z: f64| {
        let holds = move |range: &&(f64, f64)| range.0 <= z + SLACK_M && range.1 >= z - SLACK_M;
        ranges.iter().filter(holds)
    };
    let mut tops: Vec<f64> = ranges.iter().map(|range| range.0).collect();
    sort_numbers(&mut tops);
    let best = tops.iter().fold(None, |best: Option<(usize, f64)>, z| {
        let count = over(*z).count();
        if best.is_none_or(|best| count > best.0) { Some((count, *z)) } else { best }
    });
    let most = best.map_or(0, |best| best.0);
    let shared_m = best.filter(|_| most >= 2).map(|(_, z)| {
        let from = over(z).map(|range| range.0).fold(f64::NEG_INFINITY, f64::max);
        let to = over(z).map(|range| range.1).fold(f64::INFINITY, f64::min);
        (from.min(to), to)
    });
    let said = sentence(&here, found, of, most, shared_m);
    Spans { found, of, most, shared_m, said }
}

fn sentence(here: &[&Core], found: usize, of: usize, most: usize, shared_m: Option<(f64, f64)>) -> Message {
    let none = here.iter().filter(|core| core.found_m.is_none() && !core.too_few).count();
    let with = |id: &'static str| {
        Message::new(id).count("found", found).count("of", of).count("most", most).count("none", none)
    };
    match (found, shared_m) {
        (0, _) if of == 0 => Message::new("class-wall-empty"),
        (0, _) => with("class-wall-none"),
        (1, _) => {
            let core = here.iter().find(|core| core.found_m.is_some());
            let name = core.map(|core| core.name.clone()).unwrap_or_default();
            with("class-wall-one").text("group", name)
        }
        (_, None) => with("class-wall-apart"),
        (_, Some((from, to))) => {
            let touches = (to - from).abs() <= SLACK_M;
            if touches {
                let id = if most == found { "class-wall-all-touch" } else { "class-wall-some-touch" };
                return with(id).depth("depth", from);
            }
            let range = Range::of_marks(from, to).said();
            let id = if most == found { "class-wall-all-share" } else { "class-wall-some-share" };
            with(id).message("range", range)
        }
    }
}

/// The class at one depth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClassLevel {
    /// Depth, metres.
    pub depth_m: f64,
    /// Coldest cast, °C.
    pub low_c: f64,
    /// Median of the casts, °C.
    pub middle_c: f64,
    /// Warmest cast, °C.
    pub high_c: f64,
    /// Casts that reach this depth.
    pub count: usize,
}

/// Middle and range of the class at each depth that at least half of its casts reach, those of other stations left out.
///
/// * `without`: content id of a cast to leave out, to set it against the rest
pub fn middle(room: &Room, cores: &[Core], without: Option<&str>) -> Vec<ClassLevel> {
    let here = cores.iter().filter(|core| !core.other_station && Some(core.cast_id.as_str()) != without);
    let profiles: Vec<&[Level]> = here
        .filter_map(|core| Some(core.of(room)?.analysis.profile.as_slice()))
        .filter(|p| !p.is_empty())
        .collect();
    let level = |depth_m: f64| {
        let mut temps: Vec<f64> = profiles.iter().filter_map(|profile| at(profile, depth_m)).collect();
        sort_numbers(&mut temps);
        let count = temps.len();
        let (low_c, high_c) = (*temps.first()?, *temps.last()?);
        let middle_c = (temps.get((count - 1) / 2)? + temps.get(count / 2)?) / 2.0;
        (2 * count >= profiles.len()).then_some(ClassLevel { depth_m, low_c, middle_c, high_c, count })
    };
    some_depths(profiles.iter().copied()).filter_map(level).collect()
}

/// The depths of some profiles, each once, and of very many every n-th, metres.
pub(super) fn some_depths<'p>(profiles: impl Iterator<Item = &'p [Level]>) -> impl Iterator<Item = f64> {
    let mut depths: Vec<f64> = profiles.flatten().map(|level| level.depth_m).collect();
    sort_numbers(&mut depths);
    depths.dedup_by(|later, kept| *later - *kept < 0.005);
    let every = depths.len().div_ceil(MOST_DEPTHS).max(1);
    depths.into_iter().step_by(every)
}

/// A profile at a depth, straight between its levels; `None` outside of them.
pub(super) fn at(profile: &[Level], depth_m: f64) -> Option<f64> {
    let below = profile.partition_point(|level| level.depth_m < depth_m - SLACK_M);
    let here = profile.get(below)?;
    if (here.depth_m - depth_m).abs() <= SLACK_M {
        return Some(here.temp_c);
    }
    let above = profile.get(below.checked_sub(1)?)?;
    let share = (depth_m - above.depth_m) / (here.depth_m - above.depth_m);
    Some(above.temp_c + share * (here.temp_c - above.temp_c))
}
