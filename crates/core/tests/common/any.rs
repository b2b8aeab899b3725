//! Water and casts that laws are held over: plausible ones, and whatever a damaged file may hold.

use layercast_core::{Cast, Leg, Level, Reading, Switch};
use proptest::prelude::*;
use proptest::test_runner::RngSeed;

/// The same cases in every run; `PROPTEST_CASES` asks for more of them.
pub fn config() -> ProptestConfig {
    ProptestConfig {
        rng_seed: RngSeed::Fixed(20_261_126),
        failure_persistence: None,
        max_global_rejects: 100_000,
        ..ProptestConfig::default()
    }
}

/// Levels of a profile: strictly deeper, lake water, any spacing of quarter metres.
pub fn water() -> impl Strategy<Value = Vec<Level>> {
    prop::collection::vec((1_u32..8, 0_u32..300), 2..30).prop_map(|rows| {
        let mut quarters = 0;
        rows.into_iter()
            .map(|(step, t)| {
                quarters += step;
                Level::bare(f64::from(quarters) * 0.25, f64::from(t) / 10.0, 0.1)
            })
            .collect()
    })
}

/// Any number a damaged file may hold.
pub fn wild_number() -> impl Strategy<Value = f64> {
    prop_oneof![
        Just(f64::NAN),
        Just(f64::INFINITY),
        Just(f64::NEG_INFINITY),
        Just(1e308),
        Just(-1e308),
        Just(5e-324),
        Just(-0.0),
        Just(-69.34881),
        -3.0..45.0,
        (0_i32..20).prop_map(|n| f64::from(n) * 0.5),
        any::<f64>(),
    ]
}

/// A cast of such numbers.
pub fn wild_cast() -> impl Strategy<Value = Cast> {
    let leg = prop_oneof![Just(Leg::Down), Just(Leg::Up), Just(Leg::Unknown)];
    let switch = prop_oneof![4 => Just(Switch::Auto), 1 => Just(Switch::Off), 1 => Just(Switch::Kept)];
    let one = (wild_number(), prop::option::weighted(0.9, wild_number()), leg, switch);
    let readings = prop::collection::vec(one, 0..40).prop_map(|rows| -> Vec<Reading> {
        rows.into_iter()
            .map(|(depth_m, temp_c, leg, switch)| Reading { depth_m, temp_c, leg, switch })
            .collect()
    });
    (readings, wild_number(), prop::option::of(wild_number())).prop_map(|(readings, digit_c, bed_m)| Cast {
        readings,
        digit_c,
        bed_m,
    })
}

/// The same with every reading kept by a person, so that more of the wild ones are used.
pub fn wild_kept_cast() -> impl Strategy<Value = Cast> {
    wild_cast().prop_map(|mut cast| {
        cast.readings.iter_mut().for_each(|reading| reading.switch = Switch::Kept);
        cast
    })
}
