//! Everything a person can do, one named case each; and what undo brings back.
//!
//! Long because every action is tested by name.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::support;

use layercast_exchange::document::{LegChoice, LegDoc, Role, SwitchDoc, Unit};
use layercast_lesson::action::{Action, MarkKey};
use layercast_lesson::document::{Lesson, MarkName, Notebook, Place, Screen, UndoWhat};
use layercast_lesson::view::Sign;
use layercast_lesson::{act, look};
use support::{checked, doing, empty, notebook, pasted};

fn cell(depth_m: f64, leg: LegDoc, text: &str) -> Action {
    Action::SetCell { entry: None, depth_m, leg, text: text.into() }
}

fn retype(entry: usize, text: &str) -> Action {
    Action::SetCell { entry: Some(entry), depth_m: 0.0, leg: LegDoc::Down, text: text.into() }
}

fn mark(mark: MarkName, text: &str) -> Action {
    Action::TypeMark { mark, text: text.into() }
}

fn temp(notebook: &Notebook, entry: usize) -> Option<f64> {
    notebook.cast.entries[entry].temp.current()
}

fn depths(notebook: &Notebook) -> [Option<f64>; 3] {
    let marks = &notebook.sheets[0].marks;
    [marks.mixed.depth_m, marks.thermocline.depth_m, marks.deep.depth_m]
}

const TWO_DOUBTS: &str = "Depth (m)\tDown (°C)\tUp (°C)\n3.0\t21.9\t21.7\n3.5\t20.2\t19.9\n4.0\t177\t17.4\n\
                          4.5\t15.4\t15.2\n5.0\t13.6\t13.4\n5.5\t12.3\t12.1\n6.0\t11.3\t11.2\n6.5\t10.6\t1O.5\n7.0\t10.1\t10.1\n";

#[test]
fn go_keeps_the_question_unless_one_is_named() {
    let at = act(&empty(), &Action::Go { screen: Screen::Questions, question: Some(3) });
    assert_eq!(at.place, Place { screen: Screen::Questions, question: 3 });
    let at = act(&at, &Action::Go { screen: Screen::Profile, question: None });
    assert_eq!(at.place, Place { screen: Screen::Profile, question: 3 });
}

#[test]
fn a_clear_table_is_used_at_once() {
    let notebook = notebook("group_c");
    assert_eq!((notebook.cast.entries.len(), notebook.pending.is_none()), (40, true));
    assert_eq!(notebook.undo[0].what, UndoWhat::Paste);
    let undone = act(&notebook, &Action::Undo);
    assert_eq!((undone.cast, undone.undo.len()), (empty().cast, 0));
}

#[test]
fn a_table_with_a_question_waits_for_its_answer() {
    let fahrenheit =
        "Depth,Down,Up\n0,74.1,74.3\n1,74.1,73.9\n2,73.6,73.6\n3,71.4,71.1\n4,63.9,63.3\n5,56.5,56.1\n";
    let waiting = pasted(fahrenheit);
    assert!(waiting.cast.entries.is_empty() && waiting.undo.is_empty());
    let view = look(&waiting).log.pending.expect("the table waits");
    let question = view.question.expect("a question comes first");
    assert!(view.use_table.waits.is_some());
    assert_eq!(act(&waiting, &Action::UseTable), waiting, "the button waits");
    let answered = act(&waiting, &question.ways[0].action);
    assert!(look(&answered).log.pending.unwrap().use_table.waits.is_none());
    let used = act(&answered, &Action::UseTable);
    assert_eq!((used.cast.entries.len(), used.pending.is_none()), (12, true));
    assert!((temp(&used, 0).unwrap() - 23.388).abs() < 0.001);
    let dropped = act(&waiting, &Action::DropTable);
    assert!(dropped.pending.is_none() && dropped.cast.entries.is_empty());
}

#[test]
fn what_is_no_table_says_so_and_touches_nothing() {
    let before = notebook("group_c");
    let pasted = act(&before, &Action::Paste { text: "\u{89}PNG\r\n\u{1a}\n\0\0".into() });
    assert_eq!(pasted.cast, before.cast);
    assert!(look(&pasted).log.pending.unwrap().is_error);
    assert_eq!(act(&pasted, &Action::DropTable), before);
}

