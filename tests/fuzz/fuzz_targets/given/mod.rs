//! Bytes as numbers and casts: two bytes are hundredths, the highest pairs are numbers that no water has.
#![allow(dead_code)] // every target uses a part of it

use layercast_core::{Cast, Leg, Reading, Switch};

const WILD: [f64; 12] = [
    f64::NAN,
    f64::INFINITY,
    f64::NEG_INFINITY,
    1e308,
    -1e308,
    5e-324,
    1e-12,
    1e9,
    20_000.0,
    f64::MAX,
    f64::MIN_POSITIVE,
    -0.0,
];

/// What is left of the input.
pub struct Given<'a>(pub &'a [u8]);

impl Given<'_> {
    pub fn is_empty(&self) -> bool {
        self.0.is_empty()
    }

    /// The next byte; 0 at the end.
    pub fn byte(&mut self) -> u8 {
        let Some((first, rest)) = self.0.split_first() else { return 0 };
        self.0 = rest;
        *first
    }

    /// The next two bytes, low one first, as hundredths from −327.68, or a wild number.
    pub fn number(&mut self) -> f64 {
        let pair = i16::from_le_bytes([self.byte(), self.byte()]);
        let wild = usize::try_from(i32::from(i16::MAX) - i32::from(pair)).unwrap_or(usize::MAX);
        WILD.get(wild).copied().unwrap_or(f64::from(pair) / 100.0)
    }

    /// A number or none.
    pub fn some(&mut self) -> Option<f64> {
        (self.byte() % 2 == 1).then(|| self.number())
    }

    /// A digit, a bed and at most `most` readings: depth, temperature, and a byte for leg and switch.
    pub fn cast(&mut self, most: usize) -> Cast {
        let digit_c = self.number();
        let bed_m = self.some();
        let count = usize::from(self.byte()).min(most);
        let readings = (0..count).map(|_| {
            let (depth_m, temp_c, how) = (self.number(), self.number(), self.byte());
            Reading {
                depth_m,
                temp_c: (how & 0x40 == 0).then_some(temp_c),
                leg: [Leg::Down, Leg::Up, Leg::Unknown][usize::from(how % 3)],
                switch: [Switch::Auto, Switch::Kept, Switch::Off, Switch::Auto][usize::from(how >> 2 & 3)],
            }
        });
        Cast { readings: readings.collect(), digit_c, bed_m }
    }
}
