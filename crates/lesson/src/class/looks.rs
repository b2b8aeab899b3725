//! What of a member deserves a look, and why: units, station, nearly equal casts, codes, edits. Only said, never done.

use super::room::{Room, Seat, Work};
use super::wall::{Core, at, cores, some_depths};
use crate::hand_in::Check;
use crate::numbers::{WithNum, rounded};
use layercast_core::order::{sort_by, sort_numbers};
use layercast_core::{Level, Message};
use layercast_exchange::document::{CastDoc, LegDoc, Origin};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// Warmer than lake water gets, °C (a convention of ours; 38 °C in a shallow bay is the most that was read, from memory).
const NO_LAKE_C: f64 = 40.0;
/// Nearly equal: at least this share of the readings is the same.
const NEARLY: f64 = 0.8;

/// Something to look at.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum LookAt {
    /// No seat code.
    NoSeat,
    /// Edited by hand since it was written.
    Edited,
    /// Another version of the class's lesson.
    OtherVersion,
    /// Depths seem to be feet.
    Feet,
    /// Temperatures seem to be °F.
    Fahrenheit,
    /// A much shallower place than the others'.
    OtherStation,
    /// Its cast is nearly another's.
    NearCast,
    /// Others of its group have another cast.
    GroupTwice,
    /// Readings of an example: nobody measured them.
    Example,
}

/// A thing to look at, in words.
#[derive(Clone, Debug, PartialEq)]
pub struct Look {
    /// What.
    pub at: LookAt,
    /// In words.
    pub said: Message,
}

/// What is the same for every member of a room, worked out once.
pub(super) struct Sights {
    cores: Vec<Core>,
    /// Deepest depth of each cast at the class's station, metres.
    ends_m: Vec<(String, f64)>,
    /// Every depth of the casts at the class's station, metres, with the temperature there of each that reaches it: °C,
    /// place in `cores`; coldest first.
    depths: Vec<(f64, Vec<(f64, usize)>)>,
    /// The readings of each cast as its first seat holds them, by content id.
    held: BTreeMap<String, Places>,
}

impl Sights {
    pub fn of(room: &Room) -> Self {
        let cores = cores(room);
        let ends = cores.iter().filter(|core| !core.other_station);
        let ends_m = ends.filter_map(|core| Some((core.cast_id.clone(), end_m(room, core.work)?))).collect();
        let mut held = BTreeMap::new();
        for seat in &room.seats {
            held.entry(seat.cast_id.clone()).or_insert_with(|| places(&seat.paper.hand_in.cast));
        }
        Self { ends_m, depths: depths(room, &cores), held, cores }
    }

    /// Everything about a seat that the teacher has not looked at.
    pub fn looks(&self, room: &Room, seat: &Seat) -> Vec<Look> {
        let mut looks = Vec::new();
        let mut add = |at: LookAt, said: Message| {
            if !seat.member.seen.contains(&at) {
                looks.push(Look { at, said });
            }
        };
        if seat.seat.is_empty() {
            add(LookAt::NoSeat, Message::new("class-look-no-seat"));
        }
        if seat.paper.check == Check::Edited {
            add(LookAt::Edited, Message::new("class-look-edited"));
        }
        if seat.paper.hand_in.lesson != room.lesson {
            add(LookAt::OtherVersion, Message::new("class-look-other-version"));
        }
        if seat.paper.hand_in.origin == Origin::Example && !seat.member.practice {
            add(LookAt::Example, Message::new("class-look-example"));
        }
        let others = self.others(room, seat);
        if let Some(said) = fahrenheit(room, seat, &others) {
            add(LookAt::Fahrenheit, said);
        }
        let end_m = end_m(room, seat.drawn);
        if let (Some(end_m), Some(usual_m)) = (end_m, self.usual_end_m(&seat.counted_as)) {
            if !seat.member.repair.feet && is_feet(room, seat, end_m / usual_m, &others) {
                add(
                    LookAt::Feet,
                    Message::new("class-look-feet")
                        .depth("depth", rounded(end_m, 1))
                        .depth("usual", rounded(usual_m, 1)),
                );
            } else if !seat.member.repair.other_station && end_m < 0.6 * usual_m {
                add(
                    LookAt::OtherStation,
                    Message::new("class-look-station")
                        .depth("depth", rounded(end_m, 1))
                        .depth("usual", rounded(usual_m, 1)),
                );
            }
        }
        if let Some(said) = self.near(room, seat) {
            add(LookAt::NearCast, said);
        } else if has_a_strange_cast(room, seat) {
            add(LookAt::GroupTwice, Message::new("class-look-group-twice").text("group", seat.group.clone()));
        }
        looks
    }