#[test]
fn not_right_opens_the_table_with_its_choices_and_decisions_stay() {
    let decided = doing(
        &notebook("group_c"),
        &[Action::LeaveOut { entries: vec![0] }, retype(1, "23.1"), cell(9.8, LegDoc::Down, "8.8")],
    );
    let open = act(&decided, &Action::OpenTable);
    let changed = doing(&open, &[Action::SetRole { column: 2, role: Role::NotUsed }, Action::UseTable]);
    let legs: Vec<LegDoc> = changed.cast.entries.iter().map(|entry| entry.leg).collect();
    assert_eq!(changed.cast.entries.len(), 21, "twenty of the table, one typed");
    assert!(!legs.contains(&LegDoc::Up));
    assert_eq!(changed.cast.entries[0].switch, SwitchDoc::Off);
    assert_eq!(changed.cast.entries.last().unwrap().temp.current(), Some(8.8));
    let again = doing(
        &changed,
        &[Action::OpenTable, Action::SetUnit { column: 0, unit: Unit::Ft }, Action::UseTable],
    );
    assert!((again.cast.entries[1].depth.current().unwrap() - 0.1524).abs() < 1e-9);
    assert_eq!(act(&changed, &Action::Undo).cast.entries.len(), 41);
}

#[test]
fn the_way_of_a_single_series_can_be_said_or_left_open() {
    let one = notebook("one");
    let choice = look(&one).log.leg_choice;
    if let Some(choice) = choice {
        assert_eq!(choice.ways.len(), 3);
    }
    let plain = pasted("depth m,temperature °C\n0,20.0\n1,19.0\n2,15.0\n3,12.0\n4,11.0\n");
    assert_eq!(look(&plain).log.leg_choice.unwrap().ways[0].action, Action::SetLeg { leg: LegChoice::Open });
    assert!(look(&plain).log.one_column);
    let down = act(&plain, &Action::SetLeg { leg: LegChoice::Down });
    assert!(down.cast.entries.iter().all(|entry| entry.leg == LegDoc::Down));
    assert!(look(&down).log.leg_choice.is_none() && look(&down).log.one_column);
    let open = act(&plain, &Action::SetLeg { leg: LegChoice::Open });
    assert!(look(&open).log.leg_choice.is_none());
    assert!(look(&act(&open, &Action::Undo)).log.leg_choice.is_some());
    let pair = act(&notebook("group_c"), &Action::SetLeg { leg: LegChoice::Up });
    assert_eq!(pair, notebook("group_c"), "two ways are two ways");
}

#[test]
fn typed_readings_stand_at_their_mark_to_the_last_key() {
    let typed = doing(
        &empty(),
        &[
            cell(0.0, LegDoc::Down, "2"),
            retype(0, "23"),
            retype(0, "23."),
            retype(0, "23.4"),
            cell(0.0, LegDoc::Up, "23,5"),
        ],
    );
    assert_eq!((temp(&typed, 0), temp(&typed, 1), typed.cast.digit_c), (Some(23.4), Some(23.5), 0.1));
    let row = &look(&typed).log.rows[0];
    assert_eq!((row.down.text.as_str(), row.up.as_ref().unwrap().text.as_str()), ("23.4", "23,5"));
    assert_eq!(typed.undo.len(), 2, "the keys of one cell are one thing to undo");
    let undone = act(&typed, &Action::Undo);
    assert_eq!((undone.cast.entries.len(), temp(&undone, 0)), (1, Some(23.4)));
    assert!(act(&undone, &Action::Undo).cast.entries.is_empty());
}

#[test]
fn what_cannot_be_read_is_kept_and_doubted() {
    let typed = doing(&empty(), &[cell(0.0, LegDoc::Down, "23.4"), cell(0.5, LegDoc::Down, "1O.5")]);
    let look_at = look(&typed);
    let log = &look_at.log;
    assert_eq!(
        (log.doubts.len(), log.rows[1].down.text.as_str(), log.rows[1].down.doubt),
        (1, "1O.5", Some(0))
    );
    let made = act(&typed, &log.doubts[0].ways[0].action);
    assert_eq!((temp(&made, 1), made.cast.entries[1].temp.written.as_str()), (Some(10.5), "1O.5"));
    assert_eq!(look(&made).log.settled.len(), 1);
    let back = act(&made, &look(&made).log.settled[0].ways[0].action);
    assert_eq!(back.cast, typed.cast);
}

