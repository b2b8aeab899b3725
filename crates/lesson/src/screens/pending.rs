//! The table view: a pasted table as it came, what was understood, and its question.

use super::{Sight, way};
use crate::action::Action;
use crate::document::MOST_TABLE_ENTRIES;
use crate::tables;
use crate::view::{PendingColumn, PendingQuestion, PendingRow, PendingView, Said};
use layercast_core::Message;
use layercast_exchange::document::Origin;
use layercast_exchange::read::{Outcome, Row, RowKind, TableRead};

/// Rows shown of the table.
const SHOWN_ROWS: usize = 11;
/// Cells shown of a row, and signs of a cell.
const SHOWN_CELLS: usize = 20;
const SHOWN_CHARS: usize = 60;

/// The table that waits, if there is one.
pub fn view(sight: &Sight) -> Option<PendingView> {
    let source = sight.notebook.pending.as_ref()?;
    let read = sight.prepared.read(source);
    let too_long = tables::is_too_long(&read).then(|| {
        Message::new("log-too-many-readings")
            .count("count", read.entries.len())
            .count("most", MOST_TABLE_ENTRIES)
            .into()
    });
    let mut use_table = way("log-use-this-table", Action::UseTable);
    use_table.main = true;
    use_table.waits = if tables::is_clear(&read) { None } else { Some(Message::new("log-use-waits").into()) };
    Some(PendingView {
        head: match read.outcome {
            Outcome::Error => Message::new("log-nothing-taken").into(),
            _ => Message::new("log-pending-head").count("rows", readings(&read)).into(),
        },
        columns: read.columns.iter().take(SHOWN_CELLS).map(column).collect(),
        rows: read.rows.iter().take(SHOWN_ROWS).map(row).collect(),
        more: more(&read),
        question: question(&read),
        is_error: read.outcome == Outcome::Error || too_long.is_some(),
        notices: too_long.into_iter().chain(read.messages.iter().cloned().map(Into::into)).collect(),
        understood: read.understood.clone().map(Into::into),
        gives: read.gives.clone().map(Into::into),
        use_table,
        drop: way(drop(sight, source.origin), Action::DropTable),
    })
}

/// What leaving the table is called: with readings in the notebook they stay, else the table goes as it came.
fn drop(sight: &Sight, origin: Origin) -> &'static str {
    match origin {
        _ if !sight.notebook.cast.entries.is_empty() => "log-leave-as-it-was",
        Origin::Paste => "log-undo-paste",
        Origin::File => "log-undo-file",
        Origin::Example => "log-undo-example",
    }
}

/// Rows that hold readings; beyond the rows at hand all are taken for such.
fn readings(read: &TableRead) -> usize {
    let at_hand = read.rows.iter().filter(|row| row.kind == RowKind::Reading).count();
    at_hand + read.row_count.saturating_sub(read.rows.len())
}

fn column(column: &layercast_exchange::read::Column) -> PendingColumn {
    PendingColumn {
        role: column.role,
        role_open: column.role_open,
        unit: column.unit,
        unit_open: column.unit_open,
    }
}

fn row(row: &Row) -> PendingRow {
    let skipped = match row.kind {
        RowKind::Reading => None,
        RowKind::Title => Some("log-skipped-title"),
        RowKind::Head => Some("log-skipped-head"),
        RowKind::Units => Some("log-skipped-units"),
        RowKind::Blank => Some("log-skipped-blank"),
        RowKind::Total => Some("log-skipped-total"),
    };
    // A title is one text, also where its commas were taken for the table's.
    let title = || row.cells.iter().map(|cell| cell.trim()).filter(|cell| !cell.is_empty());
    let cells = match row.kind {
        RowKind::Title => vec![title().take(SHOWN_CELLS).collect::<Vec<_>>().join(", ")],
        _ => row.cells.iter().take(SHOWN_CELLS).cloned().collect(),
    };
    PendingRow {
        line: row.line,
        cells: cells.iter().map(|cell| cell.chars().take(SHOWN_CHARS).collect()).collect(),
        skipped: skipped.map(|id| Message::new(id).into()),
    }
}

/// "11 more rows like these, to line 22".
fn more(read: &TableRead) -> Option<Said> {
    let more = read.row_count.saturating_sub(read.rows.len().min(SHOWN_ROWS));
    let at_hand = read.rows.last().map_or(0, |row| row.line);
    let last_line = if read.row_count > read.rows.len() { at_hand.max(read.row_count) } else { at_hand };
    (more > 0).then(|| Message::new("log-more-rows").count("rows", more).count("line", last_line).into())
}

fn question(read: &TableRead) -> Option<PendingQuestion> {
    let question = read.question.clone()?;
    let ways = question.ways.into_iter().enumerate().map(|(i, (label, _))| crate::view::Way {
        label: label.into(),
        action: Action::AnswerTable { way: i },
        main: false,
        waits: None,
    });
    Some(PendingQuestion { title: question.title.into(), text: question.text.into(), ways: ways.collect() })
}
