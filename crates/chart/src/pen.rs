//! The display list: a picture is first composed of simple shapes in whole device pixels, then played on a backend. So the
//! picture itself is compiled once, whatever the backend, and nothing in it can fail.
//!
//! Straight lines along an axis are filled rectangles: they stay crisp on every backend. Many equal strokes (dashes,
//! hatching) are one polygon whose parts are joined by edges that run out and back and so enclose nothing: on a canvas
//! each point is a call.

use std::ops::Range;

use crate::fonts::Face;
use crate::theme::{Colour, Roles};
use crate::widths;

/// A colour with its strength.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Ink {
    pub colour: Colour,
    pub alpha: f64,
}

impl From<Colour> for Ink {
    fn from(colour: Colour) -> Ink {
        Ink { colour, alpha: 1.0 }
    }
}

pub(crate) fn faint(colour: Colour, alpha: f64) -> Ink {
    Ink { colour, alpha }
}

/// Where `x` stands in a text.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Anchor {
    Start,
    Middle,
    End,
}

/// How a text looks.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Type {
    pub face: Face,
    pub size: f64,
    pub ink: Colour,
    pub anchor: Anchor,
}

impl Type {
    pub fn at(self, anchor: Anchor) -> Type {
        Type { anchor, ..self }
    }

    pub fn ink(self, ink: Colour) -> Type {
        Type { ink, ..self }
    }
}

/// One shape, in device pixels.
#[derive(Clone, Debug)]
pub(crate) enum Shape {
    Rect {
        from: (i32, i32),
        to: (i32, i32),
        ink: Ink,
    },
    Polygon {
        points: Range<usize>,
        ink: Ink,
    },
    Path {
        points: Range<usize>,
        width: u32,
        ink: Ink,
    },
    Disc {
        at: (i32, i32),
        radius: u32,
        ink: Ink,
    },
    Ring {
        at: (i32, i32),
        radius: u32,
        width: u32,
        ink: Ink,
    },
    Text {
        letters: Range<usize>,
        x: i32,
        baseline_y: f64,
        size_px: f64,
        face: Face,
        anchor: Anchor,
        ink: Colour,
    },
}

/// Records shapes. Its lengths are CSS pixels; dashes, gaps and weights are u (px at a root of 16).
#[derive(Debug)]
pub(crate) struct Pen {
    pub shapes: Vec<Shape>,
    pub points: Vec<(i32, i32)>,
    pub letters: String,
    pub roles: &'static Roles,
    /// CSS pixels of one u.
    pub u: f64,
    /// Device pixels of one CSS pixel.
    pub scale: f64,
}

const FAR_PX: f64 = 1e6;

impl Pen {
    pub fn new(roles: &'static Roles, u: f64, scale: f64) -> Pen {
        Pen {
            shapes: Vec::with_capacity(512),
            points: Vec::with_capacity(4096),
            letters: String::with_capacity(1024),
            roles,
            u,
            scale,
        }
    }

    pub(crate) fn px(&self, css: f64) -> i32 {
        (css * self.scale).round().clamp(-FAR_PX, FAR_PX) as i32
    }

    /// Device pixels of a line's weight, at least one.
    pub(crate) fn weight(&self, width_u: f64) -> i32 {
        self.px(width_u * self.u).max(1)
    }

    pub fn rect(&mut self, x: f64, y: f64, width: f64, height: f64, ink: impl Into<Ink>) {
        let (from, to) = ((self.px(x), self.px(y)), (self.px(x + width), self.px(y + height)));
        if to.0 > from.0 && to.1 > from.1 {
            self.shapes.push(Shape::Rect { from, to, ink: ink.into() });
        }
    }

    /// A level line whose middle is `y`.
    pub fn level(&mut self, x0: f64, x1: f64, y: f64, ink: impl Into<Ink>, width_u: f64) {
        let (top, bottom) = self.thick(y, width_u);
        let (left, right) = (self.px(x0), self.px(x1));
        if right > left {
            self.shapes.push(Shape::Rect { from: (left, top), to: (right, bottom), ink: ink.into() });
        }
    }

    /// An upright line whose middle is `x`.
    pub fn upright(&mut self, x: f64, y0: f64, y1: f64, ink: impl Into<Ink>, width_u: f64) {
        let (left, right) = self.thick(x, width_u);
        let (top, bottom) = (self.px(y0), self.px(y1));
        if bottom > top {
            self.shapes.push(Shape::Rect { from: (left, top), to: (right, bottom), ink: ink.into() });
        }
    }

    pub(crate) fn thick(&self, middle: f64, width_u: f64) -> (i32, i32) {
        let weight = self.weight(width_u);
        let start = (middle * self.scale - f64::from(weight) / 2.0).round().clamp(-FAR_PX, FAR_PX) as i32;
        (start, start + weight)
    }

    /// The four sides of a rectangle, their middles on its edges.
    pub fn frame(&mut self, x: f64, y: f64, width: f64, height: f64, ink: impl Into<Ink>, width_u: f64) {
        let ink = ink.into();
        let half = width_u * self.u / 2.0;
        for level in [y, y + height] {
            self.level(x - half, x + width + half, level, ink, width_u);
        }
        for upright in [x, x + width] {
            self.upright(upright, y + half, y + height - half, ink, width_u);
        }
    }

