//! One thing a person did, and the notebook after it.

mod answers;
mod by_hand;
mod cells;
mod code;
mod companions;
mod corrections;
mod guess;
mod lesson;
mod marks;
mod other;
pub(crate) use other::cast_in;
mod scale;
mod table;
mod undo;

use crate::action::Action;
use crate::document::{MOST_CELL_CHARS, MOST_MARKS, Notebook};
use crate::prepared::Ready;
use crate::view::Look;
use layercast_exchange::document::Origin;

/// The notebook after an action.
///
/// Total: an action that makes no sense (a reading that is not there, a button that waits) changes nothing. What was
/// typed is kept also where it cannot be read; only its first 400 signs in a cell and 20,000 in one's own words.
pub fn act(notebook: &Notebook, action: &Action) -> Notebook {
    act_with(notebook.clone(), action, &mut Ready::default())
}

/// The notebook after an action and how it looks: [`act`] and [`crate::look`], with what both need found out once.
pub fn step(notebook: Notebook, action: &Action) -> (Notebook, Look) {
    step_with(notebook, action, None)
}

/// [`step`] with the ranges that trials came to (see [`crate::ranges`]).
pub fn step_with(notebook: Notebook, action: &Action, ranges: Option<&str>) -> (Notebook, Look) {
    let mut ready = Ready::with(ranges);
    let next = act_with(notebook, action, &mut ready);
    let prepared = ready.into_prepared(&next);
    let look = crate::look_with(&next, &prepared);
    (next, look)
}

fn act_with(mut next: Notebook, action: &Action, ready: &mut Ready) -> Notebook {
    guess::seal(&mut next);
    let before = changes_cast(action).then(|| next.cast.clone());
    match action {
        Action::Go { screen, question } => {
            next.place.screen = *screen;
            next.place.question = question.unwrap_or(next.place.question);
        }
        Action::SetWater { text } => next.cast.water = kept(text, MOST_CELL_CHARS),
        Action::SetGroup { text } => {
            next.cast.group = kept(text, MOST_CELL_CHARS);
            next.code = code::of_group(&next.code, &next.cast.group);
        }
        Action::SetSeat { text } => {
            if let Some(sheet) = next.sheets.first_mut() {
                sheet.seat = kept(text, MOST_CODE_CHARS);
            }
        }
        Action::SetClass { text } => {
            if let Some(sheet) = next.sheets.first_mut() {
                sheet.class = kept(text, MOST_CODE_CHARS);
            }
        }
        Action::SetBed { text } => {
            next.bed_text = kept(text, MOST_CELL_CHARS);
            next.cast.bed_m = crate::marks::typed_depth_m(text).filter(|bed_m| *bed_m > 0.0);
        }
        Action::SetGuess { point, guess, text } => guess::set(&mut next, *point, *guess, text),
        Action::PlaceGuess { spot } => guess::place(&mut next, spot),
        Action::PlaceByHand { point, spot } => by_hand::place(&mut next, *point, spot, ready),
        Action::KeyByHand { point, hand } => by_hand::key(&mut next, *point, *hand, ready),
        Action::CheckByHand => by_hand::check(&mut next),
        Action::DrawRest => by_hand::draw(&mut next),
        Action::AddMark => next.mark_count = next.mark_count.saturating_add(1).min(MOST_MARKS),

        Action::Paste { text } => table::take(&mut next, text, Origin::Paste, ready),
        Action::TakeFile { text } => table::take(&mut next, text, Origin::File, ready),
        Action::TakeExample { text } => table::take(&mut next, text, Origin::Example, ready),
        Action::OpenTable => table::open(&mut next),
        Action::SetRole { column, role } => table::set_role(&mut next, *column, *role),
        Action::SetUnit { column, unit } => table::set_unit(&mut next, *column, *unit),
        Action::AnswerTable { way } => table::answer(&mut next, *way),
        Action::SetLeg { leg } => table::set_leg(&mut next, *leg, ready),
        Action::UseTable => table::use_pending(&mut next, ready),
        Action::DropTable => next.pending = None,

        Action::SetCell { entry, depth_m, leg, text } => {
            cells::set_cell(&mut next, *entry, *depth_m, *leg, text)
        }
        Action::ReadTemps { unit } => scale::read_temps(&mut next, *unit),
        Action::SetDepth { entries, text } => cells::set_depth(&mut next, entries, text),
        Action::MakeTemp { entry, value_c, text } => cells::make_temp(&mut next, *entry, *value_c, text),
        Action::MakeDepth { entry, value_m, text } => cells::make_depth(&mut next, *entry, *value_m, text),
        Action::LeaveOut { entries } => cells::leave_out(&mut next, entries),
        Action::Keep { entries } => cells::keep(&mut next, entries),
        Action::Reconsider { entries } => cells::reconsider(&mut next, entries),
        Action::SetOxygen { entry, depth_m, text } => {
            companions::set_oxygen(&mut next, *entry, *depth_m, text)
        }
        Action::SetCompanion { companion, text } => companions::set(&mut next, *companion, text),
        Action::AddCorrection { kind } => corrections::add(&mut next, *kind),
        Action::TakeLag => corrections::take_lag(&mut next, ready),
        Action::SetCorrection { correction, input, text } => {
            corrections::set(&mut next, *correction, *input, text)
        }
        Action::RemoveCorrection { correction } => corrections::remove(&mut next, *correction),
        Action::Undo => undo::undo(&mut next),

        Action::TakeLesson { text } => lesson::take(&mut next, text),
        Action::TypeMark { mark, text } => marks::type_depth(&mut next, *mark, text, ready),
        Action::TypeGive { mark, text } => marks::type_give(&mut next, *mark, text),
        Action::DragMark { mark, y_px, surface_y_px, px_per_m } => {
            marks::drag(&mut next, *mark, *y_px, *surface_y_px, *px_per_m, ready)
        }
        Action::KeyMark { mark, key } => marks::key(&mut next, *mark, *key, ready),
        Action::RefuseMark { mark, refused } => marks::refuse(&mut next, *mark, *refused, ready),
        Action::NoLayers => marks::no_layers(&mut next, ready),
        Action::HandOver => marks::hand_over(&mut next),
        Action::HandBack => marks::hand_back(&mut next),
        Action::CheckMarks { early } => marks::check(&mut next, *early, ready),
        Action::ShowMarks { again } => marks::show(&mut next, *again),

        Action::SetField { question, field, text } => {
            answers::set_field(&mut next, *question, field, text, ready)
        }
        Action::DragField { question, field, y_px, surface_y_px, px_per_m } => {
            answers::drag_field(&mut next, *question, field, *y_px, *surface_y_px, *px_per_m, ready)
        }
        Action::KeyField { question, field, key } => {
            answers::key_field(&mut next, *question, field, *key, ready)
        }
        Action::SetReason { question, text } => answers::set_reason(&mut next, *question, text, ready),
        Action::SetOwnWords { question, text } => answers::set_own_words(&mut next, *question, text, ready),
        Action::Check { question } => answers::check(&mut next, *question, ready),
        Action::CannotTell { question } => answers::cannot_tell(&mut next, *question, ready),
        Action::Hint { question } => answers::hint(&mut next, *question, ready),
        Action::ShowMe { question } => answers::show_me(&mut next, *question, ready),
        Action::AnswerAgain { question } => answers::answer_again(&mut next, *question, ready),
        Action::TakeOther { text } => other::take(&mut next, text),
        Action::RemoveOther => other::remove(&mut next),
        Action::SetReport { part, text } => {
            if let Some(sheet) = next.sheets.first_mut() {
                *sheet.report.get_mut(*part) = kept(text, part.most_chars());
            }
        }
    }
    if before.is_some_and(|before| before != next.cast) {
        ready.cast_changed();
        marks::settle_again(&mut next, ready);
    }
    guess::seal(&mut next);
    next
}

