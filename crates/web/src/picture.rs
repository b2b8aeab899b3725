//! Pictures: what the scene of a screen and the analysis make of a notebook, drawn by the chart.

pub(crate) mod canvas;
pub(crate) mod shown;
mod words;

use crate::notebook::read;
use crate::view::{large_view, view};
use layercast_chart::{Layout, Mark, Picture, Placement, Size, SmallPicture, Surface, Theme};
use layercast_lesson::by_hand;
use layercast_lesson::document::{Notebook, Screen};
use layercast_lesson::scene::Scene;
use layercast_lesson::view::Otherwise;
use layercast_lesson::{Prepared, look_with, prepare_with, scene};
use serde::{Deserialize, Serialize};
use tsify::{Ts, Tsify};
use wasm_bindgen::prelude::*;
use web_sys::HtmlCanvasElement;
pub use words::{PictureText, PictureWords};

/// A theme by name.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, Tsify)]
#[tsify(missing_as_null)]
#[serde(rename_all = "snake_case")]
pub enum ThemeName {
    /// Indoors, light.
    Day,
    /// Dark.
    Night,
    /// At the water.
    Sunlight,
    /// For the last row of a classroom.
    Projector,
}

/// Columns and margins of a picture.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, Tsify)]
#[tsify(missing_as_null)]
#[serde(rename_all = "snake_case")]
pub enum LayoutName {
    /// Beside the readings table.
    Log,
    /// Full width.
    Wide,
    /// Narrower columns.
    Narrow,
    /// Phone.
    Phone,
}

/// Which picture, how large, in which words.
#[derive(Clone, Debug, PartialEq, Deserialize, Tsify)]
#[tsify(missing_as_null)]
pub struct PictureRequest {
    /// The screen it stands on.
    pub screen: Screen,
    /// Colours and weights.
    pub theme: ThemeName,
    /// Width, CSS pixels.
    pub width_px: f64,
    /// Height, CSS pixels.
    pub height_px: f64,
    /// Root font size, CSS pixels.
    pub root_px: f64,
    /// Backing pixels per CSS pixel: at least 2 on a canvas.
    pub scale: f64,
    /// Columns and margins.
    pub layout: LayoutName,
    /// The reading under the cursor: index into `Look.readings`.
    pub cursor: Option<usize>,
    /// The rule in hand: flat index over the rows of `Look.profile.rules`. While one is, the others are ticks.
    pub rule: Option<usize>,
    /// Three readings are being placed by hand: the rest is not drawn meanwhile.
    pub by_hand: bool,
    /// How the cast is read otherwise, while that is shown.
    pub otherwise: Option<Otherwise>,
    /// Its words.
    pub words: PictureText,
}

/// A small picture of a question: which of its pictures, how large.
#[derive(Clone, Debug, PartialEq, Deserialize, Tsify)]
#[tsify(missing_as_null)]
pub struct SmallRequest {
    /// Its curve: (depth in metres, °C), downward.
    pub curve: Vec<(f64, f64)>,
    /// The curve faint behind it.
    pub own: Vec<(f64, f64)>,
    /// Deepest depth of the axis, metres.
    pub depth_m: f64,
    /// Ends of the axis of temperature, °C.
    pub low_c: f64,
    /// See `low_c`.
    pub high_c: f64,
    /// Colours and weights.
    pub theme: ThemeName,
    /// Width, CSS pixels.
    pub width_px: f64,
    /// Height, CSS pixels.
    pub height_px: f64,
    /// Root font size, CSS pixels.
    pub root_px: f64,
    /// Backing pixels per CSS pixel: at least 2 on a canvas.
    pub scale: f64,
}

