//! `screenshots`: pictures of the built page in its states.

use crate::page::{self, Kind};
use crate::tools;
use crate::tree::Tree;
use anyhow::Result;

/// Those of the README into `web/screenshots`, or all states into `build/shots`.
pub fn screenshots(tree: &Tree, all: bool, keep_page: bool) -> Result<()> {
    let browsers = tools::need_browsers()?;
    let page = tree.build().join("layercast.html");
    if !keep_page {
        page::write(tree, Kind::Quick, false, &page)?;
    }
    let folder = if all { tree.build().join("shots") } else { tree.web().join("screenshots") };
    let mut shots = tools::node(tree);
    shots.arg(tree.root.join("tests/browser/shots.js")).arg(folder);
    if all {
        shots.arg("all");
    }
    tools::run(shots.env("CHROMIUM", browsers.chromium).env("PAGE", page))
}
