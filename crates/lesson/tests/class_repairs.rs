//! What is seen about a hand-in, set right by a switch, and undone.

use crate::class_support::{
    acted, answers, eight, eight_seats, key, one, outcomes, retyped, seat, taken, with_one,
};
use crate::support::{Words, doing};
use layercast_lesson::action::Action;
use layercast_lesson::class::export::slips;
use layercast_lesson::class::import::Outcome;
use layercast_lesson::class::{Class, ClassAction, LookAt, act, look};
use layercast_lesson::document::Notebook;

#[test]
fn a_lost_seat_code_is_seen_and_given() {
    let (class, _) = with_one();
    let lost =
        doing(&answers(&seat("group_a", "A", "01"), &[None]), &[Action::SetSeat { text: String::new() }]);
    let (next, rows) = taken(&class, std::slice::from_ref(&lost));
    one(&rows, Outcome::NeedsALook, "class-look-no-seat");
    let member = rows[0].member.clone().unwrap();
    let given = act(&next, &ClassAction::SetSeat { member: member.clone(), text: "11".into() });
    // Group A stands before group C.
    let row = &look(&given, None).sheets[0];
    assert_eq!((row.seat.as_str(), row.looks.len(), row.repairs.len()), ("11", 0, 1));
    let back = act(&given, &ClassAction::SetSeat { member, text: String::new() });
    assert_eq!(look(&back, None).sheets[0].looks.len(), 1);
    assert_eq!(act(&given, &ClassAction::Undo).now, next.now);
}

#[test]
fn feet_and_fahrenheit_are_suspected_and_set_right() {
    let mut all = eight_seats();
    all[4] = retyped(&all[4], |depth, temp| {
        *depth = (*depth / 0.3048 * 100.0).round() / 100.0;
        *temp = (*temp * 18.0 + 320.0).round() / 10.0;
    });
    let (class, rows) = taken(&Class::new("", None), &all);
    let ids: Vec<&str> = rows[4].why.iter().map(|why| why.id.as_str()).collect();
    assert_eq!(ids, ["class-look-fahrenheit", "class-look-feet"]);
    let repaired = acted(
        &class,
        &[
            ClassAction::ReadFeet { member: key(&class, "05"), on: true },
            ClassAction::ReadFahrenheit { member: key(&class, "05"), on: true },
        ],
    );
    let cast = |class: &Class| look(class, None).casts.into_iter().find(|cast| cast.name == "E").unwrap();
    // As the same readings in metres and °C, to the hundredth that retyping kept.
    let plain = cast(&eight().0);
    assert!((cast(&repaired).value.unwrap().value - plain.value.unwrap().value).abs() < 0.02);
    assert!(cast(&repaired).repaired);
    assert_ne!(cast(&class).value, plain.value);
    assert_eq!((cast(&class).said.id.as_str(), cast(&class).fahrenheit), ("class-cast-fahrenheit", true));
    assert!(!cast(&repaired).fahrenheit);
    // No value then is no finding, and the list does not say "none" of it.
    assert!(cast(&class).value.is_none() && cast(&class).too_few && !cast(&repaired).too_few);
    // Of water that could not be looked through nothing is said: neither found nor none.
    let sentence = |class: &Class| look(class, None).sentence.args.get("none").cloned().unwrap();
    assert_eq!(sentence(&class), sentence(&repaired));
    assert!(look(&repaired, None).sheets[4].looks.is_empty());
    let half = act(&repaired, &ClassAction::Undo);
    assert_eq!(look(&half, None).sheets[4].looks.len(), 1);
    // The hand-in itself is as it came.
    assert_eq!(repaired.papers, class.papers);
    // Questions are asked of the water as the seat held it, which had none: the sheet and its slip say so.
    let words = ["en", "es"].map(Words::new);
    let said = |said: &layercast_lesson::view::Said| words.each_ref().map(|words| words.say(said));
    let why = [
        "No question could be asked of the readings as they were handed in.",
        "Con las lecturas tal como se entregaron no se pudo hacer ninguna pregunta.",
    ]
    .map(str::to_owned);
    let view = look(&repaired, None);
    assert_eq!((view.sheets[4].asked, view.sheets[4].unasked.as_ref().map(said)), (0, Some(why.clone())));
    assert!(view.sheets.iter().enumerate().all(|(at, sheet)| at == 4 || sheet.unasked.is_none()));
    let slips = slips(&repaired);
    assert_eq!(slips[4].notes.iter().map(said).collect::<Vec<_>>(), [why]);
    assert!(slips[3].notes.is_empty());
}

#[test]
fn the_zero_of_the_marks_moves_the_core() {
    let (class, _) = eight();
    let member = key(&class, "03");
    let moved = act(&class, &ClassAction::SetAboveWater { member, text: "0.5".into() });
    let value = |class: &Class| look(class, None).casts[2].value.unwrap().value;
    assert!((value(&class) - value(&moved) - 0.5).abs() < 1e-9);
    assert_eq!(look(&moved, None).sheets[2].repairs.len(), 1);
}

#[test]
fn one_cast_of_five_students_is_one_and_a_slip_of_the_pen_is_shown() {
    let mut all: Vec<Notebook> = (1..=5).map(|n| seat("group_c", "C", &format!("0{n}"))).collect();
    all[4].cast.entries[3].temp.value = Some(23.7);
    all[4].cast.entries[3].temp.written = "23.7".into();
    let (class, rows) = taken(&Class::new("", None), &all);
    assert_eq!(rows[4].why[0].id, "class-look-near");
    let view = look(&class, None);
    assert_eq!((view.casts.len(), view.sheets.len()), (2, 5));
    let near = view.sheets[4].looks[0].clone();
    assert_eq!((near.at, near.differ.len()), (LookAt::NearCast, 1));
    assert_eq!((near.differ[0].here.as_str(), near.differ[0].depth.value), ("23.7", 0.5));
    let that = act(&class, &near.ways[1].action);
    assert_eq!((look(&that, None).casts.len(), look(&that, None).sheets[4].looks.len()), (1, 0));
    let both = act(&class, &near.ways[2].action);
    assert_eq!((look(&both, None).casts.len(), look(&both, None).sheets[4].looks.len()), (2, 0));
    let this = act(&class, &near.ways[0].action);
    assert_eq!(look(&this, None).casts.len(), 1);
    assert_eq!(act(&this, &ClassAction::Undo).now, class.now);
}

#[test]
fn a_wrong_group_code_is_seen_and_set_right() {
    let mut all: Vec<Notebook> = (1..=3).map(|n| seat("group_c", "C", &format!("0{n}"))).collect();
    all.push(seat("group_a", "C", "04"));
    let (class, rows) = taken(&Class::new("", None), &all);
    assert_eq!(outcomes(&rows)[..3], [Outcome::New; 3]);
    assert_eq!(rows[3].why[0].id, "class-look-group-twice");
    let names = |class: &Class| look(class, None).casts.into_iter().map(|cast| cast.name).collect::<Vec<_>>();
    assert_eq!(names(&class), ["C", "C 2"]);
    let right = act(&class, &ClassAction::SetGroup { member: key(&class, "04"), text: "A".into() });
    assert_eq!(names(&right), ["A", "C"]);
    assert!(look(&right, None).sheets[3].looks.is_empty());
    assert_eq!(act(&right, &ClassAction::Undo).now, class.now);
}
