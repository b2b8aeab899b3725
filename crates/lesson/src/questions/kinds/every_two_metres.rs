//! Kind 25: had you read only every 2 m (every 1.5 or 1 m in shallow water): between which two marks would the steepest
//! stretch be, and how far could it lie to either side? The own cast thinned; half the step either way.

use crate::questions::kind::{
    Accepted, Dropped, Explained, Field, Hint, Idea, Judged, Kind, Line, Plan, Question,
};
use crate::questions::ranges::number;
use crate::questions::say::{Numbers, in_m, line, result, stretch};
use crate::questions::text::{Fields, Measure, field, read_range, short, stretch_in_metres};
use crate::questions::water::{SLACK, Water};
use crate::questions::why::Basis;
use layercast_core::layers::span::{span, warming_span};
use layercast_core::layers::steps::steps;
use layercast_core::whatif::thinned;
use layercast_core::{Message, State, Step, Thermocline};

const THE_SAME: &str = "the_same";
const WHOLE_STEP: &str = "the_whole_step";

/// Steps to think of, metres; the first that fits.
const STEPS_M: [f64; 3] = [2.0, 1.5, 1.0];
/// Fewest marks that are left.
const FEWEST: usize = 4;
/// Two depths closer than this are one, metres.
const SAME_M: f64 = 0.05;
/// Give of a half width, metres.
const GIVE_M: f64 = 0.05;

/// Kind 25.
pub(crate) struct EveryTwoMetres;

/// The thinned cast: its steps, and those that cannot be told from the steepest.
struct Thin {
    step_m: f64,
    steps: Vec<Step>,
    members: Vec<usize>,
    found: Thermocline,
    marks: Vec<(f64, f64)>,
}

/// The steepest step of the cast as it was read.
fn as_read(basis: Basis) -> Option<Thermocline> {
    let found = basis.analysis();
    found.thermocline.or(found.fastest_warming).filter(|t| t.tellable)
}

fn thin(basis: Basis, step_m: f64) -> Option<Thin> {
    let levels = thinned(basis.levels(), step_m).filter(|levels| levels.len() >= FEWEST)?;
    let steps = steps(&levels);
    let warms = basis.analysis().fastest_warming.is_some();
    let found = if warms { warming_span(&steps) } else { span(&steps, 0..steps.len(), &[]) }?;
    let marks = levels.iter().map(|l| (l.depth_m, l.temp_c)).collect();
    Some(Thin { step_m, steps, members: found.members, found: found.thermocline, marks })
}

/// The first step that is at least twice the own one there, leaves marks enough, and can be told.
fn chosen(basis: Basis) -> Option<Thin> {
    let own = as_read(basis)?;
    let own_m = own.step_bottom_m - own.step_top_m;
    STEPS_M
        .into_iter()
        .filter(|step_m| *step_m >= 2.0 * own_m - SLACK)
        .find_map(|step_m| thin(basis, step_m).filter(|t| t.members.len() < t.steps.len()))
}

fn of(q: &Question) -> Option<(Thin, Thermocline, bool)> {
    let basis = Basis::of(q.water);
    Some((thin(basis, q.depth(0))?, as_read(basis)?, basis.is_practice()))
}

/// "0.0 m: 22.1 °C, 2.0 m: …"
fn listed(marks: &[(f64, f64)]) -> Message {
    let one = |(z, t): &(f64, f64)| Message::new("ask-25-mark").m("depth", *z).c("temp", *t);
    let mut rows = marks.iter().rev();
    let last = rows.next().map_or(Message::new("ask-sum-nothing"), one);
    rows.fold(last, |rest, mark| {
        Message::new("ask-25-marks").message("first", one(mark)).message("rest", rest)
    })
}

