//! The analysis of one cast: every value with the rule that made it and its range.

use crate::cast::Leg;
use crate::water::density::Density;

mod rules;

pub use rules::{Rule, RuleValue, Sought};

/// Rules a lesson chooses. It travels with every [`Analysis`], so that two casts are compared only like with like.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Method {
    /// Reference depth of the mixed-layer rules, metres (0.5).
    pub reference_m: f64,
    /// Temperature step that ends the mixed layer, °C (1.0).
    pub mixed_drop_c: f64,
    /// Cooling that makes a layer steep, °C per metre (1.0).
    pub steep_c_per_m: f64,
    /// Density formula, with the salt of the water where it takes any (Tanaka, fresh).
    pub density: Density,
}

impl Default for Method {
    fn default() -> Self {
        Self { reference_m: 0.5, mixed_drop_c: 1.0, steep_c_per_m: 1.0, density: Density::default() }
    }
}

/// QARTOD flag of a reading.
#[derive(Clone, Copy, Debug, PartialEq, Eq, PartialOrd, Ord)]
#[repr(u8)]
pub enum Flag {
    /// 1: passed.
    Pass = 1,
    /// 2: not evaluated.
    NotEvaluated = 2,
    /// 3: suspect.
    Suspect = 3,
    /// 4: failed.
    Fail = 4,
    /// 9: missing.
    Missing = 9,
}

/// Why a reading deserves a second look (methods 4, "Doubt"). At most one per reading: the first that applies, in this order.
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum Doubt {
    /// Outside what lake water can be. `point_lost_c`: the value with the decimal point put back, if that fits its
    /// neighbours (177 → 17.7).
    Range {
        /// A likely intended value, °C.
        point_lost_c: Option<f64>,
    },
    /// Sticks out from the readings above and below on the same leg (neighbour spike).
    Spike {
        /// The two neighbours on the same leg, °C.
        neighbours_c: (f64, f64),
        /// A likely intended value, °C (point lost, or two digits swapped) if one fits the neighbours.
        meant_c: Option<f64>,
    },
    /// Down and up differ by more than methods 3.2 allows for a repeat.
    Pair {
        /// The other leg's value, °C.
        other_c: f64,
    },
    /// Denser than water below it by more than the noise allows (the pair behind `inv` of methods 7.1).
    Inversion {
        /// Depth of the other reading of the pair, metres.
        other_depth_m: f64,
    },
}

/// What the checks say of one reading; same order and length as `Cast::readings`.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Checked {
    /// Roll-up of gross range, neighbour spike and density inversion (methods 4).
    pub flag: Flag,
    /// Gross range alone.
    pub gross_range: Flag,
    /// Differential spike along the same leg alone.
    pub spike: Flag,
    /// Density inversion along the same leg alone.
    pub inversion: Flag,
    /// Whether the profile uses it.
    pub used: bool,
    /// Why a person should look at it again, if so.
    pub doubt: Option<Doubt>,
}

/// One value of the profile: the mean of the used readings at one depth.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Level {
    /// Depth, metres.
    pub depth_m: f64,
    /// Mean temperature, °C.
    pub temp_c: f64,
    /// Standard deviation of that mean, °C: s/√(legs), floors of methods 5.8.
    pub sd_c: f64,
    /// Density by the formula of the method, kg m⁻³.
    pub density: f64,
    /// Number of legs averaged (1 or 2).
    pub legs: u8,
    /// Mean of the used readings going down, °C.
    pub down_c: Option<f64>,
    /// Mean of the used readings coming up, °C.
    pub up_c: Option<f64>,
}

