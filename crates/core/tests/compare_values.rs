//! What a comparison says of differences whose numbers are known by hand.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, depths, smooth_lake_c};
use layercast_core::Level;
use layercast_core::compare::{
    Cause, Comparison, Known, LEAST_EXPLAINED, NotTried, Options, Pair, Recorded, Refusal, Side, Sun, Verdict,
};

/// Water of 22 over 8 °C, 8 m, every half metre, known to 0.1 °C, read by `read_c` of the depth of the mark.
fn side(read_c: impl Fn(f64) -> f64) -> Side {
    Side::bare(depths(17, 0.5).into_iter().map(|z| Level::bare(z, read_c(z), 0.1)).collect())
}

fn lake_c(z: f64) -> f64 {
    smooth_lake_c(z, 4.0, 0.8)
}

fn compared(a: &Side, b: &Side, options: Options) -> Comparison {
    Pair::new(a, b, &options).unwrap().comparison(&[])
}

fn found(b: impl Fn(f64) -> f64) -> Comparison {
    compared(&side(lake_c), &side(b), Options::default())
}

#[test]
fn an_offset_is_the_mean_difference_in_even_water() {
    let even = |c: f64| side(move |_| c);
    let found = compared(&even(11.0), &even(11.25), Options::default());
    let fit = found.fit(Cause::Offset).unwrap();
    close("value", fit.value, 0.25, 1e-12);
    // 17 differences, each known to 0.1·√2.
    close("u", fit.u, 0.1 * (2.0_f64 / 17.0).sqrt(), 1e-12);
    close("chance", found.chance_score, 17.0 * 0.0625 / 0.02, 1e-9);
    // Nothing left; 0.25²/(0.3² + u²) + ln(1 + 0.3²/u²).
    close("score", fit.score, 0.0625 / (0.09 + 0.02 / 17.0) + libm::log(1.0 + 0.09 * 17.0 / 0.02), 1e-9);
    assert_eq!((fit.explains, fit.at_limit, fit.slant_deg, fit.fade_m), (1.0, false, None, None));
    close("left", fit.rms_left_c, 0.0, 1e-12);
    close("rms", found.rms_c, 0.25, 1e-12);
    close("mean", found.mean_c, 0.25, 1e-12);
    assert_eq!(found.best, Some(Cause::Offset));
    assert_eq!((found.verdict, found.chance, found.recorded, found.heat), (None, None, None, None));
    for cause in [Cause::Zero, Cause::Stretch, Cause::MovedWater] {
        let tried = found.explanations.iter().find(|tried| tried.cause == cause).unwrap();
        assert_eq!(tried.fit, Err(NotTried::EvenWater));
    }
}

#[test]
fn each_cause_alone_is_found_with_its_size_and_sign() {
    for sign in [1.0, -1.0] {
        let zero = found(|z| lake_c(z + 0.15 * sign));
        close("zero", zero.fit(Cause::Zero).unwrap().value, 0.15 * sign, 0.005);
        let stretch = found(|z| lake_c(z * (1.0 + 0.05 * sign)));
        let fit = stretch.fit(Cause::Stretch).unwrap();
        close("stretch", fit.value, 0.05 * sign, 0.002);
        // cos 17.75° = 1/1.05.
        close("slant", fit.slant_deg.unwrap(), 17.75, 0.4);
        let warm = found(|z| lake_c(z) + 0.6 * sign * libm::exp(-z / 0.8));
        let fit = warm.fit(Cause::WarmTop).unwrap();
        close("warm top", fit.value, 0.6 * sign, 1e-4);
        close("fade", fit.fade_m.unwrap(), 0.8, 1e-3);
        let moved = found(|z| lake_c(z - 0.4 * sign * libm::sin(std::f64::consts::PI * z / 8.5)));
        close("moved water", moved.fit(Cause::MovedWater).unwrap().value, 0.4 * sign, 0.03);
        for (found, cause) in [
            (&zero, Cause::Zero),
            (&stretch, Cause::Stretch),
            (&warm, Cause::WarmTop),
            (&moved, Cause::MovedWater),
        ] {
            assert_eq!(found.best, Some(cause));
            let fit = found.fit(cause).unwrap();
            assert!(fit.explains > 0.97, "{cause:?} explains {}", fit.explains);
            assert!(fit.rms_left_c < 0.2 * found.rms_c);
            for ((at, predicted), left) in found.shared.iter().zip(&fit.predicted_c).zip(&fit.left_c) {
                close("what is left", at.difference_c - predicted, *left, 1e-12);
            }
        }
    }
}

#[test]
fn a_far_zero_is_found_from_far() {
    let far = found(|z| lake_c(z + 1.2));
    close("zero", far.fit(Cause::Zero).unwrap().value, 1.2, 0.15);
    let beyond = found(|z| lake_c(z + 2.5));
    let fit = beyond.fit(Cause::Zero).unwrap();
    assert!(fit.at_limit && fit.value == 1.5, "{}", fit.value);
}

