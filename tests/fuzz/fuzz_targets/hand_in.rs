//! Any bytes as something handed in: opened or refused with a reason, one row for each thing, the same after writing.

#![no_main]

use layercast_lesson::class::import::{Counts, Dropped, import};
use layercast_lesson::class::{Class, look};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    layercast_lesson::hand_in::fuzz_hand_in(bytes);
    let (class, rows) = import(&Class::new("", None), &[Dropped { name: "", bytes }]);
    assert!(!rows.is_empty() && Counts::of(&rows).all() == rows.len());
    let _ = look(&class, None);
    assert_eq!(Class::from_json(&class.to_json()).as_ref(), Ok(&class));
});
