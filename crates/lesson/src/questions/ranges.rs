//! Numbers against what is accepted: one range per kind of reading, the ideas' own values, near misses, digits too many.

use super::kind::{Accepted, Judged, Verdict};
use super::say::{decimals, rounded};
use super::text::{Fields, Measure, Typed, field, read, short};
use super::water::{ROUNDING_C, SLACK, Source, Water};
use layercast_core::Message;

/// What is right, by one way of reading.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Range {
    /// By which readings.
    pub source: Source,
    /// The exact value.
    pub value: f64,
    /// How far an answer may lie from it.
    pub give: f64,
}

impl Range {
    /// Holds an answer.
    pub fn holds(&self, x: f64) -> bool {
        (x - self.value).abs() <= self.give + SLACK
    }
}

/// What a wrong idea gives.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Wrong {
    /// The idea.
    pub key: &'static str,
    /// The number it leads to.
    pub value: f64,
    /// How far from it an answer still shows the idea.
    pub give: f64,
}

impl Wrong {
    /// An answer shows this idea.
    pub fn holds(&self, x: f64) -> bool {
        (x - self.value).abs() <= self.give + SLACK
    }
}

/// Whether an answer is right by some reading: the one said to be used, else the one it is nearest to.
pub(crate) fn right_by(x: f64, ranges: &[Range], said: Option<Source>) -> Option<Range> {
    let off = |r: &Range| (x - r.value).abs();
    let nearest = |of: &dyn Fn(&Range) -> bool| {
        ranges.iter().filter(|r| r.holds(x) && of(r)).min_by(|a, b| off(a).total_cmp(&off(b))).copied()
    };
    nearest(&|r| Some(r.source) == said).or_else(|| nearest(&|_| true))
}

/// How a number that is right stands beside the one that is worked out under it.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Fit {
    /// The same, as shown.
    Same,
    /// The same, rounded.
    Rounded,
    /// Another one, near enough.
    Close,
}

/// `least`: fewest decimals that count as rounding.
fn fit(x: f64, typed: &Typed, worked: f64, least: u8) -> Fit {
    let written = typed.decimals.max(least);
    let half_a_place = (0..written).fold(0.5, |p, _| p / 10.0);
    match (x - worked).abs() {
        off if off <= 0.005 + SLACK => Fit::Same,
        off if off <= half_a_place + 1e-6 => Fit::Rounded,
        _ => Fit::Close,
    }
}

/// "… is right": as it is; where the sum below gives another number, that it is rounded, or near enough.
///
/// `worked`: the number the sum gives, `in_words` says it with its unit.
pub(crate) fn right_said(
    right: Message,
    yours: Message,
    (x, typed): (f64, &Typed),
    worked: f64,
    in_words: Message,
    least: u8,
) -> Message {
    let beside = |id: &'static str| {
        Message::new(id).message("yours", yours.clone()).message("value", in_words.clone())
    };
    match fit(x, typed, worked, least) {
        Fit::Same => right,
        Fit::Rounded => beside("ask-yes-rounded"),
        Fit::Close => beside("ask-yes-close"),
    }
}

/// What a student typed, as an argument.
pub(crate) fn quoted(text: &str) -> Message {
    Message::new("ask-sum-number").text("value", short(text))
}

/// "Anything from 2.4 to 2.6 fits your readings", with the place the readings are good to.
pub(crate) fn fits_c(water: &Water, low: f64, high: f64) -> Message {
    let most = decimals(low, 1, 2).max(decimals(high, 1, 2));
    // Never "−0.0".
    let tidy = |x: f64| rounded(x, most) + 0.0;
    let said =
        |id: &'static str| Message::new(id).number("low", tidy(low), most).number("high", tidy(high), most);
    match water.digit_c() {
        Some(digit_c) if digit_c < ROUNDING_C - SLACK => {
            let places = if digit_c < 0.01 - SLACK { 3 } else { 2 };
            said("ask-fits-c-rounded")
                .number("digit", digit_c, decimals(digit_c, 1, places))
                .number("to", ROUNDING_C, 1)
        }
        digit_c => {
            let digit_c = digit_c.unwrap_or(ROUNDING_C);
            said("ask-fits-c").number("digit", digit_c, decimals(digit_c, 1, 2))
        }
    }
}

