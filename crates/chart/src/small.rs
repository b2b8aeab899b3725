//! A small profile to choose: one curve, the water it was made from faint behind it, the same axes for all that stand side
//! by side.

use crate::numbers::number;
use crate::pen::{Anchor, Pen};
use crate::picture::Size;
use crate::profile::frame::drawable;
use crate::profile::sane;
use crate::theme::Theme;
use crate::ticks::{depth_step, multiples, temperature_step};
use crate::widths::width;

/// What a small picture shows.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct SmallPicture {
    /// The curve: depth in metres, °C, downward.
    pub curve: Vec<(f64, f64)>,
    /// The curve behind it.
    pub own: Vec<(f64, f64)>,
    /// Deepest depth of the axis, metres.
    pub depth_m: f64,
    /// Left and right end of the axis of temperature, °C.
    pub temp_c: (f64, f64),
}

/// Composes it: total on data, blank paper where there is no room.
pub(crate) fn compose(picture: &SmallPicture, theme: Theme, size: Size) -> Pen {
    let size = sane(size);
    let roles = theme.roles();
    let mut pen = Pen::new(roles, size.root_px / 16.0, size.scale);
    pen.rect(0.0, 0.0, size.width_px, size.height_px, roles.sheet);
    let u = pen.u;
    let (low, high) = picture.temp_c;
    let number_px = width("00", pen.plain().face, pen.fine());
    let (left, right) = (number_px + 8.0 * u, size.width_px - number_px / 2.0 - 2.0 * u);
    let (top, bottom) = (pen.fine() * 1.2 + 7.0 * u, size.height_px - 4.0 * u);
    let sound = high - low > 1e-6 && high - low < 1e6 && picture.depth_m > 1e-3 && picture.depth_m < 1e6;
    if !(sound && right - left > 30.0 * u && bottom - top > 30.0 * u) {
        return pen;
    }
    let x = |temp_c: f64| left + (temp_c - low) / (high - low) * (right - left);
    let px_per_m = (bottom - top) / picture.depth_m;
    let y = |depth_m: f64| top + depth_m.min(picture.depth_m) * px_per_m;
    axes(&mut pen, picture, (left, right), (top, bottom), &x, &y);
    for (points, ink, weight) in
        [(&picture.own, roles.bar, roles.rule_u), (&picture.curve, roles.ink, roles.profile_u)]
    {
        let inside = points.iter().filter(|(z, t)| drawable(*z, *t));
        pen.path(inside.map(|(z, t)| (x(t.clamp(low, high)), y(*z))), ink, weight);
    }
    pen
}

fn axes(
    pen: &mut Pen,
    picture: &SmallPicture,
    across: (f64, f64),
    down: (f64, f64),
    x: &impl Fn(f64) -> f64,
    y: &impl Fn(f64) -> f64,
) {
    let (u, roles) = (pen.u, pen.roles);
    let (low, high) = picture.temp_c;
    let middle = pen.plain().at(Anchor::Middle);
    for temp_c in multiples(low, high, temperature_step((across.1 - across.0) / (high - low) / u, false)) {
        pen.upright(x(temp_c), down.0, down.1, roles.line, roles.hair_u);
        pen.upright(x(temp_c), down.0 - 4.0 * u, down.0, roles.ink, roles.hair_u);
        pen.text(x(temp_c), down.0 - 7.0 * u, &number(temp_c, 0, '.'), middle);
    }
    let step = depth_step((down.1 - down.0) / picture.depth_m / u).max(1.0);
    let end = pen.plain().at(Anchor::End);
    for depth_m in multiples(0.0, picture.depth_m, step) {
        if depth_m > 0.0 {
            pen.level(across.0, across.1, y(depth_m), roles.line, roles.hair_u);
        }
        let baseline = (y(depth_m) + pen.fine() * 0.35).min(down.1);
        pen.text(across.0 - 5.0 * u, baseline, &number(depth_m, 0, '.'), end);
    }
    pen.level(across.0, across.1, down.0, roles.ink, roles.rule_u);
    pen.upright(across.0, down.0, down.1, roles.ink, roles.rule_u);
}
