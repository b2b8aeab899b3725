//! The words of a picture: as messages for the page to render, and as rendered text for the chart.

use layercast_chart::Words;
use layercast_core::{Analysis, Message, State, Thermocline, WarmLayerToday};
use layercast_lesson::document::Screen;
use layercast_lesson::numbers::{Range, WithNum, middle};
use layercast_lesson::scene::Scene;
use layercast_lesson::view::{Look, Said, SaidArg};
use serde::{Deserialize, Serialize};
use tsify::Tsify;

/// Both types name the same words: messages on the way out, text on the way back.
macro_rules! picture_words {
    ($($(#[$doc:meta])* $name:ident: $said:ty | $text:ty,)*) => {
        /// Every word of a picture, to be rendered by the page and given back as [`PictureText`], name by name.
        #[derive(Clone, Debug, PartialEq, Serialize, Tsify)]
        #[tsify(missing_as_null)]
        pub struct PictureWords {
            $($(#[$doc])* pub $name: $said,)*
        }

        /// The words of [`PictureWords`] in the reader's language, and the reader's decimal sign.
        #[derive(Clone, Debug, PartialEq, Deserialize, Tsify)]
        #[tsify(missing_as_null)]
        pub struct PictureText {
            /// Decimal sign of the reader's region.
            pub decimal: String,
            $($(#[$doc])* pub $name: $text,)*
        }
    };
}

picture_words! {
    /// Head of the depth axis.
    depth: Said | String,
    /// Head of the plot.
    temperature: Said | String,
    /// Heads of the strip.
    lost: Said | String,
    /// See `lost`.
    gained: Said | String,
    /// See `lost`.
    per_metre: Said | String,
    /// See `lost`; on a phone.
    per_metre_short: Said | String,
    /// Head of the student's column.
    yours: Said | String,
    /// Head of the rules' column.
    by_the_rules: Said | String,
    /// The same on a phone.
    rules: Said | String,
    /// Head of the column of means.
    mean: Said | String,
    /// Bands of the student's column.
    mixed: Said | String,
    /// See `mixed`.
    steep: Said | String,
    /// See `mixed`.
    deep: Said | String,
    /// Layer and gloss.
    epilimnion: (Said, Said) | (String, String),
    /// Layer and gloss.
    metalimnion: (Said, Said) | (String, String),
    /// Layer and gloss.
    hypolimnion: (Said, Said) | (String, String),
    /// Key.
    going_down: Said | String,
    /// Key.
    coming_up: Said | String,
    /// Key.
    mean_of_two: Said | String,
    /// Key.
    reading: Said | String,
    /// Key.
    otherwise: Said | String,
    /// On the flap, as lines.
    covered: Vec<Said> | Vec<String>,
    /// On the line, longest first; empty while it is covered.
    thermocline: Vec<Said> | Vec<String>,
    /// Its range; absent while it is covered.
    range: Option<Said> | String,
    /// The range alone.
    range_short: Option<Said> | String,
    /// On the mixed layer's line; absent while it is covered.
    mixed_to: Option<Said> | String,
    /// In a column without three layers, as lines.
    column_words: Vec<Said> | Vec<String>,
    /// In its lower part.
    column_lower: Vec<Said> | Vec<String>,
    /// In the column beside a second result, as lines.
    column_warm_today: Vec<Said> | Vec<String>,
    /// On the line of that result.
    warm_layer_today: Said | String,
    /// Gloss of a steep layer that was not left.
    goes_on: Said | String,
    /// At the foot of a picture without a bed.
    last_reading: Said | String,
    /// In an empty plot, as lines.
    empty: Vec<Said> | Vec<String>,
    /// At an inversion.
    colder_than_below: Said | String,
    /// In the student's column when all is refused.
    no_layers: Said | String,
    /// In the strip of mixed water, as lines.
    one_per_metre: Vec<Said> | Vec<String>,
    /// At a depth with one reading left out.
    one_left_out: Said | String,
    /// At a depth with more.
    several_left_out: Said | String,
    /// Drop and thickness of the step that is explained; empty while none is.
    step: Vec<Said> | Vec<String>,
    /// Other rules with their depths, in the order of `Look.profile.rules`; absent where a rule finds none.
    rule_lines: Vec<Option<Said>> | Vec<String>,
}

/// One step as it is explained: °C lost (or gained) and metres.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(super) struct Explained {
    pub drop_c: f64,
    pub thickness_m: f64,
}

fn one(id: &'static str) -> Said {
    Message::new(id).into()
}

fn lines(ids: &[&'static str]) -> Vec<Said> {
    ids.iter().copied().map(one).collect()
}

/// The words of one picture. What is covered by `scene` is in none of them.
pub(super) fn words(
    analysis: &Analysis,
    scene: &Scene,
    look: &Look,
    screen: Screen,
    explained: Option<Explained>,
) -> PictureWords {
    let line = line(analysis, scene);
    let column = column(analysis, scene);
    PictureWords {
        depth: one("picture-depth"),
        temperature: one("picture-temperature"),
        lost: one("picture-lost"),
        gained: one("picture-gained"),
        per_metre: one("picture-per-metre"),
        per_metre_short: one("picture-per-metre-short"),
        yours: one("picture-yours"),
        by_the_rules: one("picture-by-the-rules"),
        rules: one("picture-rules"),
        mean: one("picture-mean"),
        mixed: one("picture-mixed"),
        steep: one("picture-steep"),
        deep: one("picture-deep"),
        epilimnion: (one("picture-epilimnion"), one("picture-epilimnion-gloss")),
        metalimnion: (one("picture-metalimnion"), one("picture-metalimnion-gloss")),
        hypolimnion: (one("picture-hypolimnion"), one("picture-hypolimnion-gloss")),
        going_down: one("picture-going-down"),
        coming_up: one("picture-coming-up"),
        mean_of_two: one("picture-mean-of-two"),
        otherwise: one("picture-otherwise"),
        reading: one("picture-reading"),
        covered: if scene.until_you_have_it {
            lines(&["picture-covered-have-1", "picture-covered-have-2", "picture-covered-have-3"])
        } else {
            lines(&["picture-covered-check-1", "picture-covered-check-2", "picture-covered-check-3"])
        },
        thermocline: line.names,
        range: line.range,
        range_short: line.range_short,
        mixed_to: mixed_to(analysis, scene),
        column_words: column.words,
        column_lower: column.lower,
        column_warm_today: lines(&["picture-warm-today-1", "picture-warm-today-2"]),
        warm_layer_today: one("picture-warm-layer-today"),
        goes_on: one("picture-goes-on"),
        last_reading: one("picture-last-reading"),
        empty: lines(&["picture-empty-1", "picture-empty-2"]),
        colder_than_below: one("picture-colder-than-below"),
        no_layers: one("picture-no-layers"),
        one_per_metre: lines(&["picture-one-per-metre-1", "picture-one-per-metre-2"]),
        one_left_out: one("picture-one-left-out"),
        several_left_out: one("picture-several-left-out"),
        step: explained.map(step).unwrap_or_default(),
        rule_lines: if screen == Screen::Profile { rule_lines(look) } else { Vec::new() },
    }
}

fn step(step: Explained) -> Vec<Said> {
    let drop = Message::new("picture-degrees").temp("temp", step.drop_c);
    vec![drop.into(), Message::new("picture-metres").depth("depth", step.thickness_m).into()]
}

fn rule_lines(look: &Look) -> Vec<Option<Said>> {
    let rows = look.profile.rules.iter().flat_map(|group| &group.rows);
    rows.map(|row| {
        let depth = row.depth?;
        let mut said: Said = Message::new("picture-rule").num("depth", depth).into();
        said.args.insert("rule".to_owned(), SaidArg::Message { said: Box::new(row.name.clone()) });
        Some(said)
    })
    .collect()
}

/// Words on the picture's line.
#[derive(Default)]
struct LineWords {
    names: Vec<Said>,
    range: Option<Said>,
    range_short: Option<Said>,
}

fn line(analysis: &Analysis, scene: &Scene) -> LineWords {
    if !scene.shown.thermocline {
        return LineWords::default();
    }
    let only_today = analysis.warm_layer_today.filter(|today| today.only);
    match (analysis.thermocline, analysis.fastest_warming, only_today) {
        (Some(found), _, _) => named(&found, "picture-thermocline", "picture-thermocline-name"),
        (_, Some(found), _) => named(&found, "picture-warms-fastest", "picture-warms-fastest-name"),
        (_, _, Some(today)) => named(&as_line(&today), "picture-today", "picture-warm-layer-today"),
        _ => LineWords::default(),
    }
}

/// Value and span, as the other lines have them.
fn as_line(today: &WarmLayerToday) -> Thermocline {
    Thermocline {
        value_m: today.value_m,
        step_top_m: today.span_top_m,
        step_bottom_m: today.span_bottom_m,
        gradient_c_per_m: 0.0,
        span_top_m: today.span_top_m,
        span_bottom_m: today.span_bottom_m,
        in_one_piece: true,
        ambiguous: false,
        tellable: true,
    }
}

fn named(found: &Thermocline, with_depth: &'static str, name: &'static str) -> LineWords {
    let span = Range::of_marks(found.span_top_m, found.span_bottom_m);
    let range = |id: &'static str| Some(Message::new(id).num("from", span.from).num("to", span.to).into());
    let depth = middle(found.value_m);
    LineWords {
        names: vec![
            Message::new(with_depth).num("depth", depth).into(),
            one(name),
            Message::new("picture-metres").num("depth", depth).into(),
        ],
        range: range(if found.tellable { "picture-could-be" } else { "picture-anywhere" }),
        range_short: range("picture-range"),
    }
}

fn mixed_to(analysis: &Analysis, scene: &Scene) -> Option<Said> {
    use layercast_core::MixedLayer;
    match analysis.mixed_layer.filter(|_| scene.shown.mixed_layer)? {
        MixedLayer::At { value_m, low_m, high_m, .. } => {
            let depth = Range::of_computed(low_m, high_m).value(value_m);
            Some(Message::new("picture-mixed-to").num("depth", depth).into())
        }
        MixedLayer::AtLeast { .. } => None,
    }
}

/// Words in the rules' column where there are no three layers.
#[derive(Default)]
struct ColumnWords {
    words: Vec<Said>,
    lower: Vec<Said>,
}

fn column(analysis: &Analysis, scene: &Scene) -> ColumnWords {
    if !super::shown::all(&scene.shown) {
        return ColumnWords::default();
    }
    let words = |ids: &[&'static str]| ColumnWords { words: lines(ids), lower: Vec::new() };
    let tellable = analysis.thermocline.is_none_or(|line| line.tellable);
    let only_today = analysis.warm_layer_today.is_some_and(|today| today.only);
    match analysis.state {
        _ if !tellable => words(&["picture-cannot-tell"]),
        State::Mixed if super::shown::is_mixed_by_density(analysis) => {
            words(&["picture-by-density-1", "picture-by-density-2", "picture-by-density-3"])
        }
        State::Mixed => words(&["picture-mixed-all-1", "picture-mixed-all-2", "picture-mixed-all-3"]),
        State::Weak => words(&["picture-weak-1", "picture-weak-2"]),
        State::Unstable => words(&["picture-unstable-1", "picture-unstable-2", "picture-unstable-3"]),
        State::TooFew => words(&["picture-cannot-tell"]),
        State::Inverse => ColumnWords {
            words: lines(&["picture-under-ice-1", "picture-under-ice-2"]),
            lower: match analysis.profile.last() {
                Some(level) if (3.0..=5.0).contains(&level.temp_c) => {
                    lines(&["picture-densest-1", "picture-densest-2"])
                }
                _ => lines(&["picture-denser-1", "picture-denser-2"]),
            },
        },
        State::Stratified if only_today => ColumnWords {
            words: lines(&["picture-warm-only"]),
            lower: lines(&["picture-even-1", "picture-even-2"]),
        },
        State::Stratified => ColumnWords::default(),
    }
}

impl PictureText {
    /// The words as the chart takes them.
    pub(super) fn to_words(&self) -> Words {
        // Lines that a language does not need are empty.
        let lines = |lines: &[String]| lines.iter().filter(|line| !line.trim().is_empty()).cloned().collect();
        Words {
            decimal: self.decimal.chars().next().unwrap_or('.'),
            depth: self.depth.clone(),
            temperature: self.temperature.clone(),
            lost: self.lost.clone(),
            gained: self.gained.clone(),
            per_metre: self.per_metre.clone(),
            per_metre_short: self.per_metre_short.clone(),
            yours: self.yours.clone(),
            by_the_rules: self.by_the_rules.clone(),
            rules: self.rules.clone(),
            mean: self.mean.clone(),
            mixed: self.mixed.clone(),
            steep: self.steep.clone(),
            deep: self.deep.clone(),
            epilimnion: self.epilimnion.clone(),
            metalimnion: self.metalimnion.clone(),
            hypolimnion: self.hypolimnion.clone(),
            going_down: self.going_down.clone(),
            coming_up: self.coming_up.clone(),
            mean_of_two: self.mean_of_two.clone(),
            otherwise: self.otherwise.clone(),
            reading: self.reading.clone(),
            covered: lines(&self.covered),
            thermocline: self.thermocline.clone(),
            range: self.range.clone(),
            mixed_to: self.mixed_to.clone(),
            column_words: lines(&self.column_words),
            column_lower: lines(&self.column_lower),
            warm_layer_today: self.warm_layer_today.clone(),
            goes_on: self.goes_on.clone(),
            last_reading: self.last_reading.clone(),
            empty: lines(&self.empty),
            colder_than_below: self.colder_than_below.clone(),
            no_layers: self.no_layers.clone(),
            range_short: self.range_short.clone(),
            column_warm_today: lines(&self.column_warm_today),
            one_per_metre: lines(&self.one_per_metre),
        }
    }
}
