//! State of the water: layered, weak, mixed, inverse or unstable.

use super::overturn::{Overturn, overturn};
use super::runs::BELIEVABLE;
use crate::analysis::{Level, State, StateFacts};
use crate::cast::station::median;
use crate::slack::{at_least, at_most, more_than};
use crate::water::density::Density;

/// Top and bottom are the medians within this distance of the first and last level, metres.
pub const END_M: f64 = 1.0;
/// Colder on top than at the bottom by at least this is inverse, °C.
pub const INVERSE_C: f64 = 0.5;
/// Less density gained from top to bottom is mixed, kg m⁻³.
pub const MIXED_KG_M3: f64 = 0.1;
/// At least this much is layered even without a steep step, kg m⁻³.
pub const STRATIFIED_KG_M3: f64 = 0.5;
/// An overturn beyond this is doubted, and makes the water unstable where it is no less than the density gained, kg m⁻³.
pub const OVERTURN_KG_M3: f64 = 0.03;
/// An inverse cast gains more density downward than this, kg m⁻³.
pub const INVERSE_KG_M3: f64 = 0.01;

/// The numbers a state is judged by; `None` without a level.
///
/// Top and bottom: median of the values within 1 m of the first and the last level, the single values if the cast spans
/// 2 m or less. Inversion: [`overturn`]; below 0.03 kg m⁻³ it has no pair.
///
/// * `s_c`: standard deviation of one reading \[°C\], for the smallest believable difference
/// * `density`: the formula the levels' densities were computed by
pub fn facts(levels: &[Level], s_c: f64, density: Density) -> Option<(StateFacts, Option<Overturn>)> {
    let (first, last) = (levels.first()?, levels.last()?);
    let end = |near: &dyn Fn(&Level) -> bool| {
        median(&mut levels.iter().filter(|l| near(l)).map(|l| l.temp_c).collect::<Vec<f64>>())
    };
    let (top_c, bottom_c) = if more_than(last.depth_m - first.depth_m, 2.0 * END_M) {
        (
            end(&|l| at_most(l.depth_m, first.depth_m + END_M))?,
            end(&|l| at_least(l.depth_m, last.depth_m - END_M))?,
        )
    } else {
        (first.temp_c, last.temp_c)
    };
    let found = overturn(levels);
    let doubted = found.filter(|o| more_than(o.by_kg_m3, OVERTURN_KG_M3));
    let facts = StateFacts {
        top_c,
        bottom_c,
        density_gain: density.kg_m3(bottom_c) - density.kg_m3(top_c),
        inversion: found.map_or(0.0, |o| o.by_kg_m3),
        inversion_pair_m: doubted
            .and_then(|o| Some((levels.get(o.upper)?.depth_m, levels.get(o.lower)?.depth_m))),
        believable_c: BELIEVABLE * s_c,
    };
    Some((facts, doubted))
}

/// The state these facts make, in this order: *unstable* when an overturn beyond 0.03 kg m⁻³ is no less than the density
/// gained; *inverse* when the top is colder by at least 0.5 °C and lighter; *mixed* when less than 0.1 kg m⁻³ is
/// gained; *stratified* with a steep run or at least 0.5 kg m⁻³; else *weak*.
///
/// 3 → 5 °C downward is mixed: equal density either side of 4 °C. Whether there are depths enough is not asked here.
///
/// * `steep_run`: whether a run of at least 1 °C per metre survives
///
/// A convention of ours.
pub fn state(facts: &StateFacts, steep_run: bool) -> State {
    let gain = facts.density_gain;
    if more_than(facts.inversion, OVERTURN_KG_M3) && at_least(facts.inversion, gain) {
        State::Unstable
    } else if at_most(facts.top_c, facts.bottom_c - INVERSE_C) && more_than(gain, INVERSE_KG_M3) {
        State::Inverse
    } else if !at_least(gain, MIXED_KG_M3) {
        State::Mixed
    } else if steep_run || at_least(gain, STRATIFIED_KG_M3) {
        State::Stratified
    } else {
        State::Weak
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// One value a metre, exact.
    #[track_caller]
    fn check(temps_c: &[f64], steep_run: bool, want: State) {
        let levels: Vec<Level> =
            temps_c.iter().enumerate().map(|(i, t)| Level::bare(i as f64, *t, 0.0)).collect();
        let (facts, _) = facts(&levels, 0.1, Density::Tanaka).unwrap();
        assert_eq!(state(&facts, steep_run), want);
    }

    #[test]
    fn a_summer_lake_is_layered() {
        check(&[22.0, 22.0, 15.0, 9.0, 8.0], true, State::Stratified);
        check(&[22.0, 21.0, 20.0, 19.0, 18.0], false, State::Stratified);
    }

    #[test]
    fn a_little_cooling_is_weak_and_less_is_mixed() {
        check(&[16.0, 15.7, 15.3, 15.0, 14.6], false, State::Weak);
        check(&[15.2, 15.2, 15.1, 15.0, 15.0], false, State::Mixed);
    }

    #[test]
    fn either_side_of_four_degrees_is_mixed() {
        check(&[3.0, 3.0, 4.0, 5.0, 5.0], false, State::Mixed);
    }

    #[test]
    fn ice_water_on_top_is_inverse() {
        check(&[0.2, 0.9, 2.0, 3.5, 4.0], false, State::Inverse);
    }

    #[test]
    fn heavier_water_on_top_is_unstable_unless_the_lake_outweighs_it() {
        check(&[12.0, 12.0, 12.8, 13.5, 13.5], false, State::Unstable);
        check(&[22.0, 22.0, 14.0, 15.0, 8.0, 8.0], true, State::Stratified);
    }

    #[test]
    fn no_level_no_facts() {
        assert!(facts(&[], 0.1, Density::Tanaka).is_none());
    }
}
