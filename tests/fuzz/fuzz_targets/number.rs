//! Any text as a number: what is read is finite, and a plain number reads as itself.

#![no_main]

use layercast_exchange::document::{typed_depth, typed_temp};
use layercast_exchange::number::quantity;
use libfuzzer_sys::fuzz_target;

fuzz_target!(|text: &str| {
    if let Some(quantity) = quantity(text) {
        assert!(quantity.value.is_finite() && quantity.to.is_none_or(f64::is_finite));
        assert!(quantity.decimals <= 12);
        let plain = format!("{:.*}", usize::from(quantity.decimals), quantity.value);
        assert!(layercast_exchange::number::quantity(&plain).is_some() || plain.len() > 200, "{plain}");
    }
    for settled in [typed_depth(text), typed_temp(text)] {
        assert_eq!(settled.text, text);
    }
});
