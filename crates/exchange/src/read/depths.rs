//! The order of the depths: one way, there and back, twice the same way, and the cells that do not fit in.

use layercast_core::order::{sort_by, sort_numbers};
/// How a series of depths runs.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(super) enum Shape {
    /// Ever deeper, ever shallower, or all equal.
    OneWay,
    /// Deeper, then shallower: rows from this index on come after the turn.
    ThereAndBack(usize),
    /// Shallower, then deeper.
    BackAndThere(usize),
    /// Twice from the surface: rows from this index on are the second series.
    Twice(usize),
    /// Up and down more often.
    Tangled,
}

/// Longest share of cells that may be out of order: one, or one in twelve.
fn tolerated(count: usize) -> usize {
    (count / 12).max(1)
}

/// The most frequent distance between neighbours, ignoring repeats; of equally frequent ones the smallest.
///
/// `None` for fewer than two different neighbours. NaNs are passed over.
pub(crate) fn usual_step(depths: &[f64]) -> Option<f64> {
    let finite: Vec<f64> = depths.iter().copied().filter(|depth| depth.is_finite()).collect();
    let mut steps: Vec<f64> = finite
        .iter()
        .zip(finite.iter().skip(1))
        .map(|(a, b)| (b - a).abs())
        .filter(|step| *step > 1e-9)
        .collect();
    sort_numbers(&mut steps);
    let mut best: Option<(usize, f64)> = None;
    let mut run: (usize, f64) = (0, 0.0);
    for step in steps {
        if run.0 > 0 && step - run.1 <= 1e-6 * step {
            run.0 += 1;
        } else {
            run = (1, step);
        }
        if best.is_none_or(|(count, _)| run.0 > count) {
            best = Some(run);
        }
    }
    best.map(|(_, step)| step)
}

/// How the depths run. NaNs (cells without a depth) are passed over; indices count all rows.
pub(super) fn shape(depths: &[f64]) -> Shape {
    let wild = wild(depths);
    let kept: Vec<(usize, f64)> = depths
        .iter()
        .copied()
        .enumerate()
        .filter(|(at, depth)| depth.is_finite() && !wild.get(*at).is_some_and(|wild| *wild))
        .collect();
    let values: Vec<f64> = kept.iter().map(|(_, depth)| *depth).collect();
    let shape = match shape_of(&values) {
        Shape::Tangled => shape_of_jittering(&values),
        shape => shape,
    };
    let original = |at: usize| kept.get(at).map_or(depths.len(), |(row, _)| *row);
    match shape {
        Shape::ThereAndBack(at) => Shape::ThereAndBack(original(at)),
        Shape::BackAndThere(at) => Shape::BackAndThere(original(at)),
        Shape::Twice(at) => Shape::Twice(original(at)),
        shape => shape,
    }
}

fn shape_of(values: &[f64]) -> Shape {
    let count = values.len();
    if count < 3 {
        return Shape::OneWay;
    }
    let deeper_to = longest(values, false);
    let shallower_to = longest(values, true);
    let turned: Vec<f64> = values.iter().rev().copied().collect();
    // Read from the back, "ever deeper from here" is "ever shallower up to here".
    let mut deeper_from = longest(&turned, true);
    let mut shallower_from = longest(&turned, false);
    deeper_from.reverse();
    shallower_from.reverse();

    let most = |lengths: &[usize]| lengths.iter().copied().max().unwrap_or(0);
    let one_way = most(&deeper_to).max(most(&shallower_to));
    let peak = |to: &[usize], from: &[usize]| {
        (0..count)
            .map(|at| (to.get(at).unwrap_or(&0) + from.get(at).unwrap_or(&0), at))
            .max_by_key(|(length, at)| (*length, std::cmp::Reverse(*at)))
            .map_or((0, 0), |(length, at)| (length.saturating_sub(1), at))
    };
    let there_and_back = peak(&deeper_to, &shallower_from);
    let back_and_there = peak(&shallower_to, &deeper_from);
    let twice = twice(values, &deeper_to, &deeper_from);

    let tolerated = tolerated(count);
    for missing in [0, tolerated] {
        if one_way + missing >= count {
            return Shape::OneWay;
        }
        if there_and_back.0 + missing >= count {
            return Shape::ThereAndBack(after_the_deepest(values, there_and_back.1));
        }
        if let Some((length, at)) = twice.filter(|(length, _)| length + missing >= count) {
            debug_assert!(length <= count);
            return Shape::Twice(at);
        }
        if back_and_there.0 + missing >= count {
            return Shape::BackAndThere(back_and_there.1 + 1);
        }
    }
    Shape::Tangled
}