    /// A cast whose temperatures look like °F, and nobody has said otherwise.
    pub fn seems_fahrenheit(&self, room: &Room, core: &Core) -> bool {
        let holds = |seat: &&Seat| core.members.contains(&seat.member.key);
        room.counted().filter(holds).any(|seat| {
            !seat.member.seen.contains(&LookAt::Fahrenheit)
                && fahrenheit(room, seat, &self.others(room, seat)).is_some()
        })
    }

    /// Middle of the other casts, depth and °C.
    fn others(&self, room: &Room, seat: &Seat) -> Vec<(f64, f64)> {
        let own = self.cores.iter().position(|core| core.cast_id == seat.counted_as);
        let others = (0..self.cores.len()).filter(|at| Some(*at) != own && self.is_here(room, *at)).count();
        let middle = |(depth_m, temps): &(f64, Vec<(f64, usize)>)| {
            let has_own = temps.iter().position(|(_, at)| Some(*at) == own);
            let count = temps.len() - usize::from(has_own.is_some());
            // The n-th of the others.
            let of =
                |n: usize| temps.get(n + usize::from(has_own.is_some_and(|own| own <= n))).map(|temp| temp.0);
            let last = count.checked_sub(1)?;
            (2 * count >= others).then_some((*depth_m, (of(last / 2)? + of(count / 2)?) / 2.0))
        };
        self.depths.iter().filter_map(middle).collect()
    }

    /// Its profile counts among the others'.
    fn is_here(&self, room: &Room, at: usize) -> bool {
        let core = self.cores.get(at).filter(|core| !core.other_station);
        core.and_then(|core| core.of(room)).is_some_and(|work| !work.analysis.profile.is_empty())
    }

    /// Median of how deep the other casts go, metres; `None` with fewer than two others.
    fn usual_end_m(&self, cast_id: &str) -> Option<f64> {
        let mut ends: Vec<f64> = self.ends_m.iter().filter(|end| end.0 != cast_id).map(|end| end.1).collect();
        sort_numbers(&mut ends);
        if ends.len() < 2 {
            return None;
        }
        ends.get(ends.len() / 2).copied().filter(|end| *end > 0.0)
    }

    /// A seat whose cast is nearly this one's, and about which nothing is decided.
    pub fn near_cast<'r, 'a>(&self, room: &'r Room<'a>, seat: &Seat) -> Option<&'r Seat<'a>> {
        let own = self.held.get(&seat.cast_id)?;
        self.cores
            .iter()
            .filter(|core| core.cast_id != seat.counted_as && !are_two(room, &core.cast_id, &seat.cast_id))
            .find(|core| self.held.get(&core.cast_id).is_some_and(|other| is_near(own, other)))
            .and_then(|core| room.counted().find(|other| other.cast_id == core.cast_id))
    }

    fn near(&self, room: &Room, seat: &Seat) -> Option<Message> {
        let other = self.near_cast(room, seat)?;
        let differ = differences(&seat.paper.hand_in.cast, &other.paper.hand_in.cast);
        let core = self.cores.iter().find(|core| core.cast_id == other.cast_id)?;
        Some(Message::new("class-look-near").text("group", core.name.clone()).count("count", differ.len()))
    }
}

/// The teacher said that these casts are two.
fn are_two(room: &Room, one: &str, other: &str) -> bool {
    let is_pair = |a: &str, b: &str| (a == one && b == other) || (a == other && b == one);
    room.class.now.both_casts.iter().any(|(a, b)| is_pair(a, b))
}

