//! Inside the plot: found lines, other rules, the step in hand, the profile, the readings, cursor and doubts.

use super::frame::{Frame, depth, drawable};
use super::layers::Layers;
use crate::pen::{Anchor, Pen, faint};
use crate::picture::{Middle, Picture, StepInHand, Strip, Words};
use crate::widths::width;

/// Lines, soft edges and brackets of what was found.
pub(super) fn found(pen: &mut Pen, frame: &Frame, layers: &Layers) {
    let u = frame.u;
    let left = frame.rules.map_or(frame.plot.0, |rules| rules.0);
    let right = frame.plot.1;
    let to_bar = frame.strip.map_or(right, |strip| strip.0);
    let (ink, mark, fuzz) = (pen.roles.ink, pen.roles.mark_u, pen.roles.fuzz);
    if let Some(line) = layers.line {
        let (low, y, high) = (frame.y(line.low_m), frame.y(line.at_m), frame.y(line.high_m));
        if line.tellable {
            pen.soft_edge(left, right - left, y, (low, high), fuzz, 0.17);
            pen.level(left, to_bar, y, ink, mark);
        } else {
            pen.rect(left, low, right - left, high - low, faint(fuzz, 0.08));
            for end in [low, high] {
                pen.level_dashed(left, right, end, pen.roles.ink_2, pen.roles.rule_u, (2.0, 4.0));
            }
        }
        if !frame.phone {
            pen.bracket(right + 9.0 * u, low, high, 4.0);
        }
    }
    if let Some(today) = layers.today {
        let y = frame.y(today.value_m);
        pen.level_dashed(frame.plot.0, to_bar, y, pen.roles.warm_ink, mark, (2.0, 3.0));
        if !frame.phone {
            pen.bracket(right + 9.0 * u, frame.y(today.span_top_m), frame.y(today.span_bottom_m), 4.0);
        }
    }
    if let Some(mixed_m) = layers.mixed_m {
        let weight = pen.roles.rule_u * 1.15;
        pen.level_dashed(frame.plot.0, right, frame.y(mixed_m), pen.roles.warm_ink, weight, (9.0, 4.0));
    }
}

/// Ticks of other rules nearer than this are one tick, in units of the picture: a dozen of them would be a block.
const TICKS_APART: f64 = 2.5;

/// Other rules: short ticks at the right of the plot; the one in hand draws its line, and its tick is longer.
pub(super) fn rules(pen: &mut Pen, frame: &Frame, picture: &Picture) {
    let (left, right) = frame.plot;
    let (u, ink, rule) = (frame.u, pen.roles.ink, pen.roles.rule_u);
    let mut drawn: Vec<f64> = Vec::new();
    for tick in &picture.rules {
        let Some(y) = depth(tick.depth_m).map(|depth_m| frame.y(depth_m)) else { continue };
        if tick.in_hand.is_some() {
            pen.level(right - 18.0 * u, right, y, ink, rule);
            pen.level_dashed(left, right, y, ink, rule * 1.1, (2.0, 3.0));
        } else if drawn.iter().all(|other| (other - y).abs() >= TICKS_APART * u) {
            pen.level(right - 12.0 * u, right, y, ink, rule);
            drawn.push(y);
        }
    }
}

/// Both ends of a step, if it is one.
fn ends(frame: &Frame, step: &StepInHand) -> Option<(f64, f64)> {
    let (top_m, bottom_m) = (depth(step.top_m)?, depth(step.bottom_m)?);
    (bottom_m > top_m).then(|| (frame.y(top_m), frame.y(bottom_m)))
}

