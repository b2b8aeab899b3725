//! Kind 12: how thick is each layer, and what share of the depth is it? Judged on the student's own ends of kinds 9 and 11:
//! thickness within 0.1 m, shares within one in a hundred of the own thickness, together 100 ± 1.
//!
//! The steep layer is what lies between the other two, so that nothing is counted twice; the depth is that of the last
//! reading, or of the bed where it is known. Where the steep layer goes on below the last reading, "at least so thick" is
//! the answer, and nobody can say what share it has.

mod thickness;

use self::thickness::{LEAST_M, Layers, Thick, percent, thick};
use super::mixed_layer::MixedLayerEnd;
use super::steep_layer::{SteepLayer, class_layer_m, is_cut_off};
use crate::questions::Told;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, LAYERED, Line, Plan, Question,
    Uncovers, Verdict,
};
use crate::questions::ranges::almost;
use crate::questions::say::{Numbers, in_m, line, minus, result, rounded};
use crate::questions::text::{Fields, field, in_metres, short};
use crate::questions::water::{SLACK, Water};
use crate::view::SumLine;
use layercast_core::{Message, MixedLayer, State};

const OVERLAP: &str = "layers_overlap";
const BOTTOM: &str = "bottom_forgotten";

/// The steep layer ends in the cast.
const WHOLE: &str = "whole";
/// It goes on below the last reading.
const AT_LEAST: &str = "at_least";

/// The three thicknesses, and their shares.
const IDS: [&str; 3] = ["mixed", "steep", "deep"];
const SHARE_IDS: [&str; 3] = ["share_mixed", "share_steep", "share_deep"];

/// Give of a share, in hundredths; and of their sum.
const SHARE_GIVE: f64 = 1.0;
/// Two shares further apart than this can be told, in hundredths.
const SHARES_APART: f64 = 1.5;

/// Kind 12.
pub(crate) struct LayerShares;

impl LayerShares {
    fn judge_thickness(q: &Question, fields: &Fields) -> Judged {
        let layers = Layers::of(q.water);
        let at_least = field(fields, "way") == AT_LEAST;
        let given = match thick(fields, !at_least) {
            Ok(given) => given,
            Err(slip) => return *slip,
        };
        let Thick { mixed_m, steep_m, deep_m } = given;
        let yours =
            |id: &'static str, name: &str| Message::new(id).message("yours", in_metres(field(fields, name)));
        let mixed = layers.mixed(mixed_m);
        let steep = layers.steep(steep_m, mixed.then_some(mixed_m));
        let deep = deep_m.is_none_or(|x| layers.deep(x));
        if mixed && steep && deep {
            return match (layers.cut_off, at_least) {
                (true, false) => almost(Message::new("ask-12-cut-off")),
                (false, true) => Judged::not_yet(Message::new("ask-12-not-cut-off")),
                (_, at_least) => {
                    let accepted = Accepted {
                        stretch_m: Some((mixed_m, steep_m)),
                        value: deep_m,
                        ..Accepted::default()
                    };
                    let id = if at_least { "ask-12-yes-at-least" } else { "ask-12-yes" };
                    Judged::yes(Message::new(id), accepted)
                }
            };
        }
        let is_forgotten = deep_m.is_some_and(|x| x.abs() <= LEAST_M / 4.0);
        let is_overlap = layers.overlap(steep_m) || deep_m.is_some_and(|x| layers.whole(x));
        let right = IDS.into_iter().zip([mixed, steep, deep]).filter(|(_, right)| *right);
        let fine: Vec<&'static str> = right.map(|(id, _)| id).collect();
        match (is_overlap, is_forgotten) {
            (true, false) => {
                // Which two: the steep layer with the mixed one, else the deep one with both.
                let by_steep = layers.overlap(steep_m);
                let id = if by_steep { "ask-12-overlap" } else { "ask-12-overlap-deep" };
                return Judged { fine, ..Judged::idea(OVERLAP, Message::new(id)) };
            }
            (false, true) => return Judged { fine, ..Judged::idea(BOTTOM, Message::new("ask-12-bottom")) },
            _ => {}
        }
        let said = match (mixed, steep) {
            (false, _) => yours("ask-12-no-mixed", "mixed"),
            (true, false) => yours("ask-12-no-steep", "steep"),
            (true, true) => yours("ask-12-no-deep", "deep"),
        };
        let judged = if fine.len() == 2 { almost(said) } else { Judged::not_yet(said) };
        Judged { fine, ..judged }
    }

