//! Kinds 23 and 24 with another group's cast: how it comes, what is asked of it, what is right. What is right is worked out
//! here: spans from the analysis of each cast by itself, causes planted by hand, the power by the formula of the hint.

use crate::support;

use layercast_lesson::action::Action;
use layercast_lesson::document::{Lesson, Notebook, Screen};
use layercast_lesson::hand_in::{file_text, lines};
use layercast_lesson::maker::{LessonAction, act as change, file_text as lesson_text, look as make};
use layercast_lesson::questions::{self, Asked, PartVerdict, Verdict};
use layercast_lesson::{act, look, prepare};
use support::{Words, checked, doing, pasted, table};

/// The water of group_c with something done to it: by depth and temperature, downward.
fn changed(change: impl Fn(f64, f64) -> f64) -> Notebook {
    let mut text = String::from("Depth (m)\tDown (°C)\tUp (°C)\n");
    for line in table("group_c").lines().skip(1) {
        let cells: Vec<f64> = line.split('\t').map(|cell| cell.parse().unwrap_or(f64::NAN)).collect();
        let of = |t: f64| if t.is_nan() { String::new() } else { format!("{:.1}", change(cells[0], t)) };
        text += &format!("{}\t{}\t{}\n", cells[0], of(cells[1]), of(cells[2]));
    }
    doing(&pasted(&text), &[Action::SetGroup { text: "B".to_owned() }])
}

fn both() -> Lesson {
    Lesson { id: "both".to_owned(), kinds: vec![23, 24], ..Lesson::first() }
}

/// group_c working by a lesson of the two kinds, marks checked, with another cast.
fn beside(other: &Notebook) -> Notebook {
    let own = checked(&pasted(&table("group_c")), ["2.5", "4", "6"]);
    let own = doing(&own, &[Action::TakeLesson { text: lesson_text(&both(), "") }]);
    act(&own, &Action::TakeOther { text: file_text(other) })
}

fn asked(notebook: &Notebook) -> Vec<Asked> {
    questions::paper(&prepare(notebook).context(notebook)).asked
}

fn about(notebook: &Notebook) -> Vec<&'static str> {
    questions::paper(&prepare(notebook).context(notebook)).about.iter().map(|said| said.id).collect()
}

fn tried(notebook: &Notebook, question: usize, fields: &[(&str, &str)]) -> (Vec<PartVerdict>, Notebook) {
    let mut actions: Vec<Action> = fields
        .iter()
        .map(|(field, text)| Action::SetField {
            question,
            field: (*field).to_owned(),
            text: (*text).to_owned(),
        })
        .collect();
    actions.push(Action::Check { question });
    let after = doing(notebook, &actions);
    let prepared = prepare(&after);
    let context = prepared.context(&after);
    let asked = &questions::paper(&context).asked[question];
    let answer = context.sheet.answers.get(&asked.id).unwrap();
    (questions::verdicts(&context, asked, answer), after)
}

fn first(notebook: &Notebook, question: usize, fields: &[(&str, &str)]) -> (Verdict, Option<&'static str>) {
    let (verdicts, _) = tried(notebook, question, fields);
    (verdicts[0].verdict, verdicts[0].idea)
}

#[test]
fn without_a_second_cast_neither_is_asked_and_it_says_how_to_bring_one() {
    let own = doing(&pasted(&table("group_c")), &[Action::TakeLesson { text: lesson_text(&both(), "") }]);
    assert_eq!(asked(&own), []);
    assert_eq!(about(&own), ["ask-dropped-23", "ask-dropped-24"]);
    // The own cast is no other one, and what holds none changes nothing.
    for text in [file_text(&own), String::new(), "depth,temp\n0,20\n1,19".to_owned(), "{".to_owned()] {
        assert_eq!(act(&own, &Action::TakeOther { text: text.clone() }), own, "{text}");
    }
}

