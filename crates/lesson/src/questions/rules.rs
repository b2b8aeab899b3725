//! Published rules beside the class's own, as a list a student can name one from.

use super::kind::{Field, Input, Line};
use super::water::Water;
use layercast_core::{Message, Rule, Sought};

/// "No rule, I read it off."
const NONE: &str = "none";

/// Rules that can give what is sought, of those that a student can work out by hand; the class's own first.
fn rules_of(sought: Sought) -> impl Iterator<Item = Rule> {
    Rule::QUICK.into_iter().filter(move |rule| rule.seeks() == sought)
}

/// What the notebook keeps of an offered rule.
fn value(rule: Rule) -> &'static str {
    match rule {
        Rule::SteepestMiddle => "steepest_middle",
        Rule::DensestStep => "densest_step",
        Rule::TempDrop => "temp_drop",
        Rule::DensityRise => "density_rise",
        Rule::FirstSteepTop => "first_steep_top",
        Rule::FirstSteepMiddle => "first_steep_middle",
        _ => NONE, // not offered
    }
}

/// An offered rule in words.
pub(crate) fn name(rule: Rule) -> Message {
    Message::new(match rule {
        Rule::SteepestMiddle => "ask-rule-steepest-middle",
        Rule::DensestStep => "ask-rule-densest-step",
        Rule::TempDrop => "ask-rule-temp-drop",
        Rule::DensityRise => "ask-rule-density-rise",
        Rule::FirstSteepTop => "ask-rule-first-steep-top",
        Rule::FirstSteepMiddle => "ask-rule-first-steep-middle",
        _ => "ask-rule-none", // not offered
    })
}

/// "Which rule did you use?" with its list.
pub(crate) fn line(sought: Sought) -> Line {
    let mut options = vec![("", Message::new("ask-rule-choose"))];
    options.extend(rules_of(sought).map(|rule| (value(rule), name(rule))));
    options.push((NONE, Message::new("ask-rule-none")));
    let field =
        Field { input: Input::List(options), ..Field::number("rule", Message::new("ask-name-rule"), None) };
    Line::new(Message::new("ask-label-rule"), vec![field])
}

/// The other rules for it with their depths on this water, metres.
pub(crate) fn others(water: &Water, sought: Sought) -> Vec<(Rule, f64)> {
    let found = &water.analysis().rules;
    let depth = |rule: Rule| found.iter().find(|r| r.rule == rule).and_then(|r| r.value_m);
    rules_of(sought).skip(1).filter_map(|rule| Some((rule, depth(rule)?))).collect()
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
    rules_of(sought).find(|rule| value(*rule) == text).map_or(Named::Nothing, Named::Rule)
}
