//! From the document to the cast that is analysed, and from a table that was read to the document.

use super::{
    CastDoc, Cell, Choices, Companions, DoubtedCell, Entry, LegDoc, SCHEMA, SettledCell, Source, SwitchDoc,
    Unit, VERSION, cell_doubts,
};
use crate::number::{Quantity, quantity};
use crate::read::TableRead;
use layercast_core::{Cast, Leg, Reading, Switch};

/// Longest table that is kept with the cast, signs.
const KEPT_TEXT: usize = 200_000;

/// A document without readings.
pub fn new_doc(water: &str, group: &str) -> CastDoc {
    CastDoc {
        schema: SCHEMA.to_owned(),
        version: VERSION,
        water: water.to_owned(),
        group: group.to_owned(),
        entries: Vec::new(),
        digit_c: 0.0,
        temps_in: None,
        bed_m: None,
        corrections: Vec::new(),
        companions: Companions::default(),
        source: None,
    }
}

impl CastDoc {
    /// The document of a table that was read. `text` and `choices` stay with it, so that the table can be opened again;
    /// texts over 200,000 signs do not.
    pub fn from_read(read: &TableRead, text: &str, choices: &Choices) -> Self {
        let is_kept = text.len() <= KEPT_TEXT || text.chars().take(KEPT_TEXT + 1).count() <= KEPT_TEXT;
        Self {
            entries: read.entries.clone(),
            digit_c: read.digit_c,
            companions: read.companions.clone(),
            source: is_kept.then(|| Source {
                text: text.to_owned(),
                choices: choices.clone(),
                ..Source::default()
            }),
            ..new_doc("", "")
        }
    }
}

/// The cast as taken, before corrections: one reading an entry, in the same order. [`super::corrected`] gives the one to
/// analyse.
///
/// A missing or unreadable temperature is `None`. A depth that is missing, unreadable or doubted becomes NaN, which the
/// analysis takes for missing, until a person settles it or says that it was like that.
pub fn to_cast(doc: &CastDoc) -> Cast {
    let mut readings: Vec<Reading> = doc.entries.iter().map(reading).collect();
    for doubt in cell_doubts(doc) {
        if doubt.cell == DoubtedCell::Depth {
            for entry in doubt.entries {
                if let Some(reading) = readings.get_mut(entry) {
                    reading.depth_m = f64::NAN;
                }
            }
        }
    }
    Cast { readings, digit_c: doc.digit_c, bed_m: doc.bed_m }
}

fn reading(entry: &Entry) -> Reading {
    Reading {
        depth_m: entry.depth.current().unwrap_or(f64::NAN),
        temp_c: entry.temp.current(),
        leg: match entry.leg {
            LegDoc::Down => Leg::Down,
            LegDoc::Up => Leg::Up,
            LegDoc::Unknown => Leg::Unknown,
        },
        switch: match entry.switch {
            SwitchDoc::Auto => Switch::Auto,
            SwitchDoc::Off => Switch::Off,
            SwitchDoc::Kept => Switch::Kept,
        },
    }
}

/// A depth as a person types it: metres unless a unit is written. Text that is no depth is kept and doubted.
pub fn typed_depth(text: &str) -> SettledCell {
    let value = quantity(text).filter(|depth| depth.to.is_none()).and_then(|depth| depth.in_m());
    SettledCell { text: text.to_owned(), value }
}

/// A temperature as a person types it: °C unless a unit is written. Text that is no temperature is kept and doubted.
pub fn typed_temp(text: &str) -> SettledCell {
    typed_temp_in(text, None)
}

/// As [`typed_temp`], with the unit of a number that stands alone (see [`CastDoc::temps_in`]).
pub fn typed_temp_in(text: &str, alone: Option<Unit>) -> SettledCell {
    // A document from elsewhere may name any unit.
    let alone = alone.filter(|unit| *unit == Unit::F);
    let read = quantity(text).filter(|temp| temp.to.is_none());
    let value = read.and_then(|temp| Quantity { unit: temp.unit.or(alone), ..temp }.in_c());
    SettledCell { text: text.to_owned(), value }
}

impl Cell {
    /// A cell that was typed as depth or temperature and not read from a table.
    pub fn typed(settled: &SettledCell) -> Self {
        Self { written: settled.text.clone(), value: settled.value, settled: None }
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    fn entry(depth: &str, temp: &str) -> Entry {
        Entry {
            depth: Cell::typed(&typed_depth(depth)),
            temp: Cell::typed(&typed_temp(temp)),
            oxygen: None,
            leg: LegDoc::Up,
            line: None,
            switch: SwitchDoc::Kept,
        }
    }

    #[test]
    fn one_reading_an_entry_in_the_same_order() {
        let mut doc = new_doc("", "");
        doc.entries =
            vec![entry("0,5", "18,4"), entry("1", ""), entry("deep", "17"), entry("150 cm", "64.4 °F")];
        doc.entries[0].temp.settled = Some(typed_temp("18.5"));
        doc.bed_m = Some(2.0);
        let cast = to_cast(&doc);
        let temps: Vec<Option<f64>> = cast.readings.iter().map(|r| r.temp_c).collect();
        assert_eq!(temps[..3], [Some(18.5), None, Some(17.0)]);
        assert!((temps[3].unwrap() - 18.0).abs() < 1e-9);
        assert!(cast.readings[2].depth_m.is_nan());
        assert_eq!(cast.readings[3].depth_m, 1.5);
        assert_eq!(
            (cast.readings[0].leg, cast.readings[0].switch, cast.bed_m),
            (Leg::Up, Switch::Kept, Some(2.0))
        );
    }

    #[test]
    fn a_number_alone_is_read_in_the_unit_that_was_said() {
        let in_f = |text: &str| typed_temp_in(text, Some(Unit::F)).value;
        assert!((in_f("74,3").unwrap() - 23.5).abs() < 1e-9);
        assert_eq!((in_f("18 °C"), in_f("4 m"), in_f("warm")), (Some(18.0), None, None));
        for other in [Unit::C, Unit::M] {
            assert_eq!(typed_temp_in("18", Some(other)), typed_temp("18"));
        }
        // Older documents say nothing, and nothing is written where nothing was said.
        assert!(!crate::document::to_json(&new_doc("", "")).contains("temps_in"));
    }

    #[test]
    fn typed_text_of_another_kind_is_no_value() {
        assert_eq!(typed_depth("18 °C").value, None);
        assert_eq!(typed_depth("4–5").value, None);
        assert_eq!(typed_temp("4 m").value, None);
        assert_eq!(typed_temp("deep").text, "deep");
    }
}
