//! Words on the found lines: as many as fit beside the curve, none over another.

use super::frame::Frame;
use super::layers::{Layers, Line, Water};
use super::yours;
use crate::numbers::{mark, number};
use crate::pen::{Anchor, Pen, Type};
use crate::picture::{Picture, Words};
use crate::widths::width;

/// Which side of the curve the words stand on.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
enum Side {
    Left,
    Right,
}

/// Places words beside the curve and remembers where words are.
pub(super) struct Labels<'a> {
    frame: &'a Frame,
    taken: Vec<(f64, f64)>,
    short_lines: Vec<(f64, f64, f64)>,
    /// Where dashed lines run across the plot: no words stand on them.
    long_lines: Vec<f64>,
    side: Side,
}

impl<'a> Labels<'a> {
    pub fn new(frame: &'a Frame, picture: &Picture, layers: Option<&Layers>) -> Labels<'a> {
        let under_ice = layers.is_some_and(|layers| layers.water == Water::UnderIce);
        Labels {
            frame,
            taken: Vec::new(),
            short_lines: yours::short_lines(frame, picture),
            long_lines: {
                let found_m = |layers: &Layers| [layers.mixed_m, layers.today.map(|today| today.value_m)];
                let found_m = layers.map(found_m).into_iter().flatten().flatten();
                let found = found_m.map(|depth_m| frame.y(depth_m));
                found.chain(yours::long_lines(frame, picture)).collect()
            },
            side: if under_ice { Side::Right } else { Side::Left },
        }
    }

    /// Room for words whose box reaches from `y0` to `y1`.
    fn room(&self, y0: f64, y1: f64) -> f64 {
        let frame = self.frame;
        let (left, right) = frame.plot;
        let inset = self.inset();
        let curve = frame.curve_between(y0, y1);
        let mut room = right - left - 2.0 * inset;
        match (self.side, curve) {
            (Side::Left, Some((leftmost, _))) => room = room.min(leftmost - left - inset - 14.0 * frame.u),
            (Side::Right, Some((_, rightmost))) => {
                room = room.min(right - inset - rightmost - 14.0 * frame.u)
            }
            _ => {}
        }
        for (y, from, to) in &self.short_lines {
            if (y0 - 1.0..=y1 + 1.0).contains(y) {
                let free = match self.side {
                    Side::Left => from - left,
                    Side::Right => right - to,
                };
                room = room.min(free - inset - 3.0 * frame.u);
            }
        }
        room
    }

    fn inset(&self) -> f64 {
        self.frame.u * if self.frame.phone { 5.0 } else { 10.0 }
    }

    /// Writes the first text that fits at the first of the baselines where nothing else stands; which one it was.
    fn put(&mut self, pen: &mut Pen, baselines: &[f64], texts: &[&str], look: Type) -> Option<usize> {
        let frame = self.frame;
        let (rise, fall) = (look.size * 0.8, look.size * 0.24);
        for (place, text) in texts.iter().enumerate().filter(|(_, text)| !text.is_empty()) {
            let wide = width(text, look.face, look.size);
            for baseline in baselines {
                let (y0, y1) = (baseline - rise, baseline + fall);
                let free = self.taken.iter().all(|(from, to)| y1 <= *from || y0 >= *to);
                let struck = self.long_lines.iter().any(|y| (y0..=y1).contains(y));
                if !free || struck || y0 < frame.surface_y || y1 > frame.floor_y || wide > self.room(y0, y1) {
                    continue;
                }
                match self.side {
                    Side::Left => pen.text(frame.plot.0 + self.inset(), *baseline, text, look),
                    Side::Right => {
                        pen.text(frame.plot.1 - self.inset(), *baseline, text, look.at(Anchor::End));
                    }
                }
                self.taken.push((y0, y1));
                return Some(place);
            }
        }
        None
    }

    /// The rule in hand, on its dotted line; the depth alone where its name has no room.
    pub fn rule(&mut self, pen: &mut Pen, depth_m: f64, text: &str, words: &Words) {
        let (y, fine) = (self.frame.y(depth_m), self.frame.fine);
        let baselines = [y - 5.0 * self.frame.u, y + fine * 1.15];
        let look = pen.plain();
        // Marks and middles as they are, computed depths to 0.1 m.
        let exact = (depth_m * 100.0 - (depth_m * 100.0).round()).abs() < 1e-6;
        let rounded = if exact { depth_m } else { (depth_m * 10.0).round() / 10.0 };
        let depth = format!("{}\u{a0}m", mark(rounded, words.decimal));
        self.put(pen, &baselines, &[text, &depth], look);
    }

    /// Everything that was found.
    pub fn found(&mut self, pen: &mut Pen, layers: &Layers, words: &Words) {
        if let Some(line) = layers.line {
            if line.tellable { self.line(pen, &line, words) } else { self.anywhere(pen, &line, words) }
        }
        let (u, fine) = (self.frame.u, self.frame.fine);
        let warm = pen.strong().ink(pen.roles.warm_ink);
        if let Some(today) = layers.today {
            let y = self.frame.y(today.value_m);
            let at = format!("{} {}\u{a0}m", words.warm_layer_today, number(today.value_m, 2, words.decimal));
            self.put(pen, &[y - 5.0 * u, y + fine * 1.15], &[&at, &words.warm_layer_today], warm);
        }
        if let Some(mixed_m) = layers.mixed_m {
            let y = self.frame.y(mixed_m);
            let baselines = [y - 5.0 * u, y + fine * 1.15, y - 22.0 * u, y + fine * 2.4];
            self.put(pen, &baselines, &[&words.mixed_to], warm);
        }
        if self.frame.phone {
            self.names(pen, layers, words);
        }
    }

    fn line(&mut self, pen: &mut Pen, line: &Line, words: &Words) {
        let y = self.frame.y(line.at_m);
        let strong = pen.strong();
        let look = Type { size: if self.frame.phone { strong.size } else { self.frame.text }, ..strong };
        let names: Vec<&str> = words.thermocline.iter().map(String::as_str).collect();
        let above = y - 6.0 * self.frame.u;
        let below = y + self.frame.fine * 1.15;
        let lower = y + self.frame.fine * 2.5;
        let written = self.put(pen, &[above], &names, look).or_else(|| self.put(pen, &[below], &names, look));
        let plain = pen.plain();
        let value = words.thermocline.last().map_or("", String::as_str);
        let middle = names.len() / 2;
        match written {
            // On a phone the depth comes before its range.
            Some(place) if self.frame.phone && place == middle && names.len() > 2 => {
                self.put(pen, &[below, lower], &[value], plain);
            }
            _ => {
                self.put(pen, &[below, lower], &[&words.range, &words.range_short], plain);
            }
        }
    }

    /// No line: the words stand in the middle of the range.
    fn anywhere(&mut self, pen: &mut Pen, line: &Line, words: &Words) {
        let middle = (self.frame.y(line.low_m) + self.frame.y(line.high_m)) / 2.0;
        let look = pen.strong();
        let step = self.frame.fine * 1.3;
        let baselines = [0.0, -1.0, 1.0, -2.0, 2.0].map(|steps| middle + steps * step);
        self.put(pen, &baselines, &[&words.range, &words.range_short], look);
    }

    /// The names of the bands, which have no room in the phone's column.
    fn names(&mut self, pen: &mut Pen, layers: &Layers, words: &Words) {
        use super::layers::Kind;
        let (fine, u) = (self.frame.fine, self.frame.u);
        let strong = pen.strong();
        let joined = |lines: &[String]| lines.join(" ");
        if layers.bands.is_empty() {
            let middle = (self.frame.surface_y + self.frame.floor_y) / 2.0;
            let steps = [0.0, -2.0, 2.0, -4.0, 4.0].map(|step| middle + step * fine);
            self.put(
                pen,
                &steps,
                &[&joined(&words.column_words), words.column_words.first().map_or("", |w| w)],
                strong,
            );
            return;
        }
        for band in &layers.bands {
            let text = match (layers.water, band.kind) {
                (Water::Mixed, _) | (Water::WarmOnly, Kind::Warm) | (_, Kind::Ice) => {
                    joined(&words.column_words)
                }
                (Water::UnderIce, _) => joined(&words.column_lower),
                (Water::WarmOnly, _) => continue,
                (_, Kind::Warm) => words.epilimnion.0.clone(),
                (_, Kind::Steep) => words.metalimnion.0.clone(),
                (_, Kind::Deep) => words.hypolimnion.0.clone(),
            };
            let (top, bottom) = (self.frame.y(band.top_m), self.frame.y(band.bottom_m));
            let look = strong.ink(band.kind.ink(pen.roles));
            match band.kind {
                // Where the curve leaves the right side free, close to their boundary.
                Kind::Steep | Kind::Deep if matches!(layers.water, Water::Layers { .. }) => {
                    let baseline = if band.kind == Kind::Steep { bottom - 6.0 * u } else { top + fine * 1.7 };
                    let frame = self.frame;
                    let clear = frame.curve_between(baseline - fine, baseline + fine * 0.3).is_none_or(
                        |(_, rightmost)| {
                            rightmost + 10.0 * u + width(&text, look.face, look.size) < frame.plot.1 - 6.0 * u
                        },
                    );
                    if clear && baseline - fine > top && baseline < bottom {
                        pen.text(frame.plot.1 - 6.0 * u, baseline, &text, look.at(Anchor::End));
                    }
                }
                _ => {
                    let middle = (top + bottom) / 2.0 + fine * 0.35;
                    self.put(pen, &[middle, top + fine * 1.4, bottom - fine], &[&text], look);
                }
            }
        }
    }
}
