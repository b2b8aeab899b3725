//! Every picture as a pure function of data, what may be shown, a theme and a size.

pub mod fonts;
pub mod picture;
mod theme;
mod widths;

pub use picture::*;
pub use theme::Theme;

use plotters_backend::DrawingBackend;

/// Draws the profile picture on any backend whose size is `size` times its scale, and says where things stand.
pub fn draw<DB: DrawingBackend>(
    _backend: DB,
    _picture: &Picture,
    _theme: Theme,
    _size: Size,
    _words: &Words,
    _surface: Surface,
) -> Result<Placement, DrawError> {
    Ok(Placement::default())
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
