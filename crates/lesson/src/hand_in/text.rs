//! The text of a hand-in: how it is written, its sum, and what may happen to it on the way.

use super::HandIn;
use layercast_exchange::document::short_hash;

/// Where the sum stands.
const CHECK_KEY: &str = "\"check\":\"";

/// A hand-in as JSON that may stand in a page as it is.
pub(super) fn written(hand_in: &HandIn) -> String {
    // Every key is a text or a number, so that writing it cannot fail.
    let json = serde_json::to_string(hand_in).unwrap_or_default();
    // These stand in texts only, where an escape means the same.
    json.replace('<', "\\u003c")
        .replace('>', "\\u003e")
        .replace('&', "\\u0026")
        .replace('\u{2028}', "\\u2028")
        .replace('\u{2029}', "\\u2029")
}

/// The sum of a written hand-in, whatever sum stands in it and however it is laid out: over the text as it stands, so that
/// a file keeps its sum when later programs know more fields.
pub(super) fn check(json: &str) -> String {
    let mut text = squeezed(json);
    if let Some(from) = text.find(CHECK_KEY).map(|at| at + CHECK_KEY.len()) {
        let length = text.get(from..).and_then(|rest| rest.find('"')).unwrap_or(0);
        text.replace_range(from..from + length, "");
    }
    short_hash(&text)
}

/// JSON without the blanks that mean nothing.
fn squeezed(json: &str) -> String {
    let (mut inside, mut escaped) = (false, false);
    let kept = |c: &char| {
        let blank = !inside && c.is_ascii_whitespace();
        if inside && !escaped && *c == '\\' {
            escaped = true;
        } else {
            inside ^= *c == '"' && !escaped;
            escaped = false;
        }
        !blank
    };
    json.chars().filter(kept).collect()
}

/// What mail and word processors do to JSON, undone in two ways: quotes made straight, line breaks with the marks of a
/// quotation taken for a blank, or for nothing.
pub(super) fn mended(text: &str) -> [String; 2] {
    let straight: String = text
        .chars()
        .map(|c| match c {
            '“' | '”' | '„' | '‟' | '«' | '»' => '"',
            '\u{a0}' => ' ',
            other => other,
        })
        .collect();
    let lines: Vec<&str> = straight.lines().map(|line| line.trim_start_matches(['>', ' ', '\t'])).collect();
    [lines.join(" "), lines.concat()]
}

/// The text of the block that a saved report page carries.
pub(super) fn block(html: &str) -> Option<&str> {
    let mut rest = html;
    loop {
        let at = rest.to_ascii_lowercase().find("<script")?;
        let tag_end = at + rest.get(at..)?.find('>')?;
        let tag = rest.get(at..tag_end)?;
        let body = rest.get(tag_end + 1..)?;
        let end = body.to_ascii_lowercase().find("</script").unwrap_or(body.len());
        if tag.contains(super::SCHEMA) {
            return body.get(..end);
        }
        rest = body.get(end..)?;
    }
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn blanks_outside_of_texts_mean_nothing() {
        assert_eq!(squeezed("{ \"a b\" :\n [1, \" \\\" \\\\\" ] }"), "{\"a b\":[1,\" \\\" \\\\\"]}");
    }

    #[test]
    fn the_sum_leaves_itself_out() {
        let sum = check("{\"check\":\"\",\"a\":1}");
        assert_eq!(check("{ \"check\": \"XY\",\n \"a\" : 1 }"), sum);
        assert_ne!(check("{\"check\":\"\",\"a\":2}"), sum);
    }

    #[test]
    fn the_block_is_found_among_others() {
        let page = "<script>1<2</script><SCRIPT id='layercast-hand-in' type=x>{}</SCRIPT><script>";
        assert_eq!(block(page), Some("{}"));
        assert_eq!(block("<script>{}</script>"), None);
        assert_eq!(block("<script"), None);
    }
}
