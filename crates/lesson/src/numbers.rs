//! How many decimals a number is shown with. Decided here for every screen, so that sentences, tables and verdicts agree.

use crate::view::Num;
use layercast_core::Message;

/// Two numbers are one when they differ by less than this.
const SAME: f64 = 1e-6;

/// The value as it is shown with so many decimals.
pub fn rounded(value: f64, decimals: u8) -> f64 {
    let scale = [1.0, 10.0, 100.0, 1000.0].get(usize::from(decimals)).copied().unwrap_or(1000.0);
    let rounded = (value * scale).round() / scale;
    match rounded {
        r if !r.is_finite() => value,
        0.0 => 0.0,
        r => r,
    }
}

/// A whole number of tenths.
fn in_tenths(value: f64) -> bool {
    (value * 10.0 - (value * 10.0).round()).abs() < SAME
}

/// Decimals of a depth as the cable or a person has it: 4.0, 1.25.
pub fn mark_decimals(depth_m: f64) -> u8 {
    if in_tenths(depth_m) { 1 } else { 2 }
}

/// Decimals of a temperature or a difference of temperatures: 17.7, 20.05.
pub fn temp_decimals(temp_c: f64) -> u8 {
    if in_tenths(temp_c) { 1 } else { 2 }
}

/// Decimals of readings whose last written place is `digit_c` °C (0 if unknown).
pub fn reading_decimals(digit_c: f64) -> u8 {
    match digit_c {
        d if d <= 0.0 || d >= 0.02 => 1,
        d if d >= 0.002 => 2,
        _ => 3,
    }
}

/// A depth as the cable or a person has it.
pub fn mark(depth_m: f64) -> Num {
    Num { value: depth_m, decimals: mark_decimals(depth_m) }
}

/// The middle of a step: always two decimals.
pub fn middle(depth_m: f64) -> Num {
    Num { value: rounded(depth_m, 2), decimals: 2 }
}

/// The depth the mixed layer is measured from: the method's own, or the first reading where that lies deeper (methods 6).
pub fn reference_m(analysis: &layercast_core::Analysis) -> f64 {
    let first_m = analysis.profile.first().map_or(0.0, |level| level.depth_m);
    analysis.method.reference_m.max(first_m)
}

/// A computed depth without a range of its own: one decimal.
pub fn computed(depth_m: f64) -> Num {
    Num { value: rounded(depth_m, 1), decimals: 1 }
}

/// A whole metre.
pub fn is_whole(depth_m: f64) -> bool {
    (depth_m - depth_m.round()).abs() < SAME
}

/// A range of depths as it is shown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Range {
    /// Shallower end as shown, metres.
    pub from: Num,
    /// Deeper end as shown, metres.
    pub to: Num,
}

impl Range {
    /// A range between marks of the cable: each end as the cable has it, 0.01 m when narrower than 0.15 m.
    pub fn of_marks(from_m: f64, to_m: f64) -> Self {
        Self::shown(from_m, to_m, mark_decimals(from_m), mark_decimals(to_m))
    }

    /// A range of computed depths: 0.1 m, 0.01 m when narrower than 0.15 m.
    pub fn of_computed(from_m: f64, to_m: f64) -> Self {
        Self::shown(from_m, to_m, 1, 1)
    }

    fn shown(from_m: f64, to_m: f64, from_decimals: u8, to_decimals: u8) -> Self {
        let narrow = (to_m - from_m).abs() < 0.15 - SAME;
        let num = |value: f64, decimals: u8| {
            let decimals = if narrow { 2 } else { decimals };
            Num { value: rounded(value, decimals), decimals }
        };
        Self { from: num(from_m, from_decimals), to: num(to_m, to_decimals) }
    }

    /// A computed depth with the decimals of its range: never finer than what is known of it.
    pub fn value(&self, depth_m: f64) -> Num {
        let decimals = self.from.decimals.max(self.to.decimals);
        Num { value: rounded(depth_m, decimals), decimals }
    }

    /// "3.5 to 4.0 m".
    pub fn said(&self) -> Message {
        Message::new("profile-range").number("from", self.from.value, self.from.decimals).number(
            "to",
            self.to.value,
            self.to.decimals,
        )
    }

