//! What was found, line by line, and the numbers to write with: only what is uncovered, each with its range and rule.

use crate::document::{MarkDoc, MarkName};
use crate::numbers::{Range, WithNum, mark, middle, reading_decimals, reference_m, rounded};
use crate::screens::Sight;
use crate::screens::found::{is_warmer, mixed_layer_item};
use crate::screens::profile::mark_name;
use crate::view::{Num, ReportFound, ReportWord, Said};
use layercast_core::{Message, MixedLayer, RangesFrom, State, Thermocline};

/// One line and what it gives to write with.
struct Told {
    name: Message,
    value: Option<Num>,
    words: Message,
    range: Option<Range>,
    rule: Option<Said>,
    /// What its button says.
    label: Option<Message>,
}

impl Told {
    /// A depth with its range and rule.
    fn depth(
        name: &'static str,
        value: Num,
        range: Option<Range>,
        rule: Option<Said>,
        label: Message,
    ) -> Self {
        let (name, words) = (Message::new(name), Message::new("profile-unit-m"));
        Self { name, value: Some(value), words, range, rule, label: Some(label.num("depth", value)) }
    }

    /// Words in place of a depth.
    fn words(name: Message, words: &'static str, range: Option<Range>) -> Self {
        Self { name, value: None, words: Message::new(words), range, rule: None, label: None }
    }

    fn word(&self) -> Option<ReportWord> {
        let (label, value) = (self.label.clone()?, self.value?);
        let put = match &self.range {
            Some(range) => {
                Message::new("report-put-depth").num("depth", value).message("range", range.said())
            }
            None => Message::new("report-put-metres").num("depth", value),
        };
        let could_be =
            self.range.map(|range| Message::new("profile-could-be").message("range", range.said()));
        let about = match (could_be.map(Said::from), self.rule.clone()) {
            (Some(could_be), Some(rule)) => Some(Said::of_two("report-about", could_be, rule)),
            (could_be, rule) => could_be.or(rule),
        };
        Some(ReportWord { label: label.into(), put: put.into(), about })
    }

    fn row(self, marked: Option<Message>) -> ReportFound {
        ReportFound {
            name: self.name.into(),
            value: self.value,
            unit: self.words.into(),
            range: self.range.map(|range| range.said().into()),
            rule: self.rule,
            marked: marked.map(Into::into),
        }
    }
}

/// Something is still covered.
pub fn any_covered(sight: &Sight) -> bool {
    let shown = &sight.shown;
    !(shown.thermocline && shown.mixed_layer && shown.deep_layer && shown.steps)
}

/// The three lines of the page, top to bottom as the marks stand.
pub fn rows(sight: &Sight) -> Vec<ReportFound> {
    let lines = [
        (MarkName::Thermocline, thermocline(sight)),
        (MarkName::Mixed, mixed_layer(sight)),
        (MarkName::Deep, deep_layer(sight)),
    ];
    lines.into_iter().map(|(name, told)| told.row(marked(sight, name))).collect()
}

/// The group's own numbers.
pub fn bank(sight: &Sight) -> Vec<ReportWord> {
    let analysis = sight.context.analysis;
    let decimals = reading_decimals(sight.notebook.cast.digit_c);
    let layers = [thermocline(sight), mixed_layer(sight), deep_layer(sight)];
    let mut words: Vec<ReportWord> = layers.iter().filter_map(Told::word).collect();
    words.extend(gradient(sight));
    let extreme = |of: Option<(f64, f64, layercast_core::Leg)>, label: &'static str| {
        let (temp_c, depth_m, _) = of?;
        let put = Message::new("report-put-temp").number("temp", temp_c, decimals).depth("depth", depth_m);
        let label = Message::new(label).number("temp", temp_c, decimals);
        Some(ReportWord { label: label.into(), put: put.into(), about: None })
    };
    words.extend(extreme(analysis.warmest, "report-word-warmest"));
    words.extend(extreme(analysis.coldest, "report-word-coldest"));
    words.extend(analysis.pairs.max_abs_c.map(|apart_c| {
        let apart = |id: &'static str| Message::new(id).number("apart", rounded(apart_c, decimals), decimals);
        let about = Some(apart("profile-apart").into());
        ReportWord { label: apart("report-word-apart").into(), put: apart("report-put-apart").into(), about }
    }));
    words
}

/// The steepest step's °C per metre, where both the bars and which of them is the steepest may be seen.
fn gradient(sight: &Sight) -> Option<ReportWord> {
    let analysis = sight.context.analysis;
    let line = analysis.thermocline.or(analysis.fastest_warming);
    let line = line.filter(|line| line.tellable && sight.shown.steps && sight.shown.thermocline)?;
    let said = Message::new("report-word-gradient").number("gradient", rounded(line.gradient_c_per_m, 1), 1);
    let about = Message::new("report-about-step")
        .message("range", Range::of_marks(line.step_top_m, line.step_bottom_m).said());
    Some(ReportWord { label: said.clone().into(), put: said.into(), about: Some(about.into()) })
}

