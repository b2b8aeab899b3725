//! The wall: the eight groups of the drawn class, what their ranges share, why two differ.

use crate::class_support::{acted, dropped, eight, eight_seats, key, retyped, seat, taken};
use crate::support::Words;
use layercast_lesson::class::why::{Against, why};
use layercast_lesson::class::{Class, ClassAction, act, look};
use layercast_lesson::document::Notebook;
use layercast_lesson::hand_in::file_text;

fn row(class: &Class, name: &str) -> (String, String) {
    let words = Words::new("en");
    let cast = look(class, None).casts.into_iter().find(|cast| cast.name == name).unwrap();
    (cast.value.map(|value| words.num(value)).unwrap_or_default(), words.say(&cast.said))
}

#[test]
fn the_eight_groups_are_as_they_were_drawn() {
    // Letter, thermocline, range: the drawing of this class (its waters were made for it).
    let drawn = [
        ("A", "3.75", "3.5 to 4.0 m"),
        ("B", "4.25", "3.5 to 4.5 m"),
        ("C", "3.75", "3.5 to 4.0 m"),
        ("D", "", "mixed to the bottom"),
        ("E", "4.25", "3.5 to 5.0 m"),
        ("F", "4.25", "3.5 to 4.5 m"),
        ("G", "3.75", "3.0 to 5.0 m"),
        ("H", "4.75", "4.0 to 5.0 m"),
    ];
    let (class, _) = eight();
    for (name, value, said) in drawn {
        assert_eq!(row(&class, name), (value.to_owned(), said.replace(" m", "\u{a0}m")), "{name}");
    }
    let view = look(&class, None);
    let words = Words::new("en");
    assert_eq!(
        words.say(&view.sentence),
        "All 7 ranges share 4.0\u{a0}m. The groups do not contradict each other. One group has none."
    );
    assert_eq!(view.shared_m, Some((4.0, 4.0)));
    let talk: Vec<String> = view.talk.iter().map(|said| words.say(said)).collect();
    assert_eq!(talk.len(), 2, "{talk:?}");
    assert!(talk[0].starts_with("<b>G</b>") && talk[1].starts_with("<b>H</b>"), "{talk:?}");
    let dock = act(&class, &ClassAction::OtherStation { member: key(&class, "04"), on: true });
    let view = look(&dock, None);
    assert_eq!(
        words.say(&view.sentence),
        "All 7 ranges share 4.0\u{a0}m. The groups do not contradict each other."
    );
    assert_eq!(view.talk.len(), 3);
    assert_eq!(words.say(&look(&class, None).title), "8 casts, 8 sheets");
}

/// The sentence of a class of some groups.
fn sentence(groups: &[Notebook]) -> (String, Option<(f64, f64)>) {
    let view = look(&taken(&Class::new("", None), groups).0, None);
    (Words::new("en").say(&view.sentence), view.shared_m)
}

#[test]
fn the_sentence_says_what_is_shared() {
    let group =
        |letter: &str, n: usize| seat(&format!("group_{letter}"), &letter.to_uppercase(), &format!("{n}"));
    let deeper = |notebook: &Notebook, by_m: f64| retyped(notebook, |depth, _| *depth += by_m);
    let (a, b) = (group("a", 1), group("b", 2));
    assert_eq!(sentence(&[]).0, "Drop hand-ins anywhere on this screen, or a class that you saved.");
    assert_eq!(sentence(&[group("d", 3)]).0, "No group found a thermocline.");
    assert_eq!(sentence(&[a.clone(), group("d", 3)]).0, "Only A found a thermocline.");
    let (said, shared) = sentence(&[a.clone(), b.clone()]);
    assert_eq!(said, "All 2 ranges share 3.5 to 4.0\u{a0}m. The groups do not contradict each other.");
    assert_eq!(shared, Some((3.5, 4.0)));
    // 3.5 to 4.0 m and 7.5 to 8.0 m.
    let (said, shared) = sentence(&[a.clone(), deeper(&group("c", 3), 4.0)]);
    assert!(said.starts_with("No two of the 2 ranges share a depth"), "{said}");
    assert_eq!(shared, None);
    let (said, shared) = sentence(&[a.clone(), b.clone(), deeper(&group("c", 3), 4.0)]);
    assert_eq!((said.as_str(), shared), ("2 of 3 ranges overlap: 3.5 to 4.0\u{a0}m.", Some((3.5, 4.0))));
    // Ranges that only touch overlap, and the sentence names that one depth: 3.5 to 4.0 and 4.0 to 4.5 m.
    let (said, shared) = sentence(&[a.clone(), deeper(&group("c", 3), 0.5)]);
    assert!(said.starts_with("All 2 ranges share 4.0\u{a0}m."), "{said}");
    assert_eq!(shared, Some((4.0, 4.0)));
    let (said, _) = sentence(&[a, deeper(&group("c", 3), 0.5), deeper(&group("h", 4), 4.0)]);
    assert_eq!(said, "2 of 3 ranges share 4.0\u{a0}m.");
}

