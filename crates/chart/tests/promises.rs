//! What a picture promises whatever is in it: pixels stand for values, the cover holds no answer, nothing breaks it.
//!
//! Long because each promise of the picture has its own test.

#![allow(clippy::expect_used)]

mod cases;

use cases::*;
use layercast_chart::*;
use layercast_core::{Leg, MixedLayer, State};

fn drawn(case: &Case) -> (String, Placement) {
    svg(&case.picture, case.theme, case.size, &case.words, case.name).expect("SVG never fails")
}

/// The texts of a document, in its order.
fn texts(document: &str) -> Vec<&str> {
    let text = |part: &'static str| document.split(part).skip(1);
    text("<text ")
        .filter_map(|after| after.split_once(">\n")?.1.split_once("\n</text>").map(|(text, _)| text))
        .collect()
}

fn attribute<'a>(tag: &'a str, name: &str) -> &'a str {
    tag.split_once(&format!(" {name}=\""))
        .and_then(|(_, after)| after.split_once('"'))
        .map_or("", |(value, _)| value)
}

/// First points, in CSS pixels, of the polygons with this fill.
fn tips(document: &str, fill: &str) -> Vec<(f64, f64)> {
    let first = |tag: &str| {
        let (x, y) = attribute(tag, "points").split(' ').next()?.split_once(',')?;
        Some((x.parse::<f64>().ok()? / 4.0, y.parse::<f64>().ok()? / 4.0))
    };
    document
        .split("<polygon")
        .skip(1)
        .filter(|tag| attribute(tag, "fill") == fill)
        .filter_map(first)
        .collect()
}

#[test]
fn pixels_stand_for_values() {
    for case in all() {
        let (_, at) = drawn(&case);
        let (left, right) = at.plot_x_px;
        let (low_c, high_c) = at.temp_c;
        assert_eq!(at.points_px.len(), case.picture.points.len(), "{}", case.name);
        for (point, (x, y)) in case.picture.points.iter().zip(&at.points_px) {
            let depth_m = (y - at.surface_y_px) / at.px_per_m;
            let temp_c = low_c + (x - left) / (right - left) * (high_c - low_c);
            assert!((depth_m - point.depth_m).abs() < 1e-9, "{}: {depth_m} for {point:?}", case.name);
            assert!((temp_c - point.temp_c).abs() < 1e-9, "{}: {temp_c} for {point:?}", case.name);
            assert!(depth_m <= at.max_depth_m && (left..=right).contains(x), "{}", case.name);
        }
        assert!(at.max_depth_m >= case.picture.least_depth_m, "{}", case.name);
    }
}

#[test]
fn the_tips_of_the_triangles_touch_their_readings() {
    let case = case("tips", readings(&SUMMER, Some(9.8)));
    let (document, at) = drawn(&case);
    // `down` of the day theme; the last such triangle is the key's.
    let mut tips = tips(&document, "#0B5B92");
    tips.pop();
    let readings: Vec<(f64, f64)> = case
        .picture
        .points
        .iter()
        .zip(&at.points_px)
        .filter(|(point, _)| point.leg == Leg::Down)
        .map(|(_, px)| *px)
        .collect();
    assert_eq!(tips.len(), readings.len());
    for (tip, reading) in tips.iter().zip(&readings) {
        assert!(
            (tip.0 - reading.0).abs() <= 0.125 && (tip.1 - reading.1).abs() <= 0.125,
            "{tip:?} {reading:?}"
        );
    }
}

#[test]
fn a_log_and_its_table_share_half_metres_of_24_px() {
    let (_, at) = drawn(&log_two_doubts());
    assert!((at.px_per_m * 0.5 - 24.0).abs() < 0.25, "{}", at.px_per_m);
}

#[test]
fn columns_stand_side_by_side() {
    for case in all() {
        let (_, at) = drawn(&case);
        let order = [
            at.yours_x_px,
            at.middle_x_px,
            at.plot_x_px,
            at.strip_x_px,
            (case.size.width_px, case.size.width_px),
        ];
        for pair in order.windows(2) {
            assert!(pair[0].0 <= pair[0].1, "{}: {order:?}", case.name);
            let empty = pair[0].0 == pair[0].1;
            assert!(empty || pair[0].1 <= pair[1].0, "{}: {order:?}", case.name);
        }
    }
}

