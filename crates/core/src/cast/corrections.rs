//! Corrections of a cast: a visible list, each applied to the readings as taken, none of them ever altering those.

use super::Cast;

/// One correction, as a person entered it. Lists are applied in the order depth zero, gap, stretch, slant, lag, probe,
/// whatever order they stand in.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Correction {
    /// The probe read `ice_c` in stirred melting ice: every temperature less that (methods 2.4).
    ProbeOffset {
        /// Reading in melting ice, °C.
        ice_c: f64,
    },
    /// The probe read `ice_c` in melting ice and `read_c` where a reference thermometer read `true_c` (methods 2.4).
    ProbeTwoPoint {
        /// Reading in melting ice, °C.
        ice_c: f64,
        /// Reading beside the reference thermometer, °C.
        read_c: f64,
        /// What the reference thermometer read, °C.
        true_c: f64,
    },
    /// Marks were read at a rail or at the top of the ice, `above_water_m` above the water: every depth less that.
    DepthZero {
        /// Height of the place where marks were read above the water, metres; negative below it.
        above_water_m: f64,
    },
    /// The sensor hangs `gap_m` below the zero of the marks: every depth more by that (methods 8.4).
    FirstMark {
        /// From the zero of the marks to the sensor, metres.
        gap_m: f64,
    },
    /// The cable is longer or shorter than its marks say: every depth times this (1.02: marks 2 % too close together).
    Stretch {
        /// True length over marked length.
        factor: f64,
    },
    /// The cable hung at an angle while the marks from `from_m` to `to_m` were read: depth times cos angle (methods 8.4).
    Slant {
        /// First mark it applies to, metres as marked.
        from_m: f64,
        /// Last mark it applies to, metres as marked.
        to_m: f64,
        /// Angle from the vertical, degrees.
        angle_deg: f64,
    },
    /// The probe had covered all but the share `r` of each step when it was read (methods 2.6).
    Lag {
        /// Share left over, 0 to 0.5.
        r: f64,
    },
}

/// What became of one correction.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Applied {
    /// The correction.
    pub correction: Correction,
    /// How it went.
    pub outcome: Outcome,
}

/// How a correction went.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Outcome {
    /// Applied.
    Done {
        /// Readings it changed.
        changed: usize,
        /// The most it changed one, in metres or °C (signed).
        largest: f64,
    },
    /// Not applied.
    Refused(Refusal),
}

/// Why a correction is not applied.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Refusal {
    /// A number that makes no sense (not finite, or beyond what a pond trip can have).
    Senseless,
    /// The two points of the probe check lie closer than 5 °C: the offset alone is applied in its place.
    PointsTooClose,
    /// Another correction of the same kind stands before it in the list.
    Twice,
    /// Lag: no depth was read both going down and coming up.
    NoPairs,
    /// Lag: the legs do not differ the way a slow probe makes them differ.
    WrongSign,
    /// Lag: so much was left over that correcting would only swell the noise (r over 0.5): wait longer next time.
    TooSlow,
}

/// A cast as corrected, and what became of each correction, in the order of the list.
#[derive(Clone, Debug, PartialEq)]
pub struct Corrected {
    /// The cast to analyse: one reading per reading of the cast given, in the same order.
    pub cast: Cast,
    /// One per correction.
    pub applied: Vec<Applied>,
}
