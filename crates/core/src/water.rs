//! What water is and how it is measured: density, scales and units, thermistors and their calibration, oxygen.

pub mod calibration;
pub mod density;
pub mod oxygen;
pub mod scales;
pub mod thermistor;
pub mod units;
pub mod worth;
