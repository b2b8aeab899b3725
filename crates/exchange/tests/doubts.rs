//! Doubted cells: found, explained, and gone as soon as a person has decided.

#![allow(clippy::unwrap_used)]

use layercast_exchange::document::{
    CastDoc, Cell, CellDoubt, Choices, DoubtedCell, Entry, LegDoc, Slip, SwitchDoc, Why, cell_doubts,
    new_doc, to_cast, typed_depth, typed_temp,
};
use layercast_exchange::read::read_text;

fn doc(table: &str) -> CastDoc {
    let choices = Choices::default();
    CastDoc::from_read(&read_text(table, &choices), table, &choices)
}

/// The one doubt of a table.
#[track_caller]
fn only(doc: &CastDoc) -> CellDoubt {
    let doubts = cell_doubts(doc);
    assert_eq!(doubts.len(), 1, "{doubts:?}");
    doubts.into_iter().next().unwrap()
}

/// Depths 0 to 4 by 0.5 with two legs, one depth and one temperature replaced.
fn table(head: &str, depth: &str, temp: &str) -> String {
    let mut text = format!("{head}\n");
    for at in 0..9 {
        let mark = if at == 5 { depth.to_owned() } else { format!("{:.1}", f64::from(at) * 0.5) };
        let down = if at == 3 { temp.to_owned() } else { format!("{}.5", 20 - at) };
        text.push_str(&format!("{mark}\t{down}\t{}.4\n", 20 - at));
    }
    text
}

const HEAD: &str = "Depth (m)\tDown (°C)\tUp (°C)";

#[test]
fn a_doubted_temperature_belongs_to_one_reading() {
    let doc = doc(&table(HEAD, "2.5", "1O.5"));
    let doubt = only(&doc);
    assert_eq!((doubt.cell, doubt.entries.as_slice(), doubt.line), (DoubtedCell::Temp, &[6][..], Some(5)));
    assert_eq!(doubt.why, Why::Unreadable(Slip::Letter { letter: 'O', place: 2, digit: '0' }));
    assert_eq!((doubt.proposals[0].text.as_str(), doubt.proposals[0].value), ("10.5", 10.5));
    assert_eq!(doubt.message().id, "doubt-letter-zero");
    assert_eq!(to_cast(&doc).readings[6].temp_c, None);
}

#[test]
fn a_doubted_depth_belongs_to_both_ways_of_its_row_and_leaves_both_out() {
    let doc = doc(&table(HEAD, "25", "17.5"));
    let doubt = only(&doc);
    assert_eq!((doubt.cell, doubt.entries.as_slice()), (DoubtedCell::Depth, &[10, 11][..]));
    assert_eq!(doubt.why, Why::OutOfOrder { before_m: Some(2.0), after_m: Some(3.0) });
    assert_eq!(doubt.proposals.iter().map(|p| p.value).collect::<Vec<_>>(), [2.5]);
    let cast = to_cast(&doc);
    assert!(cast.readings[10].depth_m.is_nan() && cast.readings[11].depth_m.is_nan());
    assert_eq!(cast.readings[9].depth_m, 2.0);
}

