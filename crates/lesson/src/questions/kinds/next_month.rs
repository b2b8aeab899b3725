//! Kind 20: your water a month from now, when it loses heat. Four pictures made from this cast that lose equally much; one
//! does it as water does. Then why, in own words. A column with seeded weather: what follows from the stated physics, not a
//! forecast.

use super::windy_night::letter_of;
use crate::questions::kind::{
    Accepted, Curve, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Pictures, Plan,
    Question,
};
use crate::questions::pictures::{all_apart, of_levels, seed, shuffled};
use crate::questions::text::{Fields, field};
use crate::questions::water::Water;
use crate::questions::why::{Basis, figures, quoted_words};
use layercast_core::column::season::{pass, weather};
use layercast_core::column::to_mix::{SECONDS_A_DAY, to_mix};
use layercast_core::column::{CELLS, Column};
use layercast_core::{Message, State};

const ALL_ALIKE: &str = "all_depths_cool_alike";
const BOTTOM_FIRST: &str = "bottom_cools_first";
const COLD_ON_TOP: &str = "cold_stays_on_top";
const RIGHT: &str = "from_above";

/// Days of the month.
const DAYS: u32 = 30;
/// Shares of the heat over the deep water that are lost; the first whose pictures can be told apart and still have layers.
const SHARES: [f64; 4] = [0.5, 0.4, 0.3, 0.6];
/// Top and bottom must differ by this much to be worth cooling, and still by so much afterwards, °C.
const LEAST_C: f64 = 3.0;
/// See `LEAST_C`.
const LEFT_C: f64 = 1.0;
/// Cold that stays on top stays in this share of the depth.
const TOP_SHARE: f64 = 0.3;

/// Kind 20.
pub(crate) struct NextMonth;

#[derive(Clone, Debug)]
pub(crate) struct Month {
    loss_w_m2: f64,
    options: Vec<(&'static str, Curve)>,
}

/// The month of a water, worked out once.
fn month<'a>(water: &Water<'a>) -> Option<&'a Month> {
    water.context.memo.month.get_or_init(|| work_out(Basis::of(water), seed(water))).as_ref()
}

fn work_out(basis: Basis, seed: u64) -> Option<Month> {
    let density = basis.analysis().method.density;
    let before = Column::of(basis.levels(), basis.bed_m(), density)?;
    let heat = to_mix(basis.levels(), LEAST_C, density).filter(|found| !found.warms)?;
    SHARES.into_iter().find_map(|share| {
        let loss_w_m2 = share * heat.heat_j_m2 / (f64::from(DAYS) * SECONDS_A_DAY);
        let mut after = before.clone();
        let lost_j_m2 = pass(&mut after, &weather(seed, DAYS, loss_w_m2));
        let lost_c = (before.heat_c_m() - after.heat_c_m()) / before.depth_m(); // on average over the depth
        let depth_m = before.depth_m();
        let top_m = TOP_SHARE * depth_m;
        let options = vec![
            (RIGHT, after.curve()),
            (ALL_ALIKE, before.map(|_, t| t - lost_c).curve()),
            (BOTTOM_FIRST, before.map(|z, t| (t - 2.0 * lost_c * z / depth_m).max(0.0)).curve()),
            (
                COLD_ON_TOP,
                before.map(|z, t| if z < top_m { (t - lost_c / TOP_SHARE).max(0.0) } else { t }).curve(),
            ),
        ];
        let layers = after.temp_c(0.0) - after.temps_c().last().copied()? >= LEFT_C;
        let kept = after.temps_c().len() == CELLS && lost_j_m2 > 0.0;
        (layers && kept && all_apart(&options)).then_some(Month { loss_w_m2, options })
    })
}

impl Kind for NextMonth {
    fn routes(&self) -> &'static [State] {
        &[State::Stratified, State::Weak, State::Mixed]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[
            Idea { key: ALL_ALIKE, part: 0 },
            Idea { key: BOTTOM_FIRST, part: 0 },
            Idea { key: COLD_ON_TOP, part: 0 },
        ]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        match month(water) {
            Some(_) => Ok(Vec::new()),
            None => Err(Dropped::telling("ask-dropped-20")),
        }
    }

    fn plan(&self, q: &Question) -> Plan {
        let basis = Basis::of(q.water);
        let month = month(q.water);
        let (loss, decimals) = figures(month.map_or(0.0, |m| m.loss_w_m2));
        let options = month.map(|m| m.options.clone()).unwrap_or_default();
        let own = of_levels(basis.levels(), basis.bed_m().unwrap_or_default());
        let pictures = Pictures { options: shuffled(q.water, 20, options), own };
        let picture = Field {
            input: Input::Pictures(Box::new(pictures)),
            ..Field::number("picture", Message::new("ask-20-name"), None)
        };
        let starters = ["ask-20-start-1", "ask-20-start-2"].map(Message::new).to_vec();
        let why = Field::prose("why", Message::new("ask-20-name-why"), starters);
        let lead = Message::new("ask-20-lead").count("days", DAYS as usize).number("watts", loss, decimals);
        Plan {
            ask: Message::new(if basis.is_practice() { "ask-20-practice" } else { "ask-20" }),
            lead: basis.mark().into_iter().chain([lead, Message::new("ask-note-watt")]).collect(),
            parts: vec![
                vec![Line::new(Message::new("ask-why-label-picture"), vec![picture])],
                vec![Line::new(Message::new("ask-20-label-why"), vec![why])],
            ],
            notes: vec![Message::new("ask-why-note-picture"), Message::new("ask-20-note")],
        }
    }

    fn judge(&self, _q: &Question, part: usize, fields: &Fields) -> Judged {
        if part == 1 {
            return Judged::kept(quoted_words(fields, "why"));
        }
        match field(fields, "picture") {
            RIGHT => Judged::yes(Message::new("ask-20-yes"), Accepted::default()),
            ALL_ALIKE => Judged::idea(ALL_ALIKE, Message::new("ask-20-all-alike")),
            BOTTOM_FIRST => Judged::idea(BOTTOM_FIRST, Message::new("ask-20-bottom-first")),
            COLD_ON_TOP => Judged::idea(COLD_ON_TOP, Message::new("ask-20-cold-on-top")),
            _ => Judged::not_yet(Message::new("ask-20-no")),
        }
    }

    fn is_judged(&self, _q: &Question, part: usize) -> bool {
        part == 0
    }

    fn hint(&self, _q: &Question, part: usize, level: u8) -> Hint {
        Hint::Words(Message::new(match (part, level) {
            (0, 1) => "ask-20-hint-1",
            (0, 2) => "ask-20-hint-2",
            (0, _) => "ask-20-hint-3",
            (_, 1) => "ask-20-why-hint-1",
            (_, 2) => "ask-20-why-hint-2",
            _ => "ask-20-why-hint-3",
        }))
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let options = month(q.water).map(|m| shuffled(q.water, 20, m.options.clone())).unwrap_or_default();
        let (shown, notes) = match part {
            0 => {
                (letter_of(&options, RIGHT), vec![Message::new("ask-20-what"), Message::new("ask-20-model")])
            }
            _ => (Message::new("ask-20-because"), Vec::new()),
        };
        Explained { shown, sum: Vec::new(), fits: None, notes, own_words: Message::new("ask-20-own-words") }
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
