//! The message files: complete in each language, each message in use, and the same words from both renderers (the page's and
//! the one of the example program) and in the page before any script runs.

use super::first_words;
use crate::page::{LANGUAGES, missing_characters, source_of};
use crate::test::Count;
use crate::tools;
use crate::tree::{self, Tree};
use anyhow::{Context, Result, anyhow, bail};
use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use fluent_syntax::ast::{self, Entry, Expression, InlineExpression, PatternElement};
use std::collections::{BTreeMap, BTreeSet};

/// Name of an argument, and whether a plural is chosen by it.
type Arguments = BTreeMap<String, bool>;

/// Renders every message; each text is one check.
pub fn check(tree: &Tree) -> Result<Count> {
    let mut faults = Vec::new();
    let mut by_language = Vec::new();
    for language in LANGUAGES {
        let messages = parse(&source_of(tree, language)?, language, &mut faults)?;
        by_language.push((language, messages));
    }
    faults.extend(differing(&by_language));
    let known: BTreeSet<&str> =
        by_language.iter().flat_map(|(_, messages)| messages.keys().map(String::as_str)).collect();
    faults.extend(unused_and_missing(&literals(tree)?, &known));
    let html = tree::read(&tree.web().join("index.html"))?;
    faults.extend(first_words::unlike(&html, &source_of(tree, "en")?));
    let lacking = missing_characters(tree)?;
    if !lacking.is_empty() {
        faults.push(format!("characters that a font of the look does not have:\n{lacking}"));
    }
    let mut passed = 0;
    for (language, messages) in &by_language {
        passed += compare_renderers(tree, language, messages, &mut faults)?;
    }
    if !faults.is_empty() {
        for fault in &faults {
            eprintln!("{fault}");
        }
        return Ok(Count { passed, failed: faults.len() });
    }
    Ok(Count { passed, failed: 0 })
}

/// Every message of a language with its arguments.
fn parse(source: &str, language: &str, faults: &mut Vec<String>) -> Result<BTreeMap<String, Arguments>> {
    let resource = fluent_syntax::parser::parse(source)
        .map_err(|(_, errors)| anyhow!("{language}: {:?}", errors.first().context("a fault")))?;
    let mut messages = BTreeMap::new();
    for entry in &resource.body {
        let Entry::Message(message) = entry else { continue };
        let mut arguments = Arguments::new();
        match &message.value {
            Some(pattern) => arguments_of(pattern, &mut arguments),
            None => faults.push(format!("{language}: {} says nothing", message.id.name)),
        }
        if messages.insert(message.id.name.to_owned(), arguments).is_some() {
            faults.push(format!("{language}: {} stands there twice", message.id.name));
        }
    }
    Ok(messages)
}

fn arguments_of(pattern: &ast::Pattern<&str>, into: &mut Arguments) {
    for element in &pattern.elements {
        if let PatternElement::Placeable { expression } = element {
            arguments_of_expression(expression, into);
        }
    }
}

fn arguments_of_expression(expression: &Expression<&str>, into: &mut Arguments) {
    match expression {
        Expression::Inline(inline) => arguments_of_inline(inline, into),
        Expression::Select { selector, variants } => {
            if let InlineExpression::VariableReference { id } = selector {
                into.insert(id.name.to_owned(), true);
            }
            for variant in variants {
                arguments_of(&variant.value, into);
            }
        }
    }
}

fn arguments_of_inline(inline: &InlineExpression<&str>, into: &mut Arguments) {
    match inline {
        InlineExpression::VariableReference { id } => {
            into.entry(id.name.to_owned()).or_insert(false);
        }
        InlineExpression::Placeable { expression } => arguments_of_expression(expression, into),
        _ => {}
    }
}

