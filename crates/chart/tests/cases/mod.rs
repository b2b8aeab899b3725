//! Pictures to draw in tests: every kind of water, every state of the work.
//!
//! Long because every picture that is stored is set up here.

// Each test binary uses a part of it.
#![allow(dead_code, clippy::expect_used)]

pub mod water;

use layercast_chart::*;
use layercast_core::{Leg, Metalimnion, MixedLayer, State, Thermocline, WarmLayerToday};
pub use water::*;

/// A named picture with its size, words and theme.
pub struct Case {
    pub name: &'static str,
    pub picture: Picture,
    pub size: Size,
    pub words: Words,
    pub theme: Theme,
}

pub fn case(name: &'static str, picture: Picture) -> Case {
    Case { name, picture, size: PROFILE, words: english(), theme: Theme::Day }
}

/// Profile at 1366 × 600, its picture.
pub const PROFILE: Size =
    Size { width_px: 850.0, height_px: 533.0, root_px: 16.0, scale: 2.0, layout: Layout::Wide };
pub const QUESTIONS: Size = Size { width_px: 802.0, ..PROFILE };
pub const LOG: Size = Size { width_px: 529.0, layout: Layout::Log, ..PROFILE };
pub const PHONE: Size =
    Size { width_px: 374.0, height_px: 480.0, root_px: 16.0, scale: 2.0, layout: Layout::Phone };
/// 1920 × 1080 in sunlight and on the projector.
pub const SUNLIGHT: Size =
    Size { width_px: 1194.0, height_px: 986.0, root_px: 22.5, scale: 2.0, layout: Layout::Wide };
pub const PROJECTOR: Size =
    Size { width_px: 1188.0, height_px: 964.0, root_px: 28.0, scale: 2.0, layout: Layout::Narrow };

fn lines(texts: &[&str]) -> Vec<String> {
    texts.iter().map(|text| text.to_string()).collect()
}

pub fn english() -> Words {
    let pair = |name: &str, gloss: &str| (name.to_string(), gloss.to_string());
    Words {
        decimal: '.',
        depth: "Depth, m".into(),
        temperature: "Temperature, °C".into(),
        lost: "°C lost per metre".into(),
        gained: "°C gained per metre".into(),
        per_metre: "°C per metre".into(),
        per_metre_short: "°C per m".into(),
        yours: "yours".into(),
        by_the_rules: "by the rules".into(),
        rules: "rules".into(),
        mean: "Mean".into(),
        mixed: "mixed".into(),
        steep: "steep".into(),
        deep: "deep".into(),
        epilimnion: pair("Epilimnion", "warm, mixed"),
        metalimnion: pair("Metalimnion", "steep"),
        hypolimnion: pair("Hypolimnion", "cold, deep"),
        going_down: "going down".into(),
        coming_up: "coming up".into(),
        mean_of_two: "mean of the two".into(),
        otherwise: "read otherwise".into(),
        reading: "reading".into(),
        covered: lines(&["covered", "until you", "check"]),
        thermocline: Vec::new(),
        range: String::new(),
        mixed_to: String::new(),
        column_words: Vec::new(),
        column_lower: Vec::new(),
        warm_layer_today: "today’s warm layer".into(),
        goes_on: "steep, and goes on".into(),
        last_reading: "last reading".into(),
        empty: lines(&["Your readings will appear here,", "each at its own depth."]),
        colder_than_below: "colder than below".into(),
        no_layers: "no layers".into(),
        range_short: String::new(),
        column_warm_today: lines(&["Today’s", "warm layer"]),
        one_per_metre: lines(&["dashed line:", "1\u{a0}°C per metre"]),
    }
}

