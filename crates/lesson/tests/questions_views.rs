//! What a question shows: no number of its answer before it is settled, words for everything in both languages.
//!
//! Long because every kind is looked at in each of its states.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

use crate::questions_support;

use layercast_core::MixedLayer;
use layercast_lesson::document::{Answer, Sheet, Try};
use layercast_lesson::questions::{self, Asked};
use layercast_lesson::view::{QuestionView, Said, SaidArg, SumLine};
use questions_support::answers::{crossing_of, mixed_end, steep_layer};
use questions_support::{Fields, Pond, all_ponds, demo, fields, why, words};
use std::collections::{BTreeMap, BTreeSet};

/// Every message of a view, with those inside it.
fn said(view: &QuestionView) -> Vec<Said> {
    let mut all: Vec<Said> = vec![view.ask.clone()];
    let line = |sum: &SumLine| [sum.left.clone(), sum.right.clone(), sum.gloss.clone()];
    all.extend(view.lead.iter().chain(&view.notes).cloned());
    all.extend(
        view.locked
            .iter()
            .chain(&view.buttons)
            .flat_map(|w| [Some(w.label.clone()), w.waits.clone()])
            .flatten(),
    );
    all.extend(view.own_words.iter().map(|w| w.0.clone()));
    for part in &view.parts {
        all.extend(part.verdict.iter().map(|v| v.said.clone()));
        all.extend(part.notes.iter().chain(&part.fits).cloned());
        all.extend(part.sum.iter().flat_map(line));
        for hint in &part.hints {
            all.push(hint.head.clone());
            all.extend(hint.said.clone());
            all.extend(hint.sum.iter().flat_map(line));
        }
        for line in &part.lines {
            all.push(line.label.clone());
            all.extend(line.before.clone());
            for field in &line.fields {
                all.push(field.name.clone());
                all.extend(field.after.clone());
                all.extend(field.grip.iter().flat_map(|g| [g.spoken.clone(), g.word.clone()]));
                use layercast_lesson::view::FieldKind;
                match &field.kind {
                    FieldKind::Number => {}
                    FieldKind::Fact { fact } => all.push(fact.clone()),
                    FieldKind::List { options } | FieldKind::Choice { options } => {
                        all.extend(options.iter().map(|o| o.label.clone()));
                    }
                    FieldKind::Pictures { pictures } => {
                        all.extend(pictures.options.iter().flat_map(|o| [o.label.clone(), o.alt.clone()]));
                    }
                    FieldKind::Prose { starters } => all.extend(starters.iter().cloned()),
                }
            }
        }
    }
    let mut i = 0;
    while let Some(message) = all.get(i) {
        let inner: Vec<Said> = message
            .args
            .values()
            .filter_map(|arg| match arg {
                SaidArg::Message { said } => Some((**said).clone()),
                _ => None,
            })
            .collect();
        all.extend(inner);
        i += 1;
    }
    all
}

/// Measured numbers of a view by the name of their argument.
fn numbers(view: &QuestionView) -> Vec<(String, String, f64)> {
    said(view)
        .into_iter()
        .flat_map(|m| {
            let id = m.id;
            m.args.into_iter().filter_map(move |(name, arg)| match arg {
                SaidArg::Number { value, .. } => Some((id.clone(), name, value)),
                _ => None,
            })
        })
        .collect()
}

/// Tries and help before a question is settled: none, a miss, each hint.
fn states(miss: Fields) -> Vec<Answer> {
    let missed = Try { fields: miss, ..Try::default() };
    let mut states = vec![Answer::default(), Answer { tries: vec![missed.clone()], ..Answer::default() }];
    for hints in 1..=3 {
        states.push(Answer { hints, ..Answer::default() });
        states.push(Answer { hints, tries: vec![missed.clone()], ..Answer::default() });
    }
    states.push(Answer { tries: vec![Try { cannot_tell: true, ..Try::default() }], ..Answer::default() });
    states
}

