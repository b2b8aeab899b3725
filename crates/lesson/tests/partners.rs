//! Two partners mark in turn: what the first placed is covered until the second's marks are in, and nothing of it is lost.

use crate::support;

use layercast_lesson::action::Action;
use layercast_lesson::document::{MarkName, Notebook, Screen};
use layercast_lesson::{act, look, prepare, scene};
use support::{doing, notebook};

fn placed(notebook: &Notebook, depths: [&str; 3]) -> Notebook {
    let marks = [MarkName::Mixed, MarkName::Thermocline, MarkName::Deep].into_iter().zip(depths);
    let act_of = |(mark, depth): (MarkName, &str)| match depth {
        "" => Action::RefuseMark { mark, refused: true },
        depth => Action::TypeMark { mark, text: depth.to_owned() },
    };
    doing(notebook, &marks.map(act_of).collect::<Vec<_>>())
}

fn said(notebook: &Notebook) -> Vec<String> {
    look(notebook).profile.partner.0.into_iter().map(|said| said.id).collect()
}

#[test]
fn the_first_marks_are_covered_until_the_second_are_in() {
    let water = notebook("group_c");
    assert_eq!(act(&water, &Action::HandOver), water, "not before all three stand");
    let first = placed(&water, ["2.31", "4.27", ""]);
    assert!(look(&first).profile.partner.1.is_some());
    let covered = act(&first, &Action::HandOver);
    assert_eq!(said(&covered), ["profile-partner-covered"]);
    // Nowhere on the page, in no picture.
    for screen in [Screen::Log, Screen::Profile, Screen::Questions, Screen::Report] {
        let at = act(&covered, &Action::Go { screen, question: None });
        let page = serde_json::to_string(&look(&at)).unwrap();
        assert!(!page.contains("2.31") && !page.contains("4.27"), "{screen:?}");
        let marks = scene(&at, &prepare(&at), screen).marks.unwrap_or_default();
        assert_eq!((marks.mixed.depth_m, marks.deep.refused), (None, false));
    }
    assert_eq!(act(&covered, &Action::HandOver), covered, "once");
    let both = placed(&covered, ["2.5", "", "6"]);
    assert_eq!(said(&both), ["profile-partner-mark"; 3]);
    let page = serde_json::to_string(&look(&both)).unwrap();
    assert!(page.contains("2.31") && page.contains("4.27"), "both stand there now");
    // The check goes by what stands in the fields; the first ones stay in the report.
    let checked = act(&both, &Action::CheckMarks { early: true });
    let sheet = &checked.sheets[0];
    assert_eq!(sheet.first_marks.as_ref().unwrap().mixed.depth_m, Some(2.5));
    assert_eq!(sheet.partner.as_ref().unwrap().mixed.depth_m, Some(2.31));
    let report = act(&checked, &Action::Go { screen: Screen::Report, question: None });
    assert!(serde_json::to_string(&look(&report).report).unwrap().contains("report-partner"));
    assert_eq!(Notebook::from_json(&checked.to_json()).unwrap(), checked);
}

#[test]
fn marks_come_back_while_the_partner_has_none() {
    let first = placed(&notebook("group_c"), ["2.5", "4", "6"]);
    let covered = act(&first, &Action::HandOver);
    assert_eq!(act(&covered, &Action::HandBack), first);
    let begun = doing(&covered, &[Action::TypeMark { mark: MarkName::Deep, text: "6".to_owned() }]);
    assert_eq!(act(&begun, &Action::HandBack), begun);
    // What was checked is no secret any more.
    let checked = act(&first, &Action::CheckMarks { early: true });
    assert_eq!(act(&checked, &Action::HandOver), checked);
    assert!(look(&checked).profile.partner.1.is_none());
}
