//! The rules' column: covered, or the found layers in full pattern with their words.

use super::cover;
use super::frame::{Across, Frame};
use super::layers::{Band, Kind, Layers, Water, open_end_y};
use crate::pen::{Anchor, Area, Pen};
use crate::picture::{Middle, Picture, Words};

/// Lines of a word and its gloss are this far apart, in sizes of the smallest text.
const LINE: f64 = 1.24;

pub(super) fn draw(pen: &mut Pen, frame: &Frame, picture: &Picture, layers: Option<&Layers>, words: &Words) {
    let Some(column) = frame.rules else { return };
    let u = frame.u;
    if picture.middle == Middle::RulesCovered {
        let (top, bottom) = (frame.surface_y + u, frame.floor_y - u);
        cover::flap(pen, frame, column, top, bottom, true);
        if !frame.phone {
            cover::words(pen, frame, column, top, bottom, &words.covered);
        }
        return;
    }
    if let Some(layers) = layers {
        found(pen, frame, layers, column, words);
    }
    let (left, right) = column;
    let (ink, rule) = (pen.roles.ink, pen.roles.rule_u);
    pen.frame(left, frame.surface_y, right - left, frame.floor_y - frame.surface_y, ink, rule);
    if let Some(layers) = layers {
        boundaries(pen, frame, layers, column);
    }
}

fn found(pen: &mut Pen, frame: &Frame, layers: &Layers, column: Across, words: &Words) {
    let (left, right) = column;
    let u = frame.u;
    let lane = match (frame.phone, frame.narrow) {
        (true, _) => right - left,
        (_, true) => 20.0 * u,
        _ => 24.0 * u,
    };
    layers.tint(pen, frame, column);
    for band in &layers.bands {
        let (top, bottom) = (frame.y(band.top_m), frame.y(band.bottom_m));
        band.kind.pattern(pen, Area { x: left, y: top, width: lane, height: bottom - top }, 6.0);
    }
    if frame.phone {
        return;
    }
    let room = (left + lane + 6.0 * u, right - 3.0 * u);
    match layers.water {
        Water::Words => {
            let (top, bottom) = beside_the_line(frame, layers);
            block(pen, frame, column, (top, bottom), &words.column_words, pen.roles.ink, Look::Middle);
        }
        _ => {
            for band in &layers.bands {
                band_words(pen, frame, layers, band, room, words);
            }
        }
    }
    if layers.water == Water::WarmOnly
        && let Some(steep) = layers.bands.last()
    {
        let area = (frame.y(steep.bottom_m), frame.floor_y);
        block(pen, frame, room, area, &words.column_lower, pen.roles.ink_2, Look::Start);
    }
    if let Some(today) = layers.today {
        let (top, bottom) = (frame.y(today.top_m), frame.y(today.bottom_m));
        let ink = pen.roles.warm_ink;
        for y in [top, bottom] {
            pen.level_dashed(left, right, y, ink, pen.roles.rule_u, (2.0, 3.0));
        }
        pen.rect(left + lane, top + 2.0 * u, right - left - lane, bottom - top - 4.0 * u, pen.roles.warm);
        block(pen, frame, room, (top, bottom), &words.column_warm_today, ink, Look::Start);
    }
}

/// The larger part of the column above or below the thermocline's line; all of it where there is none.
fn beside_the_line(frame: &Frame, layers: &Layers) -> (f64, f64) {
    let (top, bottom) = (frame.surface_y, frame.floor_y);
    match layers.line.filter(|line| line.tellable).map(|line| frame.y(line.at_m)) {
        Some(y) if y - top >= bottom - y => (top, y),
        Some(y) => (y, bottom),
        None => (top, bottom),
    }
}

