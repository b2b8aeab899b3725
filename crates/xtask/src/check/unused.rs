//! What the page has and nobody asks for: functions that a script gives away and none takes, and ids of `index.html` that
//! nothing names.

use crate::tree::{self, Tree};
use anyhow::Result;
use std::collections::BTreeSet;

/// A file by its path from the root.
struct Source {
    name: String,
    text: String,
}

/// Every fault found.
pub fn faults(tree: &Tree) -> Result<Vec<String>> {
    let below = |folder: std::path::PathBuf, endings: &[&str]| -> Result<Vec<Source>> {
        let mut found = Vec::new();
        for file in tree::files_below(&folder)? {
            let name = tree.short(&file).to_string();
            if endings.iter().any(|ending| name.ends_with(ending)) {
                found.push(Source { name, text: tree::read(&file)? });
            }
        }
        Ok(found)
    };
    let scripts = below(tree.web().join("scripts"), &[".ts"])?;
    let styles = below(tree.web().join("styles"), &[".css"])?;
    let mut askers = below(tree.root.join("tests/browser"), &[".js"])?;
    // The built page is looked into by the screenshots and the bench.
    askers.extend(below(tree.root.join("crates/xtask/src"), &[".js"])?);
    let mut faults = untaken(&scripts);
    askers.extend(scripts);
    faults.extend(unnamed_ids(&tree::read(&tree.web().join("index.html"))?, &askers, &styles));
    Ok(faults)
}

/// Exported functions, classes and values that no other script imports.
fn untaken(scripts: &[Source]) -> Vec<String> {
    let taken: BTreeSet<(String, String)> = scripts.iter().flat_map(taken_by).collect();
    let mut faults = Vec::new();
    for script in scripts {
        for name in script.text.lines().filter_map(exported) {
            if !taken.contains(&(stem(&script.name).to_owned(), name.to_owned())) {
                faults.push(format!("{} gives {name} away, and no script takes it", script.name));
            }
        }
    }
    faults
}

/// The name that a line gives away; types are no code and are let be.
fn exported(line: &str) -> Option<&str> {
    let rest = line.strip_prefix("export ")?;
    let rest = rest.strip_prefix("async ").unwrap_or(rest);
    let rest = ["function* ", "function ", "const ", "let ", "class "]
        .iter()
        .find_map(|kind| rest.strip_prefix(kind))?;
    rest.split(|c: char| !is_of_name(c)).next()
}

/// What a script imports: the file it is from, without folder and ending, and the name there.
fn taken_by(script: &Source) -> Vec<(String, String)> {
    let mut taken = Vec::new();
    for import in script.text.split("\nimport ").skip(1).chain(script.text.strip_prefix("import ")) {
        let Some((what, from)) = import.split_once(" from \"") else { continue };
        let Some((from, _)) = from.split_once('"') else { continue };
        let mut take = |name: &str| taken.push((stem(from).to_owned(), name.to_owned()));
        if let Some(alias) = what.strip_prefix("* as ") {
            let alias = format!("{alias}.");
            for (at, _) in script.text.match_indices(&alias) {
                let (before, after) = (script.text.get(..at), script.text.get(at + alias.len()..));
                if !before.is_some_and(|before| before.ends_with(is_of_name)) {
                    after.and_then(|rest| rest.split(|c: char| !is_of_name(c)).next()).map(&mut take);
                }
            }
        } else if let Some((_, names)) = what.split_once('{') {
            for name in names.trim_end_matches('}').split(',') {
                let name = name.trim().trim_start_matches("type ");
                take(name.split(" as ").next().unwrap_or(name).trim());
            }
        }
    }
    taken
}

fn stem(path: &str) -> &str {
    path.rsplit('/').next().unwrap_or(path).trim_end_matches(".ts")
}

/// Ids of the page that no script, style or test names, and no `for`, `href`, `list` or `aria-…` of the page itself.
fn unnamed_ids(html: &str, scripts: &[Source], styles: &[Source]) -> Vec<String> {
    let texts: Vec<Text> = scripts.iter().flat_map(|script| texts_of(&script.text)).collect();
    let is_said = |word: &str| texts.iter().any(|text| text.said == word);
    let by_script = |id: &str| texts.iter().any(|text| text.names(id, &is_said));
    let by_style = |id: &str| styles.iter().any(|style| has_word(&style.text, &format!("#{id}")));
    let by_page = |id: &str| {
        html.split('<').any(|tag| {
            attributes(tag).any(|(name, value)| {
                let refers = matches!(name, "for" | "href" | "list" | "form") || name.starts_with("aria-");
                refers && value.split_whitespace().any(|word| word.trim_start_matches('#') == id)
            })
        })
    };
    let mut faults = Vec::new();
    for tag in html.split('<') {
        let Some((_, id)) = attributes(tag).find(|(name, _)| *name == "id") else { continue };
        // `show_ways` of ways.ts has its buttons described by the line of the part "waits", by whatever id that has.
        let is_read_by_part = attributes(tag).any(|it| it == ("data-part", "waits"));
        if !(is_read_by_part || by_script(id) || by_style(id) || by_page(id)) {
            faults.push(format!("web/index.html has the id \"{id}\", and nothing names it"));
        }
    }
    faults
}

/// Names and values of a tag's attributes.
fn attributes(tag: &str) -> impl Iterator<Item = (&str, &str)> {
    let tag = tag.split_once('>').map_or(tag, |(tag, _)| tag);
    let names = tag.split('"').step_by(2).map(|before| before.trim().trim_end_matches('='));
    let names = names.map(|name| name.rsplit(char::is_whitespace).next().unwrap_or(name));
    names.zip(tag.split('"').skip(1).step_by(2))
}

