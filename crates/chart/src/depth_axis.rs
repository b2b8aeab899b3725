//! The depth axis of every picture: the cable as it was taped, and its numbers.

use crate::numbers::number;
use crate::pen::{Anchor, Pen};
use crate::ticks::{depth_step, multiples};

impl Pen {
    /// The cable from a little above the surface down to `last_m`: one short band a half metre, two a whole metre, three
    /// every five metres.
    pub fn cable(&mut self, x: f64, surface_y: f64, px_per_m: f64, last_m: f64) {
        let u = self.u;
        let y = |depth_m: f64| surface_y + depth_m * px_per_m;
        self.upright(x, surface_y - 10.0 * u, y(last_m), self.roles.ink, self.roles.rule_u);
        let u_per_m = px_per_m / u;
        // Bands closer than 4 u would run into one another: whole metres, then fives, then only the cable.
        let step = match u_per_m {
            _ if u_per_m >= 22.0 => 0.5,
            _ if u_per_m >= 8.0 => 1.0,
            _ if u_per_m >= 2.0 => 5.0,
            _ => return,
        };
        for depth_m in multiples(step, last_m, step) {
            let whole = (depth_m - depth_m.round()).abs() < 1e-9;
            let five = whole && (depth_m.round() % 5.0).abs() < 1e-9;
            let (half, offsets): (f64, &[f64]) = match (whole, five) {
                (_, true) => (7.0, &[-1.9, 0.0, 1.9]),
                (true, _) => (6.0, &[-1.0, 1.0]),
                _ => (3.5, &[0.0]),
            };
            let ink = if whole { self.roles.ink } else { self.roles.ink_2 };
            for offset in offsets {
                let middle = y(depth_m) + offset * 2.6 * 0.95 * u;
                self.level(x - half * u, x + half * u, middle, ink, 2.6 * 0.8);
            }
        }
    }

    /// The numbers beside it, ending at `right`; `scale`: y of the surface, pixels per metre.
    pub fn depth_numbers(&mut self, right: f64, scale: (f64, f64), last_m: f64, decimal: char) {
        let (surface_y, px_per_m) = scale;
        let step = depth_step(px_per_m / self.u);
        let (plain, strong) = (self.plain().at(Anchor::End), self.strong().at(Anchor::End));
        for depth_m in multiples(0.0, last_m, step) {
            let whole = (depth_m - depth_m.round()).abs() < 1e-9;
            let five = whole && (depth_m.round() % if step > 5.0 { 5.0 * step } else { 5.0 }).abs() < 1e-9;
            let text = number(depth_m, if whole { 0 } else { 1 }, decimal);
            let look = if five { strong } else { plain };
            self.text(right, surface_y + depth_m * px_per_m + self.fine() * 0.35, &text, look);
        }
    }
}
