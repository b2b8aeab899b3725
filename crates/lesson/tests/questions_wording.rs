//! Words that hang on the water, the sheet or the lesson: true where they are said, and nothing said of what is not there.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

use crate::questions_support;

use layercast_core::{Leg, MixedLayer};
use layercast_lesson::document::{Answer, Try};
use layercast_lesson::questions;
use layercast_lesson::view::{FieldKind, QuestionView};
use questions_support::pages::{number, said, view};
use questions_support::words::{Words, messages};
use questions_support::{Fields, Pond, Row, all_ponds, answer, demo, fields, placed, whole_lesson};
use std::collections::BTreeMap;

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
        let text = messages(language);
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
fn the_mark_on_profile_is_named_as_that() {
    let mut pond = demo("group_c");
    pond.sheet.marks.thermocline = placed(6.0, Some(0.3));
    let depth = |z: &str| fields(&[("depth", z)]);
    let seven = pond.asked(7).unwrap();
    let eight = pond.asked(8).unwrap();
    let before = |page: &QuestionView| Words::new("en").say(page.parts[0].lines[0].before.as_ref().unwrap());
    // Left as it was.
    assert_eq!(before(&view(&mut pond, &seven, &[Fields::new()])), "on Profile: <mine>6.0</mine>");
    // A mark that was moved without a check is no answer.
    assert_eq!(before(&view(&mut pond, &seven, &[depth("5.5")])), "first answer: <mine>5.5</mine>");
    assert_eq!(before(&view(&mut pond, &eight, &[Fields::new()])), "on Profile: <mine>5.7–6.3</mine>");
    // Put right: what stood on Profile, not "your first answer".
    let checked = |fields: Fields| Try { fields, after_shown: true, ..Try::default() };
    let mut page_of = |tries: Vec<Try>, marks: bool| {
        pond.sheet.first_marks = marks.then(|| pond.sheet.marks.clone());
        pond.sheet.answers.insert(seven.id.clone(), Answer { tries, ..Answer::default() });
        let paper = pond.paper();
        let at = paper.asked.iter().position(|asked| asked.id == seven.id).unwrap();
        questions::view(&pond.context(), &paper, at).unwrap()
    };
    let kept = vec![Fields::new(), depth("3.8")];
    let kept = kept.into_iter().map(|fields| Try { fields, ..Try::default() }).collect();
    for page in [page_of(kept, false), page_of(vec![checked(depth("3.8"))], true)] {
        let ids = said(&page);
        assert!(
            ids.contains(&"ask-first-on-profile".to_owned()) && !ids.contains(&"ask-first-was".to_owned()),
            "{ids:?}"
        );
    }
    // Checked on Profile and moved after that: the mark is the first answer.
    assert_eq!(
        before(&page_of(vec![checked(depth("5.5"))], true)),
        "on Profile: <mine>6.0</mine>, then: <mine>5.5</mine>"
    );
    pond.sheet.first_marks = None;
    // Without a mark the first answer is the first answer.
    pond.sheet.marks.thermocline =
        layercast_lesson::document::MarkDoc { refused: true, ..Default::default() };
    assert_eq!(before(&view(&mut pond, &seven, &[depth("5.5")])), "first answer: <mine>5.5</mine>");
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
    for text in [messages("en"), messages("es")] {
        let mut seen: BTreeMap<&str, &str> = BTreeMap::new();
        for line in text.lines().filter(|l| l.starts_with("ask-")) {
            let (id, words) = line.split_once(" = ").unwrap();
            for sentence in words.split(". ").filter(|s| s.split(' ').count() >= 6 && !s.contains('$')) {
                if let Some(other) = seen.insert(sentence.trim_end_matches('.'), id) {
                    let kin = |id: &str| id.split('-').nth(1).unwrap().to_owned();
                    assert_eq!(kin(other), kin(id), "{id} and {other}: {sentence}");
                }
            }
        }
    }
}

#[test]
fn layers_that_overlap_are_named_and_the_right_ones_stay() {
    let mut pond = demo("group_c");
    pond.lesson = whole_lesson();
    for kind in [9, 11] {
        let asked = pond.asked(kind).unwrap();
        pond.sheet.answers.insert(asked.id, Answer { shown: true, ..Answer::default() });
    }
    let asked = pond.asked(12).unwrap();
    let words = Words::new("en");
    let mut after = |mixed: &str, steep: &str, deep: &str| {
        let tried = answer(&[fields(&[("mixed", mixed), ("steep", steep), ("deep", deep)])]);
        pond.sheet.answers.insert(asked.id.clone(), tried.clone());
        let paper = pond.paper();
        let at = paper.asked.iter().position(|one| one.id == asked.id).unwrap();
        let page = questions::view(&pond.context(), &paper, at).unwrap();
        let part = &page.parts[0];
        let before = part.lines.iter().find_map(|line| line.before.as_ref()).map(|said| words.say(said));
        let emptied = questions::emptied(&pond.context(), &asked, &tried);
        (part.verdict.as_ref().unwrap().said.id.clone(), emptied, before.unwrap())
    };
    // From its own top, above the end of the mixed layer; the whole depth.
    let (said, emptied, before) = after("2.7", "4.0", "3.0");
    assert_eq!((said.as_str(), emptied), ("ask-12-overlap", vec!["steep".to_owned()]));
    assert_eq!(before, "first answer: <mine>mixed 2.7 · steep 4.0 · deep 3.0</mine>");
    let (said, emptied, _) = after("2.7", "3.8", "9.5");
    assert_eq!((said.as_str(), emptied), ("ask-12-overlap-deep", vec!["deep".to_owned()]));
}
