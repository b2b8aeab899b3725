//! The class: a text for the page, as a notebook is.

use crate::picture::{ThemeName, canvas, shown};
use crate::view::large_view;
use js_sys::{Array, Uint8Array};
use layercast_chart::{
    self as chart, ClassPicture, ClassWords, Core, Curve, CurveLook, Layout, Size, Surface,
};
use layercast_core::State;
use layercast_lesson::class::export::{self, Options, Slip};
use layercast_lesson::class::import::{Counts, Dropped, Outcome, import};
use layercast_lesson::class::view::ClassView;
use layercast_lesson::class::why::{Against, WhyView, why};
use layercast_lesson::class::{self, Class, ClassAction, Room, cores, middle};
use layercast_lesson::maker;
use layercast_lesson::scene::Shown;
use layercast_lesson::view::Said;
use serde::{Deserialize, Serialize};
use tsify::{Ts, Tsify};
use wasm_bindgen::prelude::*;
use web_sys::HtmlCanvasElement;

/// What became of everything that was dropped.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct Taken {
    /// The class with it.
    pub class: String,
    /// One row for each thing.
    pub rows: Vec<TakenRow>,
    /// New, same again, newer than, needs a look, not ours.
    pub counts: [usize; 5],
}

/// One thing that was dropped.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct TakenRow {
    /// Its name, with the zips it was in.
    pub name: String,
    /// What became of it.
    pub outcome: OutcomeName,
    /// Why, most important first.
    pub why: Vec<Said>,
}

/// What became of a thing.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Serialize, Tsify)]
#[tsify(missing_as_null)]
#[serde(rename_all = "snake_case")]
pub enum OutcomeName {
    /// New.
    New,
    /// Here already.
    SameAgain,
    /// A newer copy.
    NewerThan,
    /// To be looked at.
    NeedsALook,
    /// Not a hand-in of this class and lesson.
    NotOurs,
}

/// An empty class.
#[wasm_bindgen]
pub fn new_class() -> String {
    Class::new("", None).to_json()
}

/// Whether a text is a class's file, as its text of today's version.
#[wasm_bindgen]
pub fn open_class(text: &str) -> Option<String> {
    Class::from_json(text).ok().map(|class| class.to_json())
}

/// Takes in what was dropped: `names` and `files` (each a `Uint8Array`) side by side.
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_take(class: &str, names: Vec<String>, files: &Array) -> Result<Ts<Taken>, JsError> {
    let bytes: Vec<Vec<u8>> = files.iter().map(|file| Uint8Array::new(&file).to_vec()).collect();
    let batch: Vec<Dropped> = names.iter().zip(&bytes).map(|(name, bytes)| Dropped { name, bytes }).collect();
    let (class, rows) = import(&read(class)?, &batch);
    let Counts { new, same_again, newer_than, needs_a_look, not_ours } = Counts::of(&rows);
    let row = |row: class::import::Row| TakenRow {
        name: row.name,
        outcome: match row.outcome {
            Outcome::New => OutcomeName::New,
            Outcome::SameAgain => OutcomeName::SameAgain,
            Outcome::NewerThan => OutcomeName::NewerThan,
            Outcome::NeedsALook => OutcomeName::NeedsALook,
            Outcome::NotOurs => OutcomeName::NotOurs,
        },
        why: row.why.into_iter().map(Said::from).collect(),
    };
    large_view(&Taken {
        class: class.to_json(),
        rows: rows.into_iter().map(row).collect(),
        counts: [new, same_again, newer_than, needs_a_look, not_ours],
    })
}

/// Does one thing to a class and gives the new one.
///
/// # Errors
/// When the text is no class or the action is none of ours.
#[wasm_bindgen]
pub fn class_act(class: &str, action: Ts<ClassAction>) -> Result<String, JsError> {
    Ok(class::act(&read(class)?, &action.to_rust()?).to_json())
}

/// Gives a class the teacher's own lesson; another text changes nothing.
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_lesson(class: &str, lesson: &str) -> Result<String, JsError> {
    let class = read(class)?;
    Ok(match maker::open(lesson) {
        Some(opened) => class.with_lesson(opened.lesson).to_json(),
        None => class.to_json(),
    })
}

