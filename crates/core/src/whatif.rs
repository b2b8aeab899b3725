//! The same cast read otherwise: other marks, one leg, a shorter wait, coarser digits, worse marks.
//!
//! Nothing is invented finer than the cast allows: between two depths that were read the water is a straight line, so more
//! marks show no step that is not there, only their own noise. How many readings are taken over and how many are drawn is
//! told ([`Whatif::kept`], [`Whatif::drawn`]). All of this is a convention of ours.

mod changes;
mod read;
mod thin;

pub use changes::{Change, width_m};
pub use thin::thinned;

use crate::analyse::analyse;
use crate::analysis::{Analysis, Method};
use crate::cast::lag::share_left;
use crate::cast::{Cast, lag_share};
use crate::certainty::{Certainty, Plan, Unsure, certainty};

/// Trials behind the ranges of one change: fewer than for the cast itself, so that they move under the finger.
pub const TRIALS: u32 = 2_000;
/// Marks closer together than this are not asked for, metres.
pub const FINEST_STEP_M: f64 = 0.05;
/// Most that may be left over of a step of temperature when a reading is taken, as a share of it.
pub const MOST_LEFT_OVER: f64 = lag_share::MOST;

/// What is done otherwise; `None` leaves it as it was. Any combination.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Otherwise {
    /// A reading every so many metres from the surface, from the first depth read to the last.
    pub step_m: Option<f64>,
    /// Legs that are read.
    pub legs: Option<Legs>,
    /// How long the probe hangs at each mark.
    pub wait: Option<Wait>,
    /// Last decimal place written, °C. A finer one than the cast has changes nothing.
    pub digit_c: Option<f64>,
    /// Standard deviation of the marks, metres.
    pub mark_sd_m: Option<f64>,
}

/// Which legs are read.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Legs {
    /// Only on the way down.
    Down,
    /// Only on the way up.
    Up,
    /// Both. A cast that has one gets the other from its profile, with noise.
    Both,
}

/// The probe's time constant and the time it hangs at each mark (methods 2.5, 2.6).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Wait {
    /// Time in which the probe covers 63 % of a step, seconds.
    pub tau_s: f64,
    /// Time at each mark, seconds.
    pub wait_s: f64,
}

impl Wait {
    /// Share of a step of temperature left over when the reading is taken: r = e^(−wait/τ), at most 0.95. 0 when τ is not
    /// above 0, the most when there is no wait.
    ///
    /// ```
    /// let wait = layercast_core::whatif::Wait { tau_s: 20.0, wait_s: 30.0 };
    /// assert!((wait.left_over() - 0.2231).abs() < 1e-4);
    /// ```
    pub fn left_over(&self) -> f64 {
        if !(self.tau_s > 0.0 && self.tau_s.is_finite()) {
            return 0.0;
        }
        share_left(self.wait_s / self.tau_s).min(MOST_LEFT_OVER)
    }
}

/// What would have come out.
#[derive(Clone, Debug, PartialEq)]
pub struct Whatif {
    /// The readings as they would have been written down.
    pub cast: Cast,
    /// Their analysis, with propagated ranges.
    pub analysis: Analysis,
    /// For ranges, by the same trials as every cast's.
    pub plan: Plan,
    /// Readings that start from one the cast has at that depth and leg.
    pub kept: usize,
    /// Readings drawn from the line between two depths, or for a leg that was not read, with the noise of a reading.
    pub drawn: usize,
}

impl Whatif {
    /// Ranges of what would have come out; [`TRIALS`] are enough. In chunks: [`trials`](crate::certainty::trials()) and
    /// [`summary`](crate::certainty::summary()) with [`Whatif::plan`].
    pub fn certainty(&self, seed: u64, count: u32) -> Certainty {
        certainty(&self.plan, seed, count)
    }
}

/// Reads a cast again otherwise.
///
/// The water is the profile of the cast: the means of the readings in use, straight lines between. A new mark at a depth
/// that was read starts from its readings; any other reading is drawn: the water there plus normal noise with the s of
/// the cast. Then, in the order of the work: a mark that is worse than a usual one (0.03 m) hangs a little higher or
/// lower than it says; a short wait leaves over a share of the step from the mark before, on top of whatever lag the
/// readings have; the reading is rounded.
///
/// The noise at a depth is the same for every step and wait, so that what moves is the change and not the chance.
/// Values that make no sense count as `None`; a step is at least 0.05 m and one that gives over 10,000 marks is as coarse
/// as it must be. A cast with fewer than two depths in use comes back as it is.
///
/// ```
/// use layercast_core::whatif::{Otherwise, whatif};
/// use layercast_core::{Cast, Leg, Method, Reading, Switch};
/// let temps_c = [22.0, 22.0, 21.9, 21.5, 19.0, 14.5, 11.0, 9.5, 9.0];
/// let readings = temps_c.iter().enumerate().map(|(i, t)| Reading {
///     depth_m: 0.5 * i as f64, temp_c: Some(*t), leg: Leg::Unknown, switch: Switch::Auto,
/// });
/// let cast = Cast { readings: readings.collect(), digit_c: 0.1, bed_m: None };
/// let every_2_m = Otherwise { step_m: Some(2.0), ..Otherwise::default() };
/// let got = whatif(&cast, &Method::default(), &every_2_m, 1);
/// let read: Vec<_> = got.cast.readings.iter().map(|r| (r.depth_m, r.temp_c)).collect();
/// assert_eq!(read, [(0.0, Some(22.0)), (2.0, Some(19.0)), (4.0, Some(9.0))]);
/// assert_eq!((got.kept, got.drawn), (3, 0));
/// ```
pub fn whatif(cast: &Cast, method: &Method, otherwise: &Otherwise, seed: u64) -> Whatif {
    let own = analyse(cast, method);
    let read = read::read(cast, &own, &sensible(otherwise, cast), seed);
    let mut unsure = Unsure::default();
    if let Some(mark_sd_m) = otherwise.mark_sd_m.filter(|sd| *sd >= 0.0) {
        unsure.mark_sd_m = mark_sd_m;
    }
    let (cast, kept, drawn) = match read {
        Some(read) => (read.cast, read.kept, read.drawn),
        None => (cast.clone(), cast.readings.len(), 0),
    };
    let analysis = analyse(&cast, method);
    let plan = Plan::new(&cast, &analysis, &unsure);
    Whatif { cast, analysis, plan, kept, drawn }
}

/// Values that make no sense are left out.
fn sensible(otherwise: &Otherwise, cast: &Cast) -> Otherwise {
    let written_c = if cast.digit_c.is_finite() { cast.digit_c } else { 0.0 };
    let above_0 = |x: Option<f64>| x.filter(|x| *x > 0.0 && x.is_finite());
    Otherwise {
        step_m: above_0(otherwise.step_m).map(|step_m| step_m.max(FINEST_STEP_M)),
        digit_c: above_0(otherwise.digit_c).map(|d| d.min(10.0)).filter(|d| *d > written_c),
        mark_sd_m: above_0(otherwise.mark_sd_m).map(|sd| sd.min(1.0)),
        ..*otherwise
    }
}
