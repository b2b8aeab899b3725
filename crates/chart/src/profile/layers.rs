//! What was found, as bands and one line: which tint, pattern and words stand where. Nothing is decided here about the
//! water; a result that is not given is not drawn.

use layercast_core::{MixedLayer, State, WarmLayerToday};

use super::frame::{Across, Floor, Frame, depth};
use crate::pen::{Area, Pen, faint};
use crate::picture::Found;
use crate::theme::{Colour, Roles};

/// Kinds of band; each has its tint and its pattern.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Kind {
    Warm,
    Steep,
    Deep,
    /// The cold water over the boundary under ice: the deep layer's tint, weaker, no pattern.
    Ice,
}

impl Kind {
    pub fn tint(self, roles: &Roles) -> Colour {
        match self {
            Kind::Warm => roles.warm,
            Kind::Steep => roles.steep,
            Kind::Deep | Kind::Ice => roles.deep,
        }
    }

    pub fn ink(self, roles: &Roles) -> Colour {
        match self {
            Kind::Warm => roles.warm_ink,
            Kind::Steep => roles.steep_ink,
            Kind::Deep | Kind::Ice => roles.deep_ink,
        }
    }

    pub fn strength(self) -> f64 {
        if self == Kind::Ice { 0.45 } else { 1.0 }
    }

    /// `hatch_u`: how far the strokes of the steep layer stand apart.
    pub fn pattern(self, pen: &mut Pen, area: Area, hatch_u: f64) {
        let (ink, width) = (self.ink(pen.roles), pen.roles.pattern_u);
        match self {
            Kind::Warm => pen.waves(area, ink, width),
            Kind::Steep => pen.hatch(area, ink, hatch_u, width),
            Kind::Deep => pen.still(area, ink, width),
            Kind::Ice => {}
        }
    }
}

/// One band of the water.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Band {
    pub kind: Kind,
    pub top_m: f64,
    pub bottom_m: f64,
}

/// A boundary with its range.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Edge {
    pub at_m: f64,
    pub low_m: f64,
    pub high_m: f64,
    pub above: Kind,
    pub below: Kind,
}

/// The line of the picture: thermocline, fastest warming, or the warm layer that is all there is.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) struct Line {
    pub at_m: f64,
    pub low_m: f64,
    pub high_m: f64,
    /// False: only the range is drawn.
    pub tellable: bool,
}

/// Which of the pictures this is.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub(crate) enum Water {
    /// Three layers, or two where the cast is cut off.
    Layers { cut_off: bool },
    /// One band.
    Mixed,
    /// Colder on top.
    UnderIce,
    /// Only today's warm layer.
    WarmOnly,
    /// No bands, only words.
    Words,
}

/// What was found, ready to draw.
#[derive(Debug)]
pub(crate) struct Layers {
    pub water: Water,
    pub bands: Vec<Band>,
    pub edges: Vec<Edge>,
    pub line: Option<Line>,
    /// Today's warm layer as the second of two results.
    pub today: Option<WarmLayerToday>,
    /// Depth of the mixed layer's long dashes.
    pub mixed_m: Option<f64>,
}

impl Layers {
    pub fn new(found: &Found, floor_m: f64) -> Layers {
        let today = found.warm_layer_today.filter(is_sound);
        let only_today = today.filter(|today| today.only);
        let water = water(found, only_today.is_some());
        let line = line(found, water, only_today);
        let mut layers = Layers {
            water,
            bands: Vec::new(),
            edges: Vec::new(),
            line,
            today: today.filter(|today| !today.only),
            mixed_m: match found.mixed_layer {
                Some(MixedLayer::At { value_m, .. }) if water != Water::WarmOnly => depth(value_m),
                _ => None,
            },
        };
        layers.fill(found, only_today, floor_m);
        layers
    }

