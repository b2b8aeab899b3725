//! Kinds from [`FIRST_OF_A_TEACHER`] on: the teacher's own questions. A number is worked out from the group's own readings
//! and judged as the kinds are that ask the same; no idea is ever named, since nobody has written down which ones it can
//! tell. Words are kept, and only a person judges them.

mod number;
mod sums;
mod words;

use crate::document::{FIRST_OF_A_TEACHER, MOST_OWN, OwnQuestion};
use crate::questions::kind::{
    Accepted, Dropped, EVERY_WATER, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question,
};
use crate::questions::ranges::{
    Stand, accepted, almost, digits, number, other_source, quoted, right_said, source, span, stand,
};
use crate::questions::say::Numbers;
use crate::questions::text::{Fields, Measure, field, short};
use crate::questions::water::{Source, Water};
use crate::questions::why::quoted_words;
use layercast_core::{Message, State};
use number::{Asking, asking};

/// The n-th question of the lesson's own.
#[derive(Clone, Copy, Debug)]
pub(crate) struct Own(usize);

/// One for each number there can be.
static ALL: [Own; MOST_OWN] = {
    let mut all = [Own(0); MOST_OWN];
    let mut n = 0;
    while n < MOST_OWN {
        all[n] = Own(n);
        n += 1;
    }
    all
};

/// The kind of a number from [`FIRST_OF_A_TEACHER`] on.
pub(crate) fn kind(number: u8) -> Option<&'static dyn Kind> {
    let own: &'static Own = ALL.get(usize::from(number.checked_sub(FIRST_OF_A_TEACHER)?))?;
    Some(own)
}

impl Own {
    fn question<'a>(&self, water: &Water<'a>) -> Option<&'a OwnQuestion> {
        water.context.lesson.own.get(self.0).filter(|own| own.lacks().is_none())
    }

    /// The question, where it is answered in words.
    fn in_words<'a>(&self, water: &Water<'a>) -> Option<&'a OwnQuestion> {
        self.question(water).filter(|own| own.by.quantity.is_none())
    }

    fn asking(&self, water: &Water) -> Option<Asking> {
        asking(water, &self.question(water)?.by).ok()
    }
}

/// The value in words, with its unit.
fn in_words(asking: &Asking, value: f64) -> Message {
    let number = Message::new("ask-sum-number").c("value", value);
    match asking.measure {
        Measure::Temperature | Measure::Difference => Message::new("ask-value-c").message("value", number),
        Measure::PerMetre => Message::new("ask-value-c-per-m").message("value", number),
        _ => Message::new("ask-sum-m").m("value", value),
    }
}

impl Kind for Own {
    fn routes(&self) -> &'static [State] {
        EVERY_WATER
    }

    fn ideas(&self) -> &'static [Idea] {
        &[]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        let own = self.question(water).ok_or_else(|| Dropped::plain("ask-own-dropped-unfinished"))?;
        if own.by.quantity.is_none() {
            return Ok(Vec::new());
        }
        asking(water, &own.by).map(|asking| asking.depths_m)
    }

    fn plan(&self, q: &Question) -> Plan {
        if let Some(own) = self.in_words(q.water) {
            return words::plan(own);
        }
        let ask = self.question(q.water).map(|own| own.ask.clone()).unwrap_or_default();
        let mut lines = vec![Line::new(
            Message::new("ask-own-label"),
            vec![Field::number("own", Message::new("ask-own-name"), None), Field::unit()],
        )];
        let both = self.asking(q.water).is_some_and(|asking| asking.ranges.len() > 1);
        if both {
            lines.push(Line::new(Message::new("ask-label-source"), vec![Field::source()]));
        }
        Plan {
            ask: Message::new("ask-own").text("ask", ask),
            lead: Vec::new(),
            parts: vec![lines],
            notes: vec![Message::new(if both { "ask-note-units-sources" } else { "ask-note-units" })],
        }
    }

    fn is_judged(&self, q: &Question, _part: usize) -> bool {
        self.in_words(q.water).is_none()
    }

    fn judge(&self, q: &Question, _part: usize, fields: &Fields) -> Judged {
        if self.in_words(q.water).is_some() {
            return Judged::kept(quoted_words(fields, "words"));
        }
        let no = |yours: String| Judged::not_yet(Message::new("ask-own-no").text("yours", yours));
        let text = field(fields, "own");
        let yours = short(text);
        let Some(asking) = self.asking(q.water) else { return no(yours) };
        let typed = match number(fields, "own", asking.measure) {
            Ok(typed) => typed,
            Err(slip) => return *slip,
        };
        let size = if asking.has_sign { typed.value } else { typed.value.abs() };
        let used = source(fields);
        match stand(text, &typed, size, &asking.ranges, &[], used) {
            Stand::Right(range) => {
                let right = Message::new("ask-own-yes").text("yours", yours);
                let worked = in_words(&asking, range.value);
                let said = right_said(right, quoted(text), (size, &typed), range.value, worked, 1);
                let most = q.water.decimals_by(range.source);
                Judged::yes(said, accepted(&range))
                    .note(other_source(&range, used))
                    .note(digits(q.water, &typed, most))
            }
            Stand::Slip(slip) => slip,
            Stand::Near => almost(Message::new("ask-own-almost").text("yours", yours)),
            Stand::Off(_) => no(yours),
        }
    }

    fn hint(&self, q: &Question, _part: usize, level: u8) -> Hint {
        let own = self.question(q.water);
        let written = own.map(|own| own.hint.trim()).filter(|hint| !hint.is_empty());
        let quantity = own.and_then(|own| own.by.quantity);
        let what_to_do = || quantity.map_or_else(|| words::hint(level), sums::what_to_do);
        let worked = || own.map(|own| sums::worked(q.water, &own.by)).filter(|sum| !sum.is_empty());
        match (level, written) {
            (1, Some(hint)) => Hint::Words(Message::new("ask-own").text("ask", hint)),
            (1, None) if quantity.is_some() => Hint::Words(Message::new("ask-own-hint")),
            (1, None) => Hint::Words(Message::new(words::hint(level))),
            (2, _) => Hint::Words(Message::new(what_to_do())),
            _ => worked().map_or_else(|| Hint::Words(Message::new(what_to_do())), Hint::Worked),
        }
    }

    fn class_answer(&self, q: &Question, _part: usize) -> Accepted {
        self.asking(q.water).and_then(|asking| asking.ranges.first().map(accepted)).unwrap_or_default()
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        if let Some(own) = self.in_words(q.water) {
            return words::explain(own);
        }
        let by = q.part(part).and_then(|a| a.source).unwrap_or(Source::Mean);
        let asking = self.asking(q.water);
        let value =
            asking.as_ref().and_then(|a| a.ranges.iter().find(|r| r.source == by).or(a.ranges.first()));
        let shown = asking.as_ref().zip(value).map(|(asking, range)| in_words(asking, range.value));
        let fits = asking.as_ref().and_then(|asking| span(&asking.ranges)).map(|(low, high)| {
            let low = if asking.as_ref().is_some_and(|a| a.has_sign) { low } else { low.max(0.0) };
            Message::new("ask-own-fits").number("low", low, 2).number("high", high, 2)
        });
        Explained {
            shown: shown.unwrap_or_else(|| Message::new("ask-own-hint")),
            sum: self.question(q.water).map(|own| sums::sum(q.water, &own.by, by)).unwrap_or_default(),
            fits,
            notes: Vec::new(),
            own_words: Message::new("ask-own-own-words"),
        }
    }

    fn shows_means(&self) -> bool {
        true
    }
}
