//! Waters the measurement goes over: check profiles and open casts as they stand, and read down and up by a class.

use super::super::{Dice, Pond, Row, check_profiles, demo_ponds, whole_lesson};
use layercast_core::Leg;
use layercast_lesson::act;
use layercast_lesson::action::Action;
use layercast_lesson::document::{Lesson, Notebook};
use std::collections::BTreeMap;

/// Where a water is from.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum From {
    /// A check profile, as it stands (read once) or as two equal legs.
    Check,
    /// A check profile with noise, read down and up to 0.1 °C.
    CheckRead,
    /// Open data, as they stand.
    Open,
    /// Open data with noise, read down and up to 0.1 °C.
    OpenRead,
    /// Invented water of the demo.
    Demo,
}

/// A water with its name.
pub struct Water {
    pub name: String,
    pub from: From,
    pub pond: Pond,
}

fn water(name: &str, how: &str, from: From, rows: Vec<Row>, leg: Leg) -> Water {
    let pond = Pond { lesson: whole_lesson(), ..Pond::new(&format!("{name}, {how}"), rows, leg) };
    Water { name: name.to_owned(), from, pond: as_used(pond) }
}

/// Without the readings that the checks leave out: a student works with those that count.
fn as_used(mut pond: Pond) -> Pond {
    let checked = || pond.cast.readings.iter().zip(&pond.analysis.checked);
    let left_out: Vec<(f64, Leg)> =
        checked().filter(|(_, c)| !c.used).map(|(r, _)| (r.depth_m, r.leg)).collect();
    for (z, leg) in left_out {
        let Some(at) = pond.rows.iter().position(|r| (r.0 - z).abs() < 1e-9) else { continue };
        match pond.rows[at] {
            (z, _, Some(up)) if leg == Leg::Down => pond.rows[at] = (z, up, None),
            (z, down, Some(_)) => pond.rows[at] = (z, down, None),
            _ => drop(pond.rows.remove(at)),
        }
    }
    pond
}

/// Rows of a table with a name, a depth and a temperature in these columns.
fn open_casts(text: &str, called: &str, columns: (usize, usize, usize)) -> Vec<(String, Vec<Row>)> {
    let mut casts: Vec<(String, Vec<Row>)> = Vec::new();
    for line in text.lines().filter(|l| !l.starts_with('#')).skip(1) {
        let cells: Vec<&str> = line.split(',').collect();
        let name = format!("{called}{}", cells[columns.0]);
        let row = (cells[columns.1].parse().unwrap(), cells[columns.2].parse().unwrap(), None);
        match casts.iter_mut().find(|c| c.0 == name) {
            Some((_, rows)) => rows.push(row),
            None => casts.push((name, vec![row])),
        }
    }
    for (_, rows) in &mut casts {
        rows.sort_by(|a, b| a.0.total_cmp(&b.0));
        rows.dedup_by(|a, b| (a.0 - b.0).abs() < 1e-6);
    }
    casts
}

/// The glider pair with a slow thermometer, metre by metre: means of the samples within half a metre.
fn lag_pair() -> Vec<Row> {
    let text = include_str!("../../../../../tests/reference/open-data/lag_pair.csv");
    let mut sums: BTreeMap<i64, [(f64, f64); 2]> = BTreeMap::new();
    for line in text.lines().filter(|l| !l.starts_with('#')).skip(1) {
        let cells: Vec<&str> = line.split(',').collect();
        let depth_m: f64 = cells[3].parse().unwrap();
        let temp_c: f64 = cells[5].parse().unwrap();
        let sum = &mut sums.entry(depth_m.round() as i64).or_default()[usize::from(cells[0] == "up")];
        (sum.0, sum.1) = (sum.0 + temp_c, sum.1 + 1.0);
    }
    let row = |(z, [down, up]): (i64, [(f64, f64); 2])| {
        (down.1 > 0.0 && up.1 > 0.0).then(|| {
            let to_hundredths = |s: (f64, f64)| (100.0 * s.0 / s.1).round() / 100.0;
            (z as f64, to_hundredths(down), Some(to_hundredths(up)))
        })
    };
    sums.into_iter().filter_map(row).collect()
}

/// The open casts, each read once.
pub fn open() -> Vec<(String, Vec<Row>)> {
    let mut casts = open_casts(
        include_str!("../../../../../tests/reference/open-data/baltic_pairs.csv"),
        "baltic ",
        (0, 5, 6),
    );
    casts.extend(open_casts(
        include_str!("../../../../../tests/reference/open-data/monthly_means.csv"),
        "month ",
        (0, 1, 2),
    ));
    casts.extend(open_casts(
        include_str!("../../../../../tests/reference/open-data/teos10_check_casts.csv"),
        "",
        (0, 4, 5),
    ));
    casts.extend(open_casts(
        include_str!("../../../../../tests/reference/open-data/teos10_demo_casts.csv"),
        "",
        (0, 4, 5),
    ));
    casts
}

