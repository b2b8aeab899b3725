//! A cast: readings as they were taken, and the checks that flag them without ever altering one.

pub mod checks;
pub mod corrections;
pub mod flat_line;
pub mod gross_range;
pub mod inversion;
pub mod lag;
pub mod lag_share;
pub mod pair_verdicts;
pub mod pairs;
pub mod probe_check;
pub mod profile;
pub mod rate_of_change;
pub mod roll_up;
pub mod spike;
pub(crate) mod station;
mod written;

/// Which way the probe was moving when a reading was taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord, Hash)]
pub enum Leg {
    /// On the way to the bottom.
    Down,
    /// On the way back to the surface.
    Up,
    /// Not known: the table has one series and does not say.
    Unknown,
}

/// What a person decided about one reading.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum Switch {
    /// Nothing decided: the checks decide whether it is used (methods 5.2).
    #[default]
    Auto,
    /// Left out by a person.
    Off,
    /// "It was like that": used although a check doubts it. Gross-range failures stay out all the same.
    Kept,
}

/// One reading as it was taken.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Reading {
    /// Depth below the surface, metres, positive downward.
    pub depth_m: f64,
    /// Water temperature in °C; `None` when the cell is empty or unreadable.
    pub temp_c: Option<f64>,
    /// Which way the probe was moving.
    pub leg: Leg,
    /// What a person decided about it.
    pub switch: Switch,
}

/// Readings as taken, in the order they were written down.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Cast {
    /// Every reading, also doubted, missing and switched-off ones.
    pub readings: Vec<Reading>,
    /// The last decimal place written in the temperatures, in °C (0.1 for one decimal; 5/90 for °F with one). 0 if unknown.
    pub digit_c: f64,
    /// Depth at which the line went slack, metres; `None` if nobody noted it.
    pub bed_m: Option<f64>,
}
