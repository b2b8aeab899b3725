//! What water is: its density and the units it is measured in.

pub mod calibration;
pub mod density;
pub mod scales;
pub mod units;
pub mod worth;
