//! Why two casts differ: probe, marks, cable, sun, moved water, or nothing but chance.
