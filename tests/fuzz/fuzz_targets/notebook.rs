//! Any bytes as a notebook's JSON: refused with a reason, or opened, looked at and written back the same.

#![no_main]

use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    layercast_lesson::document::fuzz_notebook_json(bytes);
});
