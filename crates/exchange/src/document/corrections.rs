//! Corrections as they are kept: each field as it was typed beside what it means, and the cast they give.

use super::{CastDoc, SettledCell, to_cast, typed_depth, typed_temp};
use layercast_core::Cast;
use layercast_core::cast::corrections::{Corrected, Correction, Outcome, correct};
use serde::{Deserialize, Serialize};
use std::collections::BTreeMap;

/// One correction of the list: what it is about, and its fields.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct CorrectionDoc {
    /// What it is about.
    pub kind: CorrectionKind,
    /// The fields that were typed into, each with its text and what that means. A field without a value is kept and
    /// doubted; the correction then waits.
    #[serde(default)]
    pub fields: BTreeMap<CorrectionField, SettledCell>,
}

/// What a correction is about.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum CorrectionKind {
    /// The probe in ice water, and beside a reference thermometer where that was read too.
    Probe,
    /// Where the marks were read: a rail or the top of the ice above the water.
    DepthZero,
    /// From the zero of the marks to the sensor.
    FirstMark,
    /// A marked length against a tape.
    Tape,
    /// The cable hung at an angle.
    Slant,
    /// The probe was still settling when it was read.
    Lag,
}

/// A field of a correction.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Serialize, Deserialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
#[serde(rename_all = "snake_case")]
pub enum CorrectionField {
    /// Reading in melting ice, °C.
    Ice,
    /// Reading beside a reference thermometer, °C; with [`CorrectionField::True`] or not at all.
    Read,
    /// What the reference thermometer read, °C.
    True,
    /// Height of the place where marks were read above the water, metres.
    AboveWater,
    /// From the zero of the marks down to the sensor, metres.
    Gap,
    /// Length by the marks, metres.
    Marked,
    /// The same length by the tape, metres.
    Measured,
    /// First mark of the slant, metres.
    From,
    /// Last mark of the slant, metres.
    To,
    /// Angle from the vertical, degrees.
    Angle,
    /// Share of each step that the probe had still to go, 0 to 1.
    Share,
}

impl CorrectionKind {
    /// Every kind, in the order they are offered in.
    pub const ALL: [Self; 6] =
        [Self::DepthZero, Self::FirstMark, Self::Tape, Self::Slant, Self::Probe, Self::Lag];

    /// Its fields, in the order they are asked for; those of the reference pair may stay empty.
    pub fn fields(self) -> &'static [CorrectionField] {
        use CorrectionField::{AboveWater, Angle, From, Gap, Ice, Marked, Measured, Read, Share, To, True};
        match self {
            Self::Probe => &[Ice, True, Read],
            Self::DepthZero => &[AboveWater],
            Self::FirstMark => &[Gap],
            Self::Tape => &[Marked, Measured],
            Self::Slant => &[From, To, Angle],
            Self::Lag => &[Share],
        }
    }
}

impl CorrectionField {
    /// What a person typed into the field: temperatures in °C, lengths in metres, the angle in degrees, unless another
    /// unit is written. Text that is none is kept without a value.
    pub fn typed(self, text: &str) -> SettledCell {
        match self {
            Self::Ice | Self::Read | Self::True => typed_temp(text),
            Self::Angle | Self::Share => typed_bare(text),
            _ => typed_depth(text),
        }
    }
}

/// A number without a unit of length or temperature; a degree sign may stand behind it.
pub(super) fn typed_bare(text: &str) -> SettledCell {
    let value = crate::number::quantity(text)
        .filter(|number| number.to.is_none() && number.unit.is_none() && number.per.is_none())
        .map(|number| number.value);
    SettledCell { text: text.to_owned(), value }
}

impl CorrectionDoc {
    /// A correction with empty fields.
    pub fn new(kind: CorrectionKind) -> Self {
        Self { kind, fields: BTreeMap::new() }
    }

    /// The text of a field; empty when nothing was typed.
    pub fn text(&self, field: CorrectionField) -> &str {
        self.fields.get(&field).map_or("", |cell| &cell.text)
    }

    /// The value of a field; `None` when it is empty or cannot be read.
    pub fn value(&self, field: CorrectionField) -> Option<f64> {
        self.fields.get(&field).and_then(|cell| cell.value)
    }

    /// The first field that something is typed into but that cannot be read.
    pub fn unreadable(&self) -> Option<CorrectionField> {
        let odd =
            |field: &&CorrectionField| !self.text(**field).trim().is_empty() && self.value(**field).is_none();
        self.kind.fields().iter().find(odd).copied()
    }