    /// How far a depth lies outside, by the numbers shown: negative above the range, positive below it, 0 inside.
    pub fn outside_m(&self, depth_m: f64) -> f64 {
        let depth_m = rounded(depth_m, mark_decimals(depth_m));
        let decimals = self.from.decimals.max(self.to.decimals).max(mark_decimals(depth_m));
        if depth_m < self.from.value - SAME {
            rounded(depth_m - self.from.value, decimals)
        } else if depth_m > self.to.value + SAME {
            rounded(depth_m - self.to.value, decimals)
        } else {
            0.0
        }
    }
}

/// Adds a number that carries its decimals to a message.
pub trait WithNum {
    /// Adds the number.
    #[must_use]
    fn num(self, name: &'static str, num: Num) -> Self;
    /// Adds a temperature or a difference of temperatures with one decimal, or two where it has them.
    #[must_use]
    fn temp(self, name: &'static str, temp_c: f64) -> Self;
    /// Adds a limit of °C per metre: "1", "0.5".
    #[must_use]
    fn steep(self, name: &'static str, c_per_m: f64) -> Self;
    /// Adds a depth as the cable or a person has it.
    #[must_use]
    fn depth(self, name: &'static str, depth_m: f64) -> Self;
}

impl WithNum for Message {
    fn num(self, name: &'static str, num: Num) -> Self {
        self.number(name, num.value, num.decimals)
    }

    fn temp(self, name: &'static str, temp_c: f64) -> Self {
        let decimals = temp_decimals(temp_c);
        self.number(name, rounded(temp_c, decimals), decimals)
    }

    fn steep(self, name: &'static str, c_per_m: f64) -> Self {
        let decimals = if is_whole(c_per_m) { 0 } else { temp_decimals(c_per_m) };
        self.number(name, rounded(c_per_m, decimals), decimals)
    }

    fn depth(self, name: &'static str, depth_m: f64) -> Self {
        let decimals = mark_decimals(depth_m);
        self.number(name, rounded(depth_m, decimals), decimals)
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn depths_have_the_decimals_of_the_cable() {
        assert_eq!(mark_decimals(4.0), 1);
        assert_eq!(mark_decimals(0.1 + 0.2), 1);
        assert_eq!(mark_decimals(1.25), 2);
        assert_eq!(mark_decimals(3.048), 2);
        assert_eq!(middle(1.0), Num { value: 1.0, decimals: 2 });
        assert_eq!(computed(2.684), Num { value: 2.7, decimals: 1 });
    }

    #[test]
    fn narrow_ranges_have_two_decimals() {
        let show = |range: Range| (range.from, range.to);
        let num = |value, decimals| Num { value, decimals };
        assert_eq!(show(Range::of_computed(2.592, 2.776)), (num(2.6, 1), num(2.8, 1)));
        assert_eq!(Range::of_computed(2.592, 2.776).value(2.684), num(2.7, 1));
        assert_eq!(Range::of_computed(1.69, 1.81).value(1.7512), num(1.75, 2));
        assert_eq!(show(Range::of_computed(0.854762, 0.954762)), (num(0.85, 2), num(0.95, 2)));
        assert_eq!(show(Range::of_marks(1.0, 1.25)), (num(1.0, 1), num(1.25, 2)));
        assert_eq!(show(Range::of_marks(1.0, 1.1)), (num(1.0, 2), num(1.1, 2)));
    }

    #[test]
    fn the_distance_is_the_one_between_the_numbers_shown() {
        let range = Range::of_computed(2.592, 2.776);
        assert_eq!(range.outside_m(2.5), -0.1);
        assert_eq!(range.outside_m(2.8), 0.0);
        assert_eq!(range.outside_m(3.75), 0.95);
        assert_eq!(Range::of_marks(6.0, 7.0).outside_m(6.0), 0.0);
    }

    #[test]
    fn readings_show_what_was_written() {
        assert_eq!(reading_decimals(0.1), 1);
        assert_eq!(reading_decimals(5.0 / 90.0), 1);
        assert_eq!(reading_decimals(0.01), 2);
        assert_eq!(reading_decimals(0.0), 1);
        assert_eq!(reading_decimals(1.0), 1);
    }

    #[test]
    fn no_minus_stands_before_zero() {
        assert!(rounded(-0.01, 1).is_sign_positive());
    }
}
