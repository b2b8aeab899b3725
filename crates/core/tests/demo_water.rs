//! The invented waters of the demonstration, each with what the rules were found to say when they were worked out a
//! second time in another language. No check from outside: the water and the numbers are ours.
//!
//! Long because most of it is readings.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, close_option, depths, one_series, reading, two_legs};
use layercast_core::{
    Analysis, Cast, Doubt, Flag, Leg, Method, MixedLayer, Rule, State, StateFacts, Thermocline, analyse,
};

/// Readings to 0.1 °C from the surface, going down and (unless empty) coming up.
struct Water {
    step_m: f64,
    down_c: &'static [f64],
    up_c: &'static [f64],
}

const SUMMER: Water = Water {
    step_m: 0.5,
    down_c: &[
        23.4, 23.4, 23.4, 23.3, 23.1, 22.8, 21.9, 20.2, 17.7, 15.4, 13.6, 12.3, 11.3, 10.6, 10.1, 9.7, 9.4,
        9.2, 9.0, 8.9,
    ],
    up_c: &[
        23.5, 23.4, 23.3, 23.3, 23.1, 22.7, 21.7, 19.9, 17.4, 15.2, 13.4, 12.1, 11.2, 10.5, 10.1, 9.7, 9.4,
        9.1, 9.0, 8.9,
    ],
};
const GENTLE: Water = Water {
    step_m: 0.5,
    down_c: &[
        17.5, 17.5, 17.4, 17.4, 17.4, 17.2, 16.9, 16.6, 16.2, 16.0, 15.6, 15.1, 14.9, 14.7, 14.7, 14.6, 14.5,
        14.5, 14.5, 14.4,
    ],
    up_c: &[
        17.6, 17.6, 17.6, 17.5, 17.2, 17.3, 17.0, 16.5, 16.3, 15.9, 15.4, 15.2, 14.9, 14.8, 14.6, 14.7, 14.4,
        14.5, 14.4, 14.5,
    ],
};
const CANNOT: Water = Water {
    step_m: 0.5,
    down_c: &[
        18.0, 18.0, 17.8, 17.8, 17.9, 17.6, 17.5, 17.3, 16.9, 17.1, 16.8, 16.4, 16.1, 15.8, 15.8, 15.5, 15.4,
        15.4, 15.3, 15.1,
    ],
    up_c: &[
        18.2, 18.1, 18.1, 18.0, 17.5, 17.8, 17.6, 17.1, 17.1, 16.9, 16.5, 16.6, 16.1, 15.9, 15.7, 15.7, 15.2,
        15.3, 15.2, 15.2,
    ],
};
const ICE: Water = Water {
    step_m: 0.5,
    down_c: &[
        0.4, 0.5, 0.9, 1.5, 2.3, 3.1, 3.5, 3.9, 4.0, 4.1, 4.1, 4.1, 4.1, 4.1, 4.2, 4.1, 4.2, 4.2, 4.3, 4.2,
    ],
    up_c: &[
        0.5, 0.6, 0.9, 1.6, 2.3, 3.1, 3.6, 3.8, 4.0, 4.1, 4.2, 4.1, 4.2, 4.1, 4.2, 4.2, 4.2, 4.0, 4.3, 4.2,
    ],
};
const OVERTURNED: Water = Water {
    step_m: 0.5,
    down_c: &[
        12.2, 12.2, 12.2, 12.2, 13.2, 13.1, 13.2, 13.1, 13.0, 13.1, 12.9, 13.0, 12.9, 12.8, 12.6, 12.5, 12.3,
        12.2, 12.0, 11.8,
    ],
    up_c: &[
        12.3, 12.2, 12.2, 12.2, 13.1, 13.1, 13.2, 13.0, 13.0, 13.1, 13.1, 13.1, 12.9, 12.8, 12.7, 12.5, 12.4,
        12.1, 11.9, 11.8,
    ],
};
const AUTUMN: Water = Water {
    step_m: 0.5,
    down_c: &[
        14.6, 14.5, 14.4, 14.5, 14.4, 14.4, 14.3, 14.4, 14.3, 14.3, 14.4, 14.4, 14.3, 14.3, 14.2, 14.2, 14.3,
        14.2, 14.1, 14.2,
    ],
    up_c: &[
        14.4, 14.5, 14.5, 14.4, 14.4, 14.5, 14.3, 14.4, 14.4, 14.3, 14.4, 14.4, 14.3, 14.2, 14.2, 14.2, 14.2,
        14.2, 14.1, 14.2,
    ],
};
const HOT_AFTERNOON: Water = Water {
    step_m: 0.5,
    down_c: &[
        24.2, 24.0, 22.8, 21.6, 21.5, 21.4, 21.4, 21.3, 21.3, 21.2, 21.2, 21.2, 21.2, 21.1, 21.1, 21.2, 21.1,
        21.0, 21.0, 21.0,
    ],
    up_c: &[
        24.2, 24.0, 22.8, 21.6, 21.5, 21.3, 21.5, 21.4, 21.4, 21.3, 21.2, 21.2, 21.2, 21.1, 21.1, 21.1, 21.1,
        20.9, 21.1, 21.1,
    ],
};
const TWO_LAYERS: Water = Water {
    step_m: 0.5,
    down_c: &[
        24.9, 24.5, 23.4, 22.8, 22.8, 22.7, 22.5, 22.2, 21.5, 20.6, 18.7, 16.3, 14.2, 12.7, 11.7, 11.3, 11.0,
        10.8, 10.9, 10.8,
    ],
    up_c: &[
        25.0, 24.6, 23.4, 23.0, 22.8, 22.7, 22.5, 22.3, 21.6, 20.5, 18.6, 16.4, 14.2, 12.6, 11.8, 11.3, 11.0,
        10.9, 10.8, 10.8,
    ],
};
const CUT_OFF: Water = Water {
    step_m: 0.5,
    down_c: &[23.5, 23.3, 23.4, 23.3, 23.1, 22.7, 22.1, 20.8, 18.5, 16.0, 14.4, 12.7, 11.6, 10.9, 10.1],
    up_c: &[23.4, 23.4, 23.3, 23.2, 23.0, 22.9, 22.0, 20.5, 18.2, 15.9, 13.9, 12.5, 11.3, 10.6, 10.2],
};
const ONE_LEG: Water = Water {
    step_m: 0.5,
    down_c: &[
        23.5, 23.4, 23.3, 23.3, 23.1, 22.7, 21.7, 19.9, 17.4, 15.2, 13.4, 12.1, 11.2, 10.5, 10.1, 9.7, 9.4,
        9.1, 9.0, 8.9,
    ],
    up_c: &[],
};
const DEEP: Water = Water {
    step_m: 0.5,
    down_c: &[
        22.4, 22.3, 22.3, 22.2, 22.2, 22.1, 22.2, 21.9, 21.8, 21.6, 21.4, 21.0, 20.5, 19.8, 18.9, 17.7, 16.4,
        14.9, 13.5, 12.1, 10.9, 9.9, 9.0, 8.5, 8.1, 7.7, 7.5, 7.4, 7.2, 7.3, 7.1, 7.0, 7.0, 6.8, 6.9, 6.8,
        6.8, 6.8, 6.7, 6.7, 6.8, 6.6, 6.6, 6.7, 6.6, 6.5, 6.6, 6.6, 6.5, 6.5, 6.5, 6.5, 6.3, 6.3, 6.3, 6.4,
        6.3, 6.3, 6.2, 6.2, 6.1,
    ],
    up_c: &[
        22.4, 22.4, 22.2, 22.4, 22.2, 22.2, 22.0, 22.0, 21.9, 21.6, 21.4, 21.0, 20.3, 19.8, 18.8, 17.7, 16.4,
        14.9, 13.4, 12.2, 10.8, 9.8, 9.1, 8.4, 8.0, 7.8, 7.5, 7.4, 7.1, 7.1, 7.0, 7.0, 6.9, 6.9, 7.0, 6.8,
        6.8, 7.0, 6.7, 6.7, 6.6, 6.7, 6.7, 6.6, 6.6, 6.4, 6.5, 6.5, 6.5, 6.3, 6.4, 6.4, 6.4, 6.4, 6.4, 6.3,
        6.2, 6.2, 6.3, 6.1, 6.1,
    ],
};
const POND: Water = Water {
    step_m: 0.25,
    down_c: &[24.4, 24.3, 24.1, 23.8, 22.8, 21.1, 20.0, 19.7, 19.6],
    up_c: &[24.4, 24.3, 24.2, 23.8, 22.7, 21.0, 20.0, 19.6, 19.4],
};