/// The least and the greatest number that is right.
pub(crate) fn span(ranges: &[Range]) -> Option<(f64, f64)> {
    let low = ranges.iter().map(|r| r.value - r.give).fold(f64::INFINITY, f64::min);
    let high = ranges.iter().map(|r| r.value + r.give).fold(f64::NEG_INFINITY, f64::max);
    (low <= high).then_some((low, high))
}

/// Every catalogued idea falls outside what is right, as it is and rounded to one decimal.
pub(crate) fn tellable(ranges: &[Range], wrongs: &[Wrong]) -> bool {
    let inside = |x: f64| ranges.iter().any(|r| r.holds(x));
    !ranges.is_empty() && !wrongs.iter().any(|w| inside(w.value) || inside((w.value * 10.0).round() / 10.0))
}

/// Ideas an answer shows; each once.
pub(crate) fn shown_by(x: f64, wrongs: &[Wrong]) -> Vec<&'static str> {
    let mut keys: Vec<&'static str> = Vec::new();
    for wrong in wrongs.iter().filter(|w| w.holds(x)) {
        if !keys.contains(&wrong.key) {
            keys.push(wrong.key);
        }
    }
    keys
}

/// How far outside still counts as one step off: as far again as may be given, twice.
const NEAR: f64 = 3.0;

/// A slipped point is looked for in numbers from here on; in smaller ones a wrong number would too often look like one.
const LEAST_SHIFTED: f64 = 0.5;
/// With the point put back the number must be this near.
const SHIFTED_GIVE: f64 = 0.06;

/// Give of a number recognised as °F, °C: rounded to a tenth, or read off by half a line.
const FAHRENHEIT_GIVE_C: f64 = 0.5;

/// What the number would be if it were meant in °F, °C. `None` where the student said otherwise: degrees typed behind the
/// number; °C chosen for a difference, where a wrong sum would too often look like one.
fn in_fahrenheit(typed: &Typed, x: f64) -> Option<f64> {
    let said_otherwise = typed.degrees_typed && !typed.unit_is_wrong;
    match typed.measure {
        _ if said_otherwise => None,
        Measure::Temperature => Some((x - 32.0) / 1.8),
        Measure::Difference | Measure::PerMetre => {
            (typed.unit_is_wrong || !typed.unit_given).then_some(x / 1.8)
        }
        Measure::Length | Measure::FahrenheitApart | Measure::FahrenheitPerFoot | Measure::Time => None,
    }
}

/// A number field: what was typed, or the slip it is.
pub(crate) fn number(fields: &Fields, id: &str, measure: Measure) -> Result<Typed, Box<Judged>> {
    let text = field(fields, id);
    let chosen = fields.get("unit").map(String::as_str);
    match read(text, chosen, measure) {
        Some(typed) if typed.to.is_none() => Ok(typed),
        Some(_) => {
            Err(Box::new(Judged::slip(Message::new("ask-slip-one-number").text("yours", short(text)))))
        }
        None => Err(Box::new(Judged::slip(Message::new("ask-slip-number").text("yours", short(text))))),
    }
}

/// A depth as it was given: a number, or a range that stands for its middle.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Given {
    /// As read; the value is the middle of a range.
    pub typed: Typed,
    /// How wide a range was given, metres; 0 for a number.
    pub width_m: f64,
}

