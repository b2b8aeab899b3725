//! What a question kind must be able to say: whether it is asked, what it asks, how it judges, helps and explains.

mod fields;

pub(crate) use self::fields::{Curve, Field, Input, Line, Pictures, Ticks};

use super::text::Fields;
use super::water::{Source, Water};
use super::{Asked, Told};
use crate::view::SumLine;
use layercast_core::{Message, Rule, Sought, State};

/// How an answer (or a part of one) was taken.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub enum Verdict {
    /// Right.
    Yes,
    /// Right by another published rule, which the student named.
    YesByAnotherRule,
    /// "I can't tell", and nobody could.
    CannotTell,
    /// One step is off.
    Almost,
    /// Not yet.
    NotYet,
    /// Unreadable, the unit, the decimal point: said, and free.
    Slip,
    /// It fits another rule: which one was used? Free.
    WhichRule,
    /// It cannot be judged before the part above it. Free.
    Waits,
    /// Words, or a choice that only a person can judge: kept, and the part is done. Neither right nor a miss.
    Kept,
}

impl Verdict {
    /// Settles the part with credit.
    pub fn is_right(self) -> bool {
        matches!(self, Self::Yes | Self::YesByAnotherRule | Self::CannotTell)
    }

    /// Counts as a miss.
    pub fn is_miss(self) -> bool {
        matches!(self, Self::Almost | Self::NotYet)
    }
}

/// A wrong idea in the catalogue of a kind.
#[derive(Clone, Copy, Debug, PartialEq, Eq)]
pub struct Idea {
    /// Name, stable.
    pub key: &'static str,
    /// Part of the question whose answer shows it, from 0.
    pub part: usize,
}

/// What was taken as right, for the parts and questions after it.
#[derive(Clone, Copy, Debug, Default, PartialEq)]
pub(crate) struct Accepted {
    /// A number.
    pub value: Option<f64>,
    /// Two depths, metres.
    pub stretch_m: Option<(f64, f64)>,
    /// By which readings.
    pub source: Option<Source>,
    /// By which other rule.
    pub rule: Option<Rule>,
}

/// A part judged.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Judged {
    /// The verdict.
    pub verdict: Verdict,
    /// The idea named, if one and only one matches.
    pub idea: Option<&'static str>,
    /// The sentence.
    pub said: Message,
    /// Small print under it.
    pub notes: Vec<Message>,
    /// What is taken as right.
    pub accepted: Accepted,
    /// Fields of the part that are right by themselves: they keep their texts after a miss.
    pub fine: Vec<&'static str>,
}

impl Judged {
    /// A verdict with its sentence.
    pub fn new(verdict: Verdict, said: Message) -> Self {
        Self { verdict, idea: None, said, notes: Vec::new(), accepted: Accepted::default(), fine: Vec::new() }
    }

    /// Right, with what was accepted.
    pub fn yes(said: Message, accepted: Accepted) -> Self {
        Self { accepted, ..Self::new(Verdict::Yes, said) }
    }

    /// A named idea.
    pub fn idea(key: &'static str, said: Message) -> Self {
        Self { idea: Some(key), ..Self::new(Verdict::NotYet, said) }
    }

    /// Not yet, no idea named.
    pub fn not_yet(said: Message) -> Self {
        Self::new(Verdict::NotYet, said)
    }

    /// Words that are kept and not judged.
    pub fn kept(said: Message) -> Self {
        Self::new(Verdict::Kept, said)
    }

    /// A slip.
    pub fn slip(said: Message) -> Self {
        Self::new(Verdict::Slip, said)
    }

    /// Id of the field the sentence is about, where that is not the first one: the list of units.
    pub fn look_at(&self, lines: &[Line]) -> Option<&'static str> {
        let of_unit = matches!(self.said.id, "ask-slip-unit" | "ask-slip-unit-close");
        lines.iter().flat_map(|line| &line.fields).map(|f| f.id).find(|id| of_unit && *id == "unit")
    }

    /// Adds small print.
    #[must_use]
    pub fn note(mut self, note: Option<Message>) -> Self {
        self.notes.extend(note);
        self
    }
}

/// The one idea that matches, if exactly one does.
pub(crate) fn only(matching: &[&'static str]) -> Option<&'static str> {
    match matching {
        [one] => Some(*one),
        _ => None,
    }
}

/// A part of a question: its lines.
pub(crate) type Part = Vec<Line>;

/// A question as asked.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Plan {
    /// The question.
    pub ask: Message,
    /// Sentences under it.
    pub lead: Vec<Message>,
    /// Parts.
    pub parts: Vec<Part>,
    /// Small print while nothing has been answered.
    pub notes: Vec<Message>,
}

/// What comes after a right answer, the third try, or "Show me".
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Explained {
    /// The answer in words: "5.0 °C per metre".
    pub shown: Message,
    /// The sum on one's own water.
    pub sum: Vec<SumLine>,
    /// What else would have been right.
    pub fits: Option<Message>,
    /// More sentences.
    pub notes: Vec<Message>,
    /// "In your own words: …", asked when it was shown.
    pub own_words: Message,
}

/// A hint: words, or the same step worked elsewhere.
#[derive(Clone, Debug, PartialEq)]
pub(crate) enum Hint {
    /// Where to look; what to do.
    Words(Message),
    /// Worked on another stretch.
    Worked(Vec<SumLine>),
}

/// A question in hand.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Question<'a> {
    /// The water.
    pub water: &'a Water<'a>,
    /// What is asked of it.
    pub asked: &'a Asked,
    /// What was accepted part by part, so far.
    pub accepted: &'a [Option<Accepted>],
}

