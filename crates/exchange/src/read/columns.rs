//! What each column is: from what a person chose, from its head, then from its numbers.

use super::depths::{Shape, shape, usual_step};
use super::grid::Grid;
use super::rows::{Rows, read_heads};
use super::words::{Head, missing, way};
use crate::document::{Choices, MOST_OXYGEN_MG_L, Role, Unit, without_oxygen_unit};
use crate::number::cell_number;
use crate::units::UnitWord;

/// A column and what its cells hold, over the rows of readings.
#[derive(Clone, Debug, Default)]
pub(super) struct Cells {
    /// What its head says.
    pub head: Head,
    /// Cells with something in them.
    pub filled: usize,
    /// Cells that are numbers.
    pub numbers: usize,
    /// Cells that name a way.
    pub ways: usize,
    /// The numbers as written (decimal sign not yet known: read as a decimal sign), NaN for other cells.
    pub values: Vec<f64>,
    /// How many cells carry which unit.
    pub units: [usize; 5],
}

const UNITS: [Unit; 5] = [Unit::M, Unit::Cm, Unit::Ft, Unit::C, Unit::F];

impl Cells {
    /// The unit written in the head, the row of units, or most of the cells.
    pub fn unit(&self, length: bool) -> Option<Unit> {
        if let Some(UnitWord::Known(unit)) = self.head.unit
            && unit.is_length() == length
        {
            return Some(unit);
        }
        let (unit, count) = UNITS
            .iter()
            .zip(self.units)
            .filter(|(unit, _)| unit.is_length() == length)
            .max_by_key(|(_, count)| *count)?;
        (2 * count > self.numbers).then_some(*unit)
    }

    /// Oxygen in per cent of saturation: it says so, or no unit is written and most numbers are beyond any in mg/L.
    pub fn is_percent(&self) -> bool {
        let beyond = self.values.iter().filter(|value| **value > MOST_OXYGEN_MG_L).count();
        self.head.oxygen && !self.head.mg_l && (self.head.percent || 2 * beyond > self.numbers)
    }

    /// Whether a unit that cannot be read stands in the head.
    pub fn is_foreign(&self) -> bool {
        self.head.unit == Some(UnitWord::Foreign)
    }
}

/// Looks through the cells of every column.
pub(super) fn cells(grid: &Grid<'_>, rows: &Rows, width: usize) -> Vec<Cells> {
    let mut columns: Vec<Cells> =
        read_heads(rows).into_iter().map(|head| Cells { head, ..Cells::default() }).collect();
    columns.resize_with(width, Cells::default);
    for row in &rows.readings {
        let cells = grid.row(*row);
        for (at, column) in columns.iter_mut().enumerate() {
            let cell = cells.get(at).map_or("", |cell| cell);
            let cell = if column.head.oxygen { without_oxygen_unit(cell) } else { cell };
            let absent = missing(cell).is_some();
            let number = cell_number(cell, None).filter(|_| !absent);
            column.filled += usize::from(!cell.is_empty());
            column.numbers += usize::from(number.is_some());
            column.values.push(number.map_or(f64::NAN, |number| number.value));
            if let Some(UnitWord::Known(unit)) = number.and_then(|number| number.unit)
                && let Some(count) =
                    UNITS.iter().position(|known| *known == unit).and_then(|at| column.units.get_mut(at))
            {
                *count += 1;
            }
            if number.is_none() && !absent {
                column.ways += usize::from(way(cell).is_some());
            }
        }
    }
    columns
}

/// The roles, and how they came about.
#[derive(Clone, Debug, Default, PartialEq)]
pub(super) struct Roles {
    /// One a column.
    pub roles: Vec<Role>,
    /// Columns whose role was taken from the numbers alone.
    pub guessed: Vec<usize>,
    /// Two unnamed temperatures were taken for down and up, in this order.
    pub by_order: Option<(usize, usize)>,
    /// A column that says the same as another in another unit, and that other one.
    pub twin: Option<(usize, usize)>,
    /// What must be asked first.
    pub ask: Option<Ask>,
}

/// A question about roles.
#[derive(Clone, Debug, PartialEq)]
pub(super) enum Ask {
    /// Which of these is the depth?
    Depth(Vec<usize>),
    /// Which of these are the temperatures?
    Temps(Vec<usize>),
    /// No column can be a depth.
    NoDepth,
    /// No column can be a temperature.
    NoTemp,
    /// Only one column has numbers.
    OneColumn,
}

