//! The list of corrections: each in words with what it did, or why it is not applied; and the offer to correct for a probe
//! that was still settling.

use super::{Sight, way};
use crate::action::Action;
use crate::numbers::{WithNum, rounded, temp_decimals};
use crate::view::{CorrectionFieldView, CorrectionView, CorrectionsView, LagView, Said};
use layercast_core::Message;
use layercast_core::cast::corrections::{Correction, Outcome, Refusal};
use layercast_exchange::document::{CorrectionDoc, CorrectionField, CorrectionKind};

/// A cable further from the vertical than this hangs in a curve, degrees (methods 8.4).
const STEEP_DEG: f64 = 10.0;

/// The list.
pub fn view(sight: &Sight) -> CorrectionsView {
    let list = &sight.notebook.cast.corrections;
    // For a probe that was still settling the readings decide: it is offered below, or not at all.
    let added = CorrectionKind::ALL.into_iter().filter(|kind| *kind != CorrectionKind::Lag);
    CorrectionsView {
        in_force: in_force(sight),
        items: list.iter().enumerate().map(|(i, doc)| item(sight, i, doc)).collect(),
        ways: added.map(|kind| way(words(kind).0, Action::AddCorrection { kind })).collect(),
        lag: lag(sight),
    }
}

/// What a correction is called, and what to do for it.
fn words(kind: CorrectionKind) -> (&'static str, &'static str) {
    match kind {
        CorrectionKind::Probe => ("log-correct-probe", "log-correct-probe-about"),
        CorrectionKind::DepthZero => ("log-correct-zero", "log-correct-zero-about"),
        CorrectionKind::FirstMark => ("log-correct-gap", "log-correct-gap-about"),
        CorrectionKind::Tape => ("log-correct-tape", "log-correct-tape-about"),
        CorrectionKind::Slant => ("log-correct-slant", "log-correct-slant-about"),
        CorrectionKind::Lag => ("log-correct-lag", "log-correct-lag-about"),
    }
}

/// What each correction in force did; and how many readings came to stand above the water by them.
pub fn in_force(sight: &Sight) -> Vec<Said> {
    let outcomes = sight.notebook.cast.corrections.iter().zip(&sight.prepared.outcomes);
    let done = outcomes.filter_map(|(doc, outcome)| match outcome {
        Some(Outcome::Done { changed, largest }) if *changed > 0 => Some(done(doc, *largest)),
        Some(Outcome::Refused(Refusal::PointsTooClose)) => Some(refused(doc, Refusal::PointsTooClose)),
        _ => None,
    });
    let above = sight.prepared.above_water;
    let above = (above > 0).then(|| Message::new("log-correct-above-water").count("count", above));
    done.chain(above).map(Into::into).collect()
}

fn item(sight: &Sight, i: usize, doc: &CorrectionDoc) -> CorrectionView {
    let (title, about) = words(doc.kind);
    let field = |field: &CorrectionField| {
        let text = doc.text(*field);
        CorrectionFieldView {
            input: *field,
            label: label(*field).into(),
            text: text.to_owned(),
            odd: !text.trim().is_empty() && doc.value(*field).is_none(),
        }
    };
    let outcome = sight.prepared.outcomes.get(i).copied().flatten();
    let (said, doubted) = said(doc, outcome);
    CorrectionView {
        title: Message::new(title).into(),
        about: Message::new(about).into(),
        fields: doc.kind.fields().iter().map(field).collect(),
        said: said.into(),
        doubted,
        remove: way("log-correct-remove", Action::RemoveCorrection { correction: i }),
    }
}

fn label(field: CorrectionField) -> Message {
    Message::new(match field {
        CorrectionField::Ice => "log-correct-field-ice",
        CorrectionField::Read => "log-correct-field-read",
        CorrectionField::True => "log-correct-field-true",
        CorrectionField::AboveWater => "log-correct-field-above-water",
        CorrectionField::Gap => "log-correct-field-gap",
        CorrectionField::Marked => "log-correct-field-marked",
        CorrectionField::Measured => "log-correct-field-measured",
        CorrectionField::From => "log-correct-field-from",
        CorrectionField::To => "log-correct-field-to",
        CorrectionField::Angle => "log-correct-field-angle",
        CorrectionField::Share => "log-correct-field-share",
    })
}

/// What a correction did, or why it is not applied; and whether it needs a second look.
fn said(doc: &CorrectionDoc, outcome: Option<Outcome>) -> (Message, bool) {
    if let Some(field) = doc.unreadable() {
        let message = Message::new("log-correct-unreadable")
            .text("written", doc.text(field))
            .message("field", label(field))
            .message("example", example(field));
        return (message, true);
    }
    if let Some(field) = doc.missing() {
        // Nothing typed yet is no doubt.
        let message = Message::new("log-correct-missing").message("field", label(field));
        return (message, false);
    }
    match outcome {
        Some(Outcome::Done { changed: 0, .. }) => (Message::new("log-correct-nothing"), false),
        Some(Outcome::Done { largest, .. }) => {
            let steep = doc.value(CorrectionField::Angle).is_some_and(|angle| angle > STEEP_DEG + 1e-9);
            let did = done(doc, largest);
            match steep {
                true => (Message::new("log-correct-slant-steep").message("did", did), true),
                false => (did, false),
            }
        }
        Some(Outcome::Refused(refusal)) => (refused(doc, refusal), true),
        None => (refused(doc, Refusal::Senseless), true),
    }
}

