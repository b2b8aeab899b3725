//! Cells to readings: roles, decimal sign, units, ways, in this order; the first thing that is not clear is asked.

use super::columns::{Ask, Cells, Roles, cells, roles};
use super::depths::{self, Shape};
use super::grid::Grid;
use super::rows::{Rows, rows};
use super::scale::{self, Scale};
use super::{
    Column, MAX_COLUMNS, Outcome, Question, Row, RowKind, SHOWN_ROWS, TableRead, build, say, secchi, side,
};
use crate::document::{Choices, Decimal, LegChoice, LegDoc, Role, Unit};
use crate::number::cell_number;
use layercast_core::Message;

/// A table with its rows and columns told apart.
pub(super) struct Table<'g> {
    pub grid: &'g Grid<'g>,
    pub rows: Rows,
    pub columns: Vec<Cells>,
}

/// A temperature column, the depth column beside it, and the units of both.
#[derive(Clone, Copy, Debug)]
pub(super) struct Series {
    pub temp: usize,
    pub depth: usize,
    pub role: Role,
    pub temp_unit: Unit,
    pub depth_unit: Unit,
    /// Depths are written with a minus.
    pub minus: bool,
}

/// Reads a table of cells.
pub(super) fn interpret(grid: &Grid<'_>, choices: &Choices) -> TableRead {
    match side::turned(grid) {
        Some(turned) => {
            let mut read = interpret_upright(&turned, choices);
            read.notice(Message::new("read-notice-on-its-side"));
            read
        }
        None => interpret_upright(grid, choices),
    }
}

fn interpret_upright(grid: &Grid<'_>, choices: &Choices) -> TableRead {
    let width = grid.width();
    if width > MAX_COLUMNS {
        return TableRead::error(vec![say::too_many_columns(width), Message::new("read-do-few-columns")]);
    }
    let rows = rows(grid, width);
    if rows.readings.is_empty() {
        let first =
            (0..grid.len()).find(|row| grid.row(*row).iter().any(|cell| !cell.is_empty())).unwrap_or(0);
        let written = grid.row(first).join(" ");
        return TableRead::error(vec![
            say::no_table(grid.line(first), &written),
            Message::new("read-do-copy"),
        ]);
    }
    let columns = cells(grid, &rows, width);
    Table { grid, rows, columns }.interpret(choices, 0)
}

/// A table whose commas must be asked about before its columns are known.
pub(super) fn ask_about_commas(grid: &Grid<'_>, choices: &Choices, question: Question) -> TableRead {
    let width = grid.width().min(MAX_COLUMNS);
    let table = Table { grid, rows: rows(grid, width), columns: vec![Cells::default(); width] };
    let mut read = table.view(choices, &vec![Role::NotUsed; width]);
    read.outcome = Outcome::Question;
    read.question = Some(question);
    read
}