    pub fn polygon(&mut self, corners: &[(f64, f64)], ink: impl Into<Ink>) {
        let start = self.points.len();
        self.extend(corners.iter().copied());
        self.shapes.push(Shape::Polygon { points: start..self.points.len(), ink: ink.into() });
    }

    /// A bent line, open.
    pub fn path(&mut self, bends: impl IntoIterator<Item = (f64, f64)>, ink: impl Into<Ink>, width_u: f64) {
        let start = self.points.len();
        self.extend(bends);
        if self.points.len() > start + 1 {
            let width = self.weight(width_u).unsigned_abs();
            self.shapes.push(Shape::Path { points: start..self.points.len(), width, ink: ink.into() });
        } else {
            self.points.truncate(start);
        }
    }

    fn extend(&mut self, points: impl IntoIterator<Item = (f64, f64)>) {
        for (x, y) in points {
            let point = (self.px(x), self.px(y));
            self.points.push(point);
        }
    }

    /// The outline of a closed figure: begun in the middle of a side, so that every corner is joined alike.
    pub fn outline(&mut self, corners: &[(f64, f64)], ink: impl Into<Ink>, width_u: f64) {
        let (Some(&first), Some(&last)) = (corners.first(), corners.last()) else { return };
        let middle = ((first.0 + last.0) / 2.0, (first.1 + last.1) / 2.0);
        let bends = std::iter::once(middle).chain(corners.iter().copied()).chain(std::iter::once(middle));
        self.path(bends, ink, width_u);
    }

    pub fn disc(&mut self, x: f64, y: f64, radius: f64, ink: impl Into<Ink>) {
        let (at, radius) = ((self.px(x), self.px(y)), self.px(radius).max(1).unsigned_abs());
        self.shapes.push(Shape::Disc { at, radius, ink: ink.into() });
    }

    pub fn ring(&mut self, x: f64, y: f64, radius: f64, ink: impl Into<Ink>, width_u: f64) {
        let (at, radius) = ((self.px(x), self.px(y)), self.px(radius).max(1).unsigned_abs());
        self.shapes.push(Shape::Ring {
            at,
            radius,
            width: self.weight(width_u).unsigned_abs(),
            ink: ink.into(),
        });
    }

    pub fn text(&mut self, x: f64, baseline_y: f64, text: &str, look: Type) {
        if text.is_empty() || !(x.is_finite() && baseline_y.is_finite()) {
            return;
        }
        let start = self.letters.len();
        self.letters.push_str(text);
        self.shapes.push(Shape::Text {
            letters: start..self.letters.len(),
            x: self.px(x),
            baseline_y: baseline_y * self.scale,
            size_px: look.size * self.scale,
            face: look.face,
            anchor: look.anchor,
            ink: look.ink,
        });
    }

    /// Left and right of the texts so far that a level line at `y` would strike through, with some air, from left to right.
    pub fn texts_across(&self, y: f64) -> Vec<(f64, f64)> {
        let air = 4.0 * self.u;
        let across = |shape: &Shape| {
            let Shape::Text { letters, x, baseline_y, size_px, face, anchor, .. } = shape else {
                return None;
            };
            let (baseline, size) = (baseline_y / self.scale, size_px / self.scale);
            if y < baseline - size * 0.85 || y > baseline + size * 0.3 {
                return None;
            }
            let wide = widths::width(self.letters.get(letters.clone())?, *face, size);
            let x = f64::from(*x) / self.scale;
            let left = match anchor {
                Anchor::Start => x,
                Anchor::Middle => x - wide / 2.0,
                Anchor::End => x - wide,
            };
            Some((left - air, left + wide + air))
        };
        let mut found: Vec<(f64, f64)> = self.shapes.iter().filter_map(across).collect();
        found.sort_by(|a, b| a.0.total_cmp(&b.0));
        found
    }

    /// A text on a small ground of paper, so that it reads over a band.
    pub fn tag(&mut self, x: f64, baseline_y: f64, text: &str, look: Type) {
        let (width, pad) = (widths::width(text, look.face, look.size), 4.0 * self.u);
        let left = match look.anchor {
            Anchor::Start => x,
            Anchor::Middle => x - width / 2.0,
            Anchor::End => x - width,
        };
        let ground = faint(self.roles.sheet, 0.86);
        self.rect(left - pad, baseline_y - look.size * 0.86, width + 2.0 * pad, look.size * 1.16, ground);
        self.text(x, baseline_y, text, look);
    }

    /// Smallest text.
    pub fn fine(&self) -> f64 {
        self.roles.fine_u * self.u
    }

    /// Plain small words in ink.
    pub fn plain(&self) -> Type {
        Type { face: self.roles.regular, size: self.fine(), ink: self.roles.ink, anchor: Anchor::Start }
    }

    /// Strong small words in ink.
    pub fn strong(&self) -> Type {
        Type { face: self.roles.strong, ..self.plain() }
    }

    /// The student's voice, `times` the smallest size.
    pub fn voice(&self, times: f64) -> Type {
        Type {
            face: Face::SerifItalic,
            size: self.fine() * times,
            ink: self.roles.you,
            anchor: Anchor::Middle,
        }
    }
}

/// A rectangle in CSS pixels.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Area {
    pub x: f64,
    pub y: f64,
    pub width: f64,
    pub height: f64,
}