impl Water {
    fn cast(&self) -> Cast {
        let depths_m = depths(self.down_c.len(), self.step_m);
        if self.up_c.is_empty() {
            let rows: Vec<(f64, f64)> = depths_m.into_iter().zip(self.down_c.iter().copied()).collect();
            return one_series(&rows, 0.1);
        }
        two_legs(&depths_m, self.down_c, self.up_c, 0.1)
    }

    fn analysis(&self) -> Analysis {
        analyse(&self.cast(), &Method::default())
    }
}

/// (value, span top, span bottom, in one piece, tellable, °C per metre)
type Told = (f64, f64, f64, bool, bool, f64);

#[track_caller]
fn told(got: Option<Thermocline>, want: Option<Told>) {
    let round = |x: f64| (x * 1e6).round() / 1e6;
    let got = got.map(|t| {
        let g = round(t.gradient_c_per_m);
        (round(t.value_m), t.span_top_m, t.span_bottom_m, t.in_one_piece, t.tellable, g)
    });
    assert_eq!(got, want);
}

/// (top, its range, bottom, its range)
type Edges = (f64, (f64, f64), f64, (f64, Option<f64>));

#[track_caller]
fn edges(analysis: &Analysis, want: Option<Edges>) {
    let got = analysis
        .metalimnion
        .map(|m| (m.top_m, (m.top_low_m, m.top_high_m), m.bottom_m, (m.bottom_low_m, m.bottom_high_m)));
    assert_eq!(got, want);
}

