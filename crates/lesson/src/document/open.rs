//! A notebook as JSON: written, and read with care. A file from elsewhere is read into today's version or refused in words.

use super::{
    Answer, GUESS_POINTS, GuessPoint, Lesson, MOST_OWN, MarkDoc, MarkDocs, Notebook, OwnQuestion, ReportPart,
    SCHEMA, Sheet, VERSION,
};
use layercast_core::Message;
use layercast_exchange::document::{CastDoc, Cell, Entry};
use serde::Deserialize;

// Nothing that the actions can make is refused here: a limit below one of theirs would lock a group out of its work.

/// Longest notebook that is read, bytes.
const MOST_BYTES: usize = 512 << 20;
/// Most readings of a table that is used.
pub(crate) const MOST_TABLE_ENTRIES: usize = 200_000;
/// Most readings in one cast, those typed beside a table included.
pub(crate) const MOST_ENTRIES: usize = 300_000;
/// Longest text of a cell or field, characters; what the actions keep.
pub(crate) const MOST_CELL_CHARS: usize = 400;
/// Longest text written in one's own words, characters; what the actions keep.
pub(crate) const MOST_PROSE_CHARS: usize = 20_000;
/// Most corrections of a cast.
pub(crate) const MOST_CORRECTIONS: usize = 20;
/// Most questions of a lesson.
pub(crate) const MOST_KINDS: usize = 1000;
/// Most marks of an empty table.
pub(crate) const MOST_MARKS: u32 = 400;

/// Why a file is not opened as a notebook.
#[derive(Clone, Debug, PartialEq)]
pub enum Unopened {
    /// It is no notebook: it may be a table.
    NotANotebook,
    /// Saved by a newer Layercast.
    Newer {
        /// The file's version.
        version: u32,
        /// Its readings alone, if they can be read: for [`Notebook::with_cast`].
        cast: Option<Box<CastDoc>>,
    },
    /// A notebook that makes no sense: what is wrong.
    Absurd(Message),
}

/// What every version of a notebook has.
#[derive(Deserialize)]
struct Head {
    schema: String,
    version: u32,
}

/// A newer notebook's readings.
#[derive(Deserialize)]
struct Readings {
    cast: CastDoc,
}

impl Notebook {
    /// The notebook as JSON of today's version.
    pub fn to_json(&self) -> String {
        // Every key of the document is a text or a number, so that writing it cannot fail.
        serde_json::to_string(self).unwrap_or_default()
    }

    /// Reads a notebook of any version.
    ///
    /// # Errors
    /// [`Unopened`] says why it is not opened; nothing of it is then in use.
    pub fn from_json(text: &str) -> Result<Self, Unopened> {
        if text.len() > MOST_BYTES {
            return Err(absurd_size());
        }
        let head: Head = serde_json::from_str(text).map_err(|_| Unopened::NotANotebook)?;
        if head.schema != SCHEMA || head.version == 0 {
            return Err(Unopened::NotANotebook);
        }
        if head.version > VERSION {
            let readings: Option<Readings> = serde_json::from_str(text).ok();
            let cast = readings.map(|readings| readings.cast).filter(|cast| check_cast(cast).is_ok());
            return Err(Unopened::Newer { version: head.version, cast: cast.map(Box::new) });
        }
        let notebook: Self = serde_json::from_str(text)
            .map_err(|fault| Unopened::Absurd(Message::new("log-file-broken").count("line", fault.line())))?;
        check(&notebook).map_err(Unopened::Absurd)?;
        Ok(notebook)
    }
}

fn absurd_size() -> Unopened {
    Unopened::Absurd(Message::new("log-file-too-large"))
}

/// Refuses what no page of ours has written and what would make the tool slow or senseless.
fn check(notebook: &Notebook) -> Result<(), Message> {
    check_cast(&notebook.cast)?;
    for undo in &notebook.undo {
        check_cast(&undo.cast)?;
    }
    let step = notebook.mark_step_m;
    if !(step > 0.0 && step <= 1000.0) || notebook.mark_count > MOST_MARKS || notebook.undo.len() > 100 {
        return Err(Message::new("log-file-absurd-marks"));
    }
    if notebook.sheets.is_empty() || notebook.sheets.len() > 1000 || !is_fit(&notebook.lesson) {
        return Err(Message::new("log-file-absurd-sheets"));
    }
    if notebook.code.chars().count() > MOST_CELL_CHARS || notebook.bed_text.chars().count() > MOST_CELL_CHARS
    {
        return Err(Message::new("log-file-absurd-text"));
    }
    notebook.sheets.iter().try_for_each(check_sheet)
}

