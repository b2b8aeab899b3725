//! The class picture: every group on one depth axis, as cores (where its layers are, how sure) or as curves (what was read).
//!
//! Nothing is compared here: which range the groups share, what the middle of the class is, comes from the lesson.

mod cores;
mod curves;

use crate::pen::Pen;
use crate::picture::{Found, Size};
use crate::profile::frame::depth;
use crate::profile::sane;
use crate::theme::Theme;

/// Most cores beside one another; more stand in further rows, never thinner.
pub const CORES_IN_A_ROW: usize = 12;

/// One group as a core.
#[derive(Clone, Debug, PartialEq)]
pub struct Core {
    /// The letter over it, or what stands for a hidden name.
    pub name: String,
    /// What was found; `None` draws the empty core, as deep as it was measured.
    pub found: Option<Found>,
    /// Deepest reading, metres.
    pub last_m: f64,
    /// Depth at which the line went slack, metres.
    pub bed_m: Option<f64>,
    /// "3.75": what stands in the box on the thermocline. Empty: no box.
    pub number: String,
    /// What is said of a core without one, as lines: "no", "thermocline", "here".
    pub words: Vec<String>,
    /// The same in one short word, for cores with less room: "none".
    pub short: String,
    /// The group's own mark of the thermocline, metres.
    pub marked_m: Option<f64>,
}

/// One group as a curve.
#[derive(Clone, Debug, PartialEq)]
pub struct Curve {
    /// The letter at its foot.
    pub name: String,
    /// (depth in metres, °C), depths strictly increasing.
    pub points: Vec<(f64, f64)>,
    /// How it is drawn.
    pub look: CurveLook,
}

/// How a curve is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum CurveLook {
    /// One of all.
    Plain,
    /// The one that is looked at.
    InHand,
    /// The rest beside it.
    Faint,
    /// What was guessed before anything was read.
    Guess,
    /// The middle of the class; named like the others.
    Middle,
}

/// The class at one depth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ClassLevel {
    /// Depth, metres.
    pub depth_m: f64,
    /// Coldest group, °C.
    pub low_c: f64,
    /// Middle of the class, °C.
    pub middle_c: f64,
    /// Warmest group, °C.
    pub high_c: f64,
}

/// Everything one class picture shows.
#[derive(Clone, Debug, PartialEq)]
pub enum ClassPicture {
    /// Cores on one axis.
    Cores {
        /// Groups, in order.
        cores: Vec<Core>,
        /// The depths that all ranges share, metres; equal where they only touch.
        shared_m: Option<(f64, f64)>,
    },
    /// Curves on common axes.
    Curves {
        /// Groups, in order.
        curves: Vec<Curve>,
        /// Middle and range of the class; empty where the curves are shown.
        levels: Vec<ClassLevel>,
    },
}

/// Its words.
#[derive(Clone, Debug, PartialEq)]
pub struct ClassWords {
    /// Decimal sign of the reader's region.
    pub decimal: char,
    /// "Depth,", "m" as lines.
    pub depth: Vec<String>,
    /// "Temperature, °C".
    pub temperature: String,
    /// "middle": the name of the middle of the class at its foot.
    pub middle: String,
}

/// Where things stand in the finished class picture, CSS pixels.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct ClassPlacement {
    /// Left, top, width, height of each core with its letter, in the order given.
    pub cores_px: Vec<(f64, f64, f64, f64)>,
}

/// Composes the picture; a size without room gives blank paper.
pub(crate) fn compose(
    picture: &ClassPicture,
    theme: Theme,
    size: Size,
    words: &ClassWords,
) -> (Pen, ClassPlacement) {
    let size = sane(size);
    let roles = theme.roles();
    let mut pen = Pen::new(roles, size.root_px / 16.0, size.scale);
    pen.rect(0.0, 0.0, size.width_px, size.height_px, roles.sheet);
    let wall = theme == Theme::Projector;
    let placement = match picture {
        ClassPicture::Cores { cores, shared_m } => cores::draw(&mut pen, size, cores, *shared_m, words, wall),
        ClassPicture::Curves { curves, levels } => {
            curves::draw(&mut pen, size, curves, levels, words);
            ClassPlacement::default()
        }
    };
    (pen, placement)
}

/// The depth axis of a row: its surface, its scale, how deep it goes.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Axis {
    surface_y: f64,
    px_per_m: f64,
    last_m: f64,
    /// x of the cable.
    cable_x: f64,
    /// Left and right of what is drawn.
    across: (f64, f64),
}

impl Axis {
    fn y(&self, depth_m: f64) -> f64 {
        self.surface_y + depth_m.clamp(0.0, self.last_m) * self.px_per_m
    }
}

/// The deepest of some depths, metres; 1 where there is none.
fn deepest(depths: impl Iterator<Item = f64>) -> f64 {
    let most = depths.filter_map(depth).fold(0.0, f64::max);
    if most > 0.01 { most } else { 1.0 }
}
