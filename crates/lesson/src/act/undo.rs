//! Earlier casts, so that everything done to readings can be taken back.

use super::code::of_group;
use crate::document::{Notebook, Undo, UndoWhat};
use layercast_exchange::document::CastDoc;

/// Most earlier casts.
const MOST: usize = 20;
/// Most bytes of earlier casts, about; the newest stays in any case.
const MOST_BYTES: usize = 2_000_000;

/// Remembers the cast before a change; nothing when nothing changed.
pub fn remember(notebook: &mut Notebook, before: CastDoc, what: UndoWhat) {
    if notebook.cast == before {
        return;
    }
    notebook.undo.push(Undo { what, cast: before });
    let mut bytes = 0;
    let fitting = notebook.undo.iter().rev().take(MOST).take_while(|undo| {
        let first = bytes == 0;
        bytes += size(&undo.cast);
        first || bytes <= MOST_BYTES
    });
    let keep = fitting.count();
    let drop = notebook.undo.len().saturating_sub(keep);
    notebook.undo.drain(..drop);
}

/// Remembers the cast before a key was typed into these readings. All keys typed into one cell are one thing to undo.
pub fn remember_typing(notebook: &mut Notebook, before: CastDoc, typed_into: &[usize]) {
    let goes_on = notebook.undo.last().is_some_and(|last| {
        last.what == UndoWhat::Cell && only_these_differ(&last.cast, &before, typed_into)
    });
    if !goes_on {
        remember(notebook, before, UndoWhat::Cell);
    }
}

/// Remembers the cast before a key was typed; nothing when it goes on with what was typed last: `is_same` says whether
/// the two casts differ in that only.
pub fn remember_going_on(
    notebook: &mut Notebook,
    before: CastDoc,
    what: UndoWhat,
    is_same: impl Fn(&CastDoc, &CastDoc) -> bool,
) {
    let goes_on = notebook.undo.last().is_some_and(|last| last.what == what && is_same(&last.cast, &before));
    if !goes_on {
        remember(notebook, before, what);
    }
}

/// The later cast is the earlier one with other text in these readings only, or with these readings added.
fn only_these_differ(earlier: &CastDoc, later: &CastDoc, these: &[usize]) -> bool {
    let differs =
        later.entries.iter().enumerate().filter(|(i, entry)| earlier.entries.get(*i) != Some(entry));
    let mut differing = differs.map(|(i, _)| i).peekable();
    earlier.entries.len() <= later.entries.len()
        && earlier.corrections == later.corrections
        && earlier.companions == later.companions
        && differing.peek().is_some()
        && differing.all(|i| these.contains(&i))
}

/// Puts the last earlier cast back. The names of water and group and the bed stay as they are; names that came with the
/// title of a table go with it.
pub fn undo(notebook: &mut Notebook) {
    let Some(Undo { cast, .. }) = notebook.undo.pop() else { return };
    let now = std::mem::replace(&mut notebook.cast, cast);
    let then = &mut notebook.cast;
    then.bed_m = now.bed_m;
    let of_title = |text: &str| text.contains(&now.water) && text.contains(&now.group);
    let titled =
        now.source.as_ref().and_then(|source| source.text.lines().find(|line| !line.trim().is_empty()));
    let had_none = then.water.is_empty() && then.group.is_empty() && then.source.is_none();
    if had_none && !now.group.is_empty() && titled.is_some_and(of_title) {
        notebook.code = of_group(&notebook.code, "");
    } else {
        (then.water, then.group) = (now.water, now.group);
    }
}

/// About how many bytes a cast takes in the file.
fn size(cast: &CastDoc) -> usize {
    let text = cast.source.as_ref().map_or(0, |source| source.text.len());
    1 + text + 150 * cast.entries.len()
}
