//! What comes into a class: each thing one row with its reason, nothing else touched.

use crate::class_support::{
    answers, dropped, eight, eight_seats, key, one, outcomes, seat, taken, with_one, zipped,
};
use crate::support::{Words, doing, table};
use layercast_lesson::action::Action;
use layercast_lesson::class::import::{Counts, Dropped, Outcome, import};
use layercast_lesson::class::{Aside, Class, ClassAction, LookAt, act, look};
use layercast_lesson::document::Notebook;
use layercast_lesson::hand_in::{HandIn, file_text, lines};
use proptest::prelude::*;

fn file(notebook: &Notebook) -> Vec<u8> {
    file_text(notebook).into_bytes()
}

#[test]
fn eight_new_hand_ins_give_class_and_lesson() {
    let (class, rows) = eight();
    assert_eq!((class.code.as_str(), class.lesson.clone().unwrap().id.as_str()), ("9b", "first-lesson"));
    // D measured at the dock, and that is seen.
    let needs: Vec<usize> = rows
        .iter()
        .enumerate()
        .filter(|(_, row)| row.outcome == Outcome::NeedsALook)
        .map(|(at, _)| at)
        .collect();
    assert_eq!(needs, [3], "{rows:#?}");
    assert_eq!(rows[3].why[0].id, "class-look-station");
    let counts = Counts::of(&rows);
    assert_eq!((counts.new, counts.needs_a_look, counts.all()), (7, 1, 8));
    assert_eq!(Class::from_json(&class.to_json()), Ok(class));
}

#[test]
fn the_same_again_in_any_form_or_name() {
    let (class, notebook) = with_one();
    let mail = lines(&notebook).join(" \r\n> ");
    for bytes in [file(&notebook), mail.into_bytes(), notebook.to_json().into_bytes()] {
        let (next, rows) = import(&class, &[Dropped { name: "copy (2) of Ann.json", bytes: &bytes }]);
        one(&rows, Outcome::SameAgain, "class-row-same");
        assert_eq!(next, class);
    }
    // A file name is stored nowhere.
    let (next, _) =
        import(&Class::new("", None), &[Dropped { name: "Ann Smith.json", bytes: &file(&notebook) }]);
    assert!(!next.to_json().contains("Ann"));
}

#[test]
fn twice_in_one_drop_is_one() {
    let notebook = seat("group_c", "C", "07");
    let (class, rows) = taken(&Class::new("", None), &[notebook.clone(), notebook]);
    assert_eq!(outcomes(&rows), [Outcome::New, Outcome::SameAgain]);
    assert_eq!(class.now.members.len(), 1);
}

#[test]
fn a_newer_copy_takes_the_place_of_the_older_in_either_order() {
    let older = answers(&seat("group_c", "C", "07"), &[Some("3")]);
    let newer = answers(&older, &[None]);
    let (class, rows) = taken(&Class::new("", None), &[older.clone(), newer.clone()]);
    assert_eq!(outcomes(&rows), [Outcome::New, Outcome::NewerThan]);
    let (turned, rows) = taken(&Class::new("", None), &[newer.clone(), older.clone()]);
    assert_eq!(outcomes(&rows), [Outcome::New, Outcome::SameAgain]);
    assert_eq!(rows[1].why[0].id, "class-row-older");
    for class in [&class, &turned] {
        assert_eq!(class.now.members.len(), 1);
        assert_eq!(class.paper(&class.now.members[0]).unwrap().hand_in, HandIn::of(&newer));
        let (again, rows) = taken(class, std::slice::from_ref(&older));
        one(&rows, Outcome::SameAgain, "class-row-older");
        assert_eq!(again, *class);
    }
    // Undo brings the older one back, a step at a time.
    let (first, _) = taken(&Class::new("", None), std::slice::from_ref(&older));
    let (second, _) = taken(&first, std::slice::from_ref(&newer));
    assert_eq!(act(&second, &ClassAction::Undo).now, first.now);
}