pub fn spanish() -> Words {
    let pair = |name: &str, gloss: &str| (name.to_string(), gloss.to_string());
    Words {
        decimal: ',',
        depth: "Prof., m".into(),
        temperature: "Temperatura, °C".into(),
        lost: "°C que pierde por metro".into(),
        yours: "lo tuyo".into(),
        by_the_rules: "según las reglas".into(),
        mixed: "mezclada".into(),
        steep: "brusca".into(),
        deep: "profunda".into(),
        epilimnion: pair("Epilimnion", "cálida, mezclada"),
        metalimnion: pair("Metalimnion", "cambio brusco"),
        hypolimnion: pair("Hipolimnion", "fría, profunda"),
        going_down: "al bajar".into(),
        coming_up: "al subir".into(),
        mean_of_two: "media de las dos".into(),
        otherwise: "leído de otro modo".into(),
        thermocline: lines(&["termoclina 3,75\u{a0}m", "termoclina", "3,75\u{a0}m"]),
        range: "podría ser 3,5 a 4,0\u{a0}m".into(),
        range_short: "3,5 a 4,0\u{a0}m".into(),
        mixed_to: "mezclada hasta 2,7\u{a0}m".into(),
        ..english()
    }
}

/// English with the depths of what was found.
pub fn found_words(thermocline: &str, range: &str, mixed: &str) -> Words {
    let m = "\u{a0}m";
    Words {
        thermocline: lines(&[
            &format!("thermocline {thermocline}{m}"),
            "thermocline",
            &format!("{thermocline}{m}"),
        ]),
        range: format!("could be {range}{m}"),
        range_short: format!("{range}{m}"),
        mixed_to: format!("mixed to {mixed}{m}"),
        ..english()
    }
}

fn depth_m(water: &Water, place: usize) -> f64 {
    place as f64 * water.step_m
}

pub fn mean_c(water: &Water) -> Vec<f64> {
    let round = |value: f64| (value * 1000.0).round() / 1000.0;
    water.down_c.iter().zip(water.up_c).map(|(down, up)| round((down + up) / 2.0)).collect()
}

/// A picture of the readings alone.
pub fn readings(water: &Water, bed_m: Option<f64>) -> Picture {
    let points = |temps: &[f64], leg: Leg| {
        let point =
            |(place, temp_c): (usize, &f64)| Point { depth_m: depth_m(water, place), temp_c: *temp_c, leg };
        temps.iter().enumerate().map(point).collect::<Vec<_>>()
    };
    let mut all = points(water.down_c, Leg::Down);
    all.extend(points(water.up_c, Leg::Up));
    Picture {
        points: all,
        profile: mean_c(water).into_iter().enumerate().map(|(i, c)| (depth_m(water, i), c)).collect(),
        otherwise: Vec::new(),
        guess: Vec::new(),
        axes_only: false,
        bed_m,
        least_depth_m: 0.0,
        marks: None,
        marks_short: false,
        from_to_m: None,
        middle: Middle::None,
        found: None,
        strip: Strip::None,
        strip_gains: Some(false),
        step: None,
        lit_m: Vec::new(),
        doubts: Vec::new(),
        rules: Vec::new(),
        cursor: None,
        heavier_above_m: None,
        grips: true,
    }
}

/// °C lost per metre, interval by interval, all plain.
pub fn bars(water: &Water) -> Vec<Bar> {
    let bar = |(place, pair): (usize, &[f64])| Bar {
        top_m: depth_m(water, place),
        bottom_m: depth_m(water, place + 1),
        c_per_m: (pair[0] - pair[1]) / water.step_m,
        look: BarLook::Plain,
    };
    mean_c(water).windows(2).enumerate().map(bar).collect()
}

/// Bars with the looks of what was found.
pub fn looked(mut bars: Vec<Bar>, steep: Option<(f64, f64)>, steepest: Option<(f64, f64)>) -> Vec<Bar> {
    let within = |bar: &Bar, range: Option<(f64, f64)>| {
        range.is_some_and(|(top_m, bottom_m)| bar.top_m >= top_m - 1e-9 && bar.bottom_m <= bottom_m + 1e-9)
    };
    for bar in &mut bars {
        bar.look = match (within(bar, steepest), within(bar, steep)) {
            (true, _) => BarLook::Steepest,
            (_, true) => BarLook::Steep,
            _ => BarLook::Plain,
        };
    }
    bars
}

pub fn open(bars: Vec<Bar>) -> Strip {
    let longest = bars.iter().map(|bar| bar.c_per_m).fold(0.0, f64::max);
    Strip::Open { scale_c_per_m: strip_scale(longest), bars }
}

pub const COVERED: Strip = Strip::Covered { scale_c_per_m: 6.0, open: Vec::new() };

pub fn at(depth_m: f64, give_m: Option<f64>) -> Mark {
    Mark::At { depth_m, give_m }
}