/// A field for a depth, where a range counts too.
pub(crate) fn depth(fields: &Fields, id: &str) -> Result<Given, Box<Judged>> {
    let text = field(fields, id);
    let slip = || Box::new(Judged::slip(Message::new("ask-slip-number").text("yours", short(text))));
    let typed = read(text, None, Measure::Length).ok_or_else(slip)?;
    let to = typed.to.unwrap_or(typed.value);
    let middle = Typed { value: f64::midpoint(typed.value, to), ..typed };
    Ok(Given { typed: middle, width_m: (to - typed.value).abs() })
}

/// The readings a student says were used.
pub(crate) fn source(fields: &Fields) -> Option<Source> {
    match field(fields, "source") {
        "mean" => Some(Source::Mean),
        "down" => Some(Source::Down),
        "up" => Some(Source::Up),
        _ => None,
    }
}

/// How a number stands to what is right.
pub(crate) enum Stand {
    /// Right by these readings.
    Right(Range),
    /// A slip, said and free.
    Slip(Judged),
    /// Near it.
    Near,
    /// Shows these ideas (none, one, several).
    Off(Vec<&'static str>),
}

/// Compares a number with what is right, what is free and what shows an idea.
pub(crate) fn stand(
    text: &str,
    typed: &Typed,
    x: f64,
    ranges: &[Range],
    wrongs: &[Wrong],
    said: Option<Source>,
) -> Stand {
    let yours = || short(text);
    if let Some(range) = right_by(x, ranges, said) {
        let near = || fit(x, typed, range.value, 1) == Fit::Close;
        return match typed.unit_is_wrong {
            false => Stand::Right(range),
            true if near() => {
                Stand::Slip(Judged::slip(Message::new("ask-slip-unit-close").text("yours", yours())))
            }
            true => Stand::Slip(Judged::slip(Message::new("ask-slip-unit").text("yours", yours()))),
        };
    }
    let ideas = shown_by(x, wrongs);
    if !ideas.is_empty() {
        return Stand::Off(ideas);
    }
    if in_fahrenheit(typed, x)
        .is_some_and(|c| ranges.iter().any(|r| (c - r.value).abs() <= r.give.min(FAHRENHEIT_GIVE_C) + SLACK))
    {
        let number = Message::new("ask-sum-number").number("value", typed.value, typed.decimals);
        let said = Message::new("ask-slip-fahrenheit").text("yours", yours()).message("number", number);
        return Stand::Slip(Judged::slip(said));
    }
    // A lost or slipped decimal point: ten times, or a tenth.
    let shifted = |by: f64| {
        let same = |r: &Range| {
            r.value >= LEAST_SHIFTED && (x * by - r.value).abs() <= r.give.min(SHIFTED_GIVE) + SLACK
        };
        ranges.iter().any(same)
    };
    if shifted(0.1) || shifted(10.0) {
        return Stand::Slip(Judged::slip(Message::new("ask-slip-point").text("yours", yours())));
    }
    let near = |r: &Range| (x - r.value).abs() <= NEAR * r.give + SLACK;
    if ranges.iter().any(near) { Stand::Near } else { Stand::Off(ideas) }
}

/// "Your readings carry one decimal", where an answer has more than `most`.
pub(crate) fn digits(water: &Water, typed: &Typed, most: u8) -> Option<Message> {
    let carried = usize::from(water.reading_decimals());
    (typed.decimals > most).then(|| Message::new("ask-note-digits").count("n", carried))
}

/// "That is by your readings going down", where another was said.
pub(crate) fn other_source(range: &Range, said: Option<Source>) -> Option<Message> {
    let said = said?;
    if said == range.source {
        return None;
    }
    Some(Message::new(match range.source {
        Source::Mean => "ask-note-by-mean",
        Source::Down => "ask-note-by-down",
        Source::Up => "ask-note-by-up",
    }))
}

/// Taken as right.
pub(crate) fn accepted(range: &Range) -> Accepted {
    Accepted { value: Some(range.value), source: Some(range.source), ..Accepted::default() }
}

/// "Close."
pub(crate) fn almost(said: Message) -> Judged {
    Judged::new(Verdict::Almost, said)
}
