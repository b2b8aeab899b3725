//! Warmest, coldest, how far the two ways are apart: these need no cover.

use super::Sight;
use super::log::is_example;
use crate::numbers::{WithNum, reading_decimals, rounded};
use crate::view::{Num, Said};
use layercast_core::cast::pairs::ENOUGH_PAIRS;
use layercast_core::{Leg, Message, Pairs, State};

/// Warmest, coldest, apart; without a pair, what is assumed of each reading.
pub fn facts(sight: &Sight) -> Vec<Said> {
    let analysis = sight.context.analysis;
    let decimals = reading_decimals(sight.notebook.cast.digit_c);
    let at = |extreme: Option<(f64, f64, Leg)>, surface: &'static str, below: &'static str| {
        let (temp_c, depth_m, _) = extreme?;
        let message = Message::new(if depth_m.abs() < 1e-9 { surface } else { below });
        Some(message.number("temp", temp_c, decimals).depth("depth", depth_m))
    };
    let apart = analysis
        .pairs
        .max_abs_c
        .map(|apart_c| Message::new("profile-apart").number("apart", rounded(apart_c, decimals), decimals));
    let pairs = &analysis.pairs;
    let is_assumed = pairs.s_c.is_none_or(|s_c| pairs.count < ENOUGH_PAIRS && s_c < pairs.s_used_c - 1e-9);
    let assumed = (is_assumed && analysis.profile.len() > 1).then(|| {
        let message = match pairs.count {
            0 => Message::new("profile-assumed"),
            count => Message::new("profile-assumed-few").count("count", count),
        };
        message.num("assumed", assumed(pairs))
    });
    let example = is_example(&sight.notebook.cast).then(|| Message::new("profile-example"));
    [
        example,
        at(analysis.warmest, "profile-warmest-surface", "profile-warmest"),
        at(analysis.coldest, "profile-coldest-surface", "profile-coldest"),
        apart,
        assumed,
    ]
    .into_iter()
    .flatten()
    .map(Into::into)
    .collect()
}

/// What is assumed of a reading that stands alone, °C: more than 0.1 where it is written more coarsely.
pub fn assumed(pairs: &Pairs) -> Num {
    Num { value: rounded(pairs.s_used_c, 1), decimals: 1 }
}

/// The two ways differ by more than their noise: which way, where, and what that suggests.
pub fn legs_note(sight: &Sight) -> Option<Said> {
    let pairs = &sight.context.analysis.pairs;
    let mean_c = pairs.mean_c.filter(|_| pairs.systematic)?;
    let decimals = if mean_c.abs() < 0.095 - 1e-9 && rounded(mean_c.abs(), 1) < 0.1 { 2 } else { 1 };
    let warmer_down = mean_c > 0.0;
    let cools_downward = match sight.context.analysis.state {
        State::Stratified | State::Weak | State::Mixed => true,
        State::Inverse => false,
        State::Unstable | State::TooFew => return Some(plain(mean_c, decimals)),
    };
    // A probe that still settles reads too warm on the way to colder water, too cold on the way to warmer water.
    if warmer_down == cools_downward && most_where_steep(sight) {
        let message = match warmer_down {
            true => Message::new("profile-legs-settling-warmer"),
            false => Message::new("profile-legs-settling-colder"),
        };
        return Some(message.number("mean", rounded(mean_c.abs(), decimals), decimals).into());
    }
    Some(plain(mean_c, decimals))
}

fn plain(mean_c: f64, decimals: u8) -> Said {
    let message = match mean_c > 0.0 {
        true => Message::new("profile-legs-warmer"),
        false => Message::new("profile-legs-colder"),
    };
    message.number("mean", rounded(mean_c.abs(), decimals), decimals).into()
}

/// The legs are further apart where the temperature changes fast than elsewhere.
fn most_where_steep(sight: &Sight) -> bool {
    let analysis = sight.context.analysis;
    let slope = |level: usize| {
        let of = |step: Option<usize>| {
            step.and_then(|step| analysis.steps.get(step)).map_or(0.0, |step| step.cooling_c_per_m.abs())
        };
        of(level.checked_sub(1)).max(of(Some(level)))
    };
    let steep = analysis.method.steep_c_per_m;
    let mut sums = [(0.0, 0u32); 2];
    for (i, level) in analysis.profile.iter().enumerate() {
        let Some((down_c, up_c)) = level.down_c.zip(level.up_c) else { continue };
        if let Some((sum, count)) = sums.get_mut(usize::from(slope(i) >= steep - 1e-9)) {
            *sum += down_c - up_c;
            *count += 1;
        }
    }
    let [gentle, fast] =
        sums.map(|(sum, count)| if count >= 2 { Some(sum / f64::from(count)) } else { None });
    match (gentle, fast) {
        (Some(gentle), Some(fast)) => fast.abs() > 1.5 * gentle.abs() + 1e-9 && fast.abs() > 0.05,
        (None, Some(_)) => true,
        _ => false,
    }
}
