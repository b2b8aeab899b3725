//! The page's first words: what stands in an element before any script runs is what its message says, so that nothing
//! changes under a reader's eyes and no old words stay where no script runs.

use fluent_syntax::ast::{Entry, PatternElement};
use std::collections::BTreeMap;

/// Elements with other words than their English message. An element that waits empty for its words is fine, and so is one
/// whose message takes arguments.
pub fn unlike(html: &str, english: &str) -> Vec<String> {
    let messages = plain(english);
    let mut faults = Vec::new();
    let mut compare = |id: &str, written: &str| {
        let written = one_line(written);
        // Marks such as <b> stand in both: what is before the first one is compared.
        let says = messages.get(id).map(|text| text.split('<').next().unwrap_or_default().trim_end());
        if !written.is_empty() && says.is_some_and(|says| says != written) {
            faults.push(format!(
                "web/index.html says “{written}” where {id} says “{}”",
                says.unwrap_or_default()
            ));
        }
    };
    for rest in html.split(" data-say=\"").skip(1) {
        let Some((id, rest)) = rest.split_once('"') else { continue };
        let inside = rest.split_once('>').map_or("", |(_, inside)| inside);
        compare(id, inside.split('<').next().unwrap_or_default());
    }
    let parts: Vec<&str> = html.split(" data-say-label=\"").collect();
    for (before, after) in parts.iter().zip(parts.iter().skip(1)) {
        let label = before.strip_suffix('"').and_then(|before| before.rsplit_once(" aria-label=\""));
        if let (Some((_, label)), Some((id, _))) = (label, after.split_once('"')) {
            compare(id, label);
        }
    }
    faults
}

/// Messages that take no arguments, by id.
fn plain(source: &str) -> BTreeMap<String, String> {
    let resource = match fluent_syntax::parser::parse(source) {
        Ok(resource) | Err((resource, _)) => resource, // faults of the files are told where they are parsed for all
    };
    let text = |entry: &Entry<&str>| {
        let Entry::Message(message) = entry else { return None };
        let mut text = String::new();
        for element in &message.value.as_ref()?.elements {
            match element {
                PatternElement::TextElement { value } => text.push_str(value),
                PatternElement::Placeable { .. } => return None,
            }
        }
        Some((message.id.name.to_owned(), one_line(&text)))
    };
    resource.body.iter().filter_map(text).collect()
}

/// Runs of blanks as one; no-break spaces stay.
fn one_line(text: &str) -> String {
    text.split_ascii_whitespace().collect::<Vec<_>>().join(" ")
}

#[cfg(test)]
mod tests {
    use super::*;

    const ENGLISH: &str = "page-a = Keep it\npage-b = Read <b>it</b>\npage-c = { $count } rows\n";

    #[track_caller]
    fn check(html: &str, want: &[&str]) {
        assert_eq!(unlike(html, ENGLISH), want);
    }

    #[test]
    fn words_like_their_message_are_fine_and_so_are_none() {
        check(r#"<p data-say="page-a">Keep  it</p><p data-say="page-a"></p>"#, &[]);
        check(r#"<p data-say="page-b">Read <b>it</b></p><p data-say="page-c">two rows</p>"#, &[]);
    }

    #[test]
    fn other_words_are_named() {
        check(
            r#"<p class="x" data-say="page-a">Keep</p>"#,
            &["web/index.html says “Keep” where page-a says “Keep it”"],
        );
        check(
            r#"<nav aria-label="Kept" data-say-label="page-a"></nav>"#,
            &["web/index.html says “Kept” where page-a says “Keep it”"],
        );
    }
}
