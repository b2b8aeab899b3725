//! Invented ponds: a seed and a kind give one, the same on every machine.

use crate::analyse::analyse;
use crate::analysis::{Analysis, Method};
use crate::cast::{Cast, Leg, Reading, Switch};
use crate::random::Random;

/// What kind of water.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
pub enum Kind {
    /// Summer: warm over cold with a clear layer.
    Layered,
    /// Warm over cold, the layer spread over metres.
    Broad,
    /// A layered pond after a sunny day: a thin warm layer on top.
    Diurnal,
    /// Stirred to the bed.
    Mixed,
    /// Through a hole in the ice: coldest on top.
    UnderIce,
    /// Fresh over salty: the water at the bed is warmer and held down by its salt.
    BrackishBottom,
}

impl Kind {
    /// Every kind.
    pub const ALL: [Self; 6] =
        [Self::Layered, Self::Broad, Self::Diurnal, Self::Mixed, Self::UnderIce, Self::BrackishBottom];
}

/// An invented pond, 6 to 12 m deep. It rocks: at other minutes the layers lie a little deeper or shallower.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Water {
    kind: Kind,
    /// Depth of the bed, metres.
    bed_m: f64,
    /// Temperature of the upper water, °C.
    top_c: f64,
    /// Temperature of the deep water, °C.
    deep_c: f64,
    /// Middle of the layer, metres.
    layer_m: f64,
    /// Scale of the layer, metres (of a logistic curve; under ice, of an exponential).
    scale_m: f64,
    /// A day's warming at the surface, °C.
    day_c: f64,
    /// It fades by e every so many metres.
    fade_m: f64,
    /// Salt at the bed, g/kg.
    salt: f64,
    /// Top of the salty water, metres.
    salt_m: f64,
    /// How much warmer the salty water is, °C.
    salt_warmer_c: f64,
    /// How far the layer rocks each way, metres.
    rock_m: f64,
    /// Time it takes there and back, minutes.
    period_min: f64,
    /// Where in its rocking it is at minute 0, in turns.
    phase: f64,
}

/// Thickness over which the salty water begins, as the scale of a logistic curve, metres.
const SALT_SCALE_M: f64 = 0.2;
/// Distance of the depths of [`Water::truth`], metres.
const TRUTH_STEP_M: f64 = 0.05;

impl Water {
    /// The pond of a seed. Ranges of its numbers are conventions of ours, after small ponds of the temperate zone.
    ///
    /// ```
    /// use layercast_core::practice::{Kind, Water};
    /// let pond = Water::seeded(Kind::Layered, 7);
    /// assert_eq!(pond, Water::seeded(Kind::Layered, 7));
    /// assert_ne!(pond, Water::seeded(Kind::Layered, 8));
    /// assert!(pond.temp_c(0.0, 0.0) > pond.temp_c(pond.bed_m(), 0.0) + 5.0);
    /// ```
    pub fn seeded(kind: Kind, seed: u64) -> Self {
        let mut random = Random::seeded(seed, 1_000 + kind as u64);
        let mut between = |low: f64, high: f64| low + (high - low) * random.uniform();
        let bed_m = (between(6.0, 12.0) * 10.0).round() / 10.0;
        let mut water = Self {
            kind,
            bed_m,
            top_c: between(18.0, 26.0),
            deep_c: between(5.5, 9.5),
            layer_m: bed_m * between(0.4, 0.55),
            scale_m: between(0.3, 0.5),
            day_c: 0.0,
            fade_m: between(0.25, 0.5),
            salt: 0.0,
            salt_m: bed_m * between(0.78, 0.85),
            salt_warmer_c: 0.0,
            rock_m: between(0.1, 0.3),
            period_min: between(40.0, 180.0),
            phase: between(0.0, 1.0),
        };
        match kind {
            Kind::Layered => {}
            Kind::Broad => {
                water.layer_m = bed_m * between(0.45, 0.55);
                water.scale_m = bed_m * between(0.09, 0.12);
            }
            Kind::Diurnal => {
                water.day_c = between(1.5, 3.5);
                // Room between the two layers, so that they are two.
                water.layer_m = bed_m * between(0.5, 0.6);
                water.scale_m = between(0.3, 0.4);
                water.fade_m = between(0.25, 0.4);
            }
            Kind::Mixed => {
                water.top_c = between(8.0, 16.0);
                water.deep_c = water.top_c - between(0.0, 0.15);
            }
            Kind::UnderIce => {
                water.top_c = between(0.1, 0.6);
                water.deep_c = between(3.2, 3.9);
                water.scale_m = between(0.8, 1.6);
                water.rock_m = 0.0;
            }
            Kind::BrackishBottom => {
                water.salt = between(3.0, 8.0);
                water.salt_warmer_c = between(0.5, 1.5);
            }
        }
        water
    }