    /// The first field that must be filled in before it can be applied.
    pub fn missing(&self) -> Option<CorrectionField> {
        use CorrectionField::{Read, True};
        let has = |field: CorrectionField| !self.text(field).trim().is_empty();
        let wanted = |field: &&CorrectionField| match **field {
            Read => has(True) && !has(Read),
            True => has(Read) && !has(True),
            field => !has(field),
        };
        self.kind.fields().iter().find(wanted).copied()
    }

    /// As the science takes it; `None` while a field is missing or cannot be read.
    pub fn to_correction(&self) -> Option<Correction> {
        use CorrectionField::{AboveWater, Angle, From, Gap, Ice, Marked, Measured, Read, Share, To, True};
        if self.missing().is_some() || self.unreadable().is_some() {
            return None;
        }
        let value = |field| self.value(field);
        Some(match self.kind {
            CorrectionKind::Probe => match (value(Read), value(True)) {
                (Some(read_c), Some(true_c)) => {
                    Correction::ProbeTwoPoint { ice_c: value(Ice)?, read_c, true_c }
                }
                _ => Correction::ProbeOffset { ice_c: value(Ice)? },
            },
            CorrectionKind::DepthZero => Correction::DepthZero { above_water_m: value(AboveWater)? },
            CorrectionKind::FirstMark => Correction::FirstMark { gap_m: value(Gap)? },
            // A marked length of 0 gives no finite factor, which the science refuses in its own words.
            CorrectionKind::Tape => Correction::Stretch { factor: value(Measured)? / value(Marked)? },
            CorrectionKind::Slant => {
                Correction::Slant { from_m: value(From)?, to_m: value(To)?, angle_deg: value(Angle)? }
            }
            CorrectionKind::Lag => Correction::Lag { r: value(Share)? },
        })
    }
}

/// The cast as read, the cast to analyse, and what became of each correction.
#[derive(Clone, Debug, PartialEq)]
pub struct CorrectedDoc {
    /// The readings as taken: [`to_cast`].
    pub raw: Cast,
    /// The readings to analyse: one per reading as taken, in the same order. One that comes to stand above the water has
    /// no depth (NaN): it was read in the air.
    pub cast: Cast,
    /// How many readings stand above the water.
    pub above_water: usize,
    /// One per correction of the document; `None` while it waits for a field.
    pub outcomes: Vec<Option<Outcome>>,
}

/// Applies the document's corrections to its readings as taken.
pub fn corrected(doc: &CastDoc) -> CorrectedDoc {
    let raw = to_cast(doc);
    let Corrected { mut cast, applied } = correct(&raw, &ready(doc));
    let mut above_water = 0;
    for (taken, reading) in raw.readings.iter().zip(&mut cast.readings) {
        if is_above_water(taken.depth_m, reading.depth_m) {
            reading.depth_m = f64::NAN;
            above_water += 1;
        }
    }
    let mut applied = applied.into_iter().map(|applied| applied.outcome);
    let outcomes =
        doc.corrections.iter().map(|one| one.to_correction().and_then(|_| applied.next())).collect();
    CorrectedDoc { raw, cast, above_water, outcomes }
}

/// Whether a mark in the water stands above it once corrected.
fn is_above_water(mark_m: f64, corrected_m: f64) -> bool {
    mark_m >= 0.0 && corrected_m < -1e-9
}

/// Where marks of the cable stand once corrected, metres: as [`corrected`] does it for readings there.
pub fn corrected_marks(doc: &CastDoc, marks_m: &[f64]) -> Vec<f64> {
    use layercast_core::{Leg, Reading, Switch};
    let reading =
        |depth_m: &f64| Reading { depth_m: *depth_m, temp_c: None, leg: Leg::Unknown, switch: Switch::Auto };
    let list = ready(doc);
    if list.is_empty() {
        return marks_m.to_vec();
    }
    let cast = Cast { readings: marks_m.iter().map(reading).collect(), ..Cast::default() };
    correct(&cast, &list).cast.readings.iter().map(|reading| reading.depth_m).collect()
}

fn ready(doc: &CastDoc) -> Vec<Correction> {
    doc.corrections.iter().filter_map(CorrectionDoc::to_correction).collect()
}

#[cfg(test)]
mod tests {
    use super::super::{from_json, new_doc, to_json};
    use super::*;
    use CorrectionField::{AboveWater, Angle, From, Ice, Marked, Measured, Read, To, True};

