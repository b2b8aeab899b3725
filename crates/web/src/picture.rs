//! Pictures: what a screen's scene and the analysis make of a notebook, as the chart draws it.

use layercast_lesson::document::Screen;
use layercast_lesson::view::Said;
use serde::{Deserialize, Serialize};
use tsify::{Ts, Tsify};
use wasm_bindgen::prelude::*;
use web_sys::HtmlCanvasElement;

/// Every word of a picture, to be rendered by the page and given back as [`PictureText`], name by name.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct PictureWords {
    /// Single words.
    pub one: std::collections::BTreeMap<String, Said>,
}

/// The words of [`PictureWords`] in the reader's language.
#[derive(Clone, Debug, PartialEq, Deserialize, Tsify)]
#[tsify(missing_as_null)]
pub struct PictureText {
    /// Decimal sign of the reader's region.
    pub decimal: String,
}

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
    /// The rule in hand: flat index over the rows of `Look.profile.rules`.
    pub rule: Option<usize>,
    /// Its words.
    pub words: PictureText,
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

/// Every word of the picture of a screen.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn words(notebook: &str, screen: Ts<Screen>) -> Result<Ts<PictureWords>, JsError> {
    let _: Screen = screen.to_rust()?;
    Err(JsError::new(notebook))
}

/// Draws a picture on a canvas of the page (sets the canvas's own size) and says where things stand.
///
/// # Errors
/// When the text is no notebook or the canvas cannot be drawn on.
#[wasm_bindgen]
pub fn draw(
    canvas: HtmlCanvasElement,
    notebook: &str,
    request: Ts<PictureRequest>,
) -> Result<Ts<PlacementView>, JsError> {
    let _: PictureRequest = request.to_rust()?;
    canvas.set_width(1);
    Err(JsError::new(notebook))
}

/// The same picture as an SVG document with a title, for saving.
///
/// # Errors
/// When the text is no notebook.
#[wasm_bindgen]
pub fn svg(notebook: &str, request: Ts<PictureRequest>, title: &str) -> Result<String, JsError> {
    let _: PictureRequest = request.to_rust()?;
    Err(JsError::new(title))
}
