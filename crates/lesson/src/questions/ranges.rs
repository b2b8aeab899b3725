//! Numbers against what is accepted: one range per kind of reading, the ideas' own values, near misses, digits too many.

use super::kind::{Accepted, Judged, Verdict};
use super::text::{Fields, Measure, Typed, field, read, short};
use super::water::{SLACK, Source};
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

/// Whether an answer is right by some reading; the one said to be used first.
pub(crate) fn right_by(x: f64, ranges: &[Range], said: Option<Source>) -> Option<Range> {
    let own = ranges.iter().find(|r| Some(r.source) == said && r.holds(x));
    own.or_else(|| ranges.iter().find(|r| r.holds(x))).copied()
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
    for wrong in wrongs.iter().filter(|w| (x - w.value).abs() <= w.give + SLACK) {
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
        return if typed.unit_is_wrong {
            Stand::Slip(Judged::slip(Message::new("ask-slip-unit").text("yours", yours())))
        } else {
            Stand::Right(range)
        };
    }
    let ideas = shown_by(x, wrongs);
    if !ideas.is_empty() {
        return Stand::Off(ideas);
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

/// "Your readings carry one decimal", where an answer has more.
pub(crate) fn digits(typed: &Typed, most: u8) -> Option<Message> {
    (typed.decimals > most).then(|| Message::new("ask-note-digits"))
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
