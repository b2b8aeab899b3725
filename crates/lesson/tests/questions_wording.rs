//! Words that hang on the water, the sheet or the lesson: true where they are said, and nothing said of what is not there.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

mod questions_support;

use layercast_core::{Leg, Method, MixedLayer, analyse};
use layercast_lesson::document::Answer;
use layercast_lesson::questions::{self, Asked, Verdict};
use layercast_lesson::view::{FieldKind, QuestionView, Said, SaidArg};
use questions_support::words::Words;
use questions_support::{Fields, Pond, Row, all_ponds, answer, demo, fields, placed};
use std::collections::{BTreeMap, BTreeSet};

/// A question with these tries, as it is shown.
fn view(pond: &mut Pond, asked: &Asked, tries: &[Fields]) -> QuestionView {
    pond.sheet.answers.insert(asked.id.clone(), answer(tries));
    let paper = pond.paper();
    let index = paper.asked.iter().position(|a| a.id == asked.id).unwrap();
    questions::view(&pond.context(), &paper, index).unwrap()
}

/// Everything said at the top of a question and under its parts.
fn said(view: &QuestionView) -> Vec<String> {
    let parts = || view.parts.iter();
    let verdicts = parts().filter_map(|p| Some(&p.verdict.as_ref()?.said));
    let under = parts().flat_map(|p| p.notes.iter().chain(&p.fits));
    let hints = parts().flat_map(|p| p.hints.iter().filter_map(|h| h.said.as_ref()));
    let before = parts().flat_map(|p| p.lines.iter().filter_map(|l| l.before.as_ref()));
    let all = view.lead.iter().chain(&view.notes).chain(verdicts).chain(under).chain(hints).chain(before);
    all.map(|s| s.id.clone()).collect()
}

fn verdict(view: &QuestionView, part: usize) -> &Said {
    &view.parts[part].verdict.as_ref().unwrap().said
}

fn number(said: &Said, name: &str) -> f64 {
    match said.args.get(name) {
        Some(SaidArg::Number { value, .. }) => *value,
        Some(SaidArg::Message { said }) => number(said, "value"),
        other => panic!("{name}: {other:?}"),
    }
}

/// Even water whose two readings hardly differ, read twice at a few marks.
fn even(twice: usize) -> Pond {
    let rows: Vec<Row> = (0..8)
        .map(|i| {
            let t = 12.0 - if i > 5 { 0.1 } else { 0.0 };
            (
                f64::from(i),
                t,
                (i < i32::try_from(twice).unwrap()).then_some(t + if i == 0 { 0.1 } else { 0.0 }),
            )
        })
        .collect();
    Pond::new("even", rows, Leg::Down)
}

#[test]
fn a_question_that_is_not_asked_is_not_referred_to() {
    // Where 102 would not tell the sums apart, 103 says the limit itself.
    let mut pond = even(3);
    let kinds: Vec<u8> = pond.paper().asked.iter().map(|a| a.kind).collect();
    assert!(!kinds.contains(&102) && kinds.contains(&103), "{kinds:?}");
    let asked = pond.asked(103).unwrap();
    let page = view(&mut pond, &asked, &[]);
    let note = page.notes.iter().find(|n| n.id == "ask-103-note-given").unwrap();
    assert!((number(note, "limit") - 2.8 * pond.analysis.pairs.s_used_c).abs() < 1e-9);
    assert!(!said(&page).contains(&"ask-103-note".to_owned()));
    // Where 13 is not asked, 102 says what one reading is typically off.
    for (mut pond, lead) in [(demo("mixed"), "ask-102-lead-given"), (even(0), "ask-102-lead-once")] {
        pond.lesson.kinds.retain(|k| *k != 13);
        let asked = pond.asked(102).unwrap();
        pond.sheet.answers.insert(
            asked.id.clone(),
            Answer { hints: 1, ..answer(&[fields(&[("limit", "9"), ("unit", "c")])]) },
        );
        let index = pond.paper().asked.iter().position(|a| a.kind == 102).unwrap();
        let page = questions::view(&pond.context(), &pond.paper(), index).unwrap();
        let said = said(&page);
        assert!(
            said.contains(&lead.to_owned()) && said.contains(&"ask-102-hint-1-given".to_owned()),
            "{said:?}"
        );
    }
    // "The next question" is never promised where another may follow, or none.
    for language in ["en", "es"] {
        let text = match language {
            "es" => include_str!("../../../static-data/messages/es/ask.ftl"),
            _ => include_str!("../../../static-data/messages/en/ask.ftl"),
        };
        for line in text
            .lines()
            .filter(|l| l.starts_with("ask-7") || l.starts_with("ask-8") || l.starts_with("ask-9"))
        {
            assert!(
                !["next question", "comes next", "pregunta siguiente", "viene después"]
                    .iter()
                    .any(|w| line.contains(w)),
                "{line}"
            );
        }
    }
}

