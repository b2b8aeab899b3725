//! A table on its side: depths along a row, one leg a row.

use super::grid::Grid;
use super::words::head;
use crate::number::cell_number;

/// Fewest numbers in a row that lies on its side.
const FEWEST: usize = 3;
/// Most rows of numbers that a table on its side has.
const MOST_ROWS: usize = 8;

/// The table turned upright, if it lies on its side; its lines are then the columns as they came.
///
/// It does when every row with numbers begins with a head, one of them a depth, and holds more numbers than there are
/// such rows.
pub(super) fn turned<'a>(grid: &Grid<'a>) -> Option<Grid<'a>> {
    let mut lying = Vec::new();
    let mut depths = 0;
    for row in 0..grid.len() {
        let Some((first, rest)) = grid.row(row).split_first() else { continue };
        let numbers = rest.iter().filter(|cell| cell_number(cell, None).is_some()).count();
        if cell_number(first, None).is_some() {
            return None;
        }
        if numbers == 0 {
            continue;
        }
        let head = head(first);
        let names = head.depth || head.temp || head.oxygen || head.way().is_some();
        if numbers < FEWEST || !names || lying.len() == MOST_ROWS {
            return None;
        }
        depths += usize::from(head.depth);
        lying.push(row);
    }
    let width = lying.iter().map(|row| grid.row(*row).len()).max()?;
    if depths != 1 || lying.len() < 2 || width <= lying.len() + 1 {
        return None;
    }
    let mut turned = Grid::default();
    for (line, column) in (1..).zip(0..width) {
        let cells = lying.iter().map(|row| grid.row(*row).get(column).cloned().unwrap_or_default());
        turned.push_row(line, cells);
    }
    Some(turned)
}

#[cfg(test)]
mod tests {
    use super::super::grid::{Delimiter, split};
    use super::*;

    fn show(text: &str) -> Option<Vec<String>> {
        let grid = split(text, Delimiter::Sign(','));
        let turned = turned(&grid)?;
        Some((0..turned.len()).map(|row| turned.row(row).join("|")).collect())
    }

    #[test]
    fn rows_that_begin_with_a_head_become_columns() {
        let text = "Quillet Pond\nDepth (m),0,1,2\nTemp (°C),20,19,15\n";
        assert_eq!(show(text).unwrap(), ["Depth (m)|Temp (°C)", "0|20", "1|19", "2|15"]);
    }

    #[test]
    fn upright_tables_stay_as_they_are() {
        assert_eq!(show("Depth,Down,Up\n0,20,20\n1,19,19\n2,18,18\n"), None);
        assert_eq!(show("Station depth,9.6\nDepth,Temp\n0,20\n1,19\n"), None);
        assert_eq!(show("Up,1,2,3\nDown,1,2,3\n"), None);
        assert_eq!(show(""), None);
    }
}
