//! Hand-ins there and back in every form, and what may happen to them on the way.

use crate::support::{Words, checked, doing, notebook};
use layercast_lesson::action::Action;
use layercast_lesson::document::Notebook;
use layercast_lesson::hand_in::{Check, Form, HandIn, Opened, Refused, file_text, lines, open, receipt};
use layercast_lesson::view::Said;

fn answered() -> Notebook {
    let notebook = checked(&notebook("group_c"), ["2.5", "4", "6"]);
    let text = |text: &str| text.to_owned();
    doing(
        &notebook,
        &[
            Action::SetGroup { text: text("C") },
            Action::SetSeat { text: text("07") },
            Action::SetClass { text: text("9b") },
            Action::SetField { question: 0, field: text("value"), text: text("18,4") },
            Action::Check { question: 0 },
            Action::SetReason {
                question: 0,
                text: text("<b>I looked</b> & “saw” it.\nTwice </script> =1+1"),
            },
        ],
    )
}

#[track_caller]
fn one(bytes: &[u8]) -> Opened {
    let mut opened = open(bytes);
    assert_eq!(opened.len(), 1);
    opened.remove(0).unwrap()
}

#[track_caller]
fn refused(bytes: &[u8]) -> Refused {
    let mut opened = open(bytes);
    assert_eq!(opened.len(), 1);
    opened.remove(0).unwrap_err()
}

#[track_caller]
fn why(bytes: &[u8], id: &str) {
    match refused(bytes) {
        Refused::NotOurs(message) | Refused::Broken(message) => assert_eq!(message.id, id),
        newer => panic!("{newer:?}"),
    }
}

#[test]
fn every_form_gives_the_same_hand_in() {
    let notebook = answered();
    let want = HandIn::of(&notebook);
    assert_eq!(
        (want.sheet.seat.as_str(), want.sheet.class.as_str(), want.cast.group.as_str()),
        ("07", "9b", "C")
    );
    let file = file_text(&notebook);
    let page = format!(
        "<!DOCTYPE html><title>x</title><script>if (1 < 2) {{}}</script>\
         <script type=\"application/json\" id=\"layercast-hand-in\">\n{file}\n</script><p>text"
    );
    let mail = lines(&notebook).join("\r\n> ").to_lowercase();
    for (bytes, form, check) in [
        (file.clone(), Form::File, Check::Same),
        (page, Form::Page, Check::Same),
        (mail, Form::Lines, Check::Same),
        (notebook.to_json(), Form::Notebook, Check::Unknown),
        (format!("\u{feff}{file}\n-- \nSent from a bus"), Form::File, Check::Same),
        (format!("Here it is: {file}"), Form::File, Check::Same),
    ] {
        let opened = one(bytes.as_bytes());
        assert_eq!(opened, Opened { hand_in: want.clone(), form, check });
        assert_eq!(opened.hand_in.receipt(), receipt(&notebook));
    }
    assert_eq!(file_text(&notebook), file);
}

#[test]
fn it_may_stand_in_a_page() {
    let file = file_text(&answered());
    assert!(!file.contains(['<', '>', '&']));
    assert!(file.contains("\\u003c/script\\u003e"));
}

#[test]
fn laid_out_anew_it_is_the_same() {
    let file = file_text(&answered());
    let value: serde_json::Value = serde_json::from_str(&file).unwrap();
    let mut pretty = serde_json::to_string_pretty(&value).unwrap();
    // The order of a map is not that of the file; only blanks are added here.
    assert_eq!(one(pretty.as_bytes()).check, Check::Edited);
    pretty = file.replace("\",\"", "\" ,\n \"");
    assert_eq!(one(pretty.as_bytes()).check, Check::Same);
    let utf_16: Vec<u8> = file.encode_utf16().flat_map(u16::to_le_bytes).collect();
    assert_eq!(one(&utf_16).check, Check::Same);
}

#[test]
fn mail_and_word_processors_do_no_harm_to_a_pasted_file() {
    let plain =
        doing(&answered(), &[Action::SetReason { question: 0, text: "I looked at it, twice".into() }]);
    let file = file_text(&plain);
    let smart = file.replace('"', "”");
    assert_eq!(one(smart.as_bytes()).check, Check::Same);
    let broken = file.replace("looked at", "looked\n> at");
    assert_eq!(one(broken.as_bytes()).check, Check::Same);
    assert_eq!(one(broken.as_bytes()).hand_in, HandIn::of(&plain));
}

#[test]
fn what_was_edited_by_hand_is_told() {
    let file = file_text(&answered());
    let edited = file.replace("18,4", "18,3");
    assert_ne!(edited, file);
    assert_eq!(one(edited.as_bytes()).check, Check::Edited);
    let seat = file.replace("\"seat\":\"07\"", "\"seat\":\"08\"");
    assert_eq!(one(seat.as_bytes()).check, Check::Edited);
}

