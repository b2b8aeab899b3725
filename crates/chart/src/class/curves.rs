//! All groups' curves on common axes: all alike, one against the rest, or the middle and range of the class.

use super::{Axis, CORES_IN_A_ROW, ClassLevel, ClassWords, Curve, CurveLook, deepest};
use crate::numbers::number;
use crate::pen::{Anchor, Ink, Pen, Type, faint};
use crate::picture::Size;
use crate::profile::frame::drawable;
use crate::ticks::{depth_step, multiples, temperature_scale, temperature_step};
use crate::widths::width;

pub(super) fn draw(pen: &mut Pen, size: Size, curves: &[Curve], levels: &[ClassLevel], words: &ClassWords) {
    let u = pen.u;
    let of_levels = || levels.iter().flat_map(|l| [(l.depth_m, l.low_c), (l.depth_m, l.high_c)]);
    let all = || {
        (curves.iter().flat_map(|curve| curve.points.iter().copied()).chain(of_levels()))
            .filter(|(depth_m, temp_c)| drawable(*depth_m, *temp_c))
    };
    let last_m = deepest(all().map(|point| point.0));
    let surface_y = 50.0 * u;
    // The letters stand under the feet of the curves.
    let deep_px = size.height_px - surface_y - pen.fine() * 2.4;
    let cable_x = 16.0 * u + width("10", pen.plain().face, pen.fine()) + 10.0 * u;
    let across = (cable_x + 18.0 * u, size.width_px - 16.0 * u);
    if !(deep_px > 30.0 * u && across.1 - across.0 > 40.0 * u) {
        return;
    }
    let axis = Axis { surface_y, px_per_m: deep_px / last_m, last_m, cable_x, across };
    let (coldest, warmest) =
        all().fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), p| (low.min(p.1), high.max(p.1)));
    let temp_c = temperature_scale(coldest, warmest);
    let x = |t: f64| across.0 + (t - temp_c.0) / (temp_c.1 - temp_c.0) * (across.1 - across.0);
    ground(pen, axis, temp_c, words);
    let levels = levels_to_draw(levels);
    range(pen, axis, &levels, &x);
    let middle = (levels.len() >= 2).then(|| Curve {
        name: words.middle.clone(),
        points: levels.iter().map(|level| (level.depth_m, level.middle_c)).collect(),
        look: CurveLook::Middle,
    });
    let curves: Vec<&Curve> = curves.iter().chain(&middle).collect();
    let weights = Weights::of(pen, &curves);
    let order = [CurveLook::Faint, CurveLook::Guess, CurveLook::Plain, CurveLook::Middle, CurveLook::InHand];
    for look in order {
        for curve in curves.iter().filter(|curve| curve.look == look) {
            line(pen, axis, curve, &weights, &x);
        }
    }
    names(pen, axis, &curves, &x);
}

/// How heavy the lines are: many together are fine and light, so that each can be followed and one in hand stands out.
struct Weights {
    plain: Ink,
    faint: Ink,
    plain_u: f64,
    middle: Ink,
    middle_u: f64,
}

impl Weights {
    fn of(pen: &Pen, curves: &[&Curve]) -> Self {
        let roles = pen.roles;
        let many = curves.len() > CORES_IN_A_ROW;
        let is_in_hand = curves.iter().any(|curve| curve.look == CurveLook::InHand);
        let (plain, plain_u) =
            if many { (faint(roles.ink, 0.5), roles.hair_u) } else { (roles.ink.into(), roles.rule_u) };
        let faint = if many { faint(roles.bar, 0.6) } else { roles.bar.into() };
        let (middle, middle_u) =
            if is_in_hand { (roles.ink_2.into(), roles.rule_u) } else { (roles.ink.into(), roles.profile_u) };
        Self { plain, faint, plain_u, middle, middle_u }
    }
}

fn levels_to_draw(levels: &[ClassLevel]) -> Vec<ClassLevel> {
    let is_drawn = |l: &&ClassLevel| {
        drawable(l.depth_m, l.low_c) && drawable(l.depth_m, l.high_c) && drawable(l.depth_m, l.middle_c)
    };
    levels.iter().filter(is_drawn).copied().collect()
}

fn ground(pen: &mut Pen, axis: Axis, (low, high): (f64, f64), words: &ClassWords) {
    let u = pen.u;
    let (strong, middle) = (pen.strong(), pen.plain().at(Anchor::Middle));
    for (place, line) in words.depth.iter().enumerate() {
        pen.text(6.0 * u, 15.0 * u + place as f64 * pen.fine() * 1.2, line, strong);
    }
    let (left, right) = axis.across;
    pen.text((left + right) / 2.0, 14.0 * u, &words.temperature, strong.at(Anchor::Middle));
    let bottom = axis.y(axis.last_m);
    let (line, hair, ink) = (pen.roles.line, pen.roles.hair_u, pen.roles.ink);
    let u_per_c = (right - left) / (high - low) / u;
    for temp_c in multiples(low, high, temperature_step(u_per_c, false)) {
        let x = left + (temp_c - low) / (high - low) * (right - left);
        pen.upright(x, axis.surface_y, bottom, line, hair);
        pen.upright(x, axis.surface_y - 6.0 * u, axis.surface_y, ink, hair);
        pen.text(x, axis.surface_y - 10.0 * u, &number(temp_c, 0, words.decimal), middle);
    }
    for depth_m in multiples(0.0, axis.last_m, depth_step(axis.px_per_m / u)).skip(1) {
        pen.level(left, right, axis.y(depth_m), line, hair);
    }
    pen.level(axis.cable_x - 8.0 * u, right, axis.surface_y, ink, pen.roles.rule_u);
    let scale = (axis.surface_y, axis.px_per_m);
    pen.depth_numbers(axis.cable_x - 11.0 * u, scale, axis.last_m, words.decimal);
    pen.cable(axis.cable_x, axis.surface_y, axis.px_per_m, axis.last_m);
}