/// Gives every column its role. `blocks`: the way is given by lines of their own.
pub(super) fn roles(columns: &[Cells], choices: &Choices, blocks: bool) -> Roles {
    let mut found = Roles::default();
    let mut open: Vec<usize> = Vec::new();
    for (at, column) in columns.iter().enumerate() {
        let role = match choices.roles.get(&at) {
            Some(role) => Some(*role),
            None => by_head(column, blocks),
        };
        if role.is_none() && column.numbers > 0 {
            open.push(at);
        }
        found.roles.push(role.unwrap_or(Role::NotUsed));
    }
    // A column that is set aside by its head may still be needed, but only where there is no other.
    let named: Vec<usize> =
        open.iter().copied().filter(|at| !columns.get(*at).is_some_and(|c| c.head.aside)).collect();

    drop_twins(columns, choices, &mut found);
    if !found.roles.contains(&Role::Leg) {
        let names_ways = |column: &Cells| column.ways > 1 && 5 * column.ways >= 4 * column.filled;
        let leg = (0..columns.len())
            .find(|at| columns.get(*at).is_some_and(names_ways) && !choices.roles.contains_key(at));
        if let Some(leg) = leg {
            set(&mut found.roles, leg, Role::Leg);
        }
    }
    let is_temp = |role: &Role| matches!(role, Role::Down | Role::Up | Role::One);
    let has_temp = found.roles.iter().any(is_temp);
    if !found.roles.contains(&Role::Depth) {
        let candidates = if named.len() > usize::from(!has_temp) { &named } else { &open };
        match depth_by_numbers(columns, candidates, has_temp) {
            Ok(depth) => {
                set(&mut found.roles, depth, Role::Depth);
                found.guessed.push(depth);
            }
            Err(ask) => {
                found.ask = Some(ask);
                return found;
            }
        }
    }
    if !has_temp {
        let free = |at: &&usize| found.roles.get(**at) == Some(&Role::NotUsed);
        let mut candidates: Vec<usize> = named.iter().filter(free).copied().collect();
        if candidates.is_empty() {
            candidates = open.iter().filter(free).copied().collect();
        }
        match candidates.as_slice() {
            [] => {
                let numeric = columns.iter().filter(|column| column.numbers > 0).count();
                found.ask = Some(if numeric < 2 { Ask::OneColumn } else { Ask::NoTemp });
                return found;
            }
            [_] | [_, _] => {
                for at in candidates {
                    set(&mut found.roles, at, Role::One);
                    found.guessed.push(at);
                }
            }
            _ => {
                found.ask = Some(Ask::Temps(candidates));
                return found;
            }
        }
        drop_twins(columns, choices, &mut found);
    }
    let ones: Vec<usize> = (0..found.roles.len())
        .filter(|at| found.roles.get(*at) == Some(&Role::One) && !choices.roles.contains_key(at))
        .collect();
    let way_is_given = blocks || found.roles.contains(&Role::Leg);
    match ones.as_slice() {
        [down, up] if !way_is_given => {
            set(&mut found.roles, *down, Role::Down);
            set(&mut found.roles, *up, Role::Up);
            found.by_order = Some((*down, *up));
        }
        [_, _, _, ..] => found.ask = Some(Ask::Temps(ones)),
        _ => {}
    }
    found
}

fn set(roles: &mut [Role], at: usize, role: Role) {
    if let Some(slot) = roles.get_mut(at) {
        *slot = role;
    }
}

/// The role that the head gives; `None` when it says nothing.
fn by_head(column: &Cells, blocks: bool) -> Option<Role> {
    let head = &column.head;
    if column.filled == 0 || head.other {
        return Some(Role::NotUsed);
    }
    if head.secchi && column.numbers > 0 {
        return Some(Role::Secchi);
    }
    if head.oxygen {
        let is_used = column.numbers > 0 && !column.is_percent();
        return Some(if is_used { Role::Oxygen } else { Role::NotUsed });
    }
    if head.leg && column.ways > 0 && 2 * column.ways >= column.filled {
        return Some(Role::Leg);
    }
    if column.numbers == 0 && !(head.depth || head.temp || head.way().is_some()) {
        return Some(Role::NotUsed);
    }
    if head.depth && !head.temp {
        return Some(Role::Depth);
    }
    if let Some(way) = head.way() {
        return Some(match way {
            _ if blocks => Role::One,
            crate::document::LegDoc::Down => Role::Down,
            _ => Role::Up,
        });
    }
    if head.temp {
        return Some(Role::One);
    }
    match head.unit {
        Some(UnitWord::Known(unit)) if !head.aside => {
            Some(if unit.is_length() { Role::Depth } else { Role::One })
        }
        _ => None,
    }
}