#[test]
fn the_own_limit_is_followed_through() {
    let mut pond = demo("mixed");
    let believe = |x: &str| fields(&[("limit", x), ("unit", "c")]);
    let typical = |x: &str| fields(&[("apart", x), ("unit", "c"), ("way", "unsigned")]);
    pond.sheet.answers.insert("13".into(), answer(&[typical("0.09")]));
    let asked = pond.asked(102).unwrap();
    // 2.8 × 0.09, and 2.8 times what the water gives; the own typical value is the idea, not a limit.
    assert!(pond.right(&asked, &believe("0.25")) && pond.right(&asked, &believe("0.14")));
    let idea = pond.verdict(&asked, 0, &believe("0.09")).unwrap();
    assert_eq!(idea.idea, Some("the_typical_difference"));
    let page = view(&mut pond, &asked, &[believe("0.25")]);
    assert!((number(&page.parts[0].sum[0].left, "s") - 0.09).abs() < 1e-9);
    // The sum that is shown is the one that gives the number taken as right.
    let page = view(&mut pond, &asked, &[believe("0.14")]);
    assert!((number(&page.parts[0].sum[0].right, "value") - 0.14).abs() < 0.006);
    // 103 goes by the limit given in 102.
    let asked = pond.asked(103).unwrap();
    let page = view(&mut pond, &asked, &[fields(&[("line", "none")])]);
    let biggest = page.parts[0].notes.iter().find(|n| n.id == "ask-103-biggest").unwrap();
    assert!((number(biggest, "limit") - 0.14).abs() < 1e-9);
}

/// Two legs alike, given from the top every half metre.
fn alike(temps_c: &[f64]) -> Pond {
    let rows = (0..).zip(temps_c).map(|(i, t)| (0.5 * f64::from(i), *t, Some(*t))).collect();
    Pond::new("alike", rows, Leg::Down)
}

#[test]
fn a_layer_ends_at_a_mark_only_where_it_does() {
    let note = |pond: &mut Pond| {
        let asked = pond.asked(9).unwrap();
        let id = view(pond, &asked, &[]).notes[0].id.clone();
        let Some(MixedLayer::At { value_m, between_m, .. }) = pond.analysis.mixed_layer else { panic!() };
        (id, (value_m - between_m.0).min(between_m.1 - value_m))
    };
    // Met at 2.5 m; 0.05 m below 2.0 m; half-way.
    let (id, off) = note(&mut alike(&[20.0, 20.0, 20.0, 20.0, 19.9, 19.0, 16.0, 12.0, 9.0, 8.5]));
    assert!(id == "ask-9-note-two" && off < 0.005, "{id} {off}");
    let (id, off) = note(&mut alike(&[20.0, 20.0, 20.0, 20.0, 19.1, 18.1, 16.0, 12.0, 9.0, 8.5]));
    assert!(id == "ask-9-note-near" && (off - 0.05).abs() < 1e-6, "{id} {off}");
    let (id, off) = note(&mut alike(&[20.0, 20.0, 20.0, 20.0, 19.6, 18.4, 16.0, 12.0, 9.0, 8.5]));
    assert!(id == "ask-9-note" && off > 0.2, "{id} {off}");
    // In every water.
    for mut pond in all_ponds() {
        if pond.asked(9).is_some() {
            let (id, off) = note(&mut pond);
            assert!(id != "ask-9-note-two" || off <= 0.005 + 1e-9, "{} {off}", pond.name);
        }
    }
    // Where the depth is not asked, it is said when the marks are found.
    let mut pond = alike(&[20.0, 20.0, 20.0, 20.0, 19.1, 18.1, 16.0, 12.0, 9.0, 8.5]);
    let asked = pond.asked(9).unwrap();
    let page = view(&mut pond, &asked, &[fields(&[("temp", "19.0"), ("from", "2"), ("to", "2.5")])]);
    let ends = page.parts[1].notes.iter().find(|n| n.id == "ask-9-ends").unwrap();
    assert_eq!(Words::new("en").say(ends), "By the rule it ends at 2.05\u{a0}m.");
}