#[test]
fn the_receipt_changes_with_anything_handed_in() {
    let notebook = answered();
    let receipt_of = |actions: &[Action]| receipt(&doing(&notebook, actions));
    let plain = receipt(&notebook);
    assert_eq!(plain.len(), 9);
    let text = |text: &str| text.to_owned();
    for action in [
        Action::SetSeat { text: text("08") },
        Action::SetClass { text: text("9a") },
        Action::SetGroup { text: text("D") },
        Action::SetReason { question: 0, text: text("other") },
        Action::Hint { question: 1 },
        Action::SetCell {
            entry: Some(0),
            depth_m: 0.0,
            leg: layercast_exchange::document::LegDoc::Down,
            text: text("1"),
        },
    ] {
        assert_ne!(receipt_of(&[action]), plain);
    }
    let elsewhere = Action::Go { screen: layercast_lesson::document::Screen::Log, question: None };
    assert_eq!(receipt_of(&[elsewhere]), plain);
}

#[test]
fn what_is_no_hand_in_says_what_it_is() {
    let file = file_text(&answered());
    why(b"", "class-why-empty");
    why(b"%PDF-1.7 ...", "class-why-pdf");
    why(b"\x89PNG\r\n", "class-why-picture");
    why(b"<!DOCTYPE html><p>Hi", "class-why-page");
    why(b"depth,temp\n0,20", "class-why-unknown");
    why(b"{\"a\":1}", "class-why-unknown");
    why(b"{", "class-why-unknown");
    why(&file.as_bytes()[..file.len() - 9], "class-why-cut-off");
    why(&file.as_bytes()[..100], "class-why-cut-off");
    why(file.replace("\"version\":1,\"check\"", "\"version\":0,\"check\"").as_bytes(), "class-why-damaged");
    why(
        file.replace("\"cast\":{", "\"cast\":[{").replace("\"origin\"", "\"o").as_bytes(),
        "class-why-cut-off",
    );
    why(file.replace("\"kinds\":[", "\"kinds\":[\"one\",").as_bytes(), "class-why-damaged");
    why(
        file.replace("\"seat\":\"07\"", &format!("\"seat\":\"{}\"", "x".repeat(9999))).as_bytes(),
        "class-why-absurd",
    );
    why(&vec![b'x'; 20_000_001], "class-why-too-large");
    let lesson = serde_json::to_string(&layercast_lesson::document::Lesson::first()).unwrap();
    why(lesson.as_bytes(), "class-why-lesson");
}

#[test]
fn a_newer_one_gives_its_readings_alone() {
    let notebook = answered();
    let newer = file_text(&notebook).replacen("\"version\":1", "\"version\":2", 1);
    let Refused::Newer { version, cast } = refused(newer.as_bytes()) else { panic!() };
    let cast = cast.unwrap();
    assert_eq!((version, cast.entries.len()), (2, notebook.cast.entries.len()));
}

#[test]
fn a_hand_in_of_version_1_opens_for_ever() {
    // With the fewest fields; never to be changed.
    let text = r#"{"schema":"layercast-hand-in","version":1,"sheet":{"lesson_id":"first-lesson","marks":{"mixed":{},
        "thermocline":{},"deep":{}}},"cast":{"schema":"layercast-cast","version":1,"entries":[]},
        "lesson":{"schema":"layercast-lesson","version":1,"id":"first-lesson","kinds":[1],
        "method":{"reference_m":0.5,"mixed_drop_c":1.0,"steep_c_per_m":1.0}}}"#;
    let opened = one(text.as_bytes());
    assert_eq!(opened.check, Check::Edited);
    assert_eq!(opened.hand_in.lesson.kinds, [1]);
}

#[test]
fn lines_that_are_lost_are_named_in_both_languages() {
    let mut some = lines(&answered());
    let of = some.len();
    some.remove(4);
    some[1].replace_range(20..21, "U");
    let Refused::Broken(message) = refused(some.join("\n").as_bytes()) else { panic!() };
    let said = Said::from(message);
    let name = &receipt(&answered())[..4];
    assert_eq!(
        Words::new("en").say(&said),
        format!(
            "Of the {of} lines of {name}, one is not here: line 5. Not as written: 2. Copy them again, all of them."
        )
    );
    assert!(Words::new("es").say(&said).contains("falta una: la línea 5. No están como se escribieron: 2."));
    some.insert(4, lines(&answered())[4].clone());
    let Refused::Broken(message) = refused(some.join("\n").as_bytes()) else { panic!() };
    assert!(Words::new("en").say(&message.into()).contains("one is not as it was written: line 2."));
}

#[test]
fn a_paste_of_several_gives_several() {
    let other = doing(&answered(), &[Action::SetSeat { text: "08".into() }]);
    let both = format!("{}\n{}", lines(&answered()).join("\n"), lines(&other).join("\n"));
    let seats: Vec<String> =
        open(both.as_bytes()).into_iter().map(|opened| opened.unwrap().hand_in.sheet.seat).collect();
    assert_eq!(seats, ["07", "08"]);
}

#[test]
fn what_another_program_wrote_opens_alike() {
    // Lines and zip of one file, written by a script with the zlib and the CRC of its standard library.
    let seed = |name: &str| {
        let path = format!("{}/../../tests/fuzz/seeds/hand_in/{name}", env!("CARGO_MANIFEST_DIR"));
        std::fs::read(path).unwrap()
    };
    let want = one(&seed("file")).hand_in;
    assert_eq!(
        one(&seed("lines")),
        Opened { hand_in: want.clone(), form: Form::Lines, check: Check::Edited }
    );
    assert_eq!(one(&seed("page")).hand_in, want);
    let part = layercast_exchange::zip::parts(&seed("zip")).remove(0);
    assert_eq!(one(&part.bytes.unwrap()).hand_in, want);
}
