//! What a comparison says.

use super::chance::ChanceLevel;
use super::heat::Heat;

/// A cause why b may read otherwise than a.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Cause {
    /// One probe reads more than the other everywhere. Value: b less a, °C.
    Offset,
    /// The zero of the marks: b's probe hung deeper than its marks say, as seen from a. Value: metres, alike at each mark.
    Zero,
    /// The cable is longer than its marks say, or hung at a slant (then it reached less deep than they say). Value: b's true
    /// depth over a's, less 1.
    Stretch,
    /// The top was warmed (or cooled) between the casts. Value: b less a at the surface, °C; fading by e every `fade_m`.
    WarmTop,
    /// The layer rocked, or lies otherwise at the other place. Value: how much deeper it lay for b, metres, where it
    /// moved most; nothing at the surface and the bed.
    MovedWater,
}

impl Cause {
    /// Every cause, in the order of a comparison's explanations.
    pub const ALL: [Self; 5] = [Self::Offset, Self::Zero, Self::Stretch, Self::WarmTop, Self::MovedWater];

    /// Usual size (standard deviation) of the difference between two casts, in the unit of the value: 0.3 °C, 0.2 m,
    /// 0.05, 1 °C, 0.5 m. Conventions of ours; probes after [`UsgsField`](crate::bibliography::UsgsField), the others
    /// without a source.
    ///
    /// * `checked`: both casts have a record of it. What is left then is small: 0.1 °C, 0.05 m, 0.01.
    pub fn usual(self, checked: bool) -> f64 {
        match (self, checked) {
            (Self::Offset, false) => 0.3,
            (Self::Offset, true) => 0.1,
            (Self::Zero, false) => 0.2,
            (Self::Zero, true) | (Self::Stretch, false) => 0.05,
            (Self::Stretch, true) => 0.01,
            (Self::WarmTop, _) => 1.0,
            (Self::MovedWater, _) => 0.5,
        }
    }
}

/// Why a cause was not tried.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum NotTried {
    /// The water is too even (less than 1 °C from its warmest to its coldest): reading it deeper changes nothing.
    EvenWater,
    /// Nothing was read within 1.5 m of the surface by both.
    TopNotRead,
    /// No layer in which the water could rock: density hardly grows downward.
    NoLayer,
}

/// One cause, fitted or not.
#[derive(Clone, Debug, PartialEq)]
pub struct Explanation {
    /// The cause.
    pub cause: Cause,
    /// Its fit, or why there is none.
    pub fit: Result<Fit, NotTried>,
}

/// A cause fitted to the differences.
#[derive(Clone, Debug, PartialEq)]
pub struct Fit {
    /// Fitted size; unit and sign by the cause.
    pub value: f64,
    /// Its standard uncertainty, larger where the fit is bad; same unit.
    pub u: f64,
    /// A warmed top fades by e over this many metres.
    pub fade_m: Option<f64>,
    /// A cable shorter than its marks for one of the two: the slant that alone would do that, degrees from the vertical.
    pub slant_deg: Option<f64>,
    /// The value stands at the end of what was tried.
    pub at_limit: bool,
    /// What the cause makes of b − a at each shared depth, °C.
    pub predicted_c: Vec<f64>,
    /// What it leaves, °C: difference less prediction.
    pub left_c: Vec<f64>,
    /// Root mean square of what it leaves, °C.
    pub rms_left_c: f64,
    /// Share of the difference it explains, 0 to 1: of the sum of squares, each depth weighed by how well it is known.
    pub explains: f64,
    /// What is left is still more than chance leaves in 19 of 20 pairs without a cause; `None` without a threshold.
    pub leaves_more_than_chance: Option<bool>,
    /// Smaller is better; a difference of [`MARGIN`](super::MARGIN) is odds of ten to one.
    pub score: f64,
    /// Heat behind a warmed top, against the clock; `None` without one, or for another cause.
    pub heat: Option<Heat>,
}

/// A depth both casts tell of.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Shared {
    /// Depth, metres (records taken off).
    pub depth_m: f64,
    /// Cast a there, °C, between its depths where it was not read.
    pub a_c: f64,
    /// Cast b there, °C.
    pub b_c: f64,
    /// b − a, °C.
    pub difference_c: f64,
    /// Standard deviation of that by chance alone: readings, marks, reading between depths, °C.
    pub sd_c: f64,
}

/// What the readings say by themselves.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Nothing but chance is needed.
    Chance,
    /// More than chance; this cause fits best. See what cannot be told from it.
    Cause(Cause),
    /// More than chance, and no cause by itself says why: what fits best explains less than [`LEAST_EXPLAINED`] and
    /// leaves more than chance. Two other waters, or several causes at once.
    NoneAlone,
}

/// A cause is named only when it explains this share of the difference, or leaves no more than chance (a convention of
/// ours).
pub const LEAST_EXPLAINED: f64 = 0.5;

/// What records took off before anything was fitted.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Recorded {
    /// Difference of the probes in melting ice, b − a, °C; `None` where neither was checked.
    pub offset_c: Option<f64>,
    /// Difference of known zeros, b − a, metres; `None` where neither was checked.
    pub deeper_m: Option<f64>,
    /// Ratio of known cable factors, b over a, less 1; `None` where neither was checked.
    pub stretch: Option<f64>,
    /// Root mean square difference before, °C; `None` where too little was shared.
    pub rms_before_c: Option<f64>,
    /// And after, °C.
    pub rms_after_c: f64,
}

/// Why two casts differ.
#[derive(Clone, Debug, PartialEq)]
pub struct Comparison {
    /// Depths both tell of, increasing.
    pub shared: Vec<Shared>,
    /// A long profile was averaged down first.
    pub thinned: bool,
    /// Root mean square of b − a, °C.
    pub rms_c: f64,
    /// Mean of b − a, °C.
    pub mean_c: f64,
    /// What records took off; `None` where there are none.
    pub recorded: Option<Recorded>,
    /// Score of nothing but chance, beside those of the fits.
    pub chance_score: f64,
    /// The causes, in the order of [`Cause::ALL`].
    pub explanations: Vec<Explanation>,
    /// The best-scoring cause. It is named by the verdict only where chance does not do.
    pub best: Option<Cause>,
    /// Causes that cannot be told from the best one by these readings.
    pub cannot_be_told_from: Vec<Cause>,
    /// What chance does; `None` while fewer than [`FEWEST_TRIALS`](super::FEWEST_TRIALS) pairs were drawn.
    pub chance: Option<ChanceLevel>,
    /// The verdict; `None` while there is no threshold.
    pub verdict: Option<Verdict>,
    /// Energy check of the whole difference over the shared depths; `None` without minutes between.
    pub heat: Option<Heat>,
}

impl Comparison {
    /// The fit of a cause, if it was tried.
    pub fn fit(&self, cause: Cause) -> Option<&Fit> {
        self.explanations.iter().find(|tried| tried.cause == cause)?.fit.as_ref().ok()
    }
}

impl Recorded {
    /// The same with a and b changed.
    pub(super) fn turned(self) -> Self {
        Self {
            offset_c: self.offset_c.map(|c| -c),
            deeper_m: self.deeper_m.map(|m| -m),
            stretch: self.stretch.map(|s| 1.0 / (1.0 + s) - 1.0),
            ..self
        }
    }
}