/// A class reads a profile down and up: noise of so many °C, to a tenth.
pub fn read(dice: &mut Dice, rows: &[Row], noise_c: f64) -> Vec<Row> {
    rows.iter()
        .map(|(z, t, _)| {
            let mut once = || ((t + noise_c * dice.normal()) * 10.0).round() / 10.0;
            (*z, once(), Some(once()))
        })
        .collect()
}

/// Noise of a class's readings, °C.
const NOISE_C: [f64; 2] = [0.05, 0.1];

/// Every water; check profiles and open casts read by so many classes. Oxygen falls with depth in every second of those.
pub fn all(check: usize, of_open: usize) -> Vec<Water> {
    let mut dice = Dice::new(20_261_126);
    let mut pairs = Dice::new(23_24);
    let mut list = Vec::new();
    for (name, rows) in check_profiles() {
        list.push(water(&name, "read once", From::Check, rows.clone(), Leg::Unknown));
        let both = rows.iter().map(|r| (r.0, r.1, Some(r.1))).collect();
        list.push(water(&name, "two equal legs", From::Check, both, Leg::Down));
        for i in 0..check {
            let read_rows = read(&mut dice, &rows, NOISE_C[i % 2]);
            let mut class = water(&name, &format!("class {i}"), From::CheckRead, read_rows, Leg::Down);
            if i % 2 == 1 {
                class.pond.oxygen_mg_l = oxygen(&mut dice, &class.pond);
            }
            list.push(class);
            list.push(beside(&mut pairs, &name, &rows, i));
        }
    }
    for (name, rows) in open() {
        list.push(water(&name, "as it stands", From::Open, rows.clone(), Leg::Unknown));
        for i in 0..of_open {
            let rows = read(&mut dice, &rows, NOISE_C[i % 2]);
            list.push(water(&name, &format!("class {i}"), From::OpenRead, rows, Leg::Down));
        }
    }
    list.push(water("lag pair", "by the metre", From::Open, lag_pair(), Leg::Down));
    for pond in demo_ponds() {
        let pond = as_used(Pond { lesson: whole_lesson(), ..pond });
        list.push(Water { name: pond.name.clone(), from: From::Demo, pond });
    }
    list
}

/// A probe that reads so much warmer is planted in every second pair, °C.
const PLANTED_C: f64 = 0.4;

/// The same water read by two groups: the other one's cast comes with the lesson.
fn beside(dice: &mut Dice, name: &str, rows: &[Row], i: usize) -> Water {
    let noise_c = NOISE_C[i % 2];
    let (planted, by_c) = if i.is_multiple_of(2) { ("probe", PLANTED_C) } else { ("chance", 0.0) };
    let own = read(dice, rows, noise_c);
    let warmer: Vec<Row> = rows.iter().map(|r| (r.0, r.1 + by_c, r.2)).collect();
    let mut table = String::from("Depth (m)\tDown (°C)\tUp (°C)\n");
    for (z, down, up) in read(dice, &warmer, noise_c) {
        table += &format!("{z}\t{down:.1}\t{:.1}\n", up.unwrap_or(down));
    }
    let other = act(&Notebook::new("B-KTZR", Lesson::first()), &Action::Paste { text: table }).cast;
    assert_eq!(other.entries.len(), 2 * rows.len(), "{name}: the other cast is read without a question");
    let mut pair =
        water(name, &format!("beside another group, {planted} {i}"), From::CheckRead, own, Leg::Down);
    pair.pond.lesson = Lesson { kinds: vec![23, 24], other: Some(Box::new(other)), ..pair.pond.lesson };
    pair.pond.planted = planted;
    pair
}

/// A quick part: the check profiles read by one class each, and the invented waters.
pub fn quick() -> Vec<Water> {
    let mut list = all(1, 0);
    list.retain(|w| matches!(w.from, From::CheckRead | From::Demo));
    list
}

/// Oxygen at the marks, mg/L: falling from 9 to some 0 to 6, read to a tenth.
fn oxygen(dice: &mut Dice, pond: &Pond) -> Vec<(f64, f64)> {
    let (least, last_m) = (6.0 * dice.even(), pond.last_m());
    let fall = |z: f64| 9.0 - (9.0 - least) * (z / last_m);
    let tenth = |x: f64| (10.0 * x).round() / 10.0;
    pond.rows.iter().map(|r| (r.0, tenth(fall(r.0)))).collect()
}
