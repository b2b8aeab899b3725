//! One core a group: the rules' column alone, its thermocline as a thick line with its number, its range as a bracket.

use super::{Axis, CORES_IN_A_ROW, ClassPlacement, ClassWords, Core, deepest};
use crate::pen::{Anchor, Area, Pen, Type, faint};
use crate::picture::Size;
use crate::profile::layers::{Layers, Line, Water};
use crate::ticks::{depth_step, multiples};
use crate::widths::width;

/// Share of a cell that the core takes, and the lane of its bracket.
const CORE: f64 = 0.68;
const LANE: f64 = 0.18;
/// Strokes of the steep layer: wider apart than in one group's own picture, so that the numbers stand out.
const HATCH_U: f64 = 9.0;
/// Lines of words are this far apart, in sizes of the smallest text.
const LINE: f64 = 1.22;
/// The core and its letter are not made wider than this, in u: one group does not fill the wall.
const WIDEST_U: f64 = 170.0;

pub(super) fn draw(
    pen: &mut Pen,
    size: Size,
    cores: &[Core],
    shared_m: Option<(f64, f64)>,
    words: &ClassWords,
    wall: bool,
) -> ClassPlacement {
    let rows = cores.len().div_ceil(CORES_IN_A_ROW).max(1);
    let in_a_row = cores.len().div_ceil(rows).max(1);
    let letters = letters(pen, wall, rows);
    let deepest_m = deepest(cores.iter().map(floor_m));
    let height = size.height_px / rows as f64;
    let mut placement = ClassPlacement::default();
    for (row, cores) in cores.chunks(in_a_row).enumerate() {
        let top = height * row as f64;
        let Some(axis) = axis(pen, size.width_px, (top, height), &letters, deepest_m) else {
            return placement;
        };
        ground(pen, axis, top, if row == 0 { &words.depth } else { &[] }, words.decimal);
        shared(pen, axis, shared_m);
        let cell = ((axis.across.1 - axis.across.0) / in_a_row as f64).min(WIDEST_U * pen.u / CORE);
        for (place, core) in cores.iter().enumerate() {
            let left = axis.across.0 + cell * (place as f64 + LANE);
            one(pen, axis, core, (left, left + cell * CORE), cell, &letters);
            let from = left - cell * LANE;
            placement.cores_px.push((from, top, cell, height));
        }
    }
    placement
}

/// Sizes of the letters over the cores and of the numbers in their boxes.
struct Letters {
    letter: f64,
    number: f64,
}

fn letters(pen: &Pen, wall: bool, rows: usize) -> Letters {
    let times = match (rows, wall) {
        (1, true) => 2.0,
        (1, false) => 1.75,
        _ => 1.25,
    };
    let number = match (rows, wall) {
        (1, true) => 1.25,
        (1, false) => 1.12,
        _ => 1.0,
    };
    Letters { letter: pen.fine() * times, number: pen.fine() * number }
}

/// Where a core ends, metres: at the bed, else at its last reading.
fn floor_m(core: &Core) -> f64 {
    core.bed_m.filter(|bed_m| *bed_m >= core.last_m).unwrap_or(core.last_m)
}

fn axis(pen: &Pen, width_px: f64, (top, height): (f64, f64), letters: &Letters, last_m: f64) -> Option<Axis> {
    let u = pen.u;
    let surface_y = top + letters.letter * 1.35 + 18.0 * u;
    let deep_px = top + height - 16.0 * u - surface_y;
    let cable_x = 16.0 * u + width("10", pen.plain().face, pen.fine()) + 10.0 * u;
    let across = (cable_x + 18.0 * u, width_px - 12.0 * u);
    (deep_px > 30.0 * u && across.1 - across.0 > 40.0 * u).then(|| Axis {
        surface_y,
        px_per_m: deep_px / last_m,
        last_m,
        cable_x,
        across,
    })
}

