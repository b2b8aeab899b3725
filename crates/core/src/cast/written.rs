//! What a person may have meant to write: the decimal point put back, or two digits put right.

use crate::water::units::{celsius_from_fahrenheit, fahrenheit_from_celsius};

/// Beyond its neighbours a value may lie by this much and still fit them, °C.
const ROOM_C: f64 = 0.5;
/// The same at the end of a cast, where there is one neighbour only, °C.
const ROOM_AT_THE_END_C: f64 = 1.0;

/// Temperatures of the next readings above and below on the same leg, °C.
pub(crate) type Around = (Option<f64>, Option<f64>);

/// `temp_c` with its decimal point moved, if that fits the neighbours: 177 → 17.7, 1.77 → 17.7.
///
/// * `digit_c`: last decimal place written \[°C\]; tells °C from °F, where the point belongs to the Fahrenheit number
pub(crate) fn point_moved_c(temp_c: f64, digit_c: f64, around: Around) -> Option<f64> {
    let scale = Scale::of(digit_c);
    let written = scale.written(temp_c);
    best([written / 10.0, written / 100.0, written * 10.0], scale, around)
}

/// `temp_c` with two neighbouring digits exchanged, if that fits the neighbours: 71.2 → 17.2.
pub(crate) fn digits_swapped_c(temp_c: f64, digit_c: f64, around: Around) -> Option<f64> {
    let scale = Scale::of(digit_c);
    let whole = (scale.written(temp_c) * scale.per_unit).round();
    if !(1.0..1e9).contains(&whole) || (whole / scale.per_unit - scale.written(temp_c)).abs() > 1e-6 {
        return None;
    }
    let whole = whole as u64;
    let swapped = std::iter::successors(Some(1_u64), |place| Some(place * 10))
        .take_while(|place| place * 10 <= whole)
        .map(|place| {
            let (right, left) = (whole / place % 10, whole / place / 10 % 10);
            whole - right * place - left * place * 10 + left * place + right * place * 10
        })
        .filter(|other| *other != whole)
        .map(|other| other as f64 / scale.per_unit);
    best(swapped, scale, around)
}

/// The candidate closest to the middle of the neighbours, of those that fit.
fn best(written: impl IntoIterator<Item = f64>, scale: Scale, around: Around) -> Option<f64> {
    let (low, high, room) = match around {
        (Some(a), Some(b)) => (a.min(b), a.max(b), ROOM_C),
        (Some(one), None) | (None, Some(one)) => (one, one, ROOM_AT_THE_END_C),
        (None, None) => return None,
    };
    let middle = (low + high) / 2.0;
    (written.into_iter().map(|w| scale.celsius(w)))
        .filter(|t| (low - room..=high + room).contains(t))
        .min_by(|a, b| (a - middle).abs().total_cmp(&(b - middle).abs()))
}

/// The scale the numbers were written in.
#[derive(Clone, Copy)]
struct Scale {
    fahrenheit: bool,
    /// Written steps in one degree of that scale: 10 for one decimal.
    per_unit: f64,
}

impl Scale {
    fn of(digit_c: f64) -> Self {
        for per_unit in [1.0, 10.0, 100.0, 1000.0, 10_000.0] {
            if (digit_c * per_unit - 1.0).abs() < 1e-6 {
                return Self { fahrenheit: false, per_unit };
            }
            if (digit_c * per_unit - 5.0 / 9.0).abs() < 1e-6 {
                return Self { fahrenheit: true, per_unit };
            }
        }
        Self { fahrenheit: false, per_unit: 10.0 }
    }

    fn written(self, temp_c: f64) -> f64 {
        if !self.fahrenheit {
            return temp_c;
        }
        let temp_f = fahrenheit_from_celsius(temp_c);
        let whole = (temp_f * self.per_unit).round() / self.per_unit;
        if (whole - temp_f).abs() < 1e-6 { whole } else { temp_f }
    }

    fn celsius(self, written: f64) -> f64 {
        if self.fahrenheit { celsius_from_fahrenheit(written) } else { written }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    const BETWEEN: Around = (Some(20.2), Some(15.4));

    #[test]
    fn a_lost_point_is_put_back() {
        assert_eq!(point_moved_c(177.0, 0.1, BETWEEN), Some(17.7));
        assert_eq!(point_moved_c(1770.0, 0.1, BETWEEN), Some(17.7));
        assert_eq!(point_moved_c(1.77, 0.1, BETWEEN), Some(17.7));
    }

    #[test]
    fn what_does_not_fit_is_not_suggested() {
        assert_eq!(point_moved_c(400.0, 0.1, BETWEEN), None);
        assert_eq!(point_moved_c(177.0, 0.1, (None, None)), None);
        assert_eq!(digits_swapped_c(28.0, 0.1, BETWEEN), None);
    }

    #[test]
    fn swapped_digits_are_put_right() {
        assert_eq!(digits_swapped_c(71.2, 0.1, BETWEEN), Some(17.2));
        assert_eq!(digits_swapped_c(12.9, 0.1, (Some(19.4), Some(18.9))), Some(19.2));
        // Two swaps fit: 21.9 and 19.2; the one nearer to the middle is meant.
        assert_eq!(digits_swapped_c(12.9, 0.1, (Some(17.0), Some(25.0))), Some(21.9));
        assert_eq!(digits_swapped_c(12.9, 0.1, (Some(18.2), Some(30.0))), Some(21.9));
        assert_eq!(digits_swapped_c(12.9, 0.1, (Some(13.0), Some(22.0))), Some(19.2));
        assert_eq!(digits_swapped_c(17.7, 0.0, (Some(71.7), None)), Some(71.7));
    }

    #[test]
    fn fahrenheit_is_mended_as_it_was_written() {
        let digit_c = 5.0 / 90.0;
        let got_c = point_moved_c(celsius_from_fahrenheit(636.0), digit_c, (Some(17.0), Some(18.0)));
        assert_eq!(got_c, Some(celsius_from_fahrenheit(63.6)));
        let got_c = digits_swapped_c(celsius_from_fahrenheit(36.6), digit_c, (Some(17.0), Some(18.0)));
        assert_eq!(got_c, Some(celsius_from_fahrenheit(63.6)));
    }

    #[test]
    fn wild_numbers_are_let_be() {
        for temp_c in [f64::NAN, f64::INFINITY, -1e308, 1e308, 0.0, -3.0] {
            assert_eq!(digits_swapped_c(temp_c, 0.1, BETWEEN), None);
            let _ = point_moved_c(temp_c, f64::NAN, BETWEEN);
        }
    }
}
