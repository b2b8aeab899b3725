//! Layers of a profile: state, thermocline and its span, the steep layer, the mixed layer, each by a named rule.

pub mod angle;
pub mod broken_stick;
pub mod centroid;
pub mod curvature;
pub mod dense_step;
pub mod densest;
pub mod doubts;
pub mod edges;
pub mod every_rule;
pub mod first_steep;
pub mod interval;
pub mod mixed_layer;
pub mod monotone_curve;
pub mod overturn;
pub mod parabola;
pub mod runs;
pub mod span;
pub mod state;
pub mod steepest;
pub mod steps;
mod sums;
pub mod three_layer;
