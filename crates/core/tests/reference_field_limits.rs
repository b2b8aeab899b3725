//! Published field limits against our defaults.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::table;
use layercast_core::Method;
use layercast_core::cast::{inversion, lag, pair_verdicts, pairs, probe_check};

#[test]
fn our_limits_are_the_published_ones() {
    let mut compared = 0;
    for row in table("check-values/field_limits.csv") {
        let from_memory = row.text("how").starts_with("memory");
        let (ours, recalled) = match row.text("what") {
            "field sensor accuracy (traceable sensor)" => (probe_check::GOOD_C, false),
            "agreement with the certified sensor at every comparison point" => (pair_verdicts::GOOD_C, false),
            "fewest verification points for a field sensor" => (probe_check::BATHS as f64, false),
            "time in the bath before reading" => (probe_check::BATH_WAIT_S, false),
            "bath readings averaged per point" => (probe_check::BATH_READINGS as f64, false),
            "value recorded in still water" => (probe_check::BATH_READINGS as f64, false),
            "time at depth before reading (temperature sensor)" => (lag::LEAST_WAIT_S, false),
            "thermal equilibrium at each new location" => (lag::LEAST_WAIT_S, false),
            "stabilised when readings agree within" => (probe_check::SETTLED_C, false),
            "temperature stabilisation criterion" => (probe_check::SETTLED_C, false),
            "thermometer acceptance at two points (older rule)" => (probe_check::CLASS_C, false),
            "thermometer in ice bath, school protocol" => (pairs::REPEAT_C, false),
            "go finer when a whole metre differs by" => (Method::default().steep_c_per_m, false),
            "national lake survey: metalimnion" => (Method::default().steep_c_per_m, true),
            "density inversion tolerance" => (inversion::FAIL_KG_M3, true),
            _ => continue, // practice we have no number for
        };
        assert_eq!(ours, row.sure("value"), "{}", row.text("what"));
        assert_eq!(from_memory, recalled, "{}: a number recalled is not told as one read", row.text("what"));
        compared += 1;
    }
    assert_eq!(compared, 15);
}
