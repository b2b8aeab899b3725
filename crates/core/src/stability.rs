//! How hard it is to mix the water: buoyancy, work, heat, wind.
