//! The year book: what comes in, in which order, and what two casts can and cannot show.

use crate::class_support::{eight, seat, zipped};
use crate::support::{Words, notebook, pasted};
use layercast_exchange::document::content_id;
use layercast_lesson::hand_in::{file_text, lines};
use layercast_lesson::view::Said;
use layercast_lesson::years::{Added, YearBook, YearsAction, YearsView, act, add, look, shown};

fn on(book: &YearBook, cast: &str, day: &str) -> YearBook {
    act(book, &YearsAction::SetDay { cast: cast.to_owned(), text: day.to_owned() })
}

fn at(book: &YearBook, cast: &str, place: &str) -> YearBook {
    act(book, &YearsAction::SetPlace { cast: cast.to_owned(), text: place.to_owned() })
}

fn out(book: &YearBook, cast: &str) -> YearBook {
    act(book, &YearsAction::TakeOut { cast: cast.to_owned() })
}

/// A book of waters with their days, at one place.
fn book(waters: &[(&str, &str)]) -> YearBook {
    let files: Vec<Vec<u8>> =
        waters.iter().map(|(water, _)| notebook(water).to_json().into_bytes()).collect();
    let (mut book, added) = add(&YearBook::default(), &files);
    assert_eq!(added.new, waters.len());
    for (water, day) in waters {
        let id = content_id(&notebook(water).cast);
        book = at(&on(&book, &id, day), &id, "the dock");
    }
    book
}

fn pair(view: &YearsView) -> Vec<&str> {
    view.pairs[0].said.iter().map(|said: &Said| said.id.as_str()).collect()
}

#[test]
fn whatever_came_back_is_taken_once() {
    let file = notebook("group_c").to_json().into_bytes();
    let sheet = file_text(&seat("group_c", "C", "07")).into_bytes();
    let mail = lines(&seat("group_b", "B", "02")).join("\n").into_bytes();
    let class = eight().0.to_json().into_bytes();
    let nothing = b"depth,temp\n1,20\n".to_vec();
    let (book, added) = add(&YearBook::default(), &[file, sheet, mail, nothing]);
    assert_eq!(added, Added { new: 2, same: 1, not_ours: 1 });
    // The eight groups of a class; C and B are here.
    let (book, added) = add(&book, &[class]);
    assert_eq!((added.new, added.same, added.not_ours), (6, 2, 0));
    // A book into a book, in a zip.
    let again = zipped(&[("years.json", book.to_json().as_bytes())]);
    let (same, added) = add(&book, &[again]);
    assert_eq!((&same, added), (&book, Added { new: 0, same: 8, not_ours: 0 }));
    assert_eq!(YearBook::from_json(&book.to_json()).as_ref(), Some(&book));
    assert!(book.casts.iter().all(|one| one.cast.source.is_none()));
}

#[test]
fn days_put_casts_in_order_and_stay_as_typed() {
    let book = book(&[("group_a", "2025-06-01"), ("group_b", "next week"), ("group_c", "2023-06-04")]);
    let days: Vec<&str> = book.casts.iter().map(|one| one.day.as_str()).collect();
    assert_eq!(days, ["2023-06-04", "2025-06-01", "next week"]);
    let view = look(&book, None);
    assert_eq!(view.rows.iter().map(|row| row.is_day).collect::<Vec<_>>(), [true, true, false]);
    let names: Vec<String> = shown(&book).into_iter().map(|one| one.0).collect();
    assert_eq!(names, ["2023-06", "2025-06", "?"]);
    assert!(view.pairs.is_empty());
}

#[test]
fn neighbours_in_the_season_come_first() {
    let book = book(&[
        ("group_a", "2025-10-12"),
        ("group_b", "2025-06-01"),
        ("group_c", "2023-10-14"),
        ("mixed", "2024-11-20"),
    ]);
    let id = content_id(&notebook("group_a").cast);
    let view = look(&book, Some(&id));
    let days: Vec<&str> = view.pairs.iter().map(|pair| pair.days[0].as_str()).collect();
    // Two days apart, five weeks, and more; the earlier of each pair stands first.
    assert_eq!(days, ["2023-10-14", "2024-11-20", "2025-06-01"]);
    assert_eq!(view.trend.id, "years-trend-few");
}

