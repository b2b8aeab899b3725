//! The crossing between the page and the Rust rooms: one exported function per thing the page needs, no logic, no state
//! kept between calls. A notebook is a JSON text for the page; only Rust reads inside it.

mod notebook;
mod picture;
mod trials;
mod view;

pub use notebook::{Opened, Stepped, act, example, look, look_from, new_notebook, open_bytes, step};
pub use picture::{
    GripPlace, LayoutName, PictureRequest, PictureText, PictureWords, PlacementView, ThemeName, draw, svg,
    words,
};
pub use trials::{otherwise, ranges, trials};