pub fn marks(mixed: f64, thermocline: f64, deep: f64) -> Option<Marks> {
    Some(Marks { mixed: at(mixed, None), thermocline: at(thermocline, None), deep: at(deep, None) })
}

pub fn thermocline(value_m: f64, span: (f64, f64), gradient_c_per_m: f64) -> Thermocline {
    Thermocline {
        value_m,
        step_top_m: value_m - 0.25,
        step_bottom_m: value_m + 0.25,
        gradient_c_per_m,
        span_top_m: span.0,
        span_bottom_m: span.1,
        in_one_piece: true,
        ambiguous: false,
        tellable: true,
    }
}

pub fn metalimnion(top: (f64, f64, f64), bottom: (f64, f64, f64)) -> Metalimnion {
    Metalimnion {
        top_m: top.0,
        top_low_m: top.1,
        top_high_m: top.2,
        bottom_m: bottom.0,
        bottom_low_m: bottom.1,
        bottom_high_m: Some(bottom.2),
        cut_off: false,
        from_the_first: false,
        layers: 1,
    }
}

pub fn mixed_at(value_m: f64) -> Option<MixedLayer> {
    Some(MixedLayer::At {
        value_m,
        low_m: value_m - 0.1,
        high_m: value_m + 0.1,
        target_c: 20.0,
        between_m: (value_m - 0.25, value_m + 0.25),
    })
}

pub const NOTHING: Found = Found {
    state: State::Stratified,
    thermocline: None,
    metalimnion: None,
    mixed_layer: None,
    warm_layer_today: None,
    fastest_warming: None,
    mixed_by_density: false,
};

/// Profile while marking: both columns covered.
pub fn marking() -> Picture {
    Picture {
        marks: marks(2.5, 4.0, 6.0),
        middle: Middle::RulesCovered,
        strip: COVERED,
        ..readings(&SUMMER, Some(9.8))
    }
}

/// Profile after the check.
pub fn found(water: &Water, bed_m: Option<f64>, marks: Option<Marks>, found: Found, strip: Strip) -> Picture {
    Picture {
        marks,
        marks_short: true,
        middle: Middle::Rules,
        found: Some(found),
        strip,
        ..readings(water, bed_m)
    }
}

pub fn summer_found() -> Picture {
    let steep = metalimnion((2.5, 2.0, 2.5), (6.5, 6.0, 7.0));
    let result = Found {
        thermocline: Some(thermocline(3.75, (3.5, 4.0), 5.0)),
        metalimnion: Some(steep),
        mixed_layer: mixed_at(2.684211),
        ..NOTHING
    };
    let strip = open(looked(bars(&SUMMER), Some((2.5, 6.5)), Some((3.5, 4.0))));
    found(&SUMMER, Some(9.8), marks(2.5, 4.0, 6.0), result, strip)
}

pub fn summer_words() -> Words {
    found_words("3.75", "3.5 to 4.0", "2.7")
}

/// Questions: a column of means.
pub fn questions(strip: Strip) -> Picture {
    let means = mean_c(&SUMMER);
    let text = |(place, temp_c): (usize, f64)| (depth_m(&SUMMER, place), format!("{temp_c:.2}"));
    Picture {
        marks: marks(2.5, 4.0, 6.0),
        middle: Middle::Means(means.into_iter().enumerate().map(text).collect()),
        strip,
        ..readings(&SUMMER, Some(9.8))
    }
}

fn without(water: &Water, left_out: &[(usize, Leg)]) -> Picture {
    let mut picture = readings(water, Some(9.68));
    for (place, leg) in left_out {
        let depth = depth_m(water, *place);
        picture.points.retain(|point| !(point.leg == *leg && point.depth_m == depth));
        let kept = picture.points.iter().find(|point| point.depth_m == depth).map(|point| point.temp_c);
        picture.profile[*place].1 = kept.expect("the other leg has this depth");
    }
    picture
}

pub fn log_two_doubts() -> Case {
    let doubt = |depth_m: f64, words: &str| DoubtAt { depth_m, words: words.into() };
    let picture = Picture {
        doubts: vec![doubt(4.0, "one reading left out"), doubt(6.5, "")],
        least_depth_m: 9.5,
        ..without(&SUMMER, &[(8, Leg::Down), (13, Leg::Up)])
    };
    Case { size: LOG, ..case("log-two-doubts", picture) }
}

