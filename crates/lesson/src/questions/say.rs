//! Small pieces of what questions say: numbers with fitting decimals, lines of arithmetic, words that turn round where
//! the water warms downward.

use crate::view::{Said, SumLine};
use layercast_core::Message;

/// Fewest decimals between `least` and `most` that write the value in full.
pub(crate) fn decimals(value: f64, least: u8, most: u8) -> u8 {
    (least..=most)
        .find(|d| {
            let scaled = value * libm_pow10(*d);
            (scaled - scaled.round()).abs() < 1e-6
        })
        .unwrap_or(most)
}

fn libm_pow10(d: u8) -> f64 {
    (0..d).fold(1.0, |p, _| p * 10.0)
}

/// A value rounded as it is shown, so that a sum adds up for whoever does it again. Never "−0.0".
pub(crate) fn rounded(value: f64, decimals: u8) -> f64 {
    let p = libm_pow10(decimals);
    (value * p).round() / p + 0.0
}

/// Decimals of a small spread that is multiplied on: a third place below 0.1, where two would not add up.
pub(crate) fn spread_decimals(value: f64) -> u8 {
    if value < 0.1 { decimals(rounded(value, 3), 2, 3) } else { 2 }
}

/// Messages with measured numbers.
pub(crate) trait Numbers: Sized {
    /// A temperature or difference, one or two decimals.
    fn c(self, name: &'static str, value: f64) -> Self;
    /// A depth in a question: "3", "3.5", "1.25".
    fn mark(self, name: &'static str, depth_m: f64) -> Self;
    /// A depth in a sentence: "3.0", "3.5", "1.25".
    fn m(self, name: &'static str, depth_m: f64) -> Self;
}

impl Numbers for Message {
    fn c(self, name: &'static str, value: f64) -> Self {
        self.number(name, rounded(value, 2), decimals(value, 1, 2))
    }

    fn mark(self, name: &'static str, depth_m: f64) -> Self {
        self.number(name, rounded(depth_m, 2), decimals(depth_m, 0, 2))
    }

    fn m(self, name: &'static str, depth_m: f64) -> Self {
        self.number(name, rounded(depth_m, 2), decimals(depth_m, 1, 2))
    }
}

/// Two depths with the same decimals.
pub(crate) fn stretch(
    message: Message,
    a: &'static str,
    b: &'static str,
    stretch_m: (f64, f64),
    least: u8,
) -> Message {
    let d = decimals(stretch_m.0, least, 2).max(decimals(stretch_m.1, least, 2));
    message.number(a, rounded(stretch_m.0, d), d).number(b, rounded(stretch_m.1, d), d)
}

/// "from 3.5 to 4.0 m", as a gloss.
pub(crate) fn from_to(stretch_m: (f64, f64)) -> Message {
    stretch(Message::new("ask-sum-from-to"), "from", "to", stretch_m, 1)
}

/// A line of arithmetic.
pub(crate) fn line(left: Message, right: Message, gloss: Message) -> SumLine {
    SumLine { left: left.into(), right: right.into(), gloss: gloss.into(), result: false }
}

/// The last line, ruled off.
pub(crate) fn result(left: Message, right: Message, gloss: Message) -> SumLine {
    SumLine { result: true, ..line(left, right, gloss) }
}

/// Most decimals of a term of a sum.
const MOST_PLACES: u8 = 4;

/// The decimals of the terms of a sum: the fewest from `least` on with which it comes to what stands behind it, given with
/// its own decimals.
pub(crate) fn fitting(least: u8, (shown, places): (f64, u8), comes_to: &dyn Fn(u8) -> f64) -> u8 {
    let half = 0.5 / libm_pow10(places) + 1e-9;
    (least..=MOST_PLACES).find(|d| (comes_to(*d) - shown).abs() <= half).unwrap_or(least)
}

/// "20.05 − 17.55 =", for a result of two decimals, or of `least` where that is more.
pub(crate) fn minus(a: f64, b: f64, least: u8) -> Message {
    let places = least.max(2);
    let plain = decimals(a, least, places).max(decimals(b, least, places));
    let d = fitting(plain, (rounded(a - b, places), places), &|d| rounded(a, d) - rounded(b, d));
    Message::new("ask-sum-minus").number("a", rounded(a, d), d).number("b", rounded(b, d), d)
}

/// "2.5 ÷ 0.5 =", for a result of two decimals.
pub(crate) fn divided(a: f64, b: f64) -> Message {
    let written = |x: f64, most: u8| {
        let d = decimals(x, 1, most);
        (rounded(x, d), d)
    };
    let most = fitting(2, (rounded(a / b, 2), 2), &|d| written(a, d).0 / written(b, d).0);
    let ((a, of_a), (b, of_b)) = (written(a, most), written(b, most));
    Message::new("ask-sum-divided").number("a", a, of_a).number("b", b, of_b)
}

/// "2.5 °C"
pub(crate) fn in_c(value: f64) -> Message {
    Message::new("ask-sum-c").c("value", value)
}

/// "0.5 m"
pub(crate) fn in_m(value: f64) -> Message {
    Message::new("ask-sum-m").m("value", value)
}

/// "5.0"
pub(crate) fn bare(value: f64) -> Message {
    Message::new("ask-sum-number").c("value", value)
}

/// "loses" or "gains".
pub(crate) fn loses(warmer: bool) -> Message {
    Message::new(if warmer { "ask-word-gains" } else { "ask-word-loses" })
}

/// "lose" or "gain".
pub(crate) fn lose(warmer: bool) -> Message {
    Message::new(if warmer { "ask-word-gain" } else { "ask-word-lose" })
}

/// Head of the strip: "°C lost per metre".
pub(crate) fn strip(warmer: bool) -> Message {
    Message::new(if warmer { "ask-word-strip-gained" } else { "ask-word-strip-lost" })
}

/// "lost" or "gained".
pub(crate) fn lost(warmer: bool) -> Message {
    Message::new(if warmer { "ask-word-gained" } else { "ask-word-lost" })
}

/// "drop" or "rise".
pub(crate) fn drop(warmer: bool) -> Message {
    Message::new(if warmer { "ask-word-rise" } else { "ask-word-drop" })
}

/// "colder" or "warmer".
pub(crate) fn colder(warmer: bool) -> Message {
    Message::new(if warmer { "ask-word-warmer" } else { "ask-word-colder" })
}

/// Ready for the page.
pub(crate) fn said(message: Message) -> Said {
    message.into()
}