#[test]
fn names_can_be_hidden_and_shuffled() {
    let (class, _) = eight();
    let names = |class: &Class| {
        look(class, None).casts.into_iter().map(|cast| cast.name).collect::<Vec<_>>().join("")
    };
    assert_eq!(names(&class), "ABCDEFGH");
    let shuffled = act(&class, &ClassAction::Shuffle { seed: Some(4) });
    let mixed = names(&shuffled);
    let mut sorted: Vec<char> = mixed.chars().collect();
    sorted.sort_unstable();
    assert!(mixed != "ABCDEFGH" && sorted.into_iter().collect::<String>() == "ABCDEFGH");
    assert_eq!(names(&act(&class, &ClassAction::Shuffle { seed: Some(4) })), mixed);
    let hidden = act(&shuffled, &ClassAction::HideNames { on: true });
    assert_eq!(names(&hidden), "12345678");
    let words = Words::new("en");
    assert!(look(&hidden, None).talk.iter().all(|said| !words.say(said).contains("<b>G</b>")));
    assert_eq!(names(&acted(&hidden, &[ClassAction::Undo, ClassAction::Undo])), "ABCDEFGH");
}

#[test]
fn middle_and_range_of_the_class_at_each_depth() {
    // Counted by hand from the rows of A, B and C at 4 m: means of the two legs.
    let rows: Vec<(f64, f64)> = ["group_a", "group_b", "group_c"]
        .iter()
        .map(|water| {
            let text = crate::support::table(water);
            let line = text.lines().find(|line| line.starts_with("4\t")).unwrap().to_owned();
            let cells: Vec<f64> = line.split('\t').map(|cell| cell.parse().unwrap()).collect();
            (cells[0], (cells[1] + cells[2]) / 2.0)
        })
        .collect();
    let mut temps: Vec<f64> = rows.iter().map(|row| row.1).collect();
    temps.sort_by(f64::total_cmp);
    let three = &eight_seats()[..3];
    let (class, _) = taken(&Class::new("", None), three);
    let at_4 = |against: Option<&str>| {
        look(&class, against).middle.into_iter().find(|row| (row.depth.value - 4.0).abs() < 1e-9).unwrap()
    };
    let near = |shown: f64, exact: f64| (shown - exact).abs() <= 0.05 + 1e-9;
    let row = at_4(None);
    assert!(
        near(row.low.value, temps[0]) && near(row.middle.value, temps[1]) && near(row.high.value, temps[2])
    );
    assert_eq!(row.casts, 3);
    let a = look(&class, None).casts[0].cast_id.clone();
    let rest = at_4(Some(&a));
    assert_eq!(rest.casts, 2);
    assert!(near(rest.middle.value, (rows[1].1 + rows[2].1) / 2.0));
}