    /// Its kind.
    pub fn kind(&self) -> Kind {
        self.kind
    }

    /// Depth of the bed, metres.
    pub fn bed_m(&self) -> f64 {
        self.bed_m
    }

    /// Temperature \[°C\] at a depth \[m\] and a minute of the visit. Above the surface as at the surface, below the bed as
    /// at the bed; not a number counts as 0.
    pub fn temp_c(&self, depth_m: f64, minute: f64) -> f64 {
        let (here_m, from_m) = self.come_from_m(depth_m, minute);
        let deeper = match self.kind {
            Kind::UnderIce => 1.0 - libm::exp(-from_m / self.scale_m),
            _ => step(from_m, self.layer_m, self.scale_m),
        };
        // A day's warmth and its fading follow the surface, not the rocking.
        self.top_c
            + (self.deep_c - self.top_c) * deeper
            + self.day_c * libm::exp(-here_m / self.fade_m)
            + self.salt_warmer_c * step(from_m, self.salt_m, SALT_SCALE_M)
    }

    /// Salt \[g/kg\] there and then; 0 in fresh ponds.
    pub fn salinity(&self, depth_m: f64, minute: f64) -> f64 {
        self.salt * step(self.come_from_m(depth_m, minute).1, self.salt_m, SALT_SCALE_M)
    }

    /// What the class rules say of this water at a minute, read every 5 cm without any noise: for the teacher.
    ///
    /// Salt is left out, as the class rules leave it out; readings of salty water may carry a doubt for that.
    pub fn truth(&self, minute: f64) -> Analysis {
        let last = (self.bed_m / TRUTH_STEP_M).floor() as u32;
        let both = (0..=last).map(|i| f64::from(i) * TRUTH_STEP_M).flat_map(|depth_m| {
            let temp_c = Some(self.temp_c(depth_m, minute));
            [Leg::Down, Leg::Up].map(|leg| Reading { depth_m, temp_c, leg, switch: Switch::Kept })
        });
        let cast = Cast { readings: both.collect(), digit_c: 0.0, bed_m: Some(self.bed_m) };
        analyse(&cast, &Method::default())
    }

    /// A depth within the water, and where the water there stands when nothing rocks, metres.
    fn come_from_m(&self, depth_m: f64, minute: f64) -> (f64, f64) {
        let finite = |x: f64| if x.is_finite() { x } else { 0.0 };
        let here_m = finite(depth_m).clamp(0.0, self.bed_m);
        // Most in the middle, nothing at the surface and the bed; turns counted within one so that far minutes stay exact.
        let turn = (finite(minute) / self.period_min + self.phase).fract();
        let swing = libm::sin(2.0 * std::f64::consts::PI * turn);
        let share = libm::sin(std::f64::consts::PI * here_m / self.bed_m);
        (here_m, here_m - self.rock_m * swing * share)
    }
}

/// From 0 far above to 1 far below.
fn step(depth_m: f64, middle_m: f64, scale_m: f64) -> f64 {
    1.0 / (1.0 + libm::exp((middle_m - depth_m) / scale_m))
}
