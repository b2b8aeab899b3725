//! Every picture as a pure function of data, what may be shown, a theme and a size.
//!
//! [`draw`] composes the whole picture first and then plays it on a backend; it returns a [`Placement`] that says which
//! pixel stands for which value. Nothing measures text: widths come from a table of the fonts in [`fonts`].

mod class;
mod depth_axis;
pub mod fonts;
mod numbers;
mod patterns;
mod pen;
pub mod picture;
mod play;
mod profile;
mod small;
mod strokes;
#[cfg(feature = "svg")]
mod svg;
mod theme;
mod ticks;
#[cfg(feature = "svg")]
mod touch;
mod widths;

pub use class::{
    CORES_IN_A_ROW, ClassLevel, ClassPicture, ClassPlacement, ClassWords, Core, Curve, CurveLook,
};
pub use picture::*;
pub use small::SmallPicture;
#[cfg(feature = "svg")]
pub use svg::{as_svg, svg};
pub use theme::Theme;
pub use ticks::{strip_scale, temperature_scale};
#[cfg(feature = "svg")]
pub use touch::touch;

use plotters_backend::DrawingBackend;

/// Draws the profile picture on a backend of `size.width_px` by `size.height_px` CSS pixels times `size.scale`, and says
/// where things stand.
///
/// Total on data: a reading, mark or result that is not finite or not in the water is left out; a size without room for a
/// picture gives blank paper and an empty placement.
pub fn draw<DB: DrawingBackend>(
    mut backend: DB,
    picture: &Picture,
    theme: Theme,
    size: Size,
    words: &Words,
    surface: Surface,
) -> Result<Placement, DrawError> {
    let (pen, placement) = profile::compose(picture, theme, size, words);
    play::play(&pen, &mut backend, surface).map_err(|error| DrawError { message: error.to_string() })?;
    Ok(placement)
}

/// Draws the class picture, as [`draw`] does the profile; `size.layout` is not used.
pub fn draw_class<DB: DrawingBackend>(
    mut backend: DB,
    picture: &ClassPicture,
    theme: Theme,
    size: Size,
    words: &ClassWords,
    surface: Surface,
) -> Result<ClassPlacement, DrawError> {
    let (pen, placement) = class::compose(picture, theme, size, words);
    play::play(&pen, &mut backend, surface).map_err(|error| DrawError { message: error.to_string() })?;
    Ok(placement)
}

/// Draws a small picture, as [`draw`] does the profile; `size.layout` is not used.
pub fn draw_small<DB: DrawingBackend>(
    mut backend: DB,
    picture: &SmallPicture,
    theme: Theme,
    size: Size,
    surface: Surface,
) -> Result<(), DrawError> {
    let pen = small::compose(picture, theme, size);
    play::play(&pen, &mut backend, surface).map_err(|error| DrawError { message: error.to_string() })
}

/// A backend that could not draw.
#[derive(Clone, Debug, PartialEq, Eq)]
pub struct DrawError {
    /// What the backend said, for a report; not for the reader.
    pub message: String,
}

impl std::fmt::Display for DrawError {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        write!(out, "the picture could not be drawn: {}", self.message)
    }
}

impl std::error::Error for DrawError {}
