//! The guess before the first reading: typed or placed, sealed by the first reading for good, shown in the report.

use crate::support;

use layercast_lesson::action::{Action, GuessField, Spot};
use layercast_lesson::document::{Lesson, Notebook, Screen};
use layercast_lesson::hand_in::{file_text, open};
use layercast_lesson::maker::{LessonAction, act as change, file_text as lesson_text};
use layercast_lesson::{act, look, prepare, scene};
use support::{Words, doing, empty, table};

fn typed(point: usize, depth: &str, temp: &str) -> [Action; 2] {
    [
        Action::SetGuess { point, guess: GuessField::Depth, text: depth.to_owned() },
        Action::SetGuess { point, guess: GuessField::Temp, text: temp.to_owned() },
    ]
}

fn at(depth_m: f64, temp_c: f64) -> Action {
    let (zero_x_px, px_per_c, surface_y_px, px_per_m) = (100.0, 20.0, 50.0, 40.0);
    let (x_px, y_px) = (zero_x_px + temp_c * px_per_c, surface_y_px + depth_m * px_per_m);
    Action::PlaceGuess { spot: Spot { x_px, y_px, zero_x_px, px_per_c, surface_y_px, px_per_m } }
}

fn guessed(notebook: &Notebook) -> Vec<(f64, f64)> {
    notebook.sheets[0].guessed()
}

fn first_reading() -> Action {
    Action::SetCell {
        entry: None,
        depth_m: 0.0,
        leg: layercast_exchange::document::LegDoc::Down,
        text: "21.4".to_owned(),
    }
}

#[test]
fn five_points_are_typed_in_any_unit_and_placed_on_the_picture() {
    let notebook = doing(&empty(), &[typed(0, "0", "21,5"), typed(1, "20 ft", "50 °F")].concat());
    let points = guessed(&notebook);
    assert_eq!(points[0], (0.0, 21.5));
    // 20 ft is 6.096 m, 50 °F is 10 °C: by the definitions of foot and degree Fahrenheit.
    assert!((points[1].0 - 6.096).abs() < 1e-9 && (points[1].1 - 10.0).abs() < 1e-9);
    let notebook = doing(&notebook, &[at(3.04, 17.3), at(8.0, 8.0), at(9.0, 7.0)]);
    assert_eq!(guessed(&notebook).len(), 5);
    assert!(guessed(&notebook).contains(&(3.0, 17.5)), "to the tenth of a metre and half a degree");
    // All five are set: the nearest in depth moves.
    let notebook = doing(&notebook, &[at(3.3, 15.0)]);
    let points = guessed(&notebook);
    assert!(points.len() == 5 && points.contains(&(3.3, 15.0)) && !points.contains(&(3.0, 17.5)));
}

#[test]
fn what_is_no_depth_or_temperature_is_kept_and_is_no_point() {
    for (depth, temp) in
        [("deep", "20"), ("-2", "20"), ("3", "warm"), ("3", "300"), ("3", "10 to 12"), ("", "20")]
    {
        let notebook = doing(&empty(), &typed(0, depth, temp));
        assert_eq!(guessed(&notebook), [], "{depth} {temp}");
        let row = &look(&notebook).log.guess.unwrap()[0];
        assert_eq!((row.depth.as_str(), row.temp.as_str()), (depth, temp));
        // Only the field that cannot be read is marked.
        let unread = (matches!(depth, "deep" | "-2"), temp != "20");
        assert_eq!((row.depth_unread, row.temp_unread), unread, "{depth} {temp}");
    }
    for wild in [f64::NAN, f64::INFINITY, 1e308, -1e308] {
        for place in [at(wild, 10.0), at(2.0, wild)] {
            let notebook = doing(&empty(), &[place]);
            assert!(guessed(&notebook).iter().all(|(z, t)| (0.0..=10.0).contains(z) && t.is_finite()));
        }
    }
    assert_eq!(doing(&empty(), &typed(5, "1", "2")), empty(), "there are five points and no more");
}

