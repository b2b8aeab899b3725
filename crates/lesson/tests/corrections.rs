//! The list of corrections: what a person does to it, what it says, what it does to the readings; oxygen and the Secchi disk.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::support;

use layercast_exchange::document::{
    CompanionField, CorrectionField as Field, CorrectionKind as Kind, content_id,
};
use layercast_lesson::action::Action;
use layercast_lesson::document::Notebook;
use layercast_lesson::view::CorrectionView;
use layercast_lesson::{act, look, prepare};
use support::{Words, doing, empty, notebook, pasted};

const TABLE: &str = "Depth (m),Down (°C),Up (°C)\n0,20.1,20.2\n1,19.8,19.9\n2,15.0,15.1\n3,12.0,12.1\n4,11.0,11.2\n5,10.5,10.6\n";

/// A notebook with one more correction, its fields typed.
fn with(notebook: &Notebook, kind: Kind, fields: &[(Field, &str)]) -> Notebook {
    let correction = notebook.cast.corrections.len();
    let mut actions = vec![Action::AddCorrection { kind }];
    actions.extend(fields.iter().map(|(input, text)| Action::SetCorrection {
        correction,
        input: *input,
        text: (*text).to_owned(),
    }));
    doing(notebook, &actions)
}

fn item(notebook: &Notebook, i: usize) -> CorrectionView {
    look(notebook).log.corrections.items[i].clone()
}

/// What the first correction says, in English.
fn said(notebook: &Notebook) -> String {
    Words::new("en").say(&item(notebook, 0).said)
}

fn plain(text: &str) -> String {
    text.replace('\u{a0}', " ")
}

fn depths(notebook: &Notebook) -> Vec<f64> {
    prepare(notebook).analysis.profile.iter().map(|level| (level.depth_m * 1e6).round() / 1e6).collect()
}

#[test]
fn marks_read_at_a_rail_are_corrected_and_the_marks_stay_in_sight() {
    let before = pasted(TABLE);
    let rail = with(&before, Kind::DepthZero, &[(Field::AboveWater, "0.6")]);
    assert_eq!(plain(&said(&rail)), "Every depth 0.6 m less: the marks were read 0.6 m above the water.");
    let seen = look(&rail);
    // Log: the mark as read in its cell, the corrected depth beside it, the row at that depth.
    let row = seen.log.rows.iter().find(|row| row.depth.value == 3.0).unwrap();
    let corrected = row.corrected.unwrap();
    assert_eq!((corrected.decimals, row.down.num.unwrap().value), (1, 12.0));
    assert!((corrected.value - 2.4).abs() < 1e-9 && (row.at_m - 2.4).abs() < 1e-9);
    // Profile: the corrected depth, and the mark beside it.
    assert_eq!(depths(&rail), [0.4, 1.4, 2.4, 3.4, 4.4]);
    let reading =
        seen.profile.table.iter().find(|row| row.mark.is_some_and(|mark| mark.value == 3.0)).unwrap();
    assert!((reading.depth.value - 2.4).abs() < 1e-9);
    // The mark at the surface was read in the air: kept and left out, and said.
    let words = Words::new("en");
    let in_force: Vec<String> =
        seen.log.corrections.in_force.iter().map(|said| plain(&words.say(said))).collect();
    assert_eq!(in_force.len(), 2);
    assert_eq!(in_force[1], "2 readings come to stand above the water. They are kept and left out.");
    assert_eq!(seen.log.rows[0].at_m, 0.0);
    // The readings are the same readings.
    assert_eq!(content_id(&before.cast), content_id(&rail.cast));
    assert_eq!(before.cast.entries, rail.cast.entries);
    assert_eq!(prepare(&rail).cast_id, prepare(&before).cast_id);
}

