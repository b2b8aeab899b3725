//! The pictures of a class: what they need is worked out once a change, as a text, and drawn from that as often as wanted.

use crate::picture::{ThemeName, canvas, no_canvas, shown};
use layercast_chart::{
    self as chart, ClassPicture, ClassWords, Core, Curve, CurveLook, Found, Layout, Size, Surface,
};
use layercast_core::{Analysis, Metalimnion, State, Thermocline, WarmLayerToday};
use layercast_lesson::class::view::ClassView;
use layercast_lesson::class::{self, Room, cores, middle};
use layercast_lesson::numbers::middle as middle_num;
use serde::{Deserialize, Serialize};
use tsify::{Ts, Tsify};
use wasm_bindgen::prelude::*;
use web_sys::HtmlCanvasElement;

/// What the pictures of a class are drawn of: no more than they show.
#[derive(Serialize, Deserialize)]
struct Drawing {
    cores: Vec<Drawn>,
    shared_m: Option<(f64, f64)>,
    /// Depth, coldest, middle, warmest: of the class, or of the rest where a cast is in hand.
    levels: Vec<(f64, f64, f64, f64)>,
}

/// One cast.
#[derive(Serialize, Deserialize)]
struct Drawn {
    name: String,
    cast_id: String,
    points: Vec<(f64, f64)>,
    bed_m: Option<f64>,
    marked_m: Option<f64>,
    /// What its first sheet with a guess had guessed, depths strictly increasing.
    guess: Vec<(f64, f64)>,
    /// The thermocline and its decimals.
    number: Option<(f64, u8)>,
    /// Its temperatures look like °F.
    #[serde(default)]
    fahrenheit: bool,
    found: FoundOf,
}

/// The layers of a cast, as cores show them.
#[derive(Serialize, Deserialize)]
struct FoundOf {
    state: u8,
    mixed_by_density: bool,
    thermocline: Option<LineOf>,
    fastest_warming: Option<LineOf>,
    /// Top, bottom, cut off.
    metalimnion: Option<(f64, f64, bool)>,
    /// Value, top and bottom of its span, its edges; whether it is all there is.
    today: Option<([f64; 5], bool)>,
}

/// Value, top and bottom of the span, whether it can be told.
type LineOf = (f64, f64, f64, bool);

const STATES: [State; 6] =
    [State::Stratified, State::Weak, State::Mixed, State::Inverse, State::Unstable, State::TooFew];

impl FoundOf {
    fn of(analysis: &Analysis) -> Self {
        let line = |line: Thermocline| (line.value_m, line.span_top_m, line.span_bottom_m, line.tellable);
        let today = |today: WarmLayerToday| {
            let WarmLayerToday { value_m, span_top_m, span_bottom_m, top_m, bottom_m, only } = today;
            ([value_m, span_top_m, span_bottom_m, top_m, bottom_m], only)
        };
        let state = STATES.iter().position(|state| *state == analysis.state).unwrap_or_default();
        Self {
            state: u8::try_from(state).unwrap_or_default(),
            mixed_by_density: shown::is_mixed_by_density(analysis),
            thermocline: analysis.thermocline.map(line),
            fastest_warming: analysis.fastest_warming.map(line),
            metalimnion: analysis.metalimnion.map(|steep| (steep.top_m, steep.bottom_m, steep.cut_off)),
            today: analysis.warm_layer_today.map(today),
        }
    }

    fn state(&self) -> State {
        STATES.get(usize::from(self.state)).copied().unwrap_or(State::TooFew)
    }

    /// What no core shows is left as narrow as it can be.
    fn found(&self) -> Found {
        let line = |(value_m, span_top_m, span_bottom_m, tellable): LineOf| Thermocline {
            value_m,
            step_top_m: value_m,
            step_bottom_m: value_m,
            gradient_c_per_m: 0.0,
            span_top_m,
            span_bottom_m,
            in_one_piece: true,
            ambiguous: false,
            tellable,
        };
        let steep = |(top_m, bottom_m, cut_off): (f64, f64, bool)| Metalimnion {
            top_m,
            top_low_m: top_m,
            top_high_m: top_m,
            bottom_m,
            bottom_low_m: bottom_m,
            bottom_high_m: None,
            cut_off,
            from_the_first: false,
            layers: 1,
        };
        let today = |([value_m, span_top_m, span_bottom_m, top_m, bottom_m], only): ([f64; 5], bool)| {
            WarmLayerToday { value_m, span_top_m, span_bottom_m, top_m, bottom_m, only }
        };
        Found {
            state: self.state(),
            thermocline: self.thermocline.map(line),
            metalimnion: self.metalimnion.map(steep),
            mixed_layer: None,
            warm_layer_today: self.today.map(today),
            fastest_warming: self.fastest_warming.map(line),
            mixed_by_density: self.mixed_by_density,
        }
    }
}

