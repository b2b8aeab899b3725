//! Messages made into words by `fluent-bundle`, from the message files of the page.

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use layercast_core::{Arg, Message};
use std::path::PathBuf;

/// The words of one language.
pub struct Words {
    bundle: FluentBundle<FluentResource>,
    decimal_comma: bool,
}

impl Words {
    /// Loads every message file of a language ("en", "es").
    pub fn load(lang: &str) -> Self {
        let folder = PathBuf::from(env!("CARGO_MANIFEST_DIR")).join("../../static-data/messages").join(lang);
        let id = lang.parse().unwrap_or_default();
        let mut bundle = FluentBundle::new(vec![id]);
        bundle.set_use_isolating(false);
        let files = std::fs::read_dir(&folder).into_iter().flatten().flatten().map(|file| file.path());
        let mut files: Vec<PathBuf> =
            files.filter(|path| path.extension().is_some_and(|ext| ext == "ftl")).collect();
        files.sort();
        for file in files {
            let text = std::fs::read_to_string(&file).unwrap_or_default();
            let resource = FluentResource::try_new(text).unwrap_or_else(|(resource, errors)| {
                eprintln!("{}: {errors:?}", file.display());
                resource
            });
            bundle.add_resource_overriding(resource);
        }
        Self { bundle, decimal_comma: lang == "es" }
    }

    /// The sentence of a message; its id in brackets where there is none.
    pub fn render(&self, message: &Message) -> String {
        let Some(pattern) = self.bundle.get_message(message.id).and_then(|found| found.value()) else {
            return format!("[{}]", message.id);
        };
        let mut args = FluentArgs::new();
        for (name, arg) in &message.args {
            let value: FluentValue<'_> = match arg {
                Arg::Number { value, decimals } => self.number(*value, *decimals).into(),
                Arg::Count(count) => (*count).into(),
                Arg::Text(text) => text.clone().into(),
                Arg::Message(inner) => self.render(inner).into(),
            };
            args.set(*name, value);
        }
        let mut errors = Vec::new();
        let text = self.bundle.format_pattern(pattern, Some(&args), &mut errors).into_owned();
        for error in errors {
            eprintln!("{}: {error}", message.id);
        }
        // Plain text: what was written stands in quotes, other marks fall away.
        let (open, close) = if self.decimal_comma { ("«", "»") } else { ("“", "”") };
        let text = text.replace("<cell>", open).replace("</cell>", close);
        text.replace("<b>", "").replace("</b>", "")
    }

    /// A measured number with the decimal sign and the minus of the language.
    fn number(&self, value: f64, decimals: u8) -> String {
        let text = format!("{value:.*}", usize::from(decimals));
        let text = text.strip_prefix('-').map_or(text.clone(), |rest| format!("−{rest}"));
        if self.decimal_comma { text.replace('.', ",") } else { text }
    }
}