fn log() -> Vec<Case> {
    let nothing = Water { step_m: 0.5, down_c: &[], up_c: &[] };
    let empty = Picture { least_depth_m: 9.5, ..readings(&nothing, None) };
    let mut one = readings(&SUMMER, None);
    one.points.retain(|point| point.leg == Leg::Up);
    one.points.iter_mut().for_each(|point| point.leg = Leg::Unknown);
    one.profile = one.points.iter().map(|point| (point.depth_m, point.temp_c)).collect();
    let half = {
        let mut picture = readings(&SUMMER, None);
        picture.points.retain(|point| point.leg == Leg::Down && point.depth_m < 4.2);
        picture.profile = picture.points.iter().map(|point| (point.depth_m, point.temp_c)).collect();
        Picture { least_depth_m: 9.5, ..picture }
    };
    // The curve goes to and fro down to the bed: the key has no room in the plot.
    let zigzag = {
        let mut picture = readings(&SUMMER, Some(9.8));
        let other = |place: usize| if place.is_multiple_of(2) { 9.0 } else { 22.5 };
        picture.profile.iter_mut().enumerate().skip(10).for_each(|(place, at)| at.1 = other(place));
        picture
    };
    let deep_lake = {
        let mut picture = readings(&DEEP, None);
        picture.points.iter_mut().for_each(|point| point.depth_m *= 8.0);
        picture.profile.iter_mut().for_each(|at| at.0 *= 8.0);
        picture
    };
    vec![
        Case { size: LOG, ..case("log-key-in-a-row", zigzag) },
        Case { size: LOG, ..case("log-240-m", deep_lake) },
        log_two_doubts(),
        Case { size: LOG, ..case("log-empty", empty) },
        Case { size: LOG, ..case("log-one-column", one) },
        Case { size: LOG, ..case("log-half-typed", half) },
    ]
}

fn profile_before() -> Vec<Case> {
    let soft = Marks { mixed: at(2.5, Some(0.5)), thermocline: at(4.0, Some(0.5)), deep: at(6.0, Some(1.0)) };
    let unset = Picture { marks: Some(Marks::default()), ..marking() };
    let with_cursor = Picture { marks: Some(soft), cursor: Some(10), ..marking() };
    let close = Picture { marks: marks(3.4, 3.8, 4.1), ..marking() };
    let some_refused = Marks { mixed: at(3.0, None), thermocline: Mark::Unset, deep: Mark::Refused };
    let partly = Picture { marks: Some(some_refused), strip_gains: None, ..marking() };
    vec![
        case("profile-unset", unset),
        case("profile-marking", with_cursor),
        case("profile-close-grips", close),
        case("profile-partly-marked", partly),
    ]
}

