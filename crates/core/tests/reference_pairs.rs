//! Precision from duplicate readings.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::common;
use common::{close, close_option, grouped, table};
use layercast_core::Level;
use layercast_core::cast::pair_verdicts::{Repeat, pair_verdicts};
use layercast_core::cast::pairs::{pairs, s_from_mean_range_c};

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
        close_option(name, got.sd_c, want.number("sd_of_d_c"), 1e-9);
        close_option(name, got.mean_abs_c.map(s_from_mean_range_c), want.number("s_range_c"), 1e-9);
        close_option(name, got.repeatability_c, want.number("repeatability_limit_c"), 1e-9);
        let rms = got.s_c.map(|s| s * 2_f64.sqrt());
        close_option(name, rms, want.number("rms_d_c"), 1e-9);
        // How many are within 0.2 and 0.5 °C where the water does not change.
        let levels: Vec<Level> = (rows.iter().enumerate())
            .map(|(i, row)| Level {
                down_c: row.number("first_c"),
                up_c: row.number("second_c"),
                ..Level::bare(i as f64, 10.0, 0.1)
            })
            .collect();
        let verdicts = pair_verdicts(&levels, &[]);
        let within = |most: Repeat| verdicts.iter().filter(|v| v.verdict <= most).count();
        assert_eq!(within(Repeat::Good), usize::from(want.whole("n_within_0p2")), "{name}");
        assert_eq!(within(Repeat::LookAgain), usize::from(want.whole("n_within_0p5")), "{name}");
        // "lagging" has mean 0.633 against 2·0.689/√6 = 0.563: systematic; "simple" 0.06 against 0.215: not.
        let systematic = want.number("sd_of_d_c").is_some_and(|sd| {
            want.sure("n_pairs") >= 4.0
                && want.sure("mean_d_c").abs() > 2.0 * sd / want.sure("n_pairs").sqrt()
        });
        assert_eq!(got.systematic, systematic, "{name}");
    }
}