#[test]
fn two_sheets_of_one_seat_wait_for_a_choice() {
    let start = seat("group_c", "C", "07");
    let (one_sheet, other) = (answers(&start, &[Some("3")]), answers(&start, &[Some("4")]));
    let (class, rows) = taken(&Class::new("", None), &[one_sheet.clone(), other.clone()]);
    assert_eq!(outcomes(&rows), [Outcome::New, Outcome::NeedsALook]);
    assert_eq!(rows[1].why[0].id, "class-row-beside");
    let beside = rows[1].member.clone().unwrap();
    assert!(matches!(class.member(&beside).unwrap().aside, Some(Aside::Beside(_))));
    assert_eq!((look(&class, None).sheets.len(), look(&class, None).aside.len()), (1, 1));
    let kept = act(&class, &ClassAction::KeepThis { member: beside.clone() });
    assert_eq!(kept.now.members.len(), 1);
    assert_eq!(kept.paper(&kept.now.members[0]).unwrap().hand_in, HandIn::of(&other));
    assert_eq!(act(&kept, &ClassAction::Undo).now, class.now);
    let both = act(&class, &ClassAction::KeepBoth { member: beside });
    assert_eq!(look(&both, None).sheets.len(), 2);
}

#[test]
fn naming_the_class_sorts_its_sheets_again() {
    let foreign = doing(&seat("group_c", "C", "01"), &[Action::SetClass { text: "9c".into() }]);
    let (ours, other) = (seat("group_a", "A", "02"), seat("group_b", "B", "03"));
    let (alone, _) = taken(&Class::new("", None), std::slice::from_ref(&foreign));
    assert_eq!(alone.code, "9c");
    let (all, rows) = taken(&alone, &[ours, other]);
    assert_eq!(outcomes(&rows), [Outcome::NotOurs, Outcome::NotOurs]);
    let named = act(&all, &ClassAction::SetCode { text: "9B".into() });
    let sheets = |class: &Class| {
        let view = look(class, None);
        (
            view.sheets.into_iter().map(|s| s.seat).collect::<Vec<_>>(),
            view.aside.into_iter().map(|s| s.seat).collect::<Vec<_>>(),
        )
    };
    let seats = |codes: &[&str]| codes.iter().map(|code| (*code).to_owned()).collect::<Vec<_>>();
    assert_eq!(sheets(&named), (seats(&["02", "03"]), seats(&["01"])));
    // One step takes back the code and where the sheets stand.
    let undone = act(&named, &ClassAction::Undo);
    assert_eq!((&undone.code, &undone.now), (&all.code, &all.now));
    // What was taken in by hand stays in, whatever it says.
    let key = named.now.members[0].key.clone();
    let kept = act(&named, &ClassAction::TakeIn { member: key, on: true });
    let renamed = act(&kept, &ClassAction::SetCode { text: "9d".into() });
    assert_eq!(sheets(&renamed), (seats(&["01"]), seats(&["02", "03"])));
    // Undoing the first import takes the code it gave with it.
    assert_eq!(act(&alone, &ClassAction::Undo).code, "");
}

#[test]
fn a_lesson_that_came_with_a_foreign_sheet_goes_with_it() {
    let mut foreign = doing(&seat("group_c", "C", "01"), &[Action::SetClass { text: "9c".into() }]);
    foreign.lesson.id = "of-others".into();
    let ours = seat("group_a", "A", "02");
    let (all, _) =
        taken(&taken(&Class::new("", None), std::slice::from_ref(&foreign)).0, std::slice::from_ref(&ours));
    assert_eq!(all.lesson.as_ref().unwrap().id, "of-others");
    let named = act(&all, &ClassAction::SetCode { text: "9b".into() });
    assert_eq!(named.lesson, Some(ours.lesson.clone()));
    assert_eq!(look(&named, None).sheets.len(), 1);
    assert_eq!(act(&named, &ClassAction::Undo).lesson, all.lesson);
    // A lesson of the teacher's own stays.
    let own = all.with_lesson(layercast_lesson::document::Lesson { id: "own".into(), ..ours.lesson });
    assert_eq!(act(&own, &ClassAction::SetCode { text: "9b".into() }).lesson, own.lesson);
}