#[test]
fn grips_never_touch_and_stay_in_their_order() {
    let depths = [0.0, 0.1, 0.2, 3.4, 3.8, 4.1, 9.3, 9.5, 9.8];
    for mixed in depths {
        for thermocline in depths.into_iter().filter(|depth| *depth >= mixed) {
            for deep in depths.into_iter().filter(|depth| *depth >= thermocline) {
                let picture = Picture { marks: marks(mixed, thermocline, deep), ..marking() };
                let (_, at) = drawn(&case("grips", picture));
                let y = at.grips_y_px.map(|y| y.expect("placed"));
                let foot = at.surface_y_px + 9.8 * at.px_per_m;
                assert!(
                    y[1] - y[0] > 28.0 - 0.01 && y[2] - y[1] > 28.0 - 0.01,
                    "{mixed} {thermocline} {deep}: {y:?}"
                );
                assert!(y[2] <= foot + 1e-9, "{y:?}");
            }
        }
    }
}

#[test]
fn a_grip_alone_stands_at_its_depth_and_a_refused_one_nowhere() {
    let picture = Picture {
        marks: Some(Marks { mixed: at(2.0, None), thermocline: Mark::Refused, deep: Mark::Unset }),
        ..marking()
    };
    let (_, at) = drawn(&case("grips", picture));
    let depth = |y: f64| (y - at.surface_y_px) / at.px_per_m;
    assert!((depth(at.grips_y_px[0].expect("placed")) - 2.0).abs() < 1e-9);
    assert_eq!(at.grips_y_px[1], None);
    assert!(depth(at.grips_y_px[2].expect("parked")) > 9.0, "stacked at the foot");
}

/// Words as they would be if somebody passed what was found too early.
fn tempting_words() -> Words {
    Words {
        column_words: vec!["Mixed all the way down".into()],
        column_lower: vec!["Even water".into()],
        ..summer_words()
    }
}

#[test]
fn a_covered_picture_holds_no_answer() {
    let plain = Case { words: english(), ..case("covered", marking()) };
    let tempted = Case { words: tempting_words(), ..case("covered", marking()) };
    let (document, _) = drawn(&tempted);
    assert_eq!(document, drawn(&plain).0, "words of what was found change nothing");
    for found in
        ["3.75", "2.7", "6.5", "could be", "thermocline", "Epilimnion", "Metalimnion", "Mixed", "Even"]
    {
        assert!(
            !texts(&document).iter().any(|text| text.contains(found)),
            "{found} is written under the cover"
        );
    }
    // Tints, patterns and bars of the day theme.
    for colour in ["#FCEFD4", "#DCEAD6", "#CBDFEE", "#8A5606", "#39693F", "#1C5A8A", "#5B7783"] {
        assert!(!document.contains(colour), "{colour} is drawn under the cover");
    }
}

#[test]
fn axes_alone_hold_no_reading() {
    let document = |inner: f64| {
        let mut case = log_two_doubts();
        case.picture.axes_only = true;
        case.picture.guess = vec![(2.0, 20.0), (6.0, 12.0)];
        // All but the ends of the axes: what lies between them is what must not be seen.
        let count = case.picture.points.len();
        let coldest = case.picture.points.iter().map(|p| p.temp_c).fold(f64::INFINITY, f64::min);
        let warmest = case.picture.points.iter().map(|p| p.temp_c).fold(f64::NEG_INFINITY, f64::max);
        for point in case.picture.points.iter_mut().skip(1).take(count.saturating_sub(2)) {
            if point.temp_c > coldest && point.temp_c < warmest {
                point.temp_c = coldest + inner * (warmest - coldest);
            }
        }
        case.picture.profile = case.picture.points.iter().map(|p| (p.depth_m, p.temp_c)).collect();
        drawn(&case).0
    };
    assert_eq!(document(0.3), document(0.7));
    assert!(document(0.3).contains("<circle"), "what is placed by hand is seen");
}

