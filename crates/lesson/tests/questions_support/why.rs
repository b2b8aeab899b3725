//! Right and wrong answers to the questions that ask why, worked out from the rows alone where a row can tell.
#![allow(dead_code, reason = "each test file uses its own part")]

use super::answers::{Wrong, at, place};
use super::{By, Fields, Pond, fields, two};
use layercast_core::water::density::density_kg_m3;
use layercast_core::whatif::{Change, width_m};
use layercast_core::{Cast, Doubt, Method, State};
use layercast_lesson::questions::{self, Asked};
use layercast_lesson::view::{FieldKind, SmallPictures};

fn thousandths(x: f64) -> f64 {
    (x * 1000.0).round() / 1000.0
}

/// Warm and cold water of kind 18, °C, and how many times as much.
pub fn degrees(pond: &Pond) -> (f64, f64, f64) {
    let gain = |t: f64| thousandths(thousandths(density_kg_m3(t - 1.0)) - thousandths(density_kg_m3(t)));
    let means = pond.means();
    let (top, bottom) = (means[0].1, means[means.len() - 1].1);
    let own = gain(top) / gain(bottom);
    if bottom >= 5.0 && own > 2.25 { (top, bottom, own) } else { (25.0, 6.0, gain(25.0) / gain(6.0)) }
}

/// °C·m between a series and its deepest temperature, the surface as warm as the first reading.
pub fn degree_metres(series: &[(f64, f64)]) -> f64 {
    let target = series[series.len() - 1].1;
    let warms = series[0].1 < target;
    let over = |t: f64| (if warms { target - t } else { t - target }).max(0.0);
    let mut fine = series[0].0 * over(series[0].1);
    for w in series.windows(2) {
        // In a hundred slices, so that lines that cross the target count only above it.
        let h = (w[1].0 - w[0].0) / 100.0;
        for i in 0..100 {
            let share = (f64::from(i) + 0.5) / 100.0;
            fine += h * over(w[0].1 + share * (w[1].1 - w[0].1));
        }
    }
    fine
}

/// The small pictures of a question.
pub fn pictures(pond: &Pond, asked: &Asked) -> SmallPictures {
    let paper = pond.paper();
    let index = paper.asked.iter().position(|a| a.id == asked.id).unwrap();
    let view = questions::view(&pond.context(), &paper, index).unwrap();
    let mut fields = view.parts.into_iter().flat_map(|p| p.lines).flat_map(|l| l.fields);
    fields
        .find_map(|f| if let FieldKind::Pictures { pictures } = f.kind { Some(pictures) } else { None })
        .unwrap()
}

pub fn area(curve: &[(f64, f64)]) -> f64 {
    curve.windows(2).map(|w| (w[1].0 - w[0].0) * (w[0].1 + w[1].1) / 2.0).sum()
}

/// Temperatures of a curve at its top and at its bottom.
pub fn ends(curve: &[(f64, f64)]) -> (f64, f64) {
    (curve[0].1, curve[curve.len() - 1].1)
}

/// The picture with the heat of the water before.
pub fn as_much_heat(pictures: &SmallPictures) -> Vec<&str> {
    // The cells of the column hold the heat to the last bits, the lines drawn through them a little less.
    let own = area(&pictures.own);
    let near = |c: &[(f64, f64)]| (area(c) - own).abs() < 0.005 * own;
    pictures.options.iter().filter(|o| near(&o.curve)).map(|o| o.value.as_str()).collect()
}

/// The picture that is colder on top, no colder at the bottom, and nowhere warmer above.
pub fn cooled_from_above(pictures: &SmallPictures) -> Vec<&str> {
    let (top, bottom) = ends(&pictures.own);
    let fits = |c: &[(f64, f64)]| {
        let (t, b) = ends(c);
        t < top - 0.3 && (b - bottom).abs() < 0.3 && c.windows(2).all(|w| w[0].1 >= w[1].1 - 0.35)
    };
    pictures.options.iter().filter(|o| fits(&o.curve)).map(|o| o.value.as_str()).collect()
}

/// Steps of kind 25: marks every so many metres, and the steepest of them.
fn thin(pond: &Pond, step_m: f64) -> Option<(f64, f64)> {
    let means = pond.means();
    let turn = super::answers::turned(pond);
    let kept: Vec<(f64, f64)> =
        means.into_iter().filter(|p| (p.0 / step_m - (p.0 / step_m).round()).abs() < 1e-6).collect();
    let rate = |w: &[(f64, f64)]| turn * (w[0].1 - w[1].1) / (w[1].0 - w[0].0);
    let best = kept.windows(2).max_by(|a, b| rate(a).total_cmp(&rate(b)))?;
    Some((best[0].0, best[1].0))
}

fn step_as_read(pond: &Pond) -> Option<(f64, f64)> {
    let t = pond.analysis.thermocline.or(pond.analysis.fastest_warming)?;
    Some((t.step_top_m, t.step_bottom_m))
}