#[test]
fn a_steep_reading_is_known_less_well_for_its_mark() {
    let found = compared(&side(lake_c), &side(lake_c), Options { mark_sd_m: 0.05, ..Options::default() });
    let at = |i: usize| found.shared[i].sd_c;
    close("on top", at(0), 0.02_f64.sqrt(), 1e-3);
    // 14/(4·0.8) = 4.4 °C/m at 4 m, 4.2 between marks half a metre apart; two marks off by 0.05 m.
    close("in the layer", at(8), (0.02 + 2.0 * (4.24_f64 * 0.05).powi(2)).sqrt(), 2e-3);
}

#[test]
fn sun_can_or_cannot_have_done_it() {
    let minutes = |minutes: f64| Options { minutes_apart: Some(minutes), ..Options::default() };
    let offset = compared(&side(lake_c), &side(|z| lake_c(z) + 0.3), minutes(60.0)).heat.unwrap();
    // 0.3 °C through 8 m in an hour: 4.18e6 · 0.3 · 8 / 3600.
    close("through all", offset.power_w_m2, 2_786.7, 0.1);
    assert_eq!(offset.sun, Sun::Cannot);
    // Trapezoids: the end depths stand for a quarter metre, the others for half a metre, each difference to 0.1·√2
    // and marks; half the water is steep.
    assert!(offset.u_w_m2 > 4.18e6 * 0.5 * 0.02_f64.sqrt() * 15.5_f64.sqrt() / 3_600.0, "{}", offset.u_w_m2);
    assert!(offset.u_w_m2 < 400.0, "{}", offset.u_w_m2);
    let warm = compared(&side(lake_c), &side(|z| lake_c(z) + 0.6 * libm::exp(-z / 0.8)), minutes(120.0));
    let fit = warm.fit(Cause::WarmTop).unwrap();
    let heat = fit.heat.unwrap();
    // The heat is in proportion to the warming, and so is what is unsure of it.
    close("unsure", heat.u_w_m2 / heat.power_w_m2, fit.u / fit.value, 1e-9);
    close("near the top", heat.power_w_m2, 278.7, 0.3);
    assert_eq!(heat.sun, Sun::Could);
    assert!(warm.fit(Cause::Offset).unwrap().heat.is_none());
    // The readings alone, half a metre apart, make it three in a hundred more.
    close("from the readings", warm.heat.unwrap().power_w_m2, 287.7, 0.1);
    let cooler = compared(&side(|z| lake_c(z) + 0.3), &side(lake_c), minutes(60.0)).heat.unwrap();
    assert_eq!((cooler.sun, cooler.power_w_m2 < -2_000.0), (Sun::Cooled, true));
    let before = compared(&side(|z| lake_c(z) + 0.3), &side(lake_c), minutes(-60.0)).heat.unwrap();
    assert_eq!(before, offset);
}

#[test]
fn little_water_in_common_is_refused_however_deep_it_lies() {
    let side = |step_m: f64| {
        Side::bare(
            (0..8).map(|i| 10.0 + step_m * f64::from(i)).map(|z| Level::bare(z, lake_c(z), 0.1)).collect(),
        )
    };
    let tried = |step_m: f64| Pair::new(&side(step_m), &side(step_m), &Options::default()).map(|_| ());
    // 1.4 m and 1.5 m: at least 1.5 m is wanted.
    assert_eq!(tried(0.2), Err(Refusal::TooLittleWater));
    assert_eq!(tried(1.5 / 7.0), Ok(()));
}

#[test]
fn water_of_another_shape_gets_no_cause_by_itself() {
    // A sharp layer beside a broad one: neither a probe nor a cable does that.
    let pair = Pair::new(
        &side(|z| smooth_lake_c(z, 4.0, 0.3)),
        &side(|z| smooth_lake_c(z, 4.0, 3.0)),
        &Options::default(),
    );
    let pair = pair.unwrap();
    let found = pair.comparison(&pair.chance(0, 200));
    let best = found.fit(found.best.unwrap()).unwrap();
    assert!(best.explains < LEAST_EXPLAINED && best.leaves_more_than_chance == Some(true), "{best:?}");
    assert_eq!(found.verdict, Some(Verdict::NoneAlone));
    // Without a threshold nothing is said.
    assert_eq!(pair.comparison(&[]).verdict, None);
}