/// Two columns that say the same in two units: the one in our own unit stays.
fn drop_twins(columns: &[Cells], choices: &Choices, found: &mut Roles) {
    let value = |at: usize, row: usize, length: bool| {
        let column = columns.get(at)?;
        Some(column.unit(length)?.to_m_or_c(*column.values.get(row)?))
    };
    for role in [Role::Depth, Role::One, Role::Down, Role::Up] {
        let length = role == Role::Depth;
        let same: Vec<usize> = (0..columns.len())
            .filter(|at| found.roles.get(*at) == Some(&role) && !choices.roles.contains_key(at))
            .filter(|at| columns.get(*at).is_some_and(|column| column.unit(length).is_some()))
            .collect();
        let [first, second] = same.as_slice() else { continue };
        let units = [first, second].map(|at| columns.get(*at).and_then(|column| column.unit(length)));
        if units.first() == units.get(1) {
            continue;
        }
        let rows = columns.get(*first).map_or(0, |column| column.values.len());
        let slack = if length { 0.06 } else { 0.2 };
        let pairs = (0..rows).filter_map(|row| value(*first, row, length).zip(value(*second, row, length)));
        let (mut all, mut equal) = (0_usize, 0_usize);
        for (a, b) in pairs.filter(|(a, b)| a.is_finite() && b.is_finite()) {
            all += 1;
            equal += usize::from((a - b).abs() <= slack);
        }
        if all > 0 && 10 * equal >= 9 * all {
            let ours = matches!(units.get(1), Some(Some(Unit::M | Unit::C)));
            let (kept, dropped) = if ours { (*second, *first) } else { (*first, *second) };
            set(&mut found.roles, dropped, Role::NotUsed);
            found.twin = Some((dropped, kept));
        }
    }
}

/// The one column whose numbers run as depths do.
fn depth_by_numbers(columns: &[Cells], candidates: &[usize], has_temp: bool) -> Result<usize, Ask> {
    let ranked: Vec<(u8, usize)> =
        candidates.iter().filter_map(|at| Some((depth_rank(&columns.get(*at)?.values), *at))).collect();
    let best = ranked.iter().map(|(rank, _)| *rank).max().unwrap_or(0);
    let leading: Vec<usize> = ranked.iter().filter(|(rank, _)| *rank == best).map(|(_, at)| *at).collect();
    match leading.as_slice() {
        [] if columns.iter().filter(|column| column.numbers > 0).count() < 2 => Err(Ask::OneColumn),
        [] => Err(Ask::NoDepth),
        [only] if best > 0 || has_temp => Ok(*only),
        [_] => Err(if candidates.len() < 2 { Ask::OneColumn } else { Ask::Depth(candidates.to_vec()) }),
        _ => Err(Ask::Depth(leading)),
    }
}

/// How well numbers run as depths: 3 evenly from the surface down, 2 evenly, 1 somehow, 0 not.
fn depth_rank(values: &[f64]) -> u8 {
    let depths: Vec<f64> = values.iter().copied().filter(|value| value.is_finite()).collect();
    if depths.len() < 3 || 10 * depths.len() < 8 * values.len() {
        return 0;
    }
    let downward_is_minus = depths.iter().all(|depth| *depth <= 0.0);
    let depths: Vec<f64> =
        if downward_is_minus { depths.iter().map(|depth| -depth).collect() } else { depths };
    let (Some(first), Some(last), Some(step)) = (depths.first(), depths.last(), usual_step(&depths)) else {
        return 0;
    };
    let steps: Vec<f64> = depths.iter().zip(depths.iter().skip(1)).map(|(a, b)| (b - a).abs()).collect();
    let moves = steps.iter().filter(|step| **step > 1e-9).count();
    let even = steps.iter().filter(|s| (**s - step).abs() <= 1e-6 * step).count();
    let is_even = 10 * even >= 6 * moves && 10 * moves >= 4 * steps.len();
    let runs = match shape(&depths) {
        Shape::OneWay => last > first || (is_even && last < first),
        Shape::ThereAndBack(_) | Shape::BackAndThere(_) | Shape::Twice(_) => true,
        Shape::Tangled => false,
    };
    let shallowest = depths.iter().copied().fold(f64::INFINITY, f64::min);
    match (runs, is_even) {
        (true, true)
            if shallowest <= 2.0 * step && last != first && first.min(*last) <= shallowest + 1e-9 =>
        {
            3
        }
        (true, true) => 2,
        (true, false) => 1,
        (false, _) => 0,
    }
}
