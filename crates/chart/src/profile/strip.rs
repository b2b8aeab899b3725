//! The strip of °C per metre: one bar an interval, on the same depth axis.

use super::cover;
use super::frame::{Across, Frame, depth};
use super::layers::{Layers, Water};
use crate::numbers::number;
use crate::pen::{Anchor, Area, Pen, faint};
use crate::picture::{Bar, BarLook, Picture, Strip, Words};
use crate::widths::width;
use layercast_core::order::sort_by;

/// Intervals thinner than this (u) carry a number only where it matters.
const THIN_U: f64 = 12.0;
/// Numbers of thin intervals keep this distance, in u.
const NUMBERS_APART_U: f64 = 16.0;

pub(super) fn draw(pen: &mut Pen, frame: &Frame, picture: &Picture, layers: Option<&Layers>, words: &Words) {
    let Some(strip) = frame.strip else { return };
    pen.upright(strip.0, frame.surface_y, frame.floor_y, pen.roles.ink, pen.roles.rule_u);
    match &picture.strip {
        Strip::None => {}
        Strip::Covered { open, .. } => covered(pen, frame, strip, open, words),
        Strip::Open { bars, .. } => {
            one_per_metre(pen, frame, strip, frame.surface_y, frame.floor_y);
            draw_bars(pen, frame, strip, bars, words);
            if layers.is_some_and(|layers| layers.water == Water::Mixed) && !frame.phone {
                one_per_metre_words(pen, frame, strip, words);
            }
        }
    }
}

fn one_per_metre(pen: &mut Pen, frame: &Frame, strip: Across, y0: f64, y1: f64) {
    if frame.strip_scale > 1.0 {
        let x = frame.strip_x(strip, 1.0);
        pen.upright_dashed(x, y0, y1, pen.roles.ink_2, pen.roles.rule_u * 0.9, (4.0, 3.0));
    }
}

fn one_per_metre_words(pen: &mut Pen, frame: &Frame, (left, right): Across, words: &Words) {
    let look = pen.plain().at(Anchor::End).ink(pen.roles.ink_2);
    // Beside the numbers of the short bars.
    let room = right - frame.strip_x((left, right), 1.0) - 36.0 * frame.u;
    let lines = cover::fitting(&words.one_per_metre, room, look.face, look.size);
    let middle = (frame.surface_y + frame.floor_y) / 2.0;
    for (place, line) in lines.iter().enumerate() {
        pen.text(right - 4.0 * frame.u, middle - frame.fine * (0.3 - place as f64 * 1.25), line, look);
    }
}

/// The flap, with the bars that are open already seen through it.
fn covered(pen: &mut Pen, frame: &Frame, strip: Across, open: &[Bar], words: &Words) {
    let u = frame.u;
    let mut open: Vec<Bar> = open.iter().copied().filter(|bar| drawable(bar, frame)).collect();
    sort_by(&mut open, |a, b| a.top_m.total_cmp(&b.top_m));
    let (top, bottom) = (frame.surface_y + u, frame.floor_y - u);
    let mut from = top;
    let mut largest = (top, top);
    let mut piece = |pen: &mut Pen, from: f64, to: f64| {
        cover::flap(pen, frame, strip, from, to, from <= top);
        if to - from > largest.1 - largest.0 {
            largest = (from, to);
        }
    };
    for bar in &open {
        let (y0, y1) = (frame.y(bar.top_m), frame.y(bar.bottom_m));
        piece(pen, from, y0);
        one_per_metre(pen, frame, strip, y0.max(from), y1);
        from = y1.max(from);
    }
    piece(pen, from, bottom);
    draw_bars(pen, frame, strip, &open, words);
    let lines = if frame.phone { words.covered.get(..1).unwrap_or(&[]) } else { &words.covered[..] };
    cover::words(pen, frame, strip, largest.0, largest.1, lines);
}

fn drawable(bar: &Bar, frame: &Frame) -> bool {
    depth(bar.top_m).is_some()
        && depth(bar.bottom_m).is_some()
        && bar.bottom_m > bar.top_m
        && bar.top_m < frame.max_depth_m
        && bar.c_per_m.is_finite()
}

