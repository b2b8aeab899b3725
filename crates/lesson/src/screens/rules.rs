//! What other published rules find in the same water, the class's own first, and how far they lie apart.

use super::Sight;
use super::found::{is_warmer, is_warmer_by};
use crate::numbers::{WithNum, computed, mark, middle, reference_m};
use crate::view::{Num, RuleGroup, RuleRow, Said};
use layercast_core::layers::dense_step::DENSE_KG_M3_PER_M;
use layercast_core::layers::every_rule::every_rule;
use layercast_core::{Analysis, Message, Rule, RuleValue, Sought};

/// Rules that lie less than this apart are said to agree, metres: computed depths are told to a tenth.
const AGREED_M: f64 = 0.1;

/// The rules by depth they look for; empty where none applies.
pub fn groups(sight: &Sight) -> Vec<RuleGroup> {
    let analysis = sight.context.analysis;
    if analysis.rules.is_empty() {
        return Vec::new();
    }
    let every = every_rule(analysis);
    let group = |name: &'static str, sought: Sought| {
        let rows: Vec<RuleRow> = every
            .values
            .iter()
            .filter(|value| value.rule.seeks() == sought)
            .map(|value| row(value, analysis))
            .collect();
        RuleGroup { name: Message::new(name).into(), spread: spread(&rows, sought), rows }
    };
    vec![
        group("profile-thermocline", Sought::Thermocline),
        group("profile-mixed-layer-to", Sought::MixedLayerEnd),
    ]
}

fn row(value: &RuleValue, analysis: &Analysis) -> RuleRow {
    let own = matches!(value.rule, Rule::SteepestMiddle | Rule::TempDrop);
    RuleRow {
        name: name(value.rule, analysis).into(),
        depth: value.value_m.map(|m| depth(value.rule, m)),
        own,
    }
}

/// A rule's name.
fn name(rule: Rule, analysis: &Analysis) -> Message {
    let method = &analysis.method;
    match rule {
        Rule::SteepestMiddle => Message::new("profile-rule-steepest-middle"),
        Rule::DensestStep => Message::new("profile-rule-densest"),
        Rule::Centroid => Message::new("profile-rule-balance-point"),
        Rule::Parabola => Message::new("profile-rule-parabola"),
        Rule::MonotoneCurve => Message::new("profile-rule-smooth-curve"),
        Rule::TempDrop | Rule::TempDrop02 | Rule::TempDrop05 | Rule::TempDrop08 | Rule::TempDrop10 => {
            let step_c = rule.temp_step_c(method).unwrap_or(method.mixed_drop_c);
            let warmer = match rule {
                Rule::TempDrop => is_warmer(analysis),
                _ => is_warmer_by(analysis, step_c),
            };
            match warmer {
                true => Message::new("profile-rule-temp-rise"),
                false => Message::new("profile-rule-temp-drop"),
            }
            .temp("drop", step_c)
            .depth("reference", reference_m(analysis))
        }
        Rule::DensityRise | Rule::DensityRise003 | Rule::DensityRise0125 => {
            let decimals = match rule {
                Rule::DensityRise003 => 2,
                Rule::DensityRise0125 => 3,
                _ => 1,
            };
            Message::new("profile-rule-density-rise")
                .number("rise", rule.density_rise_kg_m3().unwrap_or(0.0), decimals)
                .depth("reference", reference_m(analysis))
        }
        Rule::FirstSteepTop => {
            Message::new("profile-rule-first-steep-top").steep("steep", method.steep_c_per_m)
        }
        Rule::FirstSteepMiddle => Message::new("profile-rule-first-steep-middle"),
        Rule::FirstDenseTop => {
            Message::new("profile-rule-first-dense-top").number("gain", DENSE_KG_M3_PER_M, 1)
        }
        Rule::SharpestBend => Message::new("profile-rule-sharpest-bend"),
        Rule::GreatestAngle => Message::new("profile-rule-greatest-angle"),
        Rule::BrokenStick => Message::new("profile-rule-broken-stick"),
        Rule::ThreeLayers => Message::new("profile-rule-three-layers"),
    }
}

fn depth(rule: Rule, value_m: f64) -> Num {
    match rule {
        Rule::SteepestMiddle | Rule::DensestStep | Rule::FirstSteepMiddle => middle(value_m),
        Rule::FirstSteepTop | Rule::FirstDenseTop | Rule::SharpestBend | Rule::GreatestAngle => mark(value_m),
        Rule::Centroid
        | Rule::Parabola
        | Rule::MonotoneCurve
        | Rule::TempDrop
        | Rule::TempDrop02
        | Rule::TempDrop05
        | Rule::TempDrop08
        | Rule::TempDrop10
        | Rule::DensityRise003
        | Rule::DensityRise
        | Rule::DensityRise0125
        | Rule::BrokenStick
        | Rule::ThreeLayers => computed(value_m),
    }
}

/// How far the rules of a list lie apart, in the numbers that the list shows; `None` where fewer than two find a depth.
fn spread(rows: &[RuleRow], sought: Sought) -> Option<Said> {
    let found: Vec<Num> = rows.iter().filter_map(|row| row.depth).collect();
    let least = found.iter().copied().reduce(|a, b| if b.value < a.value { b } else { a })?;
    let most = found.iter().copied().reduce(|a, b| if b.value > a.value { b } else { a })?;
    if found.len() < 2 {
        return None;
    }
    let (found, none) = (found.len(), rows.len() - found.len());
    let counted = |id: Message| id.count("found", found).count("none", none).num("least", least);
    if most.value - least.value < AGREED_M - 1e-9 {
        let agree = match sought {
            Sought::Thermocline => Message::new("profile-rules-thermocline-agree"),
            Sought::MixedLayerEnd => Message::new("profile-rules-mixed-agree"),
        };
        return Some(counted(agree).number("within", AGREED_M, 1).into());
    }
    let apart = match sought {
        Sought::Thermocline => Message::new("profile-rules-thermocline-apart"),
        Sought::MixedLayerEnd => Message::new("profile-rules-mixed-apart"),
    };
    Some(counted(apart).num("most", most).into())
}