/// (value, low, high)
#[track_caller]
fn mixed(got: Option<MixedLayer>, want: (f64, f64, f64)) {
    let Some(MixedLayer::At { value_m, low_m, high_m, .. }) = got else { panic!("{got:?}") };
    close("mixed layer", value_m, want.0, 1e-6);
    close("its shallower end", low_m, want.1, 1e-6);
    close("its deeper end", high_m, want.2, 1e-6);
}

/// s, pairs, mean difference, density gained.
#[track_caller]
fn numbers(analysis: &Analysis, s_c: f64, pairs: usize, mean_c: Option<f64>, gain: f64) {
    close("s", analysis.pairs.s_c.unwrap_or(0.1), s_c, 0.0005);
    assert_eq!(analysis.pairs.count, pairs);
    close_option("mean difference", analysis.pairs.mean_c, mean_c, 0.0005);
    close("density gained", analysis.facts.unwrap().density_gain, gain, 0.0001);
}

#[track_caller]
fn rules(analysis: &Analysis, want: [Option<f64>; 6]) {
    let order = [
        Rule::SteepestMiddle,
        Rule::DensestStep,
        Rule::TempDrop,
        Rule::DensityRise,
        Rule::FirstSteepTop,
        Rule::FirstSteepMiddle,
    ];
    assert_eq!(analysis.rules.iter().map(|r| r.rule).collect::<Vec<_>>(), order);
    for (got, want) in analysis.rules.iter().zip(want) {
        close_option(&format!("{:?}", got.rule), got.value_m, want, 1e-6);
    }
}

fn doubted(analysis: &Analysis) -> usize {
    analysis.checked.iter().filter(|c| c.doubt.is_some()).count()
}

#[test]
fn layered_in_summer() {
    let a = SUMMER.analysis();
    assert_eq!((a.state, doubted(&a)), (State::Stratified, 0));
    numbers(&a, 0.1, 20, Some(0.09), 2.3387);
    told(a.thermocline, Some((3.75, 3.5, 4.0, true, true, 5.0)));
    edges(&a, Some((2.5, (2.0, 2.5), 6.5, (6.0, Some(7.0)))));
    mixed(a.mixed_layer, (2.684211, 2.592004, 2.776417));
    rules(&a, [Some(3.75), Some(3.75), Some(2.684211), Some(2.16994), Some(2.5), Some(2.75)]);
    assert_eq!((a.warm_layer_today, a.mixed_layer_season, a.fastest_warming), (None, None, None));
    assert_eq!(a.warmest, Some((23.5, 0.0, Leg::Up)));
    assert_eq!(a.coldest, Some((8.9, 9.5, Leg::Down)));
    assert!(a.pairs.systematic, "one leg reads warmer nearly everywhere");
    let members: Vec<f64> = a.steps.iter().filter(|s| s.in_span).map(|s| s.top_m).collect();
    assert_eq!(members, [3.5]);
    assert_eq!(a.steps.iter().filter(|s| s.in_main_layer).count(), 8);
}

