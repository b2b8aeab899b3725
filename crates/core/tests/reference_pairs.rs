//! Precision from duplicate readings.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

mod common;
use common::{close, close_option, grouped, table};
use layercast_core::cast::pairs::pairs;

#[test]
fn every_set_of_duplicates() {
    let details = table("check-values/duplicates_pairs.csv");
    let summary = table("check-values/duplicates_summary.csv");
    let sets = grouped(&details, "set");
    assert_eq!(sets.len(), summary.len());
    for (name, rows) in sets {
        let want = summary.iter().find(|r| r.text("set") == name).unwrap();
        let d: Vec<f64> = rows.iter().map(|r| r.sure("first_c") - r.sure("second_c")).collect();
        for (row, d) in rows.iter().zip(&d) {
            close(name, *d, row.sure("difference_c"), 1e-9);
        }
        let got = pairs(&d, 0.1);
        assert_eq!(got.count, usize::from(want.whole("n_pairs")));
        close_option(name, got.s_c, want.number("s_c"), 1e-9);
        close_option(name, got.mean_abs_c, want.number("mean_abs_d_c"), 1e-9);
        close_option(name, got.mean_c, want.number("mean_d_c"), 1e-9);
        close_option(name, got.max_abs_c, want.number("max_abs_d_c"), 1e-9);
        // "lagging" has mean 0.633 against 2·0.689/√6 = 0.563: systematic; "simple" 0.06 against 0.215: not.
        let systematic = want.number("sd_of_d_c").is_some_and(|sd| {
            want.sure("n_pairs") >= 4.0
                && want.sure("mean_d_c").abs() > 2.0 * sd / want.sure("n_pairs").sqrt()
        });
        assert_eq!(got.systematic, systematic, "{name}");
    }
}
