//! Patterns of the layers, soft edges, brackets and the signs of the readings.

use crate::pen::{Area, Ink, Pen, faint};
use crate::theme::Colour;

impl Pen {
    /// 45° strokes, rising to the right, `gap` u apart, clipped to the rectangle. Their places are those of the whole
    /// picture, so that neighbouring areas join.
    pub fn hatch(&mut self, area: Area, ink: Colour, gap_u: f64, width_u: f64) {
        let (left, top) = (self.px(area.x), self.px(area.y));
        let (right, bottom) = (self.px(area.x + area.width), self.px(area.y + area.height));
        let gap = (gap_u * self.u * self.scale).max(2.0);
        // Measured along the level, a stroke at 45° is √2 times its weight.
        let weight = (width_u * self.u * self.scale * std::f64::consts::SQRT_2).round().max(1.0) as i32;
        if right <= left || bottom <= top {
            return;
        }
        let mut teeth = Vec::new();
        let first = (f64::from(left + top) / gap).ceil() as i32;
        let last = (f64::from(right + bottom) / gap).floor() as i32;
        for place in first..=last {
            let sum = (f64::from(place) * gap).round() as i32; // x + y along the stroke's left edge
            let foot = |sum: i32| {
                if sum - bottom >= left {
                    ((sum - bottom).min(right), bottom)
                } else {
                    (left, (sum - left).min(bottom))
                }
            };
            let head = |sum: i32| {
                if sum - top <= right {
                    ((sum - top).max(left), top)
                } else {
                    (right, (sum - right).max(top))
                }
            };
            teeth.push([foot(sum), head(sum), head(sum + weight), foot(sum + weight)]);
        }
        self.comb(&teeth, Some((left, bottom)), Ink::from(ink));
    }

    /// Small waves: 11 long, rows 13 apart, every other row shifted.
    pub fn waves(&mut self, area: Area, ink: Colour, width_u: f64) {
        let (gap, high, long) = (13.0 * self.u, 2.0 * self.u, 11.0 * self.u);
        let (right, bottom) = (area.x + area.width, area.y + area.height);
        let mut row = 0;
        loop {
            let y = area.y + gap * (0.7 + f64::from(row));
            if y >= bottom - high * 1.6 || row > 10_000 {
                return;
            }
            let mut x = area.x + long * if row % 2 == 1 { 0.95 } else { 0.2 };
            while x + long <= right + 0.5 {
                let bends = [(0.0, 0.0), (0.25, -high), (0.5, 0.0), (0.75, high), (1.0, 0.0)];
                self.path(bends.map(|(part, rise)| (x + long * part, y + rise)), ink, width_u);
                x += long * 1.75;
            }
            row += 1;
        }
    }

    /// Still dashes: 12 on, 6 off, rows 10 apart, every other row shifted.
    pub fn still(&mut self, area: Area, ink: Colour, width_u: f64) {
        let (gap, on, off) = (10.0 * self.u, 12.0 * self.u, 6.0 * self.u);
        let (left, right) = (area.x + self.u, area.x + area.width - self.u);
        let mut teeth = Vec::new();
        let mut row = 0;
        loop {
            let y = area.y + gap * (0.75 + f64::from(row));
            if y >= area.y + area.height - 1.0 || row > 10_000 {
                break;
            }
            let mut x = area.x + if row % 2 == 1 { -on * 0.5 } else { off * 0.5 };
            let (top, bottom) = self.thick(y, width_u);
            while x < right {
                let (from, to) = (x.max(left), (x + on).min(right));
                if to - from > 2.0 * self.u {
                    let (from, to) = (self.px(from), self.px(to));
                    teeth.push([(from, bottom), (from, top), (to, top), (to, bottom)]);
                }
                x += on + off;
            }
            row += 1;
        }
        self.rows(&teeth, self.px(left), Ink::from(ink));
    }

    /// Slices whose strength falls away from `y` to the two ends of its range.
    pub fn soft_edge(
        &mut self,
        x: f64,
        width: f64,
        y: f64,
        range_y: (f64, f64),
        colour: Colour,
        strongest: f64,
    ) {
        const SLICES: i32 = 9;
        for slice in 0..SLICES {
            let (near, far) =
                (f64::from(slice) / f64::from(SLICES), f64::from(slice + 1) / f64::from(SLICES));
            let ink = faint(colour, strongest * (1.0 - (near + far) / 2.0));
            for end in [range_y.0, range_y.1] {
                let (a, b) = (y + (end - y) * near, y + (end - y) * far);
                self.rect(x, a.min(b), width, (b - a).abs(), ink);
            }
        }
    }

    /// A bracket with caps.
    pub fn bracket(&mut self, x: f64, y0: f64, y1: f64, half_u: f64) {
        let (ink, width, half) = (self.roles.ink, self.roles.rule_u, half_u * self.u);
        self.upright(x, y0, y1, ink, width);
        for y in [y0, y1] {
            self.level(x - half, x + half, y, ink, width);
        }
    }

    /// ▽ filled, its tip on the reading: going down.
    pub fn going_down(&mut self, x: f64, y: f64, size: f64) {
        let half = size * self.roles.point_half_u * self.u;
        self.polygon(&[(x, y), (x - half, y - half * 1.6), (x + half, y - half * 1.6)], self.roles.down);
    }

    /// △ hollow, its tip on the reading: coming up.
    pub fn coming_up(&mut self, x: f64, y: f64, size: f64) {
        let half = size * self.roles.point_half_u * self.u;
        let corners = [(x, y + self.u * 0.6), (x - half, y + half * 1.6), (x + half, y + half * 1.6)];
        self.polygon(&corners, self.roles.sheet);
        // Begun in the middle of the base.
        let turned = [corners[2], corners[0], corners[1]];
        self.outline(&turned, self.roles.up, self.roles.point_u);
    }

    /// ○ hollow on the reading: which way is not known.
    pub fn either_way(&mut self, x: f64, y: f64, size: f64) {
        let radius = 4.0 * self.u * size;
        self.disc(x, y, radius, self.roles.sheet);
        self.ring(x, y, radius, self.roles.ink, self.roles.point_u * 1.1);
    }
}