#[test]
fn the_axis_over_the_cover_is_the_callers() {
    for (scale_c_per_m, expected) in [(6.0, ["0", "2", "4", "6"]), (12.0, ["0", "4", "8", "12"])] {
        let strip = Strip::Covered { scale_c_per_m, open: Vec::new() };
        let (document, at) = drawn(&case("covered", Picture { strip, ..marking() }));
        let over: Vec<&str> = document
            .split("<text ")
            .skip(1)
            .filter(|tag| {
                attribute(&format!(" {tag}"), "y").parse().is_ok_and(|y: f64| y > 100.0 && y < 200.0)
            })
            .filter(|tag| {
                attribute(&format!(" {tag}"), "x")
                    .parse()
                    .is_ok_and(|x: f64| x / 4.0 >= at.strip_x_px.0 - 1.0)
            })
            .filter_map(|tag| tag.split_once(">\n")?.1.split('\n').next())
            .collect();
        assert_eq!(over, expected);
    }
}

#[test]
fn only_the_bars_that_are_open_have_numbers() {
    let open: Vec<Bar> = bars(&SUMMER).into_iter().filter(|bar| bar.top_m == 4.0).collect();
    let strip = Strip::Covered { scale_c_per_m: 6.0, open };
    let picture = Picture { middle: Middle::None, strip, ..marking() };
    let (document, _) = drawn(&case("own", picture));
    let with_point: Vec<&str> =
        texts(&document).into_iter().filter(|text| text.contains('.') && !text.contains('m')).collect();
    assert_eq!(with_point, ["4.5"]);
}

#[test]
fn numbers_have_the_readers_signs() {
    let case = Case { words: spanish(), ..case("spanish", summer_found()) };
    let (document, _) = drawn(&case);
    assert!(texts(&document).contains(&"5,0"), "a decimal comma");
    assert!(texts(&document).iter().all(|text| !text.contains('.') || text.contains("Prof.")));
    let mixed = all().into_iter().find(|case| case.name == "profile-mixed").expect("a case");
    let (document, _) = drawn(&mixed);
    assert!(texts(&document).contains(&"−0.2"), "a true minus");
    assert!(texts(&document).iter().all(|text| !text.contains('-')));
}

#[test]
fn found_words_stand_clear_of_one_another() {
    for case in all().into_iter().filter(|case| case.picture.found.is_some()) {
        let (document, at) = drawn(&case);
        let mut baselines: Vec<f64> = document
            .split("<text ")
            .skip(1)
            .filter(|tag| {
                let x = attribute(&format!(" {tag}"), "x").parse::<f64>().unwrap_or(0.0) / 4.0;
                let inset =
                    if case.size.layout == Layout::Phone { 5.0 } else { 10.0 } * case.size.root_px / 16.0;
                (x - at.plot_x_px.0 - inset).abs() < 0.2
            })
            .map(|tag| attribute(&format!(" {tag}"), "y").parse::<f64>().unwrap_or(0.0) / 4.0)
            .collect();
        baselines.sort_by(f64::total_cmp);
        for pair in baselines.windows(2) {
            assert!(pair[1] - pair[0] > 12.0 * case.size.root_px / 16.0, "{}: {baselines:?}", case.name);
        }
    }
}

const WILD: [f64; 12] = [
    f64::NAN,
    f64::INFINITY,
    f64::NEG_INFINITY,
    f64::MAX,
    f64::MIN,
    1e300,
    -1e12,
    1e6,
    f64::MIN_POSITIVE,
    -0.0,
    0.0,
    9.5,
];