/// Whether a lesson is of a size that a page can ask.
pub(crate) fn is_fit(lesson: &Lesson) -> bool {
    let long = |text: &String| text.len() <= 4 * MOST_PROSE_CHARS;
    let own = |own: &OwnQuestion| {
        long(&own.ask) && long(&own.hint) && own.by.rubric.len() <= 10 && own.by.rubric.iter().all(long)
    };
    lesson.kinds.len() <= MOST_KINDS
        && lesson.other.as_ref().is_none_or(|cast| is_sound_cast(cast))
        && lesson.own.len() <= MOST_OWN
        && is_short(&lesson.id)
        && [&lesson.title, &lesson.note, &lesson.run_note, &lesson.language].into_iter().all(long)
        && lesson.own.iter().all(own)
}

/// Whether a cast, a sheet and a lesson from elsewhere can be worked with.
pub(crate) fn is_sound(cast: &CastDoc, sheet: &Sheet, lesson: &Lesson) -> bool {
    let is_fit = is_fit(lesson);
    is_fit && is_sound_cast(cast) && check_sheet(sheet).is_ok()
}

/// Whether a cast from elsewhere can be worked with.
pub(crate) fn is_sound_cast(cast: &CastDoc) -> bool {
    check_cast(cast).is_ok()
}

fn check_cast(cast: &CastDoc) -> Result<(), Message> {
    if cast.entries.len() > MOST_ENTRIES {
        return Err(Message::new("log-file-absurd-readings").count("most", MOST_ENTRIES));
    }
    let settled = |cell: &Cell| cell.settled.as_ref().is_none_or(|settled| is_short(&settled.text));
    if !cast.entries.iter().all(|entry: &Entry| settled(&entry.depth) && settled(&entry.temp)) {
        return Err(Message::new("log-file-absurd-text"));
    }
    let oxygen = |entry: &Entry| entry.oxygen.as_ref().is_none_or(settled);
    let companions = [&cast.companions.secchi_gone, &cast.companions.secchi_back, &cast.companions.altitude];
    if !cast.entries.iter().all(oxygen) || !companions.into_iter().all(settled) {
        return Err(Message::new("log-file-absurd-text"));
    }
    if cast.corrections.len() > MOST_CORRECTIONS {
        return Err(Message::new("log-file-absurd-numbers"));
    }
    let mut fields = cast.corrections.iter().flat_map(|correction| correction.fields.values());
    if !fields.all(|field| is_short(&field.text)) {
        return Err(Message::new("log-file-absurd-text"));
    }
    if !is_short(&cast.water) || !is_short(&cast.group) {
        return Err(Message::new("log-file-absurd-text"));
    }
    Ok(())
}

fn check_sheet(sheet: &Sheet) -> Result<(), Message> {
    let mark = |doc: &MarkDoc| {
        let is_sound = |value: Option<f64>| value.is_none_or(|value| value >= 0.0);
        is_sound(doc.depth_m) && is_sound(doc.give_m) && is_short(&doc.depth_text) && is_short(&doc.give_text)
    };
    if !is_short(&sheet.seat) || !is_short(&sheet.class) || !is_short(&sheet.lesson_id) {
        return Err(Message::new("log-file-absurd-text"));
    }
    if let Some(other) = &sheet.other {
        check_cast(other)?;
    }
    let marks = |marks: &MarkDocs| mark(&marks.mixed) && mark(&marks.thermocline) && mark(&marks.deep);
    let kept = [&sheet.first_marks, &sheet.marks_when_revealed, &sheet.partner];
    if !marks(&sheet.marks) || !kept.into_iter().flatten().all(marks) {
        return Err(Message::new("log-file-absurd-numbers"));
    }
    let guessed = |point: &GuessPoint| is_short(&point.depth_text) && is_short(&point.temp_text);
    if sheet.guess.len() > GUESS_POINTS || !sheet.guess.iter().all(guessed) {
        return Err(Message::new("log-file-absurd-text"));
    }
    let is_kept = |part: &ReportPart| sheet.report.get(*part).len() <= 4 * part.most_chars();
    if !ReportPart::ALL.iter().all(is_kept) {
        return Err(Message::new("log-file-absurd-text"));
    }
    let is_sound = |answer: &Answer| answer.tries.len() <= 10_000 && answer.shown_at.len() <= 10_000;
    if sheet.answers.len() > 100_000 || !sheet.answers.values().all(is_sound) {
        return Err(Message::new("log-file-absurd-sheets"));
    }
    Ok(())
}

