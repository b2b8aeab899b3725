//! What other published rules find in the same water, the class's own first.

use super::Sight;
use super::found::is_warmer;
use crate::numbers::{WithNum, computed, mark, middle, reference_m};
use crate::view::{Num, RuleGroup, RuleRow};
use layercast_core::{Analysis, Message, Rule, RuleValue, Sought};

/// The rules by depth they look for; empty where none applies.
pub fn groups(sight: &Sight) -> Vec<RuleGroup> {
    let analysis = sight.context.analysis;
    let group = |name: &'static str, sought: Sought| {
        let rows: Vec<RuleRow> = analysis
            .rules
            .iter()
            .filter(|value| value.rule.seeks() == sought)
            .map(|value| row(value, analysis))
            .collect();
        (!rows.is_empty()).then(|| RuleGroup { name: Message::new(name).into(), rows })
    };
    [
        group("profile-thermocline", Sought::Thermocline),
        group("profile-mixed-layer-to", Sought::MixedLayerEnd),
    ]
    .into_iter()
    .flatten()
    .collect()
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
        Rule::TempDrop => match is_warmer(analysis) {
            true => Message::new("profile-rule-temp-rise"),
            false => Message::new("profile-rule-temp-drop"),
        }
        .temp("drop", method.mixed_drop_c)
        .depth("reference", reference_m(analysis)),
        Rule::DensityRise => Message::new("profile-rule-density-rise")
            .number("rise", 0.1, 1)
            .depth("reference", reference_m(analysis)),
        Rule::FirstSteepTop => {
            Message::new("profile-rule-first-steep-top").steep("steep", method.steep_c_per_m)
        }
        Rule::FirstSteepMiddle => Message::new("profile-rule-first-steep-middle"),
    }
}

fn depth(rule: Rule, value_m: f64) -> Num {
    match rule {
        Rule::SteepestMiddle | Rule::DensestStep => middle(value_m),
        Rule::TempDrop | Rule::DensityRise => computed(value_m),
        Rule::FirstSteepTop => mark(value_m),
        Rule::FirstSteepMiddle => middle(value_m),
    }
}
