//! What water is: its density and the units it is measured in.

pub mod density;
pub mod units;
