//! The five causes fitted: each least squares on the differences, each with its score.

use super::field::{At, Field};
use super::result::{Cause, NotTried};

/// Places along each one-number search before it is refined.
const GRID: i32 = 10;
/// Rounds of refinement.
const ROUNDS: usize = 8;
/// Weighed square that chance leaves at each depth, about.
const LEFT_BY_CHANCE: f64 = 1.5;
/// Odds before any reading: gear that was not checked is to blame three times as often as water that moved. A convention
/// of ours; it costs moved water this much score.
const GEAR_FIRST: f64 = 2.2;
/// A warmed top must have been read above this depth, metres.
const TOP_M: f64 = 1.5;
/// How fast a warmed top may fade, metres: each a step of about a third.
const FADES_M: [f64; 8] = [0.3, 0.4, 0.55, 0.75, 1.0, 1.35, 1.8, 2.4];

/// A cause as fitted, seen from the first cast of the field.
#[derive(Clone, Copy, Debug)]
pub(super) struct Fitted {
    pub value: f64,
    pub u: f64,
    pub fade_m: Option<f64>,
    pub at_limit: bool,
    pub misfit: f64,
    pub score: f64,
}

/// Which causes both casts have a record of.
#[derive(Clone, Copy, Debug, Default)]
pub(super) struct Checked {
    pub offset: bool,
    pub zero: bool,
    pub stretch: bool,
}

impl Checked {
    fn usual(self, cause: Cause) -> f64 {
        cause.usual(match cause {
            Cause::Offset => self.offset,
            Cause::Zero => self.zero,
            Cause::Stretch => self.stretch,
            Cause::WarmTop | Cause::MovedWater => false,
        })
    }
}

/// Fits one cause.
pub(super) fn fitted(field: &Field, cause: Cause, checked: Checked) -> Result<Fitted, NotTried> {
    let usual = checked.usual(cause);
    match cause {
        Cause::Offset => Ok(scaled(field, usual, |_| 1.0)),
        Cause::WarmTop => warm_top(field, usual),
        Cause::Zero | Cause::Stretch | Cause::MovedWater => {
            if field.even {
                return Err(NotTried::EvenWater);
            }
            let reach = reach(field, cause).ok_or(NotTried::NoLayer)?;
            let limit = match cause {
                Cause::Stretch => 0.25,
                Cause::Zero => 1.5,
                _ => 2.0,
            };
            let fit = moved(field, usual, &reach, limit);
            let odds = if cause == Cause::MovedWater { GEAR_FIRST } else { 0.0 };
            Ok(Fitted { score: fit.score + odds, ..fit })
        }
    }
}

/// Difference that a fitted cause makes at each shared depth \[°C\].
pub(super) fn predicted_c(field: &Field, cause: Cause, fit: &Fitted) -> Vec<f64> {
    match (cause, fit.fade_m) {
        (Cause::WarmTop, Some(fade_m)) => {
            field.shared.iter().map(|at| fit.value * faded(at.depth_m, fade_m)).collect()
        }
        (Cause::Offset | Cause::WarmTop, _) => vec![fit.value; field.shared.len()],
        _ => {
            let reach = reach(field, cause).unwrap_or_else(|| vec![0.0; field.shared.len()]);
            let each = field.shared.iter().zip(&reach);
            each.map(|(at, reach)| moved_c(field, at, fit.value * reach).0).collect()
        }
    }
}

/// The best fade of a warmed top, between the steps that were tried.
pub(super) fn refined_top(field: &Field, fit: Fitted, checked: Checked) -> Fitted {
    let usual = checked.usual(Cause::WarmTop);
    let Some(about_m) = fit.fade_m else { return fit };
    let at = |fade_m: f64| scaled(field, usual, |at| faded(at.depth_m, fade_m));
    let (mut low, mut high) = (about_m / 1.4, about_m * 1.4);
    for _ in 0..24 {
        let third = (high - low) / 3.0;
        if at(low + third).misfit <= at(high - third).misfit { high -= third } else { low += third }
    }
    let fade_m = (low + high) / 2.0;
    Fitted { fade_m: Some(fade_m), score: fit.score, at_limit: fit.at_limit, ..at(fade_m) }
}

/// How far each shared depth is moved for each unit of the value, metres; positive where b tells of deeper water.
fn reach(field: &Field, cause: Cause) -> Option<Vec<f64>> {
    match cause {
        Cause::Zero => Some(vec![1.0; field.shared.len()]),
        Cause::Stretch => Some(field.shared.iter().map(|at| at.depth_m).collect()),
        Cause::MovedWater => field.rocking.as_ref().map(|shape| shape.iter().map(|share| -share).collect()),
        Cause::Offset | Cause::WarmTop => None,
    }
}

