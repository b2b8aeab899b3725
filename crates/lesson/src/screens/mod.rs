//! What the page shows of a notebook, screen by screen.

mod alt;
mod by_hand;
mod companions;
mod corrections;
mod doors;
mod doubts;
mod facts;
mod found;
mod log;
mod pending;
mod profile;
mod questions;
mod report;
mod rows;
mod rules;
mod scale;
mod verdict;

pub(crate) use doors::otherwise::view as otherwise_view;

pub(crate) use report::report_name;

pub(crate) use self::log::another_said;
use crate::action::Action;
use crate::document::{Notebook, Screen};
use crate::prepared::{Prepared, prepare, prepare_with};
use crate::questions as bank;
use crate::scene::{Shown, shown};
use crate::view::{Look, Way};
use layercast_core::Message;

/// Most rows of a table, and readings the cursor walks.
const MOST_ROWS: usize = 2000;
/// Most doubts and decisions listed.
const MOST_DOUBTS: usize = 50;

/// What the page shows. What is covered is not in it.
pub fn look(notebook: &Notebook) -> Look {
    look_with(notebook, &prepare(notebook))
}

/// [`look`] with the ranges that trials came to (see [`crate::ranges`]); at a very long cast the log lists its rows from
/// `first_row` on, counted from 0.
pub fn look_from(notebook: &Notebook, first_row: usize, ranges: Option<&str>) -> Look {
    look_at(notebook, &prepare_with(notebook, ranges), first_row)
}

/// [`look`] with the analysis at hand.
pub fn look_with(notebook: &Notebook, prepared: &Prepared) -> Look {
    look_at(notebook, prepared, 0)
}

fn look_at(notebook: &Notebook, prepared: &Prepared, first_row: usize) -> Look {
    let context = prepared.context(notebook);
    let paper = bank::paper(&context);
    let sight =
        Sight { notebook, prepared, context, paper: &paper, shown: shown(&context, &paper), first_row };
    let sheet = sight.context.sheet;
    Look {
        code: notebook.code.clone(),
        water: notebook.cast.water.clone(),
        group: notebook.cast.group.clone(),
        class: sheet.class.clone(),
        seat: sheet.seat.clone(),
        place: notebook.place,
        empty: notebook.cast.entries.is_empty() && notebook.pending.is_none(),
        file_name: file_name(&notebook.code),
        log: log::view(&sight),
        profile: profile::view(&sight),
        questions: questions::view(&sight),
        report: (notebook.place.screen == Screen::Report).then(|| report::view(&sight)),
        alt: alt::sentence(&sight).into(),
        readings: rows::cursor(&sight),
        ranges: doors::ranges(&sight),
    }
}

/// Everything a screen looks at.
struct Sight<'a> {
    notebook: &'a Notebook,
    prepared: &'a Prepared,
    context: bank::Context<'a>,
    paper: &'a bank::Paper,
    shown: Shown,
    /// The first row the log lists.
    first_row: usize,
}

/// The code, without signs that file systems refuse.
fn file_name(code: &str) -> String {
    let name: String =
        code.chars().filter(|c| c.is_alphanumeric() || matches!(c, '-' | '_')).take(60).collect();
    if name.is_empty() { "layercast".to_owned() } else { name }
}

/// A button.
fn way(label: &'static str, action: Action) -> Way {
    Way { label: Message::new(label).into(), action, main: false, waits: None }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn the_file_takes_the_codes_name() {
        assert_eq!(file_name("C-4T7K"), "C-4T7K");
        assert_eq!(file_name("../a:b"), "ab");
        assert_eq!(file_name("…"), "layercast");
    }
}
