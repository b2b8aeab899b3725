//! The tables that go out: every row fits the description beside it, no reading is missing, and the reader takes them
//! back as they were.
//!
//! The checks of datatypes follow the W3C Recommendations "Model for Tabular Data and Metadata on the Web" and "Metadata
//! Vocabulary for Tabular Data" (2015), those of the text RFC 4180; both from memory.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use layercast_core::{Method, analyse};
use layercast_exchange::document::{
    CastDoc, CorrectionDoc, CorrectionField, CorrectionKind, LegDoc, SettledCell, SwitchDoc, corrected,
};
use layercast_exchange::read::{Outcome, read};
use layercast_exchange::write::{Told, quality, readings, sidecar};
use serde_json::Value;

fn written(doc: &CastDoc, what: impl Fn(Told) -> String) -> String {
    let corrected = corrected(doc);
    let analysis = analyse(&corrected.cast, &Method::default());
    let (raw, cast, outcomes) = (&corrected.raw, &corrected.cast, &corrected.outcomes);
    what(Told { doc, raw, cast, outcomes, analysis: &analysis })
}

fn cast(text: &str) -> CastDoc {
    let choices = Default::default();
    let mut doc = CastDoc::from_read(&read(text.as_bytes(), &choices), text, &choices);
    assert!(doc.entries.len() > 3, "{text}");
    doc.group = "C".to_owned();
    doc.water = "Quillet Pond, north".to_owned();
    doc
}

const POND: &str = "Depth (m)\tGoing down\tComing up\n0.0\t23.4\t23.5\n0.5\t23.4\t23.4\n1.0\t177\t23.3\n1.5\t23.3\t\n2.0\t17.1\t17.0\n2.5\t12.8\t12.7\n";

/// A pond with everything in it that can be decided, corrected or doubted.
fn pond() -> CastDoc {
    let mut doc = cast(POND);
    doc.entries[1].temp.settled = Some(SettledCell { text: "23.2".into(), value: Some(23.2) });
    doc.entries[3].switch = SwitchDoc::Off;
    doc.entries[4].switch = SwitchDoc::Kept;
    doc.entries[5].depth.settled = Some(SettledCell { text: "0.25".into(), value: Some(0.25) });
    let mut above = CorrectionDoc::new(CorrectionKind::DepthZero);
    above.fields.insert(CorrectionField::AboveWater, CorrectionField::AboveWater.typed("0.3"));
    doc.corrections.push(above);
    doc
}

/// RFC 4180, read on its own.
fn rows(text: &str) -> Vec<Vec<String>> {
    let text = text.strip_prefix('\u{feff}').expect("a mark at the start");
    let (mut rows, mut row, mut cell, mut quoted) = (Vec::new(), Vec::new(), String::new(), false);
    let mut signs = text.chars().peekable();
    while let Some(sign) = signs.next() {
        match sign {
            '"' if quoted && signs.peek() == Some(&'"') => {
                signs.next();
                cell.push('"');
            }
            '"' => quoted = !quoted,
            ',' if !quoted => row.push(std::mem::take(&mut cell)),
            '\r' if !quoted && signs.peek() == Some(&'\n') => {
                signs.next();
                row.push(std::mem::take(&mut cell));
                rows.push(std::mem::take(&mut row));
            }
            other => cell.push(other),
        }
    }
    assert!(row.is_empty() && cell.is_empty() && !quoted, "the last row is not ended");
    rows
}

