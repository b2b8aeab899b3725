//! The report: what is written, the group's own numbers to write with, what the texts hold, how the work stands, the page.

mod found;
mod page;
mod present;

use super::doubts::{doubts, settled};
use super::{Sight, profile};
use crate::document::ReportPart;
use crate::questions::standing;
use crate::view::{ReportCheck, ReportPartView, ReportStand, ReportView, Said};
use layercast_core::Message;

/// Texts that argue: all but the title.
const ARGUED: [ReportPart; 4] =
    [ReportPart::Claim, ReportPart::Evidence, ReportPart::Reasoning, ReportPart::Change];

/// Report.
pub fn view(sight: &Sight) -> ReportView {
    let covered = found::any_covered(sight).then(|| Message::new("report-some-covered").into());
    ReportView {
        not_yet: profile::not_yet(sight),
        parts: ReportPart::ALL.iter().map(|part| part_view(sight, *part)).collect(),
        bank: found::bank(sight),
        covered,
        checks: checks(sight),
        stands: stands(sight),
        page: page::view(sight),
    }
}

/// What a text of the report is called.
pub(crate) fn report_name(part: ReportPart) -> Message {
    Message::new(match part {
        ReportPart::Title => "report-title",
        ReportPart::Claim => "report-claim",
        ReportPart::Evidence => "report-evidence",
        ReportPart::Reasoning => "report-reasoning",
        ReportPart::Change => "report-change",
    })
}

fn part_view(sight: &Sight, part: ReportPart) -> ReportPartView {
    let starters: &[&'static str] = match part {
        ReportPart::Title => &[],
        ReportPart::Claim => &["report-start-claim-first", "report-start-claim-then"],
        ReportPart::Evidence => &["report-start-evidence-first", "report-start-evidence-then"],
        ReportPart::Reasoning => &["report-start-reasoning-first", "report-start-reasoning-then"],
        ReportPart::Change => &["report-start-change-first", "report-start-change-then"],
    };
    ReportPartView {
        part,
        name: report_name(part).into(),
        starters: starters.iter().map(|id| Message::new(id).into()).collect(),
        text: sight.context.sheet.report.get(part).to_owned(),
    }
}

fn checks(sight: &Sight) -> Vec<ReportCheck> {
    let texts = ARGUED.map(|part| sight.context.sheet.report.get(part));
    let there = present::present(&texts);
    let lines = [
        ("report-check-number", there.number),
        ("report-check-unit", there.unit),
        ("report-check-two-depths", there.two_depths),
        ("report-check-range", there.range),
    ];
    lines.map(|(name, there)| ReportCheck { name: Message::new(name).into(), there }).to_vec()
}

/// How many questions are answered, of how many.
fn questions(sight: &Sight) -> (usize, usize) {
    let asked = &sight.paper.asked;
    let answers = &sight.context.sheet.answers;
    let done = asked.iter().filter(|asked| standing(&sight.context, asked, answers.get(&asked.id)).done);
    (done.count(), asked.len())
}

fn stands(sight: &Sight) -> Vec<ReportStand> {
    let sheet = sight.context.sheet;
    let written = ARGUED.iter().filter(|part| !sheet.report.get(**part).trim().is_empty()).count();
    let decided = settled(sight).len();
    let of = |name: &'static str, (done, all): (usize, usize)| ReportStand {
        name: Message::new(name).into(),
        value: Message::new("report-of").count("done", done).count("all", all).into(),
    };
    let marked = match sheet.first_marks {
        Some(_) => Message::new("report-marks-yes"),
        None if sheet.marks.all_settled() => Message::new("report-marks-not-checked"),
        None => Message::new("report-marks-not-yet"),
    };
    vec![
        of("report-stand-questions", questions(sight)),
        of("report-stand-cells", (decided, decided + doubts(sight).len())),
        ReportStand { name: Message::new("report-stand-marks").into(), value: marked.into() },
        of("report-stand-parts", (written, ARGUED.len())),
    ]
}

fn said(messages: Vec<Message>) -> Vec<Said> {
    messages.into_iter().map(Into::into).collect()
}
