//! The column of means of the questions, each at its depth.

use super::frame::{Frame, depth};
use crate::pen::{Anchor, Pen};
use crate::picture::{Middle, Picture};

pub(super) fn draw(pen: &mut Pen, frame: &Frame, picture: &Picture) {
    let (Some((_, right)), Middle::Means(means)) = (frame.means, &picture.middle) else { return };
    let (plain, strong) = (pen.plain().at(Anchor::End).ink(pen.roles.ink_2), pen.strong().at(Anchor::End));
    let in_step = |depth_m: f64| {
        let same = |end_m: f64| (depth_m - end_m).abs() < 1e-6;
        picture.step.as_ref().is_some_and(|step| same(step.top_m) || same(step.bottom_m))
    };
    // Close depths: the two in hand, and of the others those with room.
    let least = frame.fine * 1.1;
    let held: Vec<f64> =
        means.iter().map(|(depth_m, _)| *depth_m).filter(|m| in_step(*m)).map(|m| frame.y(m)).collect();
    let mut last_y = f64::NEG_INFINITY;
    for (depth_m, text) in means {
        let Some(depth_m) = depth(*depth_m).filter(|depth_m| *depth_m <= frame.max_depth_m) else { continue };
        let (y, bold) = (frame.y(depth_m), in_step(depth_m));
        let near_held = || held.iter().take(2).any(|other| (other - y).abs() < least);
        if !bold && (y - last_y < least || near_held()) {
            continue;
        }
        last_y = y;
        // The number at the surface stands just under the line.
        let under = if y - frame.surface_y < frame.fine * 0.4 { frame.fine * 0.42 } else { 0.0 };
        let baseline = y + frame.fine * 0.35 + under;
        pen.text(right - 12.0 * frame.u, baseline, text, if bold { strong } else { plain });
    }
}