/// A text in quotes.
struct Text {
    said: String,
    /// Right behind `by_id(`.
    is_id: bool,
}

impl Text {
    /// Whether it names an id: in whole, as a selector, or as a pattern of `by_id` whose hole some text of the scripts fills.
    fn names(&self, id: &str, is_said: &impl Fn(&str) -> bool) -> bool {
        if has_word(&self.said, id) {
            return true;
        }
        let Some((before, rest)) = self.said.split_once("${") else { return false };
        let Some((_, after)) = rest.split_once('}') else { return false };
        let is_selector = before.starts_with('#');
        let hole = id.strip_prefix(before.trim_start_matches('#')).and_then(|rest| rest.strip_suffix(after));
        (self.is_id || is_selector) && hole.is_some_and(is_said)
    }
}

/// The texts in quotes of a script; comments are passed over.
fn texts_of(source: &str) -> Vec<Text> {
    let mut found = Vec::new();
    let mut rest = source;
    let mut before = String::new();
    while let Some(sign) = rest.chars().next() {
        let end = |mark: &str| rest.find(mark).map_or(rest.len(), |at| at + mark.len());
        if rest.starts_with("//") {
            rest = rest.get(end("\n")..).unwrap_or("");
        } else if rest.starts_with("/*") {
            rest = rest.get(end("*/")..).unwrap_or("");
        } else if matches!(sign, '"' | '\'' | '`') {
            let inside = rest.get(1..).unwrap_or("");
            let mut escaped = false;
            let closes = inside.find(|c: char| {
                let ends = !escaped && (c == sign || (c == '\n' && sign != '`'));
                escaped = c == '\\' && !escaped;
                ends
            });
            let (said, after) = inside.split_at(closes.unwrap_or(inside.len()));
            let is_id = before.ends_with("by_id(");
            found.push(Text { said: said.to_owned(), is_id });
            rest = after.get(1..).unwrap_or("");
            before.clear();
        } else {
            before.push(sign);
            rest = rest.get(sign.len_utf8()..).unwrap_or("");
        }
    }
    found
}

fn is_of_name(c: char) -> bool {
    c.is_alphanumeric() || c == '_' || c == '$'
}

/// Whether a word stands in a text by itself; a hyphen is part of a word.
fn has_word(text: &str, word: &str) -> bool {
    let is_part = |c: char| is_of_name(c) || c == '-';
    text.match_indices(word).any(|(at, _)| {
        let (before, after) = (text.get(..at), text.get(at + word.len()..));
        !before.is_some_and(|before| before.ends_with(is_part))
            && !after.is_some_and(|after| after.starts_with(is_part))
    })
}

#[cfg(test)]
mod tests {
    use super::*;

    fn source(name: &str, text: &str) -> Source {
        Source { name: name.to_owned(), text: text.to_owned() }
    }

    #[test]
    fn what_no_script_imports_is_named() {
        let giver = "export function used(): void {}\nexport async function alone() {}\nexport type T = 1;\n\
                     export const BY_ALIAS = 1;\nexport function renamed() {}\n";
        let taker = "import {\n  type T,\n  used,\n  renamed as other,\n} from \"./a\";\nimport * as a from \"../a\";\n\
                     a.BY_ALIAS; // a is alone\n";
        let scripts = [source("web/scripts/a.ts", giver), source("web/scripts/screens/b.ts", taker)];
        assert_eq!(untaken(&scripts), ["web/scripts/a.ts gives alone away, and no script takes it"]);
    }

    #[test]
    fn the_same_name_from_another_file_is_not_it() {
        let scripts = [
            source("web/scripts/a.ts", "export function act() {}\n"),
            source("web/scripts/b.ts", "import { act } from \"./c\";\nact();\n"),
        ];
        assert_eq!(untaken(&scripts).len(), 1);
    }

    #[track_caller]
    fn unnamed(html: &str, script: &str, style: &str) -> Vec<String> {
        unnamed_ids(html, &[source("a.ts", script)], &[source("a.css", style)])
    }

    #[test]
    fn an_id_that_nothing_names_is_told() {
        let want = ["web/index.html has the id \"a\", and nothing names it"];
        assert_eq!(unnamed(r#"<p class="x" id="a">"#, "", ""), want);
        assert_eq!(unnamed(r#"<p id="a">"#, "// \"a\"\n/* 'a' */ by_id(\"a-b\"); a();", ".a {}"), want);
        assert_eq!(unnamed(r#"<p id="a" data-say="a">"#, "", ""), want);
    }

    #[test]
    fn an_id_is_named_by_script_style_and_page() {
        let none: [&str; 0] = [];
        assert_eq!(unnamed(r#"<p id="a">"#, "by_id(\"a\")", ""), none);
        assert_eq!(unnamed(r#"<p id="a">"#, "find('#a .b')", ""), none);
        assert_eq!(unnamed(r#"<p id="a">"#, "", "#a > p {}"), none);
        assert_eq!(unnamed(r#"<p id="a"><b aria-describedby="b a">"#, "", ""), none);
        assert_eq!(unnamed(r#"<p id="a"><label for="a">"#, "", ""), none);
        assert_eq!(unnamed(r#"<p data-part="waits" id="a">"#, "", ""), none);
    }

    #[test]
    fn a_pattern_names_an_id_where_a_text_fills_its_hole() {
        let script = "for (const one of [\"no\"]) by_id(`log-${one}`);";
        let want = ["web/index.html has the id \"log-never\", and nothing names it"];
        assert_eq!(unnamed(r#"<p id="log-no"><p id="log-never">"#, script, ""), want);
        assert_eq!(unnamed(r#"<p id="log-no">"#, "part(`log-${one}`, \"no\")", "").len(), 1);
    }
}
