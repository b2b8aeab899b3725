//! Ranges from trials: drawn in parts beside the page, kept by the page as a text, taken in where they fit the readings.
//!
//! A call that gets the text shows the ranges of the trials; one that gets none, or that of other readings, shows those of
//! the law of propagation. The text is never part of a saved notebook: it is made again.

use crate::document::Notebook;
use crate::prepared::{Prepared, prepare, prepare_with};
use crate::view::{OtherCable, OtherDigits, OtherMarks, OtherWait, OtherWays, Otherwise, OtherwiseView};
use layercast_core::certainty::{
    Certainty, Depth, Plan, Ranged, Refused, SEED, Share, Unsure, summary, trials,
};
use layercast_core::water::density::Density;
use layercast_core::whatif::{self, Legs, Wait, Whatif};
use layercast_core::{Cast, Leg, Method, Switch};
use serde::{Deserialize, Serialize};

/// Trials of a cast read otherwise.
pub const FEWER_TRIALS: u32 = whatif::TRIALS;
/// What a shorter wait is reckoned with: the probe covers two thirds of a change in this time, s (a convention of ours).
pub const TAU_S: f64 = 20.0;

/// What the trials of a notebook's cast came to, as text: the page gives it back with every look.
///
/// * `drawn`: the parts that [`drawn`] gave, one after the other, in the order of their trials
pub fn ranges(notebook: &Notebook, drawn: &[f64]) -> String {
    let prepared = prepare(notebook);
    let certainty = summary(&plan(&prepared.cast, &prepared), drawn);
    let doc =
        RangesDoc { key: key(&prepared.cast, &prepared.analysis.method), ..RangesDoc::from(&certainty) };
    serde_json::to_string(&doc).unwrap_or_default()
}

/// One part of the trials: `count` of them from `from` on.
pub fn drawn(notebook: &Notebook, from: u32, count: u32) -> Vec<f64> {
    let prepared = prepare(notebook);
    trials(&plan(&prepared.cast, &prepared), SEED, from, count)
}

/// One part of the trials of the cast read otherwise.
pub fn drawn_otherwise(notebook: &Notebook, otherwise: &Otherwise, from: u32, count: u32) -> Vec<f64> {
    trials(&read_otherwise(&prepare(notebook), otherwise).plan, SEED, from, count)
}

/// The profile of the cast read otherwise: (depth in metres, °C), depths strictly increasing.
pub fn profile_otherwise(prepared: &Prepared, otherwise: &Otherwise) -> Vec<(f64, f64)> {
    let found = read_otherwise(prepared, otherwise);
    found.analysis.profile.iter().map(|level| (level.depth_m, level.temp_c)).collect()
}

/// What the cast, read otherwise, would have told. `drawn`: the parts that [`drawn_otherwise`] gave; `ranges`: what the
/// trials of the cast itself came to.
pub fn otherwise(
    notebook: &Notebook,
    otherwise: &Otherwise,
    drawn: &[f64],
    ranges: Option<&str>,
) -> OtherwiseView {
    let prepared = prepare_with(notebook, ranges);
    let found = read_otherwise(&prepared, otherwise);
    crate::screens::otherwise_view(&prepared, otherwise, &found, drawn)
}

/// What a person chose from the lists, in numbers.
fn read_otherwise(prepared: &Prepared, chosen: &Otherwise) -> Whatif {
    let otherwise = whatif::Otherwise {
        step_m: match chosen.marks {
            OtherMarks::AsRead => None,
            OtherMarks::EveryMetre => Some(1.0),
            OtherMarks::Every2Metres => Some(2.0),
        },
        legs: match chosen.ways {
            OtherWays::Both => None,
            OtherWays::Down => Some(Legs::Down),
            OtherWays::Up => Some(Legs::Up),
        },
        wait: match chosen.wait {
            OtherWait::AsRead => None,
            OtherWait::Short => Some(Wait { tau_s: TAU_S, wait_s: 30.0 }),
            OtherWait::Hardly => Some(Wait { tau_s: TAU_S, wait_s: 10.0 }),
        },
        digit_c: match chosen.digits {
            OtherDigits::AsRead => None,
            OtherDigits::Halves => Some(0.5),
            OtherDigits::Whole => Some(1.0),
        },
        mark_sd_m: match chosen.cable {
            OtherCable::AsRead => None,
            OtherCable::Rough => Some(0.1),
            OtherCable::Poor => Some(0.25),
        },
    };
    whatif::whatif(&prepared.cast, &prepared.analysis.method, &otherwise, SEED)
}

/// What is sought in every trial of the cast.
pub fn plan(cast: &Cast, prepared: &Prepared) -> Plan {
    Plan::new(cast, &prepared.analysis, &Unsure::default())
}

