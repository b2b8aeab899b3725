//! Right and wrong answers to every question, worked out from the rows alone, apart from the code under test.
//!
//! Long because every answer and idea of every kind is worked out here.
#![allow(dead_code, reason = "each test file uses its own part")]

use super::{By, Fields, Pond, fields, one, two};
use layercast_core::MixedLayer;
use layercast_lesson::questions::{self, Asked};

/// The fields of the three bars of kind 29.
pub const BARS: [&str; 3] = ["rate_a", "rate_b", "rate_c"];

/// A wrong answer of a known idea.
pub struct Wrong {
    pub idea: &'static str,
    pub part: usize,
    pub fields: Fields,
}

pub fn at(series: &[(f64, f64)], z: f64) -> Option<f64> {
    series.iter().find(|p| (p.0 - z).abs() < 1e-9).map(|p| p.1)
}

/// Straight between two rows.
pub fn between(series: &[(f64, f64)], z: f64) -> Option<f64> {
    at(series, z).or_else(|| {
        series.windows(2).find(|w| w[0].0 < z && z < w[1].0).map(|w| {
            let f = (z - w[0].0) / (w[1].0 - w[0].0);
            w[0].1 + f * (w[1].1 - w[0].1)
        })
    })
}

pub fn steps(series: &[(f64, f64)]) -> Vec<(f64, f64, f64)> {
    series.windows(2).map(|w| (w[0].0, w[1].0, (w[0].1 - w[1].1) / (w[1].0 - w[0].0))).collect()
}

/// °C lost per metre, turned round where the water warms downward.
pub fn turned(pond: &Pond) -> f64 {
    if pond.analysis.fastest_warming.is_some() { -1.0 } else { 1.0 }
}

pub fn place(from: f64, to: f64) -> Fields {
    fields(&[("from", &two(from)), ("to", &two(to))])
}

