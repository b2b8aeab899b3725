//! What the questions that ask why share: numbers without a unit, factors, the practice pond of water without layers.

use super::kind::Judged;
use super::say::rounded;
use super::text::{Fields, field, short};
use super::water::{SLACK, Water};
use layercast_core::practice::{Kind, Probe, Water as Pond, whole_cast};
use layercast_core::{Analysis, Cast, Level, Message, Method, State, analyse};
use layercast_exchange::number::quantity;
use std::cell::OnceCell;

/// A number whose unit stands beside the field.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Bare {
    /// As typed.
    pub value: f64,
}

/// Longest unit that is passed over behind a number, in signs: "MJ/m²", "times", "days".
const LONGEST_UNIT: usize = 12;

/// A number field without a unit of its own; a word behind the number is passed over.
pub(crate) fn bare_number(fields: &Fields, id: &str) -> Result<Bare, Box<Judged>> {
    let text = field(fields, id);
    let last_digit = text.char_indices().rev().find(|(_, c)| c.is_ascii_digit() || *c == '.' || *c == ',');
    let end = last_digit.map_or(0, |(at, c)| at + c.len_utf8());
    // The digits of "MJ/m2" are none of the number's.
    let is_number_sign =
        |c: char| c.is_ascii_digit() || matches!(c, '.' | ',' | '-' | '\u{2212}' | ' ' | '~' | '+');
    let first_other = text.find(|c: char| !is_number_sign(c)).unwrap_or(text.len());
    let whole = quantity(text);
    if whole.is_some_and(|q| q.to.is_some()) {
        return Err(Box::new(Judged::slip(Message::new("ask-slip-one-number").text("yours", short(text)))));
    }
    let cut = |end: usize| {
        let (number, unit) = text.split_at_checked(end)?;
        (unit.chars().count() <= LONGEST_UNIT).then(|| quantity(number.trim()))?.filter(|q| q.to.is_none())
    };
    match whole.or_else(|| cut(first_other)).or_else(|| cut(end)) {
        Some(q) if q.unit.is_none() => Ok(Bare { value: q.value }),
        _ => Err(Box::new(Judged::slip(Message::new("ask-slip-number").text("yours", short(text))))),
    }
}

/// Longest quotation of own words, in signs.
const QUOTED: usize = 300;

/// "Kept: …", with the words as they were written.
pub(crate) fn quoted_words(fields: &Fields, id: &str) -> Message {
    let text = field(fields, id);
    let mut short: String = text.chars().take(QUOTED).collect();
    if short.len() < text.len() {
        short.push('…');
    }
    Message::new("ask-why-kept").text("yours", short)
}

/// Two numbers above zero are no more than a factor apart.
pub(crate) fn within(value: f64, right: f64, factor: f64) -> bool {
    value > 0.0 && right > 0.0 && value <= right * factor + SLACK && right <= value * factor + SLACK
}

/// A rough number as it is shown: whole from 20 on, else one decimal.
pub(crate) fn figures(value: f64) -> (f64, u8) {
    let decimals = u8::from(value.abs() < 20.0);
    (rounded(value, decimals), decimals)
}

/// What takes long and hangs on the cast alone: worked out once for all that looks at it. It belongs to one cast; of
/// another one a new memo is made.
#[derive(Clone, Debug, Default)]
pub struct Memo {
    practice: OnceCell<Box<Practice>>,
    /// Kind 21.
    pub(super) night: OnceCell<Option<super::kinds::windy_night::Night>>,
    /// Kind 20.
    pub(super) month: OnceCell<Option<super::kinds::next_month::Month>>,
    /// Kind 26.
    pub(super) widths: OnceCell<Option<super::kinds::one_change::Widths>>,
    /// Kinds 23 and 24.
    pub(super) others: super::other::Others,
}

