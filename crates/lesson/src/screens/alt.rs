//! The picture in one sentence, for whoever does not see it. What is covered is not in it.

use super::Sight;
use crate::by_hand::waits;
use crate::numbers::{Range, WithNum, reading_decimals, rounded};
use layercast_core::{Level, Message, MixedLayer, State};

/// "Temperature falls from 23.4 °C at the surface to 8.9 °C at 9.5 m; …"
pub fn sentence(sight: &Sight) -> Message {
    let analysis = sight.context.analysis;
    let (Some(first), Some(last)) = (analysis.profile.first(), analysis.profile.last()) else {
        return Message::new("profile-alt-empty");
    };
    if waits(sight.notebook, analysis) {
        return Message::new("log-by-hand-alt");
    }
    if analysis.profile.len() < 2 {
        return Message::new("profile-alt-one").message("first", point(sight, first));
    }
    let believable_c = analysis.facts.as_ref().map_or(0.3, |facts| facts.believable_c);
    let message = match last.temp_c - first.temp_c {
        change if change < -believable_c => Message::new("profile-alt-falls"),
        change if change > believable_c => Message::new("profile-alt-rises"),
        _ => Message::new("profile-alt-even"),
    };
    let mut sentence = message.message("first", point(sight, first)).message("last", point(sight, last));
    for more in uncovered(sight) {
        sentence = Message::new("profile-alt-more").message("first", sentence).message("more", more);
    }
    sentence
}

/// "23.4 °C at the surface", from the profile's first or last value.
fn point(sight: &Sight, level: &Level) -> Message {
    let decimals = reading_decimals(sight.notebook.cast.digit_c);
    let id = if level.depth_m.abs() < 1e-9 { "profile-at-surface" } else { "profile-at-depth" };
    Message::new(id).number("temp", rounded(level.temp_c, decimals), decimals).depth("depth", level.depth_m)
}

/// What may be told of the layers.
fn uncovered(sight: &Sight) -> Vec<Message> {
    let (analysis, shown) = (sight.context.analysis, &sight.shown);
    let mut told = Vec::new();
    if shown.thermocline {
        match (&analysis.thermocline, &analysis.fastest_warming, &analysis.warm_layer_today) {
            (Some(found), _, _) if found.tellable => told.push(
                Message::new("profile-alt-steepest")
                    .message("range", Range::of_marks(found.step_top_m, found.step_bottom_m).said()),
            ),
            (Some(_), _, _) => told.push(Message::new("profile-alt-cannot-tell")),
            (None, Some(found), _) => told.push(
                Message::new("profile-alt-warms")
                    .message("range", Range::of_marks(found.step_top_m, found.step_bottom_m).said()),
            ),
            (None, None, Some(found)) => told.push(
                Message::new("profile-alt-warm-today")
                    .message("range", Range::of_marks(found.top_m, found.bottom_m).said()),
            ),
            (None, None, None) if analysis.state == State::Mixed => {
                told.push(Message::new("profile-alt-no-thermocline"));
            }
            (None, None, None) if analysis.state == State::Unstable => {
                told.push(Message::new("profile-alt-unstable"));
            }
            _ => {}
        }
    }
    if let (true, Some(MixedLayer::At { value_m, low_m, high_m, .. })) =
        (shown.mixed_layer, &analysis.mixed_layer)
    {
        let depth = Range::of_computed(*low_m, *high_m).value(*value_m);
        told.push(Message::new("profile-alt-mixed").num("depth", depth));
    }
    if let (true, Some(found)) = (shown.deep_layer, &analysis.metalimnion) {
        told.push(if found.cut_off {
            Message::new("profile-alt-cut-off").depth("depth", found.bottom_m)
        } else {
            Message::new("profile-alt-deep").depth("depth", found.bottom_m)
        });
    }
    told
}