pub fn wrongs(pond: &Pond, asked: &Asked) -> Vec<Wrong> {
    let mut list = Vec::new();
    let means = pond.means();
    let z = &asked.depths_m;
    let mut add = |idea, part, fields| list.push(Wrong { idea, part, fields });
    match asked.kind {
        1 => {
            // A cast that begins deeper has nothing there.
            if let Some(mirrored) = between(&means, pond.last_m() - z[0]) {
                add("depth_as_height", 0, fields(&[("temp", &one(mirrored)), ("unit", "c")]));
            }
            add("axes_swapped", 0, fields(&[("temp", &format!("{}", z[0])), ("unit", "c")]));
        }
        2 => {
            let (upper, lower) = crossing_of(&means, z[0]);
            let right = upper.0 + (lower.0 - upper.0) * (upper.1 - z[0]) / (upper.1 - lower.1);
            add("depth_as_height", 0, fields(&[("depth", &two(pond.last_m() - right))]));
            add("next_mark", 0, fields(&[("depth", &format!("{}", lower.0))]));
        }
        3 => {
            let upright = lit_changes(pond, asked).into_iter().min_by(|a, b| a.1.total_cmp(&b.1)).unwrap();
            add("graph_as_picture", 0, fields(&[("stretch", upright.0)]));
        }
        4 => {
            for by in By::ALL {
                let series = pond.series(by);
                let (a, b) = (at(&series, z[0]).unwrap(), at(&series, z[1]).unwrap());
                let with = |x: f64| fields(&[("drop", &two(x)), ("unit", "c"), ("source", by.word())]);
                add("sum", 0, with(a + b));
                add("one_temperature", 0, with(a));
                add("one_temperature", 0, with(b));
            }
        }
        5 => {
            for by in By::ALL {
                let series = pond.series(by);
                let change = (at(&series, z[0]).unwrap() - at(&series, z[1]).unwrap()).abs();
                rates(change, (z[0], z[1]), &mut |idea, text| {
                    add(idea, 0, fields(&[("rate", &text), ("unit", "c_per_m"), ("source", by.word())]));
                });
            }
        }
        23 => add("one_is_wrong", 0, fields(&[("say", "wrong")])),
        24 => {
            let (mean_c, deep_m) = apart(pond);
            let with = |power: f64| fields(&[("power", &two(power)), ("sun", "could")]);
            add("degrees_without_depth", 2, with(warming_w_m2(mean_c, 1.0)));
            add("heat_without_time", 2, with(3600.0 * warming_w_m2(mean_c, deep_m)));
        }
        29 => {
            for by in By::ALL {
                let series = pond.series(by);
                for (part, id) in BARS.into_iter().enumerate() {
                    let step = (z[2 * part], z[2 * part + 1]);
                    let change = (at(&series, step.0).unwrap() - at(&series, step.1).unwrap()).abs();
                    rates(change, step, &mut |idea, text| add(idea, part, fields(&[(id, &text)])));
                }
            }
        }
        6 => {
            let turn = turned(pond);
            let all = steps(&means);
            let biggest = all
                .iter()
                .max_by(|a, b| (turn * a.2 * (a.1 - a.0)).total_cmp(&(turn * b.2 * (b.1 - b.0))))
                .unwrap();
            let shortest = all.iter().map(|s| s.1 - s.0).fold(f64::INFINITY, f64::min);
            if biggest.1 - biggest.0 > shortest + 1e-6 {
                add("biggest_drop_over_a_longer_step", 0, place(biggest.0, biggest.1));
            }
            let coldest = (0..means.len()).min_by(|a, b| means[*a].1.total_cmp(&means[*b].1)).unwrap();
            let step = all[coldest.saturating_sub(1)];
            add("coldest_place", 0, place(step.0, step.1));
            let last = all.last().unwrap();
            add("bottom", 0, place(last.0, last.1));
            if let Some(first) = all.iter().find(|s| turn * s.2 >= 1.0 - 1e-9) {
                add("first_steep_step", 0, place(first.0, first.1));
            }
            // How fast, on the steepest step of the class rule.
            let found = pond.analysis.thermocline.or(pond.analysis.fastest_warming);
            if let Some(t) = found {
                let ends = (t.step_top_m, t.step_bottom_m);
                if let (Some(a), Some(b)) = (at(&means, ends.0), at(&means, ends.1)) {
                    rates((a - b).abs(), ends, &mut |idea, text| {
                        let mut both = place(ends.0, ends.1);
                        both.insert("rate".into(), text);
                        add(idea, 1, both);
                    });
                }
            }
        }
        7 => {
            let depth = |z: f64| fields(&[("depth", &two(z))]);
            let found = pond.analysis.thermocline.or(pond.analysis.fastest_warming);
            if let Some(t) = found {
                add(
                    "a_temperature",
                    0,
                    fields(&[("depth", &format!("{:.1} °C", between(&means, t.value_m).unwrap()))]),
                );
                add("depth_as_height", 0, depth(pond.last_m() - t.value_m));
            }
            if let Some(today) = pond.analysis.warm_layer_today.filter(|w| !w.only) {
                add("near_surface_layer", 0, depth(today.value_m));
            }
            add("bottom", 0, depth(pond.last_m()));
        }
        8 => {
            let value = pond
                .analysis
                .thermocline
                .map(|t| t.value_m)
                .or(pond.analysis.warm_layer_today.map(|t| t.value_m));
            let value = value.unwrap();
            for give in [0.0, 0.1] {
                add("as_sure_as_the_digits", 0, place(value - give, value + give));
            }
            add("the_whole_lake", 0, place(0.0, pond.last_m()));
        }
        9 => {
            let target = between(&means, 0.5_f64.max(means[0].0)).unwrap() - 1.0;
            let crossing =
                |t: f64| means.windows(2).find(|w| w[1].0 > 0.5 && w[1].1 <= t + 1e-9).map(|w| (w[0], w[1]));
            if means[0].0 < 0.5 {
                add("from_the_surface", 0, fields(&[("temp", &two(means[0].1 - 1.0))]));
                if let Some((a, b)) = crossing(means[0].1 - 1.0) {
                    add("from_the_surface", 1, place(a.0, b.0));
                }
            }
            if let Some(w) = means.windows(2).find(|w| w[0].1 - w[1].1 >= 1.0 - 1e-9) {
                add("below_the_previous_mark", 0, fields(&[("temp", &two(w[0].1 - 1.0))]));
                add("below_the_previous_mark", 1, place(w[0].0, w[1].0));
            }
            if let Some(t) = pond.analysis.thermocline {
                add("the_thermocline", 1, place(t.step_top_m, t.step_bottom_m));
            }
            let (a, b) = crossing(target).unwrap();
            let exact = a.0 + (b.0 - a.0) * (a.1 - target) / (a.1 - b.1);
            let nearest = if exact - a.0 <= b.0 - exact { a.0 } else { b.0 };
            let mut three = place(a.0, b.0);
            three.insert("depth".into(), two(nearest));
            add("nearest_mark", 2, three);
        }
        11 => {
            // At least a degree from mark to mark, whatever the step.
            let drops: Vec<(f64, f64, f64)> =
                means.windows(2).map(|w| (w[0].0, w[1].0, w[0].1 - w[1].1)).collect();
            let layer = steep_layer(pond).map_or((0.0, pond.last_m()), |l| (l.0, l.1));
            match run_of(&drops, layer) {
                Some((top, bottom)) => add("one_degree_in_a_step", 0, place(top, bottom)),
                None => add("one_degree_in_a_step", 0, fields(&[("layer", "none")])),
            }
        }
        12 => {
            let (end, (top, bottom, cut_off)) = (mixed_end(pond), steep_layer(pond).unwrap());
            let deep = pond.last_m() - bottom;
            let steep = bottom - end;
            if !cut_off {
                add("layers_overlap", 0, thick(end, bottom, deep));
                add("layers_overlap", 0, thick(end, steep, pond.last_m()));
                if top < end - 0.11 {
                    add("layers_overlap", 0, thick(end, bottom - top, deep));
                }
                add("bottom_forgotten", 0, thick(end, steep, 0.0));
                let shares = [end, steep, deep].map(|x| 100.0 * x / bottom);
                let mut all = thick(end, steep, deep);
                all.extend(three_shares([shares[0], shares[1], 0.0]));
                add("bottom_forgotten", 1, all);
            }
        }
        13 => {
            let d: Vec<f64> = pond.rows.iter().filter_map(|r| Some(r.1 - r.2?)).collect();
            let signed = d.iter().sum::<f64>() / d.len() as f64;
            let with = |x: f64| fields(&[("apart", &two(x)), ("unit", "c"), ("way", "signed")]);
            add("mean_with_signs", 0, with(signed));
            add("mean_with_signs", 0, with(signed.abs()));
        }
        14 => {
            let [side, place, _] = two_ways(pond);
            let chosen = fields(&[("side", side), ("place", place), ("why", "wrong")]);
            add("one_leg_is_wrong", 2, chosen);
        }
        15 => {
            let bend = |z: f64| bend_at(&means, z);
            let plain = read_again_lines(pond).into_iter().filter(|(_, _, points)| !points);
            let most = plain.max_by(|a, b| bend(a.1).total_cmp(&bend(b.1)));
            if let Some((value, z, _)) = most
                && bend(z) >= 1.0 - 1e-9
            {
                add("shoulder_of_the_layer", 0, fields(&[("reading", &value)]));
            }
        }
        16 => {
            for (rate, idea) in [
                ("1.8", "still_per_metre"),
                ("5.9", "feet_upside_down"),
                ("33.8", "thirty_two_in_a_difference"),
                ("10.3", "thirty_two_in_a_difference"),
            ] {
                add(idea, 0, fields(&[("rate", rate)]));
            }
            add("thirty_two_in_a_difference", 1, fields(&[("apart", "35.6")]));
            add("thirty_two_in_a_difference", 1, fields(&[("apart", "35,6 °F")]));
        }
        106 => {
            add("one_degree_only", 0, fields(&[("time", "2.3"), ("unit", "h")]));
            add("one_degree_only", 0, fields(&[("time", "140 min")]));
            add("seconds_taken_for_hours", 0, fields(&[("time", "25080"), ("unit", "h")]));
        }
        101 => {
            let warm = means.iter().map(|p| p.1).fold(f64::NEG_INFINITY, f64::max);
            let cold = means.iter().map(|p| p.1).fold(f64::INFINITY, f64::min);
            let with = |x: f64| fields(&[("apart", &two(x)), ("unit", "c")]);
            add("sum", 0, with(warm + cold));
            add("one_temperature", 0, with(warm));
            add("one_temperature", 0, with(cold));
        }
        102 => {
            let s = pond.analysis.pairs.s_used_c;
            add("the_typical_difference", 0, fields(&[("limit", &format!("{s:.3}")), ("unit", "c")]));
            add("any_difference", 0, fields(&[("limit", "0"), ("unit", "c")]));
        }
        103 => {
            let limit = 2.8 * pond.analysis.pairs.s_used_c;
            let drops: Vec<f64> = means.windows(2).map(|w| w[0].1 - w[1].1).collect();
            if drops.iter().all(|d| d.abs() < limit - 0.06) {
                add("every_difference_is_a_step", 0, fields(&[("line", "by_turns")]));
                add("every_difference_is_a_step", 0, fields(&[("line", "colder")]));
            } else if drops.iter().any(|d| d.abs() > limit + 0.06) {
                add("no_difference_counts", 0, fields(&[("line", "none")]));
            }
        }
        104 => {
            // Every set of three with a line that layered water has too.
            let lines = fact_ids(pond);
            let also = ["surface", "legs", "deepest", "count"];
            for i in 0..6 {
                for j in i + 1..6 {
                    for k in j + 1..6 {
                        let set = [&lines[i], &lines[j], &lines[k]];
                        if set.iter().any(|id| also.contains(&id.as_str())) {
                            let ticks: Vec<(&str, &str)> = set.iter().map(|id| (id.as_str(), "1")).collect();
                            add("true_of_layered_water_too", 0, fields(&ticks));
                        }
                    }
                }
            }
        }
        105 => {
            for value in pair_values(pond) {
                let (a, b) = value.split_once('-').unwrap();
                let temp = |z: &str| at(&means, z.parse().unwrap()).unwrap();
                if temp(a) > temp(b) {
                    add("warm_on_top_is_heavier", 0, fields(&[("pair", &value)]));
                }
            }
        }
        _ => return super::why::wrongs(pond, asked),
    }
    list
}

