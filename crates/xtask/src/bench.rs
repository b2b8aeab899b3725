//! `bench`: size and speed, each beside something measured in the same run. Prints; asserts nothing.

use crate::dist;
use crate::page;
use crate::tools;
use crate::tree::{self, Tree};
use anyhow::{Context, Result, bail};
use std::fmt::Write;
use std::path::{Path, PathBuf};
use std::process::{Command, Stdio};
use std::time::Instant;

/// How many readings the grown tables have.
const SIZES: [usize; 4] = [100, 1_000, 10_000, 100_000];

/// So many rounds, each over all sizes.
const ROUNDS: usize = 9;

/// How often a round runs each: the small table that shows what starting the program costs, then the sizes. The quick ones
/// more often, since they differ by less than a busy machine's noise.
const RUNS: [usize; 1 + SIZES.len()] = [12, 12, 4, 1, 1];

/// A time less than this share of starting the program is no time measured.
const LOST: f64 = 0.05;

/// Measures the page as it is given away, then the growth natively. `keep_page`: of `dist/layercast.html` as it is.
pub fn bench(tree: &Tree, keep_page: bool) -> Result<()> {
    tools::need_node(tree)?;
    let browsers = tools::need_browsers()?;
    let page = tree.dist().join("layercast.html");
    if !keep_page {
        dist::page(tree)?;
    } else if !page.is_file() {
        bail!("dist/layercast.html is not there: run without --keep-page");
    }
    let folder = tree.build().join("bench");
    let mut measured = tools::node(tree);
    measured.arg(tree.root.join("tests/browser/bench.js")).arg(&folder);
    measured.env("BROWSER", "chromium").env("CHROMIUM", browsers.chromium).env("PAGE", page);
    measured.env("MEASURED", page::measured(tree)?);
    tools::run(&mut measured)?;
    println!("\n7. Analysis and trials natively, in turns with what they are compared with");
    let example = ["run", "--quiet", "--release", "--package=layercast-core", "--example=speed"];
    tools::run(tools::cargo(tree).args(example))?;
    println!("\n8. A class of 40 natively, beside one analysis");
    let example = ["run", "--quiet", "--release", "--package=layercast-lesson", "--example=class_speed"];
    tools::run(tools::cargo(tree).args(example))?;
    growth(tree, &folder)
}

/// Time against size, through the same program as the checks: bytes to table to analysis to text.
fn growth(tree: &Tree, folder: &Path) -> Result<()> {
    let example = ["build", "--quiet", "--release", "--package=layercast-exchange", "--example=analyse"];
    tools::run(tools::cargo(tree).args(example))?;
    let program = tree.target.join("release/examples/analyse");
    println!(
        "\n9. Growth, native, table to analysis (aim: linear, exponent 1); {ROUNDS} rounds, the fastest of each"
    );
    for (name, table) in
        [("each reading at a depth of its own", own_depths as fn(usize) -> String), ("20 depths", few_depths)]
    {
        one_growth(&program, folder, name, table)?;
    }
    Ok(())
}

fn one_growth(program: &Path, folder: &Path, name: &str, table: fn(usize) -> String) -> Result<()> {
    // What starting the program costs: a table of eight readings.
    let mut files = vec![written(folder, 8, table)?];
    for size in SIZES {
        files.push(written(folder, size, table)?);
    }
    let mut fastest = vec![f64::INFINITY; files.len()];
    for _ in 0..ROUNDS {
        for ((file, runs), fastest) in files.iter().zip(RUNS).zip(&mut fastest) {
            for _ in 0..runs {
                *fastest = fastest.min(ms_of(program, file)?);
            }
        }
    }
    let (start, grown) = fastest.split_first().context("there are sizes")?;
    println!("   {name}; starting the program ({start:.2} ms) taken off");
    let mut points: Vec<(f64, f64)> = Vec::new();
    for (size, ms) in SIZES.into_iter().zip(grown) {
        let own_ms = ms - start;
        if own_ms < LOST * start {
            println!("   {size:>9} readings: lost in starting the program, left out");
            continue;
        }
        let point = (size as f64, own_ms);
        let since = points
            .last()
            .map_or(String::new(), |last| format!("  exponent since the last {:.2}", slope(&[*last, point])));
        points.push(point);
        println!("   {size:>9} readings {own_ms:>9.2} ms  {:>6.2} µs each{since}", own_ms * 1e3 / point.0);
    }
    println!("   exponent over these {} sizes {:.2}", points.len(), slope(&points));
    Ok(())
}

