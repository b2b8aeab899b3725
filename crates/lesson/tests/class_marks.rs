//! What the class knows, and marks: counted by hand beside what is counted by the program.
//!
//! Long because points, tables and slips are counted by hand on the same few sheets.

use crate::class_support::{acted, answers, key, place, seat, taken, upside_down};
use crate::support::{Words, doing};
use layercast_lesson::action::Action;
use layercast_lesson::class::export::{Options, harmless, long, slips, wide};
use layercast_lesson::class::{Class, ClassAction, look};
use layercast_lesson::document::{MarkName, Notebook, ReportPart};

/// Six seats of three groups on question 1, which gives four points. By hand:
///
/// | seat | group | tries | credit |
/// | 01 | A | right | 1 |
/// | 02 | A | upside down, 33 °C, right | 0.75 |
/// | 03 | B | upside down, 33 °C, 34 °C | 0 |
/// | 04 | B | upside down, right | 1 |
/// | 05 | C | nothing | 0 |
/// | 06 | C | right | 1 |
fn six() -> Vec<Notebook> {
    let at = |water: &str, group: &str, code: &str| seat(water, group, code);
    let tried = |notebook: &Notebook, wrong: usize, right: bool| {
        let text = upside_down(notebook);
        let mut tries: Vec<Option<&str>> = [Some(text.as_str()), Some("33"), Some("34")][..wrong].to_vec();
        tries.extend(right.then_some(None));
        answers(notebook, &tries)
    };
    vec![
        tried(&at("group_a", "A", "01"), 0, true),
        tried(&at("group_a", "A", "02"), 2, true),
        tried(&at("group_b", "B", "03"), 3, false),
        tried(&at("group_b", "B", "04"), 1, true),
        at("group_c", "C", "05"),
        tried(&at("group_c", "C", "06"), 0, true),
    ]
}

fn class() -> Class {
    taken(&Class::new("", None), &six()).0
}

/// Cells of a CSV as RFC 4180 has them.
fn cells(csv: &str, between: char) -> Vec<Vec<String>> {
    let text = csv.strip_prefix('\u{feff}').expect("a byte order mark");
    let (mut rows, mut row, mut cell, mut inside) = (Vec::new(), Vec::new(), String::new(), false);
    let mut chars = text.chars().peekable();
    while let Some(c) = chars.next() {
        match c {
            '"' if inside && chars.peek() == Some(&'"') => {
                chars.next();
                cell.push('"');
            }
            '"' => inside = !inside,
            c if c == between && !inside => row.push(std::mem::take(&mut cell)),
            '\r' if !inside => {}
            '\n' if !inside => {
                row.push(std::mem::take(&mut cell));
                rows.push(std::mem::take(&mut row));
            }
            c => cell.push(c),
        }
    }
    assert!(row.is_empty() && cell.is_empty(), "the last line is ended");
    assert!(rows.iter().all(|row: &Vec<String>| row.len() == rows[0].len()));
    rows
}

fn column(rows: &[Vec<String>], name: &str) -> Vec<String> {
    let at = rows[0].iter().position(|head| head == name).unwrap();
    rows[1..].iter().map(|row| row[at].clone()).collect()
}

fn sum(texts: &[String]) -> f64 {
    texts
        .iter()
        .filter(|text| !text.is_empty())
        .map(|text| text.replace(',', ".").parse::<f64>().unwrap())
        .sum()
}

#[test]
fn sums_agree_with_a_count_by_hand() {
    let class = class();
    let rows = cells(&long(&class, &Options::default()), ',');
    assert_eq!(
        rows[0][..13].join(","),
        "class,seat,group,cast,question,points,max,tries,hints,idea,override,rule,lesson_version"
    );
    let of_first: Vec<Vec<String>> = rows
        .iter()
        .enumerate()
        .filter(|(at, row)| *at == 0 || row[4].starts_with("1-"))
        .map(|(_, row)| row.clone())
        .collect();
    assert_eq!(column(&of_first, "points"), ["4", "3", "0", "4", "0", "4"]);
    assert_eq!(column(&of_first, "tries"), ["1", "3", "3", "2", "0", "1"]);
    assert_eq!(
        column(&of_first, "idea"),
        ["", "depth_as_height", "depth_as_height", "depth_as_height", "", ""]
    );
    assert_eq!(
        column(&of_first, "state"),
        ["right_first", "right_later", "not_yet", "right_later", "blank", "right_first"]
    );
    // 4 + 3 + 0 + 4 + 0 + 4.
    assert!((sum(&column(&rows, "points")) - 15.0).abs() < 1e-9);
    let across = cells(&wide(&class, &Options::default()), ',');
    assert_eq!(column(&across, "total"), ["4", "3", "0", "4", "0", "4"]);
    assert_eq!(column(&across, "question_1"), column(&across, "total"));
    assert!((sum(&column(&across, "max")) - sum(&column(&rows, "max"))).abs() < 1e-9);
    assert_eq!(column(&across, "seat"), ["01", "02", "03", "04", "05", "06"]);
}

