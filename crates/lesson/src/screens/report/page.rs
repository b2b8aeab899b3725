//! The page as it will print: who, what was found, all readings, what was corrected and left out, how it was computed.

use super::{found, questions, said};
use crate::numbers::{WithNum, mark, reference_m, rounded};
use crate::screens::doubts::{doubts, settled};
use crate::screens::log::is_example;
use crate::screens::{Sight, facts, found as whole, profile};
use crate::view::{ReportPage, Said};
use layercast_core::{Message, RangesFrom, State};

/// Most decisions about readings that the page lists one by one.
const MOST_DECISIONS: usize = 12;

/// The page.
pub fn view(sight: &Sight) -> ReportPage {
    let cast = &sight.notebook.cast;
    let marked = sight.context.sheet.first_answer_marks().is_some();
    ReportPage {
        water: cast.water.clone(),
        place: said(place(sight)),
        who: said(who(sight)),
        caption: caption(sight).into(),
        caption_marks: marked.then(|| Message::new("report-caption-marks").into()),
        found: found::rows(sight),
        found_notes: found_notes(sight),
        rows: profile::table(sight),
        more_rows: profile::more_rows(sight),
        notes: notes(sight),
        how: said(how(sight)),
    }
}

fn place(sight: &Sight) -> Vec<Message> {
    let cast = &sight.notebook.cast;
    let bed = cast.bed_m.map(|bed_m| Message::new("report-bed").num("depth", mark(bed_m)));
    let example = is_example(cast).then(|| Message::new("profile-example"));
    bed.into_iter().chain(example).collect()
}

fn who(sight: &Sight) -> Vec<Message> {
    let group = &sight.notebook.cast.group;
    let named =
        (!group.trim().is_empty()).then(|| Message::new("page-bar-group").text("group", group.as_str()));
    let code = Message::new("report-code").text("code", sight.notebook.code.as_str());
    let sheet = sight.context.sheet;
    let codes = [&sheet.class, &sheet.seat].map(|text| text.trim());
    let codes = codes.into_iter().filter(|text| !text.is_empty());
    let codes = codes.map(|text| Message::new("report-class-or-seat").text("text", text));
    named.into_iter().chain(codes).chain([code, Message::new("report-date")]).collect()
}

fn caption(sight: &Sight) -> Message {
    let readings = sight.context.analysis.checked.iter().filter(|checked| checked.used).count();
    let id = match sight.context.analysis.state {
        _ if found::any_covered(sight) => Message::new("report-caption-covered"),
        State::Inverse => Message::new("report-caption-gained"),
        _ => Message::new("report-caption"),
    };
    id.count("count", readings)
}

/// What is said of the whole water, once all of it may be seen.
fn found_notes(sight: &Sight) -> Vec<Said> {
    let view = if found::any_covered(sight) { None } else { whole::view(sight) };
    view.map(|view| view.lead).unwrap_or_default()
}

fn notes(sight: &Sight) -> Vec<Said> {
    let pairs = &sight.context.analysis.pairs;
    let agree = pairs.s_c.map(|s_c| {
        Message::new("report-agree").number("s", rounded(s_c, 2), 2).count("count", pairs.count).into()
    });
    let mut notes: Vec<Said> = agree.into_iter().chain(facts::legs_note(sight)).collect();
    notes.extend(profile::table_notes(sight));
    let decided = settled(sight);
    let more = decided.len().saturating_sub(MOST_DECISIONS);
    let one = |view: crate::view::DoubtView| Said::of_two("report-decided", view.place, view.text);
    notes.extend(decided.into_iter().take(MOST_DECISIONS).map(one));
    notes.extend((more > 0).then(|| Message::new("log-settled-not-listed").count("count", more).into()));
    let open = doubts(sight).len();
    notes.extend((open > 0).then(|| Message::new("report-open-doubts").count("count", open).into()));
    notes.extend(partner(sight));
    notes.extend(guess(sight));
    notes
}

/// "Before we compared, one of us had marked 2.5 m, 4.0 m and 6.0 m." Covered until the check.
fn partner(sight: &Sight) -> Option<Said> {
    let sheet = sight.context.sheet;
    let first = sheet.partner.as_ref().filter(|_| sheet.first_marks.is_some())?;
    let said = Message::new("report-partner")
        .message("mixed", profile::stands(&first.mixed))
        .message("thermocline", profile::stands(&first.thermocline))
        .message("deep", profile::stands(&first.deep));
    Some(said.into())
}

/// "We guessed before the first reading: 20 °C at 0.0 m, …"
fn guess(sight: &Sight) -> Option<Said> {
    let point = |(depth_m, temp_c): (f64, f64)| -> Said {
        Message::new("report-guess-point").temp("temp", rounded(temp_c, 1)).num("depth", mark(depth_m)).into()
    };
    let points = sight.context.sheet.guessed().into_iter().map(point);
    let points = points.reduce(|first, second| Said::of_two("report-guess-and", first, second))?;
    Some(Said::of_two("report-guess", points, Message::new("report-guess-line").into()))
}

fn how(sight: &Sight) -> Vec<Message> {
    let analysis = sight.context.analysis;
    let (method, pairs) = (&analysis.method, &analysis.pairs);
    let rules = Message::new("report-how-rules")
        .temp("drop", method.mixed_drop_c)
        .depth("reference", reference_m(analysis))
        .steep("steep", method.steep_c_per_m);
    let ranges = match analysis.ranges_from {
        RangesFrom::Propagated => Message::new("report-how-propagated"),
        RangesFrom::Trials { count } => Message::new("report-how-trials").count("count", count as usize),
    };
    let ranges = ranges.number("s", rounded(pairs.s_used_c, 2), 2);
    let (settled, asked) = questions(sight);
    let work = Message::new("report-how-work").count("done", settled).count("all", asked);
    vec![work, rules, ranges, Message::new("report-credit")]
}
