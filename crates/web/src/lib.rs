//! The crossing between the page and the Rust rooms: one exported function per thing the page needs, no logic, no state
//! kept between calls. A notebook is a JSON text for the page; only Rust reads inside it.

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

pub use class::{
    ClassShown, ClassStepped, ClassTold, OutcomeName, Slips, Taken, TakenRow, class_act, class_csv,
    class_lesson, class_look, class_slips, class_take, class_told, class_why, new_class, open_class, zip_of,
};
pub use class_picture::{ClassPart, ClassPictureWords, ClassRequest, class_draw};
pub use hand_in::{hand_in_file, hand_in_lines, receipt};
pub use lesson::{lesson_act, lesson_look, lesson_of_ours};
#[cfg(feature = "measured")]
pub use measured::analyses;
pub use notebook::{Opened, Stepped, act, example, look, look_from, new_notebook, open_bytes, step};
pub use picture::{
    GripPlace, LayoutName, PictureRequest, PictureText, PictureWords, PlacementView, ThemeName, draw, svg,
    words,
};
pub use senses::{hear, touch};
pub use tables::{quality_record, readings_sidecar, readings_table};
pub use trials::{otherwise, ranges, trials};