#[test]
fn why_two_groups_differ_is_said_with_what_cannot_be_told() {
    let c = seat("group_c", "C", "03");
    let warmer = retyped(&c, |_, temp| *temp += 0.6);
    let mut d = warmer.clone();
    d.cast.group = "D".into();
    d.sheets[0].seat = "04".into();
    let mut same = c.clone();
    same.cast.group = "E".into();
    same.sheets[0].seat = "05".into();
    same = retyped(&same, |depth, temp| *temp += if (*depth * 2.0) as i64 % 2 == 0 { 0.1 } else { -0.1 });
    let (class, _) = taken(&Class::new("", None), &[c, d, same]);
    let ids: Vec<String> = look(&class, None).casts.into_iter().map(|cast| cast.cast_id).collect();
    let words = Words::new("en");
    let view = why(&class, Against { one: &ids[1], other: Some(&ids[0]), minutes: "", later: true }).unwrap();
    assert_eq!(words.say(&view.title), "D and C");
    let said: Vec<String> = view.said.iter().map(|said| words.say(said)).collect();
    // Their layers stand alike: what is said first is that there is nothing to contradict.
    assert!(said[0].starts_with("Their thermocline ranges share a depth"), "{said:?}");
    assert_eq!(said[1], "They are 0.6\u{a0}°C apart, taken over all depths.");
    assert!(
        said[2]
            .starts_with("Fits best: If the probe of group D read 0.60\u{a0}°C more than that of group C,"),
        "{said:?}"
    );
    assert_eq!(view.causes.len(), 5);
    assert!(view.causes[0].possible);
    let back = why(&class, Against { one: &ids[0], other: Some(&ids[1]), minutes: "", later: true }).unwrap();
    assert!(
        words
            .say(&back.said[2])
            .starts_with("Fits best: If the probe of group C read 0.60\u{a0}°C less than that of group D,")
    );
    let chance =
        why(&class, Against { one: &ids[2], other: Some(&ids[0]), minutes: "", later: true }).unwrap();
    assert!(words.say(&chance.said[2]).starts_with("Nothing but chance"));
    let rest = why(&class, Against { one: &ids[1], other: None, minutes: "", later: true }).unwrap();
    assert_eq!(words.say(&rest.title), "D and the rest");
    let of_rest = words.say(&rest.said[2]);
    assert!(of_rest.starts_with("Fits best: If the probe of group D read"), "{of_rest}");
    assert!(of_rest.contains("more than that of the rest,"), "{of_rest}");
    let key = class.now.members[1].key.clone();
    let moved = act(&class, &ClassAction::OtherStation { member: key, on: true });
    let away = why(&moved, Against { one: &ids[0], other: Some(&ids[1]), minutes: "", later: true }).unwrap();
    assert!(words.say(&away.said[0]).starts_with("D measured at another place."), "{:?}", away.said);
    // No size is given that reads as nothing.
    for view in [&view, &back, &chance, &rest, &away] {
        for cause in &view.causes {
            assert!(!words.say(&cause.said).contains(" 0.0\u{a0}m"), "{:?}", words.say(&cause.said));
        }
    }
    assert_eq!(why(&class, Against { one: "nobody", other: None, minutes: "", later: true }), None);
    for language in ["en", "es"] {
        let words = Words::new(language);
        view.causes.iter().for_each(|cause| {
            assert!(!words.say(&cause.name).is_empty() && !words.say(&cause.said).is_empty())
        });
    }
}

#[test]
fn forty_groups_and_an_empty_cast_are_shown() {
    let mut all = Vec::new();
    for n in 0..40_u32 {
        let base = &eight_seats()[n as usize % 8];
        let mut one = retyped(base, |_, temp| *temp += 0.3 * f64::from(n / 8));
        one.cast.group = (n + 1).to_string();
        one.sheets[0].seat = format!("{n}");
        all.push(one);
    }
    let mut empty = all[0].clone();
    empty.cast.entries.clear();
    empty.sheets[0].seat = "99".into();
    empty.cast.group = "41".into();
    let files: Vec<Vec<u8>> = all.iter().chain([&empty]).map(|n| file_text(n).into_bytes()).collect();
    let (class, _) = dropped(&Class::new("", None), &files);
    let view = look(&class, None);
    assert_eq!(view.casts.len(), 41);
    let names: Vec<usize> = view.casts.iter().map(|cast| cast.name.parse().unwrap()).collect();
    assert_eq!(names, (1..=41).collect::<Vec<_>>());
}