/// The two rows between which a temperature is met first.
pub fn crossing_of(series: &[(f64, f64)], temp: f64) -> ((f64, f64), (f64, f64)) {
    let between = |w: &&[(f64, f64)]| {
        w[0].1.min(w[1].1) <= temp + 1e-9 && temp <= w[0].1.max(w[1].1) + 1e-9 && w[0].1 != w[1].1
    };
    let w = series.windows(2).find(between).unwrap();
    (w[0], w[1])
}

/// Letters of the three lit stretches with how much each changes.
pub fn lit_changes(pond: &Pond, asked: &Asked) -> Vec<(&'static str, f64)> {
    let means = pond.means();
    let change = |i: usize| {
        let ends = (asked.depths_m[2 * i], asked.depths_m[2 * i + 1]);
        (at(&means, ends.0).unwrap() - at(&means, ends.1).unwrap()).abs()
    };
    ["a", "b", "c"].into_iter().enumerate().map(|(i, letter)| (letter, change(i))).collect()
}

/// The layer kind 11 asks for by the analysis: (top, bottom, cut off).
pub fn steep_layer(pond: &Pond) -> Option<(f64, f64, bool)> {
    let today = || pond.analysis.warm_layer_today.filter(|w| w.only).map(|w| (w.top_m, w.bottom_m, false));
    pond.analysis.metalimnion.map(|m| (m.top_m, m.bottom_m, m.cut_off)).or_else(today)
}