    fn correction(kind: CorrectionKind, fields: &[(CorrectionField, &str)]) -> CorrectionDoc {
        let fields = fields.iter().map(|(field, text)| (*field, field.typed(text))).collect();
        CorrectionDoc { kind, fields }
    }

    #[test]
    fn fields_are_read_in_their_units() {
        let rail = correction(CorrectionKind::DepthZero, &[(AboveWater, "60 cm")]);
        assert_eq!(rail.to_correction(), Some(Correction::DepthZero { above_water_m: 0.6 }));
        let slant = correction(CorrectionKind::Slant, &[(From, "5"), (To, "8,0"), (Angle, "15°")]);
        assert_eq!(
            slant.to_correction(),
            Some(Correction::Slant { from_m: 5.0, to_m: 8.0, angle_deg: 15.0 })
        );
        let tape = correction(CorrectionKind::Tape, &[(Marked, "10"), (Measured, "10.2")]);
        assert_eq!(tape.to_correction(), Some(Correction::Stretch { factor: 1.02 }));
        let probe = correction(CorrectionKind::Probe, &[(Ice, "32.9 °F")]);
        let Some(Correction::ProbeOffset { ice_c }) = probe.to_correction() else { panic!("{probe:?}") };
        assert!((ice_c - 0.5).abs() < 1e-12);
        let pair = correction(CorrectionKind::Probe, &[(Ice, "0,2"), (Read, "20.4"), (True, "20.0")]);
        assert_eq!(
            pair.to_correction(),
            Some(Correction::ProbeTwoPoint { ice_c: 0.2, read_c: 20.4, true_c: 20.0 })
        );
    }

    #[test]
    fn what_is_missing_or_cannot_be_read_is_kept_and_waits() {
        let bare = CorrectionDoc::new(CorrectionKind::Slant);
        assert_eq!((bare.missing(), bare.to_correction()), (Some(From), None));
        let half = correction(CorrectionKind::Probe, &[(Ice, "0.2"), (True, "20")]);
        assert_eq!((half.missing(), half.to_correction()), (Some(Read), None));
        let odd = correction(CorrectionKind::DepthZero, &[(AboveWater, "knee high")]);
        assert_eq!((odd.unreadable(), odd.text(AboveWater)), (Some(AboveWater), "knee high"));
        assert_eq!(odd.to_correction(), None);
        let unit = correction(CorrectionKind::Slant, &[(From, "5"), (To, "8"), (Angle, "15 m")]);
        assert_eq!(unit.unreadable(), Some(Angle));
    }

    #[test]
    fn a_mark_above_the_water_was_read_in_the_air() {
        let mut doc = new_doc("", "");
        for depth in ["0", "0.6", "3.0"] {
            doc.entries.push(super::super::Entry {
                depth: super::super::Cell::typed(&typed_depth(depth)),
                temp: super::super::Cell::typed(&typed_temp("15")),
                oxygen: None,
                leg: super::super::LegDoc::Down,
                line: None,
                switch: super::super::SwitchDoc::Auto,
            });
        }
        doc.corrections.push(CorrectionDoc::new(CorrectionKind::Slant));
        doc.corrections.push(correction(CorrectionKind::DepthZero, &[(AboveWater, "0.6")]));
        let got = corrected(&doc);
        let depths: Vec<f64> = got.cast.readings.iter().map(|reading| reading.depth_m).collect();
        assert!(depths[0].is_nan() && depths[1].abs() < 1e-12 && (depths[2] - 2.4).abs() < 1e-12);
        assert_eq!((got.above_water, got.raw.readings[2].depth_m), (1, 3.0));
        assert!(got.outcomes[0].is_none());
        assert!(
            matches!(got.outcomes[1], Some(Outcome::Done { changed: 3, largest }) if (largest + 0.6).abs() < 1e-12)
        );
        let marks = corrected_marks(&doc, &[0.0, 3.0]);
        assert!((marks[0] + 0.6).abs() < 1e-12 && (marks[1] - 2.4).abs() < 1e-12);
    }

    #[test]
    fn a_document_keeps_them_and_opens_without_any() {
        let mut doc = new_doc("", "");
        assert!(!to_json(&doc).contains("corrections"));
        doc.corrections.push(correction(CorrectionKind::DepthZero, &[(AboveWater, "0,6?")]));
        assert_eq!(from_json(&to_json(&doc)), Ok(doc));
    }
}