/// A line of which nothing may be told yet.
fn covered(name: MarkName) -> Told {
    Told::words(mark_name(name), "report-covered", None)
}

fn none(name: &'static str) -> Told {
    Told::words(Message::new(name), "profile-none", None)
}

fn thermocline(sight: &Sight) -> Told {
    let analysis = sight.context.analysis;
    if !sight.shown.thermocline {
        return covered(MarkName::Thermocline);
    }
    let weak = if analysis.state == State::Weak { "profile-weak-thermocline" } else { "profile-thermocline" };
    let steepest = Message::new("profile-rule-steepest-middle");
    let only_today = analysis.warm_layer_today.filter(|today| today.only);
    match (&analysis.thermocline, &analysis.fastest_warming, only_today) {
        (Some(told), _, _) => line(told, weak, "report-word-thermocline", steepest),
        (_, Some(told), _) => {
            line(told, "profile-warms-fastest", "report-word-warms", Message::new("report-rule-warming"))
        }
        (_, _, Some(today)) => {
            let range = Range::of_marks(today.span_top_m, today.span_bottom_m);
            let label = Message::new("report-word-today");
            let rule = Some(steepest.into());
            Told::depth("profile-today-steepest", middle(today.value_m), Some(range), rule, label)
        }
        _ => match analysis.state {
            State::Unstable | State::TooFew => {
                Told::words(Message::new("profile-thermocline"), "profile-cannot-tell", None)
            }
            _ => none("profile-thermocline"),
        },
    }
}

fn line(told: &Thermocline, name: &'static str, label: &'static str, rule: Message) -> Told {
    let range = Range::of_marks(told.span_top_m, told.span_bottom_m);
    if !told.tellable {
        return Told::words(Message::new(name), "profile-cannot-tell", Some(range));
    }
    Told::depth(name, middle(told.value_m), Some(range), Some(rule.into()), Message::new(label))
}

fn mixed_layer(sight: &Sight) -> Told {
    let analysis = sight.context.analysis;
    if !sight.shown.mixed_layer {
        return covered(MarkName::Mixed);
    }
    let rule = match is_warmer(analysis) {
        true => Message::new("profile-rule-temp-rise"),
        false => Message::new("profile-rule-temp-drop"),
    };
    let rule = rule.temp("drop", analysis.method.mixed_drop_c).depth("reference", reference_m(analysis));
    let name = Message::new("profile-mark-mixed");
    match analysis.mixed_layer {
        Some(MixedLayer::At { value_m, low_m, high_m, .. }) => {
            let range = Range::of_computed(low_m, high_m);
            let label = Message::new("report-word-mixed");
            Told::depth("profile-mixed-layer-to", range.value(value_m), Some(range), Some(rule.into()), label)
        }
        Some(MixedLayer::AtLeast { at_least_m }) => {
            // Which rule says "at least", and why, depends on the water: the sentence of Profile.
            let rule = mixed_layer_item(sight).and_then(|item| item.notes.into_iter().next());
            let label = Message::new("report-word-mixed-at-least");
            Told::depth("profile-mixed-layer-at-least", mark(at_least_m), None, rule, label)
        }
        None => match analysis.state {
            State::Inverse => Told::words(name, "profile-not-under-ice", None),
            _ => Told::words(name, "profile-cannot-tell", None),
        },
    }
}

fn deep_layer(sight: &Sight) -> Told {
    let analysis = sight.context.analysis;
    if !sight.shown.deep_layer {
        return covered(MarkName::Deep);
    }
    let name = || Message::new("profile-deep-layer");
    let Some(found) = analysis.metalimnion else {
        return match analysis.state {
            State::Inverse => Told::words(name(), "profile-not-under-ice", None),
            State::Unstable | State::TooFew => Told::words(name(), "profile-cannot-tell", None),
            _ => none("profile-deep-layer"),
        };
    };
    let rule = Some(Message::new("report-rule-deep").steep("steep", analysis.method.steep_c_per_m).into());
    let label = Message::new("report-word-deep");
    match found.bottom_high_m.filter(|_| !found.cut_off) {
        Some(high_m) => {
            let range = match analysis.ranges_from {
                RangesFrom::Propagated => Range::of_marks(found.bottom_low_m, high_m),
                RangesFrom::Trials { .. } => Range::of_computed(found.bottom_low_m, high_m),
            };
            Told::depth("profile-deep-layer-from", mark(found.bottom_m), Some(range), rule, label)
        }
        None => {
            let label = Message::new("report-word-deep-at-least");
            Told::depth("profile-deep-layer-deeper", mark(found.bottom_m), None, rule, label)
        }
    }
}

/// Where the group marked it, first of all.
fn marked(sight: &Sight, name: MarkName) -> Option<Message> {
    let sheet = sight.context.sheet;
    let doc: &MarkDoc = sheet.first_answer_marks().unwrap_or(&sheet.marks).get(name);
    match doc.depth_m {
        _ if doc.refused => Some(Message::new("profile-none")),
        Some(depth_m) => Some(Message::new("picture-metres").depth("depth", depth_m)),
        None => None,
    }
}
