//! A pasted or opened table: used at once where it is clear, else it waits for its question.

use super::code::of_group;
use super::undo::remember;
use crate::document::{Notebook, UndoWhat};
use crate::prepared::Ready;
use crate::tables;
use layercast_exchange::document::{
    CastDoc, Cell, Choices, Entry, LegChoice, LegDoc, Origin, Role, Source, Unit,
};
use layercast_exchange::read::{RowKind, TableRead};

/// Most columns a choice is kept for.
const MOST_COLUMNS: usize = 10_000;

/// Takes a table as text.
pub fn take(notebook: &mut Notebook, text: &str, origin: Origin, ready: &mut Ready) {
    let source = Source { text: text.to_owned(), choices: Choices::default(), origin };
    let read = tables::read(&source);
    if tables::is_clear(&read) {
        use_table(notebook, &read, &source);
    } else {
        notebook.pending = Some(source.clone());
    }
    ready.keep(source, read);
}

/// Opens the table of the cast again ("Not right?").
pub fn open(notebook: &mut Notebook) {
    if let Some(source) = notebook.cast.source.as_ref().filter(|source| !source.text.is_empty()) {
        notebook.pending = Some(source.clone());
    }
}

/// Sets what a column is.
pub fn set_role(notebook: &mut Notebook, column: usize, role: Role) {
    if let Some(pending) = notebook.pending.as_mut().filter(|_| column < MOST_COLUMNS) {
        pending.choices.roles.insert(column, role);
    }
}

/// Sets the unit of a column.
pub fn set_unit(notebook: &mut Notebook, column: usize, unit: Unit) {
    if let Some(pending) = notebook.pending.as_mut().filter(|_| column < MOST_COLUMNS) {
        pending.choices.units.insert(column, unit);
    }
}

/// Answers the question by one of its ways.
pub fn answer(notebook: &mut Notebook, way: usize) {
    let Some(pending) = notebook.pending.as_mut() else { return };
    let Some(question) = tables::read(pending).question else { return };
    if let Some((_, answer)) = question.ways.into_iter().nth(way) {
        pending.choices.roles.extend(answer.roles);
        pending.choices.units.extend(answer.units);
        pending.choices.leg = answer.leg.or(pending.choices.leg);
        pending.choices.decimal = answer.decimal.or(pending.choices.decimal);
    }
}

/// Uses the pending table, if its question is answered.
pub fn use_pending(notebook: &mut Notebook, ready: &mut Ready) {
    let Some(source) = notebook.pending.clone() else { return };
    let read = tables::read(&source);
    if tables::is_clear(&read) {
        use_table(notebook, &read, &source);
    }
    ready.keep(source, read);
}

/// Longest name of a water, and of a group, that are taken from a title, in signs.
const MOST_NAME: (usize, usize) = (60, 8);

/// Water and group, where the line over the head of the table names both: "Quillet Pond, group C".
fn named(read: &TableRead) -> Option<(String, String)> {
    let head = read.rows.iter().position(|row| row.kind == RowKind::Head)?;
    let mut above = read.rows.iter().take(head).filter(|row| row.kind != RowKind::Blank);
    let title = above.next().filter(|row| row.kind == RowKind::Title)?;
    let cells = title.cells.iter().map(|cell| cell.trim()).filter(|cell| !cell.is_empty());
    let text = cells.collect::<Vec<_>>().join(", ");
    let (water, rest) = text.rsplit_once(',')?;
    let (word, group) = rest.trim().split_once(char::is_whitespace)?;
    let (water, group) = (water.trim(), group.trim());
    let is_group = matches!(word.to_lowercase().as_str(), "group" | "grupo");
    let is_name = water.chars().any(char::is_alphabetic) && !water.contains([':', ';']);
    let fits = water.chars().count() <= MOST_NAME.0 && group.chars().count() <= MOST_NAME.1;
    let is_code = !group.is_empty() && group.chars().all(char::is_alphanumeric);
    (is_group && is_name && fits && is_code).then(|| (water.to_owned(), group.to_owned()))
}