/// Where things stand in the finished picture, in CSS pixels from its top left corner.
#[derive(Clone, Debug, Default, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct PlacementView {
    /// y of depth 0.
    pub surface_y_px: f64,
    /// Pixels per metre of depth.
    pub px_per_m: f64,
    /// Deepest depth of the axis, metres.
    pub max_depth_m: f64,
    /// x of the student's column, left and right; equal when there is none.
    pub yours_x_px: (f64, f64),
    /// x of the plot, left and right.
    pub plot_x_px: (f64, f64),
    /// x of 0 °C in the plot, left of it where the axis begins warmer.
    pub zero_x_px: f64,
    /// Pixels per °C in the plot.
    pub px_per_c: f64,
    /// x of the strip, left and right; equal when there is none.
    pub strip_x_px: (f64, f64),
    /// x of the middle column, left and right; equal when there is none.
    pub middle_x_px: (f64, f64),
    /// Grips, top to bottom.
    pub grips: Vec<GripPlace>,
    /// Pixel of each reading of `Look.readings`; NaN where it cannot be drawn.
    pub points_px: Vec<(f64, f64)>,
}

/// Where one grip stands.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct GripPlace {
    /// "mixed", "thermocline", "deep", or the id of the question's field.
    pub id: String,
    /// y of its middle, parted from a neighbour that is too close.
    pub y_px: f64,
    /// y of its depth; `y_px` while it is unset.
    pub true_y_px: f64,
    /// Not placed yet.
    pub hollow: bool,
}

impl From<ThemeName> for Theme {
    fn from(name: ThemeName) -> Self {
        match name {
            ThemeName::Day => Self::Day,
            ThemeName::Night => Self::Night,
            ThemeName::Sunlight => Self::Sunlight,
            ThemeName::Projector => Self::Projector,
        }
    }
}

impl From<LayoutName> for Layout {
    fn from(name: LayoutName) -> Self {
        match name {
            LayoutName::Log => Self::Log,
            LayoutName::Wide => Self::Wide,
            LayoutName::Narrow => Self::Narrow,
            LayoutName::Phone => Self::Phone,
        }
    }
}

impl PictureRequest {
    fn size(&self) -> Size {
        Size {
            width_px: self.width_px,
            height_px: self.height_px,
            root_px: self.root_px,
            scale: self.scale,
            layout: self.layout.into(),
        }
    }
}

/// A notebook's picture before it is drawn.
struct Composed {
    scene: Scene,
    picture: Picture,
}

fn compose(notebook: &Notebook, request: &PictureRequest, ranges: Option<&str>) -> Composed {
    let prepared = prepare_with(notebook, ranges);
    let mut scene = scene(notebook, &prepared, request.screen);
    if request.by_hand && !scene.by_hand {
        let sheet = prepared.context(notebook).sheet;
        scene = Scene { by_hand: true, guess: by_hand::shown(&sheet.by_hand), ..scene };
    }
    let picture = shown::picture(notebook, &prepared, &scene, request);
    Composed { scene, picture }
}

/// Every word of the picture of a screen.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn words(
    notebook: &str,
    screen: Ts<Screen>,
    ranges: Option<String>,
) -> Result<Ts<PictureWords>, JsError> {
    let notebook = read(notebook)?;
    let screen: Screen = screen.to_rust()?;
    let prepared: Prepared = prepare_with(&notebook, ranges.as_deref());
    let scene = scene(&notebook, &prepared, screen);
    let look = look_with(&notebook, &prepared);
    let explained = shown::explained(&prepared.analysis, &scene);
    large_view(&words::words(&prepared.analysis, &scene, &look, screen, explained))
}

/// Draws a picture on a canvas of the page (sets the size of its backing) and says where things stand.
///
/// # Errors
/// When the text is no notebook or the canvas cannot be drawn on.
#[wasm_bindgen]
pub fn draw(
    canvas: HtmlCanvasElement,
    notebook: &str,
    request: Ts<PictureRequest>,
    ranges: Option<String>,
) -> Result<Ts<PlacementView>, JsError> {
    let notebook = read(notebook)?;
    let request: PictureRequest = request.to_rust()?;
    let Composed { scene, picture } = compose(&notebook, &request, ranges.as_deref());
    let size = request.size();
    let backend =
        canvas::Canvas::new(canvas, (size.width_px, size.height_px), size.scale).ok_or_else(no_canvas)?;
    let words = request.words.to_words();
    let placement =
        layercast_chart::draw(backend, &picture, request.theme.into(), size, &words, Surface::Canvas)?;
    view(&placement_view(placement, &picture, &scene))
}

