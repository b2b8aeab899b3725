//! What a picture is asked to show: plain data, decided elsewhere. The chart draws what it is given and hides nothing by
//! itself; what may not be seen is not given to it.

use layercast_core::{Leg, Metalimnion, MixedLayer, State, Thermocline, WarmLayerToday};

/// One reading as a point of the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Point {
    /// Depth, metres.
    pub depth_m: f64,
    /// Temperature, °C.
    pub temp_c: f64,
    /// Way of the probe: ▽ going down, △ coming up, ○ unknown.
    pub leg: Leg,
}

/// One bar of the strip.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Bar {
    /// Upper depth, metres.
    pub top_m: f64,
    /// Lower depth, metres.
    pub bottom_m: f64,
    /// °C per metre in the strip's own direction (lost, or gained under ice).
    pub c_per_m: f64,
    /// How it is drawn.
    pub look: BarLook,
}

/// How a bar of the strip is drawn.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum BarLook {
    /// Plain.
    Plain,
    /// Solid ink: the steepest.
    Steepest,
    /// Outlined and hatched: in the steep layer.
    Steep,
    /// Hatched in the warm layer's ink: today's warm layer.
    WarmToday,
}

/// The student's three marks.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Marks {
    /// Bottom of the mixed layer.
    pub mixed: Mark,
    /// Thermocline.
    pub thermocline: Mark,
    /// Top of the deep layer.
    pub deep: Mark,
}

/// One mark of the student. The grip itself is an element of the page; the picture draws its lines and soft edges.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub enum Mark {
    /// Not placed yet: a hollow grip stacked at the foot of the column.
    #[default]
    Unset,
    /// "Not in my water".
    Refused,
    /// Placed.
    At {
        /// Depth, metres.
        depth_m: f64,
        /// Give or take, metres, if given.
        give_m: Option<f64>,
    },
}

/// What stands in the column between "yours" and the plot.
#[derive(Clone, Debug, PartialEq)]
pub enum Middle {
    /// Nothing (Log).
    None,
    /// The rules' column, covered.
    RulesCovered,
    /// The rules' column as found.
    Rules,
    /// A column of means (Questions): (depth in metres, the text to print).
    Means(Vec<(f64, String)>),
}

/// What was found, when it may be shown.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Found {
    /// State of the water.
    pub state: State,
    /// Thermocline.
    pub thermocline: Option<Thermocline>,
    /// Steep layer.
    pub metalimnion: Option<Metalimnion>,
    /// Mixed layer by the class rule.
    pub mixed_layer: Option<MixedLayer>,
    /// Today's warm layer.
    pub warm_layer_today: Option<WarmLayerToday>,
    /// Under ice: the fastest warming.
    pub fastest_warming: Option<Thermocline>,
    /// Mixed by density although a step reaches 1 °C per metre.
    pub mixed_by_density: bool,
}

/// The strip of °C per metre.
#[derive(Clone, Debug, PartialEq)]
pub enum Strip {
    /// Not drawn (Log).
    None,
    /// Covered: the axis stays. `scale_c_per_m`: its upper end, chosen so that it does not tell the answer.
    Covered {
        /// Upper end of the axis, °C per metre.
        scale_c_per_m: f64,
        /// Bars that are open already (kinds 4 and 5).
        open: Vec<Bar>,
    },
    /// Open.
    Open {
        /// Upper end of the axis, °C per metre.
        scale_c_per_m: f64,
        /// The bars, one per interval.
        bars: Vec<Bar>,
    },
}

/// A step that is being asked or explained.
#[derive(Clone, Debug, PartialEq)]
pub struct StepInHand {
    /// Upper depth, metres.
    pub top_m: f64,
    /// Lower depth, metres.
    pub bottom_m: f64,
    /// With the triangle on the curve and its two legs in words; otherwise only the light band, as far as the cover.
    pub explained: Option<StepWords>,
}

/// The two legs of the triangle.
#[derive(Clone, Debug, PartialEq)]
pub struct StepWords {
    /// "2.5 °C".
    pub drop: String,
    /// "0.5 m".
    pub thickness: String,
    /// Mean temperature at the top, °C.
    pub top_c: f64,
    /// Mean temperature at the bottom, °C.
    pub bottom_c: f64,
}