/// Every number of a picture is `a` or `b`.
fn wild_picture(a: f64, b: f64) -> Picture {
    let mut thermocline = thermocline(a, (b, a), b);
    thermocline.step_top_m = b;
    let mixed_layer = MixedLayer::At { value_m: b, low_m: a, high_m: b, target_c: a, between_m: (a, b) };
    let today = layercast_core::WarmLayerToday {
        value_m: a,
        span_top_m: b,
        span_bottom_m: a,
        top_m: b,
        bottom_m: a,
        only: false,
    };
    let found = Found {
        thermocline: Some(thermocline),
        metalimnion: Some(metalimnion((a, b, a), (b, a, b))),
        mixed_layer: Some(mixed_layer),
        warm_layer_today: Some(today),
        ..NOTHING
    };
    let point = |depth_m: f64, temp_c: f64, leg: Leg| Point { depth_m, temp_c, leg };
    let bar = |look: BarLook| Bar { top_m: a, bottom_m: b, c_per_m: a, look };
    Picture {
        points: vec![
            point(a, b, Leg::Down),
            point(b, a, Leg::Up),
            point(a, a, Leg::Unknown),
            point(1.0, a, Leg::Up),
        ],
        profile: vec![(a, b), (b, a), (1.0, a), (2.0, b), (b, 4.0), (a, 4.0)],
        otherwise: vec![(a, b), (b, a), (1.0, a), (a, 4.0)],
        guess: vec![(a, b), (1.0, a)],
        axes_only: false,
        bed_m: Some(b),
        least_depth_m: a,
        marks: Some(Marks { mixed: at(a, Some(b)), thermocline: at(b, Some(a)), deep: at(a, None) }),
        marks_short: a > b,
        from_to_m: (a == b).then_some((a, b)),
        lit_m: vec![(a, b), (b, a), (1.0, 2.0)],
        middle: Middle::Rules,
        found: Some(found),
        strip: Strip::Open {
            scale_c_per_m: b,
            bars: vec![
                bar(BarLook::Plain),
                bar(BarLook::Steepest),
                bar(BarLook::Steep),
                bar(BarLook::WarmToday),
            ],
        },
        strip_gains: None,
        step: Some(StepInHand {
            top_m: a,
            bottom_m: b,
            explained: Some(StepWords { drop: "1".into(), thickness: "2".into(), top_c: a, bottom_c: b }),
        }),
        doubts: vec![DoubtAt { depth_m: a, words: "odd".into() }],
        rules: vec![RuleTick { depth_m: b, in_hand: Some("rule".into()) }],
        cursor: Some(2),
        heavier_above_m: Some((a, b)),
        grips: true,
    }
}

fn is_sound(document: &str, at: &Placement) -> bool {
    let pairs = [at.yours_x_px, at.plot_x_px, at.strip_x_px, at.middle_x_px, at.temp_c];
    !document.contains("NaN")
        && !document.contains("inf")
        && [at.surface_y_px, at.px_per_m, at.max_depth_m].iter().all(|value| value.is_finite())
        && pairs.iter().all(|(a, b)| a.is_finite() && b.is_finite())
        && at.grips_y_px.iter().flatten().all(|y| y.is_finite())
}

#[test]
fn wild_numbers_break_nothing() {
    let states =
        [State::Stratified, State::Weak, State::Mixed, State::Inverse, State::Unstable, State::TooFew];
    let mut draws = 0;
    for a in WILD {
        for b in WILD {
            // Two of the six by turns: every state meets every number.
            let turn = draws % 3;
            draws += 1;
            for (place, state) in states.into_iter().enumerate().filter(|(place, _)| place % 3 == turn) {
                let layout = [Layout::Wide, Layout::Log, Layout::Narrow, Layout::Phone][(place + draws) % 4];
                let mut picture = wild_picture(a, b);
                if let Some(found) = &mut picture.found {
                    found.state = state;
                    found.fastest_warming = found.thermocline;
                }
                let case = Case {
                    size: Size { layout, ..PROFILE },
                    words: tempting_words(),
                    ..case("wild", picture)
                };
                let (document, at) = drawn(&case);
                assert!(is_sound(&document, &at), "{a} {b} {state:?}: {at:?}");
            }
        }
    }
}

#[test]
fn wild_sizes_give_blank_paper_or_a_picture() {
    let sides = [0.0, 5.0, 100.0, 180.0, 400.0, f64::NAN, -3.0];
    for width_px in sides {
        for height_px in sides {
            for root_px in [16.0, f64::NAN, 1e9] {
                for layout in [Layout::Wide, Layout::Phone, Layout::Log] {
                    let size = Size { width_px, height_px, root_px, scale: f64::NAN, layout };
                    let case = Case { size, words: summer_words(), ..case("size", summer_found()) };
                    let (document, at) = drawn(&case);
                    assert!(is_sound(&document, &at), "{size:?}: {at:?}");
                }
            }
        }
    }
    let size = Size { width_px: f64::MAX, height_px: 1e9, ..PROFILE };
    let (document, at) = drawn(&Case { size, ..case("size", summer_found()) });
    assert!(is_sound(&document, &at), "{at:?}");
    let (_, at) = drawn(&Case { size: Size { width_px: 5.0, ..PROFILE }, ..case("size", summer_found()) });
    assert_eq!(at, Placement::default());
}

