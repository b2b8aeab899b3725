//! A record of a cast's quality for those who keep data: the probe's check and other corrections, duplicates, limits,
//! method, flags. Differences are in °C: temperatures in °C have no true zero, so shares of them mean nothing.

use super::Told;
use super::csv::{Cell, Csv};
use crate::document::{CorrectionDoc, SwitchDoc, content_id};
use layercast_core::cast::corrections::Outcome;
use layercast_core::cast::gross_range::LAKE as RANGE;
use layercast_core::cast::inversion::{FAIL_KG_M3, SUSPECT_KG_M3};
use layercast_core::cast::pairs::{CABLE_WOBBLE_M, REPEAT_C};
use layercast_core::cast::spike::LAKE as SPIKE;
use layercast_core::{Density, Flag, RangesFrom};
use serde::Serialize;

/// The record as a table: part, item, value, unit.
pub fn quality(told: Told) -> String {
    let mut record = Record(Csv::new());
    record.line("part", "item", Cell::text("value"), "unit");
    of_cast(&mut record, told);
    of_readings(&mut record, told);
    of_corrections(&mut record, told);
    of_duplicates(&mut record, told);
    of_limits(&mut record);
    of_method(&mut record, told);
    record.0.finish()
}

struct Record(Csv);

impl Record {
    fn line(&mut self, part: &str, item: &str, value: Cell, unit: &str) {
        self.0.row(&[Cell::text(part), Cell::text(item), value, Cell::text(unit)]);
    }

    fn number(&mut self, part: &str, item: &str, value: Option<f64>, unit: &str) {
        self.line(part, item, Cell::maybe(value), unit);
    }

    fn count(&mut self, part: &str, item: &str, count: usize) {
        self.number(part, item, Some(count as f64), "");
    }

    fn text(&mut self, part: &str, item: &str, text: &str) {
        self.line(part, item, Cell::text(text), "");
    }
}

fn of_cast(record: &mut Record, told: Told) {
    record.text("cast", "lake", &told.doc.water);
    record.text("cast", "group", &told.doc.group);
    record.text("cast", "short_name", content_id(told.doc).get(..8).unwrap_or_default());
    record.number("cast", "line_went_slack_at", told.doc.bed_m, "m");
}

fn of_readings(record: &mut Record, told: Told) {
    let entries = &told.doc.entries;
    let checked = &told.analysis.checked;
    let switched = |to: SwitchDoc| entries.iter().filter(|entry| entry.switch == to).count();
    let changed =
        |entry: &&crate::document::Entry| entry.temp.settled.is_some() || entry.depth.settled.is_some();
    record.count("readings", "written_down", entries.len());
    record.count("readings", "used", checked.iter().filter(|checked| checked.used).count());
    record.count("readings", "left_out_by_a_person", switched(SwitchDoc::Off));
    record.count("readings", "kept_by_a_person", switched(SwitchDoc::Kept));
    record.count("readings", "changed_by_a_person", entries.iter().filter(changed).count());
    let open = entries.iter().zip(checked);
    let open =
        open.filter(|(entry, checked)| entry.switch == SwitchDoc::Auto && checked.doubt.is_some()).count();
    record.count("readings", "still_doubted", open);
    for (flag, name) in [
        (Flag::Pass, "flag_1_pass"),
        (Flag::NotEvaluated, "flag_2_not_evaluated"),
        (Flag::Suspect, "flag_3_suspect"),
        (Flag::Fail, "flag_4_fail"),
        (Flag::Missing, "flag_9_missing"),
    ] {
        record.count("readings", name, checked.iter().filter(|checked| checked.flag == flag).count());
    }
}

