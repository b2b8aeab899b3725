//! Three readings placed on the picture by hand: by touch and by key, checked, and what waits for them where the lesson
//! wants it so. The water is invented.

use crate::support;

use layercast_lesson::action::{Action, HandKey, Spot};
use layercast_lesson::document::{Lesson, Notebook, Screen};
use layercast_lesson::maker::{LessonAction, OpenPart, act as change, file_text};
use layercast_lesson::{act, look, prepare, scene};
use support::{doing, empty, pasted};

/// 10 depths, 0 to 9 m: a sixth, a half and five sixths of the marks are 1, 4 and 7 m.
fn read() -> Notebook {
    let rows: String = [22.0, 21.8, 21.5, 20.0, 17.0, 14.0, 12.0, 10.5, 9.5, 9.0]
        .iter()
        .enumerate()
        .map(|(z, t)| format!("{z}\t{t}\n"))
        .collect();
    pasted(&format!("Depth (m)\tGoing down\n{rows}"))
}

fn at(point: usize, depth_m: f64, temp_c: f64) -> Action {
    let (zero_x_px, px_per_c, surface_y_px, px_per_m) = (100.0, 20.0, 50.0, 40.0);
    let (x_px, y_px) = (zero_x_px + temp_c * px_per_c, surface_y_px + depth_m * px_per_m);
    Action::PlaceByHand { point, spot: Spot { x_px, y_px, zero_x_px, px_per_c, surface_y_px, px_per_m } }
}

fn said(notebook: &Notebook) -> Vec<Option<String>> {
    look(notebook).log.by_hand.unwrap().rows.into_iter().map(|row| row.said.map(|said| said.id)).collect()
}

fn ids<const N: usize>(ids: [Option<&str>; N]) -> Vec<Option<String>> {
    ids.into_iter().map(|id| id.map(str::to_owned)).collect()
}

#[test]
fn points_are_placed_checked_and_the_rest_draws() {
    let placed = doing(&read(), &[at(0, 1.1, 21.6), at(1, 5.0, 17.0)]);
    let view = look(&placed).log.by_hand.unwrap();
    assert!(!view.can_check && !view.waits && view.rows[1].is_placed && !view.rows[2].is_placed);
    assert_eq!(
        doing(&placed, &[Action::CheckByHand, Action::DrawRest]),
        placed,
        "not before all three are placed"
    );
    // Depth read as a height: 9 − 7 = 2 m.
    let checked = doing(&placed, &[at(2, 2.0, 10.5), Action::CheckByHand]);
    assert_eq!(
        said(&checked),
        ids([
            Some("log-by-hand-right"),
            Some("log-by-hand-other-depth"),
            Some("log-by-hand-depth-from-below")
        ])
    );
    // What was said of a point goes when it moves.
    let moved = doing(&checked, &[at(1, 4.0, 17.0)]);
    assert_eq!(said(&moved), ids([Some("log-by-hand-right"), None, Some("log-by-hand-depth-from-below")]));
    let right = doing(&moved, &[at(2, 7.0, 10.5), Action::CheckByHand]);
    assert!(look(&right).log.by_hand.unwrap().all_right);
    assert!(look(&doing(&right, &[Action::DrawRest])).log.by_hand.unwrap().drawn);
}

#[test]
fn keys_move_a_point_by_half_a_metre_and_half_a_degree() {
    use HandKey::{Colder, Down, Up, Warmer};
    let key = |hand| Action::KeyByHand { point: 0, hand };
    // It begins in the middle of the water: 4.5 m, (22 + 9)/2 °C.
    let point = |keys: &[Action]| doing(&read(), keys).sheets[0].by_hand.points[0];
    assert_eq!(point(&[key(Down)]), Some((5.0, 15.5)));
    assert_eq!(point(&[key(Up), key(Warmer), key(Warmer), key(Colder)]), Some((4.0, 16.0)));
    assert_eq!(point(&vec![key(Up); 40]), Some((0.0, 15.5)), "no higher than the surface");
    assert_eq!(point(&[at(0, f64::NAN, 3.0), at(0, 3.0, f64::INFINITY)]), None);
    assert_eq!(point(&[at(7, 3.0, 3.0)]), None);
}

#[test]
fn where_the_lesson_wants_it_the_curve_waits() {
    let waiting = change(Lesson::first(), &LessonAction::SetOpen { part: OpenPart::Curve, open: false });
    let notebook = act(&read(), &Action::TakeLesson { text: file_text(&waiting, "") });
    let shown = look(&notebook);
    assert!(shown.log.by_hand.as_ref().unwrap().waits);
    assert_eq!(shown.alt.id, "log-by-hand-alt");
    assert_eq!(shown.profile.not_yet.as_ref().map(|s| s.id.as_str()), Some("log-by-hand-first"));
    assert!(shown.questions.not_yet.is_some() && shown.questions.current.is_none());
    for screen in [Screen::Log, Screen::Profile, Screen::Questions] {
        let scene = scene(&notebook, &prepare(&notebook), screen);
        assert!(scene.by_hand && scene.marks.is_none() && scene.guess.is_empty());
    }
    let all = [at(0, 9.0, 9.0), at(1, 9.0, 9.0), at(2, 9.0, 9.0), Action::CheckByHand, Action::DrawRest];
    let drawn = doing(&notebook, &all);
    let shown = look(&drawn);
    assert!(!shown.log.by_hand.unwrap().waits && shown.profile.not_yet.is_none());
    assert!(!scene(&drawn, &prepare(&drawn), Screen::Log).by_hand);
    // Too few depths to place three: nothing waits.
    let few = act(
        &pasted("Depth (m)\tGoing down\n0\t20\n1\t19\n2\t18\n"),
        &Action::TakeLesson { text: file_text(&waiting, "") },
    );
    assert!(look(&few).log.by_hand.is_none() && look(&few).profile.not_yet.is_none());
    assert!(look(&empty()).log.by_hand.is_none());
}
