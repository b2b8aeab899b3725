//! What the page tells a student: a number in a sentence, lists of choices, marks.

use super::super::Pond;
use layercast_lesson::questions;
use layercast_lesson::view::{FieldKind, FieldView, QuestionView, Said, SaidArg};

/// The question of a kind as it is shown.
pub fn page(pond: &Pond, kind: u8) -> Option<QuestionView> {
    let paper = pond.paper();
    let index = paper.asked.iter().position(|a| a.kind == kind)?;
    questions::view(&pond.context(), &paper, index)
}

/// A number that a sentence of a question tells.
pub fn number(pond: &Pond, kind: u8, sentence: &str, name: &str) -> Option<f64> {
    let page = page(pond, kind)?;
    let said = page.lead.iter().chain(&page.notes).find(|s| s.id == sentence)?;
    match said.args.get(name)? {
        SaidArg::Number { value, .. } => Some(*value),
        _ => None,
    }
}

/// The fields of a question.
pub fn fields(pond: &Pond, kind: u8) -> Vec<FieldView> {
    let parts = page(pond, kind).into_iter().flat_map(|page| page.parts);
    parts.flat_map(|p| p.lines).flat_map(|l| l.fields).collect()
}

/// Whether the two ranges that a question tells share a depth.
pub fn ranges_share(pond: &Pond, kind: u8) -> bool {
    let mut pond = pond.again();
    pond.sheet.first_marks = Some(pond.sheet.marks.clone());
    let page = page(&pond, kind).unwrap();
    let range = |name: &str| {
        let said = page.lead.iter().find_map(|said| match said.args.get(name) {
            Some(SaidArg::Message { said }) => Some(said),
            _ => None,
        });
        let end = |name: &str| match said.unwrap().args.get(name) {
            Some(SaidArg::Number { value, .. }) => *value,
            other => panic!("{other:?}"),
        };
        (end("from"), end("to"))
    };
    let (own, other) = (range("own"), range("other"));
    own.0 <= other.1 + 1e-9 && other.0 <= own.1 + 1e-9
}

/// Values of the lines to choose from.
pub fn choices(pond: &Pond, kind: u8) -> Vec<(String, Said)> {
    let options = |f: FieldView| match f.kind {
        FieldKind::Choice { options } => options.into_iter().map(|o| (o.value, o.label)).collect(),
        _ => Vec::new(),
    };
    fields(pond, kind).into_iter().flat_map(options).collect()
}

/// Depths and temperatures that a sentence lists.
pub fn marks(pond: &Pond, kind: u8) -> Vec<(f64, f64)> {
    fn gather(said: &Said, list: &mut Vec<(f64, f64)>) {
        let number = |name: &str| match said.args.get(name) {
            Some(SaidArg::Number { value, .. }) => Some(*value),
            _ => None,
        };
        list.extend(number("depth").zip(number("temp")));
        for name in ["marks", "first", "rest"] {
            if let Some(SaidArg::Message { said }) = said.args.get(name) {
                gather(said, list);
            }
        }
    }
    let mut list = Vec::new();
    for said in page(pond, kind).iter().flat_map(|page| &page.lead) {
        gather(said, &mut list);
    }
    list
}
