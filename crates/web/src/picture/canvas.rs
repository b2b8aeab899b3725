//! The page's canvas as a backend: plotters-canvas for words and circles; rectangles, areas and bent lines, of which a
//! picture has hundreds, directly, since plotters-canvas sets the colour anew for each.

use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind,
};
use plotters_canvas::CanvasBackend;
use wasm_bindgen::JsCast;
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement};

/// A canvas, and which colours its context has now.
pub(crate) struct Canvas {
    inner: CanvasBackend,
    context: CanvasRenderingContext2d,
    fill: Option<Ink>,
    stroke: Option<(Ink, u32)>,
}

/// A colour that can be compared: red, green, blue, the bits of its strength.
type Ink = (u8, u8, u8, u64);

type Drawn = Result<(), DrawingErrorKind<<CanvasBackend as DrawingBackend>::ErrorType>>;

impl Canvas {
    /// A canvas of the page; nothing where the browser gives none to draw on.
    pub fn new(canvas: HtmlCanvasElement) -> Option<Self> {
        let context = canvas.get_context("2d").ok()??.dyn_into().ok()?;
        Some(Self { inner: CanvasBackend::with_canvas_object(canvas)?, context, fill: None, stroke: None })
    }

    fn set_fill(&mut self, colour: BackendColor) {
        if self.fill != Some(ink(colour)) {
            self.context.set_fill_style_str(&written(colour));
            self.fill = Some(ink(colour));
        }
    }

    fn set_stroke(&mut self, colour: BackendColor, width: u32) {
        if self.stroke != Some((ink(colour), width)) {
            self.context.set_stroke_style_str(&written(colour));
            self.context.set_line_width(f64::from(width));
            self.stroke = Some((ink(colour), width));
        }
    }

    /// The path of these points; false when there are none.
    fn path(&self, points: impl IntoIterator<Item = BackendCoord>) -> bool {
        self.context.begin_path();
        let mut points = points.into_iter();
        let Some(start) = points.next() else { return false };
        self.context.move_to(f64::from(start.0), f64::from(start.1));
        for point in points {
            self.context.line_to(f64::from(point.0), f64::from(point.1));
        }
        true
    }

    /// plotters-canvas sets colours of its own.
    fn inner(&mut self) -> &mut CanvasBackend {
        (self.fill, self.stroke) = (None, None);
        &mut self.inner
    }
}

fn ink(BackendColor { alpha, rgb: (r, g, b) }: BackendColor) -> Ink {
    (r, g, b, alpha.to_bits())
}

/// A colour as a canvas takes it.
fn written(BackendColor { alpha, rgb: (r, g, b) }: BackendColor) -> String {
    if alpha >= 1.0 { format!("#{r:02x}{g:02x}{b:02x}") } else { format!("rgba({r},{g},{b},{alpha})") }
}

impl DrawingBackend for Canvas {
    type ErrorType = <CanvasBackend as DrawingBackend>::ErrorType;

    fn get_size(&self) -> (u32, u32) {
        self.inner.get_size()
    }

    fn ensure_prepared(&mut self) -> Drawn {
        self.inner.ensure_prepared()
    }

    fn present(&mut self) -> Drawn {
        self.inner.present()
    }

    fn draw_pixel(&mut self, point: BackendCoord, color: BackendColor) -> Drawn {
        self.inner().draw_pixel(point, color)
    }

    fn draw_line<S: BackendStyle>(&mut self, from: BackendCoord, to: BackendCoord, style: &S) -> Drawn {
        self.inner().draw_line(from, to, style)
    }

    fn draw_rect<S: BackendStyle>(
        &mut self,
        upper_left: BackendCoord,
        bottom_right: BackendCoord,
        style: &S,
        fill: bool,
    ) -> Drawn {
        if !fill {
            return self.inner().draw_rect(upper_left, bottom_right, style, fill);
        }
        if style.color().alpha > 0.0 {
            self.set_fill(style.color());
            let (x, y) = (f64::from(upper_left.0), f64::from(upper_left.1));
            self.context.fill_rect(x, y, f64::from(bottom_right.0) - x, f64::from(bottom_right.1) - y);
        }
        Ok(())
    }

    fn draw_path<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        path: I,
        style: &S,
    ) -> Drawn {
        if style.color().alpha > 0.0 && self.path(path) {
            self.set_stroke(style.color(), style.stroke_width());
            self.context.stroke();
        }
        Ok(())
    }

    fn draw_circle<S: BackendStyle>(
        &mut self,
        center: BackendCoord,
        radius: u32,
        style: &S,
        fill: bool,
    ) -> Drawn {
        self.inner().draw_circle(center, radius, style, fill)
    }

    fn fill_polygon<S: BackendStyle, I: IntoIterator<Item = BackendCoord>>(
        &mut self,
        path: I,
        style: &S,
    ) -> Drawn {
        if style.color().alpha > 0.0 && self.path(path) {
            self.context.close_path();
            self.set_fill(style.color());
            self.context.fill();
        }
        Ok(())
    }

    fn draw_text<S: BackendTextStyle>(&mut self, text: &str, style: &S, pos: BackendCoord) -> Drawn {
        self.inner().draw_text(text, style, pos)
    }
}
