//! Plays a display list on a backend.

use plotters_backend::text_anchor::{HPos, Pos, VPos};
use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind, FontFamily,
    FontStyle,
};

use crate::fonts::Face;
use crate::pen::{Anchor, Ink, Pen, Shape};
use crate::picture::Surface;
use crate::theme::Colour;

struct Stroke {
    ink: Ink,
    width: u32,
}

impl BackendStyle for Stroke {
    fn color(&self) -> BackendColor {
        BackendColor { alpha: self.ink.alpha, rgb: self.ink.colour }
    }

    fn stroke_width(&self) -> u32 {
        self.width
    }
}

fn fill(ink: Ink) -> Stroke {
    Stroke { ink, width: 1 }
}

struct Words {
    ink: Colour,
    size: f64,
    face: Face,
    anchor: Anchor,
}

/// Backends that draw words themselves never ask for these two.
#[derive(Debug)]
struct NoGlyphs;

impl std::fmt::Display for NoGlyphs {
    fn fmt(&self, out: &mut std::fmt::Formatter<'_>) -> std::fmt::Result {
        out.write_str("this picture needs a backend that draws text by itself")
    }
}

impl std::error::Error for NoGlyphs {}

impl BackendTextStyle for Words {
    type FontError = NoGlyphs;

    fn color(&self) -> BackendColor {
        BackendColor { alpha: 1.0, rgb: self.ink }
    }

    fn size(&self) -> f64 {
        self.size
    }

    fn style(&self) -> FontStyle {
        if self.face.is_italic() { FontStyle::Italic } else { FontStyle::Normal }
    }

    fn anchor(&self) -> Pos {
        let level = match self.anchor {
            Anchor::Start => HPos::Left,
            Anchor::Middle => HPos::Center,
            Anchor::End => HPos::Right,
        };
        Pos::new(level, VPos::Top)
    }

    fn family(&self) -> FontFamily<'_> {
        FontFamily::Name(self.face.families())
    }

    fn layout_box(&self, _text: &str) -> Result<(BackendCoord, BackendCoord), NoGlyphs> {
        Err(NoGlyphs)
    }

    fn draw<E, F: FnMut(i32, i32, BackendColor) -> Result<(), E>>(
        &self,
        _text: &str,
        _at: BackendCoord,
        _draw: F,
    ) -> Result<Result<(), E>, NoGlyphs> {
        Err(NoGlyphs)
    }
}

impl Surface {
    /// What the backend makes of a font size: the SVG one divides it by 1.24.
    fn font_scale(self) -> f64 {
        match self {
            Surface::Canvas => 1.0,
            Surface::Svg => 1.24,
        }
    }

    /// From where a text hung by its top is placed down to its baseline, in em.
    fn baseline_em(self, face: Face) -> f64 {
        match self {
            Surface::Canvas => face.canvas_baseline_em(),
            Surface::Svg => 0.76,
        }
    }
}

pub(crate) fn play<DB: DrawingBackend>(
    pen: &Pen,
    backend: &mut DB,
    surface: Surface,
) -> Result<(), DrawingErrorKind<DB::ErrorType>> {
    backend.ensure_prepared()?;
    let points =
        |range: &std::ops::Range<usize>| pen.points.get(range.clone()).unwrap_or(&[]).iter().copied();
    for shape in &pen.shapes {
        match shape {
            Shape::Rect { from, to, ink } => backend.draw_rect(*from, *to, &fill(*ink), true)?,
            Shape::Polygon { points: range, ink } => backend.fill_polygon(points(range), &fill(*ink))?,
            Shape::Path { points: range, width, ink } => {
                backend.draw_path(points(range), &Stroke { ink: *ink, width: *width })?;
            }
            Shape::Disc { at, radius, ink } => backend.draw_circle(*at, *radius, &fill(*ink), true)?,
            Shape::Ring { at, radius, width, ink } => {
                backend.draw_circle(*at, *radius, &Stroke { ink: *ink, width: *width }, false)?;
            }
            Shape::Text { letters, x, baseline_y, size_px, face, anchor, ink } => {
                let text = pen.letters.get(letters.clone()).unwrap_or("");
                let top = (baseline_y - size_px * surface.baseline_em(*face)).round() as i32;
                let size = size_px * surface.font_scale();
                let style = Words { ink: *ink, size, face: *face, anchor: *anchor };
                backend.draw_text(text, &style, (*x, top))?;
            }
        }
    }
    backend.present()
}
