//! Any cast analysed by any method: every number promised is one, depths increase, ranges hold their values.

#![no_main]

mod given;

use given::Given;
use layercast_core::{Method, MixedLayer, State, analyse};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let mut given = Given(bytes);
    let method = Method {
        reference_m: given.number(),
        mixed_drop_c: given.number(),
        steep_c_per_m: given.number(),
        ..Method::default()
    };
    let cast = given.cast(255);
    let found = analyse(&cast, &method);
    assert_eq!(found.checked.len(), cast.readings.len());
    assert_eq!(found.steps.len(), found.profile.len().saturating_sub(1));
    assert!(found.profile.windows(2).all(|pair| pair[0].depth_m < pair[1].depth_m));
    for level in &found.profile {
        assert!([level.depth_m, level.temp_c, level.sd_c, level.density].into_iter().all(f64::is_finite));
        assert!(level.sd_c >= 0.0 && (1..=2).contains(&level.legs));
    }
    for step in &found.steps {
        assert!(
            [step.cooling_c_per_m, step.u_c_per_m, step.densing_kg_m3_per_m].into_iter().all(f64::is_finite)
        );
    }
    assert!(found.pairs.s_used_c.is_finite() && found.pairs.s_used_c >= 0.0);
    for told in [found.thermocline, found.fastest_warming].into_iter().flatten() {
        assert!(told.span_top_m <= told.value_m && told.value_m <= told.span_bottom_m);
        assert!(told.gradient_c_per_m.is_finite());
    }
    for mixed in [found.mixed_layer, found.mixed_layer_season].into_iter().flatten() {
        match mixed {
            MixedLayer::At { value_m, low_m, high_m, .. } => assert!(low_m <= value_m && value_m <= high_m),
            MixedLayer::AtLeast { at_least_m } => assert!(at_least_m.is_finite()),
        }
    }
    if let Some(steep) = found.metalimnion {
        assert!(steep.top_m < steep.bottom_m && steep.top_low_m <= steep.top_high_m);
    }
    assert!(found.rules.iter().filter_map(|rule| rule.value_m).all(f64::is_finite));
    if found.state == State::TooFew {
        assert!(found.thermocline.is_none() && found.mixed_layer.is_none());
    }
    assert_eq!(analyse(&cast, &found.method).method, found.method);
});
