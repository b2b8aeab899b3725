//! Any actions in any order on any notebook: never a panic, nothing typed is lost, and the file is what the page has.

#![allow(clippy::unwrap_used, reason = "a test")]

use crate::support;

use layercast_exchange::document::{
    CompanionField, CorrectionField, CorrectionKind, LegChoice, LegDoc, Role, Unit,
};
use layercast_lesson::action::{Action, MarkKey};
use layercast_lesson::document::{MarkName, Notebook, ReportPart, Screen, fuzz_notebook_json};
use layercast_lesson::{act, look, prepare, scene};
use proptest::prelude::*;
use proptest::sample::select;

/// Text as people and cats type it.
fn text() -> impl Strategy<Value = String> {
    prop_oneof![
        select(vec![
            "",
            " ",
            "18.4",
            "18,4",
            "4",
            "4.5 m",
            "450 cm",
            "15 ft",
            "4-5",
            "−1",
            "177",
            "1O.5",
            "1e308",
            "NaN",
            "deep",
            "=1+1",
            "<b>x</b>",
            "64 °F",
            "±0,5",
            "0",
            "9.5",
            "99999",
            "\u{202e}4",
            "🌊",
        ])
        .prop_map(str::to_owned),
        "[0-9.,°CFm \\-]{0,12}",
        "\\PC{0,40}",
    ]
}

fn number() -> impl Strategy<Value = f64> {
    prop_oneof![
        4 => -5.0..40.0_f64,
        1 => select(vec![0.0, -0.0, 1e-300, 1e308, -1e308, f64::NAN, f64::INFINITY, f64::NEG_INFINITY, 46.6]),
    ]
}

fn table() -> impl Strategy<Value = String> {
    let row = (select(vec!["0", "0.5", "1", "1.5", "2", "3", "", "x"]), text(), text());
    let wild = prop::collection::vec(row, 0..12)
        .prop_map(|rows| rows.iter().map(|(depth, down, up)| format!("{depth}\t{down}\t{up}\n")).collect());
    prop_oneof![
        3 => select(support::NAMES.to_vec()).prop_map(support::table),
        2 => wild,
        1 => text(),
    ]
}

fn entries() -> impl Strategy<Value = Vec<usize>> {
    prop::collection::vec(0..60_usize, 0..4)
}

fn screen() -> impl Strategy<Value = Screen> {
    select(vec![Screen::Log, Screen::Profile, Screen::Questions, Screen::Report])
}

fn mark() -> impl Strategy<Value = MarkName> {
    select(vec![MarkName::Mixed, MarkName::Thermocline, MarkName::Deep])
}

fn key() -> impl Strategy<Value = MarkKey> {
    use MarkKey::{Down, End, Home, MarkDown, MarkUp, Up};
    select(vec![Up, Down, MarkUp, MarkDown, Home, End])
}

fn leg() -> impl Strategy<Value = LegDoc> {
    select(vec![LegDoc::Down, LegDoc::Up, LegDoc::Unknown])
}

fn kind() -> impl Strategy<Value = CorrectionKind> {
    select(CorrectionKind::ALL.to_vec())
}

fn input() -> impl Strategy<Value = CorrectionField> {
    use CorrectionField::{AboveWater, Angle, From, Gap, Ice, Marked, Measured, Read, Share, To, True};
    select(vec![Ice, Read, True, AboveWater, Gap, Marked, Measured, From, To, Angle, Share])
}

fn companion() -> impl Strategy<Value = CompanionField> {
    select(vec![CompanionField::SecchiGone, CompanionField::SecchiBack, CompanionField::Altitude])
}

fn field() -> impl Strategy<Value = String> {
    prop_oneof![
        3 => select(vec!["value", "unit", "from", "to", "depth", "rule", "a", "b", "number"]).prop_map(str::to_owned),
        1 => text(),
    ]
}

/// A question, or a number far from any.
fn question() -> impl Strategy<Value = usize> {
    prop_oneof![9 => 0..9_usize, 1 => Just(usize::MAX)]
}