/// Axis and grid of a row.
fn ground(pen: &mut Pen, axis: Axis, top: f64, head: &[String], decimal: char) {
    let (u, strong) = (pen.u, pen.strong());
    for (place, line) in head.iter().enumerate() {
        pen.text(6.0 * u, top + 15.0 * u + place as f64 * pen.fine() * 1.2, line, strong);
    }
    let right = axis.across.1;
    for depth_m in multiples(0.0, axis.last_m, depth_step(axis.px_per_m / u)).skip(1) {
        let (line, hair) = (pen.roles.line, pen.roles.hair_u);
        pen.level(axis.across.0 - 4.0 * u, right, axis.y(depth_m), line, hair);
    }
    pen.level(axis.cable_x - 8.0 * u, right, axis.surface_y, pen.roles.ink, pen.roles.rule_u);
    let scale = (axis.surface_y, axis.px_per_m);
    pen.depth_numbers(axis.cable_x - 11.0 * u, scale, axis.last_m, decimal);
    pen.cable(axis.cable_x, axis.surface_y, axis.px_per_m, axis.last_m);
}

/// The depths that all ranges share: a band behind the cores with dotted edges, or one dotted line.
fn shared(pen: &mut Pen, axis: Axis, shared_m: Option<(f64, f64)>) {
    let Some((top_m, bottom_m)) = shared_m.filter(|(top, bottom)| top.is_finite() && bottom >= top) else {
        return;
    };
    let (left, right) = (axis.cable_x + 10.0 * pen.u, axis.across.1);
    let (top, bottom) = (axis.y(top_m), axis.y(bottom_m));
    pen.rect(left, top, right - left, bottom - top, faint(pen.roles.ink, 0.13));
    let (ink, rule) = (pen.roles.ink, pen.roles.rule_u);
    pen.level_dashed(left, right, top, ink, rule, (3.0, 3.0));
    if bottom > top + 1.0 {
        pen.level_dashed(left, right, bottom, ink, rule, (3.0, 3.0));
    }
}

fn one(pen: &mut Pen, axis: Axis, core: &Core, (left, right): (f64, f64), cell: f64, letters: &Letters) {
    let u = pen.u;
    let (wide, floor_m) = (right - left, floor_m(core));
    let (surface, floor) = (axis.surface_y, axis.y(floor_m));
    let middle = (left + right) / 2.0;
    pen.rect(left, surface, wide, floor - surface, pen.roles.sheet);
    let layers = core.found.as_ref().map(|found| Layers::new(found, floor_m));
    let line = layers.as_ref().and_then(|layers| layers.line).filter(|line| line.at_m <= floor_m + 1e-6);
    if let Some(layers) = &layers {
        bands(pen, axis, layers, (left, wide));
    }
    if let Some(line) = line.filter(|line| line.tellable) {
        let (low, high) = (axis.y(line.low_m), axis.y(line.high_m));
        pen.soft_edge(left, wide, axis.y(line.at_m), (low, high), pen.roles.fuzz, 0.12);
    }
    pen.frame(left, surface, wide, floor - surface, pen.roles.ink, pen.roles.rule_u);
    floor_of(pen, core, (left - 3.0 * u, right + 3.0 * u), floor);
    let letter =
        Type { size: letters.letter, face: crate::fonts::Face::Serif600, ..pen.strong().at(Anchor::Middle) };
    pen.text(middle, surface - 16.0 * u, &core.name, letter);
    if let Some(at_m) = core.marked_m.filter(|at_m| at_m.is_finite()) {
        mark(pen, axis.y(at_m), (left, right));
    }
    let lane = cell * LANE * 0.55;
    match line {
        Some(line) => thermocline(pen, axis, core, line, (left, right, lane), letters),
        None => none(pen, core, middle, (surface, floor, axis.y(axis.last_m)), cell),
    }
}

fn bands(pen: &mut Pen, axis: Axis, layers: &Layers, (left, wide): (f64, f64)) {
    for band in &layers.bands {
        let (top, bottom) = (axis.y(band.top_m), axis.y(band.bottom_m));
        pen.rect(left, top, wide, bottom - top, faint(band.kind.tint(pen.roles), band.kind.strength()));
        band.kind.pattern(pen, Area { x: left, y: top, width: wide, height: bottom - top }, HATCH_U);
    }
    for pair in layers.bands.windows(2) {
        if let [_, lower] = pair {
            pen.level(left, left + wide, axis.y(lower.top_m), pen.roles.ink, pen.roles.rule_u);
        }
    }
    if layers.water == Water::WarmOnly
        && let Some(steep) = layers.bands.last()
    {
        pen.level(left, left + wide, axis.y(steep.bottom_m), pen.roles.ink, pen.roles.rule_u);
    }
}

