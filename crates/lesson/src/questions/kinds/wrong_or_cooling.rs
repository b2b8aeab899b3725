//! Kind 107 (unstable water): is the heavier water on top a wrong reading, or is the surface cooling at this moment? Told by
//! whether both ways show it, and by where it is.

use super::heavier_on_top::HeavierOnTop;
use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Input, Judged, Kind, Line, Plan, Question,
};
use crate::questions::say::{Numbers, in_c, line};
use crate::questions::text::{Fields, field};
use crate::questions::water::{SLACK, Water};
use layercast_core::{Doubt, Level, Message, State};

const ODD_IS_WRONG: &str = "what_is_odd_is_wrong";
const ONE_IS_ENOUGH: &str = "one_reading_is_enough";

/// Cooling is felt within so much of the first reading, metres.
const SURFACE_M: f64 = 1.0;
/// Two readings of one mark agree when they differ by no more than this, °C (methods 3.2: good).
const AGREE_C: f64 = 0.2;

/// Kind 107.
pub(crate) struct WrongOrCooling;

/// What the readings say.
#[derive(Clone, Copy, PartialEq, Eq)]
enum Says {
    /// The two ways do not agree at the pair, or one of its readings sticks out.
    Wrong,
    /// Both ways show it, from the surface.
    Cooling,
    /// Both ways show it, deeper: something holds the water down or up.
    Salt,
    /// Read once: nothing to compare with.
    Again,
}

impl Says {
    fn value(self) -> &'static str {
        match self {
            Self::Wrong => "wrong",
            Self::Cooling => "cooling",
            Self::Salt => "salt",
            Self::Again => "again",
        }
    }

    fn words(self) -> Message {
        Message::new(match self {
            Self::Wrong => "ask-107-wrong",
            Self::Cooling => "ask-107-cooling",
            Self::Salt => "ask-107-salt",
            Self::Again => "ask-107-again",
        })
    }

    fn right(self) -> Message {
        Message::new(match self {
            Self::Wrong => "ask-107-yes-wrong",
            Self::Cooling => "ask-107-yes-cooling",
            Self::Salt => "ask-107-yes-salt",
            Self::Again => "ask-107-yes-again",
        })
    }

    const ALL: [Self; 4] = [Self::Wrong, Self::Cooling, Self::Salt, Self::Again];
}

fn pair<'a>(water: &Water<'a>) -> Option<[&'a Level; 2]> {
    let (upper, lower) = water.analysis().facts?.inversion_pair_m?;
    Some([water.level(upper)?, water.level(lower)?])
}

fn says(water: &Water) -> Option<Says> {
    let pair = pair(water)?;
    let sticks_out = |level: &&Level| {
        let of_cast = water.context.cast.readings.iter().zip(&water.analysis().checked);
        let mut here = of_cast.filter(|(r, _)| (r.depth_m - level.depth_m).abs() < 1e-6);
        here.any(|(_, checked)| matches!(checked.doubt, Some(Doubt::Spike { .. } | Doubt::Range { .. })))
    };
    let apart = |level: &&Level| Some((level.down_c? - level.up_c?).abs());
    let disagree = pair.iter().any(|l| apart(l).is_some_and(|d| d > AGREE_C + SLACK));
    Some(if disagree || pair.iter().any(sticks_out) {
        Says::Wrong
    } else if pair.iter().any(|l| apart(l).is_none()) {
        Says::Again
    } else if pair.iter().all(|l| l.depth_m <= water.first_m() + SURFACE_M + SLACK)
        || starts_at_surface(water, pair)
    {
        Says::Cooling
    } else {
        Says::Salt
    })
}

/// The upper water of the pair is that of the surface.
fn starts_at_surface(water: &Water, pair: [&Level; 2]) -> bool {
    pair.iter().any(|l| l.depth_m <= water.first_m() + SURFACE_M / 2.0 + SLACK)
}

impl Kind for WrongOrCooling {
    fn routes(&self) -> &'static [State] {
        &[State::Unstable]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: ODD_IS_WRONG, part: 0 }, Idea { key: ONE_IS_ENOUGH, part: 0 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        // The pair is asked for before: without that question this one would come out of nowhere.
        match says(water).filter(|_| HeavierOnTop.choose(water).is_ok()) {
            Some(_) => Ok(Vec::new()),
            None => Err(Dropped::telling("ask-dropped-107")),
        }
    }

    fn plan(&self, _q: &Question) -> Plan {
        let options = Says::ALL.map(|s| (s.value().to_owned(), s.words())).to_vec();
        let field = Field {
            input: Input::Choice(options),
            ..Field::number("says", Message::new("ask-107-name"), None)
        };
        Plan {
            ask: Message::new("ask-107"),
            lead: vec![Message::new("ask-107-lead")],
            parts: vec![vec![Line::new(Message::new("ask-107-label"), vec![field])]],
            notes: Vec::new(),
        }
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        let Some(says) = says(q.water) else { return Judged::not_yet(Message::new("ask-107-no")) };
        match field(fields, "says") {
            chosen if chosen == says.value() => Judged::yes(says.right(), Accepted::default()),
            "wrong" if matches!(says, Says::Cooling | Says::Salt) => {
                Judged::idea(ODD_IS_WRONG, Message::new("ask-107-odd"))
            }
            "cooling" | "salt" if matches!(says, Says::Wrong | Says::Again) => {
                Judged::idea(ONE_IS_ENOUGH, Message::new("ask-107-one"))
            }
            _ => Judged::not_yet(Message::new("ask-107-no")),
        }
    }

    fn cannot_be_told(&self, q: &Question) -> bool {
        says(q.water) == Some(Says::Again)
    }

    fn hint(&self, _q: &Question, _part: usize, level: u8) -> Hint {
        Hint::Words(Message::new(match level {
            1 => "ask-107-hint-1",
            2 => "ask-107-hint-2",
            _ => "ask-107-hint-3",
        }))
    }

    fn class_answer(&self, _q: &Question, _part: usize) -> Accepted {
        Accepted::default()
    }

    fn explain(&self, q: &Question, _part: usize) -> Explained {
        let row = |level: &Level| {
            let (down, up) = (level.down_c?, level.up_c?);
            let left = Message::new("ask-107-both").m("depth", level.depth_m).c("down", down).c("up", up);
            Some(line(left, in_c((down - up).abs()), Message::new("ask-107-apart")))
        };
        let sum = pair(q.water).into_iter().flatten().filter_map(row).collect();
        Explained {
            shown: says(q.water).map_or(Message::new("ask-sum-nothing"), Says::words),
            sum,
            fits: None,
            notes: vec![Message::new("ask-107-why")],
            own_words: Message::new("ask-107-own-words"),
        }
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn is_hidden_before_marks(&self) -> bool {
        true
    }

    fn shows_means(&self) -> bool {
        true
    }
}
