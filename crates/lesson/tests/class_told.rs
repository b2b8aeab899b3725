//! What a teacher marks by: what is right on a sheet's own water, each try, the idea it shows.

use crate::class_support::{acted, answers, key, seat, taken, upside_down};
use crate::support::Words;
use layercast_lesson::class::{Class, ClassAction, look, told};

#[test]
fn a_sheet_is_marked_by_what_is_right_and_what_was_tried() {
    let second = seat("group_a", "A", "02");
    let wrong = upside_down(&second);
    let sheets = [answers(&second, &[Some(wrong.as_str()), Some("33"), None]), seat("group_c", "C", "05")];
    let class = taken(&Class::new("", None), &sheets).0;
    let words = Words::new("en");
    let of = |code: &str| told(&class, &key(&class, code)).remove(0);
    let second = of("02");
    let [part] = second.parts.as_slice() else { panic!("{second:?}") };
    let tries: Vec<String> = part.tries.iter().map(|one| words.say(&one.taken)).collect();
    assert_eq!(tries, ["not yet", "not yet", "right"]);
    let ideas: Vec<Option<String>> =
        part.tries.iter().map(|one| one.idea.as_ref().map(|idea| words.say(idea))).collect();
    assert_eq!(ideas, [Some("depth counted up from the bottom".to_owned()), None, None]);
    assert_eq!(words.say(&part.tries[1].given[0]), "33");
    // What is right is what the sheet's own water has there: it was given last.
    let right = words.say(part.right.as_ref().unwrap());
    let given: f64 = words.say(&part.tries[2].given[0]).parse().unwrap();
    let value: f64 = right.split('\u{a0}').next().unwrap().parse().unwrap();
    assert!((value - given).abs() <= 0.5, "{right} {given}");
    assert!(part.fits.is_some());
    assert!(of("05").parts[0].tries.is_empty());
    // Of each seat, with every question that is asked of it.
    for sheet in look(&class, None).sheets {
        let all = told(&class, &sheet.key);
        assert_eq!(all.len(), sheet.asked);
        for one in all.iter().flat_map(|one| &one.parts) {
            assert!(one.right.as_ref().is_none_or(|right| !words.say(right).is_empty()));
        }
    }
    assert_eq!(told(&class, "nobody"), []);
    let out = acted(&class, &[ClassAction::TakeIn { member: key(&class, "02"), on: false }]);
    assert_eq!(told(&out, &key(&class, "02")), []);
}