fn draw_bars(pen: &mut Pen, frame: &Frame, strip: Across, bars: &[Bar], words: &Words) {
    let middle = |bar: &Bar| (frame.y(bar.top_m) + frame.y(bar.bottom_m)) / 2.0;
    // Numbers of the steepest bars come first: the others keep away from them.
    let kept: Vec<f64> = bars.iter().filter(|bar| bar.look == BarLook::Steepest).map(middle).collect();
    let apart = NUMBERS_APART_U * frame.u;
    let mut last = f64::NEG_INFINITY;
    for bar in bars.iter().filter(|bar| drawable(bar, frame)) {
        let (top, bottom) = (frame.y(bar.top_m), frame.y(bar.bottom_m));
        let (height, y) = (bottom - top, (top + bottom) / 2.0);
        let end = frame.strip_x(strip, bar.c_per_m);
        shape(pen, frame, strip.0, end, top, height, bar);
        let steepest = bar.look == BarLook::Steepest;
        if height < THIN_U * frame.u && !steepest {
            let next = kept.partition_point(|other| *other < y);
            let near = |place: Option<usize>| {
                place.and_then(|place| kept.get(place)).is_some_and(|other| (other - y).abs() < apart)
            };
            if bar.c_per_m < 1.0 || y - last < apart || near(Some(next)) || near(next.checked_sub(1)) {
                continue;
            }
        }
        if frame.phone && !steepest {
            continue;
        }
        last = y;
        figure(pen, frame, strip, end, (y, height), bar, words);
    }
}

fn shape(pen: &mut Pen, frame: &Frame, left: f64, end: f64, top: f64, height: f64, bar: &Bar) {
    let u = frame.u;
    if bar.c_per_m <= 0.02 {
        pen.level(left, left + 3.0 * u, top + height / 2.0, pen.roles.bar, pen.roles.rule_u);
        return;
    }
    let air = (2.5 * u).min(height * 0.14);
    let area = Area { x: left, y: top + air, width: end - left, height: height - 2.0 * air };
    match bar.look {
        BarLook::Plain => pen.rect(area.x, area.y, area.width, area.height, pen.roles.bar),
        BarLook::Steepest => pen.rect(area.x, area.y, area.width, area.height, pen.roles.ink),
        BarLook::Steep | BarLook::WarmToday => {
            let ink = if bar.look == BarLook::Steep { pen.roles.steep_ink } else { pen.roles.warm_ink };
            pen.rect(area.x, area.y, area.width, area.height, faint(pen.roles.sheet, 0.75));
            pen.hatch(area, ink, 4.6, pen.roles.pattern_u);
            pen.frame(area.x, area.y, area.width, area.height, pen.roles.ink, pen.roles.point_u * 0.9);
        }
    }
}

/// The number at the end of a bar: inside the steepest, if there is room, else at its right; short bars have theirs in
/// one line right of the dashed one.
fn figure(
    pen: &mut Pen,
    frame: &Frame,
    strip: Across,
    end: f64,
    (y, height): (f64, f64),
    bar: &Bar,
    words: &Words,
) {
    let (u, fine) = (frame.u, frame.fine);
    let baseline = y + fine * 0.36;
    let text = number(bar.c_per_m, 1, words.decimal);
    let steepest = bar.look == BarLook::Steepest;
    let look = if steepest { pen.strong() } else { pen.plain() };
    let wide = width(&text, look.face, look.size);
    let start = if bar.c_per_m < 1.0 { end.max(frame.strip_x(strip, 1.0)) } else { end } + 5.0 * u;
    let fits_beside = start + wide <= strip.1;
    // Without room beside it the number goes into a bar that is barely as high as its figures.
    let least = if fits_beside { fine * 1.25 } else { fine * 0.9 };
    if steepest && height > least && end - strip.0 > wide + 12.0 * u {
        pen.text(end - 5.0 * u, baseline, &text, look.at(Anchor::End).ink(pen.roles.sheet));
    } else if fits_beside {
        pen.text(start, baseline, &text, look);
    } else {
        pen.tag(strip.1, baseline, &text, look.at(Anchor::End));
    }
}
