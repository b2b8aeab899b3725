//! A virtual probe: it lags, it is noisy, it shows digits, it hangs at a slant.

use super::Water;
use crate::cast::lag::share_left;
use crate::cast::{Cast, Leg, Reading, Switch};
use crate::random::Random;

/// A probe, its cable and its boat.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Probe {
    /// Time to cover 63.2 % of a step, seconds; 0 for a probe that is at once as warm as its water.
    pub tau_s: f64,
    /// It reads this much too warm, °C.
    pub offset_c: f64,
    /// Noise of a reading, standard deviation in °C.
    pub noise_c: f64,
    /// Last digit it shows, °C; 0 for all of them.
    pub digit_c: f64,
    /// How far the boat's heaving moves the sensor, standard deviation in metres.
    pub heave_m: f64,
    /// Angle of the cable from the vertical at minute 0, degrees.
    pub slant_deg: f64,
    /// Degrees by which that grows each minute while the boat drifts.
    pub drift_deg_per_min: f64,
}

impl Default for Probe {
    /// A class probe in calm water: 15 s, 0.05 °C of noise, tenths, 1 cm of heaving.
    fn default() -> Self {
        Self {
            tau_s: 15.0,
            offset_c: 0.0,
            noise_c: 0.05,
            digit_c: 0.1,
            heave_m: 0.01,
            slant_deg: 0.0,
            drift_deg_per_min: 0.0,
        }
    }
}

/// Where a probe stands between two readings. The caller keeps it.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct ProbeState {
    /// Temperature of the sensor itself, °C.
    pub body_c: f64,
    /// Minutes since the visit began.
    pub minute: f64,
    /// Readings taken so far; each has a chance of its own.
    pub taken: u64,
}

/// One reading of a virtual probe.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Readout {
    /// What it shows, °C.
    pub shown_c: f64,
    /// Where the sensor hung in truth, metres: for the teacher.
    pub hung_m: f64,
    /// What the water was there, °C: for the teacher.
    pub water_c: f64,
    /// It lies on the bed: the line is slack.
    pub touched_bed: bool,
}

/// A cable does not slant more than this, degrees.
const STEEPEST_DEG: f64 = 60.0;
/// Digits beyond these are shown as they are, °C.
const FINEST_DIGIT_C: f64 = 1e-6;
const COARSEST_DIGIT_C: f64 = 10.0;
/// Visits do not last longer, minutes.
const LATEST_MIN: f64 = 1e9;
/// Waits beyond a day are a day, seconds.
const LONGEST_WAIT_S: f64 = 86_400.0;

impl Probe {
    /// A probe with the faults of a seed: 8 to 25 s, up to 0.3 °C off, 0.03 to 0.1 °C of noise, tenths, up to 4 cm of
    /// heaving, a slant of up to 12° that may grow while the boat drifts (conventions of ours).
    pub fn seeded(seed: u64) -> Self {
        let mut random = Random::seeded(seed, 2_000);
        let mut between = |low: f64, high: f64| low + (high - low) * random.uniform();
        Self {
            tau_s: between(8.0, 25.0),
            offset_c: between(-0.3, 0.3),
            noise_c: between(0.03, 0.1),
            digit_c: 0.1,
            heave_m: between(0.0, 0.04),
            slant_deg: between(0.0, 12.0),
            drift_deg_per_min: between(0.0, 0.2),
        }
    }

    /// The probe held just under the surface until it is as warm as the water there.
    pub fn at_surface(&self, water: &Water, minute: f64) -> ProbeState {
        let minute = within(minute, LATEST_MIN);
        ProbeState { body_c: water.temp_c(0.0, minute), minute, taken: 0 }
    }

