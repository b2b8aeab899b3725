//! The page's canvas as a backend: plotters-canvas for circles and single lines; rectangles, words, areas and bent lines,
//! of which a picture has hundreds, directly. An area or a line goes over as one text of its points, since each call from
//! here costs more than what it draws; lines of one ink that follow one another, as the waves of a pattern do, go over
//! together.

use plotters_backend::{
    BackendColor, BackendCoord, BackendStyle, BackendTextStyle, DrawingBackend, DrawingErrorKind,
};
use plotters_canvas::CanvasBackend;
use wasm_bindgen::JsCast;
use web_sys::{CanvasRenderingContext2d, HtmlCanvasElement, Path2d};

/// A canvas, which colours its context has now, and the lines that wait for others of their ink.
pub(crate) struct Canvas {
    inner: CanvasBackend,
    context: CanvasRenderingContext2d,
    fill: Option<Ink>,
    stroke: Option<(Ink, u32)>,
    /// The path of what is drawn next, as SVG writes it.
    path: String,
    waiting: Option<(BackendColor, u32)>,
}

/// A colour that can be compared: red, green, blue, the bits of its strength.
type Ink = (u8, u8, u8, u64);

type Drawn = Result<(), DrawingErrorKind<<CanvasBackend as DrawingBackend>::ErrorType>>;

impl Canvas {
    /// A canvas of the page, its backing as large as this many CSS pixels need at this scale; nothing where the browser
    /// gives none to draw on. A backing that has its size already is kept: a new one costs more than a whole picture, and
    /// every picture begins with paper over all of it.
    pub fn new(canvas: HtmlCanvasElement, (width_px, height_px): (f64, f64), scale: f64) -> Option<Self> {
        let backing = |css_px: f64| (css_px * scale).round().clamp(1.0, 16_384.0) as u32;
        let (width, height) = (backing(width_px), backing(height_px));
        if canvas.width() != width {
            canvas.set_width(width);
        }
        if canvas.height() != height {
            canvas.set_height(height);
        }
        let context = canvas.get_context("2d").ok()??.dyn_into().ok()?;
        let inner = CanvasBackend::with_canvas_object(canvas)?;
        Some(Self { inner, context, fill: None, stroke: None, path: String::new(), waiting: None })
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

    /// Draws the lines that wait. Whatever draws something else asks for it first.
    fn draw_waiting(&mut self) {
        let Some((colour, width)) = self.waiting.take() else { return };
        self.set_stroke(colour, width);
        if let Ok(path) = Path2d::new_with_path_string(&self.path) {
            self.context.stroke_with_path(&path);
        }
        self.path.clear();
    }

    /// plotters-canvas sets colours of its own.
    fn inner(&mut self) -> &mut CanvasBackend {
        self.draw_waiting();
        (self.fill, self.stroke) = (None, None);
        &mut self.inner
    }
}

/// Adds these points to a path, each from the one before it: short texts are read sooner.
fn push_points(path: &mut String, points: impl IntoIterator<Item = BackendCoord>) {
    let mut last = None;
    for (x, y) in points {
        match last {
            None => push_pair(path, 'M', (x, y)),
            Some((from_x, from_y)) => push_pair(path, 'l', (x - from_x, y - from_y)),
        }
        last = Some((x, y));
    }
}

fn push_pair(path: &mut String, sign: char, (x, y): BackendCoord) {
    path.push(sign);
    push_number(path, x);
    path.push(' ');
    push_number(path, y);
}

/// Ten times as quick as the formatting of std, which is most of the time otherwise.
fn push_number(path: &mut String, number: i32) {
    if number < 0 {
        path.push('-');
    }
    let mut rest = number.unsigned_abs();
    let mut digits = [b'0'; 10];
    let mut from = digits.len();
    for digit in digits.iter_mut().rev() {
        *digit = b'0' + (rest % 10) as u8;
        rest /= 10;
        from -= 1;
        if rest == 0 {
            break;
        }
    }
    path.extend(digits.get(from..).unwrap_or_default().iter().map(|digit| char::from(*digit)));
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
        self.inner().present()
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
            self.draw_waiting();
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
        let (colour, width) = (style.color(), style.stroke_width());
        if colour.alpha <= 0.0 {
            return Ok(());
        }
        // Drawn as one, lines that cross would not be stronger there: only what covers fully may wait for others.
        let joins = |(waits, wide): (BackendColor, u32)| (ink(waits), wide) == (ink(colour), width);
        if colour.alpha < 1.0 || !self.waiting.is_some_and(joins) {
            self.draw_waiting();
        }
        push_points(&mut self.path, path);
        self.waiting = Some((colour, width));
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
        if style.color().alpha > 0.0 {
            self.draw_waiting();
            self.set_fill(style.color());
            push_points(&mut self.path, path);
            self.path.push('Z');
            if let Ok(path) = Path2d::new_with_path_string(&self.path) {
                self.context.fill_with_path_2d(&path);
            }
            self.path.clear();
        }
        Ok(())
    }

    fn draw_text<S: BackendTextStyle>(&mut self, text: &str, style: &S, pos: BackendCoord) -> Drawn {
        self.inner().draw_text(text, style, pos)
    }
}
