//! °F or °C: whether the temperatures of one cast alone look like °F.

use layercast_exchange::document::{CastDoc, SwitchDoc, Unit};
use layercast_exchange::number::quantity;

/// Warmer than lake water gets, °C: as the class takes it.
const NO_LAKE_C: f64 = 40.0;
/// Fewer readings say nothing of a unit: one lost point is one lost point.
const LEAST: usize = 3;

/// No unit is written at the number.
pub fn stands_alone(text: &str) -> bool {
    quantity(text).is_none_or(|written| written.unit.is_none())
}

/// The value is what the number as written would be in this unit.
pub fn is_in(unit: Unit, text: &str, value: Option<f64>) -> bool {
    let read = quantity(text).filter(|written| written.to.is_none()).zip(value);
    read.is_some_and(|(written, value)| (unit.to_m_or_c(written.value) - value).abs() < 1e-6)
}

/// The temperatures look like °F: coldest and warmest of them, as written.
///
/// Most of those without a unit are warmer than lake water gets, or than is common beside at least three that are; and as °F
/// they would be lake water. What a person left out does not count. Deep water of 4 °C is 39.2 °F, so that half of a deep
/// cast may lie under 40.
pub fn looks_fahrenheit(cast: &CastDoc) -> Option<(f64, f64)> {
    let entries = cast.entries.iter().filter(|entry| entry.switch != SwitchDoc::Off);
    let alone = entries.filter_map(|entry| {
        let text = entry.temp.current_text();
        entry.temp.current().filter(|value| stands_alone(text) && !is_in(Unit::F, text, Some(*value)))
    });
    let temps: Vec<f64> = alone.collect();
    let fits = |temp: &&f64| **temp > 32.0 && Unit::F.to_m_or_c(**temp) <= NO_LAKE_C;
    let suspected: Vec<f64> = temps.iter().filter(fits).copied().collect();
    let no_lake = suspected.iter().filter(|temp| **temp > NO_LAKE_C).count();
    if no_lake < LEAST || 2 * suspected.len() <= temps.len() {
        return None;
    }
    let low = suspected.iter().copied().fold(f64::INFINITY, f64::min);
    let high = suspected.iter().copied().fold(f64::NEG_INFINITY, f64::max);
    Some((low, high))
}
