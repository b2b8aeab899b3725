//! An action as it comes from the page or a journal: `{ "do": "set_cell", … }`.
//!
//! Written out, since what serde derives for a tagged enum first gathers every field untyped: a seventh of the module the
//! page has to load was that.

use super::{Action, GuessField, HandKey, MarkKey, Spot};
use crate::document::{MarkName, ReportPart, Screen};
use layercast_exchange::document::{
    CompanionField, CorrectionField, CorrectionKind, LegChoice, LegDoc, Role, Unit,
};
use serde::{Deserialize, Deserializer, de};

/// Every field that some action has.
#[derive(Default, Deserialize)]
#[serde(default)]
struct Fields {
    r#do: String,
    screen: Option<Screen>,
    question: Option<usize>,
    text: Option<String>,
    column: Option<usize>,
    role: Option<Role>,
    unit: Option<Unit>,
    way: Option<usize>,
    leg: Option<Way>,
    entry: Option<usize>,
    entries: Option<Vec<usize>>,
    depth_m: Option<f64>,
    value_c: Option<f64>,
    value_m: Option<f64>,
    mark: Option<MarkName>,
    y_px: Option<f64>,
    surface_y_px: Option<f64>,
    px_per_m: Option<f64>,
    key: Option<MarkKey>,
    refused: Option<bool>,
    early: Option<bool>,
    again: Option<bool>,
    field: Option<String>,
    companion: Option<CompanionField>,
    kind: Option<CorrectionKind>,
    correction: Option<usize>,
    input: Option<CorrectionField>,
    part: Option<ReportPart>,
    point: Option<usize>,
    guess: Option<GuessField>,
    spot: Option<Spot>,
    hand: Option<HandKey>,
}

/// A reading's way, or what is chosen for a whole series.
#[derive(Clone, Copy, Deserialize)]
#[serde(rename_all = "snake_case")]
enum Way {
    Down,
    Up,
    Unknown,
    Open,
    DownThenUp,
}

impl Way {
    fn of_reading(self) -> Option<LegDoc> {
        match self {
            Self::Down => Some(LegDoc::Down),
            Self::Up => Some(LegDoc::Up),
            Self::Unknown => Some(LegDoc::Unknown),
            Self::Open | Self::DownThenUp => None,
        }
    }

    fn of_series(self) -> Option<LegChoice> {
        match self {
            Self::Down => Some(LegChoice::Down),
            Self::Up => Some(LegChoice::Up),
            Self::Open => Some(LegChoice::Open),
            Self::DownThenUp => Some(LegChoice::DownThenUp),
            Self::Unknown => None,
        }
    }
}

impl<'de> Deserialize<'de> for Action {
    fn deserialize<D: Deserializer<'de>>(from: D) -> Result<Self, D::Error> {
        Fields::deserialize(from)?.action().ok_or_else(|| de::Error::custom("not an action"))
    }
}

