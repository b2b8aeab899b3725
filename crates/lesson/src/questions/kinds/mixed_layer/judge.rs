//! The three parts judged.

use super::crossing::{
    Crossing, crossings, depths, drop_c, nearest_mark, other_rules, reference_m, same, targets, wrong_pairs,
    wrong_targets,
};
use super::{LEAST_M, MixedLayerEnd, NEAREST, OTHER_RULE_M, PREVIOUS, SURFACE, THERMOCLINE};
use crate::questions::kind::{Accepted, Judged, Question, Verdict, only};
use crate::questions::ranges::{Range, Stand, accepted, almost, digits, number, quoted, right_said, stand};
use crate::questions::rules::{Named, name, named};
use crate::questions::say::{Numbers, bare, stretch};
use crate::questions::text::{
    Fields, Measure, field, in_metres, joined, read_range, short, stretch_in_metres,
};
use crate::questions::water::{SLACK, Source};
use layercast_core::{Message, Rule, Sought};

impl MixedLayerEnd {
    /// The temperature looked for.
    pub(super) fn judge_temp(q: &Question, fields: &Fields) -> Judged {
        let typed = match number(fields, "temp", Measure::Temperature) {
            Ok(typed) => typed,
            Err(slip) => return *slip,
        };
        let text = field(fields, "temp");
        let told =
            |id: &'static str| Message::new(id).text("yours", short(text)).m("depth", reference_m(q.water));
        match stand(text, &typed, typed.value, &targets(q.water), &wrong_targets(q.water), None) {
            Stand::Right(range) => {
                let own = Accepted { value: Some(typed.value), ..accepted(&range) };
                let in_words = Message::new("ask-value-c").message("value", bare(range.value));
                let right = told("ask-9-temp-yes");
                let said = right_said(right, quoted(text), (typed.value, &typed), range.value, in_words, 1);
                Judged::yes(said, own).note(digits(q.water, &typed, q.water.decimals_by(Source::Mean)))
            }
            Stand::Slip(slip) => slip,
            Stand::Near => almost(told("ask-9-temp-almost")),
            Stand::Off(ideas) => match only(&ideas) {
                Some(SURFACE) => Judged::idea(SURFACE, told("ask-9-surface")),
                Some(PREVIOUS) => Judged::idea(PREVIOUS, told("ask-9-previous")),
                _ => Judged::not_yet(told("ask-9-temp-no").number("drop", drop_c(q.water), 1)),
            },
        }
    }