/// The text that the pictures of a class are drawn from.
pub(crate) fn drawing(room: &Room, view: &ClassView, against: Option<&str>) -> String {
    let all = cores(room);
    let fahrenheit = |id: &str| view.casts.iter().any(|cast| cast.cast_id == id && cast.fahrenheit);
    let drawn = |core: &class::Core| {
        let work = core.of(room)?;
        let mut seats = room.seats.iter().filter(|seat| core.members.contains(&seat.member.key));
        let guess =
            seats.clone().map(|seat| seat.paper.hand_in.sheet.guessed()).find(|guess| guess.len() > 1);
        let mut guess = guess.unwrap_or_default();
        guess.dedup_by(|b, a| b.0 <= a.0);
        let seat = seats.next();
        Some(Drawn {
            name: core.name.clone(),
            cast_id: core.cast_id.clone(),
            points: work.analysis.profile.iter().map(|level| (level.depth_m, level.temp_c)).collect(),
            bed_m: work.cast.bed_m,
            marked_m: seat.and_then(|seat| seat.paper.hand_in.sheet.marks.thermocline.depth_m),
            guess,
            number: core.number.map(|number| (number.value, number.decimals)),
            fahrenheit: fahrenheit(&core.cast_id),
            found: FoundOf::of(&work.analysis),
        })
    };
    let levels = middle(room, &all, against);
    let drawing = Drawing {
        cores: all.iter().filter_map(drawn).collect(),
        shared_m: class::spans(&all).shared_m,
        levels: levels.iter().map(|l| (l.depth_m, l.low_c, l.middle_c, l.high_c)).collect(),
    };
    // Texts and numbers: writing them cannot fail.
    serde_json::to_string(&drawing).unwrap_or_default()
}

/// The same for casts that are nobody's: what stands over each, its analysis, where the line went slack.
pub(crate) fn drawing_of(casts: Vec<(String, Analysis, Option<f64>)>) -> String {
    let drawn = |(name, analysis, bed_m): (String, Analysis, Option<f64>)| Drawn {
        name,
        cast_id: String::new(),
        points: analysis.profile.iter().map(|level| (level.depth_m, level.temp_c)).collect(),
        bed_m,
        marked_m: None,
        guess: Vec::new(),
        number: analysis
            .thermocline
            .or(analysis.fastest_warming)
            .map(|line| (middle_num(line.value_m).value, 2)),
        fahrenheit: false,
        found: FoundOf::of(&analysis),
    };
    let cores = casts.into_iter().map(drawn).collect();
    serde_json::to_string(&Drawing { cores, shared_m: None, levels: Vec::new() }).unwrap_or_default()
}

/// Which picture of a class, how large, in which words.
#[derive(Clone, Debug, PartialEq, Deserialize, Tsify)]
#[tsify(missing_as_null)]
pub struct ClassRequest {
    /// Which.
    pub of: ClassPart,
    /// Content id of the cast in hand: against the rest.
    pub against: Option<String>,
    /// Content id of a second one, where two are compared.
    pub beside: Option<String>,
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
    /// What was guessed before anything was read.
    Guesses,
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
    /// "looks like", "°F".
    pub fahrenheit: Vec<String>,
    /// "middle": the name of the middle of the class.
    pub middle: String,
    /// "can’t", "tell".
    pub cannot_tell: Vec<String>,
    /// "?".
    pub cannot_tell_short: String,
}