fn profile_found() -> Vec<Case> {
    let m = "\u{a0}m";
    let refused = Some(Marks { mixed: Mark::Refused, thermocline: Mark::Refused, deep: Mark::Refused });
    let only = |mixed: Mark, thermocline: Mark| Some(Marks { mixed, thermocline, deep: Mark::Refused });
    let mut all = vec![Case { words: summer_words(), ..case("profile-found", summer_found()) }];
    all.push(Case { words: spanish(), ..case("profile-found-spanish", summer_found()) });
    all.push({
        let tick = |depth_m: f64| RuleTick { depth_m, in_hand: None };
        let mut rules: Vec<RuleTick> = [2.5, 2.684, 2.75, 3.75, 3.79, 3.875].map(tick).into();
        rules.push(RuleTick { depth_m: 2.17, in_hand: Some(format!("0.1 kg per m³ denser: 2.2{m}")) });
        Case { words: summer_words(), ..case("profile-other-rules", Picture { rules, ..summer_found() }) }
    });
    all.push({
        let picture = summer_found();
        let otherwise = picture.profile.iter().copied().step_by(4).map(|(z, t)| (z, t + 0.4)).collect();
        Case { words: summer_words(), ..case("profile-read-otherwise", Picture { otherwise, ..picture }) }
    });
    all.push({
        let result = Found { state: State::Mixed, ..NOTHING };
        let strip = open(bars(&MIXED));
        let column_words = lines(&["Mixed all", "the way", "down"]);
        Case {
            words: Words { column_words, ..english() },
            ..case("profile-mixed", found(&MIXED, Some(9.8), refused, result, strip))
        }
    });
    all.push({
        let result = Found {
            state: State::Weak,
            thermocline: Some(thermocline(4.75, (2.5, 5.5), 0.9)),
            mixed_layer: mixed_at(3.5),
            ..NOTHING
        };
        let strip = open(looked(bars(&WEAK), None, Some((4.5, 5.0))));
        let words = found_words("4.75", "2.5 to 5.5", "3.5");
        let picture = found(&WEAK, Some(9.8), marks(2.5, 4.0, 6.0), result, strip);
        Case {
            words: Words { column_words: lines(&["Weakly", "layered"]), ..words },
            ..case("profile-weak", picture)
        }
    });
    all.push({
        let wide = Thermocline { tellable: false, in_one_piece: false, ..thermocline(5.75, (1.5, 8.0), 0.8) };
        let result =
            Found { state: State::Weak, thermocline: Some(wide), mixed_layer: mixed_at(3.875), ..NOTHING };
        let words = Words {
            range: format!("anywhere from 1.5 to 8.0{m}"),
            column_words: lines(&["Can’t tell"]),
            ..found_words("5.75", "1.5 to 8.0", "3.9")
        };
        let strip = open(bars(&CANNOT_TELL));
        let picture = found(&CANNOT_TELL, Some(9.8), only(at(3.0, None), Mark::Refused), result, strip);
        Case { words, ..case("profile-cannot-tell", picture) }
    });
    all.push({
        let result = Found {
            state: State::Inverse,
            fastest_warming: Some(thermocline(2.25, (1.5, 2.5), 1.6)),
            ..NOTHING
        };
        let mut gained = bars(&UNDER_ICE);
        gained.iter_mut().for_each(|bar| bar.c_per_m = -bar.c_per_m);
        let strip = open(looked(gained, None, Some((2.0, 2.5))));
        let words = Words {
            thermocline: lines(&[&format!("warms fastest 2.25{m}"), "warms fastest", &format!("2.25{m}")]),
            column_words: lines(&["Cold, under", "the ice"]),
            column_lower: lines(&["Near 4\u{a0}°C,", "densest"]),
            ..found_words("2.25", "1.5 to 2.5", "")
        };
        let picture = found(&UNDER_ICE, Some(9.8), only(Mark::Refused, at(2.0, None)), result, strip);
        Case { words, ..case("profile-under-ice", Picture { strip_gains: Some(true), ..picture }) }
    });
    all.push({
        let doubt = |depth_m: f64, words: &str| DoubtAt { depth_m, words: words.into() };
        let result = Found { state: State::Unstable, ..NOTHING };
        let column_words = lines(&["No layers yet", "colder water", "lies on top"]);
        let strip = open(bars(&COOLING));
        let picture = found(&COOLING, Some(9.8), only(at(1.8, None), Mark::Refused), result, strip);
        let doubts = vec![doubt(0.0, ""), doubt(0.5, ""), doubt(1.0, ""), doubt(1.5, "colder than below")];
        Case {
            words: Words { column_words, ..english() },
            ..case("profile-unstable", Picture { doubts, heavier_above_m: Some((0.5, 3.0)), ..picture })
        }
    });
    all.extend(layers_of_today(only));
    all.extend(ends_and_sizes(only));
    all
}