#[test]
fn it_comes_by_file_by_lines_by_notebook_or_with_the_lesson_and_goes_again() {
    let own = doing(&pasted(&table("group_c")), &[Action::TakeLesson { text: lesson_text(&both(), "") }]);
    let other = changed(|_, t| t + 0.4);
    for text in [file_text(&other), lines(&other).join("\n"), other.to_json()] {
        let with = act(&own, &Action::TakeOther { text });
        assert_eq!(asked(&with).len(), 2);
        assert_eq!(look(&with).log.other.0.id, "log-other-group");
        assert_eq!(with.cast, own.cast, "the own readings stay");
        // It is in the saved notebook and in what is handed in.
        let again = Notebook::from_json(&with.to_json()).unwrap();
        assert_eq!(asked(&again).len(), 2);
        let handed = layercast_lesson::hand_in::open(file_text(&with).as_bytes()).remove(0).unwrap();
        assert_eq!(handed.hand_in.sheet.other, with.sheets[0].other);
        assert_eq!(act(&with, &Action::RemoveOther), own);
    }
    let lesson = change(both(), &LessonAction::TakeOther { text: file_text(&other) });
    assert_ne!(lesson.id, both().id);
    assert_eq!(make(&lesson).other.0.id, "log-other-group");
    assert_eq!(change(lesson.clone(), &LessonAction::TakeOther { text: "no cast".to_owned() }), lesson);
    assert_eq!(change(lesson.clone(), &LessonAction::RemoveOther).other, None);
    let with = act(&own, &Action::TakeLesson { text: lesson_text(&lesson, "") });
    assert_eq!(asked(&with).len(), 2);
    assert!(!look(&with).log.other.1, "the lesson's is not the group's to take away");
}

#[test]
fn ranges_that_share_a_depth_do_not_disagree_and_nobody_is_called_wrong() {
    let same = beside(&changed(|_, t| t + 0.4));
    assert_eq!(first(&same, 0, &[("say", "share")]), (Verdict::Yes, None));
    assert_eq!(first(&same, 0, &[("say", "apart")]), (Verdict::NotYet, None));
    assert_eq!(first(&same, 0, &[("say", "wrong")]), (Verdict::NotYet, Some("one_is_wrong")));
    // A pond whose fall lies at 1 m.
    let shallow = changed(|z, _| if z < 1.1 { 22.0 } else { 9.0 });
    let found = |notebook: &Notebook| prepare(notebook).analysis.thermocline.unwrap();
    let (a, b) = (found(&same), found(&shallow));
    assert!(b.span_bottom_m < a.span_top_m - 1e-9, "worked out apart: no shared depth");
    let apart = beside(&shallow);
    assert_eq!(first(&apart, 0, &[("say", "apart")]), (Verdict::Yes, None));
    assert_eq!(first(&apart, 0, &[("say", "share")]), (Verdict::NotYet, None));
    assert_eq!(first(&apart, 0, &[("say", "wrong")]), (Verdict::NotYet, Some("one_is_wrong")));
}

#[test]
fn it_waits_for_the_check_since_it_tells_the_range() {
    let own = doing(&pasted(&table("group_c")), &[Action::TakeLesson { text: lesson_text(&both(), "") }]);
    let with = act(&own, &Action::TakeOther { text: file_text(&changed(|_, t| t + 0.4)) });
    let with = act(&with, &Action::Go { screen: Screen::Questions, question: Some(0) });
    let view = look(&with).questions.current.unwrap();
    assert!(view.locked.is_some() && view.parts.is_empty());
    assert_eq!(view.lead.iter().map(|said| said.id.as_str()).collect::<Vec<_>>(), ["ask-locked-check"]);
}

