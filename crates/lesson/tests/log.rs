//! Log and its table view for tables as they come, read as prose; and very long casts.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::support;

use layercast_lesson::action::Action;
use layercast_lesson::{act, look};
use std::fmt::Write;
use support::{Words, empty, pasted};

/// Tables with one thing odd in each.
const TABLES: [(&str, &str); 12] = [
    (
        "nothing odd",
        "Depth (m),Down (°C),Up (°C)\n0,20.1,20.2\n1,19.8,19.9\n2,15.0,15.1\n3,12.0,12.1\n4,11.0,11.2\n",
    ),
    (
        "a lost point and a letter",
        "Depth (m),Down (°C),Up (°C)\n0,20.1,20.2\n1,198,19.9\n2,15.0,15.1\n3,12.0,l2.1\n4,11.0,11.2\n",
    ),
    (
        "a warm reading",
        "Depth (m),Down (°C),Up (°C)\n0,33.5,33.4\n1,31.8,31.9\n2,28.0,28.1\n3,26.0,26.1\n4,25.0,25.2\n",
    ),
    (
        "below freezing",
        "Depth (m),Down (°C),Up (°C)\n0,-5.0,0.2\n1,0.8,0.9\n2,2.0,2.1\n3,3.0,3.1\n4,4.0,4.1\n",
    ),
    (
        "a spike",
        "Depth (m),Down (°C),Up (°C)\n0,20.1,20.2\n1,19.8,19.9\n2,12.9,18.9\n3,18.0,18.1\n4,17.0,17.2\n",
    ),
    (
        "a pair apart",
        "Depth (m),Down (°C),Up (°C)\n0,20.1,20.2\n1,19.8,19.9\n2,19.4,18.0\n3,18.0,18.1\n4,17.0,17.2\n",
    ),
    (
        "a depth out of order",
        "Depth (m),Down (°C),Up (°C)\n0,20.1,20.2\n1,19.8,19.9\n20,15.0,15.1\n3,12.0,12.1\n4,11.0,11.2\n",
    ),
    (
        "no depth",
        "Depth (m),Down (°C),Up (°C)\n0,20.1,20.2\n1,19.8,19.9\nx,15.0,15.1\n3,12.0,12.1\n4,11.0,11.2\n",
    ),
    ("one series", "Depth (m),Temperature (°C)\n0,20.1\n1,19.8\n2,15.0\n3,12.0\n4,11.0\n"),
    ("one reading", "Depth (m),Temperature (°C)\n1,20.1\n"),
    ("°F without a unit", "Depth,Down,Up\n0,74.1,74.3\n1,74.1,73.9\n2,73.6,73.6\n3,71.4,71.1\n4,63.9,63.3\n"),
    ("no table", "Dear all,\nwe went to the pond.\nIt was cold.\n"),
];

#[test]
fn the_words_of_log_for_tables_as_they_come() {
    let mut told = String::new();
    for language in ["en", "es"] {
        let words = Words::new(language);
        for (name, table) in TABLES {
            writeln!(told, "==== {name}\n{}\n", words.log(&look(&pasted(table)))).unwrap();
        }
    }
    insta::assert_snapshot!(told);
}

#[test]
fn the_words_of_an_empty_log() {
    insta::assert_snapshot!(Words::new("en").log(&look(&empty())));
}

#[test]
fn rows_stand_at_their_depths_and_a_second_reading_gets_its_own_row() {
    let table = "Depth (m),Down (°C),Up (°C)\n0,20.1,20.2\n1,19.8,19.9\n1,19.7,\n2,15.0,15.1\n";
    let rows = look(&pasted(table)).log.rows;
    let depths: Vec<f64> = rows.iter().map(|row| row.depth.value).collect();
    assert_eq!(depths, [0.0, 1.0, 1.0, 2.0]);
    assert_eq!(rows[2].up.as_ref().unwrap().num, None);
    assert!(rows.iter().all(|row| row.whole));
    assert_eq!(rows[0].apart.unwrap().value, -0.1);
}

/// Ten thousand readings, each doubted, and ten thousand at one depth: capped, said, and not slow.
#[test]
fn very_long_casts_are_listed_in_part_and_say_so() {
    let long: String = (0..10_000)
        .map(|i| format!("{:.2},{}\n", f64::from(i) / 100.0, if i % 2 == 0 { "x" } else { "15.0" }))
        .collect();
    let one_depth: String =
        (0..10_000).map(|i| format!("1.0,{:.1}\n", 10.0 + f64::from(i % 50) / 10.0)).collect();
    for rows in [long, one_depth] {
        let notebook = pasted(&format!("Depth (m),Temperature (°C)\n{rows}"));
        let start = std::time::Instant::now();
        let seen = look(&notebook);
        let took = start.elapsed();
        assert!(seen.log.rows.len() <= 2000 && seen.log.more_rows.is_some(), "{}", seen.log.rows.len());
        assert!(seen.log.doubts.len() <= 50 && seen.readings.len() <= 2000);
        assert!(took.as_secs() < 20, "{took:?}");
        println!("{took:?}");
    }
}

#[test]
fn undo_says_what_it_undoes() {
    let words = Words::new("en");
    let notebook = pasted(TABLES[1].1);
    assert_eq!(words.say(&look(&notebook).log.undo.unwrap().label), "Undo the paste");
    let settled = act(&notebook, &Action::LeaveOut { entries: vec![2] });
    assert_eq!(words.say(&look(&settled).log.undo.unwrap().label), "Undo the last decision");
    assert!(look(&empty()).log.undo.is_none());
}