fn layers_of_today(only: impl Fn(Mark, Mark) -> Option<Marks>) -> Vec<Case> {
    let m = "\u{a0}m";
    let near_surface = {
        let today = WarmLayerToday {
            value_m: 1.0,
            span_top_m: 0.5,
            span_bottom_m: 1.5,
            top_m: 0.5,
            bottom_m: 1.5,
            only: true,
        };
        let result = Found { warm_layer_today: Some(today), mixed_layer: mixed_at(0.916667), ..NOTHING };
        let strip = open(looked(bars(&NEAR_SURFACE), None, Some((0.5, 1.5))));
        let name = "today’s warm layer";
        let words = Words {
            thermocline: lines(&[&format!("{name} 1.00{m}"), name, &format!("1.00{m}")]),
            column_words: lines(&["Warm today"]),
            column_lower: lines(&["Even", "water"]),
            ..found_words("1.00", "0.5 to 1.5", "0.9")
        };
        let picture = found(&NEAR_SURFACE, Some(9.8), only(Mark::Refused, at(1.0, None)), result, strip);
        Case { words, ..case("profile-near-surface", picture) }
    };
    let two_layers = {
        let today = WarmLayerToday {
            value_m: 0.75,
            span_top_m: 0.5,
            span_bottom_m: 1.0,
            top_m: 0.5,
            bottom_m: 1.5,
            only: false,
        };
        let result = Found {
            thermocline: Some(thermocline(5.25, (5.0, 5.5), 4.6)),
            metalimnion: Some(metalimnion((3.5, 3.5, 3.5), (7.0, 7.0, 7.5))),
            mixed_layer: mixed_at(0.934783),
            warm_layer_today: Some(today),
            ..NOTHING
        };
        let mut all = looked(bars(&TWO_LAYERS), Some((3.5, 7.0)), Some((5.0, 5.5)));
        all.iter_mut().filter(|bar| bar.bottom_m < 1.6 && bar.top_m > 0.4).for_each(|bar| {
            bar.look = BarLook::WarmToday;
        });
        let words = found_words("5.25", "5.0 to 5.5", "0.9");
        let picture = found(&TWO_LAYERS, Some(9.8), marks(3.5, 5.3, 7.0), result, open(all));
        Case { words, ..case("profile-two-layers", picture) }
    };
    vec![near_surface, two_layers]
}

fn ends_and_sizes(only: impl Fn(Mark, Mark) -> Option<Marks>) -> Vec<Case> {
    let cut_off = {
        let steep = Metalimnion {
            bottom_high_m: None,
            cut_off: true,
            ..metalimnion((2.5, 2.0, 3.0), (7.0, 6.5, 7.0))
        };
        let result = Found {
            thermocline: Some(thermocline(4.25, (3.5, 4.5), 4.8)),
            metalimnion: Some(steep),
            mixed_layer: mixed_at(2.8),
            ..NOTHING
        };
        let strip = open(looked(bars(&CUT_OFF), Some((2.5, 7.0)), Some((4.0, 4.5))));
        let picture = found(&CUT_OFF, None, only(at(2.7, None), at(4.0, None)), result, strip);
        Case { words: found_words("4.25", "3.5 to 4.5", "2.8"), ..case("profile-cut-off", picture) }
    };
    let deep = {
        let result = Found {
            thermocline: Some(thermocline(8.25, (8.0, 9.0), 3.0)),
            metalimnion: Some(metalimnion((5.5, 5.0, 6.0), (11.5, 11.0, 12.0))),
            mixed_layer: mixed_at(5.0625),
            ..NOTHING
        };
        let strip = open(looked(bars(&DEEP), Some((5.5, 11.5)), Some((8.0, 8.5))));
        let picture = found(&DEEP, Some(30.6), marks(5.0, 8.5, 12.0), result, strip);
        Case { words: found_words("8.25", "8.0 to 9.0", "5.1"), ..case("profile-30-m", picture) }
    };
    let fine = {
        let line =
            Thermocline { step_top_m: 1.0, step_bottom_m: 1.25, ..thermocline(1.125, (1.0, 1.25), 6.8) };
        let result = Found {
            thermocline: Some(line),
            metalimnion: Some(metalimnion((0.5, 0.25, 0.75), (1.75, 1.5, 2.0))),
            mixed_layer: mixed_at(0.904762),
            ..NOTHING
        };
        let strip = open(looked(bars(&SHALLOW), Some((0.5, 1.75)), Some((1.0, 1.25))));
        let picture = found(&SHALLOW, Some(2.3), marks(0.9, 1.2, 1.4), result, strip);
        Case { words: found_words("1.13", "1.0 to 1.25", "0.9"), ..case("profile-2-m", picture) }
    };
    let by_density = {
        let result = Found { state: State::Mixed, mixed_by_density: true, ..NOTHING };
        let strip = open(bars(&UNDER_ICE));
        let column_words = lines(&["The density", "hardly", "differs"]);
        let picture = found(&UNDER_ICE, Some(9.8), only(Mark::Refused, Mark::Refused), result, strip);
        Case { words: Words { column_words, ..english() }, ..case("profile-mixed-by-density", picture) }
    };
    vec![cut_off, deep, fine, by_density]
}

