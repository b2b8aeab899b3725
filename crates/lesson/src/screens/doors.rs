//! The doors behind what was found: how sure it is, the same cast read otherwise, how hard the water is to mix.

mod mixing;
pub mod otherwise;
mod sure;

use super::Sight;
use crate::ranges::{FEWER_TRIALS, plan};
use crate::view::{DoorGroup, DoorRow, DoorView, DoorsView, RangesView, Said};
use layercast_core::certainty::TRIALS;
use layercast_core::{Message, State};

/// Trials behind the ranges: whether they are wanted, and of what.
pub fn ranges(sight: &Sight) -> RangesView {
    let prepared = sight.prepared;
    RangesView {
        key: prepared.ranges_key.clone(),
        wanted: prepared.certainty.is_none() && plan(&prepared.cast, prepared).width() > 0,
        trials: TRIALS,
        fewer_trials: FEWER_TRIALS,
    }
}

/// All doors; `None` where too few depths were read to say anything, or no layer is marked before a doubt is settled.
pub fn doors(sight: &Sight) -> Option<DoorsView> {
    if matches!(sight.context.analysis.state, State::TooFew | State::Unstable) {
        return None;
    }
    Some(DoorsView {
        sure: sure::view(sight),
        mixing: mixing::view(sight),
        waiting: DoorView { lead: vec![Message::new("door-waiting").into()], ..DoorView::default() },
    })
}

fn group(heads: Vec<Message>, rows: Vec<DoorRow>) -> Option<DoorGroup> {
    (!rows.is_empty()).then(|| DoorGroup { heads: said(heads), rows })
}

fn row(cells: Vec<Message>) -> DoorRow {
    DoorRow { cells: said(cells), own: false, per_cent: None }
}

fn said(messages: Vec<Message>) -> Vec<Said> {
    messages.into_iter().map(Into::into).collect()
}