/// A doubt at a depth.
#[derive(Clone, Debug, PartialEq)]
pub struct DoubtAt {
    /// Depth, metres.
    pub depth_m: f64,
    /// "one reading left out"; empty when there are no words.
    pub words: String,
}

/// A tick of another rule at the right of the plot.
#[derive(Clone, Debug, PartialEq)]
pub struct RuleTick {
    /// Depth, metres.
    pub depth_m: f64,
    /// The rule in hand draws a dotted line with these words.
    pub in_hand: Option<String>,
}

/// Everything one profile picture shows.
#[derive(Clone, Debug, PartialEq)]
pub struct Picture {
    /// Used readings.
    pub points: Vec<Point>,
    /// The profile line: (depth in metres, mean °C), depths strictly increasing.
    pub profile: Vec<(f64, f64)>,
    /// The same cast read otherwise: (depth in metres, °C), depths strictly increasing; empty while nobody asks for it.
    pub otherwise: Vec<(f64, f64)>,
    /// What was guessed before the first reading: (depth in metres, °C), downward; empty where it is not shown.
    pub guess: Vec<(f64, f64)>,
    /// The readings make the axes and are not drawn, nor is what is made of them: some are placed by hand first.
    pub axes_only: bool,
    /// Depth at which the line went slack, metres.
    pub bed_m: Option<f64>,
    /// Depth the axis must at least reach, metres (an empty table still shows its marks; Log shares rows and axis).
    pub least_depth_m: f64,
    /// The student's marks; `None` where there is no such column (Log).
    pub marks: Option<Marks>,
    /// After the check the violet lines shrink to 46 either side of the curve.
    pub marks_short: bool,
    /// From–to of question kind 8 in violet, instead of the marks' lines: (from, to) in metres.
    pub from_to_m: Option<(f64, f64)>,
    /// Column between "yours" and the plot.
    pub middle: Middle,
    /// What the rules found; `None` while covered.
    pub found: Option<Found>,
    /// The strip.
    pub strip: Strip,
    /// Whether the strip counts gains (under ice) instead of losses; `None` keeps its head neutral.
    pub strip_gains: Option<bool>,
    /// A step asked or explained.
    pub step: Option<StepInHand>,
    /// Stretches lit with a letter each, from A: (top, bottom) in metres.
    pub lit_m: Vec<(f64, f64)>,
    /// Doubts.
    pub doubts: Vec<DoubtAt>,
    /// Other rules.
    pub rules: Vec<RuleTick>,
    /// The reading under the cursor: index into `points`.
    pub cursor: Option<usize>,
    /// Depths of a mixed-water inversion or "no layers yet": heavier water lies on top at these depths, metres.
    pub heavier_above_m: Option<(f64, f64)>,
    /// Draw the student's grips too (a saved picture); in the page they are elements laid over the picture.
    pub grips: bool,
}

/// Which set of margins and columns.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Layout {
    /// Log: margins 50 and 11, a half metre is a 24 px row; no columns, no strip.
    Log,
    /// Profile and Questions at full width.
    Wide,
    /// Under 760 u: narrower columns.
    Narrow,
    /// Phone: 46, 24, 84.
    Phone,
}

/// Size of the picture.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Size {
    /// Width in CSS pixels.
    pub width_px: f64,
    /// Height in CSS pixels.
    pub height_px: f64,
    /// Root font size in CSS pixels: one "u" is `root_px / 16`.
    pub root_px: f64,
    /// Backing pixels per CSS pixel (at least 2 on a canvas).
    pub scale: f64,
    /// Columns and margins.
    pub layout: Layout,
}

/// What the picture is drawn on: backends place and size text differently.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Surface {
    /// A canvas of the page.
    Canvas,
    /// An SVG document.
    Svg,
}

