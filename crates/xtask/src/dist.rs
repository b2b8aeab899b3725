//! `dist`: the page as it is given away, and a zip with what belongs to it.

use crate::page::{self, Kind};
use crate::tree::{self, Tree};
use anyhow::{Context, Result};
use sha2::{Digest, Sha256};
use std::io::Write;
use std::path::PathBuf;
use zip::write::SimpleFileOptions;

/// Builds `dist/layercast.html` and says how large it is.
pub fn page(tree: &Tree) -> Result<PathBuf> {
    page::write(tree, Kind::Release, false, &tree.dist().join("layercast.html"))
}

/// Builds the page and `dist/layercast.zip`: page, guide for teachers, licences, checksums.
pub fn dist(tree: &Tree) -> Result<()> {
    let page = page(tree)?;
    let mut files = vec![
        ("layercast.html".to_owned(), std::fs::read(&page)?),
        ("teachers.html".to_owned(), tree::read(&tree.data().join("guide/teachers.html"))?.into_bytes()),
    ];
    for name in ["LICENSE-MIT", "LICENSE-APACHE"] {
        files.push((name.to_owned(), tree::read(&tree.root.join(name))?.into_bytes()));
    }
    for licence in tree::files_below(&tree.root.join("LICENSES"))? {
        let name = licence.file_name().and_then(|n| n.to_str()).context("a licence has a name")?;
        files.push((format!("LICENSES/{name}"), std::fs::read(&licence)?));
    }
    let sums: String =
        files.iter().map(|(name, bytes)| format!("{:x}  {name}\n", Sha256::digest(bytes))).collect();
    print!("{sums}");
    files.push(("SHA256SUMS".to_owned(), sums.into_bytes()));
    let zip = zip(&files)?;
    let path = tree.dist().join("layercast.zip");
    tree::write(&path, &zip)?;
    println!("{} {:.1} KB", tree.short(&path), zip.len() as f64 / 1000.0);
    Ok(())
}

/// The same files give the same bytes: no times, no owners.
fn zip(files: &[(String, Vec<u8>)]) -> Result<Vec<u8>> {
    let mut writer = zip::ZipWriter::new(std::io::Cursor::new(Vec::new()));
    let options = SimpleFileOptions::default().compression_level(Some(9)).unix_permissions(0o644);
    for (name, bytes) in files {
        writer.start_file(format!("layercast/{name}"), options)?;
        writer.write_all(bytes)?;
    }
    Ok(writer.finish()?.into_inner())
}