/// Precision from down/up pairs (methods 3.1).
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub struct Pairs {
    /// Number of depths with both legs used.
    pub count: usize,
    /// s = √(Σd²/2n), °C, not floored; `None` without a pair.
    pub s_c: Option<f64>,
    /// Mean of |d|, °C.
    pub mean_abs_c: Option<f64>,
    /// Mean of d = down − up, °C.
    pub mean_c: Option<f64>,
    /// s_d, the ordinary standard deviation of the d's about their mean, °C; `None` with fewer than two pairs.
    pub sd_c: Option<f64>,
    /// 95 % of pairs are closer than this, °C: 2.7718 s (repeatability limit, √2·1.96·s).
    pub repeatability_c: Option<f64>,
    /// Largest |d|, °C.
    pub max_abs_c: Option<f64>,
    /// |mean d| > 2 s_d/√n with n ≥ 4: the legs differ systematically, not only by noise.
    pub systematic: bool,
    /// The s used for ranges, °C: floored at digit/√12, at 0.1 with fewer than 5 pairs, 0.1 without any.
    pub s_used_c: f64,
}

/// One interval of the profile (methods 5.2, 5.8).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Step {
    /// Upper depth, metres.
    pub top_m: f64,
    /// Lower depth, metres.
    pub bottom_m: f64,
    /// Cooling downward, °C per metre; negative where it warms.
    pub cooling_c_per_m: f64,
    /// Its standard uncertainty, °C per metre.
    pub u_c_per_m: f64,
    /// Density gained downward, kg m⁻³ per metre.
    pub densing_kg_m3_per_m: f64,
    /// In the span of the thermocline (cannot be told from the steepest).
    pub in_span: bool,
    /// In the main layer (metalimnion).
    pub in_main_layer: bool,
    /// In today's warm layer.
    pub in_warm_layer_today: bool,
}

/// State of the water (methods 7.1, 5.9).
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum State {
    /// Layered.
    Stratified,
    /// Cools downward, but no step survives the 1 °C per metre rule.
    Weak,
    /// No layer.
    Mixed,
    /// Colder on top, as under ice.
    Inverse,
    /// Heavier water on top.
    Unstable,
    /// Fewer than 4 depths or less than 1.5 m of them.
    TooFew,
}

/// Numbers behind the state.
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct StateFacts {
    /// Median temperature within 1 m of the first reading, °C.
    pub top_c: f64,
    /// Median temperature within 1 m of the last reading, °C.
    pub bottom_c: f64,
    /// rho(bottom) − rho(top), kg m⁻³.
    pub density_gain: f64,
    /// `inv` of methods 7.1 with its noise test, kg m⁻³; 0 when there is none.
    pub inversion: f64,
    /// Depths of the pair behind `inversion` (upper, lower), metres; `None` when `inversion` ≤ 0.03.
    pub inversion_pair_m: Option<(f64, f64)>,
    /// Smallest difference between two profile values that could be believed: 2.8 s, °C.
    pub believable_c: f64,
}

/// Depth of the thermocline and the span that cannot be told from it (methods 5.3, 5.8).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Thermocline {
    /// Middle of the steepest interval (or run of equal ones), metres.
    pub value_m: f64,
    /// Top of the steepest interval or run, metres.
    pub step_top_m: f64,
    /// Bottom of the steepest interval or run, metres.
    pub step_bottom_m: f64,
    /// Its cooling (warming for an inverse cast), °C per metre, positive.
    pub gradient_c_per_m: f64,
    /// Top of the span, metres.
    pub span_top_m: f64,
    /// Bottom of the span, metres.
    pub span_bottom_m: f64,
    /// Whether the members of the span touch one another.
    pub in_one_piece: bool,
    /// An equal maximum stands in a second, separate place.
    pub ambiguous: bool,
    /// False when the span is over half of the cast: "these readings can't tell".
    pub tellable: bool,
}

/// The steep layer (methods 5.5, 5.6, 5.10).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct Metalimnion {
    /// Upper edge, metres.
    pub top_m: f64,
    /// Range of the upper edge, metres.
    pub top_low_m: f64,
    /// Range of the upper edge, metres.
    pub top_high_m: f64,
    /// Lower edge, metres: where the deep layer begins.
    pub bottom_m: f64,
    /// Range of the lower edge, metres.
    pub bottom_low_m: f64,
    /// Range of the lower edge, metres; `None` when cut off.
    pub bottom_high_m: Option<f64>,
    /// The run touches the last reading: the deep layer was not reached.
    pub cut_off: bool,
    /// The run touches the first reading.
    pub from_the_first: bool,
    /// Number of surviving runs that are not near the surface, this one included.
    pub layers: usize,
}