/// Puts a table in place of the cast. Water, group, bed and the height of the lake stay (water and group come from the
/// table's title where neither was named); so does what was decided about readings of the same table, and so do corrections
/// of it.
fn use_table(notebook: &mut Notebook, read: &TableRead, source: &Source) {
    let before = notebook.cast.clone();
    let same_table = before.source.as_ref().is_some_and(|earlier| earlier.text == source.text);
    let mut cast = CastDoc::from_read(read, &source.text, &source.choices);
    if same_table {
        carry_decisions(&before, &mut cast);
    }
    // Corrections are of one cable and one probe on one day: another table begins without them.
    if same_table || before.entries.is_empty() {
        cast.corrections.clone_from(&before.corrections);
        carry_companion(&before.companions.secchi_gone, &mut cast.companions.secchi_gone);
        carry_companion(&before.companions.secchi_back, &mut cast.companions.secchi_back);
    }
    cast.companions.altitude.clone_from(&before.companions.altitude);
    cast.water.clone_from(&before.water);
    cast.group.clone_from(&before.group);
    cast.bed_m = before.bed_m;
    if let Some((water, group)) = named(read).filter(|_| cast.water.is_empty() && cast.group.is_empty()) {
        notebook.code = of_group(&notebook.code, &group);
        (cast.water, cast.group) = (water, group);
    }
    if let Some(kept) = cast.source.as_mut() {
        kept.origin = source.origin;
    }
    notebook.cast = cast;
    notebook.pending = None;
    let what = match (same_table, source.origin) {
        (true, _) => UndoWhat::Change,
        (false, Origin::Paste) => UndoWhat::Paste,
        (false, Origin::File) => UndoWhat::File,
        (false, Origin::Example) => UndoWhat::Example,
    };
    remember(notebook, before, what);
}

/// A reading that is read as before keeps its switch and its settled cells, also if its way changed; readings typed
/// beside the table stay.
fn carry_decisions(before: &CastDoc, after: &mut CastDoc) {
    let key = |entry: &Entry| (entry.line, entry.depth.written.clone(), entry.temp.written.clone());
    let is_same = |a: &Entry, b: &Entry| a.depth.value == b.depth.value && a.temp.value == b.temp.value;
    let mut decided: std::collections::BTreeMap<_, Vec<&Entry>> = std::collections::BTreeMap::new();
    for entry in &before.entries {
        decided.entry(key(entry)).or_default().push(entry);
    }
    for entry in &mut after.entries {
        let Some(earlier) = decided.get_mut(&key(entry)) else { continue };
        // Two cells of one line may hold the same text: first in, first out.
        let Some(at) = earlier.iter().position(|earlier| is_same(earlier, entry)) else { continue };
        let earlier = earlier.remove(at);
        entry.switch = earlier.switch;
        entry.depth.settled.clone_from(&earlier.depth.settled);
        entry.temp.settled.clone_from(&earlier.temp.settled);
        if let Some(settled) = earlier.oxygen.as_ref().and_then(|oxygen| oxygen.settled.clone()) {
            entry.oxygen.get_or_insert_default().settled = Some(settled);
        }
    }
    after.entries.extend(before.entries.iter().filter(|entry| entry.line.is_none()).cloned());
}

/// What was typed stays, beside what the table says now.
fn carry_companion(before: &Cell, after: &mut Cell) {
    if after.written.is_empty() {
        after.clone_from(before);
    } else if after.written == before.written {
        after.settled.clone_from(&before.settled);
    }
}

/// Says which way a single series was read: of the pending table, or of the cast.
pub fn set_leg(notebook: &mut Notebook, leg: LegChoice, ready: &mut Ready) {
    if let Some(pending) = notebook.pending.as_mut() {
        pending.choices.leg = Some(leg);
        return;
    }
    let to = match leg {
        LegChoice::Down => LegDoc::Down,
        LegChoice::Up => LegDoc::Up,
        LegChoice::Open => LegDoc::Unknown,
        LegChoice::DownThenUp => return read_again(notebook, leg, ready),
    };
    let before = notebook.cast.clone();
    let mut ways = notebook.cast.entries.iter().map(|entry| entry.leg);
    let Some(first) = ways.next() else { return };
    if !ways.all(|way| way == first) {
        return;
    }
    for entry in &mut notebook.cast.entries {
        entry.leg = to;
    }
    notebook.cast.source.get_or_insert_default().choices.leg = Some(leg);
    remember(notebook, before, UndoWhat::Change);
}

/// Reads the cast's table again with another choice of its ways.
fn read_again(notebook: &mut Notebook, leg: LegChoice, ready: &mut Ready) {
    let Some(mut source) = notebook.cast.source.clone().filter(|source| !source.text.is_empty()) else {
        return;
    };
    source.choices.leg = Some(leg);
    let read = tables::read(&source);
    if tables::is_clear(&read) {
        use_table(notebook, &read, &source);
    }
    ready.keep(source, read);
}