/// How much the slope changes at a mark, °C per metre.
fn bend_at(series: &[(f64, f64)], z: f64) -> f64 {
    let all = steps(series);
    let met = all.windows(2).find(|w| (w[0].1 - z).abs() < 1e-9);
    met.map_or(0.0, |w| (w[0].2 - w[1].2).abs())
}

/// The steeper of the steps at a mark, with its sign, °C lost per metre.
fn slope_at(series: &[(f64, f64)], z: f64) -> f64 {
    let near = steps(series).into_iter().filter(|s| (s.0 - z).abs() < 1e-9 || (s.1 - z).abs() < 1e-9);
    near.map(|s| s.2).fold(0.0, |best: f64, s| if s.abs() > best.abs() { s } else { best })
}

/// Lines of kind 15 that are readings: value, depth, whether a doubt, the limits of a pair or the state points to it.
pub fn read_again_lines(pond: &Pond) -> Vec<(String, f64, bool)> {
    use layercast_lesson::view::FieldKind;
    let field = lines_of(pond, 15).into_iter().next().unwrap();
    let FieldKind::Choice { options } = field.kind else { panic!() };
    let means = pond.means();
    let line = |value: String| {
        let at: usize = value.strip_prefix('r')?.parse().unwrap();
        let z = pond.cast.readings[at].depth_m;
        let row = pond.rows.iter().find(|r| (r.0 - z).abs() < 1e-9);
        let apart = row.and_then(|r| Some((r.1 - r.2?).abs())).unwrap_or(0.0);
        let wide = apart > 0.2 + 0.1 * slope_at(&means, z).abs() + 1e-9;
        let pair = pond.analysis.facts.and_then(|f| f.inversion_pair_m);
        let upside_down = pair.is_some_and(|(a, b)| (a - z).abs() < 1e-9 || (b - z).abs() < 1e-9);
        Some((value, z, pond.analysis.checked[at].doubt.is_some() || wide || upside_down))
    };
    options.into_iter().filter_map(|o| line(o.value)).collect()
}

