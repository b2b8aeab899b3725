//! What the screen shows of a book.

use super::day::{Day, days_apart_in_season};
use super::document::{YearBook, YearCast};
use super::pair;
use crate::numbers::{Range, WithNum, computed, middle};
use crate::view::{Num, Said};
use layercast_core::order::sort_by;
use layercast_core::{Analysis, Message, Method, MixedLayer, State, Thermocline, analyse};
use layercast_exchange::document::corrected;
use serde::Serialize;

/// Years below which nobody should speak of a trend (recalled, not read: long-term programmes name eight to ten).
const TREND_YEARS: usize = 10;
/// Most casts whose years are written out over their columns.
const ROOMY: usize = 8;

/// A book, as the screen shows it.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct YearsView {
    /// Casts in the order of their days.
    pub rows: Vec<YearRow>,
    /// "5 casts, on 4 days of 3 years."
    pub sum: Said,
    /// Why no trend is offered.
    pub trend: Said,
    /// The others beside the cast in hand, nearest in the season first.
    pub pairs: Vec<PairRow>,
}

/// One cast.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct YearRow {
    /// Content id.
    pub cast: String,
    /// Its day as typed.
    pub day: String,
    /// Whether that is a day.
    pub is_day: bool,
    /// Its place.
    pub place: String,
    /// The group that read it.
    pub group: String,
    /// Thermocline, metres; `None`: none, see `said`.
    pub value: Option<Num>,
    /// "3.5 to 4.0 m", or "none", "mixed to the bottom".
    pub said: Said,
    /// How deep the mixed layer goes, metres; `None` where it has no lower end, or is none.
    pub mixed: Option<Num>,
    /// "210 MJ/m² to 8.0 m": heat above 0 °C, as deep as every cast of this place goes.
    pub heat: Option<Said>,
}

/// Another cast beside the one in hand.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct PairRow {
    /// Its content id.
    pub cast: String,
    /// Both days, the earlier first, as they were typed.
    pub days: [String; 2],
    /// What differs, and whether it can be seen.
    pub said: Vec<Said>,
}

/// A cast of the book, computed again.
pub(super) struct Read<'b> {
    one: &'b YearCast,
    day: Option<Day>,
    pub(super) analysis: Analysis,
}

impl Read<'_> {
    /// Its thermocline (under ice the fastest warming).
    pub(super) fn found(&self) -> Option<&Thermocline> {
        self.analysis.thermocline.as_ref().or(self.analysis.fastest_warming.as_ref())
    }
}

fn read(book: &YearBook) -> Vec<Read<'_>> {
    let method = Method::default();
    let of = |one| -> Read<'_> {
        let one: &YearCast = one;
        Read { one, day: Day::read(&one.day), analysis: analyse(&corrected(&one.cast).cast, &method) }
    };
    book.casts.iter().map(of).collect()
}

/// The depths that all of them reach: deepest first reading, shallowest last one.
pub(super) fn shared_m<'r, 'b: 'r>(all: impl IntoIterator<Item = &'r Read<'b>>) -> Option<(f64, f64)> {
    let ends = |read: &Read| {
        let profile = &read.analysis.profile;
        Some((profile.first()?.depth_m, profile.last()?.depth_m))
    };
    let mut shared: Option<(f64, f64)> = None;
    for read in all {
        let (from_m, to_m) = ends(read)?;
        shared = Some(shared.map_or((from_m, to_m), |(from, to)| (from.max(from_m), to.min(to_m))));
    }
    shared.filter(|(from_m, to_m)| from_m < to_m)
}

/// How a book looks. `chosen`: content id of the cast in hand.
pub fn look(book: &YearBook, chosen: Option<&str>) -> YearsView {
    let all = read(book);
    let mut days: Vec<Day> = all.iter().filter_map(|one| one.day).collect();
    days.dedup();
    let mut years: Vec<u16> = days.iter().map(|day| day.year).collect();
    years.dedup();
    let sum = Message::new("years-sum")
        .count("casts", all.len())
        .count("days", days.len())
        .count("years", years.len());
    // A trend is one place's: rows are in the order of their days.
    let years_of = |place: &str| {
        let here = all.iter().filter(|one| one.one.place_key() == place);
        let mut years: Vec<u16> = here.filter_map(|one| Some(one.day?.year)).collect();
        years.dedup();
        years.len()
    };
    let few = all.iter().all(|one| years_of(&one.one.place_key()) < TREND_YEARS);
    let trend = Message::new(if few { "years-trend-few" } else { "years-trend-many" });
    YearsView {
        rows: all.iter().map(|one| row(&all, one)).collect(),
        sum: sum.into(),
        trend: trend.into(),
        pairs: pairs(&all, chosen),
    }
}

