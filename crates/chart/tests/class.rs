//! The class pictures, compared byte for byte with those stored in `tests/class_pictures`, and what holds for every class.
//!
//! After a change that is meant: `LAYERCAST_REWRITE_PICTURES=1 cargo test -p layercast-chart --test class`, then look at every
//! picture that changed before it is committed. The groups are invented; what was "found" is written down for the pictures.

#![allow(clippy::expect_used, dead_code)]

mod cases;

use std::collections::BTreeSet;
use std::path::PathBuf;

use cases::{metalimnion, thermocline, water};
use layercast_chart::{
    CORES_IN_A_ROW, ClassLevel, ClassPicture, ClassPlacement, ClassWords, Core, Curve, CurveLook, Found,
    Layout, Size, Surface, Theme, as_svg, draw_class,
};
use layercast_core::State;

fn words() -> ClassWords {
    ClassWords {
        decimal: '.',
        depth: vec!["Depth,".to_owned(), "m".to_owned()],
        temperature: "Temperature, °C".to_owned(),
        middle: "middle".to_owned(),
    }
}

/// The picture as a document, as it is stored.
fn document(picture: &ClassPicture, theme: Theme, size: Size, title: &str) -> String {
    as_svg(size, title, |backend, size| draw_class(backend, picture, theme, size, &words(), Surface::Svg))
        .expect("SVG never fails")
        .0
}

fn nothing(state: State) -> Found {
    Found {
        state,
        thermocline: None,
        metalimnion: None,
        mixed_layer: None,
        warm_layer_today: None,
        fastest_warming: None,
        mixed_by_density: false,
    }
}

fn core(name: &str, found: Found, last_m: f64, bed_m: Option<f64>, number: &str) -> Core {
    Core {
        name: name.to_owned(),
        found: Some(found),
        last_m,
        bed_m,
        number: number.to_owned(),
        words: ["no", "thermocline", "here"].map(str::to_owned).to_vec(),
        short: "none".to_owned(),
        marked_m: None,
    }
}

fn layered(name: &str, at_m: f64, span: (f64, f64), steep: (f64, f64), last_m: f64) -> Core {
    let found = Found {
        thermocline: Some(thermocline(at_m, span, 4.0)),
        metalimnion: Some(metalimnion((steep.0, steep.0, steep.0), (steep.1, steep.1, steep.1))),
        ..nothing(State::Stratified)
    };
    core(name, found, last_m, Some(last_m + 0.25), &format!("{at_m:.2}"))
}

/// Eight groups of one morning; D at the dock, F where the bed comes before the deep layer.
fn eight() -> Vec<Core> {
    let steep = |a, b| (a, b);
    let mut f = layered("F", 4.25, (3.5, 4.5), steep(2.5, 7.0), 7.0);
    if let Some(found) = &mut f.found
        && let Some(steep) = &mut found.metalimnion
    {
        steep.cut_off = true;
    }
    vec![
        layered("A", 3.75, (3.5, 4.0), steep(2.5, 6.5), 9.5),
        layered("B", 4.25, (3.5, 4.5), steep(2.5, 7.0), 9.5),
        layered("C", 3.75, (3.5, 4.0), steep(2.5, 6.5), 9.5),
        core("D", nothing(State::Mixed), 2.0, Some(2.25), ""),
        layered("E", 4.25, (3.5, 5.0), steep(3.0, 7.0), 9.5),
        f,
        layered("G", 3.75, (3.0, 5.0), steep(2.5, 7.0), 9.5),
        layered("H", 4.75, (4.0, 5.0), steep(3.0, 7.5), 9.5),
    ]
}

/// Every other kind of water: weak, cannot be told, under ice, even to the bottom, only marked yet.
fn rare() -> Vec<Core> {
    let mut weak = nothing(State::Weak);
    weak.thermocline = Some(thermocline(3.75, (3.0, 4.5), 0.8));
    let mut unsure = nothing(State::Weak);
    unsure.thermocline = Some(thermocline(4.75, (1.5, 8.0), 0.6));
    if let Some(t) = &mut unsure.thermocline {
        t.tellable = false;
    }
    let mut ice = nothing(State::Inverse);
    ice.fastest_warming = Some(thermocline(1.75, (1.0, 2.5), -1.6));
    let mut told = core("L", unsure, 9.5, None, "");
    told.words = vec!["can’t".to_owned(), "tell".to_owned()];
    let mut marked = core("P", nothing(State::Stratified), 9.5, Some(9.75), "");
    (marked.found, marked.marked_m) = (None, Some(4.0));
    (marked.words, marked.short) = (Vec::new(), String::new());
    vec![
        core("K", weak, 9.5, None, "3.75"),
        told,
        core("M", ice, 9.5, Some(9.75), "1.75"),
        core("N", nothing(State::Mixed), 9.5, Some(9.75), ""),
        marked,
    ]
}

