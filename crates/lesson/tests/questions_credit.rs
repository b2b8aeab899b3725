//! What an answer earns: tries, help, what was revealed, second answers.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

use crate::questions_support;

use layercast_lesson::document::{Answer, Try};
use layercast_lesson::questions::{self, Asked, Standing};
use layercast_lesson::view::FieldKind;
use questions_support::{Fields, Pond, answer, demo, fields, placed};

fn drop(text: &str) -> Fields {
    fields(&[("drop", text), ("unit", "c"), ("source", "mean")])
}

/// Group C loses 4.05 °C from 4 to 5 m by the mean, 4.1 going down, 4.0 coming up.
fn kind_4() -> (Pond, Asked) {
    let pond = demo("group_c");
    let asked = pond.asked(4).unwrap();
    assert_eq!(asked.id, "4-4.0-5.0");
    (pond, asked)
}

fn standing(pond: &Pond, asked: &Asked, answer: &Answer) -> Standing {
    questions::standing(&pond.context(), asked, Some(answer))
}

/// Credit of kind 4 after these tries, each with its hints.
#[track_caller]
fn earns(tries: &[(&str, u8)], settled: bool, credit: f64) {
    let (pond, asked) = kind_4();
    let tries = tries.iter().map(|(text, hints)| Try { fields: drop(text), hints: *hints, ..Try::default() });
    let hints = tries.clone().map(|t| t.hints).max().unwrap_or(0);
    let got = standing(&pond, &asked, &Answer { tries: tries.collect(), hints, ..Answer::default() });
    assert_eq!((got.settled, got.credit), (settled, credit));
}

#[test]
fn the_credit_table() {
    earns(&[("4.1", 0)], true, 1.0);
    earns(&[("28.8", 0), ("4,05", 0)], true, 1.0);
    earns(&[("28.8", 0), ("17.6", 0), ("4.0", 0)], true, 0.75);
    earns(&[("28.8", 0), ("17.6", 0), ("9", 0)], true, 0.0);
    earns(&[("28.8", 0), ("17.6", 0)], false, 0.0);
    earns(&[("4.1", 1)], true, 1.0);
    earns(&[("4.1", 2)], true, 0.75);
    earns(&[("4.1", 3)], true, 0.5);
    earns(&[("28.8", 0), ("17.6", 2), ("4.0", 3)], true, 0.5);
}

#[test]
fn slips_are_free() {
    earns(&[("four", 0), ("41", 0), ("0.41", 0), ("4–5", 0), ("28.8", 0), ("4.1", 0)], true, 1.0);
    let (pond, asked) = kind_4();
    let wrong_unit = fields(&[("drop", "4.1"), ("unit", "m"), ("source", "mean")]);
    let got =
        standing(&pond, &asked, &answer(&[wrong_unit.clone(), wrong_unit.clone(), wrong_unit, drop("4.1")]));
    assert_eq!((got.right, got.credit), (true, 1.0));
    let per_metre = fields(&[("drop", "4.1 °C/m"), ("source", "mean")]);
    let got = standing(&pond, &asked, &answer(&[per_metre, drop("4.1")]));
    assert_eq!((got.right, got.credit), (true, 1.0));
}

#[test]
fn what_is_shown_earns_nothing() {
    let (pond, asked) = kind_4();
    let got = standing(&pond, &asked, &Answer { shown: true, ..Answer::default() });
    assert_eq!((got.settled, got.right, got.credit), (true, false, 0.0));
    let late = Try { fields: drop("4.1"), after_shown: true, ..Try::default() };
    let got =
        standing(&pond, &asked, &Answer { shown: true, tries: vec![late], again: true, ..Answer::default() });
    assert_eq!((got.settled, got.right, got.credit), (true, false, 0.0));
}

#[test]
fn what_an_early_check_revealed_earns_nothing() {
    let (mut pond, asked) = kind_4();
    pond.sheet.revealed_early.push(asked.id.clone());
    let got = standing(&pond, &asked, &answer(&[drop("4.1")]));
    assert_eq!((got.right, got.credit), (true, 0.0));
    assert!(questions::already_shown(&pond.context(), &asked));
}