impl Table<'_> {
    /// Reads the table as the choices have it. `level`: how many questions are being tried out.
    fn interpret(&self, choices: &Choices, level: u8) -> TableRead {
        let found = roles(&self.columns, choices, !self.rows.blocks.is_empty());
        let mut read = self.view(choices, &found.roles);
        if let Some(ask) = &found.ask {
            return self.ask_for_roles(read, ask, choices, level);
        }
        if let Some(message) = self.foreign_unit(&found, choices) {
            read.outcome = Outcome::Error;
            read.messages = vec![message, Message::new("read-do-units")];
            return read;
        }
        let decimal = match self.decimal(&found, choices) {
            Ok(decimal) => decimal,
            Err(question) => return self.question(read, question, level),
        };
        read.messages = say::how_columns_were_told(self, &found);
        let depths = self.depths(&found, decimal);

        let depth_scale = self.depth_scale(&found, &depths, choices);
        let temps: Vec<f64> = self.temps(&found, decimal);
        let temp_scale = self.temp_scale(&found, &temps, choices);
        read.messages.extend(say::units_taken(depth_scale, &depths, temp_scale, &temps));
        self.show_units(&mut read, &found, choices, depth_scale, temp_scale);
        let shape = depths.first().map_or(Shape::OneWay, |column| depths::shape(&column.values));
        let by_order_of_depths = !found.roles.contains(&Role::Leg)
            && self.rows.blocks.is_empty()
            && found.roles.iter().all(|role| !matches!(role, Role::Down | Role::Up));
        let turns = by_order_of_depths
            && match shape {
                Shape::ThereAndBack(_) => choices.leg.is_none(),
                Shape::Twice(_) => choices.leg == Some(LegChoice::DownThenUp),
                _ => false,
            };
        read.understood = Some(say::understood(self, &found, turns, depth_scale, temp_scale));
        if depth_scale.unit().is_none() {
            let question = say::which_depth_unit(&found, &depths, choices);
            return self.question(read, question, level);
        }
        if temp_scale.unit().is_none() {
            let question = say::which_temp_unit(&found, temp_scale, &temps, choices);
            return self.question(read, question, level);
        }
        if let (true, Shape::Twice(at), None) = (by_order_of_depths, shape, choices.leg) {
            let question = say::second_series(self.line_of_reading(at), choices);
            return self.question(read, question, level);
        }
        let series = self.series(&found, &depths, depth_scale, temp_scale, choices);
        let leg_of =
            |ordinal: usize| by_order_of_depths.then(|| leg_at(shape, choices.leg, ordinal)).flatten();
        read.leg_open =
            by_order_of_depths && choices.leg.is_none() && matches!(shape, Shape::OneWay | Shape::Tangled);
        if by_order_of_depths {
            read.messages.extend(say::way_of_series(self, shape, choices.leg));
        }
        if depths.iter().any(|column| column.minus) {
            read.messages.push(Message::new("read-notice-minus"));
        }
        build::entries(self, &found, &series, decimal, leg_of, &mut read);
        read.messages.extend(say::oxygen_columns(self, &found));
        read.messages.extend(say::salt_columns(self, &found));
        let (companions, message) = secchi::secchi(self, &found, decimal, choices);
        read.companions = companions;
        read.messages.extend(message);
        read.outcome = if read.messages.is_empty() { Outcome::Understood } else { Outcome::Noticed };
        read
    }

    /// Rows and columns for the view, nothing read yet.
    fn view(&self, choices: &Choices, roles: &[Role]) -> TableRead {
        let columns = roles.iter().enumerate().map(|(at, role)| Column {
            head: say::clip(self.rows.heads.get(at).map_or("", String::as_str)),
            role: *role,
            unit: choices.units.get(&at).copied(),
            role_open: false,
            unit_open: false,
        });
        let shown = 0..self.grid.len().min(SHOWN_ROWS);
        let rows = shown.map(|row| Row {
            line: self.grid.line(row) as usize,
            cells: self.grid.row(row).iter().take(MAX_COLUMNS).map(|cell| say::clip(cell)).collect(),
            kind: self.rows.kinds.get(row).copied().unwrap_or(RowKind::Title),
        });
        TableRead {
            columns: columns.collect(),
            rows: rows.collect(),
            row_count: self.grid.len(),
            ..TableRead::error(Vec::new())
        }
    }

    fn question(&self, mut read: TableRead, question: Question, level: u8) -> TableRead {
        read.outcome = Outcome::Question;
        read.gives = match question.ways.first() {
            Some((label, choices)) if level < 3 => {
                self.interpret(choices, level + 1).gives.map(|gives| say::gives_if(label, &gives))
            }
            _ => None,
        };
        // A question that only follows from a guess in this one shows no numbers of its own.
        read.question = Some(question);
        read
    }

    fn ask_for_roles(&self, mut read: TableRead, ask: &Ask, choices: &Choices, level: u8) -> TableRead {
        let (open, question) = match ask {
            Ask::Depth(candidates) => (candidates, say::which_depth(self, candidates, choices)),
            Ask::Temps(candidates) => (candidates, say::which_temps(self, candidates, choices)),
            Ask::NoDepth => return no_role(read, Message::new("read-error-no-depth")),
            Ask::NoTemp => return no_role(read, Message::new("read-error-no-temp")),
            Ask::OneColumn => return no_role(read, Message::new("read-error-one-column")),
        };
        for at in open {
            if let Some(column) = read.columns.get_mut(*at) {
                column.role = if matches!(ask, Ask::Depth(_)) { Role::Depth } else { Role::One };
                column.role_open = true;
            }
        }
        self.question(read, question, level)
    }

    fn foreign_unit(&self, found: &Roles, choices: &Choices) -> Option<Message> {
        let used =
            |at: usize| matches!(found.roles.get(at), Some(Role::Depth | Role::Down | Role::Up | Role::One));
        let at = (0..self.columns.len()).find(|at| {
            used(*at)
                && !choices.units.contains_key(at)
                && self.columns.get(*at).is_some_and(Cells::is_foreign)
        })?;
        Some(say::foreign_unit(at, self.rows.heads.get(at).map_or("", String::as_str)))
    }

    /// The decimal sign of the table, or the question about it.
    fn decimal(&self, found: &Roles, choices: &Choices) -> Result<Option<Decimal>, Question> {
        if choices.decimal.is_some() {
            return Ok(choices.decimal);
        }
        let (mut points, mut commas) = (0_usize, 0_usize);
        // The first cell of a depth column that could be thousands. A temperature never is.
        let mut open: Option<(usize, usize, Decimal)> = None;
        for (at, role) in found.roles.iter().enumerate() {
            if matches!(role, Role::NotUsed | Role::Leg | Role::Secchi) {
                continue;
            }
            for row in &self.rows.readings {
                let Some(number) = cell_number(self.grid.cell(*row, at), None) else { continue };
                match number.sign {
                    Some(sign) if number.could_be_thousands => {
                        open = open.or((*role == Role::Depth).then_some((at, *row, sign)));
                    }
                    Some(Decimal::Point) => points += 1,
                    Some(Decimal::Comma) => commas += 1,
                    None => {}
                }
            }
        }
        match (points, commas, open) {
            (0, 0, Some((column, row, sign))) => {
                let line = self.grid.line(row);
                Err(say::which_decimal(column, line, self.grid.cell(row, column), sign, choices))
            }
            (0, 0, None) => Ok(None),
            _ => Ok(Some(if points >= commas { Decimal::Point } else { Decimal::Comma })),
        }
    }

    /// The depth columns, positive downward, as written otherwise.
    fn depths(&self, found: &Roles, decimal: Option<Decimal>) -> Vec<DepthColumn> {
        let depth_columns = found.roles.iter().enumerate().filter(|(_, role)| **role == Role::Depth);
        depth_columns
            .map(|(at, _)| {
                let mut values: Vec<f64> = self.numbers(at, decimal);
                let (mut above, mut below) = (0_usize, 0_usize);
                for value in &values {
                    above += usize::from(*value < 0.0);
                    below += usize::from(*value > 0.0);
                }
                let minus = above > 3 * below;
                if minus {
                    values.iter_mut().for_each(|value| *value = 0.0 - *value);
                }
                DepthColumn { at, values, minus }
            })
            .collect()
    }

    fn temps(&self, found: &Roles, decimal: Option<Decimal>) -> Vec<f64> {
        let is_temp = |role: &Role| matches!(role, Role::Down | Role::Up | Role::One);
        let columns = found.roles.iter().enumerate().filter(|(_, role)| is_temp(role));
        columns.flat_map(|(at, _)| self.numbers(at, decimal)).collect()
    }

    /// The numbers of a column over the rows of readings; NaN where there is none.
    fn numbers(&self, at: usize, decimal: Option<Decimal>) -> Vec<f64> {
        let number = |row: &usize| cell_number(self.grid.cell(*row, at), decimal);
        let is_missing = |row: &usize| super::words::missing(self.grid.cell(*row, at)).is_some();
        let readings = self.rows.readings.iter();
        readings
            .map(|row| number(row).filter(|_| !is_missing(row)).map_or(f64::NAN, |number| number.value))
            .collect()
    }

    fn depth_scale(&self, found: &Roles, depths: &[DepthColumn], choices: &Choices) -> Scale {
        let written = self.written_unit(found, choices, true);
        let Some(column) = depths.first() else { return Scale::Ask };
        let wild = depths::wild(&column.values);
        let tame = column.values.iter().zip(wild).map(|(value, wild)| if wild { f64::NAN } else { *value });
        scale::depth(&tame.collect::<Vec<_>>(), written)
    }

    fn temp_scale(&self, found: &Roles, temps: &[f64], choices: &Choices) -> Scale {
        let chosen = found.roles.iter().enumerate().any(|(at, role)| {
            matches!(role, Role::Down | Role::Up | Role::One) && choices.units.contains_key(&at)
        });
        match self.written_unit(found, choices, false) {
            // A person's word is not asked about again.
            Some(unit) if chosen => Scale::Written(unit),
            written => scale::temperature(temps, written),
        }
    }

    /// The unit chosen for or written at any column of the kind.
    fn written_unit(&self, found: &Roles, choices: &Choices, length: bool) -> Option<Unit> {
        let of_kind = |role: &Role| match role {
            Role::Depth => length,
            Role::Down | Role::Up | Role::One => !length,
            Role::Leg | Role::Oxygen | Role::Secchi | Role::NotUsed => false,
        };
        let columns = || found.roles.iter().enumerate().filter(|(_, role)| of_kind(role)).map(|(at, _)| at);
        let chosen = columns()
            .find_map(|at| choices.units.get(&at).copied().filter(|unit| unit.is_length() == length));
        chosen.or_else(|| columns().find_map(|at| self.columns.get(at)?.unit(length)))
    }

    fn show_units(&self, read: &mut TableRead, found: &Roles, choices: &Choices, depth: Scale, temp: Scale) {
        for (at, column) in read.columns.iter_mut().enumerate() {
            let (scale, length) = match found.roles.get(at) {
                Some(Role::Depth) => (depth, true),
                Some(Role::Down | Role::Up | Role::One) => (temp, false),
                Some(Role::Secchi) => {
                    let of_head = self.columns.get(at).and_then(|column| column.unit(true));
                    column.unit = Some(choices.units.get(&at).copied().or(of_head).unwrap_or(Unit::M));
                    continue;
                }
                _ => continue,
            };
            column.unit = self.unit_of(at, length, scale, choices);
            column.unit_open = column.unit.is_none();
        }
    }

    /// The unit of one column: chosen, written, or that of its kind.
    fn unit_of(&self, at: usize, length: bool, scale: Scale, choices: &Choices) -> Option<Unit> {
        scale.unit()?;
        let chosen = choices.units.get(&at).copied().filter(|unit| unit.is_length() == length);
        chosen.or_else(|| self.columns.get(at)?.unit(length)).or(scale.unit())
    }

    fn series(
        &self,
        found: &Roles,
        depths: &[DepthColumn],
        depth_scale: Scale,
        temp_scale: Scale,
        choices: &Choices,
    ) -> Vec<Series> {
        let temps = found
            .roles
            .iter()
            .enumerate()
            .filter(|(_, role)| matches!(role, Role::Down | Role::Up | Role::One));
        temps
            .filter_map(|(temp, role)| {
                // The depth column just before it, else the first.
                let depth = depths.iter().rev().find(|depth| depth.at < temp).or(depths.first())?;
                Some(Series {
                    temp,
                    depth: depth.at,
                    role: *role,
                    temp_unit: self.unit_of(temp, false, temp_scale, choices)?,
                    depth_unit: self.unit_of(depth.at, true, depth_scale, choices)?,
                    minus: depth.minus,
                })
            })
            .collect()
    }

    /// The line of the n-th row of readings.
    pub fn line_of_reading(&self, ordinal: usize) -> u32 {
        self.rows.readings.get(ordinal).map_or(0, |row| self.grid.line(*row))
    }
}

/// A depth column: positive downward, in the unit as written.
pub(super) struct DepthColumn {
    pub at: usize,
    pub values: Vec<f64>,
    pub minus: bool,
}

/// The way of the n-th row, from the order of the depths; `None` where it stays open.
fn leg_at(shape: Shape, chosen: Option<LegChoice>, ordinal: usize) -> Option<LegDoc> {
    match (chosen, shape) {
        (Some(LegChoice::Down), _) => Some(LegDoc::Down),
        (Some(LegChoice::Up), _) => Some(LegDoc::Up),
        (Some(LegChoice::Open), _) => None,
        (_, Shape::ThereAndBack(at)) => Some(if ordinal < at { LegDoc::Down } else { LegDoc::Up }),
        (_, Shape::BackAndThere(at)) => Some(if ordinal < at { LegDoc::Up } else { LegDoc::Down }),
        (Some(LegChoice::DownThenUp), Shape::Twice(at)) => {
            Some(if ordinal < at { LegDoc::Down } else { LegDoc::Up })
        }
        _ => None,
    }
}

fn no_role(mut read: TableRead, message: Message) -> TableRead {
    read.outcome = Outcome::Error;
    read.messages = vec![message, Message::new("read-do-columns")];
    read
}