#[test]
fn the_questions_of_the_class_are_counted() {
    let view = look(&class(), None);
    let first = view.questions.iter().position(|row| row.idea.is_some()).unwrap();
    let row = &view.questions[first];
    assert_eq!(
        (
            row.seats.asked,
            row.seats.right_first,
            row.seats.right_later,
            row.seats.not_yet,
            row.seats.blank,
            row.seats.cannot_tell
        ),
        (6, 2, 2, 1, 1, 0)
    );
    for row in &view.questions {
        assert_eq!(
            row.seats.asked,
            row.seats.right_first
                + row.seats.right_later
                + row.seats.not_yet
                + row.seats.blank
                + row.seats.cannot_tell
                + row.seats.written
                + row.seats.marked
        );
    }
    let words = Words::new("en");
    let idea = row.idea.clone().unwrap();
    assert_eq!(words.say(&idea.count), "3 students, 2 groups");
    assert_eq!(words.say(&idea.name), "depth counted up from the bottom");
    assert!(words.say(&idea.said).contains("0 is at the top"), "{}", words.say(&idea.said));
    assert_eq!((row.kind, words.say(&row.name).as_str()), (1, "Read a temperature from the picture"));
    let (right, wrong) = row.pair.clone().unwrap();
    assert_ne!(words.say(&right.given[0]), words.say(&wrong.given[0]));
    assert_eq!(view.next_question, Some(first));
    assert!(words.say(view.next.as_ref().unwrap()).contains("3 answers show the same idea"));
}

#[test]
fn a_mark_book_stands_in_the_order_of_groups_and_names_its_columns() {
    let at = |water: &str, group: &str, code: &str| seat(water, group, code);
    let mixed_up =
        [at("group_b", "B", "10"), at("group_c", "C", "1"), at("group_b", "B", "9"), at("group_a", "A", "2")];
    let class = taken(&Class::new("", None), &mixed_up).0;
    let names = [(1, "Read a temperature".to_owned())].into();
    let rows = cells(&wide(&class, &Options { names, ..Options::default() }), ',');
    assert_eq!(column(&rows, "group"), ["A", "B", "B", "C"]);
    assert_eq!(column(&rows, "seat"), ["2", "9", "10", "1"]);
    assert!(rows[0].contains(&"1 Read a temperature".to_owned()), "{:?}", rows[0]);
    assert!(rows[0].contains(&"question_4".to_owned()), "{:?}", rows[0]);
    let seats: Vec<String> = slips(&class).into_iter().map(|slip| slip.seat).collect();
    assert_eq!(seats, ["2", "9", "10", "1"]);
    let seats: Vec<String> = look(&class, None).sheets.into_iter().map(|sheet| sheet.seat).collect();
    assert_eq!(seats, ["2", "9", "10", "1"]);
}

#[test]
fn practice_is_counted_apart() {
    let class = class();
    let apart = acted(&class, &[ClassAction::Practice { member: key(&class, "03"), on: true }]);
    let view = look(&apart, None);
    assert_eq!((view.questions[0].seats.asked, view.sheets.len()), (5, 6));
    let rows = cells(&long(&apart, &Options::default()), ',');
    assert_eq!(column(&rows, "practice").iter().filter(|text| *text == "yes").count(), 8);
}

