//! Cells are named by depth and column as well as by line.

#![allow(clippy::unwrap_used)]

#[path = "../examples/shared/render.rs"]
mod render;

use layercast_exchange::document::Choices;
use layercast_exchange::read::read_text;
use render::Words;

fn notices(table: &str, lang: &str) -> Vec<String> {
    let words = Words::load(lang);
    read_text(table, &Choices::default()).messages.iter().map(|message| words.render(message)).collect()
}

/// Half metres from the surface, going down and coming up; some cells replaced: (row, column, text).
fn table(replaced: &[(usize, usize, &str)]) -> String {
    let mut text = String::from("Depth (m),Down (°C),Up (°C)\n");
    for row in 0..9 {
        let mut cells =
            [format!("{:.1}", row as f64 / 2.0), format!("{}.5", 20 - row), format!("{}.4", 20 - row)];
        for (at, column, with) in replaced {
            if *at == row {
                (*with).clone_into(&mut cells[*column]);
            }
        }
        text.push_str(&(cells.join(",") + "\n"));
    }
    text
}

#[test]
fn an_empty_cell_is_named_by_depth_and_column() {
    let empty = table(&[(7, 2, "")]);
    assert!(notices(&empty, "en").contains(
        &"One cell is empty: 3.5\u{a0}m, coming up, line 9. Type the reading in if you have it.".to_owned()
    ));
    assert!(notices(&empty, "es").contains(
        &"Hay una casilla vacía: 3,5\u{a0}m, al subir, línea 9. Escribe la lectura si la tienes.".to_owned()
    ));
}

#[test]
fn several_are_listed_and_many_are_cut_short() {
    let two = notices(&table(&[(2, 1, ""), (7, 2, "")]), "en").join("\n");
    assert!(
        two.contains("2 cells are empty: 1.0\u{a0}m, going down, line 4; 3.5\u{a0}m, coming up, line 9."),
        "{two}"
    );
    let many: Vec<(usize, usize, &str)> = (1..7).map(|row| (row, 2, "")).collect();
    let many = notices(&table(&many), "en").join("\n");
    assert!(
        many.contains("6 cells are empty") && many.contains("2.0\u{a0}m, coming up, line 6 and more"),
        "{many}"
    );
}

#[test]
fn a_cell_without_a_depth_keeps_its_line_and_column() {
    let said = notices(&table(&[(4, 0, "2.Q"), (4, 1, "n/a")]), "en").join("\n");
    assert!(said.contains("going down in line 6"), "{said}");
}

#[test]
fn a_doubted_cell_is_named_by_depth_and_column() {
    let said = notices(&table(&[(3, 1, "1O.5"), (6, 0, "3.O")]), "en").join("\n");
    assert!(said.contains("1.5\u{a0}m, going down, line 5: You have “1O.5”."), "{said}");
    assert!(said.contains("Line 8, depth: You have “3.O”."), "{said}");
}
