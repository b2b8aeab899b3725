//! What goes beyond the layers: how sure, every rule, stability, the pairs one by one, the corrections.

use layercast_core::cast::corrections::{Outcome, Refusal};
use layercast_core::cast::pair_verdicts::{Repeat, pair_verdicts};
use layercast_core::certainty::{Certainty, Depth, Plan, Refused, SEED, Unsure, certainty};
use layercast_core::layers::every_rule::{Spread, every_rule};
use layercast_core::stability::stability;
use layercast_core::stability::whole::Whole;
use layercast_core::{Analysis, Cast, Rule};
use layercast_exchange::document::CorrectionDoc;
use serde_json::{Value, json};

/// Ranges from so many trials; null where there is nothing to range, or no trials were asked for.
pub fn sure(cast: &Cast, found: &Analysis, trials: u32) -> Value {
    let plan = Plan::new(cast, found, &Unsure::default());
    if trials == 0 || plan.width() == 0 {
        return Value::Null;
    }
    let told = certainty(&plan, SEED, trials);
    json!({ "trials": told.count, "seed": SEED, "depths": depths(&told) })
}

fn depths(told: &Certainty) -> Value {
    let depth = |one: &layercast_core::certainty::Ranged| {
        let shares = told.shares(one.depth).unwrap_or(&[]).iter().filter(|share| share.share > 0.0);
        json!({
            "id": depth_id(one.depth),
            "value_m": one.value_m,
            "low_m": one.low_m,
            "median_m": one.median_m,
            "high_m": one.high_m,
            "beyond_share": one.beyond_share,
            "none_share": one.none_share,
            "refused": one.refused.map(|refused| match refused {
                Refused::MostlyNone => "mostly_none",
                Refused::TooWide => "too_wide",
            }),
            "shares": shares.map(|s| json!({ "top_m": s.top_m, "bottom_m": s.bottom_m, "share": s.share }))
                .collect::<Value>(),
        })
    };
    told.depths.iter().map(depth).collect()
}

fn depth_id(depth: Depth) -> &'static str {
    match depth {
        Depth::Thermocline => "thermocline",
        Depth::MixedLayer => "mixed_layer",
        Depth::MixedLayerSeason => "mixed_layer_season",
        Depth::MetalimnionTop => "metalimnion_top",
        Depth::MetalimnionBottom => "metalimnion_bottom",
        Depth::WarmLayerToday => "warm_layer_today",
        Depth::FastestWarming => "fastest_warming",
        Depth::FastestDensing => "fastest_densing",
    }
}

/// What every published rule says: `[{ id, value_m or null }]`.
pub fn rules(found: &Analysis) -> Value {
    let all = every_rule(found);
    all.values.iter().map(|one| json!({ "id": rule_id(one.rule), "value_m": one.value_m })).collect()
}

/// How far the rules lie apart.
pub fn spreads(found: &Analysis) -> Value {
    let all = every_rule(found);
    let spread = |spread: Option<Spread>| {
        spread.map(|s| json!({ "rules": s.rules, "shallowest_m": s.shallowest_m, "deepest_m": s.deepest_m }))
    };
    json!({
        "thermocline": spread(all.thermocline_spread),
        "mixed_layer": spread(all.mixed_layer_spread),
        "thresholds": spread(all.thresholds_spread),
    })
}

fn rule_id(rule: Rule) -> &'static str {
    match rule {
        Rule::SteepestMiddle => "steepest_middle",
        Rule::DensestStep => "densest_step",
        Rule::Centroid => "centroid",
        Rule::Parabola => "parabola",
        Rule::MonotoneCurve => "monotone_curve",
        Rule::TempDrop => "temp_drop",
        Rule::TempDrop02 => "temp_drop_0.2",
        Rule::TempDrop05 => "temp_drop_0.5",
        Rule::TempDrop08 => "temp_drop_0.8",
        Rule::TempDrop10 => "temp_drop_1.0",
        Rule::DensityRise003 => "density_rise_0.03",
        Rule::DensityRise => "density_rise_0.1",
        Rule::DensityRise0125 => "density_rise_0.125",
        Rule::FirstSteepTop => "first_steep_top",
        Rule::FirstSteepMiddle => "first_steep_middle",
        Rule::FirstDenseTop => "first_dense_top",
        Rule::SharpestBend => "sharpest_bend",
        Rule::GreatestAngle => "greatest_angle",
        Rule::BrokenStick => "broken_stick",
        Rule::ThreeLayers => "three_layers",
    }
}