#[test]
fn a_depth_moves_all_readings_of_its_row() {
    let notebook = notebook("group_c");
    let row = &look(&notebook).log.rows[1];
    assert_eq!(row.entries, [2, 3]);
    let moved = act(&notebook, &Action::SetDepth { entries: row.entries.clone(), text: "0,6".into() });
    let depths = [2, 3].map(|i| moved.cast.entries[i].depth.current());
    assert_eq!((depths, moved.cast.entries[2].depth.written.as_str()), ([Some(0.6), Some(0.6)], "0.5"));
    let wordy = act(&notebook, &Action::SetDepth { entries: vec![2, 3], text: "deep".into() });
    assert_eq!(look(&wordy).log.rows[1].depth_text.as_deref(), Some("deep"));
}

#[test]
fn two_bad_cells_are_settled_by_their_buttons() {
    let notebook = pasted(TWO_DOUBTS);
    let words = support::Words::new("en");
    let told = words.log(&look(&notebook));
    let told: Vec<&str> = told.lines().filter(|line| line.starts_with(['#', '?'])).collect();
    // What was written may stand in quotes or as a chip.
    assert_eq!(
        told.join("\n").replace('“', "<cell>").replace('”', "</cell>"),
        "# Two cells to look at\n\
         ? 4.0\u{a0}m, going down: You have <cell>177</cell>. Lake water is never 177\u{a0}°C. Did the point get lost? \
         [Make it 17.7] [Leave it out]\n\
         ? 6.5\u{a0}m, coming up: You have <cell>1O.5</cell>. The second character is the letter O, not a zero. \
         [Make it 10.5] [Leave it out]"
    );
    let doubts = look(&notebook).log.doubts;
    let settled = doing(&notebook, &[doubts[0].ways[0].action.clone(), doubts[1].ways[1].action.clone()]);
    let log = look(&settled).log;
    assert_eq!((log.doubts.len(), log.settled.len()), (0, 2));
    assert_eq!(words.say(&log.settled[0].text), "<cell>177</cell> made 17.7");
    assert!(log.rows[7].up.as_ref().unwrap().out);
    assert_eq!(doing(&settled, &[Action::Undo, Action::Undo]).cast, notebook.cast);
}

#[test]
fn a_pair_too_far_apart_lists_both_readings() {
    let notebook = pasted(&support::table("mixed").replace("14.4\t14.4", "14.4\t16.9"));
    let log = look(&notebook).log;
    let doubt = log.doubts.iter().find(|doubt| doubt.text.id == "log-doubt-pair").expect("a pair is doubted");
    assert_eq!(doubt.ways.len(), 3);
    let marked: Vec<_> = log.rows.iter().filter(|row| row.down.doubt.is_some()).collect();
    assert!(marked.iter().all(|row| row.down.doubt == row.up.as_ref().unwrap().doubt));
    let kept = act(&notebook, &doubt.ways[2].action);
    assert!(look(&kept).log.doubts.len() < log.doubts.len());
}

#[test]
fn names_and_bed_are_kept_as_typed() {
    let named = doing(
        &notebook("group_c"),
        &[
            Action::SetWater { text: "Quillet Pond".into() },
            Action::SetGroup { text: "C".into() },
            Action::SetBed { text: "9,8 m".into() },
        ],
    );
    assert_eq!((named.cast.water.as_str(), named.cast.group.as_str()), ("Quillet Pond", "C"));
    assert!(named.code.starts_with("C-"), "{}", named.code);
    assert_eq!((named.cast.bed_m, look(&named).log.bed_text.as_str()), (Some(9.8), "9,8 m"));
    let undone = act(&named, &Action::Undo);
    assert_eq!((undone.cast.water.as_str(), undone.cast.bed_m), ("Quillet Pond", Some(9.8)));
    let taken_back = act(&named, &Action::SetBed { text: String::new() });
    assert_eq!(taken_back.cast.bed_m, None);
    let odd = act(&named, &Action::SetBed { text: "muddy".into() });
    assert_eq!((odd.cast.bed_m, look(&odd).log.bed_text.as_str()), (None, "muddy"));
}

#[test]
fn the_empty_table_grows_by_a_mark() {
    assert_eq!(look(&empty()).log.rows.len(), 20);
    let grown = act(&empty(), &Action::AddMark);
    let rows = look(&grown).log.rows;
    assert_eq!((rows.len(), rows[20].depth.value), (21, 10.0));
}