/// The water a question is about: the own, or a pond of practice where the own has no layers.
#[derive(Clone, Copy)]
pub(crate) enum Basis<'a> {
    /// The own.
    Own(&'a Analysis, &'a Cast),
    /// Practice.
    Practice(&'a Practice),
}

/// A pond of practice, read like a class reads one.
#[derive(Clone, Debug)]
pub(crate) struct Practice {
    cast: Cast,
    analysis: Analysis,
}

/// The pond that is practised on: the same for all, so that answers can be compared.
const POND: u64 = 4;
/// Marks of its cast, metres.
const STEP_M: f64 = 0.5;
/// Wait at each mark, seconds.
const WAIT_S: f64 = 90.0;

impl<'a> Basis<'a> {
    /// Of a water.
    pub fn of(water: &Water<'a>) -> Self {
        let context = water.context;
        match water.state() {
            State::Mixed => Self::Practice(context.memo.practice.get_or_init(|| Box::new(Practice::new()))),
            _ => Self::Own(context.analysis, context.cast),
        }
    }

    /// The profile.
    pub fn levels(self) -> &'a [Level] {
        &self.analysis().profile
    }

    /// Its analysis.
    pub fn analysis(self) -> &'a Analysis {
        match self {
            Self::Own(analysis, _) => analysis,
            Self::Practice(pond) => &pond.analysis,
        }
    }

    /// Its cast.
    pub fn cast(self) -> &'a Cast {
        match self {
            Self::Own(_, cast) => cast,
            Self::Practice(pond) => &pond.cast,
        }
    }

    /// Depth of the bed where it is known, metres.
    pub fn bed_m(self) -> Option<f64> {
        self.cast().bed_m
    }

    /// It is practice, and to be called so.
    pub fn is_practice(self) -> bool {
        matches!(self, Self::Practice(_))
    }

    /// "This is a pond of practice, not your water."
    pub fn mark(self) -> Option<Message> {
        self.is_practice().then(|| Message::new("ask-why-practice"))
    }
}

impl Practice {
    fn new() -> Self {
        let pond = Pond::seeded(Kind::Layered, POND);
        let marks_m: Vec<f64> =
            (0..).map(|i| f64::from(i) * STEP_M).take_while(|z| *z < pond.bed_m()).collect();
        let cast = whole_cast(&pond, &Probe::default(), &marks_m, WAIT_S, POND);
        let analysis = analyse(&cast, &Method::default());
        Self { cast, analysis }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn read(text: &str) -> Option<f64> {
        let fields = Fields::from([("x".to_owned(), text.to_owned())]);
        bare_number(&fields, "x").ok().map(|b| b.value)
    }

    #[test]
    fn numbers_with_their_unit_or_without() {
        for (text, want) in [
            ("12", Some(12.0)),
            ("12,5", Some(12.5)),
            ("~ 200 MJ", Some(200.0)),
            ("200 MJ/m2", Some(200.0)),
            ("24 days", Some(24.0)),
            ("4x", Some(4.0)),
            ("4.5 veces", Some(4.5)),
            ("many", None),
            ("", None),
            ("12 m", None),
            ("3–4", None),
            ("12 and then some more words", None),
        ] {
            assert_eq!(read(text), want, "{text}");
        }
    }

    #[test]
    fn factors_and_figures() {
        assert!(within(15.0, 10.0, 1.5) && within(10.0, 15.0, 1.5) && !within(15.1, 10.0, 1.5));
        assert!(!within(0.0, 1.0, 1.5) && !within(-1.0, 1.0, 1.5) && !within(f64::NAN, 1.0, 1.5));
        assert_eq!((figures(208.6), figures(19.94), figures(4.26)), ((209.0, 0), (19.9, 1), (4.3, 1)));
    }

    #[test]
    fn the_pond_of_practice_has_layers() {
        let pond = Practice::new();
        assert_eq!(pond.analysis.state, State::Stratified);
        assert!(pond.analysis.thermocline.is_some_and(|t| t.tellable));
    }
}