fn action() -> impl Strategy<Value = Action> {
    let about_tables = prop_oneof![
        2 => table().prop_map(|text| Action::Paste { text }),
        1 => Just(Action::OpenTable),
        1 => (0..5_usize, select(vec![Role::Depth, Role::Down, Role::Up, Role::One, Role::Leg, Role::Oxygen, Role::Secchi, Role::NotUsed]))
            .prop_map(|(column, role)| Action::SetRole { column, role }),
        1 => (0..5_usize, select(vec![Unit::M, Unit::Cm, Unit::Ft, Unit::C, Unit::F]))
            .prop_map(|(column, unit)| Action::SetUnit { column, unit }),
        1 => select(vec![Unit::C, Unit::F, Unit::Ft]).prop_map(|unit| Action::ReadTemps { unit }),
        1 => (0..4_usize).prop_map(|way| Action::AnswerTable { way }),
        1 => select(vec![LegChoice::Down, LegChoice::Up, LegChoice::Open, LegChoice::DownThenUp])
            .prop_map(|leg| Action::SetLeg { leg }),
        2 => Just(Action::UseTable),
        1 => Just(Action::DropTable),
    ];
    let about_cells = prop_oneof![
        4 => (prop::option::of(0..60_usize), number(), leg(), text())
            .prop_map(|(entry, depth_m, leg, text)| Action::SetCell { entry, depth_m, leg, text }),
        1 => (entries(), text()).prop_map(|(entries, text)| Action::SetDepth { entries, text }),
        1 => (0..60_usize, number(), text())
            .prop_map(|(entry, value_c, text)| Action::MakeTemp { entry, value_c, text }),
        1 => (0..60_usize, number(), text())
            .prop_map(|(entry, value_m, text)| Action::MakeDepth { entry, value_m, text }),
        1 => entries().prop_map(|entries| Action::LeaveOut { entries }),
        1 => entries().prop_map(|entries| Action::Keep { entries }),
        1 => entries().prop_map(|entries| Action::Reconsider { entries }),
        2 => Just(Action::Undo),
        1 => text().prop_map(|text| Action::SetWater { text }),
        1 => text().prop_map(|text| Action::SetGroup { text }),
        1 => text().prop_map(|text| Action::SetBed { text }),
        1 => Just(Action::AddMark),
    ];
    let about_corrections = prop_oneof![
        2 => kind().prop_map(|kind| Action::AddCorrection { kind }),
        6 => (0..4_usize, input(), text())
            .prop_map(|(correction, input, text)| Action::SetCorrection { correction, input, text }),
        1 => (0..4_usize).prop_map(|correction| Action::RemoveCorrection { correction }),
        1 => Just(Action::TakeLag),
        2 => (companion(), text()).prop_map(|(companion, text)| Action::SetCompanion { companion, text }),
        2 => (prop::option::of(0..60_usize), number(), text())
            .prop_map(|(entry, depth_m, text)| Action::SetOxygen { entry, depth_m, text }),
        1 => Just(Action::Undo),
    ];
    let about_marks = prop_oneof![
        3 => (mark(), text()).prop_map(|(mark, text)| Action::TypeMark { mark, text }),
        1 => (mark(), text()).prop_map(|(mark, text)| Action::TypeGive { mark, text }),
        2 => (mark(), number(), number(), number()).prop_map(|(mark, y_px, surface_y_px, px_per_m)| {
            Action::DragMark { mark, y_px: y_px * 20.0, surface_y_px, px_per_m }
        }),
        2 => (mark(), key()).prop_map(|(mark, key)| Action::KeyMark { mark, key }),
        1 => (mark(), any::<bool>()).prop_map(|(mark, refused)| Action::RefuseMark { mark, refused }),
        1 => Just(Action::NoLayers),
        3 => any::<bool>().prop_map(|early| Action::CheckMarks { early }),
        1 => any::<bool>().prop_map(|again| Action::ShowMarks { again }),
    ];
    let about_questions = prop_oneof![
        4 => (question(), field(), text())
            .prop_map(|(question, field, text)| Action::SetField { question, field, text }),
        1 => (question(), field(), number(), number(), number()).prop_map(
            |(question, field, y_px, surface_y_px, px_per_m)| Action::DragField {
                question, field, y_px, surface_y_px, px_per_m
            }
        ),
        1 => (question(), field(), key()).prop_map(|(question, field, key)| Action::KeyField { question, field, key }),
        1 => (question(), text()).prop_map(|(question, text)| Action::SetReason { question, text }),
        1 => (question(), text()).prop_map(|(question, text)| Action::SetOwnWords { question, text }),
        4 => question().prop_map(|question| Action::Check { question }),
        1 => question().prop_map(|question| Action::CannotTell { question }),
        1 => question().prop_map(|question| Action::Hint { question }),
        1 => question().prop_map(|question| Action::ShowMe { question }),
        1 => question().prop_map(|question| Action::AnswerAgain { question }),
        2 => (select(ReportPart::ALL.to_vec()), text()).prop_map(|(part, text)| Action::SetReport { part, text }),
    ];
    prop_oneof![
        1 => (screen(), prop::option::of(question()))
            .prop_map(|(screen, question)| Action::Go { screen, question }),
        3 => about_tables,
        4 => about_cells,
        4 => about_corrections,
        5 => about_marks,
        5 => about_questions,
    ]
}

