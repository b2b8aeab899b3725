//! The same readings come to the same bits on every machine: ranges by trials, and a cast read otherwise, kept in files
//! (`LAYERCAST_REWRITE=1` writes them anew). `web/scripts/alike.test.ts` computes them again with the module of the page.
#![allow(clippy::unwrap_used, clippy::expect_used, clippy::panic)] // a test may fail

use crate::support;

use layercast_lesson::action::Action;
use layercast_lesson::document::{Lesson, Notebook};
use layercast_lesson::ranges::{drawn, drawn_otherwise, otherwise, ranges};
use layercast_lesson::view::{OtherCable, OtherDigits, OtherMarks, OtherWait, OtherWays, Otherwise};

const OTHERWISE: Otherwise = Otherwise {
    marks: OtherMarks::EveryMetre,
    ways: OtherWays::Up,
    wait: OtherWait::Short,
    digits: OtherDigits::Halves,
    cable: OtherCable::Rough,
};

#[test]
fn the_examples_come_to_the_bits_that_are_kept() {
    let root = std::path::Path::new(env!("CARGO_MANIFEST_DIR"));
    for name in ["layered-summer", "mixed-autumn", "under-ice"] {
        let table =
            std::fs::read_to_string(root.join(format!("../../static-data/casts/{name}.csv"))).unwrap();
        let empty = Notebook::new("KTZR", Lesson::first());
        let notebook = support::doing(&empty, &[Action::TakeExample { text: table }]);
        let other = otherwise(&notebook, &OTHERWISE, &drawn_otherwise(&notebook, &OTHERWISE, 0, 100), None);
        let ranges = ranges(&notebook, &drawn(&notebook, 0, 1_000));
        let got = format!("{{\"ranges\":{ranges},\"other\":{}}}\n", serde_json::to_string(&other).unwrap());
        let file = root.join(format!("tests/alike/{name}.json"));
        if std::env::var_os("LAYERCAST_REWRITE").is_some() {
            std::fs::create_dir_all(file.parent().unwrap()).unwrap();
            std::fs::write(&file, &got).unwrap();
        }
        assert_eq!(got, std::fs::read_to_string(&file).unwrap(), "{name}");
    }
}