#[test]
fn a_planted_cause_is_right_and_another_is_not() {
    let probe = beside(&changed(|_, t| t + 0.6));
    assert_eq!(first(&probe, 1, &[("cause", "probe")]), (Verdict::Yes, None));
    assert_eq!(first(&probe, 1, &[("cause", "moved")]), (Verdict::NotYet, None));
    assert_eq!(first(&probe, 1, &[("cause", "chance")]), (Verdict::NotYet, None));
    // 1 °C at the surface, fading by e every 0.8 m: the sun.
    let sun = beside(&changed(|z, t| t + 1.2 * libm::exp(-z / 0.8)));
    assert_eq!(first(&sun, 1, &[("cause", "sun")]), (Verdict::Yes, None));
    // One reading in ten moved by the last place: nothing but chance.
    let chance = beside(&changed(|z, t| if (z * 10.0).round() as i64 % 25 == 0 { t + 0.1 } else { t }));
    assert_eq!(first(&chance, 1, &[("cause", "chance")]), (Verdict::Yes, None));
    assert_eq!(first(&chance, 1, &[("cause", "probe")]), (Verdict::NotYet, None));
}

#[test]
fn the_power_is_right_within_a_factor_of_two_and_ideas_are_told() {
    let notebook = beside(&changed(|_, t| t + 0.6));
    let deep = table("group_c").lines().last().unwrap().split('\t').next().unwrap().parse::<f64>().unwrap();
    let power = 0.6 * deep * 4.18e6 / 3600.0;
    let third = |number: f64, sun: &str| {
        let fields = [
            ("cause", "probe"),
            ("evidence", "it is so everywhere"),
            ("power", &format!("{number:.0}")),
            ("sun", sun),
        ];
        let (verdicts, after) = tried(&notebook, 1, &fields);
        let of =
            |part: usize| verdicts.iter().rfind(|v| v.part == part).map(|v| (v.verdict, v.idea)).unwrap();
        assert_eq!(of(1), (Verdict::Kept, None), "evidence is kept");
        (of(2), after)
    };
    assert!(power > 2000.0, "clearly more than the sun brings: {power}");
    for factor in [1.0, 1.9, 1.0 / 1.9] {
        assert_eq!(third(factor * power, "could_not").0, (Verdict::Yes, None), "{factor}");
    }
    assert_eq!(third(power, "could").0, (Verdict::Almost, None));
    assert_eq!(third(4.0 * power, "could_not").0, (Verdict::NotYet, None));
    assert_eq!(third(power / deep, "could_not").0, (Verdict::NotYet, Some("degrees_without_depth")));
    assert_eq!(third(power * 3600.0, "could_not").0, (Verdict::NotYet, Some("heat_without_time")));
    // Everything that is said has words.
    for (number, sun) in [(power, "could_not"), (power, "could"), (power / deep, "could")] {
        let after = third(number, sun).1;
        let after = act(&after, &Action::Go { screen: Screen::Questions, question: Some(1) });
        for language in ["en", "es"] {
            let words = Words::new(language);
            let view = look(&after).questions.current.unwrap();
            let parts = view.parts.iter().flat_map(|part| {
                let sum = part.sum.iter().flat_map(|line| [&line.left, &line.right, &line.gloss]);
                part.verdict.iter().map(|v| &v.said).chain(&part.notes).chain(sum)
            });
            let all: Vec<String> = parts.chain(&view.lead).map(|said| words.say(said)).collect();
            assert!(all.len() > 3 && all.iter().all(|text| !text.contains('$')), "{all:?}");
        }
    }
}

#[test]
fn a_class_computes_it_again() {
    let notebook = beside(&changed(|_, t| t + 0.6));
    let (_, notebook) = tried(&notebook, 0, &[("say", "share")]);
    let back = layercast_lesson::hand_in::open(file_text(&notebook).as_bytes()).remove(0).unwrap().hand_in;
    let again =
        Notebook { sheets: vec![back.sheet], ..Notebook::with_cast("C-AAAA", back.lesson, back.cast) };
    let prepared = prepare(&again);
    let context = prepared.context(&again);
    let paper = questions::paper(&context);
    let records = questions::records(&context, &paper);
    assert!(records[0].kind == 23 && records[0].right);
}