#[test]
fn what_records_explain_is_taken_off_first() {
    let a = Side {
        known: Known { ice_c: Some(-0.1), deeper_m: Some(0.0), stretch: None },
        ..side(|z| lake_c(z) - 0.1)
    };
    let b = Side {
        known: Known { ice_c: Some(0.3), deeper_m: None, stretch: None },
        ..side(|z| lake_c(z) + 0.3)
    };
    let pair = Pair::new(&a, &b, &Options::default()).unwrap();
    let found = pair.comparison(&pair.chance(0, 200));
    assert_eq!(found.verdict, Some(Verdict::Chance));
    let Recorded { offset_c, deeper_m, stretch, rms_before_c, rms_after_c } = found.recorded.unwrap();
    close("offset", offset_c.unwrap(), 0.4, 1e-12);
    assert_eq!((deeper_m, stretch), (Some(0.0), None));
    close("before", rms_before_c.unwrap(), 0.4, 1e-12);
    close("after", rms_after_c, 0.0, 1e-12);
    // Unrecorded, it is an offset; a recorded zero says nothing against it.
    let bare = |side: &Side| Side { known: Known::default(), ..side.clone() };
    let pair = Pair::new(&bare(&a), &bare(&b), &Options::default()).unwrap();
    let found = pair.comparison(&pair.chance(0, 200));
    assert_eq!(found.verdict, Some(Verdict::Cause(Cause::Offset)));
    assert_eq!(found.fit(Cause::Offset).unwrap().leaves_more_than_chance, Some(false));
    assert_eq!(found.fit(Cause::WarmTop).unwrap().leaves_more_than_chance, Some(true));
    let chance = found.chance.unwrap();
    assert!(chance.trials == 200 && chance.false_alarms <= 0.03);
}

#[test]
fn a_checked_gear_is_blamed_less() {
    let checked = Known { ice_c: Some(0.0), deeper_m: Some(0.0), stretch: Some(1.0) };
    let score = |known: Known, cause: Cause, b: &dyn Fn(f64) -> f64| {
        let (a, b) = (Side { known, ..side(lake_c) }, Side { known, ..side(b) });
        let found = compared(&a, &b, Options::default());
        found.fit(cause).unwrap().score
    };
    let one_side = Known { ice_c: Some(0.0), ..Known::default() };
    let warmer = |z: f64| lake_c(z) + 0.5;
    assert!(score(checked, Cause::Offset, &warmer) > score(Known::default(), Cause::Offset, &warmer) + 5.0);
    close(
        "both sides checked is what counts",
        score(one_side, Cause::Offset, &warmer),
        score(checked, Cause::Offset, &warmer),
        1e-9,
    );
    let deeper = |z: f64| lake_c(z + 0.3);
    assert!(score(checked, Cause::Zero, &deeper) > score(Known::default(), Cause::Zero, &deeper) + 5.0);
    let longer = |z: f64| lake_c(z * 1.08);
    assert!(score(checked, Cause::Stretch, &longer) > score(Known::default(), Cause::Stretch, &longer) + 5.0);
    close(
        "warmth is no gear",
        score(checked, Cause::WarmTop, &warmer),
        score(Known::default(), Cause::WarmTop, &warmer),
        1e-9,
    );
}

#[test]
fn usual_sizes() {
    let sizes = Cause::ALL.map(|cause| (cause.usual(false), cause.usual(true)));
    assert_eq!(sizes, [(0.3, 0.1), (0.2, 0.05), (0.05, 0.01), (1.0, 1.0), (0.5, 0.5)]);
}

#[test]
fn what_was_not_read_is_not_tried() {
    let deep =
        Side::bare(depths(10, 0.5).into_iter().map(|z| Level::bare(z + 2.0, lake_c(z + 2.0), 0.1)).collect());
    let found = compared(&side(lake_c), &deep, Options::default());
    assert_eq!(found.explanations[3].fit, Err(NotTried::TopNotRead));
    let down_to =
        |n| Side::bare(depths(n, 0.5).into_iter().map(|z| Level::bare(z, lake_c(z), 0.1)).collect());
    let refused = |a: &Side, b: &Side| Pair::new(a, b, &Options::default()).err();
    assert_eq!(refused(&down_to(3), &side(lake_c)), Some(Refusal::TooFewDepths));
    assert_eq!(refused(&down_to(4), &side(lake_c)), None);
    // Heavier on top, and falling below: no layer rocks, but depths still tell.
    let upside = |z: f64| 8.0 + 0.5 * z;
    let found = compared(&side(upside), &side(upside), Options::default());
    assert_eq!(found.explanations[4].fit, Err(NotTried::NoLayer));
    assert!(found.fit(Cause::Zero).is_some());
}

#[test]
fn water_under_ice_can_be_compared() {
    let ice_c = |z: f64| 3.8 - 3.5 * libm::exp(-z / 1.2);
    let found = compared(&side(ice_c), &side(|z| ice_c(z + 0.3)), Options::default());
    close("zero", found.fit(Cause::Zero).unwrap().value, 0.3, 0.05);
    assert!(found.fit(Cause::MovedWater).is_some(), "warmer water is heavier below 4 °C");
}

#[test]
fn other_marks_compare_between() {
    let coarse = Side::bare(
        depths(8, 1.0).into_iter().map(|z| Level::bare(z + 0.25, lake_c(z + 0.25) + 0.3, 0.1)).collect(),
    );
    let found = compared(&side(lake_c), &coarse, Options::default());
    assert_eq!(found.shared.len(), 8);
    assert_eq!((found.best, found.thinned), (Some(Cause::Offset), false));
    close("offset", found.fit(Cause::Offset).unwrap().value, 0.3, 0.03);
}