#[test]
fn marks_above_the_water_once_corrected_are_no_profile() {
    let rail = with(&pasted(TABLE), Kind::DepthZero, &[(Field::AboveWater, "-0.2")]);
    assert_eq!(plain(&said(&rail)), "Every depth 0.2 m more: the marks were read 0.2 m below the water.");
    assert_eq!(depths(&rail)[0], 0.2);
    let none = with(&pasted(TABLE), Kind::DepthZero, &[(Field::AboveWater, "0")]);
    assert_eq!(said(&none), "It changes no reading.");
    assert!(look(&none).log.corrections.in_force.is_empty());
}

#[test]
fn every_kind_says_what_it_did() {
    let cast = pasted(TABLE);
    let of = |kind, fields: &[(Field, &str)]| plain(&said(&with(&cast, kind, fields)));
    assert_eq!(
        of(Kind::Probe, &[(Field::Ice, "0.3")]),
        "Every temperature 0.3 °C less: the probe read 0.3 °C in ice water."
    );
    assert_eq!(
        of(Kind::Probe, &[(Field::Ice, "−0.3")]),
        "Every temperature 0.3 °C more: the probe read −0.3 °C in ice water."
    );
    assert_eq!(
        of(Kind::FirstMark, &[(Field::Gap, "20 cm")]),
        "Every depth 0.2 m more: the sensor hangs 0.2 m below mark zero."
    );
    assert_eq!(
        of(Kind::FirstMark, &[(Field::Gap, "-0.1")]),
        "Every depth 0.1 m less: the sensor sits 0.1 m above mark zero."
    );
    assert_eq!(
        of(Kind::Tape, &[(Field::Marked, "10"), (Field::Measured, "10.2")]),
        "Every depth times 1.020, by 0.1 m at most: 10.0 m by the marks are 10.2 m by the tape."
    );
    assert_eq!(
        of(Kind::Slant, &[(Field::From, "3"), (Field::To, "5"), (Field::Angle, "8°")]),
        "Marks 3.0 to 5.0 m lie higher, by 0.05 m at most: the cable leaned 8°."
    );
}

#[test]
fn a_slant_moves_its_own_marks_only_and_warns_beyond_ten_degrees() {
    let slant =
        with(&pasted(TABLE), Kind::Slant, &[(Field::From, "3"), (Field::To, "4"), (Field::Angle, "20")]);
    let cosine = 0.939_692_620_785_908_4; // cos 20°
    let want = [0.0, 1.0, 2.0, 3.0 * cosine, 4.0 * cosine, 5.0];
    for (got, want) in depths(&slant).iter().zip(want) {
        assert!((got - want).abs() < 1e-5, "{got} {want}");
    }
    assert!(item(&slant, 0).doubted && said(&slant).contains("curve"), "{}", said(&slant));
    let ten =
        with(&pasted(TABLE), Kind::Slant, &[(Field::From, "3"), (Field::To, "4"), (Field::Angle, "10")]);
    assert!(!item(&ten, 0).doubted && !said(&ten).contains("curve"));
}