/// The step's light band and, explained, its triangle on the curve.
pub(super) fn step(pen: &mut Pen, frame: &Frame, picture: &Picture) {
    let Some(step) = &picture.step else { return };
    let Some((top, bottom)) = ends(frame, step) else { return };
    let left = match picture.middle {
        Middle::Means(_) => frame.means.map_or(frame.plot.0, |means| means.0 - 4.0 * frame.u),
        _ => frame.plot.0,
    };
    let right = match (&picture.strip, frame.strip) {
        (Strip::Open { .. }, Some(strip)) => strip.1,
        _ => frame.plot.1,
    };
    let ink = pen.roles.ink;
    pen.rect(left, top, right - left, bottom - top, faint(ink, 0.08));
    if let Some(words) = step.explained.as_ref().filter(|words| sound(words.top_c, words.bottom_c)) {
        let (x_top, x_bottom) = (frame.temp_x(words.top_c), frame.temp_x(words.bottom_c));
        pen.polygon(&[(x_top, top), (x_top, bottom), (x_bottom, bottom)], faint(ink, 0.16));
        pen.path([(x_top, top), (x_top, bottom), (x_bottom, bottom)], ink, pen.roles.rule_u);
    }
}

/// Stretches in the light: upper and lower edge on the picture.
fn lights(frame: &Frame, picture: &Picture) -> Vec<(f64, f64)> {
    let edges = |(top_m, bottom_m): &(f64, f64)| {
        let (top, bottom) = (depth(*top_m)?, depth(*bottom_m)?);
        (bottom > top).then(|| (frame.y(top), frame.y(bottom)))
    };
    picture.lit_m.iter().filter_map(edges).collect()
}

/// Their letters at the left, over every line.
pub(super) fn letters(pen: &mut Pen, frame: &Frame, picture: &Picture) {
    for ((top, bottom), letter) in lights(frame, picture).into_iter().zip(["A", "B", "C", "D"]) {
        let baseline = (top + bottom) / 2.0 + frame.fine * 0.35;
        pen.tag(frame.plot.0 + 9.0 * frame.u, baseline, letter, pen.strong());
    }
}

/// Stretches in the light.
pub(super) fn lit(pen: &mut Pen, frame: &Frame, picture: &Picture) {
    let (left, right) = frame.plot;
    let ink = pen.roles.ink;
    for (top, bottom) in lights(frame, picture) {
        // A gap keeps two that touch apart.
        let gap = (1.5 * frame.u).min((bottom - top) / 4.0);
        pen.rect(left, top + gap, right - left, bottom - top - 2.0 * gap, faint(ink, 0.1));
    }
}

fn sound(top_c: f64, bottom_c: f64) -> bool {
    drawable(0.0, top_c) && drawable(0.0, bottom_c)
}

/// What the triangle's legs read; beside the curve, never on it.
pub(super) fn step_words(pen: &mut Pen, frame: &Frame, picture: &Picture) {
    let Some(step) = &picture.step else { return };
    let (Some((top, bottom)), Some(words)) = (ends(frame, step), &step.explained) else { return };
    if frame.phone || !sound(words.top_c, words.bottom_c) {
        return;
    }
    let (u, fine) = (frame.u, frame.fine);
    let (x_top, x_bottom) = (frame.temp_x(words.top_c), frame.temp_x(words.bottom_c));
    let cools = x_bottom <= x_top;
    let look = pen.strong();
    // Under the level leg, on the side the curve does not go to.
    let wide = width(&words.drop, look.face, look.size);
    let baseline = bottom + fine * 1.25;
    let mut middle = (x_top + x_bottom) / 2.0;
    if let Some((leftmost, rightmost)) = frame.curve_between(baseline - fine, baseline + fine * 0.3) {
        let clear = wide / 2.0 + 12.0 * u;
        middle = if cools { middle.max(rightmost + clear) } else { middle.min(leftmost - clear) };
    }
    let middle =
        middle.clamp(frame.plot.0 + wide / 2.0, (frame.plot.1 - wide / 2.0).max(frame.plot.0 + wide / 2.0));
    pen.tag(middle, baseline, &words.drop, look.at(Anchor::Middle));
    let (x, anchor) = if cools { (x_top + 7.0 * u, Anchor::Start) } else { (x_top - 7.0 * u, Anchor::End) };
    pen.tag(x, (top + bottom) / 2.0 + fine * 0.35, &words.thickness, look.at(anchor));
}

/// The profile line over a paper line that keeps it clear of everything.
pub(super) fn profile(pen: &mut Pen, frame: &Frame) {
    let times = if frame.crowded { 0.8 } else { 1.0 };
    let (line, paper) = (pen.roles.profile_u, pen.roles.sheet);
    bent(pen, &frame.curve, paper, line + 3.0);
    bent(pen, &frame.curve, pen.roles.ink, line * times);
}

