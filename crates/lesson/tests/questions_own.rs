//! Questions of the teacher's own over every water: each number is worked out here from the rows, apart from the code under
//! test; it is right by each way of reading, and what lies beyond is not.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

use crate::questions_support;

use layercast_lesson::document::{FIRST_OF_A_TEACHER, OwnBy, OwnQuestion, Quantity};
use layercast_lesson::questions::{self, Asked, Verdict};
use questions_support::answers::{at, between};
use questions_support::words::Words;
use questions_support::{By, Pond, all_ponds, answer, demo, fields, two};

type Series = [(f64, f64)];

fn with(pond: &mut Pond, by: OwnBy) -> Option<Asked> {
    pond.lesson.own = vec![OwnQuestion { ask: "How is it <b>here</b>?".into(), hint: String::new(), by }];
    pond.lesson.kinds = vec![FIRST_OF_A_TEACHER];
    pond.asked(FIRST_OF_A_TEACHER)
}

fn asks(quantity: Quantity, at_m: f64, to_m: f64) -> OwnBy {
    OwnBy { quantity: Some(quantity), at_m: Some(at_m), to_m: Some(to_m), ..OwnBy::default() }
}

fn passes(pond: &Pond, asked: &Asked, value: f64, unit: &str) -> bool {
    pond.right(asked, &fields(&[("own", &two(value)), ("unit", unit), ("source", "mean")]))
}

#[test]
fn a_number_is_right_by_each_way_of_reading_and_a_wrong_one_is_not() {
    let mut tried = 0;
    for mut pond in all_ponds() {
        let marks: Vec<f64> = pond.means().iter().map(|row| row.0).collect();
        if marks.len() < 4 {
            continue;
        }
        let (a, b) = (marks[1], marks[3]);
        let inner = (marks[1] + marks[2]) / 2.0;
        let series = By::ALL.map(|by| pond.series(by));
        let all = |f: &dyn Fn(&Series) -> f64| series.iter().map(|s| f(s)).collect::<Vec<f64>>();
        let high = |s: &Series| s.iter().map(|p| p.1).fold(f64::NEG_INFINITY, f64::max);
        let low = |s: &Series| s.iter().map(|p| p.1).fold(f64::INFINITY, f64::min);
        let cases = [
            (asks(Quantity::TempAt, a, b), "c", all(&|s| at(s, a).unwrap()), 0.11),
            (asks(Quantity::TempAt, inner, b), "c", all(&|s| between(s, inner).unwrap()), 0.51),
            (asks(Quantity::Apart, b, a), "c", all(&|s| (at(s, a).unwrap() - at(s, b).unwrap()).abs()), 0.11),
            (
                asks(Quantity::PerMetre, a, b),
                "c_per_m",
                all(&|s| ((at(s, a).unwrap() - at(s, b).unwrap()) / (b - a)).abs()),
                0.11 / (b - a),
            ),
            (asks(Quantity::Warmest, a, b), "c", all(&high), 0.11),
            (asks(Quantity::Coldest, a, b), "c", all(&low), 0.11),
            (asks(Quantity::WarmestColdest, a, b), "c", all(&|s| high(s) - low(s)), 0.11),
        ];
        for (by, unit, right, beyond) in cases {
            let asked = with(&mut pond, by.clone()).unwrap_or_else(|| panic!("{} {by:?}", pond.name));
            // A change by one leg may go the other way than that of the mean; then its size is no answer.
            let mean = right.first().copied().unwrap();
            let most = right.iter().copied().fold(f64::NEG_INFINITY, f64::max);
            assert!(passes(&pond, &asked, mean, unit), "{} {by:?} {mean}", pond.name);
            let far = most + beyond + 0.3;
            assert!(!passes(&pond, &asked, far, unit), "{} {by:?} {far}", pond.name);
            tried += 1;
        }
    }
    assert!(tried > 200, "{tried}");
}

#[test]
fn the_depth_of_a_temperature_counts_where_the_water_has_it_once() {
    let mut pond = demo("group_a");
    let by = |temp_c| OwnBy { quantity: Some(Quantity::DepthOf), temp_c: Some(temp_c), ..OwnBy::default() };
    let asked = with(&mut pond, by(14.0)).unwrap();
    let means = pond.means();
    let w = means.windows(2).find(|w| w[0].1 > 14.0 && w[1].1 <= 14.0).unwrap();
    let depth = w[0].0 + (w[0].1 - 14.0) / (w[0].1 - w[1].1) * (w[1].0 - w[0].0);
    let give = (w[1].0 - w[0].0) / 2.0;
    assert!(passes(&pond, &asked, depth, "m"));
    assert!(passes(&pond, &asked, depth + give - 0.01, "m"));
    assert!(!passes(&pond, &asked, depth + give + 0.2, "m"));
    for nowhere in [40.0, -3.0] {
        assert_eq!(with(&mut pond, by(nowhere)), None);
        assert_eq!(pond.paper().about.last().unwrap().id, "ask-own-dropped-never");
    }
}