fn ms_of(program: &Path, table: &Path) -> Result<f64> {
    let start = Instant::now();
    let status = Command::new(program)
        .arg(table)
        .args(["--trials", "0"])
        .stdout(Stdio::null())
        .status()
        .with_context(|| format!("running {}", program.display()))?;
    let ms = start.elapsed().as_secs_f64() * 1e3;
    if !status.success() {
        bail!("the grown table {} was not understood", table.display());
    }
    Ok(ms)
}

fn written(folder: &Path, readings: usize, table: fn(usize) -> String) -> Result<PathBuf> {
    let file = folder.join(format!("readings-{readings}.csv"));
    tree::write(&file, table(readings).as_bytes())?;
    Ok(file)
}

/// A summer lake of 20 m read on the way down and up, each row deeper than the last.
fn own_depths(readings: usize) -> String {
    let rows = readings / 2;
    let depths = (0..rows).map(|row| 20.0 * row as f64 / (rows - 1) as f64);
    lake(depths)
}

/// The same lake with readings at 20 depths only: a logger that hangs still for a while at each.
fn few_depths(readings: usize) -> String {
    let rows = readings / 2;
    let depths = (0..rows).map(|row| (row * 20 / rows) as f64);
    lake(depths)
}

/// Rows of a layered lake with a small, fixed unevenness; both legs.
fn lake(depths: impl Iterator<Item = f64>) -> String {
    let mut table = "Depth (m),Going down (°C),Coming up (°C)\n".to_owned();
    for (row, depth_m) in depths.enumerate() {
        let temp_c = 15.0 - 7.0 * step(depth_m - 7.0);
        let uneven = |factor: usize| ((row * factor) % 7) as f64 * 0.02 - 0.06;
        let (down, up) = (temp_c + uneven(3), temp_c + uneven(5));
        // Writing into a text cannot fail.
        let _ = writeln!(table, "{depth_m:.4},{down:.2},{up:.2}");
    }
    table
}

/// From −1 to 1, steepest at 0.
fn step(x: f64) -> f64 {
    x / (1.0 + x * x).sqrt()
}

/// The slope of the straight line through the logarithms: least squares.
#[allow(clippy::disallowed_methods, reason = "a figure to read; its last bits may differ between machines")]
fn slope(points: &[(f64, f64)]) -> f64 {
    let logs: Vec<(f64, f64)> = points.iter().map(|(size, ms)| (size.log2(), ms.log2())).collect();
    let count = logs.len() as f64;
    let mean = |of: fn(&(f64, f64)) -> f64| logs.iter().map(of).sum::<f64>() / count;
    let (x, y) = (mean(|p| p.0), mean(|p| p.1));
    let both: f64 = logs.iter().map(|p| (p.0 - x) * (p.1 - y)).sum();
    let square: f64 = logs.iter().map(|p| (p.0 - x).powi(2)).sum();
    both / square
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn a_square_has_exponent_two() {
        let square: Vec<(f64, f64)> =
            SIZES.iter().map(|size| (*size as f64, (*size as f64).powi(2))).collect();
        assert!((slope(&square) - 2.0).abs() < 1e-9);
    }

    #[test]
    fn a_grown_table_has_as_many_readings_as_it_says() {
        for table in [own_depths, few_depths] {
            assert_eq!(table(100).lines().skip(1).map(|row| row.split(',').count() - 1).sum::<usize>(), 100);
        }
    }
}
