//! Layers of a profile: state, thermocline and its span, the steep layer, the mixed layer, each by a named rule.

pub mod densest;
pub mod doubts;
pub mod edges;
pub mod first_steep;
pub mod mixed_layer;
pub mod overturn;
pub mod runs;
pub mod span;
pub mod state;
pub mod steepest;
pub mod steps;
