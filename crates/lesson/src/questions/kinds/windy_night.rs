//! Kind 21: your water after a windy night. Four pictures made from this cast; in one the water is stirred down to a depth
//! and holds as much heat as before.

use crate::questions::kind::{
    Accepted, Curve, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Pictures, Plan,
    Question,
};
use crate::questions::pictures::{all_apart, of_levels, shuffled};
use crate::questions::say::{line, result, rounded};
use crate::questions::text::{Fields, field};
use crate::questions::water::Water;
use crate::questions::why::Basis;
use layercast_core::column::{CELLS, Column};
use layercast_core::{Message, State};

const ALL_COLDER: &str = "all_colder";
const COLDER_WINS: &str = "colder_wins";
const WARMER_WINS: &str = "warmer_wins";
const RIGHT: &str = "stirred";

/// Shares of the work to mix everything that the night's wind may do; the first whose pictures can be told apart.
const SHARES: [f64; 5] = [0.3, 0.2, 0.4, 0.12, 0.5];
/// The picture that is colder everywhere is so by at least this, °C.
const LEAST_COLDER_C: f64 = 1.5;

/// Kind 21.
pub(crate) struct WindyNight;

/// The night: what it made of the column, and the four pictures.
#[derive(Clone, Debug)]
pub(crate) struct Night {
    to_m: f64,
    mixed_c: f64,
    heat_c_m: f64,
    options: Vec<(&'static str, Curve)>,
}

/// The night of a water, worked out once.
fn night<'a>(water: &Water<'a>) -> Option<&'a Night> {
    water.context.memo.night.get_or_init(|| work_out(Basis::of(water))).as_ref()
}

fn work_out(basis: Basis) -> Option<Night> {
    let before = Column::of(basis.levels(), basis.bed_m(), basis.analysis().method.density)?;
    let whole = before.work_j_m2(CELLS);
    SHARES.into_iter().find_map(|share| {
        let mut after = before.clone();
        let to_m = after.stir(share * whole);
        let (mixed_c, top_c) = (after.temp_c(0.0), before.temp_c(0.0));
        let coldest_c = before.temp_c(to_m - before.cell_m() / 2.0);
        let colder_c = (top_c - mixed_c).max(LEAST_COLDER_C);
        let up_to = |temp_c: f64| before.map(|z, t| if z < to_m { temp_c } else { t });
        let options = vec![
            (RIGHT, after.curve()),
            (ALL_COLDER, before.map(|_, t| t - colder_c).curve()),
            (COLDER_WINS, up_to(coldest_c).curve()),
            (WARMER_WINS, up_to(top_c).curve()),
        ];
        let room = to_m < 0.9 * before.depth_m();
        let heat_c_m = before.heat_c_m();
        (room && whole > 0.0 && all_apart(&options)).then_some(Night { to_m, mixed_c, heat_c_m, options })
    })
}

fn area(curve: &Curve) -> f64 {
    curve.iter().zip(curve.iter().skip(1)).map(|(a, b)| (b.0 - a.0) * (a.1 + b.1) / 2.0).sum()
}