    /// The two marks.
    pub(super) fn judge_pair(q: &Question, fields: &Fields) -> Judged {
        let (from, to) = (field(fields, "from"), field(fields, "to"));
        let slip = |id: &'static str| Judged::slip(Message::new(id).text("yours", short(&joined(from, to))));
        let Some((a, b)) = read_range(from, to) else { return slip("ask-slip-two-depths") };
        let meant = q.water.meant_mark(a).zip(q.water.meant_mark(b)).filter(|(a, b)| b > a);
        let Some(given) = meant else { return slip("ask-slip-no-marks") };
        let told = |id: &'static str| {
            Message::new(id).message("yours", stretch_in_metres(from, to)).m("depth", reference_m(q.water))
        };
        let right = crossings(q.water, Self::own_target(q));
        if let Some((source, ..)) = right.iter().find(|(_, _, at)| same(at.marks_m, given)) {
            let accepted = Accepted { stretch_m: Some(given), source: Some(*source), ..Accepted::default() };
            return Judged::yes(told("ask-9-pair-yes"), accepted);
        }
        let matching: Vec<&'static str> = (wrong_pairs(q.water).into_iter())
            .filter(|(_, pair)| same(*pair, given) && !right.iter().any(|(_, _, at)| same(at.marks_m, *pair)))
            .map(|(key, _)| key)
            .collect();
        let rules = other_rules(q.water);
        let choice = named(field(fields, "rule"), Sought::MixedLayerEnd);
        if let Some((rule, ..)) = rules.iter().find(|(_, pair, _)| same(*pair, given)) {
            match choice {
                Named::Rule(chosen)
                    if rules.iter().any(|(r, pair, _)| *r == chosen && same(*pair, given)) =>
                {
                    let accepted =
                        Accepted { stretch_m: Some(given), rule: Some(chosen), ..Accepted::default() };
                    let said = told("ask-yes-other-rule").message("rule", name(chosen));
                    let class = Message::new("ask-9-rule")
                        .number("drop", drop_c(q.water), 1)
                        .m("depth", reference_m(q.water));
                    return Judged { accepted, ..Judged::new(Verdict::YesByAnotherRule, said) }
                        .note(Some(class));
                }
                Named::Nothing => {
                    let said = told("ask-which-rule")
                        .message("rule", name(*rule))
                        .message("class", name(Rule::TempDrop));
                    return Judged::new(Verdict::WhichRule, said);
                }
                Named::Rule(_) if matching.is_empty() => return Judged::not_yet(told("ask-not-that-rule")),
                Named::None if matching.is_empty() => return Judged::not_yet(told("ask-read-off")),
                _ => {}
            }
        }
        let holds = |at: &Crossing| given.0 <= at.marks_m.0 + SLACK && at.marks_m.1 <= given.1 + SLACK;
        match only(&matching) {
            Some(SURFACE) => Judged::idea(SURFACE, told("ask-9-surface")),
            Some(PREVIOUS) => Judged::idea(PREVIOUS, told("ask-9-previous")),
            Some(THERMOCLINE) => Judged::idea(THERMOCLINE, told("ask-9-thermocline")),
            _ if right.iter().any(|(_, _, at)| holds(at)) => almost(told("ask-9-pair-long")),
            _ => Judged::not_yet(told("ask-9-pair-no")),
        }
    }

    /// The depth in the step.
    pub(super) fn judge_depth(q: &Question, fields: &Fields) -> Judged {
        let text = field(fields, "depth");
        let told = |id: &'static str| Message::new(id).message("yours", in_metres(text));
        let typed = match number(fields, "depth", Measure::Length) {
            Ok(typed) => typed,
            Err(slip) => return *slip,
        };
        let Some(part) = q.part(1) else { return Judged::new(Verdict::Waits, told("ask-9-waits")) };
        let marks_m = part.stretch_m.unwrap_or_default();
        let ranges = match part.rule {
            Some(rule) => (other_rules(q.water).into_iter())
                .filter(|(r, pair, _)| *r == rule && same(*pair, marks_m))
                .map(|(_, _, value)| Range { source: Source::Mean, value, give: OTHER_RULE_M })
                .collect(),
            None => depths(q.water, marks_m, Self::own_target(q)),
        };
        let right = ranges.iter().any(|r| r.holds(typed.value));
        if !right
            && !typed.unit_is_wrong
            && let Some(judged) = Self::by_other_rule(q, marks_m, typed.value, fields)
        {
            return judged;
        }
        let outside =
            !typed.unit_is_wrong && (typed.value < marks_m.0 - SLACK || typed.value > marks_m.1 + SLACK);
        let beyond = || stretch(told("ask-9-depth-outside"), "from", "to", marks_m, 1);
        let wrongs = nearest_mark(&ranges, marks_m);
        match stand(text, &typed, typed.value, &ranges, &wrongs, None) {
            Stand::Right(nearest) => {
                // The sum shown afterwards is that of the means: where they fit, they are named.
                let of_means = ranges.iter().find(|r| r.source == Source::Mean && r.holds(typed.value));
                let range = of_means.copied().unwrap_or(nearest);
                let own = Accepted { value: Some(typed.value), ..accepted(&range) };
                let in_words = Message::new("ask-value-m").m("value", range.value);
                let (right, typed_m) = (told("ask-9-depth-yes"), (typed.value, &typed));
                let said = right_said(right, in_metres(text), typed_m, range.value, in_words, 1);
                Judged::yes(said, own)
                    .note((typed.decimals > 2).then(|| Message::new("ask-note-digits-depth")))
            }
            Stand::Slip(slip) => slip,
            Stand::Near if outside => almost(beyond()),
            Stand::Near => almost(told("ask-9-depth-almost")),
            Stand::Off(ideas) => match only(&ideas) {
                Some(NEAREST) => Judged::idea(NEAREST, told("ask-9-nearest")),
                _ if outside => Judged::not_yet(beyond()),
                _ => Judged::not_yet(told("ask-9-depth-no")),
            },
        }
    }

    /// A depth in the right step that another rule gives: right if that rule is named. `None`: no rule gives it, or "no
    /// rule" was said.
    fn by_other_rule(q: &Question, marks_m: (f64, f64), x: f64, fields: &Fields) -> Option<Judged> {
        let told = |id: &'static str| Message::new(id).message("yours", in_metres(field(fields, "depth")));
        let fitting: Vec<Rule> = (other_rules(q.water).into_iter())
            .filter(|(_, pair, z)| same(*pair, marks_m) && (x - z).abs() <= LEAST_M + SLACK)
            .map(|(rule, ..)| rule)
            .collect();
        let first = *fitting.first()?;
        match named(field(fields, "rule"), Sought::MixedLayerEnd) {
            Named::Nothing => {
                let said = told("ask-which-rule")
                    .message("rule", name(first))
                    .message("class", name(Rule::TempDrop));
                Some(Judged::new(Verdict::WhichRule, said))
            }
            Named::Rule(chosen) if fitting.contains(&chosen) => {
                let accepted = Accepted { value: Some(x), rule: Some(chosen), ..Accepted::default() };
                let said = told("ask-yes-other-rule").message("rule", name(chosen));
                Some(Judged { accepted, ..Judged::new(Verdict::YesByAnotherRule, said) })
            }
            _ => None,
        }
    }
}