#[test]
fn marks_are_typed_in_the_readers_own_way() {
    let marked = doing(
        &notebook("group_c"),
        &[mark(MarkName::Mixed, "2,5"), mark(MarkName::Thermocline, "400 cm"), mark(MarkName::Deep, "6.0 m")],
    );
    assert_eq!(depths(&marked), [Some(2.5), Some(4.0), Some(6.0)]);
    assert!(look(&marked).profile.check.waits.is_none());
}

#[test]
fn a_typed_mark_out_of_order_is_kept_with_its_reason() {
    let marked = doing(&notebook("group_c"), &[mark(MarkName::Mixed, "5"), mark(MarkName::Thermocline, "4")]);
    let view = &look(&marked).profile.marks[1];
    assert_eq!((view.depth_text.as_str(), view.depth_m), ("4", None));
    assert_eq!(view.problem.as_ref().unwrap().id, "profile-problem-above-neighbour");
    assert!(look(&marked).profile.check.waits.is_some());
    let mended = act(&marked, &mark(MarkName::Mixed, "3"));
    assert_eq!(depths(&mended), [Some(3.0), Some(4.0), None]);
}

#[test]
fn keys_move_a_grip() {
    let key = |key| Action::KeyMark { mark: MarkName::Thermocline, key };
    let after = |keys: &[MarkKey]| {
        depths(&doing(&notebook("group_c"), &keys.iter().map(|k| key(*k)).collect::<Vec<_>>()))[1]
    };
    assert_eq!(after(&[MarkKey::Down]), Some(0.0), "the first key down: the first reading");
    assert_eq!(after(&[MarkKey::Up]), Some(9.5), "the first key up: the last reading");
    assert_eq!(after(&[MarkKey::Down, MarkKey::Down, MarkKey::Down]), Some(0.2));
    assert_eq!(after(&[MarkKey::Down, MarkKey::MarkDown, MarkKey::Up]), Some(0.4));
    assert_eq!(after(&[MarkKey::Down, MarkKey::Up]), Some(0.0), "not above the surface");
    assert_eq!(after(&[MarkKey::End]), Some(9.5));
    assert_eq!(after(&[MarkKey::End, MarkKey::Home]), Some(0.0));
}

#[test]
fn grips_do_not_pass_one_another() {
    let set = doing(&notebook("group_c"), &[mark(MarkName::Mixed, "2.5"), mark(MarkName::Deep, "6")]);
    let drag =
        |y_px| Action::DragMark { mark: MarkName::Thermocline, y_px, surface_y_px: 50.0, px_per_m: 46.6 };
    assert_eq!(depths(&act(&set, &drag(500.0)))[1], Some(6.0));
    assert_eq!(depths(&act(&set, &drag(0.0)))[1], Some(2.5));
    assert_eq!(depths(&act(&set, &drag(225.0)))[1], Some(3.8));
    let end = act(&set, &Action::KeyMark { mark: MarkName::Thermocline, key: MarkKey::End });
    assert_eq!(depths(&end)[1], Some(6.0));
    let view = &look(&end).profile.marks[1];
    assert_eq!((view.least_m, view.most_m, view.depth_text.as_str()), (2.5, 6.0, "6.0"));
}

#[test]
fn a_mark_can_be_refused_and_taken_back() {
    let set = act(&notebook("group_c"), &mark(MarkName::Deep, "6"));
    let refused = act(&set, &Action::RefuseMark { mark: MarkName::Deep, refused: true });
    assert_eq!(depths(&refused)[2], None);
    let back = act(&refused, &Action::RefuseMark { mark: MarkName::Deep, refused: false });
    assert_eq!(depths(&back)[2], Some(6.0));
    let none = act(&set, &Action::NoLayers);
    assert!(none.sheets[0].marks.all_refused() && look(&none).profile.check.waits.is_none());
}

#[test]
fn give_or_take_may_stay_empty_or_be_odd() {
    let give = |text: &str| {
        act(&notebook("group_c"), &Action::TypeGive { mark: MarkName::Mixed, text: text.into() })
    };
    assert_eq!(give("±0,5").sheets[0].marks.mixed.give_m, Some(0.5));
    let odd = give("a bit");
    assert_eq!(odd.sheets[0].marks.mixed.give_m, None);
    assert!(look(&odd).profile.marks[0].problem.is_some());
    assert!(look(&give("")).profile.marks[0].problem.is_none());
}