#[test]
fn the_same_work_on_another_device_is_the_same_again() {
    let (class, mut notebook) = with_one();
    notebook.code = "C-ZZZZ".into();
    let (next, rows) = taken(&class, std::slice::from_ref(&notebook));
    one(&rows, Outcome::SameAgain, "class-row-same-work");
    assert_eq!(next.now.members.len(), 1);
}

#[test]
fn what_was_edited_is_shown_and_computed_again() {
    let (class, notebook) = with_one();
    let other = answers(&seat("group_c", "C", "08"), &[Some("3")]);
    let edited = file_text(&other).replace("\"credit\":0", "").replace("\"temp\":\"3\"", "\"temp\":\"99\"");
    assert_ne!(edited, file_text(&other));
    let (next, rows) = dropped(&class, &[edited.into_bytes()]);
    one(&rows, Outcome::NeedsALook, "class-look-edited");
    let seen = act(&next, &ClassAction::Seen { member: key(&next, "08"), at: LookAt::Edited, on: true });
    let row = |class: &Class| look(class, None).sheets.into_iter().find(|sheet| sheet.seat == "08").unwrap();
    assert_eq!((row(&next).looks.len(), row(&seen).looks.len()), (1, 0));
    // A verdict written into the file is not even read.
    let boast = file_text(&notebook).replacen("\"sheet\":{", "\"sheet\":{\"credit\":8,\"points\":99,", 1);
    let (boasting, _) = dropped(&Class::new("", None), &[boast.into_bytes()]);
    assert_eq!(look(&boasting, None).sheets[0].points, look(&class, None).sheets[0].points);
}

#[test]
fn truncated_hand_ins_and_lines_say_what_is_missing() {
    let (class, _) = with_one();
    let whole = file(&seat("group_a", "A", "01"));
    let (next, rows) = dropped(&class, &[whole[..whole.len() / 2].to_vec()]);
    one(&rows, Outcome::NeedsALook, "class-why-cut-off");
    assert_eq!(next, class);
    let mut some = lines(&seat("group_a", "A", "01"));
    some.remove(2);
    let (next, rows) = dropped(&class, &[some.join("\n").into_bytes()]);
    one(&rows, Outcome::NeedsALook, "class-why-lines");
    assert_eq!(next, class);
}

#[test]
fn other_classes_and_lessons_stand_aside() {
    let (class, _) = with_one();
    let other = doing(&seat("group_a", "A", "01"), &[Action::SetClass { text: "9a".into() }]);
    let (next, rows) = taken(&class, std::slice::from_ref(&other));
    one(&rows, Outcome::NotOurs, "class-row-other-class");
    assert_eq!((look(&next, None).sheets.len(), look(&next, None).aside.len()), (1, 1));
    let member = rows[0].member.clone().unwrap();
    let taken_in = act(&next, &ClassAction::TakeIn { member, on: true });
    assert_eq!(look(&taken_in, None).sheets.len(), 2);
    let mut other = seat("group_a", "A", "02");
    other.lesson.id = "second-lesson".into();
    let (_, rows) = taken(&class, std::slice::from_ref(&other));
    one(&rows, Outcome::NotOurs, "class-row-other-lesson");
    // A small letter is no other class; a hand-in that says none is ours.
    for code in ["9B", ""] {
        let same = doing(&seat("group_a", "A", "03"), &[Action::SetClass { text: code.into() }]);
        assert_eq!(outcomes(&taken(&class, std::slice::from_ref(&same)).1), [Outcome::New]);
    }
}