#[test]
fn the_temperature_of_the_rule_is_not_told_before_its_part_is_settled() {
    let mut pond = demo("group_c");
    let asked = pond.asked(9).unwrap();
    let page = view(
        &mut pond,
        &asked,
        &[fields(&[("temp", "-7"), ("from", "2.5"), ("to", "3"), ("depth", "2.68")])],
    );
    assert!(!page.parts[0].settled && page.parts[1].settled && page.parts[2].settled);
    let texts: Vec<String> = page.parts[1]
        .sum
        .iter()
        .chain(&page.parts[2].sum)
        .flat_map(|l| [&l.left, &l.right, &l.gloss])
        .map(|s| Words::new("en").say(s))
        .collect();
    assert!(!texts.is_empty() && !texts.iter().any(|t| t.contains("22.4")), "{texts:?}");
}

#[test]
fn what_fits_says_the_place_the_readings_are_good_to() {
    let fits = |digit_c: f64| {
        let mut pond = demo("group_c");
        pond.cast.digit_c = digit_c;
        pond.analysis = analyse(&pond.cast, &Method::default());
        let asked = pond.asked(4).unwrap();
        let page = view(
            &mut pond,
            &asked,
            &[
                fields(&[("drop", "99"), ("unit", "c")]),
                fields(&[("drop", "88"), ("unit", "c")]),
                fields(&[("drop", "77"), ("unit", "c")]),
            ],
        );
        let fits = page.parts[0].fits.clone().unwrap();
        let width = number(&fits, "high") - number(&fits, "low");
        (fits.id.clone(), number(&fits, "digit"), width, Words::new("en").say(&fits))
    };
    let (id, digit, tenth, text) = fits(0.1);
    assert!(id == "ask-fits-c" && (digit - 0.1).abs() < 1e-9, "{text}");
    let (id, digit, _, text) = fits(0.01);
    assert!(id == "ask-fits-c-rounded" && (digit - 0.01).abs() < 1e-9 && text.contains("0.01"), "{text}");
    let (id, _, _, text) = fits(5.0 / 90.0);
    assert!(id == "ask-fits-c-rounded" && text.contains("0.06"), "{text}");
    // Coarser readings allow more, and say so.
    let (id, digit, half, text) = fits(0.5);
    assert!(id == "ask-fits-c" && (digit - 0.5).abs() < 1e-9 && half > tenth + 0.7, "{text}");
    // Digits too many are counted by the same place.
    let mut pond = demo("group_c");
    pond.cast.digit_c = 0.01;
    let asked = pond.asked(4).unwrap();
    let page = view(&mut pond, &asked, &[fields(&[("drop", "4.050"), ("unit", "c"), ("source", "mean")])]);
    assert!(!said(&page).contains(&"ask-note-digits".to_owned()));
}

#[test]
fn no_box_is_named_by_the_unit_that_is_asked_for() {
    for mut pond in all_ponds() {
        for asked in pond.paper().asked {
            let page = view(&mut pond, &asked, &[]);
            for line in page.parts.iter().flat_map(|p| &p.lines) {
                if !line.fields.iter().any(|f| f.id == "unit") {
                    continue;
                }
                for (language, units) in [("en", ["°C", "metre", "degree"]), ("es", ["°C", "metro", "grado"])]
                {
                    for field in line.fields.iter().filter(|f| matches!(f.kind, FieldKind::Number)) {
                        let name = Words::new(language).say(&field.name);
                        assert!(
                            !units.iter().any(|u| name.contains(u)),
                            "{} {}: {name}",
                            pond.name,
                            asked.id
                        );
                    }
                }
            }
        }
    }
}

