//! Log: the readings, what is doubted about them, and the table that waits.

use super::doubts::{Block, doubt_of, doubts, settled};
use super::facts::assumed;
use super::{MOST_DOUBTS, Sight, by_hand, companions, corrections, pending, rows, scale, way};
use crate::action::Action;
use crate::document::{GUESS_POINTS, Lesson, Screen, UndoWhat, another_cast};
use crate::numbers::{WithNum, mark};
use crate::tables;
use crate::view::{GuessRow, LegChoiceView, LogView, PendingView, Said, Way};
use layercast_core::Message;
use layercast_exchange::document::{CastDoc, LegChoice, LegDoc, Origin, Unit};

/// Log.
pub fn view(sight: &Sight) -> LogView {
    let mut blocks = doubts(sight);
    let scale_doubt = scale::doubt(sight);
    let asks_scale = scale_doubt.is_some();
    blocks.splice(0..0, scale_doubt.map(Block::of_all));
    let shown = blocks.len().min(MOST_DOUBTS);
    let table = rows::table(sight, &doubt_of(&blocks, shown));
    let pending = pending::view(sight);
    let leg_choice = leg_choice(sight);
    let not_yet = not_yet(sight);
    let one_cell_each = blocks.iter().skip(usize::from(asks_scale)).all(|block| block.entries.len() == 1);
    let title = title(
        sight,
        pending.as_ref(),
        leg_choice.is_some(),
        not_yet.is_some(),
        (blocks.len(), one_cell_each),
        asks_scale,
    );
    let more_doubts = blocks.len() - shown;
    blocks.truncate(shown);
    let mut decided = settled(sight);
    decided.splice(0..0, scale::settled(sight));
    let more_settled = decided.len().saturating_sub(MOST_DOUBTS);
    decided.truncate(MOST_DOUBTS);
    let (understood, mut notices) = as_read(sight);
    // Doubts come first; where there are any, the panel has no room for it.
    if blocks.is_empty() && more_doubts == 0 && table.rows.iter().any(|row| row.apart.is_some()) {
        notices.push(Message::new("log-word-apart").into());
    }
    LogView {
        title: title.into(),
        example: is_example(&sight.notebook.cast).then(|| Message::new("log-example").into()),
        understood,
        notices,
        can_reopen: sight.notebook.cast.source.as_ref().is_some_and(|source| !source.text.is_empty()),
        undo: undo(sight),
        one_column: table.one_column,
        fahrenheit: sight.notebook.cast.temps_in == Some(Unit::F),
        lesson: lesson(sight),
        guess: guess(sight),
        by_hand: by_hand::view(sight),
        other: other(sight),
        corrections: corrections::view(sight),
        companions: companions::view(sight, &table.rows),
        first_row: table.first,
        row_count: table.rows.len().saturating_add(table.more),
        rows: table.rows,
        doubts: blocks.into_iter().map(|block| block.view).collect(),
        settled: decided,
        pending,
        leg_choice,
        not_yet,
        bed_text: bed_text(sight),
        more_rows: more(table.more, "log-rows-not-listed"),
        more_doubts: more(more_doubts, "log-doubts-not-listed"),
        more_settled: more(more_settled, "log-settled-not-listed"),
    }
}

/// The teacher's lesson that is on, while no reading is in.
fn lesson(sight: &Sight) -> Option<Said> {
    let lesson = &sight.notebook.lesson;
    let waits = sight.notebook.cast.entries.is_empty() && lesson.id != Lesson::first().id;
    let said = || match lesson.title.as_str() {
        "" => Message::new("log-lesson-on-untitled"),
        title => Message::new("log-lesson-on").text("title", title),
    };
    waits.then(|| said().count("count", lesson.kinds.len()).into())
}

/// The fields of the guess, while it may change.
fn guess(sight: &Sight) -> Option<Vec<GuessRow>> {
    let row = |at: usize| {
        let point = sight.context.sheet.guess.get(at).cloned().unwrap_or_default();
        let typed = |text: &str, is_read: bool| !text.trim().is_empty() && !is_read;
        GuessRow {
            depth_unread: typed(&point.depth_text, point.depth_m.is_some()),
            temp_unread: typed(&point.temp_text, point.temp_c.is_some()),
            depth: point.depth_text,
            temp: point.temp_text,
        }
    };
    sight.notebook.may_guess().then(|| (0..GUESS_POINTS).map(row).collect())
}

/// Another group's cast.
fn other(sight: &Sight) -> (Said, bool) {
    let sheet = sight.context.sheet;
    (another_said(another_cast(sheet, &sight.notebook.lesson)), sheet.other.is_some())
}

/// What is held of another group.
pub(crate) fn another_said(cast: Option<&CastDoc>) -> Said {
    let Some(cast) = cast else { return Message::new("log-other-none").into() };
    let depths = cast.entries.iter().filter_map(|entry| entry.depth.current());
    let last_m = depths.filter(|depth_m| depth_m.is_finite()).fold(0.0, f64::max);
    let said = match cast.group.trim() {
        "" => Message::new("log-other"),
        group => Message::new("log-other-group").text("group", group),
    };
    said.count("count", cast.entries.len()).num("last", mark(last_m)).into()
}