/// Draws a picture of a class on a canvas of the page. `drawing`: as it came with the class.
///
/// # Errors
/// When the text is no drawing or the canvas cannot be drawn on.
#[wasm_bindgen]
pub fn class_draw(
    canvas: HtmlCanvasElement,
    drawing: &str,
    request: Ts<ClassRequest>,
) -> Result<(), JsError> {
    let drawing: Drawing =
        serde_json::from_str(drawing).map_err(|_| JsError::new("this text is no drawing of a class"))?;
    let request: ClassRequest = request.to_rust()?;
    let picture = picture(drawing, &request);
    let size = Size {
        width_px: request.width_px,
        height_px: request.height_px,
        root_px: request.root_px,
        scale: request.scale,
        layout: Layout::Wide,
    };
    let backend =
        canvas::Canvas::new(canvas, (size.width_px, size.height_px), size.scale).ok_or_else(no_canvas)?;
    let ClassPictureWords { decimal, depth, temperature, middle, .. } = request.words;
    let words = ClassWords { decimal, depth, temperature, middle };
    chart::draw_class(backend, &picture, request.theme.into(), size, &words, Surface::Canvas)?;
    Ok(())
}

fn picture(drawing: Drawing, request: &ClassRequest) -> ClassPicture {
    let Drawing { cores, shared_m, levels } = drawing;
    let in_hand = |core: &Drawn| {
        [&request.against, &request.beside].iter().any(|one| one.as_deref() == Some(core.cast_id.as_str()))
    };
    let curve = |core: Drawn, look| Curve { name: core.name, points: core.points, look };
    match request.of {
        ClassPart::Guesses => {
            let curve = |core: Drawn| Curve { name: core.name, points: core.guess, look: CurveLook::Guess };
            let guessed = cores.into_iter().filter(|core| !core.guess.is_empty());
            ClassPicture::Curves { curves: guessed.map(curve).collect(), levels: Vec::new() }
        }
        ClassPart::Middle => ClassPicture::Curves {
            curves: cores.into_iter().filter(in_hand).map(|core| curve(core, CurveLook::InHand)).collect(),
            levels: levels
                .into_iter()
                .map(|(depth_m, low_c, middle_c, high_c)| chart::ClassLevel {
                    depth_m,
                    low_c,
                    middle_c,
                    high_c,
                })
                .collect(),
        },
        ClassPart::Curves => {
            let look = |core: &Drawn| match &request.against {
                None => CurveLook::Plain,
                Some(_) if in_hand(core) => CurveLook::InHand,
                Some(_) => CurveLook::Faint,
            };
            let curve = |core: Drawn| {
                let look = look(&core);
                curve(core, look)
            };
            ClassPicture::Curves { curves: cores.into_iter().map(curve).collect(), levels: Vec::new() }
        }
        ClassPart::Marks | ClassPart::Layers => {
            let layers = request.of == ClassPart::Layers;
            let core = |core: Drawn| one(core, layers, &request.words);
            ClassPicture::Cores {
                cores: cores.into_iter().map(core).collect(),
                shared_m: shared_m.filter(|_| layers),
            }
        }
    }
}

fn one(core: Drawn, layers: bool, words: &ClassPictureWords) -> Core {
    let tellable = core.found.thermocline.is_none_or(|line| line.3);
    let number = core.number.filter(|_| tellable && layers);
    let (lines, short) = match (layers, tellable) {
        (false, _) => (Vec::new(), String::new()),
        (true, true) if core.fahrenheit => (words.fahrenheit.clone(), words.cannot_tell_short.clone()),
        (true, true) if core.found.state() == State::TooFew => {
            (words.few.clone(), words.cannot_tell_short.clone())
        }
        (true, true) => (words.none.clone(), words.none_short.clone()),
        (true, false) => (words.cannot_tell.clone(), words.cannot_tell_short.clone()),
    };
    Core {
        found: layers.then(|| core.found.found()),
        name: core.name,
        last_m: core.points.last().map_or(0.0, |point| point.0),
        bed_m: core.bed_m,
        number: number
            .map(|(value, decimals)| {
                format!("{value:.*}", usize::from(decimals)).replace('.', &words.decimal.to_string())
            })
            .unwrap_or_default(),
        words: lines,
        short,
        marked_m: core.marked_m.filter(|_| !layers),
    }
}