fn band_words(pen: &mut Pen, frame: &Frame, layers: &Layers, band: &Band, room: Across, words: &Words) {
    let (mut top, bottom) = (frame.y(band.top_m), frame.y(band.bottom_m));
    let pair = |(name, gloss): &(String, String)| vec![name.clone(), gloss.clone()];
    let lines = match (layers.water, band.kind) {
        (Water::Mixed, _) | (Water::WarmOnly, Kind::Warm) | (_, Kind::Ice) => words.column_words.clone(),
        (Water::UnderIce, _) => words.column_lower.clone(),
        // Too thin for words; the line through it has them.
        (Water::WarmOnly, _) => return,
        (_, Kind::Warm) => pair(&words.epilimnion),
        (_, Kind::Steep) if layers.goes_on() => {
            vec![words.metalimnion.0.clone(), words.goes_on.clone()]
        }
        (_, Kind::Steep) => pair(&words.metalimnion),
        (_, Kind::Deep) => pair(&words.hypolimnion),
    };
    if let (Kind::Warm, Some(today)) = (band.kind, layers.today) {
        top = frame.y(today.bottom_m).clamp(top, bottom);
    }
    let mut area = (top, bottom);
    if let (Kind::Steep, Some(line)) = (band.kind, layers.line) {
        // Below the thermocline's soft edge, or above it where there is more room.
        let (above, below) = ((top, frame.y(line.low_m)), (frame.y(line.high_m), bottom));
        area = if below.1 - below.0 >= (above.1 - above.0).min(frame.fine * 2.4) { below } else { above };
    }
    let ink = band.kind.ink(pen.roles);
    let look = if layers.water == Water::Mixed { Look::AllStrong } else { Look::Start };
    if block(pen, frame, room, area, &lines, ink, look) {
        return;
    }
    // Two lines have no room: the name alone.
    block(pen, frame, room, area, lines.get(..1).unwrap_or(&[]), ink, look);
}

/// How a block of words is set.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Look {
    /// A name and its gloss.
    Start,
    /// One sentence: every line strong.
    AllStrong,
    /// A name and its gloss, centred.
    Middle,
}

/// Words in the middle of an area; nothing, and `false`, where they do not fit.
fn block(
    pen: &mut Pen,
    frame: &Frame,
    (left, right): Across,
    (top, bottom): (f64, f64),
    lines: &[String],
    ink: crate::theme::Colour,
    look: Look,
) -> bool {
    let strong = pen.strong();
    let lines = cover::fitting(lines, right - left, strong.face, strong.size);
    let step = frame.fine * LINE;
    if lines.is_empty() || (lines.len() as f64 - 0.2) * step > bottom - top {
        return false;
    }
    let (x, anchor) = match look {
        Look::Start | Look::AllStrong => (left, Anchor::Start),
        Look::Middle => ((left + right) / 2.0, Anchor::Middle),
    };
    let first = (top + bottom) / 2.0 - (lines.len() as f64 - 1.0) * step / 2.0 + frame.fine * 0.35;
    for (place, line) in lines.iter().enumerate() {
        let kind = if place == 0 || look == Look::AllStrong { strong } else { pen.plain() };
        pen.text(x, first + place as f64 * step, line, kind.at(anchor).ink(ink));
    }
    true
}

/// Ink lines at the found depths, and brackets in the gap for their ranges.
fn boundaries(pen: &mut Pen, frame: &Frame, layers: &Layers, (left, right): Across) {
    let (u, ink, rule) = (frame.u, pen.roles.ink, pen.roles.rule_u);
    for pair in layers.bands.windows(2) {
        let [_, lower] = pair else { continue };
        pen.level(left, right, frame.y(lower.top_m), ink, rule);
    }
    if layers.water == Water::WarmOnly
        && let Some(steep) = layers.bands.last()
    {
        pen.level(left, right, frame.y(steep.bottom_m), ink, rule);
    }
    if frame.phone {
        return;
    }
    let x = right + 6.0 * u;
    for edge in layers.edges.iter().filter(|edge| edge.high_m > edge.low_m) {
        pen.bracket(x, frame.y(edge.low_m), frame.y(edge.high_m), 3.0);
    }
    if layers.goes_on() {
        // Dotted and open below: nobody has measured where it ends.
        let end = open_end_y(frame);
        pen.upright_dashed(x, end - 14.0 * u, end + 10.0 * u, ink, rule, (2.0, 3.0));
        pen.level(x - 3.0 * u, x + 3.0 * u, end - 14.0 * u, ink, rule);
    }
}
