//! Where everything stands: columns, margins and scales of the profile picture.
//!
//! Left to right: depth numbers, cable, the student's column, the middle column, the plot, the strip.

use crate::pen::Pen;
use crate::picture::{Layout, Middle, Picture, Point, Size, Strip, Words};
use crate::ticks::{depth_step, temperature_scale};
use crate::widths::width;

/// Left and right of a column, CSS pixels.
pub(crate) type Across = (f64, f64);

/// Beyond this a depth or temperature is no reading of water and is not drawn.
const LIMIT: f64 = 1e5;

/// Widths and gaps of one layout, in u.
struct Measures {
    top: f64,
    bottom: f64,
    left: f64,
    after_cable: f64,
    yours: f64,
    after_yours: f64,
    after_rules: f64,
    strip: f64,
    before_strip: f64,
    right: f64,
}

const WIDE: Measures = Measures {
    top: 50.0,
    bottom: 20.0,
    left: 10.0,
    after_cable: 14.0,
    yours: 92.0,
    after_yours: 8.0,
    after_rules: 18.0,
    strip: 150.0,
    before_strip: 18.0,
    right: 14.0,
};
const NARROW: Measures = Measures { yours: 84.0, strip: 128.0, ..WIDE };
const LOG: Measures = Measures { bottom: 11.0, ..WIDE };
const PHONE: Measures = Measures {
    top: 42.0,
    bottom: 18.0,
    left: 4.0,
    after_cable: 8.0,
    yours: 46.0,
    after_yours: 9.0,
    after_rules: 4.0,
    strip: 84.0,
    before_strip: 8.0,
    right: 6.0,
};
/// Bottom margin with the key in a row under the bed.
const KEY_ROW_U: f64 = 34.0;

/// What ends the picture below.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Floor {
    /// The line went slack here.
    Bed,
    /// No bed known; the readings end here.
    LastReading,
    /// Readings are still to come.
    Open,
}

/// The finished layout.
#[derive(Debug)]
pub(crate) struct Frame {
    pub u: f64,
    pub fine: f64,
    pub text: f64,
    pub height: f64,
    pub phone: bool,
    pub narrow: bool,
    pub surface_y: f64,
    pub px_per_m: f64,
    pub max_depth_m: f64,
    /// Depth of the bed or of the last reading, metres.
    pub floor_m: f64,
    pub floor_y: f64,
    pub floor: Floor,
    /// Deepest mark of the cable, metres.
    pub last_m: f64,
    pub cable_x: f64,
    pub yours: Option<Across>,
    pub rules: Option<Across>,
    pub means: Option<Across>,
    pub plot: Across,
    pub strip: Option<Across>,
    pub strip_scale: f64,
    /// °C at the left and right of the plot.
    pub temp_c: (f64, f64),
    /// The drawable part of the profile line: (metres, °C).
    pub profile: Vec<(f64, f64)>,
    /// The same in CSS pixels.
    pub curve: Vec<(f64, f64)>,
    /// Size of the readings' signs.
    pub point_size: f64,
    pub crowded: bool,
}

/// Whether a reading can be drawn: finite, not above the surface, not absurd.
pub(crate) fn drawable(depth_m: f64, temp_c: f64) -> bool {
    (-1e-9..=LIMIT).contains(&depth_m) && temp_c.abs() <= LIMIT
}

/// A depth worth drawing.
pub(crate) fn depth(depth_m: f64) -> Option<f64> {
    (-1e-9..=LIMIT).contains(&depth_m).then_some(depth_m)
}