/// No longer than a cell may be.
pub(crate) fn is_short(text: &str) -> bool {
    text.len() <= 4 * MOST_CELL_CHARS
}

/// Entry for fuzzing: any bytes as a notebook's JSON; what opens is looked at, written and read again.
///
/// # Panics
/// When a notebook that opens is not the same after writing and reading.
#[doc(hidden)]
pub fn fuzz_notebook_json(data: &[u8]) {
    let text = String::from_utf8_lossy(data);
    let Ok(notebook) = Notebook::from_json(&text) else { return };
    let _ = crate::look(&notebook);
    let again = Notebook::from_json(&notebook.to_json());
    assert_eq!(again.as_ref(), Ok(&notebook), "writing and reading a notebook changed it");
}

#[cfg(test)]
mod tests {
    use super::*;

    fn notebook() -> Notebook {
        Notebook::new("C-4T7K", Lesson::first())
    }

    fn with(key: &str, value: serde_json::Value) -> String {
        let mut json: serde_json::Value = serde_json::from_str(&notebook().to_json()).unwrap();
        json[key] = value;
        json.to_string()
    }

    #[test]
    fn what_is_written_is_read_again() {
        assert_eq!(Notebook::from_json(&notebook().to_json()), Ok(notebook()));
    }

    #[test]
    fn other_files_are_no_notebook() {
        for text in ["", "{}", "depth,temp\n0,20", "null", "[1,2]", &with("schema", "something".into())] {
            assert_eq!(Notebook::from_json(text), Err(Unopened::NotANotebook), "{text}");
        }
    }

    #[test]
    fn a_newer_file_gives_its_readings_alone() {
        let got = Notebook::from_json(&with("version", 3.into()));
        let want = Unopened::Newer { version: 3, cast: Some(Box::new(notebook().cast)) };
        assert_eq!(got, Err(want));
        let mut json: serde_json::Value = serde_json::from_str(&with("version", 3.into())).unwrap();
        json["cast"] = "stored elsewhere".into();
        let got = Notebook::from_json(&json.to_string());
        assert_eq!(got, Err(Unopened::Newer { version: 3, cast: None }));
    }

    #[track_caller]
    fn refused(key: &str, value: serde_json::Value, id: &str) {
        match Notebook::from_json(&with(key, value)) {
            Err(Unopened::Absurd(message)) => assert_eq!(message.id, id),
            other => panic!("{other:?}"),
        }
    }

    #[test]
    fn absurd_notebooks_are_refused_in_words() {
        refused("mark_step_m", 0.into(), "log-file-absurd-marks");
        refused("mark_count", 1_000_000.into(), "log-file-absurd-marks");
        refused("sheets", serde_json::json!([]), "log-file-absurd-sheets");
        refused("code", "x".repeat(1000).into(), "log-file-absurd-text");
        refused("cast", 7.into(), "log-file-broken");
        let mut sheets = serde_json::to_value(notebook().sheets).unwrap();
        sheets[0]["marks"]["deep"]["depth_m"] = serde_json::json!(-4.0);
        refused("sheets", sheets, "log-file-absurd-numbers");
        let mut cast = serde_json::to_value(notebook().cast).unwrap();
        cast["water"] = "x".repeat(5000).into();
        refused("cast", cast, "log-file-absurd-text");
    }
}