/// Which way was warmer, where, and what that suggests, by the rows: values of kind 14's lists.
pub fn two_ways(pond: &Pond) -> [&'static str; 3] {
    let means = pond.means();
    let d: Vec<(f64, f64)> =
        pond.rows.iter().filter_map(|r| Some((slope_at(&means, r.0), r.1 - r.2?))).collect();
    let n = d.len() as f64;
    let mean = d.iter().map(|p| p.1).sum::<f64>() / n;
    let sd = (d.iter().map(|p| (p.1 - mean) * (p.1 - mean)).sum::<f64>() / (n - 1.0)).sqrt();
    if mean.abs() <= 2.0 * sd / n.sqrt() + 1e-9 {
        return ["small", "no_pattern", "chance"];
    }
    let side = if mean > 0.0 { "down" } else { "up" };
    let steepest = d.iter().map(|p| p.0.abs()).fold(0.0, f64::max);
    let of = |steep: bool| {
        let list: Vec<f64> = d
            .iter()
            .filter(|p| (p.0.abs() >= 0.5 * steepest - 1e-9) == steep)
            .map(|p| p.1.abs() * p.1.signum() * mean.signum())
            .collect();
        list.iter().sum::<f64>() / list.len().max(1) as f64
    };
    if of(true) <= 0.0 || of(false) >= 0.5 * of(true) {
        return [side, "everywhere", "drift"];
    }
    [side, "steep", "marks"]
}

/// End of the mixed layer by the class rule.
pub fn mixed_end(pond: &Pond) -> f64 {
    match pond.analysis.mixed_layer {
        Some(MixedLayer::At { value_m, .. }) => value_m,
        other => panic!("{other:?}"),
    }
}

fn thick(mixed: f64, steep: f64, deep: f64) -> Fields {
    fields(&[("mixed", &two(mixed)), ("steep", &two(steep)), ("deep", &two(deep))])
}

fn three_shares(of: [f64; 3]) -> Fields {
    let [a, b, c] = of.map(|x| format!("{x:.0}"));
    fields(&[("share_mixed", &a), ("share_steep", &b), ("share_deep", &c)])
}

/// The unbroken run of values of at least 1 around the largest in a stretch.
pub fn run_of(steps: &[(f64, f64, f64)], about: (f64, f64)) -> Option<(f64, f64)> {
    let enough = |i: usize| steps[i].2 >= 1.0 - 1e-9;
    let inside = |i: &usize| steps[*i].0 < about.1 - 1e-6 && steps[*i].1 > about.0 + 1e-6 && enough(*i);
    let start = (0..steps.len()).filter(inside).reduce(|a, b| if steps[b].2 > steps[a].2 { b } else { a })?;
    let (mut first, mut last) = (start, start);
    while first > 0 && enough(first - 1) {
        first -= 1;
    }
    while last + 1 < steps.len() && enough(last + 1) {
        last += 1;
    }
    Some((steps[first].0, steps[last].1))
}