#[test]
fn equal_depths_and_single_readings_are_drawn() {
    let point = |depth_m: f64| Point { depth_m, temp_c: 4.0, leg: Leg::Down };
    for depths in [vec![0.0], vec![3.0; 10_000], vec![0.0; 5], vec![-2.0], Vec::new()] {
        let picture = Picture {
            points: depths.iter().copied().map(point).collect(),
            profile: depths.iter().map(|depth_m| (*depth_m, 4.0)).collect(),
            ..readings(&SUMMER, None)
        };
        let (document, at) = drawn(&case("equal", picture));
        assert!(is_sound(&document, &at), "{at:?}");
        let inside = depths.iter().filter(|depth_m| **depth_m >= 0.0).count();
        assert_eq!(at.points_px.iter().filter(|(x, _)| x.is_finite()).count(), inside);
    }
}

#[test]
fn many_readings_grow_the_picture_in_proportion() {
    let with = |count: usize| {
        let at = |place: usize| place as f64 * 30.0 / count as f64;
        let temp_c = |place: usize| 20.0 - at(place) / 3.0 + (place % 7) as f64 * 0.05;
        let point = |place: usize| Point { depth_m: at(place), temp_c: temp_c(place), leg: Leg::Down };
        let bar = |place: usize| Bar {
            top_m: at(place),
            bottom_m: at(place + 1),
            c_per_m: (temp_c(place) - temp_c(place + 1)) * count as f64 / 30.0,
            look: BarLook::Plain,
        };
        let picture = Picture {
            points: (0..count).map(point).collect(),
            profile: (0..count).map(|place| (at(place), temp_c(place))).collect(),
            strip: Strip::Open { scale_c_per_m: 8.0, bars: (0..count - 1).map(bar).collect() },
            ..summer_found()
        };
        let (document, placement) = drawn(&case("many", picture));
        assert!(is_sound(&document, &placement));
        document.len()
    };
    let (some, many) = (with(10_000), with(100_000));
    assert!(many < some * 11, "{some} bytes for 10,000, {many} for 100,000");
}

/// Calls of a canvas: each point of a shape is one, and a few for the shape.
fn canvas_calls(document: &str) -> usize {
    let points = |name: &'static str, beside: usize| -> usize {
        let tags = document.split(name).skip(1);
        tags.map(|tag| attribute(tag, "points").split(' ').count() + beside).sum()
    };
    let others = [("<rect", 2), ("<circle", 6), ("<text ", 8)];
    let others: usize = others.iter().map(|(name, each)| document.matches(name).count() * each).sum();
    points("<polygon", 4) + points("<polyline", 5) + others
}

/// A grip that is dragged redraws the picture each time. With five points a hatch line and the way back along them, these
/// took 5406, 3952 and 3674 calls.
#[test]
fn hatching_takes_few_calls() {
    let most = [("profile-found", 4300), ("phone-found", 3200), ("profile-mixed", 3100)];
    for case in all() {
        let Some((name, most)) = most.iter().find(|(name, _)| *name == case.name) else { continue };
        let calls = canvas_calls(&drawn(&case).0);
        assert!(calls <= *most, "{name}: {calls}");
    }
}

/// What a polygon of straight edges encloses by the rule of turns, in square pixels of the document.
fn enclosed(points: &str) -> f64 {
    let points: Vec<(f64, f64)> = points
        .split(' ')
        .filter_map(|point| point.split_once(','))
        .filter_map(|(x, y)| Some((x.parse().ok()?, y.parse().ok()?)))
        .collect();
    let next = points.iter().cycle().skip(1);
    points.iter().zip(next).map(|(a, b)| a.0 * b.1 - b.0 * a.1).sum::<f64>().abs() / 2.0
}

#[test]
fn hatching_covers_only_its_strokes() {
    // The steep bands and bars of the summer water: strokes of 1.1 u at 45°, a gap of 6 or 4.6 u apart.
    let (document, at) = drawn(&case("hatch", summer_found()));
    let steep_ink = "#39693F";
    let shapes = document.split("<polygon").skip(1).filter(|tag| attribute(tag, "fill") == steep_ink);
    let inked: f64 = shapes.map(|tag| enclosed(attribute(tag, "points"))).sum::<f64>() / 16.0;
    let lane = 24.0 * 4.0 * at.px_per_m;
    let air = 5.0;
    let unit = (at.strip_x_px.1 - at.strip_x_px.0) / 6.0;
    let steep = [1.9, 3.5, 4.5, 3.6, 2.6, 1.9, 1.4].map(|c_per_m| c_per_m * unit * (at.px_per_m / 2.0 - air));
    let share = |gap: f64| 1.1 * std::f64::consts::SQRT_2 / gap;
    let expected = lane * share(6.0) + steep.iter().sum::<f64>() * share(4.6);
    assert!((inked / expected - 1.0).abs() < 0.15, "{inked} of {expected} square pixels");
}

