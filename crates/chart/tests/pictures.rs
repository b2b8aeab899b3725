//! Every case is drawn and compared, byte for byte, with the picture stored in `tests/pictures`.
//!
//! After a change that is meant: `LAYERCAST_REWRITE_PICTURES=1 cargo test -p layercast-chart --test pictures`, then look at
//! every picture that changed before it is committed.

#![allow(clippy::expect_used)]

mod cases;

use std::collections::BTreeSet;
use std::path::PathBuf;

use cases::{Case, all};
use layercast_chart::svg;

fn folder() -> PathBuf {
    PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("tests/pictures")
}

fn drawn(case: &Case) -> String {
    let (document, _) =
        svg(&case.picture, case.theme, case.size, &case.words, case.name).expect("SVG never fails");
    document
}

/// One test, so that rewriting and looking never run at the same time.
#[test]
fn pictures_are_as_stored() {
    let rewrite = std::env::var_os("LAYERCAST_REWRITE_PICTURES").is_some();
    let mut changed = Vec::new();
    for case in all() {
        let path = folder().join(format!("{}.svg", case.name));
        let document = drawn(&case);
        if rewrite {
            std::fs::write(&path, &document).expect("the folder of pictures can be written");
        }
        // A stored picture that is not there differs as well.
        if std::fs::read_to_string(&path).unwrap_or_default() != document {
            changed.push(case.name);
        }
    }
    assert!(changed.is_empty(), "these pictures are not as stored: {changed:?}");
    let names: BTreeSet<String> = all().iter().map(|case| format!("{}.svg", case.name)).collect();
    assert_eq!(names.len(), all().len(), "names are unique");
    let stored: BTreeSet<String> = std::fs::read_dir(folder())
        .expect("the folder of pictures is there")
        .map(|entry| entry.expect("an entry").file_name().to_string_lossy().into_owned())
        .collect();
    assert_eq!(names, stored, "every stored picture has its case");
}
