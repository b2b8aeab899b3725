//! Published rules beside the class's own, as a list a student can name one from.

use super::kind::{Field, Input, Line};
use super::water::{SLACK, Source, Water};
use layercast_core::layers::mixed_layer::{DENSITY_RISE_KG_M3, density_rise_depth_m};
use layercast_core::layers::{densest::densest, first_steep::first_steep, steps::steps};
use layercast_core::{Level, Message, Rule, Sought, Step};

/// "No rule, I read it off."
const NONE: &str = "none";

/// Rules that can give what is sought, of those that a student can work out by hand; the class's own first.
fn rules_of(sought: Sought) -> impl Iterator<Item = Rule> {
    Rule::QUICK.into_iter().filter(move |rule| rule.seeks() == sought)
}

/// What the notebook keeps of an offered rule, and its words.
fn offered(rule: Rule) -> (&'static str, &'static str) {
    match rule {
        Rule::SteepestMiddle => ("steepest_middle", "ask-rule-steepest-middle"),
        Rule::DensestStep => ("densest_step", "ask-rule-densest-step"),
        Rule::TempDrop => ("temp_drop", "ask-rule-temp-drop"),
        Rule::DensityRise => ("density_rise", "ask-rule-density-rise"),
        Rule::FirstSteepTop => ("first_steep_top", "ask-rule-first-steep-top"),
        Rule::FirstSteepMiddle => ("first_steep_middle", "ask-rule-first-steep-middle"),
        // Not offered.
        Rule::Centroid
        | Rule::Parabola
        | Rule::MonotoneCurve
        | Rule::TempDrop02
        | Rule::TempDrop05
        | Rule::TempDrop08
        | Rule::TempDrop10
        | Rule::DensityRise003
        | Rule::DensityRise0125
        | Rule::FirstDenseTop
        | Rule::SharpestBend
        | Rule::GreatestAngle
        | Rule::BrokenStick
        | Rule::ThreeLayers => (NONE, "ask-rule-none"),
    }
}

/// An offered rule in words.
pub(crate) fn name(rule: Rule) -> Message {
    Message::new(offered(rule).1)
}

/// "Which rule did you use?" with its list.
pub(crate) fn line(sought: Sought) -> Line {
    let mut options = vec![("", Message::new("ask-rule-choose"))];
    options.extend(rules_of(sought).map(|rule| (offered(rule).0, name(rule))));
    options.push((NONE, Message::new("ask-rule-none")));
    let field =
        Field { input: Input::List(options), ..Field::number("rule", Message::new("ask-name-rule"), None) };
    Line::new(Message::new("ask-label-rule"), vec![field])
}

/// The other rules for it with their depths on this water, metres: by the mean, then going down and coming up.
pub(crate) fn others(water: &Water, sought: Sought) -> Vec<(Rule, f64)> {
    let found = &water.analysis().rules;
    let depth = |rule: Rule| found.iter().find(|r| r.rule == rule).and_then(|r| r.value_m);
    let rules = || rules_of(sought).skip(1);
    let mut list: Vec<(Rule, f64)> = rules().filter_map(|rule| Some((rule, depth(rule)?))).collect();
    // Where only a day's layer is there, the mean has no densest step, and no leg has one.
    let told = |rule: &Rule| !found.is_empty() && (*rule != Rule::DensestStep || depth(*rule).is_some());
    for source in [Source::Down, Source::Up].into_iter().filter(|_| water.analysis().pairs.count > 0) {
        let leg = leg(water, source);
        list.extend(rules().filter(told).filter_map(|rule| Some((rule, by_leg(water, &leg, rule)?))));
    }
    list
}

/// The levels as one leg has them.
pub(crate) fn leg(water: &Water, source: Source) -> Vec<Level> {
    let density = water.analysis().method.density;
    let level = |l: &Level| {
        let temp_c = Water::of(l, source)?;
        Some(Level { temp_c, density: density.kg_m3(temp_c), ..*l })
    };
    water.levels().iter().filter_map(level).collect()
}

/// Places of the steps of the main layer; of all steps where none is that steep.
pub(crate) fn main_steps(water: &Water) -> std::ops::Range<usize> {
    let main = || water.steps().iter().enumerate().filter(|(_, s)| s.in_main_layer).map(|(i, _)| i);
    main().next().zip(main().next_back()).map_or(0..water.steps().len(), |(a, b)| a..b + 1)
}

/// Whether a depth lies in the step that changes fastest as one leg has it: the class's own rule, from that leg.
pub(crate) fn is_fastest_of_a_leg(water: &Water, depth_m: f64) -> bool {
    let sign = if water.warms() { -1.0 } else { 1.0 };
    [Source::Down, Source::Up].into_iter().filter(|_| water.analysis().pairs.count > 0).any(|source| {
        let leg = leg(water, source);
        if leg.len() != water.levels().len() {
            return false;
        }
        let steps = steps(&leg);
        let main = steps.get(main_steps(water)).unwrap_or(&steps);
        let rate = |step: &Step| sign * step.cooling_c_per_m;
        let most = main.iter().map(rate).fold(f64::NEG_INFINITY, f64::max);
        main.iter().any(|step| {
            rate(step) >= most - SLACK && depth_m >= step.top_m - SLACK && depth_m <= step.bottom_m + SLACK
        })
    })
}

/// What a rule says of one leg, metres; the densest step is sought where the main layer is, as by the mean.
fn by_leg(water: &Water, leg: &[Level], rule: Rule) -> Option<f64> {
    let method = &water.analysis().method;
    let steep = || first_steep(&steps(leg), method.steep_c_per_m);
    match rule {
        Rule::DensestStep => {
            let whole = leg.len() == water.levels().len();
            densest(leg, main_steps(water)).filter(|_| whole).map(|d| d.value_m)
        }
        Rule::DensityRise => density_rise_depth_m(leg, method.reference_m, DENSITY_RISE_KG_M3),
        Rule::FirstSteepTop => steep().map(|(top_m, _)| top_m),
        Rule::FirstSteepMiddle => steep().map(|(_, middle_m)| middle_m),
        // The class's own are judged by themselves, and the rest is not offered.
        Rule::SteepestMiddle
        | Rule::Centroid
        | Rule::Parabola
        | Rule::MonotoneCurve
        | Rule::TempDrop
        | Rule::TempDrop02
        | Rule::TempDrop05
        | Rule::TempDrop08
        | Rule::TempDrop10
        | Rule::DensityRise003
        | Rule::DensityRise0125
        | Rule::FirstDenseTop
        | Rule::SharpestBend
        | Rule::GreatestAngle
        | Rule::BrokenStick
        | Rule::ThreeLayers => None,
    }
}

/// What a student named.
#[derive(Clone, Copy, Debug, PartialEq)]
pub(crate) enum Named {
    /// Nothing chosen yet.
    Nothing,
    /// A rule.
    Rule(Rule),
    /// "No rule, I read it off."
    None,
}

/// Reads the list.
pub(crate) fn named(text: &str, sought: Sought) -> Named {
    if text == NONE {
        return Named::None;
    }
    rules_of(sought).find(|rule| offered(*rule).0 == text).map_or(Named::Nothing, Named::Rule)
}
