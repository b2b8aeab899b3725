//! What is measured beside the temperature: oxygen at the marks, the Secchi disk, the height of the lake.

use super::{MOST_ROWS, Sight};
use crate::numbers::{WithNum, rounded};
use crate::view::{CompanionsView, Num, OxygenCell, OxygenRow, Said};
use layercast_core::Message;
use layercast_core::water::oxygen;
use layercast_exchange::document::{CompanionField, oxygen_mg_l};
use layercast_exchange::number::quantity;
use std::collections::BTreeMap;

/// Most marks that oxygen can be typed at; nobody reads it by hand at more.
const MOST_OXYGEN_ROWS: usize = 200;

/// Oxygen at one depth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Oxygen {
    /// Mean of the values read there, mg/L.
    pub mg_l: f64,
    /// Mean share of what the water holds, per cent; `None` where no temperature is used there.
    pub per_cent: Option<f64>,
}

/// What the fields hold, and oxygen row by row.
pub fn view(sight: &Sight, rows: &[crate::view::LogRow]) -> CompanionsView {
    let companions = &sight.notebook.cast.companions;
    let text = |field| companions.cell(field).current_text().to_owned();
    CompanionsView {
        secchi_gone: text(CompanionField::SecchiGone),
        secchi_back: text(CompanionField::SecchiBack),
        altitude: text(CompanionField::Altitude),
        odd: companions.unreadable(),
        said: said(sight),
        rows: rows.iter().take(MOST_OXYGEN_ROWS).map(|row| oxygen_row(sight, row)).collect(),
        any_oxygen: any_oxygen(sight),
    }
}

fn any_oxygen(sight: &Sight) -> bool {
    sight.notebook.cast.entries.iter().any(|entry| entry.oxygen.is_some())
}

fn said(sight: &Sight) -> Vec<Said> {
    let companions = &sight.notebook.cast.companions;
    let odd = companions.unreadable().map(|field| {
        let message = match field {
            CompanionField::Altitude => Message::new("log-altitude-odd"),
            CompanionField::SecchiGone | CompanionField::SecchiBack => Message::new("log-secchi-odd"),
        };
        message.text("written", companions.cell(field).current_text())
    });
    odd.into_iter().chain(secchi(sight)).chain(oxygen_at(sight)).map(Into::into).collect()
}

/// The Secchi depth in words.
pub fn secchi(sight: &Sight) -> Option<Message> {
    let depth_m = sight.notebook.cast.companions.secchi_m()?;
    Some(Message::new("log-secchi-depth").depth("depth", rounded(depth_m, 2)))
}

/// For which height of the lake per cent are worked out.
pub fn oxygen_at(sight: &Sight) -> Option<Message> {
    any_oxygen(sight).then(|| match sight.notebook.cast.companions.altitude_m() {
        Some(altitude_m) => Message::new("log-oxygen-at-height").number("height", altitude_m, 0),
        None => Message::new("log-oxygen-at-sea"),
    })
}

fn oxygen_row(sight: &Sight, row: &crate::view::LogRow) -> OxygenRow {
    let entries = &sight.notebook.cast.entries;
    let has = |i: &&usize| entries.get(**i).is_some_and(|entry| entry.oxygen.is_some());
    let mut with: Vec<Option<usize>> = row.entries.iter().filter(has).map(|i| Some(*i)).collect();
    if with.is_empty() {
        with.push(row.entries.first().copied());
    }
    let cell = |entry: Option<usize>| {
        let oxygen = entry.and_then(|i| entries.get(i)?.oxygen.as_ref());
        let text = oxygen.map_or("", |cell| cell.current_text());
        let is_odd = entry.is_some_and(|i| oxygen_mg_l(&sight.notebook.cast, i).is_none());
        OxygenCell { entry, text: text.to_owned(), odd: is_odd && !text.trim().is_empty() }
    };
    OxygenRow {
        depth: row.depth,
        per_cent: of(sight, row.entries.iter().copied())
            .and_then(|oxygen| oxygen.per_cent)
            .map(|value| Num { value: rounded(value, 0), decimals: 0 }),
        cells: with.into_iter().map(cell).collect(),
    }
}

/// Oxygen of several readings of one depth.
fn of(sight: &Sight, entries: impl Iterator<Item = usize>) -> Option<Oxygen> {
    let (mut sum, mut count) = (0.0, 0_u32);
    let (mut shares, mut with_share) = (0.0, 0_u32);
    for i in entries {
        let Some(mg_l) = oxygen_mg_l(&sight.notebook.cast, i) else { continue };
        sum += mg_l;
        count += 1;
        if let Some(share) = per_cent(sight, i, mg_l) {
            shares += share;
            with_share += 1;
        }
    }
    (count > 0).then(|| Oxygen {
        mg_l: sum / f64::from(count),
        per_cent: (with_share > 0).then(|| shares / f64::from(with_share)),
    })
}

/// Per cent of what fresh water holds at its temperature and the pressure at its surface (methods 9). The temperature is
/// that of the profile at this depth.
fn per_cent(sight: &Sight, i: usize, mg_l: f64) -> Option<f64> {
    let depth_m = sight.prepared.cast.readings.get(i)?.depth_m;
    let levels = &sight.context.analysis.profile;
    let below = levels.partition_point(|level| level.depth_m <= depth_m + 1e-6);
    let level = levels.get(below.checked_sub(1)?).filter(|level| (level.depth_m - depth_m).abs() <= 1e-6)?;
    let altitude_m = sight.notebook.cast.companions.altitude_m().unwrap_or(0.0);
    oxygen::per_cent(mg_l, level.temp_c, 0.0, oxygen::pressure_atm(altitude_m)?)
}

/// Oxygen by depth, in millionths of a metre: of every depth of the profile that has some.
pub fn by_depth(sight: &Sight) -> BTreeMap<i64, Oxygen> {
    let mut at: BTreeMap<i64, Vec<usize>> = BTreeMap::new();
    if !any_oxygen(sight) {
        return BTreeMap::new();
    }
    for (i, reading) in sight.prepared.cast.readings.iter().enumerate() {
        if reading.depth_m.is_finite() && oxygen_mg_l(&sight.notebook.cast, i).is_some() {
            at.entry(key(reading.depth_m)).or_default().push(i);
        }
    }
    at.into_iter()
        .take(MOST_ROWS)
        .filter_map(|(key, entries)| Some((key, of(sight, entries.into_iter())?)))
        .collect()
}

/// Depths closer than a millionth of a metre are one.
pub fn key(depth_m: f64) -> i64 {
    (depth_m * 1e6).round() as i64
}

/// Decimals of oxygen as it was written most finely, one or two.
pub fn decimals(sight: &Sight) -> u8 {
    let written = sight.notebook.cast.entries.iter().filter_map(|entry| entry.oxygen.as_ref());
    let finest = written.filter_map(|cell| quantity(cell.current_text())).map(|oxygen| oxygen.decimals).max();
    finest.unwrap_or(1).clamp(1, 2)
}