#[test]
fn gently_layered_in_late_spring() {
    let a = GENTLE.analysis();
    // 0.5032 kg/m³ by medians of the ends, just past 0.5: layered, yet no step reaches 1 °C per metre.
    assert_eq!(a.state, State::Stratified);
    numbers(&a, 0.082, 20, Some(-0.015), 0.5032);
    told(a.thermocline, Some((4.75, 2.5, 5.5, true, true, 0.9)));
    edges(&a, None);
    mixed(a.mixed_layer, (3.5, 3.294604, 3.705396));
    rules(&a, [Some(4.75), Some(4.75), Some(3.5), Some(2.94303), None, None]);
}

#[test]
fn weak_and_it_cannot_be_told_where() {
    let a = CANNOT.analysis();
    assert_eq!(a.state, State::Weak);
    told(a.thermocline, Some((5.75, 1.5, 8.0, false, false, 0.8)));
    mixed(a.mixed_layer, (3.875, 3.249688, 4.500312));
}

#[test]
fn under_ice() {
    let a = ICE.analysis();
    assert_eq!(a.state, State::Inverse);
    numbers(&a, 0.055, 20, Some(-0.02), 0.0972);
    told(a.thermocline, None);
    told(a.fastest_warming, Some((2.25, 1.5, 2.5, true, true, 1.6)));
    assert_eq!(a.fastest_densing_m, Some(1.25));
    edges(&a, None);
    assert_eq!((a.mixed_layer, a.rules.len()), (None, 0));
}

#[test]
fn heavier_water_on_top() {
    let a = OVERTURNED.analysis();
    assert_eq!(a.state, State::Unstable);
    let StateFacts { inversion, inversion_pair_m, .. } = a.facts.unwrap();
    close("inversion", inversion, 0.123, 0.0005);
    assert_eq!(inversion_pair_m, Some((0.5, 3.0)));
    told(a.thermocline, None);
    edges(&a, None);
    assert_eq!(a.mixed_layer, None);
    let at: Vec<(f64, f64)> = (OVERTURNED.cast().readings.iter().zip(&a.checked))
        .filter_map(|(r, c)| match c.doubt {
            Some(Doubt::Inversion { other_depth_m }) => Some((r.depth_m, other_depth_m)),
            _ => None,
        })
        .collect();
    assert_eq!(at, [(0.5, 3.0), (3.0, 0.5), (3.0, 0.5), (0.5, 3.0)], "both legs, both depths");
}

#[test]
fn mixed_in_autumn() {
    let a = AUTUMN.analysis();
    assert_eq!(a.state, State::Mixed);
    numbers(&a, 0.05, 20, Some(0.01), 0.0429);
    told(a.thermocline, None);
    edges(&a, None);
    assert_eq!(a.mixed_layer, Some(MixedLayer::AtLeast { at_least_m: 9.5 }));
    assert!(a.rules.is_empty());
}

#[test]
fn only_a_hot_afternoon() {
    let a = HOT_AFTERNOON.analysis();
    assert_eq!(a.state, State::Stratified);
    told(a.thermocline, None);
    edges(&a, None);
    let warm = a.warm_layer_today.unwrap();
    assert!(warm.only);
    assert_eq!((warm.value_m, warm.span_top_m, warm.span_bottom_m), (1.0, 0.5, 1.5));
    assert_eq!((warm.top_m, warm.bottom_m), (0.5, 1.5));
    mixed(a.mixed_layer, (0.916667, 0.866667, 0.966667));
    assert_eq!(a.mixed_layer_season, None);
    rules(&a, [None, None, Some(0.916667), Some(0.672844), Some(0.5), Some(0.75)]);
    assert!(a.steps.iter().all(|s| !s.in_span && !s.in_main_layer));
    assert_eq!(a.steps.iter().filter(|s| s.in_warm_layer_today).count(), 2);
}

#[test]
fn a_hot_afternoon_over_the_seasons_layer() {
    let a = TWO_LAYERS.analysis();
    assert_eq!(a.state, State::Stratified);
    numbers(&a, 0.061, 20, Some(-0.025), 2.4616);
    told(a.thermocline, Some((5.25, 5.0, 5.5, true, true, 4.6)));
    // Neither a step outside nor the outermost inside is in doubt at the top: half of each.
    edges(&a, Some((3.5, (3.25, 3.75), 7.0, (7.0, Some(7.5)))));
    mixed(a.mixed_layer, (0.934783, 0.884644, 0.984922));
    let warm = a.warm_layer_today.unwrap();
    assert!(!warm.only);
    assert_eq!((warm.value_m, warm.span_top_m, warm.span_bottom_m), (0.75, 0.5, 1.0));
    assert_eq!((warm.top_m, warm.bottom_m), (0.5, 1.5));
    // From 2 m, 22.8 °C: 21.8 °C lies between 22.25 at 3.5 m and 21.55 at 4 m.
    let Some(MixedLayer::At { value_m, target_c, between_m, .. }) = a.mixed_layer_season else {
        panic!("season")
    };
    close("the season's mixed layer", value_m, 3.5 + 0.5 * 0.45 / 0.7, 1e-9);
    close("its temperature", target_c, 21.8, 1e-9);
    assert_eq!(between_m, (3.5, 4.0));
    assert_eq!(a.metalimnion.unwrap().layers, 1);
    rules(&a, [Some(5.25), Some(5.25), Some(0.934783), Some(0.676252), Some(0.5), Some(0.75)]);
}