#[test]
fn another_version_of_the_lesson_is_read_by_the_teachers() {
    let (class, _) = with_one();
    let mut other = answers(&seat("group_a", "A", "01"), &[None]);
    other.lesson.kinds = vec![1, 4];
    let (next, rows) = taken(&class, std::slice::from_ref(&other));
    one(&rows, Outcome::NeedsALook, "class-look-other-version");
    let sheets = look(&next, None).sheets;
    assert_eq!((sheets[0].asked, sheets[1].asked), (8, 8));
    assert_eq!(sheets[1].points.value, 4.0);
}

#[test]
fn older_and_newer_programs() {
    let (class, _) = with_one();
    let newer = file_text(&seat("group_a", "A", "01")).replacen("\"version\":1", "\"version\":2", 1);
    let (next, rows) = dropped(&class, &[newer.into_bytes()]);
    one(&rows, Outcome::NeedsALook, "class-why-newer");
    assert_eq!(next, class);
    let old = r#"{"schema":"layercast-hand-in","version":1,"sheet":{"seat":"09","lesson_id":"first-lesson","marks":{"mixed":{},
        "thermocline":{},"deep":{}}},"cast":{"schema":"layercast-cast","version":1,"entries":[]},
        "lesson":{"schema":"layercast-lesson","version":1,"id":"first-lesson","kinds":[1,4,5,6,9,7,8,13],
        "method":{"reference_m":0.5,"mixed_drop_c":1.0,"steep_c_per_m":1.0}}}"#;
    let (next, rows) = dropped(&class, &[old.as_bytes().to_vec()]);
    one(&rows, Outcome::NeedsALook, "class-look-edited");
    assert_eq!(next.now.members.len(), 2);
}

#[test]
fn zips_in_zips_count_file_by_file() {
    let all = eight_seats();
    let inner =
        zipped(&[("b.json", &file(&all[1])), ("notes.txt", b"see me"), ("a again.json", &file(&all[0]))]);
    let outer =
        zipped(&[("x/a.json", &file(&all[0])), ("inner.zip", &inner), ("p.png", b"\x89PNG\r\n\x1a\n")]);
    let (class, rows) = dropped(&Class::new("", None), &[outer, file(&all[2])]);
    use Outcome::{New, NotOurs, SameAgain};
    assert_eq!(outcomes(&rows), [New, New, NotOurs, SameAgain, NotOurs, New]);
    assert_eq!(rows.iter().map(|row| row.dropped).collect::<Vec<_>>(), [0, 0, 0, 0, 0, 1]);
    assert_eq!(rows[1].name, "file/inner.zip/b.json");
    assert_eq!(class.now.members.len(), 3);
    let broken = zipped(&[("a.json", &file(&all[0]))]);
    let (_, rows) = dropped(&class, &[broken[..broken.len() - 8].to_vec()]);
    one(&rows, Outcome::NeedsALook, "class-why-zip-broken");
    let office = zipped(&[("[Content_Types].xml", b"<x/>"), ("word/document.xml", b"<x/>")]);
    one(&dropped(&class, &[office]).1, NotOurs, "class-why-zip-document");
}

#[test]
fn two_hundred_at_once_add_up() {
    let bases: Vec<Notebook> = eight_seats();
    let files: Vec<Vec<u8>> = (0..200)
        .map(|n| {
            let base = &bases[n % 8];
            let seat = format!("s{}", n % 150);
            file(&doing(base, &[Action::SetSeat { text: seat }]))
        })
        .collect();
    let (class, rows) = dropped(&Class::new("", None), &files);
    assert_eq!((rows.len(), Counts::of(&rows).all()), (200, 200));
    // Of s0 to s49 a second one came, from another group: 150 is no multiple of 8.
    let beside = rows.iter().filter(|row| {
        row.why.iter().any(|why| why.id == "class-row-beside" || why.id == "class-row-same-work")
    });
    assert_eq!(beside.count(), 50);
    assert_eq!(look(&class, None).sheets.len(), 150);
    assert_eq!(look(&class, None).casts.len(), 8);
}

