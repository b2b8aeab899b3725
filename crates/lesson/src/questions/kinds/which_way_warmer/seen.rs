//! What the pairs of a cast show: which way is warmer, where, and what may be behind it.

use crate::questions::water::{SLACK, Water};

pub(super) const DOWN: &str = "down";
pub(super) const UP: &str = "up";
pub(super) const SMALL: &str = "small";
pub(super) const EVERYWHERE: &str = "everywhere";
pub(super) const STEEP: &str = "steep";
pub(super) const NO_PATTERN: &str = "no_pattern";
pub(super) const SETTLING: &str = "settling";
pub(super) const MARKS: &str = "marks";
pub(super) const DRIFT: &str = "drift";
pub(super) const CHANCE: &str = "chance";
pub(super) const WRONG: &str = "wrong";

/// So near to the limit of the rule either answer counts: shares of it.
const NEAR: (f64, f64) = (0.67, 1.5);
/// A mean difference smaller than this may be called too small, °C: half of the last place.
const SMALL_C: f64 = 0.05;
/// Share of the marks on one side that shows it by the signs.
const MOST: f64 = 0.8;
/// A mark is beside a steep step from this share of the steepest on.
const STEEP_SHARE: f64 = 0.5;
/// What the rest differs by, as a share of what the steep marks do: up to the first it is where it is steep, from the
/// second on it is everywhere.
const PLACES: (f64, f64) = (0.35, 0.7);

/// What a water's pairs show.
#[derive(Clone, Debug, PartialEq)]
pub(super) struct Seen {
    /// Right sides, the class's first.
    pub sides: Vec<&'static str>,
    /// Mean of down − up, °C.
    pub mean_c: f64,
    /// Marks where down is warmer.
    pub down: usize,
    /// Marks where up is warmer.
    pub up: usize,
    /// Marks read twice.
    pub count: usize,
    /// Mean of down − up beside steep steps and elsewhere, °C, where there are both.
    pub by_place_c: Option<(f64, f64)>,
    /// What chance can do between the two, °C.
    chance_c: f64,
    /// Beside the steep steps the water gets warmer downward.
    warms: bool,
}

struct Pair {
    d_c: f64,
    slope: f64,
}

fn pairs(water: &Water) -> Vec<Pair> {
    let steps = water.steps();
    let steeper = |i: usize| {
        let near = [i.checked_sub(1).and_then(|above| steps.get(above)), steps.get(i)];
        let rates = near.into_iter().flatten().map(|s| s.cooling_c_per_m);
        rates.fold(0.0, |best: f64, r| if r.abs() > best.abs() { r } else { best })
    };
    (water.levels().iter().enumerate())
        .filter_map(|(i, l)| Some(Pair { d_c: l.down_c? - l.up_c?, slope: steeper(i) }))
        .collect()
}

fn mean(of: &[&Pair]) -> f64 {
    of.iter().map(|p| p.d_c).sum::<f64>() / of.len().max(1) as f64
}

impl Seen {
    /// Of a water.
    pub fn of(water: &Water) -> Self {
        let all = pairs(water);
        let found = &water.analysis().pairs;
        let n = all.len() as f64;
        let mean_c = found.mean_c.unwrap_or_default();
        let (down, up) =
            (all.iter().filter(|p| p.d_c > SLACK).count(), all.iter().filter(|p| p.d_c < -SLACK).count());
        let warmer = if mean_c >= 0.0 { DOWN } else { UP };
        let limit_c = 2.0 * found.sd_c.unwrap_or_default() / n.max(1.0).sqrt();
        let ratio = if limit_c > SLACK { mean_c.abs() / limit_c } else { f64::INFINITY };
        let clear = found.systematic && mean_c.abs() > SLACK;
        let by_signs = {
            let (most, warmer) = if down >= up { (down, DOWN) } else { (up, UP) };
            let differ = down + up;
            (differ >= 4 && most as f64 >= MOST * n).then_some(warmer)
        };
        let mut sides = if clear { vec![warmer] } else { vec![SMALL] };
        let either = ratio >= NEAR.0 && ratio <= NEAR.1;
        if clear && (either || mean_c.abs() < SMALL_C) {
            sides.push(SMALL);
        }
        if !clear && either && mean_c.abs() > SLACK {
            sides.push(warmer);
        }
        if let Some(side) = by_signs.filter(|side| !sides.contains(side)) {
            sides.push(side);
        }
        let steepest = all.iter().map(|p| p.slope.abs()).fold(0.0, f64::max);
        let is_steep = |p: &&Pair| p.slope.abs() >= STEEP_SHARE * steepest - SLACK;
        let steep: Vec<&Pair> = all.iter().filter(is_steep).collect();
        let rest: Vec<&Pair> = all.iter().filter(|p| !is_steep(p)).collect();
        let both = !steep.is_empty() && !rest.is_empty();
        let shares = 1.0 / steep.len().max(1) as f64 + 1.0 / rest.len().max(1) as f64;
        // d has twice the variance of a reading.
        let chance_c = 2.0 * found.s_used_c * (2.0 * shares).sqrt();
        let warming = steep.iter().filter(|p| p.slope < 0.0).count();
        Self {
            sides,
            mean_c,
            down,
            up,
            count: all.len(),
            by_place_c: both.then(|| (mean(&steep), mean(&rest))),
            chance_c,
            warms: 2 * warming > steep.len(),
        }
    }

    /// Right places for a side, the class's first.
    pub fn places(&self, side: &str) -> Vec<&'static str> {
        if side == SMALL {
            return vec![NO_PATTERN];
        }
        let Some((steep_c, rest_c)) = self.by_place_c else { return vec![EVERYWHERE] };
        let sign = if side == UP { -1.0 } else { 1.0 };
        let (steep_c, rest_c) = (sign * steep_c, sign * rest_c);
        if steep_c <= SLACK {
            return vec![EVERYWHERE, NO_PATTERN];
        }
        let share = rest_c / steep_c;
        let told_apart = (steep_c - rest_c).abs() > self.chance_c;
        if share <= PLACES.0 {
            if told_apart { vec![STEEP] } else { vec![STEEP, EVERYWHERE] }
        } else if share < PLACES.1 {
            vec![STEEP, EVERYWHERE]
        } else {
            vec![EVERYWHERE]
        }
    }

    /// What may be behind a side and a place, the likeliest first. A probe that has not settled is still warm on the way
    /// down where the water cools downward, and still cold where it warms.
    pub fn reasons(&self, side: &str, place: &str) -> Vec<&'static str> {
        let lags = (side == DOWN) != self.warms;
        match (side, place) {
            (SMALL, _) | (_, NO_PATTERN) => vec![CHANCE],
            (_, STEEP) if lags => vec![SETTLING, MARKS],
            (_, STEEP) => vec![MARKS],
            _ => vec![DRIFT],
        }
    }
}