/// Every word and number format of a picture, given by the caller in the reader's language.
#[derive(Clone, Debug, PartialEq)]
pub struct Words {
    /// Decimal sign of the reader's region.
    pub decimal: char,
    /// "Depth, m".
    pub depth: String,
    /// "Temperature, °C".
    pub temperature: String,
    /// "°C lost per metre".
    pub lost: String,
    /// "°C gained per metre".
    pub gained: String,
    /// "°C per metre" (neutral).
    pub per_metre: String,
    /// "°C per m" (phone).
    pub per_metre_short: String,
    /// "yours".
    pub yours: String,
    /// "by the rules".
    pub by_the_rules: String,
    /// "rules" (phone).
    pub rules: String,
    /// "Mean".
    pub mean: String,
    /// "mixed", "steep", "deep" in the student's column.
    pub mixed: String,
    /// See `mixed`.
    pub steep: String,
    /// See `mixed`.
    pub deep: String,
    /// "Epilimnion" and its gloss "warm, mixed".
    pub epilimnion: (String, String),
    /// "Metalimnion", "steep".
    pub metalimnion: (String, String),
    /// "Hypolimnion", "cold, deep".
    pub hypolimnion: (String, String),
    /// "going down".
    pub going_down: String,
    /// "coming up".
    pub coming_up: String,
    /// "mean of the two".
    pub mean_of_two: String,
    /// "reading" (leg unknown).
    pub reading: String,
    /// "read otherwise".
    pub otherwise: String,
    /// "covered until you check" or "covered until you have it", as lines.
    pub covered: Vec<String>,
    /// "thermocline { }" with the depth put in already, longest form first: "thermocline 3.75 m", "thermocline", "3.75 m".
    pub thermocline: Vec<String>,
    /// "could be 3.5 to 4.0 m", or "anywhere from 1.5 to 8.0 m".
    pub range: String,
    /// "mixed to 2.7 m".
    pub mixed_to: String,
    /// "Mixed all the way down", "Weakly layered", "Can't tell", "No layers yet", "Cold, under the ice" … the words of
    /// the column for a picture without three layers, and a second line where there is one.
    pub column_words: Vec<String>,
    /// Lower words of the column under ice ("Near 4 °C, densest") or near-surface only ("Even water").
    pub column_lower: Vec<String>,
    /// "today's warm layer".
    pub warm_layer_today: String,
    /// "steep, and goes on".
    pub goes_on: String,
    /// "last reading".
    pub last_reading: String,
    /// "Your readings will appear here, each at its own depth.", as lines.
    pub empty: Vec<String>,
    /// "colder than below" words at an inversion.
    pub colder_than_below: String,
    /// "no layers" in the student's column when all three marks are refused.
    pub no_layers: String,
    /// "3.5 to 4.0 m": `range` without its first words, where those do not fit beside the curve.
    pub range_short: String,
    /// "Today's", "warm layer" as lines in the rules' column, when it is the second of two results.
    pub column_warm_today: Vec<String>,
    /// "dashed line:", "1 °C per metre" as lines in the strip of mixed water.
    pub one_per_metre: Vec<String>,
}

/// Where things stand in the finished picture, in CSS pixels from its top left corner.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Placement {
    /// y of depth 0.
    pub surface_y_px: f64,
    /// Pixels per metre of depth.
    pub px_per_m: f64,
    /// Deepest depth of the axis, metres.
    pub max_depth_m: f64,
    /// x of the student's column, left and right; equal when there is none.
    pub yours_x_px: (f64, f64),
    /// x of the plot, left and right.
    pub plot_x_px: (f64, f64),
    /// x of the strip, left and right; equal when there is none.
    pub strip_x_px: (f64, f64),
    /// x of the middle column, left and right; equal when there is none.
    pub middle_x_px: (f64, f64),
    /// Temperatures at the left and right of the plot, °C.
    pub temp_c: (f64, f64),
    /// Pixel of each point, as given; NaN for one that cannot be drawn.
    pub points_px: Vec<(f64, f64)>,
    /// y of the middle of each grip (mixed, thermocline, deep): at its depth, or parted from a neighbour closer than
    /// 28 u, or stacked at the foot of the column while unset; `None` when refused or when there is no such column.
    pub grips_y_px: [Option<f64>; 3],
    /// y of the middles of the grips from and to.
    pub from_to_y_px: Option<(f64, f64)>,
}