#[test]
fn a_trend_is_spoken_of_only_where_one_place_has_ten_years() {
    // Six years each at two places, then all at one: the same cast may stand in a book once, so each is a little warmer.
    let file = |i: usize| {
        let rows: String =
            (0..6).map(|z| format!("{z}\t{:.1}\n", 15.0 + 0.1 * i as f64 - z as f64)).collect();
        pasted(&format!("Depth (m)\tGoing down\n{rows}"))
    };
    let waters: Vec<_> = (0..12).map(file).collect();
    let files: Vec<Vec<u8>> = waters.iter().map(|water| water.to_json().into_bytes()).collect();
    let (book, added) = add(&YearBook::default(), &files);
    assert_eq!(added.new, 12);
    let trend = |places: &dyn Fn(usize) -> &'static str| {
        let dated = waters.iter().enumerate().fold(book.clone(), |book, (i, water)| {
            let id = content_id(&water.cast);
            at(&on(&book, &id, &format!("{}-06-01", 2010 + i)), &id, places(i))
        });
        look(&dated, None).trend.id
    };
    assert_eq!(trend(&|i| if i < 6 { "dock" } else { "buoy" }), "years-trend-few");
    assert_eq!(trend(&|_| "dock"), "years-trend-many");
}

#[test]
fn ranges_that_meet_show_no_difference() {
    // One cast under two days is no difference; another place is not set beside it.
    let one = book(&[("group_a", "2024-10-12"), ("group_b", "2025-10-12")]);
    let id = content_id(&notebook("group_a").cast);
    let view = look(&one, Some(&id));
    let said = pair(&view);
    assert!(said.contains(&"years-pair-same") && said.contains(&"years-pair-alike"), "{said:?}");
    let away = at(&one, &content_id(&notebook("group_b").cast), "the inlet");
    assert!(look(&away, Some(&id)).pairs.is_empty());
}

#[test]
fn ranges_apart_show_one_and_a_warmer_column_says_so() {
    // "deep" has its thermocline far below that of "group_a".
    let book = book(&[("group_a", "2024-07-12"), ("deep", "2025-07-12")]);
    let view = look(&book, Some(&content_id(&notebook("deep").cast)));
    let said = pair(&view);
    assert!(said.contains(&"years-pair-deeper"), "{said:?}");
    let view = look(&summer_and_autumn(), Some(&content_id(&notebook("mixed").cast)));
    assert!(pair(&view).contains(&"years-pair-one"));
}

fn summer_and_autumn() -> YearBook {
    book(&[("group_a", "2024-07-12"), ("mixed", "2025-10-12")])
}

#[test]
fn everything_is_said_in_both_languages() {
    for language in ["en", "es"] {
        let words = Words::new(language);
        let book = summer_and_autumn();
        let view = look(&book, Some(&content_id(&notebook("mixed").cast)));
        for said in
            view.rows.iter().flat_map(|row| row.heat.iter().chain([&row.said])).chain(&view.pairs[0].said)
        {
            assert!(words.say(said).len() > 3);
        }
        insta::assert_snapshot!(
            format!("years_{language}"),
            view.pairs[0].said.iter().map(|said| words.say(said)).collect::<Vec<_>>().join("\n")
        );
    }
}

#[test]
fn what_is_no_book_is_refused() {
    for text in ["", "{}", "[]", r#"{"schema":"layercast-years","version":2,"casts":[]}"#] {
        assert_eq!(YearBook::from_json(text), None, "{text}");
    }
    let unknown = out(&summer_and_autumn(), "nobody");
    assert_eq!(unknown, summer_and_autumn());
    let id = content_id(&notebook("mixed").cast);
    assert_eq!(out(&summer_and_autumn(), &id).casts.len(), 1);
}