    fn judge_shares(q: &Question, fields: &Fields) -> Judged {
        let Some((mixed_m, steep_m)) = q.part(0).and_then(|a| a.stretch_m) else {
            return Judged::new(Verdict::Waits, Message::new("ask-12-waits"));
        };
        let Some(deep_m) = q.part(0).and_then(|a| a.value) else {
            return Judged::yes(Message::new("ask-12-yes-unknown"), Accepted::default());
        };
        let mut shares = [0.0; 3];
        for (share, id) in shares.iter_mut().zip(SHARE_IDS) {
            let text = field(fields, id);
            match percent(text) {
                Some(x) => *share = x,
                None => return Judged::slip(Message::new("ask-slip-number").text("yours", short(text))),
            }
        }
        let own = [mixed_m, steep_m, deep_m];
        let depths = Layers::of(q.water).depths_m;
        let of = |x: &[f64; 3], depth_m: f64| -> usize {
            x.iter().zip(own).filter(|(x, m)| (*x - 100.0 * m / depth_m).abs() <= SHARE_GIVE + SLACK).count()
        };
        let hits = |x: &[f64; 3]| depths.iter().map(|d| of(x, *d)).max().unwrap_or(0);
        let sum = shares.iter().sum::<f64>();
        let told = |id: &'static str| {
            Message::new(id).number("sum", rounded(sum, 1), if sum.fract().abs() < 0.05 { 0 } else { 1 })
        };
        if hits(&shares) == 3 {
            return if (sum - 100.0).abs() <= SHARE_GIVE + SLACK {
                Judged::yes(Message::new("ask-12-yes-shares"), Accepted::default())
            } else {
                almost(told("ask-12-sum"))
            };
        }
        if hits(&shares.map(|x| 100.0 * x)) == 3 {
            return Judged::slip(Message::new("ask-12-fraction"));
        }
        // Of the two upper layers alone.
        let upper_m = mixed_m + steep_m;
        let [a, b, _] = shares;
        let near = |x: f64, m: f64| (x - 100.0 * m / upper_m).abs() <= SHARE_GIVE + SLACK;
        if near(a, mixed_m) && near(b, steep_m) {
            return Judged::idea(BOTTOM, Message::new("ask-12-bottom-shares"));
        }
        if hits(&shares) == 2 {
            almost(told("ask-12-no-shares"))
        } else {
            Judged::not_yet(told("ask-12-no-shares"))
        }
    }

    /// What a settled answer goes by: the accepted thicknesses, else the class's.
    fn shown(q: &Question) -> Thick {
        let class = Layers::of(q.water).class();
        match q.part(0) {
            Some(Accepted { stretch_m: Some((mixed_m, steep_m)), value, .. }) => {
                Thick { mixed_m, steep_m, deep_m: value }
            }
            _ => class,
        }
    }
}

fn number(id: &'static str, name: &'static str, after: &'static str) -> Field {
    Field::number(id, Message::new(name), Some(Message::new(after)))
}

/// "32 ÷ …" as a line: "1.5 ÷ 8.0 = | 19 % | mixed layer".
fn share(m: f64, depth_m: f64, gloss: &'static str) -> SumLine {
    let percent = Message::new("ask-12-percent").number("value", 100.0 * m / depth_m, 0);
    line(Message::new("ask-sum-divided").m("a", rounded(m, 2)).m("b", depth_m), percent, Message::new(gloss))
}