#[test]
fn what_cannot_be_used_is_kept_and_says_what_to_do() {
    let cast = pasted(TABLE);
    let bare = with(&cast, Kind::Tape, &[]);
    assert_eq!(plain(&said(&bare)), "Not applied yet: fill in “By the marks, m”.");
    assert!(!item(&bare, 0).doubted);
    let odd = with(&cast, Kind::DepthZero, &[(Field::AboveWater, "knee high")]);
    let view = item(&odd, 0);
    assert!(view.doubted && view.fields[0].odd);
    assert_eq!(view.fields[0].text, "knee high");
    let said_odd = plain(&said(&odd));
    assert!(said_odd.contains("knee high") && said_odd.contains("0.6 m"), "{said_odd}");
    assert_eq!(depths(&odd), depths(&cast));
    // Numbers that no trip to a pond can have.
    for (kind, fields) in [
        (Kind::Tape, vec![(Field::Marked, "0"), (Field::Measured, "10")]),
        (Kind::DepthZero, vec![(Field::AboveWater, "600")]),
        (Kind::Slant, vec![(Field::From, "3"), (Field::To, "4"), (Field::Angle, "89")]),
        (Kind::Probe, vec![(Field::Ice, "18")]),
    ] {
        let none = with(&cast, kind, &fields);
        assert!(item(&none, 0).doubted && said(&none).starts_with("Not applied"), "{}", said(&none));
        assert_eq!(depths(&none), depths(&cast));
    }
    // Half a pair waits; points too close together count as ice water alone.
    let half = with(&cast, Kind::Probe, &[(Field::Ice, "0.3"), (Field::Read, "20.4")]);
    assert!(said(&half).contains("Trusted thermometer in warm water"), "{}", said(&half));
    let close = with(&cast, Kind::Probe, &[(Field::Ice, "0.3"), (Field::Read, "3.4"), (Field::True, "3.0")]);
    assert!(item(&close, 0).doubted && said(&close).contains("ice water alone"), "{}", said(&close));
    let coldest_c = prepare(&close).analysis.coldest.unwrap().0;
    assert!((coldest_c - (10.5 - 0.3)).abs() < 1e-9, "{coldest_c}");
    // A second one of a kind.
    let twice = with(&with(&cast, Kind::Probe, &[(Field::Ice, "0.3")]), Kind::Probe, &[(Field::Ice, "0.5")]);
    assert!(!item(&twice, 0).doubted && item(&twice, 1).doubted);
}

#[test]
fn a_probe_check_moves_what_is_analysed_and_not_what_was_written() {
    let probe = with(&pasted(TABLE), Kind::Probe, &[(Field::Ice, "0.5")]);
    let seen = look(&probe);
    assert_eq!(seen.log.rows[2].down.num.unwrap().value, 15.0);
    assert!((seen.profile.table[2].down.unwrap().value - 14.5).abs() < 1e-9);
    // A doubt speaks of what was written, and so does its way out.
    let lost = TABLE.replace("2,15.0", "2,150");
    let lost = with(&pasted(&lost), Kind::Probe, &[(Field::Ice, "0.5")]);
    let seen = look(&lost);
    let words = Words::new("en");
    let ways: Vec<String> = seen.log.doubts[0].ways.iter().map(|way| words.say(&way.label)).collect();
    assert_eq!(ways[0], "Make it 15.0");
    assert!(words.say(&seen.log.doubts[0].text).contains("150"));
}

#[test]
fn places_of_doubts_are_marks_of_the_table_and_their_signs_stand_at_corrected_depths() {
    let lost = TABLE.replace("3,12.0", "3,120");
    let rail = with(&pasted(&lost), Kind::DepthZero, &[(Field::AboveWater, "0.5")]);
    let seen = look(&rail);
    let doubt = &seen.log.doubts[0];
    assert_eq!(plain(&Words::new("en").say(&doubt.place)), "3.0 m, going down");
    assert!((doubt.depth_m.unwrap() - 2.5).abs() < 1e-9);
}

#[test]
fn everything_can_be_undone_and_typing_into_one_field_is_one_thing() {
    let before = pasted(TABLE);
    let undos = before.undo.len();
    let mut typed = act(&before, &Action::AddCorrection { kind: Kind::DepthZero });
    for text in ["0", "0.", "0.6"] {
        let text = text.to_owned();
        typed = act(&typed, &Action::SetCorrection { correction: 0, input: Field::AboveWater, text });
    }
    assert_eq!(typed.undo.len(), undos + 2);
    let words = Words::new("en");
    assert_eq!(words.say(&look(&typed).log.undo.unwrap().label), "Undo the correction");
    let removed = act(&typed, &Action::RemoveCorrection { correction: 0 });
    assert!(removed.cast.corrections.is_empty());
    assert_eq!(act(&removed, &Action::Undo).cast, typed.cast);
    let back = doing(&typed, &[Action::Undo, Action::Undo]);
    assert_eq!(back.cast, before.cast);
    // A saved notebook opens with them.
    assert_eq!(Notebook::from_json(&typed.to_json()), Ok(typed));
}