impl Kind for EveryTwoMetres {
    fn routes(&self) -> &'static [State] {
        &[State::Stratified, State::Weak, State::Mixed, State::Inverse]
    }

    fn ideas(&self) -> &'static [Idea] {
        &[Idea { key: THE_SAME, part: 0 }, Idea { key: THE_SAME, part: 1 }, Idea { key: WHOLE_STEP, part: 1 }]
    }

    fn choose(&self, water: &Water) -> Result<Vec<f64>, Dropped> {
        chosen(Basis::of(water)).map(|t| vec![t.step_m]).ok_or(Dropped::telling("ask-dropped-25"))
    }

    fn plan(&self, q: &Question) -> Plan {
        let of = of(q);
        let mut lead: Vec<Message> = Vec::new();
        if let Some((thin, own, true)) = &of {
            lead.push(Message::new("ask-why-practice"));
            let steepest = Message::new("ask-25-lead-practice");
            let steepest = stretch(steepest, "from", "to", (own.step_top_m, own.step_bottom_m), 1);
            lead.push(steepest.message("marks", listed(&thin.marks)).mark("step", thin.step_m));
        } else {
            lead.push(Message::new("ask-25-lead"));
        }
        let after = |id: &'static str| Some(Message::new(id));
        Plan {
            ask: Message::new("ask-25").mark("step", q.depth(0)),
            lead,
            parts: vec![
                vec![Line::new(
                    Message::new("ask-25-label-pair"),
                    vec![
                        Field::number("from", Message::new("ask-name-from"), after("ask-after-m-and")),
                        Field::number("to", Message::new("ask-name-to"), after("ask-after-m")),
                    ],
                )],
                vec![Line::new(
                    Message::new("ask-25-label-give"),
                    vec![Field::number("give", Message::new("ask-25-name-give"), after("ask-after-m"))],
                )],
            ],
            notes: vec![Message::new("ask-25-note")],
        }
    }

    fn judge(&self, q: &Question, part: usize, fields: &Fields) -> Judged {
        let Some((thin, own, _)) = of(q) else { return Judged::not_yet(Message::new("ask-25-gone")) };
        if part == 0 { judge_pair(&thin, &own, fields) } else { judge_give(&thin, &own, fields) }
    }

    fn hint(&self, q: &Question, part: usize, level: u8) -> Hint {
        let words = |id: &'static str| Hint::Words(Message::new(id).mark("step", q.depth(0)));
        match (part, level) {
            (0, 1) => words("ask-25-pair-hint-1"),
            (0, 2) => words("ask-25-pair-hint-2"),
            // Another water.
            (0, _) => Hint::Worked(vec![
                line(
                    Message::new("ask-25-worked-step").m("from", 0.0).m("to", 3.0),
                    Message::new("ask-sum-c").c("value", 1.2),
                    Message::new("ask-made-up"),
                ),
                result(
                    Message::new("ask-25-worked-step").m("from", 3.0).m("to", 6.0),
                    Message::new("ask-sum-c").c("value", 8.4),
                    Message::new("ask-25-worked-gloss"),
                ),
            ]),
            (_, 1) => words("ask-25-give-hint-1"),
            (_, 2) => words("ask-25-give-hint-2"),
            _ => Hint::Worked(vec![half(3.0, "ask-made-up")]),
        }
    }

    fn class_answer(&self, q: &Question, part: usize) -> Accepted {
        let Some((thin, ..)) = of(q) else { return Accepted::default() };
        match part {
            0 => Accepted {
                stretch_m: Some((thin.found.step_top_m, thin.found.step_bottom_m)),
                ..Accepted::default()
            },
            _ => Accepted { value: Some(thin.step_m / 2.0), ..Accepted::default() },
        }
    }

    fn explain(&self, q: &Question, part: usize) -> Explained {
        let own_words = Message::new("ask-25-own-words");
        let Some((thin, own, _)) = of(q) else {
            let shown = Message::new("ask-sum-nothing");
            return Explained { shown, sum: Vec::new(), fits: None, notes: Vec::new(), own_words };
        };
        if part == 1 {
            return Explained {
                shown: in_m(thin.step_m / 2.0),
                sum: vec![half(thin.step_m, "ask-25-half-gloss")],
                fits: None,
                notes: vec![Message::new("ask-25-why").m("own", (own.step_bottom_m - own.step_top_m) / 2.0)],
                own_words,
            };
        }
        let several = (thin.members.len() > 1).then(|| {
            let span = (thin.found.span_top_m, thin.found.span_bottom_m);
            stretch(Message::new("ask-25-several"), "from", "to", span, 1)
        });
        Explained {
            shown: stretch(
                Message::new("ask-value-from-to"),
                "from",
                "to",
                (thin.found.step_top_m, thin.found.step_bottom_m),
                1,
            ),
            sum: Vec::new(),
            fits: None,
            notes: std::iter::once(Message::new("ask-25-left").message("marks", listed(&thin.marks)))
                .chain(several)
                .collect(),
            own_words,
        }
    }

    fn needs_marks(&self) -> bool {
        true
    }

    fn is_hidden_before_marks(&self) -> bool {
        true
    }

    fn shows_means(&self) -> bool {
        true
    }
}

