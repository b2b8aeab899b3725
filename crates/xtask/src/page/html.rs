//! The one file: `web/index.html` with styles, script, fonts and core put inside, under a policy that allows nothing else.

use super::{Kind, messages};
use crate::tree::{self, Tree};
use anyhow::{Context, Result, bail};
use base64::prelude::{BASE64_STANDARD, Engine};
use flate2::Compression;
use flate2::write::GzEncoder;
use sha2::{Digest, Sha256};
use std::io::Write;

/// What goes inside.
pub struct Parts {
    /// The core.
    pub wasm: Vec<u8>,
    /// The script.
    pub script: String,
    /// The script of the worker, which the page starts from a blob of its own.
    pub worker: String,
    /// The styles, with the fonts inside.
    pub styles: String,
}

/// Asks the development server whether a newer page is there.
const RELOAD: &str = r#"{const first=fetch("/build").then(r=>r.text());setInterval(async()=>{try{if(await (await fetch("/build")).text()!==await first)location.reload()}catch{}},500)}"#;

/// Puts the page together.
pub fn assemble(tree: &Tree, kind: Kind, parts: &Parts) -> Result<String> {
    let script = parts.script.trim();
    let styles = parts.styles.trim();
    if script.contains("</script") || script.contains("<!--") {
        bail!("the script holds a tag that would end it inside the page");
    }
    if styles.contains("</style") {
        bail!("the styles hold a tag that would end them inside the page");
    }
    let mut page = tidied(&tree::read(&tree.web().join("index.html"))?);
    for forbidden in ["<script", "<style", " style=", "<link", " onclick"] {
        if page.contains(forbidden) {
            bail!("web/index.html holds `{}`, which the page's policy forbids", forbidden.trim());
        }
    }
    let mut scripts = format!("'sha256-{}'", hash(script));
    let mut connect = "";
    let mut reload = String::new();
    if kind == Kind::Served {
        scripts.push_str(&format!(" 'sha256-{}'", hash(RELOAD)));
        connect = "; connect-src 'self'";
        reload = format!("<script>{RELOAD}</script>\n");
    }
    let policy = format!(
        "<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; script-src {scripts} 'wasm-unsafe-eval'; style-src 'sha256-{}'; img-src data: blob:; font-src data:; worker-src blob:; base-uri 'none'; form-action 'none'{connect}\">\n",
        hash(styles)
    );
    let mut blocks = String::new();
    for language in messages::LANGUAGES {
        let text = messages::source_of(tree, language)?;
        blocks.push_str(&block(&format!("messages-{language}"), &signs(&gzip(text.as_bytes(), kind)?)));
    }
    blocks.push_str(&block("worker", &signs(&gzip(parts.worker.as_bytes(), kind)?)));
    blocks.push_str(&block("wasm", &signs(&gzip(&parts.wasm, kind)?)));
    page = after(&page, "<head>\n", "<meta charset=\"utf-8\">\n", &policy)?;
    page = before(&page, "</head>", &format!("<style>{styles}</style>\n"))?;
    before(&page, "</body>", &format!("{blocks}<script>{script}</script>\n{reload}"))
}

/// A data block: never run, so it needs no hash.
fn block(id: &str, text: &str) -> String {
    format!("<script type=\"application/octet-stream\" id=\"{id}\">{text}</script>\n")
}

/// As small as gzip can be made for the page that is given away; at once for the others.
fn gzip(bytes: &[u8], kind: Kind) -> Result<Vec<u8>> {
    if kind == Kind::Release {
        let mut packed = Vec::new();
        zopfli::compress(zopfli::Options::default(), zopfli::Format::Gzip, bytes, &mut packed)?;
        return Ok(packed);
    }
    let mut packer = GzEncoder::new(Vec::new(), Compression::best());
    packer.write_all(bytes)?;
    Ok(packer.finish()?)
}

/// Bytes as text: their number, a space, then each 13 bits (lowest first) as two of 91 printable signs, higher digit
/// first. Needs 1.23 signs a byte where base 64 needs 1.33. `web/scripts/inlined.ts` reads it.
fn signs(bytes: &[u8]) -> String {
    let alphabet: Vec<char> = ('!'..='~').filter(|sign| !matches!(sign, '<' | '>' | '&')).collect();
    let count = alphabet.len();
    let mut text = format!("{} ", bytes.len());
    let mut two = |thirteen: u32| {
        let value = thirteen as usize;
        text.extend([value / count, value % count].iter().filter_map(|digit| alphabet.get(*digit)));
    };
    let (mut held, mut bits) = (0_u32, 0);
    for byte in bytes {
        held |= u32::from(*byte) << bits;
        bits += 8;
        if bits >= 13 {
            two(held & 0x1fff);
            held >>= 13;
            bits -= 13;
        }
    }
    if bits > 0 {
        two(held);
    }
    text
}

fn hash(text: &str) -> String {
    BASE64_STANDARD.encode(Sha256::digest(text.as_bytes()))
}

/// Without comments and indentation.
fn tidied(html: &str) -> String {
    let mut rest = html;
    let mut kept = String::new();
    while let Some((text, comment)) = rest.split_once("<!--") {
        kept.push_str(text);
        rest = comment.split_once("-->").map_or("", |(_, after)| after);
    }
    kept.push_str(rest);
    let lines = kept.lines().map(str::trim).filter(|line| !line.is_empty());
    lines.fold(String::new(), |page, line| page + line + "\n")
}

/// Puts `what` after `mark`, which must stand right after `parent`'s start.
fn after(page: &str, parent: &str, mark: &str, what: &str) -> Result<String> {
    let (head, tail) = page
        .split_once(&format!("{parent}{mark}"))
        .with_context(|| format!("web/index.html must begin its head with {}", mark.trim()))?;
    Ok(format!("{head}{parent}{mark}{what}{tail}"))
}

fn before(page: &str, mark: &str, what: &str) -> Result<String> {
    let (head, tail) = page.rsplit_once(mark).with_context(|| format!("web/index.html has no {mark}"))?;
    Ok(format!("{head}{what}{mark}{tail}"))
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn comments_and_indentation_go() {
        assert_eq!(tidied("<p>\n   a <!-- b\n c -->d\n\n</p>"), "<p>\na d\n</p>\n");
    }

    #[test]
    fn hash_is_that_of_the_published_example() {
        // CSP Level 3 (w3.org/TR/CSP3, section 8.3, "script-src" hash example): alert('Hello, world.');
        assert_eq!(hash("alert('Hello, world.');"), "qznLcsROx4GACP2dm0UCKCzCG+HiZ1guq6ZZDob/Tng=");
    }

    #[test]
    fn thirteen_bits_are_two_signs() {
        assert_eq!(signs(&[]), "0 ");
        // 1; 0x1fff = 90 * 91 + 1; then five bits of the last byte.
        assert_eq!(signs(&[1]), "1 !\"");
        assert_eq!(signs(&[0xff, 0xff]), "2 ~\"!)");
        // The same as in `web/scripts/inlined.test.ts`.
        assert_eq!(signs(b"Quillet"), "7 _|+:p9:f!)");
    }

    #[test]
    fn a_page_without_its_first_line_is_refused() {
        assert!(after("<head>\n<title>x</title>\n", "<head>\n", "<meta charset=\"utf-8\">\n", "y").is_err());
    }
}
