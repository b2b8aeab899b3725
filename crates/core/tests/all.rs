//! Every test of the core in one program: linking one takes a fraction of linking thirty. A file that is not named
//! here is a fault that `cargo xtask test tidy` finds.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

mod common;
mod compare_causes;
mod compare_chance;
mod compare_support;
mod compare_values;
mod coverage_thresholds;
mod demo_water;
mod laws;
mod laws_cast;
mod laws_certainty;
mod laws_compare;
mod laws_layers;
mod laws_stability;
mod laws_water;
mod practice_pond;
mod reference_checks;
mod reference_complete;
mod reference_density;
mod reference_field_limits;
mod reference_field_rules;
mod reference_lag;
mod reference_layers;
mod reference_mixed_layer;
mod reference_n2;
mod reference_open_data;
mod reference_oxygen;
mod reference_pairs;
mod reference_refinements;
mod reference_span_coverage;
mod reference_stability;
mod reference_thermistor;
mod reference_uncertainty;
mod reference_units;
mod simulation;
mod whatif;