#[test]
fn check_waits_until_all_marks_are_in() {
    let two = doing(&notebook("group_c"), &[mark(MarkName::Mixed, "2.5"), mark(MarkName::Thermocline, "4")]);
    assert_eq!(act(&two, &Action::CheckMarks { early: true }), two);
    assert_eq!(act(&two, &Action::ShowMarks { again: true }), two, "nothing was checked yet");
}

#[test]
fn the_first_marks_stay_on_record() {
    let first = checked(&notebook("group_c"), ["2.5", "4.0", "6.0"]);
    let again = doing(
        &first,
        &[
            Action::ShowMarks { again: true },
            mark(MarkName::Deep, "6.5"),
            Action::CheckMarks { early: false },
        ],
    );
    assert_eq!(again.sheets[0].first_marks, first.sheets[0].first_marks);
    assert_eq!(depths(&again)[2], Some(6.5));
    let found = look(&again).profile;
    assert!(!found.marking && found.checked);
    assert_eq!(found.found.unwrap().items[2].verdict.as_ref().unwrap().sign, Sign::Inside);
}

#[test]
fn marks_wait_when_the_cast_ends_above_them_and_come_back() {
    let marked = act(&notebook("group_c"), &mark(MarkName::Deep, "9"));
    let entries: Vec<usize> = (30..40).collect();
    let shorter = act(&marked, &Action::LeaveOut { entries });
    assert_eq!(depths(&shorter)[2], None);
    assert_eq!(look(&shorter).profile.marks[2].problem.as_ref().unwrap().id, "profile-problem-too-deep");
    assert_eq!(depths(&act(&shorter, &Action::Undo))[2], Some(9.0));
}

#[test]
fn fields_reasons_and_words_of_a_question_are_kept() {
    let notebook = notebook("group_c");
    let id = |notebook: &Notebook| notebook.sheets[0].answers.keys().next().cloned();
    let set =
        |field: &str, text: &str| Action::SetField { question: 0, field: field.into(), text: text.into() };
    let typed = doing(
        &notebook,
        &[
            set("anything", "21.8"),
            Action::SetReason { question: 0, text: "I followed the line.".into() },
            Action::SetOwnWords { question: 0, text: "It is warm up there.".into() },
        ],
    );
    let answer = &typed.sheets[0].answers[&id(&typed).unwrap()];
    assert_eq!(answer.draft["anything"], "21.8");
    assert_eq!(
        (answer.reason.as_str(), answer.own_words.as_str()),
        ("I followed the line.", "It is warm up there.")
    );
    assert_eq!(act(&typed, &Action::SetReason { question: 99, text: "nowhere".into() }), typed);
}

#[test]
fn an_empty_check_and_the_same_again_are_no_tries() {
    let notebook = act(&notebook("group_c"), &Action::Go { screen: Screen::Questions, question: Some(0) });
    let tries = |notebook: &Notebook| {
        notebook.sheets[0].answers.values().map(|answer| answer.tries.len()).sum::<usize>()
    };
    assert_eq!(tries(&act(&notebook, &Action::Check { question: 0 })), 0);
    let view = look(&notebook).questions.current.unwrap();
    let field = view.parts[0].lines[0].fields[0].id.clone();
    let typed = act(&notebook, &Action::SetField { question: 0, field: field.clone(), text: "3.0".into() });
    let tried = act(&typed, &Action::Check { question: 0 });
    assert_eq!(tries(&tried), 1);
    let retyped = act(&tried, &Action::SetField { question: 0, field, text: "3.0".into() });
    assert_eq!(tries(&act(&retyped, &Action::Check { question: 0 })), 1);
}

#[test]
fn hints_end_at_three_and_show_me_shows() {
    let hint = Action::Hint { question: 0 };
    let helped = doing(&notebook("group_c"), &[hint.clone(), hint.clone(), hint.clone(), hint]);
    let answer = helped.sheets[0].answers.values().next().unwrap();
    assert_eq!(answer.hints, 3);
    let shown = act(&helped, &Action::ShowMe { question: 0 });
    assert!(shown.sheets[0].answers.values().next().unwrap().shown);
    let again = act(&shown, &Action::AnswerAgain { question: 0 });
    assert!(again.sheets[0].answers.values().next().unwrap().again);
    let locked = act(&notebook("group_c"), &Action::ShowMe { question: 3 });
    assert!(locked.sheets[0].answers.values().all(|answer| !answer.shown), "steepest waits for the marks");
}