/// The bed where it is known, else nothing more than the end of the core.
fn floor_of(pen: &mut Pen, core: &Core, (left, right): (f64, f64), y: f64) {
    if core.bed_m.is_none() {
        return;
    }
    pen.level(left, right, y, pen.roles.ink_2, pen.roles.rule_u);
    let area = Area { x: left, y, width: right - left, height: 8.0 * pen.u };
    pen.hatch(area, pen.roles.ink_2, 7.0, pen.roles.hair_u);
}

/// The group's own mark: a violet line through the core.
fn mark(pen: &mut Pen, y: f64, (left, right): (f64, f64)) {
    let (you, u) = (pen.roles.you, pen.u);
    pen.level_dashed(left - 4.0 * u, right + 4.0 * u, y, you, pen.roles.mark_u, (6.0, 3.0));
}

/// The line, its bracket and its number; where it cannot be told, only the range between dotted lines.
fn thermocline(
    pen: &mut Pen,
    axis: Axis,
    core: &Core,
    line: Line,
    (left, right, lane): (f64, f64, f64),
    letters: &Letters,
) {
    let (u, ink, rule) = (pen.u, pen.roles.ink, pen.roles.rule_u);
    let (low, at, high) = (axis.y(line.low_m), axis.y(line.at_m), axis.y(line.high_m));
    let x = left - lane;
    if line.tellable {
        pen.level(x, right, at, ink, pen.roles.mark_u * 1.5);
    } else {
        pen.rect(left, low, right - left, high - low, faint(pen.roles.fuzz, 0.12));
        for y in [low, high] {
            pen.level_dashed(left, right, y, ink, rule, (1.5, 4.0));
        }
    }
    pen.bracket(x, low, high, 4.0);
    if core.number.is_empty() {
        let middle = (left + right) / 2.0;
        words_at(pen, fitting(pen, core, right - left), middle, (low + high) / 2.0);
        return;
    }
    let look = Type { size: letters.number, ..pen.strong().at(Anchor::Middle) };
    let (wide, middle) = (width(&core.number, look.face, look.size), (left + right) / 2.0);
    let (box_left, high_px) = (middle - wide / 2.0 - 5.0 * u, look.size * 1.32);
    pen.rect(box_left, at - look.size * 0.66, wide + 10.0 * u, high_px, pen.roles.sheet);
    pen.frame(box_left, at - look.size * 0.66, wide + 10.0 * u, high_px, ink, rule);
    pen.text(middle, at + look.size * 0.35, &core.number, look);
}

/// What is said of a core without a line: under it where there is room, in one short word if need be; else on it.
fn none(pen: &mut Pen, core: &Core, middle: f64, (surface, floor, deepest): (f64, f64, f64), cell: f64) {
    let short = [core.short.clone()];
    let room = |lines: &[String]| {
        let high = lines.len() as f64 * pen.fine() * LINE + pen.fine() * 1.4;
        (deepest - floor >= high).then_some(floor + pen.fine() * 0.9 + high / 2.0)
    };
    let under = fitting(pen, core, cell);
    match room(under).or_else(|| room(&short)) {
        Some(y) if room(under).is_some() => words_at(pen, under, middle, y),
        Some(y) => words_at(pen, &short, middle, y),
        None => words_at(pen, fitting(pen, core, cell * CORE), middle, (surface + floor) / 2.0),
    }
}

/// The lines of a core, or its short word where they are too wide.
fn fitting<'a>(pen: &Pen, core: &'a Core, room: f64) -> &'a [String] {
    let look = pen.strong();
    let fits = |line: &String| width(line, look.face, look.size) <= room - 4.0 * pen.u;
    if core.words.iter().all(fits) { &core.words } else { std::slice::from_ref(&core.short) }
}

/// Lines round a height, on a ground of paper.
fn words_at(pen: &mut Pen, lines: &[String], x: f64, y: f64) {
    let look = pen.strong().at(Anchor::Middle);
    let step = pen.fine() * LINE;
    let first = y - (lines.len() as f64 - 1.0) * step / 2.0 + pen.fine() * 0.35;
    for (place, line) in lines.iter().enumerate() {
        pen.tag(x, first + place as f64 * step, line, look);
    }
}
