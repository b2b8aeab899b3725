//! What the program prints and how it ends.

use crate::opened::{Opened, finite};
use crate::render::Words;
use crate::science;
use layercast_core::certainty::{MOST_AT_ONCE, TRIALS};
use layercast_core::{
    Analysis, Cast, Metalimnion, Method, MixedLayer, State, Thermocline, WarmLayerToday, analyse,
};
use layercast_exchange::document::{
    CastDoc, CorrectedDoc, CorrectionDoc, CorrectionField, LegDoc, corrected, new_doc,
};
use serde_json::{Map, Value, json};

const USAGE: &str =
    "analyse FILE [--lang en|es] [--trials NUMBER] [--correct KIND:FIELD=VALUE[,FIELD=VALUE]] …";

/// Reads the file that the arguments name. Returns what goes to standard output, what goes to standard error, and the
/// exit code: 0 with an analysis, 2 when a question comes first, 1 for an error.
pub fn run(arguments: &[&str]) -> (String, String, u8) {
    let Some(Asked { file, lang, trials, corrections }) = asked(arguments) else {
        return (String::new(), USAGE.to_owned(), 1);
    };
    match Opened::file(file) {
        Ok(mut opened) => {
            if let Some(doc) = &mut opened.doc {
                doc.corrections = corrections;
            }
            (report(&opened, &Words::load(lang), trials).to_string(), String::new(), opened.code())
        }
        Err(error) => (String::new(), error, 1),
    }
}

/// What the arguments ask for.
struct Asked<'a> {
    file: &'a str,
    lang: &'a str,
    /// Trials behind `certainty`; 0: none.
    trials: u32,
    corrections: Vec<CorrectionDoc>,
}

fn asked<'a>(arguments: &[&'a str]) -> Option<Asked<'a>> {
    let (mut file, mut lang, mut trials, mut corrections) = (None, "en", TRIALS, Vec::new());
    let mut left = arguments.iter();
    while let Some(argument) = left.next() {
        match *argument {
            "--lang" => lang = left.next().copied().filter(|lang| matches!(*lang, "en" | "es"))?,
            "--trials" => trials = left.next()?.parse().ok().filter(|trials| *trials <= MOST_AT_ONCE)?,
            "--correct" => corrections.push(correction(left.next()?)?),
            name if file.is_none() && !name.starts_with("--") => file = Some(name),
            _ => return None,
        }
    }
    Some(Asked { file: file?, lang, trials, corrections })
}

/// "depth_zero:above_water=0.6", "slant:from=5,to=8,angle=12": a kind and its fields, as the document names them.
fn correction(text: &str) -> Option<CorrectionDoc> {
    let (kind, fields) = text.split_once(':')?;
    let mut one = CorrectionDoc::new(serde_json::from_value(json!(kind)).ok()?);
    for field in fields.split(',') {
        let (name, text) = field.split_once('=')?;
        let name: CorrectionField = serde_json::from_value(json!(name)).ok()?;
        one.fields.insert(name, name.typed(text));
    }
    Some(one)
}

