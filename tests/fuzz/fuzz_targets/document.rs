//! Any text as a cast's document: refused with a reason, or opened and written back the same.

#![no_main]

use layercast_core::{Method, analyse};
use layercast_exchange::document::{cell_doubts, content_id, from_json, to_cast, to_json};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    let Ok(doc) = from_json(text) else { return };
    let cast = to_cast(&doc);
    assert_eq!(cast.readings.len(), doc.entries.len());
    assert_eq!(content_id(&doc).len(), 16);
    for doubt in cell_doubts(&doc) {
        assert!(doubt.entries.iter().all(|at| *at < doc.entries.len()));
    }
    analyse(&cast, &Method::default());
    let written = to_json(&doc);
    assert_eq!(from_json(&written).map(|doc| to_json(&doc)), Ok(written));
});