/// Messages that only some languages have, or with other arguments.
fn differing(by_language: &[(&str, BTreeMap<String, Arguments>)]) -> Vec<String> {
    let mut faults = Vec::new();
    for (language, messages) in by_language {
        for (other, theirs) in by_language.iter().filter(|(other, _)| other != language) {
            for (id, arguments) in messages {
                match theirs.get(id) {
                    None => faults.push(format!("{id} is in {language} but not in {other}")),
                    Some(theirs) => faults.extend(
                        arguments
                            .keys()
                            .filter(|name| !theirs.contains_key(*name))
                            .map(|name| format!("{id} uses ${name} in {language} but not in {other}")),
                    ),
                }
            }
        }
    }
    faults
}

/// A text in quotes in a source, and where it stands.
struct Literal {
    text: String,
    place: String,
    /// Right behind what only takes ids.
    is_id: bool,
}

/// Every text in quotes that could be an id.
fn literals(tree: &Tree) -> Result<Vec<Literal>> {
    let mut found = Vec::new();
    let mut files = tree::files_below(&tree.root.join("crates"))?;
    files.extend(tree::files_below(&tree.web().join("scripts"))?);
    files.push(tree.web().join("index.html"));
    for file in files {
        let name = tree.short(&file).to_string();
        let is_source = [".rs", ".ts", ".html"].iter().any(|ending| name.ends_with(ending));
        if is_source && !name.starts_with("crates/xtask") && !name.ends_with(".test.ts") {
            found.extend(literals_of(&tree::read(&file)?, &name));
        }
    }
    Ok(found)
}

fn literals_of(source: &str, name: &str) -> Vec<Literal> {
    const TAKE_IDS: [&str; 6] =
        ["Message::new(", "data-say=", "data-say-label=", "data-say-placeholder=", " t(", "(t("];
    let mut found = Vec::new();
    for (number, line) in source.lines().enumerate() {
        let parts: Vec<&str> = line.split('"').collect();
        for (before, text) in parts.iter().zip(parts.iter().skip(1)) {
            let is_shaped = text.contains('-')
                && text.starts_with(|c: char| c.is_ascii_lowercase())
                && text.chars().all(|c| c.is_ascii_lowercase() || c.is_ascii_digit() || c == '-');
            if is_shaped {
                let is_id = TAKE_IDS.iter().any(|taker| before.ends_with(taker));
                found.push(Literal {
                    text: (*text).to_owned(),
                    place: format!("{name}:{}", number + 1),
                    is_id,
                });
            }
        }
    }
    found
}

fn unused_and_missing(literals: &[Literal], known: &BTreeSet<&str>) -> Vec<String> {
    let used: BTreeSet<&str> = literals.iter().map(|literal| literal.text.as_str()).collect();
    let mut faults: Vec<String> =
        known.iter().filter(|id| !used.contains(*id)).map(|id| format!("{id} is used nowhere")).collect();
    for literal in literals.iter().filter(|literal| literal.is_id && !known.contains(literal.text.as_str())) {
        faults.push(format!("{} is no message ({})", literal.text, literal.place));
    }
    faults
}

/// Renders every message with made-up arguments by both renderers; gives the number of texts that are alike.
fn compare_renderers(
    tree: &Tree,
    language: &str,
    messages: &BTreeMap<String, Arguments>,
    faults: &mut Vec<String>,
) -> Result<usize> {
    let source = source_of(tree, language)?;
    let cases: Vec<(&str, serde_json::Value)> = messages
        .iter()
        .flat_map(|(id, arguments)| samples(arguments).into_iter().map(move |args| (id.as_str(), args)))
        .collect();
    let ours = render(&source, language, &cases)?;
    let asked = serde_json::json!({ "language": language, "source": source, "cases": cases });
    let script = include_str!("render.js");
    let theirs = tools::pipe(
        tools::node(tree).args(["--input-type=module", "--eval", script]),
        asked.to_string().as_bytes(),
    )?;
    let theirs: Vec<String> = serde_json::from_slice(&theirs)?;
    if theirs.len() != ours.len() {
        bail!("{language}: the page's renderer gave {} texts for {}", theirs.len(), ours.len());
    }
    let mut alike = 0;
    for (((id, args), ours), theirs) in cases.iter().zip(&ours).zip(&theirs) {
        // An empty text is written `{ "" }`, so it is meant; blanks alone are not.
        if ours == theirs && (ours.is_empty() || !ours.trim().is_empty()) {
            alike += 1;
        } else {
            faults.push(format!(
                "{language}: {id} with {args}\n  example program: {ours}\n  page:            {theirs}"
            ));
        }
    }
    Ok(alike)
}

