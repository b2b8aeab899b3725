//! What leaves the class: marks as CSV, slips for the students. A list of students is joined here and stored nowhere.

use super::answers::{after_shown, given_said, levels as levels_of, report_state, state_said, unasked};
use super::document::Class;
use super::points::{Points, REPORT, REPORT_PARTS, has_report, points, total};
use super::room::{AnswerState, Answered, Room, Seat};
use super::screen::points_num;
use super::view::LevelRow;
use super::wall::cores;
use crate::hand_in::Check;
use crate::view::{Num, Said};
use layercast_core::Message;
use layercast_exchange::document::short_hash;
use serde::Serialize;
use std::collections::BTreeMap;

/// Longest name over a column, in signs.
const MOST_HEAD: usize = 60;

/// How marks are written.
#[derive(Clone, Debug, Default, PartialEq)]
pub struct Options {
    /// Decimal comma, and semicolons between the cells.
    pub comma: bool,
    /// Seat codes and who sits there, as pasted: a code, a tab, comma or semicolon, the rest of the line. Adds a column
    /// `student`; it is used here and kept nowhere.
    pub students: String,
    /// What each kind of question is called, for the heads of the columns; a kind without a name has its number alone.
    pub names: BTreeMap<u8, String>,
}

impl Options {
    /// Head of the column of a kind: its number and its name.
    fn head(&self, kind: u8) -> String {
        match self.names.get(&kind).map(|name| name.trim()).filter(|name| !name.is_empty()) {
            Some(name) => format!("{kind} {}", name.chars().take(MOST_HEAD).collect::<String>()),
            None => format!("question_{kind}"),
        }
    }
}

/// Marks, one line a question of a seat. UTF-8 with a byte order mark; text that a spreadsheet would take for a formula
/// has an apostrophe before it.
pub fn long(class: &Class, options: &Options) -> String {
    let room = Room::of(class);
    let mut table = Table::new(&room, options);
    let head = "class,seat,group,cast,question,points,max,tries,hints,idea,override,rule,lesson_version,state,late,practice,edited,level,comment";
    table.head(&head.split(',').map(str::to_owned).collect::<Vec<_>>());
    for seat in room.in_order() {
        for points in points(&room, seat) {
            let answered = seat.answers.iter().find(|answered| answered.record.id == points.question);
            let line = table.line(seat, &points, answered);
            table.row(seat, line);
        }
    }
    table.text
}

/// Marks, one line a seat: a column for each kind of question, and the total.
pub fn wide(class: &Class, options: &Options) -> String {
    let room = Room::of(class);
    let mut table = Table::new(&room, options);
    let mut kinds: Vec<u8> = Vec::new();
    for answered in room.in_order().into_iter().flat_map(|seat| &seat.answers) {
        if !kinds.contains(&answered.record.kind) {
            kinds.push(answered.record.kind);
        }
    }
    let with_report = room.seats.iter().any(has_report);
    let mut head: Vec<String> = ["class", "seat", "group", "cast"].map(str::to_owned).to_vec();
    head.extend(kinds.iter().map(|kind| options.head(*kind)));
    head.extend(with_report.then(|| REPORT.to_owned()));
    head.extend(["total", "max", "late", "practice"].map(str::to_owned));
    table.head(&head);
    for seat in room.in_order() {
        let all = points(&room, seat);
        let mut line = table.who(seat);
        for kind in &kinds {
            // A kind may be asked once of a cast; where it is not, the cell is empty.
            let of_kind = seat.answers.iter().zip(&all).find(|(answered, _)| answered.record.kind == *kind);
            line.push(of_kind.map_or_else(String::new, |(_, points)| table.points(points)));
        }
        if with_report {
            let report = all.iter().find(|points| points.question == REPORT);
            line.push(report.map_or_else(String::new, |points| table.points(points)));
        }
        let (sum, max) = total(&all);
        line.extend([table.number(sum), table.number(max), yes(seat.member.late), yes(seat.member.practice)]);
        table.row(seat, line);
    }
    table.text
}

fn yes(is: bool) -> String {
    if is { "yes".to_owned() } else { String::new() }
}

/// A table being written.
struct Table {
    text: String,
    comma: bool,
    class: String,
    rule: String,
    lesson_version: String,
    students: BTreeMap<String, String>,
    /// Names over the cores by content id.
    casts: BTreeMap<String, String>,
}

impl Table {
    fn new(room: &Room, options: &Options) -> Self {
        let method = room.lesson.method;
        let number = |value: f64| decimal(format!("{value}"), options.comma);
        Self {
            text: "\u{feff}".to_owned(),
            comma: options.comma,
            class: room.class.code.clone(),
            rule: format!(
                "{} °C from {} m; {} °C per metre",
                number(method.mixed_drop_c),
                number(method.reference_m),
                number(method.steep_c_per_m)
            ),
            lesson_version: lesson_version(room),
            students: students(&options.students),
            casts: cores(room).into_iter().map(|core| (core.cast_id, core.name)).collect(),
        }
    }