#[test]
fn cut_off_by_a_short_cable() {
    let a = CUT_OFF.analysis();
    assert_eq!(a.state, State::Stratified);
    numbers(&a, 0.16, 15, Some(0.14), 2.1758);
    told(a.thermocline, Some((4.25, 3.5, 4.5, true, true, 4.8)));
    edges(&a, Some((2.5, (2.0, 3.0), 7.0, (6.5, None))));
    assert!(a.metalimnion.unwrap().cut_off);
    mixed(a.mixed_layer, (2.8, 2.613778, 2.986222));
    rules(&a, [Some(4.25), Some(3.75), Some(2.8), Some(2.239167), Some(2.5), Some(2.75)]);
}

#[test]
fn read_once() {
    let a = ONE_LEG.analysis();
    assert_eq!(a.state, State::Stratified);
    numbers(&a, 0.1, 0, None, 2.3387);
    assert_eq!(a.pairs.s_used_c, 0.1);
    told(a.thermocline, Some((3.75, 3.5, 4.0, true, true, 5.0)));
    edges(&a, Some((2.5, (2.0, 2.5), 6.5, (6.0, Some(7.0)))));
    mixed(a.mixed_layer, (2.65, 2.524302, 2.775698));
}

#[test]
fn thirty_metres_deep() {
    let a = DEEP.analysis();
    numbers(&a, 0.072, 61, Some(0.018), 2.2454);
    told(a.thermocline, Some((8.25, 8.0, 9.0, true, true, 3.0)));
    edges(&a, Some((5.5, (5.0, 6.0), 11.5, (11.0, Some(12.0)))));
    mixed(a.mixed_layer, (5.0625, 4.892958, 5.232042));
    rules(&a, [Some(8.25), Some(8.25), Some(5.0625), Some(3.688924), Some(5.5), Some(5.75)]);
}

#[test]
fn two_metres_deep_in_quarter_steps() {
    let a = POND.analysis();
    assert_eq!(a.state, State::Stratified);
    numbers(&a, 0.067, 9, Some(0.044), 1.1094);
    told(a.thermocline, Some((1.125, 1.0, 1.25, true, true, 6.8)));
    edges(&a, Some((0.5, (0.25, 0.75), 1.75, (1.5, Some(2.0)))));
    mixed(a.mixed_layer, (0.904762, 0.854762, 0.954762));
    rules(&a, [Some(1.125), Some(1.125), Some(0.904762), Some(0.763559), Some(0.5), Some(0.625)]);
}

#[test]
fn a_lost_point_in_the_steep_part_is_the_only_doubt_and_moves_nothing() {
    let mut cast = SUMMER.cast();
    let at = cast.readings.iter().position(|r| r.depth_m == 4.0 && r.leg == Leg::Down).unwrap();
    cast.readings[at].temp_c = Some(177.0);
    let a = analyse(&cast, &Method::default());
    assert_eq!(a.checked[at].doubt, Some(Doubt::Range { point_lost_c: Some(17.7) }));
    assert_eq!((doubted(&a), a.checked.iter().filter(|c| !c.used).count()), (1, 1));
    assert_eq!(a.profile.iter().find(|l| l.depth_m == 4.0).map(|l| (l.temp_c, l.legs)), Some((17.4, 1)));
    assert_eq!(a.thermocline.unwrap().value_m, 3.75);
}

#[test]
fn swapped_digits_on_one_leg_are_found() {
    let mut cast = SUMMER.cast();
    let at = cast.readings.iter().position(|r| r.depth_m == 6.0 && r.leg == Leg::Up).unwrap();
    assert_eq!(cast.readings[at].temp_c, Some(11.2));
    cast.readings[at].temp_c = Some(21.1); // 11.2 with its first and last digit exchanged: no neighbours, no guess
    let a = analyse(&cast, &Method::default());
    assert_eq!(a.checked[at].flag, Flag::Fail);
    let Some(Doubt::Spike { neighbours_c, meant_c }) = a.checked[at].doubt else { panic!("a spike") };
    assert_eq!((neighbours_c, meant_c), ((12.1, 10.5), Some(12.1)));
    assert_eq!((doubted(&a), a.checked.iter().filter(|c| !c.used).count()), (1, 1));
}