#[test]
fn proposals_speak_the_unit_of_the_table() {
    let fahrenheit = doc("Depth (m)\tTemp (°F)\n0\t68\n1\t68\n2\t7O.1\n3\t64\n4\t58\n");
    let proposal = only(&fahrenheit).proposals.remove(0);
    assert_eq!(proposal.text, "70.1");
    assert!((proposal.value - (70.1 - 32.0) / 1.8).abs() < 1e-9);

    let mut text = String::from("Depth (cm)\tTemp (°C)\n");
    for at in 0..8 {
        text.push_str(&format!("{}\t{}.5\n", if at == 4 { 2 } else { at * 50 }, 20 - at));
    }
    let centimetres = doc(&text.replace("\n2\t", "\n2OO\t"));
    let proposal = only(&centimetres).proposals.remove(0);
    assert_eq!((proposal.text.as_str(), proposal.value), ("200", 2.0));
    let slipped = doc(&text);
    let proposal = only(&slipped).proposals.remove(0);
    assert_eq!((proposal.text.as_str(), proposal.value), ("200", 2.0));

    let minus = doc("Depth (m)\tTemp (°C)\n0\t20\n-1\t19\n-2\t18\n-B\t17\n-4\t16\n-5\t15\n");
    assert_eq!(minus.entries[4].depth.value, Some(4.0));
    assert!(cell_doubts(&minus)[0].proposals.is_empty());
    let minus = doc("Depth (m)\tTemp (°C)\n0\t20\n-1\t19\n-2\t18\n-3O\t17\n-4\t16\n-5\t15\n");
    assert_eq!((only(&minus).proposals[0].text.as_str(), only(&minus).proposals[0].value), ("-30", 30.0));
}

#[test]
fn a_decision_ends_the_doubt() {
    let doubted = doc(&table(HEAD, "25", "1O.5"));
    assert_eq!(cell_doubts(&doubted).len(), 2);
    for decide in [
        |entry: &mut Entry| entry.switch = SwitchDoc::Off,
        |entry: &mut Entry| entry.switch = SwitchDoc::Kept,
        |entry: &mut Entry| {
            entry.temp.settled =
                Some(typed_temp(if entry.temp.value.is_some() { &entry.temp.written } else { "10,5" }));
            entry.depth.settled =
                Some(typed_depth(if entry.line == Some(7) { "2.5" } else { &entry.depth.written }));
        },
    ] {
        let mut doc = doubted.clone();
        doc.entries.iter_mut().for_each(decide);
        assert_eq!(cell_doubts(&doc), [], "{:?}", doc.entries[6]);
    }
    // "It was like that": the depth counts as written.
    let mut kept = doubted.clone();
    kept.entries[10].switch = SwitchDoc::Kept;
    assert_eq!(to_cast(&kept).readings[10].depth_m, 25.0);
}

#[test]
fn what_a_person_types_is_doubted_too() {
    let mut doc = doc(&table(HEAD, "2.5", "17.5"));
    assert_eq!(cell_doubts(&doc), []);
    doc.entries[3].temp.settled = Some(typed_temp("l9.4"));
    let doubt = only(&doc);
    assert_eq!((doubt.written.as_str(), doubt.proposals[0].value), ("l9.4", 19.4));
    doc.entries[3].temp.settled = Some(typed_temp(""));
    assert_eq!(cell_doubts(&doc), []);
}

#[test]
fn typed_readings_may_come_in_any_order() {
    let mut doc = new_doc("Quillet Pond", "C");
    for depth in ["0", "3", "1", "2.5", "0.5", "9", "2", "1.5"] {
        doc.entries.push(Entry {
            depth: Cell::typed(&typed_depth(depth)),
            temp: Cell::typed(&typed_temp("18,4")),
            oxygen: None,
            leg: LegDoc::Down,
            line: None,
            switch: SwitchDoc::Auto,
        });
    }
    assert_eq!(cell_doubts(&doc), []);
    doc.entries[2].depth = Cell::typed(&typed_depth("-1"));
    doc.entries[3].depth = Cell::typed(&typed_depth("25000"));
    doc.entries[4].depth = Cell::typed(&typed_depth(""));
    let whys: Vec<Why> = cell_doubts(&doc).into_iter().map(|doubt| doubt.why).collect();
    assert_eq!(whys, [Why::AboveSurface, Why::TooDeep, Why::NoDepth]);
}

#[test]
fn a_missing_reading_is_no_doubt_and_neither_is_its_depth() {
    let doc = doc("Depth (m)\tTemp (°C)\n0\t20\n1\t-\n2\t\n99\tn/a\n4\t16\n5\t15\n");
    assert_eq!(doc.entries.len(), 6);
    assert_eq!(cell_doubts(&doc), []);
}
