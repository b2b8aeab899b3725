//! Notebooks of the invented waters, and the page's words for what they show.
#![allow(clippy::unwrap_used, clippy::panic, reason = "helpers of tests")]
#![allow(dead_code, reason = "each test uses its part")]

use fluent_bundle::{FluentArgs, FluentBundle, FluentResource, FluentValue};
use layercast_lesson::action::Action;
use layercast_lesson::document::{Lesson, MarkName, Notebook, Screen};
use layercast_lesson::view::{FoundView, Look, Num, Said, SaidArg, Sign};
use layercast_lesson::{act, look};

/// The invented waters: name, depth, down, up.
const WATERS: &str = include_str!("../questions_support/waters.csv");

/// Every water by name.
pub const NAMES: [&str; 12] = [
    "group_c", "mixed", "weak", "cannot", "inverse", "unstable", "surface", "two", "group_f", "one", "deep",
    "shallow",
];

/// A water as a spreadsheet gives it.
pub fn table(water: &str) -> String {
    let mut text = String::from("Depth (m)\tDown (°C)\tUp (°C)\n");
    for line in WATERS.lines() {
        if let Some(cells) = line.strip_prefix(water).and_then(|rest| rest.strip_prefix(',')) {
            let cells: Vec<&str> = cells.split(',').collect();
            let tenth = |cell: &str| {
                if cell.is_empty() || cell.contains('.') { cell.to_owned() } else { format!("{cell}.0") }
            };
            text += &format!("{}\t{}\t{}\n", cells[0], tenth(cells[1]), tenth(cells[2]));
        }
    }
    assert!(text.lines().count() > 3, "{water}");
    text
}

/// An empty notebook.
pub fn empty() -> Notebook {
    Notebook::new("C-KTZR", Lesson::first())
}

/// A notebook with a water pasted.
pub fn notebook(water: &str) -> Notebook {
    pasted(&table(water))
}

/// A notebook with a table pasted.
pub fn pasted(text: &str) -> Notebook {
    doing(&empty(), &[Action::Paste { text: text.to_owned() }])
}

/// The notebook after several actions.
pub fn doing(notebook: &Notebook, actions: &[Action]) -> Notebook {
    actions.iter().fold(notebook.clone(), |notebook, action| act(&notebook, action))
}

/// The notebook with its marks typed (empty: refused) and checked.
pub fn checked(notebook: &Notebook, marks: [&str; 3]) -> Notebook {
    let mut actions: Vec<Action> = [MarkName::Mixed, MarkName::Thermocline, MarkName::Deep]
        .into_iter()
        .zip(marks)
        .map(|(mark, text)| match text {
            "" => Action::RefuseMark { mark, refused: true },
            text => Action::TypeMark { mark, text: text.to_owned() },
        })
        .collect();
    actions.push(Action::Go { screen: Screen::Profile, question: None });
    actions.push(Action::CheckMarks { early: true });
    let checked = doing(notebook, &actions);
    assert!(checked.sheets[0].first_marks.is_some(), "the marks were not checked");
    checked
}

/// What the rules found for marks typed and checked.
pub fn found(water: &str, marks: [&str; 3]) -> FoundView {
    look(&checked(&notebook(water), marks)).profile.found.unwrap()
}

/// The page's words in one language.
pub struct Words {
    bundle: FluentBundle<FluentResource>,
    decimal: char,
}

impl Words {
    /// "en" or "es".
    pub fn new(language: &str) -> Self {
        let mut bundle = FluentBundle::new(vec![language.parse().unwrap()]);
        bundle.set_use_isolating(false);
        let folder = format!("{}/../../static-data/messages/{language}", env!("CARGO_MANIFEST_DIR"));
        let mut files: Vec<_> = std::fs::read_dir(folder).unwrap().map(|file| file.unwrap().path()).collect();
        files.sort();
        for path in files {
            let resource = FluentResource::try_new(std::fs::read_to_string(&path).unwrap());
            let resource = resource.unwrap_or_else(|(_, faults)| panic!("{}: {faults:?}", path.display()));
            bundle.add_resource(resource).unwrap_or_else(|faults| panic!("{}: {faults:?}", path.display()));
        }
        Self { bundle, decimal: if language == "es" { ',' } else { '.' } }
    }

    /// A number as the page writes it.
    pub fn number(&self, value: f64, decimals: u8) -> String {
        let places = usize::from(decimals);
        format!("{value:.places$}").replace('.', &self.decimal.to_string()).replace('-', "−")
    }

    /// A number with its decimals.
    pub fn num(&self, num: Num) -> String {
        self.number(num.value, num.decimals)
    }

