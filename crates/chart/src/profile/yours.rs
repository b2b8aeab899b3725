//! The student's column, marks and grips.

use super::frame::Frame;
use crate::numbers::mark;
use crate::pen::{Anchor, Pen, faint};
use crate::picture::{Mark, Marks, Picture, Words};
use crate::widths::width;
use layercast_core::order::sort_by;

const GRIP_U: f64 = 26.0;
const APART_U: f64 = 28.0;

/// Depth and give or take of a placed mark.
fn placed(mark: Mark) -> Option<(f64, Option<f64>)> {
    match mark {
        Mark::At { depth_m, give_m } if depth_m.is_finite() => Some((depth_m, give_m)),
        _ => None,
    }
}

fn all(marks: &Marks) -> [Mark; 3] {
    [marks.mixed, marks.thermocline, marks.deep]
}

fn from_to(picture: &Picture) -> Option<(f64, f64)> {
    picture.from_to_m.filter(|(from_m, to_m)| from_m.is_finite() && to_m.is_finite())
}

/// The column: frame, soft edges, three words.
pub(super) fn column(pen: &mut Pen, frame: &Frame, picture: &Picture, words: &Words) {
    let (Some(marks), Some((left, right))) = (&picture.marks, frame.yours) else { return };
    let (u, fine) = (frame.u, frame.fine);
    let (top, bottom) = (frame.surface_y, frame.floor_y);
    let (you, rule) = (pen.roles.you, pen.roles.rule_u);
    pen.rect(left, top, right - left, bottom - top, pen.roles.you_tint);
    for y in [top, bottom] {
        pen.level_dashed(left, right, y, you, rule, (4.0, 3.0));
    }
    for x in [left, right] {
        pen.upright_dashed(x, top, bottom, you, rule, (4.0, 3.0));
    }
    let middle = (left + right) / 2.0;
    if all(marks).iter().all(|mark| *mark == Mark::Refused) {
        let voice = pen.voice(1.12);
        if width(&words.no_layers, voice.face, voice.size) <= right - left {
            pen.text(middle, (top + bottom) / 2.0, &words.no_layers, voice);
        }
        return;
    }
    if let Some((from_m, to_m)) = from_to(picture) {
        let (from, to) = (frame.y(from_m.min(to_m)), frame.y(from_m.max(to_m)));
        pen.rect(left, from, right - left, to - from, faint(you, 0.16));
        return;
    }
    for mark in all(marks) {
        if let Some((depth_m, Some(give_m))) = placed(mark)
            && give_m.is_finite()
            && give_m > 0.0
        {
            let ends = (frame.y(depth_m - give_m), frame.y(depth_m + give_m));
            pen.soft_edge(left + u, right - left - 2.0 * u, frame.y(depth_m), ends, you, 0.34);
        }
    }
    // mixed · steep · deep: only between two marks, and only where a word has room beside the grips.
    let (Some((mixed_m, _)), Some((deep_m, _))) = (placed(marks.mixed), placed(marks.deep)) else { return };
    if frame.phone {
        return;
    }
    let (mixed, deep) = (frame.y(mixed_m), frame.y(deep_m));
    let mut areas = [(&words.mixed, top, mixed), (&words.steep, mixed, deep), (&words.deep, deep, bottom)];
    if let Some((thermocline_m, _)) = placed(marks.thermocline) {
        let thermocline = frame.y(thermocline_m);
        let [_, steep, _] = &mut areas;
        if thermocline - mixed > deep - thermocline { steep.2 = thermocline } else { steep.1 = thermocline }
    }
    let voice = pen.voice(1.12);
    for (word, from, to) in areas {
        if to - from - GRIP_U * u >= fine {
            pen.text(middle, (from + to) / 2.0 + fine * 0.4, word, voice);
        }
    }
}

