//! Every sum that is shown comes to what stands behind it, worked again from the numbers as they are printed.

#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]

use crate::questions_support;

use layercast_lesson::document::Answer;
use layercast_lesson::questions;
use layercast_lesson::view::SumLine;
use questions_support::words::Words;
use questions_support::{Pond, all_ponds, demo};
use std::collections::BTreeMap;

/// A number and how many decimals it is printed with.
type Printed = (f64, i32);

/// The number at the start of a text, and what is left of it.
fn number(text: &str) -> Option<(Printed, &str)> {
    let signed = text.strip_prefix('−').unwrap_or(text);
    let end = signed.find(|c: char| !c.is_ascii_digit() && c != '.').unwrap_or(signed.len());
    let (digits, rest) = signed.split_at(end);
    let value: f64 = digits.trim_end_matches('.').parse().ok()?;
    let decimals = digits.find('.').map_or(0, |at| digits.len() - at - 1);
    let value = if signed.len() < text.len() { -value } else { value };
    Some(((value, i32::try_from(decimals).unwrap()), rest))
}

/// What the left side of a line comes to; `None` where it is no arithmetic.
fn worked(left: &str) -> Option<f64> {
    let mut text = left.replace("°C·m", "").replace("m²", "");
    text.retain(|c| c.is_ascii_digit() || ".+−×÷·()".contains(c));
    if !text.trim_start_matches('−').contains(['+', '−', '×', '÷', '·']) {
        return None;
    }
    fn term(text: &str) -> Option<(f64, &str)> {
        match text.strip_prefix('(') {
            Some(inner) => {
                let (value, rest) = all(inner)?;
                Some((value, rest.strip_prefix(')')?))
            }
            None => number(text).map(|((value, _), rest)| (value, rest)),
        }
    }
    fn product(text: &str) -> Option<(f64, &str)> {
        let (mut value, mut rest) = term(text)?;
        while let Some(next) = rest.strip_prefix(['×', '·', '÷']) {
            let (by, after) = term(next)?;
            (value, rest) = (if rest.starts_with('÷') { value / by } else { value * by }, after);
        }
        Some((value, rest))
    }
    fn all(text: &str) -> Option<(f64, &str)> {
        let (mut value, mut rest) = product(text)?;
        loop {
            let (sign, next) = match (rest.strip_prefix('+'), rest.strip_prefix('−')) {
                (Some(next), _) => (1.0, next),
                (_, Some(next)) => (-1.0, next),
                _ => return Some((value, rest)),
            };
            let (more, after) = product(next)?;
            (value, rest) = (value + sign * more, after);
        }
    }
    let (value, rest) = all(&text)?;
    rest.is_empty().then_some(value)
}

/// What is wrong with a line, if anything.
fn fault(line: &SumLine, words: &Words) -> Option<String> {
    let (left, right) = (words.say(&line.left), words.say(&line.right));
    let value = worked(&left)?;
    let start = right.find(|c: char| c.is_ascii_digit() || c == '−')?;
    let ((shown, decimals), _) = number(right.get(start..)?)?;
    let half = 0.5 * 10f64.powi(-decimals) + 1e-9;
    let value = value * if right.contains('%') { 100.0 } else { 1.0 };
    let value = value * if left.contains("million") { 1e6 } else { 1.0 };
    ((value - shown).abs() > half).then(|| format!("{left} {right} (comes to {value})"))
}

/// Faults of all sums of a water's questions: the answer shown, and the worked hint. And how many lines were arithmetic.
fn faults(pond: &mut Pond, words: &Words) -> (Vec<String>, usize) {
    let paper = pond.paper();
    let (mut faults, mut count) = (Vec::new(), 0);
    for (index, asked) in paper.asked.iter().enumerate() {
        let states = [Answer { shown: true, ..Answer::default() }, Answer { hints: 3, ..Answer::default() }];
        for answer in states {
            pond.sheet.answers = BTreeMap::from([(asked.id.clone(), answer)]);
            let page = questions::view(&pond.context(), &paper, index).unwrap();
            let lines =
                || page.parts.iter().flat_map(|p| p.sum.iter().chain(p.hints.iter().flat_map(|h| &h.sum)));
            count += lines().filter(|line| worked(&words.say(&line.left)).is_some()).count();
            let wrong = lines().filter_map(|line| fault(line, words));
            faults.extend(wrong.map(|wrong| format!("{} {}: {wrong}", pond.name, asked.kind)));
        }
    }
    (faults, count)
}

#[test]
fn every_sum_comes_to_what_is_printed() {
    let words = Words::new("en");
    let (mut all, mut lines) = (Vec::new(), 0);
    for mut pond in all_ponds() {
        let (faults, count) = faults(&mut pond, &words);
        all.extend(faults);
        lines += count;
    }
    assert!(all.is_empty(), "{} of {lines}\n{}", all.len(), all.join("\n"));
    assert!(lines > 500, "{lines}");
}

#[test]
fn a_sum_that_is_off_is_found() {
    let words = Words::new("en");
    let mut pond = demo("group_c");
    let paper = pond.paper();
    let index = paper.asked.iter().position(|a| a.kind == 5).unwrap();
    pond.sheet.answers.insert(paper.asked[index].id.clone(), Answer { shown: true, ..Answer::default() });
    let page = questions::view(&pond.context(), &paper, index).unwrap();
    let mut line = page.parts[0].sum[0].clone();
    assert_eq!(fault(&line, &words), None);
    line.right = page.parts[0].sum.last().unwrap().right.clone();
    assert!(fault(&line, &words).is_some());
    assert_eq!(worked("997.67 − 997.43 ="), Some(997.67 - 997.43));
    assert_eq!(worked("(1 + 2 + 3) ÷ 3 ="), Some(2.0));
    assert_eq!(worked("3.5 + 0.4 × 0.5 ="), Some(3.7));
    assert_eq!(worked("At 3 m:"), None);
}