impl Question<'_> {
    /// The n-th depth of the question, metres.
    pub fn depth(&self, n: usize) -> f64 {
        self.asked.depths_m.get(n).copied().unwrap_or_default()
    }

    /// The first two depths as a stretch, metres.
    pub fn stretch(&self) -> (f64, f64) {
        (self.depth(0), self.depth(1))
    }

    /// What was accepted in a part.
    pub fn part(&self, n: usize) -> Option<Accepted> {
        self.accepted.get(n).copied().flatten()
    }
}

/// Why a kind is not asked of a cast.
#[derive(Clone, Debug, PartialEq)]
pub(crate) struct Dropped {
    /// The reason.
    pub why: Message,
    /// The reason would tell what is still covered: it is said only after the marks are in.
    pub tells: bool,
}

impl Dropped {
    /// A reason that gives nothing away.
    pub fn plain(why: &'static str) -> Self {
        Self { why: Message::new(why), tells: false }
    }

    /// A reason that waits for the marks.
    pub fn telling(why: &'static str) -> Self {
        Self { why: Message::new(why), tells: true }
    }
}

/// What a question uncovers once it is settled.
#[derive(Clone, Debug, Default, PartialEq)]
pub(crate) struct Uncovers {
    /// Bars of the strip (indices into `Analysis::steps`).
    pub steps: Vec<usize>,
    /// The whole strip.
    pub all_steps: bool,
    /// The whole strip, once the marks are in and no open question asks what it tells.
    pub steps_if_free: bool,
    /// The thermocline with its span.
    pub thermocline: bool,
    /// The end of the mixed layer.
    pub mixed_layer: bool,
    /// The steep layer and the top of the deep layer.
    pub deep_layer: bool,
}

/// Water with layers.
pub(crate) const LAYERED: &[State] = &[State::Stratified, State::Weak];
/// Water of every state.
pub(crate) const EVERY_WATER: &[State] =
    &[State::TooFew, State::Mixed, State::Weak, State::Stratified, State::Inverse, State::Unstable];

/// One kind of question.
pub(crate) trait Kind: Sync {
    /// States of the water in which a lesson that lists it asks it.
    fn routes(&self) -> &'static [State];

    /// Wrong ideas it knows.
    fn ideas(&self) -> &'static [Idea];

    /// The depths it asks about on this water, or why it is not asked.
    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped>;

    /// The question.
    fn plan(&self, q: &Question) -> Plan;

    /// Judges one part whose fields are all given.
    fn judge(&self, q: &Question, part: usize, fields: &Fields) -> Judged;

    /// A hint for one part (1 to 3).
    fn hint(&self, q: &Question, part: usize, level: u8) -> Hint;

    /// The class's own answer to a part: later parts go by it when it was shown.
    fn class_answer(&self, q: &Question, part: usize) -> Accepted;

    /// What is said when a part is settled.
    fn explain(&self, q: &Question, part: usize) -> Explained;

    /// "I can't tell" is right here.
    fn cannot_be_told(&self, _q: &Question) -> bool {
        false
    }

    /// This part opens only when the one before it is settled.
    fn follows(&self, _q: &Question, _part: usize) -> bool {
        false
    }

    /// Somebody's words, or a choice that only a person can judge: kept, never called right or wrong.
    fn is_judged(&self, _q: &Question, _part: usize) -> bool {
        true
    }

    /// It opens only when all marks are placed or refused.
    fn needs_marks(&self) -> bool {
        false
    }

    /// It opens only when the marks are checked: it tells what was found.
    fn needs_check(&self) -> bool {
        false
    }

    /// Ids of questions that must be settled before it opens; they are asked wherever it is.
    fn builds_on(&self) -> &'static [&'static str] {
        &[]
    }

    /// Even its words tell what the marks are about.
    fn is_hidden_before_marks(&self) -> bool {
        false
    }

    /// The step in hand, metres, once it is known (`fields`: as typed so far).
    fn step_m(&self, _q: &Question, _fields: &Fields) -> Option<(f64, f64)> {
        None
    }

    /// Stretches lit on the picture from the start, each with a letter from A, metres.
    fn lit_m(&self, _q: &Question) -> Vec<(f64, f64)> {
        Vec::new()
    }

    /// Where the third hint works it, metres.
    fn elsewhere_m(&self, _q: &Question) -> Option<(f64, f64)> {
        None
    }

    /// What it uncovers once it is settled.
    fn uncovers(&self, _q: &Question) -> Uncovers {
        Uncovers::default()
    }

    /// Bars of the strip that a settled part uncovers (indices into `Analysis::steps`).
    fn uncovers_part(&self, _q: &Question, _part: usize) -> Vec<usize> {
        Vec::new()
    }

    /// What of the check of the marks would give its answer away, before it is settled.
    fn told_by_check(&self, _q: &Question) -> Option<Told> {
        None
    }

    /// The fields of a part as a student wrote them, where the numbers alone would not tell which is which.
    fn written(&self, _part: usize, _fields: &Fields) -> Option<Message> {
        None
    }

    /// Of pictures to choose from, the value of the right one.
    fn right_picture(&self) -> Option<&'static str> {
        None
    }

    /// The mark on Profile is its first answer, so that a try after the check earns nothing.
    fn is_answered_by_a_mark(&self) -> bool {
        false
    }

    /// The column of means stands beside the plot, else nothing.
    fn shows_means(&self) -> bool {
        false
    }

    /// What its other published rules seek: the list a student can name one from.
    fn seeks(&self) -> Option<Sought> {
        None
    }

    /// An answer that stands already: the mark on Profile.
    fn first_answer(&self, _q: &Question) -> Option<Fields> {
        None
    }
}
