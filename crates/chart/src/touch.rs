//! The profile as a print to touch: thick lines, large figures and braille numbers on one A4 page, for paper that swells or a
//! raised-line printer. Lengths are millimetres on paper.
//!
//! Line weights, the room between things that fingers must part, and the size of a braille cell follow common practice for
//! raised prints (from memory, no source at hand): dots 1.5 across, 2.5 apart in a cell, cells 6.2 apart; lines at least 1
//! thick and 3 apart.

use std::fmt::Write;

use crate::profile::frame::drawable;
use crate::ticks::{multiples, temperature_scale};

/// The page.
const PAGE_MM: (f64, f64) = (210.0, 297.0);
/// Left, top, right, bottom of the plot: room at the top and the left for two lines of numbers.
const PLOT_MM: (f64, f64, f64, f64) = (52.0, 62.0, 196.0, 280.0);
const DOT_MM: f64 = 1.5;
const DOTS_APART_MM: f64 = 2.5;
const CELL_MM: f64 = 6.2;

/// Draws the page as an SVG document of 210 by 297 mm. `profile`: (depth in metres, °C), depths strictly increasing; `head`:
/// the words at the top, in ink only; `depth`, `temperature`: the names of the two axes.
///
/// A value that is not finite or not in water is left out.
pub fn touch(profile: &[(f64, f64)], head: &str, depth: &str, temperature: &str) -> String {
    let points: Vec<(f64, f64)> = profile.iter().copied().filter(|(z, t)| drawable(*z, *t)).collect();
    let deepest = points.iter().map(|p| p.0).fold(0.0, f64::max).max(0.5);
    let (coldest, warmest) = points
        .iter()
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), p| (low.min(p.1), high.max(p.1)));
    let (low, high) = temperature_scale(coldest, warmest);
    let (left, top, right, bottom) = PLOT_MM;
    let x = |temp_c: f64| left + (temp_c - low) / (high - low) * (right - left);
    let y = |depth_m: f64| top + depth_m / deepest * (bottom - top);
    let mut page = Page(String::with_capacity(8192));
    page.ink_text(14.0, 18.0, 6.0, head);
    page.ink_text(14.0, 34.0, 6.0, temperature);
    page.ink_text(14.0, top - 16.0, 6.0, depth);
    // The two axes.
    page.line((left, top), (right, top), 1.4);
    page.line((left, top), (left, bottom), 1.4);
    for temp_c in multiples(low.ceil(), high, step((high - low) / 5.0)) {
        page.line((x(temp_c), top - 5.0), (x(temp_c), top), 1.2);
        page.number((x(temp_c), top - 16.0), temp_c);
    }
    for depth_m in multiples(0.0, deepest, step(deepest / 10.0)) {
        page.line((left - 5.0, y(depth_m)), (left, y(depth_m)), 1.2);
        page.number((left - 22.0, y(depth_m) - 2.5), depth_m);
    }
    page.path(points.iter().map(|(z, t)| (x(*t), y(*z))), 2.6);
    page.done()
}

/// A whole step that is at least so long: 1, 2, 5, 10, 20 …
fn step(least: f64) -> f64 {
    let mut power = 1.0;
    while power < 1e9 {
        if let Some(step) = [1.0, 2.0, 5.0].iter().map(|s| s * power).find(|step| *step >= least - 1e-9) {
            return step;
        }
        power *= 10.0;
    }
    power
}

/// Dots 1 to 6 of a cell, as bits 0 to 5: the sign that a number follows, then 1 to 9 and 0 as the letters a to j, and the
/// minus (common practice, no source at hand).
fn cell(sign: char) -> u8 {
    match sign {
        '#' => 0b11_1100,
        '1' => 0b00_0001,
        '2' => 0b00_0011,
        '3' => 0b00_1001,
        '4' => 0b01_1001,
        '5' => 0b01_0001,
        '6' => 0b00_1011,
        '7' => 0b01_1011,
        '8' => 0b01_0011,
        '9' => 0b00_1010,
        '0' => 0b01_1010,
        '-' => 0b10_0100,
        _ => 0,
    }
}

struct Page(String);

impl Page {
    fn add(&mut self, text: std::fmt::Arguments) {
        // Writing into a string cannot fail.
        let _ = self.0.write_fmt(text);
    }

    fn line(&mut self, (x0, y0): (f64, f64), (x1, y1): (f64, f64), wide: f64) {
        self.add(format_args!("<path d=\"M{x0:.2} {y0:.2}L{x1:.2} {y1:.2}\" stroke-width=\"{wide}\"/>\n"));
    }

    fn path(&mut self, points: impl Iterator<Item = (f64, f64)>, wide: f64) {
        let mut way = String::new();
        for (n, (x, y)) in points.enumerate() {
            let _ = write!(way, "{}{x:.2} {y:.2}", if n == 0 { 'M' } else { 'L' });
        }
        if !way.is_empty() {
            self.add(format_args!(
                "<path d=\"{way}\" stroke-width=\"{wide}\" stroke-linejoin=\"round\" stroke-linecap=\"round\"/>\n"
            ));
        }
    }

