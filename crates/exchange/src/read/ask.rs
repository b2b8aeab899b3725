//! The questions that come before a table can be used, each with the answers to choose from.

use super::Question;
use super::columns::Roles;
use super::interpret::{DepthColumn, Table};
use super::say::{decimals_of, in_unit, likely_depth_unit, range, snip};
use super::scale::Scale;
use crate::document::{Choices, Decimal, LegChoice, Role, Unit};
use layercast_core::Message;
use layercast_core::order::sort_by;

/// The choices with one more thing decided.
fn with(choices: &Choices, decide: impl FnOnce(&mut Choices)) -> Choices {
    let mut choices = choices.clone();
    decide(&mut choices);
    choices
}

/// Separators or decimal signs? The first row, read both ways.
pub(super) fn commas(choices: &Choices, line: u32, written: &str, joined: &str) -> Question {
    let decimal = |decimal| with(choices, |choices| choices.decimal = Some(decimal));
    Question {
        title: Message::new("read-ask-commas"),
        text: Message::new("read-ask-commas-text")
            .text("line", line.to_string())
            .text("written", snip(written)),
        ways: vec![
            (Message::new("read-way-commas-decimal").text("joined", snip(joined)), decimal(Decimal::Comma)),
            (
                Message::new("read-way-commas-separate").text("separate", snip(&written.replace(',', "  "))),
                decimal(Decimal::Point),
            ),
        ],
        column: None,
    }
}

/// One and a half or fifteen hundred?
pub(super) fn which_decimal(
    column: usize,
    line: u32,
    written: &str,
    sign: Decimal,
    choices: &Choices,
) -> Question {
    let other = match sign {
        Decimal::Point => Decimal::Comma,
        Decimal::Comma => Decimal::Point,
    };
    let decimal = |decimal| with(choices, |choices| choices.decimal = Some(decimal));
    let value =
        |decimal| crate::number::cell_number(written, Some(decimal)).map_or(0.0, |number| number.value);
    let (small, large) = (value(sign), value(other));
    Question {
        title: Message::new("read-ask-decimal").text("written", snip(written)),
        text: Message::new("read-ask-decimal-text")
            .text("line", line.to_string())
            .text("written", snip(written)),
        ways: vec![
            (Message::new("read-way-number").number("value", small, 3), decimal(sign)),
            (Message::new("read-way-number").number("value", large, 0), decimal(other)),
        ],
        column: Some(column),
    }
}

/// The first numbers of a column, as a sample of it.
fn sample(table: &Table<'_>, at: usize) -> Message {
    let cells =
        table.rows.readings.iter().map(|row| table.grid.cell(*row, at)).filter(|cell| !cell.is_empty());
    let written: Vec<&str> = cells.take(3).collect();
    Message::new("read-sample").count("column", at + 1).text("written", snip(&written.join(" · ")))
}

/// Which column is the depth?
pub(super) fn which_depth(table: &Table<'_>, candidates: &[usize], choices: &Choices) -> Question {
    let elsewhere =
        table.columns.iter().enumerate().any(|(at, column)| column.numbers > 0 && !candidates.contains(&at));
    let choose = |depth: Option<usize>, unit: Option<Unit>| {
        with(choices, |choices| {
            for at in candidates {
                if Some(*at) == depth {
                    choices.roles.insert(*at, Role::Depth);
                    if let Some(unit) = unit {
                        choices.units.insert(*at, unit);
                    }
                } else if elsewhere || depth.is_none() {
                    choices.roles.insert(*at, Role::NotUsed);
                }
            }
        })
    };
    let values = |at: usize| table.columns.get(at).map_or(&[][..], |column| column.values.as_slice());
    // A column that counts 1, 2, 3 … is more often a number of the row than a depth: it comes last.
    let counts = |at: usize| {
        let mut number = 0.0;
        values(at).iter().all(|value| {
            number += 1.0;
            *value == number
        })
    };
    let mut order = candidates.to_vec();
    sort_by(&mut order, |a, b| counts(*a).cmp(&counts(*b)));
    let mut ways: Vec<(Message, Choices)> = order
        .iter()
        .take(4)
        .map(|at| match likely_depth_unit(values(*at)) {
            Some(unit) => (
                Message::new("read-way-column-unit")
                    .count("column", at + 1)
                    .message("in", in_unit(Some(unit))),
                choose(Some(*at), Some(unit)),
            ),
            None => (Message::new("read-way-column").count("column", at + 1), choose(Some(*at), None)),
        })
        .collect();
    if elsewhere {
        ways.push((Message::new("read-way-neither"), choose(None, None)));
    }
    let text = match candidates {
        [first, second] => Message::new("read-ask-depth-column-two")
            .message("first", sample(table, *first))
            .message("second", sample(table, *second)),
        _ => {
            let first = candidates.first().copied().unwrap_or(0);
            Message::new("read-ask-depth-column-many")
                .count("count", candidates.len())
                .message("first", sample(table, first))
        }
    };
    Question { title: Message::new("read-ask-depth-column"), text, ways, column: candidates.first().copied() }
}