#[test]
fn a_teachers_marks_are_kept_with_their_reasons() {
    let class = class();
    let question = look(&class, None).sheets[2].answers[0].question.clone();
    let member = key(&class, "03");
    let set = |text: &str| ClassAction::SetPoints {
        member: member.clone(),
        question: question.clone(),
        text: text.into(),
    };
    let given = acted(
        &class,
        &[
            set("0,5"),
            ClassAction::SetWhy {
                member: member.clone(),
                question: question.clone(),
                text: "=said it aloud".into(),
            },
            ClassAction::SetComment {
                member: member.clone(),
                question: question.clone(),
                text: "Look up, Ö.".into(),
            },
            ClassAction::Late { member: member.clone(), on: true },
        ],
    );
    let rows = cells(&long(&given, &Options::default()), ',');
    let line = rows.iter().find(|row| row[1] == "03" && row[4] == question).unwrap();
    assert_eq!((line[5].as_str(), line[10].as_str()), ("0.5", "'=said it aloud"));
    assert!((sum(&column(&rows, "points")) - 15.5).abs() < 1e-9);
    assert_eq!(acted(&given, &[set("a lot"), set("-1"), set("2000")]), given);
    let slip = slips(&given).remove(2);
    assert_eq!(
        (slip.seat.as_str(), slip.lines[0].why.as_str(), slip.lines[0].comment.as_str()),
        ("03", "=said it aloud", "Look up, Ö.")
    );
    assert_eq!(slip.notes.len(), 1);
    assert_eq!(slip.points.value, 0.5);
    let taken_back = acted(&given, &[set("")]);
    assert!(
        (sum(&column(&cells(&long(&taken_back, &Options::default()), ','), "points")) - 15.0).abs() < 1e-9
    );
    // Four steps and four back.
    assert_eq!(acted(&given, &vec![ClassAction::Undo; 4]).now, class.now);
}

#[test]
fn prose_is_marked_in_four_levels() {
    let write = |seat: &Notebook| {
        doing(seat, &[Action::SetReport { part: ReportPart::Claim, text: "It is layered.".into() }])
    };
    let mut all = six();
    all[0] = write(&all[0]);
    let class = taken(&Class::new("", None), &all).0;
    let member = key(&class, "01");
    let total = |class: &Class| look(class, None).sheets[0].points.value;
    assert_eq!(
        look(&class, None).sheets.iter().map(|sheet| sheet.to_read).collect::<Vec<_>>(),
        [1, 0, 0, 0, 0, 0]
    );
    // Prose that waits for its level counts nothing yet.
    assert_eq!((total(&class), look(&class, None).sheets[0].max.value), (4.0, 36.0));
    for (level, points) in [(0, 4.0), (1, 5.33), (2, 6.67), (3, 8.0), (9, 8.0)] {
        let set =
            ClassAction::SetLevel { member: member.clone(), question: "report".into(), level: Some(level) };
        assert_eq!(total(&acted(&class, &[set])), points, "{level}");
    }
    let across = cells(&wide(&class, &Options::default()), ',');
    // Where nothing was written nothing waits: 0.
    assert_eq!(column(&across, "report"), ["", "0", "0", "0", "0", "0"]);
}

/// The question of words alone ("When or where would this answer mean nothing?") on two seats, written on one.
fn with_words() -> (Class, String) {
    let write = |seat: Notebook| {
        let question = place(&seat, 27);
        let text = "In winter, under ice.".to_owned();
        let set = Action::SetField { question, field: "words".into(), text };
        doing(&seat, &[set, Action::Check { question }])
    };
    let mut all = vec![seat("group_a", "A", "01"), seat("group_b", "B", "02")];
    for one in &mut all {
        one.lesson.kinds = vec![1, 27];
    }
    all[0] = write(all[0].clone());
    let class = taken(&Class::new("", None), &all).0;
    let question = look(&class, None).sheets[0].answers[1].question.clone();
    (class, question)
}