/// Notebooks to begin with: empty, typed, every water, checked, a demo table.
fn start() -> impl Strategy<Value = Notebook> {
    let demo = |name: &str| {
        let path = format!("{}/../../static-data/casts/{name}.csv", env!("CARGO_MANIFEST_DIR"));
        support::pasted(&std::fs::read_to_string(path).unwrap())
    };
    prop_oneof![
        1 => Just(support::empty()),
        2 => select(support::NAMES.to_vec()).prop_map(support::notebook),
        2 => select(support::NAMES.to_vec())
            .prop_map(|water| support::checked(&support::notebook(water), ["", "", ""])),
        1 => select(vec!["layered-summer", "mixed-autumn", "under-ice"]).prop_map(demo),
    ]
}

/// The text an action types, when it names a place where text is kept in any case.
fn is_kept(notebook: &Notebook, action: &Action) -> bool {
    let sheet = &notebook.sheets[0];
    let kept = |text: &str| text.chars().take(400).collect::<String>();
    match action {
        Action::SetWater { text } => notebook.cast.water == kept(text),
        Action::SetGroup { text } => notebook.cast.group == kept(text),
        Action::SetBed { text } => notebook.bed_text == kept(text),
        Action::TypeMark { mark, text } => sheet.marks.get(*mark).depth_text == kept(text),
        Action::TypeGive { mark, text } => sheet.marks.get(*mark).give_text == kept(text),
        Action::SetCell { entry: Some(entry), text, .. } => {
            notebook.cast.entries.get(*entry).is_none_or(|entry| entry.temp.current_text() == kept(text))
        }
        Action::SetCell { entry: None, text, .. } => {
            text.is_empty()
                || notebook.cast.entries.last().is_some_and(|entry| entry.temp.written == kept(text))
        }
        // Every text made here is shorter than what is kept of a title.
        Action::SetReport { part, text } => sheet.report.get(*part) == kept(text),
        Action::SetCompanion { companion, text } => {
            notebook.cast.companions.cell(*companion).current_text() == kept(text)
        }
        Action::SetCorrection { correction, input, text } => {
            notebook.cast.corrections.get(*correction).is_none_or(|correction| {
                !correction.kind.fields().contains(input) || correction.text(*input) == kept(text)
            })
        }
        Action::SetOxygen { entry: Some(entry), text, .. } => {
            notebook.cast.entries.get(*entry).is_none_or(|entry| {
                entry.oxygen.as_ref().map_or("", |oxygen| oxygen.current_text()) == kept(text)
            })
        }
        Action::SetDepth { entries, text } => entries.iter().all(|entry| {
            notebook.cast.entries.get(*entry).is_none_or(|entry| entry.depth.current_text() == kept(text))
        }),
        _ => true,
    }
}

/// Few cases for every day; PROPTEST_CASES asks for more.
fn cases() -> u32 {
    std::env::var("PROPTEST_CASES").ok().and_then(|cases| cases.parse().ok()).unwrap_or(40)
}