/// Which columns are the temperatures?
pub(super) fn which_temps(table: &Table<'_>, candidates: &[usize], choices: &Choices) -> Question {
    let (first, second) = match candidates {
        [first, second, ..] => (*first, *second),
        _ => (0, 0),
    };
    let set = |role: &dyn Fn(usize) -> Role| {
        with(choices, |choices| {
            for at in candidates {
                choices.roles.insert(*at, role(*at));
            }
        })
    };
    let pair = |at: usize| match at {
        _ if at == first => Role::Down,
        _ if at == second => Role::Up,
        _ => Role::NotUsed,
    };
    Question {
        title: Message::new("read-ask-temp-columns"),
        text: Message::new("read-ask-temp-columns-text")
            .count("count", candidates.len())
            .message("first", sample(table, first))
            .message("second", sample(table, second)),
        ways: vec![
            (Message::new("read-way-down-up").count("down", first + 1).count("up", second + 1), set(&pair)),
            (Message::new("read-way-all-temps"), set(&|_| Role::One)),
            (
                Message::new("read-way-only-column").count("column", first + 1),
                set(&|at| if at == first { Role::One } else { Role::NotUsed }),
            ),
        ],
        column: Some(first),
    }
}

/// Metres, centimetres or feet?
pub(super) fn which_depth_unit(found: &Roles, depths: &[DepthColumn], choices: &Choices) -> Question {
    let column = depths.first();
    let values = column.map_or(&[][..], |column| column.values.as_slice());
    let wild = super::depths::wild(values);
    let tame: Vec<f64> = values.iter().zip(wild).filter(|(_, wild)| !wild).map(|(value, _)| *value).collect();
    let (low, high) = range(tame.iter().copied()).unwrap_or((0.0, 0.0));
    let step = super::depths::usual_step(&tame);
    let order = match (likely_depth_unit(&tame), high) {
        (Some(Unit::Cm), _) => [Unit::Cm, Unit::M, Unit::Ft],
        (_, high) if high <= 100.0 && step.is_some_and(|step| step >= 1.0) => [Unit::Ft, Unit::M, Unit::Cm],
        (_, high) if high > 100.0 => [Unit::Cm, Unit::Ft, Unit::M],
        _ => [Unit::M, Unit::Ft, Unit::Cm],
    };
    let label = |unit: Unit| {
        let message = match unit {
            Unit::Cm => Message::new("read-way-cm"),
            Unit::Ft => Message::new("read-way-ft"),
            _ => Message::new("read-way-m"),
        };
        let deepest_m = unit.to_m_or_c(high);
        message.number("deepest", deepest_m, if deepest_m < 1.0 { 2 } else { 1 })
    };
    let choose = |unit: Unit| {
        with(choices, |choices| {
            let columns = found.roles.iter().enumerate().filter(|(_, role)| **role == Role::Depth);
            for (at, _) in columns {
                choices.units.entry(at).or_insert(unit);
            }
        })
    };
    let decimals = decimals_of(&tame);
    let text = match step {
        Some(step) => Message::new("read-ask-depth-unit-text").number("step", step, decimals_of(&[step])),
        None => Message::new("read-ask-depth-unit-one"),
    };
    let column = column.map(|column| column.at);
    let text = text.number("low", low, decimals).number("high", high, decimals);
    Question {
        title: Message::new("read-ask-depth-unit"),
        text,
        ways: order.iter().map(|unit| (label(*unit), choose(*unit))).collect(),
        column,
    }
}

/// °F or °C?
pub(super) fn which_temp_unit(found: &Roles, scale: Scale, temps: &[f64], choices: &Choices) -> Question {
    let (low, high) = range(temps.iter().copied()).unwrap_or((0.0, 0.0));
    let is_temp = |role: &Role| matches!(role, Role::Down | Role::Up | Role::One);
    let columns: Vec<usize> =
        found.roles.iter().enumerate().filter(|(_, role)| is_temp(role)).map(|(at, _)| at).collect();
    let choose = |unit: Unit| {
        with(choices, |choices| {
            for at in &columns {
                choices.units.insert(*at, unit);
            }
        })
    };
    let fahrenheit = (Message::new("read-way-f"), choose(Unit::F));
    let celsius = (Message::new("read-way-c"), choose(Unit::C));
    let decimals = decimals_of(temps).min(1);
    let (title, text, ways) = match scale {
        Scale::Doubtful(Unit::F) => (
            Message::new("read-ask-celsius"),
            Message::new("read-ask-celsius-text"),
            vec![
                (Message::new("read-way-yes-c"), choose(Unit::C)),
                (Message::new("read-way-no-f"), choose(Unit::F)),
            ],
        ),
        Scale::Doubtful(_) => (
            Message::new("read-ask-fahrenheit"),
            Message::new("read-ask-fahrenheit-written"),
            vec![fahrenheit, celsius],
        ),
        _ => (
            Message::new("read-ask-fahrenheit"),
            Message::new("read-ask-fahrenheit-text"),
            vec![fahrenheit, celsius],
        ),
    };
    Question {
        title,
        text: text
            .number("low", low, decimals)
            .number("high", high, decimals)
            .number("low_c", Unit::F.to_m_or_c(low), 1)
            .number("high_c", Unit::F.to_m_or_c(high), 1),
        ways,
        column: columns.first().copied(),
    }
}

/// The depths begin again: is the second series coming up?
pub(super) fn second_series(line: u32, choices: &Choices) -> Question {
    let choose = |leg| with(choices, |choices| choices.leg = Some(leg));
    Question {
        title: Message::new("read-ask-second-series"),
        text: Message::new("read-ask-second-series-text").text("line", line.to_string()),
        ways: vec![
            (Message::new("read-way-down-then-up"), choose(LegChoice::DownThenUp)),
            (Message::new("read-way-both-down"), choose(LegChoice::Down)),
            (Message::new("read-way-leave-open"), choose(LegChoice::Open)),
        ],
        column: None,
    }
}