/// "2.0 ÷ 2 = 1.0 m"
fn half(step_m: f64, gloss: &'static str) -> crate::view::SumLine {
    result(Message::new("ask-25-half").m("step", step_m), in_m(step_m / 2.0), Message::new(gloss))
}

fn judge_pair(thin: &Thin, own: &Thermocline, fields: &Fields) -> Judged {
    let (from, to) = (field(fields, "from"), field(fields, "to"));
    let yours = || stretch_in_metres(from, to);
    let Some((a, b)) = read_range(from, to) else {
        let text = crate::questions::text::joined(from, to);
        return Judged::slip(Message::new("ask-slip-two-depths").text("yours", short(&text)));
    };
    let is = |s: (f64, f64)| (s.0 - a).abs() <= SAME_M + SLACK && (s.1 - b).abs() <= SAME_M + SLACK;
    let told = |id: &'static str| Message::new(id).message("yours", yours());
    let member = thin.members.iter().filter_map(|i| thin.steps.get(*i)).find(|s| is((s.top_m, s.bottom_m)));
    if let Some(step) = member {
        let accepted = Accepted { stretch_m: Some((step.top_m, step.bottom_m)), ..Accepted::default() };
        return Judged::yes(told("ask-25-pair-yes"), accepted);
    }
    let left = |z: f64| thin.marks.iter().any(|m| (m.0 - z).abs() <= SAME_M + SLACK);
    if is((own.step_top_m, own.step_bottom_m)) {
        Judged::idea(THE_SAME, told("ask-25-pair-same"))
    } else if !left(a) || !left(b) {
        Judged::not_yet(told("ask-25-pair-no-mark").mark("step", thin.step_m))
    } else {
        Judged::not_yet(told("ask-25-pair-no"))
    }
}

fn judge_give(thin: &Thin, own: &Thermocline, fields: &Fields) -> Judged {
    let typed = match number(fields, "give", Measure::Length) {
        Ok(typed) => typed,
        Err(slip) => return *slip,
    };
    let told = |id: &'static str| Message::new(id).text("yours", short(field(fields, "give")));
    if typed.unit_is_wrong {
        return Judged::slip(told("ask-25-give-unit"));
    }
    let (given, right) = (typed.value.abs(), thin.step_m / 2.0);
    let is = |value: f64| (given - value).abs() <= GIVE_M + SLACK;
    if is(right) {
        return Judged::yes(told("ask-25-give-yes"), Accepted { value: Some(right), ..Accepted::default() });
    }
    if is((own.step_bottom_m - own.step_top_m) / 2.0) {
        Judged::idea(THE_SAME, told("ask-25-give-same"))
    } else if is(thin.step_m) {
        Judged::idea(WHOLE_STEP, told("ask-25-give-whole"))
    } else {
        Judged::not_yet(told("ask-25-give-no"))
    }
}