/// Difference and its slope when b tells of water deeper by `deeper_m`: of water between both, half up and half down.
fn moved_c(field: &Field, at: &At, deeper_m: f64) -> (f64, f64) {
    let below = field.mean.at(at.depth_m + deeper_m / 2.0);
    let above = field.mean.at(at.depth_m - deeper_m / 2.0);
    (below.0 - above.0, (below.1 + above.1) / 2.0)
}

/// Share of the warming left at a depth.
fn faded(depth_m: f64, fade_m: f64) -> f64 {
    libm::exp(-depth_m.max(0.0) / fade_m)
}

/// Scored by the odds that a value of usual size (normal, standard deviation `usual`) made such differences.
fn scored(value: f64, u: f64, usual: f64, misfit: f64) -> f64 {
    misfit + value * value / (usual * usual + u * u) + libm::log(1.0 + (usual / u) * (usual / u))
}

/// A value that multiplies a fixed shape: closed form.
fn scaled(field: &Field, usual: f64, shape: impl Fn(&At) -> f64) -> Fitted {
    let (mut told, mut weight) = (0.0, 0.0);
    for at in &field.shared {
        let shape = shape(at);
        told += shape * at.difference_c / at.variance;
        weight += shape * shape / at.variance;
    }
    let weight = weight.max(1e-12);
    let (value, u) = (told / weight, 1.0 / weight.sqrt());
    let misfit = field.misfit(field.shared.iter().map(|at| value * shape(at)));
    Fitted { value, u, fade_m: None, at_limit: false, misfit, score: scored(value, u, usual, misfit) }
}

/// A warmed top: the odds are the mean over how fast it may fade.
fn warm_top(field: &Field, usual: f64) -> Result<Fitted, NotTried> {
    if field.shared.first().is_none_or(|at| at.depth_m > TOP_M) {
        return Err(NotTried::TopNotRead);
    }
    let tried = FADES_M.map(|fade_m| Fitted {
        fade_m: Some(fade_m),
        ..scaled(field, usual, |at| faded(at.depth_m, fade_m))
    });
    let [first, rest @ ..] = &tried;
    let best = rest.iter().fold(*first, |best, fit| if fit.misfit < best.misfit { *fit } else { best });
    let least = tried.iter().map(|fit| fit.score).fold(f64::INFINITY, f64::min);
    let odds =
        tried.iter().map(|fit| libm::exp((least - fit.score) / 2.0)).sum::<f64>() / FADES_M.len() as f64;
    let [fastest, .., slowest] = FADES_M;
    let at_limit = best.fade_m.is_some_and(|fade_m| fade_m <= fastest || fade_m >= slowest);
    Ok(Fitted { score: least - 2.0 * libm::log(odds), at_limit, ..best })
}

/// A value that moves the water: searched along a grid, then refined.
fn moved(field: &Field, usual: f64, reach: &[f64], limit: f64) -> Fitted {
    // Misfit, its fall along the value, and the weight of the readings.
    let look = |value: f64| {
        let (mut misfit, mut fall, mut weight) = (0.0, 0.0, 0.0);
        for (at, reach) in field.shared.iter().zip(reach) {
            let (predicted, slope) = moved_c(field, at, value * reach);
            let (left, slope) = (at.difference_c - predicted, slope * reach);
            misfit += left * left / at.variance;
            fall += left * slope / at.variance;
            weight += slope * slope / at.variance;
        }
        (misfit, fall, weight.max(1e-12))
    };
    let refined = |mut value: f64, mut best: (f64, f64, f64)| {
        let mut most = limit / 10.0;
        for _ in 0..ROUNDS {
            let step = (best.1 / best.2).clamp(-most, most);
            let tried = (value + step).clamp(-limit, limit);
            let found = look(tried);
            if found.0 < best.0 {
                (value, best) = (tried, found);
            } else {
                most = step.abs() / 4.0;
            }
            if step.abs() < 1e-5 * limit {
                break;
            }
        }
        (value, best)
    };
    let (mut value, mut best) = refined(0.0, look(0.0));
    // A search from nothing may end in a dip of its own; one that leaves no more than chance needs no other.
    if best.0 > LEFT_BY_CHANCE * field.shared.len() as f64 {
        let (mut start, mut at_start) = (value, best);
        for place in -GRID..=GRID {
            let tried = limit * f64::from(place) / f64::from(GRID);
            let found = look(tried);
            if found.0 < at_start.0 {
                (start, at_start) = (tried, found);
            }
        }
        (value, best) = refined(start, at_start);
    }
    let u = 1.0 / best.2.sqrt();
    let at_limit = value.abs() >= limit;
    Fitted { value, u, fade_m: None, at_limit, misfit: best.0, score: scored(value, u, usual, best.0) }
}