#[test]
fn an_answer_in_words_is_not_yet_marked_until_it_has_its_level() {
    let (class, question) = with_words();
    let of = |class: &Class| {
        let row = look(class, None).questions.remove(1);
        (row.seats.right_first, row.seats.blank, row.seats.written, row.seats.marked)
    };
    assert_eq!(of(&class), (0, 1, 1, 0));
    let sheet = &look(&class, None).sheets[0];
    assert_eq!((sheet.right, sheet.asked, sheet.to_read, sheet.points.value), (0, 2, 1, 0.0));
    // What was written is there to be read, and the other answers have no level.
    let words = Words::new("en");
    assert_eq!(words.say(&sheet.answers[1].given[0]), "In winter, under ice.");
    assert_eq!((sheet.answers[0].levels.len(), sheet.answers[1].levels.len()), (0, 1));
    let rows = cells(&long(&class, &Options::default()), ',');
    let line =
        |rows: &[Vec<String>]| rows.iter().find(|row| row[1] == "01" && row[4] == question).unwrap().clone();
    assert_eq!((line(&rows)[5].as_str(), line(&rows)[13].as_str()), ("", "not_yet_marked"));

    let set = |level| ClassAction::SetLevel { member: key(&class, "01"), question: question.clone(), level };
    let marked = acted(&class, &[set(Some(2))]);
    assert_eq!(of(&marked), (0, 1, 0, 1));
    let sheet = &look(&marked, None).sheets[0];
    // Two thirds of four points.
    assert_eq!((sheet.right, sheet.to_read, sheet.points.value), (0, 0, 2.67));
    let rows = cells(&long(&marked, &Options::default()), ',');
    let cells = line(&rows);
    assert_eq!((cells[5].as_str(), cells[13].as_str(), cells[17].as_str()), ("2.67", "marked", "2"));
    assert_eq!(acted(&marked, &[set(None)]).now, class.now);
}

#[test]
fn a_report_has_a_level_for_claim_evidence_and_reasoning() {
    let write = |part, text: &str| Action::SetReport { part, text: text.into() };
    let mut seats = six();
    seats[0] = doing(
        &seats[0],
        &[write(ReportPart::Claim, "<b>It</b> is layered."), write(ReportPart::Change, "Ice.")],
    );
    let class = taken(&Class::new("", None), &seats).0;
    let of = |class: &Class| look(class, None).sheets[0].answers.last().unwrap().clone();
    assert_eq!(of(&class).levels.iter().map(|row| row.level).collect::<Vec<_>>(), [None; 3]);
    let words = Words::new("en");
    let given: Vec<String> = of(&class).given.iter().map(|said| words.say(said)).collect();
    assert_eq!(given, ["What did you find? <b>It</b> is layered.", "What would change your mind? Ice."]);
    let set = |at: usize, level| ClassAction::SetLevel {
        member: key(&class, "01"),
        question: of(&class).levels[at].question.clone(),
        level: Some(level),
    };
    // Two of three levels are not enough for a number.
    let two = acted(&class, &[set(0, 3), set(1, 2)]);
    assert_eq!((look(&two, None).sheets[0].to_read, look(&two, None).sheets[0].points.value), (1, 4.0));
    // 4 of question 1, and 4 points × (3 + 2 + 0) ÷ 9.
    let three = acted(&two, &[set(2, 0)]);
    assert_eq!((look(&three, None).sheets[0].to_read, look(&three, None).sheets[0].points.value), (0, 6.22));
    let rows = cells(&long(&three, &Options::default()), ',');
    let line = rows.iter().find(|row| row[1] == "01" && row[4] == "report").unwrap();
    assert_eq!((line[5].as_str(), line[17].as_str()), ("2.22", "claim 3 evidence 2 reasoning 0"));
    // The slip has each level beside its text, and none before it was given.
    let on_slip = |class: &Class| {
        let line = slips(class).remove(0).lines.pop().unwrap();
        let level = |row: &layercast_lesson::class::view::LevelRow| {
            (words.say(row.name.as_ref().unwrap()), row.level.unwrap())
        };
        line.levels.iter().map(level).collect::<Vec<_>>()
    };
    let named = |level: &str, at: u8| (level.to_owned(), at);
    assert_eq!(on_slip(&class), []);
    assert_eq!(
        on_slip(&three),
        [
            named("What did you find?", 3),
            named("Which of your readings show it?", 2),
            named("Why do they show it, and how sure are you?", 0)
        ]
    );
    assert!(slips(&three).remove(0).lines[0].levels.is_empty(), "all of question 1 is judged here");
}

#[test]
fn several_files_go_into_one_zip() {
    let files = [("C-07.html", "<p>Ö</p>"), ("=1+1 \u{1f41f}.html", ""), ("C-07.html", "again")];
    let owned = files.map(|(name, text)| (name.to_owned(), text.as_bytes().to_vec()));
    let bytes = layercast_exchange::write::zip::stored(&owned);
    // Read by a general-purpose library; of two with one name it gives the last.
    let mut read = zip::ZipArchive::new(std::io::Cursor::new(bytes.clone())).unwrap();
    let mut text = String::new();
    std::io::Read::read_to_string(&mut read.by_name("=1+1 \u{1f41f}.html").unwrap(), &mut text).unwrap();
    std::io::Read::read_to_string(&mut read.by_name("C-07.html").unwrap(), &mut text).unwrap();
    assert_eq!(text, "again");
    let parts = layercast_exchange::zip::parts(&bytes);
    assert_eq!(parts.len(), 3);
    assert_eq!((parts[0].name.as_str(), parts[0].bytes.as_deref()), ("C-07.html", Ok("<p>Ö</p>".as_bytes())));
    assert!(layercast_exchange::zip::parts(&layercast_exchange::write::zip::stored(&[])).len() <= 1);
}

