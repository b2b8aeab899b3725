//! The flap over what may not be seen yet: one corner is turned.

use super::frame::{Across, Frame};
use crate::pen::{Anchor, Pen};
use crate::widths::width;

/// Covers a column from one height to another. `first`: this piece begins at the surface and has the turned corner.
pub(super) fn flap(pen: &mut Pen, frame: &Frame, (left, right): Across, y0: f64, y1: f64, first: bool) {
    let u = frame.u;
    let (cover, line, paper) = (pen.roles.cover, pen.roles.cover_line, pen.roles.sheet);
    if y1 - y0 < u {
        return;
    }
    let corner = (16.0 * u).min((right - left) * 0.3).min(y1 - y0);
    if first {
        let sides = [(left, y0), (right - corner, y0), (right, y0 + corner), (right, y1), (left, y1)];
        pen.polygon(&sides, cover);
        pen.outline(&sides, line, 1.0);
        let turned = [(right - corner, y0), (right, y0 + corner), (right - corner, y0 + corner)];
        pen.polygon(&turned, paper);
        pen.outline(&turned, line, 1.0);
    } else {
        pen.rect(left, y0, right - left, y1 - y0, cover);
        pen.frame(left, y0, right - left, y1 - y0, line, 1.0);
    }
}

/// Its words, in the middle between two heights; nothing where they do not fit.
pub(super) fn words(pen: &mut Pen, frame: &Frame, (left, right): Across, y0: f64, y1: f64, lines: &[String]) {
    let look = pen.plain().at(Anchor::Middle).ink(pen.roles.ink_2);
    let lines = fitting(lines, right - left - 8.0 * frame.u, look.face, look.size);
    let step = frame.fine * 1.3;
    if lines.len() as f64 * step > y1 - y0
        || lines.iter().any(|line| width(line, look.face, look.size) > right - left)
    {
        return;
    }
    let first = (y0 + y1) / 2.0 - (lines.len() as f64 - 1.0) * step / 2.0;
    for (place, line) in lines.iter().enumerate() {
        pen.text((left + right) / 2.0, first + place as f64 * step, line, look);
    }
}

/// The lines as given, or broken anew where one is too long.
pub(super) fn fitting(lines: &[String], most: f64, face: crate::fonts::Face, size: f64) -> Vec<String> {
    if lines.iter().all(|line| width(line, face, size) <= most) {
        return lines.to_vec();
    }
    let mut broken: Vec<String> = Vec::new();
    // An ordinary space is a place to break; a no-break space is not.
    for word in lines.iter().flat_map(|line| line.split(' ')).filter(|word| !word.is_empty()) {
        match broken.last_mut() {
            Some(line)
                if width(line, face, size) + width(" ", face, size) + width(word, face, size) <= most =>
            {
                line.push(' ');
                line.push_str(word);
            }
            _ => broken.push(word.to_string()),
        }
    }
    broken
}

#[cfg(test)]
mod tests {
    use super::*;
    use crate::fonts::Face;

    #[test]
    fn lines_are_kept_or_broken_at_spaces() {
        let lines = |texts: &[&str]| texts.iter().map(|text| text.to_string()).collect::<Vec<_>>();
        let given = lines(&["covered", "until you", "check"]);
        assert_eq!(fitting(&given, 100.0, Face::Sans400, 13.0), given);
        let one = lines(&["covered until you check"]);
        assert_eq!(fitting(&one, 90.0, Face::Sans400, 13.0), lines(&["covered until", "you check"]));
        assert_eq!(fitting(&lines(&["4\u{a0}m"]), 1.0, Face::Sans400, 13.0), lines(&["4\u{a0}m"]));
        assert!(fitting(&[], 10.0, Face::Sans400, 13.0).is_empty());
    }
}