/// Everything the page shows of a class. `against`: content id of a cast that is set against the middle of the rest.
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_look(class: &str, against: Option<String>) -> Result<Ts<ClassView>, JsError> {
    large_view(&class::look(&read(class)?, against.as_deref()))
}

/// Why two casts differ, or one and the rest (`other` is not given).
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_why(
    class: &str,
    one: &str,
    other: Option<String>,
    minutes_apart: Option<f64>,
) -> Result<Ts<WhyTold>, JsError> {
    let against = Against { one, other: other.as_deref(), minutes_apart };
    large_view(&WhyTold { why: why(&read(class)?, against) })
}

/// Why two casts differ.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct WhyTold {
    /// `None` for casts that are not there.
    pub why: Option<WhyView>,
}

/// Marks as CSV: one line a question, or one a seat (`wide`). `students`: seats and who sits there, used here and kept nowhere.
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_csv(class: &str, wide: bool, comma: bool, students: String) -> Result<String, JsError> {
    let (class, options) = (read(class)?, Options { comma, students });
    Ok(if wide { export::wide(&class, &options) } else { export::long(&class, &options) })
}

/// What goes back, one slip a seat.
///
/// # Errors
/// When the text is no class.
#[wasm_bindgen]
pub fn class_slips(class: &str) -> Result<Ts<Slips>, JsError> {
    large_view(&Slips { slips: export::slips(&read(class)?) })
}

/// What goes back.
#[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
#[tsify(missing_as_null)]
pub struct Slips {
    /// One a seat.
    pub slips: Vec<Slip>,
}

/// Which picture of a class, how large, in which words.
#[derive(Clone, Debug, PartialEq, Deserialize, Tsify)]
#[tsify(missing_as_null)]
pub struct ClassRequest {
    /// Which.
    pub of: ClassPart,
    /// Content id of the cast in hand: against the rest.
    pub against: Option<String>,
    /// Colours and weights.
    pub theme: ThemeName,
    /// Width, CSS pixels.
    pub width_px: f64,
    /// Height, CSS pixels.
    pub height_px: f64,
    /// Root font size, CSS pixels.
    pub root_px: f64,
    /// Backing pixels per CSS pixel.
    pub scale: f64,
    /// Its words.
    pub words: ClassPictureWords,
}

/// Which picture of a class.
#[derive(Clone, Copy, Debug, PartialEq, Eq, Deserialize, Tsify)]
#[tsify(missing_as_null)]
#[serde(rename_all = "snake_case")]
pub enum ClassPart {
    /// What was read: curves, all alike or one against the rest.
    Curves,
    /// The groups' own marks on empty cores.
    Marks,
    /// Cores with their layers.
    Layers,
    /// Middle and range of the class.
    Middle,
}

/// The words of a class picture.
#[derive(Clone, Debug, PartialEq, Deserialize, Tsify)]
#[tsify(missing_as_null)]
pub struct ClassPictureWords {
    /// Decimal sign of the reader's region.
    pub decimal: char,
    /// "Depth,", "m".
    pub depth: Vec<String>,
    /// "Temperature, °C".
    pub temperature: String,
    /// "no", "thermocline", "here".
    pub none: Vec<String>,
    /// "none".
    pub none_short: String,
    /// "too few", "readings".
    pub few: Vec<String>,
    /// "can’t", "tell".
    pub cannot_tell: Vec<String>,
    /// "?".
    pub cannot_tell_short: String,
}

/// Draws a picture of a class on a canvas of the page.
///
/// # Errors
/// When the text is no class or the canvas cannot be drawn on.
#[wasm_bindgen]
pub fn class_draw(canvas: HtmlCanvasElement, class: &str, request: Ts<ClassRequest>) -> Result<(), JsError> {
    let class = read(class)?;
    let request: ClassRequest = request.to_rust()?;
    let picture = picture(&class, &request);
    let size = Size {
        width_px: request.width_px,
        height_px: request.height_px,
        root_px: request.root_px,
        scale: request.scale,
        layout: Layout::Wide,
    };
    let backing = |css_px: f64| (css_px * size.scale).round().clamp(1.0, 16_384.0) as u32;
    canvas.set_width(backing(size.width_px));
    canvas.set_height(backing(size.height_px));
    let backend =
        canvas::Canvas::new(canvas).ok_or_else(|| JsError::new("this browser gives no canvas to draw on"))?;
    let ClassPictureWords { decimal, depth, temperature, .. } = request.words;
    let words = ClassWords { decimal, depth, temperature };
    chart::draw_class(backend, &picture, request.theme.into(), size, &words, Surface::Canvas)?;
    Ok(())
}

