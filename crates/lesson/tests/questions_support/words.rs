//! Questions as a person reads them, in either language.
#![allow(clippy::unwrap_used, clippy::panic, reason = "a test stops at what should not be")]
#![allow(dead_code, reason = "each test file uses its own part")]

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use layercast_lesson::view::{FieldKind, PictureOption, QuestionView, Said, SaidArg};

/// What questions say in a language: its files `ask*.ftl`, one after another.
pub fn messages(language: &str) -> String {
    let folder =
        std::path::Path::new(env!("CARGO_MANIFEST_DIR")).join("../../static-data/messages").join(language);
    let mut files: Vec<_> = std::fs::read_dir(folder).unwrap().map(|file| file.unwrap().path()).collect();
    files.retain(|file| file.file_name().is_some_and(|name| name.to_string_lossy().starts_with("ask")));
    files.sort();
    assert!(!files.is_empty());
    files.iter().map(|file| std::fs::read_to_string(file).unwrap()).collect::<Vec<_>>().join("\n")
}

/// One language.
pub struct Words {
    bundle: FluentBundle<FluentResource>,
    comma: bool,
}

impl Words {
    pub fn new(language: &str) -> Self {
        let text = messages(language);
        let mut bundle = FluentBundle::new(vec![language.parse().unwrap()]);
        bundle.set_use_isolating(false);
        bundle.add_resource(FluentResource::try_new(text).unwrap()).unwrap();
        Self { bundle, comma: language == "es" }
    }

    pub fn say(&self, said: &Said) -> String {
        let mut args = FluentArgs::new();
        for (name, arg) in &said.args {
            let value: FluentValue = match arg {
                SaidArg::Number { value, decimals } => {
                    let text = format!("{value:.*}", usize::from(*decimals)).replace('-', "−");
                    if self.comma { text.replace('.', ",").into() } else { text.into() }
                }
                SaidArg::Count { count } => (*count).into(),
                SaidArg::Text { text } => text.clone().into(),
                SaidArg::Message { said } => self.say(said).into(),
            };
            args.set(name.clone(), value);
        }
        let mut errors = Vec::new();
        let pattern = self.bundle.get_message(&said.id).and_then(|m| m.value());
        let pattern = pattern.unwrap_or_else(|| panic!("{}", said.id));
        let text = self.bundle.format_pattern(pattern, Some(&args), &mut errors).into_owned();
        assert!(errors.is_empty(), "{}: {errors:?}", said.id);
        text
    }

    pub fn page(&self, view: &QuestionView) -> String {
        let mut page = format!("== {}/{} {}\n", view.number, view.of, self.say(&view.ask));
        for lead in &view.lead {
            page += &format!("{}\n", self.say(lead));
        }
        for part in &view.parts {
            if let Some(verdict) = &part.verdict {
                page += &format!("({:?}) {}\n", verdict.sign, self.say(&verdict.said));
            }
            let sum = |l: &layercast_lesson::view::SumLine| {
                format!("    {} | {} | {}\n", self.say(&l.left), self.say(&l.right), self.say(&l.gloss))
            };
            for line in &part.sum {
                page += &sum(line);
            }
            for note in part.notes.iter().chain(&part.fits) {
                page += &format!("  . {}\n", self.say(note));
            }
            for hint in &part.hints {
                page += &format!(
                    "  > {}: {}\n",
                    self.say(&hint.head),
                    hint.said.as_ref().map(|s| self.say(s)).unwrap_or_default()
                );
                for line in &hint.sum {
                    page += &sum(line);
                }
            }
            for line in &part.lines {
                page += &format!("  {}", self.say(&line.label));
                for field in &line.fields {
                    page += &match &field.kind {
                        FieldKind::Number => format!(" [{}]", field.text),
                        FieldKind::List { options } | FieldKind::Choice { options } => {
                            format!(
                                " <{}>",
                                options.iter().map(|o| self.say(&o.label)).collect::<Vec<_>>().join(" / ")
                            )
                        }
                        FieldKind::Fact { fact } => format!(" [ ] {}", self.say(fact)),
                        FieldKind::Pictures { pictures } => {
                            let one = |o: &PictureOption| {
                                format!("\n    ({}) {}: {}", o.value, self.say(&o.label), self.say(&o.alt))
                            };
                            pictures.options.iter().map(one).collect::<Vec<_>>().join("")
                        }
                        FieldKind::Prose { starters } => {
                            let starters: Vec<String> = starters.iter().map(|s| self.say(s)).collect();
                            format!(" [{}]", starters.join(" | "))
                        }
                    };
                    page += &field.after.as_ref().map(|a| format!(" {}", self.say(a))).unwrap_or_default();
                }
                page += &format!(" {}\n", line.before.as_ref().map(|b| self.say(b)).unwrap_or_default());
            }
        }
        if let Some((prompt, _)) = &view.own_words {
            page += &format!("{}\n", self.say(prompt));
        }
        let buttons: Vec<String> = view.buttons.iter().map(|b| self.say(&b.label)).collect();
        page += &format!("{}\n", buttons.join(" · "));
        for note in &view.notes {
            page += &format!("-- {}\n", self.say(note));
        }
        page
    }
}