/// The cause's name, what D's probe reads at a depth, and how the sentence begins and goes on: of D, and of C.
type Planted<'w> = (&'w str, &'w dyn Fn(f64) -> f64, [&'w str; 2], [&'w str; 2]);

/// Each cause planted in the cast of D: the sentence of that cause says in which direction, seen from either group, and
/// never whose cast is the wrong one.
#[test]
fn a_planted_cause_is_told_in_its_direction() {
    let water = |depth: f64| 15.0 - 7.0 * libm::tanh((depth - 4.0) / 1.5);
    let planted: [Planted; 5] = [
        (
            "class-cause-offset",
            &|depth| water(depth) + 0.6,
            ["If the probe of group D read ", "\u{a0}°C more than that of group C, that would explain "],
            ["If the probe of group C read ", "\u{a0}°C less than that of group D, that would explain "],
        ),
        (
            "class-cause-zero",
            &|depth| water(depth + 0.3),
            ["If, at the same mark, the probe of group D hung ", "\u{a0}m deeper than that of group C, that"],
            [
                "If, at the same mark, the probe of group C hung ",
                "\u{a0}m less deep than that of group D, that",
            ],
        ),
        (
            "class-cause-stretch",
            &|depth| water(depth * 1.08),
            [
                "If, at the same marks, the cable of group D reached ",
                "\u{a0}% deeper than that of group C, that",
            ],
            [
                "If, at the same marks, the cable of group C reached ",
                "\u{a0}% less deep than that of group D, that",
            ],
        ),
        (
            "class-cause-top",
            &|depth| water(depth) + 1.5 * libm::exp(-depth / 0.8),
            ["If group D had the top water ", "\u{a0}°C warmer than group C, that would explain "],
            ["If group C had the top water ", "\u{a0}°C colder than group D, that would explain "],
        ),
        (
            "class-cause-moved",
            &|depth| water(depth - 0.6 * libm::sin(std::f64::consts::PI * depth / 8.5)),
            ["If the layer lay ", "\u{a0}m deeper for group D than for group C, that would explain "],
            ["If the layer lay ", "\u{a0}m higher up for group C than for group D, that would explain "],
        ),
    ];
    let words = Words::new("en");
    for (id, read_c, from_d, from_c) in planted {
        let c = retyped(&seat("group_c", "C", "03"), |depth, temp| *temp = water(*depth));
        let d = retyped(&seat("group_c", "D", "04"), |depth, temp| *temp = read_c(*depth));
        let (class, _) = taken(&Class::new("", None), &[c, d]);
        let ids: Vec<String> = look(&class, None).casts.into_iter().map(|cast| cast.cast_id).collect();
        let told = |one: usize, other: Option<usize>| {
            let other = other.map(|other| ids[other].as_str());
            let view = why(&class, Against { one: &ids[one], other, minutes: "", later: true }).unwrap();
            words.say(&view.causes.iter().find(|cause| cause.name.id == id).unwrap().said)
        };
        for (said, [begin, then]) in [(told(1, Some(0)), from_d), (told(0, Some(1)), from_c)] {
            assert!(said.starts_with(begin) && said.contains(then), "{id}: {said}");
        }
        // One group is all the rest there is: the same direction, and no name.
        let rest = told(1, None);
        assert!(rest.starts_with(from_d[0]) && rest.contains("the rest, that would explain"), "{id}: {rest}");
    }
}

/// Job row C, worked there by hand: 0.3 °C more through 8 m in one hour is 2,787 W/m², which no sun gives.
#[test]
fn minutes_between_two_casts_tell_whether_the_sun_could_have_done_it() {
    let water = |depth: f64| 15.0 - 7.0 * libm::tanh((depth - 4.0) / 1.5);
    let seats = |more_c: fn(f64) -> f64| {
        let c = retyped(&seat("group_c", "C", "03"), |depth, temp| *temp = water(*depth));
        let d = retyped(&seat("group_c", "D", "04"), |depth, temp| *temp = water(*depth) + more_c(*depth));
        taken(&Class::new("", None), &[c, d]).0
    };
    let words = Words::new("en");
    let told = |class: &Class, minutes: &str, later: bool| {
        let ids: Vec<String> = look(class, None).casts.into_iter().map(|cast| cast.cast_id).collect();
        let view = why(class, Against { one: &ids[1], other: Some(&ids[0]), minutes, later }).unwrap();
        let sun = view.said.iter().find(|said| said.id.contains("sun") || said.id.contains("clock"));
        (sun.map(|said| words.say(said)), words.say(&view.said[0]))
    };
    let everywhere = seats(|_| 0.3);
    let deep_m = 9.5;
    let (Some(said), _) = told(&everywhere, "60", true) else { panic!("nothing of the sun") };
    let power: f64 = said.chars().filter(char::is_ascii_digit).collect::<String>().parse().unwrap();
    assert!((power / (2787.0 * deep_m / 8.0) - 1.0).abs() < 0.05, "{said}");
    assert!(said.ends_with("the sun cannot have done it."), "{said}");
    // A whole day is time enough, and without a time nothing is said of what is no warm top.
    assert_eq!(told(&everywhere, "1440", true).0, None);
    assert_eq!(told(&everywhere, "", true).0, None);

    let top = seats(|depth| 1.5 * libm::exp(-depth / 0.8));
    assert!(told(&top, "", true).0.is_some_and(|said| said.contains("write the minutes above")));
    assert!(told(&top, "240", true).0.is_some_and(|said| said.starts_with("The sun could have done it")));
    assert!(told(&top, "10", true).0.is_some_and(|said| said.starts_with("The sun cannot have done it")));
    // Read the other way round in time, the later cast is the colder one.
    assert!(
        told(&top, "240", false).0.is_some_and(|said| said.starts_with("The later cast holds less heat"))
    );
    for odd in ["soon", "-5", "0", "4-5", "4 m", "99999"] {
        let (_, first) = told(&top, odd, true);
        assert!(first.starts_with(&format!("“{odd}” is not a number of minutes")), "{first}");
    }
}