#[test]
fn a_right_number_in_fahrenheit_is_known_as_one() {
    let mut pond = demo("group_c");
    let temp = |text: &str, unit: &str| fields(&[("temp", text), ("unit", unit)]);
    let asked = pond.asked(1).unwrap();
    // 21.8 °C is 71.2 °F.
    for (text, unit) in [("71.2", "m"), ("71.2", "c"), ("71,2 m", ""), ("71.2", "c_per_m")] {
        let page = view(&mut pond, &asked, &[temp(text, unit)]);
        let said = verdict(&page, 0);
        assert_eq!(said.id, "ask-slip-fahrenheit", "{text} {unit}");
        assert!(Words::new("es").say(said).contains("«71,2\u{a0}°F»"), "{}", Words::new("es").say(said));
        assert_eq!(pond.verdict(&asked, 0, &temp(text, unit)).unwrap().verdict, Verdict::Slip);
    }
    assert!(pond.right(&asked, &temp("71.2 °F", "")));
    assert_ne!(pond.verdict(&asked, 0, &temp("71.2 °C", "")).unwrap().verdict, Verdict::Slip);
    // A box without a list of units.
    let asked = pond.asked(9).unwrap();
    let page = view(&mut pond, &asked, &[fields(&[("temp", "72.3")])]);
    assert_eq!(verdict(&page, 0).id, "ask-slip-fahrenheit");
    // A difference, 4.05 °C: with °C chosen it is simply not right.
    let asked = pond.asked(4).unwrap();
    let drop = |unit: &str| fields(&[("drop", "7.3"), ("unit", unit), ("source", "mean")]);
    assert_eq!(verdict(&view(&mut pond, &asked, &[drop("m")]), 0).id, "ask-slip-fahrenheit");
    assert_eq!(verdict(&view(&mut pond, &asked, &[drop("c")]), 0).id, "ask-4-no");
}

#[test]
fn the_mark_on_profile_is_named_as_that() {
    let mut pond = demo("group_c");
    pond.sheet.marks.thermocline = placed(6.0, Some(0.3));
    let depth = |z: &str| fields(&[("depth", z)]);
    let seven = pond.asked(7).unwrap();
    let eight = pond.asked(8).unwrap();
    let before = |page: &QuestionView| Words::new("en").say(page.parts[0].lines[0].before.as_ref().unwrap());
    // Left as it was; moved; moved twice.
    assert_eq!(before(&view(&mut pond, &seven, &[Fields::new()])), "on Profile: <mine>6.0</mine>");
    assert_eq!(
        before(&view(&mut pond, &seven, &[depth("5.5")])),
        "on Profile: <mine>6.0</mine>, then: <mine>5.5</mine>"
    );
    assert_eq!(before(&view(&mut pond, &eight, &[Fields::new()])), "on Profile: <mine>5.7–6.3</mine>");
    // Put right: what stood on Profile, not "your first answer".
    for tries in [vec![depth("3.8")], vec![Fields::new(), depth("3.8")]] {
        let page = view(&mut pond, &seven, &tries);
        let ids = said(&page);
        assert!(
            ids.contains(&"ask-first-on-profile".to_owned()) && !ids.contains(&"ask-first-was".to_owned()),
            "{ids:?}"
        );
    }
    // Without a mark the first answer is the first answer.
    pond.sheet.marks.thermocline =
        layercast_lesson::document::MarkDoc { refused: true, ..Default::default() };
    assert_eq!(before(&view(&mut pond, &seven, &[depth("5.5")])), "first answer: <mine>5.5</mine>");
}