/// Every correction with its fields as typed and what it did; without one of the probe, that none was made is told.
fn of_corrections(record: &mut Record, told: Told) {
    let is_probe = |doc: &&CorrectionDoc| doc.kind == crate::document::CorrectionKind::Probe;
    let probe = told.doc.corrections.iter().find(is_probe);
    record.text("correction", "probe_checked", if probe.is_some() { "true" } else { "false" });
    for (i, doc) in told.doc.corrections.iter().enumerate() {
        let kind = word(&doc.kind);
        for (field, typed) in &doc.fields {
            let value = typed.value.map_or_else(|| Cell::text(typed.text.as_str()), Cell::Number);
            record.line("correction", &format!("{kind}_{}", word(field)), value, "");
        }
        let (said, largest) = match told.outcomes.get(i).copied().flatten() {
            Some(Outcome::Done { largest, .. }) => ("applied", Some(largest)),
            Some(Outcome::Refused(_)) => ("refused", None),
            None => ("waits_for_a_field", None),
        };
        record.text("correction", &kind, said);
        record.number("correction", &format!("{kind}_changes_at_most"), largest, "m or °C");
    }
}

fn of_duplicates(record: &mut Record, told: Told) {
    let pairs = &told.analysis.pairs;
    record.count("duplicates", "depths_read_twice", pairs.count);
    record.number("duplicates", "mean_of_down_minus_up", pairs.mean_c, "°C");
    record.number("duplicates", "mean_of_its_size", pairs.mean_abs_c, "°C");
    record.number("duplicates", "largest_size", pairs.max_abs_c, "°C");
    record.number("duplicates", "standard_deviation_of_one_reading", pairs.s_c, "°C");
    record.number("duplicates", "repeatability_limit_95_percent", pairs.repeatability_c, "°C");
    record.text("duplicates", "ways_differ_systematically", if pairs.systematic { "true" } else { "false" });
    record.number("duplicates", "standard_deviation_taken_for_ranges", Some(pairs.s_used_c), "°C");
}

fn of_limits(record: &mut Record) {
    record.number("limits", "gross_range_fail_below", Some(RANGE.fail_c.0), "°C");
    record.number("limits", "gross_range_fail_above", Some(RANGE.fail_c.1), "°C");
    record.number("limits", "gross_range_suspect_below", Some(RANGE.suspect_c.0), "°C");
    record.number("limits", "gross_range_suspect_above", Some(RANGE.suspect_c.1), "°C");
    record.number("limits", "neighbour_spike_suspect_above", Some(SPIKE.suspect_c), "°C");
    record.number("limits", "neighbour_spike_fail_above", Some(SPIKE.fail_c), "°C");
    record.number("limits", "density_inversion_suspect_above", Some(SUSPECT_KG_M3), "kg/m3");
    record.number("limits", "density_inversion_fail_above", Some(FAIL_KG_M3), "kg/m3");
    record.number("limits", "read_a_pair_again_above", Some(REPEAT_C), "°C");
    record.number("limits", "read_a_pair_again_plus_slope_times", Some(CABLE_WOBBLE_M), "m");
}

fn of_method(record: &mut Record, told: Told) {
    let method = &told.analysis.method;
    record.number("method", "mixed_layer_reference_depth", Some(method.reference_m), "m");
    record.number("method", "mixed_layer_temperature_step", Some(method.mixed_drop_c), "°C");
    record.number("method", "steep_from", Some(method.steep_c_per_m), "°C/m");
    let density = match method.density {
        Density::Tanaka => "Tanaka 2001",
        Density::TanakaSalt { .. } => "Tanaka 2001 with salt by EOS-80",
        Density::Kell => "Kell 1975",
        Density::Eos80 { .. } => "EOS-80",
        Density::ChenMillero { .. } => "Chen and Millero 1986",
    };
    record.text("method", "density", density);
    record.number("method", "last_place_written", Some(told.doc.digit_c).filter(|digit| *digit > 0.0), "°C");
    match told.analysis.ranges_from {
        RangesFrom::Propagated => record.text("method", "ranges", "law of propagation of uncertainty"),
        RangesFrom::Trials { count } => record.count("method", "ranges_by_seeded_trials", count as usize),
    }
    record.text("method", "flags", "QARTOD temperature and salinity 2.0, doi 10.7289/V5V40SD4");
}

/// The word an enum is stored as.
fn word(of: &impl Serialize) -> String {
    let value = serde_json::to_value(of).ok();
    value.as_ref().and_then(|value| value.as_str()).unwrap_or_default().to_owned()
}