#[test]
fn a_phone_has_no_column_of_means() {
    let wide = questions(COVERED);
    assert!(matches!(wide.middle, Middle::Means(_)));
    let phone =
        Size { width_px: 374.0, height_px: 320.0, layout: Layout::Phone, ..case("", wide.clone()).size };
    let on_phone = Case { size: phone, ..case("phone", wide.clone()) };
    assert!(texts(&drawn(&case("wide", wide)).0).contains(&"20.05"));
    let (document, at) = drawn(&on_phone);
    assert!(!texts(&document).contains(&"20.05") && !texts(&document).contains(&"Mean"));
    assert_eq!(at.middle_x_px.0, at.middle_x_px.1);
}

/// Every text of a document: its words and its left and right, CSS pixels.
fn spread(document: &str) -> Vec<(String, f64, f64)> {
    let one = |tag: &str| {
        let (head, rest) = tag.split_once(">\n")?;
        let text = rest.split_once("\n</text>")?.0.to_owned();
        let (x, size): (f64, f64) =
            (attribute(tag, "x").parse().ok()?, attribute(tag, "font-size").parse().ok()?);
        // Figures of one width, 0.6 em each, the point 0.29: enough for numbers.
        let wide = text.chars().map(|c| if c == '.' { 0.29 } else { 0.6 }).sum::<f64>() * size;
        let left = match attribute(head, "text-anchor") {
            "end" => x - wide,
            "middle" => x - wide / 2.0,
            _ => x,
        };
        Some((text, left / 4.0, (left + wide) / 4.0))
    };
    document.split("<text").skip(1).filter_map(one).collect()
}

#[test]
fn the_number_of_the_steepest_bar_stays_in_the_strip() {
    for height_px in [240.0, 280.0, 320.0, 400.0, 480.0] {
        let size =
            Size { width_px: 374.0, height_px, layout: Layout::Phone, ..case("", summer_found()).size };
        let (document, at) = drawn(&Case { size, words: summer_words(), ..case("phone", summer_found()) });
        let all = spread(&document);
        let (_, left, right) =
            all.iter().find(|(text, ..)| text == "5.0").expect("the steepest bar's number");
        assert!(
            *right <= at.strip_x_px.1 + 1.0 && *left >= at.strip_x_px.0,
            "{height_px}: {left} to {right} in {:?}",
            at.strip_x_px
        );
    }
}

#[test]
fn the_cursors_line_strikes_through_no_words() {
    for place in 0..summer_found().points.len() {
        let picture = Picture { cursor: Some(place), ..summer_found() };
        let (without, _) = drawn(&Case { words: summer_words(), ..case("no", summer_found()) });
        let (document, _) = drawn(&Case { words: summer_words(), ..case("cursor", picture) });
        let known: std::collections::BTreeSet<&str> = without.lines().collect();
        let added = document.lines().filter(|line| line.starts_with("<rect") && !known.contains(line));
        let rects: Vec<[f64; 4]> = added
            .map(|tag| {
                ["x", "y", "width", "height"].map(|name| attribute(tag, name).parse().unwrap_or(f64::NAN))
            })
            .collect();
        for tag in document.split("<text").skip(1) {
            let of = |name| attribute(tag, name).parse::<f64>().unwrap_or(f64::NAN);
            // The document hangs a text by its top, 0.76 em of the size it gives above the baseline.
            let (x, size) = (of("x"), of("font-size"));
            let baseline = of("y") + 0.76 * size;
            let near = match attribute(tag, "text-anchor") {
                "end" => x - 2.0,
                _ => x + 2.0,
            };
            for [left, top, width, height] in &rects {
                let middle = top + height / 2.0;
                let struck = (*left..left + width).contains(&near)
                    && middle > baseline - 0.6 * size
                    && middle < baseline;
                assert!(!struck, "{place}: {tag}");
            }
        }
    }
}