#[test]
fn comments_are_kept_to_use_again() {
    let class = class();
    let keep = |text: &str| ClassAction::KeepComment { text: text.into() };
    let kept = acted(&class, &[keep(" Look up. "), keep("Look up."), keep("  "), keep("=1+1")]);
    assert_eq!(look(&kept, None).comments, ["Look up.", "=1+1"]);
    assert!(look(&kept, None).ready_comments.len() >= 4);
    let back = Class::from_json(&kept.to_json()).unwrap();
    assert_eq!(look(&back, None).comments, ["Look up.", "=1+1"]);
    let dropped = acted(&back, &[ClassAction::DropComment { text: "Look up.".into() }]);
    assert_eq!(look(&dropped, None).comments, ["=1+1"]);
}

#[test]
fn a_list_of_students_is_joined_and_kept_nowhere() {
    // Question 1 gives two points in this lesson.
    let mut all = six();
    all.iter_mut().for_each(|seat| seat.lesson.points.extend([(1, 2)]));
    let class = taken(&Class::new("", None), &all).0;
    let before = class.clone();
    let options = Options {
        comma: true,
        students: "01\tAnn Smith\n \"02\";\"Bo; =Li\"\n3,nobody".into(),
        ..Options::default()
    };
    let rows = cells(&wide(&class, &options), ';');
    assert_eq!(rows[0][0], "student");
    assert_eq!(column(&rows, "student"), ["Ann Smith", "Bo; =Li", "", "", "", ""]);
    assert_eq!(column(&rows, "total"), ["2", "1,5", "0", "2", "0", "2"]);
    assert_eq!(class, before);
    assert!(!class.to_json().contains("Ann"));
    assert!(!long(&class, &Options::default()).contains("Ann"));
}

#[test]
fn formulas_are_made_harmless_and_numbers_are_left_alone() {
    for wild in ["=1+1", "+1+1", "-1+1", "@SUM(A1)", " =1", "\t=1", "＝1", "-", "=cmd|'/c calc'!A0", "%0A=1"]
    {
        assert_eq!(harmless(wild), format!("'{wild}"));
    }
    for plain in ["", "C", "07", "-1", "-1.5", "+3", "-1,5", "a=b", "1-4.0", "x@y"] {
        assert_eq!(harmless(plain), plain);
    }
    let mut notebook = six().remove(0);
    notebook.sheets[0].seat = "=1+\"1".into();
    notebook.cast.group = "a;b,c\n@d".into();
    let class = taken(&Class::new("", None), &[notebook]).0;
    let rows = cells(&long(&class, &Options::default()), ',');
    assert_eq!((rows[1][1].as_str(), rows[1][2].as_str()), ("'=1+\"1", "a;b,c\n@d"));
}

