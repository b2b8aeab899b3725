//! One doubt about all temperatures: are they °F? And what was said of it, with the way back.

use super::{Sight, way};
use crate::action::Action;
use crate::numbers::{reading_decimals, rounded};
use crate::scale::looks_fahrenheit;
use crate::view::{DoubtView, Way};
use layercast_core::Message;
use layercast_exchange::document::{CastDoc, Unit};

/// "Most of these look like °F.", until a person says what they are.
pub fn doubt(sight: &Sight) -> Option<DoubtView> {
    let cast = &sight.notebook.cast;
    if was_asked(cast) {
        return None;
    }
    let (low, high) = looks_fahrenheit(cast)?;
    let decimals = reading_decimals(cast.digit_c);
    let in_c = |f: f64| rounded(Unit::F.to_m_or_c(f), 1);
    let place = Message::new("log-place-temps").number("low", low, decimals).number("high", high, decimals);
    let text = Message::new("log-doubt-fahrenheit").number("low", in_c(low), 1).number("high", in_c(high), 1);
    Some(view(place, text, vec![as_fahrenheit(), way("log-they-are-celsius", read(Unit::C))]))
}

/// A person said it here, or was asked when the table came.
fn was_asked(cast: &CastDoc) -> bool {
    let mut chosen = cast.source.iter().flat_map(|source| source.choices.units.values());
    cast.temps_in.is_some() || chosen.any(|unit| *unit == Unit::C)
}

/// What was said of all temperatures.
pub fn settled(sight: &Sight) -> Option<DoubtView> {
    let place = Message::new("log-place-all-temps");
    match sight.notebook.cast.temps_in? {
        Unit::F => Some(view(
            place,
            Message::new("log-settled-fahrenheit"),
            vec![way("log-they-are-celsius", read(Unit::C))],
        )),
        Unit::C => looks_fahrenheit(&sight.notebook.cast)
            .map(|_| view(place, Message::new("log-settled-celsius"), vec![as_fahrenheit()])),
        _ => None,
    }
}

fn read(unit: Unit) -> Action {
    Action::ReadTemps { unit }
}

fn as_fahrenheit() -> Way {
    way("log-read-as-fahrenheit", read(Unit::F))
}

fn view(place: Message, text: Message, ways: Vec<Way>) -> DoubtView {
    DoubtView {
        place: place.into(),
        text: text.into(),
        ways,
        type_entry: None,
        type_depth: false,
        depth_m: None,
    }
}