impl Frame {
    /// `None` when there is no room for a picture at all.
    pub fn new(picture: &Picture, size: Size, words: &Words, pen: &Pen, key_row: bool) -> Option<Frame> {
        let u = pen.u;
        let measures = match size.layout {
            Layout::Log => &LOG,
            Layout::Wide => &WIDE,
            Layout::Narrow => &NARROW,
            Layout::Phone => &PHONE,
        };
        let (phone, narrow) = (size.layout == Layout::Phone, size.layout == Layout::Narrow);
        let surface_y = measures.top * u;
        let bottom = u * if key_row { KEY_ROW_U } else { measures.bottom };
        let deep_px = size.height_px - surface_y - bottom;
        if !(deep_px > 20.0 * u && size.width_px > 120.0 * u) {
            return None;
        }

        let profile = rising(&picture.profile);
        let points = || picture.points.iter().filter(|point| drawable(point.depth_m, point.temp_c));
        let depths = points().map(|point| point.depth_m).chain(profile.iter().map(|(depth_m, _)| *depth_m));
        let last_reading_m = depths.fold(f64::NEG_INFINITY, f64::max);
        let vertical = Vertical::new(picture, last_reading_m, deep_px, u);
        let temp_c = temperatures(points(), &profile, &picture.guess);
        let y = |depth_m: f64| surface_y + depth_m * vertical.px_per_m;

        // Columns.
        let (plain, strong) = (pen.plain(), pen.strong());
        let fine = pen.fine();
        let step = depth_step(vertical.px_per_m / u);
        let digits = if step < 1.0 { "0.5" } else { digits(vertical.last_m) };
        let cable_x = measures.left * u + width(digits, strong.face, fine) + 16.0 * u;
        let mut x = cable_x + measures.after_cable * u;
        let mut column = |wanted: bool, wide: f64, after: f64| {
            let across = (x, x + wide);
            if wanted {
                x += wide + after;
            }
            wanted.then_some(across)
        };
        let yours = column(picture.marks.is_some(), measures.yours * u, measures.after_yours * u);
        let has_rules = matches!(picture.middle, Middle::Rules | Middle::RulesCovered);
        let rules_px = if phone {
            24.0 * u
        } else {
            let names = [&words.epilimnion, &words.metalimnion, &words.hypolimnion];
            let name = |(name, gloss): &(String, String)| {
                width(name, strong.face, fine).max(width(gloss, plain.face, fine))
            };
            let longest = names.into_iter().map(name).fold(0.0, f64::max).min(size.width_px / 4.0);
            if narrow { longest + 32.0 * u } else { (longest + 40.0 * u).max(measures.yours * u) }
        };
        let rules = column(has_rules, rules_px, measures.after_rules * u);
        let means_px = width("00.00", plain.face, fine) + 14.0 * u;
        let means = column(!phone && matches!(picture.middle, Middle::Means(_)), means_px, 0.0);
        let has_strip = !matches!(picture.strip, Strip::None);
        let strip_px = if has_strip { (measures.strip + measures.before_strip) * u } else { 0.0 };
        let right = (size.width_px - measures.right * u - strip_px).max(x + 20.0 * u);
        let strip = has_strip.then(|| {
            let left = right + measures.before_strip * u;
            (left, left + measures.strip * u)
        });
        let strip_scale = match &picture.strip {
            Strip::Covered { scale_c_per_m, .. } | Strip::Open { scale_c_per_m, .. }
                if scale_c_per_m.is_finite() && *scale_c_per_m > 1e-6 =>
            {
                *scale_c_per_m
            }
            _ => 6.0,
        };

        let crowded = crowded(&profile, vertical.px_per_m, u);
        let mut frame = Frame {
            u,
            fine,
            text: pen.roles.text_u * u,
            height: size.height_px,
            phone,
            narrow,
            surface_y,
            px_per_m: vertical.px_per_m,
            max_depth_m: vertical.max_depth_m,
            floor_m: vertical.floor_m,
            floor_y: y(vertical.floor_m),
            floor: vertical.floor,
            last_m: vertical.last_m,
            cable_x,
            yours,
            rules,
            means,
            plot: (x, right),
            strip,
            strip_scale,
            temp_c,
            profile,
            curve: Vec::new(),
            point_size: if phone { 0.76 } else { 1.0 } * if crowded { 0.65 } else { 1.0 },
            crowded,
        };
        frame.curve = frame
            .profile
            .iter()
            .map(|(depth_m, temp_c)| (frame.temp_x(*temp_c), frame.y(*depth_m)))
            .collect();
        Some(frame)
    }

    /// y of a depth, kept inside the axis.
    pub fn y(&self, depth_m: f64) -> f64 {
        self.surface_y + depth_m.clamp(0.0, self.max_depth_m) * self.px_per_m
    }

    /// x of a temperature.
    pub fn temp_x(&self, temp_c: f64) -> f64 {
        let (low, high) = self.temp_c;
        self.plot.0 + (temp_c - low) / (high - low) * (self.plot.1 - self.plot.0)
    }

    /// x of the end of a bar, kept inside the strip.
    pub fn strip_x(&self, (left, right): Across, c_per_m: f64) -> f64 {
        left + (c_per_m.max(0.0) / self.strip_scale).min(1.0) * (right - left)
    }

    /// Right end of the depth axis.
    pub fn right(&self) -> f64 {
        self.strip.map_or(self.plot.1, |strip| strip.1)
    }

    /// x of the profile line at a depth; beyond its ends, its ends.
    pub fn curve_x(&self, depth_m: f64) -> Option<f64> {
        let below = self.profile.partition_point(|(depth, _)| *depth <= depth_m);
        let (lower, upper) =
            (self.profile.get(below), below.checked_sub(1).and_then(|i| self.profile.get(i)));
        let temp_c = match (upper, lower) {
            (Some((top_m, top_c)), Some((bottom_m, bottom_c))) => {
                top_c + (bottom_c - top_c) * (depth_m - top_m) / (bottom_m - top_m)
            }
            (Some((_, temp_c)), None) | (None, Some((_, temp_c))) => *temp_c,
            (None, None) => return None,
        };
        Some(self.temp_x(temp_c))
    }