#[test]
fn legs_that_disagree_are_doubted_as_a_pair() {
    let mut cast = SUMMER.cast();
    let at = cast.readings.iter().position(|r| r.depth_m == 9.5 && r.leg == Leg::Down).unwrap();
    cast.readings[at].temp_c = Some(8.1);
    let a = analyse(&cast, &Method::default());
    let doubts: Vec<Doubt> = a.checked.iter().filter_map(|c| c.doubt).collect();
    assert_eq!(doubts, [Doubt::Pair { other_c: 8.9 }, Doubt::Pair { other_c: 8.1 }]);
    assert!(a.checked.iter().all(|c| c.used), "a doubt about a pair leaves nothing out");
}

#[test]
fn a_swinging_cable_in_the_steep_part_is_no_doubt() {
    let mut cast = SUMMER.cast();
    let at = cast.readings.iter().position(|r| r.depth_m == 4.0 && r.leg == Leg::Down).unwrap();
    cast.readings[at].temp_c = Some(18.2); // 0.8 °C from the other leg, where a metre is worth 5 °C
    assert_eq!(doubted(&analyse(&cast, &Method::default())), 0);
}

#[test]
fn a_step_that_noise_can_make_does_not_draw_the_thermocline_out_of_the_layer() {
    // 2.5 °C per metre, but over 0.1 m only; the layer below cools by 1.6 °C per metre over two metres.
    let rows = [(0.0, 20.0), (0.5, 20.0), (1.0, 20.0), (1.1, 19.75), (1.6, 19.75), (2.1, 19.75), (2.6, 19.0)];
    let below = [(3.1, 18.1), (3.6, 17.3), (4.1, 16.6), (4.6, 16.5), (5.1, 16.5)];
    let a = analyse(&one_series(&[rows.as_slice(), below.as_slice()].concat(), 0.1), &Method::default());
    close("thermocline", a.thermocline.unwrap().value_m, 2.85, 1e-9);
    assert_eq!(a.metalimnion.unwrap().layers, 1);
}

#[test]
fn the_season_starts_below_a_days_warming_only_where_that_lies_above_the_main_layer() {
    // Six degrees in the first half metre outweigh all below: that is the main layer, whatever ends within 2 m.
    let temps_c = [30.0, 24.0, 24.0, 22.8, 22.8, 22.8, 22.8, 22.8, 22.8, 22.0, 22.0, 22.0];
    let rows: Vec<(f64, f64)> = depths(temps_c.len(), 0.5).into_iter().zip(temps_c).collect();
    let a = analyse(&one_series(&rows, 0.1), &Method::default());
    assert_eq!(a.thermocline.unwrap().value_m, 0.25);
    assert!(a.warm_layer_today.is_some());
    assert_eq!(a.mixed_layer_season, None);
}

#[test]
fn three_depths_or_a_metre_are_too_few() {
    let few = one_series(&[(0.0, 20.0), (1.0, 18.0), (2.0, 15.0)], 0.1);
    let short = one_series(&[(0.0, 20.0), (0.4, 18.0), (0.8, 15.0), (1.4, 14.0)], 0.1);
    let enough = one_series(&[(0.0, 20.0), (0.5, 18.0), (1.0, 15.0), (1.5, 14.0)], 0.1);
    for (cast, want) in [(few, State::TooFew), (short, State::TooFew), (enough, State::Stratified)] {
        let a = analyse(&cast, &Method::default());
        assert_eq!(a.state, want);
        assert_eq!(a.steps.len() + 1, a.profile.len());
        assert_eq!(a.thermocline.is_some(), want == State::Stratified);
        assert_eq!(a.mixed_layer.is_some(), want == State::Stratified);
    }
}

#[test]
fn nothing_at_all() {
    let a = analyse(&Cast::default(), &Method::default());
    assert_eq!((a.state, a.facts, a.warmest), (State::TooFew, None, None));
    let missing = Cast { readings: vec![reading(f64::NAN, 20.0, Leg::Down)], ..Cast::default() };
    assert_eq!(analyse(&missing, &Method::default()).checked[0].flag, Flag::Missing);
}