/// The trials in a text, if they are of these readings.
pub(crate) fn of(text: &str, key: &str) -> Option<Certainty> {
    let doc: RangesDoc = serde_json::from_str(text).ok()?;
    (doc.key == key).then(|| Certainty::from(&doc))
}

/// What trials would be of: the readings as they are analysed, and the rules. FNV-1a, 64 bits.
pub(crate) fn key(cast: &Cast, method: &Method) -> String {
    let mut hash = 0xcbf2_9ce4_8422_2325_u64;
    let mut add = |bits: u64| {
        for byte in bits.to_le_bytes() {
            hash = (hash ^ u64::from(byte)).wrapping_mul(0x0100_0000_01b3);
        }
    };
    for reading in &cast.readings {
        add(reading.depth_m.to_bits());
        add(reading.temp_c.map_or(1, f64::to_bits));
        add(match reading.leg {
            Leg::Down => 0,
            Leg::Up => 1,
            Leg::Unknown => 2,
        });
        add(match reading.switch {
            Switch::Auto => 0,
            Switch::Off => 1,
            Switch::Kept => 2,
        });
    }
    add(cast.digit_c.to_bits());
    add(cast.bed_m.map_or(1, f64::to_bits));
    for value in [method.reference_m, method.mixed_drop_c, method.steep_c_per_m] {
        add(value.to_bits());
    }
    let (formula, salinity) = match method.density {
        Density::Tanaka => (0, 0.0),
        Density::TanakaSalt { salinity } => (1, salinity),
        Density::Kell => (2, 0.0),
        Density::Eos80 { salinity } => (3, salinity),
        Density::ChenMillero { salinity } => (4, salinity),
    };
    add(formula);
    add(salinity.to_bits());
    format!("{hash:016x}")
}

/// [`Certainty`] as the page keeps it.
#[derive(Debug, Default, Serialize, Deserialize)]
struct RangesDoc {
    key: String,
    count: u32,
    depths: Vec<RangedDoc>,
}

#[derive(Debug, Serialize, Deserialize)]
struct RangedDoc {
    /// Its place in [`Depth::ALL`].
    depth: u8,
    value_m: Option<f64>,
    low_m: Option<f64>,
    median_m: Option<f64>,
    high_m: Option<f64>,
    beyond: f64,
    none: f64,
    /// 1: mostly none, 2: too wide.
    refused: u8,
    /// Top, bottom and share of each step, where the depth is the middle of one.
    shares: Vec<(f64, f64, f64)>,
}

impl From<&Certainty> for RangesDoc {
    fn from(certainty: &Certainty) -> Self {
        let ranged = |one: &Ranged| {
            let place = Depth::ALL.iter().position(|depth| *depth == one.depth)?;
            let shares = certainty.shares(one.depth).unwrap_or(&[]);
            Some(RangedDoc {
                depth: u8::try_from(place).ok()?,
                value_m: one.value_m,
                low_m: one.low_m,
                median_m: one.median_m,
                high_m: one.high_m,
                beyond: one.beyond_share,
                none: one.none_share,
                refused: match one.refused {
                    None => 0,
                    Some(Refused::MostlyNone) => 1,
                    Some(Refused::TooWide) => 2,
                },
                shares: shares.iter().map(|s| (s.top_m, s.bottom_m, s.share)).collect(),
            })
        };
        Self {
            key: String::new(),
            count: certainty.count,
            depths: certainty.depths.iter().filter_map(ranged).collect(),
        }
    }
}

impl From<&RangesDoc> for Certainty {
    fn from(doc: &RangesDoc) -> Self {
        let depth = |one: &RangedDoc| Depth::ALL.get(usize::from(one.depth)).copied();
        let ranged = |one: &RangedDoc| {
            Some(Ranged {
                depth: depth(one)?,
                value_m: one.value_m,
                low_m: one.low_m,
                median_m: one.median_m,
                high_m: one.high_m,
                beyond_share: one.beyond,
                none_share: one.none,
                refused: match one.refused {
                    1 => Some(Refused::MostlyNone),
                    2 => Some(Refused::TooWide),
                    _ => None,
                },
            })
        };
        let shares = |one: &RangedDoc| {
            let share = |(top_m, bottom_m, share): &(f64, f64, f64)| Share {
                top_m: *top_m,
                bottom_m: *bottom_m,
                share: *share,
            };
            let depth = depth(one).filter(|depth| depth.is_a_middle())?;
            Some((depth, one.shares.iter().map(share).collect()))
        };
        Self {
            count: doc.count,
            depths: doc.depths.iter().filter_map(ranged).collect(),
            shares: doc.depths.iter().filter_map(shares).collect(),
        }
    }
}