/// Arguments to try: counts that choose each plural form of our languages, and texts.
fn samples(arguments: &Arguments) -> Vec<serde_json::Value> {
    let counts: &[u32] = if arguments.values().any(|is_count| *is_count) { &[0, 1, 2, 7] } else { &[1] };
    let of = |count: u32| {
        let values = arguments.iter().map(|(name, is_count)| {
            let value =
                if *is_count { serde_json::json!(count) } else { serde_json::json!(format!("[{name}]")) };
            (name.clone(), value)
        });
        serde_json::Value::Object(values.collect())
    };
    counts.iter().map(|count| of(*count)).collect()
}

fn render(source: &str, language: &str, cases: &[(&str, serde_json::Value)]) -> Result<Vec<String>> {
    let resource = FluentResource::try_new(source.to_owned()).map_err(|(_, errors)| anyhow!("{errors:?}"))?;
    let mut bundle = FluentBundle::new(vec![language.parse()?]);
    bundle.set_use_isolating(false);
    bundle.add_resource(resource).map_err(|errors| anyhow!("{errors:?}"))?;
    cases.iter().map(|(id, args)| render_one(&bundle, id, args)).collect()
}

fn render_one(bundle: &FluentBundle<FluentResource>, id: &str, args: &serde_json::Value) -> Result<String> {
    let mut given = FluentArgs::new();
    for (name, value) in args.as_object().into_iter().flatten() {
        match value.as_u64() {
            Some(count) => given.set(name.as_str(), FluentValue::from(count)),
            None => given.set(name.as_str(), FluentValue::from(value.as_str().unwrap_or_default())),
        }
    }
    let pattern =
        bundle.get_message(id).and_then(|message| message.value()).context("a message with a value")?;
    let mut errors = Vec::new();
    let text = bundle.format_pattern(pattern, Some(&given), &mut errors).into_owned();
    if let Some(error) = errors.first() {
        bail!("{id}: {error}");
    }
    Ok(text)
}

#[cfg(test)]
mod tests {
    use super::*;

    fn parsed(source: &str) -> BTreeMap<String, Arguments> {
        parse(source, "en", &mut Vec::new()).unwrap()
    }

    #[test]
    fn an_id_that_no_source_names_is_unused() {
        let literals = literals_of(r#"Message::new("log-a").text("x-y", t)"#, "a.rs");
        let known = ["log-a", "log-b"].into();
        assert_eq!(unused_and_missing(&literals, &known), ["log-b is used nowhere"]);
    }

    #[test]
    fn an_id_without_words_is_missing() {
        let literals = literals_of(r#"<p data-say="page-x">"#, "index.html");
        assert_eq!(unused_and_missing(&literals, &BTreeSet::new()), ["page-x is no message (index.html:1)"]);
    }

    #[test]
    fn a_language_with_another_argument_is_named() {
        let pair = [("en", parsed("a = { $depth } m")), ("es", parsed("a = m"))];
        assert_eq!(differing(&pair), ["a uses $depth in en but not in es"]);
    }

    #[test]
    fn arguments_inside_a_plural_are_seen() {
        let messages = parsed("a = { $rows ->\n  [one] { $x } row\n *[other] { $rows } rows\n }");
        assert_eq!(messages["a"], [("rows".to_owned(), true), ("x".to_owned(), false)].into());
    }
}