fn more(count: usize, id: &'static str) -> Option<Said> {
    (count > 0).then(|| Message::new(id).count("count", count).into())
}

fn title(
    sight: &Sight,
    pending: Option<&PendingView>,
    asks_leg: bool,
    not_yet: bool,
    (doubts, one_cell_each): (usize, bool),
    asks_scale: bool,
) -> Message {
    let used = sight.context.analysis.checked.iter().filter(|checked| checked.used).count();
    match pending {
        Some(pending) if pending.is_error => return Message::new("log-title-no-table"),
        Some(pending) if pending.question.is_some() => return Message::new("log-title-question"),
        Some(_) => return Message::new("log-title-table"),
        None => {}
    }
    if sight.notebook.cast.entries.is_empty() {
        Message::new("log-title-empty")
    } else if asks_scale {
        Message::new("log-title-fahrenheit")
    } else if doubts > 0 && one_cell_each {
        Message::new("log-title-cells").count("count", doubts)
    } else if doubts > 0 {
        Message::new("log-title-places").count("count", doubts)
    } else if not_yet {
        Message::new("log-title-not-yet")
    } else if asks_leg {
        Message::new("log-title-one-temperature")
    } else {
        Message::new("log-title-settled").count("count", used)
    }
}

/// Notices that the doubts and the choice of a way say themselves, and say anew when something is settled.
const SAID_ELSEWHERE: [&str; 6] = [
    "read-doubt",
    "read-doubt-meant",
    "read-notice-more-doubts",
    "read-notice-outside",
    "read-notice-way-open",
    "read-notice-one-way",
];

/// "Read 20 rows …" and the reader's notices. Only while Log is in sight: the table may be read again for them.
fn as_read(sight: &Sight) -> (Option<Said>, Vec<Said>) {
    let source = sight.notebook.cast.source.as_ref().filter(|source| !source.text.is_empty());
    let Some(source) = source.filter(|_| sight.notebook.place.screen == Screen::Log) else {
        return (None, Vec::new());
    };
    let read = sight.prepared.read(source);
    let notices = read.messages.iter().filter(|notice| !SAID_ELSEWHERE.contains(&notice.id));
    (read.understood.clone().map(Into::into), notices.cloned().map(Into::into).collect())
}

/// The readings are those of one of the examples.
pub fn is_example(cast: &CastDoc) -> bool {
    cast.source.as_ref().is_some_and(|source| source.origin == Origin::Example)
}

fn undo(sight: &Sight) -> Option<Way> {
    let last = sight.notebook.undo.last()?;
    let is_said = |cast: &CastDoc| cast.temps_in == Some(Unit::F);
    let label = match last.what {
        UndoWhat::Settle if is_said(&sight.notebook.cast) && !is_said(&last.cast) => "log-undo-fahrenheit",
        UndoWhat::Paste => "log-undo-paste",
        UndoWhat::File => "log-undo-file",
        UndoWhat::Example => "log-undo-example",
        UndoWhat::Cell => "log-undo-cell",
        UndoWhat::Settle => "log-undo-settle",
        UndoWhat::Correction => "log-undo-correction",
        UndoWhat::Change => "log-undo-change",
    };
    Some(way(label, Action::Undo))
}

/// The way of a single series is not written, and nobody has said it or left it open.
fn leg_choice(sight: &Sight) -> Option<LegChoiceView> {
    let cast = &sight.notebook.cast;
    let unknown = !cast.entries.is_empty() && cast.entries.iter().all(|entry| entry.leg == LegDoc::Unknown);
    if !unknown || tables::choices(cast).leg.is_some() {
        return None;
    }
    Some(LegChoiceView {
        title: Message::new("log-leg-title").into(),
        text: Message::new("log-leg-text").num("assumed", assumed(&sight.context.analysis.pairs)).into(),
        ways: vec![
            way("log-leg-open", Action::SetLeg { leg: LegChoice::Open }),
            way("log-leg-down", Action::SetLeg { leg: LegChoice::Down }),
            way("log-leg-up", Action::SetLeg { leg: LegChoice::Up }),
        ],
    })
}

fn not_yet(sight: &Sight) -> Option<Said> {
    let nothing = !sight.notebook.cast.entries.is_empty() && sight.context.analysis.profile.is_empty();
    nothing.then(|| Message::new("log-not-yet").into())
}

/// The bed as typed; of an older notebook the depth itself.
fn bed_text(sight: &Sight) -> String {
    match sight.notebook.cast.bed_m {
        Some(bed_m) if sight.notebook.bed_text.is_empty() => crate::marks::depth_text(bed_m),
        _ => sight.notebook.bed_text.clone(),
    }
}
