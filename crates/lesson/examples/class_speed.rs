//! How long a class of 40 takes, beside one analysis in the same run: `cargo run --release --example class_speed -p
//! layercast-lesson`. Prints ratios of two things measured together, so that the machine matters little.

use layercast_core::{Method, analyse};
use layercast_exchange::document::corrected;
use layercast_lesson::action::Action;
use layercast_lesson::class::import::{Dropped, import};
use layercast_lesson::class::why::{Against, why};
use layercast_lesson::class::{Class, look};
use layercast_lesson::document::{Lesson, Notebook};
use layercast_lesson::hand_in::{file_text, lines, receipt};
use layercast_lesson::{act, prepare, questions};
use std::hint::black_box;
use std::time::Instant;

const WATERS: &str = include_str!("../tests/questions_support/waters.csv");

/// A sheet with every question tried twice.
fn seat(n: usize) -> Notebook {
    let water = format!("group_{}", char::from(b"abcdefgh"[n % 8]));
    let mut table = String::from("Depth (m)\tDown (°C)\tUp (°C)\n");
    for row in WATERS.lines().filter_map(|line| line.strip_prefix(&water)?.strip_prefix(',')) {
        let cells: Vec<f64> = row.split(',').map(|cell| cell.parse().unwrap_or_default()).collect();
        // Each group of five its own readings: forty casts.
        let more = 0.1 * (n / 8) as f64;
        table += &format!("{}\t{:.1}\t{:.1}\n", cells[0], cells[1] + more, cells[2] + more);
    }
    let mut notebook = Notebook::new(format!("{n:04}"), Lesson::first());
    let mut step = |action: Action| notebook = act(&notebook, &action);
    step(Action::Paste { text: table });
    step(Action::SetGroup { text: n.to_string() });
    step(Action::SetSeat { text: n.to_string() });
    step(Action::NoLayers);
    let asked = {
        let prepared = prepare(&notebook);
        questions::paper(&prepared.context(&notebook)).asked.len()
    };
    for question in 0..asked {
        for (field, text) in
            [("temp", "12"), ("unit", "c"), ("drop", "3.2"), ("rate", "5"), ("from", "3"), ("to", "4")]
        {
            notebook = act(&notebook, &Action::SetField { question, field: field.into(), text: text.into() });
        }
        notebook = act(&notebook, &Action::Check { question });
        notebook = act(
            &notebook,
            &Action::SetReason { question, text: "I looked where the line is flattest.".into() },
        );
    }
    notebook
}

/// Milliseconds of the fastest of several runs.
fn fastest_ms(runs: usize, mut work: impl FnMut()) -> f64 {
    let run = |_| {
        let start = Instant::now();
        work();
        start.elapsed().as_secs_f64() * 1000.0
    };
    (0..runs).map(run).fold(f64::INFINITY, f64::min)
}

fn main() {
    let seats: Vec<Notebook> = (0..40).map(seat).collect();
    let files: Vec<Vec<u8>> = seats.iter().map(|seat| file_text(seat).into_bytes()).collect();
    let batch: Vec<Dropped> = files.iter().map(|bytes| Dropped { name: "", bytes }).collect();
    let bytes: usize = files.iter().map(Vec::len).sum();
    let paste = lines(&seats[0]);
    println!("one hand-in: {} bytes, {} lines, receipt {}", bytes / 40, paste.len(), receipt(&seats[0]));

    let cast = corrected(&seats[0].cast).cast;
    let one = fastest_ms(200, || {
        black_box(analyse(&cast, &Method::default()));
    });
    let (class, rows) = import(&Class::new("", None), &batch);
    assert_eq!(rows.len(), 40);
    let taken = fastest_ms(10, || {
        black_box(import(&Class::new("", None), &batch));
    });
    let shown = fastest_ms(10, || {
        black_box(look(&class, None));
    });
    let text = class.to_json();
    let opened = fastest_ms(10, || {
        black_box(Class::from_json(&text).ok());
    });
    let ids: Vec<String> = look(&class, None).casts.into_iter().map(|cast| cast.cast_id).collect();
    let (Some(first), Some(second)) = (ids.first(), ids.get(1)) else { return };
    let against = Against { one: first, other: Some(second), minutes: "", later: true };
    let told = fastest_ms(3, || {
        black_box(why(&class, against));
    });
    for (name, ms) in [
        ("why two of them differ", told),
        ("40 hand-ins taken in", taken),
        ("the class looked at", shown),
        ("the class's file opened", opened),
    ] {
        println!("{name}: {ms:.1} ms, {:.0} times one analysis ({one:.3} ms)", ms / one);
    }
}