    /// A number in ink with its braille under it, both round `x`.
    fn number(&mut self, (x, y): (f64, f64), value: f64) {
        let digits = format!("{value:.0}");
        self.add(format_args!(
            "<text x=\"{x:.2}\" y=\"{:.2}\" font-size=\"6\" text-anchor=\"middle\">{}</text>\n",
            y - 2.0,
            digits.replace('-', "−")
        ));
        let (minus, figures) = match digits.strip_prefix('-') {
            Some(figures) => ("-", figures),
            None => ("", digits.as_str()),
        };
        let signs: Vec<char> = minus.chars().chain(['#']).chain(figures.chars()).collect();
        let left = x - (signs.len() as f64 - 1.0) * CELL_MM / 2.0 - DOTS_APART_MM / 2.0;
        for (n, sign) in signs.iter().enumerate() {
            let dots = cell(*sign);
            for dot in (0..6_u8).filter(|dot| dots >> dot & 1 == 1) {
                let (column, row) = (f64::from(dot / 3), f64::from(dot % 3));
                self.add(format_args!(
                    "<circle cx=\"{:.2}\" cy=\"{:.2}\" r=\"{}\"/>\n",
                    left + n as f64 * CELL_MM + column * DOTS_APART_MM,
                    y + 1.0 + row * DOTS_APART_MM,
                    DOT_MM / 2.0
                ));
            }
        }
    }

    fn ink_text(&mut self, x: f64, y: f64, size: f64, text: &str) {
        let mut safe = String::new();
        crate::svg::escape(&mut safe, text);
        self.add(format_args!("<text x=\"{x:.2}\" y=\"{y:.2}\" font-size=\"{size}\">{safe}</text>\n"));
    }

    fn done(self) -> String {
        let (wide, high) = PAGE_MM;
        format!(
            "<svg xmlns=\"http://www.w3.org/2000/svg\" width=\"{wide}mm\" height=\"{high}mm\" \
             viewBox=\"0 0 {wide} {high}\">\n<rect width=\"{wide}\" height=\"{high}\" fill=\"#fff\"/>\n\
             <g font-family=\"sans-serif\" font-weight=\"700\">\n<g fill=\"none\" stroke=\"#000\">\n{}</g>\n{}</g>\n</svg>\n",
            self.0
                .lines()
                .filter(|line| line.starts_with("<path"))
                .fold(String::new(), |all, line| all + line + "\n"),
            self.0
                .lines()
                .filter(|line| !line.starts_with("<path"))
                .fold(String::new(), |all, line| all + line + "\n"),
        )
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// As the standard names the dots of the figures: digits, then the dots of their cells (from memory; the letters a to j).
    #[test]
    fn figures_have_the_dots_of_a_to_j() {
        let dots = |sign: char| -> String {
            (0..6).filter(|dot| cell(sign) >> dot & 1 == 1).map(|dot| (b'1' + dot) as char).collect()
        };
        let figures = "1234567890".chars().map(dots).collect::<Vec<_>>();
        assert_eq!(figures, ["1", "12", "14", "145", "15", "124", "1245", "125", "24", "245"]);
        assert_eq!(dots('#'), "3456");
        assert_eq!(dots('-'), "36");
    }

    #[test]
    fn everything_stands_on_the_page_and_what_fingers_part_stands_apart() {
        for deepest in [1.0, 9.5, 30.0, 240.0] {
            let profile = [(0.0, 22.0), (deepest / 2.0, 15.0), (deepest, 6.0)];
            let page = touch(&profile, "Quillet Pond", "Depth, m", "Temperature, °C");
            let side = |line: &str, name: &str| -> f64 {
                let (_, rest) = line.split_once(&format!(" {name}=\"")).unwrap();
                rest.split_once('"').unwrap().0.parse().unwrap()
            };
            for circle in page.lines().filter(|line| line.starts_with("<circle")) {
                let (x, y) = (side(circle, "cx"), side(circle, "cy"));
                assert!(x > 5.0 && x < 205.0 && y > 5.0 && y < 292.0, "{x} {y}");
            }
            // A number of the depth axis is 13 high, its braille with it.
            let depths: Vec<f64> = (page.lines())
                .filter(|line| line.contains(" x=\"30.00\""))
                .map(|line| side(line, "y"))
                .collect();
            assert!(depths.len() >= 2 && depths.windows(2).all(|w| w[1] - w[0] >= 16.0), "{depths:?}");
            assert!(page.contains("stroke-width=\"2.6\""));
        }
    }

    #[test]
    fn markup_in_the_words_stays_text_and_wild_readings_are_left_out() {
        let page = touch(&[(f64::NAN, 1.0), (0.0, f64::INFINITY)], "<b>&", "d", "t");
        assert!(page.contains("&lt;b&gt;&amp;") && !page.contains("NaN") && !page.contains("inf"));
    }
}
