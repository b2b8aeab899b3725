//! The same cast read otherwise: what it would have told, beside what it tells.

use super::{group, row, said};
use crate::numbers::{Range, WithNum, mark, middle, rounded};
use crate::prepared::Prepared;
use crate::view::{DoorRow, DoorView, Num, Otherwise, OtherwiseView};
use layercast_core::certainty::{apply, summary};
use layercast_core::whatif::Whatif;
use layercast_core::{Analysis, Message, MixedLayer, RangesFrom, State, Thermocline};

/// What the cast, read otherwise, would have told, beside what it tells. `drawn`: trials of it.
pub fn view(prepared: &Prepared, otherwise: &Otherwise, found: &Whatif, drawn: &[f64]) -> OtherwiseView {
    let as_read = &prepared.analysis;
    let mut other = found.analysis.clone();
    let certainty = summary(&found.plan, drawn);
    if *otherwise == Otherwise::default() {
        // The same cast has the same ranges, from as many trials.
        other = as_read.clone();
    } else if certainty.count > 0 {
        apply(&mut other, &certainty);
    }
    let mut lead = vec![Message::new("door-otherwise-lead")];
    if *otherwise == Otherwise::default() {
        lead.push(Message::new("door-otherwise-same"));
    } else if other.profile.len() != as_read.profile.len() {
        let count = Message::new("door-otherwise-depths").count("count", other.profile.len());
        lead.push(count.number("before", as_read.profile.len() as f64, 0));
    }
    if other.state != as_read.state {
        lead.push(Message::new("door-otherwise-state").message("state", state(other.state)));
    }
    let heads = ["door-head-depth", "door-head-now", "door-head-otherwise"].map(Message::new).to_vec();
    let mut notes = vec![Message::new("door-otherwise-how")];
    if otherwise.wait != Default::default() {
        notes.push(Message::new("door-otherwise-wait").number("tau", rounded(crate::ranges::TAU_S, 0), 0));
    }
    let rows = rows(as_read, &other);
    let door =
        DoorView { lead: said(lead), groups: group(heads, rows).into_iter().collect(), notes: said(notes) };
    OtherwiseView { door }
}

fn state(state: State) -> Message {
    Message::new(match state {
        State::Stratified => "door-otherwise-state-layered",
        State::Weak => "door-otherwise-state-weak",
        State::Mixed => "door-otherwise-state-mixed",
        State::Inverse => "door-otherwise-state-inverse",
        State::Unstable => "door-otherwise-state-unstable",
        State::TooFew => "door-otherwise-state-few",
    })
}

/// Each depth with its range, as read and otherwise; those that neither has are left out.
fn rows(as_read: &Analysis, other: &Analysis) -> Vec<DoorRow> {
    let pairs = [
        ("profile-thermocline", steepest(&as_read.thermocline), steepest(&other.thermocline)),
        ("profile-warms-fastest", steepest(&as_read.fastest_warming), steepest(&other.fastest_warming)),
        ("profile-mixed-layer-to", mixed(as_read), mixed(other)),
        ("profile-deep-layer-from", deep(as_read), deep(other)),
    ];
    let mut rows = Vec::new();
    for (name, now, then) in pairs {
        if now.is_none() && then.is_none() {
            continue;
        }
        let value =
            |told: &Option<Told>| told.as_ref().map_or(Message::new("door-none"), |told| told.value.clone());
        let range = |told: &Option<Told>| {
            told.as_ref().and_then(|told| told.range.clone()).unwrap_or(Message::new("door-no-range"))
        };
        rows.push(DoorRow { own: true, ..row(vec![Message::new(name), value(&now), value(&then)]) });
        rows.push(row(vec![Message::new("door-could-be"), range(&now), range(&then)]));
        let between = |told: &Option<Told>| told.as_ref().and_then(|told| told.between.clone());
        if between(&now).is_some() || between(&then).is_some() {
            let said = |told: &Option<Told>| between(told).unwrap_or(Message::new("door-no-range"));
            rows.push(row(vec![Message::new("door-between"), said(&now), said(&then)]));
        }
    }
    rows
}

/// A depth and its range in words.
struct Told {
    value: Message,
    range: Option<Message>,
    /// The two marks that a computed depth lies between.
    between: Option<Message>,
}

fn depth(num: Num) -> Message {
    Message::new("door-depth").num("depth", num)
}

fn steepest(found: &Option<Thermocline>) -> Option<Told> {
    let told = found.as_ref()?;
    let range = Range::of_marks(told.span_top_m, told.span_bottom_m).said();
    let value = if told.tellable { depth(middle(told.value_m)) } else { Message::new("door-cannot-tell") };
    Some(Told { value, range: Some(range), between: None })
}

fn mixed(analysis: &Analysis) -> Option<Told> {
    Some(match analysis.mixed_layer? {
        MixedLayer::At { value_m, low_m, high_m, between_m: (upper_m, lower_m), .. } => {
            let range = Range::of_computed(low_m, high_m);
            let between = Range::of_marks(upper_m, lower_m).said();
            Told { value: depth(range.value(value_m)), range: Some(range.said()), between: Some(between) }
        }
        MixedLayer::AtLeast { at_least_m } => {
            let at_least = Message::new("door-sure-open").number("low", rounded(at_least_m, 1), 1);
            Told { value: at_least, range: None, between: None }
        }
    })
}

fn deep(analysis: &Analysis) -> Option<Told> {
    let found = analysis.metalimnion?;
    let range = found.bottom_high_m.filter(|_| !found.cut_off).map(|high_m| match analysis.ranges_from {
        RangesFrom::Propagated => Range::of_marks(found.bottom_low_m, high_m).said(),
        RangesFrom::Trials { .. } => Range::of_computed(found.bottom_low_m, high_m).said(),
    });
    let value = match found.cut_off {
        true => Message::new("door-sure-open").number("low", rounded(found.bottom_m, 1), 1),
        false => depth(mark(found.bottom_m)),
    };
    Some(Told { value, range, between: None })
}