#[test]
fn what_cannot_be_asked_of_this_cast_is_left_out_with_its_reason() {
    let mut pond = demo("group_a");
    let deep = pond.last_m() + 3.0;
    for (by, why) in [
        (asks(Quantity::TempAt, deep, 0.0), "ask-own-dropped-depth"),
        (asks(Quantity::Apart, 1.23, 4.0), "ask-own-dropped-marks"),
        (OwnBy { quantity: Some(Quantity::TempAt), ..OwnBy::default() }, "ask-own-dropped-unfinished"),
    ] {
        assert_eq!(with(&mut pond, by), None);
        assert_eq!(pond.paper().about.last().unwrap().id, why);
    }
}

#[test]
fn words_are_asked_of_every_water_kept_as_written_and_never_judged() {
    let words = [("en", Words::new("en")), ("es", Words::new("es"))];
    for mut pond in all_ponds() {
        let rubric = [
            "<b>two</b> numbers".to_owned(),
            " ".to_owned(),
            "one number".to_owned(),
            "a wild guess".to_owned(),
        ];
        let asked = with(&mut pond, OwnBy { rubric: rubric.to_vec(), ..OwnBy::default() });
        let Some(asked) = asked else { panic!("{}", pond.name) };
        let written = fields(&[("words", "It is <mine>warm</mine> on top.")]);
        let verdicts = pond.judge(&asked, std::slice::from_ref(&written));
        assert_eq!(verdicts.iter().map(|v| (v.verdict, v.idea)).collect::<Vec<_>>(), [(Verdict::Kept, None)]);
        let standing = questions::standing(&pond.context(), &asked, Some(&answer(&[written])));
        assert!(standing.settled && standing.only_words && !standing.open);
        assert!(standing.credit.abs() < 1e-12, "its credit is a person's to give");
        let index = pond.paper().asked.iter().position(|a| *a == asked).unwrap();
        for (language, words) in &words {
            pond.sheet.answers.clear();
            let before = questions::view(&pond.context(), &pond.paper(), index).unwrap();
            assert!(before.reason.is_none(), "the answer is the reason");
            let page = words.page(&before);
            assert!(page.contains("How is it") && !page.contains("one number"), "{language} {page}");
            let kept = answer(&[fields(&[("words", "It is warm on top.")])]);
            pond.sheet.answers.insert(asked.id.clone(), kept);
            let page = words.page(&questions::view(&pond.context(), &pond.paper(), index).unwrap());
            let (looks, most, some) = match *language {
                "en" => ("Your teacher looks for this: ", "Most points for: ", "Some points for: one number"),
                _ => ("Tu profe busca esto: ", "Casi todos los puntos: ", "Algunos puntos: one number"),
            };
            for told in ["It is warm on top.", "two", looks, some] {
                assert!(page.contains(told), "{language} {told}: {page}");
            }
            // An empty level leaves the others what they are, and what earns nothing is the teacher's alone.
            assert!(!page.contains(most) && !page.contains("a wild guess"), "{language}: {page}");
        }
    }
}

#[test]
fn each_level_of_words_keeps_its_own_sentence() {
    let mut pond = demo("group_a");
    let levels = |levels: [&str; 4]| levels.map(str::to_owned).to_vec();
    for (rubric, want) in [
        (levels(["all", "most", "some", "nothing"]), ["looks", "most", "some"].as_slice()),
        (levels(["", "most", "", "nothing"]), &["most"]),
        (levels(["", "", "", "nothing"]), &[]),
        (vec!["all".to_owned()], &["looks"]),
        (Vec::new(), &[]),
    ] {
        let asked = with(&mut pond, OwnBy { rubric, ..OwnBy::default() }).unwrap();
        pond.sheet.answers.clear();
        let kept = answer(&[fields(&[("words", "It is warm on top.")])]);
        pond.sheet.answers.insert(asked.id.clone(), kept);
        let index = pond.paper().asked.iter().position(|a| *a == asked).unwrap();
        let shown =
            serde_json::to_string(&questions::view(&pond.context(), &pond.paper(), index).unwrap()).unwrap();
        let told: Vec<&str> = ["looks", "most", "some"]
            .into_iter()
            .filter(|level| shown.contains(&format!("\"ask-own-words-{level}\"")))
            .collect();
        assert_eq!(told, want, "{shown}");
        assert!(!shown.contains("nothing"), "{shown}");
    }
}