#[test]
fn the_first_reading_seals_it_for_good() {
    let before = doing(&empty(), &typed(0, "0", "25"));
    assert!(look(&before).log.guess.is_some());
    let readings = [
        vec![first_reading()],
        vec![Action::Paste { text: table("group_c") }],
        vec![Action::TakeExample { text: table("mixed") }],
        // A table that waits for an answer shows its numbers already.
        vec![Action::Paste { text: "Depth\tTemp\n0\t74.3\n3\t74.1\n6\t70\n9\t60\n".to_owned() }],
    ];
    for reading in readings {
        let sealed = doing(&before, &reading);
        assert!(look(&sealed).log.guess.is_none(), "{reading:?}");
        let tried = doing(&sealed, &[typed(0, "0", "20").to_vec(), vec![at(4.0, 9.0)]].concat());
        assert_eq!(tried.sheets[0].guess, before.sheets[0].guess, "{reading:?}");
        // Taken back, or in another notebook file, it stays as it was.
        let undone = doing(&sealed, &[Action::DropTable, Action::Undo]);
        let again = Notebook::from_json(&undone.to_json()).unwrap();
        assert!(look(&again).log.guess.is_none(), "{reading:?}");
        assert_eq!(act(&again, &at(4.0, 9.0)).sheets[0].guess, before.sheets[0].guess);
    }
    // A depth without a temperature, a name, a theme: no reading.
    let named = doing(&before, &[Action::SetGroup { text: "C".to_owned() }, Action::AddMark]);
    assert!(look(&named).log.guess.is_some());
}

#[test]
fn a_notebook_saved_before_there_were_guesses_opens_and_with_readings_takes_none() {
    let old = doing(&empty(), &[Action::Paste { text: table("group_c") }]);
    let mut json: serde_json::Value = serde_json::from_str(&old.to_json()).unwrap();
    json.as_object_mut().unwrap().remove("had_readings");
    let old = Notebook::from_json(&json.to_string()).unwrap();
    assert!(!old.had_readings && look(&old).log.guess.is_none());
    let emptied = doing(&old, &[Action::Undo]);
    assert!(emptied.cast.entries.is_empty() && look(&emptied).log.guess.is_none());
    assert_eq!(guessed(&doing(&emptied, &[at(2.0, 20.0)])), []);
}

#[test]
fn it_stands_in_the_report_and_nowhere_before_and_travels_with_the_work() {
    let guess = [typed(0, "0", "24"), typed(1, "8", "6")].concat();
    let open_guess = doing(&empty(), &guess);
    let shown = |notebook: &Notebook, screen| scene(notebook, &prepare(notebook), screen).guess;
    assert_eq!(shown(&open_guess, Screen::Log), [(0.0, 24.0), (8.0, 6.0)]);
    let notebook = doing(&open_guess, &[Action::Paste { text: table("group_c") }]);
    for screen in [Screen::Log, Screen::Profile, Screen::Questions] {
        assert_eq!(shown(&notebook, screen), []);
    }
    assert_eq!(shown(&notebook, Screen::Report), [(0.0, 24.0), (8.0, 6.0)]);
    let notebook = doing(&notebook, &[Action::Go { screen: Screen::Report, question: None }]);
    let said = |words: &Words| {
        let page = look(&notebook).report.unwrap().page;
        page.notes.iter().map(|note| words.say(note)).collect::<Vec<_>>().join("\n")
    };
    assert!(said(&Words::new("en")).contains("24.0\u{a0}°C at 0.0\u{a0}m, 6.0\u{a0}°C at 8.0\u{a0}m"));
    assert!(said(&Words::new("es")).contains("24,0\u{a0}°C a 0,0\u{a0}m; 6,0\u{a0}°C a 8,0\u{a0}m"));
    let back = open(file_text(&notebook).as_bytes()).remove(0).unwrap();
    assert_eq!(back.hand_in.sheet.guessed(), [(0.0, 24.0), (8.0, 6.0)]);
    // Another lesson, and back to the first: the guess goes along.
    let other = change(Lesson::first(), &LessonAction::Leave { kind: 5 });
    let take = |lesson: &Lesson| Action::TakeLesson { text: lesson_text(lesson, "") };
    for lessons in [vec![take(&other)], vec![take(&other), take(&Lesson::first())]] {
        assert_eq!(guessed(&doing(&notebook, &lessons)), [(0.0, 24.0), (8.0, 6.0)]);
    }
}

#[test]
fn a_guess_from_elsewhere_that_is_too_long_is_refused() {
    let mut long = empty();
    long.sheets[0].guess = vec![Default::default(); 6];
    assert!(Notebook::from_json(&long.to_json()).is_err());
    let mut long = doing(&empty(), &typed(0, "1", "2"));
    long.sheets[0].guess[0].temp_text = "9".repeat(5000);
    assert!(Notebook::from_json(&long.to_json()).is_err());
}
