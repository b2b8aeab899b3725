//! Grid, ticks, heads, cable and bed.

use super::frame::{Across, Floor, Frame};
use crate::numbers::number;
use crate::pen::{Anchor, Area, Pen};
use crate::picture::{Picture, Words};
use crate::ticks::{depth_step, multiples, strip_step, temperature_step};
use crate::widths::width;

pub(super) fn draw(pen: &mut Pen, frame: &Frame, picture: &Picture, words: &Words) {
    grid(pen, frame);
    temperatures(pen, frame, words);
    heads(pen, frame, picture, words);
    depths(pen, frame, words);
    floor(pen, frame, words);
    pen.cable(frame.cable_x, frame.surface_y, frame.px_per_m, frame.last_m);
}

fn grid(pen: &mut Pen, frame: &Frame) {
    let (hair, line) = (pen.roles.hair_u, pen.roles.line);
    let step = depth_step(frame.px_per_m / frame.u);
    for depth_m in multiples(step, frame.floor_m - 1e-6, step) {
        for (left, right) in [Some(frame.plot), frame.strip].into_iter().flatten() {
            pen.level(left, right, frame.y(depth_m), line, hair);
        }
    }
}

fn temperatures(pen: &mut Pen, frame: &Frame, words: &Words) {
    let (low, high) = frame.temp_c;
    let (hair, line, ink) = (pen.roles.hair_u, pen.roles.line, pen.roles.ink);
    let (surface, u) = (frame.surface_y, frame.u);
    let u_per_c = (frame.plot.1 - frame.plot.0) / (high - low) / u;
    let step = temperature_step(u_per_c, frame.narrow);
    let look = pen.plain().at(Anchor::Middle);
    for temp_c in multiples(low, high, step) {
        let x = frame.temp_x(temp_c);
        pen.upright(x, surface, frame.floor_y, line, hair);
        pen.upright(x, surface - 6.0 * u, surface, ink, hair);
        pen.text(x, surface - 10.0 * u, &number(temp_c, 0, words.decimal), look);
    }
    if !frame.phone && u_per_c >= 6.0 {
        for temp_c in multiples(low, high, 1.0) {
            pen.upright(frame.temp_x(temp_c), surface - 3.0 * u, surface, ink, hair);
        }
    }
}

/// A head centred on its column, kept inside the picture.
fn head(pen: &mut Pen, frame: &Frame, across: Across, text: &str) {
    let look = pen.strong().at(Anchor::Middle);
    let half = width(text, look.face, look.size) / 2.0;
    let middle = (across.0 + across.1) / 2.0;
    let middle = middle.min(frame.right() + 10.0 * frame.u - half);
    pen.text(middle, 14.0 * frame.u, text, look);
}

fn heads(pen: &mut Pen, frame: &Frame, picture: &Picture, words: &Words) {
    let (u, phone) = (frame.u, frame.phone);
    let baseline = 14.0 * u;
    let strong = pen.strong();
    pen.text(if phone { 2.0 } else { 6.0 } * u, baseline, if phone { "m" } else { &words.depth }, strong);
    if let Some((left, right)) = frame.yours {
        let voice = pen.voice(1.15);
        pen.text((left + right) / 2.0, baseline, &words.yours, voice);
    }
    if let Some(rules) = frame.rules {
        head(pen, frame, rules, if phone { &words.rules } else { &words.by_the_rules });
    }
    if let Some((left, right)) = frame.means {
        head(pen, frame, (left, right - 4.0 * u), &words.mean);
        let look = pen.plain().at(Anchor::Middle).ink(pen.roles.ink_2);
        pen.text((left + right) / 2.0 - 2.0 * u, frame.surface_y - 10.0 * u, "°C", look);
    }
    head(pen, frame, frame.plot, if phone { "°C" } else { &words.temperature });
    if let Some(strip) = frame.strip {
        let text = match picture.strip_gains {
            _ if phone => &words.per_metre_short,
            Some(true) => &words.gained,
            Some(false) => &words.lost,
            None => &words.per_metre,
        };
        head(pen, frame, strip, text);
        let look = pen.plain().at(Anchor::Middle);
        for c_per_m in multiples(0.0, frame.strip_scale, strip_step(frame.strip_scale)) {
            let x = frame.strip_x(strip, c_per_m);
            pen.upright(x, frame.surface_y - 6.0 * u, frame.surface_y, pen.roles.ink, pen.roles.hair_u);
            pen.text(x, frame.surface_y - 10.0 * u, &number(c_per_m, 0, words.decimal), look);
        }
    }
}

fn depths(pen: &mut Pen, frame: &Frame, words: &Words) {
    let scale = (frame.surface_y, frame.px_per_m);
    pen.depth_numbers(frame.cable_x - 11.0 * frame.u, scale, frame.last_m, words.decimal);
    pen.level(frame.cable_x - 8.0 * frame.u, frame.right(), frame.surface_y, pen.roles.ink, pen.roles.rule_u);
}

/// Bed, or the dotted end of the readings.
fn floor(pen: &mut Pen, frame: &Frame, words: &Words) {
    let (left, right, y) = (frame.cable_x - 8.0 * frame.u, frame.right(), frame.floor_y);
    let (ink, rule) = (pen.roles.ink_2, pen.roles.rule_u);
    match frame.floor {
        Floor::Bed => {
            pen.level(left, right, y, ink, rule);
            let height = (frame.height - y).min(9.0 * frame.u);
            pen.hatch(Area { x: left, y, width: right - left, height }, ink, 7.0, pen.roles.hair_u);
        }
        Floor::LastReading => {
            pen.level_dashed(left, right, y, ink, rule, (1.5, 4.0));
            let look = pen.plain().at(Anchor::End).ink(ink);
            pen.text(frame.plot.1 - 6.0 * frame.u, y + frame.fine * 1.3, &words.last_reading, look);
        }
        Floor::Open => {}
    }
}