#[test]
fn an_answer_beside_another_sum_is_close_enough_not_right() {
    let say = |water: &str, kind: u8, tried: &[(&str, &str)]| {
        let mut pond = demo(water);
        let asked = pond.asked(kind).unwrap();
        let page = view(&mut pond, &asked, &[fields(tried)]);
        assert!(page.parts[0].settled, "{water} {kind} {tried:?}");
        Words::new("en").say(verdict(&page, 0))
    };
    let drop = |x: &'static str| [("drop", x), ("unit", "c"), ("source", "mean")];
    assert_eq!(say("group_c", 4, &drop("4.05")), "<mine>4.05</mine> is right.");
    assert_eq!(say("group_c", 4, &drop("4.1")), "<mine>4.1</mine> is right: it is 4.05\u{a0}°C, rounded.");
    assert_eq!(
        say("group_c", 4, &drop("4.13")),
        "<mine>4.13</mine> is close enough: your readings give 4.05\u{a0}°C."
    );
    let rate = |x: &'static str| [("rate", x), ("unit", "c_per_m"), ("source", "mean")];
    assert_eq!(say("group_c", 5, &rate("4.5")), "<mine>4.5</mine> is right.");
    assert_eq!(
        say("group_c", 5, &rate("4.3")),
        "<mine>4.3</mine> is close enough: your readings give 4.5\u{a0}°C per metre."
    );
    let temp = |x: &'static str| [("temp", x), ("unit", "c")];
    assert_eq!(say("group_c", 1, &temp("21.7")), "<mine>21.7</mine> is what your water has at 3\u{a0}m.");
    assert_eq!(
        say("group_c", 1, &temp("21.3")),
        "<mine>21.3</mine> is close enough: your readings give 21.8\u{a0}°C."
    );
    let apart = |x: &'static str| [("apart", x), ("unit", "c")];
    assert_eq!(say("mixed", 101, &apart("0.5")), "<mine>0.5</mine> is all that your whole cast differs by.");
    assert_eq!(
        say("mixed", 101, &apart("0.6")),
        "<mine>0.6</mine> is close enough: your readings give 0.5\u{a0}°C."
    );
    // 0.04 by the readings: 0.08 is taken, and not called typical.
    let typical = |x: &'static str| [("apart", x), ("unit", "c"), ("way", "unsigned")];
    assert_eq!(
        say("mixed", 13, &typical("0.08")),
        "<mine>0.08</mine> is close enough: your readings give 0.04\u{a0}°C."
    );
    assert!(say("mixed", 13, &typical("0.04")).contains("how far off one of your readings typically is"));
    // The number of another unit is right, or close enough, by the same measure.
    let mut pond = demo("group_c");
    let asked = pond.asked(4).unwrap();
    let unit = |x: &str| fields(&[("drop", x), ("unit", "m"), ("source", "mean")]);
    assert_eq!(verdict(&view(&mut pond, &asked, &[unit("4.1")]), 0).id, "ask-slip-unit");
    assert_eq!(verdict(&view(&mut pond, &asked, &[unit("4.13")]), 0).id, "ask-slip-unit-close");
}

#[test]
fn no_water_calls_a_number_right_beside_another_sum() {
    use questions_support::answers::rights;
    let words = Words::new("en");
    let mut seen = BTreeSet::new();
    for mut pond in all_ponds() {
        for asked in pond.paper().asked {
            let Some(id) = (match asked.kind {
                4 => Some("drop"),
                5 => Some("rate"),
                13 | 101 => Some("apart"),
                102 => Some("limit"),
                _ => None,
            }) else {
                continue;
            };
            for right in rights(&pond, &asked) {
                for off in [-0.1, -0.04, 0.0, 0.03, 0.1] {
                    let mut tried = right.clone();
                    let Ok(x) = right[id].replace(',', ".").parse::<f64>() else { continue };
                    tried.insert(id.into(), format!("{:.2}", x.abs() + off));
                    let page = view(&mut pond, &asked, &[tried.clone()]);
                    let Some(result) = page.parts[0].sum.last().filter(|_| page.parts[0].settled) else {
                        continue;
                    };
                    let said = verdict(&page, 0);
                    let (x, worked) = (tried[id].parse::<f64>().unwrap(), number(&result.right, "value"));
                    let squares = tried.get("way").is_some_and(|w| w == "squares");
                    if said.id.ends_with("-yes") && !squares {
                        assert!(
                            (x - worked).abs() < 0.0101,
                            "{} {}: {} beside {worked}",
                            pond.name,
                            asked.id,
                            words.say(said)
                        );
                    }
                    if said.id == "ask-yes-close" && !squares {
                        assert!(
                            (number(said, "value") - worked).abs() < 1e-9,
                            "{} {}: {} beside {worked}",
                            pond.name,
                            asked.id,
                            words.say(said)
                        );
                    }
                    seen.insert(said.id.clone());
                }
            }
        }
    }
    assert!(
        seen.contains("ask-yes-close") && seen.contains("ask-4-yes") && seen.contains("ask-102-yes"),
        "{seen:?}"
    );
}