impl Kind for LayerShares {
    fn routes(&self) -> &'static [State] {
        LAYERED
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: OVERLAP, part: 0 }, Idea { key: BOTTOM, part: 0 }, Idea { key: BOTTOM, part: 1 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let listed = |kind: u8| water.context.lesson.kinds.contains(&kind);
        let parts = listed(9)
            && listed(11)
            && MixedLayerEnd.choose(water).is_ok()
            && SteepLayer.choose(water).is_ok();
        let ends = class_layer_m(water).filter(|_| parts);
        let Some((_, bottom_m)) = ends else { return Err(Dropped::telling("ask-dropped-12")) };
        if water.analysis().warm_layer_today.is_some() {
            return Err(Dropped::telling("ask-dropped-12-today"));
        }
        let Some(MixedLayer::At { value_m, .. }) = water.analysis().mixed_layer else {
            return Err(Dropped::telling("ask-dropped-12"));
        };
        let deep_m = water.last_m() - bottom_m;
        if value_m < LEAST_M || bottom_m - value_m < LEAST_M || (!is_cut_off(water) && deep_m < LEAST_M) {
            return Err(Dropped::telling("ask-dropped-12-thin"));
        }
        let share = |of_m: f64| 100.0 * value_m / of_m;
        if !is_cut_off(water) && (share(bottom_m) - share(water.last_m())).abs() < SHARES_APART {
            return Err(Dropped::telling("ask-dropped-12-thin"));
        }
        Ok(Vec::new())
    }

    fn plan(&self, _q: &Question) -> Plan {
        let ways = vec![(WHOLE, Message::new("ask-12-whole")), (AT_LEAST, Message::new("ask-12-at-least"))];
        let way = Field {
            input: Input::Preset(ways),
            start: WHOLE.to_owned(),
            ..Field::number("way", Message::new("ask-12-name-way"), None)
        };
        let metres = |id, name| number(id, name, "ask-after-m");
        let hundredths = |id, name| number(id, name, "ask-12-after-percent").unless("way", &[AT_LEAST]);
        let thick = vec![
            Line::new(Message::new("ask-12-label-mixed"), vec![metres("mixed", "ask-12-name-mixed")]),
            Line::new(Message::new("ask-12-label-steep"), vec![metres("steep", "ask-12-name-steep"), way]),
            Line::new(
                Message::new("ask-12-label-deep"),
                vec![metres("deep", "ask-12-name-deep").unless("way", &[AT_LEAST])],
            ),
        ];
        let shares = Line::new(
            Message::new("ask-12-label-shares"),
            vec![
                hundredths("share_mixed", "ask-12-name-share-mixed"),
                hundredths("share_steep", "ask-12-name-share-steep"),
                hundredths("share_deep", "ask-12-name-share-deep"),
            ],
        );
        Plan {
            ask: Message::new("ask-12"),
            lead: vec![Message::new("ask-12-lead")],
            parts: vec![thick, vec![shares]],
            notes: vec![Message::new("ask-12-note")],
        }
    }

    fn judge(&self, q: &Question, part: usize, fields: &Fields) -> Judged {
        if part == 0 { Self::judge_thickness(q, fields) } else { Self::judge_shares(q, fields) }
    }

    fn hint(&self, _q: &Question, part: usize, level: u8) -> Hint {
        match (part, level) {
            (0, 1) => Hint::Words(Message::new("ask-12-hint-1")),
            (0, 2) => Hint::Words(Message::new("ask-12-hint-2")),
            (0, _) => Hint::Worked(vec![
                line(minus(60.0, 40.0, 1), in_m(20.0), Message::new("ask-12-gloss-steep")),
                line(minus(200.0, 60.0, 1), in_m(140.0), Message::new("ask-12-gloss-deep")),
            ]),
            (_, 1) => Hint::Words(Message::new("ask-12-hint-shares-1")),
            (_, 2) => Hint::Words(Message::new("ask-12-hint-shares-2")),
            _ => Hint::Worked(vec![
                share(40.0, 200.0, "ask-12-gloss-mixed"),
                share(20.0, 200.0, "ask-12-gloss-steep"),
                share(140.0, 200.0, "ask-12-gloss-deep"),
            ]),
        }
    }

    fn class_answer(&self, q: &Question, part: usize) -> Accepted {
        let Thick { mixed_m, steep_m, deep_m } = Layers::of(q.water).class();
        if part > 0 {
            return Accepted::default();
        }
        Accepted { stretch_m: Some((mixed_m, steep_m)), value: deep_m, ..Accepted::default() }
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let layers = Layers::of(q.water);
        let shown = Self::shown(q);
        let own_words = Message::new("ask-12-own-words");
        let nothing = Explained {
            shown: Message::new("ask-sum-nothing"),
            sum: Vec::new(),
            fits: None,
            notes: Vec::new(),
            own_words,
        };
        let depth_m = layers.depths_m.first().copied().unwrap_or_default();
        if part == 0 {
            let two = |m: f64| rounded(m, 2);
            let (end_m, bottom_m) = (two(shown.mixed_m), two(shown.mixed_m + shown.steep_m));
            let mut sum = vec![
                line(minus(end_m, 0.0, 1), in_m(end_m), Message::new("ask-12-gloss-mixed")),
                line(minus(bottom_m, end_m, 1), in_m(bottom_m - end_m), Message::new("ask-12-gloss-steep")),
            ];
            let id = match shown.deep_m {
                Some(deep_m) => {
                    let last_m = two(bottom_m + deep_m);
                    sum.push(result(
                        minus(last_m, bottom_m, 1),
                        in_m(deep_m),
                        Message::new("ask-12-gloss-deep"),
                    ));
                    "ask-12-value"
                }
                None => "ask-12-value-at-least",
            };
            let said = Message::new(id).m("mixed", end_m).m("steep", bottom_m - end_m);
            let said = shown.deep_m.iter().fold(said, |said, deep_m| said.m("deep", two(*deep_m)));
            return Explained { shown: said, sum, ..nothing };
        }
        let Some(deep_m) = shown.deep_m else {
            return Explained { shown: Message::new("ask-12-value-unknown"), ..nothing };
        };
        let hundredth = |m: f64| 100.0 * m / depth_m;
        let said = Message::new("ask-12-value-shares")
            .number("mixed", hundredth(shown.mixed_m), 0)
            .number("steep", hundredth(shown.steep_m), 0)
            .number("deep", hundredth(deep_m), 0);
        let sum = vec![
            share(shown.mixed_m, depth_m, "ask-12-gloss-mixed"),
            share(shown.steep_m, depth_m, "ask-12-gloss-steep"),
            share(deep_m, depth_m, "ask-12-gloss-deep"),
        ];
        Explained { shown: said, sum, notes: vec![Message::new("ask-12-why")], ..nothing }
    }

    fn written(&self, part: usize, fields: &Fields) -> Option<Message> {
        let ids = if part == 0 { IDS } else { SHARE_IDS };
        let [mixed, steep, deep] = ids.map(|id| short(field(fields, id)));
        let id = if deep.is_empty() { "ask-12-yours-two" } else { "ask-12-yours" };
        let said = Message::new(id).text("mixed", mixed).text("steep", steep);
        Some(if deep.is_empty() { said } else { said.text("deep", deep) })
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn builds_on(&self) -> &'static [&'static str] {
        &["9", "11"]
    }

    fn uncovers(&self, _q: &Question) -> Uncovers {
        Uncovers { mixed_layer: true, deep_layer: true, ..Uncovers::default() }
    }

    fn told_by_check(&self, _q: &Question) -> Option<Told> {
        Some(Told::DeepLayer)
    }
}
