//! `test`: every check of the project, each named with its time. What a check needs and does not find is a failure that
//! names the command that gets it. Firefox is asked what browsers do each in their own way: keys, files, clipboard, store, print,
//! long work. What is the page's own doing is asked of Chromium alone. The quick checks come first, then the tests of the Rust rooms
//! beside the building of the page and all that is only read, then the browsers.

use crate::check;
use crate::dist;
use crate::page;
use crate::tools;
use crate::tree::Tree;
use anyhow::{Result, bail};
use std::time::Instant;

/// How many tests a step ran.
#[derive(Clone, Copy, Debug, Default, PartialEq, Eq)]
pub struct Count {
    /// Passed.
    pub passed: usize,
    /// Failed.
    pub failed: usize,
}

impl Count {
    /// One check that passed.
    pub const ONE: Self = Self { passed: 1, failed: 0 };
}

type Step = (&'static str, fn(&Tree) -> Result<Count>);

/// Quick ones, before all others.
const FIRST: &[Step] = &[
    ("format", format),
    ("tidy", |tree| check::tidy::check(tree).map(|()| Count::ONE)),
    ("messages", check::messages::check),
];

/// The Rust rooms.
const RUST: &[Step] = &[("tests of the Rust rooms", rooms), ("examples in the comments", examples)];

/// The page, before the browsers look at it; and what is read rather than run, once the tests are built: cargo lets one
/// build at a time into a folder, and runs what it has built with the folder free again.
const PAGE: &[Step] = &[
    ("types of the page", types),
    ("lints of the page", page_lints),
    ("tests of the page's scripts", scripts),
    ("the page", the_page),
    ("lints", lints),
    ("links of the comments", links),
];

/// The page in the browsers, with nothing beside them: a press must not come later than what it is to stop, and what is
/// typed in the last twentieth of a second before a kill must be kept.
const LAST: &[Step] = &[
    ("Chromium", |tree| browser(tree, "chromium", |file| !file.ends_with(KILLS))),
    ("Firefox", |tree| browser(tree, "firefox", |file| !OF_THE_PAGE.iter().any(|one| file.ends_with(one)))),
    ("Chromium killed", |tree| browser(tree, "chromium", |file| file.ends_with(KILLS))),
];

/// The kills are looked at in Chromium: what is kept by which write is the same, and Firefox takes seconds to start.
const KILLS: &str = "battery.test.js";

/// Asked of Chromium alone: accessibility, and the page's own doing. Saving, opening and printing are asked of Firefox by the
/// files of Log, Report and Class.
const OF_THE_PAGE: &[&str] = &[
    KILLS,
    "access.test.js",
    "by_hand.test.js",
    "corrections.test.js",
    "guess.test.js",
    "lesson.test.js",
    "tries.test.js",
    "words.test.js",
    "years.test.js",
];

/// Runs the steps whose name holds `only`, or all.
pub fn test(tree: &Tree, only: Option<&str>) -> Result<()> {
    let chosen = |steps: &[Step]| -> Vec<Step> {
        steps.iter().filter(|(name, _)| only.is_none_or(|only| name.contains(only))).copied().collect()
    };
    let (first, rust, page, last) = (chosen(FIRST), chosen(RUST), chosen(PAGE), chosen(LAST));
    let all = [FIRST, RUST, PAGE, LAST].concat();
    if !all.iter().any(|(name, _)| only.is_none_or(|only| name.contains(only))) {
        let names: Vec<&str> = all.into_iter().map(|(name, _)| name).collect();
        bail!("no step has that name; there are: {}", names.join(", "));
    }
    tools::need_node(tree)?;
    let mut done = in_turn(tree, &first);
    let (rust, page) = std::thread::scope(|scope| {
        let beside = scope.spawn(|| in_turn(tree, &rust));
        let page = in_turn(tree, &page);
        (beside.join(), page)
    });
    let Ok(rust) = rust else { bail!("the tests of the Rust rooms broke off") };
    done.extend(rust);
    done.extend(page);
    done.extend(in_turn(tree, &last));
    println!("\n── all");
    let mut total = Count::default();
    for (line, count) in done {
        println!("{line}");
        total.passed += count.passed;
        total.failed += count.failed;
    }
    println!("{} passed, {} failed", total.passed, total.failed);
    if total.failed > 0 {
        bail!("see the first failure above");
    }
    Ok(())
}

/// Runs steps one after the other: how each went, in a line and in numbers.
fn in_turn(tree: &Tree, steps: &[Step]) -> Vec<(String, Count)> {
    let run = |(name, step): &Step| {
        println!("\n── {name}");
        let start = Instant::now();
        let count = step(tree).unwrap_or_else(|error| {
            eprintln!("{name}: {error:#}");
            Count { passed: 0, failed: 1 }
        });
        let seconds = start.elapsed().as_secs_f64();
        let line =
            format!("{name:<30} {seconds:>6.1} s  {:>5} passed, {} failed", count.passed, count.failed);
        println!("{line}");
        (line, count)
    };
    steps.iter().map(run).collect()
}

fn format(tree: &Tree) -> Result<Count> {
    tools::run(tools::cargo(tree).args(["fmt", "--all", "--check"]))?;
    Ok(Count::ONE)
}

fn lints(tree: &Tree) -> Result<Count> {
    let mut clippy = tools::cargo(tree);
    clippy.args(["clippy", "--quiet", "--workspace", "--all-targets", "--", "--deny=warnings"]);
    tools::run(&mut clippy)?;
    Ok(Count::ONE)
}

/// Each method's comment links its source: no link leads nowhere.
fn links(tree: &Tree) -> Result<Count> {
    let mut doc = tools::cargo(tree);
    doc.args(["doc", "--quiet", "--workspace", "--no-deps"]);
    doc.env("RUSTDOCFLAGS", "--deny=warnings");
    tools::run(&mut doc)?;
    Ok(Count::ONE)
}

/// The programs in `examples/` are no tests: the lints read them.
fn rooms(tree: &Tree) -> Result<Count> {
    cargo_tests(tree, &["--lib", "--bins", "--tests"])
}

fn examples(tree: &Tree) -> Result<Count> {
    cargo_tests(tree, &["--doc"])
}

fn cargo_tests(tree: &Tree, which: &[&str]) -> Result<Count> {
    let mut cargo = tools::cargo(tree);
    cargo.args(["test", "--quiet", "--workspace", "--no-fail-fast"]).args(which);
    let lines = tools::tee(&mut cargo)?;
    counted(&lines, |line| {
        // "test result: ok. 12 passed; 0 failed; …"
        let counts = line.strip_prefix("test result: ")?;
        let before = |word: &str| counts.split(word).next()?.split_whitespace().next_back()?.parse().ok();
        Some(Count { passed: before(" passed")?, failed: before(" failed")? })
    })
}

fn types(tree: &Tree) -> Result<Count> {
    // Of the build that the page is made of: it is compiled once.
    page::types(tree, page::Kind::Release)?;
    tools::run(tools::npm_program(tree, "tsc").args(["--project", "."]))?;
    Ok(Count::ONE)
}

fn page_lints(tree: &Tree) -> Result<Count> {
    tools::run(tools::npm_program(tree, "biome").args(["ci", "--error-on-warnings", "."]))?;
    Ok(Count::ONE)
}

/// Tests that need no browser: `web/scripts/**/*.test.ts`, bundled, since Node 20 runs no TypeScript.
fn scripts(tree: &Tree) -> Result<Count> {
    let folder = tree.target.join("page/unit");
    if folder.exists() {
        std::fs::remove_dir_all(&folder)?;
    }
    let tests: Vec<_> = crate::tree::files_below(&tree.web().join("scripts"))?
        .into_iter()
        .filter(|file| file.to_string_lossy().ends_with(".test.ts"))
        .collect();
    if tests.is_empty() {
        bail!("there are no tests in web/scripts");
    }
    let mut esbuild = tools::npm_program(tree, "esbuild");
    esbuild.args(&tests).args(["--bundle", "--platform=node", "--format=esm", "--log-level=warning"]);
    esbuild.arg("--out-extension:.js=.mjs").arg(format!("--outdir={}", folder.display()));
    tools::run(&mut esbuild)?;
    let built = crate::tree::files_below(&folder)?;
    let mut node = tools::node(tree);
    node.args(["--test", "--test-reporter=spec"]).args(built);
    // The module of the page comes to the same bits as the Rust rooms natively.
    node.env("CORE", page::module(tree, page::Kind::Release)).env("ROOT", &tree.root);
    node_counts(&tools::tee(&mut node)?)
}

fn the_page(tree: &Tree) -> Result<Count> {
    dist::page(tree)?;
    Ok(Count::ONE)
}

/// The walk and the states, on the page as it is given away. The page must have been built: the step before does that.
fn browser(tree: &Tree, name: &str, is_asked: fn(&std::path::Path) -> bool) -> Result<Count> {
    let browsers = tools::need_browsers()?;
    let page = tree.dist().join("layercast.html");
    if !page.is_file() {
        bail!("dist/layercast.html is not there: run `cargo xtask dist`");
    }
    let mut tests: Vec<_> = crate::tree::files_below(&tree.root.join("tests/browser"))?
        .into_iter()
        .filter(|file| file.to_string_lossy().ends_with(".test.js"))
        .collect();
    tests.retain(|file| is_asked(file));
    // Node runs the files by name, two at once.
    tests.sort();
    let lines = tools::tee(
        tools::node(tree)
            // A test that fails leaves its browser open, which would keep the runner waiting.
            .args(["--test", "--test-force-exit", "--test-concurrency=2", "--test-reporter=spec"])
            .args(tests)
            .env("BROWSER", name)
            .env("CHROMIUM", browsers.chromium)
            .env("FIREFOX", browsers.firefox)
            .env("PAGE", page),
    )?;
    node_counts(&lines)
}

/// "ℹ pass 12" and "ℹ fail 0" of Node's own test runner; a test left out counts as failed.
fn node_counts(lines: &tools::Output) -> Result<Count> {
    counted(lines, |line| {
        let mut words = line.split_whitespace().skip(1);
        let (what, number) = (words.next()?, words.next()?.parse().ok()?);
        match what {
            "pass" => Some(Count { passed: number, failed: 0 }),
            "fail" | "cancelled" | "skipped" | "todo" => Some(Count { passed: 0, failed: number }),
            _ => None,
        }
    })
}

/// Adds up what a test runner printed; a runner that failed without saying so has failed once.
fn counted(output: &tools::Output, count: impl Fn(&str) -> Option<Count>) -> Result<Count> {
    let mut total = Count::default();
    for counted in output.lines.iter().filter_map(|line| count(line)) {
        total.passed += counted.passed;
        total.failed += counted.failed;
    }
    if !output.success {
        total.failed = total.failed.max(1);
    } else if total.passed == 0 {
        bail!("no test was run");
    }
    Ok(total)
}

#[cfg(test)]
mod tests {
    use super::*;
    use tools::Output;

    fn output(success: bool, lines: &[&str]) -> Output {
        Output { success, lines: lines.iter().map(|line| (*line).to_owned()).collect() }
    }

    #[test]
    fn counts_of_node_are_read() {
        let lines = output(false, &["ℹ tests 4", "ℹ pass 2", "ℹ fail 1", "ℹ skipped 1", "ℹ duration_ms 8.2"]);
        assert_eq!(node_counts(&lines).unwrap(), Count { passed: 2, failed: 2 });
    }

    #[test]
    fn a_run_without_a_test_is_no_success() {
        assert!(node_counts(&output(true, &["ℹ tests 0", "ℹ pass 0"])).is_err());
    }

    #[test]
    fn a_runner_that_dies_silently_has_failed() {
        assert_eq!(node_counts(&output(false, &[])).unwrap(), Count { passed: 0, failed: 1 });
    }
}
