//! Pairs of casts read as a class reads them, with or without a planted cause.
#![allow(dead_code)] // every test file uses a part of it

use crate::common::{Noise, depths, smooth_lake_c, two_legs};
use layercast_core::compare::{Cause, Options, Pair, Side};
use layercast_core::{Method, analyse};

/// How the casts of a pair are read.
#[derive(Clone, Copy)]
pub struct Reader {
    /// Noise of one reading, °C.
    pub noise_c: f64,
    /// How each mark was placed, standard deviation, metres.
    pub marks_m: f64,
    /// Distance of the marks, metres.
    pub step_m: f64,
}

/// Half-metre marks placed to 3 cm, 0.1 °C noise a reading.
pub const CLASS: Reader = Reader { noise_c: 0.1, marks_m: 0.03, step_m: 0.5 };

/// The planted sizes.
pub const PLANTED: [(Cause, f64); 5] = [
    (Cause::Offset, 0.3),
    (Cause::Zero, 0.15),
    (Cause::Stretch, 0.05),
    (Cause::WarmTop, 0.6),
    (Cause::MovedWater, 0.5),
];

/// Water of 22 over 8 °C, 8 m: the layer's middle and scale.
#[derive(Clone, Copy)]
pub struct Lake {
    pub middle_m: f64,
    pub width_m: f64,
}

impl Lake {
    /// With its layer between 3 and 5 m.
    pub fn seeded(noise: &mut Noise, width_m: f64) -> Self {
        Self { middle_m: 3.0 + 2.0 * noise.uniform(), width_m }
    }

    /// What stands in b's column at a mark with a cause planted.
    pub fn read_c(self, cause: Option<Cause>, size: f64, mark_m: f64) -> f64 {
        let water = |z: f64| smooth_lake_c(z, self.middle_m, self.width_m);
        match cause {
            None => water(mark_m),
            Some(Cause::Offset) => water(mark_m) + size,
            Some(Cause::Zero) => water(mark_m + size),
            Some(Cause::Stretch) => water(mark_m * (1.0 + size)),
            Some(Cause::WarmTop) => water(mark_m) + size * libm::exp(-mark_m / 0.8),
            // Not the shape that is fitted: half a sine from the surface to the bed.
            Some(Cause::MovedWater) => water(mark_m - size * libm::sin(std::f64::consts::PI * mark_m / 8.5)),
        }
    }
}

/// One cast of two legs to 8 m, tenths, the whole way through [`analyse`].
pub fn cast(noise: &mut Noise, reader: Reader, read_c: impl Fn(f64) -> f64) -> Side {
    let depths_m = depths((8.0 / reader.step_m) as usize + 1, reader.step_m);
    let hung_m: Vec<f64> = depths_m.iter().map(|z| (z + reader.marks_m * noise.normal()).max(0.0)).collect();
    let mut leg =
        || -> Vec<f64> { hung_m.iter().map(|z| noise.tenths(read_c(*z), reader.noise_c)).collect() };
    let (down_c, up_c) = (leg(), leg());
    let cast = two_legs(&depths_m, &down_c, &up_c, 0.1);
    Side::of(&cast, &analyse(&cast, &Method::default()))
}

/// Two casts of one lake, b with a cause planted.
pub fn pair(noise: &mut Noise, reader: Reader, lake: Lake, cause: Option<Cause>, size: f64) -> Pair {
    let a = cast(noise, reader, |z| lake.read_c(None, 0.0, z));
    let b = cast(noise, reader, |z| lake.read_c(cause, size, z));
    Pair::new(&a, &b, &Options { mark_sd_m: reader.marks_m, ..Options::default() }).unwrap()
}
