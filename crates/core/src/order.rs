//! Sorting for lists that are sorted once and are often in order already.
//!
//! The standard library's sort is copied into the program anew for each type and comparison, some 6 kB each time; of this
//! one only the comparison and the last exchange are.

use std::cmp::Ordering;

/// Sorts a list; what compares equal stays in order (stable). About `n log₂ n` comparisons, but `n` to
/// `2n` where it is in order, in the opposite order, or one after the other: a cast down and up.
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
/// second; no past the end of the list.
fn places(length: usize, is_after: &mut dyn FnMut(usize, usize) -> bool) -> Vec<usize> {
    let mut order: Vec<usize> = (0..length).collect();
    let mut ends = runs(&mut order, is_after);
    if ends.len() < 2 && order.first().is_none_or(|first| *first == 0) {
        return Vec::new();
    }
    let mut merged = Vec::with_capacity(length);
    while ends.len() > 1 {
        merged.clear();
        let mut merged_ends = Vec::with_capacity(ends.len().div_ceil(2));
        for pair in ends.chunks(2) {
            let start = merged.len();
            let (end, middle) =
                (pair.last().copied().unwrap_or(start), pair.first().copied().unwrap_or(start));
            let first = order.get(start..middle).unwrap_or_default();
            let second = order.get(middle..end).unwrap_or_default();
            merge(first, second, is_after, &mut merged);
            merged_ends.push(end);
        }
        std::mem::swap(&mut order, &mut merged);
        ends = merged_ends;
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

/// Cuts a list into runs that are in order, turning those round that fall with every item (a cast read on the way up), and
/// gives where each ends.
fn runs(order: &mut [usize], is_after: &mut dyn FnMut(usize, usize) -> bool) -> Vec<usize> {
    let mut ends = Vec::new();
    let mut start = 0;
    while start < order.len() {
        let mut after = |item: usize| is_after(item - 1, item);
        let falls = after(start + 1);
        let end = (start + 1..order.len()).find(|item| after(*item) != falls).unwrap_or(order.len());
        if falls {
            order.get_mut(start..end).unwrap_or_default().reverse();
        }
        ends.push(end);
        start = end;
    }
    ends
}

/// Merges two lists that are in order; what is equal comes from the first.
fn merge(
    mut first: &[usize],
    mut second: &[usize],
    is_after: &mut dyn FnMut(usize, usize) -> bool,
    merged: &mut Vec<usize>,
) {
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
    fn a_way_down_and_up_needs_two_comparisons_an_item() {
        let mut list: Vec<u32> = (0..500).chain((0..500).rev()).collect();
        let mut comparisons = 0;
        sort_by(&mut list, |a, b| {
            comparisons += 1;
            a.cmp(b)
        });
        assert!(list.is_sorted());
        assert!(comparisons <= 2_000, "{comparisons}");
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