/// Which options of kind 26 are right.
pub fn changes(pond: &Pond) -> Vec<&'static str> {
    pond.changes.get_or_init(|| changes_of(&pond.cast, &pond.analysis.method)).clone()
}

/// Changes that gain within a tenth of the most, by the trials of core.
pub fn changes_of(cast: &Cast, method: &Method) -> Vec<&'static str> {
    let width = |c| width_m(cast, method, c, 300);
    let Some(now) = width(None) else { return Vec::new() };
    let names = ["half_step", "repeats", "probe", "cable", "decimals"];
    let gains: Vec<(f64, &str)> = Change::ALL
        .into_iter()
        .zip(names)
        .map(|(c, name)| (now - width(Some(c)).unwrap_or(now), name))
        .collect();
    let most = gains.iter().map(|g| g.0).fold(0.0, f64::max);
    if most < 0.05 * now {
        return vec!["none"];
    }
    gains.iter().filter(|g| g.0 >= 0.9 * most - 1e-9).map(|g| g.1).collect()
}

/// What the readings of kind 107 say.
pub fn says(pond: &Pond) -> &'static str {
    let (upper, lower) = pond.analysis.facts.unwrap().inversion_pair_m.unwrap();
    let rows: Vec<_> =
        pond.rows.iter().filter(|r| [upper, lower].iter().any(|z| (r.0 - z).abs() < 1e-6)).collect();
    let spiky = pond.cast.readings.iter().zip(&pond.analysis.checked).any(|(r, c)| {
        [upper, lower].iter().any(|z| (r.depth_m - z).abs() < 1e-6)
            && matches!(c.doubt, Some(Doubt::Spike { .. } | Doubt::Range { .. }))
    });
    let two_legs = pond.rows.iter().any(|r| r.2.is_some());
    if spiky || rows.iter().any(|r| r.2.is_some_and(|up| (up - r.1).abs() > 0.2 + 1e-9)) {
        "wrong"
    } else if !two_legs {
        "again"
    } else if upper <= pond.rows[0].0 + 0.5 + 1e-9 {
        "cooling"
    } else {
        "salt"
    }
}

/// Heat of today's layer, MJ per m².
pub fn layer_mj(pond: &Pond) -> f64 {
    let today = pond.analysis.warm_layer_today.unwrap();
    let upper: Vec<_> = pond.means().into_iter().filter(|p| p.0 <= today.bottom_m + 1e-6).collect();
    4.18 * degree_metres(&upper)
}

pub fn wrongs(pond: &Pond, asked: &Asked) -> Vec<Wrong> {
    let mut list = Vec::new();
    let mut add = |idea, part, fields| list.push(Wrong { idea, part, fields });
    match asked.kind {
        17 => add("colder_always_sinks", 0, fields(&[("sinks", "colder")])),
        18 => {
            let times = degrees(pond).2;
            add("a_degree_is_a_degree", 0, fields(&[("side", "same")]));
            add("colder_is_harder", 0, fields(&[("side", "lower")]));
            add("a_degree_is_a_degree", 1, fields(&[("times", "1")]));
            add("a_degree_is_a_degree", 1, fields(&[("times", "1,0 times")]));
            add("upside_down", 1, fields(&[("times", &two(1.0 / times))]));
        }
        19 => {
            let means = pond.means();
            let warms = means[0].1 < means[means.len() - 1].1;
            add("zero_or_four", 0, fields(&[("temp", "0")]));
            if !warms {
                add("zero_or_four", 0, fields(&[("temp", "4 °C")]));
            }
            let degrees = degree_metres(&means);
            add("degrees_without_heat", 1, fields(&[("heat", &two(degrees))]));
            let days = degrees * 4.18 / 8.64;
            let with = |days: f64| {
                fields(&[("heat", &format!("{:.3}", degrees * 4.18)), ("days", &format!("{days:.4}"))])
            };
            add("hours", 2, with(24.0 * days));
            add("watts_alone", 2, with(degrees * 4.18 / 100.0));
        }
        20 => {
            for idea in ["all_depths_cool_alike", "bottom_cools_first", "cold_stays_on_top"] {
                add(idea, 0, fields(&[("picture", idea)]));
            }
        }
        21 => {
            for idea in ["all_colder", "colder_wins", "warmer_wins"] {
                add(idea, 0, fields(&[("picture", idea)]));
            }
        }
        22 if pond.oxygen_mg_l.is_empty() => add("cold_holds_more", 0, fields(&[("where", "top")])),
        25 => {
            if let Some((a, b)) = step_as_read(pond) {
                add("the_same", 0, place(a, b));
                add("the_same", 1, fields(&[("give", &two((b - a) / 2.0))]));
            }
            add("the_whole_step", 1, fields(&[("give", &two(asked.depths_m[0]))]));
        }
        26 if pond.analysis.state != State::Mixed && !changes(pond).contains(&"decimals") => {
            add("more_decimals", 0, fields(&[("change", "decimals")]));
        }
        107 => match says(pond) {
            "cooling" | "salt" => add("what_is_odd_is_wrong", 0, fields(&[("says", "wrong")])),
            _ => add("one_reading_is_enough", 0, fields(&[("says", "cooling")])),
        },
        108 => add("layers_stay", 0, fields(&[("morning", "here")])),
        _ => {}
    }
    list
}