#[test]
fn three_facts_are_counted_without_too_many() {
    let mut pond = demo("mixed");
    let asked = pond.asked(104).unwrap();
    let page = view(&mut pond, &asked, &[]);
    let ids: Vec<String> = page.parts[0].lines.iter().flat_map(|l| &l.fields).map(|f| f.id.clone()).collect();
    let mut waits = |n: usize| {
        let draft: Fields = ids.iter().take(n).map(|id| (id.clone(), "1".to_owned())).collect();
        pond.sheet.answers.insert(asked.id.clone(), Answer { draft, ..Answer::default() });
        let paper = pond.paper();
        let index = paper.asked.iter().position(|a| a.kind == 104).unwrap();
        let page = questions::view(&pond.context(), &paper, index).unwrap();
        page.buttons[0].waits.as_ref().map(|w| Words::new("en").say(w))
    };
    assert_eq!(waits(2).unwrap(), "2 of 3 chosen");
    assert_eq!(waits(3), None);
    assert_eq!(waits(4).unwrap(), "4 chosen: leave only 3.");
}

#[test]
fn a_unit_that_was_typed_stands_once_beside_its_number() {
    let mut pond = demo("group_c");
    pond.sheet.marks.thermocline = placed(4.0, Some(0.3));
    pond.sheet.marks.thermocline.depth_text = "4.0 m".into();
    pond.sheet.marks.thermocline.give_text = "0.3m".into();
    let say = |page: &QuestionView| {
        let words = Words::new("en");
        page.lead
            .iter()
            .chain(&page.notes)
            .chain(page.parts.iter().filter_map(|p| Some(&p.verdict.as_ref()?.said)))
            .map(|s| words.say(s))
            .collect::<Vec<_>>()
            .join("\n")
    };
    let (seven, eight, one) = (pond.asked(7).unwrap(), pond.asked(8).unwrap(), pond.asked(1).unwrap());
    let text = say(&view(&mut pond, &seven, &[])) + &say(&view(&mut pond, &eight, &[]));
    assert!(
        text.contains("<mine>4.0\u{a0}m</mine>") && text.contains("4.0\u{a0}m, give or take 0.3\u{a0}m"),
        "{text}"
    );
    let text = say(&view(&mut pond, &seven, &[fields(&[("depth", "6 m")])]));
    assert!(text.contains("<mine>6\u{a0}m</mine>"), "{text}");
    let text = say(&view(&mut pond, &one, &[fields(&[("temp", "9.25°C")])]));
    assert!(text.contains("<mine>9.25\u{a0}°C</mine>"), "{text}");
}

#[test]
fn no_two_messages_say_the_same() {
    for text in [
        include_str!("../../../static-data/messages/en/ask.ftl"),
        include_str!("../../../static-data/messages/es/ask.ftl"),
    ] {
        let mut seen: BTreeMap<&str, &str> = BTreeMap::new();
        for line in text.lines().filter(|l| l.starts_with("ask-")) {
            let (id, words) = line.split_once(" = ").unwrap();
            for sentence in words.split(". ").filter(|s| s.split(' ').count() >= 6 && !s.contains('$')) {
                if let Some(other) = seen.insert(sentence.trim_end_matches('.'), id) {
                    let kin = |id: &str| id.splitn(3, '-').nth(1).unwrap().to_owned();
                    assert_eq!(kin(other), kin(id), "{id} and {other}: {sentence}");
                }
            }
        }
    }
}