/// What each wrong way with a change over a stretch gives.
fn rates(change: f64, ends: (f64, f64), add: &mut dyn FnMut(&'static str, String)) {
    let length = ends.1 - ends.0;
    add("not_divided", two(change));
    add("multiplied", format!("{:.3}", change * length));
    add("metres_per_degree", two(length / change));
    for z in [ends.0, ends.1] {
        if z > 0.0 {
            add("divided_by_depth", two(change / z));
        }
    }
}

/// How far the other group's cast lies from the own one, mean over the shared depths in °C to two decimals, and over how many
/// metres.
pub fn apart(pond: &Pond) -> (f64, f64) {
    let entries = pond.lesson.other.iter().flat_map(|other| &other.entries);
    let read: Vec<(f64, f64)> =
        entries.filter_map(|e| Some((e.depth.current()?, e.temp.current()?))).collect();
    let mean = |z: f64| {
        let here: Vec<f64> = read.iter().filter(|r| (r.0 - z).abs() < 1e-6).map(|r| r.1).collect();
        here.iter().sum::<f64>() / here.len() as f64
    };
    let differences: Vec<(f64, f64)> = pond.means().iter().map(|(z, t)| (*z, t - mean(*z))).collect();
    let area: f64 = differences.windows(2).map(|w| (w[1].0 - w[0].0) * (w[0].1 + w[1].1) / 2.0).sum();
    let deep_m = differences.last().unwrap().0 - differences[0].0;
    ((100.0 * area.abs() / deep_m).round() / 100.0, deep_m)
}

/// W/m² that warm so much water by so much in an hour: 4.18 MJ a cubic metre and degree.
pub fn warming_w_m2(by_c: f64, deep_m: f64) -> f64 {
    4.18e6 * by_c * deep_m / 3600.0
}

fn lines_of(pond: &Pond, kind: u8) -> Vec<layercast_lesson::view::FieldView> {
    let paper = pond.paper();
    let index = paper.asked.iter().position(|a| a.kind == kind).unwrap();
    let view = questions::view(&pond.context(), &paper, index).unwrap();
    view.parts.into_iter().flat_map(|p| p.lines).flat_map(|l| l.fields).collect()
}

pub fn fact_ids(pond: &Pond) -> Vec<String> {
    lines_of(pond, 104).into_iter().map(|f| f.id).collect()
}

fn pair_values(pond: &Pond) -> Vec<String> {
    use layercast_lesson::view::FieldKind;
    match lines_of(pond, 105).into_iter().next().unwrap().kind {
        FieldKind::Choice { options } => options.into_iter().map(|o| o.value).collect(),
        _ => Vec::new(),
    }
}

/// Right answers of every question, each by its own readings.
pub fn rights(pond: &Pond, asked: &Asked) -> Vec<Fields> {
    let z = &asked.depths_m;
    let mut list = Vec::new();
    match asked.kind {
        1 => {
            for by in By::ALL {
                let t = at(&pond.series(by), z[0]).unwrap();
                for off in [-0.4, 0.0, 0.4] {
                    list.push(fields(&[("temp", &two(t + off)), ("unit", "c")]));
                }
                list.push(fields(&[("temp", &format!("{:.1} °F", t * 1.8 + 32.0))]));
            }
        }
        2 => {
            for by in By::ALL {
                let (upper, lower) = crossing_of(&pond.series(by), z[0]);
                let length = lower.0 - upper.0;
                let right = upper.0 + length * (upper.1 - z[0]) / (upper.1 - lower.1);
                for off in [-0.45, 0.0, 0.45] {
                    let x = right + off * length;
                    list.push(fields(&[("depth", &two(x))]));
                    list.push(fields(&[("depth", &two(x).replace('.', ","))]));
                    list.push(fields(&[("depth", &format!("{:.0} cm", x * 100.0))]));
                    list.push(fields(&[("depth", &format!("{:.2} ft", x / 0.3048))]));
                }
                let (from, to) = (right - 0.2 * length, right + 0.3 * length);
                list.push(fields(&[("depth", &format!("{from:.2}–{to:.2}"))]));
            }
        }
        3 => {
            let fastest = lit_changes(pond, asked).into_iter().max_by(|a, b| a.1.total_cmp(&b.1)).unwrap();
            list.push(fields(&[("stretch", fastest.0)]));
        }
        4 | 5 => {
            for by in By::ALL {
                let series = pond.series(by);
                let change = (at(&series, z[0]).unwrap() - at(&series, z[1]).unwrap()).abs();
                let (id, unit, x) = if asked.kind == 4 {
                    ("drop", "c", change)
                } else {
                    ("rate", "c_per_m", change / (z[1] - z[0]))
                };
                list.push(fields(&[(id, &format!("{x:.3}")), ("unit", unit), ("source", by.word())]));
                list.push(fields(&[
                    (id, &format!("{x:.3}").replace('.', ",")),
                    ("unit", unit),
                    ("source", by.word()),
                ]));
                list.push(fields(&[(id, &format!("{:.3}", -x)), ("unit", unit), ("source", by.word())]));
            }
        }
        29 => {
            for by in By::ALL {
                let series = pond.series(by);
                let rate = |part: usize| {
                    let (top, bottom) = (z[2 * part], z[2 * part + 1]);
                    let change = (at(&series, top).unwrap() - at(&series, bottom).unwrap()).abs();
                    format!("{:.3}", change / (bottom - top))
                };
                list.push(BARS.into_iter().enumerate().map(|(i, id)| (id.to_owned(), rate(i))).collect());
            }
        }
        6 => {
            for s in &pond.analysis.steps {
                let today = s.in_warm_layer_today && pond.analysis.thermocline.is_none();
                let top = pond
                    .analysis
                    .warm_layer_today
                    .filter(|w| today && w.span_top_m <= s.top_m && s.bottom_m <= w.span_bottom_m);
                if s.in_span || top.is_some() {
                    let mut f = place(s.top_m, s.bottom_m);
                    f.insert("rate".into(), format!("{:.3}", s.cooling_c_per_m.abs()));
                    list.push(f);
                }
            }
        }
        7 | 8 => {
            let t = pond.analysis.thermocline.or(pond.analysis.fastest_warming);
            let span = t.map(|t| (t.value_m, t.span_top_m, t.span_bottom_m));
            let span =
                span.or(pond.analysis.warm_layer_today.map(|w| (w.value_m, w.span_top_m, w.span_bottom_m)));
            let (value, top, bottom) = span.unwrap();
            if asked.kind == 7 {
                for z in [value, top, bottom] {
                    list.push(fields(&[("depth", &two(z))]));
                    list.push(fields(&[("depth", &format!("{} cm", (z * 100.0).round()))]));
                    list.push(fields(&[("depth", &format!("{:.2} ft", z / 0.3048))]));
                }
            } else {
                list.push(place(top, bottom));
                list.push(fields(&[("from", &format!("{top:.2}–{bottom:.2}")), ("to", "")]));
            }
        }
        9 => {
            let Some(MixedLayer::At { value_m, target_c, between_m, .. }) = pond.analysis.mixed_layer else {
                panic!()
            };
            let mut f = place(between_m.0, between_m.1);
            f.insert("temp".into(), two(target_c));
            f.insert("depth".into(), two(value_m));
            list.push(f);
        }
        11 => match steep_layer(pond) {
            None => list.push(fields(&[("layer", "none")])),
            Some((top, _, true)) => list.push(fields(&[("layer", "on"), ("from", &two(top))])),
            Some((top, bottom, false)) => {
                list.push(place(top, bottom));
                list.push(fields(&[("from", &format!("{top:.2}–{bottom:.2}")), ("to", "")]));
                list.push(fields(&[
                    ("from", &format!("{:.0} cm", top * 100.0)),
                    ("to", &format!("{:.2} ft", bottom / 0.3048)),
                ]));
                // The outer marks of the unbroken run, by each way of reading.
                for by in By::ALL {
                    if let Some((top, bottom)) = run_of(&steps(&pond.series(by)), (top, bottom)) {
                        list.push(place(top, bottom));
                    }
                }
            }
        },
        12 => {
            let (end, (_, bottom, cut_off)) = (mixed_end(pond), steep_layer(pond).unwrap());
            if cut_off {
                list.push(fields(&[
                    ("mixed", &two(end)),
                    ("steep", &two(bottom - end)),
                    ("way", "at_least"),
                ]));
            } else {
                for off in [-0.08, 0.0, 0.08] {
                    let own = [end + off, bottom - end - off, pond.last_m() - bottom];
                    // Shares of the thicknesses as they are written; the last is what is left of 100.
                    let [a, b, _] = own.map(|x| (100.0 * x / pond.last_m()).round());
                    let mut all = thick(own[0], own[1], own[2]);
                    all.extend(three_shares([a, b, 100.0 - a - b]));
                    list.push(all);
                }
            }
        }
        13 => {
            let d: Vec<f64> = pond.rows.iter().filter_map(|r| Some(r.1 - r.2?)).collect();
            let n = d.len() as f64;
            let mean = d.iter().map(|d| d.abs()).sum::<f64>() / n;
            let s = (d.iter().map(|d| d * d).sum::<f64>() / (2.0 * n)).sqrt();
            list.push(fields(&[("apart", &two(s)), ("unit", "c"), ("way", "squares")]));
            list.push(fields(&[("apart", &two(0.886 * mean)), ("unit", "c"), ("way", "unsigned")]));
            list.push(fields(&[("apart", &two(mean)), ("unit", "c"), ("way", "unsigned")]));
        }
        14 => {
            let [side, place, why] = two_ways(pond);
            list.push(fields(&[("side", side), ("place", place), ("why", why)]));
        }
        15 => {
            let pointed: Vec<String> =
                read_again_lines(pond).into_iter().filter(|l| l.2).map(|l| l.0).collect();
            if pointed.is_empty() {
                list.push(fields(&[("reading", "none")]));
            }
            list.extend(pointed.iter().map(|value| fields(&[("reading", value)])));
        }
        16 => {
            for (rate, apart) in
                [("0.549", "3.6"), ("0,55", "3,6 °F"), ("0.549 °F/ft", "3.60"), ("0.54", "-3.6")]
            {
                list.push(fields(&[("rate", rate), ("apart", apart)]));
            }
        }
        106 => {
            for (time, unit) in
                [("7", "h"), ("6.97", "h"), ("25080", "s"), ("418 min", ""), ("7,0 h", "s"), ("0.29", "d")]
            {
                list.push(fields(&[("time", time), ("unit", unit)]));
            }
        }
        101 => {
            let all = || pond.rows.iter().flat_map(|r| [Some(r.1), r.2]).flatten();
            let apart = all().fold(f64::NEG_INFINITY, f64::max) - all().fold(f64::INFINITY, f64::min);
            list.push(fields(&[("apart", &two(apart)), ("unit", "c")]));
        }
        102 => {
            let s = pond.analysis.pairs.s_used_c;
            list.push(fields(&[("limit", &two(2.8 * s)), ("unit", "c")]));
            list.push(fields(&[("limit", &two(2.77 * s)), ("unit", "c")]));
        }
        103 => {
            let limit = 2.8 * pond.analysis.pairs.s_used_c;
            let bigger: Vec<f64> =
                pond.means().windows(2).map(|w| w[0].1 - w[1].1).filter(|d| d.abs() > limit + 1e-9).collect();
            let line = match (bigger.is_empty(), bigger.iter().any(|d| *d < 0.0)) {
                (true, _) => "none",
                (false, true) => "by_turns",
                (false, false) => "colder",
            };
            list.push(fields(&[("line", line)]));
        }
        104 => {
            let also = ["surface", "legs", "deepest", "count"];
            let ids = fact_ids(pond);
            let ticks: Vec<(&str, &str)> =
                ids.iter().filter(|id| !also.contains(&id.as_str())).map(|id| (id.as_str(), "1")).collect();
            assert_eq!(ticks.len(), 3);
            list.push(fields(&ticks));
        }
        105 => {
            let means = pond.means();
            let temp = |z: &str| at(&means, z.parse().unwrap()).unwrap();
            for value in pair_values(pond) {
                let (a, b) = value.split_once('-').unwrap();
                if temp(a) < temp(b) && temp(a) > 4.0 {
                    list.push(fields(&[("pair", &value)]));
                }
            }
            assert_eq!(list.len(), 1);
        }
        _ => return super::why::rights(pond, asked),
    }
    list
}