/// Bottom of the mixed layer by one rule (methods 6.1, 5.10).
#[derive(Clone, Copy, Debug, PartialEq)]
pub enum MixedLayer {
    /// Found.
    At {
        /// Depth, metres.
        value_m: f64,
        /// Shallower end of its range, metres.
        low_m: f64,
        /// Deeper end of its range, metres.
        high_m: f64,
        /// Temperature looked for (reference − drop), °C.
        target_c: f64,
        /// The two levels the crossing lies between, metres.
        between_m: (f64, f64),
    },
    /// The rule's temperature is never reached.
    AtLeast {
        /// Depth of the last reading, metres.
        at_least_m: f64,
    },
}

/// A second, near-surface layer: likely a day's warming (methods 5.6).
#[derive(Clone, Copy, Debug, PartialEq)]
pub struct WarmLayerToday {
    /// Middle of its steepest interval, metres.
    pub value_m: f64,
    /// Top of its span within that run, metres.
    pub span_top_m: f64,
    /// Bottom of its span within that run, metres.
    pub span_bottom_m: f64,
    /// Upper edge of the run, metres.
    pub top_m: f64,
    /// Lower edge of the run, metres.
    pub bottom_m: f64,
    /// It is the only layer there is (then there is no thermocline).
    pub only: bool,
}

/// What the ranges of the mixed layer and of the steep layer's edges rest on. The thermocline's range is its span either way.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub enum RangesFrom {
    /// The law of propagation and neighbouring steps (methods 5.10).
    #[default]
    Propagated,
    /// 95 % of seeded trials, see [`certainty`](crate::certainty).
    Trials {
        /// Number of trials.
        count: u32,
    },
}

/// Everything computed from one cast by one method.
#[derive(Clone, Debug, PartialEq)]
pub struct Analysis {
    /// The rules used.
    pub method: Method,
    /// Checks, one per reading of the cast.
    pub checked: Vec<Checked>,
    /// The profile: depths strictly increasing.
    pub profile: Vec<Level>,
    /// Down/up agreement.
    pub pairs: Pairs,
    /// Intervals of the profile, one fewer than its levels.
    pub steps: Vec<Step>,
    /// State of the water.
    pub state: State,
    /// Numbers behind it; `None` with an empty profile.
    pub facts: Option<StateFacts>,
    /// Thermocline; `None` when mixed, inverse, unstable, too few, or near-surface only.
    pub thermocline: Option<Thermocline>,
    /// Steep layer of at least 1 °C per metre; `None` where it does not exist.
    pub metalimnion: Option<Metalimnion>,
    /// Mixed layer by the class rule; `None` when inverse, unstable or too few.
    pub mixed_layer: Option<MixedLayer>,
    /// The season's mixed layer (reference 2 m) when today's warm layer lies above the main one (methods 6.8).
    pub mixed_layer_season: Option<MixedLayer>,
    /// Today's warm layer, if there is one.
    pub warm_layer_today: Option<WarmLayerToday>,
    /// Inverse casts: the fastest warming, as a thermocline is told (value, span).
    pub fastest_warming: Option<Thermocline>,
    /// Inverse casts: middle of the interval where density changes most, metres.
    pub fastest_densing_m: Option<f64>,
    /// The quick rules ([`Rule::QUICK`]), class rules first of their kind; empty where none applies. Every rule:
    /// [`every_rule`](crate::layers::every_rule::every_rule).
    pub rules: Vec<RuleValue>,
    /// Warmest used reading: (°C, depth in metres, leg).
    pub warmest: Option<(f64, f64, Leg)>,
    /// Coldest used reading: (°C, depth in metres, leg).
    pub coldest: Option<(f64, f64, Leg)>,
    /// What the ranges of the mixed layer and of the steep layer's edges rest on.
    pub ranges_from: RangesFrom,
}