/// How a field may be filled in.
fn example(field: CorrectionField) -> Message {
    match field {
        CorrectionField::Ice => Message::new("log-correct-example-temp").number("temp", 0.3, 1),
        CorrectionField::Read | CorrectionField::True => {
            Message::new("log-correct-example-temp").number("temp", 20.4, 1)
        }
        CorrectionField::Angle => Message::new("log-correct-example-angle"),
        CorrectionField::Share => Message::new("log-correct-example-bare").number("value", 0.25, 2),
        CorrectionField::From | CorrectionField::To | CorrectionField::Marked | CorrectionField::Measured => {
            Message::new("log-correct-example-depth").number("depth", 5.0, 1)
        }
        CorrectionField::AboveWater | CorrectionField::Gap => {
            Message::new("log-correct-example-depth").number("depth", 0.6, 1)
        }
    }
}

/// What a correction that is applied did. `largest`: the most it changed one reading, metres or °C.
fn done(doc: &CorrectionDoc, largest: f64) -> Message {
    let value = |field| doc.value(field).unwrap_or_default();
    let moved = rounded(largest.abs(), 2);
    match doc.to_correction() {
        Some(Correction::ProbeOffset { ice_c }) => {
            let id = if ice_c > 0.0 { "log-corrected-ice-less" } else { "log-corrected-ice-more" };
            Message::new(id).temp("by", ice_c.abs()).temp("ice", ice_c)
        }
        Some(Correction::ProbeTwoPoint { ice_c, read_c, true_c }) => Message::new("log-corrected-two-point")
            .temp("ice", ice_c)
            .temp("read", read_c)
            .temp("true", true_c)
            .number("most", moved, temp_decimals(moved)),
        Some(Correction::DepthZero { above_water_m }) if above_water_m > 0.0 => {
            Message::new("log-corrected-zero-above").depth("by", above_water_m)
        }
        Some(Correction::DepthZero { above_water_m }) => {
            Message::new("log-corrected-zero-below").depth("by", above_water_m.abs())
        }
        Some(Correction::FirstMark { gap_m }) if gap_m > 0.0 => {
            Message::new("log-corrected-gap-below").depth("by", gap_m)
        }
        Some(Correction::FirstMark { gap_m }) => {
            Message::new("log-corrected-gap-above").depth("by", gap_m.abs())
        }
        Some(Correction::Stretch { factor }) => Message::new("log-corrected-tape")
            .depth("marked", value(CorrectionField::Marked))
            .depth("measured", value(CorrectionField::Measured))
            .number("factor", factor, 3)
            .depth("most", moved),
        Some(Correction::Slant { from_m, to_m, angle_deg }) => Message::new("log-corrected-slant")
            .depth("from", from_m)
            .depth("to", to_m)
            .number("angle", angle_deg, 0)
            .depth("most", moved),
        Some(Correction::Lag { r }) => {
            Message::new("log-corrected-lag").number("share", 100.0 * r, 0).temp("most", moved)
        }
        None => Message::new("log-correct-nothing"),
    }
}

fn refused(doc: &CorrectionDoc, refusal: Refusal) -> Message {
    match refusal {
        Refusal::Senseless => match doc.kind {
            CorrectionKind::Tape => Message::new("log-refused-tape"),
            CorrectionKind::Slant => Message::new("log-refused-slant"),
            CorrectionKind::Probe => Message::new("log-refused-probe"),
            _ => Message::new("log-refused-senseless"),
        },
        Refusal::PointsTooClose => {
            let ice_c = doc.value(CorrectionField::Ice).unwrap_or_default();
            Message::new("log-refused-too-close").temp("ice", ice_c)
        }
        Refusal::Twice => match doc.kind {
            CorrectionKind::Slant => Message::new("log-refused-slant-twice"),
            _ => Message::new("log-refused-twice"),
        },
        Refusal::NoPairs => Message::new("log-refused-no-pairs"),
        Refusal::WrongSign => Message::new("log-refused-wrong-sign"),
        Refusal::TooSlow => Message::new("log-refused-too-slow"),
    }
}

/// The offer, where the readings show a probe that was still settling and nobody has taken it up.
fn lag(sight: &Sight) -> Option<LagView> {
    use crate::document::Screen;
    let list = &sight.notebook.cast.corrections;
    let is_taken = list.iter().any(|doc| doc.kind == CorrectionKind::Lag);
    if is_taken || sight.notebook.place.screen != Screen::Log {
        return None;
    }
    let lag = sight.prepared.lag()?;
    let apart_c = rounded(lag.apart_c, 2);
    let text = Message::new("log-correct-lag-offer").number("apart", apart_c, temp_decimals(apart_c)).number(
        "share",
        100.0 * lag.r,
        0,
    );
    Some(LagView { text: text.into(), way: way("log-correct-lag-take", Action::TakeLag) })
}