impl Kind for WindyNight {
    fn routes(&self) -> &'static [State] {
        &[State::Stratified, State::Weak, State::Mixed]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[
            Idea { key: ALL_COLDER, part: 0 },
            Idea { key: COLDER_WINS, part: 0 },
            Idea { key: WARMER_WINS, part: 0 },
        ]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        match night(water) {
            Some(_) => Ok(Vec::new()),
            None => Err(Dropped::telling("ask-dropped-21")),
        }
    }

    fn plan(&self, q: &Question) -> Plan {
        let basis = Basis::of(q.water);
        let options = night(q.water).map(|n| n.options.clone()).unwrap_or_default();
        let own = of_levels(basis.levels(), basis.bed_m().unwrap_or_default());
        let pictures = Pictures { options: shuffled(q.water, 21, options), own };
        let field = Field {
            input: Input::Pictures(Box::new(pictures)),
            ..Field::number("picture", Message::new("ask-21-name"), None)
        };
        let lead = if basis.is_practice() { "ask-21-lead-practice" } else { "ask-21-lead" };
        Plan {
            ask: Message::new(if basis.is_practice() { "ask-21-practice" } else { "ask-21" }),
            lead: basis.mark().into_iter().chain([Message::new(lead)]).collect(),
            parts: vec![vec![Line::new(Message::new("ask-why-label-picture"), vec![field])]],
            notes: vec![Message::new("ask-why-note-picture")],
        }
    }

    fn judge(&self, _q: &Question, _part: usize, fields: &Fields) -> Judged {
        match field(fields, "picture") {
            RIGHT => Judged::yes(Message::new("ask-21-yes"), Accepted::default()),
            ALL_COLDER => Judged::idea(ALL_COLDER, Message::new("ask-21-all-colder")),
            COLDER_WINS => Judged::idea(COLDER_WINS, Message::new("ask-21-colder-wins")),
            WARMER_WINS => Judged::idea(WARMER_WINS, Message::new("ask-21-warmer-wins")),
            _ => Judged::not_yet(Message::new("ask-21-no")),
        }
    }

    fn hint(&self, _q: &Question, _part: usize, level: u8) -> Hint {
        match level {
            1 => Hint::Words(Message::new("ask-21-hint-1")),
            2 => Hint::Words(Message::new("ask-21-hint-2")),
            // 2 m at 20 °C over 2 m at 10 °C, stirred through.
            _ => Hint::Worked(vec![
                line(
                    Message::new("ask-21-worked-sum").number("a", 20.0, 0).number("b", 10.0, 0),
                    Message::new("ask-19-area").number("value", 60.0, 0),
                    Message::new("ask-21-worked-before"),
                ),
                result(
                    Message::new("ask-21-worked-divided").number("a", 60.0, 0).number("b", 4.0, 0),
                    Message::new("ask-sum-c").number("value", 15.0, 0),
                    Message::new("ask-21-worked-after"),
                ),
            ]),
        }
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let own_words = Message::new("ask-21-own-words");
        let Some(night) = night(q.water) else {
            let shown = Message::new("ask-sum-nothing");
            return Explained { shown, sum: Vec::new(), fits: None, notes: Vec::new(), own_words };
        };
        let shuffled = shuffled(q.water, 21, night.options.clone());
        let heat = |left: Message, value: f64, gloss: &'static str| {
            let value = Message::new("ask-19-area").number("value", rounded(value, 1), 1);
            line(left, value, Message::new(gloss))
        };
        let as_read = heat(Message::new("ask-21-before"), night.heat_c_m, "ask-21-heat-gloss");
        let each = shuffled.iter().zip(["A", "B", "C", "D"]).map(|((value, curve), letter)| {
            let gloss = match *value {
                RIGHT => "ask-21-as-much",
                ALL_COLDER => "ask-21-gloss-all-colder",
                COLDER_WINS => "ask-21-gloss-colder-wins",
                _ => "ask-21-gloss-warmer-wins",
            };
            heat(Message::new("ask-why-picture").text("letter", letter), area(curve), gloss)
        });
        Explained {
            shown: letter_of(&shuffled, RIGHT),
            sum: std::iter::once(as_read).chain(each).collect(),
            fits: None,
            notes: vec![Message::new("ask-21-what").number("depth", rounded(night.to_m, 1), 1).number(
                "temp",
                rounded(night.mixed_c, 1),
                1,
            )],
            own_words,
        }
    }

    fn right_picture(&self) -> Option<&'static str> {
        Some(RIGHT)
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn is_hidden_before_marks(&self) -> bool {
        true
    }
}

/// "Picture B", of a value.
pub(super) fn letter_of(options: &[(&'static str, Curve)], value: &str) -> Message {
    let at = options.iter().position(|o| o.0 == value).unwrap_or_default();
    let letter = ["A", "B", "C", "D"].get(at).copied().unwrap_or_default();
    Message::new("ask-why-picture").text("letter", letter)
}
