//! The largest of a row of values, neighbours that tie taken together.

/// Where the largest value stands: places `first..=last`.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Steepest {
    /// First place of the run of equal neighbours.
    pub first: usize,
    /// Last place of that run.
    pub last: usize,
    /// The same maximum stands in a second, separate place.
    pub ambiguous: bool,
}

/// The largest of `values` among the places that are `free`.
///
/// Adjacent values equal to it within 1e-9 (relative, absolute below 1) are one run; of equal maxima apart the first
/// run is taken and called ambiguous. `None` when no place is free. Values that are not numbers are passed over.
///
/// With readings to 0.1 °C at half-metre steps ties are common. A convention of ours.
///
/// ```
/// use layercast_core::layers::steepest::steepest;
/// let got = steepest(&[0.2, 4.0, 4.0, 1.0, 4.0], |_| true).unwrap();
/// assert_eq!((got.first, got.last, got.ambiguous), (1, 2, true));
/// ```
pub fn steepest(values: &[f64], free: impl Fn(usize) -> bool) -> Option<Steepest> {
    let candidates = || values.iter().copied().enumerate().filter(|(i, v)| v.is_finite() && free(*i));
    let largest = candidates().map(|(_, v)| v).reduce(f64::max)?;
    let tie = 1e-9 * largest.abs().max(1.0);
    let mut equal = candidates().filter(|(_, v)| *v >= largest - tie).map(|(i, _)| i);
    let first = equal.next()?;
    let mut last = first;
    for i in equal {
        if i != last + 1 {
            return Some(Steepest { first, last, ambiguous: true });
        }
        last = i;
    }
    Some(Steepest { first, last, ambiguous: false })
}

#[cfg(test)]
mod tests {
    use super::*;

    #[track_caller]
    fn check(values: &[f64], free: &[usize], want: Option<(usize, usize, bool)>) {
        let got = steepest(values, |i| free.contains(&i)).map(|s| (s.first, s.last, s.ambiguous));
        assert_eq!(got, want);
    }

    #[test]
    fn ties_side_by_side_are_one_and_apart_are_said() {
        check(&[1.0, 3.0, 3.0, 2.0], &[0, 1, 2, 3], Some((1, 2, false)));
        check(&[3.0, 1.0, 3.0], &[0, 1, 2], Some((0, 0, true)));
        check(&[3.0, 3.0 + 1e-12], &[0, 1], Some((0, 1, false)));
    }

    #[test]
    fn only_free_places_count() {
        check(&[9.0, 3.0, 9.0], &[1], Some((1, 1, false)));
        check(&[9.0], &[], None);
        check(&[], &[], None);
        check(&[f64::NAN, 2.0], &[0, 1], Some((1, 1, false)));
    }
}
