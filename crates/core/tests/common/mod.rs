//! Reading the tables of `tests/reference`, and seeded noise.
#![allow(dead_code)] // every test file uses a part of it

pub mod any;

use layercast_core::{Cast, Leg, Level, Reading, Switch};
use rand_pcg::Pcg64;
use rand_pcg::rand_core::Rng;
use std::collections::HashMap;
use std::path::PathBuf;

/// Folder of the reference tables.
pub fn reference() -> PathBuf {
    PathBuf::from(concat!(env!("CARGO_MANIFEST_DIR"), "/../../tests/reference"))
}

/// One row of a table, by column name.
pub struct Row(HashMap<String, String>);

impl Row {
    /// Text of a cell.
    #[track_caller]
    pub fn text(&self, column: &str) -> &str {
        self.0.get(column).unwrap_or_else(|| panic!("no column {column}"))
    }

    /// Number in a cell; `None` when it is empty.
    #[track_caller]
    pub fn number(&self, column: &str) -> Option<f64> {
        let text = self.text(column);
        (!text.is_empty()).then(|| text.parse().unwrap_or_else(|_| panic!("{column}: {text} is no number")))
    }

    /// Number in a cell that is never empty.
    #[track_caller]
    pub fn sure(&self, column: &str) -> f64 {
        self.number(column).unwrap_or_else(|| panic!("{column} is empty"))
    }

    /// Whole number in a cell that is never empty.
    #[track_caller]
    pub fn whole(&self, column: &str) -> u8 {
        self.text(column).parse().unwrap()
    }
}

/// Rows of a table under `tests/reference`, comments left out.
#[track_caller]
pub fn table(file: &str) -> Vec<Row> {
    let path = reference().join(file);
    let text = std::fs::read_to_string(&path).unwrap_or_else(|e| panic!("{}: {e}", path.display()));
    let mut lines = text.lines().filter(|l| !l.starts_with('#'));
    let columns = cells(lines.next().expect("a header"));
    let rows: Vec<Row> = lines
        .map(|line| {
            let cells = cells(line);
            assert_eq!(cells.len(), columns.len(), "{file}: {line}");
            Row(columns.iter().cloned().zip(cells).collect())
        })
        .collect();
    assert!(!rows.is_empty(), "{file} is empty");
    rows
}

fn cells(line: &str) -> Vec<String> {
    let (mut cells, mut quoted) = (vec![String::new()], false);
    for c in line.chars() {
        match c {
            '"' => quoted = !quoted,
            ',' if !quoted => cells.push(String::new()),
            c => cells.last_mut().unwrap().push(c),
        }
    }
    cells
}

/// Rows gathered by the text of one column, in the order of the file.
pub fn grouped<'a>(rows: impl IntoIterator<Item = &'a Row>, column: &str) -> Vec<(&'a str, Vec<&'a Row>)> {
    let mut groups: Vec<(&str, Vec<&Row>)> = Vec::new();
    for row in rows {
        let name = row.text(column);
        match groups.iter_mut().find(|(n, _)| *n == name) {
            Some((_, group)) => group.push(row),
            None => groups.push((name, vec![row])),
        }
    }
    groups
}

/// The profiles of `profiles.csv` as (name, depths and temperatures).
pub fn profiles() -> Vec<(String, Vec<(f64, f64)>)> {
    let rows = table("check-values/profiles.csv");
    grouped(&rows, "profile")
        .into_iter()
        .map(|(name, rows)| {
            (name.to_owned(), rows.iter().map(|r| (r.sure("depth_m"), r.sure("t_c"))).collect())
        })
        .collect()
}

/// Levels of a table, each with the same standard deviation.
pub fn levels(rows: &[(f64, f64)], sd_c: f64) -> Vec<Level> {
    rows.iter().map(|(z, t)| Level::bare(*z, *t, sd_c)).collect()
}

/// A cast of one series, leg unknown.
pub fn one_series(rows: &[(f64, f64)], digit_c: f64) -> Cast {
    let readings = rows.iter().map(|(z, t)| reading(*z, *t, Leg::Unknown)).collect();
    Cast { readings, digit_c, bed_m: None }
}

/// A cast with a series going down and one coming up, at the same depths.
pub fn two_legs(depths_m: &[f64], down_c: &[f64], up_c: &[f64], digit_c: f64) -> Cast {
    let down = depths_m.iter().zip(down_c).map(|(z, t)| reading(*z, *t, Leg::Down));
    let up = depths_m.iter().zip(up_c).rev().map(|(z, t)| reading(*z, *t, Leg::Up));
    Cast { readings: down.chain(up).collect(), digit_c, bed_m: None }
}

/// What a probe that leaves the share `r` of each step reads of this water, settled at the start: going down, and coming up
/// in the order of the depths.
pub fn lagging(water_c: &[f64], r: f64) -> (Vec<f64>, Vec<f64>) {
    let mut probe_c = water_c.first().copied().unwrap_or_default();
    let mut stop = |water_c: &f64| {
        probe_c = water_c + r * (probe_c - water_c);
        probe_c
    };
    let down: Vec<f64> = water_c.iter().map(&mut stop).collect();
    let mut up: Vec<f64> = water_c.iter().rev().map(&mut stop).collect();
    up.reverse();
    (down, up)
}

/// A reading with no decision about it.
pub fn reading(depth_m: f64, temp_c: f64, leg: Leg) -> Reading {
    Reading { depth_m, temp_c: Some(temp_c), leg, switch: Switch::Auto }
}

/// `n` depths from the surface.
pub fn depths(n: usize, step_m: f64) -> Vec<f64> {
    (0..n).map(|i| i as f64 * step_m).collect()
}

#[track_caller]
pub fn close(what: &str, got: f64, want: f64, tolerance: f64) {
    assert!((got - want).abs() <= tolerance, "{what}: got {got}, want {want} ± {tolerance}");
}

#[track_caller]
pub fn close_option(what: &str, got: Option<f64>, want: Option<f64>, tolerance: f64) {
    match (got, want) {
        (Some(g), Some(w)) => close(what, g, w, tolerance),
        _ => assert_eq!(got, want, "{what}"),
    }
}

/// Seeded noise.
pub struct Noise(Pcg64);

impl Noise {
    pub fn seeded(seed: u128) -> Self {
        Self(Pcg64::new(seed, 0x0a02_bdbf_7bb3_c0a7_ac28_fa16_a64a_bf96))
    }

    /// Uniform in 0..1.
    pub fn uniform(&mut self) -> f64 {
        (self.0.next_u64() >> 11) as f64 / (1_u64 << 53) as f64
    }

    /// Standard normal (Box and Muller).
    pub fn normal(&mut self) -> f64 {
        let (u, v) = (1.0 - self.uniform(), self.uniform());
        (-2.0 * libm::log(u)).sqrt() * libm::cos(2.0 * std::f64::consts::PI * v)
    }

    /// What a probe that shows tenths reads in water of `temp_c`.
    pub fn tenths(&mut self, temp_c: f64, noise_c: f64) -> f64 {
        ((temp_c + noise_c * self.normal()) * 10.0).round() / 10.0
    }
}

/// A smooth lake, 22 °C over 8 °C: a logistic curve of scale `width_m` about `middle_m`.
pub fn smooth_lake_c(depth_m: f64, middle_m: f64, width_m: f64) -> f64 {
    8.0 + 14.0 / (1.0 + libm::exp((depth_m - middle_m) / width_m))
}