proptest! {
    #![proptest_config(ProptestConfig { cases: cases(), max_shrink_iters: 300, failure_persistence: None, ..ProptestConfig::default() })]

    #[test]
    fn any_actions_in_any_order(start in start(), actions in prop::collection::vec(action(), 1..25)) {
        let mut notebook = start;
        for action in &actions {
            let before = notebook.clone();
            notebook = act(&notebook, action);
            prop_assert!(is_kept(&notebook, action), "{action:?}");
            prop_assert_eq!(&act(&before, action), &notebook, "the same twice");
            // What was revealed and what was first is never taken back.
            let (was, is) = (&before.sheets[0], &notebook.sheets[0]);
            prop_assert!(was.first_marks.is_none() || was.first_marks == is.first_marks);
            prop_assert!(was.uncovered.steps <= is.uncovered.steps);
            prop_assert!(was.uncovered.thermocline <= is.uncovered.thermocline);
            prop_assert!(was.uncovered.mixed_layer <= is.uncovered.mixed_layer);
            for (id, answer) in &was.answers {
                prop_assert!(is.answers[id].tries.starts_with(&answer.tries));
            }
        }
        let seen = look(&notebook);
        let json = serde_json::to_string(&seen).unwrap();
        prop_assert!(!json.is_empty());
        let prepared = prepare(&notebook);
        for screen in [Screen::Log, Screen::Profile, Screen::Questions, Screen::Report] {
            let scene = scene(&notebook, &prepared, screen);
            let steps = prepared.analysis.steps.len();
            prop_assert!(scene.shown.some_steps.iter().all(|step| *step < steps));
        }
        // Marks that are placed stand in their order, within the cast.
        let marks = &notebook.sheets[0].marks;
        let placed: Vec<f64> =
            [&marks.mixed, &marks.thermocline, &marks.deep].iter().filter_map(|mark| mark.depth_m).collect();
        prop_assert!(placed.is_sorted_by(|a, b| a <= &(b + 1e-9)), "{placed:?}");
        // Every index the page is given is one of its lists.
        for row in &seen.log.rows {
            let cells = std::iter::once(&row.down).chain(&row.up);
            for cell in cells {
                prop_assert!(cell.doubt.is_none_or(|doubt| doubt < seen.log.doubts.len()));
                prop_assert!(cell.entry.is_none_or(|entry| entry < notebook.cast.entries.len()));
            }
        }
        let rows = seen.profile.table.len();
        prop_assert!(seen.readings.iter().all(|reading| reading.row < rows.max(1)));
        let again = Notebook::from_json(&notebook.to_json());
        prop_assert_eq!(again.as_ref(), Ok(&notebook), "writing and reading changed the notebook");
    }

    #[test]
    fn undo_goes_back_to_where_it_began(start in start(), actions in prop::collection::vec(action(), 1..12)) {
        let is_of_cast = |action: &Action| {
            matches!(
                action,
                Action::SetCell { .. } | Action::SetDepth { .. } | Action::MakeTemp { .. } | Action::MakeDepth { .. }
                    | Action::LeaveOut { .. } | Action::Keep { .. } | Action::Reconsider { .. }
                    | Action::Paste { .. } | Action::SetLeg { .. }
                    | Action::AddCorrection { .. } | Action::SetCorrection { .. } | Action::RemoveCorrection { .. }
                    | Action::TakeLag | Action::SetOxygen { .. } | Action::SetCompanion { .. }
            )
        };
        let mut notebook = start.clone();
        let begun = notebook.undo.len();
        for action in actions.iter().filter(|action| is_of_cast(action)) {
            notebook = act(&notebook, action);
        }
        while notebook.undo.len() > begun {
            notebook = act(&notebook, &Action::Undo);
        }
        prop_assert_eq!(notebook.cast, start.cast);
    }

    #[test]
    fn any_bytes_as_a_notebook(bytes in prop::collection::vec(any::<u8>(), 0..200)) {
        fuzz_notebook_json(&bytes);
    }

    #[test]
    fn a_damaged_notebook(start in start(), at in any::<prop::sample::Index>(), with in select(vec!["", "9", "-", "\"", "1e999", "null"])) {
        let json = start.to_json();
        let at = at.index(json.len());
        if let (Some(head), Some(tail)) = (json.get(..at), json.get(at + 1..)) {
            fuzz_notebook_json(format!("{head}{with}{tail}").as_bytes());
        }
    }
}