/// Everything that was read and computed, all keys always present.
fn report(opened: &Opened, words: &Words, trials: u32) -> Value {
    let doc = opened.doc.as_ref();
    let CorrectedDoc { cast, outcomes, .. } = corrected(doc.unwrap_or(&new_doc("", "")));
    let analysis = doc.map(|_| analyse(&cast, &Method::default()));
    let mut report = Map::new();
    let mut put = |key: &str, value: Value| report.insert(key.to_owned(), value);
    put("outcome", json!(opened.outcome()));
    put("readings", doc.zip(analysis.as_ref()).map_or(json!([]), |(doc, found)| readings(doc, &cast, found)));
    let found = analysis.as_ref();
    put("profile", found.map_or(Value::Null, profile));
    put("pair_sd_c", json!(found.and_then(|found| found.pairs.s_c)));
    put("state", json!(found.map(|found| state(found.state))));
    put("thermocline", json!(found.and_then(|found| found.thermocline.as_ref()).map(thermocline)));
    put("metalimnion", json!(found.and_then(|found| found.metalimnion.as_ref()).map(metalimnion)));
    put("mixed_layer", json!(found.and_then(|found| found.mixed_layer.as_ref()).map(mixed_layer)));
    put(
        "mixed_layer_season",
        json!(found.and_then(|found| found.mixed_layer_season.as_ref()).map(mixed_layer)),
    );
    put("warm_layer_today", json!(found.and_then(|found| found.warm_layer_today.as_ref()).map(warm_layer)));
    put(
        "fastest_warming_m",
        json!(found.and_then(|found| found.fastest_warming.as_ref()).map(|t| t.value_m)),
    );
    put("certainty", found.map_or(Value::Null, |found| science::sure(&cast, found, trials)));
    put("rules", found.map_or(Value::Null, science::rules));
    put("spreads", found.map_or(Value::Null, science::spreads));
    put("stability", found.map_or(Value::Null, |found| science::mixing(&cast, found)));
    put("pairs", found.map_or(Value::Null, science::pairs));
    put("corrections", doc.map_or(Value::Null, |doc| science::corrections(&doc.corrections, &outcomes)));
    put("messages", opened.messages(words));
    Value::Object(report)
}

fn readings(doc: &CastDoc, cast: &Cast, found: &Analysis) -> Value {
    let rows =
        doc.entries.iter().zip(&cast.readings).zip(&found.checked).map(|((entry, reading), checked)| {
            json!({
                "depth_m": finite(reading.depth_m),
                "temp_c": reading.temp_c.and_then(finite),
                "leg": match entry.leg {
                    LegDoc::Down => "down",
                    LegDoc::Up => "up",
                    LegDoc::Unknown => "unknown",
                },
                "line": entry.line,
                "flag": checked.flag as u8,
                "used": checked.used,
            })
        });
    rows.collect()
}

fn profile(found: &Analysis) -> Value {
    let levels = found.profile.iter().map(|level| {
        json!({ "depth_m": level.depth_m, "temp_c": level.temp_c, "sd_c": level.sd_c, "legs": level.legs })
    });
    levels.collect()
}

fn state(state: State) -> &'static str {
    match state {
        State::Stratified => "stratified",
        State::Weak => "weak",
        State::Mixed => "mixed",
        State::Inverse => "inverse",
        State::Unstable => "unstable",
        State::TooFew => "too_few",
    }
}

fn thermocline(found: &Thermocline) -> Value {
    json!({
        "value_m": found.value_m,
        "span_top_m": found.span_top_m,
        "span_bottom_m": found.span_bottom_m,
        "in_one_piece": found.in_one_piece,
        "tellable": found.tellable,
    })
}

fn metalimnion(found: &Metalimnion) -> Value {
    json!({
        "top_m": found.top_m,
        "top_low_m": found.top_low_m,
        "top_high_m": found.top_high_m,
        "bottom_m": found.bottom_m,
        "bottom_low_m": found.bottom_low_m,
        "bottom_high_m": found.bottom_high_m,
        "cut_off": found.cut_off,
    })
}

fn mixed_layer(found: &MixedLayer) -> Value {
    match found {
        MixedLayer::At { value_m, low_m, high_m, .. } => {
            json!({ "value_m": value_m, "low_m": low_m, "high_m": high_m })
        }
        MixedLayer::AtLeast { at_least_m } => json!({ "at_least_m": at_least_m }),
    }
}

fn warm_layer(found: &WarmLayerToday) -> Value {
    json!({
        "value_m": found.value_m,
        "span_top_m": found.span_top_m,
        "span_bottom_m": found.span_bottom_m,
        "top_m": found.top_m,
        "bottom_m": found.bottom_m,
    })
}
