//! Water to practise on, of our own invention, and a virtual probe in it.
//!
//! [`Water::seeded`] invents a pond; [`Probe::read`] hangs a probe in it, one mark and one wait at a time; the caller
//! keeps the [`ProbeState`] between. [`whole_cast`] does a whole cast at once. Nothing here is measured: what comes of it
//! is practice and is to be called so.

mod probe;
mod water;

pub use probe::{Probe, ProbeState, Readout, whole_cast};
pub use water::{Kind, Water};
