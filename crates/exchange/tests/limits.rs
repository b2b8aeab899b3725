//! Input without measure: refused or read, always in words, never a panic, and the work grows evenly.

#![allow(clippy::unwrap_used)]

use layercast_core::{Method, State, analyse};
use layercast_exchange::document::{CastDoc, Choices, LegDoc, cell_doubts, content_id, to_cast};
use layercast_exchange::read::{MAX_BYTES, Outcome, TableRead, decode, read, read_text};
use proptest::prelude::*;
use std::fmt::Write;
use std::time::{Duration, Instant};

fn read_plain(text: &str) -> TableRead {
    read_text(text, &Choices::default())
}

fn ids(read: &TableRead) -> Vec<&'static str> {
    read.messages.iter().map(|message| message.id).collect()
}

#[test]
fn a_million_columns_are_refused_in_words() {
    let row = "1,".repeat(1_000_000);
    let read = read_plain(&format!("{row}\n{row}\n"));
    assert_eq!(
        (read.outcome, ids(&read)),
        (Outcome::Error, vec!["read-error-too-many-columns", "read-do-few-columns"])
    );
}

#[test]
fn more_than_20_mb_are_refused_in_words() {
    let mut bytes = b"Depth (m),Temp (\xc2\xb0C)\n".to_vec();
    while bytes.len() <= MAX_BYTES {
        bytes.extend(b"0.5,18.4\n");
    }
    let refused = read(&bytes, &Choices::default());
    assert_eq!((refused.outcome, ids(&refused)), (Outcome::Error, vec!["read-error-too-large"]));
    let refused = read_plain(&decode(&bytes));
    assert_eq!(refused.outcome, Outcome::Error);
}

#[test]
fn ten_thousand_readings_at_one_depth_are_too_few_depths() {
    let read = read_plain(&format!("Depth (m),Temp (°C)\n{}", "3.0,18.4\n".repeat(10_000)));
    assert_eq!((read.outcome, read.entries.len()), (Outcome::Noticed, 10_000));
    assert!(ids(&read).contains(&"read-notice-one-depth"));
    let doc = CastDoc::from_read(&read, "", &Choices::default());
    assert_eq!(analyse(&to_cast(&doc), &Method::default()).state, State::TooFew);
}

#[test]
fn long_cells_rows_and_tables_are_shown_in_part_and_kept_in_whole() {
    let long = "x".repeat(100_000);
    let mut text = String::from("Depth (m),Temp (°C),Note\n");
    for mark in 0..500 {
        writeln!(text, "{}.0,18.4,{long}", mark % 10).unwrap();
    }
    let text = &text[..5_000_000];
    let read = read_plain(text);
    assert!(
        read.rows.len() <= 200 && read.rows.iter().flat_map(|row| &row.cells).all(|cell| cell.len() < 400)
    );
}

#[test]
fn a_large_table_stays_out_of_the_document_but_its_readings_do_not() {
    let text = format!("Depth (m),Temp (°C)\n{}", "3.0,18.4\n".repeat(30_000));
    let doc = CastDoc::from_read(&read_plain(&text), &text, &Choices::default());
    assert_eq!((doc.source, doc.entries.len()), (None, 30_000));
}

/// A cast of so many readings, down and up, as a sensor writes it.
fn logged(readings: usize) -> String {
    let mut text = String::from("Depth (m);Temp (°C)\n");
    for at in 0..readings {
        let share = at as f64 / readings as f64;
        let depth = 20.0 * (1.0 - (2.0 * share - 1.0).abs());
        writeln!(text, "{:.3};{:.2}", depth, 22.0 - depth * 0.7).unwrap();
    }
    text
}

/// The shortest of some runs: what else the machine does only makes a run longer.
fn shortest(text: &str, runs: usize) -> Duration {
    let choices = Choices::default();
    let time = |_| {
        let start = Instant::now();
        let read = read_text(text, &choices);
        assert!(!read.entries.is_empty() && read.entries.iter().any(|entry| entry.leg == LegDoc::Up));
        let doc = CastDoc::from_read(&read, "", &choices);
        assert_eq!(content_id(&doc).len(), 16);
        assert!(cell_doubts(&doc).is_empty());
        start.elapsed()
    };
    (0..runs).map(time).min().unwrap()
}

