//! What the rules found, told by the state of the water. Water without a thermocline gets its own full answer.

mod layered;
mod mixed_layer;
mod other;

use super::Sight;
use super::doubts;
use crate::view::{FoundItem, FoundView, Num, Said, VerdictView};
use layercast_core::{Message, State};
pub use mixed_layer::{is_warmer, is_warmer_by, mixed_layer as mixed_layer_item};

/// What the rules found; `None` with fewer than two depths.
pub fn view(sight: &Sight) -> Option<FoundView> {
    let analysis = sight.context.analysis;
    if analysis.profile.len() < 2 {
        return None;
    }
    Some(match analysis.state {
        State::TooFew => other::too_few(sight),
        State::Unstable => other::unstable(sight),
        State::Inverse => other::inverse(sight),
        State::Mixed => other::mixed(sight),
        State::Stratified | State::Weak => match (&analysis.thermocline, &analysis.warm_layer_today) {
            (None, Some(warm)) => other::near_surface_only(sight, warm),
            _ => layered::layered(sight),
        },
    })
}

/// A result with its title and sentences.
fn found(title: Message, lead: Vec<Message>, items: Vec<FoundItem>) -> FoundView {
    FoundView { title: title.into(), lead: said(lead), items, doubts: Vec::new() }
}

fn said(messages: Vec<Message>) -> Vec<Said> {
    messages.into_iter().map(Into::into).collect()
}

/// One layer, with its number.
fn item(name: &'static str, value: Num, verdict: Option<VerdictView>, notes: Vec<Message>) -> FoundItem {
    let unit = Message::new("profile-unit-m").into();
    FoundItem { name: Message::new(name).into(), value: Some(value), unit, verdict, notes: said(notes) }
}

/// One layer, with words in place of a number.
fn worded(
    name: &'static str,
    words: Message,
    verdict: Option<VerdictView>,
    notes: Vec<Message>,
) -> FoundItem {
    FoundItem {
        name: Message::new(name).into(),
        value: None,
        unit: words.into(),
        verdict,
        notes: said(notes),
    }
}

/// "half a metre", "0.3 m".
fn thickness(metres: f64) -> Message {
    let is = |other: f64| (metres - other).abs() < 1e-6;
    if is(0.25) {
        Message::new("profile-quarter-metre")
    } else if is(0.5) {
        Message::new("profile-half-metre")
    } else if is(1.0) {
        Message::new("profile-one-metre")
    } else {
        let decimals = crate::numbers::mark_decimals(metres);
        Message::new("profile-some-metres").number(
            "metres",
            crate::numbers::rounded(metres, decimals),
            decimals,
        )
    }
}