#[test]
fn a_right_answer_after_it_was_shown_says_why_it_has_no_points() {
    let mark = |mark, text: &str| Action::TypeMark { mark, text: text.into() };
    let mut all = vec![seat("group_c", "C", "01"), seat("group_c", "C", "02")];
    for one in &mut all {
        one.lesson.kinds = vec![7];
        *one = doing(
            one,
            &[mark(MarkName::Mixed, "2.5"), mark(MarkName::Thermocline, "4"), mark(MarkName::Deep, "6")],
        );
    }
    let tried = |notebook: &Notebook, depth: &str| {
        let set = Action::SetField { question: 0, field: "depth".into(), text: depth.into() };
        doing(notebook, &[set, Action::Check { question: 0 }])
    };
    let check = Action::CheckMarks { early: true };
    all[0] = tried(&doing(&tried(&all[0], "8"), std::slice::from_ref(&check)), "3.8");
    all[1] = doing(&tried(&tried(&all[1], "8"), "3.8"), &[check]);
    let class = taken(&Class::new("", None), &all).0;
    let words = [Words::new("en"), Words::new("es")];
    let said = |said: &Option<layercast_lesson::view::Said>| {
        said.as_ref().map(|said| words.each_ref().map(|words| words.say(said)))
    };
    let why = ["after it was shown: no points", "después de mostrarse: sin puntos"].map(str::to_owned);
    let view = look(&class, None);
    let of = |at: usize| &view.sheets[at].answers[0];
    assert_eq!((of(0).points.value, said(&of(0).after_shown)), (0.0, Some(why.clone())));
    assert_eq!((of(1).points.value, said(&of(1).after_shown)), (4.0, None));
    let slips = slips(&class);
    assert_eq!((slips[0].points.value, said(&slips[0].lines[0].after_shown)), (0.0, Some(why)));
    assert_eq!(said(&slips[1].lines[0].after_shown), None);
    // Points that the teacher gave instead need no such reason.
    let set = ClassAction::SetPoints {
        member: key(&class, "01"),
        question: of(0).question.clone(),
        text: "2".into(),
    };
    assert_eq!(said(&look(&acted(&class, &[set]), None).sheets[0].answers[0].after_shown), None);
}

/// Six seats have eight questions of 4 points: 32. A report has 4 more.
#[test]
fn one_report_gives_everybody_the_same_most() {
    let write = |notebook: &Notebook| {
        doing(notebook, &[Action::SetReport { part: ReportPart::Claim, text: "It is layered.".into() }])
    };
    let most =
        |class: &Class| look(class, None).sheets.iter().map(|sheet| sheet.max.value).collect::<Vec<_>>();
    assert_eq!(most(&class()), [32.0; 6]);
    let none = cells(&wide(&class(), &Options::default()), ',');
    assert!(!none[0].contains(&"report".to_owned()));

    let mut all = six();
    all[1] = write(&all[1]);
    let class = taken(&Class::new("", None), &all).0;
    assert_eq!(most(&class), [36.0; 6]);
    assert_eq!(slips(&class).iter().map(|slip| slip.max.value).collect::<Vec<_>>(), [36.0; 6]);
    let across = cells(&wide(&class, &Options::default()), ',');
    assert_eq!(column(&across, "max"), ["36"; 6]);
    // Each has a line of 4 points in the long table, too: 6 × 36.
    let rows = cells(&long(&class, &Options::default()), ',');
    assert_eq!(sum(&column(&rows, "max")), 216.0);
    let of_report = |rows: &[Vec<String>]| {
        let lines = rows.iter().filter(|row| row[4] == "report");
        lines.map(|row| format!("{} {} {}", row[5], row[6], row[13])).collect::<Vec<_>>()
    };
    assert_eq!(
        of_report(&rows),
        ["0 4 blank", " 4 not_yet_marked", "0 4 blank", "0 4 blank", "0 4 blank", "0 4 blank"]
    );
    let words = Words::new("en");
    let view = look(&class, None);
    let state = |at: usize| words.say(&view.sheets[at].answers.last().unwrap().state);
    assert_eq!((state(0).as_str(), state(1).as_str()), ("blank", "not graded yet"));
    assert_eq!(view.sheets.iter().map(|sheet| sheet.to_read).collect::<Vec<_>>(), [0, 1, 0, 0, 0, 0]);

    // Graded 2 of 3: 4 × 2 ÷ 3 beside the 3 of question 1. A word to who wrote nothing leaves it blank.
    let set = ClassAction::SetLevel { member: key(&class, "02"), question: "report".into(), level: Some(2) };
    let word = ClassAction::SetComment {
        member: key(&class, "01"),
        question: "report".into(),
        text: "Where is yours?".into(),
    };
    let graded = acted(&class, &[set, word]);
    let sums = look(&graded, None).sheets.iter().map(|sheet| sheet.points.value).collect::<Vec<_>>();
    assert_eq!(sums, [4.0, 5.67, 0.0, 4.0, 0.0, 4.0]);
    let rows = cells(&long(&graded, &Options::default()), ',');
    assert_eq!(of_report(&rows)[..2], ["0 4 blank", "2.67 4 marked"]);

    // A sheet of practice has its own report and gives the others none.
    let practice = acted(&class, &[ClassAction::Practice { member: key(&class, "02"), on: true }]);
    assert_eq!(most(&practice), [32.0, 36.0, 32.0, 32.0, 32.0, 32.0]);
}