fn forty() -> Vec<Core> {
    let eight = eight();
    (0..40)
        .filter_map(|n| {
            let mut core = eight.get(n % 8)?.clone();
            core.name = format!("{}{}", core.name, n / 8 + 1);
            Some(core)
        })
        .collect()
}

fn curves(in_hand: Option<usize>) -> Vec<Curve> {
    let waters = [&water::SUMMER, &water::TWO_LAYERS, &water::CUT_OFF, &water::NEAR_SURFACE, &water::SUMMER];
    (waters.iter().zip(["A", "B", "C", "D", "E"]).enumerate())
        .map(|(n, (water, name))| Curve {
            name: name.to_owned(),
            points: (cases::mean_c(water).iter().enumerate())
                .map(|(place, temp_c)| (place as f64 * water.step_m, temp_c - n as f64 * 0.2))
                .collect(),
            look: match in_hand {
                None => CurveLook::Plain,
                Some(k) if k == n => CurveLook::InHand,
                Some(_) => CurveLook::Faint,
            },
        })
        .collect()
}

fn forty_curves(in_hand: Option<usize>) -> Vec<Curve> {
    let some = curves(None);
    (0..40)
        .filter_map(|n| {
            let mut curve = some.get(n % some.len())?.clone();
            curve.name = format!("{}{}", curve.name, n / some.len() + 1);
            curve.points.iter_mut().for_each(|point| point.1 += (n / some.len()) as f64 * 0.13);
            curve.look = match in_hand {
                None => CurveLook::Plain,
                Some(k) if k == n => CurveLook::InHand,
                Some(_) => CurveLook::Faint,
            };
            Some(curve)
        })
        .collect()
}

fn levels() -> Vec<ClassLevel> {
    let mean = cases::mean_c(&water::SUMMER);
    (mean.iter().enumerate())
        .map(|(place, middle_c)| ClassLevel {
            depth_m: place as f64 * 0.5,
            low_c: middle_c - 0.4 - place as f64 * 0.03,
            middle_c: *middle_c,
            high_c: middle_c + 0.6,
        })
        .collect()
}

const LAPTOP: Size =
    Size { width_px: 866.0, height_px: 532.0, root_px: 16.0, scale: 1.0, layout: Layout::Wide };
const WALL: Size =
    Size { width_px: 1890.0, height_px: 800.0, root_px: 28.0, scale: 1.0, layout: Layout::Wide };
const PHONE: Size =
    Size { width_px: 374.0, height_px: 300.0, root_px: 16.0, scale: 1.0, layout: Layout::Phone };

fn all() -> Vec<(&'static str, ClassPicture, Theme, Size)> {
    let cores = |cores, shared_m| ClassPicture::Cores { cores, shared_m };
    let touch = Some((4.0, 4.0));
    vec![
        ("eight", cores(eight(), touch), Theme::Day, LAPTOP),
        ("eight-night", cores(eight(), touch), Theme::Night, LAPTOP),
        ("eight-wall", cores(eight(), touch), Theme::Projector, WALL),
        ("band-shared", cores(eight().into_iter().take(3).collect(), Some((3.5, 4.0))), Theme::Day, LAPTOP),
        ("none-shared", cores(eight(), None), Theme::Sunlight, LAPTOP),
        ("rare-waters", cores(rare(), None), Theme::Day, LAPTOP),
        ("rare-waters-wall", cores(rare(), None), Theme::Projector, WALL),
        ("forty", cores(forty(), None), Theme::Projector, WALL),
        ("phone", cores(eight().into_iter().take(4).collect(), None), Theme::Day, PHONE),
        ("one", cores(eight().into_iter().take(1).collect(), None), Theme::Day, LAPTOP),
        ("none", cores(Vec::new(), None), Theme::Day, LAPTOP),
        ("curves", ClassPicture::Curves { curves: curves(None), levels: Vec::new() }, Theme::Day, LAPTOP),
        (
            "one-against",
            ClassPicture::Curves { curves: curves(Some(1)), levels: Vec::new() },
            Theme::Projector,
            WALL,
        ),
        (
            "forty-curves",
            ClassPicture::Curves { curves: forty_curves(None), levels: Vec::new() },
            Theme::Day,
            LAPTOP,
        ),
        (
            "forty-one-against",
            ClassPicture::Curves { curves: forty_curves(Some(11)), levels: Vec::new() },
            Theme::Day,
            LAPTOP,
        ),
        (
            "range-with-one",
            ClassPicture::Curves { curves: curves(Some(1)).drain(1..2).collect(), levels: levels() },
            Theme::Day,
            LAPTOP,
        ),
        ("range", ClassPicture::Curves { curves: Vec::new(), levels: levels() }, Theme::Day, LAPTOP),
    ]
}