/// The deepest row belongs to the way down; read more than once there, the rows are shared out, the odd one to down.
fn after_the_deepest(values: &[f64], peak: usize) -> usize {
    let deepest = values.get(peak).copied().unwrap_or(0.0);
    let same = |at: &usize| values.get(*at).is_some_and(|depth| (depth - deepest).abs() <= 1e-9);
    let first = (0..=peak).rev().take_while(same).last().unwrap_or(peak);
    let rows = (first..values.len()).take_while(same).count();
    first + rows.div_ceil(2)
}

/// Two series one under the other, both growing, at least three rows each and both over most of the range.
fn twice(values: &[f64], deeper_to: &[usize], deeper_from: &[usize]) -> Option<(usize, usize)> {
    let count = values.len();
    let range = |values: &[f64]| {
        let (low, high) =
            values.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), v| (l.min(*v), h.max(*v)));
        (high - low).max(0.0)
    };
    let whole = range(values);
    let mut before = vec![0; count];
    let mut so_far = 0;
    for (slot, length) in before.iter_mut().zip(deeper_to) {
        so_far = so_far.max(*length);
        *slot = so_far;
    }
    let mut best = None;
    let mut after = 0;
    for at in (1..count).rev() {
        after = after.max(deeper_from.get(at).copied().unwrap_or(0));
        let length = before.get(at - 1).copied().unwrap_or(0) + after;
        let falls = values.get(at).zip(values.get(at - 1)).is_some_and(|(here, above)| here < above);
        if falls && at >= 3 && count - at >= 3 && best.is_none_or(|(most, _)| length > most) {
            best = Some((length, at));
        }
    }
    let (length, at) = best?;
    let (first, second) = values.split_at_checked(at)?;
    (2.0 * range(first) >= whole && 2.0 * range(second) >= whole).then_some((length, at))
}

/// Length of the longest series without a step back that ends at each row (patience sorting, n log n).
fn longest(values: &[f64], shallower: bool) -> Vec<usize> {
    let mut ends: Vec<f64> = Vec::new();
    values
        .iter()
        .map(|value| {
            let value = if shallower { -value } else { *value };
            let at = ends.partition_point(|end| *end <= value + 1e-9);
            match ends.get_mut(at) {
                Some(end) => *end = value,
                None => ends.push(value),
            }
            at + 1
        })
        .collect()
}

/// A sensor that writes by itself shakes a little: small steps back do not count.
fn shape_of_jittering(values: &[f64]) -> Shape {
    let (low, high) =
        values.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), v| (l.min(*v), h.max(*v)));
    let slack = 0.03 * (high - low);
    let mut held = values.first().copied().unwrap_or(0.0);
    let calmed: Vec<f64> = values
        .iter()
        .map(|value| {
            held = held.clamp(value - slack, value + slack);
            held
        })
        .collect();
    match shape_of(&calmed) {
        // The slack hides the deepest row itself.
        Shape::ThereAndBack(_) => {
            let deepest = values.iter().enumerate().max_by(|a, b| a.1.total_cmp(b.1)).map_or(0, |(at, _)| at);
            Shape::ThereAndBack(deepest + 1)
        }
        shape => shape,
    }
}