impl Fields {
    /// The action, if it is one and has all its fields.
    fn action(self) -> Option<Action> {
        let Self { screen, question, text, column, role, unit, way, leg, entry, entries, .. } = self;
        let Self { depth_m, value_c, value_m, mark, y_px, surface_y_px, px_per_m, .. } = self;
        let Self { key, refused, early, again, field, companion, kind, correction, input, part, .. } = self;
        let Self { point, guess, spot, hand, .. } = self;
        Some(match self.r#do.as_str() {
            "go" => Action::Go { screen: screen?, question },
            "paste" => Action::Paste { text: text? },
            "take_file" => Action::TakeFile { text: text? },
            "take_lesson" => Action::TakeLesson { text: text? },
            "take_example" => Action::TakeExample { text: text? },
            "open_table" => Action::OpenTable,
            "set_role" => Action::SetRole { column: column?, role: role? },
            "set_unit" => Action::SetUnit { column: column?, unit: unit? },
            "answer_table" => Action::AnswerTable { way: way? },
            "set_leg" => Action::SetLeg { leg: leg?.of_series()? },
            "use_table" => Action::UseTable,
            "drop_table" => Action::DropTable,
            "set_cell" => Action::SetCell { entry, depth_m: depth_m?, leg: leg?.of_reading()?, text: text? },
            "read_temps" => Action::ReadTemps { unit: unit? },
            "set_depth" => Action::SetDepth { entries: entries?, text: text? },
            "make_temp" => Action::MakeTemp { entry: entry?, value_c: value_c?, text: text? },
            "make_depth" => Action::MakeDepth { entry: entry?, value_m: value_m?, text: text? },
            "leave_out" => Action::LeaveOut { entries: entries? },
            "keep" => Action::Keep { entries: entries? },
            "reconsider" => Action::Reconsider { entries: entries? },
            "set_oxygen" => Action::SetOxygen { entry, depth_m: depth_m?, text: text? },
            "set_companion" => Action::SetCompanion { companion: companion?, text: text? },
            "add_correction" => Action::AddCorrection { kind: kind? },
            "take_lag" => Action::TakeLag,
            "set_correction" => Action::SetCorrection { correction: correction?, input: input?, text: text? },
            "remove_correction" => Action::RemoveCorrection { correction: correction? },
            "undo" => Action::Undo,
            "set_water" => Action::SetWater { text: text? },
            "set_group" => Action::SetGroup { text: text? },
            "set_seat" => Action::SetSeat { text: text? },
            "set_class" => Action::SetClass { text: text? },
            "set_bed" => Action::SetBed { text: text? },
            "add_mark" => Action::AddMark,
            "set_guess" => Action::SetGuess { point: point?, guess: guess?, text: text? },
            "place_guess" => Action::PlaceGuess { spot: spot? },
            "place_by_hand" => Action::PlaceByHand { point: point?, spot: spot? },
            "key_by_hand" => Action::KeyByHand { point: point?, hand: hand? },
            "check_by_hand" => Action::CheckByHand,
            "draw_rest" => Action::DrawRest,
            "type_mark" => Action::TypeMark { mark: mark?, text: text? },
            "type_give" => Action::TypeGive { mark: mark?, text: text? },
            "drag_mark" => Action::DragMark {
                mark: mark?,
                y_px: y_px?,
                surface_y_px: surface_y_px?,
                px_per_m: px_per_m?,
            },
            "key_mark" => Action::KeyMark { mark: mark?, key: key? },
            "refuse_mark" => Action::RefuseMark { mark: mark?, refused: refused? },
            "no_layers" => Action::NoLayers,
            "hand_over" => Action::HandOver,
            "hand_back" => Action::HandBack,
            "check_marks" => Action::CheckMarks { early: early? },
            "show_marks" => Action::ShowMarks { again: again? },
            "set_field" => Action::SetField { question: question?, field: field?, text: text? },
            "drag_field" => Action::DragField {
                question: question?,
                field: field?,
                y_px: y_px?,
                surface_y_px: surface_y_px?,
                px_per_m: px_per_m?,
            },
            "key_field" => Action::KeyField { question: question?, field: field?, key: key? },
            "set_reason" => Action::SetReason { question: question?, text: text? },
            "set_own_words" => Action::SetOwnWords { question: question?, text: text? },
            "check" => Action::Check { question: question? },
            "cannot_tell" => Action::CannotTell { question: question? },
            "hint" => Action::Hint { question: question? },
            "show_me" => Action::ShowMe { question: question? },
            "answer_again" => Action::AnswerAgain { question: question? },
            "take_other" => Action::TakeOther { text: text? },
            "remove_other" => Action::RemoveOther,
            "set_report" => Action::SetReport { part: part?, text: text? },
            _ => return None,
        })
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    /// One of every kind, with values that no default has.
    fn all() -> Vec<Action> {
        let text = || "x".to_owned();
        let entries = || vec![3, 5];
        let (question, mark) = (2, MarkName::Deep);
        let (y_px, surface_y_px, px_per_m) = (91.5, 20.25, 30.125);
        vec![
            Action::Go { screen: Screen::Profile, question: Some(4) },
            Action::Go { screen: Screen::Questions, question: None },
            Action::Paste { text: text() },
            Action::TakeFile { text: text() },
            Action::TakeExample { text: text() },
            Action::OpenTable,
            Action::SetRole { column: 1, role: Role::Depth },
            Action::SetUnit { column: 1, unit: Unit::Ft },
            Action::AnswerTable { way: 1 },
            Action::SetLeg { leg: LegChoice::Down },
            Action::SetLeg { leg: LegChoice::Up },
            Action::SetLeg { leg: LegChoice::Open },
            Action::SetLeg { leg: LegChoice::DownThenUp },
            Action::UseTable,
            Action::DropTable,
            Action::SetCell { entry: Some(7), depth_m: 1.5, leg: LegDoc::Up, text: text() },
            Action::SetCell { entry: None, depth_m: 1.5, leg: LegDoc::Down, text: text() },
            Action::SetCell { entry: None, depth_m: 1.5, leg: LegDoc::Unknown, text: text() },
            Action::ReadTemps { unit: Unit::F },
            Action::SetDepth { entries: entries(), text: text() },
            Action::MakeTemp { entry: 7, value_c: 17.7, text: text() },
            Action::MakeDepth { entry: 7, value_m: 4.25, text: text() },
            Action::LeaveOut { entries: entries() },
            Action::Keep { entries: entries() },
            Action::Reconsider { entries: entries() },
            Action::SetOxygen { entry: Some(7), depth_m: 1.5, text: text() },
            Action::SetOxygen { entry: None, depth_m: 1.5, text: text() },
            Action::SetCompanion { companion: CompanionField::SecchiBack, text: text() },
            Action::AddCorrection { kind: CorrectionKind::Slant },
            Action::TakeLag,
            Action::SetCorrection { correction: 3, input: CorrectionField::AboveWater, text: text() },
            Action::RemoveCorrection { correction: 3 },
            Action::Undo,
            Action::SetWater { text: text() },
            Action::SetGroup { text: text() },
            Action::SetBed { text: text() },
            Action::AddMark,
            Action::SetGuess { point: 3, guess: GuessField::Temp, text: text() },
            Action::PlaceGuess {
                spot: Spot { x_px: 200.5, y_px, zero_x_px: 80.0, px_per_c: 12.5, surface_y_px, px_per_m },
            },
            Action::TypeMark { mark, text: text() },
            Action::TypeGive { mark, text: text() },
            Action::DragMark { mark, y_px, surface_y_px, px_per_m },
            Action::KeyMark { mark, key: MarkKey::MarkDown },
            Action::RefuseMark { mark, refused: true },
            Action::NoLayers,
            Action::CheckMarks { early: true },
            Action::ShowMarks { again: true },
            Action::SetField { question, field: text(), text: text() },
            Action::DragField { question, field: text(), y_px, surface_y_px, px_per_m },
            Action::KeyField { question, field: text(), key: MarkKey::Home },
            Action::SetReason { question, text: text() },
            Action::SetOwnWords { question, text: text() },
            Action::Check { question },
            Action::CannotTell { question },
            Action::Hint { question },
            Action::ShowMe { question },
            Action::AnswerAgain { question },
            Action::TakeOther { text: text() },
            Action::RemoveOther,
            Action::SetReport { part: ReportPart::Reasoning, text: text() },
        ]
    }

    #[test]
    fn every_action_is_read_as_it_is_written() {
        for action in all() {
            let written = serde_json::to_string(&action).unwrap();
            assert_eq!(serde_json::from_str::<Action>(&written).ok(), Some(action), "{written}");
        }
    }

    #[test]
    fn what_is_no_action_or_lacks_a_field_is_refused() {
        for text in [
            "{}",
            "null",
            "[]",
            r#"{"do":"fly"}"#,
            r#"{"do":"paste"}"#,
            r#"{"do":"paste","text":7}"#,
            r#"{"do":"set_leg","leg":"unknown"}"#,
            r#"{"do":"set_cell","depth_m":1,"leg":"open","text":""}"#,
            r#"{"do":"key_mark","mark":"deep","key":"left"}"#,
        ] {
            assert!(serde_json::from_str::<Action>(text).is_err(), "{text}");
        }
    }
}