#[test]
fn the_first_answer_stays_on_record() {
    let (mut pond, asked) = kind_4();
    let mut twice = answer(&[drop("4.1"), drop("28.8")]);
    let got = standing(&pond, &asked, &twice);
    assert_eq!((got.settled, got.right, got.credit), (true, true, 1.0));
    // The second one is open until it is settled too, and shows the first beside it.
    twice.again = true;
    pond.sheet.answers.insert(asked.id.clone(), twice);
    let view = questions::view(&pond.context(), &pond.paper(), 1).unwrap();
    assert!(!view.parts[0].settled);
    let mut again = answer(&[drop("28.8"), drop("4.0")]);
    again.again = true;
    pond.sheet.answers.insert(asked.id.clone(), again);
    let view = questions::view(&pond.context(), &pond.paper(), 1).unwrap();
    let line = &view.parts[0].lines[0];
    assert_eq!(line.before.as_ref().unwrap().id, "ask-first-answer");
    // A second round that was settled is shown as settled, and a third is offered.
    pond.sheet.answers.insert(asked.id.clone(), answer(&[drop("4.1"), drop("4.0")]));
    let view = questions::view(&pond.context(), &pond.paper(), 1).unwrap();
    assert!(view.parts[0].settled);
    assert_eq!(
        view.buttons.iter().map(|b| b.label.id.as_str()).collect::<Vec<_>>(),
        ["ask-next", "ask-again"]
    );
}

#[test]
fn a_question_of_parts_earns_the_mean_of_them() {
    let pond = demo("group_c");
    let asked = pond.asked(6).unwrap();
    let right = fields(&[("from", "3,5"), ("to", "4,0"), ("rate", "2,5")]);
    let mut tries = vec![right.clone(), right.clone(), right];
    let got = standing(&pond, &asked, &answer(&tries));
    assert_eq!((got.settled, got.right, got.credit), (true, false, 0.5));
    tries.pop();
    tries.push(fields(&[("from", "3.5"), ("to", "4.0"), ("rate", "5")]));
    let got = standing(&pond, &asked, &answer(&tries));
    assert_eq!((got.settled, got.right, got.credit), (true, true, (1.0 + 0.75) / 2.0));
}

#[test]
fn the_speed_waits_for_the_step_and_costs_nothing_meanwhile() {
    let pond = demo("group_c");
    let asked = pond.asked(6).unwrap();
    let place = |from: &str, to: &str, rate: &str| fields(&[("from", from), ("to", to), ("rate", rate)]);
    let got = standing(&pond, &asked, &answer(&[place("1", "1.5", "7"), place("3.5", "4", "5.0")]));
    assert_eq!((got.right, got.credit), (true, 1.0));
}

#[test]
fn the_mark_is_the_first_answer_to_kinds_7_and_8() {
    let mut pond = demo("group_c");
    pond.sheet.marks.thermocline = placed(4.0, Some(0.3));
    let asked = pond.asked(7).unwrap();
    // It starts at the mark, which need not be typed.
    assert_eq!(questions::texts(&pond.context(), &asked, None)["depth"], "4.0");
    let keep = answer(&[Fields::new()]);
    assert_eq!(standing(&pond, &asked, &keep).credit, 1.0);
    // A wrong mark that was never checked is no try: three are the student's own.
    pond.sheet.marks.thermocline = placed(6.0, Some(0.3));
    let depth = |z: &str| fields(&[("depth", z)]);
    assert_eq!(standing(&pond, &asked, &answer(&[depth("3.8")])).credit, 1.0);
    assert_eq!(standing(&pond, &asked, &answer(&[depth("5.5"), depth("3.8")])).credit, 1.0);
    let two = answer(&[depth("5.5"), depth("5.4")]);
    let left = standing(&pond, &asked, &two);
    assert_eq!((left.settled, left.tries), (false, 2));
    assert_eq!(standing(&pond, &asked, &answer(&[depth("5.5"), depth("5.4"), depth("3.8")])).credit, 0.75);
    // A check of Profile that comes later makes it none either.
    pond.sheet.first_marks = Some(pond.sheet.marks.clone());
    assert!(!standing(&pond, &asked, &two).settled);
    // After the check only the mark itself still earns, and a wrong one was the first of three.
    let late = |tries: &[&str]| Answer {
        tries: (tries.iter())
            .map(|z| Try { fields: depth(z), after_shown: true, ..Try::default() })
            .collect(),
        ..Answer::default()
    };
    let lost = standing(&pond, &asked, &late(&["5.5", "5.4"]));
    assert_eq!((lost.settled, lost.credit), (true, 0.0));
    pond.sheet.marks.thermocline = placed(4.0, Some(0.3));
    pond.sheet.first_marks = Some(pond.sheet.marks.clone());
    assert_eq!(standing(&pond, &asked, &late(&["4"])).credit, 1.0);
    assert_eq!(standing(&pond, &asked, &late(&["3.75"])).credit, 0.0);

    let asked = pond.asked(8).unwrap();
    let texts = questions::texts(&pond.context(), &asked, None);
    assert_eq!((texts["from"].as_str(), texts["to"].as_str()), ("3.7", "4.3"));
    assert_eq!(standing(&pond, &asked, &answer(&[Fields::new()])).credit, 1.0);
    // No give or take: it starts empty.
    pond.sheet.first_marks = None;
    pond.sheet.marks.thermocline = placed(4.0, None);
    assert!(!questions::texts(&pond.context(), &asked, None).contains_key("from"));
}