/// A first answer that is certainly no answer: nothing of it can be what is looked for.
fn far_off(asked: &Asked) -> Fields {
    let list: &[(&str, &str)] = match asked.kind {
        1 => &[("temp", "-77"), ("unit", "c")],
        2 => &[("depth", "777")],
        4 => &[("drop", "77"), ("unit", "c")],
        5 => &[("rate", "77"), ("unit", "c_per_m")],
        29 => &[("rate_a", "77"), ("rate_b", "77"), ("rate_c", "77")],
        6 => &[("from", "0"), ("to", "0.5"), ("rate", "77")],
        7 => &[("depth", "77")],
        8 => &[("from", "77"), ("to", "99")],
        9 => &[("temp", "-77"), ("from", "0"), ("to", "0.5"), ("depth", "77")],
        11 => &[("from", "0"), ("to", "0.5")],
        12 => &[
            ("mixed", "777"),
            ("steep", "777"),
            ("deep", "777"),
            ("share_mixed", "777"),
            ("share_steep", "777"),
            ("share_deep", "777"),
        ],
        13 => &[("apart", "77"), ("unit", "c"), ("way", "unsigned")],
        16 => &[("rate", "77"), ("apart", "777")],
        101 => &[("apart", "77"), ("unit", "c")],
        102 => &[("limit", "77"), ("unit", "c")],
        106 => &[("time", "777"), ("unit", "h")],
        17 => &[("sinks", "neither")],
        18 => &[("side", "same"), ("times", "7777")],
        19 => &[("temp", "77"), ("heat", "777777"), ("days", "777777")],
        20 => &[("picture", "bottom_cools_first")],
        21 => &[("picture", "all_colder")],
        25 => &[("from", "77"), ("to", "99"), ("give", "77")],
        _ => &[],
    };
    fields(list)
}

/// The numbers of an answer: °C or °C per metre as accepted ranges, depths as they are.
enum Secret {
    /// What a result or a sentence must not fall into.
    Between(f64, f64),
    /// A depth that must not be named.
    Depth(f64),
    /// Two depths that must not be named together.
    Pair(f64, f64),
}

fn secrets(pond: &Pond, asked: &Asked) -> Vec<Secret> {
    let z = &asked.depths_m;
    let means = pond.means();
    let at = |z: f64| means.iter().find(|p| (p.0 - z).abs() < 1e-9).unwrap().1;
    let steep = pond.analysis.thermocline.or(pond.analysis.fastest_warming);
    match asked.kind {
        1 => vec![Secret::Between(at(z[0]) - 0.5, at(z[0]) + 0.5)],
        2 => {
            let (upper, lower) = crossing_of(&means, z[0]);
            vec![Secret::Depth(upper.0 + (lower.0 - upper.0) * (upper.1 - z[0]) / (upper.1 - lower.1))]
        }
        4 => vec![Secret::Between((at(z[0]) - at(z[1])).abs() - 0.1, (at(z[0]) - at(z[1])).abs() + 0.1)],
        5 => {
            let (rate, give) = ((at(z[0]) - at(z[1])).abs() / (z[1] - z[0]), 0.1 / (z[1] - z[0]));
            vec![Secret::Between(rate - give, rate + give)]
        }
        29 => {
            let rate = |i: usize| (at(z[2 * i]) - at(z[2 * i + 1])).abs() / (z[2 * i + 1] - z[2 * i]);
            let give = |i: usize| 0.1 / (z[2 * i + 1] - z[2 * i]);
            (0..3).map(|i| Secret::Between(rate(i) - give(i), rate(i) + give(i))).collect()
        }
        6 => steep.map(|t| Secret::Pair(t.step_top_m, t.step_bottom_m)).into_iter().collect(),
        7 => steep.map(|t| Secret::Depth(t.value_m)).into_iter().collect(),
        8 => steep
            .into_iter()
            .flat_map(|t| [Secret::Depth(t.value_m), Secret::Pair(t.span_top_m, t.span_bottom_m)])
            .collect(),
        9 => match pond.analysis.mixed_layer {
            Some(MixedLayer::At { value_m, between_m, target_c, .. }) => vec![
                Secret::Depth(value_m),
                Secret::Pair(between_m.0, between_m.1),
                Secret::Between(target_c - 0.01, target_c + 0.01),
            ],
            _ => Vec::new(),
        },
        11 => steep_layer(pond).map(|l| Secret::Pair(l.0, l.1)).into_iter().collect(),
        12 => {
            let (end, layer) = (mixed_end(pond), steep_layer(pond).unwrap());
            vec![Secret::Depth(end), Secret::Depth(layer.1), Secret::Depth(layer.1 - end)]
        }
        13 => {
            let s = pond.analysis.pairs.s_c.unwrap();
            vec![Secret::Between(s - 0.05, s + 0.05)]
        }
        16 => vec![Secret::Between(0.538, 0.56), Secret::Between(3.53, 3.67)],
        106 => vec![Secret::Between(6.76, 7.18)],
        102 => {
            let s = pond.analysis.pairs.s_used_c;
            vec![Secret::Between(2.8 * s * 0.8, 2.8 * s * 1.2)]
        }
        18 => {
            let times = why::degrees(pond).2;
            vec![Secret::Between(times / 1.5, times * 1.5)]
        }
        19 => {
            let mj = 4.18 * why::degree_metres(&means);
            vec![Secret::Between(mj * 0.99, mj * 1.01), Secret::Between(mj / 8.64 * 0.99, mj / 8.64 * 1.01)]
        }
        _ => Vec::new(),
    }
}