#[test]
fn a_lesson_of_500_questions_is_walked_through() {
    let mut long = answers(&seat("group_c", "C", "07"), &[None]);
    long.lesson.kinds = [1, 4, 5, 6, 9, 7, 8, 13].into_iter().cycle().take(500).collect();
    let (class, rows) = taken(&Class::new("", None), std::slice::from_ref(&long));
    assert_eq!(outcomes(&rows), [Outcome::New]);
    let view = look(&class, None);
    assert_eq!((view.questions.len(), view.sheets[0].asked), (8, 8));
    long.lesson.kinds = vec![1; 1001];
    one(&taken(&class, std::slice::from_ref(&long)).1, Outcome::NeedsALook, "class-why-absurd");
}

#[test]
fn markup_and_formulas_stay_text() {
    let wild = "<img src=x onerror=alert(1)>\u{202e}";
    let notebook = doing(
        &answers(&seat("group_c", wild, "=1+1"), &[None]),
        &[
            Action::SetWater { text: wild.into() },
            Action::SetReason { question: 0, text: "</script><b>=HYPERLINK(\"x\")".into() },
        ],
    );
    let (class, _) = taken(&Class::new("", None), std::slice::from_ref(&notebook));
    let (again, rows) = dropped(&class, &[lines(&notebook).join("\n").into_bytes()]);
    one(&rows, Outcome::SameAgain, "class-row-same");
    assert_eq!(again, class);
    assert_eq!(look(&class, None).casts[0].name, wild);
}

#[test]
fn every_reason_has_words_in_both_languages() {
    let mut all = eight_seats();
    all[1] = doing(&all[1], &[Action::SetClass { text: "7c".into() }]);
    let (_, rows) = taken(&Class::new("", None), &all);
    for language in ["en", "es"] {
        let words = Words::new(language);
        for why in rows.iter().flat_map(|row| &row.why) {
            assert!(!words.say(why).is_empty());
        }
    }
    assert!(table("group_c").contains("Depth"));
}

proptest! {
    #![proptest_config(ProptestConfig { cases: 24, rng_seed: proptest::test_runner::RngSeed::Fixed(9), ..ProptestConfig::default() })]

    /// Any bytes, and hand-ins with any byte changed, cut anywhere, zipped or not: rows add up, and what stood stays.
    #[test]
    fn import_is_total_and_adds_up(
        picks in prop::collection::vec((0..8_usize, 0..6_u8, any::<prop::sample::Index>(), any::<u8>()), 1..6),
        noise in prop::collection::vec(any::<u8>(), 0..200),
    ) {
        let (class, notebook) = with_one();
        let seats = eight_seats();
        let files: Vec<Vec<u8>> = picks.iter().map(|(which, how, at, byte)| {
            let mut bytes = file(&seats[*which]);
            let at = at.index(bytes.len());
            match how {
                0 => bytes[at] = *byte,
                1 => bytes.truncate(at),
                2 => bytes = zipped(&[("a", &bytes), ("b", &noise)]),
                3 => { bytes = zipped(&[("a", &bytes)]); let at = at % bytes.len(); bytes[at] ^= byte | 1; }
                4 => bytes = noise.clone(),
                _ => bytes.splice(at..at, noise.iter().copied()).for_each(drop),
            }
            bytes
        }).collect();
        let (next, rows) = dropped(&class, &files);
        prop_assert_eq!(Counts::of(&rows).all(), rows.len());
        for at in 0..files.len() {
            prop_assert!(rows.iter().any(|row| row.dropped == at));
        }
        prop_assert!(rows.iter().all(|row| row.outcome == Outcome::New || !row.why.is_empty()));
        // What stood is there still, and undo gives it back.
        prop_assert_eq!(&next.papers[&HandIn::of(&notebook).id()].hand_in, &HandIn::of(&notebook));
        let back = act(&next, &ClassAction::Undo);
        prop_assert!(next.now == class.now || back.now == class.now);
        // A second time nothing is new.
        let (again, second) = dropped(&next, &files);
        prop_assert_eq!(second.len(), rows.len());
        prop_assert_eq!(&again.now, &next.now);
        let _ = look(&next, None);
    }
}