    /// A message in words.
    #[track_caller]
    pub fn say(&self, said: &Said) -> String {
        let mut args = FluentArgs::new();
        for (name, arg) in &said.args {
            let value = match arg {
                SaidArg::Number { value, decimals } => FluentValue::from(self.number(*value, *decimals)),
                SaidArg::Count { count } => FluentValue::from(*count),
                SaidArg::Text { text } => FluentValue::from(text.clone()),
                SaidArg::Message { said } => FluentValue::from(self.say(said)),
            };
            args.set(name.clone(), value);
        }
        let message = self.bundle.get_message(&said.id).unwrap_or_else(|| panic!("no words for {}", said.id));
        let pattern = message.value().unwrap_or_else(|| panic!("no words for {}", said.id));
        let mut faults = Vec::new();
        let text = self.bundle.format_pattern(pattern, Some(&args), &mut faults).into_owned();
        assert!(faults.is_empty(), "{}: {faults:?}", said.id);
        text
    }

    /// What the rules found, line by line.
    pub fn found(&self, found: &FoundView) -> String {
        let mut lines = vec![format!("# {}", self.say(&found.title))];
        lines.extend(found.lead.iter().map(|said| self.say(said)));
        for item in &found.items {
            let value = item.value.map(|num| self.num(num) + " ").unwrap_or_default();
            lines.push(format!("## {} | {value}{}", self.say(&item.name), self.say(&item.unit)));
            if let Some(verdict) = &item.verdict {
                lines.push(format!("({}) {}", sign(verdict.sign), self.say(&verdict.said)));
            }
            lines.extend(item.notes.iter().map(|said| self.say(said)));
        }
        for doubt in &found.doubts {
            lines.push(self.doubt(doubt));
        }
        lines.join("\n")
    }

    /// A doubt block.
    pub fn doubt(&self, doubt: &layercast_lesson::view::DoubtView) -> String {
        let ways: Vec<String> = doubt.ways.iter().map(|way| format!("[{}]", self.say(&way.label))).collect();
        format!("? {}: {} {}", self.say(&doubt.place), self.say(&doubt.text), ways.join(" "))
    }

    /// The panel of Log.
    pub fn log(&self, look: &Look) -> String {
        let log = &look.log;
        let mut lines = vec![format!("# {}", self.say(&log.title))];
        let many = |said: &[Said]| said.iter().map(|said| self.say(said)).collect::<Vec<_>>();
        lines.extend(log.understood.iter().map(|said| self.say(said)));
        lines.extend(many(&log.notices));
        lines.extend(log.doubts.iter().map(|doubt| self.doubt(doubt)));
        lines.extend(log.settled.iter().map(|doubt| self.doubt(doubt)));
        if let Some(choice) = &log.leg_choice {
            lines.push(format!("{} {}", self.say(&choice.title), self.say(&choice.text)));
        }
        if let Some(pending) = &log.pending {
            lines.push(self.say(&pending.head));
            lines.extend(pending.understood.iter().map(|said| self.say(said)));
            lines.extend(many(&pending.notices));
            lines.extend(pending.more.iter().chain(&pending.gives).map(|said| self.say(said)));
            if let Some(question) = &pending.question {
                let ways: Vec<String> =
                    question.ways.iter().map(|way| format!("[{}]", self.say(&way.label))).collect();
                lines.push(format!(
                    "{} {} {}",
                    self.say(&question.title),
                    self.say(&question.text),
                    ways.join(" ")
                ));
            }
        }
        let rest = [&log.not_yet, &log.more_rows, &log.more_doubts, &log.more_settled];
        lines.extend(rest.into_iter().flatten().map(|said| self.say(said)));
        lines.join("\n")
    }

    /// What stands beside the marks: facts, notes, rules, the sentence of the picture.
    pub fn beside(&self, look: &Look) -> String {
        let profile = &look.profile;
        let mut lines: Vec<String> =
            profile.facts.iter().chain(&profile.legs_note).map(|said| self.say(said)).collect();
        for group in &profile.rules {
            lines.push(format!("{}:", self.say(&group.name)));
            for row in &group.rows {
                let depth = row.depth.map_or("—".to_owned(), |num| self.num(num));
                lines.push(format!("{} {}: {depth}", if row.own { "*" } else { "-" }, self.say(&row.name)));
            }
            lines.extend(group.spread.as_ref().map(|said| self.say(said)));
        }
        lines.push(self.say(&look.alt));
        lines.join("\n")
    }
}

fn sign(sign: Sign) -> &'static str {
    match sign {
        Sign::Inside => "inside",
        Sign::Close => "close",
        Sign::Outside => "look again",
        Sign::Bare => "bare",
    }
}