/// Arguments that are depths.
const DEPTHS: [&str; 10] =
    ["depth", "upper", "lower", "from", "to", "top", "bottom", "last", "height", "least"];

#[test]
fn nothing_of_the_answer_is_in_a_question_before_it_is_settled() {
    let mut looked_at = 0;
    for mut pond in all_ponds() {
        let paper = pond.paper();
        for (index, asked) in paper.asked.iter().enumerate() {
            let secrets = secrets(&pond, asked);
            for answer in states(far_off(asked)) {
                pond.sheet.answers = BTreeMap::from([(asked.id.clone(), answer.clone())]);
                let standing = questions::standing(&pond.context(), asked, Some(&answer));
                // Where every step counts as the steepest, the first one is right.
                if questions::verdicts(&pond.context(), asked, &answer).iter().any(|v| v.verdict.is_right()) {
                    continue;
                }
                if standing.settled {
                    assert!(answer.tries.iter().any(|t| t.cannot_tell), "{} {}", pond.name, asked.id);
                    continue;
                }
                assert!(
                    !standing.reveals_all_steps && standing.reveals_steps.is_empty(),
                    "{} {}",
                    pond.name,
                    asked.id
                );
                let view = questions::view(&pond.context(), &paper, index).unwrap();
                let numbers = numbers(&view);
                looked_at += numbers.len();
                for secret in &secrets {
                    for (id, name, value) in &numbers {
                        let told = match secret {
                            // The lines between of a sum are not its result; the depths are no temperatures.
                            Secret::Between(low, high) => {
                                let result = matches!(
                                    id.as_str(),
                                    "ask-sum-c" | "ask-sum-number" | "ask-value-c" | "ask-value-c-per-m"
                                ) || name == "low"
                                    || name == "high"
                                    || name == "gain";
                                result
                                    && !DEPTHS.contains(&name.as_str())
                                    && value >= low
                                    && value <= high
                                    && is_a_result(&view, *value)
                            }
                            Secret::Depth(z) => {
                                (DEPTHS.contains(&name.as_str()) || name == "value")
                                    && (value - z).abs() < 1e-6
                                    && id != "ask-6-look-below"
                            }
                            Secret::Pair(a, _) => {
                                name == "from"
                                    && (value - a).abs() < 1e-6
                                    && numbers.iter().any(|(other, n, v)| {
                                        let Secret::Pair(_, b) = secret else { return false };
                                        other == id && n == "to" && (v - b).abs() < 1e-6
                                    })
                            }
                        };
                        assert!(!told, "{} {} {answer:?}: {id} {name} {value}", pond.name, asked.id);
                    }
                }
            }
        }
    }
    assert!(looked_at > 5000, "{looked_at}");
}

/// The number stands in a ruled-off line, or outside of a sum.
fn is_a_result(view: &QuestionView, value: f64) -> bool {
    let has = |said: &Said| {
        said.args.values().any(|a| matches!(a, SaidArg::Number { value: v, .. } if (v - value).abs() < 1e-12))
    };
    let sums = || view.parts.iter().flat_map(|p| p.hints.iter().flat_map(|h| &h.sum).chain(&p.sum));
    let between = sums().any(|l| !l.result && has(&l.right));
    let result = sums().any(|l| (l.result || sums().count() == 1) && has(&l.right));
    result || !between
}