/// How hard the water is to mix; without a map of the basin everything is for each square metre of a column.
pub fn mixing(cast: &Cast, found: &Analysis) -> Value {
    let told = stability(found, cast.bed_m, None);
    let steps = told.steps.iter().map(|step| {
        json!({
            "top_m": step.top_m,
            "bottom_m": step.bottom_m,
            "n2_per_s2": step.n2_per_s2,
            "period_s": step.period_s,
            "resistance": step.resistance,
        })
    });
    let column = |column: &Whole| {
        json!({
            "depth_m": column.depth_m,
            "mean_temp_c": column.mean_temp_c,
            "mean_density_kg_m3": column.mean_density_kg_m3,
            "heat_j_m2": column.heat_j_m2,
            "schmidt_j_m2": column.schmidt_j_m2,
            "schmidt_sd_j_m2": column.schmidt_sd_j_m2,
            "mixing": column.mixing.iter()
                .map(|work| json!({ "to_depth_m": work.to_depth_m, "work_j_m2": work.work_j_m2 }))
                .collect::<Value>(),
        })
    };
    json!({
        "column": told.column.as_ref().map(column),
        "bed_assumed": told.bed_assumed,
        "anomaly_j_m3": told.anomaly_j_m3,
        "steps": steps.collect::<Value>(),
    })
}

/// Down/up agreement, as a whole and depth by depth.
pub fn pairs(found: &Analysis) -> Value {
    let pairs = &found.pairs;
    let each = pair_verdicts(&found.profile, &found.steps).into_iter().map(|pair| {
        json!({
            "depth_m": pair.depth_m,
            "difference_c": pair.d_c,
            "allowed_c": pair.allowed_c,
            "verdict": match pair.verdict {
                Repeat::Good => "good",
                Repeat::LookAgain => "look_again",
                Repeat::ReadAgain => "read_again",
            },
        })
    });
    json!({
        "count": pairs.count,
        "s_c": pairs.s_c,
        "mean_c": pairs.mean_c,
        "sd_c": pairs.sd_c,
        "mean_abs_c": pairs.mean_abs_c,
        "repeatability_c": pairs.repeatability_c,
        "max_abs_c": pairs.max_abs_c,
        "systematic": pairs.systematic,
        "s_used_c": pairs.s_used_c,
        "each": each.collect::<Value>(),
    })
}

/// Every correction and what became of it; one that waits for a field has neither numbers nor a refusal.
pub fn corrections(list: &[CorrectionDoc], outcomes: &[Option<Outcome>]) -> Value {
    let one = |(doc, outcome): (&CorrectionDoc, &Option<Outcome>)| {
        let (changed, largest, refused) = match outcome {
            Some(Outcome::Done { changed, largest }) => (Some(changed), Some(largest), None),
            Some(Outcome::Refused(refusal)) => (None, None, Some(refusal_id(*refusal))),
            None => (None, None, None),
        };
        json!({ "id": doc.kind, "changed": changed, "largest": largest, "refused": refused })
    };
    list.iter().zip(outcomes).map(one).collect()
}

fn refusal_id(refusal: Refusal) -> &'static str {
    match refusal {
        Refusal::Senseless => "senseless",
        Refusal::PointsTooClose => "points_too_close",
        Refusal::Twice => "twice",
        Refusal::NoPairs => "no_pairs",
        Refusal::WrongSign => "wrong_sign",
        Refusal::TooSlow => "too_slow",
    }
}