    /// Leftmost and rightmost x of the profile line between two heights, if it passes there.
    pub fn curve_between(&self, y0: f64, y1: f64) -> Option<Across> {
        let first = self.curve.partition_point(|(_, y)| *y < y0).saturating_sub(1);
        let mut found: Option<Across> = None;
        let mut see = |x: f64| {
            found = Some(found.map_or((x, x), |(low, high)| (low.min(x), high.max(x))));
        };
        for pair in self.curve.get(first..).unwrap_or(&[]).windows(2) {
            let [(x_a, y_a), (x_b, y_b)] = *pair else { continue };
            if y_a > y1 {
                break;
            }
            if y_b < y0 {
                continue;
            }
            let at = |y: f64| if y_b > y_a { x_a + (x_b - x_a) * (y - y_a) / (y_b - y_a) } else { x_a };
            see(at(y0.max(y_a)));
            see(at(y1.min(y_b)));
        }
        if let [(x, y)] = self.curve[..]
            && (y0..=y1).contains(&y)
        {
            see(x);
        }
        found
    }
}

/// The vertical scale.
struct Vertical {
    px_per_m: f64,
    max_depth_m: f64,
    floor_m: f64,
    floor: Floor,
    last_m: f64,
}

impl Vertical {
    fn new(picture: &Picture, last_reading_m: f64, deep_px: f64, u: f64) -> Vertical {
        let least_m = depth(picture.least_depth_m).unwrap_or(0.0);
        let last_m = last_reading_m.max(least_m).max(0.0);
        // An axis of no length has no scale.
        let axis_m = if last_m > 0.01 { last_m } else { 1.0 };
        // Paper below: so many metres, but not less and not more than so many px.
        let scale = |deep_m: f64, paper_m: f64, least_px: f64, most_px: f64| {
            let paper_px = (paper_m * deep_px / (deep_m + paper_m)).clamp(least_px, most_px);
            (deep_px - paper_px) / deep_m
        };
        match picture.bed_m.and_then(depth).filter(|bed_m| *bed_m > 0.01) {
            Some(bed_m) => {
                let bed_m = bed_m.max(last_reading_m);
                let px_per_m = scale(bed_m, 0.12, 0.0, 6.0 * u).min(deep_px / least_m.max(bed_m));
                let max_depth_m = deep_px / px_per_m;
                Vertical {
                    px_per_m,
                    max_depth_m,
                    floor_m: bed_m,
                    floor: Floor::Bed,
                    last_m: last_m.min(bed_m),
                }
            }
            None => {
                // Room for the words "last reading" under the line.
                let px_per_m = scale(axis_m, 0.3, 11.0 * u, 24.0 * u);
                let floor = if last_reading_m.is_finite() && last_reading_m >= least_m - 1e-9 {
                    Floor::LastReading
                } else {
                    Floor::Open
                };
                Vertical { px_per_m, max_depth_m: deep_px / px_per_m, floor_m: axis_m, floor, last_m: axis_m }
            }
        }
    }
}

fn temperatures<'a>(
    points: impl Iterator<Item = &'a Point>,
    profile: &[(f64, f64)],
    guess: &[(f64, f64)],
) -> (f64, f64) {
    let temps = points.map(|point| point.temp_c).chain(profile.iter().map(|(_, temp_c)| *temp_c));
    let guessed =
        guess.iter().filter(|(depth_m, temp_c)| drawable(*depth_m, *temp_c)).map(|(_, temp_c)| *temp_c);
    let mut temps = temps.peekable();
    if temps.peek().is_none() {
        // While it is being placed the axis stays as it is, unless a typed point lies beside it.
        let (low, high) = temperature_scale(f64::INFINITY, f64::NEG_INFINITY);
        return guessed
            .fold((low, high), |(low, high), temp_c| (low.min(temp_c.floor()), high.max(temp_c.ceil())));
    }
    let (coldest, warmest) = temps
        .chain(guessed)
        .fold((f64::INFINITY, f64::NEG_INFINITY), |(low, high), temp_c| (low.min(temp_c), high.max(temp_c)));
    temperature_scale(coldest, warmest)
}

/// The drawable part of a profile, depths strictly increasing.
fn rising(profile: &[(f64, f64)]) -> Vec<(f64, f64)> {
    let mut last_m = f64::NEG_INFINITY;
    let deeper = |(depth_m, temp_c): &&(f64, f64)| {
        let keep = drawable(*depth_m, *temp_c) && *depth_m > last_m;
        if keep {
            last_m = *depth_m;
        }
        keep
    };
    profile.iter().filter(deeper).copied().collect()
}

/// More than thirty depths less than 12 u apart: signs and line are drawn smaller.
fn crowded(profile: &[(f64, f64)], px_per_m: f64, u: f64) -> bool {
    match (profile.first(), profile.last()) {
        (Some((first_m, _)), Some((last_m, _))) if profile.len() > 30 => {
            (last_m - first_m) / (profile.len() - 1) as f64 * px_per_m < 12.0 * u
        }
        _ => false,
    }
}

fn digits(last_m: f64) -> &'static str {
    match last_m {
        m if m < 100.0 => "10",
        m if m < 1000.0 => "100",
        m if m < 10_000.0 => "1000",
        _ => "10000",
    }
}
