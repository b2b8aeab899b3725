//! Any bytes as a table, and one answer to each of its questions in turn: never a panic, never a reading out of nowhere.

#![no_main]

use layercast_core::{Method, analyse};
use layercast_exchange::document::{CastDoc, Choices, cell_doubts, content_id, from_json, to_cast, to_json};
use layercast_exchange::read::{Outcome, decode, read};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    look(bytes, &Choices::default(), 4);
});

fn look(bytes: &[u8], choices: &Choices, questions: u8) {
    let found = read(bytes, choices);
    let is_read = matches!(found.outcome, Outcome::Understood | Outcome::Noticed);
    assert!(is_read || found.entries.is_empty());
    assert_eq!(found.question.is_some(), found.outcome == Outcome::Question);
    assert!(found.rows.len() <= found.row_count.min(200));
    let doc = CastDoc::from_read(&found, &decode(bytes), choices);
    let cast = to_cast(&doc);
    assert_eq!(cast.readings.len(), doc.entries.len());
    for entry in &doc.entries {
        assert!([entry.depth.value, entry.temp.value].into_iter().flatten().all(f64::is_finite));
        assert!(entry.line.is_some_and(|line| line >= 1));
    }
    for doubt in cell_doubts(&doc) {
        assert!(doubt.entries.iter().all(|at| *at < doc.entries.len()));
        assert!(doubt.proposals.iter().all(|proposal| proposal.value.is_finite()));
    }
    assert_eq!(content_id(&doc).len(), 16);
    assert!(from_json(&to_json(&doc)).as_ref() == Ok(&doc));
    let analysis = analyse(&cast, &Method::default());
    assert_eq!(analysis.checked.len(), cast.readings.len());
    if let Some(question) = found.question.filter(|_| questions > 0) {
        // All answers of all questions would be hundreds of readings of one input; the input itself picks one.
        let pick = bytes
            .iter()
            .fold(usize::from(questions), |sum, byte| sum.wrapping_mul(31).wrapping_add(usize::from(*byte)));
        let ways = question.ways.len();
        if let Some((_, answer)) = question.ways.get(pick % ways.max(1)) {
            look(bytes, answer, questions - 1);
        }
    }
}
