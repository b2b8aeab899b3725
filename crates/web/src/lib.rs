//! The crossing between the page and the Rust rooms: one exported function per thing the page needs, no logic, no state
//! kept between calls. A notebook is a JSON text for the page; only Rust reads inside it.
//!
//! What is marked `#[wasm_bindgen]` is exported from where it stands, and what derives `Tsify` has its type beside it.

mod class;
mod class_picture;
mod hand_in;
mod lesson;
#[cfg(feature = "measured")]
mod measured;
mod notebook;
mod picture;
mod senses;
mod tables;
mod trials;
mod view;
mod years;