fn picture(class: &Class, request: &ClassRequest) -> ClassPicture {
    let room = Room::of(class);
    let all = cores(&room);
    let in_hand = |id: &str| request.against.as_deref() == Some(id);
    match request.of {
        ClassPart::Middle => {
            let levels = middle(&room, &all, request.against.as_deref());
            let level = |l: &class::ClassLevel| chart::ClassLevel {
                depth_m: l.depth_m,
                low_c: l.low_c,
                middle_c: l.middle_c,
                high_c: l.high_c,
            };
            let curves = all.iter().filter(|core| in_hand(&core.cast_id)).filter_map(|core| {
                Some(Curve {
                    name: core.name.clone(),
                    points: points(core.of(&room)?),
                    look: CurveLook::InHand,
                })
            });
            ClassPicture::Curves { curves: curves.collect(), levels: levels.iter().map(level).collect() }
        }
        ClassPart::Curves => {
            let look = |id: &str| match &request.against {
                None => CurveLook::Plain,
                Some(_) if in_hand(id) => CurveLook::InHand,
                Some(_) => CurveLook::Faint,
            };
            let curve = |core: &class::Core| {
                let points = points(core.of(&room)?);
                Some(Curve { name: core.name.clone(), points, look: look(&core.cast_id) })
            };
            ClassPicture::Curves { curves: all.iter().filter_map(curve).collect(), levels: Vec::new() }
        }
        ClassPart::Marks | ClassPart::Layers => {
            let layers = request.of == ClassPart::Layers;
            let shared_m = layers.then(|| class::spans(&all).shared_m).flatten();
            let core = |core: &class::Core| one(&room, core, layers, &request.words);
            ClassPicture::Cores { cores: all.iter().filter_map(core).collect(), shared_m }
        }
    }
}

fn points(work: &class::Work) -> Vec<(f64, f64)> {
    work.analysis.profile.iter().map(|level| (level.depth_m, level.temp_c)).collect()
}

fn one(room: &Room, core: &class::Core, layers: bool, words: &ClassPictureWords) -> Option<Core> {
    let work = core.of(room)?;
    let found = &work.analysis;
    let tellable = found.thermocline.is_none_or(|line| line.tellable);
    let seat = room.seats.iter().find(|seat| core.members.contains(&seat.member.key));
    let marked = seat.and_then(|seat| seat.paper.hand_in.sheet.marks.thermocline.depth_m);
    let number = core.number.filter(|_| tellable && layers);
    let (lines, short) = match (layers, tellable) {
        (false, _) => (Vec::new(), String::new()),
        (true, true) if found.state == State::TooFew => (words.few.clone(), words.cannot_tell_short.clone()),
        (true, true) => (words.none.clone(), words.none_short.clone()),
        (true, false) => (words.cannot_tell.clone(), words.cannot_tell_short.clone()),
    };
    Some(Core {
        name: core.name.clone(),
        found: if layers { shown::found(found, &everything()) } else { None },
        last_m: found.profile.last().map_or(0.0, |level| level.depth_m),
        bed_m: work.cast.bed_m,
        number: number
            .map(|n| {
                format!("{:.*}", usize::from(n.decimals), n.value).replace('.', &words.decimal.to_string())
            })
            .unwrap_or_default(),
        words: lines,
        short,
        marked_m: marked.filter(|_| !layers),
    })
}

/// Nothing is covered in front of the class: the groups have handed in.
fn everything() -> Shown {
    Shown { steps: true, some_steps: Vec::new(), thermocline: true, mixed_layer: true, deep_layer: true }
}

fn read(class: &str) -> Result<Class, JsError> {
    Class::from_json(class).map_err(|_| JsError::new("this text is no class"))
}