#[test]
fn another_table_begins_without_corrections_and_the_same_one_keeps_them() {
    let rail = with(&pasted(TABLE), Kind::DepthZero, &[(Field::AboveWater, "0.6")]);
    let again = doing(&rail, &[Action::OpenTable, Action::UseTable]);
    assert_eq!(again.cast.corrections.len(), 1);
    let other = act(&rail, &Action::Paste { text: support::table("mixed") });
    assert!(other.cast.corrections.is_empty());
    assert_eq!(act(&other, &Action::Undo).cast.corrections.len(), 1);
    // Typed before there was any reading: they are of the cast that comes.
    let early = with(&empty(), Kind::DepthZero, &[(Field::AboveWater, "0.6")]);
    let early = act(&early, &Action::Paste { text: TABLE.to_owned() });
    assert_eq!(early.cast.corrections.len(), 1);
}

/// Readings of a probe that covers all but 30 % of each step, in water of our own (tenths of a degree).
fn settling() -> String {
    let water = [22.0, 22.0, 21.8, 20.0, 15.0, 11.0, 9.0, 8.5, 8.2, 8.0];
    let read = |order: &[usize]| {
        let mut at = vec![0.0; water.len()];
        let mut probe = water[order[0]];
        for i in order {
            probe = water[*i] + 0.3 * (probe - water[*i]);
            at[*i] = probe;
        }
        at
    };
    let down: Vec<usize> = (0..water.len()).collect();
    let up: Vec<usize> = down.iter().rev().copied().collect();
    let (down, up) = (read(&down), read(&up));
    let mut text = String::from("Depth (m),Down (°C),Up (°C)\n");
    for i in 0..water.len() {
        text += &format!("{i},{:.1},{:.1}\n", down[i], up[i]);
    }
    text
}

#[test]
fn a_probe_still_settling_is_offered_a_correction_and_never_given_one() {
    let cast = pasted(&settling());
    let offer = look(&cast).log.corrections.lag.expect("an offer");
    let text = plain(&Words::new("en").say(&offer.text));
    assert!(text.contains("30 %") || text.contains("29 %") || text.contains("31 %"), "{text}");
    assert!(cast.cast.corrections.is_empty());
    let taken = act(&cast, &offer.way.action);
    assert!(look(&taken).log.corrections.lag.is_none());
    assert!(said(&taken).contains("to go"), "{}", said(&taken));
    // The two ways come together.
    let apart = |notebook: &Notebook| prepare(notebook).analysis.pairs.max_abs_c.unwrap();
    assert!(apart(&taken) < 0.5 * apart(&cast), "{} {}", apart(&taken), apart(&cast));
    assert_eq!(act(&taken, &Action::TakeLag), taken);
    // Water where both ways agree is offered nothing.
    for calm in ["mixed", "one"] {
        assert!(look(&notebook(calm)).log.corrections.lag.is_none(), "{calm}");
        assert_eq!(act(&notebook(calm), &Action::TakeLag), notebook(calm));
    }
}

#[test]
fn oxygen_goes_from_the_table_to_the_screens() {
    let text = include_str!("../../../tests/tables/oxygen_and_secchi_line.csv");
    let seen = look(&pasted(text));
    let oxygen: Vec<Option<f64>> =
        seen.profile.table.iter().map(|row| row.oxygen.map(|num| num.value)).collect();
    assert_eq!(
        oxygen,
        [Some(8.6), Some(8.5), Some(8.4), Some(9.1), Some(7.2), Some(4.0), Some(1.3), Some(0.2)]
    );
    // 21.8 °C: water at sea level holds 8.77 mg/L (the table of EN 25814 has 8.77 at 22 °C rounded down to 8.74).
    let at_three = seen.profile.table[3].per_cent.unwrap();
    assert!((at_three.value - 104.0).abs() < 1.0 + 1e-9, "{at_three:?}");
    let words = Words::new("en");
    let notes: Vec<String> = seen.profile.table_notes.iter().map(|said| plain(&words.say(said))).collect();
    assert!(notes.iter().any(|note| note == "Secchi depth 3.2 m."), "{notes:?}");
    assert!(notes.iter().any(|note| note.contains("height of the sea")), "{notes:?}");
    assert!(seen.log.companions.any_oxygen);
    assert_eq!(seen.log.companions.secchi_gone, "3.4 m");
}