#[test]
fn class_pictures_are_as_stored() {
    let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/class_pictures");
    let rewrite = std::env::var_os("LAYERCAST_REWRITE_PICTURES").is_some();
    let mut changed = Vec::new();
    for (name, picture, theme, size) in all() {
        let path = folder.join(format!("{name}.svg"));
        let document = document(&picture, theme, size, name);
        if rewrite {
            std::fs::create_dir_all(&folder).expect("a folder can be made");
            std::fs::write(&path, &document).expect("the folder of pictures can be written");
        }
        if std::fs::read_to_string(&path).unwrap_or_default() != document {
            changed.push(name);
        }
    }
    assert!(changed.is_empty(), "these pictures are not as stored: {changed:?}");
    let names: BTreeSet<String> = all().iter().map(|(name, ..)| format!("{name}.svg")).collect();
    let stored: BTreeSet<String> = std::fs::read_dir(folder)
        .expect("the folder of pictures is there")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .collect();
    assert_eq!(names, stored, "every stored picture has its case");
}

fn placed(cores: Vec<Core>, size: Size) -> ClassPlacement {
    let mut raw = String::new();
    let backend = plotters::backend::SVGBackend::with_string(&mut raw, (2000, 1000));
    let picture = ClassPicture::Cores { cores, shared_m: None };
    draw_class(backend, &picture, Theme::Day, size, &words(), Surface::Svg).expect("SVG never fails")
}

#[test]
fn cores_are_never_thinner_for_more_groups_than_a_row_holds() {
    let width = |n: usize| placed(forty().into_iter().take(n).collect(), WALL).cores_px.first().map(|c| c.2);
    assert!(width(CORES_IN_A_ROW) < width(8));
    for n in CORES_IN_A_ROW + 1..=40 {
        assert!(width(n) >= width(CORES_IN_A_ROW), "{n} groups");
        assert_eq!(placed(forty().into_iter().take(n).collect(), WALL).cores_px.len(), n);
    }
}

#[test]
fn cores_stand_side_by_side_inside_the_picture() {
    for cores in [eight(), rare(), forty()] {
        let cells = placed(cores, WALL).cores_px;
        for pair in cells.windows(2) {
            let [a, b] = pair else { continue };
            assert!(b.1 > a.1 || b.0 >= a.0 + a.2 - 1e-6, "{a:?} {b:?}");
        }
        for (x, y, wide, high) in cells {
            assert!(x >= 0.0 && x + wide <= 1890.0 && y >= 0.0 && y + high <= 800.0 + 1e-6);
        }
    }
}

#[test]
fn wild_numbers_draw_something_and_never_panic() {
    let wild = [f64::NAN, f64::INFINITY, -1.0, 0.0, 1e9, 1e300];
    for a in wild {
        for b in wild {
            let mut one = layered("A", a, (b, a), (a, b), b);
            one.bed_m = Some(a);
            one.marked_m = Some(b);
            let sizes = [LAPTOP, Size { width_px: a, height_px: b, ..LAPTOP }];
            for size in sizes {
                let picture = ClassPicture::Cores { cores: vec![one.clone()], shared_m: Some((a, b)) };
                document(&picture, Theme::Day, size, "wild");
                let curve =
                    Curve { name: "A".to_owned(), points: vec![(a, b), (b, a)], look: CurveLook::Guess };
                let level = ClassLevel { depth_m: a, low_c: b, middle_c: a, high_c: b };
                let picture = ClassPicture::Curves { curves: vec![curve], levels: vec![level; 3] };
                document(&picture, Theme::Day, size, "wild");
            }
        }
    }
}