/// Why a cell does not fit its column; `None` where it does.
fn misfit(column: &Value, cell: &str) -> Option<String> {
    let say = |why: &str| Some(format!("{}: {cell:?} {why}", column["name"]));
    if cell.is_empty() {
        return if column["required"] == Value::Bool(true) { say("is required") } else { None };
    }
    let datatype = &column["datatype"];
    let base = datatype["base"].as_str().or(datatype.as_str()).unwrap();
    let parts: Vec<&str> = match column["separator"].as_str() {
        Some(separator) => cell.split(separator).collect(),
        None => vec![cell],
    };
    for part in parts {
        let number = part.parse::<f64>().ok().filter(|value| value.is_finite());
        let fits = match base {
            "string" => true,
            "boolean" => matches!(part, "true" | "false"),
            "integer" => part.parse::<i64>().is_ok(),
            // No exponent is allowed in a decimal.
            "decimal" => number.is_some() && !part.contains(['e', 'E']),
            other => panic!("{other}"),
        };
        if !fits {
            return say("is of another type");
        }
        if let Some(least) = datatype["minimum"].as_f64()
            && number.is_none_or(|value| value < least)
        {
            return say("is too small");
        }
        if let Some(format) = datatype["format"].as_str()
            && !format.split('|').any(|word| word == part)
        {
            return say("is none of the words");
        }
    }
    None
}

/// Everything in a table that does not fit its description.
fn misfits(table: &str, description: &str) -> Vec<String> {
    let description: Value = serde_json::from_str(description).unwrap();
    let columns = description["tableSchema"]["columns"].as_array().unwrap();
    let rows = rows(table);
    let titles: Vec<&str> = columns.iter().map(|column| column["titles"].as_str().unwrap()).collect();
    assert_eq!(rows[0], titles);
    let mut misfits = Vec::new();
    for row in &rows[1..] {
        assert_eq!(row.len(), columns.len(), "{row:?}");
        misfits.extend(columns.iter().zip(row).filter_map(|(column, cell)| misfit(column, cell)));
    }
    // The primary key: no two rows are one.
    let key = description["tableSchema"]["primaryKey"].as_str().unwrap();
    let at = titles.iter().position(|title| *title == key).unwrap();
    let mut keys: Vec<&String> = rows[1..].iter().map(|row| &row[at]).collect();
    keys.sort();
    keys.dedup();
    assert_eq!(keys.len(), rows.len() - 1);
    misfits
}

#[test]
fn every_row_fits_the_description() {
    for doc in [cast(POND), pond()] {
        let table = written(&doc, readings);
        assert_eq!(misfits(&table, &sidecar("pond.csv")), Vec::<String>::new());
        assert_eq!(rows(&table).len() - 1, doc.entries.len(), "readings in and out");
    }
}

#[test]
fn the_check_of_the_description_finds_what_does_not_fit() {
    let table = written(&pond(), readings);
    for (from, to) in [
        (",down,", ",sideways,"),
        (",true,", ",yes,"),
        ("\r\n2,", "\r\nx,"),
        (",0.2,", ",deep,"),
        ("left_out", "lost"),
    ] {
        assert!(table.contains(from), "{from}: {table}");
        let spoilt = table.replacen(from, to, 1);
        assert!(!misfits(&spoilt, &sidecar("pond.csv")).is_empty(), "{to}");
    }
}

#[test]
fn decisions_corrections_and_doubts_stand_beside_the_reading() {
    let rows = rows(&written(&pond(), readings));
    let column = |name: &str| rows[0].iter().position(|head| head == name).unwrap();
    let at = |row: usize, name: &str| rows[row][column(name)].as_str();
    assert_eq!((at(2, "water_temp_c"), at(2, "note_temp_written")), ("23.2", "23.5"));
    assert_eq!((at(1, "depth_m"), at(1, "note_mark_m"), at(1, "note")), ("", "0", "corrected;above_water"));
    assert_eq!((at(4, "used"), at(4, "note")), ("false", "left_out;corrected"));
    assert_eq!((at(5, "flag"), at(5, "note")), ("4", "kept;corrected;doubt_range"));
    assert_eq!((at(5, "depth_m"), at(5, "note_mark_m")), ("0.7", "1"));
    assert_eq!((at(6, "note"), at(6, "note_depth_written")), ("depth_changed;corrected;above_water", "1.0"));
    assert_eq!((at(8, "water_temp_c"), at(8, "flag"), at(8, "used")), ("", "9", "false"));
    assert_eq!(at(1, "lake"), "Quillet Pond, north");
}