    fn fill(&mut self, found: &Found, only_today: Option<WarmLayerToday>, floor_m: f64) {
        let mut band = |kind, top_m: f64, bottom_m: f64| {
            if bottom_m > top_m {
                self.bands.push(Band { kind, top_m, bottom_m });
            }
        };
        match self.water {
            Water::Mixed => band(Kind::Warm, 0.0, floor_m),
            Water::UnderIce => {
                if let Some(line) = self.line {
                    band(Kind::Ice, 0.0, line.at_m);
                    band(Kind::Deep, line.at_m, floor_m);
                }
            }
            Water::WarmOnly => {
                if let Some(today) = only_today {
                    band(Kind::Warm, 0.0, today.top_m);
                    band(Kind::Steep, today.top_m, today.bottom_m);
                }
            }
            Water::Layers { cut_off } => {
                let Some(steep) = found.metalimnion else { return };
                let bottom_m = if cut_off { floor_m } else { steep.bottom_m };
                band(Kind::Warm, 0.0, steep.top_m);
                band(Kind::Steep, steep.top_m, bottom_m);
                if !cut_off {
                    band(Kind::Deep, bottom_m, floor_m);
                }
                let mut edge = |at_m: f64, low_m: f64, high_m: f64, above, below| {
                    if let (Some(low_m), Some(high_m)) = (depth(low_m), depth(high_m)) {
                        let (low_m, high_m) = (low_m.min(at_m), high_m.max(at_m));
                        self.edges.push(Edge { at_m, low_m, high_m, above, below });
                    }
                };
                edge(steep.top_m, steep.top_low_m, steep.top_high_m, Kind::Warm, Kind::Steep);
                if let (false, Some(high_m)) = (cut_off, steep.bottom_high_m) {
                    edge(steep.bottom_m, steep.bottom_low_m, high_m, Kind::Steep, Kind::Deep);
                }
            }
            Water::Words => {}
        }
    }

    /// Tints behind a column, cross-fading over the range of each boundary.
    pub fn tint(&self, pen: &mut Pen, frame: &Frame, (left, right): Across) {
        const SLICES: i32 = 8;
        for band in &self.bands {
            let ink = faint(band.kind.tint(pen.roles), band.kind.strength());
            let (top, bottom) = (frame.y(band.top_m), frame.y(band.bottom_m));
            pen.rect(left, top, right - left, bottom - top, ink);
        }
        for edge in &self.edges {
            let (low, at, high) = (frame.y(edge.low_m), frame.y(edge.at_m), frame.y(edge.high_m));
            let (above, below) = (edge.above.tint(pen.roles), edge.below.tint(pen.roles));
            for slice in 0..SLICES {
                let (near, far) =
                    (f64::from(slice) / f64::from(SLICES), f64::from(slice + 1) / f64::from(SLICES));
                let part = (near + far) / 2.0;
                let up = (at - low) / f64::from(SLICES);
                pen.rect(left, low + (at - low) * near, right - left, up, faint(below, part * 0.5));
                let down = (high - at) / f64::from(SLICES);
                pen.rect(left, at + (high - at) * near, right - left, down, faint(above, (1.0 - part) * 0.5));
            }
        }
    }

    /// Whether the steep band runs to the last reading and on.
    pub fn goes_on(&self) -> bool {
        matches!(self.water, Water::Layers { cut_off: true })
    }
}

fn is_sound(today: &WarmLayerToday) -> bool {
    [today.value_m, today.span_top_m, today.span_bottom_m, today.top_m, today.bottom_m]
        .into_iter()
        .all(|value_m| depth(value_m).is_some())
}

fn water(found: &Found, only_today: bool) -> Water {
    if found.mixed_by_density || found.state == State::Mixed {
        return Water::Mixed;
    }
    match found.state {
        State::Inverse if found.fastest_warming.is_some() => Water::UnderIce,
        State::Stratified if only_today => Water::WarmOnly,
        State::Stratified => match found.metalimnion {
            Some(steep)
                if depth(steep.top_m).is_some()
                    && depth(steep.bottom_m).is_some()
                    && found.thermocline.is_none_or(|line| line.tellable) =>
            {
                Water::Layers { cut_off: steep.cut_off }
            }
            _ => Water::Words,
        },
        _ => Water::Words,
    }
}

fn line(found: &Found, water: Water, only_today: Option<WarmLayerToday>) -> Option<Line> {
    let line = match (water, only_today) {
        (Water::Mixed, _) => return None,
        (Water::WarmOnly, Some(today)) => {
            Line { at_m: today.value_m, low_m: today.span_top_m, high_m: today.span_bottom_m, tellable: true }
        }
        _ => {
            let fast = if water == Water::UnderIce { found.fastest_warming } else { found.thermocline }?;
            Line {
                at_m: fast.value_m,
                low_m: fast.span_top_m,
                high_m: fast.span_bottom_m,
                tellable: fast.tellable,
            }
        }
    };
    let sound = [line.at_m, line.low_m, line.high_m].into_iter().all(|value_m| depth(value_m).is_some());
    sound.then_some(line)
}

/// The lower bracket of a cut-off steep layer starts here.
pub(crate) fn open_end_y(frame: &Frame) -> f64 {
    match frame.floor {
        Floor::Bed => frame.y(frame.last_m),
        _ => frame.floor_y,
    }
}