/// Cells far off their neighbours, who agree with each other: a lost point, a slip.
pub(crate) fn wild(depths: &[f64]) -> Vec<bool> {
    let mut wild = vec![false; depths.len()];
    let finite: Vec<(usize, f64)> =
        depths.iter().copied().enumerate().filter(|(_, depth)| depth.is_finite()).collect();
    let values: Vec<f64> = finite.iter().map(|(_, depth)| *depth).collect();
    let Some(step) = usual_step(&values) else { return wild };
    if values.len() < 4 {
        return wild;
    }
    for (at, (row, depth)) in finite.iter().enumerate() {
        let above = at.checked_sub(1).and_then(|at| values.get(at));
        let below = values.get(at + 1);
        let far = |other: &f64, steps: f64| (depth - other).abs() > steps * step;
        let is_wild = match (above, below) {
            (Some(above), Some(below)) => {
                far(above, 5.0) && far(below, 5.0) && (above - below).abs() <= 3.0 * step
            }
            // At an end there is one neighbour only: tenfold, or out of all measure.
            (Some(one), None) | (None, Some(one)) => {
                let tenth = depth / 10.0;
                far(one, 50.0) || (far(one, 8.0) && (tenth - one).abs() <= 3.0 * step)
            }
            (None, None) => false,
        };
        if let Some(slot) = wild.get_mut(*row).filter(|_| is_wild) {
            *slot = true;
        }
    }
    wild
}

/// Rows out of order in a series that should run one way, wild ones included; empty when too many would be.
pub(crate) fn out_of_order(depths: &[f64]) -> Vec<usize> {
    let wild = wild(depths);
    let is_wild = |row: &usize| wild.get(*row).is_some_and(|wild| *wild);
    let kept: Vec<(usize, f64)> = depths
        .iter()
        .copied()
        .enumerate()
        .filter(|(row, depth)| depth.is_finite() && !is_wild(row))
        .collect();
    let mut odd: Vec<usize> = (0..depths.len()).filter(is_wild).collect();
    let values: Vec<f64> = kept.iter().map(|(_, depth)| *depth).collect();
    let deeper = outside_longest(&values, false);
    let shallower = outside_longest(&values, true);
    let outside = if shallower.len() < deeper.len() { shallower } else { deeper };
    if outside.len() <= tolerated(values.len()) && values.len() >= 4 {
        let (low, high) =
            values.iter().fold((f64::INFINITY, f64::NEG_INFINITY), |(l, h), v| (l.min(*v), h.max(*v)));
        let shakes = |at: usize| {
            let near = |other: Option<&f64>| {
                other.zip(values.get(at)).is_some_and(|(a, b)| (a - b).abs() <= 0.03 * (high - low))
            };
            near(values.get(at + 1)) || near(at.checked_sub(1).and_then(|at| values.get(at)))
        };
        odd.extend(
            outside.into_iter().filter(|at| !shakes(*at)).filter_map(|at| kept.get(at)).map(|(row, _)| *row),
        );
    }
    sort_by(&mut odd, usize::cmp);
    odd
}

/// Rows that are not in the longest series without a step back.
fn outside_longest(values: &[f64], shallower: bool) -> Vec<usize> {
    let lengths = longest(values, shallower);
    let mut wanted = lengths.iter().copied().max().unwrap_or(0);
    let mut limit = f64::INFINITY;
    let mut outside = Vec::new();
    for (at, (length, value)) in lengths.iter().zip(values).enumerate().rev() {
        let value = if shallower { -value } else { *value };
        if *length == wanted && value <= limit + 1e-9 {
            limit = value;
            wanted -= 1;
        } else {
            outside.push(at);
        }
    }
    outside.reverse();
    outside
}

#[cfg(test)]
mod tests {
    use super::*;

    fn marks(from: f64, to: f64, step: f64) -> Vec<f64> {
        let count = ((to - from) / step).abs().round() as usize;
        (0..=count).map(|i| from + (to - from).signum() * step * i as f64).collect()
    }

