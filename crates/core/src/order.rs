//! Sorting for lists that are sorted once and are often in order already.
//!
//! The standard library's sort is copied into the program anew for each type and comparison, some 6 kB each time; of this
//! one only the comparison and the last exchange are.

use std::cmp::Ordering;

/// Sorts a list; what compares equal stays in order (stable). About `n log₂ n` comparisons, `n` where it is in order.
///
/// ```
/// let mut depths_m = [1.5, 0.0, 1.0];
/// layercast_core::order::sort_by(&mut depths_m, f64::total_cmp);
/// assert_eq!(depths_m, [0.0, 1.0, 1.5]);
/// ```
pub fn sort_by<T>(list: &mut [T], mut compare: impl FnMut(&T, &T) -> Ordering) {
    let places = places(list.len(), &mut |a, b| match (list.get(a), list.get(b)) {
        (Some(a), Some(b)) => compare(a, b).is_gt(),
        _ => false,
    });
    exchange(list, places);
}

/// Sorts a list of numbers, as [`f64::total_cmp`] compares them.
pub fn sort_numbers(list: &mut [f64]) {
    sort_by(list, f64::total_cmp);
}

/// Where each item goes, by merging runs that are in order; empty when all stay. `is_after`: the first goes behind the
/// second.
fn places(length: usize, is_after: &mut dyn FnMut(usize, usize) -> bool) -> Vec<usize> {
    if (1..length).all(|item| !is_after(item - 1, item)) {
        return Vec::new();
    }
    let mut order: Vec<usize> = (0..length).collect();
    let mut merged = Vec::with_capacity(length);
    let mut run = 1;
    while run < length {
        merged.clear();
        for pair in order.chunks(2 * run) {
            merge(pair, run, is_after, &mut merged);
        }
        std::mem::swap(&mut order, &mut merged);
        run *= 2;
    }
    let mut places = merged;
    places.clear();
    places.resize(length, 0);
    for (place, item) in order.into_iter().enumerate() {
        if let Some(of_item) = places.get_mut(item) {
            *of_item = place;
        }
    }
    places
}

/// Merges the first `run` items, which are in order, with the others, which are too.
fn merge(
    pair: &[usize],
    run: usize,
    is_after: &mut dyn FnMut(usize, usize) -> bool,
    merged: &mut Vec<usize>,
) {
    let (mut first, mut second) = pair.split_at(run.min(pair.len()));
    while let (Some((a, after_a)), Some((b, after_b))) = (first.split_first(), second.split_first()) {
        if is_after(*a, *b) {
            merged.push(*b);
            second = after_b;
        } else {
            merged.push(*a);
            first = after_a;
        }
    }
    merged.extend_from_slice(first);
    merged.extend_from_slice(second);
}

/// Puts each item into its place.
fn exchange<T>(list: &mut [T], mut places: Vec<usize>) {
    for item in 0..places.len() {
        while let Some(place) = places.get(item).copied().filter(|place| *place != item) {
            list.swap(item, place);
            places.swap(item, place);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use proptest::prelude::*;

    proptest! {
        /// The standard library's stable sort is the standard.
        #[test]
        fn sorts_as_the_standard_library_does(list: Vec<(u8, u16)>) {
            let mut ours = list.clone();
            let mut theirs = list;
            sort_by(&mut ours, |a, b| a.0.cmp(&b.0));
            theirs.sort_by_key(|a| a.0);
            prop_assert_eq!(ours, theirs);
        }
    }

    #[test]
    fn short_lists_and_those_in_order_stay() {
        for list in [&[][..], &[1.0], &[1.0, 1.0, 2.0], &[-0.0, 0.0, f64::INFINITY, f64::NAN]] {
            let mut sorted = list.to_vec();
            sort_numbers(&mut sorted);
            assert_eq!(
                sorted.iter().map(|x| x.to_bits()).collect::<Vec<_>>(),
                list.iter().map(|x| x.to_bits()).collect::<Vec<_>>()
            );
        }
    }
}