/// A bent line without spikes: where it turns back it is broken, and the corner is rounded.
fn bent(pen: &mut Pen, bends: &[(f64, f64)], ink: crate::theme::Colour, width_u: f64) {
    let mut start = 0;
    for (place, corner) in bends.windows(3).enumerate() {
        let [a, b, c] = *corner else { continue };
        let along = (b.0 - a.0) * (c.0 - b.0) + (b.1 - a.1) * (c.1 - b.1);
        if along < 0.0 {
            let end = place + 1;
            pen.path(bends.get(start..=end).unwrap_or(&[]).iter().copied(), ink, width_u);
            pen.disc(b.0, b.1, width_u * pen.u / 2.0, ink);
            start = end;
        }
    }
    pen.path(bends.get(start..).unwrap_or(&[]).iter().copied(), ink, width_u);
}

/// ▽ △ ○ at the readings: the tips touch them.
pub(super) fn readings(pen: &mut Pen, frame: &Frame, picture: &Picture) {
    use layercast_core::Leg;
    let size = frame.point_size;
    let shown = |leg: Leg| {
        picture.points.iter().filter(move |point| point.leg == leg && drawable(point.depth_m, point.temp_c))
    };
    for point in shown(Leg::Unknown) {
        pen.either_way(frame.temp_x(point.temp_c), frame.y(point.depth_m), size);
    }
    for point in shown(Leg::Up) {
        pen.coming_up(frame.temp_x(point.temp_c), frame.y(point.depth_m), size);
    }
    for point in shown(Leg::Down) {
        pen.going_down(frame.temp_x(point.temp_c), frame.y(point.depth_m), size);
    }
}

/// What was guessed: a thin dashed line in the student's ink, a ring at each point.
pub(super) fn guess(pen: &mut Pen, frame: &Frame, picture: &Picture) {
    let ink = pen.roles.you;
    let values: Vec<(f64, f64)> = (picture.guess.iter())
        .filter(|(depth_m, temp_c)| drawable(*depth_m, *temp_c) && *depth_m <= frame.max_depth_m)
        .map(|(depth_m, temp_c)| (frame.temp_x(*temp_c), frame.y(*depth_m)))
        .collect();
    let (on, every) = (6.0 * frame.u, 10.0 * frame.u);
    for pair in values.windows(2) {
        let [a, b] = *pair else { continue };
        let far = (b.0 - a.0).hypot(b.1 - a.1);
        let at = |along: f64| {
            let share = along.min(far) / far;
            (a.0 + share * (b.0 - a.0), a.1 + share * (b.1 - a.1))
        };
        let dashes = (far / every).clamp(0.0, 2000.0) as usize;
        for dash in 0..=dashes {
            let from = dash as f64 * every;
            if from < far {
                pen.path([at(from), at(from + on)], ink, pen.roles.rule_u);
            }
        }
    }
    let radius = 5.0 * frame.u;
    for (x, y) in values {
        pen.disc(x, y, radius, pen.roles.sheet);
        pen.ring(x, y, radius, ink, pen.roles.rule_u);
    }
}

/// The same cast read otherwise: a thin line, a small square at each of its values.
pub(super) fn otherwise(pen: &mut Pen, frame: &Frame, picture: &Picture) {
    let (ink, paper) = (pen.roles.ink_2, pen.roles.sheet);
    let values: Vec<(f64, f64)> = (picture.otherwise.iter())
        .filter(|(depth_m, temp_c)| drawable(*depth_m, *temp_c))
        .map(|(depth_m, temp_c)| (frame.temp_x(*temp_c), frame.y(*depth_m)))
        .collect();
    bent(pen, &values, paper, pen.roles.rule_u + 2.0);
    bent(pen, &values, ink, pen.roles.rule_u);
    let side = frame.point_size * 7.0 * frame.u;
    for (x, y) in values {
        pen.rect(x - side / 2.0, y - side / 2.0, side, side, paper);
        pen.frame(x - side / 2.0, y - side / 2.0, side, side, ink, pen.roles.rule_u);
    }
}