/// Draws a small picture of a question on a canvas of the page (sets the size of its backing).
///
/// # Errors
/// When the canvas cannot be drawn on.
#[wasm_bindgen]
pub fn draw_small(canvas: HtmlCanvasElement, request: Ts<SmallRequest>) -> Result<(), JsError> {
    let request: SmallRequest = request.to_rust()?;
    let backend = canvas::Canvas::new(canvas, (request.width_px, request.height_px), request.scale)
        .ok_or_else(no_canvas)?;
    let size = Size {
        width_px: request.width_px,
        height_px: request.height_px,
        root_px: request.root_px,
        scale: request.scale,
        layout: Layout::Phone,
    };
    let picture = SmallPicture {
        curve: request.curve,
        own: request.own,
        depth_m: request.depth_m,
        temp_c: (request.low_c, request.high_c),
    };
    layercast_chart::draw_small(backend, &picture, request.theme.into(), size, Surface::Canvas)?;
    Ok(())
}

/// What to say where nothing can be drawn.
pub(crate) fn no_canvas() -> JsError {
    JsError::new("this browser gives no canvas to draw on")
}

/// The same picture as an SVG document with a title, for saving: with the student's grips, without the cursor.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn svg(
    notebook: &str,
    request: Ts<PictureRequest>,
    title: &str,
    ranges: Option<String>,
) -> Result<String, JsError> {
    let notebook = read(notebook)?;
    let request: PictureRequest = request.to_rust()?;
    let Composed { mut picture, .. } = compose(&notebook, &request, ranges.as_deref());
    picture.grips = true;
    picture.cursor = None;
    let words = request.words.to_words();
    let (document, _) = layercast_chart::svg(&picture, request.theme.into(), request.size(), &words, title)?;
    Ok(document)
}

fn placement_view(placement: Placement, picture: &Picture, scene: &Scene) -> PlacementView {
    let grips = grips(&placement, picture, scene);
    let ((left, right), (low_c, high_c)) = (placement.plot_x_px, placement.temp_c);
    let px_per_c = (right - left) / (high_c - low_c);
    PlacementView {
        zero_x_px: left - low_c * px_per_c,
        px_per_c,
        surface_y_px: placement.surface_y_px,
        px_per_m: placement.px_per_m,
        max_depth_m: placement.max_depth_m,
        yours_x_px: placement.yours_x_px,
        plot_x_px: placement.plot_x_px,
        strip_x_px: placement.strip_x_px,
        middle_x_px: placement.middle_x_px,
        grips,
        points_px: placement.points_px,
    }
}

/// Where the grips stand: those of the question's fields, else the three marks.
fn grips(placement: &Placement, picture: &Picture, scene: &Scene) -> Vec<GripPlace> {
    let place = |id: &str, y_px: Option<f64>, depth_m: Option<f64>| {
        y_px.map(|y_px| GripPlace {
            id: id.to_owned(),
            y_px,
            true_y_px: depth_m.map_or(y_px, |depth_m| placement.surface_y_px + depth_m * placement.px_per_m),
            hollow: depth_m.is_none(),
        })
    };
    let [first, second, third] = placement.grips_y_px;
    let places = match (scene.grips.as_deref(), &picture.marks) {
        (Some([(id, depth_m)]), _) => vec![place(id, second, *depth_m)],
        (Some([(from, from_m), (to, to_m)]), _) => {
            let (mut from_y, mut to_y) = match placement.from_to_y_px {
                Some((upper, lower)) => (Some(upper), Some(lower)),
                None => (first, third),
            };
            // The picture has the upper end first; a reader may have them the other way round.
            if placement.from_to_y_px.is_some() && from_m > to_m {
                std::mem::swap(&mut from_y, &mut to_y);
            }
            vec![place(from, from_y, *from_m), place(to, to_y, *to_m)]
        }
        (_, Some(marks)) => {
            let depth_m = |mark: Mark| match mark {
                Mark::At { depth_m, .. } => Some(depth_m),
                Mark::Unset | Mark::Refused => None,
            };
            vec![
                place("mixed", first, depth_m(marks.mixed)),
                place("thermocline", second, depth_m(marks.thermocline)),
                place("deep", third, depth_m(marks.deep)),
            ]
        }
        (_, None) => Vec::new(),
    };
    places.into_iter().flatten().collect()
}