/// Its group has another cast, which more of its seats hold, or which came first.
fn has_a_strange_cast(room: &Room, seat: &Seat) -> bool {
    if seat.group.is_empty() || seat.member.practice {
        return false;
    }
    let group = || room.counted().filter(|other| other.group.eq_ignore_ascii_case(&seat.group));
    let holders = |cast: &str| group().filter(|other| other.counted_as == cast).count();
    let own = holders(&seat.counted_as);
    let first = group().next().map(|other| other.counted_as.as_str());
    let is_other = |other: &&Seat| {
        let theirs = holders(&other.counted_as);
        other.counted_as != seat.counted_as
            && !are_two(room, &other.cast_id, &seat.cast_id)
            && (theirs > own || (theirs == own && first == Some(other.counted_as.as_str())))
    };
    group().any(|other| is_other(&other))
}

/// How deep a cast goes: the bed where it is known, else the last reading, metres.
fn end_m(room: &Room, work: usize) -> Option<f64> {
    let work = room.works.get(work)?;
    let last_m = as_written(work).last()?.depth_m;
    Some(work.cast.bed_m.filter(|bed_m| *bed_m >= last_m).unwrap_or(last_m))
}

/// The readings of a cast by depth, whatever its checks say: water in °F fails them all.
fn as_written(work: &Work) -> Vec<Level> {
    let given = |reading: &layercast_core::Reading| {
        let temp_c = reading.temp_c.filter(|t| t.abs() < 1000.0)?;
        (reading.depth_m.abs() < 12_000.0).then_some((reading.depth_m, temp_c))
    };
    let mut points: Vec<(f64, f64)> = work.cast.readings.iter().filter_map(given).collect();
    sort_by(&mut points, |a, b| a.0.total_cmp(&b.0).then(a.1.total_cmp(&b.1)));
    let same = |a: &(f64, f64), b: &(f64, f64)| b.0 - a.0 < 1e-6;
    let mean = |points: &[(f64, f64)]| {
        let temp_c = points.iter().map(|p| p.1).sum::<f64>() / points.len().max(1) as f64;
        points.first().map(|p| Level::bare(p.0, temp_c, 0.1))
    };
    points.chunk_by(same).filter_map(mean).collect()
}

/// Mean distance of a profile from others, °C; `None` with fewer than three depths to compare.
fn apart_c(profile: impl Fn(f64) -> Option<f64>, others: &[(f64, f64)]) -> Option<f64> {
    let gaps: Vec<f64> = others.iter().filter_map(|(z, t)| Some((profile(*z)? - t).abs())).collect();
    (gaps.len() >= 3).then(|| gaps.iter().sum::<f64>() / gaps.len() as f64)
}

fn profile(room: &Room, seat: &Seat) -> Vec<Level> {
    room.works.get(seat.drawn).map(as_written).unwrap_or_default()
}

/// Suspected by the range of lake water, or because the others agree with it as °F and not as °C.
fn fahrenheit(room: &Room, seat: &Seat, others: &[(f64, f64)]) -> Option<Message> {
    if seat.member.repair.fahrenheit {
        return None;
    }
    let profile = profile(room, seat);
    let warmest = profile.iter().map(|level| level.temp_c).fold(f64::NEG_INFINITY, f64::max);
    let as_c = |z: f64| at(&profile, z);
    let as_f = |z: f64| at(&profile, z).map(|f| (f - 32.0) / 1.8);
    let fits = match (apart_c(as_c, others), apart_c(as_f, others)) {
        (Some(c), Some(f)) => c > 8.0 && f < 4.0,
        _ => false,
    };
    let typical = profile.get(profile.len() / 2).is_some_and(|level| level.temp_c > NO_LAKE_C);
    (fits || typical).then(|| Message::new("class-look-fahrenheit").temp("warmest", rounded(warmest, 1)))
}

/// Three and a third times as deep as the others, and better beside them when divided by it.
fn is_feet(room: &Room, seat: &Seat, ratio: f64, others: &[(f64, f64)]) -> bool {
    if !(2.4..=4.4).contains(&ratio) {
        return false;
    }
    let profile = profile(room, seat);
    let fahrenheit_too = |t: f64| if t > NO_LAKE_C { (t - 32.0) / 1.8 } else { t };
    let as_m = apart_c(|z| at(&profile, z).map(fahrenheit_too), others);
    let as_ft = apart_c(|z| at(&profile, z / 0.3048).map(fahrenheit_too), others);
    match (as_m, as_ft) {
        (Some(m), Some(ft)) => ft < m,
        _ => true,
    }
}