#[test]
fn the_reader_takes_the_table_back() {
    let doc = cast(POND);
    let table = written(&doc, readings);
    let back = read(table.as_bytes(), &Default::default());
    assert!(matches!(back.outcome, Outcome::Understood | Outcome::Noticed), "{:?}", back.question);
    assert_eq!(back.entries.len(), doc.entries.len());
    for (before, after) in doc.entries.iter().zip(&back.entries) {
        assert_eq!(before.depth.current(), after.depth.current());
        assert_eq!(before.temp.current(), after.temp.current());
        assert_eq!(before.leg, after.leg);
    }
}

#[test]
fn oxygen_and_open_ways_come_back_too() {
    let with_oxygen =
        "Depth (m)\tTemp (°C)\tOxygen (mg/L)\n0\t18.1\t8.6\n1\t18.0\t8.5\n2\t16.2\t8.4\n3\t12.5\t3.1\n";
    let mut doc = cast(with_oxygen);
    for entry in &mut doc.entries {
        entry.leg = LegDoc::Up;
    }
    let table = written(&doc, readings);
    assert_eq!(misfits(&table, &sidecar("a.csv")), Vec::<String>::new());
    let back = read(table.as_bytes(), &Default::default());
    assert_eq!(back.entries.len(), 4);
    for (before, after) in doc.entries.iter().zip(&back.entries) {
        assert_eq!((before.leg, before.temp.current()), (after.leg, after.temp.current()));
        assert_eq!(before.oxygen.as_ref().unwrap().current(), after.oxygen.as_ref().unwrap().current());
    }
}

#[test]
fn texts_of_a_group_are_no_formulas() {
    let mut doc = pond();
    doc.water = "=HYPERLINK(\"http://x\")".to_owned();
    doc.group = "@C".to_owned();
    doc.entries[1].temp.written = "=1+1".to_owned();
    for table in [written(&doc, readings), written(&doc, quality)] {
        for cell in rows(&table).iter().flatten() {
            let is_number = cell.parse::<f64>().is_ok();
            assert!(is_number || !cell.starts_with(['=', '+', '-', '@', '\t', '\r']), "{cell}");
        }
    }
}

#[test]
fn the_record_of_quality_counts_every_reading() {
    let doc = pond();
    let rows = rows(&written(&doc, quality));
    let value = |item: &str| {
        let row = rows.iter().find(|row| row[1] == item).unwrap_or_else(|| panic!("{item}: {rows:?}"));
        row[2].parse::<f64>().unwrap()
    };
    let flags = ["flag_1_pass", "flag_2_not_evaluated", "flag_3_suspect", "flag_4_fail", "flag_9_missing"];
    let counted: f64 = flags.iter().map(|flag| value(flag)).sum();
    assert_eq!((counted, value("written_down")), (12.0, 12.0));
    assert_eq!((value("left_out_by_a_person"), value("kept_by_a_person")), (1.0, 1.0));
    assert_eq!(value("changed_by_a_person"), 2.0);
    assert_eq!(value("depth_zero_above_water"), 0.3);
    // Methods 4: lakes fail outside −0.5 to 40 °C, a spike beside its neighbours is suspect from 0.5 and fails from 1.0 °C.
    assert_eq!((value("gross_range_fail_below"), value("gross_range_fail_above")), (-0.5, 40.0));
    assert_eq!((value("neighbour_spike_suspect_above"), value("neighbour_spike_fail_above")), (0.5, 1.0));
    assert!(rows.iter().any(|row| row[1] == "probe_checked" && row[2] == "false"));
    assert!(rows.iter().all(|row| row.len() == 4 && !row[3].contains('%')));
}