/// Longest code of a seat or class, characters: too short for most names, which no code is.
const MOST_CODE_CHARS: usize = 12;

/// Whether an action may change the cast; all others leave it as it is.
fn changes_cast(action: &Action) -> bool {
    match action {
        Action::SetWater { .. }
        | Action::SetGroup { .. }
        | Action::SetBed { .. }
        | Action::Paste { .. }
        | Action::TakeFile { .. }
        | Action::TakeExample { .. }
        | Action::SetLeg { .. }
        | Action::UseTable
        | Action::SetCell { .. }
        | Action::ReadTemps { .. }
        | Action::SetDepth { .. }
        | Action::MakeTemp { .. }
        | Action::MakeDepth { .. }
        | Action::LeaveOut { .. }
        | Action::Keep { .. }
        | Action::Reconsider { .. }
        | Action::SetOxygen { .. }
        | Action::SetCompanion { .. }
        | Action::AddCorrection { .. }
        | Action::TakeLag
        | Action::SetCorrection { .. }
        | Action::RemoveCorrection { .. }
        | Action::Undo => true,
        Action::Go { .. }
        | Action::AddMark
        | Action::SetGuess { .. }
        | Action::PlaceGuess { .. }
        | Action::PlaceByHand { .. }
        | Action::KeyByHand { .. }
        | Action::CheckByHand
        | Action::DrawRest
        | Action::TakeLesson { .. }
        | Action::SetSeat { .. }
        | Action::SetClass { .. }
        | Action::OpenTable
        | Action::SetRole { .. }
        | Action::SetUnit { .. }
        | Action::AnswerTable { .. }
        | Action::DropTable
        | Action::TypeMark { .. }
        | Action::TypeGive { .. }
        | Action::DragMark { .. }
        | Action::KeyMark { .. }
        | Action::RefuseMark { .. }
        | Action::NoLayers
        | Action::HandOver
        | Action::HandBack
        | Action::CheckMarks { .. }
        | Action::ShowMarks { .. }
        | Action::SetField { .. }
        | Action::DragField { .. }
        | Action::KeyField { .. }
        | Action::SetReason { .. }
        | Action::SetOwnWords { .. }
        | Action::Check { .. }
        | Action::CannotTell { .. }
        | Action::Hint { .. }
        | Action::ShowMe { .. }
        | Action::AnswerAgain { .. }
        | Action::TakeOther { .. }
        | Action::RemoveOther
        | Action::SetReport { .. } => false,
    }
}

/// The beginning of a text, as much of it as is kept.
fn kept(text: &str, most_chars: usize) -> String {
    text.chars().take(most_chars).collect()
}