#[test]
fn a_question_that_uncovers_the_strip_freezes_the_first_marks() {
    let marked = doing(
        &notebook("group_c"),
        &[mark(MarkName::Mixed, "2.5"), mark(MarkName::Thermocline, "4"), mark(MarkName::Deep, "6")],
    );
    let shown = act(&marked, &Action::ShowMe { question: 3 });
    assert!(shown.sheets[0].uncovered.steps, "the whole strip comes with the steepest step");
    let moved = doing(&shown, &[mark(MarkName::Thermocline, "3.8"), Action::CheckMarks { early: true }]);
    let first = moved.sheets[0].first_marks.as_ref().unwrap();
    assert_eq!((first.thermocline.depth_m, depths(&moved)[1]), (Some(4.0), Some(3.8)));
}

#[test]
fn undo_keeps_at_most_twenty_and_the_newest() {
    let mut notebook = notebook("group_c");
    for i in 0..30 {
        notebook = act(&notebook, &Action::LeaveOut { entries: vec![i] });
    }
    assert_eq!(notebook.undo.len(), 20);
    let undone = doing(&notebook, &vec![Action::Undo; 25]);
    let out = undone.cast.entries.iter().filter(|entry| entry.switch == SwitchDoc::Off).count();
    assert_eq!(out, 10);
}

#[test]
fn whatever_is_typed_can_be_saved_and_opened() {
    for text in ["1e308", "-1e308", "1e-308", "0.1", "64.4 °F", "1O.5", "\"\\\u{0}"] {
        let typed = doing(&empty(), &[cell(0.0, LegDoc::Down, text), cell(1e308, LegDoc::Up, text)]);
        let bed = act(&typed, &Action::SetBed { text: text.into() });
        assert_eq!(Notebook::from_json(&bed.to_json()), Ok(bed), "{text}");
    }
}

#[test]
fn a_very_long_cast_is_listed_in_parts() {
    let lines: String = (0..5000)
        .map(|i| format!("{:.3},{:.2}\n", f64::from(i) / 100.0, 20.0 - f64::from(i) / 500.0))
        .collect();
    let long = act(
        &Notebook::new("4T7K", Lesson::first()),
        &Action::Paste { text: format!("Depth (m),Temp (°C)\n{lines}") },
    );
    let all = look(&long).log;
    assert_eq!((all.first_row, all.rows.len(), all.row_count), (0, 2000, 5000));
    for (asked, first) in [(2000, 2000), (4000, 3000), (usize::MAX, 3000)] {
        let part = layercast_lesson::look_from(&long, asked, None).log;
        assert_eq!((part.first_row, part.rows.len(), part.row_count), (first, 2000, 5000));
        assert!((part.rows[0].depth.value - first as f64 / 100.0).abs() < 1e-9);
    }
}

#[test]
fn a_report_is_kept_as_typed_and_saved() {
    use layercast_lesson::document::ReportPart;
    let mut notebook = notebook("group_c");
    for part in ReportPart::ALL {
        let text = format!("=1+1 <b>{part:?}</b>\n\"4,5 m\" ");
        notebook = act(&notebook, &Action::SetReport { part, text });
    }
    let report = &notebook.sheets[0].report;
    for part in ReportPart::ALL {
        assert_eq!(report.get(part), format!("=1+1 <b>{part:?}</b>\n\"4,5 m\" "));
    }
    assert_eq!(Notebook::from_json(&notebook.to_json()), Ok(notebook));
}

#[test]
fn a_report_that_is_too_long_keeps_its_beginning() {
    use layercast_lesson::document::ReportPart;
    for (part, most) in [(ReportPart::Title, 400), (ReportPart::Claim, 20_000), (ReportPart::Change, 20_000)]
    {
        let text = "ñ".repeat(most + 7);
        let typed = act(&empty(), &Action::SetReport { part, text });
        assert_eq!(typed.sheets[0].report.get(part).chars().count(), most);
        assert_eq!(Notebook::from_json(&typed.to_json()), Ok(typed));
    }
}