/// Names ("2025-10", "2025-10 A" where two share a month, or the group before there is a day, "25-10" where there are many), analyses and slack depths in order, for the picture.
pub fn shown(book: &YearBook) -> Vec<(String, Analysis, Option<f64>)> {
    let from = if book.casts.len() > ROOMY { 2 } else { 0 };
    let name = |one: &YearCast| match Day::read(&one.day) {
        Some(_) => one.day.trim().get(from..7).unwrap_or_default().to_owned(),
        None if one.cast.group.trim().is_empty() => "?".to_owned(),
        None => one.cast.group.trim().chars().take(3).collect(),
    };
    let all = read(book);
    let names: Vec<String> = all.iter().map(|one| name(one.one)).collect();
    // Two of one month are told apart by their groups.
    let full = |at: usize, group: &str| {
        let name = names.get(at).cloned().unwrap_or_default();
        let again = names.iter().filter(|other| **other == name).count() > 1;
        let group: String = group.trim().chars().take(3).collect();
        if again && !group.is_empty() && group != name { format!("{name} {group}") } else { name }
    };
    let named: Vec<String> = all.iter().enumerate().map(|(at, one)| full(at, &one.one.cast.group)).collect();
    named.into_iter().zip(all).map(|(name, one)| (name, one.analysis, one.one.cast.bed_m)).collect()
}

fn row(all: &[Read], read: &Read) -> YearRow {
    let found = read.found();
    let place = read.one.place_key();
    let is_measured = |other: &&Read| other.one.place_key() == place && other.analysis.state != State::TooFew;
    let measured = Some(read).filter(is_measured).and_then(|_| shared_m(all.iter().filter(is_measured)));
    let heat = measured.map(|(from_m, to_m)| {
        let heat = pair::megajoules(pair::heat_j_m2(&read.analysis.profile, from_m, to_m));
        Said::from(Message::new("years-heat").num("heat", heat).num("to", computed(to_m)))
    });
    let said = match (found, read.analysis.state) {
        (Some(found), _) => Range::of_marks(found.span_top_m, found.span_bottom_m).said(),
        (None, State::Mixed) => Message::new("class-cast-mixed"),
        (None, State::Unstable) => Message::new("class-cast-unstable"),
        (None, State::TooFew) => Message::new("class-cast-too-few"),
        (None, _) if read.analysis.warm_layer_today.is_some() => Message::new("class-cast-today"),
        (None, _) => Message::new("class-cast-none"),
    };
    YearRow {
        cast: read.one.id(),
        day: read.one.day.clone(),
        is_day: read.day.is_some(),
        place: read.one.place.clone(),
        group: read.one.cast.group.clone(),
        value: found.map(|found| middle(found.value_m)),
        said: said.into(),
        mixed: match &read.analysis.mixed_layer {
            Some(MixedLayer::At { value_m, .. }) => Some(computed(*value_m)),
            _ => None,
        },
        heat,
    }
}

/// The others of the place, nearest in the season first; of two as near the later one first.
fn pairs(all: &[Read], chosen: Option<&str>) -> Vec<PairRow> {
    let in_hand = all.iter().find(|one| chosen == Some(one.one.id().as_str()));
    let Some((one, day)) = in_hand.and_then(|one| Some((one, one.day?))) else { return Vec::new() };
    let place = one.one.place_key();
    let is_other = |other: &&Read| other.one.id() != one.one.id() && other.one.place_key() == place;
    let mut others: Vec<(&Read, Day)> =
        all.iter().filter(is_other).filter_map(|other| Some((other, other.day?))).collect();
    sort_by(&mut others, |a, b| {
        days_apart_in_season(a.1, day).cmp(&days_apart_in_season(b.1, day)).then(b.1.cmp(&a.1))
    });
    let row = |(other, other_day): (&Read, Day)| {
        let (earlier, later) = if other_day < day { (other, one) } else { (one, other) };
        PairRow {
            cast: other.one.id(),
            days: [earlier.one.day.clone(), later.one.day.clone()],
            said: pair::said(earlier, later, days_apart_in_season(day, other_day))
                .into_iter()
                .map(Said::from)
                .collect(),
        }
    };
    others.into_iter().map(row).collect()
}