/// Where two casts differ.
#[derive(Clone, Debug, PartialEq)]
pub struct Difference {
    /// Depth, metres.
    pub depth_m: f64,
    /// Going up or down, as stored.
    pub leg: LegDoc,
    /// One's temperature as it stands there; empty where it has none.
    pub one: String,
    /// The other's.
    pub other: String,
}

/// What stands at each place of a cast, by depth (thousandths of a metre) and way.
struct Places {
    /// Readings.
    count: usize,
    temps: BTreeMap<Place, String>,
}

type Place = (i64, LegDoc);

fn places(doc: &CastDoc) -> Places {
    let mut temps: BTreeMap<Place, String> = BTreeMap::new();
    for entry in &doc.entries {
        if let Some(depth_m) = entry.depth.current().filter(|z| z.abs() < 1e9) {
            let temp = entry
                .temp
                .current()
                .map_or_else(|| entry.temp.current_text().to_owned(), |t| format!("{}", rounded(t, 2)));
            let here = temps.entry(((depth_m * 1000.0).round() as i64, entry.leg)).or_default();
            if !here.is_empty() {
                here.push(' ');
            }
            here.push_str(&temp);
        }
    }
    Places { count: doc.entries.len(), temps }
}

impl Places {
    fn at(&self, place: &Place) -> &str {
        self.temps.get(place).map_or("", String::as_str)
    }

    /// Places where two casts are not the same, by depth.
    fn differ<'p>(&'p self, other: &'p Self) -> impl Iterator<Item = &'p Place> {
        let mine = self.temps.iter().filter(|(place, temp)| other.temps.get(*place) != Some(*temp));
        let theirs = other.temps.keys().filter(|place| !self.temps.contains_key(*place));
        mine.map(|(place, _)| place).chain(theirs)
    }
}

/// Readings that are not the same in two casts, by depth.
pub fn differences(one: &CastDoc, other: &CastDoc) -> Vec<Difference> {
    let (one, other) = (places(one), places(other));
    let mut all: Vec<&Place> = one.differ(&other).collect();
    all.sort_unstable();
    let difference = |place: &Place| Difference {
        depth_m: place.0 as f64 / 1000.0,
        leg: place.1,
        one: one.at(place).to_owned(),
        other: other.at(place).to_owned(),
    };
    all.into_iter().map(difference).collect()
}

/// Two casts of which most readings are the same, and not all.
fn is_near(one: &Places, other: &Places) -> bool {
    let most = one.count.max(other.count);
    // Casts of thousands of readings are loggers'; nobody copies those by hand.
    if !(4..=2_000).contains(&most) || one.count.abs_diff(other.count) * 5 > most {
        return false;
    }
    // Counted no further than matters.
    let enough = most - (NEARLY * most as f64 - 1e-9).ceil().max(0.0) as usize;
    let differ = one.differ(other).take(enough + 1).count();
    differ > 0 && differ <= enough
}

/// What each cast at the class's station has at every depth of any of them.
fn depths(room: &Room, cores: &[Core]) -> Vec<(f64, Vec<(f64, usize)>)> {
    let profiles: Vec<(usize, &[Level])> = (cores.iter().enumerate())
        .filter(|(_, core)| !core.other_station)
        .filter_map(|(place, core)| Some((place, core.of(room)?.analysis.profile.as_slice())))
        .collect();
    let temps = |depth_m: f64| {
        let mut temps: Vec<(f64, usize)> =
            profiles.iter().filter_map(|(place, profile)| Some((at(profile, depth_m)?, *place))).collect();
        sort_by(&mut temps, |a, b| a.0.total_cmp(&b.0));
        (depth_m, temps)
    };
    some_depths(profiles.iter().map(|(_, profile)| *profile)).map(temps).collect()
}