#[test]
fn thirty_times_the_readings_take_about_thirty_times_as_long() {
    let small = shortest(&logged(1_000), 7);
    let large = shortest(&logged(30_000), 3);
    let growth = large.as_secs_f64() / small.as_secs_f64();
    println!("1,000 readings {small:?}, 30,000 readings {large:?}: {growth:.0} times as long");
    // Quadratic work would be 900 times as long; sorting adds a factor of 1.5, a busy machine a few more.
    assert!(growth < 200.0, "{growth}");
}

#[test]
fn tangles_are_untangled_in_time() {
    let deep = "<table><tr><td>".repeat(10_000);
    let hostile = [
        "\"".repeat(200_000),
        "\"a\n".repeat(50_000),
        "<".repeat(200_000),
        format!("<table>{}", "<a x=\"".repeat(40_000)),
        format!("<table>{}", "<td rowspan=50 colspan=50>1".repeat(2_000)),
        deep,
        format!("<table>{}", "&".repeat(200_000)),
        "{".repeat(50_000),
        "[".repeat(50_000),
        ",".repeat(200_000),
        "1 ".repeat(10_000),
        format!("Depth (m),Temp (°C)\n{}", "9,9\n0,0\n".repeat(10_000)),
        format!("Depth (m),Temp (°C)\n{}", "deep,warm\n0,1O.5\n".repeat(10_000)),
        format!("Depth,Temp\n{}", "9".repeat(200_000)),
    ];
    for text in hostile {
        let start = Instant::now();
        let read = read_plain(&text);
        let doc = CastDoc::from_read(&read, &text, &Choices::default());
        to_cast(&doc);
        let seconds = start.elapsed().as_secs_f64();
        // Unoptimised, on a busy machine: some seconds at most; quadratic work would take minutes.
        assert!(seconds < 30.0, "{seconds} s for {}", &text[..20]);
    }
}

#[test]
fn markup_and_formulas_stay_text_to_the_letter() {
    let cells = [
        "<script>alert(1)</script>",
        "=HYPERLINK(1)",
        "@SUM(A1)",
        "+cmd|' /C calc'!A0",
        "&lt;b&gt;",
        "{{7*7}}",
    ];
    let mut text = String::from("Depth (m)\tTemp (°C)\n");
    for (mark, cell) in cells.iter().enumerate() {
        writeln!(text, "{mark}\t{cell}").unwrap();
    }
    let read = read_plain(&text);
    let written: Vec<&str> = read.entries.iter().map(|entry| entry.temp.written.as_str()).collect();
    assert_eq!(written, cells);
    assert!(read.entries.iter().all(|entry| entry.temp.value.is_none()));
}

proptest! {
    #![proptest_config(ProptestConfig { failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn a_clean_table_is_read_to_the_digit(
        temps in proptest::collection::vec(0_u16..320, 4..40),
        comma in any::<bool>(),
        separator in prop_oneof![Just("\t"), Just(";"), Just("|")],
    ) {
        let number = |tenths: u16| {
            let text = format!("{}.{}", tenths / 10, tenths % 10);
            if comma { text.replace('.', ",") } else { text }
        };
        let mut text = format!("Depth (m){separator}Down (°C)\n");
        for (at, temp) in (0_u16..).zip(&temps) {
            writeln!(text, "{}{separator}{}", number(5 * at), number(*temp)).unwrap();
        }
        let read = read_plain(&text);
        prop_assert_eq!(read.entries.len(), temps.len());
        for (at, (entry, temp)) in read.entries.iter().zip(&temps).enumerate() {
            prop_assert_eq!(entry.temp.value, Some(f64::from(*temp) / 10.0));
            prop_assert_eq!(entry.depth.value, Some(at as f64 / 2.0));
            prop_assert_eq!(entry.line, Some(at as u32 + 2));
        }
    }

    #[test]
    fn any_text_gives_an_outcome_and_every_reading_its_line(text in "[ -~\n\t;,.0-9°µ–−]{0,400}") {
        let read = read_plain(&text);
        let lines = text.lines().count() as u32 + 1;
        prop_assert!(read.entries.iter().all(|entry| entry.line.is_some_and(|line| (1..=lines).contains(&line))));
        prop_assert_eq!(read.question.is_some(), read.outcome == Outcome::Question);
        let is_read = matches!(read.outcome, Outcome::Understood | Outcome::Noticed);
        prop_assert!(is_read || read.entries.is_empty());
        prop_assert_eq!(read.outcome == Outcome::Understood, is_read && read.messages.is_empty());
    }
}