/// Dashed violet lines: across the plot while marking; after the check only either side of the curve.
pub(super) fn lines(pen: &mut Pen, frame: &Frame, picture: &Picture) {
    let (left, right) = frame.plot;
    let (you, weight) = (pen.roles.you, pen.roles.mark_u * 0.9);
    if let Some((from_m, to_m)) = from_to(picture) {
        let (from, to) = (frame.y(from_m.min(to_m)), frame.y(from_m.max(to_m)));
        pen.rect(left, from, right - left, to - from, faint(you, 0.1));
        for y in [from, to] {
            pen.level_dashed(left, right, y, you, weight, (5.0, 4.0));
        }
        return;
    }
    let Some(marks) = &picture.marks else { return };
    for (depth_m, _) in all(marks).into_iter().filter_map(placed) {
        match short(frame, picture, depth_m) {
            Some((from, to)) => pen.level_dashed(from, to, frame.y(depth_m), you, weight, (5.0, 3.0)),
            None => pen.level_dashed(left, right, frame.y(depth_m), you, weight, (5.0, 4.0)),
        }
    }
}

/// The short line of a mark after the check.
fn short(frame: &Frame, picture: &Picture, depth_m: f64) -> Option<(f64, f64)> {
    let half = if frame.phone { 26.0 } else { 46.0 } * frame.u;
    let x = frame.curve_x(depth_m).filter(|_| picture.marks_short)?;
    Some(((x - half).max(frame.plot.0), (x + half).min(frame.plot.1)))
}

/// (y, left, right) of the lines that stand in the plot after the check: words keep clear of them.
pub(super) fn short_lines(frame: &Frame, picture: &Picture) -> Vec<(f64, f64, f64)> {
    let Some(marks) = picture.marks.as_ref().filter(|_| picture.step.is_none()) else { return Vec::new() };
    let line = |(depth_m, _): (f64, Option<f64>)| {
        short(frame, picture, depth_m).map(|(left, right)| (frame.y(depth_m), left, right))
    };
    all(marks).into_iter().filter_map(placed).filter_map(line).collect()
}

/// Where dashed lines of the student's run across the whole plot: no words stand on them.
pub(super) fn long_lines(frame: &Frame, picture: &Picture) -> Vec<f64> {
    if picture.step.is_some() || !picture.lit_m.is_empty() {
        return Vec::new();
    }
    if let Some((from_m, to_m)) = from_to(picture) {
        return vec![frame.y(from_m), frame.y(to_m)];
    }
    let placed = picture.marks.iter().flat_map(all).filter_map(placed);
    let long = placed.filter(|(depth_m, _)| short(frame, picture, *depth_m).is_none());
    long.map(|(depth_m, _)| frame.y(depth_m)).collect()
}

/// Where the grips stand: at their depths, parted where they would touch, the unset ones stacked at the foot.
pub(super) struct Grips {
    pub marks: [Option<f64>; 3],
    pub from_to: Option<(f64, f64)>,
}

pub(super) fn grips(frame: &Frame, picture: &Picture) -> Grips {
    let mut grips = Grips { marks: [None; 3], from_to: None };
    let Some(marks) = &picture.marks else { return grips };
    if let Some((from_m, to_m)) = from_to(picture) {
        let mut places = [(0, frame.y(from_m)), (1, frame.y(to_m))];
        part(&mut places, frame);
        let at = |which: usize| places.iter().find(|(name, _)| *name == which).map(|(_, y)| *y);
        grips.from_to = at(0).zip(at(1));
        return grips;
    }
    let marks = all(marks);
    let unset = marks.iter().filter(|mark| **mark == Mark::Unset).count();
    let mut parked = 0;
    let mut places: Vec<(usize, f64)> = Vec::new();
    for (name, mark) in marks.into_iter().enumerate() {
        match (mark, placed(mark)) {
            (_, Some((depth_m, _))) => places.push((name, frame.y(depth_m))),
            (Mark::Unset, _) => {
                let from_foot = (unset - parked) as f64 - 0.4;
                places.push((name, frame.floor_y - APART_U * frame.u * from_foot));
                parked += 1;
            }
            _ => {}
        }
    }
    part(&mut places, frame);
    for (name, y) in places {
        if let Some(place) = grips.marks.get_mut(name) {
            *place = Some(y);
        }
    }
    grips
}

