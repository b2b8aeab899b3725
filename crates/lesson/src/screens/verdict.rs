//! The student's mark beside what was found: inside, close, look again. Judged by the numbers that are shown.

use super::Sight;
use crate::document::{MarkDoc, MarkName};
use crate::numbers::{Range, WithNum, mark_decimals};
use crate::view::{Sign, VerdictView};
use layercast_core::Message;

/// Ready for the page.
pub fn verdict(sign: Sign, message: Message) -> VerdictView {
    VerdictView { sign, said: message.into() }
}

/// One mark of the student.
pub fn doc<'a>(sight: &'a Sight, mark: MarkName) -> &'a MarkDoc {
    sight.context.sheet.marks.get(mark)
}

/// A placed mark's depth, metres.
pub fn placed_m(sight: &Sight, mark: MarkName) -> Option<f64> {
    let doc = doc(sight, mark);
    doc.depth_m.filter(|_| !doc.refused)
}

/// Thickness of the step a depth lies in, metres: at a mark the thicker of the two that meet there.
pub fn local_step_m(sight: &Sight, depth_m: f64) -> f64 {
    let steps = &sight.context.analysis.steps;
    let touches = |top_m: f64, bottom_m: f64| depth_m >= top_m - 1e-9 && depth_m <= bottom_m + 1e-9;
    let here = steps.iter().filter(|step| touches(step.top_m, step.bottom_m));
    let thickest = here.map(|step| step.bottom_m - step.top_m).fold(0.0, f64::max);
    if thickest > 0.0 {
        return thickest;
    }
    let nearest =
        if steps.first().is_some_and(|step| depth_m < step.top_m) { steps.first() } else { steps.last() };
    nearest.map_or(0.0, |step| step.bottom_m - step.top_m)
}

/// Beside a range. `look`: what to look at when the mark is not close; `refused`: what is said of "not in my water".
pub fn beside_range(
    sight: &Sight,
    mark: MarkName,
    range: &Range,
    look: Message,
    refused: (Sign, Message),
) -> Option<VerdictView> {
    let doc = doc(sight, mark);
    if doc.refused {
        return Some(verdict(refused.0, refused.1));
    }
    let depth_m = doc.depth_m?;
    let outside_m = range.outside_m(depth_m);
    if outside_m == 0.0 {
        return Some(verdict(Sign::Inside, yours(Message::new("profile-inside"), depth_m, range)));
    }
    let far_decimals =
        range.from.decimals.max(range.to.decimals).max(mark_decimals(depth_m)).max(mark_decimals(outside_m));
    let is_close = outside_m.abs() <= local_step_m(sight, depth_m) + 1e-9;
    let message = match (is_close, outside_m < 0.0) {
        (true, true) => Message::new("profile-above"),
        (true, false) => Message::new("profile-below"),
        (false, true) => Message::new("profile-far-above").message("look", look),
        (false, false) => Message::new("profile-far-below").message("look", look),
    };
    let message = yours(message, depth_m, range).number("far", outside_m.abs(), far_decimals.min(2));
    Some(verdict(if is_close { Sign::Close } else { Sign::Outside }, message))
}

fn yours(message: Message, depth_m: f64, range: &Range) -> Message {
    message.depth("mine", depth_m).message("range", range.said())
}

/// Beside a layer that the rules find, said of "not in my water".
pub fn refused_though_found(range: &Range, look: Message) -> (Sign, Message) {
    (
        Sign::Outside,
        Message::new("profile-refused-found").message("range", range.said()).message("look", look),
    )
}

/// Beside "mixed down to at least": the rule's temperature is never reached.
pub fn beside_at_least(sight: &Sight, at_least_m: f64) -> Option<VerdictView> {
    let doc = doc(sight, MarkName::Mixed);
    if sight.context.sheet.marks.all_refused() {
        return Some(verdict(Sign::Inside, Message::new("profile-no-layers-agreed")));
    }
    if doc.refused {
        return Some(verdict(Sign::Inside, Message::new("profile-refused-at-least")));
    }
    let depth_m = doc.depth_m?;
    let message = Message::new("profile-short-of-at-least").depth("mine", depth_m).depth("least", at_least_m);
    Some(if depth_m >= at_least_m - 1e-9 {
        verdict(Sign::Inside, Message::new("profile-as-far-as-at-least").depth("mine", depth_m))
    } else if at_least_m - depth_m <= local_step_m(sight, depth_m) + 1e-9 {
        verdict(Sign::Close, message)
    } else {
        verdict(Sign::Outside, message)
    })
}

/// Beside "none": refusing it agrees; a mark that was set gets its reason.
pub fn beside_none(sight: &Sight, mark: MarkName, sign: Sign, reason: Message) -> Option<VerdictView> {
    if doc(sight, mark).refused {
        return Some(verdict(Sign::Inside, Message::new("profile-refused-agreed")));
    }
    placed_m(sight, mark).map(|depth_m| verdict(sign, reason.depth("mine", depth_m)))
}