#[test]
fn a_notebook_from_before_there_were_reports_opens() {
    let mut json: serde_json::Value = serde_json::from_str(&notebook("group_c").to_json()).unwrap();
    assert!(json["sheets"][0].as_object_mut().unwrap().remove("report").is_some());
    assert_eq!(Notebook::from_json(&json.to_string()), Ok(notebook("group_c")));
}

#[test]
fn the_title_of_a_table_names_water_and_group_where_neither_was_named() {
    let with = |title: &str| format!("{title}\n{}", support::table("group_c"));
    let names = |notebook: &Notebook| (notebook.cast.water.clone(), notebook.cast.group.clone());
    let named = pasted(&with("Quillet Pond, group C"));
    assert_eq!(names(&named), ("Quillet Pond".to_owned(), "C".to_owned()));
    assert!(named.code.starts_with("C-"), "{}", named.code);
    // What is typed stands; it stays when another table comes.
    let mended = doing(
        &named,
        &[
            Action::SetWater { text: "Marl Tarn".into() },
            Action::Paste { text: with("Sedge Hollow, group D") },
        ],
    );
    assert_eq!(names(&mended), ("Marl Tarn".to_owned(), "C".to_owned()));
    // Taken back with its table.
    let undone = act(&named, &Action::Undo);
    assert_eq!(names(&undone), (String::new(), String::new()));
    assert!(!undone.code.contains('-') && undone.cast.entries.is_empty(), "{}", undone.code);
    for title in [
        "Quillet Pond",
        "Quillet Pond, 4 July",
        "Probe: 7, group C",
        "Quillet Pond, group of the herons",
        ", group C",
    ] {
        assert_eq!(names(&pasted(&with(title))), (String::new(), String::new()), "{title}");
    }
}

#[test]
fn words_that_are_kept_are_answered_before_one_looks_for_points_in_them() {
    let lesson = Lesson { id: "words".into(), kinds: vec![27], ..Lesson::first() };
    let fresh = Notebook::new("4T7K", lesson);
    let at = doing(
        &fresh,
        &[
            Action::Paste { text: support::table("group_c") },
            Action::Go { screen: Screen::Questions, question: Some(0) },
            Action::SetField { question: 0, field: "words".into(), text: "In the mud.".into() },
            Action::Check { question: 0 },
        ],
    );
    let view = look(&at).questions;
    let labels = |view: &layercast_lesson::view::QuestionsView| -> Vec<String> {
        view.current.iter().flat_map(|q| &q.buttons).map(|way| way.label.id.clone()).collect()
    };
    assert!(view.rail[0].done && view.current.as_ref().unwrap().parts.len() == 2);
    assert_eq!(labels(&view), ["ask-why-keep", "ask-to-profile"]);
    // Nothing ticked is as good.
    let view = look(&act(&at, &Action::Check { question: 0 })).questions;
    assert_eq!(labels(&view), ["ask-to-profile", "ask-again"]);
    assert!(view.rail[0].done && view.all_done.is_some());
}

#[test]
fn a_settled_question_leads_back_to_the_check_once_that_tells_nothing_any_more() {
    let lesson = Lesson { id: "back".into(), kinds: vec![1, 9, 4], ..Lesson::first() };
    let go = |question| Action::Go { screen: Screen::Questions, question: Some(question) };
    let start = doing(
        &Notebook::new("4T7K", lesson),
        &[
            Action::Paste { text: support::table("group_c") },
            mark(MarkName::Mixed, "2.7"),
            mark(MarkName::Thermocline, "3.8"),
            mark(MarkName::Deep, "6.5"),
        ],
    );
    let leads = |notebook: &Notebook| {
        let current = look(notebook).questions.current.unwrap();
        current.buttons.iter().any(|way| way.label.id == "ask-to-check")
    };
    // A check would show where the mixed layer ends, which question 2 asks.
    let first = doing(&start, &[go(0), Action::ShowMe { question: 0 }]);
    assert!(!leads(&first));
    let both = doing(&first, &[go(1), Action::ShowMe { question: 1 }]);
    assert!(leads(&both) && leads(&act(&both, &go(0))));
    let done = doing(&both, &[Action::CheckMarks { early: false }, go(1)]);
    assert!(done.sheets[0].first_marks.is_some() && !leads(&done));
}
