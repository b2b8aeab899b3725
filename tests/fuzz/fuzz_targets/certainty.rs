//! Any cast with anything unsure: trials do not depend on their pieces, ranges are in order, shares are shares.

#![no_main]

mod given;

use given::Given;
use layercast_core::certainty::{Plan, Unsure, apply, summary, trials};
use layercast_core::{Method, analyse};
use libfuzzer_sys::fuzz_target;

fuzz_target!(|bytes: &[u8]| {
    let mut given = Given(bytes);
    let unsure = Unsure {
        offset_half_c: given.number(),
        mark_sd_m: given.number(),
        stretch_sd: given.number(),
        angle_half_deg: given.number(),
        between_marks: given.byte() % 2 == 1,
    };
    let seed = given.byte().into();
    let cast = given.cast(100);
    let mut analysis = analyse(&cast, &Method::default());
    let plan = Plan::new(&cast, &analysis, &unsure);
    let drawn = trials(&plan, seed, 0, 30);
    assert_eq!(drawn.len(), 30 * plan.width());
    let pieces: Vec<f64> =
        [(0, 7), (7, 23)].into_iter().flat_map(|(from, count)| trials(&plan, seed, from, count)).collect();
    assert!(drawn.iter().zip(&pieces).all(|(p, q)| p.to_bits() == q.to_bits()));
    let found = summary(&plan, &drawn);
    for ranged in &found.depths {
        let ends: Vec<f64> = [ranged.low_m, ranged.median_m, ranged.high_m].into_iter().flatten().collect();
        assert!(ends.iter().all(|z| z.is_finite()) && ends.is_sorted(), "{ranged:?}");
        assert!((0.0..=1.0).contains(&ranged.beyond_share) && (0.0..=1.0).contains(&ranged.none_share));
        assert!(ranged.value_m.is_none_or(f64::is_finite));
    }
    for (depth, shares) in &found.shares {
        let sum = shares.iter().map(|share| share.share).sum::<f64>();
        let none = found.of(*depth).map_or(0.0, |ranged| ranged.none_share);
        assert!((sum + none - 1.0).abs() < 1e-9, "{depth:?}: {sum} and {none}");
    }
    apply(&mut analysis, &found);
});