#[test]
fn a_locked_question_waits_for_the_marks_and_hides_even_its_words_where_they_tell() {
    for mut pond in all_ponds() {
        pond.sheet = Sheet::default();
        let paper = pond.paper();
        for (index, asked) in paper.asked.iter().enumerate() {
            let view = questions::view(&pond.context(), &paper, index).unwrap();
            let hidden = matches!(asked.kind, 19..=21 | 25 | 26 | 103..=108);
            let waits = hidden || matches!(asked.kind, 6..=9 | 11 | 12);
            assert_eq!(view.locked.is_some(), waits, "{} {}", pond.name, asked.id);
            assert_eq!(view.parts.is_empty(), waits);
            assert_eq!(view.ask.id == "ask-locked-ask", hidden);
            assert_eq!(
                questions::standing(&pond.context(), asked, None).step_m.is_some(),
                matches!(asked.kind, 4 | 5 | 29)
            );
        }
        // Why this route, and what was left out because of it, is said when the marks are in.
        let tells = [
            "ask-about-mixed",
            "ask-about-weak",
            "ask-about-today",
            "ask-about-inverse",
            "ask-about-unstable",
            "ask-about-cannot-tell",
            "ask-dropped-6",
            "ask-dropped-7",
            "ask-dropped-8",
            "ask-dropped-9-deep",
            "ask-dropped-9-same",
            "ask-dropped-9-warmer",
        ];
        assert!(paper.about.iter().all(|m| !tells.contains(&m.id)), "{} {:?}", pond.name, paper.about);
    }
}

/// Ids and their variables in a message file.
fn messages(text: &str) -> BTreeMap<String, BTreeSet<String>> {
    let mut all: BTreeMap<String, BTreeSet<String>> = BTreeMap::new();
    let mut id = String::new();
    for line in text.lines().filter(|l| !l.starts_with('#')) {
        if let Some((name, _)) = line.split_once(" = ").filter(|(n, _)| n.starts_with("ask-")) {
            id = name.to_owned();
            assert!(all.insert(id.clone(), BTreeSet::new()).is_none(), "{id} twice");
        }
        for piece in line.split("{ $").skip(1) {
            let end = piece.find(|c: char| !c.is_alphanumeric() && c != '_').unwrap();
            all.get_mut(&id).unwrap().insert(piece[..end].to_owned());
        }
    }
    all
}

#[test]
fn everything_said_has_words_and_numbers_in_both_languages() {
    let en = messages(&words::messages("en"));
    let es = messages(&words::messages("es"));
    assert_eq!(en, es);
    let mut seen: BTreeSet<String> = BTreeSet::new();
    let mut check = |message: &Said, what: &str| {
        let wanted = en.get(&message.id).unwrap_or_else(|| panic!("{} has no words ({what})", message.id));
        for name in wanted {
            assert!(message.args.contains_key(name), "{} lacks {name} ({what})", message.id);
        }
        seen.insert(message.id.clone());
    };
    for mut pond in all_ponds() {
        let paper = pond.paper();
        for about in &paper.about {
            check(&about.clone().into(), &pond.name);
        }
        for (index, asked) in paper.asked.iter().enumerate() {
            let mut answers = states(far_off(asked));
            answers.push(Answer { shown: true, ..Answer::default() });
            let missed = Try { fields: far_off(asked), ..Try::default() };
            answers.push(Answer {
                tries: vec![missed.clone(), missed.clone(), missed.clone()],
                ..Answer::default()
            });
            answers.push(Answer { tries: vec![missed], shown: true, ..Answer::default() });
            for answer in answers {
                pond.sheet.answers = BTreeMap::from([(asked.id.clone(), answer)]);
                let view = questions::view(&pond.context(), &paper, index).unwrap();
                for message in said(&view) {
                    check(&message, &format!("{} {}", pond.name, asked.id));
                }
            }
        }
    }
    println!("{} of {} messages seen", seen.len(), en.len());
    assert!(seen.len() * 10 >= en.len() * 6, "{} of {}", seen.len(), en.len());
}

