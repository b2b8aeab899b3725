//! Kind 26: which one change of the work would narrow the range of your thermocline most? Seeded trials of the own cast with
//! each change; whatever gains within a tenth of the most is right.

use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question,
};
use crate::questions::say::{line, rounded};
use crate::questions::text::{Fields, field};
use crate::questions::water::{SLACK, Water};
use crate::questions::why::Basis;
use crate::view::SumLine;
use layercast_core::whatif::{Change, width_m};
use layercast_core::{Message, State};

const MORE_DECIMALS: &str = "more_decimals";
const NONE: &str = "none";

/// Trials of each change.
const TRIALS: u32 = 300;
/// Gains within this share of the most are as good.
const TIES: f64 = 0.1;
/// A gain below this share of the range is none.
const LEAST_GAIN: f64 = 0.05;
/// No trials of a cast of more depths: they would take too long.
const MOST_LEVELS: usize = 80;

/// Kind 26.
pub(crate) struct OneChange;

fn value(change: Change) -> &'static str {
    match change {
        Change::HalfTheStep => "half_step",
        Change::FourRepeats => "repeats",
        Change::BetterProbe => "probe",
        Change::StraighterCable => "cable",
        Change::MoreDecimals => "decimals",
    }
}

fn words(value: &str) -> Message {
    Message::new(match value {
        "half_step" => "ask-26-half-step",
        "repeats" => "ask-26-repeats",
        "probe" => "ask-26-probe",
        "cable" => "ask-26-cable",
        "decimals" => "ask-26-decimals",
        _ => "ask-26-none",
    })
}

/// Width of the range as read, and with each change, metres.
#[derive(Clone, Debug)]
pub(crate) struct Widths {
    now_m: f64,
    then_m: Vec<(&'static str, f64)>,
}

impl Widths {
    /// Of a water, worked out once.
    fn of<'a>(water: &Water<'a>) -> Option<&'a Self> {
        water.context.memo.widths.get_or_init(|| Self::work_out(Basis::of(water))).as_ref()
    }

    fn work_out(basis: Basis) -> Option<Self> {
        let method = &basis.analysis().method;
        let width = |change| width_m(basis.cast(), method, change, TRIALS);
        let now_m = width(None)?;
        // A change after which there is no such depth narrows nothing.
        let then_m = Change::ALL.map(|c| (value(c), width(Some(c)).unwrap_or(now_m))).to_vec();
        Some(Self { now_m, then_m })
    }

    fn gain(&self, then_m: f64) -> f64 {
        self.now_m - then_m
    }

    /// What is right.
    fn best(&self) -> Vec<&'static str> {
        let most = self.then_m.iter().map(|t| self.gain(t.1)).fold(0.0, f64::max);
        if most < LEAST_GAIN * self.now_m {
            return vec![NONE];
        }
        let near = |t: &&(&'static str, f64)| self.gain(t.1) >= (1.0 - TIES) * most - SLACK;
        self.then_m.iter().filter(near).map(|t| t.0).collect()
    }

    /// Nearer marks came out wider, as the widths are shown.
    fn half_is_wider(&self) -> bool {
        let half = self.then_m.iter().find(|t| t.0 == value(Change::HalfTheStep));
        half.is_some_and(|(_, m)| rounded(*m, 2) > rounded(self.now_m, 2))
    }

    /// Why a change is right: nothing is narrower, or by so much that it does not count.
    fn why_right(&self, chosen: &str) -> Message {
        let shown = |width_m: f64| rounded(width_m, 2);
        let narrowest_m = self.then_m.iter().map(|t| t.1).fold(f64::INFINITY, f64::min);
        let chosen_m = self.then_m.iter().find(|t| t.0 == chosen).map(|t| t.1);
        match chosen_m {
            None => Message::new("ask-26-yes-none"),
            Some(m) if shown(m) > shown(narrowest_m) => Message::new("ask-26-yes-near")
                .number("width", shown(m), 2)
                .number("narrowest", shown(narrowest_m), 2),
            Some(_) => Message::new("ask-26-yes"),
        }
    }
}

impl Kind for OneChange {
    fn routes(&self) -> &'static [State] {
        &[State::Stratified, State::Weak, State::Mixed, State::Inverse]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: MORE_DECIMALS, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let basis = Basis::of(water);
        let found = basis.analysis();
        let tellable = found.thermocline.or(found.fastest_warming).is_some_and(|t| t.tellable);
        if tellable && basis.levels().len() <= MOST_LEVELS {
            Ok(Vec::new())
        } else {
            Err(Dropped::telling("ask-dropped-26"))
        }
    }

    fn plan(&self, q: &Question) -> Plan {
        let basis = Basis::of(q.water);
        let options = Change::ALL.map(value).into_iter().chain([NONE]);
        let options = options.map(|value| (value.to_owned(), words(value))).collect();
        let field = Field {
            input: Input::Choice(options),
            ..Field::number("change", Message::new("ask-26-name"), None)
        };
        Plan {
            ask: Message::new("ask-26"),
            lead: basis.mark().into_iter().chain([Message::new("ask-26-lead")]).collect(),
            parts: vec![vec![Line::new(Message::new("ask-26-label"), vec![field])]],
            notes: Vec::new(),
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let Some(widths) = Widths::of(q.water) else { return Judged::not_yet(Message::new("ask-26-no")) };
        let (best, chosen) = (widths.best(), field(fields, "change"));
        if best.contains(&chosen) {
            return Judged::yes(widths.why_right(chosen), Accepted::default());
        }
        match chosen {
            "decimals" => Judged::idea(MORE_DECIMALS, Message::new("ask-26-more-decimals")),
            _ => Judged::not_yet(Message::new("ask-26-no")),
        }
    }

    fn hint(&self, _q: &Question, _part: usize, level: u8) -> Hint {
        Hint::Words(Message::new(match level {
            1 => "ask-26-hint-1",
            2 => "ask-26-hint-2",
            _ => "ask-26-hint-3",
        }))
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let own_words = Message::new("ask-26-own-words");
        let Some(widths) = Widths::of(q.water) else {
            let shown = Message::new("ask-sum-nothing");
            return Explained { shown, sum: Vec::new(), fits: None, notes: Vec::new(), own_words };
        };
        let best = widths.best();
        let row = |left: Message, width_m: f64, gloss: &'static str| -> SumLine {
            line(
                left,
                Message::new("ask-26-wide").number("width", rounded(width_m, 2), 2),
                Message::new(gloss),
            )
        };
        let gloss = |value: &str| if best.contains(&value) { "ask-26-most" } else { "ask-sum-nothing" };
        let now = row(Message::new("ask-26-as-read"), widths.now_m, "ask-sum-nothing");
        let then = widths.then_m.iter().map(|(value, width)| row(words(value), *width, gloss(value)));
        Explained {
            shown: best.first().map_or(Message::new("ask-sum-nothing"), |value| words(value)),
            sum: std::iter::once(now).chain(then).collect(),
            fits: (best.len() > 1).then(|| Message::new("ask-26-fits")),
            notes: std::iter::once(Message::new("ask-26-how").count("trials", TRIALS as usize))
                .chain(widths.half_is_wider().then(|| Message::new("ask-26-half-wider")))
                .collect(),
            own_words,
        }
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn is_hidden_before_marks(&self) -> bool {
        true
    }
}
