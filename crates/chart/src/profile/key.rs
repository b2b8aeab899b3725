//! The key: lower right of the plot, else lower left, else in a row under the bed; the first that the curve leaves free.

use layercast_core::Leg;

use super::frame::{Frame, drawable};
use crate::pen::{Pen, Type};
use crate::picture::{Picture, Words};
use crate::widths::width;

/// One sign of the key.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Sign {
    Down,
    Up,
    Once,
    Line,
    Otherwise,
}

/// Where the key stands.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) enum Place {
    /// In the plot; x of its signs.
    Plot(f64),
    /// In a row under the bed.
    Row,
}

/// What is in the picture, in the order of the key.
fn entries<'a>(picture: &Picture, words: &'a Words) -> Vec<(Sign, &'a str)> {
    let has = |leg: Leg| picture.points.iter().any(|p| p.leg == leg && drawable(p.depth_m, p.temp_c));
    let (down, up, once) = (has(Leg::Down), has(Leg::Up), has(Leg::Unknown));
    let mut entries = Vec::with_capacity(5);
    if once {
        entries.push((Sign::Once, words.reading.as_str()));
    }
    if down {
        entries.push((Sign::Down, words.going_down.as_str()));
    }
    if up {
        entries.push((Sign::Up, words.coming_up.as_str()));
    }
    if down && up {
        entries.push((Sign::Line, words.mean_of_two.as_str()));
    }
    if picture.otherwise.iter().any(|(depth_m, temp_c)| drawable(*depth_m, *temp_c)) {
        entries.push((Sign::Otherwise, words.otherwise.as_str()));
    }
    entries
}

fn step(frame: &Frame) -> f64 {
    frame.fine * 1.45
}

/// Baseline of the last entry in the plot.
fn last_baseline(frame: &Frame) -> f64 {
    frame.floor_y - step(frame) * 1.2 + 6.0 * frame.u
}

pub(super) fn place(frame: &Frame, picture: &Picture, words: &Words, look: Type) -> Place {
    let entries = entries(picture, words);
    let (u, fine) = (frame.u, frame.fine);
    let widest = entries.iter().map(|(_, text)| width(text, look.face, look.size)).fold(0.0, f64::max);
    let top = last_baseline(frame) - step(frame) * (entries.len() as f64 - 1.0) - fine - 4.0 * u;
    let right = frame.plot.1 - widest - if frame.phone { 20.0 } else { 34.0 } * u;
    let left = frame.plot.0 + 16.0 * u;
    // What stands lower than the key's top: readings and line.
    let mut low = frame.curve_between(top, frame.height);
    for point in picture.points.iter().filter(|p| drawable(p.depth_m, p.temp_c)) {
        if frame.y(point.depth_m) > top {
            let x = frame.temp_x(point.temp_c);
            low = Some(low.map_or((x, x), |(leftmost, rightmost)| (leftmost.min(x), rightmost.max(x))));
        }
    }
    match low {
        _ if entries.is_empty() => Place::Plot(right),
        None => Place::Plot(right),
        Some((_, rightmost)) if rightmost < right - 14.0 * u => Place::Plot(right),
        Some((leftmost, _)) if leftmost > left + widest + 26.0 * u => Place::Plot(left),
        Some(_) => Place::Row,
    }
}

pub(super) fn draw(pen: &mut Pen, frame: &Frame, picture: &Picture, words: &Words, place: Place) {
    let look = pen.plain();
    let entries = entries(picture, words);
    let u = frame.u;
    match place {
        Place::Plot(x) => {
            let first = last_baseline(frame) - step(frame) * (entries.len() as f64 - 1.0);
            for (row, (sign, text)) in entries.into_iter().enumerate() {
                let baseline = first + step(frame) * row as f64;
                draw_sign(pen, sign, x, baseline, u);
                pen.text(x + 14.0 * u, baseline, text, look);
            }
        }
        Place::Row => {
            let baseline = frame.height - 5.0 * u;
            let mut x = 12.0 * u;
            for (sign, text) in entries {
                draw_sign(pen, sign, x, baseline, u);
                pen.text(x + 12.0 * u, baseline, text, look);
                x += 28.0 * u + width(text, look.face, look.size);
            }
        }
    }
}

fn draw_sign(pen: &mut Pen, sign: Sign, x: f64, baseline: f64, u: f64) {
    match sign {
        Sign::Down => pen.going_down(x, baseline - u, 1.0),
        Sign::Up => pen.coming_up(x, baseline - 9.0 * u, 1.0),
        Sign::Once => {
            pen.level(x - 8.0 * u, x + 8.0 * u, baseline - 4.4 * u, pen.roles.ink, pen.roles.profile_u);
            pen.either_way(x, baseline - 4.4 * u, 1.0);
        }
        Sign::Line => {
            pen.level(x - 6.0 * u, x + 7.0 * u, baseline - 4.0 * u, pen.roles.ink, pen.roles.profile_u);
        }
        Sign::Otherwise => {
            let (y, rule, ink) = (baseline - 4.0 * u, pen.roles.rule_u, pen.roles.ink_2);
            pen.level(x - 6.0 * u, x + 7.0 * u, y, ink, rule);
            pen.rect(x - 3.0 * u, y - 3.5 * u, 7.0 * u, 7.0 * u, pen.roles.sheet);
            pen.frame(x - 3.0 * u, y - 3.5 * u, 7.0 * u, 7.0 * u, ink, rule);
        }
    }
}