    fn head(&mut self, head: &[String]) {
        let student = if self.students.is_empty() { Vec::new() } else { vec!["student".to_owned()] };
        self.write(student.iter().chain(head));
    }

    /// A row of a seat, with its student in front where a list was given.
    fn row(&mut self, seat: &Seat, line: Vec<String>) {
        let student = match self.students.is_empty() {
            true => Vec::new(),
            false => vec![self.students.get(&key(&seat.seat)).cloned().unwrap_or_default()],
        };
        self.write(student.iter().chain(&line));
    }

    fn write<'c>(&mut self, cells: impl Iterator<Item = &'c String>) {
        let between = if self.comma { ';' } else { ',' };
        for (at, cell) in cells.enumerate() {
            if at > 0 {
                self.text.push(between);
            }
            self.text.push_str(&quoted(&harmless(cell)));
        }
        self.text.push_str("\r\n");
    }

    fn who(&self, seat: &Seat) -> Vec<String> {
        let cast = self.casts.get(&seat.counted_as).map_or(seat.counted_as.clone(), |name| {
            format!("{name} {}", seat.cast_id.get(..4).unwrap_or_default())
        });
        vec![self.class.clone(), seat.seat.clone(), seat.group.clone(), cast]
    }

    fn line(&self, seat: &Seat, points: &Points, answered: Option<&Answered>) -> Vec<String> {
        let mark = seat.member.marks.get(&points.question);
        let mut line = self.who(seat);
        line.push(points.question.clone());
        line.push(self.points(points));
        line.push(self.number(points.max));
        line.push(answered.map_or(0, |a| a.record.tries).to_string());
        line.push(answered.map_or(0, |a| a.hints).to_string());
        line.push(answered.map(|a| a.ideas().join(" ")).unwrap_or_default());
        let why = mark.map(|mark| mark.reason.trim()).unwrap_or_default();
        line.push(match points.instead {
            Some(_) if why.is_empty() => "yes".to_owned(),
            Some(_) => why.to_owned(),
            None => String::new(),
        });
        line.push(self.rule.clone());
        line.push(self.lesson_version.clone());
        let state = answered.map_or(report_state(seat, points), |answered| answered.state);
        line.push(state_word(state).to_owned());
        let edited = seat.paper.check == Check::Edited;
        line.extend([yes(seat.member.late), yes(seat.member.practice), yes(edited)]);
        line.push(levels(seat, &points.question));
        line.push(mark.map(|mark| mark.comment.trim().to_owned()).unwrap_or_default());
        line
    }

    /// Points; empty while prose waits for its level.
    fn points(&self, points: &Points) -> String {
        points.known().map_or_else(String::new, |known| self.number(known))
    }

    /// A number to a hundredth, without zeros at the end.
    fn number(&self, value: f64) -> String {
        let text = format!("{value:.2}");
        decimal(text.trim_end_matches('0').trim_end_matches('.').to_owned(), self.comma)
    }
}

/// Level of the words, 0 to 3; of a report those of its texts.
fn levels(seat: &Seat, question: &str) -> String {
    let level = |id: &str| Some(seat.member.marks.get(id)?.level?.to_string());
    let of_part = |(id, _): &(&str, _)| Some(format!("{} {}", id.strip_prefix("report.")?, level(id)?));
    match level(question) {
        None if question == REPORT => REPORT_PARTS.iter().filter_map(of_part).collect::<Vec<_>>().join(" "),
        level => level.unwrap_or_default(),
    }
}

/// Words of the file, the same in every language: programs read them.
fn state_word(state: AnswerState) -> &'static str {
    use AnswerState as S;
    match state {
        S::RightFirst => "right_first",
        S::RightLater => "right_later",
        S::NotYet => "not_yet",
        S::Blank => "blank",
        S::CannotTell => "cannot_tell",
        S::Written => "not_yet_marked",
        S::Marked => "marked",
    }
}

/// Id of the lesson, and four signs that change with anything in it.
fn lesson_version(room: &Room) -> String {
    let json = serde_json::to_string(&room.lesson).unwrap_or_default();
    format!("{} {}", room.lesson.id, short_hash(&json).get(..4).unwrap_or_default())
}

fn decimal(number: String, comma: bool) -> String {
    if comma { number.replace('.', ",") } else { number }
}