#[test]
fn thinner_air_over_a_high_lake_gives_more_per_cent() {
    let text = include_str!("../../../tests/tables/oxygen_and_secchi_line.csv");
    let low = pasted(text);
    let high =
        act(&low, &Action::SetCompanion { companion: CompanionField::Altitude, text: "2000 m".to_owned() });
    let share = |notebook: &Notebook| look(notebook).profile.table[0].per_cent.unwrap().value;
    // The pressure at 2000 m is 0.785 of that at the sea (methods 9).
    assert!((share(&low) / share(&high) - 0.78).abs() < 0.02, "{} {}", share(&low), share(&high));
}

#[test]
fn oxygen_and_secchi_can_be_typed_and_what_is_odd_is_kept() {
    let cast = pasted(TABLE);
    let typed = doing(
        &cast,
        &[
            Action::SetOxygen { entry: Some(4), depth_m: 2.0, text: "8,4 mg/L".to_owned() },
            Action::SetOxygen { entry: Some(6), depth_m: 3.0, text: "lots".to_owned() },
            Action::SetCompanion { companion: CompanionField::SecchiGone, text: "3.1".to_owned() },
            Action::SetCompanion { companion: CompanionField::SecchiBack, text: "far".to_owned() },
        ],
    );
    let seen = look(&typed);
    assert_eq!(seen.profile.table[2].oxygen.unwrap().value, 8.4);
    assert_eq!(seen.profile.table[3].oxygen, None);
    let odd = &seen.log.companions.rows[3].cells[0];
    assert!(odd.odd && odd.text == "lots");
    assert_eq!(seen.log.companions.odd, Some(CompanionField::SecchiBack));
    let words = Words::new("en");
    let said: Vec<String> = seen.log.companions.said.iter().map(|said| plain(&words.say(said))).collect();
    assert!(said[0].contains("far") && said[1] == "Secchi depth 3.1 m.", "{said:?}");
    let back = doing(&typed, &[Action::Undo, Action::Undo, Action::Undo, Action::Undo]);
    assert_eq!(back.cast, cast.cast);
    assert_eq!(Notebook::from_json(&typed.to_json()), Ok(typed));
}

#[test]
fn both_languages_have_the_words() {
    for language in ["en", "es"] {
        let words = Words::new(language);
        let mut cast = pasted(&settling());
        for (kind, fields) in [
            (Kind::Probe, vec![(Field::Ice, "0.2"), (Field::Read, "20.4"), (Field::True, "20.0")]),
            (Kind::DepthZero, vec![(Field::AboveWater, "x")]),
            (Kind::FirstMark, vec![(Field::Gap, "0.2")]),
            (Kind::Tape, vec![(Field::Marked, "10")]),
            (Kind::Slant, vec![(Field::From, "3"), (Field::To, "4"), (Field::Angle, "20")]),
        ] {
            cast = with(&cast, kind, &fields);
        }
        cast = act(&cast, &Action::TakeLag);
        let view = look(&cast).log.corrections;
        for item in &view.items {
            for said in [&item.title, &item.about, &item.said, &item.remove.label] {
                assert!(!words.say(said).is_empty());
            }
            assert!(item.fields.iter().all(|field| !words.say(&field.label).is_empty()));
        }
        assert!(view.ways.iter().all(|way| !words.say(&way.label).is_empty()));
        assert!(view.in_force.iter().all(|said| !words.say(said).is_empty()));
    }
}