    /// Lowers or raises the probe to a mark, waits, reads.
    ///
    /// The sensor comes nearer to the water by all but exp(−wait/τ) of the way (methods 2.6; the way down or up takes no
    /// time and no warmth); it hangs at the mark times the cosine of the slant, heaves, and lies on the bed if the cable
    /// is long enough. The clock goes on by the wait. Pure: the same arguments give the same reading and the same next
    /// state.
    ///
    /// * `mark_m`: mark at the water line \[m\]; not a number, or above the water: 0
    /// * `wait_s`: wait at the mark \[s\]; not a number, or less than nothing: 0; at most a day
    ///
    /// Source: [`Morison1994`](crate::bibliography::Morison1994) for the lag.
    pub fn read(
        &self,
        water: &Water,
        state: &ProbeState,
        mark_m: f64,
        wait_s: f64,
        seed: u64,
    ) -> (Readout, ProbeState) {
        let mut random = Random::seeded(seed, state.taken);
        let (probe, state) = (self.sensible(), state.sensible());
        let mark_m = if mark_m.is_finite() { mark_m.clamp(0.0, 20_000.0) } else { 0.0 };
        let wait_s = if wait_s > 0.0 { wait_s.min(LONGEST_WAIT_S) } else { 0.0 };
        let minute = state.minute + wait_s / 60.0;
        let slant_deg = (probe.slant_deg + probe.drift_deg_per_min * minute).abs().min(STEEPEST_DEG);
        let reached_m = mark_m * libm::cos(slant_deg.to_radians()) + probe.heave_m * random.normal();
        let touched_bed = reached_m >= water.bed_m();
        let hung_m = reached_m.clamp(0.0, water.bed_m());
        let water_c = water.temp_c(hung_m, minute);
        let body_c = probe.settled_c(state.body_c, water_c, wait_s);
        let shown_c = probe.shown_c(body_c + probe.offset_c + probe.noise_c * random.normal());
        let next = ProbeState { body_c, minute, taken: state.taken.wrapping_add(1) };
        (Readout { shown_c, hung_m, water_c, touched_bed }, next)
    }

    /// Temperature of the sensor \[°C\] after a wait \[s\] in water of another temperature.
    ///
    /// ```
    /// use layercast_core::practice::Probe;
    /// let probe = Probe { tau_s: 20.0, ..Probe::default() };
    /// assert!((probe.settled_c(20.0, 10.0, 20.0) - 13.678_794_411_714_423).abs() < 1e-12);
    /// ```
    pub fn settled_c(&self, body_c: f64, water_c: f64, wait_s: f64) -> f64 {
        let left = if self.tau_s > 0.0 { share_left(wait_s / self.tau_s) } else { 0.0 };
        water_c + left * (body_c - water_c)
    }

    /// Faults that make no sense are none.
    fn sensible(&self) -> Self {
        Self {
            tau_s: within(self.tau_s, LONGEST_WAIT_S),
            offset_c: within(self.offset_c, 100.0),
            noise_c: within(self.noise_c, 100.0),
            digit_c: self.digit_c,
            heave_m: within(self.heave_m, 100.0),
            slant_deg: within(self.slant_deg, 90.0),
            drift_deg_per_min: within(self.drift_deg_per_min, 90.0),
        }
    }

    fn shown_c(&self, value_c: f64) -> f64 {
        if !(FINEST_DIGIT_C..=COARSEST_DIGIT_C).contains(&self.digit_c) {
            return value_c;
        }
        // By the digits of a degree where they are whole, so that 18.3 is 18.3 to the last bit.
        let per_degree = 1.0 / self.digit_c;
        if (per_degree - per_degree.round()).abs() < 1e-9 {
            (value_c * per_degree.round()).round() / per_degree.round()
        } else {
            (value_c / self.digit_c).round() * self.digit_c
        }
    }
}

impl ProbeState {
    fn sensible(&self) -> Self {
        Self {
            body_c: within(self.body_c, 1_000.0),
            minute: within(self.minute, LATEST_MIN),
            taken: self.taken,
        }
    }
}

/// The value, or 0 where it is none or further from 0 than `most`.
fn within(value: f64, most: f64) -> f64 {
    if value.abs() <= most { value } else { 0.0 }
}

/// A whole cast: down over the marks and up again, the probe settled at the surface first.
///
/// * `marks_m`: marks in the order of the way down; the way up takes them from last to first
///
/// The bed is noted when the probe lies on it: the cast then says so at the shallowest such mark.
pub fn whole_cast(water: &Water, probe: &Probe, marks_m: &[f64], wait_s: f64, seed: u64) -> Cast {
    let mut state = probe.at_surface(water, 0.0);
    let mut bed_m: Option<f64> = None;
    let down = marks_m.iter().map(|mark_m| (mark_m, Leg::Down));
    let up = marks_m.iter().rev().map(|mark_m| (mark_m, Leg::Up));
    let readings = down
        .chain(up)
        .map(|(mark_m, leg)| {
            let (read, next) = probe.read(water, &state, *mark_m, wait_s, seed);
            state = next;
            if read.touched_bed {
                bed_m = Some(bed_m.map_or(*mark_m, |noted| noted.min(*mark_m)));
            }
            Reading { depth_m: *mark_m, temp_c: Some(read.shown_c), leg, switch: Switch::Auto }
        })
        .collect();
    Cast { readings, digit_c: probe.digit_c, bed_m }
}