/// Text that no spreadsheet runs: what begins like a formula (also after blanks) gets an apostrophe before it. A plain
/// number stays one.
pub fn harmless(cell: &str) -> String {
    let start = cell.trim_start_matches([' ', '\u{a0}', '\t', '\r', '\n']);
    let is_number = || cell.replace(',', ".").parse::<f64>().is_ok_and(f64::is_finite);
    let begins = start.starts_with(['=', '+', '-', '@', '＝', '＋', '－', '＠', '|', '%'])
        || cell.starts_with(['\t', '\r', '\n']);
    if begins && !is_number() { format!("'{cell}") } else { cell.to_owned() }
}

/// A cell as RFC 4180 writes it; control characters become blanks.
fn quoted(cell: &str) -> String {
    let clean: String = cell.chars().map(|c| if c.is_control() && c != '\n' { ' ' } else { c }).collect();
    if clean.contains([',', ';', '"', '\n', '\'']) {
        format!("\"{}\"", clean.replace('"', "\"\""))
    } else {
        clean
    }
}

/// Seat codes and students of a pasted list.
fn students(list: &str) -> BTreeMap<String, String> {
    let line = |line: &str| {
        let (code, student) = line.split_once(['\t', ';', ','])?;
        let (code, student) = (key(code), student.trim().trim_matches('"'));
        (!code.is_empty() && !student.is_empty()).then(|| (code, student.to_owned()))
    };
    list.lines().filter_map(line).collect()
}

/// A code as it is compared.
fn key(code: &str) -> String {
    code.trim().trim_matches('"').to_lowercase()
}

/// What goes back to one seat, to be printed or put into one file.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct Slip {
    /// Class code.
    pub class: String,
    /// Seat code.
    pub seat: String,
    /// Group code.
    pub group: String,
    /// Receipt of what was handed in: the student sees that it is theirs.
    pub receipt: String,
    /// Question by question.
    pub lines: Vec<SlipLine>,
    /// Points.
    pub points: Num,
    /// Most points.
    pub max: Num,
    /// "late", "practice": notes about the whole.
    pub notes: Vec<Said>,
}

/// One question of a slip.
#[derive(Clone, Debug, PartialEq, Serialize)]
#[cfg_attr(feature = "types", derive(tsify::Tsify), tsify(missing_as_null))]
pub struct SlipLine {
    /// The question; the report has its own word.
    pub ask: Said,
    /// What was answered last.
    pub given: Vec<Said>,
    /// How it stands.
    pub state: Said,
    /// What was said to it.
    pub said: Option<Said>,
    /// Levels of its words that were given; empty where all was judged here.
    pub levels: Vec<LevelRow>,
    /// Why a right answer has no points, if it was given only after it was shown.
    pub after_shown: Option<Said>,
    /// Points.
    pub points: Num,
    /// Most points.
    pub max: Num,
    /// Why the teacher gave other points; may be empty.
    pub why: String,
    /// The teacher's comment; may be empty.
    pub comment: String,
}

/// One slip a seat, by group and seat.
pub fn slips(class: &Class) -> Vec<Slip> {
    let room = Room::of(class);
    room.in_order().into_iter().map(|seat| slip(&room, seat)).collect()
}

fn given_levels(room: &Room, seat: &Seat, answered: Option<&Answered>) -> Vec<LevelRow> {
    levels_of(&room.lesson, seat, answered).into_iter().filter(|row| row.level.is_some()).collect()
}

fn slip(room: &Room, seat: &Seat) -> Slip {
    let all = points(room, seat);
    let (sum, max) = total(&all);
    let num = |value: f64, decimals| Num { value: crate::numbers::rounded(value, decimals), decimals };
    let line = |points: &Points| {
        let answered = seat.answers.iter().find(|answered| answered.record.id == points.question);
        let mark = seat.member.marks.get(&points.question).cloned().unwrap_or_default();
        let last = answered.and_then(|answered| answered.record.judgements.last());
        SlipLine {
            ask: answered.map_or(Message::new("class-report"), |a| a.record.ask.clone()).into(),
            given: given_said(seat, answered),
            state: state_said(answered.map_or(report_state(seat, points), |a| a.state)).into(),
            said: last.map(|judged| judged.said.clone().into()),
            levels: given_levels(room, seat, answered),
            after_shown: after_shown(points, answered),
            points: points_num(points.counts()),
            max: num(points.max, 0),
            why: mark.reason,
            comment: mark.comment,
        }
    };
    let notes = [(seat.member.late, "class-note-late"), (seat.member.practice, "class-note-practice")];
    let notes = notes.into_iter().filter(|(is, _)| *is).map(|(_, id)| Message::new(id));
    Slip {
        class: room.class.code.clone(),
        seat: seat.seat.clone(),
        group: seat.group.clone(),
        receipt: seat.paper.hand_in.receipt(),
        lines: all.iter().map(line).collect(),
        points: points_num(sum),
        max: num(max, 0),
        notes: notes.chain(unasked(&room.lesson, seat)).map(Into::into).collect(),
    }
}
