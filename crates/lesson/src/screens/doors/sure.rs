//! How sure: what the trials came to, depth by depth, and where the steepest step fell.

use super::{group, row, said};
use crate::numbers::{Range, WithNum, rounded};
use crate::screens::Sight;
use crate::view::{DoorRow, DoorView};
use layercast_core::certainty::{Certainty, Depth, Ranged, Share, TRIALS, Unsure};
use layercast_core::{Analysis, Message, MixedLayer, Thermocline};

/// Shares below this are not listed, of 1.
const LISTED: f64 = 0.005;

/// What the trials came to; `None` while they are not at hand though there is something to try.
pub fn view(sight: &Sight) -> Option<DoorView> {
    let analysis = sight.context.analysis;
    let certainty = sight.prepared.certainty.as_ref()?;
    let mut lead = vec![match certainty.count {
        TRIALS => Message::new("door-sure-lead"),
        count => Message::new("door-sure-few").count("count", count as usize),
    }];
    let steepest = steepest(certainty);
    if steepest.is_some_and(|(ranged, _)| ranged.refused.is_some()) {
        lead.push(Message::new("door-sure-refused"));
    }
    let ranged = certainty.depths.iter().filter_map(|one| ranged_row(one, analysis)).collect();
    let heads = ["door-head-depth", "door-head-could-be", "door-head-found"].map(Message::new).to_vec();
    let where_heads = ["door-sure-where", "door-head-share"].map(Message::new).to_vec();
    let groups =
        [group(heads, ranged), steepest.and_then(|(ranged, s)| group(where_heads, places(ranged, s)))];
    let mut notes = Vec::new();
    notes.extend(analysis.thermocline.as_ref().map(span));
    notes.push(varied(sight));
    Some(DoorView { lead: said(lead), groups: groups.into_iter().flatten().collect(), notes: said(notes) })
}

/// The depth whose steps are listed one by one.
fn steepest(certainty: &Certainty) -> Option<(&Ranged, &[Share])> {
    [Depth::Thermocline, Depth::FastestWarming, Depth::WarmLayerToday]
        .into_iter()
        .find_map(|depth| Some((certainty.of(depth)?, certainty.shares(depth)?)))
}

/// One depth with its range; those that are listed step by step, or keep their span, are not among them.
fn ranged_row(ranged: &Ranged, analysis: &Analysis) -> Option<DoorRow> {
    let name = match ranged.depth {
        Depth::MixedLayer => "profile-mixed-layer-to",
        Depth::MixedLayerSeason => "door-sure-season",
        Depth::MetalimnionTop => "door-sure-top",
        Depth::MetalimnionBottom => "profile-deep-layer-from",
        Depth::FastestDensing => "door-sure-densing",
        Depth::Thermocline | Depth::WarmLayerToday | Depth::FastestWarming => return None,
    };
    let (low_m, high_m) = match shown_m(ranged.depth, analysis) {
        Some((low_m, high_m)) => (ranged.low_m.map(|_| low_m), ranged.high_m.map(|_| high_m)),
        None => (ranged.low_m, ranged.high_m),
    };
    let range = match (low_m, high_m) {
        (Some(low_m), Some(high_m)) => Range::of_computed(low_m, high_m).said(),
        (Some(low_m), None) => Message::new("door-sure-open").number("low", rounded(low_m, 1), 1),
        (None, _) => Message::new("door-sure-below"),
    };
    let found = 1.0 - ranged.none_share - ranged.beyond_share;
    Some(row(vec![Message::new(name), range, in_100(found)]))
}

/// The range that is told of a depth everywhere: that of the trials, with the depth itself in it.
fn shown_m(depth: Depth, analysis: &Analysis) -> Option<(f64, f64)> {
    let mixed = |mixed: &Option<MixedLayer>| match mixed {
        Some(MixedLayer::At { low_m, high_m, .. }) => Some((*low_m, *high_m)),
        _ => None,
    };
    let steep = analysis.metalimnion.as_ref();
    match depth {
        Depth::MixedLayer => mixed(&analysis.mixed_layer),
        Depth::MixedLayerSeason => mixed(&analysis.mixed_layer_season),
        Depth::MetalimnionTop => steep.map(|m| (m.top_low_m, m.top_high_m)),
        Depth::MetalimnionBottom => steep.and_then(|m| Some((m.bottom_low_m, m.bottom_high_m?))),
        Depth::Thermocline | Depth::WarmLayerToday | Depth::FastestWarming | Depth::FastestDensing => None,
    }
}

/// The steps, downward, each with its share; then all others together.
fn places(ranged: &Ranged, shares: &[Share]) -> Vec<DoorRow> {
    let most = shares.iter().map(|s| s.share).fold(0.0, f64::max);
    let listed = shares.iter().filter(|s| s.share >= LISTED);
    let mut rows: Vec<DoorRow> = listed
        .clone()
        .map(|s| DoorRow {
            own: s.share >= most,
            per_cent: Some(per_cent(s.share)),
            ..row(vec![Range::of_marks(s.top_m, s.bottom_m).said(), in_100(s.share)])
        })
        .collect();
    let elsewhere: f64 = shares.iter().map(|s| s.share).sum::<f64>() - listed.map(|s| s.share).sum::<f64>();
    let others = [("door-sure-elsewhere", elsewhere), ("door-sure-nowhere", ranged.none_share)];
    rows.extend(others.into_iter().filter(|(_, share)| *share >= LISTED).map(|(name, share)| DoorRow {
        per_cent: Some(per_cent(share)),
        ..row(vec![Message::new(name), in_100(share)])
    }));
    rows
}

fn per_cent(share: f64) -> u8 {
    (share * 100.0).round().clamp(0.0, 100.0) as u8
}

/// A share as so many in 100: "71", "under 1", "all but a few", "all".
fn in_100(share: f64) -> Message {
    match per_cent(share) {
        0 if share > 1e-9 => Message::new("door-share-under"),
        100 if share < 1.0 - 1e-9 => Message::new("door-share-over"),
        whole => Message::new("door-share").number("share", f64::from(whole), 0),
    }
}

/// The thermocline's range is the span, here as everywhere.
fn span(told: &Thermocline) -> Message {
    Message::new("door-sure-span")
        .message("range", Range::of_marks(told.span_top_m, told.span_bottom_m).said())
}

/// What was changed in each trial.
fn varied(sight: &Sight) -> Message {
    let (pairs, unsure) = (&sight.context.analysis.pairs, Unsure::default());
    let assumed = pairs.s_c.is_none_or(|s_c| s_c < pairs.s_used_c - 1e-9);
    let message = match assumed {
        true => Message::new("door-sure-varied-assumed"),
        false => Message::new("door-sure-varied"),
    };
    message
        .number("noise", rounded(pairs.s_used_c, 2), 2)
        .temp("offset", unsure.offset_half_c)
        .number("mark", rounded(100.0 * unsure.mark_sd_m, 0), 0)
        .number("stretch", rounded(100.0 * unsure.stretch_sd, 0), 0)
        .number("angle", rounded(unsure.angle_half_deg, 0), 0)
}