/// The range of the class as a light band.
fn range(pen: &mut Pen, axis: Axis, levels: &[ClassLevel], x: &impl Fn(f64) -> f64) {
    if levels.len() < 2 {
        return;
    }
    let down = levels.iter().map(|l| (x(l.low_c), axis.y(l.depth_m)));
    let up = levels.iter().rev().map(|l| (x(l.high_c), axis.y(l.depth_m)));
    let corners: Vec<(f64, f64)> = down.chain(up).collect();
    pen.polygon(&corners, faint(pen.roles.ink, 0.13));
    let rule = pen.roles.rule_u;
    for end in [|l: &ClassLevel| l.low_c, |l: &ClassLevel| l.high_c] {
        pen.path(levels.iter().map(|l| (x(end(l)), axis.y(l.depth_m))), pen.roles.bar, rule);
    }
}

fn line(pen: &mut Pen, axis: Axis, curve: &Curve, weights: &Weights, x: &impl Fn(f64) -> f64) {
    let points: Vec<(f64, f64)> = (curve.points.iter())
        .filter(|(depth_m, temp_c)| drawable(*depth_m, *temp_c))
        .map(|(depth_m, temp_c)| (x(*temp_c), axis.y(*depth_m)))
        .collect();
    let (rule, profile) = (pen.roles.rule_u, pen.roles.profile_u);
    match curve.look {
        CurveLook::Faint => pen.path(points, weights.faint, weights.plain_u),
        CurveLook::Plain => pen.path(points, weights.plain, weights.plain_u),
        CurveLook::Middle => pen.path(points, weights.middle, weights.middle_u),
        CurveLook::InHand => {
            pen.path(points.iter().copied(), pen.roles.sheet, profile + 3.0);
            pen.path(points, pen.roles.ink, profile);
        }
        CurveLook::Guess => {
            pen.path(points.iter().copied(), pen.roles.you, rule);
            for (x, y) in points {
                pen.disc(x, y, 3.0 * pen.u, pen.roles.you);
            }
        }
    }
}

/// Letters under the feet of the curves, side by side where the feet are: each group is found without a legend.
fn names(pen: &mut Pen, axis: Axis, curves: &[&Curve], x: &impl Fn(f64) -> f64) {
    let foot = |curve: &Curve| {
        let (depth_m, temp_c) = *curve.points.iter().rev().find(|p| drawable(p.0, p.1))?;
        Some((x(temp_c), axis.y(depth_m)))
    };
    let mut feet: Vec<(f64, f64, &Curve)> =
        curves.iter().copied().filter_map(|curve| foot(curve).map(|(x, y)| (x, y, curve))).collect();
    feet.sort_by(|a, b| a.0.total_cmp(&b.0));
    let look = |curve: &Curve| {
        let (strong, roles) = (pen.strong().at(Anchor::Middle), pen.roles);
        match curve.look {
            CurveLook::Guess => strong.ink(roles.you),
            CurveLook::Faint => pen.plain().at(Anchor::Middle).ink(roles.ink_2),
            CurveLook::Plain | CurveLook::Middle => strong,
            CurveLook::InHand => Type { size: strong.size * 1.4, ..strong },
        }
    };
    let looks: Vec<Type> = feet.iter().map(|(.., curve)| look(curve)).collect();
    // Pushed to the right until none covers its neighbour, then back from the right edge.
    let air = 5.0 * pen.u;
    let wide: Vec<f64> =
        feet.iter().zip(&looks).map(|((.., c), look)| width(&c.name, look.face, look.size) + air).collect();
    let mut at: Vec<f64> = feet.iter().map(|foot| foot.0).collect();
    for place in 1..at.len() {
        let least = at.get(place - 1).zip(wide.get(place - 1)).map(|(x, w)| x + w / 2.0);
        if let (Some(least), Some(own), Some(here)) = (least, wide.get(place), at.get_mut(place)) {
            *here = here.max(least + own / 2.0);
        }
    }
    let mut most = axis.across.1 + 10.0 * pen.u;
    for (here, own) in at.iter_mut().zip(&wide).rev() {
        *here = here.min(most - own / 2.0);
        most = *here - own / 2.0;
    }
    let base = axis.y(axis.last_m) + pen.fine() * 1.7;
    let lead = faint(pen.roles.bar, if curves.len() > CORES_IN_A_ROW { 0.4 } else { 1.0 });
    for (((foot_x, foot_y, curve), x), look) in feet.iter().zip(&at).zip(&looks) {
        let top = base - look.size * 0.85;
        if *foot_y < top - 6.0 * pen.u || (foot_x - x).abs() > 3.0 * pen.u {
            let bends = [(*foot_x, *foot_y + 2.0 * pen.u), (*x, top)];
            pen.path(bends, lead, pen.roles.hair_u);
        }
        pen.text(*x, base, &curve.name, *look);
    }
}