fn question_cases() -> Vec<Case> {
    let covered = Words { covered: lines(&["covered", "until you", "have it"]), ..english() };
    let steepest = || open(looked(bars(&SUMMER), None, Some((3.5, 4.0))));
    let asked = StepInHand { top_m: 3.5, bottom_m: 4.0, explained: None };
    let explained = StepInHand {
        explained: Some(StepWords {
            drop: "2.5\u{a0}°C".into(),
            thickness: "0.5\u{a0}m".into(),
            top_c: 20.05,
            bottom_c: 17.55,
        }),
        ..asked.clone()
    };
    let elsewhere = StepInHand {
        top_m: 6.0,
        bottom_m: 6.5,
        explained: Some(StepWords {
            drop: "0.7\u{a0}°C".into(),
            thickness: "0.5\u{a0}m".into(),
            top_c: 11.25,
            bottom_c: 10.55,
        }),
    };
    let one_bar = Strip::Covered {
        scale_c_per_m: 6.0,
        open: bars(&SUMMER).into_iter().filter(|bar| bar.top_m == 4.0 || bar.top_m == 4.5).collect(),
    };
    let own = Picture {
        middle: Middle::None,
        marks: Some(Marks { thermocline: at(4.0, None), ..Marks::default() }),
        ..questions(steepest())
    };
    let one_mark = Marks { mixed: Mark::Refused, thermocline: at(4.0, None), deep: Mark::Refused };
    let all = vec![
        ("questions-before", Picture { cursor: Some(7), ..questions(COVERED) }),
        ("questions-miss", Picture { step: Some(asked), ..questions(COVERED) }),
        ("questions-worked-elsewhere", Picture { step: Some(elsewhere), ..questions(COVERED) }),
        ("questions-after", Picture { step: Some(explained), marks_short: true, ..questions(steepest()) }),
        ("questions-own-bars", questions(one_bar)),
        ("questions-one-mark", Picture { marks: Some(one_mark), ..own.clone() }),
        ("questions-from-to", Picture { from_to_m: Some((3.4, 4.1)), ..own.clone() }),
        ("questions-lit", Picture { lit_m: vec![(0.5, 1.5), (4.0, 5.0), (5.0, 6.0)], ..own }),
    ];
    all.into_iter()
        .map(|(name, picture)| Case { size: QUESTIONS, words: covered.clone(), ..case(name, picture) })
        .collect()
}

fn phone() -> Vec<Case> {
    let low = Size { height_px: 320.0, ..PHONE };
    let after = Picture { middle: Middle::None, ..questions(COVERED) };
    let log = Picture { bed_m: None, ..log_two_doubts().picture };
    vec![
        Case { size: PHONE, words: summer_words(), ..case("phone-found", summer_found()) },
        Case { size: PHONE, ..case("phone-marking", marking()) },
        Case { size: low, ..case("phone-questions", after) },
        Case { size: Size { height_px: 400.0, ..PHONE }, ..case("phone-log", log) },
    ]
}

/// Two pictures in the four themes, at the sizes they have there.
fn themes() -> Vec<Case> {
    let marked = || Picture { cursor: Some(10), ..marking() };
    let themed = |name, picture, words, theme, size| Case { name, picture, size, words, theme };
    vec![
        themed("profile-found-night", summer_found(), summer_words(), Theme::Night, PROFILE),
        themed("profile-found-sunlight", summer_found(), summer_words(), Theme::Sunlight, SUNLIGHT),
        themed("profile-found-projector", summer_found(), summer_words(), Theme::Projector, PROJECTOR),
        themed("profile-marking-night", marked(), english(), Theme::Night, PROFILE),
        themed("profile-marking-sunlight", marked(), english(), Theme::Sunlight, SUNLIGHT),
        themed("profile-marking-projector", marked(), english(), Theme::Projector, PROJECTOR),
    ]
}

/// Every case, in a fixed order, names unique.
pub fn all() -> Vec<Case> {
    [log(), profile_before(), profile_found(), question_cases(), phone(), themes()]
        .into_iter()
        .flatten()
        .collect()
}