#[test]
fn another_rule_is_right_only_if_it_is_named() {
    // The two-layer water: density changes fastest where temperature does, so a water is sought where it does not.
    let pond = questions_support::all_ponds()
        .into_iter()
        .find(|p| {
            use layercast_core::Rule;
            let depth = p.analysis.rules.iter().find(|r| r.rule == Rule::DensestStep).and_then(|r| r.value_m);
            let span = p.analysis.thermocline.map(|t| (t.span_top_m, t.span_bottom_m));
            depth.zip(span).is_some_and(|(z, s)| z < s.0 || z > s.1)
        })
        .unwrap();
    let asked = pond.asked(7).unwrap();
    let z = pond
        .analysis
        .rules
        .iter()
        .find(|r| r.rule == layercast_core::Rule::DensestStep)
        .unwrap()
        .value_m
        .unwrap();
    let with = |rule: &str| fields(&[("depth", &format!("{z:.2}")), ("rule", rule)]);
    let verdict = |tries: &[Fields]| pond.judge(&asked, tries).last().unwrap().verdict;
    use layercast_lesson::questions::Verdict;
    assert_eq!(verdict(&[with("")]), Verdict::WhichRule);
    assert_eq!(verdict(&[with(""), with("densest_step")]), Verdict::YesByAnotherRule);
    assert_eq!(verdict(&[with(""), with("steepest_middle")]), Verdict::NotYet);
    assert_eq!(verdict(&[with(""), with("none")]), Verdict::NotYet);
    // Asking which rule is free.
    let named = standing(&pond, &asked, &answer(&[with(""), with("densest_step")]));
    assert_eq!((named.right, named.credit), (true, 1.0));
    // The list stands under the field while it is asked.
    let mut pond = pond;
    pond.sheet.answers.insert(asked.id.clone(), answer(&[with("")]));
    let paper = pond.paper();
    let index = paper.asked.iter().position(|a| a.kind == 7).unwrap();
    let view = questions::view(&pond.context(), &paper, index).unwrap();
    let field = view.parts[0].lines.iter().flat_map(|l| &l.fields).find(|f| f.id == "rule").unwrap();
    assert!(matches!(&field.kind, FieldKind::List { options } if options.len() == 4));
}

#[test]
fn later_parts_go_by_the_students_own_value() {
    // Kind 9 of group C: 22.3 is what going down less 0.1 gives, right by rounding; the depth then follows from it.
    let pond = demo("group_c");
    let asked = pond.asked(9).unwrap();
    let own =
        |temp: &str, depth: &str| fields(&[("temp", temp), ("from", "2.5"), ("to", "3"), ("depth", depth)]);
    // 22.75 − 22.3 = 0.45 of 0.95: 2.74 m, which is also within give of the class's 2.68; 22.5 gives 2.63 m.
    for (temp, depth) in [("22.3", "2.74"), ("22.4", "2.68"), ("22.5", "2.63")] {
        assert!(pond.right(&asked, &own(temp, depth)), "{temp} {depth}");
    }
    assert!(!pond.right(&asked, &own("22.4", "2.9")));
}

#[test]
fn an_early_check_names_what_it_would_show() {
    let mut pond = demo("group_c");
    let paper = pond.paper();
    // Kinds 5 (a single step), 6 and 9: the second to answer settles its own. Without a mark nothing answers 7 and 8.
    let kinds = |pond: &Pond| -> Vec<u8> {
        questions::revealed_by_check(&pond.context(), &paper)
            .iter()
            .map(|(i, _)| paper.asked[*i].kind)
            .collect()
    };
    assert_eq!(kinds(&pond), [5, 6, 9, 7, 8]);
    let five = paper.asked[2].clone();
    pond.sheet.answers.insert(five.id, answer(&[fields(&[("rate", "4.5"), ("unit", "c_per_m")])]));
    assert_eq!(kinds(&pond), [6, 9, 7, 8]);
}
