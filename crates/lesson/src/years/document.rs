//! The document: casts with their days and places.

use super::action::YearsAction;
use super::day::Day;
use crate::class::Class;
use crate::document::{is_short, is_sound_cast};
use crate::hand_in;
use layercast_core::order::sort_by;
use layercast_exchange::document::{CastDoc, content_id};
use layercast_exchange::zip;
use serde::{Deserialize, Serialize};

/// Name of the schema in [`YearBook::schema`].
pub const SCHEMA: &str = "layercast-years";
/// Version written today. Readers of older versions stay for ever.
pub const VERSION: u32 = 1;
/// Most casts of a book.
const MOST_CASTS: usize = 200;
/// Longest file that is read, bytes.
const MOST_BYTES: usize = 64 << 20;
/// Longest day or place, signs.
const MOST_SIGNS: usize = 60;

/// Casts over days and years. Nothing computed is in it, and no person's name.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct YearBook {
    /// Always [`SCHEMA`].
    pub schema: String,
    /// Schema version.
    pub version: u32,
    /// Casts by day, those without a day last.
    #[serde(default)]
    pub casts: Vec<YearCast>,
}

/// One cast of the book.
#[derive(Clone, Debug, PartialEq, Serialize, Deserialize)]
pub struct YearCast {
    /// Its day, "2025-10-12"; anything else counts as no day yet, and stays as it was typed.
    #[serde(default)]
    pub day: String,
    /// Where it was measured: only casts of one place are set beside one another.
    #[serde(default)]
    pub place: String,
    /// The readings.
    pub cast: CastDoc,
}

impl Default for YearBook {
    fn default() -> Self {
        Self { schema: SCHEMA.to_owned(), version: VERSION, casts: Vec::new() }
    }
}

impl YearBook {
    /// The book as JSON of today's version.
    pub fn to_json(&self) -> String {
        // Every key of the document is a text or a number, so that writing it cannot fail.
        serde_json::to_string(self).unwrap_or_default()
    }

    /// Reads a book; `None` when the text is none, or of a newer version.
    pub fn from_json(text: &str) -> Option<Self> {
        if text.len() > MOST_BYTES {
            return None;
        }
        let book: Self = serde_json::from_str(text).ok()?;
        let is_ours = book.schema == SCHEMA && (1..=VERSION).contains(&book.version);
        let is_sound = book.casts.len() <= MOST_CASTS
            && book
                .casts
                .iter()
                .all(|one| is_sound_cast(&one.cast) && is_short(&one.day) && is_short(&one.place));
        (is_ours && is_sound).then_some(book)
    }

    /// The cast of a content id.
    fn of(&mut self, id: &str) -> Option<&mut YearCast> {
        self.casts.iter_mut().find(|one| one.id() == id)
    }
}

/// What came of files that were added.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct Added {
    /// Casts that are new.
    pub new: usize,
    /// Casts that were there.
    pub same: usize,
    /// Things without a cast of ours, or beyond the room there is.
    pub not_ours: usize,
}

/// The book with the casts of files: notebooks, hand-ins, classes, other books, and zips of them. What files are called does
/// not matter; a cast that is there already stays as it is.
pub fn add(book: &YearBook, files: &[Vec<u8>]) -> (YearBook, Added) {
    let (mut next, mut added) = (book.clone(), Added::default());
    for file in files {
        for found in casts_of(file) {
            match found {
                None => added.not_ours += 1,
                Some(one) if next.casts.iter().any(|old| old.id() == one.id()) => added.same += 1,
                Some(_) if next.casts.len() >= MOST_CASTS => added.not_ours += 1,
                Some(one) => {
                    added.new += 1;
                    next.casts.push(one);
                }
            }
        }
    }
    by_day(&mut next);
    (next, added)
}

fn casts_of(bytes: &[u8]) -> Vec<Option<YearCast>> {
    if zip::is_zip(bytes) {
        let part = |part: zip::Part| part.bytes.map_or_else(|_| vec![None], |bytes| casts_of_text(&bytes));
        return zip::parts(bytes).into_iter().flat_map(part).collect();
    }
    casts_of_text(bytes)
}

fn casts_of_text(bytes: &[u8]) -> Vec<Option<YearCast>> {
    let text = std::str::from_utf8(bytes).unwrap_or_default().trim_start_matches('\u{feff}').trim();
    if let Some(book) = YearBook::from_json(text) {
        return book.casts.into_iter().map(Some).collect();
    }
    if let Ok(class) = Class::from_json(text) {
        let mut casts: Vec<Option<YearCast>> = Vec::new();
        for member in class.now.members.iter().filter(|member| member.aside.is_none() && !member.practice) {
            let Some(paper) = class.paper(member) else { continue };
            let one = YearCast::of(&member.repair.cast(&paper.hand_in.cast));
            // Many sheets name one cast.
            if !casts.iter().flatten().any(|old| old.id() == one.id()) {
                casts.push(Some(one));
            }
        }
        return casts;
    }
    let of = |found: Result<hand_in::Opened, hand_in::Refused>| {
        found.ok().map(|one| YearCast::of(&one.hand_in.cast))
    };
    hand_in::open(bytes).into_iter().map(of).collect()
}

impl YearCast {
    fn of(cast: &CastDoc) -> Self {
        let place = cast.water.chars().take(MOST_SIGNS).collect();
        // The table it was read from is not needed again.
        Self { day: String::new(), place, cast: CastDoc { source: None, ..cast.clone() } }
    }

    /// What it is known by: its readings.
    pub fn id(&self) -> String {
        content_id(&self.cast)
    }

    /// Its place, as it is compared.
    pub(super) fn place_key(&self) -> String {
        self.place.trim().to_lowercase()
    }
}

/// The book after one thing a teacher did. An unknown cast changes nothing.
pub fn act(book: &YearBook, action: &YearsAction) -> YearBook {
    let mut next = book.clone();
    let kept = |text: &str| text.chars().take(MOST_SIGNS).collect();
    match action {
        YearsAction::SetDay { cast, text } => {
            next.of(cast).into_iter().for_each(|one| one.day = kept(text));
        }
        YearsAction::SetPlace { cast, text } => {
            next.of(cast).into_iter().for_each(|one| one.place = kept(text));
        }
        YearsAction::TakeOut { cast } => next.casts.retain(|one| one.id() != *cast),
    }
    by_day(&mut next);
    next
}

fn by_day(book: &mut YearBook) {
    let day = |one: &YearCast| Day::read(&one.day);
    sort_by(&mut book.casts, |a, b| (day(a).is_none(), day(a)).cmp(&(day(b).is_none(), day(b))));
}