#[test]
fn the_worked_answer_of_group_c_reads_as_drawn() {
    let mut pond = demo("group_c");
    let asked = pond.asked(6).unwrap();
    let tries = [("3.5", "4.0", "2.5"), ("3.5", "4.0", "5.0")]
        .map(|(a, b, r)| Try { fields: fields(&[("from", a), ("to", b), ("rate", r)]), ..Try::default() });
    pond.sheet.answers.insert(asked.id.clone(), Answer { tries: tries.to_vec(), ..Answer::default() });
    let view = questions::view(&pond.context(), &pond.paper(), 3).unwrap();
    let num = |said: &Said, name: &str| match said.args.get(name) {
        Some(SaidArg::Number { value, decimals }) => format!("{value:.*}", usize::from(*decimals)),
        other => panic!("{other:?}"),
    };
    let [place, speed] = &view.parts[..] else { panic!() };
    let bar = &place.notes[0];
    assert_eq!((num(bar, "shorter"), num(bar, "apart")), ("0.5".into(), "0.4".into()));
    let [first, second, third] = &speed.sum[..] else { panic!() };
    assert_eq!(
        (num(&first.left, "a"), num(&first.left, "b"), num(&first.right, "value")),
        ("20.05".into(), "17.55".into(), "2.5".into())
    );
    assert_eq!(
        (num(&second.left, "a"), num(&second.left, "b"), num(&second.right, "value")),
        ("4.0".into(), "3.5".into(), "0.5".into())
    );
    assert_eq!(
        (num(&third.left, "a"), num(&third.left, "b"), num(&third.right, "value")),
        ("2.5".into(), "0.5".into(), "5.0".into())
    );
    assert!(third.result && !first.result);
    let fits = speed.fits.as_ref().unwrap();
    assert_eq!((num(fits, "low"), num(fits, "high")), ("4.8".into(), "5.2".into()));
    assert!(speed.notes.iter().any(|n| n.id == "ask-first-was"));
    let standing = questions::standing(&pond.context(), &asked, pond.sheet.answers.get("6"));
    assert_eq!(
        (standing.step_m, standing.step_explained, standing.reveals_all_steps),
        (Some((3.5, 4.0)), true, true)
    );
}

#[test]
fn the_worked_hint_stands_elsewhere() {
    let mut pond = demo("group_c");
    let asked = pond.asked(6).unwrap();
    let tries =
        vec![Try { fields: fields(&[("from", "3.5"), ("to", "4"), ("rate", "1.25")]), ..Try::default() }];
    let answer = Answer { tries, hints: 3, ..Answer::default() };
    let standing = questions::standing(&pond.context(), &asked, Some(&answer));
    assert!(standing.step_explained && standing.step_m.is_some_and(|s| s.1 <= 3.5 || s.0 >= 4.0));
    pond.sheet.answers.insert(asked.id, answer);
    let view = questions::view(&pond.context(), &pond.paper(), 3).unwrap();
    assert_eq!(view.parts[1].hints.len(), 1);
    assert_eq!(view.parts[1].hints[0].sum.len(), 3);
    assert_eq!(view.buttons[1].label.id, "ask-show-me");
    assert_eq!(view.parts[1].verdict.as_ref().unwrap().said.id, "ask-5-multiplied");
}

#[test]
fn the_thermocline_line_waits_for_both_of_its_questions() {
    let mut pond = demo("group_c");
    let tries = |f: Fields| Answer { tries: vec![Try { fields: f, ..Try::default() }], ..Answer::default() };
    pond.sheet.answers.insert("7".into(), tries(fields(&[("depth", "3.75")])));
    let seven = pond.asked(7).unwrap();
    let of = |pond: &Pond, asked: &Asked| {
        questions::standing(&pond.context(), asked, pond.sheet.answers.get(&asked.id))
    };
    assert!(of(&pond, &seven).settled && !of(&pond, &seven).reveals_thermocline);
    let index = pond.paper().asked.iter().position(|a| a.kind == 7).unwrap();
    assert!(questions::view(&pond.context(), &pond.paper(), index).unwrap().parts[0].fits.is_none());
    pond.sheet.answers.insert("8".into(), tries(fields(&[("from", "3.5"), ("to", "4")])));
    assert!(of(&pond, &seven).reveals_thermocline);
    assert!(questions::view(&pond.context(), &pond.paper(), index).unwrap().parts[0].fits.is_some());
}
