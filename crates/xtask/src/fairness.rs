//! `fairness`: simulated students, a blind guesser and every catalogued wrong idea over every check profile and open cast.
//! Prints the figures, and writes them into DEVELOPERS.md between two marks.

use crate::tools;
use crate::tree::{self, Tree};
use anyhow::{Context, Result};
use std::time::{SystemTime, UNIX_EPOCH};

/// What the example prints before the part for the guide.
const GUIDE: &str = "=== guide ===\n";
const BEGIN: &str = "<!-- made by cargo xtask fairness -->\n";
const END: &str = "<!-- end of what cargo xtask fairness made -->";

/// Measures and rewrites.
pub fn fairness(tree: &Tree) -> Result<()> {
    // The usual profile: the optimised one takes longer to build than this takes to run.
    let example = ["run", "--quiet", "--package=layercast-lesson", "--example=fairness"];
    let text = tools::output(tools::cargo(tree).args(example))?;
    print!("{text}");
    let (_, made) = text.split_once(GUIDE).context("the measurement printed nothing for the guide")?;
    let file = tree.root.join("DEVELOPERS.md");
    let days = SystemTime::now().duration_since(UNIX_EPOCH)?.as_secs() / 86_400;
    let made = format!("{}. {}", day(days), made.trim_end());
    tree::write(&file, replaced(&tree::read(&file)?, &made)?.as_bytes())
}

/// The guide with this between its marks.
fn replaced(guide: &str, made: &str) -> Result<String> {
    let (before, rest) = guide.split_once(BEGIN).context("DEVELOPERS.md lacks the first mark")?;
    let (_, after) = rest.split_once(END).context("DEVELOPERS.md lacks the second mark")?;
    Ok(format!("{before}{BEGIN}\n{made}\n\n{END}{after}"))
}

/// A day as year-month-day, from days since the first of January 1970 (the calendar's rule of leap years).
fn day(days: u64) -> String {
    let (mut year, mut left) = (1970, days);
    let leap = |year: u64| year.is_multiple_of(4) && (!year.is_multiple_of(100) || year.is_multiple_of(400));
    while left >= 365 + u64::from(leap(year)) {
        left -= 365 + u64::from(leap(year));
        year += 1;
    }
    let months = [31, 28 + u64::from(leap(year)), 31, 30, 31, 30, 31, 31, 30, 31, 30, 31];
    let mut month = 1;
    for length in months {
        if left < length {
            break;
        }
        left -= length;
        month += 1;
    }
    format!("{year}-{month:02}-{:02}", left + 1)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn days_of_the_calendar() {
        for (days, want) in
            [(0, "1970-01-01"), (59, "1970-03-01"), (11_016, "2000-02-29"), (20_783, "2026-11-26")]
        {
            assert_eq!(day(days), want);
        }
    }

    #[test]
    fn only_what_stands_between_the_marks_is_replaced() {
        let guide = format!("a\n{BEGIN}old\n{END}\nb\n");
        let new = replaced(&guide, "new").unwrap();
        assert_eq!(new, format!("a\n{BEGIN}\nnew\n\n{END}\nb\n"));
        assert_eq!(replaced(&new, "new").unwrap(), new);
        assert!(replaced("no marks", "new").is_err());
    }
}