pub fn rights(pond: &Pond, asked: &Asked) -> Vec<Fields> {
    let mut list = Vec::new();
    match asked.kind {
        17 => {
            if let [a, b] = asked.depths_m[..] {
                let means = pond.means();
                let (a, b) = (at(&means, a).unwrap(), at(&means, b).unwrap());
                assert!(a < b && density_kg_m3(a) + 0.002 <= density_kg_m3(b) + 1e-9);
            }
            list.push(fields(&[("sinks", "warmer")]));
        }
        18 => {
            let times = degrees(pond).2;
            for off in [1.0, 1.45, 1.0 / 1.45] {
                list.push(fields(&[("side", "upper"), ("times", &two(off * times))]));
            }
        }
        19 => {
            for by in By::ALL {
                let series = pond.series(by);
                // Heat by the mean: a leg's own noise is far within the factor.
                let mj = 4.18 * degree_metres(&pond.means());
                let temp = series[series.len() - 1].1;
                for (off_c, off) in [(0.0, 1.0), (0.4, 1.45), (-0.4, 1.0 / 1.45)] {
                    let days = mj * off / 8.64;
                    list.push(fields(&[
                        ("temp", &two(temp + off_c)),
                        ("heat", &two(mj * off)),
                        ("days", &two(days * 1.4)),
                    ]));
                }
            }
        }
        20 => {
            let pictures = pictures(pond, asked);
            let right = cooled_from_above(&pictures);
            assert_eq!(right, ["from_above"], "{} {pictures:?}", pond.name);
            list.push(fields(&[("picture", right[0]), ("why", "Heat leaves through the surface.")]));
        }
        21 => {
            let pictures = pictures(pond, asked);
            let right = as_much_heat(&pictures);
            assert_eq!(right, ["stirred"], "{}", pond.name);
            list.push(fields(&[("picture", right[0])]));
        }
        22 => {
            let why = ("why", "Nobody brings it down there.");
            if pond.oxygen_mg_l.is_empty() {
                list.push(fields(&[("where", "bottom"), why, ("brings", "1")]));
                list.push(fields(&[("where", "same"), why]));
            }
        }
        25 => {
            if pond.analysis.state == State::Mixed {
                list.push(practice_thin(pond, asked));
            } else {
                let (a, b) = thin(pond, asked.depths_m[0]).unwrap();
                let mut both = place(a, b);
                both.insert("give".into(), two(asked.depths_m[0] / 2.0));
                list.push(both);
            }
        }
        26 => {
            if pond.analysis.state == State::Mixed {
                let all = ["half_step", "repeats", "probe", "cable", "decimals", "none"];
                let right = |c: &&str| pond.right(asked, &fields(&[("change", c)]));
                list.extend(all.into_iter().find(|c| right(c)).map(|c| fields(&[("change", c)])));
            } else {
                list.extend(changes(pond).into_iter().map(|c| fields(&[("change", c)])));
            }
        }
        27 => list.push(fields(&[("words", "Below my last reading nobody knows."), ("below", "1")])),
        107 => list.push(fields(&[("says", says(pond))])),
        108 => {
            // 50 to 250 W/m² for twelve hours.
            let mj = layer_mj(pond);
            assert!(mj <= 10.8);
            list.push(fields(&[("morning", "gone")]));
            if mj > 2.16 {
                list.push(fields(&[("morning", "depends")]));
            }
        }
        _ => {}
    }
    list
}

/// The steepest of the marks that a question about the practice pond names.
fn practice_thin(pond: &Pond, asked: &Asked) -> Fields {
    use layercast_lesson::view::{Said, SaidArg};
    let paper = pond.paper();
    let index = paper.asked.iter().position(|a| a.id == asked.id).unwrap();
    let view = questions::view(&pond.context(), &paper, index).unwrap();
    assert_eq!(view.lead[0].id, "ask-why-practice");
    fn marks(said: &Said, list: &mut Vec<(f64, f64)>) {
        let number = |name: &str| match said.args.get(name) {
            Some(SaidArg::Number { value, .. }) => Some(*value),
            _ => None,
        };
        if said.id == "ask-25-mark" {
            list.extend(number("depth").zip(number("temp")));
        }
        for name in ["marks", "first", "rest"] {
            if let Some(SaidArg::Message { said }) = said.args.get(name) {
                marks(said, list);
            }
        }
    }
    let mut list = Vec::new();
    marks(&view.lead[1], &mut list);
    assert!(list.len() >= 4 && list.windows(2).all(|w| w[0].0 < w[1].0), "{list:?}");
    let drop = |w: &[(f64, f64)]| w[0].1 - w[1].1;
    let best = list.windows(2).max_by(|a, b| drop(a).total_cmp(&drop(b))).unwrap();
    let mut both = place(best[0].0, best[1].0);
    both.insert("give".into(), two(asked.depths_m[0] / 2.0));
    both
}