    #[test]
    fn one_way() {
        assert_eq!(shape(&marks(0.0, 9.5, 0.5)), Shape::OneWay);
        assert_eq!(shape(&marks(9.5, 0.0, 0.5)), Shape::OneWay);
        assert_eq!(shape(&[3.0; 10]), Shape::OneWay);
        assert_eq!(shape(&[0.0, 0.0, 0.5, 0.5, 1.0, 1.0]), Shape::OneWay);
        assert_eq!(shape(&[]), Shape::OneWay);
        assert_eq!(shape(&[1.0]), Shape::OneWay);
    }

    #[test]
    fn the_deepest_row_belongs_to_down_and_two_are_shared() {
        assert_eq!(shape(&[0.0, 1.0, 2.0, 1.0, 0.0]), Shape::ThereAndBack(3));
        assert_eq!(shape(&[0.0, 1.0, 2.0, 2.0, 1.0, 0.0]), Shape::ThereAndBack(3));
        assert_eq!(shape(&[0.0, 1.0, 2.0, 2.0, 2.0, 1.0]), Shape::ThereAndBack(4));
        let whole = [marks(0.0, 9.5, 0.5), marks(9.5, 0.0, 0.5)].concat();
        assert_eq!(shape(&whole), Shape::ThereAndBack(20));
    }

    #[test]
    fn a_missing_depth_does_not_hide_the_turn() {
        assert_eq!(shape(&[0.0, 1.0, f64::NAN, 3.0, 2.0, f64::NAN, 0.0]), Shape::ThereAndBack(4));
    }

    #[test]
    fn a_second_series_begins_at_the_surface() {
        let twice = [marks(0.0, 5.0, 0.5), marks(0.0, 5.0, 0.5)].concat();
        assert_eq!(shape(&twice), Shape::Twice(11));
        assert_eq!(shape(&[3.0, 2.0, 1.0, 0.0, 1.0, 2.0, 3.0]), Shape::BackAndThere(4));
    }

    #[test]
    fn a_slip_is_no_turn() {
        let mut depths = marks(0.0, 9.5, 0.5);
        depths[9] = 45.0;
        assert_eq!((shape(&depths), out_of_order(&depths)), (Shape::OneWay, vec![9]));
        depths[9] = 0.45;
        assert_eq!((shape(&depths), out_of_order(&depths)), (Shape::OneWay, vec![9]));
        depths[9] = 4.5;
        depths[19] = 95.0;
        assert_eq!((shape(&depths), out_of_order(&depths)), (Shape::OneWay, vec![19]));
        depths[19] = 1e308;
        assert_eq!((shape(&depths), out_of_order(&depths)), (Shape::OneWay, vec![19]));
        let mut both = [marks(0.0, 9.5, 0.5), marks(9.5, 0.0, 0.5)].concat();
        both[30] = 45.0;
        assert_eq!(shape(&both), Shape::ThereAndBack(20));
    }

    #[test]
    fn a_shaking_sensor_still_goes_down_and_up() {
        let shaking: Vec<f64> = (0..400)
            .map(|i| 10.0 - (200.0 - f64::from(i)).abs() / 20.0 + if i % 3 == 0 { 0.08 } else { -0.08 })
            .collect();
        assert!(
            matches!(shape(&shaking), Shape::ThereAndBack(at) if (195..206).contains(&at)),
            "{:?}",
            shape(&shaking)
        );
        assert_eq!(out_of_order(&shaking[..190]), Vec::<usize>::new());
    }

    #[test]
    fn up_and_down_many_times_is_said_to_be_so() {
        assert_eq!(shape(&[0.0, 5.0, 1.0, 6.0, 0.5, 7.0, 0.0, 3.0, 8.0, 2.0]), Shape::Tangled);
    }

    #[test]
    fn the_usual_step_is_the_commonest() {
        assert_eq!(usual_step(&[0.0, 0.5, 1.0, 2.0, 2.5, 3.0]), Some(0.5));
        assert_eq!(usual_step(&[3.0, 3.0]), None);
        assert_eq!(usual_step(&[]), None);
    }
}