/// Ring, line and pointer of the reading under the cursor.
pub(super) fn cursor(pen: &mut Pen, frame: &Frame, picture: &Picture) {
    let Some(point) = picture.cursor.and_then(|place| picture.points.get(place)) else { return };
    if !drawable(point.depth_m, point.temp_c) {
        return;
    }
    let (u, ink) = (frame.u, pen.roles.ink);
    let (x, y) = (frame.temp_x(point.temp_c), frame.y(point.depth_m));
    // Broken where it would strike through words.
    let mut left = frame.plot.0;
    for (from, to) in pen.texts_across(y) {
        pen.level(left, from.clamp(left, frame.plot.1), y, ink, pen.roles.rule_u * 0.9);
        left = left.max(to);
    }
    pen.level(left, frame.plot.1, y, ink, pen.roles.rule_u * 0.9);
    if !frame.phone {
        let tip = frame.cable_x + 9.0 * u;
        pen.polygon(&[(tip, y), (tip + 6.0 * u, y - 4.0 * u), (tip + 6.0 * u, y + 4.0 * u)], ink);
    }
    pen.ring(x, y, 11.0 * u, ink, pen.roles.mark_u);
}

/// A diamond with "?" at its depth at the left edge of the plot, and words where they fit beside the curve.
pub(super) fn doubts(pen: &mut Pen, frame: &Frame, picture: &Picture, words: &Words) {
    for doubt in &picture.doubts {
        one_doubt(pen, frame, doubt.depth_m, &doubt.words);
    }
    if let (Some((upper_m, _)), true) = (picture.heavier_above_m, picture.doubts.is_empty()) {
        one_doubt(pen, frame, upper_m, &words.colder_than_below);
    }
}

fn one_doubt(pen: &mut Pen, frame: &Frame, depth_m: f64, words: &str) {
    let Some(depth_m) = depth(depth_m) else { return };
    let (u, fine) = (frame.u, frame.fine);
    let (y, x, reach) = (frame.y(depth_m), frame.plot.0 + 16.0 * u, 9.0 * u);
    let (line, rule) = (pen.roles.doubt_line, pen.roles.rule_u);
    pen.level_dashed(x, frame.plot.1, y, line, rule, (2.0, 4.0));
    let corners = [(x, y - reach), (x + reach, y), (x, y + reach), (x - reach, y)];
    pen.polygon(&corners, pen.roles.doubt_tint);
    pen.outline(&corners, line, rule);
    let sign = pen.strong().at(Anchor::Middle).ink(pen.roles.doubt);
    pen.text(x, y + fine * 0.36, "?", sign);
    if words.is_empty() {
        return;
    }
    let look = pen.plain().ink(pen.roles.doubt);
    let wide = width(words, look.face, look.size);
    let start = x + 15.0 * u;
    let curve = frame.curve_between(y - fine, y + fine * 0.5);
    let right = frame.plot.1 - 4.0 * u;
    if curve.is_none_or(|(leftmost, _)| start + wide < leftmost - 12.0 * u) && start + wide < right {
        pen.tag(start, y + fine * 0.36, words, look);
    } else if curve.is_some_and(|(_, rightmost)| right - wide > rightmost + 12.0 * u) {
        pen.tag(right, y + fine * 0.36, words, look.at(Anchor::End));
    }
}

/// What stands in the plot before there is a reading.
pub(super) fn empty(pen: &mut Pen, frame: &Frame, words: &Words) {
    let mut look = pen.plain().at(Anchor::Middle).ink(pen.roles.ink_2);
    look.size = frame.text;
    let lines = super::cover::fitting(&words.empty, frame.plot.1 - frame.plot.0, look.face, look.size);
    let (middle, y) = ((frame.plot.0 + frame.plot.1) / 2.0, (frame.surface_y + frame.floor_y) / 2.0);
    for (place, line) in lines.iter().enumerate() {
        pen.text(middle, y + (place as f64 - 1.0) * frame.text * 1.4, line, look);
    }
}