/// Moves grips that are closer than 28 u apart, each pair by the same amount; none leaves the foot of the column.
fn part(places: &mut [(usize, f64)], frame: &Frame) {
    let need = APART_U * frame.u;
    sort_by(places, |a, b| a.1.total_cmp(&b.1));
    for _ in 0..60 {
        for place in 1..places.len() {
            let (upper, lower) = places.split_at_mut(place);
            let (Some(upper), Some(lower)) = (upper.last_mut(), lower.first_mut()) else { continue };
            let over = need - (lower.1 - upper.1);
            if over > 0.0 {
                upper.1 -= over / 2.0;
                lower.1 += over / 2.0;
            }
        }
    }
    let mut foot = frame.floor_y;
    for (_, y) in places.iter_mut().rev() {
        *y = y.min(foot);
        foot = *y - need;
    }
}

/// A line from each parted grip to its true depth on the cable.
pub(super) fn leaders(pen: &mut Pen, frame: &Frame, picture: &Picture, grips: &Grips) {
    let Some((left, _)) = frame.yours else { return };
    let u = frame.u;
    for (depth_m, y) in depths(picture).into_iter().zip(places(grips)) {
        let (Some(depth_m), Some(y)) = (depth_m, y) else { continue };
        let true_y = frame.y(depth_m);
        if (y - true_y).abs() > 0.6 * u {
            let x = frame.cable_x + 7.0 * u;
            pen.path([(x, true_y), (left + u, y)], pen.roles.you, pen.roles.rule_u);
            pen.disc(x, true_y, 2.6 * u, pen.roles.you);
        }
    }
}

fn depths(picture: &Picture) -> [Option<f64>; 3] {
    match (from_to(picture), &picture.marks) {
        (Some((from_m, to_m)), _) => [Some(from_m), Some(to_m), None],
        (None, Some(marks)) => all(marks).map(|mark| placed(mark).map(|(depth_m, _)| depth_m)),
        (None, None) => [None; 3],
    }
}

fn places(grips: &Grips) -> [Option<f64>; 3] {
    grips.from_to.map_or(grips.marks, |(from, to)| [Some(from), Some(to), None])
}

/// The grips of a saved picture; in the page they are elements of their own.
pub(super) fn draw_grips(pen: &mut Pen, frame: &Frame, picture: &Picture, words: &Words, grips: &Grips) {
    let (Some((left, right)), true) = (frame.yours, picture.grips) else { return };
    let (u, ink) = (frame.u, pen.roles.you_on);
    let outside = if frame.phone { 2.0 * u } else { 0.0 };
    let look = crate::pen::Type { size: frame.fine * 1.08, ..pen.strong().ink(ink).at(Anchor::Start) };
    for (depth_m, y) in depths(picture).into_iter().zip(places(grips)) {
        let (Some(depth_m), Some(y)) = (depth_m, y) else { continue };
        let height = GRIP_U * u;
        pen.rect(left - outside, y - height / 2.0, right - left + 2.0 * outside, height, pen.roles.you);
        let mut text = mark(depth_m, words.decimal);
        if !frame.phone {
            text.push_str("\u{a0}m");
        }
        let (sign, gap) = (8.0 * u, 7.2 * u);
        let x = (left + right - sign - gap - width(&text, look.face, look.size)) / 2.0;
        pen.polygon(&[(x, y - u), (x + sign, y - u), (x + sign / 2.0, y - 7.0 * u)], ink);
        pen.polygon(&[(x, y + u), (x + sign, y + u), (x + sign / 2.0, y + 7.0 * u)], ink);
        pen.text(x + sign + gap, y + look.size * 0.35, &text, look);
    }
}
